import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const sources = { ask: 'adapters/console/ask.ts', run: 'adapters/run.ts' };
const bundled = { ask: 'deploy/ask.cjs', run: 'deploy/run.mjs' };

/** The file a test starts with `process.execPath`: the sources, or, in the vitest project `bundle`, what people start. */
export const startFile = (program: 'ask' | 'run'): string =>
  join(root, (process.env['LYEWARD_START'] === 'dist' ? bundled : sources)[program]);

import { execFileSync } from 'node:child_process';
import { join } from 'node:path';

/** Before the tests of the bundle: it is that of these sources. */
export const setup = (): void => {
  execFileSync(process.execPath, [join(import.meta.dirname, '../deploy/build.mjs')], { stdio: 'inherit' });
};

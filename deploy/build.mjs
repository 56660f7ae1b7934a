// Bundles what people start: dist/ask.js (one question) and dist/run.js (the chat), with shared and lazy parts in
// chunks beside them. `npm ci` runs this by itself (script `prepare`), under whatever Node the machine has; what it
// makes runs on Node 24.
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'dist');
const entries = { ask: 'adapters/console/ask.ts', run: 'adapters/run.ts' };

const missing = Object.values(entries).filter((entry) => !existsSync(join(root, entry)));
if (missing.length > 0) console.warn(`build: not there yet: ${missing.join(', ')}`);

/** V8 reads a large table faster as JSON text than as a literal in code. */
const tables = {
  name: 'tables',
  setup({ onLoad }) {
    onLoad({ filter: /\.json$/ }, async ({ path }) => {
      const compact = JSON.stringify(JSON.parse(await readFile(path, 'utf8')));
      return { contents: `export default JSON.parse(${JSON.stringify(compact)})`, loader: 'js' };
    });
  },
};

const { metafile } = await build({
  absWorkingDir: root,
  entryPoints: Object.entries(entries)
    .filter(([, entry]) => !missing.includes(entry))
    .map(([out, entry]) => ({ in: entry, out })),
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node24',
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
  plugins: [tables],
});

// What an earlier build left goes last, so that a running program never misses a chunk.
const made = new Set(Object.keys(metafile.outputs).map((file) => file.slice('dist/'.length)));
for (const file of existsSync(dist) ? readdirSync(dist) : []) {
  if (!made.has(file)) rmSync(join(dist, file), { recursive: true });
}

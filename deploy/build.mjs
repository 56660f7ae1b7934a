// Bundles what people start into dist/: the chat (run.js, with shared and lazy parts in chunks), one question (ask.cjs,
// and what V8 compiled of it in ask.code), and the catalogue, checked and packed. `npm ci` runs this by itself (script
// `prepare`), under whatever Node the machine has; what it makes runs on Node 24.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, transform } from 'esbuild';
import { lineOf, list } from './fresh.cjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'dist');

/** Never half a file, and never over one that a running program reads on in. */
function put(file, text) {
  writeFileSync(`${file}.new`, text);
  renameSync(`${file}.new`, file);
}

/** V8 reads a table faster as JSON text than as a literal in code. */
const tables = {
  name: 'tables',
  setup({ onLoad }) {
    onLoad({ filter: /\.json$/ }, ({ path }) => {
      const compact = JSON.stringify(JSON.parse(readFileSync(path, 'utf8')));
      return { contents: `export default JSON.parse(${JSON.stringify(compact)})`, loader: 'js' };
    });
  },
};

/** A bundle opens what lies packed beside it instead of the files of `data/`. */
const packed = {
  name: 'packed data',
  setup({ onLoad }) {
    for (const [file, instead] of [
      ['load', 'load-packed'],
      ['heat-files', 'heat-packed'],
      ['everyday-file', 'everyday-packed'],
    ]) {
      onLoad({ filter: new RegExp(`[\\\\/]src[\\\\/]catalogue[\\\\/]${file}\\.ts$`) }, () => ({
        contents: `export * from './${instead}.ts'`,
        resolveDir: join(root, 'src/catalogue'),
      }));
    }
  },
};

/** What a module makes of long lists is made once, here: the bundle takes what it exports, and none of its lists. */
const madeAhead = {
  name: 'made ahead',
  setup({ onLoad }) {
    onLoad(
      { filter: /[\\/]src[\\/](?:reading[\\/]words[\\/]words|bot[\\/]first-aid-lines)\.ts$/ },
      async ({ path }) => {
        const made = await moduleOf({ entryPoints: [path] });
        const lines = Object.entries(made).map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`);
        return { contents: lines.join('\n') };
      },
    );
  },
};

/** What stands behind `worded.ts` is a part of its own, which the first call of it loads: at once, as its callers wait. */
const late = {
  name: 'late',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]src[\\/](?:reading|bot)[\\/].*\.ts$/ }, ({ path }) => {
      const contents = readFileSync(path, 'utf8').replace(
        /^import \{ ([\w, ]+) \} from '([^']*\/worded\.ts)';$/gm,
        (_, names, file) =>
          `let late; ${names
            .split(', ')
            .map((name) => `const ${name} = (...of) => (late ??= import('${file}')).${name}(...of);`)
            .join(' ')}`,
      );
      return { contents, loader: 'ts' };
    });
  },
};

/** In a part that was bundled: a call of `by` in the place of each import of what is late. */
const loadingLate = (source, { outputs }, by) => {
  const found = Object.keys(outputs).find((path) => outputs[path].entryPoint === 'src/reading/worded.ts');
  if (found === undefined) throw new Error('nothing is late');
  return source.replaceAll(`import("./${basename(found)}")`, `${by}("./${basename(found)}")`);
};

/** Packages of many small files, each of which a start would feel. */
const inside = new Set(['matrix-js-sdk', 'fake-indexeddb', 'kysely']);
const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
/** What loads from its own folder, late: of the Matrix SDK too what looks for a file beside itself, and what is CommonJS. */
const outside = [
  ...Object.keys(dependencies).filter((name) => !inside.has(name)),
  '@matrix-org/matrix-sdk-crypto-wasm',
  'matrix-widget-api',
];

const common = { absWorkingDir: root, bundle: true, platform: 'node', logLevel: 'warning' };
const minified = {
  target: 'node24',
  supported: { 'regexp-unicode-property-escapes': true },
  minifySyntax: true,
  minifyWhitespace: true,
  // a third of the source is names: all of it is read at every start, and the chat holds it in memory
  minifyIdentifiers: true,
  legalComments: 'none',
};
const program = {
  ...common,
  ...minified,
  metafile: true,
  plugins: [tables, packed, madeAhead, late],
  external: outside,
};

/** A module of the sources, run here. */
async function moduleOf(options) {
  const { outputFiles } = await build({ ...common, ...options, format: 'esm', write: false, plugins: [tables] });
  return import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`);
}

/** V8 holds and hashes a source of one byte a character in half the room and time; only patterns still have others. */
const oneByte = (source) =>
  source.replace(/[^\0-\x7f]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);

/**
 * What the chat imports of Node it asks for by name: for an `import`, Node looks at all that a module exports and loads
 * what stands behind each (`util` alone: worker threads).
 */
const askingNode = (source) =>
  source.replace(
    /\bimport\{([^}]*)\}from"(node:[\w/]+)";/g,
    (_, names, module) => `var{${names.replaceAll(' as ', ':')}}=process.getBuiltinModule("${module}");`,
  );

async function buildChat() {
  const entryPoints = { run: 'adapters/run.ts' };
  const result = await build({
    ...program,
    entryPoints,
    outdir: 'dist',
    format: 'esm',
    splitting: true,
    write: false,
  });
  const require = 'process.getBuiltinModule("module").createRequire(import.meta.url)';
  for (const { path, text } of result.outputFiles)
    put(path, oneByte(askingNode(loadingLate(text, result.metafile, require))));
  return result.outputFiles.map(({ path }) => basename(path));
}

/** The parts that a part cannot do without, itself among them. */
function needed(outputs, path, found = new Set()) {
  if (found.has(path)) return found;
  found.add(path);
  for (const { kind, path: of } of outputs[path].imports)
    if (kind === 'import-statement' && outputs[of]) needed(outputs, of, found);
  return found;
}

/**
 * One question: what each needs lies in one file, as functions by their names that `deploy/ask.cjs` calls; any other
 * part is a file of its own. CommonJS, as V8 keeps the compiled code of a script only.
 */
async function buildQuestion() {
  const result = await build({
    ...program,
    entryPoints: { ask: 'adapters/console/ask.ts' },
    outdir: 'dist',
    format: 'esm',
    splitting: true,
    // `createRequire` takes a path as well as an address.
    define: { 'import.meta.dirname': '__dirname', 'import.meta.url': '__filename' },
    write: false,
  });
  const always = [...needed(result.metafile.outputs, 'dist/ask.js')].map((path) => basename(path));
  const parts = new Map();
  for (const { path, text } of result.outputFiles) {
    const source = loadingLate(text, result.metafile, 'require').replace(
      /\bimport\(("\.\/[^"]+")\)/g,
      'Promise.resolve().then(()=>require($1))',
    );
    const { code } = await transform(source, { ...minified, format: 'cjs', platform: 'node' });
    parts.set(basename(path), `function(require,module,exports,__dirname,__filename){${oneByte(code)}}`);
  }
  const made = new Map([['ask.cjs', `({${always.map((name) => `"./${name}":${parts.get(name)}`).join(',')}})`]]);
  for (const [name, part] of parts)
    if (!always.includes(name)) made.set(`${basename(name, '.js')}.cjs`, `({"./${name}":${part}})`);
  for (const [name, text] of made) put(join(dist, name), text);
  return [...made.keys()];
}

async function packData() {
  const contents = `
    import { loadHeat } from './heat.ts';
    import { readEveryday } from './everyday-file.ts';
    import { readHeat } from './heat-files.ts';
    import { loadCatalogue } from './load.ts';
    import { packCatalogue } from './pack.ts';
    export const catalogue = packCatalogue(loadCatalogue());
    loadHeat();
    export const everyday = readEveryday();
    export const heat = JSON.stringify(readHeat());`;
  const stdin = { contents, resolveDir: join(root, 'src/catalogue') };
  const define = { 'import.meta.dirname': JSON.stringify(stdin.resolveDir) };
  const { catalogue, everyday, heat } = await moduleOf({ stdin, define });
  const made = { 'catalogue.txt': catalogue, 'everyday.txt': everyday, 'heat.json': heat };
  for (const [name, text] of Object.entries(made)) put(join(dist, name), text);
  return Object.keys(made);
}

/** Questions whose code is kept: what is asked most, a slip of spelling, a question back. Each start reads all that is kept. */
const usual = [
  'is my lye ok? 450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g lye, 230 g water',
  'Olive oil 16 oz\\nCoconut oil 8 oz\\nShea buter 2.5 oz\\nNaOH 3.7 oz\\nWater 8.5 oz',
  '500 g lard, 100 g NaOH, 150 g water',
  'olive 700, coconut 300, lye 140, water 300',
];

/** Under the Node that will run it; the code kept is only as good as its compiler, and never asked of another. */
function keepCode() {
  const own = join(root, 'node_modules/.bin/node');
  const keep = `
    const scripts = require('./deploy/ask.cjs');
    process.on('exit', () => {
      for (const [file, script] of scripts) require('node:fs').writeFileSync(file, script.createCachedData());
    });`;
  execFileSync(existsSync(own) ? own : process.execPath, ['-e', keep, 'ask', '--turns', '-'], {
    cwd: root,
    // whoever builds may keep recipes: that code is for other questions
    env: { ...process.env, LYEWARD_DATA: join(dist, 'nothing') },
    input: usual.join('\n'),
    stdio: ['pipe', 'ignore', 'inherit'],
  });
}

const readIf = (file) => (existsSync(file) ? readFileSync(file, 'utf8').split('\n') : []);

/** The folders of all that the bundles are made of. */
function sources() {
  const found = ['package.json'];
  for (const folder of ['src', 'adapters', 'data', 'deploy']) {
    const below = readdirSync(join(root, folder), { recursive: true, withFileTypes: true });
    const folders = below.filter((entry) => entry.isDirectory());
    found.push(folder, ...folders.map(({ parentPath, path, name }) => relative(root, join(parentPath ?? path, name))));
  }
  return found.map(lineOf);
}

/** The files that an earlier build made, which a program that is still running may ask for. */
const before = readIf(join(dist, 'made.txt'));

// seen before they are read: what changes meanwhile is built at the next start
const of = sources();
mkdirSync(dist, { recursive: true });
// V8 tells code of another source by its length alone: none may outlive its source.
for (const file of readdirSync(dist)) if (file.endsWith('.code')) rmSync(join(dist, file));
try {
  const built = await Promise.all([buildChat(), buildQuestion(), packData()]);
  // before the code is kept: that is done by a start, which looks here
  put(list, of.join('\n'));
  keepCode();
  const made = built.flat();
  put(join(dist, 'made.txt'), made.join('\n'));
  const kept = new Set(['made.txt', basename(list), ...made, ...before]);
  for (const file of readdirSync(dist))
    if (!kept.has(file) && !file.endsWith('.code')) rmSync(join(dist, file), { recursive: true });
} catch (error) {
  // The bundler has said what is wrong with the code; anything else is ours.
  if (!('errors' in error)) throw error;
  process.exitCode = 1;
}

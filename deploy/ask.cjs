// Starts one question. V8 spends two thirds of so short a life on compiling; so the build keeps what it compiled for
// some usual questions, and here it is handed back. CommonJS, because it loads sooner than a module. What V8 does not
// accept (another Node, other flags) it compiles anew, and what is not built yet, or of other sources, is built.
const { existsSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script, constants } = require('node:vm');
const { make } = require('./fresh.cjs');

const dist = join(__dirname, '../dist');

make('ask.cjs');

/** The parts of the program as functions, by their names, and what each exports once it has run. */
const parts = {};
const made = {};
/** What was compiled, by the file that keeps it. */
const scripts = new Map();

function read(file) {
  const filename = join(dist, file);
  const compiled = filename.replace(/cjs$/, 'code');
  const script = new Script(readFileSync(filename, 'latin1'), {
    filename,
    cachedData: existsSync(compiled) ? readFileSync(compiled) : undefined,
    importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  });
  scripts.set(compiled, script);
  Object.assign(parts, script.runInThisContext());
}

function requirePart(name) {
  if (!name.startsWith('./')) return require(name);
  if (made[name]) return made[name].exports;
  if (!parts[name]) read(name.replace(/js$/, 'cjs'));
  const module = { exports: {} };
  made[name] = module;
  parts[name](requirePart, module, module.exports, dist, join(dist, name));
  return module.exports;
}

read('ask.cjs');
requirePart('./ask.js');

module.exports = scripts;

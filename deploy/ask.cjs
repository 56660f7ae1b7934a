// Starts one question. V8 spends two thirds of so short a life on compiling; so the build keeps what it compiled for
// some usual questions, and here it is handed back. CommonJS, because it loads sooner than a module. What V8 does not
// accept (another Node, other flags) it compiles anew, and what is not built yet, or of other sources, is built.
const { existsSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script, constants } = require('node:vm');
const { make } = require('./fresh.cjs');

const dist = join(__dirname, '../dist');
const filename = join(dist, 'ask.cjs');
const compiled = join(dist, 'ask.code');

make('ask.cjs');

const script = new Script(readFileSync(filename, 'latin1'), {
  filename,
  cachedData: existsSync(compiled) ? readFileSync(compiled) : undefined,
  importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
});
script.runInThisContext()(require, dist, filename);

module.exports = script;

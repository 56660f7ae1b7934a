// Starts the chat, or the adapter that is named, and builds it first where that has not been done.
const { existsSync } = process.getBuiltinModule('node:fs');

const program = new URL('../dist/run.js', import.meta.url);
if (!existsSync(program)) await import('./build.mjs');
await import(program.href);

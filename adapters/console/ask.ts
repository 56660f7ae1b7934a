// One question from the command line: `npm run --silent ask -- "…"`.
import { createBot } from '../../src/index.ts';
import { readLines, readText, write } from './files.ts';
import { oneShot } from './oneshot.ts';

process.exitCode = oneShot(process.argv.slice(2), createBot, { readText, readLines, write });

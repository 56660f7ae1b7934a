// `npm run generate:readme`: fills in the answers that README.md shows, so that they are what the program says.
// With `--check` it changes nothing and fails where the page and the program differ.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createBot, renderPlain } from '../src/index.ts';

const path = join(import.meta.dirname, '../README.md');
const page = readFileSync(path, 'utf8');

/** A fence opened by ```answer holds the question behind `> `, and below an empty line what is said to it. */
const fence = /(```answer\n)((?:> [^\n]*\n)+)(?:(?!```)[^\n]*\n)*(```)/g;

let asked = 0;
const answers = await Array.fromAsync(page.matchAll(fence), async ([, open = '', question = '', close = '']) => {
  asked += 1;
  const text = question
    .split('\n')
    .map((line) => line.replace(/^> /, ''))
    .join('\n')
    .trim();
  const bot = createBot();
  const reply = await bot.ask({ platform: 'readme', place: 'page', person: String(asked), text });
  const said = renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });
  return `${open}${question}\n${said.trimEnd()}\n${close}`;
});
const next = answers.values();
const filled = page.replace(fence, (whole) => next.next().value ?? whole);

if (asked === 0) {
  console.error('README.md shows no answer');
  process.exitCode = 1;
} else if (process.argv.includes('--check')) {
  if (filled !== page) {
    console.error('README.md shows other answers than the program gives: npm run generate:readme');
    process.exitCode = 1;
  }
} else writeFileSync(path, filled);

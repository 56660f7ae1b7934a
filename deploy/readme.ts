// `npm run generate:readme`: fills in the answers that README.md shows, so that they are what the program says.
// With `--check` it changes nothing and fails where the page and the program differ.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createBot, openStore, renderPlain } from '../src/index.ts';

const path = join(import.meta.dirname, '../README.md');
const page = readFileSync(path, 'utf8');

/**
 * A fence opened by ```answer holds the question behind `> `, and below an empty line what is said to it. Those opened
 * by ```kept are one person's, who keeps things, one after the other, on one morning of the page's own.
 */
const fence = /(```(?:answer|kept)\n)((?:> [^\n]*\n)+)(?:(?!```)[^\n]*\n)*(```)/g;

const folder = mkdtempSync(join(tmpdir(), 'lyeward-readme-'));
const keeping = createBot({
  store: () => openStore({ folder, who: 'the page', database: null }),
  now: () => Date.UTC(2026, 2, 1, 9, 30),
  zone: 'UTC',
});

let asked = 0;
const answers = await Array.fromAsync(page.matchAll(fence), async ([, open = '', question = '', close = '']) => {
  asked += 1;
  const text = question
    .split('\n')
    .map((line) => line.replace(/^> /, ''))
    .join('\n')
    .trim();
  const asker = open.includes('kept')
    ? { bot: keeping, person: 'one', isPrivate: true }
    : { bot: createBot(), person: String(asked) };
  const { bot, ...person } = asker;
  const reply = await bot.ask({ platform: 'readme', place: 'page', ...person, text });
  const said = renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });
  return `${open}${question}\n${said.trimEnd()}\n${close}`;
});
await keeping.close();
rmSync(folder, { recursive: true });
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

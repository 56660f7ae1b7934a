// `npm run bench`: one JSON line a figure. Times of processes and memory are ratios to an empty Node process measured
// in the same run, so that they mean the same on any machine; the other times are those of the machine at hand.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { checkRecipe } from '../../src/engine/check.ts';
import type { Recipe } from '../../src/engine/recipe.ts';
import { createBot, drawPicture } from '../../src/index.ts';
import { longestPost, makeReader, readRecipe } from '../../src/reading/index.ts';
import { discordFigures } from './discord.ts';
import { idleMegabytes, microseconds, nothingKept, processTimes } from './measure.ts';
import { storeFigures } from './store.ts';

const file = (path: string): string => join(import.meta.dirname, '../..', path);

const figure = (name: string, value: number, unit: string, limit: number, more: Record<string, number> = {}): void => {
  const ok = value <= limit;
  if (!ok) process.exitCode = 1;
  const short = (number: number) => Number(number.toPrecision(3));
  const rest = Object.fromEntries(Object.entries(more).map(([key, number]) => [key, short(number)]));
  console.log(JSON.stringify({ name, value: short(value), unit, limit, ok, ...rest }));
};

const catalogue = loadCatalogue();
const fats = ['olive-oil-virgin', 'coconut-oil', 'castor-oil', 'shea-butter', 'lard'].map((id) => {
  const fat = catalogue.fats.get(id);
  if (!fat) throw new Error(`no fat "${id}"`);
  return { fat, grams: 200 };
});
const recipe: Recipe = {
  fats,
  after: [],
  alkali: [{ id: 'naoh', grams: 135, purity: { nominal: 0.98, low: 0.97, high: 0.99 } }],
  waterGrams: 270,
  liquids: [],
  acids: [],
  scaleStepGrams: 1,
};
if (!checkRecipe(recipe, catalogue.fats).ok) throw new Error('the recipe to be timed is refused');
figure('engine: full check of five fats', await microseconds(() => checkRecipe(recipe, catalogue.fats)), 'µs', 100);

// The posts that the reader is judged by, one after another as a long post would hold them.
const posts = ['chat', 'tables', 'prose'].flatMap(
  (name) => JSON.parse(readFileSync(file(`tests/posts/${name}.json`), 'utf8')) as readonly { readonly text: string }[],
);
const reader = makeReader(catalogue);
const kilobytes = async (size: number): Promise<number> => {
  const texts: string[] = [];
  for (let length = 0, next = 0; length < 1000 * size; next += 1) {
    const text = posts[(next * 7) % posts.length]?.text ?? '';
    texts.push(text);
    length += text.length + 2;
  }
  const text = texts.join('\n\n').slice(0, Math.min(1000 * size, longestPost));
  return (await microseconds(() => readRecipe(reader, text))) / 1000 / (text.length / 1000);
};
const [one = 0, ten = 0, hundred = 0] = await Array.fromAsync([1, 10, 100], kilobytes);
figure('reading: a post of 1 kB', one, 'ms/kB', 0.3);
figure('reading: a post of 10 kB', ten, 'ms/kB', 0.3);
figure('reading: a post of 100 kB', hundred, 'ms/kB', 0.3);
figure('reading: growth of the time for a kB from 1 to 100 kB', hundred / one, '×', 1.5);

const bot = createBot();
const convert = { platform: 'bench', place: 'bench', person: 'bench', text: '3/4 cup shea butter in grams' };
const converted = await bot.ask(convert);
// No answer, no time: the figure is then `null` and not ok.
const isConverted = converted.ok && converted.answer.command === 'convert';
figure('core: convert end to end', isConverted ? await microseconds(() => bot.ask(convert)) : Number.NaN, 'µs', 200);

// Text answers about heat, and one with its picture drawn.
const heat = async (name: string, text: string): Promise<void> => {
  const asked = { platform: 'bench', place: 'bench', person: text, text };
  const reply = await bot.ask(asked);
  figure(`heat: ${name}`, reply.ok ? (await microseconds(() => bot.ask(asked))) / 1000 : Number.NaN, 'ms', 5);
};
await heat('solution', 'how hot will 150 g NaOH in 350 g water get');
await heat('cooling towards a scent', 'when can I add lavender, pot is at 88 °C');
await heat('cooling from readings', '92 °C at 0 min, 86 at 10 min, room 20, target 70');
await heat('scent', 'scent lavender 3 % of 500 g oils');
const pot = { platform: 'bench', place: 'bench', person: 'pot', text: 'when can I add lavender, pot is at 88 °C' };
const drawn: number[] = [];
for (let i = 0; i < 6; i += 1) {
  const since = performance.now();
  const reply = await bot.ask(pot);
  const block = reply.ok ? reply.answer.body.find(({ kind }) => kind === 'picture') : undefined;
  if (block?.kind === 'picture') await drawPicture(block.picture);
  drawn.push(block ? performance.now() - since : Number.NaN);
}
figure('heat: cooling with its PNG, warm', Math.max(...drawn.slice(2)), 'ms', 400);

const grams = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';
const ounces = 'Olive oil 16 oz\nCoconut oil 8 oz\nShea butter 2.5 oz\nNaOH 3.7 oz\nWater 8.5 oz';
const ask = file('deploy/ask.cjs');
const [empty = 0, inGrams = 0, inOunces = 0] = processTimes(
  [
    ['-e', '0'],
    [ask, '--data', nothingKept, grams],
    [ask, '--data', nothingKept, ounces],
  ],
  25,
);
const unit = '× empty Node process';
figure('ask: one shot in grams', inGrams / empty, unit, 2, { milliseconds: inGrams, emptyMilliseconds: empty });
figure('ask: one shot in ounces', inOunces / empty, unit, 2, { milliseconds: inOunces, emptyMilliseconds: empty });

const chat = [file('deploy/run.mjs'), '--data', nothingKept];
const alone = await idleMegabytes(['-e', 'setInterval(() => {}, 1e6)']);
for (const [state, lines] of [
  ['just opened', []],
  ['after an answer', [grams]],
] as const) {
  const idle = await idleMegabytes(chat, lines);
  figure(`chat: idle memory, ${state}`, idle / alone, unit, 1.4, { megabytes: idle, emptyMegabytes: alone });
}

const others = [...(await storeFigures()), ...(await discordFigures())];
for (const { name, value, unit: per, limit, more } of others) figure(name, value, per, limit, more);

// A sentence that says nothing of the recipe changes nothing of it unasked, whatever recipe it stands before or behind.
// The recipes are the stored posts that are read without a question; the sentences are our own.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, type RecipeReading, readRecipe } from '../../src/reading/index.ts';

const folder = join(import.meta.dirname, '../posts');
const json = <T>(path: string): T => JSON.parse(readFileSync(path, 'utf8')) as T;
const sentences = json<readonly string[]>(join(import.meta.dirname, 'sentences.json'));
const reader = makeReader(loadCatalogue());

interface Post {
  readonly id: string;
  readonly text: string;
  readonly expect?: { readonly fats?: unknown };
}

const longest = 900;
const posts = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => json<readonly Post[]>(join(folder, name)))
  .filter(({ text, expect: verdict }) => text && verdict?.fats && text.length < longest);

const grams = (list: readonly { readonly id: string; readonly grams: number | null }[]): readonly string[] =>
  list.map((one) => `${one.id} ${one.grams?.toFixed(2)}`).toSorted();

/** All that an answer is reckoned from. */
const meaning = (reading: RecipeReading): string =>
  JSON.stringify([
    grams(reading.fats),
    grams(reading.after),
    reading.alkali.map(({ id, grams: weight, purity }) => [id, weight.toFixed(2), purity?.nominal]),
    reading.waterGrams?.toFixed(1),
    grams(reading.liquids),
    grams(reading.acids),
    [reading.superfat, reading.concentration, reading.ratio, reading.totalFats, reading.waterShare],
    reading.alkaliSplit,
  ]);

const read = (text: string): RecipeReading => readRecipe(reader, text);
const asks = ({ doubts }: RecipeReading): boolean => doubts.length > 0;

/** One pair in so many is tried, the same ones whatever posts come to be. */
const every = 24;
const lot = (id: string): number => [...id].reduce((sum, letter) => 31 * (sum % 1e6) + letter.charCodeAt(0), 7);
/** Of the pairs that are tried, so many at the most are asked about. */
const mostAsked = 0.01;

/** Misread still. */
const known: readonly string[] = [
  'scale-double: Oils at 40, lye at 35.',
  'e259: We won 2:1 yesterday.',
  '48-056: We have 3 dogs and a parrot that is 31.',
  'blind-18-015: We have 3 dogs and a parrot that is 31.',
  'blind-7-037: I keep vinegar and a tap within 2 steps.',
  'md-units-in-heading: One of my 5 kids spilled juice on the paper.',
  'blind-7-044: One of my 5 kids spilled juice on the paper.',
  '71-015: One of my 5 kids spilled juice on the paper.',
  '74-062: Version 2.1 of the list.',
];

test('what is told beside a recipe changes nothing of it unasked', () => {
  const whole = posts.flatMap((post) => {
    const reading = read(post.text);
    return asks(reading) ? [] : [{ ...post, meant: meaning(reading) }];
  });
  expect(whole.length).toBeGreaterThan(500);
  const changed: string[] = [];
  let [asked, tried] = [0, 0];
  for (const { id, text, meant } of whole)
    for (const [n, sentence] of sentences.entries()) {
      if ((lot(id) + n) % every !== 0) continue;
      for (const post of [`${text}\n${sentence}`, `${sentence}\n${text}`]) {
        tried++;
        const reading = read(post);
        if (asks(reading)) asked++;
        else if (meaning(reading) !== meant) changed.push(`${id}: ${sentence}`);
      }
    }
  expect([...new Set(changed)].filter((one) => !known.includes(one))).toEqual([]);
  expect(asked / tried).toBeLessThan(mostAsked);
}, 400_000);

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { clean } from '../../src/reading/text/clean.ts';
import { layOut } from '../../src/reading/text/layout.ts';
import { scan } from '../../src/reading/text/scan.ts';
import { posts, sets } from '../posts/score.ts';
import { hostile } from './hostile.ts';

const reader = makeReader(loadCatalogue());

/** Every run of digits has a fate, and where one is unclear the post is asked about. */
function everyFigureAccountedFor(text: string): void {
  const figures = scan(layOut(clean(text).text).text).filter((prim) => prim.kind === 'number');
  const { fates, doubts } = readRecipe(reader, text);
  const left = [...fates.map((fate) => fate.text)];
  for (const figure of figures) {
    const at = left.indexOf(figure.raw);
    expect(at, `${figure.raw} in ${text}`).toBeGreaterThanOrEqual(0);
    left.splice(at, 1);
  }
  for (const { why } of fates) expect(why).not.toBe('');
  if (fates.some(({ fate }) => fate === 'unclear')) expect(doubts.length).toBeGreaterThan(0);
}

test('every figure of every post has a fate', () => {
  for (const set of sets) for (const post of posts(set)) everyFigureAccountedFor(post.text);
}, 120_000);

test('every figure of hostile text has a fate', () => {
  fc.assert(fc.property(hostile, everyFigureAccountedFor), { numRuns: 2000 });
});

test('a factor is a whole figure', () => everyFigureAccountedFor('1.000 in each x 1.000cups'));

test('a figure of a row that is left out keeps its point', () =>
  everyFigureAccountedFor('.5g1. olive oil - 96 g\n2. '));

/** A fat that was not there, and another one with a weight of its own, or with its. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const list = 'Palm 300 g, olive 400 g, coconut 200 g, 125 g NaOH, 280 g water. ';
const pot = (said: string): readonly (number | undefined)[] => {
  const { grams, doubts } = potOf(`${list}${said} Ok?`);
  return doubts.length > 0 ? [] : ['palm-oil', 'tallow-beef', 'olive-oil-virgin'].map((id) => grams[id]);
};

test.each([
  ['There was no palm left in the cupboard: 300 g tallow instead, the rest as planned.', [undefined, 300, 400]],
  ['Opened the cupboard and no palm left. Put in 280 g tallow in its place.', [undefined, 280, 400]],
  ['The palm was rancid, so 250 g of tallow went in instead.', [undefined, 250, 400]],
  ["I don't like buying palm so I used tallow for it, same weight.", [undefined, 300, 400]],
  ["Palm isn't for me, I took the same weight of tallow.", [undefined, 300, 400]],
])('%s', (said, grams) => expect(pot(said)).toEqual(grams));

test.each([
  'If there is no palm left, could I put in 300 g tallow instead?',
  'There was no palm left for half of it: 150 g tallow instead.',
])('asked: %s', (said) => expect(pot(said)).toEqual([]));

test.each(['The palm was rancid, so 250 g of tallow went in instead. Ok?', 'So palm out and 250 g tallow in. Ok?'])(
  'what was taken out is told once: %s',
  (said) => {
    const { assumptions } = readRecipe(makeReader(loadCatalogue()), `${list}${said}`);
    expect(assumptions.filter(({ text }) => /palm/i.test(text))).toHaveLength(1);
  },
);

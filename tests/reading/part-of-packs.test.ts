/** Packs of one size, whole ones and halves, with or without a piece that was cut off; and the superfat of last time. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const lard = (said: string): number | undefined => {
  const { grams, doubts } = potOf(`${said} 225 g coconut. 154 g lye, 330 g water. Ok?`);
  return doubts.length === 0 ? grams['lard'] : undefined;
};

describe('so many of one size', () => {
  test.each([
    [
      'Lard comes in 250 g blocks here. Three and a half blocks went in, the other half of the fourth is back in the fridge.',
      875,
    ],
    ['Lard comes in 250 g packs. Three went in.', 750],
    ['Lard is sold in half kilo packs here. Two packs went in.', 1000],
    ['Lard is sold in 500 g tubs. One and a half tubs went in.', 750],
    ['Three 250 g blocks of lard and a half one went in.', 875],
    ['Three 250 g blocks of lard and half of another.', 875],
    ['Three 250 g blocks of lard minus one I gave to mum.', 500],
    ['Three 250 g blocks of lard, minus 50 g that I cut off the last one.', 700],
    ['Two 500 g tubs of lard minus the 130 g that stayed in the second.', 870],
    ['Three 250 g blocks of lard.', 750],
    ['My lard comes in 250 g blocks. Lard 875 g.', 875],
  ])('%s', (said, grams) => expect(lard(said)).toBe(grams));

  test('half of something else', () => expect(lard('Three 250 g blocks of lard and half the shea.')).toBeUndefined());
});

const reader = makeReader(loadCatalogue());
const superfat = (said: string): number | null | undefined => {
  const read = readRecipe(reader, `500 g coconut and 500 g sunflower. How much KOH at 3% superfat? ${said}`);
  return read.doubts.length === 0 ? read.superfat : undefined;
};
describe('the superfat of another batch', () => {
  test.each([
    'Last one I did at 8% and it went cloudy.',
    'In June I did it at 8% which was cloudy.',
    'Previous batch had 8%.',
  ])('is not that of this: %s', (said) => expect(superfat(said)).toBe(0.03));
  test.each(['Or should it be 8% like the last one?', 'Better 8% as in the last one.'])('may be: %s', (said) =>
    expect(superfat(said)).toBeUndefined(),
  );
});

// Whether a note bears on the list above it, against the verdicts of those who wrote the notes.
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { isBearing } from '../../src/reading/doubt/bearing.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { learn } from '../posts/notes/learn.ts';
import { notes, postSentences, type Told } from '../posts/notes/texts.ts';

/** The share of `told` that are taken to bear by what was learned from all but them. */
function shareOf(told: readonly Told[], weights: ReadonlyMap<string, number>): number {
  const isHeard = ({ sentences }: Told): boolean =>
    sentences.some((signs) => isBearing(signs, (sign) => weights.get(sign)));
  return told.filter(isHeard).length / told.length;
}

describe('of notes that it has not learned from', () => {
  test.each(['cards', 'handouts', 'ordinary', 'remarks', 'stories'])('%s', (set) => {
    const held = notes.filter((one) => one.set === set);
    const weights = learn([...notes.filter((one) => one.set !== set), ...postSentences]);
    const share = (bears: boolean): number =>
      shareOf(
        held.filter((one) => one.bears === bears),
        weights,
      );
    expect(share(true)).toBeGreaterThan(0.7);
    expect(share(false)).toBeLessThan(0.2);
  });

  test('one in ten sentences of posts that are answered as listed, at the most', () => {
    const isHeld = ({ set }: Told): boolean => /^blind-[23]\d$/.test(set);
    const weights = learn([...notes, ...postSentences.filter((one) => !isHeld(one))]);
    expect(shareOf(postSentences.filter(isHeld), weights)).toBeLessThan(0.1);
  });
});

const reader = makeReader(loadCatalogue());
const list = 'Olive oil 500 g\nCoconut oil 250 g\nCastor oil 50 g\nNaOH 113 g\nWater 240 g\n';

test.each([
  'v3 had 500 coconut and that was the straw one.',
  'An earlier version had 200 g of water and was too dry to mould.',
  'For a stronger brine the maximum is 25 g of salt per 100 g of water.',
  'Last year there were 300 g of coconut in it, and it stung.',
  'Batch 117 had been made with 130 g NaOH, and bit.',
  'My neighbour tried it with 150 g of castor and hers stayed soft.',
])('the list is taken beside: %s', (note) => {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, `${list}\n${note}`);
  expect(doubts).toEqual([]);
  expect([...fats, ...alkali].map(({ grams }) => grams)).toEqual([500, 250, 50, 113]);
  expect(waterGrams).toBe(240);
});

test.each([
  'Lye was 131 g, by the way.',
  'Melt the 200 g coconut first.',
  'Never put the 131 g of lye to the water the other way round.',
  'In went 280 g of water, or so the jug said.',
])('it asks beside: %s', (note) => {
  expect(readRecipe(reader, `${list}\n${note}`).doubts).not.toEqual([]);
});

test.each([
  'Used 180 of the water, I like it to set quickly.',
  'The lye stopped at 90 when the tub was empty.',
  'Poured 210 of the water, the jug was small.',
  'Took the olive down to 400 and gave the castor the other 100.',
  'Treat the castor as 80, my hand slipped.',
])('what surely bears is not left out as talk: %s', (note) => {
  expect(readRecipe(reader, `${list}\n${note}`).doubts).not.toEqual([]);
});

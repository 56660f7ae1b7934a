/** Of two superfats, the one that is settled on counts. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { superfat, doubts } = readRecipe(reader, text);
  return { superfat, doubts: doubts.length };
};
const list = '500 g olive, 200 g coconut.';
const ask = 'How much NaOH?';

describe('settled on', () => {
  test.each([
    ["I usually take 5 % superfat for the family bars but for him I'd like 8 %, so please reckon it at 8.", 0.08],
    ['I had planned 4 percent superfat but was told it goes cloudy, so take 2 percent, I go with that.', 0.02],
    ['My bars have 5 % superfat, for my son I want 7 %. So make it 7.', 0.07],
    ['I wanted 6 % superfat but my aunt said 3 percent lathers better, so 3 it is.', 0.03],
    ['I had decided on 5 % superfat, then on 10 because of my skin, and have come back down to 8, and 8 it is.', 0.08],
    ['I thought of 8 % superfat first, then I decided on 5.', 0.05],
    ["My neighbour swears by 8 % superfat, I'm happy with 5.", 0.05],
    ['Others take 8 % superfat, 5 is enough for me.', 0.05],
    ['My aunt does 10 % superfat, I only do 6.', 0.06],
    ['My neighbour swears by 8 % superfat, so do I.', 0.08],
    ['Superfat 8 %. 5 is the number of fats.', 0.08],
  ])('%s', (told, superfat) => expect(read(`${list} ${told} ${ask}`)).toEqual({ superfat, doubts: 0 }));
  test('in a chat', () =>
    expect(
      read(
        `Bo: 500 g olive, 200 g coconut, superfat 7 %\nKim: 7 % made it soft. Take 5.\nBo: fine, 5 %\nKim: then: ${ask}`,
      ),
    ).toEqual({ superfat: 0.05, doubts: 0 }));
});

test.each([
  'Superfat 5 %, or would 8 % be better for dry skin?',
  'Usually 5 % superfat, maybe 8 % for him.',
  'Superfat 5 %. My sister says 8 %, so take 8 %.',
])('open: %s', (told) => expect(read(`${list} ${told} ${ask}`).doubts).toBeGreaterThan(0));

test.each([
  'Superfat 5 %. I want 3 % of lavender oil, so please take 3.',
  "Superfat 5 %. I'd like a 33 % lye.",
  'Superfat 5 %. Please make 8 bars of it.',
  'Superfat 5 %. Last time I made 12 bars, it is 20 this time.',
])('of something else: %s', (told) => expect(read(`${list} ${told} ${ask}`)).toEqual({ superfat: 0.05, doubts: 0 }));

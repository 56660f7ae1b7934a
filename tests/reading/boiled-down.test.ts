/** A liquid that was boiled down, and what was left of it. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { liquids, waterGrams, alkali, doubts } = readRecipe(reader, text);
  return {
    liquids: liquids.map(({ grams }) => grams),
    water: waterGrams,
    lye: alkali.map(({ grams }) => grams),
    doubts: doubts.length,
  };
};
const fats = ' Fats 400 g tallow, 300 g olive oil, 250 g coconut oil and 50 g castor oil.';
const more = ' Topped that up with 45 g plain water, and the lye, 141 g sodium hydroxide, went into it.';
const got = { liquids: [255], water: 45, lye: [141], doubts: 0 };

test.each([
  'My brother left half a crate of stout. I simmered it until all the fizz was gone, let it go cold, and weighed what was left: 255 g.',
  'Boiled down a bottle of beer, what was left weighed 255 g.',
  'I boiled the coffee for ten minutes, leaving 255 g.',
  'I cooked the goat milk down, and 255 g were left.',
])('%s', (text) => expect(read(text + more + fats)).toEqual(got));

test('nobody has done it in this batch', () =>
  expect(read(`I boiled the coffee last time until 255 g were left.${more}${fats}`).liquids).not.toEqual([255]));

test.each([
  'Boiled down 500 g of flat stout till there was 255 g left.',
  'The beer: started with 600 g, cooked it down and 255 g remained.',
  'Liquid is beer, 500 g reduced to 255 g on the stove.',
  'Boiled 500 ml beer down to 255 g.',
  '500 g of flat beer boiled down, 255 g left of it.',
])('beside its weight before: %s', (text) => expect(read(text + more + fats)).toEqual(got));
test('a paste that was simmered is none', () =>
  expect(read(`280 g milk. I simmered the paste till 900 g was left. 141 g lye.${fats}`)).toMatchObject({
    liquids: [280],
    doubts: 0,
  }));

const oils = 'Lard 500 g, coconut oil 250 g.';
test.each([
  `We boiled fresh milk, was 400 g and after boiling only 250 g left, that we froze. Then 110 g NaOH slowly into the 250 g milk. ${oils}`,
  `I simmered milk, it was 500 g, after the simmering there were 250 g left. 110 g NaOH into it. ${oils}`,
  `The milk I cooked down, had 400 g and at the end 250 g remained. 110 g NaOH in the 250 g milk. ${oils}`,
])('counts what was left, told beside what it was: %s', (text) => expect(potOf(text).doubts).toEqual([]));

test.each([`We boiled milk, was 400 g, left 250 g in the fridge for coffee, 150 g went in. 110 g NaOH. ${oils}`])(
  'asks: %s',
  (text) => expect(potOf(text).doubts).not.toEqual([]),
);

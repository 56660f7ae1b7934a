/** What came out of two packs counts together; of packs that are counted, so many. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const asked = (text: string) => {
  const { grams, doubts } = potOf(text);
  return doubts.length === 0 ? grams : null;
};

describe('out of two packs', () => {
  const coconut = (said: string) => asked(`Olive 550 g. ${said} Lye 116 g in 260 g water. Ok?`)?.['coconut-oil'];
  test.each([
    'Coconut was 200 g from the new jar plus the last 50 g scraped out of the old one.',
    'Coconut: the last 50 g from the old jar and then 200 g from a new one.',
    '200 g of the coconut came out of the new jar and 50 g out of the old.',
    'Coconut 200 g plus the 50 g that was left in the old jar.',
    'Coconut 250 g: 200 g from the new jar plus the last 50 g scraped out of the old one.',
    'Coconut was 250 g from the new jar, the last 50 g of the old one I kept.',
    'Coconut 250 g from the new jar, and 50 g from the old jar are for my neighbour.',
    'Coconut 250 g from the big can and 20 g from the small jar of honey.',
  ])('%s', (said) => expect(coconut(said)).toBe(250));
});

describe('one pack emptied, and so much of another', () => {
  const oils = ' Water 340 g. Oils: 700 g tallow, 300 g coconut, 50 g castor. Ok?';
  test.each([
    'Had two bags of lye open, 85 g in one and a full 500 g in the other. Emptied the first one into the jug and added 66 g from the full one.',
    'Two tins of lye, one with 85 g left and a new 1 kg one. I used up the first and took 66 g out of the second.',
    'Lye: the old bag had 85 g in it, all of that went in, and 66 g from a new bag.',
  ])('%s', (said) => expect(asked(said + oils)?.['naoh']).toBe(151));
  test('nobody says that it was emptied', () =>
    expect(asked(`Two bags of lye, 85 g in one and 66 g in the other.${oils}`)).toBeNull());
});

describe('so many of the packs that are counted', () => {
  const coconut = (said: string) =>
    asked(`500 g lard, 300 g olive. ${said} 142 g lye, 320 g water. Ok?`)?.['coconut-oil'];
  test.each([
    ['I tipped in one of my two 250 g jars of coconut oil.', 250],
    ['Three of the four 100 g blocks of coconut.', 300],
    ['Two 250 g jars of coconut. Both jars are washed and in the recycling.', 500],
    ['Both of my 250 g blocks of coconut.', 500],
  ])('%s', (said, grams) => expect(coconut(said)).toBe(grams));
  test.each([
    "He was to tip in one of the two 250 g jars of coconut oil, and now both jars are in the sink washed and he says he can't remember.",
    'The kid put in one or both of the 250 g jars of coconut, nobody knows.',
  ])('%s is asked about', (said) => expect(coconut(said)).toBeUndefined());
  test('what is not known of something else', () =>
    expect(coconut("250 g coconut. The coconut smells of something, I don't know.")).toBe(250));
});

describe('a stock of fats', () => {
  const parts = { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'sunflower-oil': 200, naoh: 138, water: 310 };
  test.each([
    'Mixed up 3 kg of my oil blend for the winter: 1500 g olive, 900 g coconut, 600 g sunflower. Took one kilo of the blend for this batch, with 138 g lye and 310 g water. The other two kilos are waiting in the bucket.',
    'My master mix is 1500 g olive, 900 g coconut, 600 g sunflower. Today I used 1000 g of the mix with 138 g lye and 310 g water.',
    'I keep a big bucket of blended oils: 1500 g olive, 900 g coconut, 600 g sunflower, 3 kg in all. For this soap I took 1 kg of it, with 138 g lye and 310 g water.',
    '500 g olive, 300 g coconut, 200 g sunflower, mixed in a bucket. 138 g lye and 310 g water.',
  ])('%s', (said) => expect(asked(`${said} Ok?`)).toEqual(parts));
});

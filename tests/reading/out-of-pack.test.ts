/** Weights beside a vessel that are no size of it, and weights beside a recipe that are no size of a batch. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

/** What is in the pot; null where it is asked. */
const potOf = (post: string) => {
  const { grams, doubts } = read(post);
  return doubts.length > 0 ? null : grams;
};

describe('a weight out of a vessel is asked about', () => {
  const oils = 'KOH 90 %. 700 g sunflower, 300 g coconut, 560 g water.';
  test.each([
    `${oils} 226 g from the new tub. Mild?`,
    `${oils} 226 g out of the tub. Mild?`,
    '310 g lard from the first jar, the other jar 290 g, 200 g coconut, 111 g lye. Fine?',
    'The first jar of lard held 310 g, another jar 290 g. 200 g coconut, 111 g lye. Fine?',
    'Petra says 128 g NaOH for my recipe, Heinz says 142 g. I took one of the two. 600 g olive, 300 g coconut, 280 g water. Fine?',
  ])('%s', (post) => expect(potOf(post)).toBeNull());

  test.each([
    '300 g coconut out of a 500 g tub, 500 g olive, 112 g lye, 240 g water. Fine?',
    '300 g coconut, 500 g olive, 112 g lye, 240 g water. The tub is 500 g. Fine?',
    '300 g coconut, 500 g olive, 112 g lye, 240 g water. Cooked in the big pot, poured into a 900 g mould. Fine?',
  ])('its size is not: %s', (post) =>
    expect(potOf(post)).toEqual({ 'coconut-oil': 300, 'olive-oil-virgin': 500, naoh: 112, water: 240 }),
  );
});

describe('two vessels are no weight before and after', () => {
  test.each([
    'The first jar of lard held 310 g, the second jar 290 g, both are in the pot.',
    'One jar of lard held 310 g, another jar 290 g.',
  ])('%s', (said) => {
    const pot = potOf(`${said} 200 g coconut, 111 g lye, 230 g water. Fine?`) as Record<string, number> | null;
    expect([undefined, 600]).toContain(pot?.['lard']);
  });

  test('nor is a vessel that was filled on', () =>
    expect(
      potOf(
        'My lye jug is 85 g empty. With the NaOH in it 215 g, and after the water 505 g. Oils: 600 g olive, 300 g coconut. Fine?',
      ),
    ).toSatisfy((pot: Record<string, number> | null) => pot === null || (pot['naoh'] === 130 && pot['water'] === 290)));

  test('nor is a ready mixed lye its alkali alone', () =>
    expect(
      potOf(
        'My lye is ready mixed, 50 % NaOH. The can weighed 1310 g before pouring and 1070 g after. 600 g olive, 250 g coconut. Fine?',
      ),
    ).toSatisfy((pot: Record<string, number> | null) => pot === null || pot['naoh'] === 120));
});

describe('a total of the fats is compared with the fats alone', () => {
  const rows = '500 g olive, 200 g coconut, 100 g shea';
  const lye = 'NaOH 118 g, water 250 g. Fine?';
  test.each([
    `Altogether 900 g of oils in my pot: ${rows}. ${lye}`,
    `In total 900 g of fats: ${rows}. ${lye}`,
    `${rows}, so in all 900 g fat. ${lye}`,
    `${rows}. Comes to 900 g oils. ${lye}`,
  ])('%s', (post) => expect(potOf(post)).toBeNull());

  test.each([
    `Altogether 800 g of oils in my pot: ${rows}. ${lye}`,
    `${rows}. Comes to 800 g oils. ${lye}`,
    `${rows}, 1168 g altogether with ${lye}`,
    `${rows}, water 250 g, NaOH 118 g. 918 g in total, the water apart.`,
  ])('and fits: %s', (post) =>
    expect(potOf(post)).toEqual({
      'olive-oil-virgin': 500,
      'coconut-oil': 200,
      'shea-butter': 100,
      naoh: 118,
      water: 250,
    }),
  );
});

describe('what is told to be left of two weights is compared with them', () => {
  const rest = '180 g coconut, 120 g sunflower, lye 116 g, water 265 g. Fine?';
  test.each([
    `The bowl with the lard was 870 g, the bowl alone 320 g, so 500 g lard. ${rest}`,
    `870 g with the lard in it, the bowl is 320 g, so that's 500 g lard. ${rest}`,
    `The bottle of olive oil was 915 g before and 265 g after, so 600 g olive oil. ${rest}`,
  ])('and asked about where it is not: %s', (post) => expect(potOf(post)).toBeNull());

  test('and is taken where it is', () =>
    expect(potOf(`The bowl with the lard was 870 g, the bowl alone 320 g, so 550 g lard. ${rest}`)).toEqual({
      lard: 550,
      'coconut-oil': 180,
      'sunflower-oil': 120,
      naoh: 116,
      water: 265,
    }));
});

/** What a post leaves open is asked about, and what only sounds like it is not. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive oil 500 g, coconut oil 200 g, lye 97 g, water 200 g.';
const listed = { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 97, water: 200 };
const withCastor = { ...listed, 'castor-oil': 50 };
const castor = (said: string): string =>
  `500 g olive, 200 g coconut, ${said}, 97 g lye, 200 g water. Is the lye right?`;
const hot = 'Hot process: olive 500 g, coconut 200 g, castor 60 g, lye 100 g, water 220 g.';

describe('a fat that may go in or not', () => {
  test.each([
    '50 g of castor would be nice',
    "I'd love 50 g of castor",
    'maybe 50 g castor',
    'possibly 50 g of castor',
    '50 g castor if I can get it',
    "50 g of castor wouldn't hurt",
    'optional: castor 50 g',
    'castor 50 g (optional)',
    'castor 50 g (can be left out)',
    'castor 50 g (if you have it)',
    'castor 50 g (not strictly needed)',
  ])('%s', (said) => expect(potOf(castor(said)).doubts).toEqual(['corrected']));
  test.each(['50 g of castor for nice lather', '50 g of nice castor'])('but not %s', (said) =>
    expect(potOf(castor(said))).toEqual({ grams: withCastor, doubts: [] }),
  );
  test.each(['Lavender oil 10 g (optional)', 'Salt 5 g (optional)'])('nor what the lye does not ask for: %s', (said) =>
    expect(potOf(`Olive oil 500 g\nCoconut oil 200 g\nLye 97 g\nWater 200 g\n${said}`)).toEqual({
      grams: listed,
      doubts: [],
    }),
  );
});

describe('a figure that is called wrong, with a guess at the right one', () => {
  test.each([
    'That 97 g might be a typo. Probably it was 79.',
    'Forget the lye figure above, I believe it was around 90 g.',
    "Don't trust the coconut figure, it could have been roughly 250 g.",
    'Not sure about the water any more. I guess it was some 230 g.',
    'Please ignore the water above, perhaps a slip, it was maybe 230 g.',
    'Disregard the 97 g. Could be mistyped. It was about 89 g if I remember right.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Fine?`).doubts).toHaveLength(1));
  test.each(['I think it came to about 24 bars.', 'I think it was about 40 °C when I mixed.'])('but not %s', (said) =>
    expect(potOf(`${list} ${said} Fine?`)).toEqual({ grams: listed, doubts: [] }),
  );
});

describe('a weight by mistake', () => {
  test.each([
    'Accidentally weighed 90.',
    'Put 90 by accident.',
    'Actually it turned out to be 90.',
    '(Accidentally weighed 90.)',
  ])('%s', (said) => expect(potOf(`${list} ${said} Is it ok?`).doubts).toHaveLength(1));
  test('but not of bars', () =>
    expect(potOf(`${list} Bars weighed 90 after the cure. Is it ok?`)).toEqual({ grams: listed, doubts: [] }));
});

test.each([
  'A bit of the castor is cooked, the rest goes in after the cook.',
  'Part of the castor gets cooked, the remainder goes in after the cook.',
  'I keep some of the castor back for after the cook.',
  'Not all of the castor is cooked, what is left is stirred in at the end.',
  'I cook with a bit of castor and the rest of it goes in when the cook is done.',
])('of what is cooked in part, how much: %s', (said) =>
  expect(potOf(`${hot} ${said} ok?`).doubts).toEqual(['corrected']),
);

test.each([
  'Olive 500 g, palm k (or is it palm r?) 200 g, lye 95 g, water 220 g. ok?',
  'Olive 500 g, 200 g palm - it says "palm k" or "palm r" on the tub, lye 95 g, water 220 g. ok?',
])('one fat or the other: %s', (text) => expect(potOf(text).doubts.length).toBeGreaterThan(0));

test('two parts that make no whole', () =>
  expect(potOf('Olive 500 g, coconut 300 g, lye 113 g. A third beer, a third water, 300 g. Ok?').doubts).toEqual([
    'corrected',
  ]));

test('a share of years, and what it is since', () =>
  expect(potOf("olive 500 g, coconut 200 g. I did 8 % for years. Since spring it's 3. How much lye?").doubts).toEqual([
    'corrected',
  ]));

describe('a part of what was said was done', () => {
  test.each([
    'Lea: too much coconut, make it 150 g and take more olive. I did part of what you said Lea, it is in the mould now.',
    'My aunt thought it was too much coconut, so I did half of what she told me.',
    'You all said less water. I did some of the things you suggested.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Is the lye right?`).doubts).toHaveLength(1));
  test.each([
    'I followed the advice here and it is in the mould at 40 degrees.',
    'I took some of your advice about the scent and used lavender, more than usual.',
    'I did part of the stirring by hand, like you said, it needs more time.',
    'Last time I did part of what you said. This time it is as written, no less.',
  ])('but not: %s', (said) =>
    expect(potOf(`${list} ${said} Is the lye right?`)).toEqual({ grams: listed, doubts: [] }),
  );
});

describe('lye of one strength or another', () => {
  const pot = '280 g of solution into 600 g olive oil, 300 g coconut oil and 100 g lard.';
  test.each([
    'I keep two cans of ready lye solution, one 40 % and one 50 %. The one I took came out of one or the other.',
    'I have a 30 % and a 50 % lye solution in the shed. The labels have come off both.',
    'I have two bottles of lye solution, one 40 % and one 50 %, and no idea which I used.',
  ])('%s', (said) => expect(potOf(`${said} ${pot} Too much?`).doubts).not.toEqual([]));

  test('but not where it was found out', () =>
    expect(
      potOf(
        'I keep two cans of lye solution, one 40 % and one 50 %. The labels came off but the hydrometer says it was the 50 % one. 280 g of the 50 % solution into 600 g olive oil, 300 g coconut oil, 100 g lard.',
      ),
    ).toMatchObject({ grams: { naoh: 140 }, doubts: [] }));
});

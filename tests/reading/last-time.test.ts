/** What was in the pot of last time, beside this one. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = '400 g olive, 160 g coconut, 40 g castor, water 190 g.';
const lye = (text: string): number | undefined => {
  const { grams, doubts } = potOf(`${text} Better?`);
  return doubts.length === 0 ? grams['naoh'] : undefined;
};

describe('the lye of this time has no other weight', () => {
  test.each([
    'Last time I had 96 g lye in it and it zapped for weeks. So this time 84 g. The oils are the same as then:',
    'Last time I put 96 g of lye and it was harsh, this time 84 g.',
  ])('%s', (said) => expect(lye(`${said} ${fats}`)).toBe(84));
  test.each([
    'Last time I used 96 g lye, so 84 g this time.',
    'The lye was 96 g last time, now 84 g.',
    'Lye 96 g zapped last time. So 84 g now.',
    'The last batch with 96 g lye zapped. I took 84 g today.',
  ])('%s', (said) => expect(lye(`${fats} ${said}`)).toBe(84));
});

test.each([
  ['84 g lye. Last time I had 96 g lye, this time 12 g less.', 84],
  ['Last time 96 g lye was used, this time too.', 96],
])('and else it is as told: %s', (said, grams) => expect(lye(`${fats} ${said}`)).toBe(grams));

test.each([
  'Last time I took 137 g but that was with palm instead of lard so I do not trust it.',
  'Last time I took 137 g, which was with palm in place of the lard.',
  'It was 137 g last time but with palm instead of lard.',
  'Last time I took 137 g of lye but that was with palm.',
])('nothing of it is in this pot: %s', (said) =>
  expect(potOf(`How much lye for 800 g lard and 200 g coconut? ${said}`)).toEqual({
    grams: { lard: 800, 'coconut-oil': 200, water: 0 },
    doubts: [],
  }),
);

test('what is wanted this time is another fat', () =>
  expect(
    potOf('How much lye for 800 g lard and 200 g coconut? I want palm instead of the lard this time.').grams,
  ).toMatchObject({ 'palm-oil': 800 }));

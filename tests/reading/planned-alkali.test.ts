/** The alkali of a recipe, in whose place its writer took the other one. */
import { expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

test.each([
  'The recipe I was given is for KOH, 150 g of it. I wanted a hard bar, so I used 107 g NaOH instead. Oils as given:',
  'The card asks for 150 g KOH. Instead I took 107 g NaOH.',
  'The recipe calls for 150 g KOH. I used 107 g NaOH instead of it.',
])('%s', (said) => {
  const { grams, doubts } = read(`${said} 500 g olive, 250 g coconut. Water 230 g. Right?`);
  expect(grams).toEqual({ 'olive-oil-virgin': 500, 'coconut-oil': 250, naoh: 107, water: 230 });
  expect(doubts).toEqual([]);
});

test('both are of the recipe', () => {
  const { grams } = read('The recipe has 20 g KOH, and 95 g NaOH. 500 g olive, 250 g coconut. Water 230 g. Right?');
  expect([grams['naoh'], grams['koh']]).toEqual([95, 20]);
});

test('nobody has taken it', () => {
  const { doubts } = read(
    'The recipe is for KOH, 150 g of it. 500 g olive, 250 g coconut. Water 230 g. Should I use 107 g NaOH instead?',
  );
  expect(doubts).not.toEqual([]);
});

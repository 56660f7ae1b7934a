/** A fat that was not there, and nothing came for it; and what was only wished for. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const list = 'palm 300 g, olive 400 g, coconut 200 g, castor 50 g, NaOH 126 g, water 270 g.';
const without = { 'palm-oil': 300, 'olive-oil-virgin': 400, 'coconut-oil': 200, naoh: 126, water: 270 };

describe('made without it', () => {
  test.each([
    'But castor was not at home so I made it without, and put nothing else for it.',
    'Castor I did not have, so it went without.',
    'No castor in the shop so I did it without castor, nothing in its place.',
    'Castor was missing, left it out and took nothing for it.',
    'Castor was nowhere to be found so I skipped it.',
  ])('%s', (said) => expect(read(`${list} ${said} Is the NaOH now too much?`)).toEqual({ grams: without, doubts: [] }));
});

describe('it went in, or nobody has made it', () => {
  test.each(['Castor was not there at first, then I found it. Ok?', 'If castor is not at home can I make it without?'])(
    '%s',
    (said) => expect(read(`${list} ${said}`).grams).toEqual({ ...without, 'castor-oil': 50 }),
  );
});

test.each([
  'Would’ve loved 50 g of shea in there too but it hasn’t come in the post yet.',
  'I would have liked 50 g of shea in it too, but the shop had none.',
])('a wish: %s', (said) => {
  const { grams, doubts } = read(`350 g olive oil, 150 g coconut oil, 71 g NaOH, 165 g water. ${said} Lye good?`);
  expect(grams).toEqual({ 'olive-oil-virgin': 350, 'coconut-oil': 150, naoh: 71, water: 165 });
  expect(doubts).toEqual([]);
});

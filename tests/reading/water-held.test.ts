/** A part of the water that was held back. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = '850 g olive oil, 100 g coconut oil, 126 g lye';
const base = { 'olive-oil-virgin': 850, 'coconut-oil': 100, naoh: 126 };

describe('of the water that was held back what was used counts', () => {
  test.each([
    [
      `${fats}. I'd weighed 310 g of water in the big jug but dissolved the lye in only 250 g of it. The other 60 g I held back in case it seized. It didn't, so that water went to the basil.`,
      250,
    ],
    [`${fats}, 310 g water. I dissolved the lye in only 250 g of it. The other 60 g I poured away.`, 250],
    [`${fats}. Dissolved the lye in 250 g of the 310 g water. The rest was never used.`, 250],
    [`${fats}. Weighed 310 g of water, but mixed the lye with just 250 g. The other 60 g stayed in the jug.`, 250],
    [`${fats}, 310 g water. I kept back 60 g of the water and didn't need it.`, 250],
    [`${fats}, 310 g water. I dissolved the lye in 250 g of it. The other 60 g went in at trace.`, 310],
    [`${fats}, 310 g water. 60 g of the water I held back and added at trace.`, 310],
    [`${fats}, 310 g water. Last time I kept back 60 g of the water and didn't use it.`, 310],
    [`${fats}. Water: had 310 g ready, but 60 g of it I held back to add later and never did.`, 250],
    [`${fats}. I had 310 g water ready but 60 g of that I kept back for later and forgot it.`, 250],
    [`${fats}, water 310 g of which I kept back 60 g for later and never added it.`, 250],
    [`${fats}, 310 g water of which 60 g stayed in the jug.`, 250],
    [`${fats}. Water: 310 g measured, 60 g of it still in the jug, I did not put it in.`, 250],
    [`${fats}, 310 g water of which 60 g I kept back for the clay and stirred in later.`, 310],
    [`${fats}, 310 g water. I dissolved the lye in it and stirred 10 minutes.`, 310],
  ])('%s', (text, water) => expect(potOf(text)).toEqual({ grams: { ...base, water }, doubts: [] }));

  test.each([
    `${fats}, 310 g water. I dissolved the lye in only 250 g of it.`,
    `${fats}, 310 g water. Should I hold back 60 g of the water?`,
  ])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));
});

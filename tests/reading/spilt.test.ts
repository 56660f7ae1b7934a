/** What was spilt before it went in, and weighed again. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = '600 g olive, 200 g coconut, 240 g water';
const base = { 'olive-oil-virgin': 600, 'coconut-oil': 200, water: 240 };

describe('what was left of what was spilt is what goes in', () => {
  test.each([
    `I'd weighed 115 g of lye into a cup and caught it with my sleeve. What was still in the cup I put back on the scale: 111 g without the cup. I did NOT top it up, all 111 went in.\n\n${fats}.`,
    `I weighed 115 g of lye and then spilled some. The rest weighed 111 g. That went in.\n\n${fats}.`,
    `${fats}. Lye 115 g, but I knocked the cup and some grains fell onto the floor, so I reweighed it: 111 g.`,
    `${fats}. Had 115 g lye in the cup, dropped some on the counter. Rest weighs 111 g.`,
    `${fats}, 115 g lye. I spilled a bit of the lye before dissolving it. Weighed again: 111 g left. I used those 111 g.`,
    `${fats}. Lye 115 g, but some of it went on the floor, leaving 111 g.`,
  ])('%s', (text) => expect(potOf(text)).toEqual({ grams: { ...base, naoh: 111 }, doubts: [] }));

  test('what stands on top of it tops nothing up', () =>
    expect(
      potOf(
        "Weighed 600 g of olive then knocked the bowl, what was left in it weighed 555 g and I didn't top up. 200 g coconut on top of that. Lye is 106 g naoh in 230 g water.",
      ),
    ).toEqual({ grams: { 'olive-oil-virgin': 555, 'coconut-oil': 200, naoh: 106, water: 230 }, doubts: [] }));

  test('of a fat, too', () =>
    expect(potOf(`${fats}, 115 g lye. I spilled some of the olive. What was left: 540 g.`)).toEqual({
      grams: { ...base, 'olive-oil-virgin': 540, naoh: 115 },
      doubts: [],
    }));

  test.each([
    `${fats}, 115 g lye. I spilled some of the lye, what was left was 110 g, so I topped it up to 115 g.`,
    `${fats}, 115 g lye. I spilled some of the lye, what was left was about 110 g.`,
    `${fats}, 115 g lye. I spilled some of the solution. What was left: 330 g.`,
    `${fats}, 115 g lye. Spilled some lye on the counter. What was left in the bag: 80 g.`,
  ])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));

  test.each([
    `${fats}, 115 g lye. Last time I spilled some lye, and the rest weighed 110 g.`,
    `${fats}, 115 g lye. I spilled some batter on the counter. What was left in the pot: 1100 g.`,
  ])('nothing of it: %s', (text) => expect(potOf(text)).toEqual({ grams: { ...base, naoh: 115 }, doubts: [] }));
});

/** The lye that somebody else takes, beside the writer's own. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = '500 g tallow, 150 g coconut, 200 g sunflower, 250 g water.';
const lye = (text: string): number | undefined => {
  const { grams, doubts } = potOf(`${text} Right?`);
  return doubts.length === 0 ? grams['naoh'] : undefined;
};

describe("the writer's own counts", () => {
  test.each([
    `My sister insists on 130 g of lye for this one, I've always gone a bit lower. ${fats} I put in 117 g this morning.`,
    `${fats} My sister insists on 130 g of lye. I put in 117 g.`,
    `${fats} 117 g lye. My neighbour always takes 130 g for the same fats.`,
    `${fats} 117 g lye. My neighbour she takes always 130 g for the same fats, is mine too few?`,
    `${fats} 117 g lye. My mother took 130 g for these oils.`,
  ])('%s', (text) => expect(lye(text)).toBe(117));
});

test.each([
  `${fats} My neighbour takes 117 g lye for these fats.`,
  `My sister measured the lye, she took 117 g for these fats: ${fats}`,
])('where there is no other: %s', (text) => expect(lye(text)).toBe(117));

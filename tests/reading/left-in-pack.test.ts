/** What a full pack held and what is still in it, told in clauses of any order. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

describe('the lye is what the pack lost', () => {
  test.each([
    'The tub was new, 1000 g net, and there are 890 g of lye in it now, nobody else uses it.',
    'Lye: 890 g remain in the tin, which was sealed before, 1 kg.',
    'There’s 890 g left in the lye bag. It was an unopened bag, 1000 g.',
    'What was left in the lye tub after = 890 g, the tub was full to start with (1000 g).',
    'I’ve just weighed what is still in the lye tub: 890 g. It was new, 1 kg.',
    'My lye tub had 990 g in it this morning, now there are 880 g left in the tub.',
    '110 g lye. My lye tub was new, 1 kg, there are 890 g left in it now.',
  ])('%s', (said) => {
    const { grams, doubts } = read(`Lard 500 g, olive 300 g, water 250 g. ${said} Right?`);
    expect(grams).toEqual({ lard: 500, 'olive-oil-virgin': 300, naoh: 110, water: 250 });
    expect(doubts).toEqual([]);
  });
});

describe('more was taken of it than for this pot, or it is told of another one', () => {
  test.each([
    'lye 110 g. The lye tub was new, 1 kg, there are 600 g in it now after three batches.',
    'lye 110 g. I have 400 g of lye left in the tub for next time, it was full, 1 kg, in spring.',
    'lye 110 g. In the jar there is still 90 g coconut, it was full, 500 g. Could I add it?',
  ])('%s', (said) => {
    const { grams } = read(`Lard 500 g, olive 300 g, water 250 g, ${said} Right?`);
    expect(grams).toEqual({ lard: 500, 'olive-oil-virgin': 300, naoh: 110, water: 250 });
  });
  test('what is weighed is another amount than the pack lost', () => {
    const { doubts } = read(
      'Lard 500 g, olive 300 g, 130 g lye, 250 g water. My lye tub was new, 1 kg, there are 890 g left in it now. Right?',
    );
    expect(doubts).not.toEqual([]);
  });
});

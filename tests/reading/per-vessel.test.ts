/** What one bar or cavity takes, and the whole batch asked about. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const one = '40 g olive, 30 g coconut, 20 g palm, 13 g lye and 30 g water';
const times = (n: number) => ({
  grams: {
    'olive-oil-virgin': 40 * n,
    'coconut-oil': 30 * n,
    'palm-oil': 20 * n,
    naoh: 13 * n,
    water: 30 * n,
  },
  doubts: [],
});

test.each([
  [
    `I filled my 12-cavity mould from one pot. Worked out per bar there's ${one} in each. Is the whole batch ok on lye?`,
    12,
  ],
  [`Have a silicone mould with 6 cavities. In every cavity is ${one}. Is the whole thing safe?`, 6],
  [`My mould has eight holes; each hole takes ${one}. Is lye ok for the entire batch?`, 8],
  [`9-bar mould, per bar ${one}. All from one pot, good?`, 9],
  [`I make ten bars in one go. Per bar it is ${one}. Is the batch good?`, 10],
  [`Two tins. Each tin takes ${one}. I mixed everything in one pot. Lye ok?`, 2],
  [
    `Per mould I need ${one}. I filled three moulds and mixed the lot in one big pot, three times everything. Right?`,
    3,
  ],
  [`Two tins. Each tin takes ${one}. Is the lye ok for one tin?`, 1],
  [`Per bar: ${one}. Is a bar lye heavy?`, 1],
  [`My 12-cavity mould is full now. In the pot were ${one}. Is the whole batch ok on lye?`, 1],
  [`12-cavity mould: ${one}, each bar comes out at 115 g. Ok?`, 1],
] as const)('%s', (text, n) => expect(potOf(text)).toEqual(times(n)));

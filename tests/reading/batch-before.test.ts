/** What was done in the batch before this one is not done in this one. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'lard 400 g, palm 300 g, coconut 250 g, lye 141 g, water 380 g, after the cook jojoba 30 g. ';

test.each([
  "The batch before this I put the jojoba in at the beginning and couldn't tell it was there. Lye right?",
  'In the batch before this one I put the jojoba in at the beginning.',
  'Two batches ago I put the jojoba in at the beginning.',
  'The one before that I left the palm out.',
  'The time before I forgot the palm and it was soft.',
  'The loaf before this one had 160 g lye and it zapped.',
  'The try before this I used 420 g of water and it took ages.',
])('is of another: %s', (text) => expect(potOf(list + text)).toEqual(potOf(list)));

test('but what is said of today is of this one', () =>
  expect(potOf(`${list}I put the batch before this one on the shelf. Forgot the palm today though.`).grams).toEqual({
    ...potOf(list).grams,
    'palm-oil': undefined,
  }));

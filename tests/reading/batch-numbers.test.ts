/** Batches that are told of by their mere number, under a title with that of the one that is asked about. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rows = 'Olive oil 1000 g\nLye 128 g\nWater 300 g\n';
const pot = potOf(rows);

test.each([
  `BATCH 47 – made 14 Feb 2025, mould no. 3\n\n${rows}\nNotes: 46 had 350 of water and took forever to unmould.`,
  `Batch 47\n${rows}46 had 350 g water and was soft. Lye ok?`,
  `Batch no. 12\n${rows}In 11 I used 350 g of water and in 10 it was 400.`,
  `Batch 47\n${rows}46 and 45 were with lard and cracked.`,
  `Batch 47\n${rows}10 bars were sold. Is the lye ok?`,
  `Batch 12\n${rows}I cut it in 10 and it was hard. Is the lye ok?`,
])('are left out: %s', (text) => expect(potOf(text)).toEqual(pot));

test.each([
  `Batch 47\n${rows}48 will have 350 g of water.`,
  `Batch 47\n${rows}47 had 350 g of water.`,
  `Batch 47\n${rows}46 g of castor had to go in too.`,
  `${rows}46 had 350 of water.`,
])('are asked about: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));

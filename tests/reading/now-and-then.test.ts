/** What weighed so much last time, and what it weighs now; what a soap is meant to come out as. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = 'Lard 500 g, coconut 250 g, olive 250 g';
const lyeOf = (text: string) => {
  const { grams, doubts } = potOf(text);
  return [grams['naoh'], grams['water'], doubts];
};

test.each([
  `Last month I used 156 g of lye and the bar was chalky. So now I've come down to 142 g. ${fats}. Water is double the lye.`,
  `Before that I had 120 g of lye for these and it stayed soft, so I went up to 142 g. ${fats}. Water 284 g.`,
  `Last batch had 156 g of lye. I dropped it to 142. ${fats}. Water 284 g.`,
  `${fats}, lye 142 g, water 284 g. Last week I had 156 g lye, now it's 142.`,
  `${fats}, lye 142 g, water 284 g. Last week I had 156 g lye, now I'm down to 142.`,
  `${fats}, water 284 g. Last week I had 156 g lye, now I use 142.`,
  `${fats}, water 284 g, lye was 156 g, today 142 g.`,
  `${fats}, lye 142 g, water 284 g. Yesterday I had 300 g of water, today 284.`,
  `My water used to be 380 g and it took ages to unmould. Now I take 284 g. ${fats}, lye 142 g.`,
])('counts as it is now: %s', (text) => expect(lyeOf(text)).toEqual([142, 284, []]));

test.each([
  `${fats}, water 284 g. 142 g lye now, before it was 156 g.`,
  `${fats}, lye 156 g, water 284 g. The lye is 142 g now.`,
  `${fats}, lye 142 g, water 284 g, now cooling.`,
  `${fats}, lye 142 g, water 284 g. I went up to 60 °C and back down to 40.`,
  `${fats}, lye 142 g, water 284 g. Week 1 a bar weighed 118 g, now it has come down to 104 g.`,
])('is of what stands before it: %s', (text) => expect(lyeOf(text)).toEqual([142, 284, []]));

test.each([
  'I meant it to come out at 5 % superfat, does it?',
  'I meant it to end up at 5 %, is that so?',
  'I meant this to be 5 % superfat.',
  'I meant the bar to be hard. Is the lye ok?',
  'I meant it for the gardeners at work. Is the lye ok?',
])('puts no row right: %s', (text) =>
  expect(lyeOf(`${fats}, lye 142 g, water 284 g. ${text}`)).toEqual([142, 284, []]),
);

test.each(['I meant it to be lard.', 'I meant it to come out at 1.4 kg.'])('may, and is asked about: %s', (text) =>
  expect(potOf(`${fats}, lye 142 g, water 284 g. ${text}`).doubts).not.toEqual([]),
);

test.each([
  'The first time I used 135 and it was greasy.',
  'The very first time it was 135 g of lye.',
  'When I started I used 135 and it was greasy.',
  'Years ago I used 135 and it was greasy.',
  'Two years back I used 135.',
  'Back in the day I used 135.',
  "For my sister's I used 135.",
  'In the class we used 135.',
  'I almost put in 241 g of lye instead of 142.',
  'I nearly put 241 g, thank God for the second look.',
  'I was about to use 241 g of lye. Phew.',
  'I came close to pouring in 241 g of lye. Phew.',
])('is of another day: %s', (text) =>
  expect(lyeOf(`${fats}, lye 142 g, water 284 g. ${text}`)).toEqual([142, 284, []]),
);

test.each(['I used 135 in the end.', 'I used 135 for the lye.', 'I weighed 135 g instead of 142.'])(
  'is of this one: %s',
  (text) => expect(lyeOf(`${fats}, lye 142 g, water 284 g. ${text}`)).toEqual([135, 284, []]),
);

test.each(['I nearly put in 241 g of lye but took 131 g.', 'I put in nearly 150 g of lye. Ok?'])(
  'is asked about: %s',
  (text) => expect(potOf(`${fats}, lye 142 g, water 284 g. ${text}`).doubts).not.toEqual([]),
);

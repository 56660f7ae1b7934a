/** What the scale shows as a bowl fills up, and names that stand apart from their weight by a vessel. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const lye = ' Lye 118 g, water 260 g. Ok?';
const pot = { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'castor-oil': 50, naoh: 118, water: 260 };

test.each([
  "Empty bowl: 400 g. With the olive oil in: 900 g. Then coconut on top of that: 1200 g. Then castor on top: 1250 g. That's all the fat.",
  'Bowl A, empty: 400 g.\nBowl A after olive oil: 900 g.\nBowl A after coconut on top of that: 1200 g.\nBowl A after castor on top of both: 1250 g.\n',
  'Empty bowl 400 g, with olive oil 900 g, plus coconut 1200 g, plus castor 1250 g.',
  'The bowl alone weighs 400 g. Olive in: 900 g. Coconut added: 1200 g. Castor added: 1250 g.',
  'My bowl weighs 400 g empty, and I never pressed tare. I spooned in olive until the scale said 900 g, then coconut until it said 1200 g, and last castor until it said 1250 g. All readings with the bowl on.',
  "I don't zero my scale, I just keep adding. Pot alone 400 g. With the olive oil in, 900 g. With coconut, 1200 g. With the castor, 1250 g, finished.",
  'Never pressed zero, wrote down what the display said:\n\nempty bowl 400\n+ olive 900\n+ coconut 1200\n+ castor 1250\n\n(grams).',
  'My scales have lost their tare button. Empty pan: 400 g. With the olive in: 900 g. Then I poured in coconut oil until it showed 1,200 g, then castor until it showed 1,250 g. That was all the fat.',
  'Empty pan: 400 g. With the olive in: 900 g. Then I poured in coconut until it read 1200 g, then castor till the scale said 1250 g.',
  'The tare is broken. Empty bowl 400 g. Olive until it said 900 g, then coconut until it said 1200 g, then castor until it said 1250 g.',
  'Bowl on the scale is 400 g empty. I never zeroed it. Put in the olive, 900 g. Put in the coconut, 1200 g. Put in the castor, 1250 g.',
])('each reading has the one before: %s', (text) => expect(potOf(text + lye)).toEqual({ grams: pot, doubts: [] }));

test('weights beside the empty bowl stay as they are', () =>
  expect(potOf(`Empty bowl: 400 g. Olive oil: 500 g. Coconut: 300 g. Castor: 50 g.${lye}`)).toEqual({
    grams: pot,
    doubts: [],
  }));

test('what is weighed behind the tare stands as it is', () =>
  expect(
    potOf(`Empty bowl: 400 g. With the olive oil in: 900 g. Then I tared. Coconut: 300 g. Castor 50 g.${lye}`),
  ).toEqual({ grams: pot, doubts: [] }));

test.each([
  'My bowl weighs 400 g. Olive oil 900 g, coconut 1200 g, castor 1250 g.',
  'Empty bowl: 400 g. With the olive oil in: 900 g. Then coconut on top of that: 300 g.',
])('is asked about: %s', (text) => expect(potOf(text + lye).doubts).not.toEqual([]));

test.each([
  'Lye weighed in a paper cup, cup tared out: 118 g. Water in a steel jug, jug tared out: 260 g.',
  'Lye (NaOH) weighed in a paper cup, cup tared out: 118 g. Water in a steel jug, jug tared out: 260 g.',
  'Lye, cup tared out: 118 g. Water, jug tared out: 260 g.',
])('a vessel that was tared: %s', (text) =>
  expect(potOf(`Olive 500 g, coconut 300 g, castor 50 g. ${text}`)).toEqual({ grams: pot, doubts: [] }),
);

test.each([
  "I've only one jug, the same jug for all. Empty it's 400 g.\njug + olive oil 900 g\njug + coconut oil (after the olive was out and the jug wiped) 700 g\njug + castor oil 450 g\n",
  'I used the same bowl for all, emptied every time. The empty bowl is 400 g. Bowl and olive 900 g, bowl and coconut 700 g, bowl and castor 450 g.',
  'I used the same bowl for all. The empty bowl is 400 g. Bowl with olive 900 g. Bowl with coconut 700 g. Bowl with castor 450 g.',
])('one vessel, each fat by itself: %s', (text) => expect(potOf(text + lye)).toEqual({ grams: pot, doubts: [] }));

test.each([
  'I used the same bowl for everything, tared each time. Bowl is 400 g empty. Olive 500 g, coconut 300 g, castor 50 g.',
  'The pan alone is 800 g. I tared between. Olive in: 500 g, coconut in: 300 g, castor in: 50 g.',
])('tared in between: %s', (text) => expect(potOf(text + lye)).toEqual({ grams: pot, doubts: [] }));

test.each([
  'Lye was on a paper with the scale zeroed, 118 g. Water also zeroed, 260 g.',
  'Lye was weighed separately in its own cup, zeroed, 118 g, and 260 g water.',
  'Lye 118 g, scale zeroed, 260 g water.',
])('a scale that was zeroed: %s', (text) =>
  expect(potOf(`Olive 500 g, coconut 300 g, castor 50 g. ${text} Ok?`)).toEqual({ grams: pot, doubts: [] }),
);

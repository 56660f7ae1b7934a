/** One fat of a list that was not there, and another one that came for it, however it is told. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '500 g olive, 200 g coconut, 100 g palm, lye 112 g, water 260 g.';
const pot = (said: string): unknown => {
  const { grams, doubts } = potOf(`${list} ${said}`);
  return doubts.length > 0 ? 'asked' : { palm: grams['palm-oil'], lard: grams['lard'] };
};

test.each([
  'Palm I do not have, I took lard for it, same weight.',
  'In place of palm came lard, also 100 g.',
  'Palm is finished, in its place I gave lard.',
  'Palm was over so I used lard.',
  'Not palm but lard I used, same amount.',
  'For palm I took lard, 100 g also.',
  'The palm I changed with lard, gram by gram.',
  'But palm there was not, so lard went in, the same 100 g.',
  'I have no palm at home, put 100 g lard.',
  'Palm not available here, using 100g lard in place.',
  'There is lard in it in the place of the palm, same weight.',
  'Lard is in it where palm stands, same weight.',
  'no palm today -> lard 1:1',
  'palm => lard, same weight',
  'as palm was not there, lard is taken.',
  'Since I could not find palm I went with lard, weight unchanged.',
  'I could not find palm so lard.',
  'Wife hates palm so we took lard, weight same.',
  'mine has lard, no palm.',
  'lard, not palm, went in',
])('%s', (said) => expect(pot(said)).toEqual({ lard: 100 }));

test('with a weight of its own', () => {
  expect(pot('Then I found no palm in the house, so instead of the palm I will use 120 gm lard.')).toEqual({
    lard: 120,
  });
  expect(
    potOf('500 g olive, 200 g coconut, 120 g palm, i dont do palm so lard instead, 120g. lye?').grams,
  ).toMatchObject({
    'olive-oil-virgin': 500,
    'coconut-oil': 200,
    lard: 120,
  });
});

test.each([
  'My sister takes lard instead of palm.',
  'Next time I will take lard instead of palm.',
  "The palm doesn't melt as fast as lard.",
  'I had no lard so palm it is.',
  'Usually I take lard but palm was cheap.',
  'I never use lard, only palm.',
  "They say lard is better than palm, I don't care.",
  'The tub says palm but it smells like lard.',
  'I used palm and not lard.',
  'No more lard in the shop, and the same with palm.',
])('as it is listed: %s', (said) => expect(pot(said)).toEqual({ palm: 100 }));

test.each(['Half of the palm I replaced with lard.', 'There is no palm in it, lard and sunflower instead.'])(
  'asked: %s',
  (said) => expect(pot(said)).toBe('asked'),
);

test.each(['I have no palm, and so no lard is in it.', 'My sister had no palm so she took lard.'])(
  'no lard came for it: %s',
  (said) => expect(pot(said)).not.toEqual({ lard: 100 }),
);

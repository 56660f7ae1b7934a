/** A swap whose weight is settled is decided on, however it is put. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '450 g olive oil\n300 g palm oil\n200 g coconut oil\n50 g castor oil\n138 g NaOH\n320 g water\n\n';

test.each([
  "I don't buy palm. I'd put lard in for all of Marit's palm, gram for gram, and change nothing else. Will her NaOH do?",
  "I'd put lard in for all of the palm, gram for gram. Will the NaOH still do?",
  "I don't use palm. I'd swap all of it for lard, weight for weight. Is the NaOH still right?",
  'We never buy palm, so lard goes in for it, gram for gram. Is the NaOH still right?',
  "I won't use palm. Lard instead, same weight. Is the NaOH still right?",
  "I'd use lard for the palm, like for like, and leave the rest. Her NaOH ok?",
])('is made: %s', (text) => {
  const { grams, doubts } = potOf(list + text);
  expect([grams['lard'], grams['palm-oil'], grams['naoh'], doubts]).toEqual([300, undefined, 138, []]);
});

test.each([
  'Could I put lard in for the palm, gram for gram?',
  'My sister puts lard in for the palm, gram for gram. Is mine ok?',
  "Next time I'd use lard for the palm, one for one. Is this ok?",
  'Someone told me to use lard for the palm, one for one. Is this ok?',
  'I use the same amount of palm in all my soaps. Is this ok?',
  'Lard for the birds, same amount as last winter. Is the NaOH ok?',
])('is not made: %s', (text) => expect(potOf(list + text).grams).toEqual(potOf(list).grams));

test.each(["I don't buy palm. Is the NaOH still right?", 'I put lard in for the shea, gram for gram. Ok?'])(
  'is asked about: %s',
  (text) => expect(potOf(list + text).doubts).not.toEqual([]),
);

/** A figure that lacks a digit, or has one more, put right by what is told of it. */
import { expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

/** What is in the pot; null where it is asked. */
const potOf = (post: string) => {
  const { grams, doubts } = read(post);
  return doubts.length > 0 ? null : grams;
};

const pot = { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 98, water: 250 };

test.each([
  'Jo: what went in?\nme: 500 g olive, 20 g coconut, 98 g NaOH, 250 g water\nJo: 20??\nme: 200 of course, dropped a zero\nSo is it fine?',
  '500 g olive, 20 g coconut, 98 g NaOH, 250 g water. Oops, 200 of course, dropped a zero. Fine?',
  '500 g olive, 20 g coconut, 98 g NaOH, 250 g water. Sorry, 200 coconut, dropped a zero. Fine?',
  "500 g olive, 200 g coconut, 9.8 g NaOH, 250 g water. That's 98 of course, slipped a digit. Fine?",
  '5000 g olive, 200 g coconut, 98 g NaOH, 250 g water. 500, one zero too many. Fine?',
])('%s', (post) => expect(potOf(post)).toEqual(pot));

test.each([
  '500 g olive, 200 g coconut, 98 g NaOH, 25 g water. I forgot a zero. Fine?',
  '500 g olive, 20 g coconut, 20 g shea, 98 g NaOH, 250 g water. 200 of course, dropped a zero. Fine?',
])('where none or several may be meant it is asked: %s', (post) => expect(potOf(post)).toBeNull());

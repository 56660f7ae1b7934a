/** The fats of one mould by their weight and shares, where all of them together are meant, or one. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const grams = (text: string): unknown => {
  const { 'olive-oil-virgin': olive, 'coconut-oil': coconut } = read(text).grams;
  return [olive, coconut, ...read(text).doubts];
};

describe('the fats of all moulds', () => {
  test.each<[string, number, number]>([
    ['I fill two moulds, 500 g of fats in each: 60 % olive, 40 % coconut. How much lye in total?', 600, 400],
    ['Two moulds, each takes 500 g of fats: 60 % olive, 40 % coconut. How much lye for both?', 600, 400],
    ['Three moulds, 400 g of oils per mould, 60 % olive, 40 % coconut, all in one pot. How much lye?', 720, 480],
    ['Each of my two moulds takes 500 g of oils, 60 % olive, 40 % coconut. 141 g lye, 300 g water. Ok?', 600, 400],
    [
      'Each of my two moulds takes 350 g oil, 700 g in all. 60% olive, 40% coconut of the 700. Lye 99 g for both.',
      420,
      280,
    ],
  ])('%s', (text, olive, coconut) => expect(grams(text)).toEqual([olive, coconut]));
});

describe('the fats of one', () => {
  test.each<[string, number, number]>([
    ['Three moulds, 400 g of oils per mould, 60 % olive, 40 % coconut. How much lye per mould?', 240, 160],
    ['Each of my two moulds takes 500 g of oils, 60 % olive, 40 % coconut. 71 g lye, 150 g water. Ok?', 300, 200],
    ['My two moulds are clean. 500 g of oils, 60 % olive, 40 % coconut. How much lye?', 300, 200],
  ])('%s', (text, olive, coconut) => expect(grams(text)).toEqual([olive, coconut]));
});

test('nobody says of how many', () => {
  const { doubts } = read('Each of my two moulds takes 500 g of oils, 60 % olive, 40 % coconut. How much lye?');
  expect(doubts).not.toEqual([]);
});

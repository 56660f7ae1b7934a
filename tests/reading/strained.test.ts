/** A fat that something was steeped in, and what came out of it. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = 'Coconut 135 g and shea 60 g. Lye 80 g, water 170 g. Ok?';
const olive = (said: string): number | undefined => {
  const { grams, doubts } = potOf(`${said} ${rest}`);
  return doubts.length === 0 ? grams['olive-oil-virgin'] : undefined;
};

describe('only what was strained goes in', () => {
  test.each([
    [
      'Infused 400 g olive oil with calendula for six weeks, after straining I got 365 g back and used all of that.',
      365,
    ],
    ['I infused 400 g olive oil with calendula, strained it and had 365 g left, which I used.', 365],
    ['400 g olive oil infused with 20 g calendula; strained, 365 g came out and that went in.', 365],
    ['Steeped 400 g olive oil with nettle, 365 g of it were left after straining.', 365],
    ['Olive 400 g, infused with calendula. After straining 365 g.', 365],
    ['Soaked annatto in 400 g olive for a week. Strained: 365 g. All of it went in.', 365],
    ['Infused 500 g olive oil with calendula, got 465 g back and used 400 g of it.', 400],
    [
      "I filled a jar with 400 g of olive oil and dried calendula. Strained it, squeezed the petals and got only 365 g of oil back; that's what went in, nothing topped up.",
      365,
    ],
    ['Castor 30 g, 400 g of olive oil that I infused with nettle (365 g after straining).', 365],
  ])('%s', (said, grams) => expect(olive(said)).toBe(grams));
});

describe('and else it is as it was weighed', () => {
  test.each([
    'Olive 400 g, infused with calendula and strained.',
    'Infused 400 g olive oil with 30 g calendula.',
    'Infused 450 g olive oil with calendula last year and got 415 g back. This time olive 400 g.',
  ])('%s', (said) => expect(olive(said)).toBe(400));
});

test('what it was filled up to is asked about', () => {
  expect(olive('Infused 400 g olive oil with nettle, got 365 g back, topped up with 35 g fresh.')).toBeUndefined();
  expect(olive('Infused 400 g olive oil with nettle, got 365 g back and topped it up with fresh.')).toBeUndefined();
});

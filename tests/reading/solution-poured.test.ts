/** Of a solution that was made, so much went in. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const oils = 'Olive 540 g, coconut 230 g. ';
const made = `${oils}120 g lye in 240 g water = 360 g solution. `;
const listed = `${oils}120 g lye, 240 g water. `;
const pot = (lye: number, water: number) => ({ 'olive-oil-virgin': 540, 'coconut-oil': 230, naoh: lye, water });

test.each([
  `${made}Poured 330 g of that into the oils, stopped as I'd reached the weight I wanted, the last 30 g stays in the jug and isn't going in.`,
  `${oils}I made 360 g of solution from 120 g NaOH and 240 g water and put 330 g of it in.`,
  `${oils}120 g lye in 240 g water makes 360 g solution; I used 330 g of it, 30 g is left over.`,
  `${listed}Of the 360 g of lye solution only 330 g went in.`,
  `${listed}I poured in 330 g of the solution and kept 30 g back.`,
  `${oils}120 g lye dissolved in 240 g water. 30 g of the solution stayed in the jug.`,
])('%s', (text) => expect(potOf(`${text} Fine?`)).toEqual({ grams: pot(110, 220), doubts: [] }));

test('all of it', () => expect(potOf(`${made}All 360 g went in.`)).toEqual({ grams: pot(120, 240), doubts: [] }));

test.each([
  `${listed}I poured 330 g of the mixture into the small mould.`,
  `${listed}I poured 330 g of it into a small mould and the rest in the big one.`,
])('is of the soap: %s', (text) => expect(potOf(text)).toEqual({ grams: pot(120, 240), doubts: [] }));

test.each([
  `${listed}I used 330 g of that water cold and 100 g lye.`,
  `${made}Poured about 330 g of that in.`,
  `${made}Poured 330 g of that, then the last 30 g too.`,
  `${made}If I pour 330 g of that in, is it fine?`,
  `${listed}I mixed them and took 330 g of the mixture for a lotion.`,
  `${listed}30 g of the lye stayed in the jug.`,
])('is asked about: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));

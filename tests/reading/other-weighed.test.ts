/** What the writer took for another fat, and what was weighed in truth. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const others = 'The other oils were right, 400 g olive and 100 g castor. Lye 108 g, water 260 g. Do I have a problem?';
const grams = (fat: string) => ({ [fat]: 300, 'olive-oil-virgin': 400, 'castor-oil': 100, naoh: 108, water: 260 });

test.each([
  [
    "So I wrote down 300 g palm, but looking at the tub just now it's palm KERNEL oil that I weighed out.",
    'palm-kernel-oil',
  ],
  ['I wrote 300 g coconut, but just saw on the jar it was lard that I weighed out.', 'lard'],
  ["My list says 300 g sunflower but I look at the bottle now and it's rapeseed oil what I poured.", 'canola-oil'],
  ['Noted 300 g shea, but reading the label again it is cocoa butter that went in.', 'cocoa-butter'],
])('%s', (said, fat) => expect(potOf(`${said} ${others}`)).toEqual({ grams: grams(fat), doubts: [] }));

const list = '400 g olive, 300 g palm, 100 g castor, lye 108 g, water 260 g.';
test.each([
  "Looking at the tub just now, it's palm kernel oil that I weighed out.",
  "My note says castor but I think it's almond oil that I took.",
])('asked: %s', (said) => expect(potOf(`${list} ${said} Ok?`).doubts).not.toEqual([]));
test.each([
  "I looked at the tub and it's palm oil that I weighed out, good.",
  "It's the castor that makes it sticky.",
  "It's almond oil that I used for the mould.",
])('as listed: %s', (said) => expect(potOf(`${list} ${said} Ok?`)).toEqual({ grams: grams('palm-oil'), doubts: [] }));

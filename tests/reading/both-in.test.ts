/** One fat from two vessels, both of which went in. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = 'Coconut 200 g\nlye 104 g\nwater 220 g\n';
const pot = { lard: 550, 'coconut-oil': 200, naoh: 104, water: 220 };

test.each([
  `lard, old tub 300 g\nlard, tin 250 g\n${rest}both lards went into the pot, both are good.`,
  `lard from the old tub 300 g\nlard from the new tub 250 g\n${rest}We have both tubs in the pot emptied.`,
  `lard, opened jar: 300 g\nlard, new jar: 250 g\n${rest}I used both.`,
  `<table><tr><td>lard, green tub</td><td>300 g</td></tr><tr><td>lard, tin</td><td>250 g</td></tr></table>\n${rest}both lards went into the pot.`,
  `${rest}Of the lard we were having two tubs, in the first 300 g and in the second 250 g, we turned both in the pan.`,
  `${rest}From lard there were two jars, in the old 300 g, in the new 250 g, and I emptied both in.`,
  `${rest}In the blue pan I melted 300 g lard, in the red pan 250 g lard. Then I tipped the red pan into the blue one.`,
])('counts as their sum: %s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

test.each([
  `${rest}Of the lard we had two tubs, in the first 300 g and in the second 250 g, only the first went in.`,
  `${rest}Of the lard we had two tubs, in the first 300 g and in the second 250 g, should I use both?`,
  `${rest}In the blue pan I melted 300 g lard, in the red pan 250 g lard. If I tip the red pan into the blue one, is it ok?`,
  `lard from the tub 300 g\nlard from the tin 250 g\n${rest}I did not use both, the tin is for frying.`,
  `lard, tub one 300 g\nlard, tub two 250 g\n${rest}Both tubs are in the cupboard now.`,
])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));

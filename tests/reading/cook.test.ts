// Fat that goes in after the cook, in the words of people who cook soap; and fat that does not, said with the same words.
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const pot = 'Crock pot batch: coconut 300 g, lard 500 g, olive 200 g. Lye 146 g NaOH in 380 g water. ';
const after = (text: string) => readRecipe(reader, text).after.map(({ id, grams }) => `${id} ${grams}`);

test.each([
  'When it looked like petroleum jelly I stirred in 40 g shea butter and 25 g lavender EO.',
  'Once it was mashed potatoes I added 40 g shea butter.',
  'At the petroleum jelly stage: 40 g shea butter.',
  '11:15 mashed potato. 11:35 petroleum jelly. Tongue test nothing.\n11:45 stirred in 40 g shea.',
  '\n11:35 vaseline.\n11:45 stirred in 40 g shea.',
  'As soon as it had gone translucent, 40 g shea went in.',
  'When it was done, stirred in 40 g shea.',
  'when done: 40 g shea',
  'Zap test clean. Then I folded in 40 g melted shea.',
  'It passed the tongue test, so in went 40 g shea butter.',
  'Turned the crockpot off and stirred in 40 g shea butter.',
  'Heat off, then 40 g shea butter and the scent.',
  'Cooked for 50 min on low, then added 40 g shea butter.',
  '40 g shea butter goes in last, once it looks like mashed potato.',
  '40 g shea for glide, after the cook, and 25 g lavender.',
  '40 g shea, added after the cook - and 25 g lavender.',
  "When it's glossy all through I melt in 40 g of shea.",
  'I wait for it to turn shiny, then beat in 40 g shea.',
  'I keep 40 g shea back for the end of the cook.',
  'Once it is fertig gekocht 40 g Sheabutter on top.',
])('after the cook: %s', (text) => expect(after(pot + text)).toEqual(['shea-butter 40']));

test.each([
  'At light trace I added 40 g shea butter.',
  'Others put theirs in after the cook, I never do: 40 g of shea goes in at light trace.',
  'It went through applesauce while 40 g shea melted in it.',
  'Before pouring I stirred in 40 g shea butter.',
  'When glossy at trace, 40 g shea goes in.',
  'Blend till glossy, then in goes 40 g shea.',
  'Also 40 g shea in the pot, and after the cook 25 g lavender.',
])('before it: %s', (text) => expect(after(pot + text)).toEqual([]));

test('a pot that looks like something holds none of it', () => {
  const { fats, liquids, doubts } = readRecipe(reader, `${pot}It went through applesauce and then vaseline.`);
  expect([fats.length, liquids.length, doubts.length]).toEqual([3, 0, 0]);
});

test('a test of the day before the recipe says nothing of its fats', () =>
  expect(after('Zap test 16.02.2024: none\nolive 400 g\ncoconut 250 g\nlye 94 g\nwater 200 g\ncastor 40 g')).toEqual(
    [],
  ));

const lye = 'Sprinkle 100 g NaOH into 250 g water.';
test.each([
  `${lye} Melt 210 g coconut with 90 g cocoa butter, take off the heat and pour in 400 g olive. Blend till trace.`,
  `${lye} Melted 210 g coconut and 90 g cocoa butter. Took it off the heat and added 400 g olive. Lye in, blended.`,
])('fats that are only melted are not cooked yet: %s', (text) => expect(after(text)).toEqual([]));

test('what the steps tell again goes in when the list says', () => {
  const list = 'Cook:\ncoconut 300 g\nlard 500 g\nNaOH 118 g\nwater 280 g\nAfter the cook:\nshea 40 g\n\nSteps:\n';
  expect(after(`${list}1. Melt the 300 g coconut and the lard\n2. The 40 g shea, then the mould`)).toEqual([
    'shea-butter 40',
  ]);
  const { fats } = readRecipe(reader, `${list}1. Melt it all\n2. The 40 g shea, then the mould`);
  expect(fats.map(({ id }) => id)).toEqual(['coconut-oil', 'lard']);
});

test.each([
  'The castor goes in after the cook.',
  'Hot process, the castor is stirred in after the cook.',
  'After the cook I stir in the castor.',
  'I cook it all but the castor, which I add after the cook.',
])('a fat of the list that is named again: %s', (said) =>
  expect(after(`Olive 500 g, coconut 200 g, castor 60 g, lye 100 g, water 220 g. ${said} ok?`)).toEqual([
    'castor-oil 60',
  ]),
);

test.each([
  'Last time the castor went in after the cook.',
  'Should the castor go in after the cook?',
  'After the cook the soap smelled of castor.',
  'I grease the mould with castor after the cook.',
])('and one that is only spoken of: %s', (said) =>
  expect(after(`Olive 500 g, coconut 200 g, castor 60 g, lye 100 g, water 220 g. ${said}`)).toEqual([]),
);

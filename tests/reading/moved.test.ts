/** What came to a weight of the list, where nobody tells the sum. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const potOf = (text: string) => {
  const { doubts, fats, alkali, waterGrams } = readRecipe(reader, text);
  if (doubts.length > 0) return null;
  return { ...Object.fromEntries([...fats, ...alkali].map(({ id, grams }) => [id, grams])), water: waterGrams };
};

describe('the end of a bottle that came to it', () => {
  const list = '620 g olive oil, 250 g coconut oil, 100 g castor oil, 136 g lye, water 300 g.';
  const pot = { 'olive-oil-virgin': 620, 'coconut-oil': 250, 'castor-oil': 100, naoh: 136, water: 300 };
  test.each([
    [
      'My husband "helpfully" emptied the end of the olive bottle in, 80 g going by the scale.',
      { 'olive-oil-virgin': 700 },
    ],
    ['My son tipped the rest of the olive bottle in, about 80 g.', { 'olive-oil-virgin': 700 }],
    ['In the end I emptied the last drops of the castor bottle in, that was 12 g.', { 'castor-oil': 112 }],
  ])('%s', (said, more) => expect(potOf(`${list} ${said} Ok?`)).toEqual({ ...pot, ...more }));

  test.each([
    'I tipped the rest of the olive oil back into the bottle, 80 g.',
    'I tipped the rest of the olive oil in (80 g).',
  ])('%s is asked about', (said) => expect(potOf(`${list} ${said} Ok?`)).toBeNull());
  test('what went elsewhere is none of it', () =>
    expect(potOf(`${list} I emptied the rest of the olive bottle into the frying pan, 80 g. Ok?`)).toEqual(pot));
});

describe('lye and water in two goes', () => {
  const oils = 'oils: 500 g olive, 250 g coconut, 250 g sweet almond.';
  const fats = { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'sweet-almond-oil': 250 };
  const late = 'saw I should have had more, dissolved another 38 g and added that.';
  test.each([
    `I'd 100 g lye in, then ${late} water was 200 g first and 90 g for the second lot. ${oils} ok?`,
    `I put 100 g lye in, then dissolved another 38 g and added that. water was 200 g first and 90 g for the second lot. ${oils} ok?`,
  ])('%s', (text) => expect(potOf(text)).toEqual({ ...fats, naoh: 138, water: 290 }));
  test('the lye is what is dissolved', () =>
    expect(
      potOf(
        `${oils} 100 g lye in 200 g water. I noticed it should have been more, dissolved another 38 g and added that. ok?`,
      ),
    ).toEqual({
      ...fats,
      naoh: 138,
      water: 200,
    }));
  test('what should have been done was not', () =>
    expect(potOf(`${oils} 100 g lye in 200 g water. I should have dissolved another 38 g. ok?`)).not.toMatchObject({
      naoh: 138,
    }));
  test('another batch takes its own water', () =>
    expect(potOf(`${oils} 138 g lye. water was 200 g first and 90 g for the second batch. ok?`)).not.toMatchObject({
      water: 290,
    }));
});

describe('a weight behind a colon', () => {
  const list = '500 g olive oil, 250 g coconut oil, 250 g sweet almond oil, 300 g water.';
  test.each([
    "Lye was weighed for the first lot and I didn't change it: 138 g.",
    'The lye I took was what the old card has: 138 g.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Ok?`)).toMatchObject({ naoh: 138 }));
  test('of another name stays of that', () =>
    expect(
      potOf(`Lye I weighed before anything else: 500 g olive oil, 500 g lard, 138 g NaOH, 300 g water. Ok?`),
    ).toEqual({
      'olive-oil-virgin': 500,
      lard: 500,
      naoh: 138,
      water: 300,
    }));
});

describe('an alkali that is named in full and then by its last word', () => {
  const fats = '700 g sunflower oil, 300 g coconut oil';
  const read = (text: string) => {
    const { doubts, alkali } = readRecipe(reader, text);
    return doubts.length > 0 ? null : alkali.map(({ id, grams }) => [id, grams]);
  };
  test.each([
    [`Liquid soap with caustic potash, 90 %. ${fats}, 222 g of the potash, 650 g water. Right?`, 'koh', 222],
    [
      `The caustic potash I finished last month was 85 %, the new bag says 90 % on it and I used the new one. ${fats}, 222 g of the potash, 650 g water. Right?`,
      'koh',
      222,
    ],
    [
      `My caustic soda is fresh. 700 g olive oil, 300 g coconut oil, 138 g of the soda, 350 g water. Right?`,
      'naoh',
      138,
    ],
  ])('%s', (text, id, grams) => expect(read(text)).toEqual([[id, grams]]));
  test.each([
    `Liquid soap. ${fats}, 222 g potash, 650 g water. Right?`,
    `I have washing soda and caustic soda. ${fats}, 138 g soda, 350 g water. Right?`,
  ])('%s is asked', (text) => expect(read(text)).toBeNull());
});

describe('what stayed on what it was weighed on', () => {
  const oils = ' Oils are 550 g olive, 200 g coconut, 150 g sunflower. Ok?';
  const pot = { 'olive-oil-virgin': 550, 'coconut-oil': 200, 'sunflower-oil': 150, naoh: 126, water: 290 };
  test.each([
    'Weighed 130 g of lye onto baking paper, tipped it into 290 g of water. I weighed the paper again and 4 g had stayed on it (binned).',
    '130 g lye, weighed on a paper plate and shaken into 290 g water. The plate kept 4 g of it.',
    'Lye 130 g, water 290 g. When I weighed the empty cup afterwards there were still 4 g of lye in it.',
  ])('%s', (said) => expect(potOf(`${said}${oils}`)).toEqual(pot));
  test.each([
    'Lye 130 g, water 290 g. After tipping it in, 4 g stayed on the paper.',
    'Lye was weighed in a plastic cup, 130 g, then went into 290 g water. The cup still held 4 g.',
  ])('%s is asked about', (said) => expect(potOf(`${said}${oils}`)).toBeNull());
  test.each([
    'Lye 126 g, water 290 g. Some pearls stayed on the paper.',
    'Lye 126 g, water 290 g. There are still 400 g of olive in the bottle.',
    'Lye 126 g, water 290 g. 4 g of mica stayed on the paper.',
  ])('%s changes nothing', (said) => expect(potOf(`${said}${oils}`)).toEqual(pot));
});

describe('what should be more, and then was', () => {
  const oils = ' Oils are 550 g olive, 300 g coconut and 100 g shea. Ok?';
  const lye = (said: string) => potOf(`${said}${oils}`);
  test.each([
    'Weighed 120 g of lye, then rechecked my paper and saw it should be more, so I tipped another 14 g into the same jug. The jug had 300 g water.',
    'Water 300 g. 120 g lye went in, then I saw it ought to be more and dissolved a further 14 g in the same jug.',
    'Water 300 g. I weighed 120 g of lye, read my card again and it needed more so tipped in 14 g extra.',
  ])('%s', (said) => expect(lye(said)).toMatchObject({ naoh: 134 }));
  test('nobody has done it', () =>
    expect(lye('Water 300 g and 120 g lye. It should be more, so I would tip in another 14 g.')).not.toMatchObject({
      naoh: 134,
    }));
});

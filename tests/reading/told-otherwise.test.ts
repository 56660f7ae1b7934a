import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf as pot } from './pot.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readRecipe(reader, text);

const list = 'Olive 500 g\nCoconut 250 g\nPalm 200 g\nCastor 50 g\nNaOH 139 g\nWater 300 g\n\n';
const asking = '\n\nWhat is my superfat?';
/** What is in the pot, by grams; null where it is asked. */
const potOf = (text: string) => {
  const { doubts, fats, after, alkali, waterGrams, liquids } = read(text);
  if (doubts.length > 0) return null;
  const list = [...fats, ...after.map((one) => ({ ...one, id: `after ${one.id}` })), ...alkali, ...liquids];
  return { ...Object.fromEntries(list.map(({ id, grams }) => [id, grams])), water: waterGrams };
};
const asListed = {
  'olive-oil-virgin': 500,
  'coconut-oil': 250,
  'palm-oil': 200,
  'castor-oil': 50,
  naoh: 139,
  water: 300,
};

describe('what is told of the pot against its list is asked about', () => {
  test.each([
    'My phone note says 139, the card in the kitchen says 129 in my own writing. No idea which of the two I really weighed.',
    "The spreadsheet has 139 g of lye, the label that I put on the loaf has 149. I honestly can't say which one I put on the scale.",
    'I have just seen that the tub I had used is potassium hydroxide.',
    'Then the castor, which I may or may not have added. The phone rang.',
    'Either I halved the lye or I poured the lot, I was on the phone.',
    'The castor: maybe it goes in, maybe I keep it for my hands.',
    'As to the palm, I have not made up my mind yet.',
    'So one of the four fats must have been poured heavier than written.',
    'No idea whether I had doubled those already.',
    'I forgot to zero the scale under the jug, and have smashed it since.',
    'The lye was roughly a third of the tub by the look of it.',
    "The bell rang while I was at it. Now I can't tell if I put the 250 in once or twice.",
    'I honestly do not know whether the castor went in one time or two times.',
    'Not sure any more if I added the palm once or twice, I was on the phone.',
    "The coconut: I couldn't swear that it went in only once.",
    'I have no clue if the lye was measured before or after I took the cup off.',
    'I could not tell you whether I put the lye in before or after I had zeroed the scale.',
    'The jar stood there and I had not tared it, so the 139 is lye and jar together. I have no idea what it weighs.',
    "The scale wasn't set to zero with the glass on it, so that 139 g of NaOH has the glass in it.",
    'The 139 g includes the plastic cup, which I threw away.',
    '139 g is NaOH plus the dish. No idea what the dish weighs.',
    'My husband says the flakes I used were KOH.',
    'Before the lye went in I ladled out some of the melted oils for my neighbour, about a jam jar.',
    'I poured off some of the oil mix for candles, then added all the lye.',
    'Before any lye I poured exactly half of the melted oils into a jar for next weekend.',
    'When I rinsed the lye jug there was a crust of undissolved lye at the bottom that never reached the oils. Could have been 5 g, could have been 20.',
    "There was a lump of lye left in the jug which I rinsed down the drain. Could've been 5 grams, could've been 15 or more.",
    'I poured too quickly, the scale stood at 150 by the end, and all of that went into the water.',
    "I only saw afterwards that the scale said 149. That's what is in the soap.",
    "In the end I didn't use any water, the 300 g was frozen cow's milk instead.",
    'I saw the castor later in its glass on the windowsill, the whole 50 g. It never made it into the pot.',
    'Method: melt the coconut, the palm and the cocoa butter in a bain-marie. Add the olive.',
  ])('%s', (text) => {
    expect(read(list + text + asking).doubts).not.toEqual([]);
  });

  test('or read so, beside a question of what it would be without', () => {
    const text = `${list}Found the castor behind the kettle, the full 50 g. So it never went in. How bad is it without the castor?`;
    expect(potOf(text)).toEqual({
      'olive-oil-virgin': 500,
      'coconut-oil': 250,
      'palm-oil': 200,
      naoh: 139,
      water: 300,
    });
  });
});

describe('what is nothing of the kind is not', () => {
  test.each([
    'I have two moulds, one 28 cm and one 30 cm, and no idea which of the two I used.',
    'I keep two records, the card and the notebook, and both say 139 g lye.',
    'My last batch was made with 150 g KOH by mistake and stayed soft. This one is NaOH.',
    'After trace I ladled some of the batter out for a swirl and poured it back.',
    'I ladled the melted oils into the blender jug and then added the lye.',
    'It took me a while to get the lye in and it never went above 24 °C.',
    'The scale showed 149 at first, so I spooned 10 g back into the tub until it read 139.',
    'I nearly swapped the palm for lard because it is cheaper, but in the end I stayed with palm as written.',
    "Was about to leave the castor out; didn't.",
    "I don't know whether I will put the blanket on once or twice.",
    'Not sure if I stirred it once or twice after the pour.',
    "Don't know if I measured the pH once or twice.",
    'I set the scale to nought with the beaker on it, so the 139 is lye alone.',
    '139 g is NaOH without the dish.',
    'Had the bowl on the scale, tared it, then weighed 139 g of lye into the bowl.',
    "Mixed the lye in the glass beaker. I don't know what it weighed, the scale was tared.",
    'I came close to swapping the castor for almond oil. Kept the castor though.',
    'In spring I doubled everything for the market, and that batch cracked. This one is the single batch as listed.',
    'Next time I want to double everything, the fats and the lye and the water.',
    'Separate pot, no lye: 60 g almond oil and 20 g beeswax for a hand salve.',
    'From what was left I made a lip balm in another pan, without any lye: 40 g shea and 15 g beeswax.',
  ])('%s', (text) => {
    expect(potOf(list + text + asking)).toEqual(asListed);
  });
});

describe('what is sure of it is read', () => {
  test.each([
    ['I was careless, so it is 149 g that is in there and not 139.', { ...asListed, naoh: 149 }],
    ['I tipped it in the water, so it is 149 g that is in there and not 139.', { ...asListed, naoh: 149 }],
    ['I left the water out. The whole 300 g was frozen goat milk instead.', { water: null, 'goat-milk': 300 }],
    ['So it is 139 g of KOH in there, no NaOH whatsoever.', { koh: 139, naoh: undefined }],
    [
      'That is how it stands in the book. When I made it on Saturday I doubled everything, the fats and the lye and the water.',
      { naoh: 278, 'castor-oil': 100, water: 600 },
    ],
  ])('%s', (text, pot) => {
    const got = potOf(list + text + asking) as Record<string, unknown> | null;
    expect(got).not.toBeNull();
    for (const [id, grams] of Object.entries(pot)) expect([id, got?.[id]]).toEqual([id, grams]);
  });

  test('each oil times so much', () => {
    const text =
      'Olive oil 640 g\nCoconut oil 200 g\nCastor oil 60 g\n\nTomorrow I am making it bigger, so each oil x 1.5. NaOH, superfat 6 %.\n\nHow much for the bigger batch?';
    expect(read(text).fats.map(({ grams }) => grams)).toEqual([960, 300, 90]);
  });

  test('water that costs nothing is water', () => {
    const rows = 'olive oil 700 g @ 1.80/kg = 1.26\ncoconut oil 250 g @ 5.60/kg = 1.40\nNaOH 139 g @ 4.50/kg = 0.63\n';
    expect(read(`${rows}water 300 g = nothing\n\nIs the hydroxide right?`)).toMatchObject({
      waterGrams: 300,
      doubts: [],
    });
  });

  test.each(['Forget the 5 %, take 2 % superfat for this one.', 'Ignore the 5 % up there and use 2 % superfat.'])(
    '%s',
    (text) => {
      const post = `Stove block\nsuperfat 5 %\n\ncoconut oil 800 g\nlard 200 g\n\n${text} NaOH. How much do I need?`;
      expect(read(post)).toMatchObject({ superfat: 0.02, doubts: [] });
    },
  );

  test.each([
    'New bag. The certificate for this bag says 85 %, the bag before was 90.',
    'This sack is 85 % according to its analysis, my old one was 90 %.',
  ])('%s', (text) => {
    const post = `Sunflower oil 500 g\nCoconut oil 300 g\nKOH 195 g\nWater 400 g\n\n${text}\n\nAm I short of KOH?`;
    expect(read(post).alkali[0]?.purity?.nominal).toBe(0.85);
  });

  test.each([
    ['A. cook', 'B. after the cook'],
    ['I. Cook', 'II. After the cook'],
  ])('%s, %s', (first, then) => {
    const post = `Hot process\n\n${first}\n  olive 500 g\n  coconut 250 g\n  palm 200 g\n  NaOH 139 g\n  water 330 g\n${then}\n  almond oil 45 g\n\nCook until waxy, then stir in the 45 g almond.\n\nWhat is the superfat?`;
    expect(potOf(post)).toMatchObject({ 'palm-oil': 200, 'after sweet-almond-oil': 45 });
  });

  test.each([
    ['Added 120 g sunflower and kept cooking for another hour, no zap.', 'sunflower-oil'],
    [
      'It zapped after the cook, so I put in 120 g more of sunflower and cooked on until the zap was gone.',
      'sunflower-oil',
    ],
    [
      'Cooked 2 hours until it looked like vaseline and stirred in 120 g sunflower after the cook.',
      'after sunflower-oil',
    ],
  ])('%s', (text, id) => {
    const post = `olive 500 g\ncoconut 300 g\nshea 100 g\nNaOH 150 g\nwater 320 g\n\n${text}\n\nWhat is the final superfat?`;
    expect(potOf(post)).toMatchObject({ [id]: 120 });
  });

  test('a friend’s recipe beside one’s own', () => {
    const post =
      'Our recipe:\nlard 1200 g\ncoconut 500 g\nsunflower 300 g\n\nMy friend Bea does hers with 2 kg of pure olive and puts 256 g of lye in it. Ours: NaOH, superfat 5.\n\nWhat is the lye for ours?';
    expect(read(post)).toMatchObject({ alkali: [], superfat: 0.05 });
    expect(read(post).fats.map(({ id }) => id)).toEqual(['lard', 'coconut-oil', 'sunflower-oil']);
  });
});

describe('where only the water is open, the lye can be checked', () => {
  const dry = { lard: 900, 'coconut-oil': 100, naoh: 137, water: 0 };
  test.each([
    "lard 900 g + coconut 100 g, lye 137 g. haven't decided the water yet, just tell me if the lye is fine",
    'lard 900 g, coconut 100 g, lye 137 g. I have not settled on the water yet. Is the lye fine?',
    'lard 900 g, coconut 100 g, lye 137 g, water not decided yet. lye ok?',
    "lard 900 g, coconut 100 g, lye 137 g. haven't made up my mind how much water. ok?",
  ])('%s', (text) => expect(pot(text)).toEqual({ grams: dry, doubts: [] }));

  test.each([
    "lard 900 g, coconut 100 g, lye 137 g, water 300 g. castor 50 g, haven't decided. ok?",
    "lard 900 g, coconut 100 g, lye 137 g. haven't decided about the castor yet",
  ])('but a fat is asked about: %s', (text) => expect(pot(text).doubts).not.toEqual([]));
});

/** Recipes told in conversation: what is put right before its list or in the same breath, and what goes in later. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, after, alkali, waterGrams, liquids, doubts } = readRecipe(reader, text);
  const of = (list: readonly { readonly id: string; readonly grams: number }[]) =>
    Object.fromEntries(list.map(({ id, grams }) => [id, Math.round(grams)]));
  return {
    grams: of([...fats, ...alkali, ...liquids, ...(waterGrams === null ? [] : [{ id: 'water', grams: waterGrams }])]),
    after: of(after),
    doubts: doubts.map(({ id }) => id),
  };
};
const doubtless = { after: {}, doubts: [] };

describe('a swap told before its list', () => {
  const list = '500 g palm / 300 g olive / 200 g coconut';
  const swapped = { lard: 500, 'olive-oil-virgin': 300, 'coconut-oil': 200, naoh: 136 };
  test.each([
    `swapped all the palm for lard in my ${list}, NaOH still 136 g?`,
    `I've traded the palm for lard in this one: ${list}, 136 g NaOH, ok?`,
    `Used lard for the palm in my ${list}, 136 g NaOH still right?`,
    `Palm's out, lard's in: ${list}, 136 g NaOH. Right?`,
    `the palm is lard now: ${list}, 136 g NaOH`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: swapped, ...doubtless });
  });
  test('which of two came for the other is asked where people say it either way', () => {
    expect(read(`Subbed lard for the palm in my ${list}. 136 g NaOH ok?`).doubts).toEqual(['corrected']);
  });
  test('one that is only asked of the list is known', () => {
    expect(readRecipe(reader, `Can I swap the palm for lard in my ${list}, NaOH 136 g?`).swapAsked).toEqual({
      goes: 'palm-oil',
      comes: 'lard',
    });
  });
});

describe('a figure put right before its list', () => {
  const list = 'olive 500g, water 150g, NaOH 46g';
  const right = { 'olive-oil-virgin': 500, naoh: 64, water: 150 };
  test.each([
    `Oops, last figure should say 64 not 46.  ${list}`,
    `Sorry typo, the last number is 64. ${list}`,
    `(please read 64 for 46) ${list}`,
    `Where I say 46 read 64. ${list}`,
    `The 46 should be 64: ${list}`,
    `NB the 46 below should read 64. ${list}`,
    `I typed 46 but it's 64 for the lye: ${list}`,
    `Correction first: the lye is 64, not 46. ${list}`,
    'edit: 64 not 46!\n500 g olive, 150 g water, 46 g NaOH',
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: right, ...doubtless });
  });
  test.each([
    [`Sorry, last number should read 640. ${list}`, ['corrected']],
    ['NaOH 64 g, not 46. castor 46 g, olive 400 g, water 150 g', []],
  ])('%s', (text, doubts) => {
    expect(read(text).doubts).toEqual(doubts);
    expect(read(text).grams['naoh']).toBe(doubts.length > 0 ? 46 : 64);
  });
});

describe('what the one fat of a post turned out to be', () => {
  const asked = '> 40 oz lard, 5.4 oz lye, 13 oz water - ok?\n';
  const list = '40 oz lard, 5.4 oz lye, 13 oz water. ';
  test.each([
    `${asked}Me again: yes, it IS tallow, 40 oz, and I kept 5.4 and 13.`,
    `${asked}Sorry, it was tallow, not lard.`,
    `${asked}I used tallow in the end, 40 oz.`,
    `${asked}you said you'd use tallow\nYes I did use tallow, 40 oz`,
    `${list}It turned out to be tallow, 40 oz.`,
    `${list}I checked the label and it's beef tallow.`,
    `${list}Edit: the lard is tallow.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { 'tallow-beef': 1134, naoh: 153, water: 369 }, ...doubtless });
  });
  test('of several fats nobody knows which', () => {
    expect(read('500 g lard, 500 g olive, 136 g lye. Yes it is tallow actually').doubts).toEqual(['corrected']);
  });
});

describe('a figure that was read off another batch', () => {
  const fats = '700 g tallow, 200 g coconut, 100 g of peanut oil. Water 310 grams. ';
  const right = { 'tallow-beef': 700, 'coconut-oil': 200, 'peanut-oil': 100, naoh: 134, water: 310 };
  test.each([
    `${fats}For the lye it was 137 grams. No wait. That was the last one. 134 grams today, I went lower.`,
    `${fats}Lye was 137 grams. No sorry that was the old one, 134 grams.`,
    `${fats}Lye 137, no that's yesterday's, 134 today.`,
    `${fats}Then 137 g of lye, wait, that was for the last batch, I took 134.`,
    `${fats}Lye, 137 g. Hm, no, that was in May. 134 g this time.`,
    `${fats}Lye 134 g. That was the last time I bought a 400 g bag.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: right, ...doubtless });
  });
  test('what follows is of this batch again', () => {
    expect(read('Tallow 900 g, lye 137 g. No. That was the last one. 134 g today. Water 310 g.').grams['water']).toBe(
      310,
    );
  });
});

describe('a fat that was only wanted', () => {
  const rest = '700 g tallow, 200 g coconut, ';
  const right = { 'tallow-beef': 700, 'coconut-oil': 200, 'peanut-oil': 100, naoh: 134 };
  test.each([
    `${rest}and I wanted canola, but it was rancid, so I used 100 g of peanut oil in its place. Lye 134 g`,
    `${rest}there was no canola, so 100 g of peanut instead. Lye 134 g`,
    `${rest}100 g canola. lye 134 g. The canola was rancid, so I used peanut instead.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: right, ...doubtless });
  });
});

describe('what goes in after a cook that was told', () => {
  const pot = '500 g lard, 250 g coconut, 100 g shea, 115 g NaOH, 290 g water. ';
  const cooked = { lard: 500, 'coconut-oil': 250, 'shea-butter': 100, naoh: 115, water: 290 };
  test.each([
    `${pot}Cook took fifty minutes. After that another 30 g of shea, melted, for the skin.`,
    `${pot}It cooked for 3 h in the crockpot. After that 30 g more shea went in.`,
    `${pot}Cooked it for two hours. Afterwards I stirred in 30 g of shea.`,
    `${pot}The cook was over at noon. After which I added 30 g shea.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: cooked, after: { 'shea-butter': 30 }, doubts: [] });
  });
});

describe('a correction below a story', () => {
  const list =
    'Goat milk, 280 g\nLye 101 g\nOlive oil 400 g\nCoconut oil 200 g\nShea butter 100 g\n\nIt came out lovely, cut after 3 days.\n\n';
  const right = { 'olive-oil-virgin': 400, 'coconut-oil': 220, 'shea-butter': 100, 'goat-milk': 280, naoh: 103 };
  test.each([
    `${list}Right, correction, now that I've got my notebook here: the coconut was 220 g and the lye 103 g. All else stands, and the 280 g of milk I'm sure of. So is the 103 good for that?`,
    `${list}Update: it was 220 g coconut and 103 g lye, the rest as above.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: right, ...doubtless });
  });
});

test('of a liquid named long before, so much goes into the lye', () => {
  const text =
    'My brother makes a porter that nobody drinks, and I took half a crate off him in February. Opened four bottles, boiled the lot for twenty minutes to drive off the bubbles, left it in the fridge for two nights with a plate on top. Then I weighed 330 g of it into my lye jug, and that is all the liquid there is in this batch, no water at all. 142 g of NaOH went in. Olive oil 500 g, tallow 300 g, coconut oil 200 g.';
  expect(read(text).grams).toEqual({
    'olive-oil-virgin': 500,
    'tallow-beef': 300,
    'coconut-oil': 200,
    naoh: 142,
    beer: 330,
  });
});

test('no amount beside an ingredient is set aside unsaid', () => {
  const { fats, assumptions } = readRecipe(reader, 'Tallow 900 g, NaOH 120 g. The last 2 lb of tallow wait for me.');
  expect(fats.map(({ grams }) => grams)).toEqual([900]);
  expect(assumptions.some(({ text }) => text.includes('"2 lb" beside "tallow"'))).toBe(true);
});

describe('what was spoilt or thrown away', () => {
  const rest = '450 g olive, 250 g coconut. 138 g lye, 300 g water. ';
  const right = { 'olive-oil-virgin': 450, 'coconut-oil': 250, naoh: 138, water: 300 };
  test.each([
    [`250 g palm went in the bin, 250 g lard took its place. ${rest}`, { lard: 250 }],
    [`The 250 g of palm had gone rancid. Lard stood in for it, same weight. ${rest}`, { lard: 250 }],
    [`My palm was mouldy, all 250 g. Lard came to the rescue, 250 g. ${rest}`, { lard: 250 }],
    [`${rest}Palm 250 g. The palm smelled bad. Lard took its place.`, { lard: 250 }],
    [`${rest}250 g palm. The palm was bad, I binned it, lard stepped in.`, { lard: 250 }],
    [
      `The palm has gone a funny colour. It went in the bin. What I had instead was lard, so 250 g of that took its place. ${rest}`,
      { lard: 250 },
    ],
    [`${rest}Palm 250 g. I threw the palm away.`, {}],
    [`${rest}Palm 250 g. The palm was rancid but I used it anyway.`, { 'palm-oil': 250 }],
  ])('%s', (text, more) => {
    expect(read(text)).toEqual({ grams: { ...right, ...more }, ...doubtless });
  });
});

describe('what was planned beside what went in', () => {
  const list = '420 g olive, 240 g coconut and 90 g cocoa butter. Lye 112 g in 230 g water. ';
  test.each([
    `${list}I had planned 100 g of the cocoa butter but the bag gave out at 90.`,
    `${list}I'd wanted 100 g cocoa butter.`,
    `${list}The plan was 100 g cocoa butter.`,
    `${list}The cocoa butter was meant to be 100 g but the bag was empty at 90 g.`,
    `${list}I meant to use 100 g of cocoa butter, had 90.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({
      grams: { 'olive-oil-virgin': 420, 'coconut-oil': 240, 'cocoa-butter': 90, naoh: 112, water: 230 },
      ...doubtless,
    });
  });
});

describe('so much of what a pack holds', () => {
  const rest = 'Olive 700 g. Lye 174 g and 400 g water. ';
  test.each([
    [`The coconut comes in a 1 kg jar, half of that went in. ${rest}`, 500],
    [`${rest}Coconut: half of the 1 kg jar.`, 500],
    [`${rest}Coconut is a 1 kg jar and I used half.`, 500],
    [`${rest}I bought a 1 kg jar of coconut and put in half of it.`, 500],
    [`${rest}Half a jar of coconut (the jar is 1 kg).`, 500],
    [`${rest}Coconut oil, three quarters of a 1 kg jar`, 750],
  ])('%s', (text, coconut) => {
    expect(read(text)).toEqual({
      grams: { 'olive-oil-virgin': 700, 'coconut-oil': coconut, naoh: 174, water: 400 },
      ...doubtless,
    });
  });
  test.each([
    "Babassu none, I'd written 100 g but I'm saving it.",
    'Babassu 100 g, no, none.',
    "Babassu 100 g is what I'd written, but none went in.",
    'Babassu none this time (100 g in the old one).',
    "The babassu I'm saving, 100 g.",
  ])('none: %s', (text) => {
    expect(read(`${rest}${text}`)).toEqual({
      grams: { 'olive-oil-virgin': 700, naoh: 174, water: 400 },
      ...doubtless,
    });
  });
});

describe('lye as a share of the oil', () => {
  test.each([
    '1 kilo olive. Lye is 13 % of the oil. Water twice the lye.',
    '1 kilo olive, NaOH at 13% of oil weight, water 2:1',
    '1000 g olive oil, lye 13% of that, water double the lye',
    '1000 g olive. 13 % NaOH of the fat weight, 26 % water.',
    'Lye = 13% of oils. Water = 2 x lye. Oils 1000 g olive.',
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { 'olive-oil-virgin': 1000, naoh: 130, water: 260 }, ...doubtless });
  });
  test('is asked where it may be a solution', () => {
    expect(read('olive 1 kg, lye 13%, water 260 g').doubts).toEqual(['alkali-percent']);
  });
});

describe('of two weights of all the fats, the one to be made', () => {
  const shares = 'Olive oil 40 %, coconut oil 30 %, lard 30 %. ';
  test.each([
    [
      `${shares}For the big one I need 4.5 kg of oils in all. The little loaf was only 400 g of oils. How much lye?`,
      1350,
    ],
    [`${shares}Last time 1 kg of oils, this time 1.2 kg of oils. Lye?`, 360],
    [`${shares}The recipe is for 500 g of oils but my mould takes 800 g of oils. How much lye?`, 240],
  ])('%s', (text, lard) => {
    expect(read(text).grams['lard']).toBe(lard);
    expect(read(text).doubts).toEqual([]);
  });
  test('is asked where nobody says', () => {
    expect(read(`${shares}Total oils 1000 g. Total oils 2 kg. How much lye?`).doubts).toEqual(['two-amounts']);
  });
});

describe('alkali in store', () => {
  const fats = '5 kg olive oil, 2.5 kg coconut oil. ';
  test.each([
    `${fats}We have a 25 kg drum of sodium hydroxide from February, still sealed. How much NaOH do we weigh?`,
    `${fats}There's 5 kg of NaOH in the shed. How much do I need?`,
    `${fats}Our lye comes in 25 kg drums. How much?`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { 'olive-oil-virgin': 5000, 'coconut-oil': 2500 }, ...doubtless });
  });
  test('what was weighed is no store', () => {
    expect(read('Olive 1000 g, lye 1300 g. I need help, is it right?').doubts).toEqual(['implausible']);
  });
});

describe('a weight changed by nobody knows how much', () => {
  const list = '400 g olive, 200 g coconut, 200 g lard, 111 g lye, 240 g water. ';
  test.each([
    'A bit less of the coconut went in.',
    'I was short on one of the solid ones, so a bit less of that.',
    'I put in some more of the same oil, a good glug.',
    'I used a little less lye.',
  ])('is asked: %s', (text) => {
    expect(read(list + text).doubts).toContain('corrected');
  });
  test.each(['Next time a bit less lard.', 'Would a bit more olive help?', 'It got a bit more thick.'])(
    'is none: %s',
    (text) => {
      expect(read(list + text).doubts).toEqual([]);
    },
  );
});

describe('a fat that a recipe has, and the one that its writer takes', () => {
  const rest = ' 400 g olive, 200 g coconut, 100 g peanut oil. How much lye?';
  test.each([
    "The recipe says 300 g lard. I don't eat pork so I'd use palm oil in its place, same amount. And",
    'It calls for 300 g lard, but I would take palm in its place, as much. Besides:',
    "My recipe wants 300 g of lard and I'll put palm in its place. The rest is",
    "Mum's recipe has 300 g of lard; we're vegetarian, so we'd have the same amount of palm oil for it. Then",
    "300 g of lard it says, and instead of it I'd use the same weight of palm oil. With it",
  ])('%s', (text) => {
    expect(read(text + rest)).toEqual({
      grams: { 'palm-oil': 300, 'olive-oil-virgin': 400, 'coconut-oil': 200, 'peanut-oil': 100 },
      ...doubtless,
    });
  });
  test.each(["The book has 300 g lard, we don't want lard and will use palm instead of it. With"])(
    'is asked about: %s',
    (text) => {
      const { doubts } = readRecipe(reader, text + rest);
      expect(doubts.map(({ id }) => id)).toEqual(['corrected']);
    },
  );
});

describe('a fat named, and what it is cut to', () => {
  const rest = ' 450 g olive, 300 g coconut and 150 g cocoa butter. How much lye?';
  test.each([
    'Hemp spoils so fast! I am reducing it to 100 g, with',
    'Last bars with hemp got spots. So I take it down to 100 g, and',
    'Is hemp really that quick to turn? I want to cut it to 100 g and put in',
    'I want less hemp in it: cut it to 100 g. Beside it',
  ])('%s', (text) => {
    expect(read(text + rest).grams).toEqual({
      'hemp-seed-oil': 100,
      'olive-oil-virgin': 450,
      'coconut-oil': 300,
      'cocoa-butter': 150,
    });
  });
  test.each(['I cut it into 100 g bars.', "I'd like to cut it to 100 g bars.", 'The soap was cut to 100 g pieces.'])(
    'bars are none: %s',
    (text) => {
      expect(read(`100 g hemp, 450 g olive. ${text} How much lye?`)).toEqual({
        grams: { 'hemp-seed-oil': 100, 'olive-oil-virgin': 450 },
        ...doubtless,
      });
    },
  );
});

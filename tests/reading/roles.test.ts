import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readRecipe(reader, text);
const doubts = (text: string): readonly string[] => read(text).doubts.map(({ id }) => id);
const alkaliOf = (text: string): readonly (string | number)[] =>
  read(text).alkali.flatMap(({ id, grams, stock }) => [id, Math.round(grams), stock ? 'dissolved' : 'dry']);

const base = '600 g lard, 200 g coconut, 110 g NaOH, 240 g water';

describe('fat after the cook', () => {
  test.each([
    `${base}. When the soap has finished cooking I add 40 g shea.`,
    `${base}. Once it has cooked fully, in goes 40 g shea.`,
    `${base}. When the cook is over I stir in 40 g shea and 15 g lavender EO.`,
    `${base} and, after the batch has gone through gel, 40 g shea`,
    `${base}, plus 40 g shea and 10 g lavender once the cook's over`,
    `After the cook goes 40 g shea. Before that: ${base}.`,
    `${base}. When it stopped zapping I added honey 10 g and 40 g shea.`,
    `lard 600 g, coconut 200 g, shea 40 g after the cook, NaOH 110 g, water 240 g`,
    `lard 600 g\ncoconut 200 g\nNaOH 110 g\nwater 240 g\nAfter the cook:\nshea 40 g\nlavender EO 20 g`,
  ])('%s', (text) => {
    expect(read(text).after.map(({ id, grams }) => [id, grams])).toEqual([['shea-butter', 40]]);
    expect(read(text).fats).toHaveLength(2);
  });

  test.each([
    '40 g of shea are kept back and stirred in at the very end, after the cook, so the pot itself has lard 600 g, coconut 200 g. NaOH 110 g. Water 240 g.',
    'After the cook 40 g of shea, before it lard 600 g, coconut 200 g. NaOH 110 g. Water 240 g.',
    '40 g shea, to be added after the cook, lard 600 g, coconut 200 g. NaOH 110 g. Water 240 g.',
  ])('stands beside the phrase, and what is most of the fat is cooked: %s', (text) => {
    expect(read(text).after.map(({ id, grams }) => [id, grams])).toEqual([['shea-butter', 40]]);
    expect(read(text).fats).toHaveLength(2);
  });

  test('is told where only the steps say so', () => {
    const { after, assumptions } = read(`${base}. Lid on, in the oven for 90 minutes. Now stir in 40 g shea.`);
    expect(after.map(({ id }) => id)).toEqual(['shea-butter']);
    expect(assumptions.map(({ id }) => id)).toContain('after');
  });

  test.each(['add at end, shea 35 g', 'add at end: shea 35 g', 'add at end    shea   35 g'])(
    'is told by the label of its row: %s',
    (row) => expect(read(`${base}\n${row}`).after.map(({ id }) => id)).toEqual(['shea-butter']),
  );

  test.each([
    `${base}, castor 20 g. After the cook I mix in 60 g glycerin.`,
    `I once cooked a soap of ${base}.`,
    `At the end of the day I want to know: ${base}`,
    '110 g NaOH in 240 g water. Cook for 2 h. Mix in 600 g lard and 200 g coconut.',
    `${base}. In the oven for 60 minutes. Added 20 g castor at trace.`,
    'Question at the end\nlard 600 g\ncoconut 200 g\nNaOH 110 g\nwater 240 g\nIs it ok?',
  ])('none: %s', (text) => expect(read(text).after).toEqual([]));
});

describe('a percentage at the alkali', () => {
  const fats = '500 g olive, 300 g coconut';
  test.each([
    [`${fats}, 290 g 40 % lye`, ['naoh', 116, 'dissolved']],
    [`${fats}, NaOH 290 g (40%)`, ['naoh', 116, 'dissolved']],
    [`${fats}, KOH 330 g at 50% strength`, ['koh', 165, 'dissolved']],
    [`${fats}, 115 g lye (33 %), 233 g water`, ['naoh', 115, 'dry']],
    [`${fats}, 112 g NaOH (5 %), 260 g water`, ['naoh', 112, 'dry']],
    [`${fats}, 112 g NaOH (she always does 5 %), 260 g water`, ['naoh', 112, 'dry']],
  ])('%s', (text, want) => {
    expect(alkaliOf(text)).toEqual(want);
    expect(doubts(text)).toEqual([]);
  });

  test.each(['my flakes say 85%', 'the bag says 85%', '85% on the label', 'the tub is labelled 85 %'])(
    'is its purity: %s',
    (said) => {
      const { purity, superfat } = read(`How much koh for 350 g castor & 150 g coconut, 3% sf, ${said}`);
      expect([purity?.nominal, superfat]).toEqual([0.85, 0.03]);
    },
  );

  test.each([
    [`NaOH of 120 % purity 110 g, ${fats}, water 200 g`, 'purity-odd'],
    [`sodium hydroxide 130 g, purity 130 % (extra strong!), ${fats}`, 'purity-odd'],
    [`my lye solution is 150 %. 300 g of it for ${fats}`, 'strength-odd'],
  ])('cannot be beyond the whole: %s', (text, want) => expect(doubts(text)[0]).toBe(want));
});

describe('a lye solution said in words', () => {
  const fats = '600 g olive, 250 g palm, 200 g coconut';
  test.each([
    `The lye is half and half with water, 292 g of it. ${fats}, 110 g more water`,
    `${fats}\nLye: 292 g of my 50 % NaOH solution (i.e. 146 g NaOH + 146 g water)\nPlain water on top: 110 g`,
    `${fats}\nNaOH - 292 g lye solution of 50 %\nwater 110 g`,
    `${fats}\n292 g of my 50 % NaOH solution\n110 g water\nthe solution was mixed in May, 3 kg NaOH to 3 kg water, in a can.`,
    `${fats}\n292 g of the 50% NaOH solution\n110 g extra water\nSolution mixed last autumn from 1 kg NaOH and 1 kg water.`,
    `Master-batched lye, sodium hydroxide and water 50/50 by weight. ${fats}, 292 g of it, 110 g more water`,
    `Stock lye: equal weights NaOH and water. ${fats}, 292 g of the stock, 110 g water`,
    `Stock lye (1:1). ${fats}, 292 g stock lye, 110 g water`,
    `my pre-mixed lye is 1 part NaOH to 1 part water. ${fats}, 292 g of it, 110 g water`,
    `I keep lye ready mixed, half of it is NaOH. Taking 292 g of it for ${fats}. plus 110 g water`,
    `I keep a stock lye solution, 50 % NaOH by weight. For today's bars I weighed 292 g of it, and 110 g water. ${fats}`,
    `my NaOH stock holds 500 g per 1000 g. ${fats}, 292 g of it, 110 g water`,
    `292 g lye stock (half NaOH, half water), ${fats}, 110 g water`,
    `I have 10 kg of 50% NaOH solution. For ${fats} I used 292 g of it plus 110 g water`,
    `${fats}, 292 g of the 50 % solution and 110 g water. He says it should be 292 g of lye.`,
  ])('%s', (text) => {
    expect(alkaliOf(text)).toEqual(['naoh', 146, 'dissolved']);
    expect(read(text).waterGrams).toBeCloseTo(256, 6);
    expect(doubts(text)).toEqual([]);
  });

  test.each([
    `My lye is 50/50, and 292 g of that solution went in. ${fats}, 110 g water.`,
    `${fats}, 110 g water. The lye was 50/50 by weight and I weighed off 292 g of solution.`,
    `${fats}, 110 g water. My lye is 50 % and I poured in 292 g of that solution.`,
    `${fats}, 110 g water. I used 292 g of that solution, my lye is 50/50.`,
  ])('of which so much was taken: %s', (text) => {
    expect(alkaliOf(text)).toEqual(['naoh', 146, 'dissolved']);
    expect(read(text).waterGrams).toBeCloseTo(256, 6);
    expect(doubts(text)).toEqual([]);
  });

  test.each([
    `My caustic is kept as a 50/50 solution in the shed. I weighed 292 g of that plus 110 g plain water. ${fats}`,
    `I make up my lye as a 1:1 solution ahead of time. Used 292 g of that and another 110 g of water. ${fats}`,
    `We keep the lye mixed half and half in a canister. Took 292 g of that and 110 g of plain water. ${fats}`,
    `I keep my lye as a fifty-fifty solution. 292 g of it went in, with 110 g of plain water; ${fats}`,
    `My lye sits in the garage as a 50 % solution. Of that I took 292 g, plus 110 g plain water. ${fats}`,
    `Our NaOH stands in the shed as a 50% solution, and I poured in 292 g of it with 110 g plain water. ${fats}`,
  ])('kept as such: %s', (text) => {
    expect(alkaliOf(text)).toEqual(['naoh', 146, 'dissolved']);
    expect(read(text).waterGrams).toBeCloseTo(256, 6);
    expect(doubts(text)).toEqual([]);
  });

  test.each([
    `My lye is always mixed at 33 %. I had 5 kg of palm and used 250 g of it, plus 600 g lard, 115 g NaOH, 233 g water`,
    `115 g lye as a 33 % solution, 600 g lard, 250 g palm. 20 g of that honey too`,
  ])('but not where something else is taken: %s', (text) => expect(alkaliOf(text)).toEqual(['naoh', 115, 'dry']));

  test.each([`${fats}, 292 g of that solution.`, `${fats}. 292 g of solution went in.`])(
    'how strong it is, is asked where nothing says it: %s',
    (text) => expect(doubts(text)).toEqual(['stock-strength']),
  );

  test.each([
    'Lye: 50 % solution of NaOH, 278 g',
    'NaOH as 50% solution in water, 278 g',
    'Caustic: 50 per cent solution, 278 g',
    'NaOH 50% solution: 278 g',
    'lye: NaOH in water 50 %, 278 g',
    'Lye as a 50% w/w solution of sodium hydroxide: 278 g',
    'Sodium hydroxide, as a solution of 50 % in distilled water: 278 g',
    'Lye: 278 g, 50 % solution of NaOH',
    'sodium hydroxide (as 50 % solution in water) 278 g',
  ])('a row that weighs it as a whole: %s', (row) => {
    const text = `sunflower 250 g\ncoconut 250 g\ntallow 500 g\n${row}\nextra water: 150 g`;
    expect(alkaliOf(text)).toEqual(['naoh', 139, 'dissolved']);
    expect(read(text).waterGrams).toBeCloseTo(289, 6);
    expect(doubts(text)).toEqual([]);
  });

  test.each([
    'Lye solution 33 %: NaOH 139 g, water 278 g',
    'NaOH 139 g in water 278 g, a 33 % solution',
    'Lye 139 g, water 278 g, that is a 33 % solution',
  ])('the dry alkali of one is weighed by itself: %s', (row) => {
    expect(alkaliOf(`${fats}, ${row}`)).toEqual(['naoh', 139, 'dry']);
    expect(read(`${fats}, ${row}`).waterGrams).toBe(278);
  });

  test('water that makes a solution of the alkali is water', () => {
    const { alkali, waterGrams } = read(`${base.slice(0, 23)}, lye 110 g; water to make it a 30 % solution, 257 g.`);
    expect([alkali[0]?.grams, waterGrams]).toEqual([110, 257]);
  });
});

describe('a fat of the list without a weight is asked for', () => {
  test.each([
    '500 g lard, whatever was left in the coconut jar, 90 g lye, 220 g water. Too harsh?',
    '500 g lard, what was left of the coconut, 90 g lye, 220 g water',
    '500 g lard, the coconut I had left, 90 g lye, 220 g water',
    '500 g lard and the dregs of the coconut tub, 90 g lye, 220 g water',
    'I used 500 g lard and everything that was still in the coconut jar. 90 g lye, 220 g water',
    'Lard 500 g. Whatever was left in the coconut jar. Lye 90 g. Water 220 g.',
    '500 g lard. I scraped out the coconut jar as well. 90 g lye, 220 g water',
    "500 g lard, I'm not sure how much coconut, 90 g lye, 220 g water",
    '500 g lard, enough coconut to fill the pot, 90 g lye, 220 g water',
    'lye 90 g, water 220 g, lard 500 g and coconut. Is it fine?',
    'How much lye for 500 g lard and coconut oil?',
    '300 g tallow, 200 g lard, coconut. How much lye?',
  ])('%s', (text) => expect(read(text).doubts).toMatchObject([{ id: 'no-amount', of: 'Coconut oil' }]));

  test.each([
    '500 g lard, no coconut, 90 g lye, 220 g water',
    '500 g lard, the coconut left out, 90 g lye, 220 g water',
    '500 g lard, 90 g lye, 220 g water. What was left of the coconut I gave to my sister.',
    '500 g lard, 90 g lye, 220 g water, whatever the coconut people say.',
  ])('not: %s', (text) => expect(doubts(text)).toEqual([]));
});

describe('of two superfats, the one for this batch', () => {
  test.each([
    [
      "I usually do a superfat of 8 but this is for the laundry, so I'd like 1% here. 1.5 kg coconut. How much lye?",
      0.01,
    ],
    ['Usually I superfat at 5%. For this one please make it 2 %. 1 kg lard. How much lye?', 0.02],
    ['My superfat is normally 8%, but for a cleaning soap I want 0. 1500 g coconut. Lye?', 0],
    ["With tallow I normally go for 7% superfat. Let's take 4% today. 1 kg tallow. How much lye do I use?", 0.04],
    ['The book has a superfat of 8, I want this milder so put it at 10%. 1 kg lard. how much lye?', 0.1],
    ['1 kg lard. How much lye? The card says 4% superfat. Her older one was 9%, that whole card is crossed out.', 0.04],
    ['1 kg lard, 4 % superfat. An older sheet with 9 % superfat was struck through. How much lye?', 0.04],
    ['Superfat 4%. It was 9% on her previous card. 1 kg lard. What I need from you is the lye amount.', 0.04],
    ['Superfat 8. Coconut 1500 g. I add 1% salt to the water. How much lye?', 0.08],
    ['Superfat at 8, please. Coconut 1500 g; the scale is off by 1%. How much lye?', 0.08],
  ])('%s', (text, superfat) => {
    expect(doubts(text)).toEqual([]);
    expect(read(text).superfat).toBeCloseTo(superfat, 9);
  });
  test.each([
    'Superfat 4 %, 9 % is crossed out. 1 kg lard. How much lye?',
    'Superfat 4 %. Crossed out, and 9 % written below. 1 kg lard. How much lye?',
  ])('%s is asked about', (text) => expect(doubts(text)).not.toEqual([]));
  test('is asked for where the post does not say which', () => {
    expect(
      doubts('I superfat at 8 as a rule, but for scrubbing pans 1% will do. Coconut 1500 g. How much lye?'),
    ).toEqual(['two-amounts']);
  });
});

describe('the water of a solution that was weighed', () => {
  const fats = ' 500 g olive, 300 g coconut, 200 g soya oil. ok?';
  test.each([
    'The lye water weighed 420 g in the jug, 135 g of it lye, the rest water.',
    'My lye solution came to 420 g: 135 g lye and the rest is water.',
    'Lye solution 420 g in total, of which 135 g NaOH, remainder water.',
    'I mixed 420 g lye water (135 g lye, the rest water).',
    'Lye 135 g and water together came to 420 g.',
    'The solution weighs 420 g, 135 of it lye.',
    'Lye water: 135 g lye in 285 g water, 420 g altogether.',
  ])('%s', (lye) => {
    expect(doubts(lye + fats)).toEqual([]);
    expect(alkaliOf(lye + fats)).toEqual(['naoh', 135, 'dry']);
    expect(read(lye + fats).waterGrams).toBe(285);
  });
  test('is none where the alkali alone weighs more', () => {
    expect(doubts(`Lye 135 g, lye water 100 g.${fats}`)).toEqual(['total-disagrees']);
  });
});

describe('of two weights of all the fats', () => {
  const shares = '60% olive 40% lard';
  const made = (text: string): readonly number[] => read(text).fats.map(({ grams }) => Math.round(grams));
  test.each([
    `the handout is for 1000g oils, ${shares}. i make only 700g of oils bc my mold is small. lye for the 700?`,
    `${shares}. sheet for 2kg oils, i do 700g oils. how much lye`,
    `the page says 1200g of oils, ${shares}. we just do 700g of oils. lye?`,
  ])('that of the writer counts beside that of a sheet: %s', (text) => {
    expect([made(text), doubts(text)]).toEqual([[420, 280], []]);
  });
  test.each([
    `workshop, 10 people, each makes 400g of oils so 4 kg oils in total. ${shares}. how much lye altogether`,
    `8 ladies, everyone makes 500g oils, so 4kg oils total. ${shares}. lye for all?`,
  ])('that of all counts beside that of each of so many: %s', (text) => {
    expect([made(text), doubts(text)]).toEqual([[2400, 1600], []]);
  });
  test.each([
    `10 people, each makes 400g of oils so 4 kg oils in total. ${shares}. how much lye does each one need`,
    `10 people, each makes 400g of oils so 5 kg oils in total. ${shares}. how much lye altogether`,
    `1000g oils, ${shares}. or 700g oils. lye?`,
  ])('none is taken unasked: %s', (text) => expect(doubts(text)).toContain('two-amounts'));
});

describe('the rest of a total', () => {
  test.each([
    '1 kg of oils: 300 g coconut, 50 g castor, rest olive',
    'coconut 30 %, castor 5 %, the rest olive, total oils 1000 g',
    'coconut 30%, castor 5% and olive for the rest, 1 kg of oils',
    'total oils 1000 g: coconut 300 g, castor 50 g, top up with olive',
    'total fat 1000 g, coconut 300 g, castor 50 g, olive the remainder',
    'coconut 300 g castor 50 g rest olive 1000 g total, how much lye',
    'castor 50 g, coconut 300 g, remainder olive 1 kg in total. lye?',
    'a quarter of coconut, a tenth of castor, the rest olive, 1 kg of oils',
    'For my kilo mould (1000 g oils) I want 300 g coconut, 50 g castor and fill the rest up with olive.',
    'My pan takes 1 kg of oils. 300 g coconut, 50 g castor, and olive makes up the rest.',
    "I'd take 300 g coconut, 50 g castor and make up the remainder to 1000 g with olive.",
    '300 g coconut, 50 g castor, then olive to bring it up to 1000 g.',
    '300 g coconut, 50 g castor, then I topped it up with olive till the scale showed 1000 g.',
    'Coconut 300 g, castor 50 g, then I poured in olive until the display said 1000 g of oils in total.',
    'Into the pot 50 g castor, 300 g coconut, and olive until I had 1000 g of oils.',
  ])('%s', (text) => {
    const olive = read(text).fats.find(({ id }) => id === 'olive-oil-virgin');
    expect(olive?.grams).toBeCloseTo(650, 6);
  });

  test.each([
    'I plan a loaf for 1500 g of fats in total. It should be 40 % lard, 20 % coconut and 40 % olive. Lye?',
    'Two parts lard to one part coconut; my mould holds about 900 g of fat, so exactly that, 900. Lye?',
    'Two parts lard, one part coconut. My tray takes around 950 g of oils but make it 900 g. Lye?',
  ])('what the mould holds is the total: %s', (text) => {
    expect(doubts(text)).toEqual([]);
    expect(
      read(text)
        .fats.slice(0, 2)
        .map(({ grams }) => Math.round(grams)),
    ).toEqual([600, 300]);
  });

  test('is asked for where no total is known', () => {
    expect(doubts('how much lye for coconut 300 g, castor 50 g, the rest olive')).toContain('no-amount');
  });
});

test.each([
  ['1 lb is 454 g, right? lard 2 lb, coconut 1 lb, lye 190 g, water 400 g', 190, 400],
  [
    'lard 800 g, coconut 200 g, NaOH 146 g (that includes 6 g extra for the acid), citric acid 10 g, water 300 g',
    146,
    300,
  ],
  ['lard 800 g, coconut 200 g, NaOH 146 g of which 6 g for 10 g citric acid, water 300 g', 146, 300],
  ['lard 800 g, coconut 200 g, NaOH 140 g + 6 g for the citric acid, citric acid 10 g, water 300 g', 146, 300],
  ['lard 800 g, coconut 200 g, NaOH 140 g, water for the lye 300 g. Which of the two waters counts?', 140, 300],
  ['lard, 800 g\ncoconut, 200 g\nNaOH, 140 g\nwater for the lye, 300 g', 140, 300],
  ['lard, 800 g\ncoconut, 200 g\nNaOH (98 %), 140 g\nwater to dissolve the lye, 300 g', 140, 300],
  ['lard 800 g, coconut 200 g, NaOH 140 g, water 300 g. Clear test: 1 tsp paste in 1 cup hot water', 140, 300],
  ['lard 800 g, coconut 200 g, NaOH 140 g, water 300 g. Dilute the paste with 1.5 kg water later.', 140, 300],
  ['oil blend, 10 kg made up: lard 80 %, coconut 20 %. I take 1000 g of the blend, 140 g NaOH, 300 g water', 140, 300],
])('what is said beside the rows is no row: %s', (text, alkali, water) => {
  const reading = read(text);
  expect(reading.doubts).toEqual([]);
  expect([reading.alkali[0]?.grams, reading.waterGrams]).toEqual([alkali, water]);
});

test.each([
  'superfat zero',
  'no superfat',
  'I want a lye discount of nothing',
  'the discount on the lye at zero please',
])('none is a superfat, too: %s', (said) => {
  expect(read(`how much lye for lard 500 g, coconut 200 g, ${said}`).superfat).toBe(0);
});

describe('soda by its bare name', () => {
  const fats = 'lard 500 g, coconut 300 g, olive 200 g, water 300 g';
  test.each(['The soda: 143 g', '143 g soda of 99 %', 'Ciao a tutti! soda 143 g'])(
    'is caustic where something says so and its weight is the need: %s',
    (said) => {
      const { alkali, assumptions } = read(`${fats}. ${said}`);
      expect(doubts(`${fats}. ${said}`)).toEqual([]);
      expect(alkali).toMatchObject([{ id: 'naoh', grams: 143 }]);
      expect(assumptions.map(({ text }) => text).join()).toContain('washing soda');
    },
  );

  test.each([
    'soda 143 g',
    'The soda: 110 g',
    'The soda: 160 g',
    'The washing soda: 143 g',
    'The soda: 123 g, KOH 20 g',
  ])('is asked about else: %s', (said) => expect(doubts(`${fats}. ${said}`)).toContain('which-alkali'));
});

describe('no superfat', () => {
  const lard = 'What weight of caustic soda for 900 g of lard';
  test.each([
    "without any superfat, it's for the floors",
    "I don't want any superfat",
    'unsuperfatted',
    'superfat: none',
    "superfat isn't wanted",
    'there is no need for superfat',
    'I never superfat washing soap',
    'skip the superfat please',
    'and every last bit of the fat turned to soap',
  ])('is one of nothing: %s', (said) => expect(read(`${lard}, ${said}. Thanks!`).superfat).toBe(0));

  test.each([
    'almost no superfat',
    "my aunt's had no superfat",
    'no superfat is given in the book',
    'without changing the superfat',
    'no scent, superfat as usual',
    'not sure about the superfat',
  ])('is not said: %s', (said) => expect(read(`${lard}, ${said}. Thanks!`).superfat).toBeNull());

  test('beside a figure that figure counts', () => {
    expect(read(`${lard}, no superfat beyond 3 %`).superfat).toBe(0.03);
    expect(doubts(`${lard}, no superfat, how much NaOH?`)).toEqual([]);
  });
});

test.each([
  '750 g lard and 250 g sunflower, lye for 6% sf?',
  '750 g lard and 250 g sunflower, caustic soda at 6 % superfat',
  '750 g lard and 250 g sunflower, with lye, superfat 6 %',
  '750 g lard, 250 g sunflower. What lye do I need for 6%?',
  '750 g lard, 250 g sunflower. How much NaOH would I take for 6 %? No rush',
])('an alkali without an amount is what is asked for: %s', (text) => {
  expect(doubts(text)).toEqual([]);
  expect(read(text).superfat).toBeCloseTo(0.06);
});

test.each([
  'water to be 35 percent of the total oils',
  'how much water if I use 35 % of the pot fats?',
  'water is 35 % of all the fats',
])('a share of all fats, by any name of theirs, is that of what it stands with: %s', (said) => {
  expect(read(`olive 500 g, coconut 300 g, lard 200 g. How much lye, ${said}`).waterGrams).toBeCloseTo(350);
});

test('a step of the scale without a unit is in that of the rest', () => {
  const { scaleStep, assumptions } = read('olive 10 oz, coconut 6 oz, how much lye in oz? my scale does 0.05');
  // 1 oz = 28.349523125 g (international avoirdupois ounce)
  expect(scaleStep).toBeCloseTo(28.349523125 / 20);
  expect(assumptions.map(({ text }) => text).join()).toContain('the scale');
});

test.each([
  ['How much KOH, not NaOH?', ['koh']],
  ['How much KOH? I usually make bars with NaOH', ['koh']],
  ['KOH please. So far I have always used sodium hydroxide', ['koh']],
  ['How much NaOH? Not potassium hydroxide, the other one', ['naoh']],
  ['How much KOH do I need instead of NaOH', ['koh']],
  ["I've never used KOH before. How much KOH?", ['koh']],
  ['How much NaOH and KOH, as always?', ['naoh', 'koh']],
  ['I usually use KOH. How much lye?', ['koh']],
  ['Normally it is NaOH and that is still the plan, never mind what they say about KOH. 5 %. How much?', ['naoh']],
  ["I'd go with NaOH, whatever people tell me of KOH. How much lye?", ['naoh']],
  ['Normally NaOH, but this time KOH. How much?', ['koh']],
  ['Some say NaOH and others say KOH. How much lye?', ['naoh', 'koh']],
  ['My friend says NaOH, others say KOH. How much?', ['naoh', 'koh']],
])('of two alkalis, the one that is asked for counts: %s', (text, expected) => {
  expect(read(`700 g sunflower, 300 g coconut. ${text}`).alkaliNamed).toEqual(expected);
});

test('behind the fats, the own superfat counts beside that of somebody else, and one that cannot be is asked about', () => {
  const fats = '650 g olive oil, 250 g coconut oil and 100 g cocoa butter';
  expect(read(`The woman at the market swears by 10 % superfat. Lye for ${fats}, at my 5 %?`).superfat).toBeCloseTo(
    0.05,
  );
  expect(doubts(`lye for ${fats} at 110 % superfat`)).toEqual(['superfat-odd']);
});

test.each(["I've never used KOH before. How much lye?", 'How much lye? No KOH please'])(
  'an alkali that is only denied is not taken unasked: %s',
  (text) => expect(doubts(`700 g sunflower, 300 g coconut. ${text}`)).toContain('which-alkali'),
);

describe('which alkali', () => {
  const fats = 'Tallow 700 g, coconut 300 g';
  test.each(['Soda?', 'How much soda?', 'Soda for 5 % superfat?'])('soda that is asked for is caustic: %s', (asked) => {
    const { doubts: open, assumptions } = read(`${fats}. ${asked}`);
    expect(open).toEqual([]);
    expect(assumptions.map(({ text }) => text).join()).toContain('caustic soda');
  });
  test.each([
    'I have washing soda. How much soda?',
    'How much soda, or potash?',
    'Natron?',
    'Soda 140 g, water 300 g?',
  ])('but is asked about here: %s', (asked) => expect(doubts(`${fats}. ${asked}`)).toContain('which-alkali'));

  const both = 'I have two hydroxides, the potassium sort and the sodium sort.';
  test.each([
    [`${both} Today it's the sodium sort. ${fats}. How much?`, 'naoh'],
    [`${both} This time I use the potassium one. ${fats}. How much hydroxide?`, 'koh'],
    [`Potassium hydroxide and sodium hydroxide are here. Using the sodium kind today. ${fats}. How much?`, 'naoh'],
  ])('of two, the one that is taken: %s', (text, id) => {
    expect(doubts(text)).toEqual([]);
    expect(read(text).alkaliNamed).toEqual([id]);
  });
  test.each([`${both} ${fats}. How much?`, `${both} Last time it was the sodium sort. ${fats}. How much?`])(
    'is asked: %s',
    (text) => expect(doubts(text)).toContain('which-alkali'),
  );

  const weighed = `${fats}, 140 g of sodium hydroxide in 300 g of water.`;
  test('the hydroxide is the one that was named', () => {
    expect(doubts(`${weighed} Next time I will try 135 g of the hydroxide. Sound?`)).toEqual([]);
    expect(doubts(`${weighed} I added 20 g of hydroxide more. Sound?`)).toContain('which-alkali');
  });
});

test.each([
  ['can I do a 100% coconut bar with 20 sf? got 500 g of it. How much lye?', 0.2],
  ['100 percent lard soap with 6 superfat. I have 800 g lard. How much lye?', 0.06],
  ['100% coconut laundry bar, 900 g, ZERO superfat. how much lye', 0],
])('the hundred per cent of the one fat are no superfat: %s', (text, superfat) => {
  expect(doubts(text)).toEqual([]);
  expect(read(text).superfat).toBeCloseTo(superfat);
});

test.each(['coconut 454 g, sf 100%. lye?', '100% sf 20 olive 500 g. lye?'])('unless they may be: %s', (text) =>
  expect(doubts(text)).toEqual(['superfat-odd']),
);

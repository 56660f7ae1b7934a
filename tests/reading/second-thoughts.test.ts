/** What a later sentence of a post makes of an earlier one: figures put right, things left out or put in another's place. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, waterGrams, superfat, doubts, assumptions } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries(
      [...fats, ...alkali, { id: 'water', grams: waterGrams }].map((one) => [one.id, one.grams]),
    ),
    superfat,
    doubts: doubts.map(({ id }) => id),
    told: assumptions.filter(
      ({ id, text }) =>
        id === 'corrected' || text.endsWith('of the 2 recipes in the post.') || text.includes('of other versions'),
    ).length,
  };
};

const recipe = 'Olive 500 g, coconut 250 g, palm 250 g, NaOH 145 g, water 330 g.';
const plain = { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'palm-oil': 250, naoh: 145, water: 330 };
const { 'palm-oil': _, ...palmless } = plain;

describe('a later sentence', () => {
  test.each([
    [`${recipe} EDIT: the palm is 200 not 250, sorry, fat fingers.`, { ...plain, 'palm-oil': 200 }],
    [`${recipe}\nCorrection: NaOH 143 g`, { ...plain, naoh: 143 }],
    [`${recipe} The palm becomes lard.`, { ...palmless, lard: 250 }],
    ['Olive 500 g, coconut 250 g, palm 200 g (typed that wrong, I mean 250 g), NaOH 145 g, water 330 g.', plain],
    ["Olive 500 g, coconut 250 g, palm 200 g (that's wrong, it is 250 g), NaOH 145 g, water 330 g.", plain],
    [`${recipe} PS: lye should read 135 g, typo`, { ...plain, naoh: 135 }],
    [
      `${recipe.replace(', NaOH 145 g, water 330 g', '')} I meant 400 g olive. NaOH 145 g, water 330 g.`,
      { ...plain, 'olive-oil-virgin': 400 },
    ],
    [
      `${recipe.replace(', NaOH 145 g, water 330 g', '')} Sorry, meant coconut 200 g. NaOH 145 g, water 330 g.`,
      { ...plain, 'coconut-oil': 200 },
    ],
    [`${recipe} EDIT: typo, the palm is 200 g, not 250. Lye is worked out for the 200.`, { ...plain, 'palm-oil': 200 }],
    [`${recipe} Oops, that should be 200 g palm.`, { ...plain, 'palm-oil': 200 }],
    [
      `${recipe} wait, I forgot, coconut is 200 g and olive 550 g`,
      { ...plain, 'coconut-oil': 200, 'olive-oil-virgin': 550 },
    ],
    [`${recipe} I dropped the palm to 200 g.`, { ...plain, 'palm-oil': 200 }],
    [`${recipe} I changed the water to 300.`, { ...plain, water: 300 }],
    [`${recipe} I did not use 100 g of milk.`, plain],
    [`${recipe} The water is 300 g now.`, { ...plain, water: 300 }],
    [`${recipe} It was 310 g while there was less palm in it.`, plain],
    [`${recipe} Palm was 200 g until yesterday.`, plain],
    [`${recipe} The recipe calls for 160 g NaOH but I only used 145 g.`, plain],
    [`Last time I used 120 g lye. ${recipe}`, plain],
    [`${recipe} I once had 50 g castor in it.`, plain],
    [`In my last batch I had 120 g NaOH with 800 g olive. ${recipe}`, plain],
    [`${recipe} EDIT: no palm, I left it out.`, palmless],
    [`${recipe} I skipped the palm because of the orangutans.`, palmless],
    [`${recipe.slice(0, -1)} minus the palm`, palmless],
    [
      'Lard 1000 g. Coconut 200 g. Lye 165 g. Water 380 g. EDIT: typo, the lard is 500 g, not 1000.',
      { lard: 500, 'coconut-oil': 200, naoh: 165, water: 380 },
    ],
    [
      `> Recipe of the month:\n> olive 500 g, coconut 250 g, palm 250 g\n> NaOH 145 g, water 330 g\n\nI don't use palm so I replaced all of it with lard, same 250 g, and changed nothing else. Lye OK with my swap? They say not more than 15 % castor.`,
      { ...palmless, lard: 250 },
    ],
    [`${recipe} We were out of palm so I took tallow.`, { ...palmless, 'tallow-beef': 250 }],
    [`${recipe} I subbed lard for palm.`, { ...palmless, lard: 250 }],
    [
      `${recipe} I don't use palm so I replaced all of it with lard, same 250 g, changed nothing else.`,
      { ...palmless, lard: 250 },
    ],
    [`${recipe} I never use palm, so I swapped it for lard, same weight. Lye ok?`, { ...palmless, lard: 250 }],
    [`> ${recipe}\nI exchanged the palm for lard, the same 250 grams, rest as above. Ok?`, { ...palmless, lard: 250 }],
    [`${recipe} Traded the palm for lard.`, { ...palmless, lard: 250 }],
    [`${recipe} Palm was out, so I took lard.`, { ...palmless, lard: 250 }],
    [`${recipe} No palm in the shop, I used lard`, { ...palmless, lard: 250 }],
    [`${recipe} Well, I wrote palm, but the shop was out, so it's lard this time.`, { ...palmless, lard: 250 }],
    [`${recipe} I don't use palm, so I'm putting lard instead, same amount.`, { ...palmless, lard: 250 }],
    [`${recipe} We never buy palm so we used 240 g lard instead.`, { ...palmless, lard: 240 }],
    [`${recipe} I don't do palm and lard goes in instead.`, { ...palmless, lard: 250 }],
    [`${recipe} I swapped the palm for 240 g lard.`, { ...palmless, lard: 240 }],
    [`> ${recipe}\nI'm out of palm so it's lard in its place, same weight.`, { ...palmless, lard: 250 }],
    [`${recipe} The palm, I had none, so 250 g lard went in instead.`, { ...palmless, lard: 250 }],
    [
      `${recipe} No palm left, so the 250 g of palm in my usual became 250 g tallow.`,
      { ...palmless, 'tallow-beef': 250 },
    ],
    [`${recipe} The 250 g of palm became 240 g of tallow.`, { ...palmless, 'tallow-beef': 240 }],
    [`${recipe} There was no palm either, so instead of it I used 250 g shea.`, { ...palmless, 'shea-butter': 250 }],
    [
      `${recipe.replace('palm 250 g', 'palm 250 g, my tub gave only 150 g, I topped it up with 100 g lard')}`,
      { ...plain, 'palm-oil': 150, lard: 100 },
    ],
    [`${recipe} There was no palm in the shop, so I used the same amount of lard.`, { ...palmless, lard: 250 }],
    [
      `I replaced the 250 g shea of the book with 250 g palm. The rest as in the book: olive 500 g, coconut 250 g. NaOH 145 g, water 330 g.`,
      plain,
    ],
    [
      `${recipe} I swapped the palm for tallow and the olive for sunflower, same weights.`,
      { 'coconut-oil': 250, 'tallow-beef': 250, 'sunflower-oil': 500, naoh: 145, water: 330 },
    ],
    [`no shea at home so I left it out\n${recipe.replaceAll(', ', '\n')}\nshea 50 g (left out)`, plain],
    [`${recipe.replace('palm 250 g', 'palm i said 150, its 250')}`, plain],
    [
      `My friend sent: ${recipe} Then she wrote: "NaOH 142 not 145!! and make water 300"`,
      { ...plain, naoh: 142, water: 300 },
    ],
    [
      `Sorry, in my post yesterday I wrote 350 g palm, it should have been 250 g. Here again:\n${recipe.replaceAll(', ', '\n')}`,
      plain,
    ],
    [
      `Changes: ${recipe.replace('olive 500 g', 'olive up from 400 g to 500 g').replace('Olive 500 g', 'olive up from 400 g to 500 g')}`,
      plain,
    ],
    [`I used 30 g beeswax back then. This time no beeswax. ${recipe}`, plain],
    [`${recipe} The palm bottle ran out at 200, sorry.`, { ...plain, 'palm-oil': 200 }],
    [`${recipe.replace('palm 250 g', '250 g of shea... no, sorry, of palm')}`, plain],
    [`${recipe.replace('palm 250 g', 'shea, sorry, palm 250 g')}`, plain],
    [
      `${recipe.replace('NaOH 145 g', 'lye 150... no wait, I had to turn the page, lye 145 g')} The 150 was a price or something.`,
      plain,
    ],
    [
      `${recipe.replaceAll(' g', ' oz').replace('330 oz.', '330 oz')}\nEDIT: all of these are grams, my keyboard put oz`,
      plain,
    ],
    [`${recipe} Half the palm is lard now.`, { ...plain, 'palm-oil': 125, lard: 125 }],
    [`${recipe} I replaced 100 g of the palm with lard.`, { ...plain, 'palm-oil': 150, lard: 100 }],
    [`20 % of the palm is tallow this time.\n${recipe}`, { ...plain, 'palm-oil': 200, 'tallow-beef': 50 }],
    [
      `Had 250 g palm in the plan but half of it is now rice bran. Rest: olive 500 g, coconut 250 g, NaOH 145 g, water 330 g`,
      { ...plain, 'palm-oil': 125, 'rice-bran-oil': 125 },
    ],
    [`Instead of half the palm I used 130 g of lard.\n${recipe}`, { ...plain, 'palm-oil': 125, lard: 130 }],
    [`${recipe} Half of the water is goat milk.`, { ...plain, water: 165 }],
    [`${recipe} I don't use palm, so that is tallow in mine.`, { ...palmless, 'tallow-beef': 250 }],
    [
      `${recipe.replace('coconut 250', 'coconut 240')} I never buy palm. Those 250 g are lard here.`,
      { ...palmless, 'coconut-oil': 240, lard: 250 },
    ],
    [`Where she has palm I have tallow.\n${recipe}`, { ...palmless, 'tallow-beef': 250 }],
    [`Last time I put 150 g of lye. This time I measured 145 g. ${recipe.replace(', NaOH 145 g', '')}`, plain],
    [`Previously: 380 g water. Now: 330 g because it stayed soft. ${recipe.replace(', water 330 g', '')}`, plain],
    [
      `Mam's notebook says 250 g suet... no wait, I can't get suet, so it's beef tallow, 250 g. ${recipe.replace('palm 250 g, ', '')}`,
      { ...palmless, 'tallow-beef': 250 },
    ],
    [`The palm is tallow in mine.\n${recipe}`, { ...palmless, 'tallow-beef': 250 }],
    [`Fats as printed: 350 g coconut, 650 g shea... hang on, that is a different page. Mine: ${recipe}`, plain],
    [`Fats as printed: 350 g coconut, 650 g shea, no wait, wrong page. Mine: ${recipe}`, plain],
    [`350 g coconut\n650 g shea\nah no, that's last year's batch!\n${recipe.replaceAll(', ', '\n')}`, plain],
    [
      `Recipe said 145.4 g of caustic, my scale only does whole grams so I took 145. ${recipe.replace(', NaOH 145 g', '')}`,
      plain,
    ],
    [
      'Doubling my tester, everything times two. Tester was 200 g olive, 100 g coconut, 43 g NaOH, 100 g water.',
      { 'olive-oil-virgin': 400, 'coconut-oil': 200, naoh: 86, water: 200 },
    ],
    [
      'The single batch is 200 g olive, 100 g coconut, 43 g NaOH, 100 g water, all amounts tripled. Ok?',
      { 'olive-oil-virgin': 600, 'coconut-oil': 300, naoh: 129, water: 300 },
    ],
    [
      'I tripled my normal recipe. The normal one is 200 g olive, 100 g coconut, 43 g NaOH and 100 g water.',
      { 'olive-oil-virgin': 600, 'coconut-oil': 300, naoh: 129, water: 300 },
    ],
    [
      'We halved our usual recipe, which is 400 g olive, 200 g coconut, 86 g NaOH, 200 g water.',
      { 'olive-oil-virgin': 200, 'coconut-oil': 100, naoh: 43, water: 100 },
    ],
    [
      "I'm making a double batch of my usual.\n\nUsual batch:\n200 g olive\n100 g coconut\n43 g NaOH\n100 g water",
      { 'olive-oil-virgin': 400, 'coconut-oil': 200, naoh: 86, water: 200 },
    ],
  ])('changes what was said: %s', (text, grams) => {
    const { doubts, told, ...got } = read(text);
    expect(doubts).toEqual([]);
    expect(got.grams).toEqual(grams);
    expect(told).toBeGreaterThan(0);
  });

  test.each([
    `${recipe} We had run out, so 200 g lard topped it up.`,
    `${recipe} Instead 200 g lard went in.`,
    `I've swapped some of the palm for lard. It was: ${recipe}`,
    `${recipe} Those 250 g are lard here.`,
    `${recipe} Everything doubled.`,
    `I doubled my usual. The usual is ${recipe} I didn't double the palm.`,
    `350 g shea, 90 g NaOH, hang on, that's another page. Mine: 300 g coconut, 200 g palm, water 150 g`,
  ])('asks about what was lacking, and nobody knows what: %s', (text) => {
    expect(read(text).doubts).toContain('corrected');
  });

  test.each([
    `Same as last time (${recipe.slice(0, -1)}) except I put in 5 g more lye because it had felt soft.`,
    `${recipe} I used 5 g less lye, because it is old.`,
  ])('lye that came on top is asked about: %s', (text) => expect(read(text).doubts).toEqual(['two-amounts']));

  test('and so is lye that went into the jug, too', () => {
    const post = recipe.replace('NaOH 145 g, water 330 g', 'NaOH 140 g in 330 g water');
    expect(read(`${post} Then I put 6 g more lye into the jug.`).doubts).not.toEqual([]);
  });

  test.each([`${recipe} In spring I used 5 g less lye.`, `${recipe} Would 5 g more lye be better?`])(
    'and none that is only thought of: %s',
    (text) => expect(read(text)).toMatchObject({ grams: plain, doubts: [] }),
  );

  test('a lye of last time is none of a recipe whose lye is asked for', () => {
    const { grams, doubts } = read(
      'Last time it was 500 g olive and 250 g coconut with 107 g lye. This time 600 g olive, 250 g coconut, 50 g castor. How much lye for the new one?',
    );
    expect(doubts).toEqual([]);
    expect(grams).toEqual({ 'olive-oil-virgin': 600, 'coconut-oil': 250, 'castor-oil': 50, water: null });
  });

  test.each([
    'I doubled my usual recipe. My usual superfat is 5 %.',
    'I doubled the usual amount of lavender. The usual soap is this.',
    'I wish I had doubled my usual. The usual is this.',
  ])('what was made larger is not this list: %s', (told) => {
    expect(read(`${told} ${recipe}`)).toMatchObject({ grams: plain, doubts: [] });
  });

  const lately = 'The last batch had 700 g olive, 300 g palm, 135 g lye and 300 g water.';
  const now = 'This time 600 g olive, 300 g palm, 100 g shea';
  const today = { 'olive-oil-virgin': 600, 'palm-oil': 300, 'shea-butter': 100 };
  test.each([
    `${lately} ${now}. 6 % superfat please.`,
    `${lately} ${now}, lye not worked out yet.`,
    `${lately} ${now}, I haven't got a lye amount.`,
    `${lately} ${now}. I need a lye weight.`,
  ])('a lye of last time is none of a recipe that has none yet: %s', (text) => {
    const { grams, doubts } = read(text);
    expect(grams).toEqual({ ...today, water: null });
    expect(doubts).toEqual([]);
  });

  test('a lye of last time is that of other fats where it is said to stay, and asked about where nobody says so', () => {
    expect(read(`${lately} ${now}, the same lye.`)).toMatchObject({ grams: { ...today, naoh: 135 }, doubts: [] });
    expect(read(`${lately} ${now}. Will it work?`).doubts).toContain('corrected');
  });

  test('a recipe of somebody else is none of one whose lye is asked for', () => {
    const { grams, doubts } = read(
      'The recipe from the market lady is 1 kg sunflower with 210 g KOH. So I do 700 g sunflower and 300 g coconut. How many grams of naoh for 5 % superfat',
    );
    expect(doubts).toEqual([]);
    expect(grams).toEqual({ 'sunflower-oil': 700, 'coconut-oil': 300, water: null });
  });

  const pair = 'used 60g lye on 450g lard.';
  const pairs = ['my aunt', 'sis', 'last time i'].map((who) => `${who} ${pair}`);
  test.each(
    pairs.flatMap((said) => [
      `${said} im doing 600g of the same lard. what lye do i need, just 60 again?`,
      `${said} now i use 600g lard. how much lye?`,
    ]),
  )('a lye and the one fat that it was for stay together: %s', (text) => {
    expect(read(text)).toMatchObject({ grams: { lard: 600, water: null }, doubts: [] });
    expect(read(text).grams).not.toHaveProperty('naoh');
  });
  test.each(
    pairs.flatMap((said) => [
      `${said} i want to do 600g lard. do i use 60 too?`,
      `${said} i did the same with 600g lard. ok?`,
      `${said} now i use 600g of the same lard. is it ok?`,
    ]),
  )('and is asked about for more of the same fat: %s', (text) => expect(read(text).doubts).toContain('corrected'));
  test.each(
    pairs.flatMap((said) => [
      `${said} now i use 600g lard with the same lye. ok?`,
      `${said} this time 600g lard, everything else the same. ok?`,
      `${said} this time i took 600g lard, lye stays the same. ok?`,
    ]),
  )('but where the lye is said to stay: %s', (text) => {
    expect(read(text)).toMatchObject({ grams: { lard: 600, naoh: 60 }, doubts: [] });
  });

  test.each([
    'My aunt uses 8 % superfat. Me, I would like 5, as it is mild.',
    "The book says 8 % superfat but I'd like 5 %. How much lye?",
    'He goes for 8 % superfat, I want 5 %. How much lye?',
  ])('of others gives way to a wish of the writer: %s', (text) => {
    expect(read(`Olive 500 g, coconut 250 g. ${text}`).superfat).toBe(0.05);
  });

  test.each([
    `${recipe} Can you give it all in ounces please?`,
    `${recipe} I only have a scale in ounces.`,
    `${recipe} Could I use lard instead of palm?`,
    `${recipe} I don't like palm, I might put lard instead, same weight.`,
    `${recipe} My grandma used lard instead of palm.`,
    `Melt the fats, take it out, then stir. ${recipe}`,
    `${recipe} Next time I would leave out the palm.`,
    `${recipe} I took the soap out of the mould and left it out overnight.`,
    `${recipe} EDIT: thanks everyone!`,
    `${recipe} Sorry for the long post.`,
    `${recipe} The coconut jar was empty, I took it out to the bin.`,
  ])('changes nothing: %s', (text) => {
    const { grams, told, doubts } = read(text);
    expect(doubts).toEqual([]);
    expect(grams).toEqual(plain);
    expect(told).toBe(0);
  });

  test.each([
    `${recipe} I replaced part of the palm with lard.`,
    `${recipe} My calculator says 138 g NaOH. Who is right?`,
    `${recipe} No wait, the other jar.`,
    `${recipe}\nCorrection: 77, not 78`,
    `${recipe} Sorry 250 g should be 200 g`,
    `${recipe.replace('palm 250 g', 'palm 300 g').replace('330 g', '250 g')} Sorry 250 g should be 200 g`,
    `EDIT: 77, not 78\n${recipe}`,
    `${recipe}\n\nEDIT: olive 400 g, coconut 200 g, NaOH 85 g, water 200 g`,
  ])('is asked about where it is not plain: %s', (text) => {
    expect(read(text).doubts.length).toBeGreaterThan(0);
  });

  test.each([
    [recipe.replace('145 g', '154 g (a misprint, read 145)'), 145],
    [`${recipe} 145 is a misprint, it should be 141.`, 141],
    [`${recipe} 145 g is a typo, should be 141 g`, 141],
    [`${recipe} Misprint: read 141 for 145.`, 141],
    [recipe.replace('145 g', '145 g (should have been 150, but the jar was empty)'), 145],
  ])('sets a misprint right: %s', (text, naoh) => {
    expect(read(text)).toMatchObject({ grams: { ...plain, naoh }, doubts: [] });
  });

  test.each([
    `${recipe.replace('palm 250 g', 'palm 250 g (left that out this time)')}`,
    `${recipe} I'm not using the palm.`,
    `${recipe.replace('palm 250 g', 'palm 250 g but im NOT using the palm')}`,
    `${recipe} It has gone off, so I won't use the palm.`,
    `${recipe} In the end I didn't add the palm.`,
  ])('takes out what is not used: %s', (text) => {
    expect(read(text)).toMatchObject({ grams: palmless, doubts: [], told: 1 });
  });

  test.each([
    `${recipe}\n\nEdit: forgot the castor, 40 g`,
    `${recipe} I forgot the castor at first, 40 g, and stirred it in at trace.`,
    `${recipe} I left out the castor at first (40 g), so it went in later.`,
  ])('adds what was forgotten: %s', (text) => {
    expect(read(text)).toMatchObject({ grams: { ...plain, 'castor-oil': 40 }, doubts: [] });
  });
});

test.each([
  `${recipe} Except that lard takes the place of the palm, same amount.`,
  `${recipe} In mine lard took the place of the palm.`,
])('what takes the place of something: %s', (text) => expect(read(text).grams).toEqual({ ...palmless, lard: 250 }));

describe('a recipe that was copied with one figure of its own', () => {
  const copied = '> Lard 500g Coconut 250g Lye 105g Water 220g\n\n';
  test.each([
    ['ok did this one but put in 300g coconut because the tub was open. Greasy?', 300],
    ['made this but used 300g coconut. Greasy?', 300],
    ['did this one but put in 50g more coconut. Greasy?', 300],
  ])('%s', (text, coconut) => {
    const { fats, doubts } = readRecipe(reader, copied + text);
    expect([fats.map(({ grams }) => grams), doubts]).toEqual([[500, coconut], []]);
  });
  test.each(['should I do this one but with 300g coconut?', 'I also put in 300 g coconut.'])('asked: %s', (text) =>
    expect(readRecipe(reader, copied + text).doubts).not.toEqual([]),
  );
});

test.each(['typo!! lye is 134', 'Typo!!! Lye is 134', 'oh no!! lye is 134, typo'])(
  'a cry puts it right: %s',
  (text) => {
    const { alkali, doubts } = readRecipe(reader, `550g lard\n270g coconut\nlye 143\nwater 270\n\n${text}`);
    expect([alkali.map(({ grams }) => grams), doubts]).toEqual([[134], []]);
  },
);

describe('what is left out', () => {
  const rows = 'Olive 500 g, coconut 250 g, palm 200 g, castor 50 g, lye 139 g, water 300 g. ';
  const fatsOf = (text: string) => {
    const { fats, doubts } = readRecipe(reader, text);
    return [fats.map(({ id }) => id).join(), doubts];
  };
  const three = 'olive-oil-virgin,coconut-oil,palm-oil';
  const two = 'olive-oil-virgin,coconut-oil';
  test.each([
    ["Castor never arrived, so I'm leaving it out.", three],
    ['The castor did not turn up, so I leave it out.', three],
    ['The castor has been removed.', three],
    ['Without castor, please.', three],
    ['The castor and the palm are left out.', two],
    ['Castor and palm are both out, I have none.', two],
    ['I left out the castor and the palm.', two],
    ["I'm leaving castor and palm out.", two],
    ['Edit: skipped the castor and palm.', two],
    ['Edit: castor deleted, palm deleted.', two],
    ['Leaving out castor, palm.', two],
    ['I left out the scent and the colour.', `${three},castor-oil`],
    ['My castor and palm finally arrived.', `${three},castor-oil`],
    ['I left the coconut and the palm out overnight to soften.', `${three},castor-oil`],
    ['Without castor it would not lather, so it stays.', `${three},castor-oil`],
    ['I skipped the last meeting.', `${three},castor-oil`],
  ])('%s', (text, fats) => expect(fatsOf(rows + text)).toEqual([fats, []]));
});

describe('so much of a fat that another one takes the place of', () => {
  test.each([
    "My usual: # I've got lard now, so I'm replacing 150 g of the olive with it.",
    '# My aunt gave me lard, so this time I swap 150 g of the olive for it and the rest stays.',
    '# I got some lard and replaced 150 g of the olive by it.',
  ])('by "it": %s', (text) => {
    const { grams, doubts } = read(text.replace('#', recipe));
    expect(grams).toEqual({ ...plain, 'olive-oil-virgin': 350, lard: 150 });
    expect(doubts).toEqual([]);
  });

  test('but not where it is only asked', () =>
    expect(read(`${recipe} I've got lard, could I replace 150 g of the olive with it?`).grams).not.toHaveProperty(
      'lard',
    ));
});

describe('of several batches, the one that is asked about counts', () => {
  const first = 'olive 400 g, coconut 300 g, NaOH 110 g, water 200 g';
  const second = 'olive 500 g, coconut 250 g, palm 250 g, NaOH 145 g, water 330 g';
  test.each([
    `My previous batch had 160 g lye in it and turned out brittle. For this one I weighed ${second}. Better now?`,
    `Last time: ${first}. This time: ${second}. Is it ok now?`,
    `First batch I made (${first}) turned out great. What I'm asking about is the next: ${second}. Is the lye right?`,
    `My very first soap (${first}) is curing nicely. Now the next one: ${second}. Ok?`,
    `My first one (${first}) came out soft. The question is about the second: ${second}. Enough lye?`,
    `Planned: ${first}\nReal: ${second}\nIs the real one ok?`,
    `My sister's soap is ${first}. Mine: ${second}. Is mine ok?`,
    `First try was ${first}, which cracked. Second try is ${second}. Please check the second.`,
    `The video uses ${first}. I don't have that. Mine is ${second}. Is mine fine?`,
    `Group A had ${first} and all went well. Group B had ${second}. I'd like to know if group B's lye is fine.`,
    `What the leaflet wanted: ${first}.\nWhat I took: ${second}.\nIs what I took ok?`,
    `Gran always did it with ${first}. I did ${second}. Is mine all right?`,
    `I used to make it with ${first}. Since this year it's ${second}. Check please`,
    `The book wants 160 g NaOH for olive 500 g, coconut 250 g, palm 250 g. I only put in 145 g, with 330 g of water.`,
    `On the sheet it's 510 g olive and 245 g coconut. In the pot there are 500 g olive and 250 g coconut, 250 g palm. NaOH 145 g, water 330 g as on the sheet. Ok?`,
    `plan 510 g olive → weighed 500 g\nplan 255 g coconut → weighed 250 g\nplan 250 g palm → weighed 250 g\nplan 147 g NaOH → weighed 145 g\nplan 330 g water → weighed 330 g\nis it ok?`,
    `> I'd use 155 g lye for that\n\nThat seemed a lot to me, so in the end I took 145 g. 500 g olive, 250 g coconut, 250 g palm, water 330 g.`,
    `${second}. Is the lye ok? Next time I'll add 30 g castor and 20 g honey.`,
    `${second}. The second go had 160 g NaOH and stung. This is the third go.`,
    `${second}. Jo took 155 g NaOH for hers. Is mine right?`,
    `Card says 250 g coconut. Scale said 262 g. Then I took out some, so 250 g coconut it is. ${second.replace('coconut 250 g, ', '')}.`,
    `Ignore my list from this morning (it had 300 g shea). Proper one:\n${second.replaceAll(', ', '\n')}`,
    `${second}, is it right? And if I later go to 300 g coconut and 450 g olive, will it be harder?`,
    `My daughter made it: ${second}. I'd have taken 135 g NaOH. Is hers ok?`,
    `The scale said 153 g NaOH but the cup is 8 g, so 145 g NaOH. ${second.replace('NaOH 145 g, ', '')}.`,
    `In the pot there's 500 g olive by the scale and not 520. The rest: ${second.replace('olive 500 g, ', '')}.`,
    `The recipe has ${second.replace('500', '466')}. What I did: why leave 34 g over, so I put in all the olive, 500 g. The rest like hers: ${second.replace('olive 500 g, ', '')}.`,
    `Yard soap, rev. D\n${second}\nrev. C had 139 g NaOH and was soft. Is 145 too much?`,
    `Palm-coconut bar v2.1\n${second}\nv2.0 had 160 g lye & was harsh. Is 2.1 fine?`,
    `Yard soap\nVersion: 3\n${second}\nRevision 2 was with 60 g coconut and 350 g water.`,
    `Last batch was 60/30/10 olive/coconut/castor. This one is ${second}. Ok?`,
  ])('%s', (text) => {
    const { doubts, told, grams } = read(text);
    expect(doubts).toEqual([]);
    expect(grams).toEqual(plain);
    expect(told).toBeGreaterThan(0);
  });

  test.each([
    `Monday: ${first}. Tuesday: ${second}. Is the lye right?`,
    `Version one, from the course: ${first}.\n\nVersion two, as our teacher wrote it: ${second}.\n\nWhich of them?`,
    `${recipe} At the end of the page it says 113 g of the lye.`,
    `Yard soap v2\n${second}\nv2 has 160 g lye.`,
    `Yard soap\n${second}\nrev. C: 160 g lye.`,
  ])('is asked about where nobody says which: %s', (text) => {
    expect(read(text).doubts.length).toBeGreaterThan(0);
  });

  test('what the book alone has counts where the rest is as in the book', () => {
    const { doubts, grams } = read(
      'Recipe says 400 g olive, 300 g coconut, 100 g castor, 115 g NaOH, 250 g water. I only had 350 g of olive and used 50 g sunflower to make up the rest.',
    );
    expect(doubts).toEqual([]);
    expect(grams).toEqual({
      'olive-oil-virgin': 350,
      'sunflower-oil': 50,
      'coconut-oil': 300,
      'castor-oil': 100,
      naoh: 115,
      water: 250,
    });
  });

  test.each([
    'What I did: the palm was hard as a stone and I could only scrape out 200 g, so I made up the missing grams with lard.',
    'I only had 200 g of palm, the rest was lard.',
  ])('what fills up weighs as much as was lacking: %s', (told) => {
    const { doubts, grams } = read(`The book says: ${second}. ${told} Is the lye still fine?`);
    expect(doubts).toEqual([]);
    expect(grams).toEqual({ ...plain, 'palm-oil': 200, lard: 50 });
  });

  test('of two tubs the new one has its own purity', () => {
    const { alkali, doubts } = readRecipe(
      reader,
      'old tub of KOH was 90 %, of which I took 250 g. The new one is 85 % and this time I took 262 g. 700 g coconut, 300 g olive, 750 g water.',
    );
    expect(doubts).toEqual([]);
    expect(alkali).toMatchObject([{ id: 'koh', grams: 262, purity: { nominal: 0.85 } }]);
  });
});

describe('a recipe in another size', () => {
  const fats = 'olive 400 g, coconut 160 g';
  test.each([
    [`${fats}, all times 1.5 please. How much lye?`, 600],
    [`1.5 x the book: ${fats}. How much lye?`, 600],
    [`how much lye for this, double everything please: ${fats}`, 800],
    [`${fats}. Multiply all by 2, how much lye do I need?`, 800],
    [`I multiplied everything by 2 and got ${fats}. How much lye?`, 400],
    [`I took everything times 2 already: ${fats}. How much lye?`, 400],
    [`Original: ${fats}, NaOH 78 g, water 160 g. I made exactly half of everything. Is the lye right?`, 200],
    [`${fats}, NaOH 78 g, water 160 g. I only have a small loaf tin so I used precisely half of everything.`, 200],
    [`${fats}, NaOH 78 g, water 160 g. I doubled everything. Is the lye for the double batch right?`, 800],
    [`${fats}, NaOH 78 g, water 160 g. Two loaves at once, so I doubled every single thing. Right for the pot?`, 800],
    [`Full batch is ${fats}, castor 20 g. I only want to do a half batch. How much lye for the half batch?`, 200],
    [`${fats}, 5 % superfat. How much lye for a double batch?`, 800],
    [`I halved the recipe: ${fats}, NaOH 78 g, water 160 g. Is the lye right?`, 400],
    [`${fats}, NaOH 78 g, water 160 g. I made half of it last month. Is the lye right?`, 400],
    [`${fats}, NaOH 78 g, water 160 g. I may make only half of it next time. Is the lye right?`, 400],
    [`${fats}, NaOH 78 g, water 160 g. I took it all times 3!`, 1200],
    [`${fats}, NaOH 78 g, water 160 g, and I made all that times three.`, 1200],
    [`${fats}, NaOH 78 g, water 160 g. made 1.5x of it`, 600],
    [`${fats}, NaOH 78 g, water 160 g. Half a batch of this please, is it ok?`, 200],
    [`${fats}, NaOH 78 g, water 160 g. Everything twice, for the big mould.`, 800],
    [`${fats.replace(', ', '\n')}\nNaOH 78 g\nwater 160 g\n(x2, I have two moulds)`, 800],
    [`I made one and a half times this recipe: ${fats}, NaOH 78 g, water 160 g.`, 600],
    [`${fats}. I only want half. How much lye?`, 200],
    [`${fats}, NaOH 78 g, water 160 g. We used half of it up in a month.`, 400],
    [`${fats}, NaOH 78 g, water 160 g. I poured half of it and coloured the rest green.`, 400],
    [`${fats}, NaOH 78 g, water 160 g. I have made this three times, always fine.`, 400],
    [`${fats}, NaOH 78 g, water 160 g. If it works I'll make three times this.`, 400],
    [`Doubling my recipe: ${fats}, NaOH 78 g, water 160 g. Is the lye right?`, 400],
  ])('is multiplied where that is asked for: %s', (text, grams) =>
    expect(read(text).grams['olive-oil-virgin']).toBe(grams),
  );
});

describe('what lacked', () => {
  const list = '500 g olive, 300 g coconut, 400 g palm, 166 g NaOH, 400 g water';
  const taken = (text: string) => {
    const { grams, doubts } = read(text);
    return [grams['palm-oil'] ?? 0, grams['tallow-beef'] ?? 0, doubts];
  };
  test.each([
    'Palm is finished so it is tallow in this one.',
    'The palm was finished so tallow it is.',
    'We are out of palm so this time tallow.',
    'Palm gone, tallow instead.',
    "Couldn't get palm; it's tallow now.",
    "Palm used up so I'm using tallow",
    'No palm in the house, tallow then.',
    'Tallow for the palm, as the palm is finished.',
    'palm is out so tallow in',
    "The palm's run out, tallow will do.",
  ])('gives its weight to what came: %s', (told) => expect(taken(`${list}. ${told}`)).toEqual([0, 400, []]));
  test('gives it in a bracket, too', () =>
    expect(taken(list.replace('palm', "palm (finished, so it's tallow)"))).toEqual([0, 400, []]));
  test.each([
    "Tallow is finished, so it's palm this time.",
    "When the palm is gone I'll use tallow.",
    "The palm is gone now, next time it's tallow.",
    'Out of tallow, so palm.',
  ])('stays where nothing came for it: %s', (told) => expect(taken(`${list}. ${told}`)).toEqual([400, 0, []]));
});

describe('a weight of which there was less', () => {
  const rest = 'coconut 220 g, NaOH 137 g, water 290 g';
  const olive = (text: string) => {
    const { grams, doubts } = read(text);
    return [grams['olive-oil-virgin'], grams['coconut-oil'], doubts];
  };
  test.each([
    `850 g olive, ${rest}. Hang on, the tin only had 780 g of olive.`,
    `850 g olive, ${rest}. Ran out, only 780 of the olive.`,
    `850 g olive, ${rest}. There were only 780 g of olive left in the end.`,
    `Planned 850 g olive but the tin gave 780 g only. ${rest}.`,
    `850 olive, 220 coconut, 137 NaOH, 290 water, all grams. Ah no, the olive is just 780, that was all there was.`,
    `olive 850 g (ran out, only 780)\n${rest.replaceAll(', ', '\n')}`,
    `olive 850 g - no, 780 was all I had\n${rest.replaceAll(', ', '\n')}`,
    `olive 850 g\n${rest.replaceAll(', ', '\n')}\nSorry: short on olive, it's 780.`,
    `850 g olive, 220 g coconut... hang on, the tin only had 780 in it. So: 780 g olive, ${rest}`,
    `olive 850 g (only 780 g in the bottle), ${rest}`,
    `I weighed 850 g of olive, tripped on the dog, weighed it again and it's 780 g. ${rest}`,
    `There was 850 g olive in the jug till the cat got at it. I weighed it again: 780 g. ${rest}`,
  ])('is the smaller one: %s', (text) => expect(olive(text)).toEqual([780, 220, []]));
  test.each([
    `850 g olive, ${rest}. I weighed the loaf, 1400 g, and weighed it again after a month, 1200 g.`,
    `850 g olive, ${rest}. The loaf weighed only 800 g after the cure.`,
    `850 g olive (the tin had 1000), ${rest}. I only had 3 moulds.`,
    `850 g olive, ${rest}. There is only 400 g left in the bottle now.`,
  ])('stays where something else is told: %s', (text) => expect(olive(text)).toEqual([850, 220, []]));
});

describe('a recipe told in two sizes', () => {
  const small = 'olive 400 g, coconut 200 g, NaOH 84 g, water 180 g';
  const big = 'olive 800 g, coconut 400 g, NaOH 168 g, water 360 g';
  test.each([
    [`The card said ${big}. Too much for two, so I halved everything: ${small}. Is the lye okay?`, 400],
    [`Test: ${small.slice(0, 28)}. Doubled: ${big.slice(0, 28)}. How much NaOH do I need?`, 800],
    [`Doubled it. Was ${small}. Now ${big}. ok?`, 800],
    [`${big}.\nHalved: ${small}.`, 400],
    [`Recipe: ${small}. Times two that makes ${big}. Is that right?`, 800],
    [`Single: ${small}\nDouble: ${big}\nI made the double.`, 800],
    [`Single: ${small}\nDouble: ${big}\nIn the end I made the single one.`, 400],
    [`Full size is ${big}. I did half: ${small.replace('84', '94')}.`, 400],
  ])('is the one that was made of it: %s', (text, grams) => {
    const { grams: got, doubts } = read(text);
    expect([got['olive-oil-virgin'], doubts]).toEqual([grams, []]);
  });
  test.each([`${small}. Or ${big}?`, `Single: ${small}. Double: ${big}. Which one is right?`])(
    'is asked about where nobody says which: %s',
    (text) => expect(read(text).doubts).toContain('two-recipes'),
  );
});

describe('a weight that was guessed', () => {
  const rest = 'With it 260 g of coconut. NaOH 133 g, water 330 g. Does that fit?';
  const tallow = (text: string) => read(`${text} ${rest}`).grams['tallow-beef'];
  test.each([
    'I told you last week I had about a kilo of tallow. It has been strained since and what is left is 840 g on the scale.',
    'I thought I had about 1 kg of tallow; on the scale it is 840 g.',
    'I reckoned there was a kilo of tallow, there is actually 840 g.',
    'I had about a kilo of tallow, but after straining only 840 g is left.',
    'I had 1 kg tallow, rendered it again, down to 840 g.',
    'I mentioned a kilo of tallow. My scale makes it 840 g, and that goes in the pot.',
    'I told you a kilo of tallow, it turned out to be 840 g.',
    'There was about a kilo of tallow in the tub, and it is down to 840 g.',
  ])('gives way to the one on the scale: %s', (text) => expect(tallow(text)).toBe(840));
  test.each([
    'I used about a kilo of tallow, 840 g is left in the tub.',
    'It was 1 kg tallow, and the bowl with it on the scale is 1.1 kg.',
    'I had 1 kg tallow. The loaf came to 840 g.',
  ])('stays where something else is weighed: %s', (text) => expect(tallow(text)).toBe(1000));
});

test.each(['I went for 145', 'I chose 145 g', 'so I decided on 145 g'])(
  'a weight that the writer settles on counts beside those of others: %s',
  (own) => {
    const { grams, doubts } = read(
      `My aunt says 130 g lye, my sister says 151 g. ${own}, with it goes 330 g of water. Olive 500 g, coconut 250 g, palm 250 g.`,
    );
    expect([grams, doubts]).toEqual([plain, []]);
  },
);

describe('a plan and what was done instead', () => {
  const { 'palm-oil': __, ...rest } = plain;
  test.each([
    "it was going to be 250 g of palm but when I went to the cupboard there wasn't any, my son has used it all, so it is 240 g of lard instead",
    'it should have been 250 g of palm but the tub was empty, so 240 g of lard',
    '250 g of palm it should have been, but the tub was empty, so 240 g of lard',
    'the plan was 250 g palm, but it is 240 g lard now',
    'I was going to use 250 g of palm, only it was gone, so it is 240 g lard',
    'I meant to put in 250 g of palm; my son had eaten it; it is 240 g of lard',
    'supposed to be 250 g palm, ended up with 240 g lard',
    'it should have been 250 g palm. There was none. So it is 240 g of lard',
  ])('%s', (told) => {
    const { grams, doubts } = read(`500 g olive, 250 g coconut and then ${told}. NaOH 145 g, water 330 g.`);
    expect([grams, doubts]).toEqual([{ ...rest, lard: 240 }, []]);
  });

  test('a part of the plan that stayed is asked about', () =>
    expect(
      read(
        '500 g olive, 250 g coconut, it was going to be 250 g of palm, now it is 150 g of it and 90 g of lard. NaOH 145 g, water 330 g.',
      ).doubts,
    ).toEqual(['corrected']));

  test.each([
    'I was going to use 250 g palm and I also add 90 g lard',
    'I wanted 250 g of palm in it, and 90 g of lard as well',
  ])('both: %s', (told) =>
    expect(read(`500 g olive, 250 g coconut and then ${told}. NaOH 145 g, water 330 g.`).grams).toEqual({
      ...plain,
      lard: 90,
    }),
  );
});

describe('water', () => {
  test.each(['2 x the soda', '2x the soude', '2 times the caustic soda'])('as %s is no two grams', (said) =>
    expect(read(`lard 500 g\nNaOH 66 g\nwater: ${said}`).grams['water']).toBe(132),
  );
  test.each(['I used 100 g of the water.', 'I lost 30 g of the water.'])(
    'of which there was less is asked about: %s',
    (said) => expect(read(`lard 500 g, NaOH 66 g, water 150 g. ${said}`).doubts).not.toEqual([]),
  );
  test.each(['total 0.79 kg', '0.79 kg total ish, or 0.9'])('and a total that is none is asked about: %s', (said) =>
    expect(read(`lard 500 g, NaOH 66 g, water 150 g\n${said}`).doubts).not.toEqual([]),
  );

  const paste = '400 g olive, 300 g coconut, 170 g KOH, 500 g water';
  test.each([
    `${paste}. Dilute with 1.5 litres of water.`,
    `${paste.replaceAll(', ', '\n')}\nDilution water: 1500 g`,
    `${paste.replaceAll(', ', '\n')}\nFor dilution:\nwater 1500 g`,
    `${paste}, after the cook 1.4 kg hot water to thin it`,
    `${paste}. I dilute it another day.`,
    `${paste} then I dilute later with boiling water`,
    `${paste} for the paste and dilute it next week`,
    `${paste} before diluting with 1.5 kg more`,
    'Diluted lye: 170 g KOH in 500 g water, 400 g olive, 300 g coconut',
  ])('that thins the paste dissolves no alkali: %j', (text) => {
    const { grams, doubts } = read(text);
    expect(doubts).toEqual([]);
    expect(grams['water']).toBe(500);
  });
});

test.each(['Doubling my recipe:', 'x2:'])(
  '"%s" leaves open which figures it means: they are taken as they stand, and it says so',
  (said) => {
    const { fats, assumptions } = readRecipe(reader, `${said} 500 g lard, 66 g NaOH, 150 g water`);
    expect(fats[0]?.grams).toBe(500);
    expect(assumptions.filter(({ text }) => text.includes('as they stand'))).toHaveLength(1);
  },
);

describe('of one fat, what was added besides', () => {
  const base = '400 g coconut and 500 g sunflower';
  test.each([
    `Started with ${base}, then added another 100 g coconut before the lye. Lye 150 g, water 330 g. Fine?`,
    `${base}. It looked too little so I put in 100 g more coconut. 150 g lye, 330 g water. Ok?`,
  ])('%s', (text) => {
    const { fats, doubts } = readRecipe(reader, text);
    expect(doubts).toEqual([]);
    expect(fats.map(({ grams }) => grams)).toEqual([500, 500]);
  });
  test.each([
    '400 g coconut from one tub, another 100 g coconut from the second tub, 500 g sunflower. Lye 150 g.',
    '400 g coconut, another 100 g coconut from a new jar, 500 g sunflower. Lye 150 g.',
    '500 g sunflower, 400 g coconut out of the first jar and 100 g coconut out of the second. Lye 150 g.',
    'Coconut 400 g from the old jar, coconut 100 g from the new jar, sunflower 500 g. Lye 150 g.',
  ])('of two vessels: %s', (text) => {
    const { fats, doubts } = readRecipe(reader, text);
    expect(doubts).toEqual([]);
    expect(fats.map(({ grams }) => grams)).toEqual([500, 500]);
  });
  test.each([
    '400 g coconut, or another 100 g coconut? 500 g sunflower. Lye 150 g.',
    'I had 400 g coconut in one jar. 100 g coconut, 500 g sunflower. Lye 150 g.',
  ])('is asked about: %s', (text) => expect(readRecipe(reader, text).doubts).not.toEqual([]));
  test('is asked about where nobody did it', () => {
    const { doubts } = readRecipe(reader, `${base}, lye 150 g. Should I add another 100 g of coconut?`);
    expect(doubts.map(({ id }) => id)).toEqual(['two-amounts']);
  });
});

test.each([
  'The card has 250 g olive, 250 g coconut, 78 g lye. I made double, so 500 g olive, 500 g coconut, 156 g lye and 330 g water.',
  'Notes: 250 g olive, 250 g coconut, 78 g lye. Doubled it, so 500 g olive, 500 g coconut, 156 g lye and 330 g water went in.',
])('a list behind "so" is a recipe of its own: %s', (text) => {
  const { fats, alkali, doubts } = readRecipe(reader, text);
  expect(doubts).toEqual([]);
  expect([...fats, ...alkali].map(({ grams }) => grams)).toEqual([500, 500, 156]);
});

test('a swap that was done is no question for "or did I mess up" behind it', () => {
  const { fats, doubts } = readRecipe(
    reader,
    'so i always did 500 g olive and 250 g palm. yesterday i swapped the palm for lard, lye 101 g. is it ok or did i mess up',
  );
  expect(doubts).toEqual([]);
  expect(fats.map(({ id }) => id)).toEqual(['olive-oil-virgin', 'lard']);
});

describe('a row that is denied in its own line', () => {
  const rows = (row: string) => `Olive 500 g\ncoconut 250 g\n${row}\nNaOH 145 g\nwater 330 g`;
  test.each([
    'palm 250 g <-- crossed out, NOT used',
    'palm 250 g <- not used',
    '250 g palm NO (ran out)',
    'palm 250 g NO, forgot it',
    'palm 250 g - nope',
    'palm 250 g, not this time',
  ])('is left out: %s', (row) => expect(read(rows(row)).grams).toEqual(palmless));
  test.each(['palm 250 g (not too soft!)', 'palm 250 g, no smell', 'palm 250 g, not 260', 'palm 250 g, no idea which'])(
    'stays, where something else is denied: %s',
    (row) => expect(read(rows(row)).grams).toEqual(plain),
  );
  test.each([
    'shea? NO, ran out',
    'shea - skipped',
    'beeswax?? nope',
    'pine tar: none, ran out',
    'shea? not this time',
  ])('needs no amount: %s', (row) =>
    expect(read(rows(`palm 250 g\n${row}`))).toMatchObject({ grams: plain, doubts: [] }),
  );
  test.each(['shea? yes', 'shea? yes, a bit'])('is asked for where it is in: %s', (row) =>
    expect(read(rows(`palm 250 g\n${row}`)).doubts).toContain('no-amount'),
  );
});

test.each([
  'lard 800 g, lye 108 g, aloe juice 150 g in place of half the water, water 100 g',
  'lard 800 g, lye 108 g, water 100 g, beer 100 g instead of half the water',
])('what is weighed beside the half that took its place is the other half: %s', (text) =>
  expect(readRecipe(reader, text)).toMatchObject({ waterGrams: 100, doubts: [] }),
);

describe('a bracket behind a row', () => {
  const rows = (palm: string, more = '') =>
    `From a book, what I did in brackets\n\nOlive 500 g\nCoconut 250 g\nPalm 250 g (${palm})\nNaOH 145 g (left it)\nWater 330 g${more}`;
  test.each([
    ['used 200 g', '', { ...plain, 'palm-oil': 200 }],
    ['nope, only took 200 g', ' (mine: 310 g)', { ...plain, 'palm-oil': 200, water: 310 }],
    ['no! used 250 g of lard instead, no palm here', ' (used 290 g)', { ...palmless, lard: 250, water: 290 }],
    ['I took 230 g tallow instead', '', { ...palmless, 'tallow-beef': 230 }],
    ['lard instead', ' (used 290 g)', { ...palmless, lard: 250, water: 290 }],
    ['none', '', palmless],
    ['nope', '', palmless],
  ])('says what was done: (%s)%s', (palm, more, want) => {
    const { grams, doubts, told } = read(rows(palm, more));
    expect([grams, doubts]).toEqual([want, []]);
    expect(told).toBeGreaterThan(0);
  });
  test.each(['used 200 g lard', 'use 200 g lard instead?'])('asks, or leaves it open: (%s)', (palm) =>
    expect(read(rows(palm)).doubts).not.toEqual([]),
  );
});

describe('a line that was sent before its time', () => {
  test.each(['argh sent too early, it goes on:', 'hit enter too soon', 'pressed send too early'])('%s', (said) =>
    expect(read(`olive 500 g\ncoconut 2\n\n${said}\ncoconut 250 g\nlye 110 g`)).toMatchObject({
      grams: { 'olive-oil-virgin': 500, 'coconut-oil': 250, naoh: 110 },
      doubts: [],
    }),
  );
});

test.each([
  "EDIT: no sunflower left in the house, it'll be 400g rice bran instead",
  "no sunflower left in the house, it'll be rice bran instead",
  'no sunflower left, make it 400 g rice bran instead',
])('what comes for a fat that has run out: %s', (said) =>
  expect(read(`250g coconut, 250g palm, 400g sunflower. lye?\n\n${said}`)).toMatchObject({
    grams: { 'coconut-oil': 250, 'palm-oil': 250, 'rice-bran-oil': 400 },
    doubts: [],
  }),
);

describe('a fat that is turned down for another one', () => {
  const list = '300g olive 200g coconut 150g palm';
  test.each([
    `recipe is ${list}, i dont do palm so lard instead, same weight. how much lye then`,
    `${list}. i don't use palm so lard instead, same amount. lye?`,
    `${list}. cant stand palm so lard instead. lye please`,
    `${list}, never buy palm so its lard instead. lye pls`,
  ])('takes its weight: %s', (text) =>
    expect(read(text)).toMatchObject({
      grams: { 'olive-oil-virgin': 300, 'coconut-oil': 200, lard: 150 },
      doubts: [],
    }),
  );
  test.each([
    `${list}, i dont do palm so lard and tallow instead. lye`,
    `${list}, if you dont do palm so lard instead is fine. lye for mine`,
  ])('is asked about: %s', (text) => expect(read(text).doubts).not.toEqual([]));
  test('weighs what is said of the other', () =>
    expect(read(`${list}, i dont do palm so lard instead, 120g. lye?`).grams).toMatchObject({ lard: 120 }));
});

test.each(['nothing else', 'nothing more in it', ', nothing but olive'])('a fat and nothing beside it: %s', (alone) =>
  expect(read(`800g olive ${alone}. lye?`)).toMatchObject({ grams: { 'olive-oil-virgin': 800 }, doubts: [] }),
);

const oldOne = '600 g olive, 200 g coconut, 112 g lye';
const newOne = '450 g lard, 250 g coconut, 200 g canola, 128 g lye, 270 g water';

test.each([
  `Last week's (${oldOne}) came out fine so ignore that one. This is the one I need checking: ${newOne}.`,
  `Last week's (${oldOne}) came out lovely. Today is ${newOne}. Please check today's!`,
  `Last week's (${oldOne}) came out fine. Today: ${newOne}. OK?`,
])('of last week and of today, today counts: %s', (text) =>
  expect(read(text)).toMatchObject({
    grams: { lard: 450, 'coconut-oil': 250, 'canola-oil': 200, naoh: 128, water: 270 },
    doubts: [],
  }),
);

test('last week and this week, and nobody says which', () =>
  expect(read(`Last week's soap: ${oldOne}. This week's: ${newOne}. Which is better?`).doubts).not.toEqual([]));

test('what was moved from one fat to the other is in the figures that follow', () => {
  const moved = 'I moved 100 g from the olive to the shea';
  expect(read(`${moved}, which makes it 400 g olive, 200 g shea, 250 g coconut. Lye 118 g.`)).toMatchObject({
    grams: { 'olive-oil-virgin': 400, 'shea-butter': 200, 'coconut-oil': 250 },
    doubts: [],
  });
  expect(read(`${moved}. Olive 500 g, shea 100 g, coconut 250 g, lye 118 g.`).doubts).not.toEqual([]);
});

describe('a recipe that is to be made larger or smaller', () => {
  const fats = '250 g olive, 150 g coconut and 100 g palm';
  test.each([
    [`My recipe is ${fats}, and I am going to double all of it for my bigger mould (holds 1.5 kg). Lye?`, 2],
    [`${fats}. I'm going to double it. What lye?`, 2],
    [`${fats}, what lye for the doubled recipe?`, 2],
    [`${fats}, I will triple everything, what lye?`, 3],
    [`${fats}. I'll halve the recipe. What lye?`, 0.5],
    [`${fats}, lye for 3 batches of that?`, 3],
    [`${fats}, 70 g lye. If I want to double it, is it the same lye?`, 1],
  ])('%s', (text, times) =>
    expect(read(text).grams).toMatchObject({
      'olive-oil-virgin': 250 * times,
      'coconut-oil': 150 * times,
      'palm-oil': 100 * times,
    }),
  );
});

describe('so many batches of a recipe', () => {
  const weighed = '500 g lard, 300 g coconut, 112 g lye, 240 g water';
  const asked = '500 g lard, 300 g coconut';
  test.each([
    [`${weighed}. We make 3 batches of this every winter. Lye ok?`, 1],
    [`${weighed}. I sold two batches of this at the fair. Lye ok?`, 1],
    [`${weighed}. I do two lots of this, each in its own pot. Is the lye right for each?`, 1],
    [`${weighed}. I make double that. The figures are for a single batch. Lye ok?`, 1],
    [`${weighed}. Need two lots of this. Is the lye right for a single lot?`, 1],
    [`${weighed}. I need two lots of this in one pot. Is the lye right?`, 2],
    [`${asked}. How much lye for 3 batches of this?`, 3],
    [`${asked}, 3 batches of this please, lye?`, 3],
    [`${asked}. Two batches of this a year is what we need. Lye for one batch?`, 1],
  ])('%s', (text, times) =>
    expect(read(text)).toMatchObject({ grams: { lard: 500 * times, 'coconut-oil': 300 * times }, doubts: [] }),
  );
  test('are asked about where the lye may be for one of them or for all', () =>
    expect(read(`${asked}. I'm making 2 batches of this today. How much lye?`).doubts).toEqual(['corrected']));
});

test('a total of the recipe in its own size, of which half was made', () =>
  expect(
    read('The recipe is for a 1 kg oil batch but I only made half: 250 g olive, 250 g coconut, 78 g NaOH'),
  ).toMatchObject({ grams: { 'olive-oil-virgin': 250, 'coconut-oil': 250, naoh: 78 }, doubts: [] }));

test('no. 1 tallow is a grade, and no number of a batch', () =>
  expect(
    read('Version 2.1 of the list.\n76 coconut 14 oz\nno. 1 tallow 20 oz\nlard 6 oz\nlye 5.9 oz').grams,
  ).toHaveProperty('tallow-beef'));

test.each([
  'In the next one the coconut has to be 300 g, not 250.',
  'Next time coconut must be 300 g instead of 250.',
  'For the next batch the olive should be 450 g, not 500.',
  'The one after this needs 300 g of coconut, not 250.',
  'When I make it again it has to be 300 g coconut, not 250.',
])('what is put right for a batch to come leaves the row: %s', (said) =>
  expect(read(`${recipe} ${said} Is the lye ok?`)).toMatchObject({ grams: plain, doubts: [] }),
);

describe('a wrong line', () => {
  const rows = { lard: 300, 'olive-oil-virgin': 400, naoh: 95, water: 200 };
  test.each([
    'lard 300 g, olive 300 g. No wait, wrong line. Olive 400 g, lye 95 g, water 200 g.',
    "lard 300 g, olive 300 g. Hang on, I'm reading the wrong line. Olive is 400 g. Lye 95 g, water 200 g.",
    "lard 300 g, olive, er, 300 g. no wait, that's the wrong row. olive is 400 g. lye 95 g, water 200 g.",
  ])('takes its row alone: %s', (text) => expect(read(text)).toMatchObject({ grams: rows, doubts: [] }));
  test('is asked about where another row follows', () =>
    expect(read('lard 300 g, olive 300 g. Hang on, wrong line. Coconut 200 g, lye 120 g, water 250 g.').doubts).toEqual(
      ['corrected'],
    ));
});

describe('a figure that a full stop ends', () => {
  const pot = { 'olive-oil-virgin': 600, 'coconut-oil': 300, naoh: 124, water: 270 };
  test.each([
    'olive 600 g, coconut 300 g, lye 142 g, sorry, 124 g. Water 270 g',
    'Olive 600 g. Coconut 280 g, no, 300 g. Lye 124 g. Water 270 g',
    '600 g olive, 300 g coconut. Lye 142 g... I mean 124 g. Water 270 g.',
    'olive 600 g. coconut 300 g. lye 142 g, oops 124 g. water 270 g',
  ])('is that of the row before it: %s', (text) => expect(read(text)).toMatchObject({ grams: pot, doubts: [] }));
});

test.each([
  ['In June I did everything times two. Is this one right?', 500],
  ['Last year I did all amounts times two. Is this batch right?', 500],
  ['Today I did all amounts times two. Is it right?', 1000],
  ['Everything times two now. Is this right?', 1000],
])('a batch of another time was larger: %s', (told, olive) => {
  const { grams, doubts } = potOf(`Small batch: 500 g olive, 200 g coconut, 98 g NaOH, 250 g water. ${told}`);
  expect([grams['olive-oil-virgin'], doubts]).toEqual([olive, []]);
});

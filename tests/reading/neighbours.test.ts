// What stands beside a figure says what it is. Sentences of our own; the grams are multiplied by hand.
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { settle } from '../../src/reading/amend/settle.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());

function weighed(text: string): Readonly<Record<string, number>> {
  const { fats, alkali, liquids, doubts } = readRecipe(reader, text);
  expect(doubts, text).toEqual([]);
  return Object.fromEntries([...fats, ...alkali, ...liquids].map(({ id, grams }) => [id, grams]));
}

test.each<[string, Readonly<Record<string, number>>]>([
  ['lard 500 g\nNaOH 66\npoured at 38 C, 10 bars of abt 90 g', { lard: 500, naoh: 66 }],
  ['Net 110 g e, lot 24, net wt. 4 oz\nlard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, parfum 20 g.\nnt wt 90 g e. Best before 11/27.', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, mica 2 g. *limonene\nNET WT. 3.5 oz (100 g)', { lard: 500, naoh: 66 }],
  ['lard 500 g\nNaOH 500 g tub (use 66 g)\ndeionised water, 5 l (use 150 g)', { lard: 500, naoh: 66 }],
  ['lard 500 g\nolive oil, 1 l (took 250 g)\nNaOH 98 g', { lard: 500, 'olive-oil-virgin': 250, naoh: 98 }],
  ['lard 500 g, NaOH 66 g, CI 77491 2 g.\nnet wt 90 g', { lard: 500, naoh: 66 }],
  ['I got the lard for 4.99, so I took 500 g of it, with 66 g NaOH.', { lard: 500, naoh: 66 }],
  ['lard (the tub says 1 kg, 500 g went in)\nNaOH 66 g', { lard: 500, naoh: 66 }],
  ['* lard (jar said 650 g, only 500 g went in)\n* NaOH 66 g', { lard: 500, naoh: 66 }],
  [
    '* olive (bottle of 500 ml, 340 g of it used)\n* lard 150 g\nNaOH 66 g',
    { 'olive-oil-virgin': 340, lard: 150, naoh: 66 },
  ],
  [
    'Given: lard 200 g, coconut 100 g\nTask 1: Find the mass of NaOH for 5 % superfat. (4 marks)\nTask 2: Why gloves? (1 point)',
    { lard: 200, 'coconut-oil': 100 },
  ],
  ['coconut net 110 g, lard 500 g. How much lye?', { 'coconut-oil': 110, lard: 500 }],
  ['sunfl. oil 60 g, olv. oil 500 g. How much lye?', { 'sunflower-oil': 60, 'olive-oil-virgin': 500 }],
  ['lard 500 g, NaOH 66 g, stirred with hazel wood (so not a stick of hazelnut oil)', { lard: 500, naoh: 66 }],
  ['one bucket of 12 litres, stick blender of 600 W. lard 5 kg, NaOH 660 g', { lard: 5000, naoh: 660 }],
  ['CB (cocoa, not coffee!!) 150, lard 350, NaOH 63 -- g', { 'cocoa-butter': 150, lard: 350, naoh: 63 }],
  [
    'lard 500 g, coconut 200 g, 98 g lye. Is the lye strong enough for the first two?',
    { lard: 500, 'coconut-oil': 200, naoh: 98 },
  ],
  [
    'Three oils, 800 g together. Coconut a quarter of it, olive five eighths, castor the last eighth. How much lye?',
    { 'coconut-oil': 200, 'olive-oil-virgin': 500, 'castor-oil': 100 },
  ],
  ['lard: two 500 g tins, coconut 300 g, NaOH 188 g', { lard: 1000, 'coconut-oil': 300, naoh: 188 }],
  [
    'both 1 kg tins of lard and four 8-ounce bricks of palm. How much lye?',
    { lard: 2000, 'palm-oil': 32 * 28.349523125 },
  ],
  [
    'Two of the big 1 kg tins of lard, two 500g boxes coconut, castor 50 g x 2. How much lye?',
    { lard: 2000, 'coconut-oil': 1000, 'castor-oil': 100 },
  ],
  ['lard 500 g x 2 = 1000 g, coconut 300 g (x 2 tubs). How much lye?', { lard: 1000, 'coconut-oil': 600 }],
  ['lard 500 g, NaOH 66 g, beer, flat and frozen, 160 g, replacing all the water', { lard: 500, naoh: 66, beer: 160 }],
  ['lard 500 g, NaOH 66 g\ngoat milk, frozen, instead of water: 160 g', { lard: 500, naoh: 66, 'goat-milk': 160 }],
  ['lard 500 g, NaOH 66 g\ngoat milk, as ice cubes: 160 g', { lard: 500, naoh: 66, 'goat-milk': 160 }],
  ['lard 500 g, NaOH 66 g\ncoconut milk, from a tin: 160 g', { lard: 500, naoh: 66, 'coconut-milk': 160 }],
  ["lard 500 g, NaOH 66 g. I've never gone over 1 kg before, so please check the lye", { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g. I usually make 2 kg. Does the lye fit?', { lard: 500, naoh: 66 }],
  ["lard 500 g, NaOH 66 g. It's a dry run for my sister's 1 kg, is the lye right?", { lard: 500, naoh: 66 }],
  [
    'I swapped the palm from 22 to 20, and bumped the lard.\n\nwhat\t%\tg\nlard\t80\t400\npalm\t20\t100\nNaOH\t\t66',
    { lard: 400, 'palm-oil': 100, naoh: 66 },
  ],
  ['lard 12,000 g\ncoconut 5,500 g\nNaOH 2,500 g', { lard: 12000, 'coconut-oil': 5500, naoh: 2500 }],
  ['lard 500 g, NaOH 66 g. A 3 quart Tefal saucepan, 1 L Duran flask, like wolves', { lard: 500, naoh: 66 }],
  ['I spilt milk. All of the water is crushed ice, 150 g of it. lard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['"Tallow, beef",500,g\n"Butter, cocoa",100,g\nNaOH,80,g', { 'tallow-beef': 500, 'cocoa-butter': 100, naoh: 80 }],
  ['lard 500 gramms, 66 gramms lye', { lard: 500, naoh: 66 }],
  ['The bowl on the scale (310 g empty), tare, 500 g lard; tare; 66 g lye', { lard: 500, naoh: 66 }],
  ['160 g water for the lye, 66 g. Lard 500 g', { lard: 500, naoh: 66 }],
  ['160 g water for the lye (66 g), lard 500 g', { lard: 500, naoh: 66 }],
  ["There's 10 kg of tallow in the freezer. I'd use 1 kg of it. How much lye?", { 'tallow-beef': 1000 }],
  [
    "I've two stone of lard in the freezer. I'd take 1 kg of it and 200 g coconut. Lye?",
    { lard: 1000, 'coconut-oil': 200 },
  ],
  ["I can get 2 litres of linseed oil... well, I've weighed it, 1860 g. How much lye?", { 'linseed-oil': 1860 }],
  ['Linseed oil it is, a bottle of it, I weighed it: 1860 g. How much lye?', { 'linseed-oil': 1860 }],
  ['Old frying lard, filtered through coffee paper, 500 g. 66 g lye, 160 g water', { lard: 500, naoh: 66 }],
  ['The lye I did on my coffee scales, 66 g, in 160 g water. 500 g lard', { lard: 500, naoh: 66 }],
  ['I weighed the lye in a yoghurt pot, 66 g, and tipped it into 160 g water. 500 g lard', { lard: 500, naoh: 66 }],
  ['The lye, weighed in a wine glass, is 66 g. Water 160 g, from the milk jug. Lard 500 g', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, coffee (scale said 160 g)', { lard: 500, naoh: 66, coffee: 160 }],
  ['lard 500 g, NaOH 66 g. The batter was divided in five equal parts.', { lard: 500, naoh: 66 }],
  ['One: fat is soft here. Two: lye pulls moisture. Mine is lard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['Need the lye amount: 500 g lard, 200 g coconut', { lard: 500, 'coconut-oil': 200 }],
  [
    'lard 500 g, NaOH 66 g, water 150 g. The scent will be cedar with a little orange, 36 g altogether.',
    { lard: 500, naoh: 66 },
  ],
  // what the soap weighs later, in a log and beside it
  ['lard 500 g, NaOH 66 g\nweek 1: 710 g\nweek 2: 690 g\nIs the lye right?', { lard: 500, naoh: 66 }],
  ['lard 500 g\nNaOH 66 g\nweight per disc: 92 g', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, water 150 g, clay 9 g in 20 g of that water', { lard: 500, naoh: 66 }],
  ['honey 9 g in 20 g of the water below\nlard 500 g, NaOH 66 g\nwater 150 g in all', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, water 150 g. Take 20 g of the total water for the oats.', { lard: 500, naoh: 66 }],
  ['lard 500 g\nLye: 66 g NaOH\nLiquid for lye: 80 g water + 70 g buttermilk', { lard: 500, naoh: 66, buttermilk: 70 }],
  ['lard 500 g\nNaOH 66 g\nfor the lye: 150 g water', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, water RO 150 g', { lard: 500, naoh: 66 }],
  ["lard 500 g, NaOH 66 g, fragrance oil 'coconut dream' 12 g, FO ‘velmora’ 3 g", { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, water 150 g. Can I repeat x1?', { lard: 500, naoh: 66 }],
  ['lard, filtered 2x, 500 g\nNaOH 66 g, water 150 g', { lard: 500, naoh: 66 }],
  ['used lard, washed with brine, filtered: 500 g\nNaOH 66 g, water 150 g', { lard: 500, naoh: 66 }],
  ['lard (rinsed in hot salt water) 500 g\nNaOH 66 g, water 150 g', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g. Cost: lard 2,40 + lye 1,10', { lard: 500, naoh: 66 }],
  ['lard 500 g\nBudget: fats 7.10, lye 1.50, paper 0.80 = 9.40\nhow much lye?', { lard: 500 }],
  ['lard 500 g, KOH 98 g, water 300 g. 1 tablespoon to a bucket of water.', { lard: 500, koh: 98 }],
  ['Gloves, a 1-litre juice carton, blender.\nlard 500 g, NaOH 66 g, water 150 g', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, water 150 g. I mix at 40 grades.', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, water 150 g, clay 20 g\n0.75 kg total ish', { lard: 500, naoh: 66 }],
  ['Oat Cream Soap\nlard 500 g, lye 66 g, water 150 g, cut in 8 squares', { lard: 500, naoh: 66 }],
  [
    'I have 5 kg lard. Normal sodium hydroxide please, and for all of the 5 kg, it goes rancid. What do I weigh?',
    { lard: 5000 },
  ],
  [
    'First, the rendering. 3 kg of suet from the farm, two washes, ended up with 2.1 kg of fine white tallow. I only used 500 g of it here.\n\nSo, 500 g tallow, 100 g coconut, 85 g NaOH, 180 g water. One zapped, out of five.',
    { 'tallow-beef': 500, 'coconut-oil': 100, naoh: 85 },
  ],
  ['lard 500 g, NaOH 66 g. No rush. Label weight 95 g. Weight on the wrapper: 95 g.', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, scent 9 g\nYield: 7 pucks 95 g', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g. Weight poured 715 g, weight at cutting 701 g.', { lard: 500, naoh: 66 }],
  // bars and "each" before a list are nothing of its first row
  ['The bar crumbles and each end breaks when I cut it: lard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ["lard 500 g, NaOH 66 g, a mould for 1.5 kg. I've vinegar on hand", { lard: 500, naoh: 66 }],
  ["lard 500 g, NaOH 66 g. It's 2 a.m. and the baby's up", { lard: 500, naoh: 66 }],
  ['Hello, a long post, get a cup. lard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['I was thinking of adding cocoa butter but left it alone: lard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['lard 500 g, natrium hydroxide 66 g', { lard: 500, naoh: 66 }],
  [
    "The book says 1 lb lard, 8 oz coconut, 3.5 oz lye. I've written 454 g, 227 g, 99 g. Is the lye right?",
    { lard: 16 * 28.349523125, 'coconut-oil': 8 * 28.349523125, naoh: 3.5 * 28.349523125 },
  ],
  ['lard 500 g, NaOH 66 g. Timetable: 7.00 melt, 7.15 lye in, 7.25 trace', { lard: 500, naoh: 66 }],
  [
    'lard 500, NaOH 66, all grams.\n7.00 fats on. 7.15 lye at 40. 7.20 both jugs at 38. 7.25 trace.',
    { lard: 500, naoh: 66 },
  ],
  ['lard 500 g, NaOH 66 g\nThu 19.30 lye. Thu 20.15 fats.', { lard: 500, naoh: 66 }],
  [
    'lard 500 g\ncitric acid 10 g\nlye 72 g\n\nI put the lye up by about 6 g because of the acid. Correct?',
    { lard: 500, naoh: 72 },
  ],
  [
    'Olive oil, light, 3 litre tin ..... 17.40, takes 400 g of it\nLard 500 g pack ... 2.25, takes 100 g\n' +
      'Lye 1 kg tub .... 4.10, takes ???',
    { 'olive-oil-refined': 400, lard: 100 },
  ],
  ['lard 500 g, sodium hydroxide 66 g\n\nDoes 66 g of hydroxide fit?', { lard: 500, naoh: 66 }],
  ['I rendered the lard three times with salt water. Lard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['1.5 kg lard, since I was given five litres by people who have pigs. How much NaOH?', { lard: 1500 }],
  ['Lard 500ish g, NaOH 66 g', { lard: 500, naoh: 66 }],
  [
    'lard 500 g, NaOH 66 g. I melted the lard at 65, let everything come down to 45 and the lye likewise.',
    { lard: 500, naoh: 66 },
  ],
  ["lard 500 g, NaOH 66 g, 50 g for the mould's wax paper (that's just what it weighs)", { lard: 500, naoh: 66 }],
  ['kg\t1.2\t0.5\t0.24\t0.6\nwhat\tlard\tcoconut oil\tNaOH\twater', { lard: 1200, 'coconut-oil': 500, naoh: 240 }],
  [
    '| | tallow | coconut | NaOH | water |\n|---|---|---|---|---|\n| % | 70 | 30 | | |\n| g | 700 | 300 | 148 | 300 |',
    { 'tallow-beef': 700, 'coconut-oil': 300, naoh: 148 },
  ],
  [
    'lard\t500\t50 %\nolive\t500\t50 %\n\t1000\t100 %\nNaOH\t134\nall in g',
    { lard: 500, 'olive-oil-virgin': 500, naoh: 134 },
  ],
  ['Tub says: sodium hydroxide, 98.5 %. From it I take 139 g. Lard 1 kg, water 300 g.', { lard: 1000, naoh: 139 }],
  ['My NaOH is 98 %, says the can. 142 g of it to 1 kg lard, 280 g water.', { lard: 1000, naoh: 142 }],
  [
    'I keep a master batch, equal weights NaOH and water. From that I pour 274 g. Lard 1 kg.',
    { lard: 1000, naoh: 137 },
  ],
  ['Caustic soda, 99 %. Out of the tub I weighed 139 g. Lard 1 kg, water 300 g', { lard: 1000, naoh: 139 }],
  [
    'I own no scale for grams, so everything here is ounces unless it says pounds:\nlard 2 lb\nolive 10\ncoconut 12\nlye 5.5',
    {
      lard: 32 * 28.349523125,
      'olive-oil-virgin': 283.49523125,
      'coconut-oil': 12 * 28.349523125,
      naoh: 5.5 * 28.349523125,
    },
  ],
  ['VVater ... 300 g\nPalrn oil ... 250 g\nlard ... 100 g\nL y e ... 50 g', { 'palm-oil': 250, lard: 100, naoh: 50 }],
  [
    'casteroil 40 g, shee butter 100 g, coconutoil 60 g. How much lye?',
    { 'castor-oil': 40, 'shea-butter': 100, 'coconut-oil': 60 },
  ],
  ['lard 26 oz, lye 3 oz, water 9 oz ... that is a nine, nine', { lard: 26 * 28.349523125, naoh: 3 * 28.349523125 }],
  ['sunflower 300 g (high oleic), lard 200 g. How much lye?', { 'sunflower-oil-high-oleic': 300, lard: 200 }],
  ['olive: 300 g (not the pomace), lard 200 g. How much lye?', { 'olive-oil-virgin': 300, lard: 200 }],
  [
    'coconut (the 92 degree hydrogenated one) 11 g, coconut 76 deg 5 g, lard 16 g. How much lye?',
    { 'coconut-oil-hydrogenated': 11, 'coconut-oil': 5, lard: 16 },
  ],
  ['300 g coconut (the hard 92 one), lard 200 g. How much lye?', { 'coconut-oil-hydrogenated': 300, lard: 200 }],
  ['lard 200 g, coconut 100 g, 40 g NaOH. Melt the coconut, 92 F, first', { lard: 200, 'coconut-oil': 100, naoh: 40 }],
  ['350 g argan?? no sorry ARACHIS oil. 350 g. And 150 g lard. How much lye?', { 'peanut-oil': 350, lard: 150 }],
  ['350 g argan, no sorry, 300 g arachis, 150 g lard. How much lye?', { 'peanut-oil': 300, lard: 150 }],
  ["argan: 350 g. Sorry, that's arachis oil, 150 g lard. How much lye?", { 'peanut-oil': 350, lard: 150 }],
  [
    '350 g argan, oh wait, 300 g arachis, 150 g lard. How much lye?',
    { 'argan-oil': 350, 'peanut-oil': 300, lard: 150 },
  ],
  [
    'I bought a 500 g tub of caustic soda for 6.50, and have 1 kg of lard. How much of the tub goes in?',
    { lard: 1000 },
  ],
  ["I've got a tub of caustic soda, 500 g, and 1 kg lard. How much of that goes in?", { lard: 1000 }],
  ['Got 500 g of caustic soda at home and 1 kg lard. How much of it goes in?', { lard: 1000 }],
  ['I have 142 g NaOH and 1 kg lard. How much water do I need?', { lard: 1000, naoh: 142 }],
  ['2 hundred g lard, 1 hundred and fifty g coconut. How much lye?', { lard: 200, 'coconut-oil': 150 }],
  ['lard 1200 g, lye is one sixty five point five, water three thirty (all grams)', { lard: 1200, naoh: 165.5 }],
  ['two fifty gram blocks of lard. How much lye?', { lard: 100 }],
  [
    'a kilo of lard and half a kilo of coconut and my lye is 215 grams water is 500 grams is that ok the lye is sodium hydroxide. It says 5 stars on the page.',
    { lard: 1000, 'coconut-oil': 500, naoh: 215 },
  ],
  ['lard -500 g, coconut -200 g, lye -97 g, water -190 g', { lard: 500, 'coconut-oil': 200, naoh: 97 }],
  ['Got 3 tubs of coconut oil from the shop, 400 g each. How much lye?', { 'coconut-oil': 1200 }],
  [
    'Coconut was on offer, so I got some. I weighed out 400 g of it, and 100 g lard. How much lye?',
    { 'coconut-oil': 400, lard: 100 },
  ],
  [
    '300 g olive\noil, 180 g coco-\nnut oil, 60 g sun-\nflower oil. How much lye?',
    {
      'olive-oil-virgin': 300,
      'coconut-oil': 180,
      'sunflower-oil': 60,
    },
  ],
  [
    'a kilo and a half of olive oil half a kilo of coconut and my lye is 285 grams water is 700 grams is that ok the lye is sodium hydroxide. It says 5 stars on the page.',
    { 'olive-oil-virgin': 1500, 'coconut-oil': 500, naoh: 285 },
  ],
  ['lard 50 dag, soda 6.6 dag (NaOH), water 15 dag', { lard: 500, naoh: 66 }],
  [
    '500 g lard, 66 g lye, 150 g water\nTemperatures: fats 43, lye 31. Trace after 90 seconds.',
    { lard: 500, naoh: 66 },
  ],
  [
    '500 g lard at a shocking 21 pounds the kilo. Castor oil, 50 g. I make that 550 g of fat. 74 g lye',
    { lard: 500, 'castor-oil': 50, naoh: 74 },
  ],
  [
    '500 g lard, 3 pounds a hundred grams, castor oil 50 g. I make it 550 g in all. 74 g lye',
    { lard: 500, 'castor-oil': 50, naoh: 74 },
  ],
  ['lard 2 pounds, 500 g olive, 190 g lye', { lard: 907.18474, 'olive-oil-virgin': 500, naoh: 190 }],
  ['500 g lard, 66 g lye, 150 g water. My gran took exactly 200 g to the kilo, always. Ok?', { lard: 500, naoh: 66 }],
  [
    'lard 300 g, olive 200, lye 66 g, water 150 g. She washed for a family of nine, so she knows.',
    { lard: 300, 'olive-oil-virgin': 200, naoh: 66 },
  ],
  [
    'lard 300 g, olive 200, which makes half the kilo. Lye 66 g. She took 200 g to the kilo.',
    { lard: 300, 'olive-oil-virgin': 200, naoh: 66 },
  ],
  ['500 g lard, 66 g lye, 150 g water. A friend swears by 140 g per kilo of fat.', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water. Rule: 140 g lye to 1 kg of oil.', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water. I did it once with 30 g of lye less, it never set.', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water\nTemps - 43 for the oils, 31 for the lye', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water\n\nTEMPERATURES\noils 43\nlye 31\n\nsuperfat 5', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water\nTemperature oils: 43\nTemperature lye: 31', { lard: 500, naoh: 66 }],
  ['Temperature: 40, water 150, lye 66\n500 g lard', { lard: 500, naoh: 66 }],
  ['Temps\nlye 31\noils 43\nOILS (g)\nlard 500\nLYE\nNaOH 66\nwater 150', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water. Oils were at 40 degrees, lye at about 30.', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water. Lard at 50, for below 45 it sets. Lye at 40.', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water.\nMelt, let it fall to 50. Lye 45. Then the blender.', { lard: 500, naoh: 66 }],
  [
    'rapeseed oil (the ordinary one for cooking) 3 kg\ncoconut oil 1,5 kg\nHow much lye?',
    { 'canola-oil': 3000, 'coconut-oil': 1500 },
  ],
  [
    'Take 6 lbs clean lard, 1 can of lye (13 oz), 2 1/2 pints cold water. Is that lye right for 6 lbs?',
    { lard: 2721.55422, naoh: 368.543800625 },
  ],
  ['1,000 g olive, 1,5 kg tallow, 335 g lye', { 'olive-oil-virgin': 1000, 'tallow-beef': 1500, naoh: 335 }],
  ['New mould (9 holes, 140 ml each): lard 500 g. What is the lye amount?', { lard: 500 }],
  [
    '- lard 500 g\n- coconut 200 g\n- a half bottle of jojoba that I keep for my hair\nHow much lye?',
    {
      lard: 500,
      'coconut-oil': 200,
    },
  ],
  ['lard 1 kg 200, coconut 300 g. How much lye? Out came 2 kg 60 or thereabouts.', { lard: 1200, 'coconut-oil': 300 }],
  [
    'NaOH for 500/300/200 olive/coconut/palm, all in grams?',
    { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'palm-oil': 200 },
  ],
  [
    'olive/coconut/palm 500 g/300 g/200 g, how much lye?',
    { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'palm-oil': 200 },
  ],
  ['four packs of lard at 250 g, how much lye?', { lard: 1000 }],
  ['Tallow came in two tubs, 350 g and 180 g, both went in. How much lye?', { 'tallow-beef': 530 }],
  [
    'lard 500 g, coconut 250 g. How much lye for those two? Price was 4 for the lard and 6 for the coconut.',
    { lard: 500, 'coconut-oil': 250 },
  ],
  [
    'lard 500 g, coconut 250 g. How much lye? It goes into 9 little half spheres (80 ml each), one piece is then about 110 g.',
    { lard: 500, 'coconut-oil': 250 },
  ],
  ['lard 500 g, lye 66 g, my two tables are 4 g apart for lard. The scale goes up to 250 g.', { lard: 500, naoh: 66 }],
  [
    'Has anybody one with lard? I have 2 litres of it left over.\n\nlard 500 g, coconut 200 g, lye 97 g, water 210 g',
    { lard: 500, 'coconut-oil': 200, naoh: 97 },
  ],
  [
    'A can of stout, simmered till flat, and 290 g were left. Lard 500 g, coconut 200 g, lye 97 g',
    { lard: 500, 'coconut-oil': 200, naoh: 97, beer: 290 },
  ],
  [
    '0live oil ... 4OO g\nC0conut oil ... 2OO g\nPaIm oil ... l5O g\nNa0H ... 1O8 g',
    { 'olive-oil-virgin': 400, 'coconut-oil': 200, 'palm-oil': 150, naoh: 108 },
  ],
  [
    'lard 500 g, oils at 62 C. Lye: 66 g NaOH into 150 g water, it was 4 C outside and the jug steamed',
    { lard: 500, naoh: 66 },
  ],
  [
    'My stock lye: 1 kg NaOH in 1 kg water. I took 280 g of the solution. Olive 700 g, coconut 300 g',
    { 'olive-oil-virgin': 700, 'coconut-oil': 300, naoh: 140 },
  ],
  [
    'I keep a jug of lye solution mixed at 33% NaOH by weight. Lard 700 g, coconut 200 g, and 420 g out of the jug',
    { lard: 700, 'coconut-oil': 200, naoh: 138.6 },
  ],
  [
    'Bucket of lye solution is made up 50:50 by weight (2 kg sodium hydroxide, 2 kg distilled water). 720 g olive, 380 g coconut. Out of the bucket I weigh 320 g of the solution.',
    { 'olive-oil-virgin': 720, 'coconut-oil': 380, naoh: 160 },
  ],
  ['olive oil 500 g, water 150 g, NaOH 66 g. Can you check it?', { 'olive-oil-virgin': 500, naoh: 66 }],
  ['olive oil 500 g, water 150 g, NaOH 66 g can anybody check it?', { 'olive-oil-virgin': 500, naoh: 66 }],
  ['olive oil 500 g, water 150 g, NaOH 66 g. Pot stands on low.', { 'olive-oil-virgin': 500, naoh: 66 }],
  [
    'three pounds of lard. a pound of coconut. nine\nounces lye. twenty two ounces water. yes?',
    { lard: 3 * 453.59237, 'coconut-oil': 453.59237, naoh: 9 * 28.349523125 },
  ],
  [
    '20 dag coconut, 45 dag lard, 5 dag castor, 97\ng NaOH, the scale only knows dag',
    { 'coconut-oil': 200, lard: 450, 'castor-oil': 50, naoh: 97 },
  ],
  [
    'There is always duck fat. I have 600 g, strained twice, and I put 150 g coconut with it. How much lye?',
    { 'duck-fat': 600, 'coconut-oil': 150 },
  ],
  [
    'I have 1.1 kg clean beef tallow, of which I want to put 450 g in this batch. 450 g coconut. How much lye? We cut them at a hundred grams.',
    { 'tallow-beef': 450, 'coconut-oil': 450 },
  ],
  [
    'Five parts olive to three of coconut to two of palm, and it should come to 1 kg of fats. How much lye?',
    { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'palm-oil': 200 },
  ],
  [
    'equal parts olive, coconut and lard, 300g each. How much lye?',
    { 'olive-oil-virgin': 300, 'coconut-oil': 300, lard: 300 },
  ],
  [
    'I keep a jug of lye mixed 1:1 by weight with water. Lard 700 g, then 280 g out of the jug',
    { lard: 700, naoh: 140 },
  ],
  [
    '600 g sunflower, 250 g coconut, how much lye? I have a 5 kg bag of stearic.',
    { 'sunflower-oil': 600, 'coconut-oil': 250 },
  ],
  ['3 bars x 150 g cocoa butter, 50 g castor, 68 g lye', { 'cocoa-butter': 450, 'castor-oil': 50, naoh: 68 }],
  ['castor 50 g; palm: 4 bricks @ 250 g; NaOH 148 g', { 'castor-oil': 50, 'palm-oil': 1000, naoh: 148 }],
  ['2 blocks each 250 g lard, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['lard: 2 pieces of 250 g, castor 50 g, NaOH 72 g', { lard: 500, 'castor-oil': 50, naoh: 72 }],
  ['lard 500 g, NaOH 66 g\n6 pieces of 70 g', { lard: 500, naoh: 66 }],
  ['lard 500 g, NaOH 66 g, 6 bars x 100 g', { lard: 500, naoh: 66 }],
  ['6 bars of 100 g\nlard 500 g, NaOH 66 g', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water. Strained through a tea towel, 12 pucks of about 60 g.', { lard: 500, naoh: 66 }],
])('%s', (text, grams) => {
  const got = weighed(text);
  expect(Object.keys(got).sort()).toEqual(Object.keys(grams).sort());
  for (const [id, want] of Object.entries(grams)) expect(got[id]).toBeCloseTo(want, 6);
});

// one of them is right, and nobody knows which
test.each([
  '500 g lard, 70 g lye, 150 g water. Lye is 68 g.',
  'lard -500 g, coconut 200 g, lye 97 g, water 190 g',
  'olive\t500\nlard\t500\n\t1200\nNaOH\t134\nwater\t300\nall in g',
  '500 g lard, 150 g water, lye: the scale said somewhere between 190 and 240',
  'lard 3 times as much as coconut, coconut 200 g, olive oil 300 g. How much NaOH?',
])('asks: %s', (text) => expect(readRecipe(reader, text).doubts).not.toEqual([]));

test.each([
  'half a measuring cup of lye beads',
  'a mugful of lye',
  'half a teacup of lye',
  'a heaped coffee cup of lye',
])('alkali by a vessel is asked about: %s', (lye) =>
  expect(readRecipe(reader, `500 g lard, ${lye}, 190 g water. Is that ok?`).doubts.map(({ id }) => id)).toEqual([
    'alkali-volume',
  ]),
);

test.each(['roast drippings', 'turkey drippings', 'drippings from the oven'])('fat of no one animal: %s', (fat) =>
  expect(readRecipe(reader, `${fat} 400 g, NaOH 56 g, water 190 g`).doubts).toHaveLength(1),
);

test.each([
  "We have had no water since Monday, so I've used the bottled sort, 150 ml of it. 500 g lard, 66 g lye",
  'Rain water from the butt, boiled, 150 g of it. 500 g lard, 66 g lye',
  'Coconut oil (hard in cold water), 500 g of it. 80 g lye, 150 g water',
])('what is weighed of it, and it was water: %s', (text) =>
  expect(readRecipe(reader, text)).toMatchObject({ waterGrams: 150, doubts: [] }),
);

test.each([
  'We rendered a pile of mutton tallow from next door and ended up with 900 g. 100 g castor. 130 g NaOH',
  'Melted down old candles of mutton tallow, was left with about 900 g! 100 g castor, 130 g NaOH',
  'Rendered 1.2 kg suet, got 900 g clean beef tallow. 100 g castor, 130 g NaOH',
  'Rendering 1.2 kg of suet gave me 900 g of tallow. Melted the 900 g tallow with 100 g castor. 130 g NaOH',
  'Day 1: rendered 1.2 kg suet and got 900 g tallow.\nDay 2: the 900 g tallow into the pot\nThen 100 g castor\n130 g NaOH\n300 g water',
])('what came of the fat that was rendered: %s', (text) =>
  expect(readRecipe(reader, text)).toMatchObject({ fats: [{ grams: 900 }, { grams: 100 }], doubts: [] }),
);

test.each([
  'Rendered tallow and lard, ended up with 900 g. 100 g castor. 130 g NaOH',
  'Rendered a pile of tallow off the butcher. Made soap and ended up with 900 g. 100 g castor. 130 g NaOH',
  'Rendered 900 g suet, got 1.2 kg tallow. Made soap of 900 g lard. 100 g castor, 100 g tallow. 130 g NaOH',
])('what came of two, or of the batch, is asked about: %s', (text) =>
  expect(readRecipe(reader, text).doubts).not.toEqual([]),
);

test('a solution that is called by its lye alone is asked about', () =>
  expect(readRecipe(reader, 'I have a stock of lye, 50 %. From it I take 274 g, lard 1 kg').doubts).toHaveLength(1));

test.each([
  'I found a bottle of premixed lye solution, made up last summer. The label only says LYE.\n\nWould 400 g of it do?',
  'A bottle of premixed lye solution, the label only says LYE. Would 190 g of it do?',
  'Will 400 g lye (the premixed stuff from last summer) be enough?',
  'I have lye solution left from Christmas. Will 400 g lye be enough?',
])('lye that was mixed before is asked how strong: %s', (text) => {
  const post = `For 1100 g olive and 300 g coconut. ${text}`;
  const { doubts } = readRecipe(reader, post);
  expect(doubts.map(({ id }) => id)).toEqual(['stock-strength']);
  const [doubt] = doubts;
  const settled = doubt ? settle(reader, doubt, '45 %') : null;
  expect(settled ? readRecipe(reader, post, settled).doubts : null).toEqual([]);
});

test.each([
  'twice the weight of the lye',
  '2 x the weight of the lye',
  '2 times as much as the caustic soda',
  '2x the lye weight',
])('water by the lye: %s', (ratio) =>
  expect(readRecipe(reader, `lard 500 g\nwater: ${ratio}\nHow much NaOH?`)).toMatchObject({
    waterGrams: null,
    ratio: 2,
    doubts: [],
  }),
);

const fats = 'coconut 250 g, sunflower 250 g';
test.each([
  ['shortening 500 g (the tub says 100% palm oil, nothing else)', 'palm-oil'],
  ['500 g shortening, which is all palm oil', 'palm-oil'],
  ['500 g vegetable shortening (ingredients: palm oil)', 'palm-oil'],
  ['My vegetable oil is soybean. 500 g vegetable oil', 'soybean-oil'],
  ['500 g vegetable oil (the bottle says rapeseed)', 'canola-oil'],
])('a fat of several kinds is the one that the post says: %s', (text, id) => {
  const reading = readRecipe(reader, `${text}, ${fats}`);
  expect(reading.doubts).toEqual([]);
  expect(reading.fats[0]).toMatchObject({ id, grams: 500 });
});

test.each([
  '500 g shortening (palm and soybean)',
  '500 g shortening (not palm)',
  '500 g shortening (80% palm oil)',
  'I think the tub says palm oil. 500 g shortening',
])('and asked about where it says nothing certain: %s', (text) =>
  expect(readRecipe(reader, `${text}, ${fats}`).doubts.map(({ id }) => id)).toContain('ambiguous-name'),
);

const paste = 'Coconut 400 g, olive 300 g, castor 100 g, hydroxide 190 g, water 570 g.';
test.each([
  [`The bag says potassium hydroxide, 90 %. ${paste}`, 'koh'],
  [`> Sodium or potassium?\n\nPotassium, sorry, I should have written that.\n\n${paste}`, 'koh'],
  [`${paste} The tub says sodium hydroxide, 99 %`, 'naoh'],
  [`${paste} My friend uses sodium hydroxide.`, undefined],
  [`I ran out of NaOH. ${paste}`, undefined],
  [`${paste} I can't get KOH here.`, undefined],
  [`${paste} Would NaOH be better?`, undefined],
])('hydroxide is the one that the post has: %s', (text, id) => expect(readRecipe(reader, text).alkali[0]?.id).toBe(id));

test.each([
  ['drain opener 118 g (100% sodium hydroxide)', 118],
  ['sodium hydroxide 118 g, it says drain opener but 100%', 118],
  ['drain opener 118 g (sodium hydroxide and aluminium)', undefined],
])('drain opener is sodium hydroxide where it is all of it: %s', (text, grams) =>
  expect(readRecipe(reader, `${text}, lard 800 g, water 300 g`).alkali[0]?.grams).toBe(grams),
);

test.each([
  ['KOH 73 g — the certificate says 88 % — and NaOH 28 g', [null, 0.88]],
  ['NaOH 28 g, the tub says 99 %, and KOH 73 g', [0.99, null]],
])('a purity is of the alkali that is sold so: %s', (alkali, pure) => {
  const read = readRecipe(reader, `Stearic 260 g, lard 240 g. ${alkali}. Water 210 g`);
  expect(read.doubts).toEqual([]);
  expect(read.alkali.map(({ purity }) => purity?.nominal ?? null)).toEqual(pure);
});

test.each([
  ['KOH is 90ish %', 0.9],
  ['KOH is 90 or so %', 0.9],
  ['The KOH is lab grade, 95 %', 0.95],
])('a purity that is rough, or of a grade: %s', (alkali, pure) => {
  const { doubts, purity } = readRecipe(reader, `lard 500 g. ${alkali}. How much KOH?`);
  expect([doubts, purity?.nominal]).toEqual([[], pure]);
});

test.each([
  'How much lye? I usually do 500 g',
  'How much lye? Never made more than 2 kg',
  "I've never gone over 2 kg before. How much lye?",
])('what somebody makes as a rule, or never did, is no weight of this batch: %s', (said) => {
  const rows = 'olive 500 g, coconut 300 g, lard 200 g.';
  expect(weighed(`${rows} ${said}`)).toEqual({ 'olive-oil-virgin': 500, 'coconut-oil': 300, lard: 200 });
});

test.each([
  'I filled the mould with water and weighed it: 1150 g.',
  'My mould takes 1.2 l of water.',
  'The mould holds 900 ml water.',
  'I measured the tray with water, 950 ml to the brim.',
  'It took 1150 ml of water to fill the mould.',
  'The volume of my mould (with water) is 1.1 litre.',
  'With water in it the mould weighs 1400 g.',
  'Six cavities, 110 ml of water each.',
])('what a mould holds is no water of the lye: %s', (told) => {
  const { fates, doubts } = readRecipe(reader, `Lard 500 g, coconut 200 g. ${told} How much lye?`);
  expect(doubts).toEqual([]);
  expect(fates.filter(({ why }) => why === 'water')).toEqual([]);
});

test.each(['Water 260 g, poured into the mould at 45 C.', 'I put in 260 g water and the mould is silicone.'])(
  'beside a mould, water of the lye: %s',
  (told) => {
    const { fates } = readRecipe(reader, `Lard 500 g, NaOH 66 g. ${told}`);
    expect(fates.find(({ text }) => text === '260')?.why).toBe('water');
  },
);

test.each([
  ["sunflower 400 g, palm 300 g. What lye should I be using? I'd prefer a mild soap, maybe 7%.", 0.07],
  ["lard 500 g. Can you tell me how much lye I have to use? I'd go for 8%.", 0.08],
  ['lard 500 g, olive 100 g. How much lye? 6% please', 0.06],
])('a share alone where alkali is asked for is the superfat: %s', (text, superfat) => {
  const reading = readRecipe(reader, text);
  expect(reading.doubts).toEqual([]);
  expect(reading.superfat).toBeCloseTo(superfat, 9);
});

test('a purity told beside "first time" is that of the alkali', () => {
  const { alkali } = readRecipe(
    reader,
    'lard 500 g, KOH 104 g, water 300 g. First time with KOH, 90% purity. Is it right?',
  );
  expect(alkali[0]?.purity?.nominal).toBeCloseTo(0.9, 9);
});

test('one fat in two lists is no sum', () => {
  const two = 'How much lye for two soaps?\nA) 500 g olive, 200 g coconut\nB) 600 g lard, 150 g coconut';
  expect(readRecipe(reader, two).doubts.map(({ id }) => id)).toContain('two-amounts');
});

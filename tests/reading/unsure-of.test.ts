/** What a writer does not know of the list itself is asked about; what nobody knows of the soap is not. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water.';

test.each([
  'The coconut may well be 150, the ink ran there.',
  'That 250 might just as easily be a 280, there is a hole in the card.',
  'The olive figure is hard to make out, a 6 or an 8 in front.',
  "I copied it in the dark and it's possible that I swapped olive and coconut.",
  'Olive and coconut could be the wrong way round, I was in a hurry.',
  'Perhaps I mixed up the two first figures.',
  "Whether the castor is in there already or not I honestly couldn't say.",
  'The castor I may or may not have poured in.',
  'Either the castor is in, or I forgot it; the bottle is no help.',
  'I believe my son took a ladle of the olive out again for his dinner.',
  "I think the wife nicked some of the coconut for her toast, she won't say.",
  'I have a feeling that somebody poured a bit of the olive back.',
  'Maybe he spooned a little of the coconut off, maybe not.',
  'A few of the lye pearls jumped out of the cup and I binned them.',
  'I knocked the cup with the lye, some of the flakes went everywhere.',
  'The scale flickered between 126 and 116 when I weighed the lye.',
  "I'm not certain I tared the bowl for the olive.",
  "Now I'm doubting if I poured the second bottle of olive in.",
  'By the looks of it roughly a third of the olive stuck to the jug.',
  "I'm not convinced that the coconut was really 250.",
  "Don't hold me to the 250, it was late.",
  'I lost count of the scoops of lye.',
  'Dad poured the castor and he reckons he may have overdone it.',
  'The 126 was read off the display upside down, so perhaps 921, perhaps not.',
])('what of the list is not known is asked about: %s', (note) =>
  expect(potOf(`${list} ${note}`).doubts).not.toEqual([]),
);

test.each([
  'Olive 600 g, coconut 250 g (or is it 150? grease spot), castor 50 g, NaOH 126 g, water 300 g. Fine?',
  "Card: 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I shrank it to fit, roughly by a third, I didn't weigh anything.",
  'Card: 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. Mine is about half of that, by eye.',
  'Card: 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I cut it all down to something like three quarters, freehand.',
  'I had a 5 kg can of rapeseed and about a third of it is gone now, it went in the pot. How much lye for that?',
  'the better part of a 500 g jar of coconut, and 600 g olive oil. how much naoh?',
  "coconut from a 500 g jar, there's maybe a fifth left in it. 600 g olive on top. how much lye?",
  'The coconut weighs 820 g with its bowl, and I never weighed the bowl. Olive 500 g. Lye 150 g, water 300 g, ok?',
  'Coconut 820 g including the jar (no idea what the jar weighs). Olive 500 g. Lye 150 g, water 300 g, ok?',
  'lard 1340 in its pot, tare unknown. NaOH 130 g, water 300 g. ok?',
  'olive 20, coconut 8, palm 8, lye 5, water 11. Could be ounces, could be dekagrams, the display is broken.',
  "olive 20, coconut 8, palm 8, lye 5, water 11, ounces or hectograms, don't ask me.",
  "300 g coconut, 400 g olive, 200 g palm. Palm or palm kernel, I can't say, the lid only says palm. Lye 128 g, water 270 g.",
  '300 g coconut, 400 g olive, 200 g of what I believe is palm, the label has come off. Lye 128 g, water 270 g.',
  '300 g coconut, 400 g olive, 200 g of something white, shea or palm, unlabelled. Lye 128 g, water 270 g.',
  "I put down 400 g of lard. My brother says it was more like 450, it's likely in the middle. Sunflower 200 g. Lye?",
  'The lard is 400 g, or 450 if you ask my mother; nobody reweighed. Plus 200 g sunflower. How much NaOH?',
])('and where it stands in the list: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));

test.each([
  "I'm not sure the lye is right.",
  "I can't tell whether this is too strong for my hands.",
  'It may be 3 weeks before I can cut it.',
  "I think it's fine but maybe you can check.",
  "I don't know how long to stir it.",
  'Trace came after maybe 5 minutes.',
  'Roughly half of it went in the loaf mould, the rest in cups.',
  "My husband thinks I'm mad, perhaps he's right.",
  'No idea what it will smell like.',
  "I can't remember who gave me the recipe.",
  'Either I wrap it in paper or I leave it bare.',
  "I've never seen soap this white, I guess it's the coconut.",
  "I couldn't tell it from the shop's.",
  'Perhaps 40 bars for the school fair.',
  'The olive is somewhere between green and gold.',
  "There's about half a bottle of olive left for salads.",
  "I don't know whether castor goes rancid.",
  'I might use lard next time.',
  'I wonder if coconut makes it too drying.',
  "I think I'll cut it tomorrow, maybe the day after.",
  'Not sure which mould, the long one perhaps.',
  'There are two kinds of olive in the shop, I take the cheap one.',
  'I weighed the lye twice to be sure.',
  'Lavender by eye at the end.',
  'Some of the beads were clumped but they dissolved.',
  "I'm sure of the weights, less sure of the temperature.",
  "Could be 2 hours till it's cooked.",
  "I can't remember if soap should be covered.",
])('what is not known of the soap is no question: %s', (note) => expect(potOf(`${list} ${note}`)).toEqual(potOf(list)));

test.each([
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. Either I halved it or I poured the lot, I was on the phone.',
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I made half. Or did I make all of it? I can't remember.",
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I may have halved it or not.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I made half of this, or was it a third?',
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I think I made half of it, but I'm not sure.",
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. The castor has to go, we're still arguing about it.",
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. Castor must come out, my sister disagrees.',
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. The castor is to be replaced, we can't agree by what.",
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. We haven't settled whether the castor stays.",
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. The castor should go, but we're still discussing it.",
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I forgot the castor. That was the other pot, or was it this one?',
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I left out the castor. Or was that last week's?",
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I forgot the coconut, though that may have been the other pot.',
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. Spilled some of the lye. Or was that yesterday's batch?",
  '700 g olive, 250 g coconut, 300 g lye solution, 40 % NaOH (1:1 with water). ok?',
  '700 g olive, 250 g coconut, 280 g lye solution 33 % (mixed 1:1). ok?',
  'Hemp 200 g cut to 120, shea 100 raised (to what?), coconut 300 g, olive 400 g, lye 130 g.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. Castor cut to 30, coconut raised (to what?).',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. Castor lowered to 30 g, olive upped, forgot to what.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH. My aunt swaps the castor for shea. I did the same.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH. Some people swap the castor for shea. So did I.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH. My friend leaves out the castor, and I followed her.',
  'palm 300g, coconut 300g, olive 400g, naoh 143, water 300.\n\nsorry, one of the 300s should be 200',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. One of the weights ought to be 200 more, I forget which.',
  'palm 300 g, coconut 300 g, olive 400 g, naoh 143 g, water 300 g. Typo: one 300 is really 350.',
  'palm 300 g, coconut 300 g, olive 400 g, naoh 143 g. There is a slip in it: a 300 that ought to be 200.',
  "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. My notebook says NaOH 126, the scale's memory 136, and I can't work out which came later.",
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. In the notes the lye is 126, on the photo it is 136.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I wrote 126 for the lye but the picture of the scale shows 136, taken maybe before I took some out.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I made half of this. The castor might also be 30, there is a blot.',
  '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I made half of this. Some of the lye stuck to the jug.',
])('of one pot or another, all of it or half, one row or the next, it asks: %s', (text) =>
  expect(potOf(text).doubts).not.toEqual([]),
);

test.each([
  'I tripled some of the oils since the mould is big.',
  'I doubled part of it, and then the phone rang.',
  "My son says he used the lye from the other cup, I'm sure I put mine in.",
  'EDIT: the coconut was 180.\nEDIT 2: ignore that, what I wrote first was right, or the second.',
  'I had the castor measured out in a cup. This evening I found it. Still in the cup.',
  'It looked thin, so I dissolved a bit more lye, two spoons, and stirred it in.',
  'When I poured the lye in some of it stayed behind in the jug.',
  "Maybe I'll swap the coconut for babassu, haven't decided yet.",
  'No idea any more whether I had already multiplied the oils.',
  'The 126 g of lye was weighed with its cup.',
  'Once the 450 g of olive was warm I added the rest.',
  'But the coconut came out at 235 g.',
  'Olive 600 g (well 480 really).',
])('of part of a list, of two tellings, of what stayed behind it asks: %s', (note) =>
  expect(potOf(`${list}\n${note}`).doubts).not.toEqual([]),
);

test.each([
  'I changed some of the scents.',
  "My son says he used the last bar, I'm sure I saw two more.",
  'The soap is still on the counter, some of it in a cup.',
  'The pot is still on the stove, all melted.',
  'The loaf is still in the fridge.',
  'I put in a bit more oatmeal and it stuck to the spoon.',
  'Some of it stayed in the pot, I scraped it out.',
  "I haven't decided how to cut it.",
  'Mixed in a jug with a lid, all included in the kit.',
  'It fills the mould with a bit left over, that goes in cups.',
  "She says it's too hot, I say it's fine.",
  'The water came out at 90 C.',
  'The soap came out at 1100 g.',
])('what became of the soap it does not doubt: %s', (note) => expect(potOf(`${list}\n${note}`).doubts).toEqual([]));

test('of two purities, one told of lye that was taken back, it asks', () =>
  expect(
    potOf(
      "Sunflower 400 g, coconut 300 g, castor 50 g, water 520 g. My friend's KOH is 85 % and she used 150 g of it. The label on my bag says 90 % and I took 175 g.",
    ).doubts,
  ).not.toEqual([]));

test('what was heard to have stayed out is not asked about once more', () =>
  expect(
    potOf(
      'Wanted my usual (600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water), but at trace I noticed the castor still sitting on the counter, so it never went in.',
    ),
  ).toEqual({ grams: { 'olive-oil-virgin': 600, 'coconut-oil': 250, naoh: 126, water: 300 }, doubts: [] }));

test('"once the" begins no tale of another day', () =>
  expect(
    potOf(
      'Lard 700 g\nCoconut 200 g\nNaOH 125 g\nWater 280 g\n\nA nice white bar. Once the 600 g of lard had melted I put the coconut in and let it cool down.',
    ).doubts,
  ).not.toEqual([]));

test('who is unsure of the scent alone is not asked', () =>
  expect(
    potOf(
      "Olive oil 500 g, coconut oil 200 g, lye 97 g, water 200 g. What I'm not sure about is the scent, it was either 20 or 25 g of honey fragrance. Lye ok?",
    ).doubts,
  ).toEqual([]));

test.each([
  ["I'm not sure whether I put 10 or 15 g lavender.", []],
  ['Not sure if I added one or two spoons of clay.', []],
  ['Not sure whether I put the lavender or the castor.', ['corrected']],
  ['Not sure whether I put in the coconut twice.', ['corrected']],
])('%s', (said, doubts) =>
  expect(potOf(`Olive oil 500 g, coconut oil 200 g, lye 97 g, water 200 g. ${said}`).doubts).toEqual(doubts),
);

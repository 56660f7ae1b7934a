import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const list = 'Palm 450 g\nCoconut 250 g\nSweet almond 200 g\nNaOH 131 g\nWater 290 g\n\n';
const read = (note: string) => readRecipe(reader, `${list}${note} What is the superfat?`);

/** What each kind of note must be asked about, and what is harmless beside it. */
const notes: Readonly<Record<string, readonly [asked: readonly string[], harmless: readonly string[]]>> = {
  'less of a fat, filled up with another': [
    [
      'The almond bottle ran dry at 140, so I made up the 200 with sunflower.',
      'The almond gave out at 140; what was lacking I took from the sunflower bottle.',
      'I squeezed 140 out of the almond bottle, then reached for the sunflower.',
      'The almond jug held 140 and sunflower went in after it to reach the weight.',
      'The almond canister stopped at 140. Sunflower took care of the shortfall.',
      'The almond bottle said goodbye at 140 and sunflower had to jump in.',
      'I had been sure the almond bottle was full. It was not: 140. So sunflower came on top.',
    ],
    [
      'The almond bottle was down to 140 afterwards, enough for a salad.',
      'Next time I would take 140 g of almond and make up the difference with sunflower.',
      'My sister takes 140 of almond and the rest sunflower, and hers never traces.',
      'The almond bottle weighs 140 when empty.',
      'I wanted to take 140 almond and 60 sunflower at first, but kept to the list.',
    ],
  ],
  'the other alkali': [
    [
      "I went to look, and the bucket I'd scooped from says POTASSIUM HYDROXIDE flakes. So that is what is in there.",
      'Turns out the label on my tub reads KOH.',
      'The supplier wrote that they had shipped KOH in place of NaOH.',
      'In the bin lay the empty packet, and on it stood KOH.',
      'The scoop was in the KOH, not in the NaOH.',
      'Damn: potassium hydroxide it says on the canister.',
    ],
    [
      'I had the KOH tub in my hand before I noticed. Back on the shelf with it, took the right one.',
      'Yes, it is NaOH and not KOH, I checked the label twice.',
      'I also make liquid soap with KOH but this is a plain bar.',
      'The tub is marked NaOH, the KOH tub is still sealed.',
      'KOH is what I used for the liquid one in May.',
    ],
  ],
  'a fat that is not in it': [
    [
      'My mom itches from coconut so this batch has none of it and nothing instead, just the other two.',
      'I made it coconut free.',
      'All of it went in save for the coconut.',
      'As for the coconut, it stayed in the shop.',
      'The coconut never left the cupboard.',
      'It has everything in it but the coconut, which was rancid.',
      'Coconut dries my hands, therefore just palm and almond.',
    ],
    [
      'My mom gets itchy from coconut in shampoo but this soap is fine.',
      'There is no lard in it, I never buy that.',
      'I forgot to warm the coconut, so it took longer.',
      'No coconut flavour at all in the smell, strange.',
    ],
  ],
  'fats taken out before the lye': [
    [
      'I dipped 300 g of the melted and well stirred fats out of the 900 and set them in the fridge. Then I poured in the lye water, all of it.',
      'Half of the warm oils I put in a jar for next week, and only then remembered that the lye was for all of them.',
      'I decanted 300 g of the fats into a tub. The lye water was mixed already and went in whole.',
      'A bowlful of the oils stayed behind in the other pan, I saw that after the lye.',
      'A third of the melted oils I poured into a candle mould, and the lye I used whole.',
    ],
    [
      'I dipped a spoon in the melted oils to see how warm they were.',
      'Took the fats off the heat and let them stand.',
      'I took the melted fats out of the oven and let them cool.',
      'After trace I dipped out 300 g of the batter for the blue half.',
    ],
  ],
  'something that nobody can name': [
    [
      'No palm to be had, so I used 450 g from the jar at the back of the cupboard. The label came off ages ago, something whitish and solid.',
      'I call it palm but it was an unmarked tub, could be anything.',
      'For palm I put in what was in the deep fryer.',
      'No palm, so some margarine or what it was.',
    ],
    [
      'The palm comes from a jar at the back of the cupboard, it is still good.',
      'The label of the palm came off but I know that it is palm.',
    ],
  ],
  'more lye by the spoon': [
    [
      'It stayed greasy so I dissolved two heaped teaspoons of lye in a drop of water and put that in as well.',
      'It would not thicken, so in went another spoon of lye.',
      'I panicked and sprinkled a few more flakes of lye in.',
      'Gave it another shot of lye, a spoonful in water.',
      'Put a small extra dose of lye in.',
      'Then a pinch of NaOH as well.',
    ],
    [
      'I added the lye by the spoonful to the water.',
      'Two teaspoons of sugar in a drop of water went in with the lye.',
      'I skimmed a teaspoon of foam off the lye water.',
    ],
  ],
  'all of it so many times': [
    [
      'Everything went in twice over.',
      'All weights were doubled by me.',
      'Only half of each went in.',
      'I have upscaled it by two, all lines.',
      'I did this two times over in the big pot.',
    ],
    ['It doubled in size in the oven.', 'I checked everything twice.', 'My sister always doubles it.'],
  ],
};

describe.each(Object.entries(notes))('%s', (_, [asked, harmless]) => {
  test.each(asked)('asked about: %s', (note) => {
    expect(read(note).doubts).not.toEqual([]);
  });

  test.each(harmless)('harmless: %s', (note) => {
    expect(read(note)).toMatchObject({ doubts: [], waterGrams: 290, alkali: [{ id: 'naoh', grams: 131 }] });
    expect(read(note).fats.map(({ grams }) => grams)).toEqual([450, 250, 200]);
  });
});

test('one fat planned, another one there', () => {
  const jars = 'Jar one olive 480 g. Jar two coconut 210 g. ';
  const doubts = (third: string) => readRecipe(reader, `${jars}${third} How much NaOH for the three?`).doubts;
  expect(doubts('Jar three: palm 150 g, was the plan. There is tallow in it, 150 g.')).not.toEqual([]);
  expect(
    doubts("Jar three was going to be palm, 150 g, but I'm done with palm for good, so it now holds 150 g of tallow."),
  ).not.toEqual([]);
});

test('what a sentence begins with is what it weighs', () => {
  const post =
    '"Take 14 oz of olive oil, 7 oz of coconut. Of caustic soda, 3 oz exactly. Of water, rain if you can, 6 oz." Is the lye right?';
  const { alkali, waterGrams, doubts } = readRecipe(reader, post);
  expect(doubts).toEqual([]);
  expect(alkali[0]?.grams).toBeCloseTo(85.05, 1);
  expect(waterGrams).toBeCloseTo(170.1, 1);
});

test('a size is no measure', () => {
  const post = '500 g lard and 200 g olive. I did a cup-sized trial in May with sunflower. How much KOH?';
  expect(readRecipe(reader, post).fats.map(({ id }) => id)).toEqual(['lard', 'olive-oil-virgin']);
});

/** Weights of which only the difference, a part or less than was planned went into the pot. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
/** What is in the pot, by grams; null where it is asked. */
const potOf = (text: string) => {
  const { doubts, fats, after, alkali, waterGrams, liquids } = readRecipe(reader, text);
  if (doubts.length > 0) return null;
  const list = [...fats, ...after.map((one) => ({ ...one, id: `after ${one.id}` })), ...alkali, ...liquids];
  const round = (grams: number | null) => (grams === null ? null : Math.round(grams * 10) / 10);
  return { ...Object.fromEntries(list.map(({ id, grams }) => [id, round(grams)])), water: round(waterGrams) };
};
const olive = { 'olive-oil-virgin': 650, 'coconut-oil': 350, naoh: 138, water: 300 };
const lard = { lard: 640, 'coconut-oil': 360, naoh: 148, water: 320 };

describe('a vessel that was weighed before and after', () => {
  test.each([
    'The full bottle of olive oil weighed 915 g before and 265 g after, so the difference is what went into the pot.',
    "Olive oil: the bottle was 915 g full and 265 g when I'd finished pouring.",
    'I weighed the olive oil bottle before (915 g) and after (265 g).',
    'The olive oil bottle was 915 g on the scale before and 265 g after, same bottle, same lid.',
    'The can of olive oil had 1.4 kg on the scale before I poured and 750 g after.',
    'The olive bottle started at 915 g and ended at 265 g.',
    'The jar of olive oil went from 915 g to 265 g on the scale.',
    'First the olive bottle weighed 915 g, then 265 g.',
    'After I had poured the olive oil, the bottle was 265 g; before that it was 915 g.',
    'For the olive oil I weighed the tin: it was 1130 g to start with and 480 g once I was finished.',
    'Bottle of olive oil 915 g before, 265 g after, so 650 g olive in the pot.',
  ])('%s', (said) => expect(potOf(`350 g coconut oil, 138 g lye, 300 g water. ${said} Fine?`)).toEqual(olive));

  test('of lye and of water', () => {
    const fats = '650 g olive oil, 350 g coconut oil';
    expect(potOf(`${fats}, 300 g water. The lye tub was 612 g before and 474 g after. Fine?`)).toEqual(olive);
    expect(potOf(`${fats}, 138 g lye. The water jug weighed 1.2 kg full and 900 g after I'd poured. Fine?`)).toEqual(
      olive,
    );
  });

  test.each([
    'The pot weighed 2500 g before the cook and 2410 g after.',
    'The bars were 120 g before the cure and 104 g after.',
    'My olive oil came in a 5 litre can, it was 4.2 kg before last week and is 3.1 kg now.',
    'The olive bottle weighed 915 g before and 265 g after.',
  ])('and the weights of the list stay: %s', (said) =>
    expect(potOf(`650 g olive oil, 350 g coconut oil, 138 g lye, 300 g water. ${said} Fine?`)).toEqual(olive),
  );

  test.each([
    'Coconut oil from the jar: first 200 g, then 150 g.',
    'The tub of coconut oil was 200 g, then I added another 150 g.',
  ])('two goes are no difference: %s', (said) => {
    const pot = potOf(`650 g olive oil, 138 g lye, 300 g water. ${said} Fine?`);
    expect([null, 350]).toContain(pot && (pot as Record<string, unknown>)['coconut-oil']);
  });

  test('what does not agree with the list is asked about', () =>
    expect(
      potOf(
        '350 g coconut oil, 650 g olive, 138 g lye, 300 g water. The olive bottle weighed 915 g before and 295 g after. Fine?',
      ),
    ).toBeNull());
});

describe('a vessel with what is in it', () => {
  test.each([
    'The jug is 85 g, the display said 223 g with the lye in it.',
    'Empty the jug weighs 85 g, with the lye 223 g.',
    'Jug and lye together 223 g, the jug alone is 85 g.',
    'Lye 223 g including the jug, which is 85 g.',
    'Lye with its jug 223 g, jug 85 g.',
    'The cup with the lye weighed 176 g. I weighed the cup later, 38 g.',
    'Lye: 176 g minus the cup 38 g.',
    'Lye: 176 g less 38 g for the cup.',
    'The empty cup was 38 g and went up to 176 g with the lye.',
    'I forgot to tare: 176 g lye and cup, and the cup is 38 g.',
  ])('%s', (said) => expect(potOf(`650 g olive oil, 350 g coconut oil, water 300 g. ${said} Fine?`)).toEqual(olive));

  test.each([
    'The mould weighs 450 g empty and 1800 g with the soap in it.',
    'The pot weighs 1200 g, with everything in it 2638 g.',
    'The cup is 38 g, I zeroed the scale with it.',
  ])('and the weights of the list stay: %s', (said) =>
    expect(potOf(`650 g olive oil, 350 g coconut oil, 138 g lye, 300 g water. ${said} Fine?`)).toEqual(olive),
  );

  test('two of one vessel may be on top of each other', () =>
    expect(
      potOf('Jug empty 85 g. Jug with lye 223 g. Jug with water 385 g. 650 g olive oil, 350 g coconut oil. ok?'),
    ).toBeNull());
});

describe('what is left in its pack', () => {
  test.each([
    "Opened a new 500 g jar of coconut oil. What's left in the jar now is 140 g (weighed it without the jar), the rest of it is in the pot.",
    'A 500 g jar of coconut oil, 140 g is still in the jar, everything else went in.',
    'A jar of coconut oil (500 g); 140 g remain, everything else is in.',
    'From the 500 g jar of coconut oil 140 g stayed in the jar.',
    "I had a 500 g jar of coconut oil and there's 140 g left in it.",
    'I emptied a 500 g jar of coconut oil into the pot except for 140 g.',
    'And a 500 g jar of coconut oil minus 140 g.',
    'All of a 500 g jar of coconut oil but 140 g.',
  ])('%s', (said) => expect(potOf(`640 g lard, 148 g lye, 320 g water. ${said} ok?`)).toEqual(lard));

  test.each([
    [
      "Made up 400 g of 40 % lye solution (NaOH). There's exactly 30 g of it still in the bottle, everything else went into",
      148,
      222,
    ],
    ['500 g of 40 % lye solution made up, 130 g stayed in the jug, the rest went on', 148, 222],
    ['I mixed 200 g lye with 400 g water. 150 g of the solution is still in the jug, the rest went into', 150, 300],
  ])('of a solution: %s', (said, naoh, water) =>
    expect(potOf(`${said} 640 g lard and 360 g coconut oil. ok?`)).toEqual({ ...lard, naoh, water }),
  );

  test.each([
    "There's 140 g of palm oil left in the jar, that was not for this.",
    'Of the coconut about 15 g stayed in the bowl.',
    'I weighed the coconut jar after: still 15 g in it.',
  ])('nothing is taken off without being asked: %s', (said) =>
    expect([null, 360]).toContain(
      (potOf(`640 g lard, 360 g coconut oil, 148 g lye, 320 g water. ${said} ok?`) as Record<string, unknown> | null)?.[
        'coconut-oil'
      ] ?? null,
    ),
  );

  test('what the cat left counts', () =>
    expect(
      potOf(
        "I'd weighed 500 g olive and then the cat knocked the jug. Weighed it again afterwards and there's 462 g left in it, so that with 200 g coconut, 95 g lye, 200 g water. ok?",
      ),
    ).not.toMatchObject({ 'olive-oil-virgin': 38 }));
});

describe('a plan that stopped short', () => {
  const list = '600 g olive oil and 250 g coconut oil, 121 g lye and 300 g water.';
  const pot = { 'olive-oil-virgin': 600, 'coconut-oil': 250, naoh: 121, water: 300 };
  test.each([
    [
      'After the cook I was going to stir in 100 g shea butter, but stopped at 50 g because it got greasy.',
      'after shea-butter',
      50,
    ],
    ['I meant to add 100 g castor oil but stopped at 60 g.', 'castor-oil', 60],
    ['Castor oil was meant to be 100 g but I stopped pouring at 60 g.', 'castor-oil', 60],
    ['I was going to put in 100 g castor oil and stopped at 60 g because the bottle smelled off.', 'castor-oil', 60],
    ['I had meant to use 100 g castor oil but called it a day at 60 g.', 'castor-oil', 60],
    ['I was going for 100 g castor oil but left it at 60 g.', 'castor-oil', 60],
  ])('%s', (said, id, grams) => expect(potOf(`${list} ${said} ok?`)).toEqual({ ...pot, [id]: grams }));

  test.each([
    'I was going to stir for 40 minutes but stopped at 25.',
    'I wanted to heat it to 50 C but stopped at 42 C.',
  ])('nothing of the list changes: %s', (said) => expect(potOf(`${list} ${said} ok?`)).toEqual(pot));
});

describe('a weight that is parted between the soap and something else', () => {
  const rest = '200 g coconut oil. 142 g lye, 300 g water.';
  const pot = { lard: 800, 'coconut-oil': 200, naoh: 142, water: 300 };
  test.each([
    '1 kg lard. Of that, 200 g for the candle, 800 g for the soap.',
    '1 kg of lard, of which 200 g for frying and 800 g for soap.',
    'Of 1 kg lard 200 g went into pies and 800 g into the soap.',
    '1 kg lard, 200 g of it for a candle, the rest for the soap.',
  ])('%s', (said) => expect(potOf(`${said} ${rest} ok?`)).toEqual(pot));

  test('and what is for the other thing, too, is none of it', () =>
    expect(
      potOf(`1 kg lard. Of that, 200 g for the candle, 800 g for the soap. ${rest} 30 g beeswax, also the candle. ok?`),
    ).toEqual(pot));

  test('both parts of it for the soap are all of it', () =>
    expect(potOf(`800 g lard, 200 g of it for the swirl and 600 g for the base. ${rest} ok?`)).toEqual(pot));
});

describe('what is left to reckon, and no rule has reckoned', () => {
  const list = '640 g lard, 360 g coconut oil, 148 g lye, 320 g water.';
  test.each([
    'I mixed 200 g lye with 400 g water and kept back 150 g of it. 640 g lard and 360 g coconut. ok?',
    `${list} The jug with the lye was 230 g. ok?`,
  ])('is asked about: %s', (text) => expect(potOf(text)).toBeNull());

  test.each([
    'The olive is for salads, what is left in the bottle is 2 kg.',
    'What went in the pan of the lard was weighed on the scale.',
    'peppermint, maybe 20 g, maybe 25, depends on what is left in the bottle',
    'The bowl with the fats was warm before I added the lye, and hot after.',
    'I stopped at the shop after work.',
  ])('and nothing is asked beside it: %s', (said) => expect(potOf(`${list} ${said} ok?`)).toEqual(lard));
});

describe('what is left of a pack', () => {
  test.each([
    "Didn't weigh the coconut oil going in but it was a brand new 1 kg tub and there are 640 g left in there. Rest: olive oil 650 g, 138 g lye, 300 g water.",
    'The coconut oil was a brand new 1 kg tub and there is 640 g left in it. 650 g olive oil, 138 g lye, 300 g water.',
  ])('that stands apart from its name: %s', (text) =>
    expect(potOf(`${text} Ok?`)).toEqual({ ...olive, 'coconut-oil': 360 }),
  );

  test.each([
    "Started a fresh 500 g tin of lye today, weighed the lye that's left: 362 g. The rest is in the soap.",
    'I opened a new 500 g tin of lye, and weighed the lye that was left: 362 g. The rest is in the soap.',
    "The lye was from a new 500 g tin and there's 362 g left in it.",
    'The lye that was left from last time was 138 g.',
    'I used the lye I have left, 138 g.',
  ])('of lye: %s', (text) =>
    expect(potOf(`650 g olive oil, 350 g coconut oil, 300 g water. ${text} Ok?`)).toEqual(olive),
  );

  test('all of the pack went in', () =>
    expect(
      potOf('The coconut oil was a new 350 g tub, all of it went in. 650 g olive oil, 138 g lye, 300 g water. Ok?'),
    ).toEqual(olive));

  test.each([
    'I keep a can of ready mixed 50 % lye (sodium). Poured off 276 g of it and stirred in another 162 g of plain water. About 3 kg of the solution is still in the can.',
    'I keep ready-made 50 % lye (NaOH). Took 276 g of it, plus 162 g of water.',
  ])('of a solution: %s', (text) => expect(potOf(`650 g olive oil, 350 g coconut oil. ${text} Ok?`)).toEqual(olive));
});

describe('what a new pack less its rest leaves, of what nobody noted', () => {
  test.each([
    'I forgot to write down the lye. It was a brand new 500 g tub and what is left in it is 362 g.',
    "I forgot to write down the lye. But it was a new 500 g tub and I've just weighed what is left in it, 362 g, nothing was spilt.",
    "I don't know how much lye I used, only that the bag was a full 500 g and there are 362 g left in it.",
    "I never weighed the lye. The tub was new, 500 g. There's 362 g in it now.",
    "The lye came out of a new 500 g tub, I weighed the rest and it's 362 g.",
    'The lye is from a new 500 g tub, 138 g of it. 362 g left for the next one.',
  ])('%s', (said) => expect(potOf(`650 g olive oil, 350 g coconut oil, 300 g water. ${said} Safe?`)).toEqual(olive));

  test('what was rendered is told in a bracket, and more follows', () =>
    expect(
      potOf(
        'The lard tub (rendered it myself) was 3.42 kg before and 2.78 kg after. So work it out :) Also 360 g coconut oil, 148 g lye, 320 g water. Safe?',
      ),
    ).toEqual(lard));

  test('more was taken of it before', () =>
    expect(
      potOf(
        '650 g olive oil, 350 g coconut oil, 300 g water. It was a new 500 g tub of lye, some was used before, what is left in it is 362 g.',
      ),
    ).toBeNull());
});

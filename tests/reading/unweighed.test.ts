/** Lost, added or guessed by amounts that nobody weighed. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const doubtsOf = (said: string): readonly string[] =>
  readRecipe(reader, `500 g olive, 250 g coconut, 105 g lye, 240 g water. ${said} Lye ok?`).doubts.map(({ id }) => id);

describe('asked', () => {
  test.each([
    'Some of the olive got spilled.',
    "While I was out my son 'helped' and poured sunflower oil in, he can't say how much and the bottle was already open.",
    'My daughter dumped castor oil in while I looked away.',
    'Somebody tipped sunflower oil into my pot, the bottle was already open.',
    'The child has put castor in the pot, how many I not know.',
    'He added castor oil to it when I was away.',
    'A good bit of the olive landed on the floor.',
    'Quite a lot of the coconut stuck to the bowl.',
    'I lost about a spoon of coconut.',
    'Not all of the lye dissolved, there were flakes on the bottom.',
    'About a third of the lye clumped and I threw it away.',
    'The jug still has a finger of olive in it.',
    'I left a little coconut in the bowl.',
    'I left a bit of coconut in the bowl for my hair.',
    'I put a knob more coconut in because it looked thin.',
    'I gave it a glug of olive for luck.',
    'Topped the olive up a little.',
    'Olive ran out, finished with sunflower.',
    'The coconut was fractionated.',
    'It was actually lard in the coconut tub.',
    "The olive bottle was nearly empty so it's rapeseed in there.",
    'The lye is caustic potash.',
    "Didn't weigh the lye, went by last time.",
  ])('%s', (said) => expect(doubtsOf(said)).toEqual(['corrected']));
});

describe('nothing of it', () => {
  test.each([
    'I spilled a bit of the batter.',
    'A little lavender got spilled.',
    'I greased the mould with a bit of coconut.',
    'I mixed the mica with a spoon of the olive.',
    'I squeezed a bit of olive over the salad.',
    'Some of the olive is infused with nettle.',
    'Most of the lye had dissolved after five minutes.',
    'I added some of the olive to the coconut to cool it.',
    'I scraped every bit of coconut out of the bowl.',
    'The lye is NaOH.',
    'My gran never weighed the lye, she floated an egg.',
  ])('%s', (said) => expect(doubtsOf(said)).toEqual([]));
});

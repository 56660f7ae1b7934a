/** What others advise of a list, or say of its lye. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const lye = (text: string): number | null | undefined => {
  const { alkali, doubts } = readRecipe(reader, text);
  return doubts.length === 0 ? (alkali[0]?.grams ?? null) : undefined;
};

describe('what was advised', () => {
  const list = '1 kg olive, 250 g coconut, 178 g lye, 400 g water';
  test.each([
    [
      `> ${list}\n> Reply: bit tight, drop the lye by 5 g\n\nThat was my post. I did drop it by 5 g. Good like this?`,
      173,
    ],
    [`${list}\nAnswer: use 5 g less lye.\nI did that. Good like this?`, 173],
    [`${list}\nComment: I'd add 20 g more lye.\nI didn't. Good like this?`, 178],
    [`${list}\nReply: drop the lye by 5 g\nShould I?`, 178],
    [`${list}. She told me to drop the lye by 5 g, I didn't. Good like this?`, 178],
  ])('%s', (text, grams) => expect(lye(text)).toBe(grams));
  test('whether the list has it already', () =>
    expect(lye(`${list}. Somebody told me to drop the lye by 5 g and I did. Good like this?`)).toBeUndefined());
});

describe('the lye that others say, where it is asked', () => {
  const list = '900 g tallow, 300 g coconut, superfat 6 %.';
  test.each([
    "My aunt says 160 g lye but she guesses everything. What's the real NaOH figure?",
    'My neighbour would take 160 g of lye, he never weighs. How much NaOH do I really need?',
    "Somebody in a forum said 160 g lye. What's the correct amount of NaOH?",
    'My sister thinks about 160 g lye. Please work out the lye for me.',
  ])('%s', (said) => expect(lye(`${list} ${said}`)).toBeNull());
  test.each([
    'My aunt says 160 g lye. Is she right?',
    "My aunt says 160 g lye and that's what I put in. Is it right?",
    'The recipe says 160 g lye. What superfat is that really?',
  ])('%s', (said) => expect(lye(`900 g tallow, 300 g coconut, 360 g water. ${said}`)).toBe(160));
});

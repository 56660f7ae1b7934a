/** Sentences that greet, ask or list, and tell nothing of what became of the pot. */
import { isAny, isFat, isMark, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

const small: ReadonlySet<string> = new Set(
  'a all am an and any are be bit can check checks correct does enough everybody everyone fine fat fats folks for good got grams guys hello help hey hi how i im in is it lads least look looking looks lye me much my new of oil oils ok okay on our please pls question quick right safe should so some superfat thank thanks that the this today to tonight too total us water we weigh what whats will with would you your'.split(
    ' ',
  ),
);

/** What a role is called is a word like others: "melt", "mould". */
const tells = (token: Token): boolean =>
  (token.t === 'word' || (token.t === 'name' && token.meaning.kind === 'role')) && !small.has(token.text.toLowerCase());

/** "The lard is tallow": of two names. */
const isOfAnother = (tokens: readonly Token[], from: number, to: number): boolean =>
  isAny(
    tokens,
    from,
    to,
    (token, k) =>
      isFat(token) &&
      /^(?:is|are)$/.test(wordAt(tokens, k + 1)) &&
      isFat(tokens[k + 2]) &&
      !isAny(tokens, from, to, isQuestion),
  );
const isQuestion = (token: Token): boolean => isMark(token, '?');

/** All of its words are such. */
export const isSmallTalk = (
  tokens: readonly Token[],
  { from, to }: { readonly from: number; readonly to: number },
): boolean => !isAny(tokens, from, to, tells) && !isOfAnother(tokens, from, to);

/**
 * Which of two alkalis goes in, where the writer has both: "two hydroxides, the potassium sort and the sodium sort. Today
 * it's the sodium sort". The other one is only spoken of.
 */
import { isAny, isMark, isWeight, type Span, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';

type Name = Extract<Token, { t: 'name' }>;
type Id = 'naoh' | 'koh';

const byMetal: Readonly<Record<string, Id>> = { sodium: 'naoh', potassium: 'koh' };
const sort = /^(?:sort|kind|type|one|stuff|version|hydroxide)$/;
const choosing = /^(?:today|tonight|now|using|use|taking|take|here|chose|chosen)$/;
const open =
  /^(?:not|isnt|never|no|or|if|maybe|perhaps|probably|should|could|would|might|can|shall|next|last|usually|normally|both|mix|and|other|than|he|she|they|his|her|their)$/;
const longestSentence = 20;
/** Sentences about metals that are looked at, at the most. */
const most = 12;

const isOfLye = (token: Token | undefined): token is Name =>
  token?.t === 'name' && (token.meaning.kind === 'alkali' || token.meaning.kind === 'ambiguous');

/** The alkali that a name stands for, by the metal alone, too; null for any other name, and where either may be meant. */
function idOf(token: Token | undefined): Id | null {
  if (!isOfLye(token)) return null;
  if (token.meaning.kind === 'ambiguous') return byMetal[token.text.toLowerCase()] ?? null;
  return token.meaning.id === 'naoh' || token.meaning.id === 'koh' ? token.meaning.id : null;
}

const isEither = (token: Token | undefined): token is Name =>
  isOfLye(token) && token.meaning.kind === 'ambiguous' && token.meaning.id.startsWith('hydroxide');

const isWeighed = (tokens: readonly Token[], k: number): boolean =>
  isWeight(tokens[k + 1]) || isWeight(tokens[wordAt(tokens, k - 1) === 'of' ? k - 2 : k - 1]);

/** "Today it's the sodium sort": the sentence names one sort, and says that it is taken. */
function isChosen(tokens: readonly Token[], k: number): boolean {
  const { from, to }: Span = sentenceAt(tokens, k, longestSentence);
  const isTime = isAny(tokens, from, to, (one, at) => spoken(one) === 'time' && wordAt(tokens, at - 1) === 'this');
  return (
    sort.test(spoken(tokens[k + 1])) &&
    (isTime || isAny(tokens, from, to, (one) => choosing.test(spoken(one)))) &&
    !isMark(tokens[to], '?') &&
    !isAny(tokens, from, to, (one, at) => open.test(spoken(one)) || (at !== k && idOf(one) !== null))
  );
}

/** The tokens with the one that is chosen, and without the other. */
export function kindChosen(tokens: readonly Token[]): readonly Token[] {
  const metals = tokens.flatMap((token, k) => (idOf(token) === null ? [] : [k]));
  if (metals.length < 3 || metals.length > most || new Set(metals.map((k) => idOf(tokens[k]))).size !== 2)
    return tokens;
  const chosen = metals.filter((k) => isChosen(tokens, k));
  const ids = new Set(chosen.map((k) => idOf(tokens[k])));
  const [id] = ids;
  if (!id || ids.size > 1 || metals.some((k) => isWeighed(tokens, k))) return tokens;
  const as = (token: Name): Token => ({ ...token, meaning: { kind: 'alkali', id }, how: 'abbreviation', meant: id });
  return tokens.map((token, k) => {
    // "two hydroxides"
    const counts = token.t === 'quantity' && token.quantity.value === 2 && token.quantity.dim === 'bare';
    if (counts && isEither(tokens[k + 1])) return asAside(token, 'a count');
    if (isEither(token)) return tokens[k - 1]?.t === 'quantity' && !isWeighed(tokens, k) ? asFiller(token) : as(token);
    if (!isOfLye(token) || idOf(token) === null) return token;
    return idOf(token) === id && chosen.includes(k) ? as(token) : asFiller(token);
  });
}

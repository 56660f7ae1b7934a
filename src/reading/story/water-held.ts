/**
 * A part of the water that was held back: "310 g of water, but dissolved the lye in only 250 g of it. The other 60 g went
 * to the basil". What was used counts; all of it, where the rest went in later.
 */

import { withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient, isMark, spoken, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

/** Words of which one stands in each sentence that tells of it. */
const cues: ReadonlySet<string> = new Set(
  'dissolved dissolve mixed stirred held kept keep hold left stayed remained still'.split(' '),
);

const makePatterns = () => ({
  /** "Dissolved the lye in only 250 g of it". */
  used: /\b(?:dissolved|dissolve|mixed|stirred) (?:up )?(?:(?:the|my|all) )*(?<f>@) (?:up )?(?:in|into|with) (?:(?:only|just|about) )*(?<c>#)(?= (?:of (?:it|that|the|my)\b|$|[.,;!]|and\b|but\b|so\b))/d,
  /** "60 g of the water I held back", "kept back 60 g of the water", "of which I kept back 50 g". */
  held: [
    /(?<r>#) of (?:(?:it|that|this|the|my) )+(?:@ )?(?!(?:[a-z]+ ){0,2}(?:solution|mix|mixture|oils?|fats?)\b)(?:[a-z]+ ){0,3}(?:(?:held|kept|hold|keep) (?:it )?back|stayed|remained|was left|were left|(?:is |are )?still (?:stands |sits |there )?in)\b/d,
    /\b(?:held|kept|hold|keep) back (?:only |just |about )*(?<r>#) of (?:(?:it|that|this|the|my) )+(?:@ )?/d,
    /\b(?:of|from) (?:which|that|it|this|these|those) (?:(?:i|we|ive|then|have|only|just|about) )*(?:held|kept|left) (?:back |out )?(?:only |just |about )*(?<r>#)/d,
    /\b(?:of|from) (?:which|that|it|this) (?:(?:about|only|just|some) )*(?<r>#) (?:(?:i|we|ive|then|was|were|is|are) )*(?:(?:held|kept) back|stayed|remained|left|still)\b/d,
  ],
});
let made: ReturnType<typeof makePatterns> | null = null;
const never =
  /\b(?:never|not|didnt|wasnt|without|no)\b[^.?!]{0,24}\b(?:add(?:ed|ing)?|us(?:e|ed|ing)|need(?:ed|ing)?|went|saw|got|put|go|did|done|happened)\b|\bnever did\b|\b(?:forgot|forgotten)\b/;
const later =
  /\b(?:trace|added|stirred in|went in|went into|goes in|goes into|came in|oils|fats|batter|pot|soap|later|afterwards|powder|sugar|salt|clay)\b/;
const unused =
  /\b(?:poured away|threw|thrown|tipped|binned|left over|leftover|stayed|still (?:in|there)|went (?:to|down|on)|spare|unused|drank|watered|held back|kept back)\b/;
const open =
  /\?|\b(?:if (?:i|we)|would|might|may|maybe|perhaps|next|last (?:time|batch|year|month|week)|usually|normally|always)\b/;
/** Sentences behind in which it is told what became of the rest. */
const mostBehind = 3;
/** Of the water, so much was used at the least. */
const leastUsed = 0.5;

/** The list with the water that was used. */
export function waterHeld(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const tells = (token: Token): boolean => cues.has(spoken(token).split(' ', 1)[0] ?? '');
  if (!tokens.some(tells)) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || !isAny(tokens, sentence.from, sentence.to, tells)) continue;
    const part = partIn(tokens, sentence);
    if (!part) continue;
    const { row, figure, isHeld } = part;
    const next = sentences.slice(k + 1, k + 1 + mostBehind).filter(({ paragraph }) => paragraph === sentence.paragraph);
    // "Did I do ok?"
    const asked = next.findIndex(({ text, figures }) => text.includes('?') && figures === 0);
    const behind = asked < 0 ? next : next.slice(0, asked);
    const text = [sentence.text.slice(sentence.placeOf(figure)), ...behind.map((one) => one.text)].join(' ');
    const fate = open.test(sentence.text + text) ? null : fateOf(text);
    if (fate === null) continue;
    const [all, one] = [weightAt(tokens, row.figure, row.figure), weightAt(tokens, figure, row.figure)];
    const [used, rest] = isHeld ? [all - one, one] : [one, all - one];
    const out = [...tokens];
    out[figure] = asAside(tokens[figure] as Figure, 'a part of what was said');
    // "of the water"
    for (let at = figure + 1; at - figure <= 3; at++) {
      const name = tokens[at];
      if (isWater(name) && at !== row.at) out[at] = asFiller(name);
    }
    let to = sentence.to;
    for (let at = sentence.from; at < (behind.at(-1)?.to ?? sentence.to); at++) {
      if (at === figure || at === row.figure || !isPlain(tokens[at])) continue;
      if (![used, rest].some((weight) => isSum(weight, weightAt(tokens, at, row.figure)))) continue;
      if (isIngredient(tokens[at + 1]) && !isWater(tokens[at + 1])) continue;
      out[at] = asAside(tokens[at] as Figure, 'a part of what was said');
      if (isWater(tokens[at + 1])) out[at + 1] = asFiller(tokens[at + 1] as Token);
      to = behind.find((next) => next.to > at)?.to ?? to;
    }
    const was = tokens[row.figure] as Figure;
    if (fate === 'later') return { tokens: out, told: [] };
    const now = withValue(was.quantity, used);
    out[row.figure] = { ...was, quantity: { ...now, numbers: was.quantity.numbers } };
    const note = `I took ${written(now)} of water, not ${written(was.quantity)}, as the post says that the rest was not used.`;
    return { tokens: out, told: [{ text: note, gone: [was.quantity], from: sentence.from, to, settles: true }] };
  }
  return none;
}

const isWater = (token: Token | undefined): token is Extract<Token, { t: 'name' }> =>
  token?.t === 'name' && token.meaning.kind === 'water';

/** What became of what was held back; null where it is not told. */
const fateOf = (text: string): 'unused' | 'later' | null =>
  never.test(text) ? 'unused' : later.test(text) ? 'later' : unused.test(text) ? 'unused' : null;

const firstIn = (patterns: readonly RegExp[], text: string) =>
  patterns.map((pattern) => pattern.exec(text)).find((match) => match !== null)?.indices?.groups;

/** "Water: had 300 g ready". */
function rowsInWords(tokens: readonly Token[], end: number): readonly Weighed[] {
  return tokens.slice(0, end).flatMap((name, at) => {
    if (!isWater(name)) return [];
    let figure = at + 1;
    while (figure - at <= mostWords && (tokens[figure]?.t === 'word' || isMark(tokens[figure], ':'))) figure++;
    return figure < end && isPlain(tokens[figure]) ? [{ at, figure, id: 'water' }] : [];
  });
}
const mostWords = 5;

/** The water's row, and the part of it that was used, or held back. */
function partIn(
  tokens: readonly Token[],
  sentence: Sentence,
): { readonly row: Weighed; readonly figure: number; readonly isHeld: boolean } | null {
  made ??= makePatterns();
  const used = made.used.exec(sentence.text)?.indices?.groups;
  const held = used ? null : firstIn(made.held, sentence.text);
  const place = (used?.['c'] ?? held?.['r'])?.[0];
  if (place === undefined) return null;
  const figure = sentence.tokenAt(place);
  const name = tokens[sentence.tokenAt(used?.['f']?.[0] ?? 0)];
  if (used && !(name?.t === 'name' && name.meaning.kind === 'alkali')) return null;
  const of = [2, 3].map((step) => tokens[figure + step]).find(isIngredient);
  if (held && of && !isWater(of)) return null;
  // "in 250 g of the 310 g water"
  const end = wordAt(tokens, figure + 1) === 'of' ? figure + 6 : figure;
  const listed = rowsBefore(tokens, end).filter((one) => one.figure !== figure && isWater(tokens[one.at]));
  const waters = listed.length > 0 || used ? listed : rowsInWords(tokens, figure);
  const [row, ...more] = waters;
  if (!row || more.length > 0) return null;
  // "I weighed the jug and 25 g of it had stayed behind": of what, nobody says
  if (held && !of && row.at < sentence.from && !/\bback\b/.test(sentence.text)) return null;
  // "of it", where something else was named since
  if (held && !of && isAny(tokens, Math.max(row.at, row.figure) + 1, figure, isIngredient)) return null;
  const share = weightAt(tokens, figure, row.figure) / weightAt(tokens, row.figure, row.figure);
  return (used ? share >= leastUsed && share < 1 : share > 0 && share <= 1 - leastUsed)
    ? { row, figure, isHeld: !used }
    : null;
}

/** What was weighed again of a fat that was spilt: "knocked the jug of olive over. What was left: 310 g, not the 400". */
import {
  endsDotted,
  isAny,
  isFat,
  isIngredient,
  isStop,
  isWeight,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf, weighedThings } from '../words/weighed.ts';
import { goesIn } from './drawn-from.ts';

const spilling = /^(?:knocked|spilt|spilled|tipped|dropped|overturned|upset|kicked|toppled|slopped)$/;
const leaving = /^(?:went|goes|gave|given|fed|binned|bin|thrown)$/;
/** Tokens of a sentence that are looked at to either side, and from "left" to its weight. */
const reach = 30;
const longestWay = 8;

/** "What was left", "what remained": the last word of it. */
const isLeft = (tokens: readonly Token[], k: number): boolean =>
  (/^(?:left|remaining)$/.test(wordAt(tokens, k)) &&
    /^(?:was|is)$/.test(wordAt(tokens, k - 1)) &&
    wordAt(tokens, k - 2) === 'what') ||
  (/^(?:remained|remains)$/.test(wordAt(tokens, k)) && wordAt(tokens, k - 1) === 'what');

/** The weight behind it, with no name and no other figure between; -1 where none stands there. */
function weightBehind(tokens: readonly Token[], k: number): number {
  let at = k + 1;
  while (at - k <= longestWay && tokens[at]?.t !== 'quantity' && !isStop(tokens[at]) && !isIngredient(tokens[at])) at++;
  const isOther = isIngredient(tokens[at + 1]) && !endsDotted(tokens[at]);
  if (!isWeight(tokens[at]) || at === k + 1 || isOther || !goesIn(tokens, at)) return -1;
  const { to } = sentenceAt(tokens, at, reach);
  return isAny(tokens, at, to, (one) => leaving.test(spoken(one))) ? -1 : at;
}

/** The one fat that was spilt, in the sentence before token `from`, where the post weighs it nowhere. */
function spiltBefore(tokens: readonly Token[], from: number): Token | null {
  const before = sentenceAt(tokens, Math.max(0, from - 2), reach);
  const names = tokens.slice(before.from, before.to).filter(isIngredient);
  const [fat] = names;
  const isSpilt = isAny(tokens, before.from, before.to, (one) => spilling.test(spoken(one)));
  return isSpilt && names.length === 1 && isFat(fat) && !weighedThings(tokens).has(thingOf(fat)) ? fat : null;
}

/** The tokens with the name of the fat before what was left of it. */
export function whatWasLeft(tokens: readonly Token[]): readonly Token[] {
  for (let k = 2; k < tokens.length; k++) {
    const figure = isLeft(tokens, k) ? weightBehind(tokens, k) : -1;
    const fat = figure < 0 ? null : spiltBefore(tokens, sentenceAt(tokens, k, reach).from);
    const stand = tokens[figure - 1];
    if (fat && stand) return tokens.with(figure - 1, { ...fat, from: stand.from, to: stand.to });
  }
  return tokens;
}

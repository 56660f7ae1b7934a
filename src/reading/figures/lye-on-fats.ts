/**
 * "I used 128 g on 950 g of fat", "my KOH is 85 %. Used 240 g on 500 g olive, 350 g coconut": a weight of nothing that is
 * named beside it, to all the fats: the lye, which was spoken of.
 */
import type { Signals } from '../words/signals.ts';
import {
  endsDotted,
  isFat,
  isIngredient,
  isMark,
  isRole,
  isStop,
  isWeight,
  massOf,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

/** Tokens back to the alkali that is meant, at the most. */
const longestWay = 50;

/** Alkali to fats by mass, in soaps that people make. */
const usual = { least: 0.08, most: 0.3 } as const;

type Name = Extract<Token, { t: 'name' }>;
const isLye = (token: Token | undefined): token is Name => isIngredient(token) && token.meaning.kind === 'alkali';

const isWeighed = (tokens: readonly Token[], k: number): boolean =>
  [k - 2, k - 1, k + 1, k + 2].some((at) => isWeight(tokens[at]));

const isFats = (token: Token | undefined): boolean =>
  isRole(token, 'total-fats') || /^(?:oils?|fats?|butters?)$/.test(spoken(token));

const using = /^(?:used?|using|took|take|put|weighed)$/;

/** The fats that are listed from token `from` on, in grams or in the unit of the first; `NaN` where none is. */
function fatsListed(tokens: readonly Token[], from: number): number {
  let sum = Number.NaN;
  for (let k = from; !isStop(tokens[k]) && k - from < longestWay; k++) {
    const token = tokens[k];
    if (!massOf(token) || token.quantity.dim === 'volume') continue;
    if (isFat(tokens[wordAt(tokens, k + 1) === 'of' ? k + 2 : k + 1])) sum = (sum || 0) + token.quantity.value;
    if (endsDotted(token)) break;
  }
  return sum;
}

/** The tokens in which the word between two such weights is the name of the alkali. */
export function lyeOnFats(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  for (const k of figures) {
    const token = tokens[k];
    const joint = tokens[k + 1];
    if (!isWeight(token) || !joint || !/^(?:on|to|for|with|against)$/.test(wordAt(tokens, k + 1))) continue;
    const at = /^(?:the|my|those|these|all)$/.test(wordAt(tokens, k + 2)) ? k + 3 : k + 2;
    const whole = tokens[at];
    const isTotal = isWeight(whole) && isFats(tokens[wordAt(tokens, at + 1) === 'of' ? at + 2 : at + 1]);
    if (!isTotal && !using.test(wordAt(tokens, k - 1))) continue;
    const share = token.quantity.value / (isTotal ? whole.quantity.value : fatsListed(tokens, at));
    if (!(share >= usual.least && share <= usual.most) || isIngredient(tokens[k - 1]) || isMark(tokens[k - 1], ':'))
      continue;
    const lye = tokens.slice(Math.max(0, k - longestWay), k).findLast(isTotal ? isLye : isIngredient);
    if (!isLye(lye) || isStop(tokens[k - 1]) || tokens.some((one, n) => isLye(one) && isWeighed(tokens, n))) continue;
    return tokens.with(k + 1, { ...lye, from: joint.from, to: joint.to });
  }
  return tokens;
}

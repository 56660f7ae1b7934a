/**
 * "The castor goes in after the cook", "after the cook I stir in the shea": a fat of the list, named once more without
 * its weight, that is put in after the cook.
 */

import type { Binding } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { endsDotted, isFat, isIngredient, isMark, isRole, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';

/** What is said beside their names of fats that are put in. */
const putting =
  /^(?:go(?:es)?|went|held|going|stirs?|stirred|adds?|added|adding|folds?|folded|mix|mixed|put|comes?|for|kept|melted|poured|work|worked)(?: (?:in|after|back|aside|out))*$/;
const beside =
  /^(?:the|my|all|of|it|that|this|one|which|only|then|and|with|too|also|both|is|are|was|were|will|be|gets?|got|i|we|just|always|in|to|out|back|aside|apart|until|till|finally|once|when|as|soon)$/;
/** What stands before such a clause in its sentence. */
const leading = /^(?:but|except|process|hp|so|then|now)$/;
const cooking = /^(?:process|hp)$/;
const most = 16;

/** The fats named in a clause from `k` on, in steps of `step`; none where it says more than that they are put in. */
function namedFrom(tokens: readonly Token[], k: number, step: 1 | -1): readonly string[] {
  const fats: string[] = [];
  let isPut = step === -1 && putting.test(spoken(tokens[k]));
  for (let at = k + step; Math.abs(at - k) <= most; at += step) {
    const token = tokens[at];
    const word = spoken(token);
    if (isFat(token)) fats.push(thingOf(token));
    else if (isStop(token) || endsDotted(token) || isMark(token, ':()[]–—') || (step === -1 && leading.test(word)))
      return isPut || cooking.test(word) ? fats : [];
    else if (!isMark(token, ',') && !isIngredient(token)) {
      if (putting.test(word)) isPut = true;
      else if (!beside.test(word)) return [];
    }
  }
  return [];
}

/** The sentence of token `k` asks. */
function isAsking(tokens: readonly Token[], k: number): boolean {
  let at = k;
  while (!isStop(tokens[at])) at++;
  return isMark(tokens[at], '?');
}

/** Where such fats stand in the list. */
export function namedAfter(tokens: readonly Token[], items: readonly Item[], binding: Binding): ReadonlySet<number> {
  const found = new Set<number>();
  if (!binding.mentions.some((k) => isFat(tokens[items[k]?.from ?? -1]))) return found;
  tokens.forEach((token, k) => {
    if (!isRole(token, 'after') || isAsking(tokens, k)) return;
    const isHead = k === 0 || isStop(tokens[k - 1]) || endsDotted(tokens[k - 1]);
    for (const id of namedFrom(tokens, k, isHead ? 1 : -1)) {
      const rows = binding.groups.flatMap(({ things }) =>
        things.flatMap((n) => {
          const item = items[n];
          const name = tokens[item?.from ?? -1];
          return item && isFat(name) && thingOf(name) === id ? [item.from] : [];
        }),
      );
      if (rows.length === 1) found.add(rows[0] as number);
    }
  });
  return found;
}

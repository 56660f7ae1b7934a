/** "I nearly put in 241 g of lye, thank God for the second look": a weight that nobody took, beside a list that has it. */
import type { Signals } from '../words/signals.ts';
import { isIngredient, isWeight, sentenceAt, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { weighedElsewhere, weighedThings } from '../words/weighed.ts';

const deed =
  /^(?:weigh(?:ed|ing)?|put(?:ting)?|pour(?:ed|ing)?|us(?:e|ed|ing)|tip(?:ped|ping)?|add(?:ed|ing)?|took|tak(?:e|ing)|wrote|writ(?:e|ing)|measur(?:e|ed|ing)|dissolv(?:e|ed|ing)|threw|throw(?:ing)?|dump(?:ed|ing)?)$/;
const longest = 30;
const longestWay = 6;
/** Names of a list, at the least. */
const leastNames = 3;

/** "Nearly put", "almost used", "was about to pour", "came close to tipping" stands shortly before the figure at `k`. */
function isNearly(tokens: readonly Token[], from: number, k: number): boolean {
  for (let at = Math.max(from, k - longestWay); at < k; at++) {
    const word = wordAt(tokens, at);
    const isSo =
      /^(?:nearly|almost)$/.test(word) || (word === 'to' && /^(?:about|close)$/.test(wordAt(tokens, at - 1)));
    if (isSo && deed.test(wordAt(tokens, at + 1))) return true;
  }
  return false;
}

/** The tokens with such a weight set aside. */
export function nearlyDone(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const figure = tokens[k];
    if (!isWeight(figure)) continue;
    const { from, to } = sentenceAt(tokens, k, longest);
    if (!isNearly(tokens, from, k)) continue;
    const inside = tokens.slice(from, to);
    const names = inside.flatMap((one, n) => (isIngredient(one) ? [from + n] : []));
    const [name] = names;
    const isAlone = inside.filter((one) => one.t === 'quantity').length === 1 && names.length <= 1;
    const isListed = name === undefined ? weighedThings(tokens).size >= leastNames : weighedElsewhere(tokens, name);
    if (!isAlone || !isListed) continue;
    out ??= [...tokens];
    out[k] = asAside(figure, 'what was nearly done');
    const named = name === undefined ? undefined : tokens[name];
    if (name !== undefined && named) out[name] = asFiller(named);
  }
  return out ?? tokens;
}

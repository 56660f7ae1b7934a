/** Weights of alkali that tell a rule or a mishap beside the one of this batch: "she took 200 g to the kilo". */
import type { Signals } from '../words/signals.ts';
import { isAny, isIngredient, isMark, isRole, isWeight, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import { asAside, type Token } from '../words/tokens.ts';
import { weighedThings } from '../words/weighed.ts';

const isLye = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'alkali';

const isWeighed = (tokens: readonly Token[], k: number): boolean =>
  [k - 2, k - 1, k + 1, k + 2].some((at) => isWeight(tokens[at]));

/** "To the kilo", "per kilo", "for each kilo", "to 1 kg" from token `at` on: where it ends; -1 where none stands. */
function kiloAt(tokens: readonly Token[], at: number): number {
  const first = tokens[at];
  if (isRole(first, 'price') && first?.t === 'name' && /^per (?:kilo|kg|kilogram)$/i.test(first.text)) return at + 1;
  if (!/^(?:to|per|for|a|in|on)$/.test(wordAt(tokens, at)) && !isWeight(first)) return -1;
  let end = isWeight(first) ? at : at + 1;
  while (/^(?:the|a|each|every)$/.test(wordAt(tokens, end)) || isRole(tokens[end], 'each')) end++;
  const whole = tokens[end];
  if (isWeight(whole)) return whole.quantity.value === 1000 && !isWeight(tokens[end + 1]) ? end + 1 : -1;
  return /^(?:kilo|kg|kilogram)$/.test(wordAt(tokens, end)) ? end + 1 : -1;
}

/** "One part lye to seven of fat", "1 part of lye to 8 parts oil" from the figure at `k` on: the figure of the fat; -1 where none. */
function partsAt(tokens: readonly Token[], k: number): number {
  const token = tokens[k];
  if (token?.t !== 'quantity' || !/^(?:parts|bare)$/.test(token.quantity.dim)) return -1;
  const lye = wordAt(tokens, k + 1) === 'of' ? k + 2 : k + 1;
  const fat = /^(?:to|for|on)$/.test(wordAt(tokens, lye + 1)) ? lye + 2 : -1;
  const [whole, next] = [tokens[fat], tokens[wordAt(tokens, fat + 1) === 'of' ? fat + 2 : fat + 1]];
  const isWhole = whole?.t === 'quantity' && /^(?:parts|bare)$/.test(whole.quantity.dim);
  return isLye(tokens[lye]) && isWhole && (isRole(next, 'total-fats') || /^(?:fats?|oils?)$/.test(spoken(next)))
    ? fat
    : -1;
}

const once = /^(?:once|ago|last|earlier|time|formerly)$/;

/** "60 g of lye less", "60 g less lye", "20 g too much lye". */
function isDifference(tokens: readonly Token[], k: number): boolean {
  const words: string[] = [];
  let lye = false;
  for (let at = k + 1; at < k + 6; at++) {
    const word = wordAt(tokens, at);
    if (isLye(tokens[at])) lye = true;
    else if (/^(?:of|too|less|more|much|little|short|the|my)$/.test(word)) words.push(word);
    else break;
  }
  return lye && /\b(?:less|more|too much|too little|short)\b/.test(words.join(' '));
}

/** Sets such weights aside where the alkali of this batch is weighed elsewhere. */
export function byTheKilo(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const token = tokens[k];
    const fat = partsAt(tokens, k);
    const parts = tokens[fat];
    if (
      token?.t === 'quantity' &&
      parts?.t === 'quantity' &&
      tokens.some((one, n) => isLye(one) && isWeighed(tokens, n))
    ) {
      out ??= [...tokens];
      out[k] = asAside(token, 'so much to the fat');
      out[fat] = asAside(parts, 'so much to the fat');
      continue;
    }
    if (!isWeight(token)) continue;
    const own = isLye(tokens[k + 1]) ? k + 1 : wordAt(tokens, k + 1) === 'of' && isLye(tokens[k + 2]) ? k + 2 : k;
    const kilo = kiloAt(tokens, own + 1);
    const isRule = kilo > 0 && !isOfOther(tokens, k, kilo);
    const told = !isRule && isDifference(tokens, k) ? sentenceAt(tokens, k, 20) : null;
    const isMishap =
      told !== null && isAny(tokens, told.from, told.to, (one) => one.t === 'word' && once.test(one.text));
    if (!isRule && !isMishap) continue;
    const isNamed = isAny(tokens, k - 2, k + 5, (one) => isLye(one));
    if ((weighedThings(tokens).get('alkali') ?? 0) <= (isNamed ? 1 : 0)) continue;
    out ??= [...tokens];
    out[k] = asAside(token, isRule ? 'so much to the kilo' : 'a difference of another batch');
    const whole = tokens[kilo - 1];
    if (isRule && isWeight(whole)) out[kilo - 1] = asAside(whole, 'so much to the kilo');
  }
  return out ?? tokens;
}

/** "Salt, 20 g to the kilo", "20 g to the kilo of rosemary". */
function isOfOther(tokens: readonly Token[], k: number, end: number): boolean {
  const before = isMark(tokens[k - 1], ',:=-–') ? tokens[k - 2] : tokens[k - 1];
  const behind = wordAt(tokens, end) === 'of' ? tokens[end + 1] : tokens[end];
  return [before, behind].some((one) => isIngredient(one) && !isLye(one));
}

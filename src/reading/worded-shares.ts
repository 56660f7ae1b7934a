/** Shares in words: `10 % of 800 g`, `half coconut, half lard`, `equal amounts of`. */
import { plainQuantity } from './quantities.ts';
import { signal } from './signal-words.ts';
import { givesAt, type Signals } from './signals.ts';
import { isAny, isEach, isWeight } from './token-is.ts';
import { asFiller, type Token } from './tokens.ts';

/** `10 % of 800 g`: the weight that shares are of. */
export function shareBase(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const at of figures) {
    const before = tokens[at];
    if (before?.t !== 'quantity' || before.quantity.dim !== 'percent') continue;
    const k = at + 1;
    const [token, after] = [tokens[k], tokens[k + 1]];
    if (token?.t !== 'word' || token.text !== 'of' || !isWeight(after)) continue;
    out ??= [...tokens];
    const meaning = { kind: 'role', id: 'total-fats' } as const;
    out[k] = { t: 'name', from: token.from, to: token.to, text: 'of', meaning, how: 'name', meant: 'of fats' };
  }
  return out ?? tokens;
}

/** `half coconut, half lard`, `one third olive, two thirds lard`: shares where they make the whole. */
export function fractionShares(tokens: readonly Token[]): readonly Token[] {
  const found = new Map<number, number>();
  tokens.forEach((token, k) => {
    if (token.t !== 'name' || token.meaning.kind !== 'fat') return;
    let at = k - 1;
    for (let word = tokens[at]; word?.t === 'word' && /^(of|the|is)$/.test(word.text); word = tokens[--at]);
    const before = tokens[at];
    if (before?.t === 'word' && /^(half|quarter)$/.test(before.text))
      found.set(at, before.text === 'half' ? 0.5 : 0.25);
    else if (
      before?.t === 'quantity' &&
      before.quantity.inWords &&
      before.quantity.dim === 'bare' &&
      before.quantity.value < 1
    )
      found.set(at, before.quantity.value);
  });
  const sum = [...found.values()].reduce((all, value) => all + value, 0);
  if (found.size < 2 || Math.abs(sum - 1) > 0.0101) return tokens;
  const out = [...tokens];
  for (const [k, value] of found) {
    const token = tokens[k];
    if (token?.t !== 'quantity' && token?.t !== 'word') continue;
    const { text, numbers } = token.t === 'quantity' ? token.quantity : { text: token.text, numbers: [] };
    out[k] = {
      t: 'quantity',
      from: token.from,
      to: token.to,
      quantity: { ...inWords, dim: 'percent', value, text, numbers },
    };
  }
  return out;
}

/** What every amount in words has in common. */
const inWords = { ...plainQuantity, inWords: true } as const;

/** One fat, with none listed behind it, in a post that weighs others. */
function isAlone(tokens: readonly Token[], k: number): boolean {
  const [fat, behind, next] = [tokens[k], tokens[k + 1], tokens[k + 2]];
  if (fat?.t !== 'name' || fat.meaning.kind !== 'fat' || behind?.t === 'name') return false;
  const joins = behind?.t === 'sign' ? behind.text === ',' : behind?.t === 'word' && behind.text === 'and';
  if (joins && next?.t === 'name') return false;
  return tokens.filter((one) => one.t === 'quantity' && one.quantity.dim === 'mass').length >= leastWeights;
}

/** Weights of a recipe, at the least. */
const leastWeights = 3;

/** `equal amounts of olive, coconut and lard` as one part each. */
export function equalParts(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (!givesAt(signals, k, signal.equal)) continue;
    if (token?.t !== 'name' || token.meaning.kind !== 'role' || token.meaning.id !== 'equal') continue;
    const next = tokens[k + 1];
    // "equal parts olive, coconut and lard, 300 g each"
    if (
      isAny(
        tokens,
        k + 1,
        k + 16,
        (one, at) =>
          one.t === 'quantity' && one.quantity.dim === 'mass' && (one.quantity.each || isEach(tokens[at + 1])),
      )
    ) {
      out ??= [...tokens];
      out[k] = asFiller(token);
      continue;
    }
    // "so I took the same amount of lard"
    if (/^(?:the )?same /i.test(token.text) && isAlone(tokens, k + 1)) {
      out ??= [...tokens];
      out[k] = asFiller(token);
      continue;
    }
    // "for the same amount of oils" speaks of a sum
    if (next?.t === 'name' && next.meaning.id === 'total-fats') continue;
    out ??= [...tokens];
    out[k] = {
      t: 'quantity',
      from: token.from,
      to: token.to,
      quantity: { ...inWords, dim: 'parts', value: 1, each: true, text: token.text, numbers: [] },
    };
  }
  return out ?? tokens;
}

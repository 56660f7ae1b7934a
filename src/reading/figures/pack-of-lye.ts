/** The pack that alkali was bought in, where the post asks how much of it goes in: "a 500 g tub of caustic soda". */
import { packed } from '../columns/columns.ts';
import { signal } from '../words/signal-words.ts';
import { givesAt, type Signals } from '../words/signals.ts';
import { isMark, isPot, isRole, isStop, isWeight, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';

const isAlkali = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'alkali';

/** Behind the little words that stand between an amount, its pack and what is in it. */
function behindLight(tokens: readonly Token[], from: number, step: 1 | -1): number {
  let k = from;
  while (Math.abs(k - from) <= 3 && (/^(?:of|the|my|about|with)$/.test(wordAt(tokens, k)) || isMark(tokens[k], ',(:-')))
    k += step;
  return k;
}

/** Where the pack stands in `500 g tub of caustic soda`, `tub of caustic soda, 500 g`; -1 where none does. */
function packAt(tokens: readonly Token[], k: number): number {
  const pot = behindLight(tokens, k + 1, 1);
  if (isPot(tokens[pot]) && isAlkali(tokens[behindLight(tokens, pot + 1, 1)])) return pot;
  const name = behindLight(tokens, k - 1, -1);
  const before = behindLight(tokens, name - 1, -1);
  return isAlkali(tokens[name]) && isPot(tokens[before]) ? before : -1;
}

/** "I've got 500 g of caustic soda at home", "I bought 1 kg of NaOH". */
function isOwned(tokens: readonly Token[], k: number): boolean {
  const verb = [k - 1, k - 2].find((at) => /^(?:bought|have|ive|got|own|ordered)$/.test(wordAt(tokens, at)));
  return verb !== undefined && isAlkali(tokens[behindLight(tokens, k + 1, 1)]);
}

/** How far behind "how much" its sentence is looked at. */
const farthest = 12;

/** What "how much" asks for: of the pack or of what is in it, by its name or by "it", or a weight of no name. */
function askedAt(tokens: readonly Token[], k: number): 'of it' | 'open' | null {
  if (wordAt(tokens, k) !== 'how' || wordAt(tokens, k + 1) !== 'much') return null;
  for (let at = k + 2; at - k <= farthest && !isStop(tokens[at]); at++) {
    const token = tokens[at];
    if (isAlkali(token) || isRole(token, 'pot')) return 'of it';
    if (/^(?:it|that|this)$/.test(wordAt(tokens, at)) && wordAt(tokens, at - 1) === 'of') return 'of it';
    // "how much water do I need?"
    if (token?.t === 'quantity' || (token?.t === 'name' && !isRole(token, 'target'))) return null;
  }
  return 'open';
}

/** "A 500 g tub of caustic soda for 6.50". */
const isPrice = (tokens: readonly Token[], k: number): boolean => {
  const token = tokens[k];
  return token?.t === 'quantity' && token.quantity.dim === 'bare' && wordAt(tokens, k - 1) === 'for';
};

/** The tokens with the one figure of the alkali set aside, where it is that of a pack and the post asks how much of it. */
export function packOfLye(tokens: readonly Token[], signals: Signals): readonly Token[] {
  const asked = tokens.map((_, k) => (givesAt(signals, k, signal.asking) ? askedAt(tokens, k) : null));
  if (asked.every((one) => one === null)) return tokens;
  let found: { readonly k: number; readonly pack: number } | null = null;
  for (const k of signals.figures) {
    if (!isWeight(tokens[k])) continue;
    const pack = packAt(tokens, k);
    const besides = isAlkali(tokens[behindLight(tokens, k + 1, 1)]) || isAlkali(tokens[behindLight(tokens, k - 1, -1)]);
    if (pack < 0 && !besides) continue;
    // what goes in is weighed, too
    if (found) return tokens;
    if (pack < 0 && !(asked.includes('of it') && isOwned(tokens, k))) return tokens;
    found = { k, pack };
  }
  if (!found) return tokens;
  const { k, pack } = found;
  const end = Math.max(k, pack) + 5;
  return tokens.map((one, at) => {
    if (at === pack) return asFiller(one);
    if (one.t !== 'quantity') return one;
    if (at === k) return asAside(one, packed);
    return at > k && at < end && isPrice(tokens, at) ? asAside(one, 'a price') : one;
  });
}

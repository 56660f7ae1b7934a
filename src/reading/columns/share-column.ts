/**
 * A column that says each weight of the table once more as a share of the fats, of the water and the alkali too:
 * `lard 600 60`, `olive 400 40`, `NaOH 138 13.8`. Where every row agrees it is set aside; where one does not, it stays.
 */

import type { Quantity } from '../words/quantities.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { hasTab, isTab, linesOf } from './columns.ts';

interface Pair {
  readonly kind: string;
  readonly weight: Quantity;
  readonly share: Quantity;
  readonly at: number;
}

const isPlain = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.upTo === null && token.quantity.second === null;

/** A row of a name and two figures, each in its cell. */
function pairIn(tokens: readonly Token[], from: number, to: number): Pair | null {
  const figures: number[] = [];
  for (let k = from; k < to; k++) if (tokens[k]?.t === 'quantity') figures.push(k);
  const [first = -1, second = -1] = figures;
  const [weight, share] = [tokens[first], tokens[second]];
  if (figures.length !== 2 || second !== first + 2 || !isTab(tokens[first + 1])) return null;
  if (!isPlain(weight) || !isPlain(share) || !/^(?:bare|mass)$/.test(weight.quantity.dim)) return null;
  const name = tokens.slice(from, first).findLast((token) => token.t === 'name');
  return /^(?:bare|percent)$/.test(share.quantity.dim) && name?.t === 'name'
    ? { kind: name.meaning.kind, weight: weight.quantity, share: share.quantity, at: second }
    : null;
}

const percentOf = ({ dim, value }: Quantity): number => (dim === 'percent' ? 100 * value : value);

/** As near as a share of so many decimals is written. */
const roundedTo = ({ text }: Quantity): number => 0.51 * 10 ** -(/[.,](\d+)/.exec(text)?.[1]?.length ?? 0);

export function shareColumn(tokens: readonly Token[]): readonly Token[] {
  if (!hasTab(tokens)) return tokens;
  const pairs = linesOf(tokens).flatMap(({ from, to }) => pairIn(tokens, from, to) ?? []);
  const fats = pairs.filter(({ kind }) => kind === 'fat');
  const whole = fats.reduce((sum, { weight }) => sum + weight.value, 0);
  if (fats.length < 2 || fats.length === pairs.length) return tokens;
  const agrees = ({ weight, share }: Pair): boolean =>
    Math.abs((100 * weight.value) / whole - percentOf(share)) <= roundedTo(share);
  if (!pairs.every(agrees)) return tokens;
  const out = [...tokens];
  for (const { at } of pairs) {
    const token = out[at];
    if (token?.t === 'quantity') out[at] = asAside(token, 'a share that agrees');
  }
  return out;
}

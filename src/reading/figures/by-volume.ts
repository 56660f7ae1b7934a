/** "Olive oil 16 oz (by volume)", "16 ounces (liquid) of olive oil": ounces that measure, not weigh. */
import { withUnit } from '../columns/columns.ts';
import type { Signals } from '../words/signals.ts';
import { endsDotted, isIngredient, isMark, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';

/** The words behind token `at` that say so; null where none do. */
function saidBehind(tokens: readonly Token[], at: number): { readonly from: number; readonly to: number } | null {
  let from = at;
  if (isIngredient(tokens[from])) from++;
  const isBracketed = isMark(tokens[from], '([');
  let to = isBracketed ? from + 1 : from;
  const isBy = /^(?:by|in)$/.test(spoken(tokens[to]));
  if (isBy) to++;
  const word = spoken(tokens[to]);
  if (!/^(?:volume|vol)$/.test(word) && !(isBracketed && /^(?:liquid|fluid)$/.test(word))) return null;
  if (!isBy && !isBracketed) return null;
  return { from, to: to + 1 };
}

const scaled = (value: number | null, factor: number): number | null => (value === null ? null : value / factor);

function asFluid({ quantity, ...token }: Figure): Token {
  const factor = quantity.unit?.factor ?? 1;
  const { value, other, upTo } = quantity;
  const bare = { ...quantity, value: value / factor, other: scaled(other, factor), upTo: scaled(upTo, factor) };
  return { ...token, quantity: withUnit(bare, 'floz') };
}

/** The tokens with such ounces as fluid ounces. */
export function byVolume(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || token.quantity.unit?.id !== 'oz' || endsDotted(token)) continue;
    const said = saidBehind(tokens, k + 1);
    if (!said) continue;
    out ??= [...tokens];
    out[k] = asFluid(token);
    for (let at = said.from; at < said.to; at++) if (tokens[at]?.t !== 'sign') out[at] = asFiller(tokens[at] as Token);
  }
  return out ?? tokens;
}

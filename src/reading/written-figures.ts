/** Figures that are written in their own way: a dash before every weight, a unit before its figure. */
import { unit } from '../units/units.ts';
import { withUnit } from './columns.ts';
import type { Lexicon } from './lexicon.ts';
import { isEach, isMark, isWeight } from './token-is.ts';
import type { Token } from './tokens.ts';

/** "olive -500 g, lye -97 g": a stroke before every weight is a dash. */
export function dashed(tokens: readonly Token[]): readonly Token[] {
  const weights = tokens.filter(isWeight);
  if (weights.length < 3 || !weights.every(({ quantity }) => quantity.negative)) return tokens;
  return tokens.map((token) =>
    isWeight(token) ? { ...token, quantity: { ...token.quantity, negative: false } } : token,
  );
}

/** `"g": 250`, `grams = 250`, `bar_size_mm: [80, 55, 25]`, `superfat_pct: 5`: the unit stands before its figures. */
export function unitsBefore(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const word = tokens[k];
    if (word?.t !== 'word' || tokens[k + 1]?.t !== 'sign') continue;
    const keyed = isMark(tokens[k - 1], '_');
    const share = keyed && /^(pct|percent|perc)$/.test(word.text);
    const degrees = keyed && /^[cf]$/.test(word.text) ? `°${word.text.toUpperCase()}` : undefined;
    const hit = share ? null : (degrees ?? lexicon.units.next?.get(word.text)?.hit);
    const dimension = hit ? unit(hit).dimension : null;
    if (!share && !(dimension === 'mass' || (keyed && dimension !== null))) continue;
    let at = k + 1;
    let pointed = false;
    // "grams_each: 118"
    if (isMark(tokens[at], '_') && isEach(tokens[at + 1])) at += 2;
    for (; isMark(tokens[at], '"\':='); at++) pointed ||= isMark(tokens[at], ':=');
    if (!pointed) continue;
    const many = isMark(tokens[at], '[{') ? at : null;
    for (let j = many ?? at; j < tokens.length; j++) {
      const token = tokens[j];
      if (token?.t === 'line' || isMark(token, ']}')) break;
      if (token?.t === 'quantity' && token.quantity.dim === 'bare') {
        const { quantity } = token;
        out ??= [...tokens];
        out[j] = {
          ...token,
          quantity: hit ? withUnit(quantity, hit) : { ...quantity, dim: 'percent', value: quantity.value / 100 },
        };
        if (share || degrees) out[k] = { ...word, sort: 'filler' };
      }
      if (many === null) break;
    }
  }
  return out ?? tokens;
}

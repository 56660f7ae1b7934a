/** Figures that are written in their own way: a dash before every weight, a unit before its figure. */
import { unit } from '../../units/units.ts';
import { withUnit } from '../columns/columns.ts';
import type { Lexicon } from '../words/lexicon.ts';
import {
  endsDotted,
  isEach,
  isIngredient,
  isMark,
  isRole,
  isStop,
  isWeight,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { weighedElsewhere } from '../words/weighed.ts';

/** "olive -500 g, lye -97 g": a stroke before every weight is a dash. */
export function dashed(tokens: readonly Token[]): readonly Token[] {
  const weights = tokens.filter(isWeight);
  if (weights.length < 3 || !weights.every(({ quantity }) => quantity.negative)) return tokens;
  return tokens.map((token) =>
    isWeight(token) ? { ...token, quantity: { ...token.quantity, negative: false } } : token,
  );
}

/** "Coconut weighs 200 g": no total, where a row begins with a name that has no other weight. */
export function weighsSo(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  tokens.forEach((token, k) => {
    if (!isRole(token, 'total') || !/^weighs$/i.test(spoken(token))) return;
    if (!isIngredient(tokens[k - 1]) || !isWeight(tokens[k + 1]) || weighedElsewhere(tokens, k - 1)) return;
    const begin = /^(?:the|my|our)$/.test(wordAt(tokens, k - 2)) ? k - 3 : k - 2;
    const before = tokens[begin];
    if (!(isStop(before) || isMark(before, ',:') || endsDotted(before) || wordAt(tokens, begin) === 'and')) return;
    out ??= [...tokens];
    out[k] = asFiller(token);
  });
  return out ?? tokens;
}

/** `olive gr 650 - castor gr. 50`, `lard kg 1`: the unit stands right before its figure, behind a name. */
function behindUnit(tokens: readonly Token[], k: number, lexicon: Lexicon): [number, string] | null {
  const at = isMark(tokens[k + 1], '.') ? k + 2 : k + 1;
  const figure = tokens[at];
  if (figure?.t !== 'quantity' || figure.quantity.dim !== 'bare' || figure.quantity.inWords) return null;
  const [before, word] = [tokens[k - 1], tokens[k]];
  if (word?.t !== 'word' || !(isIngredient(before) || isMark(before, '):'))) return null;
  const hit = lexicon.units.next?.get(word.text)?.hit;
  return hit && unit(hit).dimension === 'mass' ? [at, hit] : null;
}

/**
 * `"g": 250`, `grams = 250`, `bar_size_mm: [80, 55, 25]`, `superfat_pct: 5`, `olive gr 650`: the unit stands before its
 * figures.
 */
export function unitsBefore(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const word = tokens[k];
    if (word?.t !== 'word') continue;
    const behind = behindUnit(tokens, k, lexicon);
    const figure = behind ? tokens[behind[0]] : undefined;
    if (behind && figure?.t === 'quantity') {
      out ??= [...tokens];
      out[behind[0]] = { ...figure, quantity: withUnit(figure.quantity, behind[1]) };
      for (let n = k; n < behind[0]; n++) out[n] = asFiller(tokens[n] as Token);
      continue;
    }
    if (tokens[k + 1]?.t !== 'sign') continue;
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

/** Bare figures that are degrees by the figure before them. */
import type { Signals } from './signals.ts';
import { isAny, isIngredient, isStop, wordAt } from './token-is.ts';
import { asAside, type Figure, type Token } from './tokens.ts';

/** "4 C", which is also four cups. */
const isC = ({ quantity: { text } }: Figure): boolean => /^-?\d+ ?C\.?$/.test(text);

/** "It was 4 C outside" beside other degrees; "oils were at 35 degrees, lye at about 30": as warm as the one before it in the sentence is said to be. */
export function alsoWarm(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let warm = false;
  let before = -1;
  const celsius = figures.some((k) => {
    const one = tokens[k];
    return one?.t === 'quantity' && one.quantity.dim === 'temperature' && isC(one);
  });
  for (const k of figures) {
    const token = tokens[k];
    if (warm && isAny(tokens, before, k, isStop)) warm = false;
    before = k;
    if (token?.t !== 'quantity') continue;
    if (token.quantity.dim === 'temperature') warm = true;
    const { dim, value } = token.quantity;
    if (celsius && dim === 'volume' && isC(token) && !isIngredient(tokens[k + 1]) && !isIngredient(tokens[k - 1])) {
      out ??= [...tokens];
      out[k] = asAside(token, 'a temperature');
      continue;
    }
    if (!warm || dim !== 'bare' || value < 15 || value > 220 || isIngredient(tokens[k + 1])) continue;
    const at = /^(about|around|roughly|just|nearly)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
    if (!/^(at|its|is|was)$/.test(wordAt(tokens, at))) continue;
    out ??= [...tokens];
    out[k] = asAside(token, 'a temperature');
  }
  return out ?? tokens;
}

/** Bare figures that are degrees by the figure before them. */
import { isIngredient, isStop, wordAt } from './token-is.ts';
import { asAside, type Figure, type Token } from './tokens.ts';

/** "4 C", which is also four cups. */
const isC = ({ quantity: { text } }: Figure): boolean => /^-?\d+ ?C\.?$/.test(text);

/** "It was 4 C outside" beside other degrees; "oils were at 35 degrees, lye at about 30": as warm as the one before it in the sentence is said to be. */
export function alsoWarm(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  let warm = false;
  const celsius = tokens.some((one) => one.t === 'quantity' && one.quantity.dim === 'temperature' && isC(one));
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (warm && isStop(token)) warm = false;
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

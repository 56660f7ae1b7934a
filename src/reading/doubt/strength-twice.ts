/** The strength of a solution said twice: "40 % NaOH (1:1 with water)", which is 50 %. Asked about where the two disagree. */
import { isMark } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';

/** Of a solution; more is how pure an alkali is, and less a superfat. */
const strong = { least: 0.2, most: 0.6 };
/** Tokens from the one to the other, and to the name of the alkali beside them, at the most. */
const reach = 8;
/** Two strengths as kitchens round them. */
const rounding = 0.021;

const isShare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' &&
  token.quantity.dim === 'percent' &&
  /%|per ?cent/i.test(token.quantity.text) &&
  token.quantity.value > strong.least &&
  token.quantity.value <= strong.most;

/** What the smaller part of "1:2" is of the whole, however it has been read. */
function partOf(token: Token | undefined): number | null {
  if (token?.t !== 'quantity' || !/^(?:ratio|percent)$/.test(token.quantity.dim)) return null;
  const [, a, b] = /^(\d+(?:\.\d+)?) ?[:/] ?(\d+(?:\.\d+)?)$/.exec(token.quantity.text.trim()) ?? [];
  if (a === undefined || b === undefined) return null;
  const parts = [Number(a), Number(b)];
  return Math.min(...parts) / (Number(a) + Number(b));
}

const isLye = (token: Token): boolean => token.t === 'name' && /^(?:alkali|stock)$/.test(token.meaning.kind);

/** The place of the second of two strengths that disagree; null where none do. */
export function strengthTwice(tokens: readonly Token[]): number | null {
  for (let k = 0; k < tokens.length; k++) {
    const part = partOf(tokens[k]);
    if (part === null) continue;
    for (let at = Math.max(0, k - reach); at < k + reach; at++) {
      const share = tokens[at];
      const between = tokens.slice(Math.min(at, k), Math.max(at, k));
      if (!isShare(share) || between.some((one) => one.t === 'line' || isMark(one, '.;?!'))) continue;
      const near = tokens.slice(Math.max(0, Math.min(at, k) - reach), Math.max(at, k) + 3);
      if (near.some(isLye) && Math.abs(share.quantity.value - part) > rounding) return k;
    }
  }
  return null;
}

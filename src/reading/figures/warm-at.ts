/** "Tallow at 50", "Lye 45.": bare figures in the steps of a recipe, of a thing that is weighed elsewhere. */
import type { Signals } from '../words/signals.ts';
import { isIngredient, isRole, isStop, sentenceAt, wordAt } from '../words/token-is.ts';
import { asAside, type Token } from '../words/tokens.ts';
import { weighedElsewhere } from '../words/weighed.ts';

/** Degrees at which lye and fats are mixed, in °C or °F. */
const degrees = { least: 20, most: 140 };
const atWords = /^(?:at|to|below|under|above|around|about|near|until|till)$/;
/** Tokens of a step that names one thing and how warm it is. */
const shortest = 2;

const isWarmth = (token: Token | undefined): boolean =>
  (token?.t === 'aside' && token.reason === 'a temperature') ||
  (token?.t === 'quantity' && token.quantity.dim === 'temperature');

/** The sentence before the one that begins at `from` tells how warm something is. */
function isWarmBefore(tokens: readonly Token[], from: number): boolean {
  if (tokens[from - 1]?.t === 'line') return false;
  const before = sentenceAt(tokens, from - 2, longest);
  for (let k = before.from; k < before.to; k++) {
    const token = tokens[k];
    if (isWarmth(token) || (token?.t === 'quantity' && isBareWarmth(token) && atWords.test(wordAt(tokens, k - 1))))
      return true;
  }
  return false;
}
const longest = 30;

const isBareWarmth = ({ quantity: { dim, value } }: Extract<Token, { t: 'quantity' }>): boolean =>
  dim === 'bare' && Number.isInteger(value) && value >= degrees.least && value <= degrees.most;

/** The tokens with such figures set aside. */
export function warmAt(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || !isBareWarmth(token)) continue;
    const isAt = atWords.test(wordAt(tokens, k - 1));
    const of = isAt ? k - 2 : k - 1;
    const named = tokens[of];
    if (!isIngredient(named) && !isRole(named, 'total-fats')) continue;
    if (!isStop(tokens[k + 1]) && wordAt(tokens, k + 1) === '' && !token.quantity.text.endsWith('.')) continue;
    if (!isRole(named, 'total-fats') && !weighedElsewhere(tokens, of)) continue;
    if (!isAt) {
      const { from, to } = sentenceAt(tokens, k, longest);
      if (from !== of || to - from > shortest || !isWarmBefore(tokens, from)) continue;
    }
    out ??= [...tokens];
    out[k] = asAside(token, 'a temperature');
  }
  return out ?? tokens;
}

/** Bare figures that are degrees by the figure before them. */
import type { Signals } from '../words/signals.ts';
import { isAny, isIngredient, isMark, isRole, isStop, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';

/** "4 C", which is also four cups. */
const isC = ({ quantity: { text } }: Figure): boolean => /^-?\d+ ?C\.?$/.test(text);

/** "Left out in the shed overnight, 8 C": as warm as a place is, in a sentence of no ingredient. */
function isPlaceWarm(tokens: readonly Token[], k: number): boolean {
  const { from, to } = sentenceAt(tokens, k, longestPlace);
  return !isAny(tokens, from, to, isIngredient) && isAny(tokens, from, to, (one) => places.test(spoken(one)));
}
const longestPlace = 16;
const places =
  /^(?:shed|garage|cellar|attic|porch|outside|outdoors|overnight|room|kitchen|basement|barn|yard|balcony|pantry|cupboard|oven|weather|fridge|workshop)$/;

/** "Temperatures: fats 43, lye 31", "Temperature oils: 43": where the heading of a row or of rows ends; -1 where none does. */
function headingBefore(tokens: readonly Token[], from: number, k: number): number {
  for (let at = k - 1; at >= Math.max(0, from); at--) {
    if (!isRole(tokens[at], 'temperature')) continue;
    const opens = at === 0 || tokens[at - 1]?.t === 'line';
    return opens || isMark(tokens[at + 1], ':=–-') ? at : -1;
  }
  return -1;
}
/** Tokens from such a heading to the first figure, at the most. */
const nearest = 8;
/** Degrees of a lye, at the most: more may be its weight. */
const mostOfLye = 100;

/** The row ends, or the block of rows under the heading. */
function endsRow(tokens: readonly Token[], from: number, to: number, block: boolean): boolean {
  let lines = 0;
  return isAny(
    tokens,
    from,
    to,
    (one) => isStop(one) && !(block && one.t === 'line' && one.text === 'line' && lines++ === 0),
  );
}

/** "It was 4 C outside" beside other degrees; "oils were at 35 degrees, lye at about 30": as warm as the one before it in the sentence is said to be. */
export function alsoWarm(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let warm = false;
  let headed = false;
  let block = false;
  let before = -1;
  const celsius = figures.some((k) => {
    const one = tokens[k];
    return one?.t === 'quantity' && one.quantity.dim === 'temperature' && isC(one);
  });
  for (const k of figures) {
    const token = tokens[k];
    if (warm && isAny(tokens, before, k, isStop)) warm = false;
    if (headed && endsRow(tokens, before, k, block)) headed = false;
    const heading = headingBefore(tokens, Math.max(before + 1, k - nearest), k);
    if (heading >= 0 && !isAny(tokens, heading + 2, k, isStop)) {
      block = tokens[heading + 1]?.t === 'line';
      headed = block || !isAny(tokens, heading, k, isStop);
    }
    before = k;
    if (token?.t !== 'quantity') continue;
    if (token.quantity.dim === 'temperature') warm = true;
    const { dim, value } = token.quantity;
    if (
      dim === 'volume' &&
      isC(token) &&
      (celsius || isPlaceWarm(tokens, k)) &&
      !isIngredient(tokens[k + 1]) &&
      !isIngredient(tokens[k - 1])
    ) {
      out ??= [...tokens];
      out[k] = asAside(token, 'a temperature');
      continue;
    }
    if (dim !== 'bare' || value < 15 || value > 220) continue;
    const isOfThing = isIngredient(tokens[k + 1]) || isIngredient(tokens[k - 1]);
    if (headed && !(isOfThing && value > mostOfLye)) {
      out ??= [...tokens];
      out[k] = asAside(token, 'a temperature');
      // "Temperature: 40, water 230"
      const isOne = !/s$/i.test(spoken(tokens[heading]));
      if (heading >= 0 && isOne && k - heading <= 2 && !block) headed = isIngredient(tokens[k + 1]);
      continue;
    }
    if (!warm || isIngredient(tokens[k + 1])) continue;
    const at = /^(about|around|roughly|just|nearly)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
    if (!/^(at|its|is|was)$/.test(wordAt(tokens, at))) continue;
    out ??= [...tokens];
    out[k] = asAside(token, 'a temperature');
  }
  return out ?? tokens;
}

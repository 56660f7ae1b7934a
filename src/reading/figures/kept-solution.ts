/** Lye that is kept as a solution of which a weight is taken: "I keep my lye as a 50/50 solution. Took 260 g of that". */
import { plainQuantity, type Quantity } from '../words/quantities.ts';
import { isIngredient, isMark, isRole, isWeight, spoken, wordAt } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

/** Share of alkali in the strongest solution that keeps. */
const strongest = 0.55;
/** Words at the most from the alkali to how strong it is kept. */
const reach = 9;

/** How strong it is, and behind which token that ends. */
interface Strength {
  readonly share: number;
  readonly numbers: Quantity['numbers'];
  readonly to: number;
}

/** "50/50", "1:2", "40 %", "fifty-fifty", "half and half" at `k`. */
function strengthAt(tokens: readonly Token[], k: number): Strength | null {
  const one = tokens[k];
  if (one?.t === 'name' && one.meaning.kind === 'liquid' && /^half.and.half$/i.test(one.text))
    return { share: 0.5, numbers: [], to: k + 1 };
  if (one?.t !== 'quantity') return null;
  const { dim, value, second, each, numbers } = one.quantity;
  if (dim === 'parts' && each) return { share: 0.5, numbers, to: k + 1 };
  if (dim === 'percent') return value > 0 && value <= strongest ? { share: value, numbers, to: k + 1 } : null;
  if (dim === 'ratio' && second !== null && value > 0 && second > 0)
    return { share: Math.min(value, second) / (value + second), numbers, to: k + 1 };
  const at = isMark(tokens[k + 1], '-') ? k + 2 : k + 1;
  const other = tokens[at];
  if (dim !== 'bare' || value !== 50 || other?.t !== 'quantity') return null;
  const isEven = other.quantity.dim === 'bare' && other.quantity.value === 50;
  return isEven ? { share: 0.5, numbers: [...numbers, ...other.quantity.numbers], to: at + 1 } : null;
}

/** "Half and half with water", its water with it. */
function withWater(tokens: readonly Token[], strength: Strength | null): Strength | null {
  if (strength === null) return null;
  const water = tokens[strength.to + 1];
  const isOfWater =
    /^(?:with|in|and|to)$/.test(wordAt(tokens, strength.to)) && water?.t === 'name' && water.meaning.kind === 'water';
  return isOfWater && !isWeight(tokens[strength.to + 2]) ? { ...strength, to: strength.to + 2 } : strength;
}

/** "50/50 NaOH and KOH" is of two. */
const isAlkali = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'alkali';

/** "Kept as a", "mixed", "made up at": what stands before a strength. */
const making = /^(?:as|at|mixed|made|up|dissolved|diluted|is|premixed|premade|prediluted|kept|stored|prepared)$/;
const taking = /^(?:took|take|used|use|weighed|weigh|poured|added)$/;
const it = /^(?:it|that|this|which)$/;

/** "260 g of that", "of which I took 260 g": a weight of what was spoken of. */
const isTaken = (tokens: readonly Token[], k: number): boolean =>
  isWeight(tokens[k]) &&
  ((/^(?:of|from)$/.test(wordAt(tokens, k + 1)) && it.test(wordAt(tokens, k + 2)) && tokens[k + 3]?.t !== 'name') ||
    (/^(?:of|from)$/.test(wordAt(tokens, k - 4)) &&
      it.test(wordAt(tokens, k - 3)) &&
      /^(?:i|we)$/.test(wordAt(tokens, k - 2)) &&
      taking.test(wordAt(tokens, k - 1))));

/** It is so before anything else that may go in is named. */
function isTakenBehind(tokens: readonly Token[], from: number): boolean {
  for (let k = from; k < tokens.length && !isIngredient(tokens[k]); k++) if (isTaken(tokens, k)) return true;
  return false;
}

/** Where the strength stands at which the alkali at `k` is kept. */
function keptAt(tokens: readonly Token[], k: number): number | null {
  // "130 g lye as a 33 % solution" is weighed before it is dissolved
  if (isWeight(tokens[k - 1]) || isWeight(tokens[k - 2])) return null;
  let at = k + 1;
  while (tokens[at]?.t === 'word' && at - k < reach) at++;
  const before = /^an?$/.test(wordAt(tokens, at - 1)) ? at - 2 : at - 1;
  return before > k && making.test(wordAt(tokens, before)) ? at : null;
}

/** "Of that I take 390 g, no extra water": the weight before it is of no water. */
function noneAdded(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 1; k < tokens.length; k++) {
    const water = tokens[k];
    if (water?.t !== 'name' || water.meaning.kind !== 'water' || isWeight(tokens[k + 1])) continue;
    const isAdded = added.test(wordAt(tokens, k - 1));
    if (!isAdded && !/^(?:extra|more|additional|further|added|other) /i.test(water.text)) continue;
    if (!/^(?:no|any|without)$/.test(spoken(tokens[isAdded ? k - 2 : k - 1]))) continue;
    out ??= [...tokens];
    out[k] = asFiller(water);
  }
  return out ?? tokens;
}
const added = /^(?:extra|more|additional|further|added|other)$/;

/** "A can of ready mixed 50 % lye (sodium)": its strength stands before it, and maybe its kind behind. */
function readyMixed(tokens: readonly Token[]): readonly Token[] {
  for (let k = 0; k < tokens.length - 1; k++) {
    const [share, alkali] = [tokens[k], tokens[k + 1]];
    if (share?.t !== 'quantity' || share.quantity.dim !== 'percent' || alkali?.t !== 'name') continue;
    if (alkali.meaning.kind !== 'alkali' || !(share.quantity.value > 0 && share.quantity.value <= strongest)) continue;
    const isKept = tokens.slice(Math.max(0, k - mostReady), k).some((one) => ready.test(spoken(one)));
    if (!isKept) continue;
    const isBracket = isMark(tokens[k + 2], '(') && isMark(tokens[k + 4], ')');
    const kind = isBracket ? tokens[k + 3] : undefined;
    const ids = kind?.t === 'name' ? /^(?:sodium|potassium|naoh|koh)\b/i.exec(kind.text)?.[0].toLowerCase() : undefined;
    const behind = ids === undefined ? k + 2 : k + 5;
    if (!isTakenBehind(tokens, behind)) continue;
    const told = ids === undefined ? alkali.meaning.id : /^(?:potassium|koh)$/.test(ids) ? 'koh' : 'naoh';
    return tokens.map((token, at) => {
      if (at === k + 1) return { ...alkali, meaning: { kind: 'stock', id: told } as const };
      return ids !== undefined && at === k + 3 ? asFiller(token) : token;
    });
  }
  return tokens;
}
const ready = /^(?:ready|mixed|made|premixed|premade|diluted)$/;
const mostReady = 4;

/** Tokens in which that alkali is a solution with its strength, and what is taken of it is the solution's weight. */
export function keptSolution(given: readonly Token[]): readonly Token[] {
  const tokens = readyMixed(noneAdded(given));
  for (let k = 0; k < tokens.length; k++) {
    const alkali = tokens[k];
    if (alkali?.t !== 'name' || alkali.meaning.kind !== 'alkali') continue;
    const at = keptAt(tokens, k);
    const strength = at === null ? null : withWater(tokens, strengthAt(tokens, at));
    if (at === null || strength === null || isAlkali(tokens[strength.to])) continue;
    if (!isTakenBehind(tokens, strength.to)) continue;
    const meaning = { kind: 'stock', id: alkali.meaning.id } as const;
    // the name stands beside its strength
    return tokens.map((token, one) => {
      if (one === at) return shareToken(token, strength);
      if (one === at - 1) return { ...alkali, meaning, from: token.from, to: token.to };
      if (one >= k && one < strength.to) return asFiller(token);
      return one === strength.to && isRole(token, 'solution') ? asFiller(token) : token;
    });
  }
  return tokens;
}

function shareToken(token: Token, { share, numbers }: Strength): Token {
  const { from, to } = token;
  const text = token.t === 'quantity' ? token.quantity.text : 'half and half';
  return { t: 'quantity', from, to, quantity: { ...plainQuantity, dim: 'percent', value: share, text, numbers } };
}

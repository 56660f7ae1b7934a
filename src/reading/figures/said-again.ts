/** Weights that follow from others of the post: said again, a sum, a difference, what came out of the mould. */
import { keptLast } from '../words/kept.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isMeasured,
  isRole,
  isStop,
  isWeight,
  isWord,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { thingOf, weighedIn } from '../words/weighed.ts';

/** Where each weight is first said. */
const firstSaid = keptLast((tokens: readonly Token[]): ReadonlyMap<string, number> => {
  const first = new Map<string, number>();
  tokens.forEach((token, at) => {
    const key = isWeight(token) ? weightKey(token) : '';
    if (key !== '' && !first.has(key)) first.set(key, at);
  });
  return first;
});

const weightKey = ({ quantity: { value, upTo } }: Figure): string => (upTo === null ? value.toPrecision(6) : '');

const pointers: ReadonlySet<string> = new Set(['the', 'that', 'those', 'this', 'these', 'my', 'your', 'their']);

const verbs: ReadonlySet<string> = new Set(['is', 'are', 'was', 'were', 'if', 'would', 'does', 'do']);

const asks = (token: Token | undefined): boolean => token?.t === 'word' && verbs.has(token.text);

/** "Lye is worked out for the 450": a figure that stands further up. */
export function isForThe(tokens: readonly Token[], k: number, { quantity: { text } }: Figure): boolean {
  if (tokens[k + 1] !== undefined && !isStop(tokens[k + 1])) return false;
  if (!/^(?:the|my|those|that)$/.test(wordAt(tokens, k - 1)) || wordAt(tokens, k - 2) !== 'for') return false;
  const value = Number.parseFloat(text);
  return tokens.some((one, at) => at < k && isWeight(one) && Number.parseFloat(one.quantity.text) === value);
}

/** "Is that lye right for 6 lbs?": a question that ends with what the post gave before. */
const isFor = (tokens: readonly Token[], k: number): boolean =>
  isWeight(tokens[k]) &&
  wordAt(tokens, /^(?:that|those|the|this)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1) === 'for' &&
  isMark(tokens[k + 1], '?');

/** "is the 6.35 oz still right": an amount that the post gave before, spoken of again. */
export function isReference(tokens: readonly Token[], k: number, token: Figure): boolean {
  const verb = tokens[k - 2];
  const before = tokens[k - 1];
  const after = tokens[k + 1];
  if (isFor(tokens, k)) return (firstSaid(tokens).get(weightKey(token)) ?? k) < k;
  if (!isWeight(token) || before?.t !== 'word' || after?.t !== 'word' || after.text === 'of') return false;
  const isThe = pointers.has(before.text) && asks(verb);
  const isBare = asks(before) && !isIngredient(verb);
  return (isThe || isBare) && !isIngredient(tokens[k + 2]) && (firstSaid(tokens).get(weightKey(token)) ?? k) < k;
}

const isSameAs = (one: Token | undefined, token: Figure): boolean =>
  isWeight(one) && weightKey(one) === weightKey(token);

const wholly = /^(?:whole|all|entire|full)$/;

/** "In it went, the whole half stone", "used all 2 kg", "all of the 2 kg": of what was weighed before. */
export const isAllOfIt = (tokens: readonly Token[], k: number, token: Figure): boolean =>
  isWeight(token) &&
  (wholly.test(wordAt(tokens, k - 1)) ||
    (pointers.has(wordAt(tokens, k - 1)) && isWord(tokens[k - 2], 'of') && wholly.test(wordAt(tokens, k - 3)))) &&
  !isIngredient(tokens[k + 1]) &&
  wordAt(tokens, k + 1) !== 'of' &&
  !isOfAnother(tokens, k) &&
  (isSameAs(tokens.slice(0, k).findLast(isWeight), token) || isOfOneRow(tokens, k, token));

/** "All 142 g and all the 300 g water went in": the weight of one thing of the list, where nothing new is spoken of. */
function isOfOneRow(tokens: readonly Token[], k: number, token: Figure): boolean {
  const next = tokens[k + 1];
  if (
    !endsDotted(token) &&
    !isStop(next) &&
    !isMark(next, ',') &&
    !/^(?:and|went|goes|got|is|are|was|were|in|into)$/.test(spoken(next))
  )
    return false;
  const rows = weighedIn(tokens, 0, k, /^(?:fat|alkali|water|liquid)$/).filter(({ figure }) => figure < k);
  const { from } = sentenceAt(tokens, k, longestSaid);
  const isNew = isAny(tokens, from, k, (one) => isIngredient(one) && !rows.some(({ id }) => id === thingOf(one)));
  const same = rows.filter(({ figure }) => isSameAs(tokens[figure], token));
  return !isNew && new Set(same.map(({ id }) => id)).size === 1;
}

/** "The whole 260 g was goat milk instead": what weighs as much in its place. */
function isOfAnother(tokens: readonly Token[], k: number): boolean {
  if (!/^(?:was|is|were|are|became)$/.test(wordAt(tokens, k + 1))) return false;
  const { to } = sentenceAt(tokens, k, longestSaid);
  return isAny(tokens, k, to, isIngredient) && isAny(tokens, k, to, (one) => isWord(one, 'instead'));
}

/** "A whole stone of tallow (1 stone)", "500 g olive (500 g)": the weight right before it once more. */
export function isBracketedAgain(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isMark(tokens[k - 1], '(') || !isMark(tokens[k + 1], ')')) return false;
  let named = false;
  for (let at = k - 2; at >= 0 && k - at <= longestRow && !endsRow(tokens[at]); at--) {
    if (isWeight(tokens[at])) return isSameAs(tokens[at], token) && !(named && isIngredient(tokens[at - 1]));
    named ||= isIngredient(tokens[at]);
  }
  return false;
}
const longestRow = 5;

/** "5 oz 1/4, I mean five and a quarter ounces": the weight right before it once more, in other words. */
export function isMeantAgain(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isWeight(token) || wordAt(tokens, k - 1) !== 'mean' || isIngredient(tokens[k + 1])) return false;
  const last = tokens.slice(Math.max(0, k - longestRow - 1), k).findLast((one) => one.t === 'quantity' || isStop(one));
  return isSameAs(last, token);
}
const endsRow = (token: Token | undefined): boolean =>
  isStop(token) || isMark(token, ',&+)') || (token?.t === 'word' && token.sort === 'joint');

/** "Scaled up from the 500 g one": what the recipe was made of. */
export function isSizeBefore(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isWeight(token) || !/^(?:the|my|our|a|his|her|their)$/.test(wordAt(tokens, k - 1))) return false;
  if (wordAt(tokens, k - 2) !== 'from' || !/^(?:one|version)$/.test(spoken(tokens[k + 1]))) return false;
  const { from } = sentenceAt(tokens, k, longestSaid);
  return isAny(tokens, from, k, (one) => sizing.test(spoken(one)));
}
const sizing = /^(?:scaled|doubled|tripled|trebled|halved|quartered|multiplied|enlarged)$/;

const isPieces = (token: Token): boolean =>
  isRole(token, 'bars') || (token.t === 'word' && /^(?:pieces|slices|chunks|pucks)$/.test(token.text));

/** "Hence the 8", of a share that was said before. */
export function isShareAgain(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean {
  if (dim !== 'bare' || !/^(?:the|that)$/.test(wordAt(tokens, k - 1)) || isIngredient(tokens[k + 1])) return false;
  return tokens.some((one, at) => at < k && isShareOf(one, value));
}

/** "1500 g of oils, so let's say exactly that, 1500": the number of a weight once more in its sentence. */
export function isNumberAgain(tokens: readonly Token[], k: number, token: Figure): boolean {
  const next = tokens[k + 1];
  if (token.quantity.dim !== 'bare' || !(isStop(next) || isMark(next, ',') || endsDotted(token))) return false;
  const at = isMark(tokens[k - 1], ',:') ? k - 2 : k - 1;
  if (!/^(?:that|this|it|exactly|say|so|just|yes)$/.test(wordAt(tokens, at))) return false;
  const { from } = sentenceAt(tokens, k, longestSaid);
  return isAny(tokens, from, k, (one) => isWeight(one) && isNumberOf(one, token));
}
const longestSaid = 24;
const isNumberOf = ({ quantity: { value, unit } }: Figure, { quantity }: Figure): boolean =>
  Math.abs(value / (unit?.factor ?? 1) - quantity.value) < 1e-9 * value;

const isDigit = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'bare' && /^\d$/.test(token.quantity.text);
const mixing =
  /^(?:mix|mixe[ds]|mixing|swap|swap(?:s|ped|ping)|switch(?:ed|ing)?|confus(?:e|ed|ing)|muddled|wrong|backwards)$/;

/** Where the second digit stands in "98, no, 89, my 8 and 9 got mixed up", whose first stands at `k`; -1 elsewhere. */
export function digitsMixed(tokens: readonly Token[], k: number): number {
  const one = tokens[k];
  if (!isDigit(one) || !(isWord(tokens[k + 1], 'and') || isMark(tokens[k + 1], '&'))) return -1;
  const at = pointers.has(wordAt(tokens, k + 2)) ? k + 3 : k + 2;
  const other = tokens[at];
  if (!isDigit(other)) return -1;
  const { from, to } = sentenceAt(tokens, k, longestSaid);
  const [a, b] = [one.quantity.text, other.quantity.text];
  const isSaid = (digits: string): boolean =>
    tokens.some((token) => token.t === 'quantity' && token.quantity.text.includes(digits));
  return isAny(tokens, from, to, (token) => mixing.test(spoken(token))) && isSaid(a + b) && isSaid(b + a) ? at : -1;
}

const isShareOf = (token: Token, percent: number): boolean =>
  token.t === 'quantity' && token.quantity.dim === 'percent' && Math.abs(100 * token.quantity.value - percent) < 1e-9;

/** "I swapped the palm from 22 to 20", where a column of shares says 20. */
export function isShareChanged(tokens: readonly Token[], k: number, { quantity: { dim, upTo } }: Figure): boolean {
  if (dim !== 'bare' || upTo === null || wordAt(tokens, k - 1) !== 'from' || isIngredient(tokens[k + 1])) return false;
  return tokens.some((one) => isShareOf(one, upTo));
}

/** "I took it down from 98 g to 95 g", where one of the two was said before. */
export function isChange(tokens: readonly Token[], k: number, token: Figure): boolean {
  const before = tokens[k - 1];
  const { dim, upTo } = token.quantity;
  if (dim !== 'mass' || upTo === null || before?.t !== 'word' || before.text !== 'from') return false;
  return [token.quantity.value, upTo].some((value) => (firstSaid(tokens).get(value.toPrecision(6)) ?? k) < k);
}

/** Terms of a sum that a post states, at the most. */
const mostTerms = 12;

/** `140 g NaOH + 280 g water = 420 g`, `-> 420`: what the weights of the sentence before it make, behind such a sign. */
export function isStatedSum(tokens: readonly Token[], k: number, token: Figure): boolean {
  const isPointed = isMark(tokens[k - 1], '•');
  const isArrow = isPointed || (isMark(tokens[k - 1], '>') && isMark(tokens[k - 2], '-='));
  if (!isArrow && !isMark(tokens[k - 1], '=')) return false;
  const { dim, value, upTo } = token.quantity;
  if (upTo !== null || !(dim === 'mass' || (isArrow && dim === 'bare'))) return false;
  const behind = tokens[k + 1];
  if (behind?.t === 'name' && !token.quantity.text.endsWith('.')) return false;
  // "• 500 g of olive oil • 500 g of lard": a row of its own
  if (behind?.t === 'word' && behind.text === 'of' && isIngredient(tokens[k + 2])) return false;
  let sum = 0;
  let terms = 0;
  let factor = 1;
  for (let at = isArrow && !isPointed ? k - 3 : k - 2; at >= 0 && terms < mostTerms; at--) {
    const one = tokens[at];
    if (one?.t === 'line' || (one?.t === 'sign' && /^[.;:=>•]$/.test(one.text))) break;
    if (one?.t !== 'quantity' || !(one.quantity.dim === 'mass' || (isArrow && one.quantity.dim === 'bare'))) continue;
    if (factor === 1) factor = one.quantity.unit?.factor ?? 1;
    sum += one.quantity.value;
    terms++;
    const said = dim === 'mass' ? value : value * factor;
    if (terms >= 2 && Math.abs(sum - said) <= 0.011 * sum) return true;
    // "16 g -> 16"
    if (terms === 1 && isArrow && Math.abs(sum - said) <= 1e-6 * sum) return true;
  }
  return false;
}

/** A weight alone in its line, of what the rows above it make: `(32 oz)`, `= 1000 g`, `=> 1000 g`. */
export function isLoneSum(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isWeight(token) || token.quantity.upTo !== null) return false;
  let [from, to] = [k, k + 1];
  while (isMark(tokens[from - 1], '(=[_->•\t')) from--;
  while (isMark(tokens[to], ')]._-\t')) to++;
  if (tokens[from - 1]?.t !== 'line' || (to < tokens.length && tokens[to]?.t !== 'line')) return false;
  let [sum, rows, weight, named] = [0, 0, 0, false];
  for (let at = from - 2; at >= -1 && rows < mostTerms; at--) {
    const one = tokens[at];
    if (isWeight(one)) weight = weight === 0 ? one.quantity.value : Number.NaN;
    else if (isIngredient(one)) named = true;
    if (one && one.t !== 'line') continue;
    // a rule under the rows
    if (
      rows === 0 &&
      !named &&
      weight === 0 &&
      tokens.slice(at + 1, from - 1).every((mark) => mark.t === 'sign' || mark.t === 'line')
    )
      continue;
    if (!named || !(weight > 0)) return false;
    sum += weight;
    rows++;
    if (rows >= 2 && Math.abs(sum - token.quantity.value) <= 0.006 * sum) return true;
    [weight, named] = [0, false];
  }
  return false;
}

/** "Lyes that are 4 g apart", "off by 4 g". */
export const isApart = (tokens: readonly Token[], k: number, token: Figure): boolean =>
  isMeasured(token) &&
  (isWord(tokens[k + 1], 'apart') ||
    (isWord(tokens[k - 1], 'by') && /^(off|out|differs?)$/.test(spoken(tokens[k - 2]))));

/** Weights with nothing but commas between them, at the least. */
const leastRun = 3;

/**
 * "1 lb olive, 8 oz coconut, 4.5 oz lye … I've written 454 g, 227 g, 128 g": a row of weights without names that says
 * those before it once more, in their order. Returns how many; 0 where one of them differs.
 */
export function saidInARow(tokens: readonly Token[], k: number): number {
  const isNext = (at: number): boolean => isMark(tokens[at], ',/+') || wordAt(tokens, at) === 'and';
  if (isNext(k - 1) || isIngredient(tokens[k - 1])) return 0;
  const run: number[] = [];
  let at = k;
  for (let one = tokens[at]; isWeight(one); one = tokens[at]) {
    run.push(one.quantity.value);
    at++;
    while (isNext(at)) at++;
  }
  if (run.length < leastRun || isIngredient(tokens[at])) return 0;
  const before = tokens.slice(0, k).filter(isWeight);
  const said = before.slice(before.length - run.length);
  const isSame = said.length === run.length && said.every((one, n) => isNear(one.quantity.value, run[n] ?? 0));
  return isSame ? run.length : 0;
}

/** As near as people round ounces to grams. */
const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(0.6, 0.006 * a);

/** "Out came 2 kg", "it came out at 1850 g": soap, where no ingredient follows. */
export function isOutcome(tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean {
  if (dim !== 'mass' || isIngredient(tokens[k + 1]) || isIngredient(tokens[k + 2])) return false;
  // "10 pieces, 1245 g together"
  if (isRole(tokens[k + 1], 'total') && isAny(tokens, k - 6, k, isPieces)) return true;
  let at = k - 1;
  while (k - at <= 3 && /^(at|to|about|around|roughly|nearly|just|under|over)$/.test(wordAt(tokens, at))) at--;
  const [before, last] = [wordAt(tokens, at - 1), wordAt(tokens, at)];
  // "yield 2050 g, loss 47 g"
  if (/^(?:loss|losses|wastage)$/.test(last) && !isIngredient(tokens[at - 1])) return true;
  return (before === 'out' && last === 'came') || (last === 'out' && /^(came|comes)$/.test(before));
}

/** "in: 1156.5 g, out (after 6 weeks): 1011 g": as one column of a balance. */
export function isBalance(tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean {
  if (dim !== 'mass' || !isMark(tokens[k - 1], ':=') || isIngredient(tokens[k + 1])) return false;
  let at = k - 2;
  if (isMark(tokens[at], ')')) while (k - at <= longestBracket && !isMark(tokens[at + 1], '(')) at--;
  return wordAt(tokens, at) === 'out' && tokens[at - 1]?.t !== 'word' && !isIngredient(tokens[at - 1]);
}
const longestBracket = 8;

/** What a vessel weighs empty and full, beside what that leaves: "the empty pot is 1150 g, with the lard 1850 g, so 700 g lard". */

import { packed, withUnit } from '../columns/columns.ts';
import { reweighed } from '../taken-back/put-right.ts';
import { cue } from '../words/cue-words.ts';
import { type Signals, saysAround } from '../words/signals.ts';
import {
  endsDotted,
  isAny,
  isFat,
  isIngredient,
  isMark,
  isPot,
  isStop,
  isWeight,
  isWord,
  massOf,
  sentenceAt,
  spoken,
} from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { eitherOf } from './part-said.ts';

/** Tokens from the first of three such figures to the last, at the most. */
const longestTale = 40;
const reach = 16;
const empty = /^(?:empty|itself|alone|tare|bare|own|weighs|weighed)$/;
const leaving = /^(?:so|makes|leaves|leaving|that|thats|net|hence|which|is|giving|gives|of|=)$/;

/** In grams; one without a unit in that of the vessel: "312 g, and with olive in it 812". */
const massAt = (token: Token | undefined, factor: number): number =>
  massOf(token) && token.quantity.dim !== 'volume' ? token.quantity.value * (isWeight(token) ? 1 : factor) : Number.NaN;

const isFigure = (token: Token | undefined): boolean => token?.t === 'quantity' || token?.t === 'aside';

/** A clause says that the figure at `k` is the vessel's own weight. */
function isVessels(tokens: readonly Token[], k: number): boolean {
  const { from, to } = sentenceAt(tokens, k, reach);
  let [first, last] = [k, k];
  while (first > from && !isFigure(tokens[first - 1]) && !isWord(tokens[first - 1], 'and')) first--;
  while (last < to && !(tokens[last]?.t === 'sign' || isStop(tokens[last]))) last++;
  return (
    isAny(tokens, first, last, isPot) &&
    isAny(tokens, first, last, (one) => empty.test(spoken(one))) &&
    !isIngredient(tokens[k + 1]) &&
    !isWord(tokens[k + 1], 'of')
  );
}

const weighing = /^(?:is|was|weighs|weighed|says|said|shows|showed|at|about|ca|only|just)$/;

/** "The bowl is 312 g", "jug: 210 g": no word says that it is empty, and its figure stands behind it. */
function isOfVessel(tokens: readonly Token[], k: number): boolean {
  let at = k - 1;
  while (k - at <= 3 && (weighing.test(spoken(tokens[at])) || isMark(tokens[at], ':='))) at--;
  return isPot(tokens[at]) && !isIngredient(tokens[k + 1]) && !isWord(tokens[k + 1], 'of');
}

/** "With the lard in it 700 g". */
const isInIt = (tokens: readonly Token[], k: number): boolean =>
  isAny(tokens, k - reach, k, (one, at) => isFat(one) && isWord(tokens[at + 1], 'in') && isWord(tokens[at + 2], 'it'));

/** The figure at `k` is of something by its name, and follows from what was said. */
const isNet = (tokens: readonly Token[], k: number): boolean =>
  [k + 1, k + 2, k + 3, k - 1].some((at) => isIngredient(tokens[at])) &&
  isAny(tokens, k - 3, k, (one) => leaving.test(spoken(one)));

/** "My 163 g of lye was 138 g really": what the vessel and the lye weighed, and what that leaves. */
function isSaidNet(tokens: readonly Token[], gross: number, net: number): boolean {
  const name = isWord(tokens[gross + 1], 'of') ? gross + 2 : gross + 1;
  if (!isIngredient(tokens[name])) return false;
  const says = (one: Token): boolean => /^(?:was|is|really|actually|makes|made|only|just|in|fact)$/.test(spoken(one));
  return net > name + 1 && !isAny(tokens, name + 1, net, (one) => !says(one)) && !isIngredient(tokens[net + 1]);
}

/** "With the lard it shows 700 g": the vessel and what is in it. */
function isFull(tokens: readonly Token[], k: number): boolean {
  const { from } = sentenceAt(tokens, k, reach);
  let first = k;
  while (first > from && !isFigure(tokens[first - 1])) first--;
  const filled = tokens.findIndex((one, at) => at >= first && at < k && filling.test(spoken(one)));
  return (
    filled >= 0 && isAny(tokens, filled, k, isIngredient) && (endsDotted(tokens[k]) || !isIngredient(tokens[k + 1]))
  );
}
const filling = /^(?:with|full|filled|plus)$/;

const zeroed = /^(?:tared|zeroed)$/;
/** Tokens from a name to its weight with a vessel between, at the most. */
const longestVessel = 14;

/** "Water in a steel jug, jug tared out: 360 g", "lye in its own cup, zeroed, 120 g": the tokens without the vessel between a name and its weight. */
function withoutTared(tokens: readonly Token[], figures: readonly number[]): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    if (!isMark(tokens[k - 1], ':') && !(isMark(tokens[k - 1], ',') && zeroed.test(spoken(tokens[k - 2])))) continue;
    if (isMark(tokens[k - 1], ',') && isIngredient(tokens[k + 1]) && !endsDotted(tokens[k])) continue;
    let name = k - 2;
    while (k - name <= longestVessel && !isStop(tokens[name]) && !isFigure(tokens[name]) && !isIngredient(tokens[name]))
      name--;
    if (!isIngredient(tokens[name])) continue;
    if (!isAny(tokens, name + 1, k - 1, (one) => zeroed.test(spoken(one)))) continue;
    out ??= [...tokens];
    // "lye (NaOH)": the name stands right before its weight
    const from = isMark(tokens[name - 1], '(') ? name - 1 : name;
    for (let at = from; at < k - 1; at++) out[at] = asFiller(tokens[at] as Token);
    const [own, place] = [tokens[name], tokens[k - 2]];
    if (own && place) out[k - 2] = { ...own, from: place.from, to: place.to };
  }
  return out ?? tokens;
}

/** "So I took the bowl off", "minus the bowl": said right behind it. */
function isTakenOff(tokens: readonly Token[], k: number): boolean {
  const words: string[] = [];
  for (let at = k + 1; at - k <= reach && !isStop(tokens[at]) && !isFigure(tokens[at]); at++)
    words.push(isPot(tokens[at]) ? 'pot' : spoken(tokens[at]));
  const said = words.join(' ');
  return (
    takenOff.test(said) && !/\b(?:already|before|not|never|didnt|forgot|if|should|would|could|maybe|must)\b/.test(said)
  );
}
const takenOff =
  /\b(?:took|taken|take|deducted|subtracted|substracted|knocked|removed) (?:off )?(?:the |its |that |for )*(?:empty )?(?:pot|weight of the (?:empty )?pot)\b|\b(?:minus|less|without) (?:the |its )?(?:empty )?pot\b/;

/** The tokens with the weights of the vessel set aside, empty and full; where nothing says what that leaves, it is asked. */
export function tares(given: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  const figures = signals.figures.filter((k) => massOf(given[k]));
  const tokens = withoutTared(given, figures);
  for (let n = 1; n < figures.length; n++) {
    const [one = 0, two = 0, net = -1] = figures.slice(n - 1, n + 2);
    const begins = tokens[one];
    if (two - one > longestTale || !isWeight(begins)) continue;
    const { unit } = begins.quantity;
    const [a, b, c] = [one, two, net].map((k) => massAt(tokens[k], unit?.factor ?? 1)) as [number, number, number];
    const [tare, gross] = a < b ? [one, two] : [two, one];
    const isLeft = Math.abs(Math.abs(a - b) - c) <= 1e-3 * Math.max(a, b) && net - one <= longestTale;
    const isUnsaid = gross === two && isFull(tokens, gross) && (isLeft || isInIt(tokens, gross));
    if (!saysAround(signals, tare, cue.pot) || !(isVessels(tokens, tare) || (isUnsaid && isOfVessel(tokens, tare))))
      continue;
    if (isLeft && (isNet(tokens, net) || (gross === two && isSaidNet(tokens, two, net)))) {
      out ??= [...tokens];
      for (const k of [one, two]) out[k] = asAside(tokens[k] as Figure, packed);
    } else if (isFull(tokens, gross)) {
      out ??= [...tokens];
      out[tare] = asAside(tokens[tare] as Figure, packed);
      const full = tokens[gross] as Figure;
      const quantity = full.quantity.dim === 'bare' ? withUnit(full.quantity, unit?.id ?? 'g') : full.quantity;
      const net = Math.abs(a - b);
      out[gross] = isTakenOff(tokens, gross)
        ? reweighed({ ...full, quantity }, net)
        : eitherOf({ ...full, quantity }, net);
    }
  }
  return out ?? tokens;
}

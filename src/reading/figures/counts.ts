/** Figures that weigh nothing: counts, pages, portions, eggs, years, a melting point. */
import { signal } from '../words/signal-words.ts';
import { gives } from '../words/signals.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isMeasured,
  isRole,
  isStop,
  isWord,
  type Span,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';

/** "Soap no. 14, own lard". */
function isNumbered(tokens: readonly Token[], k: number): boolean {
  const no = isMark(tokens[k - 1], '.') ? k - 2 : k - 1;
  return isRole(tokens[no], 'number') && isRole(tokens[no - 1], 'batch-word') && isMark(tokens[k + 1], ',;:-–—(');
}

/** "Batch 1 was a plain lard loaf", "entry 2 had honey": which one it was. */
export const isNumberOfBatch = (tokens: readonly Token[], k: number, { quantity: { value } }: Figure): boolean =>
  Number.isInteger(value) && (isNumbered(tokens, k) || isToldOf(tokens, k, value));
const isToldOf = (tokens: readonly Token[], k: number, value: number): boolean =>
  value <= mostBatches &&
  /^(?:entry|batch|run|attempt|version|v|exp|experiment|try|loaf)$/.test(spoken(tokens[k - 1])) &&
  /^(?:was|were|had|has|is|used|took|got|came|went|turned|set|overheated)$/.test(spoken(tokens[k + 1])) &&
  !weighsAnything(tokens, sentenceAt(tokens, k, longestBatch));
const mostBatches = 200;
const longestBatch = 40;
/** What it weighed tells of which batch it was. */
const weighsAnything = (tokens: readonly Token[], { from, to }: Span): boolean =>
  isAny(tokens, from, to, (one) => one.t === 'quantity' && one.quantity.dim !== 'bare');

/** "Carrot, 1, grated fine", "2 carrots": things of the garden that are counted, by a figure that is no weight of them. */
export function isOfGarden(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean {
  if (dim !== 'bare' || !Number.isInteger(value) || value > mostOfGarden) return false;
  const before = isMark(tokens[k - 1], ',:') ? tokens[k - 2] : tokens[k - 1];
  return [tokens[k + 1], before].some((name) => name?.t === 'name' && ofGarden.test(name.text));
}
const mostOfGarden = 6;
const ofGarden = /^(?:fresh )?(?:carrots?|cucumbers?|pumpkins?|sweet potato(?:es)?|bananas?|courgettes?)$/i;

/** "Two lots of colour, 5 g each": in a sentence that names nothing else. */
export function isEachColour(tokens: readonly Token[], k: number, { quantity: { dim, each } }: Figure): boolean {
  if (dim !== 'mass' || !(each || [k - 1, k + 1].some((at) => spoken(tokens[at]) === 'each'))) return false;
  const { from, to } = sentenceAt(tokens, k, longestBatch);
  const isColour = (one: Token): boolean => ofColour.test(spoken(one)) || (one.t === 'name' && ofColour.test(one.text));
  const isElse = (one: Token): boolean => isIngredient(one) && one.meaning.kind !== 'additive';
  return isAny(tokens, from, k, isColour) && !isAny(tokens, from, to, isElse);
}
const ofColour = /^(?:(?:soap )?colou?r(?:s|ants?|ings?)?|micas?|pigments?|clays?|oxides?|dyes?|glitter)$/i;

/** "the two waters", "all four fats", "for those three": how many were named, and no weight. */
export function isCounted(tokens: readonly Token[], k: number, { quantity: { dim, value, inWords } }: Figure): boolean {
  const [before, name] = [tokens[k - 1], tokens[k + 1]];
  // "there are thirty-one of them"
  if (
    dim === 'bare' &&
    isWord(tokens[k + 1], 'of') &&
    isWord(tokens[k + 2], 'them') &&
    /^(are|were|have|got)$/.test(wordAt(tokens, k - 1))
  )
    return true;
  // "three of us got 83 and four got 84"
  if (dim === 'bare' && inWords && value <= 12 && isWord(tokens[k + 1], 'of') && isWord(tokens[k + 2], 'us'))
    return true;
  // "strong enough for the first two"
  if (
    dim === 'bare' &&
    Number.isInteger(value) &&
    value <= 12 &&
    /^(first|last|next|other|top|bottom|upper|lower|same)$/.test(wordAt(tokens, k - 1)) &&
    /^(the|my|those|these|your)$/.test(wordAt(tokens, k - 2)) &&
    !isIngredient(name)
  )
    return true;
  // "rendered with salt water, three goes"
  if (dim === 'bare' && inWords && value <= 12 && isMark(before, ',') && name?.t === 'word')
    return (
      name.sort === 'everyday' && /^[a-z]{3,}s$/.test(name.text) && !/^(?:always|please|thus|this)$/.test(name.text)
    );
  if (dim === 'bare' && inWords && value <= 12 && /^(these|those)$/.test(wordAt(tokens, k - 1)))
    return name?.t !== 'name' || name.meaning.kind === 'role';
  return (
    dim === 'bare' &&
    Number.isInteger(value) &&
    value <= 12 &&
    before?.t === 'word' &&
    /^(the|these|those|my|all|both|between|other|our)$/.test(before.text) &&
    name?.t === 'name' &&
    name.text.endsWith('s') &&
    /^(water|fat|alkali|liquid|role)$/.test(name.meaning.kind)
  );
}

/** "Hardness 41, cleansing: 10": what is reckoned of a bar, and no weight. */
export function isOfBar(tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean {
  const at = isMark(tokens[k - 1], ':=') ? k - 2 : k - 1;
  return (
    dim === 'bare' &&
    /^(?:hardness|cleansing|conditioning|bubbly|bubbles|creamy|creaminess|longevity)$/.test(wordAt(tokens, at)) &&
    (isStop(tokens[k + 1]) || isMark(tokens[k + 1], ',/|)\t'))
  );
}

/** "It's 2 a.m. and the baby's up". */
export const isHour = (tokens: readonly Token[], k: number): boolean =>
  /^[ap]$/.test(wordAt(tokens, k + 1)) && isMark(tokens[k + 2], '.') && isWord(tokens[k + 3], 'm');

/** "Task 2: find the water", "(2 points)": the number of what a worksheet asks, and what it is worth. */
export const isOfTask = (tokens: readonly Token[], k: number, { quantity: { value } }: Figure): boolean =>
  Number.isInteger(value) &&
  (/^(?:points?|marks?)$/.test(wordAt(tokens, k + 1))
    ? isMark(tokens[k - 1], '([') && isMark(tokens[k + 2], ')]')
    : /^(?:task|exercise|problem|question)$/.test(wordAt(tokens, k - 1)) &&
      isStop(tokens[k - 2]) &&
      isMark(tokens[k + 1], ':.'));

/** "[4 P]": what a line of a worksheet is worth. */
export const isWorth = (tokens: readonly Token[], k: number): boolean =>
  isMark(tokens[k - 1], '[') &&
  /^(?:p|pts?|points?|marks?)$/i.test(spoken(tokens[k + 1])) &&
  isMark(tokens[k + 2], ']');

/** "lot 4471": the number of what was bought. */
export const isLot = (tokens: readonly Token[], k: number, { quantity: { text } }: Figure): boolean =>
  isRole(tokens[k - 1], 'number') && /^lot$/i.test(spoken(tokens[k - 1])) && /^\d{3,}$/.test(text);

/** "fat + 3 NaOH -> glycerol + 3 soap": how many of each react, in a line that weighs nothing. */
export function isOfReaction(tokens: readonly Token[], k: number, { quantity: { value } }: Figure): boolean {
  if (!Number.isInteger(value) || value > 3) return false;
  let [from, to] = [k, k + 1];
  while (from > 0 && k - from <= longestReaction && !isStop(tokens[from - 1])) from--;
  while (to < tokens.length && to - k <= longestReaction && !isStop(tokens[to])) to++;
  const has = (test: (token: Token) => boolean): boolean => isAny(tokens, from, to, test);
  const isArrow = tokens
    .slice(from, to)
    .some((token, at, all) => isMark(token, '=•') || (isMark(token, '>') && isMark(all[at - 1], '-=')));
  return (
    isArrow &&
    has((token) => isMark(token, '+')) &&
    has((token) => /^soaps?$/i.test(spoken(token))) &&
    has((token) => token.t === 'name' && token.meaning.id === 'glycerin') &&
    has((token) => token.t === 'name' && token.meaning.kind === 'alkali') &&
    !has(isMeasured)
  );
}
const longestReaction = 20;

/** "2 x 143 = 286 g": where what it is multiplied by stands, if that makes the weight behind it; -1 where it does not. */
export function timesTo(tokens: readonly Token[], k: number, { quantity: { value } }: Figure): number {
  const [times, other, made] = [tokens[k + 1], tokens[k + 2], tokens[k + 4]];
  if (!/^[x×*]$/.test(times?.t === 'sign' ? times.text : spoken(times)) || !isMark(tokens[k + 3], '=')) return -1;
  if (other?.t !== 'quantity' || made?.t !== 'quantity' || made.quantity.dim !== 'mass') return -1;
  const { dim, unit } = other.quantity;
  const own = dim === 'bare' ? other.quantity.value * (made.quantity.unit?.factor ?? 1) : other.quantity.value;
  const agrees = Math.abs(value * own - made.quantity.value) <= 0.006 * made.quantity.value;
  return agrees && (dim === 'bare' || (dim === 'mass' && unit !== null)) ? k + 2 : -1;
}

/** "The batter was divided in five equal parts". */
export const isShareOut = (tokens: readonly Token[], k: number, { quantity: { text } }: Figure): boolean =>
  /^equal/i.test(text) && isAny(tokens, k - 5, k, (one) => gives(one, signal.parting)) && !isIngredient(tokens[k + 1]);

/** "One: coconut is a liquid. Two: lye pulls moisture": the points of what somebody has to say. */
export function isPoint(tokens: readonly Token[], k: number, { quantity: { inWords } }: Figure): boolean {
  const next = tokens[k + 3];
  return (
    inWords &&
    isMark(tokens[k + 1], ':') &&
    (isStop(tokens[k - 1]) || endsDotted(tokens[k - 1])) &&
    !isMeasured(tokens[k + 2]) &&
    next?.t === 'word' &&
    next.sort === 'everyday'
  );
}

/** `page 11 of 38`, `2 of 3`: whole figures, behind which nothing is named */
export function isPageCount(tokens: readonly Token[], k: number): boolean {
  const [part, whole, next] = [tokens[k], tokens[k + 2], tokens[k + 3]];
  if (part?.t !== 'quantity' || whole?.t !== 'quantity' || whole.quantity.dim !== 'bare') return false;
  const [a, b] = [part.quantity.value, whole.quantity.value];
  return Number.isInteger(a) && Number.isInteger(b) && a <= b && !isIngredient(next);
}

/** "I rendered the tallow three times with salt water": how often. */
export const isOften = (tokens: readonly Token[], k: number, { quantity: { value } }: Figure): boolean => {
  const times = tokens[k + 1];
  if (!Number.isInteger(value) || times?.t !== 'name' || times.text.toLowerCase() !== 'times') return false;
  const next = tokens[k + 2];
  return next?.t === 'word'
    ? !/^(?:the|as|its|more|that|what|my|of|less)$/.test(next.text)
    : next?.t !== 'quantity' && !isIngredient(next) && !isMark(next, '=');
};

/** "Three goats give us 4 litres a day", "we get through 20 litres a month": what somebody has or uses in such a time. */
export const isADay = (tokens: readonly Token[], k: number): boolean => {
  const behind = tokens[k + 1];
  const isTime =
    (behind?.t === 'quantity' && behind.quantity.dim === 'time') ||
    (/^(?:a|per|each|every)$/.test(spoken(behind)) && /^(?:day|week|month|year)$/.test(spoken(tokens[k + 2]))) ||
    /^(?:daily|weekly|monthly)$/.test(spoken(behind));
  return isTime && isMeasured(tokens[k]) && !isIngredient(tokens[k - 1]);
};

/** "Washed with brine 2x", "ok to repeat x1": how often it is done; where the "x" stands, or -1. */
export function oftenAt(tokens: readonly Token[], k: number, { quantity: { value } }: Figure): number {
  if (!Number.isInteger(value) || value > 20) return -1;
  const x = [k + 1, k - 1].find((at) => isWord(tokens[at], 'x')) ?? -1;
  const [from, to] = [Math.min(k, x), Math.max(k, x) + 1];
  if (x < 0 || tokens[from - 1]?.t === 'quantity' || !(isStop(tokens[to]) || isMark(tokens[to], ',)'))) return -1;
  return isAny(tokens, from - 4, from, (one) => doing.test(spoken(one))) ? x : -1;
}
const doing = /^(?:wash|rins|filter|strain|repeat|salt|sieve|skim|clean|mou?ld)/;

/** "Zapped one out of five". */
export const isOutOf = (tokens: readonly Token[], k: number): boolean =>
  isWord(tokens[k - 1], 'of') &&
  isWord(tokens[k - 2], 'out') &&
  (isStop(tokens[k + 1]) || isRole(tokens[k + 1], 'bars'));

/** "4 pages long". */
export const isOfPages = (tokens: readonly Token[], k: number): boolean => {
  const counted = tokens[k + 1];
  return isRole(counted, 'number') && counted?.t === 'name' && /^pages$/i.test(counted.text);
};

/** "split the batter in 2", "cut into 10". */
export function isPortion(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean {
  const [before, next] = [tokens[k - 1], tokens[k + 1]];
  return (
    dim === 'bare' &&
    Number.isInteger(value) &&
    before?.t === 'word' &&
    /^(in|into)$/.test(before.text) &&
    isAny(tokens, k - 4, k, (one) => gives(one, signal.parting)) &&
    (next?.t !== 'name' || next.meaning.kind === 'role')
  );
}

/** "2 eggs", "eggs 1/2 a dozen": how many, and no weight. */
export function isEggs(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean {
  if (dim !== 'bare' || value > mostEggs) return false;
  return [1, -1].some((step) => {
    for (let at = k + step; Math.abs(at - k) <= 3; at += step) {
      const token = tokens[at];
      if (token?.t === 'name') return /^egg/.test(token.meaning.id);
      const counts = token?.t === 'word' ? token.sort === 'filler' : token?.t === 'quantity' || token?.t === 'aside';
      if (!counts) return false;
    }
    return false;
  });
}

const mostEggs = 12;

export const isYear = ({ quantity: { dim, value } }: Figure): boolean =>
  dim === 'bare' && Number.isInteger(value) && value >= 1900 && value < 2100;

/** `coconut oil (76) 9 oz`, "coconut (the hard 92 one)": what melts at 76 °F, or the hydrogenated kind at 92. */
export function isMeltPoint(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean {
  if (dim !== 'bare' || (value !== 76 && value !== 92)) return false;
  let [from, to] = [k - 1, k + 1];
  while (k - from <= 2 && tokens[from]?.t === 'word') from--;
  while (to - k <= 2 && tokens[to]?.t === 'word') to++;
  const name = tokens[from - 1];
  return (
    isMark(tokens[from], '(') &&
    isMark(tokens[to], ')') &&
    name?.t === 'name' &&
    /^(coconut|palm-kernel)/.test(name.meaning.id)
  );
}

/** "A farmer 12 km up the road". */
export const isDistance = (tokens: readonly Token[], k: number): boolean =>
  /^(?:km|kms|kilomet(?:er|re)s?|miles?)$/.test(wordAt(tokens, k + 1));

const washes: ReadonlySet<string> = new Set(['load', 'wash', 'washload', 'laundry', 'machine', 'bucket', 'sinkful']);

/** "1/2 cup per load", "1 tablespoon to a bucket of water": of the soap that is used up, no figure of the pot. */
export function isDose(tokens: readonly Token[], k: number): boolean {
  const isInto = /^(?:to|in|into|per)$/.test(wordAt(tokens, k + 1)) && pails.test(spoken(tokens[k + 3]));
  const isBehindName = isIngredient(tokens[k - 1]) || isMark(tokens[k - 1], ':=,(');
  if (
    isInto &&
    !isBehindName &&
    isMeasured(tokens[k]) &&
    /^(?:an?|the|each|every|one|your)$/.test(wordAt(tokens, k + 2))
  )
    return true;
  if (!doses.has(wordAt(tokens, k + 1))) return false;
  // "per full machine load"
  return [k + 2, k + 3].some((at) => washes.has(wordAt(tokens, at)));
}
const pails = /^(?:bucket|pail|sink|sinkful|basin|bath)$/;
const doses: ReadonlySet<string> = new Set(['per', 'a', 'each', 'every']);

/** "Three-oil slab", "a 4-fat bar": of how many it is made. */
export const isManyKinds = (tokens: readonly Token[], k: number, { quantity: { value } }: Figure): boolean =>
  Number.isInteger(value) &&
  isMark(tokens[k + 1], '-') &&
  /^(?:oil|fat|ingredient|butter)s?$/.test(spoken(tokens[k + 2])) &&
  spoken(tokens[k + 3]) !== '';

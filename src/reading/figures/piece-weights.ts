/** The weight of one bar or piece of soap: "12 bars at 100 g", "one piece is then about 110 g". */
import {
  endsDotted,
  isAny,
  isEach,
  isIngredient,
  isMark,
  isRole,
  isStop,
  isWeight,
  isWord,
  light,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';

const isCount = (token: Token): boolean => token.t === 'quantity' && token.quantity.dim === 'bare';

/** Tokens from a weight back to the bars that it is of, at the most. */
export const barsNear = 12;

/** Where bars are named in the sentence, a few words before token `k`; -1 where they are not. */
export function barsBefore(tokens: readonly Token[], k: number): number {
  for (let at = k - 1; at >= 0 && k - at <= barsNear; at--) {
    const token = tokens[at];
    if (token?.t === 'line' || (token?.t === 'sign' && token.text === '.')) return -1;
    if (isRole(token, 'bars')) return at;
  }
  return -1;
}

/** "Each crumbles when I cut: palm 350 g": a weight right behind the name of what goes in is that of it. */
const isStuff = (token: Token | undefined): boolean =>
  token?.t === 'name' && /^(?:fat|alkali|water|liquid)$/.test(token.meaning.kind);

/** "12 bars at 100 g", "bars of 4 oz each". */
export function isBarWeight(tokens: readonly Token[], k: number, token: Figure, bars: number): boolean {
  // "for today's bars I weighed 290 g of it"
  const isOfIt = isWord(tokens[k + 1], 'of') && (isWord(tokens[k + 2], 'it') || isIngredient(tokens[k + 2]));
  return (
    token.quantity.dim === 'mass' &&
    !isOfIt &&
    !isStuff(tokens[k - 1]) &&
    (token.quantity.each ||
      // "10 bars x 100 g"
      (bars === k - 2 && isWord(tokens[k - 1], 'x') && (endsDotted(token) || !isIngredient(tokens[k + 1]))) ||
      tokens.slice(bars, k).some(isEach) ||
      tokens
        .slice(Math.max(0, k - 4), k)
        .some(
          (one, n, all) =>
            (one.t === 'word' || one.t === 'sign') &&
            (/^(at|@|à|of|average|averaging|avg|weighing)$/.test(one.text) ||
              (/^(is|was|are|were|weighs?|weighed)$/.test(one.text) && !isIngredient(tokens[k + 1]))) &&
            all.slice(n + 1).every((word) => light(word) || isWord(word, 'then') || isMark(word, '~')) &&
            (k - bars <= 3 ||
              tokens.slice(bars + 1, k).every((word) => word.t === 'word' || isMark(word, ':×,@~') || isCount(word))),
        ))
  );
}

/** "Net 110 g e", "net wt. 3.5 oz (100 g)": where that begins which a label says of one piece; -1 where it does not. */
export function netAt(tokens: readonly Token[], k: number, token: Figure): number {
  if (!isWeight(token) || isIngredient(tokens[k + 1]) || isWord(tokens[k + 1], 'of')) return -1;
  let at = k - 1;
  if (isMark(tokens[at], '(/') && isWeight(tokens[at - 1])) at -= 2;
  const first = at;
  while (first - at <= 4 && (/^(wt|weight|contents|content|min)$/.test(wordAt(tokens, at)) || isMark(tokens[at], '.:')))
    at--;
  const isNet = /^nett?$/.test(wordAt(tokens, at)) || (at < first && isWord(tokens[at], 'nt'));
  const isOwn = tokens[at - 1]?.t !== 'line' && (isIngredient(tokens[at - 1]) || isIngredient(tokens[at - 2]));
  return isNet && !isOwn ? at : -1;
}

/** Weights in the rest of the sentence about bars: those behind which no ingredient stands, nor in front of them. */
export function weightsBehind(tokens: readonly Token[], from: number): readonly number[] {
  const found: number[] = [];
  for (let k = from + 1; k < tokens.length && k - from <= 12; k++) {
    const token = tokens[k];
    if (token?.t === 'line' || isMark(token, '.;') || isIngredient(token)) break;
    if (!isWeight(token)) continue;
    let next = k + 1;
    while (light(tokens[next]) || isMark(tokens[next], ':=-')) next++;
    if (isIngredient(tokens[next])) break;
    found.push(k);
  }
  return found;
}

const roughly: ReadonlySet<string> = new Set(['about', 'around', 'approx', 'roughly', 'some', 'nearly']);

const soapPieces = /^(?:pucks|slabs|slices|pieces|rounds|discs|disks|tablets|squares|hearts|logs|loaves)$/;

/** Where the sentence or line of token `k` begins. */
const startOf = (tokens: readonly Token[], k: number): number => sentenceAt(tokens, k, barsNear).from;

/** "12 pucks of about 100 g": so many of something that is no ingredient, each of that weight. */
export function isPieceWeight(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (token.quantity.dim !== 'mass') return false;
  const behind = tokens[k + 1];
  if (behind?.t === 'name' || (behind?.t === 'word' && behind.text === 'of')) return false;
  let at = k - 1;
  if (roughly.has(wordAt(tokens, at))) at--;
  const isOf = wordAt(tokens, at) === 'of';
  if (!isOf) {
    // "Yield: 10 pucks 4.9 oz", "22 slabs at 100 g", where nothing that goes in is named
    if (isMark(tokens[at], '@,') || wordAt(tokens, at) === 'at') at--;
    if (!soapPieces.test(wordAt(tokens, at)) || isAny(tokens, startOf(tokens, at), at, isIngredient)) return false;
    at++;
  }
  const [piece, count] = [tokens[at - 1], tokens[at - 2]];
  return (
    piece?.t === 'word' &&
    piece.sort === 'everyday' &&
    piece.text.endsWith('s') &&
    count?.t === 'quantity' &&
    count.quantity.dim === 'bare' &&
    count.quantity.value > 1
  );
}

/** "We'll cut them at a hundred grams"; "I want to cut it to 100 g and use 450 g olive" is said of a fat. */
export const isCutAt = (tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean =>
  dim === 'mass' &&
  /^(at|to|into)$/.test(wordAt(tokens, wordAt(tokens, k - 1) === 'a' ? k - 2 : k - 1)) &&
  [k - 2, k - 3, k - 4].some((at) => /^(cut|cutting|cuts|slice|sliced)$/.test(wordAt(tokens, at))) &&
  !isIngredient(tokens[k + 1]) &&
  !isIngredient(tokens[k - 2]) &&
  !(isWord(tokens[k - 1], 'to') && isWord(tokens[k - 2], 'it') && !isRole(tokens[k + 1], 'bars'));

const pieces = /^(piece|slice|puck|cake|tablet|square|heart|brick|disc|disk|round|one)$/;

const weights: ReadonlySet<string> = new Set(['weight', 'weights', 'weighs', 'weighed']);
const stages =
  /^(?:disc|disk|piece|slice|puck|cake|tablet|square|heart|brick|round|cutting|unmou?lding|cut|poured|wet|dry|now|today)$/;

/** "Weight per disc: 92 g", "weight at cutting 1471 g", "weight poured 1486 g": of the soap, where no ingredient is named. */
export function isSoapWeight(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isWeight(token) || isIngredient(tokens[k + 1]) || isWord(tokens[k + 1], 'of')) return false;
  let at = k - 1;
  while (k - at <= 3 && (isMark(tokens[at], ':=') || light(tokens[at]) || wordAt(tokens, at) === 'is')) at--;
  const stage = spoken(tokens[at]);
  if (isCured(tokens, at)) return true;
  if (!stages.test(stage) && !isRole(tokens[at], 'bars')) return false;
  at--;
  while (k - at <= 6 && (isEach(tokens[at]) || light(tokens[at]) || /^(?:when|per|one)$/.test(spoken(tokens[at]))))
    at--;
  return weights.has(spoken(tokens[at])) && !isIngredient(tokens[at - 1]);
}

/** "Weight after cure", "weight after six weeks", "cured weight", "weight on the label", "after cure" behind one before it: up to token `at`. */
function isCured(tokens: readonly Token[], at: number): boolean {
  const isLabel = /^(?:label|wrapper|band)$/.test(spoken(tokens[at]));
  if (isLabel && isAny(tokens, at - 3, at, (one) => weights.has(spoken(one)))) return true;
  if (weights.has(spoken(tokens[at])))
    return /^(?:cured|dry|dried|wet|final|end|label|labell?ed)$/.test(spoken(tokens[at - 1]));
  if (!/^(?:cur(?:e|ed|ing)|weeks|months|days)$/.test(spoken(tokens[at])) && !isSpan(tokens[at])) return false;
  let from = at - 1;
  while (at - from <= 3 && (light(tokens[from]) || tokens[from]?.t === 'quantity')) from--;
  if (!/^(?:after|before)$/.test(spoken(tokens[from]))) return false;
  for (let k = from - 1; from - k <= 6 && !isIngredient(tokens[k]) && tokens[k]?.t !== 'line'; k--)
    if (weights.has(spoken(tokens[k]))) return !isIngredient(tokens[k - 1]);
  return false;
}
const isSpan = (token: Token | undefined): boolean => token?.t === 'quantity' && token.quantity.dim === 'time';

/** "The bars were 120 g each, now they're 104 g": bars are spoken of, and nothing that goes in since. */
export function isOfThem(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isWeight(token) || isIngredient(tokens[k + 1]) || isWord(tokens[k + 1], 'of')) return false;
  let at = k - 1;
  while (k - at <= 3 && (light(tokens[at]) || /^(?:now|only|about|just|still|all)$/.test(wordAt(tokens, at)))) at--;
  const isVerb = /^(?:are|were|weigh|weighed)$/.test(wordAt(tokens, at));
  if (!/^theyre$/.test(wordAt(tokens, at)) && !(isVerb && wordAt(tokens, at - 1) === 'they')) return false;
  for (let back = at; back >= 0 && at - back <= farBack; back--) {
    if (isIngredient(tokens[back])) return false;
    if (isRole(tokens[back], 'bars')) return true;
  }
  return false;
}
const farBack = 24;

/** "14 bars, shortest 3.4 oz, tallest 3.9 oz": the word for one of them right before its weight. */
export const isOneOfBars = (tokens: readonly Token[], k: number, token: Figure): boolean =>
  isWeight(token) &&
  /^(?:lightest|heaviest|shortest|tallest|smallest|largest|biggest|thinnest|thickest|least|most)$/.test(
    spoken(tokens[k - 1]),
  ) &&
  !isIngredient(tokens[k + 1]) &&
  !isWord(tokens[k + 1], 'of') &&
  barsBefore(tokens, k) >= 0;

/** "Frames, 12 pcs: 3.2 kg each": of the pieces that the line counts, where nothing that goes in is named. */
export function isEachPiece(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isWeight(token) || !(token.quantity.each || isEach(tokens[k + 1]))) return false;
  let [from, to] = [k, k + 1];
  while (from > 0 && tokens[from - 1]?.t !== 'line' && k - from < barsNear) from--;
  while (to < tokens.length && tokens[to]?.t !== 'line' && to - k < barsNear) to++;
  return (
    isAny(tokens, from, k, (one) => /^(?:frames?|pcs|slabs?|blocks?|logs?|trays?)$/i.test(spoken(one))) &&
    !isAny(tokens, from, to, isIngredient)
  );
}

/** "Neem soap, lot D3, 14 x 70 g" as the title of a post: what was cut of it. */
export function isInTitle(tokens: readonly Token[], k: number, { quantity: { text } }: Figure): boolean {
  if (k > longestTitle || !/^\d+\s*[x×]/.test(text) || tokens[k + 1]?.t !== 'line') return false;
  if (!isMark(tokens[k - 1], '\t,(-')) return false;
  return (
    !isAny(tokens, 0, k, (one) => one.t === 'line') &&
    isAny(tokens, 0, k, (one) => isRole(one, 'batch-word') || isRole(one, 'bars'))
  );
}
const longestTitle = 15;

const isTime = (token: Token | undefined): boolean => /^(?:day|week|month)s?$/i.test(spoken(token));

/** `week | weight` over rows of a number and a weight, of which the weight at `k` ends one. */
function isUnderTime(tokens: readonly Token[], k: number): boolean {
  if (tokens[k + 1] !== undefined && tokens[k + 1]?.t !== 'line') return false;
  let end = k;
  for (let rows = 0; tokens[end]?.t === 'quantity' && rows < mostLogged; rows++) {
    const [number, tab, before] = [tokens[end - 2], tokens[end - 1], tokens[end - 3]];
    if (number?.t !== 'quantity' || !isMark(tab, '\t') || before?.t !== 'line') return false;
    end -= 4;
  }
  let from = end + 1;
  while (tokens[from - 1] && tokens[from - 1]?.t !== 'line') from--;
  return isTime(tokens[from]) && !isAny(tokens, from, end + 1, isIngredient);
}
const mostLogged = 30;

/** A line or a sentence begins there, its bullet aside, or a row stands before that is logged, too. */
function isOpening(tokens: readonly Token[], k: number): boolean {
  const at = isMark(tokens[k - 1], '-•*') ? k - 2 : k - 1;
  const before = tokens[at];
  if (isStop(before) || endsDotted(before) || before?.t === 'aside') return true;
  const row = tokens[at - 1];
  return isMark(before, ',/') && row?.t === 'quantity' && isLogged(tokens, at - 1, row);
}

/** "Week 3: 1,221 g", "day 14 = 98 g", "after 4 weeks 104 g": a row of a log, where nothing but the time is named. */
export function isLogged(tokens: readonly Token[], k: number, token: Figure): boolean {
  const next = tokens[k + 1];
  const closes = next === undefined || next.t === 'line' || isMark(next, ',;./') || endsDotted(token);
  if (!isWeight(token) || !closes) return false;
  let at = k - 1;
  // "day 14 109 g" looks like thousands
  if (isTime(tokens[at]) && /^\d{1,3} \d{3}\b/.test(token.quantity.text)) return isOpening(tokens, at);
  // "week 6 - 118 g" looks like a range
  if (token.quantity.upTo !== null) return isTime(tokens[at]) && isOpening(tokens, at);
  if (isMark(tokens[at], '\t') && isUnderTime(tokens, k)) return true;
  if (isMark(tokens[at], ':=-')) at--;
  const number = tokens[at];
  // "next day: 58.9 oz"
  if (isTime(number) && /^(?:next|first|second|third|last)$/.test(spoken(tokens[at - 1])))
    return isOpening(tokens, at - 1);
  const isDated = number?.t === 'aside' || number?.t === 'quantity';
  const from = isDated ? at - (/^(?:day|week|month)s?$/.test(spoken(tokens[at - 1])) ? 1 : 0) : at;
  const isBehind = number?.t === 'quantity' && /^(?:after|at|in)$/.test(spoken(tokens[from - 1]));
  if (!isOpening(tokens, isBehind ? from - 1 : from)) return false;
  if (isDated && from < at) return true;
  return number?.t === 'quantity' && number.quantity.dim === 'time';
}

/** "One piece is then about 110 g". */
export function isOnePiece(tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean {
  if (dim !== 'mass' || isIngredient(tokens[k + 1])) return false;
  let at = k - 1;
  while (k - at <= 4 && (light(tokens[at]) || isWord(tokens[at], 'then')) && !pieces.test(wordAt(tokens, at))) at--;
  return (
    isAny(tokens, at + 1, k, (one) => one.t === 'word' && /^(is|was|weighs?|weighed)$/.test(one.text)) &&
    pieces.test(wordAt(tokens, at)) &&
    /^(one|a|each|every|per|single)$/.test(wordAt(tokens, at - 1))
  );
}

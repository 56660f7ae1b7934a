/**
 * "400 g olive, the same again of lard, half that much coconut", "castor double that": weights that are told by the one
 * before.
 */
import type { Quantity } from '../words/quantities.ts';
import { isAny, isFat, isMark, isStop, isWeight, sentenceAt, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedAt, weighedElsewhere } from '../words/weighed.ts';

/** What such a phrase begins with, or goes on with behind an article. */
const factors: Readonly<Record<string, number>> = {
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  twice: 2,
  double: 2,
  triple: 3,
  treble: 3,
  quadruple: 4,
};
const heads: ReadonlySet<string> = new Set([
  'same',
  'as',
  'equal',
  'ditto',
  'so',
  'likewise',
  'too',
  ...Object.keys(factors),
]);
/** What stands for a weight that only the writer knows. */
export const untold = 'so much';
const measure = /^(?:amount|weight|quantity|much)$/;

type Name = Extract<Token, { t: 'name' }>;
interface Phrase {
  readonly factor: number;
  readonly end: number;
  /** It says of what it is so much: a fat stands right behind it. */
  readonly of: boolean;
  readonly numbers: readonly number[];
  /** The fat that it is so much of. */
  readonly base: Name | null;
  /** The weight that stands right before. */
  readonly weight?: Quantity;
}

export function asMuch(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 1; k < tokens.length; k++) {
    const head = tokens[k];
    if (!(head?.t === 'word' ? heads.has(head.text) : head?.t === 'quantity' ? isTimes(head) : isEqual(head))) continue;
    const now: readonly Token[] = out ?? tokens;
    const phrase = alsoAt(now, k) ?? phraseAt(now, k);
    const at = phrase ? ownerOf(now, k, phrase) : -1;
    const fat = now[at];
    if (!phrase || !isFat(fat) || isWeighedElsewhere(now, at, fat) || isExchanged(now, at)) continue;
    // "half of that coconut": of the coconut that is there, or of the weight before
    const isEither = phrase.factor < 1 && !phrase.of && at >= phrase.end && /^(?:that|this)$/.test(wordAt(now, at - 1));
    const told = phrase.weight ?? baseOf(now, k, at, phrase.base);
    if (told === null) continue;
    const base = isEither ? 'unsure' : told;
    out ??= [...tokens];
    for (let n = k; n < phrase.end; n++) out[n] = asFiller(tokens[n] as Token);
    if (base === 'unsure') {
      // which of the weights is meant, only the writer knows
      const beside = at > k ? phrase.end - 1 : at + 1;
      out[beside] = asFiller(tokens[beside] as Token, untold);
      continue;
    }
    const value = base.value * phrase.factor;
    const again = saidAgain(now, at > k ? at + 1 : phrase.end);
    const figure = now[again];
    if (figure?.t === 'quantity') out[again] = asAside(figure, 'said again');
    const other = figure?.t === 'quantity' && Math.abs(figure.quantity.value - value) > 0.02 * value ? figure : null;
    const text = `${Number(value.toFixed(1))}${base.dim === 'mass' ? ' g' : ''}${other ? ` or ${other.quantity.text}` : ''}`;
    const plain = { other: null, upTo: other?.quantity.value ?? null, times: null, inWords: true };
    const quantity: Quantity = { ...base, ...plain, value, text, numbers: phrase.numbers };
    const { from, to } = tokens[k] as Token;
    out[k] = { t: 'quantity', from, to, quantity };
    k = phrase.end - 1;
  }
  return out ?? tokens;
}

/** "Shea is 60 g and so is the castor", "same goes for the castor", "the castor too": as much as what stands before it. */
function alsoAt(tokens: readonly Token[], k: number): Phrase | null {
  const first = wordAt(tokens, k);
  const isBehind = /^(?:too|likewise)$/.test(first) && isFat(tokens[k - 1]);
  const verbs = also[first];
  if (!(isBehind || first === 'likewise' || verbs?.test(wordAt(tokens, k + 1)))) return null;
  let [from, end] = [k, k + 1];
  if (isBehind) {
    from--;
    while (the.test(wordAt(tokens, from - 1))) from--;
    if (!isMark(tokens[from - 1], ',;–—-') && wordAt(tokens, from - 1) !== 'and') return null;
  } else {
    while (end - k <= mostLead && lead.test(wordAt(tokens, end))) end++;
    const behind = tokens[end + 1];
    const isClosed =
      (isStop(behind) && !isMark(behind, '?')) || isMark(behind, ',)–—-') || wordAt(tokens, end + 1) === 'and';
    if (!isFat(tokens[end]) || !isClosed) return null;
  }
  const weight = weightBefore(tokens, from, isBehind ? ',;–—-' : ',;–—-.');
  return weight && { factor: 1, end, of: !isBehind, numbers: [], base: null, weight };
}
const also: Readonly<Record<string, RegExp>> = {
  so: /^(?:is|are|was|were|does|do|did|goes|has)$/,
  as: /^(?:is|are|was|were|does|did)$/,
  same: /^(?:goes|holds|with|for)$/,
};
const the = /^(?:the|my|our)$/;
const lead = /^(?:the|my|our|is|are|was|were|does|do|did|goes|holds|has|with|for)$/;
const mostLead = 4;

/** The weight of a fat that ends right before token `k`. */
function weightBefore(tokens: readonly Token[], k: number, marks: string): Quantity | null {
  let at = k - 1;
  while (/^(?:and|but|then)$/.test(wordAt(tokens, at)) || isMark(tokens[at], marks)) at--;
  const figure = wordAt(tokens, at - 1) === 'of' ? at - 2 : at - 1;
  // "60 g shea, and so is the castor"
  if (isFat(tokens[at]) && isWeight(tokens[figure])) at = figure;
  const weight = tokens[at];
  return isWeight(weight) && isFat(weighedBy(tokens, at)) ? weight.quantity : null;
}

/** "Twice", "three times", "3x". */
const isTimes = ({ quantity: { dim, inWords } }: Figure): boolean => dim === 'bare' || (inWords && dim === 'ratio');
const isEqual = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.id === 'equal';

/** "The same again of", "half as much", "a third of that in": how much of the weight before, or of the fat it names. */
function phraseAt(tokens: readonly Token[], k: number): Phrase | null {
  const word = (at: number): string => {
    const token = tokens[at];
    return token?.t === 'word' || token?.t === 'name' ? token.text.toLowerCase() : '';
  };
  const head = tokens[k];
  const found = (factor: number, end: number, numbers: readonly number[] = []): Phrase => {
    const at = word(end) === 'again' ? end + 1 : end;
    const of = /^(?:of|in|as)$/.test(word(at));
    // "double that of the palm", "the same as palm"
    const fat = of ? (word(at + 1) === 'the' ? at + 2 : at + 1) : at;
    const base = of && (word(at) === 'as' || isTold(tokens, fat)) ? tokens[fat] : undefined;
    if (isFat(base)) return { factor, end: fat + 1, of: false, numbers, base };
    const isOf = word(at) === 'of' || word(at) === 'in';
    const isItsOwn = isOf || measure.test(word(at - 1)) || word(at - 1) === 'again';
    return { factor, end: isOf ? at + 1 : at, of: isItsOwn, numbers, base: null };
  };
  // "same amount of"
  if (isEqual(head)) return /^same/.test(word(k)) ? { ...found(1, k + 1), of: true } : null;
  const first = word(k);
  if (first === 'ditto') return { ...found(1, k + 1), of: true };
  if (first === 'same') return found(1, measure.test(word(k + 1)) ? k + 2 : k + 1);
  if (first === 'equal') return measure.test(word(k + 1)) ? found(1, k + 2) : null;
  if (first === 'as') return word(k + 1) === 'much' && !partOrTimes(tokens, k - 1) ? found(1, k + 2) : null;
  const times = head?.t === 'quantity' ? head.quantity : null;
  const factor = times ? times.value : (factors[first] ?? 0);
  if (!(factor > 0)) return null;
  let at = k + 1;
  if (times?.dim === 'bare' && !/^(?:times|x)$/.test(word(at++))) return null;
  while (/^(?:of|the)$/.test(word(at))) at++;
  const numbers = times?.numbers ?? [];
  if (word(at) === 'as' && word(at + 1) === 'much') return found(factor, at + 2, numbers);
  if (/^(?:that|this)$/.test(word(at))) return found(factor, measure.test(word(at + 1)) ? at + 2 : at + 1, numbers);
  if (measure.test(word(at)) && word(at) !== 'much') return found(factor, at + 1, numbers);
  // "olive double the palm", and no "half palm half lard"
  const fat = tokens[at];
  if (isFat(fat) && (factor > 1 || at > k + 1) && isTold(tokens, at))
    return { factor, end: at + 1, of: false, numbers, base: fat };
  // "olive double", "double the olive"; "rendered the tallow twice" is no weight
  if (
    factor < 1 ||
    first === 'twice' ||
    times?.dim === 'bare' ||
    (at === k + 1 && !beginsRow(tokens, isMark(tokens[k - 1], ':=-') ? k - 2 : k - 1))
  )
    return null;
  return { factor, end: at, of: at > k + 1, numbers, base: null };
}

const beginsRow = (tokens: readonly Token[], at: number): boolean =>
  isFat(tokens[at]) && (isStop(tokens[at - 1]) || isMark(tokens[at - 1], ',(+&'));

const isTold = (tokens: readonly Token[], at: number): boolean =>
  isFat(tokens[at]) && ((weighedAt(tokens, at) && !isMark(tokens[at + 1], ',.;')) || weighedElsewhere(tokens, at));

const partOrTimes = (tokens: readonly Token[], k: number): boolean =>
  tokens[k]?.t === 'quantity' || wordAt(tokens, k) in factors;

/** The fat that is so much: right behind the phrase, or before it where its row ends; -1 where none is. */
function ownerOf(tokens: readonly Token[], k: number, { of, end, factor }: Phrase): number {
  // "double that olive", "half of that coconut"
  const isThat = /^(?:that|this)$/.test(wordAt(tokens, end - 1));
  const isOpen = !weighedAt(tokens, end) || isMark(tokens[end + 1], '.;');
  const isNext = of || ((factor > 1 || isThat) && isOpen);
  if (isNext && isFat(tokens[end])) return end;
  let at = k - 1;
  while (/^(?:the|a|an|just|is|about)$/.test(wordAt(tokens, at)) || isMark(tokens[at], ':=-')) at--;
  const behind = tokens[end];
  const ends = behind === undefined || behind.t === 'line' || isMark(behind, ',.;(?!') || isFat(behind);
  return ends && isFat(tokens[at]) && !weighedBefore(tokens, at) ? at : -1;
}

/** "300 g olive, the same": it has its weight. */
const weighedBefore = (tokens: readonly Token[], at: number): boolean =>
  (isWeight(tokens[at - 1]) && !(isFat(tokens[at - 2]) && !isWeight(tokens[at - 3]))) ||
  (wordAt(tokens, at - 1) === 'of' && isWeight(tokens[at - 2]));

const isWeighedElsewhere = (tokens: readonly Token[], at: number, fat: Name): boolean =>
  tokens.some((one, k) => k !== at && isFat(one) && thingOf(one) === thingOf(fat) && weighedAt(tokens, k)) ||
  isWeight(tokens[at + 1]);

const exchanging = /^(?:instead|place|lieu|rather|replac|swap|substitut|sub(?:s|bed|bing)?$|switch|exchang|chang|trad)/;

/** "The same of palm for it", "instead of it the same of palm": the other one goes (`for-its-place`, `changes`). */
function isExchanged(tokens: readonly Token[], at: number): boolean {
  const { from, to } = sentenceAt(tokens, at, longestWay);
  const forIt = wordAt(tokens, at + 1) === 'for' && /^(?:it|that|this|them|those)$/.test(wordAt(tokens, at + 2));
  return forIt || isAny(tokens, from, to, (_, k) => exchanging.test(wordAt(tokens, k)));
}

/** The name that the weight at `k` stands beside. */
function weighedBy(tokens: readonly Token[], k: number): Token | undefined {
  const isOfRow = isFat(tokens[k - 1]) && !isWeight(tokens[k - 2]);
  return (isOfRow ? [k - 1] : [k + 1, k - 1, k + 2, k - 2]).map((at) => tokens[at]).find((one) => one?.t === 'name');
}

/** A weight without its unit, perhaps. */
const isBare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'bare' && !token.quantity.inWords;

/** Tokens back to the weight that is meant, at the most. */
const longestWay = 60;

/** The weight meant: of the fat behind "as", or of the one fat before; `unsure` where there are several. */
function baseOf(tokens: readonly Token[], k: number, at: number, base: Name | null): Quantity | 'unsure' | null {
  const before: Quantity[] = [];
  const named = base ?? (wordAt(tokens, at + 1) === 'as' ? tokens[at + 2] : undefined);
  // "as much olive as you like"
  if (wordAt(tokens, at + 1) === 'as' && !isFat(named)) return null;
  const nearest = named ? Math.min(k + longestWay, tokens.length) - 1 : k - 1;
  for (let n = nearest; n >= 0 && k - n <= longestWay; n--) {
    const token = tokens[n];
    if (!isWeight(token) && !isBare(token)) continue;
    const owner = weighedBy(tokens, n);
    if (!isFat(owner)) {
      // the nearest weight is of no fat
      if (before.length === 0 && !named && isWeight(token)) return isAny(tokens, n, k, isStop) ? null : 'unsure';
      continue;
    }
    if (isFat(named) && thingOf(owner) !== thingOf(named)) continue;
    before.push(token.quantity);
  }
  const [last] = before;
  if (!last) return isFat(named) ? 'unsure' : null;
  if (last.upTo !== null) return null;
  return before.every(({ value }) => Math.abs(value - last.value) < 0.01 * last.value) ? last : 'unsure';
}

/** "(so 200 g)", "= 200 g": where the weight stands once more behind the row; -1 where it does not. */
function saidAgain(tokens: readonly Token[], behind: number): number {
  const from = wordAt(tokens, behind) === 'again' ? behind + 1 : behind;
  if (!isMark(tokens[from], '(,=')) return -1;
  let k = from + 1;
  while (/^(?:so|another|thats|that|is|ie|makes|or|about)$/.test(wordAt(tokens, k)) || isMark(tokens[k], '=')) k++;
  return isWeight(tokens[k]) && !(k === from + 1 && isMark(tokens[from], ',')) ? k : -1;
}

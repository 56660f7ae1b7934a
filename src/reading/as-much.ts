/** "400 g olive, the same again of lard, half that much coconut": weights that are told by the one before. */
import type { Quantity } from './quantities.ts';
import { isAny, isMark, isStop, isWeight, sentenceAt, wordAt } from './token-is.ts';
import { asAside, asFiller, type Figure, type Token } from './tokens.ts';
import { thingOf, weighedAt } from './weighed.ts';

/** What such a phrase begins with, or goes on with behind an article. */
const heads: ReadonlySet<string> = new Set('same half third quarter as equal ditto'.split(' '));
const factors: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };
const measure = /^(?:amount|weight|quantity|much)$/;

type Name = Extract<Token, { t: 'name' }>;
const isFat = (token: Token | undefined): token is Name => token?.t === 'name' && token.meaning.kind === 'fat';

interface Phrase {
  readonly factor: number;
  readonly end: number;
  /** It says of what it is so much: a fat stands right behind it. */
  readonly of: boolean;
  readonly numbers: readonly number[];
}

export function asMuch(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 1; k < tokens.length; k++) {
    const head = tokens[k];
    if (!(head?.t === 'word' ? heads.has(head.text) : head?.t === 'quantity' ? isTimes(head) : isEqual(head))) continue;
    const now: readonly Token[] = out ?? tokens;
    const phrase = phraseAt(now, k);
    const at = phrase ? ownerOf(now, k, phrase) : -1;
    const fat = now[at];
    if (!phrase || !isFat(fat) || isWeighedElsewhere(now, at, fat) || isExchanged(now, at)) continue;
    const base = baseOf(now, k, at);
    if (base === null) continue;
    out ??= [...tokens];
    for (let n = k; n < phrase.end; n++) out[n] = asFiller(tokens[n] as Token);
    if (base === 'unsure') {
      // which of the weights is meant, only the writer knows
      out[phrase.end - 1] = asFiller(tokens[phrase.end - 1] as Token, 'some');
      continue;
    }
    const value = base.value * phrase.factor;
    const again = saidAgain(now, at > k ? at + 1 : phrase.end);
    const figure = now[again];
    if (figure?.t === 'quantity') out[again] = asAside(figure, 'said again');
    const other = figure?.t === 'quantity' && Math.abs(figure.quantity.value - value) > 0.02 * value ? figure : null;
    const text = `${Number(value.toFixed(1))} g${other ? ` or ${other.quantity.text}` : ''}`;
    const plain = { other: null, upTo: other?.quantity.value ?? null, times: null, inWords: true };
    const quantity: Quantity = { ...base, ...plain, value, text, numbers: phrase.numbers };
    const { from, to } = tokens[k] as Token;
    out[k] = { t: 'quantity', from, to, quantity };
    k = phrase.end - 1;
  }
  return out ?? tokens;
}

/** "Twice", "three times". */
const isTimes = ({ quantity: { dim, inWords } }: Figure): boolean => inWords && (dim === 'ratio' || dim === 'bare');
const isEqual = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.id === 'equal';

/** "The same again of", "half as much", "a third of that in": how much of the weight before. */
function phraseAt(tokens: readonly Token[], k: number): Phrase | null {
  const word = (at: number): string => {
    const token = tokens[at];
    return token?.t === 'word' || token?.t === 'name' ? token.text.toLowerCase() : '';
  };
  const head = tokens[k];
  const found = (factor: number, end: number, numbers: readonly number[] = []): Phrase => {
    const at = word(end) === 'again' ? end + 1 : end;
    const of = /^(?:of|in)$/.test(word(at));
    return { factor, end: of ? at + 1 : at, of: of || measure.test(word(at - 1)) || word(at - 1) === 'again', numbers };
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
  if (times?.dim === 'bare' && word(at++) !== 'times') return null;
  while (/^(?:of|the)$/.test(word(at))) at++;
  const numbers = times?.numbers ?? [];
  if (word(at) === 'as' && word(at + 1) === 'much') return found(factor, at + 2, numbers);
  if (!/^(?:that|this)$/.test(word(at)))
    return measure.test(word(at)) && word(at) !== 'much' ? found(factor, at + 1, numbers) : null;
  return found(factor, measure.test(word(at + 1)) ? at + 2 : at + 1, numbers);
}

const partOrTimes = (tokens: readonly Token[], k: number): boolean =>
  tokens[k]?.t === 'quantity' || wordAt(tokens, k) in factors;

/** The fat that is so much: right behind the phrase, or before it where its row ends; -1 where none is. */
function ownerOf(tokens: readonly Token[], k: number, { of, end }: Phrase): number {
  if (of && isFat(tokens[end])) return end;
  let at = k - 1;
  while (/^(?:the|a|an|just|is|about)$/.test(wordAt(tokens, at)) || isMark(tokens[at], ':=-')) at--;
  const ends = tokens[end] === undefined || tokens[end]?.t === 'line' || isMark(tokens[end], ',.;(?!');
  return ends && isFat(tokens[at]) && !weighedBefore(tokens, at) ? at : -1;
}

/** "300 g olive, the same": it has its weight. */
const weighedBefore = (tokens: readonly Token[], at: number): boolean =>
  isWeight(tokens[at - 1]) || (wordAt(tokens, at - 1) === 'of' && isWeight(tokens[at - 2]));

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

/** Tokens back to the weight that is meant, at the most. */
const longestWay = 60;

/** The weight meant: of the fat behind "as", or of the one fat before; `unsure` where there are several. */
function baseOf(tokens: readonly Token[], k: number, at: number): Quantity | 'unsure' | null {
  const before: Quantity[] = [];
  const named = wordAt(tokens, at + 1) === 'as' ? tokens[at + 2] : undefined;
  // "as much olive as you like"
  if (wordAt(tokens, at + 1) === 'as' && !isFat(named)) return null;
  for (let n = k - 1; n >= 0 && k - n <= longestWay; n--) {
    const token = tokens[n];
    if (!isWeight(token)) continue;
    const owner = [n + 1, n + 2, n - 1, n - 2].map((one) => tokens[one]).find((one) => one?.t === 'name');
    if (!isFat(owner)) {
      // the nearest weight is of no fat
      if (before.length === 0 && !named) return isAny(tokens, n, k, isStop) ? null : 'unsure';
      continue;
    }
    if (isFat(named) && thingOf(owner) !== thingOf(named)) continue;
    before.push(token.quantity);
  }
  const [last] = before;
  if (!last || last.upTo !== null) return null;
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

import { fold } from './clean.ts';

/** Whatever its kind, it has these keys in this order. */
export interface Prim {
  /** `line`: the end of one, whose text is `blank` where an empty line follows. */
  readonly kind: 'word' | 'number' | 'sign' | 'line';
  readonly text: string;
  readonly raw: string;
  readonly glued: boolean;
  readonly at: number;
  /** A word that may have been another: `letters.ts` looks into it. */
  readonly odd: boolean;
}

const tab = 9;
const newline = 10;
const space = 32;
const apostrophe = 39;

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isPoint = (code: number): boolean => code === 44 || code === 46;

function isLetter(text: string, i: number, code: number): boolean {
  if (code < 0x80) return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
  // é, ł, and not × or ÷, nor any sign of Latin-1 but ª, µ and º
  if (code < 0xc0) return code === 0xaa || code === 0xb5 || code === 0xba;
  if (code < 0x250) return code !== 0xd7 && code !== 0xf7;
  return /^\p{L}/u.test(String.fromCodePoint(text.codePointAt(i) ?? 0));
}

const isMark = (text: string, i: number, code: number): boolean => code >= 0x300 && /^\p{M}/u.test(text[i] ?? '');

/** Words, numerals, signs and line ends, in order; every character but plain spaces is in one of them. */
export function scan(text: string): Prim[] {
  const prims: Prim[] = [];
  let glued = false;
  let i = 0;
  while (i < text.length) {
    const at = i;
    const code = text.charCodeAt(i);
    if (code === newline) {
      i = endOfLines(text, i);
      prims.push({
        kind: 'line',
        text: i - at > 1 ? 'blank' : 'line',
        raw: text.slice(at, i),
        glued: false,
        at,
        odd: false,
      });
      glued = false;
    } else if (code === space || code === tab) {
      while (text.charCodeAt(i) === space) i++;
      const tabbed = text.charCodeAt(i) === tab;
      if (tabbed) {
        i++;
        while (text.charCodeAt(i) === space) i++;
      }
      // three spaces part columns as a tab does
      if (tabbed || i - at >= 3)
        prims.push({ kind: 'sign', text: '\t', raw: text.slice(at, i), glued: false, at, odd: false });
      glued = false;
    } else if (isDigit(code)) {
      i = endOfNumber(text, i);
      const raw = text.slice(at, i);
      prims.push({ kind: 'number', text: raw, raw, glued, at, odd: false });
      glued = true;
    } else if (code === 46 && isDigit(text.charCodeAt(i + 1))) {
      i = endOfDigits(text, i + 1);
      const raw = text.slice(at, i);
      prims.push({ kind: 'number', text: raw, raw, glued, at, odd: false });
      glued = true;
    } else if (isLetter(text, i, code)) {
      i = endOfWord(text, i);
      const word = wordIn(text, at, i);
      prims.push({ kind: 'word', text: word.text, raw: word.raw, glued, at, odd: word.odd });
      glued = true;
    } else {
      i += code >= 0xd800 && code < 0xdc00 ? 2 : 1;
      const raw = text.slice(at, i);
      prims.push({ kind: 'sign', text: raw, raw, glued, at, odd: false });
      glued = true;
    }
  }
  return prims;
}

/** A word as words are compared, and as it was written; the same string in both where nothing tells them apart. */
interface Word {
  readonly text: string;
  readonly raw: string;
  readonly odd: boolean;
}

/** `PaIm`, `VVater`, `palrn`, "castoroil". */
const isOdd = (text: string, raw: string): boolean =>
  raw.indexOf('I', 1) > 0 ||
  text.includes('vv') ||
  text.includes('rn') ||
  ['oil', 'butter'].some((end) => text.length >= end.length + 3 && text.endsWith(end));

/** Words that are remembered for the posts to come, at the most. */
const mostKnown = 5000;
const known = new Map<string, Word>();

/** Of the words with letters that make the same number, the one that was met last: no string is made to find it. */
const met: (Word | undefined)[] = new Array(4096).fill(undefined);

/** The word from `from` to `to`. */
function wordIn(text: string, from: number, to: number): Word {
  let place = 0;
  for (let k = from; k < to; k++) place = (31 * place + text.charCodeAt(k)) % 4096;
  const last = met[place];
  if (last?.raw.length === to - from && text.startsWith(last.raw, from)) return last;
  const word = wordOf(text.slice(from, to));
  met[place] = word;
  return word;
}

/** The same strings wherever the word stands: two of them are told apart by their places. */
function wordOf(raw: string): Word {
  let word = known.get(raw);
  if (word === undefined) {
    const text = keptOnce(plain(raw));
    word = { text, raw: keptOnce(raw), odd: isOdd(text, raw) };
    if (known.size < mostKnown) known.set(word.raw, word);
  }
  return word;
}

/** Only strings that are keys are sure to be kept once. */
const keptOnce = (text: string): string => Object.keys({ __proto__: null, [text]: null })[0] ?? text;

/** Folded, without its apostrophe. */
function plain(raw: string): string {
  for (let k = 0; k < raw.length; k++) {
    const code = raw.charCodeAt(k);
    if (code < 97 || code > 122) return fold(raw).replaceAll("'", '');
  }
  return raw;
}

/** What was typed from one prim to another, with single spaces. */
export function rawText(prims: readonly Prim[], from: number, to: number): string {
  let text = prims[from]?.raw ?? '';
  for (let k = from + 1; k < to; k++) {
    const prim = prims[k];
    if (prim) text += prim.glued ? prim.raw : ` ${prim.raw}`;
  }
  return text;
}

function endOfLines(text: string, from: number): number {
  let end = from + 1;
  for (let i = end; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === newline) end = i + 1;
    else if (code !== space && code !== tab) break;
  }
  return end;
}

function endOfDigits(text: string, from: number): number {
  let i = from;
  while (isDigit(text.charCodeAt(i))) i++;
  return i;
}

/** Digits with points, commas or apostrophes between them. */
function endOfNumber(text: string, from: number): number {
  let i = endOfDigits(text, from);
  for (;;) {
    const code = text.charCodeAt(i);
    if (!(isPoint(code) || code === apostrophe) || !isDigit(text.charCodeAt(i + 1))) return i;
    i = endOfDigits(text, i + 1);
  }
}

/** Letters with their marks, and one apostrophe between letters. */
function endOfWord(text: string, from: number): number {
  let i = from;
  let apostrophes = 0;
  while (i < text.length) {
    const code = text.charCodeAt(i);
    if (isLetter(text, i, code)) i += code >= 0xd800 && code < 0xdc00 ? 2 : 1;
    else if (isMark(text, i, code)) i++;
    else if (
      code === apostrophe &&
      apostrophes === 0 &&
      i + 1 < text.length &&
      isLetter(text, i + 1, text.charCodeAt(i + 1))
    ) {
      apostrophes++;
      i++;
    } else return i;
  }
  return i;
}

import type { Prim } from '../text/scan.ts';

/** A figure as written; `other` is a second value that the same digits could mean (`1.000`). */
export interface Numeral {
  readonly value: number;
  readonly other: number | null;
  /** Index behind the last prim used. */
  readonly end: number;
  readonly numbers: readonly number[];
  readonly inWords: boolean;
}

/** Which decimal sign the post shows beyond doubt. */
export interface DecimalHabit {
  readonly comma: boolean;
  readonly point: boolean;
}

/** Whole numbers in words. */
export const small: Readonly<Record<string, number>> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
  dozen: 12,
  couple: 2,
};
/** Maps rather than objects: a look-up by a key that changes makes the compiler throw away what it made. */
const fractionWords: ReadonlyMap<string, number> = new Map([
  ['half', 1 / 2],
  ['halves', 1 / 2],
  ['third', 1 / 3],
  ['thirds', 1 / 3],
  ['quarter', 1 / 4],
  ['quarters', 1 / 4],
  ['fourth', 1 / 4],
  ['fourths', 1 / 4],
  ['fifth', 1 / 5],
  ['fifths', 1 / 5],
  ['eighth', 1 / 8],
  ['eighths', 1 / 8],
  ['tenth', 1 / 10],
  ['tenths', 1 / 10],
]);
const smallWords: ReadonlyMap<string, number> = new Map(Object.entries(small));

const numberWords: ReadonlySet<string> = new Set([...smallWords.keys(), 'hundred', 'thousand', 'half', 'quarter']);

/** "thirds", "quarters": parts of a whole, no slip of a unit. */
export const isFractionWord = (word: string): boolean => fractionWords.has(word);

/** "Eighth", "quarters": which part; undefined where it is none. */
export const fractionOf = (word: string): number | undefined => fractionWords.get(word);

export const isNumberWord = (word: string): boolean => numberWords.has(word);

/** Digits and nothing else. */
export function isWhole(text: string): boolean {
  for (let k = 0; k < text.length; k++) {
    const code = text.charCodeAt(k);
    if (code < 48 || code > 57) return false;
  }
  return true;
}

/** `98`, "98.5", which nobody writes otherwise; null where they may mean more: three digits behind a point. */
export function plainValue(text: string): number | null {
  const point = text.indexOf('.');
  if (point < 0) return isWhole(text) ? Number(text) : null;
  return point > 0 && text.length - point !== 4 && isWhole(text.slice(0, point)) && isWhole(text.slice(point + 1))
    ? Number(text)
    : null;
}

/** Value of digits with their separators; null where they form no number (`12.5.2024`). */
function digits(text: string, habit: DecimalHabit): { value: number; other: number | null } | null {
  const plain = plainValue(text);
  if (plain !== null) return { value: plain, other: null };
  if (text.startsWith('.') && /^\.\d+$/.test(text)) return { value: Number(`0${text}`), other: null };
  const one = /^(\d+)([.,'])(\d+)$/.exec(text);
  if (one) {
    const [, whole = '', sign = '', tail = ''] = one;
    const decimal = Number(`${whole}.${tail}`);
    const grouped = Number(whole + tail);
    if (sign === "'") return tail.length === 3 ? { value: grouped, other: null } : null;
    if (tail.length !== 3 || whole.length > 3 || /^0/.test(whole)) return { value: decimal, other: null };
    if (sign === ',')
      return habit.comma ? { value: decimal, other: grouped } : { value: grouped, other: habit.point ? null : decimal };
    return habit.comma ? { value: grouped, other: decimal } : { value: decimal, other: habit.point ? null : grouped };
  }
  const many = /^(\d{1,3})((?:[.,']\d{3})+)(?:([.,])(\d+))?$/.exec(text);
  if (many) {
    const [, head = '', groups = '', sign, tail] = many;
    const separators = new Set(groups.replace(/\d/g, ''));
    if (separators.size === 1 && (sign === undefined || !separators.has(sign)))
      return { value: Number(`${head}${groups.replace(/\D/g, '')}${tail ? `.${tail}` : ''}`), other: null };
  }
  return null;
}

export function decimalHabit(prims: readonly Prim[]): DecimalHabit {
  let comma = false;
  let point = false;
  for (const prim of prims) {
    // digits alone show neither
    if (prim.kind !== 'number' || isWhole(prim.text)) continue;
    if (!prim.text.includes(',')) point ||= /^\d*\.(?:\d{1,2}|\d{4,})$|^0\.\d+$/.test(prim.text);
    else if (/^\d+,(\d{1,2}|\d{4,})$/.test(prim.text) || /^0,\d+$/.test(prim.text)) comma = true;
    else if (/^\d{1,3}(\.\d{3})+,\d+$/.test(prim.text)) comma = true;
    else if (/^\d{1,3}(,\d{3})+\.\d+$/.test(prim.text)) point = true;
  }
  return { comma, point };
}

const wordAt = (prims: readonly Prim[], i: number): string => (prims[i]?.kind === 'word' ? (prims[i]?.text ?? '') : '');
const numberAt = (prims: readonly Prim[], i: number): string | null =>
  prims[i]?.kind === 'number' ? (prims[i]?.text ?? '') : null;
const signAt = (prims: readonly Prim[], i: number, sign: string): boolean =>
  prims[i]?.kind === 'sign' && prims[i]?.text === sign;

function digitAt(prims: readonly Prim[], i: number): number | null {
  const value = smallWords.get(wordAt(prims, i)) ?? 10;
  return value < 10 ? value : null;
}

/** `1/2` at i: the two numbers stand tight around the stroke. */
export function fractionAt(prims: readonly Prim[], i: number): number | null {
  if (prims[i + 1]?.text !== '/') return null;
  const top = numberAt(prims, i);
  const bottom = numberAt(prims, i + 2);
  if (top === null || bottom === null || !signAt(prims, i + 1, '/') || !prims[i + 1]?.glued || !prims[i + 2]?.glued)
    return null;
  // "85/5/10": a list
  const before = signAt(prims, i - 1, '/') && prims[i]?.glued === true && numberAt(prims, i - 2) !== null;
  if (before || (signAt(prims, i + 3, '/') && numberAt(prims, i + 4) !== null)) return null;
  if (!/^\d{1,2}$/.test(top) || !/^([2-9]|1[0-6])$/.test(bottom) || Number(top) >= Number(bottom)) return null;
  return Number(top) / Number(bottom);
}

/**
 * "four hundred and fifty", "twelve and a half", "three quarters", "half"; null where none begins at `start`. `head`:
 * what stands in digits before it, the 2 of "2 hundred".
 */
function inWords(prims: readonly Prim[], start: number, head = 0): { value: number; end: number } | null {
  let i = start;
  let total = 0;
  let current = head;
  let seen = false;
  let lastSmall = head;
  for (;;) {
    let word = wordAt(prims, i);
    let from = i;
    if (seen && (word === 'and' || signAt(prims, i, '-'))) {
      from = i + 1;
      word = wordAt(prims, from);
      if (wordAt(prims, i) === 'and') {
        const skip = word === 'a' || word === 'one' ? 1 : 0;
        const part = fractionWords.get(wordAt(prims, from + skip));
        if (part !== undefined) return { value: total + current + part, end: from + skip + 1 };
        // "three quarters", "three-quarter"
        const dash = signAt(prims, from + 1, '-') ? 1 : 0;
        const three = word === 'three' ? fractionWords.get(wordAt(prims, from + dash + 1)) : undefined;
        if (three !== undefined) return { value: total + current + 3 * three, end: behindOf(prims, from + dash + 2) };
        // "and" joins words of one number only behind a hundred or thousand
        if (!(current >= 100 && current % 100 === 0) && !(current === 0 && total > 0)) break;
      }
      if (!smallWords.has(word)) break;
    }
    const value = smallWords.get(word);
    if (value !== undefined) {
      if (word === 'dozen' && seen) current *= 12;
      else {
        const fits = lastSmall === 0 || (lastSmall >= 20 && lastSmall % 10 === 0 && value < 10);
        if (!fits && !isSpoken(prims, i, current, value, total)) break;
        current = fits ? current + value : 100 * current + value;
        lastSmall = value;
      }
      seen = true;
      i = from + 1;
      if (word === 'couple' && wordAt(prims, i) === 'of') i++;
      continue;
    }
    if (word === 'hundred' || word === 'thousand') {
      if (word === 'hundred') current = (current || 1) * 100;
      else {
        total += (current || 1) * 1000;
        current = 0;
      }
      lastSmall = 0;
      seen = true;
      i = from + 1;
      continue;
    }
    if (seen && word === 'point' && smallWords.has(wordAt(prims, i + 1))) {
      let scale = 0.1;
      let j = i + 1;
      for (let digit = digitAt(prims, j); digit !== null; digit = digitAt(prims, ++j)) {
        current += digit * scale;
        scale /= 10;
      }
      return { value: total + current, end: j };
    }
    break;
  }
  if (seen) {
    if (
      signAt(prims, i, '-') &&
      prims[i]?.glued &&
      wordAt(prims, i + 1).endsWith('s') &&
      fractionWords.has(wordAt(prims, i + 1))
    )
      i++;
    const part = fractionWords.get(wordAt(prims, i));
    if (part !== undefined && part < 1 && total + current < 10 && !(wordAt(prims, i) === 'half')) {
      return { value: (total + current) * part, end: behindOf(prims, i + 1) };
    }
    return { value: total + current, end: i };
  }
  return null;
}

/** Behind the "of a" of "three quarters of a pound". */
function behindOf(prims: readonly Prim[], at: number): number {
  const of = wordAt(prims, at) === 'of' ? at + 1 : at;
  return /^an?$/.test(wordAt(prims, of)) ? of + 1 : of;
}

/** "One sixty five", "three thirty": the word for hundred is left out in speech. */
const isSpoken = (prims: readonly Prim[], i: number, hundreds: number, rest: number, thousands: number): boolean =>
  thousands === 0 &&
  hundreds < 10 &&
  rest >= 10 &&
  smallWords.get(wordAt(prims, i - 1)) === hundreds &&
  // "two fifty gram blocks", "three ten minute breaks"
  ![1, 2, 3].some((step) => counted.test(wordAt(prims, i + step)));

/** What is counted, or lasts. */
const counted =
  /^(?:blocks|bars|sticks|packs|packets|bags|tubs|jars|tins|cans|bottles|buckets|pieces|lumps|loaves|moulds|molds|breaks|rests|min|mins|minutes?|hours?|days?|weeks?|degrees?)$/;

/** The figure that begins at prim `start`, in digits or words; null where none does. */
export function numeralAt(prims: readonly Prim[], start: number, habit: DecimalHabit): Numeral | null {
  const first = prims[start];
  if (!first) return null;
  if (first.kind === 'word') {
    const word = first.text;
    if (word === 'half' || word === 'quarter') {
      const end = behindOf(prims, start + 1);
      return { value: fractionWords.get(word) ?? 0, other: null, end, numbers: [start], inWords: true };
    }
    if (!isNumberWord(word)) return null;
    const words = inWords(prims, start);
    if (!words) return null;
    const numbers: number[] = [];
    for (let k = start; k < words.end; k++) numbers.push(k);
    return { value: words.value, other: null, end: words.end, numbers, inWords: true };
  }
  if (first.kind !== 'number') return null;
  const lone = fractionAt(prims, start);
  if (lone !== null) {
    let end = start + 3;
    if (wordAt(prims, end) === 'of' && /^an?$/.test(wordAt(prims, end + 1))) end += 2;
    else if (/^an?$/.test(wordAt(prims, end)) && end < prims.length) end += 1;
    return { value: lone, other: null, end, numbers: [start, start + 2], inWords: false };
  }
  const plain = digits(first.text, habit);
  if (!plain) return null;
  // "2 hundred", "1 hundred and fifty", "1.5 thousand"
  if (plain.value > 0 && plain.value < 100 && /^(?:hundred|thousand)$/.test(wordAt(prims, start + 1))) {
    const words = inWords(prims, start + 1, plain.value);
    if (words) return { value: words.value, other: null, end: words.end, numbers: [start], inWords: false };
  }
  // 2 1/2, 1-1/2, "1 and a half", "1 and 1/2"
  if (first.text.length <= 3 && isWhole(first.text)) {
    const next = wordAt(prims, start + 1);
    const dash = next === 'and' || signAt(prims, start + 1, '-') || signAt(prims, start + 1, '&') ? 1 : 0;
    const part = fractionAt(prims, start + 1 + dash);
    if (part !== null && (dash === 1 || !prims[start + 1]?.glued))
      return {
        value: plain.value + part,
        other: null,
        end: start + 4 + dash,
        numbers: [start, start + 1 + dash, start + 3 + dash],
        inWords: false,
      };
    if (next === 'and' && /^(a|one)$/.test(wordAt(prims, start + 2))) {
      const tail = fractionWords.get(wordAt(prims, start + 3));
      if (tail !== undefined)
        return { value: plain.value + tail, other: null, end: start + 4, numbers: [start], inWords: false };
    }
    // "3 quarters of a pound"
    const parts = next.endsWith('s') ? fractionWords.get(next) : undefined;
    if (parts !== undefined && plain.value < 10) {
      const of = wordAt(prims, start + 2) === 'of' ? 1 : 0;
      const article = /^an?$/.test(wordAt(prims, start + 2 + of)) && of + start + 2 < prims.length ? 1 : 0;
      const end = start + 2 + of + article;
      return { value: plain.value * parts, other: null, end, numbers: [start], inWords: false };
    }
    if (next === 'dozen')
      return { value: plain.value * 12, other: null, end: start + 2, numbers: [start], inWords: false };
  }
  return { value: plain.value, other: plain.other, end: start + 1, numbers: [start], inWords: false };
}

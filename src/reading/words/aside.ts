import type { Prim } from '../text/scan.ts';
import type { Lexicon } from './lexicon.ts';
import { unitAt } from './measure.ts';

/** Figures whose own shape says that they are no amount: dates, times, telephone numbers, prices, sizes, addresses. */
export interface Aside {
  readonly reason: string;
  readonly end: number;
  readonly numbers: readonly number[];
}

const months: ReadonlySet<string> = new Set(
  'jan|january|januar|feb|february|februar|mar|march|marz|apr|april|may|mai|jun|june|juni|jul|july|juli|aug|august|sep|sept|september|oct|october|oktober|okt|nov|november|dec|december|dez|dezember|janvier|fevrier|mars|avril|juin|juillet|aout|septembre|octobre|novembre|decembre|enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|octubre|noviembre|diciembre'.split(
    '|',
  ),
);
const moneyWords: ReadonlySet<string> = new Set([
  'dollar',
  'dollars',
  'euro',
  'euros',
  'eur',
  'usd',
  'gbp',
  'aud',
  'cad',
  'bucks',
  'quid',
  'pence',
  'cent',
  'cents',
  'chf',
  'sek',
  'franc',
  'francs',
  'peso',
  'pesos',
]);
const moneyBefore: ReadonlySet<string> = new Set(['usd', 'eur', 'gbp', 'rs', 'aud', 'cad', 'chf', 'us']);
/** "Nineteen-fifty-something". */
const centuries: ReadonlySet<string> = new Set(['seventeen', 'eighteen', 'nineteen']);
/** A word that makes a date or a price of the figure behind it. */
export const mayAnnounce = (word: string): boolean => months.has(word) || moneyBefore.has(word) || centuries.has(word);

const moneySigns = new Set(['$', '£', '€', '¥', '₹']);

const is = (prim: Prim | undefined, text: string): boolean => prim?.kind === 'sign' && prim.text === text;
const isNumber = (prim: Prim | undefined): prim is Prim => prim?.kind === 'number';

function found(reason: string, from: number, end: number, prims: readonly Prim[]): Aside {
  const numbers: number[] = [];
  for (let k = from; k < end; k++) if (isNumber(prims[k])) numbers.push(k);
  return { reason, end, numbers };
}

function address(prims: readonly Prim[], i: number): Aside | null {
  const prim = prims[i];
  const web =
    prim?.kind === 'word' &&
    (prim.text === 'http' || prim.text === 'https'
      ? is(prims[i + 1], ':') && is(prims[i + 2], '/')
      : prim.text === 'www' && is(prims[i + 1], '.'));
  const tagged = is(prims[i], '<') && (is(prims[i + 1], '@') || is(prims[i + 1], '#') || is(prims[i + 1], ':'));
  const handle =
    is(prims[i], '@') && !is(prims[i + 1], '@') && prims[i + 1]?.glued === true && prims[i + 1]?.kind === 'word';
  if (!web && !tagged && !handle) return null;
  let end = i + 1;
  while (end < prims.length && prims[end]?.glued && prims[end]?.kind !== 'line') {
    if (handle && prims[end]?.kind === 'sign' && !/[._-]/.test(prims[end]?.text ?? '')) break;
    end++;
  }
  return found(web ? 'part of an address' : 'part of a mention', i, end, prims);
}

/** A price of a kilogram or a litre, whose neighbours are no pack. */
export const rate = 'a price by weight';

const weightWord = /^(kg|kilo|kilos|kilogram|kilogramme|lb|lbs|pound|oz|ounce|g|litre|liter|l|ltr|ml|gallon|gal)$/;

/** `/kg`, `/ 100 g`, `per lb`, `a kilo` from prim `i`: where it ends. */
function perWeight(prims: readonly Prim[], i: number): number | null {
  const stroke = is(prims[i], '/');
  if (!stroke && !(prims[i]?.kind === 'word' && /^(per|a|the|each)$/.test(prims[i]?.text ?? ''))) return null;
  const counted = /^(10|100|250|500|1000)$/.test(prims[i + 1]?.text ?? '') ? 1 : 0;
  const at = i + 1 + counted;
  if (prims[at]?.kind !== 'word' || !weightWord.test(prims[at]?.text ?? '')) return null;
  // "30 per kg of oils": how much of something goes in
  const of = prims[at + 1];
  return of?.kind === 'word' && /^(of|oils?|fats?)$/.test(of.text) ? null : at + 1;
}

/** `7.90/kg`, `5.20 per kilo` without a sign of money. */
function bareRate(prims: readonly Prim[], i: number): Aside | null {
  const before = prims[i - 1];
  if (before?.kind === 'number' || is(before, '/')) return null;
  const end = perWeight(prims, i + 1);
  return end === null ? null : found(rate, i, end, prims);
}

function money(prims: readonly Prim[], i: number): Aside | null {
  const prim = prims[i];
  let end = -1;
  if (prim?.kind === 'sign' && moneySigns.has(prim.text) && isNumber(prims[i + 1])) end = i + 2;
  else if (prim?.kind === 'word' && moneyBefore.has(prim.text)) {
    const skip = is(prims[i + 1], '$') ? 1 : 0;
    if (isNumber(prims[i + 1 + skip]) && (skip === 1 || prim.text !== 'us')) end = i + 2 + skip;
  } else if (isNumber(prim)) {
    const after = prims[i + 1];
    if (
      after?.kind === 'sign' &&
      moneySigns.has(after.text) &&
      !(isNumber(prims[i + 2]) && prims[i + 2]?.glued && !after.glued)
    )
      end = i + 2;
    else if (after?.kind === 'word' && (moneyWords.has(after.text) || (after.text === 'p' && after.glued))) end = i + 2;
  }
  if (end < 0) return null;
  const per = perWeight(prims, end);
  if (per !== null) return found(rate, i, per, prims);
  // "£4 - £5", "$12 for 500 g" keeps the 500 g for others; "a bottle"
  if (is(prims[end], '/') && prims[end + 1]?.kind === 'word') end += 2;
  else if (is(prims[end], '/') && isNumber(prims[end + 1])) end += prims[end + 2]?.kind === 'word' ? 3 : 2;
  else if (
    prims[end]?.kind === 'word' &&
    /^(per|a|the|each)$/.test(prims[end]?.text ?? '') &&
    prims[end + 1]?.kind === 'word' &&
    /^(bottle|bar|bag|pack)$/.test(prims[end + 1]?.text ?? '')
  )
    end += 2;
  return found('a price', i, end, prims);
}

/** Words behind which `14/11` is a day, which a ratio of water to alkali is not behind. */
const dating =
  /^(on|by|dated|date|cut|poured|since|until|till|due|before|after|fair|sale|market|workshop|class|cure|cured|mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun|monday|tuesday|wednesday|thursday|friday|saturday|sunday|deadline|posted|sent|printed|written|updated|ready)$/;

/** `Thu 14/11`, `cure to 24/12`: a day and a month, behind a word of dates. */
function isShortDate(prims: readonly Prim[], i: number): boolean {
  const [a, b, c] = [prims[i], prims[i + 1], prims[i + 2]];
  if (!isNumber(a) || !is(b, '/') || !b?.glued || !isNumber(c) || !c.glued || prims[i + 3]?.text === '/') return false;
  const [day, month] = [Number(a.text), Number(c.text)];
  const isDay = Number.isInteger(day) && Number.isInteger(month) && day >= 1 && month >= 1;
  if (!isDay || Math.max(day, month) > 31 || Math.min(day, month) > 12) return false;
  const behind = prims[i + 3];
  if (behind?.kind === 'word' && unitLike.test(behind.text)) return false;
  // "12/05, 21:14"
  const hour = is(behind, ',') ? i + 4 : i + 3;
  if (isNumber(prims[hour]) && is(prims[hour + 1], ':') && prims[hour + 1]?.glued && isNumber(prims[hour + 2]))
    return true;
  const before = prims[i - 1]?.text === 'to' ? prims[i - 2] : prims[i - 1];
  return before?.kind === 'word' && dating.test(before.text);
}

const isLineEnd = (prim: Prim | undefined): boolean => prim === undefined || prim.kind === 'line';
/** `19.20` at the beginning of a line, before a dash or a colon. */
const opensWithTime = (prims: readonly Prim[], i: number): boolean => {
  const [time, sign] = [prims[i], prims[i + 1]];
  const found = time?.kind === 'number' && isLineEnd(prims[i - 1]) ? /^(\d{1,2})\.(\d\d)$/.exec(time.text) : null;
  return found !== null && Number(found[1]) < 24 && Number(found[2]) < 60 && (is(sign, '-') || is(sign, ':'));
};

/** "19.00 - 380 g tallow" in a log of which another line begins so. */
function isLogTime(prims: readonly Prim[], i: number): boolean {
  if (!opensWithTime(prims, i)) return false;
  for (const step of [1, -1])
    for (let k = i + step; k >= 0 && k < prims.length && Math.abs(k - i) <= nearLine; k += step)
      if (opensWithTime(prims, k)) return true;
  return false;
}

/** Words, figures and signs over which the next line of a log begins. */
const nearLine = 60;

/** "On low since 9.40, it's 10.25 now": hours and minutes. */
function isClock(prims: readonly Prim[], i: number): boolean {
  const [before, time, behind] = [prims[i - 1], prims[i], prims[i + 1]];
  if (before?.kind !== 'word' || !/^(?:[01]?\d|2[0-3])\.[0-5]\d$/.test(time?.text ?? '')) return false;
  const now = /^(?:now|am|pm|already|o'?clock|when|and)$/.test(behind?.text ?? '');
  return /^(?:since|until|till)$/.test(before.text) || (/^(?:its|is)$/.test(before.text) && now);
}

const unitLike = /^(g|gr|kg|oz|lb|lbs|ml|l|cups?|grams?|ounces?|pounds?|tsp|tbsp|teaspoons?|tablespoons?)$/;

/** "Date: 03.02.", "made on 3.2.": a day and a month with points, behind a word of dates. */
function isDottedDay(prims: readonly Prim[], i: number): boolean {
  const [, day = 0, month = 0] = /^(\d{1,2})\.(\d{1,2})$/.exec(prims[i]?.text ?? '')?.map(Number) ?? [];
  if (day < 1 || day > 31 || month < 1 || month > 12) return false;
  if (!is(prims[i + 1], '.') || !prims[i + 1]?.glued) return false;
  let at = i - 1;
  while (i - at <= 2 && (is(prims[at], ':') || /^(?:about|around|ca|approx)$/i.test(prims[at]?.text ?? ''))) at--;
  const word = prims[at]?.text.toLowerCase() ?? '';
  // "multiplied by 1.5."
  const isFactor = word === 'by' && /^(?:multipl|scal|upscal|downscal|divid|times)/i.test(prims[at - 1]?.text ?? '');
  return dating.test(word) && !isFactor;
}

/** "Batch 350 Olive": a heading, whose number has no unit and no other beside it. */
function batchNumber(prims: readonly Prim[], i: number): Aside | null {
  const before = prims[i - 1];
  if (before?.kind !== 'word' || !numbered.has(before.text)) return null;
  if (i > 1 && prims[i - 2]?.kind !== 'line') return null;
  let end = i + 1;
  while (prims[end]?.kind === 'word' && !prims[end]?.glued) end++;
  const isHeading = end > i + 1 && end - i <= longestTitle && prims[end]?.kind === 'line';
  return isHeading ? found('a number that only counts or names something', i, i + 1, prims) : null;
}
const longestTitle = 5;
const numbered: ReadonlySet<string> = new Set(['batch', 'lot', 'charge']);

/** A line begins with the figure, and a point stands behind it that ends no sentence. */
const isDotted = (prims: readonly Prim[], i: number): boolean =>
  (i === 0 || prims[i - 1]?.kind === 'line') &&
  is(prims[i + 1], '.') &&
  prims[i + 1]?.glued === true &&
  !/^\p{Lu}/u.test(prims[i + 2]?.raw ?? '');

const tens =
  /^(?:ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)$/;
const decades = /^(?:twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties)$/;

/** "Nineteen-fifty-something", "nineteen sixty-two", "the nineteen-seventies": where no unit follows. */
function spokenYear(prims: readonly Prim[], i: number): Aside | null {
  const hyphen = (at: number): number => (is(prims[at], '-') ? at + 1 : at);
  const at = hyphen(i + 1);
  const word = prims[at]?.text ?? '';
  if (!tens.test(word) && !decades.test(word)) return null;
  const rest = hyphen(at + 1);
  const isMore = /^(?:something|odd|ish|one|two|three|four|five|six|seven|eight|nine)$/.test(prims[rest]?.text ?? '');
  const end = isMore ? rest + 1 : at + 1;
  const behind = prims[end];
  if (behind?.kind === 'word' && (unitLike.test(behind.text) || /^(?:hundred|thousand)$/.test(behind.text)))
    return null;
  return found('a year', i, end, prims);
}

function dateOrTime(prims: readonly Prim[], i: number): Aside | null {
  const a = prims[i];
  if (a?.kind === 'word' && months.has(a.text)) {
    const b = prims[i + 1];
    if (!isNumber(b) || !/^\d{1,4}$/.test(b.text)) return null;
    const day = Number(b.text);
    if (!(day >= 1 && day <= 31) && !(day >= 1900 && day < 2100)) return null;
    let end = i + 2;
    if (prims[end]?.kind === 'word' && /^(st|nd|rd|th)$/.test(prims[end]?.text ?? '') && prims[end]?.glued) end++;
    else if (
      prims[end]?.kind === 'word' &&
      !/^(and|in|at|i|the|on|we|my|it|so|for|was|is|with|from|to)$/.test(prims[end]?.text ?? '') &&
      unitLike.test(prims[end]?.text ?? '')
    )
      return null;
    if (is(prims[end], ',') && isNumber(prims[end + 1]) && /^(19|20)\d\d$/.test(prims[end + 1]?.text ?? '')) end += 2;
    else if (isNumber(prims[end]) && /^(19|20)\d\d$/.test(prims[end]?.text ?? '')) end++;
    return found('a date', i, end, prims);
  }
  if (!isNumber(a)) return null;
  const dotted = a.text.includes('.');
  if (dotted && /^\d{1,2}\.\d{1,2}\.(\d\d|\d{4})$/.test(a.text)) return found('a date', i, i + 1, prims);
  if (dotted && /^\d+(\.\d+){2,}$/.test(a.text) && !/^\d{1,3}(\.\d{3})+$/.test(a.text))
    return found('a number that only counts or names something', i, i + 1, prims);
  // "12.03. / poured 14:20"
  if (dotted && /^(?:0?[1-9]|[12]\d|3[01])\.(?:0[1-9]|1[0-2])$/.test(a.text) && isDotted(prims, i))
    return found('a date', i, i + 2, prims);
  const b = prims[i + 1];
  const c = prims[i + 2];
  const d = prims[i + 3];
  const e = prims[i + 4];
  if (
    b &&
    (b.text === '/' || b.text === '-' || b.text === '.') &&
    b.kind === 'sign' &&
    b.glued &&
    isNumber(c) &&
    c.glued &&
    d?.kind === 'sign' &&
    d.text === b.text &&
    d.glued &&
    isNumber(e) &&
    e.glued
  ) {
    const parts = [a.text, c.text, e.text];
    const more = (at: number): boolean => is(prims[at], '/') && prims[at]?.glued === true;
    // "50/30/20 olive, coconut, lard": shares
    const shares =
      b.text === '/' && (more(i - 1) || more(i + 5) || parts.reduce((sum, part) => sum + Number(part), 0) === 100);
    if (
      !shares &&
      parts.every((part) => /^\d{1,4}$/.test(part)) &&
      (parts[0]?.length === 4 ||
        parts[2]?.length === 4 ||
        (b.text === '/' && parts.every((part) => part.length <= 2)) ||
        parts.every((part) => part.length === 2))
    )
      return found('a date', i, i + 5, prims);
  }
  if (isShortDate(prims, i)) return found('a date', i, i + 3, prims);
  if (isDottedDay(prims, i)) return found('a date', i, i + 2, prims);
  if (isClock(prims, i)) return found('a time', i, i + 1, prims);
  if (isLogTime(prims, i)) return found('a time of day', i, i + 2, prims);
  // 10:42, 7 pm, 7pm, 19 uhr, 8 o'clock
  if (
    is(b, ':') &&
    b?.glued &&
    isNumber(c) &&
    c.glued &&
    /^\d\d$/.test(c.text) &&
    /^\d{1,2}$/.test(a.text) &&
    Number(a.text) < 24 &&
    Number(c.text) < 60
  ) {
    let end = i + 3;
    const [colon, seconds] = [prims[end], prims[end + 1]];
    // "18:05: 300 g lard"
    if (is(colon, ':') && colon?.glued && isNumber(seconds) && seconds.glued && /^[0-5]\d$/.test(seconds.text))
      end += 2;
    const half = prims[end];
    if (half?.kind === 'word' && /^(am|pm|uhr|h|hrs)$/.test(half.text)) end++;
    else if (half?.kind === 'word' && /^(ratio|split|mix)$/.test(half.text)) return null;
    return found('a time of day', i, end, prims);
  }
  if (b?.kind === 'word' && /^(am|pm|uhr|o'clock|oclock)$/.test(b.text) && /^\d{1,2}(\.\d\d)?$/.test(a.text))
    return found('a time of day', i, i + 2, prims);
  if (b?.kind === 'word' && b.glued && /^(st|nd|rd|th)$/.test(b.text) && /^\d+$/.test(a.text)) {
    const more =
      prims[i + 2]?.kind === 'word' && (months.has(prims[i + 2]?.text ?? '') || prims[i + 2]?.text === 'of') ? 1 : 0;
    return found('a number that only counts or names something', i, i + 2 + more, prims);
  }
  if (
    b?.kind === 'word' &&
    months.has(b.text) &&
    /^([1-9]|[12]\d|3[01])$/.test(a.text) &&
    !(b.text === 'may' && c?.kind === 'word')
  )
    return found('a date', i, isNumber(c) && /^(19|20)\d\d$/.test(c.text) ? i + 3 : i + 2, prims);
  if (
    prims[i - 1]?.kind === 'word' &&
    /^(19[5-9]\d|20\d\d)$/.test(a.text) &&
    /^(in|since|from|of|year|summer|winter|spring|autumn|fall|back|circa|copyright|class|christmas|xmas|before|until)$/.test(
      prims[i - 1]?.text ?? '',
    ) &&
    !(b?.kind === 'word' && /^(g|gr|grams?|gms?|ml|oz|mls)$/.test(b.text))
  )
    return found('a year', i, i + 1, prims);
  return null;
}

/** Groups of digits of a telephone number, at the most; digits, at the least. */
const mostGroups = 6;
const leastDigits = 7;
/** Words from one that announces it, at the most. */
const announcedBefore = 5;

/** Seven or more digits in groups, or any group after a word that announces a telephone number. */
function telephone(prims: readonly Prim[], i: number): Aside | null {
  const plus = is(prims[i], '+') || is(prims[i], '(');
  const start = plus ? i + 1 : i;
  if (!isNumber(prims[start]) || (is(prims[i], '(') && !is(prims[start + 1], ')'))) return null;
  const next = prims[start + 1];
  // one group of few digits
  const alone = next?.kind !== 'number' && next?.kind !== 'sign';
  if (prims[i - 1]?.kind === 'number' || (alone && (prims[start]?.text.length ?? 0) < leastDigits)) return null;
  let end = start;
  let total = 0;
  let groups = 0;
  let dashes = 0;
  while (end < prims.length && groups <= mostGroups) {
    const prim = prims[end];
    if (isNumber(prim) && /^\d+(\.\d+)*$/.test(prim.text)) {
      total += prim.text.replace(/\D/g, '').length;
      groups++;
      end++;
    } else if (
      prim?.kind === 'sign' &&
      /^[-()./]$/.test(prim.text) &&
      (isNumber(prims[end + 1]) || prim.text === ')')
    ) {
      if (prim.text === '-') dashes++;
      end++;
    } else break;
  }
  while (end > start && !isNumber(prims[end - 1])) end--;
  const first = prims[start]?.text ?? '';
  const last = prims[end - 1]?.text ?? '';
  const announced =
    (prims[i - 1]?.kind === 'word' &&
      /^(call|text|tel|phone|ring|whatsapp|mobile|cell|number|on|me)$/.test(prims[i - 1]?.text ?? '')) ||
    // "phone for the key 555 0142"
    (/^\d{3,4}$/.test(first) &&
      /^\d{4}$/.test(last) &&
      prims
        .slice(Math.max(0, i - announcedBefore), i)
        .some(({ text }) => /^(?:call|tel|phone|ring|mobile)$/.test(text)));
  const shaped =
    (groups >= 2 && (first.startsWith('0') || is(prims[i], '+') || is(prims[i], '('))) ||
    (groups >= 2 && dashes >= 1 && /^\d{3}$/.test(first) && /^\d{4}$/.test(last)) ||
    (groups === 1 && total >= 9 && !first.includes('.'));
  if (total >= leastDigits && (shaped || announced) && groups <= mostGroups)
    return found('a telephone number', i, end, prims);
  return null;
}

/** `L2417`, `RB-12`, `B-0314-2`: digits tight behind one to three letters that name nothing. */
function codeWord(prims: readonly Prim[], i: number, lexicon: Lexicon): Aside | null {
  const word = prims[i];
  if (word?.kind !== 'word' || word.raw.length > 3 || word.glued) return null;
  let end = i + 1;
  if (is(prims[end], '-') && prims[end]?.glued) end++;
  if (!isNumber(prims[end]) || !prims[end]?.glued) return null;
  if (word.text === 'x' || word.text === 'a') return null;
  if (lexicon.names.has(word.text) || lexicon.units.next?.has(word.text)) return null;
  while (prims[end]?.glued && (isNumber(prims[end]) || (is(prims[end], '-') && isNumber(prims[end + 1])))) end++;
  return found('part of a code', i, end, prims);
}

/** Prims between two numbers of a list in running text, at the most. */
const longestStep = 60;

/** `1. Goggles on. 2. Pearls into the water.`: behind the end of a sentence, and the number before it in the same line. */
function isNextStep(prims: readonly Prim[], i: number): boolean {
  const before = prims[i - 1];
  if (before?.kind !== 'sign' || !/^[.!?;:,)]$/.test(before.text)) return false;
  const last = String(Number(prims[i]?.text) - 1);
  const mark = prims[i + 1]?.text ?? '';
  for (let k = i - 2; k >= 0 && i - k <= longestStep; k--) {
    if (prims[k]?.kind === 'line') return false;
    if (prims[k]?.kind === 'number' && prims[k]?.text === last && is(prims[k + 1], mark) && prims[k + 1]?.glued)
      return prims[k + 2]?.kind === 'word';
  }
  return false;
}

/** `1.` `2)` at the head of a line. */
function listNumber(prims: readonly Prim[], i: number, lexicon: Lexicon): Aside | null {
  const after = prims[i + 1];
  if (
    after?.kind !== 'sign' ||
    !after.glued ||
    !(after.text === '.' || after.text === ')' || after.text === ':' || after.text === ']') ||
    prims[i + 2]?.glued ||
    !/^\d{1,2}$/.test(prims[i]?.text ?? '')
  )
    return null;
  let before = i - 1;
  if (prims[before]?.kind === 'sign' && /^[-*•(\t]$/.test(prims[before]?.text ?? '')) before--;
  if (before >= 0 && prims[before]?.kind !== 'line' && !(prims[i + 2]?.kind === 'word' && isNextStep(prims, i)))
    return null;
  return unitAt(prims, i + 1, lexicon) ? null : found('the number of a list item', i, i + 2, prims);
}

export const mouldSize = 'the size of a mould or vessel';

/** `10 x 3 x 3 in`, `20cm x 10cm`; two factors of which the last has a mass or volume are a multiple instead. */
function size(prims: readonly Prim[], i: number, lexicon: Lexicon): Aside | null {
  let j = i;
  let factors = 0;
  let lengths = 0;
  let other = 0;
  while (isNumber(prims[j])) {
    factors++;
    j++;
    if (is(prims[j], '/') && isNumber(prims[j + 1]) && prims[j + 1]?.glued) j += 2;
    else if (isNumber(prims[j]) && is(prims[j + 1], '/') && isNumber(prims[j + 2])) j += 3;
    else if (is(prims[j], '-') && isNumber(prims[j + 1]) && is(prims[j + 2], '/') && isNumber(prims[j + 3])) j += 4;
    const hit = unitAt(prims, j, lexicon);
    if (hit) {
      if (hit.unit.dimension === 'length') lengths++;
      else if (hit.unit.dimension === 'mass' || hit.unit.dimension === 'volume') other++;
      j = hit.end;
    } else if (
      prims[j]?.kind === 'word' &&
      (prims[j]?.text === 'in' || prims[j]?.text === 'm') &&
      (prims[j]?.glued || factors >= 2)
    ) {
      lengths++;
      j++;
    } else if (is(prims[j], '"') && (prims[j]?.glued ?? false)) {
      lengths++;
      j++;
    }
    if (prims[j]?.kind === 'word' && /^(long|wide|high|deep|tall|w|l|h|d)$/.test(prims[j]?.text ?? '') && lengths > 0)
      j++;
    const by = prims[j];
    if (
      by &&
      ((by.kind === 'word' && /^(x|by|mal|par|por)$/.test(by.text)) ||
        by.text === '×' ||
        (by.text === '*' && by.kind === 'sign')) &&
      isNumber(prims[j + 1])
    )
      j++;
    else break;
  }
  if (factors >= 3 || (factors === 2 && other === 0 && lengths > 0)) return found(mouldSize, i, j, prims);
  return null;
}

/** `l40 g`, `1O0 g`, `S00 g`: letters where a digit should stand. */
export const damaged = 'digits that cannot be read';

const blots: ReadonlySet<string> = new Set(['?', '_', 'x', 'xx', 'xxx']);

/** `1? oz`, `1?5 g`, `_5 oz`, `1x g`: a digit is missing. */
function blottedDigits(prims: readonly Prim[], i: number, lexicon: Lexicon): Aside | null {
  const [before, number, sign] = [prims[i - 1], prims[i], prims[i + 1]];
  if (!isNumber(number)) return null;
  const held = is(before, '_') && number.glued && before?.glued === false;
  const isBlot = sign?.glued && blots.has(sign.text);
  if (!held && !isBlot) return null;
  const after = isBlot ? i + 2 : i + 1;
  const next = prims[after];
  const isTight = isBlot && sign.kind === 'sign' && isNumber(next) && next.glued;
  const unit = unitAt(prims, isTight ? after + 1 : after, lexicon);
  if (!unit && !isTight) return null;
  // "450 g? 500 g": asked after the unit; "2x 4 oz": a multiple
  return found(damaged, i, unit?.end ?? after + 1, prims);
}

function damagedDigits(prims: readonly Prim[], i: number, lexicon: Lexicon): Aside | null {
  let end = i;
  let letters = 0;
  let digits = 0;
  // 1e9: a computer's way of writing, which nobody weighs by
  if (
    isNumber(prims[i]) &&
    prims[i + 1]?.glued &&
    prims[i + 1]?.text === 'e' &&
    prims[i + 2]?.glued &&
    isNumber(prims[i + 2])
  )
    return found(damaged, i, i + 3, prims);
  while (end < prims.length && (end === i || prims[end]?.glued)) {
    const prim = prims[end];
    if (prim?.kind === 'number') digits++;
    else if (
      prim?.kind === 'word' &&
      /^[OolISBZ]{1,2}$/.test(prim.raw) &&
      (isNumber(prims[end + 1]) || (end > i && prims[end + 1]?.glued !== true))
    )
      letters++;
    else break;
    end++;
  }
  // "5l" is five litres, "2 o'clock" a time: a letter behind the last digit must stand for a digit before a unit
  const last = prims.slice(i, end).at(-1);
  if (last?.kind === 'word' && !/^[OoSBZ]$/.test(last.raw)) return null;
  if (digits === 0 || letters === 0) return null;
  // "shelf B2": a place, where no unit makes it an amount
  const place = prims[i]?.kind === 'word' && /^[BSZ]$/.test(prims[i]?.raw ?? '') && end === i + 2;
  if (place && /^\d$/.test(prims[i + 1]?.text ?? '') && !unitAt(prims, end, lexicon))
    return found('part of a code', i, end, prims);
  return found(damaged, i, end, prims);
}

/** Words behind a figure that may make it a size, a time, a date or a price. */
const telling: ReadonlySet<string> = new Set([
  ...[
    'x',
    'by',
    'mal',
    'par',
    'por',
    'am',
    'pm',
    'uhr',
    "o'clock",
    'oclock',
    'st',
    'nd',
    'rd',
    'th',
    'p',
    'e',
    'in',
    'm',
    'h',
    'hrs',
    'per',
    'a',
    'the',
  ],
  ...[
    'cm',
    'cms',
    'mm',
    'inch',
    'inches',
    'ins',
    'ft',
    'foot',
    'feet',
    'centimetre',
    'centimetres',
    'centimeter',
    'centimeters',
  ],
  ...['o', 'i', 's', 'b', 'z', 'l', 'xx', 'xxx'],
  ...['now', 'already', 'when', 'and'],
  ...moneyWords,
  ...months,
]);

/** Signs behind a figure that make nothing else of it. */
const parting: ReadonlySet<string> = new Set(['%', ',', ';', '\t', '!', '+', '&']);

/** `450 g`, `5 %`, `450` and no more: the shape of most figures, of which nothing more need be asked. */
function isPlainAmount(prims: readonly Prim[], i: number): boolean {
  const prim = prims[i];
  const next = prims[i + 1];
  if (!prim || prim.text.length > 6 || next?.kind === 'number') return false;
  if (next?.kind === 'sign' ? !parting.has(next.text) : next?.kind === 'word' && telling.has(next.text)) return false;
  const before = prims[i - 1];
  // "in 2019 we": a year, if anything
  return (
    !(prim.text.length === 4 && before?.kind === 'word') &&
    before?.text !== '_' &&
    !(before?.kind === 'word' && numbered.has(before.text)) &&
    !(prim.text.includes('.') && prim.text.indexOf('.') !== prim.text.lastIndexOf('.'))
  );
}

/** The word of `potmaker72`, which names nothing that is weighed. */
const isCalled = (word: Prim | undefined, lexicon: Lexicon): boolean =>
  word?.kind === 'word' &&
  word.raw.length > 4 &&
  !lexicon.names.has(word.text) &&
  !lexicon.vocabulary().known.has(word.text) &&
  !lexicon.isEveryday(word.text);

/** "potmaker72", and not "coconaut300g". */
const isMeasured = (next: Prim | undefined, { units }: Lexicon): boolean =>
  next?.kind === 'word' && next.glued && units.next?.has(next.text) === true;

const announcing: ReadonlySet<string> = new Set(['#', '<', '@', '$', '£', '€', '¥', '₹', '+', '(']);

/** `announces`: the prim is a word that may make a date or a price of the figure behind it. */
export function asideTokenAt(prims: readonly Prim[], i: number, lexicon: Lexicon, announces: boolean): Aside | null {
  const prim = prims[i];
  if (!prim) return null;
  if (prim.kind === 'word') {
    const next = prims[i + 1];
    if (next?.glued !== true && !announces) return null;
    if (prim.raw.length <= 2 && next?.glued && next.kind === 'number' && !prim.glued) {
      const broken = damagedDigits(prims, i, lexicon);
      if (broken) return broken;
    }
    if (announces && centuries.has(prim.text)) return spokenYear(prims, i);
    if (announces && months.has(prim.text)) return dateOrTime(prims, i);
    if (announces) return money(prims, i) ?? codeWord(prims, i, lexicon);
    if (next?.glued && prim.raw.length <= 3) return codeWord(prims, i, lexicon) ?? address(prims, i);
    return next?.glued && next.text === ':' ? address(prims, i) : null;
  }
  if (prim.kind === 'sign') {
    if (!announcing.has(prim.text)) return null;
    if (prim.text === '#' && isNumber(prims[i + 1]) && prims[i + 1]?.glued && !prim.glued)
      return found('a number that only counts or names something', i, i + 2, prims);
    return address(prims, i) ?? money(prims, i) ?? telephone(prims, i);
  }
  if (prim.kind !== 'number') return null;
  if (prim.glued && isCalled(prims[i - 1], lexicon) && !isMeasured(prims[i + 1], lexicon))
    return found('part of a name', i, i + 1, prims);
  if (isPlainAmount(prims, i)) return null;
  return (
    damagedDigits(prims, i, lexicon) ??
    blottedDigits(prims, i, lexicon) ??
    listNumber(prims, i, lexicon) ??
    batchNumber(prims, i) ??
    size(prims, i, lexicon) ??
    dateOrTime(prims, i) ??
    money(prims, i) ??
    bareRate(prims, i) ??
    telephone(prims, i)
  );
}

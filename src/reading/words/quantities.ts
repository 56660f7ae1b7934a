import { toCelsius, type Unit, unit } from '../../units/units.ts';
import { type Prim, rawText } from '../text/scan.ts';
import type { Lexicon } from './lexicon.ts';
import { type UnitHit, unitAt } from './measure.ts';
import { type DecimalHabit, fractionAt, isNumberWord, type Numeral, numeralAt, plainValue } from './numbers.ts';

export type Dim = 'mass' | 'volume' | 'percent' | 'bare' | 'ratio' | 'parts' | 'temperature' | 'time' | 'length';

/** An amount as written. `value` in g, mL, cm, s, °C, a share (percent) or the bare figure. */
export interface Quantity {
  readonly dim: Dim;
  readonly value: number;
  /** What the same digits could also mean, in the same base unit. */
  readonly other: number | null;
  /** The other end of a range, or the second of two figures joined by "or". */
  readonly upTo: number | null;
  /** Second part of a ratio `a:b`. */
  readonly second: number | null;
  readonly unit: Unit | null;
  readonly negative: boolean;
  readonly each: boolean;
  /** `3 x 250 g`: the three. */
  readonly times: number | null;
  readonly inWords: boolean;
  readonly text: string;
  readonly numbers: readonly number[];
}

/** What a quantity is beside its figure, where nothing more was said. */
export const plainQuantity = {
  other: null,
  upTo: null,
  second: null,
  unit: null,
  negative: false,
  each: false,
  times: null,
  inWords: false,
  numbers: [],
} as const;

/** Words other than numerals that may begin an amount: `a pound`, `twice its weight`. */
const articles: ReadonlySet<string> = new Set(['a', 'an', 'twice', 'double', 'thrice']);

/** A numeral or an article. */
export const mayBeginAmount = (word: string): boolean => isNumberWord(word) || articles.has(word);

const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' '));
const percentWords = wordSet('percent pct prozent percento pourcent procent porciento');
const partsWords = wordSet('part parts teil teile pts');
const degreeWords = wordSet('degree degrees deg degs grad grade grades grado grados gradi graus');
/** Words that part the two ends of a range; the first two also where the figures are in words. */
const rangeWords = wordSet('to or bis oder maybe perhaps possibly');
const doubtWords = wordSet('maybe perhaps possibly even');
const perWords = wordSet('per por pour');
const eachWords = wordSet('each apiece jeweils chacun chacune');

function base(value: number, unit: Unit): number {
  return unit.dimension === 'temperature' ? toCelsius(value, unit.id) : value * unit.factor;
}

/** Smaller units that count on from a larger one. */
const smaller: ReadonlyMap<string, readonly string[]> = new Map([
  ['lb', ['oz']],
  ['stone', ['lb']],
  ['kg', ['g', 'dag']],
  ['dag', ['g']],
  ['L', ['mL', 'dL', 'cL']],
  ['gallon', ['quart', 'pint', 'cup', 'floz']],
  ['quart', ['pint', 'cup', 'floz']],
  ['pint', ['floz']],
  ['cup', ['tbsp', 'tsp', 'floz']],
  ['tbsp', ['tsp']],
  ['ft', ['in']],
  ['h', ['min']],
]);

/** Joins `1 lb 4 oz`, `1 kg and 250 g`, `a pound and a half`. */
function compound(
  prims: readonly Prim[],
  end: number,
  unit: Unit,
  lexicon: Lexicon,
  habit: DecimalHabit,
): { add: number; end: number; numbers: readonly number[] } | null {
  // "3 kg. 500 g olive": only ounces and pounds are written with a dot
  if (prims[end - 1]?.text === '.' && /^(?:kg|dag|L|h)$/.test(unit.id)) return null;
  let j = end;
  const joint = prims[j];
  const and =
    (joint?.kind === 'word' &&
      (joint.text === 'and' || joint.text === 'und' || joint.text === 'et' || joint.text === 'y')) ||
    (joint?.kind === 'sign' && (joint.text === '&' || joint.text === '+'));
  const comma = joint?.kind === 'sign' && joint.text === ',' && (unit.id === 'lb' || unit.id === 'stone');
  if (and || comma) j++;
  if (and && prims[j]?.kind === 'word') {
    const article = /^(a|an)$/.test(prims[j]?.text ?? '') ? 1 : 0;
    const part = prims[j + article]?.text;
    const three = part === 'three' && /^quarters?$/.test(prims[j + article + 1]?.text ?? '');
    if (three) return { add: 0.75 * unit.factor, end: j + article + 2, numbers: [] };
    if (part === 'half' || part === 'quarter') {
      const next = prims[j + article + 1];
      // "a pound and half a cup" starts another amount
      if (article === 1 || !(next?.kind === 'word' && /^(a|an|of|as)$/.test(next.text)))
        return { add: (part === 'half' ? 0.5 : 0.25) * unit.factor, end: j + article + 1, numbers: [] };
    }
  }
  const parts = smaller.get(unit.id);
  const numeral = parts ? numeralAt(prims, j, habit) : null;
  if (!parts || !numeral || numeral.other !== null) return null;
  const hit = unitAt(prims, numeral.end, lexicon, numeral.value);
  // "1 h 40"
  if (
    !hit &&
    unit.id === 'h' &&
    j === end &&
    /^[0-5]\d$/.test(prims[j]?.text ?? '') &&
    prims[numeral.end]?.text !== '%'
  )
    return { add: numeral.value * 60, end: numeral.end, numbers: numeral.numbers };
  if (!hit && unit.id === 'kg' && j === end && isGramsBehind(prims, numeral))
    return { add: numeral.value, end: numeral.end, numbers: numeral.numbers };
  if (!hit || hit.unit.dimension !== unit.dimension || hit.unit.factor >= unit.factor) return null;
  if (!parts.includes(hit.unit.id) || numeral.value * hit.unit.factor >= unit.factor) return null;
  return { add: base(numeral.value, hit.unit), end: hit.end, numbers: numeral.numbers };
}

/** `5 oz 1/4`, `1 lb and ½`: a part of the unit stands behind it, and nothing that it could be of. */
function partBehind(
  prims: readonly Prim[],
  end: number,
  { value }: Figure,
  unit: Unit,
): { add: number; end: number; numbers: readonly number[] } | null {
  if (!Number.isInteger(value) || (unit.dimension !== 'mass' && unit.dimension !== 'volume')) return null;
  const at = prims[end]?.text === 'and' || prims[end]?.text === '&' ? end + 1 : end;
  const part = fractionAt(prims, at);
  const next = prims[at + 3];
  const ends = next === undefined || next.kind === 'line' || (next.kind === 'sign' && next.text !== '%');
  if (part === null || !ends || prims[at + 4]?.kind === 'number') return null;
  return { add: part * unit.factor, end: at + 3, numbers: [at, at + 2] };
}

/** "1 kg 200," and "2 kg 60 or so": the grams behind the kilos, with nothing behind them that they could be of. */
function isGramsBehind(prims: readonly Prim[], { end }: Numeral): boolean {
  const [figure, next] = [prims[end - 1], prims[end]];
  if (!/^[1-9]\d0$|^[1-9]0$/.test(figure?.text ?? '') || figure?.glued) return false;
  if (next?.kind === 'word') return next.text === 'of' || (next.text === 'or' && prims[end + 1]?.kind === 'word');
  return next === undefined || next.kind === 'line' || (next.kind === 'sign' && /^[,.;!?)]$/.test(next.text));
}

/** `a pound`, `an ounce`, `a whole stone`, `a cup`: an article as one, where a unit follows. */
function articleAt(prims: readonly Prim[], i: number, lexicon: Lexicon): { end: number } | null {
  const prim = prims[i];
  if (prim?.kind !== 'word' || !/^(a|an)$/.test(prim.text) || prims[i + 1]?.kind !== 'word') return null;
  // "tenths of an ounce"
  if (
    i > 1 &&
    prims[i - 1]?.text === 'of' &&
    /^(tenths?|hundredths?|thousandths?|fractions?)$/.test(prims[i - 2]?.text ?? '')
  )
    return null;
  const said = prims[i + 1]?.text ?? '';
  const isWhole = /^(?:whole|full|entire)$/.test(said);
  const end = isWhole ? i + 2 : i + 1;
  const hit = unitAt(prims, end, lexicon);
  // "it took me a whole pint of beer" is a manner of speaking
  const mayPour = !isWhole || said === 'full';
  if (
    !hit ||
    !(hit.unit.dimension === 'mass' || (hit.unit.dimension === 'volume' && mayPour)) ||
    (prims[end]?.text.length ?? 0) < 3
  )
    return null;
  // "£4 a pound" is a price
  return { end };
}

/** Two figures with one space between, alone in the last cell of a row. */
function isOwnCell(prims: readonly Prim[], i: number): boolean {
  const [before, head, tail, next] = [prims[i - 1], prims[i], prims[i + 1], prims[i + 2]];
  if (!before || !head || !tail || (next && next.kind !== 'line')) return false;
  const isApart = before.text === '\t' || head.at - before.at - before.raw.length > 1;
  return isApart && before.kind !== 'line' && before.kind !== 'number' && tail.at === head.at + head.raw.length + 1;
}

/** Rows are numbered: one near it begins with the number before or behind that at `i`. */
function hasNextRow(prims: readonly Prim[], i: number, lexicon: Lexicon): boolean {
  const row = Number(prims[i]?.text);
  for (let k = Math.max(0, i - longestRow); k < i + longestRow; k++) {
    const [prim, next] = [prims[k], prims[k + 1]];
    if (prim?.kind !== 'number' || Math.abs(Number(prim.text) - row) !== 1) continue;
    if (next?.kind === 'number' && !next.glued) return true;
    // "2 tsp clay" has no number of its row, and all the fats are no row
    const opens = k === 0 || prims[k - 1]?.kind === 'line';
    if (opens && !isOfAll(prims, i + 2) && !unitAt(prims, k + 1, lexicon)) return true;
  }
  return false;
}
const longestRow = 40;

/** "g of oils", "kg fats in all". */
const isOfAll = (prims: readonly Prim[], unit: number): boolean =>
  /^(?:oils|fats)$/.test(prims[prims[unit + 1]?.text === 'of' ? unit + 2 : unit + 1]?.text ?? '');

/** `12 500 g`: a space between groups of three digits, where a unit follows and no row number stands before. */
function spacedThousands(
  prims: readonly Prim[],
  i: number,
  lexicon: Lexicon,
): { value: number; other: number | null; end: number } | null {
  const head = prims[i];
  const tail = prims[i + 1];
  if (!head || tail?.kind !== 'number' || tail.glued || !/^[1-9]\d{0,2}$/.test(head.text) || !/^\d{3}$/.test(tail.text))
    return null;
  const hit = unitAt(prims, i + 2, lexicon);
  if (!hit && isOwnCell(prims, i))
    return { value: Number(head.text + tail.text), other: Number(tail.text), end: i + 2 };
  if (!hit || (hit.unit.dimension !== 'mass' && hit.unit.dimension !== 'volume')) return null;
  const before = prims[i - 1];
  const startsRow = before === undefined || before.kind === 'line' || before.kind === 'number';
  const endsRow = prims[hit.end] === undefined || prims[hit.end]?.kind === 'line';
  const isNumbered = before?.kind === 'number' || (startsRow && !endsRow && hasNextRow(prims, i, lexicon));
  if (isNumbered && tail.text !== '000') return null;
  // nobody weighs 000 g
  const other = tail.text === '000' ? null : Number(tail.text);
  return { value: Number(head.text + tail.text), other, end: i + 2 };
}

/** A unit behind a hyphen ("8-ounce"), or alone in the table cell behind the figure's. */
function unitApart(prims: readonly Prim[], end: number, lexicon: Lexicon): ReturnType<typeof unitAt> {
  const tab = (prim: Prim | undefined): boolean => prim?.kind === 'sign' && prim.text === '\t';
  const sign = prims[end];
  if (sign?.kind !== 'sign') return null;
  if (sign.text === '-' && sign.glued && prims[end + 1]?.glued) {
    const unit = unitAt(prims, end + 1, lexicon);
    return unit?.unit.dimension === 'mass' || unit?.unit.dimension === 'volume' ? unit : null;
  }
  if (!tab(sign)) return null;
  const hit = unitAt(prims, end + 1, lexicon);
  const next = hit ? prims[hit.end] : undefined;
  return hit && (next === undefined || next.kind === 'line' || tab(next)) ? hit : null;
}

/** A figure on its way to be a quantity. */
interface Figure {
  readonly prims: readonly Prim[];
  readonly start: number;
  /** Behind its last prim. */
  readonly end: number;
  readonly value: number;
  readonly other: number | null;
  readonly negative: boolean;
  readonly times: number | null;
  readonly inWords: boolean;
  readonly numbers: readonly number[];
}

interface QuantityHit {
  readonly quantity: Quantity;
  readonly end: number;
}

/** "(The) double of the lye". */
const isDoubleOf = (prims: readonly Prim[], i: number): boolean =>
  prims[i]?.text === 'of' &&
  /^(?:lye|naoh|koh|caustic|alkali|hydroxide)$/.test(
    prims[/^(?:the|my|its|that|this)$/.test(prims[i + 1]?.text ?? '') ? i + 2 : i + 1]?.text ?? '',
  );

/** "twice its weight". */
function twiceAt(prims: readonly Prim[], i: number): QuantityHit | null {
  const twice = prims[i];
  const next = prims[i + 1];
  if (
    twice?.kind !== 'word' ||
    !(twice.text === 'twice' || twice.text === 'double' || twice.text === 'thrice') ||
    next?.kind !== 'word' ||
    !(/^(its|the|as|that|their|this)$/.test(next.text) || isDoubleOf(prims, i + 1))
  )
    return null;
  return {
    quantity: {
      ...plainQuantity,
      dim: 'ratio',
      value: twice.text === 'thrice' ? 3 : 2,
      second: 1,
      inWords: true,
      text: twice.raw,
    },
    end: i + 1,
  };
}

/** "minus 5", "-5" where the stroke can be no dash. */
function isNegative(prims: readonly Prim[], i: number): boolean {
  const before = prims[i - 1];
  if (before?.kind === 'word') return before.text === 'minus' || before.text === 'negative';
  if (before?.kind !== 'sign' || before.text !== '-' || !prims[i]?.glued || i < 2) return false;
  const beforeThat = prims[i - 2];
  return (
    beforeThat?.kind !== 'line' && (!before.glued || (beforeThat?.kind === 'sign' && /^[:=(\t]$/.test(beforeThat.text)))
  );
}

/** The figure that begins at prim `i`: a numeral, an article, `12 500 g`, `3 x 250 g`. */
function figureAt(prims: readonly Prim[], i: number, lexicon: Lexicon, habit: DecimalHabit): Figure | null {
  const article = articleAt(prims, i, lexicon);
  const numeral = article
    ? { value: 1, other: null, end: article.end, numbers: [], inWords: true }
    : numeralAt(prims, i, habit);
  if (!numeral) return null;
  const { inWords } = numeral;
  const thousands = inWords ? null : spacedThousands(prims, i, lexicon);
  const { value, other, end } = thousands ?? numeral;
  const numbers = thousands ? [...numeral.numbers, i + 1] : numeral.numbers;
  const negative = isNegative(prims, i);
  const by = prims[end];
  if (
    by &&
    ((by.kind === 'word' && by.text === 'x') || by.text === '×' || (by.kind === 'sign' && by.text === '*')) &&
    Number.isInteger(value) &&
    value > 0 &&
    value <= 48
  ) {
    const second = numeralAt(prims, end + 1, habit);
    const hit = second && unitAt(prims, second.end, lexicon, second.value);
    if (second && hit && (hit.unit.dimension === 'mass' || hit.unit.dimension === 'volume'))
      return {
        prims,
        start: i,
        end: second.end,
        value: value * second.value,
        other: second.other === null ? null : value * second.other,
        negative,
        times: value,
        inWords,
        numbers: [...numbers, ...second.numbers],
      };
  }
  return {
    prims,
    start: i,
    end: behindIsh(prims, end, lexicon),
    value,
    other,
    negative,
    times: null,
    inWords,
    numbers,
  };
}

/** Behind what makes a figure a rough one: "90ish %", "500-ish g", "90 or so %". */
function behindIsh(prims: readonly Prim[], end: number, lexicon: Lexicon): number {
  const next = prims[end];
  if (next?.kind === 'word' && next.text === 'ish') return end + 1;
  if (next?.text === '-' && prims[end + 1]?.text === 'ish') return end + 2;
  if (next?.text !== 'or' || prims[end + 1]?.text !== 'so') return end;
  const unit = prims[end + 2];
  return unit?.text === '%' || percentWords.has(unit?.text ?? '') || unitAt(prims, end + 2, lexicon) ? end + 2 : end;
}

/** "Between 150 and 200 g", "between about 150 and 200". */
const isBetween = (prims: readonly Prim[], start: number): boolean =>
  prims[start - 1]?.text === 'between' || prims[start - 2]?.text === 'between';

/** "Phase 1 - 120 g of water": the number of a part of the work, and no range. */
const isNumbered = (prims: readonly Prim[], start: number): boolean =>
  /^(?:phase|stage|step|part)$/.test(prims[start - 1]?.text ?? '') &&
  prims[start + 1]?.text === '-' &&
  !prims[start + 1]?.glued;

/** Kitchen rounding of one weight in two units. */
const sameRounded = 0.015;

/** Ranges: 100-110 g, 5 to 8 %, 140 or 150, between 150 and 200. */
function rangeAt(figure: Figure, hit: UnitHit | null, lexicon: Lexicon, habit: DecimalHabit): QuantityHit | null {
  const { prims, start, value, inWords, numbers } = figure;
  if (figure.times !== null) return null;
  const unitEnd = hit?.end ?? figure.end;
  const firstPercent = prims[unitEnd]?.text === '%';
  const rangeEnd = firstPercent ? unitEnd + 1 : unitEnd;
  const dash = prims[rangeEnd];
  const next = prims[rangeEnd + 1];
  const questioned =
    dash?.kind === 'sign' && dash.text === '(' && next?.kind === 'word' && (next.text === 'or' || next.text === 'maybe')
      ? rangeEnd + 1
      : rangeEnd;
  const joint = prims[questioned];
  const stroke = joint?.kind === 'sign' && joint.text === '-';
  const isJoint = stroke
    ? joint.glued === (prims[questioned + 1]?.glued ?? false)
    : joint?.kind === 'word' && (rangeWords.has(joint.text) || (joint.text === 'and' && isBetween(prims, start)));
  if (!joint || !isJoint || (inWords && !/^(?:to|or|and)$/.test(joint.text))) return null;
  // "90 g or maybe 98 g"
  const doubting = prims[questioned + 1];
  const from = doubting?.kind === 'word' && doubtWords.has(doubting.text) ? 2 : 1;
  const second = numeralAt(prims, questioned + from, habit);
  if (!second) return null;
  const secondHit = unitAt(prims, second.end, lexicon, second.value);
  if (!hit && secondHit && isNumbered(prims, start)) return null;
  const secondPercent = prims[second.end]?.text === '%';
  // "one to one" reaches from nothing to nothing
  const isEven = joint.text === 'to' && second.value === value && !hit && !secondHit && !firstPercent && !secondPercent;
  if (isEven && value === 1) return null;
  const sameUnit =
    (!hit && !firstPercent && (secondHit || secondPercent)) ||
    (hit && secondHit && hit.unit.dimension === secondHit.unit.dimension) ||
    (firstPercent && secondPercent) ||
    (!hit && !firstPercent && !secondHit && (stroke ? joint.glued : true)) ||
    (hit && !secondHit && !secondPercent && questioned !== rangeEnd);
  // "1-1/2 oz" and "140-300" telephone-like groups were taken before
  if (
    !sameUnit ||
    (joint.text === '-' && prims[questioned + 1]?.glued === false && !hit && !secondHit && !secondPercent)
  )
    return null;
  let end = secondHit?.end ?? second.end;
  if (prims[end]?.text === '%') end++;
  if (questioned !== rangeEnd)
    while (end < prims.length && prims[end]?.kind === 'sign' && /^[?)]$/.test(prims[end]?.text ?? '')) end++;
  const percent = secondPercent || firstPercent;
  const upToUnit = secondHit?.unit ?? hit?.unit ?? null;
  const unit = hit?.unit ?? secondHit?.unit ?? null;
  const scaled = (one: number, of: Unit | null): number => (of ? base(one, of) : percent ? one / 100 : one);
  const [first, last] = [scaled(value, unit), scaled(second.value, upToUnit)];
  // "2 lb or 32 oz": one weight in two units
  const isSame = hit && secondHit && hit.unit !== secondHit.unit && Math.abs(first - last) <= sameRounded * last;
  return {
    quantity: {
      dim: unit ? unit.dimension : percent ? 'percent' : 'bare',
      value: first,
      other: null,
      upTo: isSame ? null : last,
      second: null,
      unit,
      negative: false,
      each: false,
      times: null,
      inWords,
      text: `${joint.text === 'and' ? 'between ' : ''}${rawText(prims, start, end)}`,
      numbers: [...numbers, ...second.numbers],
    },
    end,
  };
}

/** Where an amount that ends at prim `to` is of each of several things: "200 g each of". */
function endOfEach(prims: readonly Prim[], to: number): number | null {
  const next = prims[to];
  if (next?.kind !== 'word') return null;
  if (eachWords.has(next.text)) return prims[to + 1]?.text === 'of' ? to + 2 : to + 1;
  return next.text === 'of' && prims[to + 1]?.text === 'each' ? to + 2 : null;
}

function quantityOf(
  { prims, start, negative, times, inWords, numbers }: Figure,
  dim: Dim,
  value: number,
  unit: Unit | null,
  to: number,
  other: number | null = null,
  second: number | null = null,
): QuantityHit {
  const each = endOfEach(prims, to);
  const text = rawText(prims, start, to);
  return {
    quantity: {
      dim,
      value,
      other,
      upTo: null,
      second,
      unit,
      negative,
      each: each !== null,
      times,
      inWords,
      text,
      numbers,
    },
    end: each ?? to,
  };
}

/** "2.5 times the weight of the lye", "2 x as much water as lye": words up to the alkali. */
const ofMeasure = /^(?:the|my|its|as|much|heavy|weight|amount|mass|quantity|of|water)$/;
const longestMeasure = 7;

/** Ratios: 2:1, 60/40, "1.5x lye", "3 to 1". */
function ratioAt(figure: Figure, lexicon: Lexicon, habit: DecimalHabit): QuantityHit | null {
  const { prims, start, end, value, numbers } = figure;
  const sign = prims[end];
  if (!sign || sign.kind === 'line') return null;
  const to = (second: Numeral): QuantityHit =>
    quantityOf(
      { ...figure, numbers: [...numbers, ...second.numbers] },
      'ratio',
      value,
      null,
      second.end,
      null,
      second.value,
    );
  if (sign.kind === 'sign' && (sign.text === ':' || sign.text === '/') && !figure.inWords) {
    const second = numeralAt(prims, end + 1, habit);
    const tight = sign.glued && (prims[end + 1]?.glued ?? false);
    if (
      second &&
      (tight || (sign.text === ':' && second.value <= 100)) &&
      !second.inWords &&
      !unitAt(prims, second.end, lexicon, second.value) &&
      // "50/30/20": a list
      prims[end + 2]?.text !== '/' &&
      !(prims[start - 1]?.text === '/' && prims[start - 1]?.glued && prims[start - 2]?.kind === 'number')
    )
      return to(second);
  }
  if (sign.text === 'x' || sign.text === '×' || sign.text === 'times') {
    let of = end + 1;
    while (of - end <= longestMeasure && ofMeasure.test(prims[of]?.text ?? '')) of++;
    const behind = /^(?:soda|potash|hydroxide|caustica|caustique)$/.test(prims[of + 1]?.text ?? '') ? of + 2 : of + 1;
    if (
      /^(?:lye|naoh|koh|alkali|caustic|sodium|potassium|hydroxide|soda|soude|sosa|lauge)$/.test(prims[of]?.text ?? '')
    ) {
      // "twice as much water as lye": the water is named once
      const water = prims.slice(end, of).findIndex(({ text }) => text === 'water');
      if (water > 0) return quantityOf(figure, 'ratio', value, null, end + water, null, 1);
      const isWeight = /^(?:weight|amount)$/.test(prims[behind]?.text ?? '');
      return quantityOf(figure, 'ratio', value, null, isWeight ? behind + 1 : behind, null, 1);
    }
  }
  // "3 times as much as coconut" is no three grams
  if (sign.text === 'times' && prims[end + 1]?.text === 'as') return quantityOf(figure, 'ratio', value, null, end + 1);
  const isOne = figure.inWords && value === 1;
  if (sign.kind === 'word' && sign.text === 'to' && (isOne || /^[1-9]\d?(\.\d+)?$/.test(prims[start]?.text ?? ''))) {
    const second = numeralAt(prims, end + 1, habit);
    if (second && second.value <= 10 && !unitAt(prims, second.end, lexicon, second.value)) return to(second);
  }
  return null;
}

/** Words and signs of what somebody said, at the most. */
const longestQuote = 80;

/** "… and water 300": the sign at `end` closes what somebody said, and is no inch. */
function isQuoted(prims: readonly Prim[], end: number): boolean {
  for (let k = end - 1; k >= 0 && end - k <= longestQuote; k--)
    if (prims[k]?.text === '"') return !prims[k]?.glued && prims[k + 1]?.glued === true;
  return false;
}

/** A figure without a unit: a share, parts, a temperature, a size, or bare. */
function unitless(figure: Figure): QuantityHit | null {
  const { prims, start, end, value, other } = figure;
  const sign = prims[end];
  if (sign?.kind === 'sign') {
    if (sign.text === '%')
      return quantityOf(figure, 'percent', value / 100, null, end + 1, other === null ? null : other / 100);
    if (sign.text === '°') return quantityOf(figure, 'temperature', value, null, end + 1);
    if (sign.text === '"' && sign.glued && !isQuoted(prims, end))
      return quantityOf(figure, 'length', value * 2.54, null, end + 1);
  } else if (sign?.kind === 'word') {
    const { text } = sign;
    if (percentWords.has(text)) return quantityOf(figure, 'percent', value / 100, null, end + 1);
    if (perWords.has(text) && /^(cent|ciento)$/.test(prims[end + 1]?.text ?? ''))
      return quantityOf(figure, 'percent', value / 100, null, end + 2);
    if (partsWords.has(text)) return quantityOf(figure, 'parts', value, null, end + 1);
    if (degreeWords.has(text)) return quantityOf(figure, 'temperature', value, null, end + 1);
    if (text === 'in' && sign.glued) return quantityOf(figure, 'length', value * 2.54, null, end + 1);
  }
  // a lone number word is an amount only where a name or "of" follows at once
  if (figure.inWords && (value === 1 || prims[start]?.text === 'half' || prims[start]?.text === 'quarter')) return null;
  return quantityOf(figure, 'bare', value, null, end, other);
}

/** Of one thing in one recipe, at the most. */
const mostTimes = 48;

const packWords = /^(?:bottles|tins|cans|tubs|jars|packs|packets|bags|blocks|bricks|boxes|cartons|buckets|sticks)$/;

interface Times {
  readonly value: number;
  readonly end: number;
  readonly numbers: readonly number[];
}

/** "1 kg x 2", "1 kg (x 2 tins)", "500 g x 2 = 1000 g", with nothing behind it that there are two of. */
function timesBehind(prims: readonly Prim[], end: number, unit: Unit, figure: number, lexicon: Lexicon): Times | null {
  const at = prims[end]?.text === '(' ? end + 1 : end;
  const [by, count, next] = [prims[at], prims[at + 1], prims[at + 2]];
  if (unit.dimension !== 'mass' && unit.dimension !== 'volume') return null;
  if (!by || !/^[x×*]$/.test(by.text) || count?.kind !== 'number' || !/^[1-9]\d?$/.test(count.text)) return null;
  const value = Number(count.text);
  if (value > mostTimes) return null;
  // "0.2 kg x 5 = 1.00" is a price
  if (next?.text === '=') {
    const product = prims[at + 3]?.kind === 'number' && Number(prims[at + 3]?.text) === figure * value;
    const same = product ? unitAt(prims, at + 4, lexicon) : null;
    return same?.unit === unit ? { value, end: same.end, numbers: [at + 1, at + 3] } : null;
  }
  const ends =
    next === undefined || (next.kind === 'sign' ? /^[.,;)?!|\t]$/.test(next.text) : packWords.test(next.text));
  return ends || next.kind === 'line' ? { value, end: at + 2, numbers: [at + 1] } : null;
}

/** Units of most rows, of which none begins the name of another one. */
const rowUnits: ReadonlySet<string> = new Set(['g', 'kg', 'oz', 'lb']);

/** Words that may carry an amount on. */
const carrying: ReadonlySet<string> = new Set([
  ...rangeWords,
  ...eachWords,
  ...'and und et y ish x half quarter'.split(' '),
]);

const minus: ReadonlySet<string> = new Set(['-', 'minus', 'negative']);

/** Behind `450 g` there is nothing that could be more of it. */
function isDone(prims: readonly Prim[], end: number, unit: string): boolean {
  const next = prims[end];
  if (next === undefined || next.kind === 'line') return true;
  if (next.kind === 'word')
    return (
      !carrying.has(next.text) && !isNumberWord(next.text) && !(next.text === 'of' && prims[end + 1]?.text === 'each')
    );
  return next.kind === 'sign' && next.text === ',' && unit !== 'lb';
}

/** `450 g`, `16oz` in a row: what most amounts are, and nothing more need be tried. */
function rowAmountAt(prims: readonly Prim[], i: number, lexicon: Lexicon): QuantityHit | null {
  const [head, next] = [prims[i], prims[i + 1]];
  const node = head?.kind === 'number' && next?.kind === 'word' ? lexicon.units.next?.get(next.text) : undefined;
  if (!head || !node?.hit || node.next || !rowUnits.has(node.hit) || minus.has(prims[i - 1]?.text ?? '')) return null;
  const value = isDone(prims, i + 2, node.hit) ? plainValue(head.text) : null;
  if (value === null) return null;
  const of = unit(node.hit);
  return {
    quantity: {
      dim: of.dimension,
      value: base(value, of),
      other: null,
      upTo: null,
      second: null,
      unit: of,
      negative: false,
      each: false,
      times: null,
      inWords: false,
      text: rawText(prims, i, i + 2),
      numbers: [i],
    },
    end: i + 2,
  };
}

/** "1,000 g", "1.500 g": nobody weighs to the milligram, and round figures least; the other is kept for the checks. */
function asThousands(figure: Figure, prims: readonly Prim[]): Figure {
  const thousands = figure.value * 1000;
  const isRound = figure.value < 10 && thousands % 50 === 0;
  const written = prims[figure.numbers[0] ?? -1]?.text ?? '';
  return isRound && /^[1-9][.,]\d{3}$/.test(written) ? { ...figure, value: thousands, other: figure.value } : figure;
}

/** Number words as a telephone hears them. */
const heard: ReadonlyMap<string, number> = new Map(
  Object.entries({ to: 2, too: 2, tree: 3, free: 3, for: 4, fore: 4, fife: 5, sex: 6, sicks: 6, ate: 8 }),
);
const asksFor = wordSet('lye naoh koh caustic soda alkali need needed');

/** Who says "one hundred" where it is one does not leave that out elsewhere. */
const saysOne = (prims: readonly Prim[], hundred: string): boolean =>
  prims.some(({ text }, k) => text === 'one' && prims[k + 1]?.text === hundred);

/** "And water to hundred and eighty": nothing but a name stands before it in its row. */
function isRowBefore(prims: readonly Prim[], k: number): boolean {
  const words: string[] = [];
  for (let at = k - 1; at >= 0 && words.length < 5; at--) {
    const prim = prims[at];
    if (prim?.kind !== 'word') break;
    words.push(prim.text);
  }
  return words.length > 0 && words.length < 5 && !words.some((word) => changing.test(word));
}
const changing =
  /^(?:reduc|cut|chang|cool|heat|warm|went|go|gone|going|came|come|up|down|add|top|fill|lower|rais|increas|drop|bring|brought|lye|for|next)/;

/** "To hundred grams", "olive for hundred and fifty": a figure that was two or four hundred, perhaps. */
function asHeard(prims: readonly Prim[], i: number, hit: QuantityHit): QuantityHit {
  const hundred = prims[i]?.text;
  const before = prims[i - 1]?.text ?? '';
  const times = hundred === 'hundred' || hundred === 'thousand' ? heard.get(before) : undefined;
  const { value, upTo, unit, dim } = hit.quantity;
  // "cool it to hundred", "lye for hundred grams of lard"
  const isPlain = dim === 'bare' ? before === 'to' || before === 'for' : dim !== 'mass' && dim !== 'volume';
  const isAsked = before === 'for' && asksFor.has(prims[i - 2]?.text ?? '');
  if (times === undefined || upTo !== null || isPlain || isAsked) return hit;
  const more = (times - 1) * (hundred === 'hundred' ? 100 : 1000);
  if (/^too?$/.test(before) && saysOne(prims, hundred ?? '') && isRowBefore(prims, i - 1))
    return { ...hit, quantity: { ...hit.quantity, value: value + (unit ? base(more, unit) : more) } };
  const said = unit ? value / unit.factor : value;
  const text = `${said} or ${said + more} ${unit?.id ?? ''}`.trim();
  return { ...hit, quantity: { ...hit.quantity, upTo: value + (unit ? base(more, unit) : more), text } };
}

/** The amount that begins at prim `i`; null where none does. */
export function quantityAt(
  prims: readonly Prim[],
  i: number,
  lexicon: Lexicon,
  habit: DecimalHabit,
): QuantityHit | null {
  const head = prims[i];
  if (head?.kind === 'word' ? !mayBeginAmount(head.text) : head?.kind !== 'number') return null;
  const row = rowAmountAt(prims, i, lexicon);
  if (row) return row;
  const hit = amountAt(prims, i, lexicon, habit);
  return hit?.quantity.inWords ? asHeard(prims, i, hit) : hit;
}

function amountAt(prims: readonly Prim[], i: number, lexicon: Lexicon, habit: DecimalHabit): QuantityHit | null {
  const twice = twiceAt(prims, i);
  if (twice) return twice;
  const written = figureAt(prims, i, lexicon, habit);
  if (!written) return null;
  const hit = unitAt(prims, written.end, lexicon, written.value) ?? unitApart(prims, written.end, lexicon);
  const figure = hit?.unit.id === 'g' ? asThousands(written, prims) : written;
  const range = rangeAt(figure, hit, lexicon, habit);
  if (range) return range;
  if (!hit) return ratioAt(figure, lexicon, habit) ?? unitless(figure);
  const { unit } = hit;
  const end = behindIsh(prims, hit.end, lexicon);
  const times = figure.times === null ? timesBehind(prims, end, unit, figure.value, lexicon) : null;
  if (times) {
    const many = { ...figure, times: times.value, numbers: [...figure.numbers, ...times.numbers] };
    return quantityOf(many, unit.dimension, base(figure.value, unit) * times.value, unit, times.end);
  }
  const total = base(figure.value, unit);
  const more =
    figure.times === null ? (compound(prims, end, unit, lexicon, habit) ?? partBehind(prims, end, figure, unit)) : null;
  if (more)
    return quantityOf(
      { ...figure, numbers: [...figure.numbers, ...more.numbers] },
      unit.dimension,
      total + more.add,
      unit,
      more.end,
    );
  return quantityOf(figure, unit.dimension, total, unit, end, figure.other === null ? null : base(figure.other, unit));
}

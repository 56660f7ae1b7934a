import { toCelsius, type Unit } from '../units/units.ts';
import type { Lexicon } from './lexicon.ts';
import { unitAt } from './measure.ts';
import { type DecimalHabit, isNumberWord, numeralAt } from './numbers.ts';
import type { Prim } from './scan.ts';

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

/** Words other than numerals that may begin an amount: `a pound`, `twice its weight`. */
const articles: ReadonlySet<string> = new Set(['a', 'an', 'twice', 'double', 'thrice']);

const percentWords = /^(percent|pct|prozent|percento|pourcent|procent|porciento)$/;

const rawText = (prims: readonly Prim[], from: number, to: number): string =>
  prims
    .slice(from, to)
    .map((prim, k) => (k > 0 && !prim.glued ? ' ' : '') + prim.raw)
    .join('')
    .trim();

function base(value: number, unit: Unit): number {
  return unit.dimension === 'temperature' ? toCelsius(value, unit.id) : value * unit.factor;
}

/** Joins `1 lb 4 oz`, `1 kg and 250 g`, `a pound and a half`. */
function compound(
  prims: readonly Prim[],
  end: number,
  unit: Unit,
  lexicon: Lexicon,
  habit: DecimalHabit,
): { add: number; end: number; numbers: readonly number[] } | null {
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
      if (article === 1 || !(next?.kind === 'word' && /^(a|an|of)$/.test(next.text)))
        return { add: (part === 'half' ? 0.5 : 0.25) * unit.factor, end: j + article + 1, numbers: [] };
    }
  }
  const numeral = numeralAt(prims, j, habit);
  if (!numeral || numeral.other !== null) return null;
  const hit = unitAt(prims, numeral.end, lexicon, numeral.value);
  if (!hit || hit.unit.dimension !== unit.dimension || hit.unit.factor >= unit.factor) return null;
  const pairs: Readonly<Record<string, readonly string[]>> = {
    lb: ['oz'],
    stone: ['lb'],
    kg: ['g', 'dag'],
    L: ['mL', 'dL', 'cL'],
    gallon: ['quart', 'pint', 'cup', 'floz'],
    quart: ['pint', 'cup', 'floz'],
    pint: ['floz'],
    cup: ['tbsp', 'tsp', 'floz'],
    tbsp: ['tsp'],
    ft: ['in'],
    h: ['min'],
  };
  if (!pairs[unit.id]?.includes(hit.unit.id) || numeral.value * hit.unit.factor >= unit.factor) return null;
  return { add: base(numeral.value, hit.unit), end: hit.end, numbers: numeral.numbers };
}

/** `a pound`, `an ounce`, `a cup`: an article as one, where a unit follows. */
function articleAt(prims: readonly Prim[], i: number, lexicon: Lexicon): { end: number } | null {
  const prim = prims[i];
  if (prim?.kind !== 'word' || !/^(a|an)$/.test(prim.text) || prims[i + 1]?.kind !== 'word') return null;
  const hit = unitAt(prims, i + 1, lexicon);
  if (
    !hit ||
    (hit.unit.dimension !== 'mass' && hit.unit.dimension !== 'volume') ||
    (prims[i + 1]?.text.length ?? 0) < 3
  )
    return null;
  // "£4 a pound" is a price
  return { end: i + 1 };
}

/** `12 500 g`: a space between groups of three digits, where a unit follows and no row number stands before. */
function spacedThousands(
  prims: readonly Prim[],
  i: number,
  lexicon: Lexicon,
): { value: number; other: number; end: number } | null {
  const head = prims[i];
  const tail = prims[i + 1];
  if (!head || !/^[1-9]\d{0,2}$/.test(head.text) || tail?.kind !== 'number' || tail.glued || !/^\d{3}$/.test(tail.text))
    return null;
  const hit = unitAt(prims, i + 2, lexicon);
  if (!hit || (hit.unit.dimension !== 'mass' && hit.unit.dimension !== 'volume')) return null;
  const before = prims[i - 1];
  const startsRow = before === undefined || before.kind === 'line' || before.kind === 'number';
  if (startsRow && tail.text !== '000') return null;
  return { value: Number(head.text + tail.text), other: Number(tail.text), end: i + 2 };
}

/** A unit alone in the table cell behind the figure's. */
function unitCell(prims: readonly Prim[], end: number, lexicon: Lexicon): ReturnType<typeof unitAt> {
  const tab = (prim: Prim | undefined): boolean => prim?.kind === 'sign' && prim.text === '\t';
  if (!tab(prims[end])) return null;
  const hit = unitAt(prims, end + 1, lexicon);
  const next = hit ? prims[hit.end] : undefined;
  return hit && (next === undefined || next.kind === 'line' || tab(next)) ? hit : null;
}

export function quantityAt(
  prims: readonly Prim[],
  i: number,
  lexicon: Lexicon,
  habit: DecimalHabit,
): { quantity: Quantity; end: number } | null {
  const start = i;
  const head = prims[i];
  if (
    !head ||
    head.kind === 'sign' ||
    head.kind === 'line' ||
    (head.kind === 'word' && !isNumberWord(head.text) && !articles.has(head.text))
  )
    return null;
  const twice = prims[i];
  if (
    twice?.kind === 'word' &&
    (twice.text === 'twice' || twice.text === 'double' || twice.text === 'thrice') &&
    prims[i + 1]?.kind === 'word' &&
    /^(its|the|as|that|their|this)$/.test(prims[i + 1]?.text ?? '')
  )
    return {
      quantity: {
        dim: 'ratio',
        value: twice.text === 'thrice' ? 3 : 2,
        other: null,
        upTo: null,
        second: 1,
        unit: null,
        negative: false,
        each: false,
        times: null,
        inWords: true,
        text: twice.raw,
        numbers: [],
      },
      end: i + 1,
    };
  const article = articleAt(prims, i, lexicon);
  const numeral = article
    ? { value: 1, other: null, end: article.end, numbers: [], inWords: true }
    : numeralAt(prims, i, habit);
  if (!numeral) return null;
  let { value, other, end } = numeral;
  const numbers = [...numeral.numbers];
  const thousands = numeral.inWords ? null : spacedThousands(prims, i, lexicon);
  if (thousands) {
    ({ value, other, end } = thousands);
    numbers.push(i + 1);
  }
  let times: number | null = null;
  let upTo: number | null = null;
  const before = prims[i - 1];
  const beforeThat = prims[i - 2];
  const minus = before?.kind === 'word' && (before.text === 'minus' || before.text === 'negative');
  const negative =
    minus ||
    (before?.kind === 'sign' &&
      before.text === '-' &&
      (prims[i]?.glued ?? false) &&
      (!before.glued || (beforeThat?.kind === 'sign' && /^[:=(\t]$/.test(beforeThat.text))) &&
      i >= 2 &&
      beforeThat?.kind !== 'line');

  // 3 x 250 g
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
    if (second && hit && (hit.unit.dimension === 'mass' || hit.unit.dimension === 'volume')) {
      times = value;
      value *= second.value;
      other = second.other === null ? null : times * second.other;
      numbers.push(...second.numbers);
      end = second.end;
    }
  }
  // ranges: 100-110 g, 5 to 8 %, 140 or 150
  let hit = unitAt(prims, end, lexicon, value) ?? unitCell(prims, end, lexicon);
  let rangeEnd = hit?.end ?? end;
  if (prims[rangeEnd]?.text === '%') rangeEnd++;
  const dash = prims[rangeEnd];
  let questioned = rangeEnd;
  if (
    dash?.kind === 'sign' &&
    dash.text === '(' &&
    prims[rangeEnd + 1]?.kind === 'word' &&
    (prims[rangeEnd + 1]?.text === 'or' || prims[rangeEnd + 1]?.text === 'maybe')
  )
    questioned = rangeEnd + 1;
  const joint = prims[questioned];
  const isJoint =
    (joint?.kind === 'sign' && joint.text === '-' && joint.glued === (prims[questioned + 1]?.glued ?? false)) ||
    (joint?.kind === 'word' && /^(to|or|bis|oder|maybe)$/.test(joint.text));
  if (
    (times === null && isJoint && !numeral.inWords) ||
    (times === null && joint?.kind === 'word' && /^(to|or)$/.test(joint.text))
  ) {
    const second = numeralAt(prims, questioned + 1, habit);
    if (second) {
      const secondHit = unitAt(prims, second.end, lexicon, second.value);
      const secondPercent = prims[second.end]?.text === '%';
      const firstPercent = prims[hit?.end ?? end]?.text === '%';
      const sameUnit =
        (!hit && (secondHit || secondPercent)) ||
        (hit && secondHit && hit.unit.dimension === secondHit.unit.dimension) ||
        (firstPercent && secondPercent) ||
        (!hit && !firstPercent && !secondHit && (joint?.text === '-' ? joint.glued : true)) ||
        (hit && !secondHit && !secondPercent && questioned !== rangeEnd);
      // "1-1/2 oz" and "140-300" telephone-like groups were taken before
      if (
        sameUnit &&
        !(joint?.text === '-' && prims[questioned + 1]?.glued === false && !hit && !secondHit && !secondPercent)
      ) {
        const unitUsed = secondHit?.unit ?? hit?.unit ?? null;
        const scale = unitUsed
          ? base(second.value, unitUsed)
          : secondPercent || firstPercent
            ? second.value / 100
            : second.value;
        upTo = scale;
        numbers.push(...second.numbers);
        if (!hit && secondHit) hit = secondHit;
        end = secondHit?.end ?? second.end;
        if (prims[end]?.text === '%') end++;
        if (questioned !== rangeEnd)
          while (end < prims.length && prims[end]?.kind === 'sign' && /^[?)]$/.test(prims[end]?.text ?? '')) end++;
        const percentRange = secondPercent || firstPercent;
        const unit = hit?.unit ?? null;
        return {
          quantity: {
            dim: unit ? unit.dimension : percentRange ? 'percent' : 'bare',
            value: unit ? base(value, unit) : percentRange ? value / 100 : value,
            other: null,
            upTo,
            second: null,
            unit,
            negative: false,
            each: false,
            times: null,
            inWords: numeral.inWords,
            text: rawText(prims, start, end),
            numbers,
          },
          end,
        };
      }
    }
  }
  const make = (
    dim: Dim,
    factorValue: number,
    unit: Unit | null,
    to: number,
    extra: Partial<Quantity> = {},
  ): { quantity: Quantity; end: number } => {
    let last = to;
    let each = false;
    const next = prims[last];
    if (next?.kind === 'word' && /^(each|apiece|jeweils|chacun|chacune)$/.test(next.text)) {
      each = true;
      last++;
      if (prims[last]?.text === 'of') last++;
    } else if (next?.kind === 'word' && next.text === 'of' && prims[last + 1]?.text === 'each') {
      each = true;
      last += 2;
    }
    return {
      quantity: {
        dim,
        value: factorValue,
        other: null,
        upTo: null,
        second: null,
        unit,
        negative,
        each,
        times,
        inWords: numeral.inWords,
        text: rawText(prims, start, to),
        numbers,
        ...extra,
      },
      end: last,
    };
  };
  // ratios: 2:1, 60/40, 60:40
  const colon = prims[end];
  if (!hit && (colon?.text === ':' || colon?.text === '/') && colon.kind === 'sign' && !numeral.inWords) {
    const second = numeralAt(prims, end + 1, habit);
    const tight = colon.glued && (prims[end + 1]?.glued ?? false);
    if (
      second &&
      (tight || (colon.text === ':' && second.value <= 100)) &&
      !second.inWords &&
      !unitAt(prims, second.end, lexicon, second.value) &&
      prims[end + 2]?.text !== '/'
    ) {
      numbers.push(...second.numbers);
      return make('ratio', value, null, second.end, { second: second.value });
    }
  }
  // "water 1.5x lye"
  const fold = prims[end];
  if (!hit && (fold?.text === 'x' || fold?.text === '×' || fold?.text === 'times')) {
    const of = /^(the|my)$/.test(prims[end + 1]?.text ?? '') ? end + 2 : end + 1;
    if (/^(lye|naoh|koh|alkali|caustic)$/.test(prims[of]?.text ?? ''))
      return make('ratio', value, null, of + 1, { second: 1 });
  }
  if (
    !hit &&
    prims[end]?.kind === 'word' &&
    prims[end]?.text === 'to' &&
    /^[1-9]\d?(\.\d+)?$/.test(prims[start]?.text ?? '')
  ) {
    const second = numeralAt(prims, end + 1, habit);
    if (second && second.value <= 10 && !unitAt(prims, second.end, lexicon, second.value)) {
      numbers.push(...second.numbers);
      return make('ratio', value, null, second.end, { second: second.value });
    }
  }
  if (!hit) {
    const sign = prims[end];
    if (sign?.text === '%' && sign.kind === 'sign')
      return make('percent', value / 100, null, end + 1, other === null ? {} : { other: other / 100 });
    if (sign?.kind === 'word' && percentWords.test(sign.text)) return make('percent', value / 100, null, end + 1);
    if (
      sign?.kind === 'word' &&
      (sign.text === 'per' || sign.text === 'por' || sign.text === 'pour') &&
      /^(cent|ciento)$/.test(prims[end + 1]?.text ?? '')
    )
      return make('percent', value / 100, null, end + 2);
    if (sign?.kind === 'word' && /^(parts?|teile?|pts)$/.test(sign.text)) return make('parts', value, null, end + 1);
    if (sign?.text === '°' || (sign?.kind === 'word' && /^(degrees?|degs?|grad)$/.test(sign.text)))
      return make('temperature', value, null, end + 1);
    if (sign?.kind === 'word' && sign.text === 'in' && sign.glued) return make('length', value * 2.54, null, end + 1);
    if (sign?.text === '"' && sign.glued) return make('length', value * 2.54, null, end + 1);
    if (numeral.inWords && !article) {
      // a lone number word is an amount only where a name or "of" follows at once
      if (value === 1 || prims[start]?.text === 'half' || prims[start]?.text === 'quarter') return null;
    }
    return make('bare', value, null, end, other === null ? {} : { other });
  }
  const { unit } = hit;
  end = hit.end;
  let total = base(value, unit);
  if (times === null) {
    const more = compound(prims, end, unit, lexicon, habit);
    if (more) {
      total += more.add;
      end = more.end;
      numbers.push(...more.numbers);
      return make(unit.dimension, total, unit, end);
    }
  }
  return make(unit.dimension, total, unit, end, other === null ? {} : { other: base(other, unit) });
}

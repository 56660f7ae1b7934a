/** Which figure a question turns into which unit. */
import { absoluteZero, type Unit, unit } from '../../units/units.ts';
import type { Facts, Measure } from './facts.ts';
import type { UnitMark } from './units.ts';

const sized: ReadonlySet<string> = new Set(['mass', 'volume', 'temperature', 'length', 'time', 'bare']);
const verb = /\b(convert|conversion|change|turn|translate|equivalent|equals?|same as|make in|as in)\b/;
const alike = /\b(same|equal|equals|equivalent)\b/;
const heavy = /\b(weighs?|weight|heavy|mass)\b/;
const roomy = /\b(volume|space|room|how big|fill)\b/;

/** Measures of the kitchen that hold now this, now that. */
export const vagueMeasure =
  /\b(sticks?|pinch(es)?|drops?|dash(es)?|scoops?|handfuls?|knobs?|spoonfuls?|mugs?|glass(es)?|jars?|bottles?|blocks?|tubs?|ladles?)\b/;

export interface Source {
  readonly measures: readonly Measure[];
  /** Units that are asked for, not those of the figures. */
  readonly marks: readonly UnitMark[];
}

export const asksToConvert = (words: string): boolean => verb.test(words);

const one = ({ unit: own, text, from, to }: Omit<UnitMark, 'lead'>, value = 1): Measure => ({
  dim: own.dimension,
  value,
  unit: own,
  upTo: null,
  second: null,
  other: null,
  text,
  from,
  to,
});

/** The figures to convert; "how many mL in a cup" names a unit instead, which then counts as one of it. */
export function sourceOf({ units: marks, words, measures: all, tokens }: Facts): Source | null {
  if (/\babsolute zero\b/.test(words) && all.every(({ dim, value }) => dim === 'bare' && value === 0))
    return { measures: [one({ unit: unit('°C'), text: 'absolute zero', from: 0, to: 0 }, absoluteZero)], marks };
  const measures = all.filter(({ dim, unit: own }) => sized.has(dim) && (dim !== 'bare' || own || all.length === 1));
  const [first, second] = measures;
  const vague = vagueMeasure.exec(words)?.[0];
  if (!first && all.length === 0 && marks.length === 1 && vague)
    return { measures: [{ ...one({ unit: unit('g'), text: vague, from: 0, to: 0 }), dim: 'bare', unit: null }], marks };
  // a figure that cannot be read is not one of anything
  const unread = tokens.some((token) => token.t === 'aside' && token.numbers.length > 0);
  if (!first) return all.length > 0 || unread ? null : oneOf(marks, words);
  const [leading, target] = marks;
  // "oz to g: 7.5", "grams to ounces 500"
  if (first.unit === null && !second && leading?.lead === 'none' && target?.lead === 'to')
    return { measures: [{ ...first, dim: leading.unit.dimension, unit: leading.unit }], marks: [target] };
  // "is 16 oz the same as 454 g?"
  if (
    first.unit &&
    second?.unit &&
    measures.length === 2 &&
    (marks.length === 0 || marks.every(({ lead }) => lead === 'many')) &&
    (alike.test(words) || (/^\W*is\b/.test(words) && sideBySide(tokens, first, second)))
  )
    return {
      measures: [first],
      marks: [...marks, { ...second, unit: second.unit, lead: marks.length > 0 ? 'none' : 'to' }],
    };
  return { measures, marks };
}

/** "8 fl oz water 8 oz": nothing but the name of it between. */
const sideBySide = (tokens: Facts['tokens'], { to }: Measure, { from }: Measure): boolean =>
  tokens
    .slice(to, from)
    .every(
      (token) =>
        token.t === 'name' || (token.t === 'word' && /^(of|the|really|about|exactly|roughly|also)$/.test(token.text)),
    );

const smallUnits = /^(mg|g|oz|mL|cL|tsp|tbsp|cm|mm|in|floz)(-|$)/;

/** "grams in a pound", "oz per lb", "kilo of coconut oil in litres", "tablespoon of honey weight": one of which unit. */
function oneOf(marks: readonly UnitMark[], words: string): Source | null {
  const [first, second] = marks;
  if (!first) return null;
  if (!second) return heavy.test(words) || roomy.test(words) ? { measures: [one(first)], marks: [] } : null;
  const small = smallUnits.test(first.unit.id) && first.unit.factor < second.unit.factor;
  const secondIsOne = first.lead === 'many' || first.lead === 'to' || (second.lead !== 'many' && small);
  const from = marks.find(({ lead }) => lead === 'one') ?? (secondIsOne ? second : first);
  return { measures: [one(from)], marks: marks.filter((mark) => mark !== from) };
}

/** Units asked for, surest first. */
export function wantedOf({ measures, marks }: Source): readonly UnitMark[] {
  const behind = ({ from }: UnitMark): boolean => measures.every((measure) => measure.from < from);
  const led = (lead: UnitMark['lead']): readonly UnitMark[] => marks.filter((mark) => mark.lead === lead);
  const [many, to, loose] = [led('many'), led('to'), led('none')];
  if (many.length > 0) return many;
  const [next, ...more] = to.filter(behind);
  // "in lb and oz"
  if (next)
    return [
      next,
      ...more,
      ...loose.filter(({ from, unit: own }) => from > next.from && own.dimension === next.unit.dimension),
    ];
  if (to.length > 0) return to;
  const last = loose.filter(behind);
  return last.length > 0 ? last : loose;
}

const counterparts: Readonly<Record<string, string>> = {
  g: 'oz',
  kg: 'lb',
  oz: 'g',
  lb: 'g',
  stone: 'kg',
  cm: 'in',
  mm: 'in',
  m: 'ft',
  in: 'cm',
  ft: 'cm',
  mL: 'floz',
  L: 'floz',
  '°C': '°F',
  '°F': '°C',
};

/** "100 F in proper degrees": the system that is not the one it is written in. */
const usualHere =
  /\b(?:in|to|into) (?:(?:the|our|my) )?(?:proper|real|normal|usual|metric|american|us|european|english|imperial|sensible|modern|old|other) (?:degrees?|units?|measures?|weights?|scale|system|ones?)\b/;

/** The unit that is meant where none is named: "what does a cup of oil weigh", "convert 180 F", "what is 120 F". */
export function impliedUnit({ words, tokens }: Facts, measure: Measure | undefined, forced: boolean): Unit | null {
  const own = measure?.unit;
  if (!own) return null;
  if (own.dimension === 'volume' && heavy.test(words)) return unit('g');
  if (own.dimension === 'mass' && roomy.test(words)) return unit('mL');
  if (usualHere.test(words)) return unit(counterparts[own.id] ?? own.id);
  const alone = own.dimension === 'temperature' && /^\W*(whats|what (is|s))\b/.test(words) && tokens.length <= 6;
  if (!forced && !alone && !verb.test(words)) return null;
  if (own.dimension === 'volume' && own.system) return unit('mL');
  const other = counterparts[own.id];
  return other ? unit(other) : null;
}

/** "3/4 cup shea in grams?": what is turned into which unit, and of what. */
import { absoluteZero, type Unit, unit, units } from '../units/units.ts';
import type { Facts, Measure, Thing, UnitMark } from './question-facts.ts';

export interface ConvertQuestion {
  readonly kind: 'convert';
  readonly measures: readonly Measure[];
  /** Null where nobody said into what. */
  readonly to: Unit | null;
  /** A second unit asked for beside it ("in lb and oz"). */
  readonly also: Unit | null;
  readonly of: Thing | null;
  /** "UK", "metric" and the like were said, so that other measures of the name need not be told. */
  readonly systemSaid: boolean;
  /** The percentage in "50 % in grams". */
  readonly share: Measure | null;
}

const sized: ReadonlySet<string> = new Set(['mass', 'volume', 'temperature', 'length', 'time', 'bare']);

const verb = /\b(convert|conversion|change|turn|translate|equivalent|equals?|same as|make in|as in)\b/;
const alike = /\b(same|equal|equals|equivalent)\b/;
const heavy = /\b(weighs?|weight|heavy|mass)\b/;
const roomy = /\b(volume|space|room|how big|fill)\b/;

export function readConvert(facts: Facts, forced: boolean): ConvertQuestion | null {
  const { words, roles, things } = facts;
  if (
    !forced &&
    roles.some(({ meaning }) => /^(superfat|concentration|ratio|ratio-lye-water|scale-to)$/.test(meaning.id))
  )
    return null;
  const found = source(facts);
  const share = facts.measures.find(({ dim }) => dim === 'percent') ?? null;
  if (!found)
    return forced
      ? {
          kind: 'convert',
          measures: [],
          to: facts.units[0]?.unit ?? null,
          also: null,
          of: null,
          systemSaid: false,
          share,
        }
      : null;
  const { measures, marks } = found;
  const [first] = measures;
  const own = new Set(things.map(({ from }) => from));
  // the mate of a comparison, and the strength in "of 5 % vinegar", are no further figures
  const others = facts.measures.filter(
    ({ from, to, dim }) =>
      !measures.some((one) => one.from === from) &&
      !marks.some((mark) => mark.from === from) &&
      !(first?.text === 'absolute zero' && dim === 'bare') &&
      !(dim === 'percent' && own.has(to)),
  );
  if (!forced && (others.length > 0 || new Set(measures.map(({ dim }) => dim)).size > 1)) return null;
  const wanted = wantedOf(marks, measures);
  const bareTemperature =
    first?.dim === 'temperature' && /^\W*(whats|what (is|s))\b/.test(words) && facts.tokens.length <= 6;
  const to = wanted[0]?.unit ?? implied(words, first, forced || verb.test(words) || bareTemperature);
  if (!to && !forced && !(verb.test(words) && marks.length === 0 && first?.unit)) return null;
  const of = substance(facts, measures);
  // "how many grams of lye for 500 g olive": the lye is asked, the oil is weighed
  const asked = things.find((thing) => thing.asked && thing !== of);
  if (!forced && asked && (of || /^(alkali|stock|acid|water)$/.test(asked.meaning.kind))) return null;
  if (!forced && of?.asked && of.meaning.kind === 'alkali' && !wanted.length) return null;
  const alkalis = new Set(things.flatMap(({ meaning }) => (meaning.kind === 'alkali' ? [meaning.id] : [])));
  if (!forced && measures.length > 1 && wanted[0]?.lead === 'none') return null;
  const eaten = alkalis.size > 0 && things.some(({ meaning }) => meaning.kind === 'acid');
  if (!forced && (measures.length > 3 || alkalis.size > 1 || eaten)) return null;
  const { system, rest } = systemOf(words, [...measures.map(({ text }) => text), ...wanted.map(({ text }) => text)]);
  const local = (own: Unit, text: string): Unit => (named(text) || !system ? own : inSystem(own, system, rest));
  const letter = (own: Unit): Unit => (own.id === 'cup' && first?.dim === 'temperature' ? unit('°C') : own);
  return {
    kind: 'convert',
    measures: measures.map((one) => (one.unit ? { ...one, unit: local(one.unit, one.text) } : one)),
    to: to && wanted[0] ? letter(local(to, wanted[0].text)) : to,
    also: wanted[1] && wanted[1].unit.id !== to?.id ? local(wanted[1].unit, wanted[1].text) : null,
    of,
    systemSaid: system !== null || [...measures, ...wanted].some(({ text }) => named(text)),
    share,
  };
}

const oneOf = ({ unit: own, text, from, to }: UnitMark, value = 1): Measure => ({
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
function source(facts: Facts): { readonly measures: readonly Measure[]; readonly marks: readonly UnitMark[] } | null {
  const { units: marks, words } = facts;
  if (/\babsolute zero\b/.test(words) && facts.measures.every(({ dim, value }) => dim === 'bare' && value === 0)) {
    const at = { unit: unit('°C'), lead: 'none' as const, text: 'absolute zero', from: 0, to: 0 };
    return { measures: [oneOf(at, absoluteZero)], marks };
  }
  const measures = facts.measures.filter(
    ({ dim, unit: own }) => sized.has(dim) && !(dim === 'bare' && own === null && facts.measures.length > 1),
  );
  const [bare] = measures;
  const [leading, target] = marks;
  // "oz to g: 7.5", "grams to ounces 500"
  if (
    bare &&
    bare.unit === null &&
    measures.length === 1 &&
    leading &&
    target?.lead === 'to' &&
    leading.lead === 'none'
  )
    return { measures: [{ ...bare, dim: leading.unit.dimension, unit: leading.unit }], marks: [target] };
  // "is 16 oz the same as 454 g?"
  const [, mate] = measures;
  if (
    bare?.unit &&
    mate?.unit &&
    measures.length === 2 &&
    marks.length === 0 &&
    alike.test(words) &&
    bare.dim === mate.dim
  )
    return {
      measures: [bare],
      marks: [{ unit: mate.unit, lead: 'to', text: mate.text, from: mate.from, to: mate.to }],
    };
  if (measures.length > 0) return { measures, marks };
  const [first, second] = marks;
  if (!first || facts.measures.length > 0) return null;
  if (!second) return heavy.test(words) || roomy.test(words) ? { measures: [oneOf(first)], marks: [] } : null;
  // "grams in a pound", "oz per lb": the second is the one; "kilo of coconut oil in litres": the first
  const smaller = first.unit.factor < second.unit.factor && /^(g|oz|mL|tsp|tbsp|cm|mm|in|floz)/.test(first.unit.id);
  const from =
    marks.find(({ lead }) => lead === 'one') ??
    (first.lead === 'many'
      ? second
      : first.lead === 'to'
        ? second
        : second.lead === 'many'
          ? first
          : smaller
            ? second
            : first);
  return { measures: [oneOf(from)], marks: marks.filter((mark) => mark !== from) };
}

/** Units asked for, surest first. */
function wantedOf(marks: readonly UnitMark[], measures: readonly Measure[]): readonly UnitMark[] {
  const many = marks.filter(({ lead }) => lead === 'many');
  if (many.length > 0) return many;
  const led = marks.filter(({ lead }) => lead === 'to');
  const behind = (mark: UnitMark): boolean => measures.every((one) => one.from < mark.from);
  const led2 = led.filter(behind);
  if (led2.length > 0)
    return led2.concat(marks.filter((mark) => mark.lead === 'none' && mark.from > (led2[0]?.from ?? 0)));
  if (led.length > 0) return led;
  const loose = marks.filter(({ lead }) => lead === 'none');
  const last = loose.filter(behind);
  return last.length > 0 ? last : loose;
}

const bySystem: Readonly<Record<string, string>> = {
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
};

/** The unit that is meant where none is named: "what does a cup of oil weigh", "180 F in the other". */
function implied(words: string, measure: Measure | undefined, converts: boolean): Unit | null {
  const own = measure?.unit;
  if (!own) return null;
  if (own.dimension === 'volume' && heavy.test(words)) return unit('g');
  if (own.dimension === 'mass' && roomy.test(words)) return unit('mL');
  if (!converts) return null;
  if (own.dimension === 'temperature') return unit(own.id === '°C' ? '°F' : '°C');
  if (own.dimension === 'volume' && own.system) return unit('mL');
  const other = bySystem[own.id];
  return other ? unit(other) : null;
}

/** The thing nearest to the figure, or the only one. */
function substance({ things, tokens, words }: Facts, measures: readonly Measure[]): Thing | null {
  const [measure] = measures;
  if (!measure) return null;
  let best: { readonly thing: Thing; readonly far: number } | null = null;
  for (const thing of things) {
    const behind = thing.from >= measure.to;
    const far = behind ? thing.from - measure.to : measure.from - thing.to + 1;
    if (thing.meaning.kind === 'unknown') {
      const between = tokens.slice(measure.to, thing.from);
      const close = between.every(
        (token) => token.t === 'word' && /^(of|the|my|some|melted|solid|good)$/.test(token.text),
      );
      if (!behind || !close || /^(please|plz|pls|thx|thanks|ta|then|convert)$/.test(thing.text)) continue;
    }
    if (!best || far < best.far) best = { thing, far };
  }
  if (best) return best.thing;
  // "1 cup of grated soap": a word of the recipe's own talk
  const role = /\bof (?:grated |melted |cured )?(soap|batter)\b/.exec(words);
  const text = role?.[1];
  return text
    ? { meaning: { kind: 'unknown', id: text }, text, how: 'name', from: measure.to, to: measure.to, asked: false }
    : null;
}

type System = 'us' | 'imperial' | 'metric' | 'australian';

const systems: readonly (readonly [System, RegExp])[] = [
  ['imperial', /\b(imperial|imp|uk|british|britain|england|english|gb)\b/],
  ['australian', /\b(australian?|aussie|oz measures)\b/],
  ['metric', /\b(metric|canad\w+|nz|new zealand)\b/],
  ['us', /\b(usa|american|america)\b|\bus (measures?|customary|units?|cups?|pints?|gallons?|quarts?|spoons?)\b|\(us\)/],
];
const named = (text: string): boolean =>
  systems.some(([, said]) => said.test(text.toLowerCase())) || /\bus\b/i.test(text);

/** A system that is named apart from its unit: "1 pint (UK) in ml", "I'm in Australia". */
function systemOf(words: string, own: readonly string[]): { readonly system: System | null; readonly rest: string } {
  const rest = own.reduce((text, part) => (named(part) ? text.replace(part.toLowerCase(), ' ') : text), words);
  const said = systems.filter(([, pattern]) => pattern.test(rest)).map(([system]) => system);
  return { system: said.length === 1 ? (said[0] ?? null) : null, rest };
}

const known = new Map(units.map((one) => [one.id, one]));

function inSystem(own: Unit, system: System, _rest: string): Unit {
  if (own.system !== 'us') return own;
  const spoon = own.id === 'tbsp' || own.id === 'tsp';
  const tails: Readonly<Record<System, readonly string[]>> = {
    us: [],
    imperial: spoon ? ['metric'] : ['imperial'],
    metric: ['metric'],
    australian: ['australian', 'metric', 'imperial'],
  };
  for (const tail of tails[system]) {
    const found = known.get(`${own.id}-${tail}`);
    if (found) return found;
  }
  return own;
}

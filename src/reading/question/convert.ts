/** "3/4 cup shea in grams?": what is turned into which unit, and of what. */
import { type Unit, unit } from '../../units/units.ts';
import type { Facts, Measure, Thing } from './facts.ts';
import { asksToConvert, impliedUnit, type Source, sourceOf, wantedOf } from './source.ts';
import { inSystem, saysSystem, systemApart } from './system.ts';

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
  /** "heaped", "rounded", "scant": a spoon or cup that is not level. */
  readonly heaped: boolean;
  /** The percentage in "50 % in grams". */
  readonly share: Measure | null;
}

/** Figures of one question; more are a list, for which a recipe's commands are better. */
const mostMeasures = 3;

export function readConvert(facts: Facts, forced: boolean): ConvertQuestion | null {
  const source = sourceOf(facts) ?? (forced ? { measures: [], marks: facts.units } : null);
  if (!source || (!forced && belongsElsewhere(facts, source))) return null;
  const { measures } = source;
  const [first] = measures;
  const wanted = wantedOf(source);
  const [target, second] = wanted;
  const to = target?.unit ?? impliedUnit(facts, first, forced);
  const opens = asksToConvert(facts.words) && source.marks.length === 0 && first?.unit;
  if (!forced && ((!to && !opens) || (measures.length > 1 && target?.lead === 'none'))) return null;
  const of = substance(facts, first);
  if (!forced && isAskedOtherwise(facts, of, wanted.length > 0)) return null;
  const texts = [...measures, ...wanted].map(({ text }) => text);
  const system = systemApart(facts.words, texts);
  const local = (own: Unit, text: string): Unit => (system && !saysSystem(text) ? inSystem(own, system) : own);
  // a lone "c" is a cup or a degree
  const letter = target?.text.toLowerCase() === 'c' && first?.dim === 'bare';
  const meant = (own: Unit): Unit =>
    own.id.startsWith('cup') && (first?.dim === 'temperature' || letter) ? unit('°C') : own;
  return {
    kind: 'convert',
    measures: measures.map((one) => (one.unit ? { ...one, unit: local(one.unit, one.text) } : one)),
    to: to && target ? meant(local(to, target.text)) : to,
    also: second && second.unit.id !== to?.id ? local(second.unit, second.text) : null,
    of,
    heaped: /\b(heap(ed|ing)?|rounded|scant|generous)\b/.test(facts.words),
    systemSaid: system !== null || texts.some(saysSystem),
    share: facts.measures.find(({ dim }) => dim === 'percent') ?? null,
  };
}

/** Figures or words that make it the question of a recipe, a solution or an acid. */
function belongsElsewhere({ measures: all, roles, things }: Facts, { measures, marks }: Source): boolean {
  if (roles.some(({ meaning }) => /^(superfat|concentration|ratio|ratio-lye-water|scale-to)$/.test(meaning.id)))
    return true;
  const starts = new Set(things.map(({ from }) => from));
  const used = new Set([...measures, ...marks].map(({ from }) => from));
  // the strength in "of 5 % vinegar" and the nought of "absolute zero" are no further figures
  const others = all.filter(
    ({ from, to, dim, value }) =>
      !used.has(from) && !(dim === 'percent' && starts.has(to)) && !(dim === 'bare' && value === 0),
  );
  const kinds = new Set(measures.map(({ dim }) => dim));
  const alkalis = new Set(things.flatMap(({ meaning }) => (meaning.kind === 'alkali' ? [meaning.id] : [])));
  const eaten = alkalis.size > 0 && things.some(({ meaning }) => meaning.kind === 'acid');
  return others.length > 0 || kinds.size > 1 || measures.length > mostMeasures || alkalis.size > 1 || eaten;
}

/** "how many grams of lye for 500 g olive": the lye is asked, the oil is weighed. */
function isAskedOtherwise({ things }: Facts, of: Thing | null, hasTarget: boolean): boolean {
  const asked = things.find((thing) => thing.asked && thing !== of);
  if (asked && (of || /^(alkali|stock|acid|water)$/.test(asked.meaning.kind))) return true;
  return of?.asked === true && of.meaning.kind === 'alkali' && !hasTarget;
}

const politeness = /^(please|plz|pls|thx|thanks|ta|then|convert)$/;
const between = /^(of|the|my|some|melted|solid|good)$/;

/** The thing nearest to the figure. A name that is not known counts only right behind it. */
function substance({ things, tokens, words }: Facts, measure: Measure | undefined): Thing | null {
  if (!measure) return null;
  const { from, to } = measure;
  const close = (thing: Thing): boolean =>
    thing.from >= to &&
    !politeness.test(thing.text) &&
    tokens.slice(to, thing.from).every((token) => token.t === 'word' && between.test(token.text));
  const far = (thing: Thing): number => (thing.from >= to ? thing.from - to : from - thing.to + 1);
  const [nearest] = things
    .filter((thing) => thing.meaning.kind !== 'unknown' || close(thing))
    .sort((a, b) => far(a) - far(b));
  if (nearest) return nearest;
  // "1 cup of grated soap": a word of the recipe's own talk
  const text = /\bof (?:grated |melted |cured )?(soap|batter)\b/.exec(words)?.[1];
  return text ? { meaning: { kind: 'unknown', id: text }, text, how: 'name', from: to, to, asked: false } : null;
}

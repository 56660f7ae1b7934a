import type { ConvertQuestion } from '../reading/question/convert.ts';
import type { Measure, Thing } from '../reading/question/facts.ts';
import { number, type Style } from '../units/print.ts';
import { absoluteZero, toCelsius, convert as turned, type Unit, unit } from '../units/units.ts';
import { beforeMixing } from './cautions.ts';
import { cannotConvert, noDensity, type Problem } from './convert-refusals.ts';
import { type Context, defineCommand, type Said } from './define.ts';
import { type Density, densityOf } from './density.ts';
import { answering, elsewhere } from './everyday.ts';
import { conversionStep, densitySteps } from './everyday-working.ts';
import { figureResult, inUnit, span, symbolOf } from './figures.ts';

type Outcome = Said<'plain'> | ReturnType<typeof cannotConvert>;

export const convert = defineCommand({
  id: 'convert',
  summary: 'Weights, cups, temperatures, lengths: one in another.',
  risk: 'plain',
  options: {},
  examples: [
    { say: 'convert 3/4 cup shea in grams', about: 'a volume of a fat, by weight' },
    { say: 'convert 1 lb 4 oz to g', about: 'weights' },
    { say: 'convert 500 ml to cups', about: 'which cup is said, and the other' },
    { say: 'convert 110 F to C', about: 'temperatures' },
  ],
  instead: elsewhere('convert'),
  run: answering('convert', answered, (context) => cannotConvert({ is: 'nothing' }, context)),
});

function answered(question: ConvertQuestion, context: Context, text: string): Outcome {
  const { measures } = question;
  const [first] = measures;
  if (!first)
    return cannotConvert(question.share ? { is: 'share', measure: question.share } : { is: 'nothing' }, context);
  if (measures.length === 1) return one(first, question, text, context);
  const all = measures.map((measure) => one(measure, { ...question, of: null }, text, context));
  const wrong = all.find((outcome) => !('lead' in outcome));
  if (wrong) return wrong;
  const leads = all.flatMap((outcome) => ('lead' in outcome ? [outcome.lead] : []));
  const values = all.flatMap((outcome) => ('lead' in outcome ? [outcome.result] : []));
  return said({
    lead: leads.join(' '),
    caution: cautionFor(question.of),
    details: [],
    assumptions: [],
    result: { ...values[0], values },
  });
}

function one(measure: Measure, question: ConvertQuestion, text: string, context: Context): Outcome {
  const { style, catalogue } = context;
  const { to } = question;
  const own = measure.unit ?? (to?.dimension === 'temperature' ? unit(to.id === '°F' ? '°C' : '°F') : null);
  const problem = problemOf(measure, own, question);
  if (problem) return cannotConvert(problem, context, text);
  if (!own || !to) return cannotConvert({ is: 'nothing' }, context);
  const from = { ...measure, unit: own };
  const assumptions = assumptionsOf(measure, own, question);
  if (own.dimension === to.dimension) return plain(from, own, to, question, assumptions, style);
  const { of } = question;
  const density = of ? densityOf(of, catalogue) : null;
  if (!of || !density) return noDensity({ measure: from, own, to, of, text }, context);
  return byDensity(from, own, to, density, question, assumptions, context);
}

/** More than this of anything is a slip: a thousand million of the largest units. */
const most = 1e12;
const weighed: ReadonlySet<string> = new Set(['mass', 'volume']);

function problemOf(measure: Measure, own: Unit | null, { to }: ConvertQuestion): Problem | null {
  const { value, upTo } = measure;
  if (!Number.isFinite(value) || Math.abs(value) > most) return { is: 'too-big', measure };
  if (own === null) return { is: 'no-unit', measure, to };
  if (own.dimension === 'temperature' && toCelsius(value, own.id) < absoluteZero - 1e-9)
    return { is: 'too-cold', measure, own };
  if (own.dimension !== 'temperature' && value < 0) return { is: 'negative', measure };
  if (to === null) return { is: 'no-target', measure, own };
  if (own.dimension !== to.dimension && !(weighed.has(own.dimension) && weighed.has(to.dimension)))
    return { is: 'other-kind', own, to };
  return upTo !== null && own.dimension === to.dimension ? { is: 'range', measure, own, to } : null;
}

const kitchen: ReadonlySet<string> = new Set(['cup', 'tbsp', 'tsp', 'pint', 'quart', 'gallon', 'lb', 'oz', 'in']);
const fractions: readonly (readonly [number, string])[] = [
  [1 / 4, '1/4'],
  [1 / 3, '1/3'],
  [1 / 2, '1/2'],
  [2 / 3, '2/3'],
  [3 / 4, '3/4'],
];

/** The measure as a person reads it: a cook's fractions stay, compounds ("1 lb 4 oz") stand as they were said. */
function shown({ value, text }: Measure, own: Unit, style: Style): string {
  if (/\d\s*\p{L}+\W+(and )?\d/u.test(text)) return text;
  const whole = Math.floor(value);
  const part = kitchen.has(own.id.replace(/-.*/, ''))
    ? fractions.find(([size]) => Math.abs(value - whole - size) < 1e-9)?.[1]
    : undefined;
  const figure = part ? `${whole > 0 ? `${whole} ` : ''}${part}` : number(value, 4, style);
  return `${figure} ${symbolOf(own, value > 1 ? 2 : 1)}`;
}

function plain(
  measure: Measure,
  own: Unit,
  to: Unit,
  question: ConvertQuestion,
  assumptions: readonly string[],
  style: Style,
): Said<'plain'> {
  const value = turned(measure.value, own, to);
  const also =
    question.also?.dimension === own.dimension
      ? `, or ${inUnit(turned(measure.value, own, question.also), question.also, style)}`
      : '';
  const others = otherMeasures(own, to, question, (from, into) =>
    inUnit(turned(measure.value, from, into), into, style),
  );
  return said({
    lead: `${shown(measure, own, style)} is ${inUnit(value, to, style)}${also}${others.into}${others.from}.`,
    details: [],
    assumptions,
    caution: cautionFor(question.of),
    result: figureResult(value, to.id),
    working: () => [conversionStep(measure.value, own, value, to, style)],
  });
}

function byDensity(
  measure: Measure,
  own: Unit,
  to: Unit,
  density: Density,
  question: ConvertQuestion,
  assumptions: readonly string[],
  { style }: Context,
): Said<'plain'> {
  const toMass = to.dimension === 'mass';
  const at = (grams: number, from: Unit, into: Unit): number =>
    (measure.value * from.factor * (toMass ? grams : 1 / grams)) / into.factor;
  const value = at(density.nominal, own, to);
  const ends = [at(density.low, own, to), at(density.high, own, to)].sort((a, b) => a - b);
  const [low = value, high = value] = ends;
  const range = span(low, high, style);
  const [least, greatest] = range.split(' to ');
  const spread = least === greatest || density.spread === '' ? '' : ` (${range} ${density.spread})`;
  const volume = measure.value * own.factor;
  const millilitres =
    toMass && own.id !== 'mL' && own.id !== 'L'
      ? ` (${inUnit(volume >= 1000 ? volume / 1000 : volume, unit(volume >= 1000 ? 'L' : 'mL'), style, 3)})`
      : '';
  const others = otherMeasures(own, to, question, (from, into) =>
    inUnit(at(density.nominal, from, into), into, style, 3),
  );
  return said({
    lead: `About ${inUnit(value, to, style, 3)}${spread}${others.into}: ${shown(measure, own, style)}${millilitres} of ${density.what}${others.from}.`,
    details: [{ kind: 'text', text: `Density ${span(density.low, density.high, style, 4)} g/mL: ${density.source}.` }],
    assumptions: [...assumptions, ...(density.note ? [density.note] : []), ...ounceNote(own, to)],
    caution: cautionFor(question.of),
    result: figureResult(value, to.id),
    working: () => densitySteps(measure.value, own, value, to, density, style),
  });
}

const ounceNote = (own: Unit, to: Unit): readonly string[] =>
  own.id === 'oz' || to.id === 'oz' ? ['I took ounces as weight; for volume say "fl oz".'] : [];

interface Others {
  /** "; with metric cups (250 mL): 171 g", of what is converted. */
  readonly from: string;
  /** ", or 2 metric cups (250 mL)", of what it is converted into. */
  readonly into: string;
}

/** The other measures that go by the same name, where they differ. */
function otherMeasures(
  own: Unit,
  to: Unit,
  { systemSaid, measures }: ConvertQuestion,
  print: (from: Unit, into: Unit) => string,
): Others {
  const none = { from: '', into: '' };
  if (systemSaid || measures.length > 1 || own.dimension === 'temperature') return none;
  const source = twin[own.id];
  const target = twin[to.id];
  if (source && !(to.dimension === own.dimension && sameSystem(own, to)))
    return { ...none, from: `; with ${source.name}: ${print(unit(source.id), to)}` };
  return target && !source ? { ...none, into: `, or ${print(own, unit(target.id))}${target.size}` } : none;
}

/** "tablespoons in a cup" is the same in any one system. */
const sameSystem = (own: Unit, to: Unit): boolean => own.system === to.system;

interface Twin {
  readonly id: string;
  readonly name: string;
  readonly size: string;
}
const twin: Readonly<Record<string, Twin>> = {
  cup: { id: 'cup-metric', name: 'metric cups (250 mL)', size: ' (250 mL)' },
  tbsp: { id: 'tbsp-australian', name: 'Australian spoons (20 mL)', size: ' (20 mL)' },
  floz: { id: 'floz-imperial', name: 'imperial measure', size: '' },
  pint: { id: 'pint-imperial', name: 'imperial measure', size: '' },
  quart: { id: 'quart-imperial', name: 'imperial measure', size: '' },
  gallon: { id: 'gallon-imperial', name: 'imperial measure', size: '' },
};

function assumptionsOf(measure: Measure, own: Unit, { of, heaped }: ConvertQuestion): readonly string[] {
  const out: string[] = [];
  if (heaped) out.push('I took it as level.');
  if (measure.unit === null) out.push(`I took ${measure.text} as ${own.symbol}.`);
  if (measure.other !== null) out.push(`I took "${measure.text}" as ${number(measure.value, 4)} ${own.symbol}.`);
  if (of && (of.how === 'spelling' || of.how === 'decorated')) out.push(`I read "${of.text}" as this.`);
  return out;
}

const cautionFor = (of: Thing | null): readonly string[] =>
  of && (of.meaning.kind === 'alkali' || of.meaning.kind === 'stock') ? beforeMixing : [];

const said = (
  parts: Pick<Said<'plain'>, 'lead' | 'details' | 'assumptions' | 'caution' | 'result' | 'working'>,
): Said<'plain'> => ({
  title: 'Conversion',
  body: [],
  warnings: [],
  actions: [],
  ...parts,
});

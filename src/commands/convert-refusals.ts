/** What `convert` asks back or refuses, each with what would settle it. */
import type { Catalogue } from '../catalogue/types.ts';
import type { Measure, Thing } from '../reading/question/facts.ts';
import { vagueMeasure } from '../reading/question/source.ts';
import { number, type Style } from '../units/print.ts';
import { convert, type Dimension, type Unit, unit } from '../units/units.ts';
import { untilClear } from './cautions.ts';
import type { Context, Refusal, Taken } from './define.ts';
import { questionOf } from './everyday.ts';
import { inUnit, span } from './figures.ts';
import { alkaliName, capital, inSentence, listed, nameOf } from './phrases.ts';

export type Problem =
  | { readonly is: 'nothing' }
  | { readonly is: 'share' | 'too-big' | 'negative'; readonly measure: Measure }
  | { readonly is: 'no-unit'; readonly measure: Measure; readonly to: Unit | null }
  | { readonly is: 'no-target' | 'too-cold'; readonly measure: Measure; readonly own: Unit }
  | { readonly is: 'range'; readonly measure: Measure; readonly own: Unit; readonly to: Unit }
  | { readonly is: 'other-kind'; readonly own: Unit; readonly to: Unit };

type Words = Pick<Refusal<'plain'>, 'code' | 'message' | 'hint'> &
  Partial<Pick<Refusal<'plain'>, 'candidates' | 'caution' | 'complete'>>;

const refusal = ({ code, message, hint, candidates = [], caution = [], complete }: Words): Refusal<'plain'> => ({
  code,
  message,
  hint,
  candidates,
  caution,
  ...(complete ? { complete } : {}),
});

const measures: Readonly<Record<Dimension, string>> = {
  mass: 'a weight',
  volume: 'a volume',
  length: 'a length',
  time: 'a time',
  temperature: 'a temperature',
};
const plainNames: Readonly<Record<string, string>> = {
  g: 'grams',
  kg: 'kilograms',
  oz: 'ounces',
  lb: 'pounds',
  m: 'metres',
  cm: 'centimetres',
  mL: 'millilitres',
  L: 'litres',
  in: 'inches',
  ft: 'feet',
  '°C': 'degrees Celsius',
  '°F': 'degrees Fahrenheit',
  cup: 'cups',
  tbsp: 'tablespoons',
  tsp: 'teaspoons',
};
const called = ({ id, symbol }: Unit): string => plainNames[id] ?? symbol;

/** The request with a unit word put behind its figure. */
const withUnit =
  (text: string, measure: Measure) =>
  (answer: string): Taken | null =>
    /^[\p{L}°. ]{1,20}$/u.test(answer.trim()) && text.includes(measure.text)
      ? { text: text.replace(measure.text, `${measure.text} ${answer.trim()}`), options: {} }
      : null;

export function cannotConvert(problem: Problem, { style }: Context, text = ''): Refusal<'plain'> {
  switch (problem.is) {
    case 'nothing':
      return refusal({
        code: 'unclear',
        message: 'What shall I convert, and into what?',
        hint: 'For example: 3/4 cup shea in grams; 12 oz in g; 110 F in C.',
      });
    case 'share':
      return refusal({
        code: 'unclear',
        message: `${problem.measure.text} of what weight?`,
        hint: 'For example: 5 % of 800 g.',
      });
    case 'too-big':
      return refusal({
        code: 'impossible',
        message: 'That is no figure I can reckon with.',
        hint: 'Check the digits and the unit.',
      });
    case 'negative':
      return refusal({
        code: 'impossible',
        message: `${problem.measure.text}: an amount can’t be below nothing.`,
        hint: 'Write it without the minus.',
      });
    case 'too-cold':
      return refusal({
        code: 'impossible',
        message: `${problem.measure.text} can’t be: nothing is colder than −273.15 °C (−459.67 °F), absolute zero.`,
        hint: 'Check the sign and the unit.',
      });
    case 'other-kind':
      return refusal({
        code: 'impossible',
        message: capital(
          `${called(problem.own)} can’t become ${called(problem.to)}: one is ${measures[problem.own.dimension]}, the other ${measures[problem.to.dimension]}.`,
        ),
        hint: 'Ask for a unit of the same kind; a volume becomes a weight where you name what it is of.',
      });
    case 'no-unit': {
      const vague = vagueMeasure.exec(text.toLowerCase())?.[0];
      if (vague)
        return refusal({
          code: 'unclear',
          message: `How much is "${vague}"? That is no fixed measure.`,
          hint: 'Weigh it, or tell me the grams or millilitres that your pack or spoon says.',
        });
      return refusal({
        code: 'unclear',
        message: `${problem.measure.text} of which unit?`,
        hint: 'Answer for example "grams" or "ounces".',
        candidates: problem.to?.dimension === 'volume' ? ['ml', 'cups'] : ['grams', 'ounces'],
        complete: withUnit(text, problem.measure),
      });
    }
    case 'no-target':
      return refusal({
        code: 'unclear',
        message: `${problem.measure.text} in which unit?`,
        hint: 'Answer for example "grams" or "cups".',
        complete: (answer) =>
          /^(in|to|into)?\s*[\p{L}°. ]{1,20}$/u.test(answer.trim())
            ? { text: `${text} in ${answer.trim().replace(/^(in|to|into)\s+/, '')}`, options: {} }
            : null,
      });
    case 'range': {
      const { measure, own, to } = problem;
      const at = (value: number): string => inUnit(convert(value, own, to), to, style);
      return refusal({
        code: 'unclear',
        message: `Which end of ${measure.text}? ${number(measure.value, 3, style)} ${own.symbol} is ${at(measure.value)}, ${number(measure.upTo ?? 0, 3, style)} ${own.symbol} is ${at(measure.upTo ?? 0)}.`,
        hint: 'Ask again with one figure.',
      });
    }
  }
}

interface Missing {
  readonly measure: Measure & { readonly unit: Unit };
  readonly own: Unit;
  readonly to: Unit;
  readonly of: Thing | null;
  readonly text: string;
}

/** A weight for a volume, or the other way round, of something that has no density here. */
export function noDensity(missing: Missing, context: Context): Refusal<'plain'> {
  const { of, measure } = missing;
  const { catalogue, style } = context;
  const say = measure.text;
  if (!of) return ofWhat(missing, context);
  const { meaning, text } = of;
  switch (meaning.kind) {
    case 'alkali':
    case 'stock': {
      const id = meaning.id === 'koh' ? 'koh' : 'naoh';
      const bulk = meaning.kind === 'alkali' ? catalogue.alkalis.get(id)?.bulkDensity : undefined;
      const ends = bulk ? [bulk.low, bulk.high].map((density) => amount(missing, density)) : [];
      const [a, b] = ends;
      return refusal({
        code: 'unclear',
        message:
          meaning.kind === 'stock'
            ? `How much does the lye solution weigh? Its weight by volume hangs on its strength.`
            : `Weigh it: ${say} of ${alkaliName[id]} can be off by a third.`,
        hint:
          a !== undefined && b !== undefined
            ? `It may be anything from ${span(Math.min(a, b), Math.max(a, b), style, 2)} ${missing.to.symbol}: too uncertain for soap.`
            : 'Put the jug on the scale, zero it, and pour.',
        caution: untilClear,
      });
    }
    case 'ambiguous': {
      const names = meaning.candidates.map((id) => nameOf(id, catalogue));
      return refusal({
        code: 'unclear',
        message: `Which "${text}"?`,
        hint: [
          candidatesSpan(meaning.candidates, missing, catalogue, style),
          `Answer with its name${names.length > 0 ? `, for example ${listed(names.slice(0, 3), 'or')}` : ''}.`,
        ]
          .filter(Boolean)
          .join(' '),
        candidates: names,
        complete: named(missing, context),
      });
    }
    default: {
      const oil = meaning.kind === 'unheld' || meaning.kind === 'fat';
      return refusal({
        code: 'unclear',
        message: `I hold no density for ${meaning.kind === 'unknown' ? `"${text}"` : meaning.kind === 'unheld' ? inSentence(meaning.id) : nameOf(meaning.id, catalogue)}.`,
        hint:
          meaning.kind === 'scent'
            ? `Essential oils weigh 0.85 to 1.05 g per mL: see the supplier’s data sheet, or weigh it.`
            : `${oil ? `Most oils weigh 0.91 to 0.93 g per mL: ${between(missing, 0.91, 0.93, style)}. ` : ''}Weigh it, or look for its density on the supplier’s data sheet.`,
      });
    }
  }
}

/** What the measure is in the unit asked for, at a density (g/mL). */
function amount({ measure, own, to }: Missing, density: number): number {
  const base = measure.value * own.factor;
  return (to.dimension === 'mass' ? base * density : base / density) / to.factor;
}

function between(missing: Missing, low: number, high: number, style: Style): string {
  const ends = [amount(missing, low), amount(missing, high)];
  return `${span(Math.min(...ends), Math.max(...ends), style, 3)} ${missing.to.symbol}`;
}

function candidatesSpan(ids: readonly string[], missing: Missing, { fats }: Catalogue, style: Style): string {
  const held = ids.flatMap((id) => fats.get(id)?.density ?? []);
  if (held.length < 2) return '';
  return `Any of them makes ${between(missing, Math.min(...held.map(({ low }) => low)), Math.max(...held.map(({ high }) => high)), style)}.`;
}

/** The request with the name that was asked for. */
const named =
  ({ text, of }: Missing, context: Context) =>
  (answer: string): Taken | null => {
    const whole = of ? text.replace(of.text, answer.trim()) : `${text} of ${answer.trim()}`;
    const question = questionOf(whole, 'convert', context);
    const thing = question?.kind === 'convert' ? question.of : null;
    return thing && !/^(unknown|ambiguous)$/.test(thing.meaning.kind) ? { text: whole, options: {} } : null;
  };

function ofWhat(missing: Missing, context: Context): Refusal<'plain'> {
  const { measure, own, to } = missing;
  const { style } = context;
  const ounce = own.id === 'oz' ? own : to.id === 'oz' ? to : null;
  const fluid = unit('floz');
  const volume = own.id === 'oz' ? to : own;
  const fluidly = ounce
    ? own.id === 'oz'
      ? inUnit(convert(measure.value, fluid, to), to, style)
      : inUnit(convert(measure.value, own, fluid), fluid, style)
    : '';
  return refusal({
    code: 'unclear',
    message: `${capital(measure.text)} of what? ${to.dimension === 'mass' ? 'The same volume of oil, honey and water differs in weight.' : 'The same weight of oil, honey and water differs in volume.'}`,
    hint: `Answer with its name, for example "olive oil".${ounce && volume.dimension === 'volume' ? ` If you mean fluid ounces: ${own.id === 'oz' ? `${number(measure.value, 3, style)} US fl oz is ${fluidly}` : fluidly}.` : ''}`,
    candidates: ['olive oil', 'coconut oil', 'water'],
    complete: named(missing, context),
  });
}

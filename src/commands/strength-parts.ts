/** What the answers about lye solutions are made of. */
import type { EngineFault } from '../engine/fault.ts';
import { dissolvingOf, ratioOf, WATER_LIMITS } from '../engine/water.ts';
import { baseOf, type Measure } from '../reading/question/facts.ts';
import type { StrengthQuestion } from '../reading/question/strength.ts';
import { number, type Style } from '../units/print.ts';
import { beforeMixing, untilClear } from './cautions.ts';
import type { Context, Refusal, Said } from './define.ts';
import { alkaliAssumption, alkaliOf, oneStep } from './everyday.ts';
import { answerUnit, figureResult, share, weight } from './figures.ts';
import { alkaliName } from './phrases.ts';
import { usualStrength } from './recipe.ts';
import { refused } from './refusals.ts';

/** Water at 20 °C, g/mL (CRC Handbook, from memory). */
const WATER_DENSITY = 0.9982;

export type Outcome = Said<'caustic'> | Refusal<'caustic'>;

export const example = 'For example: how much water for 140 g NaOH to make a 30 % solution?';

export const needs = (message: string, hint: string, candidates: readonly string[] = []): Refusal<'caustic'> => ({
  code: 'unclear',
  message,
  hint,
  candidates,
  caution: untilClear,
});

export const cannot = (message: string, hint: string): Refusal<'caustic'> => ({
  ...needs(message, hint),
  code: 'impossible',
});

/** Grams; of a volume as water. */
export const gramsIn = (measure: Measure): number => baseOf(measure) * (measure.dim === 'volume' ? WATER_DENSITY : 1);

/** How the answers to one question print and return their figures. */
export interface Sheet {
  readonly style: Style;
  /** Where nobody says. */
  readonly usualStrength: () => number;
  readonly question: StrengthQuestion;
  /** "sodium hydroxide (NaOH)". */
  readonly alkali: string;
  /** An amount beside the one asked for, in the unit that was weighed. */
  readonly beside: (grams: number) => string;
  /** The amount asked for: of water it may be wanted as a volume. */
  readonly main: (
    grams: number,
    water?: 'water',
  ) => { readonly text: string; readonly value: number; readonly of: string };
  readonly refuse: (fault: EngineFault) => Refusal<'caustic'>;
}

export function sheetFor(question: StrengthQuestion, context: Context): Sheet {
  const { style, catalogue } = context;
  const { alkali, solution, water, fats, to } = question;
  const own = answerUnit((alkali ?? solution ?? fats ?? water)?.unit);
  return {
    style,
    usualStrength: () => usualStrength(context.settings),
    question,
    alkali: alkaliName[alkaliOf(question.alkaliId)],
    beside: (grams) => weight(grams, own, style),
    main: (grams, isWater) => {
      const of = to?.dimension === 'mass' || (to?.dimension === 'volume' && isWater) ? to : own;
      const base = of.dimension === 'volume' ? grams / WATER_DENSITY : grams;
      return { text: weight(base, of, style), value: base / of.factor, of: of.id };
    },
    refuse: (fault) => refused(fault, catalogue),
  };
}

interface Found {
  readonly lead: string;
  readonly value: number;
  readonly of: string;
  /** The solution that comes out; null where nothing new is made. */
  readonly concentration: number | null;
  readonly name: string;
  readonly formula: string;
  /** The same in figures, without its result. */
  readonly sum: string;
  readonly assumptions?: readonly string[];
}

export function said({ style, question }: Sheet, found: Found): Said<'caustic'> {
  const { lead, value, of, concentration, name, formula, sum, assumptions = [] } = found;
  return {
    title: 'Lye solution',
    lead,
    body: concentration === null ? [] : remark(concentration, style).map((text) => ({ kind: 'text', text })),
    details: [],
    assumptions: [...assumptions, ...alkaliAssumption(question.alkaliId)],
    warnings: [],
    caution: beforeMixing,
    actions: [],
    result: figureResult(value, of),
    working: () => [
      oneStep({
        name,
        formula,
        value,
        unit: of,
        shown: `${sum} = ${number(value, 2, style)}${of === 'g/g' ? '' : ` ${of}`}`,
        source: 'Mass balance: the solution weighs what went into it.',
      }),
    ],
  };
}

/** What a beginner should know of a solution that is no usual one. */
function remark(concentration: number, style: Style): readonly string[] {
  switch (dissolvingOf(concentration)) {
    case 'will-not-dissolve':
      return [`Too strong: above about ${share(WATER_LIMITS.solubility, style)} not all of it dissolves.`];
    case 'below-floor':
      return ['Very strong: it hardly dissolves. Take at least as much water as alkali.'];
    case 'strong':
      return ['Strong: it gets very hot. Usual is 25 to 40 %.'];
    case 'weak':
      return ['Thin: the soap sets slowly. Usual is 25 to 40 %.'];
    case 'usual':
      return [];
  }
}

/** Refuses a strength that no solution has. */
export function badStrength(value: number, { style }: Sheet): Refusal<'caustic'> | null {
  const most = share(WATER_LIMITS.solubility, style);
  if (value <= 0)
    return cannot(
      'A solution without alkali in it can’t be.',
      `Usual is 25 to 40 % alkali; it dissolves up to about ${most}.`,
    );
  if (value <= WATER_LIMITS.solubility) return null;
  return cannot(
    value >= 1
      ? `A solution of ${share(value, style)} can’t be: at 100 % there is no water left.`
      : `A solution of ${share(value, style)} can’t be made: above about ${most} the alkali no longer dissolves.`,
    'Usual is 25 to 40 %; stock is 50 % at most.',
  );
}

export const partsOf = (concentration: number, { style }: Sheet): string =>
  `${number(ratioOf(concentration), 2, style)} g water to 1 g alkali`;

import type { Acid, AlkaliId, Catalogue } from '../catalogue/types.ts';
import { alkaliForAcid } from '../engine/dilution.ts';
import type { AcidQuestion, SaidPurity } from '../reading/question/alkali.ts';
import { baseOf, type Measure } from '../reading/question/facts.ts';
import { number, percent, type Style } from '../units/print.ts';
import { beforeMixing, caution } from './cautions.ts';
import { type Context, defineCommand, type Refusal } from './define.ts';
import {
  alkaliAssumption,
  alkaliOf,
  answering,
  type CausticOutcome,
  cannot,
  elsewhere,
  needs,
  oneStep,
} from './everyday.ts';
import { answerUnit, figureResult, gram, share, weight } from './figures.ts';
import { alkaliName, inSentence } from './phrases.ts';
import { refused } from './refusals.ts';

export const acid = defineCommand({
  id: 'acid',
  summary: 'Extra alkali for citric acid, vinegar and the like.',
  risk: 'caustic',
  options: {},
  examples: [
    { say: 'acid: how much extra NaOH for 21 g citric acid', about: 'what an acid eats, on top of the fats' },
    { say: 'acid: how much extra lye for 200 g of 5 % vinegar', about: 'an acid in water' },
  ],
  instead: elsewhere('acid'),
  run: answering('acid', answered, () => needs('Extra alkali for which acid?', example)),
});

const example = 'For example: how much extra NaOH for 21 g citric acid?';

/** Purity of the alkali: said, or the usual one, which is then told. */
export function purityFor(
  id: AlkaliId,
  said: SaidPurity,
  catalogue: Catalogue,
): { readonly value: number; readonly assumed: boolean } {
  if (said === 'pure') return { value: 1, assumed: false };
  if (said !== null) return { value: said.value, assumed: false };
  return { value: catalogue.alkalis.get(id)?.purity.usual ?? 1, assumed: true };
}

/** Purities that potassium hydroxide is sold at beside the usual one. */
const otherPurities = [0.85, 1] as const;

/** What was taken, and what the other usual purities of potassium hydroxide would make of the answer. */
export function purityLine(id: AlkaliId, value: number, style: Style, at: (purity: number) => string): string {
  if (value === 1) return `I took the ${alkaliName[id]} as pure.`;
  const [low, high] = otherPurities;
  return `I took the ${alkaliName[id]} as ${percent(value, style)} pure; at ${share(low, style)} it would be ${at(low)}, at ${share(high, style)} ${at(high)}: look at the label.`;
}

function badMeasure(measure: Measure | null): Refusal<'caustic'> | null {
  if (!measure) return null;
  if (measure.upTo !== null) return needs(`${measure.text}: which figure shall I take?`, 'Ask again with one figure.');
  if (measure.value < 0)
    return cannot(`${measure.text}: an amount can’t be below nothing.`, 'Write it without the minus.');
  return baseOf(measure) < 1e9
    ? null
    : cannot('That is no figure I can reckon with.', 'Check the digits and the unit.');
}

function answered(question: AcidQuestion, context: Context): CausticOutcome {
  const { catalogue } = context;
  const found = question.acid ? catalogue.acids.get(question.acid.meaning.id) : undefined;
  if (!found) return needs('Which acid?', example);
  const wrong = badMeasure(question.amount) ?? badMeasure(question.fats) ?? badMeasure(question.share);
  if (wrong) return wrong;
  if (question.share && (question.share.value <= 0 || question.share.value > 1))
    return cannot(`${question.share.text} of acid can’t be.`, 'Look at the label: vinegar holds about 5 % acid.');
  // "5 % vinegar" is its strength; "2 % of 1 kg oils" is a share of them
  const ofFats = question.fats !== null && question.amount === null;
  const own = question.share && !ofFats ? { ...found, strength: question.share.value } : found;
  return question.asks === 'acid' ? acidFor(question, own, context) : alkaliFor(question, own, ofFats, context);
}

/** Grams of an acid: weighed, by volume, or as a share of the fats. */
function gramsOf(question: AcidQuestion, acid: Acid, ofFats: boolean): number | null {
  const { amount, fats, share: part } = question;
  if (ofFats) return fats && part ? baseOf(fats) * part.value : null;
  if (!amount) return null;
  if (amount.dim !== 'volume') return baseOf(amount);
  const bulk = acid.bulkDensity;
  return bulk ? (baseOf(amount) * (bulk.low + bulk.high)) / 2 : null;
}

const named = (acid: Acid, said: Measure | null, style: Style): string => {
  const name = inSentence(acid.name.replace(/, \d+ %.*$/, ''));
  return said && acid.strength < 1 ? `${name} of ${share(acid.strength, style)}` : name;
};

function alkaliFor(question: AcidQuestion, acid: Acid, ofFats: boolean, context: Context): CausticOutcome {
  const { style, catalogue } = context;
  const { amount, alkaliId, to } = question;
  const id = alkaliOf(alkaliId);
  const grams = gramsOf(question, acid, ofFats);
  const name = named(acid, ofFats ? null : question.share, style);
  if (grams === null)
    return needs(
      amount ? `How much does ${amount.text} of ${name} weigh?` : `How much ${name}?`,
      'Answer with its weight, for example "20 g".',
    );
  const purity = purityFor(id, question.purity, catalogue);
  const found = alkaliForAcid(acid, grams, id, purity.value);
  if (!found.ok) return refused(found.fault, catalogue);
  const unit = answerUnit(amount?.unit);
  const into = to?.dimension === 'mass' ? to : unit;
  const byVolume = amount?.dim === 'volume';
  return {
    title: 'Alkali for an acid',
    lead: `Add ${weight(found.value, into, style, 'down')} ${alkaliName[id]} for ${weight(grams, unit, style)} ${name}, on top of what the fats need.`,
    body: acid.strength < 0.3 ? [{ kind: 'text', text: 'The rest of it counts as water.' }] : [],
    details: [],
    assumptions: [
      ...(byVolume ? [`I took ${amount.text} as ${weight(grams, gram, style)}: weighing is surer.`] : []),
      ...strengthTaken(question, acid, style),
      ...alkaliAssumption(alkaliId),
      ...(purity.assumed
        ? [
            purityLine(id, purity.value, style, (other) =>
              weight((found.value * purity.value) / other, into, style, 'down'),
            ),
          ]
        : []),
    ],
    warnings: [],
    caution: beforeMixing,
    actions: [],
    result: figureResult(found.value / into.factor, into.id),
    working: () => [
      oneStep({
        name: 'alkali for the acid',
        formula: 'weight × strength × acid groups × molar mass of the alkali ÷ molar mass of the acid ÷ purity',
        value: found.value / into.factor,
        unit: into.id,
        shown: `${number(grams, 2, style)} g × ${number(acid.strength, 3, style)} × ${acid.protons} × ${id === 'naoh' ? '39.997' : '56.105'} ÷ ${number(acid.molarMass, 3, style)} ÷ ${number(purity.value, 3, style)} = ${number(found.value, 2, style)} g`,
        source: `${catalogue.sources.get(acid.source)?.title ?? acid.source}, ${acid.locator}`,
      }),
    ],
  };
}

/** What was taken of the acid's own strength or kind. */
function strengthTaken({ acid: thing, share: said }: AcidQuestion, acid: Acid, style: Style): readonly string[] {
  if (acid.id === 'citric-acid' && thing?.how !== 'name')
    return ['I took the citric acid as anhydrous; the monohydrate takes 9 % less.'];
  if (acid.id === 'lactic-acid' && !said && thing?.how !== 'name')
    return ['I took the lactic acid as pure; bottles are mostly 80 or 88 %.'];
  if (acid.strength < 1 && !said)
    return [`I took the ${inSentence(acid.name.replace(/, \d+ %.*$/, ''))} as ${share(acid.strength, style)}.`];
  return [];
}

/** How much acid takes up so much alkali. */
function acidFor(question: AcidQuestion, acid: Acid, context: Context): CausticOutcome {
  const { style, catalogue } = context;
  const { amount, alkaliId, to } = question;
  const id = alkaliOf(alkaliId);
  const name = named(acid, question.share, style);
  if (!amount) return needs(`${name} for how much alkali?`, 'Answer with its weight, for example "10 g NaOH".');
  if (amount.dim === 'volume')
    return needs(`How much does ${amount.text} of alkali weigh?`, 'By volume it can be off by a third.');
  const purity = purityFor(id, question.purity, catalogue);
  const perGram = alkaliForAcid(acid, 1, id, purity.value);
  if (!perGram.ok) return refused(perGram.fault, catalogue);
  const grams = baseOf(amount) / perGram.value;
  const unit = answerUnit(amount.unit);
  const into = to?.dimension === 'mass' ? to : unit;
  return {
    title: 'Acid for an alkali',
    lead: `${weight(grams, into, style)} ${name} takes up ${weight(baseOf(amount), unit, style)} ${alkaliName[id]}.`,
    body: [{ kind: 'text', text: caution('no-vinegar-on-skin').short }],
    details: [],
    assumptions: [
      ...strengthTaken(question, acid, style),
      ...alkaliAssumption(alkaliId),
      ...(purity.assumed
        ? [purityLine(id, purity.value, style, (other) => weight((grams / purity.value) * other, into, style))]
        : []),
    ],
    warnings: [],
    caution: beforeMixing,
    actions: [],
    result: figureResult(grams / into.factor, into.id),
    working: () => [
      oneStep({
        name: 'acid for the alkali',
        formula: 'alkali × purity × molar mass of the acid ÷ (acid groups × molar mass of the alkali × strength)',
        value: grams / into.factor,
        unit: into.id,
        shown: `${number(baseOf(amount), 2, style)} g ÷ ${number(perGram.value, 4, style)} = ${number(grams, 2, style)} g`,
        source: `${catalogue.sources.get(acid.source)?.title ?? acid.source}, ${acid.locator}`,
      }),
    ],
  };
}

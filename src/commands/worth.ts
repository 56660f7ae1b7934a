import type { AlkaliId } from '../catalogue/types.ts';
import { alkaliMoles, gramsOf } from '../engine/alkali.ts';
import type { WorthQuestion } from '../reading/question/alkali.ts';
import { baseOf } from '../reading/question/facts.ts';
import { number, type Style } from '../units/print.ts';
import { purityFor, purityLine } from './acid.ts';
import { beforeMixing } from './cautions.ts';
import { type Context, defineCommand } from './define.ts';
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
import { answerUnit, figureResult, share, weight } from './figures.ts';
import { alkaliName } from './phrases.ts';

export const worth = defineCommand({
  id: 'worth',
  summary: 'One alkali in terms of the other, or of another purity.',
  risk: 'caustic',
  options: {},
  examples: [
    { say: 'worth: how much NaOH is 100 g of 90 % KOH worth', about: 'the same work done by the other alkali' },
    { say: 'worth: how much 97 % NaOH for 140 g pure NaOH', about: 'another purity' },
  ],
  instead: elsewhere('worth'),
  run: answering('worth', answered, () =>
    needs('How much of which alkali, in terms of what?', 'For example: how much NaOH is 100 g of 90 % KOH worth?'),
  ),
});

const called = (id: AlkaliId, purity: number, style: Style): string =>
  `${alkaliName[id]}${purity === 1 ? '' : ` of ${share(purity, style)}`}`;

function answered(question: WorthQuestion, { style, catalogue }: Context): CausticOutcome {
  const { amount, asks, to } = question;
  if (!amount) return needs('How much alkali?', 'For example: 100 g of 90 % KOH.');
  if (amount.dim === 'volume')
    return needs(`How much does ${amount.text} of alkali weigh?`, 'By volume it can be off by a third.');
  if (amount.upTo !== null) return needs(`${amount.text}: which figure shall I take?`, 'Ask again with one figure.');
  const given = baseOf(amount);
  if (given < 0) return cannot(`${amount.text}: an amount can’t be below nothing.`, 'Write it without the minus.');
  if (!(given < 1e9)) return cannot('That is no figure I can reckon with.', 'Check the digits and the unit.');
  const from = alkaliOf(question.from);
  const into = alkaliOf(question.into);
  const first = purityFor(from, asks === 'weigh' ? 'pure' : question.fromPurity, catalogue);
  const second = purityFor(into, asks === 'pure' ? 'pure' : question.intoPurity, catalogue);
  for (const purity of [first.value, second.value]) {
    if (!(purity >= 0.01 && purity <= 1.0051))
      return cannot(
        `A purity of ${share(purity, style)} can’t be.`,
        'Look at the label: NaOH is sold at 97 to 100 %, KOH at 85 to 100 %.',
      );
  }
  const grams = gramsOf(into, alkaliMoles(from, given, first.value)) / second.value;
  const unit = answerUnit(amount.unit);
  const target = to?.dimension === 'mass' ? to : unit;
  const print = (amount: number): string => weight(amount, target, style, asks === 'pure' ? 'near' : 'down');
  const result = `${print(grams)} ${called(into, second.value, style)}`;
  const source = `${weight(given, unit, style)} ${called(from, first.value, style)}`;
  const lead =
    asks === 'other'
      ? `${result} does the work of ${source}.`
      : asks === 'weigh'
        ? `Weigh ${result}: it holds ${source}.`
        : `${source} holds ${result}.`;
  return {
    title: 'One alkali as another',
    lead,
    body: [],
    details: [],
    assumptions: [
      ...alkaliAssumption(question.from),
      ...(asks === 'other' && first.assumed
        ? [purityLine(from, first.value, style, (other) => print((grams / first.value) * other))]
        : []),
      ...(asks === 'other' && second.assumed
        ? [purityLine(into, second.value, style, (other) => print((grams * second.value) / other))]
        : []),
    ],
    warnings: [],
    caution: beforeMixing,
    actions: [],
    result: figureResult(grams / target.factor, target.id),
    working: () => [
      oneStep({
        name: 'alkali',
        formula: 'weight × purity ÷ molar mass × molar mass of the other ÷ its purity',
        value: grams / target.factor,
        unit: target.id,
        shown: `${number(given, 2, style)} g × ${number(first.value, 3, style)} ÷ ${molar[from]} × ${molar[into]} ÷ ${number(second.value, 3, style)} = ${number(grams, 2, style)} g`,
        source: 'Molar masses from the CIAAW atomic weights (from memory, checked in tests against a second table)',
      }),
    ],
  };
}

const molar: Readonly<Record<AlkaliId, string>> = { naoh: '39.997', koh: '56.105' };

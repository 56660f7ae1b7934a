import { baseOf } from '../reading/question/facts.ts';
import type { ShareQuestion } from '../reading/question/share.ts';
import { number } from '../units/print.ts';
import { type Context, defineCommand, nothingMore, type Refusal, type Said } from './define.ts';
import { answering, elsewhere, oneStep } from './everyday.ts';
import { figureResult, gram, inUnit, share as percent } from './figures.ts';
import { nameOf } from './phrases.ts';

type Outcome = Said<'plain'> | Refusal<'plain'>;

export const share = defineCommand({
  id: 'share',
  summary: 'Per cent of a weight, or a weight in per cent of another.',
  risk: 'plain',
  options: {},
  examples: [
    { say: 'share: 3 % of 800 g', about: 'a share as a weight' },
    { say: 'share: what percent is 30 g of 800 g', about: 'a weight as a share' },
  ],
  instead: elsewhere('share'),
  run: answering('share', answered, () => needs('Per cent of what?')),
});

const needs = (message: string): Refusal<'plain'> => ({
  code: 'unclear',
  message,
  hint: 'For example: 3 % of 800 g.',
  candidates: [],
  caution: [],
});

function answered(question: ShareQuestion, { style, catalogue }: Context): Outcome {
  const { asks, whole, part, share: said, of, to } = question;
  const range = [said, whole, part].find((one) => one !== null && one.upTo !== null);
  if (range) return needs(`${range.text}: which figure shall I take?`);
  const wrong = [said, whole, part].find((one) => one !== null && !(one.value >= 0 && one.value < 1e12));
  if (wrong) return { ...needs(`${wrong.text} can’t be.`), code: 'impossible' };
  if (!whole) return needs(`${said?.text ?? 'Per cent'} of what weight?`);
  const unit = whole.unit ?? gram;
  if (asks === 'percent') {
    if (!part) return needs('Which weight in per cent of which?');
    if (!(baseOf(whole) > 0)) return { ...needs('A share of nothing can’t be.'), code: 'impossible' };
    const value = (100 * baseOf(part)) / baseOf(whole);
    return said1(
      `${number(value, 2, style)} %: ${part.text} of ${whole.text}.`,
      value,
      '%',
      `${part.text} ÷ ${whole.text} × 100 = ${number(value, 2, style)} %`,
    );
  }
  if (!said) return needs(`How many per cent of ${whole.text}?`);
  const target = to?.dimension === unit.dimension ? to : unit;
  const value = (baseOf(whole) * said.value) / target.factor;
  const name = of ? ` ${nameOf(of.meaning.id, catalogue)}` : '';
  return said1(
    `${inUnit(value, target, style)}${name}: ${percent(said.value, style)} of ${whole.text}.`,
    value,
    target.id,
    `${whole.text} × ${number(said.value, 4, style)} = ${inUnit(value, target, style)}`,
  );
}

const said1 = (lead: string, value: number, of: string, shown: string): Said<'plain'> => ({
  title: 'Share',
  lead,
  ...nothingMore,
  result: figureResult(value, of),
  working: () => [
    oneStep({ name: 'share', formula: 'whole × per cent ÷ 100', value, unit: of, shown, source: 'Arithmetic' }),
  ],
});

import { fromStock } from '../engine/alkali.ts';
import { solutionConcentration, stockFor } from '../engine/dilution.ts';
import { concentrationOf, ratioOf } from '../engine/water.ts';
import type { StrengthQuestion } from '../reading/question/strength.ts';
import { number } from '../units/print.ts';
import { defineCommand, type Refusal } from './define.ts';
import { answering, elsewhere } from './everyday.ts';
import { share } from './figures.ts';
import {
  badStrength,
  cannot,
  example,
  gramsIn,
  needs,
  type Outcome,
  partsOf,
  type Sheet,
  said,
  sheetFor,
} from './strength-parts.ts';
import { waterFor } from './strength-water.ts';

export const strength = defineCommand({
  id: 'strength',
  summary: 'Lye solutions: how strong, how much water, how much stock.',
  risk: 'caustic',
  options: {},
  examples: [
    { say: 'strength: how much water for 140 g NaOH to make a 30 % solution', about: 'water for so much alkali' },
    { say: 'strength of 150 g NaOH in 300 g water', about: 'alkali in the solution, in per cent' },
    { say: 'strength: how much 50 % stock do I weigh for 128 g NaOH', about: 'a stock solution' },
    { say: 'strength: how much water thins 500 g of 50 % lye solution to 33 %', about: 'thinning' },
  ],
  instead: elsewhere('strength'),
  run: answering(
    'strength',
    (question, context) => answered(sheetFor(question, context)),
    () => needs('Which solution?', example),
  ),
});

function answered(sheet: Sheet): Outcome {
  const { question } = sheet;
  const wrong = wrongMeasure(question);
  if (wrong) return wrong;
  switch (question.asks) {
    case 'water':
      return waterFor(sheet) ?? alkaliIn(sheet, 'water');
    case 'strength':
    case 'ratio':
      return howStrong(sheet);
    case 'stock':
      return stock(sheet);
    case 'alkali':
      return alkaliIn(sheet, 'alkali');
    case 'solution':
      return whole(sheet);
    case null:
      return needs('What shall I work out: the water, the strength or the stock?', example);
  }
}

function wrongMeasure(question: StrengthQuestion): Refusal<'caustic'> | null {
  const { alkali, water, solution, fats, strengths, shareOfFats } = question;
  const all = [alkali, water, solution, fats, ...strengths, shareOfFats].filter((one) => one !== null);
  for (const { text, value, upTo } of all) {
    if (upTo !== null) return needs(`${text}: which figure shall I take?`, 'Ask again with one figure.');
    if (value < 0) return cannot(`${text}: an amount can’t be below nothing.`, 'Write it without the minus.');
    if (!(value < 1e9)) return cannot('That is no figure I can reckon with.', 'Check the digits and the unit.');
  }
  const scale = 'Put it on a scale and tell me the grams.';
  if (alkali?.dim === 'volume')
    return needs(`How much does ${alkali.text} of alkali weigh? By volume it can be off by a third.`, scale);
  if (solution?.dim === 'volume')
    return needs(`How much does ${solution.text} of the solution weigh? It is heavier than water.`, scale);
  return null;
}

/** Alkali in the solution in per cent, or water to one part of alkali. */
function howStrong(sheet: Sheet): Outcome {
  const { question, style, alkali: name, beside } = sheet;
  const { alkali, water, solution, ratio, strengths, asks } = question;
  const isRatio = asks === 'ratio';
  const other = water ?? solution;
  const tell = (value: number, of: string | null, sum: string): Outcome => {
    const strong = share(value, style);
    const parts = partsOf(value, sheet);
    return said(sheet, {
      lead: isRatio
        ? `${parts}: ${of ? `${of}, ` : ''}a ${strong} solution.`
        : `${strong}: ${of ? `${of} (${parts})` : parts}.`,
      ...(isRatio ? { value: ratioOf(value), of: 'g/g' } : { value: value * 100, of: '%' }),
      concentration: value,
      name: isRatio ? 'water to alkali' : 'strength',
      formula: isRatio ? 'water ÷ alkali' : 'alkali ÷ (alkali + water)',
      sum,
    });
  };
  const print = (grams: number): string => number(grams, 1, style);
  if (alkali && other) {
    const grams = gramsIn(alkali);
    const rest = water ? gramsIn(other) : gramsIn(other) - grams;
    if (rest < 0)
      return cannot('More alkali than solution can’t be.', 'Tell me the weight of the alkali and of the water.');
    const found = solutionConcentration(grams, rest);
    if (!found.ok) return sheet.refuse(found.fault);
    const { value } = found;
    if (value <= 0 || value >= 1)
      return badStrength(value, sheet) ?? needs('How much alkali in how much water?', example);
    const of = `${beside(grams)} ${name} in ${beside(gramsIn(other))} ${water ? 'water' : 'solution'}`;
    return tell(
      value,
      of,
      isRatio ? `${print(rest)} ÷ ${print(grams)}` : `${print(grams)} ÷ (${print(grams)} + ${print(rest)})`,
    );
  }
  const value = ratio ? (ratio.value > 0 ? concentrationOf(ratio.value) : 1) : (strengths[0]?.value ?? null);
  if (value === null) return needs('How much alkali in how much water?', 'For example: 150 g NaOH in 300 g water.');
  const parts = number(ratioOf(value), 3, style);
  return (
    badStrength(value, sheet) ??
    tell(value, null, isRatio ? `(1 − ${number(value, 4, style)}) ÷ ${number(value, 4, style)}` : `1 ÷ (1 + ${parts})`)
  );
}

function stock(sheet: Sheet): Outcome {
  const { question, style, alkali: name, beside, main } = sheet;
  const { alkali, strengths, ratio } = question;
  const strong = strengths[0]?.value ?? (ratio && ratio.value > 0 ? concentrationOf(ratio.value) : null);
  if (!alkali) return needs('Stock for how much alkali?', 'For example: how much 50 % stock for 128 g NaOH?');
  if (strong === null)
    return needs('How strong is the stock solution?', 'Answer with its alkali by weight, for example "50 %".', [
      '50 %',
      '33 %',
    ]);
  const wrong = badStrength(strong, sheet);
  if (wrong) return wrong;
  const grams = gramsIn(alkali);
  const found = stockFor(grams, strong);
  if (!found.ok) return sheet.refuse(found.fault);
  const { solutionGrams, waterGrams } = found.value;
  const { text, ...figure } = main(solutionGrams);
  return said(sheet, {
    lead: `Weigh ${text} of the ${share(strong, style)} stock: it holds ${beside(grams)} ${name} and ${beside(waterGrams)} water.`,
    ...figure,
    concentration: null,
    name: 'stock solution',
    formula: 'alkali ÷ strength',
    sum: `${beside(grams)} ÷ ${number(strong, 4, style)}`,
  });
}

/** Alkali or water in so much solution, or alkali for so much water. */
function alkaliIn(sheet: Sheet, wanted: 'alkali' | 'water'): Outcome {
  const { question, style, alkali: name, beside, main } = sheet;
  const { solution, water, strengths, ratio } = question;
  const value = strengths[0]?.value ?? (ratio ? (ratio.value > 0 ? concentrationOf(ratio.value) : 1) : null);
  if (value === null)
    return needs('How strong is the solution?', 'Answer with its alkali by weight, for example "33 %".', [
      '33 %',
      '50 %',
    ]);
  const from = solution ?? water;
  if (!from) return needs('How much of the solution?', 'Answer with its weight, for example "500 g".');
  const wrong = badStrength(value, sheet);
  if (wrong) return wrong;
  const given = gramsIn(from);
  const strong = share(value, style);
  const alkali = solution ? fromStock(given, value).alkaliGrams : given / ratioOf(value);
  const rest = given - alkali;
  const isAlkali = wanted === 'alkali' || !solution;
  const { text, ...figure } = isAlkali ? main(alkali) : main(rest, 'water');
  const parts = isAlkali
    ? `${text} ${name}, with ${beside(rest)} water`
    : `${text} water, with ${beside(alkali)} ${name}`;
  const factor = number(isAlkali ? value : 1 - value, 4, style);
  return said(sheet, {
    lead: solution
      ? `${parts}: ${beside(given)} of ${strong} solution.`
      : `${text} ${name} in ${beside(given)} water makes ${strong}.`,
    ...figure,
    concentration: solution ? null : value,
    name: wanted,
    formula: solution ? `solution × ${isAlkali ? 'strength' : '(1 − strength)'}` : 'water × strength ÷ (1 − strength)',
    sum: `${beside(given)} × ${factor}${solution ? '' : ` ÷ ${number(1 - value, 4, style)}`}`,
  });
}

function whole(sheet: Sheet): Outcome {
  const { question, style, alkali: name, beside, main } = sheet;
  const { alkali, water } = question;
  if (!alkali || !water)
    return needs('How much alkali and how much water?', 'For example: 140 g NaOH and 300 g water.');
  const [dry, wet] = [gramsIn(alkali), gramsIn(water)];
  const { text, ...figure } = main(dry + wet);
  return said(sheet, {
    lead: `${text} of solution, ${share(dry / (dry + wet), style)} ${name}.`,
    ...figure,
    concentration: dry / (dry + wet),
    name: 'solution',
    formula: 'alkali + water',
    sum: `${beside(dry)} + ${beside(wet)}`,
  });
}

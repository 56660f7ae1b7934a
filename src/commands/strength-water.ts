/** Water for so much alkali, as a share of the fats, or to thin a solution. */
import { waterToDissolve, waterToThin } from '../engine/dilution.ts';
import { concentrationOf, ratioOf } from '../engine/water.ts';
import type { Measure } from '../reading/question/facts.ts';
import { number } from '../units/print.ts';
import { share } from './figures.ts';
import { badStrength, cannot, example, gramsIn, needs, type Outcome, type Sheet, said } from './strength-parts.ts';

/** Null where water is asked that a solution holds. */
export function waterFor(sheet: Sheet): Outcome | null {
  const { alkali, solution, strengths, fats, shareOfFats } = sheet.question;
  if (fats && shareOfFats) return ofFats(sheet, fats, shareOfFats);
  const [first, second] = strengths.map(({ value }) => value).sort((a, b) => b - a);
  if (first !== undefined && second !== undefined && (solution ?? alkali))
    // of alkali it is the stock that holds it which is thinned
    return thin(sheet, solution ? gramsIn(solution) : gramsIn(alkali as Measure) / first, first, second);
  if (alkali) return forAlkali(sheet, alkali);
  return solution ? null : needs('Water for how much alkali?', example);
}

function forAlkali(sheet: Sheet, alkali: Measure): Outcome {
  const { question, style, alkali: name, beside, main, usualStrength } = sheet;
  const [strong] = question.strengths;
  const { ratio } = question;
  const value = strong?.value ?? (ratio ? (ratio.value > 0 ? concentrationOf(ratio.value) : 1) : usualStrength());
  const wrong = badStrength(value, sheet);
  if (wrong) return wrong;
  const grams = gramsIn(alkali);
  const found = waterToDissolve(grams, value);
  if (!found.ok) return sheet.refuse(found.fault);
  const water = found.value;
  const { text, ...figure } = main(water, 'water');
  const all = `${beside(grams)} ${name} then makes ${beside(grams + water)} of ${share(value, style)} solution`;
  return said(sheet, {
    lead: `Use ${text} water: ${all}.`,
    ...figure,
    concentration: value,
    name: 'water',
    formula: ratio && !strong ? 'alkali × parts of water' : 'alkali × (1 − strength) ÷ strength',
    sum:
      ratio && !strong
        ? `${beside(grams)} × ${number(ratio.value, 3, style)}`
        : `${beside(grams)} × ${number(1 - value, 4, style)} ÷ ${number(value, 4, style)}`,
    assumptions:
      strong || ratio
        ? []
        : [
            `I took a ${share(value, style)} solution; 25 to 40 % is usual (${beside(grams * ratioOf(0.25))} to ${beside(grams * ratioOf(0.4))} water).`,
          ],
  });
}

/** Water to fats beyond this is a slip. */
const mostOfFats = 3;

function ofFats(sheet: Sheet, fats: Measure, part: Measure): Outcome {
  const { style, beside, main } = sheet;
  if (part.value <= 0 || part.value > mostOfFats)
    return cannot(`Water at ${part.text} of the fats can’t be.`, 'Usual is 25 to 40 % of the fats.');
  const grams = gramsIn(fats);
  const { text, ...figure } = main(grams * part.value, 'water');
  return said(
    { ...sheet, question: { ...sheet.question, alkaliId: 'naoh' } },
    {
      lead: `Use ${text} water: ${share(part.value, style)} of ${beside(grams)} fats.`,
      ...figure,
      concentration: null,
      name: 'water',
      formula: 'fats × share',
      sum: `${beside(grams)} × ${number(part.value, 4, style)}`,
    },
  );
}

function thin(sheet: Sheet, grams: number, first: number, second: number): Outcome {
  const { style, beside, main } = sheet;
  const wrong = badStrength(first, sheet) ?? badStrength(second, sheet);
  if (wrong) return wrong;
  const found = waterToThin(grams, first, second);
  if (!found.ok) return sheet.refuse(found.fault);
  const water = found.value;
  const { text, ...figure } = main(water, 'water');
  return said(sheet, {
    lead: `Add ${text} water: ${beside(grams)} of ${share(first, style)} solution becomes ${beside(grams + water)} of ${share(second, style)}.`,
    ...figure,
    concentration: second,
    name: 'water',
    formula: 'solution × (strength ÷ wanted strength − 1)',
    sum: `${beside(grams)} × (${number(first, 3, style)} ÷ ${number(second, 3, style)} − 1)`,
  });
}

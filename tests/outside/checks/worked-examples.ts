import { readFileSync } from 'node:fs';
import { demandOf, gramsOf } from '../../../src/engine/alkali.ts';
import { soapFigures } from '../../../src/engine/soap.ts';
import { fat, naoh, recipe } from '../../engine/fixtures.ts';
import type { Group, Row } from '../row.ts';

interface Example {
  readonly id: string;
  readonly source: string;
  readonly about: string;
  readonly given: {
    readonly fatGrams: number;
    readonly kohMoles?: number;
    readonly esterMoles?: number;
    readonly freeAcidMoles?: number;
  };
  readonly published: Readonly<Record<string, number>>;
  readonly tolerance: number;
  readonly note?: string;
}

const path = new URL('../../vectors/worked-examples.json', import.meta.url);

/** A fat of which `moles` of potassium hydroxide saponify `grams`. */
const taking = (id: string, kind: 'triglyceride' | 'fatty-acid', grams: number, moles: number) => {
  const value = (moles * 56.105 * 1000) / grams;
  return { fat: fat(id, { sv: [value, value], kind }), grams };
};

/** What the engine says to an example: the saponification value whose demand is the alkali used, or the soap made. */
function figures({ given }: Example): Readonly<Record<string, number>> {
  const { fatGrams, kohMoles, esterMoles = 0, freeAcidMoles = 0 } = given;
  if (kohMoles !== undefined) {
    const perUnit = demandOf([taking('unit', 'triglyceride', fatGrams, (fatGrams * 1) / 56105)]);
    return { saponification: kohMoles / perUnit };
  }
  // How the weight is shared between ester and free acid does not matter to the sums; a twentieth is plausible.
  const lines = [taking('ester', 'triglyceride', fatGrams * 0.95, esterMoles)];
  if (freeAcidMoles > 0) lines.push(taking('acid', 'fatty-acid', fatGrams * 0.05, freeAcidMoles));
  else lines[0] = taking('ester', 'triglyceride', fatGrams, esterMoles);
  const naohGrams = gramsOf('naoh', demandOf(lines));
  const soap = soapFigures(recipe({ fats: lines, alkali: [naoh(naohGrams)], waterGrams: 0 }), new Map());
  return { naohGrams, glycerolGrams: soap.glycerolGrams, soapGrams: soap.soapGrams };
}

export function workedExamples(): Group {
  const examples = JSON.parse(readFileSync(path, 'utf8')) as readonly Example[];
  return {
    title: 'Published worked examples',
    about: 'Sums worked by others, for which the engine is asked the same. They round molar masses to whole numbers.',
    rows: examples.flatMap((example) =>
      Object.entries(example.published).map(
        ([figure, expected]): Row => ({
          check: `${figure}: ${example.about}`,
          source: example.note ? `${example.source}; ${example.note}` : example.source,
          unit: figure === 'saponification' ? 'mg KOH/g' : 'g',
          expected,
          ours: figures(example)[figure] ?? Number.NaN,
          tolerance: example.tolerance,
        }),
      ),
    ),
  };
}

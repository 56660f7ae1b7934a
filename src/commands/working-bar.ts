/** The reckoning beside the alkali: water, the second route, and what the bar is made of. */
import type { Catalogue } from '../catalogue/types.ts';
import type { CheckFigures } from '../engine/check.ts';
import { composeBlend } from '../engine/composition.ts';
import type { Recipe } from '../engine/recipe.ts';
import { soapFigures } from '../engine/soap.ts';
import { mass, number, percent, percentRange, readMass, type Style } from '../units/print.ts';
import type { Step } from './kept.ts';

import { inGrams, molarMasses } from './working-words.ts';

export function waterSteps(recipe: Recipe, { lye }: CheckFigures, style: Style): Step[] {
  if (lye.waterGrams <= 0) return [];
  const alkali = recipe.alkali.reduce((sum, { grams }) => sum + grams, 0);
  const inputs = [
    { name: 'alkali as weighed', value: alkali, unit: 'g' },
    { name: 'water, that of milk counted', value: lye.waterGrams, unit: 'g' },
  ];
  const [a, w] = [readMass(alkali, inGrams(style)), readMass(lye.waterGrams, inGrams(style))];
  const source = 'definition; 25 to 40 % is usual, 50 % the working limit (common practice)';
  return [
    {
      name: 'strength of the lye solution',
      asked: ['concentration', 'solution', 'strength', 'strong', 'dissolve'],
      formula: 'alkali ÷ (alkali + water)',
      inputs,
      value: lye.concentration * 100,
      unit: '%',
      shown: `${a} ÷ (${a} + ${w}) = ${percent(lye.concentration, style)}`,
      source,
    },
    {
      name: 'water to alkali',
      asked: ['water', 'ratio'],
      formula: 'water ÷ alkali',
      inputs,
      value: lye.ratio,
      unit: '1',
      shown: `${w} ÷ ${a} = ${number(lye.ratio, 2, style)}; as a strength: alkali ÷ (alkali + water) = ${percent(lye.concentration, style)}`,
      source,
    },
  ];
}

export function secondRouteSteps({ secondRoute }: CheckFigures, style: Style): Step[] {
  if (!secondRoute) return [];
  const { superfat, covered, agrees } = secondRoute;
  return [
    {
      name: 'second reckoning from fatty acids',
      asked: ['second', 'fatty acids', 'second route', 'cross check', 'other way'],
      formula: '3 × 56.105 × 1000 ÷ (3 × mean molar mass of the acids + 38.049), then as before',
      inputs: [{ name: 'part of the alkali that it covers', value: covered * 100, unit: '%' }],
      value: superfat.nominal * 100,
      unit: '%',
      shown: `superfat ${percent(superfat.nominal, style)} (${percentRange(superfat.low, superfat.high, style)}): the two reckonings ${agrees ? 'agree' : 'disagree'}`,
      source: 'AOCS Cd 3a-94, with the typical fatty acids of each fat',
      range: 'For fats that are triglycerides or free acids; typical compositions are good to about 2 %.',
    },
  ];
}

export function barSteps(recipe: Recipe, { batchGrams }: CheckFigures, catalogue: Catalogue, style: Style): Step[] {
  const soap = soapFigures(recipe, catalogue.fats);
  const blend = composeBlend([...recipe.fats, ...recipe.after]);
  const iodine = blend.iodineFromRanges ?? blend.iodineFromAcids;
  const g = inGrams(style);
  return [
    {
      name: 'weight of the batch',
      asked: ['batch', 'total', 'batch weight', 'weigh', 'everything'],
      formula: 'fats + alkali + water + milk + acids',
      inputs: [],
      value: batchGrams,
      unit: 'g',
      shown: `${mass(batchGrams, g)} in the pot, without scent and other extras`,
      source: 'sum of the amounts',
    },
    {
      name: 'glycerol formed',
      asked: ['glycerol', 'glycerin', 'glycerine'],
      formula: 'alkali taken up by triglycerides ÷ 3 × 92.094 g/mol',
      inputs: [],
      value: soap.glycerolGrams,
      unit: 'g',
      shown: `about ${mass(soap.glycerolGrams, g)}: three of alkali give one of glycerol`,
      source: `stoichiometry of saponification; ${molarMasses}`,
    },
    {
      name: 'total fatty matter',
      asked: ['fatty matter', 'tfm'],
      formula: 'fatty acids of the soap + fat left over + unsaponifiable matter',
      inputs: [],
      value: soap.totalFattyMatter.ofBatch * 100,
      unit: '%',
      shown: `about ${percent(soap.totalFattyMatter.ofBatch, style, 0)} of the batch as poured`,
      source: 'ISO 685: definition',
    },
    ...(iodine
      ? [
          {
            name: 'iodine value',
            asked: ['iodine'],
            formula: 'mean of the fats’ iodine values, by weight',
            inputs: [],
            value: iodine.nominal,
            unit: 'g/100 g',
            shown: `about ${number(iodine.nominal, 0, style)} (${number(iodine.low, 0, style)} to ${number(iodine.high, 0, style)}) g iodine per 100 g`,
            source: 'AOCS Cd 1c-85, and the published ranges of each fat',
          },
        ]
      : []),
  ];
}

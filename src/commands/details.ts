/** What stands behind "details": the fats one by one, the second route, what the bar is made of, the sources. */
import type { Block } from '../answer/types.ts';
import type { Catalogue, Fat } from '../catalogue/types.ts';
import type { CheckFigures } from '../engine/check.ts';
import { type AcidGroup, composeBlend } from '../engine/composition.ts';
import type { Recipe } from '../engine/recipe.ts';
import { soapFigures } from '../engine/soap.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { mass, number, percent, percentRange, readMass, type Style } from '../units/print.ts';
import { capital, inSentence } from './phrases.ts';
import { acidsPicture, superfatPicture } from './pictures.ts';

const groupNames: Readonly<Record<AcidGroup, string>> = {
  'c4-c10': 'short, saturated (to C10)',
  'c12-c14': 'lauric and myristic (C12, C14)',
  'c16-c18-saturated': 'palmitic and stearic (C16, C18)',
  'c20-up-saturated': 'long, saturated (C20 and up)',
  'c18-1': 'oleic (C18:1)',
  ricinoleic: 'ricinoleic',
  'c18-2-c18-3': 'linoleic and linolenic (C18:2, C18:3)',
  other: 'other',
};

export function detailsOf(
  recipe: Recipe,
  figures: CheckFigures,
  reading: RecipeReading,
  catalogue: Catalogue,
  style: Style,
): Block[] {
  return [
    fatTable(figures, style),
    { kind: 'facts', rows: alkaliFacts(recipe, figures, style) },
    ...superfatPicture(figures.superfat, figures.needed.asked, style),
    { kind: 'facts', rows: barFacts(recipe, figures, catalogue, style) },
    ...acidsPicture('Fatty acids of the fats', [
      { name: 'the fats', groups: composeBlend([...recipe.fats, ...recipe.after]).groups },
    ]),
    { kind: 'list', title: 'Where the values come from', items: sourcesOf(recipe, figures, catalogue, style) },
    ...setAside(reading),
  ];
}

function fatTable({ fats, milkFats }: CheckFigures, style: Style): Block {
  const rows = [
    ...fats.map(({ fat, grams, share, demandShare }) => [
      capital(inSentence(fat.name)),
      readMass(grams, style),
      percent(share, style),
      percent(demandShare, style),
    ]),
    ...milkFats.map(({ fat, grams, demandShare }) => [
      `${capital(inSentence(fat.name))}, of the milk`,
      readMass(grams, style),
      '',
      percent(demandShare, style),
    ]),
  ];
  return {
    kind: 'table',
    caption: 'Fats: weight, share of the fats, part of the alkali needed',
    columns: [
      { title: 'Fat', align: 'left' },
      { title: 'Weight', align: 'right' },
      { title: 'Share', align: 'right' },
      { title: 'Of alkali', align: 'right' },
    ],
    rows,
  };
}

type Rows = Extract<Block, { kind: 'facts' }>['rows'];

function alkaliFacts(recipe: Recipe, figures: CheckFigures, style: Style): Rows {
  const { demand, superfat, secondRoute, freeAlkali, lye } = figures;
  const grams = (value: number): string => mass(value, style, Math.min(0.1, recipe.scaleStepGrams));
  return [
    {
      label: 'Needed with nothing left over, pure',
      value: `${grams(demand.naohGrams)} sodium hydroxide (NaOH), or ${grams(demand.kohGrams)} potassium hydroxide (KOH)`,
    },
    {
      label: 'Superfat',
      value: `${percent(superfat.nominal, style)}; 95 of 100 such batches have ${percentRange(superfat.low, superfat.high, style)}`,
    },
    ...(secondRoute
      ? [
          {
            label: 'Second reckoning, from fatty acids',
            value: `${percent(secondRoute.superfat.nominal, style)} (${percentRange(secondRoute.superfat.low, secondRoute.superfat.high, style)}); ${secondRoute.agrees ? 'the two agree' : 'the two disagree'}${secondRoute.covered < 0.995 ? `; covers ${percent(secondRoute.covered, style, 0)} of the alkali` : ''}`,
          },
        ]
      : []),
    ...(freeAlkali.worst > 0
      ? [
          {
            label: 'Free alkali in the batch, as sodium hydroxide (NaOH)',
            value: `${percent(freeAlkali.nominal, style, 2)}, at worst ${percent(freeAlkali.worst, style, 2)}; toilet soap standards allow about ${percent(freeAlkali.limit, style, 2)}`,
          },
        ]
      : []),
    { label: 'Water to fat', value: percent(lye.shareOfFat, style) },
  ];
}

function barFacts(recipe: Recipe, figures: CheckFigures, catalogue: Catalogue, style: Style): Rows {
  const blend = composeBlend([...recipe.fats, ...recipe.after]);
  const soap = soapFigures(recipe, catalogue.fats);
  const groups = (Object.entries(blend.groups) as [AcidGroup, number][])
    .filter(([, share]) => share >= 0.005)
    .sort((a, b) => b[1] - a[1])
    .map(([group, share]) => `${groupNames[group]} ${percent(share, style, 0)}`);
  const iodine = blend.iodineFromRanges ?? blend.iodineFromAcids;
  const grams = (value: number): string => mass(value, style, 1);
  return [
    ...(groups.length > 0
      ? [
          {
            label: `Fatty acids${blend.covered < 0.995 ? ` (of ${percent(blend.covered, style, 0)} of the fats)` : ''}`,
            value: groups.join('; '),
          },
        ]
      : []),
    ...(iodine
      ? [
          {
            label: 'Iodine value',
            value: `about ${number(iodine.nominal, 0, style)} (${number(iodine.low, 0, style)} to ${number(iodine.high, 0, style)}) g per 100 g${iodine.covered < 0.995 ? `, of ${percent(iodine.covered, style, 0)} of the fats` : ''}`,
          },
        ]
      : []),
    { label: 'Glycerol formed', value: `about ${grams(soap.glycerolGrams)}` },
    {
      label: 'Total fatty matter',
      value: `about ${percent(soap.totalFattyMatter.ofBatch, style, 0)} of the batch, ${number(soap.totalFattyMatter.ofCured.low * 100, 0, style)} to ${percent(soap.totalFattyMatter.ofCured.high, style, 0)} of the cured bar`,
    },
    { label: 'Batch', value: `${grams(figures.batchGrams)}, without scent and other extras` },
  ];
}

/** One line a fat: its range, the statement taken, and whether it is from memory. */
function sourcesOf(recipe: Recipe, { milkFats }: CheckFigures, catalogue: Catalogue, style: Style): string[] {
  const fats = new Map<string, Fat>();
  for (const { fat } of [...recipe.fats, ...milkFats, ...recipe.after]) fats.set(fat.id, fat);
  return [...fats.values()].map(({ name, saponification: { low, high, nominal, entries, taken, fromMemory } }) => {
    const entry = entries[taken];
    const source = entry ? (catalogue.sources.get(entry.source)?.title ?? entry.source) : '';
    const figures = `${number(low, 1, style)} to ${number(high, 1, style)}, middle ${number(nominal, 1, style)} mg KOH/g`;
    return `${capital(inSentence(name))}: ${figures}; ${source}${entry?.locator ? `, ${entry.locator}` : ''}${fromMemory ? ' (from memory)' : ''}`;
  });
}

/** Figures of the post that went into nothing, with the reason. */
function setAside(reading: RecipeReading): Block[] {
  const aside = reading.fates.filter(({ fate }) => fate === 'aside').map(({ text, why }) => `${text}: ${why}`);
  return aside.length > 0 ? [{ kind: 'list', title: 'Figures I set aside', items: [...new Set(aside)] }] : [];
}

/** The reckoning of a recipe step by step, for `explain`: formula, numbers, source and what makes it unsure. */
import type { AlkaliId, Catalogue, Fat } from '../catalogue/types.ts';
import { acidMoles, broughtBy, eatenBy, gramsOf, molesPerGram } from '../engine/alkali.ts';
import type { CheckFigures } from '../engine/check.ts';
import { ALKALI_MOLAR_MASS } from '../engine/chemistry.ts';
import type { Recipe } from '../engine/recipe.ts';
import { spreadOf, uncertaintyBudget } from '../engine/uncertainty.ts';
import { mass, massAtMost, number, percent, percentRange, readMass, type Style } from '../units/print.ts';
import type { Step } from './kept.ts';
import { alkaliName, capital, chance, inSentence, listed, nameOf } from './phrases.ts';
import { barSteps, secondRouteSteps, waterSteps } from './working-bar.ts';
import { type Inputs, inGrams, molarMasses } from './working-words.ts';

const saponification = 'ISO 3657, AOCS Cd 3: definition of the saponification value';

const of = (fat: Fat): string => `alkali for the ${inSentence(fat.name)}`;

/** Where the saponification value of a fat was found, and why that statement. */
function fatSource({ saponification: { entries, taken, fromMemory, why } }: Fat, catalogue: Catalogue): string {
  const entry = entries[taken];
  const title = entry ? (catalogue.sources.get(entry.source)?.title ?? entry.source) : 'no statement';
  return `${title}${entry?.locator ? `, ${entry.locator}` : ''}${fromMemory ? ' (from memory)' : ''}. ${capital(why)}`;
}

/** The reckoning of one batch, in order; the first step is what the person most likely asks for. */
export function recipeWorking(
  recipe: Recipe,
  figures: CheckFigures,
  catalogue: Catalogue,
  style: Style,
): readonly Step[] {
  const kinds = new Set(recipe.alkali.map(({ id }) => id));
  // A mix is shown as if it were all sodium hydroxide.
  const id: AlkaliId = kinds.size === 1 && kinds.has('koh') ? 'koh' : 'naoh';
  const fats = fatSteps(recipe, figures, id, catalogue, style);
  const rest = [
    demandStep(figures, fats, id, style),
    ...acidSteps(recipe, id, style),
    broughtStep(recipe, id, style),
    superfatStep(recipe, figures, id, style),
  ];
  return [
    ...rest.slice(-1),
    sureStep(recipe, figures, catalogue, style),
    neededStep(recipe, figures, id, style),
    ...fats,
    ...rest.slice(0, -1),
    ...waterSteps(recipe, figures, style),
    ...secondRouteSteps(figures, style),
    ...barSteps(recipe, figures, catalogue, style),
  ];
}

function fatSteps(
  recipe: Recipe,
  { milkFats }: CheckFigures,
  id: AlkaliId,
  catalogue: Catalogue,
  style: Style,
): Step[] {
  const ratio = ALKALI_MOLAR_MASS[id] / ALKALI_MOLAR_MASS.koh;
  const milks = (fat: Fat): readonly string[] =>
    recipe.liquids.filter(({ liquid }) => liquid.fat === fat.id).flatMap(({ liquid }) => ['milk', ...liquid.names]);
  return [...recipe.fats, ...milkFats].map(({ fat, grams }) => {
    const { nominal, low, high } = fat.saponification;
    const value = gramsOf(id, grams * molesPerGram(nominal));
    const turn = id === 'koh' ? '' : ` × ${number(ratio, 4, style)}`;
    return {
      name: of(fat),
      asked: [
        fat.id.replaceAll('-', ' '),
        ...fat.names,
        ...milks(fat),
        inSentence(fat.name),
        'saponification value',
        'sap value',
        'sap',
        'sv',
      ],
      formula: `weight × saponification value ÷ 1000${id === 'koh' ? '' : ' × 39.997 ÷ 56.105'}`,
      inputs: [
        { name: `weight of the ${inSentence(fat.name)}`, value: grams, unit: 'g' },
        { name: 'saponification value', value: nominal, unit: 'mg KOH/g' },
      ],
      value,
      unit: 'g',
      shown: `${readMass(grams, { ...style, massUnit: 'g' })} × ${number(nominal, 1, style)} ÷ 1000${turn} = ${number(value, 2, style)} g ${alkaliName[id]}`,
      source: fatSource(fat, catalogue),
      range: `Lots of it lie between ${number(low, 1, style)} and ${number(high, 1, style)} mg KOH/g.`,
      sure: 'A supplier’s certificate for your lot would replace this range.',
    };
  });
}

function demandStep({ demand }: CheckFigures, fats: readonly Step[], id: AlkaliId, style: Style): Step {
  const value = id === 'koh' ? demand.kohGrams : demand.naohGrams;
  return {
    name: 'alkali with nothing left over',
    asked: ['demand', 'zero', 'nothing left over', 'needed', '0 %'],
    from: fats.map(({ name }) => name),
    formula: 'sum over all fats, the fat of milk too',
    inputs: fats.map((fat) => ({ name: fat.name, value: fat.value, unit: 'g' })),
    value,
    unit: 'g',
    shown: `${fats.length > 1 ? `${fats.map((fat) => number(fat.value, 2, style)).join(' + ')} = ` : ''}${number(value, 1, style)} g ${alkaliName[id]}, pure`,
    source: `${saponification}; ${molarMasses}`,
  };
}

function acidSteps({ acids }: Recipe, id: AlkaliId, style: Style): Step[] {
  return acids.map(({ acid, grams }) => {
    const value = gramsOf(id, acidMoles(acid, grams));
    return {
      name: `alkali that the ${inSentence(acid.name)} takes first`,
      asked: [acid.id.replaceAll('-', ' '), ...acid.names],
      formula: 'weight × strength × protons × molar mass of the alkali ÷ molar mass of the acid',
      inputs: [
        { name: 'weight', value: grams, unit: 'g' },
        { name: 'strength', value: acid.strength * 100, unit: '%' },
        { name: 'protons', value: acid.protons, unit: '1' },
        { name: 'molar mass of the acid', value: acid.molarMass, unit: 'g/mol' },
      ],
      value,
      unit: 'g',
      shown: `${readMass(grams, style)} × ${number(acid.strength, 3, style)} × ${acid.protons} × ${number(ALKALI_MOLAR_MASS[id], 3, style)} ÷ ${number(acid.molarMass, 2, style)} = ${number(value, 1, style)} g`,
      source: `${acid.source}${acid.locator ? `, ${acid.locator}` : ''}`,
    };
  });
}

function broughtStep(recipe: Recipe, id: AlkaliId, style: Style): Step {
  const value = gramsOf(id, broughtBy(recipe.alkali));
  const one = ({ id: kind, grams, purity }: Recipe['alkali'][number]): string =>
    `${readMass(grams, inGrams(style))} × ${number(purity.nominal * 100, 1, style)} %${kind === id ? '' : ` × ${number(ALKALI_MOLAR_MASS[id] / ALKALI_MOLAR_MASS[kind], 4, style)}`}`;
  return {
    name: 'alkali in the pot, pure',
    asked: ['purity', 'pure', 'in the pot'],
    formula: 'weight × purity',
    inputs: recipe.alkali.flatMap(
      (alkali): Inputs => [
        { name: alkaliName[alkali.id], value: alkali.grams, unit: 'g' },
        { name: 'purity', value: alkali.purity.nominal * 100, unit: '%' },
      ],
    ),
    value,
    unit: 'g',
    shown: `${recipe.alkali.map(one).join(' + ')} = ${number(value, 1, style)} g${recipe.alkali.length > 1 ? ` as ${alkaliName[id]}` : ''}`,
    source: 'purity as on the label, or as assumed in the answer',
  };
}

function superfatStep(recipe: Recipe, { superfat, demand }: CheckFigures, id: AlkaliId, style: Style): Step {
  const need = id === 'koh' ? demand.kohGrams : demand.naohGrams;
  const eaten = gramsOf(id, eatenBy(recipe.acids));
  const brought = gramsOf(id, broughtBy(recipe.alkali));
  const above = eaten > 0 ? `(${number(brought, 1, style)} − ${number(eaten, 1, style)})` : number(brought, 1, style);
  return {
    name: 'superfat',
    asked: ['superfat', 'super fat', 'sf', 'left over', 'discount', 'fat left', 'verdict', 'excess', 'too much'],
    from: [
      'alkali with nothing left over',
      'alkali in the pot, pure',
      ...recipe.acids.map(({ acid }) => `alkali that the ${inSentence(acid.name)} takes first`),
    ],
    formula: `1 − ${eaten > 0 ? '(alkali − what acids take)' : 'alkali'} ÷ alkali with nothing left over`,
    inputs: [
      { name: 'alkali, pure', value: brought, unit: 'g' },
      ...(eaten > 0 ? [{ name: 'taken by acids', value: eaten, unit: 'g' }] : []),
      { name: 'alkali with nothing left over', value: need, unit: 'g' },
    ],
    value: superfat.nominal * 100,
    unit: '%',
    shown: `1 − ${above} ÷ ${number(need, 2, style)} = ${percent(superfat.nominal, style)}`,
    source: 'mass balance: the share of the fats’ demand that meets no alkali',
    range: 'Fat added after the cook is not in it.',
    sure: `${percentRange(superfat.low, superfat.high, style)} in 95 of 100 batches.`,
  };
}

/** What the spread comes from, each kind of thing once, the greatest part first; below one in a hundred nobody cares. */
function partsOf(recipe: Recipe, catalogue: Catalogue): readonly { readonly name: string; readonly share: number }[] {
  const parts = new Map<string, number>();
  for (const { source, id, share } of uncertaintyBudget(spreadOf(recipe, catalogue.fats))) {
    const what = nameOf(id, catalogue);
    const name =
      source === 'weighing' ? 'the scale' : source === 'purity' ? `how pure the ${what} is` : `the lot of ${what}`;
    parts.set(name, (parts.get(name) ?? 0) + share);
  }
  return [...parts]
    .map(([name, share]) => ({ name, share }))
    .filter(({ share }) => share >= 0.01)
    .sort((x, y) => y.share - x.share)
    .slice(0, 4);
}

function sureStep(recipe: Recipe, { superfat }: CheckFigures, catalogue: Catalogue, style: Style): Step {
  const main = partsOf(recipe, catalogue);
  return {
    name: 'range of the superfat',
    asked: [
      ...[
        'sure',
        'unsure',
        'certain',
        'uncertain',
        'range',
        'interval',
        'spread',
        'uncertainty',
        'chance',
        'risk',
        'accurate',
        'accuracy',
      ],
      ...['trust', 'likely', 'confident', 'reliable', 'exact', 'margin', 'differ'],
    ],
    formula: 'the superfat with each fat, the purity and each weighing anywhere in its range',
    inputs: main.map(({ name, share }) => ({ name, value: share * 100, unit: '%' })),
    value: (superfat.high - superfat.low) * 100,
    unit: '%',
    shown: `${percentRange(superfat.low, superfat.high, style)} in 95 of 100 batches; excess alkali is ${chance(superfat.chanceOfExcess)}`,
    source: 'JCGM 100:2008 4.3.7 (rectangular ranges) and 5.1; checked against the Monte Carlo method of JCGM 101',
    range: 'Slips of the hand and spilled grams are not in it.',
    ...(main.length > 0
      ? {
          sure: `What makes it unsure: ${listed(main.map(({ name, share }) => `${name} ${percent(share, style, 0)}`))}.`,
        }
      : {}),
  };
}

function neededStep(recipe: Recipe, { needed, demand }: CheckFigures, id: AlkaliId, style: Style): Step {
  const need = id === 'koh' ? demand.kohGrams : demand.naohGrams;
  const eaten = gramsOf(id, eatenBy(recipe.acids));
  const [only] = needed.atAsked;
  const pure = need * (1 - needed.asked) + eaten;
  const several = needed.atAsked.length > 1;
  const purity = only?.purity.nominal ?? 1;
  const value = several ? pure : pure / purity;
  const step = recipe.scaleStepGrams;
  return {
    name: `alkali for ${percent(needed.asked, style)} superfat`,
    asked: [
      'lye',
      'alkali',
      'naoh',
      'koh',
      'sodium hydroxide',
      'potassium hydroxide',
      'caustic',
      'hydroxide',
      'amount of lye',
    ],
    from: ['alkali with nothing left over'],
    formula: `(alkali with nothing left over × (1 − superfat)${eaten > 0 ? ' + what acids take' : ''}) ÷ purity, rounded down to the scale’s step`,
    inputs: [
      { name: 'alkali with nothing left over', value: need, unit: 'g' },
      { name: 'superfat', value: needed.asked * 100, unit: '%' },
      ...(eaten > 0 ? [{ name: 'taken by acids', value: eaten, unit: 'g' }] : []),
      { name: 'purity', value: purity * 100, unit: '%' },
    ],
    value,
    unit: 'g',
    shown: `${number(need, 1, style)} × ${number(1 - needed.asked, 3, style)}${eaten > 0 ? ` + ${number(eaten, 1, style)}` : ''}${purity === 1 || several ? '' : ` ÷ ${number(purity, 3, style)}`} = ${number(value, 1, style)} g${several ? ` as pure ${alkaliName[id]}, for both alkalis together` : `, so ${massAtMost(Math.floor(value / step + 1e-9) * step, style, step)} on a scale that shows ${mass(step, inGrams(style))}`}`,
    source: 'mass balance; rounded down so that rounding never lowers the superfat',
  };
}

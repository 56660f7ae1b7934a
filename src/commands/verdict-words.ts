/** The verdict in a beginner's words, and the lines that carry it. */
import type { CheckFigures } from '../engine/check.ts';
import type { Recipe } from '../engine/recipe.ts';
import { roundDown } from '../engine/scale-step.ts';
import { mass, massAtMost, massBoth, number, percent, percentRange, readMass, type Style } from '../units/print.ts';
import { alkaliAmounts, alkaliName, chance, listed } from './phrases.ts';

/** The alkalis of a recipe by name, and a verb that agrees with them. */
const alkalisOf = (recipe: Recipe): string =>
  listed([...new Set(recipe.alkali.filter(({ grams }) => grams > 0).map(({ id }) => id))].map((id) => alkaliName[id]));

const gramsOf = (alkali: readonly { readonly grams: number }[]): number =>
  alkali.reduce((sum, { grams }) => sum + grams, 0);

/** Alkali (g, as weighed) beyond what the fats and acids take; negative where fat is left over. */
const excessGrams = (recipe: Recipe, { needed }: CheckFigures): number =>
  gramsOf(recipe.alkali) - gramsOf(needed.atZero);

/** "These fats need", "this fat needs". */
const isOne = ({ fats }: Recipe): boolean => fats.length === 1;

/** How far from the superfat asked, in words; points of per cent. */
function compared(superfat: number, asked: number, isUsual: boolean, style: Style): string {
  const gap = Math.round((superfat - asked) * 1000) / 10;
  const what = `${isUsual ? 'the usual' : 'the'} ${percent(asked, style)}${isUsual ? '' : ' you want'}`;
  if (Math.abs(gap) < 0.6) return `close to ${what}`;
  const much = Math.abs(gap) < 4 ? 'a little ' : '';
  return `${much}${gap > 0 ? 'more' : 'less'} than ${what}`;
}

/** It comes to what was asked, to half a point of per cent. */
const isAsFor = ({ superfat, needed }: CheckFigures): boolean => Math.abs(superfat.nominal - needed.asked) < 0.006;

/** Times the batch that a scale would weigh well: above this the scale decides everything. */
export const hopeless = 20;

/** Water that is there, and too little. */
export const isUndissolved = ({ waterGrams, dissolving }: CheckFigures['lye']): boolean =>
  waterGrams > 0 && (dissolving === 'will-not-dissolve' || dissolving === 'below-floor');

/** One sentence: what it means for the person. */
export function leadOf(recipe: Recipe, figures: CheckFigures, isUsual: boolean, style: Style): string {
  const { lye, verdict, scale } = figures;
  if (scale.leastFactor > hopeless) {
    const step = mass(recipe.scaleStepGrams, { ...style, massUnit: 'g' });
    return `This batch is too small for a scale that shows ${step}: use a finer one (say step=0.01g), or make ${number(Math.ceil(scale.leastFactor), 0, style)} times as much.`;
  }
  const verdictSaid = verdictLead(recipe, figures, isUsual, style);
  const undissolved =
    lye.waterGrams > 0 && (lye.dissolving === 'will-not-dissolve' || lye.dissolving === 'below-floor');
  return undissolved && verdict !== 'excess-alkali'
    ? verdictSaid.replace(/\.$/, ', but the water is too little to dissolve it.')
    : verdictSaid;
}

function verdictLead(recipe: Recipe, figures: CheckFigures, isUsual: boolean, style: Style): string {
  const { superfat, verdict, needed } = figures;
  const left = percent(superfat.nominal, style);
  switch (verdict) {
    case 'excess-alkali': {
      const extra = massAtMostPlain(excessGrams(recipe, figures), recipe, style);
      if (superfat.nominal < -0.1) return 'Far too much alkali: this soap would burn skin. Don’t mix it.';
      return `Too much alkali: about ${extra} more than ${isOne(recipe) ? 'this fat' : 'these fats'} can take up. Don’t mix it like this.`;
    }
    case 'thin-margin':
      return `Tight: about ${left} of the fat should be left over (superfat), but excess alkali is ${chance(superfat.chanceOfExcess)}.`;
    case 'usual':
      return `Your ${alkalisOf(recipe)} fits: about ${left} of the fat is left over (superfat), ${compared(superfat.nominal, needed.asked, isUsual, style)}.`;
    case 'fat-rich':
      return `Rich: about ${left} of the fat is left over (superfat), ${compared(superfat.nominal, needed.asked, isUsual, style)}; the bar is milder but softer.`;
    case 'alkali-short':
      if (superfat.nominal >= 1)
        return 'The acid takes all the alkali: none is left for the fat, and no soap comes of it.';
      if (!isUsual && isAsFor(figures))
        return `Very rich: about ${left} of the fat is left over (superfat), ${compared(superfat.nominal, needed.asked, isUsual, style)}; such a bar may be soft, greasy and soon rancid.`;
      return `Too little alkali: about ${left} of the fat would be left over, and the bar soft, greasy and soon rancid.`;
  }
}

const massAtMostPlain = (grams: number, recipe: Recipe, style: Style): string =>
  mass(grams, style, recipe.scaleStepGrams);

/** Yours against needed, at nothing left over and at the superfat asked. */
export function needLine(recipe: Recipe, figures: CheckFigures, style: Style): string {
  const { needed, verdict } = figures;
  const step = recipe.scaleStepGrams;
  const have = alkaliAmounts(recipe.alkali, (grams) =>
    style.massUnit === 'g' ? readMass(grams, style) : massBoth(grams, style, step),
  );
  const several = recipe.alkali.filter(({ grams }) => grams > 0).length > 1;
  const zero = listed(needed.atZero.map(({ grams }) => mass(grams, style, step)));
  const asked = listed(needed.atAsked.map(({ grams }) => massAtMost(roundDown(grams, step), style, step)));
  // what was read says it again; beside a fault or in ounces it stands here, to be compared
  const mine = verdict === 'usual' && style.massUnit === 'g' && !several ? '' : `You have ${have}. `;
  const ofThem = several ? ' of them' : mine === '' ? ' of it' : '';
  return `${mine}${isOne(recipe) ? 'This fat needs' : 'These fats need'} about ${zero}${ofThem} for nothing left over${
    needed.asked > 0 && needed.atAsked.every(({ grams }) => grams >= step)
      ? `, ${asked} to leave at least ${percent(needed.asked, style)}`
      : ''
  }.`;
}

/** The interval of the superfat in words and figures. */
export function spreadLine(recipe: Recipe, figures: CheckFigures, style: Style): string | null {
  const { superfat, demandEnds, needed, verdict } = figures;
  if (superfat.nominal >= 1 || figures.scale.leastFactor > hopeless) return null;
  if (verdict === 'excess-alkali') {
    const most = gramsOf(needed.atZero) * demandEnds.high;
    const free = gramsOf(recipe.alkali) - most;
    const print = (grams: number): string => mass(grams, style, recipe.scaleStepGrams);
    return free > 0
      ? `Even if ${isOne(recipe) ? 'this fat is the most demanding of its' : 'these fats are the most demanding of their'} kind (${print(most)}), about ${print(free)} would stay free.`
      : `Fats differ from lot to lot: with luck ${isOne(recipe) ? 'this takes' : 'these take'} it all up (to ${print(most)}), but excess alkali is ${chance(superfat.chanceOfExcess)}.`;
  }
  const range =
    superfat.low < 0
      ? `between ${percent(-superfat.low, style)} too much alkali and ${percent(superfat.high, style)} fat left over`
      : `${percentRange(superfat.low, superfat.high, style)} left over`;
  const tail = verdict !== 'usual' ? '' : ` Excess alkali is ${chance(superfat.chanceOfExcess)}.`;
  return `Fats differ from lot to lot: expect ${range}.${tail}`;
}

const dissolvingWords: Readonly<Record<CheckFigures['lye']['dissolving'], string>> = {
  'will-not-dissolve': 'too little water, it will not all dissolve',
  'below-floor': 'too little water to dissolve it surely',
  strong: 'strong, it dissolves but gets very hot',
  usual: 'fine to dissolve',
  weak: 'thin, it dissolves easily and the soap sets slowly',
};

export function waterLine({ lye }: CheckFigures, style: Style): string {
  const ratio = number(lye.ratio, 2, style);
  return `Lye solution ${percent(lye.concentration, style)}, ${ratio} g water to 1 g alkali: ${dissolvingWords[lye.dissolving]}.`;
}

/** Fat that was kept for after the cook. */
export function afterLine(recipe: Recipe, { superfat }: CheckFigures, style: Style): string | null {
  if (recipe.after.length === 0) return null;
  return `With the fat added after the cook: ${percent(superfat.withAfter, style)} left over in the bar.`;
}

/** The other alkali, where the amount fits that one. */
export function mixUpLine({ mixUp }: CheckFigures, style: Style): string | null {
  if (!mixUp) return null;
  const purity = mixUp.purity === 1 ? 'pure' : percent(mixUp.purity, style);
  return `Is it ${alkaliName[mixUp.meant]}? As that, ${purity}, this amount would leave ${percent(mixUp.superfat, style)} of the fat: look at the label.`;
}

/** What to do now. */
export function nextLine(recipe: Recipe, figures: CheckFigures, dry: boolean, style: Style): string | null {
  const { verdict, needed, mixUp, superfat, lye } = figures;
  if (superfat.nominal >= 1 || figures.scale.leastFactor > hopeless) return null;
  const step = recipe.scaleStepGrams;
  const weighed = () => needed.atAsked.reduce((sum, { grams }) => sum + roundDown(grams, step), 0);
  const instead = () => alkaliAmounts(needed.atAsked, (grams) => massAtMost(roundDown(grams, step), style, step));
  if (mixUp)
    return verdict === 'excess-alkali'
      ? `If it is not, weigh ${instead()} instead. Already mixed? Gloves on, and don’t use it.`
      : null;
  switch (verdict) {
    case 'excess-alkali': {
      const fats = gramsOf(recipe.fats) * (gramsOf(recipe.alkali) / gramsOf(needed.atAsked) - 1);
      return `Weigh ${instead()} instead. Already mixed? Gloves on, and don’t use it: it needs about ${mass(fats, style, step)} more of ${isOne(recipe) ? 'this fat' : 'these fats'}, and another cook.`;
    }
    case 'thin-margin': {
      // as much more superfat as the low end of the interval lies under nothing
      const target = Math.max(needed.asked, superfat.nominal - Math.min(0, superfat.low));
      const factor = (1 - target) / (1 - needed.asked);
      const less = alkaliAmounts(needed.atAsked, (grams) => massAtMost(roundDown(grams * factor, step), style, step));
      const varies = superfat.nominal >= needed.asked && !figures.scale.tooCoarse;
      return `For a margin weigh ${less}${varies ? '; or ask the supplier for the saponification value of your lot' : ''}.`;
    }
    case 'fat-rich':
    case 'alkali-short':
      if (isAsFor(figures) || gramsOf(recipe.alkali) === weighed())
        return dry || isUndissolved(lye) ? null : `Nothing to change for ${percent(needed.asked, style)}.`;
      return `For ${percent(needed.asked, style)} weigh ${instead()}.`;
    case 'usual':
      if (dry || isUndissolved(lye)) return null;
      return superfat.nominal - needed.asked < 0.012 || gramsOf(recipe.alkali) === weighed()
        ? 'Nothing to change: weigh it out as written.'
        : `Nothing to change, unless you want ${percent(needed.asked, style)}.`;
  }
}

/** What of the conversation an answer rests on, in words. */
import type { Catalogue } from '../../catalogue/types.ts';
import { styleFor } from '../../commands/check.ts';
import { clockTime } from '../../commands/clock.ts';
import type { Context } from '../../commands/define.ts';
import { alkaliName, listed, nameOf } from '../../commands/phrases.ts';
import type { Change } from '../../reading/amend/amend.ts';
import type { Meaning } from '../../reading/words/lexicon.ts';
import { number, percent, readMass, type Style } from '../../units/print.ts';
import type { RecipeTurn } from './store.ts';

const nameIn = ({ kind, id }: Meaning, catalogue: Catalogue): string =>
  kind === 'alkali' ? alkaliName[id as 'naoh' | 'koh'] : kind === 'water' ? 'water' : nameOf(id, catalogue);

function changeWords(change: Change, { catalogue }: Context, style: Style): string {
  const grams = (value: number): string => readMass(value, style);
  switch (change.kind) {
    case 'superfat':
      return `at ${percent(change.value, style)} superfat`;
    case 'concentration':
      return `as a ${percent(change.value, style)} lye solution`;
    case 'ratio':
      return `with ${number(change.value, 2, style)} g water to 1 g alkali`;
    case 'water-share':
      return `with water of ${percent(change.value, style)} of the fats`;
    case 'step':
      return `for a scale that shows ${grams(change.value)}`;
    case 'purity':
      return `with ${change.of ? alkaliName[change.of] : 'the alkali'} ${percent(change.purity.nominal, style)} pure`;
    case 'alkali':
      return `with ${alkaliName[change.id]}`;
    case 'unit':
      return change.unit === 'oz' ? 'in ounces' : 'in grams';
    case 'set':
      return `with ${change.said.match(/[a-z]/i) ? change.said : grams(change.grams)} ${nameIn(change.of, catalogue)}`;
    case 'add':
      return `with ${grams(Math.abs(change.grams))} ${change.grams < 0 ? 'less ' : change.known ? 'more ' : ''}${nameIn(change.of, catalogue)}${change.known ? '' : ' added'}${change.after ? ' after the cook' : ''}`;
    case 'remove':
      return `without ${nameIn(change.of, catalogue)}`;
    case 'swap':
      return `with ${nameIn(change.to, catalogue)} for ${nameIn(change.from, catalogue)}`;
  }
}

export function correctedLine({ at, kept }: RecipeTurn, changes: readonly Change[], context: Context): string {
  const { zone } = context;
  const style = styleFor(kept.reading, undefined, context);
  const words = changes.map((change) => changeWords(change, context, style));
  // "with … and with …" is one with too many
  const after = (word: string, k: number): string =>
    k > 0 && words[k - 1]?.startsWith('with ') ? word.replace(/^with /, '') : word;
  return `I took your recipe from ${clockTime(at, zone)}, ${listed(words.map(after))}.`;
}

const clipped = (text: string): string => {
  const line = text.trim().replace(/\s+/g, ' ');
  return line.length <= 60 ? line : `${line.slice(0, 59)}…`;
};

export const completedLine = (at: number, answer: string, { zone }: Context): string =>
  `I took your question from ${clockTime(at, zone)}, with "${clipped(answer)}".`;

export const askedAgainLine = (at: number, text: string, { zone }: Context): string =>
  `I took your question from ${clockTime(at, zone)} again: "${clipped(text)}".`;

/** The recipe itself, so that a slip shows. */
export function recipeLine(
  at: number,
  recipe: NonNullable<Context['last']['recipe']>['recipe'],
  { catalogue, zone }: Context,
  style: Style,
): string {
  const one = (id: string, grams: number): string => `${nameOf(id, catalogue)} ${readMass(grams, style)}`;
  const parts = [
    ...recipe.fats.map(({ fat, grams }) => one(fat.id, grams)),
    ...recipe.alkali.map(({ id, grams }) => `${readMass(grams, style)} ${alkaliName[id]}`),
    ...(recipe.waterGrams > 0 ? [`water ${readMass(recipe.waterGrams, style)}`] : []),
    ...recipe.liquids.map(({ liquid, grams }) => one(liquid.id, grams)),
  ];
  return `I took your recipe from ${clockTime(at, zone)}: ${listed(parts)}.`;
}

export const optionsLine = (at: number, text: string, { zone }: Context): string =>
  `I took your recipe from ${clockTime(at, zone)}, with ${clipped(text)}.`;

export const againLine = (at: number, { zone }: Context): string => `I took your recipe from ${clockTime(at, zone)}.`;

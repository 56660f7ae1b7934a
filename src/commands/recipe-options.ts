/** Options that every command about a recipe takes. */
import type { OptionTable } from './options.ts';

export const recipeOptions = {
  superfat: {
    kind: 'share',
    about: 'the share of the fat that shall be left over',
    example: 'superfat=8',
    // what lies outside 0 to 99 % is refused with its own words
    low: -10,
    high: 10,
    inText: true,
  },
  purity: {
    kind: 'share',
    about: 'how pure the alkali is, from its label',
    example: 'purity=90%',
    low: 0.5,
    high: 1,
    inText: true,
  },
  step: {
    kind: 'mass',
    about: 'the smallest step that the scale shows',
    example: 'step=0.1g',
    low: 0.001,
    high: 100,
  },
  unit: {
    kind: 'choice',
    about: 'the unit of the answer',
    example: 'unit=oz',
    choices: { g: 'g', gram: 'g', grams: 'g', oz: 'oz', ounce: 'oz', ounces: 'oz' },
  },
} as const satisfies OptionTable;

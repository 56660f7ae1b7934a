import type { Action } from '../answer/types.ts';

/** What comes next after a recipe: how hot its lye gets, and the cook. Both go on with the recipe before. */
export const heatSteps: readonly Action[] = [
  { label: 'how hot the lye gets', request: 'solution' },
  { label: 'hot process', request: 'cook' },
];

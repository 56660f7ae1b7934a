import type { Action } from '../answer/types.ts';

/** What comes next after a recipe: how hot its lye gets, the cook, another size, a text to post. All go on with it. */
export const nextSteps: readonly Action[] = [
  { label: 'how hot the lye gets', request: 'solution' },
  { label: 'hot process', request: 'cook' },
  { label: 'another size', request: 'scale' },
  { label: 'to post', request: 'summary' },
];

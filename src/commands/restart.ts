import { defineCommand, nothingMore } from './define.ts';
import { recipeBehind } from './recipe-behind.ts';

export const restart = defineCommand({
  id: 'restart',
  summary: 'Start over: I forget your last recipe.',
  risk: 'plain',
  options: {},
  isIngredient: recipeBehind,
  forgets: true,
  examples: [{ say: 'restart', about: 'forget what was said before; "start over" does the same' }],
  run: () => ({
    ok: true,
    value: {
      title: 'Start over',
      lead: 'Forgotten. Paste a recipe, or ask.',
      ...nothingMore,
      result: {},
    },
  }),
});

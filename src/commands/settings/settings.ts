import { defineKeepingCommand } from '../define.ts';
import { recipeBehind } from '../recipe-behind.ts';

export const settings = defineKeepingCommand({
  id: 'settings',
  summary: 'What I take where you say nothing: scale, units, superfat, room …',
  risk: 'plain',
  options: {},
  isIngredient: recipeBehind,
  examples: [
    { say: 'settings scale 0.1 g, superfat 8 %, temperatures in °F', about: 'taken from then on, and named when used' },
    { say: 'settings', about: 'what is set' },
    { say: 'settings forget superfat', about: 'back to the usual' },
  ],
  // Read when somebody asks: most questions keep nothing.
  run: async (request, context, memory) => (await import('./run.ts')).run(request, context, memory),
});

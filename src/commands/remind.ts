import { defineKeepingCommand } from './define.ts';

export const remind = defineKeepingCommand({
  id: 'remind',
  summary: 'Tells you something later, here: set, list, cancel, move.',
  risk: 'plain',
  options: {},
  examples: [
    { say: 'remind me to turn the bars in 3 days', about: 'sets one' },
    { say: 'remind tomorrow at 9:00: cut the loaf', about: 'at a time of day' },
    { say: 'remind list', about: 'what is still to come' },
  ],
  // Read when somebody asks: most questions keep nothing.
  run: async (request, context, memory) => (await import('./remind/run.ts')).run(request, context, memory),
});

import { defineKeepingCommand } from '../define.ts';

export const privacy = defineKeepingCommand({
  id: 'privacy',
  summary: 'What I keep of you, why and how long; all of it exported, deleted, or joined with another account.',
  risk: 'plain',
  options: {
    confirm: {
      kind: 'choice',
      about: 'yes to what I would ask back: to delete, to unlink',
      example: 'confirm=yes',
      choices: { yes: 'yes' },
    },
  },
  examples: [
    { say: 'privacy', about: 'what is kept, why and how long' },
    { say: 'privacy export', about: 'all of yours in one file' },
    { say: 'privacy delete confirm=yes', about: 'all of yours gone for good; asked back without the last word' },
    { say: 'privacy link', about: 'a code that joins your account on another platform to this one' },
  ],
  // Read when somebody asks: most questions keep nothing.
  run: async (request, context, memory) => (await import('./run.ts')).run(request, context, memory),
});

import { defineKeepingCommand } from '../define.ts';
import { recipeOptions } from '../recipe-options.ts';
import { wishIn } from './request.ts';

const options = {
  ...recipeOptions,
  confirm: {
    kind: 'choice',
    about: 'yes to what I would ask back: to replace, to delete',
    example: 'confirm=yes',
    choices: { yes: 'yes' },
  },
} as const;

export const recipe = defineKeepingCommand({
  id: 'recipe',
  summary: 'Your recipes, kept: save, list, show, rename, copy, share, delete, compare, export, import.',
  risk: 'caustic',
  options,
  examples: [
    {
      say: 'recipe save Everyday bar: 450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water',
      about: 'keep a recipe; after a check "save this as Everyday bar" does the same',
    },
    { say: 'recipe list', about: 'what is kept' },
    { say: 'recipe show Everyday bar', about: 'its amounts; what you ask next is about it' },
    {
      say: 'recipe save Rich bar: 500 g olive oil, 200 g coconut oil, 100 g shea butter, 105 g NaOH, 230 g water',
      about: 'a second one',
    },
    { say: 'recipe compare Everyday bar and Rich bar', about: 'side by side' },
    { say: 'recipe rename Rich bar to Shea bar', about: 'another name' },
    { say: 'recipe share Shea bar', about: 'a copy for this room; "recipe unshare" takes it back' },
    { say: 'recipe export Shea bar', about: 'as JSON, CSV and plain text; "recipe import" reads them' },
  ],
  suggest: async (text, memory) => (await import('./suggest.ts')).suggest(text, memory),
  // "Recipe: 500 g lard …" is the head of a post, and no request
  isIngredient: (_text, rest) => wishIn(rest.replace(/^(?:\s*[a-z]+=\S+)+/i, '')) === null,
  // Read when somebody asks: most questions keep nothing.
  run: async (request, context, memory) => (await import('./run.ts')).run(request, context, memory),
});

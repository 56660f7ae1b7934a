import type { Result } from '../../answer/types.ts';
import { defineKeepingCommand, type Refusal, type Said } from '../define.ts';
import { recipeOptions } from '../recipe-options.ts';
import { list } from './list.ts';
import { wishIn } from './request.ts';
import { save } from './save.ts';
import { show } from './show.ts';

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
  summary: 'Your recipes, kept: save, list, show.',
  risk: 'caustic',
  options,
  examples: [
    {
      say: 'recipe save Everyday bar: 450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water',
      about: 'keep a recipe; after a check "save this as Everyday bar" does the same',
    },
    { say: 'recipe list', about: 'what is kept' },
  ],
  // "Recipe: 500 g lard …" is the head of a post, and no request
  isIngredient: (_text, rest) => wishIn(rest) === null,
  run: async ({ text, options: given }, context, memory): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> => {
    const wish = wishIn(text) ?? { do: 'list' };
    switch (wish.do) {
      case 'list':
        return list(context, memory);
      case 'save':
        return save(wish, given, text, context, memory);
      case 'show':
        return show(wish.name, given, context, memory);
    }
  },
});

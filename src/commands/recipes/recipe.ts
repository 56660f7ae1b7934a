import type { Result } from '../../answer/types.ts';
import { defineKeepingCommand, type Refusal, type Said } from '../define.ts';
import { recipeOptions } from '../recipe-options.ts';
import { copy, remove, rename, share, unshare } from './change.ts';
import { compare } from './compare.ts';
import { exported } from './export.ts';
import { imported } from './import.ts';
import { list } from './list.ts';
import { wishIn } from './request.ts';
import { save } from './save.ts';
import { show } from './show.ts';
import { suggest } from './suggest.ts';

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
  suggest,
  // "Recipe: 500 g lard …" is the head of a post, and no request
  isIngredient: (_text, rest) => wishIn(rest.replace(/^(?:\s*[a-z]+=\S+)+/i, '')) === null,
  run: async ({ text, options: given }, context, memory): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> => {
    const wish = wishIn(text) ?? { do: 'list' };
    switch (wish.do) {
      case 'list':
        return list(context, memory);
      case 'save':
        return save(wish, given, text, context, memory);
      case 'show':
        return show(wish.name, given, context, memory);
      case 'rename':
        return rename(wish, memory);
      case 'copy':
        return copy(wish, memory);
      case 'share':
        return share(wish, given, text, memory);
      case 'unshare':
        return unshare(wish, memory);
      case 'delete':
        return remove(wish, given, text, memory);
      case 'compare':
        return compare(wish, context, memory);
      case 'export':
        return exported(wish, context, memory);
      case 'import':
        return imported(wish, given, text, context, memory);
    }
  },
});

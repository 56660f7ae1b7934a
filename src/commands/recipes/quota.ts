/** How much one person, or one room, may keep; nothing is counted where no quota is set. */
import { wayToAid } from '../cautions.ts';
import type { Memory, Quota, Refusal } from '../define.ts';

/** The refusal where nothing more fits; null where it does. */
export async function tooMany(
  what: 'recipes' | 'shared',
  { quota, own, room }: Memory,
  more = 1,
): Promise<Refusal<'caustic'> | null> {
  const most: Quota['recipes'] | undefined = quota?.[what];
  if (most === undefined) return null;
  const count = await (what === 'recipes' ? own : room).count('recipe');
  if (count + more <= most) return null;
  return {
    code: 'refused',
    message:
      what === 'recipes'
        ? `I keep up to ${most} recipes for one person, and you have ${count}.`
        : `A room holds up to ${most} shared recipes, and this one has ${count}.`,
    hint:
      what === 'recipes'
        ? 'Delete one with "recipe delete NAME"; "recipe export" gives you all of them to keep.'
        : 'Somebody can take one back with "recipe unshare NAME".',
    candidates: ['recipe list'],
    caution: [wayToAid],
  };
}

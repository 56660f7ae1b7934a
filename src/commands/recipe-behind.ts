import type { Context } from './define.ts';

/** A whole recipe behind the word of a command that takes none ("Report from the kitchen: 500 g lard, …"): no request. */
export function recipeBehind(_text: string, rest: string, { read }: Context): boolean {
  if ((rest.match(/\d+/g) ?? []).length < 2) return false;
  const { fats, alkali } = read(rest);
  return fats.length > 0 && alkali.length > 0;
}

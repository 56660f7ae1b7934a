/** Which of the recipes of a post it asks about. */
import { type Act, which } from './acts.ts';
import { type Called, calledIn } from './called.ts';
import { heardOf, type Said } from './heard.ts';
import type { Part } from './parted.ts';

export interface Choice {
  readonly part: number;
  /** Clauses that speak of the others alone. */
  readonly beside: readonly Part[];
  /** Marks that are no figure of the recipe: those over its list, and those by which a sentence calls one. */
  readonly marks: readonly (Part & { readonly isTitle: boolean })[];
  readonly called: readonly Called[];
}

/** The one of these that is meant: the only one that is chosen, or that is not refused. */
function only(count: number, chosen: ReadonlySet<number>, refused: ReadonlySet<number>): number | null {
  const left = [...Array(count).keys()].filter((k) => (chosen.size > 0 ? chosen.has(k) : true) && !refused.has(k));
  if ([...chosen].some((k) => refused.has(k)) || (chosen.size === 0 && refused.size === 0)) return null;
  return left.length === 1 ? (left[0] ?? null) : null;
}

/** The recipe that all of the post's questions are about; null where it tells none, or more than one. */
export function chosenIn(post: string, parts: readonly Part[], isTold: boolean): Choice | null {
  if (parts.length < 2) return null;
  const all = calledIn(post, parts);
  const { said, isOfAll } = heardOf(post, all);
  if (isOfAll) return null;
  const of = (...acts: readonly Act[]): ReadonlySet<number> =>
    new Set(
      said.filter(({ act }) => act && acts.includes(act)).flatMap(({ mentions }) => mentions.map(({ part }) => part)),
    );
  const [chosen, refused] = [of('choose'), of('refuse')];
  let part = only(all.length, chosen, refused);
  if (part === null && chosen.size === 0 && isTold && !which.test(post)) {
    part = only(all.length, of('lean'), of('refuse', 'done'));
    const fresh = all.flatMap(({ age }, k) => (age === 'new' ? [k] : []));
    const [newest] = fresh;
    if (part === null && fresh.length === 1 && newest !== undefined && all.every(({ age }) => age !== null))
      part = refused.has(newest) ? null : newest;
  }
  if (part === null) return null;
  const isOfOthers = ({ mentions }: Said): boolean => mentions.length > 0 && mentions.every((one) => one.part !== part);
  const first = all[part]?.first ?? 0;
  const start = all[part]?.from ?? 0;
  const marks = said
    .flatMap(({ mentions }) => mentions.filter(({ isMark }) => isMark))
    .map(({ from, to }) => ({ from, to, isTitle: from >= start && from < first }));
  return { part, beside: said.filter((one) => one.act !== null && isOfOthers(one)), marks, called: all };
}

/** Which of the recipes of a post it asks about. */
import { type Act, which } from './acts.ts';
import { type Called, calledIn } from './called.ts';
import { heardOf, type Said } from './heard.ts';
import { madeOf } from './made-of.ts';
import type { Part } from './parted.ts';
import { noun } from './whose.ts';

/** `asked`: only what a question calls is meant. */
export type How = 'told' | 'asked' | 'spoken';

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

/** It asks about some recipe, and nobody knows which: "check my gf her one". */
const isUnheard = (post: string, { act, mentions, from, to }: Said, all: readonly Called[]): boolean =>
  act === 'choose' && mentions.length === 0 && from >= (all[0]?.last ?? 0) && calls().test(post.slice(from, to));
const whose =
  /(?:^|[.?!;\n]\s*)(?:(?:so|and|but|ok|now) )*(?:which|whose|who)(?:['’]?s| is| one| recipe| of| batch)\b|\bwhat(?:['’]?s| is) the difference\b/i;
let calling: RegExp | null = null;
const calls = (): RegExp => {
  calling ??= new RegExp(
    `(?<!\\p{L})(?:hers|his|theirs|mine|ours|(?:my|our|her|his|their|the) [\\p{L}\\d]+ ${noun}|(?:my|our) \\p{L}+['’]?s(?!\\p{L})|\\p{L}+['’]s (?:lye|${noun}))`,
    'iu',
  );
  return calling;
};

/** "I'm going to make one of these tonight", and nobody says which. */
const oneOf =
  /\b(?:mak(?:e|ing)|made|try(?:ing)?|tried|do(?:ing)?|did|cook(?:ed|ing)?|mix(?:ed|ing)?|pour(?:ed|ing)?|tak(?:e|ing)|took|us(?:e|ed|ing)|go(?:ing)? with|went with|follow(?:ed|ing)?|pick(?:ed|ing)?|cho(?:ose|se)|have|start(?:ed|ing)? with) (?:just |only |up )*(?:one|either|any)(?: one)? of (?:these|those|them|yours|both|the(?:se)? (?:two|three|2|3)(?: recipes| lists)?|(?:the|your|those|these) (?:two )?(?:recipes|lists)|the above)(?! (?!tonight|today|tomorrow|now|then|soon|later|this|on|in|at|next|for|but|and|so|because|as|with|first|,)\p{L})/iu;

/** It is one of them, and what is said behind chooses none. */
function isAnyOfThem(post: string, said: readonly Said[], all: readonly Called[]): boolean {
  const found = oneOf.exec(post.slice(Math.max(...all.map(({ last }) => last))));
  if (!found) return false;
  const from = Math.max(...all.map(({ last }) => last)) + found.index;
  return !said.some(({ act, mentions, to }) => act !== 'refuse' && mentions.length > 0 && to > from);
}

/**
 * The recipe that all of the post's questions are about; null where it tells none, or more than one: `open` where it is
 * sure that nobody can know which.
 */
export function chosenIn(post: string, parts: readonly Part[], how: How): Choice | 'open' | null {
  if (parts.length < 2) return null;
  const all = calledIn(post, parts);
  const { said, isOfAll } = heardOf(post, all);
  const isSpoken = how === 'spoken';
  if (isOfAll) return isSpoken ? 'open' : null;
  if (how !== 'asked' && isAnyOfThem(post, said, all)) return 'open';
  const of = (...acts: readonly Act[]): ReadonlySet<number> =>
    new Set(
      said.filter(({ act }) => act && acts.includes(act)).flatMap(({ mentions }) => mentions.map(({ part }) => part)),
    );
  const [chosen, refused] = [of('choose'), of('refuse')];
  let part = only(all.length, chosen, refused);
  if (isSpoken) {
    const isOpen = part === null && (chosen.size + refused.size > 0 || whose.test(post));
    if (isOpen || said.some((one) => isUnheard(post, one, all))) return 'open';
    const leaning = of('lean');
    if (part === null && !which.test(post))
      part = madeOf(post, all, refused) ?? (leaning.size > 0 ? only(all.length, leaning, of('refuse', 'done')) : null);
    const isTold =
      ['mine', 'theirs'].every((own) => all.some((one) => one.own === own)) || all.every(({ mark }) => mark !== null);
    if (part === null && isTold) return 'open';
  } else if (part === null && chosen.size === 0 && how === 'told' && !which.test(post)) {
    part = only(all.length, of('lean'), of('refuse', 'done'));
    const fresh = all.flatMap(({ age }, k) => (age === 'new' ? [k] : []));
    const [newest] = fresh;
    if (part === null && fresh.length === 1 && newest !== undefined && all.every(({ age }) => age !== null))
      part = refused.has(newest) ? null : newest;
  }
  if (part === null) return null;
  const isOfOthers = ({ mentions }: Said): boolean => mentions.length > 0 && mentions.every((one) => one.part !== part);
  // "hers has 8 % superfat", said behind the lists
  const isBehind = ({ from }: Said): boolean => isSpoken && from >= Math.max(...parts.map((one) => one.to));
  const first = all[part]?.first ?? 0;
  const start = all[part]?.from ?? 0;
  const marks = said
    .flatMap(({ mentions }) => mentions.filter(({ isMark }) => isMark))
    .map(({ from, to }) => ({ from, to, isTitle: from >= start && from < first }));
  const beside = said.filter((one) => (one.act !== null || isBehind(one)) && isOfOthers(one));
  return { part, beside, marks, called: all };
}

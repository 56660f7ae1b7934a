/** Which recipe of running text was made of the others, or is of now: "aunt's is …. I doubled it, so it's now …". */
import type { Called } from './called.ts';
import { isMultiple } from './echoed.ts';

const derived =
  /\b(?:half|halving|double|doubling|halved|doubled|tripled|trebled|twice (?:the|that|this|it|as)|quadrupled|scaled|(?:times|x) ?\d|so (?:now )?(?:it['’]?s|it is|that['’]?s)|(?:now|which) (?:makes|is)|changed|adapted|tweaked|adjusted|upped|multiplied|so (?:i|we)|(?:i|we) only (?:had|have|got))\b/i;
const ofPaper = /\b(?:book|notebook|binder|folder|card|website|site|blog|video|original|recipe from|online)\b/i;
const ofNow = /\b(?:now|today|tonight|this (?:time|week|weekend|morning|evening)|current|new|newer|latest)\b/i;

/** The one that was made of all the others, or that alone is of now. */
export function madeOf(post: string, all: readonly Called[], refused: ReadonlySet<number>): number | null {
  const headOf = ({ from, first }: Called): string => post.slice(from, first);
  const isOld = (one: Called): boolean => one.age === 'old' && !derived.test(headOf(one));
  const isOthers = (one: Called): boolean =>
    isOld(one) || (one.age === null && (one.own === 'theirs' || ofPaper.test(headOf(one))));
  // "mum's makes 6 bars: …. I want 12, so …"
  const isScaled = (one: Called): boolean =>
    one.own === 'mine' &&
    all.every((of) => of === one || (of.spoken && one.spoken && isMultiple(one.spoken, of.spoken)));
  const isMade = (one: Called): boolean => one.own !== 'theirs' && (derived.test(headOf(one)) || isScaled(one));
  const made = all.flatMap((one, k) => (isMade(one) ? [k] : []));
  const fresh = all.flatMap((one, k) =>
    one.age === 'new' && one.own !== 'theirs' && ofNow.test(headOf(one)) ? [k] : [],
  );
  for (const [list, isOther] of [
    [made, isOthers],
    [fresh, isOld],
  ] as const) {
    const [one] = list;
    if (
      one !== undefined &&
      list.length === 1 &&
      !refused.has(one) &&
      all.every((other, k) => k === one || isOther(other))
    )
      return one;
  }
  return null;
}

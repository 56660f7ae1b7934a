/**
 * A fat that is told apart from the size of the rest: "doubled everything, except that there was only enough castor for
 * the 30, so that stayed as it was", "halved the lot, but of coconut I took 90 g". It is as it is told, whatever the rest
 * is taken times.
 */
import { deed, weight, weightOf } from './told-anew.ts';

/** Its id, by the word that names it; null where that names no fat. */
export type FatOf = (words: string) => string | null;

export interface FatApart {
  readonly id: string;
  /** Null for as much as the list has. */
  readonly grams: number | null;
  /** The words that say it. */
  readonly said: string;
}

const but = '(?:except|but not|apart from|other than|all but|save|bar|but|only|just not)';
const fat = '(?:the |my |any )?(?<fat>[a-z]+(?: (?:kernel|seed))?(?: (?:oil|butter))?)';
const same =
  '(?:(?:it|that|just|only|at) )*(?:as (?:it|they|that) (?:was|were|is|are|stands|stood)|as (?:written|listed|is|before)|the same|unchanged|alone|(?:at )?the (?:single|old|original|listed|full) (?:amount|weight|dose|figure|one))';
const stays =
  '(?:(?:i|we|it|that|which|was|is|just|only|simply|have|has) )*(?:left|kept|keep|leave|stayed|stays|remained|remains)';
const told: readonly RegExp[] = [
  // "but the castor I left at 30 g", "only of coconut I took 90 g", "except the castor, which stayed at 30 g"
  `,? ?\\b(?:and |though |while )?${but}(?: that)?(?: for| of| with)? ${fat},?(?: (?:which|that|where))? ${deed} ${weight}`,
  // "but as I only had 250 g of sunflower, that is what went in", "but was short on sunflower, so just 250 g of that"
  `,? ?\\b(?:but|only),? (?:(?:as|because|since|that) )?(?:i|we) (?:only |just )?had (?:only |just )?${weight} (?:of )?${fat}(?: left)?,? (?:and |so )?(?:(?:that|it)(?:['’]s| is| was)? (?:all )?(?:(?:that|what) )?(?:went|i (?:put|used|took)|is)(?: in)?(?: of it)?|i (?:used|took|put)(?: in)? (?:that|those|just that|it))`,
  `,? ?\\b(?:but|only),? (?:i |we )?(?:was|were) short (?:on|of) ${fat},? so (?:it(?:['’]s| is| was| got) )?(?:i |we )?(?:${deed} )?${weight} (?:of (?:that|it)|there)`,
  // "but I put in only 90 g of coconut"
  `,? ?\\b${but}(?: that)?(?: i| we)? (?:${deed} )?(?:only |just )?${weight} (?:of )?${fat}\\b`,
].map((pattern) => new RegExp(pattern, 'i'));
const kept: readonly RegExp[] = [
  // "apart from the castor, which stayed the same", "except that there was only enough castor for the 30, so that stayed as it was"
  `,? ?\\b${but}(?: that)?(?: for)?(?: there (?:was|were)| i had| we had)?(?: only| just)?(?: enough)? ${fat}\\b[^.!?\\n]{0,40}\\b${stays} ${same}(?: too| as well)?`,
].map((pattern) => new RegExp(pattern, 'i'));
/** "Everything except the castor", of what was doubled or halved: the castor once. */
const once =
  /,? ?\b(?:except|but not|apart from|other than|all but|save|bar|but)(?: for)? (?:the |my )?(?<fat>[a-z]+(?: (?:kernel|seed))?(?: (?:oil|butter))?)(?= ?[.,;:!?)]|$)(?![^!?\n]*\b(?:none|no|out|left|without|ran|run|not|nt|had|have|missing|empty|gone|forgot|skipped|allergic)\b)/i;

/** Without one of these no fat is told apart. */
const cues = /\b(?:except|but|apart|other than|save|bar|only|just|short)\b/i;

/** How many fats are told apart, at the most. */
const most = 3;

/** What the words behind a recipe tell so. `isDeed`: the rest was doubled or halved. */
export function fatsApart(behind: string, before: string, isDeed: boolean, fatOf: FatOf): readonly FatApart[] {
  const all: FatApart[] = [];
  let rest = behind;
  while (cues.test(rest) && all.length < most) {
    const one = firstApart(rest, before, isDeed, fatOf);
    if (!one || all.some(({ id }) => id === one.id)) break;
    all.push(one);
    rest = rest.replace(one.said, ' ');
  }
  return all;
}

function firstApart(rest: string, before: string, isDeed: boolean, fatOf: FatOf): FatApart | null {
  const idOf = (found: RegExpExecArray | null): string | null => found && fatOf(found.groups?.['fat'] ?? '');
  for (const pattern of told) {
    const found = pattern.exec(rest);
    const id = idOf(found);
    const grams = found && weightOf(found);
    // "which I left at 200 g", of 150 g: nobody knows
    const isLeft = found && /\b(?:left|kept|stay(?:ed|s))\b/i.test(found[0]);
    if (found && id !== null && grams && (!isLeft || isKnown(found[0], before))) return { id, grams, said: found[0] };
  }
  for (const pattern of isDeed ? [...kept, once] : kept) {
    const found = pattern.exec(rest);
    const id = idOf(found);
    const next = found && /^[^!?\n]{0,60}/.exec(rest.slice(found.index + found[0].length))?.[0];
    if (found && id !== null && isKnown(found[0], before) && (pattern !== once || isKnown(next ?? '', before)))
      return { id, grams: null, said: found[0] };
  }
  return null;
}

/** Its figures stand in the list, too: "for the 30". */
const isKnown = (said: string, before: string): boolean =>
  (said.match(/\d+(?:[.,]\d+)?/g) ?? []).every((figure) => new RegExp(`(?<![\\d.,])${figure}(?![\\d])`).test(before));

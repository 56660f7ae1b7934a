/** Several recipes in one post, and which of them its writer means. */

import { placeOf } from '../words/pick.ts';
import { chosenIn, type How } from './chosen.ts';
import { leansOn, spokenIn, strayIn } from './in-speech.ts';
import { kind, markedIn, most, numberedIn, type Part, sentencesIn, unnumberedIn } from './parted.ts';

/** The recipes that a post may hold, by their numbers, or by what stands in them where they have none. */
export interface Several {
  readonly post: string;
  readonly numbered: readonly Part[];
  readonly unnumbered: readonly Part[];
}

export function severalIn(post: string): Several {
  const numbered = numberedIn(post);
  return { post, numbered, unnumbered: numbered.length > 0 ? [] : unnumberedIn(post) };
}

const partsOf = ({ numbered, unnumbered }: Several): readonly Part[] => (numbered.length > 0 ? numbered : unnumbered);

/** How many recipes an answer can choose from; 0 where the post gives no way to part them. */
export function choices(several: Several): number {
  const { length } = partsOf(several);
  return length <= most ? length : 0;
}

/** The recipe that an answer means ("the second", "recipe 2"), with all of the post but the others; null where it means none. */
export function recipeChosen(post: string, answer: string): string | null {
  const parts = partsOf(severalIn(post));
  const plain = answer
    .toLowerCase()
    .replace(new RegExp(`\\b${kind}\\b|#`, 'g'), ' ')
    .trim();
  const place = /^[a-d]$/.test(plain) ? plain.charCodeAt(0) - 97 : placeOf(plain, parts.length);
  return place !== null && parts[place]
    ? without(
        post,
        parts.filter((_, k) => k !== place),
      ).text
    : null;
}

interface Cut extends Part {
  /** What stands in its place. */
  readonly as?: string;
}

/** The post without some stretches of it; what is told beside it and what only counts the recipes, apart. */
function without(
  post: string,
  cuts: readonly Cut[],
): { readonly text: string; readonly rest: string; readonly marks: string } {
  let [text, rest, marks] = ['', '', ''];
  let from = 0;
  for (const cut of cuts.toSorted((a, b) => a.from - b.from || b.to - a.to)) {
    if (cut.from < from) continue;
    text += post.slice(from, cut.from) + (cut.as ?? '\n');
    if (cut.as === undefined) rest += `${post.slice(cut.from, cut.to)}\n`;
    else marks += `${post.slice(cut.from, cut.to)} `;
    from = cut.to;
  }
  return { text: text + post.slice(from), rest, marks };
}

interface Pointed {
  readonly text: string;
  readonly called: string;
  /** How many there are, and the text of the others. */
  readonly of: number;
  readonly rest: string;
  /** What counts the recipes: "no. 2". */
  readonly marks: string;
  /** It tells by another one what goes into it. */
  readonly leans: boolean;
  /** The one unit of the others. */
  readonly unit: string | null;
}

const units = /\d ?(kg|gr?|grams?|oz|ounces?|lbs?|pounds?)(?!\p{L})/giu;

function unitIn(rest: string): string | null {
  const [unit, ...more] = new Set(
    [...rest.matchAll(units)].map(([, name]) => name?.toLowerCase().slice(0, 2).replace('r', '')),
  );
  return more.length === 0 && (unit === 'g' || unit === 'oz') ? unit : null;
}

/** It takes its fats, or what else goes into it, from another recipe. */
const fatsOf = /\bsame (?:amounts? of )?(?:oils?|fats?|recipe|as)\b/i;
const leaning =
  /\bsame (?:amounts? of )?(?:water|lye|naoh|koh|liquid|rest)\b|\b(?:rest|else) (?:as|is the|like|stays|unchanged)\b/i;

const calledBy = (mark: string | null): string | null =>
  mark && (/\d/.test(mark) ? `number ${mark}` : `recipe ${mark.toUpperCase()}`);

const ordinals = ['the first', 'the second', 'the third', 'the fourth'];

/**
 * A post of several recipes that says which one is meant: all of it but the others, and how that one is called; `open` where none can be
 * known to be meant.
 */
export function recipePointedAt(several: Several): Pointed | 'open' | null {
  const { post, numbered, unnumbered } = several;
  const marked = numbered.length > 0 ? [] : markedIn(post);
  const isOfLists =
    numbered.length + marked.length > 0 ||
    unnumbered.some(({ from, to }) => post.slice(from, to).includes('\n')) ||
    /\n\s*\n/.test(post);
  const spoken = isOfLists || post.includes('>') ? [] : spokenIn(post);
  const ways: readonly (readonly [() => readonly Part[], How])[] = [
    [() => numbered, 'told'],
    [() => (spoken.length > 0 ? spoken : unnumbered), spoken.length > 0 ? 'spoken' : 'told'],
    [() => marked, 'told'],
    [() => (numbered.length + unnumbered.length + spoken.length > 0 ? [] : sentencesIn(post)), 'asked'],
  ];
  for (const [way, how] of ways) {
    const parts = way();
    const choice = chosenIn(post, parts, how);
    if (choice === 'open') return choice;
    const meant = choice?.called[choice.part];
    if (!choice || !meant) continue;
    if (how === 'spoken') {
      if (strayIn(post, parts, meant)) return 'open';
      if (leansOn(post, parts, meant)) return unnumbered.length > 0 ? 'open' : null;
    }
    const own = post.slice(meant.from, meant.to);
    if (fatsOf.test(own)) return null;
    const gone = [...parts.filter((_, k) => k !== choice.part), ...choice.beside];
    const marks = choice.marks.map(({ from, to, isTitle }) => ({ from, to, as: isTitle ? '' : 'it' }));
    const left = without(post, [...gone, ...marks]);
    return {
      ...left,
      called: calledBy(meant.mark) ?? ordinals[choice.part] ?? '',
      of: parts.length,
      leans: leaning.test(own),
      unit: unitIn(left.rest),
    };
  }
  return null;
}

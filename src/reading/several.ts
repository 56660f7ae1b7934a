/** Several recipes in one post, and which of them its writer means. */
import { calledSo } from './called-so.ts';
import { markedIn } from './marked.ts';
import { meantOf, type Part } from './old-and-new.ts';
import { placeOf } from './pick.ts';

const ordinal = '(?:first|second|third|fourth|1st|2nd|3rd|4th)';
const kind = '(?:recipes?|batch|version|option|soap|bar)';

let headings: RegExp | null = null;
/** "Recipe 1:", "batch #2", "the second one:" where a line or a sentence begins. */
function headingsIn(post: string): readonly RegExpExecArray[] {
  headings ??= new RegExp(
    `(?:^|[\\n.;?!:])[^\\p{L}\\d\\n]{0,6}(?:${kind}\\s{0,3}(?:#|no\\.?|nr\\.?)?\\s*(\\d|one|two|three|four|[a-d])|(?:the |my )?(${ordinal})(?: ${kind}| one)?)\\s*(?=[:)\\n=–—]|-\\s)`,
    'giu',
  );
  return [...post.matchAll(headings)];
}

const amounts = /\d\s*(?:k?g|oz|lbs?|pounds?|ounces?|grams?|ml|%)(?![\p{L}])/giu;

/** More amounts than so many in a part of the post. */
function hasAmounts(post: string, { from, to }: Part, than: number): boolean {
  amounts.lastIndex = from;
  let count = 0;
  while (count <= than && amounts.test(post) && amounts.lastIndex <= to) count++;
  return count > than;
}

const isRecipe = (part: string): boolean => hasAmounts(part, { from: 0, to: part.length }, 1);

/** Words of headings: two are asked for before the headings, whose pattern takes long to get ready. */
const headWord = /recipe|batch|version|option|soap|bar|first|second|third|fourth|1st|2nd|3rd|4th/gi;

/** What stands behind a heading. */
const closing = /[:)\n=–—]|-\s/;

/** The recipes of a post, each with its heading; one alone where the post does not number them. */
function numberedIn(post: string): readonly string[] {
  if (!closing.test(post)) return [post];
  headWord.lastIndex = 0;
  if (!(headWord.test(post) && headWord.test(post))) return [post];
  const found = headingsIn(post);
  if (found.length < 2) return [post];
  const labels = new Set(found.map(([, label, place]) => (label ?? place ?? '').toLowerCase()));
  if (labels.size < found.length) return [post];
  const parts = found.map(({ index }, k) => post.slice(index, found[k + 1]?.index).replace(/^[\n.;?!:]/, ''));
  return parts.every(isRecipe) ? parts : [post];
}

/** More than this are a list of something else. */
const most = 4;

const alkali = /\b(?:naoh|koh|lye|caustic|hydroxide|lauge|soude|potasse|sosa|potasa)\b/gi;

const paragraphs = /\n[ \t]*(?:[-=*_]{3,}[ \t]*)?(?:\n[ \t]*)+/g;

/** What stands between such gaps. */
function partsBetween(post: string, gaps: RegExp): readonly Part[] {
  const parts: Part[] = [];
  let from = 0;
  gaps.lastIndex = 0;
  for (let gap = gaps.exec(post); gap; gap = gaps.exec(post)) {
    parts.push({ from, to: gap.index });
    from = gaps.lastIndex;
  }
  parts.push({ from, to: post.length });
  return parts;
}

function linesOf(post: string): readonly Part[] {
  const lines: Part[] = [];
  let from = 0;
  for (let to = post.indexOf('\n'); to >= 0; to = post.indexOf('\n', from)) {
    lines.push({ from, to });
    from = to + 1;
  }
  lines.push({ from, to: post.length });
  return lines;
}

/** What is quoted, and what is not, where one stretch of each is a whole recipe. */
function quotedOrNot(post: string, lines: readonly Part[]): readonly Part[] {
  const runs: { from: number; to: number; quoted: boolean }[] = [];
  for (const { from, to } of lines) {
    let at = from;
    while (post[at] === ' ' || post[at] === '\t') at++;
    const quoted = post[at] === '>';
    const last = runs.at(-1);
    if (last?.quoted === quoted) last.to = to;
    else runs.push({ from, to, quoted });
  }
  return runs;
}

/** Where the next alkali is named from here on, by its end; beyond the post where none is. */
function alkaliFrom(post: string, place: number): number {
  alkali.lastIndex = place;
  return alkali.test(post) ? alkali.lastIndex : Number.POSITIVE_INFINITY;
}

/** "Correction: the coconut was 220 g": it puts the recipe right, and is none of its own. */
const amending =
  /\b(?:correction|erratum|edit(?=[:\s-])|all else|everything else|(?:the )?rest (?:stands|stays|is|as|was|of it)|(?:looked|checked|found|see|wrote|stands) (?:it )?(?:up )?in my (?:notebook|notes|book))\b/i;

/** The parts that name an alkali and more than two amounts; two or a few, or none at all. */
function wholeOf(post: string, parts: readonly Part[]): readonly Part[] {
  const whole: Part[] = [];
  let next = 0;
  for (const part of parts) {
    if (next <= part.from) next = alkaliFrom(post, part.from);
    if (next > part.to || !hasAmounts(post, part, 2)) continue;
    if (whole.length > 0 && amending.test(post.slice(part.from, part.to))) continue;
    if (whole.length === most) return [];
    whole.push(part);
  }
  return whole.length < 2 ? [] : whole;
}

/** Paragraphs or lines that are each a whole recipe, with figures of their own: steps that repeat a recipe are none. */
function unnumberedIn(post: string): readonly Part[] {
  // nothing but the end of a line parts two recipes, which name an alkali each
  if (!post.includes('\n')) return [];
  const first = alkaliFrom(post, 0);
  if (alkaliFrom(post, first) > post.length) return [];
  const lines = linesOf(post);
  const ways = [
    () => (post.includes('>') ? quotedOrNot(post, lines) : []),
    () => partsBetween(post, paragraphs),
    () => lines,
  ];
  for (const way of ways) {
    const parts = wholeOf(post, way());
    if (parts.length === 0) continue;
    const figures = parts.map(({ from, to }) => new Set(post.slice(from, to).match(/\d+(?:[.,]\d+)?/g)));
    const own = figures.map((mine, k) =>
      [...mine].filter((one) => figures.every((other, n) => n === k || !other.has(one))),
    );
    if (own.every(({ length }) => length > 0)) return parts;
  }
  return [];
}

const asks = /\?|\b(?:check|please|asking)\b/i;

const sentences = /[.?!](?=\s)|\n/g;

/** "The single batch is …. Doubled that makes …": sentences that are each a whole recipe; none in a post that asks nothing. */
function sentencesIn(post: string): readonly Part[] {
  if (!asks.test(post) || alkaliFrom(post, alkaliFrom(post, 0)) > post.length) return [];
  const whole = wholeOf(post, partsBetween(post, sentences));
  const isWhole = (part: Part): boolean =>
    hasAmounts(post, part, 3) || /\bwater\b/i.test(post.slice(part.from, part.to));
  return whole.every(isWhole) ? whole : [];
}

/** The recipes that a post may hold, by their numbers, or by what stands in them where they have none. */
export interface Several {
  readonly post: string;
  /** The post alone where it does not number them. */
  readonly numbered: readonly string[];
  readonly unnumbered: readonly Part[];
}

export function severalIn(post: string): Several {
  const numbered = numberedIn(post);
  return { post, numbered, unnumbered: numbered.length > 1 ? [] : unnumberedIn(post) };
}

/** How many recipes an answer can choose from; 0 where the post gives no way to part them. */
export function choices({ numbered, unnumbered }: Several): number {
  const { length } = numbered.length > 1 ? numbered : unnumbered;
  return length > 1 && length <= most ? length : 0;
}

function partsOf({ post, numbered, unnumbered }: Several): readonly string[] {
  if (numbered.length > 1) return numbered;
  return unnumbered.length > 1 ? unnumbered.map(({ from, to }) => post.slice(from, to)) : [post];
}

/** The recipe that an answer means ("the second", "recipe 2"); null where it means none. */
export const recipeChosen = (post: string, answer: string): string | null => chosenOf(severalIn(post), answer);

function chosenOf(several: Several, answer: string): string | null {
  const parts = partsOf(several);
  const plain = answer
    .toLowerCase()
    .replace(new RegExp(`\\b${kind}\\b|#`, 'g'), ' ')
    .trim();
  const place = /^[a-d]$/.test(plain) ? plain.charCodeAt(0) - 97 : placeOf(plain, parts.length);
  return parts.length > 1 && place !== null ? (parts[place] ?? null) : null;
}

const place = `(?:the |my )?(?:${ordinal}|last)(?: ${kind}| one)?`;

/** "check the second one", "is recipe 2 right?", or a line of "the second" alone. */
const pointing = (): RegExp =>
  new RegExp(
    `\\b(?:check|take|use|do|is|only|just|about|mean|want)\\s+(${place}|${kind} (?:\\d|one|two|three|four|[a-d]))(?![\\p{L}\\d]|\\s*[:)=])|(?:^|[\\n.;?!])[^\\p{L}\\d\\n]{0,6}(${place})(?: please)?[.!?]?\\s*(?:\\n|$)`,
    'giu',
  );

interface Pointed {
  readonly text: string;
  readonly called: string;
  /** How many there are, and the text of the others. */
  readonly of: number;
  readonly rest: string;
}

/** A post of two recipes that says which one is meant, by its name or its age: all of it but the other. */
function newerOf({ post, unnumbered }: Several): Pointed | null {
  const parts = unnumbered.length > 0 ? unnumbered : sentencesIn(post);
  const meant = calledSo(post, parts) ?? (parts === unnumbered ? meantOf(post, parts) : null);
  const other = parts.find((part) => part !== meant);
  if (!meant || !other) return null;
  return {
    text: `${post.slice(0, other.from)}\n${post.slice(other.to)}`,
    called: meant === parts[0] ? 'the first' : 'the second',
    of: parts.length,
    rest: post.slice(other.from, other.to),
  };
}

function markedOf(post: string): Pointed | null {
  const marked = markedIn(post);
  return marked && { ...marked, called: `number ${marked.label}` };
}

/** A post of several recipes that says which one is meant: that one, and how it was called. */
export function recipePointedAt(several: Several): Pointed | null {
  const { post, numbered: parts } = several;
  if (parts.length < 2) return markedOf(post) ?? newerOf(several);
  const [first, ...more] = post.matchAll(pointing());
  const called = (first?.[1] ?? first?.[2])?.toLowerCase();
  if (!first || !called || more.length > 0) return null;
  const chosen = chosenOf(several, called);
  if (chosen === null) return null;
  return { text: chosen.replace(first[0], ' '), called, of: parts.length, rest: post.replace(chosen, ' ') };
}

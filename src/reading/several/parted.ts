/** The stretches of a post that each hold a recipe. */

export interface Part {
  readonly from: number;
  readonly to: number;
  /** It stands behind quote marks, where another part stands behind none. */
  readonly quoted?: boolean;
  /** Its figures, where it stands in running text (`in-speech.ts`). */
  readonly list?: Part;
}

const ordinal = '(?:first|second|third|fourth|1st|2nd|3rd|4th)';
export const kind = '(?:recipes?|batch|version|option|soap|bar)';

let headings: RegExp | null = null;
/** "Recipe 1:", "batch #2", "the second one:" where a line or a sentence begins. */
function headingsIn(post: string): readonly RegExpExecArray[] {
  headings ??= new RegExp(
    `(?:^|[\\n.;?!:])[^\\p{L}\\d\\n]{0,6}(?:${kind}\\s{0,3}(?:#|no\\.?|nr\\.?)?\\s*(\\d|one|two|three|four|[a-d])|(?:the |my )?(${ordinal})(?: ${kind}| one)?)\\s*(?=[:)\\n=–—]|-\\s)`,
    'giu',
  );
  return [...post.matchAll(headings)];
}

const amounts = /(?<!\d[.,]?)\d[\d.,]*\s*(?:k?g|oz|lbs?|pounds?|ounces?|grams?|ml|%)(?![\p{L}])/giu;

/** More amounts than so many in a part of the post. */
function hasAmounts(post: string, { from, to }: Part, than: number): boolean {
  amounts.lastIndex = from;
  let count = 0;
  while (count <= than && amounts.test(post) && amounts.lastIndex <= to) count++;
  return count > than;
}

/** Words of headings: two are asked for before the headings, whose pattern takes long to get ready. */
const headWord = /recipe|batch|version|option|soap|bar|first|second|third|fourth|1st|2nd|3rd|4th/gi;

/** What stands behind a heading. */
const closing = /[:)\n=–—]|-\s/;

/** The recipes of a post, each with its heading up to the next one; none where the post does not number them. */
export function numberedIn(post: string): readonly Part[] {
  if (!closing.test(post)) return [];
  headWord.lastIndex = 0;
  if (!(headWord.test(post) && headWord.test(post))) return [];
  const found = headingsIn(post);
  if (found.length < 2) return [];
  const labels = new Set(found.map(([, label, place]) => (label ?? place ?? '').toLowerCase()));
  if (labels.size < found.length) return [];
  const parts = partsFrom(
    post,
    found.map(({ index, 0: said }) => index + (/^[\n.;?!:]/.test(said) ? 1 : 0)),
  );
  return parts.every((part) => hasAmounts(post, part, 1)) ? parts : [];
}

/** From each of these places to the next, and from the last one to the end of its list. */
const partsFrom = (post: string, places: readonly number[]): readonly Part[] =>
  places.map((from, k) => ({ from, to: places[k + 1] ?? endOfList(post, from) }));

const asksOrTells = /\b(?:check|is|are|was|ignore|forget|please|how|made|want|should)\b/i;

/** An empty line, or a sentence that asks or tells, parts a list from the talk behind it. */
function isPastList(between: string): boolean {
  const end = between.search(/[.?!]\s|\n/);
  return end >= 0 && (/\n\s*\n/.test(between) || asksOrTells.test(between.slice(end)));
}

/** The end of the line or sentence that holds the last amount of a list. */
function endOfList(post: string, from: number): number {
  amounts.lastIndex = from;
  let end = from;
  for (let count = 0; amounts.test(post); count++) {
    if (count > 1 && isPastList(post.slice(end, amounts.lastIndex))) break;
    end = amounts.lastIndex;
  }
  const rest = post.slice(end).search(/[.?!](?=\s)|\n/);
  return rest < 0 ? post.length : end + rest;
}

const marks =
  /(?:^|\n|[.;] |(?<=\s)(?=\())[^\p{L}\d\n(#]{0,4}(?:(?:n[or]\.? ?|number |#|\(|v)(?<told>\d)(?=[\s):(.])(?! (?:is|was|has|had|and|or|looks)\b)|(?<bare>[a-d]|\d)(?= ?[):(=–—-]|\.\s|[ \t]*\n))\)?/giu;
const figures = /(?<!\d[.,]?)\d+(?:[.,]\d+)?/g;

/** "A: …, B: …", "#1 …, #2 …", "(1) …, (2) …" or a line each of "v1", "v2": what a question may call by its mark. */
export function markedIn(post: string): readonly Part[] {
  if (!/\b(?:b|v?2)\b/i.test(post)) return [];
  for (const first of ['1', 'a']) {
    let next = first.charCodeAt(0);
    const places: number[] = [];
    for (const { index, groups, 0: said } of post.matchAll(marks)) {
      const mark = (groups?.['told'] ?? groups?.['bare'] ?? '').toLowerCase();
      // "v1 was harsh" behind the list of versions is no other one
      if (mark.charCodeAt(0) !== next) continue;
      if (laterStep.test(post.slice(index + said.length).split('\n', 1)[0] ?? '')) return [];
      places.push(index + said.search(/[^\s.;]/));
      next++;
    }
    const parts = partsFrom(post, places);
    if (parts.length > 1 && parts.length <= most && parts.every((part) => isListed(post, part))) return parts;
  }
  return [];
}

/** "B. after the cook": a step of the one recipe. */
const laterStep =
  /^[\s:.)–—-]*(?:to )?(?:(?:stir|fold|add|mix)(?:red|ed)? in |add )?(?:after (?:the )?cook|(?:once|when) (?:it (?:is|'s) )?cooked)/i;

/** Two amounts, or three figures beside the mark. */
const isListed = (post: string, part: Part): boolean =>
  hasAmounts(post, part, 1) || (post.slice(part.from, part.to).match(figures) ?? []).length > 3;

/** Where the amounts of a stretch begin and end; null where it has none. */
export function amountsIn(post: string, { from, to }: Part, pattern = amounts, least = 1): Part | null {
  pattern.lastIndex = 0;
  const found = [...post.slice(from, to).matchAll(pattern)];
  const [first] = found;
  const last = found.at(-1);
  if (!first || !last || found.length < least) return null;
  return { from: from + first.index, to: from + last.index + last[0].length };
}

/** Where the list of a recipe begins and ends: its amounts, or its figures where they have no unit. */
export const listIn = (post: string, part: Part): Part | null =>
  amountsIn(post, part) ?? amountsIn(post, part, figures, 3);

/** More than this are a list of something else. */
export const most = 4;

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

/** Over the steps by which the list before them is made, and what they say of it: "melt the 250 g". */
const stepsHead =
  /^\W*(?:steps?|method|process|procedure|directions?|instructions?|how to make it|what to do)\b[^\p{L}\d]*\n/iu;
const theAmount = /\b(?:the|your|all) \d[\d.,]* ?(?:k?g|oz|lbs?|grams?|ml)\b/gi;
/** Water and lye alone, as a story of the lye water weighs them: no recipe. */
const ofLyeWater = (said: string): boolean =>
  /\bwater\b/i.test(said) &&
  !/\b(?:oils?|butters?|fats?|wax|lard|tallow|suet|ghee|dripping|shortening|olive|coconut|palm|castor|shea|sunflower|canola|rapeseed|almond|avocado|cocoa|crisco|babassu)\b/i.test(
    said,
  );
const areSteps = (said: string): boolean => stepsHead.test(said) || (said.match(theAmount)?.length ?? 0) > 1;

/** The parts that name an alkali and more than two amounts; two or a few, or none at all. */
function wholeOf(post: string, parts: readonly Part[]): readonly Part[] {
  const whole: Part[] = [];
  let next = 0;
  for (const part of parts) {
    if (next <= part.from) next = alkaliFrom(post, part.from);
    if (next > part.to || !hasAmounts(post, part, 2)) continue;
    const own = post.slice(part.from, part.to);
    if (ofLyeWater(own)) continue;
    const said = whole.length > 0 ? own : '';
    if (amending.test(said) || areSteps(said)) continue;
    if (whole.length === most) return [];
    whole.push(part);
  }
  return whole.length < 2 ? [] : whole;
}

/** Paragraphs or lines that are each a whole recipe, with figures of their own: steps that repeat a recipe are none. */
export function unnumberedIn(post: string): readonly Part[] {
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
export function sentencesIn(post: string): readonly Part[] {
  if (!asks.test(post) || alkaliFrom(post, alkaliFrom(post, 0)) > post.length) return [];
  const whole = wholeOf(post, partsBetween(post, sentences));
  const isWhole = (part: Part): boolean =>
    hasAmounts(post, part, 3) || /\bwater\b/i.test(post.slice(part.from, part.to));
  return whole.every(isWhole) ? whole : [];
}

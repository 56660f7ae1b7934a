/**
 * Recipes told in running text, each behind words that say whose or which it is: "hers is 400 olive 200 coconut 87 lye,
 * mine is 500 g olive …". A second one begins where a list names again what the one before has.
 */
import { relations } from '../words/cue-words.ts';
import { most, type Part } from './parted.ts';

const figures =
  /(?<![\p{L}\d.,/])\d+(?:[.,]\d+)?(?: ?(?:k?g|gr|grams?|kilos?|oz|ounces?|lbs?|pounds?|ml))?(?![\p{L}\d%°])(?! ?(?:%|°|recipes?|batches|versions|soaps|bars|of us)(?!\p{L}))/giu;
let telling: RegExp | null = null;
/** Between a figure and the next one that is none of its list. */
const tells = (): RegExp => {
  telling ??= new RegExp(
    `(?<!\\p{L})(?:is|are|was|were|has|had|have|takes?|took|uses?|used|makes?|made|making|d[io]d|does|says?|said|i|i['’]?m|i['’]?ve|we|me|my|mine|ours?|her|hers|his|she|he|they|theirs?|it|its|now|so|this|that|the (?=\\p{L}+ (?:one|batch|version|recipe))|one|version|batch|recipe|old|new|original|today|tonight|yesterday|she['’]?s|he['’]?s|[a-d](?= ?$)|(?:${relations.replaceAll(' ', '|')})['’]?s?)(?!\\p{L})`,
    'giu',
  );
  return telling;
};
const ends = /[.?!;]+(?=\s|$)|\n/g;
const lyes: ReadonlySet<string> = new Set(['lye', 'naoh', 'koh', 'caustic', 'hydroxide']);
/** Words by which people call a fat: two recipes name some of them twice. */
const fats: ReadonlySet<string> = new Set(
  'olive oo evoo pomace coconut coco palm pko pks lard tallow suet dripping ghee castor shea cocoa cacao mango sunflower safflower rapeseed canola almond avocado rice rbo soy soya soybean hemp jojoba babassu grapeseed sesame peanut cottonseed corn linseed flax neem crisco shortening macadamia hazelnut apricot beeswax stearic kokum argan'.split(
    ' ',
  ),
);

interface Row {
  readonly from: number;
  to: number;
  /** What stands beside each figure. */
  readonly beside: string[];
}

const wordsOf = (text: string): readonly string[] => text.toLowerCase().split(/[^a-z]+/);
const namesOf = (beside: string): readonly string[] => wordsOf(beside).filter((word) => fats.has(word));

const longestGap = 40;
/** A name is no further from its figure. */
const nearby = 24;

/** What stands behind `at` up to where something else is told. */
function untilTold(text: string): string {
  const end = text.slice(0, nearby).search(/[.,;:()?!\n]/);
  const rest = text.slice(0, end < 0 ? nearby : end);
  const told = rest.search(tells());
  return told < 0 ? rest : rest.slice(0, told);
}

/** Figures with their names, nothing else told in between. */
function rowsIn(post: string): readonly Row[] {
  const rows: Row[] = [];
  let to = 0;
  for (const { 0: figure, index } of post.matchAll(figures)) {
    const gap = post.slice(to, index);
    const row = rows.at(-1);
    const isNext = gap.length <= longestGap && gap.search(ends) < 0 && gap.search(tells()) < 0 && !/[()]/.test(gap);
    if (row && isNext) row.beside.push(gap);
    else {
      row?.beside.push(untilTold(gap));
      rows.push({
        from: index,
        to: index,
        beside: [/[^.,;:()?!\n]*$/.exec(gap.slice(-nearby))?.[0].split(tells()).at(-1) ?? ''],
      });
    }
    to = index + figure.length;
    const last = rows.at(-1);
    if (last) last.to = to;
  }
  rows.at(-1)?.beside.push(untilTold(post.slice(to)));
  return rows;
}

interface Recipe {
  readonly rows: Row[];
  readonly names: Set<string>;
  hasLye: boolean;
}

const namesLye = (text: string): boolean => wordsOf(text).some((word) => lyes.has(word));
const isOfLye = ({ beside }: Row): boolean => beside.some(namesLye);

/** Two fats, or one and its lye. */
const isWhole = ({ names, hasLye }: Recipe): boolean => names.size > (hasLye ? 0 : 1);

const joints = /[,)–—/]|(?<!\p{L})(?:and|but|while|whereas|then)(?!\p{L})|\s->?\s/giu;

/** Where the words begin that stand ahead of a list, behind the one before it. */
function headFrom(post: string, from: number, to: number): number {
  const between = post.slice(from, to);
  const stop = [...between.matchAll(ends)].at(-1);
  if (stop || from === 0) return from + (stop ? stop.index + stop[0].length : 0);
  const figure = /^.*\d/s.exec(between)?.[0].length ?? 0;
  const told = [...between.matchAll(tells())].find(({ index }) => index >= figure)?.index ?? between.length;
  const joint = [...between.slice(0, told).matchAll(joints)].findLast(({ index }) => index >= figure);
  return from + (joint ? joint.index + joint[0].length : told);
}

/** What went in on top of a list is none of its own. */
const added = /\b(?:another|a further|an (?:extra|additional)|extra|additional)\s+(?:about\s+)?$/i;

/** No more than this is told in a breath. */
const longestSpeech = 2500;

/** Nothing but what is named twice parts two recipes. */
function namesTwice(post: string): boolean {
  const names = wordsOf(post).flatMap((word) => (fats.has(word) ? [word] : lyes.has(word) ? ['lye'] : []));
  return new Set(names).size < names.length;
}

export function spokenIn(post: string): readonly Part[] {
  if (post.length > longestSpeech || !namesTwice(post)) return [];
  const recipes: Recipe[] = [];
  for (const row of rowsIn(post)) {
    const last = recipes.at(-1);
    // "and she says 150 lye"
    if (row.beside.length < 3) {
      if (last) last.hasLye ||= isOfLye(row);
      continue;
    }
    const names = row.beside.flatMap(namesOf);
    const isLye = isOfLye(row);
    // "6 to 8 weeks"
    if (names.length === 0 && !isLye) continue;
    const isOther = last && (names.some((name) => last.names.has(name)) || (isLye && last.hasLye));
    const recipe: Recipe = last && !isOther ? last : { rows: [], names: new Set<string>(), hasLye: false };
    if (recipe !== last) recipes.push(recipe);
    recipe.rows.push(row);
    for (const name of names) recipe.names.add(name);
    recipe.hasLye ||= isLye;
  }
  if (recipes.length < 2 || recipes.length > most || !recipes.every(isWhole)) return [];
  const lists = recipes.map(({ rows }) => ({ from: rows[0]?.from ?? 0, to: rows.at(-1)?.to ?? 0 }));
  // "I've since added another 100 g of coconut and another 18 g of lye"
  if (lists.slice(1).some((list) => added.test(post.slice(Math.max(0, list.from - nearby), list.from)))) return [];
  const starts = lists.map(({ from }, k) => headFrom(post, lists[k - 1]?.to ?? 0, from));
  return lists.map((list, k) => {
    const end = post.slice(list.to).search(ends);
    return { from: starts[k] ?? 0, to: starts[k + 1] ?? (end < 0 ? post.length : list.to + end), list };
  });
}

/** Words by which a recipe takes something from another one. */
const shares = /\b(?:same|each|else|the rest|unchanged|also|plus|extra|instead|swapped|swap|minus|except|but with)\b/i;
const asksLye =
  /\bhow much (?:lye|naoh|koh|caustic)\b|\b(?:lye|naoh|koh|caustic) (?:do|does|should|would|for)\b|\b(?:need|what|whats|work out|calculate)(?: \p{L}+){0,3} (?:lye|naoh|koh|caustic)\b/iu;

/** It takes something from another one, or has no lye and the lye is not asked for. */
export function leansOn(post: string, parts: readonly Part[], { from, to }: Part): boolean {
  const own = post.slice(from, to);
  const isLyeElse = parts.some((one) => one.from !== from && namesLye(post.slice(one.from, one.to)));
  return shares.test(own) || (isLyeElse && !namesLye(own) && !asksLye.test(post));
}

/** Figures behind the lists that may be of any: all but those that it has, too. */
export function strayIn(post: string, parts: readonly Part[], { from, to }: Part): boolean {
  const behind = post.slice(Math.max(...parts.map((one) => one.to)));
  const said = new Set(post.slice(from, to).match(/\d+(?:[.,]\d+)?/g));
  return rowsIn(behind).some(
    (row) =>
      row.beside.some((one) => namesLye(one) || namesOf(one).length > 0 || /\bwater\b/i.test(one)) &&
      (behind.slice(row.from, row.to).match(figures) ?? []).some(
        (figure) => !said.has(Number.parseFloat(figure.replace(',', '.')).toString()),
      ),
  );
}

/**
 * Sentences around a recipe that tell of something else: the size of a mould, a drive to the shop, what a scale shows.
 * A figure in one of them that no ingredient takes is no question where the rest is a whole recipe whose alkali fits
 * its fats: had an ingredient been lost with the sentence, it would not fit.
 */

import type { Catalogue } from '../../catalogue/types.ts';
import type { Doubt, RecipeReading } from '../reading.ts';
import { demandOf, superfatOf } from '../recipe/plausible.ts';
import { fatesOf } from '../text/aside-fates.ts';
import { type Weights, weightsOf } from './note-signs.ts';

/** Longer posts are asked about, in characters: each round reads the post once more. */
export const longestTalk = 8000;
export const mostRounds = 3;

/** Superfat of recipes that people make, as a fraction. A twentieth of the fats gone missing moves it by as much. */
export const usualSuperfat = { least: -0.01, most: 0.2 };

/** What people and things do, which no ingredient is called: by its ending, by its pronoun, or irregular. */
const deed =
  /^(?:\p{L}{2,}(?:ed|ing)|drove|went|took|takes|gets?|got|bought|sold|spent|costs?|lost|left|gave|gives|made|makes?|ran|runs|held|holds?|kept|keeps?|fits?|shows?|says?|said|reads|weighs?|lasts?|needs?|switch(?:es)?|turns?|uses?|came|comes|goes|sat|stood|stands|began|brought|thought|thinks|told|tells|felt|feels|found|paid|sent|slept|broke|cut|put|set|hit|let|opens?|closes|works?|looks?|likes?|wants?|charges|drives|starts?|stops?|ends|stays|sits|lives|knows?|asks?|smells)$/iu;

// Patterns of all alphabets are slow to get ready: these are made for the posts that need them.

/** Words of a sentence, which a row of a list has none of. */
const prose = (): RegExp =>
  /\b(?:i|i'm|i've|i'd|my|me|we|our|you|your|he|she|they|their|his|her|it|it's|its|this|that|the|is|was|are|were|be|been|has|had|have|do|does|did|can|could|will|would|should|to|so|because|when|if|which|who|not|don't|didn't)\b/giu;

/** A sentence that may change the recipe is heard out. */
const changing = (): RegExp =>
  /\b(?:instead|in (?:its|their|the) place|replac\w*|swap\w*|substitut\w*|(?:ex)?chang\w*|switched|switching|trad(?:ed|ing)|sub(?:bed|bing)|rather than|out of|ran out|forgot\w*|without|left out|leave out|take out|added?|adding|plus|more|less|extra|double|half|halv\w*|triple|scal(?:ed|ing)|wrong|correct\w*|mean|meant|sorry|actually|only had|or|between|somewhere|either|unsure|not (?:sure|certain)|maybe|perhaps|don't know|what (?:was left|is left|remain\w*)|not \d+)\b/iu;

/** "20 g of the lye spilled", "I upset the lye jug and 20 g went over the table": not all of it is in the pot. */
const spilling = (): RegExp =>
  /\b(?:lye|naoh|koh|caustic|solution|oils?|butter|lard|tallow)\b[^.?!]{0,40}\b(?:spill(?:ed|s)?|spilt|(?:went|ran|landed|ended up|gone) (?:on|over|across|down|all over) (?:the|my))\b|\b(?:spill(?:ed|ing)?|spilt) [^.?!]{0,24}\b(?:lye|naoh|koh|caustic|solution|oils?|butter|lard|tallow)\b/iu;

/** Words by which a weight may be that of something in the pot. */
const putting = (): RegExp =>
  /\b(?:put(?:s|ting)?|mix\w*|melt\w*|stir\w*|pour\w*|us(?:e|ed|es|ing)|thr[eo]w\w*|toss\w*|dump\w*|dissolv\w*|blend\w*|weigh(?:ed|ing)? out|measur\w*|weigh\w* [^.]{0,30}\binto|into (?:the|my) (?:lye )?(?:jug|pot|bowl|pan|bucket|kettle|mix|lye|oils?)|includ\w*|contain\w*|(?:goes|go|went|going) in\w*|took|takes?|taking|had|need\w*)\b/iu;

/** Words by which another ingredient may have come in: then nothing is left out unasked. */
const exchanging = (): RegExp =>
  /\b(?:instead|in (?:its|their|the) place|replac\w*|swap\w*|substitut\w*|(?:ran|run|was|am|is|i'm) out of)\b/i;

const count = (text: string, words: RegExp): number => (text.match(words) ?? []).length;
const deeds = (text: string): number => (text.match(/\p{L}+/gu) ?? []).filter((word) => deed.test(word)).length;

/** "Coconut 220, lye 103, milk 280": figures with their names, as a list has them, in whatever sentence. */
const listing = (): RegExp =>
  /(?:^|[\s,:])(?:\p{L}{3,} (?:was |is |now |at )?\d+(?:[.,]\d+)?(?: ?(?:k?g|oz|ml|grams))?(?:, (?:and )?(?:the )?| and (?:the )?|[.;]?\s|$)){2}/iu;

/** A row may tell what was done with it ("stout, boiled down and chilled 220 g"); only a sentence says who did. */
export function isTalk(text: string): boolean {
  // a line with a star puts something right
  if (/^\*\S/.test(text) || changing().test(text) || spilling().test(text) || listing().test(text)) return false;
  const words = count(text, prose());
  return text.startsWith('(') ? words + deeds(text) > 0 : words > 0 && words + deeds(text) > 1;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Sentences, lines, and what stands in brackets; and their clauses. */
export const sentences = /\n+|(?<=[.!?;…])\s+|(?=[(])|(?<=[)])/g;
const clauses = /\n+|(?<=[.!?;:…,])\s+|\s[–—-]\s|(?=[(])|(?<=[)])/g;

export function stretchesOf(post: string, parting: RegExp): readonly Stretch[] {
  const out: Stretch[] = [];
  let from = 0;
  parting.lastIndex = 0;
  for (let gap = parting.exec(post); gap; gap = parting.exec(post)) {
    if (gap.index > from) out.push({ from, to: gap.index });
    from = gap.index + gap[0].length;
    // between a sentence and a bracket there is nothing to go past
    if (gap[0] === '') parting.lastIndex++;
  }
  return from < post.length ? [...out, { from, to: post.length }] : out;
}

/** Its last figure. */
const figureOf = (said: string): readonly string[] => said.match(/\d+(?:[.,]\d+)*/g)?.slice(-1) ?? [said];

/** "1 kg": its grams; null where it is no weight. */
function gramsOf(said: string): number | null {
  const [, figure = '', unit = ''] = /^(\d+(?:\.\d+)?) ?(k?g|oz|lb)\b/.exec(said) ?? [];
  return unit === '' ? null : Number(figure) * ({ g: 1, kg: 1000, oz: 28.35, lb: 453.6 }[unit] ?? 0);
}

/** Alkali for so many times what the fats need, or less than that part of it, is nobody's second figure for it. */
const farOff = 1.6;

/** Of two amounts of the alkali, those that no fats like these take, where the other one fits them. */
function beyondNeed(said: readonly string[], reading: RecipeReading, catalogue: Catalogue): readonly string[] {
  const [alkali] = reading.alkali;
  if (reading.alkali.length !== 1 || !alkali) return [];
  const demand = demandOf(reading.fats, catalogue, alkali.id);
  const share = said.map((one) => (gramsOf(one) ?? 0) / demand);
  if (!share.some((one) => one > 1 - usualSuperfat.most && one < 1 - usualSuperfat.least)) return [];
  return said.filter((_, k) => {
    const one = share[k] ?? 0;
    return one > 0 && (one > farOff || one < 1 / farOff);
  });
}

/** The words or figures that a doubt is about, where talk may have led to it. */
function saidIn(doubt: Doubt, reading: RecipeReading, catalogue: Catalogue): readonly string[] {
  switch (doubt.id) {
    case 'unknown-fat':
      return [doubt.said];
    case 'no-unit':
      return figureOf(doubt.said);
    case 'unplaced':
      return [doubt.said];
    case 'two-amounts':
      return beyondNeed(doubt.said, reading, catalogue);
    default:
      return [];
  }
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+');
/** It holds these words or this figure, whole. */
export const mentions = (text: string, said: string): boolean =>
  text.toLowerCase().includes((said.split(/\s/, 1)[0] ?? '').toLowerCase()) &&
  new RegExp(`(?<![\\p{L}\\d])(?<!\\d[.,])${escaped(said)}(?![\\p{L}\\d])(?![.,]\\d)`, 'iu').test(text);

/** The word stands beside a figure with a unit of weight or volume, as an ingredient would. */
const isWeighed = (text: string, said: string): boolean =>
  !deed.test(said) &&
  new RegExp(
    `\\d\\s?(?:k?g|gr|grams?|gms?|dag|oz|ounces?|lbs?|pounds?|ml|l|lit(?:re|er)s?|cups?|t(?:b)?sp|tablespoons?|teaspoons?|%|parts?)\\s+(?:of\\s+)?(?:\\p{L}+\\s+)?${escaped(said)}|${escaped(said)}\\W{0,3}(?:\\p{L}+\\W{1,2})?\\d+(?:[.,]\\d+)?\\s?(?:k?g|gr|gram|gm|dag|oz|ounce|lb|pound|ml|l\\b|lit|cup|t(?:b)?sp|%|part)`,
    'iu',
  ).test(text);

/** "I used 90 by accident", "90 went in". */
const isPut = (text: string, said: string): boolean =>
  new RegExp(
    `\\b(?:used|weighed|put|poured|added|measured|tipped)(?: (?:in|out|only|about|just|like|roughly|really|actually)){0,2} ${escaped(said)}(?![\\p{L}\\d]| (?!by\\b|instead\\b|in\\b|and\\b|as\\b)\\p{L})|(?<![\\d.,])${escaped(said)} (?:went|got|ended up|landed) in`,
    'iu',
  ).test(text);

/** Characters behind a clause in which a figure of it may stand. */
const nextWord = 14;

/** The stretches that a doubt is about: clauses that are talk, or sentences where no clause is; or the other way round. */
function aboutOf(doubt: Doubt, said: readonly string[], post: string, partings: readonly RegExp[]): readonly Stretch[] {
  if (said.length === 0) return [];
  for (const parting of partings) {
    const about = stretchesOf(post, parting).filter(({ from, to }) => {
      const text = post.slice(from, to);
      // "stainless, 5 litres": its figure stands in the next clause
      const beyond = parting === clauses ? (post.slice(from, to + nextWord).split(/[.!?;\n]/, 1)[0] ?? '') : text;
      return said.some(
        (one) =>
          mentions(text, one) &&
          isTalk(text) &&
          !(doubt.id === 'unknown-fat' && (isWeighed(beyond, one) || (deed.test(one) && mayBeIn(text)))) &&
          !(doubt.id !== 'unknown-fat' && /[\p{L}%]/u.test(one) && putting().test(text)) &&
          !(doubt.id === 'unplaced' && isPut(text, one)) &&
          !(doubt.id === 'total-disagrees' && sumsUp().test(text)),
      );
    });
    if (about.length > 0) return about;
  }
  return [];
}

/** "Comes to 900 g oils": of the recipe, whatever its rows make. */
const sumsUp = (): RegExp =>
  /\b(?:in (?:all|total)|(?:al)?together|total|comes? (?:out )?(?:to|at)|makes?|adds? up|sums?)\b(?=.*\b(?:oils?|fats?)\b)|\b(?:oils?|fats?)\b.*\b(?:in (?:all|total)|(?:al)?together|total|comes? (?:out )?(?:to|at)|adds? up)\b/i;

/** The post without the sentences that its doubts are about; null where one of them is about something else. */
function without(
  post: string,
  reading: RecipeReading,
  partings: readonly RegExp[],
  catalogue: Catalogue,
): { readonly text: string; readonly gone: string[] } | null {
  const all: Stretch[] = [];
  for (const doubt of reading.doubts) {
    const about = aboutOf(doubt, saidIn(doubt, reading, catalogue), post, partings);
    if (about.length === 0) return null;
    all.push(...about);
  }
  const gone: Stretch[] = [];
  for (const one of all.toSorted((a, b) => a.from - b.from || b.to - a.to))
    if (one.to > (gone.at(-1)?.to ?? 0)) gone.push(one);
  return cut(post, gone);
}

/** The post without some of its stretches, which are in order. */
export function cut(post: string, gone: readonly Stretch[]): { readonly text: string; readonly gone: string[] } {
  let text = '';
  let at = 0;
  for (const { from, to } of gone) {
    text += post.slice(at, Math.max(at, from));
    at = to;
  }
  return { text: text + post.slice(at), gone: gone.map(({ from, to }) => post.slice(from, to)) };
}

const figures = /\d+(?:[.,]\d+)*/g;

/** What a sentence may say of the recipe as a whole. */
const ofRecipe = (): RegExp =>
  /%|\b(?:super-?fat\w*|sf|pur(?:e|ity)|per ?cent|strength|solution|stock|after|ratio|in (?:grams?|ounces|oz|g)|everything|each|all of)\b|\b(?:oils?|fats?) (?:in (?:total|all)|altogether|together)\b|\btotals?\b[^.?!\d]*\d*[^.?!\d]*\b(?:oils?|fats?)\b/iu;
const weights = (): RegExp => /\d\s?(?:k?g|gr|grams?|dag|oz|ounces?|lbs?|pounds?|ml|l|lit(?:re|er)s?|cups?)\b/iu;

/** A weight that may be that of something in the pot. */
export const mayBeIn = (text: string): boolean => weights().test(text) && putting().test(text);

/** The post without any sentence that is talk with figures in it, and says nothing of the recipe as a whole. */
function bare(post: string): { readonly text: string; readonly gone: string[] } {
  return cut(
    post,
    stretchesOf(post, sentences).filter(({ from, to }) => {
      const text = post.slice(from, to);
      return /\d/.test(text) && isTalk(text) && !ofRecipe().test(text) && !mayBeIn(text) && !sumsUp().test(text);
    }),
  );
}

/** The post without what it quotes; null where it quotes nothing. */
function unquoted(post: string): { readonly text: string; readonly gone: string[] } | null {
  const lines = stretchesOf(post, /\n/g).filter(({ from, to }) => /^[ \t]*>/.test(post.slice(from, to)));
  return lines.length > 0 ? cut(post, lines) : null;
}

/** Two recipes, a correction, or two weights of one thing (of which it may be either): that is about the recipe, wherever it is said. */
const isOfRecipe = (doubt: Doubt): boolean =>
  doubt.id === 'two-recipes' ||
  doubt.id === 'corrected' ||
  doubt.id === 'range' ||
  (doubt.id === 'two-amounts' && doubt.said.filter((said) => /\p{L}/u.test(said)).length > 1);

/** A deed, a bare figure, or a volume of a vessel's size. */
const isHarmless = (doubt: Doubt): boolean =>
  (doubt.id === 'unknown-fat' && deed.test(doubt.said)) ||
  doubt.id === 'no-unit' ||
  (doubt.id === 'unplaced' &&
    !/\p{L}/u.test(doubt.said.replace(/\s?(?:ml|cl|l|lit(?:re|er)s?|quarts?|qt|gallons?)\.?$/iu, '')));

interface Alone {
  readonly reading: RecipeReading;
  readonly gone: readonly string[];
}

/** The reading without what its doubts are about, and without what the doubts of the rest are about, and so on. */
function inRounds(
  post: string,
  first: RecipeReading,
  read: (post: string) => RecipeReading,
  partings: readonly RegExp[],
  catalogue: Catalogue,
): Alone {
  let text = post;
  let reading = first;
  let gone: readonly string[] = [];
  for (let round = 0; reading.doubts.length > 0 && round < mostRounds; round++) {
    const less = without(text, reading, partings, catalogue);
    if (!less) break;
    gone = [...gone, ...less.gone];
    text = less.text;
    reading = read(text);
  }
  return { reading, gone };
}

/** Nothing that was weighed is lost, and the alkali fits. */
function isWhole(reading: RecipeReading, first: RecipeReading, catalogue: Catalogue): boolean {
  const fat = superfatOf(reading, catalogue);
  const fits = fat !== null && fat >= usualSuperfat.least && fat <= usualSuperfat.most;
  return (first.alkali.length === 0 || fits) && holdsAll(first, reading);
}

/** Somebody or something gives a figure. */
const givesFigure =
  /\b(?:says?|said|thinks?|reckons?|claims?|swears|recommends?|tells?|told|gave|gives|(?:he|she|they|aunt|sister|brother|mother|mum|mom|dad|father|friend|neighbou?r|uncle|cousin|colleague|teacher|another|other|one) (?:uses|takes|took|used|would))\b/i;
const ownFigure = /\b(?:i|we|mine|my (?:own|lye|pot))\b(?! (?:need|should|must|have to|ask|want))/i;

/** Two say how much alkali is right, and the writer has none of their own: neither is told of something else. */
function rivalsTold(
  post: string,
  { alkali: [only, more], fats, doubts }: RecipeReading,
  catalogue: Catalogue,
): boolean {
  if (!only || more || !doubts.some(({ id }) => id === 'unplaced')) return false;
  const demand = demandOf(fats, catalogue, only.id);
  const told = post
    .split(/(?<=[.!?;\n,])\s|\b(?:and|but|while|whereas)\b/)
    .filter((clause) => givesFigure.test(clause) && !ownFigure.test(clause))
    .flatMap((clause) => clause.match(/\d+(?:[.,]\d+)? ?(?:k?g|oz|lb)?\b/g) ?? [])
    .map((said) => gramsOf(said.trim()) ?? Number.parseFloat(said));
  const suiting = new Set(told.filter((grams) => grams > demand / farOff && grams < demand * farOff));
  return suiting.size > 1 && [...suiting].some((grams) => Math.abs(grams - only.grams) < 0.01 * only.grams);
}

/** What is left out may tell how much alkali there is, where the rest weighs none, or how pure it is. */
export function tellsOfAlkali(
  { alkali, alkaliNamed, fats }: RecipeReading,
  gone: readonly string[],
  catalogue: Catalogue,
): boolean {
  if (gone.some((one) => ofDeed.test(one))) return true;
  // a record that says the list's own weight, too, contradicts nothing
  const tells = (words: RegExp, least: number, most: number, own = 0): boolean =>
    gone.some((one) => {
      const said = (one.match(figures) ?? []).map(Number);
      return words.test(one) && said.some((figure) => figure > least && figure < most) && !said.includes(own);
    });
  if (alkali.some(({ purity }) => purity === null) && gone.some((one) => ofPurity.test(one))) return true;
  if (alkali.length > 0) return alkali.some(({ grams }) => tells(ofRecord, grams / slip, grams * slip, grams));
  const demand = demandOf(fats, catalogue, alkaliNamed[0]);
  return alkaliNamed.length > 0 && tells(ofScale, 0.7 * demand, 1.3 * demand);
}

/** So far from what the list says is a slip of the hand. */
const slip = 1.6;
/** "The scale said 96, and so does the log". */
const ofRecord =
  /\b(?:scales?|display|log|notebook|record|slip|strip|paper|photo|picture|print-?out|till roll)\b[^.?!\n]{0,20}\b(?:said|says|showed|shows?|reads?|stood at|had|has)\b|^(?:and |but |so )*(?:it|that|which) (?:says|said|reads|shows?|showed) (?:only |just )?\d/i;
/** "The old scale said 138, the new one 151". */
const ofScale = /\b(?:lye|naoh|koh|caustic|soda|hydroxide|scales?|said|says|read|shows?|showed|weigh\w*|display)\b/i;
/** "So 139 is what I put in". */
const ofDeed = /\d[^.;]{0,12} (?:is|was|are|were) (?:really |actually )?what (?:(?:i|we) \w+|went|got|is|was)\b/i;
/** "The small print has 88 % on it". */
const ofPurity = /(?<![\d.,])[89]\d(?:[.,]\d+)? ?(?:%|per ?cent)/i;

/** The recipe, without what is told around it; null where that leaves no whole recipe, or none that fits. */
export function amongTalk(
  post: string,
  first: RecipeReading,
  read: (post: string) => RecipeReading,
  catalogue: Catalogue,
  bears: (text: string, list: Weights) => boolean,
): RecipeReading | null {
  if (post.length > longestTalk || first.fats.length === 0) return null;
  // without alkali nothing fits: only what could be no ingredient is left out
  const fits = first.alkali.length > 0;
  if ((!fits && !first.doubts.every(isHarmless)) || exchanging().test(post)) return null;
  if (rivalsTold(post, first, catalogue)) return null;
  // "water 320, but I sub 100 of it with beer", "the water is twice the lye, so 234 g"; "half of it I froze, the water
  // is 240 g in total": the alkali fits with any water
  const losesWater = (rest: RecipeReading, gone: readonly string[]): boolean =>
    gone.some(
      (one) =>
        (rest.waterGrams === null && first.waterGrams === null && ofWater.test(one)) ||
        (waterIs.test(one) && !(one.match(figures) ?? []).some((figure) => Number(figure) === rest.waterGrams)),
    );
  // a sentence whole, so that none of its figures stays behind; but where something was weighed in it, its clause
  const whole = inRounds(post, first, read, [sentences, clauses], catalogue);
  if (
    whole.reading.doubts.length === 0 &&
    isWhole(whole.reading, first, catalogue) &&
    !losesWater(whole.reading, whole.gone) &&
    !tellsOfAlkali(whole.reading, whole.gone, catalogue) &&
    !whole.gone.some((one) => bears(one, weightsOf(whole.reading)))
  )
    return besideTheRecipe(whole.reading, whole.gone);
  let { reading, gone } = inRounds(post, first, read, [clauses, sentences], catalogue);
  const quoted = reading.doubts.length > 0 && fits && !first.doubts.some(isOfRecipe) ? unquoted(post) : null;
  const alone = quoted ? read(quoted.text) : null;
  if (quoted && alone?.doubts.length === 0) {
    gone = quoted.gone;
    reading = alone;
  }
  if (reading.doubts.length > 0) {
    if (!fits || first.doubts.some(isOfRecipe)) return null;
    const less = bare(post);
    if (less.gone.length === 0) return null;
    gone = less.gone;
    reading = read(less.text);
    if (reading.doubts.length > 0) return null;
  }
  if (losesWater(reading, gone) || tellsOfAlkali(reading, gone, catalogue)) return null;
  if (gone.some((one) => bears(one, weightsOf(reading)))) return null;
  return isWhole(reading, first, catalogue) ? besideTheRecipe(reading, gone) : null;
}

/** What an answer says of that. */
export const ofElse = 'I left out what tells of something else';

/** The reading of what is left, and what was left out of it. */
export function besideTheRecipe(reading: RecipeReading, gone: readonly string[], what = ofElse): RecipeReading {
  const told = gone.map((one) => `“${shortened(one)}”`).join(', ');
  return {
    ...reading,
    assumptions: [...reading.assumptions, { id: 'left-out', text: `${what}: ${told}.` }],
    fates: [...reading.fates, ...gone.flatMap((one) => fatesOf(one, 'in a sentence that tells of something else'))],
  };
}

/** It in quotes: at most a line of a phone. */
export const shortened = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 60 ? `${line.slice(0, 57).trimEnd()}…`.toWellFormed() : line;
};

const waterIs =
  /\bwater (?:\w+ )?(?:is|was|weigh(?:s|ed)|comes to|came to|makes|made) (?:[a-z]+ ){0,2}\d+(?:[.,]\d+)? ?(?:g|grams?|oz)\b/i;
/** A figure of water that nobody has read is of the pot. */
const ofWater =
  /\bwater\W{0,3}\d|\d\s?(?:g|grams?|oz|ml)?\s(?:of )?(?:\w+ )?water\b|\bwater\b[^\n]*\d\s?(?:g|grams?|oz|ml)\b/i;

/** Nothing that was weighed before is lost with the talk. */
function holdsAll(first: RecipeReading, rest: RecipeReading): boolean {
  const within = (a: readonly { readonly id: string }[], b: readonly { readonly id: string }[]): boolean =>
    a.every(({ id }) => b.some((one) => one.id === id));
  return (
    within(first.fats, rest.fats) &&
    within(first.after, rest.after) &&
    within(first.alkali, rest.alkali) &&
    within(first.acids, rest.acids) &&
    (first.waterGrams === null || rest.waterGrams !== null)
  );
}

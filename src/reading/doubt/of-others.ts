/**
 * Sentences that tell of somebody else's pot, of what others advise, or of another time: "my aunt says never more than
 * 110 g", "the last batch had 145 g lye". Where without them the post is a whole recipe whose alkali fits its fats, or
 * fats whose alkali is asked for, that one is taken and they are left out.
 */
import type { Catalogue } from '../../catalogue/types.ts';
import type { RecipeReading } from '../reading.ts';
import { superfatOf } from '../recipe/plausible.ts';
import { relations } from '../words/cue-words.ts';
import { isLikewise } from './beside-list.ts';
import { besideTheRecipe, cut, longestTalk, stretchesOf } from './talk.ts';

const elders = 'gran|granny|grandma|grandmother|grandad|granddad|grandpa|grandfather|nan|nana|nonna|great-aunt';
const people = `(?:${relations.replaceAll(' ', '|')}|${elders}|he|she|they|people|others|everyone|everybody|someone|somebody|guy|lady|woman|man|lad|teacher|(?:one|another|a third one)(?= (?:said|says|told)))`;
/** What is said, advised, or done as a habit; what somebody once did may have been done to this pot. */
const habit =
  '(?:says?|said|swears?|thinks?|reckons?|recommends?|keeps? (?:saying|telling)|told|tells|claims?|insists?|advises?|advised|suggests?|suggested|uses|takes|puts|does|makes|goes (?:for|with|by)|always \\p{L}+)';
const between = "(?:['’]s)?(?: (?!i |we )[\\p{L}'’-]+){0,4}?";
const byOthers = new RegExp(
  `(?<!\\p{L})(?:${people}${between} ${habit}|(?:${elders})${between} (?:used|took|made|did|kept))(?!\\p{L})`,
  'iu',
);
/** "Bo at work says". */
const byName = new RegExp(`(?<!\\p{L})\\p{Lu}\\p{Ll}+(?: (?:at|from|in) \\p{L}+)? ${habit}(?!\\p{L})`, 'u');
const theirs =
  /\b(?:his own|her own|for (?:her|his|their) (?:lot|batch|pot|soap|own)|for (?:hers|theirs)|(?:hers|theirs) (?:is|was|are|has|had|takes)|does (?:hers|his)|your (?:[^.?!,;:]{0,40} )?(?:one|recipe|batch|soap|loaf|bar|version)|yours (?:is|was|has|had)|for other (?:oils|fats)|(?:used|took|had|did) \d[^.?!]{0,12} for (?:the same|similar|about the same) (?:oils?|fats?|weight|amount|recipe))\b/i;

const batch = '(?:batch|time|run|soap|bar|one|loaf|pot|go|try|attempt|round)';
const atAnotherTime = new RegExp(
  [
    `\\b(?:last|previous|earlier|prior) (?:${batch}|year|month|week|spring|summer|autumn|fall|winter|christmas|easter)`,
    `\\b(?:my|the|our) (?:very )?(?:first|second|usual|normal|old|other) ${batch}`,
    '\\b(?:days|weeks|months|years|ages) ago\\b',
    '\\bin (?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december|(?:19|20)\\d\\d)\\b',
    '\\b(?:used to|(?:for|in) comparison(?! (?:to|with)\\b)|before that|back then|usually|normally|when i was|my usual)\\b',
    '\\b(?:done|made|did) [^.?!]{0,40}\\bbefore\\b(?! (?:i|we|it|the)\\b)',
    '\\b(?:for|in) the (?:original|old|full) (?:one|recipe|batch|pan|pot|plan)\\b',
  ].join('|'),
  'i',
);
/** Of the pot that is asked about, or something done to it. */
const here =
  /\b(?:today|tonight|this (?:time|one|batch|morning|week|evening|pot|recipe|soap)|now (?!she|he|they|it)|currently|tomorrow|mine|instead|forgot\w*|in there|target|my (?:pot|lye|batch|soap|oils|fats) (?:is|was|are|has|had)|(?:made|did|doing|making) it again|so (?:please )?(?:take|use|make|do)|so (?:i|we) (?:did|do|used?|took|take|put|made|went|added|followed|have)|(?:i|we) (?:then |also |just |only )?(?:followed|copied|changed|added|did the same|want|need|aim)|doubled|halved|tripled|(?:because|since|than|unlike|as in|like) (?:the )?(?:last|previous))\b/i;
const done =
  /\b(?:poured|tipped|dropped|spill\w*|spilt|emptied|threw|thrown|swapped|replaced|left out|weighed|measured|scales?|display|added|mixed up|put (?:in|another|more|some|my)|in the pot|label|bag|tub|jar)\b/i;
const ownDeed =
  /\b(?:i|we) ?(?:['’](?:ve|d|m))? ?(?:have |had |just |only |then )*(?:put|took|take|used?|made|make|went|weigh\w*|poured|did|do|(?:have|had)(?! (?:stayed|stuck|kept)\b))\b/i;
/** What stands elsewhere is taken up again. */
const takenUp =
  /\b(?:(?:the|exactly) same|likewise|ditto|me too|as (?:before|usual|always|(?:the )?last)|(?<!nothing |not )(?:like|as|than|from) (?:hers|his|theirs|last|the last|before|she|he|they)|that recipe|(?:her|his|their) recipe|instead)\b/i;

const asks =
  /\b(?:is|are|was|were|should|shall|would|could|can|do|does|did|will|am|how|what|which|why) (?:it|this|that|these|they|i|we|my|mine|the|much|many|\d)[^.!]*\?/i;

/** A superfat that somebody says may be the one that is wanted. */
const share = /%|\bper ?cent\b|\bsuper-?fat/i;
const weighs = /\d ?(?:k?g|gr|grams?|kilos?|oz|ounces?|lbs?|pounds?)\b/i;

/** It tells of no pot of the writer's, or of an earlier one. */
function tellsOfOthers(text: string): boolean {
  if (here.test(text) || asks.test(text) || (share.test(text) && !weighs.test(text))) return false;
  const isOthers = byOthers.test(text) || byName.test(text) || theirs.test(text);
  if (isOthers && !done.test(text) && !ownDeed.test(text)) return true;
  return atAnotherTime.test(text) && !done.test(text);
}

const sentences = /\n+|(?<=[.!?;…])\s+(?!\p{Ll}\.)/gu;
const figures = (text: string): readonly string[] => text.match(/\d+(?:[.,]\d+)*/g) ?? [];
const weights = (text: string): number =>
  (text.match(/\d ?(?:k?g|oz|lbs?|pounds?|ounces?|grams?)?(?!\p{L}|[\d.,:])/giu) ?? []).length;
const inviting = /\b(?:check|please|pls|plz|whats|compare|look at|judge)\b/i;
/** "Is he right?", "check both". */
const ofThem = new RegExp(
  `\\b(?:${relations.replaceAll(' ', '|')})(?:['’]?s)?\\b|\\b(?:he|she|hers|his|theirs|both|which|difference|either|whose|who['’]?s?|them|ones?|or (?:the|my|mine))\\b`,
  'i',
);
const ofMe = /\b(?:i|we|me|my|mine|us|ours?)\b/i;
/** More weights than that are a recipe of its own. */
const mostOfNote = 2;
const own =
  /\bmine\b|\bmy (?:own|pot|batch|version|recipe)\b|\b(?:i|we) ?(?:['’](?:ve|d|m))? ?(?:have |had |just |only |then |now )*(?:made|make|making|did|do|doing|took|take|used?|weigh\w*|wanted|want|put|poured|got|have)\b|\b(?:today|tonight|this (?:time|morning|one|batch))\b/i;
const counted =
  /\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty|forty|fifty|kilo|pounds?)\b/i;
const asksAlkali =
  /\bhow (?:much|many)\b[^.?!]*\b(?:lye|naoh|koh|caustic|hydroxide|soda|potash|do i (?:need|weigh)|should i (?:use|weigh))\b/i;

/** The recipe without what is told of others; null where that leaves no whole one, or nothing is told of them. */
export function withoutOthers(
  post: string,
  first: RecipeReading,
  read: (post: string) => RecipeReading,
  catalogue: Catalogue,
): RecipeReading | null {
  if (post.length > longestTalk || first.doubts.some(({ id }) => id === 'superfat-odd')) return null;
  const all = stretchesOf(post, sentences);
  const textOf = ({ from, to }: { readonly from: number; readonly to: number }): string => post.slice(from, to);
  const told = all.filter((one) => counted.test(textOf(one)) && tellsOfOthers(textOf(one)));
  if (told.length === 0) return null;
  const theirFigures = new Set(told.flatMap((one) => figures(textOf(one))));
  // "should mine be up at 160 as well, or is 142 right?"
  const isAsked = (text: string): boolean => text.includes('?') && figures(text).some((one) => theirFigures.has(one));
  const left = all.filter((one) => told.includes(one) || isAsked(textOf(one)));
  const kept = all.filter((one) => !left.includes(one));
  if (kept.some((one) => takenUp.test(textOf(one)) || isLikewise(textOf(one)))) return null;
  const { text, gone } = cut(post, left);
  // two whole recipes, of which neither is said to be the writer's own
  const most = kept.map(textOf).toSorted((a, b) => weights(b) - weights(a))[0] ?? '';
  const asked = all.map(textOf).filter((one) => one.includes('?') || inviting.test(one));
  if (asked.some((one) => ofThem.test(one))) return null;
  const isRecipe = left.some((one) => weights(textOf(one)) > mostOfNote);
  if (isRecipe && !(own.test(most) && asked.some((one) => ofMe.test(one)))) return null;
  const rest = read(text);
  if (rest.doubts.length > 0 || rest.fats.length === 0) return null;
  if (rest.alkali.length === 0)
    return rest.fats.length > 1 && asksAlkali.test(text) ? besideTheRecipe(rest, gone, ofOthers) : null;
  const fat = superfatOf(rest, catalogue);
  const fits = fat !== null && fat >= fitting.least && fat <= fitting.most;
  return fits && (first.waterGrams === null || rest.waterGrams !== null) ? besideTheRecipe(rest, gone, ofOthers) : null;
}

/** How the answer begins to say so. */
export const ofOthers = 'I left out what tells of somebody else or of another time';
/** Superfat, as a fraction, of a recipe that somebody may ask about: "is that too much?" */
const fitting = { least: -0.05, most: 0.2 };

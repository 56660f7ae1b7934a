/** Which of two recipes a question calls by name: "is the doubled one all right?", "it's the second that I ask about". */
import type { Part } from './old-and-new.ts';

const ordinals: Readonly<Record<string, 0 | 1>> = {
  first: 0,
  '1st': 0,
  former: 0,
  upper: 0,
  top: 0,
  second: 1,
  '2nd': 1,
  latter: 1,
  lower: 1,
  bottom: 1,
  last: 1,
};

const noun = '(?:one|recipe|version|batch|list|bar|soap|lot|loaf|sheet)';
/** "The doubled one", "the second that …", "my lavender bar". */
const call = new RegExp(
  `\\b(?:the|my|that|this) (?<word>[\\p{L}\\d]+) ${noun}\\b|\\bthe (?<place>${Object.keys(ordinals).join('|')})(?= (?:that|which|i)\\b|\\s*[,.?!:;)]|\\s*$)`,
  'giu',
);
/** "Sunday's", "the one from Sunday". */
const ofDay =
  /\b(?<day>(?:mon|tues|wednes|thurs|fri|satur|sun)day|today|tonight|yesterday|morning|afternoon|evening)['’]?s\b(?! (?:stall|market|fair|sale|class|course|party|wedding|guests?|meeting|weather|post))|\b(?:one|soap|batch|loaf) (?:from|of|on|i made on) (?<on>\p{L}+day)\b/giu;
const asking =
  /\?|\b(?:check|verify|judge|look(?:ing)? at|mean|ask|asking|question|please|pls|concern\w*|worr(?:y|ied)|unsure|not sure)\b/i;
const refusing = /\b(?:not|n['’]t|ignore|forget|never ?mind|than|settled|already|no need|both|either|these|which)\b/i;
const amount = /\d\s*(?:k?g|oz|lbs?|pounds?|ounces?|grams?|ml)(?!\p{L})/iu;
/** Words before the first figure of a recipe that say how it is called. */
const reach = 120;

/** What stands before the figures of a recipe, and behind those of the one before it. */
function headOf(post: string, { from, to }: Part, since: number): string {
  const first = from + Math.max(0, post.slice(from, to).search(amount));
  return post.slice(Math.max(since, first - reach), first).toLowerCase();
}

/** The one of two recipes that all questions of the post are about by its name; null where they name none, or both. */
export function calledSo(post: string, parts: readonly Part[]): Part | null {
  const [first, second] = parts;
  if (parts.length !== 2 || !first || !second || !asking.test(post)) return null;
  const heads = [headOf(post, first, 0), headOf(post, second, first.to)];
  const meant = new Set<0 | 1>();
  for (const sentence of post.match(/[^.?!\n]+[.?!]*/g) ?? []) {
    const figure = sentence.search(amount);
    // "it's today's I'm asking about: 400 g lard"
    const words = figure < 0 ? sentence : sentence.slice(0, figure);
    if (!asking.test(words) || refusing.test(words)) continue;
    for (const { groups } of [...(figure < 0 ? words.matchAll(call) : []), ...words.matchAll(ofDay)]) {
      const word = (groups?.['word'] ?? groups?.['place'] ?? groups?.['day'] ?? groups?.['on'] ?? '').toLowerCase();
      const place = ordinals[word];
      // what is asked ahead of a recipe is no heading of it
      const isIn = heads
        .map((all) => (figure < 0 ? all.replace(words.toLowerCase(), ' ') : all))
        .map((head) => new RegExp(`(?<![\\p{L}\\d])${word}(?![\\p{L}\\d])`, 'u').test(head));
      if (place !== undefined) meant.add(place);
      else if (isIn[0] !== isIn[1]) meant.add(isIn[0] ? 0 : 1);
    }
  }
  const [only] = meant;
  return meant.size === 1 && only !== undefined ? (parts[only] ?? null) : null;
}

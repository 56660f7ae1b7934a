/**
 * "The palm was all gone, so it's tallow": of two fats that a sentence names, the one that lacked stands in the list, the
 * other nowhere with a weight, so that it can only be in the place of the first.
 */

import { isThing, type Thing } from '../rows/kinds.ts';
import type { Sentence } from '../text/sentences.ts';
import { written } from './put-right.ts';
import { keyOf } from './said.ts';
import { drop, figures, type Post } from './withdrawn.ts';

/** Tokens of what lacked and of what came for it, and the sentence that says so. */
export interface RanOut {
  readonly goes: number;
  readonly comes: number;
  readonly sentence: Sentence;
}

const lacked =
  '(?:all |now |just |completely |sadly |alas )*(?:gone|finished|out|empty|missing|used up|sold out|run out|ran out|ran dry|up|rancid|off|unavailable|nowhere to be (?:had|found)|none)';
const lacking =
  '(?:out of|no more|no|didnt have|dont have|had no|have no|havent got|hadnt got|couldnt (?:get|find)|cant (?:get|find)|could not (?:get|find)|without|lacked|ran out of|short of)';
const the = '(?:the |my |any |some |enough |more |of )*';
const goes = `${the}(?<goes>@)(?: \\(?s\\b)?`;
const turn =
  '(?:so|hence|therefore|then|its|it is|it was|it will be|itll be|ill|well|make (?:it|that)|thus|now|this time|today|instead|i|we|am|im|are|using|use|used|take|took|taking|went|going|go|with|for|put|in|had|have|to|made|make|do|ended up|settled on|comes?|goes|there is|theres|just)';
const ending =
  '(?= (?:$|[-,.;:!)…]|it is\\b|it was\\b|instead\\b|then\\b|now\\b|this time\\b|today\\b|tonight\\b|will do\\b|has to do\\b|had to do\\b|in ?$|in [.,!)]|went in\\b|goes in\\b|in (?:this|it|the|its)\\b|for (?:it|now|this|that|today)\\b|here\\b|from\\b|as\\b|because\\b|and (?:its|it|the|i|we)\\b))';
const comes = `(?:[-,:;.…] |\\b(?:and|so|but) )+(?:${turn} )*${the}(?<comes>@)${ending}`;
const patterns: readonly RegExp[] = [
  `${goes} (?:(?:is|was|are|were|has|had|have|s) )*${lacked} (?:[^#@.;]{0,24} )??${comes}`,
  `\\b${lacking} ${goes} (?:[^#@.;]{0,24} )??${comes}`,
  `(?<comes>@) (?:for|instead of|in place of) ${goes} (?:[-,:;–—(] ?)*(?:as|because|since|cos)? ?(?:[^#@.;?]{0,12} )??(?:@ )?(?:(?:is|was|are|were|has|had) )*${lacked}\\b`,
].map((pattern) => new RegExp(pattern, 'd'));
/** Without a word that turns to it, a name beside is only named. */
const turned =
  /\b(?:so|then|its|it is|it was|itll be|make|now|this time|today|instead|us(?:e|ed|ing)|took|take|went|will do|had to|for)\b/;
/** In a bracket behind the name of what lacked. */
const behind = new RegExp(`^[([] (?:[^#@.;]{0,12} )??${lacked} (?:[^#@.;]{0,24} )??${comes}`, 'd');
const open =
  /\?|\b(?:if|when|once|before|could|can|would|might|may|shall|maybe|perhaps|whether|next time|until|till|or|soon|nearly|almost|always|never|usually|normally|last|should)\b/;
const hint =
  /\b(?:gone|finished|out|empty|missing|up|rancid|off|unavailable|nowhere|none|no|dont|didnt|had|have|havent|hadnt|couldnt|cant|find|get|without|lacked|short|dry)\b/;

/** What lacked, and what came for it, in the sentences of a post. */
export function ranOutIn(sentences: readonly Sentence[]): readonly RanOut[] {
  return sentences.flatMap((sentence, k) => {
    if (!sentence.retells || sentence.names === 0 || sentence.names > 3 || sentence.figures > 0) return [];
    const before = sentences[k - 1];
    const { text } = sentence;
    if (sentence.names === 1) {
      // "Couldn't get palm; it's tallow now"
      const joined = before && /; $/.test(before.text) && before.names === 1 ? `${before.text}${text}` : '';
      const isBracket = /^[([]/.test(text) && (before?.names ?? 0) > 0;
      if (open.test(joined || text)) return [];
      if (joined !== '' && before && hint.test(joined)) {
        const found = patterns[1]?.exec(joined) ?? patterns[0]?.exec(joined);
        const at = found?.indices?.groups;
        const shift = before.text.length;
        if (!at?.['goes'] || !at['comes'] || !turned.test(joined)) return [];
        return [{ goes: before.tokenAt(at['goes'][0]), comes: sentence.tokenAt(at['comes'][0] - shift), sentence }];
      }
      const at = isBracket ? behind.exec(text)?.indices?.groups?.['comes'] : undefined;
      const last = before?.text.lastIndexOf('@') ?? -1;
      return at && before && last >= 0
        ? [{ goes: before.tokenAt(last), comes: sentence.tokenAt(at[0]), sentence }]
        : [];
    }
    if (!hint.test(text) || !turned.test(text) || open.test(text)) return [];
    for (const pattern of patterns) {
      const at = pattern.exec(text)?.indices?.groups;
      if (at?.['goes'] && at['comes'])
        return [{ goes: sentence.tokenAt(at['goes'][0]), comes: sentence.tokenAt(at['comes'][0]), sentence }];
    }
    return [];
  });
}

/** What came takes the weight of what lacked; nothing is changed where it has a weight of its own. */
export function takeInstead(post: Post, { goes: gone, comes: came, sentence }: RanOut): boolean {
  const at = (token: number): Thing | undefined =>
    post.items.find((item): item is Thing => isThing(item) && item.from <= token && item.to > token);
  const [lost, taken] = [at(gone), at(came)];
  if (!lost || !taken || post.gone.has(taken)) return false;
  const [from, to] = [lost, taken].map(({ named }) => keyOf(named.meaning, post.alkalis) ?? '');
  if (from === to || !/^fat /.test(from ?? '') || !/^fat /.test(to ?? '')) return false;
  if (post.said.some(({ key, thing }) => key === to || thing === taken)) return false;
  const rows = post.said.filter((one) => one.key === from && !post.gone.has(one.amount));
  const [row, ...again] = rows;
  if (!row || post.instead.has(row.thing)) return false;
  for (const one of again) drop(post, one);
  if (lost !== row.thing) post.gone.add(lost);
  post.gone.add(taken);
  post.instead.set(row.thing, { ...row.thing, named: taken.named });
  post.back.push({
    text: `I took ${taken.named.text} (${written(row.amount.quantity)}) in the place of ${row.thing.named.text}, as the post says.`,
    gone: figures(again),
    from: Math.min(gone, sentence.from),
    to: sentence.to,
  });
  return true;
}

/**
 * What a note below a list says of a fat there: that it was another one of the same weight ("the palm was tallow, same
 * 200 g", "EDIT: not shea! It's mango butter, same amount"), that so much of another came for it ("the palm was rancid,
 * binned. Used 200 g tallow in its place"), or that the soap was made without it ("out of castor, so I did without").
 */

import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { isFat } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import { hearNotes, type Span } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, rowOf, rowsOf, type Tale, type Told, toldIn, weightAt } from './tale.ts';

/** Words of which one stands in each note that does so. */
const cues: ReadonlySet<string> = new Set(
  'same also likewise too instead place replaced swapped without left skipped omitted gram weight like not no turned turns right correct listed'.split(
    ' ',
  ),
);

const the = '(?:(?:of|the|some|my|any|fresh|plain|more|pure|good) )*';
const surely = '(?:(?:really|actually|in fact|in truth|all|along|just|only|the|some) )*';
const was = '(?:(?:bottle|tub|tin|jar|bag) )?(?:is|was|(?:turned|turns) out (?:to be|as)|proved to be)';
const so = '(?:(?:so|i|ill|we|well|im using|its|it|is|was|then|and|just|now|simply|have|had) )*';
const thereIs =
  '(?:(?:so|hence|i|ill|we|its|it|is|was|then|and|just|now|simply|have|had|theres|there|the|this|soap|pot|batch|has|got|contains) )*';
const took = '(?:(?:used?|took|take|put in|put|added|weighed in|poured in|went for|came|went in) )?';
const used = '(?:(?:used|went in|was put in|came in|put in|melted) )?';
const itsPlace = '(?:in its place|instead(?! of)|in place of it|for it)';
const other = `(?<b>#) (?:of )?${the}(?<g>@)`;
const gone = '(?<f>@) (?<how>[^#@?]{2,80}?)[-,.;:–] ';
const theSame = '(?:the |an )?(?:same|equal) (?:weight|amount|quantity)';
/** "The weight is right". */
const isRight =
  '(?:(?:the )?weights? (?:(?:is|was|are|all) )*(?:right|correct|unchanged|the same|as (?:listed|written|above|it (?:is|stands))|stays?|stayed))';
const lacking =
  '(?:out of|ran out of|run out of|had no(?: more)?|no(?: more)?|(?:didnt|dont|did not|do not) have(?: any| enough)?|havent got(?: any)?|couldnt (?:find|get)(?: any)?|lacked|lacking|forgot to buy)';
const none =
  '(?:out of|ran out of|run out of|had no|no(?: more)?|(?:didnt|dont) have any|havent got any|(?:couldnt|cant) (?:get|find)(?: any)?)';
const lacked =
  '(?:(?:was|is|had|has|all|run|ran|already|now) )*(?:(?:out(?: of stock| @(?= [,;]))?|gone|finished|empty|used up|sold out|missing|nowhere(?: to be (?:had|found))?)|(?:not|wasnt|isnt) (?:at home|here|there|available|to be (?:had|found)|in (?:stock|(?:the|my) (?:house|shop|cupboard|kitchen|drawer)))|(?:i|we) (?:didnt|dont|did not|do not|couldnt) (?:have|find|get)(?: (?:any|it|that))?)';
const without =
  '(?:\\b(?:made|did|went|managed|cooked|mixed|making|doing) (?:(?:it|this|that|mine|the|soap|one|bars?|batch|loaf|lot) )*without(?: (?:it|any|(?:the |any )?(?<again>@)(?! #)))?(?= (?:$|[-,.;:!)…]|(?:this time|today|now|in the end|again|and|but)\\b))|\\b(?:left (?:it|that) out|skipped (?:it|that)|omitted (?:it|that))(?= (?:$|[-,.;:!)…]|(?:this time|today|now|in the end|and|but)\\b)))';

const slip =
  '(?:edit(?:ed)?|correction|corrected|erratum|sorry|oops|whoops|oh|ah|argh|damn|doh|wait|hang on|hold on|no|update|typo)';
const itIs = '(?:(?:it|its|thats|it is|that is|it was|that was|this is|there was|there is|theres) )?';

const spoilt =
  /\b(?:rancid|off|bad|mou?ldy|sour|spoil(?:t|ed)|binned|thrown|threw|chucked|discarded|tossed|bin|trash|rubbish|compost|unusable|not used|gone|out|sold out|used up|finished|empty)\b/;
const wholly =
  /\b(?:binned|thrown (?:out|away)|threw (?:it|that) (?:out|away)|chucked|discarded|tossed|(?:bin|trash|rubbish|compost)|not used|unusable)\b/;
const partly = /\b(?:half|some|part|partly|bit|edges?|top|corner|third|quarter|most|rest|nearly|almost|not (?!used))\b/;

/** `unheard`: its figures contradict the list. */
type Rule = (tokens: readonly Token[], row: Weighed, told: Told, how: string) => Change | 'unheard' | null;

/** The name that takes the place of a row's, and the figure of its weight; null where nothing comes. */
interface Change {
  readonly row: Weighed;
  readonly comes: { readonly name: number; readonly figure: number } | null;
}

const isAsMuch = (tokens: readonly Token[], { figure }: Weighed, k: number): boolean =>
  isSum(weightAt(tokens, figure, figure), weightAt(tokens, k, figure));

const itWas: Rule = (tokens, row, told) =>
  isAsMuch(tokens, row, told('b')) ? { row, comes: { name: told('g'), figure: row.figure } } : 'unheard';

/** As much of it, without a figure. */
const asMuch: Rule = (_, row, told) => ({ row, comes: { name: told('g'), figure: row.figure } });

/** The same, where nobody only thought so. */
const asMuchAfterAll: Rule = (tokens, row, told, how) =>
  /\b(?:thought|believed|assumed|feared|wondered|after all|first|might|may)\b/.test(how)
    ? null
    : asMuch(tokens, row, told, how);

/** Of a fat that is gone as a whole, any weight of another may come. */
const cameForIt: Rule = (tokens, row, told, how) => {
  if (!spoilt.test(how) || partly.test(how)) return null;
  const isWhole = wholly.test(how) && isPlain(tokens[told('b')]);
  return isWhole || isAsMuch(tokens, row, told('b')) ? { row, comes: { name: told('g'), figure: told('b') } } : null;
};

/** The same weight of another, of a fat that is gone as a whole, or was crossed out. */
const cameAsMuch: Rule = (_, row, told, how) =>
  (spoilt.test(how) || crossed.test(how)) && !partly.test(how)
    ? { row, comes: { name: told('g'), figure: row.figure } }
    : null;
const crossed = /\b(?:crossed|struck|scratched) (?:it )?(?:out|off|through)\b|\b(?:cancelled|deleted)\b/;

/** Of a fat that is not there at all. */
const cameForNone: Rule = (tokens, row, told, how) =>
  !partly.test(how) && isPlain(tokens[told('b')]) ? { row, comes: { name: told('g'), figure: told('b') } } : null;

/** A name that was wrong, with the weight that it had, or its own. */
const misnamed: Rule = (tokens, row, told) => {
  const own = told('b');
  if (own >= 0 && !isPlain(tokens[own])) return 'unheard';
  return { row, comes: { name: told('g'), figure: own < 0 ? row.figure : own } };
};

/** "Without the palm", which is named again, is of no other fat. */
const leftOut: Rule = (tokens, row, told) => {
  const again = tokens[told('again')];
  return isFat(again) && thingOf(again) !== row.id ? null : { row, comes: null };
};

const patterns: readonly (readonly [Rule, string])[] = [
  [itWas, `(?<f>@) ${was} ${surely}(?<g>@) (?=[,.;(–-])[^#@?]{0,30}\\b(?:same|also|likewise)\\b[^#@?]{0,16}(?<b>#)`],
  [itWas, `(?<f>@) ${was} ${surely}(?<g>@) [^#@?]{0,30}(?<b>#) (?:too|as well|likewise|all the same)\\b`],
  [
    asMuch,
    `\\b(?:no|not any) (?<f>@) in (?:it|this|there|mine|the)\\b[^#@?]{0,70}?\\b${took}${theSame} (?:of )?${the}(?<g>@)(?= (?:$|[-,.;:!)…]|instead|in its|for it|and|but|went|this time))`,
  ],
  [
    asMuchAfterAll,
    `(?<f>@) ${was} ${surely}(?<g>@) (?:(?:in|this|batch|one|loaf|pot|time|the|here|[,(;]) )*(?:(?:gram|weight|ounce|like) for (?:gram|weight|ounce|like)|${theSame})\\b`,
  ],
  // "the jar of coconut was palm kernel oil, the label had slipped off. Same weight of course"
  [
    asMuchAfterAll,
    `(?<f>@) ${was} ${surely}(?<g>@) (?:[-,;:–(] [^#@?.!]{0,50})?(?:[-.,;:!–)] )*(?:(?:but|and|all|at|in|of|the|its|exactly|though|just) )*(?:${theSame}|${isRight})(?! (?:as|than|of(?! course))\\b)`,
  ],
  // "avocado 80 g <- crossed out, it had gone rancid. Took sweet almond instead, same weight"
  [
    cameAsMuch,
    `(?<f>@) (?:# )?(?<how>[^#@?]{2,80}?)[-,.;:–] ${so}${took}${the}(?<g>@) ${itsPlace} (?:[-,;:.(] )*(?:(?:and|at|of|in|exactly|but|the) )*(?:${theSame}|${isRight})(?! (?:as|than|of(?! course))\\b)`,
  ],
  [cameAsMuch, `(?<f>@) (?:# )?(?<how>[^#@?]{2,80}?)[-,.;:–] ${so}${took}${theSame} of ${the}(?<g>@) ${itsPlace}`],
  // "the sunflower bottle turned out to be empty so it's rapeseed in there, same weight"
  [
    cameAsMuch,
    `(?<f>@) (?:# )?(?<how>[^#@?.]{2,80}?)(?:[-,.;:–] |(?=(?:so|and|hence) ))${thereIs}${took}${the}(?<g>@) (?:(?:in|it|there|this|here|now|the|pot|soap|mix) )*(?:[-,;:.(] )*(?:(?:and|at|of|in|exactly|but|the) )*(?:${theSame}|${isRight})(?! (?:as|than|of(?! course))\\b)`,
  ],
  [cameForIt, `${gone}${so}${took}${other} (?:used )?${itsPlace}`],
  [cameForIt, `${gone}${itsPlace} (?:, )?${so}${took}${other}`],
  [cameForIt, `${gone}${so}(?:replaced|swapped) (?:it )?(?:with|by|for) ${other}`],
  [
    cameForNone,
    `\\b${none} ${the}(?<f>@) [^#@?]{0,24}?(?:[-,.;:–] |(?=so |and ))${so}${took}${other} ${used}${itsPlace}`,
  ],
  [cameForNone, `(?<f>@) ${lacked} ?(?:[-,.;:–] |(?=so |and ))${so}${took}${other} ${used}${itsPlace}`],
  [
    misnamed,
    `^(?:[-*(] )?(?:${slip} ?(?:[-:,.!;–] )*)+${itIs}(?:not|no) (?:the |any )?(?<f>@) (?:[-!.,;:–] )+(?:but |actually |really |in fact |of course |sorry |, )*(?:its|it is|it was|thats|that is|that was|i meant|meant|i mean|(?:it )?should (?:be|read|say|have been)|i used|i took) ${surely}(?<g>@)(?: (?:, )?(?:but )?(?:only |just |also |of |the |at |same )*(?:(?<b>#)|amount|weight|quantity|figure))?(?= ?(?:$|[.,;!)…]|i\\b|and\\b|sorry\\b))`,
  ],
  [leftOut, `\\b${lacking} ${the}(?<f>@) [^#@?]{0,40}?${without}`],
  [leftOut, `(?<f>@) ${lacked}\\b[^#@?]{0,40}?${without}`],
];
let made: readonly (readonly [Rule, RegExp])[] | null = null;

/** Nobody has done it, or not in this batch. */
const open =
  /\?|\b(?:if|when|could(?! not\b)|would|might|may|maybe|perhaps|next|last (?:time|batch|year|month|winter|spring|summer|autumn|loaf)|some ?day|usually|normally|always|never|once|thinking|wondering|before|earlier|previous|first|hers|his|theirs|she|he|they|her|him|you|nearly|almost|half|or)\b/;

/** "And kept everything else as it always is". */
const asEver = /\b(?:as|like) (?:it |they |i |we )?(?:always|usual|usually|normally|normal|ever|before)\b/g;

/** The list as such a note leaves it. */
export const anotherFat = (cut: Cut): Heard =>
  hearNotes<Rule>(cut, {
    cues,
    isWorth: ({ names }) => names > 0,
    patterns: () => {
      made ??= patterns.map(([rule, pattern]) => [rule, new RegExp(pattern, 'd')] as const);
      return made;
    },
    isOpen: (tale, match) => open.test(wholeOf(tale, match).replace(asEver, '')),
    hear: (rule, { tokens, sentence, tale, match, span }) => {
      const at = toldIn(tale, match);
      // the row itself may begin the note
      const row =
        rowOf(tokens, tokens[at('f')], sentence.from) ?? (rule === cameAsMuch ? rowAt(tokens, at('f')) : null);
      const name = tokens[at('g')];
      if (!row || !isFat(tokens[row.at])) return null;
      if (name && !(isFat(name) && rowsOf(tokens, name, sentence.from).length === 0)) return null;
      const change = rule(tokens, row, at, wholeOf(tale, match));
      return change === null || change === 'unheard' ? change : applied(tokens, change, span);
    },
  });

/** The one row of what is named at `k`, that stands there. */
function rowAt(tokens: readonly Token[], k: number): Weighed | null {
  const row = rowOf(tokens, tokens[k], tokens.length);
  return row?.at === k ? row : null;
}

/** What was matched, with the rest of its clauses on both sides. */
function wholeOf({ text, turn }: Tale, { index, 0: found }: RegExpExecArray): string {
  const since = Math.max(0, ...['. ', '! ', '; '].map((stop) => text.lastIndexOf(stop, index - 1)));
  const to = index + found.length;
  const behind = text.slice(to, to <= turn ? turn : text.length);
  return text.slice(since, to) + (/^[^.!;?]*.?/.exec(behind)?.[0] ?? '');
}

function applied(out: Token[], { row, comes }: Change, { from, to }: Span): PutRight {
  const [weight, goes, name] = [out[row.figure], out[row.at], out[comes?.name ?? -1]];
  const value = comes ? weightAt(out, comes.figure, row.figure) : 0;
  const back = (text: string): PutRight => ({
    text: `${text}, as the post says.`,
    gone: isPlain(weight) ? [weight.quantity] : [],
    from,
    to,
    settles: true,
  });
  hush(out, from, to, 'a part of what was said', (k) => k === row.at || k === row.figure);
  if (!isPlain(weight) || goes?.t !== 'name') return back('');
  if (name?.t === 'name') {
    const quantity = { ...withValue(weight.quantity, value), numbers: weight.quantity.numbers };
    out[row.at] = { ...goes, meaning: name.meaning, text: name.text, how: name.how, meant: name.meant };
    out[row.figure] = { ...weight, quantity };
    return back(`I took ${written(quantity)} of ${name.text} in the place of ${goes.text}`);
  }
  out[row.at] = asFiller(goes);
  out[row.figure] = asAside(weight, 'left out, as the post says');
  return back(`I left out "${goes.text} ${written(weight.quantity)}"`);
}

/** Sentences that take a thing out of a recipe or put one in the place of another. */

import type { Sentence } from '../text/sentences.ts';
import { cue } from '../words/cue-words.ts';
import { plansAhead } from './stance.ts';

/** Tokens of what goes and of what comes; `gone` is null where the sentence says "it" or "its place". */
export type Change =
  | { readonly kind: 'out'; readonly gone: number | null; readonly none?: true }
  | {
      readonly kind: 'swap';
      readonly gone: number | null;
      readonly comes: number;
      readonly eitherWay: boolean;
      /** What goes stands beside the weight that what comes takes. */
      readonly its?: true;
      /** The end of the next sentence, where that one tells what comes. */
      readonly until?: number;
    }
  /** Less of it was there: the figure that counts. */
  | { readonly kind: 'fewer'; readonly gone: number; readonly comes: number }
  /** A part of something: nobody knows how much stays. */
  | { readonly kind: 'part'; readonly gone: number; readonly comes: number | null }
  /** "Those 300 g are lard here": in the place of what weighs as much as the figure. */
  | { readonly kind: 'those'; readonly gone: null; readonly comes: number; readonly figure: number }
  /** It was spoilt, or thrown away: something may take its place. */
  | {
      readonly kind: 'spoilt';
      readonly gone: number | null;
      readonly at: number;
      readonly binned: boolean;
      /** So much of it. */
      readonly figure: number | null;
    }
  /** "It is tallow, really": what the one fat of the post is. */
  | { readonly kind: 'itself'; readonly gone: null; readonly comes: number }
  /** Something else takes the place of so much of it: a fraction, or the token of the figure. */
  | {
      readonly kind: 'share';
      readonly gone: number | null;
      readonly comes: number;
      readonly by: { readonly fraction: number } | { readonly figure: number };
    };

const some =
  '(?:(?:the|my|any|all|that|of|some|half|part|most|third|quarter|a|in|same(?: (?:weight|amount|quantity))?) |# )*';
/** "The palm of the book". */
const ofBook = '(?:(?:of|from|in) (?:the|my|her|his|this|that|an?) [a-z]+ )?';
const gone = `${some}(?<gone>@)`;
const comes = `${some}(?<comes>@)`;
/** "The castor and the shea"; the next name that has a figure is listed anew. */
const others =
  '(?: (?:, (?:and |or )?|and |or |nor |& |[+] )(?:(?:the|my|all|that|any) )*@(?! (?:(?:[:=,]|now|is|to|at) )*#))*';
const goneAll = `${some}(?<gone>@${others})`;
/** It was to come, and did not. */
const absent =
  '(?:never|(?:did|has|had|have|is|was|will) ?not|didnt|hasnt|hadnt|havent|isnt|wasnt|wont) (?:[a-z]+ ){0,2}(?:arrived?|come|came|coming|turn(?:ed)? up|show(?:ed)? up|delivered)|(?:is|was|are|were) (?:sold out|out of stock|unavailable|delayed|late)|(?:is|was|had|smelled|smelt) (?:all |a bit |too )?(?:gone |turned )?(?:rancid|off|mou?ldy|sour|spoil(?:t|ed))';
/** Why it is not in, before it is said that it is not: "castor 80 g: rancid, left out". */
const reasons =
  '(?:(?:(?:all|quite|a bit|too|had|was|is|gone|turned|went) )*(?:rancid|off|mou?ldy|sour|spoil(?:t|ed)|bad|old|expired|out (?:of )?(?:stock|@)|sold out|ran out|run out|all gone|finished|missing|empty) (?:(?:[-,;:–—]|and|so|i|we) )*)?';
/** Nothing follows that would make something else of it ("the palm out of the jar"). */
const end =
  '(?= (?:$|[-,.;:!?)\\]…]|and\\b|so\\b|because\\b|cause\\b|cos\\b|since\\b|as\\b|but\\b|now\\b|this time\\b|here\\b|completely\\b|altogether\\b|entirely\\b|again\\b|in the end\\b|for good\\b|today\\b|without\\b|after all\\b))';
const taking = '(?:leave|left|leaving|take|took|taken|taking|threw|throw|kick|kicked|cut|drop|dropped|pulled|kept)';
const removing =
  '(?:skip|skipped|skipping|remove|removed|omit|omitted|delete|deleted|ditch|ditched|scrap|scrapped|dropped|drop|forgot|forget|scratch|strike|cancelled|canceled|minus)';
const swapping =
  '(?:swap(?:ped|ping)?|replac(?:e|ed|ing)|substitut(?:e|ed|ing)|exchang(?:e|ed|ing)|chang(?:e|ed|ing)|switch(?:ed|ing)?|trad(?:e|ed|ing)|sub(?:bed|bing)?)';

const lacking =
  '(?:had|have|got|there (?:was|were)) none|none left|ran out|run out|(?:was|were|is|are) (?:all )?(?:gone|empty|out|sold out|finished)|out of stock|didnt have (?:any|it)|dont have (?:any|it)|couldnt (?:get|find) (?:any|it)';

const outs: readonly RegExp[] = [
  `\\b${taking} out ${goneAll}${end}`,
  `\\b${taking} ${goneAll} (?:back |all |both )?out${end}`,
  `\\b${removing} (?:about )?${goneAll}${end}`,
  `(?<gone>@) (?:is|are|was|stands|sits|stood|sat) still (?:standing |sitting |there )*(?:in|on|at) (?:the|my) (?:fridge|freezer|cupboard|pantry|larder|shelf|counter|worktop|table|windowsill)\\b(?![^.;!]*\\b(?:while|until|till|goes?|going|will|ready|waiting|later|then)\\b)`,
  `\\b(?:left|forgot|kept) ${gone} (?:back )?(?:in|on|at) (?:the|my) (?:fridge|freezer|cupboard|pantry|larder|shelf|shop|counter|table|kitchen|car)\\b`,
  `(?:^|[-,.:;!] |\\b(?:so|and|but|then|now|theres|is|have|used|with|that|this time|today|tonight|again) )no (?:more )?${gone}${end}`,
  `\\b(?:no|out of|dont have|didnt have|had no|havent got|couldnt get|missing) ${gone}[^#@.]{0,30}\\b(?:so|and|,) (?:i |we |ive |it |its |just )*(?:left|leave|leaving|skip|skipped|omitted|been left) (?:it |that )?out?\\b`,
  `\\b(?:this time|now|today|in the end|edit|scratch that)\\b[^#@]{0,30}\\bwithout ${goneAll}${end}`,
  `\\b(?:(?:am|im|were|are|was) not (?:going to )?(?:us(?:e|ing)|add(?:ing)?|put(?:ting)? in)|wont (?:be )?(?:us(?:e|ing)|add(?:ing)?|put(?:ting)? in)|didnt (?:use|add|put in)) ${goneAll}${end}`,
  `\\bwithout ${goneAll} (?:, )?(?:this time|today|now|in the end|please|pls)\\b`,
  `(?<gone>@) (?:(?:is|are|was|were|has been|gets|got) )?(?:now )?(?:left out|taken out|removed|deleted|omitted)${end}`,
  `(?<gone>@) (?:is|are|was|were) (?:now )?(?:out|gone|dropped|skipped|cancelled|off the list)${end}`,
  `(?<gone>@${others}) (?:are|were|have (?:both )?been) (?:now |both |all )*(?:out|gone|left out|taken out|removed|deleted|omitted|dropped|skipped|cancelled|off the list)${end}`,
  `${gone} [^#@.]{0,12}\\b(?:${absent}|${lacking})\\b[^#@.]{0,30}\\b(?:so|and|,) (?:(?:i|we|im|ill|ive|am|will|have|had|its|it|is|are|just|to|going|gonna|simply) )*(?:left|leave|leaving|skip|skipping|skipped|omit|omitting|omitted|drop|dropped|dropping|do without|doing without|did without)(?: it| that| them)?(?: out)?${end}`,
].map((pattern) => new RegExp(pattern, 'dg'));
/** Behind a row: "castor 50 g NO (ran out)", "50 g castor - nope, forgot it", "castor 50 g, not this time". */
const notIn = `(?:[-,:=–—…<\\t] )*(?:(?:(?:crossed|struck) out|not used)(?= [,.;!)])(?![^#@]*\\b(?:mistake|it is in|went in (?:all the same|anyway))\\b)|(?!.*#)(?:(?:crossed|struck) out\\b(?! by (?:mistake|accident|somebody|my|the))|(?:no|nope|nah)(?! , not\\b)(?= (?:$|[-,.;:!)…]|ran\\b|forgot\\b|left\\b|had\\b|there\\b|we\\b|i\\b|its?\\b|time\\b|thanks\\b|way\\b))|not (?:this time|today|used|added|put in|in (?:it|this|mine)|available|in stock)\\b|${reasons}(?:skipped|omitted|left (?:it |that |this )?out|forgotten|forgot (?:it|this|that)|didnt (?:use|add|have) (?:it|any))(?= (?:$|[-,.;:!)…]|this time\\b|today\\b|sorry\\b))))`;
/** "Babassu none, I'd written 100 g", "100 g babassu, but none went in": whatever weight it has. */
const noneOfIt: readonly RegExp[] = [
  `(?<gone>@) (?:# )?(?:[-:=,–—] |(?:is|was|there was|had) |no , )*(?:none|nil|zero|nothing(?! but (?:@|[.,;!?])))(?= (?:$|[-,.;:!)(]|this time\\b|today\\b|now\\b|though\\b|but\\b|i\\b|in the end\\b|in this\\b|at all\\b))`,
  `(?<gone>@) (?:# )?[^#@.;]{0,40}\\b(?:but |so |and |, )none (?:of it |of that )?(?:went|goes|got|came|ended up|made it)\\b`,
  `(?<gone>@) (?:# )?(?:, )?(?:which )?(?:im|i am|were|we are) (?:saving|keeping|holding)(?: it)?(?: back)?(?= (?:$|[-,.;:!)]|for\\b|until\\b|till\\b))`,
  // "I had 25 g jojoba weighed out too, but it's still standing on the counter"
  `# (?:of )?(?:the )?(?<gone>@) (?:, )?[^#@.;]{0,40}\\bbut (?:[a-z]+ ){0,4}(?:(?<!(?:nearly|almost) )forgot (?:it|that|about it)|still (?:standing|sitting|there)|left it (?:out|on|in))\\b(?![^.;]*\\b(?:then|later|after\\w*|stirred|added|went|put)\\b)`,
  `^(?:[-*•] )?# (?:of )?(?<gone>@) ${notIn}`,
  `^(?:[-*•] )?(?<gone>@) (?:[:=] )?# ${notIn}`,
].map((pattern) => new RegExp(pattern, 'd'));
const itOut = new RegExp(`\\b${taking} (?:it|that|them|that one|this) (?:all |right |back )?out${end}`);

/** The token of the "it" that a sentence takes out. */
export function itOutIn(sentence: Sentence): number | null {
  const at = itOut.exec(sentence.text)?.index;
  return at === undefined ? null : sentence.tokenAt(at);
}

const doing =
  '(?:i |we |its |it |now |this time |just |have )*(?:use|used|take|took|put in|put|grabbed|got|its|it is|it was|was|is|went with|went for) ';
const forIt = '(?= [^#@.]{0,12}\\b(?:in its place|in place of it|instead|for it)\\b(?! of))';
const asMuch =
  '(?<=(?:# |\\b(?:same (?:weight|amount|quantity)|as much) )(?:of )?(?:the |my )?@)(?! (?:as|more|again)\\b)';
const andUsed = `(?:and|but|so|then) (?:(?:then|i|we|have|just|simply|ve) )*(?:(?:use|used|put|took|take|added|add|weighed|went with|melted)(?: in)? (?:(?:just|exactly|an|equal|as|much) )*${comes}(?:${forIt}|${asMuch})|(?:(?:made|make) (?:it )?up|filled (?:it )?up|topped (?:it )?up) (?:(?:for )?(?:the|its) (?:weight|difference|rest|gap|place|missing [a-z]+) )?with ${comes})`;
const swaps: readonly RegExp[] = [
  `(?<comes>@) (?:# )?(?:instead of|in place of|in the place of|in lieu of|rather than|replaces|replacing|(?:takes|took|taking) the place of|(?:every|any)?where(?:ver)? (?:it|(?:the|a|my) (?:book|recipe|card|page|list)) (?:says|has)) ${gone}`,
  `\\bfor ${gone} (?:please |just |always )*read ${comes}`,
  `\\b(?:instead of|in place of) ${gone} (?:, )?(?:i |we |it |its )?(?:am |im |now |have |is |just )*(?:use|used|using|take|took|put|with|goes|is|its|have|had|comes|froze|boiled|weighed|poured|melted) ${comes}`,
  `\\b(?:out of|no more|no|dont have|didnt have|have no|had no|havent got|couldnt get|cant get) ${gone}[^#@.]{0,40}\\b(?:so|but|used|use|using|take|took|its|itll be|it will be|it is|make (?:it|that)|and) ${comes}(?= [^#@]{0,30}\\b(?:in its place|instead|for it)\\b)`,
  `\\b(?:out of|dont have|didnt have|have no|had no|(?:was|is|were) no|havent got|couldnt get|could not get|cant get) ${gone}[^#@.]{0,30}\\b(?:so|and) (?:i |we |have |just |simply )*(?:use|used|am using|im using|take|took|put in|put|its|it is|went with) ${comes}`,
  `${gone} (?:, )?[^#@.]{0,30}\\b(?:${lacking})\\b[^#@.]{0,30}(?:so|and|but|,) [^#@.]{0,20}${comes}(?= [^#@.]{0,30}\\b(?:instead|in its place|for it)\\b)`,
  `${gone} (?:, )?[^#@.]{0,30}\\b(?:${lacking}|(?:was|were|is|had|has|smelled|smelt|looked) (?:all |a bit |too |long )?(?:missing|off|unavailable|used up|rancid|bad|spoil(?:t|ed)|mou?ldy|turned|expired|gone (?:off|bad|rancid|mou?ldy)))\\b[^#@.]{0,24}(?:so|but|and|,) ${doing}${comes}`,
  `\\bno ${gone} (?:left |there |in the shop |at the shop |in stock |to be had )*(?:, |so |and |but )+${doing}${comes}`,
  `\\b(?:it says|i wrote|i typed|i put) ${gone} (?:, )?but [^#@.]{0,20}${doing}${comes}`,
  `${gone}(?: #)? [^#@.]{0,40}\\b${swapping} (?:all of |all )?(?:it|that|them)(?: all)? (?:out )?(?:for|with|by) ${comes}`,
  `${gone} (?:in (?:my|the|our|this) [a-z]+ )?(?:became|becomes|turned into|turns into|was replaced by|got replaced by|went over to) ${comes}`,
  `\\bno ${gone}[^#@.]{0,30}\\b(?:instead|in its place)(?: of (?:it|that))? (?:, )?(?:i |we |it |there )?(?:am |now |have |is |just )*(?:use|used|using|take|took|put|went with|goes|went|comes) ${comes}`,
  `\\b(?:use|used|using|take|took) ${comes} for ${gone}(?:${end}|(?= in (?:my|our|this)\\b))`,
  `(?<gone>@) (?:is|are|was|were|becomes) (?:all |really |actually )*(?:now |today )${comes}(?! #)`,
  `(?<gone>@) (?:is|are|was|were|becomes) (?:all |really |actually )*${comes}(?= (?:now|today|this time|instead|these days)\\b)`,
  `(?<gone>@) (?:is |was )?out (?:, |and |; )+(?<comes>@) (?:is |was |goes |went )?in${end}`,
  `\\b(?:dont|do not|didnt|never|wont|cant) (?:use|like|do|want|eat|touch|buy|keep|trust|get|have|find|stand) ${gone}[^#@.]{0,30} (?:so|and|,) (?:for me |with me |in mine |here )?(?:thats|its|theyre|(?:those|these|that|the|it|all|my|her|his|their) (?:# )?(?:of it |of that )?(?:is|are|was|were|became|become|becomes|goes|went|gets|get)) (?:now |all |to |as |in |just )*${comes}`,
  `\\b(?:dont|do not|never|wont|cant) (?:use|like|do|eat|touch|buy|keep|trust) ${gone}[^#@.]{0,30} (?:so|and) (?:i|we) ?(?:am |m |re |are |have |ve |just |simply |always )*(?:use|used|using|put|putting|take|took|taking|went with)(?: in)? ${comes}(?= [^#@.]{0,12}\\b(?:in its place|instead|for it)\\b(?! of))`,
  `\\b(?:dont|do not|never|wont|cant) (?:use|like|do|eat|touch|buy|keep|trust) ${gone}[^#@.]{0,30} (?:so|and) (?<comes>@) (?:is |was |goes |went |comes |gets )(?:used |put )?(?:in )?(?:in its place|instead|for it)\\b(?! of)`,
  // "I left the palm out and used the same weight of lard in its place"
  `\\b(?:${taking} ${gone} (?:back )?out|${taking} out ${gone}|${removing} ${gone}) (?:[a-z]+ )?(?:, )?${andUsed}`,
  `\\b(?:dont|do not|didnt|never|wont|cant|cannot) (?:use|like|do|want|eat|touch|buy|keep|trust|stand|have|get) ${gone} [^#@.]{0,20}\\b(?:so|and) (?:i|we) (?:have |just )*(?:left|leave|took|kept) (?:it|that) out (?:[a-z]+ )?(?:, )?${andUsed}`,
  // "I don't do palm, so lard instead"
  `\\b(?:dont|do not|didnt|never|wont|cant|cannot) (?:use|like|do|want|eat|touch|buy|keep|trust|stand|have|get) ${gone} (?:, )?(?:so|and|but) (?:its )?${comes}(?= (?:instead|in its place|in place of it)\\b)`,
  `\\b(?:in|with|for) (?:me|mine|my version|my batch|my pot) (?:the |her |his |their |that |those |these )*(?:# (?:of )?)?(?<gone>@) (?:is|are|was|were|became|becomes) (?:now |all |just )*${comes}`,
  `(?<gone>@) (?:# )?(?:, )?(?:is|are|was|were|became|becomes) (?:now |all |just )*${comes} (?:# )?(?:in|with|for|at) (?:me|mine|my version|my batch|my pot)\\b`,
  `\\b(?:where|wherever|everywhere|anywhere|when|whenever) (?:she|he|they|it|(?:the|a|my) (?:book|recipe|card|page|list)) (?:has|have|had|says|said|puts|takes|uses|used|took) ${gone} (?:, )?(?:i|we|mine|it|theres|there) (?:is |now |have |has |just |always )*(?:have|has|had|use|used|take|took|put|is|goes|went|says|with) ${comes}`,
  `\\b(?:for|in place of) (?:her|his|their|the) ${gone} (?:, )?(?:i|we) (?:have |now |just )*(?:use|used|take|took|put|have|had)(?: in)? ${comes}`,
  `\\bnot ${gone} (?:, )?but ${comes}`,
  `\\b(?:its|it is|theres|there is|that is|in its place (?:[,:] )?(?:so|thats|makes)|for it (?:[,:] )?so) # (?:of )?(?<comes>@) (?:in (?:there|it|the pot) )?(?:, )?(?:and )?(?:no|not) (?:any )?(?<gone>@)`,
  // "where I put palm I mean palm kernel", "where it says palm, read lard"
  `\\b(?:(?:by|with|for) |(?:(?:every|any)?where(?:ver)?|when(?:ever)?) (?:(?:i|we|it|the (?:list|post|recipe|card|sheet)) )?(?:put|wrote|write|says?|said|typed|have|has|listed|reads) )(?:the )?${gone} (?:, )?(?:(?:i|we) (?:really |actually |of course |just )?(?:mean|meant)|(?:please )?read|its|it is|thats|that is|it (?:means|should (?:be|say|read))) (?:really |actually )?${comes}`,
  `\\b(?:its|it is|it was|i meant|meant|that is|thats|that was|should be|should read|actually|edit :|is|sorry ,) ${comes} (?:, )?(?:and )?not ${gone}`,
  `\\b(?:edit|correction|sorry|oops|whoops)\\b[^#@]{0,10}\\bthe (?<gone>@) (?:is|was) ${comes}(?= (?:$|[.,;!)]))`,
  `(?<gone>@) (?:should be|should read|should say|should have been|is really|is actually|- >|= >) ${comes}`,
].map((pattern) => new RegExp(pattern, 'd'));
const swapFor = new RegExp(
  `\\b${swapping} (?:out )?${gone} ${ofBook}(?:out )?(?:# )?(?:for|with|by|to|against) ${comes}`,
  'd',
);
/** "Swapped the palm for lard and the shea for cocoa butter". */
const swapAgain = new RegExp(`^ (?:, |and )+${gone} ${ofBook}(?:for|with|by|to|against) ${comes}`, 'd');
const allSwaps: readonly RegExp[] = [...swaps, swapFor];
const inItsPlace: readonly RegExp[] = [
  `\\b(?:in its place|instead|in place of it|for it)\\b (?:, )?(?:comes|goes|is|i|we|there is|now|use|used|take|took|put|have|went|with|theres| )*${comes}`,
  // "used lard instead", "lard took its place"; what is weighed anew has its own row
  `(?:^|[-,;:–—] |\\b(?:and|but|so|then) )(?:(?:then|i|we|have|ve|just|simply|its|theres) )*(?:use|used|put|took|take|added|weighed|went with|melted)(?: in)? (?:(?:the|my|some|only) )*(?<comes>@)(?= (?:in |into )?(?:its place|instead|for it)\\b(?! of))`,
  `(?<!# (?:of )?)(?<comes>@) (?:has |now |just )*(?:(?:took|takes|taken) its place|(?:went|goes|is|came|comes) (?:in |into )?(?:its place|instead))\\b(?! of)`,
].map((pattern) => new RegExp(pattern, 'd'));

/** "Palm 300 g (lard instead)". */
const inBracket =
  /^[([] (?:(?:no|nope|nah|i|we|used|use|took|take|with|put|in|its|was|the|my|some|[,-]) )*(?<comes>@) instead(?= [)\],.;])/d;

const partOf = '(?:a |one |about )?(?<part>half|third|quarter|#) (?:of )?(?:the |my |that |her |his )?';
const became =
  '(?:(?:is|was|are|were|has|have|been|now|replaced|swapped|became|become|becomes|gets|got|went|goes|turned) )(?:(?:now|been|replaced|swapped|substituted|exchanged|by|with|for|into|over|to|today|the|some) )*';
/** "Half of it is now lard", "replaced a third of the palm with lard", "got lard, so I replace 100 g of the palm with it", "lard instead of 100 g of the palm". */
const shares: readonly RegExp[] = [
  `(?<!\\bother )(?<![#@\\w])${partOf}(?:it|that|them|(?<gone>@)) ${became}(?<comes>@)`,
  `\\b${swapping} (?:out )?${partOf}(?:it|that|them|(?<gone>@)) (?:out )?(?:for|with|by|to|against) (?:the |some )?(?<comes>@|# (?:of )?@)`,
  `(?<comes>@) [^#@.;]{0,40}\\b${swapping} (?:out )?${partOf}(?<gone>@) (?:out )?(?:for|with|by|to|against) it\\b`,
  `(?<comes>@) (?:# )?(?:(?:is|was|went|goes|in) )*(?:instead of|in place of|in the place of|in lieu of|replaces|replaced|replacing) ${partOf}(?<gone>@)`,
  `\\b(?:use|used|using|take|took|put|put in) (?<comes>@) for ${partOf}(?<gone>@)`,
  `\\b(?:instead of|in place of) ${partOf}(?<gone>@) (?:, )?(?:i |we |its |there )?(?:am |is |have |now |just )*(?:use|used|using|take|took|put|with|goes|went|comes|put in) (?<comes>@|# (?:of )?@)`,
].map((pattern) => new RegExp(pattern, 'd'));
const restOf = `(?:(?:and|but|for) )*(?:the )?(?:(?:other|remaining) (?:half|thirds|quarters|part)|rest) (?:of it )?(?:, )?(?:(?:i|we|is|was|got|then|had|have|used|took|made up) )*(?:(?:${swapping} )?(?:for|with|by|to|against) |from )?(?:the |some )?(?<comes>@)`;
/** "Of the palm I used only half, the other half I swapped for lard", "half the palm went in, for the rest I took lard". */
const rests: readonly RegExp[] = [
  `\\bof (?:the |my )?(?<gone>@) (?:(?:i|we|have|had|only|just) )*(?:use|used|take|took|put in|put|weighed|went in) (?:(?:only|just|exactly|a) )*(?<most>half|third|quarter)(?: in| of it)? (?:[,;-] )?${restOf}`,
  `\\b(?:used|use|took|take|put in|only|just) (?:(?:only|just|exactly|a) )*(?<most>half|third|quarter) (?:of )?(?:the |my )?(?<gone>@) (?:went in )?(?:[,;-] )?${restOf}`,
].map((pattern) => new RegExp(pattern, 'd'));
const fractions: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };

const those =
  /\b(?:those|these|that|her|his|their|the) (?<part>#) (?:of it )?(?:is|are|was|were|became|will be) (?:now |all |just )*(?<comes>@)(?! #)/d;
/** Something is not as it was, or not as somebody else has it. */
const isSo =
  /\b(?:those|these|her|his|mine|now|instead|today|time|was|were|became|went|turned|replac\w*|swap\w*|place|lieu|no|dont)\b/;
const unsure = /\?|\b(?:if|would|could|should|maybe|perhaps|might|or)\b/;

function thoseIn(sentence: Sentence): Change | null {
  const { text } = sentence;
  const at = those.exec(text)?.indices?.groups;
  const [part, comes] = [at?.['part']?.[0], at?.['comes']?.[0]];
  if (part === undefined || comes === undefined || unsure.test(text) || !isSo.test(text)) return null;
  return { kind: 'those', gone: null, comes: sentence.tokenAt(comes), figure: sentence.tokenAt(part) };
}

const sure =
  '(?:really |actually |in fact |in truth |now |all |just |only |the |some |her |his |my |dried |rendered )*';
/** "Yes, it IS tallow, 40 oz", "it turned out to be tallow", "I took tallow in the end, 40 oz". */
const itself = new RegExp(
  `(?:^|[-,;:.(>] |\\b(?:yes|but|and|so|sorry|oops|whoops|actually|because|since|wait|that|says|label|found) )(?:(?:its|it is|thats|that is|it was|that was|this is|it has been|that would be|it (?:really|actually) (?:is|was)|(?:it|that|the (?:fat|stuff|lard|oil|block|tub)) turned out to be) ${sure}|(?<=\\b(?:yes|yeah) (?:, )?)(?:i|we) did (?:use|take) |(?:i|we) (?:did |really |actually |have )*(?:used|use|took|melted|weighed|went with|put in) ${sure}(?=@ (?:, )?(?:in the end|after all|in fact|in reality|and not)\\b))(?<comes>@)(?<sure> (?:, )?(?:actually|really|now|today|in fact|in the end|after all|indeed|this time))?(?: ,)?(?: (?:same|still|all|also|and|the|in|fact|end))*(?: ,)?(?: (?<part>#))?(?= (?:$|[-,.;:!?)…]|and\\b|so\\b|but\\b))`,
  'd',
);
/** It is said against what was said before. */
const insisting =
  /\b(?:yes|yeah|actually|really|in fact|turned out|in the end|after all|indeed|sorry|oops|whoops|wait|label|checked|found|kept|now)\b/;

function itselfIn(sentence: Sentence): Change | null {
  const { text } = sentence;
  const found = insisting.test(text) ? itself.exec(text) : null;
  const at = found?.indices?.groups;
  const comes = at?.['comes']?.[0];
  const part = at?.['part']?.[0];
  if (
    !found ||
    comes === undefined ||
    /\b(?:if|would|could|should|maybe|perhaps|might|or|not|no|also|too|as well)\b/.test(text)
  )
    return null;
  return part === undefined
    ? { kind: 'itself', gone: null, comes: sentence.tokenAt(comes) }
    : { kind: 'those', gone: null, comes: sentence.tokenAt(comes), figure: sentence.tokenAt(part) };
}

function shareIn(sentence: Sentence): Change | null {
  const { text } = sentence;
  if (!parting.test(text)) return null;
  for (const pattern of rests) {
    const found = pattern.exec(text);
    const { gone, comes } = found?.indices?.groups ?? {};
    const most = fractions[found?.groups?.['most'] ?? ''];
    if (gone && comes && most !== undefined)
      return {
        kind: 'share',
        gone: sentence.tokenAt(gone[0]),
        comes: sentence.tokenAt(comes[0]),
        by: { fraction: 1 - most },
      };
  }
  for (const pattern of shares) {
    const found = pattern.exec(text);
    const { part = '', comes: what = '' } = found?.groups ?? {};
    const at = found?.indices?.groups;
    const [, to] = at?.['comes'] ?? [];
    const [of] = at?.['part'] ?? [];
    if (!at || to === undefined || of === undefined || what === '') continue;
    // "3.7 ounces, that is the lye"
    if (part === '#' && (!isSo.test(text) || !(at['gone'] || /# of /.test(found?.[0] ?? '')))) continue;
    const fraction = fractions[part];
    return {
      kind: 'share',
      gone: at['gone'] ? sentence.tokenAt(at['gone'][0]) : null,
      comes: sentence.tokenAt(to - 1),
      by: fraction === undefined ? { figure: sentence.tokenAt(of) } : { fraction },
    };
  }
  return null;
}

const parting = /\b(?:half|third|quarter)\b|# (?:of )?(?:the |my |that |her |his )?(?:@|it\b|that\b|them\b)/;

const says =
  /\b(?:still|out|none|ran|run|became|becomes|turned|turns|left|kept|no|not|without|skip\w*|remov\w*|omit\w*|delet\w*|ditch\w*|scrap\w*|drop\w*|forg[eo]t|minus|scratch|strike|cancel\w*|instead|place|rather|replac\w*|swap\w*|substitut\w*|exchang\w*|chang\w*|switch\w*|trad\w*|sub(?:bed|bing)?|should|mean|meant|is|are|was|were|gone|where|dont|didnt|couldnt|cant|have|had|havent|for|(?:every|any)?where(?:ver)?|[>])\b/;
/** One at least of these is in all that takes a thing out or puts one in. */
const changing =
  /\b(?:still|wrote|typed|finished|empty|out|left|kept|gone|off|no|not|without|skip\w*|remov\w*|omit\w*|delet\w*|ditch\w*|scrap\w*|drop\w*|forg[eo]t|minus|scratch|strike|cancel\w*|instead|place|lieu|none|ran|run|became|becomes|turned|turns|rather|replac\w*|swap\w*|substitut\w*|exchang\w*|chang\w*|switch\w*|trad\w*|sub(?:bed|bing)?|should|mean|meant|edit|correction|sorry|oops|whoops|really|actually|dont|didnt|havent|couldnt|cant|wont|(?:every|any)?where(?:ver)? (?:it|she|he|they|the|a|my)|(?:with|for|in) (?:me|mine|her|his|the)|read)\b|[#@] for |\bfor it\b|\bnow\b|[-=] >/;
/** Nobody has done it yet, or only asks. */
const wondering =
  /\?|\b(?:if|could|can|would|might|may|shall|maybe|perhaps|thinking|considering|wondering|whether|want to|wanted to|next time|try|prefer|better|recommend\w*|suggest\w*|until|till|or|always|never|usually)\b/;
/** "And put 150 g more olive in" says how much, and takes no part of what goes. */
const partly = /(?<!# )\bmore @|\b(?:half|part|some of|third|quarter|most of|a bit of|a little of|partly)\b/;

/** Somebody else does it, or did. */
const strangers =
  /\b(?:you|she|he|they|people|others|everybody|everyone|somebody|someone|some|most|grandma|grandmother|gran|nan|granny|mum|mom|mother|dad|father|friend|friends|sister|brother|aunt|neighbou?r|recipe|book) (?:always |often |usually |just |said |says |told |used |uses |use |took |takes |take |puts |put |swap\w* |replac\w* |sub\w* |left |leave |leaves |skip\w* |would )/;
/** "Swapped the palm for lard in my 500 g palm, is 136 g still right?": what is asked is something else. */
const done =
  /^(?:["(-] ?)?(?:(?:hi|hello|hey|ok|so|and|but|today|now|yesterday|again|help|question|all|everyone|there|,|:|!|this time|last night|this morning) )*(?:(?:i|we|ive|weve|have|had|just|already|now|then|only|simply) )*(?:swapped|replaced|substituted|subbed|exchanged|switched|traded|changed|used|took|put|left|dropped|skipped|omitted|removed|ditched|ran)\b/;
/** "Is it ok or did I mess up?" */
const asked = /\?|\bor (?:did|have|is|was|am) (?:i|it|this|that)\b/g;
/** "I'd swap half of it for lard": nobody has; "I'd swapped it" is done. */
const would =
  /\bi ?'?d (?:just |rather |always |probably |personally |simply |also |definitely )*(?:swap|replace|sub|substitute|switch|exchange|trade|change|drop|skip|leave|lose|use)\b/;
const isOpen = (text: string): boolean =>
  would.test(text) ||
  nearly.test(text) ||
  plansAhead.test(text) ||
  thoughtBetter.test(text) ||
  wondering.test((done.test(text) ? text.replace(asked, '') : text).replace(aversion, '').replace(standing, '')) ||
  strangers.test(text);
/** "I nearly swapped the palm", "was about to leave it out": nobody did. */
export const nearly =
  /\b(?:nearly|almost|(?:was|were|am) (?:just |already )?(?:about|going|tempted|inclined) to|came (?:very |so )?close to|(?:had )?thought (?:of|about)|toyed with|considered|contemplated|dithered|(?:first|at first) (?:i|we) wanted to|(?:i|we) first wanted to) (?:[a-z]+ ){0,2}(?:swap|replac|sub|exchang|chang|switch|trad|us(?:e|ing)\b|tak|leav|left|skip|omit|drop)[a-z]*\b/;
/** "I meant to drop the castor but left it in", "wanted to swap the lard for tallow but didn't": nobody did. */
const thoughtBetter =
  /\b(?:planned|meant|wanted|intended|hoped|going|supposed|thought) (?:to |about |of )(?:[a-z]+ )?(?:swap|replac|sub|exchang|chang|switch|trad|leav|skip|omit|drop|remov|tak)[a-z]* [^#]*?\b(?:but|yet|then|and)\b [^#]*?\b(?:(?:left|put|kept|had) (?:it|them|that|those|the @) in\b(?! (?:the (?:jar|tub|bottle|cupboard|fridge)|store))|(?:it|they|that|the @) (?:all )?(?:went|stayed|is|was|are|were) in\b|(?:didnt|did not|never did|forgot)(?= (?:$|[-,.;:!)–—]|to\b|in the end|after all|it\b|that\b|so\b|do\b)))/;
/** "I never use palm, so I replaced it with lard" is done. */
const aversion = /\bnever (?:use|eat|buy|keep|have|touch|like|cook with|arrived|came|turned up|showed up)\b/;

/** "Wherever it says palm I always use lard" is so in this one, too. */
const standing = /(?<=\b(?:wherever|everywhere|whenever) [^.;?]*)\b(?:always|usually)\b/;

/** "Take it out" is a step of the work, unless the post changes its mind. */
const mind =
  /\b(?:once|had|but|edit|decided|actually|in the end|originally|first|no longer|no more|any ?more|changed|scratch|completely|altogether|entirely)\b/;
const takesItOut = (text: string): boolean => text.includes(' out') && itOut.test(text) && mind.test(text);

/** "The shea still sat on the counter, so it never went in". */
const neverIn = /(?<gone>@) (?:[^#@.;]{0,40} )?never (?:went|made it|got|goes) (?:in|into)\b/d;

/** "200 g palm, but my tub gave only 120 g": not of another thing, and not asked for. */
const fewer =
  /(?<gone>@) (?:# )?(?:, )?[^#@.;]{0,40}\b(?:(?:had|have|got|gave|held|contained|yielded|was|were|found) only|only (?:had|have|got|gave|held|contained|yielded|found|weighed)|(?:ran out|gave out|was empty|ended|was finished) at) (?:about )?(?<comes>#)(?= (?:in it|in there|left|of (?:it|that))? ?(?:$|[-,.;:!)…]|so\b|and\b|then\b|which\b))/d;

/** "Castor 60 g (left out)", "castor 60 g (none)". */
const remark = new RegExp(
  `^[([] ${reasons}(?:(?:none|nil|nothing|nope|nah|no)(?! , not\\b)(?= (?:[)\\],]|for me\\b|of it\\b))|(?:i |we )?(?:left (?:it |that |this )?out|not used|omitted|skipped|didnt use(?: it)?|did not use(?: it)?|crossed out|not in it)\\b)[^#@]*$`,
);

/** "I made up the missing ounce with lard", "the rest is lard": by as much as another thing became less. */
const filling =
  /\b(?:(?:made|make|making|filled|topped) (?:it |that )?up (?:for )?|filled |replaced )?(?:the|that) (?:rest|difference|gap|remainder|shortfall|missing(?: [\p{L}]+)?) (?:of (?:it|that) )?(?:(?:is|was|are|were|went|with|by|from|came|comes|in|using|as) )+(?:the |some )?(?<comes>@)(?! #)/du;

/** The token of what fills up what was lacking; null where nothing does. */
export function fillingIn(sentence: Sentence): number | null {
  const found = sentence.retells || sentence.tells ? filling.exec(sentence.text) : null;
  return found ? sentence.tokenAt(found.indices?.groups?.['comes']?.[0] ?? 0) : null;
}

/** The changes of a recipe that a sentence tells. */
export function changesIn(sentence: Sentence): readonly Change[] {
  if (!sentence.retells) return none;
  const { text } = sentence;
  if (sentence.names === 0) return remark.test(text) || (takesItOut(text) && !isOpen(text)) ? itsOut : none;
  const left = text.includes('never') && !/\b(?:if|would|until)\b/.test(text) ? neverIn.exec(text) : null;
  if (left) return [{ kind: 'out', gone: sentence.tokenAt(left.indices?.groups?.['gone']?.[0] ?? 0) }];
  if (noneSaid.test(text) && !isOpen(text)) {
    for (const pattern of noneOfIt) {
      const found = pattern.exec(text);
      if (found)
        return [{ kind: 'out', gone: sentence.tokenAt(found.indices?.groups?.['gone']?.[0] ?? 0), none: true }];
    }
  }
  const has = (bits: number): boolean => (sentence.cues & bits) !== 0;
  const mayShare = has(cue.shared);
  const those =
    (sentence.figures > 0 && mayShare ? thoseIn(sentence) : null) ?? (has(cue.insists) ? itselfIn(sentence) : null);
  const same = those ? [those] : none;
  const isLess = text.includes('only') || text.includes(' at #');
  const isChanged = (has(cue.changes | cue.forWith) || text.includes('>')) && changing.test(text);
  if (!isLess && !isChanged && !mayShare) return same;
  const isParted = parting.test(text);
  if (!isLess && !isChanged && !isParted) return same;
  if (!isParted && !(says.test(text) || text.includes('only'))) return same;
  if (isOpen(text)) return same;
  const place = (found: RegExpExecArray, name: 'gone' | 'comes'): number =>
    sentence.tokenAt(found.indices?.groups?.[name]?.[0] ?? 0);
  const less = isLess && sentence.figures > 0 ? fewer.exec(text) : null;
  if (less) return [{ kind: 'fewer', gone: place(less, 'gone'), comes: place(less, 'comes') }];
  const share = isParted && mayShare ? shareIn(sentence) : null;
  if (share) return [share];
  if (isChanged) {
    for (const pattern of sentence.names > 1 ? allSwaps : []) {
      const found = pattern.exec(text);
      if (!found) continue;
      if (partly.test(text)) return [{ kind: 'part', gone: place(found, 'gone'), comes: place(found, 'comes') }];
      const eitherWay = pattern === swapFor;
      const list: Change[] = [{ kind: 'swap', gone: place(found, 'gone'), comes: place(found, 'comes'), eitherWay }];
      let from = found.index + found[0].length;
      for (let more = swapAgain.exec(text.slice(from)); eitherWay && more; more = swapAgain.exec(text.slice(from))) {
        const at = (name: 'gone' | 'comes'): number =>
          sentence.tokenAt(from + (more?.indices?.groups?.[name]?.[0] ?? 0));
        list.push({ kind: 'swap', gone: at('gone'), comes: at('comes'), eitherWay });
        from += more[0].length;
      }
      return list;
    }
    const replaced = firstOf(inItsPlace, text);
    const inPlace = inBracket.exec(text);
    const changes: Change[] = outs.flatMap((pattern): Change[] => {
      const goes = [...text.matchAll(pattern)].flatMap(({ indices }) => {
        const [from, to] = indices?.groups?.['gone'] ?? [0, 0];
        return [...text.slice(from, to).matchAll(/@/g)].map(({ index }) => sentence.tokenAt(from + index));
      });
      return goes.map((at) =>
        partly.test(text) ? { kind: 'part', gone: at, comes: null } : { kind: 'out', gone: at },
      );
    });
    const [only, more] = changes;
    if (replaced && only?.kind === 'out' && !more)
      return [{ kind: 'swap', gone: only.gone, comes: place(replaced, 'comes'), eitherWay: false }];
    if (replaced) changes.push({ kind: 'swap', gone: null, comes: place(replaced, 'comes'), eitherWay: false });
    else if (inPlace)
      changes.push({ kind: 'swap', gone: null, comes: place(inPlace, 'comes'), eitherWay: false, its: true });
    if (changes.length > 0) return changes;
  }
  if (same.length > 0) return same;
  return takesItOut(text) ? itOutOf(sentence) : none;
}

/** "The shea had gone hard, in the end I left it out": what was named last before "it", and weighed elsewhere. */
function itOutOf(sentence: Sentence): readonly Change[] {
  const { text } = sentence;
  const place = text.lastIndexOf('@', itOut.exec(text)?.index ?? 0);
  return place < 0 || sentence.figures > 0 ? itsOut : [{ kind: 'out', gone: sentence.tokenAt(place) }];
}

function firstOf(patterns: readonly RegExp[], text: string): RegExpExecArray | null {
  for (const pattern of patterns) {
    const found = pattern.exec(text);
    if (found) return found;
  }
  return null;
}

const noneSaid = new RegExp(
  `\\b(?:none|nil|zero|nothing|saving|keeping|holding)\\b|\\bbut\\b[^#@.;]*\\b(?:forgot|still|left)\\b|^(?:[-*•] )?(?:# (?:of )?@|@ (?:[:=] )?#) (?:[-,:=–—…<\\t] )*${reasons}(?:no|nope|nah|not|crossed|struck|skipped|omitted|left|forgot|forgotten|didnt)\\b`,
);

const none: readonly Change[] = [];
const itsOut: readonly Change[] = [{ kind: 'out', gone: null }];

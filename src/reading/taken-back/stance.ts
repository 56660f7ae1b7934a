/** What the words around a figure say of it: that it counts now, that it did once, that it puts another right. */

import type { Sentence } from '../text/sentences.ts';
import { cue } from '../words/cue-words.ts';
import { isIngredient, isWeight, isWord, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { figureOf, thingOf, weighedThings } from '../words/weighed.ts';

/**
 * `right`: it puts an earlier figure right. `now`: it is so now, or was done in fact. `once`: it is so no longer.
 * `told`: a recipe or the like says it, or it was so at another time; it gives way to one that is so now. `others`: some
 * other person says it; it gives way to any that the writer has.
 */
export type Stance = 'right' | 'now' | 'once' | 'told' | 'others' | null;

/** A sentence, or the sentences behind it, put something right. */
const rights =
  /^(?:oh )?no (?:[!,] )+|\b(?:edit(?:ed)?(?= [:#-])|edit(?=$)|p ?\. ?s\b|ps(?= [:-])|correction|erratum|oops|whoops|woops|sorry(?! (?:for|if|to|about|this|in)\b)|scratch that|strike that|meant(?! to (?:ask|post|check|share))(?: to (?:say|write|type))?|should have (?:said|read)|make (?:that|it)(?= [#@])|no , wait|(?<!\b(?:is|means?|with|has|have|needs?|theres|there|its|requires) )no wait\b(?! (?:(?:when|if)(?! (?:i|we|it)\b)|between|before|after|needed|required|necessary|time|at all|with|for)\b[^#@]*$)|wait ,? ?no|oh wait|^wait\b|\bwait ,|hang on|hold on|typo|mistyped|misread|(?:cant|cannot|can not|couldnt|could not) (?:even )?read (?:my|the|his|her|our)(?: own)? [\p{L}]+\b(?! [^#]*\b(?:may|might|could|either|or)\b)|my bad|my mistake|(?:sent|posted|hit|pressed|tapped|clicked)(?: (?:it|that|this|send|enter|return|post|the|button))* (?:too|way too|so) (?:early|soon)|fat fingers?|update(?= [:#-]))|@ # (?:, )?(?:and )?not (?=#)/u;
/** What stands behind these is all meant to put right, up to the end of the paragraph. */
const heading = /\b(?:edit(?:ed)?|correction|erratum|update|ps|p ?\. ?s \.?)(?= [:#-]| $|$)/;

/** Of somebody else, or not for certain. */
const doubtful =
  /\b(?:(?:calc\w*|chart|book|recipe|card) (?:says|said|wants|wanted|has|had|gives|gave|shows|calls|asks|asked|reads|tells)|she|he|they|friend|somebody|someone|recommend\w*|suggest\w*|tells?|says|would|could|if|maybe|perhaps|or(?! (?:something|so|whatever|thereabouts|the like|other)\b)|more|another|extra|additional|half|part|only (?:have|had|got))\b/;

/** "Wait, the list says the lard was #". */
const paperSays =
  /\b(?:my|the|our) (?:note(?:book|s)?|list|diary|journal|card|sheet|paper|page|photo|log|book|label) (?:says|said|has|had|shows|reads|gives)\b[^#]*$/;

const nowBefore =
  /\b(?:so (?:its|it is|that is|thats|it was)|(?:is|are|its|now its|it is) now|now (?:it )?is|(?:i|we) now|now (?:(?:i|we|im|its) )?(?:only |just |back )*(?:use|take|using|taking|at|down (?:to|at)|up (?:to|at))|(?<=[,;–-] (?:but |and |so )?)(?:now|today|this time)(?: (?:,|its|it is|only|just|im|i am|at|with|it has|i have|i put))*(?= $)|went (?:up|down|back) to|(?:changed|reduced|raised|increased|lowered|cut|corrected|upped|dropped|bumped) (?:it |that |this |the @ )?(?:up |down |back )?to|(?:ended up|went|settled) (?:with|using|at|on|for)|actually (?:used|weighed|put in|poured|took)|only (?:used|weighed|put in|poured|took)|(?:did|do|doing|made|make|making|copied|followed) (?:this|that|it|yours|hers|his|theirs|the same)(?: one| recipe)? (?:, )?(?:but|only|except) (?:(?:i|we|have|ive|just|then) )*(?:put|put in|used|took|take|with|had|went with)(?= (?:[a-z]+ )?$)|this time|really (?:used|weighed))\b/;
/** "The cup is 8 g, so 97 g NaOH". */
const soBefore = /\bso (?:only |just |really )?$/;
/** "Doubled it, so 500 g olive, 500 g coconut and 156 g lye": a recipe, of which no figure puts one right. */
const isListBehind = /^ (?:of )?(?:the )?@ (?:, |and )+# (?:of )?(?:the )?@ (?:, |and )+#/;
const nowBehind = /^ (?:of (?:the )?@ |@ )?(?:, )?(?:now|today|this time|instead|in the end|in reality|in truth)\b/;
/** "Last week I had 156 g lye, now I'm down to 142": it is the next figure that is of now. */
const nowNext =
  /^ (?:of (?:the )?@ |@ )?(?:, |- |– |; )(?:but |and |so )?(?:now|today|this time|instead|in the end)\b[^,.;@]*$/;
const onceBefore =
  /\b(?:used to (?:be|have|take|use|put|add)|once (?:had|took|used)|(?:my|the|in|our) (?:last|usual|previous|earlier) (?:one|batch|recipe|is|was|has)|(?:in|last|back in|that) (?:spring|summer|autumn|fall|winter|january|february|march|april|june|july|august|september|october|november|december|year|…) (?:i|we) (?:had|used|took|put)|(?:my|our) (?:very )?first (?:ever )?(?:soap|bar|loaf)|last time|compared (?:with|to)|there (?:i|we) (?:take|use|put|have)|(?:normally|usually|otherwise) (?:i )?(?:take|use|put)|i (?:normally|usually|otherwise) (?:take|use|put)|originally|(?<!(?:forg[eo]t|forgotten|missed|left out|overlooked) (?:the |my |this |that )?@ )at first|first (?:wrote|said|had|typed|posted|thought)|formerly|(?<!(?:as|like) )(?:i|you|we) (?:first |had )?(?:said|wrote|told @|told me|typed|posted|misread)|had (?:it |them |@ )?down (?:for|as|at)|(?:that|it|this) was for|(?:ignore|forget) (?:the|that|my)\b(?! [\p{L}]+ ?[,;:.–-]+ (?:and |so |but )?(?:i|we|its|let ?'?s|use|take|make)\b))\b/u;
const onceBehind =
  /^ (?:of )?(?:@ )?(?:, )?(?:[^#@.;]{0,40}(?:ignore|forget) (?:that|it|this)\b|originally\b|at first\b|back then\b)/;
const onceHeading =
  /^(?:- |• )?(?:the |my )?(?:previous(?:ly)?|before|old(?: one| recipe| version| batch)?|originally|original|last (?:time|batch|year)|first version|was) (?:[:=]|- )/;
/** "Same as last time but", "like my usual one, only": what follows is of now. */
const likeOnce =
  /\b(?:same|like|similar|just as|as (?:in|on|for|with))(?: (?:as|like|to|in|on|with|for|from|the|a|my|our|i|we|it|one|did|made|had|used|was|recipe|recipes|batch|amounts?|list|@))* (?:last|usual|previous|earlier|first|before)(?: (?:time|times|one|ones|batch|recipe|week|month|year|loaf|soap|summer|winter|spring|autumn|christmas))?\b(?! (?:i|we) (?:had|used|took|put))/;
/** "Further down on the page I wrote": of the same recipe, and nobody knows which one counts. */
const isElsewhere =
  /\b(?:further (?:down|on)|(?:be|under)neath|below|(?:at|on|in|under|across|along|beside) (?:the|its|this|that|my) (?:very )?(?:same |other |next )?(?:bottom|end|top|foot|head|back|front|label|lid|page|side|sheet|margin|corner|edge|jar|jug|bottle|tub|bag)|(?:under|next to|beside|over|behind) (?:it|that|this)) [^#]*\b(?:i|we) (?:had |have |ve )?(?:also )?(?:wrote|written|typed|put|noted|scribbled)\b/;
/** "It had 150 g lye in it, which was a typo". */
const hadBefore = /\b(?:one|batch|loaf|soap|bars?|recipe)(?: [\p{L}]+){0,3} (?:had|took|got) $/u;
const slipBehind =
  /^ (?:of )?(?:@ )?(?:in it )?(?:, |and )*(?:which|that|it|a) (?:[^#@.;]{0,30}\b(?:was|is) )?(?:a |my |just |only )*(?:typo|mistake|misprint|slip)\b/;
/** "Jo took 105 g for hers". */
const othersBehind = /^ (?:of )?(?:@ )?(?:for|in) (?:hers|his|theirs)\b/;
/** "782 g by the scale and not 800." */
const isDenied = (before: string, behind: string): boolean =>
  /\b(?:and |, ?)not (?:in |with |at |the )?$/.test(before) &&
  /^ (?:of (?:it|them) )?(?:[.,;:!?)]|$|as |like )/.test(behind);
/** "I'd have taken 64 g": nobody did. */
const wouldBefore = /\bi ?(?:'?d|would) (?:have |ve )?(?:taken|used|said|expected)\b/;
/** "I had planned 100 g": it gives way to what went in. */
const plannedBefore =
  /\b(?:(?:i|we) ?(?:'?d |had |have |ve )?(?:first |originally |really |only )?(?:planned|wanted|meant to|intended|hoped|(?:was|were) going)(?: (?:on|for|to))?(?: (?:use|take|have|put in|add|do|make|go for|go with))?|(?:the |my )plan (?:was|said|had been)(?: for| to (?:use|have|be))?|(?:was|were) (?:meant|supposed|planned|intended) to be|(?<=\binstead of )(?:the|my))(?: (?:about|a|the|@ at))? $/;
const plannedBehind =
  /^ (?:of )?(?:the )?(?:@ )?(?:, )?(?:(?:as|that|which) )?(?:i|we) ?(?:'?d |had |have |ve )?(?:planned|wanted|intended|hoped for|meant to (?:use|take|have|put in))\b/;
/** "Then I wrote 140, it's 240". */
const wroteBefore =
  /\b(?:said|wrote|typed|posted|put|written) (?:@ )?# (?:[,;–-] |but |and |sorry |no )*(?:its|it is|should be|is)(?: really| actually)? $/;
const wasBefore = /\b(?:was|were|had)\b/;
const wasBehind = /^ (?:of )?(?:@ )?(?:, )?(?:while|when|as long as|until|till|before) /;
const toldBefore =
  /\b(?:yesterday|last (?:week|time|year|month|night|spring|summer|autumn|fall|winter|batch)|before|earlier|once|the old|previous(?:ly)?|recipe|book|card|calculator|calc|sheet|says|said|calls for|asks for|printed|planned|wanted|supposed)\b/;

/** "Never mind the pints, I'd use": the figure in another unit is what counts. */
const notByUnit =
  /\b(?:never mind|ignore|forget|disregard|skip|drop|instead of|not (?:go )?by|nt go by) (?:about )?(?:the|her|his|their|those|these) (?:pints?|quarts?|gallons?|cups?|spoons|spoonfuls|teaspoons|tablespoons|ounces?|oz|pounds?|lbs?|gills?|grams?|imperial|volumes?)\b(?: ones?| figures?| weights?| amounts?)? [^#]*$/;

/** What somebody says or would do, whoever it is. */
const speaking = / (?:says|uses|takes|thinks|reckons|swears|claims|insists|recommends|told me|would)\b/;
/** Somebody says what they think or would do. */
const others = (): RegExp =>
  /\b(?!i |you |we )[\p{L}']+ (?:says|uses|takes|thinks|reckons|swears|claims|insists|recommends|told me|would (?:take|use|put|have))\b/u;
/** What also "says": no person. */
const things =
  /\b(?:it|this|that|which|calc\w*|recipe|book|card|sheet|scales?|label|lid|jar|jug|sticker|margin|chart|page|paper|app|program|blog|site|table|tub|bag|box|instructions|post|note|list|bar|soap|batch|loaf|mou?ld|method|one|oils?|lye|koh|naoh|recipes|formula|version|i|we|you) (?:says|uses|takes|told me|recommends|would (?:take|use|put|have))\b/;

export interface Right {
  /** Where in its sentence the figures begin to put others right; beyond its end where they do not. */
  readonly from: number;
  /** Under "EDIT:" or the like, where a whole recipe may stand. */
  readonly headed: boolean;
}

/** "Edit: thanks for the quick answers!": a heading with words of its own, and nothing that could be put right. */
const isThanks = (text: string): boolean => /(?:^|\s)[:#-]? ?\p{L}[^#@]*[.!] $/u.test(text) && !/[#@]/.test(text);

/** What of each sentence puts something right. */
export function rightsIn(sentences: readonly Sentence[]): readonly Right[] {
  const never = Number.POSITIVE_INFINITY;
  let paragraph = -1;
  let next = false;
  let chained = false;
  return sentences.map((sentence) => {
    const carried = next || sentence.paragraph === paragraph || (chained && /^(?:" )?and /.test(sentence.text));
    next = false;
    chained &&= !/[\p{L}#@]/u.test(sentence.text);
    if (!sentence.retells || (sentence.cues & cue.right) === 0) {
      chained &&= !sentence.retells;
      return { from: carried ? 0 : never, headed: sentence.paragraph === paragraph };
    }
    const { text } = sentence;
    const opens = heading.test(text);
    if (opens && isThanks(text)) return { from: never, headed: false };
    const found = rights.exec(text);
    // "Lye 275, not 280! And make water 550"
    chained = found !== null && text.includes('#', found.index);
    // "Sorry, scratch that.": the next sentence says what counts
    next = found !== null && !text.includes('#');
    if (opens) paragraph = sentence.paragraph;
    const headed = sentence.paragraph === paragraph;
    // "lye is 135 g, typo"
    const trails = found !== null && !text.includes('#', found.index) && text.split('#').length <= 3;
    return { from: carried || trails ? 0 : (found?.index ?? never), headed };
  });
}

/** Words of which one at least is in all that is told of another time, or of now. */
const telling =
  /\b(?:now|today|time|instead|end|reality|truth|went|changed|reduced|raised|increased|lowered|cut|corrected|upped|dropped|bumped|ended|settled|actually|only|really|used|once|last|usual|usually|normally|otherwise|previous|previously|earlier|compared|there|original|originally|first|formerly|said|says|uses|takes|thinks|reckons|swears|claims|insists|recommends|would|wrote|told|typed|posted|misread|had|was|were|ignore|forget|then|before|old|yesterday|recipe|book|card|calculator|calc|sheet|calls|asks|printed|plan|planned|wanted|meant|intended|hoped|supposed|hers|his|theirs|taken|expected|not|never|so|left|scales?|turned|came|comes|down|weighed|weighs|thought|reckoned|mentioned)\b/;

/** Whether a figure of the sentence may have a stance other than to put another right. */
export const mayTell = (sentence: Sentence): boolean =>
  sentence.retells && (sentence.cues & cue.time) !== 0 && telling.test(sentence.text);

const asksOfThis = /\b(?:is|are|does|do|will|can|could) (?:this|these|it|the|my|you|someone|somebody|anyone|anybody)\b/;

export function stanceOf({ text }: Sentence, place: number, rightFrom: number): Stance {
  const since = text.slice(text.lastIndexOf('#', place - 1) + 1, place);
  // "it stuck last time, is this right: canola #": what is asked about is of now
  const like = likeOnce.exec(since);
  const before = since.slice(Math.max(0, since.search(asksOfThis), like ? like.index + like[0].length : 0));
  const end = text.indexOf('#', place + 1);
  const behind = text.slice(place + 1, end < 0 ? text.length : end);
  if (onceHeading.test(text)) return 'once';
  if (revokedBefore.test(before)) return 'once';
  if (revoked.test(text.slice(0, place))) return 'now';
  if (isDenied(before, behind)) return 'once';
  if (hadBefore.test(before) && slipBehind.test(behind)) return 'once';
  if (othersBehind.test(behind) || wouldBefore.test(before)) return 'others';
  if (plannedBefore.test(before) || plannedBehind.test(behind)) return 'others';
  if (wroteBefore.test(text.slice(0, place)) || notByUnit.test(before)) return 'right';
  // "since the last batch: water is # now"
  const isNow = end < 0 || !nowNext.test(behind);
  if (isNow && /^ (?:of (?:the )?@ |@ )?(?:, )?now\b/.test(behind)) return 'now';
  if (
    (onceBefore.test(before) && !isElsewhere.test(before)) ||
    onceBehind.test(behind) ||
    (wasBefore.test(before) && wasBehind.test(behind))
  )
    return 'once';
  // "hang on, my notebook says #": nobody knows which is right
  if (place >= rightFrom && paperSays.test(text.slice(rightFrom, place))) return null;
  if (place >= rightFrom && !doubtful.test(text.slice(Math.max(0, Math.min(rightFrom, text.length))))) return 'right';
  if (
    (soBefore.test(before) && !isListBehind.test(text.slice(place + 1))) ||
    nowBefore.test(before) ||
    (isNow && nowBehind.test(behind))
  )
    return 'now';
  if (speaking.test(before) && others().test(before) && !things.test(before)) return 'others';
  if (toldBefore.test(before)) return 'told';
  // "in my last batch I had 120 g NaOH with 800 g olive"
  const sofar = text.slice(likeOnce.test(text.slice(0, place)) ? place - before.length : 0, place);
  const found = onceBefore.exec(sofar);
  const once = found && !isElsewhere.test(sofar) ? found : null;
  const told = once ? sofar.slice(once.index) : '';
  return once && !/\b(?:but|now|so|today|this time|then)\b/.test(told) && !asksOfThis.test(told) ? 'once' : null;
}

/** "156 g lye, now 142", "lye was 156, today it's 142"; "lye, now 142" names it. */
const nowOf =
  /^ (?:of )?(?:the )?(?:@ )?[^@]*?[,;–-] (?:but |and |so )?(?:now|today|this time) (?:, )?(?:(?:i|we|im|its|it|is|only|just|am|are|have|has|use|take|put|at|down|up|back|to|went|gone|come|came|ve|with) )*$/;

/** "It is # now", "(I first wrote #)": the figure is of what was named before. */
export function isPointing({ text }: Sentence, place: number): boolean {
  const before = text.slice(text.lastIndexOf('#', place - 1) + 1, place);
  const end = text.indexOf('#', place + 1);
  return (
    isDenied(before, text.slice(place + 1, end < 0 ? text.length : end)) ||
    /(?:^|(?<!\b(?:leav(?:e|es|ing)|left|let|keep|kept|cured?|turned))[ ,])(?:it|its|(?<!\b[a-z]{3,} )that|this|thats) (?:is |was |are |now |only |really |actually )*$/.test(
      before,
    ) ||
    (/\bi (?:only |actually |really )?(?:used|weighed|took|put in|went (?:with|for)|ended up with|settled (?:on|for)|decided on|chose) (?:only )?$/.test(
      before,
    ) &&
      /^ (?:[.,;:!?)]|$|and |so |but )/.test(text.slice(place + 1))) ||
    (text.lastIndexOf('#', place - 1) >= 0 && nowOf.test(before)) ||
    (!text.includes('@') &&
      /(?:^[([] ?|\b)(?:(?:i|you|we) (?:first |had )?(?:said|wrote|typed|had|put|posted)|was|before|old|originally|formerly)(?: :)? $/.test(
        before,
      ))
  );
}

/** "Scale said 262 g once I'd scraped the tub". */
const scaleSays =
  /(?<!\b(?:until|till|til) (?:the |my )?)\bscales? (?:said|says|showed|shows|read|reads) (?:only |about |just )?$/;

/** "I could only scrape out 5 oz". */
const onlyGot = /\b(?:could|can|did) only (?:get|scrape|find|squeeze|take|manage|spare)(?: [\p{L}]+){0,2} $/u;

/** "I took 68 g in the end", "so I've now weighed 143 g": of something that is named elsewhere. */
export function takesWeight(sentence: Sentence, place: number): boolean {
  if ((sentence.cues & cue.taken) === 0) return false;
  const { text } = sentence;
  const before = text.slice(text.lastIndexOf('#', place - 1) + 1, place);
  const behind = text.slice(place + 1);
  return (
    ((scaleSays.test(before) || onlyGot.test(before)) && !/^ (?:of )?@/.test(behind)) ||
    (/(?:[•>] (?:weighed|real|actual|really|took|used|in fact|in the pot) (?:[:=] )?|^(?:and |but )?(?:now|today|new|currently|this time) (?:[:=]|- ) ?|\b(?:i|we|im|were) ?(?:ve |have |had )?(?:(?:now|only|just|really|actually|then|did|therefore) )*(?:took|used|had|weighed(?: out)?|measured|put(?: in)?|poured|went (?:with|for)|ended up with|settled (?:on|for)|decided on|chose|(?:(?:come|came|gone|went|dropped|cut|moved|brought|am|are) (?:it |that )?(?:back |right )?(?:up|down|back)|(?:reduced|lowered|raised|upped|dropped|cut|brought) (?:it|that)) (?:at|to)|(?<=im (?:now )?)(?:back |right )?(?:up|down) (?:at|to)) (?:all )?(?:the |only |about |just )?|\b(?:now|nowadays|this time|today) ,? ?(?:i|we|im|its) (?:only |just )?(?:use|take|using|am using|taking|put in) (?:only |about |just )?)$/.test(
      before,
    ) &&
      /^ (?:of (?:it|them|that) )?(?:in the end |now |instead |this time |today |in all )?(?:[.,;:!?)]|$|and |so |but |with |on |because |for (?!(?:the|a|an|my|her|his|that|our|another|hers)\b(?! (?:@|lye\b|oils\b|fats\b)))|…)/.test(
        behind,
      ))
  );
}

/** "What is left is 840 g", "on the scale it is 840 g", "it turned out to be 840 g": of what was said to be more. */
const remainsBefore =
  /(?:\b(?:left|remains|remained|there|stuff) (?:over |now |of it )?(?:is|was|weighs|weighed|comes to|came to)|(?<!\b(?:until|till|til) (?:the |my )?)\bscales? ,? ?(?:it )?(?:says|said|shows|showed|reads?|makes (?:it|that)|made (?:it|that)|is|its|was)|\bturned out (?:to be|at|as)|\b(?:came|comes|boiled|went|shrank|shrunk|melted|cooked) (?:out |down )?(?:to|at)|\bdown to|\bthere ?(?:'?s|is|was) (?:actually|really|in fact)|\bweighed (?:it|that|them)(?: \p{L}+)?(?: [:,])?(?: and)?(?: (?:its|it is|it was|got|at))?|\bgot) (?:only |just |about |exactly |a good |barely )*$/u;
/** "362 g left", not "left for the next one". */
const remainsBehind =
  /^ (?:is |was )?(?:all )?(?:that ?(?:'?s |is |was ))?left\b(?! (?:over )?for (?!(?:this|it|me|us|(?:the|my|this) (?:soap|batch|pot))\b))/;
const gotBehind = /^ (?:out of|from) (?:it|that|them)\b/;
/** A weight by guess, or of what has become less since. */
const guessed =
  /\b(?:had|thought|reckoned|guessed|figured|estimated|told|said|wrote|mentioned|started|bought|gave|was|about|around|roughly|nearly|almost)\b[^#]*$|^ (?:of )?(?:@ )?[^#.]{0,20}\bi (?:said|wrote|told|mentioned|had|thought)\b/;

export const remains = ({ text, cues }: Sentence, place: number): boolean => {
  if ((cues & cue.rest) === 0) return false;
  const before = text.slice(text.lastIndexOf('#', place - 1) + 1, place);
  const behind = text.slice(place + 1);
  if (/^ (?:of )?@/.test(behind) || ofElse.test(before.slice(before.search(/[,;][^,;]*$/) + 1))) return false;
  if (remainsBehind.test(behind)) return true;
  return remainsBefore.test(before) && (!/\bgot (?:\p{L}+ )*$/u.test(before) || gotBehind.test(behind));
};

export function isGuessed({ text }: Sentence, place: number): boolean {
  const before = text.slice(0, place);
  const behind = text.slice(place + 1);
  if (
    putIn.test(before.slice(before.lastIndexOf('#') + 1)) ||
    /^ (?:of )?(?:@ )?(?:goes |went |is |was )?in\b(?! (?:the|my|a)\b)/.test(behind)
  )
    return false;
  return guessed.test(before) || guessed.test(behind);
}
/** What is in the pot has no rest. */
const putIn = /\b(?:us(?:e|ed|ing)|put|poured|pour|take|took|needs?|goes|added|add|melted|melt|mixed)\b/;
/** "Forget the 5 %, take 2 %". */
const revoking = '\\b(?:forget|ignore|scrap|disregard|never mind|drop) (?:about )?(?:the|that|my) ';
const revokedBefore = new RegExp(`${revoking}$`);
const revoked = new RegExp(
  `${revoking}# [^#.]*\\b(?:take|use|make (?:it|that)|go (?:with|for)|reckon with|want|like|prefer) (?:[\\p{L}]+ ){0,2}$`,
  'u',
);

/** Of a vessel, of soap, or of all together. */
const ofElse =
  /\b(?:bowl|jug|pan|pot|tub|jar|bottle|mould|mold|together|totals?|all|altogether|bars?|loaf|loaves|soap|batch)\b/;

/** "Me, I would like 5", "so make it 1 %", "for pans 1 % will do", behind a superfat of somebody else or of other times. */
export const isWished = ({ text }: Sentence, place: number, isShare: boolean): boolean => {
  const behind = text.slice(place + 1);
  return (
    // "the thermometer says 15 now"
    (isShare && /^ (?:will do|is enough|is plenty|(?:here|today|now|this time)\b)/.test(behind)) ||
    (wishing.test(text.slice(0, place)) &&
      /^ (?:[.,;:!?)]|$|and |so |but |because |as |since |for |please\b|instead\b)/.test(behind))
  );
};
const wishing =
  /\b(?:(?:i ?(?:would |'?d |will |'?ll )?|lets |let's )(?:like|prefer|want|take|choose|rather have|go for|go with|stay at|do|use)(?: to have)?|(?:make|put|set) (?:it|that|this)(?: at| to)?|(?:this|today|now|here)(?: \p{L}+)?(?: (?:at|its|it is|only|just)| [:=])?) (?:only |just )?$/u;

/** The writer took something back in the middle. */
const takenBack =
  /\b(?:edit :|(?<!\b(?:i|we|you) )make that|scratch that|strike that|but (?:i |we )?only had(?= #)|(?<!\b(?:is|means?|with|has|have|needs?|theres|there|its|requires) )no wait\b(?! (?:(?:when|if)(?! (?:i|we|it)\b)|between|before|after|needed|required|necessary|time|at all|with|for)\b[^#@]*$)|wait no\b|wait , no\b|i meant(?! to (?:ask|post|check|share|use|take|have|put|add|do|make|go)| (?:it|this|these|them|the (?:bars?|soap|loaf|batch|recipe|lot|whole thing)) (?:to (?:come out|end up|land|turn out|work out|finish|sit|arrive)\b|(?:to (?:have|be|get|carry|give) )?(?:at |with |for )?(?:a |an |the |about |around )*(?:superfat|# (?:of )?superfat)\b|(?:to be|to stay|to last|as|for) [^@#]*$))|correction :)|\bno (?:[!,] )+(?:only|it was|its|i mean)\b|\? \? ?no (?:[!,.] )*only\b/;
const adds = /\b(?:forgot|also|plus|add|added|adding|missed|and|too|as well)\b/;

/** Something was not there, and something else took its place. */
const lacked =
  /\b(?:(?:had|have|got|was|were) none(?! of the (?:normal|usual|regular|other|plain|ordinary|standard))|ran out|run out|(?:im|i am|was|were) (?:all )?out(?! in\b| on\b)|topp?ed (?:it |that )?up|in its place|made up (?:the|for the) (?:rest|difference|missing|gap))\b|(?<!\b(?:number|figure|amount|value|answer|percentage|way|method) )\binstead(?! of)\b/;

/**
 * "I wanted canola, but it was rancid, so I used 100 g of peanut in its place": what was lacking, here or in a sentence
 * shortly before, has no weight to lose, and what came has its own.
 */
function isOfNothing(tokens: readonly Token[], sentences: readonly Sentence[], n: number): boolean {
  const own = sentences[n];
  const first = sentences[Math.max(0, n - mostBefore)];
  if (!own || !first) return false;
  let [lost, came] = [false, false];
  for (let k = first.from; k < own.to; k++) {
    const one = tokens[k];
    if (one?.t !== 'name' || one.meaning.kind !== 'fat') continue;
    if (!weighedThings(tokens).has(thingOf(one))) lost = true;
    else if (k >= own.from && hasWeight(tokens, k)) came = true;
  }
  return lost && came;
}
/** Sentences before one of a lack in which the thing is named, at the most. */
const mostBefore = 3;

const hasWeight = (tokens: readonly Token[], k: number): boolean => {
  const before = /^(?:plain|distilled|cold|tap|clean|extra)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
  return isWeight(tokens[k + 1]) || isWeight(tokens[isWord(tokens[before], 'of') ? before - 1 : before]);
};

/** "Topped up with 130 g of plain water": by what is weighed, and no fat. */
function isThinned(tokens: readonly Token[], from: number, to: number): boolean {
  if (wordAt(tokens, from) !== 'topped') return false;
  const next = tokens.slice(from, to).find(isIngredient);
  return (
    next !== undefined && /^(?:water|liquid|ice)$/.test(next.meaning.kind) && hasWeight(tokens, tokens.indexOf(next))
  );
}

/** The first words of a sentence with a figure and a fat of a lack or a swap that nothing `hears`. */
export function lackIn(
  sentences: readonly Sentence[],
  tokens: readonly Token[],
  hears: (k: number) => boolean,
): string | null {
  for (const [k, sentence] of sentences.entries()) {
    const { cues, names, figures, from, to } = sentence;
    if (!sentence.retells || names === 0 || figures === 0 || (cues & cue.lack) === 0) continue;
    const { text } = sentence;
    const found = lacked.exec(text);
    if (!found || text.includes('?') || hears(k) || (k > 0 && hears(k - 1))) continue;
    if (isOfNothing(tokens, sentences, k) || isThinned(tokens, sentence.tokenAt(found.index), to)) continue;
    if (tokens.slice(from, to).some((one) => one.t === 'name' && one.meaning.kind === 'fat')) return found[0];
  }
  return null;
}

/** Of two figures the writer does not know which one is right. */
const unsure =
  /\bone of (?:them|the two|these|those|the figures|the numbers)(?: [\p{L}]+){0,2} (?:wrong|right|off)\b|\b(?:(?:dont|do not|didnt|cant|cannot|couldnt|no longer|never) (?:really |honestly |quite )?(?:know|remember|tell|say|recall)|no (?:idea|clue)|not (?:sure|certain)|unsure|dunno|forgot|forget|forgotten|wonder)(?: any more| now)? (?:which|what|whether|if)(?: one| of [\p{L}]+(?: two)?)? (?:(?:is|was|its|it is|it was) (?:right|wrong|correct|true|it\b)?|(?:really |actually )?went in\b|(?:i|we) (?:really |actually |then |finally )*(?:used|took|put in|weighed|poured|did|made|went with|ended up|added|measured|tipped)\b)/u;

/** The words that say so, where something was put right that may be the wrong one. */
export const unsureIn = (sentences: readonly Sentence[], isPutRight: boolean): string | null => {
  for (const { text, figures } of sentences) {
    const found = isPutRight || figures > 1 ? unsure.exec(text) : null;
    if (found) return found[0].trim();
  }
  return null;
};

const page =
  '(?:page|recipe|batch|one|list|card|sheet|column|notebook|book|line|soap|bar|side|leaf|table|figures|amounts|numbers)s?';
const otherPage = new RegExp(
  `\\bwrong ${page}\\b|\\b(?:thats|(?:that|this|those|these|it) (?:is|was|are|were)|its) (?:all )?(?:from |off |of |on )?(?:a |an |the |my |her |his )?(?:different|wrong|other|another|facing|opposite|old|next|last (?:week|month|year|time)(?:'?s)?|yesterday(?:'?s)?|(?:[\\p{L}]+ )?(?:soap|bar|shampoo|shaving|dish|laundry)(?: soap| bar)?'?s)(?: [\\p{L}]+)? ${page}\\b`,
  'u',
);
const breaksOff =
  /(?:^|[^\p{L}])(?:hang on|hold on|wait|sorry|oops|whoops|woops|no|nope|ah|oh|hm+|argh?|damn|blast|bother|forget|ignore|scratch|strike|wrong)\b/u;

/** The token from which on the writer finds to have copied what is of another recipe; null where nobody does. */
export function pageTurnedIn(sentence: Sentence): number | null {
  const mayTurn = (sentence.cues & cue.page) !== 0 && (sentence.cues & cue.breakingOff) !== 0;
  if (!sentence.retells || !mayTurn) return null;
  const { text } = sentence;
  const found = otherPage.exec(text);
  if (!found || text.includes('?')) return null;
  const since = text.lastIndexOf('#', found.index) + 1;
  const breaks = breaksOff.exec(text.slice(since));
  if (!breaks) return null;
  const at = Math.min(found.index, since + breaks.index);
  // "sorry, that was the other batch's 130 g"
  return /#/.test(text.slice(at)) ? null : sentence.tokenAt(at);
}

/** "It's for my sister, no wait, it's for my mum", "made on Monday no wait on Tuesday": for whom or when, and nothing of the pot. */
function isOfPurpose(text: string, index: number, found: string): boolean {
  if (found !== 'no wait') return false;
  const before = /(?:^|[,.;:!?(-] )([^#@,.;:!?(-]+?)[ ,]*$/.exec(text.slice(0, index))?.[1] ?? '';
  const behind = /^[ ,]*([^#@,.;:!?]+?) ?(?:[,.;:!?)][^#@]*)?$/.exec(text.slice(index + found.length))?.[1] ?? '';
  const [, lead, what = ''] =
    /^((?:(?:its|it is|it was|i|we|made|make|this|is|was) )*(?:for|on))( .+)$/.exec(behind) ?? [];
  const to = lead?.split(' ').at(-1);
  return to !== undefined && new RegExp(`\\b${to} [a-z]`).test(before) && !ofPot.test(`${before} ${what}`);
}
/** What may say how much it is, or of which alkali. */
const ofPot =
  /\b(?:one|two|three|half|double|single|triple|batch(?:es)?|recipes?|loa(?:f|ves)|mou?lds?|bars?|liquid|soft|hard|solid|cream|paste|other|this|that|those|both|each|grams?|ounces?|pounds?|kilos?)\b/;

/** "Milk no, only water 280 g": what is turned down weighs nothing in the list, but for what comes in its place. */
function isNotThere(tokens: readonly Token[], sentence: Sentence, index: number, found: string): boolean {
  const { text } = sentence;
  const names = /(?<=^|[,.;:(-] )(?:[a-z]+ )?(?:@ )+$/.exec(text.slice(0, index));
  if (!names || !/^no [!,] +only$/.test(found)) return false;
  const only = text.indexOf('@', index);
  const comes = only < 0 ? -1 : sentence.tokenAt(only);
  return [...names[0].matchAll(/@/g)].every(({ index: at }) => {
    const name = tokens[sentence.tokenAt(names.index + at)];
    return (
      name?.t === 'name' && !tokens.some((one, k) => k !== comes && isNamed(one, name) && figureOf(tokens, k) >= 0)
    );
  });
}
const isNamed = (one: Token, name: Extract<Token, { t: 'name' }>): boolean =>
  one.t === 'name' && thingOf(one) === thingOf(name);

/** The first words that take something back which nothing `hears`. */
export function takenBackIn(
  sentences: readonly Sentence[],
  tokens: readonly Token[],
  hears: (k: number) => boolean,
): string | null {
  for (let k = 0; k < sentences.length; k++) {
    const sentence = sentences[k];
    const taken = sentence?.retells && sentence.cues & cue.back ? takenBack.exec(sentence.text) : null;
    if (!sentence || !taken) continue;
    const { text, paragraph } = sentence;
    const { 0: found, index } = taken;
    const isHeading = /^(?:edit|correction)/.test(found);
    // "it's called so, no wait, I cooked it": what is put right is no figure
    if (
      !isHeading &&
      index > 0 &&
      !/[#@]/.test(text) &&
      /(?:[\p{L}']+ [, ]*){3}/u.test(text.slice(index + found.length))
    )
      continue;
    if (isOfPurpose(text, index, found) || isNotThere(tokens, sentence, index, found)) continue;
    let last = k;
    // what it speaks of may stand behind it
    while (isHeading ? sentences[last + 1]?.paragraph === paragraph : last === k && !/[#@]/.test(text.slice(index))) {
      if (last - k > 8 || last + 1 >= sentences.length) break;
      last++;
    }
    const span = sentences.slice(k, last + 1);
    if (span.some((_, n) => hears(k + n))) continue;
    if (isHeading && isThanks(text)) continue;
    const all = span.map((one, n) => (n === 0 ? one.text.slice(index) : one.text)).join(' ');
    if (isHeading && (!all.includes('#') || adds.test(all)) && !/\b(?:not|koh|naoh|instead)\b/.test(all)) continue;
    return found.replace(/ :/, ':');
  }
  return null;
}

/** "Variation: …", "next idea: …", "vegan version: …": it heads what nobody has done. */
export const plansAhead =
  /^(?:[-*•+>] )?(?:(?:the|some|an?|other|another|possible|next|to|one|a few|simple|nice) )*(?!(?:my|our)\b)(?:(?:[a-z]+|@) (?:- )?(?:free )?){0,2}(?:variations?|variants?|ideas?|tips?|alternatives?|alternatively|options?|versions?|some ?day|wish ?list|next (?:time|batch|one|go)|to try|for (?:the )?v #)(?: (?:for|on) [^#@:]{0,24})? ?:/;

/** "All times 1.5, please", "double everything": a recipe that is asked about in another size than it is told in. */

import type { RecipeReading } from '../reading.ts';
import { relations } from '../words/cue-words.ts';
import { factorOf, words } from './factor.ts';
import { type FatApart, type FatOf, fatsApart } from './fats-apart.ts';
import { type Anew, type Kept, toldAnew } from './told-anew.ts';

const figure = '(?<by>\\d+(?:[.,]\\d+)?)';
const all =
  '(?:all|everything|it all|all of (?:it|that|them)|the (?:lot|whole (?:lot|thing|recipe))|(?:each|every)(?: single)?(?: amount| oil| fat| weight| ingredient)|each|all (?:the )?(?:amounts|figures|numbers|weights))';
const told =
  '(?:everything|all of (?:it|that|them)|the (?:recipe|book|above|amounts|list|lot|whole thing|original|card))';

const asked: readonly RegExp[] = [
  `\\b${all},? (?:times|x|×|multiplied by|by) ?${figure}(?![\\d.,]*\\s*(?:g|oz|kg|cm|in|%))\\b`,
  `(?<![\\d.,])${figure} ?(?:x|×|times) ${told}\\b`,
  `\\b(?:multiply|scale|times) ${all} (?:up |down )?by ${figure}\\b`,
  `\\b(?<word>double|triple|treble|quadruple|halve) ${all}\\b`,
  `\\b(?<word>twice|double|three times|triple|half) of everything\\b`,
].map((pattern) => new RegExp(pattern, 'gi'));
/** What all of them have in common, each in its own way. */
const sizing =
  / (?:times|x|×|by)(?<=[a-z],? [a-z×]+) ?\d|\d ?(?:x|×|times) (?:all|every|the)|\b(?:multiply|scale|times|double|triple|treble|quadruple|halve|twice|half) (?:all|every|it|the|each|of)/gi;

/** A line of the post asks for it, maybe. */
function mayAsk(post: string): boolean {
  sizing.lastIndex = 0;
  for (let found = sizing.exec(post); found; found = sizing.exec(post)) {
    const end = post.indexOf('\n', found.index);
    const to = end < 0 ? post.length : end;
    const line = post.slice(post.lastIndexOf('\n', found.index) + 1, to);
    if (asked.some((pattern) => line.search(pattern) >= 0)) return true;
    sizing.lastIndex = to;
  }
  return false;
}

/** It was done before the figures were written down, or only may be done. */
const donePast =
  /\b(?:(?:i|we)(?!['’](?:m|ll|d|re)\b| (?:am|are|will|shall|would|want|need)\b)|have|has|had|'ve|already|was|were|been|took|made|if|could|can|should|might|would|when)\b[^.!?\n]{0,30}$/i;
/** The batch of another time. */
const elsewhen =
  /\b(?:next|(?:in|last) (?:the )?(?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december))\b[^.!?\n]*$/i;
/** "My sister did everything times two." */
const bySomebody = new RegExp(
  `\\b(?:she|he|they|(?:my|our|her|his) (?:${relations.replaceAll(' ', '|')})s?) (?:(?:always|once|usually|even|just|has|had|have) )*(?:did|made|does|makes|do|make|took|takes|puts?|cooked|cooks|multiplied|scaled)?\\s*$`,
  'i',
);
/** "The wedding is in August, so last night I did …": the deed is of now all the same. */
const lately =
  /\b(?:last night|today|tonight|this (?:morning|afternoon|evening)|just now|now)\b[^.!?\n]{0,20}\b(?:i|we)\b(?![^.!?\n]*\b(?:next|last) (?!night))/i;
const another = /\b(?:last (?:month|time|week|year|summer|winter|spring|autumn|batch)|yesterday|before)\b/i;
const earlier = /\b(?:last (?:month|time|week|year|batch)|yesterday|(?:days?|weeks?|months?|years?) ago)\b/i;
/** The figures are those behind it, or this one is made as it is written. */
export const afterwards =
  /\b(?:doubled|halved|tripled|trebled|quadrupled) (?:it|this|that|everything|all|the)\b[^.!?\n]{0,24}\balready\b|\b(?:these|those|figures?|amounts?|weights?|above|list|that|this|here)(?: above)? (?:are|is) (?:already |now )?(?:the )?(?:doubled|halved|tripled|trebled|quadrupled)\b|\balready (?:doubled|halved|tripled|trebled|quadrupled)\b|\b(?:these|those|they|the figures|the amounts|above|below) (?:are|is) (?:already |now )?(?:the|my) (?:doubled|halved|tripled|trebled|double|half|new|final) (?:amounts?|figures?|weights?|ones?|list|batch|recipe)\b|\b(?:today|this time|now)\b[^.!?\n]{0,24}\bas (?:it (?:is|stands)|written|listed)\b|\b(?:that|this|these|those|it)(?:['’]?s| is| are) (?:what|the (?:list|figures?|amounts?))\b[^.!?\n]{0,16}\b(?:on (?:the|my|that) (?:list|card|page|sheet)|above|here|written|wrote|listed|typed|posted|gave|see)\b/i;
/** "My aunt makes big pots, three times everything", "I read it slowly, twice everything": nothing that was made. */
const notMade = new RegExp(
  `\\b(?:check|weigh|measur|count|compar|tar|test|read|went|gone|go|look)(?:ed|ing|s|e)?\\b[^.!?\\n]*$|\\b(?:she|he|they|(?:my|our|her|his|the) (?:${relations.replaceAll(' ', '|')})s?|people|others)\\b(?![^.!?\\n]*\\b(?:i|we)\\b)[^.!?\\n]*$`,
  'i',
);
const wished = /\b(?:want|need|please|like|pls|plz)\b/i;

interface Sized {
  readonly text: string;
  /** Null where the post asks for no other size. */
  readonly factor: number | null;
  /** The words that say it. */
  readonly said: readonly string[];
  /** It may be made in another size: what says so, among other figures. */
  readonly unsure?: string;
  /** What was not made in that size: "half the card but the full lye". */
  readonly but?: readonly Kept[];
  /** What was weighed anew: "but only 300 g of water". */
  readonly anew?: readonly Anew[];
  /** Fats that were told apart: "but the castor stayed at 30 g". */
  readonly apart?: readonly FatApart[];
}

const lyeWord = '(?:lye|naoh|koh|caustic(?: soda| potash)?|sodium hydroxide|potassium hydroxide)';
const waterWord = '(?:water)';
const resize = '(?:halve|double|triple|treble|scale|do|change|cut|divide|multiply|touch)';
const ofDose =
  '(?: (?:amount|weight|dose|quantity|lot))?(?: \\d+(?:[.,]\\d+)? ?(?:g|oz|grams?|ounces?))?(?: of)?(?: the| that| my)?';
const notToo = '(?! (?:too|as well|and|&|also|included|line|row))';
/** "Except the lye", "forgot to halve the lye", "all 215 g of the lye", "the lye went in whole". */
const keptOf = (what: string): RegExp =>
  new RegExp(
    [
      `\\b(?:except|but not|not|apart from|other than|save|bar|without|forgot(?:ten)?|left|kept|missed)\\b(?: for| about| to ${resize}| halving| doubling| tripling)*(?: (?:the|my|both))*(?: \\d+(?:[.,]\\d+)? ?(?:g|oz|grams?|ounces?)(?: of)?(?: the| my)?)?(?: ${lyeWord} (?:and|or)(?: the)?| ${waterWord} (?:and|or)(?: the)?)? ${what}\\b(?! (?:out|off|for|in the)\\b)`,
      `\\b(?:did not|didn['’]?t|never|not) ${resize} (?:the |my )?${what}\\b`,
      `\\b${what}\\b(?: (?:(?:that|which) )?(?:i|we|was|just|only|then))* (?:forgot|forgotten|did not|didn['’]?t|never)\\b`,
      `\\b(?:the (?:full|whole|entire|complete|original)|full)${ofDose} ${what}\\b${notToo}`,
      `\\b(?:with|put|tipped|poured|used|took|added|threw|dumped)(?: in)? all${ofDose} ${what}\\b${notToo}|\\ball${ofDose} ${what} (?:went|got|is) in\\b`,
      `\\b${what}\\b[^.!?\\n,;]{0,24}\\b(?:whole|in full|full(?:y)?|stayed|unchanged|undivided|as (?:it (?:is|was)|written|on the (?:card|list)|listed|before)|the (?:full|whole) (?:amount|lot))\\b`,
    ].join('|'),
    'i',
  );
/** "Everything except the coconut". */
const exceptFor =
  /\bexcept that\b[^.!?]*\b(?:stayed|only enough|left|kept|as (?:it|they) (?:was|were)|the same)\b|\b(?:except|but not|apart from|other than|save for|all but)\b(?: for)?(?: the| my)? (?!the\b|my\b|scents?\b|fragrance|perfume|essential|colou?r|mica|clay|that\b|i\b|it\b)[a-z]+/i;

const amount = String.raw`\d\s*(?:k?g|oz|lbs?|pounds?|ounces?|grams?)\b`;
const leastAmounts = 2;
const amountsIn = (text: string): number => (text.match(new RegExp(amount, 'gi')) ?? []).length;

const fraction =
  '(?:a |one )?half|(?:a|one|two|three|four|five|six|seven|nine) (?:thirds?|quarters?|fourths?|fifths?|sixths?|eighths?|tenths?)|[1-9]/(?:[2-9]|10)(?![\\d/])|[½⅓⅔¼¾]';
const numeral =
  '\\d+ \\d/\\d|\\d+(?:[.,]\\d+)?(?![.,]?\\d)|(?:one|two|three|four|five|six)(?: and (?:a|one|two|three) (?:half|thirds?|quarters?))?|ten';
const partOf = `(?<part>${fraction}|double|twice|triple|treble|quadruple|\\d+(?:[.,]\\d+)? ?(?:%|percent|per cent)(?= of (?!(?:it|that|this)\\b))|(?:${numeral})(?: times| ?[x×]))`;
const whole = `(?:everything|(?:every|each) (?:single )?(?:thing|line|row|item|ingredient|amount|figure|number|weight|last thing)|all of (?:it|that|them|this|the above)|it all|all that|all this|all|it|that|this(?: recipe| batch| list)?(?! (?:time|week|year|month|morning|weekend))|(?:the|my|our|her|his|their|that)(?: (?!jar|tub|jug|bag)[a-z]+)? (?:recipe|card|list|sheet|page|amounts?)|(?:hers|theirs|(?<=\\bof )his|(?:her|his|their|(?:my |our |the )?[a-z]+['’]s) (?:whole |big |usual |full )?(?:batch|lot|amounts?|recipe|card|list|quantit(?:y|ies)|pot|loaf))|the (?:lot|whole (?:thing|lot|batch|sheet)|batch|above|original))`;
const lightly = '(?:(?:only|just|then|actually|exactly|precisely|really|now|a) )*';
/** What somebody did, or is about to do. */
const doing =
  "(?:(?:\\b(?:i|we)(?:['’]?(?:ve|m|re|ll|d)| have| am| are| will| would like to)? |(?<=^|[\\n.!?(] ?))(?:only |just |then |actually |exactly )?(?:ma(?:d|k)e|making|did|do|doing|took|take|taking|used?|using|(?:weighed|measured)(?: (?:out|off|up))?|cook(?:ed)?|mixed|poured|want|need|want to make|going to make))";
const planning =
  "\\b(?:i|we)(?:['’]?(?:m|re|d|ll)| am| are| will| shall| would| have| need| want| plan| intend| hope| must)+(?: (?:going|about|planning|hoping|like|love|have|want|need))?(?: to)?";
/** "In my pot right now is", "what is in the mould is", "mine was". */
const inPot =
  "(?:\\b(?:in (?:my|the|our) (?:pot|mou?ld|pan|kettle|crock(?:pot)?|bowl)|on (?:my|the) (?:table|counter|stove)|what(?:['’]?s| is| went) in(?:to)? (?:my|the|our) (?:pot|mou?ld|pan)|mine|my (?:pot|batch|version))(?: (?:right|just|now|today|tonight|here|then|there))* (?:is|are|was|were|has|had|holds) )";
/** "Of the card", "on that list". */
const ofCard =
  '(?: (?:on|in|of|from) (?:the|this|that|my|her|his|our) (?:\\w+ )?(?:card|list|sheet|page|recipe|table|book))?';
/** What may follow: "I took half of it out" is said of the batter, "half that price" of something else. */
const ends =
  "(?=\\s*(?:$|[-.,;:!?()–—]|(?:please|pls|now|today|tonight|yesterday|last night|this (?:morning|afternoon|evening)|though|because|since|as|so|but|then|this|only|here|instead|in total|in the end|and (?:i|we|it|now|want|wonder|(?:that|this|those|these)(?:['’]?s| is| are| was| were| went)|poured|cooked|mixed|made)|for (?:now|today|this|(?:the |my |a |two |three |2 |3 )?(?:\\w+ )?(?:mou?lds?|loa(?:f|ves)|trays?|pans?|tins?)))\\b))";
/** "I doubled all the oils": not all of the recipe. */
const notParts =
  '(?! (?:of )?(?:(?:the|my|our|those|these|hard|soft|liquid|base) )*(?:oils?|fats?|butters?|lye|naoh|koh|caustic|water|liquids?)\\b)';
/** "I made exactly half of everything", "I doubled it all", "I take all of it times 3": behind the recipe it is done with. */
const done = new RegExp(
  `(?:${doing}|${inPot}) ?${lightly}${partOf},? ?(?:of |the )?(?:${whole}${ofCard}${ends}|(?=(?: please| for now| today)?\\s*(?:[.!;)]|$)))|(?:${doing} ${lightly}|${inPot})${whole} (?:times |[x×] ?)(?<by>${numeral})(?![\\w%])|${doing} ${lightly}(?:it|this|that|everything|all of it|the (?:lot|whole (?:thing|lot)|recipe)) (?<whole>double|triple|treble|quadruple)(?=\\s*(?:[.,;:!)]|$|(?:yesterday|today|this time|because|since|for|and)\\b))|(?:\\b(?:i|we)(?:['’]ve| have)?|\\b(?:i|we) [^.!?\\n\\d]{1,60}\\b(?:and|so)) (?:therefore |hence )?${lightly}(?<verb>halved|doubled|tripled|trebled|quadrupled|quartered) ${whole}\\b${notParts}|${planning} ${lightly}(?<plan>halve|double|triple|treble|quadruple) ${whole}\\b${notParts}`,
  'i',
);
/** "So a third of that", of one who needs but three bars. */
const soMuch = new RegExp(
  `\\b(?:so|hence|therefore|thus|that(?:['’]?s| is)|which is|meaning)(?: (?:i|we) (?:only |just )?(?:need|want|take|use|make|took|used|made))? ${lightly}${partOf} (?:of )?${whole}${ofCard}${ends}`,
  'i',
);
const forWhom =
  /\b(?:(?:need|want|making|make|made|did|doing|after|have|got|need)(?: only| just)? (?:\d+|one|two|three|four|five|six|eight|ten|twelve|a few) |only |small(?:er)? |big(?:ger)? |(?:mou?ld|tin|tray|box|loaf|pan) (?:takes|holds|fits|is))/i;
/** "I multiplied every single line by one and a half", "we scaled it all down to 60 %", "cut each amount to a third". */
const resized = new RegExp(
  `(?:\\b(?:i|we)(?:['’]?(?:ve|m|re|ll|d)| have| am| are| will)? |\\b(?:and|so|then) |(?<=^|[\\n.!?(] ?))(?:also |then |just |simply |only |have )*(?<how>multipl(?:ied|y|ying)|divid(?:ed|e|ing)|scal(?:ed?|ing)|(?:up|down)scaled|upped|increased|reduced|cut|shr[au]nk|brought|took) (?:all )?${whole}(?: all)?(?: (?<way>up|down))? (?<to>by|to|times|with|[x×])(?: (?:just|exactly|a factor of))? ?(?<size>${fraction}|\\d+(?:[.,]\\d+)? ?(?:%|percent|per cent)|(?:${numeral})(?! ?(?:k?g|oz|lbs?|pounds?|ounces?|grams?|bars?|ml|mou?lds?|cm|inch(?:es)?)\\b))${ends}`,
  'i',
);
/** "Half a batch of this, please", "everything twice", ", three times everything", and "(x2)" in a line of its own, behind the recipe. */
const short =
  /(?<=[,;:(–—.!?\n-] ?)(?<![a-z]-)(?:so |hence |thus |i\.?e\.? |that(?:['’]?s| is) |which is |meaning )?(?:just |exactly )?(?<lot>half|(?:a|one|two|three) (?:thirds?|quarters?)|double|twice|triple|treble|quadruple|(?:two|three|four|five|six|seven|eight|ten|one and a half|two and a half) (?:times|[x×])) (?:of )?(?:the )?(?:everything|all of (?:it|this|that|the above)|(?:all|each|every) (?:the |single )?(?:lines?|rows?|amounts?|figures?|numbers?|weights?|ingredients?))(?=\s*(?:$|[.,;:!)–—-]|(?:please|pls|in (?:one|a|the same) (?:\w+ )?(?:pot|go|pan)|today|then|(?:and|so) (?:i|we|that|it))\b))|\b(?<part>half|double|triple)(?: an?)?[ -](?:batch|recipe|size|lot|load) of (?:this|that|it|the above)\b|\b(?<many>\d+|two|three|four|five|six) (?:batches|lots|loads) of (?:this|that|it|the above)\b(?<!lots of it(?= in (?:there|the (?:loaf|soap|jug|pot|water))\b))|(?<!\b(?:check|weigh|measur|count|compar|tar|test|read|stir|blend|mix|strain|filter|sieve|heat|went over|gone over|go over|looked at)(?:ed|ing|s|e|red|d)? )(?:everything|all of (?:it|this|that)|all this|the (?:whole )?lot|(?:all|each|every) (?:the |single )?(?:lines?|rows?|amounts?|figures?|numbers?|weights?))(?: (?:on|in|of|from) (?:[a-z]+ ){0,2}[a-z]+| above| here| listed)? (?:(?<verb>twice)(?! (?:\w+ed|read)\b)|times (?<of>two|three|four|\d+(?:[.,]\d+)?))\b|\n[ \t]*[(*–-]?[ \t]*(?:[x×] ?(?<by>\d+(?:[.,]\d+)?)|(?<times>\d+(?:[.,]\d+)?) ?[x×])(?=[ \t]*(?:[.!,;)\n]|$|for ))/i;
/** "I made three times this recipe: …": over the recipe it is done with. */
const ofThis =
  '(?:this(?: one| recipe| batch| list| card)?|(?:the|my) (?:following|recipe below|list below|card below|below)(?: recipe| list| card)?)(?: (?:today|tonight|yesterday|last night|this (?:morning|afternoon|evening)))?';
/** "Lye and water too", "(lye included)", "everything halved". */
const part =
  '(?:(?:and|with|the|my|all|both|of) )*(?:lye|naoh|koh|caustic|water|oils|fats|everything|all of it|the lot)';
const andAll = `(?:[ ,(–—-]+${part}(?:(?:,? and|,? &|,) ${part})*(?: (?:too|as well|also|included|likewise|of course|and all|alike|(?<also>halved|doubled|tripled|trebled|quadrupled)))+\\)?)?`;
const thenList = `(?:[ \\t]*:|[ \\t]*[.!]?(?=\\n\\s*(?:[-*•·–]\\s*)?[^\\n]{0,40}\\d ?(?:k?g|oz|lbs?|grams?|ounces?|pounds?)\\b))`;
const over = new RegExp(
  `(?:${doing} ${lightly}${partOf} |${doing} ${lightly}(?<size>half|double|triple)(?: an?)?[ -](?:batch|recipe|size|lot|load) |\\b(?:i|we)(?:['’]ve| have)? ${lightly}(?<verb>doubled|halved|tripled|trebled|quadrupled) )(?:of )?${ofThis}${andAll}${thenList}`,
  'i',
);
/** "Doubling my recipe: …": nobody knows whether the figures are those before or behind it. */
const either =
  /(?:^|[\n.!?] ?)(?:(?:i['’]?m|i am|we['’]?re|we are) )?(?:doubling|halving|tripling|trebling|multiplying) (?:my|the|this|our|her|his) (?:\w+ )?(?:recipe|batch|card|list)[ \t]*:|(?:^|\n)[ \t]*(?:x ?\d|\d ?[x×])[ \t]*:/i;
/** "I plan to make a double batch.": the same, where no pattern has multiplied anything. */
const eitherSize =
  /\b(?:mak(?:e|ing)|made|want|do(?:ing)?|did|plan\w*) (?:\w+ ){0,2}(?:double|triple|half)[ -](?:batch|recipe|lot)\b|\b(?:doubling|tripling|halving) (?:this|it|that)\b/i;
/** "We make 2 batches of this a year." */
const oneOfMany = /\b(?:\d+|two|three|four|five|six) (?:batches|lots) of (?:this|the above)\b/i;
/** Looked for first: the long pattern is slow to get ready. */
const mayBeEither = /ling |ving |lying |\d ?[x×]|[x×] ?\d/i;
/** "How much lye for the half batch?" */
const ofPart =
  /\b(?:lye|naoh|koh|caustic|hydroxide|alkali|how much)\b[^.?!\n]{0,60}\b(?:for|of|in) (?:the|a|my|this|that) (?<part>half|halved|doubled?|tripled?|quarter)[ -]?(?:batch|recipe|one|size|loaf|lot|version|amounts?)?\s*(?:batch |please|now|then)?[?,]/i;
/** "Is the double batch in my mould alright?" */
const ofSize =
  /\b(?:the|my|this) (?:double|doubled|halved?|triple|tripled|big(?:ger)?|small(?:er)?|larger?) (?:batch|one|lot|loaf|version|size|amount)\b[^.!\n?]*\?/i;
/** "I made half of it yesterday. Was my soda enough?": of what was made. */
const asksOfDone = (behind: string): boolean =>
  /\b(?:(?:was|were|had|did) (?:it|that|there|my|the|i|we)|have i|is (?:my|mine)|(?:is|did) it (?:too|now|all ?right|ok|okay|safe|get|have))\b[^.!\n?]*\?/i.test(
    behind,
  ) && !otherTime.test(behind);
const otherTime =
  /\b(?:today|tonight|tomorrow|next|now i|later|another time|again|(?:the )?(?:whole|full|big(?:ger)?|complete|other) (?:batch|one|card|recipe|lot|amount|thing|half))\b/i;
/** The recipe that stands before is the whole one. */
const full =
  /\b(?:full|whole|complete|original|entire|normal|usual) (?:\w+ )?(?:recipe|batch|loaf|amounts?|one|size)\b|\boriginal(?:ly)?:/i;
/** By how much a whole list was made larger or smaller; undefined where the words leave it open. */
function resizedBy(how: string, way: string | undefined, to: string, size: string): number | undefined {
  const factor = factorOf(size);
  if (factor === undefined || to === 'to' || /^multipl/.test(how)) return factor;
  if (/^divid/.test(how)) return to === 'by' && factor > 1 ? 1 / factor : undefined;
  const isPart = /%|percent|per cent/.test(size) || factor < 1;
  if (to !== 'by' && to !== 'with') return factor;
  if (/^(?:upped|increased)$/.test(how) || way === 'up') return isPart ? 1 + factor : factor;
  if (/^(?:reduced|cut|shr[au]nk)$/.test(how)) return isPart && factor < 1 ? 1 - factor : undefined;
  return isPart || way === 'down' || how === 'took' || how === 'brought' ? undefined : factor;
}
/** "(holds 1.5 kg)". */
const ofMould =
  /\((?:\w+ ){0,2}(?:holds?|takes?|fits?|for)\b[^()\n]*\)|\b\d+(?:[.,]\d+)? ?(?:k?g|lb|oz|l|litres?) (?:\w+ )?(?:mou?lds?|tins?|trays?)\b|\bbars?\b[^.\n\d]{0,12}\d+(?:[.,]\d+)? ?(?:g|oz)\b/gi;

/** "A quarter of hers", of a list that was said to be theirs. */
const ofTheirs =
  /(?:\b(?:hers|theirs|of his|(?:her|his|their) (?:[a-z]+ )?(?:batch|lot|pot|loaf))|['’]s (?:[a-z]+ )?(?:batch|lot|amounts?|recipe|pot|loaf))$/i;
export const theirs = new RegExp(
  `\\b(?:${relations.replaceAll(' ', '|')})s?\\b|\\b(?:she|he|they|hers?|his|theirs?)\\b|[a-z]['’]s\\b`,
  'i',
);

/** The batter was parted, or the recipe is one for another day. */
const parted =
  /\b(?:the (?:rest|remainder|other (?:half|part|third))|remaining|half (?:of it )?(?:went|goes|is|was) (?:to|for))\b/i;
const mightBe =
  /\b(?:if|when(?! (?:i|we) (?:made|did|mixed|cooked))|(?<!\bat )once|before|could|can|should|might|would(?! like)|may|later|usually|normally|always|sometimes|next|often|mostly|(?:every|each|a|per) (?:other )?(?:day|week|weekend|fortnight|month|season|year|spring|summer|autumn|fall|winter|easter|christmas|sunday|monday|tuesday|wednesday|thursday|friday|saturday)(?! (?:ago|from now|early|late)))\b/i;
/** "Is it right for one lot?", "one batch is as written", "above is a single batch": the figures are asked about as they stand. */
export const asWritten =
  /\b(?:for|per) (?:just |only )?(?:the |a )?(?:one|single|each)(?: (?:one|lot|batch|load|loaf|size|of (?:them|these|those)))?(?=\s*(?:[?!.;]|$))|\bas (?:it |they |that )?(?:is |are )?(?:stands?|written|listed)\b[^.!\n]*\?|\b(?:one|a single|each) (?:lot|batch|load|loaf) is as (?:written|listed|above)\b|\b(?:above|this|here|listed|written|figures?|amounts?|numbers?|that|recipe|list)(?: above)? (?:is|are)(?: all| only| just)? (?:for |of )?(?:one|a single|the single|a) (?:lot|batch|load|loaf)\b/i;
/** What asks for so many batches together; each of those that somebody makes or sells is made as it is written. */
const together = /\b(?:how much|need|want|like|please|pls|plz|altogether|in (?:all|total)|lye for)\b/i;
/** Each of them in a pot of its own. */
const apart = /\b(?:each|apart|separate(?:ly)?|one (?:after|by)|on (?:its|their) own|singly|one at a time)\b/i;

/** "The coconut is a 1 kg jar, and I used half": of the jar. */
const ofPack = /\b(?:jar|tub|block|pack|packet|bag|tin|can|bottle|brick|bucket|carton)s?\b/i;

/** Nobody is sure of it. */
const doubted =
  /\b(?:thought of|thinking of|thinking about|considering|considered|tempted|toying|either (?:i|we)|or (?:did|was) (?:i|we|it|that)|or not|maybe|perhaps|i think|not sure|unsure|can['’]?t (?:remember|recall|say|tell)|don['’]?t (?:know|remember)|(?:may|might) have)\b/i;

const ofAll = /\b(?:everything|all|recipe|batch|lot)\b/i;

/** Without the amounts that stand before, too: "that stayed at 215 g". */
const withoutKnown = (sentence: string, before: string): string =>
  sentence.replace(/(?<![\d.,])\d+(?:[.,]\d+)?\s*(?:k?g|oz|lbs?|pounds?|ounces?|grams?)\b/gi, (one) =>
    before.includes(one) ? '' : one,
  );

/** What its sentence says before. */
const headOf = (post: string, at: number): string => /[^.!?\n]*$/.exec(post.slice(0, at))?.[0] ?? '';

/** "The oils I weighed twice." */
const weighedTwice = /\b(?:weighed|measured|made|did|mixed|cooked|poured|used) twice\W*$/i;

/** A recipe told whole, of which a part was made, or is asked about. */
function madeInPart(post: string, fatOf: FatOf): Sized | null {
  const above = over.exec(post);
  if (above && amountsIn(post.slice(0, above.index)) === 0 && !mightBe.test(headOf(post, above.index) + above[0])) {
    if (afterwards.test(post)) return null;
    const { part, size, verb, also } = above.groups ?? {};
    // the figures may be those behind it, too
    if (verb && / this[ \t]*:$/i.test(above[0])) return { text: post, factor: null, said: [], unsure: above[0].trim() };
    const factor = factorOf(part ?? size ?? verb ?? '');
    if (factor === undefined || (also && factorOf(also) !== factor)) return null;
    const anew = toldAnew(post.slice(above.index + above[0].length));
    const rest = partsAgain(withoutAll(post, anew), factor);
    return { text: rest.replace(above[0], ' '), factor, said: [above[0]], anew };
  }
  const asks = ofPart.exec(post);
  const so = soMuch.exec(post);
  const by = resized.exec(post);
  const made = done.exec(post);
  const did =
    (so && forWhom.test(headOf(post, so.index)) ? so : null) ??
    by ??
    (made && !weighedTwice.test(made[0]) ? made : null) ??
    short.exec(post);
  const said = did ?? asks;
  if (!said) return null;
  const before = post.slice(0, said.index);
  const isBelow = did && amountsIn(before) >= leastAmounts;
  const anew = isBelow ? toldAnew(post.slice(said.index)) : [];
  if (anew.length > 0) {
    const sized = madeInPart(before + withoutAll(post.slice(said.index), anew), fatOf);
    return sized && { ...sized, anew };
  }
  const isDeed = /^(?:doubl|halv|tripl|trebl|quadrupl)/.test(said.groups?.['verb'] ?? said.groups?.['plan'] ?? '');
  const fats = isBelow ? fatsApart(post.slice(said.index), before, isDeed, fatOf) : [];
  if (fats.length > 0) {
    const sized = madeInPart(before + withoutAll(post.slice(said.index), fats), fatOf);
    return sized && { ...sized, apart: fats };
  }
  const behind = post.slice(said.index).replace(/^\s+/, '');
  const sentence = behind.split(/[.!?\n](?!\d)/, 1)[0] ?? '';
  if (amountsIn(before) < leastAmounts || amountsIn(withoutKnown(sentence.replace(ofMould, ''), before)) > 0)
    return null;
  // it was made smaller before it was told
  const isToldBehind = amountsIn(behind.replace(ofMould, '')) > 1;
  if (isToldBehind && (!did || named.test(behind))) return null;
  const since = before.slice(Math.max(0, before.search(/[^.!?\n]*$/)));
  const isAsked = /\byesterday\b/i.test(since + sentence) && (ofSize.test(behind) || asksOfDone(behind));
  if (
    did &&
    ((another.test(sentence) && !isAsked) ||
      (elsewhen.test(since) && !lately.test(since)) ||
      bySomebody.test(since) ||
      (earlier.test(since) && !isAsked) ||
      parted.test(post))
  )
    return null;
  if (did && afterwards.test(behind)) return null;
  if (did && (mightBe.test(since) || mightBe.test(sentence) || (ofPack.test(since) && !ofAll.test(said[0]))))
    return null;
  if (did && doubted.test(since + behind.split(/[.!?\n](?!\d)/, 2).join(' '))) return null;
  // whose list it is must have been said
  if (did && ofTheirs.test(said[0]) && !theirs.test(before))
    return { text: post, factor: null, said: [], unsure: said[0].trim() };
  const size = (said.groups?.['part'] ?? '').toLowerCase();
  if (
    !did &&
    !full.test(before) &&
    !(/^(?:doubled?|tripled?|halved)$/.test(size) && !/\b(?:doubl|tripl|halv)/i.test(before))
  )
    return null;
  const { part, by: x, verb, whole: all, times, plan, many, of, lot, how, way, to, size: resize } = said.groups ?? {};
  if (lot && notMade.test(since)) return null;
  // "scaled it by 1.5": maybe before it was told
  if (to === 'by' && /scaled (?:it|this|that) /i.test(said[0])) return null;
  if (asWritten.test(behind) || asWritten.test(since)) return null;
  if (many && (!together.test(since + sentence) || apart.test(behind))) return null;
  const factor =
    how !== undefined
      ? resizedBy(how.toLowerCase(), way?.toLowerCase(), to?.toLowerCase() ?? '', resize ?? '')
      : factorOf(part ?? x ?? verb ?? all ?? plan ?? times ?? many ?? of ?? lot ?? '');
  if (factor === undefined) return null;
  if (isToldBehind) return { text: post, factor: null, said: [], unsure: said[0].trim() };
  // what else the sentence says is still read
  const others = sentence.replace(said[0].trim(), '');
  const words = /\d/.test(others) || changes.test(others) ? said[0] : sentence;
  const kept = did ? keptIn(behind) : { kinds: [], words: [] };
  const some = fatOf(/\b(?:without|only) (?:the |any |my )?([a-z]+)/i.exec(others)?.[1] ?? '') !== null;
  if (!kept || some) return { text: post, factor: null, said: [], unsure: said[0].trim() };
  if (kept.kinds.length > 0) {
    const all = [sentence, ...kept.words];
    const text = all.reduce((rest, one) => rest.replace(one.trim(), ' '), post);
    return { text, factor, said: all, but: kept.kinds };
  }
  if (did) {
    const again = saidTwice(sentence.replace(said[0].trim(), ''), factor);
    const rest = partsAgain(post.replace(words, ' ').replace(again, ' '), factor);
    return { text: rest, factor, said: again ? [words, again] : [words] };
  }
  return { text: post.replace(said[0], said[0].replace(/ (?:for|of|in) \w+ \w+[ -]?[^?]*\?$/, '?')), factor, said: [] };
}

const withoutAll = (post: string, told: readonly { readonly said: string }[]): string =>
  told.reduce((rest, { said }) => rest.replace(said, ' '), post);

/** "Doubled the oils and doubled the lye", "lye doubled too", where all was doubled: the same once more. */
const partsToo =
  /(?<=^|[.!?\n,;] ?)(?:and |the |my )*(?:lye|naoh|koh|caustic(?: soda)?|water|oils|fats)(?:,? (?:and|&|,) (?:the |my )?(?:lye|naoh|koh|water|oils|fats))* (?:(?:too|also|was|were|is|are|i|we|got|has been|have been|of course|obviously|both|all) )*(?<size>doubled|halved|tripled|trebled|quadrupled)(?: (?:too|as well|also|of course|accordingly|obviously|with it))*(?=[,.;!\n]|$)|(?<=^|[.!?\n] ?)(?:i |we )?(?<verb>doubled|halved|tripled|trebled|quadrupled) (?:(?:all|both|the|my|of) )*(?:oils|fats)(?:,? (?:and|&|,)? ?(?:also )?(?:(?:doubled|halved|tripled|trebled|quadrupled) )?(?:the |my )?(?:lye|naoh|water))+ *(?=[,.;!\n]|$)/i;

function partsAgain(post: string, factor: number): string {
  const found = partsToo.exec(post);
  return found && factorOf((found.groups?.['verb'] ?? found.groups?.['size'] ?? '').toLowerCase()) === factor
    ? post.replace(found[0], ' ')
    : post;
}

/** "Three quarters of the card, everything times 0.75": the same factor in other words. */
function saidTwice(rest: string, factor: number): string {
  const found = short.exec(rest);
  const { of, part } = found?.groups ?? {};
  return found && factorOf(of ?? part ?? '') === factor ? found[0] : '';
}

/** What is told to have stayed as it was, and the words of the sentences that tell it; null where something else stayed. */
function keptIn(behind: string): { readonly kinds: readonly Kept[]; readonly words: readonly string[] } | null {
  const kinds = new Set<Kept>();
  const words: string[] = [];
  for (const sentence of (behind.match(/[^.!?\n]+(?:\.\d[^.!?\n]*)*[.!?]*/g) ?? []).slice(0, keptWithin)) {
    if (sentence.includes('?')) continue;
    const here = (
      [
        ['alkali', lyeWord],
        ['water', waterWord],
      ] as const
    ).filter(([, what]) => keptOf(what).test(sentence));
    for (const [kind] of here) kinds.add(kind);
    if (here.length > 0) words.push(sentence);
    else if (exceptFor.test(sentence)) return null;
  }
  return { kinds: [...kinds], words };
}
const keptWithin = 2;

/** Another fat, or one that was not there: "but with sunflower instead of the olive". */
const changes =
  /\b(?:instead|in place of|in its place|swapp\w+|replac\w+|substitut\w+|subbed|none|left out|skipped|without|but (?:with|no|only|not)|only the)\b/i;

/** A weight of what goes into the pot. */
const named = new RegExp(
  `${amount} (?:of )?(?:\\w+ )?(?:oil|butter|lard|tallow|olive|coconut|palm|castor|shea|cocoa|lye|naoh|koh|water|caustic|soda)\\b|\\b(?:oil|butter|lard|tallow|olive|coconut|palm|castor|shea|cocoa|lye|naoh|koh|water|soda)\\b[ :=,-]{1,3}${amount}`,
  'i',
);

/** What all of these have in common; "12 x 90 g" has not. */
const sized =
  /\b(?:half|halved?|doubled?|twice|tripled?|trebled?|quadrupled?|quartered|thirds?|quarters?|fourths|fifths?|sixths?|eighths?|tenths?|times|batches|lots|multipl\w+|divid(?:ed?|ing)|scal(?:ed?|ing)|upscaled|downscaled|upped|increased|reduced|cut|shr[au]nk|percent|per cent)\b|%|[½⅓⅔¼¾]|\d\/\d|(?<![\w×]|\d )[x×] ?\d|\d ?[x×](?![\w×]| ?\d)/i;

/** The post without the words that ask for it in another size, and by what all is multiplied. */
export function timesAll(post: string, fatOf: FatOf): Sized {
  const none: Sized = { text: post, factor: null, said: [] };
  const part = sized.test(post) ? madeInPart(post, fatOf) : null;
  if (part) return part;
  if (!/\b(?:all|everything|lot|thing|each|recipe|book|above|amounts?|list|original|card)\b/i.test(post)) return none;
  if (!mayAsk(post)) return none;
  const factors = new Set<number>();
  const said: string[] = [];
  let text = post;
  for (const pattern of asked) {
    pattern.lastIndex = 0;
    for (let found = pattern.exec(post); found; found = pattern.exec(post)) {
      const { by, word } = found.groups ?? {};
      // "each x 1.000 cups": no figure ends there
      if (by && /^[.,]?\d/.test(post.slice(pattern.lastIndex))) continue;
      const sentence =
        post
          .slice(Math.max(0, found.index - 80), found.index)
          // a small letter carries the line before on
          .split(/[.!?]|\n(?!\p{Ll})/u)
          .at(-1)
          ?.replaceAll('\n', ' ') ?? '';
      const behind = post.slice(found.index).split(/[.!?\n](?!\d)/, 1)[0] ?? '';
      if (elsewhen.test(sentence) || bySomebody.test(sentence)) return none;
      if ((donePast.test(sentence) || another.test(behind)) && !wished.test(sentence + behind)) return none;
      factors.add(word ? (words[word.toLowerCase()] ?? 1) : Number(by?.replace(',', '.')));
      said.push(found[0]);
      text = text.replace(found[0], ' ');
    }
  }
  const [factor] = factors;
  return factors.size === 1 && factor !== undefined && factor > 0 && factor <= 100 ? { text, factor, said } : none;
}

/** It asks about nothing but the size, which is known. */
export const asksOfSize = ({ doubts: [doubt] }: RecipeReading): boolean =>
  doubt?.id === 'corrected' && (sized.test(doubt.said) || /\b(?:big|bigger|smaller|scaled|size)\b/i.test(doubt.said));

/** "I'm making 2 batches of this. How much lye?": for one or for both, nobody knows. */
export function unsurelyMany(post: string, { fats, alkali, doubts }: RecipeReading): string | null {
  if (alkali.length > 0 || fats.length === 0 || doubts.length > 0) return null;
  const found = oneOfMany.exec(post);
  if (!found || asWritten.test(post)) return null;
  const sentence = `${/[^.!?\n]*$/.exec(post.slice(0, found.index))?.[0]}${/^[^.!?\n]*/.exec(post.slice(found.index))?.[0]}`;
  return mightBe.test(sentence) || apart.test(sentence) ? null : found[0];
}

/** What the answer says where a post is told to be of another size, and its figures may be those before it. */
export function asTheyStand(post: string): string | null {
  const found =
    (mayBeEither.test(post) ? either.exec(post) : null) ??
    (/double|triple|half|ling |ving /i.test(post) ? eitherSize.exec(post) : null) ??
    (/batches of|lots of/i.test(post) ? oneOfMany.exec(post) : null);
  return found && !/[-=]>|→|\b(?:now|was|were|instead|originally)\b/i.test(post)
    ? `I took the amounts as they stand ("${found[0].replace(/^[\s.!?]+/, '').replace(/\s*:$/, '')}").`
    : null;
}

/** The recipe with every amount times `factor`. */
export function multiplied(
  reading: RecipeReading,
  factor: number,
  said: readonly string[],
  but: readonly Kept[] = [],
  anew: readonly Anew[] = [],
  apart: readonly FatApart[] = [],
  nameOf: (fat: string) => string = (fat) => fat,
): RecipeReading {
  const ownOf = (kind: Kept): number | undefined => anew.find((one) => one.kind === kind)?.grams;
  const [lye, water] = [ownOf('alkali'), ownOf('water')];
  const others = [...but, ...anew.map(({ kind }) => kind), ...apart.map(({ id }) => nameOf(id))];
  const times = <T extends { readonly grams: number }>(lines: readonly T[]): readonly T[] =>
    lines.map((line) => ({ ...line, grams: line.grams * factor }));
  const once = (value: number | null): number | null => (value === null ? null : value * factor);
  return {
    ...reading,
    fats: reading.fats.map((line) => {
      const own = apart.find(({ id }) => id === line.id);
      return { ...line, grams: own ? (own.grams ?? line.grams) : line.grams * factor };
    }),
    after: times(reading.after),
    alkali:
      lye !== undefined && reading.alkali.length === 1
        ? reading.alkali.map((one) => ({ ...one, grams: lye }))
        : but.includes('alkali')
          ? reading.alkali
          : times(reading.alkali),
    liquids: but.includes('water') ? reading.liquids : times(reading.liquids),
    acids: times(reading.acids),
    others: reading.others.map((one) => ({ ...one, grams: once(one.grams) })),
    waterGrams: water ?? (but.includes('water') ? reading.waterGrams : once(reading.waterGrams)),
    totalFats: apart.length > 0 ? null : once(reading.totalFats),
    assumptions: [
      ...reading.assumptions,
      {
        id: 'number',
        text: `I took all amounts${others.length > 0 ? ` but the ${others.join(' and the ')}` : ''} times ${Number(factor.toPrecision(4))}, as the post says.`,
      },
    ],
    fates: [
      ...reading.fates,
      ...[...said, ...[...anew, ...apart].map((one) => one.said)].flatMap((one) =>
        (one.match(/\d+(?:[.,]\d+)?/g) ?? []).map((text) => ({
          text,
          fate: 'used' as const,
          why: 'times all amounts',
        })),
      ),
    ],
  };
}

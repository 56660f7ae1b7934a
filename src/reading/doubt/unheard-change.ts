/**
 * Words of a post that change what is in the pot, and that no rule turned into an amount: "the castor never went in",
 * "subbed a third of it with rice bran", "some of the lye stuck to the jug". Nobody can reckon with them unasked.
 */
import { nearly } from '../taken-back/changes.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { batchBefore, papers } from '../words/cue-words.ts';
import { isAny, isWeight } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf, weighedThings } from '../words/weighed.ts';
import { isOfScent } from './of-scent.ts';
import { isSmallTalk } from './small-talk.ts';

/** `F` a fat that is weighed, `N` one that is not, `L` the alkali or its solution, `X` whatever else has a name. */
export function letterOf(token: Token | undefined, weighed: ReadonlyMap<string, number>): string {
  if (token?.t !== 'name') return 'X';
  const { kind } = token.meaning;
  if (kind === 'alkali' || kind === 'stock') return 'L';
  return kind === 'fat' || kind === 'unheld' ? (weighed.has(thingOf(token)) ? 'F' : 'N') : 'X';
}

const the = '(?:(?:the|my|her|his|their|our|this|that|any|some|all|of|in|a|bit|half|third|quarter|most|only) )*';
const vessel = '(?:(?:bottle|jar|tub|bowl|cup|tin|block|bag|pack|packet|line|container) )?';
const end =
  '(?= (?:$|[-,.;:!?)(]|and|but|so|in the end|at all|because|since|as|cos|cause|though|this time|now|then|it|i|we|in|left|at|to|any|on|from|by)\\b| $| [-,.;:!?)(])';
const lost =
  '(?:stuck|sticking|clung|crust(?:ed)?|spil(?:led|t)|slopped|splashed|lost|stayed(?! (?:pale|white|light|cool|cold|clear|creamy|liquid|frozen|below|under|at)\\b)|ran (?:down|over|out)|leaked|dripped|tipped over|undissolved|still solid|didnt dissolve|not dissolved|wouldnt dissolve|left in|went (?:down|on|over))';
const swapping =
  '(?:swap(?:ped|ping)?|sub(?:bed|bing)?|replac(?:e|ed|ing)|substitut(?:e|ed|ing)|switch(?:ed|ing)?|exchang(?:e|ed|ing)|trad(?:e|ed|ing))';
/** Something without a name that is known: "the white block from the corner shop", "whatever was there". */
const nameless =
  '(?!(?:it|that|them|those|these|this|me|you|him|her|us|once|now|good|later|ever|a change)\\b|[^.?!,;]{0,40}[FNL#])[a-zX]+(?: [a-zX]+){0,4}';
const anything = '(?:the|a|an|some|my|this|that|whatever|what|something|anything)\\b';
const someOf =
  '(?:(?:about |around |roughly |maybe |perhaps |probably |nearly |almost |at least |up to )*(?:a |an |the )?(?:good |fair |little |large |big |small )*(?:some|bit|half|third|quarter|fifth|tenth|part|lot|most|splash|drop|drops|much)\\b)';
const little =
  '(?:bit|little|touch|tad|splash|glug|dash|dollop|slosh|drop|scrape|ladle|spoon|spoonful|lump|handful|good)';

/** "Another 100 g of plain water". */
const plain = '(?:(?:plain|pure|cold|cool|warm|hot|fresh|clean|clear|soft|the|just) )*';

const removed = '(?:removed|omitted|deleted|skipped|dropped|cancell?ed|scratched|ditched)';
const removing =
  '(?:(?:leav(?:e|ing)|left|tak(?:e|ing)|took) (?:out )?|(?:skip|drop|remov|delet|omit|cancel|ditch|scratch|strik)\\w* |forget |ignore |disregard |without |minus )(?:about )?';
const place = '(?:row|line|ingredient|item|entry|position)';
/** A row by its place in the list: "the third one", "the last oil", "row 3", "no. 3". */
const nth = `(?:${the}(?:first|second|third|fourth|fifth|sixth|seventh|last|one of|two of|# ?(?:st|nd|rd|th)) (?:[a-z]+ )?(?:one|ones|two|oils?|fats?|butters?|${place}s?)\\b|(?:${place}|nos?|nr|number) (?:\\. )?#)`;
/** A fat that is not in the pot. */
const out: readonly string[] = [
  // "the lard was replaced"
  `\\bF (?:was|is|got|has been|had been) (?:all |then |simply )?(?:replaced|swapped|exchanged|substituted)(?= ?(?:$|[,.;!)]))`,
  // "only the castor I did not have"
  `\\bF (?:i|we) (?:did not|didnt|did nt|do not|dont|have not|havent|had not|hadnt|could not|couldnt) (?:have|get|find|had|got|buy)${end}`,
  `F ${vessel}(?:# )?(?:(?:in the end|got|gets|was|is|has|had|been|being|were|ended up|just|then|simply|i|we|also|got|completely|have|later) )*(?:left out(?! of\\b)|left off|skipped|omitted|dropped|forgotten|set aside|left behind|thrown (?:out|away)|binned|not used|not added|didnt (?:use|add|put)|havent used|ditched|missed out|taken out)\\b`,
  `F ${vessel}[^#.?]{0,40}\\b(?:never|didnt|did not|hadnt|wasnt|havent|wouldnt|isnt) (?:even |ever )?(?:been |get |got |be )?(?:go in|went in|gone in|make it|made it|get in|in|added|unwrapped|opened|melted|used|poured|weighed)\\b`,
  `\\bnone of (?:it|that|them|${the}F) (?:ever |never |still )*(?:went|made it|got in|ended up)\\b|\\b(?:most|part|some|rest) of (?:that|${the}F) (?:never|didnt|ran|stuck|stayed)\\b|\\bF [^.?#]{0,20}\\b(?:some|half|part|most|a bit|a little|a good part) of it (?:stuck|stayed|clung|remained)\\b|\\bF [^.?#]{0,24}\\bsome (?:of it |of that )?(?:went|ran|slopped|spilled|spilt) (?:over|on|onto|down)\\b`,
  `\\bnever (?:ever |actually )?(?:went|made it|got|came|goes) in\\b`,
  `\\b(?:everything|all) (?:but|except|bar) (?:for )?${the}[FL]\\b`,
  `\\b(?:but|just|only|now|today|time|same|minus|and|the) without ${the}F\\b`,
  `\\b(?:disregard|ignore|forget|scratch|strike|skip|skipped|omit|omitted|forgot|minus|drop|dropped|leave out|left out|leaving out|without adding|decided against|do without|did without) (?:about )?(?:to add |adding |to put in )?${the}F${end}(?! ?[-,:(]* ?#)`,
  `\\bforgot(?:ten)? (?:about )?(?:to (?:add|put in|put|melt|pour) |adding )${the}[FN]\\b(?![^.?]*#)`,
  `(?<!\\b(?:rest|remains|remainder) of (?:the |my )?|\\b(?:remaining|leftover|spare|surplus) )\\bF ${vessel}(?:is |was |sits |sat |stood |stayed |set |still |standing |sitting |left |all )+[^#.?]{0,12}\\b(?:sealed|unopened|unmelted|untouched|full|(?:in|on) (?:the|its|my) (?:[a-z]+ )?(?:microwave|tin|jar|tub|fridge|bowl|cup|cupboard|bottle|counter|worktop|spoon|shelf|stairs|bag|freezer|table|bench|packet|wrapper))\\b`,
  `\\bF (?:# )?(?:(?:is|was|are|were) )?still (?:all )?(?:standing|sitting) (?:right )?(?:there|here|around|about)\\b`,
  `\\b(?:there|found|is|was|stood|sat|find) [^#.?]{0,50}F [^#.?]{0,20}\\b(?:sealed|unopened|(?:in|on|behind|under|beside|next to|by) (?:the|its|my) (?:microwave|kettle|toaster|sink|bread bin|scale|recipe|towel|fridge|counter|worktop|shelf|stairs|table|bench|cupboard|stove|oven|windowsill))\\b(?! (?:[,–(-] |and |so |i |we |of it )*(?:(?:used|added|took|put in|put|tipped in) (?:all )?#|# (?:of (?:it|that) )?(?:used|added|went in|put in|taken|in)\\b))`,
  `\\bF [^.?]{0,50}\\b(?:threw|chucked|binned|poured|tipped) (?:it|that|them|the lot)\\b`,
  `\\bdown the (?:drain|sink|loo|toilet) (?:it|they) went\\b`,
  `(?:F (?:was |is |got )?missing|L (?:was |got )?missing|[FL] (?:was |is |got )?(?:forgotten|skipped|omitted))\\b`,
  `\\b(?:had|have|has|got|was|were|is|theres|obtain|find|get|buy|found|use|used|dont have|didnt have) (?:no|not any|hardly any|barely any) (?:more )?F${end}`,
  `\\b(?:out of|ran out of|run out of|lacked|short of|cant (?:stand|use|have|eat)|allergic to|(?:dont|wont|didnt|never) (?:use|buy|eat|keep|have)|hate|never had|decided against) ${the}F${end}`,
  `L ${vessel}(?:was|is) (?:all |nearly |already )?empty\\b`,
  `\\bF (?:was|is|were|has|had|smelled|smelt|went) (?:all |far |way |much |so |just |only |already |nearly |almost )*(?:too (?:expensive|dear)|half gone|sold out|not to be had)\\b(?! (?:up|down|in|into)\\b)`,
  `\\b(?:hardly|barely|scarcely) (?:a|any|anything|enough)[^.?]{0,12} (?:scrape|left|F)`,
  `[FL] (?:i |we |was |were )+(?:only )?(?:half|partly|barely|hardly) (?:used|added|melted|emptied|there)\\b`,
  `[FL] ${vessel}(?:wasnt|was not|isnt|werent) (?:quite |completely |all |entirely )*full\\b`,
  `\\b(?:kept|keep|keeping|saved|held|reserved|put aside|set aside|put by) (?:back |aside )?${someOf} of ${the}F [^.?#]{0,20}\\bfor (?:my|her|his|our|the|an?|cooking|frying|baking)\\b(?! (?:end|top|swirl|trace)\\b)`,
  `\\b(?:i|we|ive|weve) (?:(?:have|had|just|then|only|also) )*(?:set|put) (?:# (?:of )?)?${the}F (?:aside|to one side)(?= (?:[.;!)]|[-,:] (?:it|that|this|they|so|and|as|because)\\b|and (?:it|left|kept|used)\\b|because\\b|as\\b)| $|$)(?![^.?]*\\b(?:ready|handy|for (?:the|this)|until|till|(?:went|goes|go|put|poured|stirred|add|added) (?:it |that |them )?in)\\b)`,
  `\\b(?:knocked over|dropped|tipped over|(?<!\\b(?:did|does|do|will|would|could|can|might|may|should|has|have)\\b[^.?#]{0,40})upset|broke|spilled|spilt) ${the}[FL]\\b`,
  `\\b(?:^|[-,;:] )no F in (?:it|there|mine|this)\\b`,
  `F ${vessel}(?:[a-z]+ ){0,3}(?:never|not|didnt|hasnt|hadnt|havent|isnt|wont) (?:[a-z]+ ){0,2}(?:arrived?|come|came|coming|turn(?:ed)? up|show(?:ed)? up|delivered)\\b(?! (?:out|off|up|to)\\b)`,
  `F ${vessel}(?:(?:is|are|was|were|has|have|been|both|all|now|also|i|we|it|got|gets) )*(?:${removed}|(?:has to |have to |must |will |ll )?(?:stays?|stayed|kept|staying) out)${end}(?![^.;!?]*\\b(?:went|goes|go|added|stirred|put|mixed|melted|folded) (?:it |that |them )?in\\b)`,
  `F and ${the}F (?:are |were )?(?:both |all |now )*out${end}`,
  `\\b(?:leave|leaving|left|take|taking|took) ${the}F(?: (?:,|and|&|or) ${the}F)* (?:both |all )?out${end}`,
  `^(?:[-,.:;] )?without ${the}F(?: (?:,|and|&|or|nor) ${the}F)*(?= (?:(?:, )?(?:please|pls|thanks|this|now|today)\\b|[-:;!.)]|$))`,
  `\\b${removing}${nth}`,
  `${nth} (?:(?:is|are|was|were|has|have|been|both|all|now|also|i|we|it|got|gets|stays?|just) )*(?:${removed}|left out|out)${end}`,
  `\\bonly (?:had|has|got|found) (?:about )?(?:a )?(?:half|part|third|quarter|most|some) (?:of )?(?:the |my )?[FL]\\b`,
  // "castor was not at home so I made it without"
  `F [^#?.]{0,50}\\b(?:so|and|then) (?:(?:i|we|have|just|then) )*(?:made|did|went|cooked|cast|poured|mixed) (?:(?:it|this|that|on|the batch|the soap) )*without\\b(?: (?:it|that))?(?= (?:[,.;!)]|and\\b)| $|$)`,
];
/** A fat that is another one. */
const other: readonly string[] = [
  `\\b(?:F|L|N) ${vessel}(?:[a-z]+ ){0,3}turned out (?:to be|as)\\b`,
  `\\b(?:isnt|wasnt|wasn't|is not|was not|arent|werent) (?:really |actually |even )?(?:F|L)\\b`,
  `\\b(?:came|comes|poured|is|was|were|are|be) (?:[a-z]+ )?[FN]? ?(?:from|out of) (?:a|the) [a-z ]*labell?ed\\b`,
  `\\bout of (?:a|an|the|my) [FN] (?:bottle|jar|tub|tin)\\b`,
  `\\bthe wrong (?:tub|bottle|jar|bag|block|box|lid|tin|oil|fat|pack|L|F)\\b`,
  `\\bnot sure (?:whether|if|which)[^.?]{0,40}\\b(?:tared|put|added|weighed|poured|used|took|grabbed|zeroed|tipped|melted)\\b`,
  `\\bF (?:')? ?(?:is|was|were|are) (?:in fact |really |actually |all |just )*N\\b`,
  `\\bL was (?:in fact |really |actually |all |just )+L\\b`,
  `^[^#]*\\b(?:in|for|took|takes|fills?|filled) (?:its|that|the|their|his|her) (?:place|stead|spot|slot)\\b(?!.*#)`,
  `\\bN (?:instead(?! of [FN])|in its place)(?: of it)?\\b(?!.*\\?)`,
  `\\bF (?:went|goes|came|is|was) (?:in )?where ${the}F\\b`,
  `\\b[FN] [^.?#]{0,20}\\brather than ${the}F\\b`,
  `\\b(?:used|use|scraped|added|put|poured|tipped|threw)[^.?#]{0,20} (?:what was left|the last|the rest|the remains|the dregs) of ${the}N\\b`,
  `\\b(?:stood|standing|stands|fill(?:ed|s)|went|goes|going|comes|came) in for\\b(?! an? )`,
  `\\b(?:hence|therefore) ${the}[FN]\\b`,
  `\\b${swapping} (?:out )?${the}(?:# (?:of )?)?${the}(?:[FNL]|it|that|them|those|some|half|third|quarter|part) (?:[a-z]+ ){0,3}(?:for|with|by|to|against) ${the}(?:# (?:of )?)?${the}[FNL]\\b`,
  `\\b${swapping} (?:out )?# (?:of )?${the}[FNL]\\b`,
  `\\b${swapping} (?:out )?${the}(?:# (?:of )?)?${the}[FL] (?:out )?(?:for|with|by|against) ${nameless}`,
  `\\b(?:use|used|using|take|took|taking|put|try) ${anything}[^#FNL.?!,;]{0,50} (?:instead of|in place of|in lieu of|rather than) ${the}(?:# (?:of )?)?${the}F\\b`,
  `\\b(?:use|used|using|take|took|taking|put|try) ${anything}[^#FNL.?!,;]{0,30}\\b(?:block|stuff|tub|bottle|jar|bar|brick|lump|tin|one|thing)\\b[^#FNL.?!,;]{0,30} for ${the}# (?:of )?${the}F\\b`,
  `\\bF [^.?#]{0,24}\\b${swapping} [^.?#]{0,24}\\b[FN]\\b`,
  `\\b${swapping} (?:those|these|them|the (?:two|#|…|numbers|figures|amounts|weights))\\b`,
  `\\b(?:traded|changed|swapped) places\\b`,
  `\\b(?:blend|blended|mixed|mix|cut|stretched|eked out|topped up|made up|filled up|thinned) with ${the}N\\b(?! (?:until|till)\\b[^.?#]*#)`,
  `\\bN (?:until|till)\\b(?![^.?]*#)`,
  `\\btopped (?:it |that |the (?:bottle|jug|bowl|pot|jar) |them )?up\\b(?! with # (?:of )?(?:[a-z]+ )?X\\b)[^.?]*\\b(?:F|N|L)\\b(?<!N(?= (?:until|till)\\b[^.?#]*#))`,
  `\\b(?:should|shall|could|can|may|would) (?:i |we )?(?:[a-z]+ )?the (?:missing|lacking) #`,
  `\\bfilled (?:it|that|them) up (?:to #|with (?:the |a |my )?(?:new|other|fresh|second|next)\\b)`,
  `\\b(?:same|equal) (?:weight|amount|quantity) of ${the}[FN]\\b(?! #)|\\bN (?:of|in|at) (?:the )?(?:same|equal) (?:weight|amount|quantity)\\b`,
  `(?:^|\\b(?:i|we|ive|and|so|then|but|just|simply|mine|only)) (?:uses|used|using|put|took|taken|grabbed|has|hers with|his with|theirs with|went with|went for|had in addition|poured in|added|tipped in|bought) (?:instead |in |up |just |only )*${the}(?:last of the |rest of the |remaining )?N\\b(?! #| (?:until|till)\\b[^.?#]*#)`,
  `\\bso (?:i|we) (?:have |just |simply )*(?:put|used|took|went with|poured)(?: in)? ${the}[FN]\\b(?! #)`,
  `\\b(?:actual|actually|real) F :? ?(?!#)`,
  `^(?:me|mine|in mine|my pot|my version) : ${the}F #`,
  // "I ran low on olive and used sunflower for part of it", "olive ran low, so part of it is sunflower"
  `(?:\\b(?:low|short) (?:on|of) ${the}F|\\bF ${vessel}(?:ran|was|were|got|is) (?:a bit |rather |getting |running )?(?:low|short|nearly (?:out|empty|gone)|almost (?:out|empty|gone)))\\b(?:(?!\\b(?:will|ll|buy|order|get|tomorrow|next|if)\\b)[^.?#])*\\bN\\b(?! (?:#|[a-z]+ #))`,
  `\\b(?:part|some|half|most|a bit|a third|a quarter) of (?:it|that|them|${the}F) (?:is|was|being|are|were) (?:really |actually |now )*N\\b|\\bN (?:for|as) ${the}(?:part|some|half|most|rest|a bit|remainder) of (?:it|that|them|${the}F)\\b`,
  `\\bno idea of the (?:shares|proportions|split)\\b`,
  `\\bmis ?prints?\\b`,
  `F (?:is|are|was) (?:only |just )?(?:going|supposed|meant) to be\\b`,
  `\\bmy (?:usual|regular|normal|standard) (?:one |recipe |batch |bar )?(?:with|but|plus|minus|without|except)\\b(?!.*(?:\\bso|:) (?:its |it is |thats |now )*(?:# (?:of )?F|F #))`,
  `\\b(?:give|gave|put|add|added) its (?:share|weight|part) to\\b`,
  // "I don't have tallow so it was all lard"
  `\\b(?:dont|didnt|do not|did not) have (?:any )?[FN]\\b[^.?#]{0,30}\\b(?:so|and) (?:it|that|the rest) (?:was|is|became|got) (?:all |just |now )*[FN]\\b`,
];
/** More or less of something, or twice. */
const more: readonly string[] = [
  `\\b${little} (?:more|less|extra) (?:of )?${the}[FL]\\b`,
  `\\b${little} (?:extra |more )?of ${the}F (?:extra|more|on top|too|went|as well)\\b`,
  `\\b${little} (?:extra|more|less) of ${the}[FNL]\\b`,
  `\\b(?:another|extra|additional|second) (?:good )?(?:${little}|cup|bottle|jar|lot|bowl) (?:of )?${the}[FNL]\\b`,
  `(?:^|\\b(?:then|and|also|plus|(?<!\\b(?:X|mica) [^.?#]{0,16})with|but) |\\b(?:added|put|poured|tipped|threw|chucked|splashed|sloshed|stirred|dropped) (?:in )?)(?:then |also )*(?:a|another|one|some) (?:good |fair |big |large |small |generous )?(?:splash|glug|dash|dollop|slosh|ladle|lump|knob|blob|spoon|spoonful|handful) (?:or (?:so|two) )?(?:of )?${the}[FN]\\b(?! (?:is|was) (?:left|missing|still))(?![^.?]{0,20}#)`,
  `\\b(?:overshot|overpoured|undershot|overdid|shorted|rounded|fudged|guessed|eyeballed|misjudged) (?:up |down |on )?${the}[FL]\\b(?!.*\\b(?:cushion|margin|leeway|to spare|safe side)\\b)`,
  `[FL] (?:(?:is|was|are|were|got|has|have|been|now|also|then|i|we) )*(?:doubled|tripled|trebled|halved)${end}`,
  `\\bheavy (?:- )?handed with ${the}[FL]\\b`,
  `[FL] (?:was|is|came|came out|ended up) (?:just |only )?(?:a |an )?(?:shade|hair|bit|touch|little|tad|fraction|drop|gram or two|few grams) (?:under|over|more|less|short|above|below|too)\\b`,
  `\\b(?:put|added|tipped) (?:in )?[#…] (?:more|less|extra) (?:of )?${the}L\\b`,
  `\\b(?:added|add|put in|adding|topped up|tipped in|threw in) (?:the |another |an |a )?(?:missing|extra|additional|another|further|remaining|more) #(?! (?:of )?${plain}X)`,
  `\\b(?:put|poured|tipped|added|melted|threw|dumped) (?:[a-z]+ |F |L |it ){0,4}(?:twice|double|a second time)\\b|\\b(?:F|L) (?:line|(?:went|is|got|was put|was poured|may be|might be) in|was added) twice\\b|\\b(?:may|might|must) have [^.?]{0,24}[FL] twice\\b`,
  `\\b(?:both|two|double|#|…) (?:lots|lot|doses|portions|helpings)\\b`,
  `\\btheres (?:now )?double\\b|L [^.?]*\\bboth went in\\b|\\bput it in (?:as well|too|again)\\b|\\b(?:he|she|they|i|we) (?:melted|added|put in|poured|tipped in|weighed) another #(?! (?:of )?${plain}X)`,
  `\\bin addition (?:the |some |a )?[FN]\\b|\\btheres (?:# of )?F in (?:there|it) (?:as well|too)\\b`,
  `\\b(?:misread|misheard)\\b|\\bread (?:them|it|those|these)(?: off)? (?:backwards|wrong|wrongly)\\b`,
  `\\bexcept (?:(?:that )?(?:i|we|it)\\b[^.?#]*|(?:for )?the )[FNL]\\b`,
  `\\b(?:took|take|taken|knocked|left) (?:a )?(?:tenth|bit|little|touch|third|quarter|fifth|few grams) (?:off|out)\\b[^.?]*L`,
];
const ground =
  '(?:floor|patio|step|steps|stairs|path|lawn|grass|drive|deck|porch|balcony|sink|drain|table|worktop|counter|bench|stove|hob|tray|sleeve|gloves?|ground|rug|carpet|mat)';
/** A bit, or as much of it as somebody guesses. */
/** What else is spilt. */
const notIt = '(?!.*\\b(?:batter|soap|mixture|trace|oils?|fats?|powder|vinegar|tea|coffee|milk)\\b)';

const floor =
  '(?:floor|carpet|rug|ground|lawn|grass|patio|path|step|steps|stairs|drive|sink|drain|bin|mat|stove|hob|worktop|counter)';
const anyPaper = papers.replaceAll(' ', '|');
const notKnown =
  '(?:no idea|dont know|couldnt (?:say|tell)|cant (?:say|tell)|not sure|unsure|god knows|goodness knows|who knows|unknown)';
/** What is lost of a fat, or of all that was to go in: nobody knows how much. */
const lostFat: readonly string[] = [
  `${someOf} (?:of )?${the}F (?:or so )?[^.?#]{0,40}\\b(?:on|onto|into|down|over|off|across|(?:went|ended up|landed|is|was|are) in) (?:the|my|her|his|our) ${floor}\\b`,
  `\\bF [^.?#]{0,12}\\b(?:all over|all across) (?:the|my) ${floor}\\b`,
  `\\b(?:spil(?:led|t)|slopped|lost|dropped|sloshed) ${someOf} (?:of )?${the}F\\b`,
  `\\b(?:spil(?:led|t)|slopped|lost|dropped|sloshed|wasted) (?:about |some )?[#…] (?:of )?${the}F\\b|[#…] of ${the}F (?:(?:then|got|was|were|is|went|also|sadly) )+(?:lost|spil(?:led|t)|wasted|missing|to waste|overboard)\\b`,
  `^(?!.*\\b(?:batter|soap|mixture|trace)\\b)[^XL]*\\b${notKnown} (?:exactly |just )?(?:how much|amount|quantity|part|weight)(?: of ${the}F| of (?:it|that)| is| was| went| ran| got| landed| ended)*(?= (?:$|[-,.;:!)]|on\\b|in\\b|down\\b|over\\b|but\\b|so\\b))`,
  `^[^#]*\\b(?:went on|carried on|continued|made do|worked|used|melted|put in|poured in|took) (?:with )?(?:just |only )?(?:what|whatever)(?: ?s| is| was| had| there was| i had)* (?:left|remained|remains)\\b(?! (?:in|from)\\b| of (?!(?:it|that|them|${the}[FL])\\b))(?!.*#)`,
];
/** So much less or more than its weight says: beside columns that agree, too. */
const off: readonly string[] = [
  `[FNL] ${vessel}(?:(?:is|was|were|came|comes|came out|ended up|went|in) )*(?:(?:under|over|short|out|off) by (?:about )?#|[#…] (?:under|over|short|too (?:much|little|light|heavy))(?= (?:$|[-,.;:!?)]|and\\b|but\\b)))(?!.*\\?)`,
  `(?<!\\bbetween )# too (?:much|little) (?:of )?${the}[FNL]\\b(?!.*\\?)|\\b(?:over|under|short) (?:with|on|of) ${the}[FNL] by (?:about )?#`,
];
/** Lye that was spilt. */
const lostLye: readonly string[] = [
  `L [^FN.?]{0,90}\\b(?:spil(?:led|t)|slopped|splashed over|lost|leaked|knocked (?:it )?over|tipped over) ${someOf}`,
  `^${notIt}[^FNX]*\\b(?:i|we|and|but|then|also|he|she|jug|^) (?:have |had |just )*(?:spil(?:led|t)|slopped|lost|tipped out) ${someOf}(?= (?:of (?:it|that|the (?:jug|solution|liquid))\\b|on\\b|onto\\b|over\\b|down\\b|[-.,;:!?)]|$))`,
  `^${notIt}[^FN]*\\b${someOf} of (?:it|that|the (?:jug|solution|liquid)) [^.?FN]{0,24}\\b(?:on|onto|over|down) (?:the|my) ${ground}\\b`,
  `\\b(?:knocked|tipped|kicked) ${the}L over\\b`,
];
/** Lye that was lost otherwise, or that nobody weighed. */
const lye: readonly string[] = [
  `(?:L|\\bsolution|\\blye|\\bcaustic|\\bbeads)(?! (?:figure|amount|number|value|line|weight|entry)\\b[^#.?]{0,20}\\blost\\b) [^#.?]{0,60}\\b${lost}\\b`,
  `\\b${lost} (?!(?:the |my |our |that |a |an )*(?:${anyPaper})s?\\b)(?:[a-z]+ ){0,5}L\\b(?! (?:note|notes|recipe|sheet|card|figure|figures|number|numbers|amount|label)\\b)`,
  `\\b(?:drops?|grains?|beads|bit|spoonful|some|part) of ${the}L [^.?]{0,24}\\b(?:on|onto|into|down|over) (?:the|my) (?:floor|table|worktop|counter|sink|bench|drain|stove|hob|tray|grass)\\b`,
  `\\b(?:scale|scales|display) (?:jumped|died|drifted|flickered|wobbled|froze|gave out|stuck)\\b[^.?]*L`,
  `\\bminus (?:whatever|what|the bit|some)\\b`,
  `\\b(?:died|went (?:black|off|blank|flat)|switched off|gave up) [^.?]{0,24}\\b(?:of|with|during|weighing|halfway) (?:the )?L\\b`,
  `(?<!(?<!\\b(?:i|we) )\\b(?:always|used to|she|he|they)\\b[^.?#,;]{0,40})\\b(?:finished|guessed|did|went) (?:[a-z]+ ){0,3}by eye\\b`,
  `\\b(?:scale|scales) (?:was|were) (?:still |set )?(?:on|in) (?:grams|ounces|oz|pounds)\\b`,
  `\\b(?:not sure|cant remember|forgot|didnt|did i|wasnt|havent|hadnt|never|whether i) [^.?]{0,20}\\b(?:tared?|zero(?:ed)?)\\b`,
  `\\bwasnt sure\\b[^.?]*[FL]\\b`,
  `\\b(?:nicked|stole|ate|licked|got at) [^.?]*\\b(?:F|fats|oils)\\b`,
  `\\bcan ?(?:t|not) (?:remember|recall|say|tell) (?:whether|if|which)\\b[^.?]*(?:F|L)|\\bput ${the}F in , didnt put\\b`,
  `\\b(?:emptied|tipped|poured|went) (?:it |that |them )?in unweighed\\b`,
];
/** All of it so many times. */
const size: readonly string[] = [
  `(?<!F #? ?)\\btimes (?:that|this|as much|of it|of that|the lot)\\b`,
  `\\b(?:scaled|brought|took|reduced|shrank|cut) ${the}(?:oils|fats|everything|it|recipe|lot|amounts|batch) (?:all )?(?:up|down) (?:a bit|a little|slightly|somewhat|to fit|so (?:that )?it (?:fits|would fit))`,
  `# of (?:those|these|them) in (?:one|a|the same) (?:pot|go|batch)\\b`,
  `^(?:make |do |lye for |L for |cook )?(?:a |one )?(?:half|third|quarter|double|triple|tenth|eighth) (?:of )?(?:a )?(?:this|these|the following|that)\\b`,
  `\\b(?:half|third|quarter|double|triple|tenth|eighth|fifth|sixth) of (?:this|the recipe|the list) (?:went in|please|is in|in the pot|:|$|[,.])`,
  `\\b(?:double|triple|third|quarter|half|eighth|tenth|sixth) of this\\b`,
  `\\b(?:double|triple|half|quarter|bigger|smaller) (?:a |the )?batch (?:only|but)\\b|\\bscaled (?:it|everything|all|this|the lot) (?:all )?(?:up|down) (?:to|by) (?:a |one )?(?:half|third|quarter|tenth)\\b`,
  `\\b(?:batch|recipe) and a half\\b`,
  `\\bonly (?:did|made|do|make|making|doing|mixed) (?:a |one )?(?:half|third|quarter|tenth|fifth|eighth|#)(?! (?:bars?|times?|soaps?)\\b)`,
  `\\b(?:cut|cutting|halved|halving|doubled|doubling|tripled) ${the}[FL] ?(?:in half|by half|$|[.,!;]|and|but|this|today|now)`,
  `\\b(?:i|we) want (?:only |just )?# bars\\b(?! (?:, )?so (?:its |thats )?# (?:of )?F)`,
  `\\b(?:an? )?(?:half|third|quarter|eighth|tenth|fifth|sixth|#) of it , (?:in|for|as)\\b`,
  `\\b(?:poured|tipped|mixed|stirred) the (?:second|first|other|two) (?:one |pot |batch )?(?:into|to|with) the (?:first|second|other)\\b`,
  `# (?:of )?(?:F )?(?:and # (?:of )?(?:F )?)?(?:(?:in|from|of) (?:the|my|her|his) [a-z]+ )?(?:became|become|turned into|is now|are now|went (?:up |down )?to) (?:now )?#`,
];

const patterned = (list: readonly string[]): readonly RegExp[] => list.map((pattern) => new RegExp(pattern, 'd'));
let made: Readonly<Record<'fat' | 'lost' | 'always' | 'done', readonly RegExp[]>> | null = null;
/** Made for the first post that says something: they cost a start a third. `done`: where somebody did it, too. */
function changes(which: 'lost' | 'always' | 'done'): readonly RegExp[] {
  if (!made) {
    const fat = patterned(lostFat);
    const lost = [...fat, ...patterned([...lostLye, ...off])];
    const always = [...patterned([...out, ...other]), ...lost, ...patterned([...lye, ...size])];
    made = { fat, lost, always, done: [...always, ...patterned(more)] };
  }
  return made[which];
}

let nothing: RegExp | null = null;
/** "No palm, so swapped it for tallow, that's 250 g of tallow": what was lacking has no weight, what came its own. */
const forNothing = (): RegExp => {
  nothing ??= new RegExp(
    `\\bN\\b[^.?#F]{0,30}\\b${swapping} (?:it|that|them) (?:for|with|by) (?:# (?:of )?F|F (?=[^.?]{0,40}# (?:of )?F))`,
    'g',
  );
  return nothing;
};

const own = /^(?:me|mine|in mine|my pot|my version) :/;
const isFigure = (token: Token): boolean => token.t === 'quantity';

/** "I have 1.2 kg of lard sitting in the freezer. I'd go with all of that, and 300 g coconut": it opens the list. */
const toUse = /\b(?:have|got|theres|there is|ive|ve) # (?:of )?F\b[^#.?]*/;
const forIt =
  '(?:this|it|that|these|(?:the|my|this|a|our|tonights|todays|tomorrows|this weekends) (?:next )?(?:soap|batch|bar|bars|loaf|pot|recipe)|soap|tonight|today|tomorrow|soaping|the weekend)';
/** "I have 14 oz of sunflower, 10 oz of coconut and 4 oz of castor set aside": all of the list is ready. */
const ready = new RegExp(
  `\\b(?:have|got|has|theres|there is|there are|ive|ve) (?:[a-z]+ )?# (?:of )?(?:[a-z]+ )?F(?: (?:, )?# (?:of )?(?:[a-z]+ )?F)*(?: ,)? (?:and|plus|&) # (?:of )?(?:[a-z]+ )?F (?:(?:all|both|already|now|here|ready|weighed|out|and) )*set aside\\b(?! (?:until|till|to|because|as|since|it|that|from|of|at|(?:just )?in case|for (?!${forIt}\\b))|[^.?]*\\b(?:use|using|take|taking|put) (?:in )?(?:only |just )*(?:the|some|half|one|two|part|most)\\b)`,
);
const isUsed = /\b(?:use|using|go|take|with|melt|want|need|put)\b[^.?]*\b(?:all|it|that|both|them)\b/;

/** "A glug of castor, maybe a ladle?" tells of one, and asks for none. */
const guessed = /(?: ,)? (?:maybe|perhaps|possibly|say|or|about|roughly)(?: [a-z]+){1,4} \?/;
/** "Can I swap half the palm for lard?" is asked, and not done. */
const mayI =
  /^(?:(?:and|so|but|also|then) )*(?:can|could|may|might) (?:i|we) (?:(?:just|also|then) )*(?:swap|sub|replace|substitute|exchange|switch)\b[^.#]*\b[FN] (?:for|with|by) (?:some |the )?[FN] ?\?/;
/** "Would've loved 50 g of shea in there too". */
const wish = /\bwould(?: ha|'?)ve (?:loved|liked|preferred|wanted)\b[^.?]{0,30}# (?:of )?[FN]/;

/** Nobody has done it. */
const open = /\?|\b(?:would|should|could|can|if|might|maybe)\b/;

/** Beside a swap that is asked about: what did not go into the pot. */
const isDone = /\b(?:never|forgot|found|spil(?:led|t)|coming|delivered|arrived?)\b/;

/** Nothing of the kind happened. */
export const denied =
  /\b(?:nothing(?! else\b)|nobody|no one|none spilled|didnt (?:lose|spill|change|swap|skip|leave)|havent (?:changed|swapped)|not a drop|until it (?:read|showed|said) #|never (?:lost|spilled|skip))\b/;
export const elsewhen =
  /\b(?:for|as a) comparison\b(?! (?:to|with)\b)|^comparison :|^(?:no|number|batch) (?:\. )?# |\b(?:next time|later on|(?<!(?:than|as) )last (?:time|week|month|year)|usually|normally|in future|back then|in (?:another|(?:a|an|one) (?:different|other|earlier|older)) (?:batch|soap|loaf|recipe)|years ago|in earlier years|(?:should|would|could) have|shouldve|wouldve)\b/;

/** "The batch before this I left the palm out." */
const ofBefore = new RegExp(
  `^(?:(?:and|but|in|with|for|on|from) )*(?:(?:the|my|our) )?(?:${batchBefore}|(?:time|batch|loaf|one) before ,? ?(?:i|we|it)\\b)`,
);

/** "Last week I replaced the palm with lard, and kept the lye at 134 g": of the batch that is weighed. */
const lately = /^(?:and |but |then )?last (?:week|month) (?:i|we)\b/;

/** What was spilt of a fat was put in anew. */
const madeGood = /\b(?:refilled|weighed (?:it |that |out )*(?:again|afresh|anew)|started (?:again|afresh|over))\b/;
/** Sentences in which that is told, at the most. */
const soon = 3;

/**
 * Where nothing of `back` overlaps, the words of the first such sentence; where a change was heard, of what was lost;
 * where one is only asked about, of what was done.
 */
export function unheardChange(
  cut: Cut,
  back: readonly { readonly from: number; readonly to: number }[],
  isHeard: boolean,
  isAsked: boolean,
): string | null {
  const weighed = weighedThings(cut.tokens);
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (back.some(({ from, to }) => from < sentence.to && to > sentence.from)) continue;
    if (isSmallTalk(cut.tokens, sentence)) continue;
    // "mine: avocado 300 g", and no other list before it
    if (own.test(sentence.text) && !isAny(cut.tokens, 0, sentence.from, isFigure)) continue;
    if (isAsked && (open.test(sentence.text) || !isDone.test(sentence.text))) continue;
    const isMadeGood = (): boolean => sentences.slice(k, k + soon).some(({ text }) => madeGood.test(text));
    const isOpening =
      !isAny(cut.tokens, 0, sentence.from, isWeight) &&
      (sentence.figures > 1 || isUsed.test(sentences[k + 1]?.text ?? ''));
    const said = saidIn(sentence, cut, weighed, isHeard, isMadeGood, isOpening);
    if (said !== null) return said;
  }
  return null;
}

function saidIn(
  sentence: Sentence,
  { tokens, prims }: Cut,
  weighed: ReadonlyMap<string, number>,
  isHeard: boolean,
  isMadeGood: () => boolean,
  isOpening: boolean,
): string | null {
  const dashes = (all: string): string => '-'.repeat(all.length);
  const lettered = sentence.text
    .replace(/@/g, (_, place: number) => letterOf(tokens[sentence.tokenAt(place)], weighed))
    .replace(forNothing(), dashes);
  const text = isOpening ? lettered.replace(ready, dashes).replace(toUse, dashes) : lettered;
  if (mayI.test(text)) return null;
  if (wish.test(text)) return rawText(prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 1).trim();
  if (
    denied.test(text) ||
    nearly.test(text) ||
    ofBefore.test(text) ||
    (elsewhen.test(text) && !(lately.test(text) && text.includes('#')))
  )
    return null;
  for (const change of changes(isHeard ? 'lost' : open.test(text.replace(guessed, '')) ? 'always' : 'done')) {
    const [from, to] = change.exec(text)?.indices?.[0] ?? [];
    if (from === undefined || to === undefined || (made?.fat.includes(change) && isMadeGood())) continue;
    if (text.startsWith('not sure', from) && isOfScent(tokens, sentence)) continue;
    const [first, last] = [tokens[sentence.tokenAt(from)], tokens[sentence.tokenAt(to - 1)]];
    return first && last ? rawText(prims, first.from, last.to) : null;
  }
  return null;
}

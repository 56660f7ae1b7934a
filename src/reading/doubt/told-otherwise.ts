/**
 * What a post tells of the pot against its own list, over a sentence or two: two records and nobody knows which one was
 * followed, the wrong alkali, oils that were ladled out before the lye, lye that stayed behind in the jug, what the scale
 * really showed, all of it doubled, a fat of the method that the list does not weigh. Asked about, whatever else of the
 * post was heard.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { papers, relations } from '../words/cue-words.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf, weighedAt, weighedThings } from '../words/weighed.ts';
import type { InPot } from './pot-differs.ts';
import { isSmallTalk } from './small-talk.ts';

interface Tale {
  /** What a sentence says. */
  readonly tells: RegExp;
  /** What the same sentence says, too. */
  readonly also?: RegExp;
  /** What is said there, or right before it. */
  readonly beside?: RegExp;
  /** What makes something else of it there, or right behind it. */
  readonly unless?: RegExp;
  readonly undone?: RegExp;
  /** Asked about whatever rule heard the sentence. */
  readonly always?: true;
  /** Its figure stands nowhere else in the post. */
  readonly anew?: true;
  /** Where it names the alkali, that is weighed elsewhere, too. */
  readonly ofWeighed?: true;
  /** What was told right before was left out. */
  readonly dropped?: true;
  /** Nothing is asked where the alkali fits the fats as they stand. */
  readonly misfit?: true;
  /** What the answer says where it was heard. */
  readonly heard?: RegExp;
}

const any = (words: string): string => `(?:${words.trim().replace(/\s+/g, '|')})`;
const really = '(?:really |actually |then |finally |just |had |have |ve |did )*';
const unknown =
  '(?:no (?:idea|clue)|(?:dont|do not|no longer|nobody|never) know|not sure|unsure|(?:cant|cannot|can not|couldnt|could not)(?: for the life of (?:me|us))?(?: honestly)? (?:remember|recall|say|swear|tell(?: you)?)|forgot|forgotten|wonder)';
const forSure = '(?: any ?more| any longer| now| honestly| for sure| at all| ,)*';
const the = '(?:(?:the|my|that|this|of|all|some|a|an|its) )*';
const vessel = '(?:cup|jug|beaker|bowl|dish|glass|saucer|tub|jar|container|lid|carton|pot)';
const partOf =
  '(?:(?:about |around |roughly |maybe |exactly |just |over |nearly )*(?:a |an |the |my )?(?:good |few |couple of |little |large |big |small )*(?:some|half|third|quarter|part|bit|lot|most|splash|cup|cups|jar|jars|ladle|ladles|ladleful|ladlefuls|spoon|spoons|mug|glass|bowl|scoop|scoops|litre|pint|#|…)) ';
const oils =
  '(?:(?:of |the |my |those |these |that |all |melted |warm |hot |liquid |mixed |combined |clear )*(?:oils?|fats|oil (?:mix|mixture|blend)|fat (?:mix|mixture|blend)|mix of oils|melted (?:mix|mixture|blend))\\b)';
const takes =
  '(?:ladled|scooped|spooned|poured|took|taken|tipped|dipped|drew|drained|siphoned|skimmed|removed|gave|lifted)';
const times = '(?:doubled|tripled|trebled|quadrupled|halved)';
const all = '(?:everything|it all|all of (?:it|them|that)|the (?:whole )?lot|the whole (?:thing|recipe|list))';
const rest = '(?:crust|lump|lumps|layer|clump|clumps|cake|film|residue|puddle|bit|spoonful|rest|remains|some|sludge)';

/** Two of its words may be one name. */
const sizes =
  '(?:both batches|(?:the|my|our|a|this) (?:double|doubled|triple|tripled|half|halved|two|three)(?: (?:batch|batches|recipe|lot|size|amount|loaf|loaves|one)\\b|(?= (?:is|was|comes|[.,:]))))';

/**
 * `F` a fat that is weighed, `N` one that is not, `L` the alkali of the list, `K` the other one, `W` water, `M` milk or the
 * like, `X` all else; `R` a weight near that of the alkali that the list does not have.
 */
const putByOthers = new RegExp(
  `\\b(?:${relations.replaceAll(' ', '|')}|he|she|they|somebody|someone) [^.?#]{0,24}\\b(?:put|added|tipped|poured|threw|chucked|slipped|emptied|stirred) (?:(?:in|another|an|extra|about|the|over|well) )*# (?:of )?(?:the |my )?[FL] (?:in|into|to (?:it|the pot|mine|my))\\b`,
);
/** Who may have seen it. */
const witnesses = `${relations.replaceAll(' ', '|')}|kid|girl|boy|he|she|they`;
const theirPot =
  /\?|\b(?:hers|theirs|her own|his own|(?:her|his|their|last|other|own) (?:pot|batch|soap|recipe|loaf)|last (?:time|week|month|year)|would|should|always|usually)\b/;

const made = (): readonly Tale[] => [
  {
    tells: new RegExp(
      `\\b${unknown}(?: any more| now| honestly| for sure)* (?:which|what)(?: one)?(?: of (?:the|these|those|them)(?: (?:two|both|…|#|figures|numbers|weights|amounts))*)? (?:(?:it |that )?(?:is|was) (?:right|true|correct|the (?:truth|right one|real one))|(?:i|we) ${really}(?:used|took|weighed|put|poured|went|tipped|followed|measured)\\b|${really}(?:went in|is in)\\b)`,
    ),
    beside: new RegExp(
      `(?=.*\\b(?:${papers.replaceAll(' ', '|')}|records?|phone|notebook|label|sticker|diary|log|spreadsheet|lists?|written|wrote)\\b).*[#…]`,
    ),
    unless: /\b(?:mou?lds?|tins?|fragrances?|scents?|colou?rs?|bars|spoons?|bowls?)\b/,
  },
  {
    tells: new RegExp(
      `\\b${any('tub bag jar pot box tin bottle sack packet container flakes pellets beads crystals stuff one used took taken')}\\b[^.?#]{0,40}\\b(?:is|was|were|are|be) (?:in fact |really |actually |all |the |only )*K\\b|\\bK (?:that |which )?(?:i|we) ${really}(?:used|took|taken|weighed|grabbed|put)\\b|\\b(?:i|we) ${really}(?:used|taken|took|grabbed|weighed) (?:# (?:of )?)?(?:the )?K\\b|# (?:of )?(?:the )?K [^.?#]{0,24}\\b(?:not|no|instead of|rather than) (?:any |the |a grain of )?L\\b`,
    ),
    unless:
      /\b(?:liquid soap|once|always|usually|before|never|not|isnt|wasnt) (?:[a-z]+ )?K\b|\b(?:last|previous|earlier|other|next|another|first) (?:batch|one|time|soap|loaf|bars?)\b|\bK (?:before|once)\b|\?|\b(?:if|next time|should|would)\b/,
    heard: /^I took (?:the )?(?:naoh|koh|sodium|potassium|caustic)[^,]* (?:in the place of|of the list as)/i,
  },
  {
    tells: new RegExp(
      `\\b${takes} (?:out |off |away |back )?${partOf}${oils}|\\b${takes} ${oils} (?:out|off|away)\\b(?! (?:of )?(?:the )?(?:heat|stove|hob|oven|fire|flame|microwave|fridge|ring|plate|cooker)\\b)|\\b${partOf}${oils} (?:went|was|were|got) (?:[a-z]+ ){0,3}(?:into|in|to|out|off|for)\\b|\\bhalf of (?:the|that|this|my) (?:oil |oils |melted )*(?:blend|mix|mixture)\\b`,
    ),
    unless:
      /\b(?:batter|trace|soap went|cooked soap|paste|back|again in|bottles?|usual(?:ly)?|next time|last time|always)\b/,
    undone: /\b(?:poured|put|tipped|goes|went) (?:it |them |that |all )*back\b/,
  },
  {
    tells: new RegExp(
      `\\b${unknown}${forSure} (?:whether|if) (?:(?:i|we)(?:'?d|'?ve)?|it|the [a-z]+) [^.?]{0,30}\\b(?:tared|zeroed|subtracted|deducted)\\b`,
    ),
    always: true,
  },
  {
    tells: new RegExp(
      `\\b${rest} of (?:the |my |that |undissolved |solid |hard |wet |dry |old |lye )*(?:L|lye|caustic|flakes|beads|crystals|pellets|hydroxide)\\b[^?#]{0,60}\\b(?:never|(?:at|on|to|in) (?:the|my|its) (?:[a-zL]+ ){0,4}(?:bottom|jug|beaker|cup|bowl|bucket)|left (?:in|behind)|stayed|remained|caked)\\b|\\b(?:L|lye|flakes|beads|crystals|pellets) [^.?#]{0,30}\\b(?:caked|never (?:reached|got into|went in(?:to)?|made it (?:in|to)))\\b`,
    ),
    unless:
      /\b(?:no|not|nothing|none|without|if|until|till|once it|next time|always|usually)\b.{0,20}\b(?:crust|lump|left)\b/,
  },
  {
    tells: new RegExp(`\\b(?:i|we) ${really}${times} ${all}|\\b(?:with|had|took|made) ${all} ${times}\\b`),
    unless:
      /\b(?:doubled|tripled|trebled|quadrupled|halved)\b(?!.*\b(?:but|except|not|only)\b[^#]*# (?:of )?(?:the )?[LW]\b).*#|\b(?:checked|next|if|would|could|should|last|spring|summer|autumn|winter|christmas|never|usually)\b|\?/,
  },
  // "I doubled the lot, but was short on castor, so just 40 g", where no rule heard it
  {
    tells: new RegExp(
      `\\b(?:i|we) ${really}${times} ${all}[^.?#]*\\b(?:but|except|only|just|short|save|bar)\\b[^.?#]*(?:# (?:of )?(?:the )?F|\\bF\\b[^.?#]*#)[^#]*$`,
    ),
    always: true,
    unless: /\b(?:next|if|would|could|should|last|spring|summer|autumn|winter|christmas|never|usually)\b|\?/,
  },
  {
    tells:
      /\b(?:made|did|make|making|making|need|want) (?:it|this|that|them|everything|mine) (?:just |about |exactly )*(?:#|…|twice|double|half again|(?:one|two) and a half times|three times) (?:times )?(?:as (?:big|much|large)|bigger|the size)\b|\b(?:each|every|all) (?:single )?(?:one|thing|amount|oil|fat|weight|figure) (?:was |is |taken |got )*(?:times (?:two|three|#|…)|twice|doubled|x (?:#|…))/,
    unless:
      /\b(?:next|if|would|could|should|last|spring|summer|autumn|winter|christmas|never|usually|mou?ld (?:was|is)|(?:check|checked|weighed|weigh|read|counted|tested|ticked|went over) (?:off )?(?:each|every|all))\b|\?/,
  },
  {
    tells:
      /\b(?:scales?|display) [^.?#…]{0,16}\b(?:said|read|reads|showed|shows|stood at|was at|says) (?:only |about |just )?R\b|\bR (?:g |grams )?(?:on|by) the (?:scales?|display)\b/,
    beside:
      /\b(?:tipped|poured|went|put|used|dumped|threw|emptied) [^.?#…]{0,30}\b(?:in|into|it|lot|all|that)\b|\bin (?:there|it|the (?:pot|soap|water|jug|mix|batter))\b|\ball of (?:it|that) went\b/,
    unless: /\b(?:back|until|till|spooned|scooped|took (?:some|it) out|removed)\b/,
    undone: /\b(?:back|spooned|scooped|took (?:some|it) out|removed)\b/,
  },
  {
    tells:
      /\b(?:photos?|pictures?|video|print ?out|slip|strip|receipt|screenshot)\b[^.?#…]{0,40}\b(?:says|said|reads|read|shows|showed|has|had|is|was) (?:it (?:is|was|as|at) |only |about |just )*R\b|\bon (?:the|my|that) (?:photo|picture|print ?out|slip|strip|screenshot) (?:it (?:is|was|says|said|reads) |theres |i (?:see|read) )+R\b/,
    unless: /\?|\b(?:old|last|other|another|before)\b/,
  },
  {
    tells:
      /\bmelt(?:ed|ing)? (?:(?:[FN]|the|my|and|with|plus|,|together|hard|solid|both|oils|fats) )*(?:F (?:(?:the|my|and|with|plus|,) )+N|N (?:(?:the|my|and|with|plus|,) )+F)\b|\b(?:stir(?:red)?|add(?:ed)?|fold(?:ed)?|melt(?:ed)?) (?:in )?(?:the|my) N\b(?! (?:#|…|next|another))/,
    unless:
      /\b(?:next|if|would|could|should|usually|maybe|mou?ld|grease[ds]?|trace|after|instead|last time|no N|without)\b|\?/,
  },
  {
    tells:
      /^(?:so |and |but |then )*(?:it|they|that|the F|F) (?:all )?never (?:ever |actually )?(?:went|made it|got|came) in(?:to)?\b|\bF (?:, )?(?:(?:all|the (?:whole|full)) [#…] (?:of it )?, )?still (?:standing |sitting |all )*in its\b/,
    unless: /\?|\b(?:if|until|till|fridge|mou?ld|oven)\b/,
  },
  {
    tells:
      /\b(?:didnt|did not|never) (?:use|used|take|add|put)(?: in)?(?: any| the)? W\b|\bW (?:i |we )?(?:swapped|replaced|exchanged|traded) (?:for|with|by) (?:the |some )?M\b|\b[#…] was (?:all )?(?:[a-z]+ )?M instead\b/,
    unless: /\?|\b(?:if|next|more|extra|additional|tap|last|usually|normally|should)\b/,
  },
  {
    tells:
      /\b(?:forget|ignore|scrap|disregard|never mind) (?:about )?(?:the|that|my) [#…] [^.?]*\b(?:take|use|make (?:it|that)|go (?:with|for)|reckon with|want|like|prefer) (?:[a-z]+ ){0,2}[#…]|[#…] is (?:the |an )?old(?: one)? , [^.?]{0,24}[#…]/,
  },
  // told of another batch, and this one is like it
  {
    tells:
      /\b(?:so (?:has|had|does|did|is|was|have) (?:this|mine|ours|i|we|today'?s)\b|neither (?:has|had|does|did) (?:this|mine|ours)\b|(?:this|mine) (?:one )?(?:has|had|does|did|is|was) (?:too(?= (?:$|[.,;!]))|as well\b|the same\b)|and (?:i|we) (?:did|do|have done|went) (?:so |that |it |for )*(?:too|as well|the same|likewise)\b|me too\b|did so again\b|(?:i|we) kept (?:that|it)\b(?! (?:all|in)\b)|the same way (?:today|now|again)\b|same (?:here|now|this time|in this|with this)\b)/,
    also: /[#…]|\b(?:instead|in (?:the )?place of|rather than|less|more|without|no [FNL]|none of|extra|replac[a-z]+|swap[a-z]+|had (?:the )?[FN])\b/,
    always: true,
    heard: /^I took [^.]*, not [^.]*, as the post says/,
    unless: /\?/,
  },
  {
    tells:
      /[#…] of (?:the |my |that )?(?:F|[a-z]+) (?:that |which )?(?:never|didnt|did not) (?:ever |actually )?(?:went|go|got|get|made it|make it|came) in(?:to)?\b/,
  },
  // more or less than the list has, of a part of it alone, or nobody knows how much
  {
    tells: new RegExp(
      [
        '\\b(?:put|added|poured|tipped|used|weighed)(?: in)? (?:about )?[#…] (?:more|less|extra) (?:of (?:the )?)?(?:L|lye|caustic)\\b',
        '\\b(?:tared|zeroed) (?:it )?(?:too )?late\\b',
        '\\b(?:knocked|tipped|kicked) (?:over )?(?:the )?(?:jug|beaker|bowl|L|lye)\\b[^?]*\\b(?:gone|lost|spilt|spilled|missing)\\b',
        '\\bscaled (?:it |this |everything |all )?(?:up |down )?by [#…]',
        '\\b(?:tub|bag|jar|bottle|label|pack|box) (?:of (?:the )?L )?(?:says|said|reads|is marked|was marked) [^.?#L]{0,16}K\\b',
        '\\bthis (?:one |batch |time )?(?:has|had|got|gets) (?:only |just )?[#…] (?:less|more)\\b',
        '\\b(?:doubled|halved|tripled|trebled) the (?:L|lye|caustic|water|W|oils?|fats?|F)\\b(?! (?:and|to|from|so|for)\\b)',
        '\\b(?:half|some|part|most|bit|[#…]) of (?:the )?(?:L|lye|flakes|beads|pellets) (?:did not|didnt|never|would not|wouldnt) dissolve',
        '\\bL (?:amount |weight |figure )?(?:was|is) (?:only |just )?(?:a |my |by )?(?:guess|guessed|eye|estimate|estimated)\\b',
        '[#…] (?:less|more)\\b.*\\bthat (?:is|was) what (?:i|we) (?:used|took|put|went with)\\b',
        '\\b[FX] (?:tub|jar|tin|bottle|packet|block) (?:all )?went in (?:too|as well|there|whole)\\b',
        '\\b(?:says?|said|wrote|written|listed) (?:the )?L\\b[^?]{0,30}\\b(?:it was|its|it is|was)\\b[^?]{0,20}K\\b',
        '\\b(?:left|forgot) (?:the )?F (?:at home|behind|at work|in the (?:car|shop))\\b',
      ].join('|'),
    ),
    unless:
      /\?|\bin [#…] (?:i|we)\b|\b(?:if|would|could|should (?:i|we)|nearly|almost|never|last (?:time|batch|year)|next (?:time|batch)|usually|in (?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december)|ago|once|until it|dissolved (?:later|after|in the end)|then it did)\b/,
    heard: /times \d|in the place of|of the list as|not \d|taken? .* out/,
  },
  // nobody knows whether it went in, or how often
  {
    tells: new RegExp(
      [
        `\\b${unknown}${forSure} (?:whether|if|that|how often|how many times)\\b[^.?]{0,80}\\b${any('put tipped poured added weighed measured went used melted scooped got gone is was in')}\\b[^.?]{0,50}\\b(?:(?:only |just )?(?:once|twice|one time|two times)|at all|a second time|double|how often|how many times)\\b`,
        `\\b${unknown}${forSure} how (?:often|many times) (?:i|we|it|they|${the}[FL]) ${really}${any('put tipped poured added weighed went')}\\b`,
        `\\b${unknown}${forSure} (?:whether|if|that) (?:(?:i|we) ${really}${any('put tipped poured added weighed measured')} (?:in )?${the}[FL](?: in)?|${the}[FL] (?:was|were|is|had been|got|has been) (?:really |ever |all )*${any('measured weighed added poured in')}) ${any('before after with at right correctly in')}\\b`,
      ].join('|'),
    ),
    unless:
      /\b(?:oven|bars?|temperatures?|ph|blankets?|towels?|fridge|freezer|mou?lds?|gel|stirred|scents?|fragrance|colou?r|mica|clay|trace|would|will|next|should)\b/,
  },
  // it is not settled, or only its writer could know
  {
    tells: new RegExp(
      [
        `\\bmay(?:be)? or may(?:be)? not (?:have )?${any('put tipped poured added weighed used be in gone went')}`,
        `\\beither (?:i|we) [^.?]{0,30}\\b(?:it|them|F|L|N)\\b[^.?]{0,12}\\bor (?:i|we) [^.?]{0,20}\\b(?:it|them|F|L|N|the (?:lot|whole lot|rest))\\b`,
        `\\bmaybe (?:it|they|i|we) (?:goes?|went|put|add|use|leave)[^.?]{0,16} , maybe (?:it|they|i|we|not)\\b`,
        `\\b(?:F|N)\\b[^.?]{0,40}(?<![WM] (?:(?:is|are|was|amount|still|,) )*)\\b(?:(?:havent|have not|not|cant|still not) (?:quite |yet )?(?:made (?:up )?my mind|decided|settled|made up my mind)|undecided)\\b(?! (?:(?:on|about|what|how much|yet|the|my|any|of) )*[WM]\\b)`,
        `\\bone of (?:the |those |these )?(?:[a-z]+ |[#…FN] ){0,2}must (?:have been|be|have gone) [^.?]{0,30}\\b(?:heavier|lighter|more|less|wrong|off|out)\\b`,
        `\\b${unknown}${forSure} (?:whether|if) (?:i|we) (?:had |have |ve )?(?:already )?(?:multiplied|doubled|halved|scaled|tripled)\\b`,
        `\\b(?:forgot|didnt|did not|never|havent|hadnt) (?:to )?(?:#|zero|tare|zeroed|tared)(?= )[^?]{0,60}\\b(?:smashed|broke|broken|threw|thrown|binned|gave|lost|gone)\\b`,
        `\\bL\\b[^.?#R]{0,50}\\b(?:by eye|eyeballed|guessed|roughly (?:half|a third|a quarter) of (?:it|the tub|the tin|the bag))\\b`,
      ].join('|'),
    ),
    unless: /\b(?:scents?|fragrance|colou?r|mica|clay|name|label|would|wrap|cut|stamp|sell|bars?)\b/,
    always: true,
  },
  // its weight is that of a vessel, too
  {
    tells: new RegExp(
      [
        `[#…] (?:of )?(?:[FLX] )?(?:(?:is|was|were|are|be|means|really|all|for) )+(?:(?:[FLX]|lye|it|that|oil|fat|weight) )?(?:(?:with|and|plus|including|together with) )${the}(?:[a-z]+ )?${vessel}\\b`,
        `[#…] (?:of )?${the}(?:[FLX] )?(?:includes?|included|contains?|contained|has|had) ${the}(?:[a-z]+ )?${vessel}\\b`,
      ].join('|'),
    ),
    unless:
      /\?|\b(?:deducted|subtracted|taken off|took off|allowed for|alone|without|holds?|mou?ld|moulds)\b|(?<!\b(?:not|never|forgot|[a-z]+nt)(?: to| been| be| set| yet)*) (?:tare|tared|zeroed)\b/,
  },
  // what was weighed with it, or stands there by a slip
  {
    tells:
      /\b(?:cup|jug|bowl|beaker|lid|spoon|ladle|glass|elbow|thumb|paper) (?:was|were|sat|stood) (?:still |also |left |standing )*on the scales? (?:with|under|when|while|beside)\b[^?]*[FL]|[FL] (?:was |were |is |got )+weighed (?:(?:in|together|along) )?(?:with|including) (?:its|the|a|my|that) (?:[a-z]+ )?(?:cup|jug|bowl|beaker|lid|pot|tub|glass|dish|container)\b|\b(?:scales?|display|it|which) (?:had |has )?(?:jumped|drifted|flickered|wobbled|stuck|froze) [^.?]{0,24}\b(?:weigh|weighed|weighing|measured|pouring|poured) (?:out )?(?:the |my )?[FL]\b|^(?:jumped|drifted|flickered|wobbled) (?:while|when|as) (?:i|we) (?:was |were )?(?:weigh|weighed|weighing|measur|measuring)[a-z]* (?:out )?(?:the )?[FL]\b|\bscales? (?:was|were) (?:still )?(?:set )?to (?:ounces|oz|pounds|lb|grams)\b/,
    unless:
      /\?|\b(?:tared?|zeroed|deducted|subtracted|taken off|noticed (?:it )?(?:before|in time)|weighed (?:it|them|everything) again)\b/,
  },
  {
    tells:
      /\b[FL] (?:line|figure|number|amount|row|entry|weight) (?:is|was|has|contains|must be) (?:really |surely |probably )?(?:a |an )?(?:typing |copying |writing )?(?:slip|typo|error|mistake|wrong|mistyped|misprint|misread)\b|\bdigits (?:(?:are|were|is|got) )?(?:the )?(?:wrong way (?:round|around)|swapped|switched|transposed|reversed|back to front|backwards|mixed up)\b/,
    unless: /\?|\b(?:not|isnt|no) (?:a |an )?(?:typo|slip|error|mistake)\b/,
    heard: /^(?:I took|I read|I went)/,
  },
  // "the lye for the double batch is 286 g": nobody knows of which size the other weights are
  {
    tells: new RegExp(
      `\\b(?:L|lye) for ${sizes}[^.?#…]{0,16}[#…]|[#…] (?:of )?(?:L|lye) [^.?#…]{0,12}for ${sizes}|\\bL [#…] (?:, )?(?:that is |thats )?for ${sizes}|\\bfor ${sizes} (?:the )?(?:L|lye) (?:is|was|:) [#…]`,
    ),
    misfit: true,
    unless: /\?|\b(?:if|would|could|should|next|usually|half (?:of|is|as much))\b/,
  },
  // "the castor is 40, I poured 60 and tipped 20 g back"
  {
    tells:
      /\bF (?:(?:is|was|should be|really|only|just|now|the|of|weight) )+# [^?]{0,24}\b(?:poured|put|tipped|weighed|added|used|took) (?:(?:in|out|it|at) )*# [^?]{0,80}\b(?:tipped|poured|put|spooned|scooped|ladled|took|gave) (?:about )?# (?:of (?:it|that) )?(?:back|out)\b/,
    always: true,
  },
  // "my sister had already put in 120 g of coconut": on top of what is weighed
  {
    tells:
      /(?<!\b(?:i|we) )(?<!\b(?:ive|weve|id|wed) )\b(?:had|has|have) already (?:put|poured|tipped|added|weighed|melted|thrown|measured)(?: in)? (?:the |her |his |about )*# (?:of )?(?:the |my )?[FL](?= (?:in|into|before|when|while|as|and|[.,;!])(?: |$))/,
    anew: true,
    always: true,
    unless:
      /\?|\b(?:hers|theirs|her own|his own|(?:her|his|their|last|other|own) (?:pot|batch|soap|recipe|loaf)|last (?:time|week|month|year))\b/,
  },
  // "take 4 off every figure": each of them is more than went in
  {
    tells:
      /\b(?:take|took|taking|subtract|deduct|knock) (?:the |those |that |off )*[#…] (?:g )?(?:off|from|for) (?:of )?(?:every|each|all)\b|\bscales? [^.?!]{0,40}\b(?:showed|showing|shows|read|reads|reading) (?:a constant |always |permanently )?[#…] (?:with nothing|when (?:it was )?empty|too (?:high|low|much|little|heavy))\b/,
    always: true,
    unless: /\b(?:price|cost|total)\b/,
  },
  // "the palm ran out halfway, so I finished the weight off with cocoa butter"
  {
    tells:
      /\bF (?:ran out|gave out|was empty|was finished|ended|stopped) (?:about |roughly )?(?:half ?way|mid ?way|part ?way|in the middle|at some point|before)\b[^.?#]{0,60}\b(?:finished|filled|topped|made|completed|rounded|went on|carried on|continued)\b[^.?#]{0,30}\b(?:with|by|using|in) (?:the |some )?[FN]\b/,
    always: true,
  },
  // "there was going to be 50 g of cocoa butter, too"
  {
    tells: /\bthere (?:was|were) (?:going|meant|supposed|planned) (?:to be )?(?:also )?# (?:of )?(?:the )?F\b/,
  },
  // "I've swapped the two fats", "wrong way round, sorry: the olive and the lard"
  {
    tells:
      /\b(?:wrong way (?:a?round|about)|(?:i|we) ?(?:ve|have|had)? ?(?:just |accidentally |stupidly )*(?:swapped|switched|mixed up|muddled(?: up)?|transposed|reversed) (?:the |those |these |my )?(?:two|both|figures|numbers|weights|amounts|(?:two )?(?:fats|oils)|lye and (?:the )?water|F and (?:the )?F)\b|(?:got|had|have|put|wrote) (?:them|the two|these|those|both|the figures|the numbers) (?:mixed up|muddled|swapped|reversed|back to front))/,
    unless: /\?|\b(?:if|lids?|mou?lds?|labels?|scents?|colou?rs?|last (?:time|week|year)|next)\b/,
  },
  // "I've got 340 g on paper, he says no, it was 430 g"
  {
    tells: new RegExp(
      `\\b(?:${relations.replaceAll(' ', '|')}|he|she|they) (?:says?|said|thinks?|insists?|swears?|claims?|is sure|reckons?) (?:that )?(?:no|not) ?,? (?:it|that|this|the [FL]) (?:was|is|were) [#…]`,
    ),
    always: true,
    unless: /\b(?:scales?|checked|weighed it again|re-?weighed|(?:am|was) right|wrong)\b/,
  },
  // "my son did the weighing and swears it was 420 g": a figure of one who was there, against the list
  {
    tells: new RegExp(
      `\\b(?:${witnesses}) (?:[^.?#]{0,40}\\b)?(?:weighed|weighing|measured|measuring|poured|tipped it in|scales?)\\b[^.?#]{0,30}\\b(?:says?|said|swears?|insists?|claims?|sure|certain|reckons?|thinks?|remembers?|maintains?)\\b[^.?#]{0,30}[#…R]|\\b(?:${witnesses}) (?:(?:who|is|are|s) )*(?:quite |absolutely |dead |very |still )*(?:swears?|insists?|maintains?|sure|certain|positive|remembers?) (?:that )?(?:it|that|this|there|(?:the )?[FL]) (?:was|were) (?:really |only |more like |in fact )?[#…R]`,
    ),
    ofWeighed: true,
    anew: true,
    always: true,
    unless:
      /\?|\b(?:i|we) (?:have |just |then )*(?:checked|weighed|measured)|\b(?:wrong|right|mistaken|hers|theirs|her own|his own|(?:her|his|their|last|other|own) (?:pot|batch|soap|recipe|loaf)|last (?:time|week|month|year)|would|should|always|usually|enough|too (?:much|little))\b/,
    undone:
      /\b(?:wrong|mistaken|mixed up|misremember\w*)\b|\b(?:i|we) (?:have |just |then )*(?:checked|weighed|measured|saw|know)\b/,
  },
  // "of the sunflower I used only half, the other half I swapped for avocado oil"
  {
    tells:
      /\b(?:half|third|quarter|part)\b[^.?#]{0,30}\b(?:other|rest|remaining)\b[^.?#]{0,40}\b(?:swapped|replaced|exchanged|substituted|switched|changed|subbed)\b[^.?#]{0,16}\b(?:[FN]|[a-z]+ oil)\b/,
  },
  // "three blocks of palm, minus 50 g that I cut off"
  {
    tells:
      /\bF ,? ?(?:minus|less|but without|except) (?:the |about )?# (?:that |which |of it )?(?:i|we|was|were|went|stayed|cut|left)\b/,
  },
  // "600 g coconut and 100 g castor, so by his rule I weighed 98 g": of the lye, and not said so
  {
    tells:
      /\bby (?:his|her|my|that|the|this|their) (?:rule|formula|reckoning|method)\b[^.?#]{0,20}\b(?:i|we) (?:weighed|took|put|used|need|measured) (?:out )?[#…](?! (?:of )?(?:the )?[LF])/,
    always: true,
    heard: /which that rule makes of the fats\.$/,
  },
  // "last time I took 137 g but that was with palm": of another batch, and the palm is in none of it
  {
    tells:
      /\blast (?:time|batch|year|month|week)\b[^.?#]{0,24}[#…] [^.?#]{0,12}\b(?:that|it|this|those) (?:was|were) (?:with|for|of) (?:the )?(?:[FN]\b|[a-z]+ instead)/,
    always: true,
    heard: /of last time/,
  },
  // "I was going to put 60 g castor in, but did neither"
  {
    tells:
      /\b(?:was|were) (?:going|about|meaning) to (?:put|add|use|have|include|mix)\b[^.?]*[#…][^.?]*\bbut (?:then )?(?:i |we )?(?:did neither|didnt|did not|decided against|never did|havent|in the end (?:i |we )?(?:didnt|left|did))\b/,
  },
  // "a brand new 500 g tub, what is left in it is 362 g", and nobody says of what
  {
    tells:
      /\b(?:brand )?(?:new|full|fresh|unopened) [#…] (?:tub|tin|jar|bottle|bag|can|pack|packet|box)\b[^.?]{0,60}\b(?:whats|what (?:is|was)|weighed what) (?:still )?(?:is |was )?left\b/,
    always: true,
  },
  // "the whole thing read 403 g with both in"
  {
    tells:
      /\b(?:read|reads|showed|shows|said|says|weighed) [#…] with (?:both|everything|all of it|it all|the lot|all) in\b/,
    always: true,
    heard: /, which is .* less the .* of water\.$/,
  },
  // "25 g of it had stayed behind"
  {
    tells:
      /[#…] of (?:it|that|this|the F) (?:had |has |have |is |was |were )?(?:stayed|remained|stuck|clung|left|sitting|still) (?:behind|back|(?:in|to|on|at) (?:the|my) (?:jug|jar|bowl|pan|cup|pot|sides?|bottom|bottle))\b/,
  },
  // "it's either 121 or 131 g", of lye
  { tells: /\b(?:L|lye|naoh|koh|caustic)\b[^.?]*\beither [#…]/, always: true, unless: /\?/ },
  // "I swapped 60 g for castor": of which fat nobody says
  {
    tells:
      /\b(?:swapped|replaced|exchanged|substituted|switched|subbed|traded) (?:out )?(?:about |some )?# (?:of (?:it|that) )?(?:out )?(?:for|with|by) (?:the |some )?[FN]\b/,
    always: true,
    beside: /F[^.]*F/,
    unless: /\?|\b(?:if|would|could|should|next)\b/,
  },
  // "by the time I read the scale there was 340 g of it in the pot"
  {
    tells:
      /\b(?:there (?:was|were|is)|theres|read|showed) (?:already |now |about )*# (?:of (?:it|that) )?in (?:the|my) (?:pot|pan|bowl|kettle)\b/,
    anew: true,
    always: true,
    heard: /that so much is in the pot\.$/,
  },
  // "one of those is wrong, should say 350": nobody knows which
  {
    tells:
      /\bone of (?:those|these|them|(?:the|my|those|these) (?:figures?|numbers?|lines?|weights?|amounts?|rows?))(?: (?:above|there|here))? (?:is|was|must be|has to be|will be|may be|might be) (?:definitely |surely |just |plain )?(?:wrong|off|a typo|a mistake|mistyped|not right|incorrect)\b/,
    always: true,
    unless: /\?/,
  },
  // "my husband says he put 40 g of castor in when I was out"
  { tells: putByOthers, anew: true, always: true, unless: theirPot },
  // "my aunt takes 160 g of lye. So did I."
  {
    tells:
      /^(?:[-•(] )?(?:and |but |so |well )*(?:(?:i|we) (?:have |just |then )*(?:did|do|done|took|take|used?|went with|made) (?:exactly |just )?(?:the same|likewise|as (?:she|he|they)|(?:that|it|so) ,? ?too)\b|so (?:did|do|have) (?:i|we)\b)/,
    beside: new RegExp(`\\b(?:${relations.replaceAll(' ', '|')}|he|she|they|somebody|someone)\\b[^.?]*#`),
    always: true,
    dropped: true,
    unless: /\?|\b(?:as (?:last|before|above|always|usual)|for (?:years|ages)|last (?:time|week|month|year))\b/,
  },
  // a recipe of somebody else that nothing set aside
  {
    tells:
      /\b(?:does|do|did|makes?|made) (?:hers|his|theirs) with [^.?]{0,12}# (?:of )?(?:[a-z]+ )?[FNX]\b|\b(?:a|one|another) (?:woman|man|lady|guy|girl|boy|bloke|chap) [^.?#]{0,30}\b(?:makes|takes|uses|puts|took|used) # (?:of )?(?:[a-z]+ )?[FNX]\b/,
    heard: /another time|somebody else|another recipe/,
  },
];

let tales: readonly Tale[] | null = null;

/** Alkali to what the list says of it, as a slip of the hand makes it. */
const slip = { least: 0.6, most: 1.6 };

interface List {
  readonly weighed: ReadonlyMap<string, number>;
  /** Fats with a figure, whatever it is. */
  readonly measured: ReadonlySet<string>;
  readonly alkali: string | null;
  readonly grams: number;
  /** Every weight beside a name. */
  readonly weights: readonly number[];
}

function listOf(tokens: readonly Token[]): List {
  const measured = new Set<string>();
  const weights: number[] = [];
  let [alkali, grams]: [string | null, number] = [null, 0];
  tokens.forEach((token, k) => {
    if (!isIngredient(token)) return;
    const figure = [k + 1, k - 1, k + 2, k - 2].map((at) => tokens[at]).find((one) => one?.t === 'quantity');
    if (figure?.t !== 'quantity') return;
    measured.add(thingOf(token));
    weights.push(figure.quantity.value);
    if (alkali !== null || token.meaning.kind !== 'alkali' || !weighedAt(tokens, k)) return;
    alkali = token.meaning.id;
    grams = figure.quantity.value;
  });
  return { weighed: weighedThings(tokens), measured, alkali, grams, weights };
}

/** Each of its figures stands elsewhere, too. */
function isSaidAgain(tokens: readonly Token[], { from, to }: Sentence): boolean {
  const values = (part: readonly Token[]) => part.flatMap((one) => (one.t === 'quantity' ? [one.quantity.value] : []));
  const others = new Set(values([...tokens.slice(0, from), ...tokens.slice(to)]));
  return values(tokens.slice(from, to)).every((value) => others.has(value));
}

/** What alkali a recipe has to its fats, by weight. */
const fitting = { least: 0.1, most: 0.21 };

const stems = (id: string): readonly string[] =>
  id.split('-').filter((word) => !/^(?:oil|butter|kernel|seed)$/.test(word));

function letterOf(token: Token | undefined, list: List): string {
  if (token?.t !== 'name') return 'X';
  const { kind, id } = token.meaning;
  if (kind === 'alkali')
    return list.alkali !== null && list.alkali !== 'unsaid' && id !== 'unsaid' && id !== list.alkali ? 'K' : 'L';
  if (kind === 'stock') return 'L';
  if (kind === 'water' || kind === 'liquid') return kind === 'water' ? 'W' : 'M';
  if (!isFat(token)) return 'X';
  const thing = thingOf(token);
  if (list.weighed.has(thing)) return 'F';
  // "the tallow" of a list of mutton tallow
  const words = stems(thing);
  return [...list.measured].some((one) => one === thing || stems(one).some((stem) => words.includes(stem))) ? 'X' : 'N';
}

function isRival(token: Token | undefined, { grams, weights }: List): boolean {
  if (token?.t !== 'quantity' || !/^(?:mass|bare)$/.test(token.quantity.dim)) return false;
  const { value } = token.quantity;
  return value > slip.least * grams && value < slip.most * grams && !weights.some((one) => Math.abs(one - value) < 0.5);
}

/** Behind a sentence that tells, one more may say what was done; before it, three what it is of. */
const before = 3;

/** The words that tell so; null where none do. */
export function toldOtherwise(cut: Cut, back: readonly PutRight[], { share, alkali }: InPot): string | null {
  const { tokens, prims } = cut;
  const sentences = sentencesOf(cut);
  if (sentences.every((sentence) => isSmallTalk(tokens, sentence))) return null;
  tales ??= made();
  const written = listOf(tokens);
  // "first plan was 88 g NaOH, but the tub is caustic potash: … 138 g of the KOH": it is the one that was taken
  const [only] = alkali.size === 1 ? alkali : [];
  const list =
    only === undefined || written.alkali === null || written.alkali === 'unsaid'
      ? written
      : { ...written, alkali: only };
  const texts = sentences.map((sentence: Sentence) =>
    sentence.text.replace(/[@#]/g, (sign, place: number) => {
      const token = tokens[sentence.tokenAt(place)];
      return sign === '@' ? letterOf(token, list) : isRival(token, list) ? 'R' : sign;
    }),
  );
  for (const [k, sentence] of sentences.entries()) {
    if (isSmallTalk(tokens, sentence)) continue;
    const isBack = back.some(({ from, to }) => from < sentence.to && to > sentence.from);
    const text = texts[k] ?? '';
    for (const { tells, also, beside, unless, undone, heard, always, misfit, anew, ofWeighed, dropped } of tales) {
      if ((isBack && !always) || (misfit && share > fitting.least && share < fitting.most)) continue;
      const found = tells.exec(text);
      if (!found || also?.test(text) === false || unless?.test(text) || undone?.test(texts[k + 1] ?? '')) continue;
      if ((anew && isSaidAgain(tokens, sentence)) || (ofWeighed && list.alkali === null && /\bL\b/.test(text)))
        continue;
      const since = sentences[Math.max(0, k - before)]?.from ?? 0;
      if (dropped && !back.some(({ from, to }) => from < sentence.to && to > since)) continue;
      if (heard && back.some((one) => heard.test(one.text))) continue;
      if (beside && !beside.test(texts.slice(Math.max(0, k - before), k + 2).join(' '))) continue;
      const [first, last] = [found.index, found.index + found[0].length - 1].map(
        (place) => tokens[sentence.tokenAt(place)],
      );
      if (first && last) return rawText(prims, first.from, last.to);
    }
  }
  return null;
}

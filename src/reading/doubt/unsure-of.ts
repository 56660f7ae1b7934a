/**
 * What the writer of a post does not know of its own list: whether a figure or a name is the right one ("could also be
 * 20, there's a stain", "may be the other way round"), whether something went in, or how much of it ("either poured it
 * or didn't", "I'm fairly sure he scooped some back", "two thirds, by eye"), what a vessel weighs. Words of doubt, and
 * beside them what is doubted; not the outcome, which everybody doubts.
 */
import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { weighedThings } from '../words/weighed.ts';
import { letterOf } from './lettered.ts';
import { isOfScent } from './of-scent.ts';
import type { InPot } from './pot-differs.ts';
import { isSmallTalk } from './small-talk.ts';
import { strengthTwice } from './strength-twice.ts';

const any = (words: string): string => `(?:${words.trim().replace(/\s+/g, '|')})`;
const softly = `(?:${any('also as well just equally easily even still really quite entirely totally honestly too so now all be fairly pretty almost nearly very half exactly actually then simply already my a')} )*`;
const cant =
  '(?:(?:cant|cannot|can not|couldnt|could not)(?: for the life of (?:me|us))?|no longer|nobody can|unable to|impossible to|hard to|difficult to)';
/** Nobody can tell what stands there, or what was done. */
const unread = `(?:\\b${cant} ${softly}(?:tell|say|read|remember|recall|make out|swear|check|decipher|be sure|be certain|work out)\\b|\\b(?:(?:not|isnt|wasnt|arent|werent) ${softly}(?:sure|certain|convinced)|unsure|uncertain|no (?:idea|clue))\\b|\\b(?:dont|do not) ${softly}(?:know|remember|recall)\\b|\\b(?:did not|didnt) ${softly}(?:look|check|note|notice|write it down|see)\\b|\\bdont (?:hold (?:me|us)|quote me|ask me|rely on|count on)\\b|\\bdoubting\\b)`;
const unknown = `(?:${unread}|\\b(?:never|nobody|without|neither of us|havent) ${softly}(?:know|knows|known|knowing|look|looked|check|checked|verify|noticed|weighed)\\b|\\b(?:undecided|unknown|not a clue|in doubt|anyones guess|lost (?:track|count)|(?:who|god|heaven|goodness|lord|heavens) knows|i (?:wonder|doubt))\\b)`;
/** Somebody believes it. */
const believed = `(?:\\b(?:i|we|im|ive|were|he|she|they|hes|shes) (?:am |are |is |have )?${softly}(?:sure|certain|think|thinks|believes?|suspects?|fears?|suppose|guess|reckons?|afraid|feeling)\\b(?! (?:of|about)\\b))`;
const perhaps = `\\b(?:maybe|perhaps|possibly|possible|probably|presumably|likely|either|(?:may|might|could) ${softly}(?:be|been|have|has)\\b)`;
const doubt = `(?:${unknown}|${believed}|${perhaps})`;
const roughly =
  '(?:about|around|roughly|maybe|perhaps|probably|nearly|almost|approximately|approx|more or less|something like|a bit (?:over|under|less than|more than)|(?:slightly|just|a little) (?:over|under)|some|i (?:guess|think|suppose)|circa|ca)';
const fraction =
  '(?:(?:a|an|one|two|the|three|…|#) )?(?:good |big |bit over |little over )*(?:half|thirds?|quarters?|fifths?|tenths?|eighths?|most|part)';
const pack = any('tub jar bag bottle can canister tin block box pack packet container bucket jug carton drum sack');
const vessel = '(?:pot|bowl|jar|jug|tub|dish|beaker|vessel|pan|cup|container)';
const unit = any(
  'g gram grams oz ounces ounce lb lbs pound pounds kg kilo kilos kilogram kilograms hectogram hectograms decagram decagrams dekagram dekagrams dag ml millilitre millilitres milliliters decilitre decilitres',
);
const beads = any('L pearls beads flakes pellets granules crystals prills grains lye caustic');
/** What becomes of a fat or the lye. */
const deed = any(
  'scoop scooped spoon spooned tip tipped pour poured ladle ladled pinch pinched nick nicked ate eat stole fish fished skim skimmed take took taken put added add used use doubled overdone overdid overshot skipped missed forgot forgotten spilled spilt stuck stayed left misread miscounted swapped melted weighed',
);
const other =
  '(?:other way (?:round|around|about)|wrong way (?:round|around)|vice versa|which (?:is|was|were|of them was|one was) which|swapped|switched|reversed|transposed|mixed (?:them|those|the two|it) up|mixed up|back to front|upside down|in which order|which way (?:round|around))';
const matter = '(?:F|#|digits?|units?|comma|decimal point|in(?:to)? the pot|went in)';
const someOf =
  '(?:some|part|half|most|bits?|a (?:good |fair |little |small )*(?:bit|part|splash|lot|third|quarter)|a little|a few|plenty|quite a bit)';
const took = any('followed used took weighed put poured added went in mine own');
const drops = any(
  'cup jug bowl jar glass dish beaker saucer pan ramekin mug tub counter table worktop stove windowsill fridge microwave scale bench',
);
const unasked = /\b(?:next|would|should|could|can|if|shall|may)\b|\?/;

interface Doubted {
  readonly tells: string;
  /** Not where the sentence says this, too. */
  readonly unless?: RegExp;
  /** Said in the sentence or in one beside it. */
  readonly beside?: RegExp;
  /** Only where no rule has heard of a change. */
  readonly unheard?: true;
}

/** "Couldn't tell it was there", "can't tell the difference": of the soap, and of no figure. */
const noticed =
  '\\btell (?:(?:that )?(?:it|they) (?:was|were|is|are) (?:even |ever )?(?:there|in it|in there)|(?:the|a|any|much) difference|(?:it|them) (?:apart|from))\\b';
/** What is asked, or is to be: nobody knows how it will turn out. */
const outcome =
  /\b(?:right|enough|ok|okay|correct|too (?:much|little|strong|harsh|soft|hard|high|low|heavy|late|hot)|safe|good|fine|should|would|will|need|needs|wants?|works?(?! out)|harsh|strong|mild|why|matters?|sense|trace|cure|gel|gelled|zap|ph|colou?r|scents?|smell|smells|mou?lds?|bars?|skin|next time|trust|what i (?:did|do)|how long|temperature|superfat|years?|hours?|minutes?|once|time|times|last|pure|purity|tables?|calculators?|if you|who had|i get|apart|dictionary|goes|makes)\b|\bmade for\b|\?/;

const made = (): readonly (Omit<Doubted, 'tells'> & { readonly tells: RegExp })[] =>
  [
    // another figure
    {
      tells: `\\b(?:may|might|could|can) ${softly}(?:be|mean|read|have been|say) (?:really |only |just |rather |meant to be |meant as )*(?:a |an )?#|\\b(?:or is (?:it|that)|or was (?:it|that)|or even|maybe its|perhaps its|(?:or |so )(?:maybe|perhaps|possibly)|it was more like) (?:a |an )?#`,
      unless: /\bsuperfat\b/,
    },
    // one of several
    {
      tells: `\\b(?:one|either) of (?:the |those |these |my )?(?:two |three |… )?(?:[#…]|weights?|figures?|numbers?|amounts?|rows?|lines?) (?:is|was|should|must|ought to|has to|needs to|may|might|could) (?:really |actually |be |read |have |been |say )*#|\\b(?:one|a) [#…] (?:is|was|should|must|ought to|that (?:should|ought to|is)) (?:really |actually |be |read |have |been )*#`,
    },
    // which is which
    {
      tells: `${doubt}[^?]{0,60}\\b${other}\\b`,
      unless: /\b(?:mou?lds?|scents?|lids?|colou?rs?|sockets?|not (?:swapped|switched|reversed|mixed))\b/,
    },
    // whether it went in
    {
      tells: `\\beither [^.?]{0,40}\\b(?:poured|put|added|tipped|went|is in|was in|in)\\b[^.?]{0,20}\\bor (?:i |we |it |he |she )?(?:didnt|did not|not|forgot|left|never|else|havent|hasnt|wasnt)\\b|\\b(?:may|might|could) (?:just |well )*(?:or (?:may|might|could) not )?have (?:already |well |also |been )*(?:forgotten|skipped|missed|left out|poured|put|added|tipped|dropped|gone in|overdone|overdid)\\b|\\bwhether (?:or not )?(?:i|we|it|he|she|they|F|the F) (?!could|can|should|may|might|must)[^.?]{0,30}\\b(?:in|add|added|put|poured|went)\\b|${unknown}[^.?]{0,20}\\b(?:if|whether|that) [^.?]{0,40}\\b(?:went in|put|added|poured|tipped|is in|was in|in already)\\b`,
      unless: outcome,
    },
    // how many of them
    {
      tells: `\\b(?:tip|tipped|put|pour|poured|add|added|went|melt|melted|empty|emptied|washed|sink|bin|gone)\\b[^?]{0,120}\\b(?:he|she|they|i|we|boy|girl|kid|son|daughter) (?:(?:says?|said|swears?|thinks?|now|also|that|he|she|they|i|just|really|honestly) )*(?:cant|cannot|can not|couldnt|doesnt|dont|didnt|does not|do not) (?:(?:even|really|quite|honestly|now|any more|for the life of (?:me|him|her|us|them)) )*(?:remember|recall|know)(?= ?$| (?:any more )?[.;,!)])|\\bone or (?:both|two)\\b[^.?]{0,60}${unknown}|${unknown}[^.?]{0,60}\\bone or (?:both|two)\\b`,
      beside: new RegExp(
        `\\bF\\b[^?]*\\b(?:both|two|other|second|${pack}s?|wrappers?|blocks?)\\b|\\b(?:both|two|other|second|${pack}s?|wrappers?|blocks?)\\b[^?]*\\bF\\b`,
      ),
      unless:
        /\b(?:books?|scents?|brands?|shops?|where|when|why|prices?|cost|colou?rs?|mou?lds?|bars?|soaps?|names?|who|temperature|superfat)\b|\?/,
    },
    // some of it came out again, or stayed where it was
    {
      tells: `${doubt}[^.?]{0,50}\\b${deed}\\b[^.?]{0,24}\\b(?:back|out|off|away|some|a bit|a little|a spoon|a ladle|a few|himself|herself)\\b|${doubt}[^.?]{0,50}\\bF\\b[^.?]{0,24}\\b(?:stuck|stayed|left|still|remained)\\b|\\b${roughly} ${fraction} of the F (?:stuck|stayed|clung|remained)\\b`,
      unless: outcome,
    },
    // somewhere between
    {
      tells:
        '\\bsomewhere (?:in )?between(?: (?:those|these|them|both|#|the (?:two|figures|numbers|weights))\\b|(?= $| [,.;)!]))|\\bin between (?:those|these|the two|them)\\b|\\b(?:likely|probably|presumably|somewhere|right|perhaps|maybe|truth is) in the middle(?= $| [,.;)!]| of (?:those|these|them|the two|both))',
      beside: new RegExp(`#.*${matter}|${matter}.*#`),
      unless: outcome,
    },
    // by eye
    {
      tells:
        '\\b(?:by (?:eye|guess|guesswork)|eyeballed|eyeballing|guesstimated?|freehand)\\b|\\b(?:shrank|shrunk|cut|scaled|reduced|enlarged|made)\\b[^.?#]{0,30}\\b(?:roughly|more or less|something like|about|around) (?:by )?(?:a |one |two |three )?(?:half|thirds?|quarters?|fifths?)\\b',
      unless:
        /\b(?:split|divided|cut (?:into|in|the soap|the loaf)|bars?|egg|trace|swirl|colou?r|mica|clay|oats?|oatmeal|W|water|scents?|X|she|he|they|(?<!\b(?:i|we) )(?:always|used to)|never|not|dont|instead|but|scales?|weighed it|dilut\w*|until|till)\b/,
    },
    // part of a pack, by guess
    {
      tells: `\\b(?:most|almost all|nearly all|the better part|a good part|the bulk|part|${roughly} (?:a |an |the |one |two |three )*(?:half|thirds?|quarters?|fifths?)) of (?:a|an|my|the|that|this) # (?:[a-zFNLX]+ ){0,2}${pack}\\b|\\btheres (?:only |just |now |still |about )*${roughly} ${fraction} (?:left|of it left|in it|remaining|full)\\b|\\b${roughly} ${fraction} (?:of it )?(?:is |was |are )?(?:left|gone|remaining)\\b`,
      unless: outcome,
    },
    // with its vessel
    {
      tells: `${unknown}[^.?]{0,40}\\b(?:${vessel}|tare|it) (?:weighs?|weighed|weight|by itself|alone|on its own|empty)\\b|\\b(?:never|didnt|not|forgot to|havent) (?:weigh|weighed|weighing) (?:the|that|its|my) (?:[a-z]+ )?${vessel}\\b|\\bwithout (?:knowing |having )?(?:the )?tare\\b|\\btare (?:is |was )?(?:not known|unknown|forgotten|lost)\\b`,
      unless:
        /\?|(?<!\b(?:not|never|forgot|[a-z]+nt)(?: to| been| be| set| yet)*) \b(?:tared|zeroed|deducted|subtracted)\b/,
    },
    // which unit
    {
      tells: `\\b(?:either|could be|maybe|might be) ${unit} (?:, )?(?:or|could be|maybe|might be) ${unit}\\b|${unknown}[^.?]{0,30}\\b(?:which unit|what unit|${unit} or ${unit})\\b|\\b${unit} or (?:${unit}|something else|whatever|the other)\\b[^?]{0,60}${unknown}`,
    },
    // which kind
    {
      tells:
        '\\b(?:both|two|three|several|different|various|all) (?:[a-z]+ )?(?:kinds|sorts|types|versions|varieties)\\b|\\bwhich (?:kind|sort|type|variety|of the (?:two|three)|one)\\b',
      beside: new RegExp(unknown),
      unless: outcome,
    },
    // lye that rolled away
    {
      tells: `\\b(?:some|part|half|most|a bit|few|lot|handful|third|quarter) of (?:the |my )?(?:L )?${beads} [^.?]{0,20}\\b(?:rolled|fell|bounced|flew|scattered|tipped|landed|ended|hopped|escaped|jumped|blew|missed|went everywhere)\\b`,
    },
    // how much of it was made
    {
      tells: `${doubt}[^?]{0,40}\\b(?:halved|doubled|tripled|multiplied|(?:half|a third|double) of (?:it|this|that|everything|the recipe))\\b|\\b(?:halved|doubled|tripled|made (?:just |only )?(?:half|a third|double)(?: of (?:it|this|that))?)\\b[^?]{0,30}(?:${unknown}|\\bor (?:was|is|did|not)\\b)|\\bor did (?:i|we) (?:make|do|pour|put|double|halve) (?:in )?(?:it|all|the lot|the whole|half|everything|double)\\b`,
      unless: /\b(?:cut|batter|mou?lds?|colou?rs?|scents?|bars?|should|would|next)\b/,
    },
    // it is not settled
    {
      tells:
        '\\b(?:arguing|debating|discussing|quarrell?ing|fighting|(?:cant|cannot|dont|do not|couldnt|wont) agree|disagrees?|(?:havent|hasnt|not|isnt|nothing is|nothings) (?:yet |quite |really )?(?:settled|decided|agreed))\\b',
      beside:
        /\bF [^.?#]{0,24}\b(?:has|have|must|should|ought|needs?|is to|is going|goes|stays?|comes?|out|replaced)\b|\b(?:whether|if|about) (?:the |my |to )?(?:[a-z]+ )?F\b/,
      unless:
        /\b(?:scents?|fragrance|colou?rs?|mou?lds?|bars?|name|label|price|who|whose|right|wrong|enough|calculators?|books?|lye|L|superfat|strangers?|forum)\b/,
    },
    // of which pot it is told
    {
      tells:
        '\\bor (?:was|is) (?:it|that) (?:in |with |of |from )?(?:this (?:pot|batch|one|loaf|time)|the (?:other|last|first|second|next|big|small) (?:pot|batch|one|loaf|time)|last|yesterdays?|another|todays?)\\b|\\b(?:may|might|could) have been (?:in |with )?(?:the|another|last|this|yesterdays?) (?:[a-z]+ )?(?:pot|batch|one|loaf|time)\\b',
      beside: /[FLN#]/,
      unless: /\b(?:bars?|mou?lds?|scents?|oven|bought|shop)\b/,
    },
    // changed, and nobody says to what
    {
      tells: `\\bF (?:(?:is|was|got|has been|a bit|a little|slightly) )*(?:raised|upped|increased|lowered|cut|reduced|bumped up|bumped)(?= (?:$|[,.;(])| $)|\\b(?:forgot|dont know|not sure|cant remember|no idea) (?:to |by )(?:what|how much)\\b|^\\( (?:to|by) (?:what|how much)\\b`,
    },
    // as somebody else did
    {
      tells:
        '^(?:(?:and|so|then|well|,) )*(?:i|we) (?:did|do|have done|followed|copied) (?:exactly |just )*(?:the same|so too|so|likewise|suit|her|him|them)\\b(?! (?:as|list|recipe))|^so (?:did|do|have) (?:i|we)\\b|\\band (?:i|we) (?:followed|copied) (?:her|him|them|suit)\\b',
      beside:
        /\b(?:swap|swaps|swapped|replaces?|replaced|subs|leaves?(?: out)?|skips?|drops?|without|instead|adds?|more|less)\b[^.?]*[FN]\b/,
      unless: /\?/,
    },
    // which rows were changed
    {
      tells: `\\b(?:doubled|halved|tripled|trebled|upped|increased|reduced|raised|lowered|scaled) (?:just |only |about )?${someOf} of (?:it|them|these|those|the (?:oils|fats|X|amounts|rows|figures|list))\\b`,
      unless: /\b(?:scents?|colou?rs?|next|would|should)\b/,
    },
    // two who say different things
    {
      tells: `\\b(?:he|she|they|my [a-z]+) (?:says?|claims?|insists?|swears?|thinks?|maintains?) [^?]{0,30}\\b${took}\\b[^?]{0,30}\\b(?:im|i am|i) ${softly}(?:sure|certain|positive|know|swear|remember|say|think)\\b[^?]{0,30}\\b${took}\\b`,
      beside: /#/,
      unless: /\b(?:scents?|colou?rs?|mou?lds?|smell|wrong about)\b/,
    },
    {
      tells:
        '\\bor (?:was it )?(?:maybe |perhaps )?the (?:first|second|third|last|other|middle)(?: one)?(?= (?:$|[.,;!)])|[.,;!)]|$)',
      beside: /#.*\b(?:edit|right|wrong|correct|wrote|said|typed|ignore)\b|\b(?:edit|wrote|ignore)\b.*#/,
      unless: /\?/,
    },
    // it stands there, weighed, and never went in
    {
      tells: `\\b(?:still|untouched|there it (?:is|was|stood|sat)|found it|forgotten) (?:[a-z]+ ){0,2}(?:in|on|by|next to|beside) (?:its|the|a|my) (?:little |small |own )*${drops}\\b`,
      beside: new RegExp(`\\bF\\b[^?]*\\b(?:${drops}|measured out|weighed out|set aside)\\b`),
      unless: /\b(?:batter|soap|pot|loaf|batch|mou?ld|bars?|scents?|X|W|oven)\b|\?/,
      unheard: true as const,
    },
    // more of it, by nobody knows how much
    {
      tells: `\\b(?:dissolved|added|put|threw|tipped|stirred|poured|mixed|chucked|sprinkled) (?:in )?(?:some|a (?:bit|little|touch|pinch|spoon|spoonful|dash|splash|glug)|a few|a couple of|another|two|three) (?:(?:spoons?|spoonfuls?|bit) )?(?:more|extra|spoons?|spoonfuls?|of (?:it|L|F))(?! (?:of )?(?:the |my )?(?:W|X|water|time|[a-z]*(?:scents?|colou?r|oats|clay|mica|milk)))\\b`,
      beside: /[LF] ?[^?]*#|#[^?]*[LF]/,
      unless: unasked,
    },
    // some of the lye was lost
    {
      tells: `\\b${someOf}(?: of (?:it|that|the L|the solution|the F))? (?:(?:had|has|was|got|just|must have) )*(?:stayed|stuck|left(?! over)|remained|spilled|spilt|ran|leaked|slopped|splashed|went (?:over|on|down|everywhere)|ended up|landed)\\b[^?]{0,24}\\b(?:in|on|over|behind|down|everywhere)\\b`,
      beside: /\bL\b[^?]*#|#[^?]*\bL\b/,
      unless:
        /\b(?:batter|soap|pot|crock|cooker|scraped|trace|traced|mou?ld|lid|scents?|mixture|bars?|X|W|water|mica|colou?r|spoon|spatula|blender|whisk|sides?)\b|\?/,
      unheard: true as const,
    },
    // a swap that is not decided
    {
      tells:
        '\\b(?:havent|have not|hasnt|not) (?:yet |quite |really |fully )*decided\\b|\\bundecided\\b|\\bcant decide\\b',
      beside:
        /\b(?:swap|swapped|replace|more|instead|half|leave out|add|less|without)\b[^?]*F|F[^?]*\b(?:swap|instead|or|in or out|out)\b/,
      unless: /\b(?:scents?|colou?rs?|mou?lds?|name|X)\b/,
    },
    // whether it was reckoned already
    {
      tells: `${unknown}[^?]{0,50}\\b(?:multiplied|divided|converted|scaled|included|counted)\\b`,
      beside: /[#F]/,
      unless: /\b(?:bars?|scents?|price|cost|should|would)\b/,
    },
    // another figure is told for it, and no rule took it
    {
      tells: `\\b[FLW] (?:(?:should|ought to) ${softly}(?:read|be|have been|say)|(?:came|ended|turned) (?:out|up|in)(?: (?:at|as|to be|only|just|with))*) ${softly}[#~]|^\\( (?:(?:well|ok|or rather|actually|really|in truth|in fact|make (?:that|it)|more like|so|,|[-–—]) )+#|^\\( # (?:really|actually|in truth|in fact|to be (?:exact|honest|precise))\\b`,
      unless: /\b(?:next|would|bars?|cured?|scents?|as (?:it should|planned|written|listed|expected)|exactly)\b|\?/,
      unheard: true as const,
    },
    // with its vessel, and nobody took it off
    {
      tells: `# [,(:–—-]* ?(?:weighed |that is |thats |but thats |and thats )*with (?:the|its|my) (?!empty)(?:[a-z]+ )?${vessel}\\b(?! of)|\\b${vessel} (?:and all|included)\\b(?= (?:[#,.;:)]|$|it|that|is|was|weighs?))|\\bincluding (?:the |its |my )?(?:[a-z]+ )?${vessel}\\b`,
      unless: /\b(?:tared|zeroed|deducted|subtracted|net|without|scents?|bars?|soap|cure[ds]?)\b|\?/,
      unheard: true as const,
    },
    // anything of the list
    {
      tells: `${unread}[^?]{0,60} ${matter}(?= |$)|${matter} (?![^?]{0,25}\\b(?:so|still)\\b)[^?]{0,25}${unread}`,
      unless: new RegExp(`${outcome.source}|${noticed}`),
    },
  ].map(({ tells, ...rest }) => ({ ...rest, tells: new RegExp(tells) }));

let nets: ReturnType<typeof made> | null = null;

/** Sentences back to what it is said of; a bracket is one. */
const farBack = 4;

/** Without one of these a sentence doubts nothing. */
const cues =
  /\b(?:about|actually|afraid|agree[ds]?|all|almost|also|another|anyones|approx\w*|aren?t|arguing|around|believes?|better|between|bit|bulk|bumped|ca|came|can|cannot|cant|certain|changed|circa|claims?|clue|convinced|copied|could|couldnt|couple|cut|debating|decided|did|didnt|difficult|disagrees?|discussing|do|done|dont|doubled|doubt\w*|either|ended|enlarged|exact|eye|eyeball\w*|fact|fears?|feeling|few|fighting|followed|forgot|found|freehand|guess\w*|half|halved|handful|hard|hasnt|have|havent|honest|idea|if|impossible|included|including|increased|insists?|isnt|kinds?|knows?|less|likely|little|longer|lost|lot|lowered|made|maintains?|may|maybe|meant|middle|might|more|most|nearly|neither|never|no|nobody|not|nothings?|one|or|ought|part|perhaps|plenty|possibl[ey]|precise|presumably|probably|quarrell?ing|quarters?|quite|raised|really|reckons?|reduced|remember|roughly|same|says?|scaled|settled|should|shr[au]nk|so|some|something|sorts?|stayed|still|suit|suppose|supposed|sure|suspects?|swapped|swears?|tare|there|thinks?|thirds?|three|trebled|tripled|truth|turned|two|types?|unable|uncertain|undecided|unknown|unsure|untouched|upped|variet\w+|versions?|well|werent|whether|which|with|without|wonder)\b|\ba #/;

const howMuch = /\bhow (?:much|many|heavy)\b/;

/** The words that doubt something of the list; null where none do. */
export function unsureOf(cut: Cut, back: readonly PutRight[], pot: InPot, isHeard: boolean): string | null {
  const { tokens, prims } = cut;
  const strength = tokens[strengthTwice(tokens) ?? -1];
  if (strength) return rawText(prims, strength.from, strength.to);
  const sentences = sentencesOf(cut);
  const mayDoubt = sentences.map(({ text }) => cues.test(text));
  if (!mayDoubt.includes(true)) return null;
  const weighed = weighedThings(tokens);
  const texts = sentences.map((sentence) =>
    sentence.text.replace(/[@#…]/g, (sign, place: number) => {
      const token = tokens[sentence.tokenAt(place)];
      if (sign === '@') return letterOf(token, weighed).replace('M', 'W');
      if (token?.t === 'aside' && token.reason === 'what came out of the mould') return '~';
      return token?.t === 'quantity' && /^(?:mass|bare)$/.test(token.quantity.dim) ? '#' : '…';
    }),
  );
  for (const [k, sentence] of sentences.entries()) {
    if (!mayDoubt[k] || isSmallTalk(tokens, sentence)) continue;
    const text = texts[k] ?? '';
    // "no idea how much lye it was": it has been reckoned
    if (
      howMuch.test(text) &&
      back.some(({ reckons, to }) => reckons !== undefined && reckons < sentence.to && to > sentence.from)
    )
      continue;
    if (isOfScent(tokens, sentence)) continue;
    // what is asked for may be doubted
    if (pot.alkali.size === 0 && /\bL\b/.test(text) && !/\bF\b/.test(text)) continue;
    nets ??= made();
    for (const { tells, unless, beside, unheard } of nets) {
      if (unheard && isHeard) continue;
      const found = tells.exec(text);
      if (!found || unless?.test(text)) continue;
      if (beside && !beside.test(texts.slice(Math.max(0, k - farBack), k + 3).join(' '))) continue;
      const [first, last] = [found.index, found.index + found[0].length - 1].map(
        (place) => tokens[sentence.tokenAt(place)],
      );
      if (first && last) return rawText(prims, first.from, last.to);
    }
  }
  return null;
}

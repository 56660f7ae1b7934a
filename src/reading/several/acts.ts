/** What the words of a clause do to a recipe: they ask about it, turn it down, or tell of it. */

/** `lean` and `done` tell where nothing is asked outright. */
export type Act = 'choose' | 'refuse' | 'lean' | 'done';

export const refusing =
  /\b(?:ignore|forget|(?:don['’]?t|do not) care|wrong (?:one|page|list|recipe)|skip|disregard|scrap|never ?mind|leave (?:that|it|out|aside) (?:out|aside|one)|no need|nobody needs|nothing to (?:ask|check|look at|worry)|no questions?|(?:don['’]?t|do not|needn['’]?t|not) (?:need to |have to )?(?:check|look at|mind|worry|bother|ask(?:ing)?|count|answer|judge)|(?:is|was|that['’]?s|it['’]?s)(?:n['’]?t| not) (?:my question|what i|the one|the question|meant))\b|\b(?:for|as) (?:a |your )?(?:reference|comparison|background|context)\b|\b(?:to compare|you can compare|so (?:that )?you (?:can|could|see|know)|not (?:talk|speak) (?:about|of)|(?:only|just) (?:there|here|for(?! (?:this|that|mine|it|my|the (?:first|second|third|last|new|other)|pot|batch|recipe|number|no|[a-d1-4])\b)))\b|\b(?:is|are) history\b/i;
export const choosing =
  /\b(?:check(?:ing)?|(?<!(?:have|has|had|was|is|been|['’]ve|already|i|we|she|he|they) )checked|judge|verify|look(?:ing|ed)? (?:at|over)|asking|ask|questions?|about|mean|meant|concern\w*|worr(?:y|ied|ies)|(?:don['’]?t|do not) trust|(?:tell me|let me know|see) (?:if|whether)|unsure|not (?:so |too |quite )?sure|only|just|please|pls|plz|need help|help (?:me )?with|matters|counts|(?:lye|naoh|koh|soda|caustic|water) (?:for|of|in)|^ ?(?:so |and |then )*(?:take|use|do|go with|count))\b/i;
/** "Ok", "fine" and the like say nothing against a recipe that is asked about elsewhere. */
const done =
  /\b(?:checked|settled(?! on)|sorted|abandoned|dropped|scrapped|proven|sold|done|cured|binned|bin|gone|used up|finished|works|worked|eaten)\b|\balready (?:made|poured|tested|checked|in)\b|\bi (?:did|checked|tested) (?:already|yesterday|last|before)\b|\bi(?:['’]ve)? made\b.{0,60}\b(?:last|ago|before|times|already)\b/i;
const praised = /\b(?:is|was|are|were|['’]s) (?:all |just )?(?:fine|lovely|great|perfect|good|old|ok|okay)\b/i;
const leaning =
  /^\W*(?:making|doing|pouring|using) (?:the|my)\b|\b(?:i['’]?m|i am|we['’]?re|i['’]?ll|i will|going to) (?:now )?(?:mak(?:e|ing)|pour(?:ing)?|do(?:ing)?|us(?:e|ing))\b|\b(?:in the pot|weighed out|(?:settled|decided) (?:on|for)|(?:went|going) (?:with|for)|chose|picked)\b|\bthis is (?:the one|what) i(?:['’]ve)? (?:made|poured|used|did|make|use)\b/i;
/** Between the mark of a recipe and its list. */
export const wished =
  /\b(?:(?:please|pls|kindly) (?:check|look|judge|verify)|(?:check|judge|verify) (?:this|that|it|me|please)\b|(?:like|want|need|have)(?: to have)? (?:it |this |that )?(?:looked at|checked|judged|verified)|(?:the|this is the) one (?:i['’]?m |i am )?(?:asking|to (?:check|ask|look)|in question)|(?:my|the) question)\b/i;
/** A clause that begins as a question does. */
export const asksOf =
  /^\W*(?:(?:so|and|but|now|then|please|hi|ok) )*(?:is|are|does|do|has|have|how|hows|how['’]s|whats|will|would|can|could|what|should|did)\b/i;
/** It asks which one, or of more than one. */
export const which =
  /\bwhich (?:one|of|is|recipe|version|batch|should|would|do|has)\b|\b(?:either|compar\w*)\b|\b(?:difference|better)\b(?=[^.!\n]*\?)/i;
/** It asks about all of them. */
export const both = /\b(?:both|not only)\b/i;
/** A question of this compares two. */
export const compared = /\b(?:than|or|vs\.?|versus|as [^.?!]{0,40} as)\b/i;
/** Right ahead of a recipe that is not meant. */
export const refusedHere =
  /\b(?:not|instead of|rather than|other than|except)\s+(?:about |for |on |of |in )?(?:the |my |her |his )?$/i;
export const that =
  /\bit\b|\b(?:this|that|these)(?: (?:one|recipe|version|batch|list|page))?(?=['’]s\b| (?:is|was|has|for|in|please|i|my)\b|\W*$)/i;
export const theOther = /\bthe other(?: one| recipe| version| batch| list)?(?= (?:i|is|was|that)\b|\W*$)/i;
export const thisOne = /\bthis(?: (?:one|recipe|version|batch|list))?(?= (?:is|for|in|please|i|my)\b|\W*$)/i;
/** A question that leaves open which one is meant. */
export const open = /^\W*(?:so |and |but )?which\b/i;
/** It tells of something, and goes on with no question of the clause before. */
export const tells = /\b(?:is|was|has|had|came|looks|makes|made)\b/i;
/** It asks about one more. */
export const tooAsked = /\b(?:too|as well)\W*$|\balso check\b|\bnot only\b/i;
/** Ahead of what is to be done next. */
export const goesOn = /^\W*(?:(?:and|then|also|next|or|after that|later)\W+)+(?:(?:the|my)\W+)?$/i;
/** Nothing but the name of a recipe: it says what the words before it say. */
export const filler =
  /\b(?:only|just|and|or|then|also|the|my|one|please|pls|too|for|of|about|i mean|mean|now|thanks|thank you|nor|not)\b|[^\p{L}\d]/giu;

/** `isAsked`: it is, or ends, a question. */
export function actOf(text: string, isAsked: boolean): Act | null {
  if (refusing.test(text)) return 'refuse';
  if (choosing.test(text)) return 'choose';
  if (isAsked) return 'choose';
  if (done.test(text) || praised.test(text)) return 'done';
  return leaning.test(text) ? 'lean' : null;
}

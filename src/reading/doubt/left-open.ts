/**
 * What its writer leaves open: a fat that is optional, or that may be had or not; a figure that is called wrong, with no
 * more than a guess at the right one; a weight that came by mistake and stands beside no name; a fat of which some is
 * cooked and the rest comes later, nobody says how much; one fat or another. Asked about, whatever else was heard.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { massOf } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { weighedThings } from '../words/weighed.ts';
import { letterOf } from './lettered.ts';

interface Net {
  readonly tells: RegExp;
  /** What the two sentences before it say, or it itself. */
  readonly beside?: RegExp;
  /** What the whole post says. */
  readonly anywhere?: RegExp;
  readonly unless?: RegExp;
  /** What anywhere in the post settles it. */
  readonly resolved?: RegExp;
  /** Only where no rule has heard the sentence. */
  readonly unheard?: true;
}

/** Without one of these none of the nets holds anything. */
const cues =
  /\b(?:optional|optionally|maybe|perhaps|possibly|probably|would|wouldnt|love|if|can|could|may|might|not|or|think|guess|believe|reckon|suppose|remember|memory|about|around|roughly|accidentally|accident|since|years|ages|mistake|mistakenly|error|actually|some|part|bit|little|half|third|quarter|most|spoon|spoonful|few|couple|bits|parts|advice|suggestions?|suggested|either|labels?|unlabelled|unmarked|which|whichever)\b/;

const the = '(?:(?:the|my|a|an|some|any|that|this|to|add|have|use|put|in|of) )*';
const perhaps =
  '(?:maybe|perhaps|possibly|optional(?:ly)?|if (?:i|you) (?:can (?:get|find)|have|like|want|wish|fancy)(?: (?:it|any|some|to))?|(?:i|we)(?:.?d| would) (?:like|love)|(?:i|we) (?:may|might)(?: also)?)';
const wished =
  '(?:optional|would (?:also )?be (?:nice|lovely|great|good)|wouldnt hurt|would not hurt|if (?:i|you|one) (?:can (?:get|find|spare)|have (?:it|any|some)\\b|(?:like|want|wish|fancy|feel)(?! (?:[a-z]+ ){0,2}(?:[%…]|superfat)))|(?:can|could|may|might) (?:also )?be (?:left (?:out|off|away)|omitted|skipped|dropped)|not (?:strictly |really |absolutely )*(?:needed|necessary|required|essential)|or (?:not|none|nothing)\\b|if (?:available|desired|liked|wanted|at hand|possible)|nice to have)';
const guess =
  '(?:i (?:think|guess|believe|reckon|suppose|seem to remember)|probably|maybe|perhaps|possibly|likely|(?:from|by) memory|if i (?:remember|recall)[a-z ]*|could (?:well )?(?:have been|be)|(?:may|might|must) (?:well )?(?:have been|be)|roughly|about|around|some|something like|more like|nearer)';
const some =
  '(?:some|part|a (?:little |small |wee )?bit|a little|half|a third|a quarter|most|not all|a spoon(?:ful)?|a few spoons)';
const rest = `(?:the (?:rest|remainder|others?|other half)|what(?: i)?s? (?:is )?left|what remains|remaining|${some})`;
const late =
  '(?:after(?:wards)?\\b|(?:at|in|towards) the (?:very )?end\\b|(?:when|once) (?:the |it |it ?is |cook |is )*(?:cooked|done|over|finished)|post cook|later)';

/** `F` a fat that is weighed, `N` one that is not, `L` the alkali, `W` water, `M` another liquid, `X` what else has a name. */
const made = (): readonly Net[] => [
  {
    tells: new RegExp(
      [
        `(?:^|[,(:;–—+&-] ?|\\b(?:and|plus) )${perhaps}(?: [:,])? ${the}(?:# (?:of )?${the}[FN]|[FN] :? ?#)`,
        `^(?:- )?optional(?: extras?| additions?)? : ?(?:- )?(?:# (?:of )?${the}F|F :? ?#)`,
        `(?:# (?:of )?${the}[FN]|[FN] [:=-]? ?#)(?: ?[,(:–—-]+)?(?: (?:is|are|its|thats|that|which|but|this|it|one|,))* ${wished}`,
      ].join('|'),
    ),
    unless: /\bnext\b|\binstead\b|\b(?:can|could|should|shall|would it|may) (?:i|we|help|make)\b/,
  },
  {
    tells: new RegExp(
      `\\b${guess}(?: (?:it|that|this|they|the|figure|number|was|were|is|its|should|could|have|been|be|a|more|like|so))* (?:${guess} )*[#R]|\\b(?:it|that|this|which) (?:was|is|were|should be) (?:${guess} )+#|\\b(?:was|is) #(?: or so| or thereabouts|[^#]{0,20}\\b(?:i think|i guess|i believe|if i (?:remember|recall)))`,
    ),
    beside:
      /\b(?:typo|typos|typing error|slips?|mistyped|misprint|ignore|disregard|forget|scrap|(?:may|might|could|must) (?:well )?be (?:wrong|off|out|a mistake|an error)|(?:dont|do not|wouldnt|cant|cannot) (?:trust|swear|rely)|not (?:quite |really )*(?:sure|certain) (?:about|of)|unsure (?:about|of)|no longer sure|smudged|illegible)\b[^?]*/,
    unless:
      /\?|\b(?:bars?|hours?|days?|weeks?|months?|years?|minutes|degrees|mou?ld|cure[ds]?|curing|price|cost|paid|scents?|fragrance|essential|next)\b/,
  },
  {
    tells:
      /^(?:[(–—-] ?)?(?:so |but |and |only |then |oops |argh |sorry |, )*(?:i |we )?(?:have |had )?(?:accidentally|by (?:mistake|accident)|mistakenly|in error|stupidly|wrongly)(?: (?:i|we|have|had|only|just))* (?:weighed|put|poured|added|measured|used|took|tipped)(?: (?:in|out|only|just|it|at|as))* # ?(?:[).!,;]|of it|instead|$)|^(?:[(–—-] ?)?(?:i |we |only |just |have )*(?:weighed|put|poured|added|measured|used|took|tipped)(?: (?:in|out|only|just))* # (?:accidentally|by (?:mistake|accident)|mistakenly|in error|stupidly)\b|\b(?:actually|in fact|really) (?:it|that) (?:turned out|came out|proved|was found)(?: (?:to be|at|as))* #/,
    unheard: true,
    unless: /\?|\b(?:bars?|cured?|degrees|hours?|minutes|next)\b/,
  },
  {
    tells: new RegExp(
      `\\b${some} (?:(?:of|it|the|my|that|this|F) )*[^#?.]{0,40}\\b(?:cook(?:ed|s|ing)?|(?:in the )?pot|(?:with|to) the (?:other )?(?:oils|fats|rest|others|X)|upfront|at the start|F)\\b[^#?.]{0,40}\\b${rest}\\b[^#?.]{0,40}\\b${late}`,
    ),
    beside: /F/,
    unless: /\b(?:of|with) (?:the |my )?(?:scents?|fragrance|colou?r|clay|mica|water|batter|soap|L|W|M)\b|\bnext\b/,
  },
  {
    tells: new RegExp(
      `\\b(?:cook|melt|start) (?:it )?with ${some} (?:of )?${the}F\\b[^#?.]{0,20}\\brest\\b|\\b(?:keep|kept|hold|held|save|saved|reserve|reserved|set) (?:back |aside )?${some} (?:of )?${the}F\\b[^#?.]{0,20}\\b(?:for|till|until) after`,
    ),
  },
  // "I did part of what you said", and what was said changes amounts
  {
    tells:
      /\b(?:did|do|took|taken|take|followed|follow|used|adopted|applied|listened to|went with|changed|heeded|accepted|made|kept) (?:(?:in|only|just|about|a|an|the|up|to) )*(?:part|parts|some|half|most|bit|bits|few|couple|one|two|…|#|third|several) of (?:(?:the|those|these|them|all|things|changes) )*(?:(?:what|which|that|things|changes) (?:(?:all|both|of) )*(?:you|he|she|they|everyone|everybody|people|[a-zX]+)(?: (?:two|all|both|guys|have|had|ve|[a-zX]+)){0,2} (?:said|says?|told|wrote|suggest(?:ed|s)?|advised|recommended|proposed|thought)\b|(?:(?:you|he|she|they) (?:said|told me|wrote|suggested|advised|recommended|proposed)\b)|(?:(?:your|his|her|their|the|that|this|everyones?|[a-zX]+ ? ?s) )*(?:advice|suggestions?|tips?|hints?|recommendations?|proposals?|ideas|proposed changes)\b)/,
    anywhere:
      /\b(?:more|less|too (?:much|many|little|few)|instead|swap|replace|leave (?:out|the)|without|drop|skip|raise|lower|cut|add|(?:make|take|use|go (?:to|for|up to|down to)) (?:it |that |the )?(?:F )?(?:about |around |to )?#)(?= |$)/,
    unless:
      /\b(?:about|on|for|with|of) (?:(?:the|my|choosing|your) )*(?:X|scents?|fragrances?|colou?rs?|mou?lds?|temperatures?|swirls?|stirring|blending|curing|cutting|labels?|names?)\b|\b(?:last (?:time|year|month|week|batch)|next|would|could|should|never|if)\b/,
  },
  // lye of one strength or another, and nobody knows out of which can it was
  {
    tells:
      /\b(?:out of|from|of|was|is|used|took|grabbed|be|been) (?:either )?(?:one or the other|either(?: (?:one|can|bottle|jar|jug|canister|container|of (?:them|the two|these|those)))?)\b|\b(?:no (?:idea|clue)|(?:dont|do not|cant|cannot|couldnt) (?:know|tell|say|remember)|not sure|unsure|forgot|forgotten) (?:any more |now )*which (?:(?:one|can|bottle|jar|of (?:them|the two|these)) )*(?:it |that |i |we |this )?(?:was|is|used|took|grabbed|had|have)\b|\blabels? (?:has |have |had )?(?:both |all )?(?:come|came|fallen|fell|gone|washed|peeled|rubbed|worn|is|are|were) (?:both |all )?(?:off|away|gone|unreadable|illegible)\b/,
    anywhere: /%[^?%]{0,60}\b(?:and|or|other|,|…)\b[^?%]{0,40}%/,
    beside: /\b(?:L|lye|solutions?|cans?|canisters?|jugs?|bottles?|jars?|strengths?)\b/,
    resolved:
      /\b(?:hydrometer|turned out|found out|found (?:it|the label)|it (?:is|was|must be) the|had to be the|smelled|so i know|marked with)\b/,
  },
  // two fats for one, and only asked
  {
    tells:
      /\b(?:if|suppose|supposing|say|imagine) [^#?]{0,12}\b(?:swap|swapped|replace|replaced|exchange|exchanged|substitute|substituted|trade)(?: out)?(?: both)? (?:the )?F (?:and|,|plus) (?:the )?F (?:for|by|with) (?:the )?[FN]\b/,
  },
  // "I did 8 % for years, since January it's 5"
  {
    tells:
      /% [^#%?@]{0,20}\bfor (?:years|ages|months|long)\b[^#%?]{0,40}\b(?:since|now|lately|nowadays|these days)\b[^#%?]{0,30}[#%]|(?:%|… superfat) [^#%?]{0,20}\b(?:until|till)\b[^#%?]{0,30}[#%…] /,
    unheard: true,
    unless: /\bbars?\b|\bstill\b/,
  },
  // "a third beer, a third water: 300 g"
  {
    tells: /\b(?:half|thirds?|quarters?) (?:of (?:it|that|the liquid) )?(?:is |was )?M\b[^?]*#/,
    // "half water half milk: 150 g water, then 150 g of milk"
    unless:
      /# each|\b(?:others|people|next|would|could|might|usually|once|last|used to)\b|# (?:of )?W\b.*# (?:\S+ ){0,3}M\b|# (?:\S+ ){0,3}M\b.*# (?:of )?W\b/,
    unheard: true,
  },
  {
    tells: /\b[FN] (?:# )?[("“„]* ?\bor (?:(?:is|was|maybe|perhaps) (?:it |that )?)?(?:the )?["“„]* ?[FN]\b/,
    beside: /\b(?:or (?:is|was) (?:it|that)|label|says|reads|smudged|faded|unreadable|illegible|written|handwriting)\b/,
    unless: /\?.*\?|\b(?:instead|can i|could i|either works|same)\b/,
  },
];

let nets: readonly Net[] | null = null;

function signOf(token: Token | undefined): string {
  if (token?.t !== 'quantity') return '…';
  const { dim, each } = token.quantity;
  if (dim === 'percent') return '%';
  if (!massOf(token)) return '…';
  return each ? '# each' : '#';
}

/** It goes on with what stands before it. */
const goesOn = /^(?:[([]|since\b|now\b|these days\b|lately\b|nowadays\b)/;

/** The words that leave it open; null where none do. */
export function leftOpen(cut: Cut, back: readonly PutRight[]): string | null {
  const { tokens, prims } = cut;
  const sentences = sentencesOf(cut);
  if (!sentences.some(({ text }) => cues.test(text))) return null;
  nets ??= made();
  const weighed = weighedThings(tokens);
  const texts = sentences.map((sentence) =>
    sentence.text.replace(/[@#]/g, (sign, place: number) => {
      const token = tokens[sentence.tokenAt(place)];
      return sign === '@' ? letterOf(token, weighed) : signOf(token);
    }),
  );
  for (const [k, sentence] of sentences.entries()) {
    const own = texts[k] ?? '';
    if (!cues.test(own)) continue;
    const before = goesOn.test(own) || /^optional/.test(texts[k - 1] ?? '') ? (texts[k - 1] ?? '') : '';
    const around = texts.slice(Math.max(0, k - 2), k + 1).join('');
    const isHeard = back.some(({ from, to }) => from < sentence.to && to > sentence.from);
    for (const { tells, beside, anywhere, unless, resolved, unheard } of nets) {
      if (
        (unheard && isHeard) ||
        !(tells.test(own) || tells.test(`${before}${own}`)) ||
        unless?.test(own) ||
        beside?.test(around) === false ||
        (anywhere && !texts.some((text) => anywhere.test(text))) ||
        (resolved && texts.some((text) => resolved.test(text)))
      )
        continue;
      return said(sentence, tokens, prims);
    }
  }
  return null;
}

function said({ from, to }: Sentence, tokens: readonly Token[], prims: Cut['prims']): string | null {
  const [first, last] = [tokens[from], tokens[to - 1]];
  return first && last ? rawText(prims, first.from, last.to).trim() : null;
}

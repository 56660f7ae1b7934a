/**
 * The superfat that is settled on, behind another one: "usually 5 % superfat, but for him I'd like 8 %, so please reckon it
 * at 8", "planned 4 percent, was told it goes cloudy, so take 2 percent, I go with that"; in a chat "take 5" – "fine, 5 %".
 */
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient, isMark, isRole, spoken } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';

const most = 0.25;
const isShare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'percent' && token.quantity.value < most;
/** "Reckon it at 8". */
const isBare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'bare' && token.quantity.value < 100 * most;

const light = '(?:(?:it|that|this|with|at|to|for|only|just|a|superfat|of|by|please|now|then|the|lye) )*';
const me = '(?:i|we|id|ill|im|well|lets|let us|please|pls|you)';
/** Said before the figure by whom the recipe is. */
const settles = new RegExp(
  [
    `\\b(?:${me} (?:would |will |ll |d |am |m |then |just |now )*|so |then )(?:take|taking|make|use|using|want|like|prefer|go|going|need|reckon|calculate|compute|work|count|set|do|chose|decided on|settled on)\\b ${light}(?:out |down |up |for |with |at )*${light}$`,
    `\\b(?:reckon|calculate|compute|work) (?:it |this |that |everything )*(?:out )?(?:at|with|for|by) ${light}$`,
    `\\b(?:so|then|now) make (?:it|that) ${light}$`,
    `\\b(?:i am|im|we are|were) (?:quite |perfectly |always |more )?(?:happy|content|fine|good|okay|ok|comfortable) with ${light}$`,
    `\\b(?:i|we) (?:only|just|rather|myself)* ?(?:do|like|stay at|stick (?:to|with|at)|keep to|stop at) ${light}$`,
  ].join('|'),
);
/** "Fine, 5 %": what was said by somebody else is agreed to. */
const agrees =
  /^(?:[•–—,.!-] ?)*(?:(?:fine|ok|okay|yes|yep|yeah|agreed|right|good|sure|done|alright|true|deal|then|so|well|[,;!:]) ?)+ $/;
const accepted =
  /^# (?:superfat )?(?:it is\b|(?:[,;–-] )?(?:and )?(?:i|we|ill|im|well)(?: am| will| ll| m)? (?:go|going|stick|sticking|went) with (?:that|it|this)\b|(?:please|then)(?= [.,;!?]))/;
/** "5 is enough for me". */
const suits =
  /^# (?:superfat |percent )?(?:is|does|will do|would do|suits) (?:quite |always |more than |perfectly )?(?:enough|plenty|better|fine|right|it|me|good)?(?: it)?(?: for| to)? ?(?:me|us|mine|ours)?\b/;
const own = /\b(?:i|we|im|ill|ive|me|my)\b/;
/** Somebody else says so. */
const hearsay =
  /\b(?:swears?|does|everyone|everybody|told|said|says|suggest\w*|recommend\w*|advis\w+|thinks?|wrote|he|she|they|people|others|book)\b/;
/** Of the other one it is said whose or when it was. */
const turned =
  /\b(?:usual|usually|normal|normally|always|mostly|otherwise|planned|plan|wanted|thought|meant|was|were|had|made|bars|others?|last|first|once|before|standard|family|everyday|instead|but)\b/;
const tooMuch = /# (?:superfat )?(?:is|was|turns? out|feels?) too \b/;
const open = /\?|\b(?:or|if|either|maybe|perhaps|might|may|could|next|once|think about|thinking|not sure|between)\b/;

interface Told {
  readonly sentence: Sentence;
  readonly at: number;
}

/** The figure that is settled on, and the others; null where none is, or nobody knows. */
export function decidedIn(cut: Cut): { readonly now: number; readonly others: readonly number[] } | null {
  const { tokens } = cut;
  const shares: Told[] = [];
  const bare: Told[] = [];
  for (const sentence of sentencesOf(cut))
    for (let at = sentence.from; at < sentence.to; at++) {
      const isNamed = isOfThing(tokens, at);
      if (isShare(tokens[at]) && !isNamed) shares.push({ sentence, at });
      else if (isBare(tokens[at]) && !isNamed) bare.push({ sentence, at });
    }
  const [first] = shares;
  if (!first) return null;
  const isNear = shares.some(({ at }) => [at - 1, at + 1, at - 2].some((k) => isRole(tokens[k], 'superfat')));
  const values = (told: readonly Told[]): readonly number[] => told.map(({ at }) => valueAt(tokens, at));
  // a figure without its sign is one where it is settled on, or where one with it says the same
  const isTold = ({ sentence, at }: Told): boolean =>
    shares.some((one) => one.sentence === sentence || valueAt(tokens, one.at) === valueAt(tokens, at)) ||
    isAny(tokens, sentence.from, sentence.to, (one) => isRole(one, 'superfat'));
  const ofIt = bare.filter(
    (one) => one.at > first.at && ends.test(spokenAt(tokens, one.at + 1)) && isTold(one) && doesSettle(one, tokens),
  );
  const all = [...shares, ...ofIt].toSorted((a, b) => a.at - b.at);
  const final = all.filter((one) => doesSettle(one, tokens));
  const last = all.at(-1);
  if (!isNear || !last || new Set(values(all)).size !== 2 || final.length === 0) return null;
  const [value, ...more] = new Set(values(final));
  if (more.length > 0 || value === undefined || valueAt(tokens, last.at) !== value) return null;
  const told = all.filter(({ at }) => valueAt(tokens, at) === value || at > (final[0]?.at ?? 0));
  if (told.some(({ sentence }) => open.test(sentence.text))) return null;
  if (value === valueAt(tokens, first.at)) return null;
  // "sf 5 % …, I want 8 % superfat" says nothing of the first
  const isTurned =
    final.some((one) => isAgreed(one)) ||
    all.some(
      ({ sentence }) => turned.test(sentence.text) || hearsay.test(sentence.text) || tooMuch.test(sentence.text),
    );
  if (!isTurned) return null;
  const now = final.find(({ at }) => isShare(tokens[at]))?.at ?? final[0]?.at ?? last.at;
  return { now, others: all.flatMap(({ at }) => (at === now ? [] : [at])) };
}

/** "5 % is shea", "3 % of lavender". */
function isOfThing(tokens: readonly Token[], at: number): boolean {
  let k = at + 1;
  while (k - at < 4 && /^(?:of|is|are|the|my|each|was|pure)$/.test(spoken(tokens[k]))) k++;
  return isIngredient(tokens[k]);
}

/** "8 bars" are none. */
const ends =
  /^(?:is|does|suits|will|[^\p{L}]*|it|please|pls|then|now|this|today|for|and|superfat|i|as|because|since|instead)$/u;
const spokenAt = (tokens: readonly Token[], k: number): string => {
  const token = tokens[k];
  if (token?.t === 'name' && token.meaning.kind !== 'role') return 'name';
  return token?.t === 'quantity' ? 'figure' : spoken(token);
};

const valueAt = (tokens: readonly Token[], at: number): number => {
  const token = tokens[at];
  if (token?.t !== 'quantity') return Number.NaN;
  return Math.round(token.quantity.value * (token.quantity.dim === 'percent' ? 1e4 : 1e2));
};

function isAgreed({ sentence, at }: Told): boolean {
  const place = sentence.placeOf(at);
  return accepted.test(sentence.text.slice(place)) || agrees.test(sentence.text.slice(0, place));
}

function doesSettle(told: Told, tokens: readonly Token[]): boolean {
  if (isAgreed(told)) return true;
  const { sentence, at } = told;
  const before = sentence.text.slice(0, sentence.placeOf(at));
  // "my neighbour swears by 8 %, I am happy with 5"
  const last = before.replace(/^.*[,;–]/, '');
  const clause = own.test(last) ? last : before;
  if (suits.test(sentence.text.slice(sentence.placeOf(at))) && !hearsay.test(last)) return true;
  // in a chat anybody may say so
  const isSaid = isMark(tokens[sentence.from], '•') && !/\b(?:i|we|id|ill|im)\b/.test(before);
  return !isSaid && settles.test(before) && !hearsay.test(clause);
}

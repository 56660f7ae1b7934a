/** Which of two weights of all the fats is meant: "for the big one I need 4.5 kg of oils; the little loaf was only 400 g". */
import { isMark, sentenceAt, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

const wanted =
  /\b(?:(?:i|we) (?:only |just |really )*(?:do|make)|need|needs|want|wants|would like|like|going to|gonna|will|make|making|now|today|tonight|tomorrow|this time|next|new|big|bigger|larger|same|instead|scaled|scale|scaling|mould|mold|please|how much|plan|planning|id|ill|for the|but)\b/;
const past =
  /\b(?:was|were|had|used to|so far|sofar|usually|normally|always|last|old|earlier|previous|little|small|tiny|test|tester|trial|sample|original|recipe|book|card|sheet|page|handout|leaflet|written|calls|says|before|made|took|once)\b/;
const longestLook = 30;

/** Where one clause ends and the next begins. */
const isParting = (token: Token | undefined): boolean =>
  isMark(token, ',;:()') || /^(?:but|while|whereas)$/.test(spoken(token));

/** How much the clause at token `k` speaks of what is to be made, and not of what was. */
function ageAt(tokens: readonly Token[], k: number): number {
  let { from, to } = sentenceAt(tokens, k, longestLook);
  for (let at = k; at > from; at--) if (isParting(tokens[at])) from = at;
  for (let at = to - 1; at > k; at--) if (isParting(tokens[at])) to = at;
  const text = tokens.slice(from, to).map(spoken).join(' ');
  return Number(wanted.test(text)) - Number(past.test(text));
}

const each = /^(?:each|every|everyone|everybody|apiece|per)$/;
const weightAt = (token: Token | undefined): number => (token?.t === 'quantity' ? token.quantity.value : Number.NaN);

/**
 * "12 people, everyone makes 500 g of oils, so 6 kg": what one of so many has, at `one`, and what all of them have. How
 * many they are stands in the post, and nothing else in it is said of each.
 */
function isOneOf(tokens: readonly Token[], one: number, whole: number): boolean {
  const many = weightAt(tokens[whole]) / weightAt(tokens[one]);
  const { from, to } = sentenceAt(tokens, one, longestLook);
  const said = tokens.flatMap((token, k) => (each.test(spoken(token)) ? [k] : []));
  return (
    many > 1 &&
    tokens.some((token) => token.t === 'quantity' && token.quantity.dim === 'bare' && token.quantity.value === many) &&
    said.length === 1 &&
    said.every((k) => k >= from && k < to)
  );
}

/** The one of two places whose weight is meant; null where nobody knows. */
export function totalMeant(tokens: readonly Token[], first: number, second: number): number | null {
  if (isOneOf(tokens, first, second)) return second;
  const [one, other] = [ageAt(tokens, first), ageAt(tokens, second)];
  return one === other ? null : one > other ? first : second;
}

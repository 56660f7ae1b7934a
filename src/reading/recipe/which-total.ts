/** Which of two weights of all the fats is meant: "for the big one I need 4.5 kg of oils; the little loaf was only 400 g". */
import { isMark, sentenceAt, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

const wanted =
  /\b(?:need|needs|want|wants|would like|like|going to|gonna|will|make|making|now|today|tonight|tomorrow|this time|next|new|big|bigger|larger|same|instead|scaled|scale|scaling|mould|mold|please|how much|plan|planning|id|ill|for the|but)\b/;
const past =
  /\b(?:was|were|had|used to|so far|sofar|usually|normally|always|last|old|earlier|previous|little|small|tiny|test|tester|trial|sample|original|recipe|book|card|written|calls|says|before|made|took|once)\b/;
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

/** The one of two places whose weight is meant; null where nobody knows. */
export function totalMeant(tokens: readonly Token[], first: number, second: number): number | null {
  const [one, other] = [ageAt(tokens, first), ageAt(tokens, second)];
  return one === other ? null : one > other ? first : second;
}

/**
 * "In the last video I said 35 % coconut - no, it is 30 %": of two shares of one fat the one that the weights of the post
 * make. Both say nothing new; where neither agrees, or both do, the post is heard as it stands.
 */
import type { Signals } from '../words/signals.ts';
import { isFat, isIngredient, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedIn } from '../words/weighed.ts';

const saying = /^(?:said|say|wrote|write|told|claimed|typed|posted|mentioned|had)$/;
const denying = /^(?:no|nope|sorry|wrong|oops|correction)$/;
/** Shares are told in whole percents. */
const near = 0.006;
const longest = 40;

const isShare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'percent' && token.quantity.upTo === null;

/** The share that each fat has by its first weight. */
function sharesOf(tokens: readonly Token[]): ReadonlyMap<string, number> {
  const grams = new Map<string, number>();
  for (const { id, figure } of weighedIn(tokens, 0, tokens.length, /^fat$/)) {
    const token = tokens[figure];
    if (token?.t === 'quantity' && token.quantity.dim === 'mass' && !grams.has(id)) grams.set(id, token.quantity.value);
  }
  const sum = [...grams.values()].reduce((all, one) => all + one, 0);
  return new Map([...grams].map(([id, one]) => [id, one / sum]));
}

/** The tokens without what such a sentence says. */
export function shareCorrected(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  const first = figures.find((k) => isShare(tokens[k]) && saying.test(spoken(tokens[k - 1])));
  if (first === undefined) return tokens;
  const { from, to } = sentenceAt(tokens, first, longest);
  const own = tokens.slice(from, to);
  const [fat, ...others] = own.filter(isIngredient);
  const shares = own.filter(isShare);
  const isPlain = shares.length === 2 && own.filter((one) => one.t === 'quantity').length === 2;
  if (!isPlain || !isFat(fat) || others.length > 0 || !own.some((one) => denying.test(spoken(one)))) return tokens;
  const made = sharesOf(tokens).get(thingOf(fat)) ?? Number.NaN;
  const [agrees, differs] = [0, 1].map((at) => Math.abs((shares[1 - at]?.quantity.value ?? 0) - made) <= near);
  if (!agrees || differs) return tokens;
  return tokens.map((token, k) => {
    if (k < from || k >= to) return token;
    if (isShare(token)) return asAside(token, token === shares[1] ? 'a share that agrees' : 'told of another time');
    if (token === fat) return asFiller(token, 'only');
    return denying.test(spoken(token)) ? { t: 'sign', from: token.from, to: token.to, text: ',', sort: null } : token;
  });
}

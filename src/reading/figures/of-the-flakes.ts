/**
 * "What I bought is potassium hydroxide flakes, and the tub says 90 % purity. I've weighed 204 g of the flakes": of the
 * alkali, called by its grains, and as pure as was told before.
 */
import type { Signals } from '../words/signals.ts';
import { isIngredient, isRole, isWeight, isWord, wordAt } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedAt } from '../words/weighed.ts';

const grains = /^(?:flakes|pearls|beads|granules|pellets|crystals|prills|micropearls|microbeads|lentils)$/;
const pointing = /^(?:the|these|those|that|my|said)$/;
/** They lie on the soap, or in it. */
const decorating = /^(?:on|over|onto|for)$/;

const isAlkali = (one: Token | undefined): boolean => isIngredient(one) && one.meaning.kind === 'alkali';

/** Where the alkali is named that is weighed nowhere; -1 where several are, or something else has such grains. */
function alkaliBefore(tokens: readonly Token[], end: number): number {
  const all = tokens.filter(isAlkali);
  const kinds = new Set(all.map((one) => (one.t === 'name' ? one.meaning.id : '')));
  kinds.delete('unsaid');
  if (kinds.size > 1 || tokens.some((one, k) => isAlkali(one) && weighedAt(tokens, k))) return -1;
  const isOther = tokens.some(
    (one, k) =>
      isIngredient(one) && thingOf(one) !== 'alkali' && (grains.test(wordAt(tokens, k + 1)) || endsSo(one.text)),
  );
  return isOther ? -1 : tokens.findIndex((one, k) => k < end && isAlkali(one));
}

const endsSo = (text: string): boolean => grains.test(text.toLowerCase().split(' ').at(-1) ?? '');

const leastPure = 0.6;
const isPurity = (one: Token | undefined): one is Figure =>
  one?.t === 'quantity' && one.quantity.dim === 'percent' && one.quantity.value >= leastPure && one.quantity.value <= 1;

/** The tokens with the name of the alkali where its grains are weighed, and its purity behind that. */
export function ofTheFlakes(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  for (const k of figures) {
    const [joint, article, word] = [tokens[k + 1], tokens[k + 2], tokens[k + 3]];
    if (!isWeight(tokens[k]) || !joint || !article || !word || !isWord(joint, 'of')) continue;
    if (!pointing.test(wordAt(tokens, k + 2)) || !grains.test(wordAt(tokens, k + 3))) continue;
    const at = decorating.test(wordAt(tokens, k + 4)) ? -1 : alkaliBefore(tokens, k);
    const alkali = tokens[at];
    if (!alkali) continue;
    const pure = tokens.findIndex((one, n) => n > at && n < k && isPurity(one));
    const share = tokens[pure];
    const out = [...tokens];
    out[at] = asFiller(alkali);
    out[k + 1] = { ...alkali, from: joint.from, to: joint.to };
    out[k + 2] = isPurity(share) ? { ...share, from: article.from, to: article.to } : asFiller(article);
    out[k + 3] = asFiller(word);
    if (!isPurity(share)) return out;
    for (let n = at; n <= pure + 1; n++) {
      const one = out[n];
      if (one && (n === pure || isRole(one, 'purity') || isRole(one, 'pot'))) out[n] = asFiller(one);
    }
    return out;
  }
  return tokens;
}

/** "KOH, 155 g, and it's the 90 % sort": how pure the alkali is that was named last. */
import { isIngredient, isRole, sentenceAt, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

const sort = /^(?:sort|kind|type|stuff|quality|grade|version)$/;
/** Alkali in a tub is purer than any solution. */
const leastPure = 0.8;
const reach = 30;

export function puritySort(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex((token, k) => sort.test(spoken(token)) && isPurity(tokens, k - 1));
  const word = tokens[at];
  if (!word) return tokens;
  const { from, to } = word;
  const meaning = { kind: 'role', id: 'purity' } as const;
  return tokens.with(at, { t: 'name', from, to, text: spoken(word), meaning, how: 'name', meant: 'purity' });
}

/** A share that behind an alkali, and no other name, says how pure it is. */
function isPurity(tokens: readonly Token[], k: number): boolean {
  const share = tokens[k];
  if (share?.t !== 'quantity' || share.quantity.dim !== 'percent') return false;
  if (!(share.quantity.value >= leastPure && share.quantity.value <= 1)) return false;
  const { from, to } = sentenceAt(tokens, k, reach);
  if (tokens.slice(from, to).some((token) => isRole(token, 'purity'))) return false;
  const last = tokens.slice(from, k).findLast(isIngredient);
  return last?.t === 'name' && last.meaning.kind === 'alkali';
}

/**
 * "Hot process. When it was ready I mixed 40 g shea butter into it", "cooked two hours, it cooled a bit and I stirred in
 * 40 g shea", "boiled 3 hours, and in the end 40 g shea": what a soap that is cooked gets last is put in after the cook,
 * without a word for that.
 */
import { isAny, isFat, isIngredient, isMark, isRole, isWeight, sentenceAt, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { long } from './after.ts';
import { cookOver } from './cook.ts';

const cooks = /^(?:cook(?:ed|s|ing)?|boil(?:ed|s|ing)?|simmer(?:ed|s|ing)?|crockpot|crock|slowcooker|hp)$/;
/** Told of the pot itself, whatever else is said. */
const late =
  /^(?:cool(?:ed|s|ing)?|ready|done|finished|over|clear|then|last|lastly|finally|end|finish|afterwards|later)$/;
const stirring =
  /^(?:stir(?:red|s|ring)?|add(?:ed|s|ing)?|mix(?:ed|es|ing)?|fold(?:ed|s|ing)?|put|gave|give|given|came|comes|went|goes|poured|beat|whisked|in|into|worked|blended|melted|got|gets)$/;
/** It goes on, or is of another kind. */
const not =
  /^(?:trace|blend|blender|mou?ld|lye|before|if|next|should|would|could|cold|cp|again|another|on|usually|always|last time|instead|salt|bottle|jar|tub|shampoo|balm|lotion)$/;
/** Seconds that a cook takes, at the least. */
const leastCook = 1800;
/** Of all fat, at the most. */
const mostLate = 0.15;
const longest = 60;

/** From where on the post tells of a cook with the alkali in it; -1 where it does not. */
function cookFrom(tokens: readonly Token[]): number {
  const lye = tokens.findIndex(
    (token, k) => isAlkali(token) && [k - 1, k + 1, k + 2].some((at) => isWeight(tokens[at])),
  );
  if (lye < 0 || tokens.some((_, k) => isHot(tokens, k))) return lye;
  return tokens.findIndex((token, k) => {
    const word = spoken(token) || (token.t === 'name' ? token.text.toLowerCase() : '');
    return k > lye && ((cooks.test(word) && isLong(tokens, k)) || /^(?:crock ?pot|slow cooker)$/.test(word));
  });
}

const isHot = (tokens: readonly Token[], k: number): boolean =>
  (spoken(tokens[k]) === 'hot' && /^process/.test(spoken(tokens[k + 1]))) || spoken(tokens[k]) === 'hp';

/** "Cooked for one and a half hours". */
function isLong(tokens: readonly Token[], k: number): boolean {
  const { from, to } = sentenceAt(tokens, k, longest);
  return isAny(
    tokens,
    from,
    to,
    (one) =>
      long.test(spoken(one)) ||
      (one.t === 'quantity' && one.quantity.dim === 'time' && one.quantity.value >= leastCook),
  );
}

/** The tokens in which the word that says so is one for "after the cook". */
export function lateIn(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some((token) => late.test(spoken(token)))) return tokens;
  const cook = cookFrom(tokens);
  if (cook < 0) return tokens;
  const fats = tokens.flatMap((token, k) => (isFat(token) ? [k] : []));
  const grams = (k: number): number => {
    const figure = [k - 1, k - 2, k + 1].map((at) => tokens[at]).find(isWeight);
    return figure?.t === 'quantity' ? figure.quantity.value : 0;
  };
  const all = fats.reduce((sum, k) => sum + grams(k), 0);
  for (const k of fats) {
    if (k < cook || !(grams(k) > 0)) continue;
    const { from, to } = sentenceAt(tokens, k, longest);
    const told = fats.filter((at) => at >= from && at < to);
    if (told.some((at) => at < cook) || told.reduce((sum, at) => sum + grams(at), 0) > mostLate * all) continue;
    if (
      isAny(
        tokens,
        from,
        to,
        (one) => not.test(spoken(one)) || isRole(one, 'before') || isRole(one, 'after') || isWet(one),
      )
    )
      continue;
    if (isAny(tokens, from, to, (one) => isMark(one, '?'))) continue;
    if (!isAny(tokens, from, to, (one) => stirring.test(spoken(one)) || /^(?:then|end|last|finish)$/.test(spoken(one))))
      continue;
    const isLate = (one: Token): boolean => late.test(spoken(one));
    const ahead = tokens.slice(from, k).findLastIndex(isLate);
    const at = ahead >= 0 ? from + ahead : tokens.findIndex((one, n) => n > k && n < to && isLate(one));
    const word = tokens[at];
    // an earlier one of a fat that is listed once more is no late one
    if (word?.t !== 'word' || fats.some((n) => n > to)) continue;
    const out = [...tokens];
    out[at] = {
      t: 'name',
      from: word.from,
      to: word.to,
      text: word.text,
      meaning: { kind: 'role', id: 'after' },
      how: 'name',
      meant: cookOver,
    };
    return out;
  }
  return tokens;
}

const isAlkali = (token: Token): boolean => isIngredient(token) && /^(?:alkali|stock)$/.test(token.meaning.kind);
const isWet = (token: Token): boolean => isAlkali(token) || (isIngredient(token) && token.meaning.kind === 'water');

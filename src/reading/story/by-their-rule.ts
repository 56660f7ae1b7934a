/**
 * Alkali that was weighed by somebody's rule and is not named again: "he goes by 14 g lye per 100 g fat. I have 600 g
 * coconut and 100 g castor, so by his rule I weighed 98 g". It is the alkali's where the rule makes so much of the fats.
 */
import { type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

const rule = '(?:rule|formula|reckoning|method|rule of thumb|ratio|maths|sums?)';
const weighed =
  '(?:weighed|took|take|put|used?|measured|went with|dissolved|have|got)(?: (?:out|in|up|just|exactly|only))*';
const patterns = [
  `\\b(?:by|following|after|according to|with|using|on) (?:his|her|my|that|the|this|their|hers|@) (?:old )?${rule}\\b[^#@.;]{0,16}\\b(?:i|we|ive|weve)(?: have| had)? ${weighed} (?<n>#)(?! (?:of )?@)`,
  `\\b(?:i|we|ive|weve)(?: have| had)? ${weighed} (?<n>#) (?:by|following|after|according to) (?:his|her|my|that|the|this|their) (?:old )?${rule}\\b`,
].map((pattern) => new RegExp(pattern, 'd'));
const rate =
  /(?<a>#) (?:of )?(?<l>@) (?:per|to|for|on|to each|for each|for every|a|each|every|to every) (?:(?:each|every|a) )*(?:(?<b>#)|(?<k>kilo|kg|kilogram)\b)/d;
/** How far what was weighed may lie from what the rule makes, as a share of it. */
const near = 0.03;
const kilo = 1000;

/** The list with the alkali so weighed. */
export function byTheirRule(cut: Cut): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => new RegExp(`^${rule}$`).test(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  const isLye = (k: number): boolean => {
    const token = tokens[k];
    return isIngredient(token) && token.meaning.kind === 'alkali';
  };
  for (const sentence of sentences) {
    const place = patterns.map((pattern) => pattern.exec(sentence.text)).find((match) => match !== null)?.indices
      ?.groups?.['n'];
    if (!place) continue;
    const figure = sentence.tokenAt(place[0]);
    for (const before of sentences) {
      const found = before.from <= sentence.from ? rate.exec(before.text)?.indices?.groups : undefined;
      if (!found?.['a'] || !found['l']) continue;
      const [a, l] = [before.tokenAt(found['a'][0]), before.tokenAt(found['l'][0])];
      const b = found['b'] ? before.tokenAt(found['b'][0]) : -1;
      const rows = rowsBefore(tokens, tokens.length).filter(({ figure: at }) => at !== a && at !== b && at !== figure);
      const own = rows.some(({ at }) => isLye(at) && at !== l);
      const fats = rows.filter(({ at }) => isFat(tokens[at]));
      const sum = fats.reduce((all, row) => all + weightAt(tokens, row.figure, a), 0);
      const made = (weightAt(tokens, a, a) / (b < 0 ? kilo : weightAt(tokens, b, a))) * sum;
      const value = weightAt(tokens, figure, a);
      const [weight, name, mark] = [tokens[figure], tokens[l], tokens[figure - 1]];
      if (!isLye(l) || own || name?.t !== 'name' || !mark || !isPlain(weight)) continue;
      if (!(Math.abs(value - made) <= near * made)) continue;
      const out = [...tokens];
      for (let k = a; k <= Math.max(b, l); k++) {
        const token = out[k];
        if (token?.t === 'quantity') out[k] = asAside(token, 'a rule for any batch');
        else if (token?.t === 'name') out[k] = asFiller(token);
      }
      out[figure - 1] = { ...name, from: mark.from, to: mark.to };
      const text = `I took ${written(weight.quantity)} as the ${name.text}, which that rule makes of the fats.`;
      return { tokens: out, told: [{ text, gone: [], from: figure - 1, to: figure + 1, settles: true }] };
    }
  }
  return none;
}

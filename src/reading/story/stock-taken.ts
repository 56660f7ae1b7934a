/**
 * "I keep a lye stock, one part NaOH to one part water. I took 190 g out of the can": a solution that no list names. And
 * "forty per cent means 40 g of NaOH in each 100 g of the liquid": a share that is said to be a solution's strength.
 */

import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { plainQuantity } from '../words/quantities.ts';
import { isIngredient } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { hush, isPlain, isSum, rowsBefore } from './tale.ts';

const kept = /\b(?:keep|kept|stock|ready|premixed|pre - mixed|made up|mixed|canister|can|bottle|solution)\b|@ :/;
const parts = /(?<l>#) (?:of )?(?<f>@) (?:to|and|in|with|:) (?<w>#) (?:of )?(?<g>@)/d;
const vessel = '(?:can|canister|bottle|jug|jar|tub|drum|container|stock|solution|jerrycan)';
const taken = new RegExp(
  `\\b(?:took|used|weighed|poured|measured|drew|tapped) (?:off |out )?(?<a>#) (?:of (?:it|that) )?(?:out of|from|of) (?:the|my|that|this) (?:same )?${vessel}\\b`,
  'd',
);
const meaning =
  /# (?:means|meaning|is|i e|that is|thats) (?:that (?:there are|theres) )?(?<l>#) (?:of )?(?<f>@) (?:in|to|per|for) (?:each|every|a)? ?(?<w>#) (?:of (?:the |that )?)?(?:liquid|solution|mix|mixture|stuff|finished [a-z]+)\b/d;
const strongest = 0.55;

const isKind = (token: Token | undefined, kind: string): boolean => isIngredient(token) && token.meaning.kind === kind;
type Name = Extract<Token, { t: 'name' }>;
type Alkali = Name & { readonly meaning: Extract<Name['meaning'], { kind: 'alkali' }> };
const isAlkali = (token: Token | undefined): token is Alkali => isKind(token, 'alkali');

const groupsOf = (sentence: Sentence, match: RegExpExecArray | null, names: readonly string[]): readonly number[] =>
  names.map((name) => {
    const place = match?.indices?.groups?.[name]?.[0];
    return place === undefined ? -1 : sentence.tokenAt(place);
  });

const share = ({ from, to }: Token, value: number, { quantity: { text, numbers } }: Figure): Token => ({
  t: 'quantity',
  from,
  to,
  quantity: { ...plainQuantity, dim: 'percent', value, text, numbers },
});

/** The stock from which so much was taken. */
function fromCan(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  if (rowsBefore(tokens, tokens.length).some(({ at }) => isKind(tokens[at], 'alkali'))) return tokens;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    const [l = -1, f = -1, w = -1, g = -1] = groupsOf(sentence, parts.exec(sentence.text), ['l', 'f', 'w', 'g']);
    const [lye, water, name] = [tokens[l], tokens[w], tokens[f]];
    if (!kept.test(sentence.text) || !isAlkali(name) || !isKind(tokens[g], 'water')) continue;
    if (lye?.t !== 'quantity' || water?.t !== 'quantity' || lye.quantity.dim !== water.quantity.dim) continue;
    const strength = lye.quantity.value / (lye.quantity.value + water.quantity.value);
    const [on, ...more] = sentences.slice(k, k + 3).filter(({ text }) => taken.test(text));
    const [figure = -1] = on ? groupsOf(on, taken.exec(on.text), ['a']) : [];
    if (!on || more.length > 0 || !isPlain(tokens[figure]) || !(strength > 0 && strength <= strongest)) continue;
    const [next, behind] = [tokens[figure + 1], tokens[figure + 2]];
    if (next?.t !== 'word' || behind?.t !== 'word') continue;
    const out = [...tokens];
    hush(out, sentence.from, Math.min(sentence.to, figure), 'how strong the solution is');
    out[figure + 1] = { ...name, meaning: { kind: 'stock', id: name.meaning.id }, from: next.from, to: next.to };
    out[figure + 2] = share(behind, strength, lye);
    return out;
  }
  return tokens;
}

/** The tokens in which such a share is that of a solution. */
export function stockTaken(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures < 3 || !/# (?:mean|is|i e|that)/.test(sentence.text)) continue;
    const [l = -1, f = -1, w = -1] = groupsOf(sentence, meaning.exec(sentence.text), ['l', 'f', 'w']);
    const [lye, all] = [tokens[l], tokens[w]];
    if (!isPlain(lye) || !isPlain(all)) continue;
    const strength = lye.quantity.value / all.quantity.value;
    const at = tokens.findIndex(
      (token, k) =>
        k < sentence.from &&
        token.t === 'quantity' &&
        token.quantity.dim === 'percent' &&
        isKind(tokens[k + 1], 'alkali'),
    );
    const [percent, name] = [tokens[at], tokens[at + 1]];
    if (percent?.t !== 'quantity' || !isAlkali(name) || !isSum(percent.quantity.value, strength)) continue;
    const said = tokens[f];
    if (!isAlkali(said)) continue;
    const out = [...tokens];
    hush(out, sentence.from, sentence.to, 'how strong the solution is');
    out[at + 1] = { ...name, meaning: { kind: 'stock', id: said.meaning.id } };
    return out;
  }
  return tokens.some(
    (token) => token.t === 'word' && /^(?:took|used|weighed|poured|measured|drew|tapped)$/.test(token.text),
  )
    ? fromCan(cut)
    : tokens;
}

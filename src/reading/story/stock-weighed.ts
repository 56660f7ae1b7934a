/**
 * "Lye 270 g" in a list, and below it "I keep it as a ready mixed solution, one part sodium hydroxide to one part water. I
 * weighed 270 g of that solution": the weight of the list is the solution's.
 */

import { type Cut, sentencesOf } from '../text/sentences.ts';
import { plainQuantity } from '../words/quantities.ts';
import { isIngredient, isRole } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { hush, isSum, rowsBefore, type Tale, taleAt, toldIn, weightAt } from './tale.ts';

const kept = /\b(?:keep|kept|ready|ready - mixed|pre ?mixed|mixed|stock|made up|canister)\b/;
const taken = /(?<a>#) (?:of|from) (?:that|this|the|my)(?: (?:ready|mixed|stock|made up|same))* solution\b/d;
const parts = /(?<l>#) (?:of )?(?<f>@) (?:to|and|in|with|:) (?<w>#) (?:of )?(?<g>@)/d;

/** Share of alkali in the strongest solution that keeps. */
const strongest = 0.55;
const near = 1e-3;

interface Strength {
  readonly share: number;
  readonly figure: Figure;
}

/** How strong it is by what a note tells; null where nothing tells it, or two things tell it otherwise. */
function strengthIn(tokens: readonly Token[], tale: Tale, from: number, to: number): Strength | null {
  const said: Strength[] = [];
  for (let k = from; k < to; k++) {
    const one = tokens[k];
    if (one?.t === 'quantity' && one.quantity.dim === 'percent') said.push({ share: one.quantity.value, figure: one });
  }
  const match = parts.exec(tale.text);
  const told = match ? toldIn(tale, match) : null;
  const [lye, water, alkali, wet] = ['l', 'w', 'f', 'g'].map((group) => tokens[told?.(group) ?? -1]);
  if (lye?.t === 'quantity' && water?.t === 'quantity' && isKind(alkali, 'alkali') && isKind(wet, 'water')) {
    const [one, other] = [lye.quantity, water.quantity];
    if (one.dim !== other.dim || !(one.value > 0 && other.value > 0)) return null;
    said.push({ share: one.value / (one.value + other.value), figure: lye });
  }
  const [first] = said;
  const isOne = first && said.every(({ share }) => Math.abs(share - first.share) <= near);
  return isOne && first.share > 0 && first.share <= strongest ? first : null;
}

const isKind = (token: Token | undefined, kind: string): token is Extract<Token, { t: 'name' }> =>
  isIngredient(token) && token.meaning.kind === kind;

/** The tokens in which the lye of the list is that solution; without its strength, where no note tells it. */
export function stockWeighed(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  if (!tokens.some((token) => isRole(token, 'solution'))) return tokens;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    const tale = taleAt(sentences, k);
    const match = kept.test(sentence.text) ? taken.exec(tale.text) : null;
    if (!match) continue;
    const [row, ...more] = rowsBefore(tokens, sentence.from).filter(({ at }) => isKind(tokens[at], 'alkali'));
    const figure = toldIn(tale, match)('a');
    const name = tokens[row?.at ?? -1];
    if (!row || more.length > 0 || !isKind(name, 'alkali')) continue;
    if (!isSum(weightAt(tokens, row.figure, row.figure), weightAt(tokens, figure, row.figure))) continue;
    const to = Math.max(figure, sentence.to - 1) + 1;
    const strength = strengthIn(tokens, tale, sentence.from, to);
    const alkali = tokens.find((one, at) => at >= sentence.from && at < to && isKind(one, 'alkali'));
    const out = [...tokens];
    hush(out, sentence.from, to, 'how strong the solution is');
    const { id } = isKind(alkali, 'alkali') ? alkali.meaning : name.meaning;
    out[row.at] = { ...name, meaning: { kind: 'stock', id } as Extract<Token, { t: 'name' }>['meaning'] };
    const behind = out[row.figure + 1];
    // its strength stands beside it
    if (strength && behind?.t === 'word') out[row.figure + 1] = shareToken(behind, strength);
    out[figure] = asAside(tokens[figure] as Figure, 'said before');
    return out;
  }
  return tokens;
}

function shareToken({ from, to }: Token, { share, figure }: Strength): Token {
  const { text, numbers } = figure.quantity;
  return { t: 'quantity', from, to, quantity: { ...plainQuantity, dim: 'percent', value: share, text, numbers } };
}

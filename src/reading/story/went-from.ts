/**
 * "The olive went up from 400 to 500", "coconut was cut from 300 g down to 200 g": the second figure is its weight, whether
 * the list has the first one or none at all.
 */

import { alike, type PutRight, reweighed } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, isWeight, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, type Name, rowsOf } from './tale.ts';

const moved =
  '(?:went|gone|came|comes|moved|rose|risen|jumped|crept|dropped|fell|shrank|cut|raised|upped|increased|lowered|reduced|bumped|changed|put|taken|brought)';
const pattern = new RegExp(
  `(?<f>@) (?:(?:is|was|were|has|have|had|then|got|been|also|now|just|i|we|amount|figure|weight|line) )*${moved} (?:(?:right|back|up|down|over|it|that|all|too) )*from (?<a>#)(?: (?:(?:right|back|up|down|over) )*to (?<b>#))?`,
  'dg',
);
const open =
  /\b(?:if|should|shall|would|could|might|may|maybe|perhaps|next|last (?:time|batch|year|month|week)|prices?|costs?|euros?|dollars?|pounds? sterling|temperature|degrees|scales?|jars?|tubs?|bottles?|tins?|bags?|jugs?|canisters?|packs?)\b/;

/** "On the scale", of a jar. */
const behind = 16;

const weighs = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && (token.quantity.dim === 'mass' || token.quantity.dim === 'bare');

/** The figure that counts of one that looks like a range, or of two. */
function nowOf(tokens: readonly Token[], a: number, b: number): Figure | null {
  const [was, is] = [tokens[a], tokens[b]];
  if (!weighs(was)) return null;
  if (b >= 0) return weighs(is) && is.quantity.upTo === null && was.quantity.upTo === null ? is : null;
  const { quantity } = was;
  return quantity.upTo === null ? null : { ...was, quantity: { ...quantity, value: quantity.upTo, upTo: null } };
}

/** The list still has what it was before. */
function isBefore(was: Token | undefined, listed: Figure): boolean {
  if (!weighs(was)) return false;
  const { value } = alike({ ...was.quantity, upTo: null }, listed.quantity);
  return Math.abs(value - listed.quantity.value) < nearly * value;
}
const nearly = 1e-3;

/** The tokens with the weight that such a fat has now right behind its name. */
export function wentFrom(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => spoken(token) === 'from')) return none;
  const out = [...tokens];
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    if (sentence.names === 0 || sentence.figures === 0) continue;
    for (const { index, 0: words, indices } of sentence.text.matchAll(pattern)) {
      const [f = -1, a = -1, b = -1] = ['f', 'a', 'b'].map((group) => {
        const place = indices?.groups?.[group]?.[0];
        return place === undefined ? -1 : sentence.tokenAt(place);
      });
      const [name, now] = [tokens[f], nowOf(tokens, a, b)];
      if (!isIngredient(name) || !now || open.test(sentence.text.slice(0, index + words.length + behind))) continue;
      const last = b < 0 ? a : b;
      const [row, ...more] = rowsOf(tokens, name, tokens.length).filter(({ at }) => at !== f);
      const listed = tokens[row?.figure ?? -1];
      if (more.length > 0 || (row && !(isPlain(listed) && isBefore(tokens[a], listed)))) continue;
      const like = listed ?? tokens.find(isWeight);
      const quantity = isPlain(like) ? alike(now.quantity, like.quantity) : now.quantity;
      for (let k = f + 1; k < last; k++) {
        const token = tokens[k];
        if (token) out[k] = token.t === 'quantity' ? asAside(token, 'what it was before') : asFiller(token);
      }
      out[last] = row ? asAside(now, 'said before') : { ...now, quantity };
      if (row && isPlain(listed)) {
        out[row.figure] = reweighed(listed, quantity.value);
        out[f] = asFiller(name);
      }
      told.push({
        text: `I took ${now.quantity.text.replace(/^.* to /, '')} of ${(name as Name).text}, as the post changes it.`,
        gone: [],
        from: f,
        to: last + 1,
        settles: true,
      });
    }
  }
  return told.length > 0 ? { tokens: out, told } : none;
}

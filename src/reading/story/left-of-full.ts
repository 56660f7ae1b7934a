/**
 * "Olive: had a kilo, unopened before this, 380 g left over now": of a full pack what is there no more went in. In a row
 * that names the fat first.
 */

import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsOf, weightAt } from './tale.ts';

const pack = '(?:bottle|jar|tub|tin|bag|pack|packet|block|can|carton|canister|bar)';
const fresh = '(?:unopened|new|sealed|full|fresh|unused|untouched|brand new|not opened|never opened)';
const makePattern = (): RegExp =>
  new RegExp(
    `^(?:[-•*] )?(?<f>@) (?:[:=–—-] )(?:(?:i|we|had|have|got|was|it|bought|opened|started with|started|took|with|a|an|one|the|my|${fresh}) )*(?<a>#)(?: (?:of (?:it|that)|${pack}))*(?: (?:[,;(–—-]|and|which|that|was|it|all|still))*(?: ${fresh}(?: (?:before|until|till) (?:this|now|today|then|that|i (?:began|started)))?)?(?: (?:[,;)–—-]|and|of which|but|with|now))* (?:(?:theres|there is|there are|still|only|just|about) )*(?<b>#) (?:(?:is|are|was|were|of it|still) )*(?:left(?: over)?|over|remain(?:s|ing|ed)?|leftover)(?<now>(?: (?:now|in (?:it|there)|behind|still|over|afterwards|after))*)(?= [.,;]|$| $)`,
    'd',
  );
let made: RegExp | null = null;
/** It was full, or what is left is told of afterwards: nobody tells what he has for the soap. */
const surely = new RegExp(`\\b${fresh}\\b|\\bleft over\\b|\\bleftover\\b|\\b(?:afterwards|after)\\b`);
const open = /\?|\b(?:if|should|would|could|might|may|maybe|perhaps|next|use|using|used|enough)\b/;

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('left leftover over remain remains remained remaining'.split(' '));

/** The list with what of it was used. */
export function leftOfFull(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [], unheard: null };
  if (!cut.tokens.some((token) => cues.has(spoken(token)))) return none;
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures !== 2 || sentence.names !== 1) continue;
    made ??= makePattern();
    const match = made.exec(sentence.text);
    const at = match?.indices?.groups;
    if (!match || !at || !surely.test(match[0]) || open.test(sentence.text)) continue;
    const [f, a, b] = ['f', 'a', 'b'].map((group) => sentence.tokenAt(at[group]?.[0] ?? 0)) as [number, number, number];
    const [name, whole, left] = [out[f], out[a], out[b]];
    if (!isIngredient(name)) continue;
    const value = weightAt(out, a, a) - weightAt(out, b, a);
    // a litre, less so many grams
    if (!isPlain(whole) || !isPlain(left) || Number.isNaN(value)) {
      const [begin, last] = [out[sentence.from], out[sentence.to - 1]];
      return { ...none, unheard: rawText(cut.prims, begin?.from ?? 0, last?.to ?? 0).trim() };
    }
    if (!(value > 0) || rowsOf(out, name, out.length).some(({ figure }) => figure !== a && figure !== b)) continue;
    const end = sentence.tokenAt(match.index + match[0].length - 1) + 1;
    const now = withValue(whole.quantity, value);
    for (let k = f + 1; k < end; k++) {
      const one = out[k];
      if (one && (one.t === 'word' || one.t === 'sign' || one.t === 'name')) out[k] = asFiller(one);
    }
    out[a] = { ...whole, quantity: { ...now, numbers: whole.quantity.numbers } } as Figure;
    out[b] = asAside(left, 'what is left');
    const text = `I took ${written(now)} of ${name.text}, which is ${written(whole.quantity)} less ${written(left.quantity)} that is left.`;
    told.push({ text, gone: [], from: sentence.from, to: sentence.to, settles: true });
  }
  return told.length > 0 ? { tokens: out, told, unheard: null } : none;
}

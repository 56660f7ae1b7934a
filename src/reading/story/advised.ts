/**
 * "178 g lye … Reply: bit tight, drop the lye by 5 g … I did drop it by 5 g", "she told me to cut the coconut by 50 g and I
 * did": what was advised of a row of the list, and done. Under a list that was posted before, the row is so much less or
 * more, or as it was where nobody did it; of any other one nobody knows whether it has the change already.
 */

import { once } from '../once.ts';
import { type PutRight, reweighed, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowOf, weightAt } from './tale.ts';

/** Words of which one stands where it is advised. */
const cues: ReadonlySet<string> = new Set(
  'drop reduce lower cut decrease trim take knock raise increase up bump add use put less fewer more'.split(' '),
);
const the = '(?:(?:the|your|my|that|its|of) )*';
const only = '(?:(?:down|back|only|just|about|another|an extra) )*';
const makePatterns = () => ({
  advised:
    /^(?:> )?(?:reply|answer|a|re|comment|response|advice|feedback|tip|verdict)\b[^:#@]{0,24} ?:|\b(?:told|advised|asked|suggested|recommended|said|says|suggests|recommends|advice (?:is|was)|tip (?:is|was)|advises|should|better)\b/,
  less: [
    `\\b(?:drop|reduce|lower|cut|decrease|trim) ${only}${the}(?<f>@) ${only}by ${only}(?<n>#)`,
    `\\b(?:take|knock|drop|cut) ${only}(?<n>#) (?:off|from|out of) ${the}(?<f>@)`,
    `\\b(?:use|take|put in) ${only}(?<n>#) (?:less|fewer) ${the}(?<f>@)`,
  ].map((one) => new RegExp(one, 'd')),
  more: [
    `\\b(?:raise|increase|up|bump)(?: up)? ${only}${the}(?<f>@) ${only}by ${only}(?<n>#)`,
    `\\b(?:use|take|put in|add) ${only}(?<n>#) (?:more|extra) ${the}(?<f>@)`,
  ].map((one) => new RegExp(one, 'd')),
  done: /\b(?:(?:and|so|which|that|this) )?(?:(?:i|we) (?:(?:then|also|just|duly) )*(?:did|have done|followed|obeyed|listened)\b(?! (?:not|nt|nothing|the (?:rest|same)|it anyway)\b)|(?:ive|weve) done (?:that|so|it)\b|did (?:that|so|as told)\b|done that\b|(?:i|we) (?:(?:then|have) )*(?:dropped|reduced|lowered|cut|took|increased|raised|upped|added) (?:it|that|them)\b)/,
  not: /\b(?:didnt|did not|havent|have not|wont|not yet|never|ignored|kept it|left it|should i|shall i|if|would|next time)\b/,
});
const patterns = once(makePatterns);
/** Sentences behind the advice in which it is done, at the most. */
const soon = 3;

/** A list that stands in a post of before, with what was replied. */
const reply = /^(?:> )?(?:reply|answer|a|re|comment|response|feedback|verdict)\b[^:#@]{0,24} ?:/;

/** It is only asked about. */
const shall =
  /\b(?:should|shall|must|do) (?:i|we)\b[^#@]{0,16}\?|\b(?:is (?:that|he|she|this)|are they)\b[^#@]{0,20}\?/;

/** Where the same is said again of what was done. */
const againAt = (tokens: readonly Token[], { from, to }: Sentence, figure: number): number => {
  for (let k = Math.max(from, figure + 1); k < to; k++)
    if (weightAt(tokens, k, figure) === weightAt(tokens, figure, figure)) return k;
  return -1;
};

/** The list with the row as it is since. */
export function advised(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || sentence.figures === 0) continue;
    const { advised: says, less, more, done, not } = patterns();
    const { text } = sentence;
    if (text.includes('?') || !says.test(text)) continue;
    const sign = less.some((one) => one.test(text)) ? -1 : 1;
    const found = [...less, ...more].map((one) => one.exec(text)).find((one) => one !== null);
    const groups = found?.indices?.groups;
    if (!found || !groups?.['f'] || !groups['n']) continue;
    const [at, figure] = [sentence.tokenAt(groups['f'][0]), sentence.tokenAt(groups['n'][0])];
    const name = tokens[at];
    const row = isIngredient(name) ? rowOf(tokens, name, sentence.from) : null;
    const [weight, by] = [tokens[row?.figure ?? -1], tokens[figure]];
    if (!row || !isPlain(weight) || !isPlain(by) || !isIngredient(name)) continue;
    const told = [text.slice(found.index), ...sentences.slice(k + 1, k + 1 + soon).map((one) => one.text)];
    const n = told.findIndex((one) => done.test(one));
    if (reply.test(text) && told.slice(1, n < 0 ? undefined : n + 1).some((one) => not.test(one) || shall.test(one))) {
      const out = [...tokens];
      out[figure] = setApart(by, 'advised');
      out[at] = asFiller(name);
      const note = `I left out what was advised of ${name.text}, as nobody did it.`;
      const { from, to } = sentence;
      return { tokens: out, told: [{ text: note, gone: [by.quantity], from, to, settles: true }] };
    }
    if (n < 0 || told.slice(0, n + 1).some((one) => not.test(one))) continue;
    const deed = sentences[k + n] ?? sentence;
    const value = weight.quantity.value + sign * weightAt(tokens, figure, row.figure);
    const again = n > 0 ? againAt(tokens, deed, figure) : -1;
    if (!(value > 0)) continue;
    const end = Math.max(figure, deed.to - 1);
    if (!reply.test(text))
      return { ...none, unheard: rawText(cut.prims, tokens[sentence.from]?.from ?? 0, (tokens[end] ?? by).to) };
    const out = [...tokens];
    out[row.figure] = reweighed(weight, value);
    out[at] = asFiller(name);
    const gone = [by.quantity];
    out[figure] = setApart(by, 'advised');
    const same = tokens[again];
    if (isPlain(same)) {
      out[again] = setApart(same, 'advised');
      gone.push(same.quantity);
    }
    const note: PutRight = {
      text: `I took ${withValue(weight.quantity, value).text} of ${name.text}, ${written(by.quantity)} ${sign < 0 ? 'less' : 'more'} than listed, as was advised and done.`,
      gone,
      from: sentence.from,
      to: deed.to,
      settles: true,
    };
    return { tokens: out, told: [note] };
  }
  return none;
}

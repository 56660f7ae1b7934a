/**
 * "The KOH is 90 % pure (bag is 2 kg, I used 203 g of it)", "my soda comes in a 1 kg tub and I took 95 g of that": the
 * size of a pack, and what was taken of it. The second is what goes in, where what was named last has no weight besides.
 */
import { packed } from '../columns/columns.ts';
import { once } from '../once.ts';
import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient, isMeasured, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { apart, isPlain, rowsOf } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'used took weighed taken poured tipped measured scooped went gone'.split(' '),
);
const pack = '(?:bag|tub|jar|tin|can|bottle|box|pack|packet|bucket|canister|container|sack|carton|drum|jug|block)';
const size = `(?:\\b${pack} ?(?:(?:is|was|holds|held|has|of|with|says|,|:) )*(?<a>#)|(?<b>#) ${pack}\\b)`;
const took =
  '\\b(?:used|took|weighed|taken|poured|tipped|measured|scooped)(?: (?:out|off|only|just|about|exactly|in|me))*';
const patterns = once(() =>
  [
    `${size}[^#@?.!]{0,40}?${took} (?<n>#) (?:of|out of|off|from) (?:it|that|this|there|the ${pack})\\b`,
    `${size}[^#@?.!]{0,40}?\\b(?:of|out of|from) (?:it|that|this|which|there) (?:(?:i|we|ive|have|then|just) )*${took} (?<n>#)`,
    `\\b(?:from|out of|of) (?:the|my|a|an|this|our|that)(?: (?:new|old|full|big|opened))* ${size} ?(?:(?:i|we|ive|have|then|just|,|there) )*${took} (?<n>#)`,
    `${size}[^#@?.!]{0,24}?(?<n>#) (?:of|out of|from) (?:it|that|this) (?:(?:was|were|got) )?(?:used|taken|went in|gone in|is in)\\b`,
  ].map((pattern) => new RegExp(pattern, 'd')),
);
const open =
  /\?|\b(?:if|should|would|could|might|may|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|always|never|not|didnt|already|yesterday|other|for (?:the|a|another) (?:drain|sink|batch|soap))\b/;
/** The one in which it is named, and the bracket behind it. */
const told = 2;
const weighable = /^(?:fat|alkali)$/;

/** The list with what was taken of the pack beside its name. */
export function ofItsPack(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    const story = joinedAt(sentences, k, told);
    const found = patterns()
      .map((pattern) => pattern.exec(story.text))
      .find((match) => match !== null);
    const groups = found?.indices?.groups;
    const place = groups?.['a']?.[0] ?? groups?.['b']?.[0];
    if (!found || !groups?.['n'] || place === undefined || open.test(found[0])) continue;
    const [whole, taken] = [story.tokenAt(place), story.tokenAt(groups['n'][0])];
    const start = story.tokenAt(found.index);
    let at = start - 1;
    while (at >= story.from && !isIngredient(tokens[at])) at--;
    const [name, weight, holds, mark] = [tokens[at], tokens[taken], tokens[whole], tokens[taken - 1]];
    // "from the 1 kg bag I took 150 g shea"
    const isNamed = [taken + 1, taken + 2].some((n) => isIngredient(tokens[n])) && !endsDotted(weight);
    if (isNamed && !/ (?:of|from|off) \S+(?: \S+)? ?$/.test(found[0])) continue;
    if (at < story.from || !isIngredient(name) || !weighable.test(name.meaning.kind)) continue;
    if (
      !isPlain(weight) ||
      !isMeasured(weight) ||
      !isMeasured(holds) ||
      (mark?.t !== 'word' && tokens[at + 1]?.t !== 'word')
    )
      continue;
    if (weight.quantity.value >= holds.quantity.value || rowsOf(tokens, name, tokens.length).some(isOther)) continue;
    const out = [...tokens];
    out[whole] = asAside(holds as Figure, packed);
    const next = tokens[at + 1];
    // "the KOH is 90 % pure": its share stays beside it
    if (next?.t === 'word') {
      out[at + 1] = { ...weight, from: next.from, to: next.to };
      apart(out, taken, 'said before', at + 1);
    } else if (mark) {
      out[at] = asFiller(name);
      out[taken - 1] = { ...name, from: mark.from, to: mark.to };
    }
    for (let n = start; n < taken; n++) if (tokens[n]?.t === 'name' && n !== at) out[n] = asFiller(tokens[n] as Token);
    const text = `I took ${written(weight.quantity)} of ${name.text}, what was taken of its pack.`;
    return { tokens: out, told: [{ text, gone: [], from: start, to: taken + 1, settles: true }] };

    function isOther({ figure }: { readonly figure: number }): boolean {
      return figure !== whole && figure !== taken;
    }
  }
  return none;
}

/**
 * "The card says 250 g water but I used frozen goat milk instead, same weight", "250 g water, only I took beer for it": what
 * weighs so much is the other liquid.
 */

import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, type Name } from './tale.ts';

const cues: ReadonlySet<string> = new Set(['instead', 'for', 'place']);
const light = '(?:(?:the|my|some|only|frozen|fresh|cold|flat|thawed|chilled|plain|full|whole|of|just) )*';
const swapped = new RegExp(
  `(?:(?<a>#) (?:of )?${light}(?<w>W)|(?<v>W) ?[:=(,–-]? ?(?<b>#)) ?[).,;–-]* ?(?:but|only|though|and|except|instead)? ?(?:that )?(?:i|we)(?:'ve|ve)? ?(?:have |had |then |just |actually |really )*(?:used|took|put in|poured in|went with|swapped in|weighed|made it with) ${light}(?:(?<o>#) (?:of )?${light})?(?<m>M) ?(?:(?<q>#) ?)?(?:[(,–-] ?)?(?:(?:the )?same (?:weight|amount|grams|quantity) ?[),]? ?)?(?:instead\\b|for (?:it|that|this)\\b|in (?:its|the|that) place\\b)`,
  'd',
);
const open =
  /\?|\b(?:if|would|could|might|maybe|perhaps|next|last (?:time|batch)|usually|normally|half|part|some of|rest|or|tried|want|once)\b/;

/** The list with that liquid in the place of the water. */
export function liquidInstead(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const kindOf = (token: Token | undefined): string => (isIngredient(token) ? token.meaning.kind : '');
  if (!tokens.some((token) => cues.has(spoken(token))) || !tokens.some((token) => kindOf(token) === 'liquid'))
    return none;
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures === 0 || sentence.names < 2 || open.test(sentence.text)) continue;
    const text = sentence.text.replace(/@/g, (_, place: number) => {
      const kind = kindOf(tokens[sentence.tokenAt(place)]);
      return kind === 'water' ? 'W' : kind === 'liquid' ? 'M' : 'X';
    });
    const found = swapped.exec(text);
    const at = (...groups: readonly string[]): number =>
      sentence.tokenAt(
        groups.map((group) => found?.indices?.groups?.[group]?.[0]).find((one) => one !== undefined) ?? 0,
      );
    if (!found) continue;
    const [water, milk, figure] = [at('w', 'v'), at('m'), at('a', 'b')];
    const [gone, comes, weight] = [tokens[water], tokens[milk], tokens[figure]];
    if (!isPlain(weight)) continue;
    const { from, to } = gone as Name;
    const own = found.groups?.['o'] || found.groups?.['q'] ? tokens[at('o', 'q')] : undefined;
    if (own && !isPlain(own)) continue;
    const out = tokens.map((token, k) => {
      if (own)
        return k === water ? asFiller(token) : k === figure ? asAside(weight, 'replaced, as the post says') : token;
      return k === water ? { ...(comes as Name), from, to } : k === milk ? asFiller(token) : token;
    });
    const said = `I took ${(isPlain(own) ? own : weight).quantity.text} of ${(comes as Name).text} in the place of ${(gone as Name).text}, as the post says.`;
    return { tokens: out, told: [{ text: said, gone: [], from: sentence.from, to: sentence.to, settles: true }] };
  }
  return none;
}

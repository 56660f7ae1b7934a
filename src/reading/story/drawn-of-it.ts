/**
 * "There was half a litre of goat milk, I froze it, 250 g of this took the lye", "I had a litre of milk, 250 g of it went
 * in": a liquid, or what a vessel of so many litres held, of which a part by its weight is in the pot.
 */
import { once } from '../once.ts';
import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { isPlain, rowsOf } from './tale.ts';

const went =
  '(?:went|goes|go|gone|came|comes|took|take|takes|used|use|using|poured|put|weighed|is in|are in|was in|were in|made it|were for|was for|is for|are for)';
const patterns = once(() =>
  [
    `(?<w>#) (?:of )?(?:(?:the|my|fresh|cold|good|raw) )*(?<x>@)(?<mid>[^#@?]{0,90}?)(?<p>#) (?:of|from|out of) (?:it|this|that|them|these|those|which|the (?:milk|beer|juice|tea|oil|fat|can|carton|bottle))(?<end>[^#?;.]{0,50})`,
    `(?<w>#) (?:of )?(?:(?:the|my|fresh|cold|good|raw) )*(?<x>@)(?<mid>[^#@?]{0,60}?)(?:of|from|out of) (?:it|this|that|them|these|those|which) (?<verb>(?:[a-z]+ ){0,3})(?<p>#)(?<end>[^#?;.]{0,50})`,
  ].map((pattern) => new RegExp(pattern, 'd')),
);
const into = new RegExp(`\\b${went}\\b`);
const away =
  /\b(?:if|should|would|could|next|last (?:time|batch)|freezer|fridge|friend|neighbour|kept|keep|left|over|spil\w*|lost|drank|drunk|gave|given|away|back|cat|dog|coffee|cake|tomorrow|later|not|never|didnt|half|replac\w*|instead)\b/;
/** Sentences that tell it, at the most. */
const most = 3;

/** The list with the part that is in the pot. */
export function drawnOfIt(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => /^(?:of|from)$/.test(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || sentence.names === 0) continue;
    const story = joinedAt(sentences, k, most);
    for (const pattern of patterns()) {
      const found = pattern.exec(story.text);
      const at = found?.indices?.groups;
      if (!found || !at || found.index >= story.turn) continue;
      const { mid = '', verb = '', end = '' } = found.groups ?? {};
      if (away.test(mid) || away.test(verb) || away.test(end) || !into.test(`${verb} ${end} ${lastOf(mid)}`)) continue;
      const [w, x, p] = ['w', 'x', 'p'].map((group) => story.tokenAt(at[group]?.[0] ?? 0)) as [number, number, number];
      const drawn = drawnAt(tokens, w, x, p);
      if (drawn) return drawn;
    }
  }
  return none;
}

/** "…, and used": the words right ahead of a figure. */
const lastOf = (mid: string): string => mid.trim().split(' ').slice(-2).join(' ');

const isMeasure = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'volume' && token.quantity.upTo === null;

function drawnAt(tokens: readonly Token[], w: number, x: number, p: number): Heard | null {
  const [whole, name, part] = [tokens[w], tokens[x], tokens[p]];
  if (!isIngredient(name) || !isPlain(part)) return null;
  const isLiquid = name.meaning.kind === 'liquid';
  if (!(isMeasure(whole) && (isLiquid || isFat(name))) && !(isLiquid && isPlain(whole))) return null;
  if (isPlain(whole) && !(part.quantity.value < whole.quantity.value)) return null;
  if (rowsOf(tokens, name, tokens.length).some(({ figure }) => figure !== w && figure !== p)) return null;
  const out = [...tokens];
  out[w] = { ...whole, quantity: { ...part.quantity, numbers: whole.quantity.numbers } };
  out[p] = asAside(part, 'said before');
  // "took the lye" is no weight of it
  for (let k = x + 1; k <= p + mostBehind; k++) {
    const token = out[k];
    if (token?.t === 'name' && (k < p || thingOf(token) !== thingOf(name))) {
      if (tokens[k + 1]?.t !== 'quantity' && (k < p || tokens[k - 1]?.t !== 'quantity')) out[k] = asFiller(token);
    }
    if (k > p && token?.t !== 'word' && token?.t !== 'name' && token?.t !== 'aside') break;
  }
  const text = `I took ${written(part.quantity)} of ${name.text}, of the ${written(whole.quantity)} that there was, as the post says.`;
  return { tokens: out, told: [{ text, gone: [], from: w, to: p + 1, settles: true }] };
}
const mostBehind = 6;

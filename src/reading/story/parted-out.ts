/**
 * A weight that is parted between the soap and something else: "1 kg tallow. Of that, 150 g for the candle, 850 g for the
 * soap", "150 g of it went into a candle, the rest is in the soap". What is for the soap counts; what is said to be for
 * the other thing, too, is none of the recipe: "30 g beeswax, also the candle".
 */

import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient, isPot, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { joinedAt, type Story } from './story.ts';
import { hush, isPlain, type Name, rowsOf, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('for into in to went goes'.split(' '));

const soap = '(?:soap|soaps|soaping|batch|recipe|pot|loaf|this|mou?ld)';
const goes =
  '(?:(?:is|was|are|were|goes|went|go|will|be|meant|that|which|i|we|used|took|put|use|take|ended up|only|just|,) )*';
const goal = `(?:for|in|into|to|as)(?: (?:the|my|a|an|some|this|our|making))* `;
const toSoap = new RegExp(`^ ${goes}(?:${goal}${soap}|here|in here)\\b`);
const toOther = new RegExp(`^ ${goes}${goal}(?<goal>(?!${soap}\\b)[a-z]+)`);
const ofIt = '(?:of (?:it|that|this|them|those|which|the @)|out of (?:it|that)|from (?:it|that|this))';
/** "Of that, # for the candle, # for the soap", "# of it for a candle and # for the soap". */
const parted = new RegExp(
  `#[^@#?]{0,30}@[^@#?]{0,30}\\b${ofIt}(?: [,:])? (?<first>#)(?<p>[^@#?.;]{2,50}?)(?:[,;&+] |and |then )+(?:the (?:other |remaining )?)?(?:(?<second>#)|rest|remainder)(?: of (?:it|that))?(?<q>[^@#?.;]{2,50})|#[^@#?]{0,30}@[^@#?]{0,16}(?<first2>#) ${ofIt.replace('the @', 'the same')}(?<p2>[^@#?.;]{2,50}?)(?:[,;&+] |and |then )+(?:the (?:other |remaining )?)?(?:(?<second2>#)|rest|remainder)(?: of (?:it|that))?(?<q2>[^@#?.;]{2,50})|\\bof (?:the )?# (?:of )?@[^@#?]{0,12}(?<first3>#)(?<p3>[^@#?.;]{2,50}?)(?:[,;&+] |and |then )+(?:the (?:other |remaining )?)?(?:(?<second3>#)|rest|remainder)(?: of (?:it|that))?(?<q3>[^@#?.;]{2,50})`,
  'd',
);
const open = /\?|\b(?:if|next|usually|normally|last (?:time|batch|year)|after the cook|half|trace)\b/;

interface Parts {
  readonly name: number;
  readonly whole: number;
  /** What is for the soap; -1 for the rest. */
  readonly own: number;
  readonly other: number;
  readonly goal: string;
  readonly from: number;
  readonly to: number;
}

function partsAt(tokens: readonly Token[], story: Story): Parts | null {
  const match = parted.exec(story.text);
  const groups = match?.indices?.groups;
  if (!match || !groups || match.index >= story.turn || open.test(match[0])) return null;
  const kind = ['', '2', '3'].find((one) => groups[`first${one}`]);
  const [p = '', q = ''] = [match.groups?.[`p${kind}`], match.groups?.[`q${kind}`]];
  const places = [groups[`first${kind}`], groups[`second${kind}`]].map((one) => (one ? story.tokenAt(one[0]) : -1));
  const [first = -1, second = -1] = places;
  const isFirst = toSoap.test(p);
  const other = (isFirst ? toOther : toOther).exec(isFirst ? q : p);
  if (!other || !(isFirst ? toOther.test(q) : toSoap.test(q)) || (isFirst && second < 0)) return null;
  const from = story.tokenAt(match.index);
  let [name, whole] = [first - 1, -1];
  while (name >= from && !isIngredient(tokens[name])) name--;
  for (let k = first - 1; k >= from && whole < 0; k--) if (isPlain(tokens[k])) whole = k;
  if (name < from || whole < 0) return null;
  const to = story.tokenAt(match.index + match[0].length - 1) + 1;
  return {
    name,
    whole,
    own: isFirst ? first : second,
    other: isFirst ? second : first,
    goal: other.groups?.['goal'] ?? '',
    from,
    to,
  };
}

/** The list with that part of it. */
export function partedOut(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || sentence.names === 0) continue;
    const found = partsAt(tokens, joinedAt(sentences, k, 2));
    if (!found) continue;
    const { name, whole, own, other, from, to } = found;
    const [thing, all, part] = [tokens[name] as Name, tokens[whole] as Figure, tokens[other]];
    const weights = [whole, other, own].map((at) => weightAt(tokens, at, whole)) as [number, number, number];
    const value = own < 0 ? weights[0] - weights[1] : weights[2];
    if (!isPlain(part) || !(value > 0) || weights[1] + value > 1.001 * weights[0]) continue;
    if (rowsOf(tokens, thing, tokens.length).some(({ figure }) => ![whole, other, own].includes(figure))) continue;
    out ??= [...tokens];
    for (let at = Math.max(name, whole) + 1; at < to; at++) {
      const token = out[at];
      if (token?.t === 'quantity') out[at] = asAside(token, 'a part of what was said');
      else if (token?.t === 'word' || (token?.t === 'name' && at !== name)) out[at] = asFiller(token);
    }
    const now = withValue(all.quantity, value);
    out[whole] = { ...all, quantity: { ...now, numbers: all.quantity.numbers } };
    for (let at = from; at < name; at++) if (isPot(out[at])) out[at] = asFiller(out[at] as Token);
    told.push({
      text: `I took ${written(now)} of ${thing.text}, not ${written(all.quantity)}, the part that is for the soap as the post says.`,
      gone: [all.quantity],
      from: Math.min(name, whole),
      to,
      settles: true,
    });
    // "30 g beeswax, also the candle"
    for (const one of sentences) {
      if (one.from < to || one.names !== 1 || one.figures !== 1) continue;
      const isFor = new RegExp(
        `\\b(?:for|in|into|also|too|same)\\b(?: (?:for|in|into|the|my|a|same))* ${found.goal}\\b`,
      );
      if (!isFor.test(one.text) || new RegExp(`\\b${soap}\\b|\\?`).test(one.text)) continue;
      if (isAny(out, one.from, one.to, (token) => isIngredient(token) && /^(?:alkali|water)$/.test(token.meaning.kind)))
        continue;
      hush(out, one.from, one.to, 'for something else');
    }
  }
  return { tokens: out ?? tokens, told };
}

/**
 * "Only 310 g olive was left, so the missing 90 g I completed by sunflower", of 400 g in the list: two weights that make up
 * the one of the row tell, whatever the words, how much of it was there and how much of another fat came for the rest.
 */
import { alike, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { areOne, mentionsAt } from './mentions.ts';
import { hush, isPlain, isSum, type Name, rowsBefore } from './tale.ts';

const short =
  /\b(?:only|just|left|finished|ended|empty|missing|rest|remain\w*|other|difference|short|lacking|lacked|ran out|no more|complet\w*|filled|fill|topped|made up|additional\w*|instead|took|used|put|is|are)\b/;
const open =
  /\?(?! ?$)|\b(?:if|should|would|could|can|may|might|maybe|perhaps|next|last (?:time|batch)|usually|normally|always|she|he|they|her|his|sister|friend|about|around|roughly|thinking|planned|planning|swap\w*|chang\w*|replac\w*|exchang\w*|substitut\w*|switch\w*)\b/;

/** The list with both. */
export function filledBy(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  let rows: readonly Weighed[] | null = null;
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    for (const count of [1, 2]) {
      rows ??= rowsBefore(tokens, tokens.length);
      const story = mentionsAt(tokens, rows, sentences, k, count);
      if (!areOne(tokens, story.listed) || !areOne(tokens, story.others) || /[LX]/.test(story.text)) continue;
      if (open.test(story.text.trim()) || !short.test(story.text)) continue;
      const heard = filled(tokens, rows, story);
      if (heard) return heard;
    }
  }
  return none;
}

function filled(
  tokens: readonly Token[],
  rows: readonly Weighed[],
  story: ReturnType<typeof mentionsAt>,
): Heard | null {
  const [f, n] = [story.listed[0] ?? -1, story.others[0] ?? -1];
  const [gone, comes] = [tokens[f] as Name, tokens[n] as Name];
  const begin = Math.max(story.from, story.since);
  const [row, ...more] = rows.filter(({ id, at }) => id === thingOf(gone) && (at < begin || at >= story.to));
  const whole = tokens[row?.figure ?? -1];
  if (!row || more.length > 0 || !isPlain(whole)) return null;
  const figures: number[] = [];
  for (let at = begin; at < story.to; at++) if (isPlain(tokens[at])) figures.push(at);
  const like = (at: number): number => {
    const { dim, value } = alike((tokens[at] as Figure).quantity, whole.quantity);
    return dim === whole.quantity.dim ? value : Number.NaN;
  };
  // the weight of the row may be said once more
  const parts = figures.filter((at) => !isSum(whole.quantity.value, like(at)));
  const [a, b] = parts;
  if (a === undefined || b === undefined || parts.length !== 2) return null;
  if (!isSum(whole.quantity.value, like(a), like(b))) return null;
  const isOf = (name: number, at: number): number => Math.abs(name - at);
  const [own, other] = isOf(f, a) + isOf(n, b) <= isOf(f, b) + isOf(n, a) ? [a, b] : [b, a];
  if (n < f && own !== Math.max(a, b)) return null;
  const out = [...tokens];
  hush(out, begin, story.to, 'said before');
  for (let at = begin; at < story.to; at++) {
    const token = out[at];
    if (token?.t === 'word') out[at] = asFiller(token);
  }
  const now = withValue(whole.quantity, like(own));
  out[row.figure] = { ...whole, quantity: { ...now, numbers: whole.quantity.numbers } };
  // it stands beside its name
  const place = other + 1 < story.to && out[other + 1]?.t === 'word' ? other + 1 : other - 1;
  const stand = out[place];
  if (!stand || (stand.t !== 'word' && stand.t !== 'name')) return null;
  out[other] = tokens[other] as Figure;
  out[place] = { ...comes, from: stand.from, to: stand.to };
  const text = `I took ${written(now)} of ${gone.text} and ${written((tokens[other] as Figure).quantity)} of ${comes.text}, as the post says.`;
  return { tokens: out, told: [{ text, gone: [whole.quantity], from: begin, to: story.to, settles: true }] };
}

/**
 * "Only 310 g olive was left, so the missing 90 g I completed by sunflower", of 400 g in the list: two weights that make up
 * the one of the row tell, whatever the words, how much of it was there and how much of another fat came for the rest.
 */
import { alike, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { areOne, type Mentions, mentionsAt, rowsIn } from './mentions.ts';
import { hush, isPlain, isSum, type Name } from './tale.ts';

const short =
  /\b(?:only|just|left|finished|ended|empty|missing|rest|remain\w*|other|difference|short|lacking|lacked|ran out|no more|complet\w*|filled|fill|topped|made up|additional\w*|instead|took|used|put|is|are)\b/;
const open =
  /\?(?! ?$)|\b(?:if|should|would|could|can|may|might|maybe|perhaps|next|last (?:time|batch)|usually|normally|always|she|he|they|her|his|sister|friend|about|around|roughly|thinking|planned|planning|swap\w*|chang\w*|replac\w*|exchang\w*|substitut\w*|switch\w*)\b/;

/** The list with both. */
export function filledBy(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const rows = rowsIn(tokens);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    for (const count of [1, 2]) {
      const story = mentionsAt(tokens, sentences, k, count);
      const more = moreOfListed(tokens, rows, story);
      if (more) return more;
      if (!areOne(tokens, story.listed) || !areOne(tokens, story.others) || /[LX]/.test(story.text)) continue;
      if (open.test(story.text.trim()) || !short.test(story.text)) continue;
      const heard = filled(tokens, rows, story);
      if (heard) return heard;
    }
  }
  return none;
}

/** "Palm was only 210 g, so 90 g more lard", of 300 g palm and 100 g lard: both have a row. */
function moreOfListed(tokens: readonly Token[], rows: readonly Weighed[], story: Mentions): Heard | null {
  if (story.others.length > 0 || /[LX…]/.test(story.text) || open.test(story.text.trim())) return null;
  if (!/\b(?:more|extra|additional|added)\b/.test(story.text) || !short.test(story.text)) return null;
  const begin = Math.max(story.from, story.since);
  const things = [...new Set(story.listed.map((at) => thingOf(tokens[at] as Name)))];
  const own = things.map((id) => rows.filter((row) => row.id === id && (row.at < begin || row.at >= story.to)));
  const [[one] = [], [two] = []] = own;
  if (things.length !== 2 || own.some(({ length }) => length !== 1) || !one || !two) return null;
  const figures: number[] = [];
  for (let at = begin; at < story.to; at++) if (isPlain(tokens[at])) figures.push(at);
  const value = (at: number): number => {
    const [figure, like] = [tokens[at], tokens[one.figure]];
    return isPlain(figure) && isPlain(like) ? alike(figure.quantity, like.quantity).value : Number.NaN;
  };
  const found = [[one, two] as const, [two, one] as const].flatMap(([goes, comes]) =>
    figures.flatMap((a) =>
      figures.flatMap((b) => {
        const sum = value(comes.figure) + value(b);
        const rest = figures.filter((at) => at !== a && at !== b && !isSum(value(goes.figure), value(at)));
        const fits = isSum(value(goes.figure), value(a), value(b)) && rest.every((at) => isSum(sum, value(at)));
        return a !== b && fits && isBeside(tokens, b, comes.id) ? [{ goes, comes, left: value(a), sum }] : [];
      }),
    ),
  );
  const [so, ...others] = found;
  if (!so || others.length > 0) return null;
  const out = [...tokens];
  hush(out, begin, story.to, 'said before');
  const told: string[] = [];
  for (const [row, now] of [[so.goes, so.left] as const, [so.comes, so.sum] as const]) {
    const was = tokens[row.figure];
    if (!isPlain(was)) return null;
    const quantity = withValue(was.quantity, now);
    out[row.figure] = { ...was, quantity: { ...quantity, numbers: was.quantity.numbers } };
    told.push(`${written(quantity)} of ${(tokens[row.at] as Name).text}`);
  }
  const text = `I took ${told.join(' and ')}, as the post says.`;
  return { tokens: out, told: [{ text, gone: [], from: begin, to: story.to, settles: true }] };
}

/** The figure stands beside that name: "90 g more lard", "90 g with extra lard". */
function isBeside(tokens: readonly Token[], figure: number, id: string): boolean {
  for (let at = figure + 1; at - figure <= mostBeside; at++) {
    const token = tokens[at];
    if (token?.t === 'quantity' || token === undefined) return false;
    if (token.t === 'name' && isFat(token)) return thingOf(token) === id;
  }
  return false;
}
const mostBeside = 6;

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
  // named first, it is weighed first
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

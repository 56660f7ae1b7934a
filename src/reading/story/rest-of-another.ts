/**
 * "I had 900 g of olive in plan but only 780 g at home, the rest I fill with sunflower", "olive was 780 g, rest sunflower": the
 * other fat has no weight of its own, and is what the row lacks.
 */
import { alike, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { rowsIn } from './mentions.ts';
import { isPlain, type Name } from './tale.ts';

const rest = /^(?:rest|remainder|missing|difference|remaining|others?|fill(?:ed|ing)?|complet(?:ed|ing)|topped)$/;
const joins = /\b(?:rest|remainder|missing|difference|remaining|filled|fill|topped|completed)\b/;
const open =
  /\?(?! ?$)|\b(?:if|should|would|could|can|may|might|maybe|perhaps|or|next|last (?:time|batch)|usually|normally|always|she|he|they|her|his|sister|friend|about|around|roughly|half|as (?:listed|planned|written|before|in the)|same|stays?|unchanged|scent\w*|fragrance)\b/;
/** Tokens between the word for the rest and what it is, at the most. */
const reach = 7;

/** The list with both. */
export function restOfAnother(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => rest.test(spoken(token)))) return none;
  const rows = rowsIn(tokens);
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || !joins.test(sentence.text) || open.test(sentence.text)) continue;
    for (let t = sentence.from; t < sentence.to; t++) {
      if (!rest.test(spoken(tokens[t]))) continue;
      const n = otherAfter(tokens, rows, t, sentence.to);
      const begin = tokens.slice(sentence.from, t).some((token) => isPlain(token))
        ? sentence.from
        : (sentences[k - 1]?.from ?? sentence.from);
      const found = n < 0 ? null : shortIn(tokens, rows, begin, t, thingOf(tokens[n] as Name));
      if (found) return filled(tokens, found, t, n, sentence.to);
    }
  }
  return none;
}

/** The fat that is named behind, and weighed nowhere; -1 for none, or for two. */
function otherAfter(tokens: readonly Token[], rows: readonly Weighed[], t: number, to: number): number {
  const near: number[] = [];
  for (let at = t + 1; at < to && at - t <= reach; at++) {
    if (tokens[at]?.t === 'quantity') return -1;
    if (isIngredient(tokens[at])) near.push(at);
  }
  // "sunflower for the rest"
  if (near.length === 0) for (let at = t - 1; at >= 0 && t - at <= 3; at--) if (isIngredient(tokens[at])) near.push(at);
  const [n, ...more] = near;
  const name = tokens[n ?? -1];
  if (n === undefined || more.length > 0 || !isFat(name)) return -1;
  return rows.some(({ id }) => id === thingOf(name)) ? -1 : n;
}

interface Short {
  readonly row: Weighed;
  readonly less: number;
}

/** The row that is told to lack something before token `t`, and the figure of what there was. */
function shortIn(
  tokens: readonly Token[],
  rows: readonly Weighed[],
  begin: number,
  t: number,
  but: string,
): Short | null {
  let less = -1;
  const fats = new Set<string>();
  for (let at = begin; at < t; at++) {
    const token = tokens[at];
    if (isPlain(token)) less = at;
    if (isFat(token) && thingOf(token) !== but) fats.add(thingOf(token));
    else if (isIngredient(token) && thingOf(token) !== but) return null;
  }
  const [id] = fats;
  if (less < 0 || fats.size !== 1 || id === undefined) return null;
  const own = rows.filter((row) => row.id === id && row.figure !== less);
  const [row] = own;
  const [was, now] = [tokens[row?.figure ?? -1], tokens[less]];
  if (!row || own.length !== 1 || !isPlain(was) || !isPlain(now)) return null;
  const { dim, value } = alike(now.quantity, was.quantity);
  return dim === was.quantity.dim && value < was.quantity.value && value > least * was.quantity.value
    ? { row, less }
    : null;
}
const least = 0.3;

function filled(tokens: readonly Token[], { row, less }: Short, t: number, n: number, to: number): Heard {
  const [was, now, of, comes] = [tokens[row.figure], tokens[less], tokens[row.at], tokens[n]] as [
    Figure,
    Figure,
    Name,
    Name,
  ];
  const there = alike(now.quantity, was.quantity);
  const missing = withValue(was.quantity, was.quantity.value - there.value);
  const out = [...tokens];
  for (let at = Math.max(row.at, row.figure) + 1; at < to; at++) {
    const token = out[at];
    const isOfIt = isFat(token) && /^(?:fat)$/.test(token.meaning.kind) && (thingOf(token) === row.id || at === n);
    if (token?.t === 'word' || isOfIt) out[at] = asFiller(token as Name);
  }
  out[row.figure] = { ...was, quantity: { ...there, numbers: was.quantity.numbers } };
  out[less] = asAside(now, 'said of what was there');
  const [stand, next] = [tokens[t] as Token, tokens[t + 1] as Token];
  const isRoom = next.t === 'word' || t + 1 === n;
  out[t] = {
    t: 'quantity',
    from: stand.from,
    to: stand.to,
    quantity: { ...missing, upTo: null, numbers: [], inWords: true },
  };
  out[isRoom ? t + 1 : t - 1] = {
    ...comes,
    from: (isRoom ? next : (tokens[t - 1] as Token)).from,
    to: (isRoom ? next : (tokens[t - 1] as Token)).to,
  };
  const text = `I took ${written(there)} of ${of.text} and ${missing.text} of ${comes.text} for the rest, as the post says.`;
  return { tokens: out, told: [{ text, gone: [was.quantity], from: Math.min(less, t), to, settles: true }] };
}

/** A story of one fat of the list and one smaller weight, which the row has from then on. */
import { alike, written } from '../taken-back/put-right.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { areOne, type Mentions, rowsIn } from './mentions.ts';
import { isPlain, isSum, type Name } from './tale.ts';

export interface LessOfRow {
  readonly row: Weighed;
  /** Where the smaller weight stands, as often as it is said. */
  readonly said: readonly number[];
  readonly begin: number;
}

/** The row and its smaller weight, of which `least` of the old one is left; null for another story. */
export function lessOfRow(tokens: readonly Token[], story: Mentions, least: number): LessOfRow | null {
  if (!areOne(tokens, story.listed) || story.others.length > 0 || /[LX…]/.test(story.text)) return null;
  const begin = Math.max(story.from, story.since);
  const id = thingOf(tokens[story.listed[0] ?? -1] as Name);
  const own = rowsIn(tokens).filter((row) => row.id === id && (row.at < begin || row.at >= story.to));
  const [row] = own;
  const was = tokens[row?.figure ?? -1];
  if (!row || own.length > 1 || !isPlain(was)) return null;
  const value = (at: number): number => {
    const now = alike((tokens[at] as Figure).quantity, was.quantity);
    return now.dim === was.quantity.dim ? now.value : Number.NaN;
  };
  const said: number[] = [];
  for (let at = begin; at < story.to; at++)
    if (isPlain(tokens[at]) && !isSum(was.quantity.value, value(at))) said.push(at);
  const [first] = said;
  if (first === undefined || said.some((at) => !isSum(value(first), value(at)))) return null;
  const now = value(first);
  return now < was.quantity.value && now > least * was.quantity.value ? { row, said, begin } : null;
}

/** The list with the smaller weight; `why`: behind "I took 180 g of coconut, not 200 g, ". */
export function withLess(tokens: readonly Token[], { row, said, begin }: LessOfRow, to: number, why: string): Heard {
  const [was, of, less] = [tokens[row.figure] as Figure, tokens[row.at] as Name, tokens[said[0] ?? -1] as Figure];
  const now = alike(less.quantity, was.quantity);
  const out = [...tokens];
  out[row.figure] = { ...was, quantity: { ...now, numbers: was.quantity.numbers } };
  for (let at = begin; at < to; at++) {
    const token = out[at];
    if (token?.t === 'quantity') out[at] = asAside(token, 'said before');
    else if (token?.t === 'name') out[at] = asFiller(token);
  }
  const text = `I took ${written(now)} of ${of.text}, not ${written(was.quantity)}, ${why}.`;
  return { tokens: out, told: [{ text, gone: [was.quantity], from: begin, to, settles: true }] };
}

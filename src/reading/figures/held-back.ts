/**
 * A part of a fat that stays out of the pot till after the cook: "500 g olive, 30 g of it held back for after the cook".
 * What is cooked is the rest.
 */
import type { ReadAmount } from '../reading.ts';
import { type Assembly, label, type Row, roundTo } from '../recipe/rows.ts';
import type { Signals } from '../words/signals.ts';
import {
  isAny,
  isIngredient,
  isMark,
  isRole,
  isStop,
  isWeight,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

/** Tokens of a sentence to each side of a figure, at the most. */
const reach = 24;
const pronoun = /^(?:it|that|them|which|those|this)$/;
/** It comes out of the weight that was said. */
const keeping =
  /^(?:held|hold|holds|holding|kept|keep|keeps|keeping|reserve|reserved|reserving|save|saved|saving|withheld|withhold|back|aside|thereof)$/;
/** It goes in on top of that weight. */
const more = /^(?:another|extra|more|additional|plus|additionally|further|top)$/;

const fractions: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };

const isLater = (one: Token): boolean => isRole(one, 'after');

type Name = Extract<Token, { t: 'name' }>;

/** The fat named last before token `k` that was weighed; -1 where something else was. */
function fatBefore(tokens: readonly Token[], k: number): number {
  for (let at = k - 1; at >= 0 && k - at <= reach; at--) {
    const token = tokens[at];
    if (token?.t !== 'name' || token.meaning.kind === 'role') continue;
    return token.meaning.kind === 'fat' ? at : -1;
  }
  return -1;
}

/** "30 g of it", "of which 30 g": where the word for it stands; -1 where none does. */
function wordForIt(tokens: readonly Token[], k: number): number {
  // "40 g of that olive" names it
  if (wordAt(tokens, k + 1) === 'of' && pronoun.test(wordAt(tokens, k + 2)))
    return isIngredient(tokens[k + 3]) ? -1 : k + 2;
  for (let at = k - 1; at > 0 && k - at <= 6; at--) {
    if (isStop(tokens[at]) || tokens[at]?.t === 'quantity') return -1;
    if (!pronoun.test(wordAt(tokens, at)) || wordAt(tokens, at - 1) !== 'of') continue;
    // "6 % of those 1000 g": the whole itself
    return at === k - 1 && /^th/.test(wordAt(tokens, at)) ? -1 : at;
  }
  return -1;
}

/** "Of it", said of a fat, as that fat's name where the sentence tells that the part goes in after the cook. */
export function heldBack(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  if (!tokens.some(isLater)) return tokens;
  let out: Token[] | null = null;
  const parts = tokens.flatMap((_, k) => (fractions[wordAt(tokens, k)] && wordAt(tokens, k + 1) === 'of' ? [k] : []));
  for (const k of [...figures, ...parts]) {
    const part = fractions[wordAt(tokens, k)];
    if (!isWeight(tokens[k]) && part === undefined) continue;
    const it = wordForIt(tokens, k);
    if (it < 0) continue;
    const { from, to } = clauseAt(tokens, k);
    if (!isAny(tokens, from, to, isLater)) continue;
    const named = fatBefore(tokens, Math.min(it, k));
    const [fat, place, word] = [tokens[named], tokens[it], tokens[k]];
    if (fat?.t !== 'name' || !place || !word) continue;
    if (part !== undefined) {
      const whole = [tokens[named - 1], tokens[named + 1], tokens[named - 2]].find(isWeight);
      if (!whole) continue;
      const { quantity } = whole;
      const half = {
        ...quantity,
        value: quantity.value * part,
        upTo: null,
        other: null,
        text: wordAt(tokens, k),
        numbers: [],
      };
      out ??= [...tokens];
      out[k] = { ...whole, from: word.from, to: word.to, quantity: half };
    }
    const name: Name = { ...fat, from: place.from, to: place.to };
    out ??= [...tokens];
    out[it] = name;
  }
  return out ?? tokens;
}

/** The sentence around a figure, or the bracket in it. */
function clauseAt(tokens: readonly Token[], k: number): { readonly from: number; readonly to: number } {
  const sentence = sentenceAt(tokens, k, reach);
  let [from, to] = [k, k];
  while (from > sentence.from && !isMark(tokens[from - 1], '()')) from--;
  while (to < sentence.to && !isMark(tokens[to], '()')) to++;
  return { from, to };
}

/** What goes in after the cook is told as a part of what was weighed. */
function isPart(source: Assembly['source'], { token }: Row): boolean {
  const { tokens } = source;
  const name = tokens[token];
  if (name?.t === 'name' && name.late) return false;
  const { from, to } = clauseAt(tokens, token);
  const words = tokens.slice(from, to).map(spoken);
  if (words.some((word) => more.test(word))) return false;
  const isOfThe = (word: string, k: number): boolean =>
    (word === 'of' || word === 'from') &&
    /^(?:the|my|that|this)$/.test(words[k + 1] ?? '') &&
    namesFat(tokens[from + k + 2]);
  return (
    words.some((word, k) => word.split(' ').some((one) => keeping.test(one)) || isOfThe(word, k)) ||
    isOfIt(source, token)
  );
}

const namesFat = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'fat';

/** The name stands for "it", so that no name is written there. */
const isOfIt = ({ tokens, prims }: Assembly['source'], at: number): boolean =>
  /^(?:it|that|them|which|those|this|other|remaining|last|rest)$/.test(prims[tokens[at]?.from ?? -1]?.text ?? '');

/** "After the cook: shea 50 g", and in the steps below "the 50 g shea": what is told again goes in when it was said to. */
export function lateAgain(tokens: readonly Token[], rows: readonly Row[]): readonly Row[] {
  const late = new Map<string, number | null>();
  return rows.map((row) => {
    const { id } = row.named.meaning;
    if (row.after) late.set(id, row.grams);
    if (row.after || !row.amount || late.get(id) !== row.grams) return row;
    const near = tokens.slice(Math.max(0, row.token - beside), row.token + beside);
    const figure = near.findIndex((token) => token.t === 'quantity' && token.quantity === row.amount);
    return /^(?:the|that|those|your|my)$/.test(spoken(near[figure - 1])) ? { ...row, after: true } : row;
  });
}
/** Tokens between a name and its amount, at the most. */
const beside = 6;

/** The fats that are cooked, without what is kept of them for after the cook. */
export function withoutHeld(
  assembly: Assembly,
  fats: readonly ReadAmount[],
  after: readonly ReadAmount[],
  rows: readonly Row[],
): readonly ReadAmount[] {
  return fats.map((fat) => {
    const late = after.find(({ id }) => id === fat.id);
    const row = late && rows.find((one) => one.after && one.named.meaning.id === fat.id);
    if (!row || !late || late.grams >= fat.grams || !isPart(assembly.source, row)) return fat;
    const grams = fat.grams - late.grams;
    assembly.assume(
      'after',
      `I took ${late.said} of the ${fat.said} of ${label(assembly, row.named.meaning)} as kept for after the cook: ${roundTo(grams, 1)} g is cooked.`,
    );
    return { ...fat, grams };
  });
}

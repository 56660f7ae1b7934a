/**
 * "Pure lard soap, 1000 g, lye 134, water 330": a soap that is called after its one fat, of which nothing else is told;
 * the weight beside its name is the fat's where the lye fits that, and would not fit a soap of this weight.
 */

import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';
import type { Item } from './items.ts';

type Thing = Extract<Item, { kind: 'thing' }>;

/** Alkali to the fats that it is for. */
const usual: Readonly<Record<string, { readonly least: number; readonly most: number }>> = {
  naoh: { least: 0.1, most: 0.2 },
  koh: { least: 0.14, most: 0.28 },
};
/** Water to alkali, where none is told. */
const usualWater = 2;
const fatty = /^(?:fat|ambiguous|unheld)$/;

const isOf = (item: Item | undefined, is: RegExp): item is Thing =>
  item?.kind === 'thing' && is.test(item.named.meaning.kind);

/** The fat that a soap is called after: "lard soap", "all lard bars". */
function calledFat(tokens: readonly Token[], item: Thing): Meaning | null {
  const { meaning } = item.named;
  if (meaning.kind !== 'role' || meaning.id !== 'batch-word') return null;
  const name = tokens[item.from];
  return name?.t === 'name' && name.meaning.kind === 'fat' ? name.meaning : null;
}

/** A weight, or a figure in the unit of the soap's, right behind the name or right before it. */
function beside(items: readonly Item[], k: number): Quantity | null {
  for (const item of [items[k + 1], items[k - 1]])
    if (item?.kind === 'amount' && (item.quantity.dim === 'mass' || item.quantity.dim === 'bare')) return item.quantity;
  return null;
}

export function soapOfOne(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  if (items.some((item) => isOf(item, fatty))) return items;
  const soaps = items.flatMap((item, k) => (item.kind === 'thing' && calledFat(tokens, item) ? [k] : []));
  const [at] = soaps;
  const alkalis = items.flatMap((item, k) => (isOf(item, /^alkali$/) ? [k] : []));
  const [lye] = alkalis;
  if (at === undefined || lye === undefined || soaps.length + alkalis.length !== 2) return items;
  const [soap, alkali] = [items[at] as Thing, items[lye] as Thing];
  const whole = beside(items, at);
  const dry = beside(items, lye);
  if (whole?.dim !== 'mass' || !dry || dry === whole) return items;
  const water = items.findIndex((item) => isOf(item, /^water$/));
  const wet = water < 0 ? null : beside(items, water);
  const gramsOf = ({ dim, value }: Quantity): number => (dim === 'bare' ? value * (whole.unit?.factor ?? 1) : value);
  const grams = gramsOf(dry);
  const fit = usual[alkali.named.meaning.id === 'koh' ? 'koh' : 'naoh'];
  const fits = (fats: number): boolean =>
    fit !== undefined && fats > 0 && grams / fats >= fit.least && grams / fats <= fit.most;
  const asSoap = whole.value - grams - (wet ? gramsOf(wet) : usualWater * grams);
  if (!fits(gramsOf(whole)) || fits(asSoap)) return items;
  const meaning = calledFat(tokens, soap);
  if (!meaning) return items;
  return items.map((item) => (item === soap ? { ...soap, named: { ...soap.named, meaning } } : item));
}

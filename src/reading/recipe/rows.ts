import type { Catalogue } from '../../catalogue/types.ts';
import { type HeadUnits, withUnit } from '../columns/columns.ts';
import type { Scanned } from '../cut.ts';
import { afterScope } from '../figures/after.ts';
import { isOfLooks } from '../figures/cook.ts';
import type { Assumption, Doubt, Fate } from '../reading.ts';
import type { Binding, Bound, Group } from '../rows/bind.ts';
import { type Item, type Named, sameWithin } from '../rows/items.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import type { Lexicon, Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';
import { asksForAlkali } from './asks.ts';

/** One name with what it got, in grams where that can be known. */
export interface Row {
  readonly named: Named;
  readonly token: number;
  readonly line: number;
  readonly amount: Quantity | null;
  readonly same: Quantity | null;
  readonly share: Quantity | null;
  readonly grams: number | null;
  readonly said: string;
  readonly after: boolean;
  readonly each: boolean;
}

export type Kindred =
  | 'fat'
  | 'alkali'
  | 'stock'
  | 'water'
  | 'ice'
  | 'liquid'
  | 'acid'
  | 'additive'
  | 'scent'
  | 'ambiguous'
  | 'unheld'
  | 'unknown';

export interface Source extends Scanned {
  readonly catalogue: Catalogue;
  readonly lexicon: Lexicon;
  readonly items: readonly Item[];
  /** Numerals, by their place, that the writer's answers took out. */
  readonly dropped: ReadonlySet<number>;
  readonly bound: Bound;
  readonly units: HeadUnits;
  /** The recipes in the post as it came, before it was cleaned and laid out. */
  readonly several: {
    /** They are numbered. */
    readonly isNumbered: boolean;
    /** How many of them an answer can choose from; 0 where the post gives no way to part them. */
    readonly choices: () => number;
  };
  readonly back: readonly PutRight[];
  readonly unheard: string | null;
}

export class Assembly {
  readonly assumptions: Assumption[] = [];
  readonly doubts: Doubt[] = [];
  /** By prim; a hole where nothing is known of one. */
  readonly fates: (Fate | undefined)[];
  readonly source: Source;
  readonly defaultUnit: string | null;
  /** Kilograms and grams, and no other unit: a large bare figure can only be grams. */
  readonly metric: boolean;
  readonly unitsSeen: readonly string[];
  readonly lineOf: (token: number) => number;
  private readonly assumed = new Set<string>();
  private asks: boolean | null = null;
  constructor(source: Source) {
    this.source = source;
    this.fates = new Array(source.prims.length);
    this.lineOf = lineIndex(source.tokens);
    const seen: string[] = [];
    for (const item of source.items) {
      const unit = item.kind === 'amount' && item.quantity.dim === 'mass' ? item.quantity.unit : null;
      if (unit && !seen.includes(unit.id)) seen.push(unit.id);
    }
    this.unitsSeen = seen;
    // lb beside oz, kg beside g are one system; the smaller one is meant by a bare figure only if it stands alone
    this.defaultUnit = seen.length === 1 ? (seen[0] ?? null) : null;
    this.metric = seen.length === 2 && seen.includes('g') && seen.includes('kg');
  }

  assume(id: Assumption['id'], text: string, of: Pick<Assumption, 'said' | 'as'> = {}): void {
    const { size } = this.assumed;
    if (this.assumed.add(text).size > size) this.assumptions.push({ id, text, ...of });
  }

  /** The post asks how much alkali its fats need. */
  asksForAlkali(): boolean {
    this.asks ??= asksForAlkali(this.source.text);
    return this.asks;
  }

  /** What became of it is known. */
  isSettled({ numbers: [first] }: Quantity): boolean {
    return first !== undefined && this.fates[first] !== undefined;
  }

  fate(quantity: Quantity, fate: Fate['fate'], why: string): void {
    for (const k of quantity.numbers) {
      const prim = this.source.prims[k];
      if (prim) this.fates[k] = { text: prim.raw, fate, why };
    }
  }
}

export const label = (assembly: Assembly, meaning: Meaning): string => assembly.source.lexicon.label(meaning);

export const roundTo = (value: number, digits: number): number => Number(value.toFixed(digits));

/** The unit of a bare figure: its section's, the post's, or the only one the post uses elsewhere. */
export function unitFor(assembly: Assembly, token: number): { unit: string; assumed: boolean } | null {
  const { units } = assembly.source;
  const section = units.sections.findLast((one) => one.from <= token);
  if (section) return { unit: section.unit, assumed: false };
  const [global] = units.global;
  if (units.global.size === 1 && global) return { unit: global, assumed: false };
  return assembly.defaultUnit ? { unit: assembly.defaultUnit, assumed: true } : null;
}

function densityOf(assembly: Assembly, meaning: Meaning): number | null {
  const { catalogue } = assembly.source;
  if (meaning.kind === 'water') return 1;
  if (meaning.kind === 'fat') return catalogue.fats.get(meaning.id)?.density?.nominal ?? null;
  if (meaning.kind === 'liquid') return catalogue.liquids.get(meaning.id)?.density ?? 1;
  if (meaning.kind === 'acid') return 1;
  return null;
}

/** The last place of a weight as a fraction of it; 0 where it has no decimals, as people weigh. */
function lastPlace({ value, unit, text }: Quantity): number {
  const places = /\d[.,](\d+)/.exec(text)?.[1]?.length ?? 0;
  return places === 0 ? 0 : (10 ** -places * (unit?.factor ?? 1)) / value;
}

/** `14.1 oz (400 g)`: of one weight in two units, the one that the other was rounded from. */
export function weighedAs(amount: Quantity, same: Quantity | null): Quantity {
  if (same?.dim !== 'mass' || amount.dim !== 'mass' || !same.unit || !amount.unit) return amount;
  const apart = Math.abs(same.value - amount.value) / amount.value;
  const place = lastPlace(amount);
  const isRounded = place > 0 && lastPlace(same) === 0 && apart <= place / 2 + 1e-9;
  return isRounded && place > (2 * same.unit.factor) / same.value ? same : amount;
}

/** A bare figure this large is not of the kilograms that the rest is in. */
const farBeyond = 25;

/** Grams of an amount for this thing; doubts and assumptions are noted on the way. */
export function gramsOf(assembly: Assembly, named: Named, quantity: Quantity, token: number): number | null {
  const { meaning } = named;
  const of = (): string => label(assembly, meaning);
  let amount = quantity;
  const matters = meaning.kind !== 'additive' && meaning.kind !== 'scent';
  // nobody says that it is an ingredient: whether it may be one is asked of its name
  if (amount.dim === 'bare' && meaning.kind === 'unknown') return null;
  if (amount.dim === 'bare') {
    const large = assembly.metric && amount.value >= farBeyond;
    const found = unitFor(assembly, token) ?? (large ? { unit: 'g', assumed: true } : null);
    // "1.5 kg olive, 500 coconut": five hundred of another unit
    const isHeavy = amount.value >= farBeyond && (found?.unit === 'kg' || found?.unit === 'stone');
    // "castor 1/10 of the oils": no tenth of a gram
    const isPart = amount.value > 0 && amount.value < 1 && found?.unit === 'g';
    if (!found || (found.assumed && (isHeavy || isPart))) {
      if (matters)
        assembly.doubts.push({ id: 'no-unit', said: `${named.text} ${quantity.text}`, units: assembly.unitsSeen });
      return null;
    }
    if (found.assumed && matters)
      assembly.assume('unit', `I took "${named.text} ${quantity.text}" in ${found.unit}, as the rest.`, {
        said: `${named.text} ${quantity.text}`,
        as: found.unit,
      });
    amount = withUnit(amount, found.unit);
  }
  if (matters && amount.upTo !== null) {
    assembly.doubts.push({ id: 'range', said: quantity.text, of: of() });
    return null;
  }
  if (matters && amount.negative) {
    assembly.doubts.push({ id: 'negative', said: `-${quantity.text}`, of: of() });
    return null;
  }
  if (matters && amount.value === 0 && meaning.kind !== 'water') {
    assembly.doubts.push({ id: 'zero', said: quantity.text, of: of() });
    return null;
  }
  if (amount.dim === 'mass') return amount.value;
  if (amount.dim !== 'volume') return null;
  if (meaning.kind === 'alkali' || meaning.kind === 'stock') {
    assembly.doubts.push({ id: 'alkali-volume', said: `${quantity.text} ${named.text}` });
    return null;
  }
  const density = densityOf(assembly, meaning);
  if (density === null) {
    if (meaning.kind === 'fat')
      assembly.doubts.push({ id: 'no-amount', said: `${quantity.text} ${named.text}`, of: of() });
    return null;
  }
  const grams = amount.value * density;
  if (meaning.kind === 'fat')
    assembly.assume(
      'volume',
      `I took ${quantity.text} of ${of()} as ${Math.round(grams)} g, from its density: a weighed amount is surer.`,
    );
  else if (meaning.kind === 'water' && !/^(mL|L|cL|dL)$/.test(amount.unit?.id ?? ''))
    assembly.assume('volume', `I took ${quantity.text} of water as ${Math.round(grams)} g.`);
  return grams;
}

function lineIndex(tokens: readonly Token[]): (token: number) => number {
  let line = 0;
  const index = tokens.map((token) => (token.t === 'line' ? line++ : line));
  return (token) => index[token] ?? line;
}

/** `270 g of the 50 % solution`, or of one without its strength where no alkali is weighed: what was weighed. */
function asStock(named: Named, amounts: readonly Amount[], items: readonly Item[], binding: Binding): Named {
  if (named.meaning.kind !== 'role' || named.meaning.id !== 'solution') return named;
  const isLye = amounts.some(({ quantity }) => quantity.dim === 'percent') || !weighsAlkali(items, binding);
  return isLye && amounts.some(({ quantity }) => quantity.dim === 'mass')
    ? { ...named, meaning: { kind: 'stock', id: 'unsaid' } }
    : named;
}

type Amount = Extract<Item, { kind: 'amount' }>;

const isAlkali = (item: Item | undefined): boolean =>
  item?.kind === 'thing' && (item.named.meaning.kind === 'alkali' || item.named.meaning.kind === 'stock');

const weighsAlkali = (items: readonly Item[], { groups }: Binding): boolean =>
  groups.some(
    (group) =>
      group.things.some((k) => isAlkali(items[k])) &&
      amountsOf(items, group).some(({ quantity }) => quantity.dim !== 'percent'),
  );

function amountsOf(items: readonly Item[], { amounts }: Group): readonly Amount[] {
  const [first = -1] = amounts;
  const only = amounts.length === 1 ? items[first] : undefined;
  if (only?.kind === 'amount') return [only];
  const found: Amount[] = [];
  for (const k of amounts) {
    const item = items[k];
    if (item?.kind === 'amount') found.push(item);
  }
  return found;
}

const anotherWeight = (amounts: readonly Amount[], amount: Amount | null): Amount | undefined =>
  amounts.find((one) => one !== amount && one.quantity.dim === 'mass');

/** The post names a time after the cook. */
const saysAfter = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (token) =>
      token.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'after' && !isOfLooks(token.meant),
  );

export function rowsOf(assembly: Assembly, binding: Binding): Row[] {
  const { items, tokens } = assembly.source;
  const scope = afterScope(tokens, items, binding);
  let isSaid: boolean | null = null;
  const rows: Row[] = [];
  for (const group of binding.groups) {
    const amounts = amountsOf(items, group);
    for (const k of group.things) {
      const item = items[k];
      if (item?.kind !== 'thing') continue;
      const named = asStock(item.named, amounts, items, binding);
      if (named.meaning.kind === 'role') continue;
      let weight: Amount | null = null;
      let volume: Amount | null = null;
      let share: Amount | null = null;
      for (const one of amounts) {
        const { dim } = one.quantity;
        if (dim === 'mass' || dim === 'bare' || dim === 'parts') weight ??= one;
        else if (dim === 'volume') volume ??= one;
        else if (dim === 'percent') share ??= one;
      }
      const amount = weight ?? volume;
      if (amount?.quantity.dim !== 'mass') volume = null;
      const again = amounts.length > 1 ? anotherWeight(amounts, amount) : undefined;
      // "two canisters of 5 litres": of nothing that is known
      if (named.meaning.kind === 'unknown')
        for (const one of amounts)
          if (one !== amount && one !== share && one !== volume && one !== again)
            assembly.fate(one.quantity, 'aside', 'no ingredient beside it');
      const after = scope(item.from);
      if (after) isSaid ??= saysAfter(tokens);
      const name = tokens[item.from];
      if (after && !isSaid && !(name?.t === 'name' && name.late))
        assembly.assume('after', `I took "${named.text}" as stirred in after the cook, as the steps have it.`);
      rows.push({
        named,
        token: item.from,
        line: assembly.lineOf(item.from),
        amount: amount?.quantity ?? null,
        same: amount?.same ?? volume?.quantity ?? again?.quantity ?? null,
        share: share?.quantity ?? null,
        grams: null,
        said: amount?.quantity.text ?? share?.quantity.text ?? '',
        after,
        each: group.things.length > 1,
      });
    }
  }
  return rows;
}

export function crossUnits(assembly: Assembly, row: Row): void {
  if (!row.amount || !row.same || row.amount.dim !== 'mass') return;
  const a = row.amount.value;
  const density = row.same.dim === 'volume' ? densityOf(assembly, row.named.meaning) : 1;
  const b = row.same.value * (density ?? 1);
  const { kind } = row.named.meaning;
  const matters = kind !== 'additive' && kind !== 'scent';
  if (matters && Math.abs(a - b) > (row.same.dim === 'volume' ? 0.06 : sameWithin) * Math.max(a, b))
    assembly.doubts.push({
      id: 'units-disagree',
      said: row.amount.text,
      also: row.same.text,
      of: label(assembly, row.named.meaning),
    });
}

export function noteName(assembly: Assembly, named: Named): void {
  if (named.how === 'name') return;
  const of = label(assembly, named.meaning);
  if (named.how === 'spelling')
    assembly.assume('spelling', `I took "${named.text}" as ${of}.`, { said: named.text, as: of });
  else if (named.how === 'abbreviation')
    assembly.assume('abbreviation', `I took "${named.text}" as ${of}.`, { said: named.text, as: of });
  else if (named.how === 'plain' && named.meaning.kind === 'fat')
    assembly.assume('plain-name', `I took "${named.text}" as ${of}.`, { said: named.text, as: of });
  else if (named.how === 'decorated')
    assembly.assume(
      named.meaning.kind === 'additive' ? 'additive' : 'decoration',
      `I took "${named.text}" as ${named.meaning.kind === 'additive' ? 'an additive that eats no alkali' : of}.`,
    );
}

/** Two figures of one unit are the same only if one of them is rounded; of two units, kitchen rounding parts them. */
export const sameAmount = (a: Row, b: Row): boolean => {
  const [one, other] = [a.grams ?? 0, b.grams ?? 0];
  const within = a.amount?.unit?.id === b.amount?.unit?.id ? 0.008 : sameWithin;
  return Math.abs(one - other) <= within * Math.max(one, other);
};

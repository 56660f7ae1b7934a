import type { AlkaliId, Catalogue } from '../catalogue/types.ts';
import { afterScope } from './after.ts';
import type { Binding, Bound, Group } from './bind.ts';
import { type HeadUnits, linesOf, withUnit } from './columns.ts';
import { type Item, type Named, sameWithin } from './items.ts';
import type { Lexicon, Meaning } from './lexicon.ts';
import { packed } from './neighbours.ts';
import type { Quantity } from './quantities.ts';
import type { Assumption, Doubt, Fate, Purity, ReadAmount, RecipeReading } from './reading.ts';
import type { Prim } from './scan.ts';
import type { Token } from './tokens.ts';
import { asideRoles } from './words.ts';

/** One name with what it got, in grams where that can be known. */
interface Row {
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

type Kindred =
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

export interface Source {
  readonly catalogue: Catalogue;
  readonly lexicon: Lexicon;
  readonly prims: readonly Prim[];
  readonly tokens: readonly Token[];
  readonly items: readonly Item[];
  readonly bound: Bound;
  readonly units: HeadUnits;
  readonly text: string;
  readonly disordered: boolean;
  readonly struck: readonly string[];
}

const spoons = new Set(['tsp', 'tbsp', 'tsp-metric', 'tbsp-metric', 'tbsp-australian']);

class Assembly {
  readonly assumptions: Assumption[] = [];
  readonly doubts: Doubt[] = [];
  readonly fates = new Map<number, Fate>();
  readonly source: Source;
  readonly defaultUnit: string | null;
  readonly unitsSeen: readonly string[];
  constructor(source: Source) {
    this.source = source;
    const seen = new Set<string>();
    for (const item of source.items)
      if (item.kind === 'amount' && item.quantity.dim === 'mass' && item.quantity.unit) seen.add(item.quantity.unit.id);
    this.unitsSeen = [...seen];
    // lb beside oz, kg beside g are one system; the smaller one is meant by a bare figure only if it stands alone
    this.defaultUnit = seen.size === 1 ? ([...seen][0] ?? null) : null;
  }

  assume(id: Assumption['id'], text: string): void {
    if (!this.assumptions.some((one) => one.text === text)) this.assumptions.push({ id, text });
  }

  fate(quantity: Quantity, fate: Fate['fate'], why: string): void {
    for (const k of quantity.numbers) {
      const prim = this.source.prims[k];
      if (prim) this.fates.set(k, { text: prim.raw, fate, why });
    }
  }
}

const label = (assembly: Assembly, meaning: Meaning): string => assembly.source.lexicon.label(meaning);

/** The unit of a bare figure: its section's, the post's, or the only one the post uses elsewhere. */
function unitFor(assembly: Assembly, token: number): { unit: string; assumed: boolean } | null {
  const { units } = assembly.source;
  const section = [...units.sections].reverse().find((one) => one.from <= token);
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

/** Grams of an amount for this thing; doubts and assumptions are noted on the way. */
function gramsOf(assembly: Assembly, named: Named, quantity: Quantity, token: number): number | null {
  const { meaning } = named;
  const of = label(assembly, meaning);
  let amount = quantity;
  const matters = !['additive', 'scent'].includes(meaning.kind);
  if (amount.dim === 'bare') {
    const found = unitFor(assembly, token);
    if (!found) {
      if (matters)
        assembly.doubts.push({ id: 'no-unit', said: `${named.text} ${quantity.text}`, units: assembly.unitsSeen });
      return null;
    }
    if (found.assumed && matters)
      assembly.assume('unit', `I took "${named.text} ${quantity.text}" in ${found.unit}, the unit of the rest.`);
    amount = withUnit(amount, found.unit);
  }
  if (matters && amount.upTo !== null) {
    assembly.doubts.push({ id: 'range', said: quantity.text, of });
    return null;
  }
  if (matters && amount.negative) {
    assembly.doubts.push({ id: 'negative', said: `-${quantity.text}`, of });
    return null;
  }
  if (matters && amount.value === 0 && meaning.kind !== 'water') {
    assembly.doubts.push({ id: 'zero', said: quantity.text, of });
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
    if (meaning.kind === 'fat') assembly.doubts.push({ id: 'no-amount', said: `${quantity.text} ${named.text}`, of });
    return null;
  }
  const grams = amount.value * density;
  if (meaning.kind === 'fat')
    assembly.assume(
      'volume',
      `I took ${quantity.text} of ${of} as ${Math.round(grams)} g, from its density: a weighed amount is surer.`,
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

function rowsOf(assembly: Assembly, binding: Binding): Row[] {
  const { items, tokens } = assembly.source;
  const scope = afterScope(tokens, items, binding);
  const lineOf = lineIndex(tokens);
  const rows: Row[] = [];
  for (const group of binding.groups) {
    const amounts = group.amounts
      .map((k) => items[k])
      .filter((item): item is Extract<Item, { kind: 'amount' }> => item?.kind === 'amount');
    for (const k of group.things) {
      const item = items[k];
      if (item?.kind !== 'thing' || item.named.meaning.kind === 'role') continue;
      const amount =
        amounts.find(
          (one) => one.quantity.dim === 'mass' || one.quantity.dim === 'bare' || one.quantity.dim === 'parts',
        ) ??
        amounts.find((one) => one.quantity.dim === 'volume') ??
        null;
      const volume =
        amount?.quantity.dim === 'mass' ? (amounts.find((one) => one.quantity.dim === 'volume') ?? null) : null;
      const share = amounts.find((one) => one.quantity.dim === 'percent') ?? null;
      rows.push({
        named: item.named,
        token: item.from,
        line: lineOf(item.from),
        amount: amount?.quantity ?? null,
        same: amount?.same ?? volume?.quantity ?? null,
        share: share?.quantity ?? null,
        grams: null,
        said: amount?.quantity.text ?? share?.quantity.text ?? '',
        after: scope(item.from),
        each: group.things.length > 1,
      });
    }
  }
  return rows;
}

function crossUnits(assembly: Assembly, row: Row): void {
  if (!row.amount || !row.same || row.amount.dim !== 'mass') return;
  const a = row.amount.value;
  const density = row.same.dim === 'volume' ? densityOf(assembly, row.named.meaning) : 1;
  const b = row.same.value * (density ?? 1);
  const matters = !['additive', 'scent'].includes(row.named.meaning.kind);
  if (matters && Math.abs(a - b) > (row.same.dim === 'volume' ? 0.06 : sameWithin) * Math.max(a, b))
    assembly.doubts.push({
      id: 'units-disagree',
      said: row.amount.text,
      also: row.same.text,
      of: label(assembly, row.named.meaning),
    });
}

/** The surer of two statements of one amount: grams with three digits or more, else the one said first. */
function better(row: Row): Quantity | null {
  if (row.amount && row.same && row.same.unit?.id === 'g' && row.same.value >= 100 && row.amount.unit?.id !== 'g')
    return row.amount;
  return row.amount;
}

function noteName(assembly: Assembly, named: Named): void {
  const of = label(assembly, named.meaning);
  if (named.how === 'spelling') assembly.assume('spelling', `I took "${named.text}" as ${of}.`);
  else if (named.how === 'abbreviation') assembly.assume('abbreviation', `I took "${named.text}" as ${of}.`);
  else if (named.how === 'plain' && named.meaning.kind === 'fat')
    assembly.assume('plain-name', `I took "${named.text}" as ${of}.`);
  else if (named.how === 'decorated')
    assembly.assume(
      named.meaning.kind === 'additive' ? 'additive' : 'decoration',
      `I took "${named.text}" as ${named.meaning.kind === 'additive' ? 'an additive that eats no alkali' : of}.`,
    );
}

interface Roles {
  superfat: number | null;
  concentration: number | null;
  ratio: number | null;
  purity: Purity | null;
  totalFats: Quantity | null;
  totals: {
    readonly quantity: Quantity;
    readonly grams: number;
    readonly strict: boolean;
    readonly solution: boolean;
  }[];
  batch: number | null;
  scaleStep: number | null;
  /** Asked superfat that cannot be: kept so that the command can refuse it. */
  superfatSaid: Quantity | null;
}

const asPurity = (quantity: Quantity): Purity => {
  const scale = quantity.dim === 'percent' ? 1 : 0.01;
  const low = quantity.value * scale;
  const high = (quantity.upTo ?? quantity.value) * scale;
  return { nominal: (low + high) / 2, low, high };
};

function readRoles(assembly: Assembly, binding: Binding): Roles {
  const { items } = assembly.source;
  const roles: Roles = {
    superfat: null,
    concentration: null,
    ratio: null,
    purity: null,
    totalFats: null,
    totals: [],
    batch: null,
    scaleStep: null,
    superfatSaid: null,
  };
  const gramsHere = (quantity: Quantity, token: number): number | null => {
    if (quantity.dim === 'mass' || quantity.dim === 'volume') return quantity.value;
    if (quantity.dim !== 'bare') return null;
    const found = unitFor(assembly, token);
    return found ? withUnit(quantity, found.unit).value : null;
  };
  for (const group of binding.groups) {
    const thing = group.things.map((k) => items[k]).find((item) => item?.kind === 'thing');
    if (thing?.kind !== 'thing' || thing.named.meaning.kind !== 'role') continue;
    const role = thing.named.meaning.id;
    for (const k of group.amounts) {
      const item = items[k];
      if (item?.kind !== 'amount') continue;
      const { quantity } = item;
      const aside = asideRoles[role];
      const value = quantity.dim === 'percent' ? quantity.value : quantity.value / 100;
      switch (role) {
        case 'superfat':
          roles.superfatSaid = quantity;
          if (quantity.upTo !== null)
            assembly.assume(
              'left-out',
              `I read the superfat "${quantity.text}" as a wish, and reckon what the amounts give.`,
            );
          else if (
            roles.superfat !== null &&
            Math.abs(roles.superfat - value) > 1e-6 &&
            asksForAlkali(assembly.source.text)
          )
            assembly.doubts.push({
              id: 'two-amounts',
              of: 'superfat',
              said: [`${roundTo(roles.superfat * 100, 2)} %`, `${roundTo(value * 100, 2)} %`],
            });
          else if (roles.superfat !== null && Math.abs(roles.superfat - value) > 1e-6)
            assembly.assume('left-out', `The post says two superfats; I took ${roundTo(roles.superfat * 100, 2)} %.`);
          else roles.superfat = quantity.negative ? -value : value;
          assembly.fate(quantity, 'used', 'superfat');
          break;
        case 'concentration':
        case 'solution':
          if (quantity.dim === 'percent' || quantity.dim === 'bare') {
            roles.concentration = value;
            assembly.fate(quantity, 'used', 'lye concentration');
          } else {
            const grams = gramsHere(quantity, item.from);
            if (grams !== null) roles.totals.push({ quantity, grams, strict: false, solution: true });
            assembly.fate(quantity, 'used', 'weight of the solution');
          }
          break;
        case 'ratio':
        case 'ratio-lye-water': {
          const plain =
            quantity.dim === 'ratio' && quantity.second !== null ? quantity.value / quantity.second : quantity.value;
          const turned = role === 'ratio-lye-water' && plain > 0 ? 1 / plain : plain;
          // both "2:1" and "1:2" are written for twice as much water as alkali
          roles.ratio = turned > 0 && turned < 1 ? 1 / turned : turned;
          assembly.fate(quantity, 'used', 'water to alkali');
          break;
        }
        case 'equal':
          break;
        case 'purity':
          roles.purity = asPurity(quantity);
          assembly.fate(quantity, 'used', 'purity');
          break;
        case 'total-fats':
          if (quantity.dim !== 'percent')
            roles.totalFats =
              quantity.dim === 'bare' ? withUnit(quantity, unitFor(assembly, item.from)?.unit ?? 'g') : quantity;
          assembly.fate(quantity, 'used', 'total of the fats');
          break;
        case 'total':
        case 'total-solution':
          if (quantity.dim !== 'percent') {
            const grams = gramsHere(quantity, item.from);
            const word = thing.named.meant;
            if (grams !== null && quantity.upTo === null)
              roles.totals.push({
                quantity,
                grams,
                strict: !/yield|gibt|ergibt|weigh|net|gross|soap|finished|worth|comes|whole/.test(word),
                solution: role === 'total-solution',
              });
          }
          assembly.fate(quantity, quantity.dim === 'percent' ? 'aside' : 'used', 'a total');
          break;
        case 'batch-word':
          if (quantity.dim === 'mass') roles.batch = quantity.value;
          assembly.fate(quantity, 'aside', aside ?? 'the size of the batch');
          break;
        case 'scale':
          if (quantity.dim === 'mass' && quantity.value <= 50) roles.scaleStep = quantity.value;
          assembly.fate(quantity, 'used', 'the scale');
          break;
        default:
          assembly.fate(quantity, 'aside', aside ?? 'no ingredient');
      }
    }
  }
  return roles;
}

const roundTo = (value: number, digits: number): number => Number(value.toFixed(digits));

/** Fats by share or part of a stated total, or with shares beside weights. */
function settleShares(assembly: Assembly, rows: readonly Row[], roles: Roles): Map<Row, number> {
  const grams = new Map<Row, number>();
  const fats = rows.filter((row) => row.named.meaning.kind === 'fat' || row.named.meaning.kind === 'unheld');
  const parts = fats.filter((row) => row.amount?.dim === 'parts');
  const weighedIds = new Set(
    fats.filter((row) => row.amount && row.amount.dim !== 'parts').map((row) => row.named.meaning.id),
  );
  const shares = fats.filter((row) => row.share && !row.amount && !weighedIds.has(row.named.meaning.id));
  const bareShares =
    shares.length === 0 && parts.length === 0 && roles.totalFats
      ? fats.filter((row) => row.amount?.dim === 'bare')
      : [];
  const base = (): number | null => {
    if (roles.totalFats) return roles.totalFats.value;
    const loose = roles.totals.find((one) => !one.solution);
    if (loose) {
      assembly.assume('shares', `I took ${loose.quantity.text} as the weight of all the fats.`);
      return loose.grams;
    }
    return null;
  };
  if (parts.length > 0) {
    const total = base();
    if (total === null) assembly.doubts.push({ id: 'shares-total' });
    else {
      const sum = parts.reduce((all, row) => all + (row.amount?.value ?? 0), 0);
      for (const row of parts) grams.set(row, (total * (row.amount?.value ?? 0)) / sum);
    }
  } else if (shares.length > 0) {
    const sum = shares.reduce((all, row) => all + (row.share?.value ?? 0), 0);
    const weighed = fats.filter((row) => row.amount);
    if (weighed.length > 0 && shares.length < fats.length)
      assembly.doubts.push({
        id: 'no-amount',
        said: shares[0]?.named.text ?? '',
        of: label(assembly, shares[0]?.named.meaning ?? { kind: 'unknown', id: '' }),
      });
    else if (Math.abs(sum - 1) > 0.0101) assembly.doubts.push({ id: 'shares-sum', sum });
    else {
      const total = base();
      if (total === null) assembly.doubts.push({ id: 'shares-total' });
      else for (const row of shares) grams.set(row, (total * (row.share?.value ?? 0)) / sum);
    }
  } else if (bareShares.length > 1 && bareShares.length === fats.length) {
    const sum = bareShares.reduce((all, row) => all + (row.amount?.value ?? 0), 0);
    const total = roles.totalFats?.value ?? 0;
    const found = unitFor(assembly, bareShares[0]?.token ?? 0);
    const asWeights = found
      ? bareShares.reduce((all, row) => all + (row.amount ? withUnit(row.amount, found.unit).value : 0), 0)
      : null;
    if (Math.abs(sum - 100) < 0.6 && (asWeights === null || Math.abs(asWeights - total) > 0.02 * total)) {
      assembly.assume('shares', `I took the figures at the fats as per cent of ${roles.totalFats?.text ?? ''}.`);
      for (const row of bareShares) grams.set(row, (total * (row.amount?.value ?? 0)) / sum);
    }
  }
  return grams;
}

/** Shares beside weights must agree with them, of the fats or of the whole. */
function crossShares(
  assembly: Assembly,
  rows: readonly Row[],
  gramsFor: (row: Row) => number | null,
  all: number,
): void {
  const both = rows.filter(
    (row) => row.named.meaning.kind === 'fat' && row.share && row.amount && gramsFor(row) !== null,
  );
  if (both.length === 0) return;
  const fats = rows
    .filter((row) => row.named.meaning.kind === 'fat')
    .reduce((sum, row) => sum + (gramsFor(row) ?? 0), 0);
  const off = (base: number): Row | undefined =>
    both.find((row) => Math.abs((row.share?.value ?? 0) - (gramsFor(row) ?? 0) / base) > 0.0151);
  const bad = off(fats);
  if (bad && off(all))
    assembly.doubts.push({
      id: 'shares-disagree',
      of: label(assembly, bad.named.meaning),
      said: bad.share?.value ?? 0,
      weighed: (gramsFor(bad) ?? 0) / fats,
    });
}

function crossTotals(
  assembly: Assembly,
  roles: Roles,
  sums: Readonly<Record<'fats' | 'after' | 'alkali' | 'water' | 'liquids' | 'others', number>>,
  parts: readonly number[],
): void {
  const { fats, after, alkali, water, liquids, others } = sums;
  const wet = water + liquids;
  const near = (a: number, b: number): boolean => b > 0 && Math.abs(a - b) <= Math.max(0.02 * b, 1.01);
  const allFats = fats + after;
  const options = [
    fats,
    allFats,
    alkali + wet,
    alkali + water,
    allFats + alkali + wet,
    fats + alkali + wet,
    allFats + alkali + water,
    allFats + wet,
    allFats + alkali + wet + others,
    fats + alkali + wet + others,
    fats + others,
    allFats + others,
    fats + alkali,
    others,
    wet,
  ];
  if (roles.totalFats && allFats > 0) {
    const said = roles.totalFats.value;
    if (
      roles.totalFats.upTo === null &&
      ![fats, allFats, allFats + others].some((sum) => near(said, sum)) &&
      !near(said, allFats + alkali + wet)
    )
      assembly.doubts.push({ id: 'total-disagrees', said: roles.totalFats.text, sum: allFats });
  }
  for (const total of roles.totals) {
    if (
      !total.strict ||
      allFats === 0 ||
      parts.some((sum) => near(total.grams, sum)) ||
      options.some((sum) => near(total.grams, sum))
    )
      continue;
    assembly.doubts.push({ id: 'total-disagrees', said: total.quantity.text, sum: allFats + alkali + wet });
  }
}

/** Two figures for one fat: the same again is a repetition, rows of one list are summed, anything else is asked. */
function merge(assembly: Assembly, rows: readonly { row: Row; grams: number }[], prose: boolean): ReadAmount[] {
  const byId = new Map<string, { row: Row; grams: number }[]>();
  for (const one of rows) {
    const list = byId.get(one.row.named.meaning.id);
    if (list) list.push(one);
    else byId.set(one.row.named.meaning.id, [one]);
  }
  const out: ReadAmount[] = [];
  for (const [id, list] of byId) {
    const [first] = list;
    if (!first) continue;
    let { grams } = first;
    if (list.length > 1) {
      const of = label(assembly, first.row.named.meaning);
      const equal = list.every((one) => Math.abs(one.grams - first.grams) <= sameWithin * first.grams);
      const apart = list.some((one) => Math.abs(one.row.line - first.row.line) >= 3) || prose;
      if (equal && apart)
        assembly.assume('repeated', `${of} stands ${list.length} times with one amount; I took it once.`);
      else if (!apart || list.every((one) => !prose && one.row.line !== first.row.line) === false || !prose) {
        grams = list.reduce((sum, one) => sum + one.grams, 0);
        assembly.assume('summed', `I added up ${list.map((one) => one.row.said).join(' and ')} of ${of}.`);
      } else assembly.doubts.push({ id: 'two-amounts', of, said: list.map((one) => one.row.said) });
    }
    out.push({ id, grams, said: first.row.said });
  }
  return out;
}

export function assemble(source: Source): RecipeReading {
  const { tokens, bound, catalogue, prims } = source;
  const assembly = new Assembly(source);
  const binding = bound.best;
  if (source.disordered) assembly.doubts.push({ id: 'disordered' });
  const roles = readRoles(assembly, binding);
  const rows = rowsOf(assembly, binding);
  const shared = settleShares(assembly, rows, roles);
  const gramsMemo = new Map<Row, number | null>();
  for (const row of rows) {
    crossUnits(assembly, row);
    const quantity = better(row);
    const kind = row.named.meaning.kind as Kindred;
    if (kind !== 'unknown' && kind !== 'ambiguous' && kind !== 'unheld') noteName(assembly, row.named);
    gramsMemo.set(
      row,
      shared.get(row) ??
        (quantity && quantity.dim !== 'parts' ? gramsOf(assembly, row.named, quantity, row.token) : null),
    );
    for (const one of [row.amount, row.same, row.share])
      if (one) assembly.fate(one, 'used', label(assembly, row.named.meaning));
  }
  const gramsFor = (row: Row): number | null => gramsMemo.get(row) ?? null;
  const of = (kind: Kindred): Row[] => rows.filter((row) => row.named.meaning.kind === kind);

  unknownNames(assembly, rows, gramsFor);
  if (twoRecipes(assembly, rows, gramsFor)) assembly.doubts.push({ id: 'two-recipes' });
  const prose = linesOf(tokens).length <= 3 && rows.length >= 3;
  const fatRows = of('fat').flatMap((row) => {
    const grams = gramsFor(row);
    return grams === null ? [] : [{ row, grams }];
  });
  const fats = merge(
    assembly,
    fatRows.filter(({ row }) => !row.after),
    prose,
  );
  const after = merge(
    assembly,
    fatRows.filter(({ row }) => row.after),
    prose,
  );
  const fatGrams = fats.reduce((sum, one) => sum + one.grams, 0);
  const afterGrams = after.reduce((sum, one) => sum + one.grams, 0);

  const { alkali, stockWater, named: alkaliNamed, split } = readAlkali(assembly, rows, gramsFor, roles);
  const stated = readWater(assembly, rows, gramsFor, fatGrams, stockWater);
  const liquids = of('liquid').flatMap((row) => {
    const grams = gramsFor(row);
    if (grams === null) return [];
    return [{ id: row.named.meaning.id, grams, said: row.said }];
  });
  const acids = of('acid').flatMap((row) => {
    const grams =
      gramsFor(row) ?? (row.share && row.share.value < 0.2 && fatGrams > 0 ? row.share.value * fatGrams : null);
    if (grams === null) return [];
    if (gramsFor(row) === null)
      assembly.assume(
        'shares',
        `I took "${row.named.text} ${row.share?.text ?? ''}" as a share of the fats: ${roundTo(grams, 1)} g.`,
      );
    return [
      { id: row.named.meaning.id, grams, said: row.said, strength: row.amount && row.share ? row.share.value : null },
    ];
  });
  const others = [...of('additive'), ...of('scent')].map((row) => ({
    name: row.named.text,
    grams: gramsFor(row),
    said: row.said,
  }));

  mentions(assembly, rows, roles);
  orphans(assembly, rows, gramsFor);
  looseRatio(assembly, roles);
  eitherOr(assembly);
  vagueAmounts(assembly, rows);
  if (takenBack.test(source.text) && rows.length > 0)
    assembly.doubts.push({ id: 'corrected', said: takenBack.exec(source.text)?.[0] ?? '' });
  const alkaliGrams = alkali.reduce((sum, one) => sum + one.grams, 0);
  const water = stated ?? impliedWater(assembly, roles, alkaliGrams, liquids.length > 0);
  unsaid(assembly, rows, { fats: fatGrams, alkali: alkaliGrams });
  const sums = {
    fats: fatGrams,
    after: afterGrams,
    alkali: alkaliGrams,
    water: water ?? 0,
    liquids: liquids.reduce((sum, one) => sum + one.grams, 0) + acids.reduce((sum, one) => sum + one.grams, 0),
    others: others.reduce((sum, one) => sum + (one.grams ?? 0), 0),
  };
  crossShares(assembly, rows, gramsFor, sums.fats + sums.after + sums.alkali + sums.water + sums.liquids);
  if (shared.size === 0) crossTotals(assembly, roles, sums, sumsOf(rows, gramsFor));
  decimals(assembly, rows, gramsFor, catalogue, alkaliGrams);
  plausible(assembly, fats, alkali, catalogue);
  if (roles.superfat !== null && (roles.superfat >= 1 || roles.superfat < 0))
    assembly.doubts.push({ id: 'superfat-odd', said: roles.superfatSaid?.text ?? '', value: roles.superfat });
  rival(assembly, rows);

  for (const token of tokens) {
    if (token.t === 'aside')
      for (const k of token.numbers)
        assembly.fates.set(k, { text: prims[k]?.raw ?? '', fate: 'aside', why: token.reason });
    if (token.t === 'quantity' && ['temperature', 'time', 'length'].includes(token.quantity.dim))
      assembly.fate(
        token.quantity,
        'aside',
        token.quantity.dim === 'time' ? 'a time' : token.quantity.dim === 'length' ? 'a size' : 'a temperature',
      );
    if (token.t === 'name')
      for (let k = token.from; k < token.to; k++)
        if (prims[k]?.kind === 'number')
          assembly.fates.set(k, { text: prims[k]?.raw ?? '', fate: 'used', why: `part of the name "${token.text}"` });
  }
  const waterShareRow = of('water').find((row) => row.share && !row.amount);
  return {
    fats,
    after,
    alkali,
    alkaliNamed,
    waterGrams: water,
    liquids,
    acids,
    others,
    superfat: roles.superfat,
    concentration: roles.concentration,
    ratio: roles.ratio,
    waterShare: waterShareRow?.share?.value ?? null,
    purity: roles.purity,
    alkaliSplit: split,
    totalFats: roles.totalFats?.value ?? null,
    scaleStep: roles.scaleStep,
    ounces: assembly.unitsSeen.length > 0 && assembly.unitsSeen.every((id) => id === 'oz' || id === 'lb'),
    assumptions: assembly.assumptions,
    doubts: assembly.doubts,
    fates: [
      ...[...assembly.fates.entries()].sort((a, b) => a[0] - b[0]).map(([, fate]) => fate),
      ...source.struck.flatMap((passage) =>
        (passage.match(/\d+(?:[.,]\d+)*/g) ?? []).map((text): Fate => ({ text, fate: 'aside', why: 'crossed out' })),
      ),
    ],
  };
}

/** Names that are no single known thing but were given a weight. */
function unknownNames(assembly: Assembly, rows: readonly Row[], gramsFor: (row: Row) => number | null): void {
  const weighed = rows
    .filter((row) => row.named.meaning.kind === 'fat')
    .reduce((sum, row) => sum + (gramsFor(row) ?? 0), 0);
  for (const row of rows) {
    const { meaning, text } = row.named;
    if (meaning.kind === 'ambiguous') {
      if (/hydroxide|potash|caustic|^soda$|natron/.test(meaning.id))
        assembly.doubts.push({ id: 'which-alkali', said: text });
      else assembly.doubts.push({ id: 'ambiguous-name', said: text, candidates: meaning.candidates, why: meaning.why });
    } else if (meaning.kind === 'unheld')
      assembly.doubts.push({ id: 'unheld-fat', said: text, candidates: meaning.candidates });
    else if (meaning.kind === 'unknown') unknownName(assembly, row, weighed, rows);
  }
}

const fattyWord =
  /\b(oil|butter|fat|wax|tallow|lard|acid|ol|oel|huile|aceite|olio|beurre|burro|hydroxide|lye|milk|milch)\b/;

function unknownName(assembly: Assembly, row: Row, weighed: number, rows: readonly Row[]): void {
  const { meaning, text } = row.named;
  const fatty = fattyWord.test(meaning.id);
  const grams = row.amount?.dim === 'mass' ? row.amount.value : null;
  const spoon = row.amount?.dim === 'volume' && spoons.has(row.amount.unit?.id ?? '');
  const loose = (row.amount === null || row.amount.dim === 'bare') && !fatty;
  const alike = rows.some(
    (other) =>
      other !== row &&
      other.named.meaning.kind === 'fat' &&
      (row.amount ? other.amount?.dim === 'bare' : other.share !== null && other.amount === null),
  );
  if (loose && !alike) {
    const quantity = row.amount ?? row.share;
    if (quantity) {
      assembly.assume('left-out', `I left out "${text} ${quantity.text}".`);
      assembly.fate(quantity, 'aside', 'no ingredient beside it');
    }
  } else if (!fatty && (spoon || (grams !== null && weighed > 0 && grams <= 0.02 * weighed)))
    assembly.assume('additive', `I took "${text}" as an additive that eats no alkali.`);
  else assembly.doubts.push({ id: 'unknown-fat', said: text, candidates: nearNames(assembly, text) });
}

/** Known fats whose names share a word or most letters with what was typed. */
function nearNames(assembly: Assembly, text: string): string[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word.length > 2 && !/^(oil|butter|fat|wax|seed)$/.test(word));
  const found: { id: string; score: number }[] = [];
  for (const fat of assembly.source.catalogue.fats.values()) {
    let score = 0;
    for (const word of words)
      for (const part of fat.id.split('-'))
        if (part.length > 2 && !/^(oil|butter|fat|wax)$/.test(part)) {
          if (part === word) score = Math.max(score, 3);
          else if (part.startsWith(word.slice(0, 4)) && word.length >= 4) score = Math.max(score, 2);
          else if (part.startsWith(word.slice(0, 3))) score = Math.max(score, 1);
        }
    if (score > 0) found.push({ id: fat.id, score });
  }
  return found
    .sort((a, b) => b.score - a.score)
    .slice(0, 4)
    .map((one) => one.id);
}

function readAlkali(
  assembly: Assembly,
  rows: readonly Row[],
  gramsFor: (row: Row) => number | null,
  roles: Roles,
): { alkali: RecipeReading['alkali']; stockWater: number; named: AlkaliId[]; split: [number, number] | null } {
  const { text, lexicon, items } = assembly.source;
  const alkali: { id: AlkaliId; grams: number; purity: Purity | null; stock: boolean; row: Row }[] = [];
  const mentioned = new Set<AlkaliId>();
  const stockShare =
    rows.find((row) => row.named.meaning.kind === 'stock' && row.share)?.share?.value ??
    rows.find((row) => row.named.meaning.kind === 'alkali' && row.share && !row.amount && row.share.value <= 0.55)
      ?.share?.value ??
    null;
  for (const item of items)
    if (
      item.kind === 'thing' &&
      (item.named.meaning.kind === 'alkali' || item.named.meaning.kind === 'stock') &&
      item.named.meaning.id !== 'unsaid'
    )
      mentioned.add(item.named.meaning.id);
  const idOf = (row: Row): AlkaliId | null => {
    const { meaning } = row.named;
    if (meaning.kind !== 'alkali' && meaning.kind !== 'stock') return null;
    if (meaning.id !== 'unsaid') return meaning.id;
    if (mentioned.size === 1) return [...mentioned][0] ?? null;
    if (
      mentioned.size === 2 ||
      /\b(liquid|soft|cream|black) soap|soap paste|schmierseife|savon noir|flussigseife|flüssigseife/i.test(text)
    ) {
      assembly.doubts.push({ id: 'which-alkali', said: row.named.text });
      return null;
    }
    assembly.assume('lye', 'I took "lye" as sodium hydroxide (NaOH).');
    return 'naoh';
  };
  const stockNamed = items.some((item) => item.kind === 'thing' && item.named.meaning.kind === 'stock');
  const waterSaid = rows
    .filter((row) => row.named.meaning.kind === 'water' || row.named.meaning.kind === 'liquid')
    .reduce((sum, row) => sum + (gramsFor(row) ?? 0), 0);
  /** "lye 102 g (33 %)": the strength that this alkali and the water of the post make, or no water is said. */
  const agrees = (grams: number, share: number): boolean =>
    waterSaid > 0 && Math.abs(grams / (grams + waterSaid) - share) < 0.03;
  let stockWater = 0;
  let split: [number, number] | null = null;
  const shareRows: Row[] = [];
  for (const row of rows) {
    const { meaning } = row.named;
    if (meaning.kind !== 'alkali' && meaning.kind !== 'stock') continue;
    const grams = gramsFor(row);
    if (grams === null) {
      if (row.share && !row.amount) shareRows.push(row);
      continue;
    }
    const id = idOf(row);
    if (!id) continue;
    const percent = row.share;
    if (meaning.kind === 'stock') {
      const strength = percent?.value ?? stockShare ?? roles.concentration;
      if (strength === null) {
        // the weight of the alkali and water that stand beside it is a total, not another amount
        roles.totals.push({ quantity: row.amount as Quantity, grams, strict: false, solution: true });
        if (!rows.some((other) => other !== row && other.named.meaning.kind === 'alkali' && gramsFor(other) !== null))
          assembly.doubts.push({ id: 'stock-strength', said: `${row.said} ${row.named.text}` });
        continue;
      }
      if (!(strength > 0.02 && strength < 0.75)) {
        assembly.doubts.push({
          id: 'alkali-percent',
          said: percent?.text ?? '',
          of: lexicon.label({ kind: 'alkali', id }),
        });
        continue;
      }
      alkali.push({ id, grams: grams * strength, purity: { nominal: 1, low: 1, high: 1 }, stock: true, row });
      stockWater += grams * (1 - strength);
      continue;
    }
    let purity: Purity | null = null;
    if (percent) {
      const least = Math.min(percent.value, percent.upTo ?? percent.value);
      if (least >= 0.7 && (percent.upTo ?? percent.value) <= 1.0051) purity = asPurity(percent);
      else if (percent.value <= 0.55 && meaning.id === 'unsaid' && roles.concentration === null)
        roles.concentration = percent.value;
      else if (percent.value <= 0.55 && stockNamed) {
        alkali.push({ id, grams: grams * percent.value, purity: { nominal: 1, low: 1, high: 1 }, stock: true, row });
        stockWater += grams * (1 - percent.value);
        continue;
      } else if (percent.value <= 0.55 && agrees(grams, percent.value)) roles.concentration ??= percent.value;
      else
        assembly.doubts.push({ id: 'alkali-percent', said: percent.text, of: lexicon.label({ kind: 'alkali', id }) });
    }
    alkali.push({ id, grams, purity, stock: false, row });
  }
  for (const row of shareRows) {
    const { meaning } = row.named;
    const value = row.share?.value ?? 0;
    if (value >= 0.7 && value <= 1.0051 && shareRows.filter((other) => (other.share?.value ?? 0) >= 0.7).length === 1)
      roles.purity ??= asPurity(row.share as Quantity);
    else if (value <= 0.55 && shareRows.filter((other) => (other.share?.value ?? 1) <= 0.55).length === 1)
      roles.concentration ??= value;
    if (meaning.kind === 'alkali' || meaning.kind === 'stock') if (meaning.id !== 'unsaid') mentioned.add(meaning.id);
  }
  if (shareRows.length === 2) {
    const share = (id: AlkaliId): number => shareRows.find((row) => row.named.meaning.id === id)?.share?.value ?? 0;
    if (Math.abs(share('naoh') + share('koh') - 1) < 0.011) split = [share('naoh'), share('koh')];
  }
  // one alkali with two amounts
  const out: { id: AlkaliId; grams: number; purity: Purity | null; stock: boolean }[] = [];
  for (const id of ['naoh', 'koh'] as const) {
    const list = alkali.filter((one) => one.id === id);
    const [first] = list;
    if (!first) continue;
    if (list.length > 1) {
      const equal = list.every(
        (one) => Math.abs(one.grams - first.grams) <= sameWithin * first.grams && one.stock === first.stock,
      );
      if (equal && list.some((one) => one.row.line !== first.row.line || Math.abs(one.row.token - first.row.token) > 6))
        assembly.assume(
          'repeated',
          `${lexicon.label({ kind: 'alkali', id })} stands ${list.length} times with one amount; I took it once.`,
        );
      else
        assembly.doubts.push({
          id: 'two-amounts',
          of: lexicon.label({ kind: 'alkali', id }),
          said: list.map((one) => one.row.said),
        });
    }
    const purity = list.find((one) => one.purity)?.purity ?? null;
    out.push({
      id,
      grams: first.grams,
      purity: purity ?? (alkali.every((one) => one.id === id) && !first.stock ? roles.purity : null),
      stock: first.stock,
    });
  }
  return { alkali: out, stockWater, named: [...mentioned], split };
}

function readWater(
  assembly: Assembly,
  rows: readonly Row[],
  gramsFor: (row: Row) => number | null,
  fatGrams: number,
  stockWater: number,
): number | null {
  const waters = rows.filter((row) => row.named.meaning.kind === 'water');
  const ices = rows.filter((row) => row.named.meaning.kind === 'ice');
  const weighed = waters.filter((row) => gramsFor(row) !== null);
  let water: number | null = null;
  const [first] = weighed;
  if (first) {
    const grams = gramsFor(first) ?? 0;
    const equal = weighed.every((row) => Math.abs((gramsFor(row) ?? 0) - grams) <= sameWithin * grams);
    if (weighed.length === 1 || (equal && weighed.some((row) => row.line !== first.line))) water = grams;
    else assembly.doubts.push({ id: 'two-amounts', of: 'water', said: weighed.map((row) => row.said) });
  } else {
    const share = waters.find((row) => row.share)?.share?.value;
    if (share !== undefined && fatGrams > 0) {
      water = share * fatGrams;
      assembly.assume('water', `I took the water as ${roundTo(share * 100, 1)} % of the fats: ${Math.round(water)} g.`);
    }
  }
  const [ice] = ices.map(gramsFor).filter((grams): grams is number => grams !== null);
  if (ice !== undefined) water = (water ?? 0) + ice;
  if (stockWater > 0) water = (water ?? 0) + stockWater;
  return water;
}

/** Water that the post gives only as a strength or a ratio. */
function impliedWater(assembly: Assembly, roles: Roles, alkaliGrams: number, otherLiquid: boolean): number | null {
  if (alkaliGrams <= 0 || otherLiquid) return null;
  const { ratio, concentration } = roles;
  const water =
    ratio !== null
      ? ratio * alkaliGrams
      : concentration !== null && concentration > 0.02 && concentration < 0.75
        ? (alkaliGrams * (1 - concentration)) / concentration
        : null;
  if (water !== null)
    assembly.assume(
      'water',
      `I took the water as ${Math.round(water)} g, from the ${ratio !== null ? `${roundTo(ratio, 2)} to 1 of water to alkali` : `${roundTo((concentration ?? 0) * 100, 1)} % lye solution`}.`,
    );
  return water;
}

/** What the post is about but gives no figure for: the alkali it asks to check, the strength of a solution, every fat. */
function unsaid(
  assembly: Assembly,
  rows: readonly Row[],
  sums: { readonly fats: number; readonly alkali: number },
): void {
  const { items, text, bound, tokens } = assembly.source;
  if (assembly.doubts.length > 0) return;
  const named = (kind: Kindred): Extract<Item, { kind: 'thing' }> | undefined =>
    items.find(
      (item): item is Extract<Item, { kind: 'thing' }> => item.kind === 'thing' && item.named.meaning.kind === kind,
    );
  if (sums.alkali > 0 && sums.fats === 0) {
    const fat = named('fat');
    if (fat) assembly.doubts.push({ id: 'no-amount', said: fat.named.text, of: label(assembly, fat.named.meaning) });
  }
  if (sums.fats > 0 && sums.alkali === 0) {
    const judged =
      /\b(is|are|was|does|do|my|the|this|that|right|check)\b[^.?!\n]{0,40}\b(lye|naoh|koh|caustic|alkali)\b[^.?!\n]{0,30}\b(right|ok|okay|correct|fine|enough|too|good|safe|accurate|amount)\b/i.test(
        text,
      );
    const stock = named('stock');
    const alkali = named('alkali');
    if (stock && !alkali && !asksForAlkali(text))
      assembly.doubts.push({ id: 'stock-strength', said: stock.named.text });
    else if (alkali && judged && !/\bhow much\b/i.test(text))
      assembly.doubts.push({ id: 'no-amount', said: alkali.named.text, of: label(assembly, alkali.named.meaning) });
  }
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (
      item?.kind !== 'thing' ||
      item.named.meaning.kind !== 'fat' ||
      rows.some((row) => row.named.meaning.id === item.named.meaning.id && (row.amount || row.share))
    )
      continue;
    if (
      tokens
        .slice(Math.max(0, item.from - 4), item.to + 4)
        .some((token) => token.t === 'aside' && token.reason === packed)
    )
      assembly.doubts.push({ id: 'no-amount', said: item.named.text, of: label(assembly, item.named.meaning) });
  }
}

/** Fats named in the list without an amount, and alkali that is an ingredient but has none. */
function mentions(assembly: Assembly, rows: readonly Row[], roles: Roles): void {
  const { items, tokens, bound, text } = assembly.source;
  const weighed = new Set(
    rows.filter((row) => row.amount || row.share).map((row) => `${row.named.meaning.kind} ${row.named.meaning.id}`),
  );
  const lineOf = lineIndex(tokens);
  const lines = linesOf(tokens);
  const rowLines = new Set(rows.map((row) => row.line));
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (item?.kind !== 'thing') continue;
    const { meaning } = item.named;
    if (
      !['fat', 'unheld', 'ambiguous', 'alkali', 'stock'].includes(meaning.kind) ||
      weighed.has(`${meaning.kind} ${meaning.id}`)
    )
      continue;
    if (meaning.kind === 'alkali' && [...weighed].some((key) => key.startsWith('alkali') || key.startsWith('stock')))
      continue;
    if (meaning.kind === 'stock') continue;
    const line = lineOf(item.from);
    const span = lines[line];
    if (!span) continue;
    const around = tokens.slice(span.from, span.to);
    const words = around.filter(
      (token) => token.t === 'word' && (token.sort === 'everyday' || token.sort === 'joint'),
    ).length;
    const alone =
      !rowLines.has(line) &&
      words === 0 &&
      (rowLines.has(line - 1) || rowLines.has(line + 1)) &&
      around.some((token) => token.t === 'name') &&
      !(around.length > 0 && isHeading(around));
    const listed = rowLines.has(line) && inList(tokens, item, items, bound);
    if (!alone && !listed) continue;
    const amountless = { id: 'no-amount' as const, said: item.named.text, of: label(assembly, meaning) };
    if (meaning.kind === 'alkali') {
      if (
        !asksForAlkali(text) &&
        roles.concentration === null &&
        !rows.some((row) => row.named.meaning.kind === 'alkali')
      )
        assembly.doubts.push(amountless);
    } else if (meaning.kind !== 'ambiguous' || alone) assembly.doubts.push(amountless);
  }
}

function isHeading(tokens: readonly Token[]): boolean {
  const last = tokens.at(-1);
  return last?.t === 'sign' && last.text === ':';
}

export function asksForAlkali(text: string): boolean {
  return /\b(how much|what amount|how many|need|work out|calculate|figure out|find|wieviel|wie viel|combien|cuanta|quanta)\b|\?\?|lye\s*[:=-]?\s*\?|naoh\s*[:=-]?\s*\?/i.test(
    text,
  );
}

/** Between two weighed names and parted from both by commas: `450 g olive, coconut, 75 g castor`. */
function inList(tokens: readonly Token[], item: Item, items: readonly Item[], bound: Bound): boolean {
  const before = tokens[item.from - 1];
  const after = tokens[item.to];
  const parted = (token: Token | undefined): boolean =>
    token === undefined ||
    token.t === 'line' ||
    (token.t === 'sign' && /^[,;\t•+&]$/.test(token.text)) ||
    (token.t === 'word' && token.sort === 'joint' && /^(and|&|plus)$/.test(token.text));
  if (!parted(before) || !parted(after)) return false;
  const at = items.indexOf(item);
  const grouped = (k: number): boolean =>
    bound.best.groups.some((group: Group) => group.things.includes(k) || group.amounts.includes(k));
  return grouped(at - 1) && grouped(at + 1);
}

/** Sums that a post may state: of two or more neighbouring rows, and of alkali and water. */
function sumsOf(rows: readonly Row[], gramsFor: (row: Row) => number | null): number[] {
  const sums: number[] = [];
  const weighed = rows.filter((row) => gramsFor(row) !== null).slice(0, 40);
  for (let from = 0; from < weighed.length; from++) {
    let sum = gramsFor(weighed[from] as Row) ?? 0;
    for (let to = from + 1; to < weighed.length; to++) {
      sum += gramsFor(weighed[to] as Row) ?? 0;
      sums.push(sum);
    }
  }
  return sums;
}

/** Figures that no name took. */
function orphans(assembly: Assembly, rows: readonly Row[], gramsFor: (row: Row) => number | null): void {
  const { items, tokens, bound } = assembly.source;
  const ingredients = rows.filter((row) => row.named.meaning.kind !== 'unknown');
  const bare = ingredients.some((row) => row.amount?.dim === 'bare');
  const before = (quantity: Quantity): boolean =>
    bound.best.groups.some((group) =>
      group.amounts.some((at) => {
        const one = items[at];
        return (
          one?.kind === 'amount' &&
          (one.quantity.value === quantity.value || one.quantity.value === quantity.value / 100)
        );
      }),
    );
  for (const k of bound.best.orphans) {
    const item = items[k];
    if (item?.kind !== 'amount') continue;
    const { quantity } = item;
    const next = tokens[item.to];
    const counted = next?.t === 'word' && next.sort === 'everyday';
    const doubted = [1, 2, 3].some((back) => {
      const word = tokens[item.from - back];
      return (
        word?.t === 'word' &&
        word.text === 'or' &&
        tokens
          .slice(item.from - back + 1, item.from)
          .every((one) => one.t === 'word' && /^(was|it|is|maybe|even|about)$/.test(one.text))
      );
    });
    const weighs = quantity.dim === 'mass' || quantity.dim === 'volume' || quantity.dim === 'parts';
    if (
      quantity.dim === 'mass' &&
      !doubted &&
      sumsOf(rows, gramsFor).some((sum) => Math.abs(sum - quantity.value) <= Math.max(0.011 * sum, 0.6))
    ) {
      assembly.fate(quantity, 'aside', 'a total that agrees');
      continue;
    }
    if (weighs || doubted || (quantity.dim === 'bare' && bare && !counted && !before(quantity))) {
      assembly.doubts.push({ id: 'unplaced', said: quantity.text });
      assembly.fate(quantity, 'unclear', 'no name takes it');
    } else if (quantity.dim === 'ratio') continue;
    else {
      if (!before(quantity))
        assembly.assume(
          'left-out',
          `I left out "${quantity.text}${counted && next?.t === 'word' ? ` ${next.text}` : ''}".`,
        );
      assembly.fate(quantity, 'aside', counted ? 'a count' : 'no ingredient beside it');
    }
  }
}

/** A ratio that stands beside no role: of water to alkali where the sentence speaks of water. */
function looseRatio(assembly: Assembly, roles: Roles): void {
  const { items, bound } = assembly.source;
  const spare = [
    ...bound.best.orphans.map((k) => items[k]),
    ...bound.best.groups
      .filter((group) =>
        group.things.some(
          (k) =>
            items[k]?.kind === 'thing' && (items[k] as Extract<Item, { kind: 'thing' }>).named.meaning.kind !== 'role',
        ),
      )
      .flatMap((group) => group.amounts.map((k) => items[k])),
  ];
  for (const item of spare) {
    if (item?.kind !== 'amount' || item.quantity.dim !== 'ratio') continue;
    const { quantity } = item;
    const near = items.some(
      (other) =>
        other.kind === 'thing' &&
        ['water', 'alkali', 'stock'].includes(other.named.meaning.kind) &&
        Math.abs(other.from - item.from) <= 8,
    );
    const value = quantity.value / (quantity.second ?? 1);
    if (near && roles.ratio === null && value > 0) {
      roles.ratio = value < 1 ? 1 / value : value;
      assembly.fate(quantity, 'used', 'water to alkali');
    } else {
      assembly.assume('left-out', `I left out "${quantity.text}".`);
      assembly.fate(quantity, 'aside', 'a ratio of nothing weighed');
    }
  }
}

/** `sunflower or canola 300 g`, `NaOH/KOH 150 g`: one amount for either of two. */
function eitherOr(assembly: Assembly): void {
  const { items, tokens, bound } = assembly.source;
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (item?.kind !== 'thing' || !['fat', 'alkali', 'unheld'].includes(item.named.meaning.kind)) continue;
    for (const other of [items[k - 1], items[k + 1]]) {
      if (
        other?.kind !== 'thing' ||
        other.named.meaning.kind !== item.named.meaning.kind ||
        other.named.meaning.id === item.named.meaning.id ||
        other.named.meaning.id === 'unsaid'
      )
        continue;
      const [a, b] = other.from < item.from ? [other, item] : [item, other];
      const between = tokens.slice(a.to, b.from);
      const at = items.indexOf(other);
      const weighed = bound.best.groups.some((group) => group.things.includes(at) && group.amounts.length > 0);
      if (
        weighed &&
        between.length === 1 &&
        between[0] &&
        ((between[0].t === 'word' && between[0].text === 'or') || (between[0].t === 'sign' && between[0].text === '/'))
      )
        assembly.doubts.push({
          id: 'two-readings',
          said: '',
          first: a.kind === 'thing' ? a.named.text : '',
          second: b.kind === 'thing' ? b.named.text : '',
        });
    }
  }
}

const vague =
  /^(some|scoops?|spoonfuls?|spoons?|bit|splash|little|knob|handfuls?|dash|glugs?|dollops?|drizzle|adding|add|chunk|lump|dab|swig|blob|half|jars?|tubs?|bottles?|blocks?|sticks?|packs?|bags?|tins?|cans?|cap|caps|capful|capfuls|ladles?|mugs?|glass|glasses)$/;

/** Things that go in by no stated weight: "a scoop of coconut", "3 scoops of NaOH", "a jar of coconut oil". */
function vagueAmounts(assembly: Assembly, rows: readonly Row[]): void {
  const { items, tokens, bound } = assembly.source;
  const weighed = new Set(rows.filter((row) => row.amount || row.share).map((row) => row.named.meaning.id));
  const wordAt = (k: number): string => {
    const token = tokens[k];
    return token?.t === 'word'
      ? token.text
      : token?.t === 'name' && token.meaning.kind === 'role'
        ? token.text.toLowerCase()
        : '';
  };
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (
      item?.kind !== 'thing' ||
      !['fat', 'alkali'].includes(item.named.meaning.kind) ||
      weighed.has(item.named.meaning.id)
    )
      continue;
    if (item.named.meaning.kind === 'alkali' && rows.some((row) => row.named.meaning.kind === 'alkali' && row.amount))
      continue;
    let at = item.from - 1;
    while (/^(of|the|my|a|an|more|extra|good)$/.test(wordAt(at))) at--;
    if (vague.test(wordAt(at).replace(/ of$/, '')))
      assembly.doubts.push({ id: 'no-amount', said: item.named.text, of: label(assembly, item.named.meaning) });
  }
}

/** The person took something back in the middle: "no! only 0.4 oz", "make that 220 g". */
const takenBack =
  /\b(make that|scratch that|strike that|no wait|wait no|wait, no|i meant|correction:)|\bno[!,]+ (only|it was|it's|i mean)|\?\? ?no[!.,]* only/i;

/** Two recipes in one post: the same fats weighed twice over with other figures, or numbered recipes. */
function twoRecipes(assembly: Assembly, rows: readonly Row[], gramsFor: (row: Row) => number | null): boolean {
  const twice = (kinds: readonly Kindred[]): number => {
    const seen = new Map<string, number>();
    let again = 0;
    for (const row of rows) {
      if (!kinds.includes(row.named.meaning.kind as Kindred) || row.after) continue;
      const grams = gramsFor(row) ?? row.share?.value ?? null;
      if (grams === null) continue;
      const key = `${row.named.meaning.kind} ${row.named.meaning.id}`;
      const known = seen.get(key);
      if (known === undefined) seen.set(key, grams);
      else if (Math.abs(known - grams) > sameWithin * known) again++;
    }
    return again;
  };
  const fats = twice(['fat']);
  const alkali = twice(['alkali']);
  const numbered =
    fats + alkali >= 1 &&
    (assembly.source.text.match(/\b(recipe|batch|version|option|soap)\s*(#\s*)?(1|2|one|two|a|b)\b\s*[:)\n-]/gi) ?? [])
      .length >= 2;
  return fats >= 2 || (fats >= 1 && alkali >= 1) || (numbered && fats + alkali >= 1);
}

const factor = 39.997 / 56.105;

function demandOf(fats: readonly ReadAmount[], catalogue: Catalogue): number {
  return fats.reduce(
    (sum, one) => sum + (one.grams * (catalogue.fats.get(one.id)?.saponification.nominal ?? 0) * factor) / 1000,
    0,
  );
}

/** `1.000 g`: told with an assumption where only one reading fits the alkali, asked where both or none do. */
function decimals(
  assembly: Assembly,
  rows: readonly Row[],
  gramsFor: (row: Row) => number | null,
  catalogue: Catalogue,
  alkaliGrams: number,
): void {
  const odd = rows.filter(
    (row) =>
      row.amount?.other !== null &&
      row.amount?.other !== undefined &&
      !['additive', 'scent'].includes(row.named.meaning.kind),
  );
  if (odd.length === 0) return;
  const [first] = odd;
  if (!first?.amount || first.amount.other === null) return;
  const demand = (swap: boolean): number =>
    rows
      .filter((row) => row.named.meaning.kind === 'fat')
      .reduce((sum, row) => {
        const grams = gramsFor(row) ?? 0;
        const own =
          row.amount?.other != null && row.amount.value > 0 ? (grams * row.amount.other) / row.amount.value : grams;
        return (
          sum +
          ((swap ? own : grams) * (catalogue.fats.get(row.named.meaning.id)?.saponification.nominal ?? 0) * factor) /
            1000
        );
      }, 0);
  const alkali = (swap: boolean): number => {
    const row = odd.find((one) => one.named.meaning.kind === 'alkali');
    return swap && row?.amount?.other != null && row.amount.value > 0
      ? (alkaliGrams * row.amount.other) / row.amount.value
      : alkaliGrams;
  };
  const fitting = (swap: boolean): boolean =>
    alkali(swap) > 0 && alkali(swap) / demand(swap) > 0.6 && alkali(swap) / demand(swap) < 1.6;
  const allAlike =
    odd.length > 1 &&
    odd.some((row) => row.named.meaning.kind === 'alkali') &&
    odd.some((row) => row.named.meaning.kind === 'fat');
  const grouped = first.amount.value > first.amount.other;
  if (fitting(false) && !(allAlike && fitting(true))) {
    if (!(grouped && first.amount.text.includes(',')))
      assembly.assume('number', `I took "${first.amount.text}" as ${roundTo(first.amount.value, 3)} g.`);
    return;
  }
  const natural = first.amount.text.includes(',') && grouped;
  if (alkaliGrams === 0 && (natural || /kg|lb/.test(first.amount.unit?.id ?? ''))) return;
  assembly.doubts.push({ id: 'decimal', said: first.amount.text, readings: [first.amount.value, first.amount.other] });
}

/** Alkali of a third to three times the demand may be wrong, but is meant; beyond that something was misread. */
function plausible(
  assembly: Assembly,
  fats: readonly ReadAmount[],
  alkali: RecipeReading['alkali'],
  catalogue: Catalogue,
): void {
  if (fats.length === 0 || alkali.length === 0 || assembly.doubts.length > 0) return;
  const pure = alkali.reduce((sum, one) => sum + one.grams * (one.id === 'koh' ? factor : 1), 0);
  const ratio = pure / demandOf(fats, catalogue);
  if (ratio < 0.3 || ratio > 3)
    assembly.doubts.push({
      id: 'implausible',
      alkaliGrams: alkali.reduce((sum, one) => sum + one.grams, 0),
      fatGrams: fats.reduce((sum, one) => sum + one.grams, 0),
    });
}

/** Two ways to read the post that are about equally likely and weigh different things. */
function rival(assembly: Assembly, rows: readonly Row[]): void {
  const { bound, items } = assembly.source;
  if (!bound.rival || bound.rival.margin > 0.35) return;
  const say = (binding: Binding): string =>
    binding.groups
      .flatMap((group) => {
        const thing = group.things.map((k) => items[k]).find((item) => item?.kind === 'thing');
        const amount = group.amounts.map((k) => items[k]).find((item) => item?.kind === 'amount');
        return thing?.kind === 'thing' && amount?.kind === 'amount'
          ? [`${thing.named.text} ${amount.quantity.text}`]
          : [];
      })
      .join(', ');
  const first = say(bound.best);
  const second = say(bound.rival.binding);
  if (first !== second && rows.length > 0) assembly.doubts.push({ id: 'two-readings', said: '', first, second });
}

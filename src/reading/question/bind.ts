/** Which figure of a short question belongs to which of its things: the assignment of least cost. */

import type { Token } from '../words/tokens.ts';
import type { Facts, Measure, Thing } from './facts.ts';

export interface Owned {
  readonly measure: Measure;
  readonly owner: Thing | null;
}

const never = Number.POSITIVE_INFINITY;
/** A figure that stays without an owner. */
const lone = 5;
/** Owners tried for one figure: keeps the search small whatever is written. */
const mostOwners = 4;

const weighable: Readonly<Record<string, number>> = {
  alkali: 0,
  water: 0,
  ice: 0,
  stock: 0.3,
  acid: 0,
  liquid: 0,
  additive: 0,
  fat: 0,
  scent: 0,
  ambiguous: 0,
  unheld: 0,
  unknown: 2.5,
};
const weighableRoles: Readonly<Record<string, number>> = {
  'total-fats': 0,
  solution: 0.6,
  'total-solution': 0.2,
  total: 0.8,
  'batch-word': 1.2,
};
const sharing: Readonly<Record<string, number>> = {
  stock: 0,
  acid: 0.2,
  alkali: 0.8,
  water: 0.9,
  additive: 0.5,
  liquid: 0.8,
  scent: 0.5,
  fat: 0.6,
  ambiguous: 0.8,
};
const sharingRoles: Readonly<Record<string, number>> = {
  superfat: -0.3,
  concentration: -0.2,
  solution: 0,
  purity: -0.3,
  'total-fats': 0.3,
};

function suits({ dim, value, upTo }: Measure, { meaning, asked }: Thing): number {
  const role = meaning.kind === 'role';
  if (dim === 'mass' || dim === 'volume') {
    if (asked) return never;
    return (role ? weighableRoles[meaning.id] : weighable[meaning.kind]) ?? never;
  }
  if (dim === 'percent') return (role ? sharingRoles[meaning.id] : sharing[meaning.kind]) ?? never;
  const ratio = role && /^ratio/.test(meaning.id);
  if (dim === 'ratio' || (dim === 'bare' && upTo !== null))
    return ratio ? 0 : meaning.kind === 'water' || meaning.kind === 'alkali' ? 1 : never;
  if (dim === 'parts') return meaning.kind === 'water' || meaning.kind === 'alkali' ? 0 : ratio ? 0.5 : never;
  if (dim === 'bare' && role) {
    if (ratio) return 0.6;
    if (meaning.id === 'superfat' || meaning.id === 'concentration' || meaning.id === 'purity')
      return value > 0 && value <= 120 ? 0.5 : never;
    if (meaning.id === 'chart' || meaning.id === 'temperature') return 0.3;
  }
  return never;
}

function step(token: Token, things: readonly Thing[], at: number): number {
  if (token.t === 'quantity') return 0.6;
  if (token.t === 'line') return 3;
  if (token.t === 'sign') return /^[,;.?]$/.test(token.text) ? 1.5 : token.text === '=' || token.text === ':' ? 0 : 0.4;
  if (token.t === 'name') return token.meaning.kind === 'role' ? 0.6 : 1.6;
  if (token.t === 'aside') return 0.8;
  if (token.text === 'of') return 0;
  if (token.sort === 'joint') return 1;
  if (token.text === 'instead') return 3;
  return things.some((thing) => thing.from <= at && at < thing.to) ? 1.6 : 0.25;
}

function gap(facts: Facts, things: readonly Thing[], measure: Measure, thing: Thing): number {
  const ahead = thing.from >= measure.to;
  const [from, to] = ahead ? [measure.to, thing.from] : [thing.to, measure.from];
  let cost = 0;
  let points = false;
  for (let k = from; k < to; k += 1) {
    const token = facts.tokens[k];
    if (!token) continue;
    cost += step(token, things, k);
    if (token.t === 'word' && /^(is|at|of|are|was)$/.test(token.text)) points = true;
    if (token.t === 'sign' && /^[=:]$/.test(token.text)) points = true;
  }
  if (ahead && /\.$/.test(measure.text)) cost += 1.5;
  return cost + (ahead || points ? 0 : 0.4);
}

/** Every figure with the thing or role word it belongs to. */
export function owned(facts: Facts): readonly Owned[] {
  const things = [...facts.things, ...facts.roles].sort((a, b) => a.from - b.from);
  const measures = facts.measures.slice(0, 6);
  const options = measures.map((measure) =>
    things
      .map((thing, k) => {
        const fits = suits(measure, thing);
        return { k, price: fits === never ? never : fits + gap(facts, things, measure, thing) };
      })
      .filter(({ price }) => price < lone)
      .sort((a, b) => a.price - b.price)
      .slice(0, mostOwners),
  );
  let best = { cost: never, owners: measures.map(() => -1) };
  const owners: number[] = [];
  const taken = new Set<string>();
  const slot = ({ dim }: Measure): string => (dim === 'mass' || dim === 'volume' ? 'amount' : dim);
  const search = (at: number, cost: number): void => {
    if (cost >= best.cost) return;
    const measure = measures[at];
    if (!measure) {
      best = { cost, owners: [...owners] };
      return;
    }
    for (const { k, price } of options[at] ?? []) {
      const several = measure.dim === 'percent' && things[k]?.meaning.kind === 'alkali' && measure.value >= 0.7;
      const key = `${slot(measure)} ${k}${several ? at : ''}`;
      if (taken.has(key)) continue;
      taken.add(key);
      owners.push(k);
      search(at + 1, cost + price);
      owners.pop();
      taken.delete(key);
    }
    owners.push(-1);
    search(at + 1, cost + lone);
    owners.pop();
  };
  search(0, 0);
  return measures.map((measure, k) => ({ measure, owner: things[best.owners[k] ?? -1] ?? null }));
}

export const weighs = ({ measure }: Owned): boolean => measure.dim === 'mass' || measure.dim === 'volume';
export const isOf = ({ owner }: Owned, kind: string): boolean => owner?.meaning.kind === kind;
export const isRole = ({ owner }: Owned, ids: RegExp): boolean =>
  owner?.meaning.kind === 'role' && ids.test(owner.meaning.id);

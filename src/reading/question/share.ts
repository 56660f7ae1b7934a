/** "what is 3 % of 800 g?", "what per cent is 30 g of 800 g?" */
import type { Unit } from '../../units/units.ts';
import { type Owned, weighs } from './bind.ts';
import { baseOf, type Facts, type Measure, type Thing } from './facts.ts';

export interface ShareQuestion {
  readonly kind: 'share';
  /** `amount`: the weight of a share; `percent`: the share of a weight. */
  readonly asks: 'amount' | 'percent';
  readonly share: Measure | null;
  readonly part: Measure | null;
  readonly whole: Measure | null;
  readonly of: Thing | null;
  readonly to: Unit | null;
}

export function readShare(facts: Facts, all: readonly Owned[], forced: boolean): ShareQuestion | null {
  const { words, things, roles, measures, units } = facts;
  // a share of scent has its own limits, one of a fat or an alkali belongs to a recipe
  const taken =
    roles.some(({ meaning }) => meaning.id === 'superfat') ||
    things.some(({ meaning }) => /^(fat|scent|alkali|stock|ambiguous|unheld)$/.test(meaning.kind));
  if (!forced && (taken || measures.length !== 2)) return null;
  // "500 ml of 5 % vinegar": the strength of what is weighed
  const strength = all.find(
    ({ measure, owner }) => measure.dim === 'percent' && owner?.meaning.kind === 'acid' && measure.to === owner.from,
  );
  if (strength && !forced) return null;
  const share = all.find(({ measure }) => measure.dim === 'percent')?.measure ?? null;
  const [first = null, second = null] = all.filter(weighs).map(({ measure }) => measure);
  const of = things.find(({ meaning }) => /^(additive|liquid|acid|water)$/.test(meaning.kind)) ?? null;
  const to = units.find(({ lead }) => lead === 'many' || lead === 'to')?.unit ?? null;
  const common = { kind: 'share' as const, of, to };
  if (share && first && !second) return { ...common, asks: 'amount', share, part: null, whole: first };
  if (
    !share &&
    first &&
    second &&
    first.dim === second.dim &&
    /\b(percent|percentage|per cent|share)\b|%/.test(words)
  ) {
    const [part, whole] = baseOf(first) >= baseOf(second) ? [second, first] : [first, second];
    return { ...common, asks: 'percent', share: null, part, whole };
  }
  return forced ? { ...common, asks: 'amount', share, part: null, whole: first } : null;
}

import type { Chosen, Confidence, Datum, Grade } from './types.ts';

/** Best evidence first. */
export const GRADES: readonly Grade[] = [
  'standard',
  'pharmacopoeia',
  'regulation',
  'handbook',
  'paper',
  'secondary',
  'memory',
];
const CONFIDENCES: readonly Confidence[] = ['high', 'medium', 'low'];

/**
 * The grade a statement counts as. What nobody has read counts as `memory`, except that a standard remembered with
 * high or medium confidence keeps its rank: its tables are known by heart in the trade, and it stays marked.
 */
export function gradeOf(source: Grade, fromMemory: boolean, confidence: Confidence): Grade {
  if (!fromMemory || (source === 'standard' && confidence !== 'low')) return source;
  return 'memory';
}

export interface ChoiceRule {
  /** Lower end of a statement that gives a maximum only (0 for shares); without it such a statement is no range. */
  readonly floor?: number;
  /**
   * A range narrower than `narrow` (relative to its middle) is a typical figure, not a spread: it is widened to at
   * least ± `least` about the middle, and over all other statements if `span`.
   */
  readonly typical?: { readonly narrow: number; readonly least: number; readonly span: boolean };
  /** Widen over statements that were read and lie wholly outside the one taken. */
  readonly spanDisjoint?: boolean;
  /** Statements for which this holds come first, whatever their grade. */
  readonly prefer?: (datum: Datum) => boolean;
}

/** Saponification and iodine values: a spread below 2 % is not believed, and becomes at least ± 2.5 %. */
export const VALUE_RULE: ChoiceRule = { typical: { narrow: 0.02, least: 0.025, span: true }, spanDisjoint: true };
export const UNSAPONIFIABLE_RULE: ChoiceRule = { floor: 0, spanDisjoint: true };
export const MELTING_RULE: ChoiceRule = { spanDisjoint: true };
/** Densities: ± 0.5 % at least, the usual width in the standards; other temperatures are not mixed in. */
export const DENSITY_RULE: ChoiceRule = { typical: { narrow: 0.002, least: 0.005, span: false } };

interface Range {
  readonly index: number;
  readonly low: number;
  readonly high: number;
  readonly datum: Datum;
}

/**
 * Takes one of several published statements of a quantity: best grade, then read before remembered, then the surer,
 * then the earlier in the list. A remembered statement gives way to one of the same figures that was read.
 * @returns null if no statement gives a range
 */
export function choose(
  entries: readonly Datum[],
  rule: ChoiceRule,
  titleOf: (source: string) => string,
): Chosen | null {
  const ranges = entries.flatMap((datum, index): Range[] => {
    const low = datum.low ?? rule.floor ?? null;
    return low === null || datum.high === null ? [] : [{ index, low, high: datum.high, datum }];
  });
  const best = ranges.reduce<Range | null>(
    (first, next) => (first && !isBetter(next, first, rule) ? first : next),
    null,
  );
  if (!best) return null;
  const twin = best.datum.fromMemory
    ? ranges.find((r) => !r.datum.fromMemory && r.low === best.low && r.high === best.high)
    : undefined;
  const taken = twin ?? best;

  const nominal = (taken.low + taken.high) / 2;
  const others = ranges.filter((range) => range !== taken);
  const { typical } = rule;
  const reasons = [reasonTaken(taken, best, others.length, titleOf)];
  let span: readonly Range[] = [];
  let { low, high } = taken;
  if (typical && high - low < typical.narrow * Math.abs(nominal) - 1e-9) {
    low = nominal * (1 - typical.least);
    high = nominal * (1 + typical.least);
    span = typical.span ? others : [];
    reasons.push(reasonTypical(taken, typical.least, span.length > 0));
  } else if (rule.spanDisjoint) {
    span = others.filter((r) => !r.datum.fromMemory && (r.high < taken.low || r.low > taken.high));
    if (span.length > 0) reasons.push('Widened over other published figures that lie wholly outside it.');
  }
  for (const range of span) {
    low = Math.min(low, range.low);
    high = Math.max(high, range.high);
  }
  return {
    low,
    high,
    nominal,
    taken: taken.index,
    why: reasons.join(' '),
    entries,
    fromMemory: taken.datum.fromMemory,
  };
}

function isBetter(a: Range, b: Range, rule: ChoiceRule): boolean {
  const key = ({ datum }: Range): readonly number[] => [
    rule.prefer && !rule.prefer(datum) ? 1 : 0,
    GRADES.indexOf(datum.grade),
    datum.fromMemory ? 1 : 0,
    CONFIDENCES.indexOf(datum.confidence ?? 'high'),
  ];
  const keyB = key(b);
  for (const [i, rank] of key(a).entries()) {
    const difference = rank - (keyB[i] ?? 0);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

function reasonTaken(taken: Range, best: Range, others: number, titleOf: (source: string) => string): string {
  const title = titleOf(taken.datum.source);
  const memory = taken.datum.fromMemory ? ', quoted from memory' : '';
  const rank = others === 0 ? 'the only figure held' : `the best evidence of ${others + 1} figures held`;
  const twin = taken === best ? '' : `, which states the same as ${titleOf(best.datum.source)}`;
  return `Taken from ${title} (${taken.datum.grade === 'memory' ? 'unread' : taken.datum.grade}${memory})${twin}: ${rank}.`;
}

function reasonTypical(taken: Range, least: number, spans: boolean): string {
  const what = taken.low === taken.high ? 'A single figure' : 'So narrow a range';
  const percent = `${least * 100} %`;
  return `${what} is typical rather than a spread: widened to ${percent} either way${spans ? ' and over all other figures' : ''}.`;
}

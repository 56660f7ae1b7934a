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
export const CONFIDENCES: readonly Confidence[] = ['high', 'medium', 'low'];

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
  /** Smaller is better evidence. */
  readonly rank: number;
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
  let best: Range | undefined;
  const ranges: Range[] = [];
  for (let index = 0; index < entries.length; index += 1) {
    const datum = entries[index] as Datum;
    const low = datum.low ?? rule.floor;
    if (low === undefined || datum.high === null) continue;
    const range = { index, low, high: datum.high, datum, rank: rankOf(datum, rule) };
    ranges.push(range);
    if (!best || range.rank < best.rank) best = range;
  }
  if (!best) return null;
  const taken = (best.datum.fromMemory && readTwin(best, ranges)) || best;

  const nominal = (taken.low + taken.high) / 2;
  const { typical } = rule;
  const isTypical = typical !== undefined && taken.high - taken.low < typical.narrow * Math.abs(nominal) - 1e-9;
  let low = isTypical ? nominal - typical.least * nominal : taken.low;
  let high = isTypical ? nominal + typical.least * nominal : taken.high;
  let spanned = 0;
  for (const range of ranges) {
    if (range === taken || !(isTypical ? typical.span : rule.spanDisjoint && liesOutside(range, taken))) continue;
    spanned += 1;
    low = Math.min(low, range.low);
    high = Math.max(high, range.high);
  }
  const reasons = [reasonTaken(taken, best, ranges.length, titleOf)];
  if (isTypical) reasons.push(reasonTypical(taken, typical.least, spanned > 0));
  else if (spanned > 0) reasons.push('Widened over other published figures that lie wholly outside it.');
  const why = reasons.join(' ');
  return { low, high, nominal, taken: taken.index, why, entries, fromMemory: taken.datum.fromMemory };
}

function readTwin(best: Range, ranges: readonly Range[]): Range | undefined {
  return ranges.find((range) => !range.datum.fromMemory && range.low === best.low && range.high === best.high);
}

function liesOutside(range: Range, taken: Range): boolean {
  return !range.datum.fromMemory && (range.high < taken.low || range.low > taken.high);
}

function rankOf(datum: Datum, rule: ChoiceRule): number {
  const unwanted = rule.prefer && !rule.prefer(datum) ? 1000 : 0;
  const confidence = CONFIDENCES.indexOf(datum.confidence ?? 'high');
  return unwanted + 100 * GRADES.indexOf(datum.grade) + (datum.fromMemory ? 10 : 0) + confidence;
}

function reasonTaken(taken: Range, best: Range, held: number, titleOf: (source: string) => string): string {
  const title = titleOf(taken.datum.source);
  const memory = taken.datum.fromMemory ? ', quoted from memory' : '';
  const rank = held === 1 ? 'the only figure held' : `the best evidence of ${held} figures held`;
  const twin = taken === best ? '' : `, which states the same as ${titleOf(best.datum.source)}`;
  return `Taken from ${title} (${taken.datum.grade === 'memory' ? 'unread' : taken.datum.grade}${memory})${twin}: ${rank}.`;
}

function reasonTypical(taken: Range, least: number, spans: boolean): string {
  const what = taken.low === taken.high ? 'A single figure' : 'So narrow a range';
  const percent = `${least * 100} %`;
  return `${what} is typical rather than a spread: widened to ${percent} either way${spans ? ' and over all other figures' : ''}.`;
}

/** "Imperial is rounded, so go by metric": which of two weights of one thing counts, by the post's own words. */
import { sameWithin } from '../rows/items.ts';
import type { Quantity } from '../words/quantities.ts';
import { type Assembly, label, type Row } from './rows.ts';

type System = 'metric' | 'imperial';

const units: Readonly<Record<System, string>> = {
  metric: '(?:metric|grams?|grammes?|g|kilos?|kg)',
  imperial: '(?:imperial|us|ounces?|oz|pounds?|lbs?|avoirdupois)',
};
const column = '(?: (?:column|figures?|numbers?|weights?|values?|amounts?|ones?|side|row))?';
const goesBy =
  '(?:(?:go|going|went) (?:by|with|off)|count|trust|use|follow|weigh(?:ed|ing)? (?:it |all |everything )?(?:by|in|out in)|believe|take)';
const counts =
  '(?:counts?|(?:is|are) (?:the |what |the one |the ones |those )?(?:that )?(?:counts?|right|exact|precise|correct|true|i (?:really |actually )?(?:weigh|go|use|measure)))';
const rounded =
  '(?:(?:is|are|was|were|only|just|all|a bit|roughly|converted and) )*(?:rounded|rough|approximate|approx|about|inexact|off)\\b';

/** What a sentence says for a system, and what against it. */
const told = (system: System): { readonly for: RegExp; readonly against: RegExp } => ({
  for: new RegExp(
    `\\b${goesBy} (?:the |my |only )*${units[system]}\\b(?! *\\?)|\\b${units[system]}${column} ${counts}(?! *\\?)`,
  ),
  against: new RegExp(
    `\\b${units[system]}${column} ${rounded}|\\b(?:ignore|never mind|forget) (?:the )?${units[system]}\\b`,
  ),
});
/** Nobody has decided. */
const open = /\b(?:if|should|shall|can|do i|whether|dont|don't|not|or|maybe|perhaps|said|says)\b/;

/** The system whose weights count; null where the post does not say so, or says both. */
function countingSystem(text: string): System | null {
  const all = [told('metric'), told('imperial')];
  const votes = [0, 0];
  for (const sentence of text.toLowerCase().split(/[\n.!;]|(?<=\?)/)) {
    if (open.test(sentence)) continue;
    all.forEach((one, k) => {
      if (one.for.test(sentence)) votes[k] = (votes[k] ?? 0) + 1;
      if (one.against.test(sentence)) votes[1 - k] = (votes[1 - k] ?? 0) + 1;
    });
  }
  const [metric = 0, imperial = 0] = votes;
  return metric > 0 === imperial > 0 ? null : metric > 0 ? 'metric' : 'imperial';
}

const isMetric = ({ unit }: Quantity): boolean => /^(?:m|k|da)?g$/.test(unit?.id ?? '');

/** What one of the last written place is worth: `300` may be rounded to the ten. */
function stepOf({ text, unit }: Quantity): number {
  const [, whole = '', places = ''] = /(\d+)(?:[.,](\d+))?/.exec(text) ?? [];
  const zeros = /0*$/.exec(whole)?.[0].length ?? 0;
  return (places ? 10 ** -places.length : 10 ** Math.min(zeros, 1)) * (unit?.factor ?? 1);
}

/** The rows with the weight that counts; where rounding does not part the two, both stay for a question. */
export function inCountingUnit(assembly: Assembly, rows: Row[]): Row[] {
  const hasBoth = ({ amount, same }: Row): boolean =>
    amount?.dim === 'mass' && same?.dim === 'mass' && isMetric(amount) !== isMetric(same);
  if (!rows.some(hasBoth)) return rows;
  const system = countingSystem(assembly.source.text);
  if (!system) return rows;
  return rows.map((row) => {
    const { amount, same } = row;
    if (!amount || !same || !hasBoth(row)) return row;
    const isOwn = isMetric(amount) === (system === 'metric');
    const [taken, rounded] = isOwn ? [amount, same] : [same, amount];
    const apart = Math.abs(taken.value - rounded.value);
    if (apart > Math.max(stepOf(rounded) / 2, sameWithin * taken.value)) return row;
    const of = label(assembly, row.named.meaning);
    assembly.fate(rounded, 'used', of);
    assembly.assume('corrected', `I went by the ${system} weights, as the post says.`);
    return { ...row, amount: taken, same: null, said: taken.text };
  });
}

import { withUnit } from '../columns/columns.ts';
import { speaksOfMoney } from '../figures/prices.ts';
import type { Quantity } from '../words/quantities.ts';
import { isAny, isMark, sentenceAt, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Roles } from './roles.ts';
import { type Assembly, type Row, roundTo, unitFor } from './rows.ts';

type Sums = Readonly<Record<'fats' | 'after' | 'alkali' | 'water' | 'liquids' | 'others', number>>;

const near = (a: number, b: number): boolean => b > 0 && Math.abs(a - b) <= Math.max(0.02 * b, 1.01);

export function crossTotals(assembly: Assembly, roles: Roles, sums: Sums, rows: readonly Row[]): void {
  if (!roles.totalFats && roles.totals.length === 0) return;
  const { fats, after, alkali, water, liquids, others } = sums;
  const wet = water + liquids;
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
    wet,
  ];
  // these fall near a total by chance more often than somebody sums them up
  const odd = [fats + others, allFats + others, others, fats + alkali];
  if (roles.totalFats && allFats > 0) {
    const { value, other, upTo } = roles.totalFats;
    const fit = [fats, allFats, allFats + alkali + wet];
    // "1.200 g of oils": one reading that agrees is enough; scent among the oils only where it makes just that
    const agrees = [value, other ?? value].some(
      (said) => fit.some((sum) => near(said, sum)) || isStatementOf(said, allFats + others),
    );
    if (upTo === null && !agrees) disagree(assembly, roles.totalFats, [allFats, fats], rows);
  }
  for (const total of roles.totals) {
    const { value, other } = total.quantity;
    const said = other === null ? [total.grams] : [total.grams, (total.grams * other) / value];
    const agrees = (sum: number): boolean => said.some((grams) => near(grams, sum));
    if (!total.strict || allFats === 0 || options.some(agrees)) continue;
    if (odd.some((sum) => said.some((grams) => isStatementOf(grams, sum)))) continue;
    if (isSumIn(rows, (sum) => said.some((grams) => isStatementOf(grams, sum)))) continue;
    const all = allFats + alkali + wet;
    if (isRough(assembly, total.quantity) && [all, all + others].some((sum) => isRoughly(said, sum))) continue;
    disagree(assembly, total.quantity, [allFats + alkali + wet, fats, allFats], rows);
  }
}

/** How near "1.5 kg total ish" or "about 950 g" comes to what it is of. */
const roughWithin = 0.05;
const isRoughly = (said: readonly number[], sum: number): boolean =>
  said.some((grams) => Math.abs(grams - sum) <= roughWithin * sum);
const roughly = /^(?:about|around|roughly|approx|approximately|circa|ca|abt|nearly|almost|some|ish|so)$/;

/** "About 950 g", "1.5 kg total ish": a total that is said to be no exact one. */
function isRough({ source: { items, tokens } }: Assembly, total: Quantity): boolean {
  const figure = items.find((item) => item.kind === 'amount' && item.quantity.numbers === total.numbers);
  if (!figure) return false;
  const beside = [figure.from - 1, figure.from - 2, figure.to, figure.to + 1, figure.to + 2];
  return / ish$/.test(total.text) || beside.some((k) => roughly.test(wordAt(tokens, k)) || isMark(tokens[k], '~±'));
}

/** A figure without a unit that is this many times larger or smaller than the sum is no total of weights. */
const farOff = { money: 2, anything: 5 };

/** A total that is not what the lines make. `sums`: what it may be of, the likeliest first. */
function disagree(assembly: Assembly, total: Quantity, sums: readonly number[], rows: readonly Row[]): void {
  const [sum = 0] = sums;
  const why = otherThanWeight(assembly, total, sums, rows);
  const known = why ? undefined : sums.find((one) => isSaidToo(assembly, one, total));
  if (why) {
    assembly.assume('left-out', `I left out the total "${total.text}": ${why}.`, { said: total.text });
    assembly.fate(total, 'aside', why);
  } else if (known !== undefined) {
    const lines = total.unit ? `${roundTo(known / total.unit.factor, 2)} ${total.unit.id}` : `${roundTo(known, 1)} g`;
    assembly.assume(
      'summed',
      `The total says ${total.text.replace(/\.$/, '')}, the lines make ${lines}; I went by the lines.`,
    );
  } else assembly.doubts.push({ id: 'total-disagrees', said: total.text, sum });
}

/** Tokens of a sentence about the scent, at the most. */
const longestScent = 24;

/** "The scent will be cedar with a little orange, 36 g altogether": a sentence of nothing that makes the soap. */
function isOfScent(tokens: readonly Token[], at: number): boolean {
  const { from, to } = sentenceAt(tokens, at, longestScent);
  const isStuff = (one: Token): boolean =>
    one.t === 'name' && /^(?:fat|alkali|stock|water|liquid|unheld|ambiguous)$/.test(one.meaning.kind);
  return (
    isAny(tokens, from, at, (one) => one.t === 'name' && one.meaning.kind === 'scent') &&
    !isAny(tokens, from, to, isStuff)
  );
}

/** Why a bare figure beside lines that all have units is the total of something else; null where it may be theirs. */
function isOfWhole({ source: { text } }: Assembly, total: number, sums: readonly number[]): boolean {
  const factor = sizes.find(([said]) => said.test(text))?.[1];
  return factor !== undefined && sums.some((sum) => near(total * factor, sum) || near(total, sum * factor));
}
/** "For 1 kg of oils, but I only made half." */
const sizes: readonly (readonly [RegExp, number])[] = [
  [/\b(?:made|make|making|did|do|doing|cook\w*|took|take|only) (?:only |just )?(?:a |the )?half\b|\bhalved\b/i, 0.5],
  [/\bdoubl(?:ed|ing)\b|\b(?:made|make|did|do) (?:a |the )?(?:double|twice)\b/i, 2],
];

function otherThanWeight(
  assembly: Assembly,
  total: Quantity,
  sums: readonly number[],
  rows: readonly Row[],
): string | null {
  const { items, tokens, bound } = assembly.source;
  const figure = items.find((item) => item.kind === 'amount' && item.quantity.numbers === total.numbers);
  const weighed = rows.filter(({ named }) => named.meaning.kind === 'fat' || named.meaning.kind === 'alkali');
  if (figure?.kind === 'amount' && isOfScent(tokens, figure.from)) return 'the weight of the scent';
  if (isOfWhole(assembly, total.value, sums)) return 'what the recipe weighs in its own size';
  if (figure?.kind !== 'amount' || figure.quantity.dim !== 'bare') return null;
  if (weighed.some(({ amount }) => amount?.dim === 'bare')) return null;
  const { value } = figure.quantity;
  const grams = value * (unitFor(assembly, figure.from) ? (total.unit?.factor ?? 1) : 1);
  const beyond = (factor: number): boolean => sums.every((sum) => grams < sum / factor || grams > sum * factor);
  const loose = bound.best.orphans.flatMap((k) => {
    const item = items[k];
    return item?.kind === 'amount' && item.quantity.dim === 'bare' ? [item.quantity.value] : [];
  });
  const sum = loose.reduce((all, one) => all + one, 0);
  if (loose.length > 1 && Math.abs(sum - value) < 0.011 * loose.length) return 'the sum of other figures';
  if (beyond(farOff.money) && speaksOfMoney(tokens)) return 'a price';
  return beyond(farOff.anything) ? 'no weight like those of the lines' : null;
}

/** A figure that no ingredient has says what the lines make: the post knows that the total is another. */
function isSaidToo(assembly: Assembly, sum: number, total: Quantity): boolean {
  const { items, bound } = assembly.source;
  return items.some((item, k) => {
    if (item.kind !== 'amount' || item.quantity.numbers === total.numbers || item.quantity.upTo !== null) return false;
    const { quantity } = item;
    if (quantity.dim !== 'mass' && quantity.dim !== 'bare') return false;
    const taken = bound.groupOf[k]?.things.some((at) => {
      const thing = items[at];
      return thing?.kind === 'thing' && thing.named.meaning.kind !== 'role' && thing.named.meaning.kind !== 'unknown';
    });
    if (taken) return false;
    const unit = quantity.dim === 'bare' ? (unitFor(assembly, item.from)?.unit ?? total.unit?.id) : undefined;
    const grams = unit ? withUnit(quantity, unit).value : quantity.value;
    return isStatementOf(grams, sum);
  });
}

/** How near a figure must come to what the lines make to be its statement. */
const saidWithin = 0.006;
export const isStatementOf = (grams: number, sum: number): boolean => Math.abs(grams - sum) <= saidWithin * sum;

/** Rows whose sums are looked at, at the most. */
const mostRows = 40;

/** One of the sums that a post may state is such a one: of two or more neighbouring rows. */
export function isSumIn(rows: readonly Row[], isOne: (sum: number) => boolean): boolean {
  const grams: number[] = [];
  for (const row of rows) if (row.grams !== null && grams.length < mostRows) grams.push(row.grams);
  for (let from = 0; from < grams.length; from++) {
    let sum = grams[from] ?? 0;
    for (let to = from + 1; to < grams.length; to++) {
      sum += grams[to] ?? 0;
      if (isOne(sum)) return true;
    }
  }
  return false;
}

import { withUnit } from '../columns/columns.ts';
import type { Roles } from './roles.ts';
import { type Assembly, label, type Row, unitFor } from './rows.ts';

/** Two weights of all the fats, of which nobody knows which is meant. */
function askTotal({ doubts }: Assembly, { totalFats, totalRival }: Roles): void {
  if (totalFats && totalRival && !doubts.some(({ id }) => id === 'two-amounts'))
    doubts.push({ id: 'two-amounts', of: 'all the fats', said: [totalRival.text, totalFats.text] });
}

/** Fats by share or part of a stated total, or with shares beside weights. */
export function settleShares(assembly: Assembly, rows: readonly Row[], roles: Roles): Map<Row, number> {
  const grams = new Map<Row, number>();
  // a fat weighed for after the cook is no part of the shares
  const fats = rows.filter(
    ({ named, after, amount }) =>
      (named.meaning.kind === 'fat' || named.meaning.kind === 'unheld') && !(after && amount?.dim === 'mass'),
  );
  const parts = fats.filter((row) => row.amount?.dim === 'parts');
  const isWeighed = (id: string): boolean =>
    fats.some(({ named, amount }) => named.meaning.id === id && amount && amount.dim !== 'parts');
  const signed = fats.filter((row) => row.share && !row.amount && !isWeighed(row.named.meaning.id));
  const shares = signed.length > 0 ? withoutSign(fats, signed) : signed;
  const bareShares =
    shares.length === 0 && parts.length === 0 && roles.totalFats
      ? fats.filter((row) => row.amount?.dim === 'bare')
      : [];
  const base = (): number | null => {
    askTotal(assembly, roles);
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
    const sum = shares.reduce((all, row) => all + shareOf(row), 0);
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
      else for (const row of shares) grams.set(row, (total * shareOf(row)) / sum);
    }
  } else if (bareShares.length > 1 && bareShares.length === fats.length) {
    const sum = bareShares.reduce((all, row) => all + (row.amount?.value ?? 0), 0);
    const total = roles.totalFats?.value ?? 0;
    const found = unitFor(assembly, bareShares[0]?.token ?? 0);
    const asWeights = found
      ? bareShares.reduce((all, row) => all + (row.amount ? withUnit(row.amount, found.unit).value : 0), 0)
      : null;
    if (Math.abs(sum - 100) < 0.6 && (asWeights === null || Math.abs(asWeights - total) > 0.02 * total)) {
      askTotal(assembly, roles);
      assembly.assume('shares', `I took the figures at the fats as per cent of ${roles.totalFats?.text ?? ''}.`);
      for (const row of bareShares) grams.set(row, (total * (row.amount?.value ?? 0)) / sum);
    }
  } else if (isOfHundred(assembly, fats, rows)) assembly.doubts.push({ id: 'shares-total' });
  return grams;
}

/** "Olive 40, coconut 30, palm 30, water 300 g": figures that make a hundred, whose unit would be that of something else. */
function isOfHundred(assembly: Assembly, fats: readonly Row[], rows: readonly Row[]): boolean {
  if (fats.length < 2 || !fats.every(({ amount }) => amount?.dim === 'bare')) return false;
  const isWeighed = ({ named: { meaning }, amount }: Row): boolean =>
    (meaning.kind === 'alkali' || meaning.kind === 'stock') && amount !== null;
  const sum = fats.reduce((all, { amount }) => all + (amount?.value ?? 0), 0);
  return Math.abs(sum - 100) < 0.6 && unitFor(assembly, fats[0]?.token ?? 0)?.assumed === true && !rows.some(isWeighed);
}

/** A share that is more than this is no superfat that anybody means. */
const mostSuperfat = 0.25;

const spoken = /\bsuper ?fat|\bsf\b/i;

/** "500 g olive, 200 g coconut, 5 %": the only share, behind the last of the fats, is the superfat. */
function looseSuperfat(assembly: Assembly, rows: readonly Row[], { share, token }: Row, roles: Roles): boolean {
  const fats = rows.filter((row) => row.named.meaning.kind === 'fat' && (row.amount || row.share));
  const isLast = fats.every((row) => row.token <= token) && fats.filter((row) => row.share).length === 1;
  const [at] = share?.numbers ?? [];
  const before = at === undefined ? undefined : assembly.source.prims[at - 1]?.text;
  if (!share || !isLast || before === '(' || share.upTo !== null) return false;
  // "at 110 % superfat": of what else could it be
  const isOdd = share.value > 1 && roles.superfat === null && spoken.test(assembly.source.text);
  // "she swears by 10 % superfat … at my 5 %"
  const isOwn = before?.toLowerCase() === 'my' && share.value <= mostSuperfat;
  if (!isOdd && !isOwn && (share.value > mostSuperfat || roles.superfat !== null)) return false;
  roles.superfat = share.value;
  roles.superfatSaid = share;
  assembly.assume('shares', `I took "${share.text}" as the superfat.`);
  assembly.fate(share, 'used', 'superfat');
  return true;
}

/** Shares beside weights must agree with them, of the fats or of the whole. */
const isWeighedFat = ({ named, grams }: Row): boolean => named.meaning.kind === 'fat' && grams !== null;

export function crossShares(assembly: Assembly, rows: readonly Row[], all: number, roles: Roles): void {
  const both = rows.filter((row) => row.named.meaning.kind === 'fat' && row.share && row.amount && row.grams !== null);
  // "100 % olive oil 600 g, coconut 200 g": how pure it is
  if (both.length === 1 && both[0]?.share?.value === 1 && rows.filter(isWeighedFat).length > 1) {
    if (both[0].share) assembly.fate(both[0].share, 'aside', 'how pure it is');
    return;
  }
  if (both.length === 0) return;
  const fats = rows.filter((row) => row.named.meaning.kind === 'fat').reduce((sum, row) => sum + (row.grams ?? 0), 0);
  const off = (base: number): Row | undefined =>
    both.find((row) => Math.abs((row.share?.value ?? 0) - (row.grams ?? 0) / base) > 0.0151);
  const bad = off(fats);
  if (bad && off(all) && !looseSuperfat(assembly, rows, bad, roles))
    assembly.doubts.push({
      id: 'shares-disagree',
      of: label(assembly, bad.named.meaning),
      said: bad.share?.value ?? 0,
      weighed: (bad.grams ?? 0) / fats,
    });
}

/** A share as it is said, with its sign or without. */
const shareOf = ({ share, amount }: Row): number => share?.value ?? (amount?.value ?? 0) / 100;

/** `lard 60 %, coconut 25, sunflower 15`: the sign stands behind the first alone, and all make the whole. */
function withoutSign(fats: readonly Row[], signed: readonly Row[]): readonly Row[] {
  const loose = fats.filter(
    (row) => !row.share && row.amount?.dim === 'bare' && !row.amount.negative && row.amount.upTo === null,
  );
  if (loose.length === 0 || loose.length + signed.length < fats.length) return signed;
  return Math.abs(fats.reduce((sum, row) => sum + shareOf(row), 0) - 1) <= 0.0101 ? fats : signed;
}

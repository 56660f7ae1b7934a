import { linesOf } from '../columns/columns.ts';
import { ofElse } from '../figures/elsewise.ts';
import { lateAgain, withoutHeld } from '../figures/held-back.ts';
import { inStore } from '../figures/in-store.ts';
import type { ReadAmount, RecipeReading } from '../reading.ts';
import { askedWhich, lyeOfLiquid } from '../rows/asked.ts';
import { withRest } from '../rows/rest.ts';
import { isMixedUp } from '../text/letters.ts';
import { rawText } from '../text/scan.ts';
import { damaged } from '../words/aside.ts';
import { isAny, sentenceAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { isAdded, isAlternative, isKept, isOfBefore, isOther } from './added.ts';
import { beyondWhole, loosePurity, readAlkali } from './alkali.ts';
import { alkaliByMeasure } from './by-measure.ts';
import { calledAfter } from './called-after.ts';
import { climbing } from './climbing.ts';
import { eitherOr, lyeAhead, orphans, rival, twoRecipes, unitOrUnit } from './doubtful.ts';
import { settleFates } from './fates.ts';
import { lyeOfFats } from './lye-of-fats.ts';
import { mentions, saltForAlkali, unsaid, vagueAmounts } from './missing.ts';
import { unknownNames, withoutTalk } from './names.ts';
import { plainSoda } from './plain-soda.ts';
import { decimals, demandOf, plausible } from './plausible.ts';
import { isRetold } from './retold.ts';
import { type Roles, readRoles } from './roles.ts';
import {
  Assembly,
  crossUnits,
  gramsOf,
  type Kindred,
  label,
  noteName,
  type Row,
  roundTo,
  rowsOf,
  type Source,
  sameAmount,
  weighedAs,
} from './rows.ts';
import { withoutTwin } from './scaled-twin.ts';
import { crossShares, settleShares } from './shares.ts';
import { asSwapped, swapAsked } from './swap-asked.ts';
import { withoutTitle } from './titled.ts';
import { crossTotals } from './totals.ts';
import { inCountingUnit } from './unit-counts.ts';
import { vagueChange } from './vague-change.ts';
import { impliedWater, looseRatio, partsRatio, readWater, restOfSolution } from './water.ts';

/** A line of talk rather than a row of a list. */
function chatty(assembly: Assembly, line: number): boolean {
  const { tokens } = assembly.source;
  const span = linesOf(tokens)[line];
  let words = 0;
  for (let k = span?.from ?? 0; k < (span?.to ?? 0); k++) {
    const token = tokens[k];
    if (token?.t === 'word' && token.sort === 'everyday') words++;
  }
  return words > 2;
}

/** "Only got 180 g out of the jar", "lost 30 g of the coconut": no second weight to add. */
function isLess(tokens: readonly Token[], { token }: Row): boolean {
  const { from, to } = sentenceAt(tokens, token, longestRemark);
  return isAny(tokens, from, to, (one) => one.t === 'word' && lessening.test(one.text));
}
const longestRemark = 16;
const lessening = /^(?:only|just|barely|merely|lost|spilt|spilled|wasted|left|short|instead|got)$/;

/** Two figures for one fat or liquid: the same again is a repetition, rows of one list are summed, anything else is asked. */
function merge(assembly: Assembly, rows: readonly Row[], prose: boolean): ReadAmount[] {
  const byId = new Map<string, Row[]>();
  for (const row of rows) {
    if (row.grams === null) continue;
    const list = byId.get(row.named.meaning.id);
    if (list) list.push(row);
    else byId.set(row.named.meaning.id, [row]);
  }
  const inLine = Map.groupBy(rows, ({ line }) => line);
  // "A) 500 g olive, 200 g coconut" and "B) 600 g lard, 150 g coconut": two lists, and no rows of one
  const isList = ({ line }: Row): boolean => (inLine.get(line)?.length ?? 0) > 1;
  const out: ReadAmount[] = [];
  for (const [id, list] of byId) {
    const [first] = list;
    if (!first) continue;
    let grams = first.grams ?? 0;
    if (list.length > 1) {
      const of = label(assembly, first.named.meaning);
      const equal = list.every((one) => sameAmount(one, first));
      const isTold = list.some((one) => chatty(assembly, one.line));
      const isTheSame = list.slice(1).every((one) => isOfBefore(assembly.source.tokens, one));
      const apart = prose || isTheSame || isTold || list.some((one) => Math.abs(one.line - first.line) >= 3);
      const more = list.slice(1);
      const isOpen = more.some((one) => isOther(assembly.source.tokens, one));
      if (more.every((one) => isAdded(assembly.source.tokens, one, first))) {
        grams = list.reduce((sum, one) => sum + (one.grams ?? 0), 0);
        assembly.assume(
          'corrected',
          `I added up ${list.map((one) => one.said).join(' and ')} of ${of}, as the post says.`,
        );
      } else if (equal && apart && !isOpen)
        assembly.assume('repeated', `${of} stands ${list.length} times with one amount; I took it once.`);
      else if (
        !equal &&
        list.every((one) => one.line === first.line || isList(one)) &&
        list.some((one) => one.line !== first.line) &&
        isList(first)
      )
        assembly.doubts.push({ id: 'two-amounts', of, said: list.map((one) => one.said) });
      else if (
        !equal &&
        !isOpen &&
        list.every((one) => (one.amount?.dim === 'bare') === (first.amount?.dim === 'bare')) &&
        [...new Set(list.map((one) => one.line))].every((line) => !chatty(assembly, line)) &&
        !isRetold(assembly.source.tokens, list, rows) &&
        !more.some((one) => [isAlternative, isLess, isKept].some((isSo) => isSo(assembly.source.tokens, one)))
      ) {
        grams = list.reduce((sum, one) => sum + (one.grams ?? 0), 0);
        assembly.assume('summed', `I added up ${list.map((one) => one.said).join(' and ')} of ${of}.`);
      } else assembly.doubts.push({ id: 'two-amounts', of, said: list.map((one) => one.said) });
    }
    out.push({ id, grams, said: first.said });
  }
  return out;
}

/** The rows of each kind, in order. */
function byKind(rows: readonly Row[]): (kind: Kindred) => readonly Row[] {
  const lists = new Map<string, Row[]>();
  for (const row of rows) {
    const list = lists.get(row.named.meaning.kind);
    if (list) list.push(row);
    else lists.set(row.named.meaning.kind, [row]);
  }
  return (kind) => lists.get(kind) ?? none;
}

const none: readonly Row[] = [];

/** The rows with their grams, from their own amounts or their shares of the whole. */
function weighed(assembly: Assembly, rows: readonly Row[], roles: Roles): Row[] {
  const shared = settleShares(assembly, rows, roles);
  return rows.map((row) => {
    crossUnits(assembly, row);
    const { kind } = row.named.meaning;
    if (kind !== 'unknown' && kind !== 'ambiguous' && kind !== 'unheld') noteName(assembly, row.named);
    const of = label(assembly, row.named.meaning);
    if (row.amount) assembly.fate(row.amount, 'used', of);
    if (row.same) assembly.fate(row.same, 'used', of);
    if (row.share) assembly.fate(row.share, 'used', of);
    const own =
      !shared.has(row) && row.amount && row.amount.dim !== 'parts'
        ? gramsOf(assembly, row.named, weighedAs(row.amount, row.same), row.token)
        : null;
    return { ...row, grams: shared.get(row) ?? own };
  });
}

/** What needs no word of it: a count, or what is asked about. */
const isPlain: ReadonlySet<string> = new Set([damaged, 'a count', 'a total that agrees']);

/** The fat, alkali or liquid right behind a figure, with "of" between, or right before it. */
function stuffBeside(tokens: readonly Token[], k: number): string | null {
  const next = tokens[k + 1];
  for (const one of [next?.t === 'word' && next.sort === 'filler' ? tokens[k + 2] : next, tokens[k - 1]])
    if (one?.t === 'name' && /^(?:fat|alkali|water|liquid)$/.test(one.meaning.kind)) return one.text;
  return null;
}

/** What was left out that the answer tells: no amount beside an ingredient is set aside unsaid. */
function tellAsides(assembly: Assembly): void {
  const { tokens, prims } = assembly.source;
  const kept: string[] = [];
  const elses: string[] = [];
  const amounts: string[] = [];
  tokens.forEach((token, k) => {
    if (token.t !== 'aside' || isPlain.has(token.reason)) return;
    const text = rawText(prims, token.from, token.to).replace(/\.$/, '');
    const isWorded = /\p{L}/u.test(text);
    if (token.reason === inStore) {
      if (isWorded) kept.push(`"${text}"`);
    } else if (ofElse.has(token.reason)) elses.push(`"${text}"`);
    else if (isWorded) {
      const name = stuffBeside(tokens, k);
      if (name) amounts.push(`"${text}" beside "${name}" (${token.reason})`);
    }
  });
  if (kept.length > 0) assembly.assume('left-out', `I left out ${inStore} (${kept.join(', ')}).`);
  if (amounts.length > 0) assembly.assume('left-out', `I left out ${amounts.join(', ')}.`);
  if (elses.length > 0) assembly.assume('left-out', `I left out ${elses.join(', ')}, said of something else.`);
}

export function assemble(source: Source): RecipeReading {
  const { tokens, bound, catalogue } = source;
  const assembly = new Assembly(source);
  const binding = bound.best;
  if (source.disordered) assembly.doubts.push({ id: 'disordered' });
  const roles = readRoles(assembly, binding);
  loosePurity(assembly, roles);
  const all = withoutTitle(
    assembly,
    weighed(
      assembly,
      withRest(assembly, withoutTalk(assembly, inCountingUnit(assembly, rowsOf(assembly, binding))), roles),
      roles,
    ),
    false,
  );
  const isTwice = !source.several.isNumbered && twoRecipes(assembly, all);
  const counted = (isTwice ? withoutTwin(assembly, all) : null) ?? all;
  const weights = plainSoda(assembly, withoutTitle(assembly, counted, true));
  const ofWeights = byKind(weights);

  unknownNames(assembly, weights, roles.superfat);
  const isSeveral = (isTwice && counted === all) || source.several.isNumbered;
  if (isSeveral) assembly.doubts.push({ id: 'two-recipes', parts: source.several.choices() });
  const prose = weights.length >= 3 && linesOf(tokens).length <= 3;
  const fatRows = lateAgain(tokens, ofWeights('fat'));
  const isLate = fatRows.some((row) => row.after);
  const whole = merge(assembly, isLate ? fatRows.filter((row) => !row.after) : fatRows, prose);
  const after = isLate
    ? merge(
        assembly,
        fatRows.filter((row) => row.after),
        prose,
      )
    : [];
  const fats = isLate ? withoutHeld(assembly, whole, after, fatRows) : whole;
  const fatGrams = fats.reduce((sum, one) => sum + one.grams, 0);
  const rows = lyeOfFats(assembly, weights, fatGrams);
  const of = byKind(rows);
  const afterGrams = after.reduce((sum, one) => sum + one.grams, 0);

  const {
    alkali,
    stockWater,
    named: alkaliNamed,
    split,
  } = readAlkali(assembly, rows, roles, (id) => demandOf(fats, catalogue, id));
  const stated = readWater(assembly, rows, fatGrams, stockWater);
  const liquids = merge(assembly, of('liquid'), prose);
  const acids = of('acid').flatMap((row) => {
    const grams = row.grams ?? (row.share && row.share.value < 0.2 && fatGrams > 0 ? row.share.value * fatGrams : null);
    if (grams === null) return [];
    if (row.grams === null)
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
    grams: row.grams,
    said: row.said,
  }));

  mentions(assembly, rows, roles);
  orphans(assembly, rows, roles);
  looseRatio(assembly, roles);
  partsRatio(assembly, rows, roles);
  eitherOr(assembly);
  unitOrUnit(assembly, rows);
  const swap = swapAsked(source, fats);
  const swapped = swap && alkali.length === 0 ? asSwapped(assembly, fats, swap) : null;
  alkaliByMeasure(assembly, rows);
  vagueAmounts(assembly, rows, swap);
  vagueChange(assembly, rows);
  climbing(assembly, rows);
  for (const { gone, text } of source.back) {
    assembly.assume('corrected', text);
    for (const one of gone) assembly.fate(one, 'aside', 'taken back');
  }
  tellAsides(assembly);
  const mixedUp = source.mended ? source.prims.filter(isMixedUp) : [];
  if (mixedUp.length > 0)
    assembly.assume('number', `I read ${mixedUp.map(({ raw, text }) => `"${raw}" as ${text}`).join(', ')}.`);
  if (source.unheard !== null && rows.length > 0) assembly.doubts.push({ id: 'corrected', said: source.unheard });
  const alkaliGrams = alkali.reduce((sum, one) => sum + one.grams, 0);
  const liquidGrams = liquids.reduce((sum, one) => sum + one.grams, 0);
  const dryGrams = alkali.reduce((sum, one) => sum + (one.stock ? 0 : one.grams), 0);
  const water =
    stated ??
    restOfSolution(assembly, roles, dryGrams, liquidGrams) ??
    impliedWater(assembly, roles, alkaliGrams, liquids.length > 0);
  askedWhich(assembly, rows);
  lyeOfLiquid(assembly);
  saltForAlkali(assembly, rows, fatGrams);
  unsaid(assembly, rows, { fats: fatGrams, alkali: alkaliGrams });
  const sums = {
    fats: fatGrams,
    after: afterGrams,
    alkali: alkaliGrams,
    water: water ?? 0,
    liquids: liquidGrams + acids.reduce((sum, one) => sum + one.grams, 0),
    others: others.reduce((sum, one) => sum + (one.grams ?? 0), 0),
  };
  crossShares(assembly, rows, sums.fats + sums.after + sums.alkali + sums.water + sums.liquids, roles);
  const byShare = rows.some(
    (row) =>
      row.named.meaning.kind === 'fat' && row.grams !== null && (row.amount === null || row.amount.dim === 'parts'),
  );
  if (!byShare) crossTotals(assembly, roles, sums, rows);
  calledAfter(assembly, roles, fatGrams + afterGrams);
  decimals(assembly, rows, catalogue, alkaliGrams, roles);
  plausible(assembly, fats, alkali, sums.liquids, catalogue);
  if (roles.superfat !== null && (roles.superfat >= 1 || roles.superfat < 0))
    assembly.doubts.push({ id: 'superfat-odd', said: roles.superfatSaid?.text ?? '', value: roles.superfat });
  if (roles.concentration !== null && (roles.concentration >= 1 || roles.concentration <= 0))
    assembly.doubts.unshift({ id: 'strength-odd', said: `${roundTo(roles.concentration * 100, 2)} %` });
  if (roles.purity !== null && beyondWhole(roles.purity.nominal))
    assembly.doubts.unshift({ id: 'purity-odd', said: `${roundTo(roles.purity.nominal * 100, 2)} %` });
  lyeAhead(assembly, rows);
  rival(assembly, rows);
  // two amounts of one thing may be those of two recipes that nobody numbered
  const parts = assembly.doubts.some(({ id }) => id === 'two-amounts') && !isSeveral ? source.several.choices() : 0;
  if (parts > 0) assembly.doubts.push({ id: 'two-recipes', parts });

  const fates = settleFates(assembly);
  const waterShareRow = of('water').find((row) => row.share && !row.amount);
  return {
    fats: swapped ?? fats,
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
    swapAsked: swapped ? null : swap,
    assumptions: assembly.assumptions,
    doubts: assembly.doubts,
    fates,
  };
}

/** What an acid eats of an alkali, and what one alkali is worth in another or in another purity. */
import type { AlkaliId } from '../../catalogue/types.ts';
import type { Unit } from '../../units/units.ts';
import { isOf, isRole, type Owned, weighs } from './bind.ts';
import type { Facts, Measure, Thing } from './facts.ts';

/** A purity that was said: in figures, or "pure". */
export type SaidPurity = Measure | 'pure' | null;

export interface AcidQuestion {
  readonly kind: 'acid';
  /** `alkali`: what the acid eats; `acid`: how much of it takes up that alkali. */
  readonly asks: 'alkali' | 'acid';
  readonly acid: Thing | null;
  readonly amount: Measure | null;
  /** Acid in what is weighed, or, with `fats`, the acid's share of them. */
  readonly share: Measure | null;
  readonly fats: Measure | null;
  readonly alkaliId: AlkaliId | 'unsaid';
  readonly purity: SaidPurity;
  readonly to: Unit | null;
}

export interface WorthQuestion {
  readonly kind: 'worth';
  /** `other`: as the other alkali; `weigh`: of this purity for so much pure; `pure`: pure alkali in so much of it. */
  readonly asks: 'other' | 'weigh' | 'pure';
  readonly amount: Measure | null;
  readonly from: AlkaliId | 'unsaid';
  readonly into: AlkaliId | 'unsaid';
  readonly fromPurity: SaidPurity;
  readonly intoPurity: SaidPurity;
  readonly to: Unit | null;
}

const wantedUnit = ({ units }: Facts): Unit | null =>
  units.find(({ lead }) => lead === 'many' || lead === 'to')?.unit ?? null;

const isPercent = ({ measure }: Owned): boolean => measure.dim === 'percent';
const alkaliIdOf = (things: readonly Thing[]): AlkaliId | 'unsaid' =>
  (things.find(({ meaning }) => meaning.kind === 'alkali' && meaning.id !== 'unsaid')?.meaning.id as AlkaliId) ??
  'unsaid';

export function readAcid(facts: Facts, all: readonly Owned[], forced: boolean): AcidQuestion | null {
  const { things, words, tokens } = facts;
  const acid = things.find(({ meaning }) => meaning.kind === 'acid') ?? null;
  const alkali = things.find(({ meaning }) => meaning.kind === 'alkali');
  if (!forced && !(acid && alkali)) return null;
  const amount = all.find((one) => isOf(one, 'acid') && weighs(one))?.measure ?? null;
  const lye = all.find((one) => isOf(one, 'alkali') && weighs(one))?.measure ?? null;
  const fats = all.find((one) => isRole(one, /^total-fats$/) && weighs(one))?.measure ?? null;
  const pureBefore = tokens.some(
    (token, k) =>
      token.t === 'name' && token.meaning.id === 'purity' && alkali && k < alkali.from && alkali.from - k <= 2,
  );
  const common = {
    kind: 'acid' as const,
    acid,
    share: all.find((one) => isPercent(one) && (isOf(one, 'acid') || isRole(one, /^total-fats$/)))?.measure ?? null,
    alkaliId: alkaliIdOf(things),
    purity:
      all.find((one) => isPercent(one) && (isOf(one, 'alkali') || isRole(one, /^purity$/)))?.measure ??
      (pureBefore ? ('pure' as const) : null),
    to: wantedUnit(facts),
  };
  if (lye && amount) return null;
  if (lye) {
    const asks = acid?.asked || /\b(neutrali[sz]\w*|take up|cancel|counter|how much|how many)\b/.test(words);
    return asks || forced ? { ...common, asks: 'acid', amount: lye, fats: null } : null;
  }
  return { ...common, asks: 'alkali', amount, fats: amount ? null : fats };
}

const instead =
  /\b(instead|replace|swap|substitute|switch|change|convert|equivalent|equals?|worth|same as|(as|in|to|into|of) (koh|naoh|sodium|potassium|caustic|lye))\b/;

export function readWorth(facts: Facts, all: readonly Owned[], forced: boolean): WorthQuestion | null {
  const { things, words, measures } = facts;
  const purity = all.some(
    (one) => isPercent(one) && one.measure.value >= 0.55 && (isOf(one, 'alkali') || isRole(one, /^purity$/)),
  );
  const masses = all.filter(weighs);
  const alone =
    purity && masses.length === 1 && !things.some(({ meaning }) => /^(fat|acid|liquid)$/.test(meaning.kind));
  const weighed = all.find((one) => isOf(one, 'alkali') && weighs(one)) ?? (alone ? masses[0] : undefined);
  const source =
    (weighed?.owner?.meaning.kind === 'alkali' ? weighed.owner : null) ??
    things.find(({ meaning, asked }) => meaning.kind === 'alkali' && (!asked || purity));
  if (!source || (!weighed && !forced)) return null;
  // a solution's question
  if (!forced && /\b(water|solution|soln|stock|masterbatch|strength|concentration|ratio)\b/.test(words)) return null;
  const target = things.find(({ meaning }) => meaning.kind === 'alkali' && meaning.id !== source.meaning.id);
  const percents = all.filter((one) => isPercent(one) && (isOf(one, 'alkali') || isRole(one, /^purity$/)));
  const purityOf = ({ meaning, from }: Thing): Measure | null =>
    (
      percents.find(({ owner }) => owner?.meaning.kind === 'alkali' && owner.meaning.id === meaning.id) ??
      percents.find((one) => isRole(one, /^purity$/) && Math.abs(one.measure.from - from) <= 4)
    )?.measure ?? null;
  const pure = ({ from }: Thing): SaidPurity => (/\bpure$/.test(before(facts, from)) ? 'pure' : null);
  const common = { kind: 'worth' as const, amount: weighed?.measure ?? null, to: wantedUnit(facts) };
  // "KOH to NaOH for 100 g": the way the words point
  const turned = target !== undefined && target.to < source.from && pointsTo(facts, target, source) && !source.asked;
  if (target && turned)
    return {
      ...common,
      asks: 'other',
      from: target.meaning.id as AlkaliId,
      into: source.meaning.id as AlkaliId,
      fromPurity: purityOf(target) ?? pure(target),
      intoPurity: purityOf(source) ?? pure(source),
    };
  if (target && (target.asked || instead.test(words) || forced)) {
    const fromPurity = purityOf(source);
    const other = purityOf(target);
    return {
      ...common,
      asks: 'other',
      from: source.meaning.id as AlkaliId,
      into: target.meaning.id as AlkaliId,
      fromPurity: fromPurity ?? pure(source),
      intoPurity: (other === fromPurity ? null : other) ?? pure(target),
    };
  }
  const [percent, other] = percents;
  const recipes = /\brecipe|\bcalls for|\binstead of|\bsays\b/.test(words);
  if (
    !target &&
    percent &&
    other &&
    measures.length === 3 &&
    recipes &&
    percent.measure.value !== other.measure.value
  ) {
    // "mine is 85 % instead of 90 %"; "the recipe takes 90 %, mine is 85 %"
    const mine = /\b(recipe|calls for)\b[^%]{0,40}\d+ ?%.*\b(mine|my|i have|ive got)\b/.test(words) ? other : percent;
    const theirs = mine === percent ? other : percent;
    const id = source.meaning.id as AlkaliId | 'unsaid';
    return { ...common, asks: 'other', from: id, into: id, fromPurity: theirs.measure, intoPurity: mine.measure };
  }
  if (target || !percent || percent.measure.value < 0.55 || measures.length > 2) return null;
  const id = source.meaning.id as AlkaliId | 'unsaid';
  const holds = /\bhow (much|many)\b[^?]*\bin\b|\b(contains?|holds?)\b|\bpure\b[^?]* in\b/.test(words);
  return {
    ...common,
    asks: holds ? 'pure' : 'weigh',
    from: id,
    into: id,
    fromPurity: percent.measure,
    intoPurity: percent.measure,
  };
}

/** "KOH to NaOH", with nothing else between. */
const pointsTo = ({ tokens }: Facts, from: Thing, to: Thing): boolean => {
  const [only, more] = tokens.slice(from.to, to.from);
  return more === undefined && only?.t === 'word' && /^(to|into|in|as)$/.test(only.text);
};

const before = ({ tokens }: Facts, at: number): string => {
  const token = tokens[at - 1];
  return token?.t === 'word' || token?.t === 'name' ? token.text.toLowerCase() : '';
};

/** The parts of a correction: one name with its figures, a lone figure, names without figures. */
import type { AlkaliId } from '../../catalogue/types.ts';
import { withUnit } from '../columns/columns.ts';
import type { Reader } from '../cut.ts';
import type { Doubt, RecipeReading } from '../reading.ts';
import { asPurity } from '../recipe/roles.ts';
import type { Thing } from '../rows/kinds.ts';
import type { Meaning } from '../words/lexicon.ts';
import { pick, relatives } from '../words/pick.ts';
import type { Quantity } from '../words/quantities.ts';
import { type Change, type Correction, heldBy, holds, ingredient, weighs } from './correction.ts';
import { cues, isLone, mostSuperfat } from './words.ts';

export interface Sides {
  readonly reader: Reader;
  readonly reading: RecipeReading;
  readonly text: string;
  readonly given: RecipeReading;
  /** Of figures without one. */
  readonly unit: string | null;
  /** Id of what is meant to change, answered to `which`. */
  readonly target: string | null;
}

export type Found = Change | Extract<Correction, { kind: 'doubt' | 'which' }>;
export const isQuestion = (found: Found): found is Extract<Correction, { kind: 'doubt' | 'which' }> =>
  found.kind === 'doubt' || found.kind === 'which';

/** Doubts about a correction's own words; the others speak of a recipe that a correction is not. */
const own = new Set<Doubt['id']>([
  ...(['ambiguous-name', 'unknown-fat', 'unheld-fat', 'which-alkali', 'no-unit', 'range', 'negative'] as const),
  ...(['alkali-volume', 'decimal', 'units-disagree', 'superfat-odd', 'purity-odd', 'strength-odd'] as const),
]);

export const ownDoubt = ({ doubts }: RecipeReading): Doubt | undefined => doubts.find(({ id }) => own.has(id));

/** A figure that cannot be weighed as it stands is asked. */
function unweighed(given: RecipeReading): Found | null {
  const doubt = ownDoubt(given);
  return doubt ? { kind: 'doubt', doubt, given } : null;
}

/** What a new name takes the place of: what was answered, its only relative, or the only one of its kind. */
export function replacedBy(
  to: Meaning,
  grams: number | null,
  sides: Sides,
): Meaning | Extract<Correction, { kind: 'which' }> {
  const { reader, reading, target } = sides;
  const kin = heldBy(reading).filter(({ kind }) => kind === to.kind);
  const answered = kin.find(({ id }) => id === target);
  if (answered) return answered;
  const family = kin.filter(({ id }) => relatives(id, reader.catalogue).includes(to.id));
  const [relative] = family;
  if (family.length === 1 && relative) return relative;
  const sort = (id: string): string | undefined => /butter|wax|acid|tallow|milk/.exec(id)?.[0];
  const alikeSort = kin.filter(({ id }) => sort(to.id) !== undefined && sort(id) === sort(to.id));
  const [sibling] = alikeSort;
  if (alikeSort.length === 1 && sibling) return sibling;
  const weight =
    grams === null ? [] : [...reading.fats, ...reading.liquids].filter((one) => Math.abs(one.grams - grams) < 0.5);
  const [alike] = kin.filter(({ id }) => weight.some((one) => one.id === id));
  if (weight.length === 1 && alike) return alike;
  const [only] = kin;
  if (kin.length === 1 && only) return only;
  return { kind: 'which', said: reader.lexicon.label(to), of: kin.map(({ id }) => id) };
}

/** Grams that the correction's own reading found for this thing. */
function gramsIn(given: RecipeReading, meaning: Meaning, text: string): number | null {
  switch (meaning.kind) {
    case 'fat':
      return [...given.fats, ...given.after].find(({ id }) => id === meaning.id)?.grams ?? null;
    case 'liquid':
      return given.liquids.find(({ id }) => id === meaning.id)?.grams ?? null;
    case 'acid':
      return given.acids.find(({ id }) => id === meaning.id)?.grams ?? null;
    case 'additive':
    case 'scent':
      return given.others.find(({ name }) => name === text)?.grams ?? null;
    case 'alkali':
      return given.alkali[0]?.grams ?? null;
    case 'water':
      return given.waterGrams;
    default:
      return null;
  }
}

/** A volume of sugar, salt, clay …, at the middle of its bulk density; it takes no alkali. */
function spoonful({ kind, id }: Meaning, { dim, value }: Quantity, { catalogue }: Reader): number | null {
  const density = kind === 'additive' ? catalogue.additives.get(id)?.bulkDensity : null;
  return density && dim === 'volume' ? (value * (density.low + density.high)) / 2 : null;
}

/** One name with its figures. */
export function ofGroup(thing: Thing, amounts: readonly Quantity[], sides: Sides, cued: boolean): Found | null {
  const { meaning, text } = thing.named;
  const { given, reading, reader } = sides;
  const share = amounts.find(({ dim }) => dim === 'percent');
  const weight = amounts.find(weighs);
  const value = share?.value ?? (weight?.dim === 'bare' ? weight.value / 100 : null);
  if (meaning.kind === 'role') {
    if (meaning.id === 'superfat' && given.superfat !== null) return { kind: 'superfat', value: given.superfat };
    if (meaning.id === 'concentration' || meaning.id === 'solution')
      return value === null ? null : { kind: 'concentration', value };
    if (meaning.id === 'ratio' || meaning.id === 'ratio-lye-water')
      return given.ratio === null ? null : { kind: 'ratio', value: given.ratio };
    if (meaning.id === 'purity') return given.purity && { kind: 'purity', of: null, purity: given.purity };
    if (meaning.id === 'scale' && given.scaleStep !== null) return { kind: 'step', value: given.scaleStep };
    return meaning.id === 'heading' && weight ? loose(weight, sides) : null;
  }
  if (meaning.kind === 'alkali' || meaning.kind === 'stock') return ofAlkali(meaning, amounts, sides);
  if (meaning.kind === 'water') {
    const ratio = amounts.find(({ dim }) => dim === 'ratio');
    if (ratio && given.ratio !== null) return { kind: 'ratio', value: given.ratio };
    if (share) return { kind: 'water-share', value: share.value };
  }
  if (!ingredient(meaning) && meaning.kind !== 'water') return null;
  if (!weight) {
    const of = reader.lexicon.label(meaning);
    return share ? { kind: 'doubt', doubt: { id: 'no-amount', said: text, of }, given } : null;
  }
  if (weight.value === 0) return holds(reading, meaning, text) ? { kind: 'remove', of: meaning } : null;
  const grams = gramsIn(given, meaning, text) ?? spoonful(meaning, weight, reader);
  if (grams === null) return unweighed(given);
  const after = given.after.some(({ id }) => id === meaning.id) || cues.after.test(sides.text);
  const known = holds(reading, meaning, text);
  const change = { of: meaning, said: weight.text, after, known };
  if (known && cues.lessening.test(sides.text) && /\b(less|by)\b/i.test(sides.text))
    return { ...change, kind: 'add', grams: -grams };
  const adds =
    cues.adding.test(sides.text) &&
    !(known && /^\W*and\b/i.test(sides.text) && !/\b(add|more|another|extra|plus)\b/i.test(sides.text));
  if (adds && meaning.kind !== 'water') return { ...change, kind: 'add', grams };
  if (known) return { ...change, kind: 'set', grams };
  if (!cued || meaning.kind !== 'fat') return null;
  const from = replacedBy(meaning, grams, sides);
  return 'of' in from ? from : { kind: 'swap', from, to: meaning, grams };
}

function ofAlkali(meaning: Meaning, amounts: readonly Quantity[], { given, reading }: Sides): Found | null {
  const share = amounts.find(({ dim }) => dim === 'percent');
  const weight = amounts.find(weighs);
  const id = meaning.id === 'unsaid' ? null : (meaning.id as AlkaliId);
  if (share && !weight) {
    if (Math.min(share.value, share.upTo ?? share.value) >= 0.7)
      return { kind: 'purity', of: id, purity: asPurity(share) };
    return share.value <= 0.55 && (id === null || meaning.kind === 'stock')
      ? { kind: 'concentration', value: share.value }
      : null;
  }
  const [alkali] = given.alkali;
  if (!weight) return null;
  if (!alkali) return unweighed(given);
  const own = new Set([...reading.alkali.map((one) => one.id), ...reading.alkaliNamed]);
  const meant = id ?? (own.size === 1 ? ([...own][0] ?? null) : alkali.id);
  return meant === null
    ? null
    : {
        kind: 'set',
        of: { kind: 'alkali', id: meant },
        grams: alkali.grams,
        said: weight.text,
        after: false,
        known: true,
      };
}

/** A figure that stands beside no name. */
export function loose(quantity: Quantity, sides: Sides): Found | null {
  const { reading, target, given, text } = sides;
  if (!isLone(text)) return null;
  const { dim, value } = quantity;
  if (dim === 'percent') {
    if (quantity.upTo !== null)
      return { kind: 'doubt', doubt: { id: 'range', said: quantity.text, of: 'superfat' }, given };
    if (value >= 0.7 && value <= 1.005) return { kind: 'purity', of: null, purity: asPurity(quantity) };
    if (value <= 0.25) return { kind: 'superfat', value };
    if (value <= 0.5 && reading.concentration !== null && reading.superfat === null)
      return { kind: 'concentration', value };
    return { kind: 'which', said: quantity.text, of: [] };
  }
  const ofWater =
    dim === 'ratio' &&
    (Math.min(value, quantity.second ?? 0) === 1 || /\b(water|lye|liquid|ratio)\b/i.test(sides.text));
  if (ofWater && quantity.second)
    return { kind: 'ratio', value: Math.max(value / quantity.second, quantity.second / value) };
  if (dim === 'bare' && value > 0 && value <= mostSuperfat)
    return reading.superfat === null
      ? { kind: 'which', said: `${quantity.text} %`, of: [] }
      : { kind: 'superfat', value: value / 100 };
  if (dim === 'bare' && sides.unit !== null && value > mostSuperfat)
    return loose(withUnit(quantity, sides.unit), sides);
  if (dim !== 'mass') return null;
  const things = heldBy(reading);
  const one = things.length === 1 ? things[0] : things.find(({ id }) => id === target);
  if (one) return { kind: 'set', of: one, grams: value, said: quantity.text, after: false, known: true };
  return { kind: 'which', said: quantity.text, of: things.map(({ id }) => id) };
}

/** Names without figures. */
export function ofNames(things: readonly Thing[], sides: Sides, cued: boolean): readonly (Found | null)[] {
  const { reader, reading, text, given } = sides;
  const named = things.filter(({ named: { meaning } }) => meaning.kind !== 'role' && meaning.id !== 'unsaid');
  const first = named[0];
  if (!first) return [];
  const held = named.filter((thing) => holds(reading, thing.named.meaning, thing.named.text));
  const plainNo = /^\W*no\s+\p{L}/iu.test(text) && !/^\W*no\s+(it|that|the|wait|i|sorry)\b/i.test(text);
  if ((cues.removing.test(text) || plainNo) && held.length === named.length && !/\binstead\b/i.test(text))
    return named.map(({ named: { meaning } }) => ({ kind: 'remove', of: meaning }));
  if (cues.part.test(text)) return [null];
  if (named.every(({ named: { meaning } }) => meaning.kind === 'alkali')) {
    const id = alkaliMeant(named, text);
    return [id && { kind: 'alkali', id }];
  }
  if (named.length === 2) {
    const [one, two] = named.map(({ named: { meaning } }) => meaning.id);
    // "the olive oil is pomace"
    const renames = /\S\s+(is|are|was)\s/i.test(text) && relatives(one ?? '', reader.catalogue).includes(two ?? '');
    if (!cues.swapping.test(text) && !renames) return [null];
    const pair = inOrder(named, reading, text);
    return [pair && { kind: 'swap', from: pair[0], to: pair[1], grams: null }];
  }
  if (named.length !== 1 || held.length > 0) return [null];
  const { meaning, text: said } = first.named;
  if (cues.adding.test(text) && /\b(add|adding|include|put in)\b/i.test(text) && ingredient(meaning))
    return [{ kind: 'doubt', doubt: { id: 'no-amount', said, of: reader.lexicon.label(meaning) }, given }];
  if (meaning.kind === 'ambiguous' && cued)
    return [
      { kind: 'doubt', doubt: { id: 'ambiguous-name', said, candidates: meaning.candidates, why: meaning.why }, given },
    ];
  if (meaning.kind === 'unheld' && cued)
    return [{ kind: 'doubt', doubt: { id: 'unheld-fat', said, candidates: meaning.candidates }, given }];
  const to = ingredient(meaning) ? meaning : meaning.kind === 'unknown' ? inContext(said, sides) : null;
  if (!to) return [null];
  if (!cued && !heldBy(reading).some(({ id }) => relatives(id, reader.catalogue).includes(to.id))) return [null];
  if (!ingredient(to) || to.kind === 'additive' || to.kind === 'scent') return [null];
  const from = replacedBy(to, null, sides);
  return ['of' in from ? from : { kind: 'swap', from, to, grams: null }];
}

/** "KOH", "KOH not NaOH", "it was KOH instead of NaOH". */
function alkaliMeant(things: readonly Thing[], text: string): AlkaliId | null {
  const ids = things.map(({ named }) => named.meaning.id as AlkaliId);
  if (new Set(ids).size === 1) return ids[0] ?? null;
  const turned = /\bnot\b[^,]{0,20}\bbut\b|\b(swap|replace|change|switch)\b/i.test(text);
  return (turned ? ids.at(-1) : ids[0]) ?? null;
}

/** Which of two names goes and which comes: by what the recipe holds, else by the words between. */
function inOrder(things: readonly Thing[], reading: RecipeReading, text: string): readonly [Meaning, Meaning] | null {
  const [a, b] = things;
  if (!a || !b) return null;
  const kinds = [a.named.meaning.kind, b.named.meaning.kind];
  const wet = kinds.includes('water') && kinds.includes('liquid');
  if (!wet && !(ingredient(a.named.meaning) && ingredient(b.named.meaning))) return null;
  const holdsA = holds(reading, a.named.meaning, a.named.text);
  const holdsB = holds(reading, b.named.meaning, b.named.text);
  if (!holdsA && !holdsB) return null;
  if (holdsA !== holdsB) return holdsA ? [a.named.meaning, b.named.meaning] : [b.named.meaning, a.named.meaning];
  if (/\b(instead of|not|rather than)\b/i.test(text) && !/\bbut\b/i.test(text))
    return [b.named.meaning, a.named.meaning];
  return /\b(swap|replace|change|switch|substitute|but)\b/i.test(text) ? [a.named.meaning, b.named.meaning] : null;
}

/** "pomace", "mutton", "monohydrate": words that name something only beside what the recipe holds. */
export function inContext(said: string, { reader, reading }: Sides): Meaning | null {
  const found = heldBy(reading).flatMap(({ kind, id }) => {
    const picked = pick(said, relatives(id, reader.catalogue), reader.catalogue, '');
    return picked === null ? [] : [{ kind, id: picked } as Meaning];
  });
  const [only] = found;
  return found.length === 1 && only ? only : null;
}

/** A recipe as it is kept and given away: plain data, amounts to weigh in grams, ingredients by their catalogue ids. */
import type { AlkaliId, Catalogue, Fat } from '../../catalogue/types.ts';
import type { CheckFigures } from '../../engine/check.ts';
import type { Recipe, Share, Verdict } from '../../engine/recipe.ts';
import type { RecipeReading } from '../../reading/reading.ts';
import type { Kept } from '../kept.ts';
import { readingOf } from '../recipe-reading.ts';

interface Amount {
  readonly id: string;
  readonly grams: number;
}

/** Saponification value, mg KOH per g fat. */
interface Value {
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
}

/** What goes into one batch. */
export interface Amounts {
  readonly fats: readonly Amount[];
  readonly after: readonly Amount[];
  /** `assumed`: nobody said how pure it is. */
  readonly alkali: readonly {
    readonly id: AlkaliId;
    readonly grams: number;
    readonly purity: Share;
    readonly assumed: boolean;
  }[];
  readonly waterGrams: number;
  readonly liquids: readonly Amount[];
  readonly acids: readonly (Amount & { readonly strength: number })[];
  /** Takes no alkali; null where no amount was said. */
  readonly others: readonly { readonly name: string; readonly grams: number | null }[];
  /** Share that was asked for; null where nobody asked. */
  readonly superfat: number | null;
  readonly scaleStepGrams: number;
  readonly ounces: boolean;
}

export interface SavedRecipe extends Amounts {
  readonly name: string;
  /** What it was checked with, and what came out. */
  readonly checked: {
    readonly catalogue: string;
    readonly values: Readonly<Record<string, Value>>;
    readonly superfat: { readonly nominal: number; readonly low: number; readonly high: number };
    readonly verdict: Verdict;
  };
  /** When it was kept with these amounts, ms since 1970. */
  readonly savedAt: number;
  /** Of its copies in rooms, so that whoever shared it can take it back; the copy holds no name of theirs. */
  readonly shared?: readonly string[];
  /** Of a copy in a room. */
  readonly token?: string;
}

const fatsOf = ({ fats, after }: Pick<Recipe, 'fats' | 'after'>): readonly Fat[] =>
  [...fats, ...after].map(({ fat }) => fat);

const saponificationOf = ({ saponification: { nominal, low, high } }: Fat): Value => ({ nominal, low, high });

export const amountsOf = ({ recipe, reading, superfat }: Kept): Amounts => ({
  fats: recipe.fats.map(({ fat, grams }) => ({ id: fat.id, grams })),
  after: recipe.after.map(({ fat, grams }) => ({ id: fat.id, grams })),
  alkali: recipe.alkali.map((one) => {
    const said = reading.alkali.find(({ id }) => id === one.id);
    return { ...one, assumed: !(said?.stock || said?.purity || reading.purity) };
  }),
  waterGrams: recipe.waterGrams,
  liquids: recipe.liquids.map(({ liquid, grams }) => ({ id: liquid.id, grams })),
  acids: recipe.acids.map(({ acid, grams }) => ({ id: acid.id, grams, strength: acid.strength })),
  others: reading.others.map((one) => ({ name: one.name, grams: one.grams })),
  superfat,
  scaleStepGrams: recipe.scaleStepGrams,
  ounces: reading.ounces,
});

export const savedFrom = (
  name: string,
  kept: Kept,
  figures: CheckFigures,
  catalogue: Catalogue,
  savedAt: number,
): SavedRecipe => ({
  name,
  ...amountsOf(kept),
  checked: {
    catalogue: catalogue.version,
    values: Object.fromEntries(fatsOf(kept.recipe).map((fat) => [fat.id, saponificationOf(fat)])),
    superfat: { nominal: figures.superfat.nominal, low: figures.superfat.low, high: figures.superfat.high },
    verdict: figures.verdict,
  },
  savedAt,
});

const unread: RecipeReading = {
  fats: [],
  after: [],
  alkali: [],
  alkaliNamed: [],
  waterGrams: null,
  liquids: [],
  acids: [],
  others: [],
  superfat: null,
  concentration: null,
  ratio: null,
  waterShare: null,
  purity: null,
  alkaliSplit: null,
  totalFats: null,
  scaleStep: null,
  ounces: false,
  swapAsked: null,
  assumptions: [],
  doubts: [],
  fates: [],
};

type Restored =
  | { readonly ok: true; readonly kept: Kept }
  /** Ids that this catalogue does not hold. */
  | { readonly ok: false; readonly missing: readonly string[] };

/** The saved recipe for the turns that follow, with the values of today's catalogue. */
export function keptFrom(saved: Amounts, { fats, liquids, acids }: Catalogue): Restored {
  const missing: string[] = [];
  const held = <T>(id: string, all: ReadonlyMap<string, T>): readonly T[] => {
    const one = all.get(id);
    if (one === undefined) missing.push(id);
    return one === undefined ? [] : [one];
  };
  const recipe: Recipe = {
    fats: saved.fats.flatMap(({ id, grams }) => held(id, fats).map((fat) => ({ fat, grams }))),
    after: saved.after.flatMap(({ id, grams }) => held(id, fats).map((fat) => ({ fat, grams }))),
    alkali: saved.alkali.map(({ id, grams, purity }) => ({ id, grams, purity })),
    waterGrams: saved.waterGrams,
    liquids: saved.liquids.flatMap(({ id, grams }) => held(id, liquids).map((liquid) => ({ liquid, grams }))),
    acids: saved.acids.flatMap(({ id, grams, strength }) =>
      held(id, acids).map((acid) => ({ acid: { ...acid, strength }, grams })),
    ),
    scaleStepGrams: saved.scaleStepGrams,
  };
  if (missing.length > 0) return { ok: false, missing };
  const others = saved.others.map((one) => ({ ...one, said: one.name }));
  const reading = readingOf(recipe, { ...unread, others, superfat: saved.superfat, ounces: saved.ounces }, 1);
  const alkali = reading.alkali.map((one, k) => (saved.alkali[k]?.assumed ? { ...one, purity: null } : one));
  return { ok: true, kept: { reading: { ...reading, alkali }, recipe, superfat: saved.superfat } };
}

export interface Changed {
  readonly fat: Fat;
  readonly was: Value;
  readonly is: Value;
}

/** Fats whose value is another now than when the recipe was checked. */
export function changedSince({ checked }: SavedRecipe, recipe: Recipe): readonly Changed[] {
  const differs = (a: number, b: number): boolean => Math.abs(a - b) > 1e-9;
  return [...new Set(fatsOf(recipe))].flatMap((fat) => {
    const was = checked.values[fat.id];
    const is = saponificationOf(fat);
    const moved = was && (differs(was.nominal, is.nominal) || differs(was.low, is.low) || differs(was.high, is.high));
    return moved ? [{ fat, was, is }] : [];
  });
}

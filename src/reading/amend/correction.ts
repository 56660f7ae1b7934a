/** What a correction can change of a recipe, and what of the recipe it can name. */
import type { AlkaliId } from '../../catalogue/types.ts';
import type { Reader } from '../cut.ts';
import type { Cut } from '../itemize.ts';
import type { Doubt, Purity, RecipeReading } from '../reading.ts';
import { isAmount, isThing } from '../rows/kinds.ts';
import { itemize } from '../worded.ts';
import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';

export type Change =
  | { readonly kind: 'superfat' | 'concentration' | 'ratio' | 'water-share' | 'step'; readonly value: number }
  | { readonly kind: 'purity'; readonly of: AlkaliId | null; readonly purity: Purity }
  | { readonly kind: 'alkali'; readonly id: AlkaliId }
  | { readonly kind: 'unit'; readonly unit: 'g' | 'oz' }
  | {
      readonly kind: 'set' | 'add';
      readonly of: Meaning;
      readonly grams: number;
      readonly said: string;
      readonly after: boolean;
      /** The recipe holds it already. */
      readonly known: boolean;
    }
  | { readonly kind: 'remove'; readonly of: Meaning }
  | { readonly kind: 'swap'; readonly from: Meaning; readonly to: Meaning; readonly grams: number | null };

export type Correction =
  | {
      readonly kind: 'changes';
      readonly changes: readonly Change[];
      readonly given: RecipeReading;
      /** It names what it changes; a lone figure speaks of whatever was said last. */
      readonly named: boolean;
    }
  /** Something of the correction cannot be known. */
  | { readonly kind: 'doubt'; readonly doubt: Doubt; readonly given: RecipeReading }
  /** What is meant to change cannot be known: one of these. */
  | { readonly kind: 'which'; readonly said: string; readonly of: readonly string[] }
  /** Plainly a correction, but not of anything that is there. */
  | { readonly kind: 'lost' };

export const ingredient = (meaning: Meaning): boolean =>
  ['fat', 'liquid', 'acid', 'additive', 'scent'].includes(meaning.kind);
export const weighs = ({ dim }: Quantity): boolean => dim === 'mass' || dim === 'volume' || dim === 'bare';

/** Whether the recipe holds this, by id; additives by what the person called them. */
export function holds(reading: RecipeReading, meaning: Meaning, text = ''): boolean {
  switch (meaning.kind) {
    case 'fat':
      return [...reading.fats, ...reading.after].some(({ id }) => id === meaning.id);
    case 'liquid':
      return reading.liquids.some(({ id }) => id === meaning.id);
    case 'acid':
      return reading.acids.some(({ id }) => id === meaning.id);
    case 'additive':
    case 'scent':
      return reading.others.some(({ name }) => name.toLowerCase() === text.toLowerCase());
    case 'alkali':
      return reading.alkaliNamed.includes(meaning.id as AlkaliId) || reading.alkali.some(({ id }) => id === meaning.id);
    default:
      return meaning.kind === 'water';
  }
}

/** Everything of the recipe that a correction can name. */
export const heldBy = (reading: RecipeReading): readonly Meaning[] => [
  ...[...reading.fats, ...reading.after].map(({ id }) => ({ kind: 'fat' as const, id })),
  ...reading.liquids.map(({ id }) => ({ kind: 'liquid' as const, id })),
  ...reading.acids.map(({ id }) => ({ kind: 'acid' as const, id })),
];

/** The unit that this person writes bare figures in; null where the post has several. */
export function bareUnit(reader: Reader, reading: RecipeReading, cut: Cut): string | null {
  const unitOf = (said: string): string | null => {
    const amount = itemize(reader, said).items.find(isAmount);
    return amount?.quantity.dim === 'mass' ? (amount.quantity.unit?.id ?? null) : null;
  };
  const lines = [...reading.fats, ...reading.after, ...reading.liquids, ...reading.acids];
  const named = cut.items.find((item) => isThing(item) && holds(reading, item.named.meaning, item.named.text));
  const line = isThing(named) ? lines.find(({ id }) => id === named.named.meaning.id) : undefined;
  const mine = line ? unitOf(line.said) : null;
  if (mine) return mine;
  const units = new Set(lines.map(({ said }) => unitOf(said)).filter((unit) => unit !== null));
  if (units.size === 0) return reading.ounces ? 'oz' : 'g';
  if ([...units].every((unit) => unit === 'g' || unit === 'kg') && units.has('g')) return 'g';
  const [only] = units;
  return units.size === 1 && only && only !== 'kg' && only !== 'lb' ? only : null;
}

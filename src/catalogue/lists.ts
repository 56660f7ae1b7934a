/** What the catalogue does not know well: lists that a person can ask for. */
import type { Catalogue, Chosen, Datum, Fat } from './types.ts';

export type Quantity = 'saponification' | 'iodine' | 'unsaponifiable' | 'density' | 'melting';

const QUANTITIES: readonly Quantity[] = ['saponification', 'iodine', 'unsaponifiable', 'density', 'melting'];

/** A fat's quantity with the figure in use. */
export interface Held {
  readonly fat: Fat;
  readonly quantity: Quantity;
  readonly chosen: Chosen;
}

/** Everything of the fats that has a figure. */
export function held({ fats }: Catalogue): readonly Held[] {
  return [...fats.values()].flatMap((fat) =>
    QUANTITIES.flatMap((quantity) => {
      const chosen = fat[quantity];
      return chosen ? [{ fat, quantity, chosen }] : [];
    }),
  );
}

/** Figures in use that nobody has read on the page yet. */
export function fromMemory(catalogue: Catalogue, quantity?: Quantity): readonly Held[] {
  return held(catalogue).filter((one) => one.chosen.fromMemory && (quantity ?? one.quantity) === one.quantity);
}

/** Fats for which every figure held of the quantity is from memory: an answer that rests on them says so. */
export function memoryOnly({ fats }: Catalogue, quantity: Quantity = 'saponification'): readonly Fat[] {
  return [...fats.values()].filter((fat) => isMemoryOnly(fat, quantity));
}

function isMemoryOnly(fat: Fat, quantity: Quantity = 'saponification'): boolean {
  return fat[quantity]?.entries.every((datum) => datum.fromMemory) ?? false;
}

/** Fats without a fatty-acid profile: they have no second route to the saponification value. */
export function withoutProfile({ fats }: Catalogue): readonly Fat[] {
  return [...fats.values()].filter((fat) => fat.acids === null);
}

/** Fats for which no source gives a range of the quantity (one-sided limits stand in `fat.limits`). */
export function listMissing({ fats }: Catalogue, quantity: Quantity): readonly Fat[] {
  return [...fats.values()].filter((fat) => fat[quantity] === null);
}

/** Published figures that contradict the one in use: their ranges do not meet. */
export function conflicts(catalogue: Catalogue): readonly (Held & { readonly against: readonly Datum[] })[] {
  return held(catalogue).flatMap((one) => {
    const taken = one.chosen.entries[one.chosen.taken];
    const against = one.chosen.entries.filter((datum) => taken && doNotMeet(taken, datum));
    return against.length > 0 ? [{ ...one, against }] : [];
  });
}

function doNotMeet(a: Datum, b: Datum): boolean {
  // Densities at two temperatures differ without contradicting each other.
  if (a.celsius !== b.celsius) return false;
  return (a.low !== null && b.high !== null && a.low > b.high) || (a.high !== null && b.low !== null && a.high < b.low);
}

/** Fats whose range in use is wider than the statement it was taken from. */
export function widened(catalogue: Catalogue): readonly Held[] {
  return held(catalogue).filter(({ chosen }) => {
    const taken = chosen.entries[chosen.taken];
    return chosen.low < (taken?.low ?? chosen.low) || chosen.high > (taken?.high ?? chosen.high);
  });
}

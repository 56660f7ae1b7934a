/** How much a volume of something weighs: the density in use, its spread and where it stands. */
import type { BulkDensity, Catalogue, Fat } from '../catalogue/types.ts';
import type { Thing } from '../reading/question/facts.ts';
import { nameOf } from './phrases.ts';

export interface Density {
  /** g/mL. */
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
  /** As it stands behind "of": "melted shea butter". */
  readonly what: string;
  /** What the spread comes from: "by lot", "loose to packed". */
  readonly spread: string;
  readonly source: string;
  readonly note: string | null;
}

/** Water at 20 °C, and at 25 and 15 °C (CRC Handbook, IAPWS-95 values; from memory). */
const WATER = { nominal: 0.9982, low: 0.997, high: 0.9991 } as const;
/** Ice at 0 °C, g/mL (CRC Handbook; from memory). */
const ICE = 0.917;

export function densityOf({ meaning }: Thing, catalogue: Catalogue): Density | null {
  const { id } = meaning;
  const what = nameOf(id, catalogue);
  switch (meaning.kind) {
    case 'water':
      return { ...WATER, what: 'water', spread: '', source: 'CRC Handbook, 20 °C (from memory)', note: null };
    case 'ice':
      return {
        nominal: ICE,
        low: ICE,
        high: ICE,
        what: 'ice',
        spread: '',
        source: 'CRC Handbook, 0 °C (from memory)',
        note: null,
      };
    case 'fat': {
      const fat = catalogue.fats.get(id);
      return fat ? ofFat(fat, catalogue) : null;
    }
    case 'liquid': {
      const liquid = catalogue.liquids.get(id);
      if (!liquid?.density) return null;
      const { density, locator } = liquid;
      return {
        nominal: density,
        low: density,
        high: density,
        what,
        spread: '',
        source: titled(liquid.source, locator, catalogue),
        note: null,
      };
    }
    case 'acid':
      return ofBulk(catalogue.acids.get(id)?.bulkDensity, what, catalogue);
    case 'additive':
      return ofBulk(catalogue.additives.get(id)?.bulkDensity, what, catalogue);
    default:
      return null;
  }
}

const titled = (source: string, locator: string, { sources }: Catalogue): string =>
  `${sources.get(source)?.title ?? source}, ${locator}`;

function ofBulk(bulk: BulkDensity | null | undefined, what: string, catalogue: Catalogue): Density | null {
  if (!bulk) return null;
  const { low, high, source, locator, fromMemory } = bulk;
  const liquid = low > 0.95 && (high - low) / low < 0.06;
  return {
    nominal: (low + high) / 2,
    low,
    high,
    what,
    spread: liquid ? 'by brand' : 'loose to packed',
    source: `${titled(source, locator, catalogue)}${fromMemory ? ' (from memory)' : ''}`,
    note: null,
  };
}

const isSolid = ({ melting, density }: Fat): boolean =>
  (melting !== null && melting.nominal > 20) || (density?.entries[density.taken]?.celsius ?? 20) >= 35;

function ofFat(fat: Fat, catalogue: Catalogue): Density | null {
  const name = nameOf(fat.id, catalogue);
  const { density } = fat;
  if (!density) return likeOthers(fat, name, catalogue);
  const { nominal, low, high, entries, taken } = density;
  const entry = entries[taken];
  const melted = isSolid(fat) && (entry?.celsius ?? 0) >= 25;
  const at = entry?.celsius === undefined ? '' : `, at ${entry.celsius} °C`;
  return {
    nominal,
    low,
    high,
    what: melted ? `melted ${name}` : name,
    spread: 'by lot',
    source: entry ? `${titled(entry.source, entry.locator, catalogue)}${at}` : '',
    note: null,
  };
}

/** A triglyceride without a figure of its own: what the others span, castor oil and its like apart. */
function likeOthers(fat: Fat, name: string, { fats }: Catalogue): Density | null {
  if (fat.kind !== 'triglyceride') return null;
  const others = [...fats.values()].flatMap(({ kind, density }) =>
    kind === 'triglyceride' && density && density.nominal < 0.935 ? [density.nominal] : [],
  );
  const [low, high] = [Math.min(...others), Math.max(...others)];
  return {
    nominal: (low + high) / 2,
    low,
    high,
    what: isSolid(fat) ? `melted ${name}` : name,
    spread: 'as other fats',
    source: 'the span of the other fats',
    note: `I hold no density for ${name}: I took the span of other fats.`,
  };
}

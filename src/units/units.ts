import table from '../../data/units.json' with { type: 'json' };

export type Dimension = 'mass' | 'volume' | 'length' | 'time' | 'temperature';

export interface Unit {
  readonly id: string;
  readonly dimension: Dimension;
  /** Size in g, mL, cm or s; temperatures convert by `toCelsius`. */
  readonly factor: number;
  readonly symbol: string;
  readonly system?: string;
  readonly source: string;
  readonly names: readonly string[];
}

export const units: readonly Unit[] = table.units as readonly Unit[];
/** Title of where a unit's size was read. */
export const unitSource = ({ source }: Unit): string =>
  (table.sources as Readonly<Record<string, string>>)[source] ?? source;

const byId = new Map(units.map((unit) => [unit.id, unit]));

/** The unit with this id; a wrong id is a bug, not a user's error. */
export function unit(id: string): Unit {
  const found = byId.get(id);
  if (!found) throw new Error(`no unit "${id}"`);
  return found;
}

/** Absolute zero in °C (SI Brochure 2.3.1). */
export const absoluteZero = -273.15;

/** Temperature in °C of `value` in °C, °F or K (NIST SP 811 B.8). */
export function toCelsius(value: number, from: string): number {
  if (from === '°F') return (value - 32) / 1.8;
  if (from === 'K') return value + absoluteZero;
  return value;
}

/** The inverse of `toCelsius`. */
export function fromCelsius(celsius: number, to: string): number {
  if (to === '°F') return celsius * 1.8 + 32;
  if (to === 'K') return celsius - absoluteZero;
  return celsius;
}

/** `value` of one unit in another of the same dimension. */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from.dimension !== to.dimension) throw new Error(`${from.id} and ${to.id} measure different things`);
  if (from.dimension === 'temperature') return fromCelsius(toCelsius(value, from.id), to.id);
  return (value * from.factor) / to.factor;
}

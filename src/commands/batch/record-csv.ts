/** A record for a spreadsheet (RFC 4180): one row a thing, the kind of row first. */
import type { Sheet } from './sheet.ts';

/** A cell that begins like a formula is no formula (OWASP, CSV injection). */
const cell = (value: string | number | null): string => {
  const text = value === null ? '' : String(value);
  const plain = typeof value === 'string' && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
};

const iso = (at: number): string => new Date(at).toISOString();

export function csvOf(lot: string, sheet: Sheet): string {
  const rows: (readonly (string | number | null)[])[] = [
    ['lot', 'kind', 'time_utc', 'name', 'planned_g', 'taken_g', 'raw_material_lot', 'celsius', 'text'],
    ...sheet.facts.map(({ label, value }) => [lot, 'fact', null, label, null, null, null, null, value]),
    ...sheet.weights.map((one) => [
      lot,
      'weight',
      null,
      one.name,
      one.plannedGrams,
      one.takenGrams,
      one.lot,
      null,
      null,
    ]),
    ...sheet.times.map(({ at, what }) => [lot, 'stage', iso(at), what, null, null, null, null, null]),
    ...sheet.temperatures.map(({ at, celsius, stage }) => [
      lot,
      'temperature',
      iso(at),
      stage,
      null,
      null,
      null,
      Number(celsius.toFixed(1)),
      null,
    ]),
    ...sheet.deviations.map((text) => [lot, 'deviation', null, null, null, null, null, null, text]),
    ...sheet.notes.map(({ at, text }) => [lot, 'note', iso(at), null, null, null, null, null, text]),
  ];
  return `${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}

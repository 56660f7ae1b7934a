/** A record for a spreadsheet (RFC 4180): one row a thing, the kind of row first. */
import type { Sheet } from './sheet.ts';

const iso = (at: number): string => new Date(at).toISOString();

export async function csvOf(lot: string, sheet: Sheet): Promise<string> {
  const { default: papa } = await import('papaparse');
  const fields = ['lot', 'kind', 'time_utc', 'name', 'planned_g', 'taken_g', 'raw_material_lot', 'celsius', 'text'];
  const rows = [
    ...sheet.facts.map(({ label, value }) => ({ kind: 'fact', name: label, text: value })),
    ...sheet.weights.map((one) => ({
      kind: 'weight',
      name: one.name,
      planned_g: one.plannedGrams,
      taken_g: one.takenGrams,
      raw_material_lot: one.lot,
    })),
    ...sheet.times.map(({ at, what }) => ({ kind: 'stage', time_utc: iso(at), name: what })),
    ...sheet.temperatures.map(({ at, celsius, stage }) => ({
      kind: 'temperature',
      time_utc: iso(at),
      name: stage,
      celsius: Number(celsius.toFixed(1)),
    })),
    ...sheet.deviations.map((text) => ({ kind: 'deviation', text })),
    ...sheet.notes.map(({ at, text }) => ({ kind: 'note', time_utc: iso(at), text })),
  ].map((row) => ({ lot, ...row }));
  // a note that begins like a formula would be one in a spreadsheet
  return `${papa.unparse(rows, { columns: fields, escapeFormulae: true })}\r\n`;
}

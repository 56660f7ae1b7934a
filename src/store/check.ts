/** What is kept, counted and looked through; and what is wrong with it. Names nobody and nothing that people wrote. */
import { number } from '../units/print.ts';

export interface Checked {
  readonly ok: boolean;
  /** For the host to read. */
  readonly lines: readonly string[];
}

type Row = Readonly<Record<string, unknown>>;

export interface Source {
  /** Which file or database, and of which form. */
  readonly name: string;
  /** What the database itself finds wrong. */
  readonly faults: readonly string[];
  /** All rows of a statement that both databases understand, one after another. `$` stands before a table. */
  readonly rows: (text: string) => AsyncIterable<Row> | Iterable<Row>;
}

export async function checkSource({ name, faults: found, rows }: Source, now: number): Promise<Checked> {
  const faults = [...found];
  const counts = new Map<string, number>();
  const count = (what: string): void => void counts.set(what, (counts.get(what) ?? 0) + 1);

  for await (const { kind } of rows('select kind from $account')) count(String(kind));
  for await (const { owner, kind, data } of rows('select owner, kind, data from $document')) {
    count(String(kind));
    if (!isObject(data)) faults.push(`A ${kind} of owner ${owner} cannot be read.`);
  }
  for await (const { owner, due_at, about } of rows('select owner, due_at, about from $reminder')) {
    count('reminder');
    if (Number(due_at) <= now) count('overdue');
    if (!isObject(about)) faults.push(`A reminder of owner ${owner} cannot be read.`);
  }

  const of = (what: string, one: string, many: string): string => {
    const all = counts.get(what) ?? 0;
    return `${number(all, 0)} ${all === 1 ? one : many}`;
  };
  const overdue = counts.get('overdue') ?? 0;
  const lines = [
    `${name}: ${faults.length === 0 ? 'whole' : 'damaged'}.`,
    `Kept for ${of('person', 'account', 'accounts')} and ${of('room', 'room', 'rooms')}: ${of('recipe', 'recipe', 'recipes')}, ${of('batch', 'batch', 'batches')}, ${of('settings', 'set of settings', 'sets of settings')}, ${of('reminder', 'reminder', 'reminders')}${overdue > 0 ? ` (${number(overdue, 0)} due)` : ''}.`,
    ...faults,
  ];
  return { ok: faults.length === 0, lines };
}

function isObject(text: unknown): boolean {
  try {
    const value: unknown = JSON.parse(String(text));
    return typeof value === 'object' && value !== null;
  } catch {
    return false;
  }
}

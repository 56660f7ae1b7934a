import { describe, expect, it } from 'vitest';
import { assembleCatalogue } from '../../src/catalogue/assemble.ts';
import { CatalogueError } from '../../src/catalogue/check.ts';
import { RAW } from '../../src/catalogue/load.ts';

type Json = Record<string, unknown>;

/** What is wrong once `spoil` has been at a copy of the data. */
function problemsAfter(spoil: (raw: Json) => void): readonly string[] {
  const copy = structuredClone(RAW);
  spoil(copy);
  try {
    assembleCatalogue(copy);
  } catch (error) {
    if (error instanceof CatalogueError) return error.problems;
    throw error;
  }
  return [];
}

function at(raw: Json, ...path: readonly (string | number)[]): Json {
  const found = path.reduce<unknown>((node, key) => (node as Json)[key], raw);
  if (typeof found !== 'object' || found === null) throw new Error(`nothing to spoil at ${path.join('.')}`);
  return found as Json;
}

const first = (raw: Json, file: string): Json => at(raw, file, file, 0);
const entry = (raw: Json, quantity: string): Json => at(raw, 'fats', 'fats', 0, quantity, 0);
const set = (target: Json, key: string, value: unknown): void => {
  target[key] = value;
};

describe('the data', () => {
  it('hold together as they are', () => {
    expect(problemsAfter(() => undefined)).toEqual([]);
  });

  it.each<[string, (raw: Json) => void, RegExp]>([
    [
      'a range upside down',
      (raw) => set(entry(raw, 'saponification'), 'range', [265, 248]),
      /coconut-oil saponification/,
    ],
    ['a value out of bounds', (raw) => set(entry(raw, 'iodine'), 'range', [6, 1063]), /coconut-oil iodine/],
    ['a text for a number', (raw) => set(entry(raw, 'saponification'), 'range', ['248', 265]), /coconut-oil/],
    ['a datum without source', (raw) => set(entry(raw, 'melting'), 'source', undefined), /coconut-oil melting/],
    ['a source nobody lists', (raw) => set(entry(raw, 'melting'), 'source', 'hearsay'), /hearsay/],
    ['a datum without locator', (raw) => set(entry(raw, 'density'), 'at', undefined), /coconut-oil density/],
    ['water at a temperature not held', (raw) => set(entry(raw, 'density'), 'water', 77), /coconut-oil density/],
    ['an unknown confidence', (raw) => set(entry(raw, 'density'), 'sure', 'somewhat'), /coconut-oil density/],
    ['no saponification range', (raw) => set(first(raw, 'fats'), 'saponification', []), /no saponification range/],
    ['an unknown kind', (raw) => set(first(raw, 'fats'), 'kind', 'oil'), /coconut-oil: kind/],
    [
      'fatty acids that make no whole',
      (raw) => set(at(raw, 'fats', 'fats', 0, 'acids', 'typical'), 'C12:0', 40),
      /coconut-oil: typical fatty acids make 92/,
    ],
    [
      'a negative share of a fatty acid',
      (raw) => set(at(raw, 'fats', 'fats', 0, 'acids', 'typical'), 'C12:0', -1),
      /coconut-oil typical: C12:0/,
    ],
    ['an id listed twice', (raw) => set(at(raw, 'fats', 'fats', 1), 'id', 'coconut-oil'), /listed twice/],
    ['an id of two kinds', (raw) => set(first(raw, 'scents'), 'id', 'coconut-oil'), /id of two items/],
    ['a name claimed by two', (raw) => set(first(raw, 'scents'), 'names', ['KOKOSÖL']), /belongs to coconut-oil/],
    ['a name that is none', (raw) => set(first(raw, 'scents'), 'names', [7]), /7 is no name/],
    ['an empty name', (raw) => set(first(raw, 'scents'), 'names', [' - ']), /is empty/],
    [
      'a purity out of order',
      (raw) => set(at(raw, 'alkalis', 'alkalis', 0, 'purity'), 'usual', 0.5),
      /low ≤ usual ≤ high/,
    ],
    ['an alkali nobody knows', (raw) => set(first(raw, 'alkalis'), 'id', 'lioh'), /alkali: id is none of/],
    ['an acid stronger than pure', (raw) => set(first(raw, 'acids'), 'strength', 1.2), /citric-acid: strength/],
    ['a liquid of more than 100 %', (raw) => set(first(raw, 'liquids'), 'fat', 20), /more than 100 %/],
    ['a liquid with a fat not held', (raw) => set(first(raw, 'liquids'), 'countsAs', 'yak-butter'), /yak-butter/],
    ['a candidate not held', (raw) => set(first(raw, 'ambiguous'), 'candidates', ['snake']), /snake is not held/],
    ['a relative not held', (raw) => set(first(raw, 'unheld'), 'nearest', ['snake']), /snake is not a fat held/],
    ['a caution without words', (raw) => set(first(raw, 'cautions'), 'long', ' '), /gear: long/],
    ['a source of no grade', (raw) => set(first(raw, 'sources'), 'grade', 'rumour'), /grade is none of/],
    [
      'a one-sided bulk density',
      (raw) => set(at(raw, 'alkalis', 'alkalis', 0, 'bulkDensity'), 'range', [null, 1]),
      /naoh: bulk density/,
    ],
    ['a file that is no list', (raw) => set(raw, 'scents', { scents: {} }), /scents: is not a list/],
  ])('are refused with %s', (_, spoil, problem) => {
    expect(problemsAfter(spoil).join('\n')).toMatch(problem);
  });

  it('are refused for all faults at once', () => {
    const problems = problemsAfter((raw) => {
      set(first(raw, 'acids'), 'strength', 1.2);
      set(first(raw, 'liquids'), 'countsAs', 'yak-butter');
    });
    expect(problems).toHaveLength(2);
  });

  it('list no source that nothing names', () => {
    const named = new Set(
      JSON.stringify(RAW)
        .match(/"source":"[^"]+"/g)
        ?.map((text) => text.slice(10, -1)),
    );
    named.add((RAW.fats as { inciSource: string }).inciSource);
    const listed = (RAW.sources as { sources: readonly { id: string }[] }).sources.map(({ id }) => id);
    expect(listed.filter((id) => !named.has(id))).toEqual([]);
  });
});

/**
 * The checked catalogue as text that opens fast, made when the product is built: a line an item, parsed when the item
 * is first asked for. All of it is ASCII, because V8 reads a text of one byte a character in half the time.
 */
import type { Catalogue, ItemKind, NameHit } from './types.ts';

/** Neighbours in `byName` that stand for the same thing: what it is, then the names. */
type Run = readonly [hit: string, ...names: string[]];

/** What stands on the first line; `keys` are those of each map, whose items follow line by line in this order. */
interface Head {
  readonly others: Readonly<Record<string, unknown>>;
  readonly keys: Readonly<Record<string, readonly string[]>>;
  readonly names: readonly Run[];
}

export function packCatalogue(catalogue: Catalogue): string {
  const others: Record<string, unknown> = {};
  const keys: Record<string, readonly string[]> = {};
  const lines: string[] = [];
  for (const [field, value] of Object.entries(catalogue)) {
    if (!(value instanceof Map)) others[field] = value;
    else if (field !== 'byName') {
      keys[field] = [...value.keys()];
      lines.push(...[...value.values()].map((item) => JSON.stringify(item)));
    }
  }
  const head: Head = { others, keys, names: runsOf(catalogue.byName) };
  return [JSON.stringify(head), ...lines]
    .join('\n')
    .replace(/[^\n -~]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

export function unpackCatalogue(text: string): Catalogue {
  const lines = text.split('\n');
  const head = JSON.parse(lines[0] ?? '') as Head;
  let line = 1;
  const maps = Object.entries(head.keys).map(([field, keys]) => {
    const items = new Items(new Map(keys.map((key) => [key, lines[line++] ?? ''])));
    return [field, items];
  });
  return { ...head.others, ...Object.fromEntries(maps), byName: nameMap(head.names) } as Catalogue;
}

function runsOf(byName: ReadonlyMap<string, NameHit>): readonly Run[] {
  const runs: [string, ...string[]][] = [];
  for (const [name, { kind, id, how }] of byName) {
    const hit = `${kind} ${id} ${how}`;
    const last = runs.at(-1);
    if (last?.[0] === hit) last.push(name);
    else runs.push([hit, name]);
  }
  return runs;
}

function nameMap(runs: readonly Run[]): Map<string, NameHit> {
  const map = new Map<string, NameHit>();
  for (const [text, ...names] of runs) {
    const [kind, id = '', how] = text.split(' ');
    const hit: NameHit = { kind: kind as ItemKind, id, how: how as NameHit['how'] };
    for (const name of names) map.set(name, hit);
  }
  return map;
}

class Items implements ReadonlyMap<string, unknown> {
  readonly #lines: ReadonlyMap<string, string>;
  readonly #opened = new Map<string, unknown>();

  constructor(lines: ReadonlyMap<string, string>) {
    this.#lines = lines;
  }

  get size(): number {
    return this.#lines.size;
  }

  has(key: string): boolean {
    return this.#lines.has(key);
  }

  get(key: string): unknown {
    const line = this.#lines.get(key);
    if (line === undefined) return undefined;
    if (!this.#opened.has(key)) this.#opened.set(key, JSON.parse(line));
    return this.#opened.get(key);
  }

  keys(): MapIterator<string> {
    return this.#lines.keys();
  }

  values(): MapIterator<unknown> {
    return this.keys().map((key) => this.get(key));
  }

  entries(): MapIterator<[string, unknown]> {
    return this.keys().map((key) => [key, this.get(key)]);
  }

  [Symbol.iterator](): MapIterator<[string, unknown]> {
    return this.entries();
  }

  forEach(visit: (item: unknown, key: string, map: ReadonlyMap<string, unknown>) => void): void {
    for (const [key, item] of this) visit(item, key, this);
  }
}

/**
 * The checked catalogue as text that opens fast, made when the product is built: a line an item, parsed when the item
 * is first asked for. All of it is ASCII, because V8 reads a text of one byte a character in half the time.
 */
import { isEveryday } from './everyday.ts';
import type { Catalogue, NamedHit } from './types.ts';

/** What the first line lists: a field that is one value has one line; a map has one of its keys, then one an item. */
interface Field {
  readonly name: string;
  readonly items: number | null;
}

/** How an item stands on its line: as JSON, but for names, of which there are thousands. */
interface Writing {
  readonly write: (item: unknown) => string;
  readonly read: (line: string) => unknown;
}

const asJson: Writing = { write: (item) => JSON.stringify(item), read: (line) => JSON.parse(line) as unknown };

const writeHit = ({ kind, how, id, name }: NamedHit): string => `${kind} ${how} ${id} ${name}`;

function readHit(text: string): NamedHit {
  const [kind, how, id = '', ...name] = text.split(' ');
  return { kind: kind as NamedHit['kind'], how: how as NamedHit['how'], id, name: name.join(' ') };
}

const writings: Readonly<Record<string, Writing>> = {
  byWords: { write: (hit) => writeHit(hit as NamedHit), read: readHit },
  byFirstWord: {
    write: (hits) => (hits as readonly NamedHit[]).map(writeHit).join('|'),
    read: (line) => line.split('|').map(readHit),
  },
};

export function packCatalogue(catalogue: Catalogue): string {
  const fields: Field[] = [];
  const lines: string[] = [];
  for (const [name, value] of Object.entries(catalogue)) {
    if (typeof value === 'function') continue;
    const isMap = value instanceof Map;
    fields.push({ name, items: isMap ? value.size : null });
    if (isMap) lines.push([...value.keys()].join('\t'), ...[...value.values()].map((writings[name] ?? asJson).write));
    else lines.push(JSON.stringify(value));
  }
  return [JSON.stringify(fields), ...lines]
    .join('\n')
    .replace(/[^\t\n -~]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** Fields are opened when they are first asked for, items when each is. */
export function unpackCatalogue(text: string): Catalogue {
  const lines = text.split('\n');
  const catalogue = { isEveryday };
  let line = 1;
  for (const { name, items } of JSON.parse(lines[0] ?? '') as readonly Field[]) {
    const from = line;
    line += 1 + (items ?? 0);
    const open = (): unknown =>
      items === null ? JSON.parse(lines[from] ?? '') : new Items(lines, from, (writings[name] ?? asJson).read);
    let opened: unknown;
    Object.defineProperty(catalogue, name, {
      enumerable: true,
      get: () => {
        opened ??= open();
        return opened;
      },
    });
  }
  return catalogue as Catalogue;
}

class Items implements ReadonlyMap<string, unknown> {
  readonly #lines: ReadonlyMap<string, string>;
  readonly #opened = new Map<string, unknown>();
  readonly #read: (line: string) => unknown;

  /** Line `from` holds the keys, the lines behind it their items. */
  constructor(lines: readonly string[], from: number, read: (line: string) => unknown) {
    const keys = (lines[from] ?? '').split('\t');
    this.#lines = new Map(keys.map((key, k) => [key, lines[from + 1 + k] ?? '']));
    this.#read = read;
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
    if (!this.#opened.has(key)) this.#opened.set(key, this.#read(line));
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

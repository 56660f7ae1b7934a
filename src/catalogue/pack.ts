/**
 * The checked catalogue as text that opens fast, made when the product is built: a line an item, parsed when the item
 * is first asked for. All of it is ASCII, because V8 reads a text of one byte a character in half the time.
 */
import type { Catalogue, NamedHit } from './types.ts';

/** What stands on the first line; `keys` are those of each map, whose items follow line by line in this order. */
interface Head {
  readonly others: Readonly<Record<string, unknown>>;
  readonly keys: Readonly<Record<string, readonly string[]>>;
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
  const others: Record<string, unknown> = {};
  const keys: Record<string, readonly string[]> = {};
  const lines: string[] = [];
  for (const [field, value] of Object.entries(catalogue)) {
    if (!(value instanceof Map)) others[field] = value;
    else {
      keys[field] = [...value.keys()];
      lines.push(...[...value.values()].map((writings[field] ?? asJson).write));
    }
  }
  const head: Head = { others, keys };
  return [JSON.stringify(head), ...lines]
    .join('\n')
    .replace(/[^\n -~]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

export function unpackCatalogue(text: string): Catalogue {
  const lines = text.split('\n');
  const head = JSON.parse(lines[0] ?? '') as Head;
  let line = 1;
  const maps = Object.entries(head.keys).map(([field, keys]) => {
    const items = new Items(new Map(keys.map((key) => [key, lines[line++] ?? ''])), (writings[field] ?? asJson).read);
    return [field, items];
  });
  return { ...head.others, ...Object.fromEntries(maps) } as unknown as Catalogue;
}

class Items implements ReadonlyMap<string, unknown> {
  readonly #lines: ReadonlyMap<string, string>;
  readonly #opened = new Map<string, unknown>();

  readonly #read: (line: string) => unknown;

  constructor(lines: ReadonlyMap<string, string>, read: (line: string) => unknown) {
    this.#lines = lines;
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

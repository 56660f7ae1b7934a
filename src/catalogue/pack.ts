/**
 * The checked catalogue as a text of which only what is asked for is read, made when the product is built. All of it is
 * ASCII, because V8 reads a text of one byte a character in half the time, and a place in the text is one in the file.
 */
import { isEveryday } from './everyday.ts';
import { behind, inOrder } from './names.ts';
import type { Catalogue, NamedHit } from './types.ts';

/** A stretch of the text. */
export type Read = (from: number, length: number) => string;

/** What the text begins with lists each field and its length; the fields stand behind it, one behind the other. */
interface Field {
  readonly name: string;
  readonly length: number;
  /** A map whose items are read one by one: each key with the length of its item. Null for any other. */
  readonly items: readonly (readonly [key: string, length: number])[] | null;
  /** A map of thousands, of which a question needs a few: lines in the order of their keys. */
  readonly isOrdered: boolean;
}

/** Digits of the length of that list, which the text begins with. */
const lead = 8;

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

const inKeyOrder: ReadonlySet<string> = new Set(['byWords', 'byFirstWord']);

const ascii = (text: string): string =>
  text.replace(/[^\t\n -~]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);

export function packCatalogue(catalogue: Catalogue): string {
  const fields: Field[] = [];
  const texts: string[] = [];
  for (const [name, value] of Object.entries(catalogue)) {
    if (typeof value === 'function') continue;
    const { write } = writings[name] ?? asJson;
    const items = value instanceof Map ? [...value].map(([key, item]) => [key, ascii(write(item))] as const) : null;
    const isOrdered = inKeyOrder.has(name);
    const text =
      items === null ? ascii(write(value)) : isOrdered ? inOrder(items) : items.map(([, item]) => item).join('');
    const lengths = isOrdered || items === null ? null : items.map(([key, item]) => [key, item.length] as const);
    fields.push({ name, length: text.length, items: lengths, isOrdered });
    texts.push(text);
  }
  const list = ascii(JSON.stringify(fields));
  return `${String(list.length).padStart(lead)}${list}${texts.join('')}`;
}

/** Fields are read when they are first asked for, items when each is. */
export function unpackCatalogue(read: Read): Catalogue {
  const catalogue = { isEveryday };
  const list = Number(read(0, lead));
  let end = lead + list;
  for (const field of JSON.parse(read(lead, list)) as readonly Field[]) {
    const { name, length, items } = field;
    const from = end;
    end += length;
    const writing = writings[name] ?? asJson;
    const open = (): unknown => {
      if (items) return new Items(itemsAt(from, items, read), writing.read);
      const text = read(from, length);
      return field.isOrdered ? new Items(itemsIn(text), writing.read) : writing.read(text);
    };
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

/** Where the texts of items come from. */
interface Texts {
  /** Null where there is none. */
  readonly of: (key: string) => string | null;
  readonly keys: () => readonly string[];
}

function itemsAt(from: number, items: NonNullable<Field['items']>, read: Read): Texts {
  const places = new Map<string, readonly [from: number, length: number]>();
  let end = from;
  for (const [key, length] of items) {
    places.set(key, [end, length]);
    end += length;
  }
  return {
    of: (key) => {
      const place = places.get(key);
      return place ? read(...place) : null;
    },
    keys: () => [...places.keys()],
  };
}

const itemsIn = (text: string): Texts => ({
  of: (key) => behind(key, text),
  keys: () => text.split('\n').map((line) => line.slice(0, line.indexOf('\t'))),
});

class Items implements ReadonlyMap<string, unknown> {
  readonly #texts: Texts;
  readonly #read: (item: string) => unknown;
  readonly #opened = new Map<string, unknown>();

  constructor(texts: Texts, read: (item: string) => unknown) {
    this.#texts = texts;
    this.#read = read;
  }

  get size(): number {
    return this.#texts.keys().length;
  }

  has(key: string): boolean {
    return this.get(key) !== undefined;
  }

  get(key: string): unknown {
    const known = this.#opened.get(key);
    if (known !== undefined) return known;
    const item = this.#texts.of(key);
    if (item === null) return undefined;
    const opened = this.#read(item);
    this.#opened.set(key, opened);
    return opened;
  }

  keys(): MapIterator<string> {
    return this.#texts.keys().values();
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

/**
 * The checked catalogue as text that opens fast, made when the product is built: nothing is made of a field before it is
 * asked for, nor of an item. All of it is ASCII, because V8 reads a text of one byte a character in half the time.
 */
import { isEveryday } from './everyday.ts';
import { behind, inOrder } from './names.ts';
import type { Catalogue, NamedHit } from './types.ts';

/** What the first line lists: each field with the length of its text, which stand one behind the other. */
interface Field {
  readonly name: string;
  readonly length: number;
  /** A map, whose items stand one a line behind their keys, in the order of the keys or (by place) in their own. */
  readonly map: 'none' | 'ordered' | 'placed';
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

/** Maps in the order of their keys, of which a question needs a few among thousands. */
const inKeyOrder: ReadonlySet<string> = new Set(['byWords', 'byFirstWord']);

const ascii = (text: string): string =>
  text.replace(/[^\t\n -~]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);

export function packCatalogue(catalogue: Catalogue): string {
  const fields: Field[] = [];
  const texts: string[] = [];
  for (const [name, value] of Object.entries(catalogue)) {
    if (typeof value === 'function') continue;
    const { write } = writings[name] ?? asJson;
    const lines = value instanceof Map ? [...value].map(([key, item]) => [key, write(item)] as const) : null;
    const ordered = inKeyOrder.has(name);
    const text = ascii(
      lines === null ? write(value) : ordered ? inOrder(lines) : lines.map((line) => line.join('\t')).join('\n'),
    );
    fields.push({ name, length: text.length, map: lines === null ? 'none' : ordered ? 'ordered' : 'placed' });
    texts.push(text);
  }
  return `${JSON.stringify(fields)}\n${texts.join('')}`;
}

/** Fields are opened when they are first asked for, items when each is. */
export function unpackCatalogue(packed: string): Catalogue {
  const catalogue = { isEveryday };
  const head = packed.indexOf('\n');
  let end = head + 1;
  for (const { name, length, map } of JSON.parse(packed.slice(0, head)) as readonly Field[]) {
    const from = end;
    end += length;
    const open = (): unknown => {
      const text = packed.slice(from, from + length);
      const { read } = writings[name] ?? asJson;
      return map === 'none' ? read(text) : new Items(text, map === 'ordered', read);
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

class Items implements ReadonlyMap<string, unknown> {
  readonly #text: string;
  readonly #read: (item: string) => unknown;
  /** The text of an item, null where there is none. */
  readonly #find: (key: string) => string | null;
  readonly #opened = new Map<string, unknown>();

  /** Lines `key<TAB>item`. */
  constructor(text: string, isOrdered: boolean, read: (item: string) => unknown) {
    this.#text = text;
    this.#read = read;
    const lines = isOrdered ? null : new Map(this.#lines());
    this.#find = (key) => (lines ? (lines.get(key) ?? null) : behind(key, text));
  }

  #lines(): [key: string, item: string][] {
    return this.#text.split('\n').map((line) => {
      const tab = line.indexOf('\t');
      return [line.slice(0, tab), line.slice(tab + 1)];
    });
  }

  get size(): number {
    return this.#lines().length;
  }

  has(key: string): boolean {
    return this.#find(key) !== null;
  }

  get(key: string): unknown {
    const known = this.#opened.get(key);
    if (known !== undefined) return known;
    const item = this.#find(key);
    if (item === null) return undefined;
    const opened = this.#read(item);
    this.#opened.set(key, opened);
    return opened;
  }

  keys(): MapIterator<string> {
    return this.#lines()
      .values()
      .map(([key]) => key);
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

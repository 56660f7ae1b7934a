import type { Confidence, Named, Source } from './types.ts';

const NONE: readonly string[] = [];

export type Fields = Readonly<Record<string, unknown>>;

/** Everything wrong with the data at once, so that a host mends a file in one go. */
export class CatalogueError extends Error {
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(`The catalogue's data do not hold together:\n${problems.join('\n')}`);
    this.name = 'CatalogueError';
    this.problems = problems;
  }
}

/** Plain checks that note a problem and go on with a harmless value; the caller throws once at the end. */
export class Check {
  readonly problems: string[] = [];
  sources: ReadonlyMap<string, Source> = new Map();
  readonly titleOf = (source: string): string => this.sources.get(source)?.title ?? source;

  fail(where: string, what: string): void {
    this.problems.push(`${where}: ${what}`);
  }

  fields(value: unknown, where: string): Fields {
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Fields;
    this.fail(where, 'is not an object');
    return {};
  }

  list(value: unknown, where: string): readonly unknown[] {
    if (Array.isArray(value)) return value;
    this.fail(where, 'is not a list');
    return [];
  }

  text(from: Fields, key: string, where: string): string {
    const value = from[key];
    if (typeof value === 'string' && value.trim() !== '') return value;
    this.fail(where, `${key} is not a text`);
    return '';
  }

  textOrNull(from: Fields, key: string, where: string): string | null {
    return (from[key] ?? null) === null ? null : this.text(from, key, where);
  }

  /** A list; its members are checked by whoever goes through them. */
  texts(from: Fields, key: string, where: string): readonly string[] {
    const value = from[key];
    return value === undefined ? NONE : (this.list(value, `${where} ${key}`) as readonly string[]);
  }

  /** Id, name and names of any item; `names` takes in the plain ones and the abbreviations. */
  named(raw: Fields, where: string): Named {
    const plain = this.texts(raw, 'plain', where);
    const abbreviations = this.texts(raw, 'abbreviations', where);
    const names = this.texts(raw, 'names', where);
    return {
      id: this.text(raw, 'id', where),
      name: this.text(raw, 'name', where),
      names: plain.length + abbreviations.length === 0 ? names : [...plain, ...names, ...abbreviations],
      ...(plain.length > 0 ? { plain } : {}),
      ...(abbreviations.length > 0 ? { abbreviations } : {}),
    };
  }

  oneOf<T extends string>(from: Fields, key: string, allowed: readonly T[], where: string): T {
    const value = from[key];
    const found = allowed.find((item) => item === value);
    if (found === undefined) this.fail(where, `${key} is none of ${allowed.join(', ')}`);
    return found ?? (allowed[0] as T);
  }

  number(from: Fields, key: string, low: number, high: number, where: string): number {
    const value = from[key];
    if (typeof value === 'number' && value >= low && value <= high) return value;
    this.fail(where, `${key} is not a number from ${low} to ${high}`);
    return low;
  }

  numberOrNull(from: Fields, key: string, low: number, high: number, where: string): number | null {
    return (from[key] ?? null) === null ? null : this.number(from, key, low, high, where);
  }

  /** `[low, high]` within bounds; null at an end that the source does not state. */
  range(value: unknown, least: number, most: number, where: string): readonly [number | null, number | null] {
    const [low, high] = Array.isArray(value) && value.length === 2 ? (value as unknown[]) : [undefined, undefined];
    const isEnd = (end: unknown): end is number | null =>
      end === null || (typeof end === 'number' && end >= least && end <= most);
    if (isEnd(low) && isEnd(high) && !(low === null && high === null) && (low ?? least) <= (high ?? most))
      return [low, high];
    this.fail(where, `range is not [low, high] from ${least} to ${most}`);
    return [least, most];
  }

  source(from: Fields, where: string): Source {
    const id = this.text(from, 'source', where);
    const source = this.sources.get(id);
    if (source) return source;
    this.fail(where, `source ${id} is not listed`);
    return { id, title: id, url: null, standing: 'memory', grade: 'memory' };
  }

  /** Source, locator and whether it was read: what every datum carries. */
  provenance(from: Fields, where: string): { source: string; locator: string; fromMemory: boolean } {
    const source = this.source(from, where);
    return { source: source.id, locator: this.text(from, 'at', where), fromMemory: source.standing === 'memory' };
  }

  confidence(from: Fields, where: string): Confidence {
    return from['sure'] === undefined ? 'high' : this.oneOf<Confidence>(from, 'sure', ['high', 'medium', 'low'], where);
  }
}

/** Adds the key only where there is something to say. */
export function optional<K extends string, V>(key: K, value: V | null | undefined): { readonly [P in K]?: V } {
  return value === null || value === undefined ? {} : ({ [key]: value } as { readonly [P in K]?: V });
}

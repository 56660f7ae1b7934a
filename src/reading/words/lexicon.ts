import { behind, wordsInOrder } from '../../catalogue/names.ts';
import type { AlkaliId, Catalogue, NamedHit } from '../../catalogue/types.ts';
import { ownLines, ownNumerals, type RoleName, unitLines } from './words.ts';

/** What a phrase may mean. */
export type Meaning =
  | { readonly kind: 'fat' | 'liquid' | 'acid' | 'additive' | 'scent'; readonly id: string }
  /** `asked`: "how much lye", which takes no amount. */
  | { readonly kind: 'alkali'; readonly id: AlkaliId | 'unsaid'; readonly asked?: true }
  | { readonly kind: 'stock'; readonly id: AlkaliId | 'unsaid' }
  | { readonly kind: 'water' | 'ice'; readonly id: string }
  | { readonly kind: 'ambiguous'; readonly id: string; readonly candidates: readonly string[]; readonly why: string }
  | { readonly kind: 'unheld'; readonly id: string; readonly candidates: readonly string[] }
  | { readonly kind: 'unknown'; readonly id: string }
  | { readonly kind: 'role'; readonly id: RoleName };

export interface Entry {
  readonly meaning: Meaning;
  readonly phrase: string;
  /** `plain` says less than the whole ("olive"); `abbreviation` is trade letters ("pko"). */
  readonly how: 'name' | 'plain' | 'abbreviation';
}

export interface Trie<T> {
  next: Map<string, Trie<T>> | null;
  hit: T | null;
}

export interface Lexicon {
  /** Every name and role, by words; a first word's branch is grown when it is first met. */
  readonly names: Names;
  readonly units: Trie<string>;
  /** Id of the unit that "cup" alone means. */
  readonly cup: string;
  /** Single words that names are made of; known ones are never taken for slips of spelling. */
  readonly vocabulary: () => {
    readonly known: ReadonlySet<string>;
    readonly roleWords: ReadonlySet<string>;
    readonly spelt: readonly string[];
  };
  /** The fat whose name these words make in another order ("oil, olive, pomace"). */
  readonly reordered: (words: readonly string[]) => Entry | undefined;
  readonly label: (meaning: Meaning) => string;
  readonly isEveryday: Catalogue['isEveryday'];
}

export interface Names {
  readonly has: (first: string) => boolean;
  readonly from: (first: string) => Trie<Entry> | undefined;
  /** The same for a numeral, as "100 % olive" begins with. */
  readonly fromNumeral: (first: string) => Trie<Entry> | undefined;
}

const emptyTrie = <T>(): Trie<T> => ({ next: null, hit: null });

function insert<T>(root: Trie<T>, words: readonly string[], from: number, value: T): void {
  let node = root;
  for (let k = from; k < words.length; k++) {
    const word = words[k] ?? '';
    node.next ??= new Map();
    let child = node.next.get(word);
    if (!child) {
      child = emptyTrie<T>();
      node.next.set(word, child);
    }
    node = child;
  }
  node.hit ??= value;
}

/** The reader's own names and, behind them, the catalogue's: a first word's branch is grown when it is met. */
function namesOf(catalogue: Catalogue): Names {
  const grown = new Map<string, Trie<Entry>>();
  const from = (first: string): Trie<Entry> | undefined => {
    const known = grown.get(first);
    if (known) return known;
    const own = behind(first, ownLines);
    const held = catalogue.byFirstWord.get(first);
    if (own === null && !held) return undefined;
    const root = emptyTrie<Entry>();
    for (const entry of [...ownIn(own), ...(held ?? []).map((hit) => entryOf(catalogue, hit))])
      insert(root, entry.phrase.split(' '), 1, entry);
    grown.set(first, root);
    return root;
  };
  const shapes: boolean[] = [];
  for (const numeral of [...ownNumerals, ...catalogue.numerals]) shapes[shapeOf(numeral)] = true;
  const numerals = new Map<string, Trie<Entry> | null>();
  return {
    has: (first) => behind(first, ownLines) !== null || catalogue.byFirstWord.has(first),
    from,
    fromNumeral: (first) => {
      if (!shapes[shapeOf(first)]) return undefined;
      let found = numerals.get(first);
      if (found === undefined) {
        found = from(first) ?? null;
        if (numerals.size < mostNumerals) numerals.set(first, found);
      }
      return found ?? undefined;
    },
  };
}

/** The length and the first digit of a numeral in one figure: most figures look like none that a name begins with. */
const shapeOf = (numeral: string): number => 10 * numeral.length + numeral.charCodeAt(0) - 48;

/** Numerals that are remembered, at the most: all of three digits. */
const mostNumerals = 1000;

/** The reader's own names as they stand in a line. */
const ownIn = (line: string | null): readonly Entry[] =>
  (line?.split('|') ?? []).map((text) => {
    const [kind, id, ...phrase] = text.split(' ');
    return { meaning: { kind, id } as Meaning, phrase: phrase.join(' '), how: 'name' };
  });

/** What a name of the catalogue means to the reader. */
function entryOf(catalogue: Catalogue, { name, kind, id, how }: NamedHit): Entry {
  const meaning = (): Meaning => {
    if (kind === 'ambiguous') {
      const one = catalogue.ambiguous.find((other) => other.id === id);
      return { kind, id: name, candidates: one?.candidates ?? [], why: one?.why ?? '' };
    }
    if (kind === 'unheld') {
      const one = catalogue.unheld.find((other) => other.id === id);
      return { kind, id: one?.name ?? name, candidates: one?.nearest ?? [] };
    }
    return kind === 'alkali' ? { kind, id: id as AlkaliId } : { kind, id };
  };
  return { meaning: meaning(), phrase: name, how: kind === 'alkali' ? 'name' : how };
}

/** Everything a post may name, ready for longest-match reading. Built once per catalogue. */
export function makeLexicon(catalogue: Catalogue): Lexicon {
  const unitTrie = emptyTrie<string>();
  for (const line of unitLines.split('\n')) {
    const [id = '', names = ''] = line.split('\t');
    for (const name of names.split('|')) insert(unitTrie, name.split(' '), 0, id);
  }

  let words: ReturnType<Lexicon['vocabulary']> | null = null;
  return {
    names: namesOf(catalogue),
    units: unitTrie,
    cup: 'cup',
    vocabulary: () => {
      words ??= vocabularyOf(unitTrie, catalogue);
      return words;
    },
    reordered: (spoken) => {
      const hit = catalogue.byWords.get(wordsInOrder(spoken));
      return hit ? entryOf(catalogue, hit) : undefined;
    },
    label: (meaning) => labelOf(catalogue, meaning),
    isEveryday: catalogue.isEveryday,
  };
}

function vocabularyOf(unitTrie: Trie<string>, catalogue: Catalogue): ReturnType<Lexicon['vocabulary']> {
  const known = new Set<string>([...(unitTrie.next?.keys() ?? []), ...catalogue.nameWords.known.split(' ')]);
  const spelt = new Set<string>(catalogue.nameWords.spelt.split(' '));
  const roleWords = new Set<string>();
  for (const { phrase, meaning } of ownLines.split('\n').flatMap((line) => ownIn(line.slice(line.indexOf('\t') + 1))))
    for (const word of phrase.split(' ')) {
      known.add(word);
      if (meaning.kind === 'role') roleWords.add(word);
      else if (word.length >= 4) spelt.add(word);
    }
  return { known, roleWords, spelt: [...spelt] };
}

function labelOf(catalogue: Catalogue, meaning: Meaning): string {
  const { id } = meaning;
  switch (meaning.kind) {
    case 'alkali':
      return meaning.id === 'unsaid' ? 'lye' : (catalogue.alkalis.get(meaning.id)?.name ?? id);
    case 'fat':
      return catalogue.fats.get(id)?.name ?? id;
    case 'liquid':
      return catalogue.liquids.get(id)?.name ?? id;
    case 'acid':
      return catalogue.acids.get(id)?.name ?? id;
    case 'additive':
      return catalogue.additives.get(id)?.name ?? id;
    case 'scent':
      return catalogue.scents.get(id)?.name ?? id;
    default:
      return id;
  }
}

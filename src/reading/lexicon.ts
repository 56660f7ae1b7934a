import { firstWord, spaced, wordsInOrder } from '../catalogue/names.ts';
import type { AlkaliId, Catalogue, NamedHit } from '../catalogue/types.ts';
import { units } from '../units/units.ts';
import { scan } from './scan.ts';
import { type RoleName, roles } from './words.ts';

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
function namesOf(own: readonly Entry[], catalogue: Catalogue): Names {
  const waiting = new Map<string, Entry[]>();
  for (const entry of own) {
    const first = firstWord(entry.phrase);
    const list = waiting.get(first);
    if (list) list.push(entry);
    else waiting.set(first, [entry]);
  }
  const grown = new Map<string, Trie<Entry>>();
  const has = (first: string): boolean => waiting.has(first) || catalogue.byFirstWord.has(first);
  const from = (first: string): Trie<Entry> | undefined => {
    const [own, held] = [waiting.get(first), catalogue.byFirstWord.get(first)];
    if (!own && !held) return undefined;
    const known = grown.get(first);
    if (known) return known;
    const root = emptyTrie<Entry>();
    for (const entry of [...(own ?? []), ...(held ?? []).map((hit) => entryOf(catalogue, hit))])
      insert(root, entry.phrase.split(' '), 1, entry);
    grown.set(first, root);
    return root;
  };
  let longestNumeral = -1;
  return {
    has,
    from,
    fromNumeral: (first) => {
      if (longestNumeral < 0) longestNumeral = longestOf([...waiting.keys(), ...catalogue.byFirstWord.keys()]);
      return first.length <= longestNumeral ? from(first) : undefined;
    },
  };
}

/** Digits of the longest numeral. */
function longestOf(words: readonly string[]): number {
  let longest = 0;
  for (const word of words) if (/^\d/.test(word)) longest = Math.max(longest, word.length);
  return longest;
}

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

const lyeNames = [
  'lye',
  'alkali',
  'lauge',
  'lye crystals',
  'lye beads',
  'lye flakes',
  'lye powder',
  'lye granules',
  'dry lye',
  'lye amount',
  'pure lye',
  'lye pellets',
  'lye needed',
  'lye weight',
  'soap lye',
];
const waterNames = [
  'water',
  'distilled water',
  'di water',
  'h2o',
  'wasser',
  'eau',
  'agua',
  'acqua',
  'dest wasser',
  'destilliertes wasser',
  'eau distillee',
  'eau demineralisee',
  'agua destilada',
  'acqua distillata',
  'acqua demineralizzata',
  'aqua',
  'deionised water',
  'deionized water',
  'filtered water',
  'rain water',
  'rainwater',
  'tap water',
  'spring water',
  'cold water',
  'hot water',
  'warm water',
  'boiling water',
  'aq dest',
  'aqua dest',
  'h o',
  'demineralised water',
  'bottled water',
  'water amount',
  'dist water',
  'dw',
  'dm water',
  'woda',
  'voda',
  'vatten',
  'vann',
  'vand',
  'vesi',
  'dh2o',
  'd h2o',
  'distilled h2o',
  'distilled',
  'purified water',
  'demin water',
  'leitungswasser',
  'ice water',
  'iced water',
  'soft water',
  'additional water',
  'extra water',
  'more water',
];
const iceNames = [
  'ice',
  'ice cubes',
  'ice cube',
  'crushed ice',
  'eis',
  'glace',
  'hielo',
  'ghiaccio',
  'frozen water',
  'eiswurfel',
  'glacons',
  'ice chips',
];

const stockNames = {
  unsaid: [
    'lye solution',
    'that stock',
    'the stock',
    'my stock',
    'of stock',
    'stock lye',
    'stock lye solution',
    'lye stock',
    'masterbatch',
    'masterbatch lye',
    'masterbatched lye',
    'lye masterbatch',
    'master batch',
    'master batch lye',
    'premixed lye',
    'pre mixed lye',
    'stock solution',
    'mb lye',
    'lye water',
    'caustic solution',
    'liquid lye',
    'lye liquid',
    'masterbatch lye solution',
    'masterbatched lye solution',
    'masterbatch solution',
    'lye concentrate',
    'premade lye solution',
    'lye soln',
    'premix lye',
    'mb lye solution',
    'pre made lye solution',
  ],
  naoh: [
    'naoh solution',
    'sodium hydroxide solution',
    'caustic soda solution',
    'natronlauge',
    'lessive de soude',
    'soda solution',
    'naoh stock',
    'naoh masterbatch',
    'stock naoh',
    'masterbatch naoh',
    'masterbatched naoh',
    'naoh soln',
    'naoh stock solution',
    'stock naoh solution',
    'liquid caustic soda',
    'sodium hydroxide stock solution',
    'naoh masterbatch solution',
    'masterbatch naoh solution',
    'aqueous naoh',
    'naoh lye solution',
  ],
  koh: [
    'koh solution',
    'potassium hydroxide solution',
    'kalilauge',
    'caustic potash solution',
    'stock koh',
    'koh stock',
    'koh masterbatch',
    'koh stock solution',
    'stock koh solution',
    'koh soln',
    'koh lye solution',
  ],
} as const;

/** Everything a post may name, ready for longest-match reading. Built once per catalogue. */
export function makeLexicon(catalogue: Catalogue): Lexicon {
  const entries: Entry[] = [];
  const add = (phrase: string, meaning: Meaning, how: Entry['how'] = 'name'): void => {
    entries.push({ meaning, phrase: spaced(phrase), how });
  };
  for (const name of lyeNames) add(name, { kind: 'alkali', id: 'unsaid' });
  for (const name of waterNames) add(name, { kind: 'water', id: 'water' });
  for (const name of iceNames) add(name, { kind: 'ice', id: 'ice' });
  for (const id of ['unsaid', 'naoh', 'koh'] as const)
    for (const name of stockNames[id]) add(name, { kind: 'stock', id });
  for (const [role, phrases] of Object.entries(roles) as [RoleName, readonly string[]][])
    for (const phrase of phrases) add(phrase, { kind: 'role', id: role });

  const unitTrie = emptyTrie<string>();
  for (const unit of units)
    for (const name of unit.names)
      insert(unitTrie, /^[a-z]+$/.test(name) ? [name] : scan(name).map((prim) => prim.text), 0, unit.id);

  let words: ReturnType<Lexicon['vocabulary']> | null = null;
  return {
    names: namesOf(entries, catalogue),
    units: unitTrie,
    cup: 'cup',
    vocabulary: () => {
      words ??= vocabularyOf(entries, unitTrie, catalogue);
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

function vocabularyOf(
  own: readonly Entry[],
  unitTrie: Trie<string>,
  catalogue: Catalogue,
): ReturnType<Lexicon['vocabulary']> {
  const known = new Set<string>([...(unitTrie.next?.keys() ?? []), ...catalogue.nameWords.known.split(' ')]);
  const spelt = new Set<string>(catalogue.nameWords.spelt.split(' '));
  const roleWords = new Set<string>();
  for (const { phrase, meaning } of own)
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

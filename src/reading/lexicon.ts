import type { AlkaliId, Catalogue } from '../catalogue/types.ts';
import { units } from '../units/units.ts';
import { scan } from './scan.ts';
import { type RoleName, roles } from './words.ts';

/** What a phrase may mean. */
export type Meaning =
  | { readonly kind: 'fat' | 'liquid' | 'acid' | 'additive' | 'scent'; readonly id: string }
  | { readonly kind: 'alkali'; readonly id: AlkaliId | 'unsaid' }
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
  readonly names: Trie<Entry>;
  readonly units: Trie<string>;
  /** Single words that names are made of, for spelling. */
  readonly vocabulary: readonly string[];
  /** Words of a name in any order, without the generic ones, to its entry. */
  readonly bags: ReadonlyMap<string, Entry>;
  readonly label: (meaning: Meaning) => string;
}

export const emptyTrie = <T>(): Trie<T> => ({ next: null, hit: null });

function insert<T>(root: Trie<T>, words: readonly string[], value: T): void {
  let node = root;
  for (const word of words) {
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

/** A name as the reader meets it: folded words and numbers, signs dropped but for the degree. */
export function wordsOf(phrase: string): string[] {
  if (/^[a-z]+( [a-z]+)*$/.test(phrase)) return phrase.split(' ');
  const words: string[] = [];
  for (const prim of scan(phrase)) if (prim.kind === 'word' || prim.kind === 'number') words.push(prim.text);
  return words;
}

/** Words that say only "this is a fat": dropped when names are compared as bags of words. */
export const genericWords: ReadonlySet<string> = new Set([
  'oil',
  'butter',
  'fat',
  'wax',
  'seed',
  'of',
  'de',
  'huile',
  'aceite',
  'olio',
  'the',
]);

export function bagOf(words: readonly string[]): string {
  return words
    .filter((word) => word !== 'oil' && word !== 'of' && word !== 'the')
    .map(singular)
    .sort()
    .join(' ');
}

/** A plural's singular, near enough for matching. */
export function singular(word: string): string {
  if (word.length > 3 && word.endsWith('s') && !word.endsWith('ss') && !word.endsWith('us')) return word.slice(0, -1);
  return word;
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

/** Everything a post may name, ready for longest-match reading. Built once per catalogue. */
export function makeLexicon(catalogue: Catalogue): Lexicon {
  const names = emptyTrie<Entry>();
  const bags = new Map<string, Entry>();
  const vocabulary = new Set<string>();
  const labels = new Map<string, string>();

  const add = (phrase: string, meaning: Meaning, how: Entry['how'] = 'name'): void => {
    const words = phrase.includes(' ') || /[^a-z]/.test(phrase) ? wordsOf(phrase) : [phrase];
    if (words.length === 0) return;
    const entry: Entry = { meaning, phrase, how };
    insert(names, words, entry);
    if (meaning.kind === 'fat' || meaning.kind === 'unheld') {
      const bag = bagOf(words);
      if (bag && !bags.has(bag)) bags.set(bag, entry);
    }
    if (how !== 'abbreviation' && meaning.kind !== 'scent' && meaning.kind !== 'role')
      for (const word of words) if (word.length >= 4) vocabulary.add(word);
  };

  for (const name of lyeNames) add(name, { kind: 'alkali', id: 'unsaid' });
  for (const name of waterNames) add(name, { kind: 'water', id: 'water' });
  for (const name of iceNames) add(name, { kind: 'ice', id: 'ice' });
  for (const [alkali, words] of [
    [
      'unsaid',
      [
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
    ],
    [
      'naoh',
      [
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
    ],
    [
      'koh',
      [
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
    ],
  ] as const)
    for (const word of words) add(word, { kind: 'stock', id: alkali });
  for (const [role, phrases] of Object.entries(roles) as [RoleName, readonly string[]][])
    for (const phrase of phrases) add(phrase, { kind: 'role', id: role });

  const ambiguous = new Map(catalogue.ambiguous.map((one) => [one.id, one]));
  const unheld = new Map(catalogue.unheld.map((one) => [one.id, one]));
  for (const [name, hit] of catalogue.byName) {
    const { kind, id } = hit;
    if (kind === 'ambiguous') {
      const one = ambiguous.get(id);
      if (!lyeNames.includes(name))
        add(name, { kind, id: name, candidates: one?.candidates ?? [], why: one?.why ?? '' });
    } else if (kind === 'unheld')
      add(name, { kind, id: unheld.get(id)?.name ?? name, candidates: unheld.get(id)?.nearest ?? [] });
    else if (kind === 'alkali') add(name, { kind, id: id as AlkaliId });
    else add(name, { kind, id }, hit.how);
  }
  for (const [kind, things] of [
    ['alkali', catalogue.alkalis],
    ['fat', catalogue.fats],
    ['liquid', catalogue.liquids],
    ['acid', catalogue.acids],
    ['additive', catalogue.additives],
    ['scent', catalogue.scents],
  ] as const)
    for (const thing of things.values()) labels.set(`${kind} ${thing.id}`, thing.name);

  const unitTrie = emptyTrie<string>();
  for (const unit of units)
    for (const name of unit.names)
      insert(
        unitTrie,
        scan(name).map((prim) => prim.text),
        unit.id,
      );

  const label = (meaning: Meaning): string => {
    if (meaning.kind === 'alkali' && meaning.id === 'unsaid') return 'lye';
    return labels.get(`${meaning.kind} ${meaning.id}`) ?? meaning.id;
  };
  return { names, units: unitTrie, vocabulary: [...vocabulary], bags, label };
}

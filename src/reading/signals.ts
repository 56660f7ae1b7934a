/**
 * What stands in a post that rules look for, gathered once: a rule that needs one of these things has nothing to do in
 * a post that has none of them.
 */
import type { Quantity } from './quantities.ts';
import type { Token } from './tokens.ts';
import type { Word } from './word.ts';

export const signal = {
  ratio: 1,
  percent: 2,
  temperature: 4,
  /** Less than one, in figures or words. */
  part: 8,
  negative: 16,
  equals: 32,
  /** Roles. */
  price: 64,
  /** A solution mixed before. */
  stock: 128,
  equal: 256,
  bars: 512,
  mould: 1024,
  /** Words. */
  every: 2048,
  following: 4096,
  using: 8192,
  thinning: 16384,
  store: 32768,
  for: 65536,
  selling: 131072,
  parting: 262144,
  including: 524288,
  ofIt: 1048576,
  /** A soap that is cooked: by what is said of it, or how it looks. */
  cooking: 4194304,
  /** Any figure. */
  figure: 2097152,
  /** Words of buying and keeping, and those that are so only beside others. */
  buying: 8388608,
  keeping: 16777216,
  /** Words without which no sentence of a post can take anything back. */
  turning: 33554432,
  both: 67108864,
  /** Words, or beginnings of them, of which one stands in each sentence that takes anything back or says when it was so. */
  retelling: 134217728,
  /** The name of a unit, whatever it measures. */
  unit: 268435456,
} as const;

/** The words of each. */
const wordsOf: Partial<Readonly<Record<keyof typeof signal, string>>> = {
  part: 'half quarter',
  every: 'per every each',
  following: 'after once when post past following',
  using: 'used using use took take taking need needed needs weighed',
  thinning: 'paste sample samples dilute diluted dilutes diluting thin thinned',
  store: 'cupboard pantry larder cellar storeroom stash fridge freezer jar tub tin bag bottle bucket',
  buying:
    'bought purchased purchase purchases ordered inventory stocktake unopened delivery delivered shopping cupboard pantry larder cellar storeroom stash supplies stockpile leftovers haul',
  keeping: 'stock store shelf shelves home hand over have got',
  for: 'for',
  selling: 'sell sells sold selling buy bought pay paid charge charged',
  parting: 'split divide divided cut separate separated slice sliced',
  including: 'includes included including incl contains thereof',
  cooking:
    'cook cooks cooked cooking gekocht kochen cuire cuit cuite cuisson cocido cotto schongarer crockpot crock slowcooker cooker hp zap zaps zapped zapping tongue gel gelled oven applesauce vaseline potato potatoes mash translucent glassy',
  ofIt: 'it that them those which this left remained',
  turning:
    'none ran run became turned only topped made uses takes edit edited correction corrected erratum oops whoops woops sorry scratch strike meant wait typo mistyped misread mistake update updated instead place rather replace replaced replacing swap swapped swapping substitute substituted sub subbed switch switched change changed old previous not no nope never didnt minus without out skip skipped remove removed omit omitted delete deleted drop dropped ditch ditched forgot forget scrap scrapped says say thinks reckons swears claims insists recommends would now today time end actually really used once originally first formerly previously said wrote told typed posted had was before until ignore yesterday last earlier compared there normally usually otherwise',
  both: 'both',
  retelling:
    'none ran run became turned only topped toped made uses takes no not now out left kept gone off without minus instead place lieu rather sub subbed subbing should really actually dont didnt havent couldnt cant where for today time end reality truth went raised increased lowered cut corrected upped bumped ended settled only use used using take took once last usual usually normally otherwise previous previously earlier compared there original originally first formerly said says thinks reckons swears claims insists recommends would wrote told typed posted had was were ignore then before old yesterday recipe book card calculator calc sheet calls asks printed planned wanted supposed p oh',
};
/** Beginnings of words that give the last one, too. */
const retold =
  'ps edit correction erratum oops whoops woops sorry scratch strike meant make wait hang hold typo mistyped misread bad mistake finger update never skip remov omit delet ditch scrap drop forget forgot reduced replac swap substitut exchang chang cancel switch trad'.split(
    ' ',
  );

/** What a word by itself gives. */
export const ofWord = (word: string): number =>
  (words.get(word) ?? 0) | (retold.some((begin) => word.startsWith(begin)) ? signal.retelling : 0);

const words: ReadonlyMap<string, number> = bitsOf(wordsOf);

/** Every word with the bits of all signals that it gives. */
function bitsOf(lists: typeof wordsOf): ReadonlyMap<string, number> {
  const bits = new Map<string, number>();
  for (const [name, list] of Object.entries(lists))
    for (const word of list.split(' ')) bits.set(word, (bits.get(word) ?? 0) | signal[name as keyof typeof signal]);
  return bits;
}

const roles: ReadonlyMap<string, number> = new Map([
  ['price', signal.price],
  ['equal', signal.equal],
  ['bars', signal.bars],
  ['mould', signal.mould],
  ['number', signal.turning],
]);
/** Names that are told apart by how they are called. */
const called: ReadonlyMap<string, number> = new Map([
  ['crock pot', signal.cooking],
  ['slow cooker', signal.cooking],
  ['apple sauce', signal.cooking],
  ['petroleum jelly', signal.cooking],
  ['test', signal.thinning],
  ['dilution', signal.thinning],
]);

/** A word is one of those that give the signal. */
export const gives = (token: Token | undefined, bit: number): boolean =>
  token?.t === 'word' && ((words.get(token.text) ?? 0) & bit) !== 0;

/** A role gives the signal by what it is called. */
export const callsFor = (token: Token, bit: number): boolean =>
  token.t === 'name' && token.meaning.kind === 'role' && ((called.get(token.meant) ?? 0) & bit) !== 0;

/** What stands in a post, a bit for each signal: anywhere in it, and at each of its tokens. */
export interface Signals {
  readonly all: number;
  readonly at: readonly number[];
}

/** `words`: at their prims. */
export function signalsOf(tokens: readonly Token[], words: readonly (Word | null)[]): Signals {
  const at: number[] = [];
  let all = 0;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    const found = token ? signalsAt(token, words[token.from] ?? null) : 0;
    at.push(found);
    all |= found;
  }
  return { all, at };
}

/** `first`: the word that a word or a name begins with. */
function signalsAt(token: Token, first: Word | null): number {
  if (token.t === 'word') return first?.text === token.text ? first.signals : (words.get(token.text) ?? 0);
  if (token.t === 'sign') return token.text === '=' ? signal.equals : 0;
  if (token.t === 'quantity') return ofFigure(token.quantity);
  if (token.t === 'aside') return token.reason === 'a price' ? signal.price : 0;
  if (token.t !== 'name') return 0;
  const found = token.to > token.from + 1 ? called.get(token.text.toLowerCase()) : first?.signals;
  if (token.meaning.kind === 'stock') return (found ?? 0) | signal.stock;
  if (token.meaning.kind !== 'role') return found ?? 0;
  return (found ?? 0) | (roles.get(token.meaning.id) ?? 0) | (called.get(token.meant) ?? 0);
}

function ofFigure({ dim, value, negative }: Quantity): number {
  let found: number = negative ? signal.figure | signal.negative : signal.figure;
  if (dim === 'bare') found |= (value < 1 ? signal.part : 0) | (Number.isInteger(value) ? 0 : signal.price);
  else if (dim === 'percent') found |= signal.percent;
  else if (dim === 'ratio') found |= signal.ratio;
  else if (dim === 'temperature') found |= signal.temperature;
  return found;
}

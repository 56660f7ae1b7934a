/**
 * What stands in a post that rules look for, gathered once: a rule that needs one of these things has nothing to do in
 * a post that has none of them.
 */
import type { Token } from './tokens.ts';

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
};
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

/** The signals of a post, a bit each. */
export function signalsOf(tokens: readonly Token[]): number {
  let found = 0;
  for (const token of tokens) {
    if (token.t === 'word') found |= words.get(token.text) ?? 0;
    else if (token.t === 'sign') found |= token.text === '=' ? signal.equals : 0;
    else if (token.t === 'quantity') {
      const { dim, value, negative } = token.quantity;
      found |= signal.figure;
      if (dim === 'bare') found |= (value < 1 ? signal.part : 0) | (Number.isInteger(value) ? 0 : signal.price);
      else if (dim === 'percent') found |= signal.percent;
      else if (dim === 'ratio') found |= signal.ratio;
      else if (dim === 'temperature') found |= signal.temperature;
      if (negative) found |= signal.negative;
    } else if (token.t === 'aside') found |= token.reason === 'a price' ? signal.price : 0;
    else if (token.t === 'name') {
      const text = token.text.toLowerCase();
      found |= words.get(text) ?? called.get(text) ?? 0;
      if (token.meaning.kind === 'stock') found |= signal.stock;
      if (token.meaning.kind === 'role') found |= roles.get(token.meaning.id) ?? called.get(token.meant) ?? 0;
    }
  }
  return found;
}

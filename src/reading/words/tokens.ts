import { singular } from '../../catalogue/names.ts';
import { hasDigits } from '../text/letters.ts';
import { type Prim, rawText } from '../text/scan.ts';
import { shortFor } from './abbreviation.ts';
import { asideTokenAt } from './aside.ts';
import type { Entry, Lexicon, Meaning, Names, Trie } from './lexicon.ts';
import { unitAt } from './measure.ts';
import { type DecimalHabit, decimalHabit } from './numbers.ts';
import { type Quantity, quantityAt } from './quantities.ts';
import { isSlipOfLye } from './slip-of-lye.ts';
import { distance, type Speller } from './spelling.ts';
import { turnedRound } from './turned-round.ts';
import { meantFor, mostSpellings, type Sort, sortOf, type Word, wordsOf } from './word.ts';

/** Whatever its kind, a token has its own keys in this order: the compiler then knows few shapes of them. */
export type Token = { readonly from: number; readonly to: number } & (
  | { readonly t: 'quantity'; readonly quantity: Quantity }
  | {
      readonly t: 'name';
      readonly text: string;
      readonly meaning: Meaning;
      readonly how: 'name' | 'plain' | 'abbreviation' | 'spelling';
      readonly meant: string;
      /** It is put in after the cook, as was heard before. */
      readonly late?: true;
    }
  /** A figure already known to be no amount. */
  | { readonly t: 'aside'; readonly reason: string; readonly numbers: readonly number[] }
  | { readonly t: 'word'; readonly text: string; readonly sort: Sort }
  | { readonly t: 'sign'; readonly text: string; readonly sort: null }
  | { readonly t: 'line'; readonly text: 'line' | 'blank'; readonly sort: null }
);
export type Figure = Extract<Token, { t: 'quantity' }>;

/** The figure, which is no amount for this reason. */
export const asAside = ({ from, to, quantity: { numbers } }: Figure, reason: string): Token => ({
  t: 'aside',
  from,
  to,
  reason,
  numbers,
});

/** A word that says nothing, in the place of a token. */
export const asFiller = ({ from, to }: Token, text = 'of'): Token => ({ t: 'word', from, to, text, sort: 'filler' });

interface NameHit {
  readonly entry: Entry;
  readonly end: number;
}

/** A post while it is cut. */
interface Post {
  readonly prims: readonly Prim[];
  readonly words: readonly (Word | null)[];
  /** What a word may have been meant for, where it is a slip; null where none is. */
  readonly meant: ReadonlyMap<number, readonly string[]> | null;
  readonly lexicon: Lexicon;
}

interface Longest {
  hit: NameHit | null;
  /** Another name that is as long. */
  rival: Entry | null;
}

/** Words and signs of a name, at the most. */
const longestName = 12;

/** Longest name from prim `i`, whose word is one of `heads`. */
function nameAt(post: Post, i: number, heads = post.meant?.get(i)): NameHit | null {
  const { prims, words, lexicon } = post;
  const prim = prims[i];
  const word = words[i];
  if (!prim || (!heads && word?.names === null)) return null;
  const longest: Longest = { hit: null, rival: null };
  if (heads)
    for (const one of heads)
      follow(post, i, i, lexicon.names.from(one) ?? lexicon.names.from(singularOf(prim, one)), longest);
  else follow(post, i, i, word ? word.names : lexicon.names.fromNumeral(prim.text), longest);
  const { hit, rival } = longest;
  if (hit && endsInitials(prims, hit.end)) return { ...hit, end: hit.end + 1 };
  return hit && rival ? { ...hit, entry: either(hit.entry, rival) } : hit;
}

const singularOf = (prim: Prim, word: string): string => (prim.kind === 'word' ? singular(word) : word);

/** Takes the name that ends with prim `j` on this branch, and looks for longer ones behind it. */
function follow(post: Post, i: number, j: number, branch: Trie<Entry> | null | undefined, longest: Longest): void {
  const { prims, words, meant } = post;
  if (!branch) return;
  if (branch.hit) take(post, j, branch.hit, longest);
  const { next } = branch;
  if (!next) return;
  let k = j + 1;
  while (prims[k]?.kind === 'sign' && bridges(prims, k)) k++;
  const prim = prims[k];
  if (!prim || k - i >= longestName || prim.kind === 'sign' || prim.kind === 'line') return;
  if (prim.text === 'and' && isEach(prims, i, k)) return;
  const heads = meant?.get(k);
  if (heads) for (const word of heads) follow(post, i, k, next.get(word) ?? next.get(singularOf(prim, word)), longest);
  else follow(post, i, k, next.get(prim.text) ?? ofSingular(next, words[k]), longest);
}

/** "12 oz each of lard and tallow", "lard and tallow, 12 oz each": two things, and no blend of them. */
function isEach(prims: readonly Prim[], i: number, and: number): boolean {
  const at = prims[i - 1]?.text === 'of' ? i - 2 : i - 1;
  if (prims[at]?.text === 'each') return true;
  for (let k = and + 2; k - and <= longestEach; k++) {
    const prim = prims[k];
    if (!prim || prim.kind === 'line') return false;
    if (prim.text === 'each') return true;
  }
  return false;
}
/** Words and signs from the "and" of two things to "each", at the most: `and tallow oil (soft): 12 oz each`. */
const longestEach = 7;

const ofSingular = (next: Map<string, Trie<Entry>>, word: Word | null | undefined): Trie<Entry> | undefined =>
  word && word.singular !== word.text ? next.get(word.singular) : undefined;

function take({ prims, lexicon }: Post, j: number, entry: Entry, longest: Longest): void {
  const degree = prims[j]?.kind === 'number' && prims[j + 1]?.text === '°';
  if (prims[j]?.kind === 'number' && !degree && !namesKind(prims, j, entry.phrase, lexicon)) return;
  const end = degree ? j + 2 : j + 1;
  const { hit } = longest;
  if (!hit || end > hit.end) {
    longest.hit = { entry, end };
    longest.rival = null;
  } else if (
    end === hit.end &&
    (entry.meaning.kind !== hit.entry.meaning.kind || entry.meaning.id !== hit.entry.meaning.id)
  )
    longest.rival = entry;
}

/** Number `j` is a part of this name (`76 degree`): no unit follows it, and an amount or none at all is in the post. */
function namesKind(prims: readonly Prim[], j: number, phrase: string, lexicon: Lexicon): boolean {
  const behind = prims[j + 1]?.text;
  if (behind === '%' || behind === '/' || unitAt(prims, j + 1, lexicon)) return false;
  return (
    /\b(?:deg|degree|f|c|melt)\b/.test(phrase) ||
    amountFollows(prims, j + 1) ||
    prims.every((other, k) => k === j || other.kind !== 'number')
  );
}

/**
 * The figure that a name begins with is no amount: of a fat ("92 coconut"), which is asked for where no amount is left,
 * or where a word says what it counts ("5 fold orange"). "100 lye", "80 lactic acid" and "2 milk" are weighed.
 */
const leadsKind = (i: number, { entry: { meaning, phrase }, end }: NameHit): boolean =>
  end > i + 1 && (meaning.kind === 'fat' || meaning.kind === 'unheld' || /^\d+ (?:percent|fold|x)\b/.test(phrase));

/** Words of a bracket between a name and its amount, at the most. */
const longestRemark = 5;

/** "coconut oil 76 250 g": the 76 is a melting point where an amount stands behind it, or no other figure at all. */
function amountFollows(prims: readonly Prim[], from: number): boolean {
  let at = from;
  // "coconut oil 92 (hydrogenated) 300 g"
  if (prims[at]?.text === '(' && prims[at + 1]?.kind === 'word') {
    let close = at + 2;
    while (prims[close]?.kind === 'word' && close - at < longestRemark) close++;
    if (prims[close]?.text === ')') at = close + 1;
  }
  while (prims[at]?.kind === 'sign' && /^[-:=,(\t.)]$/.test(prims[at]?.text ?? '')) at++;
  return prims[at]?.kind === 'number';
}

/** A slip that lies as near to one name as to another. */
function either(a: Entry, b: Entry): Entry {
  const id = `${a.phrase} or ${b.phrase}`;
  return {
    meaning: {
      kind: 'ambiguous',
      id,
      candidates: [a.meaning.id, b.meaning.id],
      why: 'The spelling is as near to one as to the other.',
    },
    phrase: id,
    how: 'name',
  };
}

/** Words that people cut short with a full stop inside a name: "dest. Wasser", "ref. coconut oil". */
const abbreviated = /^(dest|dist|ess|sod|pot|ref|unref|frac|demin|org|veg|hyd)$/;

/** A hyphen, full stop or degree sign inside a name: "palm-kernel", "d.i. water", "76° coconut". */
function bridges(prims: readonly Prim[], j: number): boolean {
  const prim = prims[j];
  const text = prim?.text ?? '';
  if (text === '°') return true;
  if (text === '.' && prim?.glued && (abbreviated.test(prims[j - 1]?.text ?? '') || endsInitials(prims, j)))
    return prims[j + 1]?.kind === 'word';
  return (prim?.glued ?? false) && (prims[j + 1]?.glued ?? false) && '-./:_'.includes(text);
}

/** The last dot of "e.v.o. oil", "lavender e.o. 25 g": no sentence ends there, where no capital follows. */
function endsInitials(prims: readonly Prim[], j: number): boolean {
  const [letter, dot, next] = [prims[j - 1], prims[j - 2], prims[j + 1]];
  if (prims[j]?.text !== '.' || letter?.raw.length !== 1 || dot?.text !== '.' || !letter.glued) return false;
  return next?.kind === 'number' || (next?.kind === 'word' && next.raw[0] === next.raw[0]?.toLowerCase());
}

/** Different words of a post that are tried as slips of spelling, at the most: keeps a hostile post's cost bounded. */
const mostSlips = 1000;

/** The word without the French article in front of it ("d'eau", "l'huile"); null where there is none. */
const unelided = (prim: Prim | undefined): string | null =>
  prim?.kind === 'word' && prim.raw.length > 3 && prim.raw[1] === "'" && /^[dl]/i.test(prim.raw)
    ? prim.text.slice(1)
    : null;

/** What each strange word of a post may have been meant for. */
function spellings(
  prims: readonly Prim[],
  words: readonly (Word | null)[],
  lexicon: Lexicon,
  speller: Speller,
): Post['meant'] {
  let meant: Map<number, readonly string[]> | null = null;
  let tried: Set<string> | null = null;
  for (let k = 0; k < words.length; k++) {
    const word = words[k];
    if (!word || (word.names && !word.strange)) continue;
    if (word.mayBeLye && isSlipOfLye(prims, k, lexicon)) {
      meant ??= new Map();
      meant.set(k, ['lye']);
      continue;
    }
    const own = word.names ? null : (goesOn(prims, words, k) ?? unelided(prims[k]));
    if (own && (vowelless.has(word.text) || lexicon.names.has(own))) {
      meant ??= new Map();
      meant.set(k, [own]);
    } else if (
      (word.strange || genericAt(prims, k + 1) !== '') &&
      (tried === null || tried.size < mostSlips || tried.has(word.text))
    ) {
      const near = word.strange ? meantFor(word, lexicon, speller) : none;
      // "shee butter" is no sheep's
      const next = genericAt(prims, k + 1);
      const known = near.length > 0 && (next === '' || near.some((one) => isBefore(one, next, lexicon)));
      const heard = known ? none : beforeGeneric(prims, words, k, lexicon);
      const likely = heard.length > 0 ? heard : near;
      if (!word.strange && likely.length === 0) continue;
      tried ??= new Set();
      tried.add(word.text);
      if (likely.length === 0) continue;
      meant ??= new Map();
      meant.set(k, likely);
    }
  }
  return meant;
}

/** What people write without vowels behind the word that a name begins with. */
const vowelless = new Map([
  ...['bttr', 'btr', 'buttr'].map((one) => [one, 'butter'] as const),
  ...['krnl', 'knl', 'krl', 'k'].map((one) => [one, 'kernel'] as const),
]);

/** "Cocoa bttr", "palm krnl oil": how the name goes on; null where it does not go on so. */
function goesOn(prims: readonly Prim[], words: readonly (Word | null)[], k: number): string | null {
  const meant = vowelless.get(words[k]?.text ?? '');
  if (meant === undefined || !words[k - 1]?.names?.next?.has(meant)) return null;
  return meant === 'butter' || prims[k + 1]?.text === 'oil' ? meant : null;
}

const isBefore = (word: string, next: string, { names }: Lexicon): boolean =>
  names.from(word)?.next?.has(next) === true;

const generic: ReadonlySet<string> = new Set(['oil', 'butter', 'wax']);
const slipsOfGeneric = new Map([
  ['buter', 'butter'],
  ['butr', 'butter'],
  ['buttr', 'butter'],
  ['oyl', 'oil'],
]);

/** The generic word there, if it is one or a slip of one; or nothing. */
const genericAt = (prims: readonly Prim[], k: number): string => {
  const text = prims[k]?.text ?? '';
  return generic.has(text) ? text : (slipsOfGeneric.get(text) ?? '');
};

/** "Shay butter", "rice brand oil": what a word in front of the generic one was meant for, by its consonants or its neighbours. */
function beforeGeneric(
  prims: readonly Prim[],
  words: readonly (Word | null)[],
  k: number,
  lexicon: Lexicon,
): readonly string[] {
  const [word, next] = [words[k], genericAt(prims, k + 1)];
  if (!word || word.names || word.text.length < 4 || next === '') return none;
  const beside = [...(words[k - 1]?.names?.next ?? [])].flatMap(([one, branch]) =>
    branch.next?.has(next) && distance(word.text, one, 1) <= 1.01 ? [one] : [],
  );
  if (beside.length > 0 || !word.strange) return beside.length === 1 ? beside : none;
  const named = (one: string): string | undefined => lexicon.names.from(one)?.next?.get(next)?.hit?.meaning.id;
  const heard = (byConsonants(lexicon).get(consonants(word.text)) ?? []).filter((one) => named(one) !== undefined);
  return new Set(heard.map(named)).size === 1 ? heard.slice(0, 1) : none;
}

const none: readonly string[] = [];
const consonantsKnown = new WeakMap<Names, ReadonlyMap<string, readonly string[]>>();

/** The words that names are made of, by their consonants. */
function byConsonants({ names, vocabulary }: Lexicon): ReadonlyMap<string, readonly string[]> {
  const known = consonantsKnown.get(names) ?? Map.groupBy(vocabulary().spelt, consonants);
  consonantsKnown.set(names, known);
  return known;
}

/** The first letter and the consonants of a word, doubled ones once. */
const consonants = (word: string): string =>
  word.slice(0, 1) +
  word
    .slice(1)
    .replace(/[aeiouy]/g, '')
    .replace(/(.)\1/g, '$1');

/** A word that names use only beside others ("caster" of "caster sugar"), read as the slip of another. */
function misspelt(post: Post, i: number, speller: Speller): NameHit | null {
  const word = post.words[i];
  // a strange word has been tried with the others
  if (!word || word.plain || word.strange || word.text.length < 5 || post.meant?.has(i)) return null;
  const near = speller.others(word.text);
  return near.length === 0 || near.length > mostSpellings ? null : nameAt(post, i, near);
}

/** `olv 600`, `50 g cast`: a short word beside an amount that is short for one name only. */
function shortened(post: Post, i: number): NameHit | null {
  const { prims, words, lexicon } = post;
  const word = words[i];
  if (!word || word.plain || word.names || word.isUnit || post.meant?.has(i)) return null;
  const before = prims[i - 1];
  const counted =
    before?.kind === 'number' || (before?.kind === 'word' && lexicon.units.next?.has(before.text) === true);
  // "sunfl. oil"
  const [dot, next] = [prims[i + 1], prims[i + 2]];
  const isCut = dot?.text === '.' && dot.glued && next !== undefined && generic.has(next.raw);
  if (!counted && !isCut && !amountFollows(prims, i + 1) && dot?.kind !== 'word') return null;
  const whole = shortFor(word.text, lexicon);
  const cut = isCut && whole ? lexicon.names.from(whole)?.next?.get(next.text)?.hit : null;
  const hit = cut ? { entry: cut, end: i + 3 } : whole === null ? null : nameAt(post, i, [whole]);
  if (!hit || !(counted || amountFollows(prims, hit.end))) return null;
  return { ...hit, entry: { ...hit.entry, how: 'abbreviation' } };
}

/** Cuts the post into quantities, names, set-aside figures, words and signs; each prim is in exactly one token. */
export function tokenize(
  prims: readonly Prim[],
  lexicon: Lexicon,
  speller: Speller,
): { tokens: Token[]; words: readonly (Word | null)[]; habit: DecimalHabit } {
  const habit = decimalHabit(prims);
  const words = wordsOf(prims, lexicon);
  const post: Post = { prims, words, meant: spellings(prims, words, lexicon, speller), lexicon };
  const tokens: Token[] = [];
  let i = 0;
  while (i < prims.length) {
    const token = tokenAt(post, i, speller, habit);
    tokens.push(token);
    i = token.to;
  }
  return { tokens, words, habit };
}

const roughly = /^(approx|appr|ca|circa|abt|est|avg|max|min|incl)$/;

/** "Can sb check my lye": somebody, who is also short for shea butter. */
const isSomebody = (prims: readonly Prim[], i: number): boolean =>
  prims[i]?.text === 'sb' &&
  prims[i + 1]?.kind === 'word' &&
  prims[i - 1]?.kind !== 'number' &&
  /^(can|could|would|will|please|pls|if|has|have|maybe|hope|hoping|want|asked|that|anyone|or)$/.test(
    prims[i - 1]?.text ?? '',
  );

const subjects = /^(you|i|we|it|he|she|they|this|that|these|those|the|my|any(?:one|body)|some(?:one|body)|be|not|do)$/;

/** "Can you check it?", "I can weigh it", which speak of no tin. */
const isVerb = (prims: readonly Prim[], i: number): boolean => {
  if (prims[i]?.text !== 'can') return false;
  const before = prims[i - 1]?.text ?? '';
  if (/^(i|you|we|he|she|they)$/.test(before)) return true;
  return subjects.test(prims[i + 1]?.text ?? '') && !/^(the|a|my|this|that|one|each|per|of)$/.test(before);
};

/** "Our co-op", "a co-worker": one word, and no short name of coconut oil. */
const isPrefix = ({ prims, words }: Post, i: number): boolean =>
  prims[i]?.text === 'co' &&
  prims[i + 1]?.text === '-' &&
  prims[i + 1]?.glued === true &&
  prims[i + 2]?.glued === true &&
  words[i + 2]?.names === null;

/** "Palm-free", "mustard-free blend": where it says that something is not in, behind the word or the name that ends there. */
const isWithout = (prims: readonly Prim[], end: number): boolean =>
  prims[end + 1]?.text === 'free' &&
  /^[-‐‑]$/.test(prims[end]?.text ?? '') &&
  prims[end]?.glued === true &&
  prims[end + 1]?.glued === true;

const asWithout = (prims: readonly Prim[], i: number, end: number): Token => ({
  t: 'word',
  from: i,
  to: end + 2,
  text: rawText(prims, i, end + 2).toLowerCase(),
  sort: 'everyday',
});

function tokenAt(post: Post, i: number, speller: Speller, habit: DecimalHabit): Token {
  const { prims, words, meant, lexicon } = post;
  const prim = prims[i];
  if (!prim || prim.kind === 'line')
    return { t: 'line', from: i, to: i + 1, text: prim?.text === 'blank' ? 'blank' : 'line', sort: null };
  const word = words[i];
  if (isPrefix(post, i)) return { t: 'word', from: i, to: i + 3, text: rawText(prims, i, i + 3), sort: 'everyday' };
  if (word?.talk && !prims[i + 1]?.glued && !meant?.has(i))
    return { t: 'word', from: i, to: i + 1, text: prim.text === 'n' ? 'and' : prim.text, sort: sortOf(word, lexicon) };
  const announces = word?.announces ?? false;
  const aside = !word || announces || prims[i + 1]?.glued ? asideTokenAt(prims, i, lexicon, announces) : null;
  if (aside) return { t: 'aside', from: i, to: aside.end, reason: aside.reason, numbers: aside.numbers };
  if (prim.kind === 'sign') {
    // "approx. 95 g", "ca. 20": no sentence ends here
    if (prim.text === '.' && prim.glued && prims[i + 1]?.kind === 'number' && roughly.test(prims[i - 1]?.text ?? ''))
      return { t: 'word', from: i, to: i + 1, text: 'about', sort: 'filler' };
    return { t: 'sign', from: i, to: i + 1, text: prim.text, sort: null };
  }
  const turned = word ? turnedRound(prims, i, lexicon) : null;
  const isNone = isSomebody(prims, i) || isVerb(prims, i) || (prim.text === 'of' && turnedRound(prims, i + 1, lexicon));
  const plain = word && isNone ? null : nameAt(post, i);
  const named = turned ?? plain ?? misspelt(post, i, speller) ?? shortened(post, i);
  const end = named?.end ?? i + 1;
  if (word && isWithout(prims, end)) return asWithout(prims, i, end);
  const hit = !word || word.beginsAmount ? quantityAt(prims, i, lexicon, habit) : null;
  if (named && (!hit || (prim.kind === 'number' && !hit.quantity.unit && leadsKind(i, named))))
    return nameToken(post, i, named, (turned ?? plain) !== null || named.entry.how === 'abbreviation');
  if (hit) return { t: 'quantity', from: i, to: hit.end, quantity: hit.quantity };
  if (!word) return { t: 'aside', from: i, to: i + 1, reason: 'no amount that can be read', numbers: [i] };
  // "olive n coconut"
  const text = prim.text === 'n' ? 'and' : prim.text;
  return { t: 'word', from: i, to: i + 1, text, sort: sortOf(word, lexicon) };
}

function nameToken({ prims, meant }: Post, i: number, { entry, end }: NameHit, plain: boolean): Token {
  let asTyped = plain;
  for (let k = i; k < end; k++) {
    const prim = prims[k];
    asTyped &&= (!meant?.has(k) || unelided(prim) !== null) && !(prim && (hasDigits(prim) || prim.raw.includes(' ')));
  }
  return {
    t: 'name',
    from: i,
    to: end,
    text: rawText(prims, i, end),
    meaning: entry.meaning,
    how: asTyped ? entry.how : 'spelling',
    meant: entry.phrase,
  };
}

import { singular } from '../catalogue/names.ts';
import { shortFor } from './abbreviation.ts';
import { asideTokenAt } from './aside.ts';
import { digitsIn } from './letters.ts';
import type { Entry, Lexicon, Meaning, Trie } from './lexicon.ts';
import { unitAt } from './measure.ts';
import { type DecimalHabit, decimalHabit } from './numbers.ts';
import { type Quantity, quantityAt } from './quantities.ts';
import { type Prim, rawText } from './scan.ts';
import type { Speller } from './spelling.ts';
import { type Sort, sortOf, type Word, wordsOf } from './word.ts';

export type Token = { readonly from: number; readonly to: number } & (
  | { readonly t: 'quantity'; readonly quantity: Quantity }
  | {
      readonly t: 'name';
      readonly meaning: Meaning;
      readonly text: string;
      readonly how: 'name' | 'plain' | 'abbreviation' | 'spelling';
      readonly meant: string;
    }
  /** A figure already known to be no amount. */
  | { readonly t: 'aside'; readonly reason: string; readonly numbers: readonly number[] }
  | { readonly t: 'word'; readonly text: string; readonly sort: Sort }
  | { readonly t: 'sign'; readonly text: string; readonly sort: null }
  | { readonly t: 'line'; readonly text: 'line' | 'blank'; readonly sort: null }
);

interface NameHit {
  readonly entry: Entry;
  readonly end: number;
}

/** A post while it is cut. */
interface Post {
  readonly prims: readonly Prim[];
  readonly words: readonly (Word | null)[];
  /** What a word may have been meant for, where it is a slip. */
  readonly meant: readonly (readonly string[] | undefined)[];
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
function nameAt(post: Post, i: number, heads = post.meant[i]): NameHit | null {
  const { prims, words, lexicon } = post;
  const prim = prims[i];
  if (!prim || !(heads || (words[i]?.beginsName ?? lexicon.names.has(prim.text)))) return null;
  const longest: Longest = { hit: null, rival: null };
  for (const word of heads ?? [prim.text])
    follow(post, i, i, lexicon.names.from(word) ?? lexicon.names.from(singularOf(prim, word)), longest);
  const { hit, rival } = longest;
  return hit && rival ? { ...hit, entry: either(hit.entry, rival) } : hit;
}

const singularOf = (prim: Prim, word: string): string => (prim.kind === 'word' ? singular(word) : word);

/** Takes the name that ends with prim `j` on this branch, and looks for longer ones behind it. */
function follow(post: Post, i: number, j: number, branch: Trie<Entry> | undefined, longest: Longest): void {
  const { prims, meant } = post;
  if (!branch) return;
  if (branch.hit) take(post, j, branch.hit, longest);
  const { next } = branch;
  if (!next) return;
  let k = j + 1;
  while (prims[k]?.kind === 'sign' && bridges(prims, k)) k++;
  const prim = prims[k];
  if (!prim || k - i >= longestName || prim.kind === 'sign' || prim.kind === 'line') return;
  for (const word of meant[k] ?? [prim.text])
    follow(post, i, k, next.get(word) ?? next.get(singularOf(prim, word)), longest);
}

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

/** "coconut oil 76 250 g": the 76 is a melting point where an amount stands behind it, or no other figure at all. */
function amountFollows(prims: readonly Prim[], from: number): boolean {
  let at = from;
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
  if (text === '.' && prim?.glued && abbreviated.test(prims[j - 1]?.text ?? '')) return prims[j + 1]?.kind === 'word';
  return /^[-./:_]$/.test(text) && (prim?.glued ?? false) && (prims[j + 1]?.glued ?? false);
}

/** Different words of a post that are tried as slips of spelling, at the most: keeps a hostile post's cost bounded. */
const mostSlips = 1000;
const mostSpellings = 12;

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
): (readonly string[] | undefined)[] {
  const tried = new Set<string>();
  return words.map((word, k) => {
    const own = word?.beginsName ? null : unelided(prims[k]);
    if (own && lexicon.names.has(own)) return [own];
    if (!word?.strange || (tried.size >= mostSlips && !tried.has(word.text))) return undefined;
    tried.add(word.text);
    const near = speller.nearest(word.text);
    // "the theme is lemon": a word of its own
    return near.length > 0 && near.length <= mostSpellings && !lexicon.isEveryday(word.text) ? near : undefined;
  });
}

/** A word that names use only beside others ("caster" of "caster sugar"), read as the slip of another. */
function misspelt(post: Post, i: number, speller: Speller): NameHit | null {
  const word = post.words[i];
  // a strange word has been tried with the others
  if (!word || word.plain || word.strange || word.text.length < 5 || post.meant[i] !== undefined) return null;
  const near = speller.others(word.text);
  return near.length === 0 || near.length > mostSpellings ? null : nameAt(post, i, near);
}

/** `olv 600`, `50 g cast`: a short word beside an amount that is short for one name only. */
function shortened({ prims, words, ...post }: Post, i: number): NameHit | null {
  const word = words[i];
  if (!word || word.plain || word.beginsName || word.sort !== null || post.meant[i] !== undefined) return null;
  const before = prims[i - 1];
  const counted =
    before?.kind === 'number' || (before?.kind === 'word' && post.lexicon.units.next?.has(before.text) === true);
  if (!counted && !amountFollows(prims, i + 1) && prims[i + 1]?.kind !== 'word') return null;
  const whole = shortFor(word.text, post.lexicon);
  const hit = whole === null ? null : nameAt({ prims, words, ...post }, i, [whole]);
  if (!hit || !(counted || amountFollows(prims, hit.end))) return null;
  return { ...hit, entry: { ...hit.entry, how: 'abbreviation' } };
}

/** Cuts the post into quantities, names, set-aside figures, words and signs; each prim is in exactly one token. */
export function tokenize(
  prims: readonly Prim[],
  lexicon: Lexicon,
  speller: Speller,
): { tokens: Token[]; habit: DecimalHabit } {
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
  return { tokens, habit };
}

const roughly = /^(approx|appr|ca|circa|abt|est|avg|max|min|incl)$/;

function tokenAt(post: Post, i: number, speller: Speller, habit: DecimalHabit): Token {
  const { prims, words, lexicon } = post;
  const prim = prims[i];
  if (!prim || prim.kind === 'line')
    return { t: 'line', text: prim?.text === 'blank' ? 'blank' : 'line', sort: null, from: i, to: i + 1 };
  const word = words[i];
  const aside = !word || word.announces || prims[i + 1]?.glued ? asideTokenAt(prims, i, lexicon) : null;
  if (aside) return { t: 'aside', reason: aside.reason, numbers: aside.numbers, from: i, to: aside.end };
  // "approx. 95 g", "ca. 20": no sentence ends here
  if (prim.text === '.' && prim.glued && prims[i + 1]?.kind === 'number' && roughly.test(prims[i - 1]?.text ?? ''))
    return { t: 'word', text: 'about', sort: 'filler', from: i, to: i + 1 };
  if (prim.kind === 'sign') return { t: 'sign', text: prim.text, sort: null, from: i, to: i + 1 };
  const plain = nameAt(post, i);
  const named = plain ?? misspelt(post, i, speller) ?? shortened(post, i);
  const quantity = !word || word.beginsAmount ? quantityAt(prims, i, lexicon, habit) : null;
  if (named && (!quantity || (prim.kind === 'number' && named.end > i + 1 && !quantity.quantity.unit)))
    return nameToken(post, i, named, plain !== null || named.entry.how === 'abbreviation');
  if (quantity) return { t: 'quantity', quantity: quantity.quantity, from: i, to: quantity.end };
  if (!word) return { t: 'aside', reason: 'no amount that can be read', numbers: [i], from: i, to: i + 1 };
  return { t: 'word', text: prim.text, sort: sortOf(word, lexicon), from: i, to: i + 1 };
}

function nameToken({ prims, meant }: Post, i: number, { entry, end }: NameHit, plain: boolean): Token {
  let asTyped = plain;
  for (let k = i; k < end; k++) {
    const prim = prims[k];
    asTyped &&= (meant[k] === undefined || unelided(prim) !== null) && !(prim && digitsIn(prim).length > 0);
  }
  return {
    t: 'name',
    meaning: entry.meaning,
    text: rawText(prims, i, end),
    how: asTyped ? entry.how : 'spelling',
    meant: entry.phrase,
    from: i,
    to: end,
  };
}

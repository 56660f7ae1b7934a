import { singular } from '../catalogue/names.ts';
import { asideTokenAt } from './aside.ts';
import type { Entry, Lexicon, Meaning, Trie } from './lexicon.ts';
import { unitAt } from './measure.ts';
import { type DecimalHabit, decimalHabit, isNumberWord } from './numbers.ts';
import { type Quantity, quantityAt } from './quantities.ts';
import type { Prim } from './scan.ts';
import type { Speller } from './spelling.ts';
import { plainWords } from './words.ts';

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
  | { readonly t: 'word'; readonly text: string; readonly sort: 'filler' | 'joint' | 'everyday' | 'unknown' }
  | { readonly t: 'sign'; readonly text: string }
  | { readonly t: 'line'; readonly blank: boolean }
);

interface NameHit {
  readonly entry: Entry;
  readonly end: number;
}

/** Longest name from prim `i`; numbers in it (`76 degree`) only where no unit follows them. */
function nameAt(
  prims: readonly Prim[],
  i: number,
  words: readonly (readonly string[] | undefined)[],
  lexicon: Lexicon,
  first?: readonly string[],
): NameHit | null {
  const head = prims[i]?.text ?? '';
  if (!first && !words[i] && !lexicon.names.has(head) && !lexicon.names.has(singular(head))) return null;
  let best: NameHit | null = null;
  let rival: Entry | null = null;
  const take = (hit: NameHit): void => {
    if (!best || hit.end > best.end) {
      best = hit;
      rival = null;
    } else if (
      hit.end === best.end &&
      (hit.entry.meaning.kind !== best.entry.meaning.kind || hit.entry.meaning.id !== best.entry.meaning.id)
    )
      rival = hit.entry;
  };
  const walk = (node: Trie<Entry> | null, j: number): void => {
    const prim = prims[j];
    if (!prim || j - i >= 12 || prim.kind === 'line') return;
    if (prim.kind === 'sign') {
      if (j > i && bridges(prims, j) && node?.next) walk(node, j + 1);
      return;
    }
    for (const word of (j === i ? first : undefined) ?? words[j] ?? [prim.text]) {
      const get = (text: string): Trie<Entry> | undefined =>
        node === null ? lexicon.names.from(text) : node.next?.get(text);
      const next = get(word) ?? (prim.kind === 'word' ? get(singular(word)) : undefined);
      if (!next) continue;
      if (next.hit) {
        const degree = prim.kind === 'number' && prims[j + 1]?.text === '°';
        const counts =
          prim.kind === 'number' &&
          (unitAt(prims, j + 1, lexicon) !== null || prims[j + 1]?.text === '%' || prims[j + 1]?.text === '/') &&
          !degree;
        const spoken =
          prim.kind !== 'number' ||
          degree ||
          /\b(?:deg|degree|f|c|melt)\b/.test(next.hit.phrase) ||
          amountFollows(prims, j + 1) ||
          prims.every((other) => other === prim || other.kind !== 'number');
        if (!counts && spoken) take({ entry: next.hit, end: degree ? j + 2 : j + 1 });
      }
      walk(next, j + 1);
    }
  };
  walk(null, i);
  return rival === null || best === null
    ? best
    : { ...(best as NameHit), entry: either((best as NameHit).entry, rival) };
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

/** A hyphen, full stop or degree sign inside a name: "palm-kernel", "d.i. water", "76° coconut". */
function bridges(prims: readonly Prim[], j: number): boolean {
  const prim = prims[j];
  const text = prim?.text ?? '';
  if (text === '°') return true;
  return /^[-./:]$/.test(text) && (prim?.glued ?? false) && (prims[j + 1]?.glued ?? false);
}

/** Words of a post that are tried as slips of spelling, at the most: keeps a hostile post's cost bounded. */
const mostSlips = 300;

/** Each word of the post with what it may have been meant for; a known word stands for itself. */
function spellings(prims: readonly Prim[], lexicon: Lexicon, speller: Speller): (readonly string[] | undefined)[] {
  let tries = 0;
  return prims.map((prim) => {
    const word = prim.text;
    if (prim.kind !== 'word' || word.length < 4 || tries > mostSlips || lexicon.names.has(word) || isPlain(word))
      return undefined;
    const { known } = lexicon.vocabulary();
    if (known.has(word) || known.has(singular(word))) return undefined;
    tries++;
    const near = speller.nearest(word);
    return near.length > 0 && near.length <= mostSpellings ? near : undefined;
  });
}

const mostSpellings = 12;

const isPlain = (word: string): boolean => plainWords.has(word) || isNumberWord(word);

/** A word that names use only beside others ("caster" of "caster sugar"), read as the slip of another. */
function misspelt(
  prims: readonly Prim[],
  i: number,
  words: readonly (readonly string[] | undefined)[],
  lexicon: Lexicon,
  speller: Speller,
): NameHit | null {
  const prim = prims[i];
  if (prim?.kind !== 'word' || prim.text.length < 5 || isPlain(prim.text) || words[i] !== undefined) return null;
  const near = speller.others(prim.text);
  if (near.length === 0 || near.length > mostSpellings) return null;
  return nameAt(prims, i, words, lexicon, near);
}

function sortOf(word: string, lexicon: Lexicon): 'filler' | 'joint' | 'everyday' | 'unknown' {
  const plain = plainWords.get(word);
  if (plain === 'joint' || plain === 'filler') return plain;
  if (lexicon.units.next?.has(word)) return 'filler';
  if (plain || isNumberWord(word)) return 'everyday';
  return lexicon.vocabulary().roleWords.has(word) && !lexicon.names.has(word) ? 'everyday' : 'unknown';
}

/** Cuts the post into quantities, names, set-aside figures, words and signs; each prim is in exactly one token. */
export function tokenize(
  prims: readonly Prim[],
  lexicon: Lexicon,
  speller: Speller,
): { tokens: Token[]; habit: DecimalHabit } {
  const habit = decimalHabit(prims);
  const words = spellings(prims, lexicon, speller);
  const tokens: Token[] = [];
  let i = 0;
  while (i < prims.length) {
    const prim = prims[i];
    if (!prim) break;
    if (prim.kind === 'line') {
      tokens.push({ t: 'line', blank: prim.text === 'blank', from: i, to: i + 1 });
      i++;
      continue;
    }
    const aside = asideTokenAt(prims, i, lexicon);
    if (aside) {
      tokens.push({ t: 'aside', reason: aside.reason, numbers: aside.numbers, from: i, to: aside.end });
      i = aside.end;
      continue;
    }
    if (prim.kind === 'sign') {
      tokens.push({ t: 'sign', text: prim.text, from: i, to: i + 1 });
      i++;
      continue;
    }
    const plain = nameAt(prims, i, words, lexicon);
    const named = plain ?? misspelt(prims, i, words, lexicon, speller);
    const quantity = quantityAt(prims, i, lexicon, habit);
    if (named && (!quantity || (prim.kind === 'number' && named.end > i + 1 && !quantity.quantity.unit))) {
      const text = prims
        .slice(i, named.end)
        .map((one, k) => (k > 0 && !one.glued ? ' ' : '') + one.raw)
        .join('');
      const asTyped = plain !== null && prims.slice(i, named.end).every((_one, k) => words[i + k] === undefined);
      tokens.push({
        t: 'name',
        meaning: named.entry.meaning,
        text,
        how: asTyped ? named.entry.how : 'spelling',
        meant: named.entry.phrase,
        from: i,
        to: named.end,
      });
      i = named.end;
      continue;
    }
    if (quantity) {
      tokens.push({ t: 'quantity', quantity: quantity.quantity, from: i, to: quantity.end });
      i = quantity.end;
      continue;
    }
    if (prim.kind === 'number') {
      tokens.push({ t: 'aside', reason: 'no amount that can be read', numbers: [i], from: i, to: i + 1 });
    } else tokens.push({ t: 'word', text: prim.text, sort: sortOf(prim.text, lexicon), from: i, to: i + 1 });
    i++;
  }
  return { tokens, habit };
}

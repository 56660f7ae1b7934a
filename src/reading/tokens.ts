import { asideTokenAt } from './aside.ts';
import { type Entry, type Lexicon, type Meaning, singular, type Trie } from './lexicon.ts';
import { unitAt } from './measure.ts';
import { type DecimalHabit, decimalHabit, isNumberWord } from './numbers.ts';
import { type Quantity, quantityAt } from './quantities.ts';
import type { Prim } from './scan.ts';
import type { Speller } from './spelling.ts';
import { everyday, fillers, joints, pointers } from './words.ts';

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

/** Longest name from prim `i`; numbers in it (`76 degree`) only where no unit follows them. */
function nameAt(
  prims: readonly Prim[],
  i: number,
  words: readonly string[],
  lexicon: Lexicon,
): { entry: Entry; end: number } | null {
  let node: Trie<Entry> | undefined = lexicon.names;
  let best: { entry: Entry; end: number } | null = null;
  let j = i;
  while (node && j < prims.length && j - i < 12) {
    const prim = prims[j];
    if (!prim) break;
    if (prim.kind === 'sign') {
      // a hyphen, full stop or degree sign inside a name: "palm-kernel", "d.i. water", "76° coconut"
      if (
        j > i &&
        (prim.text === '-' || prim.text === '.' || prim.text === '°' || prim.text === '/' || prim.text === ':') &&
        (prim.glued || prim.text === '°')
      ) {
        if (prim.text === '-' && !prims[j + 1]?.glued) break;
        if ((prim.text === '/' || prim.text === ':') && !node.next) break;
        if ((prim.text === '.' || prim.text === '/' || prim.text === ':') && !prims[j + 1]?.glued) break;
        j++;
        continue;
      }
      break;
    }
    if (prim.kind === 'line') break;
    const word = words[j] ?? '';
    const next: Trie<Entry> | undefined =
      node.next?.get(word) ?? (prim.kind === 'word' ? node.next?.get(singular(word)) : undefined);
    if (!next) break;
    node = next;
    j++;
    if (node.hit) {
      const isNumber = prim.kind === 'number';
      if (isNumber && (unitAt(prims, j, lexicon) || prims[j]?.text === '%' || prims[j]?.text === '/')) continue;
      best = { entry: node.hit, end: j };
      // the degree sign or F of a melting point belongs to the name
      if (isNumber && prims[j]?.text === '°') best.end = j + 1;
    }
  }
  return best;
}

/** The words of the post, each unknown one replaced by the only word it can be a misspelling of. */
function corrected(prims: readonly Prim[], lexicon: Lexicon, known: ReadonlySet<string>, speller: Speller): string[] {
  let tries = 0;
  return prims.map((prim) => {
    if (prim.kind !== 'word' || prim.text.length < 4 || tries > 300) return prim.text;
    const word = prim.text;
    if (
      known.has(word) ||
      known.has(singular(word)) ||
      everyday.has(word) ||
      fillers.has(word) ||
      joints.has(word) ||
      isNumberWord(word)
    )
      return word;
    if (/^(naoh|koh)$/.test(word)) return word;
    tries++;
    const near = speller.nearest(word);
    const [only] = near;
    return near.length === 1 && only ? only : word;
  });
}

/** Cuts the post into quantities, names, set-aside figures, words and signs; each prim is in exactly one token. */
export function tokenize(
  prims: readonly Prim[],
  lexicon: Lexicon,
  known: ReadonlySet<string>,
  speller: Speller,
): { tokens: Token[]; habit: DecimalHabit } {
  const habit = decimalHabit(prims);
  const words = corrected(prims, lexicon, known, speller);
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
    const aside = asideTokenAt(prims, i, lexicon, habit);
    if (aside) {
      tokens.push({ t: 'aside', reason: aside.reason, numbers: aside.numbers, from: i, to: aside.end });
      i = aside.end;
      continue;
    }
    const named = prim.kind === 'sign' ? null : nameAt(prims, i, words, lexicon);
    const quantity = quantityAt(prims, i, lexicon, habit);
    if (named && (!quantity || (prim.kind === 'number' && named.end > i + 1 && !quantity.quantity.unit))) {
      const text = prims
        .slice(i, named.end)
        .map((one, k) => (k > 0 && !one.glued ? ' ' : '') + one.raw)
        .join('');
      const asTyped = prims.slice(i, named.end).every((one, k) => one.text === words[i + k]);
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
    } else if (prim.kind === 'word') {
      const word = words[i] ?? prim.text;
      const sort = joints.has(word)
        ? 'joint'
        : fillers.has(word) || pointers.has(word)
          ? 'filler'
          : everyday.has(word) || isNumberWord(word)
            ? 'everyday'
            : known.has(word) && !lexicon.names.next?.has(word)
              ? 'everyday'
              : 'unknown';
      tokens.push({ t: 'word', text: word, sort, from: i, to: i + 1 });
    } else tokens.push({ t: 'sign', text: prim.text, from: i, to: i + 1 });
    i++;
  }
  return { tokens, habit };
}

/** All single words that names and roles are made of. */
export function knownWords(lexicon: Lexicon): Set<string> {
  const known = new Set<string>();
  const walk = (node: Trie<Entry>): void => {
    for (const [word, child] of node.next ?? []) {
      known.add(word);
      walk(child);
    }
  };
  walk(lexicon.names);
  const walkUnits = (node: Trie<string>): void => {
    for (const [word, child] of node.next ?? []) {
      known.add(word);
      walkUnits(child);
    }
  };
  walkUnits(lexicon.units);
  return known;
}

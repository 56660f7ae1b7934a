/** Edits a misspelt word may be away from the word meant: none up to four letters but a swap, then one, then two. */
export function allowance(length: number): number {
  if (length < 4) return 0;
  return length < 8 ? 1 : 2;
}

/** A letter left out, added or swapped is a likelier slip than one replaced: decides between names equally far. */
const replaced = 1.01;
/** One that keeps all its letters is likelier still: "olvie". */
const swapped = 0.99;

/** Optimal string alignment distance (insert, delete, replace, swap of neighbours), given up beyond `most`. */
export function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last: number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row: number[] = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : replaced));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + swapped);
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most + 0.05) return most + 1;
    before = last;
    last = row;
  }
  return last[b.length] ?? most + 1;
}

function letters(word: string): number {
  let mask = 0;
  for (let i = 0; i < word.length; i++) mask |= 1 << (word.charCodeAt(i) & 31);
  return mask;
}

function bits(mask: number): number {
  let count = 0;
  for (let rest = mask; rest; rest &= rest - 1) count++;
  return count;
}

/** Letters that sound alike, as one: "costic" for "caustic". */
const sounds: readonly (readonly [RegExp, string])[] = [
  [/ph/g, 'f'],
  [/ck|c(?![eiyh])/g, 'k'],
  [/au|aw|ou|ow|oa/g, 'o'],
  [/ee|ea|ie|ei|ey|y/g, 'i'],
  [/h(?=[^aeiou]|$)/g, ''],
  [/(.)\1/g, '$1'],
  [/e$/g, ''],
];

const soundOf = (word: string): string => sounds.reduce((text, [from, to]) => text.replace(from, to), word);

/** Words this long may be found by their sound. */
const leastHeard = 5;

export interface Speller {
  /** The words of the vocabulary nearest to `word` within its allowance, all at the same least distance; else those that sound like it. */
  readonly nearest: (word: string) => readonly string[];
  /** The same, the word itself left out. */
  readonly others: (word: string) => readonly string[];
}

/** Words that are remembered of either kind, at the most. */
const mostKnown = 1000;

export function makeSpeller(vocabulary: () => readonly string[]): Speller {
  let known: readonly { readonly word: string; readonly mask: number }[] | null = null;
  let heard: Map<string, string[]> | null = null;
  const [near, others] = [new Map<string, readonly string[]>(), new Map<string, readonly string[]>()];
  const alike = (word: string): readonly string[] => {
    if (word.length < leastHeard) return [];
    heard ??= Map.groupBy(
      vocabulary().filter(({ length }) => length >= leastHeard),
      soundOf,
    );
    return heard.get(soundOf(word)) ?? [];
  };
  const search = (word: string, itself: boolean): readonly string[] => {
    const most = allowance(word.length);
    if (most === 0) return [];
    const mask = letters(word);
    let best: string[] = [];
    let least = Number.POSITIVE_INFINITY;
    known ??= vocabulary().map((one) => ({ word: one, mask: letters(one) }));
    for (const one of known) {
      if (Math.abs(one.word.length - word.length) > most || bits(mask ^ one.mask) > 2 * most) continue;
      const away = distance(word, one.word, most);
      if (away > most + 0.05 || (away === 0 && !itself)) continue;
      // a word of four letters may only lack a letter or have two of them swapped
      if (
        word.length === 4 &&
        one.word.length !== 5 &&
        (one.word.length !== 4 || [...word].sort().join('') !== [...one.word].sort().join(''))
      )
        continue;
      if (away > least + 0.001) continue;
      if (away < least - 0.001) {
        least = away;
        best = [];
      }
      best.push(one.word);
    }
    return best.length > 0 ? best : alike(word);
  };
  const remembered = (word: string, itself: boolean): readonly string[] => {
    const memory = itself ? near : others;
    let found = memory.get(word);
    if (!found) {
      found = search(word, itself);
      if (memory.size < mostKnown) memory.set(word, found);
    }
    return found;
  };
  return { nearest: (word) => remembered(word, true), others: (word) => remembered(word, false) };
}

/** Which of several known things a few words mean. */

import { singular, wordsInOrder } from '../../catalogue/names.ts';
import type { Catalogue, Named } from '../../catalogue/types.ts';
import type { Meaning } from './lexicon.ts';

type Kind = 'fat' | 'liquid' | 'acid' | 'additive' | 'scent' | 'alkali';

function shelves({
  fats,
  liquids,
  acids,
  additives,
  scents,
  alkalis,
}: Catalogue): readonly [Kind, ReadonlyMap<string, Named>][] {
  return [
    ['fat', fats],
    ['liquid', liquids],
    ['acid', acids],
    ['additive', additives],
    ['scent', scents],
    ['alkali', alkalis],
  ];
}

/** The item with this id, and what kind it is; null for an id of nothing. */
function found(id: string, catalogue: Catalogue): { readonly kind: Kind; readonly item: Named } | null {
  for (const [kind, shelf] of shelves(catalogue)) {
    const item = shelf.get(id);
    if (item) return { kind, item };
  }
  return null;
}

export function meaningOf(id: string, catalogue: Catalogue): Meaning | null {
  const one = found(id, catalogue);
  if (!one) return null;
  return one.kind === 'alkali' ? { kind: 'alkali', id: id as 'naoh' | 'koh' } : { kind: one.kind, id };
}

/** Words that say nothing about which one is meant. */
const idle = new Set(
  `a an the it its it's is was i im i'm mean means meant think guess sorry please pls kind type sort one ones of my this that
   yes yeah yep ok okay oh ah no nope not from label says just only use used using with same should be been actually plain to
   made called named it'd would in and please thanks thank you`.split(/\s+/),
);

const folded = (text: string): string[] =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f'’]/g, '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

const tellingWords = (text: string): string[] => folded(text).filter((word) => !idle.has(word));

const ordinals: readonly RegExp[] = [
  /^(the )?(first|1st|1|one|former|upper|top|lower|smaller)( one)?$/,
  /^(the )?(second|2nd|2|two|latter|other|higher|larger)( one)?$/,
  /^(the )?(third|3rd|3|three)( one)?$/,
  /^(the )?(fourth|4th|4|four)( one)?$/,
  /^(the )?(fifth|5th|5|five)( one)?$/,
  /^(the )?(sixth|6th|6|six)( one)?$/,
];

/** "the second", "2", "last": the place in a list of `count`, or null. */
export function placeOf(answer: string, count: number): number | null {
  const plain = folded(answer)
    .filter((word) => !/^(option|number|no|nr|choice|please|candidate|its)$/.test(word))
    .join(' ');
  if (/^(the )?last( one)?$/.test(plain)) return count - 1;
  const place = ordinals.findIndex((pattern) => pattern.test(plain));
  return place >= 0 && place < count ? place : null;
}

/** Every name of an item, as sets of words. */
const nameWords = ({ name, names }: Named): string[][] => [name, ...names].map((one) => folded(one));

/**
 * The one of `ids` that the answer means: by its place, by a name, or by words that only one is called by ("virgin",
 * "mutton"). Null where none or more than one fits. `beside`: a word of the question that the answer may go with.
 */
export function pick(answer: string, ids: readonly string[], catalogue: Catalogue, beside = ''): string | null {
  const place = placeOf(answer, ids.length);
  if (place !== null) return ids[place] ?? null;
  if (/\b(not|neither|none|both|or)\b/i.test(answer)) return null;
  const words = tellingWords(answer);
  if (words.length === 0)
    return ids.length === 1 && /^\W*(yes|yeah|yep|ok|okay|right|correct)\b/i.test(answer) ? (ids[0] ?? null) : null;
  const whole = wordsInOrder(words);
  const together = wordsInOrder([...words, ...tellingWords(beside)]);
  let fitting: string[] = [];
  let exact: string[] = [];
  for (const id of ids) {
    const item = found(id, catalogue)?.item;
    if (!item) continue;
    const names = nameWords(item);
    if (names.some((name) => [whole, together].includes(wordsInOrder(name)))) exact.push(id);
    if (names.some((name) => words.every((word) => name.includes(word) || name.includes(singular(word)))))
      fitting.push(id);
  }
  exact = [...new Set(exact)];
  fitting = [...new Set(fitting)];
  if (exact.length === 1) return exact[0] ?? null;
  return fitting.length === 1 ? (fitting[0] ?? null) : null;
}

/** Words that many names share and that make no family. */
const common = new Set(
  `oil butter fat wax acid acids seed nut kernel bean germ bran refined virgin high low mid oleic linoleic hydrogenated
   fractionated type commercial liquid solid medium chain sweet evening milk powder juice whole cream puree water fruit
   vegetable solution pure brewed plain other plant drink`.split(/\s+/),
);

/** The telling words of the name that answers use. */
const family = ({ name }: Named): readonly string[] =>
  folded(name)
    .filter((word) => word.length > 2 && !/\d/.test(word) && !common.has(word))
    .map(singular);

/** Ids of the same kind whose name shares a telling word with this one's: "palm" and "palm kernel". */
export function relatives(id: string, catalogue: Catalogue): readonly string[] {
  const own = found(id, catalogue);
  if (!own) return [];
  const mine = family(own.item);
  const shelf = shelves(catalogue).find(([kind]) => kind === own.kind)?.[1];
  return [...(shelf?.entries() ?? [])]
    .filter(([other, item]) => other !== id && family(item).some((word) => mine.includes(word)))
    .map(([other]) => other);
}

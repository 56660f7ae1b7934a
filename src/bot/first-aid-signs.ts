/**
 * The signs of a text by which an accident is weighed: in each stretch of it the words, what they mean (a letter each,
 * `first-aid-lines.ts`) and which meaning stands before which; and how much of a recipe the whole is.
 */
import { meaningOf } from './first-aid-words.ts';

export interface Signs {
  readonly stretches: readonly ReadonlySet<string>[];
  /** Of the whole text: they count in every stretch. */
  readonly whole: readonly string[];
}

/** A stretch, together with the next: "jug tipped onto my lap. it was lye". */
export const stretchWithNext = ({ stretches }: Signs, at: number): ReadonlySet<string> =>
  stretches[at]?.union(stretches[at + 1] ?? new Set()) ?? new Set();

/** Words of a stretch; what is dictated without an end is cut into such. */
const longest = 30;
/** How many words apart two meanings may stand. */
const reach = 5;
/** Meanings that count for the whole text, wherever they stand: what bites, what soap is made in, and pain. */
const farReaching = 'ASpnHJKD';
/** A body, or what happens to one: without a word of it there is nothing to weigh. */
const bodily = /[qglkZEPTYWCbHhuDdLBVKXRsJna]/;

const pained = /[\u{1f62d}\u{1f631}\u{1f616}\u{1f622}\u{1f625}\u{1f198}\u{1f691}\u{1f915}\u{1fa79}]/u;
const burning = /\u{1f525}/u;

/** Lower case without accents, quotes and invisible signs; plain text is spared the slow part. */
function plainOf(text: string): string {
  const lower = text.toLowerCase();
  const bare = /^[\0-\x7f]*$/.test(lower)
    ? lower
    : lower
        .replace(/œ/g, 'oe')
        .replace(/ß/g, 'ss')
        .replace(/\p{Extended_Pictographic}+/gu, (signs) =>
          pained.test(signs) ? ' ow ' : burning.test(signs) ? ' burning ' : ' ',
        )
        .normalize('NFKD')
        .replace(/[\p{M}\p{Cf}]/gu, '')
        .replace(/[’‘´]/g, "'");
  return /['`]/.test(bare)
    ? bare
        // "the skin's come off", "nan's hands"
        .replace(/(?<=[a-z]{3})['`]s\b/g, '')
        .replace(/\bn['`]/g, 'ne ')
        .replace(/\b(?:[cdjlmst]|qu)['`]/g, ' ')
        .replace(/['`]/g, '')
    : bare;
}

/** "burned", "burning", "burns": one sign. */
const stemOf = (word: string): string => (word.length > 5 ? word.replace(/(?:ing|ed|es|s|ly)$/, '') : word);

/** One letter a token: of a word's meaning, `x` for any other, `0` for a figure, `,` and `.` for what parts them. */
function letterOf(token: string): string {
  const first = token.charCodeAt(0);
  if (first > 57 && first !== 59 && first !== 63 && first !== 124) return meaningOf(token);
  if (token === ',') return ',';
  return first > 47 && first < 58 ? '0' : '.';
}

/** "No wait, scratch that, 100 grams", "salt to taste", "I can't read his hand": nobody is hurt. */
const ofNobody =
  /\bscratch that\b|\bsalt to taste\b|\b(?:(?:i|nobody|cant|cannot|couldnt|could|can|never|to) ){0,4}(?:read|make out) (?:his|her|my|their|your|the|this|that)(?: \w+)? hand\b/g;

/** Signs of a text; null where it speaks of no body. */
export function signsOf(text: string): Signs | null {
  const tokens =
    plainOf(text)
      .replace(ofNobody, ' ')
      .match(/[a-z0-9\u0080-\uffff]+|[.!?;\n|,]/g) ?? [];
  const letters = tokens.map(letterOf).join('');
  return bodily.test(letters) ? { stretches: stretchesOf(tokens, letters), whole: wholeOf(letters) } : null;
}

function stretchesOf(tokens: readonly string[], letters: string): readonly Set<string>[] {
  const stretches: Set<string>[] = [];
  let from = 0;
  const end = (to: number): void => {
    if (to > from) stretches.push(stretchOf(tokens, letters, from, to));
    from = to;
  };
  for (let at = 0; at < letters.length; at++) {
    if (letters[at] === '.') {
      end(at);
      from = at + 1;
    } else if (at + 1 - from === longest) end(at + 1);
  }
  end(letters.length);
  return stretches;
}

function stretchOf(tokens: readonly string[], letters: string, from: number, to: number): Set<string> {
  const signs = new Set<string>();
  let figures = 0;
  for (let at = from; at < to; at++) {
    const letter = letters.charAt(at);
    if (letter === '0') figures += 1;
    if (letter === '0' || letter === ',') continue;
    signs.add(` ${stemOf(tokens[at] ?? '')}`);
    if (letter === 'x') continue;
    signs.add(letter);
    for (let before = at - 1; before >= Math.max(from, at - reach) && letters[before] !== ','; before--) {
      const other = letters.charAt(before);
      if (other !== 'x' && other !== '0') signs.add(other + letter);
    }
  }
  if (to - from < 8) signs.add('short');
  if (figures > 1) signs.add('figures');
  return signs;
}

function wholeOf(letters: string): readonly string[] {
  const figures = letters.split('0').length - 1;
  const sentences = letters.split(/\.+/).length;
  return [
    'any',
    ...[...farReaching].filter((letter) => letters.includes(letter)).map((letter) => `whole ${letter}`),
    ...(figures > 2 ? ['recipe'] : []),
    ...(figures > 6 ? ['whole recipe'] : []),
    ...(sentences > 4 ? ['long'] : []),
    ...(sentences > 12 ? ['longer'] : []),
  ];
}

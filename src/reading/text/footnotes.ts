/**
 * "Lard (1) | 437.5", where a line below begins "(1) on the day …": the mark of a note is no amount.
 */
import type { Aside } from './book-columns.ts';

/** A line that is a note: "(1) from the butcher", "[2] refined", "1) old stock". */
const note = /^[ \t>*_-]*(?:[([]\^?(\d)[)\]]:?[ \t]+(?=[\p{L}\d])|(\d)\)[ \t]+(?=\p{L}))/u;
/** Behind a name or a figure in a row, and not beside its weight. */
const mark =
  /(?<=[\p{L}\d)][*_]{0,2}) ?[([]\^?(\d)[)\]](?=[ \t*_]*(?:[|:;=,\t–—-]|$|\d+(?:[.,]\d+)? ?(?:g|kg|oz|lbs?|ml|l|grams?)?\b))/gu;
const mostNotes = 9;

/** The post with its rows without such marks. */
export function withoutFootnotes(post: string): { readonly text: string; readonly told: readonly Aside[] } {
  const none = { text: post, told: [] };
  if (!/[([]\^?\d[)\]]/.test(post)) return none;
  const lines = post.split('\n');
  const notes = new Map<string, number>();
  for (const [k, line] of lines.entries()) {
    const found = note.exec(line);
    const number = found?.[1] ?? found?.[2];
    if (number === undefined) continue;
    // two notes of one number are the steps of something
    if (notes.has(number) || notes.size >= mostNotes) return none;
    notes.set(number, k);
  }
  if (notes.size === 0) return none;
  const told: Aside[] = [];
  const text = lines.map((line, k) =>
    note.test(line)
      ? line
      : line.replace(mark, (said: string, number: string) => {
          const isBelow = (notes.get(number) ?? -1) > k;
          // it has a figure of its own beside the mark
          if (!isBelow || !/\d/.test(line.replace(said, ''))) return said;
          told.push({ text: said.trim(), why: 'the mark of a note' });
          return '';
        }),
  );
  if (told.length === 0) return none;
  for (const [number, k] of notes) {
    const line = text[k] ?? '';
    if (!told.some((one) => one.text.includes(number))) continue;
    told.push({ text: note.exec(line)?.[0].trim() ?? '', why: 'the mark of a note' });
    text[k] = line.replace(note, '');
  }
  return { text: text.join('\n'), told };
}

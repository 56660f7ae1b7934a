/** Texts by which something is looked up, and the order that they stand in. */

/** The longest key of a document, characters. */
export const longestKey = 200;
export const longestReminderId = 64;

/** No database keeps a NUL or half a character; what cannot be kept exactly must not be taken for something else. */
export const canBeKept = (text: string): boolean => !text.includes('\0') && text.isWellFormed();

export function checkText(text: string, what: string, longest = 2000): string {
  if (text === '' || text.length > longest)
    throw new RangeError(`${what} has ${text.length} of 1 to ${longest} characters`);
  if (!canBeKept(text)) throw new RangeError(`${what} holds a character that cannot be kept`);
  return text;
}

/** The first text, by code points, behind all that begin with this one; null where none is. */
export function behindPrefix(prefix: string): string | null {
  const points = Array.from(prefix, (character) => character.codePointAt(0) ?? 0);
  for (let last = points.pop(); last !== undefined; last = points.pop()) {
    // Surrogates are no characters: behind U+D7FF comes U+E000.
    const next = last === 0xd7ff ? 0xe000 : last + 1;
    if (next <= 0x10ffff) return String.fromCodePoint(...points, next);
  }
  return null;
}

/** A key that differs: "my soap 2". Never longer than a key may be. */
export function withNumber(text: string, number: number, before: string): string {
  const ending = `${before}${number}`;
  let cut = text.slice(0, longestKey - ending.length);
  if (!cut.isWellFormed()) cut = cut.slice(0, -1);
  return cut + ending;
}

/** Codes that a person types on another platform. */
import { randomInt } from 'node:crypto';

/** Crockford's alphabet (base 32): no letter that looks like a digit, none that makes a word by chance. */
const letters = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** How long a code lets somebody in, milliseconds: time enough to open the other chat. */
export const codeLife = 15 * 60_000;

/** 40 bits: with a code alive for minutes only, nobody guesses one. */
export const newCode = (): string => Array.from({ length: 8 }, () => letters[randomInt(letters.length)]).join('');

/** As people read it: in two parts. */
export const shown = (code: string): string => `${code.slice(0, 4)}-${code.slice(4)}`;

/** As it was made, whatever of it was typed: "abcd efgh", O for 0, l for 1. */
export const typed = (code: string): string =>
  code
    .toUpperCase()
    .replace(/[^0-9A-Z]/g, '')
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1');

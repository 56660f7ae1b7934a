/** Names of recipes: as a person wrote them, and as they are looked up. */
import { clipped } from '../phrases.ts';

/** A name longer than this is asked for anew (UTF-16 units; the store takes keys of up to 200). */
export const longestName = 100;

const quotes = /^["'“”„‟«»‘’‚`]+|["'“”„‟«»‘’‚`]+$/g;

/** Without what cannot be seen: controls, and marks that turn the order of writing. Joined emoji stay joined. */
const unseen = (): RegExp => /[\p{Cc}\u061c\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]+/gu;

/** The name in what somebody wrote; "" where nothing is left of it. */
export const nameIn = (said: string): string =>
  said
    .toWellFormed()
    .replace(unseen(), ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^[:,;]+|[:,;]+$/g, '')
    .replace(quotes, '')
    .trim();

/** Under which a recipe is kept: "Lavender  20" and "lavender 20" are one. */
export const keyOf = (name: string): string => name.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim();

export const quoted = (name: string): string => `"${clipped(name)}"`;

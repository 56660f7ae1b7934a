/** Names and turns of phrase that several answers share. */
import type { AlkaliId, Catalogue } from '../catalogue/types.ts';
import type { AlkaliAmount } from '../engine/recipe.ts';

/** Alkali is always named whole. */
export const alkaliName: Readonly<Record<AlkaliId, string>> = {
  naoh: 'sodium hydroxide (NaOH)',
  koh: 'potassium hydroxide (KOH)',
};

const isCapital = (code: number): boolean => code >= 65 && code <= 90;
const isSmall = (code: number): boolean => code >= 97 && code <= 122;

/** "Olive oil, virgin" inside a sentence: "olive oil (virgin)"; "Maize (corn) oil": "maize (corn) oil". */
export function inSentence(name: string): string {
  const isWord = isCapital(name.charCodeAt(0)) && isSmall(name.charCodeAt(1));
  const small = isWord ? name.charAt(0).toLowerCase() + name.slice(1) : name;
  const isPlain = !small.includes(')');
  const comma = isPlain ? small.indexOf(', ') : small.search(/, (?![^(]*\))/);
  if (comma < 0) return small;
  const head = small.slice(0, comma);
  const behind = small.slice(comma + 2);
  const rest = isPlain ? behind : behind.replace(/ ?\((.*)\)/, ', $1');
  if (rest === '') return small;
  const inner = isPlain ? null : /^(.*) \((.*)\)$/.exec(head);
  return inner ? `${inner[1]} (${inner[2]}, ${rest})` : `${head} (${rest})`;
}

/** What a figure is of, as the reader names it: alkali whole, everything else as in a sentence. */
export const ofName = (of: string): string =>
  of === 'Sodium hydroxide' ? alkaliName.naoh : of === 'Potassium hydroxide' ? alkaliName.koh : inSentence(of);

/** The everyday name of anything in the catalogue, for the middle of a sentence. */
export function nameOf(id: string, catalogue: Catalogue): string {
  const found =
    catalogue.fats.get(id) ??
    catalogue.liquids.get(id) ??
    catalogue.acids.get(id) ??
    catalogue.additives.get(id) ??
    catalogue.scents.get(id) ??
    catalogue.alkalis.get(id as AlkaliId);
  return found ? inSentence(found.name) : id.replaceAll('-', ' ');
}

/** "a, b and c". */
export function listed(parts: readonly string[], joint = 'and'): string {
  return parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} ${joint} ${parts.at(-1)}`;
}

/** "70 g sodium hydroxide (NaOH) and 30 g potassium hydroxide (KOH)". */
export const alkaliAmounts = (alkali: readonly AlkaliAmount[], print: (grams: number) => string): string =>
  listed(alkali.filter(({ grams }) => grams > 0).map(({ id, grams }) => `${print(grams)} ${alkaliName[id]}`));

/** What somebody wrote, short enough to be repeated. */
export const clipped = (said: string): string => (said.length > 60 ? `${said.slice(0, 57)}…` : said);

/** The first letter of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A chance (0–1) in words that people gauge better than small decimals. */
export function chance(p: number): string {
  if (p < 0.001) return 'very unlikely';
  if (p < 0.025) return `unlikely (about 1 in ${Math.round(1 / p / 10) * 10 || 10})`;
  if (p < 0.3) return `possible (about 1 in ${Math.round(1 / p)})`;
  if (p <= 0.7) return `about as likely as not`;
  if (p <= 0.95) return `likely (about ${Math.round(p * 10)} in 10)`;
  return 'almost certain';
}

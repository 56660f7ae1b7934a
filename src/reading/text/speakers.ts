/**
 * "Jo: what superfat" and "Bea — 6": who says each line of a chat, taken off before it is read, so that nobody is taken for
 * jojoba. A label that names something is none: "Olive: 500 g", "Lye: 70 g".
 */

import type { Lexicon } from '../words/lexicon.ts';
import { fold } from './clean.ts';
import { pattern } from './pattern.ts';

const labelled = pattern(
  () => /^[ \t]*(\p{L}[\p{L}.'’]{0,14})(?: \d{1,2}[:.]\d\d(?: ?[ap]m)?)?(?: ?:| -)[ \t]+(?=\S)/u,
);

/** Lines that somebody says, of all lines, at the least. */
const leastShare = 0.6;
const leastLines = 3;
const mostPeople = 6;

/** The text without those who speak, each of whose lines begins as a row; the very same where nobody does. */
export function withoutSpeakers(text: string, lexicon: Lexicon): string {
  if (!text.includes('\n')) return text;
  const lines = text.split('\n');
  const said = lines.map((line) => labelled().exec(line)?.[1]?.toLowerCase() ?? null);
  const people = [...new Set(said.filter((name) => name !== null))];
  const spoken = said.filter((name) => name !== null).length;
  const full = lines.filter((line) => line.trim() !== '').length;
  if (spoken < leastLines || spoken < leastShare * full || people.length < 2 || people.length > mostPeople) return text;
  if (!comesBack(said) || people.some((name) => saysSomething(name, lexicon))) return text;
  return lines.map((line, k) => (said[k] === null ? line : line.replace(labelled(), '• '))).join('\n');
}

/** One speaks again after another. */
function comesBack(said: readonly (string | null)[]): boolean {
  const spoke = new Set<string>();
  let last: string | null = null;
  for (const name of said) {
    if (name === null || name === last) continue;
    if (spoke.has(name)) return true;
    spoke.add(name);
    last = name;
  }
  return false;
}

/** "Lye:", "Mine:", "Step:", "Monday:". */
function saysSomething(name: string, { names, isEveryday }: Lexicon): boolean {
  if (name === 'me') return false;
  const entry = names.from(fold(name))?.hit;
  return (entry != null && entry.how !== 'abbreviation') || isEveryday(name) || /day$/.test(name);
}

/** What was taken without being said, one line each; mere plain names share a line. */
import type { Assumption, RecipeReading } from '../reading/reading.ts';
import { inSentence, listed } from './phrases.ts';

/** Whether "lye" was taken for sodium hydroxide, in a line of its own. */
export const saysLye = ({ id, text }: Pick<Assumption, 'id' | 'text'>): boolean =>
  id === 'lye' && text.endsWith('(NaOH).');

/**
 * Lines that each say one thing taken, as one line: "I took "olive" as olive oil (virgin); 5 % as the superfat …".
 * What says more than that (a figure reckoned from it, what another value would do) keeps its own line, below.
 */
export function inOneLine(lines: readonly string[]): string[] {
  const isPlain = (line: string): boolean => line.length <= 120 && /^I took (?!your |this )[^:;]*[^.]\.$/.test(line);
  const plain = lines.filter((line) => isPlain(line) && !line.includes('. '));
  if (plain.length < 2) return [...lines];
  const parts = plain.map((line) => line.slice('I took '.length, -1));
  return [`I took ${parts.join('; ')}.`, ...lines.filter((line) => !plain.includes(line))];
}

/** "coconut 225" by itself; of several the names alone, as what was read has their figures. */
const figuresOf = (said: readonly string[]): string =>
  said.length === 1 ? `"${said[0]}"` : listed([...new Set(said.map((one) => one.replace(/ \S*\d\S*$/, '')))]);

/** `pure`: the sodium hydroxide was taken as pure, which the line about "lye" can say too. */
export function assumptionsOf(reading: RecipeReading, pure: boolean): string[] {
  const plain: string[] = [];
  const left: string[] = [];
  const units = new Map<string, string[]>();
  const rest: string[] = [];
  for (const { id, text, said, as } of reading.assumptions) {
    if (said !== undefined && as !== undefined && (id === 'plain-name' || id === 'abbreviation')) {
      const meant = inSentence(as);
      if (meant !== said.toLowerCase()) plain.push(`"${said}" as ${meant}`);
    } else if (said !== undefined && as !== undefined && id === 'unit') units.set(as, [...(units.get(as) ?? []), said]);
    else if (said !== undefined && as !== undefined && id === 'spelling')
      rest.push(`I took "${said}" as ${inSentence(as)}.`);
    else if (said !== undefined && id === 'left-out') left.push(`"${said}"`);
    else rest.push(pure && saysLye({ id, text }) ? text.replace(/\.$/, ', pure.') : text);
  }
  return [
    ...rest,
    ...(plain.length > 0 ? [`I took ${listed(plain)}.`] : []),
    ...[...units].map(([unit, said]) => `I took ${figuresOf(said)} in ${unit}, as the rest.`),
    ...(left.length > 0
      ? [`I took ${listed(left)} as no amount of anything, and left ${left.length > 1 ? 'them' : 'it'} out.`]
      : []),
  ];
}

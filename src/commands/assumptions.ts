/** What was taken without being said, one line each; mere plain names share a line. */
import type { Assumption, RecipeReading } from '../reading/reading.ts';
import { inSentence, listed } from './phrases.ts';

/** The reader's own words: `I took "olive" as Olive oil, virgin.` */
const named = /^I took "(.+)" as (.+)\.$/s;
const inUnit = /^I took "(.+)" in (\S+), the unit of the rest\.$/s;

/** Whether "lye" was taken for sodium hydroxide, in a line of its own. */
export const saysLye = ({ id, text }: Pick<Assumption, 'id' | 'text'>): boolean =>
  id === 'lye' && text.endsWith('(NaOH).');

/** `pure`: the sodium hydroxide was taken as pure, which the line about "lye" can say too. */
export function assumptionsOf(reading: RecipeReading, pure: boolean): string[] {
  const plain: string[] = [];
  const units = new Map<string, string[]>();
  const rest: string[] = [];
  for (const { id, text } of reading.assumptions) {
    const name = named.exec(text);
    const unit = inUnit.exec(text);
    if (name?.[1] && name[2] && (id === 'plain-name' || id === 'abbreviation')) {
      const meant = inSentence(name[2]);
      if (meant !== name[1].toLowerCase()) plain.push(`"${name[1]}" as ${meant}`);
    } else if (unit?.[1] && unit[2]) units.set(unit[2], [...(units.get(unit[2]) ?? []), `"${unit[1]}"`]);
    else if (name?.[1] && name[2] && id === 'spelling') rest.push(`I took "${name[1]}" as ${inSentence(name[2])}.`);
    else rest.push(pure && saysLye({ id, text }) ? text.replace(/\.$/, ', pure.') : text);
  }
  return [
    ...rest,
    ...(plain.length > 0 ? [`I took ${listed(plain)}.`] : []),
    ...[...units].map(([unit, said]) => `I took ${listed(said)} in ${unit}, the unit of the rest.`),
  ];
}

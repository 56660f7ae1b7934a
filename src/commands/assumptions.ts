/** What was taken without being said, one line each; mere plain names share a line. */
import type { RecipeReading } from '../reading/reading.ts';
import { inSentence, listed } from './phrases.ts';

/** The reader's own words: `I took "olive" as Olive oil, virgin.` */
const named = /^I took "(.+)" as (.+)\.$/s;
const inUnit = /^I took "(.+)" in (\S+), the unit of the rest\.$/s;

export function assumptionsOf(reading: RecipeReading): string[] {
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
    else rest.push(text);
  }
  return [
    ...rest,
    ...(plain.length > 0 ? [`I took ${listed(plain)}.`] : []),
    ...[...units].map(([unit, said]) => `I took ${listed(said)} in ${unit}, the unit of the rest.`),
  ];
}

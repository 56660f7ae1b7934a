/**
 * Cautions and first aid from `data/cautions.json`, taken in with the code: they must be there even where the
 * catalogue cannot be read.
 */
import table from '../../data/cautions.json' with { type: 'json' };
import type { NonEmpty } from '../answer/types.ts';

const byId = new Map(table.cautions.map((one) => [one.id, one]));

/** The short and the long text of a caution; a wrong id is a bug. */
export function caution(id: string): { readonly short: string; readonly long: string; readonly source: string } {
  const found = byId.get(id);
  if (!found) throw new Error(`no caution "${id}"`);
  return found;
}

const short = (id: string): string => caution(id).short;

/** The way to first aid, last of every caution about something caustic. */
export const wayToAid = 'Splashed or hurt? Water first, then say "safety".';

/** Before dry lye meets water. */
export const beforeMixing: NonEmpty<string> = [`${short('gear')} ${short('lye-into-water')}`, wayToAid];

/** A recipe that would leave free alkali in the bar. */
export const excessCaution: NonEmpty<string> = [short('lye-heavy'), wayToAid];

/** A batch that may or may not hold free alkali. */
export const thinCaution: NonEmpty<string> = [`${short('gear')} ${short('raw-soap')}`, wayToAid];

/** Beside a question or a refusal that is about something caustic. */
export const untilClear: NonEmpty<string> = [`Mix nothing until this is clear. ${wayToAid}`];

const ours: readonly string[] = [
  ...new Set([...beforeMixing, ...excessCaution, ...thinCaution, ...untilClear, wayToAid]),
];

/** A text without our own cautions and offers: who pastes an answer of ours back tells of no accident. */
export const withoutOurs = (text: string): string =>
  ours.reduce((rest, said) => rest.replaceAll(said, ' '), text.includes('→') ? text.replace(/^→ .*$/gm, ' ') : text);

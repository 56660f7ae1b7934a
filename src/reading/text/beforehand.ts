/** What is done to a post before it is cut into words: its notation made plain, other versions left out. */

import { shortened } from '../doubt/talk.ts';
import type { Assumption, RecipeReading } from '../reading.ts';
import { fatesOf } from './aside-fates.ts';
import { type Aside, withoutBooks } from './book-columns.ts';
import { withoutLeaders } from './leaders.ts';
import { plainly } from './notation.ts';
import { withoutPacks } from './pack-lines.ts';
import { saidOfEarlier, withoutEarlier } from './versions.ts';

interface Beforehand {
  readonly text: string;
  readonly aside: readonly Aside[];
  readonly versions: readonly string[];
  /** Rows of a table are of several batches. */
  readonly mixed: boolean;
}

export function beforehand(input: string): Beforehand {
  const sheet = withoutBooks(withoutLeaders(input));
  const packs = withoutPacks(sheet.text);
  const plain = plainly(packs.text);
  const { text, told } = withoutEarlier(plain.text);
  return { text, aside: [...sheet.told, ...packs.told, ...plain.told], versions: told, mixed: sheet.mixed };
}

/** The reading, and what was left out before it. */
export function told(reading: RecipeReading, { aside, versions, mixed }: Beforehand): RecipeReading {
  if (mixed && reading.doubts.length === 0) return { ...reading, doubts: [{ id: 'two-recipes', parts: 0 }] };
  if (aside.length + versions.length === 0) return reading;
  const texts = aside.map(({ text, why }) => `I left out "${shortened(text)}": ${why}.`);
  if (versions.length > 0) texts.push(saidOfEarlier(versions));
  return {
    ...reading,
    assumptions: [...reading.assumptions, ...texts.map((text): Assumption => ({ id: 'left-out', text }))],
    fates: [
      ...reading.fates,
      ...aside.flatMap(({ text, why }) => fatesOf(text, why)),
      ...versions.flatMap((one) => fatesOf(one, 'of another version')),
    ],
  };
}

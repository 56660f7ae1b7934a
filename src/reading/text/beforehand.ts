/** What is done to a post before it is cut into words: its notation made plain, other versions left out. */

import { shortened } from '../doubt/talk.ts';
import type { Assumption, RecipeReading } from '../reading.ts';
import { withAnswersTaken } from './answers-taken.ts';
import { fatesOf } from './aside-fates.ts';
import { type Aside, withoutBooks } from './book-columns.ts';
import { withRowsNamed } from './by-number.ts';
import { withoutFootnotes } from './footnotes.ts';
import { withoutLeaders } from './leaders.ts';
import { plainly } from './notation.ts';
import { withoutPacks } from './pack-lines.ts';
import { withoutPlanned } from './planned-and-done.ts';
import { withoutReplies } from './replies.ts';
import { withoutScrapped } from './scrapped.ts';
import { withoutStock } from './taken-of-stock.ts';
import { saidOfEarlier, withoutEarlier } from './versions.ts';

interface Beforehand {
  readonly text: string;
  readonly aside: readonly Aside[];
  readonly versions: readonly string[];
  /** Rows that are called by their numbers, and their names. */
  readonly rows: readonly (readonly [string, string])[];
  /** Rows of a table are of several batches. */
  readonly mixed: boolean;
}

export function beforehand(input: string): Beforehand {
  const replies = withoutReplies(input);
  const notes = withoutFootnotes(replies.text);
  const stock = withoutStock(notes.text);
  const pairs = withoutPlanned(stock.text);
  const sheet = withoutBooks(withoutLeaders(pairs.text));
  const answers = withAnswersTaken(sheet.text);
  const scrapped = withoutScrapped(answers.text);
  const packs = withoutPacks(scrapped.text);
  const plain = plainly(packs.text);
  const named = withRowsNamed(plain.text);
  const { text, told } = withoutEarlier(named.text);
  const aside = [
    ...replies.told,
    ...notes.told,
    ...stock.told,
    ...pairs.told,
    ...sheet.told,
    ...answers.told,
    ...scrapped.told,
    ...packs.told,
    ...plain.told,
  ];
  return { text, aside, versions: told, rows: named.rows, mixed: sheet.mixed };
}

/** The reading, and what was left out before it. */
export function told(reading: RecipeReading, { aside, versions, rows, mixed }: Beforehand): RecipeReading {
  if (mixed && reading.doubts.length === 0) return { ...reading, doubts: [{ id: 'two-recipes', parts: 0 }] };
  if (aside.length + versions.length + rows.length === 0) return reading;
  const texts = aside.map(({ text, why }) => `I left out "${shortened(text)}": ${why}.`);
  if (versions.length > 0) texts.push(saidOfEarlier(versions));
  const numbers = rows.map(([said, name]): Assumption => ({ id: 'number', text: `I took "${said}" as ${name}.` }));
  return {
    ...reading,
    assumptions: [...reading.assumptions, ...texts.map((text): Assumption => ({ id: 'left-out', text })), ...numbers],
    fates: [
      ...reading.fates,
      ...aside.flatMap(({ text, why }) => fatesOf(text, why)),
      ...versions.flatMap((one) => fatesOf(one, 'of another version')),
      ...rows.flatMap(([said]) => fatesOf(said, 'the number of a row')),
    ],
  };
}

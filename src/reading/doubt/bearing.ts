/**
 * Whether what is written beside a list bears on it: something more went into the pot or something less, a figure is
 * put right, the alkali is not pure. What was learned from some thousand notes with the verdict of their writers
 * (`tests/posts/notes`) weighs the signs of each sentence for it and against it (logistic regression).
 */
import type { Cut } from '../text/sentences.ts';
import { learned } from '../words/learned.ts';
import { weights } from './bearing-weights.ts';
import { signsOf, type Weights } from './note-signs.ts';

const weightOf = learned(weights);

/** In tenths of a logit: of ten notes that bear eight are above, and one in six of the others (`bearing.test.ts`). */
const perhaps = -5;

/** Whether a sentence bears, by what each of its signs weighs. */
export function isBearing(
  signs: ReadonlySet<string>,
  weigh: (sign: string) => number | undefined,
  least = perhaps,
): boolean {
  let sum = 0;
  for (const sign of signs) sum += weigh(sign) ?? 0;
  return sum > least;
}

/** What the alkali may be dissolved in. */
const wet = ['W', 'L', 'I'];

/** Whether a note may bear on the list; it does where it tells of a liquid that the list has none of. */
export const perhapsBears = (note: Cut, list: Weights, isDry: boolean): boolean =>
  signsOf(note, list).some((signs) => isBearing(signs, weightOf) || (isDry && wet.some((letter) => signs.has(letter))));

/** Of ten notes that bear nearly four are above, and one in fifty of the others. */
const surely = 20;

/** Whether a sentence surely bears on the list. */
export const surelyBears = (note: Cut, list: Weights): boolean =>
  signsOf(note, list).some((signs) => isBearing(signs, weightOf, surely));

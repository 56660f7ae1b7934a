/**
 * Whether a text tells of an accident with lye, raw soap or what else a soap maker handles: in an eye, on the skin,
 * swallowed, breathed in. What was learned from some thousand texts with their verdicts (`tests/bot/accidents`) weighs
 * the signs of each stretch of the text for it and against it (logistic regression); the stretch that tells most
 * counts. In doubt first aid: it costs a moment. Time is linear in the length of the text.
 */
import type { Harm } from '../commands/safety.ts';
import { learned } from '../reading/words/learned.ts';
import { type Signs, signsOf, stretchWithNext } from './first-aid-signs.ts';
import { weights } from './first-aid-weights.ts';

type Told = Harm | 'any';

/** What a sign weighs, in tenths of a logit. */
export const weightOf = learned(weights);

/** The stretch that tells most of an accident, where one tells of it, by what each sign weighs. */
export function tellingStretch(signs: Signs, weigh: (sign: string) => number | undefined): ReadonlySet<string> | null {
  const sumOf = (all: Iterable<string>): number => {
    let sum = 0;
    for (const sign of all) sum += weigh(sign) ?? 0;
    return sum;
  };
  const whole = sumOf(signs.whole);
  let most = 0;
  let telling: ReadonlySet<string> | null = null;
  for (let at = 0; at < signs.stretches.length; at++) {
    const both = stretchWithNext(signs, at);
    const sum = whole + sumOf(both);
    if (sum > most) [most, telling] = [sum, both];
  }
  return telling;
}

/** What a text tells of; `any` where it does not say how somebody was hurt; null where it tells of no accident. */
export function accidentIn(text: string): Told | null {
  const signs = signsOf(text);
  const telling = signs && tellingStretch(signs, weightOf);
  return telling && harmOf(telling);
}

const mouth = [' mouth', ' tongue', ' mund', ' zunge', ' bouche', ' langue', ' boca', ' lengua'];

/** How somebody was hurt, by what the telling stretch speaks of; the more urgent first. */
function harmOf(signs: ReadonlySet<string>): Told {
  const has = (letters: string): boolean => [...letters].some((letter) => signs.has(letter));
  if (has('D') || (has('L') && has('CAS')) || mouth.some((word) => signs.has(word))) return 'swallowed';
  // "i cant see"
  if (has('E') || (signs.has(' cant') && signs.has(' see'))) return 'eyes';
  if (has('BVKTZ')) return 'inhaled';
  return has('PYWuHhRJ') ? 'skin' : 'any';
}

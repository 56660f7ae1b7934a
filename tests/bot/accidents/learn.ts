/** What each sign of a text weighs for an accident. Run as a program it writes `src/bot/first-aid-weights.ts`. */
import { signsOf, stretchWithNext } from '../../../src/bot/first-aid-signs.ts';
import { type Lesson, learn as regression } from '../../learning/regression.ts';
import { keepWeights } from '../../learning/weights-file.ts';
import { accidentTexts, postTexts, type Told } from './texts.ts';

/** A missed accident costs as much as three texts that get first aid needlessly. */
const costOfMiss = 3;
const learning = { orders: 5, rounds: 12, firstStep: 0.3, fewest: 3, shrink: 0 };

/** The weight of each sign, by these texts. */
export const learn = (texts: readonly Told[]): ReadonlyMap<string, number> => regression(lessonsOf(texts), learning);

const lessonsOf = (texts: readonly Told[]): readonly Lesson[] =>
  texts.flatMap(({ text, accident }) => {
    const signs = signsOf(text);
    if (!signs) return [];
    const stretches = signs.stretches.map((_, at) => new Set([...signs.whole, ...stretchWithNext(signs, at)]));
    return [{ holds: accident, counts: accident ? costOfMiss : 1, stretches }];
  });

if (import.meta.main)
  keepWeights(
    new URL('../../../src/bot/first-aid-weights.ts', import.meta.url),
    'What each sign weighs for an accident and against it, in tenths of a logit: learned, `npm run generate:first-aid`.',
    learn([...accidentTexts, ...postTexts]),
  );

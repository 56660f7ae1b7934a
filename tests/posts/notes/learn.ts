/** What each sign of a note weighs. Run as a program it writes `src/reading/doubt/bearing-weights.ts`. */
import { learn as regression } from '../../learning/regression.ts';
import { keepWeights } from '../../learning/weights-file.ts';
import { notes, postSentences, type Told } from './texts.ts';

/** A note that bears and is passed over costs more than a needless question. */
const costOfMiss = 1.5;
/** There are so many sentences of posts that each counts but little. */
const sentenceOfPost = 0.1;
const learning = { orders: 1, rounds: 20, firstStep: 0.1, fewest: 4, shrink: 0.01 };

/** The weight of each sign, by these notes and sentences. */
export const learn = (told: readonly Told[]): ReadonlyMap<string, number> =>
  regression(
    told
      .filter(({ sentences }) => sentences.length > 0)
      .map((one) => ({
        holds: one.bears,
        counts: one.bears ? costOfMiss : one.ofPost ? sentenceOfPost : 1,
        stretches: one.sentences,
      })),
    learning,
  );

if (import.meta.main)
  keepWeights(
    new URL('../../../src/reading/doubt/bearing-weights.ts', import.meta.url),
    'What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`.',
    learn([...notes, ...postSentences]),
  );

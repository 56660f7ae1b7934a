/**
 * "It was always 1 kg of lard … today I took the same kilo in palm oil instead", "I used the same 200 g of babassu": another
 * fat in the place of the one row that weighs so much.
 */

import { once } from '../once.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { thingOf } from '../words/weighed.ts';
import { hearNotes, type Note } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, rowsBefore, toldIn, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(['same']);

const makePatterns = (): readonly (readonly ['same', RegExp])[] => [
  [
    'same',
    /\b(?:i|we)(?: (?:have|had|just|only|then|now|simply))* (?:took|taken|used|put in|put|weighed(?: out| in)?|melted|went with|poured in) (?:(?:in|out) )?(?:the|that) (?:very )?same (?<w>#|kilo|pound) (?:in|of|as|but|with) (?<n>@)(?: (?:instead|in its place|this time|today|now))*(?= ?(?:$|[-,.;:!)…]|(?:and|with|so|because|as|since)\b))/d,
  ],
  [
    'same',
    /\b(?:the|that) (?:very )?same (?<w>#|kilo|pound) (?:was|is|were) (?<n>@)(?: (?:instead|in its place|this time|today|now))+(?= ?(?:$|[-,.;:!)…]|(?:and|with|so|because|as|since)\b))/d,
  ],
];
const patterns = once(makePatterns);

/** Nobody has done it, or only with a part. */
const open =
  /\?|\b(?:if|should|would|could|might|may|maybe|perhaps|next|last|usually|normally|not|never|nearly|almost|half|part|some|also|too|as well|another|besides)\b/;
const units: Readonly<Record<string, number>> = { kilo: 1000, pound: 453.59237 };

function hear({ match, tale, tokens, sentence, span }: Note): PutRight | null {
  const at = toldIn(tale, match);
  const [w, n] = [at('w'), at('n')];
  const name = tokens[n];
  if (!isIngredient(name) || !isFat(name)) return null;
  const grams = units[match.groups?.['w'] ?? ''];
  const rows = rowsBefore(tokens, span.from).filter(({ at: row, figure }) => {
    const weight = tokens[figure];
    if (!isFat(tokens[row]) || !isPlain(weight)) return false;
    return grams === undefined
      ? isSum(weightAt(tokens, w, figure), weightAt(tokens, figure, figure))
      : weight.quantity.dim === 'mass' && isSum(grams, weight.quantity.value);
  });
  const [row, more] = rows;
  const gone = row ? tokens[row.at] : undefined;
  if (!row || more || !isIngredient(gone) || row.id === thingOf(name)) return null;
  // nothing else is told in its sentence
  const isAll = sentence.figures === (grams === undefined ? 1 : 0);
  tokens[row.at] = { ...name, from: gone.from, to: gone.to };
  hush(tokens, span.from, span.to, 'said before');
  return {
    text: `I took ${name.text} in place of ${gone.text}, weight for weight, as the post says.`,
    gone: [],
    from: isAll ? sentence.from : span.from,
    to: isAll ? sentence.to : span.to,
    settles: true,
  };
}

export const sameIn = (cut: Cut): Heard =>
  hearNotes<'same'>(cut, {
    cues,
    isWorth: ({ names }) => names > 0,
    patterns,
    isOpen: ({ text, turn }, match) => {
      const end = match.index + match[0].length;
      return end > turn || open.test(text.slice(match.index, end)) || /\bif\b/.test(text.slice(0, match.index));
    },
    hear: (_, note) => hear(note),
  });

/**
 * "Lye I cut down to 129 g", "the shea was brought down to 40 g", "I raised the water to 310 g": what was done with it and
 * how much that makes. Where it has a weight in the list, this one counts.
 */

import { once } from '../once.ts';
import { type PutRight, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { endsDotted, isIngredient, setApart } from '../words/token-is.ts';
import { asFiller } from '../words/tokens.ts';
import { hearNotes, type Note } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsOf, toldIn, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'cut brought reduced lowered dropped raised upped increased trimmed bumped'.split(' '),
);

const who =
  '(?:(?:i|we)(?: (?:have|had|then|only|also|just))*|(?:is|was|were|are|got|has been|had been)(?: (?:then|now|only|just))*)';
const makePatterns = (): readonly (readonly ['told', RegExp])[] => [
  [
    'told',
    new RegExp(
      `(?:^|[-,;.:(…] |\\b(?:and|but|then|so) )(?:the |my |our )?(?<f>@) ${who} (?:${[...cues].join('|')})(?: (?:down|up|back|right))*(?: by (?<d>#))? to (?:about )?(?<b>#)`,
      'd',
    ),
  ],
  [
    'told',
    new RegExp(
      `\\b(?:i|we)(?: (?:have|had|then|only|also|just|so))* (?:${[...cues].join('|')}) (?:the |my |our )(?<f>@)(?: (?:down|up|back|right))*(?: by (?<d>#))? to (?:about )?(?<b>#)`,
      'd',
    ),
  ],
];
const patterns = once(makePatterns);

/** Nobody has done it, it was not this time, or not by the writer. */
const open =
  /\?|\b(?:if|should|would|could|might|may|maybe|perhaps|next|last|previous|usually|normally|never|not|nearly|almost|he|she|they|book|card|recipe|half|each|per|degrees)\b/;
const goesOn = /^ ?(?:$|[-,.;:!)…]|(?:and|with|so|because|as|since|instead|by|for)\b)/;
/** A change is more than this, as a factor, only by a slip. */
const most = 4;

function hear({ match, tale, tokens, sentence }: Note): PutRight | null {
  const at = toldIn(tale, match);
  const [f, b, d] = [at('f'), at('b'), at('d')];
  const [name, weight, step] = [tokens[f], tokens[b], tokens[d]];
  if (!isIngredient(name) || !isPlain(weight)) return null;
  // "129 g. ok?"
  const isDone = endsDotted(weight);
  const [behind = ''] = tale.text.slice(match.index + match[0].length, tale.turn).split(/(?=[,;])/);
  if (!isDone && (!goesOn.test(behind) || open.test(behind))) return null;
  const [row, more] = rowsOf(tokens, name, tokens.length).filter(({ figure }) => figure !== b && figure !== d);
  const old = row ? tokens[row.figure] : undefined;
  const factor = row ? weightAt(tokens, row.figure, b) / weightAt(tokens, b, b) : 1;
  if (more || !(factor < most && factor > 1 / most)) return null;
  for (let k = f + 1; k < b; k++) {
    const token = tokens[k];
    if (token) tokens[k] = k === d && isPlain(step) ? setApart(step, 'a difference') : asFiller(token);
  }
  if (row && isPlain(old)) {
    const before = tokens[row.at];
    tokens[row.figure] = setApart(old, 'taken back');
    if (before) tokens[row.at] = asFiller(before);
  }
  const gone = isPlain(old) ? [old.quantity] : [];
  const than = isPlain(old) ? ` and not ${written(old.quantity)}` : '';
  const text = `I took ${written(weight.quantity)} of ${name.text}${than}, as the post says.`;
  return { text, gone, from: sentence.from, to: sentence.to, settles: true };
}

export const broughtTo = (cut: Cut): Heard =>
  hearNotes<'told'>(cut, {
    cues,
    isWorth: ({ figures, names }) => figures > 0 && names > 0,
    patterns,
    isOpen: ({ text, turn }, match) => {
      const end = match.index + match[0].length;
      return end > turn || open.test(text.slice(0, end));
    },
    hear: (_, note) => hear(note),
  });

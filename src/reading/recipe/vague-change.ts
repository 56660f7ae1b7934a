/** A weight that was changed by nobody knows how much: "a bit less of the coconut went in", "some more of the same oil". */

import { isIngredient, isMark, isMeasured, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import type { Assembly, Row } from './rows.ts';

const little = /^(?:bit|little|touch|tad|splash|glug|dash|dollop|slosh|slightly|some|somewhat)$/;
/** Nobody has done it, or it was another time. */
const open =
  /\b(?:if|would|should|could|can|may|might|next|last|maybe|perhaps|need|needs|want|wanted|usually|normally|always|than|not|never|better|try|recipe|book|card|water)\b/;
const longestLook = 24;

/** Asks by how much a fat or the alkali is less or more than its weight, where the post says that it is. */
export function vagueChange(assembly: Assembly, rows: readonly Row[]): void {
  const { tokens } = assembly.source;
  const weighed = new Set(
    rows.flatMap(({ named, grams }) =>
      grams !== null && /^(?:fat|alkali)$/.test(named.meaning.kind) ? [named.meaning.id] : [],
    ),
  );
  if (weighed.size < 3) return;
  for (let k = 1; k < tokens.length; k++) {
    const word = wordAt(tokens, k);
    if (word !== 'less' && word !== 'more') continue;
    if (!little.test(spoken(tokens[k - 1]))) continue;
    let at = k + 1;
    while (at - k <= 4 && /^(?:of|the|my|that|same)$/.test(wordAt(tokens, at))) at++;
    const name = tokens[at];
    const isStuff = isIngredient(name) && weighed.has(name.meaning.id);
    const isThat = wordAt(tokens, at - 1) === 'that' && (isMark(name, ',.;') || name === undefined);
    const isSame =
      wordAt(tokens, at - 1) === 'same' &&
      /^(?:oils?|fat)$/.test(spoken(name) || (name && 'text' in name ? name.text : ''));
    if (!isStuff && !isThat && !isSame) continue;
    const { from, to } = sentenceAt(tokens, k, longestLook);
    const sentence = tokens.slice(from, to);
    if (open.test(sentence.map(spoken).join(' ')) || isMark(tokens[to], '?') || sentence.some(isMeasured)) continue;
    const said = isIngredient(name) ? name.text : word;
    assembly.doubts.push({
      id: 'corrected',
      said: `${spoken(tokens[k - 1])} ${word}${isIngredient(name) ? ` ${said}` : ''}`,
    });
    return;
  }
}

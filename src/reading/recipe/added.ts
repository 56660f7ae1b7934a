/** A second amount of one thing, which went in besides: "so I added another 100 g of coconut", "put in 100 g more coconut". */

import { isMeasured, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Row } from './rows.ts';

const besides = /^(?:another|further|additional|extra)$/;
/** Nobody has done it, or it was not this time. */
const open =
  /\b(?:if|should|would|could|can|shall|may|might|maybe|perhaps|next|want|wanted|need|needs|think|thinking|or|not|no|never|last|before that)\b/;
const did = /\b(?:added|add|put|poured|tipped|melted|threw|weighed|plus|then|went|stirred|mixed|used|took)\b/;
const longestLook = 24;

/** Whether the words of its sentence say so of a row, and leave no doubt that it was done. */
export function isAdded(tokens: readonly Token[], { token: name }: Row): boolean {
  const at = [name - 1, name - 2, name - 3].find((k) => isMeasured(tokens[k]));
  if (at === undefined) return false;
  if (!besides.test(wordAt(tokens, at - 1)) && wordAt(tokens, at + 1) !== 'more') return false;
  const { from, to } = sentenceAt(tokens, at, longestLook);
  const end = tokens[to];
  const words = tokens.slice(from, to).map(spoken).join(' ');
  return did.test(words) && !open.test(words) && !(end?.t === 'sign' && end.text === '?');
}

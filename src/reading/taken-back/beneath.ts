/** "Olive 200 g" and, in a line of its own beneath, "rather 250" or "make it 250": it may stand for the weight above. */

import type { Amount } from '../rows/kinds.ts';
import { isRole } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

/** To the figure above, at the most; what is farther from it is of something else. */
const most = 2;

const isTalk = (token: Token | undefined): boolean =>
  token?.t === 'word' || token?.t === 'sign' || isRole(token, 'scale-to');

export function mayStandForAbove(tokens: readonly Token[], { from, to, quantity }: Amount): boolean {
  if (quantity.dim !== 'bare') return false;
  let [begin, end] = [from - 1, to];
  while (isTalk(tokens[begin])) begin--;
  while (isTalk(tokens[end])) end++;
  const isAlone = tokens[begin]?.t === 'line' && (end >= tokens.length || tokens[end]?.t === 'line');
  // "- 47 -" is the number of a page
  const isSaid = tokens.slice(begin + 1, end).some((token) => token.t === 'word' || isRole(token, 'scale-to'));
  if (!isAlone || !isSaid) return false;
  for (let k = begin - 1; k >= 0 && tokens[k]?.t !== 'line'; k--) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || token.quantity.dim !== 'mass') continue;
    const ratio = quantity.value / Number.parseFloat(token.quantity.text.replace(',', '.'));
    return ratio !== 1 && ratio <= most && ratio >= 1 / most;
  }
  return false;
}

/**
 * A fat that the writer breaks off to take back, and says why: "1000 g of linseed … no, that was sold out, so 1000 g of
 * soybean oil". What comes is in its place.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { isFat, isMark, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';

/** Signs and words before the "no", and words of the reason, at the most. */
const mostBefore = 5;
const longestReason = 22;

const lacked =
  /\b(?:sold out|out of|ran out|run out|none|nothing|used (?:\S+ ){0,2}up|empty|dont have|didnt have|havent|not got|no more|mouldy|moldy|rancid|off|bad|finished|gone|gave (?:it|that|them)|given|too (?:dear|expensive)|dont (?:like|want|use)|allergic|cant (?:get|find|have|use|buy)|couldnt (?:get|find|buy)|unavailable|missing)\b/;
const mistaken = /\b(?:wrong|mistake|mistaken|misread|error|mixed up|muddled|confus\w+)\b/;
const turning = /^(?:so|then|hence|therefore|instead)$|^make$/;

const isFigure = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && /^(?:mass|bare|percent)$/.test(token.quantity.dim);

const noes: ReadonlySet<string> = new Set(['no', 'nope', 'nah']);
const isNo = (token: Token | undefined): boolean =>
  token?.t === 'word' ? noes.has(token.text) : token?.t === 'name' && token.text.length <= 4 && noes.has(spoken(token));

interface Row {
  readonly name: number;
  readonly figure: number;
}

/** The weighed fat whose row begins, or ends, at a token: "500 g of lard", "lard 500 g". */
function rowAt(tokens: readonly Token[], from: number): (Row & { readonly to: number }) | null {
  if (isFat(tokens[from])) {
    const figure = isMark(tokens[from + 1], ':=') ? from + 2 : from + 1;
    return isFigure(tokens[figure]) ? { name: from, figure, to: figure + 1 } : null;
  }
  const name = spoken(tokens[from + 1]) === 'of' ? from + 2 : from + 1;
  return isFigure(tokens[from]) && isFat(tokens[name]) ? { name, figure: from, to: name + 1 } : null;
}

function rowBefore(tokens: readonly Token[], to: number): Row | null {
  for (let from = to - 2; from >= to - 3 && from >= 0; from--) {
    const row = rowAt(tokens, from);
    if (row?.to === to) return row;
  }
  return null;
}

/** Where the row ends that the "no" at `k` takes back: nothing but signs and sighs between; -1 where words stand there. */
function endBefore(tokens: readonly Token[], k: number): number {
  let at = k - 1;
  while (
    k - at <= mostBefore &&
    (isMark(tokens[at], ',.…-–—(') || /^(?:hm+|oh|ah|um|uh|er|wait|but)$/.test(spoken(tokens[at])))
  )
    at--;
  return at === k - 1 ? -1 : at + 1;
}

/** The fats that such a "no" takes back; `unheard`: words of one of which nobody knows what it takes back. */
export function brokenOff(tokens: readonly Token[]): Heard {
  let out: Token[] | null = null;
  let unheard: string | null = null;
  const told: PutRight[] = [];
  for (let k = 1; k < tokens.length; k++) {
    const end = isNo(tokens[k]) ? endBefore(tokens, k) : -1;
    const gone = end < 0 ? null : rowBefore(tokens, end);
    if (!gone) continue;
    let at = k + 1;
    while (at - k <= longestReason && (spoken(tokens[at]) !== '' || isMark(tokens[at], ",;-–—'"))) at++;
    const reason = tokens
      .slice(k + 1, at)
      .map(spoken)
      .filter((word) => word !== '');
    const comes = rowAt(tokens, at);
    const [lost, figure, came] = [tokens[gone.name], tokens[gone.figure], tokens[comes?.name ?? -1]];
    if (!comes || !isFat(lost) || !isFigure(figure) || !isFat(came) || thingOf(lost) === thingOf(came)) continue;
    // "no, sorry, 350 g arachis" is for `put-right`
    if (reason.length < leastReason || /^(?:not|other|more)$/.test(reason[0] ?? '')) continue;
    if (!(lacked.test(reason.join(' ')) && reason.some((word) => turning.test(word)))) {
      if (mistaken.test(reason.join(' '))) unheard ??= `no, ${reason.join(' ')}`;
      continue;
    }
    out ??= [...tokens];
    for (let n = Math.min(gone.name, gone.figure); n < at; n++) {
      const one = tokens[n];
      if (one && one.t !== 'sign') out[n] = n === gone.figure ? asAside(figure, 'taken back') : asFiller(one);
    }
    told.push({
      text: `I took ${came.text} in the place of ${lost.text}, as the post corrects itself.`,
      gone: [figure.quantity],
      from: Math.min(gone.name, gone.figure),
      to: comes.to,
      settles: true,
    });
  }
  return { tokens: out ?? tokens, told, unheard };
}
const leastReason = 3;

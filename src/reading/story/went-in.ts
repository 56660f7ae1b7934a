/**
 * What a note below a list says of what really went in of one of its weights. Some of it was found again outside of the
 * pot: "there was a crust in the cup, 6 g. So 129 g went in the soap" of 135 g; that counts where both figures make up
 * the weight of the list. Or it was written wrong: "wrote 142 from memory. The slip says 139, so 139 is what I put in".
 */

import { withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

/** Words of which one stands in each note that does so. */
const cues: ReadonlySet<string> = new Set(
  'crust crusted stuck sticking clung caked stayed left found reached behind remained missed residue still what'.split(
    ' ',
  ),
);
const rested =
  /\b(?:crust(?:ed)?|stuck|sticking|clung|caked|stayed|left(?! (?:it|them|the) )|found|never (?:reached|got|went|made)|behind|remained|missed|residue|still (?:in|on))\b/;
const reallyWent =
  /\b(?:so|that means|this means|which means|means|meaning|which leaves|leaving|then|only|that makes) [^#?]{0,24}(?<c>#)|(?<d>#) [^#?]{0,12}\b(?:then|really|actually) (?:went|got)\b/d;
const wentIn =
  /^# (?:of )?(?:it |(?:the )?@ )?(?:(?:then|really|actually|only|that|is what|all that|was|is|are|have|has) )*(?:(?:went|got|gone|ended up|made it|dissolved|is|was|are) )*in(?:to)?\b/;
/** Nobody has done it, or not in this batch. */
const open =
  /\?|\b(?:if|could|would|might|may|maybe|perhaps|next time|last (?:time|batch|year|month)|some ?day|usually|normally|always|hers|his|theirs|she|he|they|about|around|roughly|nearly|almost|scraped (?:it|them) (?:back )?in)\b/;

/** "139 is what I put in". */
const isWhat =
  /(?<c>#) (?:of (?:it|@) )?(?:is|was|are|were|s) (?:really |actually )?what (?:(?:i|we) (?:have |had |really |actually )*(?:put in|used|weighed|poured|took|tipped in|added)|(?:really |actually )?(?:went|got|is|was) in)\b/d;
const mostChanged = 1.35;

/** Sentences that tell it, at the most. */
const mostTold = 4;

/** The list as such a note leaves it. */
export function wentInLess(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [] };
  const tells = (token: Token): boolean => cues.has(spoken(token));
  if (!cut.tokens.some(tells)) return none;
  const sentences = sentencesOf(cut);
  for (const [k, last] of sentences.entries()) {
    if (last.figures === 0 || !isAny(cut.tokens, sentences[Math.max(0, k - mostTold + 1)]?.from ?? 0, last.to, tells))
      continue;
    const what = isWhat.exec(last.text)?.indices?.groups?.['c'];
    const went = what ? null : reallyWent.exec(last.text);
    const place = (what ?? went?.indices?.groups?.['c'] ?? went?.indices?.groups?.['d'])?.[0];
    if (place === undefined || !(what || wentIn.test(last.text.slice(place)))) continue;
    const found = (what ? slipIn : noteOf)(cut.tokens, sentences, k, last.tokenAt(place));
    if (!found) continue;
    const { row, from, rest } = found;
    const out = [...cut.tokens];
    const [weight, name] = [out[row.figure], out[row.at]];
    if (!isPlain(weight) || name?.t !== 'name') continue;
    const now = withValue(weight.quantity, weightAt(out, rest, row.figure));
    hush(out, from, rest + 1, 'a part of what was said');
    // "leaving the 142 in, so that I remember"
    for (let at = rest + 1; what && at < out.length && sentenceAt(sentences, at)?.paragraph === last.paragraph; at++) {
      const again = out[at];
      const isSame = isSum(weightAt(out, row.figure, row.figure), weightAt(out, at, row.figure));
      if (again?.t === 'quantity' && isSame && !isIngredient(out[at + 1])) out[at] = asAside(again, 'replaced');
    }
    out[row.figure] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
    const text = `I took ${written(now)} of ${name.text}, not ${written(weight.quantity)}, as the post says.`;
    return { tokens: out, told: [{ text, gone: [weight.quantity], from, to: last.to, settles: true }] };
  }
  return none;
}

const sentenceAt = (sentences: readonly Sentence[], at: number): Sentence | undefined =>
  sentences.find(({ from, to }) => from <= at && at < to);

/** The one row whose weight the figure at `rest` and one before it in the same note make up. */
function noteOf(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  rest: number,
): { readonly row: Weighed; readonly from: number; readonly rest: number } | null {
  let told = '';
  for (let n = k; n > Math.max(-1, k - mostTold) && sentences[n]?.paragraph === sentences[k]?.paragraph; n--) {
    const first = sentences[n];
    if (!first) break;
    told = first.text + told;
    if (!rested.test(told)) continue;
    const rows = new Map(
      [...rowsBefore(tokens, first.from), ...rowsOfAlkali(tokens, first.from)].map((row) => [row.figure, row]),
    );
    const others: number[] = [];
    for (let at = first.from; at < rest; at++) if (tokens[at]?.t === 'quantity') others.push(at);
    const [away, ...more] = others;
    if (away === undefined) continue;
    if (more.length > 0 || open.test(told)) return null;
    const fits = [...rows.values()].filter(({ figure }) =>
      isSum(weightAt(tokens, figure, figure), weightAt(tokens, away, figure), weightAt(tokens, rest, figure)),
    );
    const [row] = fits;
    const named = tokens.slice(first.from, rest).filter(isIngredient);
    if (!row || fits.length > 1 || named.some((name) => thingOf(name) !== row.id)) return null;
    let begin = n;
    while (begin > Math.max(0, k - mostTold) && isBefore(sentences[begin - 1], sentences[k])) begin--;
    return { row, from: sentences[begin]?.from ?? first.from, rest };
  }
  return null;
}

/** It begins to tell of the same, without a figure. */
const isBefore = (sentence: Sentence | undefined, last: Sentence | undefined): boolean =>
  sentence !== undefined &&
  sentence.paragraph === last?.paragraph &&
  sentence.figures === 0 &&
  rested.test(sentence.text);

/** The one row whose weight the note names as wrong: no third weight stands in it. */
function slipIn(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  rest: number,
): { readonly row: Weighed; readonly from: number; readonly rest: number } | null {
  let begin = k;
  while (begin > Math.max(0, k - mostTold + 1) && sentences[begin - 1]?.paragraph === sentences[k]?.paragraph) begin--;
  for (let n = k; n >= begin; n--) {
    const first = sentences[n];
    if (!first || open.test(first.text)) return null;
    const rows = [...rowsBefore(tokens, first.from), ...rowsOfAlkali(tokens, first.from)];
    const figures = tokens
      .slice(first.from, rest)
      .flatMap((token, at) => (token.t === 'quantity' ? [first.from + at] : []));
    const others = figures.filter((at) => !isSum(weightAt(tokens, rest, rest), weightAt(tokens, at, rest)));
    const [wrong, ...more] = others;
    if (wrong === undefined) continue;
    if (more.length > 0) return null;
    const fits = new Map(
      rows
        .filter(({ figure }) => isSum(weightAt(tokens, figure, figure), weightAt(tokens, wrong, figure)))
        .map((row) => [row.figure, row]),
    );
    const [row] = fits.values();
    const ratio = weightAt(tokens, rest, row?.figure ?? -1) / weightAt(tokens, wrong, row?.figure ?? -1);
    const isOfIt = tokens.slice(first.from, rest).every((token) => !isIngredient(token) || thingOf(token) === row?.id);
    if (!row || fits.size > 1 || !isOfIt || !(ratio < mostChanged && ratio > 1 / mostChanged)) return null;
    return { row, from: first.from, rest };
  }
  return null;
}

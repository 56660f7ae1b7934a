/**
 * "In the jug of the oil remained 50 g, so in the pot there is 950 g of olive": what stayed behind in a vessel and what is in
 * the pot, which are together what the list has of one fat. So much as is in the pot counts.
 */
import { alike, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

const vessel =
  /\b(?:jug|bottle|bowl|pan|tin|can|jar|tub|cup|beaker|measure|measuring cup|pitcher|canister|bucket|saucepan|vessel|glass|paper|scale|first pot|melting pot)\b/;
const stayed = /\b(?:remain(?:s|ed|ing)?|stay(?:s|ed|ing)?|left|stuck|clung|sticking|still|rested|behind|hung|over)\b/;
const inPot =
  /\bin(?:to|side)? (?:the |my |our |this )*(?:[a-z]+ )?(?:pot|soap|batch|mix|batter|kettle|mass)\b|\b(?:went|gone|go|goes|came|got|is|are|was|were|really|only|just) in\b(?! (?:the|my) (?!pot|soap|batch|mix|batter|kettle|mass))/;
const open =
  /\?|\b(?:if|should|would|could|may|might|maybe|perhaps|about|around|roughly|next|last (?:time|batch|week|month|year)|scraped|rinsed|later|afterwards|added|topped|not|never)\b/;
/** Words of a clause: since the figure before, up to the next. */
const clause = (text: string, place: number): string =>
  `${/[^#,;.?]*$/.exec(text.slice(0, place))?.[0] ?? ''}#${/^[^#,;.?]*/.exec(text.slice(place + 1))?.[0] ?? ''}`;

/** The one row of a fat that is what two figures are together, where nothing but it is named beside them. */
function wholeOf(tokens: readonly Token[], rest: number, now: number, from: number, to: number): Weighed | null {
  const first = Math.min(rest, now);
  const rows = rowsBefore(tokens, tokens.length).filter(
    ({ at, figure }) =>
      isFat(tokens[at]) &&
      figure !== rest &&
      figure !== now &&
      isSum(weightAt(tokens, figure, figure), weightAt(tokens, rest, figure), weightAt(tokens, now, figure)),
  );
  const [row, ...more] = rows;
  if (!row || more.length > 0) return null;
  const own = rowsBefore(tokens, tokens.length).filter(({ id }) => id === row.id);
  if (own.some(({ figure }) => figure !== row.figure && figure !== rest && figure !== now)) return null;
  const begin = row.figure >= from && row.figure < first ? Math.max(row.at, row.figure) + 1 : from;
  return tokens.slice(begin, to).every((one) => !isIngredient(one) || thingOf(one) === row.id) ? row : null;
}

/** The list with what is in the pot. */
export function stayedBehind(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || !stayed.test(sentence.text)) continue;
    const story = joinedAt(sentences, k, sentence.figures > 1 ? 1 : 2);
    if (open.test(story.text)) continue;
    const places = [...story.text.matchAll(/#/g)].map(({ index }) => index);
    const left = places.find((place) => {
      const words = clause(story.text, place);
      return stayed.test(words) && vessel.test(words) && !inPot.test(words);
    });
    const pot = places.find((place) => left !== undefined && place > left && inPot.test(clause(story.text, place)));
    if (left === undefined || pot === undefined || left >= story.turn) continue;
    const [rest, now] = [story.tokenAt(left), story.tokenAt(pot)];
    const row = wholeOf(tokens, rest, now, sentence.from, story.to);
    const [was, is, less, name] = [tokens[row?.figure ?? -1], tokens[now], tokens[rest], tokens[row?.at ?? -1]];
    if (!row || !isPlain(was) || !isPlain(is) || !isPlain(less) || name?.t !== 'name') continue;
    const out = [...tokens];
    for (let at = sentence.from; at < story.to; at++) {
      const one = out[at];
      if (isIngredient(one) && at !== row.at) out[at] = asFiller(one);
    }
    out[rest] = asAside(less, 'what stayed behind');
    out[now] = asAside(is, 'said of what is in the pot');
    out[row.figure] = { ...was, quantity: { ...alike(is.quantity, was.quantity), numbers: was.quantity.numbers } };
    const text = `I took ${written(is.quantity)} of ${name.text}, not ${written(was.quantity)}, as ${written(less.quantity)} stayed behind.`;
    return { tokens: out, told: [{ text, gone: [was.quantity], from: sentence.from, to: story.to, settles: true }] };
  }
  return none;
}

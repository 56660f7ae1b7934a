/**
 * "Overshot with the coconut, the scale said 290 g, so I spooned 40 g back into the jar", "wanted 300 g of coconut, got to
 * 340, spooned 40 back": what was too much of it is not in the pot. Asked about where nobody weighed what went back.
 */

import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import type { Quantity } from '../words/quantities.ts';
import { isIngredient } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, type Name, rowsOf, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('back out off'.split(' '));
const tooMuch = /\b(?:scales?|display|overshot|overpoured|overdid|too much|went over|heavy handed|slipped)\b/;
const vessel = '(?:jar|tub|bottle|bag|tin|can|pack|packet|box|container|bucket|block|canister|jug|cup)';
const verb = '(?:spooned|scooped|took|poured|put|tipped|ladled|fished|scraped|removed|picked|lifted|dug|sucked|drew)';
const gone = `(?:back (?:in|into|to|out)\\b(?: (?:the|its|my) ${vessel})?|(?:back )?out(?: again)?(?= (?:$|[.,;!?)]))|back(?= (?:$|[.,;!?)]))|off again)`;
const makePattern = () =>
  new RegExp(
    `(?<f>@) [^@#.;]{0,50}?(?:(?<a>#) [^@#.;]{0,40}?)?(?<w>#) (?:[^@#.;]{0,30}?)(?:, |so |and |then )+(?:(?:i|we|have|had|ve|then|quickly|just) )*(?:${verb} (?:about )?(?<b>#|some|a bit|a little|a spoon(?:ful)?|the (?:rest|excess|extra))(?: of (?:it|that))? ${gone}|(?<c>#)(?: of (?:it|that))? (?:went|goes|came|got put) ${gone})`,
    'd',
  );
/** So much was meant to go in. */
const wanted =
  /\b(?:wanted|wanting|aimed|aiming|should(?: have been| be)?|meant|planned|needed|was to|supposed|going for|intended|asks for|calls for)\b/;
let made: RegExp | null = null;
/** Nobody has done it, or it says more of it. */
const open = /\b(?:if|would|should|could|might|maybe|perhaps|next|last time|nearly|almost|not|she|he|they)\b/;

function putBackIn(out: Token[], sentence: Sentence, pattern: RegExp): PutRight | 'unheard' | null {
  const { text } = sentence;
  const found = pattern.exec(text);
  const at = found?.indices?.groups;
  if (!found) return null;
  const token = (group: string): number => {
    const place = at?.[group]?.[0];
    return place === undefined ? -1 : sentence.tokenAt(place);
  };
  const end = found.index + found[0].length;
  const [f, w] = [token('f'), token('w')];
  const meant = wanted.test(text.slice(0, sentence.placeOf(w))) ? meantOf(out, sentence, f, w, token('a')) : -1;
  if ((meant < 0 && (!tooMuch.test(text) || at?.['a'])) || open.test(meant < 0 ? text : text.replace(wanted, '')))
    return null;
  const back = Math.max(token('b'), token('c'));
  const [name, weight, less] = [out[f], out[w], out[back]];
  if (!isIngredient(name) || name.meaning.kind === 'scent' || !isPlain(weight)) return null;
  if (less?.t !== 'quantity' || /[#]/.test(text.slice(end))) return 'unheard';
  // "the scale said 340, so I scooped 40 g back"
  const whole = alike(weight.quantity, less.quantity);
  const part = alike(less.quantity, whole);
  if (!isPlain(less) || part.dim !== whole.dim || part.value >= whole.value / 2) return 'unheard';
  const stays = withValue(whole, whole.value - part.value);
  const listed = rowsOf(out, name, out.length).flatMap(({ figure }) =>
    figure === w || figure === back || figure === meant ? [] : [figure],
  );
  const isStays = (k: number): boolean => isSum(weightAt(out, w, k), weightAt(out, k, k), weightAt(out, back, k));
  if (!listed.every(isStays)) return 'unheard';
  const goal = out[meant];
  if (isPlain(goal) && listed.length === 0) {
    const { numbers } = goal.quantity;
    hush(out, Math.max(f, meant) + 1, sentence.tokenAt(end - 1) + 1, 'put back, as the post says');
    out[meant] = { ...goal, quantity: { ...alike(stays, goal.quantity), numbers } } as Figure;
    if (meant > f + 1) {
      const mark = out[meant - 1] as Token;
      out[meant - 1] = { ...name, from: mark.from, to: mark.to };
      out[f] = asFiller(name);
    }
    return toldOf(name, stays, part, weight, sentence);
  }
  hush(out, f + 1, sentence.tokenAt(end - 1) + 1, 'put back, as the post says', (k) => k === w);
  if (listed.length > 0) hush(out, f, w + 1, 'before some of it was put back');
  else {
    out[w] = { ...weight, quantity: { ...stays, numbers: weight.quantity.numbers } } as Figure;
    if (w - f > 1) {
      const mark = out[w - 1] as Token;
      out[w - 1] = { ...(name as Name), from: mark.from, to: mark.to };
      out[f] = asFiller(name);
    }
  }
  return toldOf(name, stays, part, weight, sentence);
}

const toldOf = (
  name: Name,
  stays: Quantity,
  part: Quantity,
  { quantity }: Figure,
  { from, to }: Sentence,
): PutRight => ({
  text: `I took ${written(stays)} of ${name.text}, as ${written(part)} of ${written(quantity)} was put back.`,
  gone: [],
  from,
  to,
  settles: true,
});

/** What was meant to be of it, told in the same sentence: less than the scale said. */
function meantOf(tokens: readonly Token[], { from }: Sentence, f: number, w: number, a: number): number {
  const figure = a >= 0 ? a : [f - 1, f - 2].find((k) => k >= from && isPlain(tokens[k]));
  if (figure === undefined || !isPlain(tokens[figure])) return -1;
  return weightAt(tokens, w, figure) > weightAt(tokens, figure, figure) ? figure : -1;
}

/** The list without what was put back. */
export function putBack(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [], unheard: null };
  if (!cut.tokens.some((token) => token.t === 'word' && cues.has(token.text))) return none;
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures === 0 || sentence.names === 0) continue;
    made ??= makePattern();
    const back = putBackIn(out, sentence, made);
    if (back === 'unheard')
      return {
        ...none,
        unheard: rawText(cut.prims, out[sentence.from]?.from ?? 0, out[sentence.to - 1]?.to ?? 0),
      };
    if (back) told.push(back);
  }
  return told.length > 0 ? { tokens: out, told, unheard: null } : none;
}

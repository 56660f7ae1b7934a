/**
 * "I had 900 g of olive in plan but there are only 780 g at home, so 780 g": less of a thing was there than planned, and it is
 * said once more that so much it is. The smaller weight counts.
 */
import { alike, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set(['only', 'just', 'merely', 'but']);
const planned =
  /\b(?:plan(?:ned|s)?|wanted|meant|intended|intend|hoped|thought of|recipe|paper|list|supposed|should (?:be|have been)|was to be|calls? for|called for)\b/;
const there =
  /\b(?:have|had|has|got|get|gave|held|holds|contain(?:s|ed)|yielded|found|was|were|is|are|theres|left|at home|here|there|remain(?:s|ed)?)\b/;
const fewer = /\b(?:only|just|merely|no more than|not more than)\b[^#]{0,24}#/;
/** "So 780 g", "therefore it is 780 g", "I take 780 g then". */
const soMuch =
  /\b(?:so|therefore|hence|thus|then|thats why)\b[^#@.?]{0,28}#(?! (?:of )?(?:the )?@ (?:for|from|more))|# (?:it is|it was|it will be|then|(?:is|was) what|are what|i take|i took|i use|went in)\b/;
const open =
  /\?|\b(?:if|should i|shall|would|could|might|maybe|perhaps|or|next|last (?:time|batch|week|month|year)|about|around|roughly)\b/;
/** Something comes in for what was missing. */
const filled =
  /\b(?:missing|fill(?:ed|s|ing)?|top(?:ped)?|instead|replac\w*|substitut\w*|make up|made up|difference|short(?:fall)?|for the rest|the rest (?:i|is|was|with|from|comes|came|of)|bought|buy)\b/;

const isWorth = ({ figures, text }: Sentence): boolean =>
  figures > 2 && fewer.test(text) && planned.test(text) && !open.test(text);

/** The row that was planned, and the figures of what is there. */
function toldIn(
  tokens: readonly Token[],
  sentence: Sentence,
): { readonly row: Weighed; readonly less: number; readonly again: number } | null {
  const { from, to, text } = sentence;
  const places = [...text.matchAll(/#/g)].map(({ index }) => index);
  for (const [n, place] of places.entries()) {
    const [before, next] = [places[n - 1], places[n + 1]];
    if (before === undefined || next === undefined) continue;
    const clause = text.slice(before + 1, place + 1);
    if (!fewer.test(clause) || !there.test(text.slice(before + 1, next))) continue;
    const [less, again] = [sentence.tokenAt(place), sentence.tokenAt(next)];
    if (!soMuch.test(text.slice(place + 1)) || !isSum(weightAt(tokens, less, less), weightAt(tokens, again, less)))
      continue;
    const row = rowsBefore(tokens, less).find(({ figure }) => figure === sentence.tokenAt(before));
    if (!row || row.figure < from || again >= to) continue;
    const share = weightAt(tokens, less, row.figure) / weightAt(tokens, row.figure, row.figure);
    if (share < 1 && share >= leastThere) return { row, less, again };
  }
  return null;
}
const leastThere = 0.3;

/** The list with what was there. */
export function fewerThere(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (!isWorth(sentence) || filled.test(sentence.text + (sentences[k + 1]?.text ?? ''))) continue;
    const found = toldIn(tokens, sentence);
    const [was, now, same, name] = [found?.row.figure, found?.less, found?.again, found?.row.at].map(
      (at) => tokens[at ?? -1],
    );
    if (!found || !isPlain(was) || !isPlain(now) || !isPlain(same) || !isIngredient(name)) continue;
    const others = rowsBefore(tokens, tokens.length).filter(
      ({ id, figure }) => id === found.row.id && figure !== found.row.figure,
    );
    if (others.some(({ figure }) => figure !== found.less && figure !== found.again)) continue;
    const out = [...tokens];
    for (let at = Math.min(found.row.at, found.row.figure) + 1; at <= found.again + 2; at++) {
      const one = out[at];
      if (isIngredient(one) && at !== found.row.at && thingOf(one) === found.row.id) out[at] = asFiller(one);
    }
    out[found.less] = asAside(now, 'said of what was there');
    out[found.again] = asAside(same, 'said before');
    out[found.row.figure] = {
      ...was,
      quantity: { ...alike(now.quantity, was.quantity), numbers: was.quantity.numbers },
    };
    const text = `I took ${written(now.quantity)} of ${name.text}, not ${written(was.quantity)}, as the post says that there is no more.`;
    return { tokens: out, told: [{ text, gone: [was.quantity], from: sentence.from, to: sentence.to, settles: true }] };
  }
  return none;
}

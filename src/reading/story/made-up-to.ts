/**
 * "180 g olive oil were left in the old bottle, I tipped that in and topped it up to 500 g from the new one": so much of
 * it in all, out of two bottles. And "topped the olive up to 550 g before the lye went in": so much of a row that had less.
 */

import { alike, type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, rowsOf, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('topped filled made brought increased raised bumped'.split(' '));
const fresh =
  '(?:the |a |my |that |another )*(?:new|newer|next|second|other|fresh|full|unopened|big|another)(?: (?:one|bottle|can|canister|jar|tub|tin|pack|packet|bag|block|box|jug))?';
const makePattern = () =>
  new RegExp(
    `(?<a>#) (?:of )?(?:the |my )?(?<f>@) [^@#;]{0,80}?\\b(?:topped|filled|made|brought) (?:(?:it|that|this|them|the lot|the bowl) )?(?:up )?(?:(?:(?:with|from|out of) ${fresh} )to (?<w>#)|to (?<v>#) (?:with|from|out of) ${fresh})(?! @)`,
    'd',
  );
let made: RegExp | null = null;
const upTo = '(?:topped|filled|made|brought|increased|raised|bumped)';
const ending = '(?! (?:(?:of )?(?:the )?@|with|using|in all|total|altogether|together|of (?:oils?|fats?)))';
/** Of a row that stands before. */
const makeRaised = () =>
  new RegExp(
    `\\b${upTo} (?:up )?(?:the |my |that )*(?<f>@) (?:oil )?(?:up )?to (?:a total of |a full |full )?(?<v>#)${ending}`,
    'd',
  );
let raised: RegExp | null = null;
const open = /\b(?:if|would|should|could|might|maybe|perhaps|next|last time|nearly|almost|not|she|he|they)\b/;

/** The list with the whole of it. */
export function madeUpTo(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [] };
  if (!cut.tokens.some((token) => token.t === 'word' && cues.has(token.text))) return none;
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    const { text, from, to } = sentence;
    if (sentence.figures === 0 || sentence.names === 0) continue;
    const back = raisedIn(out, sentence);
    if (back) told.push(back);
    if (back || sentence.figures < 2) continue;
    made ??= makePattern();
    const found = made.exec(text);
    const at = found?.indices?.groups;
    if (!found || !at || open.test(text) || /[@#]/.test(text.slice(0, found.index))) continue;
    const token = (group: string): number => sentence.tokenAt(at[group]?.[0] ?? -1);
    const [part, f, whole] = [token('a'), token('f'), token(at['w'] ? 'w' : 'v')];
    const [name, first, all] = [out[f], out[part], out[whole]];
    if (!isIngredient(name) || !isPlain(first) || !isPlain(all)) continue;
    if (!(weightAt(out, whole, part) > weightAt(out, part, part))) continue;
    const listed = rowsOf(out, name, out.length).flatMap(({ figure }) => (figure === part ? [] : [figure]));
    if (!listed.every((k) => k === whole || isSum(weightAt(out, k, k), weightAt(out, whole, k)))) continue;
    const end = sentence.tokenAt(found.index + found[0].length - 1) + 1;
    hush(out, f + 1, end, 'with what was there before');
    if (listed.some((k) => k !== whole)) hush(out, part, f + 1, 'with what was there before');
    else out[part] = { ...first, quantity: all.quantity } as Figure;
    told.push({
      text: `I took ${written(all.quantity)} of ${name.text} in all, ${written(first.quantity)} of it from the first.`,
      gone: [first.quantity],
      from,
      to,
      settles: true,
    });
  }
  return told.length > 0 ? { tokens: out, told } : none;
}

/** The row that had less has so much. */
function raisedIn(out: Token[], sentence: Sentence): PutRight | null {
  raised ??= makeRaised();
  const found = raised.exec(sentence.text);
  const at = found?.indices?.groups;
  if (!at?.['f'] || !at['v'] || open.test(clauseOf(sentence.text, found?.index ?? 0)) || /\?/.test(sentence.text))
    return null;
  const [f, v] = [sentence.tokenAt(at['f'][0]), sentence.tokenAt(at['v'][0])];
  const [name, all] = [out[f], out[v]];
  const [row, ...more] = rowsOf(out, name, f);
  const first = out[row?.figure ?? -1];
  if (!row || more.length > 0 || !isIngredient(name) || !isPlain(first) || !isPlain(all)) return null;
  const [before, now] = [weightAt(out, row.figure, row.figure), weightAt(out, v, row.figure)];
  if (!(now > before) || now > mostRaised * before) return null;
  out[row.figure] = { ...first, quantity: { ...alike(all.quantity, first.quantity), numbers: first.quantity.numbers } };
  out[f] = asFiller(name);
  out[v] = asAside(all, 'with what was there before');
  return {
    text: `I took ${written(all.quantity)} of ${name.text}, not ${written(first.quantity)}, as the post says.`,
    gone: [first.quantity],
    from: f,
    to: v + 1,
    settles: true,
  };
}
const mostRaised = 5;

/** The words around a place between two commas. */
function clauseOf(text: string, place: number): string {
  const since = Math.max(0, ...[...',;:('].map((mark) => text.lastIndexOf(mark, place)));
  return text.slice(since, place) + (/^[^,;:.]*/.exec(text.slice(place))?.[0] ?? '');
}

/**
 * More of a row than was meant, and it stayed: "the coconut slid out of the tub, and by the time I read the scale there was
 * 340 g of it in the pot", "my hand slipped with the castor, before I could stop the scale said 135 g", "wanted 300 g coconut,
 * my hand slipped and 340 g landed in the pot". So much is in.
 */

import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, rowOf, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'there theres much overpoured overshot overdid before time wanted aimed aiming meant planned should supposed needed intended'.split(
    ' ',
  ),
);
const pot = '(?:the|my) (?:pot|pan|bowl|kettle|saucepan|mix)\\b';
const now = '(?:(?:already|now|suddenly|then|at|just) )*';
const patterns = [
  `\\b(?:there (?:was|were|is|are)|theres) ${now}(?<n>#) (?:of (?:it|that|them|the @) )?${now}in(?:to)? ${pot}`,
  `\\b(?:before|by the time) (?:i|we) [^#]{0,40}\\b(?:scales?|display|it|that|there) (?:was|were|is|said|read|showed|stood|had) ${now}(?<n>#)`,
  `\\btoo much (?:of )?(?:the |my )?@[^#]{0,24}(?<n>#) (?:of (?:it|that) )?(?:ended up|landed|went|is|are|was|were) ${now}in\\b`,
  `\\b(?:overpoured|overshot|overdid) (?:the |my )?@[^#]{0,24}\\b(?:was|is|were|said|read|showed|weighed|came to|now|to|at) ${now}(?<n>#)(?! (?:of )?@)`,
].map((pattern) => new RegExp(pattern, 'd'));
/** What it was to be, told in the same sentence with what went in. */
const meant =
  /\b(?:wanted|aimed|aiming|meant|planned|should(?: have been| be)?|was to be|supposed|needed|intended|going)\b/;
const other = new RegExp(
  `(?:# (?:of )?(?:the |my )?@|@ (?:(?:should|was|were|to|have|been|be|supposed|meant|:) )*#) [^@#?]{0,80}?(?:,|\\b(?:but|and|so|then|until)) [^@#?]{0,50}?(?<n>#) (?:of (?:it|that) )?(?:(?:has|have|had|just|then|all|actually) )*(?:landed|ended up|ended|went|gone|got|slid|fell|plopped|dropped|ran|came out|is|are|was|were) ${now}(?:in\\b|into\\b|out\\b)`,
  'd',
);
/** It came out again, was not weighed, or is of another time. */
const open =
  /\?|\b(?:back|spoon(?:ed)?|scoop(?:ed)?|ladled|removed|took|taken|until|till|last (?:time|batch|week|month|year)|next|nearly|almost|if|would|should|about|around|roughly|hers|her|she|he|they)\b/;
/** "And no way to fish it out", "before I could stop". */
const stuck = /\b(?:no way to|cant|couldnt|could not|cannot|impossible to|too late to|didnt) [^.!?]{0,30}/g;
/** By how much there may be more of it than was meant. */
const most = 1.7;

/** The list with what is in the pot of such a row. */
export function tooMuchIn(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    const isBoth = sentence.figures === 2 && meant.test(sentence.text);
    if (!(sentence.figures === 1 || isBoth) || sentence.names === 0) continue;
    const found = isBoth
      ? other.exec(sentence.text)
      : patterns.map((pattern) => pattern.exec(sentence.text)).find((match) => match !== null);
    const place = found?.indices?.groups?.['n']?.[0];
    if (place === undefined) continue;
    const next = sentences[k + 1];
    const behind = next?.paragraph === sentence.paragraph && next.figures + next.names < 2 ? next.text : '';
    const text = sentence.text.replace(stuck, '');
    if (open.test(isBoth ? text.replace(meant, '') : text) || open.test(behind.replace(stuck, '').replace('?', '')))
      continue;
    const names = new Set<number>();
    for (let at = sentence.from; at < sentence.to; at++) if (isIngredient(tokens[at])) names.add(at);
    const rows = [...names].map((at) => rowOf(tokens, tokens[at], isBoth ? sentence.to : sentence.from));
    const [row] = rows;
    const figure = sentence.tokenAt(place);
    const was = tokens[row?.figure ?? -1];
    const is = tokens[figure];
    if (!row || rows.some((one) => one?.at !== row.at) || !isPlain(was) || !isPlain(is)) continue;
    const [before, after] = [weightAt(tokens, row.figure, figure), weightAt(tokens, figure, figure)];
    if (!(after > before && after < most * before)) continue;
    const out = [...tokens];
    hush(out, sentence.from, sentence.to, 'said of a row of the list', (at) => at === row.at || at === row.figure);
    out[row.figure] = { ...was, quantity: { ...is.quantity, numbers: was.quantity.numbers } };
    const name = tokens[row.at];
    const note = `I took ${written(is.quantity)} of ${name?.t === 'name' ? name.text : 'it'}, not ${written(was.quantity)}, as the post says that so much is in the pot.`;
    const { from, to } = sentence;
    return { tokens: out, told: [{ text: note, gone: [was.quantity], from, to, settles: true }] };
  }
  return none;
}

/** "My mould takes 1000 g of oils but I'll only do 800 g this time": all the fats weigh so much, and not what fits in. */

import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isRole, spoken } from '../words/token-is.ts';
import { asAside, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('mould mold tin pan loaf tray'.split(' '));
const does = '(?:do|doing|make|making|want|use|using|fill|filling|need|did|made|used|took|take|go for|going for)';
const makePattern = () =>
  new RegExp(
    `\\b(?:mou?ld|tin|pan|loaf|tray|box) (?:[a-z]+ )?(?:takes|holds|fits|is for|would take|can take|would hold|is made for|needs) (?:about |up to |just )?(?<a>#) (?:of |in )?(?:oils?|fats?|oil and fat|fats and oils)\\b[^#@?.]{0,24}\\b(?:but|so|and|though|[,;–-]) (?:[a-z']+ ){0,3}?(?:i|we|im|ill|were|well|id|ive)(?: (?:am|are|will|only|just|really|want|plan|going|to|today|now|have|would|like))* ${does} (?:only |just |about )?(?<b>#)(?: (?:of (?:it|that|them|oils?|fats?)|this time|today|tonight|now|for now|in all|instead))*(?= ?(?:$|[,.;:!]))`,
    'd',
  );
let made: RegExp | null = null;
const open = /\b(?:if|maybe|perhaps|next|last|usually|normally|water|lye|each)\b/;

/** The list with the weight that is made. */
export function lessThanMould(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [] };
  const isCue = (token: Token): boolean => isRole(token, 'mould') || cues.has(spoken(token).toLowerCase());
  if (!cut.tokens.some(isCue)) return none;
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures < 2) continue;
    made ??= makePattern();
    const found = made.exec(sentence.text);
    const at = found?.indices?.groups;
    if (!found || !at?.['a'] || !at['b'] || open.test(found[0])) continue;
    const [a, b] = [sentence.tokenAt(at['a'][0]), sentence.tokenAt(at['b'][0])];
    const [whole, part] = [cut.tokens[a], cut.tokens[b]];
    if (!isPlain(whole) || !isPlain(part) || !(weightAt(cut.tokens, b, a) < whole.quantity.value)) continue;
    const out = [...cut.tokens];
    out[a] = { ...whole, quantity: part.quantity };
    out[b] = asAside({ ...part, quantity: whole.quantity }, 'what the mould takes');
    const text = `I took ${written(part.quantity)} of fats, not the ${written(whole.quantity)} that fit in.`;
    return { tokens: out, told: [{ text, gone: [], from: a, to: b + 1, settles: true }] };
  }
  return none;
}

/**
 * A slip that the next sentence tells of another batch: "once I forgot the castor and it was brittle. That was a different
 * batch, this one has it". Nothing of it changes the list.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { leastFats } from './beside-rules.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, rowsBefore } from './tale.ts';

/** Words of which one stands in each sentence that says so. */
const cues: ReadonlySet<string> = new Set('different another earlier older previous other last before not'.split(' '));

const batch = '(?:batch|pot|soap|loaf|recipe|bar|lot)';
const other = `(?:(?:a|an) (?:[a-z]+ )?(?:different|other|earlier|older|previous)|another|some other|the (?:previous|last|earlier|other)) ${batch}`;
const it = '(?:(?:that|it|this|those|all that) (?:was|were|is|happened)|thats|its)';
const makePattern = (): RegExp =>
  new RegExp(
    `^(?:(?:but|and|though|luckily|thankfully|oh|no|ok|well|mind you|[-,(]) )*(?:${it} (?:all |just |only )*(?:(?:in|with|of|from|on) )?(?:${other}|a (?:different|another) one|the ${batch} before|not (?:(?:in|with|of) )?this (?:one|${batch}))|not (?:(?:in|with|of) )?this (?:one|time|${batch})|(?:in |with )?${other}(?= , (?:though|mind|luckily|not this)| (?:though|mind you|not this)))(?= (?:$|[-,.;:!)]|though|and|but|this|here|not|from|in|ages|long|last|back|mind)| $)`,
  );
let made: RegExp | null = null;
/** It was so here, too, or is only thought of. */
const likewise =
  /\?|\b(?:too(?! (?:much|little|hot|cold|soft)\b)|as well|also|same|again|likewise|neither|would|could|might|will|next|than)\b/;
/** Something happened. */
const happened =
  /\b(?:forgot|forgotten|left|skipped|spilled|spilt|lost|swapped|replaced|subbed|dropped|omitted|missed|doubled|halved|used|took|put|poured|added|tipped|weighed|overpoured|misread|mixed|threw|binned|had|went|ran)\b/;
const here = /\b(?:this (?:time|one|batch|pot|soap|loaf)|today|tonight|here|now|just now)\b/;

const tellsOf = ({ names, figures }: Sentence): boolean => names + figures > 0;

/** The sentence of which it is said at `k`, no more than one that names nothing in between. */
function toldBefore(sentences: readonly Sentence[], k: number): Sentence | null {
  for (const before of [sentences[k - 1], sentences[k - 2]]) {
    if (!before || before.paragraph !== sentences[k]?.paragraph) return null;
    if (tellsOf(before)) return happened.test(before.text) && !here.test(before.text) ? before : null;
  }
  return null;
}

/** The tokens without the names and figures of such a slip. */
export function notThisBatch(cut: Cut): Heard {
  const { tokens } = cut;
  const tells = (token: Token): boolean => 'text' in token && cues.has(token.text.toLowerCase());
  if (!tokens.some(tells)) return { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const told: PutRight[] = [];
  let out: Token[] | null = null;
  for (const [k, sentence] of sentences.entries()) {
    if (!isAny(tokens, sentence.from, sentence.to, tells)) continue;
    made ??= makePattern();
    if (!made.test(sentence.text) || likewise.test(sentence.text)) continue;
    const slip = toldBefore(sentences, k);
    if (!slip || !hasList(tokens, slip)) continue;
    const { from, to } = slip;
    out ??= [...tokens];
    hush(out, from, to, 'of another batch');
    const gone = tokens.slice(from, to).flatMap((token) => (isPlain(token) ? [token.quantity] : []));
    told.push({ text: 'I left out what tells of another batch.', gone, from, to: sentence.to, settles: true });
  }
  return { tokens: out ?? tokens, told };
}

/** Fats are weighed outside of the sentence, and the alkali is. */
function hasList(tokens: readonly Token[], { from, to }: Sentence): boolean {
  const rows = rowsBefore(tokens, tokens.length).filter(({ at }) => at < from || at >= to);
  const isLye = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';
  return rows.filter(({ at }) => isFat(tokens[at])).length >= leastFats && rows.some(({ at }) => isLye(tokens[at]));
}

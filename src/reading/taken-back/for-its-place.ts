/** A fat that a recipe has, and another that its writer takes: "it calls for 300 g of lard, so I'd take palm in its place". */

import type { Sentence } from '../text/sentences.ts';
import { cue } from '../words/cue-words.ts';
import type { Change } from './changes.ts';

const its = '(?:in (?:its|that|the) place|in place of (?:it|that)|instead(?! of [@#])(?: of (?:it|that))?|for it)\\b';
const take =
  "\\b(?:i|we) ?(?:'?d |'?ll |'?m |'?re |am |are |would |will |have |ve )*(?:going to |just |simply |then |rather |now )*(?:use|used|using|take|took|taking|put|have|had|go for|go with)(?: in)?";
const some = '(?:(?:the|some|my|as much|same|weight|amount|quantity|of) )*';
const patterns = [`${take} ${some}(?<comes>@) (?:, )?${its}`, `\\b${its} (?:, )?${take} ${some}(?<comes>@)`];
let made: readonly RegExp[] | null = null;

/** Nobody has decided on it. */
const open =
  /\?|\b(?:if|could|can|might|may|maybe|perhaps|or|next time|some day|one day|thinking|wondering|tempted|half|part|third|quarter)\b/;

/** The swap that a sentence tells, of the weight named before in it, or of the only one in the sentence before. */
export function forItsPlace(sentences: readonly Sentence[], k: number): Change | null {
  const sentence = sentences[k];
  if (!sentence?.retells || (sentence.cues & cue.shared) === 0 || sentence.names === 0) return null;
  const { text } = sentence;
  if (!/\b(?:place|instead|for it)\b/.test(text) || open.test(text)) return null;
  made ??= patterns.map((pattern) => new RegExp(pattern, 'd'));
  for (const pattern of made) {
    const found = pattern.exec(text);
    const [at] = found?.indices?.groups?.['comes'] ?? [];
    if (!found || at === undefined) continue;
    // "500 g of lard, and I use palm for it": for the soap, as likely
    if (/ for it$/.test(found[0]) && !/\b(?:same|as much)\b/.test(text)) continue;
    const ahead = text.slice(0, found.index);
    const before = ahead.includes('@') ? sentence : sentences[k - 1];
    const of = before === sentence ? ahead : (before?.text ?? '');
    // one fat and its weight
    if (!before || !/^[^@#]*(?:# (?:of )?@|@ (?:[-:=,(] |is |at )?#)[^@#]*$/.test(of)) return null;
    return {
      kind: 'swap',
      gone: before.tokenAt(of.indexOf('@')),
      comes: sentence.tokenAt(at),
      eitherWay: false,
      its: true,
    };
  }
  return null;
}

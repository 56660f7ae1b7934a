/**
 * "I'd put lard in for all of her palm, gram for gram", "I don't buy palm. Tallow in its place, one to one": a swap whose
 * weight is settled, and which is decided on however it is put.
 */
import type { Sentence } from '../text/sentences.ts';
import { cue, relations } from '../words/cue-words.ts';
import type { Change } from './changes.ts';

const alike =
  '(?:(?:gram|ounce|weight|one|like|pound|kilo|measure) (?:for|by|to) (?:gram|ounce|weight|one|like|pound|kilo|measure)|# (?:for|to|:) #|…|(?:at |in |by |with )?(?:the |its |exactly )*same (?:weight|amount|quantity)(?! of\\b))';
const some = "(?:(?:all|of|the|some|my|our|her|his|its|their|this|that|[a-z]+'?s) )*";
const comes = `${some}(?<comes>@)`;
const gone = `${some}(?<gone>@)`;
const its = '(?:in (?:its|that|the) place|in place of (?:it|that)|instead|for it|for that)';
const forIt = '(?:in )?(?:for|in place of|in the place of|instead of|in lieu of)';
const both = [
  `${comes} (?:goes |comes |went |is going )?${forIt} ${gone} (?:[,(–-] )?${alike}`,
  `\\b(?:swap|swapped|swapping|replace|replaced|replacing|exchange|exchanged|substitute|substituted|switch|switched|trade|traded) (?:out )?${gone} (?:for|with|by) ${comes} (?:[,(–-] )?${alike}`,
].map((pattern) => new RegExp(pattern, 'd'));
/** Behind a sentence that turns the other down. */
const only = [
  `${comes} (?:(?:goes|comes|in|is|will|go|used) )*${its} (?:[,(–-] )?${alike}`,
  `\\b(?:put|use|take|swap|replace|substitute|switch|using|taking|put in)(?: in)? (?:it |that |all of it |all of that )?(?:for |with |by )?${comes} (?:${its} )?(?:[,(–-] )?${alike}`,
].map((pattern) => new RegExp(pattern, 'd'));
const alikeSaid = new RegExp(alike);

/** "I don't buy palm." */
const averse =
  /^(?:(?:sorry|but|and|so|,) )*(?:i|we) (?:(?:just|really|simply|personally) )*(?:dont|do not|wont|will not|never|cant|cannot) (?:ever )?(?:use|like|do|want|eat|touch|buy|keep|trust|stand|have|get|stock) (?:any |the )?(?<gone>@) (?:at all |any more |anymore |here |in my house )*[.,;!]? ?$/d;

const open =
  /\?|\b(?:if|could|can|might|may|maybe|perhaps|next time|last (?:time|week|month|year|batch)|some ?day|one day|thinking|wondering|tempted|considered|nearly|almost|half|part|third|quarter|she|he|they|people|not|dont|didnt|never|used to)\b/;

/** Somebody else does it. */
const strangers = new RegExp(
  `\\b(?:${relations.replaceAll(' ', '|')}|you|everybody|everyone|somebody|someone|book|recipe|card) (?!i\\b|we\\b|so\\b)[a-z]+`,
);

/** The token of what a sentence turns down for good, where it speaks of nothing else; null elsewhere. */
export function turnedDownAt(sentence: Sentence | undefined): number | null {
  if (sentence?.names !== 1 || sentence.figures > 0) return null;
  const at = averse.exec(sentence.text)?.indices?.groups?.['gone']?.[0];
  return at === undefined ? null : sentence.tokenAt(at);
}

/** The swap that a sentence tells so. */
export function weightForWeight(sentences: readonly Sentence[], k: number): Change | null {
  const sentence = sentences[k];
  if (!sentence || sentence.names === 0 || sentence.names > 2) return null;
  if ((sentence.cues & (cue.shared | cue.changes | cue.forWith)) === 0 || !alikeSaid.test(sentence.text)) return null;
  const averted = /^(?:(?!\bso\b).)*\b(?:dont|wont|never) [a-z]+ @ (?:, )?so /.exec(sentence.text)?.[0] ?? '';
  if (open.test(sentence.text.slice(averted.length)) || strangers.test(sentence.text)) return null;
  const place = (found: RegExpExecArray, name: 'gone' | 'comes'): number =>
    sentence.tokenAt(found.indices?.groups?.[name]?.[0] ?? 0);
  for (const pattern of sentence.names === 2 ? both : []) {
    const found = pattern.exec(sentence.text);
    if (found) return { kind: 'swap', gone: place(found, 'gone'), comes: place(found, 'comes'), eitherWay: false };
  }
  const goes = sentence.names === 1 ? turnedDownAt(sentences[k - 1]) : null;
  for (const pattern of goes === null ? [] : only) {
    const found = pattern.exec(sentence.text);
    if (found) return { kind: 'swap', gone: goes, comes: place(found, 'comes'), eitherWay: false };
  }
  return null;
}

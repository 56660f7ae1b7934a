/** A fat that was planned, and another that went in: "it was going to be 200 g sunflower, but there was none, so …". */

import type { Sentence } from '../text/sentences.ts';
import { cue } from '../words/cue-words.ts';
import type { Change } from './changes.ts';

const weighed = '(?:about )?#(?: of)?(?: the| my)? (?<gone>@)|(?<named>@) (?:, )?(?:at |with )?#';
const verb = '(?:use|take|put in|put|add|have|make it|do|weigh(?: out| in)?|go for)';
const plan =
  `(?:(?:was|were) (?:going|meant|supposed|planned|intended) to (?:be|${verb})|(?:was|were) to be|(?:was|were) gonna (?:be|${verb})|(?:(?:should|would) (?:really |actually )?(?:have|ve|of)|wouldve|shouldve) (?:been|had|used|taken)|supposed to be|` +
  `plan(?: was| had been| said)?(?: to (?:be|${verb}))?|planned(?: on| to ${verb}| for)?|(?:meant|wanted|intended|hoped|thought)(?: to ${verb})?)`;
/** "It was going to be 200 g of sunflower". */
const ahead = new RegExp(`\\b${plan} (?:: )?(?:on |for |with )?(?:${weighed})`, 'd');
/** "200 g of sunflower it should have been". */
const behind = new RegExp(
  `(?:${weighed}) (?:, )?(?:(?:it|that|this|which|as|is what i|what) )?(?:was |were )?(?:the |my )?${plan} (?=[,.;:–-]|but|only|and)`,
  'd',
);
/** What sets the deed against the plan. */
const against =
  /(?:[,;.–-] |^)(?:and )?(?:then )?(?:but|so|only|however|except|now|instead|until|ended up|its|it is|in the end)\b|\b(?:but|so|until|ended up|instead|in the end|only that)\b/g;
const took = '(?:its|it is|is|was|took|take|used|use|using|put in|with|went with|became|be|had to be|got|grabbed|by)';
const came = new RegExp(
  `# (?:of )?(?:the |my |some )?(?<comes>@)|(?<named>@) (?:, )?#|\\b${took} (?:now |some |the |my )*(?<bare>@)`,
  'd',
);
/** "150 g of it and 50 g of". */
const kept = /[#…] of (?:it|that|them)\b/;
/** It stays beside what came. */
const besides = /\b(?:also|too|as well|extra|plus|on top|added|adding|both|besides)\b/;

/** Sentences behind the plan in which the deed may stand. */
const mostSentences = 2;

/** The swap that a sentence begins to tell as a plan; a part of it where more of the plan stays; null where none. */
export function plannedIn(sentences: readonly Sentence[], k: number): Change | null {
  const sentence = sentences[k];
  if (!sentence?.retells || sentence.names === 0 || sentence.figures === 0) return null;
  const wasToBe = (sentence.cues & cue.wasOf) !== 0 && sentence.text.includes(' to be ');
  if (!(wasToBe || sentence.cues & cue.plan) || sentence.text.includes('?')) return null;
  const hit = ahead.exec(sentence.text) ?? behind.exec(sentence.text);
  const [goneAt] = hit?.indices?.groups?.['gone'] ?? hit?.indices?.groups?.['named'] ?? [];
  if (!hit || goneAt === undefined) return null;
  const gone = sentence.tokenAt(goneAt);
  for (let n = k; n < sentences.length && n - k <= mostSentences; n++) {
    const one = sentences[n];
    if (!one || one.text.includes('?')) return null;
    const since = n === k ? hit.index + hit[0].length : 0;
    const rest = one.text.slice(since);
    against.lastIndex = 0;
    const turn = against.exec(rest);
    // "200 g of sunflower and 100 g of palm, but"
    if (n === k && rest.slice(0, turn?.index).includes('@')) return null;
    if (!turn) {
      if (/[#@]/.test(rest)) return null;
      continue;
    }
    const deed = rest.slice(turn.index);
    const found = came.exec(deed);
    if (!found) {
      if (/[#]/.test(deed)) return null;
      continue;
    }
    if (besides.test(deed.slice(0, found.index + found[0].length))) return null;
    const groups = found.indices?.groups;
    const [at] = groups?.['comes'] ?? groups?.['named'] ?? groups?.['bare'] ?? [];
    if (at === undefined) return null;
    const comes = one.tokenAt(since + turn.index + at);
    return kept.test(deed.slice(0, found.index))
      ? { kind: 'part', gone, comes }
      : { kind: 'swap', gone, comes, eitherWay: false };
  }
  return null;
}

/**
 * "600 g water for the paste, later I'll dilute with about 1.5 litres but that hasn't happened yet": what a paste is to be
 * thinned with is none of the water of the lye, and the words that tell of it tell of no other time for what stands beside.
 */
import { once } from '../once.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny, isMark, isMeasured, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import { apart, rowsBefore } from './tale.ts';

const cues: ReadonlySet<string> = new Set('dilute diluted diluting dilution thin thinned thinning'.split(' '));
const when =
  '(?:(?:later|then|afterwards|after that|tomorrow|next week|in the end|at the end|once cooked|when (?:its|it is) (?:cooked|done|ready)) (?:on )?)?';
const shall =
  '(?:(?:i|we|it|that|this) )?(?:ill|well|itll|will|shall|want to|plan to|am going to|im going to|is going to|going to|gonna|intend to|have to|is to be|will be|gets|be|would like to|id like to) (?:(?:then|later|be|only|still|have to) )*';
const patterns = once(() =>
  [
    `${when}${shall}(?:dilute|thin)(?:d|ned)? (?:(?:it|this|that|the|paste|soap|down|out|all|later|then|on|tomorrow) )*(?:with|by|in) (?:(?:about|around|some|another|maybe|roughly|ca|approx|approximately|the) )*(?<n>#)(?: (?:of )?(?:hot |more |warm |distilled |extra )*(?:@ )?)?(?:(?:later|more|afterwards|tomorrow|then) )*`,
    `(?:for|the) (?:later )?(?:diluting|dilution|thinning)(?: (?:it|later|afterwards))? (?:[(,:] ?)?(?:(?:is|comes|about|around|another|will be|i want|i plan|there will be|later) )*(?<n>#)(?: (?:of )?@)?`,
  ].map((pattern) => new RegExp(`\\b${pattern}`, 'd')),
);
const past = /\b(?:was|were|already|did|have diluted|had)\b/;

/** The tokens without what the finished paste is to be thinned with. */
export function thinnedLater(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  const tells = (token: Token): boolean => cues.has(spoken(token));
  if (!tokens.some(tells)) return tokens;
  const isOther = ({ id, figure }: Weighed, own: number): boolean => id === 'water' && figure !== own;
  let out: Token[] | null = null;
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures === 0 || !isAny(tokens, sentence.from, sentence.to, tells)) continue;
    for (const pattern of patterns()) {
      const found = pattern.exec(sentence.text);
      const place = found?.indices?.groups?.['n']?.[0];
      if (!found || place === undefined || past.test(found[0])) continue;
      const figure = sentence.tokenAt(place);
      const weight = tokens[figure];
      const other = rowsBefore(tokens, tokens.length).find((row) => isOther(row, figure));
      if (!isMeasured(weight) || !other) continue;
      out ??= [...tokens];
      let to = sentence.tokenAt(found.index + found[0].trimEnd().length - 1) + 1;
      // "but that hasn't happened yet"
      while (to < sentence.to && tokens[to]?.t === 'word' && !isMark(tokens[to], ',')) to++;
      for (let at = sentence.tokenAt(found.index); at < to; at++)
        if (at !== figure) out[at] = asFiller(tokens[at] as Token);
      apart(out, figure, 'for a test or a dilution', other.figure);
      break;
    }
  }
  return out ?? tokens;
}

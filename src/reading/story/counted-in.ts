/**
 * So much of a fat of the list that a colour or a clay was stirred into: "made from 20 g taken out of the 350 olive, so
 * it's counted already". It counts with the weight that it was taken from.
 */
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { hush, isSum, rowOf, type Told, weightAt } from './tale.ts';

/** Words of which one stands in each note that does so. */
const cues: ReadonlySet<string> = new Set('counted included count total top extra already'.split(' '));
const counted =
  /\b(?:(?:already |all |still |been )*(?:counted|included)|in(?:side)? the (?:count|total|sum|weight|figure|list)|(?:already|still) (?:in|part of)|not (?:on top|extra|in addition|added|additional|counted (?:twice|again))|no extra)\b/;
const open = /\?|\b(?:not (?:been )?(?:counted|included)|never|isnt|if|should|would|left out|threw|binned)\b/;

const taken =
  '(?:(?:, |which |that |i |was |is |are |were |comes?|came|taken|took|drawn|borrowed|poured|spooned|ladled|scooped|kept|held|stolen|spared|part|off|out) ?)*';
const patterns: readonly string[] = [
  `(?<a>#) (?:of )?${taken}(?:out of|from|of|off) (?:the |my |our )?(?<w>#) (?:of )?(?:the |my )?(?<f>@)`,
  `(?<a>#) (?:of )?(?:the |my )?(?<f>@) ${taken}(?:out of|from|off|of) (?:the |my |our |those |its )?(?<w>#)`,
];
let made: readonly RegExp[] | null = null;

/** The tokens in which such a part is no weight of its own. */
export function countedIn(cut: Cut): readonly Token[] {
  const tells = (token: Token): boolean => token.t === 'word' && cues.has(token.text);
  if (!cut.tokens.some(tells)) return cut.tokens;
  let out: Token[] | null = null;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures < 2 || sentence.names === 0) continue;
    // "annatto in 20 g of the 350 olive (already counted)", "…; it is included"
    const next = sentences[k + 1];
    const end = next && /^(?:[([]|(?:so |and )?(?:it|that|this|which) )/.test(next.text) ? next.to : sentence.to;
    if (!isAny(cut.tokens, sentence.from, end, tells)) continue;
    const text = sentence.text + (end > sentence.to ? (next?.text ?? '') : '');
    if (!counted.test(text) || open.test(text)) continue;
    made ??= patterns.map((pattern) => new RegExp(pattern, 'd'));
    for (const pattern of made) {
      const groups = pattern.exec(sentence.text)?.indices?.groups;
      if (!groups) continue;
      const at: Told = (group) => sentence.tokenAt(groups[group]?.[0] ?? 0);
      const row = rowOf(cut.tokens, cut.tokens[at('f')], sentence.from);
      if (!row || sentence.figures > 2) continue;
      const whole = weightAt(cut.tokens, row.figure, row.figure);
      // a list without units has them in its notes
      const isWhole = weightAt(cut.tokens, at('a'), row.figure) >= whole;
      if (isWhole || !isSum(whole, weightAt(cut.tokens, at('w'), row.figure))) continue;
      out ??= [...cut.tokens];
      hush(out, sentence.from, end, 'counted with what it was taken from');
      break;
    }
  }
  return out ?? cut.tokens;
}

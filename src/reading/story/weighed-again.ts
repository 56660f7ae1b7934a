/** "118 g on one scale, 118 on the other", "230 g, then 230 again": a weight that was checked is said once more. */
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { isSum, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('again scale scales one other both times'.split(' '));
const again =
  /(?<w>#) (?:(?:on|by|with|says|said) (?:(?:the|my|one|first|[a-z]+) ){0,3}(?:scales? )?)?(?:, |; |and |then |also )+(?<a>#) (?:(?:once )?again|on the (?:[a-z]+ ){0,2}(?:one|scales?|other)|(?:the )?second time|both times|as well)\b/dg;

/** The tokens without the figures that say so. */
export function weighedAgain(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  const tells = (token: Token): boolean => 'text' in token && cues.has(token.text.toLowerCase());
  let out: Token[] | null = null;
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures < 2 || !isAny(tokens, sentence.from, sentence.to, tells)) continue;
    for (const { indices } of sentence.text.matchAll(again)) {
      const [was, now] = ['w', 'a'].map((group) => sentence.tokenAt(indices?.groups?.[group]?.[0] ?? 0));
      if (was === undefined || now === undefined) continue;
      if (!isSum(weightAt(tokens, was, was), weightAt(tokens, now, was))) continue;
      out ??= [...tokens];
      out[now] = asAside(tokens[now] as Figure, 'said before');
    }
  }
  return out ?? tokens;
}

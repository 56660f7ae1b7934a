/**
 * "180 g olive oil were left in the old bottle, I tipped that in and topped it up to 500 g from the new one": so much of
 * it in all, out of two bottles.
 */
import type { PutRight } from '../taken-back/put-right.ts';
import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { hush, isPlain, isSum, rowsOf, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('topped filled made brought'.split(' '));
const fresh =
  '(?:the |a |my |that |another )*(?:new|newer|next|second|other|fresh|full|unopened|big|another)(?: (?:one|bottle|can|canister|jar|tub|tin|pack|packet|bag|block|box|jug))?';
const makePattern = () =>
  new RegExp(
    `(?<a>#) (?:of )?(?:the |my )?(?<f>@) [^@#;]{0,80}?\\b(?:topped|filled|made|brought) (?:(?:it|that|this|them|the lot|the bowl) )?(?:up )?(?:(?:(?:with|from|out of) ${fresh} )to (?<w>#)|to (?<v>#) (?:with|from|out of) ${fresh})(?! @)`,
    'd',
  );
let made: RegExp | null = null;
const open = /\b(?:if|would|should|could|might|maybe|perhaps|next|last time|nearly|almost|not|she|he|they)\b/;

/** The list with the whole of it. */
export function madeUpTo(cut: Cut): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } {
  const none = { tokens: cut.tokens, told: [] };
  if (!cut.tokens.some((token) => token.t === 'word' && cues.has(token.text))) return none;
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    const { text, from, to } = sentence;
    if (sentence.figures < 2 || sentence.names === 0) continue;
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

/**
 * How pure the alkali of another pack was: "160 g KOH, 85 % – sorry, 85 was the old bag; the one I used says 90 %". Only the
 * pack that was used counts.
 */

import { written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';

const pack = '(?:bag|tub|tin|bottle|jar|pack|packet|bucket|box|batch|lot|one|can|stuff|label)';
const old = new RegExp(
  `\\b(?:old|last|previous|former|earlier|other|first|finished|empty) ${pack}\\b|\\b(?:last|previous) (?:year|time|month|week|autumn|spring|summer|winter)s?\\b|\\b(?:old|last|previous|former) (?:supplier|shop|seller|brand)s?\\b|\\b(?:is |was |been )?(?:used up|finished|empty)\\b`,
);
/** Its weight is told with it. */
const taken = /\b(?:of|from) which\b|\band (?:i|we) (?:took|used|weighed)\b/;
/** Purer than this, and no solution. */
const least = 0.7;

const isShare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' &&
  token.quantity.dim === 'percent' &&
  token.quantity.upTo === null &&
  token.quantity.value >= least &&
  token.quantity.value <= 1;

interface Mention {
  readonly k: number;
  readonly value: number;
  readonly isOld: boolean;
}

/** What is said of each such share, up to the next one; a figure without its sign is one that stood before. */
function mentionsIn(tokens: readonly Token[], sentences: readonly Sentence[]): readonly Mention[] {
  const shares = new Set(tokens.flatMap((token) => (isShare(token) ? [token.quantity.value] : [])));
  if (shares.size !== 2) return [];
  const valueAt = (k: number): number => {
    const token = tokens[k];
    if (token?.t !== 'quantity') return Number.NaN;
    const { dim, value } = token.quantity;
    if (dim === 'percent') return shares.has(value) ? value : Number.NaN;
    const bare = dim === 'bare' ? value / 100 : Number.NaN;
    return shares.has(bare) ? bare : Number.NaN;
  };
  const found = sentences.flatMap(({ from, to }) =>
    Array.from({ length: to - from }, (_, n) => from + n).filter((k) => !Number.isNaN(valueAt(k))),
  );
  return found.map((k) => {
    const n = sentences.findIndex(({ from, to }) => k >= from && k < to);
    const sentence = sentences[n];
    const text = sentence?.text ?? '';
    const others = found.filter((at) => at !== k && sentence !== undefined && at >= sentence.from && at < sentence.to);
    const [before, behind] = [
      Math.max(0, ...others.filter((at) => at < k)),
      Math.min(...others.filter((at) => at > k)),
    ];
    const place = (at: number): number => sentence?.placeOf(at) ?? 0;
    const own = text.slice(before > 0 ? place(before) : 0, Number.isFinite(behind) ? place(behind) : text.length);
    // "85 %. Sorry, that was the old bag"
    const next = sentences[n + 1];
    const said =
      others.length === 0 && next && !/#/.test(next.text) && pointing.test(next.text) ? `${own} ${next.text}` : own;
    return { k, value: valueAt(k), isOld: old.test(said) && !taken.test(own) };
  });
}
const pointing = /^(?:(?:no|sorry|oh|wait|oops|hang on|,) )*(?:that|it|this)\b/;

/** The tokens in which the pack that was used has the say. */
export function otherPack(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (tokens.filter(isShare).length < 2 || !tokens.some((one) => isIngredient(one) && one.meaning.kind === 'alkali'))
    return none;
  const mentions = mentionsIn(tokens, sentencesOf(cut));
  const gone = new Set(mentions.flatMap(({ isOld, value }) => (isOld ? [value] : [])));
  const [was] = gone;
  const stays = mentions.filter(({ value }) => value !== was);
  const [now] = stays;
  if (gone.size !== 1 || !now || stays.some(({ isOld }) => isOld)) return none;
  const first = mentions.find(({ k, value }) => value === was && isShare(tokens[k]));
  const kept = stays.find(({ k }) => isShare(tokens[k]));
  const [one, other] = [tokens[first?.k ?? -1], tokens[kept?.k ?? -1]];
  if (!first || !kept || !isShare(one) || !isShare(other)) return none;
  const out = [...tokens];
  for (const { k, value } of mentions) if (value === was) out[k] = asAside(tokens[k] as Figure, 'of another pack');
  // what stood beside the alkali gives its place
  if (first.k < kept.k) {
    out[first.k] = { ...one, quantity: other.quantity };
    out[kept.k] = asAside({ ...other, quantity: one.quantity }, 'of another pack');
  }
  const places = mentions.map(({ k }) => k);
  const text = `I took the alkali as ${written(other.quantity)}, not ${written(one.quantity)}, which is of another pack.`;
  const told = {
    text,
    gone: [one.quantity],
    from: Math.min(...places),
    to: Math.max(...places) + 1,
    settles: true,
  } as const;
  return { tokens: out, told: [told] };
}

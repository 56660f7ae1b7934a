/** Signs on an answer that its asker can set, as the buttons of other platforms. */
import type { Answer, Fault } from '../../src/index.ts';

export type Sign =
  | { readonly kind: 'details' | 'next' | 'share' }
  | { readonly kind: 'offer'; readonly number: number };

/** Beside these a digit's key, 1️⃣ to 9️⃣, takes what the answer offers in that place. */
const signs: ReadonlyMap<string, Sign> = new Map([
  ['🔍', { kind: 'details' }],
  ['🔎', { kind: 'details' }],
  ['➡', { kind: 'next' }],
  ['📣', { kind: 'share' }],
  ['📢', { kind: 'share' }],
]);

/** null where the sign is none of ours: a heart is a heart. */
export function signOf(key: string): Sign | null {
  const bare = key.replace(/[\ufe0e\ufe0f]|\p{Emoji_Modifier}/gu, '');
  const digit = /^([1-9])\u20e3$/.exec(bare);
  return digit ? { kind: 'offer', number: Number(digit[1]) } : (signs.get(bare) ?? null);
}

/** What the answer offers to ask next, or how its question can be answered, in the order in which it says so. */
export const offersOf = (said: Answer | Fault): readonly string[] =>
  'lead' in said ? said.actions.map(({ request }) => request) : said.candidates;

/** The request that a sign stands for; null where there is none such. */
export function requestFor(sign: Sign, offers: readonly string[]): string | null {
  switch (sign.kind) {
    case 'details':
      return 'details';
    case 'next':
      return offers.find((one) => one !== 'details') ?? null;
    case 'share':
      return 'summary';
    case 'offer':
      return offers[sign.number - 1] ?? null;
  }
}

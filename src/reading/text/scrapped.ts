/**
 * A bracket that tells what stood in an earlier post, and takes it back: "(It was 40 olive and 15 sunflower in what I posted
 * last week, scrap that.)" is none of this one.
 */
import type { Aside } from './book-columns.ts';

const bracket = /\(([^()\n]{8,160})\)/g;
const backs =
  /\b(?:scrap|ignore|forget|disregard|never ?mind)(?: about)? (?:that|it|this|them|those|all (?:of )?that)(?: one| now| please)?[.!]? *$/i;
const earlier =
  /\b(?:last (?:week|month|night|time|year)|yesterday|earlier|previous(?:ly)?|(?:first|old|other) (?:post|version|message)|(?:i|we) (?:had )?(?:posted|wrote|said))\b/i;
/** Something of it is of now. */
const now = /\b(?:now|today|instead|this time|but (?:i|we)|so (?:i|we|it))\b/i;

/** The post without such brackets. */
export function withoutScrapped(post: string): { readonly text: string; readonly told: readonly Aside[] } {
  if (!/scrap|ignore|forget|disregard|mind/i.test(post)) return { text: post, told: [] };
  const told: Aside[] = [];
  const text = post.replace(bracket, (all: string, inner: string) => {
    if (!backs.test(inner) || !earlier.test(inner) || now.test(inner)) return all;
    told.push({ text: inner.trim(), why: 'it stood in an earlier post, and is taken back' });
    return ' ';
  });
  return told.length > 0 ? { text, told } : { text: post, told };
}

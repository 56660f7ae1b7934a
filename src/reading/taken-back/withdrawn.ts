/** A post of which some figures count no longer. */
import type { Item } from '../rows/items.ts';
import type { Sentence } from '../text/sentences.ts';
import type { Quantity } from '../words/quantities.ts';
import { type PutRight, written } from './put-right.ts';
import { isOther, type Said, type Tellings } from './said.ts';

/** A post while its second thoughts are gone through. */
export interface Post {
  readonly sentences: readonly Sentence[];
  readonly items: readonly Item[];
  said: readonly Said[];
  readonly tellings: Tellings;
  /** Names and figures that belong together. */
  readonly bound: ReadonlySet<Item>;
  /** Kinds of alkali that it names. */
  readonly alkalis: number;
  readonly gone: Set<Item>;
  readonly instead: Map<Item, Item>;
  /** Weights that became less, by where that is said. */
  readonly lessened: { readonly at: number; readonly by: Quantity }[];
  /** A weight that a name gets which had none. */
  readonly given: Map<Item, Item>;
  readonly back: PutRight[];
  unclear: string | null;
  /** What was taken out last, and in which sentence. */
  last: { readonly key: string; readonly sentence: number } | null;
  /** What was thrown away. */
  readonly binned: { readonly key: string; readonly sentence: number; readonly thing: Item | null }[];
}

export function drop(post: Post, { thing, amount, beside, pointing, telling }: Said): void {
  if (!pointing) post.gone.add(thing);
  post.gone.add(amount);
  if (isOther(telling)) for (const one of beside) post.gone.add(one);
}

export const figures = (list: readonly Said[]): Quantity[] =>
  list.flatMap(({ amount, beside, telling }) => [
    amount.quantity,
    ...(amount.same ? [amount.same] : []),
    ...(isOther(telling) ? beside.map(({ quantity }) => quantity) : []),
  ]);

export function dropAll(post: Post, list: readonly Said[], kept: readonly Said[]): void {
  for (const one of list) drop(post, one);
  const said = list.map(({ amount, thing }) => `${thing.named.text} ${written(amount.quantity)}`).join(', ');
  const from = kept[0]?.thing.from ?? 0;
  post.back.push({
    text: `I left out "${said}", ${elsewhere}.`,
    gone: figures(list),
    from,
    to: from + 1,
  });
}

export const elsewhere = 'which the post tells of another time or batch';

/** The two kinds of items, told apart by their types too. */
import type { Item } from './items.ts';

export type Amount = Extract<Item, { kind: 'amount' }>;

export type Thing = Extract<Item, { kind: 'thing' }>;

export const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';

export const isThing = (item: Item | undefined): item is Thing => item?.kind === 'thing';

/** What a share may be of: "I want", "make it", "for the pans" stand between two superfats, and nothing else is spoken of. */
export const mayShare = ({ named: { meaning } }: Thing): boolean =>
  meaning.kind === 'role' ? ofShares.has(meaning.id) : meaning.kind !== 'unknown';
const ofShares: ReadonlySet<string> = new Set([
  'superfat',
  'concentration',
  'solution',
  'purity',
  'ratio',
  'total-fats',
  'scale',
]);

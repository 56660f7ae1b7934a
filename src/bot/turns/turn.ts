/** What a text that follows another comes to. */
import type { Fault } from '../../answer/types.ts';
import type { Taken } from '../../commands/define.ts';
import type { Settled } from '../../reading/amend/settle.ts';
import type { RecipeReading } from '../../reading/index.ts';
import type { Pending } from './store.ts';

/** A request made of a text and of what went before. */
export interface Turn {
  readonly command: string;
  readonly text: string;
  readonly options: Taken['options'];
  /** Reads posts in the place of the reader; null where the text is read as it stands. */
  readonly read: ((text: string) => RecipeReading) | null;
  readonly settled: Settled | null;
  /** What of the conversation it rests on; null where the command says so itself. */
  readonly told: string | null;
  /** The command may give way to another, seen from the text. */
  readonly mayTurn: boolean;
  /** Scales what the last scaling started from. */
  readonly fromBase: boolean;
}

export type Follow =
  | { readonly kind: 'turn'; readonly turn: Turn }
  /** The last question, worded anew. */
  | { readonly kind: 'again'; readonly text: string; readonly told: string }
  | { readonly kind: 'ask'; readonly fault: Fault; readonly pending: Omit<Pending, 'at'> };

export const noOptions: Taken['options'] = {};
export const plain = { read: null, settled: null, told: null, mayTurn: false, fromBase: false } as const;

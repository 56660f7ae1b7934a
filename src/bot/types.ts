import type { Answer, Fault } from '../answer/types.ts';
import type { Later } from '../commands/define.ts';

/** One thing said by one person in one place; the context of follow-up turns is kept per (platform, place, person). */
export interface Asked {
  readonly platform: string;
  readonly place: string;
  readonly person: string;
  readonly text: string;
  /** How the adapter finds the way back to here for something told later; `place` where nothing is said. */
  readonly address?: string;
  /** Whether something can be told here later; where nothing is said, it can. */
  readonly later?: Later;
  /** The asker may set what holds for the whole place. */
  readonly isHost?: boolean;
  /** Nobody but the asker sees the answer. */
  readonly isPrivate?: boolean;
}

export type Reply = { readonly id: string } & (
  | { readonly ok: true; readonly answer: Answer }
  | { readonly ok: false; readonly fault: Fault }
);

export interface Bot {
  /** Never rejects; a bug becomes a fault with the code `failed` and the request id. */
  readonly ask: (asked: Asked) => Promise<Reply>;
  /** Command and fat names that continue what is typed, for completion. */
  readonly complete: (typed: string) => readonly string[];
  /** Lets go of what is kept, once what is being answered is answered. */
  readonly close: () => Promise<void>;
}

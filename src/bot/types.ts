import type { Answer, Fault } from '../answer/types.ts';
import type { Later } from '../commands/define.ts';
import type { Where } from './rooms.ts';

/** One thing said by one person in one place; the context of follow-up turns is kept per (platform, place, person). */
export interface Asked {
  readonly platform: string;
  readonly place: string;
  readonly person: string;
  readonly text: string;
  /** The server, or the like, that the place belongs to, where the platform has such. */
  readonly community?: string;
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
  /** The assistant was removed from a place or a community: its room data goes after a grace of some weeks. */
  readonly left: (where: Where) => Promise<void>;
  /** It is there, again or still: nothing goes. */
  readonly joined: (where: Where) => Promise<void>;
  /** Lets go of what is kept, once what is being answered is answered. */
  readonly close: () => Promise<void>;
}

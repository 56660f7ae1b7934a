import type { Answer, Fault } from '../answer/types.ts';
import type { Later } from '../commands/define.ts';
import type { Where } from './rooms.ts';

/** One thing said by one person in one place; the context of follow-up turns is kept per (platform, place, person). */
export interface Asked {
  readonly platform: string;
  readonly place: string;
  /** What the place is a thread of, and whose settings hold in it; the place itself where nothing is said. */
  readonly room?: string;
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

export type Reply = {
  readonly id: string;
  /** It kept something or looked it up: its words must never be said again. `again` leads to its recipe instead. */
  readonly kept?: { readonly again: string | null };
} & ({ readonly ok: true; readonly answer: Answer } | { readonly ok: false; readonly fault: Fault });

/** One thing to tell one person. */
export interface Ring {
  readonly platform: string;
  readonly place: string;
  /** Who is told; nobody else is mentioned. */
  readonly person: string;
  /** The adapter's own way back. */
  readonly address: string;
  /** The same for every try of the same telling: 25 letters and figures. */
  readonly id: string;
  /** Above 1: an earlier try may have come through. */
  readonly attempt: number;
  readonly dueAt: number;
  readonly answer: Answer;
}

/** Rejects where it could not be told now: it is tried again, later and later. */
export type Teller = (ring: Ring) => Promise<void>;

export interface Bot {
  /** Never rejects; a bug becomes a fault with the code `failed` and the request id. */
  readonly ask: (asked: Asked) => Promise<Reply>;
  /** Reads what every answer needs, before anybody waits for it. */
  readonly prepare: () => void;
  /** Command and fat names that continue what is typed, for completion. */
  readonly complete: (typed: string) => readonly string[];
  /**
   * Tells people what is due on these platforms, until the signal; resolves when the last one is told. `atOnce`: opens
   * the store now; else only when something is kept.
   */
  readonly ring: (ask: {
    readonly platforms: readonly string[];
    readonly tell: Teller;
    readonly signal: AbortSignal;
    readonly atOnce: boolean;
    /** 1; less makes every wait as much shorter, for tests. */
    readonly pace?: number;
  }) => Promise<void>;
  /** The assistant was removed from a place: its room data goes after a grace of some weeks. */
  readonly left: (where: Where) => Promise<void>;
  /** It is there, again or still: nothing goes. */
  readonly joined: (where: Where) => Promise<void>;
  /** The communities that it is in now, on platforms that have such; what others have kept goes likewise. */
  readonly present: (platform: string, communities: readonly string[]) => Promise<void>;
  /** How the words of a request may go on, by what the person has kept: names of recipes. For their eyes alone. */
  readonly suggest: (asked: Asked) => Promise<readonly string[]>;
  /** Lets go of what is kept, once what is being answered is answered. */
  readonly close: () => Promise<void>;
}

import type { Answer, Fault } from '../answer/types.ts';

/** One thing said by one person in one place; the context of follow-up turns is kept per (platform, place, person). */
export interface Asked {
  readonly platform: string;
  readonly place: string;
  readonly person: string;
  readonly text: string;
}

export type Reply = { readonly id: string } & (
  | { readonly ok: true; readonly answer: Answer }
  | { readonly ok: false; readonly fault: Fault }
);

export interface Bot {
  /** Never throws; a bug becomes a fault with the code `failed` and the request id. */
  readonly ask: (asked: Asked) => Reply;
  /** Command and fat names that continue what is typed, for completion. */
  readonly complete: (typed: string) => readonly string[];
}

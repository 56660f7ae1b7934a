/** What is remembered of a conversation: of one person in one place, for a while, and of few enough people. */
import type { Answer } from '../../answer/types.ts';
import type { Taken } from '../../commands/define.ts';
import type { Kept, Step } from '../../commands/kept.ts';
import type { Settled } from '../../reading/amend/settle.ts';
import type { Doubt } from '../../reading/reading.ts';

/** A conversation is forgotten when nothing was said in it for so long (ms). */
export const restsFor = 30 * 60_000;

/** Conversations that are remembered at a time, over all people. */
const mostHeld = 500;

/** A request that can be repeated with something changed. */
export interface Remembered {
  readonly command: string;
  readonly text: string;
  readonly options: Taken['options'];
  /** Milliseconds since 1970. */
  readonly at: number;
}

export interface Worked {
  readonly at: number;
  readonly steps: () => readonly Step[];
  readonly caution: readonly string[];
}

export interface RecipeTurn extends Remembered {
  readonly kept: Kept;
  readonly worked: Worked | null;
}

/** A question back that waits for its answer. */
export interface Pending extends Remembered {
  readonly settled: Settled | null;
  readonly doubts: readonly Doubt[];
  readonly complete: ((answer: string) => Taken | null) | null;
  /** The question is about a correction of the last recipe, not about a request of its own. */
  readonly corrects: boolean;
}

/** What somebody said, and when (ms since 1970). */
export interface Line {
  readonly text: string;
  readonly at: number;
}

export interface Session {
  readonly recipe: RecipeTurn | null;
  /** The recipe before the last correction or scaling. */
  readonly before: RecipeTurn | null;
  /** The recipe that the last scaling started from. */
  readonly base: RecipeTurn | null;
  /** The last question whose answer is no recipe. */
  readonly figure: (Remembered & { readonly answered: boolean }) | null;
  readonly newest: 'recipe' | 'figure';
  readonly pending: Pending | null;
  readonly shown: Answer | null;
  /** How the figures of the last answer that had any were found. */
  readonly worked: Worked | null;
  /** The last request, for a report. */
  readonly said: (Remembered & { readonly id: string; readonly kept: Kept | null }) | null;
  /** What was said, so far as saying it again leads back here. */
  readonly lines: readonly Line[];
}

export const fresh: Session = {
  recipe: null,
  before: null,
  base: null,
  figure: null,
  newest: 'recipe',
  pending: null,
  shown: null,
  worked: null,
  said: null,
  lines: [],
};

export interface Who {
  readonly platform: string;
  readonly place: string;
  readonly person: string;
}

/** No two have the same, whatever their names are. */
export const keyOf = ({ platform, place, person }: Who): string =>
  `${platform.length} ${place.length} ${platform}${place}${person}`;

export interface Sessions {
  readonly of: (who: Who, now: number) => Session;
  readonly has: (who: Who, now: number) => boolean;
  readonly keep: (who: Who, session: Session, now: number) => void;
  readonly forget: (who: Who) => void;
  /** In every place. */
  readonly forgetAll: (who: Omit<Who, 'place'>) => void;
  /** How many are held, for tests of the bound. */
  readonly size: () => number;
}

export function makeSessions(rest: number = restsFor, most: number = mostHeld): Sessions {
  // A map keeps the order of entry, and each turn enters its conversation anew: the eldest stands first.
  const held = new Map<string, { readonly who: Who; readonly session: Session; readonly at: number }>();
  const sweep = (now: number): void => {
    for (const [key, { at }] of held) {
      if (now - at < rest && held.size <= most) return;
      held.delete(key);
    }
  };
  const found = (who: Who, now: number): Session | null => {
    sweep(now);
    return held.get(keyOf(who))?.session ?? null;
  };
  return {
    of: (who, now) => found(who, now) ?? fresh,
    has: (who, now) => found(who, now) !== null,
    keep: (who, session, now) => {
      const { platform, place, person } = who;
      const key = keyOf(who);
      held.delete(key);
      held.set(key, { who: { platform, place, person }, session, at: now });
      sweep(now);
    },
    forget: (who) => {
      held.delete(keyOf(who));
    },
    forgetAll: ({ platform, person }) => {
      for (const [key, { who }] of held) if (who.platform === platform && who.person === person) held.delete(key);
    },
    size: () => held.size,
  };
}

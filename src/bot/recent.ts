/**
 * What came of the last requests that stood alone. Buttons say again what their message was about, and many people
 * open the same recipe: nothing is reckoned twice for them. Held under the request itself, never under a person.
 */
import type { Taken } from '../commands/define.ts';

/** Requests that are held, and the longest text (characters) of one. */
const mostHeld = 50;
const longestHeld = 2000;

export interface Recent<T> {
  /** The request as it is held; null where it is too long for that. */
  readonly key: (command: string, request: Pick<Taken, 'text' | 'options'>) => string | null;
  readonly get: (key: string) => T | undefined;
  readonly keep: (key: string, came: T) => void;
  readonly clear: () => void;
}

export function makeRecent<T>(): Recent<T> {
  // a map keeps the order of entry: the eldest stands first
  const held = new Map<string, T>();
  return {
    key: (command, { text, options }) =>
      text.length > longestHeld ? null : `${command} ${JSON.stringify(options)} ${text}`,
    get: (key) => held.get(key),
    keep: (key, came) => {
      held.set(key, came);
      for (const eldest of held.keys()) {
        if (held.size <= mostHeld) break;
        held.delete(eldest);
      }
    },
    clear: () => held.clear(),
  };
}

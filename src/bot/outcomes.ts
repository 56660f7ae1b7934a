/**
 * What requests that look at nothing of before came to. Wherever nothing outlives an answer but its buttons, each press
 * says again what led to it: the page that turns, the workings, the share. What was worked out a moment ago for the
 * same words under the same settings is not worked out twice.
 */
import type { Taken } from '../commands/options.ts';
import type { Outcome } from './turns/conversation.ts';

type Body = Pick<Taken, 'text' | 'options'>;

export interface Outcomes {
  readonly of: (command: string, body: Body) => Outcome | null;
  readonly keep: (command: string, body: Body, outcome: Outcome) => void;
}

/** The presses of a busy room within a minute; longer posts are worked out again. */
const most = 16;
const longest = 4000;

export function makeOutcomes(): Outcomes {
  const known = new Map<string, Outcome>();
  const keyOf = (command: string, { text, options }: Body): string => `${command} ${JSON.stringify(options)} ${text}`;
  return {
    of: (command, body) => known.get(keyOf(command, body)) ?? null,
    keep: (command, body, outcome) => {
      if (body.text.length > longest) return;
      const key = keyOf(command, body);
      // a map keeps the order of entry: the eldest goes
      known.delete(key);
      known.set(key, outcome);
      const [eldest] = known.keys();
      if (known.size > most && eldest !== undefined) known.delete(eldest);
    },
  };
}

/**
 * What requests that look at nothing of before came to. Where nothing outlives an answer but its buttons, each press
 * says again what led to it: the page that turns, the workings, the share. What was worked out a moment ago for the
 * same words under the same settings is not worked out twice.
 */
import type { Taken } from '../commands/define.ts';
import { makeRecent } from './recent.ts';
import type { Outcome } from './turns/conversation.ts';

type Body = Pick<Taken, 'text' | 'options'>;

export interface Outcomes {
  readonly get: (command: string, body: Body) => Outcome | null;
  readonly keep: (command: string, body: Body, outcome: Outcome) => void;
}

/** Few: whatever is remembered is carried along by each collection of garbage. A longer post is worked out again. */
const most = 4;
const longest = 4000;

export function makeOutcomes(): Outcomes {
  const recent = makeRecent<string, Outcome>(most);
  const keyOf = (command: string, { text, options }: Body): string => `${command} ${JSON.stringify(options)} ${text}`;
  return {
    get: (command, body) => recent.get(keyOf(command, body)) ?? null,
    keep: (command, body, outcome) => {
      if (body.text.length <= longest) recent.set(keyOf(command, body), outcome);
    },
  };
}

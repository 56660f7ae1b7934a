import type { PutRight } from '../taken-back/put-right.ts';
import type { Token } from '../words/tokens.ts';

/** What a rule makes of the words of a post. */
export interface Heard {
  readonly tokens: readonly Token[];
  /** What the answer says of it. */
  readonly told: readonly PutRight[];
  /** Words that tell of something which it cannot make out, to be asked about. */
  readonly unheard?: string | null;
}

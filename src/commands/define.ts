import type { Action, Block, Fault, NonEmpty, Result } from '../answer/types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import type { Style } from '../units/print.ts';

/** `caustic`: touches lye, hot lye or raw soap; `heat`: hot pots and flammable vapour; `plain`: neither. */
export type Risk = 'caustic' | 'heat' | 'plain';

type Caution<R extends Risk> = R extends 'plain' ? readonly string[] : NonEmpty<string>;

/** What a command says; the core adds its id and risk and makes the `Answer`. */
export interface Said<R extends Risk> {
  readonly title: string;
  readonly lead: string;
  readonly body: readonly Block[];
  readonly details: readonly Block[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly caution: Caution<R>;
  readonly actions: readonly Action[];
  readonly result: Readonly<Record<string, unknown>>;
}

export interface Context {
  readonly catalogue: Catalogue;
  readonly style: Style;
}

export interface Command<R extends Risk = Risk, Input = unknown> {
  readonly id: string;
  readonly summary: string;
  readonly risk: R;
  /** Each runs as a test; the first is shown in `help`. */
  readonly examples: NonEmpty<{ readonly say: string; readonly about: string }>;
  /** Free text after the command word, and the options written as `key=value`, to the command's input. */
  readonly read: (text: string, options: ReadonlyMap<string, string>, context: Context) => Result<Input>;
  readonly work: (input: Input, context: Context) => Result<Said<R>, Fault>;
}

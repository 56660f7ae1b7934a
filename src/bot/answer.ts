/** The one place where an answer is made. */
import type { Answer } from '../answer/types.ts';
import type { Said } from '../commands/define.ts';

/** Its details are worked out when somebody first looks at them. */
class WorkedAnswer implements Answer {
  readonly command: string;
  readonly title: string;
  readonly lead: string;
  readonly body: Answer['body'];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly caution: readonly string[];
  readonly actions: Answer['actions'];
  readonly result: Answer['result'];
  private rest: Said['details'];

  constructor(command: string, said: Said, assumptions: readonly string[]) {
    this.command = command;
    this.title = said.title;
    this.lead = said.lead;
    this.body = said.body;
    this.assumptions = assumptions;
    this.warnings = said.warnings;
    this.caution = said.caution;
    this.actions = said.actions;
    this.result = said.result;
    this.rest = said.details;
  }

  // a getter of its own in each answer would cost as much as a tenth of the answer, and live as long as its class
  get details(): Answer['details'] {
    if (typeof this.rest === 'function') this.rest = this.rest();
    return this.rest;
  }
}

export const toAnswer = (command: string, said: Said, assumptions: readonly string[]): Answer =>
  new WorkedAnswer(command, said, assumptions);

/** The one place where an answer is made. */
import type { Answer } from '../answer/types.ts';
import type { Said } from '../commands/define.ts';

/** Its details are worked out when somebody first looks at them. */
export function toAnswer(command: string, whole: Said, assumptions: readonly string[]): Answer {
  const { details, kept: _kept, working: _working, forgets: _forgets, ...said } = whole;
  let known = typeof details === 'function' ? null : details;
  return {
    command,
    ...said,
    assumptions,
    get details() {
      if (typeof details === 'function') known ??= details();
      return known ?? [];
    },
  };
}

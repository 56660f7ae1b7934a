/** Brief or full answers, for those who have set it. */
import type { Answer } from '../answer/types.ts';
import type { AnyCommand } from '../commands/define.ts';
import type { Settings } from '../commands/settings/values.ts';

/** Their body is the answer. */
const whole: ReadonlySet<string> = new Set(['summary', 'explain', 'safety', 'help', 'report', 'restart']);

/** What was understood of a post stays: a slip of reading must show. */
const isRead = (text: string): boolean => text.startsWith('I read');

const details = { label: 'details', request: 'details' };

export function sized(answer: Answer, { id, keeps }: AnyCommand, { answers }: Settings): Answer {
  if (answers === undefined || keeps || whole.has(id)) return answer;
  const { command, title, lead, body, assumptions, warnings, caution, actions, result } = answer;
  const said = { command, title, lead, warnings, caution, result };
  const others = actions.filter(({ request }) => request !== 'details');
  if (answers === 'full')
    return { ...said, body: [...body, ...answer.details], details: [], assumptions, actions: others };
  const stays = body.filter((block) => block.kind !== 'text' || isRead(block.text));
  const rest = body.filter((block) => !stays.includes(block));
  if (rest.length === 0) return answer;
  return {
    ...said,
    body: stays,
    get details() {
      return [...rest, ...answer.details];
    },
    assumptions: [...assumptions, 'I took your setting: brief answers. For the rest say "details".'],
    actions: [details, ...others],
  };
}

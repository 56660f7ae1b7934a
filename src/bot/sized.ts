/** Brief or full answers, for those who have set it. */
import type { Answer } from '../answer/types.ts';
import type { AnyCommand, Said } from '../commands/define.ts';
import type { Settings } from '../commands/settings/values.ts';
import { toAnswer } from './answer.ts';

/** Their body is the answer. */
const whole: ReadonlySet<string> = new Set(['summary', 'explain', 'safety', 'help', 'report', 'restart']);

/** What was understood of a post stays: a slip of reading must show. */
const isRead = (text: string): boolean => text.startsWith('I read');

const details = { label: 'details', request: 'details' };

export function sized(answer: Answer, { id, keeps }: AnyCommand, { answers }: Settings): Answer {
  if (answers === undefined || keeps || whole.has(id)) return answer;
  const { body, actions } = answer;
  const others = actions.filter(({ request }) => request !== 'details');
  if (answers === 'full')
    return over(answer, { body: [...body, ...answer.details], details: [], actions: others }, answer.assumptions);
  const stays = body.filter((block) => block.kind !== 'text' || isRead(block.text));
  const rest = body.filter((block) => !stays.includes(block));
  if (rest.length === 0) return answer;
  const assumptions = [...answer.assumptions, 'I took your setting: brief answers. For the rest say "details".'];
  const hidden = () => [...rest, ...answer.details];
  return over(answer, { body: stays, details: hidden, actions: [details, ...others] }, assumptions);
}

const over = (
  { command, title, lead, warnings, caution, result }: Answer,
  parts: Pick<Said, 'body' | 'details' | 'actions'>,
  assumptions: readonly string[],
): Answer => toAnswer(command, { title, lead, warnings, caution, result, assumptions, ...parts }, assumptions);

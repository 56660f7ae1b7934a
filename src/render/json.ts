import type { Answer, Fault } from '../answer/types.ts';
import { inert } from './inert.ts';
import { renderPlain } from './plain.ts';

const shown = (texts: readonly string[]): string[] => texts.map((text) => inert(text).trim());

/**
 * One line of JSON after `deploy/schema/answer-1.schema.json` or `fault-1.schema.json`. `text` is the plain rendering,
 * in which each caution stands word for word.
 */
export function renderJson(said: Answer | Fault): string {
  if (!('lead' in said)) {
    const { code, message, hint } = said;
    return JSON.stringify({ ok: false, fault: { code, message: inert(message).trim(), hint: inert(hint).trim() } });
  }
  return JSON.stringify({
    ok: true,
    command: said.command,
    title: inert(said.title).trim(),
    text: renderPlain(said, { details: false }),
    assumptions: shown(said.assumptions),
    warnings: shown(said.warnings),
    caution: shown(said.caution),
    result: said.result,
  });
}

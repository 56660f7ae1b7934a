import { strict as assert } from 'node:assert';
import { type Bot, renderPlain } from '../../src/index.ts';

/** Commands whose answers touch something caustic: each carries its caution in every rendering. */
const caustic = new Set(['check', 'lye', 'safety', 'scale', 'summary', 'solution', 'mix', 'cook', 'strength']);

function finite(value: unknown, path: string): void {
  if (typeof value === 'number') assert(Number.isFinite(value), `${path} is ${value}`);
  else if (Array.isArray(value)) for (const [k, one] of value.entries()) finite(one, `${path}[${k}]`);
  else if (value && typeof value === 'object')
    for (const [key, one] of Object.entries(value)) finite(one, `${path}.${key}`);
}

/** No text crashes the core; every figure of an accepted one is finite; nothing caustic goes without its caution. */
export async function standsFast(bot: Bot, text: string): Promise<void> {
  const reply = await bot.ask({ platform: 'fuzz', place: 'here', person: 'anyone', text });
  if (!reply.ok) {
    assert.notEqual(reply.fault.code, 'failed', `${JSON.stringify(text)}: ${reply.fault.message}`);
    assert(reply.fault.message.length > 0);
    return;
  }
  const { answer } = reply;
  finite(answer.result, 'result');
  const said = renderPlain(answer, { details: true });
  assert(!/NaN|undefined|Infinity|\[object/.test(said.replaceAll(text, '')), said);
  if (caustic.has(answer.command)) assert(answer.caution.length > 0, `${answer.command} without a caution`);
  for (const caution of answer.caution) assert(said.includes(caution), `the caution is missing in ${said}`);
}

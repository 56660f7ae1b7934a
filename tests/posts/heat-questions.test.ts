// Sixty questions about heat, asked by hands that had not seen the reader, with windows reckoned by arithmetic of their
// own (enthalpy balance, Newton's law, published flash points). Each is asked as typed and judged on its JSON.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createBot, renderJson } from '../../src/index.ts';

type Window = readonly [low: number, high: number];
type Expected = {
  readonly command?: string | readonly string[];
  readonly fault?: string | readonly string[];
  readonly mentions?: readonly string[];
  readonly warns?: boolean;
} & Readonly<Record<string, unknown>>;

interface Question {
  readonly id: string;
  readonly text: string;
  readonly expect: Expected;
}

const questions = ['heat-questions', 'heat-2'].flatMap(
  (set) => JSON.parse(readFileSync(new URL(`${set}.json`, import.meta.url), 'utf8')) as readonly Question[],
);

const bot = createBot();
const ask = (text: string) => bot.ask({ platform: 'test', place: 'shed', person: text, text });
const listOf = (value: string | readonly string[]): readonly string[] => (typeof value === 'string' ? [value] : value);

/** A figure of the result; of one with a band its middle. */
function figure(result: Readonly<Record<string, unknown>>, name: string): unknown {
  const value = result[name];
  return typeof value === 'object' && value !== null && 'nominal' in value ? value.nominal : value;
}

test('the collection is whole', () => {
  expect(questions.length).toBe(105);
});

describe.each(questions)('$id: $text', ({ text, expect: wanted }) => {
  test('is answered as reckoned', async () => {
    const { command, fault, mentions = [], warns = false, ...windows } = wanted;
    const reply = await ask(text);
    const printed = JSON.parse(renderJson(reply.ok ? reply.answer : reply.fault)) as {
      readonly text?: string;
      readonly fault?: { readonly message: string; readonly hint: string };
      readonly warnings?: readonly string[];
    };
    const said = `${printed.text ?? ''} ${printed.fault?.message ?? ''} ${printed.fault?.hint ?? ''}`;
    for (const word of mentions) expect(said.toLowerCase()).toContain(word);
    if (fault !== undefined) {
      expect(reply.ok ? reply.answer.command : reply.fault.code).toSatisfy((code: string) =>
        listOf(fault).includes(code),
      );
      return;
    }
    if (command === undefined) return;
    if (!reply.ok) throw new Error(`${reply.fault.code}: ${reply.fault.message} ${reply.fault.hint}`);
    expect(listOf(command)).toContain(reply.answer.command);
    if (warns) expect(printed.warnings).not.toEqual([]);
    for (const [name, window] of Object.entries(windows)) {
      const value = figure(reply.answer.result, name);
      if (!Array.isArray(window)) expect(value, name).toBe(window);
      else {
        const [low, high] = window as unknown as Window;
        expect(value, name).toBeGreaterThanOrEqual(low);
        expect(value, name).toBeLessThanOrEqual(high);
      }
    }
  });
});

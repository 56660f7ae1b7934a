// What Matrix owes every answer, as Discord and the console do: each string of it is shown, in the plain body and in the
// HTML alike, the caution in every part; judged by the sanitiser that clients use and by an HTML parser.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { letterOf } from '../../adapters/matrix/message.ts';
import type { Answer, Fault } from '../../src/index.ts';
import { answer, fault, seen, shows, stringsOf } from '../contract/answers.ts';
import { flawsOf, htmlText } from './judge.ts';

const anything = fc.oneof({ weight: 3, arbitrary: answer }, { weight: 1, arbitrary: fault });
/** With more text than one event holds. */
const large: fc.Arbitrary<Answer | Fault> = fc
  .tuple(anything, fc.integer({ min: 20, max: 400 }))
  .map(([said, times]) =>
    'lead' in said
      ? { ...said, body: Array.from({ length: times }, () => said.body).flat() }
      : { ...said, hint: said.hint.repeat(times) },
  );

const textOf = (content: Readonly<Record<string, unknown>>, name: string): string => String(content[name]);

test('good HTML, a body that says the same, nobody called', { timeout: 30_000 }, () => {
  fc.assert(
    fc.property(fc.oneof({ weight: 4, arbitrary: anything }, { weight: 1, arbitrary: large }), (said) => {
      for (const part of letterOf(said).parts) expect(flawsOf(part)).toEqual([]);
    }),
    { numRuns: 200 },
  );
});

test('nothing is dropped, and the caution stands in every part', { timeout: 30_000 }, () => {
  fc.assert(
    fc.property(fc.oneof({ weight: 4, arbitrary: anything }, { weight: 1, arbitrary: large }), (said) => {
      const { parts, enclosed } = letterOf(said);
      const files = enclosed.files.map(({ text, about, name }) => `${text} ${about} ${name}`);
      const pictures = enclosed.pictures.map(({ alt }) => alt);
      for (const read of [
        (part: (typeof parts)[number]) => textOf(part, 'body'),
        (part: (typeof parts)[number]) => htmlText(textOf(part, 'formatted_body')),
      ]) {
        for (const part of parts) for (const line of said.caution) expect(seen(read(part))).toContain(seen(line));
        const whole = seen([...parts.map(read), ...files, ...pictures].join('\n'));
        for (const text of stringsOf(said, false)) {
          if (!shows(whole, text, parts.length)) expect(whole).toContain(seen(text));
        }
      }
    }),
    { numRuns: 200 },
  );
});

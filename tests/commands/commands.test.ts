import fc from 'fast-check';
import { expect, test } from 'vitest';
import { commands } from '../../src/commands/registry.ts';
import { commandNames, createBot, renderJson, renderPlain } from '../../src/index.ts';
import { renderHtml } from '../../src/render/html.ts';
import { renderMarkdown } from '../../src/render/markdown.ts';
import { isAnswer, isFault } from '../contract/schemas.ts';
import { createModel } from '../store/model.ts';

const kept = createModel();
const bot = createBot({ store: async () => kept });
/** Each command is asked by a person of its own, whose settings bend no other's answers. */
const ask = (text: string, person = 'someone') =>
  bot.ask({ platform: 'test', place: 'here', person, text, isPrivate: true });

const examples = commands.flatMap(({ id, examples: all }) => all.map(({ say }) => [id, say] as const));

test.each(examples)('%s: "%s" is answered by its own command', async (id, say) => {
  const reply = await ask(say, id);
  expect(reply.ok, reply.ok ? '' : reply.fault.message).toBe(true);
  if (!reply.ok) return;
  expect(reply.answer.command).toBe(id);
  isAnswer(JSON.parse(renderJson(reply.answer)));
});

const lettersOf = (text: string): string => text.replace(/&\w+;|&#\d+;|[^\p{L}]/gu, '');

const caustic = commands.filter(({ risk }) => risk === 'caustic').map(({ id }) => id);

test('every answer of a caustic command carries its caution in each rendering', async () => {
  for (const [id, say] of examples) {
    const reply = await ask(say);
    if (!reply.ok || !caustic.includes(id)) continue;
    const { caution } = reply.answer;
    expect(caution.length, say).toBeGreaterThan(0);
    for (const text of caution) {
      expect(renderPlain(reply.answer, { details: false })).toContain(text);
      expect(JSON.parse(renderJson(reply.answer)).text).toContain(text);
    }
    // what is escaped there differs from the text in signs only
    for (const drawn of [
      renderMarkdown(reply.answer, { details: true }),
      renderHtml(reply.answer, { details: true }),
    ]) {
      for (const line of caution) expect(lettersOf(drawn)).toContain(lettersOf(line));
    }
  }
});

test('what is not answered about something caustic carries one, too', async () => {
  for (const text of ['check', 'olive 700, lye 100', 'lye superfat=120 500 g lard', 'check superfat=lots 5 g lard']) {
    const reply = await ask(text);
    expect(reply.ok).toBe(false);
    if (reply.ok) continue;
    expect(reply.fault.caution.length, text).toBeGreaterThan(0);
    isFault(JSON.parse(renderJson(reply.fault)));
  }
});

test('no answer calls anything safe, glues a unit to its figure, or leaves a figure without its leading zero', async () => {
  for (const [, say] of examples) {
    const reply = await ask(say);
    if (!reply.ok) continue;
    const { lead, body, warnings, caution } = reply.answer;
    const text = [
      lead,
      ...body.flatMap((block) => (block.kind === 'text' ? [block.text] : [])),
      ...warnings,
      ...caution,
    ].join('\n');
    expect(text).not.toMatch(/\bsafe\b/i);
    if (reply.answer.command === 'help') continue;
    expect(text).not.toMatch(/\d(?:g|oz|kg|ml)\b/);
    expect(text).not.toMatch(/(?<![\d.])\.\d/);
    expect(text).not.toMatch(/\d\.\d*0(?!\d)(?: ?(?:g|oz|%))/);
  }
});

const word = fc.oneof(
  fc.constantFrom(
    ...commandNames,
    'olive',
    'coconut oil',
    'lard',
    'lye',
    'NaOH',
    'KOH',
    'water',
    'superfat',
    'citric acid',
    'goat milk',
    'after the cook',
    'superfat=5',
    'step=0.1g',
    'purity: 90 %',
    'unit=oz',
    '%',
    'g',
    'oz',
    ':',
    '\n',
    ',',
    '|',
    '2:1',
    '🫒',
    'details',
  ),
  fc.integer({ min: -10, max: 5000 }).map(String),
  fc.double({ min: 0, max: 1e9, noNaN: true }).map(String),
  fc.string({ maxLength: 12, unit: 'grapheme' }),
);

test('no text makes it fail, and every answer fits the published schema', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(word, { maxLength: 40 }), async (parts) => {
      const reply = await ask(parts.join(' '));
      if (reply.ok) {
        isAnswer(JSON.parse(renderJson(reply.answer)));
        if (caustic.includes(reply.answer.command)) expect(reply.answer.caution.length).toBeGreaterThan(0);
      } else {
        expect(reply.fault.code).not.toBe('failed');
        isFault(JSON.parse(renderJson(reply.fault)));
      }
    }),
    { numRuns: 500 },
  );
});

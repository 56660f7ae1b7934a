// What the product really says, for every example that a command declares and for posts of many hands: after the
// published schemas, and with its caution in every rendering.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { commands } from '../../src/commands/registry.ts';
import { createBot } from '../../src/index.ts';
import { html, renderHtml } from '../../src/render/html.ts';
import { renderJson } from '../../src/render/json.ts';
import { markdown, renderMarkdown } from '../../src/render/markdown.ts';
import { pages } from '../../src/render/pages.ts';
import { plain, renderPlain } from '../../src/render/plain.ts';
import { createModel } from '../store/model.ts';
import { isAnswer, isFault } from './schemas.ts';

const kept = createModel();
const bot = createBot({ store: async () => kept });
const ask = (text: string, person = 'one') =>
  bot.ask({ platform: 'test', place: 'shed', person, text, isPrivate: true });

const examples = commands.flatMap(({ id, risk, examples: all }) => all.map(({ say }) => ({ id, risk, say })));

/** Letters and digits alone, which every rendering shows as they are. */
const bare = (text: string): string => text.replace(/&#?\w+;|<[^>]*>/g, '').replace(/[^\p{L}\p{N}]/gu, '');

test.each(examples)('$id: $say', async ({ id, risk, say }) => {
  const reply = await ask(say, id);
  if (!reply.ok) throw new Error(`${reply.fault.message} ${reply.fault.hint}`);
  const { answer } = reply;
  const printed = isAnswer(JSON.parse(renderJson(answer)));
  expect(printed.command).toBe(id);
  if (risk !== 'plain') expect(printed.caution).not.toEqual([]);
  for (const caution of printed.caution) {
    expect(printed.text).toContain(caution);
    for (const details of [false, true]) {
      for (const render of [renderPlain, renderMarkdown, renderHtml]) {
        expect(bare(render(answer, { details }))).toContain(bare(caution));
      }
      for (const format of [plain, markdown, html]) {
        for (const page of pages(answer, format, { details, max: 900 })) expect(bare(page)).toContain(bare(caution));
      }
    }
  }
});

const posts = ['chat', 'prose', 'tables', 'traps'].flatMap(
  (name) =>
    JSON.parse(readFileSync(new URL(`../posts/${name}.json`, import.meta.url), 'utf8')) as readonly { text: string }[],
);

describe('posts', () => {
  test('each is answered or asked back as the schemas say, and no answer that meets lye lacks a caution', async () => {
    expect(posts.length).toBeGreaterThan(100);
    for (const { text } of posts) {
      const reply = await ask(text);
      if (reply.ok) {
        const printed = isAnswer(JSON.parse(renderJson(reply.answer)));
        if (printed.command === 'check' || printed.command === 'lye') expect(printed.caution, text).not.toEqual([]);
        for (const caution of printed.caution) expect(printed.text).toContain(caution);
      } else {
        expect(reply.fault.code, text).not.toBe('failed');
        isFault(JSON.parse(renderJson(reply.fault)));
        const shown = renderPlain(reply.fault, { details: false });
        for (const caution of reply.fault.caution) expect(shown).toContain(caution);
      }
    }
  });
});

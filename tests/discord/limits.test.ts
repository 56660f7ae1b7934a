// Whatever the core may say fits Discord: every limit, at the limit and one beyond, the caution on every page, no
// figure lost, nobody pinged. Judged by the published schema, closed, by the rules of the documentation, and by a
// Markdown parser of another author.
import { hash } from 'node:crypto';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Shown, show, type View } from '../../adapters/discord/message.ts';
import { createStates, type Slot } from '../../adapters/discord/state.ts';
import type { Answer, Fault, Reply } from '../../src/index.ts';
import { answer, fault, seen, shows, stringsOf } from '../contract/answers.ts';
import { marksOf, markdownText as read } from '../contract/markdown-read.ts';
import { coolingPot } from '../pictures.ts';
import { beginner, idOf, labelsOf } from './standin/interactions.ts';
import { againstRules } from './standin/rules.ts';
import { againstSchema } from './standin/schema.ts';
import type { Json } from './standin/server.ts';

const replyOf = (said: Answer | Fault): Reply =>
  'lead' in said ? { id: 'a1', ok: true, answer: said } : { id: 'a1', ok: false, fault: said };
const view: View = { owner: beginner.id, turns: ['check 500 g lard'], page: 0, shared: false };
const drawn = (said: Answer | Fault, more: Partial<View> = {}): Shown =>
  show(replyOf(said), { ...view, ...more }, createStates());

/** Both as a new message and as a change of one. */
const flaws = ({ message }: Shown): readonly string[] => {
  const { flags: _, ...change } = message;
  const created = { type: 4, data: message };
  const updated = { type: 7, data: change };
  return [
    ...againstSchema('message', created),
    ...againstRules('message', created),
    ...againstSchema('update', updated),
    ...againstRules('update', updated),
  ];
};

/** Every page, by the numbers on the buttons. */
function pagesOf(said: Answer | Fault): readonly Json[] {
  const all: Json[] = [];
  for (let page = 0; ; page += 1) {
    const { message } = drawn(said, { page });
    all.push(message);
    if (!labelsOf(message).some((label) => label.startsWith(`Page ${page + 2} of`))) return all;
  }
}

const question: Fault = { code: 'unclear', message: 'Which?', hint: '', candidates: [], caution: [] };

const anything = fc.oneof({ weight: 3, arbitrary: answer }, { weight: 1, arbitrary: fault });
/** With more text, more next steps and more candidates than an answer should ever have. */
const large: fc.Arbitrary<Answer | Fault> = fc
  .tuple(anything, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 40 }))
  .map(([said, times, offers]) =>
    'lead' in said
      ? {
          ...said,
          body: Array.from({ length: times }, () => said.body).flat(),
          actions: Array.from({ length: offers }, (_, i) => ({ label: `Step ${i}`, request: `step ${i}` })),
        }
      : { ...said, hint: said.hint.repeat(times), candidates: Array.from({ length: offers }, (_, i) => `Fat ${i}`) },
  );

describe('any answer', () => {
  test('is within every limit', () => {
    fc.assert(
      fc.property(fc.oneof(anything, large), fc.boolean(), fc.nat(3), (said, shared, page) => {
        expect(flaws(drawn(said, { shared, page }))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test('loses nothing over its pages and buttons, and has its caution on each', () => {
    fc.assert(
      fc.property(fc.oneof(anything, large), (said) => {
        const all = pagesOf(said);
        const shown = all.map(({ content }) => seen(read(content)));
        for (const page of shown) for (const line of said.caution) expect(page).toContain(seen(line));
        const whole = seen(read(all.map(({ content }) => content).join('\n')) + labelsOf(all[0]).join(' '));
        const offered = 'lead' in said ? said.actions.map(({ request }) => request) : [];
        for (const text of stringsOf(said, false)) {
          // What a button does needs no words.
          if (!offered.includes(text) && !shows(whole, text, all.length)) expect(whole).toContain(seen(text));
        }
      }),
      {
        numRuns: 200,
        // An address goes on until a space: what follows it must not be escaped into it.
        examples: [[{ ...question, hint: '[certificate](https://example.org/1)'.repeat(2) }]],
      },
    );
  });

  test('pings nobody and hides no address behind a name', () => {
    const live = new Set([
      'user',
      'role',
      'channel',
      'everyone',
      'here',
      'slashCommand',
      'guildNavigation',
      'timestamp',
      'emoji',
    ]);
    fc.assert(
      fc.property(anything, (said) => {
        for (const { content } of pagesOf(said)) {
          for (const { type, content: inner, target } of marksOf(content)) {
            expect(live.has(type), `${type} in ${content}`).toBe(false);
            if (type === 'url' || type === 'link' || type === 'autolink') {
              const name = typeof inner === 'string' ? inner : (inner ?? []).map(({ content: one }) => one).join('');
              expect(name).toBe(target);
            }
          }
          expect(content).not.toMatch(/@(everyone|here)|<@|<#|<t:|<:|<\//);
        }
      }),
      { numRuns: 300 },
    );
  });
});

const said: Answer = {
  command: 'check',
  title: '',
  lead: 'x',
  body: [],
  details: [],
  assumptions: [],
  warnings: [],
  caution: ['Goggles, gloves, long sleeves.'],
  actions: [],
  result: {},
};

describe('at the limit and one beyond', () => {
  test('2,000 characters are one message, 2,001 are two pages and a file', async () => {
    const text = (length: number): Answer => ({
      ...said,
      lead: 'x'.repeat(length - 4 - '\n\n> Goggles, gloves, long sleeves.'.length),
    });
    const one = drawn(text(2000));
    expect(one.message.content).toHaveLength(2000);
    expect(one.files).toBeNull();
    const two = drawn(text(2001));
    expect(labelsOf(two.message)).toContain('Page 2 of 2');
    const [file] = (await two.files?.()) ?? [];
    expect(Buffer.from(file?.data ?? []).toString()).toContain('x'.repeat(1900));
    expect(Buffer.from(file?.data ?? []).toString()).toContain('Goggles');
  });

  test('a label of 80 characters stands on its button, of 81 in the text too', () => {
    const step = (length: number): Answer => ({ ...said, actions: [{ label: 'l'.repeat(length), request: 'go on' }] });
    expect(labelsOf(drawn(step(80)).message)).toContain('l'.repeat(80));
    expect(drawn(step(80)).message.content).not.toContain('lll');
    expect(labelsOf(drawn(step(81)).message)).toContain(`${'l'.repeat(79)}…`);
    expect(drawn(step(81)).message.content).toContain('l'.repeat(81));
  });

  test.each([
    [10, 10, false],
    [11, 11, false],
    [25, 25, false],
    [26, 25, true],
  ])('%i candidates: %i can be chosen, the rest is text', (count, offered, isText) => {
    const candidates = Array.from({ length: count }, (_, i) => `candidate ${i}.`);
    const shown = drawn({ ...question, candidates });
    expect(labelsOf(shown.message).filter((label) => label.startsWith('candidate'))).toHaveLength(offered);
    expect(shown.message.content.includes('candidate 25.')).toBe(isText);
    expect(flaws(shown)).toEqual([]);
  });

  test('a caution that fills a message leaves no page without it: all of it goes as a file', async () => {
    const long = { ...said, caution: ['c'.repeat(1990)], lead: 'x'.repeat(500) };
    const shown = drawn(long);
    expect(shown.message.content).toMatch(/the caution too, is in the file/);
    const [file] = (await shown.files?.()) ?? [];
    expect(Buffer.from(file?.data ?? []).toString()).toContain('c'.repeat(1990));
    expect(flaws(shown)).toEqual([]);
  });

  test('pictures go along as files, each with its words', async () => {
    const picture = {
      kind: 'picture',
      alt: `a curve ${'that falls '.repeat(200)}`,
      picture: coolingPot(),
    } as const;
    const files = (await drawn({ ...said, body: [picture, picture] }).files?.()) ?? [];
    const pictures = files.filter(({ name }) => name.endsWith('.png'));
    expect(pictures).toHaveLength(2);
    for (const { data, description } of pictures) {
      expect(Buffer.from(data.slice(1, 4)).toString()).toBe('PNG');
      expect(description?.length).toBeLessThanOrEqual(1024);
      expect(description).toMatch(/^a curve/);
    }
  });
});

describe('what buttons carry', () => {
  const slots: readonly Slot[] = Array.from({ length: 5 }, (_, number) => ({ press: 'a', number }));
  const asMessage = (ids: readonly string[]) => [
    { type: 1, components: ids.map((custom_id) => ({ type: 2, custom_id })) },
  ];

  test('comes back in another process, as long as it fits; whole or not at all', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'grapheme', maxLength: 200 }), { minLength: 1, maxLength: 4 }),
        fc.array(fc.string({ maxLength: 30 }), { maxLength: 5 }),
        (turns, requests) => {
          const ids = createStates().write({ turns, requests, fingerprint: 'abcdef' }, beginner.id, slots);
          for (const id of ids) expect(id.length).toBeLessThanOrEqual(100);
          expect(new Set(ids).size).toBe(ids.length);
          const found = createStates().read(ids[2] ?? '', asMessage(ids));
          expect(found).toMatchObject({ press: 'a', number: 2, owner: beginner.id });
          if (found?.state) {
            const plain = (text: string) => text.toWellFormed().replaceAll('\u001e', ' ').replaceAll('\u001f', ' ');
            expect(found.state.turns.join('|')).toBe(turns.map(plain).join('|'));
          } else expect(turns.join('').length).toBeGreaterThan(60);
        },
      ),
    );
  });

  test('at the limit it is in the message, one beyond in memory only', () => {
    const state = (length: number) => {
      // Letters that do not pack.
      let seed = 7;
      const letters = Array.from({ length }, () => {
        seed = (seed * 48_271) % 2_147_483_647;
        return String.fromCharCode(33 + (seed % 90));
      });
      return { turns: [letters.join('')], requests: [], fingerprint: '' };
    };
    const readable = (length: number, same: boolean): boolean => {
      const states = createStates();
      const ids = states.write(state(length), beginner.id, slots);
      return (same ? states : createStates()).read(ids[0] ?? '', asMessage(ids))?.state?.turns[0]?.length === length;
    };
    const most =
      Array.from({ length: 500 }, (_, i) => i + 1)
        .filter((length) => readable(length, false))
        .at(-1) ?? 0;
    expect(most).toBeGreaterThan(250);
    expect(readable(most + 1, false)).toBe(false);
    expect(readable(most + 1, true)).toBe(true);
  });

  test('a recipe of ten lines, as people write them, fits the buttons of its answer', () => {
    const recipe =
      'check: Olive oil 450 g\nCoconut oil 225 g\nCastor oil 75 g\nShea butter 60 g\nSunflower oil 90 g\nSodium hydroxide 120 g\nWater 290 g\nLavender essential oil 25 g\nSodium lactate 10 g\nKaolin clay 15 g';
    const actions = ['details', 'first aid', 'scale', 'heat of this solution'].map((label) => ({
      label,
      request: label,
    }));
    const { message } = drawn({ ...said, actions }, { turns: [recipe] });
    const found = createStates().read(idOf(message, 'scale'), message.components as Json);
    expect(found?.state?.turns).toEqual([recipe]);
  });

  test('says nothing where a part of it is missing or changed', () => {
    const ids = createStates().write(
      { turns: ['check 500 g lard, 66 g NaOH'.repeat(4)], requests: ['details'], fingerprint: '' },
      beginner.id,
      slots,
    );
    expect(createStates().read(ids[0] ?? '', asMessage(ids.slice(0, 1)))?.state).toBeNull();
    const changed = ids.map((id, i) => (i === 1 ? `${id.slice(0, -1)}${id.endsWith('A') ? 'B' : 'A'}` : id));
    expect(createStates().read(ids[0] ?? '', asMessage(changed))?.state ?? null).toBeNull();
  });

  test('is kept to a size however many ask', () => {
    const states = createStates();
    const write = (i: number) =>
      states.write(
        {
          turns: [Array.from({ length: 150 }, (_, j) => hash('sha1', `${i} ${j}`)).join('')],
          requests: [],
          fingerprint: `${i}`,
        },
        beginner.id,
        [{ press: 'f', number: 0 }],
      )[0] ?? '';
    const first = write(0);
    const packs = states.read(first, []);
    for (let i = 1; i < 1000; i += 1) write(i);
    expect(packs?.state).not.toBeNull();
    expect(states.read(first, [])?.state).toBeNull();
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { commands } from '../../src/commands/registry.ts';
import type { Kind, Own, Store } from '../../src/store/port.ts';
import { house, resultOf, type Talker, textOf } from './talk.ts';

const lard = '500 g lard, 66 g NaOH, 150 g water';
const kinds: readonly Kind[] = ['recipe', 'settings', 'batch', 'context'];
const allOf = async (own: Own) => ({
  documents: (await Promise.all(kinds.map((kind) => own.list(kind, { limit: 1000 })))).flat(),
  reminders: await own.reminders(),
});
const of = (store: Store, person: string) => store.of({ platform: 'test', person });

describe('privacy', () => {
  test('says what is kept, why and how long; the counts only where nobody else reads', async () => {
    const { ask } = house();
    await ask(`recipe save A: ${lard}`);
    const text = textOf(await ask('privacy'));
    for (const word of [
      '30 minutes',
      'until you delete',
      '30 days',
      'backups',
      'no words, no names',
      'Of you I keep 1 recipe',
    ])
      expect(text).toContain(word);
    expect(textOf(await ask('privacy', { isPrivate: false }))).not.toContain('Of you I keep');
  });

  test('exports everything of one’s own, and nothing where others read', async () => {
    const { ask } = house();
    await ask(`recipe save A: ${lard}`);
    await ask('settings oz');
    await ask('remind me in 3 days to turn the bars');
    await ask('batch start A');
    const all = resultOf(await ask('privacy export'));
    expect(all).toMatchObject({
      form: 'lyeward-export',
      accounts: [{ platform: 'test', person: 'ada' }],
      settings: { weights: 'oz' },
      recipes: [{ name: 'A', fats: [{ id: 'lard', grams: 500 }] }],
    });
    expect((all['batches'] as unknown[]).length).toBeGreaterThan(0);
    expect((all['reminders'] as unknown[]).length).toBeGreaterThan(0);
    expect(textOf(await ask('privacy export', { isPrivate: false }))).toContain('direct message');
    expect(textOf(await ask('privacy link', { isPrivate: false }))).toContain('direct message');
  });

  test('deletes everything once it is agreed to, the conversation too, and nothing of others', async () => {
    const { ask, store } = house();
    for (const person of ['ada', 'bea']) {
      await ask(`recipe save A: ${lard}`, { person });
      await ask('settings oz', { person });
      await ask('remind me in 3 days to turn the bars', { person });
    }
    const before = await allOf(of(store, 'bea'));
    expect(textOf(await ask('privacy delete'))).toContain('1 recipe');
    expect((await allOf(of(store, 'ada'))).documents.length).toBeGreaterThan(0);
    await ask('privacy delete');
    expect(resultOf(await ask('delete everything'))).toMatchObject({ deleted: true });
    expect(await allOf(of(store, 'ada'))).toEqual({ documents: [], reminders: [] });
    expect(await allOf(of(store, 'bea'))).toEqual(before);
    expect((await ask('double it')).ok).toBe(false);
  });

  test('two accounts are joined by a code, once, and parted again', async () => {
    const { ask, bot } = house();
    await ask(`recipe save A: ${lard}`);
    const { code } = resultOf(await ask('privacy link')) as { readonly code: string };
    const there = (text: string, person = 'ada@there') =>
      bot.ask({ platform: 'other', place: 'dm', person, text, isPrivate: true });
    expect(textOf(await there('privacy link ABCD-EFGH'))).toContain('no such code');
    expect(resultOf(await there(`privacy link ${code}`))).toMatchObject({ linked: true });
    expect(textOf(await there(`privacy link ${code}`, 'mallory'))).toContain('no such code');
    expect((await there('recipe show A')).ok).toBe(true);
    expect((await there('recipe show A', 'mallory')).ok).toBe(false);
    await there('privacy unlink');
    expect(resultOf(await there('yes'))).toMatchObject({ linked: false });
    expect((await there('recipe show A')).ok).toBe(false);
    expect((await ask('recipe show A')).ok).toBe(true);
  });
});

describe('a room that the assistant was removed from', () => {
  const day = 24 * 60 * 60_000;
  test('loses its data after the grace, unless it is taken in again', async () => {
    let at = Date.UTC(2026, 0, 1);
    const { ask, bot, store } = house({ now: () => at });
    const shared = async (place: string) =>
      (await store.room({ platform: 'test', place }).list('recipe', { limit: 9 })).length;
    await ask(`recipe save A: ${lard}`);
    for (const place of ['one', 'two']) await ask('recipe share A', { place });
    for (const place of ['one', 'two']) await bot.left({ platform: 'test', place });
    at += 29 * day;
    await store.sweep(at);
    expect(await shared('one')).toBe(1);
    await bot.joined({ platform: 'test', place: 'two' });
    at += 2 * day;
    await store.sweep(at);
    expect([await shared('one'), await shared('two')]).toEqual([0, 1]);
    expect((await ask('recipe show A')).ok).toBe(true);
  });

  test('by its community, however often that is looked at', async () => {
    let at = Date.UTC(2026, 0, 1);
    const { bot, store } = house({ now: () => at });
    const say = (text: string, place: string, community: string) =>
      bot.ask({ platform: 'test', place, community, person: 'ada', text, isPrivate: true });
    await say(`recipe save A: ${lard}`, 'dm', 'c1');
    await say('recipe share A', 'r1', 'c1');
    await say('recipe share A', 'r2', 'c2');
    const shared = async (place: string) =>
      (await store.room({ platform: 'test', place }).list('recipe', { limit: 9 })).length;
    for (let days = 0; days <= 31; days += 1) {
      await bot.present('test', ['c2']);
      await store.sweep(at);
      at += day;
    }
    expect([await shared('r1'), await shared('r2')]).toEqual([0, 1]);
  });
});

/** What B has, each with a word that nobody else would say. */
const secret = 'zqxv';
const things = [
  `recipe save Bar: ${lard}, 3 g lavender EO`,
  `recipe save ${secret} one: ${lard}`,
  'settings scale 0.01 g, superfat 13 %, time zone Chatham',
  'batch start Bar',
  `remind me in 3 days: ${secret} two`,
];

const requests = fc.oneof(
  fc.constantFrom(...commands.flatMap(({ keeps, examples }) => (keeps ? examples.map(({ say }) => say) : []))),
  fc.constantFrom(
    'recipe show Bar',
    'recipe list',
    'recipe delete Bar confirm=yes',
    'recipe rename Bar to Mine',
    'recipe copy Bar to Mine',
    'recipe share Bar',
    'recipe unshare Bar',
    `recipe show ${secret}`,
    'recipe show zqx',
    'recipe compare Bar and Bar',
    'recipe export all',
    `recipe save Bar confirm=yes: ${lard}`,
    'settings',
    'settings reset',
    'settings superfat 2 %',
    'settings for this room: superfat 2 %',
    'privacy',
    'privacy export',
    'privacy delete confirm=yes',
    'privacy link',
    'privacy link ABCD-EFGH',
    'privacy unlink confirm=yes',
    'batch',
    'batch list',
    'batch show',
    'batch record',
    'batch start Bar',
    'batch end',
    'done',
    '92 at 12:40',
    '5 more',
    'remind list',
    'remind me in 2 days to cut',
    'remind delete all',
    'yes',
    'replace',
    'details',
    'explain',
    'summary',
    'double it',
    'report with my words',
    lard,
  ),
);

test('no request of one person reads, changes or deletes what is another’s', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(requests, fc.constantFrom('shed', 'elsewhere'), fc.boolean(), fc.boolean()), { maxLength: 25 }),
      async (said) => {
        const { ask, store } = house();
        const b: Talker = { person: 'bea' };
        for (const thing of things) {
          const reply = await ask(thing, b);
          if (!reply.ok) throw new Error(`${thing}: ${reply.fault.message}`);
        }
        const before = await allOf(of(store, 'bea'));
        for (const [text, place, isPrivate, isHost] of said) {
          const reply = await ask(text, { person: 'ada', place, isPrivate, isHost });
          const whole = JSON.stringify([reply, reply.ok ? reply.answer.details : null]);
          // what was asked for may be said back
          const shown = whole
            .replaceAll(`recipe show ${secret}`, '')
            .replaceAll(/no recipe \\"zqxv\\"|\\"zqxv\\"/gi, '');
          expect(shown, text).not.toMatch(/zqxv|13 %|Chatham|"bea"/);
        }
        expect(await allOf(of(store, 'bea'))).toEqual(before);
      },
    ),
    { numRuns: 60 },
  );
});

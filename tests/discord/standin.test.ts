// The stand-in judged by others: a second client library (oceanic.js) must find in it the Discord that it knows, and
// the rules must find each fault that is put in on purpose.
import { Client, type CommandInteraction, type ComponentInteraction, type ModalSubmitInteraction } from 'oceanic.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { applicationId, press, slash, submit, token, typing } from './standin/interactions.ts';
import { againstList, againstRules } from './standin/rules.ts';
import { againstSchema, type Body } from './standin/schema.ts';
import { createStandIn, type Json, type StandIn } from './standin/server.ts';

describe('a second client', () => {
  let discord: StandIn;
  let client: Client;
  const done: Promise<unknown>[] = [];

  beforeAll(async () => {
    discord = await createStandIn({ token, applicationId });
    client = new Client({
      auth: `Bot ${token}`,
      rest: { baseURL: `${discord.api}/v10` },
      gateway: { intents: 0, autoReconnect: true, getAllUsers: false, compress: false },
      disableCache: 'no-warning',
    });
    client.on('error', () => {});
    client.on('interactionCreate', (interaction) => {
      done.push(answer(interaction as never));
    });
    const ready = new Promise((resolve) => client.once('ready', () => resolve(null)));
    await client.connect();
    await ready;
  });
  afterAll(async () => {
    client.disconnect(false);
    await discord.close();
  });

  const quiet = { allowedMentions: { everyone: false, roles: false, users: false } };

  async function answer(
    interaction: CommandInteraction | ComponentInteraction | ModalSubmitInteraction | Json,
  ): Promise<void> {
    if (interaction.type === 4) return void (await interaction.result([{ name: 'lard', value: 'lard' }]));
    if (interaction.type === 3)
      return void (await interaction.editParent({ content: 'pressed', components: [], ...quiet }));
    if (interaction.type === 5) return void (await interaction.createMessage({ content: 'submitted', ...quiet }));
    switch (interaction.data.name) {
      case 'modal':
        return void (await interaction.createModal({
          customID: 'form',
          title: 'Form',
          components: [{ type: 1, components: [{ type: 4, customID: 'text', label: 'Text', style: 2 }] }],
        }));
      case 'later':
        await interaction.defer(64);
        return void (await interaction.editOriginal({
          content: 'later',
          ...quiet,
          files: [{ name: 'a.txt', contents: Buffer.from('file') }],
        }));
      default:
        await interaction.createMessage({
          content: 'now',
          flags: 64,
          components: [{ type: 1, components: [{ type: 2, style: 2, label: 'Go', customID: 'go' }] }],
          ...quiet,
        });
        await interaction.createFollowup({ content: 'more', ...quiet });
    }
  }
  const settled = async (): Promise<void> => void (await Promise.all(done.splice(0)));

  test('identifies, is ready, and finds its application', () => {
    expect(client.ready).toBe(true);
    expect(discord.connections()[0]?.intents).toBe(0);
  });

  test('answers a command and follows up', async () => {
    const callback = await discord.interact(slash('now'));
    await settled();
    expect(callback).toMatchObject({ type: 4, data: { content: 'now', flags: 64 } });
    expect(discord.recorded.at(-1)).toMatchObject({ kind: 'followUp', status: 200 });
  });

  test('defers, and edits with a file', async () => {
    const interaction = slash('later');
    expect((await discord.interact(interaction)).type).toBe(5);
    await settled();
    expect(discord.messageOf(interaction)).toMatchObject({ content: 'later' });
    expect(await discord.recorded.at(-1)?.files[0]?.text()).toBe('file');
  });

  test('completes, presses and opens forms', async () => {
    expect((await discord.interact(typing('now', 'la'))).data.choices).toEqual([{ name: 'lard', value: 'lard' }]);
    const first = slash('now');
    await discord.interact(first);
    await settled();
    expect((await discord.interact(press(discord.messageOf(first), 'go'))).type).toBe(7);
    expect((await discord.interact(slash('modal'))).type).toBe(9);
    expect((await discord.interact(submit('form', 'text', undefined))).data.content).toBe('submitted');
    await settled();
  });

  test('registers commands', async () => {
    await client.application.bulkEditGlobalCommands([{ type: 1, name: 'check', description: 'is it right' }]);
    expect(discord.commands().map(({ name }) => name)).toEqual(['check']);
  });

  test('resumes after a dropped line', async () => {
    discord.connections()[0]?.drop();
    await discord.until(() => discord.connections()[0]?.resumed, 'a resumption');
    expect((await discord.interact(slash('now'))).type).toBe(4);
    await settled();
  });

  test('waits out a limit', async () => {
    discord.fault({
      on: /callback/,
      times: 1,
      does: {
        status: 429,
        body: { message: 'slow', retry_after: 0.05, global: false },
        headers: {
          'retry-after': '0.05',
          'x-ratelimit-scope': 'user',
          'x-ratelimit-reset-after': '0.05',
          'x-ratelimit-limit': '1',
          'x-ratelimit-remaining': '0',
        },
      },
    });
    expect((await discord.interact(slash('now'))).type).toBe(4);
    await settled();
  });

  test('made no body with a flaw', () => {
    expect(discord.flaws()).toEqual([]);
  });
});

const quiet = { allowed_mentions: { parse: [] } };
const button = (more: Json = {}) => ({ type: 2, style: 2, label: 'a', custom_id: 'x', ...more });
const row = (...components: Json[]) => ({ type: 1, components });
const sends = (data: Json) => ({ type: 4, data: { content: 'a', ...quiet, ...data } });
const choice = (more: Json) =>
  sends({ components: [row({ type: 3, custom_id: 'x', options: [{ label: 'a', value: 'a' }], ...more })] });
const command = (more: Json) => ({ name: 'a', description: 'b', type: 1, ...more });
const option = (more: Json) => command({ options: [{ type: 3, name: 'a', description: 'b', ...more }] });
const many = (count: number, make: (i: number) => Json) => Array.from({ length: count }, (_, i) => make(i));

describe('the judges', () => {
  const good: readonly (readonly [Body, Json])[] = [
    ['message', sends({ flags: 68, components: [row(...many(5, (i) => button({ custom_id: `${i}` })))] })],
    ['message', sends({ content: 'x'.repeat(2000) })],
    ['message', { type: 5, data: { flags: 64 } }],
    ['update', { type: 6 }],
    ['update', { type: 7, data: { content: 'a', components: [], ...quiet } }],
    ['choices', { type: 8, data: { choices: many(25, (i) => ({ name: `${i}`, value: 'x'.repeat(100) })) } }],
    ['edit', { ...quiet, attachments: [{ id: '0', filename: 'a.png', description: 'a curve' }] }],
    ['create', { content: 'a', nonce: '1', enforce_nonce: true, ...quiet }],
    ['command', option({ max_length: 6000, autocomplete: true })],
    ['command', { name: 'Check this', type: 3 }],
  ];
  test.each(good)('pass a good %s', (kind, body) => {
    expect([...againstSchema(kind, body), ...againstRules(kind, body)]).toEqual([]);
  });

  const bad: readonly (readonly [string, Body, Json])[] = [
    ['a misspelt key', 'message', sends({ allowedMentions: {} })],
    ['no word on mentions', 'message', { type: 4, data: { content: 'a' } }],
    ['mentions of users', 'message', sends({ allowed_mentions: { parse: ['users'] } })],
    ['a list of users', 'message', sends({ allowed_mentions: { parse: [], users: ['1'] } })],
    ['2,001 characters', 'message', sends({ content: 'x'.repeat(2001) })],
    ['2,001 characters to a channel', 'create', { content: 'x'.repeat(2001), ...quiet }],
    ['nothing', 'message', sends({ content: ' ' })],
    ['six rows', 'message', sends({ components: many(6, (i) => row(button({ custom_id: `${i}` }))) })],
    ['six buttons', 'message', sends({ components: [row(...many(6, (i) => button({ custom_id: `${i}` })))] })],
    ['the same id twice', 'message', sends({ components: [row(button()), row(button())] })],
    ['an id of 101 characters', 'message', sends({ components: [row(button({ custom_id: 'x'.repeat(101) }))] })],
    ['a label of 81 characters', 'message', sends({ components: [row(button({ label: 'x'.repeat(81) }))] })],
    ['a button without a label', 'message', sends({ components: [row(button({ label: '' }))] })],
    [
      'a choice beside a button',
      'message',
      sends({ components: [row(button(), { type: 3, custom_id: 'y', options: [{ label: 'a', value: 'a' }] })] }),
    ],
    ['26 options', 'message', choice({ options: many(26, (i) => ({ label: 'a', value: `${i}` })) })],
    ['the same value twice', 'message', choice({ options: many(2, () => ({ label: 'a', value: 'a' })) })],
    ['a flag that is not for messages', 'message', sends({ flags: 1 })],
    ['a deferral with content', 'message', { type: 5, data: { flags: 64, content: 'a' } }],
    ['a change to private', 'update', { type: 7, data: { content: 'a', flags: 64, ...quiet } }],
    ['a picture without a text', 'edit', { ...quiet, attachments: [{ id: '0', filename: 'a.png' }] }],
    ['26 choices', 'choices', { type: 8, data: { choices: many(26, (i) => ({ name: `${i}`, value: 'a' })) } }],
    ['a choice of 101 characters', 'choices', { type: 8, data: { choices: [{ name: 'a', value: 'x'.repeat(101) }] } }],
    [
      'a title of 46 characters',
      'modal',
      {
        type: 9,
        data: {
          custom_id: 'a',
          title: 'x'.repeat(46),
          components: [row({ type: 4, custom_id: 'a', style: 2, label: 'a' })],
        },
      },
    ],
    [
      'six fields',
      'modal',
      {
        type: 9,
        data: {
          custom_id: 'a',
          title: 'a',
          components: many(6, (i) => row({ type: 4, custom_id: `${i}`, style: 2, label: 'a' })),
        },
      },
    ],
    ['capitals in a name', 'command', command({ name: 'Check' })],
    ['a space in a name', 'command', command({ name: 'a b' })],
    ['no description', 'command', command({ description: '' })],
    ['a description of a menu', 'command', command({ type: 3 })],
    ['an option twice', 'command', command({ options: many(2, () => ({ type: 3, name: 'a', description: 'b' })) })],
    [
      'required after optional',
      'command',
      command({
        options: [
          { type: 3, name: 'a', description: 'b', required: false },
          { type: 3, name: 'c', description: 'b', required: true },
        ],
      }),
    ],
    ['choices and completion', 'command', option({ autocomplete: true, choices: [{ name: 'a', value: 'a' }] })],
    ['a value of 101 characters', 'command', option({ choices: [{ name: 'a', value: 'x'.repeat(101) }] })],
    [
      '8,001 characters',
      'command',
      command({
        options: many(25, (i) => ({
          type: 3,
          name: `a${i}`,
          description: 'b',
          choices: many(10, (j) => ({ name: `${j}${'x'.repeat(20)}`, value: 'y'.repeat(20) })),
        })),
      }),
    ],
  ];
  test.each(bad)('find %s', (_name, kind, body) => {
    expect([...againstSchema(kind, body), ...againstRules(kind, body)]).not.toEqual([]);
  });

  test('find a name that is there twice', () => {
    expect(againstList([command({}), command({})])).not.toEqual([]);
  });
});

// Registration against the stand-in, through the REST client of discord.js.
import { REST } from 'discord.js';
import { afterEach, describe, expect, test } from 'vitest';
import { forms } from '../../adapters/discord/forms.ts';
import { changes, type Kept, register } from '../../adapters/discord/register.ts';
import { declarations } from '../../src/index.ts';
import { applicationId, token } from './standin/interactions.ts';
import { againstList, againstRules } from './standin/rules.ts';
import { againstSchema } from './standin/schema.ts';
import { createStandIn, type Json, type StandIn } from './standin/server.ts';

let discord: StandIn;
afterEach(() => discord.close());

async function run(more: { commands?: readonly Json[]; server?: string; dryRun?: boolean } = {}, kept?: StandIn) {
  discord = kept ?? (await createStandIn({ token, applicationId, commands: more.commands ?? [] }));
  const rest = new REST({ api: discord.api, version: '10' }).setToken(token);
  const lines: string[] = [];
  await register({
    rest,
    applicationId,
    server: more.server ?? null,
    dryRun: more.dryRun ?? false,
    print: (line) => lines.push(line),
  });
  return lines;
}

const puts = () => discord.recorded.filter(({ method }) => method === 'PUT');
const stray = { id: '7', name: 'forgotten', type: 1, description: 'of another time', options: [] };
const entryPoint = { id: '8', name: 'launch', type: 4, description: '', handler: 2 };

describe('registration', () => {
  test('adds what is new, removes strays, leaves the way into an activity', async () => {
    const lines = await run({ commands: [stray, entryPoint] });
    expect(lines).toEqual(expect.arrayContaining(['+ check (new)', '- forgotten (removed)', 'Registered everywhere.']));
    expect(discord.flaws()).toEqual([]);
    const names = discord.commands().map(({ name }) => name);
    expect(names).toEqual(
      expect.arrayContaining([...declarations.map(({ id }) => id), 'ask', 'Check this recipe', 'launch']),
    );
    expect(names).not.toContain('forgotten');
  });

  test('has nothing to do a second time, though Discord fills in what was left out', async () => {
    await run();
    const lines = await run({}, discord);
    expect(lines.at(-1)).toBe('Nothing to do.');
    expect(lines.filter((line) => !line.startsWith('='))).toEqual(['Nothing to do.']);
    expect(puts()).toHaveLength(1);
  });

  test('tells one changed description', async () => {
    await run();
    discord.commands()[0].description = 'something else';
    const lines = await run({ dryRun: true }, discord);
    expect(lines.filter((line) => line.startsWith('~'))).toEqual([`~ ${declarations[0]?.id} (changed)`]);
  });

  test('sends nothing when it is dry', async () => {
    const lines = await run({ commands: [stray], dryRun: true });
    expect(lines.at(-1)).toMatch(/dry run/);
    expect(puts()).toEqual([]);
  });

  test('on one server leaves out what only global commands have, and warns of doubles', async () => {
    await run();
    const lines = await run({ server: '400' }, discord);
    expect(lines).toContain('Registered on server 400.');
    expect(lines.some((line) => line.startsWith('!') && line.includes('twice'))).toBe(true);
    for (const one of puts().at(-1)?.body ?? []) expect(one).not.toHaveProperty('integration_types');
    expect(discord.flaws()).toEqual([]);
  });

  test('is refused with a wrong token', async () => {
    discord = await createStandIn({ token, applicationId });
    const rest = new REST({ api: discord.api, version: '10' }).setToken('wrong');
    const print = () => {};
    await expect(register({ rest, applicationId, server: null, dryRun: false, print })).rejects.toThrow(/Unauthorized/);
  });
});

describe('the forms', () => {
  test('of every declaration are within the schema and the rules, in any language', async () => {
    discord = await createStandIn({ token, applicationId });
    const german = { check: 'prüfen', [declarations[0]?.summary ?? '']: 'Stimmt die Lauge? '.repeat(3) };
    for (const all of [forms(declarations), forms(declarations, { de: german })]) {
      expect(againstList(all)).toEqual([]);
      for (const one of all) expect([...againstSchema('command', one), ...againstRules('command', one)]).toEqual([]);
    }
    const check = forms(declarations, { de: german }).find(({ name }) => name === 'check');
    expect(check?.name_localizations).toEqual({ de: 'prüfen' });
  });

  test('have every declared option, none of them required', async () => {
    discord = await createStandIn({ token, applicationId });
    for (const { id, options } of declarations) {
      const form = forms(declarations).find(({ name }) => name === id);
      expect(form?.options?.map(({ name }) => name)).toEqual([
        'text',
        ...Object.keys(options).map((key) => key.toLowerCase()),
      ]);
    }
  });

  test('ask for no permission and are for servers, direct messages and a person’s own install', async () => {
    discord = await createStandIn({ token, applicationId });
    for (const form of forms(declarations)) {
      expect(form).not.toHaveProperty('default_member_permissions');
      expect(form.contexts).toEqual([0, 1, 2]);
      expect(form.integration_types).toEqual([0, 1]);
    }
  });

  test('differ from what is kept only where people see it', async () => {
    discord = await createStandIn({ token, applicationId });
    const [form] = forms(declarations);
    if (!form) throw new Error('no form');
    const kept = {
      ...form,
      id: '1',
      version: '2',
      nsfw: false,
      options: form.options?.map((o) => ({ required: false, ...o })),
    };
    expect(changes([form], [kept as unknown as Kept])[0]?.sign).toBe('=');
    expect(changes([form], [{ ...kept, options: [] } as unknown as Kept])[0]?.sign).toBe('~');
  });
});

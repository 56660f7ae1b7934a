// Which servers the bot is in, asked of the stand-in through the REST client of discord.js.
import { REST } from 'discord.js';
import { expect, test } from 'vitest';
import { watchServers } from '../../adapters/discord/servers.ts';
import { applicationId, token } from './standin/interactions.ts';
import { createStandIn } from './standin/server.ts';

async function seen(servers: readonly string[], by = token) {
  const discord = await createStandIn({ token, applicationId, servers });
  const over = new AbortController();
  const notes: string[] = [];
  const told: (readonly string[])[] = [];
  const rest = new REST({ api: discord.api, version: '10', retries: 0 }).setToken(by);
  const present = async (platform: string, communities: readonly string[]): Promise<void> => {
    expect(platform).toBe('discord');
    told.push(communities);
  };
  const watching = watchServers({
    rest,
    bot: { present },
    log: ({ event }) => notes.push(event),
    stop: over.signal,
  });
  await expect.poll(() => told.length + notes.length).toBe(1);
  over.abort();
  await watching;
  await discord.close();
  return { told, notes };
}

test.each([0, 1, 199, 200, 201, 450])('all of %i servers are told', async (count) => {
  const servers = Array.from({ length: count }, (_, k) => String(100_000_000_000_000_000n + BigInt(k)));
  expect(await seen(servers)).toEqual({ told: [servers], notes: [] });
});

test('a list that can’t be had takes nothing away', async () => {
  expect(await seen(['100000000000000000'], 'another token')).toEqual({ told: [], notes: ['servers-unknown'] });
});

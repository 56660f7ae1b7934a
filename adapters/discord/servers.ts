/**
 * Which servers the bot is in, looked at once a day: from those that have removed it, what their rooms keep goes after
 * the core's grace. The gateway would tell of a removal only to bots that receive every server whole.
 */
import { setTimeout as pause } from 'node:timers/promises';
import type { REST } from 'discord.js';
import type { Bot } from '../../src/index.ts';
import type { Note } from '../log.ts';
import { persist } from './rest.ts';

const day = 24 * 60 * 60_000;

/** Servers that one call tells: https://docs.discord.com/developers/resources/user#get-current-user-guilds */
const page = 200;

export interface ServersOptions {
  readonly rest: Pick<REST, 'get'>;
  readonly bot: Pick<Bot, 'present'>;
  readonly log: (note: Note) => void;
  readonly stop: AbortSignal;
}

async function serversOf(rest: Pick<REST, 'get'>): Promise<readonly string[]> {
  const ids: string[] = [];
  for (;;) {
    const query = new URLSearchParams({ limit: String(page), after: ids.at(-1) ?? '0' });
    const found = (await persist(() => rest.get('/users/@me/guilds', { query }), 500, 10_000)) as readonly {
      readonly id: string;
    }[];
    ids.push(...found.map(({ id }) => id));
    if (found.length < page) return ids;
  }
}

/** Until it is stopped. A list that could not be had takes nothing away. */
export async function watchServers({ rest, bot, log, stop }: ServersOptions): Promise<void> {
  while (!stop.aborted) {
    try {
      await bot.present('discord', await serversOf(rest));
    } catch (error) {
      log({ level: 'warn', event: 'servers-unknown', error });
    }
    await pause(day, undefined, { signal: stop, ref: false }).catch(() => {});
  }
}

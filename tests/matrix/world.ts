// What a live test is made of: the server, humans, the bot with its own folder, and all of it closed afterwards.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inject } from 'vitest';
import { type Bot, startBot } from './bot.ts';
import { type Human, openHuman, type Room } from './human.ts';
import { type Line, openLine } from './line.ts';
import { type Address, register } from './synapse/server.ts';

export interface World {
  readonly server: Address;
  readonly bot: Bot;
  readonly botId: string;
  /** The folder of the bot. */
  readonly data: string;
  readonly line: Line;
  /** Somebody new. */
  readonly human: (name?: string) => Promise<Human>;
  /** Kills the bot where it still runs, and starts it again; waits until it answers unless `waits` is false. */
  readonly again: (waits?: boolean, env?: Readonly<Record<string, string>>) => Promise<Bot>;
  /**
   * A new room of somebody with the bot in it. Unless it is `direct`, somebody else is invited who never comes: a room
   * of two is a direct chat, whatever it is called.
   */
  readonly room: (human: Human, room?: Room) => Promise<string>;
  readonly close: () => Promise<void>;
}

let made = 0;
/** Names that no other test file has. */
const named = (name: string): string => {
  made += 1;
  return `${name}-${process.pid}-${Date.now().toString(36)}-${made}`;
};

export interface WorldOptions {
  readonly server?: Address;
  readonly env?: Readonly<Record<string, string>>;
  /** Whether the bot starts at once. */
  readonly starts?: boolean;
  /** Whether the bot speaks through the proxy. */
  readonly proxied?: boolean;
}

export async function openWorld(options: WorldOptions = {}): Promise<World> {
  const { server = inject('synapse'), env = {}, starts = true, proxied = false } = options;
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-world-'));
  const data = join(folder, 'bot');
  const user = named('bot');
  const botId = await register(server, user);
  const bystander = await register(server, named('bystander'));
  const line = await openLine(server.url);
  const humans: Human[] = [];
  const begin = (more: Readonly<Record<string, string>> = {}): Bot =>
    startBot({ url: proxied ? line.url : server.url, user, data, env: { ...env, ...more } });
  let bot: Bot | undefined;
  if (starts) {
    bot = begin();
    await bot.ready();
  }
  return {
    server,
    get bot() {
      if (!bot) throw new Error('no bot was started');
      return bot;
    },
    botId,
    data,
    line,
    human: async (name = 'ann') => {
      const own = named(name);
      await register(server, own);
      const human = await openHuman(server.url, own, join(folder, own));
      humans.push(human);
      return human;
    },
    again: async (waits = true, more = {}) => {
      await bot?.kill();
      bot = begin(more);
      if (waits) await bot.ready();
      return bot;
    },
    room: async (human, room = {}) => {
      const others = room.direct ? [] : [bystander];
      const id = await human.create({ ...room, invite: [...(room.invite ?? []), ...others, botId] });
      await human.waitFor(id, botId);
      return id;
    },
    close: async () => {
      await bot?.kill();
      await Promise.all(humans.map((human) => human.leave()));
      await line.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

// The adapter as it runs, on a stand-in: real discord.js, real HTTP and WebSocket, and the real core where no other
// bot is given.

import { createDesk } from '../../adapters/discord/desk.ts';
import { runGateway } from '../../adapters/discord/gateway.ts';
import { downloader } from '../../adapters/discord/told.ts';
import type { Note } from '../../adapters/log.ts';
import { type Bot, createBot, declarations } from '../../src/index.ts';
import { applicationId, token } from './standin/interactions.ts';
import { createStandIn, type Options, type StandIn } from './standin/server.ts';

export interface House {
  readonly discord: StandIn;
  readonly notes: readonly Note[];
  /** Stops the bot; the status it ended with. */
  readonly stop: () => Promise<number>;
  readonly ended: Promise<number>;
  readonly close: () => Promise<void>;
}

export interface HouseOptions extends Partial<Options> {
  readonly bot?: Bot;
  readonly directMessages?: boolean;
  readonly patience?: number;
  readonly discord?: StandIn;
  /** The token that the bot has; else the one that Discord knows. */
  readonly has?: string;
}

/** Waits until the bot listens, unless `waits` is false. */
export async function openHouse(options: HouseOptions = {}, waits = true): Promise<House> {
  const { bot = createBot(), directMessages = false, pace = 1, patience, has = token, ...more } = options;
  const discord = options.discord ?? (await createStandIn({ token, applicationId, pace, ...more }));
  const stop = new AbortController();
  const notes: Note[] = [];
  const ended = runGateway({
    token: has,
    api: discord.api,
    directMessages,
    pace,
    ...(patience === undefined ? {} : { patience }),
    desk: createDesk({ bot, declarations, download: downloader(discord.host), tells: true }),
    log: (note) => {
      notes.push(note);
      discord.stir();
    },
    stop: stop.signal,
  });
  if (waits) await discord.until(() => notes.some(({ event }) => event === 'gateway-ready'), 'the bot');
  const stopNow = async (): Promise<number> => {
    stop.abort();
    return ended;
  };
  return {
    discord,
    notes,
    stop: stopNow,
    ended,
    close: async () => {
      await stopNow();
      if (!options.discord) await discord.close();
    },
  };
}

import { REST } from 'discord.js';
import { createBot, declarations } from '../../src/index.ts';
import type { Config } from '../config.ts';
import { keptIn } from '../kept.ts';
import { openLog } from '../log.ts';
import { stopSignal } from '../stop.ts';
import { createTeller } from './bell.ts';
import { createDesk } from './desk.ts';
import { runGateway } from './gateway.ts';
import { watchServers } from './servers.ts';
import { readSettings } from './settings.ts';
import { downloader } from './told.ts';

/** The bot on Discord's gateway, until SIGTERM, SIGINT or a refusal that trying again cannot mend. */
export async function start({ log: file, data }: Config): Promise<void> {
  const settings = readSettings(process.env, ['token']);
  if (!settings.ok) {
    process.stderr.write(`lyeward: ${settings.message}\n`);
    process.exitCode = 78;
    return;
  }
  const { token, api, directMessages } = settings.value;
  const log = openLog(file);
  const bot = createBot({ ...keptIn(data, 'the Discord bot'), zone: 'UTC', recalls: true, log: log.entry });
  const desk = createDesk({ bot, declarations, download: downloader(new URL(api).host), tells: true });
  const { signal, done } = stopSignal();
  const note: typeof log.note = (said) => {
    log.note(said);
    if (said.level === 'fatal') process.stderr.write(`lyeward: ${said['reason']}\n`);
  };
  const over = new AbortController();
  const tell = createTeller({ token, api, desk });
  const rung = bot.ring({ platforms: ['discord'], tell, signal: over.signal, atOnce: true });
  const rest = new REST({ api, version: '10', retries: 1, timeout: 10_000 }).setToken(token);
  void watchServers({ rest, bot, log: note, stop: signal });
  process.exitCode = await runGateway({ token, api, directMessages, desk, log: note, stop: signal });
  over.abort();
  await rung;
  await bot.close();
  done();
}

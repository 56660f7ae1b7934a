import { createBot, declarations } from '../../src/index.ts';
import type { Config } from '../config.ts';
import { keptIn } from '../kept.ts';
import { openLog } from '../log.ts';
import { stopSignal } from '../stop.ts';
import { createDesk } from './desk.ts';
import { createEndpoint } from './http.ts';
import type { Hooks } from './rest.ts';
import { readSettings } from './settings.ts';
import { downloader } from './told.ts';

/** The bot as an HTTP endpoint, until SIGTERM or SIGINT; what is open then is finished. */
export async function start({ log: file, data }: Config): Promise<void> {
  const settings = readSettings(process.env, ['publicKey']);
  if (!settings.ok) {
    process.stderr.write(`lyeward: ${settings.message}\n`);
    process.exitCode = 78;
    return;
  }
  const { publicKey, api, port, token } = settings.value;
  const { entry, note } = openLog(file);
  const bot = createBot({ ...keptIn(data, 'the Discord bot'), zone: 'UTC', recalls: true, log: entry });
  const desk = createDesk({ bot, declarations, download: downloader(new URL(api).host), tells: token !== '' });
  let made: Promise<Hooks> | undefined;
  const hooks = (): Promise<Hooks> => {
    made ??= import('./rest.ts').then(({ createHooks }) => createHooks({ api }));
    return made;
  };
  const { server, drain } = createEndpoint({ publicKey, desk, log: note, hooks });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject).listen(port, resolve);
  });
  const address = server.address();
  const at = typeof address === 'object' && address ? address.port : port;
  process.stdout.write(`lyeward: listening on port ${at}, POST /interactions\n`);
  bot.prepare();
  const { signal, done } = stopSignal();
  // an endpoint that is only to answer needs no token, and loads nothing that writes
  const rung =
    token === ''
      ? null
      : import('./bell.ts').then(({ createTeller }) =>
          bot.ring({ platforms: ['discord'], tell: createTeller({ token, api, desk }), signal, atOnce: true }),
        );
  await new Promise((resolve) => signal.addEventListener('abort', resolve, { once: true }));
  await drain();
  await rung;
  await bot.close();
  done();
}

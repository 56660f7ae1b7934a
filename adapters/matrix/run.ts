/** The adapter as a whole, from its login to its end. */
import { join } from 'node:path';
import type { MatrixClient } from 'matrix-js-sdk';
import type { Bot } from '../../src/index.ts';
import type { Note } from '../log.ts';
import { loadSdk, openClient, type Sdk, syncFilter } from './client.ts';
import { createDesk } from './desk.ts';
import { Fatal } from './fatal.ts';
import type { House } from './house.ts';
import { establish, readRecoveryKey } from './identity.ts';
import { createIntake, type Intake } from './intake.ts';
import { createEars } from './listen.ts';
import { createLookup } from './lookup.ts';
import { createMedia } from './media.ts';
import { openRecords } from './records.ts';
import { createRooms } from './rooms.ts';
import { createSender } from './send.ts';
import { isThere, logoutReason, openSession } from './session.ts';
import type { Settings } from './settings.ts';
import { openFile, type StoreFile } from './store/file.ts';
import { createTeller } from './tell.ts';
import { createReceipts } from './typing.ts';

export interface RunOptions {
  readonly bot: Bot;
  readonly settings: Settings;
  readonly folder: string;
  readonly log: (note: Note) => void;
  /** Something was kept before, so that something may be due. */
  readonly keepsAlready: boolean;
  /** Ends the bot: what is being answered is answered first. */
  readonly stop: AbortSignal;
}

/** Milliseconds that answers on their way have at the end. */
const farewell = 8000;
/** Milliseconds that the server may hold a sync without news: a way that has silently broken is noticed after it. */
const polling = 6000;
/** Milliseconds between looks whether a server that was away is back. */
const looking = 1000;
/** Milliseconds after which it is forgotten which answer belongs to which question. */
const remembered = 30 * 24 * 60 * 60_000;

/** Resolves when it was stopped; throws a `Fatal` where it cannot go on. */
export async function run({ bot, settings, folder, log, keepsAlready, stop }: RunOptions): Promise<void> {
  // What is on its way at the end may still arrive; then nothing is tried any more.
  const over = new AbortController();
  let isAway = false;
  const waiting = (again: number, error: unknown): void => {
    if (!isAway) process.stderr.write(`lyeward: no answer from ${settings.homeserver} yet; trying again\n`);
    isAway = true;
    log({ level: 'warn', event: 'server-away', again, error });
  };
  const broken = Promise.withResolvers<never>();
  broken.promise.catch(() => {});
  const file = openLocked(join(folder, 'store.sqlite'), broken.reject);
  try {
    // Takes a while, in which the server is asked.
    const loading = loadSdk();
    const session = await openSession(settings, folder, { stop, waiting });
    const records = openRecords(file);
    records.purge(Date.now() - remembered);
    let intake: Intake | null = null;
    const { sdk, client } = await openClient({
      homeserver: settings.homeserver,
      session,
      file,
      loading,
      heard: (room, events) => intake?.heard(room, events),
      recoveryKey: () => readRecoveryKey(folder),
      stop,
    });
    const sender = createSender(client, sdk, over.signal);
    const house: House = {
      bot,
      client,
      sdk,
      me: session.user,
      settings,
      records,
      sender,
      lookup: createLookup(client, sdk, over.signal),
      media: createMedia(client, over.signal),
      log,
      stop: over.signal,
    };
    const receipts = createReceipts(client);
    const rooms = createRooms(house);
    const ears = createEars({
      house,
      desk: createDesk(house),
      later: (room, event) => intake?.later(room, event),
      read: receipts.read,
    });
    intake = createIntake({ client, sdk, records, handle: ears.handle, log, stop: over.signal });

    let isReady = false;
    let rung: Promise<void> | null = null;
    const end = ended(client, sdk, settings.homeserver, stop);
    client.on(sdk.ClientEvent.Sync, (state) => {
      if (state !== sdk.SyncState.Syncing && state !== sdk.SyncState.Prepared) return;
      rooms.settle();
      if (isReady) return;
      isReady = true;
      intake?.open();
      rooms.review();
      const tell = createTeller(house, rooms);
      const signal = AbortSignal.any([stop, over.signal]);
      rung = bot.ring({ platforms: ['matrix'], tell, signal, atOnce: keepsAlready });
      process.stdout.write(`lyeward: ready as ${session.user}\n`);
      log({ level: 'info', event: 'ready' });
      const identity = { client, records, folder, user: session.user, password: settings.password };
      establish(identity).catch((error: unknown) => log({ level: 'warn', event: 'not-cross-signed', error }));
      ears.resume().catch((error: unknown) => log({ level: 'warn', event: 'unread-kept', error }));
    });
    const filter = sdk.Filter.fromJson(session.user, '', syncFilter);
    await client.startClient({
      initialSyncLimit: 50,
      filter,
      lazyLoadMembers: true,
      disablePresence: true,
      pollTimeout: polling,
    });
    try {
      // Nothing more may be sent once its keys can't be kept.
      await Promise.race([end, broken.promise]);
    } finally {
      ears.close();
      await intake.close(farewell);
      receipts.close();
      over.abort();
      await rung;
      client.stopClient();
    }
  } finally {
    file.close();
  }
}

/** Resolves when the bot is stopped; throws where the server does not know it any more. */
function ended(client: MatrixClient, sdk: Sdk, homeserver: string, stop: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    let timer: NodeJS.Timeout | undefined;
    const finish = (): void => {
      clearInterval(timer);
      resolve();
    };
    if (stop.aborted) finish();
    stop.addEventListener('abort', finish, { once: true });
    client.on(sdk.HttpApiEvent.SessionLoggedOut, (error) => {
      clearInterval(timer);
      reject(new Fatal(logoutReason(error.data)));
    });
    // The SDK looks every five to ten seconds; people wait.
    client.on(sdk.ClientEvent.Sync, (state) => {
      const isAway = state === sdk.SyncState.Reconnecting || state === sdk.SyncState.Error;
      clearInterval(timer);
      if (!isAway || stop.aborted) return;
      timer = setInterval(async () => {
        if (await isThere(homeserver)) client.retryImmediately();
      }, looking);
    });
  });
}

function openLocked(path: string, onFailure: (error: unknown) => void): StoreFile {
  try {
    return openFile(path, { onFailure });
  } catch (error) {
    if (error instanceof Error && /locked/.test(error.message)) {
      throw new Fatal(`the data folder is in use: another lyeward runs with ${path}`);
    }
    throw error;
  }
}

/** The SDK's client, silent, with its keys in our file, and with nothing of a room's history kept in memory. */
import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk';
import { persist } from './persist.ts';
import type { Session } from './session.ts';
import type { StoreFile } from './store/file.ts';
import { openIndexed } from './store/indexed.ts';
import { makeFetch } from './transport.ts';

export type Sdk = typeof import('matrix-js-sdk');

export interface Opened {
  readonly sdk: Sdk;
  readonly client: MatrixClient;
}

export interface ClientOptions {
  readonly homeserver: string;
  readonly session: Session;
  readonly file: StoreFile;
  readonly loading: ReturnType<typeof loadSdk>;
  /** Hears each room's new events, still encrypted where they are. */
  readonly heard: (room: Room, events: readonly MatrixEvent[]) => void;
  /** What opens the secret storage, as people write it; null where there is none. */
  readonly recoveryKey: () => string | null;
  readonly stop: AbortSignal;
}

/** Milliseconds that one request may take where nothing else is said. */
const patience = 15_000;

const silent = { trace() {}, debug() {}, info() {}, warn() {}, error() {}, getChild: () => silent };

/**
 * The SDK, silent: it logs past the client's logger, tokens among it. Its child loggers take the parent's methods when
 * they are made, so that these are replaced before the rest is loaded.
 */
export async function loadSdk() {
  const { logger } = await import('matrix-js-sdk/lib/logger.js');
  const root = logger as unknown as { methodFactory: () => () => void; rebuild: () => void };
  root.methodFactory = () => () => {};
  root.rebuild();
  const { decodeRecoveryKey } = await import('matrix-js-sdk/lib/crypto-api/index.js');
  return { sdk: await import('matrix-js-sdk'), decodeRecoveryKey };
}

export async function openClient(options: ClientOptions): Promise<Opened> {
  const { homeserver, session, file, loading, heard, recoveryKey, stop } = options;
  Object.assign(globalThis, await openIndexed(file));
  const { sdk, decodeRecoveryKey } = await loading;
  keepNoHistory(sdk, heard);

  const client: MatrixClient = sdk.createClient({
    baseUrl: homeserver,
    accessToken: session.token(),
    userId: session.user,
    deviceId: session.device,
    logger: silent,
    fetchFn: makeFetch({ session, idle: file.idle }),
    localTimeoutMs: patience,
    cryptoCallbacks: {
      getSecretStorageKey: async ({ keys }) => {
        const text = recoveryKey();
        if (text === null) return null;
        const key = decodeRecoveryKey(text);
        for (const [id, about] of Object.entries(keys)) {
          if (await client.secretStorage.checkKey(key, about)) return [id, key];
        }
        return null;
      },
    },
  });
  // It asks the server for what it has not settled yet, and gives up where that does not answer.
  await persist(() => client.initRustCrypto({ cryptoDatabasePrefix: 'lyeward' }), stop);
  holdEachSync(client, file);
  spareQuietSyncs(client);
  // Every start is a first sync to the server, and a first sync does not tell whose devices changed meanwhile.
  await (
    client.getCrypto() as unknown as { markAllTrackedUsersAsDirty: () => Promise<void> }
  ).markAllTrackedUsersAsDirty();
  return { sdk, client };
}

/**
 * Events go to `heard` instead of timelines: nobody would look at them there, and a bot that runs for months must not
 * keep them. Of the SDK's room only its state is left.
 */
function keepNoHistory({ Room: Rooms }: Sdk, heard: ClientOptions['heard']): void {
  Rooms.prototype.addLiveEvents = async function (this: Room, events, { addToState }) {
    if (addToState) this.currentState.setStateEvents(events.filter((event) => event.isState()));
    heard(this, events);
  };
}

/**
 * The encryption's handling of one sync is several transactions, and an end between two of them would lose the key of a
 * device met for the first time: they become one. (`olmMachine` is private in the SDK's types; both are pinned.)
 */
function holdEachSync(client: MatrixClient, { hold, release }: StoreFile): void {
  type Receive = (...all: unknown[]) => Promise<unknown>;
  const { olmMachine } = client.getCrypto() as unknown as { readonly olmMachine: { receiveSyncChanges: Receive } };
  const { receiveSyncChanges } = olmMachine;
  olmMachine.receiveSyncChanges = async (...all) => {
    hold();
    try {
      return await receiveSyncChanges.apply(olmMachine, all);
    } finally {
      release();
    }
  };
}

interface SyncChanges {
  readonly toDeviceEvents: readonly unknown[];
  readonly deviceLists?: { readonly changed?: readonly string[]; readonly left?: readonly string[] };
  readonly oneTimeKeysCounts?: Readonly<Record<string, number>>;
  readonly unusedFallbackKeys?: readonly string[];
}

/** Milliseconds after which the encryption looks at its keys even if nothing has changed. */
const restsFor = 60_000;

/**
 * Most syncs bring the encryption nothing new, but it unpacks its account and writes to the disk at each: five times the
 * work of an answer. Those are kept from it.
 */
function spareQuietSyncs(client: MatrixClient): void {
  const crypto = client.getCrypto() as unknown as { processSyncChanges: (changes: SyncChanges) => Promise<unknown[]> };
  const { processSyncChanges } = crypto;
  let last = '';
  let at = Number.NEGATIVE_INFINITY;
  crypto.processSyncChanges = async (changes) => {
    const { toDeviceEvents, deviceLists, oneTimeKeysCounts, unusedFallbackKeys } = changes;
    const keys = JSON.stringify([oneTimeKeysCounts, unusedFallbackKeys]);
    const isNews =
      toDeviceEvents.length > 0 ||
      (deviceLists?.changed?.length ?? 0) + (deviceLists?.left?.length ?? 0) > 0 ||
      keys !== last ||
      performance.now() - at > restsFor;
    if (!isNews) return [];
    const received = await processSyncChanges.call(crypto, changes);
    last = keys;
    at = performance.now();
    return received;
  };
}

const timelineTypes = ['m.room.message', 'm.room.encrypted', 'm.reaction', 'm.room.redaction'];
const stateTypes = [
  'm.room.create',
  'm.room.member',
  'm.room.encryption',
  'm.room.history_visibility',
  'm.room.power_levels',
  'm.room.tombstone',
  'm.room.name',
  'm.room.canonical_alias',
  'io.element.functional_members',
];

/** The little that is asked of the server: what people say, and what tells who is in a room and how it is kept. */
export const syncFilter = {
  presence: { types: [] },
  account_data: { types: ['m.secret_storage.*', 'm.cross_signing.*'] },
  room: {
    ephemeral: { types: [] },
    account_data: { types: [] },
    state: { lazy_load_members: true, types: stateTypes },
    timeline: { limit: 100, types: [...timelineTypes, ...stateTypes] },
  },
};

/** The same for reading backwards. */
export const backFilter = (me: string): string =>
  JSON.stringify({ not_senders: [me], types: timelineTypes, lazy_load_members: true });

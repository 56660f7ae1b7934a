// What the adapter is measured beside: the least bot on the same library that answers in encrypted rooms and may be
// stopped and started. It says back what it heard, and remembers what it answered. Same settings as the adapter.
import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { MatrixEvent, Room } from 'matrix-js-sdk';
import { openFile } from '../../../adapters/matrix/store/file.ts';
import { openIndexed } from '../../../adapters/matrix/store/indexed.ts';

const baseUrl = process.env['MATRIX_HOMESERVER_URL'] ?? '';
const folder = process.argv.at(-1) ?? '';
mkdirSync(folder, { recursive: true });
const file = openFile(join(folder, 'echo.sqlite'));
Object.assign(globalThis, await openIndexed(file));
const { logger } = await import('matrix-js-sdk/lib/logger.js');
const root = logger as unknown as { methodFactory: () => () => void; rebuild: () => void };
root.methodFactory = () => () => {};
root.rebuild();
const { ClientEvent, createClient, Filter, MatrixEventEvent, RoomEvent, RoomMemberEvent } = await import(
  'matrix-js-sdk'
);
const silent = { trace() {}, debug() {}, info() {}, warn() {}, error() {}, getChild: () => silent };

file.db.exec('CREATE TABLE IF NOT EXISTS seen (event TEXT PRIMARY KEY) WITHOUT ROWID');
const isSeen = file.db.prepare('SELECT 1 FROM seen WHERE event = ?');
const setSeen = file.db.prepare('INSERT OR IGNORE INTO seen VALUES (?)');

const sessionFile = join(folder, 'session.json');
const fetchFn: typeof fetch = async (input, init) => {
  if ((init?.method ?? 'GET') !== 'GET') await file.idle();
  return fetch(input, init);
};
if (!existsSync(sessionFile)) {
  const login = await createClient({ baseUrl, logger: silent }).loginRequest({
    type: 'm.login.password',
    identifier: { type: 'm.id.user', user: process.env['MATRIX_USER'] ?? '' },
    password: process.env['MATRIX_PASSWORD'] ?? '',
    device_id: `ECHO${randomBytes(4).toString('hex')}`,
  });
  writeFileSync(
    sessionFile,
    JSON.stringify({ userId: login.user_id, deviceId: login.device_id, accessToken: login.access_token }),
  );
}
const session = JSON.parse(readFileSync(sessionFile, 'utf8')) as {
  userId: string;
  deviceId: string;
  accessToken: string;
};
const client = createClient({ baseUrl, ...session, logger: silent, fetchFn });
await client.initRustCrypto({ cryptoDatabasePrefix: 'echo' });
type Receive = (...all: unknown[]) => Promise<unknown>;
const { olmMachine } = client.getCrypto() as unknown as { readonly olmMachine: { receiveSyncChanges: Receive } };
const { receiveSyncChanges } = olmMachine;
olmMachine.receiveSyncChanges = async (...all) => {
  file.hold();
  try {
    return await receiveSyncChanges.apply(olmMachine, all);
  } finally {
    file.release();
  }
};

const escaped = (text: string): string => text.replace(/[&<>]/g, (one) => `&#${one.charCodeAt(0)};`);

async function answer(event: MatrixEvent, room: Room): Promise<void> {
  const id = event.getId() ?? '';
  if (event.getSender() === session.userId || event.isState() || isSeen.get(id)) return;
  if ((room.getMember(session.userId)?.events.member?.getTs() ?? 0) > event.getTs()) return;
  await client.decryptEventIfNeeded(event);
  if (event.isDecryptionFailure()) {
    event.once(MatrixEventEvent.Decrypted, () => void answer(event, room));
    return;
  }
  if (event.getType() !== 'm.room.message') return;
  const body = `echo: ${String(event.getContent()['body'])}`;
  const content = {
    msgtype: 'm.notice',
    body,
    format: 'org.matrix.custom.html',
    formatted_body: escaped(body),
    'm.mentions': {},
    'm.relates_to': { 'm.in_reply_to': { event_id: id } },
  };
  type Send = (room: string, thread: null, type: string, content: object, txn: string) => Promise<unknown>;
  await (client.sendEvent as unknown as Send).call(client, room.roomId, null, 'm.room.message', content, `echo${id}`);
  file.write(() => setSeen.run(id));
}

let last = Promise.resolve();
client.on(RoomEvent.Timeline, (event, room, toStart) => {
  if (!room || toStart) return;
  last = last.then(() => answer(event, room)).catch((error) => console.error(error));
});
client.on(RoomMemberEvent.Membership, (_event, member) => {
  if (member.userId === session.userId && member.membership === 'invite') void client.joinRoom(member.roomId);
});
client.once(ClientEvent.Sync, () => console.log('lyeward: ready as the echo'));
const timeline = { limit: 100 };
const filter = Filter.fromJson(session.userId, '', { room: { timeline, state: { lazy_load_members: true } } });
await client.startClient({ initialSyncLimit: 100, filter, lazyLoadMembers: true });

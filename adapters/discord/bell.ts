/** What is told later: in the channel where it was asked for, else by a direct message; seen once, whatever breaks. */
import { REST } from 'discord.js';
import type { Ring, Teller } from '../../src/index.ts';
import type { Desk } from './desk.ts';
import { persist, rawFiles } from './rest.ts';
import { limits, type Told } from './wire.ts';

export interface TellerOptions {
  readonly token: string;
  /** The part before `/v10`. */
  readonly api: string;
  readonly desk: Pick<Desk, 'told' | 'isTold'>;
  /** 1; less makes every wait as much shorter, for tests. */
  readonly pace?: number;
}

/** What a channel says that is closed to the bot, or gone. */
const isClosed = (error: unknown): boolean =>
  error instanceof Error && 'status' in error && (error.status === 403 || error.status === 404);

/** Messages that are looked through for one that may have come through. */
const looked = 50;

export function createTeller({ token, api, desk, pace = 1 }: TellerOptions): Teller {
  const rest = new REST({ api, version: '10', retries: 0, timeout: 8000 * pace }).setToken(token);
  // One 401 on any authorised route makes the REST client drop its token.
  rest.on('response', (_request, { status }) => {
    if (status === 401) setImmediate(() => rest.setToken(token));
  });

  /** Discord drops a second message of the same nonce for some minutes only; after that its own list is looked at. */
  const isThere = async (channel: `${bigint}`, { id }: Ring): Promise<boolean> => {
    const query = new URLSearchParams({ limit: `${looked}` });
    const messages = (await rest.get(`/channels/${channel}/messages`, { query })) as readonly Told[];
    return messages.some((message) => desk.isTold(message, id));
  };

  const write = async (channel: `${bigint}`, ring: Ring, calls: boolean): Promise<void> => {
    // who may not read there may write all the same
    if (ring.attempt > 1 && (await isThere(channel, ring).catch(() => false))) return;
    const { message, files } = desk.told(ring, calls);
    const made = files ? (await files()).slice(0, limits.attachments) : [];
    const attachments = made.map(({ name, description }, i) => ({
      id: `${i}`,
      filename: name,
      ...(description === undefined ? {} : { description }),
    }));
    const body = {
      ...message,
      nonce: ring.id,
      enforce_nonce: true,
      ...(attachments.length > 0 ? { attachments } : {}),
    };
    const send = () => rest.post(`/channels/${channel}/messages`, { body, files: rawFiles(made) });
    await persist(send, 250 * pace, 8000 * pace);
  };

  return async (ring) => {
    const { address, person } = ring;
    if (/^\d+$/.test(address)) {
      try {
        return await write(address as `${bigint}`, ring, true);
      } catch (error) {
        if (!isClosed(error)) throw error;
      }
    }
    const opened = (await rest.post('/users/@me/channels', { body: { recipient_id: person } })) as {
      readonly id: string;
    };
    await write(opened.id as `${bigint}`, ring, false);
  };
}

/** Answers to Discord over REST, kept up through passing faults and within the time that is left. */
import { setTimeout as pause } from 'node:timers/promises';
import { type RawFile, REST } from 'discord.js';
import { createCallback, Refusal } from './callback.ts';
import type { Line } from './serve.ts';
import { deadline } from './serve.ts';
import type { Callback, File, Interaction, Message } from './wire.ts';

/** "Interaction has already been acknowledged": an earlier try of ours came through after all. */
const acknowledged = 40060;

export interface Hooks {
  /** The line of an interaction that came over the gateway. */
  readonly line: (interaction: Interaction) => Line;
  readonly edit: (interaction: Interaction, ...change: Parameters<Line['edit']>) => Promise<void>;
}

export interface HooksOptions {
  /** The part before `/v10`. */
  readonly api: string;
  /** 1; less makes every wait as much shorter, for tests. */
  readonly pace?: number;
}

/** A fault of the network or of the other side; what was refused will be refused again. */
const passes = (error: unknown): boolean =>
  error instanceof Error && (!('status' in error) || typeof error.status !== 'number' || error.status >= 500);

/** Tries again when Discord says, else after `gap`, 2 `gap`, 4 `gap` … ms, until `time` ms are over. */
export async function persist<T>(work: () => Promise<T>, gap: number, time: number): Promise<T> {
  const until = performance.now() + time;
  for (let wait = gap; ; wait *= 2) {
    try {
      return await work();
    } catch (error) {
      const again = error instanceof Refusal ? error.again : null;
      const rest = again ?? wait;
      if ((again === null && !passes(error)) || performance.now() + rest > until) throw error;
      await pause(rest);
    }
  }
}

export const rawFiles = (files: readonly File[]): RawFile[] =>
  files.map(({ name, data, contentType }) => ({ name, data: Buffer.from(data), contentType }));

/**
 * The route of a change carries the interaction's own token: `auth: false`, because a 401 on an authorised route makes
 * the REST client drop the bot's token for good. The client's own tries, which follow each other without a pause, are
 * off. Every interaction has a route of its own, which the client would remember for an hour.
 */
export function createHooks({ api, pace = 1 }: HooksOptions): Hooks {
  const callback = createCallback(api, 1000 * pace);
  const patient = new REST({
    api,
    version: '10',
    retries: 0,
    timeout: 15_000 * pace,
    handlerSweepInterval: 60_000,
    hashSweepInterval: 600_000,
  });

  const first = async (interaction: Interaction, response: Callback): Promise<void> => {
    try {
      await persist(() => callback(interaction, response), 50 * pace, (deadline - 300) * pace);
    } catch (error) {
      if (!(error instanceof Refusal && error.code === acknowledged)) throw error;
    }
  };
  const edit = async (
    { application_id, token }: Interaction,
    body: Partial<Message>,
    files: readonly File[],
  ): Promise<void> => {
    const send = () =>
      patient.patch(`/webhooks/${application_id}/${token}/messages/@original`, {
        body,
        files: rawFiles(files),
        auth: false,
      });
    await persist(send, 250 * pace, 30_000 * pace);
  };
  return {
    edit,
    line: (interaction) => ({
      first: (callback) => first(interaction, callback),
      edit: (message, files) => edit(interaction, message, files),
    }),
  };
}

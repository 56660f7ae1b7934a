/** The bot on Discord's gateway: listens, answers, and stays connected or says why it cannot. */
import { setTimeout as pause } from 'node:timers/promises';
import { Client, Events } from 'discord.js';
import { createHooks, persist, rawFiles } from './rest.ts';
import { type Service, serve } from './serve.ts';
import { type Interaction, limits, type Told } from './wire.ts';

export interface GatewayOptions extends Service {
  readonly token: string;
  readonly api: string;
  /** Plain questions in the bot's own direct messages: one unprivileged intent more. */
  readonly directMessages: boolean;
  /** Ends the bot: what is being answered is answered first. */
  readonly stop: AbortSignal;
  /** 1; less makes every wait as much shorter, for tests. */
  readonly pace?: number;
}

/** Values of `sysexits.h`. */
const status = { stopped: 0, configuration: 78 } as const;

const directMessagesIntent = 1 << 12;

/** Closes after which trying again is of no use: https://docs.discord.com/developers/topics/opcodes-and-status-codes */
const fatalCloses: Readonly<Record<number, string>> = {
  4004: 'Discord refuses the token (4004): look at DISCORD_TOKEN',
  4010: 'Discord refuses the shard (4010)',
  4011: 'Discord wants this bot in shards (4011): use discord-http instead',
  4012: 'Discord no longer knows this version of its API (4012)',
  4013: 'Discord does not know an intent (4013)',
  4014: 'Discord does not allow an intent (4014): DISCORD_DIRECT_MESSAGES needs none that is privileged; look at the bot’s settings',
};

/** A fault of the way in this many times in a row is one of the token. */
const mostRefusals = 3;

/** Milliseconds between attempts to log in. */
const shortest = 1000;
const longest = 60_000;
/** Without a connection for so long the client is made anew. */
const lostAfter = 120_000;

/** Runs until it is stopped or cannot go on; the status for the process to end with. */
export async function runGateway(options: GatewayOptions): Promise<number> {
  const { log, stop, pace = 1 } = options;
  let refusals = 0;
  for (let wait = shortest * pace; !stop.aborted; wait = Math.min(2 * wait, longest * pace)) {
    const end = await connection(options, () => {
      refusals = 0;
      wait = shortest * pace;
    });
    if (end.kind === 'stopped') break;
    if (end.kind === 'fatal') {
      log({ level: 'fatal', event: 'gateway-refused', reason: end.reason });
      return status.configuration;
    }
    refusals = end.kind === 'token' ? refusals + 1 : 0;
    if (refusals >= mostRefusals) {
      log({
        level: 'fatal',
        event: 'gateway-refused',
        reason: 'Discord refuses the token (401): look at DISCORD_TOKEN',
      });
      return status.configuration;
    }
    log({ level: 'warn', event: 'gateway-lost', again: wait, error: end.error });
    await pause(wait, undefined, { signal: stop }).catch(() => {});
  }
  return status.stopped;
}

type End =
  | { readonly kind: 'stopped' }
  | { readonly kind: 'fatal'; readonly reason: string }
  | { readonly kind: 'token' | 'lost'; readonly error: unknown };

/** One client, from its login to its end. */
async function connection(options: GatewayOptions, onReady: () => void): Promise<End> {
  const { token, api, directMessages, stop, log, pace = 1 } = options;
  const client = new Client({
    intents: directMessages ? directMessagesIntent : 0,
    allowedMentions: { parse: [] },
    rest: { api, version: '10', retries: 1, timeout: 10_000 * pace },
  });
  const hooks = createHooks({ api, pace });
  const busy = new Set<Promise<void>>();
  const seen = makeSeen();
  let isOver = false;
  const track = (work: Promise<void>): void => {
    busy.add(work);
    work.finally(() => busy.delete(work));
  };

  // The bodies of the API are what this adapter speaks. The library's own objects are not made of them: nobody would look
  // at them, they take half of the time, and one body without an expected part would end the process.
  const { actions } = client as unknown as { readonly actions: Record<string, { handle: () => void }> };
  for (const name of ['InteractionCreate', 'MessageCreate']) actions[name] = { handle: () => {} };
  const events = client.ws as unknown as NodeJS.EventEmitter;
  events.on('INTERACTION_CREATE', (interaction: Interaction) => {
    if (isOver || seen(interaction.id)) return;
    track(serve(interaction, hooks.line(interaction), options));
  });
  if (directMessages) {
    events.on('MESSAGE_CREATE', (message: Told) => {
      const isPlain = message.type === 0 || message.type === 19;
      if (message.guild_id !== undefined || message.author?.bot || !isPlain || isOver || seen(message.id)) return;
      track(answerDirect(message, client, options));
    });
  }
  // One 401 on any authorised route makes the REST client drop its token.
  client.rest.on('response', (_request, { status: code }) => {
    if (code === 401) setImmediate(() => client.rest.setToken(token));
  });

  const end = new Promise<End>((resolve) => {
    let timer: NodeJS.Timeout | undefined;
    const connected = (): void => {
      clearTimeout(timer);
      timer = undefined;
      // A client that was given up may still find its way: nobody listens to it any more.
      if (isOver) void client.destroy().catch(() => {});
    };
    const away = (): void => {
      // The farewell of a client that is taken down looks like a loss too.
      if (isOver) return;
      timer ??= setTimeout(
        () => finish({ kind: 'lost', error: new Error('no connection for too long') }),
        lostAfter * pace,
      );
    };
    const finish = (found: End): void => {
      isOver = true;
      clearTimeout(timer);
      resolve(found);
    };
    away();
    if (stop.aborted) finish({ kind: 'stopped' });
    stop.addEventListener('abort', () => finish({ kind: 'stopped' }), { once: true });
    client.on(Events.Error, (error) => log({ level: 'warn', event: 'gateway-error', error }));
    client.on(Events.ShardError, (error) => log({ level: 'warn', event: 'gateway-error', error }));
    client.on(Events.ShardReconnecting, away);
    client.on(Events.ShardResume, connected);
    client.on(Events.ShardReady, connected);
    client.on(Events.ClientReady, () => {
      onReady();
      log({ level: 'info', event: 'gateway-ready' });
    });
    client.on(Events.ShardDisconnect, ({ code }) => finish(endOf(code)));
    client.login(token).catch((error: unknown) => {
      const text = error instanceof Error ? error.message : '';
      if (/disallowed intents/i.test(text)) finish(endOf(4014));
      else if (/invalid intents/i.test(text)) finish(endOf(4013));
      else if (/authentication failed/i.test(text)) finish(endOf(4004));
      else finish({ kind: /invalid token|TokenInvalid/i.test(`${text} ${codeOf(error)}`) ? 'token' : 'lost', error });
    });
  });

  const found = await end;
  await Promise.race([Promise.allSettled(busy), pause(10_000 * pace, undefined, { ref: false })]);
  // The library waits for a farewell that may never come, when two closes cross.
  await Promise.race([client.destroy().catch(() => {}), pause(1000, undefined, { ref: false })]);
  return found;
}

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '');

const endOf = (code: number): End => {
  const reason = fatalCloses[code];
  return reason ? { kind: 'fatal', reason } : { kind: 'lost', error: new Error(`closed with ${code}`) };
};

/** Discord may deliver an event twice, after a resumption for example. */
function makeSeen(): (id: string) => boolean {
  const ids = new Set<string>();
  return (id) => {
    if (ids.has(id)) return true;
    ids.add(id);
    if (ids.size > 10_000) for (const eldest of [...ids].slice(0, 5000)) ids.delete(eldest);
    return false;
  };
}

/** The answer to a plain message, in the same channel; the nonce keeps a repeated try from saying it twice. */
async function answerDirect(message: Told, client: Client, { desk, log, pace = 1 }: GatewayOptions): Promise<void> {
  try {
    const { message: answer, files } = await desk.direct(message);
    const { flags = 0, ...rest } = answer;
    const drawn = files ? (await files()).slice(0, limits.attachments) : [];
    const body = {
      ...rest,
      // Nothing is only for you where only you are.
      flags: flags & ~64,
      nonce: message.id,
      enforce_nonce: true,
      ...(drawn.length > 0
        ? {
            attachments: drawn.map(({ name, description }, i) => ({
              id: String(i),
              filename: name,
              ...(description === undefined ? {} : { description }),
            })),
          }
        : {}),
    };
    const send = () => client.rest.post(`/channels/${message.channel_id}/messages`, { body, files: rawFiles(drawn) });
    await persist(send, 250 * pace, 30_000 * pace);
  } catch (error) {
    log({ level: 'error', event: 'direct-message-unanswered', error });
  }
}

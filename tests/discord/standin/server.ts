// A stand-in for Discord: its REST API and its gateway, as far as this adapter goes, with every body judged by the
// published schema, closed, and by the rules of the documentation. It keeps time by a scale: Discord's 3 s are
// 3 s × pace here. It is checked by a second client library in `standin.test.ts`.
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { type WebSocket, WebSocketServer } from 'ws';
import { againstList, againstRules } from './rules.ts';
import { againstSchema, type Body } from './schema.ts';

// biome-ignore lint/suspicious/noExplicitAny: bodies of another program, looked into by tests
export type Json = any;

export interface Recorded {
  readonly method: string;
  readonly path: string;
  readonly kind: Body | 'commands' | 'read';
  readonly body: Json;
  readonly files: readonly { readonly name: string; readonly text: () => Promise<string>; readonly size: number }[];
  readonly flaws: readonly string[];
  readonly status: number;
}

export interface Fault {
  /** Matched against "POST /interactions/…". */
  readonly on: RegExp;
  readonly times: number;
  readonly does:
    | { readonly status: number; readonly body?: Json; readonly headers?: Readonly<Record<string, string>> }
    | 'reset'
    | 'hang'
    /** Carried out, and the answer lost. */
    | 'lose';
}

interface Open {
  readonly interaction: Json;
  readonly since: number;
  acknowledged: Json | null;
  deferred: boolean;
  message: Json | null;
}

export interface Options {
  readonly token: string;
  readonly applicationId: string;
  readonly pace?: number;
  readonly heartbeat?: number;
  readonly commands?: readonly Json[];
  /** Numbers of the servers that the bot is in, ascending. */
  readonly servers?: readonly string[];
  /** False where bodies are only counted. */
  readonly judged?: boolean;
}

export interface StandIn {
  /** The part before `/v10`. */
  readonly api: string;
  readonly host: string;
  readonly recorded: readonly Recorded[];
  /** Every flaw of every body. */
  readonly flaws: () => readonly string[];
  readonly fault: (fault: Fault) => void;
  /** Sends a dispatch to whoever is connected; kept for those who resume. */
  readonly dispatch: (event: string, data: Json) => void;
  /** Sends an interaction over the gateway and waits for its first response. */
  readonly interact: (interaction: Json) => Promise<Json>;
  /** Opens an interaction without the gateway: what the HTTP endpoint is asked. */
  readonly open: (interaction: Json, acknowledgement?: Json) => void;
  /** The message that an interaction's answer is now. */
  readonly messageOf: (interaction: Json) => Json;
  /** Waits until something holds, looked at whenever something happens. */
  readonly until: <T>(look: () => T | undefined | false, why: string) => Promise<T>;
  /** A nonce counts for some minutes: they are over. */
  readonly forgetNonces: () => void;
  /** Lets those who wait look again. */
  readonly stir: () => void;
  readonly connections: () => readonly Connection[];
  readonly commands: (route?: string) => readonly Json[];
  readonly close: () => Promise<void>;
}

export interface Connection {
  readonly identified: Json;
  readonly resumed: boolean;
  readonly close: (code: number) => void;
  readonly drop: () => void;
  readonly send: (payload: Json) => void;
  readonly intents: number;
  /** No heartbeat is acknowledged from now on. */
  readonly deafen: () => void;
}

const gatewayReject = new Map<string, number>();

export async function createStandIn(options: Options): Promise<StandIn> {
  const { token, applicationId, pace = 1, heartbeat = 41_250, judged = true, servers = [] } = options;
  const recorded: Recorded[] = [];
  const faults: { fault: Fault; left: number }[] = [];
  const open = new Map<string, Open>();
  const lists = new Map<string, Json[]>([[`/applications/${applicationId}/commands`, [...(options.commands ?? [])]]]);
  const nonces = new Map<string, Json>();
  /** What was created in each channel, the newest first. */
  const channels = new Map<string, Json[]>();
  const watchers = new Set<() => void>();
  const stir = (): void => {
    for (const watcher of [...watchers]) watcher();
  };
  let nextId = 9_000_000_000_000_000n;
  const newId = (): string => {
    nextId += 1n;
    return String(nextId);
  };

  const bodyOf = async (request: IncomingMessage): Promise<{ body: Json; files: Recorded['files'] }> => {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    const bytes = Buffer.concat(chunks);
    const type = request.headers['content-type'] ?? '';
    if (!type.startsWith('multipart/'))
      return { body: bytes.length > 0 ? JSON.parse(bytes.toString()) : null, files: [] };
    const form = await new Response(bytes, { headers: { 'content-type': type } }).formData();
    const files = [...form].flatMap(([key, value]) =>
      key.startsWith('files[') && value instanceof File
        ? [{ name: value.name, size: value.size, text: () => value.text() }]
        : [],
    );
    return { body: JSON.parse(String(form.get('payload_json'))), files };
  };

  const messageFrom = (interaction: Json, data: Json, id: string): Json => ({
    id,
    channel_id: interaction.channel_id ?? '500',
    author: { id: applicationId, username: 'lyeward', bot: true, discriminator: '0', global_name: null, avatar: null },
    timestamp: new Date().toISOString(),
    edited_timestamp: null,
    tts: false,
    mention_everyone: false,
    mentions: [],
    mention_roles: [],
    pinned: false,
    type: interaction.type === 2 ? 20 : 19,
    embeds: [],
    attachments: [],
    components: [],
    content: '',
    flags: 0,
    ...data,
  });

  const calledBack = (entry: Open, body: Json, withResponse: boolean): { status: number; body: Json } => {
    if (Date.now() - entry.since > 3000 * pace)
      return { status: 404, body: { code: 10062, message: 'Unknown interaction' } };
    if (entry.acknowledged) {
      return { status: 400, body: { code: 40060, message: 'Interaction has already been acknowledged.' } };
    }
    acknowledge(entry, body);
    if (!withResponse) return { status: 204, body: null };
    const { id, type } = entry.interaction;
    const isMessage = body.type >= 4 && body.type <= 7;
    return {
      status: 200,
      body: {
        interaction: { id, type, ...(isMessage ? { response_message_id: entry.message.id } : {}) },
        resource: { type: body.type, ...(isMessage ? { message: entry.message } : {}) },
      },
    };
  };
  const acknowledge = (entry: Open, body: Json): void => {
    entry.acknowledged = body;
    entry.deferred = body.type === 5 || body.type === 6;
    if (body.type === 4) entry.message = messageFrom(entry.interaction, body.data, newId());
    if (body.type === 5)
      entry.message = messageFrom(entry.interaction, { flags: 128 | (body.data?.flags ?? 0) }, newId());
    if (body.type === 7)
      entry.message = { ...entry.interaction.message, ...body.data, flags: entry.interaction.message.flags };
    if (body.type === 6) entry.message = entry.interaction.message;
  };

  const edited = (entry: Open, body: Json, files: Recorded['files']): { status: number; body: Json } => {
    if (Date.now() - entry.since > 900_000 * pace)
      return { status: 401, body: { code: 50027, message: 'Invalid Webhook Token' } };
    if (!entry.message) return { status: 404, body: { code: 10015, message: 'Unknown Webhook' } };
    const { flags: _, attachments, ...rest } = body;
    const kept = (attachments ?? []).map((one: Json) => ({
      ...one,
      id: newId(),
      size: files[Number(one.id)]?.size ?? 0,
      url: `http://${host()}/files/${one.filename}`,
    }));
    entry.message = {
      ...entry.message,
      ...rest,
      ...(attachments ? { attachments: kept } : {}),
      flags: entry.message.flags & ~128,
    };
    return { status: 200, body: entry.message };
  };

  const kinds: Readonly<Record<number, Body>> = {
    1: 'pong',
    4: 'message',
    5: 'message',
    6: 'update',
    7: 'update',
    8: 'choices',
    9: 'modal',
  };

  /** What a request comes to: which schema its body belongs to, and what is answered where it has no flaw. */
  const route = (
    method: string,
    path: string,
    body: Json,
    files: Recorded['files'],
    authorised: boolean,
    query: string,
  ): { kind: Recorded['kind']; run: () => { status: number; body: Json } } | null => {
    const denied = { status: 401, body: { code: 0, message: '401: Unauthorized' } };
    const guarded = (run: () => { status: number; body: Json }) => () => (authorised ? run() : denied);
    const unknown = { status: 404, body: { code: 10015, message: 'Unknown Webhook' } };
    if (method === 'GET' && path === '/gateway/bot') {
      return {
        kind: 'read',
        run: guarded(() => ({
          status: 200,
          body: {
            url: `ws://${host()}`,
            shards: 1,
            session_start_limit: { total: 1000, remaining: 999, reset_after: 86_400_000, max_concurrency: 1 },
          },
        })),
      };
    }
    if (method === 'GET' && path === '/users/@me/guilds') {
      const asked = new URLSearchParams(query);
      const later = servers.filter((id) => BigInt(id) > BigInt(asked.get('after') ?? '0'));
      const told = later
        .slice(0, Number(asked.get('limit') ?? 200))
        .map((id) => ({ id, name: 'a server', owner: false }));
      return { kind: 'read', run: guarded(() => ({ status: 200, body: told })) };
    }
    if (method === 'GET' && path === '/gateway')
      return { kind: 'read', run: () => ({ status: 200, body: { url: `ws://${host()}` } }) };
    if (/^\/applications\/\d+(\/guilds\/\d+)?\/commands$/.test(path)) {
      if (method === 'GET') return { kind: 'read', run: guarded(() => ({ status: 200, body: lists.get(path) ?? [] })) };
      return {
        kind: 'commands',
        run: guarded(() => {
          const kept = (body as Json[]).map((one) => ({
            nsfw: false,
            name_localizations: null,
            description_localizations: null,
            default_member_permissions: null,
            ...one,
            description: one.description ?? '',
            type: one.type ?? 1,
            id: newId(),
            application_id: applicationId,
            version: newId(),
          }));
          lists.set(path, kept);
          return { status: 200, body: kept };
        }),
      };
    }
    const callback = /^\/interactions\/(\d+)\/([^/]+)\/callback$/.exec(path);
    if (method === 'POST' && callback) {
      const entry = open.get(callback[2] ?? '');
      return {
        kind: kinds[body?.type] ?? 'message',
        run: () =>
          entry
            ? calledBack(entry, body, query.includes('with_response=true'))
            : { status: 404, body: { code: 10062, message: 'Unknown interaction' } },
      };
    }
    const original = /^\/webhooks\/\d+\/([^/]+)\/messages\/(?:@|%40)original$/.exec(path);
    if (original) {
      const entry = open.get(original[1] ?? '');
      if (method === 'GET')
        return { kind: 'read', run: () => (entry?.message ? { status: 200, body: entry.message } : unknown) };
      return { kind: 'edit', run: () => (entry ? edited(entry, body, files) : unknown) };
    }
    const webhook = /^\/webhooks\/\d+\/([^/]+)$/.exec(path);
    if (method === 'POST' && webhook) {
      const entry = open.get(webhook[1] ?? '');
      return {
        kind: 'followUp',
        run: () => (entry ? { status: 200, body: messageFrom(entry.interaction, body, newId()) } : unknown),
      };
    }
    if (method === 'POST' && /^\/channels\/\d+\/messages$/.test(path)) {
      return {
        kind: 'create',
        run: guarded(() => {
          const channel = path.split('/')[2] ?? '';
          // "If another message was created by the same author with the same nonce, that message will be returned"
          const before = body.enforce_nonce ? nonces.get(`${channel} ${body.nonce}`) : undefined;
          if (before) return { status: 200, body: before };
          const made = messageFrom({ channel_id: channel, type: 0 }, body, newId());
          nonces.set(`${channel} ${body.nonce}`, made);
          channels.set(channel, [made, ...(channels.get(channel) ?? [])]);
          return { status: 200, body: made };
        }),
      };
    }
    const listed = /^\/channels\/(\d+)\/messages$/.exec(path);
    if (method === 'GET' && listed)
      return { kind: 'read', run: guarded(() => ({ status: 200, body: channels.get(listed[1] ?? '') ?? [] })) };
    // every person has direct messages with the bot: the channel is their number and a 9
    if (method === 'POST' && path === '/users/@me/channels')
      return {
        kind: 'read',
        run: guarded(() => ({ status: 200, body: { id: `9${String(body.recipient_id).slice(-3)}`, type: 1 } })),
      };
    return null;
  };

  const reply = (
    response: ServerResponse,
    status: number,
    body: Json,
    headers: Readonly<Record<string, string>> = {},
  ): void => {
    // A 204 with a type of content would be parsed.
    if (status === 204) response.writeHead(204, headers).end();
    else response.writeHead(status, { 'content-type': 'application/json', ...headers }).end(JSON.stringify(body ?? {}));
  };

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const { method = 'GET' } = request;
    const [path = '', query = ''] = (request.url ?? '').replace(/^\/api\/v10/, '').split('?');
    if (path.startsWith('/files/')) return void response.end(decodeURIComponent(path.slice(7)));
    const { body, files } = await bodyOf(request);
    const hit = faults.find(({ fault, left }) => left > 0 && fault.on.test(`${method} ${path}`));
    if (hit) hit.left -= 1;
    const does = hit?.fault.does;
    if (does === 'hang') return;
    if (does === 'reset') return void (request.socket as Socket).resetAndDestroy();
    const routed = route(method, path, body, files, request.headers.authorization === `Bot ${token}`, query);
    if (!routed) return reply(response, 404, { code: 0, message: `no such route: ${method} ${path}` });
    const { kind, run } = routed;
    const flaws =
      kind === 'read' || !judged
        ? []
        : kind === 'commands'
          ? [
              ...againstList(body),
              ...(body as Json[]).flatMap((one) => [...againstSchema('command', one), ...againstRules('command', one)]),
            ]
          : [...againstSchema(kind, body), ...againstRules(kind, body)];
    const done =
      typeof does === 'object'
        ? { status: does.status, body: does.body ?? { code: 0, message: `${does.status}` } }
        : flaws.length > 0
          ? {
              status: 400,
              body: {
                code: 50035,
                message: 'Invalid Form Body',
                errors: { _errors: flaws.map((message) => ({ code: 'FLAW', message })) },
              },
            }
          : run();
    recorded.push({ method, path, kind, body, files, flaws, status: done.status });
    if (does === 'lose') (request.socket as Socket).resetAndDestroy();
    else reply(response, done.status, done.body, typeof does === 'object' ? does.headers : {});
    stir();
  };

  const http = createServer((request, response) => {
    answer(request, response).catch((error: unknown) => reply(response, 500, { message: String(error) }));
  });
  await new Promise<void>((resolve) => http.listen(0, '127.0.0.1', resolve));
  const host = (): string => `127.0.0.1:${(http.address() as AddressInfo).port}`;

  // The gateway.
  const sockets = new WebSocketServer({ server: http });
  const connections: (Connection & { live: boolean; socket: WebSocket })[] = [];
  const sessions = new Map<string, { readonly events: Json[] }>();
  let current: { session: string; socket: WebSocket } | null = null;
  const user = {
    id: applicationId,
    username: 'lyeward',
    discriminator: '0',
    bot: true,
    avatar: null,
    global_name: null,
  };

  sockets.on('connection', (socket) => {
    const send = (payload: Json): void => {
      if (socket.readyState === socket.OPEN) socket.send(JSON.stringify(payload));
    };
    let deaf = false;
    send({ op: 10, d: { heartbeat_interval: heartbeat } });
    const connected = (identified: Json, resumed: boolean): void => {
      for (const one of connections) if (one.socket === socket) one.live = false;
      connections.push({
        identified,
        resumed,
        intents: identified.intents ?? 0,
        close: (code) => socket.close(code),
        drop: () => socket.terminate(),
        send,
        deafen: () => {
          deaf = true;
        },
        live: true,
        socket,
      });
    };
    socket.on('message', (data) => {
      const { op, d } = JSON.parse(String(data)) as Json;
      if (op === 1 && !deaf) send({ op: 11 });
      if (op === 2) {
        const code = gatewayReject.get(host());
        if (code) return socket.close(code);
        if (String(d.token).replace(/^Bot /, '') !== token) return socket.close(4004);
        const session = newId();
        sessions.set(session, { events: [] });
        current = { session, socket };
        connected(d, false);
        push('READY', {
          v: 10,
          user,
          guilds: [],
          session_id: session,
          resume_gateway_url: `ws://${host()}`,
          shard: d.shard ?? [0, 1],
          application: { id: applicationId, flags: 0 },
          private_channels: [],
          session_type: 'normal',
          relationships: [],
        });
      }
      if (op === 6) {
        const known = sessions.get(d.session_id);
        if (!known) return send({ op: 9, d: false });
        current = { session: d.session_id, socket };
        for (const event of known.events) if (event.s > d.seq) send(event);
        send({ op: 0, t: 'RESUMED', s: known.events.length, d: {} });
        connected(d, true);
      }
      stir();
    });
    socket.on('close', () => {
      for (const one of connections) if (one.socket === socket) one.live = false;
      stir();
    });
  });

  /** To the present session, whether or not somebody listens just now. */
  const push = (event: string, data: Json): void => {
    if (!current) throw new Error('nobody is connected');
    const { events } = sessions.get(current.session) ?? { events: [] };
    const payload = { op: 0, t: event, s: events.length + 1, d: data };
    events.push(payload);
    if (current.socket.readyState === current.socket.OPEN) current.socket.send(JSON.stringify(payload));
  };

  const until: StandIn['until'] = (look, why) =>
    new Promise((resolve, reject) => {
      const timer = setTimeout(() => {
        watchers.delete(watcher);
        reject(new Error(`waited in vain: ${why}`));
      }, 8000);
      const watcher = (): void => {
        const found = look();
        if (found === undefined || found === false) return;
        clearTimeout(timer);
        watchers.delete(watcher);
        resolve(found as never);
      };
      watchers.add(watcher);
      watcher();
    });

  const opened = (interaction: Json): Open => {
    const entry: Open = { interaction, since: Date.now(), acknowledged: null, deferred: false, message: null };
    open.set(interaction.token, entry);
    return entry;
  };

  return {
    api: `http://${host()}/api`,
    host: host(),
    recorded,
    flaws: () => recorded.flatMap(({ flaws, kind }) => flaws.map((flaw) => `${kind}: ${flaw}`)),
    fault: (fault) => faults.push({ fault, left: fault.times }),
    dispatch: push,
    interact: async (interaction) => {
      const entry = opened(interaction);
      push('INTERACTION_CREATE', interaction);
      return until(() => entry.acknowledged ?? undefined, `the answer to interaction ${interaction.id}`);
    },
    open: (interaction, acknowledgement) => {
      const entry = opened(interaction);
      if (acknowledgement) acknowledge(entry, acknowledgement);
    },
    messageOf: ({ token: of }) => open.get(of)?.message,
    until,
    forgetNonces: () => nonces.clear(),
    stir,
    connections: () => connections.filter(({ live }) => live),
    commands: (path = `/applications/${applicationId}/commands`) => lists.get(path) ?? [],
    close: async () => {
      for (const socket of sockets.clients) socket.terminate();
      sockets.close();
      http.closeAllConnections();
      await new Promise((resolve) => http.close(resolve));
    },
  };
}

/** From now on this stand-in closes every IDENTIFY with the code. */
export const rejectIdentify = (standIn: StandIn, code: number): void => void gatewayReject.set(standIn.host, code);

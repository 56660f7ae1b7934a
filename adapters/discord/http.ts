/**
 * The bot as an HTTP endpoint that Discord posts interactions to: no connection of its own, so that replicas behind a
 * balancer share the work. https://docs.discord.com/developers/interactions/receiving-and-responding#security-and-authorization
 */
import { createPublicKey, type KeyObject, verify } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { Hooks } from './rest.ts';
import { type Service, serve } from './serve.ts';
import type { Callback, Interaction } from './wire.ts';

export interface HttpOptions extends Service {
  /** 64 hexadecimal digits. */
  readonly publicKey: string;
  /** Changes to an answer that was given; loaded when the first is needed. */
  readonly hooks: () => Promise<Pick<Hooks, 'edit'>>;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
}

export interface Endpoint {
  readonly server: Server;
  /** Refuses what is new, finishes what is open. */
  readonly drain: () => Promise<void>;
}

/** Bytes of an interaction that may take longer to read than an answer may wait. */
const lengthy = 2048;
/** Seconds that a signature's time may be off, either way. */
export const freshness = 300;
/** Bytes; Discord's largest interaction, a form of 5 × 4,000 characters, stays far below. */
export const largestBody = 262_144;
/** Signatures remembered so that none counts twice; older than `freshness` they are stale anyway. */
const mostRemembered = 100_000;

/** The header of an Ed25519 public key in SubjectPublicKeyInfo, RFC 8410 section 4. */
const spki = Buffer.from('302a300506032b6570032100', 'hex');

const keyFrom = (hex: string): KeyObject =>
  createPublicKey({ key: Buffer.concat([spki, Buffer.from(hex, 'hex')]), format: 'der', type: 'spki' });

export function createEndpoint(options: HttpOptions): Endpoint {
  const { publicKey, log, hooks, now = Date.now } = options;
  const key = keyFrom(publicKey);
  const isNew = makeMemory();
  const door = makeDoor();
  let open = 0;
  let idle = Promise.withResolvers<void>();
  let draining = false;

  /** Time and signature are those of this body, fresh, and not seen before. */
  const isGenuine = (request: IncomingMessage, body: Buffer): boolean => {
    const { 'x-signature-ed25519': signature, 'x-signature-timestamp': time } = request.headers;
    if (typeof signature !== 'string' || typeof time !== 'string') return false;
    const seconds = now() / 1000;
    if (!/^\d{1,12}$/.test(time) || Math.abs(seconds - Number(time)) > freshness) return false;
    // what is no hexadecimal digit ends the bytes before their number is full
    const bytes = Buffer.from(signature, 'hex');
    if (signature.length !== 128 || bytes.length !== 64) return false;
    return (
      verify(null, Buffer.concat([Buffer.from(time), body]), key, bytes) && isNew(bytes.toString('latin1'), seconds)
    );
  };

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    if (request.url === '/health' && request.method === 'GET') return end(response, draining ? 503 : 200);
    if (request.url?.split('?')[0] !== '/interactions') return end(response, 404);
    if (request.method !== 'POST') return end(response, 405, { allow: 'POST' });
    const body = await bodyOf(request);
    if (body === null) return end(response, 413, { connection: 'close' });
    if (!isGenuine(request, body)) return end(response, 401);
    // what takes its time keeps no other answer waiting
    if (body.length > lengthy) door.open();
    const interaction = parsed(body);
    if (!interaction) return end(response, 400);
    let sent = false;
    const line = {
      first: async (callback: Callback): Promise<void> => {
        if (sent) throw new Error('this interaction has been answered');
        sent = true;
        door.leave(response, json(response, callback, draining));
      },
      edit: async (...change: Parameters<Hooks['edit']> extends [Interaction, ...infer C] ? C : never) => {
        await written(response);
        await (await hooks()).edit(interaction, ...change);
      },
    };
    await serve(interaction, line, options);
    if (!sent) end(response, 500);
  };

  // Balancers keep idle connections for a minute; who closes first must be they.
  const server = createServer({ requestTimeout: 10_000, keepAliveTimeout: 75_000 }, async (request, response) => {
    open += 1;
    try {
      await answer(request, response);
    } catch (error) {
      // The other side went away while it was sending.
      log({ level: 'warn', event: 'request-broken', error });
      if (!response.headersSent) response.destroy();
    }
    open -= 1;
    if (open === 0) idle.resolve();
  });

  return {
    server,
    drain: async () => {
      draining = true;
      idle = Promise.withResolvers();
      const closed = new Promise((resolve) => server.close(resolve));
      server.closeIdleConnections();
      if (open > 0) await idle.promise;
      server.closeIdleConnections();
      await closed;
    },
  };
}

function end(response: ServerResponse, status: number, headers: Readonly<Record<string, string>> = {}): void {
  response.writeHead(status, { 'content-length': 0, ...headers }).end();
}

/** Says what the head says, and gives the body. */
function json(response: ServerResponse, callback: Callback, last: boolean): string {
  const body = JSON.stringify(callback);
  response.writeHead(200, {
    'content-type': 'application/json',
    'content-length': Buffer.byteLength(body),
    ...(last ? { connection: 'close' } : {}),
  });
  return body;
}

/**
 * Answers to what came in together leave together, once all of it is answered: each write that wakes whoever waits
 * costs more than the answer.
 */
function makeDoor() {
  const waiting: (() => void)[] = [];
  const open = (): void => {
    for (const leave of waiting.splice(0)) leave();
  };
  return {
    open,
    leave: (response: ServerResponse, body: string): void => {
      if (waiting.length === 0) setImmediate(open);
      // as a string a body leaves in one write together with its head
      waiting.push(() => response.end(body));
    },
  };
}

/** Discord knows no answer to change before it has the first. */
const written = (response: ServerResponse): Promise<void> =>
  new Promise((resolve) => {
    if (response.writableFinished || response.destroyed) resolve();
    else response.once('close', resolve).once('finish', resolve);
  });

/** All bytes, or null where there are too many. By events: an iterator costs a tenth of the whole request. */
function bodyOf(request: IncomingMessage): Promise<Buffer | null> {
  return new Promise((resolve, reject) => {
    if (Number(request.headers['content-length'] ?? 0) > largestBody) {
      resolve(null);
      return;
    }
    const chunks: Buffer[] = [];
    let size = 0;
    request.on('data', (chunk: Buffer) => {
      size += chunk.length;
      if (size > largestBody) {
        request.pause();
        resolve(null);
      } else chunks.push(chunk);
    });
    request.on('end', () => resolve(chunks.length === 1 && chunks[0] ? chunks[0] : Buffer.concat(chunks)));
    request.on('error', reject);
  });
}

function parsed(body: Buffer): Interaction | null {
  try {
    const found: unknown = JSON.parse(body.toString());
    const isOne = typeof found === 'object' && found !== null && 'type' in found && typeof found.type === 'number';
    return isOne ? (found as Interaction) : null;
  } catch {
    return null;
  }
}

/** Whether a signature is met for the first time; two halves, so that nothing is searched for what is stale. */
function makeMemory(): (signature: string, seconds: number) => boolean {
  let young = new Set<string>();
  let old = new Set<string>();
  let since = 0;
  return (signature, seconds) => {
    if (seconds - since > 2 * freshness || young.size >= mostRemembered) {
      old = young;
      young = new Set();
      since = seconds;
    }
    if (young.has(signature) || old.has(signature)) return false;
    young.add(signature);
    return true;
  };
}

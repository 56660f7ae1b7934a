// Stands between the adapter and the server on loopback, and harms what passes: no answer, a late one, a lost one, one
// that was never the server's.
import { Agent, createServer, type IncomingMessage, request, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import type { Json } from './human.ts';

export interface Fault {
  /** Matched against "PUT /_matrix/client/v3/…". */
  readonly on: RegExp;
  /** How many requests it meets; all, where nothing is said. */
  readonly times?: number;
  readonly does:
    | { readonly status: number; readonly body?: Json; readonly headers?: Readonly<Record<string, string>> }
    /** The connection breaks, and the server never hears of it. */
    | 'reset'
    /** No answer, ever, and the connection stays. */
    | 'hang'
    /** Carried out, and the answer lost. */
    | 'lose'
    /** Late by so many milliseconds. */
    | { readonly late: number };
}

export interface Passed {
  readonly method: string;
  readonly path: string;
  /** Milliseconds of `performance.now()` at its arrival. */
  readonly at: number;
  readonly body: string;
  /** 0 where none was given. */
  status: number;
}

export interface Line {
  readonly url: string;
  readonly passed: readonly Passed[];
  readonly fault: (fault: Fault) => void;
  /** No fault any more. */
  readonly mend: () => void;
  /** Nothing listens, and what was open breaks. */
  readonly down: () => Promise<void>;
  readonly up: () => Promise<void>;
  /** Connections stay, and nothing comes through them: as after a pulled cable. Those stay dead for ever. */
  readonly freeze: () => void;
  /** New connections work again. */
  readonly thaw: () => void;
  /** Changes answers to /sync on their way. */
  readonly forge: (change: ((sync: Json) => Json) | null) => void;
  readonly close: () => Promise<void>;
}

export async function openLine(target: string): Promise<Line> {
  const { hostname, port } = new URL(target);
  const agent = new Agent({ keepAlive: true });
  const passed: Passed[] = [];
  const sockets = new Set<Socket>();
  const dead = new WeakSet<Socket>();
  let faults: { fault: Fault; left: number }[] = [];
  let frozen = false;
  let change: ((sync: Json) => Json) | null = null;

  const faultOf = (what: string): Fault['does'] | undefined => {
    const found = faults.find(({ fault, left }) => left > 0 && fault.on.test(what));
    if (!found) return undefined;
    found.left -= 1;
    return found.fault.does;
  };

  function forward(
    incoming: IncomingMessage,
    body: Buffer,
  ): Promise<{ readonly answer: IncomingMessage; readonly body: Buffer }> {
    return new Promise((resolve, reject) => {
      const { method, url: path, headers } = incoming;
      // What is forged has to be read.
      const plain = { ...headers, 'accept-encoding': 'identity', host: `${hostname}:${port}` };
      const outgoing = request({ hostname, port, method, path, headers: plain, agent }, (answer) => {
        const chunks: Buffer[] = [];
        answer.on('data', (chunk: Buffer) => chunks.push(chunk));
        answer.on('end', () => resolve({ answer, body: Buffer.concat(chunks) }));
        answer.on('error', reject);
      });
      outgoing.on('error', reject);
      const drop = (): void => void outgoing.destroy();
      incoming.socket.once('close', drop);
      outgoing.once('close', () => incoming.socket.off('close', drop));
      outgoing.end(body);
    });
  }

  async function handle(incoming: IncomingMessage, response: ServerResponse): Promise<void> {
    const chunks: Buffer[] = [];
    for await (const chunk of incoming) chunks.push(chunk as Buffer);
    const body = Buffer.concat(chunks);
    const { method = '', url: path = '', socket } = incoming;
    const one: Passed = { method, path, at: performance.now(), body: body.toString(), status: 0 };
    passed.push(one);
    if (frozen) dead.add(socket);
    if (dead.has(socket)) return;
    const does = faultOf(`${method} ${path}`);
    if (does === 'hang') return;
    if (does === 'reset') {
      socket.destroy();
      return;
    }
    if (typeof does === 'object' && 'status' in does) {
      one.status = does.status;
      response
        .writeHead(does.status, { 'content-type': 'application/json', ...does.headers })
        .end(typeof does.body === 'string' ? does.body : JSON.stringify(does.body ?? {}));
      return;
    }
    if (does) await new Promise((resolve) => setTimeout(resolve, does === 'lose' ? 0 : does.late));
    const { answer, body: said } = await forward(incoming, body);
    if (does === 'lose') {
      socket.destroy();
      return;
    }
    if (dead.has(socket)) return;
    one.status = answer.statusCode ?? 0;
    const isForged = change && /\/sync\b/.test(path) && answer.statusCode === 200;
    const out = isForged ? Buffer.from(JSON.stringify(change?.(JSON.parse(said.toString())))) : said;
    const headers = { ...answer.headers, 'content-length': String(out.length) };
    delete (headers as Record<string, unknown>)['transfer-encoding'];
    response.writeHead(answer.statusCode ?? 502, headers).end(out);
  }

  const server = createServer((incoming, response) => {
    handle(incoming, response).catch(() => incoming.socket.destroy());
  });
  server.keepAliveTimeout = 60_000;
  server.on('connection', (socket) => {
    sockets.add(socket);
    if (frozen) dead.add(socket);
    socket.on('close', () => sockets.delete(socket)).on('error', () => socket.destroy());
  });
  const listen = (at: number): Promise<void> =>
    new Promise((resolve, reject) => {
      server.once('error', reject).listen(at, '127.0.0.1', () => {
        server.off('error', reject);
        resolve();
      });
    });
  const down = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      for (const socket of sockets) socket.destroy();
    });
  await listen(0);
  const own = (server.address() as AddressInfo).port;

  return {
    url: `http://127.0.0.1:${own}`,
    passed,
    fault: (fault) => faults.push({ fault, left: fault.times ?? Number.POSITIVE_INFINITY }),
    mend: () => {
      faults = [];
    },
    down,
    up: () => listen(own),
    freeze: () => {
      frozen = true;
      for (const socket of sockets) dead.add(socket);
    },
    thaw: () => {
      frozen = false;
    },
    forge: (how) => {
      change = how;
    },
    close: async () => {
      agent.destroy();
      if (server.listening) await down();
    },
  };
}

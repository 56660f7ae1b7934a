/** The few calls that are made without the SDK: logging in, asking who one is, and getting a new token. */
import { setTimeout as pause } from 'node:timers/promises';
import { Fatal } from './fatal.ts';

export interface Called {
  readonly status: number;
  readonly body: Readonly<Record<string, unknown>>;
}

export interface Request {
  readonly method: 'GET' | 'POST';
  /** Behind `/_matrix/client`. */
  readonly path: string;
  readonly token?: string;
  readonly body?: unknown;
}

/** Milliseconds that an answer may take. */
const patience = 30_000;

/** Throws where no answer came, or one that is not JSON. */
export async function call(homeserver: string, { method, path, token, body }: Request): Promise<Called> {
  const response = await fetch(`${homeserver}/_matrix/client${path}`, {
    method,
    headers: {
      ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
      ...(token === undefined ? {} : { Authorization: `Bearer ${token}` }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    signal: AbortSignal.timeout(patience),
  });
  return { status: response.status, body: (await response.json()) as Called['body'] };
}

export interface Persistence {
  readonly stop: AbortSignal;
  /** Hears that the server is away, and for how long it is left in peace (ms). */
  readonly waiting?: (wait: number, error: unknown) => void;
}

/** The same until the server answers: while it is down, breaks, or asks for patience. */
export async function callUntilAnswered(homeserver: string, request: Request, patient: Persistence): Promise<Called> {
  for (let wait = 500; ; wait = Math.min(2 * wait, 30_000)) {
    let error: unknown;
    let asked = 0;
    try {
      const called = await call(homeserver, request);
      if (called.status !== 429 && called.status < 500) return called;
      error = new Error(`status ${called.status}`);
      asked = Number(called.body['retry_after_ms']) || 0;
    } catch (caught) {
      error = caught;
    }
    patient.stop.throwIfAborted();
    patient.waiting?.(Math.max(wait, asked), error);
    await pause(Math.max(wait, asked), undefined, { signal: patient.stop });
  }
}

/** A string of the answer, which the protocol promises. */
export function stringIn({ body, status }: Called, name: string): string {
  const value = body[name];
  if (typeof value !== 'string')
    throw new Fatal(`the server’s answer (${status}) has no ${name}: is this a Matrix server?`);
  return value;
}

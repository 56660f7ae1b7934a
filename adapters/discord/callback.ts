/**
 * The first response to an interaction, posted by the HTTP client that discord.js itself uses. What discord.js lays
 * between (a route, a queue and a signal of its own for each interaction's token) costs more than the sending.
 */
import { setTimeout as pause } from 'node:timers/promises';
import { DefaultUserAgent } from 'discord.js';
import { Pool } from 'undici';
import type { Callback, Interaction } from './wire.ts';

/** What Discord says to a response that it does not take. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  /** Of HTTP. */
  readonly status: number;
  /** Discord's own, 0 where it says none. */
  readonly code: number;
  /** Milliseconds after which it would take it; null where it will not. */
  readonly again: number | null;

  constructor(status: number, code: number, message: string, again: number | null) {
    super(message);
    this.status = status;
    this.code = code;
    this.again = again;
  }
}

interface Said {
  readonly code?: number;
  readonly message?: string;
  /** Which part of the body is wrong. */
  readonly errors?: unknown;
  /** Seconds. */
  readonly retry_after?: number;
  /** The limit is that of the whole bot. */
  readonly global?: boolean;
}

const headers = { 'content-type': 'application/json', 'user-agent': DefaultUserAgent };

/** Milliseconds more than Discord's clock says, which is not ours. */
const margin = 50;

/** One try, which a `Refusal` or a fault of the network ends. `patience`: milliseconds, each for the line and an answer. */
export function createCallback(api: string, patience: number): (to: Interaction, response: Callback) => Promise<void> {
  const { origin, pathname } = new URL(api);
  const root = pathname === '/' ? '' : pathname;
  const pool = new Pool(origin, { connectTimeout: patience, headersTimeout: patience, bodyTimeout: patience });
  /** Until then Discord wants to hear nothing at all; of `performance.now`. */
  let closedUntil = 0;
  return async ({ id, token }, response) => {
    const closed = closedUntil - performance.now();
    if (closed > 0) await pause(closed);
    const path = `${root}/v10/interactions/${id}/${token}/callback`;
    const { statusCode, body } = await pool.request({ path, method: 'POST', headers, body: JSON.stringify(response) });
    if (statusCode < 400) return body.dump();
    const said = (await body.json().catch(() => ({}))) as Said;
    const again = statusCode === 429 ? 1000 * (said.retry_after ?? 1) + margin : null;
    if (said.global && again !== null) closedUntil = performance.now() + again;
    const { code = 0, message = `answered with ${statusCode}`, errors } = said;
    throw new Refusal(statusCode, code, errors ? `${message} ${JSON.stringify(errors)}` : message, again);
  };
}

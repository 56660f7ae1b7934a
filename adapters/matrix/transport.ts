/** How every request of the SDK leaves: after the keys are on the disk, with the newest token, and not for ever. */
import type { Session } from './session.ts';

export interface Transport {
  readonly session: Pick<Session, 'token' | 'renew'>;
  /** Resolves when nothing of the encryption is uncommitted. */
  readonly idle: () => Promise<void>;
}

/** Milliseconds beyond what the server was asked to wait; a sync that took longer makes the next one more patient. */
const leastPatience = 3000;
const mostPatience = 120_000;
/** Of the first sync, which may be long. */
const firstPatience = 300_000;

export function makeFetch({ session, idle }: Transport): typeof fetch {
  let patience = leastPatience;

  /** A connection that went dead is told by silence alone: another one at once, before the SDK waits and asks around. */
  async function sync(url: URL, init: RequestInit): Promise<Response> {
    try {
      return await poll(url, init);
    } catch (error) {
      if (init.signal?.aborted || (error as Error).name !== 'TimeoutError') throw error;
      return poll(url, init);
    }
  }

  async function poll(url: URL, init: RequestInit): Promise<Response> {
    const asked = Number(url.searchParams.get('timeout')) || 0;
    const isFirst = !url.searchParams.has('since');
    const limit = isFirst ? firstPatience : asked + patience;
    const since = performance.now();
    // Whole milliseconds are all that a timer takes.
    const signals = [AbortSignal.timeout(Math.ceil(limit)), ...(init.signal ? [init.signal] : [])];
    try {
      const response = await fetch(url, { ...init, signal: AbortSignal.any(signals) });
      // A server that sends the head and then nothing is as silent as one that sends none.
      const body = await response.arrayBuffer();
      patience = Math.min(mostPatience, Math.max(leastPatience, 2 * (performance.now() - since - asked)));
      return new Response(body, { status: response.status, headers: response.headers });
    } catch (error) {
      patience = Math.min(mostPatience, 2 * patience);
      throw error;
    }
  }

  const once = (url: URL, init: RequestInit): Promise<Response> =>
    url.pathname.endsWith('/sync') ? sync(url, init) : fetch(url, init);

  return async (input, init = {}) => {
    const url = new URL(String(input));
    const headers = new Headers(init.headers);
    if ((init.method ?? 'GET') !== 'GET') await idle();
    if (!headers.has('Authorization')) return once(url, init);
    const token = session.token();
    headers.set('Authorization', `Bearer ${token}`);
    const response = await once(url, { ...init, headers });
    if (response.status !== 401) return response;
    const body = (await response
      .clone()
      .json()
      .catch(() => ({}))) as Record<string, unknown>;
    const hasRunOut = body['errcode'] === 'M_UNKNOWN_TOKEN' && body['soft_logout'] === true;
    if (!hasRunOut || !(await session.renew(token))) return response;
    headers.set('Authorization', `Bearer ${session.token()}`);
    return once(url, { ...init, headers });
  };
}

/** The same request until the server has taken it: while it is down, breaks, or asks for patience. */
import { setTimeout as pause } from 'node:timers/promises';

/** Milliseconds. */
const shortest = 300;
const longest = 5000;
/** The most that a server may ask for. */
const mostAsked = 120_000;

interface Failure {
  readonly name?: string;
  readonly httpStatus?: number;
  readonly data?: { readonly retry_after_ms?: unknown };
  readonly httpHeaders?: Headers;
}

/** No answer came, or one that tells of the server rather than of the request. */
const passing = (error: Failure): boolean =>
  error.httpStatus === undefined
    ? /^(?:ConnectionError|AbortError|TimeoutError|TokenRefreshError)$/.test(error.name ?? '')
    : error.httpStatus === 429 || error.httpStatus === 408 || error.httpStatus >= 500;

function askedFor({ data, httpHeaders }: Failure): number {
  const asked = Number(data?.retry_after_ms) || 1000 * Number(httpHeaders?.get('Retry-After')) || 0;
  return Math.min(asked, mostAsked);
}

/** `attempt` is told how long it may take (ms); what trying again cannot mend is thrown. */
export async function persist<T>(attempt: (patience: number) => Promise<T>, stop: AbortSignal): Promise<T> {
  let patience = 4000;
  for (let wait = shortest; ; wait = Math.min(2 * wait, longest)) {
    stop.throwIfAborted();
    try {
      return await attempt(patience);
    } catch (error) {
      const failure = (error ?? {}) as Failure;
      if (!passing(failure)) throw error;
      patience = Math.min(2 * patience, 120_000);
      await pause(Math.max(wait, askedFor(failure)), undefined, { signal: stop });
    }
  }
}

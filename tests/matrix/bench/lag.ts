// Loaded into a process whose speed inside is measured: milliseconds from an event's arrival with a sync to the begin of
// the request that answers it. It sees them where they pass, at `fetch`.

/** Milliseconds, one for each answer. */
export type Lags = readonly number[];

const arrived = new Map<string, number>();
const lags: number[] = [];
const real = globalThis.fetch;

globalThis.fetch = async (input, init) => {
  const url = String(input instanceof Request ? input.url : input);
  if (/\/send\/m\.room\.(message|encrypted)\//.test(url)) {
    const asked = /"m\.in_reply_to":\{"event_id":"(\$[^"]+)"/.exec(String(init?.body))?.[1];
    const since = asked === undefined ? undefined : arrived.get(asked);
    if (asked !== undefined && since !== undefined) {
      lags.push(performance.now() - since);
      arrived.delete(asked);
    }
  }
  const response = await real(input, init);
  if (!/\/sync\?/.test(url)) return response;
  const body = await response.text();
  const now = performance.now();
  for (const [, id = ''] of body.matchAll(/"event_id":"(\$[^"]+)"/g)) if (!arrived.has(id)) arrived.set(id, now);
  return new Response(body, { status: response.status, headers: response.headers });
};

process.on('message', (message) => {
  if (message === 'lags') process.send?.(lags.splice(0));
});

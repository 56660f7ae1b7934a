/** Aborts at the first SIGTERM or SIGINT; a second one ends the process as the system does. */
export function stopSignal(): { readonly signal: AbortSignal; readonly done: () => void } {
  const stop = new AbortController();
  const names = ['SIGTERM', 'SIGINT'] as const;
  const onSignal = (): void => {
    stop.abort();
    done();
  };
  const done = (): void => {
    for (const name of names) process.off(name, onSignal);
  };
  for (const name of names) process.on(name, onSignal);
  return { signal: stop.signal, done };
}

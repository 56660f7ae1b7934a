/** "Something was kept": for those who wait for it. */
export interface Signal {
  readonly tell: () => void;
  /** Called each time from now on. */
  readonly listen: (hear: () => void) => void;
  /** The first time, also where that was before; or the end. */
  readonly first: (end: AbortSignal) => Promise<void>;
}

export function makeSignal(): Signal {
  let hear: () => void = () => {};
  const { promise, resolve } = Promise.withResolvers<void>();
  return {
    tell: () => {
      resolve();
      hear();
    },
    listen: (listener) => {
      hear = listener;
    },
    first: (end) => {
      end.addEventListener('abort', () => resolve(), { once: true });
      return promise;
    },
  };
}

/** A few things that were made last, found again by what they were made of; the eldest goes. */
export interface Recent<K, V> {
  readonly get: (key: K) => V | undefined;
  readonly set: (key: K, value: V) => void;
}

export function makeRecent<K, V>(most: number): Recent<K, V> {
  // a map keeps the order of entry
  const known = new Map<K, V>();
  return {
    get: (key) => known.get(key),
    set: (key, value) => {
      known.set(key, value);
      if (known.size <= most) return;
      for (const eldest of known.keys()) {
        known.delete(eldest);
        break;
      }
    },
  };
}

/** Keys of IndexedDB as text: the same text for the same key, which `v8.serialize` does not promise. */
type Tagged = readonly ['a', readonly Tagged[]] | readonly ['d' | 'n' | 's' | 'b', string];

function tag(key: unknown): Tagged {
  if (Array.isArray(key)) return ['a', key.map(tag)];
  if (key instanceof Date) return ['d', String(key.getTime())];
  if (key instanceof ArrayBuffer) return ['b', Buffer.from(key).toString('hex')];
  if (ArrayBuffer.isView(key)) return ['b', Buffer.from(key.buffer, key.byteOffset, key.byteLength).toString('hex')];
  if (typeof key === 'number' || typeof key === 'string') return [typeof key === 'number' ? 'n' : 's', String(key)];
  throw new TypeError(`a key of ${typeof key}`);
}

function untag([kind, value]: Tagged): unknown {
  switch (kind) {
    case 'a':
      return value.map(untag);
    case 'd':
      return new Date(Number(value));
    case 'n':
      return Number(value);
    case 'b':
      return new Uint8Array(Buffer.from(value, 'hex')).buffer;
    default:
      return value;
  }
}

export const textOfKey = (key: unknown): string => JSON.stringify(tag(key));
export const keyOfText = (text: string): unknown => untag(JSON.parse(text) as Tagged);

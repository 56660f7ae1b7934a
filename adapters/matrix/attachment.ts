/**
 * A file as it lies on the server of an encrypted room (client-server API, "Sending encrypted attachments"): AES-CTR
 * under a key of its own, which the message carries.
 */
import { createCipheriv, hash, randomBytes } from 'node:crypto';

export interface Sealed {
  readonly data: Buffer;
  /** `file` of the message's content, once the address is known. */
  readonly file: (url: string) => Readonly<Record<string, unknown>>;
}

const unpadded = (bytes: Buffer): string => bytes.toString('base64').replace(/=+$/, '');

export function seal(plain: Uint8Array): Sealed {
  const key = randomBytes(32);
  // The lower half counts blocks, and starts at nothing so that it never overflows.
  const iv = Buffer.concat([randomBytes(8), Buffer.alloc(8)]);
  const cipher = createCipheriv('aes-256-ctr', key, iv);
  const data = Buffer.concat([cipher.update(plain), cipher.final()]);
  const sha256 = unpadded(hash('sha256', data, 'buffer'));
  const jwk = { kty: 'oct', key_ops: ['encrypt', 'decrypt'], alg: 'A256CTR', k: key.toString('base64url'), ext: true };
  return { data, file: (url) => ({ v: 'v2', url, key: jwk, iv: unpadded(iv), hashes: { sha256 } }) };
}

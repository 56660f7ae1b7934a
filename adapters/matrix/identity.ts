/**
 * The bot's own identity, made at its first start: its keys are signed by it (cross-signing), so that people see no
 * warning, and clients that talk to verified devices only talk to it. The recovery key, which opens the private halves
 * kept encrypted on the server, lies in the data folder.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { MatrixClient } from 'matrix-js-sdk';
import { writePrivate } from './account.ts';
import type { Records } from './records.ts';

const recoveryPath = (folder: string): string => join(folder, 'recovery-key');

/** As people write it, in groups of four; null where there is none. */
export function readRecoveryKey(folder: string): string | null {
  try {
    return readFileSync(recoveryPath(folder), 'utf8').trim();
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}

interface IdentityOptions {
  readonly client: MatrixClient;
  readonly records: Records;
  readonly folder: string;
  readonly user: string;
  /** Empty where the bot was given a token: then the server may refuse new keys. */
  readonly password: string;
}

const done = 'identity';

/** Every step may be the last: the next start begins again until all is there. */
export async function establish({ client, records, folder, user, password }: IdentityOptions): Promise<void> {
  if (records.fact(done) !== null) return;
  const crypto = client.getCrypto();
  if (!crypto) throw new Error('no encryption');
  const isOnServer = await crypto.userHasCrossSigningKeys(user, true);
  const hasKeys = (await crypto.getCrossSigningStatus()).privateKeysCachedLocally.masterKey;
  const recovers = !hasKeys && isOnServer && readRecoveryKey(folder) !== null;
  // First what the private halves are kept with: a storage that nobody here can open is replaced by one of our own.
  if (!recovers) {
    await crypto.bootstrapSecretStorage({
      setupNewSecretStorage: true,
      createSecretStorageKey: async () => {
        const key = await crypto.createRecoveryKeyFromPassphrase();
        writePrivate(recoveryPath(folder), `${key.encodedPrivateKey ?? ''}\n`);
        return key;
      },
    });
  }
  await crypto.bootstrapCrossSigning({
    // Keys that were made and never reached the server are made anew.
    setupNewCrossSigning: !recovers && !(hasKeys && isOnServer),
    authUploadDeviceSigningKeys: async (upload) => {
      try {
        await upload(null);
      } catch (error) {
        const session = uiaSession(error);
        if (session === null || password === '') throw error;
        const identifier = { type: 'm.id.user', user };
        await upload({ type: 'm.login.password', identifier, password, session });
      }
    },
  });
  records.setFact(done, String(Date.now()));
}

/** The session of a request that wants to be authorised once more; null where it failed otherwise. */
function uiaSession(error: unknown): string | null {
  const { httpStatus, data } = (error ?? {}) as { httpStatus?: number; data?: { session?: unknown } };
  return httpStatus === 401 && typeof data?.session === 'string' ? data.session : null;
}

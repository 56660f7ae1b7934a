import type { Config } from '../config.ts';
import { type Account, readAccount } from './account.ts';
import { call } from './api.ts';
import { configurationStatus } from './fatal.ts';
import { folderOf } from './folder.ts';
import { type Content, objectIn, textIn } from './told.ts';

/** Prints the bot's devices and their keys, for a person who compares them with what a client shows. */
export async function start({ data }: Config): Promise<void> {
  const account = readAccount(folderOf(data));
  if (!account?.token || !account.user) return fail('the Matrix bot has not logged in yet: start it once');
  const token = account.token;
  try {
    const devices = await call(account.homeserver, { method: 'GET', path: '/v3/devices', token });
    const body = { device_keys: { [account.user]: [] } };
    const keys = await call(account.homeserver, { method: 'POST', path: '/v3/keys/query', token, body });
    if (devices.status !== 200 || keys.status !== 200) {
      return fail(
        `the server answers with ${devices.status} and ${keys.status}: start the bot, which renews its login`,
      );
    }
    const listed: unknown = devices.body['devices'];
    process.stdout.write(`${listOf(account, Array.isArray(listed) ? listed : [], keys.body).join('\n')}\n`);
  } catch (error) {
    fail(`no answer from ${account.homeserver}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

function fail(message: string): void {
  process.stderr.write(`lyeward: ${message}\n`);
  process.exitCode = configurationStatus;
}

/** Groups of four, as clients show a key. */
const inFours = (key: string): string => key.match(/.{1,4}/g)?.join(' ') ?? '';

function listOf({ user, device }: Account, listed: readonly unknown[], keys: Content): readonly string[] {
  const of = (name: string): Content | undefined => objectIn(objectIn(keys, name), user ?? '');
  const keyIn = (name: string): string | null => {
    const [first] = Object.values(objectIn(of(name), 'keys') ?? {});
    return typeof first === 'string' ? first : null;
  };
  const master = keyIn('master_keys');
  const selfSigning = keyIn('self_signing_keys');
  return [
    `${user}`,
    master === null ? 'no identity of its own yet: start the bot' : `identity ${inFours(master)}`,
    ...listed.flatMap((one) => {
      const id = textIn(objectIn({ one }, 'one'), 'device_id') ?? '';
      const name = textIn(objectIn({ one }, 'one'), 'display_name') ?? 'no name';
      const known = objectIn(of('device_keys'), id);
      const key = textIn(objectIn(known, 'keys'), `ed25519:${id}`);
      const signatures = objectIn(objectIn(known, 'signatures'), user ?? '') ?? {};
      const isSigned = selfSigning !== null && `ed25519:${selfSigning}` in signatures;
      return [
        '',
        `device ${id} (${name})${id === device ? ', this bot' : ', NOT this bot: log it out if you do not know it'}`,
        key === null ? 'no keys' : `key ${inFours(key)}`,
        isSigned ? 'signed by the identity' : 'not signed by the identity',
      ];
    }),
  ];
}

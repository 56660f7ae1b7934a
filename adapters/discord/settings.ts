/** What the host says of Discord in the environment. */
import { readFileSync } from 'node:fs';

export interface Settings {
  readonly token: string;
  readonly applicationId: string;
  readonly publicKey: string;
  /** Another REST root, the part before `/v10`. */
  readonly api: string;
  readonly port: number;
  readonly directMessages: boolean;
}

const ownApi = 'https://discord.com/api';

type Needed = 'token' | 'applicationId' | 'publicKey';

export type ReadSettings =
  | { readonly ok: true; readonly value: Settings }
  | { readonly ok: false; readonly message: string };

const variables: Readonly<Record<Needed, string>> = {
  token: 'DISCORD_TOKEN',
  applicationId: 'DISCORD_APPLICATION_ID',
  publicKey: 'DISCORD_PUBLIC_KEY',
};

type Env = Readonly<Record<string, string | undefined>>;

/** A secret may stand in a file instead: `NAME_FILE`. Throws what the file system says. */
function read(env: Env, name: string): string {
  const file = env[`${name}_FILE`];
  return (env[name] ?? (file ? readFileSync(file, 'utf8') : '')).trim();
}

export function readSettings(env: Env, needs: readonly Needed[]): ReadSettings {
  const value: Settings = {
    token: read(env, variables.token).replace(/^Bot /i, ''),
    applicationId: read(env, variables.applicationId),
    publicKey: read(env, variables.publicKey),
    api: (env['DISCORD_API_URL'] ?? ownApi).replace(/\/+$/, ''),
    port: Number(env['DISCORD_HTTP_PORT'] ?? 8080),
    directMessages: /^(1|on|yes|true)$/i.test(env['DISCORD_DIRECT_MESSAGES'] ?? ''),
  };
  const wrong = [
    ...needs
      .filter((key) => value[key] === '')
      .map((key) => `${variables[key]} is not set${key === 'token' ? ', nor DISCORD_TOKEN_FILE' : ''}`),
    ...(needs.includes('applicationId') && value.applicationId !== '' && !/^\d{15,20}$/.test(value.applicationId)
      ? ['DISCORD_APPLICATION_ID must be the number of the application']
      : []),
    ...(needs.includes('publicKey') && value.publicKey !== '' && !/^[0-9a-f]{64}$/i.test(value.publicKey)
      ? ['DISCORD_PUBLIC_KEY must be 64 hexadecimal digits']
      : []),
    ...(URL.canParse(value.api) ? [] : ['DISCORD_API_URL must be an address']),
    ...(Number.isInteger(value.port) && value.port >= 0 && value.port < 65_536
      ? []
      : ['DISCORD_HTTP_PORT must be the number of a port']),
  ];
  return wrong.length === 0 ? { ok: true, value } : { ok: false, message: wrong.join('; ') };
}

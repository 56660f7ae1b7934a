/** What the host says of Matrix in the environment. */
import { readFileSync } from 'node:fs';

export interface Settings {
  readonly homeserver: string;
  /** `@name:server`, or the name alone; empty where a token says who it is. */
  readonly user: string;
  readonly password: string;
  readonly token: string;
  /** What a request in a room begins with. */
  readonly prefix: string;
  /** Servers and people whose invitations are taken; null for all. */
  readonly allowed: readonly string[] | null;
  /** Rooms joined at most. */
  readonly roomLimit: number;
  /** Questions answered for one person, a minute, over a longer time. */
  readonly rate: number;
}

export type ReadSettings =
  | { readonly ok: true; readonly value: Settings }
  | { readonly ok: false; readonly message: string };

type Env = Readonly<Record<string, string | undefined>>;

const usual = { prefix: '!lye', roomLimit: 200, rate: 120 } as const;

/** A secret may stand in a file instead: `NAME_FILE`; one that is empty is not there. */
function secret(env: Env, name: string, unreadable: string[]): string {
  const own = env[name]?.trim();
  const file = env[`${name}_FILE`];
  if (own || !file) return own ?? '';
  try {
    return readFileSync(file, 'utf8').trim();
  } catch (error) {
    unreadable.push(`${name}_FILE cannot be read: ${error instanceof Error ? error.message : String(error)}`);
    return '';
  }
}

const number = (text: string | undefined, otherwise: number): number =>
  text === undefined || text.trim() === '' ? otherwise : Number(text);

const isCount = (value: number): boolean => Number.isInteger(value) && value > 0;

export function readSettings(env: Env): ReadSettings {
  const allowed = (env['MATRIX_ALLOWED'] ?? '').split(/[\s,]+/).filter((one) => one !== '');
  const unreadable: string[] = [];
  const value: Settings = {
    homeserver: (env['MATRIX_HOMESERVER_URL'] ?? '').trim().replace(/\/+$/, ''),
    user: (env['MATRIX_USER'] ?? '').trim(),
    password: secret(env, 'MATRIX_PASSWORD', unreadable),
    token: secret(env, 'MATRIX_ACCESS_TOKEN', unreadable),
    prefix: (env['MATRIX_PREFIX'] ?? usual.prefix).trim(),
    allowed: allowed.length === 0 ? null : allowed,
    roomLimit: number(env['MATRIX_ROOM_LIMIT'], usual.roomLimit),
    rate: number(env['MATRIX_RATE'], usual.rate),
  };
  const isAddress = URL.canParse(value.homeserver) && /^https?:$/.test(new URL(value.homeserver).protocol);
  const wrong = [
    ...unreadable,
    ...(value.homeserver === ''
      ? ['MATRIX_HOMESERVER_URL is not set']
      : isAddress
        ? []
        : ['MATRIX_HOMESERVER_URL must be an address such as https://matrix.example.org']),
    ...(value.user === '' || /^(?:@[^\s:]+:\S+|[^\s:@]+)$/.test(value.user)
      ? []
      : ['MATRIX_USER must be a name, or @name:server']),
    ...(value.user === '' && value.token === '' ? ['MATRIX_USER is not set'] : []),
    ...(value.prefix === '' || /\s/.test(value.prefix) ? ['MATRIX_PREFIX must be one word'] : []),
    ...(value.allowed
      ?.filter((one) => !isServerOrPerson(one))
      .map((one) => `MATRIX_ALLOWED: "${one}" is no server or @name:server`) ?? []),
    ...(isCount(value.roomLimit) ? [] : ['MATRIX_ROOM_LIMIT must be a whole number above 0']),
    ...(isCount(value.rate) ? [] : ['MATRIX_RATE must be a whole number above 0']),
  ];
  return wrong.length === 0 ? { ok: true, value } : { ok: false, message: wrong.join('; ') };
}

const isServerOrPerson = (text: string): boolean =>
  /^(?:@[^\s:@]+:)?[\w.-]+(?::\d+)?$|^(?:@[^\s:@]+:)?\[[\da-f:.]+\](?::\d+)?$/i.test(text);

export const serverOf = (user: string): string => user.slice(user.indexOf(':') + 1);

/** Whether this person's invitation may be taken. */
export const isAllowed = ({ allowed }: Pick<Settings, 'allowed'>, user: string): boolean =>
  allowed === null || allowed.includes(user) || allowed.includes(serverOf(user));

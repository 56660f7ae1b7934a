/** The bot's login: by password once, or by a token; the same device ever after; a new token where one has run out. */
import { randomBytes } from 'node:crypto';
import { type Account, readAccount, writeAccount } from './account.ts';
import { type Called, call, callUntilAnswered, type Persistence, type Request, stringIn } from './api.ts';
import { Fatal } from './fatal.ts';
import type { Settings } from './settings.ts';

export interface Session {
  readonly user: string;
  readonly device: string;
  readonly token: () => string;
  /** After the server refused a token that has run out; false where there is no way to a new one. */
  readonly renew: (refused: string) => Promise<boolean>;
}

type Login = Pick<Settings, 'homeserver' | 'user' | 'password' | 'token'>;

export async function openSession(login: Login, folder: string, patient: Persistence): Promise<Session> {
  const { homeserver, password } = login;
  let account = readAccount(folder) ?? fresh(homeserver);
  if (account.homeserver !== homeserver && account.token !== null) {
    throw new Fatal(
      `the data folder belongs to a bot on ${account.homeserver}: set MATRIX_HOMESERVER_URL to it, or use another folder`,
    );
  }
  const keep = (changed: Account): void => {
    writeAccount(folder, changed);
    account = changed;
  };

  if (login.token !== '' && login.token !== account.token) keep(await byToken(login, account, patient));
  else if (account.token === null) {
    if (password === '')
      throw new Fatal('MATRIX_PASSWORD is not set, nor MATRIX_PASSWORD_FILE: the first login needs it');
    keep(account);
    keep(await byPassword(login, account, patient));
  }
  const { user } = account;
  if (user === null) throw new Fatal('the data folder does not say who the bot is');
  if (login.user !== '' && !isSame(login.user, user)) {
    throw new Fatal(
      `MATRIX_USER is ${login.user}, but the data folder belongs to ${user}: use another folder for another bot`,
    );
  }

  let renewing: Promise<boolean> | null = null;
  const renewed = async (): Promise<boolean> => {
    if (account.refresh !== null) {
      const body = { refresh_token: account.refresh };
      const called = await callUntilAnswered(homeserver, { method: 'POST', path: '/v3/refresh', body }, patient);
      if (called.status === 200) {
        const refresh = called.body['refresh_token'];
        keep({
          ...account,
          token: stringIn(called, 'access_token'),
          refresh: typeof refresh === 'string' ? refresh : account.refresh,
        });
        return true;
      }
    }
    if (password === '') return false;
    keep(await byPassword({ ...login, user }, account, patient));
    return true;
  };
  const session: Session = {
    user,
    device: account.device,
    token: () => account.token ?? '',
    renew: (refused) => {
      if (refused !== account.token) return Promise.resolve(true);
      renewing ??= renewed().finally(() => {
        renewing = null;
      });
      return renewing;
    },
  };
  await prove(session, homeserver, patient);
  return session;
}

/** Waits until the server answers, and sees that it still knows the bot. */
async function prove({ token, renew }: Session, homeserver: string, patient: Persistence): Promise<void> {
  const used = token();
  const request: Request = { method: 'GET', path: '/v3/account/whoami', token: used };
  const { status, body } = await callUntilAnswered(homeserver, request, patient);
  if (status !== 401) return;
  if (body['soft_logout'] !== true || !(await renew(used))) throw new Fatal(logoutReason(body));
}

/** What a host can do about it; `body` is the server's refusal. */
export const logoutReason = (body: unknown): string =>
  (body as { soft_logout?: unknown } | null | undefined)?.soft_logout === true ? softLogout : lostDevice;

const softLogout =
  'the server has ended the bot’s session (soft logout): set MATRIX_PASSWORD, and it logs in again as the same device with its keys';
const lostDevice =
  'the server no longer knows the bot’s device (logged out, or deleted): its keys are of no use any more. Move the folder "matrix" of the data folder away, set MATRIX_PASSWORD and start again as a new device';

const fresh = (homeserver: string): Account => ({
  homeserver,
  device: `LYE${randomBytes(5).toString('hex').toUpperCase()}`,
  user: null,
  token: null,
  refresh: null,
});

const isSame = (given: string, user: string): boolean =>
  given.toLowerCase() === user.toLowerCase() ||
  `@${given}:`.toLowerCase() === user.toLowerCase().slice(0, given.length + 2);

async function byPassword(
  { homeserver, user, password }: Login,
  account: Account,
  patient: Persistence,
): Promise<Account> {
  const body = {
    type: 'm.login.password',
    identifier: { type: 'm.id.user', user },
    password,
    device_id: account.device,
    initial_device_display_name: 'lyeward',
    refresh_token: true,
  };
  const called = await callUntilAnswered(homeserver, { method: 'POST', path: '/v3/login', body }, patient);
  if (called.status !== 200) throw new Fatal(refusal(called, 'the login: look at MATRIX_USER and MATRIX_PASSWORD'));
  const refresh = called.body['refresh_token'];
  return {
    ...account,
    user: stringIn(called, 'user_id'),
    token: stringIn(called, 'access_token'),
    refresh: typeof refresh === 'string' ? refresh : null,
  };
}

async function byToken({ homeserver, token }: Login, account: Account, patient: Persistence): Promise<Account> {
  const called = await callUntilAnswered(homeserver, { method: 'GET', path: '/v3/account/whoami', token }, patient);
  // A token of the environment that has had its day does not matter while the one kept is good.
  if (called.status !== 200 && account.token !== null) return account;
  if (called.status !== 200) throw new Fatal(refusal(called, 'MATRIX_ACCESS_TOKEN'));
  const device = called.body['device_id'];
  if (typeof device !== 'string')
    throw new Fatal('MATRIX_ACCESS_TOKEN belongs to no device: log in by password instead');
  if (account.token !== null && device !== account.device) {
    throw new Fatal(
      `MATRIX_ACCESS_TOKEN is of the device ${device}, the keys in the data folder are of ${account.device}: use another folder`,
    );
  }
  return { ...account, device, user: stringIn(called, 'user_id'), token, refresh: null };
}

const refusal = ({ status, body }: Called, what: string): string =>
  `the server refuses ${what} (${status}${typeof body['errcode'] === 'string' ? ` ${body['errcode']}` : ''})`;

/** Whether the server answers at all, now. */
export const isThere = (homeserver: string): Promise<boolean> =>
  call(homeserver, { method: 'GET', path: '/versions' }).then(
    ({ status }) => status === 200,
    () => false,
  );

/** A request of the client-server API that the SDK has no function for. */
import type { MatrixClient } from 'matrix-js-sdk';

interface Request {
  readonly query?: Readonly<Record<string, string>>;
  readonly body?: object;
  /** Milliseconds. */
  readonly patience: number;
}

type Authed = MatrixClient['http']['authedRequest'];
type Method = Parameters<Authed>[0];
type Options = NonNullable<Parameters<Authed>[4]>;

/** `path` stands behind `/_matrix/client/v3`, its parts encoded. */
export const request = <T>(
  { http }: MatrixClient,
  method: 'GET' | 'PUT',
  path: string,
  { query, body, patience }: Request,
): Promise<T> =>
  http.authedRequest<T>(
    method as Method,
    path,
    query,
    body as Record<string, unknown>,
    {
      localTimeoutMs: patience,
    } as Options,
  );

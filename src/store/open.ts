/** Opens the store that the host has chosen. */
import type { Store } from './port.ts';
import { openSqlite } from './sqlite/open.ts';

export interface OpenOptions {
  /** The folder of what is kept; made where it is not there yet. */
  readonly folder: string;
  /** What this process does, for whoever finds the folder in use: "the console". */
  readonly who: string;
  /** Only looks things up, beside another process that writes; writing is refused with a `StoreTrouble`. */
  readonly readOnly?: boolean;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
}

export const openStore = ({ folder, who, readOnly = false, now = Date.now }: OpenOptions): Promise<Store> =>
  openSqlite({ folder, who, readOnly, now });

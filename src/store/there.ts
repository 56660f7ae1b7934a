/** Where what is kept lies, found out without loading what reads it. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';

/** The file of the embedded store. */
export const fileIn = (folder: string): string => join(folder, 'lyeward.db');

/** Whether anything may have been kept already. */
export const mayHold = (folder: string): boolean =>
  Boolean(process.env['LYEWARD_DATABASE_URL'] || process.env['LYEWARD_DATABASE_URL_FILE']) ||
  existsSync(fileIn(folder));

import { join } from 'node:path';

/** Where the bot's keys and login lie. */
export const folderOf = (data: string): string => join(data, 'matrix');

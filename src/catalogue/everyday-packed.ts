import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Takes the place of `readEveryday` in a bundle. */
export const readEveryday = (): string => readFileSync(join(import.meta.dirname, 'everyday.txt'), 'latin1');

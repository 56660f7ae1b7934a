import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** `data/everyday.txt` without its head: words in order, one a line. A bundle has it beside the code. */
export function readEveryday(): string {
  const text = readFileSync(join(import.meta.dirname, '../../data/everyday.txt'), 'latin1');
  return text.slice(text.indexOf('\n\n') + 2);
}

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RawHeat } from './heat-files.ts';

/** Takes the place of `readHeat` in a bundle, where the files of `data/heat/`, checked, lie in one beside the code. */
export function readHeat(): RawHeat {
  return JSON.parse(readFileSync(join(import.meta.dirname, 'heat.json'), 'utf8')) as RawHeat;
}

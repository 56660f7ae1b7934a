import { acid } from './acid.ts';
import { check } from './check.ts';
import { convert } from './convert.ts';
import type { AnyCommand } from './define.ts';
import { fat } from './fat.ts';
import { help } from './help.ts';
import { lye } from './lye.ts';
import { safety } from './safety.ts';
import { share } from './share.ts';
import { solution } from './solution.ts';
import { strength } from './strength.ts';
import { worth } from './worth.ts';

/** Every command, in the order in which help shows them. */
export const commands: readonly AnyCommand[] = [
  check,
  lye,
  convert,
  fat,
  strength,
  acid,
  worth,
  share,
  solution,
  safety,
  help,
];

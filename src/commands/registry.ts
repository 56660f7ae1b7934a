import { check } from './check.ts';
import type { AnyCommand } from './define.ts';
import { help } from './help.ts';
import { lye } from './lye.ts';
import { safety } from './safety.ts';
import { solution } from './solution.ts';

/** Every command, in the order in which help shows them. */
export const commands: readonly AnyCommand[] = [check, lye, solution, safety, help];

import { acid } from './acid.ts';
import { batch } from './batch.ts';
import { check } from './check.ts';
import { convert } from './convert.ts';
import { cook } from './cook.ts';
import { cool } from './cool.ts';
import type { AnyCommand } from './define.ts';
import { explain } from './explain.ts';
import { fat } from './fat.ts';
import { help } from './help.ts';
import { lye } from './lye.ts';
import { mix } from './mix.ts';
import { privacy } from './privacy/privacy.ts';
import { recipe } from './recipes/recipe.ts';
import { remind } from './remind.ts';
import { report } from './report.ts';
import { restart } from './restart.ts';
import { safety } from './safety.ts';
import { scale } from './scale.ts';
import { scent } from './scent.ts';
import { settings } from './settings/settings.ts';
import { share } from './share.ts';
import { solution } from './solution.ts';
import { strength } from './strength.ts';
import { summary } from './summary.ts';
import { worth } from './worth.ts';

/** Every command, in the order in which help shows them. */
export const commands: readonly AnyCommand[] = [
  check,
  lye,
  scale,
  summary,
  explain,
  recipe,
  convert,
  fat,
  strength,
  acid,
  worth,
  share,
  solution,
  mix,
  cool,
  scent,
  cook,
  settings,
  privacy,
  batch,
  remind,
  safety,
  restart,
  report,
  help,
];

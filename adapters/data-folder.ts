/** Where what is kept lies: named, or the place that the platform uses for a program's data. Nothing is made here. */
import { join } from 'node:path';

type Env = Readonly<Record<string, string | undefined>>;

/**
 * `--data`, else `LYEWARD_DATA`, else `$XDG_DATA_HOME/lyeward` (https://specifications.freedesktop.org/basedir-spec/),
 * else where the platform keeps such things.
 */
export function dataFolder(
  said: string | undefined,
  env: Env = process.env,
  platform: NodeJS.Platform = process.platform,
): string {
  const named = said ?? env['LYEWARD_DATA'];
  if (named) return named;
  const xdg = env['XDG_DATA_HOME'];
  if (xdg) return join(xdg, 'lyeward');
  // `os` is not imported: its loading is felt, and the environment nearly always says it
  const home = (platform !== 'win32' && env['HOME']) || process.getBuiltinModule('node:os').homedir();
  if (platform === 'win32') return join(env['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local'), 'lyeward');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'lyeward');
  return join(home, '.local', 'share', 'lyeward');
}

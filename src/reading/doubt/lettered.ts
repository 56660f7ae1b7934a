import type { Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';

/** `F` a fat that is weighed, `N` one that is not, `L` the alkali, `W` water, `M` another liquid, `X` what else has a name. */
export function letterOf(token: Token | undefined, weighed: ReadonlyMap<string, number>): string {
  if (token?.t !== 'name') return 'X';
  const { kind } = token.meaning;
  if (kind === 'alkali' || kind === 'stock') return 'L';
  if (kind === 'water') return 'W';
  if (kind === 'liquid') return 'M';
  return kind === 'fat' || kind === 'unheld' ? (weighed.has(thingOf(token)) ? 'F' : 'N') : 'X';
}

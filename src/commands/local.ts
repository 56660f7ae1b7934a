/** Values that the host set in its own file: every answer that rests on one names it. */
import type { Catalogue, Fat } from '../catalogue/types.ts';
import { inSentence } from './phrases.ts';

const sourceOf = ({ saponification: { entries, taken } }: Fat, { sources }: Catalogue) =>
  sources.get(entries[taken]?.source ?? '');

export const isLocal = (fat: Fat, catalogue: Catalogue): boolean => sourceOf(fat, catalogue)?.local === true;

/** One line for each fat whose saponification value is the host's own. */
export function localLines(fats: readonly { readonly fat: Fat }[], catalogue: Catalogue): readonly string[] {
  const own = fats.filter(({ fat }) => isLocal(fat, catalogue)).map(({ fat }) => fat);
  return [...new Set(own)].map(
    (fat) => `I took this host’s own value for ${inSentence(fat.name)} (${sourceOf(fat, catalogue)?.title ?? ''}).`,
  );
}

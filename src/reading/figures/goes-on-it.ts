/** "Goat milk, frozen in cubes, 300 g (no water at all, the lye goes straight on the milk)": the weight is not of the lye. */
import type { Signals } from '../words/signals.ts';
import { isIngredient, isMark, isStop, isWeight } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { weighedElsewhere } from '../words/weighed.ts';

/** Tokens of a bracket, and of a row from its name to its weight, at the most. */
const longest = 24;

/** What the lye is stirred into is named at the head of the row that ends with the weight at `k`. */
function isOfLiquid(tokens: readonly Token[], k: number): boolean {
  let from = k;
  while (k - from < longest && !isStop(tokens[from - 1])) from--;
  const names = tokens.slice(from, k).filter((one) => isIngredient(one) || isWeight(one));
  const [name] = names;
  return names.length === 1 && name?.t === 'name' && /^(?:liquid|water)$/.test(name.meaning.kind);
}

/** The tokens in which the alkali of such a bracket, weighed in a row of its own, is only spoken of. */
export function goesOnIt(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    if (!isWeight(tokens[k]) || !isMark(tokens[k + 1], '(')) continue;
    const behind = tokens.slice(k + 2, k + longest);
    const inside = behind.slice(
      0,
      Math.max(
        0,
        behind.findIndex((one) => isMark(one, ')')),
      ),
    );
    const lye = inside.findIndex((one) => one.t === 'name' && one.meaning.kind === 'alkali');
    const isTold = inside.filter((one) => one.t === 'word').length > 1 && !inside.some((one) => one.t === 'quantity');
    const name = tokens[k + 2 + lye];
    if (lye < 0 || !name || !isTold || !weighedElsewhere(tokens, k + 2 + lye) || !isOfLiquid(tokens, k)) continue;
    out ??= [...tokens];
    out[k + 2 + lye] = asFiller(name);
  }
  return out ?? tokens;
}

/** One unit in another, asked or said beside a recipe: "turn 850 g into lbs", `1 dag = 10 g`. */
import type { Lexicon } from '../words/lexicon.ts';
import { isIngredient, isKnown, isMeasured, isStop, massOf, wordAt } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';

/** Names of things of a post that holds a recipe, at the least. */
const leastNamed = 2;

const turningInto: ReadonlySet<string> = new Set(['in', 'to', 'into', 'as']);

/** "Can you turn 850 g into lbs": a conversion asked for beside a recipe, and no amount of anything. */
export function conversions(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  let out: Token[] | null = null;
  const isUnit = (token: Token | undefined): boolean =>
    token?.t === 'word' && lexicon.units.next?.get(token.text)?.hit !== undefined;
  for (let k = 0; k < tokens.length; k++) {
    const first = tokens[k];
    if (
      !isMeasured(first) ||
      (tokens[k + 1]?.t !== 'word' && tokens[k - 1]?.t !== 'word' && tokens[k - 3]?.t !== 'word')
    )
      continue;
    const says = wordAt(tokens, k + 1);
    const into = turningInto.has(says) && isUnit(tokens[k + 2]);
    const starts = says === 'is' || says === 'are' || (says === 'how' && !first.quantity.text.endsWith('.'));
    const many = starts && [2, 3].some((n) => wordAt(tokens, k + n) === 'many');
    // "lye: how many grams for 600 g olive" asks for something else
    const asked =
      wordAt(tokens, k - 3) === 'many' && isUnit(tokens[k - 2]) && !/^(?:for|on|with|to)$/.test(wordAt(tokens, k - 1));
    if (!into && !many && !asked && wordAt(tokens, k - 1) !== 'convert') continue;
    if (!out && tokens.filter(isIngredient).length < leastNamed) return tokens;
    out ??= [...tokens];
    out[k] = asAside(first, 'to be converted');
    const unit = tokens[k + 2];
    if (into && unit?.t === 'word') out[k + 2] = { ...unit, sort: 'everyday' };
  }
  return out ?? tokens;
}

const equating: ReadonlySet<string> = new Set('= is are equals makes being about the same as ≈ ~'.split(' '));

/** Figures of a conversion agree within this share. */
const converted = 0.02;

/** `1 dag = 10 g`, `1 lb is 454 g`: where the other figure stands, if the sentence names nothing that is so heavy. */
export function conversionOf(tokens: readonly Token[], k: number, first: Figure): number | null {
  const { dim, value, unit } = first.quantity;
  if (dim !== 'mass' && dim !== 'volume') return null;
  let at = k + 1;
  let equals = false;
  for (let one = tokens[at]; one && at - k <= 4 && !massOf(one); one = tokens[++at]) {
    if (!((one.t === 'word' || one.t === 'sign') && equating.has(one.text))) return null;
    equals = true;
  }
  const second = tokens[at];
  if (!equals || second?.t !== 'quantity' || second.quantity.dim !== dim || second.quantity.unit?.id === unit?.id)
    return null;
  const named = (from: number, to: number): boolean => {
    const near = tokens.slice(Math.max(0, from), to);
    return near.slice(near.findLastIndex(isStop) + 1).some(isKnown);
  };
  const agree = Math.abs(second.quantity.value - value) <= converted * value;
  return agree && !named(k - 3, k) && !named(at + 1, at + 3) ? at : null;
}

/**
 * A part that is said as a fraction of a thing and as a weight: "half of the water, 120 g, I froze; the water is 240 g".
 * Where the post weighs the whole, too, the part is none of its own; where it does not, nobody knows which is meant.
 */
import { written } from '../taken-back/put-right.ts';
import { endsDotted, isIngredient, isMark, isStop, isWeight, isWord, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';

type Name = Extract<Token, { t: 'name' }>;

const fractions: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };
const owning = /^(?:of|the|my|our|this|that|his|her)$/;
const saying = /^(?:so|thats|that|is|was|which|being|about|ie|or|makes)$/;
/** So much is all that goes in; or something else comes in its place, which other rules hear. */
const taking = /^(?:used?|using|took|takes?|taking|need|only|just)$/;
const swapping = /^(?:swap\w*|replac\w*|substitut\w*|sub(?:bed|bing)?|exchang\w*|instead|place|trad(?:ed|ing)|lieu)$/;
const most = 24;

/** What part of something token `k` says. */
function fractionAt(tokens: readonly Token[], k: number): number | null {
  const token = tokens[k];
  if (token?.t === 'quantity') {
    const { dim, value } = token.quantity;
    return dim === 'bare' && value > 0 && value < 1 && token.quantity.inWords ? value : null;
  }
  return isWord(tokens[k - 1], 'other') ? null : (fractions[spoken(token)] ?? null);
}

interface Part {
  readonly name: number;
  readonly figure: number;
  readonly share: number;
}

/** "Coconut half of the olive": what something else is reckoned from. */
function isComparing(tokens: readonly Token[], k: number): boolean {
  let at = k - 1;
  while (k - at <= 4 && (tokens[at]?.t === 'word' || isMark(tokens[at], ':=-'))) at--;
  return isIngredient(tokens[at]);
}

/** "Half of the water, 120 g": the name and the weight behind a fraction. */
function partAt(tokens: readonly Token[], k: number): Part | null {
  const share = fractionAt(tokens, k);
  if (share === null || isComparing(tokens, k)) return null;
  let name = k + 1;
  while (name - k <= 3 && owning.test(spoken(tokens[name]))) name++;
  if (name === k + 1 || !isIngredient(tokens[name])) return null;
  let figure = name + 1;
  while (figure - name <= 4 && (isMark(tokens[figure], ',(:=–—-') || saying.test(spoken(tokens[figure])))) figure++;
  const after = tokens[figure + 1];
  const isOwn = figure > name + 1 && isWeight(tokens[figure]) && !isIngredient(after) && !isWord(after, 'of');
  return isOwn ? { name, figure, share } : null;
}

/** Where a weight stands beside the thing: "water 240 g", "the water is 240 g", "240 g of water". */
export function weighedBeside(tokens: readonly Token[], thing: Name): readonly number[] {
  return tokens.flatMap((one, k) => {
    if (!isIngredient(one) || thingOf(one) !== thingOf(thing)) return [];
    let behind = k + 1;
    while (behind - k <= 2 && (isMark(tokens[behind], ':=') || saying.test(spoken(tokens[behind])))) behind++;
    const before = isWord(tokens[k - 1], 'of') ? k - 2 : k - 1;
    return [
      ...(isWeight(tokens[before]) && !endsDotted(tokens[before]) ? [before] : []),
      ...(isWeight(tokens[behind]) ? [behind] : []),
    ];
  });
}

/** The weight as one of two that nobody can choose between. */
export function eitherOf(figure: Figure, value: number): Figure {
  const { quantity } = figure;
  const other = Number((value / (quantity.unit?.factor ?? 1)).toPrecision(4));
  const text = `${written(quantity)} or ${other} ${quantity.unit?.id ?? 'g'}`;
  return { ...figure, quantity: { ...quantity, upTo: value, text } };
}

const isPartOf = ({ quantity: { value } }: Figure, share: number, whole: Token | undefined): boolean =>
  isWeight(whole) && Math.abs(value - share * whole.quantity.value) <= Math.max(1, 0.011 * value);

/** The tokens without the parts of what the post weighs whole; of one that it does not, both weights that it may have. */
export function partSaid(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const part = partAt(tokens, k);
    const [thing, weight, fraction] = [tokens[part?.name ?? -1], tokens[part?.figure ?? -1], tokens[k]];
    if (!part || !fraction || thing?.t !== 'name' || !isWeight(weight)) continue;
    const { from, to } = sentenceAt(tokens, k, most);
    const words = tokens.slice(from, to).map(spoken);
    if (words.some((word) => swapping.test(word))) continue;
    if (thing.meaning.kind !== 'water' && words.slice(0, k - from).some((word) => taking.test(word))) continue;
    const isWhole = weighedBeside(tokens, thing).some(
      (at) => at !== part.figure && isPartOf(weight, part.share, tokens[at]),
    );
    out ??= [...tokens];
    out[k] = asFiller(fraction);
    if (isWhole) {
      out[part.name] = asFiller(thing);
      out[part.figure] = asAside(weight, 'a part of what was said');
      // "was frozen", "as ice"
      for (let at = part.figure; at < to && !isStop(tokens[at]); at++) {
        const ice = tokens[at];
        if (ice?.t === 'name' && ice.meaning.kind === 'ice' && !isWeight(tokens[at - 1])) out[at] = asFiller(ice);
      }
      continue;
    }
    out[part.figure] = eitherOf(weight, weight.quantity.value / part.share);
  }
  return out ?? tokens;
}

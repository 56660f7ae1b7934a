/**
 * "Water 290 g, of which 190 g in the jug and 100 g ice", "230 g water; half of the 230 went in as ice, so 115 g": ice
 * that is a part of the water said before.
 */
import { endsDotted, isIngredient, isMark, isWeight, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';

const parts: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };
const ofWater = /^(?:it|that|this|them|those|these|the|which|my)$/;
/** Tokens from the water to its ice, at the most. */
const longestWay = 30;

const isOf = (token: Token | undefined, kind: 'ice' | 'water'): boolean =>
  token?.t === 'name' && token.meaning.kind === kind;
const isTotal = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.id === 'total';

/** Where the weight of the ice at `ice` stands: "100 g of ice", "100 g were ice", "as ice, so 115 g"; -1 if nowhere. */
function weightOf(tokens: readonly Token[], ice: number): number {
  let k = ice - 1;
  while (
    ice - k <= 4 &&
    (/^(?:of|as|were|was|is|in|into|the|crushed)$/.test(spoken(tokens[k])) || isMark(tokens[k], ')'))
  )
    k--;
  if (isWeight(tokens[k])) return k;
  k = ice + 1;
  while (
    k - ice <= 4 &&
    (/^(?:cubes|so|thats|that|is|which|was|makes|ie)$/.test(spoken(tokens[k])) || isMark(tokens[k], ',(:=-–—'))
  )
    k++;
  return isWeight(tokens[k]) && !isIngredient(tokens[k + 1]) && spoken(tokens[k + 1]) !== 'of' ? k : -1;
}

/** The last water before token `at`, and its weight; null where something else goes in between. */
function waterBefore(tokens: readonly Token[], at: number): { name: number; weight: number } | null {
  for (let k = at - 1; k >= 0 && at - k <= longestWay; k--) {
    const token = tokens[k];
    if (token?.t === 'line' && token.text === 'blank') return null;
    if (isOf(token, 'water')) {
      const weight = [k - 1, spoken(tokens[k - 1]) === 'of' ? k - 2 : k + 1, k + 1, k + 2].find(
        (one) => one !== at && isWeight(tokens[one]) && !(one < k && endsDotted(tokens[one])),
      );
      // "190 g tap water": a part, too; "half of the water": named again
      const further = waterBefore(tokens, Math.min(k, weight ?? k));
      if (further !== null || weight === undefined) return further;
      return { name: k, weight };
    }
    if (isIngredient(token)) return null;
  }
  return null;
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(1, 0.01 * b);

/** The tokens without the ice that the water holds. */
export function iceOfWater(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let ice = 0; ice < tokens.length; ice++) {
    if (!isOf(tokens[ice], 'ice')) continue;
    const at = weightOf(tokens, ice);
    const figure = tokens[at];
    if (/^(?:bath|packs?)$/.test(spoken(tokens[ice + 1])) && isWeight(figure)) {
      out ??= [...tokens];
      out[at] = asAside(figure, 'what cools from outside');
      continue;
    }
    const water = at < 0 ? null : waterBefore(tokens, Math.min(at, ice));
    if (!water) continue;
    const [whole, part] = [tokens[water.weight] as Figure, tokens[at] as Figure];
    const from = Math.max(water.name, water.weight) + 1;
    const between = tokens.slice(from, Math.max(at, ice));
    const rest = between.findIndex(
      (one, k) =>
        from + k !== at && isWeight(one) && isNear(one.quantity.value + part.quantity.value, whole.quantity.value),
    );
    const fraction = between.findIndex((one, k) => spoken(one) in parts && ofPart(tokens, from + k));
    const isSaidOf = between.some((one, k) => spoken(one) === 'of' && ofWater.test(spoken(between[k + 1])));
    if (rest < 0 && fraction < 0 && !isSaidOf) continue;
    const factor = parts[spoken(between[fraction])];
    out ??= [...tokens];
    for (let k = from; k <= Math.max(at, ice); k++) {
      const token = tokens[k];
      if (!token || token.t === 'sign' || token.t === 'line') continue;
      // the water and what it weighs, once more
      if (token.t === 'quantity') {
        if (k !== at && (k === from + rest || sameFigure(token, whole)))
          out[k] = asAside(token, 'a part of what was said');
      } else if (isOf(token, 'water') || isTotal(token) || k === ice) out[k] = asFiller(token);
    }
    const said = part.quantity.value;
    const reckoned = factor === undefined ? said : factor * whole.quantity.value;
    if (isNear(said, reckoned)) out[at] = asAside(part, 'a part of what was said');
    else {
      // nobody knows which of the two counts
      const text = `${part.quantity.text} or ${Number(reckoned.toFixed(1))} g`;
      out[ice] = tokens[ice] as Token;
      out[at] = { ...part, quantity: { ...part.quantity, upTo: reckoned, text } };
    }
  }
  return out ?? tokens;
}

/** "Half of it", "a third of the 240", "half the water", "a third was ice". */
const ofPart = (tokens: readonly Token[], k: number): boolean =>
  /^(?:of|was|were|is|went|as)$/.test(spoken(tokens[k + 1])) ||
  ofWater.test(spoken(tokens[k + 1])) ||
  isOf(tokens[k + 1], 'ice');

const sameFigure = ({ quantity: a }: Figure, { quantity: b }: Figure): boolean =>
  (a.dim === 'mass' && isNear(a.value, b.value)) ||
  (a.dim === 'bare' && isNear(a.value * (b.unit?.factor ?? 1), b.value));

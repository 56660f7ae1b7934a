/** To what size somebody wants a recipe: "to 1.2 kg", "my 10 x 3 x 3 inch mould", "12 bars of 100 g", "double it". */
import type { Mould } from '../../engine/mould.ts';
import type { Reader } from '../cut.ts';
import { readRecipe } from '../index.ts';
import type { Cut } from '../itemize.ts';
import { bind } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { itemize } from '../worded.ts';
import type { Quantity } from '../words/quantities.ts';

/** Weights in g, volumes in mL, lengths in cm. */
export type ScaleWish =
  | { readonly kind: 'factor'; readonly value: number }
  | { readonly kind: 'fat-weight' | 'batch-weight'; readonly grams: number }
  | { readonly kind: 'sides'; readonly mould: Mould; readonly said: string }
  | { readonly kind: 'mould'; readonly millilitres: number }
  | { readonly kind: 'bars'; readonly count: number; readonly grams: number; readonly state: 'poured' | 'cured' }
  | { readonly kind: 'at-hand'; readonly amounts: readonly { readonly id: string; readonly grams: number }[] }
  /** A weight of nobody knows what. */
  | { readonly kind: 'weight'; readonly grams: number; readonly said: string }
  | { readonly kind: 'bars-of-what'; readonly count: number }
  | { readonly kind: 'sides-of-what'; readonly sides: readonly number[]; readonly said: string }
  | { readonly kind: 'range'; readonly said: string };

export interface ScaleRequest {
  readonly wish: ScaleWish | null;
  /** Superfat asked beside it. */
  readonly superfat: number | null;
  /** The recipe that stands in the same text, or nothing. */
  readonly recipe: string;
}

type Thing = Extract<Item, { kind: 'thing' }>;
type Amount = Extract<Item, { kind: 'amount' }>;
const isThing = (item: Item | undefined): item is Thing => item?.kind === 'thing';
const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';

const figure = '(\\d+(?:[.,]\\d+)?(?:\\s+\\d+/\\d+)?|\\d+/\\d+)';
const lengthUnit = "(?:(mm|cm|dm|m|inch(?:es)?|in|ins|\"|″|''|ft|feet)(?![a-wyz]))?";
const side = `${figure}\\s*(?:-\\s*)?${lengthUnit}\\s*(?:long|wide|high|deep|tall|across|[lwhd]\\b)?`;
const by = '\\s*(?:x|×|\\*|by)\\s*';
const box = new RegExp(`${side}${by}${side}${by}${side}`, 'i');
const pair = new RegExp(`${side}(?:${by}|\\s*(?:,|and)?\\s*)${side}`, 'i');
const toCentimetres: Readonly<Record<string, number>> = { mm: 0.1, cm: 1, dm: 10, m: 100, ft: 30.48, feet: 30.48 };
const round = /\b(round|cylinder|cylindrical|tube|pipe|pvc|can|pringles|diameter|across|column)\b/i;
const halfRound = /\bhalf[- ](round|cylinder|tube|pipe)\b/i;

function numberOf(text: string): number {
  const [whole = '', part] = text.trim().split(/\s+/);
  const one = (piece: string): number => {
    const [above = '', below] = piece.replace(',', '.').split('/');
    return Number(above) / Number(below ?? 1);
  };
  return one(whole) + (part ? one(part) : 0);
}

/** Sides in cm, or as written where no unit stands beside any of them. */
function sidesIn(
  text: string,
): { readonly sides: readonly number[]; readonly said: string; readonly known: boolean } | null {
  const found = box.exec(text) ?? (round.test(text) || halfRound.test(text) ? pair.exec(text) : null);
  if (!found) return null;
  const units = found.slice(1).filter((_, k) => k % 2 === 1);
  const values = found.slice(1).filter((_, k) => k % 2 === 0);
  const last = units.filter((unit) => unit !== undefined).at(-1);
  const size = (unit: string | undefined): number =>
    unit === undefined ? 1 : (toCentimetres[unit.toLowerCase()] ?? 2.54);
  const sides = values.map((value, k) => numberOf(value ?? '') * size(units[k] ?? last));
  return { sides, said: found[0].trim(), known: last !== undefined };
}

/** What a box of three sides holds, mL; null where no box is described. */
export function boxIn(text: string): { readonly millilitres: number; readonly said: string } | null {
  const found = box.test(text) ? sidesIn(text) : null;
  if (!found?.known) return null;
  const said = found.said.replace(/\s*(x|×|\*|\bby\b)\s*/gi, ' $1 ');
  return { millilitres: found.sides.reduce((all, one) => all * one, 1), said };
}

/** A round mould's shorter figure is taken as its diameter. */
function mouldOf(sides: readonly number[], text: string): Mould {
  const [a = 0, b = 0, c = 0] = sides;
  if (sides.length === 3) return { shape: 'box', length: a, width: b, height: c };
  const [diameter, length] = /\bdiameter\b|\bacross\b/i.test(text) ? [a, b] : [Math.min(a, b), Math.max(a, b)];
  return { shape: halfRound.test(text) ? 'half-cylinder' : 'cylinder', diameter, length };
}

const times: readonly (readonly [RegExp, number])[] = [
  [/\b(one and a half|1 ?1\/2) times\b/i, 1.5],
  [/\b(quadruple)\b/i, 4],
  [/\b(triple|treble|thrice|three times)\b/i, 3],
  [/\b(double|twice|doubled)\b/i, 2],
  [/\b(two thirds|2\/3)\b/i, 2 / 3],
  [/\bthree quarters?\b/i, 0.75],
  [/\b(halve|half|halved|1\/2)\b/i, 0.5],
  [/\b(a third|one third|1\/3)\b/i, 1 / 3],
  [/\b(a quarter|one quarter|1\/4)\b/i, 0.25],
];

/** "1.5 times", "x2", "by 3", "2 batches", "150 %", "20 % less". */
function factorIn(text: string): number | null {
  const share = /(\d+(?:[.,]\d+)?)\s*(?:%|percent|per cent)/i.exec(text);
  if (share) {
    const value = numberOf(share[1] ?? '') / 100;
    if (/\b(superfat|lye|discount|concentration|solution)\b/i.test(text)) return null;
    if (/\b(less|smaller|down|reduce|decrease)\b/i.test(text)) return /\bto\s+\d/i.test(text) ? value : 1 - value;
    if (/\b(more|bigger|larger|up|increase)\b/i.test(text)) return /\bto\s+\d/i.test(text) ? value : 1 + value;
    return /\b(to|by|at)\s+\d|\bscale\b|\bof (it|that|the recipe)\b/i.test(text) && value >= 0.25 ? value : null;
  }
  const found =
    new RegExp(`${figure}\\s*(?:x|×|times|fold)(?![a-z0-9])`, 'i').exec(text) ??
    new RegExp(`(?:^|\\s)[x×]\\s?${figure}(?![\\d.,]*\\s*[a-z"])`, 'i').exec(text) ??
    new RegExp(`\\b(?:by|factor(?: of)?)\\s+${figure}(?!\\s*[a-z%"]|[.,]?\\d)`, 'i').exec(text) ??
    new RegExp(`${figure}\\s+(?:batches|of (?:it|them|these))\\b`, 'i').exec(text);
  if (found) return numberOf(found[1] ?? '');
  return times.find(([pattern]) => pattern.test(text))?.[1] ?? null;
}

const wordsOf = {
  fat: /\b(oils?|fats?|butters?)\b/i,
  batch:
    /\b(batch(es)?|total|altogether|in all|all in|everything|whole|of soap|soap|batter|in the pot|poured|finished)\b/i,
  mould:
    /\b(moulds?|molds?|loaf|box|tray|liner|form|slab|tube|pan|carton|holds|takes|fits?|capacity|cavity|cavities)\b/i,
  bars: /\b(bars?|pieces|cakes|pucks|soaps)\b/i,
  cured: /\b(cured|finished|dry|after (the )?cur(e|ing))\b/i,
  hand: /\b(have|got|left|use up|using up|there'?s|there is|at hand|remaining)\b/i,
} as const;

/** What a bare weight is of. */
export function weightOf(answer: string): 'fat' | 'batch' | null {
  const fat = wordsOf.fat.test(answer);
  const batch = wordsOf.batch.test(answer) || /\b(all|mou?ld)\b/i.test(answer);
  return fat === batch ? null : fat ? 'fat' : 'batch';
}

const weighable = new Set(['fat', 'liquid', 'acid', 'alkali', 'water']);

/** The size that a text asks for, with nothing of a recipe in it. */
export function readScaleWish(reader: Reader, text: string): ScaleWish | null {
  const cut = itemize(reader, text);
  const amounts = cut.items.filter(isAmount).map(({ quantity }) => quantity);
  const weights = amounts.filter(({ dim }) => dim === 'mass');
  const volume = amounts.find(({ dim }) => dim === 'volume');
  const range = amounts.find(({ dim, upTo }) => upTo !== null && (dim === 'mass' || dim === 'volume'));
  if (range) return { kind: 'range', said: range.text };

  const sides = sidesIn(text);
  if (sides && weights.length === 0) {
    if (!sides.known) return { kind: 'sides-of-what', sides: sides.sides, said: sides.said };
    return { kind: 'sides', mould: mouldOf(sides.sides, text), said: sides.said };
  }
  const bars = barsIn(cut, text, weights, amounts);
  if (bars) return bars;
  const [weight] = weights;
  const isMould = wordsOf.mould.test(text);
  if (isMould && weight && /\bwater\b/i.test(text)) return { kind: 'mould', millilitres: weight.value / waterDensity };
  const hand = atHand(reader, cut, text);
  if (hand) return hand;
  const filled = cut.items.some((item) => isThing(item) && item.named.meaning.kind !== 'role');
  if (volume && weights.length === 0 && !filled) return { kind: 'mould', millilitres: volume.value };
  if (weight && weights.length === 1) {
    const grams = weight.value;
    const of = weightOf(text.replace(weight.text, ' '));
    if (of === 'fat') return { kind: 'fat-weight', grams };
    if (of === 'batch' || isMould) return { kind: 'batch-weight', grams };
    return { kind: 'weight', grams, said: weight.text };
  }
  const value = weights.length === 0 ? factorIn(text) : null;
  return value !== null && value > 0 ? { kind: 'factor', value } : null;
}

/** g/mL at 20 °C: water poured from a mould and weighed tells its volume (NIST SP 811, density of water 0.998). */
const waterDensity = 0.998;

function barsIn(cut: Cut, text: string, weights: readonly Quantity[], amounts: readonly Quantity[]): ScaleWish | null {
  if (!wordsOf.bars.test(text)) return null;
  const state = wordsOf.cured.test(text) ? 'cured' : 'poured';
  const [weight] = weights;
  if (weight?.times) return { kind: 'bars', count: weight.times, grams: weight.value / weight.times, state };
  const count = amounts.find(
    ({ dim, value }) => dim === 'bare' && Number.isInteger(value) && value > 0 && value <= 10_000,
  )?.value;
  // the weight of one bar is set aside by the reader of posts
  const one = weight?.value ?? asideWeight(cut, text);
  if (count === undefined) return null;
  return one === null ? { kind: 'bars-of-what', count } : { kind: 'bars', count, grams: one, state };
}

const gramsPer: Readonly<Record<string, number>> = {
  g: 1,
  gr: 1,
  gram: 1,
  grams: 1,
  kg: 1000,
  oz: 28.349523125,
  ounce: 28.349523125,
  ounces: 28.349523125,
  lb: 453.59237,
};

function asideWeight({ tokens }: Cut, text: string): number | null {
  if (!tokens.some((token) => token.t === 'aside' && token.reason === 'the weight of one bar')) return null;
  const found = new RegExp(`${figure}\\s*-?(g|gr|grams?|kg|oz|ounces?|lb)\\b`, 'i').exec(text);
  return found ? numberOf(found[1] ?? '') * (gramsPer[(found[2] ?? '').toLowerCase()] ?? 1) : null;
}

/** "I only have 180 g coconut", "to 250 g of shea". */
function atHand(reader: Reader, cut: Cut, text: string): ScaleWish | null {
  const { groups } = bind(cut.items, cut.tokens).best;
  const things = groups
    .filter(({ amounts }) => amounts.some((k) => isAmount(cut.items[k])))
    .flatMap(({ things: list }) => list.map((k) => cut.items[k]))
    .filter(isThing)
    .filter(({ named }) => weighable.has(named.meaning.kind));
  if (things.length === 0) return null;
  const { fats, liquids, acids, alkali, waterGrams } = readRecipe(reader, text);
  const lines: { readonly id: string; readonly grams: number }[] = [
    ...fats,
    ...liquids,
    ...acids,
    ...alkali.map(({ id, grams }) => ({ id, grams })),
  ];
  if (waterGrams !== null) lines.push({ id: 'water', grams: waterGrams });
  const amounts = lines.map(({ id, grams }) => ({ id, grams }));
  return amounts.length > 0 ? { kind: 'at-hand', amounts } : null;
}

const asks =
  /\b(?:re)?(?:scal(?:e|ed|ing)|size|resize|double|halve|triple|quadruple|treble)\b|\b(?:make|fit|enough|adjust|convert|change)\b[^\n:;]{0,30}\b(?:for|to|into|in)\b/i;
const clauseEnd = /[:\n;]|\.(?=\s|$)|,(?=\s)|\s[-–—]\s/;

/** The size asked for and the recipe, where both stand in one text. */
export function readScaleRequest(reader: Reader, text: string): ScaleRequest {
  const superfat = (part: string): number | null => {
    const { superfat: said } = readRecipe(reader, part);
    const loose = said === null ? /\bat\s+(\d+(?:[.,]\d+)?)\s*%/i.exec(part) : null;
    return said ?? (loose ? numberOf(loose[1] ?? '') / 100 : null);
  };
  const whole = readRecipe(reader, text);
  const atHandOnly =
    whole.alkali.length === 0 && wordsOf.hand.test(text) && !/[\n:]|\brecipe\b|\bscale (?:it|this)\b/i.test(text);
  const hasRecipe =
    !atHandOnly &&
    (whole.fats.length > 1 || (whole.fats.length > 0 && whole.alkali.length > 0) || whole.doubts.length > 2);
  if (!hasRecipe) return { wish: readScaleWish(reader, text), superfat: superfat(text), recipe: '' };
  const parts = clauses(text);
  const ingredient = (part: string): boolean => {
    const { fats, alkali, waterGrams, after, liquids } = readRecipe(reader, part);
    return fats.length + alkali.length + after.length + liquids.length > 0 || waterGrams !== null;
  };
  // "I only have 180 g coconut left. … scale it to that": what there is, apart from what asks
  const had = parts.findIndex(({ text: part }) => wordsOf.hand.test(part) && ingredient(part) && !asks.test(part));
  if (had >= 0) {
    const hand = parts[had];
    const wish = hand ? readScaleWish(reader, hand.text) : null;
    const rest = parts.filter((part, k) => k !== had && !(asks.test(part.text) && !ingredient(part.text)));
    if (wish?.kind === 'at-hand' && rest.some((part) => ingredient(part.text)))
      return { wish, superfat: null, recipe: rest.map((part) => text.slice(part.from, part.to)).join(' ') };
  }
  const marked = parts.findIndex(({ text: part }) => asks.test(part) && (!ingredient(part) || wordsOf.hand.test(part)));
  const at =
    marked >= 0
      ? marked
      : parts.findIndex(({ text: part }) => !ingredient(part) && readScaleWish(reader, part) !== null);
  const part = parts[at];
  if (part) {
    // "my mould is 10 x 3.5 x 2.5 inches, scale this recipe to fit it": the size stands in a clause of its own
    const own = readScaleWish(reader, part.text);
    const sized = own
      ? null
      : (parts.find(
          (other) => other !== part && !ingredient(other.text) && readScaleWish(reader, other.text) !== null,
        ) ?? null);
    const taken = sized ? [part, sized].sort((a, b) => b.from - a.from) : [part];
    const rest = taken.reduce((left, { from, to }) => left.slice(0, from) + left.slice(to), text);
    return {
      wish: own ?? (sized ? readScaleWish(reader, sized.text) : null),
      superfat: superfat(part.text),
      recipe: rest,
    };
  }
  // "… 230 g water to 1 kg of oils"
  const tail = /\b(?:scaled? |resized? )?(?:to|for|by)\s+(?:[^,:;\n]|,(?=\d))*$/i.exec(text.trimEnd());
  const wish = tail ? readScaleWish(reader, tail[0]) : null;
  if (!tail || !wish) return { wish: null, superfat: null, recipe: text };
  return { wish, superfat: superfat(tail[0]), recipe: text.slice(0, tail.index) };
}

function clauses(text: string): readonly { readonly text: string; readonly from: number; readonly to: number }[] {
  const out: { text: string; from: number; to: number }[] = [];
  let from = 0;
  while (from < text.length) {
    const end = clauseEnd.exec(text.slice(from));
    const to = end ? from + end.index : text.length;
    out.push({ text: text.slice(from, to), from, to: Math.min(text.length, end ? to + end[0].length : to) });
    from = end ? to + end[0].length : text.length;
  }
  return out;
}

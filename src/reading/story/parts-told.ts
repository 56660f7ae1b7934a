/**
 * The parts of one weight told beside it: "olive 500 g (450 out of the can, the last 50 from the bottle)", of which the
 * whole counts; "90 g lye, then another 18 g, so 108 g all told", of which the sum does.
 */

import { type PutRight, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { endsDotted, isAny, isFat, isIngredient, isRole, isStop, isWord, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

/** Tokens from the first of its figures to the last one, at the most. */
const reach = 50;
const mostParts = 4;

/** Where a part is from. */
const origin = /\b(?:from|out of|first|last|second|other|another|in (?:one|two|three|the one)|plus|then)\b/;
/** What is told of the figures is no sum. */
const otherwise =
  /\b(?:left|leftovers?|back|kept|keep|keeping|remains?|remained|remaining|stays?|stayed|cupboard|spilled|spilt|spill|lost|instead|only|short|ran|later|after|trace|not|never|swap\w*|replac\w*|fill\w*|make up|bottle has|has|had|holds?|went in|goes in|used?|using|froze\w*|sold|gave|given|stored|for|cost|paid|bought)\b/;
/** Another part of what was weighed before. */
const again = /^(?:another|further|extra|second|additional|more|then|again|top|plus|missing|remaining)$/;
const total = /^(?:so|total|altogether|together|sum|makes|making|made|all|overall|thats|that's|hence|means)$/;

const isTotal = (token: Token | undefined): boolean => isRole(token, 'total') || total.test(spoken(token));

/** Whether the figure at `k` is of what the row names, or of nothing that is named. */
function isItsOwn(tokens: readonly Token[], k: number, id: string): boolean {
  const behind = isWord(tokens[k + 1], 'of') ? k + 2 : k + 1;
  // "the other 50 g. Lye 110 g"
  return [tokens[k - 1], endsDotted(tokens[k]) ? undefined : tokens[behind]].every(
    (one) => !isIngredient(one) || thingOf(one) === id,
  );
}

/** Plain figures behind a row, as far as none of something else stands there; `past` looks beyond those. */
function figuresBehind(tokens: readonly Token[], { at, figure, id }: Weighed, past: boolean): readonly number[] {
  const from = Math.max(at, figure) + 1;
  const found: number[] = [];
  for (let k = from; k < tokens.length && k - from < reach && found.length < mostParts; k++) {
    const token = tokens[k];
    if (isFat(token) && thingOf(token) !== id) break;
    if (!isPlain(token)) continue;
    if (isItsOwn(tokens, k, id)) found.push(k);
    else if (!past) break;
  }
  return found;
}

const wordsOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens.slice(from, to).map(spoken).join(' ');

interface Parts {
  readonly row: Weighed;
  readonly parts: readonly number[];
  /** Where their sum stands, behind them. */
  readonly sum: number | null;
}

/** The figures behind a row that make its weight together. */
function brokenDown(tokens: readonly Token[], row: Weighed): Parts | null {
  const whole = weightAt(tokens, row.figure, row.figure);
  const figures = figuresBehind(tokens, row, false);
  for (let n = 2; n <= figures.length; n++) {
    const parts = figures.slice(0, n);
    if (!isSum(whole, ...parts.map((k) => weightAt(tokens, k, row.figure)))) continue;
    const words = wordsOf(tokens, Math.max(row.at, row.figure) + 1, (parts.at(-1) ?? 0) + 5);
    return origin.test(words) && !otherwise.test(words) ? { row, parts, sum: null } : null;
  }
  return null;
}

/** "70 g of the shea cooks, the other 50 g": behind the list, by its name. */
function figuresNaming(tokens: readonly Token[], { figure, id }: Weighed): readonly number[] {
  const first = tokens.findIndex((one, k) => {
    const name = tokens[k + (/^(?:the|my|that)$/.test(spoken(tokens[k + 2])) ? 3 : 2)];
    return k > figure && isPlain(one) && isWord(tokens[k + 1], 'of') && isFat(name) && thingOf(name) === id;
  });
  const second = tokens.findIndex((one, k) => first >= 0 && k > first && k - first < reach && isPlain(one));
  return second < 0 ? [] : [first, second];
}

const remaining = /^(?:other|remaining|last|rest)$/;
const cooked = /\b(?:cook|cooks|cooked|cooking|pot|start|beginning)\b/;
const late =
  /\b(?:after|afterwards|later|end|(?:once|when)(?: [a-z]+){0,4} (?:cook|cooked|over|done|ready|finished|through|saponified|gelled))\b/;

/**
 * "Shea 120 g all told, but only 70 g of the shea cooks; the other 50 g I fold in when the cook is over": the part that is
 * cooked, and the one that comes later.
 */
function laterPart(tokens: readonly Token[], row: Weighed): readonly [number, number] | null {
  if (!isFat(tokens[row.at])) return null;
  const behind = figuresBehind(tokens, row, false);
  const [first, second] = behind.length > 0 ? behind : figuresNaming(tokens, row);
  if (first === undefined || second === undefined || !remaining.test(spoken(tokens[second - 1]))) return null;
  if (
    !isSum(
      weightAt(tokens, row.figure, row.figure),
      weightAt(tokens, first, row.figure),
      weightAt(tokens, second, row.figure),
    )
  )
    return null;
  let to = second + 1;
  while (!isStop(tokens[to])) to++;
  let from = second;
  while (from > first && !isStop(tokens[from - 1])) from--;
  return cooked.test(wordsOf(tokens, first, second)) && late.test(wordsOf(tokens, from, to)) ? [first, second] : null;
}

/** The figures behind a row of which the last one is the sum of it and of the others. */
function summedBehind(tokens: readonly Token[], row: Weighed): Parts | null {
  const first = weightAt(tokens, row.figure, row.figure);
  const figures = figuresBehind(tokens, row, true);
  for (let n = 1; n < figures.length; n++) {
    const sum = figures[n] ?? 0;
    const parts = figures.slice(0, n).filter((k) => isAny(tokens, k - 4, k + 4, (one) => again.test(spoken(one))));
    if (parts.length === 0 || !isAny(tokens, sum - 4, sum + 5, isTotal)) continue;
    if (isSum(weightAt(tokens, sum, row.figure), first, ...parts.map((k) => weightAt(tokens, k, row.figure))))
      return { row, parts, sum };
  }
  return null;
}

/** Words between the lye and the first of its weights, at the most. */
const farthest = 12;

/** "The lye had to be weighed in two goes, 60 g, then …": lye whose first weight stands further behind. */
function lyeAhead(tokens: readonly Token[], rows: readonly Weighed[]): readonly Weighed[] {
  if (rows.some(({ id }) => id === 'alkali')) return [];
  const at = tokens.findIndex((one) => isIngredient(one) && one.meaning.kind === 'alkali');
  const behind = tokens
    .slice(at + 1, at + 1 + farthest)
    .findIndex((one) => isPlain(one) || isIngredient(one) || isStop(one));
  const figure = at + 1 + behind;
  return at >= 0 && behind > 0 && isPlain(tokens[figure]) ? [{ at, figure, id: 'alkali' }] : [];
}

/** "1 kg of it I now use, the other 400 g are in the freezer": one of the parts is not in the pot. */
function isElsewhere(tokens: readonly Token[], parts: readonly number[]): boolean {
  const last = parts.at(-1) ?? 0;
  return isAny(tokens, parts[0] ?? 0, last + 8, (one) => away.test(spoken(one)));
}
const away = /^(?:freezer|fridge|cupboard|pantry|larder|frying|cooking|kitchen|kept|saved|candles?|balms?)$/;

/** The tokens in which such parts count once. */
export function partsTold({ tokens }: Cut): Heard {
  const told: PutRight[] = [];
  let out: Token[] | null = null;
  const rows = rowsBefore(tokens, tokens.length);
  for (const row of [...rows, ...lyeAhead(tokens, rows)]) {
    if ((out ?? tokens)[row.figure] !== tokens[row.figure] || row.id === 'water') continue;
    const parted = laterPart(out ?? tokens, row);
    const name = tokens[row.at];
    if (parted && name?.t === 'name') {
      const [first, second] = parted;
      out ??= [...tokens];
      hush(out, first, second, 'a part of what was said');
      const [word, behind] = [out[second - 1] as Token, tokens[second + 1]];
      if (endsDotted(tokens[second]) || (!isIngredient(behind) && !isWord(behind, 'of')))
        out[second - 1] = { ...name, from: word.from, to: word.to };
      const said = [first, second].map((k) => written((tokens[k] as Figure).quantity)).join(' and ');
      const text = `I took ${said} as parts of the ${written((tokens[row.figure] as Figure).quantity)}.`;
      told.push({ text, gone: [], from: first, to: second - 1, settles: true });
      continue;
    }
    const found =
      brokenDown(tokens, row) ?? (row.id === 'alkali' || isFat(tokens[row.at]) ? summedBehind(tokens, row) : null);
    if (!found || isElsewhere(tokens, found.parts)) continue;
    const { parts, sum } = found;
    const [first, last] = [parts[0] ?? 0, sum ?? parts.at(-1) ?? 0];
    const quantities = parts.map((k) => (tokens[k] as Figure).quantity);
    const said = quantities.map(written).join(' and ');
    out ??= [...tokens];
    if (sum === null)
      hush(out, first, last + 1, 'a part of what was said', (k) => !parts.includes(k) && tokens[k]?.t === 'quantity');
    else {
      const [was, all] = [tokens[row.figure] as Figure, tokens[sum] as Figure];
      const { numbers, ...quantity } = was.quantity;
      const value = { ...quantity, value: all.quantity.value, text: all.quantity.text, other: null };
      out[row.figure] = { ...was, quantity: { ...value, numbers: [...numbers, ...all.quantity.numbers] } };
      for (let k = row.at + 1; k < row.figure; k++) out[k] = asFiller(tokens[k] as Token);
      for (const k of parts) out[k] = asAside(tokens[k] as Figure, 'a part of what was said');
      out[sum] = asFiller(all);
      for (let k = sum - 4; k < sum + 5; k++) if (isTotal(tokens[k])) out[k] = asFiller(tokens[k] as Token);
    }
    const whole = written((out[row.figure] as Figure).quantity);
    const with_ = sum === null ? said : `${written((tokens[row.figure] as Figure).quantity)} and ${said}`;
    told.push({ text: `I took ${with_} as parts of the ${whole}.`, gone: [], from: first, to: last + 1 });
  }
  return { tokens: out ?? tokens, told };
}

import { type Item, sameWithin } from '../rows/items.ts';
import { isUnpaired } from '../rows/proportions.ts';
import type { Prim } from '../text/scan.ts';
import { isAny, isFat, isMark, isMeasured, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { isAdded, isOfBefore, isOther } from './added.ts';
import type { Roles } from './roles.ts';
import { type Assembly, type Kindred, type Row, roundTo } from './rows.ts';

const paste =
  /\bdilut|\b(?:finished|cooked|ready|done|neutral|into the|to the) (?:soap )?paste\b|\bto thin\b|\bthin (?:it|the)\b/i;
/** Words that begin so are in all that speaks of a paste. */
const thinning = /^(?:dilut|paste|thin)/;
const beginnings = 'dpt';
const ends: ReadonlySet<string> = new Set(['.', ',', ';', '!', '?']);
/** "660 g of water for the paste, 400 g and then I dilute": what comes behind it is of another water. */
const onward: ReadonlySet<string> = new Set(['then', 'before']);
const isPasteOf = (tokens: readonly Token[], k: number): boolean =>
  wordAt(tokens, k) === 'paste' && [k - 1, k - 2].some((at) => wordAt(tokens, at) === 'for');
/** How far a clause is looked through, in tokens. */
const longestClause = 40;

function speaksOfThinning(prims: readonly Prim[], from: number, to: number): boolean {
  for (let k = from; k < to; k++) {
    const text = prims[k]?.text ?? '';
    if (beginnings.includes(text.charAt(0)) && thinning.test(text)) return true;
  }
  return false;
}

/** "276 g of the solution, then another 120 g water to thin it": no paste is spoken of, and a lye is. */
function thinsLye(tokens: readonly Token[], { token: name }: Row): boolean {
  const { from, to } = sentenceAt(tokens, name, longestSentence);
  let lye = name - 1;
  while (lye >= from && !isSolution(tokens[lye])) lye--;
  if (lye < from || isAny(tokens, lye, name, isFat) || isAny(tokens, from, to, isLaterOn)) return false;
  return thinsIt.test(tokens.slice(name, to).map(spoken).join(' '));
}
/** Potash alone makes the paste that is thinned. */
const isSolution = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind === 'alkali'
    ? token.meaning.id !== 'koh'
    : (token?.t === 'name' && token.meaning.kind === 'stock') || spoken(token) === 'solution';
const thinsIt = /\b(?:thin|dilute) (?:it|that)\b/;
const isLaterOn = (token: Token): boolean => /^(?:paste|soap|cook\w*|later|finished|neutral)$/.test(spoken(token));

/** Water that a finished soap paste is thinned with, which no alkali was dissolved in. */
function isForPaste(assembly: Assembly, row: Row): boolean {
  const { tokens, prims } = assembly.source;
  const isEnd = (k: number): boolean => {
    const token = k < 0 ? undefined : tokens[k];
    if (token?.t === 'quantity') return token.quantity.text.endsWith('.');
    return !token || token.t === 'line' || (token.t === 'sign' && ends.has(token.text));
  };
  let [from, to] = [row.token, row.token];
  while (row.token - from < longestClause && !isEnd(from - 1)) from--;
  while (to - row.token < longestClause && !isEnd(to) && !onward.has(wordAt(tokens, to)) && !isPasteOf(tokens, to))
    to++;
  // "Dilution:" on the line above
  const above = from > 1 ? tokens[from - 2] : undefined;
  if (above?.t === 'sign' && tokens[from - 1]?.t === 'line' && above.text === ':')
    for (from -= 2; !isEnd(from - 1); from--);
  const [first, end] = [tokens[from]?.from ?? 0, tokens[to - 1]?.to ?? 0];
  if (!speaksOfThinning(prims, first, end)) return false;
  const words = prims.slice(first, end).map(({ raw }) => raw);
  const lye = tokens
    .slice(from, to)
    .some((token) => token.t === 'name' && /^(?:alkali|stock)$/.test(token.meaning.kind));
  if (lye || !paste.test(words.join(' ')) || thinsLye(tokens, row)) return false;
  if (row.amount)
    assembly.assume('left-out', `I left out "${row.said} water": it thins the soap, no lye is made with it.`);
  return true;
}

/** "Sugar 90 g in 60 ml hot water": water of its own; "in 60 ml of the water" is a part of the other. */
function isOfAdditive(tokens: readonly Token[], { token: name }: Row): boolean {
  const at = [name - 1, name - 2].find((k) => isMeasured(tokens[k]));
  if (at === undefined || !/^(?:in|into)$/.test(wordAt(tokens, at - 1))) return false;
  if (wordAt(tokens, name - 1) === 'the' || wordAt(tokens, at + 1) === 'of') return false;
  for (let k = at - 2; at - k <= longestDissolved; k--) {
    const token = tokens[k];
    if (token?.t === 'name') return token.meaning.kind === 'additive';
    if (!(token?.t === 'quantity' || (token?.t === 'word' && token.sort !== 'joint') || isMark(token, '=:,()\t')))
      return false;
  }
  return false;
}
/** "The first water", "my original water": there was some before what was added. */
const isFirst = (tokens: readonly Token[], { token: name }: Row): boolean =>
  /^(?:first|original|initial)$/.test(wordAt(tokens, name - 1));

/** "Another 200 g water for washing up": not in the pot. */
function isForElse(tokens: readonly Token[], row: Row): boolean {
  const { token: name } = row;
  const { from, to } = sentenceAt(tokens, name, longestSentence);
  const wordsFrom = (k: number): string => tokens.slice(k, to).map(spoken).join(' ');
  if (ofHouse.test(wordsFrom(from)) || / for /.test(wordsFrom(name))) return true;
  return ofPaste.test(wordsFrom(from)) && !thinsLye(tokens, row);
}
const longestSentence = 24;
export const ofHouse =
  /\b(?:bath|sink|basin|bucket|wash\w*|clean\w*|rins\w*|mop\w*|kettle|tea|drank|drink|plants?|pasta|soak\w*|boiler|bain|floor)\b/;
const ofPaste = /\b(?:cool\w*|thin\w*|dilut\w*|paste)\b/;

/** Tokens from an additive to the water that it is dissolved in, at the most. */
const longestDissolved = 7;

export function readWater(
  assembly: Assembly,
  rows: readonly Row[],
  fatGrams: number,
  stockWater: number,
): number | null {
  const waters: Row[] = [];
  const all: Row[] = [];
  let ice: number | null = null;
  for (const row of rows) {
    const { kind } = row.named.meaning;
    if (kind === 'ice') ice ??= row.grams;
    if (kind !== 'water' || isForPaste(assembly, row)) continue;
    waters.push(row);
    if (row.grams !== null) all.push(row);
  }
  // "superfat 5, water 33", where 250 g are 33 % of the fats
  const isShare = ({ amount }: Row): boolean =>
    amount?.dim === 'bare' &&
    all.some((row) => row.amount !== amount && Math.abs((row.grams ?? 0) / fatGrams - amount.value / 100) < 0.01);
  const weighed = all.length > 1 ? all.filter((row) => !isShare(row)) : all;
  let water: number | null = null;
  const [first] = weighed;
  if (first) {
    const grams = first.grams ?? 0;
    const equal = (): boolean => weighed.every((row) => Math.abs((row.grams ?? 0) - grams) <= sameWithin * grams);
    const isOnce = (): boolean =>
      equal() &&
      !weighed.slice(1).some((row) => isOther(assembly.source.tokens, row)) &&
      (weighed.some((row) => row.line !== first.line) ||
        weighed.slice(1).every((row) => isOfBefore(assembly.source.tokens, row)));
    const others = weighed.filter((row) => !isOfAdditive(assembly.source.tokens, row));
    const isMore = (row: Row): boolean =>
      isAdded(assembly.source.tokens, row, first) && !isForElse(assembly.source.tokens, row);
    // "10 g more lye in 20 g water … The first water was 200 g"
    const base = weighed.find((row) => isFirst(assembly.source.tokens, row)) ?? first;
    if (weighed.length > 1 && weighed.every((row) => row === base || isMore(row))) {
      water = weighed.reduce((sum, row) => sum + (row.grams ?? 0), 0);
      const said = weighed.map((row) => row.said).join(' and ');
      assembly.assume('corrected', `I added up ${said} of water, as the post says.`);
    } else if (weighed.length === 2 && others.length === 1) {
      water = weighed.reduce((sum, row) => sum + (row.grams ?? 0), 0);
      const said = weighed.map((row) => row.said).join(' and ');
      assembly.assume('summed', `I added up ${said} of water: the one is what something else is dissolved in.`);
    } else if (weighed.length === 1 || isOnce()) water = grams;
    else assembly.doubts.push({ id: 'two-amounts', of: 'water', said: weighed.map((row) => row.said) });
  } else {
    const share = waters.find((row) => row.share)?.share?.value;
    if (share !== undefined && fatGrams > 0) {
      water = share * fatGrams;
      assembly.assume('water', `I took the water as ${roundTo(share * 100, 1)} % of the fats: ${Math.round(water)} g.`);
    }
  }
  // "300 g of water with ice in it (the ice is part of the 300)"
  const isWithin =
    ice !== null && ice === water && /\bice\b[^.\n]{0,20}\b(?:part of|included|within)\b/i.test(assembly.source.text);
  if (ice !== null && !isWithin) water = (water ?? 0) + ice;
  if (stockWater > 0) water = (water ?? 0) + stockWater;
  return water;
}

/** Water to dry alkali, below which nothing dissolves it, however the rest of a solution is called. */
const leastLeft = 0.5;

/** "Lye water 420 g, of which 135 g is lye": what a weighed solution holds besides. */
export function restOfSolution(assembly: Assembly, { totals }: Roles, alkali: number, liquids: number): number | null {
  const whole = totals.find(({ solution }) => solution);
  if (!whole || alkali <= 0) return null;
  const left = whole.grams - alkali - liquids;
  if (liquids > 0 && left < leastLeft * alkali) return null;
  if (left < leastLeft * alkali) {
    assembly.doubts.push({ id: 'total-disagrees', said: whole.quantity.text, sum: alkali });
    return null;
  }
  const text = `I took the water as ${Math.round(left)} g: what the solution weighs without the alkali.`;
  assembly.assume('water', text);
  return left;
}

/** Water that the post gives only as a strength or a ratio. */
export function impliedWater(
  assembly: Assembly,
  roles: Roles,
  alkaliGrams: number,
  otherLiquid: boolean,
): number | null {
  if (alkaliGrams <= 0 || otherLiquid) return null;
  const { ratio, concentration } = roles;
  const water =
    ratio !== null
      ? ratio * alkaliGrams
      : concentration !== null && concentration > 0.02 && concentration < 0.75
        ? (alkaliGrams * (1 - concentration)) / concentration
        : null;
  if (water !== null)
    assembly.assume(
      'water',
      `I took the water as ${Math.round(water)} g, from the ${ratio !== null ? `${roundTo(ratio, 2)} to 1 of water to alkali` : `${roundTo((concentration ?? 0) * 100, 1)} % lye solution`}.`,
    );
  return water;
}

/** "Dilute later 1:1": of the paste with water. */
const isDiluted = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - 3), at).some((one) => one.t === 'word' && /^(?:dilut|thin)/.test(one.text));

/** Alkali or water is named at most `within` tokens before or behind item `at`. */
function isNear(items: readonly Item[], tokens: readonly Token[], at: number, step: -1 | 1, within: number): boolean {
  const from = items[at]?.from ?? 0;
  for (let k = at + step; ; k += step) {
    const other = items[k];
    if (!other || Math.abs(other.from - from) > within) return false;
    if (other.kind !== 'thing' || !/^(water|alkali|stock)$/.test(other.named.meaning.kind)) continue;
    return !isTold(tokens.slice(Math.min(from, other.from), Math.max(from, other.from)));
  }
}

/** A line or a sentence ends there, beside words of another one: "water 300 g. We won 2:1 yesterday". */
const isTold = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (one) =>
      one.t === 'line' ||
      (one.t === 'sign' && /^[.!?]$/.test(one.text)) ||
      (one.t === 'quantity' && one.quantity.text.endsWith('.')),
  ) && tokens.some((one) => one.t === 'word' && one.sort === 'everyday');

const isInParts = ({ amount }: Row): boolean => amount?.dim === 'parts';

/** `1 part lye, 2 parts water`: the ratio of the two. */
export function partsRatio(assembly: Assembly, rows: readonly Row[], roles: Roles): void {
  if (!rows.some(isInParts)) return;
  const partsOf = (kind: Kindred): number | null =>
    rows.find(({ named, amount }) => named.meaning.kind === kind && amount?.dim === 'parts')?.amount?.value ?? null;
  const [water, alkali] = [partsOf('water'), partsOf('alkali')];
  if (water === null && alkali === null) return;
  if (water !== null && alkali !== null && alkali > 0) roles.ratio ??= water / alkali;
  else
    for (const { named, amount, said } of rows)
      if (/^(water|alkali)$/.test(named.meaning.kind) && amount?.dim === 'parts')
        assembly.doubts.push({ id: 'unplaced', said });
}

const isRatioItem = (item: Item | undefined): boolean => item?.kind === 'amount' && item.quantity.dim === 'ratio';

/** Tokens from "3 times as much" to the fat that there is so much of, at the most. */
const farthestFat = 5;
const isFatItem = (item: Item): boolean => item.kind === 'thing' && item.named.meaning.kind === 'fat';

/** A ratio that stands beside no role: of water to alkali where the sentence speaks of water. */
export function looseRatio(assembly: Assembly, roles: Roles): void {
  const { items, tokens, bound } = assembly.source;
  if (!items.some(isRatioItem)) return;
  const isRatio = (k: number): boolean => isRatioItem(items[k]);
  const spare = bound.best.orphans.filter(isRatio);
  for (const group of bound.best.groups) {
    if (!group.amounts.some(isRatio)) continue;
    const ofRole = group.things.every((k) => {
      const item = items[k];
      return item?.kind !== 'thing' || item.named.meaning.kind === 'role';
    });
    if (!ofRole) spare.push(...group.amounts.filter(isRatio));
  }
  for (const k of spare) {
    const item = items[k];
    if (item?.kind !== 'amount') continue;
    const { quantity } = item;
    // "lard 3 times as much as coconut"
    if (
      quantity.second === null &&
      items.some((one) => isFatItem(one) && Math.abs(one.from - item.from) <= farthestFat)
    ) {
      assembly.doubts.push({ id: 'unplaced', said: quantity.text });
      assembly.fate(quantity, 'unclear', 'so many times something else');
      continue;
    }
    // "olive : coconut : lard = 3 : 1"
    if (isUnpaired(items, tokens, k)) {
      assembly.doubts.push({ id: 'unplaced', said: quantity.text });
      assembly.fate(quantity, 'unclear', 'not as many as the fats beside it');
      continue;
    }
    // "4/18" may be a date, "1:1" a dilution: without its colon a ratio stands close to what it is of
    const within = quantity.text.includes('/') ? 3 : 8;
    const near =
      !isDiluted(tokens, item.from) && [-1 as const, 1 as const].some((step) => isNear(items, tokens, k, step, within));
    const value = quantity.value / (quantity.second ?? 1);
    if (near && quantity.second !== null && roles.ratio === null && value > 0 && Number.isFinite(value)) {
      roles.ratio = value < 1 ? 1 / value : value;
      assembly.fate(quantity, 'used', 'water to alkali');
    } else {
      assembly.assume('left-out', `I left out "${quantity.text}".`, { said: quantity.text });
      assembly.fate(quantity, 'aside', 'a ratio of nothing weighed');
    }
  }
}

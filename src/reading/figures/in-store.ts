/**
 * What was bought or stands in the cupboard: `Bought 3/1: lard, 4 blocks of 250 g`, a list under "In stock:", "I bought
 * 2 kg of lard". Where the post weighs one of these things in another place, those rows are none of the recipe.
 */
import { linesOf } from '../columns/columns.ts';
import { signal } from '../words/signal-words.ts';
import { gives, type Signals } from '../words/signals.ts';
import { isIngredient, isMeasured, isRole } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedAt } from '../words/weighed.ts';
import { isPrice } from './prices.ts';

export const inStore = 'what was bought or is in store';

const isFigure = (token: Token | undefined): token is Figure => token?.t === 'quantity';
const textOf = (token: Token | undefined): string =>
  token?.t === 'word' || token?.t === 'sign' ? token.text : token?.t === 'name' ? token.text.toLowerCase() : '';

/** Words that do so beside others: "in stock", "stock-take", "on the shelf", "I have at home", "left over". */
const besides: Readonly<Record<string, { readonly before?: RegExp; readonly behind?: RegExp }>> = {
  stock: { before: /^(in|current|my|our)$/, behind: /^(take|taking|list|:)$/ },
  store: { before: /^in$/ },
  shelf: { before: /^(the|my|our|on)$/ },
  shelves: { before: /^(the|my|our|on)$/ },
  home: { before: /^at$/ },
  hand: { before: /^on$/ },
  over: { before: /^left$/ },
  have: { behind: /^:$/ },
  got: { behind: /^:$/ },
};
/** Words of what goes in: a row with one of them is for `usedOfPacks`. */
const useWord =
  /\b(use|used|uses|using|take|takes|took|taking|weighed|weigh|need|needs|want|recipe|batch|pot|make|makes|making|made)$/;

const isOfUse = (token: Token): boolean => useWord.test(textOf(token));

/** "It cures in the cellar" is no heading of a stock. */
const isOfSoap = (token: Token): boolean => isRole(token, 'cure') || isRole(token, 'bars') || textOf(token) === 'it';

/** "300 g lard from the pantry" is what goes in, and "shop-bought" a kind of it. */
const elsewise = /^(from|out|off|store|shop|-)$/;

function tellsStore(row: readonly Token[]): boolean {
  const name = row.findIndex((token) => isIngredient(token) || isMeasured(token));
  return row.some((token, k) => {
    const text = textOf(token);
    if (name >= 0 && k > name && !/^(unopened|stock|home|hand)$/.test(text)) return false;
    if (gives(token, signal.buying)) return ![1, 2].some((back) => elsewise.test(textOf(row[k - back])));
    const need = Object.hasOwn(besides, text) ? besides[text] : undefined;
    if (!need) return false;
    const sign = textOf(row[k + 1]);
    const behind = sign === '-' ? textOf(row[k + 2]) : sign;
    // "as at home" says how, not what
    if (text === 'home' && !row.some((one) => /^(have|had|got|is|are)$/.test(textOf(one)))) return false;
    return (need.before?.test(textOf(row[k - 1])) ?? false) || (need.behind?.test(behind) ?? false);
  });
}

const isPaid = (token: Token): boolean =>
  isPrice(token) || (isFigure(token) && token.quantity.dim === 'bare' && /^\d+[.,]\d\d$/.test(token.quantity.text));

/** `lard, 4 blocks of 250 g, 1.29 each`: so many packs, and cents for them. */
const tellsPacks = (row: readonly Token[]): boolean =>
  row.some(isPaid) &&
  row.some(
    (token) =>
      (isMeasured(token) && token.quantity.times !== null) ||
      (token.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'pot'),
  );

/** "Got lard on offer, 2 kg for 5.99". */
const tellsPrice = (row: readonly Token[]): boolean =>
  /^(got|paid|grabbed|picked)$/.test(textOf(row.find((token) => token.t === 'word' && token.text !== 'i'))) &&
  row.some(isPaid);

interface Span {
  readonly from: number;
  readonly to: number;
}

interface Row extends Span {
  readonly stored: boolean;
}

/** Words and signs of a heading, and of one that stands in the line itself, at the most. */
const longestHeading = 9;
const longestTitle = 5;

const isBlank = (token: Token | undefined): boolean => token?.t === 'line' && token.text === 'blank';

const telling = signal.buying | signal.keeping;

/** Nothing in a line tells of what is in store, or something may; `weighs`: there is a figure in it. */
function lookInto(tokens: readonly Token[], { from, to }: Span, { at }: Signals): { tells: boolean; weighs: boolean } {
  let [tells, weighs] = [false, false];
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (!token) break;
    weighs ||= token.t === 'quantity';
    tells ||= ((at[k] ?? 0) & telling) !== 0 || isPaid(token);
  }
  return { tells, weighs };
}

interface Rows {
  /** Sentences of the lines that may tell of what is in store. */
  readonly rows: readonly Row[];
  /** There are others that weigh something. */
  readonly others: boolean;
}

/** Lines and sentences that weigh something, and whether they tell of what is in store. */
function rowsOf(tokens: readonly Token[], signals: Signals): Rows {
  const rows: Row[] = [];
  let others = false;
  let under = false;
  let any = false;
  const dotted = tokens.some((token) => isMeasured(token) && !token.quantity.text.endsWith('.'));
  for (const line of linesOf(tokens)) {
    if (isBlank(tokens[line.from - 1]) && any) under = false;
    if (line.from === line.to) continue;
    const { tells, weighs } = lookInto(tokens, line, signals);
    if (!tells && !under) {
      others ||= weighs;
      continue;
    }
    const whole = tokens.slice(line.from, line.to);
    if (!weighs) {
      // a heading, or talk between two lists
      const head = whole.slice(whole.findLastIndex((token, k) => k + 1 < whole.length && isEnd(token)) + 1);
      under =
        !head.some(isOfUse) &&
        !whole.some(isOfSoap) &&
        tellsStore(head) &&
        (head.length <= longestHeading || textOf(head.at(-1)) === ':');
      any = false;
      continue;
    }
    if (under && whole.some(isOfUse)) under = false;
    any = true;
    let opened = false;
    for (let from = line.from; from < line.to; ) {
      let to = from + 1;
      while (to < line.to && !endsSentence(tokens, to, dotted)) to++;
      const row = tokens.slice(from, to);
      if (!row.some(isFigure)) opened ||= from === line.from && row.length <= longestTitle && tellsStore(row);
      const own = (tellsStore(row) || tellsPacks(row) || tellsPrice(row)) && !row.some(isOfUse);
      rows.push({ from, to, stored: under || own || (opened && !row.some(isOfUse)) });
      from = to;
    }
  }
  return { rows, others };
}

const isEnd = (token: Token): boolean => token.t === 'sign' && /^[.;!?]$/.test(token.text);

/** Token `k` begins another sentence than the one before it; `dotted`: not all units of the post have their dot. */
function endsSentence(tokens: readonly Token[], k: number, dotted: boolean): boolean {
  const before = tokens[k - 1];
  return before !== undefined && (isEnd(before) || (dotted && isFigure(before) && before.quantity.text.endsWith('.')));
}

const namesIn = (tokens: readonly Token[], { from, to }: Row): readonly number[] =>
  Array.from({ length: to - from }, (_, k) => from + k).filter((k) => isIngredient(tokens[k]));

const whyOf = (token: Figure): string =>
  isPaid(token) ? 'a price' : token.quantity.dim === 'ratio' ? 'a date' : inStore;

/** The tokens with the figures of rows that tell of what is in store set aside, if it is weighed again elsewhere. */
export function leaveStore(tokens: readonly Token[], signals: Signals): readonly Token[] {
  const { rows, others } = rowsOf(tokens, signals);
  const stored = rows.filter(({ from, to, stored }) => {
    const row = stored ? tokens.slice(from, to) : [];
    // nobody buys the water
    return row.some(isIngredient) && !row.some((token) => token.t === 'name' && token.meaning.kind === 'water');
  });
  if (stored.length === 0 || (!others && stored.length === rows.length)) return tokens;
  const weighed = new Set<string>();
  const named = new Set<string>();
  let next = 0;
  tokens.forEach((token, k) => {
    while ((stored[next]?.to ?? Number.POSITIVE_INFINITY) <= k) next++;
    if (!isIngredient(token) || k >= (stored[next]?.from ?? Number.POSITIVE_INFINITY)) return;
    named.add(thingOf(token));
    if (weighedAt(tokens, k) && !tokens.slice(Math.max(0, k - 5), k).some(isOfPrice)) weighed.add(thingOf(token));
  });
  const isAgain = (row: Row): boolean => namesIn(tokens, row).some((k) => isOf(weighed, tokens[k], 'fat'));
  if (!stored.some(isAgain)) return tokens;
  const out = [...tokens];
  for (const row of stored) {
    const names = namesIn(tokens, row);
    // "all of the castor": that one goes in
    if (names.some((k) => isOf(named, tokens[k], 'fat') && !isOf(weighed, tokens[k], 'fat'))) continue;
    for (let k = row.from; k < row.to; k++) {
      const token = tokens[k];
      if (isFigure(token) && /^(mass|volume|bare|ratio|parts)$/.test(token.quantity.dim))
        out[k] = asAside(token, whyOf(token));
      else if (isIngredient(token) && token.meaning.kind !== 'alkali' && token.meaning.kind !== 'stock')
        out[k] = asFiller(token, 'only');
    }
  }
  return out;
}

/** "She paid 12,80 for the olive". */
const isOfPrice = (token: Token): boolean =>
  token.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'price';

const isOf = (set: ReadonlySet<string>, token: Token | undefined, kind: string): boolean =>
  isIngredient(token) && token.meaning.kind === kind && set.has(thingOf(token));

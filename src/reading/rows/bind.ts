import type { Meaning } from '../words/lexicon.ts';
import type { Dim, Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';
import type { RoleName } from '../words/words.ts';
import {
  backOf,
  beginOf,
  type Chains,
  chainsFor,
  costOf,
  countAt,
  endOf,
  insert,
  kept,
  side,
  sideOf,
  thingOf,
} from './chains.ts';
import { type Item, type Named, sameWithin } from './items.ts';

/**
 * Which amount belongs to which name. Items stand in a row; the row is cut into groups of one name with the amounts
 * beside it, by the least total cost; the next cheapest cut that means something else tells how sure that is.
 */
export interface Group {
  readonly things: readonly number[];
  readonly amounts: readonly number[];
}

export interface Binding {
  readonly groups: readonly Group[];
  readonly orphans: readonly number[];
  readonly mentions: readonly number[];
  readonly cost: number;
}

const never = Number.POSITIVE_INFINITY;

/** What it costs to say that this figure belongs to this kind of thing. */
const fits: Readonly<Record<string, Fits>> = {
  fat: { mass: 0, volume: 0.3, bare: 0.3, percent: 0.2, parts: 0 },
  alkali: { mass: 0, volume: 0.5, bare: 0.3, percent: 0.6, parts: 0.5 },
  stock: { mass: 0, volume: 0.5, bare: 0.5, percent: 0 },
  water: { mass: 0, volume: 0, bare: 0.3, percent: 0.4, parts: 0.5, ratio: 0.5 },
  ice: { mass: 0, volume: 0.3, bare: 0.4, percent: 0.6 },
  liquid: { mass: 0, volume: 0, bare: 0.3, percent: 0.4, parts: 0.5 },
  acid: { mass: 0, volume: 0.2, bare: 0.4, percent: 0.3 },
  additive: { mass: 0, volume: 0, bare: 0.4, percent: 0.3, parts: 0.5 },
  scent: { mass: 0, volume: 0, bare: 0.4, percent: 0.3, parts: 0.5 },
  ambiguous: { mass: 0.2, volume: 0.4, bare: 0.5, percent: 0.4, parts: 0.2 },
  unheld: { mass: 0.1, volume: 0.3, bare: 0.4, percent: 0.3, parts: 0.1 },
  unknown: { mass: 1.5, volume: 1.7, bare: 2.6, percent: 2.2, parts: 1.5 },
};

const roleFits: Partial<Readonly<Record<RoleName, Fits>>> = {
  superfat: { percent: -0.5, bare: 0.4 },
  concentration: { percent: -0.3, bare: 0.6 },
  solution: { percent: 0, mass: 1.2, volume: 1.2 },
  ratio: { ratio: -0.5, bare: 0.6, parts: 0.8 },
  'ratio-lye-water': { ratio: -0.5, bare: 0.6 },
  purity: { percent: -0.3, bare: 1 },
  'total-fats': { mass: 0, volume: 1, bare: 0.4, percent: 1.2 },
  total: { mass: 0, volume: 0.6, bare: 0.4, percent: 0.3 },
  'total-solution': { mass: 0, volume: 0.3, bare: 0.4 },
  'batch-word': { mass: 2, volume: 2, bare: 2.5 },
  mould: { mass: 1, volume: 0.4, bare: 1 },
  pot: { mass: 3.2, volume: 1, bare: 1.4 },
  bars: { bare: 0.2, mass: 1, volume: 1.5 },
  cure: { bare: 0.8 },
  temperature: { bare: 0.5 },
  number: { bare: 0.3, ratio: 1 },
  chart: { bare: 0.1, percent: 1 },
  time: { bare: 0.6 },
  price: { bare: 0.6 },
  people: { bare: 0 },
  scale: { mass: 1, bare: 1.5 },
  'per-fats': { mass: 0, bare: 0.5 },
  'scale-to': { mass: 0.3, bare: 0.8 },
  equal: { bare: 1 },
  supply: { mass: 0, volume: 0 },
};

/** Water as a share of the fats, at the least. */
const leastWater = 0.12;

/** Water as a share of the fats or of a solution, at the most; above one it may be of the alkali. */
const mostWater = 0.8;

type Fits = Partial<Record<Dim, number>>;

/** The places of what a figure may be in a row of costs. */
const places: ReadonlyMap<Dim, number> = new Map(
  (['mass', 'volume', 'percent', 'bare', 'ratio', 'parts', 'temperature', 'time', 'length'] as const).map(
    (dim, place) => [dim, place],
  ),
);

const costsKnown = new Map<string, readonly number[]>();

/** What figures cost that belong to a thing, by their place. */
function costsOf(meaning: Meaning): readonly number[] {
  const key = meaning.kind === 'role' ? meaning.id : meaning.kind;
  let costs = costsKnown.get(key);
  if (!costs) {
    const table = meaning.kind === 'role' ? roleFits[meaning.id] : fits[meaning.kind];
    costs = [...places.keys()].map((dim) => table?.[dim] ?? never);
    costsKnown.set(key, costs);
  }
  return costs;
}

/** What a purity costs that the alkali is seldom sold with. */
const odd = 0.9;
const isOdd = (id: string, share: number): boolean =>
  id === 'naoh' ? share > 0.8 && share < 0.95 : id === 'koh' && share > 0.97;

/** `cost`: what such a figure costs that belongs to such a thing, whatever its value. */
function fitCost(meaning: Meaning, cost: number, quantity: Quantity, unitful = false): number {
  if (cost === never) return never;
  if (meaning.kind === 'alkali' && meaning.asked && quantity.dim !== 'percent') return never;
  if (meaning.kind === 'role' && meaning.id === 'scale' && quantity.dim === 'mass' && quantity.value > 10) return never;
  // "at zero since the shea …": none of a thing is said in other words
  if (meaning.kind !== 'role' && quantity.dim === 'bare' && quantity.inWords && quantity.value === 0) return never;
  // where both are named, the purer one is the sodium hydroxide
  if (meaning.kind === 'alkali' && quantity.dim === 'percent' && isOdd(meaning.id, quantity.value)) return cost + odd;
  // "the label says 99 %. Water 345 g": a purity, and no share that water has
  if (meaning.kind === 'water' && quantity.dim === 'percent' && quantity.value > mostWater)
    return quantity.value > 1 ? cost + 3 : never;
  // so little water dissolves no alkali: "what about the water" behind a superfat
  if (meaning.kind === 'water' && quantity.dim === 'percent' && quantity.value < leastWater) return cost + 3;
  // a superfat is small and a purity large
  if (meaning.kind === 'role' && quantity.dim === 'percent') {
    if (meaning.id === 'superfat' && quantity.value > 0.3) return cost + 1.5;
    if (meaning.id === 'purity' && quantity.value < 0.5) return cost + 1.5;
  }
  // where the rows carry units, a bare figure is hardly a weight
  if (unitful && quantity.dim === 'bare' && meaning.kind !== 'role' && meaning.kind !== 'unknown') return cost + 3;
  if (meaning.kind === 'role' && quantity.dim === 'bare') {
    if (meaning.id === 'superfat' && !(Math.abs(quantity.value) <= 120)) return never;
    if (meaning.id === 'purity' && !(quantity.value >= 50 && quantity.value <= 101)) return never;
    if (meaning.id === 'people' && !(Number.isInteger(quantity.value) && quantity.value <= 1000)) return never;
  }
  return cost;
}

/** What a thing costs that gets no amount: talk is cheap, a fat without a weight is not. */
function mentionCost(meaning: Meaning): number {
  if (meaning.kind === 'fat' || meaning.kind === 'unheld') return 1.7;
  if (meaning.kind === 'alkali') return 0.4;
  if (meaning.kind === 'water' || meaning.kind === 'liquid' || meaning.kind === 'stock' || meaning.kind === 'ambiguous')
    return 0.6;
  return meaning.kind === 'role' || meaning.kind === 'unknown' ? 0 : 0.3;
}

function orphanCost(quantity: Quantity): number {
  if (quantity.dim === 'mass' || quantity.dim === 'volume' || quantity.dim === 'parts') return 8;
  return quantity.dim === 'ratio' ? 3 : 5;
}

/** Words between a name and the amount that follows it. */
const equating: ReadonlySet<string> = new Set(['is', 'was', 'at', 'are', 'were', 'be', 'equals', 'weighs']);

/** What is saved by a name, "is" and its figure. */
const equated = 0.3;

/** What it costs to take a bare figure for a weight behind which something else is named. */
const ofOthers = 5;

/** What it costs to take a figure behind "that was" for one of what follows. */
const pointing = 1.5;
const pointers: ReadonlySet<string> = new Set(['that', 'which', 'it']);
const pointingVerbs: ReadonlySet<string> = new Set(['was', 'is', 'makes', 'made']);

/** "That was", "which is" right before token `k`. */
function pointsBack(tokens: readonly Token[], k: number): boolean {
  const verb = k > 0 ? tokens[k - 1] : undefined;
  if (verb?.t !== 'word') return false;
  if (verb.text !== 'thats') {
    const what = k > 1 && pointingVerbs.has(verb.text) ? tokens[k - 2] : undefined;
    if (what?.t !== 'word' || !pointers.has(what.text)) return false;
  }
  const behind = tokens[k + 1];
  return behind?.t !== 'name' && !(behind?.t === 'word' && behind.text === 'of');
}

/** "of the stock" at token `k`. */
function isOfName(tokens: readonly Token[], k: number): boolean {
  const of = tokens[k];
  if (of?.t !== 'word' || of.text !== 'of') return false;
  const article = tokens[k + 1];
  const name = article?.t === 'word' && /^(?:the|my|that|this)$/.test(article.text) ? tokens[k + 2] : article;
  return name?.t === 'name' && name.meaning.kind !== 'role' && name.meaning.kind !== 'unknown';
}

/** "My lye is 285 grams water is 700 grams": a figure (token `k`) that a name with a verb stands before. */
function isEquated(tokens: readonly Token[], k: number): boolean {
  const [name, verb] = [tokens[k - 2], tokens[k - 1]];
  return (
    verb?.t === 'word' &&
    equating.has(verb.text) &&
    verb.text !== 'at' &&
    name?.t === 'name' &&
    name.meaning.kind !== 'role'
  );
}

/** What a sign that ends a sentence costs, at the least. */
const stop = 3.6;

/** What signs between two items cost; those not here cost little. */
const signCosts: ReadonlyMap<string, number> = new Map([
  [',', 2],
  [';', 4],
  ['!', 4],
  ['?', 4],
  ['.', stop],
  ['\t', 0.4],
  ['|', 0.4],
  [':', 0],
  ['=', 0],
  ['+', 2.4],
  ['&', 2.4],
  ['•', 2.6],
  ['*', 2.6],
  ['/', 1],
  ['"', 0],
  ["'", 0],
  ['_', 0],
  ['`', 0],
]);

const isEveryday = (token: Token | undefined): boolean => token?.t === 'word' && token.sort === 'everyday';

/** One of the three words up to token `k` is of everyday talk: "last time I made 3 kg". */
function isSpoken(tokens: readonly Token[], k: number): boolean {
  for (let at = k; k - at < 3; at--) {
    const token = tokens[at];
    if (token?.t !== 'word') return false;
    if (token.sort === 'everyday') return true;
  }
  return false;
}

/** "150 g of it". */
const isOfIt = (tokens: readonly Token[], k: number): boolean => {
  const [of, it] = [tokens[k], tokens[k + 1]];
  return of?.t === 'word' && of.text === 'of' && it?.t === 'word' && /^(?:it|that|this|them)$/.test(it.text);
};

/** What it costs to take the figure of one sentence, with words of its own, for a name of another. */
const ofSentence = 3;

/** The way between two neighbouring items, as seen from a name to its amount and from an amount to its name. */
function gapCosts(tokens: readonly Token[], from: number, to: number, dotted: boolean): Gap {
  let nameFirst = 0;
  let amountFirst = 0;
  let everydays = 0;
  let lines = 0;
  let stops = 0;
  // everyday words before the first end of a sentence or line, and behind the last one
  let [ahead, behind] = [0, 0];
  const before = from > 0 ? tokens[from - 1] : undefined;
  if (dotted && before?.t === 'quantity' && before.quantity.text.endsWith('.')) {
    nameFirst = 3.6;
    amountFirst = 3.6;
    stops++;
  }
  // "42 miles for the fats": so many of something else
  const counted = tokens[from];
  if (
    before?.t === 'quantity' &&
    before.quantity.dim === 'bare' &&
    counted?.t === 'word' &&
    counted.sort === 'everyday'
  )
    amountFirst += ofOthers;
  // "some sunflower left, so that was 120 g": the figure points back
  if (pointsBack(tokens, to)) nameFirst -= pointing;
  // "for this loaf: 280 g of the stock"
  if (isOfName(tokens, to + 1)) nameFirst += ofOthers;
  if (before?.t === 'quantity' && (pointsBack(tokens, from - 1) || isEquated(tokens, from - 1)))
    amountFirst += pointing;
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (!token) continue;
    let both = 0;
    if (token.t === 'line') {
      both = token.text === 'blank' ? 6 : 3.2;
      if (lines + stops === 0) ahead = everydays;
      lines++;
      behind = 0;
    } else if (token.t === 'aside') both = 0.5;
    else if (token.t === 'quantity') both = 0.7;
    else if (token.t === 'word') {
      if (token.sort === 'joint') {
        both = token.text === 'for' ? 1.7 : token.text === 'in' || token.text === 'to' ? 2 : 2.4;
        // "how much lye for 2 lb of lard": what follows is not the lye's
        if (token.text === 'for') nameFirst += 1.5;
      } else if (token.sort === 'filler') {
        both = 0.05;
        if (token.text === 'of' || token.text === 'de' || token.text === 'di') {
          amountFirst -= 0.4;
          nameFirst += 1;
        } else if (equating.has(token.text)) {
          amountFirst += 1;
          // "my lye is 285 grams"
          if (to === from + 1 && before?.t === 'name' && token.text === 'is') nameFirst -= equated;
        }
      } else if (token.sort === 'unknown') both = 1;
      else {
        everydays++;
        behind++;
        both = everydays > 4 ? 0.3 : 0.7;
      }
    } else if (token.t === 'sign') {
      const { text } = token;
      both = signCosts.get(text) ?? 0.3;
      if (both >= stop) {
        if (lines + stops === 0) ahead = everydays;
        stops++;
        behind = 0;
      } else if (text === ':' || text === '=' || text === '>') {
        nameFirst -= 0.3;
        amountFirst += 1.5;
      } else if (text === ',') {
        // "112 g NaOH (5 %), 260 g water": what a bracket holds is not of the next row
        const closed = k > 0 ? tokens[k - 1] : undefined;
        if (closed?.t === 'sign' && closed.text === ')') both = 3;
      }
    }
    nameFirst += both;
    amountFirst += both;
  }
  // a sentence in another line is of something else
  const told = lines > 0 && everydays > 0 ? 1 : 0;
  if (lines + stops > 0 && !pointsBack(tokens, to) && !isOfIt(tokens, to + 1)) {
    if (behind > 0 || isEveryday(tokens[to + 1])) nameFirst += ofSentence;
    if (ahead > 0 || (before?.t === 'quantity' && isSpoken(tokens, from - 2))) amountFirst += ofSentence;
  }
  return { nameFirst: nameFirst + told, amountFirst: amountFirst + told, lines, stops };
}

const longestGroup = 12;
/** Cost of the way over which no amount belongs to a name any more. */
const farthest = 8;
/** Rows of one list pull together: what it costs to turn from `450 g olive` to `olive 450 g`. */
const turn = 1.4;
/** A reading this much dearer than the cheapest is no rival of it; tuned on the posts of `tests/posts`. */
const clearly = 0.35;

/** Dearer by so much, it stays dearer whichever of the two turns, now and at the next group. */
const beyond = 3 * turn + clearly;

/** A bare figure as small as this is a number of something, even beside a name. */
const leastBeside = 10;

/** The way over which a figure without a unit is of no name in a post whose rows have units: a word that parts. */
const leastApart = 1.7;

/** A name takes one figure of each of these, a bit each. */
const slots = { amount: 1, volume: 2, percent: 4, ratio: 8 } as const;
const slotOf = ({ dim }: Quantity): number =>
  dim === 'percent' || dim === 'ratio' || dim === 'volume' ? slots[dim] : slots.amount;
/** Words that may stand between a name and its amount without taking it: `lye on my scale: 92 g`. */
const passed: ReadonlySet<string> = new Set([
  'mould',
  'pot',
  'scale',
  'number',
  'temperature',
  'heading',
  'cure',
  'time',
  'people',
  'target',
  'before',
  'after',
  'batch-word',
]);
const isPassed = (item: Item | undefined): boolean =>
  item?.kind === 'thing' &&
  (item.named.meaning.kind === 'unknown' || (item.named.meaning.kind === 'role' && passed.has(item.named.meaning.id)));
const consumable = ({ meaning: { kind } }: Named): boolean => kind !== 'role' && kind !== 'unknown';

/** Dearer than all that are kept, or than any turn to come could make the best or a rival. */
function tooDear(chains: Chains, end: number, cost: number): boolean {
  const count = countAt(chains, end);
  if (count === 0) return false;
  const first = end * kept;
  return cost > costOf(chains, first) + turn + clearly || (count === kept && cost >= costOf(chains, first + kept - 1));
}

const isUnknown = (item: Item | undefined): boolean => item?.kind === 'thing' && item.named.meaning.kind === 'unknown';

/** `oils:` in front of a list, which takes no figure itself. */
const isHeading = (item: Item | undefined): boolean => item?.kind === 'thing' && item.named.meaning.kind === 'role';

const isParted = (gap: Gap | undefined): boolean =>
  gap !== undefined && (gap.lines > 0 || gap.stops > 0 || gap.amountFirst >= 3.4);

interface Gap {
  readonly nameFirst: number;
  readonly amountFirst: number;
  readonly lines: number;
  /** Ends of sentences. */
  readonly stops: number;
}

/** Whether the dot behind `340 g.` ends a sentence: not where all units of the post are written with one. */
export function endsInDots(items: readonly Item[]): boolean {
  let measured = 0;
  for (const item of items) {
    if (item.kind !== 'amount' || item.quantity.unit === null) continue;
    if (!item.quantity.text.endsWith('.')) return true;
    measured++;
  }
  return measured === 1;
}

/** The items of a post, with what is asked of each of them many times over. */
interface Series {
  readonly items: readonly Item[];
  /** Whether the dot of a unit ends a sentence. */
  readonly dots: boolean;
  /** The way from each item to the next. */
  readonly gaps: readonly Gap[];
  readonly passed: readonly boolean[];
  /** What figures cost that belong to a thing. */
  readonly costs: readonly (readonly number[])[];
  /** The place of each figure in them. */
  readonly places: readonly number[];
  /** The rows carry units. */
  readonly unitful: boolean;
}

/** `known`: of the same tokens, before some of the items were changed. */
function seriesOf(items: readonly Item[], tokens: readonly Token[], known: Series | null): Series {
  const dots = endsInDots(items);
  const same = known?.dots === dots ? known : null;
  const skipped = same ? same.items.length - items.length : 0;
  const gaps: Gap[] = [];
  const passed: boolean[] = [];
  const costs: (readonly number[])[] = [];
  const found: number[] = [];
  let [weights, bare] = [0, 0];
  for (let k = 0; k < items.length; k++) {
    const item = items[k];
    if (!item) break;
    const before = items[k - 1];
    if (before)
      gaps.push(
        (same && (gapIn(same, k, before, item) ?? gapIn(same, k + skipped, before, item))) ??
          gapCosts(tokens, before.to, item.from, dots),
      );
    passed.push(isPassed(item));
    costs.push(item.kind === 'thing' ? costsOf(item.named.meaning) : free);
    found.push(item.kind === 'amount' ? (places.get(item.quantity.dim) ?? 0) : 0);
    if (item.kind === 'amount') {
      if (item.quantity.dim === 'mass') weights++;
      else if (item.quantity.dim === 'bare') bare++;
    }
  }
  return { items, dots, gaps, passed, costs, places: found, unitful: weights >= 3 && weights > 2 * bare };
}

const free: readonly number[] = [];

/** The way to item `k`, if these two neighbours are the very same there. */
const gapIn = ({ items, gaps }: Series, k: number, before: Item, item: Item): Gap | undefined =>
  items[k] === item && items[k - 1] === before ? gaps[k - 1] : undefined;

/** Some items in a row, which may be a group: counted while it grows at its beginning. */
interface Span {
  begin: number;
  readonly end: number;
  things: number;
  /** Things that stand for no passing word. */
  held: number;
  /** Whose the amounts are: the first that is held, else the first; -1 where there is none. */
  thing: number;
}

function grow({ items, passed }: Series, span: Span): void {
  span.begin--;
  if (items[span.begin]?.kind !== 'thing') return;
  const holds = !passed[span.begin];
  span.things++;
  if (holds) span.held++;
  if (holds || span.held === 0) span.thing = span.begin;
}

/** A row of items, and how it is bound. */
export interface Cuts {
  readonly series: Series;
  readonly bound: Bound;
}

/** `before`: those of the same tokens, from which a few of the items, or none, have been changed. */
export function cutsOf(items: readonly Item[], tokens: readonly Token[], before: Cuts | null = null): Cuts {
  if (before?.series.items === items) return before;
  const series = seriesOf(items, tokens, before?.series ?? null);
  return { series, bound: cheapest(series) };
}

/** The row whose chains stand in the room. */
let latest: { readonly series: Series; readonly chains: Chains } | null = null;

/** How many items a row begins with as the one before it did: up to there its chains are the same. */
function startOf({ items, gaps, unitful }: Series, before: Series): number {
  if (before.unitful !== unitful) return 0;
  let k = 0;
  while (k < items.length && items[k] === before.items[k] && (k === 0 || gaps[k - 1] === before.gaps[k - 1])) k++;
  return k;
}

/** The last amount "each" before this item, as far back as a group reaches. */
function lastEach(items: readonly Item[], end: number): number {
  for (let k = end - 1; k >= 0 && end - k <= longestGroup; k--) {
    const item = items[k];
    if (item?.kind === 'amount' && item.quantity.each) return k;
  }
  return Number.NEGATIVE_INFINITY;
}

function cheapest(series: Series): Bound {
  const { items, gaps } = series;
  const chains = chainsFor(items.length);
  const ways: Way[] = [];
  const start = latest?.chains === chains ? startOf(series, latest.series) : 0;
  latest = null;
  let lastShared = lastEach(items, start);
  for (let end = start + 1; end <= items.length; end++) {
    chains.count[end] = 0;
    const last = items[end - 1];
    if (!last) break;
    if (last.kind === 'amount' && last.quantity.each) lastShared = end - 1;
    const alone = last.kind === 'thing' ? mentionCost(last.named.meaning) : orphanCost(last.quantity);
    const span: Span = { begin: end, end, things: 0, held: 0, thing: -1 };
    grow(series, span);
    let count = 0;
    let dearest = Number.POSITIVE_INFINITY;
    while (span.begin > 0 && end - span.begin < longestGroup) {
      grow(series, span);
      const { begin } = span;
      const gap = gaps[begin];
      // only an amount "each" belongs to several names
      if (span.held > 1 && end - lastShared > longestGroup) break;
      if (gap && gap.nameFirst > farthest && gap.amountFirst > farthest) break;
      const way = groupAt(series, span);
      if (way === 'stop') break;
      if (way === 'none') continue;
      ways[count++] = way;
      dearest = Math.min(dearest, costOf(chains, begin * kept) + way.cost + beyond);
    }
    standAlone(chains, end, alone, dearest);
    for (let k = 0; k < count; k++) carryOn(chains, end, ways[k] as Way, series);
  }
  latest = { series, chains };
  return boundBy(chains, items);
}

/** The chains up to here whose last item stands alone, which costs so much. */
function standAlone(chains: Chains, end: number, alone: number, dearest: number): void {
  const first = (end - 1) * kept;
  for (let back = first; back < first + countAt(chains, end - 1); back++) {
    const cost = costOf(chains, back) + alone;
    // those behind it are dearer
    if (cost > dearest || tooDear(chains, end, cost)) break;
    insert(chains, end, cost, back, -1, -1, sideOf(chains, back));
  }
}

/** The chains up to here whose last items are this group. */
function carryOn(chains: Chains, end: number, way: Way, series: Series): void {
  const { begin, thing } = way;
  const first = begin * kept;
  for (let back = first; back < first + countAt(chains, begin); back++) {
    const straight = costOf(chains, back) + way.cost;
    if (tooDear(chains, end, straight)) break;
    const before = sideOf(chains, back);
    const turned = before !== side.none && way.side !== side.none && before !== way.side;
    const cost = turned ? straight + turn * (begin > 0 && isPartedAt(series, begin) ? 0.6 : 1) : straight;
    if (turned && tooDear(chains, end, cost)) continue;
    insert(chains, end, cost, back, begin, thing, way.side === side.none ? before : way.side);
  }
}

/** Whether the item before `begin`, or the heading there, is of another row or sentence. */
const isPartedAt = ({ items, gaps }: Series, begin: number): boolean =>
  isParted(gaps[begin - 1]) || (begin > 1 && isHeading(items[begin - 1]) && isParted(gaps[begin - 2]));

const sameAmount = (a: Quantity, b: Quantity): boolean =>
  a.dim === 'mass' &&
  b.dim === 'mass' &&
  a.unit?.id !== b.unit?.id &&
  Math.abs(a.value - b.value) <= sameWithin * Math.max(a.value, b.value);

/** Grams per millilitre that anything in a recipe may have, with kitchen rounding. */
const densities = { least: 0.8, most: 1.2 };

const valueAt = (items: readonly Item[], k: number): number => {
  const item = items[k];
  return item?.kind === 'amount' ? item.quantity.value : Number.NaN;
};

/** Whether a weight and a volume on the two sides of a name can be one amount; on one side they may contradict. */
function agreeAround(items: readonly Item[], begin: number, end: number, thing: number): boolean {
  let [weight, volume] = [end, end];
  for (let k = end - 1; k >= begin; k--) {
    const item = items[k];
    if (item?.kind !== 'amount') continue;
    if (item.quantity.dim === 'mass') weight = k;
    else if (item.quantity.dim === 'volume') volume = k;
  }
  if (weight === end || volume === end || weight < thing === volume < thing) return true;
  const density = valueAt(items, weight) / valueAt(items, volume);
  return density > densities.least && density < densities.most;
}

const takesPurity = (meaning: Meaning): boolean =>
  meaning.kind === 'alkali' || meaning.kind === 'stock' || (meaning.kind === 'role' && meaning.id === 'purity');

/** A group that begins here: what it costs, and whose it is. */
interface Way {
  readonly begin: number;
  readonly cost: number;
  readonly side: number;
  /** -1 where it is every name's. */
  readonly thing: number;
}
type Found = Way | 'none' | 'stop';

function grouped(items: readonly Item[], begin: number, end: number, thing: number): Group {
  // a name and its amount, as most are
  if (thing >= 0 && end - begin === 2) return { things: [thing], amounts: [thing === begin ? end - 1 : begin] };
  const things: number[] = thing < 0 ? [] : [thing];
  const amounts: number[] = [];
  for (let k = begin; k < end; k++)
    if (items[k]?.kind === 'amount') amounts.push(k);
    else if (thing < 0) things.push(k);
  return { things, amounts };
}

/** The group made of these items; `stop` where no longer one that ends with them can be a group either. */
function groupAt(series: Series, { begin, end, things, held, thing }: Span): Found {
  const { items, gaps, passed, costs, places, unitful } = series;
  const first = items[begin];
  if (end - begin > 6 && first?.kind === 'amount' && !first.quantity.each) return 'stop';
  // what stands between the name and its amount is passed over; at either end it would be the name itself
  const over = held === 1 && !passed[begin] && !passed[end - 1];
  const figures = end - begin - things;
  if (held > 1 || (things > 1 && !over)) {
    if (figures > 1) return held > 1 ? 'stop' : 'none';
    return held > 1 ? eachAt(series, begin, end) : 'none';
  }
  if (figures > 4) return 'stop';
  const named = thing < 0 ? undefined : items[thing];
  if (named?.kind !== 'thing') return 'none';
  const { meaning } = named.named;
  let cost = 0;
  if (things > 1)
    for (let k = begin; k < end; k++)
      if (k !== thing && items[k]?.kind === 'thing') cost += isUnknown(items[k]) ? 2 : 1.2;
  let taken = 0;
  let at: number = side.none;
  for (let k = begin; k < end; k++) {
    const item = items[k];
    if (item?.kind !== 'amount') continue;
    // "water 200" is a weight even so: the name and its figure, side by side
    const beside = k === thing + 1 && (gaps[thing]?.nameFirst ?? 1) <= 0.05 && item.quantity.value >= leastBeside;
    const fit = fitCost(meaning, costs[thing]?.[places[k] ?? 0] ?? never, item.quantity, unitful && !beside);
    if (fit === never || item.quantity.each || (item.pure && !takesPurity(meaning))) return 'none';
    if (item.total && !meaning.id.startsWith('total')) return 'none';
    // "glycerine, after cook 25 g / does it fit the fats?", "water ~220 / Bars came out soft"
    if (isOwnLine(meaning) && k < thing && isBroken(gaps, k, thing)) return 'none';
    if (unitful && item.quantity.dim === 'bare' && consumable(named.named)) {
      // "12,50 with coffee", "gave 7. The tallow": what no unit and no neighbour makes an amount
      const gap = gaps[k < thing ? thing - 1 : thing];
      const way = k < thing ? gap?.amountFirst : gap?.nameFirst;
      if (gap && (gap.stops > 0 || (gap.lines === 0 && (way ?? 0) >= leastApart))) return 'none';
    }
    const slot = slotOf(item.quantity);
    if (taken & slot) {
      // "900 g lard (2 lb)": one amount on both sides, in two units
      const other = inSlot(items, begin, slot);
      if (!other || !sameAmount(other, item.quantity)) return 'none';
      cost += 0.3;
      continue;
    }
    taken |= slot;
    cost += fit;
    const aside = meaning.kind === 'role' || (meaning.kind === 'alkali' && slot === slots.percent);
    if (!aside && (slot === slots.amount || slot === slots.volume || at === side.none))
      at = k < thing ? side.amountFirst : side.nameFirst;
  }
  // a volume beside a weight is the same amount said twice, or a pack; on the other side of the name it must agree
  if (taken & slots.amount && taken & slots.volume) {
    if (!agreeAround(items, begin, end, thing)) return 'none';
    cost += 1;
  }
  // a weighed solution says its strength; without one the name is likelier a heading
  if (meaning.kind === 'stock' && taken & slots.amount && !(taken & slots.percent)) cost += 1.6;
  // "150 g coconut. 90 % on the label": a share is not said of a weighed fat in another sentence
  const shared = meaning.kind === 'fat' && taken & slots.amount && taken & slots.percent;
  for (let k = begin; k < end - 1; k++) {
    const gap = gaps[k];
    if (!gap) continue;
    if (shared) cost += 2 * gap.stops;
    const way = k < thing ? gap.amountFirst : gap.nameFirst;
    if (way > farthest) return 'stop';
    cost += way;
  }
  return { begin, cost, side: at, thing };
}

/** Roles whose figure stands in one line with their word, where it stands before it. */
const ownLine: ReadonlySet<RoleName> = new Set([
  'total-fats',
  'bars',
  'cure',
  'people',
  'time',
  'price',
  'number',
  'scale',
  'pot',
  'mould',
  'temperature',
  'chart',
]);
const isOwnLine = (meaning: Meaning): boolean => meaning.kind === 'role' && ownLine.has(meaning.id);

/** A line ends between these items. */
function isBroken(gaps: readonly Gap[], from: number, to: number): boolean {
  for (let k = from; k < to; k++) if ((gaps[k]?.lines ?? 0) > 0) return true;
  return false;
}

/** The first amount from item `begin` on that takes this slot of a name. */
function inSlot(items: readonly Item[], begin: number, slot: number): Quantity | null {
  for (let k = begin; k < items.length; k++) {
    const item = items[k];
    if (item?.kind === 'amount' && slotOf(item.quantity) === slot) return item.quantity;
  }
  return null;
}

/** `200 g each of coconut, palm and olive` and `coconut, palm, olive: 200 g each`. */
function eachAt({ items, gaps, costs, places }: Series, begin: number, end: number): Found {
  const { things, amounts } = grouped(items, begin, end, -1);
  const named = things.every((k) => {
    const item = items[k];
    return item?.kind === 'thing' && consumable(item.named);
  });
  if (!named) return 'stop';
  const [at] = amounts;
  if (at === undefined) return 'none';
  const amount = items[at];
  if (amount?.kind !== 'amount' || !amount.quantity.each) return 'stop';
  if (at !== begin && at !== end - 1) return 'stop';
  let cost = 0.2;
  for (let k = begin; k < end - 1; k++) {
    const way = Math.min(gaps[k]?.amountFirst ?? 0, gaps[k]?.nameFirst ?? 0);
    if (way > farthest) return 'stop';
    cost += Math.max(0, way - 2.4) + 0.05;
  }
  for (const k of things) {
    const item = items[k];
    if (
      item?.kind === 'thing' &&
      fitCost(item.named.meaning, costs[k]?.[places[at] ?? 0] ?? never, amount.quantity) === never
    )
      return 'none';
  }
  return { begin, cost, side: side.none, thing: -1 };
}

/** The last group of a chain; null where its last item stands alone. */
function groupOf(chains: Chains, chain: number, items: readonly Item[]): Group | null {
  const begin = beginOf(chains, chain);
  return begin < 0 ? null : grouped(items, begin, endOf(chain), thingOf(chains, chain));
}

function unroll(chains: Chains, chain: number, items: readonly Item[]): Binding {
  const groups: Group[] = [];
  const orphans: number[] = [];
  const mentions: number[] = [];
  for (let at = chain; endOf(at) > 0; at = backOf(chains, at)) {
    const group = groupOf(chains, at, items);
    const last = endOf(at) - 1;
    if (group) groups.push(group);
    else (items[last]?.kind === 'amount' ? orphans : mentions).push(last);
  }
  return {
    groups: groups.reverse(),
    orphans: orphans.reverse(),
    mentions: mentions.reverse(),
    cost: costOf(chains, chain),
  };
}

const isRatio = (item: Item | undefined): boolean => item?.kind === 'amount' && item.quantity.dim === 'ratio';

/** Roles whose figure changes what is weighed. */
const telling: ReadonlySet<RoleName> = new Set(['superfat', 'concentration', 'ratio', 'purity']);

/** What groups say about everything that is weighed, in no order; the same where they mean the same. */
function signature(items: readonly Item[], groups: readonly Group[]): string {
  const parts: string[] = [];
  for (const group of groups) {
    for (const k of group.things) {
      const item = items[k];
      if (item?.kind !== 'thing') continue;
      const { meaning } = item.named;
      if (meaning.kind === 'role' && !telling.has(meaning.id)) continue;
      if (meaning.kind === 'additive' || meaning.kind === 'scent' || meaning.kind === 'unknown') continue;
      const id = meaning.kind === 'alkali' && meaning.id === 'unsaid' ? 'naoh' : meaning.id;
      // a ratio is the water's, whether it stands beside it or by itself
      const amounts = meaning.kind === 'water' ? group.amounts.filter((at) => !isRatio(items[at])) : group.amounts;
      if (amounts.length > 0) parts.push(`${meaning.kind} ${id}=${amounts.join('+')}`);
    }
  }
  return parts.sort().join(';');
}

/** Whether two chains mean the same; where they go together they do. */
function meansTheSame(chains: Chains, one: number, other: number, items: readonly Item[]): boolean {
  const ones: Group[] = [];
  const others: Group[] = [];
  let [a, b] = [one, other];
  while (a !== b) {
    const ahead = endOf(a) - endOf(b);
    if (ahead !== 0 || beginOf(chains, a) !== beginOf(chains, b)) {
      const [mine, its] = [ahead >= 0 && groupOf(chains, a, items), ahead <= 0 && groupOf(chains, b, items)];
      if (mine) ones.push(mine);
      if (its) others.push(its);
    }
    if (ahead >= 0) a = backOf(chains, a);
    if (ahead <= 0) b = backOf(chains, b);
  }
  return signature(items, ones) === signature(items, others);
}

export interface Bound {
  readonly best: Binding;
  /** The group that each item is in; a hole where it is in none. */
  readonly groupOf: readonly (Group | undefined)[];
  /** A reading that costs about as little and weighs something else: the post is unclear. */
  readonly rival: Binding | null;
}

/** A binding taken for good, with no rival left. */
export function settledOn(best: Binding): Bound {
  const groupOf: (Group | undefined)[] = [];
  for (const group of best.groups) {
    for (const k of group.things) groupOf[k] = group;
    for (const k of group.amounts) groupOf[k] = group;
  }
  return { best, groupOf, rival: null };
}

function boundBy(chains: Chains, items: readonly Item[]): Bound {
  const first = items.length * kept;
  let rival: Binding | null = null;
  for (let chain = first + 1; chain < first + countAt(chains, items.length) && rival === null; chain++) {
    const near = costOf(chains, chain) - costOf(chains, first) <= clearly;
    if (near && !meansTheSame(chains, first, chain, items)) rival = unroll(chains, chain, items);
  }
  return { ...settledOn(unroll(chains, first, items)), rival };
}

/** `before`: how they may be bound, if that was asked before some of the items were changed. */
export const bind = (items: readonly Item[], tokens: readonly Token[], before: Cuts | null = null): Bound =>
  cutsOf(items, tokens, before).bound;

/** Names of a post with their figures, and what the words around each figure say of it. */
import { type Cuts, cutsOf, type Group } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { type Amount, isAmount, isThing, mayShare, type Thing } from '../rows/kinds.ts';
import type { Sentence } from '../text/sentences.ts';
import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';
import { alike, isLikely } from './put-right.ts';
import {
  isGuessed,
  isPointing,
  isWished,
  mayTell,
  type Right,
  remains,
  type Stance,
  stanceOf,
  takesWeight,
} from './stance.ts';
import { ofNobody, type Telling, type Tells, type Told } from './tellings.ts';

/** One name with its figure, as the items alone give it. */
export interface Said {
  readonly key: string;
  readonly thing: Thing;
  readonly amount: Amount;
  /** Its share or purity. */
  readonly beside: readonly Amount[];
  readonly stance: Stance;
  /** Of another batch than the one that is asked about, and said to be so in the sentence or in one before. */
  readonly telling: Telling | null;
  readonly carried: boolean;
  /** It stands under "EDIT:" or the like. */
  readonly headed: boolean;
  /** The figure speaks of what was named before: "it is 270 g now". */
  readonly pointing: boolean;
}

const weighs = ({ dim }: Quantity): boolean => dim === 'mass' || dim === 'volume' || dim === 'bare';

export function isSame(a: Quantity, b: Quantity): boolean {
  const [one, other] = [alike(a, b), alike(b, a)];
  return one.dim === other.dim && Math.abs(one.value - other.value) <= 0.005 * Math.max(one.value, other.value);
}

/** What names are told apart by; null for one that no amount is kept of. */
export function keyOf(meaning: Meaning, alkalis: number): string | null {
  if (meaning.kind === 'alkali') return alkalis < 2 ? 'alkali' : `alkali ${meaning.id}`;
  if (meaning.kind === 'role') return meaning.id === 'superfat' ? 'superfat' : null;
  return meaning.kind === 'unknown' ? null : `${meaning.kind} ${meaning.id}`;
}

export function alkalisIn(items: readonly Item[]): number {
  const ids = new Set<string>();
  for (const item of items) if (isThing(item) && item.named.meaning.kind === 'alkali') ids.add(item.named.meaning.id);
  ids.delete('unsaid');
  return ids.size;
}

export const isOf =
  (key: string) =>
  (one: Said): boolean =>
    one.key === key;

export const isPart = ({ key }: Said): boolean => /^(?:fat|alkali|water|liquid|stock)\b/.test(key);

export const isFat = ({ key }: Said): boolean => key.startsWith('fat');

export const isAlkali = ({ key }: Said): boolean => key.startsWith('alkali') || key.startsWith('stock');

export const isOther = (telling: Telling | null): boolean => telling !== null && telling !== 'mine';

/** Something is named twice. */
function repeats(items: readonly Item[]): boolean {
  const keys = new Set<string>();
  return items.some((item) => {
    const key = isThing(item) ? keyOf(item.named.meaning, 0) : null;
    if (key === null) return false;
    if (keys.has(key)) return true;
    keys.add(key);
    return false;
  });
}

/** A bare figure up to this may be a superfat. */
const mostPercent = 20;

/** "I'm leaving it 48 now" is no superfat, whatever was named last. */
const suits = (key: string, { dim, value }: Quantity): boolean =>
  key !== 'superfat' || dim === 'percent' || (dim === 'bare' && value <= mostPercent);

/** "I changed the water to 240": a figure that puts one right is of the unit that the others have. */
function withUnits(items: readonly Item[], stances: ReadonlyMap<Item, Stance>): readonly Item[] {
  const lends = new Set<Item>();
  for (const [item, stance] of stances)
    if ((stance === 'right' || stance === 'now') && isAmount(item) && item.quantity.dim === 'bare') lends.add(item);
  if (lends.size === 0) return items;
  let lent: Quantity | null = null;
  for (const item of items) {
    if (!isAmount(item) || item.quantity.dim !== 'mass') continue;
    if (lent && item.quantity.unit?.id !== lent.unit?.id) return items;
    lent = item.quantity;
  }
  const unit = lent;
  if (!unit) return items;
  return items.map((item) =>
    lends.has(item) && isAmount(item) && item.quantity.value > mostPercent
      ? { ...item, quantity: alike(item.quantity, unit) }
      : item,
  );
}

/** "It was 800 g olive" points at nothing: a name follows. */
function isNamed(tokens: readonly Token[], { quantity, to }: Amount): boolean {
  if (quantity.text.endsWith('.')) return false;
  const [next, beyond] = [tokens[to], tokens[to + 1]];
  const name = next?.t === 'word' && next.text === 'of' ? beyond : next;
  return name?.t === 'name' && name.meaning.kind !== 'role';
}

/** What the sentences of a post say of its figures. */
export interface Sayings {
  readonly sentences: readonly Sentence[];
  readonly rights: readonly Right[];
  readonly tells: Tells | null;
  /** More is told to have gone in on top of what was told before. */
  readonly isOnTop: boolean;
  /** What it tells of a figure has been heard before. */
  readonly isSettled: (sentence: Sentence) => boolean;
}

interface Heard {
  readonly said: readonly Said[];
  readonly cuts: Cuts | null;
  readonly tellings: Tellings;
}

/** Items of another batch than the one that is asked about. */
export type Tellings = ReadonlyMap<Item, Told>;

/** Every figure with its name and what the words around it say; figures that point back are of what was named last. */
export function saidIn(
  items: readonly Item[],
  tokens: readonly Token[],
  { sentences, rights, tells: tellingAt, isOnTop, isSettled }: Sayings,
  isChanged: boolean,
): Heard {
  const stances = new Map<Item, Stance>();
  const tellings = new Map<Item, Told>();
  const pointers = new Set<Item>();
  /** "I took 68 g in the end": of what weighed about as much before. */
  const takers = new Map<Amount, Sentence>();
  /** "What is left is 840 g": of what weighed more before. */
  const rests = new Set<Amount>();
  const headed = new Set<Item>();
  let s = 0;
  let told = -1;
  let tells = false;
  let superfat = false;
  let isElse = false;
  for (const item of items) {
    if (isThing(item) && mayShare(item))
      superfat = item.named.meaning.kind === 'role' && item.named.meaning.id === 'superfat';
    if (!isAmount(item) && !tellingAt) continue;
    while ((sentences[s]?.to ?? Number.POSITIVE_INFINITY) <= item.from) s++;
    const sentence = sentences[s];
    if (!sentence || item.from < sentence.from || isSettled(sentence)) continue;
    const of = tellingAt?.(s, item.from);
    if (of?.telling) tellings.set(item, of);
    if (!isAmount(item)) continue;
    isElse ||= of !== undefined && isOther(of.telling);
    if (told !== s) tells = mayTell(sentence);
    told = s;
    const rightFrom = rights[s]?.from ?? Number.POSITIVE_INFINITY;
    const isShare = item.quantity.dim === 'percent';
    const isWish = superfat && (isShare || item.quantity.dim === 'bare') && suits('superfat', item.quantity);
    if (!isWish && !tells && !tellingAt && rightFrom === Number.POSITIVE_INFINITY) continue;
    const place = sentence.placeOf(item.from);
    if (weighs(item.quantity) && (tellingAt || tells) && takesWeight(sentence, place)) takers.set(item, sentence);
    else if (item.quantity.dim === 'mass' && tells && remains(sentence, place)) {
      takers.set(item, sentence);
      rests.add(item);
    }
    if (isWish && isWished(sentence, place, isShare)) {
      stances.set(item, 'now');
      pointers.add(item);
      continue;
    }
    // "90 g more lard": besides what there is
    if (weighs(item.quantity) && isMoreAt(tokens, item.to)) continue;
    const asTold = tells || place >= rightFrom ? stanceOf(sentence, place, rightFrom) : null;
    const stance = isOnTop && asTold === 'once' ? null : asTold;
    if (stance === null) continue;
    stances.set(item, stance);
    if (stance === 'right' && rights[s]?.headed) headed.add(item);
    const next = tokens[item.to];
    const counted =
      item.quantity.dim === 'bare' && next?.t === 'word' && /^(?:times|of|more|less|minutes?)$/.test(next.text);
    if (weighs(item.quantity) && !counted && !isNamed(tokens, item) && isPointing(sentence, place)) pointers.add(item);
  }
  const all = [...stances.values()];
  const turned =
    isElse ||
    all.includes('once') ||
    takers.size > 0 ||
    (all.some((one) => one !== 'told') && (pointers.size > 0 || repeats(items)));
  if (!turned && !isChanged) return { said: [], cuts: null, tellings };
  const alkalis = alkalisIn(items);
  const without = (gone: ReadonlySet<Item>): readonly Item[] =>
    gone.size === 0 ? items : items.filter((item) => !gone.has(item));
  let bindings: Cuts | null = null;
  /** Names with their figures, where some figures are of none beside them. */
  const boundWithout = (gone: ReadonlySet<Item>): { said: Said[]; cuts: Cuts } => {
    const others = without(gone);
    const cuts = cutsOf(withUnits(others, stances), tokens, bindings);
    bindings ??= cuts;
    const said: Said[] = [];
    for (const { thing, amount, beside } of groupsOf(cuts, others)) {
      const own = keyOf(thing.named.meaning, alkalis);
      if (own === null || !suits(own, amount.quantity)) continue;
      // "would 85 % instead of 90 matter" puts no weight right
      const key = own === 'superfat' || weighs(amount.quantity) ? own : `share of ${own}`;
      const { telling, carried } = tellings.get(amount) ?? ofNobody;
      const stance = stances.get(amount) ?? null;
      said.push({ key, thing, amount, beside, stance, telling, carried, headed: headed.has(amount), pointing: false });
    }
    return { said, cuts };
  };
  let bound = boundWithout(pointers);
  const found: Said[] = [];
  const point = (item: Amount, last: Said | undefined): boolean => {
    if (!last || !suits(last.key, item.quantity)) return false;
    // "5 % superfat … my notes say 3 lb, it's 2 this time": of what stands between
    if (last.key === 'superfat' && items.some((one) => isBetween(one, last.amount, item))) return false;
    if (last.key !== 'superfat' && !isLikely(item.quantity, last.amount.quantity)) return false;
    const { telling, carried } = tellings.get(item) ?? ofNobody;
    const stance = stances.get(item) ?? (takers.has(item) && !isOther(telling) ? 'now' : null);
    found.push({ ...last, amount: item, beside: [], stance, telling, carried, pointing: true });
    return true;
  };
  // "…with 120 g. I took 115 g in the end": of nothing that is named beside it
  for (const [item, sentence] of [...takers].slice(0, mostTakers)) {
    const own = bound.said.find(({ amount }) => amount === item);
    if (own && item.from - own.thing.to <= nearby && own.thing.from - item.to <= nearby) continue;
    const rest = boundWithout(new Set([...pointers, item]));
    const before = [...rest.said, ...found].filter((one) => one.thing.from < item.from && one.amount.from < item.from);
    // "the palm was hard as stone and I could only scrape out 5 oz"
    const named = items.findLast(
      (one): one is Thing => isThing(one) && one.from >= sentence.from && one.from < item.from && isStuff(one),
    );
    const key = named ? keyOf(named.named.meaning, alkalis) : null;
    const it = key === null ? undefined : before.findLast(isOf(key));
    // "soda I have weighed 112 g": of what its sentence names, and nobody has weighed before
    if (named !== undefined && own?.thing === named && !it && !rests.has(item)) continue;
    if (rests.has(item)) {
      const more = it ?? before.at(-1);
      if (!more || !isRestOf(item, more, sentences) || !point(item, more)) continue;
      pointers.add(item);
      bound = rest;
      continue;
    }
    // "the KOH comes dissolved. I used 400 g of it"
    if (named === undefined && isOfLye(items, tokens, item, before)) continue;
    if (!point(item, it ?? nearestOf(before, item.quantity) ?? before.findLast(({ pointing }) => !pointing))) continue;
    pointers.add(item);
    bound = rest;
  }
  const { said, cuts } = bound;
  for (const item of pointers)
    if (isAmount(item) && !takers.has(item))
      point(
        item,
        said.findLast((one) => one.thing.from < item.from && one.amount.from < item.from),
      );
  said.push(...found);
  return { said: said.sort((a, b) => a.amount.from - b.amount.from), cuts, tellings };
}

const isMoreAt = (tokens: readonly Token[], k: number): boolean => {
  const [next, name] = [tokens[k], tokens[k + 1]];
  return next?.t === 'word' && /^(?:more|extra|additional)$/.test(next.text) && name?.t === 'name';
};

/** A figure that is no share, between two others. */
const isBetween = (one: Item, { to }: Amount, { from }: Amount): boolean =>
  isAmount(one) && one.from >= to && one.to <= from && one.quantity.dim !== 'percent';

/** "Of it" is the alkali, where that was named last and has no weight before. */
function isOfLye(items: readonly Item[], tokens: readonly Token[], item: Amount, before: readonly Said[]): boolean {
  const [of, it] = [tokens[item.to], tokens[item.to + 1]];
  const last = items.findLast((one): one is Thing => isThing(one) && one.from < item.from && isStuff(one));
  const { kind } = last?.named.meaning ?? {};
  return (
    of?.t === 'word' &&
    of.text === 'of' &&
    it?.t === 'word' &&
    (kind === 'alkali' || kind === 'stock') &&
    !before.some(({ thing, amount }) => thing === last && weighs(amount.quantity))
  );
}

/** A fat or a liquid that was only guessed at, or has become less since. */
function isRestOf({ quantity }: Amount, { key, amount }: Said, sentences: readonly Sentence[]): boolean {
  const sentence = sentences.find(({ from, to }) => from <= amount.from && amount.from < to);
  const ratio = quantity.value / amount.quantity.value;
  return (
    /^(?:fat|liquid)\b/.test(key) &&
    amount.quantity.dim === 'mass' &&
    ratio < mostOfGuess &&
    sentence !== undefined &&
    isGuessed(sentence, sentence.placeOf(amount.from))
  );
}
const mostOfGuess = 1.2;

/** Two weights of one thing in two batches differ by less, as a fraction. */
const mostApart = 0.3;

/** The one that weighed about as much; null where several did, or none. */
function nearestOf(list: readonly Said[], quantity: Quantity): Said | null {
  const apart = ({ amount }: Said): number =>
    Math.abs(Math.log(alike(quantity, amount.quantity).value / amount.quantity.value));
  const near = list.filter((one) => isPart(one) && apart(one) <= mostApart).sort((a, b) => apart(a) - apart(b));
  const [first] = near;
  const rival = near.find((one) => one.key !== first?.key);
  if (!first || !rival) return first ?? null;
  const isExact = apart(first) < 1e-6 && apart(rival) > 1e-6;
  return isExact || apart(rival) > 2 * apart(first) + 0.02 ? first : null;
}

/** What belongs together: what was said, and each name that is known with its figures. */
export function boundIn(said: readonly Said[], cuts: Cuts | null, items: readonly Item[]): ReadonlySet<Item> {
  const bound = new Set<Item>();
  for (const { amount, thing } of said) bound.add(amount).add(thing);
  const of = cuts?.series.items ?? items;
  const add = (k: number): void => {
    const item = of[k];
    if (item) bound.add(item);
  };
  for (const { things, amounts } of cuts?.bound.best.groups ?? []) {
    const isKnown = things.some((k) => {
      const item = of[k];
      return isThing(item) && item.named.meaning.kind !== 'unknown';
    });
    if (!isKnown) continue;
    things.forEach(add);
    amounts.forEach(add);
  }
  return bound;
}

const isStuff = ({ named }: Thing): boolean => /^(?:fat|alkali|stock|water|liquid)$/.test(named.meaning.kind);

/** Figures that may be of something named before, at the most. */
const mostTakers = 12;

/** Tokens between a name and the figure beside it, at the most. */
const nearby = 2;

/** Each name that stands alone with its figure. */
function groupsOf(
  { bound }: Cuts,
  items: readonly Item[],
): readonly { readonly thing: Thing; readonly amount: Amount; readonly beside: readonly Amount[] }[] {
  const groups: { thing: Thing; amount: Amount; beside: readonly Amount[] }[] = [];
  for (const group of bound.best.groups) {
    const [at] = group.things;
    const thing = at === undefined || group.things.length > 1 ? undefined : items[at];
    const amount = weighedOf(items, group);
    if (isThing(thing) && amount) groups.push({ thing, amount, beside: besideIn(items, group, amount) });
  }
  return groups;
}

const alone: readonly Amount[] = [];

/** The other figures of a group. */
const besideIn = (items: readonly Item[], { amounts }: Group, amount: Amount): readonly Amount[] =>
  amounts.length > 1
    ? amounts
        .map((k) => items[k])
        .filter(isAmount)
        .filter((one) => one !== amount)
    : alone;

/** The figure of a group that weighs; the first where none does. */
function weighedOf(items: readonly Item[], { amounts }: Group): Amount | null {
  let first: Amount | null = null;
  for (const k of amounts) {
    const item = items[k];
    if (!isAmount(item)) continue;
    if (weighs(item.quantity)) return item;
    first ??= item;
  }
  return first;
}

/**
 * What a later sentence of a post makes of an earlier one: "EDIT: the coconut is 180", "it was 135 g while there was
 * still palm in it", "no palm, I left it out", "lard in place of the palm". What stands last, or does not speak of what
 * was, counts, and the answer says so; what cannot be known stays for a question.
 */
import { type Cuts, cutsOf, type Group } from './bind.ts';
import { type Change, changesIn } from './changes.ts';
import type { Item } from './items.ts';
import type { Meaning } from './lexicon.ts';
import { alike, type PutRight, written } from './put-right.ts';
import type { Quantity } from './quantities.ts';
import { type Cut, type Sentence, sentencesOf } from './sentences.ts';
import { ofWord, signal } from './signal-words.ts';
import { gives, type Signals } from './signals.ts';
import {
  isPointing,
  isWished,
  lackIn,
  mayTell,
  type Right,
  rightsIn,
  type Stance,
  stanceOf,
  takenBackIn,
} from './stance.ts';
import type { Token } from './tokens.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;
const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
const isThing = (item: Item | undefined): item is Thing => item?.kind === 'thing';

/** One name with its figure, as the items alone give it. */
interface Said {
  readonly key: string;
  readonly thing: Thing;
  readonly amount: Amount;
  readonly stance: Stance;
  /** It stands under "EDIT:" or the like. */
  readonly headed: boolean;
  /** The figure speaks of what was named before: "it is 270 g now". */
  readonly pointing: boolean;
}

export interface Thoughts {
  readonly items: readonly Item[];
  readonly back: readonly PutRight[];
  /** Words that take something back, and nobody knows what. */
  readonly unheard: string | null;
  /** How the items may be bound, as far as that was asked. */
  readonly cuts: Cuts | null;
}

/** A post while its second thoughts are gone through. */
interface Post {
  readonly sentences: readonly Sentence[];
  readonly items: readonly Item[];
  readonly said: readonly Said[];
  readonly gone: Set<Item>;
  readonly instead: Map<Item, Item>;
  readonly back: PutRight[];
  unclear: string | null;
  /** What was taken out last, and in which sentence. */
  last: { readonly key: string; readonly sentence: number } | null;
}

const weighs = ({ dim }: Quantity): boolean => dim === 'mass' || dim === 'volume' || dim === 'bare';

function isSame(a: Quantity, b: Quantity): boolean {
  const [one, other] = [alike(a, b), alike(b, a)];
  return one.dim === other.dim && Math.abs(one.value - other.value) <= 0.005 * Math.max(one.value, other.value);
}

/** What names are told apart by; null for one that no amount is kept of. */
function keyOf(meaning: Meaning, alkalis: number): string | null {
  if (meaning.kind === 'alkali') return alkalis < 2 ? 'alkali' : `alkali ${meaning.id}`;
  if (meaning.kind === 'role') return meaning.id === 'superfat' ? 'superfat' : null;
  return meaning.kind === 'unknown' ? null : `${meaning.kind} ${meaning.id}`;
}

function alkalisIn(items: readonly Item[]): number {
  const ids = new Set<string>();
  for (const item of items) if (isThing(item) && item.named.meaning.kind === 'alkali') ids.add(item.named.meaning.id);
  ids.delete('unsaid');
  return ids.size;
}

const turnsIn = (token: Token): boolean =>
  gives(token, signal.turning) || (token.t === 'name' && token.meaning.id === 'number');
/** "Old:", which is also said of a bar that has cured. */
const isHeading = (token: Token): boolean =>
  token.t === 'name' && token.meaning.kind === 'role' && (ofWord(token.text.toLowerCase()) & signal.turning) !== 0;

/** The items without what the post takes back later on, and what that was. */
export function secondThoughts(
  items: readonly Item[],
  cut: Cut & { readonly signals: Signals },
  before: readonly PutRight[],
): Thoughts {
  const { tokens } = cut;
  const has = (bit: number): boolean => (cut.signals.all & bit) !== 0;
  const turns = has(signal.turning) && tokens.some((token) => turnsIn(token) || isHeading(token));
  const isBoth =
    turns && has(signal.both) && tokens.some((token) => gives(token, signal.both)) && !tokens.some(turnsIn);
  if (!turns || isBoth || !items.some(isAmount)) return { items, back: before, unheard: null, cuts: null };
  const sentences = sentencesOf(cut);
  const changes = sentences.map(changesIn);
  const rights = rightsIn(sentences);
  const { said, cuts } = saidIn(
    items,
    tokens,
    sentences,
    rights,
    changes.some((list) => list.length > 0),
  );
  const post: Post = {
    sentences,
    items,
    said,
    gone: new Set(),
    instead: new Map(),
    back: [...before],
    unclear: null,
    last: null,
  };
  changes.forEach((list, k) => {
    for (const change of list) applyChange(post, change, k);
  });
  settleWhole(post);
  settleFigures(post);
  const hears = (k: number): boolean => {
    const sentence = sentences[k];
    return sentence !== undefined && post.back.some(({ from, to }) => from < sentence.to && to > sentence.from);
  };
  return {
    items:
      post.gone.size + post.instead.size === 0
        ? items
        : items.filter((item) => !post.gone.has(item)).map((item) => post.instead.get(item) ?? item),
    back: post.back,
    unheard: post.unclear ?? takenBackIn(sentences, hears) ?? lackIn(sentences, tokens, hears),
    cuts,
  };
}

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

/** A figure that puts another right is seldom this many times larger or smaller. */
const mostChanged = 2.5;

/** "A parrot that is 31" puts no 180 g right. */
function isLikely(now: Quantity, before: Quantity): boolean {
  const ratio = alike(now, before).value / before.value;
  return ratio <= mostChanged && ratio >= 1 / mostChanged;
}

/** "It was 800 g olive" points at nothing: a name follows. */
function isNamed(tokens: readonly Token[], { quantity, to }: Amount): boolean {
  if (quantity.text.endsWith('.')) return false;
  const [next, beyond] = [tokens[to], tokens[to + 1]];
  const name = next?.t === 'word' && next.text === 'of' ? beyond : next;
  return name?.t === 'name' && name.meaning.kind !== 'role';
}

/** Every figure with its name and what the words around it say; figures that point back are of what was named last. */
function saidIn(
  items: readonly Item[],
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  rights: readonly Right[],
  isChanged: boolean,
): { readonly said: readonly Said[]; readonly cuts: Cuts | null } {
  const stances = new Map<Item, Stance>();
  const pointers = new Set<Item>();
  const headed = new Set<Item>();
  let s = 0;
  let told = -1;
  let tells = false;
  let superfat = false;
  for (const item of items) {
    if (isThing(item)) superfat = item.named.meaning.kind === 'role' && item.named.meaning.id === 'superfat';
    if (!isAmount(item)) continue;
    while ((sentences[s]?.to ?? Number.POSITIVE_INFINITY) <= item.from) s++;
    const sentence = sentences[s];
    if (!sentence || item.from < sentence.from) continue;
    if (told !== s) tells = mayTell(sentence);
    told = s;
    const rightFrom = rights[s]?.from ?? Number.POSITIVE_INFINITY;
    const isWish = superfat && item.quantity.dim === 'bare';
    if (!isWish && !tells && rightFrom === Number.POSITIVE_INFINITY) continue;
    const place = sentence.placeOf(item.from);
    if (isWish && isWished(sentence, place)) {
      stances.set(item, 'now');
      pointers.add(item);
      continue;
    }
    const stance = tells || place >= rightFrom ? stanceOf(sentence, place, rightFrom) : null;
    if (stance === null) continue;
    stances.set(item, stance);
    if (stance === 'right' && rights[s]?.headed) headed.add(item);
    const next = tokens[item.to];
    const counted =
      item.quantity.dim === 'bare' && next?.t === 'word' && /^(?:times|of|more|less|minutes?)$/.test(next.text);
    if (weighs(item.quantity) && !counted && !isNamed(tokens, item) && isPointing(sentence, place)) pointers.add(item);
  }
  const all = [...stances.values()];
  const turned = all.includes('once') || (all.some((one) => one !== 'told') && (pointers.size > 0 || repeats(items)));
  if (!turned && !isChanged) return { said: [], cuts: null };
  const others = pointers.size === 0 ? items : items.filter((item) => !pointers.has(item));
  const alkalis = alkalisIn(items);
  const said: Said[] = [];
  const cuts = cutsOf(withUnits(others, stances), tokens);
  for (const group of cuts.bound.best.groups) {
    const [at] = group.things;
    const thing = at === undefined || group.things.length > 1 ? undefined : others[at];
    if (!isThing(thing)) continue;
    const own = keyOf(thing.named.meaning, alkalis);
    const amount = weighedOf(others, group);
    if (own === null || !amount || !suits(own, amount.quantity)) continue;
    // "would 85 % instead of 90 matter" puts no weight right
    const key = own === 'superfat' || weighs(amount.quantity) ? own : `share of ${own}`;
    said.push({ key, thing, amount, stance: stances.get(amount) ?? null, headed: headed.has(amount), pointing: false });
  }
  for (const item of pointers) {
    if (!isAmount(item)) continue;
    const last = said.findLast((one) => !one.pointing && one.thing.from < item.from && one.amount.from < item.from);
    if (last && suits(last.key, item.quantity) && isLikely(item.quantity, last.amount.quantity))
      said.push({ ...last, amount: item, stance: stances.get(item) ?? null, pointing: true });
  }
  return { said: said.sort((a, b) => a.amount.from - b.amount.from), cuts };
}

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

const isOf =
  (key: string) =>
  (one: Said): boolean =>
    one.key === key;

const within = (one: Said, { from, to }: Sentence): boolean => one.amount.from >= from && one.amount.from < to;

function drop(post: Post, { thing, amount, pointing }: Said): void {
  if (!pointing) post.gone.add(thing);
  post.gone.add(amount);
}

const figures = (list: readonly Said[]): Quantity[] =>
  list.flatMap(({ amount }) => (amount.same ? [amount.quantity, amount.same] : [amount.quantity]));

/** The thing at a token, and what it is told apart by. */
function thingAt(post: Post, token: number): { readonly thing: Thing; readonly key: string } | null {
  const thing = post.items.find((item): item is Thing => isThing(item) && item.from <= token && item.to > token);
  const key = thing ? keyOf(thing.named.meaning, alkalisIn(post.items)) : null;
  return thing && key !== null ? { thing, key } : null;
}

/** What "it" is that is taken out: the last thing weighed in its sentence. */
const spokenOf = (post: Post, sentence: Sentence): Said | undefined =>
  post.said.findLast((one) => within(one, sentence) && /^(?:fat|liquid|additive|scent) /.test(one.key));

function applyChange(post: Post, change: Change, k: number): void {
  const sentence = post.sentences[k];
  if (!sentence) return;
  const span = { from: sentence.from, to: sentence.to };
  const it =
    change.gone === null ? (change.kind === 'out' ? spokenOf(post, sentence) : undefined) : thingAt(post, change.gone);
  const before = post.last;
  const key =
    it?.key ??
    (change.kind === 'swap' && change.gone === null && before && k - before.sentence <= 2 ? before.key : null);
  if (key === null) return;
  const had = post.said.filter((one) => one.key === key && one.amount.from < sentence.to && !post.gone.has(one.amount));
  const label = it?.thing.named.text ?? had[0]?.thing.named.text ?? '';
  if (change.kind === 'fewer') {
    const less = post.items.find((item): item is Amount => isAmount(item) && item.from === change.comes);
    const [first] = had;
    if (!less || !first || first.amount === less) return;
    const quantity = alike(less.quantity, first.amount.quantity);
    if (quantity.dim !== first.amount.quantity.dim || quantity.value >= first.amount.quantity.value) return;
    post.instead.set(first.amount, { ...first.amount, quantity, same: null });
    post.gone.add(less);
    post.back.push({
      text: `I took ${written(less.quantity)} of ${label}, not ${written(first.amount.quantity)}, as the post says that there was no more.`,
      gone: figures([first]),
      ...span,
    });
    return;
  }
  if (change.kind === 'part') {
    if (had.length > 0) post.unclear ??= label;
    return;
  }
  if (change.kind === 'out') {
    const [first] = had;
    if (!first) return;
    // "forgot the castor, 40 g": not weighed before, and weighed now
    if (change.gone !== null && had.some((one) => one.thing === it?.thing)) return;
    for (const one of had) drop(post, one);
    if (it) post.gone.add(it.thing);
    post.last = { key, sentence: k };
    post.back.push({
      text: `I left out ${label} (${written(first.amount.quantity)}), as the post takes it out.`,
      gone: figures(had),
      ...span,
    });
    return;
  }
  const comes = thingAt(post, change.comes);
  if (!comes || comes.key === key) return;
  const own = post.said.find((one) => one.thing === comes.thing);
  const outside = had.filter((one) => one.thing !== it?.thing);
  const other = post.said.filter((one) => isOf(comes.key)(one) && one !== own);
  if (change.gone === null) return;
  if (had.length === 0) {
    // "subbed lard for palm": what was weighed before goes
    const turned = change.eitherWay && other.length > 0 && other.every((one) => one.amount.from < sentence.from);
    if (turned) applyChange(post, { ...change, gone: change.comes, comes: change.gone, eitherWay: false }, k);
    // "instead of water I froze 230 g of milk": it has no weight of its own
    else if (it && own) post.gone.add(it.thing);
    return;
  }
  if (other.length > 0 && outside.length > 0) {
    post.unclear ??= label;
    return;
  }
  // "instead of water I froze 230 g of milk": the only figure there is that of what came
  if (!own && it && outside.length === 0) {
    post.gone.add(it.thing);
    return;
  }
  for (const one of had) if (!outside.includes(one)) drop(post, one);
  const [row, ...again] = outside;
  if (it) post.gone.add(it.thing);
  if (row) {
    const quantity = own ? alike(own.amount.quantity, row.amount.quantity) : row.amount.quantity;
    post.instead.set(row.thing, { ...row.thing, named: comes.thing.named });
    post.instead.set(row.amount, { ...row.amount, quantity, same: own ? own.amount.same : row.amount.same });
    for (const one of again) drop(post, one);
    if (own) drop(post, own);
    post.gone.add(comes.thing);
  }
  const weight = own ?? row;
  const amount = weight ? written(weight.amount.quantity) : '';
  post.back.push({
    text: `I took ${comes.thing.named.text} (${amount}) in the place of ${label}, as the post says.`,
    gone: own ? figures(had) : figures(had.filter((one) => one !== row)),
    ...span,
  });
}

/** "How much lye for the new one?" */
const asking = /\bhow much @ [^#]*\?|\bhow much @ for\b/;

const isPart = ({ key }: Said): boolean => /^(?:fat|alkali|water|liquid|stock)\b/.test(key);

/** A whole recipe under "EDIT:", or beside which the post tells what was once: the other does not count. */
function settleWhole(post: Post): void {
  if (!post.said.some(({ headed, stance }) => headed || stance === 'once')) return;
  const left = post.said.filter((one) => !post.gone.has(one.amount) && isPart(one));
  const fats = (list: readonly Said[]): readonly Said[] => list.filter(({ key }) => key.startsWith('fat'));
  const isWhole = (list: readonly Said[], least: number): boolean =>
    fats(list).length >= least && list.some(({ key }) => /^(?:alkali|stock)/.test(key));
  const isIn = (list: readonly Said[]) => (one: Said) => list.some(isOf(one.key));
  const right = left.filter(({ headed }) => headed);
  const others = left.filter(({ headed }) => !headed);
  if (isWhole(right, 2) && isWhole(others, 1) && !fats(others).every(isIn(right))) {
    if (fats(right).every(isIn(others))) post.unclear ??= 'EDIT';
    else dropAll(post, others, right);
  }
  const once = left.filter(({ stance }) => stance === 'once');
  const standing = left.filter((one) => !once.includes(one));
  const lone = once.filter((one) => !isIn(standing)(one));
  const isAlkali = ({ key }: Said): boolean => /^(?:alkali|stock)/.test(key);
  const asks =
    fats(standing).length > 1 &&
    (!left.some(isAlkali) || (!standing.some(isAlkali) && post.sentences.some(({ text }) => asking.test(text))));
  // "Old: olive 500, palm 300. New: olive 500, lard 300", whose lye is asked for
  if (asks && fats(once).length > 1) dropAll(post, once, standing);
  else if ((asks || isWhole(standing, 1)) && lone.length > 0) dropAll(post, lone, standing);
}

function dropAll(post: Post, list: readonly Said[], kept: readonly Said[]): void {
  for (const one of list) drop(post, one);
  const said = list.map(({ amount, thing }) => `${thing.named.text} ${written(amount.quantity)}`).join(', ');
  const from = kept[0]?.thing.from ?? 0;
  post.back.push({
    text: `I left out "${said}", ${elsewhere}.`,
    gone: figures(list),
    from,
    to: from + 1,
  });
}

const corrected = 'as the post corrects itself';
const byOthers = 'which somebody else says';
const elsewhere = 'which the post tells of another time or batch';

/** Two figures for one thing, of which the words around them say which counts. */
function settleFigures(post: Post): void {
  const byKey = new Map<string, Said[]>();
  for (const one of post.said) {
    if (post.gone.has(one.amount)) continue;
    const list = byKey.get(one.key);
    if (list) list.push(one);
    else byKey.set(one.key, [one]);
  }
  for (const list of byKey.values()) {
    const counts = countingOf(list);
    if (!counts) continue;
    const away = list.filter((one) => one !== counts && !isSame(one.amount.quantity, counts.amount.quantity));
    const [first] = away;
    if (!first) continue;
    const { amount } = counts;
    const place = first.amount.from < amount.from ? first : null;
    for (const one of list) {
      if (one === counts ? !place : one === place) continue;
      if (one !== counts && !away.includes(one)) continue;
      drop(post, one);
    }
    if (place) {
      const quantity = alike(amount.quantity, place.amount.quantity);
      post.instead.set(place.amount, { ...place.amount, quantity, same: amount.same });
    }
    const { meaning, text: called } = counts.thing.named;
    const name = meaning.kind === 'role' ? '' : meaning.kind === 'alkali' ? ' of the lye' : ` of ${called}`;
    const isTold = away.every(({ stance }) => stance === 'others');
    const why =
      counts.stance === 'right' || counts.stance === 'now'
        ? corrected
        : isTold && counts.stance === null
          ? byOthers
          : elsewhere;
    const said = [...new Set(away.map((one) => written(one.amount.quantity)))].join(' or ');
    // "the coconut is 180 not 280": told already
    const same = post.back.findIndex(({ text }) => text.startsWith(`I took ${written(amount.quantity)}, not `));
    const [told] = same < 0 ? [] : post.back.splice(same, 1);
    post.back.push({
      text: told?.text ?? `I took ${written(amount.quantity)}${name}, not ${said}, ${why}.`,
      gone: [...(told?.gone ?? []), ...figures(away)],
      from: Math.min(amount.from, ...away.map((one) => one.amount.from)),
      to: Math.max(amount.to, told?.to ?? 0),
    });
  }
}

/** The figure of several that counts; null where all are alike or nobody knows. */
function countingOf(list: readonly Said[]): Said | null {
  const [first] = list;
  if (!first || list.length < 2 || list.every(({ stance }) => stance === null)) return null;
  if (list.every((one) => isSame(one.amount.quantity, first.amount.quantity))) return null;
  const right = list.findLast(({ stance }) => stance === 'right');
  if (right) {
    const behind = list.slice(list.indexOf(right) + 1);
    return behind.every((one) => isSame(one.amount.quantity, right.amount.quantity)) ? right : null;
  }
  const standing = list.filter(({ stance }) => stance !== 'once');
  const [stays] = standing;
  const agreed = stays && standing.every((one) => isSame(one.amount.quantity, stays.amount.quantity));
  if (agreed) return stays;
  const now = standing.filter(({ stance }) => stance === 'now');
  const [lone] = now;
  const others = standing.filter(({ stance }) => stance !== 'now');
  const giveWay = others.every(
    (one) => one.stance === 'told' || one.stance === 'others' || (lone && one.amount.from < lone.amount.from),
  );
  // "pls verify NaOH. The thermometer says 41 now"
  const isOdd =
    lone?.amount.quantity.dim === 'bare' && !others.every((one) => isLikely(lone.amount.quantity, one.amount.quantity));
  if (now.length === 1 && lone && giveWay) return isOdd ? null : lone;
  // "Hanna says she would take 230 g": what somebody else says gives way to the one that the writer has
  const own = now.length === 0 ? standing.filter(({ stance }) => stance !== 'others') : [];
  const [mine] = own;
  return mine && own.every((one) => isSame(one.amount.quantity, mine.amount.quantity)) ? mine : null;
}

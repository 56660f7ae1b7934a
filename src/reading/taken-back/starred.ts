/**
 * "*200 coconut", "*8", "*palm kernel", "ugh *lye", "8*": a line of a chat with a star before or behind it puts right the
 * nearest thing of its kind that was said before it. What cannot be known is asked about; a list whose rows begin with
 * stars, and a remark at the foot that a star above it points to, put nothing right.
 */
import type { Item } from '../rows/items.ts';
import { type Amount, isAmount, isThing, type Thing } from '../rows/kinds.ts';
import { type Prim, rawText } from '../text/scan.ts';
import type { Quantity } from '../words/quantities.ts';
import { distance } from '../words/spelling.ts';
import { isAny, isMark, type Span, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { alike, isLikely, type PutRight, written } from './put-right.ts';
import { isSame, keyOf, type Said } from './said.ts';
import { figures, type Post } from './withdrawn.ts';

/** A line, with what of it stands beside the star. */
export interface Starred extends Span {
  readonly text: string;
  /** The star stands before it, as no mark of a remark does. */
  readonly leads: boolean;
}

/** Lines that put something right, at the most: more of them are a list. */
const mostStarred = 3;
/** "Ugh *lye". */
const mostBefore = 2;

/** The starred lines of a post that may put something right. */
export function starredIn(tokens: readonly Token[], prims: readonly Prim[]): readonly Starred[] {
  const found: Starred[] = [];
  if (!tokens.some((token) => isMark(token, '*'))) return found;
  for (let from = 0, to = 0; from < tokens.length; from = to + 1) {
    to = from;
    while (to < tokens.length && tokens[to]?.t !== 'line') to++;
    const stars = starsIn(tokens, from, to);
    const [at, ...more] = stars;
    if (at === undefined) continue;
    const next = tokens[at + 1];
    const leads = at < to - 1 && isTalk(tokens, from, at) && prims[next?.from ?? -1]?.glued === true;
    const trails = at > from && prims[tokens[at]?.from ?? -1]?.glued === true && isSpent(tokens, at + 1, to);
    // the star of a remark, or of a bullet
    if (more.length > 0 || !(leads || trails) || found.length === mostStarred) return [];
    const span = leads ? { from: at + 1, to } : { from, to: at };
    const [first, last] = [tokens[span.from], tokens[span.to - 1]];
    if (first && last) found.push({ ...span, leads, text: `*${rawText(prims, first.from, last.to)}` });
  }
  // "coconut 200 g*" and "*76 degrees": the one points to the other
  return found.some(({ leads }) => leads) && found.some(({ leads }) => !leads) ? [] : found;
}

/** Stars of a line that stand for no multiple: "3 * 250 g". */
function starsIn(tokens: readonly Token[], from: number, to: number): readonly number[] {
  const stars: number[] = [];
  for (let k = from; k < to; k++)
    if (isMark(tokens[k], '*') && !(k > from && tokens[k - 1]?.t === 'quantity' && tokens[k + 1]?.t === 'quantity'))
      stars.push(k);
  return stars;
}

/** Nothing behind a star, or what it was before: "250 coconut* not 200". */
const isSpent = (tokens: readonly Token[], from: number, to: number): boolean =>
  from === to ||
  (/^(?:not|was|instead)$/.test(wordAt(tokens, from)) && !isAny(tokens, from, to, (token) => token.t === 'name'));

const isTalk = (tokens: readonly Token[], from: number, to: number): boolean =>
  to - from <= mostBefore && tokens.slice(from, to).every(({ t }) => t === 'word' || t === 'sign');

const isWithin = ({ from }: Item, line: Span): boolean => from >= line.from && from < line.to;

/** What the starred lines put right; what they may mean otherwise makes the post unclear. */
export function applyStars(post: Post, stars: readonly Starred[], tokens: readonly Token[]): void {
  const isStarred = (item: Item): boolean => stars.some((line) => isWithin(item, line));
  // a list whose first row has a star
  if (!post.items.some((item) => isAmount(item) && item.from < (stars[0]?.from ?? 0))) return;
  for (const line of stars) {
    const own = post.items.filter((item) => isWithin(item, line) && !post.gone.has(item) && !isAside(item));
    const things = own.filter(isThing);
    const [thing] = things;
    const amounts = own.filter((item): item is Amount => isAmount(item) && !isAsBefore(post, item, things, own));
    const [amount] = amounts;
    if (!amount && !thing) {
      if (isOtherUnit(post, line, tokens)) post.unclear ??= line.text;
      continue;
    }
    const before: Before = {
      said: post.said.filter((one) => one.amount.from < line.from && one.thing.from < line.from && isLeft(post, one)),
      items: post.items.filter((item) => item.from < line.from && !isStarred(item) && !post.gone.has(item)),
      tokens,
    };
    // "*makes 5 bars", "*I always use 120 g of water"
    if (!isBare(tokens, { from: line.from, to: Math.max(...[...amounts, ...things].map((item) => item.to)) })) continue;
    if (isAny(tokens, line.from, line.to, isOpen)) {
      if (things.some((one) => before.said.some(({ key }) => key === keyOf(one.named.meaning, post.alkalis))))
        post.unclear ??= line.text;
      continue;
    }
    if (amounts.length > 1 || things.length > 1) {
      if (amounts.length === 0) putOther(post, line, things, before, tokens);
      // "*lye for 8 % superfat" puts nothing right
      for (const one of post.said.filter((row) => amounts.includes(row.amount) && things.includes(row.thing)))
        if (before.said.some(({ key }) => key === one.key)) putRow(post, line, one.thing, one.amount, before);
    } else if (!thing) {
      if (amount) putFigure(post, line, amount, figureMeant(before, amount.quantity));
    } else if (amount) putRow(post, line, thing, amount, before);
    else putName(post, line, thing, before);
  }
}

/** "*550 olive, dunno why I typed 500": what it was, which is told besides what it is. */
function isAsBefore(post: Post, amount: Amount, [thing, ...more]: readonly Thing[], own: readonly Item[]): boolean {
  if (!thing || more.length > 0 || own.filter(isAmount).length === 1) return false;
  const key = keyOf(thing.named.meaning, post.alkalis);
  const row = post.said.find((one) => one.key === key && one.thing.from < thing.from);
  const isSaid = row !== undefined && isSame(alike(amount.quantity, row.amount.quantity), row.amount.quantity);
  if (!isSaid) return false;
  post.gone.add(amount);
  const text = `I left out "${written(amount.quantity)}", which is what the post puts right.`;
  post.back.push(told(text, [amount.quantity], amount));
  return true;
}

/** Nothing but names, figures and what people say beside them. */
const isBare = (tokens: readonly Token[], { from, to }: Span): boolean =>
  !isAny(tokens, from, to, (token) =>
    token.t === 'word'
      ? token.sort !== 'filler' && !talk.has(token.text)
      : token.t === 'name' && token.meaning.kind === 'role' && !shares.has(token.meaning.id) && !isNo(token),
  );
/** "*200 coconut if you want it harder". */
const isOpen = (token: Token): boolean =>
  token.t === 'word' && /^(?:if|or|could|would|maybe|perhaps|might|next|usually|normally)$/.test(token.text);
/** "No" names a number to the reader. */
const isNo = ({ text }: Extract<Token, { t: 'name' }>): boolean => /^no$/i.test(text);
const talk: ReadonlySet<string> = new Set(
  'the is was should have been be read say its it of my that thats meant mean i sorry oops whoops typo correction no nope wait only just actually really lol haha omg ugh argh please pls not and or rather instead in there'.split(
    ' ',
  ),
);

/** "*oz" behind weights in grams, which no rule has put right. */
function isOtherUnit({ items, back }: Post, { from, to }: Starred, tokens: readonly Token[]): boolean {
  const word = to === from + 1 ? wordAt(tokens, from) : '';
  if (!units.test(word) || back.some((one) => one.from <= from && one.to >= to)) return false;
  const last = items.findLast((item) => item.from < from && isAmount(item) && item.quantity.unit !== null);
  return isAmount(last) && last.quantity.unit?.id[0] !== word[0];
}
const units = /^(?:g|gr|grams?|kg|kilos?|oz|ounces?|lbs?|pounds?|ml)$/;

const isLeft = (post: Post, { amount, thing }: Said): boolean => !post.gone.has(amount) && !post.gone.has(thing);

/** Words that name nothing: "*sorry thumbs". */
const isAside = (item: Item): boolean =>
  isThing(item) &&
  (item.named.meaning.kind === 'unknown' || (item.named.meaning.kind === 'role' && !shares.has(item.named.meaning.id)));
const shares: ReadonlySet<string> = new Set(['superfat', 'concentration']);

interface Before {
  readonly said: readonly Said[];
  readonly items: readonly Item[];
  readonly tokens: readonly Token[];
}

const told = (text: string, gone: readonly Quantity[], { from, to }: Span): PutRight => ({ text, gone, from, to });

/** "*8": of the figures in the line before it, the only one that it may be. */
function figureMeant({ said, tokens }: Before, quantity: Quantity): Said | null {
  const last = said.at(-1);
  if (!last) return null;
  const near = said.filter(({ amount }) => lineAt(tokens, amount.from) === lineAt(tokens, last.amount.from));
  const [only, ...more] = near.length === 1 ? near : near.filter((one) => isSlip(quantity, one.amount.quantity));
  return only && more.length === 0 && mayBe(quantity, only) ? only : null;
}

/** Where its line begins. */
function lineAt(tokens: readonly Token[], at: number): number {
  let from = at;
  while (from > 0 && tokens[from - 1]?.t !== 'line') from--;
  return from;
}

function mayBe(quantity: Quantity, { key, amount }: Said): boolean {
  const before = amount.quantity;
  const dim = alike(quantity, before).dim;
  const isShare = key === 'superfat' && (dim === 'percent' || dim === 'bare');
  return (isShare || dim === before.dim) && (key === 'superfat' || isLikely(quantity, before));
}

/** "115" for "105": one digit is another. */
function isSlip(a: Quantity, b: Quantity): boolean {
  const [one, other] = [a, b].map(({ text }) => /\d[\d.,]*/.exec(text)?.[0] ?? '');
  return one !== undefined && other !== undefined && distance(one, other, 1) <= slip;
}
const slip = 1.1;

function putFigure(post: Post, line: Starred, amount: Amount, row: Said | null): void {
  if (!row) {
    if (line.leads) post.unclear ??= line.text;
    return;
  }
  if (post.said.some((one) => one !== row && one.key === row.key && isLeft(post, one) && one.amount !== amount)) {
    post.unclear ??= line.text;
    return;
  }
  const before = row.amount.quantity;
  // it may have been given a name that it stands nearest to
  post.said = post.said.filter((one) => one.amount !== amount);
  post.gone.add(amount);
  const quantity = alike(amount.quantity, before);
  const of = row.key === 'superfat' ? '' : ` of ${row.thing.named.text}`;
  if (Math.abs(quantity.value - before.value) <= 1e-6 * before.value) {
    post.back.push(told(`I took ${written(before)}${of} once, as the post says it twice.`, [amount.quantity], line));
    return;
  }
  post.instead.set(row.amount, { ...row.amount, quantity, same: amount.same });
  const text = `I took ${written(amount.quantity)}${of}, not ${written(before)}, as the post corrects itself.`;
  post.back.push(told(text, figures([row]), line));
}

/** "*200 coconut": of what was weighed before, or another name for what weighed as much. */
function putRow(post: Post, line: Starred, thing: Thing, amount: Amount, before: Before): void {
  const key = keyOf(thing.named.meaning, post.alkalis);
  const rows = before.said.filter((one) => one.key === key);
  const [row, ...again] = rows;
  if (row) {
    if (again.length > 0) post.unclear ??= line.text;
    else {
      post.said = post.said.filter((one) => one.thing !== thing && one.amount !== amount);
      post.gone.add(thing);
      putFigure(post, line, amount, row);
    }
    return;
  }
  // what was not named at all is no second figure of it
  if (!line.leads || kindOf(thing) !== 'fat' || adds.test(line.text)) return;
  const alikes = before.said.filter(
    (one) => kindOf(one.thing) === kindOf(thing) && isSame(one.amount.quantity, amount.quantity),
  );
  const [other, ...more] = alikes;
  const isSpelt = other !== undefined && likeness(thing)(other.thing);
  if (!other || more.length > 0 || !isSpelt) {
    post.unclear ??= line.text;
    return;
  }
  post.said = post.said.filter((one) => one.thing !== thing && one.amount !== amount);
  post.gone.add(amount);
  rename(post, line, thing, [other.thing]);
}

/** "*castor 50 g too, forgot". */
const adds = /\b(?:too|also|as well|plus|and|add|forgot|missed|missing)\b/i;

/** What may be put in the place of one another. */
function kindOf({ named: { meaning } }: Thing): string {
  if (meaning.kind === 'unheld') return 'fat';
  return meaning.kind === 'liquid' ? 'water' : meaning.kind;
}

const allWordsOf = ({ named }: Thing): readonly string[] => named.text.toLowerCase().match(/\p{L}{3,}/gu) ?? [];
const wordsOf = (thing: Thing): readonly string[] => allWordsOf(thing).filter((word) => !generic.has(word));
const generic: ReadonlySet<string> = new Set(['oil', 'butter', 'fat', 'wax', 'seed']);
const share = (a: readonly string[], b: readonly string[]): boolean => a.some((word) => b.includes(word));

/** Whether a name was meant for another by its words or its spelling: "palm" for "palm kernel", "kye" for "lye". */
function likeness(thing: Thing): (other: Thing) => boolean {
  const own = thing.named.text.toLowerCase();
  return (other) => {
    if (other.named.meaning.kind !== 'unknown' && share(wordsOf(thing), wordsOf(other))) return true;
    const theirs = other.named.text.toLowerCase();
    const most = own.length < shortName ? 1 : 2;
    return own.slice(0, begun) === theirs.slice(0, begun) || distance(own, theirs, most) <= most + 0.1;
  };
}
const shortName = 6;
/** Letters from which on a telephone may have gone on by itself: "cocoa" for "coconut". */
const begun = 4;

/** "*palm kernel": what was called by a like name, or the one thing of its kind. */
function putName(post: Post, line: Starred, thing: Thing, { items, said, tokens }: Before): void {
  const { meaning } = thing.named;
  if (meaning.kind === 'role') return;
  const key = keyOf(meaning, post.alkalis);
  const isOwn = (other: Thing): boolean => keyOf(other.named.meaning, post.alkalis) === key;
  const others = items.filter((item): item is Thing => isThing(item) && !isOwn(item));
  const weighed = others.filter((one) => mayBeFor(one, thing) && isBesideFigure(tokens, one));
  const like = weighed.filter(likeness(thing));
  // "*lye" where it has its weight
  if (like.length === 0 && items.some((item) => isThing(item) && isOwn(item))) {
    post.gone.add(thing);
    return;
  }
  const known = weighed.filter((one) => one.named.meaning.kind !== 'unknown');
  // "shea butter" for "mango butter"
  const called = known.filter((one) => share(allWordsOf(thing), allWordsOf(one)));
  const meant = [like, called, known].find((list) => list.length > 0) ?? [];
  const [first] = meant;
  const isOne = first !== undefined && meant.every((one) => one.named.text === first.named.text);
  if (!isOne || said.some((one) => one.key === key)) {
    if (line.leads || meaning.kind !== 'unknown') post.unclear ??= line.text;
    return;
  }
  rename(post, line, thing, meant);
}

/** "*naoh not koh". */
function putOther(
  post: Post,
  line: Starred,
  things: readonly Thing[],
  { items }: Before,
  tokens: readonly Token[],
): void {
  const [stays, goes, ...more] = things;
  if (!stays || !goes || more.length > 0 || !isAny(tokens, stays.to, goes.from, isNot)) return;
  const key = keyOf(goes.named.meaning, post.alkalis);
  const meant = items.filter((one): one is Thing => isThing(one) && keyOf(one.named.meaning, post.alkalis) === key);
  post.gone.add(goes);
  if (meant.length > 0) rename(post, line, stays, meant);
}
const isNot = (token: Token): boolean => token.t === 'word' && /^(?:not|instead|rather)$/.test(token.text);

const mayBeFor = (other: Thing, thing: Thing): boolean =>
  other.named.meaning.kind === 'unknown' ||
  (other.named.meaning.kind === 'ambiguous' && kindOf(thing) !== 'role') ||
  kindOf(other) === kindOf(thing);

const isBesideFigure = (tokens: readonly Token[], { from, to }: Thing): boolean =>
  [from - 2, from - 1, to, to + 1].some((k) => tokens[k]?.t === 'quantity');

function rename(post: Post, line: Starred, thing: Thing, meant: readonly Thing[]): void {
  for (const one of meant) post.instead.set(one, { ...one, named: thing.named });
  post.gone.add(thing);
  post.back.push(
    told(`I took ${thing.named.text}, not ${meant[0]?.named.text ?? ''}, as the post corrects itself.`, [], line),
  );
}

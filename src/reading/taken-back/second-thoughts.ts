/**
 * What a later sentence of a post makes of an earlier one: "EDIT: the coconut is 180", "it was 135 g while there was
 * still palm in it", "no palm, I left it out", "lard in place of the palm". What stands last, or does not speak of what
 * was, counts, and the answer says so; what cannot be known stays for a question.
 */

import type { Cuts } from '../rows/bind.ts';
import { amountItem, type Item } from '../rows/items.ts';
import { type Amount, isAmount, isThing, type Thing } from '../rows/kinds.ts';
import { fatsTaken } from '../story/fats-times.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import type { Quantity } from '../words/quantities.ts';
import { ofWord, signal } from '../words/signal-words.ts';
import { gives, givesAt, type Signals } from '../words/signals.ts';
import type { Token } from '../words/tokens.ts';
import { type Change, changesIn, fillingIn, itOutIn } from './changes.ts';
import { forItsPlace } from './for-its-place.ts';
import { type Times, timesIn } from './made-size.ts';
import { asking, dropSaidAgain, settleTellings } from './other-batches.ts';
import { partTimesIn, takePartTimes } from './part-times.ts';
import { plannedIn } from './planned.ts';
import { alike, isLikely, type PutRight, withValue, written } from './put-right.ts';
import { ranOutIn, takeInstead } from './ran-out.ts';
import {
  alkalisIn,
  boundIn,
  isAlkali,
  isFat,
  isOf,
  isOther,
  isPart,
  isSame,
  keyOf,
  type Said,
  saidIn,
} from './said.ts';
import { isNothingInstead, spoiltIn } from './spoilt.ts';
import { lackIn, pageTurnedIn, rightsIn, takenBackIn, unsureIn } from './stance.ts';
import { applyStars, starredIn } from './starred.ts';
import { tellingsIn } from './tellings.ts';
import { turnDown, turnedDownIn } from './turned-down.ts';
import { turnedDownAt, weightForWeight } from './weight-for-weight.ts';
import { drop, dropAll, elsewhere, figures, type Post } from './withdrawn.ts';

export interface Thoughts {
  readonly items: readonly Item[];
  readonly back: readonly PutRight[];
  /** Words that take something back, and nobody knows what. */
  readonly unheard: string | null;
  /** How the items may be bound, as far as that was asked. */
  readonly cuts: Cuts | null;
}

/** In a table of costs it is water that is had for nothing. */
const isWater = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'water';

/** "No more water": of that nothing is taken out. */
const isMoreOf = (token: Token | undefined): boolean =>
  token?.t === 'name' && /^(?:more|extra|additional|further) /i.test(token.text);

const turnsIn = (token: Token): boolean =>
  gives(token, signal.turning) || (token.t === 'name' && token.meaning.id === 'number');

/** "Old:", which is also said of a bar that has cured. */
const isHeading = (token: Token): boolean =>
  token.t === 'name' &&
  token.meaning.kind === 'role' &&
  (ofWord(token.text.toLowerCase().replace("'", '')) & signal.turning) !== 0;

/** "I've since added another 100 g of coconut": to the list that was told before, whenever that was. */
const onTop =
  /\b(?:i|we|ive|weve) (?:(?:have|had|since|then|now|also|later|just) )*(?:since|then|now|later|also|meanwhile) (?:(?:have|also|just|then) )*(?:added|put in|poured in|tipped in|stirred in|melted in|weighed in) (?:another|an (?:extra|additional)|a further) # (?:of )?(?:the )?@/;
const elsewhen =
  /\b(?:last (?:time|batch|week|month|year)|hers|his|theirs|yesterdays|the (?:other|previous|earlier) (?:batch|one|pot|loaf))\b/;

/** The items without what the post takes back later on, and what that was. */
export function secondThoughts(
  items: readonly Item[],
  cut: Cut & { readonly signals: Signals },
  before: readonly PutRight[],
): Thoughts {
  const { tokens, signals } = cut;
  const has = (bit: number): boolean => (signals.all & bit) !== 0;
  const turnsAt = (token: Token, k: number): boolean => givesAt(signals, k, signal.turning) && turnsIn(token);
  const turns =
    has(signal.turning) &&
    tokens.some((token, k) => givesAt(signals, k, signal.turning) && (turnsIn(token) || isHeading(token)));
  const stars = starredIn(tokens, cut.prims);
  const isBoth =
    turns && has(signal.both) && tokens.some((token) => gives(token, signal.both)) && !tokens.some(turnsAt);
  if (!(turns || has(signal.telling) || stars.length > 0) || isBoth || !items.some(isAmount))
    return { items, back: before, unheard: null, cuts: null };
  const sentences = sentencesOf(cut);
  const settled = before.filter(({ settles }) => settles);
  const isReckoned = ({ from, to }: Sentence): boolean =>
    before.some((one) => one.text.startsWith(fatsTaken) && one.from < to && one.to > from);
  const isSettled = (sentence: Sentence): boolean =>
    settled.some(({ from, to }) => from < sentence.to && to > sentence.from);
  const isOnTop = sentences.some(({ text }) => onTop.test(text)) && !sentences.some(({ text }) => elsewhen.test(text));
  const tells = isOnTop ? null : tellingsIn(sentences, cut, isSettled);
  // "850 g - no, 780 was all I had"
  const isTold = (sentence: Sentence): boolean =>
    before.some(({ from, to }) => from < sentence.to && to > sentence.from);
  const turnedDown = new Set(turnedDownIn(sentences, tokens));
  const changes = sentences.flatMap((sentence, k) =>
    (isSettled(sentence) || turnedDown.has(sentence) ? [] : toldIn(sentences, k)).flatMap((change) => {
      if (
        change.kind === 'out' &&
        (isMoreOf(tokens[change.gone ?? -1]) ||
          (change.none && (isTold(sentence) || (has(signal.price) && isWater(tokens[change.gone ?? -1])))))
      )
        return [];
      const at = change.gone ?? ('comes' in change ? change.comes : null) ?? sentence.from;
      const { telling, carried } = tells?.(k, at) ?? { telling: null, carried: false };
      return carried || !(telling === 'later' || telling === 'once' || telling === 'others') ? [{ k, change }] : [];
    }),
  );
  const rights = rightsIn(sentences);
  const turnedAt = sentences.flatMap((sentence, k) => {
    const from = isTold(sentence) ? null : pageTurnedIn(sentence);
    return from === null ? [] : [{ k, from }];
  });
  const times = timesIn(sentences, items, tokens);
  const partly = times ? null : partTimesIn(sentences, items, isReckoned);
  const ranOut = ranOutIn(sentences);
  const { said, cuts, tellings } = saidIn(
    items,
    tokens,
    { sentences, rights, tells, isOnTop, isSettled },
    turnedAt.length + turnedDown.size + changes.length + ranOut.length + stars.length > 0 ||
      times !== null ||
      partly !== null,
  );
  const post: Post = {
    sentences,
    items,
    said,
    tellings,
    bound: boundIn(said, cuts, items),
    alkalis: alkalisIn(items),
    gone: new Set(),
    instead: new Map(),
    lessened: [],
    given: new Map(),
    back: [...before],
    unclear: null,
    last: null,
    binned: [],
  };
  for (const sentence of turnedDown) turnDown(post, sentence);
  for (const { k, from } of turnedAt) turnPage(post, k, from);
  const swapped = new Set(ranOut.filter((one) => takeInstead(post, one)).flatMap(({ goes, comes }) => [goes, comes]));
  for (const { k, change } of changes)
    if (![change.gone, 'comes' in change ? change.comes : null].some((at) => at !== null && swapped.has(at)))
      applyChange(post, change, k);
  applyStars(post, stars, tokens);
  dropBinned(post);
  settleTellings(post);
  settleWhole(post);
  settleFigures(post);
  fillUp(post);
  dropSaidAgain(post);
  if (times) takeTimes(post, times);
  if (partly) takePartTimes(post, partly);
  const hears = (k: number): boolean => {
    const sentence = sentences[k];
    return sentence !== undefined && post.back.some(({ from, to }) => from < sentence.to && to > sentence.from);
  };
  return {
    items: itemsLeft(post),
    back: post.back,
    unheard:
      post.unclear ??
      unsureIn(sentences, post.back.length > 0) ??
      takenBackIn(sentences, tokens, hears) ??
      lackIn(sentences, tokens, hears),
    cuts,
  };
}

/** The changes that a sentence tells. */
function toldIn(sentences: readonly Sentence[], k: number): readonly Change[] {
  const sentence = sentences[k];
  if (!sentence) return [];
  const planned = plannedIn(sentences, k);
  if (planned) return [planned];
  const changes = changesIn(sentence);
  const settled = changes.every((one) => one.gone === null) ? weightForWeight(sentences, k) : null;
  if (settled) return [settled];
  if (changes.length > 0) return acrossSentences(changes, sentences, k);
  const instead = forItsPlace(sentences, k);
  return instead ? [instead] : spoiltIn(sentence, sentences[k + 1]);
}

/** "I left the palm out. Used lard instead.": one change, told where the palm goes. */
function acrossSentences(changes: readonly Change[], sentences: readonly Sentence[], k: number): readonly Change[] {
  const [only, more] = changes;
  if (more || !only) return changes;
  const goes = (one: Change | undefined): boolean => one?.kind === 'out' && one.gone !== null && !one.none;
  const comesForIt = (one: Change | undefined) => (one?.kind === 'swap' && one.gone === null ? one : null);
  const near = sentences[goes(only) ? k + 1 : k - 1];
  const [beside, ...others] = near ? changesIn(near) : [];
  if (!near || others.length > 0) return changes;
  const comes = comesForIt(beside);
  if (goes(only) && comes) return [{ ...comes, gone: only.gone, until: near.to }];
  return comesForIt(only) && goes(beside) ? [] : changes;
}

/** The items that still count, as they count. */
function itemsLeft({ items, gone, instead, given }: Post): readonly Item[] {
  if (gone.size + instead.size + given.size === 0) return items;
  const left: Item[] = [];
  for (const item of items) {
    if (gone.has(item)) continue;
    const more = given.get(item);
    left.push(more ? item : (instead.get(item) ?? item));
    if (more) left.push(more);
  }
  return left;
}

function lessen({ lessened }: Post, at: number, before: Quantity, now: Quantity): void {
  const value = before.value - now.value;
  if (value <= 0 || before.dim !== now.dim) return;
  lessened.push({ at, by: withValue(before, value) });
}

/** "I made up the missing ounce with lard". */
function fillUp(post: Post): void {
  post.sentences.forEach((sentence, k) => {
    const comes = post.lessened.length > 0 ? fillingIn(sentence) : null;
    const it = comes === null ? null : thingAt(post, comes);
    if (!it || !/^(?:fat|liquid|water) ?/.test(it.key) || post.said.some(({ thing }) => thing === it.thing)) return;
    const since = post.sentences[k - 1]?.from ?? sentence.from;
    const [less, ...more] = post.lessened.filter(({ at }) => at >= since && at < sentence.to);
    if (!less || more.length > 0) {
      post.unclear ??= it.thing.named.text;
      return;
    }
    post.given.set(it.thing, amountItem(less.by, it.thing.to, it.thing.to));
    post.back.push({
      text: `I took ${less.by.text} of ${it.thing.named.text} for what was missing, as the post says.`,
      gone: [],
      from: sentence.from,
      to: sentence.to,
    });
  });
}

const within = (one: Said, { from, to }: Sentence): boolean => one.amount.from >= from && one.amount.from < to;

/** Words that take out what is listed only behind them. */
const ahead = /\b(?:left|leave|leaving|skip\w*|omit\w*)\b/;

/** The thing at a token, and what it is told apart by. */
function thingAt(post: Post, token: number): { readonly thing: Thing; readonly key: string } | null {
  const thing = post.items.find((item): item is Thing => isThing(item) && item.from <= token && item.to > token);
  const key = thing ? keyOf(thing.named.meaning, post.alkalis) : null;
  return thing && key !== null ? { thing, key } : null;
}

/** What "it" is that is taken out: the last thing weighed in its sentence. */
function spokenOf(post: Post, sentence: Sentence): Said | undefined {
  // "310 g water, but I left that out and used 310 g of beer"
  const to = itOutIn(sentence) ?? sentence.to;
  const last = post.said.findLast(
    (one) => Math.max(one.amount.from, one.thing.from) < to && /^(?:fat|liquid|additive|scent|water)\b/.test(one.key),
  );
  // "castor 60 g (left out)"
  return last && (within(last, sentence) || sentence.from - Math.max(last.amount.to, last.thing.to) <= 1)
    ? last
    : undefined;
}

/** Every weight and volume of the post that still counts, so many times. */
function takeTimes(post: Post, { factor, figure, isPlain, text, from, to }: Times): void {
  if (figure) post.gone.add(figure);
  if (!isPlain) {
    post.unclear ??= text;
    return;
  }
  const bare = new Set(post.said.filter(({ key }) => key !== 'superfat').map(({ amount }) => amount));
  const times = (quantity: Quantity): Quantity =>
    quantity.dim === 'mass' || quantity.dim === 'volume' || quantity.dim === 'bare'
      ? { ...quantity, value: quantity.value * factor, other: null }
      : quantity;
  for (const item of post.items) {
    const given = post.given.get(item);
    if (isAmount(given)) post.given.set(item, { ...given, quantity: times(given.quantity) });
    if (!isAmount(item) || post.gone.has(item) || (item.quantity.dim === 'bare' && !bare.has(item))) continue;
    const now = post.instead.get(item) ?? item;
    if (isAmount(now)) post.instead.set(item, { ...now, quantity: times(now.quantity), same: null });
  }
  post.back.push({ text: `I took all amounts times ${factor}, as the post says ("${text}").`, gone: [], from, to });
}

/** "350 g coconut, 650 g olive... hang on, that's another page": what was listed so far is not of this recipe. */
function turnPage(post: Post, k: number, at: number): void {
  const { sentences } = post;
  const sentence = sentences[k];
  if (!sentence) return;
  let start = k;
  const isOpened = (n: number): boolean => /^[^#]*:[^#]*#/.test(sentences[n]?.text ?? '');
  while (start > 0 && !isOpened(start) && sentences[start - 1]?.paragraph === sentence.paragraph) start--;
  const from = sentences[start]?.from ?? sentence.from;
  const isGone = (one: Item): boolean => one.from >= from && one.from < at;
  const gone = post.said.filter(({ amount }) => isGone(amount));
  const behind = post.said.filter(({ amount }) => amount.from >= at);
  if (!gone.some(isPart)) return;
  if (oneLine.test(sentence.text)) {
    rightLine(post, gone, behind, sentence);
    return;
  }
  const lacks = (of: (one: Said) => boolean): boolean => gone.some(of) && !behind.some(of);
  if (lacks(isFat) || lacks(isAlkali)) {
    post.unclear ??= sentences[k]?.text.trim() ?? '';
    return;
  }
  const items = post.items.filter(isGone);
  for (const item of items) post.gone.add(item);
  const said = gone.map(({ amount, thing }) => `${thing.named.text} ${written(amount.quantity)}`).join(', ');
  post.back.push({
    text: `I left out "${said}", which is of another recipe, as the post says.`,
    gone: items.filter(isAmount).flatMap(({ quantity, same }) => [quantity, ...(same ? [same] : [])]),
    from,
    to: sentence.to,
  });
}

/** "300 g coconut. Hang on, wrong line. Coconut 250 g": of another row, and no more than that one. */
const oneLine = /\bwrong (?:line|row|figure|number|amount)\b/;

function rightLine(post: Post, gone: readonly Said[], behind: readonly Said[], sentence: Sentence): void {
  const [last, next] = [gone.at(-1), behind[0]];
  if (!last || last.key !== next?.key) {
    post.unclear ??= sentence.text.trim();
    return;
  }
  drop(post, last);
  post.back.push({
    text: `I took ${written(next.amount.quantity)}, not ${written(last.amount.quantity)}, as the post corrects itself.`,
    gone: figures([last]),
    from: sentence.from,
    to: sentence.to,
  });
}

/** "Half of it is now lard": what the one has less, the other has. */
function applyShare(post: Post, change: Extract<Change, { kind: 'share' }>, k: number): void {
  const sentence = post.sentences[k];
  if (!sentence) return;
  const comes = thingAt(post, change.comes);
  const it = change.gone === null ? null : thingAt(post, change.gone);
  const before = post.said.findLast((one) => isFat(one) && Math.max(one.amount.from, one.thing.from) < change.comes);
  const key = it?.key ?? (before && sentence.from - before.amount.to <= nearby ? before.key : null);
  if (!comes || key === null || comes.key === key) return;
  const kinds = [key, comes.key].map((one) => one.replace(/ .*/, ''));
  if (!/^(?:fat,fat|(?:water|liquid),(?:water|liquid))$/.test(kinds.join())) {
    if (kinds[0] === 'fat' && it) post.unclear ??= it.thing.named.text;
    return;
  }
  const { by } = change;
  const figure =
    'figure' in by ? post.items.find((one): one is Amount => isAmount(one) && one.from === by.figure) : null;
  const rows = post.said.filter((one) => one.key === key && one.amount !== figure && !post.gone.has(one.amount));
  const own = post.said.find((one) => one.thing === comes.thing && one.amount !== figure);
  const others = post.said.filter((one) => one.key === comes.key && one !== own);
  const [row] = rows;
  if (!row) return;
  // the list behind it has both
  if (others.length > 0 && others.every(({ amount }) => amount.from > change.comes) && figure === null) return;
  const whole = row.amount.quantity;
  const given = figure?.quantity;
  const isFraction = given?.dim === 'percent' || (given?.dim === 'bare' && given.value < 1);
  const so = given && !isFraction ? alike(given, whole) : null;
  const moved = so
    ? so.dim === whole.dim
      ? so.value
      : 0
    : ('fraction' in by ? by.fraction : (given?.value ?? 0)) * whole.value;
  // "200 g milk in place of half the water, water 90 g": the water that is left
  const isBehind = row.amount.from > change.comes && row.amount.from < sentence.to;
  if (own && given === undefined && (isBehind || isSame(own.amount.quantity, whole))) return;
  const isAll = moved >= 0.995 * whole.value;
  if (isAll && change.gone !== null) {
    applyChange(post, { kind: 'swap', gone: change.gone, comes: change.comes, eitherWay: false }, k);
    return;
  }
  const ofIt = it?.thing.named.text ?? row.thing.named.text;
  if (others.length > 0 || rows.some(({ amount }) => !isSame(amount.quantity, whole)) || moved <= 0 || isAll) {
    post.unclear ??= ofIt;
    return;
  }
  const [stays, goes] = [withValue(whole, whole.value - moved), withValue(whole, moved)];
  for (const one of rows) {
    post.instead.set(one.amount, { ...one.amount, quantity: stays, same: null });
    if (one !== row) drop(post, one);
  }
  if (figure) post.gone.add(figure);
  if (it && it.thing !== row.thing) post.gone.add(it.thing);
  if (!own) post.given.set(comes.thing, amountItem(goes, comes.thing.to, comes.thing.to));
  const taken = own ? own.amount.quantity : goes;
  post.back.push({
    text: `I took ${written(taken)} of ${comes.thing.named.text} in the place of ${written(goes)} of ${row.thing.named.text}, which leaves ${written(stays)}, as the post says.`,
    gone: [...figures(rows.slice(1)), whole, ...(figure ? [figure.quantity] : [])],
    from: sentence.from,
    to: sentence.to,
  });
}

/** Tokens between a figure and the sentence that speaks of it, at the most. */
const nearby = 2;

/** "No castor in the house, so I left it out", "I took lard instead of the palm", and then the list as it was. */
function isOfWhatFollows(post: Post, change: Change, sentence: Sentence): boolean {
  if (change.kind === 'out') return ahead.test(sentence.text);
  const comes = change.kind === 'swap' && change.gone !== null ? thingAt(post, change.comes) : null;
  return comes !== null && !post.said.some((one) => one.key === comes.key && one.amount.from >= sentence.to);
}

/** Something was spoilt, or thrown away: what comes next may take its place. */
function spoil(post: Post, { gone, at, binned, figure }: Extract<Change, { kind: 'spoilt' }>, k: number): void {
  const before = post.said.findLast((one) => one.amount.from < at && one.thing.from < at);
  const isNear = before && at - Math.max(before.amount.to, before.thing.to) <= aWhile;
  const key = gone === null ? (isNear ? before.key : null) : thingAt(post, gone)?.key;
  // "it went in the bin", of what was said to be rancid
  const was = gone === null && post.last && k - post.last.sentence <= 2 ? post.last.key : key;
  if (was == null || !/^(?:fat|liquid) /.test(was)) return;
  if (figure !== null && binned && isPartLost(post, was, figure, k)) return;
  post.last = { key: was, sentence: k };
  if (binned) post.binned.push({ ...post.last, thing: gone === null ? null : (thingAt(post, gone)?.thing ?? null) });
}
/** "30 g of the olive ended up on the floor, I did not replace it": less of it is in the pot; a part of what its row weighs. */
function isPartLost(post: Post, key: string, figure: number, k: number): boolean {
  const sentence = post.sentences[k];
  const lost = post.said.find(({ amount }) => amount.from === figure);
  const rows = post.said.filter((one) => one.key === key && one !== lost && !post.gone.has(one.amount));
  const [row, more] = rows;
  if (!sentence || !lost || !row) return false;
  const whole = row.amount.quantity;
  const part = alike(lost.amount.quantity, whole);
  if (part.dim !== whole.dim || part.value > 0.99 * whole.value) return false;
  if (more || ![sentence, post.sentences[k + 1]].some((one) => one && isNothingInstead(one))) {
    post.unclear ??= sentence.text.trim();
    return true;
  }
  const now = withValue(whole, whole.value - part.value);
  post.instead.set(row.amount, { ...row.amount, quantity: now, same: null });
  drop(post, lost);
  post.back.push({
    text: `I took ${written(now)} of ${row.thing.named.text}, not ${written(whole)}, as the post says that ${written(part)} was lost.`,
    gone: [...figures([lost]), whole],
    from: sentence.from,
    to: sentence.to,
  });
  return true;
}

/** Tokens from a weight to the "it" that is of it, at the most. */
const aWhile = 12;

/** What was thrown away, and nothing took its place. */
function dropBinned(post: Post): void {
  for (const { key, sentence, thing } of post.binned) {
    const had = post.said.filter(
      (one) => one.key === key && !post.gone.has(one.amount) && !post.instead.has(one.thing),
    );
    const [first] = had;
    const told = post.sentences[sentence];
    if (!first || !told || had.some(({ amount }) => amount.from >= told.to)) continue;
    for (const one of had) drop(post, one);
    if (thing) post.gone.add(thing);
    const text = `I left out ${first.thing.named.text} (${written(first.amount.quantity)}), as the post takes it out.`;
    const next = post.sentences[sentence + 1];
    const to = next && isNothingInstead(next) ? next.to : told.to;
    post.back.push({ text, gone: figures(had), from: told.from, to });
  }
}

const isFatKey = (key: string): boolean => key.startsWith('fat ');

/** "Lard stood in for it": each weight of what was spoilt is now of what came, or gives way to its own. */
function putInPlace(
  post: Post,
  had: readonly Said[],
  comes: Thing,
  own: Said | undefined,
  { from, to }: Sentence,
): void {
  const [row, ...again] = had;
  if (!row) return;
  if (own) for (const one of had) drop(post, one);
  else {
    post.instead.set(row.thing, { ...row.thing, named: comes.named });
    for (const one of again) drop(post, one);
    post.gone.add(comes);
  }
  const amount = written((own ?? row).amount.quantity);
  const text = `I took ${comes.named.text} (${amount}) in the place of ${row.thing.named.text}, as the post says.`;
  post.back.push({ text, gone: own ? figures(had) : figures(again), from, to });
}

/** "It's tallow, actually": the one fat of the post goes by another name. */
function applyItself(post: Post, at: number, { from, to }: Sentence): void {
  const comes = thingAt(post, at);
  if (!comes?.key.startsWith('fat') || post.said.some((one) => one.key === comes.key)) return;
  const before = post.said.filter((one) => isFat(one) && !post.gone.has(one.amount) && one.amount.from < from);
  const [row] = before;
  if (!row) return;
  if (before.some((one) => one.key !== row.key)) {
    post.unclear ??= comes.thing.named.text;
    return;
  }
  for (const { thing } of before) post.instead.set(thing, { ...thing, named: comes.thing.named });
  post.gone.add(comes.thing);
  const text = `I took ${comes.thing.named.text} (${written(row.amount.quantity)}) in the place of ${row.thing.named.text}, as the post says.`;
  post.back.push({ text, gone: [], from, to });
}

const isOfLye = (key: string): boolean => /^(?:alkali|stock)\b/.test(key);

const subbed = /\bsub(?:bed|bing|stitut\w*)?\b/;

function applyChange(post: Post, change: Change, k: number): void {
  const sentence = post.sentences[k];
  if (!sentence) return;
  if (change.kind === 'share') {
    applyShare(post, change, k);
    return;
  }
  if (change.kind === 'those') {
    const own = post.said.find(({ amount }) => amount.from === change.figure);
    const key = thingAt(post, change.comes)?.key;
    const alikes = post.said.filter(
      (one) => own && isFat(one) && one.key !== key && isSame(one.amount.quantity, own.amount.quantity),
    );
    const [row, ...more] = alikes.filter((one) => !post.gone.has(one.amount));
    if (row && more.some((one) => one.key !== row.key)) post.unclear ??= row.thing.named.text;
    else if (row) applyChange(post, { kind: 'swap', gone: row.thing.from, comes: change.comes, eitherWay: false }, k);
    return;
  }
  if (change.kind === 'spoilt') {
    spoil(post, change, k);
    return;
  }
  if (change.kind === 'itself') {
    applyItself(post, change.comes, sentence);
    return;
  }
  const down = change.kind === 'swap' ? turnedDownAt(post.sentences[k - 1]) : null;
  const isDown = down !== null && change.gone !== null && thingAt(post, down)?.key === thingAt(post, change.gone)?.key;
  const until = change.kind === 'swap' ? change.until : undefined;
  const span = {
    from: (isDown ? post.sentences[k - 1] : null)?.from ?? sentence.from,
    to: until ?? sentence.to,
  };
  const isOfLast = change.kind === 'out' || (change.kind === 'swap' && change.its === true);
  const it = change.gone === null ? (isOfLast ? spokenOf(post, sentence) : undefined) : thingAt(post, change.gone);
  const before = post.last;
  const key =
    it?.key ??
    (change.kind === 'swap' && change.gone === null && before && k - before.sentence <= 2 ? before.key : null);
  if (key === null) return;
  const all = post.said.filter((one) => one.key === key && !post.gone.has(one.amount));
  const isNone = change.kind === 'out' && change.none === true;
  const earlier = all.filter((one) => one.amount.from < sentence.to || (isNone && one.thing === it?.thing));
  const isAhead = earlier.length === 0 || (change.kind === 'swap' && earlier.every((one) => one.thing === it?.thing));
  const had = isAhead && isOfWhatFollows(post, change, sentence) ? all : earlier;
  const label = it?.thing.named.text ?? had[0]?.thing.named.text ?? '';
  if (change.kind === 'fewer') {
    const less = post.items.find((item): item is Amount => isAmount(item) && item.from === change.comes);
    const [first] = had;
    if (!less || !first || first.amount === less) return;
    const quantity = alike(less.quantity, first.amount.quantity);
    if (quantity.dim !== first.amount.quantity.dim || quantity.value >= first.amount.quantity.value) return;
    post.instead.set(first.amount, { ...first.amount, quantity, same: null });
    lessen(post, less.from, first.amount.quantity, quantity);
    post.gone.add(less);
    post.back.push({
      text: `I took ${written(less.quantity)} of ${label}, not ${written(first.amount.quantity)}, as the post says that there was no more.`,
      gone: figures([first]),
      ...span,
    });
    return;
  }
  if (change.kind === 'part') {
    const comes = change.comes === null ? null : thingAt(post, change.comes);
    // "lye -> water + half the aloe": what goes where
    if (comes && isOfLye(comes.key) !== isOfLye(key)) return;
    // the list behind it has both
    const isListed = comes !== null && post.said.some((one) => one.key === comes.key && one.thing !== comes.thing);
    if (had.length > 0 || (all.length > 0 && !isListed)) post.unclear ??= label;
    return;
  }
  if (change.kind === 'out') {
    const [first] = had;
    if (!first) return;
    // "too soft, so I've dropped the water since": less of it
    if (first.thing.named.meaning.kind === 'water' && /\b(?:drop(?:ped)?|cut) /.test(sentence.text)) return;
    // "forgot the castor, 40 g": not weighed before, and weighed now
    if (change.gone !== null && !isNone && had.some((one) => one.thing === it?.thing)) return;
    // "no palm, 150 g more olive instead": not said to be put in, it would be passed over as a difference
    const isMore = (/ more @/.test(sentence.text) && !more.test(sentence.text)) || sharedOut.test(sentence.text);
    const came = isMore ? label : isFatKey(key) ? cameFor(post, k, key) : null;
    if (came) post.unclear ??= came;
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
  if (comes?.key === key && had.length > 0) {
    // "900 g suet, no wait, I can't get suet, so it's beef tallow, 900 g": to the reader one fat
    const [first, ...again] = all.filter((one) => one.amount.from < sentence.to + nearby);
    if (!first || again.some((one) => !isSame(one.amount.quantity, first.amount.quantity))) return;
    for (const one of again) drop(post, one);
    if (comes.thing !== first.thing) post.gone.add(comes.thing);
    if (it && it.thing !== first.thing) post.gone.add(it.thing);
    post.instead.set(first.thing, { ...first.thing, named: comes.thing.named });
    const text = `I took ${comes.thing.named.text} in the place of ${label}, as the post says.`;
    post.back.push({ text, gone: figures(again), ...span });
    return;
  }
  if (!comes || comes.key === key) return;
  // "110 g water -> lye goes in here"
  if (isOfLye(comes.key) !== isOfLye(key)) return;
  const weight = post.said.find((one) => one.thing === comes.thing);
  // "the same amount of lard"
  const own = weight?.amount.quantity.dim === 'parts' ? undefined : weight;
  if (weight && !own) post.gone.add(weight.amount);
  const outside = had.filter((one) => one.thing !== it?.thing);
  const other = post.said.filter((one) => isOf(comes.key)(one) && one !== own);
  if (change.its && !(isFatKey(key) && isFatKey(comes.key))) return;
  if (change.gone === null || change.its) {
    putInPlace(post, had, comes.thing, own, sentence);
    return;
  }
  if (had.length === 0) {
    // "subbed lard for palm": what was weighed before goes
    const turned = change.eitherWay && other.length > 0 && other.every((one) => one.amount.from < sentence.from);
    if (turned) applyChange(post, { ...change, gone: change.comes, comes: change.gone, eitherWay: false }, k);
    // "instead of water I froze 230 g of milk": it has no weight of its own
    else if (it && own) post.gone.add(it.thing);
    // "subbed lard for the palm", and a list of palm behind it: some say it the other way round
    else if (change.eitherWay && other.length > 0 && subbed.test(sentence.text))
      post.unclear ??= comes.thing.named.text;
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
  const taken = own ?? row;
  const amount = taken ? written(taken.amount.quantity) : '';
  post.back.push({
    text: `I took ${comes.thing.named.text} (${amount}) in the place of ${label}, as the post says.`,
    gone: own ? figures(had) : figures(had.filter((one) => one !== row)),
    ...span,
  });
}

/** "I left the palm out, there's lard in there now": what may have come for it, and nobody weighed it. */
function cameFor(post: Post, k: number, key: string): string | null {
  for (const sentence of post.sentences.slice(k, k + 2)) {
    if (!putting.test(sentence.text) || notYet.test(sentence.text)) continue;
    for (const item of post.items) {
      if (!isThing(item) || item.from < sentence.from || item.from >= sentence.to) continue;
      const own = keyOf(item.named.meaning, post.alkalis);
      if (own === null || !isFatKey(own) || own === key || post.said.some((one) => one.key === own)) continue;
      return item.named.text;
    }
  }
  return null;
}
/** "I left the castor out and split it between the olive and the palm." */
const sharedOut =
  /\b(?:(?:the|that) same (?:amount|weight|quantity)|split|spread|shared|divided|distributed|made (?:it |that )?up)\b[^.;]*@/;
const more = /\b(?:added|add|put|poured|tipped|melted|threw|weighed|went|stirred|mixed|used|took) [^.;]*# more @/;
const putting =
  /\b(?:in there|in it|went in|goes in|put|took|take|used|use|using|adding|added|instead|place|topped|filled|made up|stood in|stands in|do(?:es)? the job)\b/;
const notYet =
  /\?|\b(?:next|would|could|should|can|if|never|dont|didnt|wont|cant|not|no|she|he|they|people|sister|mother|friend|neighbour|usually|always|last (?:time|batch|year)|some ?day)\b/;

/** A whole recipe under "EDIT:", or beside which the post tells what was once: the other does not count. */
function settleWhole(post: Post): void {
  if (!post.said.some(({ headed, stance }) => headed || stance === 'once')) return;
  const left = post.said.filter((one) => !post.gone.has(one.amount) && isPart(one));
  const fats = (list: readonly Said[]): readonly Said[] => list.filter(isFat);
  const isWhole = (list: readonly Said[], least: number): boolean => fats(list).length >= least && list.some(isAlkali);
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
  const asks =
    fats(standing).length > 1 &&
    (!left.some(isAlkali) || (!standing.some(isAlkali) && post.sentences.some(({ text }) => asking.test(text))));
  // "Old: olive 500, palm 300. New: olive 500, lard 300", whose lye is asked for
  if (asks && fats(once).length > 1) dropAll(post, once, standing);
  else if ((asks || isWhole(standing, 1)) && lone.length > 0) dropAll(post, lone, standing);
}

const corrected = 'as the post corrects itself';

const byOthers = 'which somebody else says';

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
    const away = list.filter((one) => one !== counts && differs(one.amount.quantity, counts.amount.quantity));
    const [first] = away;
    if (!first) continue;
    const { amount } = counts;
    const place = first.amount.from < amount.from && !first.pointing ? first : null;
    for (const one of list) {
      if (one === counts ? !place : one === place) continue;
      if (one !== counts && !away.includes(one)) continue;
      drop(post, one);
    }
    lessen(post, amount.from, first.amount.quantity, alike(amount.quantity, first.amount.quantity));
    if (place) {
      if (isOther(place.telling)) for (const one of place.beside) post.gone.add(one);
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

/** "It says 138.6 g, so I took 138": in one unit, each figure is meant as it stands. */
const differs = (a: Quantity, b: Quantity): boolean =>
  !isSame(a, b) ||
  ((a.dim === 'bare' || b.dim === 'bare' || a.unit?.id === b.unit?.id) &&
    Math.abs(alike(a, b).value - alike(b, a).value) > 1e-6 * Math.abs(b.value));

/** Tokens between what a book and what a person says, in one breath. */
const nearSayings = 12;

/** The figure of several that counts; null where all are alike or nobody knows. */
function countingOf(list: readonly Said[]): Said | null {
  const [first] = list;
  if (!first || list.length < 2 || list.every(({ stance }) => stance === null)) return null;
  if (!list.some((one) => differs(one.amount.quantity, first.amount.quantity))) return null;
  const right = list.findLast(({ stance }) => stance === 'right');
  if (right) {
    const behind = list.slice(list.indexOf(right) + 1);
    return behind.some((one) => differs(one.amount.quantity, right.amount.quantity)) ? null : right;
  }
  const standing = list.filter(({ stance }) => stance !== 'once');
  const [stays] = standing;
  const agreed = stays && !standing.some((one) => differs(one.amount.quantity, stays.amount.quantity));
  // "the book says 300 g but I wrote 200 g"
  if (agreed) return stays.stance === 'told' && list.at(-1)?.stance === 'once' ? null : stays;
  const now = standing.filter(({ stance }) => stance === 'now');
  const [lone] = now;
  const others = standing.filter(({ stance }) => stance !== 'now');
  const giveWay = others.every(
    (one) => one.stance === 'told' || one.stance === 'others' || (lone && one.amount.from < lone.amount.from),
  );
  // "pls verify NaOH. The thermometer says 41 now"
  const isOdd =
    lone?.amount.quantity.dim === 'bare' &&
    lone.key !== 'superfat' &&
    !others.every((one) => isLikely(lone.amount.quantity, one.amount.quantity));
  if (now.length === 1 && lone && giveWay) return isOdd ? null : lone;
  // "Hanna says she would take 230 g": what somebody else says gives way to the one that the writer has
  const own = now.length === 0 ? standing.filter(({ stance }) => stance !== 'others') : [];
  const [mine] = own;
  // "the book says 125 g and my neighbour 140 g": neither is the writer's
  const isBeside = ({ amount }: Said): boolean => Math.abs(amount.from - (mine?.amount.from ?? 0)) <= nearSayings;
  if (mine?.stance === 'told' && list.some((one) => one.stance === 'others' && isBeside(one))) return null;
  return mine && own.every((one) => isSame(one.amount.quantity, mine.amount.quantity)) ? mine : null;
}

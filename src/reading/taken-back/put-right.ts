/**
 * A figure that its writer put right in the same breath: "60 g, no wait, 66 g NaOH", "60 g NaOH, sorry, I mean 66",
 * "66 g, not 60", "66 g (was 60 g)". The one that stands counts, and the answer says so.
 */
import { withUnit } from '../columns/columns.ts';
import type { Item } from '../rows/items.ts';
import type { Quantity } from '../words/quantities.ts';
import { isAny, isStop, wordAt } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';

/** Something that the post takes back. */
export interface PutRight {
  /** What was made of it, as the answer says it. */
  readonly text: string;
  /** Figures that count no longer. */
  readonly gone: readonly Quantity[];
  /** Tokens in which it is said. */
  readonly from: number;
  readonly to: number;
  /** All that is told there of what was planned or had before is settled by it. */
  readonly settles?: true;
  /** From here on it tells what a weight is reckoned from that nobody noted: "no idea how much lye it was, but …". */
  readonly reckons?: number;
}

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

/** Words that take a figure back, in a few languages. */
const takesBack =
  /\b(?:(?:no|oh) wait|wait no|wait|hang on|hold on|sorry|i mean|i meant|i mean to say|but meant|(?<!\b(?:i|we|you) )make (?:that|it)|scratch that|strike that|correction|misprint|typo|oops|whoops|or rather|should be|should have been|should read|(?:typed|wrote|entered|put|got|had|noted) (?:that|it|this) (?:down )?wrong|(?:thats|that is|was|is) wrong|mistyped|miswrote|changed to|nein|quatsch|pardon|plutot|perdon|mejor dicho)\b|^(?:no|nope|nah)$|^(?:- ?>|= ?>|> ?>)$/;
/** All that may stand between the two figures where the second counts. */
const beside: ReadonlySet<string> = new Set(
  'typed wrote entered put got had noted that this it down wrong wrongly mistyped miswrote thats no nope nah but and oh ah argh wait sorry i mean meant to say make that thats it its is was should have been be read changed scratch strike correction misprint typo mistake a read reads oops whoops or rather actually ehm um er uh hang hold on my bad nein quatsch pardon plutot perdon mejor dicho , . ! ? - > = – — … : ('.split(
    ' ',
  ),
);
/** All that stands between the two where the first counts. */
const outdates =
  /^(?:of (?:it|that|this|them) )?(?:(?:that|which|thats|that's) (?:is |was |went )?(?:really |actually |now )?(?:in (?:there|it|the (?:pot|soap|jug|mix|water))|in) |went in |in (?:the end|fact|truth|reality) |really |actually |all told )?[,(:;*-]? ?(?:and |so )?(?:not|instead of|rather than|up from|down from|was|it was|formerly|originally|before|before it was|before :|used to be|previously|old|old :|i (?:first )?(?:wrote|said|had|typed))(?: (?:the|my))?$/;

/** What its writer doubts and answers: "250 g of lard? no - I used tallow in the end". */
const selfAnswered =
  /^(?:[?…]|\. \. \.) ?(?:no|nope|nah|nein)(?: [-–—,.!])? (?:(?:it|that) (?:was|is)|(?:i|we)(?: (?:just|really|actually))* (?:used|took|put in|went with|melted|weighed))(?: (?:just|only|the|plain|some|my))*$/;

/** What was done in fact, in a bracket behind what the list says: "330 g (used 290 g)". */
const inFact =
  /^[([] (?:(?:(?:i|we|but|there|had|was|were|have|got|just) )*only(?: (?:had|have|got|was|were|there|found|left))*$|(?:(?:no|nope|nah|i|we|ive|but|so|only|just|really|actually|[!,-]) )*(?:used|use|took|take|put in|poured|weighed|went with|need|mine)(?: (?:only|just|about|is|was|:))?$)/;

/** The bracket at `from` says what was done: the figure at `to` alone, or "300 g of lard instead". */
function tellsFact(tokens: readonly Token[], from: number, to: number, words: readonly string[]): boolean {
  if (!isSign(tokens[from], '([') || tokens[to]?.t !== 'quantity' || !inFact.test(words.join(' '))) return false;
  if (isSign(tokens[to + 1], ')]') || isSoThen(tokens, to + 1)) return true;
  const name = isOf(tokens[to + 1]) ? to + 2 : to + 1;
  const instead = tokens[name + 1];
  if (tokens[name]?.t !== 'name' || !(instead?.t === 'word' && instead.text === 'instead')) return false;
  return isSign(tokens[name + 2], ')],.;!');
}

/** "(only had 350, so it's that)". */
function isSoThen(tokens: readonly Token[], from: number): boolean {
  let at = isSign(tokens[from], ',') ? from + 1 : from;
  while (at - from <= mostBehind && soThen.has(wordAt(tokens, at))) at++;
  return at > from && isSign(tokens[at], ')]');
}
const mostBehind = 7;
const soThen: ReadonlySet<string> = new Set('so its it is was that left in the there then all had i of now'.split(' '));

const isOf = (token: Token | undefined): boolean => token?.t === 'word' && token.text === 'of';

const noes: ReadonlySet<string> = new Set(['no', 'nein', 'non']);
/** "No" is a name to the reader: it says that something is left out. */
const isNo = (token: Token): token is Extract<Token, { t: 'name' }> =>
  token.t === 'name' && token.text.length <= 4 && noes.has(token.text.toLowerCase());

const isSign = (token: Token | undefined, signs: string): boolean => token?.t === 'sign' && signs.includes(token.text);

const most = 10;

/** The words between two places; null where more than talk stands there. */
function wordsBetween(tokens: readonly Token[], from: number, to: number): string[] | null {
  if (to - from > most || to <= from) return null;
  const words: string[] = [];
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (!token || (token.t !== 'word' && token.t !== 'sign' && !isNo(token))) return null;
    words.push(token.text.toLowerCase());
  }
  return words;
}

const inTruth = /^(?:really|actually|in (?:fact|truth|reality)|net)\b/;

const doing =
  /^(?:weighed|put|poured|used|took|tipped|added|wrote|typed|measured|bought|went|dissolved|threw|made|read)$/;
/** "Nearly weighed 411 g instead of 141": nobody did; "nearly 411 g" is a weight. */
function isNearly(tokens: readonly Token[], figure: number): boolean {
  for (let k = figure - 2; k >= 0 && figure - k < 7 && !isStop(tokens[k]); k--)
    if (/^(?:nearly|almost)$/.test(wordAt(tokens, k)) && doing.test(wordAt(tokens, k + 1))) return true;
  return false;
}

/** Which of two figures counts by what stands between them; null where nothing takes one back. */
function stands(tokens: readonly Token[], from: number, to: number): 'first' | 'second' | null {
  const only = to === from + 1 ? tokens[from] : undefined;
  if (only?.t === 'sign' && only.text !== '>') return null;
  const words = wordsBetween(tokens, from, to);
  // commas alone take nothing back
  if (!words?.some((word) => word === '>' || /[a-z]/.test(word))) return null;
  // "No. 7 of 12"
  if (words.at(-1) === '.' && words.at(-2) === 'no') return null;
  // "my 163 g of lye was 138 g really"
  if (words.join(' ') === 'was' && inTruth.test(`${wordAt(tokens, to + 1)} ${wordAt(tokens, to + 2)}`)) return 'second';
  if (outdates.test(words.join(' '))) return isNearly(tokens, from - 1) ? 'second' : 'first';
  if (tellsFact(tokens, from, to, words) || selfAnswered.test(words.join(' '))) return 'second';
  if (!words.every((word) => beside.has(word))) return null;
  return takesBack.test(words.filter((word) => /[\w>=-]/.test(word)).join(' ')) ? 'second' : null;
}

const rightedBy =
  /^(?:[-,;–—] )?(?:but|its|it is|it was|thats|that is|rather|it should be)(?: (?:really|actually|only|just|in fact|rather))*$/;

/** "Never 1400, it's 140 g", "not 1400 but 140 g". */
const isDeniedFor = (tokens: readonly Token[], { from, to }: Item, next: Item): boolean =>
  /^(?:not|never|isnt|wasnt)$/.test(wordBefore(tokens, from)) &&
  rightedBy.test(wordsBetween(tokens, to, next.from)?.join(' ') ?? '');

const weighs = ({ dim }: Quantity): boolean => dim === 'mass' || dim === 'volume' || dim === 'bare';

const isPair = ({ quantity: a }: Amount, { quantity: b }: Amount): boolean =>
  (weighs(a) && weighs(b) && (a.dim === b.dim || a.dim === 'bare' || b.dim === 'bare')) ||
  (a.dim === 'percent' && (b.dim === 'percent' || b.dim === 'bare'));

/** A figure as its neighbour has it, where it says no unit of its own. */
export function alike(quantity: Quantity, other: Quantity): Quantity {
  if (quantity.dim !== 'bare' || other.dim === 'bare') return quantity;
  if (other.unit) return withUnit(quantity, other.unit.id);
  return other.dim === 'percent' ? { ...quantity, dim: 'percent', value: quantity.value / 100, other: null } : quantity;
}

/** So much in the unit of a quantity. */
export function withValue(of: Quantity, value: number): Quantity {
  const text = `${Number((value / (of.unit?.factor ?? 1)).toPrecision(4))} ${of.unit?.id ?? ''}`.trim();
  return { ...of, value, other: null, text, numbers: [] };
}

/** A weight that is another one now, in the figures of the post that it stands in. */
export const reweighed = (weight: Figure, value: number): Figure => ({
  ...weight,
  quantity: { ...withValue(weight.quantity, value), numbers: weight.quantity.numbers },
});

/** A figure that puts another right is seldom this many times larger or smaller. */
const mostChanged = 2.5;

/** "A parrot that is 31" puts no 180 g right. */
export function isLikely(now: Quantity, before: Quantity): boolean {
  const ratio = alike(now, before).value / before.value;
  return ratio <= mostChanged && ratio >= 1 / mostChanged;
}

/** "lard 500 g, coconut 250 g -> 750": behind an arrow stands what comes of it, and no other figure for it. */
const isOutcome = (tokens: readonly Token[], last: Amount, item: Amount): boolean =>
  item.from - last.to === 2 && isSign(tokens[item.from - 1], '>') && !isLikely(item.quantity, last.quantity);

/** The "no" of "no wait, 66 g", "wait, no, 66 g" or "no, 66 g". */
function isNoBetween(item: Thing, last: Item | undefined, next: Item | undefined, tokens: readonly Token[]): boolean {
  const token = tokens[item.from];
  // "tallow, no other oils"
  const isNext =
    next?.kind === 'amount' ||
    (next?.kind === 'thing' && next.named.meaning.kind !== 'role' && behindOf(tokens, next) > item.to);
  return (
    isNext &&
    last !== undefined &&
    token !== undefined &&
    isNo(token) &&
    stands(tokens, last.to, behindOf(tokens, next)) === 'second'
  );
}

/** "100 g castor? No, …": what stands there in its place, or whether anything does, was not heard. */
function isNoToRow({ from, to }: Item, kept: readonly Item[], tokens: readonly Token[]): boolean {
  const [before, last] = [kept.at(-2), kept.at(-1)];
  const token = tokens[from];
  if (!token || !isNo(token) || last?.to !== from - 1 || !isSign(tokens[from - 1], '?')) return false;
  return isSign(tokens[to], ',-–—!…') && pairOf(before, last, tokens) !== null;
}

/** Where an item begins, with the "of" before it. */
function behindOf(tokens: readonly Token[], { from }: Item): number {
  return isOf(tokens[from - 1]) ? from - 1 : from;
}

/** "Milk 330 g, no water at all", "no castor this year": what the post names to say that there is none, and nowhere else. */
function isWithout(item: Thing, items: readonly Item[], tokens: readonly Token[]): boolean {
  const before = item.from > 0 ? tokens[item.from - 1] : undefined;
  const says = before?.t === 'word' || before?.t === 'name' ? before.text.toLowerCase() : '';
  if (says !== 'no' && says !== 'without' && says !== 'zero') return false;
  if (!mayLack.has(item.named.meaning.kind) || tokens[item.to]?.t === 'quantity') return false;
  let weighed = 0;
  for (const one of items) {
    if (one.kind === 'amount') weighed++;
    else if (one !== item && sameThing(one, item) && isBesideFigure(one, tokens)) return false;
  }
  return weighed >= leastWeighed;
}

const isBesideFigure = ({ from, to }: Thing, tokens: readonly Token[]): boolean =>
  [from - 2, from - 1, to, to + 1].some((k) => tokens[k]?.t === 'quantity');

/** Amounts of a post that is more than an answer or a correction, at the least. */
const leastWeighed = 3;

const mayLack: ReadonlySet<string> = new Set(['water', 'ice', 'liquid', 'fat', 'acid', 'additive']);

const sameThing = (a: Thing, b: Thing): boolean =>
  a.named.meaning.kind === b.named.meaning.kind && a.named.meaning.id === b.named.meaning.id;

/** The same, or an alkali whose kind is not said: "the lye was 136, not 139", of a row of NaOH. */
const isOne = (a: Thing, b: Thing): boolean =>
  sameThing(a, b) || ([a, b].every(isLye) && [a, b].some(({ named }) => named.meaning.id === 'unsaid'));

/** A figure as it was written, without the full stop behind its unit. */
export const written = ({ text }: Quantity): string => text.replace(/\.$/, '');

const ofFigures = (stays: Quantity, gone: Quantity, from: number, to: number): PutRight => ({
  text: `I took ${written(stays)}, not ${written(gone)}, as the post corrects itself.`,
  gone: [gone],
  from,
  to,
});

/** "went from 280 to 180 g": the second of what looks like a range. */
function changedFrom(item: Amount, tokens: readonly Token[]): Amount | null {
  const { quantity } = item;
  if (quantity.upTo === null || item.from === 0) return null;
  const before = tokens[item.from - 1];
  if (before?.t !== 'word' || before.text !== 'from') return null;
  const moved = tokens
    .slice(Math.max(0, item.from - 6), item.from - 1)
    .some(
      (token) =>
        token.t === 'word' &&
        /^(?:chang|went|gone|go|reduc|rais|increas|lower|cut|correct|dropp|bump|mov|(?:up|down)$)/.test(token.text),
    );
  return moved || quantity.upTo < quantity.value
    ? { ...item, quantity: { ...quantity, value: quantity.upTo, upTo: null } }
    : null;
}

/** Nothing, or "of", between a figure and a name. */
function isBeside(tokens: readonly Token[], from: number, to: number): boolean {
  const between = tokens[from];
  if (to === from) return true;
  const article = tokens[from + 1];
  if (to === from + 2 && isOf(between)) return article?.t === 'word' && /^(?:the|my)$/.test(article.text);
  return to === from + 1 && (between?.t === 'word' ? between.sort === 'filler' : isSign(between, ':='));
}

const nots: ReadonlySet<string> = new Set(['not', 'didnt', 'dont', 'never', 'wont', 'havent']);
const verbs: ReadonlySet<string> = new Set('use used add added put take include included have'.split(' '));

function wordBefore(tokens: readonly Token[], at: number): string {
  const token = at > 0 ? tokens[at - 1] : undefined;
  return token?.t === 'word' ? token.text : '';
}

/** "70 g lye, not 65 g KOH", "I did not use 100 g of milk": what does not go in, unless "but" follows. */
function isDenied(tokens: readonly Token[], { from, to }: Item): boolean {
  const word = wordBefore(tokens, from);
  if (word !== 'not' && !(verbs.has(word) && nots.has(wordBefore(tokens, from - 1)))) return false;
  const but = tokens.findIndex((token, k) => k >= to && k < to + 5 && token.t === 'word' && token.text === 'but');
  // "not 300 g coconut but 200 g coconut"
  return but < 0 || tokens[but + 1]?.t === 'quantity';
}

/** "93, not 103", "read 93 for 103": the second of two figures counts no longer. */
const outdatesNext = (tokens: readonly Token[], item: Amount, next: Amount): boolean =>
  stands(tokens, item.to, next.from) === 'first' ||
  (wordBefore(tokens, item.from) === 'read' && wordsBetween(tokens, item.to, next.from)?.join(' ') === 'for');

/** An amount of the same weight. */
const isSaid = (one: Item, said: Amount): boolean =>
  one.kind === 'amount' && weighs(one.quantity) && weighsAs(said, one);

/** Where the one figure of `kept` stands that weighs as much; -1 if none or several do. */
function onlyRowOf(kept: readonly Item[], said: Amount): number {
  const isIt = (one: Item): boolean => isSaid(one, said);
  const found = kept.findIndex(isIt);
  return found === kept.findLastIndex(isIt) ? found : -1;
}

/** "Water 300 g. Sorry, 128 not 130": where the one figure of `kept` stands that was 130; -1 if none does. */
function saidBefore(
  kept: readonly Item[],
  item: Amount,
  told: readonly Item[],
  at: number,
  tokens: readonly Token[],
): number {
  const [last, next, behind] = [kept.at(-1), told[at + 1], told[at + 2]];
  if (next?.kind !== 'amount' || !isPair(item, next) || !outdatesNext(tokens, item, next)) return -1;
  // "NaOH 128 not 130", "128 not 130 g of NaOH"
  if (last?.kind === 'thing' && isBeside(tokens, last.to, item.from)) return -1;
  if (behind?.kind === 'thing' && isBeside(tokens, next.to, behind.from)) return -1;
  return onlyRowOf(kept, next);
}

/** Where the one figure of an earlier row of the same thing stands that weighs as much as `gone`; -1 if none does. */
function rowOf(kept: readonly Item[], thing: Thing, gone: Amount, tokens: readonly Token[]): number {
  return kept.slice(0, -2).findIndex((one, k) => {
    const pair = [pairOf(kept[k - 1], one, tokens), pairOf(one, kept[k + 1], tokens)].find(
      (row) => row?.amount === one,
    );
    return pair != null && one.kind === 'amount' && isOne(pair.thing, thing) && weighsAs(gone, one);
  });
}

const correcting = /^(?:correct(?:ion|ed|ing)?|edit(?:ed)?|erratum|typo|sorry|oops|whoops|mistake|meant|mean)$/;

/** "Correction: 77, not 78", where nothing was 78: nobody can know what is 77. */
function isUnplaced(told: readonly Item[], k: number, item: Amount, next: Amount, tokens: readonly Token[]): boolean {
  if (!isPair(item, next) || !outdatesNext(tokens, item, next)) return false;
  const behind = told[k + 2];
  const isIt = (one: Item, at: number): boolean => at !== k + 1 && isSaid(one, next);
  if (told.some(isIt) && told.findIndex(isIt) === told.findLastIndex(isIt)) return false;
  if (behind?.kind === 'thing' && isBeside(tokens, next.to, behind.from)) return false;
  let at = item.from - 1;
  let corrects = false;
  for (; at >= 0 && !isStop(tokens[at]); at--) {
    if (tokens[at]?.t === 'name' || tokens[at]?.t === 'quantity') return false;
    corrects ||= correcting.test(wordAt(tokens, at));
  }
  return corrects;
}

/** "The olive is 450 g, not 600", the last of `kept`, where the list above says 600: that row is put right. */
function rightOver(
  kept: Item[],
  thing: Thing,
  stays: Amount,
  gone: Amount,
  tokens: readonly Token[],
  back: PutRight[],
): boolean {
  const earlier = rowOf(kept, thing, gone, tokens);
  const row = kept[earlier];
  if (row?.kind !== 'amount') return false;
  kept.splice(-2, 2);
  kept.splice(earlier, 1, { ...row, quantity: alike(stays.quantity, row.quantity), same: null });
  const said = ofFigures(stays.quantity, gone.quantity, Math.min(stays.from, thing.from), gone.to);
  back.push({ ...said, gone: [...said.gone, row.quantity] });
  return true;
}

/** "The tallow is 710 g, not 700", where the 700 g are those of the lard: nobody knows which of the two is meant. */
const isOfOther = (kept: readonly Item[], thing: Thing, gone: Amount, tokens: readonly Token[]): boolean =>
  wordBefore(tokens, thing.from) === 'the' &&
  !kept.slice(0, -2).some((item) => item.kind === 'thing' && isOne(item, thing)) &&
  kept.slice(0, -2).some((item) => item.kind === 'amount' && weighsAs(gone, item));

/** "250 g (should have been 300, but the jar was empty)": what was wished for. */
function isWished(tokens: readonly Token[], last: Amount, item: Amount): boolean {
  const between = wordsBetween(tokens, last.to, item.from)?.join(' ') ?? '';
  const at = isSign(tokens[item.to], ',') ? item.to + 1 : item.to;
  return /\bshould (?:have been|be)$/.test(between) && wordAt(tokens, at) === 'but';
}

/** "Lye 103 g … 103 is a misprint": where the rows stand whose figure the last of `kept` says again by itself. */
function rowsSaidAgain(kept: readonly Item[], tokens: readonly Token[]): readonly number[] {
  const [before, last] = [kept.at(-2), kept.at(-1)];
  if (last?.kind !== 'amount' || (before?.kind === 'thing' && isBeside(tokens, before.to, last.from))) return [];
  return kept.slice(0, -1).flatMap((one, k) => (isSaid(one, last) ? [k] : []));
}

/** The next item is the figure of this one. */
const isOwn = (item: Item, next: Item | undefined, tokens: readonly Token[]): boolean =>
  next?.kind === 'amount' && isBeside(tokens, item.to, next.from);

/** "120 g of coconut, no, sorry, of goat milk", "lard, sorry, tallow 300 g": the name that counts no longer. */
function nameTakenBack(
  kept: readonly Item[],
  item: Exclude<Item, Amount>,
  next: Item | undefined,
  tokens: readonly Token[],
): PutRight | null {
  const [before, last] = [kept.at(-2), kept.at(-1)];
  if (item.kind !== 'thing' || last?.kind !== 'thing' || sameThing(last, item)) return null;
  if (item.named.meaning.kind === 'role' || last.named.meaning.kind === 'role') return null;
  if ((before?.kind === 'amount' && isBeside(tokens, before.to, last.from)) === isOwn(item, next, tokens)) return null;
  // "110 g water -> lye goes in here"
  if (isSign(tokens[item.from - 1], '>') && isLye(item) !== isLye(last)) return null;
  if (stands(tokens, last.to, behindOf(tokens, item)) !== 'second') return null;
  return ofNames(item, last);
}

const isLye = ({ named: { meaning } }: Thing): boolean => meaning.kind === 'alkali' || meaning.kind === 'stock';

const ofNames = (stays: Thing, gone: Thing): PutRight => ({
  text: `I took ${stays.named.text}, not ${gone.named.text}, as the post corrects itself.`,
  gone: [],
  from: gone.from,
  to: stays.to,
});

/** A name and the figure beside it. */
interface Pair {
  readonly thing: Thing;
  readonly amount: Amount;
}

function pairOf(first: Item | undefined, second: Item | undefined, tokens: readonly Token[]): Pair | null {
  if (!first || !second || !isBeside(tokens, first.to, second.from)) return null;
  if (first.kind === 'thing' && second.kind === 'amount') return { thing: first, amount: second };
  return first.kind === 'amount' && second.kind === 'thing' ? { thing: second, amount: first } : null;
}

/** A name, and its figure behind it. */
const isRow = (first: Item | undefined, second: Item | undefined, tokens: readonly Token[]): boolean =>
  first?.kind === 'thing' && isOwn(first, second, tokens);

/** Words that take more back than they add: not "oh wait, 200 g palm". */
const another = /\b(?:no|nope|nah|nein|mean|meant|make|scratch|strike|rather|correction|should)\b/;

/** "350 g argan, no sorry, 350 g arachis", "argan 350 g. Sorry, that's arachis": another thing in place of the last. */
function rowTakenBack(
  kept: readonly Item[],
  item: Item,
  next: Item | undefined,
  behind: Item | undefined,
  tokens: readonly Token[],
): { said: PutRight; renamed: Pair | null } | null {
  const last = kept.at(-1);
  // nothing between the two, or the end of a line: no word that takes anything back
  if (!last || item.from <= last.to || tokens[last.to]?.t === 'line') return null;
  const gone = pairOf(kept.at(-2), last, tokens);
  if (!gone || !mayBeAnother.has(gone.thing.named.meaning.kind)) return null;
  const own = pairOf(item, next, tokens);
  const thing = own?.thing ?? (item.kind === 'thing' ? item : null);
  if (thing?.named.meaning.kind !== gone.thing.named.meaning.kind || sameThing(thing, gone.thing)) return null;
  // "300 g lard, 200 g coconut. I meant 400 g lard": another weight of a row further up
  if (kept.some((one) => one.kind === 'thing' && sameThing(one, thing))) return null;
  const from = behindOf(tokens, item);
  if (stands(tokens, last.to, from) !== 'second') return null;
  if (own) {
    // "350 g argan, no sorry, arachis 350 g coconut"
    const isTheirs =
      own.amount === next
        ? behind?.kind === 'thing' && pairOf(next, behind, tokens) !== null
        : own.amount.quantity.text.endsWith('.') && next !== undefined && isRow(next, behind, tokens);
    const isSame = weighsAs(own.amount, gone.amount);
    if (isTheirs || !isPair(own.amount, gone.amount)) return null;
    const isFact = isSign(tokens[last.to], '([');
    if (!isSame && !isFact && !another.test(wordsBetween(tokens, last.to, from)?.join(' ') ?? '')) return null;
    return { said: { ...ofNames(own.thing, gone.thing), gone: [gone.amount.quantity] }, renamed: null };
  }
  return last.kind === 'amount' ? { said: ofNames(thing, gone.thing), renamed: { ...gone, thing } } : null;
}

const mayBeAnother: ReadonlySet<string> = new Set(['fat', 'liquid', 'unheld']);

const weighsAs = ({ quantity: a }: Amount, { quantity: b }: Amount): boolean =>
  Math.abs(alike(a, b).value - alike(b, a).value) <= 1e-6 * Math.abs(b.value);

/** "350 g lard. No, tallow! 350 g": its figure once more, alone or with its own name, which nothing else takes. */
function saidAgain(
  amount: Item | undefined,
  thing: Thing,
  [next, behind]: readonly Item[],
  tokens: readonly Token[],
): { readonly amount: Amount; readonly items: number } | null {
  if (amount?.kind !== 'amount' || next?.kind !== 'amount' || !weighsAs(amount, next)) return null;
  const own = pairOf(next, behind, tokens);
  if (own && !sameThing(own.thing, thing)) return null;
  return { amount: next, items: own ? 2 : 1 };
}

/** A word stands between two items, or what else may take something back. */
function speaksBetween(tokens: readonly Token[], before: Item | undefined, item: Item): boolean {
  for (let k = before?.to ?? item.from; k < item.from; k++) {
    const token = tokens[k];
    if (token && (token.t === 'word' || isNo(token) || isSign(token, '>'))) return true;
  }
  return false;
}

/** "Palm 250 g (used 200 g lard)": in its place, or besides; nobody can know. */
function isEither(last: Item | undefined, item: Amount, named: Thing | null, tokens: readonly Token[]): boolean {
  if (last?.kind !== 'amount' || !mayBeAnother.has(named?.named.meaning.kind ?? '')) return false;
  return isSign(tokens[last.to], '([') && inFact.test(wordsBetween(tokens, last.to, item.from)?.join(' ') ?? '');
}

/** "Beeswax, no, not beeswax, I mean castor": the name that is denied once more says nothing but "no wait". */
function deniedAgain(
  items: readonly Item[],
  tokens: readonly Token[],
): { readonly items: readonly Item[]; readonly tokens: readonly Token[] } {
  let said: Token[] | null = null;
  const left = items.filter((item, k) => {
    if (item.kind !== 'thing' || wordBefore(tokens, item.from) !== 'not') return true;
    const before = items.slice(Math.max(0, k - 3), k).findLast((one) => one.kind === 'thing' && !isNoOf(one, tokens));
    const next = items[k + 1];
    const isAgain = before?.kind === 'thing' && sameThing(before, item) && !isBesideFigure(item, tokens);
    if (!isAgain || next?.kind !== 'thing' || sameThing(next, item)) return true;
    said ??= [...tokens];
    for (let at = item.from - 1; at < item.to; at++) {
      const token = tokens[at];
      if (token) said[at] = asFiller(token, at < item.from ? 'no' : 'wait');
    }
    return false;
  });
  return { items: left, tokens: said ?? tokens };
}

const isNoOf = ({ from }: Thing, tokens: readonly Token[]): boolean => {
  const token = tokens[from];
  return token !== undefined && isNo(token);
};

/** The items without what was taken back, and what that was; `unheard`: words that may take something back. */
export function putRight(
  listed: readonly Item[],
  cut: readonly Token[],
): { items: Item[]; back: PutRight[]; unheard: string | null } {
  const { items, tokens } = deniedAgain(listed, cut);
  let unheard: string | null = null;
  const kept: Item[] = [];
  const back: PutRight[] = [];
  let denied: Set<Item> | null = null;
  const told = items.filter(
    (item, k) =>
      !(
        item.kind === 'thing' &&
        ((k > 0 && isNoBetween(item, items[k - 1], items[k + 1], tokens)) || isWithout(item, items, tokens))
      ),
  );
  for (let k = 0; k < told.length; k++) {
    const each = told[k];
    const isTold = each !== undefined && speaksBetween(tokens, kept.at(-1), each);
    const row = isTold && rowTakenBack(kept, each, told[k + 1], told[k + 2], tokens);
    if (row) {
      const gone = kept.splice(-2, 2);
      back.push(row.said);
      if (row.renamed) {
        const { thing, amount } = row.renamed;
        kept.push(...gone.map((one) => (one.kind === 'thing' ? { ...one, named: thing.named } : amount)));
        const again = saidAgain(amount, thing, told.slice(k + 1, k + 3), tokens);
        if (again) back.splice(-1, 1, { ...row.said, gone: [again.amount.quantity], to: again.amount.to });
        k += again?.items ?? 0;
        continue;
      }
    }
    if (each?.kind !== 'amount') {
      if (each && isNoToRow(each, kept, tokens)) unheard ??= `? ${each.named.text}`;
      const said = each && isTold && nameTakenBack(kept, each, told[k + 1], tokens);
      if (said) {
        const last = kept.pop();
        back.push(said);
        // its figure stays where it stood
        if (each?.kind === 'thing' && last?.kind === 'thing' && !isOwn(each, told[k + 1], tokens)) {
          kept.push({ ...last, named: each.named });
          const again = saidAgain(kept.at(-2), each, told.slice(k + 1, k + 3), tokens);
          if (again) back.splice(-1, 1, { ...said, gone: [again.amount.quantity], to: again.amount.to });
          k += again?.items ?? 0;
          continue;
        }
      }
      if (each && !denied?.has(each)) kept.push(each);
      continue;
    }
    const [before, last] = [kept.at(-2), kept.at(-1)];
    const next = told[k + 1];
    // "lye 142 g, sorry, 124 g. Water 270 g": the full stop ends the row, where the rows have their names first
    const isLast =
      each.quantity.text.endsWith('.') &&
      isRow(before, last, tokens) &&
      next !== undefined &&
      isRow(next, told[k + 2], tokens);
    const named = next?.kind === 'thing' && !isLast && isBeside(tokens, each.to, next.from) ? next : null;
    const moved = changedFrom(each, tokens);
    const item = moved ?? each;
    if (moved)
      back.push({
        text: `I took the second of "${moved.quantity.text}", as the post changes it.`,
        gone: [],
        from: each.from,
        to: each.to,
      });
    const another =
      before?.kind === 'thing' && last && named && !sameThing(before, named) && isBeside(tokens, before.to, last.from);
    const parted = last?.kind !== 'amount' || another;
    if (parted && named && weighs(item.quantity) && isDenied(tokens, item)) {
      denied ??= new Set();
      denied.add(named);
      back.push({
        text: `I left out "${item.quantity.text} ${named.named.text}", as the post says that it is not.`,
        gone: [item.quantity],
        from: item.from,
        to: named.to,
      });
      continue;
    }
    const meant = saidBefore(kept, item, told, k, tokens);
    const earlier = meant < 0 ? undefined : kept[meant];
    if (earlier?.kind === 'amount' && next?.kind === 'amount') {
      const said = ofFigures(item.quantity, next.quantity, item.from, next.to);
      back.push({ ...said, gone: [...said.gone, earlier.quantity] });
      kept.splice(meant, 1, { ...earlier, quantity: alike(item.quantity, earlier.quantity), same: null });
      k++;
      continue;
    }
    if (next?.kind === 'amount' && isUnplaced(told, k, item, next, tokens))
      unheard ??= `${written(item.quantity)}, not ${written(next.quantity)}`;
    if (isTold && last?.kind === 'amount' && isPair(last, item)) {
      // "water 330 g. Oops, that should be 200 g palm"
      const stance = (): 'first' | 'second' | null =>
        isDeniedFor(tokens, last, item) ? 'second' : stands(tokens, last.to, item.from);
      const told = another || isOutcome(tokens, last, item) || weighsAs(item, last) ? null : stance();
      const counts = told === 'second' && isWished(tokens, last, item) ? 'first' : told;
      if (another && named && !sameThing(before, named) && isEither(last, item, named, tokens))
        unheard ??= `${written(item.quantity)} ${named.named.text}`;
      if (counts === 'second') {
        back.push(ofFigures(item.quantity, last.quantity, last.from, item.to));
        const [row = -1, ...more] = rowsSaidAgain(kept, tokens);
        if (more.length > 0) unheard ??= `${written(item.quantity)}, not ${written(last.quantity)}`;
        else if (row >= 0) {
          const first = kept[row] as Amount;
          kept.splice(-1, 1);
          kept.splice(row, 1, { ...first, quantity: alike(item.quantity, first.quantity), same: null });
          back.splice(-1, 1, { ...(back.at(-1) as PutRight), gone: [last.quantity, first.quantity] });
          continue;
        }
        // "Lye 142 g... I mean 124 g": in the sentence of its name
        const place = !named && isAny(tokens, last.to, item.from, isStop) ? last : item;
        kept.splice(-1, 1, {
          ...item,
          from: place.from,
          to: place.to,
          quantity: alike(item.quantity, last.quantity),
        });
        continue;
      }
      if (counts === 'first' && before?.kind === 'thing' && isOfOther(kept, before, item, tokens))
        unheard ??= `${written(last.quantity)} ${before.named.text}`;
      if (counts === 'first' && before?.kind === 'thing' && rightOver(kept, before, last, item, tokens, back)) continue;
      if (counts === 'first') {
        back.push(ofFigures(last.quantity, item.quantity, last.from, item.to));
        // "tipped it in the water, so it is 148 g and not 138": of the one that was 138
        const row = before?.kind === 'thing' && isBeside(tokens, before.to, last.from) ? -1 : onlyRowOf(kept, item);
        const first = kept[row];
        if (first?.kind === 'amount') {
          kept.splice(-1, 1);
          kept.splice(row, 1, { ...first, quantity: alike(last.quantity, first.quantity), same: null });
          back.splice(-1, 1, { ...(back.at(-1) as PutRight), gone: [item.quantity, first.quantity] });
          continue;
        }
        kept.splice(-1, 1, { ...last, quantity: alike(last.quantity, item.quantity), to: named ? item.to : last.to });
        continue;
      }
    } else if (
      isTold &&
      last?.kind === 'thing' &&
      before?.kind === 'amount' &&
      isPair(before, item) &&
      isBeside(tokens, before.to, last.from) &&
      !before.quantity.text.endsWith('.')
    ) {
      const counts = stands(tokens, last.to, item.from);
      // another name beside the other figure is another matter
      if (counts !== null && (named === null || sameThing(named, last))) {
        const [stays, gone] = counts === 'second' ? [item, before] : [before, item];
        const said = ofFigures(stays.quantity, gone.quantity, before.from, item.to);
        const right = { ...before, quantity: alike(stays.quantity, gone.quantity), same: stays.same };
        if (named === null || counts === 'first') {
          if (counts === 'first' && rightOver(kept, last, stays, gone, tokens, back)) continue;
          kept.splice(-2, 2, right, last);
          back.push(said);
          continue;
        }
        kept.splice(-2, 2);
        back.push(said);
      }
    }
    kept.push(item);
  }
  return { items: kept, back, unheard };
}

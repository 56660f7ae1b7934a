import { unit } from '../../units/units.ts';
import { isEither, linesOf, unitAt, withUnit } from '../columns/columns.ts';
import type { Binding } from '../rows/bind.ts';
import { type Item, type Named, sameWithin } from '../rows/items.ts';
import { mayShare } from '../rows/kinds.ts';
import { mayStandForAbove } from '../taken-back/beneath.ts';
import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import { endsDotted, isAny, isMark, isStop, spoken as spokenOf, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { isAdded } from './added.ts';
import { isSuperfat } from './no-superfat.ts';
import { isPutIn } from './put-in.ts';
import type { Roles } from './roles.ts';
import { type Assembly, type Kindred, type Row, unitFor } from './rows.ts';
import { isStatementOf, isSumIn } from './totals.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

/** "I'd prefer a mild soap, maybe 7%.", "How much lye? I'd go for 5%.", "5% please": a share alone where alkali is asked for. */
function isWished({ source: { tokens, items } }: Assembly, { quantity, from, to }: Amount): boolean {
  if (quantity.dim !== 'percent' || quantity.value > mostSuperfat || quantity.upTo !== null) return false;
  const [before, next] = [tokens[from - 1], tokens[to]];
  const isPlease = next?.t === 'word' && /^(?:please|pls|plz|thanks)$/.test(next.text);
  const isLast = next === undefined || isStop(next) || quantity.text.endsWith('.') || isPlease;
  const isFor =
    before?.t === 'word' &&
    /^(?:maybe|perhaps|for|at|with|want|like|prefer|say|around|about|take|both|all)$/.test(before.text);
  const isAlone = isPlease && (isStop(before) || before?.t === 'sign');
  return isLast && (isFor || isAlone) && !items.some((one) => isAmountOf(one, quantity) && one.from !== from);
}

/** Another share that may be one of everything. */
const isAmountOf = (one: Item, { dim }: Quantity): one is Amount =>
  one.kind === 'amount' && one.quantity.dim === dim && one.quantity.value <= mostSuperfat;

/** Of a lye that is asked for: "lye in ounces for 6 % please". */
function isAskedOfLye(
  { source: { tokens, items } }: Assembly,
  { quantity, from, to }: Extract<Item, { kind: 'amount' }>,
): boolean {
  const before = tokens[from - 1];
  if (
    quantity.dim !== 'percent' ||
    quantity.value > mostSuperfat ||
    !(before?.t === 'word' && /^(?:for|at|with|to)$/.test(before.text))
  )
    return false;
  if (tokens[to]?.t === 'name' || (tokens[to]?.t === 'word' && tokens[to].text === 'of')) return false;
  for (let k = from - 1; k >= 0 && from - k <= 8; k--) {
    const token = tokens[k];
    if (token?.t === 'line' || token?.t === 'quantity' || (token?.t === 'sign' && /^[.;!?]$/.test(token.text)))
      return false;
    if (token?.t === 'name' && token.meaning.kind === 'alkali')
      return !items.some((item) => item.kind === 'amount' && item.from > k && item.from < from);
  }
  return false;
}

/** "I keep 8 % fat over", "6 % of the oils stay loose". */
function isFatLeft(tokens: readonly Token[], { quantity, to }: Extract<Item, { kind: 'amount' }>): boolean {
  if (quantity.dim !== 'percent' || quantity.value > mostSuperfat) return false;
  const words = tokens.slice(to, to + mostWordsOfIt).map((token) => ('text' in token ? token.text : ';'));
  return fatLeft.test(words.join(' ').toLowerCase());
}
const mostWordsOfIt = 6;
const fatLeft =
  /^(?:of )?(?:the |my |all |more )*(?:fats?|oils?) (?:\w+ )?(?:over|more|behind|loose|untouched|unreacted|unused|surplus|spare|remaining|remains?|extra|uneaten)\b/;

/** Shares from here on are of a fat or of the water. */
const mostSuperfat = 0.2;

/** As pure as alkali is sold. */
const mayBePurity = ({ dim, value }: Quantity): boolean => dim === 'percent' && value >= 0.8 && value < 1;

/** Figures that no name took. */
export function orphans(assembly: Assembly, rows: readonly Row[], roles: Roles): void {
  const { items, tokens, bound } = assembly.source;
  const bare = rows.some((row) => row.named.meaning.kind !== 'unknown' && row.amount?.dim === 'bare');
  let said: ReadonlySet<number> | null = null;
  const before = ({ value }: Quantity): boolean => {
    said ??= figuresOf(bound.best, items);
    return said.has(value) || said.has(value / 100);
  };
  let ofFats: number | null = null;
  /** A bare figure that is what all the fats weigh. */
  const saysSum = (quantity: Quantity, token: number): boolean => {
    const found = unitFor(assembly, token);
    ofFats ??= sumOfFats(rows);
    return found !== null && ofFats > 0 && isStatementOf(withUnit(quantity, found.unit).value, ofFats);
  };
  const agrees = ({ value }: Quantity): boolean =>
    isSumIn(rows, (sum) => Math.abs(sum - value) <= Math.max(0.011 * sum, 0.6));
  const isWeighed = rows.some(({ named, amount }) => amount && /^(?:alkali|stock)$/.test(named.meaning.kind));
  for (const k of bound.best.orphans) {
    const item = items[k];
    if (item?.kind !== 'amount') continue;
    const { quantity } = item;
    if (assembly.isSettled(quantity)) continue;
    const none = isNoneOf(assembly, rows, k);
    if (none) {
      const of = assembly.source.lexicon.label(none.named.meaning);
      assembly.doubts.push({ id: 'two-amounts', of, said: [none.said, quantity.text] });
      assembly.fate(quantity, 'unclear', 'no name takes it');
      continue;
    }
    const next = tokens[item.to];
    const counted = quantity.dim === 'bare' && next?.t === 'word' && next.sort === 'everyday';
    const doubted = isDoubted(tokens, item.from);
    const asked =
      isAskedOfLye(assembly, item) ||
      isFatLeft(tokens, item) ||
      (!isWeighed && isWished(assembly, item) && assembly.asksForAlkali());
    if (quantity.dim === 'percent' && roles.superfat === null && (asked || speaksOf(assembly, 'superfat', k))) {
      roles.superfat = quantity.negative ? -quantity.value : quantity.value;
      assembly.assume('left-out', `I took ${quantity.text} as the superfat.`);
      assembly.fate(quantity, 'used', 'superfat');
      continue;
    }
    if (isOtherSuperfat(assembly, roles, k)) {
      assembly.doubts.push({
        id: 'two-amounts',
        of: 'superfat',
        said: [roles.superfatSaid?.text ?? '', quantity.text],
      });
      assembly.fate(quantity, 'unclear', 'no name takes it');
      continue;
    }
    if (!doubted && !spareName(assembly, k) && restates(assembly, k)) {
      assembly.fate(quantity, 'used', 'the same in another unit');
      continue;
    }
    const isTotal = roles.totalFats !== null && quantity.dim === 'mass' && quantity.value === roles.totalFats.value;
    if (!doubted && (isTotal || isSaidAgain(tokens, item, rows) || isSpelledOut(quantity, rows))) {
      assembly.fate(quantity, 'used', 'said again');
      continue;
    }
    if (quantity.dim === 'mass' && !doubted && isShortfall(assembly, rows, quantity)) {
      assembly.fate(quantity, 'aside', 'a difference');
      continue;
    }
    // "did it push me too close to zero?"
    const isNought = quantity.value === 0 && quantity.inWords;
    const weighs = quantity.dim === 'mass' || quantity.dim === 'volume' || quantity.dim === 'parts';
    // "400 g of it" is of something
    const isOfIt = wordAt(tokens, item.to) === 'of' && wordAt(tokens, item.to + 1) === 'it';
    const isFree = quantity.dim === 'mass' && !doubted && !isOfIt && !spareName(assembly, k) && !isListed(assembly, k);
    if (isFree && agrees(quantity) && !isRowWithoutName(assembly, item, rows)) {
      for (const one of [quantity, item.same]) if (one) assembly.fate(one, 'aside', 'a total that agrees');
      continue;
    }
    if (quantity.dim === 'bare' && bare && (saysSum(quantity, item.from) || isSumOfShares(rows, quantity))) {
      assembly.fate(quantity, 'aside', 'a total that agrees');
      continue;
    }
    if (
      weighs ||
      doubted ||
      mayStandForAbove(tokens, item) ||
      isPutIn(tokens, item, rows) ||
      (quantity.dim === 'bare' && !counted && !isNought && !before(quantity) && (bare || besideName(assembly, k))) ||
      (quantity.dim === 'bare' && !counted && standsForSum(assembly, k)) ||
      (roles.purity === null && isWeighed && mayBePurity(quantity) && !isAloneInLine(assembly, item.from))
    ) {
      assembly.doubts.push({ id: 'unplaced', said: quantity.text });
      assembly.fate(quantity, 'unclear', 'no name takes it');
    } else if (quantity.dim === 'ratio') continue;
    // "superfat? idk, 5 or so"
    else if (roles.superfat === null && mayBeSuperfat(quantity) && isAskedBefore(assembly, item)) {
      assembly.doubts.push({ id: 'unplaced', said: quantity.text });
      assembly.fate(quantity, 'unclear', 'no name takes it');
    } else {
      const said = counted && next?.t === 'word' ? `${quantity.text} ${next.text}` : quantity.text;
      if (!before(quantity)) assembly.assume('left-out', `I left out "${said}".`, { said });
      assembly.fate(quantity, 'aside', counted ? 'a count' : 'no ingredient beside it');
    }
  }
}

/** Rows above a weight without a name that are looked at, at the most. */
const mostAbove = 40;

/** No word stands in its line. */
function isAloneInLine(assembly: Assembly, token: number): boolean {
  const { tokens } = assembly.source;
  const span = linesOf(tokens)[assembly.lineOf(token)];
  return span !== undefined && !isAny(tokens, span.from, span.to, (one) => one.t === 'word' || one.t === 'name');
}

/** A weight alone in its line between rows: of those it may be the sum that end above it, from the first of their list. */
function isRowWithoutName(assembly: Assembly, { from, quantity }: Amount, rows: readonly Row[]): boolean {
  if (!isAloneInLine(assembly, from)) return false;
  const above = rows.slice(0, mostAbove).filter(({ token, grams }) => token < from && grams !== null);
  if (above.length === 0 || above.length === rows.length) return false;
  let sum = 0;
  for (let k = above.length - 1; k >= 0; k--) {
    sum += above[k]?.grams ?? 0;
    const isFirst = k === 0 || (above[k - 1]?.line ?? 0) < (above[k]?.line ?? 0) - 1;
    if (isFirst && Math.abs(sum - quantity.value) <= sameWithin * sum) return false;
  }
  return true;
}

/** `100` below `38 lard`, `27 olive`, `35 coconut`: what the figures of the fats make, all without a unit. */
function isSumOfShares(rows: readonly Row[], { value }: Quantity): boolean {
  const shares = rows.filter(({ named, amount }) => named.meaning.kind === 'fat' && amount?.dim === 'bare');
  const sum = shares.reduce((all, { amount }) => all + (amount?.value ?? 0), 0);
  return shares.length > 1 && Math.abs(sum - value) <= 1e-6 * sum;
}

/** "Castor oil 50 g (zero)": the row that says two things of one weight; undefined where none does. */
function isNoneOf({ source: { items, tokens } }: Assembly, rows: readonly Row[], k: number): Row | undefined {
  const [before, item] = [items[k - 1], items[k]];
  if (item?.kind !== 'amount' || item.quantity.dim !== 'bare' || item.quantity.value !== 0 || !before) return undefined;
  const isBeside =
    item.from - before.to <= 2 && tokens.slice(before.to, item.from).every((one) => isMark(one, '([-–—:=,'));
  const isAlone = tokens[item.to] === undefined || isStop(tokens[item.to]) || isMark(tokens[item.to], ')],');
  // "Water 320 g – 0" has its price
  const isSaid = item.quantity.inWords || isMark(tokens[before.to], '([');
  if (!isBeside || !isAlone || !isSaid) return undefined;
  const figure = before.kind === 'amount' ? before : items[k - 2];
  if (figure && figure !== before && !tokens.slice(figure.to, before.from).every((one) => one.t === 'word'))
    return undefined;
  return figure?.kind === 'amount' ? rows.find(({ amount }) => amount === figure.quantity) : undefined;
}

/** "60 g isn't the world": by how much less of something there was, where the post says of two weights that one counts. */
const isShortfall = ({ source: { back } }: Assembly, rows: readonly Row[], { value }: Quantity): boolean =>
  back.some(({ gone, settles }) =>
    settles
      ? gone.some((was) =>
          rows.some(({ grams }) => grams !== null && Math.abs(was.value - grams - value) <= 0.002 * was.value),
        )
      : false,
  );

const mayBeSuperfat = ({ dim, value }: Quantity): boolean =>
  dim === 'percent' || (dim === 'bare' && value <= 100 * mostSuperfat);

/** The superfat is asked for shortly before the figure. */
function isAskedBefore({ source: { items, tokens } }: Assembly, { from }: Item): boolean {
  const asked = items.findLast((one) => one.from < from && isSuperfat(one));
  return asked !== undefined && isMark(tokens[asked.to], '?') && from - asked.to <= farthestSpoken;
}

/** "I superfat at 8 as a rule, but 1 % will do": another share, in one breath with the superfat, where alkali is asked for. */
function isOtherSuperfat(assembly: Assembly, { superfat, superfatSaid }: Roles, k: number): boolean {
  const { items, tokens } = assembly.source;
  const item = items[k];
  if (item?.kind !== 'amount' || superfat === null || superfatSaid?.upTo !== null) return false;
  const { dim, value, upTo } = item.quantity;
  if (dim !== 'percent' || upTo !== null || value > mostSuperfat || Math.abs(value - superfat) < 1e-6) return false;
  const last = items.slice(0, k).findLast((one): one is Thing => one.kind === 'thing' && mayShare(one));
  return (
    last?.named.meaning.id === 'superfat' &&
    item.from - last.from <= farthestSpoken &&
    assembly.asksForAlkali() &&
    !isAny(tokens, last.to, item.from, (one) => one.t === 'line')
  );
}

/** "lard 500 g, coconut 250 g -> 850": what the row before the arrow should make, and does not. */
function standsForSum({ source: { items, tokens } }: Assembly, at: number): boolean {
  const [last, item] = [items[at - 1], items[at]];
  return (
    item !== undefined &&
    last?.kind === 'amount' &&
    last.quantity.dim === 'mass' &&
    item.from - last.to === 2 &&
    isMark(tokens[item.from - 1], '>')
  );
}

/** What several fats weigh together; 0 where there is but one. */
function sumOfFats(rows: readonly Row[]): number {
  let [sum, fats] = [0, 0];
  for (const { named, grams } of rows) {
    if (named.meaning.kind !== 'fat' || grams === null) continue;
    sum += grams;
    fats++;
  }
  return fats > 1 ? sum : 0;
}

/** "Or", or "or was it", right before token `at`. */
function isDoubted(tokens: readonly Token[], at: number): boolean {
  for (let k = at - 1; k >= Math.max(0, at - 3); k--) {
    const token = tokens[k];
    if (token?.t !== 'word') return false;
    if (token.text === 'or') return true;
    if (!wavering.has(token.text)) return false;
  }
  return false;
}

const wavering: ReadonlySet<string> = new Set(['was', 'it', 'is', 'maybe', 'even', 'about']);

/** The figures that names have. */
function figuresOf({ groups }: Binding, items: readonly Item[]): ReadonlySet<number> {
  const figures = new Set<number>();
  for (const { amounts } of groups)
    for (const k of amounts) {
      const item = items[k];
      if (item?.kind === 'amount') figures.add(item.quantity.value);
    }
  return figures;
}

/** "Does the 145 g still do?": a weight that a row has, spoken of as one that is known. */
function isSaidAgain(tokens: readonly Token[], { from, to, quantity }: Amount, rows: readonly Row[]): boolean {
  const before = tokens[from - 1];
  const isPointedAt =
    before?.t === 'word' && /^(?:the|that|those|these|my|your|his|her|their|is|are|does|will|would)$/.test(before.text);
  // "I'm not sure 94 g is right, is it?"
  const isJudged =
    /^(?:is|are|seems?|looks?|sounds?)$/.test(wordAt(tokens, to)) &&
    /^(?:right|correct|ok|okay|enough|fine|too|a|way|really|that)$/.test(wordAt(tokens, to + 1));
  return (
    quantity.dim === 'mass' &&
    (isPointedAt || isJudged) &&
    rows.some(({ grams }) => grams !== null && Math.abs(grams - quantity.value) <= 0.005 * grams)
  );
}

/** "12 oz … that's a one, twelve": the figure of a row once more, in words. */
const isSpelledOut = ({ dim, value, inWords }: Quantity, rows: readonly Row[]): boolean =>
  dim === 'bare' &&
  inWords &&
  rows.some(({ amount }) => amount && Math.abs(amount.value / (amount.unit?.factor ?? 1) - value) < 1e-6 * value);

/** Tokens behind which nobody speaks of the same role any more. */
const farthestSpoken = 24;

/** The role is spoken of not far before item `at`. */
function speaksOf(assembly: Assembly, role: string, at: number): boolean {
  const { items } = assembly.source;
  const from = items[at]?.from ?? 0;
  for (let k = at - 1; k >= 0; k--) {
    const item = items[k];
    if (!item || from - item.from > farthestSpoken) return false;
    if (item.kind === 'thing' && item.named.meaning.kind === 'role' && item.named.meaning.id === role) return true;
  }
  return false;
}

/** One of several amounts in a bracket: `700 g (500 g virgin, 200 g pomace)`. */
function isListed(assembly: Assembly, at: number): boolean {
  const { items, tokens } = assembly.source;
  const [own, next] = [items[at], items[at + 1]];
  const opens = tokens[(own?.from ?? 0) - 1];
  const closed = tokens.slice(own?.to, next?.from).some((token) => token.t === 'sign' && token.text === ')');
  return opens?.t === 'sign' && opens.text === '(' && next !== undefined && !closed;
}

/** `3 lb tallow ... that's 1361 g`: the amount before it, said again in another unit. */
function restates(assembly: Assembly, at: number): boolean {
  const { items, bound } = assembly.source;
  const own = items[at];
  if (at === 0 || own?.kind !== 'amount' || own.quantity.dim !== 'mass') return false;
  // "1 kilo 200 of canola (yes 1.2 kg)"
  const { tokens } = assembly.source;
  const isAside = [own.from - 1, own.from - 2].some((k) => isMark(tokens[k], '('));
  return (
    bound.groupOf[at - 1]?.amounts.some((k) => {
      const item = items[k];
      return (
        item?.kind === 'amount' &&
        item.quantity.dim === 'mass' &&
        (isAside || item.quantity.unit?.id !== own.quantity.unit?.id) &&
        Math.abs(item.quantity.value - own.quantity.value) <= sameWithin * own.quantity.value
      );
    }) ?? false
  );
}

/** `water 220`, though the water has another amount already. */
function besideName(assembly: Assembly, at: number): boolean {
  const { items, tokens } = assembly.source;
  const [name, own] = [items[at - 1], items[at]];
  return (
    name?.kind === 'thing' &&
    own !== undefined &&
    ['fat', 'alkali', 'water', 'liquid'].includes(name.named.meaning.kind) &&
    tokens.slice(name.to, own.from).every((token) => token.t === 'sign' && /^[:=\t]$/.test(token.text))
  );
}

/** A name without an amount stands beside the figure: it may be its own. */
function spareName(assembly: Assembly, at: number): boolean {
  const { items, bound } = assembly.source;
  const isSpare = (k: number): boolean => {
    const item = items[k];
    return item?.kind === 'thing' && !bound.groupOf[k] && weighable.has(item.named.meaning.kind);
  };
  return (at > 0 && isSpare(at - 1)) || isSpare(at + 1);
}

/** Kinds of names that a lone weight may be of. */
const weighable: ReadonlySet<Meaning['kind']> = new Set(['fat', 'unheld', 'ambiguous', 'unknown', 'alkali']);

/** Whether the thing is weighed anywhere in the post. */
const holds = ({ source: { bound, items } }: Assembly, id: string): boolean =>
  bound.best.groups.some((group) =>
    group.things.some((at) => {
      const one = items[at];
      return one?.kind === 'thing' && one.named.meaning.id === id;
    }),
  );

/** Nothing but "or", and signs perhaps, from one token to another. */
function isOr(tokens: readonly Token[], from: number, to: number): boolean {
  let said = false;
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (token?.t === 'sign') continue;
    if (said || token?.t !== 'word' || token.text !== 'or') return false;
    said = true;
  }
  return said;
}

/** `65 g NaOH or 91 g KOH`: two weighed things of one kind, of which one goes in. */
function weighedEither(assembly: Assembly): void {
  const { items, tokens, bound } = assembly.source;
  const ownerOf = (k: number): Named | undefined => {
    const item = items[bound.groupOf[k]?.things[0] ?? items.length];
    return item?.kind === 'thing' ? item.named : undefined;
  };
  for (let k = 1; k < items.length; k++) {
    const [before, item] = [items[k - 1], items[k]];
    if (!before || !item || bound.groupOf[k - 1] === bound.groupOf[k] || !isOr(tokens, before.to, item.from)) continue;
    const [first, second] = [ownerOf(k - 1), ownerOf(k)];
    if (!first || !second) continue;
    if (first.meaning.kind === second.meaning.kind && /^(fat|alkali)$/.test(first.meaning.kind))
      assembly.doubts.push({ id: 'two-readings', said: '', first: first.text, second: second.text });
  }
}

/** "Coconut 100 g (or babassu if you are rich, I never did)": behind the name at `from`, what others may do. */
function isAdvice(tokens: readonly Token[], from: number): boolean {
  const words: string[] = [];
  for (let k = from; k < tokens.length && k - from < longestAdvice && !isStop(tokens[k]); k++) {
    const token = tokens[k];
    if (token?.t === 'quantity' || isMark(token, ')')) break;
    words.push(spokenOf(token));
  }
  const said = words.join(' ');
  return advising.test(said) && !wondering.test(said);
}
const longestAdvice = 14;
const advising =
  /\b(?:if (?:you|u|it|they|one|anyone|someone|somebody)|(?:you|one) (?:can|could|may|might|like|prefer)|never (?:did|do|tried|try|have|had|used|use)|works?|will do|would do)\b/;
const wondering = /\b(?:remember|recall|sure|forgot|which|maybe|perhaps|think|know)\b/;

/** `sunflower or canola 300 g`, `NaOH/KOH 150 g`: one amount for either of two. */
export function eitherOr(assembly: Assembly): void {
  const { items, tokens, bound } = assembly.source;
  weighedEither(assembly);
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (item?.kind !== 'thing' || !['fat', 'alkali', 'unheld'].includes(item.named.meaning.kind)) continue;
    // "almond 100 g (or apricot)"
    const spoken = tokens[item.from - 1];
    if (spoken?.t === 'word' && spoken.text === 'or' && !holds(assembly, item.named.meaning.id)) {
      if (isAdvice(tokens, item.to)) {
        assembly.assume('left-out', `I left out "${item.named.text}": it is said of what else one could take.`);
        continue;
      }
      const group = k > 0 ? bound.groupOf[k - 1] : undefined;
      const owner = group?.things
        .map((at) => items[at])
        .find((one) => one?.kind === 'thing' && one.named.meaning.kind === item.named.meaning.kind);
      if (
        owner?.kind === 'thing' &&
        owner.named.meaning.id !== item.named.meaning.id &&
        owner.to < item.from &&
        items[k - 1]?.kind === 'amount'
      ) {
        assembly.doubts.push({ id: 'two-readings', said: '', first: owner.named.text, second: item.named.text });
        continue;
      }
    }
    for (const at of [k - 1, k + 1]) {
      const other = items[at];
      if (
        other?.kind !== 'thing' ||
        other.named.meaning.kind !== item.named.meaning.kind ||
        other.named.meaning.id === item.named.meaning.id ||
        other.named.meaning.id === 'unsaid'
      )
        continue;
      const [a, b] = other.from < item.from ? [other, item] : [item, other];
      const between = tokens.slice(a.to, b.from);
      const weighed = (bound.groupOf[at]?.amounts.length ?? 0) > 0;
      if (
        weighed &&
        between.length === 1 &&
        between[0] &&
        ((between[0].t === 'word' && between[0].text === 'or') ||
          (between[0].t === 'sign' &&
            (between[0].text === '/' || (between[0].text === '(' && item.named.meaning.kind === 'alkali'))))
      )
        assembly.doubts.push({
          id: 'two-readings',
          said: '',
          first: a.kind === 'thing' ? a.named.text : '',
          second: b.kind === 'thing' ? b.named.text : '',
        });
    }
  }
}

/** Two recipes in one post: the same fats weighed twice over with other figures, or numbered recipes. */
export function twoRecipes(assembly: Assembly, rows: readonly Row[]): boolean {
  const twice = (kind: Kindred): number => {
    const seen = new Map<string, Row>();
    let again = 0;
    for (const row of rows) {
      if (row.named.meaning.kind !== kind || row.after) continue;
      const grams = row.grams ?? row.share?.value ?? null;
      if (grams === null) continue;
      const known = seen.get(row.named.meaning.id);
      if (known === undefined) {
        seen.set(row.named.meaning.id, row);
        continue;
      }
      const before = known.grams ?? known.share?.value ?? 0;
      // "I've since added another 100 g of coconut and another 18 g of lye"
      if (Math.abs(before - grams) > sameWithin * before && !isAdded(assembly.source.tokens, row, known)) again++;
    }
    return again;
  };
  const fats = twice('fat');
  const alkali = twice('alkali');
  if (fats >= 2 || (fats >= 1 && alkali >= 1)) return true;
  if (ofSeveralDays(assembly, rows) || areTwoPots(rows)) return true;
  if (fats + alkali === 0) return false;
  const heading = /\b(recipe|batch|version|option|soap)\s*(#\s*)?(1|2|one|two|a|b)\b\s*[:)\n-]/gi;
  return (assembly.source.text.match(heading)?.length ?? 0) >= 2;
}

/** Two runs of fats, each with an alkali that suits them alone: the other fats make another pot, whatever weighs the same. */
function areTwoPots(rows: readonly Row[]): boolean {
  const weighed = rows
    .filter(({ named, grams, after }) => grams !== null && !after && /^(?:fat|alkali)$/.test(named.meaning.kind))
    .toSorted((a, b) => a.token - b.token);
  if (weighed.filter(({ named }) => named.meaning.kind === 'alkali').length !== 2) return false;
  const sum = (list: readonly Row[], kind: string): number =>
    list.reduce((all, { named, grams }) => (named.meaning.kind === kind ? all + (grams ?? 0) : all), 0);
  const suits = (list: readonly Row[]): boolean => {
    const share = sum(list, 'alkali') / sum(list, 'fat');
    return share > alkaliShare.least && share < alkaliShare.most;
  };
  const fatsOf = (list: readonly Row[]): Set<string> =>
    new Set(list.flatMap(({ named }) => (named.meaning.kind === 'fat' ? [named.meaning.id] : [])));
  return weighed.some((_, k) => {
    const [one, other] = [weighed.slice(0, k), weighed.slice(k)];
    return suits(one) && suits(other) && !fatsOf(one).isSupersetOf(fatsOf(other));
  });
}

const days = /^(?:mon|tues|wednes|thurs|fri|satur|sun)days?$/;

/** "On Saturday I did 600 g olive with 200 g coconut. On Sunday it was 500 g lard with 250 g palm". */
function ofSeveralDays({ source: { tokens } }: Assembly, rows: readonly Row[]): boolean {
  const begins = tokens.flatMap((token, k) => {
    const on = tokens[k - 1];
    const isDay = token.t === 'word' && days.test(token.text) && on?.t === 'word' && on.text === 'on';
    return isDay && (isStop(tokens[k - 2]) || endsDotted(tokens[k - 2])) ? [{ k, day: token.text }] : [];
  });
  if (begins.length < 2) return false;
  const told = begins.filter(
    ({ k }, at) =>
      rows.filter(
        ({ token, grams, named }) =>
          named.meaning.kind === 'fat' && grams !== null && token > k && token < (begins[at + 1]?.k ?? tokens.length),
      ).length > 1,
  );
  return new Set(told.map(({ day }) => day)).size > 1;
}

/** "2 lb or oz (can't read it)", "10 (oz or lb?)": its writer does not know the unit of a weight. */
export function unitOrUnit(assembly: Assembly, rows: readonly Row[]): void {
  const { items, tokens, lexicon } = assembly.source;
  for (const item of items) {
    if (item.kind !== 'amount') continue;
    const { quantity, to } = item;
    const inBracket = tokens[to]?.t === 'sign' && tokens[to].text === '(' ? to + 1 : -1;
    const first = inBracket > 0 ? unitAt(tokens[inBracket], lexicon) : (quantity.unit?.id ?? null);
    const at = inBracket > 0 ? inBracket + 1 : to;
    const second = isEither(tokens[at]) ? unitAt(tokens[at + 1], lexicon) : null;
    if (first === null || second === null || first === second) continue;
    const row = rows.find(({ amount }) => amount === quantity);
    const { kind } = row?.named.meaning ?? {};
    const isWet = kind === 'water' || kind === 'liquid';
    const dims = new Set([first, second].map((id) => unit(id).dimension));
    if (!row || !(kind === 'fat' || kind === 'alkali' || isWet) || (isWet && dims.size > 1)) continue;
    if (![...dims].every((dim) => dim === 'mass' || dim === 'volume')) continue;
    assembly.doubts.push({ id: 'no-unit', said: `${row.named.text} ${quantity.text}`, units: [first, second] });
  }
}

/**
 * "Lye 75 g water 150 g coconut 150 g and olive": the post begins with an alkali and a weight right behind it, which
 * went to what follows. It may be the alkali's, and every other weight that of the name before it.
 */
export function lyeAhead({ source: { items, bound }, doubts }: Assembly, rows: readonly Row[]): void {
  const [alkali, weight, next] = items;
  if (alkali?.kind !== 'thing' || alkali.named.meaning.kind !== 'alkali' || alkali.from > 0) return;
  if (weight?.kind !== 'amount' || weight.quantity.dim !== 'mass' || weight.from !== alkali.to) return;
  if (next?.kind !== 'thing' || !bound.best.mentions.includes(0)) return;
  const fats = rows
    .filter(({ named }) => named.meaning.kind === 'fat')
    .reduce((sum, { grams }) => sum + (grams ?? 0), 0);
  const share = weight.quantity.value / fats;
  // nobody asks for the alkali of water
  if (next.named.meaning.kind === 'water' || (share > alkaliShare.least && share < alkaliShare.most))
    doubts.push({ id: 'unplaced', said: weight.quantity.text });
}
/** Of the fats, what alkali may weigh. */
const alkaliShare = { least: 0.1, most: 0.2 };

/** Two ways to read the post that are about equally likely and weigh different things. */
export function rival(assembly: Assembly, rows: readonly Row[]): void {
  const { bound, items } = assembly.source;
  if (!bound.rival) return;
  // shares that make a whole are no accident
  const shares = rows.filter((row) => row.named.meaning.kind === 'fat' && row.share && !row.amount);
  if (shares.length > 1 && Math.abs(shares.reduce((sum, row) => sum + (row.share?.value ?? 0), 0) - 1) < 0.006) return;
  // "my lye … NaOH" are one where no other alkali is named
  const alkalis = new Set<string>(
    items.flatMap((item) =>
      item.kind === 'thing' && item.named.meaning.kind === 'alkali' ? [item.named.meaning.id] : [],
    ),
  );
  alkalis.delete('unsaid');
  const nameOf = ({ named }: Extract<Item, { kind: 'thing' }>): string =>
    named.meaning.kind === 'alkali' && alkalis.size === 1 ? 'alkali' : named.text;
  const pairs = (binding: Binding, called: typeof nameOf): readonly string[] =>
    binding.groups.flatMap((group) => {
      const thing = group.things.map((k) => items[k]).find((item) => item?.kind === 'thing');
      const amount = group.amounts.map((k) => items[k]).find((item) => item?.kind === 'amount');
      return thing?.kind === 'thing' && amount?.kind === 'amount' ? [`${called(thing)} ${amount.quantity.text}`] : [];
    });
  const best = pairs(bound.best, nameOf);
  // the other only leaves a figure without its name
  if (pairs(bound.rival, nameOf).every((pair) => best.includes(pair))) return;
  const [first, second] = [bound.best, bound.rival].map((one) => pairs(one, ({ named }) => named.text).join(', '));
  if (first === undefined || second === undefined) return;
  if (first !== second && rows.length > 0) assembly.doubts.push({ id: 'two-readings', said: '', first, second });
}

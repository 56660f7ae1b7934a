import { unit } from '../units/units.ts';
import { packed, withUnit } from './columns.ts';
import { drinkless } from './items.ts';
import { keptLast } from './kept.ts';
import type { Lexicon } from './lexicon.ts';
import { plainQuantity, type Quantity } from './quantities.ts';
import { signal } from './signal-words.ts';
import { gives, type Signals } from './signals.ts';
import { asAside, asFiller, type Figure, type Token } from './tokens.ts';

/**
 * Figures whose neighbours say that they are no amount, found before amounts look for their names: the size of what a
 * price was paid for, years, the weight of one bar, the second of two words for one thing.
 */
const light = (token: Token | undefined): boolean =>
  token?.t === 'word' && (token.sort === 'filler' || lightWords.has(token.text));
const lightWords: ReadonlySet<string> = new Set('for of cost costs me was paid at only now about per a'.split(' '));
const priced = (token: Token | undefined): boolean => token?.t === 'aside' && token.reason === 'a price';
const massOf = (token: Token | undefined): token is Extract<Token, { t: 'quantity' }> =>
  token?.t === 'quantity' &&
  (token.quantity.dim === 'mass' || token.quantity.dim === 'volume' || token.quantity.dim === 'bare');

function reach(tokens: readonly Token[], from: number, step: -1 | 1): number | null {
  let said = false;
  for (let k = from + step; k >= 0 && k < tokens.length && Math.abs(k - from) <= 4; k += step) {
    const token = tokens[k];
    if (massOf(token)) return said ? k : null;
    if (!light(token)) return null;
    if (token?.t === 'word' && /^(for|cost|costs|at|per|paid)$/.test(token.text)) said = true;
  }
  return null;
}

/** `1 lb of lye costs me $5.49`: back over the verb and the name to the figure. */
function costOf(tokens: readonly Token[], price: number): number | null {
  let k = price - 1;
  let verb = false;
  while (k >= 0 && price - k <= 4 && light(tokens[k])) {
    const token = tokens[k];
    if (token?.t === 'word' && /^costs?$/.test(token.text)) verb = true;
    k--;
  }
  const priceWord = tokens[k];
  if (priceWord?.t === 'name' && priceWord.meaning.kind === 'role' && priceWord.meaning.id === 'price') {
    verb = true;
    k--;
  }
  if (!verb) return null;
  if (tokens[k]?.t === 'name') k--;
  while (k >= 0 && tokens[k]?.t === 'word' && /^(of|the|my)$/.test((tokens[k] as { text: string }).text)) k--;
  return massOf(tokens[k]) ? k : null;
}

const isPot = (token: Token | undefined): token is Extract<Token, { t: 'name' }> =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'pot';

/** `bought 5 kg olive for €32`: the figure before the name, where that thing is weighed again elsewhere. */
function boughtOf(tokens: readonly Token[], price: number): number | null {
  let k = price - 1;
  while (price - k <= 3 && light(tokens[k])) k--;
  const nameAt = k;
  const name = tokens[k];
  if (name?.t !== 'name' || name.meaning.kind === 'role') return null;
  k--;
  while (light(tokens[k]) || isPot(tokens[k])) k--;
  // nobody puts all of the lye that was bought into one pot
  return massOf(tokens[k]) && (name.meaning.kind === 'alkali' || weighedElsewhere(tokens, nameAt)) ? k : null;
}

/** What stands beside weights, and how often. */
const weighedThings = keptLast((tokens: readonly Token[]): ReadonlyMap<string, number> => {
  const count = new Map<string, number>();
  tokens.forEach((token, at) => {
    if (token.t !== 'name' || !weighedAt(tokens, at)) return;
    const id = thingOf(token);
    count.set(id, (count.get(id) ?? 0) + 1);
  });
  return count;
});

/** The thing named at token `at` stands beside a weight in another place, too. */
export function weighedElsewhere(tokens: readonly Token[], at: number): boolean {
  const name = tokens[at];
  if (name?.t !== 'name') return false;
  return (weighedThings(tokens).get(thingOf(name)) ?? 0) > (weighedAt(tokens, at) ? 1 : 0);
}

/** `lye 4.3 oz`, `4.3 oz of lye`, `4.3 oz tub of lye`. */
export function weighedAt(tokens: readonly Token[], at: number): boolean {
  if ([1, 2].some((step) => massOf(tokens[at + step]))) return true;
  let k = at - 1;
  const skipped = (token: Token | undefined): boolean =>
    light(token) || (token?.t === 'name' && token.meaning.kind === 'role');
  while (at - k <= 3 && skipped(tokens[k])) k--;
  return massOf(tokens[k]);
}

/** What is named; any alkali is the alkali. */
export const thingOf = ({ meaning }: Extract<Token, { t: 'name' }>): string =>
  meaning.kind === 'alkali' ? 'alkali' : meaning.id;

/** `olive oil 500 g for 3.95 €` as a row of a list, and weighed nowhere else: what goes in, with what it costs. */
function isOwnWeight(tokens: readonly Token[], k: number): boolean {
  const nameAt = [k - 1, k + 1].find((at) => {
    const one = tokens[at];
    return one?.t === 'name' && one.meaning.kind !== 'role';
  });
  if (nameAt === undefined || weighedElsewhere(tokens, nameAt)) return false;
  let head = Math.min(k, nameAt) - 1;
  while (tokens[head]?.t === 'sign' && /^[-*•\t]$/.test((tokens[head] as { text: string }).text)) head--;
  return head < 0 || tokens[head]?.t === 'line';
}

/** One ingredient is named with the first of two amounts, and no other before the second. */
const onlyNameBetween = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(Math.max(0, from - 1), to).filter((token) => token.t === 'name' && token.meaning.kind !== 'role')
    .length === 1;

/** The amount said in the same sentence before token `k`, of which "100 g of it" is a part; null where none was. */
function spokenOf(tokens: readonly Token[], k: number, part: Quantity, solution: boolean): number | null {
  for (let at = k - 1; at >= 0 && k - at <= 14; at--) {
    const token = tokens[at];
    // "coconut 200 g, 292 g of it": of the solution that the post works with
    if (solution && token?.t === 'sign' && token.text === ',') return null;
    if (token?.t === 'line' || (token?.t === 'sign' && token.text === '.')) return null;
    // a part is no more than the whole
    if (massOf(token)) return token.quantity.dim === part.dim && token.quantity.value < part.value ? null : at;
  }
  return null;
}

export function setAside(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  const aside = (k: number, reason: string): void => {
    const token = (out ?? tokens)[k];
    if (token?.t !== 'quantity') return;
    out ??= [...tokens];
    out[k] = asAside(token, reason);
  };
  const weighed = tokens.some((token) => token.t === 'quantity' && token.quantity.dim === 'mass');
  const solution = tokens.some((token) => token.t === 'name' && token.meaning.kind === 'stock');
  const has = (bit: number): boolean => (signals.all & bit) !== 0;
  const [speaksOfIt, stored, paid] = [has(signal.ofIt), has(signal.store), has(signal.selling | signal.price)];
  const [parted, including, vessels] = [has(signal.parting), has(signal.including), has(signal.mould)];
  let bars = -1;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (token?.t === 'line' || (token?.t === 'sign' && token.text === '.')) bars = -1;
    else if (token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'bars') bars = k;
    else if (priced(token)) {
      for (const found of [reach(tokens, k, -1), reach(tokens, k, 1), costOf(tokens, k), boughtOf(tokens, k)])
        if (found !== null && !isOwnWeight(tokens, found)) aside(found, 'the size of what was bought');
    } else if (token?.t === 'quantity') {
      if (weighed && isYear(token)) aside(k, 'a year');
      if (isScale(tokens, k, token)) aside(k, 'what a scale takes');
      if (isPack(tokens, k, token) || isHeld(tokens, k, token)) aside(k, packed);
      const whole = speaksOfIt && ofIt(tokens, k, token) ? spokenOf(tokens, k, token.quantity, solution) : null;
      if (whole !== null && !isTaken(tokens, k)) aside(k, 'a part of what was said');
      else if (whole !== null && onlyNameBetween(tokens, whole, k)) aside(whole, packed);
      const held = ofWhich(tokens, k, token);
      const all = held === null ? undefined : tokens[held];
      if (held !== null && all?.t === 'quantity') {
        out ??= [...tokens];
        // the part stands where the whole stood, beside the name
        out[held] = { ...all, quantity: token.quantity };
        out[k] = { t: 'aside', from: token.from, to: token.to, reason: packed, numbers: all.quantity.numbers };
        continue;
      }
      if (isPieceWeight(tokens, k, token) || isOnePiece(tokens, k, token) || isCutAt(tokens, k, token))
        aside(k, 'the weight of one bar');
      if (vessels && (isHoleSize(tokens, k, token) || isLoaf(tokens, k, token))) aside(k, packed);
      if (isHollow(tokens, k, token)) aside(k, packed);
      if (bars >= 0 && k - bars <= 12 && isBarWeight(tokens, k, token, bars)) {
        aside(k, 'the weight of one bar');
        // "98 g and 103 g", "4.2 oz wet / 3.6 oz after 6 weeks"
        for (const also of weightsBehind(tokens, k)) aside(also, 'the weight of one bar');
        bars = -1;
      }
      if (isStock(tokens, k, token, stored ? signals : null)) aside(k, 'what is left of a pack');
      if (isTakenFrom(tokens, k, token)) aside(k, packed);
      if (isReference(tokens, k, token) || isChange(tokens, k, token)) aside(k, 'said before');
      if (paid && isPaid(tokens, k, token)) aside(k, 'a price');
      const of = tokens[k + 1];
      // "page 11 of 38"
      if (token.quantity.dim === 'bare' && of?.t === 'word' && of.text === 'of' && isPageCount(tokens, k))
        aside(k + 2, 'a count');
      if (parted && isPortion(tokens, k, token)) aside(k, 'a count');
      if (isVessel(tokens, k, token)) aside(k, packed);
      if (isEggs(tokens, k, token)) aside(k, 'a count');
      if (isApart(tokens, k, token)) aside(k, 'a difference');
      if (isOutcome(tokens, k, token)) aside(k, 'what came out of the mould');
      if (isStatedSum(tokens, k, token) || isLoneSum(tokens, k, token)) aside(k, 'a total that agrees');
      if ((including || speaksOfIt) && isIncluded(tokens, k, token)) aside(k, 'a part of what was said');
      // "the scale does grams to 0.1"
      if (
        token.quantity.dim === 'bare' &&
        token.quantity.value < 1 &&
        wordAt(tokens, k - 1) === 'to' &&
        isUnitWord(tokens[k - 2])
      )
        aside(k, 'what a scale shows');
      if (isMeltPoint(tokens, k, token)) aside(k, 'a melting point');
      if (isIceOf(tokens, k, token)) aside(k, 'a part of what was said');
      if (isCounted(tokens, k, token)) aside(k, 'a count');
      const same = conversionOf(tokens, k, token);
      if (same !== null) for (const one of [k, same]) aside(one, 'what a unit is in another');
    }
  }
  return out ?? tokens;
}

/** Weights in the rest of the sentence about bars: those behind which no ingredient stands, nor in front of them. */
function weightsBehind(tokens: readonly Token[], from: number): readonly number[] {
  const found: number[] = [];
  for (let k = from + 1; k < tokens.length && k - from <= 12; k++) {
    const token = tokens[k];
    if (token?.t === 'line' || isMark(token, /^[.;]$/) || isIngredient(token)) break;
    if (!isWeight(token)) continue;
    let next = k + 1;
    while (light(tokens[next]) || isMark(tokens[next], /^[:=-]$/)) next++;
    if (isIngredient(tokens[next])) break;
    found.push(k);
  }
  return found;
}

const isIngredient = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind !== 'role' && token.meaning.kind !== 'unknown';

const stops: ReadonlySet<string> = new Set(['.', ';', '!', '?']);
const isStop = (token: Token | undefined): boolean =>
  token === undefined || token.t === 'line' || (token.t === 'sign' && stops.has(token.text));

function isAny(tokens: readonly Token[], from: number, to: number, is: (token: Token, at: number) => boolean): boolean {
  for (let k = Math.max(0, from); k < to; k++) {
    const token = tokens[k];
    if (token && is(token, k)) return true;
  }
  return false;
}

/** "500 g in the jar". */
const isInJar = (tokens: readonly Token[], at: number): boolean => {
  const pot = tokens[at];
  if (!isPot(pot) || !/^(jar|tub|tin|bag|bottle|bucket)$/.test(pot.meant)) return false;
  const article = tokens[at - 1];
  return isWord(tokens[at - 2], 'in') && (isWord(article, 'the') || isWord(article, 'my'));
};

/** "2 kg more sunflower in the cupboard and a fresh 500 g jar of coconut": a sentence about what is in store. */
function isStored(tokens: readonly Token[], k: number, { at: signs }: Signals): boolean {
  let [from, to] = [k, k];
  while (k - from < 20 && !isStop(tokens[from - 1])) from--;
  while (to - k < 20 && !isStop(tokens[to])) to++;
  // "150 g milk from the freezer" is what goes in
  const isTaken = (at: number): boolean => [1, 2, 3].some((back) => /^(from|out)$/.test(wordAt(tokens, at - back)));
  for (let at = Math.max(0, from); at < to; at++) {
    const tells = ((signs[at] ?? 0) & signal.store) !== 0 && gives(tokens[at], signal.store) && !isTaken(at);
    if (tells || isInJar(tokens, at)) return true;
  }
  return false;
}

/** "4 C", which is also four cups. */
const isC = ({ quantity: { text } }: Figure): boolean => /^-?\d+ ?C\.?$/.test(text);

/** "It was 4 C outside" beside other degrees; "oils were at 35 degrees, lye at about 30": as warm as the one before it in the sentence is said to be. */
export function alsoWarm(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  let warm = false;
  const celsius = tokens.some((one) => one.t === 'quantity' && one.quantity.dim === 'temperature' && isC(one));
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (warm && isStop(token)) warm = false;
    if (token?.t !== 'quantity') continue;
    if (token.quantity.dim === 'temperature') warm = true;
    const { dim, value } = token.quantity;
    if (celsius && dim === 'volume' && isC(token) && !isIngredient(tokens[k + 1]) && !isIngredient(tokens[k - 1])) {
      out ??= [...tokens];
      out[k] = asAside(token, 'a temperature');
      continue;
    }
    if (!warm || dim !== 'bare' || value < 15 || value > 220 || isIngredient(tokens[k + 1])) continue;
    const at = /^(about|around|roughly|just|nearly)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
    if (!/^(at|its|is|was)$/.test(wordAt(tokens, at))) continue;
    out ??= [...tokens];
    out[k] = asAside(token, 'a temperature');
  }
  return out ?? tokens;
}

/** "200 g of the 1 kg I bought", "200 g (I have 800 g in the freezer)": of what an amount was taken. */
function isTakenFrom(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!measured(token)) return false;
  const owns = (one: Token | undefined): boolean => one?.t === 'word' && /^(bought|have|had|got|own)$/.test(one.text);
  let at = k - 1;
  while (k - at <= 4 && tokens[at]?.t === 'word') at--;
  const opens = isMark(tokens[at], /^\($/);
  const part = opens ? tokens[at - 1] : tokens[at];
  if (part?.t !== 'quantity' || part.quantity.dim !== token.quantity.dim) return false;
  if (part.quantity.value > token.quantity.value) return false;
  const words = tokens.slice(at + 1, k);
  const ofThe = words.some((one, n) => (isWord(one, 'of') || isWord(one, 'from')) && isWord(words[n + 1], 'the'));
  return (opens && words.some(owns)) || (ofThe && [1, 2, 3].some((n) => owns(tokens[k + n])));
}

/** `palm kernel (last 2 lb)`, `2 lb of lard left`: in the cupboard, where the thing is weighed again. */
function isStock(tokens: readonly Token[], k: number, token: Figure, stored: Signals | null): boolean {
  if (!measured(token)) return false;
  if (ofIt(tokens, k, token) && isLeftOver(tokens, k)) return true;
  const before = tokens[k - 1];
  const after = tokens[k + 1];
  const last = before?.t === 'word' && lastWords.has(before.text);
  const left = after?.t === 'word' && (leftWords.has(after.text) || isLeftOver(tokens, k));
  if (!last && !left && !(stored && isStored(tokens, k, stored))) return false;
  const behind = [k + 1, k + 2, k + 3].find((at) => isIngredient(tokens[at]));
  const alkali = behind === undefined ? undefined : tokens[behind];
  if (left && alkali?.t === 'name' && alkali.meaning.kind === 'alkali') return true;
  const nameAt = [k - 1, k - 2, k - 3].find((at) => isIngredient(tokens[at]) && !isParted(tokens, at, k)) ?? behind;
  return nameAt !== undefined && weighedElsewhere(tokens, nameAt);
}

/** "2 litres of olive left over", "2 litres of it left". */
const isLeftOver = (tokens: readonly Token[], k: number): boolean =>
  isWord(tokens[k + 1], 'of') &&
  (isIngredient(tokens[k + 2]) || pronoun.test(wordAt(tokens, k + 2))) &&
  (isWord(tokens[k + 3], 'left') || isWord(tokens[k + 3], 'leftover'));

/** A comma stands between two tokens. */
const isParted = (tokens: readonly Token[], from: number, to: number): boolean =>
  isAny(tokens, from, to, (one) => isMark(one, /^[,;]$/));

const lastWords: ReadonlySet<string> = new Set(['last', 'remaining', 'another', 'spare']);
const leftWords: ReadonlySet<string> = new Set(['left', 'remaining', 'spare']);

/** Where each weight is first said. */
const firstSaid = keptLast((tokens: readonly Token[]): ReadonlyMap<string, number> => {
  const first = new Map<string, number>();
  tokens.forEach((token, at) => {
    const key = isWeight(token) ? weightKey(token) : '';
    if (key !== '' && !first.has(key)) first.set(key, at);
  });
  return first;
});

const weightKey = ({ quantity: { value, upTo } }: Figure): string => (upTo === null ? value.toPrecision(6) : '');

/** "is the 6.35 oz still right": an amount that the post gave before, spoken of again. */
function isReference(tokens: readonly Token[], k: number, token: Figure): boolean {
  const verb = tokens[k - 2];
  const before = tokens[k - 1];
  const after = tokens[k + 1];
  if (!isWeight(token) || before?.t !== 'word' || after?.t !== 'word' || after.text === 'of') return false;
  const isThe = pointers.has(before.text) && asks(verb);
  const isBare = asks(before) && !isIngredient(verb);
  return (isThe || isBare) && !isIngredient(tokens[k + 2]) && (firstSaid(tokens).get(weightKey(token)) ?? k) < k;
}

const pointers: ReadonlySet<string> = new Set(['the', 'that', 'those', 'this', 'these', 'my', 'your', 'their']);
const verbs: ReadonlySet<string> = new Set(['is', 'are', 'was', 'were', 'if', 'would', 'does', 'do']);
const asks = (token: Token | undefined): boolean => token?.t === 'word' && verbs.has(token.text);

/** "I took it down from 98 g to 95 g", where one of the two was said before. */
function isChange(tokens: readonly Token[], k: number, token: Figure): boolean {
  const before = tokens[k - 1];
  const { dim, upTo } = token.quantity;
  if (dim !== 'mass' || upTo === null || before?.t !== 'word' || before.text !== 'from') return false;
  return [token.quantity.value, upTo].some((value) => (firstSaid(tokens).get(value.toPrecision(6)) ?? k) < k);
}

const isPriceWord = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'price';

/** "to be sold at 4.50": behind a word of selling, with its cents. */
function isPaid(tokens: readonly Token[], k: number, { quantity: { dim, text } }: Figure): boolean {
  const before = tokens[k - 1];
  if (dim !== 'bare' || before?.t !== 'word') return false;
  const hasCents = /^\d+[.,]\d\d$/.test(text);
  // "the price for soda is now 6,20", "price was 4 for the fat and 6 for the coconut"
  const pays = hasCents ? 8 : wordAt(tokens, k + 1) === 'for' ? 12 : 0;
  for (let at = k - 1; at >= 0 && k - at <= pays && !isStop(tokens[at]); at--) if (isPriceWord(tokens[at])) return true;
  if (!hasCents) return false;
  // "lye was 5.99 at the hardware store", "olive was 8.99 a litre"
  const shop = wordAt(tokens, k + 1);
  const sold = /^(at|in)$/.test(shop) && wordAt(tokens, k + 2) === 'the' && tokens[k + 3]?.t === 'word';
  if (/^(was|is|were|are)$/.test(before.text) && (sold || shop === 'a' || shop === 'per')) return true;
  if (!/^(at|for|about)$/.test(before.text)) return false;
  return isAny(tokens, k - 5, k - 1, (one) => gives(one, signal.selling));
}

/** `page 11 of 38`, `2 of 3`: whole figures, behind which nothing is named. */
function isPageCount(tokens: readonly Token[], k: number): boolean {
  const [part, whole, next] = [tokens[k], tokens[k + 2], tokens[k + 3]];
  if (part?.t !== 'quantity' || whole?.t !== 'quantity' || whole.quantity.dim !== 'bare') return false;
  const [a, b] = [part.quantity.value, whole.quantity.value];
  return Number.isInteger(a) && Number.isInteger(b) && a <= b && !isIngredient(next);
}

const isWeight = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'mass';

/** "split the batter in 2", "cut into 10". */
function isPortion(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean {
  const [before, next] = [tokens[k - 1], tokens[k + 1]];
  return (
    dim === 'bare' &&
    Number.isInteger(value) &&
    before?.t === 'word' &&
    /^(in|into)$/.test(before.text) &&
    isAny(tokens, k - 4, k, (one) => gives(one, signal.parting)) &&
    (next?.t !== 'name' || next.meaning.kind === 'role')
  );
}

/** Terms of a sum that a post states, at the most. */
const mostTerms = 12;

/** `140 g NaOH + 280 g water = 420 g`: what the weights of the sentence before it make, behind an equals sign. */
function isStatedSum(tokens: readonly Token[], k: number, token: Figure): boolean {
  const equals = tokens[k - 1];
  const behind = tokens[k + 1];
  if (!isWeight(token) || equals?.t !== 'sign' || equals.text !== '=') return false;
  if (behind?.t === 'name' && !token.quantity.text.endsWith('.')) return false;
  let sum = 0;
  let terms = 0;
  for (let at = k - 2; at >= 0 && terms < mostTerms; at--) {
    const one = tokens[at];
    if (one?.t === 'line' || (one?.t === 'sign' && /^[.;:=]$/.test(one.text))) break;
    if (!isWeight(one)) continue;
    sum += one.quantity.value;
    terms++;
    if (terms >= 2 && Math.abs(sum - token.quantity.value) <= 0.011 * sum) return true;
  }
  return false;
}

const isKnown = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind !== 'role' && token.meaning.kind !== 'ambiguous';

const wordAt = (tokens: readonly Token[], k: number): string => {
  const token = tokens[k];
  return token?.t === 'word' ? token.text : '';
};

const isWord = (token: Token | undefined, text: string): boolean => token?.t === 'word' && token.text === text;

/** "156 g (that includes 12.5 g extra for the acid)": a part of an amount, and of nothing by its name. */
function isIncluded(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!measured(token)) return false;
  const first = Math.max(0, k - 3);
  let at = k - 1;
  for (; at >= first; at--) {
    const one = tokens[at];
    if (one?.t !== 'word' && one?.t !== 'sign') return false;
    if (gives(one, signal.including)) break;
    if (at > first && isWord(one, 'which') && isWord(tokens[at - 1], 'of')) break;
  }
  if (at < first) return false;
  for (let next = k + 1; next < tokens.length && next - k <= 3; next++) {
    const one = tokens[next];
    if (isKnown(one)) return false;
    if (one?.t !== 'word' || one.sort !== 'filler') return true;
  }
  return true;
}

const isUnitWord = (token: Token | undefined): boolean =>
  token?.t === 'word' && /^(g|grams?|oz|ounces?)$/.test(token.text);

/** `coconut oil (76) 9 oz`: of the kind that melts at 76 °F, or of the hydrogenated one at 92. */
const isMeltPoint = (tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean => {
  const name = tokens[k - 2];
  return (
    dim === 'bare' &&
    (value === 76 || value === 92) &&
    isMark(tokens[k - 1], /^\($/) &&
    isMark(tokens[k + 1], /^\)$/) &&
    name?.t === 'name' &&
    /^(coconut|palm-kernel)/.test(name.meaning.id)
  );
};

const pronoun = /^(that|this|these|it|which|them)$/;
const including = /^(including|includes|included|incl|thereof)$/;

/** "Water 300 g, of that I want to take 100 g as ice", "100 g of it ice", "including 100 g ice": a part of the water. */
function isIceOf(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (token.quantity.dim !== 'mass') return false;
  let at = k + 1;
  const ofIt = wordAt(tokens, at) === 'of' && pronoun.test(wordAt(tokens, at + 1));
  while (at - k <= 4 && tokens[at]?.t === 'word') at++;
  const ice = tokens[at];
  if (ice?.t !== 'name' || ice.meaning.kind !== 'ice') return false;
  for (let back = k - 1; !ofIt && back > 0 && k - back <= 7; back--) {
    if (tokens[back]?.t === 'quantity' || isStop(tokens[back])) return false;
    const word = wordAt(tokens, back);
    if (including.test(word) || (pronoun.test(word) && wordAt(tokens, back - 1) === 'of')) return true;
  }
  return ofIt;
}

/** "the two waters", "all four fats", "for those three": how many were named, and no weight. */
function isCounted(tokens: readonly Token[], k: number, { quantity: { dim, value, inWords } }: Figure): boolean {
  const [before, name] = [tokens[k - 1], tokens[k + 1]];
  // "there are thirty-one of them"
  if (
    dim === 'bare' &&
    isWord(tokens[k + 1], 'of') &&
    isWord(tokens[k + 2], 'them') &&
    /^(are|were|have|got)$/.test(wordAt(tokens, k - 1))
  )
    return true;
  if (dim === 'bare' && inWords && value <= 12 && /^(these|those)$/.test(wordAt(tokens, k - 1)))
    return name?.t !== 'name' || name.meaning.kind === 'role';
  return (
    dim === 'bare' &&
    Number.isInteger(value) &&
    value <= 12 &&
    before?.t === 'word' &&
    /^(the|these|those|my|all|both|between|other|our)$/.test(before.text) &&
    name?.t === 'name' &&
    name.text.endsWith('s') &&
    /^(water|fat|alkali|liquid|role)$/.test(name.meaning.kind)
  );
}

/** Names of things of a post that holds a recipe, at the least. */
const leastNamed = 2;

const turningInto: ReadonlySet<string> = new Set(['in', 'to', 'into', 'as']);

/** "Can you turn 850 g into lbs": a conversion asked for beside a recipe, and no amount of anything. */
export function conversions(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  let out: Token[] | null = null;
  const isUnit = (token: Token | undefined): boolean =>
    token?.t === 'word' && lexicon.units.next?.get(token.text)?.hit !== undefined;
  for (let k = 0; k < tokens.length; k++) {
    const first = tokens[k];
    if (first?.t !== 'quantity' || !measured(first)) continue;
    const says = wordAt(tokens, k + 1);
    const into = turningInto.has(says) && isUnit(tokens[k + 2]);
    const starts = says === 'is' || says === 'are' || (says === 'how' && !first.quantity.text.endsWith('.'));
    const many = starts && [2, 3].some((n) => wordAt(tokens, k + n) === 'many');
    const asked = wordAt(tokens, k - 3) === 'many' && isUnit(tokens[k - 2]);
    if (!into && !many && !asked && wordAt(tokens, k - 1) !== 'convert') continue;
    if (!out && tokens.filter(isIngredient).length < leastNamed) return tokens;
    out ??= [...tokens];
    out[k] = asAside(first, 'to be converted');
    const unit = tokens[k + 2];
    if (into && unit?.t === 'word') out[k + 2] = { ...unit, sort: 'everyday' };
  }
  return out ?? tokens;
}

const equating: ReadonlySet<string> = new Set('= is are equals makes being about the same as ≈ ~'.split(' '));

/** Figures of a conversion agree within this share. */
const converted = 0.02;

/** `1 dag = 10 g`, `1 lb is 454 g`: where the other figure stands, if the sentence names nothing that is so heavy. */
function conversionOf(tokens: readonly Token[], k: number, first: Figure): number | null {
  const { dim, value, unit } = first.quantity;
  if (dim !== 'mass' && dim !== 'volume') return null;
  let at = k + 1;
  let equals = false;
  for (let one = tokens[at]; one && at - k <= 4 && !massOf(one); one = tokens[++at]) {
    if (!((one.t === 'word' || one.t === 'sign') && equating.has(one.text))) return null;
    equals = true;
  }
  const second = tokens[at];
  if (!equals || second?.t !== 'quantity' || second.quantity.dim !== dim || second.quantity.unit?.id === unit?.id)
    return null;
  const named = (from: number, to: number): boolean => {
    const near = tokens.slice(Math.max(0, from), to);
    return near.slice(near.findLastIndex(isStop) + 1).some(isKnown);
  };
  const agree = Math.abs(second.quantity.value - value) <= converted * value;
  return agree && !named(k - 3, k) && !named(at + 1, at + 3) ? at : null;
}

const isYear = ({ quantity: { dim, value } }: Figure): boolean =>
  dim === 'bare' && Number.isInteger(value) && value >= 1900 && value < 2100;

const measured = (token: Figure): boolean => massOf(token) && token.quantity.dim !== 'bare';

/** Weights from here on, in g, are what a scale takes, and no step of it. */
const leastTaken = 100;

/** "A 5 kg scale", "a scale that goes up to 250 g": what it takes. */
const isScale = (tokens: readonly Token[], k: number, { quantity }: Figure): boolean => {
  const next = tokens[k + 1];
  const upTo =
    isWord(tokens[k - 1], 'to') &&
    /^(up|goes|weighs|only)$/.test(wordAt(tokens, k - 2)) &&
    isAny(tokens, k - 8, k, (one) => one.t === 'name' && one.meaning.kind === 'role' && one.meaning.id === 'scale');
  if (upTo && quantity.dim === 'mass' && !isIngredient(next)) return true;
  if (!(next?.t === 'name' && next.meaning.kind === 'role' && next.meaning.id === 'scale')) return false;
  // "water 210 g. Scale is ..."
  const isOwned = quantity.text.endsWith('.') || isIngredient(tokens[k - 1]) || isIngredient(tokens[k - 2]);
  return !isOwned && quantity.dim === 'mass' && quantity.value >= leastTaken;
};

/** "the 3 L tin", "a 5 kg bucket": a pack, unless it is "a 500 g tub of". */
function isPack(tokens: readonly Token[], k: number, token: Figure): boolean {
  const next = tokens[k + 1];
  const beyond = tokens[k + 2];
  return (
    next?.t === 'name' &&
    next.meaning.kind === 'role' &&
    next.meaning.id === 'pot' &&
    measured(token) &&
    // "66 g. Pot on low"
    !(token.quantity.text.endsWith('.') && /^\p{Lu}/u.test(next.text)) &&
    // "NaOH 66 g, the tin is lined" without its comma
    !(/^(is|are|was|were|stands|looks)$/.test(wordAt(tokens, k + 2)) && isIngredient(tokens[k - 1])) &&
    token.quantity.times === null &&
    !/ of$/.test(next.meant) &&
    !(beyond?.t === 'word' && beyond.text === 'of')
  );
}

/** "A ring from a cup", "I stirred it in a glass": a vessel, where nothing follows that would be in it. */
function isVessel(tokens: readonly Token[], k: number, { quantity: { dim, text } }: Figure): boolean {
  const [before, next] = [tokens[k - 1], tokens[k + 1]];
  if (dim !== 'volume' || !/^(?:a|an|one)\s/i.test(text) || before?.t !== 'word') return false;
  if (!/^(from|in|into|off|under|by|with)$/.test(before.text)) return false;
  return next?.t !== 'name' && !(next?.t === 'word' && /^(of|for|in|each)$/.test(next.text));
}

/** "Lyes that are 4 g apart", "off by 4 g". */
const isApart = (tokens: readonly Token[], k: number, token: Figure): boolean =>
  measured(token) &&
  (isWord(tokens[k + 1], 'apart') ||
    (isWord(tokens[k - 1], 'by') && /^(off|out|differs?)$/.test(wordAt(tokens, k - 2))));

/** "Out came 2 kg", "it came out at 1850 g": soap, where no ingredient follows. */
function isOutcome(tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean {
  if (dim !== 'mass' || isIngredient(tokens[k + 1]) || isIngredient(tokens[k + 2])) return false;
  let at = k - 1;
  while (k - at <= 3 && /^(at|to|about|around|roughly|nearly|just|under|over)$/.test(wordAt(tokens, at))) at--;
  const [before, last] = [wordAt(tokens, at - 1), wordAt(tokens, at)];
  return (before === 'out' && last === 'came') || (last === 'out' && /^(came|comes)$/.test(before));
}

/** "2 eggs", "eggs 1/2 a dozen": how many, and no weight. */
function isEggs(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean {
  if (dim !== 'bare' || value > mostEggs) return false;
  return [1, -1].some((step) => {
    for (let at = k + step; Math.abs(at - k) <= 3; at += step) {
      const token = tokens[at];
      if (token?.t === 'name') return /^egg/.test(token.meaning.id);
      const counts = token?.t === 'word' ? token.sort === 'filler' : token?.t === 'quantity' || token?.t === 'aside';
      if (!counts) return false;
    }
    return false;
  });
}
const mostEggs = 12;

/** A weight alone in its line, of what the rows above it make: `(32 oz)`, `= 1000 g`. */
function isLoneSum(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isWeight(token) || token.quantity.upTo !== null) return false;
  let [from, to] = [k, k + 1];
  while (isMark(tokens[from - 1], /^[(=[_-]$/)) from--;
  while (isMark(tokens[to], /^[)\]._-]$/)) to++;
  if (tokens[from - 1]?.t !== 'line' || (to < tokens.length && tokens[to]?.t !== 'line')) return false;
  let [sum, rows, weight, named] = [0, 0, 0, false];
  for (let at = from - 2; at >= -1 && rows < mostTerms; at--) {
    const one = tokens[at];
    if (isWeight(one)) weight = weight === 0 ? one.quantity.value : Number.NaN;
    else if (isIngredient(one)) named = true;
    if (one && one.t !== 'line') continue;
    if (!named || !(weight > 0)) return false;
    sum += weight;
    rows++;
    if (rows >= 2 && Math.abs(sum - token.quantity.value) <= 0.006 * sum) return true;
    [weight, named] = [0, false];
  }
  return false;
}

/** "They take 300 ml each", "the pot holds 3.5 litres": what a vessel takes, where no name follows. */
function isHeld(tokens: readonly Token[], k: number, token: Figure): boolean {
  const [verb, next] = [tokens[k - 1], tokens[k + 1]];
  const subject = tokens[k - 2];
  if (!measured(token) || verb?.t !== 'word' || next?.t === 'name' || (next?.t === 'word' && next.text === 'of'))
    return false;
  // "the tub of lye holds 1 kg"
  if (token.quantity.dim !== 'volume') return /^(?:holds|contains)$/.test(verb.text) && !isIngredient(tokens[k + 2]);
  const takes =
    /^takes?$/.test(verb.text) && subject?.t === 'word' && /^(?:they|it|each|that|which)$/.test(subject.text);
  return takes || /^(?:holds?|fits?)$/.test(verb.text);
}

/** "olive -500 g, lye -97 g": a stroke before every weight is a dash. */
export function dashed(tokens: readonly Token[]): readonly Token[] {
  const isWeight = (token: Token): token is Figure => token.t === 'quantity' && token.quantity.dim === 'mass';
  const weights = tokens.filter(isWeight);
  if (weights.length < 3 || !weights.every(({ quantity }) => quantity.negative)) return tokens;
  return tokens.map((token) =>
    isWeight(token) ? { ...token, quantity: { ...token.quantity, negative: false } } : token,
  );
}

/** "Coconut was on offer ... 400 g of it": the thing named last, where it has no weight yet. */
export function namedBefore(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  let named = -1;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    const kind = token?.t === 'name' ? token.meaning.kind : '';
    const next = tokens[k + 1];
    const isDrink = kind === 'liquid' && !(next?.t === 'word' && drinkless.test(next.text));
    if (kind === 'fat' || isDrink) named = k;
    else if (kind === 'alkali' || kind === 'stock') named = -1;
    if (token?.t !== 'quantity' || named < 0 || k - named > 40) continue;
    const owned = isOwned(tokens, k, token);
    const fat = tokens[named];
    if (owned !== null && fat?.t === 'name' && fat.meaning.kind === 'fat' && !weighedThings(tokens).has(thingOf(fat))) {
      out ??= [...tokens];
      out[owned] = { ...fat, from: tokens[owned]?.from ?? 0, to: tokens[owned]?.to ?? 0 };
      continue;
    }
    const rest = boiledDown(tokens, k, token) ? leftAt(tokens, k) : -1;
    if (rest < 0 && !ofIt(tokens, k, token)) continue;
    const [name, pronoun] = [tokens[named], tokens[rest < 0 ? k + 2 : rest]];
    if (rest >= 0 && !(name?.t === 'name' && name.meaning.kind === 'liquid')) continue;
    const noun = tokens[k + 3];
    const isOfFat = noun?.t === 'word' && /^(oils?|fat|butter)$/.test(noun.text);
    if (isOfFat && name?.t === 'name' && name.meaning.kind !== 'fat') continue;
    if (!pronoun || name?.t !== 'name' || weighedThings(tokens).has(thingOf(name))) continue;
    out ??= [...tokens];
    out[rest < 0 ? k + 2 : rest] = { ...name, from: pronoun.from, to: pronoun.to };
  }
  return out ?? tokens;
}

/** "There's always duck fat. I've 600 g, and 150 g coconut": where the verb of having stands; null where it names its own. */
function isOwned(tokens: readonly Token[], k: number, token: Figure): number | null {
  const behind = tokens[k + 1];
  const ends = behind === undefined || isStop(behind) || isMark(behind, /^,$/) || token.quantity.text.endsWith('.');
  if (!measured(token) || !ends) return null;
  const at = /^(about|around|just|only|some|nearly)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
  const verb = wordAt(tokens, at);
  return verb === 'ive' || (/^(have|got)$/.test(verb) && wordAt(tokens, at - 1) === 'i') ? at : null;
}

/** Where "left" stands behind "290 g", "290 g were"; -1 where it does not. */
const leftAt = (tokens: readonly Token[], k: number): number =>
  [k + 1, k + 2].find((at) => isWord(tokens[at], 'left') || isWord(tokens[at], 'remained')) ?? -1;

/** "Simmered till flat, and 290 g were left": of a liquid that was named before. */
const boiledDown = (tokens: readonly Token[], k: number, token: Figure): boolean =>
  measured(token) &&
  leftAt(tokens, k) > 0 &&
  isAny(tokens, k - 10, k, (one) => one.t === 'word' && /^(boil|simmer|reduc|evaporat|cook)/.test(one.text));

/** "300 g of it". */
function ofIt(tokens: readonly Token[], k: number, token: Figure): boolean {
  const [next, beyond, name] = [tokens[k + 1], tokens[k + 2], tokens[k + 3]];
  return (
    next?.t === 'word' &&
    next.text === 'of' &&
    beyond?.t === 'word' &&
    /^(it|that|them|those|which|this)$/.test(beyond.text) &&
    // "100 g of that NaOH": of a thing by its name
    (name?.t !== 'name' || name.meaning.kind === 'role') &&
    // "116 g of which 6 g …": the whole itself
    !(beyond.text === 'which' && name?.t === 'quantity') &&
    measured(token)
  );
}

/** "a 5 litre can of olive oil and used 1 kg": what goes in, of a pack that was said before. */
const isTaken = (tokens: readonly Token[], k: number): boolean =>
  tokens
    .slice(Math.max(0, k - 3), k)
    .some((one) => one.t === 'word' && /^(only|using|used|use|just|took|take|need|weighed)$/.test(one.text));

/** "9 holes, 140 ml each": what a vessel takes. */
const isHoleSize = (tokens: readonly Token[], k: number, { quantity }: Figure): boolean =>
  quantity.dim === 'volume' &&
  (quantity.each ||
    [tokens[k + 1], tokens[k - 1]].some(
      (one) => one?.t === 'name' && one.meaning.kind === 'role' && one.meaning.id === 'each',
    )) &&
  isAny(tokens, k - 4, k, (one) => one.t === 'name' && one.meaning.kind === 'role' && one.meaning.id === 'mould');

/** "9 little half spheres (80 ml each)": a bracket about what is no ingredient. */
const isHollow = (tokens: readonly Token[], k: number, { quantity }: Figure): boolean =>
  quantity.dim === 'volume' &&
  (quantity.each || isEach(tokens[k + 1])) &&
  isMark(tokens[k - 1], /^\($/) &&
  isMark(tokens[isEach(tokens[k + 1]) ? k + 2 : k + 1], /^\)$/) &&
  tokens[k - 2]?.t === 'word' &&
  !isAny(tokens, k - 6, k - 1, isIngredient);

/** "One loaf (just under 1000 g)": what it weighs, or holds. */
function isLoaf(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!measured(token)) return false;
  let at = k - 1;
  while (k - at <= 3 && tokens[at]?.t === 'word') at--;
  const mould = tokens[at - 1];
  return (
    isMark(tokens[at], /^\($/) && mould?.t === 'name' && mould.meaning.kind === 'role' && mould.meaning.id === 'mould'
  );
}

const roughly: ReadonlySet<string> = new Set(['about', 'around', 'approx', 'roughly', 'some', 'nearly']);

/** "12 pucks of about 100 g": so many of something that is no ingredient, each of that weight. */
function isPieceWeight(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (token.quantity.dim !== 'mass') return false;
  const behind = tokens[k + 1];
  if (behind?.t === 'name' || (behind?.t === 'word' && behind.text === 'of')) return false;
  let at = k - 1;
  if (roughly.has(wordAt(tokens, at))) at--;
  if (wordAt(tokens, at) !== 'of') return false;
  const [piece, count] = [tokens[at - 1], tokens[at - 2]];
  return (
    piece?.t === 'word' &&
    piece.sort === 'everyday' &&
    piece.text.endsWith('s') &&
    count?.t === 'quantity' &&
    count.quantity.dim === 'bare' &&
    count.quantity.value > 1
  );
}

/** "We'll cut them at a hundred grams". */
const isCutAt = (tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean =>
  dim === 'mass' &&
  /^(at|to|into)$/.test(wordAt(tokens, wordAt(tokens, k - 1) === 'a' ? k - 2 : k - 1)) &&
  [k - 2, k - 3, k - 4].some((at) => /^(cut|cutting|cuts|slice|sliced)$/.test(wordAt(tokens, at))) &&
  !isIngredient(tokens[k + 1]);

/** "I have 1.1 kg of tallow, of which I want to put 450 g in": where the amount stands that this is a part of. */
function ofWhich(tokens: readonly Token[], k: number, token: Figure): number | null {
  if (token.quantity.dim !== 'mass') return null;
  let [at, takes] = [k - 1, false];
  const isTarget = (one: Token | undefined): boolean =>
    one?.t === 'name' && one.meaning.kind === 'role' && one.meaning.id === 'target';
  while (k - at <= 8 && (tokens[at]?.t === 'word' || isTarget(tokens[at])) && !isWord(tokens[at], 'which')) {
    takes ||= /^(put|use|used|using|take|took|taking|want|goes|go|went|need|weighed)$/.test(wordAt(tokens, at));
    at--;
  }
  if (!takes || !isWord(tokens[at], 'which') || !isWord(tokens[at - 1], 'of')) return null;
  for (let whole = at - 2; whole >= 0 && at - whole <= 8 && !isStop(tokens[whole]); whole--) {
    const one = tokens[whole];
    if (isWeight(one)) return one.quantity.value > token.quantity.value ? whole : null;
  }
  return null;
}

const pieces = /^(piece|slice|puck|cake|tablet|square|heart|brick|one)$/;

/** "One piece is then about 110 g". */
function isOnePiece(tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean {
  if (dim !== 'mass' || isIngredient(tokens[k + 1])) return false;
  let at = k - 1;
  while (k - at <= 4 && (light(tokens[at]) || isWord(tokens[at], 'then')) && !pieces.test(wordAt(tokens, at))) at--;
  return (
    isAny(tokens, at + 1, k, (one) => one.t === 'word' && /^(is|was|weighs?|weighed)$/.test(one.text)) &&
    pieces.test(wordAt(tokens, at)) &&
    /^(one|a|each|every|per|single)$/.test(wordAt(tokens, at - 1))
  );
}

const isCount = (token: Token): boolean => token.t === 'quantity' && token.quantity.dim === 'bare';

/** "12 bars at 100 g", "bars of 4 oz each". */
function isBarWeight(tokens: readonly Token[], k: number, token: Figure, bars: number): boolean {
  return (
    token.quantity.dim === 'mass' &&
    (token.quantity.each ||
      tokens
        .slice(bars, k)
        .some((one) => one.t === 'name' && one.meaning.kind === 'role' && one.meaning.id === 'each') ||
      tokens
        .slice(Math.max(0, k - 4), k)
        .some(
          (one, n, all) =>
            (one.t === 'word' || one.t === 'sign') &&
            (/^(at|@|of|average|averaging|avg|weighing)$/.test(one.text) ||
              (/^(is|was|are|were|weighs?|weighed)$/.test(one.text) && !isIngredient(tokens[k + 1]))) &&
            all.slice(n + 1).every((word) => light(word) || isWord(word, 'then')) &&
            (k - bars <= 3 ||
              tokens.slice(bars + 1, k).every((word) => word.t === 'word' || isMark(word, /^[:×]$/) || isCount(word))),
        ))
  );
}

/** `10 % of 800 g`: the weight that shares are of. */
export function shareBase(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 1; k < tokens.length; k++) {
    const before = tokens[k - 1];
    if (before?.t !== 'quantity' || before.quantity.dim !== 'percent') continue;
    const [token, after] = [tokens[k], tokens[k + 1]];
    if (token?.t !== 'word' || token.text !== 'of' || !isWeight(after)) continue;
    out ??= [...tokens];
    const meaning = { kind: 'role', id: 'total-fats' } as const;
    out[k] = { t: 'name', from: token.from, to: token.to, text: 'of', meaning, how: 'name', meant: 'of fats' };
  }
  return out ?? tokens;
}

/** `"g": 250`, `grams = 250`, `bar_size_mm: [80, 55, 25]`, `superfat_pct: 5`: the unit stands before its figures. */
export function unitsBefore(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const word = tokens[k];
    if (word?.t !== 'word' || tokens[k + 1]?.t !== 'sign') continue;
    const keyed = isMark(tokens[k - 1], /^_$/);
    const share = keyed && /^(pct|percent|perc)$/.test(word.text);
    const degrees = keyed && /^[cf]$/.test(word.text) ? `°${word.text.toUpperCase()}` : undefined;
    const hit = share ? null : (degrees ?? lexicon.units.next?.get(word.text)?.hit);
    const dimension = hit ? unit(hit).dimension : null;
    if (!share && !(dimension === 'mass' || (keyed && dimension !== null))) continue;
    let at = k + 1;
    let pointed = false;
    // "grams_each: 118"
    if (isMark(tokens[at], /^_$/) && isEach(tokens[at + 1])) at += 2;
    for (; isMark(tokens[at], /^["':=]$/); at++) pointed ||= isMark(tokens[at], /^[:=]$/);
    if (!pointed) continue;
    const many = isMark(tokens[at], /^[[{]$/) ? at : null;
    for (let j = many ?? at; j < tokens.length; j++) {
      const token = tokens[j];
      if (token?.t === 'line' || isMark(token, /^[\]}]$/)) break;
      if (token?.t === 'quantity' && token.quantity.dim === 'bare') {
        const { quantity } = token;
        out ??= [...tokens];
        out[j] = {
          ...token,
          quantity: hit ? withUnit(quantity, hit) : { ...quantity, dim: 'percent', value: quantity.value / 100 },
        };
        if (share || degrees) out[k] = { ...word, sort: 'filler' };
      }
      if (many === null) break;
    }
  }
  return out ?? tokens;
}

const isEach = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'each';

const isMark = (token: Token | undefined, marks: RegExp): boolean => token?.t === 'sign' && marks.test(token.text);

/** `half coconut, half lard`, `one third olive, two thirds lard`: shares where they make the whole. */
export function fractionShares(tokens: readonly Token[]): readonly Token[] {
  const found = new Map<number, number>();
  tokens.forEach((token, k) => {
    if (token.t !== 'name' || token.meaning.kind !== 'fat') return;
    let at = k - 1;
    for (let word = tokens[at]; word?.t === 'word' && /^(of|the|is)$/.test(word.text); word = tokens[--at]);
    const before = tokens[at];
    if (before?.t === 'word' && /^(half|quarter)$/.test(before.text))
      found.set(at, before.text === 'half' ? 0.5 : 0.25);
    else if (
      before?.t === 'quantity' &&
      before.quantity.inWords &&
      before.quantity.dim === 'bare' &&
      before.quantity.value < 1
    )
      found.set(at, before.quantity.value);
  });
  const sum = [...found.values()].reduce((all, value) => all + value, 0);
  if (found.size < 2 || Math.abs(sum - 1) > 0.0101) return tokens;
  const out = [...tokens];
  for (const [k, value] of found) {
    const token = tokens[k];
    if (token?.t !== 'quantity' && token?.t !== 'word') continue;
    const { text, numbers } = token.t === 'quantity' ? token.quantity : { text: token.text, numbers: [] };
    out[k] = {
      t: 'quantity',
      from: token.from,
      to: token.to,
      quantity: { ...inWords, dim: 'percent', value, text, numbers },
    };
  }
  return out;
}

/** What every amount in words has in common. */
const inWords = { ...plainQuantity, inWords: true } as const;

/** `equal amounts of olive, coconut and lard` as one part each. */
export function equalParts(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (token?.t !== 'name' || token.meaning.kind !== 'role' || token.meaning.id !== 'equal') continue;
    const next = tokens[k + 1];
    // "equal parts olive, coconut and lard, 300 g each"
    if (
      isAny(
        tokens,
        k + 1,
        k + 16,
        (one, at) =>
          one.t === 'quantity' && one.quantity.dim === 'mass' && (one.quantity.each || isEach(tokens[at + 1])),
      )
    ) {
      out ??= [...tokens];
      out[k] = asFiller(token);
      continue;
    }
    // "for the same amount of oils" speaks of a sum
    if (next?.t === 'name' && next.meaning.id === 'total-fats') continue;
    out ??= [...tokens];
    out[k] = {
      t: 'quantity',
      from: token.from,
      to: token.to,
      quantity: { ...inWords, dim: 'parts', value: 1, each: true, text: token.text, numbers: [] },
    };
  }
  return out ?? tokens;
}

/** Figures that count packs: `2 bottles of 500 ml olive oil`, `1 can coconut milk`, `a jar (14 oz)`. */
import { packed } from '../columns/columns.ts';
import { plainQuantity, type Quantity } from '../words/quantities.ts';
import { signal } from '../words/signal-words.ts';
import { givesAt, type Signals } from '../words/signals.ts';
import {
  isEach,
  isIngredient,
  isMark,
  isMeasured,
  isPot,
  isRole,
  isStop,
  isWord,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { behindOf, shareAt } from './part-of-pack.ts';

/** Packs of one thing in one recipe, at the most. */
const mostPacks = 48;

/** `2 can coconut milk`, which is a name of its own. */
const namesPack = (token: Token | undefined): boolean =>
  token?.t === 'name' && /^(can|tin|carton)s? /.test(token.meant);

/** The amount that says how much one pack holds: right behind its word, or in a bracket there. */
function contentsAt(tokens: readonly Token[], from: number): { readonly at: number; readonly each: boolean } | null {
  let said = false;
  for (let k = from; k - from < 3; k++) {
    const token = tokens[k];
    if (token?.t === 'quantity')
      return token.quantity.dim === 'mass' || token.quantity.dim === 'volume'
        ? { at: k, each: said || token.quantity.each || isEach(tokens[k + 1]) }
        : null;
    if (token?.t === 'word' && /^(of|at|a|x)$/.test(token.text)) said = true;
    else if (token?.t !== 'sign' || !/^[(@×~]$/.test(token.text)) return null;
    else said ||= token.text === '@' || token.text === '×';
  }
  return null;
}

/** `3 tubs of coconut oil from the shop, 400 g each`: what one holds, told behind the name. */
function toldBehind(tokens: readonly Token[], from: number): number | null {
  const name = tokens[from];
  if (name?.t !== 'name' || name.meaning.kind === 'role') return null;
  for (let k = from + 1; k - from < 10; k++) {
    const token = tokens[k];
    if (token?.t === 'quantity')
      return (token.quantity.dim === 'mass' || token.quantity.dim === 'volume') &&
        (token.quantity.each || isEach(tokens[k + 1]) || (k === from + 2 && isAt(tokens[k - 1])))
        ? k
        : null;
    if (token === undefined || token.t === 'line' || token.t === 'aside' || token.t === 'name') return null;
  }
  return null;
}

const packWords =
  /^(?:boxes|pouches|packages|bricks|slabs|drums|canisters|jerrycans|flasks|tubes|cartons|cubes|bars|cakes|rolls|pats)$/;
const others = /^(?:batch|dos)es$/;

/** "Tins", "drums of olive oil": more than one of what an amount is kept in, known or not. */
function isPlural(tokens: readonly Token[], k: number): boolean {
  const token = tokens[k];
  if (isPot(token)) return /s(?: of)?$/i.test(token.text);
  if (token?.t !== 'word' || !token.text.endsWith('s') || others.test(token.text)) return false;
  if (packWords.test(token.text)) return true;
  return isWord(tokens[k + 1], 'of') && isIngredient(tokens[k + 2]);
}

/** "four packs of lard at 250 g". */
const isAt = (token: Token | undefined): boolean =>
  (token?.t === 'word' && token.text === 'at') || (token?.t === 'sign' && token.text === '@');

const multiplied = (one: Quantity, count: Quantity, each: boolean): Quantity => ({
  ...one,
  value: each ? one.value * count.value : one.value,
  other: null,
  // "2 jars (400 g)": of one, or of both together
  upTo: each ? null : one.value * count.value,
  each: false,
  times: each ? count.value : null,
  text: `${count.text} x ${one.text}`,
  numbers: [...count.numbers, ...one.numbers],
});

/** `1/2 of a 3 lb tub`, `half of the 500 g block`, `cut a fifth off a 500 g block`: the part of what stands behind it. */
export function takeParts(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k + 1 < tokens.length; k++) {
    const token = tokens[k];
    const share = token && givesAt(signals, k, signal.part) ? shareAt(tokens, k) : null;
    if (!token || !share) continue;
    let at = behindOf(tokens, k, k + 1);
    let of = at > k + 1 || (token.t === 'quantity' && /\b(of|an?)$/.test(token.quantity.text));
    for (let word = tokens[at]; word?.t === 'word' && /^(of|a|an|the|my)$/.test(word.text); word = tokens[++at])
      of = true;
    const whole = tokens[at];
    if (!of || whole?.t !== 'quantity' || !(whole.quantity.dim === 'mass' || whole.quantity.dim === 'volume')) continue;
    const { quantity } = whole;
    const numbers = token.t === 'quantity' ? [...token.quantity.numbers, ...quantity.numbers] : quantity.numbers;
    out ??= [...tokens];
    out[at] = { ...whole, quantity: { ...quantity, value: quantity.value * share, other: null, numbers } };
    out[k] = asFiller(token);
    const [pack, off] = [tokens[at + 1], tokens[k + 1]];
    if (pack && (isPot(pack) || (isRole(pack, 'mould') && isWord(tokens[at + 2], 'of')))) out[at + 1] = asFiller(pack);
    if (!off || at === k + 1 || !isRole(off, 'price')) continue;
    // "sliced a fifth off a 500 g block": of no bar, and of no price
    out[k + 1] = asFiller(off);
    for (const near of [k - 1, k - 2]) if (isRole(tokens[near], 'bars')) out[near] = asFiller(tokens[near] as Token);
  }
  return out ?? tokens;
}

/** An ingredient stands behind "two 250 g blocks (of)", or right before it. */
function isNamed(tokens: readonly Token[], from: number, to: number): boolean {
  if (isIngredient(tokens[isWord(tokens[to], 'of') ? to + 1 : to])) return true;
  let at = from - 1;
  while (from - at <= 3 && isMark(tokens[at], ':,(-–—=\t')) at--;
  return isIngredient(tokens[at]);
}

const betweenCount =
  /^(?:of|the|my|our|these|those|big|large|small|little|whole|full|more|new|old|other|spare|unopened|opened)$/;

/** How many there are of what is measured at `k`, and where that stands: "two", "both", "a pair of". */
function countBefore(tokens: readonly Token[], k: number): { readonly at: number; readonly count: Quantity } | null {
  let at = k - 1;
  while (k - at <= 3 && betweenCount.test(wordAt(tokens, at))) at--;
  const token = tokens[at];
  if (/^(?:both|pair)$/.test(wordAt(tokens, at)))
    return { at, count: { ...plainQuantity, dim: 'bare', value: 2, text: '2' } };
  if (token?.t !== 'quantity' || token.quantity.dim !== 'bare') return null;
  const { value } = token.quantity;
  // "two and a half 250 g blocks"
  return Number.isInteger(4 * value) && value > 1 && value <= mostPacks ? { at, count: token.quantity } : null;
}

const perBar: ReadonlySet<string> = new Set(['x', '×', '@', 'of', 'at', 'each', 'à']);

/** "3 bars x 100 g coconut", "coconut: 3 blocks x 100 g": the count of bars that go in; -1 where they are of soap. */
function barsOf(tokens: readonly Token[], k: number): number {
  const [count, bars, per] = [tokens[k - 3], tokens[k - 2], tokens[k - 1]];
  if (!per || !('text' in per) || !perBar.has(per.text.toLowerCase())) return -1;
  if (!isPlural(tokens, k - 2) && !(isRole(bars, 'bars') && /^(?:bars|pieces|slices)$/i.test(spoken(bars)))) return -1;
  if (count?.t !== 'quantity' || count.quantity.dim !== 'bare') return -1;
  const { value } = count.quantity;
  if (!Number.isInteger(value) || value < 2 || value > mostPacks) return -1;
  const behind = isWord(tokens[k + 1], 'of') ? k + 2 : k + 1;
  const before = isMark(tokens[k - 4], ':-–—=(\t') ? k - 5 : k - 4;
  const isBehind = isIngredient(tokens[behind]);
  const name = tokens[isBehind ? behind : before];
  const isOnly =
    isIngredient(name) &&
    !tokens.some((one) => one !== name && isIngredient(one) && one.meaning.id === name.meaning.id);
  const stands = isBehind ? ends(tokens, behind + 1) : isOpen(tokens, before - 1) && ends(tokens, k + 1);
  return isOnly && stands ? k - 3 : -1;
}

const isOpen = (tokens: readonly Token[], k: number): boolean => isStop(tokens[k]) || isMark(tokens[k], ',-•*+:');
const ends = (tokens: readonly Token[], k: number): boolean =>
  isStop(tokens[k]) || isMark(tokens[k], ',)+') || isWord(tokens[k], 'and');

const part =
  /^(?<all>(?<off>(?:and|plus)|(?:minus|less|except|without)) (?:a |the )?(?:(?<of>half|quarter|third)(?= (?:of (?:a|another|one|the (?:second|third|next|last|other|[a-z]+th))\b|one\b|block\b|pack\b|tub\b|jar\b|bar\b|went\b|$))|(?<one>one)(?= (?:i|we|that|which|of them|for|$))))/;
const parts: Readonly<Record<string, number>> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3 };
/** "Three 250 g blocks of lard and a half one", "three … minus one I gave away": of how many more or less it is told. */
function partBehind(
  tokens: readonly Token[],
  k: number,
): { readonly add: number; readonly text: string; readonly to: number } {
  let at = isWord(tokens[k], 'of') ? k + 1 : k;
  if (isIngredient(tokens[at])) at++;
  if (isMark(tokens[at], ',')) at++;
  const words = tokens.slice(at, at + 8).map((one) => (one.t === 'quantity' ? one.quantity.text : spoken(one)));
  const found = part.exec(words.join(' ').toLowerCase())?.groups;
  if (!found?.['all']) return { add: 0, text: '', to: at };
  const { all: text, off = '', of, one } = found;
  const adds = off === 'and' || off === 'plus';
  const add = of ? (parts[of] ?? 0) : one && !adds ? 1 : 0;
  return { add: adds ? add : -add, text, to: at + text.split(' ').length };
}

/** "One of my two 250 g jars", "three of those four 500 g tins": how many of them, and where that begins; null where all are. */
function someOfThem(
  tokens: readonly Token[],
  { at: count, count: { value: all } }: { readonly at: number; readonly count: Quantity },
): { readonly from: number; readonly value: number; readonly text: string } | null {
  let of = count - 1;
  while (count - of <= 2 && /^(?:the|my|our|these|those|his|her|their)$/.test(wordAt(tokens, of))) of--;
  const some = tokens[of - 1];
  // a numeral may hold its "of"
  const one = isWord(tokens[of], 'of') ? some : tokens[of];
  const from = isWord(tokens[of], 'of') ? of - 1 : of;
  if (one?.t === 'quantity' && one.quantity.dim === 'bare' && (from < of || /\bof$/.test(one.quantity.text))) {
    const { value, text } = one.quantity;
    return value > 0 && value < all ? { from, value, text } : null;
  }
  return from < of && /^(?:one|either|another)$/.test(spoken(one)) ? { from, value: 1, text: 'one' } : null;
}

/** "Two 250 g blocks of lard", "lard: two 250 g blocks", "both 1 kg tins of olive oil": so many times what one holds. */
export function sizedPacks(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const sized = tokens[k];
    if (!isMeasured(sized) || sized.quantity.times !== null) continue;
    const bars = barsOf(tokens, k);
    if (bars >= 0) {
      out ??= [...tokens];
      const count = tokens[bars] as Figure;
      out[k] = { ...sized, quantity: multiplied(sized.quantity, count.quantity, true) };
      for (const at of [bars, k - 2, k - 1]) out[at] = asFiller(tokens[at] as Token);
      continue;
    }
    if (!isPlural(tokens, k + 1)) continue;
    const counted = countBefore(tokens, k);
    const some = counted && someOfThem(tokens, counted);
    if (!counted || !isNamed(tokens, some?.from ?? counted.at, k + 2)) continue;
    out ??= [...tokens];
    const { add, text, to } = partBehind(tokens, k + 2);
    if (some && add === 0) {
      const { value, text: said } = some;
      out[k] = { ...sized, quantity: multiplied(sized.quantity, { ...counted.count, value, text: said }, true) };
      for (let at = some.from; at <= counted.at; at++) out[at] = asFiller(tokens[at] as Token);
      continue;
    }
    const { count: many } = counted;
    const all = add === 0 ? many : { ...many, value: many.value + add, text: `${many.text} ${text}` };
    out[k] = { ...sized, quantity: multiplied(sized.quantity, all, true) };
    for (let at = to - text.split(' ').length; at < to && add !== 0; at++) out[at] = asFiller(tokens[at] as Token);
    const count = tokens[counted.at];
    if (count) out[counted.at] = asFiller(count);
  }
  return out ?? tokens;
}

const coming = /^(?:comes|come|came|sold|is|are|packed|packaged|wrapped)$/;
const having = /^(?:have|got|ive|use|used|using|take|took|taking|need|melted|weighed)$/;
const usingIt = /^(?:use|used|using|take|took|taking|need|melted|weighed)$/;
/** Tokens from the size to how many of it there are, at the most. */
const longestWay = 14;

/** "Three and a half blocks went in", "two of them were used". */
function wentBehind(tokens: readonly Token[], at: number): boolean {
  let k = at + 1;
  while (k - at <= 3 && (isPlural(tokens, k) || /^(?:of|them|those|these|whole|full|bars)$/.test(spoken(tokens[k]))))
    k++;
  const [verb, way] = [spoken(tokens[k]), spoken(tokens[k + 1])];
  return (
    (/^(?:went|go|goes|got)$/.test(verb) && /^(?:in|into)$/.test(way)) ||
    (/^(?:were|was|are|is|got)$/.test(verb) && /^(?:used|melted|put)$/.test(way))
  );
}

/** "Comes in 250 g bars": what one holds, and how many are had or used, by the next verb that says so. */
function countOfIt(tokens: readonly Token[], k: number): readonly number[] {
  const found: { readonly at: number; readonly uses: boolean }[] = [];
  for (let at = k + 2; at - k <= longestWay && tokens[at]?.t !== 'line'; at++) {
    const [verb, token, next] = [wordAt(tokens, at - 1), tokens[at], tokens[at + 1]];
    if (isIngredient(token)) break;
    // "and use one"
    if (having.test(verb) && /^(?:one|both|all|half|some|most)$/.test(wordAt(tokens, at))) return [];
    if (token?.t !== 'quantity' || token.quantity.dim !== 'bare') continue;
    // "I used two and a half blocks, the other half is in the fridge"
    if (found.some(({ uses }) => uses)) break;
    const { value } = token.quantity;
    const ends =
      isStop(next) || isMark(next, ',)') || isWord(next, 'and') || isWord(next, 'of') || isPlural(tokens, at + 1);
    const went = wentBehind(tokens, at);
    if (!(went || (having.test(verb) && ends)) || !Number.isInteger(4 * value) || value < 1 || value > mostPacks)
      return [];
    found.push({ at, uses: went || usingIt.test(verb) });
  }
  const uses = found.filter((one) => one.uses);
  const [meant, ...more] = uses.length > 0 ? uses : found;
  return meant && more.length === 0 ? [meant.at, ...found.map(({ at }) => at).filter((at) => at !== meant.at)] : [];
}

/** "Coconut comes in 250 g bars, I have two": so many of them; where nobody says how many, the size alone weighs nothing. */
export function barsOfIt(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const size = tokens[k];
    const bars = tokens[k + 1];
    if (!isMeasured(size) || !bars || !isWord(tokens[k - 1], 'in') || !coming.test(wordAt(tokens, k - 2))) continue;
    const name = /^(?:is|are|gets|only|usually|always)$/.test(wordAt(tokens, k - 3)) ? k - 4 : k - 3;
    if (!isIngredient(tokens[name]) || !(isPlural(tokens, k + 1) || isRole(bars, 'bars'))) continue;
    const [at = -1, ...others] = countOfIt(tokens, k);
    const count = tokens[at];
    out ??= [...tokens];
    out[k + 1] = asFiller(bars);
    if (count?.t !== 'quantity') {
      out[k] = asAside(size, packed);
      continue;
    }
    out[k] = { ...size, quantity: multiplied(size.quantity, count.quantity, true) };
    out[at] = asFiller(count);
    for (const other of others) out[other] = asAside(tokens[other] as Figure, 'a count');
  }
  return out ?? tokens;
}

const isTimes = (token: Token | undefined): boolean => isWord(token, 'x') || isMark(token, '×');

/** "250 g lard x2", "2x lard 250 g": so many of what is weighed; where the count stands, and the weight. */
function timesAt(tokens: readonly Token[], k: number): { readonly count: number; readonly times: number } | null {
  if (!isIngredient(tokens[k + 1]) && !isIngredient(tokens[k - 1])) return null;
  if (isTimes(tokens[k + 2]) && isIngredient(tokens[k + 1])) return { count: k + 3, times: k + 2 };
  return isTimes(tokens[k - 2]) && isIngredient(tokens[k - 1]) ? { count: k - 3, times: k - 2 } : null;
}

/** The tokens in which a weight beside its name is taken as often as is said there. */
export function manyOfIt(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const one = tokens[k];
    const at = isMeasured(one) && one.quantity.times === null ? timesAt(tokens, k) : null;
    const [count, times] = at ? [tokens[at.count], tokens[at.times]] : [];
    if (!at || !isMeasured(one) || !times || count?.t !== 'quantity' || count.quantity.dim !== 'bare') continue;
    const { value } = count.quantity;
    const ends = at.count < k || isStop(tokens[at.count + 1]) || isMark(tokens[at.count + 1], ',(@)');
    if (!ends || !Number.isInteger(value) || value < 2 || value > mostPacks) continue;
    out ??= [...tokens];
    out[k] = { ...one, quantity: multiplied(one.quantity, count.quantity, true) };
    out[at.count] = asFiller(count);
    out[at.times] = asFiller(times);
  }
  return out ?? tokens;
}

/** "Pressed into 5 tins of 110 ml", before no name: what the soap goes into. */
function isFilled(tokens: readonly Token[], k: number, contents: number): boolean {
  const [before, size, next] = [tokens[k - 1], tokens[contents], tokens[contents + 1]];
  const into = before?.t === 'word' && /^(?:into|in|fills?|filled|makes?|made|gives?|gave)$/.test(before.text);
  const isVolume = size?.t === 'quantity' && size.quantity.dim === 'volume';
  const ends = isVolume && size.quantity.text.endsWith('.');
  return into && isVolume && (ends || next?.t !== 'name') && !(next?.t === 'word' && next.text === 'of');
}

/** "2 blocks of coconut, 250 g each, used one and a half": where it tells how many of them were used; -1 where it does not. */
function usedBehind(tokens: readonly Token[], from: number, all: number): number {
  for (let at = from + 1; at - from <= longestWay; at++) {
    const token = tokens[at];
    if (!token || isStop(token) || isIngredient(token)) return -1;
    if (token.t !== 'quantity') continue;
    const { dim, value } = token.quantity;
    const ends =
      isStop(tokens[at + 1]) ||
      isMark(tokens[at + 1], ',)') ||
      isWord(tokens[at + 1], 'of') ||
      isPlural(tokens, at + 1);
    return dim === 'bare' && usingIt.test(wordAt(tokens, at - 1)) && ends && value > 0 && value < all ? at : -1;
  }
  return -1;
}

/** The tokens with counts of packs taken into what the packs hold, or set aside where nobody says what that is. */
export function countPacks(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || token.quantity.dim !== 'bare') continue;
    const { value } = token.quantity;
    if (!(isPot(tokens[k + 1]) || namesPack(tokens[k + 1]))) continue;
    const nameAt = k + (tokens[k + 2]?.t === 'word' ? 3 : 2);
    const behind = isPot(tokens[k + 1]) ? toldBehind(tokens, nameAt) : null;
    const one = behind === null ? null : tokens[behind];
    const size = behind ?? contentsAt(tokens, k + 2)?.at ?? k;
    const filled = tokens[size];
    if (filled?.t === 'quantity' && size > k && isFilled(tokens, k, size)) {
      out ??= [...tokens];
      out[k] = asAside(token, packed);
      out[size] = asAside(filled, packed);
      continue;
    }
    const packWord = tokens[k + 1];
    if (one?.t === 'quantity' && behind !== null && packWord && Number.isInteger(4 * value) && value <= mostPacks) {
      out ??= [...tokens];
      const used = usedBehind(tokens, behind, value);
      const count = used < 0 ? token : (tokens[used] as Figure);
      out[k] = { ...token, quantity: multiplied(one.quantity, count.quantity, true) };
      if (used >= 0) out[used] = asFiller(count);
      out[k + 1] = asFiller(packWord);
      out[behind] = asFiller(one);
      const each = tokens[behind + 1];
      if (each && isEach(each)) out[behind + 1] = asFiller(each);
      continue;
    }
    const contents = contentsAt(tokens, k + 2);
    const held = contents && (tokens[contents.at] as Figure);
    const counts = Number.isInteger(4 * value) && value > 1 && value <= mostPacks;
    const pack = tokens[k + 1];
    out ??= [...tokens];
    if (held && counts && pack) {
      if (isPot(pack)) out[k + 1] = asFiller(pack);
      out[contents.at] = { ...held, quantity: multiplied(held.quantity, token.quantity, contents.each) };
      out[k] = asFiller(token);
    } else out[k] = asAside(token, packed);
  }
  return out ?? tokens;
}

/** Weights of what was named in a sentence before: "Coconut was on offer ... 400 g of it". */

import { drinkless } from '../rows/items.ts';
import { signal } from '../words/signal-words.ts';
import { gives, type Signals } from '../words/signals.ts';
import {
  isAny,
  isFat,
  isIngredient,
  isMark,
  isMeasured,
  isPot,
  isRole,
  isStop,
  isWord,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedElsewhere, weighedThings } from '../words/weighed.ts';
import { goesIn } from './drawn-from.ts';
import { inStore } from './in-store.ts';
import { isTaken, ofIt, pronoun } from './of-it.ts';

/** "Coconut was on offer ... 400 g of it": the thing named last, where it has no weight yet. */
export function namedBefore(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || !(isPlain(tokens[k - 1]) || isPlain(tokens[k + 1]) || isPlain(tokens[k + 2])))
      continue;
    const owned = isOwned(tokens, k, token) ?? weighedIt(tokens, k, token);
    const rest = boiledDown(tokens, k, token) ? leftAt(tokens, k) : -1;
    const from = fromIt(tokens, k, token);
    const isOfIt = rest >= 0 || from >= 0 || ofIt(tokens, k, token);
    const [lye, place] = isMeasured(token) ? lyeBefore(tokens, k, isOfIt && rest < 0 && from < 0) : nowhere;
    const alkali = tokens[lye];
    const stand = tokens[place];
    if (alkali?.t === 'name' && stand) {
      out ??= [...tokens];
      out[place] = { ...alkali, from: stand.from, to: stand.to };
      continue;
    }
    const changed = owned === null && !isOfIt ? changedTo(tokens, k, token) : -1;
    const named = owned !== null || isOfIt || changed >= 0 ? namedLast(tokens, k) : -1;
    if (named < 0) continue;
    const fat = tokens[named];
    const it = tokens[changed];
    if (it) {
      if (fat?.t !== 'name' || fat.meaning.kind !== 'fat' || weighedThings(tokens).has(thingOf(fat))) continue;
      out ??= [...tokens];
      out[changed] = { ...fat, from: it.from, to: it.to };
      continue;
    }
    const volumes = owned === null ? none : volumesBetween(tokens, named, k);
    const isNew = fat?.t === 'name' && (weighedThings(tokens).get(thingOf(fat)) ?? 0) <= volumes.length;
    if (owned !== null && fat?.t === 'name' && fat.meaning.kind === 'fat' && isNew) {
      out ??= [...tokens];
      for (const at of volumes) out[at] = asAside(tokens[at] as Figure, 'the same in another unit');
      out[owned] = { ...fat, from: tokens[owned]?.from ?? 0, to: tokens[owned]?.to ?? 0 };
      continue;
    }
    if (!isOfIt) continue;
    const stands = from >= 0 ? from : rest < 0 ? k + 2 : rest;
    const [name, pronoun] = [tokens[named], tokens[stands]];
    if (rest >= 0 && !(name?.t === 'name' && name.meaning.kind === 'liquid')) continue;
    const noun = tokens[k + 3];
    const isOfFat = noun?.t === 'word' && /^(oils?|fat|butter)$/.test(noun.text);
    if (isOfFat && name?.t === 'name' && name.meaning.kind !== 'fat') continue;
    if (!pronoun || name?.t !== 'name') continue;
    const whole = weighedThings(tokens).has(thingOf(name)) ? storeOf(tokens, named, token) : null;
    if (weighedThings(tokens).has(thingOf(name)) && (whole === null || !isTaken(tokens, k) || !goesIn(tokens, k)))
      continue;
    out ??= [...tokens];
    const pack = whole ?? packBetween(tokens, named, k);
    if (pack !== null) out[pack] = asAside(tokens[pack] as Figure, inStore);
    out[stands] = { ...name, from: pronoun.from, to: pronoun.to };
  }
  return out ?? tokens;
}

/** "Olive (a bottle of 500 ml, 340 g of it used)": the size of what it is kept in. */
function packBetween(tokens: readonly Token[], from: number, to: number): number | null {
  for (let at = to - 1; at > from; at--)
    if (isMeasured(tokens[at])) return isPot(tokens[at - 1]) || isPot(tokens[at + 1]) ? at : null;
  return null;
}

const isPlain = (token: Token | undefined): boolean => token?.t === 'word';

/** Tokens from the name to what is weighed of it, at the most; and of a liquid that goes into a jug or a lye. */
const longestWay = 40;
const longestStory = 160;

/** Where the fat or the liquid stands that was named last before token `k`; -1 where an alkali was, or none. */
function namedLast(tokens: readonly Token[], k: number): number {
  let isPoured: boolean | null = null;
  for (let at = k - 1; at >= 0 && k - at <= longestStory; at--) {
    const name = tokens[at];
    if (name?.t !== 'name') continue;
    const { kind } = name.meaning;
    if (k - at > longestWay) {
      isPoured ??= goesIntoLye(tokens, k);
      if (!isPoured) return -1;
      if (!isIngredient(name)) continue;
      return kind === 'liquid' ? at : -1;
    }
    const next = tokens[at + 1];
    // what no list holds is asked about
    if (kind === 'unheld' || (kind === 'unknown' && isFatty(next))) return at;
    if (kind === 'fat' || (kind === 'liquid' && !(next?.t === 'word' && drinkless.test(next.text)))) return at;
    if (kind === 'alkali' || kind === 'stock') return -1;
    // "the water is from the butt, boiled, 300 g of it"
    if (kind === 'water' && at < k - 2) {
      const { from } = sentenceAt(tokens, k, longestWay);
      if (from <= at && !isAny(tokens, from, at, isFat)) return at;
    }
    // "crushed ice, 290 g of it"
    if ((kind === 'ice' || kind === 'water') && isMark(next, ',') && at === k - 2) return -1;
  }
  return -1;
}

/** "Hedgehog fat". */
const isFatty = (token: Token | undefined): boolean => /^(?:fat|grease|oil|butter|wax)$/.test(spoken(token));

/** "330 g of it into my lye jug", "300 g of it with the lye in it". */
function goesIntoLye(tokens: readonly Token[], k: number): boolean {
  const { to } = sentenceAt(tokens, k, longestWay);
  return isAny(tokens, k, to, (one) => (one.t === 'name' && one.meaning.kind === 'alkali') || isPot(one));
}

const nowhere: readonly [number, number] = [-1, -1];

/** "NaOH of 98 %, 142 g of it", "a master batch, from that I pour 274 g": where the lye stands, and the word for it. */
function lyeBefore(tokens: readonly Token[], k: number, isOfIt: boolean): readonly [number, number] {
  const place = isOfIt ? k + 2 : takenFrom(tokens, k);
  if (place < 0) return nowhere;
  let at = k - 1;
  while (at >= 0 && k - at <= longestWay && !isIngredient(tokens[at])) at--;
  // "a master batch, equal weights NaOH and water"
  let stock = at;
  while (stock >= 0 && at - stock <= 8 && !isStop(tokens[stock]) && !isStock(tokens[stock])) stock--;
  // "lye solution, mixed last summer. The label only says LYE": what is in the bottle
  const isLabel = (one: Token | undefined): boolean =>
    one?.t === 'name' && one.meaning.id === 'unsaid' && !isStock(one);
  while (isLabel(tokens[at]) && stock >= 0 && k - stock <= longestWay && !isStock(tokens[stock])) stock--;
  const lye = isStock(tokens[stock]) ? stock : at;
  const name = tokens[lye];
  if (name?.t !== 'name' || !(name.meaning.kind === 'alkali' || isStock(name))) return nowhere;
  // "a stock of lye, 50 %": what is taken is a solution, whatever it is called
  const isThin = (one: Token): boolean =>
    one.t === 'quantity'
      ? one.quantity.dim === 'percent' && one.quantity.value < leastPure
      : one.t === 'word' &&
        /^(half|halves|mixed|premixed|dissolved|diluted|liquid|solved|ready|stock|batch)$/.test(one.text);
  if (name.meaning.kind === 'alkali' && isAny(tokens, lye - 10, k, isThin)) return nowhere;
  return weighedThings(tokens).has(thingOf(name)) ? nowhere : [lye, place];
}

/** Alkali in the tub is purer than any solution. */
const leastPure = 0.8;

const isStock = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'stock';

/** The verb of "from it I take 139 g", "out of the tub I weighed 139 g"; -1 where there is none. */
function takenFrom(tokens: readonly Token[], k: number): number {
  if (!taking.test(wordAt(tokens, k - 1))) return -1;
  for (let at = k - 2; at >= 0 && k - at <= 6; at--) {
    const word = wordAt(tokens, at);
    if (/^(from|of)$/.test(word))
      return pronoun.test(wordAt(tokens, at + 1)) || isPot(tokens[at + 1]) || isPot(tokens[at + 2]) ? k - 1 : -1;
    if (word === '' && !isPot(tokens[at])) return -1;
  }
  return -1;
}

const taking = /^(take|took|taken|pour|poured|use|used|weigh|weighed|need|measure|measured|add|added|put|out)$/;

const nearly: ReadonlySet<string> = new Set(['about', 'around', 'just', 'only', 'some', 'nearly']);

/** "There's always duck fat. I've 600 g, and 150 g coconut": where the verb of having stands; null where it names its own. */
function isOwned(tokens: readonly Token[], k: number, token: Figure): number | null {
  const behind = tokens[k + 1];
  const ends = behind === undefined || isStop(behind) || isMark(behind, ',') || token.quantity.text.endsWith('.');
  if (!isMeasured(token) || !ends) return null;
  if (endedWith(tokens, k)) return k - 1;
  const at = nearly.has(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
  const verb = wordAt(tokens, at);
  const owns = verb === 'have' || verb === 'got';
  return verb === 'ive' || (owns && wordAt(tokens, at - 1) === 'i') ? at : null;
}

/** "Rendered a heap of tallow off the butcher, ended up with 1.5 kg": what came of the one fat of the sentence. */
function endedWith(tokens: readonly Token[], k: number): boolean {
  const before = `${wordAt(tokens, k - 3)} ${wordAt(tokens, k - 2)} ${wordAt(tokens, k - 1)}`;
  if (!/(?:(?:ended|finished|wound|ending) up|left) with$|came out (?:at|to|as)$/.test(before)) return false;
  const { from } = sentenceAt(tokens, k, longestWay);
  const story = tokens.slice(from, k);
  const fats = story.filter((one) => isIngredient(one));
  const isTold = (one: Token): boolean => one.t === 'quantity' || isRole(one, 'batch-word') || isRole(one, 'bars');
  return fats.length === 1 && fats[0]?.meaning.kind === 'fat' && !story.some(isTold);
}

/** The word behind "from" or "of" in "from this 180 g came in the soap", "of that we used 180 g"; -1 where there is none. */
function fromIt(tokens: readonly Token[], k: number, token: Figure): number {
  const behind = tokens[k + 1];
  if (!isMeasured(token) || isIngredient(behind) || (isWord(behind, 'of') && isIngredient(tokens[k + 2]))) return -1;
  let at = k - 1;
  while (k - at <= 3 && /^(?:i|we|have|only|just|then|about|exactly|came|went)$|^ve$/.test(wordAt(tokens, at))) at--;
  const verbs = taking.test(wordAt(tokens, at)) ? at-- : -1;
  while (k - at <= 5 && /^(?:i|we|have|only|just|then)$/.test(wordAt(tokens, at))) at--;
  if (!/^(?:this|that|it|these|those|them|which)$/.test(wordAt(tokens, at))) return -1;
  if (!/^(?:from|of)$/.test(wordAt(tokens, at - 1)) || isMeasured(tokens[at - 2])) return -1;
  const went = /^(?:came|went|goes|comes|is|was|were|are|used|taken|in)$/.test(wordAt(tokens, k + 1));
  return verbs >= 0 || went ? at : -1;
}

/** Where "left" stands behind "290 g", "290 g were"; -1 where it does not. */
const leftAt = (tokens: readonly Token[], k: number): number => {
  if (isLeft(wordAt(tokens, k + 1))) return k + 1;
  return isLeft(wordAt(tokens, k + 2)) ? k + 2 : -1;
};
const isLeft = (word: string): boolean => word === 'left' || word === 'remained';

/** The pronoun of "cut it to 100 g", "take it down to 100 g", "keep that at 50 g"; -1 where none stands there. */
function changedTo(tokens: readonly Token[], k: number, token: Figure): number {
  const behind = tokens[k + 1];
  if (!isMeasured(token) || isIngredient(behind) || isWord(behind, 'of') || isRole(behind, 'bars')) return -1;
  let at = nearly.has(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
  if (!/^(?:to|at)$/.test(wordAt(tokens, at))) return -1;
  at--;
  if (/^(?:down|back)$/.test(wordAt(tokens, at))) at--;
  return /^(?:it|that)$/.test(wordAt(tokens, at)) && changing.test(wordAt(tokens, at - 1)) ? at : -1;
}
const changing =
  /^(?:cut|cutting|reduce|reduced|reducing|lower|lowered|lowering|take|taking|took|keep|keeping|kept|limit|limited|limiting|bring|brought|bringing|drop|dropped|dropping|raise|raised|raising|hold|holding|set|put)$/;

/** "I've weighed it, 1860 g": where "it" stands, whose weight this is; null where none does. */
function weighedIt(tokens: readonly Token[], k: number, token: Figure): number | null {
  const behind = tokens[k + 1];
  if (!isMeasured(token) || token.quantity.dim !== 'mass') return null;
  if (isIngredient(behind) || isWord(behind, 'of')) return null;
  let at = k - 1;
  while (k - at <= 4 && (isMark(tokens[at], ',:-–') || /^(?:its|is|was|thats|and|got|at)$/.test(wordAt(tokens, at))))
    at--;
  if (wordAt(tokens, at) !== 'it') return null;
  return /^(?:weighed|weighing)$/.test(wordAt(tokens, at - 1)) ? at : null;
}

const none: readonly number[] = [];

/** Volumes from the name at `named` on, or right before it, where nothing is weighed up to token `k`. */
function volumesBetween(tokens: readonly Token[], named: number, k: number): readonly number[] {
  const found: number[] = [];
  for (let at = Math.max(0, named - 2); at < k; at++) {
    const one = tokens[at];
    if (one?.t !== 'quantity') continue;
    if (one.quantity.dim !== 'volume') return none;
    found.push(at);
  }
  return found;
}

/** "We've 10 kg of tallow in the freezer. I'd use 1 kg of it": the figure of what there is; null where it goes in. */
function storeOf(tokens: readonly Token[], named: number, { quantity }: Figure): number | null {
  const whole = [named - 1, named - 2].find((at) => isMeasured(tokens[at]));
  const figure = whole === undefined ? undefined : tokens[whole];
  if (whole === undefined || figure?.t !== 'quantity' || figure.quantity.dim !== quantity.dim) return null;
  if (figure.quantity.value <= quantity.value || (tokens[named] && weighedElsewhere(tokens, named))) return null;
  const { from, to } = sentenceAt(tokens, named, longestWay);
  const isKept = isAny(tokens, from, to, (one) => gives(one, signal.store | signal.buying | signal.keeping));
  return isKept && !isAny(tokens, from, to, (one, at) => at !== whole && isMeasured(one)) ? whole : null;
}

/** "Simmered till flat, and 290 g were left": of a liquid that was named before. */
const boiledDown = (tokens: readonly Token[], k: number, token: Figure): boolean =>
  isMeasured(token) &&
  leftAt(tokens, k) > 0 &&
  isAny(tokens, k - 10, k, (one) => one.t === 'word' && /^(boil|simmer|reduc|evaporat|cook)/.test(one.text));

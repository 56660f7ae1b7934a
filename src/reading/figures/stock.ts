/** A lye solution that was mixed beforehand, however it is called: what it is, how strong, and how much was taken of it. */
import { amountItem, type Item, thingItem } from '../rows/items.ts';
import { plainQuantity, type Quantity } from '../words/quantities.ts';
import { signal } from '../words/signal-words.ts';
import { gives, type Signals } from '../words/signals.ts';
import { endsDotted, isIngredient, isMark, isStop, isWeight } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { weighedSolution } from './weighed-solution.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
const isThing = (item: Item | undefined): item is Thing => item?.kind === 'thing';
const isKind = (item: Item | undefined, kind: string): item is Thing =>
  isThing(item) && item.named.meaning.kind === kind;
const wordAt = (token: Token | undefined): string => (token?.t === 'word' ? token.text : '');

/** The word at `k`, over a hyphen: "ready-mixed", "master batched". */
function pairAt(tokens: readonly Token[], k: number): string {
  const sign = tokens[k + 1];
  const second = sign?.t === 'sign' && sign.text === '-' ? k + 2 : k + 1;
  return `${wordAt(tokens[k])} ${wordAt(tokens[second])}`;
}

const mixedBefore = /^(stock|premix|premixed|masterbatch|masterbatched|premade|readymade)\b/;
const mixedPair = /^(ready|pre|already|master) (mixed|made|dissolved|batched|batch)\b/;

const mixedWords: ReadonlySet<string> = new Set(
  'stock premix premixed masterbatch masterbatched premade readymade mixed made batched batch ready pre already master'.split(
    ' ',
  ),
);

const isStrength = ({ dim, value }: Quantity): boolean =>
  dim === 'ratio' || (dim === 'percent' && value > 0 && value <= mostDissolved);

/** "lye ready mixed", "sodium hydroxide stock", "pre-mixed NaOH", "master-batched lye". */
function isMixed(tokens: readonly Token[], { from, to }: Thing): boolean {
  if (/^(?:is|was|comes|came)$/.test(wordAt(tokens[to]))) {
    const told = `${wordAt(tokens[to + 1])} ${wordAt(tokens[to + 2])}`;
    const said = tokens.slice(to, to + oneStatement).find((one) => one.t === 'quantity');
    // "the lye is already dissolved, 140 g in 300 g water"
    return (mixedPair.test(told) || /^dissolved /.test(told)) && said !== undefined && isStrength(said.quantity);
  }
  if (!mixedWords.has(wordAt(tokens[to])) && !(from > 0 && mixedWords.has(wordAt(tokens[from - 1])))) return false;
  if (isWithItsWater(tokens, to)) return false;
  const strength = tokens[to + 1];
  // "lye mixed 1:1 with water"
  if (/^(?:mixed|made)$/.test(wordAt(tokens[to])) && strength?.t === 'quantity' && isStrength(strength.quantity))
    return true;
  const behind = pairAt(tokens, to);
  if (mixedBefore.test(behind) || mixedPair.test(behind)) return true;
  const hyphen = tokens[from - 2];
  const first = from - (hyphen?.t === 'sign' && hyphen.text === '-' ? 3 : 2);
  return mixedBefore.test(`${wordAt(tokens[from - 1])} `) || mixedPair.test(pairAt(tokens, first));
}

/** "The lye already mixed, 149 g in 310 g of water": what went into the water is weighed dry. */
function isWithItsWater(tokens: readonly Token[], to: number): boolean {
  let at = to;
  while (at - to < mostMixed && (mixedWords.has(wordAt(tokens[at])) || isMark(tokens[at], ',:-–—('))) at++;
  const isOf = isIngredient(tokens[at + 1]) ? 2 : 1;
  const [dry, joint, wet] = [tokens[at], wordAt(tokens[at + isOf]), tokens[at + isOf + 1]];
  const water = tokens[wordAt(tokens[at + isOf + 2]) === 'of' ? at + isOf + 3 : at + isOf + 2];
  return (
    isWeight(dry) &&
    /^(?:in|into|with|to)$/.test(joint) &&
    isWeight(wet) &&
    isIngredient(water) &&
    water.meaning.kind === 'water'
  );
}
const mostMixed = 5;

const stockOf = (thing: Thing): Thing => {
  const { meaning } = thing.named;
  return meaning.kind === 'alkali'
    ? { ...thing, named: { ...thing.named, meaning: { kind: 'stock', id: meaning.id } } }
    : thing;
};

/** Share of alkali in the strongest solution. */
const mostDissolved = 0.55;
/** Tokens over which alkali, water and their ratio are one statement. */
const oneStatement = 9;

/** The alkali's share of `NaOH and water 50/50`, `1:2 lye to water`, `equal weights of NaOH and water`. */
function shareOf({ quantity: { dim, value, second, each } }: Amount, alkaliFirst: boolean): number | null {
  if (dim === 'parts' && each) return 0.5;
  if (dim === 'percent') return value > 0 && value <= mostDissolved ? value : null;
  if (dim !== 'ratio' || second === null || !(value > 0) || !(second > 0)) return null;
  const share = (alkaliFirst ? value : second) / (value + second);
  // more than half of it does not dissolve: the smaller figure is the alkali's
  return Math.min(share, 1 - share);
}

interface Stated {
  readonly alkali: Thing;
  readonly said: Amount;
  readonly share: number;
  /** Items that the statement takes. */
  readonly length: number;
}

/** `NaOH and water 50/50`: three items in any order, of which nothing is weighed. */
function ratioOf(items: readonly Item[], tokens: readonly Token[], k: number): Stated | null {
  const three = items.slice(k, k + 3);
  const alkali = three.find((item) => isKind(item, 'alkali') || isKind(item, 'stock'));
  const water = three.find((item) => isKind(item, 'water'));
  const said = three.find(isAmount);
  if (!isThing(alkali) || !isThing(water) || !said || !isClose(three) || isWeighed(items, tokens, k, k + 2))
    return null;
  const share = shareOf(said, alkali.from < water.from);
  // "NaOH 33 %, water" is a strength at its own name
  if (said.quantity.dim === 'percent' && said.from < water.from && alkali.from < said.from) return null;
  // "How much NaOH and water? 5 % superfat"
  const isAsked = tokens.slice(three[0]?.from, three[2]?.to).some((one) => one.t === 'sign' && one.text === '?');
  if (isAsked || isSuperfat(items[k + 3])) return null;
  return share === null ? null : { alkali, said, share, length: 3 };
}

const isSuperfat = (item: Item | undefined): boolean => isKind(item, 'role') && item.named.meaning.id === 'superfat';

/** `1 part NaOH to 2 parts water`. */
function partsOf(items: readonly Item[], k: number): Stated | null {
  const four = items.slice(k, k + 4);
  const [first, second, more] = four.filter(isAmount);
  const alkali = four.find((item) => isKind(item, 'alkali') || isKind(item, 'stock'));
  const water = four.find((item) => isKind(item, 'water'));
  if (!first || !second || more || !isThing(alkali) || !isThing(water) || !isClose(four)) return null;
  if (first.quantity.dim !== 'parts' || second.quantity.dim !== 'parts') return null;
  const [own, other] = alkali.from < water.from ? [first, second] : [second, first];
  const share = own.quantity.value / (own.quantity.value + other.quantity.value);
  const quantity = { ...own.quantity, numbers: [...own.quantity.numbers, ...other.quantity.numbers] };
  return share > 0 && share < 1 ? { alkali, said: { ...own, quantity }, share, length: 4 } : null;
}

const isClose = (items: readonly Item[]): boolean => (items.at(-1)?.to ?? 0) - (items[0]?.from ?? 0) <= oneStatement;

/** A weight stands right before item `first` or right behind item `last`. */
function isWeighed(items: readonly Item[], tokens: readonly Token[], first: number, last: number): boolean {
  // "lye solution 470 g (half NaOH, half water)" has its own weight
  const near = (a: Item | undefined, b: Item | undefined, signs: RegExp): boolean =>
    a !== undefined &&
    b !== undefined &&
    b.from - a.to <= 2 &&
    tokens.slice(a.to, b.from).every((token) => token.t === 'word' || (token.t === 'sign' && signs.test(token.text)));
  const weight = (item: Item | undefined): boolean => isAmount(item) && item.quantity.dim === 'mass';
  return (
    (weight(items[first - 1]) && near(items[first - 1], items[first], /^[:=-]$/)) ||
    (weight(items[last + 1]) && near(items[last], items[last + 1], /^[:=(-]$/))
  );
}

/** "half of it is NaOH", "half lye, half water". */
function halfOf(items: readonly Item[], tokens: readonly Token[], k: number): Stated | null {
  const alkali = items[k];
  if (!isKind(alkali, 'alkali') || !isHalf(tokens, alkali) || isWeighed(items, tokens, k, k)) return null;
  const half: Quantity = { ...plainQuantity, dim: 'percent', value: 0.5, inWords: true, text: 'half' };
  const said = amountItem(half, alkali.to, alkali.to);
  const next = items[k + 1];
  return { alkali, said, share: 0.5, length: isKind(next, 'water') && isHalf(tokens, next) ? 2 : 1 };
}

/** "Lye solution made half and half by weight, so 50 %": what it is made of, and its strength again. */
function halvesOf(items: readonly Item[], tokens: readonly Token[], k: number): Stated | null {
  const [alkali, made] = [items[k], items[k + 1]];
  if (!isKind(alkali, 'stock') || !made || made.from - alkali.to > 3 || isWeighed(items, tokens, k + 1, k + 1))
    return null;
  const isHalves = isKind(made, 'liquid')
    ? halves.test(made.named.text)
    : isAmount(made) && made.quantity.dim === 'parts' && made.quantity.each;
  if (!isHalves || !tokens.slice(alkali.to, made.from).every((one) => one.t === 'word' || isMark(one, ',')))
    return null;
  const own = amountItem(
    { ...plainQuantity, dim: 'percent', value: 0.5, inWords: true, text: 'half' },
    made.to,
    made.to,
  );
  const half = isAmount(made) ? { ...own, quantity: { ...own.quantity, numbers: made.quantity.numbers } } : own;
  const at = isKind(items[k + 2], 'role') ? k + 3 : k + 2;
  const again = items[at];
  if (!isAmount(again) || again.quantity.dim !== 'percent' || again.from - made.to > 6)
    return { alkali, said: half, share: 0.5, length: 2 };
  const numbers = [...half.quantity.numbers, ...again.quantity.numbers];
  const said = { ...half, quantity: { ...half.quantity, numbers } };
  return again.quantity.value === 0.5 ? { alkali, said, share: 0.5, length: at + 1 - k } : null;
}

/** "Lye water done, 127 g in 255 g": the alkali and the water that are in it. */
function dissolvedIn(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  for (let k = 0; k + 2 < items.length; k++) {
    const [stock, lye, water] = items.slice(k, k + 3);
    if (!isKind(stock, 'stock') || !isAmount(lye) || !isAmount(water) || stock.named.meaning.kind !== 'stock') continue;
    if (lye.quantity.dim !== 'mass' || water.quantity.dim !== 'mass' || water.from - lye.to !== 1) continue;
    if (!/^(?:in|into|to)$/.test(wordAt(tokens[lye.to])) || lye.quantity.value >= water.quantity.value) continue;
    const before = items[k - 1];
    const [next, after] = [tokens[water.to], tokens[water.to + 1]];
    const isNamed = (wordAt(next) === 'of' ? after : next)?.t === 'name';
    if (isNamed || lye.from - stock.to > 5 || (isAmount(before) && stock.from - before.to <= 2)) continue;
    if (tokens.slice(stock.to, lye.from).some(isStop)) continue;
    const alkali = { ...stock.named, meaning: { kind: 'alkali', id: stock.named.meaning.id } } as const;
    const poured = { ...stock.named, meaning: { kind: 'water', id: 'water' } } as const;
    const pair = [thingItem(alkali, stock.from, stock.to), lye, water, thingItem(poured, water.to, water.to)];
    return [...items.slice(0, k), ...pair, ...items.slice(k + 3)];
  }
  return items;
}

const beforeHalf: ReadonlySet<string> = new Set('of it is the that which are by weight being'.split(' '));

function isHalf(tokens: readonly Token[], { from }: Thing): boolean {
  for (let back = from - 1; from - back <= 5; back--) {
    const word = wordAt(tokens[back]);
    if (word === 'half') return true;
    if (!beforeHalf.has(word)) return false;
  }
  return false;
}

/** "Lye solution mixed at 33 % NaOH": the solution's own strength. */
function mixedAt(items: readonly Item[], tokens: readonly Token[], k: number): Stated | null {
  const [stock, said, alkali] = items.slice(k, k + 3);
  if (!isKind(stock, 'stock') || !isAmount(said) || !isKind(alkali, 'alkali')) return null;
  const share = said.quantity.dim === 'percent' ? shareOf(said, true) : null;
  const tight = alkali.from - said.to <= 1 && said.from - stock.to <= 5;
  if (share === null || !tight || isWeighed(items, tokens, k + 2, k + 2)) return null;
  if (!tokens.slice(stock.to, said.from).every((one) => mixing.has(wordAt(one)) || one.t === 'sign')) return null;
  return { alkali, said, share, length: 3 };
}

/** What statements are made of, a bit each: the items from one on are looked into where all of it stands there. */
const piece = { alkali: 1, water: 2, amount: 4, parts: 8 } as const;

function pieceOf(item: Item | undefined): number {
  if (isAmount(item)) return item.quantity.dim === 'parts' ? piece.amount | piece.parts : piece.amount;
  if (isKind(item, 'alkali') || isKind(item, 'stock')) return piece.alkali;
  return isKind(item, 'water') ? piece.water : 0;
}

/** "50/50 by weight (NaOH in water)", and "half and half NaOH and water", which is no cream. */
function plainly(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const isByWeight = (item: Item, k: number): boolean => {
    if (!isKind(item, 'role') || item.named.meaning.id !== 'heading' || wordAt(tokens[item.from - 1]) !== 'by')
      return false;
    const said = items[k - 1];
    return isAmount(said) && /^(?:ratio|parts)$/.test(said.quantity.dim);
  };
  const isHalves = (item: Item, k: number): item is Thing =>
    isKind(item, 'liquid') &&
    halves.test(item.named.text) &&
    (isKind(items[k + 1], 'alkali') || isKind(items[k + 1], 'water')) &&
    items[k + 1]?.from === item.to;
  if (!items.some((item, k) => isByWeight(item, k) || isHalves(item, k))) return items;
  return items.flatMap((item, k) => {
    if (isByWeight(item, k)) return [];
    const half: Quantity = {
      ...plainQuantity,
      dim: 'parts',
      value: 1,
      each: true,
      inWords: true,
      text: 'half and half',
    };
    return [isHalves(item, k) ? amountItem(half, item.from, item.to) : item];
  });
}
const halves = /^half.and.half$/i;

/** What a solution is made of, said in words, as the strength of it. */
function stated(all: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const items = plainly(all, tokens);
  let [own, next, third, fourth] = [0, pieceOf(items[0]), pieceOf(items[1]), pieceOf(items[2])];
  for (let k = 0; k < items.length; k++) {
    [own, next, third, fourth] = [next, third, fourth, pieceOf(items[k + 3])];
    const three = own | next | third;
    const found =
      (has(three | fourth, piece.alkali | piece.parts) ? partsOf(items, k) : null) ??
      (has(three, piece.alkali | piece.amount) ? mixedAt(items, tokens, k) : null) ??
      (has(three, piece.alkali | piece.water | piece.amount) ? ratioOf(items, tokens, k) : null) ??
      (has(own, piece.alkali) ? (halvesOf(items, tokens, k) ?? halfOf(items, tokens, k)) : null);
    if (!found) continue;
    const stock = stockOf(found.alkali);
    const quantity: Quantity = {
      ...found.said.quantity,
      dim: 'percent',
      value: found.share,
      second: null,
      each: false,
    };
    const strength: Amount = { ...found.said, quantity, from: stock.to, to: stock.to };
    return [...items.slice(0, k), stock, strength, ...items.slice(k + found.length)];
  }
  return items;
}

const has = (pieces: number, all: number): boolean => (pieces & all) === all;

/** Behind "of": "it", or "the mix". */
function isOfIt(tokens: readonly Token[], to: number): boolean {
  if (wordAt(tokens[to]) !== 'of') return false;
  const named = tokens[to + 2];
  if (named?.t === 'name' && named.meaning.kind !== 'role') return false;
  return (
    /^(it|that|this)$/.test(wordAt(tokens[to + 1])) ||
    (/^(the|that|this|my)$/.test(wordAt(tokens[to + 1])) &&
      /^(mix|mixture|stuff|liquid|liquor|concentrate|stock|premix)$/.test(wordAt(tokens[to + 2])))
  );
}

/** Behind "out of", "from" or "of": the vessel that the solution stands in. */
function isOfVessel(tokens: readonly Token[], to: number): boolean {
  let at = to;
  while (at - to < 2 && /^(out|straight|of|from)$/.test(wordAt(tokens[at]))) at++;
  const [article, vessel, next, named] = [wordAt(tokens[at]), tokens[at + 1], tokens[at + 2], tokens[at + 3]];
  if (at === to || !/^(the|that|this|my)$/.test(article)) return false;
  if (vessel?.t !== 'name' || vessel.meaning.kind !== 'role' || vessel.meaning.id !== 'pot') return false;
  return !(next?.t === 'name' && next.meaning.kind !== 'role') && !(wordAt(next) === 'of' && named?.t === 'name');
}

/** "292 g of it": of the solution that was spoken of last, unless something else without a weight was. */
function takenOfIt(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let stock: Thing | null = null;
  let out: Item[] | null = null;
  for (let k = 0; k < items.length; k++) {
    const item = items[k];
    if (!item) break;
    out?.push(item);
    if (isKind(item, 'stock')) stock = item;
    else if (isKind(item, 'fat') && !(k > 0 && isAmount(items[k - 1])) && !isAmount(items[k + 1])) stock = null;
    if (!stock || !isAmount(item)) continue;
    const { dim } = item.quantity;
    if ((dim !== 'mass' && dim !== 'volume') || !(isOfIt(tokens, item.to) || isOfVessel(tokens, item.to))) continue;
    // "5 litres of it in the cellar": what there is
    const own = dim === 'mass' ? stock.named : { ...stock.named, meaning: { kind: 'role', id: 'supply' } as const };
    out ??= items.slice(0, k + 1);
    out.push(thingItem(own, item.to, item.to));
  }
  return out ?? items;
}

/** A figure stands in its sentence, or a strength in the next: no "the lye water smells a bit". */
function isReckoned(tokens: readonly Token[], { from, to }: Thing): boolean {
  const isFigure = (token: Token | undefined): boolean => token?.t === 'quantity';
  for (let k = from - 1; k >= 0 && !isStop(tokens[k]); k--) if (isFigure(tokens[k])) return true;
  let end = to;
  for (; end < tokens.length && !isStop(tokens[end]); end++) if (isFigure(tokens[end])) return true;
  for (let k = end + 1; k < tokens.length && !isStop(tokens[k]); k++) {
    const token = tokens[k];
    if (token?.t === 'quantity') return isStrength(token.quantity) || token.quantity.dim === 'parts';
    if (token?.t === 'name' && token.meaning.kind === 'fat') return false;
  }
  return false;
}

/** The items of a post that works with a solution; those of any other stay as they are. */
export function asSolution(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let named: Item[] | null = null;
  let works = false;
  for (let k = 0; k < items.length; k++) {
    const item = items[k];
    if (!isThing(item)) continue;
    const { kind, id } = item.named.meaning;
    const isStock = kind === 'alkali' && isMixed(tokens, item);
    if (isStock) {
      named ??= [...items];
      named[k] = stockOf(item);
    }
    works ||= isStock || (kind === 'stock' && isReckoned(tokens, item)) || (kind === 'role' && id === 'solution');
    works ||= kind === 'alkali' && isKind(items[k + 1], 'water') && wordAt(tokens[item.to]) === 'in';
  }
  return works
    ? takenOfIt(stated(weighedSolution(dissolvedIn(named ?? items, tokens), tokens), tokens), tokens)
    : items;
}

/** `1:1 lye solution`, `lye solution 1:2`: its strength, water being the larger part. */
export function stockStrength(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let works: boolean | null = null;
  const isSolutionTaken = (): boolean => {
    works ??= tokens.some((one, k) => isSolution(one) && weighedBefore(tokens, k) !== null);
    return works;
  };
  for (const k of figures) {
    const token = tokens[k];
    const strength = token && strengthAt(tokens, token, k, isSolutionTaken);
    if (!strength || strength === token) continue;
    out ??= [...tokens];
    out[k] = strength;
  }
  return out ?? tokens;
}

const isBracket = (token: Token | undefined): boolean => token?.t === 'sign' && token.text === '(';

const mixing: ReadonlySet<string> = new Set('is was mixed made up at in of a always about comes'.split(' '));

/** `isTaken`: the post weighs of a solution elsewhere. */
function strengthAt(tokens: readonly Token[], token: Token, k: number, isTaken: () => boolean): Token {
  if (token.t !== 'quantity' || token.quantity.dim !== 'ratio') return token;
  const { value, second } = token.quantity;
  const isStock = (other: Token | undefined): boolean => other?.t === 'name' && other.meaning.kind === 'stock';
  const sign = tokens[k - 1];
  let at = sign?.t === 'sign' && /^[(:=,]$/.test(sign.text) ? k - 2 : k - 1;
  // "my lye water is mixed 1:1"
  while (at > 0 && k - at <= 6 && mixing.has(wordAt(tokens[at]))) at--;
  const before = tokens[at];
  const withWater = tokens.slice(k + 1, k + 6).some((one) => one.t === 'name' && one.meaning.kind === 'water');
  const isMixed = /^(?:mixed|made)$/.test(wordAt(tokens[k - 1])) && withWater;
  // "my lye is 50/50, and I took 280 g of that solution"; "my lye is 50/50 NaOH and KOH" is of two
  const isMixture =
    before?.t === 'name' &&
    before.meaning.kind === 'alkali' &&
    (isMixed || (namedAs(tokens[k + 1]) !== 'alkali' && isTaken()));
  if (second === null || !(value > 0) || !(second > 0) || !(isMixture || isStock(before) || isStock(tokens[k + 1])))
    return token;
  // "(1:1 by weight, so 50 % NaOH)": said again
  const again = tokens.slice(k + 1, k + 7).some((one) => one.t === 'quantity' && one.quantity.dim === 'percent');
  if (again && isBracket(sign)) return token;
  const share = Math.min(value, second) / (value + second);
  return { ...token, quantity: { ...token.quantity, dim: 'percent', value: share, second: null } };
}

/** `40 g (KOH) in every 100 g`, `50 g per 100 g`: a strength in words, or what a percentage before it says already. */
export function rates(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const part = tokens[k];
    if (part?.t !== 'quantity' || part.quantity.dim !== 'mass') continue;
    const alkali = namedAs(tokens[k + 1]) === 'alkali' ? k + 1 : k;
    let at = alkali + 1;
    let every = false;
    for (; /^(in|per|to|for|every|each|a)$/.test(wordAt(tokens[at])) && at - alkali < 4; at++)
      every ||= gives(tokens[at], signal.every);
    const whole = tokens[at];
    if (!every || whole?.t !== 'quantity' || !/^(mass|volume)$/.test(whole.quantity.dim)) continue;
    const share = part.quantity.value / whole.quantity.value;
    if (!(share > 0 && share < 1) || ![100, 1000].includes(Math.round(whole.quantity.value))) continue;
    const said = tokens
      .slice(Math.max(0, k - 8), k)
      .some(
        (one) =>
          one.t === 'quantity' && one.quantity.dim === 'percent' && Math.abs(one.quantity.value - share) < 0.0051,
      );
    out ??= [...tokens];
    const numbers = [...part.quantity.numbers, ...whole.quantity.numbers];
    const text = `${part.quantity.text} per ${whole.quantity.text}`;
    out[k] = said ? { t: 'aside', from: part.from, to: part.to, reason: 'said already', numbers } : asFiller(part);
    const named = tokens[alkali];
    if (said && named && alkali > k) out[alkali] = asFiller(named);
    out[at] = said
      ? asFiller(whole)
      : { ...whole, quantity: { ...part.quantity, dim: 'percent', value: share, unit: null, text, numbers } };
  }
  return out ?? tokens;
}

/** Tokens around a solution's name in which its strength and its weight stand. */
const besideStock = 6;

const isSolution = (token: Token): token is Extract<Token, { t: 'name' }> =>
  token.t === 'name' && (token.meaning.kind === 'stock' || token.meaning.id === 'solution');

/** "280 g of the lye solution": the weight before the name; null where none stands there. */
function weighedBefore(tokens: readonly Token[], k: number): number | null {
  for (let at = k - 1; at >= 0 && k - at <= 4; at--) {
    const token = tokens[at];
    // "sunflower 170 g. Lye solution: 120 g NaOH + 280 g water"
    // "284 g of my 50 % solution"
    if (token?.t === 'quantity' && isStrength(token.quantity)) continue;
    if (isMass(token)) return endsDotted(token) && isIngredient(tokens[at - 1]) ? null : token.quantity.value;
    if (token?.t !== 'word' || !(token.sort === 'filler' || token.text === 'lye')) return null;
  }
  return null;
}

/** The strengths and the least weights that solutions are given in the post. */
function stocksIn(tokens: readonly Token[]): Stocks {
  const shares: number[] = [];
  let [least, taken] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  tokens.forEach((token, k) => {
    if (!isSolution(token)) return;
    const before = weighedBefore(tokens, k);
    if (before !== null) taken = Math.min(taken, before);
    if (token.meaning.kind !== 'stock') return;
    let weighed = before !== null;
    for (let at = Math.max(0, k - 3); at < tokens.length && at - k <= besideStock; at++) {
      const one = tokens[at];
      if (one?.t === 'line' && at > k) break;
      if (one?.t !== 'quantity') continue;
      if (one.quantity.dim === 'percent' && one.quantity.value <= mostDissolved) shares.push(one.quantity.value);
      else if (one.quantity.dim === 'mass' && at > k) {
        if (!weighed) least = Math.min(least, one.quantity.value);
        if (!weighed && /^(role)?$/.test(namedAs(tokens[at + 1]))) taken = Math.min(taken, one.quantity.value);
        weighed = true;
      }
    }
  });
  return { shares, least: Math.min(least, taken), taken };
}

/** `taken`: the least that is weighed of the solution itself, and not of what it is made of. */
interface Stocks {
  readonly shares: readonly number[];
  readonly least: number;
  readonly taken: number;
}

const isMass = (token: Token | undefined): token is Extract<Token, { t: 'quantity' }> =>
  token?.t === 'quantity' && token.quantity.dim === 'mass';
const namedAs = (token: Token | undefined): string => (token?.t === 'name' ? token.meaning.kind : '');

/** "1 kg NaOH in 1 kg water", of which less is taken: five tokens that say how strong the solution is. */
function asStrength(tokens: readonly Token[], k: number, share: number): Token[] | null {
  const [one, first, joint, other, second] = tokens.slice(k, k + 5);
  if (!isMass(one) || !isMass(other) || first?.t !== 'name' || second?.t !== 'name' || !joint) return null;
  if (!(share > 0 && share <= mostDissolved)) return null;
  const alkali = first.meaning.kind === 'alkali' ? first : second;
  if (alkali.meaning.kind !== 'alkali') return null;
  const numbers = [...one.quantity.numbers, ...other.quantity.numbers];
  const text = `${one.quantity.text} ${first.text} + ${other.quantity.text} ${second.text}`;
  const meaning = { kind: 'stock', id: alkali.meaning.id } as const;
  return [
    { ...first, meaning },
    { ...one, quantity: { ...plainQuantity, dim: 'percent', value: share, text, numbers } },
    ...[joint, other, second].map((token) => asFiller(token)),
  ];
}

/** "made in May, 2 kg NaOH + 2 kg water": how the solution was mixed of which the rows weigh a part. */
export function mixedOnce(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  if (!tokens.some((token) => namedAs(token) === 'stock')) return tokens;
  const { shares, least, taken } = stocksIn(tokens);
  let out: Token[] | null = null;
  for (const k of figures) {
    const [one, other] = [tokens[k], tokens[k + 3]];
    if (!isMass(one) || !isMass(other)) continue;
    const joint = tokens[k + 2];
    if (!/^(\+|and|&|in|to|with|,)$/.test(joint?.t === 'sign' || joint?.t === 'word' ? joint.text : '')) continue;
    const kinds = [namedAs(tokens[k + 1]), namedAs(tokens[k + 4])];
    if (!kinds.includes('alkali') || !kinds.includes('water')) continue;
    const whole = one.quantity.value + other.quantity.value;
    const share = (kinds[0] === 'alkali' ? one : other).quantity.value / whole;
    if (whole < least) continue;
    if (shares.length === 0) {
      const strength = whole < taken ? null : asStrength(tokens, k, share);
      if (strength === null || out) continue;
      out = [...tokens.slice(0, k), ...strength, ...tokens.slice(k + 5)];
      continue;
    }
    if (!shares.some((said) => Math.abs(said - share) <= 0.006)) continue;
    out ??= [...tokens];
    out[k] = asAside(one, 'how the solution was mixed');
    out[k + 3] = asAside(other, 'how the solution was mixed');
    for (const at of [k + 1, k + 4]) {
      const name = tokens[at];
      if (name) out[at] = asFiller(name, 'only');
    }
  }
  return out ?? tokens;
}

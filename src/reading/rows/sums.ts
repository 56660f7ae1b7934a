/** Amounts that are sums: `4 oz + 3/8 oz lye`, and `olive 700 g (500 virgin + 200 pomace)`, whose parts are told. */

import type { Token } from '../words/tokens.ts';
import { type Item, thingItem } from './items.ts';

type Amount = Extract<Item, { kind: 'amount' }>;

const isWeight = (item: Item | undefined): item is Amount =>
  item?.kind === 'amount' && (item.quantity.dim === 'mass' || item.quantity.dim === 'bare') && !item.quantity.each;
const isFat = (item: Item | undefined): boolean => item?.kind === 'thing' && item.named.meaning.kind === 'fat';
const isIdle = (item: Item | undefined): boolean =>
  item?.kind === 'thing' && /^(?:scent|additive)$/.test(item.named.meaning.kind);
const signOf = (token: Token): string => (token.t === 'sign' ? token.text : '');
const signAt = (token: Token | undefined, sign: string): boolean => token?.t === 'sign' && token.text === sign;

/** "2 lb less 1 oz", "1 kg (minus 50 g for the jar)", "1 kg less the tub, 50 g", "1 oz short of 2 lb": what is left. */
export function takeOff(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let out: Item[] | null = null;
  for (let k = 0; k + 1 < items.length; k++) {
    const first = items[k];
    const tub = isTub(items[k + 1]) ? 1 : 0;
    const second = items[k + 1 + tub];
    if (!isWeight(first) || !isWeight(second) || first.quantity.dim !== 'mass' || second.quantity.dim !== 'mass')
      continue;
    const off = tub > 0 ? tareBetween(tokens, first, second) : offBetween(tokens, first, second);
    const [whole, part] = off === 'second' ? [first, second] : [second, first];
    if (off === null || !(part.quantity.value < whole.quantity.value)) continue;
    out ??= [...items];
    const { quantity } = whole;
    const numbers = [...quantity.numbers, ...part.quantity.numbers];
    const value = quantity.value - part.quantity.value;
    const text = `${quantity.text} less ${part.quantity.text}`;
    const closes = signAt(tokens[second.to], ')') && signAt(tokens[first.to], '(');
    const left: Amount = {
      ...first,
      same: null,
      quantity: { ...quantity, value, other: null, text, numbers },
      to: closes ? second.to + 1 : second.to,
    };
    out.splice(k - (items.length - out.length), 2 + tub, left);
    k += 1 + tub;
  }
  return out ?? items;
}

const isTub = (item: Item | undefined): boolean => item?.kind === 'thing' && item.named.meaning.id === 'pot';

/** "1 kg less the tub 50 g", "1 kg (minus the tin: 50 g)": what the vessel weighs. */
const tareBetween = (tokens: readonly Token[], { to }: Amount, { from }: Amount): 'second' | null =>
  /^[(,]?(?:less|minus)(?: (?:the|its|my|an?))?$/.test(
    tokens
      .slice(to, from)
      .filter(
        (token) => token.t !== 'name' && !signAt(token, ':') && (token === tokens[to] || !/^[(,]$/.test(signOf(token))),
      )
      .map((token) => (token.t === 'word' || token.t === 'sign' ? token.text : '?'))
      .join(' ')
      .replace(/^([(,]) /, '$1'),
  )
    ? 'second'
    : null;

/** Which of two amounts is to be taken off the other. */
function offBetween(tokens: readonly Token[], { to }: Amount, { from, to: end }: Amount): 'first' | 'second' | null {
  const [one, two] = [tokens[to], tokens[to + 1]];
  const word = (token: Token | undefined): string => (token?.t === 'word' ? token.text : '');
  const isOff = (token: Token | undefined): boolean => /^(?:less|minus)$/.test(word(token));
  if (from - to === 1 && isOff(one)) return 'second';
  // "1 kg lard, less 50 g of scraps": of something else, maybe
  const of = word(tokens[end]) === 'of' || tokens[end]?.t === 'name';
  if (from - to === 2 && (signAt(one, '(') || signAt(one, ',')) && isOff(two) && !of) return 'second';
  const short = `${word(one)} ${word(two)}`;
  return from - to === 2 && /^(?:short of|less than|shy of|off of)$/.test(short) ? 'first' : null;
}

/** Amounts with nothing but a plus between them, of one thing: no name follows that the second could be of. */
export function addUp(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let sums: Map<Item, Item> | null = null;
  let added: Set<Item> | null = null;
  for (let k = 1; k + 1 < items.length; k++) {
    const [first, second] = [items[k], items[k + 1]];
    if (!isWeight(first) || !isWeight(second) || second.quantity.dim !== 'mass' || items[k - 1]?.kind !== 'thing')
      continue;
    const next = items[k + 2];
    if (second.from !== first.to + 1) continue;
    const joint = tokens[first.to];
    const isBoth =
      joint?.t === 'word' && joint.text === 'and' && saysBoth(tokens, items[k - 1]?.to ?? 0, first, second);
    // "cedar / lime | 25 g / 10 g": whichever is which, they count for nothing
    const isScent = isIdle(items[k - 1]) && joint?.t === 'sign' && /^[/,&]$/.test(joint.text);
    if (!isBoth && !isScent && !signAt(joint, '+')) continue;
    const behind = tokens[second.to];
    // "110 g + 6 g for the citric acid"
    const purpose = behind?.t === 'word' && behind.text === 'for';
    const ends = next === undefined || purpose || second.quantity.text.endsWith('.');
    const isNextCell = isScent && signAt(tokens[second.to], '\t');
    if (!ends && !isNextCell && !tokens.slice(second.to, next.from).some(endsRow)) continue;
    sums ??= new Map();
    added ??= new Set();
    sums.set(first, sumOf(first, second));
    added.add(second);
  }
  return added ? items.filter((item) => !added.has(item)).map((item) => sums?.get(item) ?? item) : items;
}

/** "In two tubs, 350 g and 180 g, both went in". */
const saysBoth = (tokens: readonly Token[], name: number, first: Amount, second: Amount): boolean =>
  tokens
    .slice(name, first.from)
    .some((one) => one.t === 'name' && one.meaning.id === 'pot' && one.text.toLowerCase().endsWith('s')) ||
  tokens.slice(second.to, second.to + 2).some((one) => one.t === 'word' && one.text === 'both');

function sumOf(first: Amount, second: Amount): Amount {
  const { quantity: a } = first;
  const { quantity: b } = second;
  const value = (a.dim === 'bare' ? a.value * (b.unit?.factor ?? 1) : a.value) + b.value;
  const numbers = [...a.numbers, ...b.numbers];
  return { ...first, quantity: { ...b, value, other: null, text: `${a.text} + ${b.text}`, numbers }, to: second.to };
}

const endsRow = (token: Token): boolean => token.t === 'line' || (token.t === 'sign' && /^[,;.)]$/.test(token.text));

/** Tokens of a bracket that tells the parts of an amount, at the most. */
const longestBracket = 30;

/** Where the bracket behind an amount tells its parts, the amount is their total. */
export function breakDown(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const at = items.findIndex((item, k) => k > 0 && isFat(items[k - 1]) && isWeight(item) && partsOf(items, tokens, k));
  const whole = at < 0 ? undefined : items[at];
  if (!isWeight(whole)) return items;
  const total = thingItem(
    { meaning: { kind: 'role', id: 'total' }, text: 'together', how: 'name', meant: 'together' },
    whole.to,
    whole.to,
  );
  return [...items.slice(0, at), { ...whole, total: true }, total, ...items.slice(at + 1)];
}

/** Two or more fats are weighed in the bracket that opens behind item `at`. */
function partsOf(items: readonly Item[], tokens: readonly Token[], at: number): boolean {
  const whole = items[at];
  if (!whole || !signAt(tokens[whole.to], '(')) return false;
  let close = whole.to + 1;
  while (close < tokens.length && close - whole.to < longestBracket && !signAt(tokens[close], ')')) close++;
  if (!signAt(tokens[close], ')')) return false;
  let fats = 0;
  let weights = 0;
  for (let k = at + 1; (items[k]?.from ?? close) < close; k++) {
    if (isFat(items[k])) fats++;
    if (isWeight(items[k])) weights++;
  }
  return fats >= 2 && weights >= 2;
}

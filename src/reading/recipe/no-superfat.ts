/** "No superfat, it's for laundry", "superfat: none", "I never superfat this one": none is a figure, too. */
import { amountItem, type Item, thingItem } from '../rows/items.ts';
import { plainQuantity } from '../words/quantities.ts';
import { isAny, isMark, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

export const superfat = (at: number): Thing =>
  thingItem({ meaning: { kind: 'role', id: 'superfat' }, text: 'superfat', how: 'name', meant: 'superfat' }, at, at);

export const nought = (at: number): Amount =>
  amountItem({ ...plainQuantity, dim: 'percent', value: 0, inWords: true, text: '0 %' }, at, at);

export const isSuperfat = (item: Item | undefined): item is Thing =>
  item?.kind === 'thing' && item.named.meaning.kind === 'role' && item.named.meaning.id === 'superfat';

/** "No need for superfat" speaks of it, too. */
export const isOfSuperfat = (item: Item): item is Thing =>
  item.kind === 'thing' &&
  item.named.meaning.kind === 'role' &&
  (item.named.meaning.id === 'superfat' ||
    (item.named.meaning.id === 'after' && /^(?:for|as) superfat/.test(item.named.meant)));

/** Words of a clause to either side of its superfat, at the most. */
const reach = 8;

const denial = '(?:no|not|none|without|zero|nil|nix|nothing|nada|zilch|nowt|never|minus|sans|ohne|keine?|senza|sin)';
const denied = '(?:dont|doesnt|didnt|wont|isnt|wouldnt|neednt|cant|cannot)';
/** Only these stand between a denial and what it denies: "without changing the superfat" denies none. */
const light =
  '(?:any|the|a|my|its|some|of|need|needed|for|want|wanted|wanting|wish|like|use|using|do|doing|have|having|add|adding|at|all|to|it|this|one|bother|with|is|are|be|should|will|set|please|i|we|there|going)';

/** "Without any", "I don't want", "leave out the", before the word. */
const deniesBehind = new RegExp(
  `(?:^|\\s)(?:${denial}|${denied}|skip|skipping|(?:leave|leaving|cut) out|hold)(?: ${light})*$`,
);
/** "None", "should be zero", "isn't wanted", behind it. */
const deniesAhead =
  /^(?:(?:of|at|is|[:=-]|level|should|shall|will|must|to|be|set|its|as|an|absolute) )*(?:(?:nothing|none|nil|nix|zero|zilch|nada|nowt|niente|keine?)\b|(?:not|isnt|not being) (?:needed|wanted|required|necessary|used)\b|unwanted|unnecessary|left out)/;
/** Some, or nobody says how much, or it is of another soap. */
const unsure =
  /\b(?:almost|next to|nearly|practically|hardly|virtually|(?:mention|stat|specifi|decid|calculat|list|tell|ask)(?:ed|s)?|says?|said|told|gives?|given|gave|chosen|written|wrote|shows?|shown|yet|was|were|had|used to|she|he|they|her|his|their|last)\b/;

/** "No superfat tricks" denies what is done with it. */
const ofIts =
  /^(?:tricks?|games?|nonsense|fuss|worries|experiments?|calculations?|figures?|math|maths|sums|changes?)\b/;

/** A row of items with none for the superfat that the post does without. */
export function noSuperfat(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const at = items.findIndex((item) => isOfSuperfat(item) && isDenied(item, tokens));
  const [role, next] = [items[at], items[at + 1]];
  if (!role) return items;
  const isShare = (item: Item | undefined): boolean => item?.kind === 'amount' && item.quantity.dim === 'percent';
  // "no superfat at all, 0 %"
  if (isShare(next)) return items;
  const behind = items[at + 2];
  // "no superfat to speak of, call it three percent"
  if (behind && isShare(behind) && isCalledSo(tokens, behind.from)) return items.toSpliced(at + 1, 1);
  return [...items.slice(0, at), superfat(role.from), nought(role.to), ...items.slice(at + 1)];
}

const isCalledSo = (tokens: readonly Token[], at: number): boolean =>
  /^(?:it|say|about|maybe)$/.test(spoken(tokens[at - 1])) &&
  /^(?:call|make|say|take|lets)$/.test(spoken(tokens[at - 2]));

function isDenied({ from, to, named }: Thing, tokens: readonly Token[]): boolean {
  let [begin, end] = [from, to];
  while (begin > 0 && from - begin < reach && !isParted(tokens[begin - 1])) begin--;
  while (end - to < reach && !isParted(tokens[end])) end++;
  const before = said(tokens, begin, from);
  const behind = said(tokens, to, end);
  // "no superfat beyond 3 %"
  if (isAny(tokens, begin, end, isPercent) || isAny(tokens, to, end, isBare)) return false;
  if (unsure.test(`${before} ${behind}`) || ofIts.test(behind)) return false;
  return deniesBehind.test(before) || deniesAhead.test(behind) || /^(?:un|non)[- ]?super/i.test(named.text);
}

const isPercent = (token: Token): boolean => token.t === 'quantity' && token.quantity.dim === 'percent';
const isBare = (token: Token): boolean => token.t === 'quantity' && token.quantity.dim === 'bare';
const isParted = (token: Token | undefined): boolean => isStop(token) || isMark(token, ',()[]');

function said(tokens: readonly Token[], from: number, to: number): string {
  let text = '';
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    text += ` ${token?.t === 'sign' ? token.text : spoken(token) || '…'}`;
  }
  return text.trim();
}

/** "With nothing left over", "every last bit of the fat turned to soap": without the word. */
export function nothingLeft(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  if (items.some(isSuperfat)) return items;
  const at = tokens.findIndex((_, k) => {
    const word = spoken(tokens[k]);
    if (word === 'nothing') return spoken(tokens[k + 1]) === 'left';
    return word === 'every' && all.test(said(tokens, k, Math.min(k + reach + 2, tokens.length)));
  });
  return at < 0 ? items : [...items, superfat(tokens.length), nought(tokens.length)];
}

const all =
  /^every (?:last |single )?(?:bit|drop|scrap|gram|speck|ounce)\b.* (?:turned|turns|saponified|converted|used up|eaten|becomes)\b/;

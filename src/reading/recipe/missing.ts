import { linesOf, packed, unitWord } from '../columns/columns.ts';
import { untold } from '../figures/as-much.ts';
import type { SwapAsked } from '../reading.ts';
import type { Bound } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import type { Meaning } from '../words/lexicon.ts';
import { isAny, isIngredient, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { wishesAlkali } from './asks.ts';
import type { Roles } from './roles.ts';
import { type Assembly, type Kindred, label, type Row } from './rows.ts';
import { isUnweighed } from './unweighed.ts';

/** Fats named in the list without an amount, and alkali that is an ingredient but has none. */
export function mentions(assembly: Assembly, rows: readonly Row[], roles: Roles): void {
  const { items, tokens, bound, lexicon } = assembly.source;
  if (bound.best.mentions.length === 0) return;
  const weighed = weighedIn(rows);
  const lye = rows.some((row) => (row.amount || row.share) && lyes.has(row.named.meaning.kind));
  const lines = linesOf(tokens);
  let lined: ReadonlySet<number> | null = null;
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (item?.kind !== 'thing') continue;
    const { meaning } = item.named;
    if (!needed.has(meaning.kind) || (meaning.kind === 'alkali' && lye) || weighed(meaning)) continue;
    lined ??= new Set(rows.map((row) => row.line));
    const rowLines = lined;
    if (isSpokenTo(item, tokens) || keptOut(tokens, item.to)) continue;
    const line = assembly.lineOf(item.from);
    const span = lines[line];
    if (!span) continue;
    const around = tokens.slice(span.from, span.to);
    const answer = answeredAs(tokens, item.to, span.to);
    if (answer === 'no') continue;
    const words = around.filter(
      (token) => token.t === 'word' && (token.sort === 'everyday' || token.sort === 'joint'),
    ).length;
    const alone =
      !rowLines.has(line) &&
      words === 0 &&
      (rowLines.has(line - 1) || rowLines.has(line + 1)) &&
      around.some((token) => token.t === 'name') &&
      !(around.length > 0 && isHeading(around));
    const listed = rowLines.has(line) && (inList(tokens, item, k, bound) || joinsRow(tokens, items, k, bound));
    const between = [line - 1, line + 1].filter((one) => rowLines.has(one)).length;
    // "Coconut oil (coffee ring here, can't read it) oz"
    const blotted =
      !rowLines.has(line) &&
      tokens.slice(span.from, item.from).every((token) => token.t === 'sign') &&
      !isHeading(around) &&
      (between === 2 || (between === 1 && unitWord(tokens, lexicon, span) !== null));
    const affirmed = answer === 'yes' && (rowLines.has(line - 1) || rowLines.has(line + 1));
    if (!alone && !listed && !blotted && !affirmed && !(meaning.kind === 'fat' && isShareOfFats(tokens, item)))
      continue;
    const amountless = { id: 'no-amount' as const, said: item.named.text, of: label(assembly, meaning) };
    if (meaning.kind === 'alkali') {
      if (
        !assembly.asksForAlkali() &&
        !isToFill(assembly, item) &&
        roles.concentration === null &&
        !rows.some((row) => row.named.meaning.kind === 'alkali')
      )
        assembly.assume('lye', `No amount stands beside "${item.named.text}": I work out what the fats need.`);
    } else if (meaning.kind !== 'ambiguous' || alone) assembly.doubts.push(amountless);
  }
}

/** "Shea? NO, ran out", "shea - skipped", "shea? yes": what the rest of its line says of a name without an amount. */
function answeredAs(tokens: readonly Token[], from: number, to: number): 'yes' | 'no' | null {
  let k = from;
  while (k < to && tokens[k]?.t === 'sign') k++;
  const rest = tokens.slice(k, to);
  if (k === from || rest.some((one) => one.t === 'quantity' || isIngredient(one))) return null;
  const said = rest.map(spoken).join(' ');
  return denied.test(said) ? 'no' : affirming.test(said) ? 'yes' : null;
}
const denied =
  /^(?:no|nope|nah|none|nil|not|never|skipped|omitted|forgot|forgotten|left out|didnt|dont|couldnt|havent|hadnt|ran out|out of)\b/;
const affirming = /^(?:yes|yep|yeah|yup)\b/;

/** "6 % of the oils, as mango butter": how much it is, nobody else says. */
function isShareOfFats(tokens: readonly Token[], { from }: Item): boolean {
  for (let k = from - 1; k >= 1 && from - k <= 6; k--) {
    const token = tokens[k];
    if (token?.t === 'line' || (token?.t === 'sign' && /^[.;!?]$/.test(token.text))) return false;
    if (token?.t !== 'name' || token.meaning.kind !== 'role' || token.meaning.id !== 'total-fats') continue;
    const share = tokens.slice(Math.max(0, k - 5), k).find((one) => one?.t === 'quantity');
    return share?.t === 'quantity' && share.quantity.dim === 'percent';
  }
  return false;
}

const lyes: ReadonlySet<Meaning['kind']> = new Set(['alkali', 'stock']);
/** Kinds of things that an amount is missed of. */
const needed: ReadonlySet<Meaning['kind']> = new Set(['fat', 'unheld', 'ambiguous', 'alkali']);

/** Whether the rows say how much goes in of a thing. */
function weighedIn(rows: readonly Row[]): (meaning: Meaning) => boolean {
  let weighed: Map<string, Set<string>> | null = null;
  return ({ kind, id }) => {
    if (!weighed) {
      weighed = new Map();
      for (const { named, amount, share } of rows) {
        if (!amount && !share) continue;
        const kinds = weighed.get(named.meaning.id) ?? new Set();
        weighed.set(named.meaning.id, kinds.add(named.meaning.kind));
      }
    }
    return weighed.get(id)?.has(kind) ?? false;
  };
}

/** "Robin, I would not": somebody's name, near that of an ingredient. */
function isSpokenTo({ from, to, named }: Extract<Item, { kind: 'thing' }>, tokens: readonly Token[]): boolean {
  const [before, comma, next] = [tokens[from - 1], tokens[to], tokens[to + 1]];
  return (
    named.how === 'spelling' &&
    (before === undefined || before.t === 'line') &&
    comma?.t === 'sign' &&
    comma.text === ',' &&
    next?.t === 'word' &&
    next.sort === 'everyday'
  );
}

/** "A half bottle of jojoba that I'm keeping for my hair": named to be left out. */
function keptOut(tokens: readonly Token[], from: number): boolean {
  const words: string[] = [];
  for (const token of tokens.slice(from, from + 12)) {
    if (token.t === 'line' || (token.t === 'sign' && /^[.;!?]$/.test(token.text))) break;
    words.push(token.t === 'word' ? token.text : token.t === 'name' ? token.text.toLowerCase() : '');
  }
  return /\b(?:keep|keeping|saving|save|reserved?|need) (?:it |that |this )?for\b|\bnot for (?:the |this )?soap\b/.test(
    words.join(' '),
  );
}

const later =
  /\b(?:next (?:time|batch|week|month|year)|(?:what|how) about|would|worth adding|another (?:time|day|batch)|one day|some ?day|maybe|perhaps|might|in future|in the future|(?:should|could|shall|can|may) (?:i|we)|thinking (?:of|about)|tempted to|would (?:like|love) to)\b/;

/** Said for sure of another time. */
const otherTime =
  /\b(?:next (?:time|batch|week|month|year)|another (?:time|day|batch)|one day|some ?day|in (?:the )?future|not this (?:time|year)|this time (?:not|no))\b/;

/** "Maybe I should add castor next time": what is not in the pot yet; `surely`: not where it is only asked about. */
export function isForLater(tokens: readonly Token[], { from, to }: Item, surely = false): boolean {
  let [begin, end] = [from, to];
  const ends = (at: number): boolean => endsSentence(tokens[at]) || isColon(tokens[at]);
  for (; begin > 0 && from - begin < 14 && !ends(begin - 1); begin--)
    if (tokens[begin - 1]?.t === 'quantity') return false;
  for (; end < tokens.length && end - to < 14 && !ends(end); end++) if (tokens[end]?.t === 'quantity') return false;
  if (isAny(tokens, from, to, isFigure)) return false;
  return (surely ? otherTime : later).test(
    tokens
      .slice(begin, end)
      .map((token) => (token.t === 'word' || token.t === 'name' ? token.text : ''))
      .join(' ')
      .toLowerCase(),
  );
}

const isColon = (token: Token | undefined): boolean => token?.t === 'sign' && token.text === ':';
const isFigure = (token: Token): boolean => token.t === 'quantity';

/** A line's end, a full stop or the like, also that of a figure ("280 g."). */
export const endsSentence = (token: Token | undefined): boolean =>
  token !== undefined && (isStop(token) || (token.t === 'quantity' && token.quantity.text.endsWith('.')));

function isHeading(tokens: readonly Token[]): boolean {
  const last = tokens.at(-1);
  return last?.t === 'sign' && last.text === ':';
}

/** `NaOH: ____ g`: a blank that the answer is to fill. */
function isToFill({ source: { tokens, lexicon } }: Assembly, { to }: Item): boolean {
  let at = to;
  while (tokens[at]?.t === 'sign') at++;
  const next = tokens[at];
  const behind = tokens[at + 1];
  const unitAlone =
    next?.t === 'word' &&
    unitWord(tokens, lexicon, { from: at, to: at + 1 }) !== null &&
    (behind === undefined || behind.t === 'line' || behind.t === 'sign');
  return unitAlone || (at > to && (isBlank(tokens[at - 1]) || isGap(tokens.slice(to, at))));
}

/** `[..]`, `....`, `[ ]`: a gap where a figure should stand. */
const isGap = (signs: readonly Token[]): boolean =>
  /^[:=]?(?:[[(](?:\.{2,}|…|-+)?[\])]|\.{2,}|…|-{2,})$/.test(
    signs.map((token) => (token.t === 'sign' ? token.text : '')).join(''),
  );

/** Where a figure should stand. */
const isBlank = (token: Token | undefined): boolean => token?.t === 'sign' && /^[?_]$/.test(token.text);

/** Between two weighed names and parted from both by commas: `450 g olive, coconut, 75 g castor`. */
function inList(tokens: readonly Token[], item: Item, at: number, bound: Bound): boolean {
  // "? g coconut", "__ g of castor"
  let from = item.from - 1;
  for (let one = tokens[from]; isBlank(one) || (one?.t === 'word' && one.sort === 'filler'); one = tokens[--from]);
  const isBlankBefore = tokens.slice(from + 1, item.from).some(isBlank);
  const before = tokens[isBlankBefore ? from : item.from - 1];
  const after = tokens[item.to];
  if (!parted(before)) return false;
  const grouped = (k: number): boolean => bound.groupOf[k] !== undefined;
  const first = before === undefined || before.t === 'line';
  const last = after === undefined || after.t === 'line';
  return (
    (grouped(at - 1) && grouped(at + 1)) || (parted(after) && ((first && grouped(at + 1)) || (last && grouped(at - 1))))
  );
}

/** A sign or a word between two rows of a list. */
const parted = (token: Token | undefined): boolean =>
  token === undefined ||
  token.t === 'line' ||
  (token.t === 'sign' && /^[,;\t•+&]$/.test(token.text)) ||
  (token.t === 'word' && token.sort === 'joint' && /^(and|&|plus)$/.test(token.text));

const isStroke = (token: Token | undefined): boolean => token?.t === 'sign' && /^[/:]$/.test(token.text);

/** What a list may begin with: "Fats = olive", "a mix of olive". */
const opensList = (token: Token | undefined): boolean =>
  (token?.t === 'sign' && /^[:=(/-]$/.test(token.text)) ||
  (token?.t === 'word' && token.sort === 'filler') ||
  (token?.t === 'name' && token.meaning.kind === 'role');

/** Joined to a weighed fat: "fats = olive : coconut 250 g", "a mix of olive (the good one) + 250 g coconut". */
function joinsRow(tokens: readonly Token[], items: readonly Item[], at: number, { groupOf }: Bound): boolean {
  const [before, item, next] = [items[at - 1], items[at], items[at + 1]];
  if (item?.kind !== 'thing' || item.named.meaning.kind !== 'fat') return false;
  const isFatRow = (k: number): boolean =>
    groupOf[k]?.things.some((one) => {
      const thing = items[one];
      return thing?.kind === 'thing' && thing.named.meaning.kind === 'fat';
    }) ?? false;
  const to = behindBracket(tokens, item.to);
  const joins = (k: number): boolean => k >= 0 && k < tokens.length && (parted(tokens[k]) || isStroke(tokens[k]));
  const opens = parted(tokens[item.from - 1]) || opensList(tokens[item.from - 1]);
  if (opens && joins(to) && tokens[to]?.t !== 'line' && next?.from === to + 1 && isFatRow(at + 1)) return true;
  return isStroke(tokens[item.from - 1]) && before?.to === item.from - 1 && isFatRow(at - 1) && parted(tokens[to]);
}

/** Behind a bracket of words that opens at token `k`; `k` where none does. */
function behindBracket(tokens: readonly Token[], k: number): number {
  const isBracket = (token: Token | undefined, sign: string): boolean => token?.t === 'sign' && token.text === sign;
  if (!isBracket(tokens[k], '(')) return k;
  let close = k + 1;
  while (
    close - k < longestRemark &&
    /^(?:word|name|sign)$/.test(tokens[close]?.t ?? '') &&
    !isBracket(tokens[close], ')')
  )
    close++;
  return isBracket(tokens[close], ')') ? close + 1 : k;
}
const longestRemark = 12;

const vague: ReadonlySet<string> = new Set(
  'some scoop scoops spoonful spoonfuls spoon spoons bit splash little knob handful handfuls dash glug glugs dollop dollops drizzle adding add chunk lump dab swig blob half jar jars tub tubs bottle bottles block blocks stick sticks pack packs bag bags tin tins can cans cap caps capful capfuls ladle ladles mug mugs glass glasses cup cups teacup teacups beaker beakers jug jugs thimble thimbles eggcup eggcups'.split(
    ' ',
  ),
);

/** "A scoop", "half a mugful". */
const isVague = (word: string): boolean =>
  vague.has(word) ||
  /^egg cups?$/.test(word) ||
  /(?:mug|jug|glass|jar|bowl|tin|lid|ladle|beaker|pot|cup|hand|scoop|fist)fuls?$/.test(word);

/** "Not a stick of hazelnut oil", "not one drop". */
const isDenied = (wordAt: (k: number) => string, at: number): boolean =>
  /^(?:not|no|without|never|nor)$/.test(wordAt(at - 1)) ||
  (/^(?:a|an|one|single|any|even)$/.test(wordAt(at - 1)) && /^(?:not|no|without|never|nor)$/.test(wordAt(at - 2)));

/** "Castor: as ever." */
const isAsEver = (wordAt: (k: number) => string, at: number): boolean =>
  wordAt(at) === 'as' && /^(?:ever|always|usual|before)$/.test(wordAt(at + 1));

/** Words between such an amount and its name. */
const between: ReadonlySet<string> = new Set(['of', 'the', 'my', 'a', 'an', 'more', 'extra', 'good']);

/** Nothing is weighed that the alkali could be dissolved in. */
const isDry = (rows: readonly Row[]): boolean =>
  !rows.some((row) => wet.has(row.named.meaning.kind) && (row.amount || row.share));

const wet: ReadonlySet<Meaning['kind']> = new Set(['water', 'ice', 'liquid', 'stock']);

/** "500 g lard and a jar of caustic soda, how much of it do I need?": what stands ready is asked for. */
const isWanted = (text: string): boolean =>
  /\bhow (?:much|many)(?: grams| ounces)?(?: of (?:it|that|the \w+|this))? (?:goes|go|do|should|must|will|would|is needed)\b/i.test(
    text,
  ) && !/\b(?:used|put|added|poured|weighed|tipped|threw)\b/i.test(text);

/** Things that go in by no stated weight: "a scoop of coconut", "3 scoops of NaOH", "a jar of coconut oil". */
export function vagueAmounts(assembly: Assembly, rows: readonly Row[], swap: SwapAsked | null): void {
  const { items, tokens, bound } = assembly.source;
  if (bound.best.mentions.length === 0) return;
  let said: ReadonlySet<string> | null = null;
  const weighed = (id: string): boolean => {
    said ??= new Set(rows.filter((row) => row.amount || row.share).map((row) => row.named.meaning.id));
    return said.has(id);
  };
  const dry = isDry(rows);
  const isByMeasure = assembly.doubts.some((doubt) => doubt.id === 'alkali-volume');
  const isAlkaliSaid = (): boolean =>
    rows.some((row) => row.named.meaning.kind === 'alkali' && row.amount) ||
    items.some((item) => item.kind === 'thing' && item.named.meaning.kind === 'alkali' && isToFill(assembly, item));
  const wordAt = (k: number): string => {
    const token = tokens[k];
    return token?.t === 'word'
      ? token.text
      : token?.t === 'name' && token.meaning.kind === 'role'
        ? token.text.toLowerCase()
        : '';
  };
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (item?.kind !== 'thing') continue;
    const { kind, id } = item.named.meaning;
    // what the lye is dissolved in is asked where the lye is weighed: else the answer names the water
    if (kind !== 'fat' && kind !== 'alkali' && !(dry && kind === 'liquid' && isAlkaliSaid())) continue;
    if (weighed(id) || (kind === 'alkali' && (isAlkaliSaid() || isByMeasure || isWanted(assembly.source.text))))
      continue;
    if (keptOut(tokens, item.to)) {
      assembly.assume('left-out', `I left out "${item.named.text}": it is kept for something else.`);
      continue;
    }
    if (swap !== null && (id === swap.comes || id === swap.goes)) continue;
    if (kind === 'fat' && isForLater(tokens, item)) {
      assembly.assume('left-out', `I left out "${item.named.text}": nothing says how much, and that it is in the pot.`);
      continue;
    }
    let at = item.from - 1;
    while (at >= 0 && between.has(wordAt(at))) at--;
    if (
      (isVague(wordAt(at).replace(/ of$/, '')) && !isDenied(wordAt, at)) ||
      wordAt(at) === untold ||
      wordAt(item.to) === untold ||
      (kind === 'fat' && isAsEver(wordAt, tokens[item.to]?.t === 'sign' ? item.to + 1 : item.to)) ||
      (kind === 'fat' && isUnweighed(tokens, items, k, bound))
    )
      assembly.doubts.push({ id: 'no-amount', said: item.named.text, of: label(assembly, item.named.meaning) });
  }
}

const salts: ReadonlySet<string> = new Set(['sodium-carbonate', 'potassium-carbonate', 'baking-soda']);
/** Shares of the fats that people weigh as alkali. */
const alkaliLike = { least: 0.06, most: 0.3 };

const mayBeAlkali = (item: Item): boolean => item.kind === 'thing' && alkaline.has(item.named.meaning.kind);
const alkaline: ReadonlySet<Meaning['kind']> = new Set(['alkali', 'stock', 'ambiguous']);

/** Washing soda weighed as if it were the alkali, in a post that names none and asks for none. */
export function saltForAlkali(assembly: Assembly, rows: readonly Row[], fats: number): void {
  const { items, catalogue } = assembly.source;
  if (fats === 0 || items.some(mayBeAlkali) || assembly.asksForAlkali()) return;
  for (const { named: one, grams } of rows) {
    const share = (grams ?? 0) / fats;
    if (!salts.has(one.meaning.id) || share < alkaliLike.least || share > alkaliLike.most) continue;
    const why = catalogue.additives.get(one.meaning.id)?.note ?? 'It does not turn fat into soap.';
    assembly.doubts.push({ id: 'which-alkali', said: one.text, why });
  }
}

/** "lye for 500 g oil": a fat by no name, and none with one. */
function namelessFat(assembly: Assembly, alkali: number): Extract<Item, { kind: 'thing' }> | null {
  const { items, tokens } = assembly.source;
  if (items.some((item) => item.kind === 'thing' && item.named.meaning.kind === 'fat')) return null;
  const plural = alkali > 0 && !tokens.some((token) => token.t === 'quantity' && token.quantity.dim === 'temperature');
  const pattern = plural ? /^(oil|fat)s?$/ : /^(oil|fat)$/;
  const found = items.find(
    (item) => item.kind === 'thing' && item.named.meaning.kind === 'role' && pattern.test(item.named.meant),
  );
  return found?.kind === 'thing' ? found : null;
}

/** What the post is about but gives no figure for: the alkali it asks to check, the strength of a solution, every fat. */
export function unsaid(
  assembly: Assembly,
  rows: readonly Row[],
  sums: { readonly fats: number; readonly alkali: number },
): void {
  const { items, text, bound, tokens } = assembly.source;
  const nameless = sums.fats === 0 ? namelessFat(assembly, sums.alkali) : null;
  if (nameless) {
    const one = assembly.source.catalogue.ambiguous.find(
      ({ id }) => id === `any-${nameless.named.meant.replace(/s$/, '')}`,
    );
    assembly.doubts.unshift({
      id: 'ambiguous-name',
      said: nameless.named.text,
      candidates: one?.candidates ?? [],
      why: one?.why ?? '',
    });
    return;
  }
  if (assembly.doubts.length > 0) return;
  const named = (kind: Kindred): Extract<Item, { kind: 'thing' }> | undefined =>
    items.find(
      (item): item is Extract<Item, { kind: 'thing' }> => item.kind === 'thing' && item.named.meaning.kind === kind,
    );
  if (sums.alkali > 0 && sums.fats === 0) {
    const fat = named('fat');
    if (fat) assembly.doubts.push({ id: 'no-amount', said: fat.named.text, of: label(assembly, fat.named.meaning) });
  }
  if (sums.fats > 0 && sums.alkali === 0) {
    const judged =
      /\b(is|are|was|does|(?<!\bto )do|my|the|this|that|right|check)\b[^.?!\n]{0,40}\b(lye|naoh|koh|caustic|alkali)\b[^.?!\n]{0,30}\b(right|ok|okay|correct|fine|enough|too|good|safe|accurate|amount)\b/i.test(
        text,
      );
    const stock = named('stock');
    const alkali = named('alkali');
    const isStrong = rows.some((row) => row.named.meaning.kind === 'stock' && row.share);
    if (stock && !alkali && !assembly.asksForAlkali())
      assembly.doubts.push(
        isStrong
          ? { id: 'no-amount', said: stock.named.text, of: stock.named.text }
          : { id: 'stock-strength', said: stock.named.text },
      );
    else if (alkali && judged && !/\bhow much\b/i.test(text) && !wishesAlkali(text))
      assembly.doubts.push({ id: 'no-amount', said: alkali.named.text, of: label(assembly, alkali.named.meaning) });
  }
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (
      item?.kind !== 'thing' ||
      !/^(fat|liquid)$/.test(item.named.meaning.kind) ||
      rows.some((row) => row.named.meaning.id === item.named.meaning.id && (row.amount || row.share))
    )
      continue;
    const counted = tokens
      .slice(Math.max(0, item.from - 4), item.to + 4)
      .some((token) => token.t === 'aside' && token.reason === packed);
    if (keptOut(tokens, item.to)) continue;
    if (counted && item.named.meaning.kind === 'liquid' && !isDry(rows))
      assembly.assume('left-out', `I left out "${item.named.text}": nothing says how much.`);
    else if (counted)
      assembly.doubts.push({ id: 'no-amount', said: item.named.text, of: label(assembly, item.named.meaning) });
  }
}

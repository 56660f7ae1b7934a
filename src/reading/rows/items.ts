import { singular } from '../../catalogue/names.ts';
import type { Lexicon, Meaning } from '../words/lexicon.ts';
import { plainQuantity, type Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';

/** Behind the name of a liquid: "an old tea towel", "a coffee filter", "a cleaned juice carton". */
export const drinkless =
  /^(?:towels?|filters?|boxe?s?|bottles?|jugs?|tins?|cans?|glass|glasses|mugs?|cosy|cozy|lights?|breaks?|bags?|strainers?|cartons?|rings?|tables?|houses?|shops?|papers?|pots?)$/;

/** What is no fat behind the name of one: "wax paper", "butter dish". */
const fatless = /^(?:papers?|dish(?:es)?|kni(?:fe|ves)|lamps?|paints?|trees?|cloths?|crayons?|seals?|wraps?)$/;
const mayBeThing: ReadonlySet<Meaning['kind']> = new Set(['fat', 'unheld', 'ambiguous']);

/** "My coffee scale", "in a yoghurt pot": what stands beside a tool is what that is called after. */
function isToolOf(tokens: readonly Token[], { kind }: Meaning, from: number, to: number): boolean {
  const tool = tokens[to];
  if (!isThing(tool) || tool.meaning.kind !== 'role' || !mayNameTool.has(kind)) return false;
  if (isScale(tool)) return kind !== 'fat';
  const [place, article] = [tokens[from - 2], tokens[from - 1]];
  return (
    tool.meaning.id === 'pot' &&
    isWord(article) &&
    (kind === 'fat' ? /^(?:an?|old|empty)$/ : /^(?:an?|old|empty|the|my|our)$/).test(article.text) &&
    isWord(place) &&
    /^(?:in|into|from|with|an?|my)$/.test(place.text)
  );
}
const isScale = (token: Token | undefined): boolean =>
  isThing(token) && token.meaning.kind === 'role' && token.meaning.id === 'scale';
const mayNameTool: ReadonlySet<Meaning['kind']> = new Set(['fat', 'liquid', 'additive', 'scent']);

/** A thing that was named, with how it was written. */
export interface Named {
  readonly meaning: Meaning;
  readonly text: string;
  readonly how: 'name' | 'plain' | 'abbreviation' | 'spelling' | 'decorated';
  readonly meant: string;
}

export type Item = { readonly from: number; readonly to: number } & (
  | {
      readonly kind: 'amount';
      readonly quantity: Quantity;
      readonly same: Quantity | null;
      readonly pure: boolean;
      readonly total: boolean;
    }
  | { readonly kind: 'thing'; readonly named: Named }
);

/** Amounts are made here alone: all with the same fields in one order, which is what makes reading them fast. */
export const amountItem = (
  quantity: Quantity,
  from: number,
  to: number,
  same: Quantity | null = null,
  pure = false,
): Extract<Item, { kind: 'amount' }> => ({ kind: 'amount', quantity, same, pure, total: false, from, to });

/** Things are made here alone, too. */
export const thingItem = (named: Named, from: number, to: number): Extract<Item, { kind: 'thing' }> => ({
  kind: 'thing',
  named,
  from,
  to,
});

/** Words that change what a fat's bare name stands for: `almond milk`, `olive leaf powder`. */
const changers =
  /^(powder|flour|meal|leaf|leaves|extract|shreds|shredded|pulp|puree|peel|zest|seeds|husk|husks|shell|shells|flower|flowers|petals|tea|hydrosol|mica|clay|scent|scented|perfume|essence|flavour|flavor|flavouring|bran|paste|juice|sugar|syrup|lecithin|protein|starch|germ|nibs|kernels|pit|pits|stones|grounds|fibre|fiber|ash|charcoal|bits|pieces|flesh|fruit|soap|shampoo|lotion|esters|ester|wax)$/;
/** Words that make another substance of a fat. */
const blockers =
  /^(hydrogenated|fractionated|interesterified|sulfated|sulphated|sulfonated|ozonated|ozonised|ozonized|conjugated|polymerised|polymerized|blown|acetylated|ethoxylated|epoxidised|epoxidized|peg|esters|acid|acids|hardened|partially|fatty|distillate|winterised|winterized)$/;
const generic = new Set([
  'oil',
  'oils',
  'butter',
  'butters',
  'fat',
  'fats',
  'wax',
  'seed oil',
  'nut oil',
  'kernel oil',
  'ol',
  'oel',
  'huile',
  'aceite',
  'olio',
  'beurre',
  'burro',
  'manteca',
  'seed butter',
  'nut butter',
]);

type Amount = Extract<Item, { kind: 'amount' }>;

const isThing = (token: Token | undefined): token is Extract<Token, { t: 'name' }> => token?.t === 'name';
const isWord = (token: Token | undefined): token is Extract<Token, { t: 'word' }> => token?.t === 'word';
const isWordOf = (token: Token | undefined, text: string): boolean => isWord(token) && token.text === text;
const isSign = (token: Token | undefined, signs: string): boolean => token?.t === 'sign' && signs.includes(token.text);

/** Words of a name that qualifies another, with those between them, at the most; in a bracket more of them. */
const longestQualifier = 4;
const longestBracket = 7;

/** Kinds of what an inventory calls by the noun first: "butter, cocoa", "milk, goat", "hydroxide, sodium". */
const invertible: ReadonlySet<string> = new Set(['fat', 'ambiguous', 'liquid', 'alkali']);

/** `olive oil (pomace)`, `tallow, mutton`, `high oleic … sunflower`: another name made of the words around. */
function qualified(tokens: readonly Token[], i: number, lexicon: Lexicon): { named: Named; to: number } | null {
  const here = tokens[i];
  const inverted = isSign(tokens[i + 1], ',') && tokens[i - 1]?.t !== 'quantity';
  if (!isThing(here) || !(here.meaning.kind === 'fat' || (inverted && invertible.has(here.meaning.kind)))) return null;
  let j = i + 1;
  const opened = isSign(tokens[j], '([');
  if (opened && isMelted(tokens, j, i - 1)) return null;
  if (isSign(tokens[j], '(,-[/')) j++;
  if (!canQualify(tokens[j])) return null;
  const own = here.meant.split(/[ -]/);
  const words: string[] = [];
  let best: { named: Named; to: number } | null = null;
  for (let k = j; k < Math.min(j + (opened ? longestBracket : longestQualifier), tokens.length); k++) {
    const token = tokens[k];
    const melts = meltsAt(token);
    if (melts !== null && !isWeighed(tokens, i, k + 1)) break;
    if (melts !== null) words.push(melts);
    else if (isWord(token) && token.sort !== 'joint' && !denying.test(token.text)) {
      if (mayNameFat(token.text, lexicon)) words.push(token.text);
      // "the hard 92 one": what is said besides
      else if (opened) continue;
      else break;
    } else if (isThing(token) && (token.meaning.kind === 'fat' || token.meaning.kind === 'ambiguous'))
      words.push(...token.meant.split(/[ -]/));
    else if (!(opened && isSign(token, ','))) break;
    const last = words.at(-1);
    const entry =
      lexicon.reordered([...own, ...words]) ??
      (opened && words.length > 1 && last ? lexicon.reordered([...own, last]) : undefined);
    if (entry && entry.meaning.kind === 'fat' && entry.meaning.id !== here.meaning.id && isSign(tokens[k + 1], '?')) {
      // "palm (kernel?) oil": the writer is not sure
      return {
        named: {
          meaning: {
            kind: 'ambiguous',
            id: `${here.text} or ${entry.phrase}`,
            candidates: [here.meaning.id, entry.meaning.id],
            why: 'The two need different amounts of alkali.',
          },
          text: `${here.text} ${words.join(' ')}?`,
          how: 'name',
          meant: here.meant,
        },
        to: k + 1,
      };
    }
    const isKind =
      entry !== undefined &&
      (entry.meaning.kind === 'fat'
        ? entry.meaning.id !== here.meaning.id || inverted
        : inverted && invertible.has(entry.meaning.kind) && entry.meaning.kind !== 'ambiguous');
    // "melt the butter, cocoa first" names two
    if (entry && isKind && (here.meaning.kind === 'fat' || isWeighed(tokens, i, k + 1))) {
      // the words taken must not begin the next row: a figure right behind them would be theirs
      const closes = isSign(tokens[k + 1], ')]');
      best = {
        named: { meaning: entry.meaning, text: `${here.text} ${words.join(' ')}`, how: 'name', meant: entry.phrase },
        to: closes ? k + 2 : k + 1,
      };
    }
  }
  if (best && isSign(tokens[i + 1], ',') && tokens[best.to]?.t === 'quantity') {
    // "palm, kernel 100 g" is a qualifier only where nothing was weighed for the first name
    const before = tokens[i - 1];
    if (before?.t === 'quantity') return null;
  }
  return best && opened ? { ...best, to: endOfBracket(tokens, best.to) } : best;
}

const ofMelting = /^(?:liquid|melted|measured|warm|warmed|runny|when|while|as|a|still|first)$/;

/** "250 ml (liquid)", "(melted) 250 ml": how a volume was measured, and no kind of its fat. */
function isMelted(tokens: readonly Token[], opens: number, before: number): boolean {
  let end = opens + 1;
  for (let word = tokens[end]; isSign(word, ',') || (isWord(word) && ofMelting.test(word.text)); ) word = tokens[++end];
  if (!isSign(tokens[end], ')]')) return false;
  let behind = end + 1;
  while (isSign(tokens[behind], ':=\t-')) behind++;
  return [before, behind].some((at) => {
    const figure = tokens[isWordOf(tokens[at], 'of') ? at - 1 : at];
    return figure?.t === 'quantity' && figure.quantity.dim === 'volume';
  });
}

/** A word, a name of a fat or a melting point, that may be a part of another's name. */
const canQualify = (token: Token | undefined): boolean =>
  isWord(token)
    ? token.sort !== 'joint'
    : isThing(token)
      ? token.meaning.kind === 'fat' || token.meaning.kind === 'ambiguous'
      : meltsAt(token) !== null;

/** What stands behind these is another kind: "sunflower (not the high oleic one)". */
const denying = /^(?:not|isnt|no|never|without|instead|unlike|like|than|nor)$/;

/** The figure of the melting point that tells one kind from another: "coconut 92 deg". */
const meltsAt = (token: Token | undefined): string | null =>
  token?.t === 'quantity' && token.quantity.dim === 'temperature'
    ? (/^\d+/.exec(token.quantity.text)?.[0] ?? null)
    : null;

/** A figure stands before the name, or behind what is said of its kind: the rest is talk, "melt the coconut, 92 F". */
function isWeighed(tokens: readonly Token[], i: number, to: number): boolean {
  const before = tokens[i - 1];
  if (before?.t === 'quantity' || (isWord(before) && before.text === 'of' && tokens[i - 2]?.t === 'quantity'))
    return true;
  let k = to;
  while (k - to < longestQualifier && (isWord(tokens[k]) || isSign(tokens[k], '),:=]\t-'))) k++;
  const figure = tokens[k];
  return figure?.t === 'quantity' && figure.quantity.dim !== 'temperature';
}

/** Behind the bracket that closes after a few more words: "(the hydrogenated kind for bars)". */
function endOfBracket(tokens: readonly Token[], from: number): number {
  if (isSign(tokens[from - 1], ')]')) return from;
  let end = from;
  while (end - from < longestBracket && isWord(tokens[end])) end++;
  return isSign(tokens[end], ')]') ? end + 1 : from;
}

/** `sunflower 300 g (high oleic)`: the fat whose kind the bracket behind its amount tells. */
function qualifiedBehind(
  tokens: readonly Token[],
  i: number,
  lexicon: Lexicon,
): { named: Named; from: number; to: number } | null {
  const here = tokens[i];
  if (!isThing(here)) return null;
  let from = i + 1;
  while (isSign(tokens[from], ':=\t-') && from - i < 3) from++;
  if (tokens[from]?.t !== 'quantity' || !isSign(tokens[from + 1], '([')) return null;
  if (isMelted(tokens, from + 1, from)) return null;
  // a lone temperature there is that of the pot
  const found =
    tokens[from + 2]?.t !== 'quantity'
      ? qualified([here, ...tokens.slice(from + 1, from + 2 + longestBracket)], 0, lexicon)
      : null;
  const to = from + (found?.to ?? 0);
  return found && isSign(tokens[to - 1], ')]') ? { named: found.named, from: from + 1, to } : null;
}

const passedOver: ReadonlySet<string> = new Set(['oil', 'of', 'the']);

/** Whether the word may stand in a name, in its singular or its plural; no other makes a name of those around it. */
function mayNameFat(word: string, lexicon: Lexicon): boolean {
  const { known } = lexicon.vocabulary();
  return passedOver.has(word) || known.has(word) || known.has(singular(word)) || known.has(`${word}s`);
}

function sameThing(a: Meaning, b: Meaning): Meaning | null {
  if (a.kind === 'alkali' && b.kind === 'alkali')
    return a.id === b.id || b.id === 'unsaid' ? a : a.id === 'unsaid' ? b : null;
  if ((a.kind === 'alkali' && b.kind === 'stock') || (a.kind === 'stock' && b.kind === 'alkali')) {
    const id = a.id === 'unsaid' ? b.id : a.id;
    if (a.id !== 'unsaid' && b.id !== 'unsaid' && a.id !== b.id) return null;
    return { kind: 'stock', id: id as 'naoh' | 'koh' | 'unsaid' };
  }
  if (a.kind === 'ambiguous' && b.kind === 'alkali') return b;
  if (a.kind === 'alkali' && b.kind === 'ambiguous' && /hydroxide|potash|caustic|soda/.test(b.id)) return a;
  if (a.kind === b.kind && (a.kind === 'scent' || a.kind === 'additive')) return a;
  if (a.kind === 'scent' && b.kind === 'additive') return a;
  if (a.kind === b.kind && a.id === b.id) return a;
  return null;
}

const speaks =
  /^(?:gave|gives|brought|brings|sent|sold|said|says|wrote|writes|told|tells|thinks|thought|posted|swears|asked|asks|claims|recommends|recommended|suggests|suggested|replied|answered)$/;

const does =
  /^(?:took|takes|used|uses|did|does|made|makes|put|puts|weighed|always|gave|brought|says|said|thinks|wrote)$/;

/** Names with their decorations, and amounts with the same amount in another unit, in order. */
export function itemsOf(tokens: readonly Token[], lexicon: Lexicon): Item[] {
  const items: Item[] = [];
  /** A bracket that tells the kind of the fat before it, and nothing else. */
  let remark = { from: -1, to: -1 };
  let i = 0;
  while (i < tokens.length) {
    if (i === remark.from) i = remark.to;
    const token: Token | undefined = tokens[i];
    if (!token) break;
    if (token.t === 'quantity') {
      const { dim } = token.quantity;
      if (dim !== 'temperature' && dim !== 'time' && dim !== 'length')
        items.push(amountItem(token.quantity, i, i + 1, null, dim === 'percent' && sayPure(tokens, i)));
      i++;
      continue;
    }
    if (isWord(token) && token.sort === 'unknown') {
      const end = unknownRun(tokens, i);
      const next = tokens[end];
      // "Rasheed says he does 80 %": somebody
      if (isWord(next) && speaks.test(next.text)) {
        i = end;
        continue;
      }
      // "superfat shd be 5": short for what should be, whatever the letters
      if (isWord(next) && (next.text === 'be' || (next.text === 'to' && isWordOf(tokens[end + 1], 'be')))) {
        i = end;
        continue;
      }
      // "Mould B, 1100 g"
      if (token.text.length === 1 && isRoleOf(tokens[i - 1], 'mould')) {
        i++;
        continue;
      }
      const text = tokens
        .slice(i, end)
        .map((one) => (isWord(one) ? one.text : ''))
        .join(' ');
      if (isThing(next) && next.meaning.kind !== 'role') {
        const named = decorate(text, next);
        const deeper = named.meaning === next.meaning ? qualified(tokens, end, lexicon) : null;
        items.push(thingItem(deeper?.named ?? named, i, deeper?.to ?? end + 1));
        i = deeper?.to ?? end + 1;
      } else {
        items.push(thingItem({ meaning: { kind: 'unknown', id: text }, text, how: 'name', meant: text }, i, end));
        i = end;
      }
      continue;
    }
    // "the coconut oil weighs 240 g"
    if (isRoleOf(token, 'total') && /^weigh/.test(token.meant) && isOneFat(tokens, i - 1)) {
      i++;
      continue;
    }
    // "1400 g of fat altogether"
    const before = items.at(-1);
    if (isRoleOf(token, 'total') && before?.kind === 'thing' && before.to === i && isFats(tokens[i - 1])) {
      i++;
      continue;
    }
    // "total of fats in your mould: 800 g"
    if (isRoleOf(token, 'mould') && isRoleOf(tokens[i - 3], 'total-fats') && isWordOf(tokens[i - 2], 'in')) {
      i++;
      continue;
    }
    if (isThing(token)) {
      // "Jo took 155 g": somebody, and no jojoba
      const verb = token.how === 'abbreviation' ? tokens[i + 1] : undefined;
      const follows = tokens[i + 1];
      // "put in all the 634 g": no total
      const isAllThe = token.text.toLowerCase() === 'in all' && isWord(follows) && /^(?:the|my|of)$/.test(follows.text);
      if (isAllThe || isDecoration(tokens, i) || (isWord(verb) && does.test(verb.text))) {
        i++;
        continue;
      }
      const deeper = qualified(tokens, i, lexicon);
      const later: ReturnType<typeof qualifiedBehind> =
        deeper || token.meaning.kind !== 'fat' ? null : qualifiedBehind(tokens, i, lexicon);
      if (later) remark = later;
      let named: Named = (deeper ?? later)?.named ?? {
        meaning: isAllTheFat(tokens, i) ? { kind: 'role', id: 'total-fats' } : token.meaning,
        text: token.text,
        how: token.how,
        meant: token.meant,
      };
      let to = deeper?.to ?? i + 1;
      const after = tokens[to];
      if (named.meaning.kind === 'liquid' && isWord(after) && drinkless.test(after.text)) {
        i = to + 1;
        continue;
      }
      if (isToolOf(tokens, named.meaning, i, to)) {
        i = to + (isScale(tokens[to]) ? 0 : 1);
        continue;
      }
      if (mayBeThing.has(named.meaning.kind) && isWord(after) && fatless.test(after.text)) {
        i = to + 1;
        continue;
      }
      if (named.meaning.kind === 'fat' && isWord(after)) {
        if (changers.test(after.text) && !/oil|butter|fat|wax|tallow|lard|acid|ghee|lanolin/.test(named.meant)) {
          named = {
            meaning: { kind: 'additive', id: `${named.text} ${after.text}` },
            text: `${named.text} ${after.text}`,
            how: 'decorated',
            meant: named.meant,
          };
          to++;
        } else if (blockers.test(after.text)) {
          named = {
            meaning: { kind: 'unknown', id: `${named.text} ${after.text}` },
            text: `${named.text} ${after.text}`,
            how: 'name',
            meant: named.meant,
          };
          to++;
        }
      }
      // "500 g coconut milk soap": what the soap is called, no ingredient
      const product = tokens[to];
      if (
        isThing(product) &&
        product.meaning.kind === 'role' &&
        called.has(named.meaning.kind) &&
        /^(soap|soaps|bars?|soap batch|bars? of soap)$/.test(product.meant) &&
        !isLastOfRow(items, tokens)
      ) {
        if (named.meaning.kind === 'liquid' && isWeighedThere(tokens, to + 1)) {
          items.push(thingItem(named, i, to + 1));
          i = to + 1;
          continue;
        }
        items.push(thingItem({ ...named, meaning: { kind: 'role', id: 'batch-word' } }, i, to + 1));
        i = to + 1;
        continue;
      }
      // "Butyrospermum parkii (shea) butter": the generic word behind the bracket is part of the name
      const behind = tokens[to + 1];
      if (
        named.meaning.kind === 'fat' &&
        isSign(tokens[to], ')') &&
        isThing(behind) &&
        behind.meaning.kind === 'ambiguous' &&
        / ?(oil|butter|fat|wax)$/.test(behind.meaning.id)
      )
        to += 2;
      // "almond fragrance", "coconut EO": a scent
      const following = tokens[to];
      if (
        named.meaning.kind === 'fat' &&
        isThing(following) &&
        following.meaning.kind === 'scent' &&
        /^(fragrance|fragrances|eo|fo|scent|essential oil|fragrance oil|parfum|perfume|e o|f o)$/.test(following.meant)
      ) {
        named = {
          meaning: following.meaning,
          text: `${named.text} ${following.text}`,
          how: 'name',
          meant: following.meant,
        };
        to++;
      }
      const previous = i > 0 ? tokens[i - 1] : undefined;
      if (
        named.meaning.kind === 'fat' &&
        isWord(previous) &&
        blockers.test(previous.text) &&
        (items.at(-1)?.to ?? 0) <= i - 1
      )
        named = {
          meaning: { kind: 'unknown', id: `${previous.text} ${named.text}` },
          text: `${previous.text} ${named.text}`,
          how: 'name',
          meant: named.meant,
        };
      items.push(thingItem(named, i, to));
      i = to;
      continue;
    }
    i++;
  }
  return joinSame(withoutRemarks(joinNames(glossed(items, tokens), tokens), tokens), tokens);
}

/** "Shaving soap, 1000 g fat:", and behind it the list of them. */
function isAllTheFat(tokens: readonly Token[], i: number): boolean {
  const [before, fat] = [tokens[i - 1], tokens[i]];
  return (
    isThing(fat) &&
    fat.meaning.id === 'heading' &&
    /^(?:fat|oil)$/.test(fat.meant) &&
    before?.t === 'quantity' &&
    before.quantity.dim === 'mass' &&
    isSign(tokens[i + 1], ':')
  );
}

/** Kinds of things that a soap may be called after. */
const called: ReadonlySet<Meaning['kind']> = new Set(['fat', 'liquid', 'additive', 'scent']);

const asMilk =
  /^(?:tinned|canned|frozen|slushy|iced|chilled|flat|fat|skimmed|unsweetened|brewed|boiled|pasteuri[sz]ed|raw|diluted)$/;

/** "Coconut milk soap (tinned, 100 g)": soap comes in no tin, so that the weight is the milk's. */
function isWeighedThere(tokens: readonly Token[], open: number): boolean {
  if (!isSign(tokens[open], '([')) return false;
  let isOfMilk = false;
  for (let at = open + 1; at - open < longestBracket; at++) {
    const token = tokens[at];
    if (token?.t === 'quantity')
      return isOfMilk && isSign(tokens[at + 1], ')],') && /^(?:mass|volume)$/.test(token.quantity.dim);
    if (isWord(token)) isOfMilk ||= asMilk.test(token.text);
    else if (!isSign(token, ',:-')) return false;
  }
  return false;
}

/** "500 g lard 250 g coconut oil soap": the amount before it follows upon a fat with its own. */
function isLastOfRow(items: readonly Item[], tokens: readonly Token[]): boolean {
  const [first, fat, amount] = items.slice(-3);
  if (first?.kind !== 'amount' || fat?.kind !== 'thing' || amount?.kind !== 'amount') return false;
  const between = tokens.slice(fat.to, amount.from);
  return (
    fat.named.meaning.kind === 'fat' &&
    fat.from - first.to <= 1 &&
    between.every((token) => isSign(token, ',+&') || (isWord(token) && token.text === 'and'))
  );
}

/** `98 % pure`: a share that says nothing of anything but the alkali. */
function sayPure(tokens: readonly Token[], i: number): boolean {
  const pure = (token: Token | undefined): boolean =>
    isThing(token) && token.meaning.kind === 'role' && token.meaning.id === 'purity';
  return pure(tokens[i + 1]) || pure(tokens[i - 1]);
}

/** The alkali's share of a solution that is mixed 1:1 or 1:2; more than half of it would not dissolve. */
function strengthOf(item: Extract<Item, { kind: 'amount' }>): Item | null {
  const { dim, value, second } = item.quantity;
  if (dim !== 'ratio' || second === null || !(value > 0) || !(second > 0)) return null;
  const share = Math.min(value, second) / (value + second);
  return { ...item, quantity: { ...item.quantity, dim: 'percent', value: share, second: null } };
}

/** "(Half NaOH, half water)": the alkali's share of it. */
function halfAt(tokens: readonly Token[], one: Item): Item | null {
  if (one.kind !== 'thing' || one.named.meaning.kind !== 'alkali' || !isWordOf(tokens[one.from - 1], 'half'))
    return null;
  return amountItem({ ...plainQuantity, dim: 'percent', value: 0.5, inWords: true, text: 'half' }, one.from, one.to);
}

const isNamed = (item: Item): boolean =>
  item.kind === 'thing' && item.named.meaning.kind !== 'role' && item.named.meaning.kind !== 'unknown';

/** Remarks in brackets between a name and its amount: `lye solution (NaOH 1:1 with water): 284 g`. */
function withoutRemarks(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  if (!items.some((item) => item.kind === 'thing' && isSign(tokens[item.to], '(['))) return items;
  const dropped = new Set<Item>();
  const named = new Map<Item, Item>();
  for (let at = 0; at < items.length; at++) {
    const item = items[at];
    if (item?.kind !== 'thing' || !isSign(tokens[item.to], '([')) continue;
    const opens = item.to;
    let close = opens + 1;
    while (close < tokens.length && close - opens < 14 && !isSign(tokens[close], ')]') && tokens[close]?.t !== 'line')
      close++;
    if (!isSign(tokens[close], ')]')) continue;
    let next = close + 1;
    while (isSign(tokens[next], ':=-')) next++;
    const amount = tokens[next];
    if (amount?.t !== 'quantity' || !/^(?:mass|bare|volume)$/.test(amount.quantity.dim)) continue;
    const inside: Item[] = [];
    for (let k = at + 1; (items[k]?.from ?? close) < close; k++) inside.push(items[k] as Item);
    if (inside.some((one) => one.kind === 'amount' && one.quantity.dim !== 'percent' && one.quantity.dim !== 'ratio'))
      continue;
    // "V (water) = 250 mL": the bracket has the name
    const isNumber = item.named.meaning.kind === 'role' && item.named.meaning.id === 'number';
    if (isNumber && amount.quantity.unit !== null && inside.some(isNamed)) continue;
    // "sodium hydroxide (KOH)" is no remark but a contradiction
    const clash = inside.some(
      (one) =>
        one.kind === 'thing' &&
        one.named.meaning.kind === 'alkali' &&
        item.named.meaning.kind === 'alkali' &&
        sameThing(item.named.meaning, one.named.meaning) === null,
    );
    if (clash) continue;
    // "coconut milk (tin, stirred in): 120 g": the colon is the name's
    // "CB (cocoa, not coffee!!) 150": no sentence ends in it
    const isCry = tokens.slice(opens, close).some((token) => isSign(token, '!?.'));
    const pointed = (isCry || isSign(tokens[close + 1], ':=')) && !inside.some((one) => one.kind === 'amount');
    if (pointed) named.set(item, { ...item, to: close + 1 });
    const isStated = inside.some((one) => one.kind === 'amount' && one.quantity.dim === 'percent');
    for (const one of inside) {
      const isStrength = item.named.meaning.kind === 'stock' && one.kind === 'amount' && !isStated;
      const strength = isStrength ? strengthOf(one) : null;
      const half = item.named.meaning.kind === 'stock' && !isStated ? halfAt(tokens, one) : null;
      if (strength ?? half) named.set(one, (strength ?? half) as Item);
      else if (one.kind === 'thing' || one.quantity.dim === 'ratio') dropped.add(one);
      const meaning = one.kind === 'thing' ? sameThing(item.named.meaning, one.named.meaning) : null;
      if (meaning) named.set(item, { ...(named.get(item) ?? item), named: { ...item.named, meaning } } as Item);
    }
  }
  if (dropped.size + named.size === 0) return items;
  return items.filter((item) => !dropped.has(item)).map((item) => named.get(item) ?? item);
}

/** Role words that only decorate here: `packs of`, `98 % pure lye`, `38 % of oils`. */
function isDecoration(tokens: readonly Token[], i: number): boolean {
  const token = tokens[i];
  if (!isThing(token) || token.meaning.kind !== 'role') return false;
  const before = i > 0 ? tokens[i - 1] : undefined;
  const after = tokens[i + 1];
  if (token.meaning.id === 'pot')
    return (
      isShareOfAll(tokens, i) ||
      / of$/.test(token.meant) ||
      (isWord(after) && after.text === 'of') ||
      isSource(tokens, i)
    );
  if (token.meaning.id === 'total-fats')
    return (
      (before?.t === 'quantity' &&
        before.quantity.dim === 'percent' &&
        /^of /.test(token.meant) &&
        token.text !== 'of') ||
      isShareOfAll(tokens, i) ||
      isOilOfOne(tokens, i) ||
      headsFats(tokens, i)
    );
  if (token.meaning.id === 'purity') {
    const percent = (one: Token | undefined): boolean => one?.t === 'quantity' && one.quantity.dim === 'percent';
    return (percent(before) || percent(after) || percent(tokens[i + 2])) && nearAlkali(tokens, i);
  }
  return false;
}

/** "Lye 118, oils 480 olive 240 coconut": what stands behind it has the figures, each before its fat. */
function headsFats(tokens: readonly Token[], i: number): boolean {
  const before = tokens[i - 1];
  const isDotted = before?.t === 'quantity' && before.quantity.text.endsWith('.');
  if (before && before.t !== 'line' && !isDotted && !isSign(before, ',.;')) return false;
  let at = isSign(tokens[i + 1], ':') ? i + 2 : i + 1;
  let fats = 0;
  for (;;) {
    const [figure, fat] = [tokens[at], tokens[at + 1]];
    if (figure?.t !== 'quantity') return fats > 1;
    if (!/^(?:mass|bare)$/.test(figure.quantity.dim) || !isThing(fat) || fat.meaning.kind !== 'fat') return false;
    fats++;
    at += 2;
    if (isSign(tokens[at], ',+&') || isWordOf(tokens[at], 'and')) at++;
  }
}

const allOf = /^(?:of|all|my|our|these|those)$/;
const isFats = (token: Token | undefined): boolean => isThing(token) && token.meaning.id === 'total-fats';

/** "35 % of the total oils", "35 % of the pot fats": by any name of theirs. */
function isShareOfAll(tokens: readonly Token[], i: number): boolean {
  if (!isFats(tokens[i]) && !isFats(tokens[i + 1])) return false;
  let k = i - 1;
  let of = false;
  for (; k >= 0 && i - k <= 4; k--) {
    const token = tokens[k];
    if (token?.t === 'quantity') return of && token.quantity.dim === 'percent';
    const isPot = isThing(token) && token.meaning.id === 'pot';
    if (!isPot && !(isWord(token) && (token.sort === 'filler' || allOf.test(token.text)))) return false;
    of ||= isWord(token) && /\bof$/.test(token.text);
  }
  return false;
}

/** "300 g of oil of coco": of one fat, which has no other weight, and no other fat beside it. */
function isOilOfOne(tokens: readonly Token[], i: number): boolean {
  const [before, token, fat] = [tokens[i - 1], tokens[i], tokens[i + 2]];
  if (before?.t !== 'quantity' || before.quantity.dim !== 'mass' || !isThing(token)) return false;
  if (!/^of (?:oil|fat)$/.test(token.meant) || !isWordOf(tokens[i + 1], 'of')) return false;
  // "500 g of fat of pork": what that is, is asked
  const isStrange = isWord(fat) && fat.sort !== 'filler' && !/^(?:choice|good|any|which|some|your)$/.test(fat.text);
  if (!isStrange && !(isThing(fat) && fat.meaning.kind === 'fat')) return false;
  const [next, after] = [tokens[i + 3], tokens[i + 4]];
  if (isSign(next, ',&+') || isWordOf(next, 'and')) return after?.t === 'quantity';
  return next === undefined || next.t === 'line' || isSign(next, '.;!?)');
}

/** "Coconut milk, from a tin: 260 g": where it came from. */
function isSource(tokens: readonly Token[], i: number): boolean {
  const [from, article] = [tokens[i - 2], tokens[i - 1]];
  return isWord(from) && from.text === 'from' && isWord(article) && /^(?:an?|the|my)$/.test(article.text);
}

function nearAlkali(tokens: readonly Token[], i: number): boolean {
  for (const step of [-1, 1]) {
    for (let k = i + step; k >= 0 && k < tokens.length && Math.abs(k - i) < 8; k += step) {
      const token = tokens[k];
      if (token?.t === 'line') break;
      if (isThing(token) && (token.meaning.kind === 'alkali' || token.meaning.kind === 'stock')) return true;
    }
  }
  return false;
}

const isRoleOf = (token: Token | undefined, id: string): token is Extract<Token, { t: 'name' }> =>
  isThing(token) && token.meaning.kind === 'role' && token.meaning.id === id;

/** "The coconut oil", and not "olive and coconut". */
function isOneFat(tokens: readonly Token[], i: number): boolean {
  const [before, token] = [tokens[i - 1], tokens[i]];
  return isThing(token) && token.meaning.kind === 'fat' && isWordOf(before, 'the') && !isWordOf(tokens[i - 2], 'and');
}

function unknownRun(tokens: readonly Token[], i: number): number {
  let end = i + 1;
  while (end < tokens.length && end - i < 4) {
    const token = tokens[end];
    if (!isWord(token) || token.sort !== 'unknown') break;
    end++;
  }
  return end;
}

/** An unknown word before a name: a brand or adjective of a known fat, or an unknown kind of "oil". */
function decorate(text: string, next: Extract<Token, { t: 'name' }>): Named {
  const whole = `${text} ${next.text}`;
  if (next.meaning.kind === 'ambiguous' && generic.has(next.meaning.id))
    return { meaning: { kind: 'unknown', id: whole }, text: whole, how: 'name', meant: whole };
  if (next.meaning.kind === 'fat') {
    if (text.split(' ').some((word) => blockers.test(word)))
      return { meaning: { kind: 'unknown', id: whole }, text: whole, how: 'name', meant: whole };
    return { meaning: next.meaning, text: whole, how: 'decorated', meant: next.meant };
  }
  return { meaning: next.meaning, text: next.text, how: next.how, meant: next.meant };
}

/** `woda 240 g (water)`, `woda (water) 240 g`: a strange word, and in a bracket beside it what it means. */
function glossed(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let meant: Map<Item, Item> | null = null;
  let said: Set<Item> | null = null;
  for (let k = 0; k + 1 < items.length; k++) {
    const [item, next] = [items[k], items[k + 1]];
    if (item?.kind !== 'thing' || said?.has(item)) continue;
    if (item.named.meaning.kind !== 'unknown') {
      // "soap (mydło)", "water (woda)": the word besides
      const besides = next?.from === item.to + 1 && isBracketed(next, tokens) && next.named.meaning.kind === 'unknown';
      if (besides) said = (said ?? new Set()).add(next);
      continue;
    }
    const gloss = next?.kind === 'amount' ? items[k + 2] : next;
    const before = next?.kind === 'amount' ? next.to : item.to;
    if (gloss?.kind !== 'thing' || gloss.from !== before + 1) continue;
    const isBehind = isBracketed(gloss, tokens);
    if (!isBehind && !(next === gloss && isSign(tokens[before], '='))) continue;
    const { kind } = gloss.named.meaning;
    if (kind === 'role' || kind === 'unknown') continue;
    meant ??= new Map();
    const named = { ...gloss.named, text: `${item.named.text} (${gloss.named.text})` };
    meant.set(item, { ...item, named, to: next === gloss ? gloss.to + (isBehind ? 1 : 0) : item.to });
    said = (said ?? new Set()).add(gloss);
  }
  return said ? items.filter((item) => !said?.has(item)).map((item) => meant?.get(item) ?? item) : items;
}

/** A name that a bracket holds, and nothing besides. */
const isBracketed = (item: Item, tokens: readonly Token[]): item is Extract<Item, { kind: 'thing' }> =>
  item.kind === 'thing' && isSign(tokens[item.from - 1], '([') && isSign(tokens[item.to], ')]');

/** `NaOH (sodium hydroxide)`, `lye/NaOH`, `lavender EO`: one thing named twice. */
function joinNames(items: readonly Item[], tokens: readonly Token[]): Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const last = out.at(-1);
    if (item.kind !== 'thing' || !last) {
      out.push(item);
      continue;
    }
    const owner = last.kind === 'amount' && last.quantity.dim === 'percent' ? out.at(-2) : undefined;
    if (
      last.kind === 'amount' &&
      owner?.kind === 'thing' &&
      isSign(tokens[item.to], ')]') &&
      isSign(tokens[last.from - 1], '([')
    ) {
      // "lye solution (33 % NaOH)", "lye (98 % NaOH)"
      const meaning = sameThing(owner.named.meaning, item.named.meaning);
      if (meaning && (item.named.meaning.kind === 'alkali' || item.named.meaning.kind === 'stock')) {
        out[out.length - 2] = { ...owner, named: { ...owner.named, meaning } };
        out[out.length - 1] = { ...last, to: item.to + 1 };
        continue;
      }
    }
    if (last.kind === 'thing' && item.from - last.to <= longestJoin) {
      const between = tokens.slice(last.to, item.from);
      if (
        (isForTheLye(last.named.meaning, item.named.meaning, between) &&
          !(isOfRow(tokens, out.at(-2), last) && hasOwnWeight(tokens, item))) ||
        (last.named.meaning.kind === 'liquid' && item.named.meaning.kind === 'ice' && isAs(between))
      ) {
        out[out.length - 1] = { ...last, to: item.to };
        continue;
      }
      const tight =
        between.length <= 2 &&
        between.every(
          (token) =>
            isSign(token, '(/=-:"\'*_[') ||
            (isWord(token) && /^(or|aka|ie|called|like)$/.test(token.text)) ||
            (isSign(token, ',.') && last.named.meaning.kind === 'alkali'),
        );
      const open = between.some((token) => isSign(token, '([')) && !isSign(tokens[item.to], ')]');
      const heads = last.named.meaning.kind === 'stock' && between.some((token) => isSign(token, ':='));
      const meaning =
        tight && !open && !(heads && isDissolved(tokens, item.to))
          ? sameThing(last.named.meaning, item.named.meaning)
          : null;
      if (meaning) {
        const more = meaning === item.named.meaning ? item.named : last.named;
        const closes = isSign(tokens[item.to], ')]') && isSign(tokens[item.from - 1], '([');
        out[out.length - 1] = thingItem({ ...more, meaning }, last.from, closes ? item.to + 1 : item.to);
        continue;
      }
    }
    out.push(item);
  }
  return out;
}

/** Tokens between two names of one thing, or the water and its alkali, at the most. */
const longestJoin = 4;

/** "Lye solution: NaOH 107 g + water 230 g": from there on, the weight of the alkali and what it is dissolved in. */
function isDissolved(tokens: readonly Token[], behind: number): boolean {
  const at = isSign(tokens[behind], '\t') ? behind + 1 : behind;
  if (tokens[at]?.t !== 'quantity') return false;
  for (let k = at + 1; k <= at + longestJoin; k++) {
    const token = tokens[k];
    // the next row goes on beneath the alkali
    if (!token || (token.t === 'line' && !isSign(tokens[k + 1], '\t+&'))) return false;
    if (isThing(token)) return /^(?:water|ice|liquid)$/.test(token.meaning.kind);
  }
  return false;
}

/** "water for the lye", "distilled water to dissolve the NaOH". */
const isForTheLye = (water: Meaning, lye: Meaning, between: readonly Token[]): boolean =>
  (water.kind === 'water' || water.kind === 'ice') &&
  (lye.kind === 'alkali' || lye.kind === 'stock') &&
  between.every((token) => isWord(token) && /^(for|to|dissolve|dissolving|mix|mixing|the|my|of)$/.test(token.text)) &&
  between.some((token) => isWord(token) && /^(for|dissolve|dissolving)$/.test(token.text));

/** An amount that stands before the name on its line: not that of the row above. */
const isOfRow = (tokens: readonly Token[], amount: Item | undefined, { from }: Item): boolean =>
  amount?.kind === 'amount' && !tokens.slice(amount.to, from).some((token) => token.t === 'line');

/** "130 g of water for the lye, 134 g.": the figure behind it is the lye's, and nothing else is named there. */
function hasOwnWeight(tokens: readonly Token[], { to }: Item): boolean {
  const [figure, next] = [tokens[to + 1], tokens[to + 2]];
  if (!isSign(tokens[to], ',(') || figure?.t !== 'quantity' || figure.quantity.dim !== 'mass') return false;
  return next === undefined || next.t === 'line' || isSign(next, '.,;!?)') || figure.quantity.text.endsWith('.');
}

/** "Goat milk, frozen as ice cubes: 260 g": in which form it is. */
const isAs = (between: readonly Token[]): boolean =>
  between.every((token) => isSign(token, ',(-') || isWord(token)) &&
  between.some((token) => isWord(token) && /^(?:as|into|in|like)$/.test(token.text));

/** How far two statements of one amount may differ before they contradict: kitchen rounding. */
export const sameWithin = 0.035;

const inTwoUnits = ({ quantity: a }: Amount, { quantity: b }: Amount): boolean =>
  a.dim === 'mass' && b.dim === 'mass' && a.unit?.id !== b.unit?.id;

/** `450 g (15.9 oz)`: one amount in two units; both kept, so that they can be compared. */
function joinSame(items: readonly Item[], tokens: readonly Token[]): Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const last = out.at(-1);
    const weights = last?.kind === 'amount' && item.kind === 'amount' && last.same === null && inTwoUnits(last, item);
    if (weights) {
      const a = last.quantity;
      const b = item.quantity;
      const between = tokens.slice(last.to, item.from);
      const bracketed =
        between.length >= 1 &&
        between.length <= 3 &&
        between.every(
          (token) =>
            isSign(token, '(/=~-|[,') ||
            (isWord(token) &&
              /^(or|about|approx|approximately|is|that's|thats|ie|which|circa|ca|roughly|aka|equals|around)$/.test(
                token.text,
              )),
        );
      const tabbed = between.length === 1 && isSign(between[0], '\t');
      const close = Math.abs(a.value - b.value) <= sameWithin * Math.max(a.value, b.value);
      const comma = between.every((token) => isSign(token, ',+&') || (isWord(token) && token.sort === 'joint'));
      if (
        (close || ((bracketed || tabbed || between.length === 0) && !comma)) &&
        (bracketed || tabbed || between.length === 0 || comma)
      ) {
        const closes = isSign(tokens[item.to], ')]');
        out[out.length - 1] = amountItem(a, last.from, closes ? item.to + 1 : item.to, b);
        continue;
      }
    }
    out.push(item);
  }
  return out;
}

/**
 * What a name of several kinds stands for, where the post says so itself: "shortening 500 g (the tub says 100 % palm
 * oil)", "the bag says potassium hydroxide … hydroxide 190 g", "drain opener, but 100 % sodium hydroxide", "caustic
 * potash, 90 % … 222 g of the potash".
 */
import { cue } from '../words/cue-words.ts';
import { type Signals, saysAround } from '../words/signals.ts';
import { isAny, isMark, isPot, isStop, isWeight, type Span, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { thingOf, weighedThings } from '../words/weighed.ts';

type Name = Extract<Token, { t: 'name' }>;

/** Fats that may be any. */
const ofAnyFat = /shortening|vegetable|veg|cooking|frying|fryer|^oils?$|^fats?$/;
const liquid = /lauge|lessive|liquid/;
const drain = /drain|unblocker|pipe|rohr|boucheur/;
/** Names that are tried, at the most: keeps a hostile post's cost bounded. */
const most = 12;

/** Words of a sentence that tells of another time, of somebody else, or for sure of nothing. */
const unsure =
  /^(?:not|isnt|cant|dont|doesnt|wont|couldnt|havent|hasnt|didnt|arent|no|never|or|maybe|perhaps|probably|possibly|think|guess|might|could|some|mostly|mainly|mix|blend|like|similar|instead|last|next|usually|normally|used|once|ran|run|out|other|without|was|were|if|had|friend|sister|brother|mother|mum|mom|he|she|they|her|his|their|people|everybody|everyone|somebody|someone|others|book|recipe|recipes|blog|can|could|should|would|want|wanted|someday|try|tried|than|until)$/;
const denied = (tokens: readonly Token[], k: number): boolean => {
  const word = spoken(tokens[k]);
  // "no other ingredients", "nothing else"
  if (word === 'no' || word === 'other')
    return !/^(?:other|additives|ingredients|extras|added)$/.test(spoken(tokens[k + 1]) || 'ingredients');
  // "sorry, I should have written that"
  if (word === 'should' && spoken(tokens[k + 1]) === 'have') return false;
  return unsure.test(word);
};

/** Words that say what something is. */
const saying =
  /^(?:is|its|thats|which|says|said|reads|states|lists|label|labelled|labeled|made|ingredient|ingredients|contains|only|pure|just|all|mean|meant|meaning|means|called|being)$/;

/** Tokens between a name and what the post says that it is, at the most. */
const nearby = 14;

const isWhole = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && token.quantity.dim === 'percent' && token.quantity.value > 0.994;

const isName = (token: Token | undefined): token is Name => token?.t === 'name';

/** Beside a weight of its own. */
const isWeighed = (tokens: readonly Token[], k: number): boolean =>
  isWeight(tokens[k - 1]) ||
  isWeight(tokens[k + 1]) ||
  (wordAt(tokens, k - 1) === 'of' && isWeight(tokens[k - 2])) ||
  (/^(?:the|my|this|that)$/.test(wordAt(tokens, k - 1)) && wordAt(tokens, k - 2) === 'of' && isWeight(tokens[k - 3])) ||
  (isMark(tokens[k + 1], ':=–—-') && isWeight(tokens[k + 2]));

/** Where a fat is named that is all of the one at `k`: behind it, or in a sentence of its own; -1 where none is. */
function fatToldAt(tokens: readonly Token[], k: number, may: (token: Name) => boolean): number {
  let from = k + 1;
  if (isWeight(tokens[from]) || isMark(tokens[from], ':')) from++;
  if (isWeight(tokens[from])) from++;
  const opens = isMark(tokens[from], '(');
  let told = -1;
  // "400 g butter - cocoa butter that is -"
  let says = opens || (isMark(tokens[from], '–—-') && isName(tokens[from + 1]));
  for (let at = from; at - k <= nearby && !isStop(tokens[at]); at++) {
    const token = tokens[at];
    if (opens ? isMark(token, ')') : told >= 0 && isMark(token, ',)–—')) break;
    if (token?.t === 'quantity' && !isWhole(token)) return -1;
    if (denied(tokens, at)) return -1;
    says ||= isWhole(token) || saying.test(spoken(token));
    if (!token || !isName(token) || token.meaning.kind === 'role') continue;
    if (told >= 0 || !says || !may(token) || isWeighed(tokens, at)) return -1;
    told = at;
  }
  return told;
}

/** A fat that a sentence is said to be of, which weighs none. */
interface Told extends Span {
  readonly at: number;
  readonly fat: Name;
}

/** The fats of sentences that say what something is. */
function toldFats(tokens: readonly Token[], signals: Signals): readonly Told[] {
  const found: Told[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const fat = tokens[at];
    if (
      !isName(fat) ||
      !/^(?:fat|ambiguous)$/.test(fat.meaning.kind) ||
      !saysAround(signals, at, cue.saying) ||
      isWeighed(tokens, at)
    )
      continue;
    const { from, to } = sentenceAt(tokens, at, nearby);
    if (isMark(tokens[to], '?')) continue;
    // "Cocoa butter, I mean!"
    const means = isAny(tokens, from, to, (one) => /^(?:mean|meant)$/.test(spoken(one)));
    if (!means && !isAny(tokens, from, at, (one) => saying.test(spoken(one)))) continue;
    const isElse = isAny(
      tokens,
      from,
      to,
      (one, n) =>
        denied(tokens, n) ||
        (one.t === 'quantity' && !isWhole(one)) ||
        (n !== at && isName(one) && one.meaning.kind === 'fat'),
    );
    if (!isElse) found.push({ at, fat, from, to });
  }
  return found;
}

/** The same, in a sentence of its own: "500 g shortening, …. The tub says 100 % palm oil." */
function fatToldApart(
  tokens: readonly Token[],
  k: number,
  told: readonly Told[],
  may: (token: Name) => boolean,
): number {
  const own = tokens[k];
  const id = isName(own) ? own.meaning.id : '';
  const called = (one: Token): boolean => one.t === 'name' && one.meaning.id === id;
  let found = -1;
  for (const { at, fat, from, to } of told) {
    if (!may(fat) || (from <= k && k < to)) continue;
    // the tin may be that of another one that is weighed, too
    const isOwn = weighedThings(tokens).has(thingOf(fat));
    const isNext = tokens.findLastIndex((one, n) => n < from && isName(one) && one.meaning.kind !== 'role') === k;
    const isMeant = isNext && isAny(tokens, from, to, (one) => /^(?:mean|meant)$/.test(spoken(one)));
    if (!isMeant && !isAny(tokens, from, at, (one) => called(one) || (!isOwn && isPot(one)))) continue;
    if (found >= 0) return -1;
    found = at;
  }
  return found;
}

/** Where the one alkali of a post is named that has no weight; -1 where none is, or several. */
function lyeTold(tokens: readonly Token[], ids: readonly string[]): number {
  let found = -1;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (!isName(token) || token.meaning.kind === 'role') continue;
    const { meaning } = token;
    const id =
      meaning.kind === 'alkali'
        ? meaning.id
        : meaning.kind === 'ambiguous'
          ? byMetal[token.text.toLowerCase()]
          : undefined;
    if (id === undefined || id === 'unsaid') continue;
    const { from, to } = sentenceAt(tokens, at, 30);
    // "Which hydroxide, sodium or potassium?"
    if (isMark(tokens[to], '?')) continue;
    if (!ids.includes(id) || isWeighed(tokens, at) || isAny(tokens, from, to, (_, n) => denied(tokens, n))) return -1;
    const before = found < 0 ? null : kindOf(tokens[found]);
    if (before !== null && before !== id) return -1;
    if (found < 0) found = at;
  }
  return found;
}

/** "Lye (potassium)", "lye 290 g (potassium)", "lye, sodium": where the metals of a lye stand. */
function metalsBeside(tokens: readonly Token[], k: number): readonly number[] {
  const lye = tokens[k];
  if (!isName(lye) || lye.meaning.kind !== 'alkali' || lye.meaning.id !== 'unsaid') return [];
  const sign = isWeight(tokens[k + 1]) ? k + 2 : k + 1;
  if (isMark(tokens[sign], '([')) {
    let end = sign + 1;
    while (end - sign <= nearby && !isMark(tokens[end], ')]') && !isStop(tokens[end])) end++;
    const inside = Array.from({ length: end - sign - 1 }, (_, n) => sign + 1 + n);
    return inside.filter((at) => isMetal(tokens[at]) && !isWeighed(tokens, at));
  }
  const isMeant = isMetal(tokens[sign + 1]) && (isWeighed(tokens, sign + 1) || isMark(tokens[sign + 2], ',\t'));
  return sign === k + 1 && isMark(tokens[sign], ',–—-') && isMeant ? [sign + 1] : [];
}

const isMetal = (token: Token | undefined): boolean =>
  isName(token) && token.meaning.kind === 'ambiguous' && kindOf(token) !== null;

/** The lye as that of the metal; of two, or of one that is asked, nobody knows which. */
function lyeOf(tokens: readonly Token[], k: number, metals: readonly number[]): Name['meaning'] {
  const ids = new Set(metals.map((at) => kindOf(tokens[at])));
  const [id] = ids;
  const last = metals.at(-1) ?? k;
  const isSure =
    ids.size === 1 && !isAny(tokens, k, last, (_, at) => denied(tokens, at)) && !isMark(tokens[last + 1], '?');
  if (isSure && (id === 'naoh' || id === 'koh')) return { kind: 'alkali', id };
  const why = 'They turn different amounts of fat into soap.';
  return { kind: 'ambiguous', id: 'lye', candidates: ['naoh', 'koh'], why };
}

const byMetal: Readonly<Record<string, 'naoh' | 'koh'>> = { sodium: 'naoh', potassium: 'koh' };
const kindOf = (token: Token | undefined): string | null =>
  isName(token)
    ? token.meaning.kind === 'alkali'
      ? token.meaning.id
      : (byMetal[token.text.toLowerCase()] ?? null)
    : null;

/** "Sodium hydroxide, it says drain opener but 100 %": where the share stands; -1 where none does. */
function pureAt(tokens: readonly Token[], k: number): number {
  const { from, to } = sentenceAt(tokens, k, 2 * nearby);
  if (!isAny(tokens, from, to, (one) => kindOf(one) === 'naoh')) return -1;
  const at = tokens.slice(from, to).findIndex(isWhole);
  return at < 0 ? -1 : from + at;
}

/** The weight beside a name. */
function weightOf(tokens: readonly Token[], k: number): number | null {
  const behind = isMark(tokens[k + 1], ',:=–—-') ? tokens[k + 2] : tokens[k + 1];
  const before = wordAt(tokens, k - 1) === 'of' ? tokens[k - 2] : tokens[k - 1];
  for (const one of [before, behind])
    if (one?.t === 'quantity' && one.quantity.dim !== 'percent') return one.quantity.value;
  return null;
}

/** "Goat milk, 280 g … the 280 g of milk": the milk that was named with the same weight; null where none was. */
function milkTold(tokens: readonly Token[], k: number): Name | null {
  const weight = weightOf(tokens, k);
  const kinds = new Set<string>();
  let told: Name | null = null;
  for (let at = 0; at < k; at++) {
    const one = tokens[at];
    if (!isName(one) || one.meaning.kind !== 'liquid' || !/-milk$/.test(one.meaning.id)) continue;
    if (one.meaning.id !== 'cow-milk') kinds.add(one.meaning.id);
    if (weight !== null && weightOf(tokens, at) === weight && one.meaning.id !== 'cow-milk') told = one;
  }
  return kinds.size === 1 ? told : null;
}

/** The one kind that two names of several kinds have in common. */
function commonOf(meaning: Name['meaning'], candidates: readonly string[]): string | null {
  const both = meaning.kind === 'ambiguous' ? meaning.candidates.filter((id) => candidates.includes(id)) : [];
  return both.length === 1 ? (both[0] ?? null) : null;
}

/** "Caustic potash … 222 g of the potash": the alkali that was named in full by the same word; null where another kind is. */
function namedInFull(tokens: readonly Token[], { text, meaning }: Name): Name | null {
  if (meaning.kind !== 'ambiguous') return null;
  const word = text.toLowerCase();
  let full: Name | null = null;
  for (const one of tokens) {
    if (!isName(one) || !('id' in one.meaning) || !meaning.candidates.includes(one.meaning.id)) continue;
    if (one.meaning.kind !== 'alkali' || (full && full.meaning.id !== one.meaning.id)) return null;
    if (one.text.toLowerCase().endsWith(` ${word}`)) full = one;
  }
  return full;
}

/** The tokens with each name of several kinds as the one that the post says. */
export function kindTold(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let apart: readonly Told[] | null = null;
  let tried = 0;
  for (let k = 0; k < tokens.length && tried < most; k++) {
    const token = tokens[k];
    if (!isName(token)) continue;
    if (token.meaning.id === 'cow-milk' && /^milk$/i.test(token.text)) {
      tried++;
      const milk = milkTold(tokens, k);
      if (milk) {
        out ??= [...tokens];
        out[k] = { ...milk, from: token.from, to: token.to, text: token.text, how: 'plain' };
      }
    }
    const metals = metalsBeside(tokens, k);
    const [first = -1] = metals;
    if (first >= 0) {
      tried++;
      const meaning = lyeOf(tokens, k, metals);
      out ??= [...tokens];
      out[k] = { ...token, meaning, how: 'abbreviation', meant: meaning.id };
      for (const at of metals) out[at] = asFiller(tokens[at] as Token);
      // "lye, sodium, 290 g"
      for (const at of [k + 1, first + 1]) {
        const comma = tokens[at];
        if (comma && first === k + 2 && isMark(comma, ',–—-')) out[at] = asFiller(comma);
      }
      continue;
    }
    if (token.meaning.kind !== 'ambiguous' || (out && out[k] !== token)) continue;
    tried++;
    const { from, to, text } = token;
    const { id: called, candidates } = token.meaning;
    if (!isWeighed(tokens, k)) {
      const whole = drain.test(called) ? pureAt(tokens, k) : -1;
      const share = tokens[whole];
      if (share?.t !== 'quantity') continue;
      out ??= [...tokens];
      out[k] = asFiller(token);
      out[whole] = asAside(share, 'how pure it is said to be');
      continue;
    }
    if (drain.test(called) && pureAt(tokens, k) < 0) continue;
    if (candidates.every((id) => id === 'naoh' || id === 'koh') && !liquid.test(called)) {
      const told = tokens[lyeTold(tokens, candidates)];
      const id = kindOf(told);
      if (id !== 'naoh' && id !== 'koh') continue;
      out ??= [...tokens];
      out[k] = { t: 'name', from, to, text, meaning: { kind: 'alkali', id }, how: 'abbreviation', meant: id };
      continue;
    }
    const full = namedInFull(tokens, token);
    if (full) {
      out ??= [...tokens];
      out[k] = { ...full, from, to, text };
      continue;
    }
    const may = ({ meaning }: Name): boolean =>
      meaning.kind === 'fat'
        ? ofAnyFat.test(called) || candidates.includes(meaning.id)
        : commonOf(meaning, candidates) !== null;
    const near = fatToldAt(tokens, k, may);
    if (near < 0) apart ??= toldFats(tokens, signals);
    const at = near >= 0 ? near : fatToldApart(tokens, k, apart ?? [], may);
    const fat = tokens[at];
    if (!isName(fat)) continue;
    out ??= [...tokens];
    // "butter (cocoa)"
    const id = commonOf(fat.meaning, candidates);
    out[k] = { ...fat, ...(id ? { meaning: { kind: 'fat', id } as const } : {}), from, to, text, how: 'plain' };
    out[at] = asFiller(fat);
    for (const beside of [at - 1, at + 1]) {
      const whole = tokens[beside];
      if (whole?.t === 'quantity' && isWhole(whole)) out[beside] = asAside(whole, 'all of what it is made of');
    }
  }
  return out ?? tokens;
}

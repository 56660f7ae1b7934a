import { linesOf } from '../columns/columns.ts';
import { type Binding, endsInDots } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { signal } from '../words/signal-words.ts';
import { gives, givesAt, type Signals } from '../words/signals.ts';
import { isFat, isIngredient, isMark, isRole, isStop, isWeight, isWord, sentenceAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { cookOver, isOfLooks, untilDone } from './cook.ts';
import { namedAfter } from './named-after.ts';

/** `40 g.` holds its full stop. */
const isDotted = (token: Token | undefined): boolean => token?.t === 'quantity' && token.quantity.text.endsWith('.');
const endsClause = (token: Token | undefined): boolean => isStop(token) || isMark(token, ',•');

/** The cook, whatever it is called. */
const cook =
  /^(cook|cooks|cooked|cooking|gel|gels|gelled|gelling|saponification|saponified|saponifying|zap|zaps|zapping)$/;
/** A state that is one of being done. */
const isDoneItself = /^(cooked|gelled|saponified)$/;
const done =
  /^(done|over|finished|finishes|finish|complete|completed|completes|ends|ended|end|through|ready|passed|stops|stopped|longer|doesnt)$/;

/** Words of a phrase such as "once my soap has fully cooked", at the most. */
const longestPhrase = 8;

const wordAt = (token: Token | undefined): string | null =>
  token?.t === 'word'
    ? token.text
    : token?.t === 'name' && (token.meaning.kind === 'role' || token.meaning.kind === 'alkali')
      ? token.text.toLowerCase()
      : null;

/** "After the gel", "when the cook is over", "once my soap has cooked through": the word for the cook says "after". */
export function afterPhrases(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const begin = tokens[k];
    if (!givesAt(signals, k, signal.following) || begin?.t !== 'word' || !gives(begin, signal.following)) continue;
    const state = /^(once|when)$/.test(begin.text);
    let at = isAfterIt(tokens, k) && tellsOfCook(tokens, k) ? k : -1;
    let isDone = false;
    let someone = false;
    for (let j = k + 1; j < tokens.length && j - k <= longestPhrase; j++) {
      const token = tokens[j];
      const word = wordAt(token);
      if (word === null || isRole(token, 'after')) break;
      const last = word.split(' ').at(-1) ?? '';
      if (at < 0 && cook.test(last)) at = j;
      someone ||= /^(i|we|you|he|she|they|who)$/.test(word);
      // "when I cooked this" tells of another day
      isDone ||= done.test(last) || (isDoneItself.test(last) && !someone);
    }
    const token = tokens[at];
    if (!token || (state && !isDone)) continue;
    out ??= [...tokens];
    const { from, to } = token;
    const meaning = { kind: 'role', id: 'after' } as const;
    out[at] = { t: 'name', from, to, text: wordAt(token) ?? '', meaning, how: 'name', meant: 'after the cook' };
    k = at;
  }
  return out ?? tokens;
}

/** "After that", "afterwards", "after which". */
const isAfterIt = (tokens: readonly Token[], k: number): boolean =>
  isWord(tokens[k], 'afterwards') ||
  (isWord(tokens[k], 'after') &&
    ['that', 'this', 'which', 'it'].some((it) => isWord(tokens[k + 1], it)) &&
    !isOfThing(tokens, k + 2));

/** "After that batch": the pronoun points at what is named. */
const isOfThing = (tokens: readonly Token[], k: number): boolean => {
  const word = wordAt(tokens[k]);
  return word !== null && /^(?:batch|soap|one|recipe|loaf|bar|time|week|month|year|day)$/.test(word);
};

/** The sentence before token `k`, or what stands before it in its own, tells how long the soap was cooked, or that it is. */
function tellsOfCook(tokens: readonly Token[], k: number): boolean {
  let from = k;
  for (let stops = 0; from > 0 && stops < 2 && k - from < longestTold; from--) {
    if (from < k && isStop(tokens[from - 1]) && !isStop(tokens[from])) stops++;
    if (stops === 2) break;
  }
  let [isCook, isOver] = [false, false];
  for (const token of tokens.slice(from, k)) {
    const word = wordAt(token)?.split(' ').at(-1) ?? '';
    isCook ||= cook.test(word);
    isOver ||= done.test(word) || long.test(word) || (token.t === 'quantity' && token.quantity.dim === 'time');
  }
  return isCook && isOver;
}
/** "An hour", "overnight": so long takes a cook. */
export const long = /^(?:hours?|overnight|ages)$/;
/** Tokens of the sentence that tells of the cook, at the most. */
const longestTold = 40;

/** Of a thing with an amount: where it stands, whether it is a fat or an alkali, and its grams where it was weighed. */
interface Weighed {
  readonly at: number;
  readonly fat: boolean;
  readonly alkali: boolean;
  readonly grams: number | null;
}

function weighedOf(items: readonly Item[], binding: Binding): Weighed[] {
  const weighed: Weighed[] = [];
  for (const { things, amounts } of binding.groups) {
    let grams: number | null = null;
    for (const k of amounts) {
      const item = items[k];
      if (item?.kind !== 'amount' || (item.quantity.dim !== 'mass' && item.quantity.dim !== 'bare')) continue;
      grams = item.quantity.value;
      break;
    }
    for (const k of things) {
      const item = items[k];
      if (item?.kind !== 'thing' || item.named.meaning.kind === 'role') continue;
      const { kind } = item.named.meaning;
      weighed.push({ at: item.from, fat: kind === 'fat', alkali: kind === 'alkali' || kind === 'stock', grams });
    }
  }
  return weighed;
}

/** Those between two tokens; all are in the order of the text. */
function within(of: readonly Weighed[], from: number, to: number): readonly Weighed[] {
  let [low, high] = [0, of.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((of[middle]?.at ?? from) < from) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while ((of[end]?.at ?? to) < to) end++;
  return of.slice(low, end);
}

/** Share of all fat that is put in after the cook, at the most, where a post names several before the phrase. */
const mostAfter = 0.2;

/** Which tokens lie where the post speaks of fat added after the cook. */
export function afterScope(
  tokens: readonly Token[],
  items: readonly Item[],
  binding: Binding,
): (token: number) => boolean {
  const isLate = (token: number): boolean => {
    const one = tokens[token];
    return one?.t === 'name' && one.late === true;
  };
  const isInside = insideOf(tokens, items, binding);
  return (token) => isInside(token) || isLate(token);
}

function insideOf(tokens: readonly Token[], items: readonly Item[], binding: Binding): (token: number) => boolean {
  const isSaid = tokens.some((token) => isRole(token, 'after'));
  const cooked = isSaid ? null : endOfCook(tokens);
  if (!isSaid && cooked === null) return () => false;
  const inside = new Set<number>();
  const dotted = endsInDots(items);
  const lines = linesOf(tokens);
  const weighed = weighedOf(items, binding);
  const fats = weighed.filter(({ fat }) => fat);
  const grams = fats.reduce((sum, one) => sum + (one.grams ?? 0), 0);
  const mark = (of: readonly Weighed[]): void => {
    for (const { at } of of) if (!isAtTrace(tokens, at) && !isCookedOn(tokens, at)) inside.add(at);
  };
  const shareOf = (of: readonly Weighed[]): number => of.reduce((sum, one) => sum + (one.grams ?? 0), 0) / grams;
  /** "80 g shea, to go in after the cook, olive 700 g …", "after the cook 80 g shea, before it olive 700 g …" */
  const littleBeside = (from: number, k: number, to: number): readonly Weighed[] | null => {
    let clause = k + 1;
    while (clause < to && !endsClause(tokens[clause])) clause++;
    const [next, last] = [within(fats, k, clause), within(fats, from, k).slice(-1)];
    return [next, last].find((one) => one.length > 0 && shareOf(one) <= mostAfter) ?? null;
  };
  /** What is stirred in from here on, if it is little. */
  const markStirred = (from: number, to: number): void => {
    const late = within(fats, from, to);
    // the pot is told of before: its fats, and its alkali where that is weighed
    const isLast =
      fats.some(({ at }) => at < from) && weighed.every(({ alkali, at }) => !alkali || at < (late[0]?.at ?? 0));
    if (isLast && shareOf(late) <= mostAfter && late.every(({ at }) => isStirredIn(tokens, at))) mark(late);
  };
  if (cooked !== null) markStirred(cooked, tokens.length);
  lines.forEach((line, index) => {
    for (let k = line.from; k < line.to; k++) {
      if (!isRole(tokens[k], 'after') || isTalk(tokens, k)) continue;
      if (within(weighed, line.from, line.to).length === 0) {
        const role = tokens[k];
        const looks = role?.t === 'name' && isOfLooks(role.meant) && !isMark(tokens[line.to - 1], ':');
        if (looks || !isHeading(tokens, line, k)) {
          markStirred(k, sentencesOn(tokens, line.to));
          continue;
        }
        // the rows below, up to a blank line or the next heading
        for (const next of lines.slice(index + 1)) {
          const part = tokens.slice(next.from, next.to);
          const rows = within(fats, next.from, next.to);
          if (
            rows.length === 0 &&
            part.some((token) => isMark(token, ':') || isRole(token, 'before') || isRole(token, 'heading'))
          )
            break;
          mark(rows);
          const ending = tokens[next.to];
          if (ending?.t === 'line' && ending.text === 'blank' && part.length > 0) break;
        }
        return;
      }
      let end = k + 1;
      while (end < line.to && !isStop(tokens[end]) && !(dotted && isDotted(tokens[end - 1]))) end++;
      let sentence = k;
      while (sentence > line.from && !isStop(tokens[sentence - 1]) && !(dotted && isDotted(tokens[sentence - 1])))
        sentence--;
      let begin = k;
      const bracket = (token: Token | undefined): boolean => isMark(token, '()');
      while (begin > sentence && !endsClause(tokens[begin - 1]) && !(dotted && isDotted(tokens[begin - 1]))) {
        if (bracket(tokens[begin - 1]) && within(weighed, begin, k).length > 0) break;
        begin--;
      }
      // "water 14 oz. After the cook: 1 oz shea"
      const role = tokens[k];
      const isUntil = role?.t === 'name' && role.meant === untilDone;
      const opens = isMark(tokens[k + 1], ':') || isUntil;
      const isTold = role?.t === 'name' && role.meant === cookOver;
      const before = opens ? [] : within(weighed, isTold ? behindAlkali(tokens, begin, k) : begin, k);
      // "1 oz castor, after the cook, and 2 oz peppermint": of what stands before it
      const isClosed = isParted(tokens, k);
      const behind = isClosed ? [] : within(weighed, k, end);
      // "After the cook I mix in 60 g glycerin" says nothing of the fat before it
      if (before.length === 0 && behind.length > 0) {
        const late = behind.filter(({ fat }) => fat);
        mark(shareOf(late) > mostAfter ? (littleBeside(sentence, k, end) ?? late) : late);
        continue;
      }
      const near = before.filter(({ fat }) => fat);
      // "Zap test clean. Then I folded in 50 g shea."
      if (near.length === 0 && within(weighed, sentence, end).length === 0) markStirred(k, sentencesOn(tokens, end));
      // "450 g olive and 50 g shea after the cook"
      if (near.length > 1 && shareOf(near) > mostAfter) mark(near.slice(-1));
      else if (near.length > 0) mark(near);
      // "30 g shea, after the cook"; but what stands before "until it looks like mash" is cooked
      else if (before.length === 0 && !isUntil) {
        const from = behindAlkali(tokens, sentence, k);
        mark(
          within(fats, from, k)
            .slice(-1)
            .filter(({ at, grams: own }) =>
              isClosed ? (own ?? 0) <= mostAfter * grams : !isTold || isStirredIn(tokens, at),
            ),
        );
      }
    }
  });
  if (isSaid) for (const at of namedAfter(tokens, items, binding)) inside.add(at);
  // everything "after" leaves nothing to cook: only the last one can be meant
  if (inside.size === fats.length) {
    const last = fats.length > 1 ? fats.at(-1) : undefined;
    return (token) => last?.at === token && !((last.grams ?? 0) > mostAfter * grams);
  }
  return (token) => inside.has(token);
}

/** The phrase stands by itself between two signs, and more is listed behind it. */
function isParted(tokens: readonly Token[], k: number): boolean {
  let [from, to] = [k - 1, k + 1];
  while (k - from <= 2 && tokens[from]?.t === 'word') from--;
  while (to - k <= 2 && (isWord(tokens[to], 'the') || cook.test(wordAt(tokens[to]) ?? ''))) to++;
  return isMark(tokens[from], ',(–—-') && isMark(tokens[to], ',)–—-') && goesOn(tokens[to + 1]);
}

/** "and", "then": another one is listed. */
const goesOn = (token: Token | undefined): boolean =>
  token?.t === 'word' && /^(?:and|then|plus|with|along|together|followed|also|as|but)$/.test(token.text);

/** Behind the last alkali between two tokens: what stands before it was in the pot. */
function behindAlkali(tokens: readonly Token[], from: number, to: number): number {
  const at = tokens
    .slice(from, to)
    .findLastIndex((one) => one.t === 'name' && /^(alkali|stock)$/.test(one.meaning.kind));
  return at < 0 ? from : from + at;
}

/** Where the second sentence behind this one ends. */
function sentencesOn(tokens: readonly Token[], end: number): number {
  let at = end;
  for (let n = 0; n < 2 && at < tokens.length; n++) {
    while (at < tokens.length && isStop(tokens[at])) at++;
    while (at < tokens.length && !isStop(tokens[at])) at++;
  }
  return at;
}

/** "25 g of neem goes in at light trace": before the cook, whatever the sentence says besides. */
function isAtTrace(tokens: readonly Token[], at: number): boolean {
  for (let k = at + 1; k < tokens.length && k - at <= 6 && !endsClause(tokens[k]); k++)
    if (isRole(tokens[k], 'before')) return true;
  return false;
}

/** "Stirred in another 150 g olive and cooked on for 2 hours": what is put in between two cooks. */
function isCookedOn(tokens: readonly Token[], at: number): boolean {
  let text = '';
  for (let k = at + 1; k < tokens.length && k - at <= longestTold && !isStop(tokens[k]); k++)
    text += `${wordAt(tokens[k]) ?? '#'} `;
  return cookedOn.test(text);
}
const cookedOn =
  /\b(?:cook(?:ed|ing)? (?:(?:it|all|them|everything|the lot) )*(?:on\b|again\b|further\b|another\b|# more\b)|(?:kept|went on|continued|carried on|keep) (?:on )?cooking|(?:cooker|heat|pot) still on)\b/;

/** Seconds that a cook takes, at the least. */
const leastCook = 1800;

/**
 * Steps in their order: behind the alkali, a sentence of the lid or the oven with a time as long as a cook. Where that
 * time stands; null where there is none.
 */
function endOfCook(tokens: readonly Token[]): number | null {
  let lye = false;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (!lye && token?.t === 'name' && (token.meaning.kind === 'alkali' || token.meaning.kind === 'stock'))
      lye = [k - 1, k + 1, k + 2].some((at) => isWeight(tokens[at]));
    if (!lye || token?.t !== 'quantity' || token.quantity.dim !== 'time' || token.quantity.value < leastCook) continue;
    let from = k;
    while (from > 0 && !isStop(tokens[from - 1])) from--;
    let to = k;
    while (!isStop(tokens[to])) to++;
    const heated = /^(cook|cooks|cooked|cooking|oven|crockpot|crock pot|slow cooker)$/;
    if (
      tokens
        .slice(from, to)
        .some((one) => (one.t === 'word' || one.t === 'name') && heated.test(one.text.toLowerCase()))
    )
      return k + 1;
  }
  return null;
}

const stirring =
  /^(stir|stirs|stirred|stirring|add|adds|added|adding|mix|mixes|mixed|mixing|fold|folds|folded|folding|goes|went|got|gets|get|receives?|received|work|worked|knead|kneaded|beat|give|gives|gave|swirl|swirls|swirled|blend|blended|whisk|whisked|poured|drizzled|then|in)$/;

/** "Now stir in 45 g jojoba oil", "45 g jojoba went in". */
const isStirredIn = (tokens: readonly Token[], at: number): boolean =>
  !tokens.slice(at, at + 6).some((one) => isRole(one, 'before')) &&
  (tokens.slice(Math.max(0, at - 6), at).some((one) => one.t === 'word' && stirring.test(one.text)) ||
    tokens.slice(at + 1, at + 3).some((one) => one.t === 'word' && stirring.test(one.text)));

/** "At the end of the day" and "I once cooked" are talk. */
const isTalk = (tokens: readonly Token[], k: number): boolean => {
  const [before, role, next] = [tokens[k - 1], tokens[k], tokens[k + 1]];
  if (role?.t !== 'name') return false;
  return / end$/.test(role.meant)
    ? next?.t === 'word' && next.text === 'of' && !isOfCook(tokens, k + 2)
    : /^once /.test(role.meant) && before?.t === 'word' && /^(i|we|he|she|they|had|have)$/.test(before.text);
};

/** "At the very end of the hot process". */
const isOfCook = (tokens: readonly Token[], k: number): boolean =>
  [k, k + 1, k + 2].some((at) => /^(?:cook|cooking|process|hp|boil|boiling)$/.test(wordAt(tokens[at]) ?? ''));

const tellers = /^(?:i|we|it|he|she|they|you|its|the|my|is|was)$/;

/** "B. after the cook", "part II: stir in after the cook". */
const step = /^(?:[b-d]|ii|iii|part|step|to|stir|fold|mix|add|in)$/;

/** The phrase opens the line or the line ends in a colon; "and a question at the end" is talk. */
function isHeading(tokens: readonly Token[], line: { readonly from: number; readonly to: number }, k: number): boolean {
  const opens = tokens
    .slice(line.from, k)
    .every((token) => token.t === 'sign' || token.t === 'aside' || (token.t === 'word' && step.test(token.text)));
  // "After the cook I went to bed."
  const end = tokens.findIndex((one, at) => at > k && at < line.to && isMark(one, '.!?'));
  const told = end > 0 && tokens.slice(k + 1, end).some((one) => one.t === 'word' && tellers.test(one.text));
  return !told && (opens || isMark(tokens[line.to - 1], ':)'));
}

/** "30 g shea (superfat)" */
const isRemark = (tokens: readonly Token[], k: number): boolean =>
  isMark(tokens[k - 1], '([') &&
  isMark(tokens[k + 1], ')]') &&
  ((isFat(tokens[k - 2]) && isWeight(tokens[k - 3])) || (isWeight(tokens[k - 2]) && isFat(tokens[k - 3])));

/** It stands before one fat with its weight, and no more in that sentence. */
function headsFat(tokens: readonly Token[], k: number): boolean {
  // "… with 3 % superfat, olive 500 g"
  if ((tokens[k - 1]?.t === 'quantity' && !isDotted(tokens[k - 1])) || isFat(tokens[k - 1])) return false;
  let at = k + 1;
  while (at - k <= 3 && (isMark(tokens[at], ':=–-') || isWord(tokens[at], 'with') || isWord(tokens[at], 'is'))) at++;
  const [one, next] = [tokens[at], isWord(tokens[at + 1], 'of') ? tokens[at + 2] : tokens[at + 1]];
  if (!((isWeight(one) && isFat(next)) || (isFat(one) && isWeight(next)))) return false;
  const { from, to } = sentenceAt(tokens, at, longestPhrase);
  return tokens.slice(from, to).filter(isIngredient).length === 1;
}

/** "Superfat: 30 g shea", "30 g shea (superfat)": a fat by its weight is the one that is stirred in after the cook. */
export function superfatBy(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    // "8 % superfat with 600 g lard" has its figure
    if (
      token?.t === 'name' &&
      isRole(token, 'after') &&
      /^super[- ]?fat with$/i.test(token.text) &&
      isShare(tokens[k - 1]) &&
      isWeight(tokens[k + 1])
    ) {
      out ??= [...tokens];
      out[k] = { ...token, meaning: { kind: 'role', id: 'superfat' }, meant: 'superfat' };
      continue;
    }
    if (token?.t !== 'name' || !isRole(token, 'superfat') || !superfatting.test(token.text)) continue;
    if (!(isRemark(tokens, k) || headsFat(tokens, k))) continue;
    out ??= [...tokens];
    out[k] = { ...token, meaning: { kind: 'role', id: 'after' }, meant: 'superfat fat' };
  }
  return out ?? tokens;
}
const isShare = (token: Token | undefined): boolean => token?.t === 'quantity' && token.quantity.dim === 'percent';
const superfatting = /^super[- ]?fat(?:ted|ting)?(?: (?:with|is))?$/i;

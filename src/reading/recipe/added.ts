/** A second amount of one thing, which went in besides: "so I added another 100 g of coconut", "put in 100 g more coconut". */

import { isAny, isIngredient, isMark, isMeasured, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Row } from './rows.ts';

const besides = /^(?:another|further|additional|extra|other|remaining|second)$/;
/** Nobody has done it, or it was not this time. */
const open =
  /\b(?:if|should|would|could|can|shall|may|might|maybe|perhaps|next|want|wanted|need|needs|think|thinking|or|not|no|never|last|before that|(?:some|half|part|most|a bit|a third|a quarter) of (?:it|that|this|which))\b/;
const did =
  /\b(?:added|add|put|poured|melted|threw|weighed|plus|then|went|goes|go|cools|stirred|mixed|dissolved|used|took|splashed|tipped|trickled|plopped|dropped|chucked|bunged|tossed|dumped|slid|emptied|scraped|came)\b/;
const longestLook = 24;

/** "Another 145 g", "a second jug, again 145 g". */
function isBesides(tokens: readonly Token[], at: number): boolean {
  const word = wordAt(tokens, at - 1);
  // "I put still 100 g in the pot", as one says it who thinks in another tongue
  if (word === 'still') return /^(?:put|added|poured|melted|took|weighed|tipped)$/.test(wordAt(tokens, at - 2));
  if (word !== 'again') return besides.test(word);
  const { from } = sentenceAt(tokens, at, longestLook);
  return isAny(tokens, from, at, (one) => /^(?:second|another|further)$/.test(spoken(one)));
}

/** "Another 145 g NaOH in 300 g water": as much water with it. */
function isWithMore(tokens: readonly Token[], at: number): boolean {
  // "another 10 g lye dissolved in 30 g water"
  const solved = /^(?:dissolved|mixed|stirred)$/.test(wordAt(tokens, at - 2)) ? at - 3 : at - 2;
  // "a further 13 g NaOH, dissolved in 20 g water"
  const name = solved === at - 3 && isMark(tokens[solved], ',') ? solved - 1 : solved;
  const lye = tokens[name];
  const between = /^(?:of|more|extra)$/.test(wordAt(tokens, name - 1)) ? 1 : 0;
  const figure = name - 1 - between;
  return (
    /^(?:in|into|with)$/.test(wordAt(tokens, at - 1)) &&
    isIngredient(lye) &&
    lye.meaning.kind === 'alkali' &&
    isMeasured(tokens[figure]) &&
    (isBesides(tokens, figure) || isMoreWord.test(wordAt(tokens, name - 1)))
  );
}

const solutions = /^(?:lye|solution|lye solution|lye water)$/;
/** Words of a second solution up to one of its figures, at the most. */
const longestSolution = 14;
const poured =
  /\b(?:poured|tipped|added|stirred|put|went|goes|came|comes|gave|turned|threw|is|are|trickled)\b[^?]*\b(?:in|into|to it|on top|too|also|as well|after)\b|\badded (?:it|that|this)\b|\b(?:in|into|to) (?:the |my )?(?:pot|batter|pan|kettle|mix|soap|oils|fats|first|mass)\b[^?]*\b(?:poured|tipped|added|stirred|put|went|came|gave)\b/;
/** It is for something else, or the first one never went in. */
const elsewhere =
  /\b(?:other soap|other batch|next|jar|bottle|fridge|instead|spil\w*|drain|sink|threw away|thrown|binned|lost|wasted|stands|kept|keep|weaker|stronger|again|anew)\b/;

/** "A second lye, 38 g NaOH in 80 g water, and poured it in too": either figure of it. */
function isOfSecondLye(tokens: readonly Token[], at: number): boolean {
  const { from, to } = sentenceAt(tokens, at, longestLook);
  for (let k = at - 1; k >= Math.max(from, at - longestSolution); k--) {
    if (!besides.test(wordAt(tokens, k))) continue;
    const named = [k + 1, k + 2].find(
      (one) => solutions.test(spoken(tokens[one])) || isKind(tokens[one], /^(?:alkali|stock)$/),
    );
    if (named === undefined) continue;
    // of the one lye and its water no more than two figures, and nothing else
    const between = tokens.slice(named + 1, at);
    if (between.filter(isMeasured).length > 1 || between.some((one) => isIngredient(one) && !isOfLye(one)))
      return false;
    // "a second lye with 36 g more in 60 g water": the figure of the lye is nobody's yet
    const isNamed = isKind(tokens[at + 1], /^alkali$/) || isKind(tokens[at + 2], /^alkali$/);
    if (!isNamed && !between.some((one) => isKind(one, /^(?:alkali|stock)$/))) return false;
    const words = tokens.slice(k, to).map(spoken).join(' ').toLowerCase();
    const all = tokens.slice(from, to).map(spoken).join(' ').toLowerCase();
    return poured.test(words) && !elsewhere.test(all);
  }
  return false;
}

const isKind = (token: Token | undefined, kind: RegExp): boolean =>
  isIngredient(token) && kind.test(token.meaning.kind);
const isOfLye = (token: Token | undefined): boolean => isKind(token, /^(?:alkali|water|stock)$/);

/** "20 g extra coconut"; "more water" is one name. */
const isMoreWord = /^(?:more|extra|additional)\b/;
const isNamedMore = (token: Token | undefined): boolean =>
  token?.t === 'name' && isMoreWord.test(token.text.toLowerCase());

const done = /^(?:added|poured|melted|threw|stirred|dissolved|mixed|tipped|weighed|took)$/;

/** Where the clause begins that "so I" or "and melted in" opens before a row; the sentence, where none does. */
function deedFrom(tokens: readonly Token[], from: number, row: number): number {
  for (let k = row - 1; k > from; k--) {
    const [word, before] = [wordAt(tokens, k), wordAt(tokens, k - 1)];
    if ((/^(?:i|we)$/.test(word) && before === 'so') || (done.test(word) && before === 'and')) return k;
  }
  return from;
}

/** Whether the words of its sentence say so of a row, and leave no doubt that it was done. */
export function isAdded(tokens: readonly Token[], row: Row, before: Row): boolean {
  const at = [1, 2, 3].map((back) => row.token - back).find((k) => isMeasured(tokens[k]));
  const isMore =
    at !== undefined &&
    (isBesides(tokens, at) ||
      ((isMoreWord.test(wordAt(tokens, at + 1)) || isNamedMore(tokens[row.token])) &&
        wordAt(tokens, row.token + 1) !== 'than') ||
      isWithMore(tokens, at) ||
      (isOfLye(tokens[row.token]) && isOfSecondLye(tokens, at)));
  const sources = [before, row].map((one) => sourceOf(tokens, one.token));
  const isElsewhere = sources.every((one) => one !== null) && sources[0] !== sources[1];
  if (!isMore && !isElsewhere) return false;
  const { from, to } = sentenceAt(tokens, row.token, longestLook);
  const end = tokens[to];
  // "no more water": nothing else was
  const said = (first: number): string =>
    tokens
      .slice(first, to)
      .map(spoken)
      .join(' ')
      .replace(/\bno(?: (?:of|more|extra|other|further)\b| *$)/g, '');
  // "my son, who can count, said it was short, so I dissolved 10 g more": what is told from there on was done
  const told = deedFrom(tokens, from, row.token);
  const words = said(told);
  // "250 g olive, another 170 g olive": in one breath
  const joint = tokens[(at ?? 0) - 2];
  const isListed =
    before.token >= from && (isElsewhere || isMark(joint, ',+&') || /^(?:and|plus)$/.test(spoken(joint)));
  return (did.test(words) || isListed) && !open.test(words) && !(end?.t === 'sign' && end.text === '?');
}

/** "The other 300 g olive": not the same once more. */
export const isOther = (tokens: readonly Token[], { token: name }: Row): boolean =>
  [1, 2, 3].some((back) => isMeasured(tokens[name - back]) && besides.test(wordAt(tokens, name - back - 1)));

/** "Melted the 1 kg of tallow", "all 300 g of the water went in": what was spoken of before. */
export function isOfBefore(tokens: readonly Token[], { token: name }: Row): boolean {
  const at = [1, 2, 3].map((back) => name - back).find((k) => tokens[k]?.t === 'quantity');
  if (at === undefined || isOther(tokens, { token: name } as Row)) return false;
  return /^(?:the|all|whole|full|entire)$/.test(wordAt(tokens, at - 1));
}

/** "Or another 100 g coconut": one or the other. */
export const isAlternative = (tokens: readonly Token[], { token: name }: Row): boolean =>
  [1, 2, 3, 4].some((back) => wordAt(tokens, name - back) === 'or' && tokens.slice(name - back, name).some(isMeasured));

/** "The tub now holds 200 g of palm": in store, and none of it said to go in. */
export function isKept(tokens: readonly Token[], { token: name }: Row): boolean {
  const { from, to } = sentenceAt(tokens, name, longestLook);
  const words = tokens.slice(from, to).map(spoken).join(' ');
  return (
    /\b(?:tub|jar|bottle|tin|bag|can|cupboard|fridge|freezer|shelf)\b/.test(words) &&
    !did.test(words) &&
    holding.test(words)
  );
}
const holding = /\b(?:holds|has|contains|theres|there is|left|remaining|still)\b/;

const vessel = /^(?:bottle|jar|tub|tin|can|pack|packet|bag|block|box|jug|canister|one|first|second|third)$/;
const longestSource = 6;

/** "From the old bottle", "out of the second": behind a name and its weight. */
function sourceOf(tokens: readonly Token[], name: number): string | null {
  let at = isMeasured(tokens[name + 1]) ? name + 2 : name + 1;
  if (wordAt(tokens, at) === 'out') at++;
  if (!/^(?:from|of)$/.test(wordAt(tokens, at))) return null;
  const words: string[] = [];
  for (let k = at + 1; k < at + longestSource; k++) {
    const word = spoken(tokens[k]).toLowerCase();
    words.push(word);
    if (vessel.test(word) && !vessel.test(spoken(tokens[k + 1]).toLowerCase())) return words.join(' ');
  }
  return null;
}

/**
 * What a full pack held, and what is still in it, each told in a clause of its own, in whatever order: "the tub was new, 1000 g
 * net, and there are 868 g in it now", "what was left in the lye tub = 874 g, the tub was full to start with (1000 g)".
 */

import { endsDotted, isIngredient, isMark, isPot, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import { isPlain, isSum, type Name, weightAt } from './tale.ts';

export interface LeftInPack {
  readonly name: number;
  /** What it held, and what is left of that. */
  readonly more: number;
  readonly less: number;
  /** Where what it held stands among what is in stock, too, or the difference is said: "I used 110 g". */
  readonly stock: readonly number[];
  /** Where the difference stands in a row of the list; -1 for nowhere. */
  readonly row: number;
}

const isLeft =
  /\b(?:left(?! (?:out|it|the|for (?:this|the soap|now|today)))|leftover|remain(?:s|ed|ing)?|still (?:in|there|has|holds|contains|had|got)|(?:still|now) # |in (?:it|there|the pot) (?:now|still|afterwards?|after)|now (?:in|has|holds|weighs|contains|only)|now (?:its|theres|there is|there are) )/;
const isFresh = /\b(?:new|full|unopened|sealed|fresh|untouched|unused|never (?:been )?opened)\b/;
const isBefore =
  /\b(?:had|held|contained|weighed|was|were|there (?:was|were))\b.*\b(?:this morning|yesterday|before(?:hand)?|at (?:first|the start|the beginning)|to (?:start|begin) with|when i (?:started|began|opened)|originally|initially|earlier)\b|\b(?:this morning|yesterday|before(?:hand)?|at (?:first|the start|the beginning)|to (?:start|begin) with|when i (?:started|began|opened)|originally|initially|earlier)\b.*\b(?:had|held|contained|weighed|was|were)\b/;
/** It says how much went in, or tells of another time or of no more than a wish. */
const otherwise =
  /\?|\b(?:if|used|took|taken|use|need|needed|should|would|could|want|wanted|next|last|usually|normally|refill(?:ed)?|topped|another|second|both|half|spilt|spilled|spill|lost|already|cost|costs|price|paid|enough|more than|less than|bought|infused?|strained|batter|soap|mou?ld|loaf|bars?)\b/;
const isVessel = (token: Token | undefined): boolean => isPot(token) && packs.test(token.meant);
const packs =
  /^(?:jar|tub|tin|can|bag|sack|pack|packet|bottle|box|bucket|carton|canister|container|drum|package|block|pail)(?: of)?$/;

const isBreak = (token: Token | undefined): boolean =>
  isStop(token) || isMark(token, ',()–—') || /^(?:and|but|so|while)$/.test(spoken(token));

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Around token `k` as far as nothing breaks it. */
function around(tokens: readonly Token[], k: number, breaks: (token: Token | undefined) => boolean): Stretch {
  let [from, to] = [k, k + 1];
  while (from > 0 && !breaks(tokens[from - 1]) && !endsDotted(tokens[from - 1])) from--;
  while (to < tokens.length && !breaks(tokens[to]) && !endsDotted(tokens[to - 1])) to++;
  return { from, to };
}

const wordsIn = (tokens: readonly Token[], { from, to }: Stretch): string =>
  tokens
    .slice(from, to)
    .map((one) => {
      if (one.t === 'quantity') return '#';
      if (isVessel(one)) return 'pot';
      if (one.t === 'sign') return one.text;
      return isIngredient(one) ? '@' : spoken(one);
    })
    .filter((word) => word !== '')
    .join(' ');

const namesIn = (tokens: readonly Token[], { from, to }: Stretch): readonly number[] =>
  Array.from({ length: to - from }, (_, n) => from + n).filter((k) => isIngredient(tokens[k]));

/** One pack and what is left in it, in these tokens. `isRestIn`: the rest of it is said to have gone in. */
export function leftInPack(
  tokens: readonly Token[],
  from: number,
  to: number,
  isRestIn: (end: number) => boolean,
): LeftInPack | null {
  const figures = Array.from({ length: to - from }, (_, n) => from + n).filter((k) => isPlain(tokens[k]));
  for (const less of figures) {
    const clause = around(tokens, less, isBreak);
    const text = wordsIn(tokens, clause);
    if (!isLeft.test(`${text} `) || otherwise.test(text) || text.split('#').length !== 2) continue;
    for (const more of figures) {
      if (more === less || !(weightAt(tokens, more, less) > weightAt(tokens, less, less))) continue;
      const whole = withoutClause(
        around(tokens, more, (one) => isStop(one) || one?.t === 'quantity'),
        clause,
      );
      const said = wordsIn(tokens, whole);
      const isNew = isFresh.test(said);
      if ((!isNew && !isBefore.test(said)) || otherwise.test(said)) continue;
      const isInPack = [clause, whole].some((one) => tokens.slice(one.from, one.to).some(isVessel));
      if (!isInPack || !(isNew || isRestIn(Math.max(more, less)) || /\bnow\b/.test(text))) continue;
      const name = nameOf(tokens, from, [whole, clause], Math.min(more, less));
      const other = name >= 0 ? elsewhere(tokens, name, more, less) : null;
      if (other) return { name, more, less, ...other };
    }
  }
  return null;
}

/** The clause of what is left is none of what is said of the whole. */
function withoutClause(whole: Stretch, clause: Stretch): Stretch {
  if (clause.from > whole.from && clause.from < whole.to) return { ...whole, to: clause.from };
  return clause.to > whole.from && clause.to < whole.to ? { ...whole, from: clause.to } : whole;
}

/** What is in the pack: named with one of the two, or last before both; -1 where several are named. */
function nameOf(tokens: readonly Token[], from: number, stretches: readonly Stretch[], begin: number): number {
  const names = stretches.flatMap((one) => namesIn(tokens, one));
  if (names.length === 0) {
    let k = begin - 1;
    while (k >= from && !isIngredient(tokens[k])) k--;
    return k >= from ? k : -1;
  }
  const [first = -1] = names;
  const things = new Set(names.map((k) => thingOf(tokens[k] as Name)));
  return things.size === 1 ? first : -1;
}

/** Where one of the two, or what they leave, stands in another place; null where there is another weight of it. */
function elsewhere(
  tokens: readonly Token[],
  name: number,
  more: number,
  less: number,
): { readonly stock: readonly number[]; readonly row: number } | null {
  const thing = thingOf(tokens[name] as Name);
  const isNet = (k: number): boolean =>
    isSum(weightAt(tokens, more, more), weightAt(tokens, less, more), weightAt(tokens, k, more));
  const stock: number[] = [];
  for (let k = Math.min(name, more, less); k < Math.max(more, less); k++) {
    if (k === more || k === less || tokens[k]?.t !== 'quantity') continue;
    if (!isNet(k)) return null;
    stock.push(k);
  }
  let row = -1;
  for (const [k, one] of tokens.entries()) {
    if (!isIngredient(one) || thingOf(one) !== thing) continue;
    for (const at of [k - 1, k + 1]) {
      if (at === more || at === less || !isPlain(tokens[at]) || stock.includes(at)) continue;
      // "water 250 g. Lye ok?", "lye, 300 g olive"
      if (at < k ? endsDotted(tokens[at]) : isIngredient(tokens[at + 1])) continue;
      if (isNet(at)) row = at;
      else if (weightAt(tokens, at, more) === weightAt(tokens, more, more)) stock.push(at);
      else return null;
    }
  }
  return { stock, row };
}

/** Which things of a post stand beside a weight, and how often. */
import { keptLast } from './kept.ts';
import { endsDotted, isIngredient, light, massOf, wordAt } from './token-is.ts';
import type { Token } from './tokens.ts';

/** What stands beside weights, and how often. */
export const weighedThings = keptLast((tokens: readonly Token[]): ReadonlyMap<string, number> => {
  const count = new Map<string, number>();
  tokens.forEach((token, at) => {
    if (token.t !== 'name' || !weighedAt(tokens, at)) return;
    const id = thingOf(token);
    count.set(id, (count.get(id) ?? 0) + 1);
  });
  return count;
});

/** The thing named at token `at` stands beside a weight in another place, too. */
export function weighedElsewhere(tokens: readonly Token[], at: number): boolean {
  const name = tokens[at];
  if (name?.t !== 'name') return false;
  return (weighedThings(tokens).get(thingOf(name)) ?? 0) > (weighedAt(tokens, at) ? 1 : 0);
}

/** `lye 4.3 oz`, `4.3 oz of lye`, `4.3 oz tub of lye`. */
export function weighedAt(tokens: readonly Token[], at: number): boolean {
  if ([1, 2].some((step) => massOf(tokens[at + step]))) return true;
  let k = at - 1;
  const skipped = (token: Token | undefined): boolean =>
    light(token) || (token?.t === 'name' && token.meaning.kind === 'role');
  while (at - k <= 3 && skipped(tokens[k])) k--;
  return massOf(tokens[k]);
}

/** What is named; any alkali is the alkali. */
export const thingOf = ({ meaning }: Extract<Token, { t: 'name' }>): string =>
  meaning.kind === 'alkali' ? 'alkali' : meaning.id;

/** Fats that stand beside a figure. */
export const weighedFats = (tokens: readonly Token[]): number =>
  tokens.filter((one, k) => {
    if (one.t !== 'name' || one.meaning.kind !== 'fat') return false;
    return [k - 1, k + 1, k - 2].some((at) => {
      const near = tokens[at];
      return near?.t === 'quantity' && near.quantity.dim !== 'time';
    });
  }).length;

/** A thing with its weight. */
export interface Weighed {
  readonly at: number;
  readonly figure: number;
  readonly id: string;
}

/** The weight of the thing named at `k`: right before or behind it; -1 where it has none. */
export function figureOf(tokens: readonly Token[], k: number): number {
  let before = k - 1;
  while (k - before <= mostJoints && joints.test(wordAt(tokens, before))) before--;
  if (massOf(tokens[before]) && !endsDotted(tokens[before])) return before;
  const sign = tokens[k + 1];
  let behind = sign?.t === 'sign' && !/[,.;(-]/.test(sign.text) ? k + 2 : k + 1;
  while (behind - k <= mostVerbs && planned.test(wordAt(tokens, behind))) behind++;
  return massOf(tokens[behind]) ? behind : -1;
}

const joints = /^(?:of|the|my)$/;
const mostJoints = 2;
/** "The castor was to be 80 g". */
const planned = /^(?:was|were|is|should|have|been|meant|supposed|planned|intended|going|to|be|at|about)$/;
const mostVerbs = 6;

/** What is weighed between two tokens, of these kinds. */
export function weighedIn(tokens: readonly Token[], from: number, to: number, kinds: RegExp): readonly Weighed[] {
  const found: Weighed[] = [];
  for (let at = from; at < to; at++) {
    const token = tokens[at];
    if (!isIngredient(token) || !kinds.test(token.meaning.kind)) continue;
    const figure = figureOf(tokens, at);
    if (figure >= 0) found.push({ at, figure, id: thingOf(token) });
  }
  return found;
}

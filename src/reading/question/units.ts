/** Units that no figure belongs to: what is wanted, or one of it. */
import { type Unit, unit } from '../../units/units.ts';
import type { Prim } from '../text/scan.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { unitAt } from '../words/measure.ts';
import type { Token } from '../words/tokens.ts';

/** A unit without a figure: what is wanted ("in grams", "how many mL"), or one of it ("a cup", "per ounce"). */
export interface UnitMark {
  readonly unit: Unit;
  readonly lead: 'many' | 'to' | 'one' | 'none';
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** A token as one folded word. */
export const textOf = (token: Token | undefined): string =>
  token?.t === 'word' || token?.t === 'sign'
    ? token.text
    : token?.t === 'name'
      ? token.text.toLowerCase()
      : token?.t === 'line'
        ? '\n'
        : '';

const skipped =
  /^(many|much|the|of|terms|number|what|whats|how|about|approx|roughly|a|an|single|one|standard|level|is|it|that|this|equal|equals|are|there|would|be|\?|full)$/;
const prepositions = /^(in|to|into|as|=|•|>|-|per|each|every)$/;

/** Units that no figure belongs to, each with what leads to it. */
export function unitsOf(prims: readonly Prim[], tokens: readonly Token[], lexicon: Lexicon): UnitMark[] {
  const marks: UnitMark[] = [];
  let covered = 0;
  for (const [at, token] of tokens.entries()) {
    if (at < covered || token.t === 'quantity' || token.t === 'line' || token.t === 'aside') continue;
    // "quart" is no slip of "quark"
    if (token.t === 'name' && token.meaning.kind !== 'role' && token.how !== 'spelling') continue;
    const before = textOf(tokens[at - 1]);
    // "per pound" is one word of the recipe's talk of prices
    const per = token.t === 'name' && /^(per|a) /i.test(token.text) ? unitAt(prims, token.from + 1, lexicon) : null;
    if (per) {
      marks.push({ unit: per.unit, lead: 'one', text: token.text, from: at, to: at + 1 });
      continue;
    }
    const hit = unitAt(prims, token.from, lexicon);
    // "in 3 oz" is no cubic inch
    const torn =
      hit !== null && prims.slice(token.from + 1, hit.end).some((prim) => prim.kind === 'number' && !prim.glued);
    const found = (torn ? null : hit) ?? letterAt(prims, token, before);
    // "less than last week" wants no weeks
    if (!found || (found.unit.dimension === 'time' && /^(?:last|next|this|past|previous)$/.test(before))) continue;
    let to = at + 1;
    while (to < tokens.length && (tokens[to]?.from ?? 0) < found.end) to += 1;
    // "l", "g", "c" as a word of its own needs a word that leads to it, or the end behind it
    const alone = token.t === 'word' && token.text.length === 1;
    const lead = leadOf(tokens, at);
    const next = tokens[to];
    if (
      alone &&
      lead === 'none' &&
      next !== undefined &&
      next.t !== 'sign' &&
      !/^(please|pls|thx|in|per|to)$/.test(textOf(next))
    )
      continue;
    marks.push({ unit: found.unit, lead, text: textBetween(prims, token.from, found.end), from: at, to });
    covered = to;
  }
  return marks;
}

const textBetween = (prims: readonly Prim[], from: number, to: number): string =>
  prims
    .slice(from, to)
    .map((prim, k) => (k > 0 && !prim.glued ? ' ' : '') + prim.raw)
    .join('');

/** "m" as metre, "k" as kelvin, where a word leads to it. */
function letterAt(prims: readonly Prim[], token: Token, before: string): { unit: Unit; end: number } | null {
  if (token.t !== 'word' || !/^(in|to|into|as|many)$/.test(before)) return null;
  const prim = prims[token.from];
  if (token.text === 'm') return { unit: unit('m'), end: token.from + 1 };
  if (token.text === 'k') return { unit: unit('K'), end: token.from + 1 };
  return prim?.raw === 'T' ? { unit: unit('tbsp'), end: token.from + 1 } : null;
}

function leadOf(tokens: readonly Token[], at: number): UnitMark['lead'] {
  let one = false;
  for (let k = at - 1; k >= 0 && at - k <= 5; k -= 1) {
    const word = textOf(tokens[k]);
    if (/^(many|much|number)$/.test(word)) return 'many';
    if (/^(per|each|every)$/.test(word)) return 'one';
    if (prepositions.test(word)) return one ? 'one' : 'to';
    if (/^(a|an|one|single|1)$/.test(word)) one = true;
    if (!skipped.test(word)) break;
  }
  return one ? 'one' : 'none';
}

/**
 * What a question holds, in order: measures (figures with their units), things, units without a figure, and its words.
 * Which kind of question it makes is decided in `question.ts`.
 */
import { fromCelsius, toCelsius, type Unit, unit } from '../../units/units.ts';
import { itemsOf } from '../rows/items.ts';
import { clean } from '../text/clean.ts';
import { layOut } from '../text/layout.ts';
import { scan } from '../text/scan.ts';
import type { Lexicon, Meaning } from '../words/lexicon.ts';
import type { Dim, Quantity } from '../words/quantities.ts';
import type { Speller } from '../words/spelling.ts';
import { type Token, tokenize } from '../words/tokens.ts';
import { textOf, type UnitMark, unitsOf } from './units.ts';
import { mend } from './words.ts';

/** A figure as written, in its own unit; `null` where it has none ("350", "350 degrees"). */
export interface Measure {
  readonly dim: Dim;
  readonly value: number;
  readonly unit: Unit | null;
  /** The other end of a range, and the second part of a ratio. */
  readonly upTo: number | null;
  readonly second: number | null;
  /** What the same digits could mean too. */
  readonly other: number | null;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

export interface Thing {
  readonly meaning: Meaning;
  readonly text: string;
  readonly how: 'name' | 'plain' | 'abbreviation' | 'spelling' | 'decorated';
  readonly from: number;
  readonly to: number;
  /** "how much NaOH": it is asked, so that no weight belongs to it. */
  readonly asked: boolean;
}

export interface Facts {
  /** Folded and mended words with one space between them. */
  readonly words: string;
  readonly tokens: readonly Token[];
  readonly measures: readonly Measure[];
  readonly things: readonly Thing[];
  /** Role words ("superfat", "solution", "of oils"), which a figure may belong to. */
  readonly roles: readonly Thing[];
  readonly units: readonly UnitMark[];
}

export function factsOf(text: string, lexicon: Lexicon, speller: Speller): Facts {
  const prims = mend(scan(layOut(clean(text).text).text), lexicon);
  const { tokens } = tokenize(prims, lexicon, speller);
  const units = unitsOf(prims, tokens, lexicon);
  const inUnits = new Set(units.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, k) => from + k)));
  const things: Thing[] = [];
  for (const item of itemsOf(tokens, lexicon)) {
    if (item.kind !== 'thing' || item.named.meaning.kind === 'role' || inUnits.has(item.from)) continue;
    const { meaning, text: said, how } = item.named;
    things.push({ meaning, text: said, how, from: item.from, to: item.to, asked: isAsked(tokens, item.from, item.to) });
  }
  const roles: Thing[] = [];
  for (const [at, token] of tokens.entries()) {
    if (token.t === 'name' && token.meaning.kind === 'role' && !inUnits.has(at))
      roles.push({
        meaning: token.meaning,
        text: token.text,
        how: token.how,
        from: at,
        to: at + 1,
        asked: isAsked(tokens, at, at + 1),
      });
    else if (token.t === 'word' && /^(stock|masterbatch|soln)$/.test(token.text))
      things.push({
        meaning: { kind: 'stock', id: 'unsaid' },
        text: token.text,
        how: 'name',
        from: at,
        to: at + 1,
        asked: isAsked(tokens, at, at + 1),
      });
  }
  return {
    words: prims.map((prim) => (prim.kind === 'line' ? '\n' : prim.text)).join(' '),
    tokens,
    measures: tokens.flatMap((token, at) => (token.t === 'quantity' ? [measureOf(token.quantity, tokens, at)] : [])),
    things: things.sort((a, b) => a.from - b.from),
    roles,
    units,
  };
}

const minus = /^(minus|negative)$/;

function measureOf(quantity: Quantity, tokens: readonly Token[], at: number): Measure {
  const { dim, unit: own, text, value, upTo, second, other } = quantity;
  const before = tokens[at - 1];
  const prior = tokens[at - 2];
  const dashed =
    before?.t === 'sign' && before.text === '-' && (prior === undefined || prior.t !== 'quantity') && at > 0;
  const negative = quantity.negative || minus.test(textOf(before)) || dashed;
  const scaled = (base: number | null): number | null => {
    if (base === null) return null;
    if (own?.dimension === 'temperature') return fromCelsius(base, own.id);
    return own ? base / own.factor : dim === 'length' ? base / 2.54 : base;
  };
  const sized = scaled(value) ?? Number.NaN;
  return {
    dim,
    value: negative ? -Math.abs(sized) : sized,
    unit: own ?? (dim === 'length' ? unit('in') : null),
    upTo: scaled(upTo),
    second,
    other: scaled(other),
    text: `${negative ? '−' : ''}${text}`,
    from: at,
    to: at + 1,
  };
}

/** In g, mL, cm, s, °C or the bare figure. */
export const baseOf = ({ value, unit: own }: Measure): number =>
  own === null ? value : own.dimension === 'temperature' ? toCelsius(value, own.id) : value * own.factor;

const passed =
  /^(extra|more|additional|further|pure|dry|the|my|of|a|an|total|exact|actual|fresh|plain|distilled|unit|weight|amount|worth|do|does|is|are|i|you|we|need|add|use)$/;
const fewPassed = /^(extra|more|additional|further|pure|dry|the|my|of|a|an|total|exact|distilled)$/;

/** Behind "how much", "what amount of", "extra"; or first in the text and followed by "for". */
function isAsked(tokens: readonly Token[], from: number, to: number): boolean {
  let extra = false;
  for (let k = from - 1; k >= 0 && from - k <= 6; k -= 1) {
    const token = tokens[k];
    if (token?.t === 'quantity') {
      // "how much 50 % stock": a strength stands between
      if (token.quantity.dim !== 'percent') return false;
      continue;
    }
    const word = textOf(token);
    if (/^(extra|more|additional)$/.test(word)) extra = true;
    if (/^(much|many)$/.test(word)) return true;
    if (/^(amount|weight|quantity)$/.test(word))
      return /^(what|whats|which|the)$/.test(textOf(tokens[k - 1])) || k === 0;
    if (unitLike.has(word)) continue;
    if (!(from - k <= 4 ? passed : fewPassed).test(word)) break;
  }
  if (extra) return true;
  const next = textOf(tokens[to]);
  // "lye 80 g, 2:1. water?"
  const before = tokens[from - 1];
  if (
    next === '?' &&
    tokens[to + 1] === undefined &&
    from > 0 &&
    (/^[.,;]$/.test(textOf(before)) || (before?.t === 'quantity' && /\.$/.test(before.quantity.text)))
  )
    return true;
  const first = tokens
    .slice(0, from)
    .every(
      (token) => token.t === 'word' && /^(hi|hello|hey|the|please|pls|whats|what|is|extra|need)$/.test(token.text),
    );
  return first && /^(for|needed|required|to)$/.test(next);
}

const unitLike: ReadonlySet<string> = new Set(
  'g gram grams gramms oz ounce ounces kg kilos lb lbs pounds ml mls l litres liters cups tbsp tsp'.split(' '),
);

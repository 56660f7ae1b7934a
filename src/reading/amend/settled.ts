/** Changes to what was read of a post, of which answers are made. */
import { withUnit } from '../columns/columns.ts';
import type { Reader } from '../cut.ts';
import type { Cut } from '../itemize.ts';
import type { Settled } from '../post.ts';
import type { Doubt, RecipeReading } from '../reading.ts';
import { amountItem } from '../rows/items.ts';
import { type Amount, isAmount, isThing, type Thing } from '../rows/kinds.ts';
import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import { looseUnits } from './retext.ts';

export const nothing: Settled = { items: (items) => items, unit: null, rival: false, reading: (reading) => reading };

/** First `a`, then `b`. */
export const both = (a: Settled | null, b: Settled): Settled =>
  a === null
    ? b
    : {
        items: (items, tokens) => b.items(a.items(items, tokens), tokens),
        unit: b.unit ?? a.unit,
        rival: a.rival || b.rival,
        reading: (reading) => b.reading(a.reading(reading)),
      };

export const changed = (items: Settled['items']): Settled => ({ ...nothing, items });

export const overlooked = (id: Doubt['id'], more: Partial<RecipeReading> = {}): Settled => ({
  ...nothing,
  reading: (reading) => ({ ...reading, ...more, doubts: reading.doubts.filter((one) => one.id !== id) }),
});

/** What was called `said` is `meaning`. */
export const renamed = (said: string, meaning: Meaning): Settled =>
  changed((items) =>
    items.map((item) =>
      isThing(item) && item.named.text === said ? { ...item, named: { ...item.named, meaning, how: 'name' } } : item,
    ),
  );

/** The amount that a doubt quotes, as the quantity's own words or with a name behind them. */
export const quotes = (said: string, { quantity }: Amount): boolean =>
  said === quantity.text || said === `-${quantity.text}` || said.startsWith(`${quantity.text} `);

/** The answer's figure in the place of one that was written; a figure without a unit keeps the written one. */
export function replaced(said: string, answer: Quantity): Settled {
  return changed((items) =>
    items.map((item) => {
      if (!isAmount(item) || !quotes(said, item)) return item;
      const { numbers, text, unit } = item.quantity;
      const quantity = answer.dim === 'bare' && unit ? withUnit(answer, unit.id) : answer;
      return {
        ...item,
        quantity: { ...quantity, numbers, text: quantity.numbers.length > 0 ? quantity.text : text },
        same: null,
      };
    }),
  );
}

/** An amount put behind what is called `said`. */
export const given = (fits: (thing: Thing) => boolean, quantity: Quantity): Settled =>
  changed((items) => {
    const at = items.findIndex((item) => isThing(item) && fits(item));
    const thing = items[at];
    if (!thing) return items;
    const units = new Set(
      items.flatMap((item) => (isAmount(item) && item.quantity.unit ? [item.quantity.unit.id] : [])),
    );
    const [unit] = units;
    const own = quantity.dim === 'bare' && units.size === 1 && unit ? withUnit(quantity, unit) : quantity;
    const amount = amountItem({ ...own, numbers: [] }, thing.to, thing.to);
    return [...items.slice(0, at + 1), amount, ...items.slice(at + 1)];
  });

export const called =
  (said: string) =>
  ({ named }: Thing): boolean =>
    named.text === said || said.endsWith(` ${named.text}`);

/** Words that mean that nothing is meant. */
export const none =
  /^\W*(none|no|nothing|zero|0( g)?|leave (it|that) out|skip( it)?|without( it)?|ignore( it| that)?|there (is|was) none|drop it)\W*$/i;
/** No answer: the person does not know, or asks something else. */
export const unsure =
  /\b(not sure|no idea|dunno|don'?t know|do not know|unsure|whatever|how (?:much|many|long|hot|do)|what|why|which|when|convert|scale|summary|explain|is my)\b/i;

/** One figure, with nothing beside it that means something else. */
export function figureIn(cut: Cut, of: string | null, reader: Reader): Quantity | null {
  const { items, tokens } = cut;
  const amounts = items.filter(isAmount);
  const [only] = amounts;
  if (amounts.length !== 1 || !only || only.quantity.upTo !== null || only.quantity.negative) return null;
  const strange = items
    .filter(isThing)
    .some(
      ({ named: { meaning } }) =>
        meaning.kind !== 'role' && meaning.kind !== 'alkali' && (of === null || reader.lexicon.label(meaning) !== of),
    );
  const words = tokens.some((token) => token.t === 'word' && token.sort === 'unknown');
  return strange || words || looseUnits(cut, reader).length > 0 ? null : only.quantity;
}

export const weighs = (quantity: Quantity | null): quantity is Quantity =>
  quantity !== null && ['mass', 'volume', 'bare'].includes(quantity.dim) && quantity.value > 0;

/** "8 %" or "8" as a share. */
export const shareOf = (quantity: Quantity | null): number | null =>
  quantity?.dim === 'percent' ? quantity.value : quantity?.dim === 'bare' ? quantity.value / 100 : null;

/** The known thing that is named, and nothing else. */
export function nameIn({ items, tokens }: Cut): Meaning | null {
  if (items.some(isAmount) || tokens.some((token) => token.t === 'word' && token.sort === 'unknown')) return null;
  const things = items
    .filter(isThing)
    .map(({ named }) => named.meaning)
    .filter(({ kind, id }) => !(kind === 'role' && /^(number|heading)$/.test(id)));
  const [only] = things;
  const known = only && ['fat', 'liquid', 'acid', 'additive', 'scent', 'water', 'alkali'].includes(only.kind);
  return things.length === 1 && known && only.id !== 'unsaid' ? only : null;
}

/** The unit that a person named for their figures, kept at each of them for later corrections. */
export function inUnit(reading: RecipeReading, unit: string): RecipeReading {
  const marked = <T extends { readonly said: string }>(lines: readonly T[]): readonly T[] =>
    lines.map((line) => (/\p{L}/u.test(line.said) ? line : { ...line, said: `${line.said} ${unit}` }));
  return {
    ...reading,
    fats: marked(reading.fats),
    after: marked(reading.after),
    liquids: marked(reading.liquids),
    acids: marked(reading.acids),
    ounces: reading.ounces || unit === 'oz' || unit === 'lb',
  };
}

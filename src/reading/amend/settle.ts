/**
 * What a person answered to a doubt about their post, as changes to what was read of it: the post is read again with
 * them, so that all its checks run again. One function for each kind of doubt, which uses what the doubt says of itself.
 */
import { unitWord } from '../columns/columns.ts';
import type { Reader } from '../cut.ts';
import type { Cut } from '../itemize.ts';
import type { Settled } from '../post.ts';
import type { Doubt, RecipeReading } from '../reading.ts';
import { asPurity } from '../recipe/roles.ts';
import { amountItem, type Item, thingItem } from '../rows/items.ts';
import { type Amount, isAmount, isThing, type Thing } from '../rows/kinds.ts';
import { itemize } from '../worded.ts';
import { meaningOf, pick, placeOf } from '../words/pick.ts';
import type { Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';
import {
  both,
  called,
  changed,
  figureIn,
  given,
  inUnit,
  nameIn,
  none,
  nothing,
  overlooked,
  quotes,
  renamed,
  replaced,
  shareOf,
  unsure,
  weighs,
} from './settled.ts';

export type { Settled } from '../post.ts';
export { both } from './settled.ts';

type Of<Id extends Doubt['id']> = Extract<Doubt, { id: Id }>;
type Answered = { readonly text: string; readonly cut: Cut; readonly reader: Reader };

/** The one of these ids that a text means, by a name of its own or by words that tell them apart. */
export function chosen(reader: Reader, text: string, ids: readonly string[], beside = ''): string | null {
  const named = nameIn(itemize(reader, text));
  return pick(text, ids, reader.catalogue, beside) ?? (named && ids.includes(named.id) ? named.id : null);
}

function whichOne(said: string, candidates: readonly string[], { text, cut, reader }: Answered): Settled | null {
  // what is left out takes no alkali
  if (none.test(text)) return renamed(said, { kind: 'additive', id: said });
  const picked = chosen(reader, text, candidates, said);
  const meaning = picked === null ? nameIn(cut) : meaningOf(picked, reader.catalogue);
  return meaning ? renamed(said, meaning) : null;
}

function whichAlkali(said: string, { text, cut }: Answered): Settled | null {
  if (cut.items.some(isAmount)) return null;
  const place = placeOf(text, 2);
  const sodium = place === 0 || /\b(sodium|naoh|caustic soda|soda|natron)\b/i.test(text);
  const potassium = place === 1 || /\b(potassium|koh|caustic potash)\b/i.test(text);
  if (sodium === potassium) return null;
  return renamed(said, { kind: 'alkali', id: sodium ? 'naoh' : 'koh' });
}

function chosenAmount({ said }: Of<'two-amounts'>, { text, cut, reader }: Answered): Settled | null {
  const together = /\b(both|together|sum|all|add)\b/i.test(text);
  const place = placeOf(text, said.length);
  const figure = figureIn(cut, null, reader);
  const same = (item: Amount): boolean =>
    figure !== null &&
    (figure.dim === 'bare'
      ? item.quantity.text.startsWith(figure.text)
      : Math.abs(item.quantity.value - figure.value) <= 1e-6 * figure.value);
  if (!together && place === null && !figure) return null;
  return changed((items) => {
    const all = items.filter((item): item is Amount => isAmount(item) && said.includes(item.quantity.text));
    const chosen = together
      ? all[0]
      : place === null
        ? all.find(same)
        : all.find((item) => item.quantity.text === said[place]);
    if (!chosen) return items;
    const value = all.reduce((sum, item) => sum + item.quantity.value, 0);
    return items.flatMap((item): Item[] => {
      if (!isAmount(item) || !all.includes(item)) return [item];
      if (item !== chosen) return [];
      return [together ? { ...item, quantity: { ...item.quantity, value } } : item];
    });
  });
}

function decimal({ said, readings }: Of<'decimal'>, { text, cut, reader }: Answered): Settled | null {
  const figure = figureIn(cut, null, reader);
  const place =
    placeOf(text, 2) ?? (figure ? readings.findIndex((one) => Math.abs(one - figure.value) < 0.005 * one) : -1);
  if (place < 0) return figure && weighs(figure) ? replaced(said, figure) : null;
  return changed((items) =>
    items.map((item) => {
      if (!isAmount(item) || item.quantity.other === null) return item;
      const { value, other } = item.quantity;
      return { ...item, quantity: { ...item.quantity, value: place === 0 ? value : other, other: null } };
    }),
  );
}

function disagreeing({ said, also }: Of<'units-disagree'>, { text, cut, reader }: Answered): Settled | null {
  const figure = figureIn(cut, null, reader);
  const unit = figure ? null : unitWord(cut.tokens, reader.lexicon);
  const place = placeOf(text, 2);
  if (!weighs(figure) && unit === null && place === null) return null;
  const isSecond = ({ text: written, value, unit: own }: Quantity): boolean =>
    place === 1 || own?.id === unit || figure?.text === written || (figure?.dim !== 'bare' && figure?.value === value);
  return changed((items) => {
    const apart = items.find((item): item is Amount => isAmount(item) && item.quantity.text === also);
    return items.flatMap((item): readonly Item[] => {
      if (!isAmount(item)) return [item];
      // both stand in one amount, or as two of one name
      const other = item.same?.text === also ? item.same : apart?.quantity;
      if (item === apart && item.quantity.text !== said) return [];
      if (item.quantity.text !== said || !other) return [item];
      return [{ ...item, quantity: isSecond(other) ? other : item.quantity, same: null }];
    });
  });
}

function percentOfAlkali({ said, of }: Of<'alkali-percent'>, { text, cut, reader }: Answered): Settled | null {
  const figure = figureIn(cut, of, reader);
  const solution = /\b(solution|stock|strong|strength|concentration)\b/i.test(text);
  const pure = /\b(pure|purity)\b/i.test(text);
  const share = figure === null ? null : shareOf(figure);
  if (solution === pure && !(share !== null && share >= 0.7)) return null;
  if (!solution) {
    const purity = figure && share !== null ? asPurity(figure) : percentIn(said);
    const drop = changed((items) => items.filter((item) => !isAmount(item) || item.quantity.text !== said));
    return { ...drop, reading: (reading) => ({ ...reading, purity }) };
  }
  return both(
    figure && share !== null ? replaced(said, figure) : null,
    changed((items) =>
      items.map((item) =>
        isThing(item) && item.named.meaning.kind === 'alkali' && reader.lexicon.label(item.named.meaning) === of
          ? { ...item, named: { ...item.named, meaning: { kind: 'stock', id: item.named.meaning.id } } }
          : item,
      ),
    ),
  );
}

function percentIn(said: string): RecipeReading['purity'] {
  const value = Number.parseFloat(said.replace(',', '.')) / 100;
  return Number.isFinite(value) ? { nominal: value, low: value, high: value } : null;
}

function unplaced({ said }: Of<'unplaced'>, { text, cut }: Answered): Settled | null {
  if (none.test(text))
    return changed((items) => items.filter((item) => !isAmount(item) || item.quantity.text !== said));
  const meaning = nameIn(cut);
  const named = cut.items.find(isThing)?.named;
  if (!meaning || !named) return null;
  return changed((items) => {
    const at = items.findIndex((item) => isAmount(item) && item.quantity.text === said);
    const amount = items[at];
    if (!amount) return items;
    const thing: Thing = { kind: 'thing', named: { ...named, meaning }, from: amount.to, to: amount.to };
    return [...items.slice(0, at + 1), thing, ...items.slice(at + 1)];
  });
}

/** `65 g NaOH or 91 g KOH`: each name with its own amount; null where the two share one. */
function eachWeighed(
  items: readonly Item[],
  tokens: readonly Token[],
  first: string,
  second: string,
): readonly [readonly Item[], readonly Item[]] | null {
  const called = (item: Item | undefined, name: string): boolean =>
    item !== undefined && isThing(item) && item.named.text === name;
  const at = items.findIndex((item, k) => called(item, first) && called(items[k + 2], second));
  const [thing, amount] = [items[at], items[at + 1]];
  if (!thing || !amount || !isAmount(amount)) return null;
  const parted = tokens.slice(thing.to, amount.from).some((token) => token.t === 'word' && token.text === 'or');
  const from = parted ? at - 1 : at;
  return from < 0 ? null : [items.slice(from, from + 2), items.slice(from + 2, from + 4)];
}

function twoReadings({ first, second }: Of<'two-readings'>, { text }: Answered): Settled | null {
  const like = (one: string): boolean => text.trim().toLowerCase() === one.toLowerCase();
  const place = like(first) ? 0 : like(second) ? 1 : placeOf(text, 2);
  if (place === null) return null;
  // one of two names for one amount, or one of two ways to bind
  return {
    ...changed((items, tokens) => {
      const dropped = eachWeighed(items, tokens, first, second)?.[place === 0 ? 1 : 0];
      if (dropped) return items.filter((item) => !dropped.includes(item));
      const at = items.findIndex((item, k) => {
        const next = items[k + 1];
        return isThing(item) && next && isThing(next) && item.named.text === first && next.named.text === second;
      });
      const [a, b] = [items[at], items[at + 1]];
      if (at < 0 || !a || !b) return items;
      const kept = place === 0 ? a : b;
      return [...items.slice(0, at), { ...kept, from: a.from, to: b.to }, ...items.slice(at + 2)];
    }),
    rival: place === 1,
  };
}

const amount = (said: string, of: string | null, { cut, reader }: Answered): Settled | null => {
  const figure = figureIn(cut, of, reader);
  return weighs(figure) ? replaced(said, figure) : null;
};

const answers: { readonly [Id in Doubt['id']]?: (doubt: Of<Id>, answered: Answered) => Settled | null } = {
  'unknown-fat': ({ said, candidates }, answered) => whichOne(said, candidates, answered),
  'unheld-fat': ({ said, candidates }, answered) => whichOne(said, candidates, answered),
  'ambiguous-name': ({ said, candidates }, answered) => whichOne(said, candidates, answered),
  'which-alkali': ({ said }, answered) => whichAlkali(said, answered),
  'no-unit': (_, { cut, reader }) => {
    if (cut.items.some(isAmount)) return null;
    const unit = unitWord(cut.tokens, reader.lexicon);
    return unit === null ? null : { ...nothing, unit, reading: (reading) => inUnit(reading, unit) };
  },
  range: ({ said, of }, answered) => amount(said, of, answered),
  zero: ({ said, of }, answered) => amount(said, of, answered),
  negative: ({ said, of }, answered) => amount(said, of, answered),
  'alkali-volume': ({ said }, answered) => amount(said, null, answered),
  'no-amount': ({ said, of }, { text, cut, reader }) => {
    if (none.test(text)) return changed((items) => items.filter((item) => !isThing(item) || !called(said)(item)));
    const figure = figureIn(cut, of, reader);
    if (!weighs(figure)) return null;
    return both(
      changed((items) =>
        items.filter((item) => !isAmount(item) || !(said !== item.quantity.text && quotes(said, item))),
      ),
      given(called(said), figure),
    );
  },
  'two-amounts': (doubt, answered) => {
    if (doubt.of !== 'superfat') return chosenAmount(doubt, answered);
    const superfat = shareOf(figureIn(answered.cut, null, answered.reader));
    return superfat === null ? null : overlooked('two-amounts', { superfat });
  },
  decimal,
  'units-disagree': disagreeing,
  'total-disagrees': (_, { text }) =>
    /\b(no total|lines?|rows?|ignore|forget|nothing missing|all there|by the (lines|rows|amounts))\b/i.test(text)
      ? overlooked('total-disagrees')
      : null,
  'shares-disagree': (_, { text }) => (/\bweights?\b/i.test(text) ? overlooked('shares-disagree') : null),
  'shares-total': (_, { cut, reader }) => {
    const figure = figureIn(cut, null, reader);
    if (!weighs(figure) || figure.dim === 'bare') return null;
    return changed((items, tokens) => {
      const end = tokens.length;
      const named = {
        meaning: { kind: 'role', id: 'total-fats' },
        text: 'total',
        how: 'name',
        meant: 'total',
      } as const;
      return [...items, thingItem(named, end, end), amountItem({ ...figure, numbers: [] }, end, end)];
    });
  },
  'stock-strength': ({ said }, { cut, reader }) => {
    const figure = figureIn(cut, null, reader);
    const share = shareOf(figure);
    if (!figure || share === null) return null;
    const isIt = called(said);
    const strength = amountItem({ ...figure, dim: 'percent', value: share, numbers: [] }, 0, 0);
    return changed((items) => {
      const isLye = (item: Item): boolean =>
        isThing(item) && isIt(item) && /^(?:alkali|stock)$/.test(item.named.meaning.kind);
      // what is weighed, not what was told of before
      const weighed = items.findLastIndex(
        (item, k) => isLye(item) && [items[k - 1], items[k + 1]].some((one) => one && isAmount(one)),
      );
      const named = weighed < 0 ? items.findLastIndex(isLye) : weighed;
      const at = named < 0 ? items.findIndex((item) => isThing(item) && item.named.meaning.kind === 'stock') : named;
      const thing = items[at];
      if (!thing || !isThing(thing)) return items;
      const { meaning } = thing.named;
      // "400 g lye" that was mixed before
      const stock = meaning.kind === 'alkali' ? ({ kind: 'stock', id: meaning.id } as const) : meaning;
      const lye = { ...thing, named: { ...thing.named, meaning: stock } };
      return [...items.slice(0, at), lye, { ...strength, from: thing.to, to: thing.to }, ...items.slice(at + 1)];
    });
  },
  'alkali-percent': percentOfAlkali,
  unplaced,
  'two-readings': twoReadings,
  'superfat-odd': (_, { cut, reader }) => {
    const superfat = shareOf(figureIn(cut, null, reader));
    return superfat === null ? null : overlooked('superfat-odd', { superfat });
  },
  'purity-odd': (_, { cut, reader }) => {
    const figure = figureIn(cut, null, reader);
    return figure && shareOf(figure) !== null ? overlooked('purity-odd', { purity: asPurity(figure) }) : null;
  },
};

/** What the answer makes of one doubt; null where it does not answer it. */
export function settle(reader: Reader, doubt: Doubt, text: string): Settled | null {
  if (text.length > 200 || unsure.test(text)) return null;
  const answer = answers[doubt.id] as ((doubt: Doubt, answered: Answered) => Settled | null) | undefined;
  return answer?.(doubt, { text, cut: itemize(reader, text), reader }) ?? null;
}

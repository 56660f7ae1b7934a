/**
 * A question asked again with something else in it: "and at 33 %?", "no, castor", "and in oz?". The new words take the
 * place of those of their own kind in the old text; where it is not plain which, nothing is done.
 */

import type { Reader } from '../cut.ts';
import type { Cut } from '../itemize.ts';
import { bind } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { itemize } from '../worded.ts';
import type { Meaning } from '../words/lexicon.ts';
import { pick, relatives } from '../words/pick.ts';
import type { Dim, Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';

type Thing = Extract<Item, { kind: 'thing' }>;

/** A stretch of the cut text. */
interface Span {
  readonly from: number;
  readonly to: number;
}

interface Edit extends Span {
  readonly text: string;
}

/** What may stand round the new words. */
const small = new Set(
  `and or no nah not nope in to for at with what about how make that this it of the a an please pls sorry i meant mean actually if
   then now ok okay instead rather use is was be would were same but also as again per is's whats hows wait oops so only just
   when using you me give tell do can could its their value point`.split(/\s+/),
);
/** Words that say that something before is meant. */
const pointing =
  /^\W*(?:and|or|no|nope|sorry|oops|wait|actually|what about|how about|same|but|i mean|i meant|make (?:that|it)|what if|instead|also|now|then|for)\b|\binstead\b|\?\s*$/i;

const another = /\b(how (?:much|many|long|hot)|when|why|which|explain|summary|scale|double|halve)\b/i;

const spanOf = ({ prims }: Cut, from: number, to: number): Span => {
  const [first, last] = [prims[from], prims[to - 1]];
  return { from: first?.at ?? 0, to: (last?.at ?? 0) + (last?.raw.length ?? 0) };
};

/** Tokens span prims, items span tokens. */
const ofToken = (cut: Cut, token: Token): Span => spanOf(cut, token.from, token.to);
const ofThing = (cut: Cut, { from, to }: Thing): Span =>
  spanOf(cut, cut.tokens[from]?.from ?? 0, cut.tokens[to - 1]?.to ?? 0);

const textOf = ({ text }: Cut, { from, to }: Span): string => text.slice(from, to);

const quantities = (cut: Cut): readonly (Token & { readonly t: 'quantity' })[] =>
  cut.tokens.filter((token): token is Token & { readonly t: 'quantity' } => token.t === 'quantity');

const substance = ({ kind }: Meaning): boolean => kind !== 'role' && kind !== 'unknown';

const things = ({ items }: Cut): readonly Thing[] => items.filter((item): item is Thing => item.kind === 'thing');

const isUnit = (word: string, { lexicon }: Reader): boolean =>
  (lexicon.units.next?.get(word)?.hit ?? null) !== null && !/^(in|a|an|as|to|m|s|h|t|d)$/.test(word);

/** Unit words that belong to no figure. */
export const looseUnits = ({ tokens }: Cut, reader: Reader): readonly Token[] =>
  tokens.filter((token) => token.t === 'word' && isUnit(token.text, reader));

const wetOrDry: readonly Dim[] = ['mass', 'volume'];

/** The figure of the old question that a new one takes the place of. */
function placeOf(old: Cut, next: Quantity, beside: Meaning | null): (Token & { readonly t: 'quantity' }) | null {
  const all = quantities(old);
  if (beside) {
    const bound = bind(old.items, old.tokens).best.groups.find(({ things: list }) =>
      list.some((k) => {
        const item = old.items[k];
        return item?.kind === 'thing' && item.named.meaning.kind === beside.kind && item.named.meaning.id === beside.id;
      }),
    );
    const own = bound?.amounts
      .map((k) => old.items[k])
      .find((item) => item?.kind === 'amount' && (next.dim === 'bare' || item.quantity.dim === next.dim));
    const token = own ? old.tokens[own.from] : undefined;
    if (token?.t === 'quantity') return token;
  }
  const fitting = next.dim === 'bare' ? all : all.filter(({ quantity }) => quantity.dim === next.dim);
  const [only] = fitting;
  return fitting.length === 1 && only ? only : null;
}

/** What a name that says less than the whole means beside what the question was about: "monohydrate", "pomace". */
function nameFor(reader: Reader, thing: Thing, before: Thing | undefined, text: string): string | null {
  const { meaning, text: said } = thing.named;
  if (meaning.kind !== 'unknown') return text;
  if (!before) return null;
  const { catalogue } = reader;
  const id = pick(said, relatives(before.named.meaning.id, catalogue), catalogue);
  if (id === null) return null;
  const item =
    catalogue.fats.get(id) ?? catalogue.acids.get(id) ?? catalogue.liquids.get(id) ?? catalogue.additives.get(id);
  return item?.names[0] ?? null;
}

/** "and its iodine value?" of the only thing that was spoken of. */
function ofProperty(old: Cut, property: string): string | null {
  const [only, ...more] = things(old).filter(({ named: { meaning } }) => substance(meaning));
  return only && more.length === 0 && quantities(old).length === 0
    ? `${property} of ${textOf(old, ofThing(old, only))}`
    : null;
}

/** The old question with the new words in it; null where the text is no such change. `open`: it was not answered yet. */
export function retext(reader: Reader, question: string, follow: string, open: boolean): string | null {
  if (follow.length > 80 || another.test(follow)) return null;
  const [old, next] = [itemize(reader, question), itemize(reader, follow)];
  const named = things(next).filter(({ named: { meaning } }) => substance(meaning) || meaning.kind === 'unknown');
  const figures = quantities(next);
  const strange = next.tokens.some(
    (token) =>
      token.t === 'aside' ||
      (token.t === 'word' && !small.has(token.text) && !isUnit(token.text, reader) && token.sort !== 'unknown'),
  );
  if (strange || named.length > 1 || figures.length > 1) return null;
  const property = things(next).find(
    ({ named: { meaning } }) => meaning.kind === 'role' && /^(chart|temperature)$/.test(meaning.id),
  );
  if (property && named.length + figures.length === 0) return ofProperty(old, textOf(next, ofThing(next, property)));
  const [thing] = named;
  const [figure] = figures;
  const unit = figure ? null : (looseUnits(next, reader)[0] ?? null);
  if (!thing && !figure && !unit) return null;
  if (!open && thing && thing.named.meaning.kind !== 'alkali' && !pointing.test(follow)) return null;
  const edits: Edit[] = [];
  const oldThings = things(old).filter(({ named: { meaning } }) => substance(meaning));

  if (thing) {
    const written = textOf(next, ofThing(next, thing));
    const kin = oldThings.filter((one) =>
      thing.named.meaning.kind === 'unknown'
        ? nameFor(reader, thing, one, written) !== null
        : one.named.meaning.kind === thing.named.meaning.kind,
    );
    const before = oldThings.length === 1 ? oldThings[0] : kin.length === 1 ? kin[0] : undefined;
    const same = before?.named.meaning.id === thing.named.meaning.id;
    const name = nameFor(reader, thing, before, written);
    if (name === null) return null;
    if (before && !same) edits.push({ ...ofThing(old, before), text: name });
    else if (!before && oldThings.length > 0) return null;
    else if (!before) {
      const amount = quantities(old).find(({ quantity }) => wetOrDry.includes(quantity.dim));
      if (!amount || !open) return null;
      const at = ofToken(old, amount).to;
      edits.push({ from: at, to: at, text: ` ${name}` });
    } else if (!figure) return null;
  }
  if (figure) {
    const { quantity } = figure;
    const place = placeOf(old, quantity, thing?.named.meaning ?? null);
    if (!place) return null;
    const written = textOf(next, ofToken(next, figure));
    const symbol = place.quantity.unit?.symbol ?? (place.quantity.dim === 'percent' ? '%' : '');
    edits.push({ ...ofToken(old, place), text: quantity.dim === 'bare' ? `${written} ${symbol}`.trim() : written });
  }
  if (unit) {
    const before = looseUnits(old, reader).at(-1);
    const word = textOf(next, ofToken(next, unit));
    if (before) edits.push({ ...ofToken(old, before), text: word });
    else edits.push({ from: old.text.length, to: old.text.length, text: ` in ${word}` });
  }
  return edits
    .sort((a, b) => b.from - a.from)
    .reduce((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), old.text);
}

/**
 * A correction of a recipe that was read before: "no, palm kernel", "the coconut was 250", "make that 8 %", "add 50 g
 * castor", "without the shea", "in ounces". It is read with the reader's own names and amounts; what is left of the
 * text must be small talk, else it is no correction.
 */

import { unitWord } from '../columns/columns.ts';
import type { Reader } from '../cut.ts';
import { readRecipe } from '../index.ts';
import type { Cut } from '../itemize.ts';
import type { RecipeReading } from '../reading.ts';
import { bind } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { isAmount, isThing, type Thing } from '../rows/kinds.ts';
import { itemize } from '../worded.ts';
import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import { bareUnit, type Change, type Correction, holds, ingredient } from './correction.ts';
import {
  type Found,
  inContext,
  isQuestion,
  loose,
  ofGroup,
  ofNames,
  ownDoubt,
  replacedBy,
  type Sides,
} from './parts.ts';
import { looseUnits } from './retext.ts';
import { both, type Settled } from './settle.ts';
import { another, cues, outdated } from './words.ts';

export type { Change, Correction } from './correction.ts';

const longest = 300;
const mostItems = 12;

/** Whether a text has the words of a correction. */
export const corrects = (text: string): boolean =>
  cues.correcting.test(text) || cues.adding.test(text) || cues.removing.test(text) || cues.lessening.test(text);

/** Unit words and nothing else: "in ounces", "and in oz?". */
function unitAlone({ items, tokens }: Cut, reader: Reader): 'g' | 'oz' | null {
  if (items.some((item) => isAmount(item) || item.named.meaning.kind !== 'role')) return null;
  const unit = unitWord(tokens, reader.lexicon);
  return unit === 'g' || unit === 'oz' ? unit : null;
}

/** What a text changes in a recipe; null where it is no correction of it. */
export function readCorrection(
  reader: Reader,
  written: string,
  reading: RecipeReading,
  answered: { readonly settled: Settled | null; readonly target: string | null } = { settled: null, target: null },
): Correction | null {
  if (written.length > longest || another.test(written)) return null;
  const text = written.replace(outdated, ' ');
  const cut = itemize(reader, text);
  const written2 = answered.settled ? answered.settled.items(cut.items, cut.tokens) : cut.items;
  const items = written2.filter(
    (item) =>
      !(
        isThing(item) &&
        item.named.meaning.kind === 'role' &&
        /^(number|scale-to|after|target|each)$/.test(item.named.meaning.id)
      ),
  );
  if (items.length > mostItems || cut.tokens.some(({ t }) => t === 'aside')) return null;
  const strange = cut.tokens.filter((token) => token.t === 'word' && token.sort === 'unknown').length;
  const unit = unitAlone(cut, reader);
  if (unit && strange === 0)
    return { kind: 'changes', changes: [{ kind: 'unit', unit }], given: readRecipe(reader, ''), named: false };
  if (items.length === 0) return byWordsAlone(reader, text, reading);
  // "3/4 cup shea in grams" is a question of its own
  if (items.some(isAmount) && looseUnits(cut, reader).length > 0) return null;

  const bound = bind(items, cut.tokens).best;
  const usual = {
    items: (all: readonly Item[]) => all,
    unit: bareUnit(reader, reading, cut),
    rival: false,
    reading: (one: RecipeReading) => one,
  };
  const given = readRecipe(reader, text, both(usual, answered.settled ?? { ...usual, unit: null }));
  const mentions = bound.mentions.map((k) => items[k]).filter(isThing);
  const spoken = mentions.filter(({ named: { meaning } }) => meaning.kind !== 'role' && meaning.id !== 'unsaid');
  const gone =
    spoken.length === 1 && spoken[0] && holds(reading, spoken[0].named.meaning) ? spoken[0].named.meaning.id : null;
  const sides: Sides = { reader, reading, text, given, unit: usual.unit, target: answered.target ?? gone };
  const cued = cues.correcting.test(text);
  if (isWhole(items, bound.groups)) return null;
  if (!cued && isFresh(items, bound.groups, reading, corrects(text))) return null;

  const amountsOf = (list: readonly number[]): Quantity[] =>
    list
      .map((k) => items[k])
      .filter(isAmount)
      .map(({ quantity }) => quantity);
  const found: (Found | null)[] = [];
  for (const group of bound.groups) {
    for (const k of group.things) {
      const thing = items[k];
      if (isThing(thing)) found.push(...ofThing(thing, amountsOf(group.amounts), sides, cued));
    }
  }
  for (const quantity of amountsOf(bound.orphans)) found.push(loose(quantity, sides));
  const spokenFor = bound.groups.length + bound.orphans.length > 0;
  if (!spokenFor) found.push(...ofNames(mentions, sides, cued));
  else if (spoken.length > 0 && !(gone !== null && found.some((one) => one?.kind === 'swap' && one.from.id === gone)))
    found.push(null);

  if (found.length === 0 || found.includes(null)) {
    const ofRecipe = items.some((item) => isAmount(item) || ingredient(item.named.meaning));
    return ofRecipe && cues.plainly.test(text) && !/\bor\b/i.test(text) ? { kind: 'lost' } : null;
  }
  const all = found.filter((one) => one !== null);
  for (const one of [...all]) {
    // "KOH, 90 %" where the recipe has none: that alkali is meant, and its purity
    if (one.kind !== 'purity' || one.of === null || holds(reading, { kind: 'alkali', id: one.of })) continue;
    if (all.some((other) => other.kind === 'set' && other.of.kind === 'alkali')) continue;
    if (reading.alkaliNamed.length > 1) return { kind: 'lost' };
    all.unshift({ kind: 'alkali', id: one.of });
  }
  const doubt = ownDoubt(given);
  if (doubt) return { kind: 'doubt', doubt, given };
  const question = all.find(isQuestion);
  if (question) return question;
  return {
    kind: 'changes',
    changes: all.filter((one) => !isQuestion(one)) as Change[],
    given,
    named: items.some(isThing),
  };
}

/** "no, the virgin one": words that are a name only beside what the recipe holds. */
function byWordsAlone(reader: Reader, text: string, reading: RecipeReading): Correction | null {
  const given = readRecipe(reader, '');
  const sides = { reader, reading, text, given, unit: null, target: null };
  const to = corrects(text) ? inContext(text, sides) : null;
  const from = to && replacedBy(to, null, sides);
  if (!to || !from || 'of' in from) return null;
  return { kind: 'changes', changes: [{ kind: 'swap', from, to, grams: null }], given, named: true };
}

/** What one name with its figures changes: an alkali may have its weight and its purity. */
function ofThing(thing: Thing, amounts: readonly Quantity[], sides: Sides, cued: boolean): readonly (Found | null)[] {
  const alkaline = thing.named.meaning.kind === 'alkali';
  const shares = amounts.filter(({ dim }) => dim === 'percent');
  if (!alkaline || shares.length === 0 || shares.length === amounts.length)
    return [ofGroup(thing, amounts, sides, cued)];
  const rest = amounts.filter(({ dim }) => dim !== 'percent');
  return [ofGroup(thing, rest, sides, cued), ofGroup(thing, shares, sides, cued)];
}

type Groups = ReturnType<typeof bind>['best']['groups'];

const weighedIn = (items: readonly Item[], groups: Groups): readonly Meaning[] =>
  groups
    .filter(({ amounts }) => amounts.length > 0)
    .flatMap(({ things }) => things.map((k) => items[k]))
    .filter(isThing)
    .map(({ named }) => named.meaning);

const fatty = ({ kind }: Meaning): boolean => ['fat', 'ambiguous', 'unheld', 'unknown'].includes(kind);
const lyeish = ({ kind }: Meaning): boolean => kind === 'alkali' || kind === 'stock';

/** Fats, alkali and water with their weights, or a list of fats: a recipe, whatever word it begins with. */
function isWhole(items: readonly Item[], groups: Groups): boolean {
  const weighed = weighedIn(items, groups);
  const fats = weighed.filter(fatty).length;
  return fats > 2 || (fats > 0 && weighed.some(lyeish) && weighed.some(({ kind }) => kind === 'water'));
}

/** A new recipe rather than a change to the old: fats that it does not hold, several of them, or alkali beside them. */
function isFresh(items: readonly Item[], groups: Groups, reading: RecipeReading, marked: boolean): boolean {
  const weighed = weighedIn(items, groups);
  const fats = weighed.filter(fatty);
  if (fats.length === 0 || marked) return false;
  const more = weighed.some((meaning) => lyeish(meaning) || (meaning.kind === 'role' && meaning.id === 'superfat'));
  return fats.some((fat) => !holds(reading, fat)) || fats.length > 1 || more;
}

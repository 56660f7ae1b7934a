import { cutOf, type InWords, type Reader } from './cut.ts';
import { perhapsBears, surelyBears } from './doubt/bearing.ts';
import { lyeLost, lyeUntold } from './doubt/lye-lost.ts';
import { withoutMisfit } from './doubt/misfit.ts';
import type { Weights } from './doubt/note-signs.ts';
import { ofOthers, withoutOthers } from './doubt/of-others.ts';
import { inUnit } from './doubt/pieces.ts';
import { amongTalk, ofElse } from './doubt/talk.ts';
import { writtenUp } from './doubt/written-up.ts';
import { type Cut, itemize } from './itemize.ts';
import type { RecipeReading } from './reading.ts';
import { asksOfSize, asTheyStand, multiplied, timesAll, unsurelyMany } from './recipe/another-size.ts';
import { assemble } from './recipe/assemble.ts';
import { type TimesEach, timesBehind, timesEach } from './recipe/times-each.ts';
import { timedEach, timesFats } from './recipe/times-made.ts';
import { bind, settledOn } from './rows/bind.ts';
import type { Item } from './rows/items.ts';
import { choices, recipePointedAt, type Several, severalIn } from './several/several.ts';
import { timesOne } from './story/per-vessel.ts';
import { elsewhere } from './taken-back/withdrawn.ts';
import { fatesOf } from './text/aside-fates.ts';
import { beforehand, told } from './text/beforehand.ts';
import { isFat } from './words/token-is.ts';
import type { Token } from './words/tokens.ts';
import { thingOf } from './words/weighed.ts';

/** What its writer answered to doubts about it. */
export interface Settled {
  readonly items: (items: readonly Item[], tokens: readonly Token[]) => readonly Item[];
  /** Id of the unit of figures without one; null where nobody said. */
  readonly unit: string | null;
  /** The second of two ways to read the post is meant. */
  readonly rival: boolean;
  readonly reading: (reading: RecipeReading) => RecipeReading;
}

/** What a post says, whatever is said in it beside its rows. `done`: it as words, where it was cut before. */
export function readPost(
  reader: Reader,
  input: string,
  settled: Settled | null = null,
  done: InWords | null = null,
): RecipeReading {
  const before = beforehand(input);
  return told(readPointed(reader, before.text, settled, done), before);
}

/** The figures of amounts that the writer's answers took out. */
function droppedOf(written: readonly Item[], items: readonly Item[]): ReadonlySet<number> {
  const numbers = (of: readonly Item[]): number[] =>
    of.flatMap((item) => (item.kind === 'amount' ? [...item.quantity.numbers, ...(item.same?.numbers ?? [])] : []));
  if (items === written) return nothingDropped;
  const kept = new Set(numbers(items));
  return new Set(numbers(written).filter((k) => !kept.has(k)));
}

const nothingDropped: ReadonlySet<number> = new Set();

/** What it says of the recipe that it points at, if there are several. */
function readPointed(reader: Reader, input: string, settled: Settled | null, done: InWords | null): RecipeReading {
  const several = severalIn(input);
  const one = recipePointedAt(several);
  if (!one) return readPart(reader, input, several, settled, done);
  if (one === 'open' || one.leans) {
    const whole = readPart(reader, input, several, settled);
    const isOneLeft = whole.assumptions.some(
      ({ text }) => text.startsWith(ofOthers) || (text.endsWith(`${elsewhere}.`) && asksOfOwn(input)),
    );
    if (one === 'open' && (settled || whole.doubts.length > 0 || isOneLeft)) return whole;
    return { ...whole, doubts: [{ id: 'two-recipes', parts: choices(several) }, ...whole.doubts] };
  }
  const first = readPart(reader, one.text, severalIn(one.text), settled);
  const unit = !settled && first.doubts.some(({ id }) => id === 'no-unit') ? one.unit : null;
  const reading = unit === null ? first : inUnitOf(reader, one.text, unit);
  // what names no fat, or only what came in the place of another, was no recipe of its own
  const isSwap = reading.fats.length === 1 && reading.alkali.length === 0 && swapped.test(one.text);
  if ((reading.fats.length === 0 && reading.doubts.length === 0) || isSwap)
    return readPart(reader, input, several, settled);
  const others = [...fatesOf(one.rest, 'of another recipe'), ...fatesOf(one.marks, 'the number of a recipe')];
  const text = `I took ${one.called}, of the ${one.of} recipes in the post.`;
  return {
    ...reading,
    assumptions: [{ id: 'left-out', text }, ...reading.assumptions],
    fates: [...reading.fates, ...others],
  };
}

/** "Did I get it right?", and nothing is asked of anybody else's. */
const asksOfOwn = (post: string): boolean => {
  const asked = (post.match(/[^.!?\n]*\?/g) ?? []).join(' ');
  return /\b(?:did|have|am|should|do) i\b|\bis my\b/i.test(asked) && !ofBoth.test(asked);
};
const ofBoth = /\b(?:hers|his|theirs|both|which|either|difference|or|and mine|them|ones?)\b/i;

/** A recipe whose figures have no unit, beside others that have one. */
function inUnitOf(reader: Reader, post: string, unit: string): RecipeReading {
  const text = inUnit(post, unit);
  const reading = readPart(reader, text, severalIn(text), null);
  const taken = { id: 'unit' as const, text: `I took figures without a unit in ${unit}, as the rest of the post.` };
  return { ...reading, assumptions: [taken, ...reading.assumptions] };
}

/** A post of one recipe, as far as anything points at one. */
function readPart(
  reader: Reader,
  input: string,
  several: Several,
  settled: Settled | null,
  done: InWords | null = null,
): RecipeReading {
  const each = settled ? null : timesEach(input, fatOf(reader));
  const untimed = each && untimedOf(reader, each);
  const timed = each && untimed && timedEach(untimed, each, nameOf(reader));
  if (timed) return timed;
  const { text: post, factor, said, unsure, but, anew, apart } = timesAll(input, fatOf(reader));
  const { reading: first, unheardChange } = readOne(reader, post === input ? several : severalIn(post), settled, done);
  const again = (rest: string): RecipeReading => readOne(reader, severalIn(rest), null).reading;
  const { catalogue } = reader;
  const bears = (note: string, list: Weights, isDry: boolean): boolean =>
    perhapsBears(cutOf(reader, note), list, isDry);
  /** The recipe among what is written around it, as far as that leaves no doubt. */
  const alone = (text: string, reading: RecipeReading): RecipeReading => {
    const rest = withoutMisfit(text, reading, again, catalogue);
    if (rest || reading.doubts.length === 0) return rest ?? reading;
    const surely = (note: string, list: Weights): boolean => surelyBears(cutOf(reader, note), list);
    return (
      amongTalk(text, reading, again, catalogue, surely) ?? writtenUp(text, reading, again, catalogue, bears) ?? reading
    );
  };
  const among = settled ? first : alone(post, first);
  const read =
    settled || among.doubts.length === 0
      ? among
      : (withoutOthers(post, first, (rest) => alone(rest, again(rest)), catalogue) ?? among);
  const heard = settled ? read : hearing(read, unheardChange);
  const whole = factor === null ? heard : ofMadeSize(asksOfSize(heard) ? read : heard, factor);
  // "per mould … three moulds in one pot, three times everything"
  if (factor !== null && whole.assumptions.some(({ text }) => text.endsWith(timesOne(factor)))) return whole;
  if (factor !== null) return multiplied(whole, factor, said, but, anew, apart, nameOf(reader));
  if (each && untimed && whole.doubts.length === 0 && sumOf(whole.fats) === sumOf(untimed.fats) && timesFats(each))
    return { ...whole, doubts: [{ id: 'corrected', said: each.said[0]?.trim() ?? '' }] };
  const many =
    unsurelyMany(post, whole) ?? (whole.doubts.length === 0 ? (unsure ?? (settled ? null : timesBehind(post))) : null);
  if (many !== null) return { ...whole, doubts: [{ id: 'corrected', said: many }] };
  const lost = settled ? null : lyeLost(post, whole);
  if (lost !== null) return { ...whole, doubts: [{ id: 'unplaced', said: lost }] };
  if (!settled && lyeUntold(post, whole)) return { ...whole, doubts: [{ id: 'no-amount', said: 'lye', of: 'lye' }] };
  const stand = asTheyStand(post);
  return stand ? { ...whole, assumptions: [...whole.assumptions, { id: 'number', text: stand }] } : whole;
}

/** What a post says without the clauses that tell how many times of it went in; null where it still tells of a size. */
function untimedOf(reader: Reader, { text }: TimesEach): RecipeReading | null {
  const { factor, unsure } = timesAll(text, fatOf(reader));
  return factor === null && unsure === undefined ? readPart(reader, text, severalIn(text), null) : null;
}

/** The fat that words name, and nothing else. */
const fatOf =
  (reader: Reader) =>
  (words: string): string | null => {
    const [name, ...more] = cutOf(reader, words).tokens;
    return more.length === 0 && isFat(name) ? thingOf(name) : null;
  };

const nameOf =
  ({ lexicon }: Reader) =>
  (fat: string): string =>
    lexicon
      .label({ kind: 'fat', id: fat })
      .toLowerCase()
      .replace(/, (.+)$/, ' ($1)');

/** "My mould takes a kilo of oils … I made half of it": the total is that of what was made. */
function ofMadeSize(reading: RecipeReading, factor: number): RecipeReading {
  const { doubts, fats, after, totalFats } = reading;
  const isTotal = doubts.length === 1 && doubts[0]?.id === 'total-disagrees';
  const sum = sumOf([...fats, ...after]);
  if (!isTotal || totalFats === null || Math.abs(totalFats - factor * sum) > 0.01 * totalFats) return reading;
  return { ...reading, doubts: [], totalFats: sum };
}

const swapped = /\b(?:replaced|swapped|exchanged|substituted|traded|subbed)\b/i;

/** What no rule of the reader changes anything by. */
const changing: ReadonlySet<string> = new Set(['corrected', 'left-out', 'after']);

/** A figure that no name took, or a name that no figure took, was left out: no change is heard with that. */
const ofFigure =
  /^I left out (?:the total )?"[^"]*"(?:: (?:nothing says how much, and that it is in the pot|no weight like those of the lines))?\.$/;

const sumOf = (lines: readonly { readonly grams: number }[]): number =>
  lines.reduce((sum, { grams }) => sum + grams, 0);

/** The reading, asked about where the post tells of a change that it would pass over. */
function hearing(reading: RecipeReading, unheardChange: Cut['unheardChange']): RecipeReading {
  const { doubts, assumptions, fats, after, alkali, fates, swapAsked } = reading;
  if (doubts.length > 0 || fats.length === 0) return reading;
  const isOfElse = ({ text }: { readonly text: string }): boolean => text.startsWith(ofElse);
  const heard = assumptions.filter(({ id, text }) => changing.has(id) && !ofFigure.test(text));
  const isSure = !fates.some(({ why }) => why === 'a difference');
  const pot = {
    fats: new Set([...fats, ...after].map(({ id }) => id)),
    alkali: new Set(alkali.map(({ id }) => id)),
    share: sumOf(alkali) / sumOf([...fats, ...after]),
  };
  const saidIf = (isHeard: boolean): string | null => unheardChange(isHeard && isSure, swapAsked !== null, pot);
  const said = saidIf(heard.length > 0) ?? (heard.every(isOfElse) ? saidBeside(saidIf(false), heard) : null);
  return said === null ? reading : { ...reading, doubts: [{ id: 'corrected', said }] };
}

/** What is said of the pot beside what was left out as of something else. */
const saidBeside = (said: string | null, left: readonly { readonly text: string }[]): string | null =>
  said === null || left.some(({ text }) => text.includes(said)) ? null : said;

interface ReadOnce {
  readonly reading: RecipeReading;
  /** Words that tell of a change which no rule heard. */
  readonly unheardChange: Cut['unheardChange'];
}

function readOne(reader: Reader, several: Several, settled: Settled | null, done: InWords | null = null): ReadOnce {
  const cut = itemize(reader, several.post, done);
  const { tokens } = cut;
  const items = settled ? settled.items(cut.items, tokens) : cut.items;
  const bound = bind(items, tokens, cut.cuts);
  const reading = assemble({
    ...cut,
    catalogue: reader.catalogue,
    lexicon: reader.lexicon,
    items,
    dropped: droppedOf(cut.items, items),
    bound: settled?.rival && bound.rival ? settledOn(bound.rival) : bound,
    units: settled?.unit ? { sections: [], global: new Set([settled.unit]) } : cut.units,
    several: { isNumbered: several.numbered.length > 0, choices: () => choices(several) },
  });
  return { reading: settled ? settled.reading(reading) : reading, unheardChange: cut.unheardChange };
}

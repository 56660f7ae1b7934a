import type { AlkaliId } from '../../catalogue/types.ts';
import type { Assumption, ReadAmount, RecipeReading } from '../reading.ts';
import type { Lexicon, Meaning } from '../words/lexicon.ts';
import type { Change } from './correction.ts';

type Line = ReadAmount & { readonly strength?: number | null };

/** The list in which a kind of thing stands. */
const shelfOf = { fat: 'fats', liquid: 'liquids', acid: 'acids' } as const;
type Shelved = keyof typeof shelfOf;
const isShelved = (kind: string): kind is Shelved => kind in shelfOf;

/** A line with this id is weighed anew; a new one is put last. No line of nothing or less stays. */
function weighed<T extends Line>(
  lines: readonly T[],
  id: string,
  weigh: (grams: number) => number,
  fresh: Omit<T, 'grams'>,
): readonly T[] {
  const had = lines.some((line) => line.id === id);
  const all = had
    ? lines.map((line) => (line.id === id ? { ...line, said: fresh.said, grams: weigh(line.grams) } : line))
    : [...lines, { ...fresh, grams: weigh(0) } as T];
  return all.filter(({ grams }) => grams > 0);
}

/** One name in the place of another, with its weight; both in one line where the new one is there already. */
function swapped<T extends Line>(lines: readonly T[], from: string, to: string, grams: number | null): readonly T[] {
  const gone = lines.find(({ id }) => id === from);
  if (!gone) return lines;
  const weight = grams ?? gone.grams;
  if (lines.some(({ id }) => id === to))
    return lines
      .filter(({ id }) => id !== from)
      .map((line) => (line.id === to ? { ...line, grams: line.grams + weight } : line));
  return lines.map((line) => (line.id === from ? { ...line, id: to, grams: weight } : line));
}

function withAlkali(reading: RecipeReading, id: AlkaliId, grams: number): RecipeReading {
  const own = reading.alkali.find((one) => one.id === id);
  const others = reading.alkali.length > 1 ? reading.alkali.filter((one) => one !== own) : [];
  return {
    ...reading,
    alkali: [...others, { id, grams, purity: own?.purity ?? null, stock: false }],
    alkaliNamed: [...new Set([...others.map((one) => one.id), id])],
  };
}

function setOrAdded(reading: RecipeReading, change: Extract<Change, { kind: 'set' | 'add' }>): RecipeReading {
  const { of, grams, said } = change;
  const weigh = (before: number): number => (change.kind === 'add' ? before + grams : grams);
  if (of.kind === 'alkali') return withAlkali(reading, of.id as AlkaliId, grams);
  if (of.kind === 'water') return { ...reading, waterGrams: grams, concentration: null, ratio: null, waterShare: null };
  if (of.kind === 'fat' && (change.after || reading.after.some(({ id }) => id === of.id)))
    return { ...reading, after: weighed(reading.after, of.id, weigh, { id: of.id, said }) };
  if (isShelved(of.kind)) {
    const shelf = shelfOf[of.kind];
    const lines: readonly Line[] = reading[shelf];
    return {
      ...reading,
      [shelf]: weighed(lines, of.id, weigh, { id: of.id, said, ...(shelf === 'acids' ? { strength: null } : {}) }),
    };
  }
  return { ...reading, others: [...reading.others.filter(({ name }) => name !== of.id), { name: of.id, grams, said }] };
}

function without(reading: RecipeReading, of: Meaning): RecipeReading {
  const rest = <T extends Line>(lines: readonly T[]): readonly T[] => lines.filter(({ id }) => id !== of.id);
  if (of.kind === 'water') return { ...reading, waterGrams: 0 };
  if (of.kind === 'alkali')
    return {
      ...reading,
      alkali: reading.alkali.filter(({ id }) => id !== of.id),
      alkaliNamed: reading.alkaliNamed.filter((id) => id !== of.id),
      alkaliSplit: null,
    };
  return {
    ...reading,
    fats: rest(reading.fats),
    after: rest(reading.after),
    liquids: rest(reading.liquids),
    acids: rest(reading.acids),
    others: reading.others.filter(({ name }) => name.toLowerCase() !== of.id.toLowerCase()),
  };
}

/** Milk in the place of all water, gram for gram, or water in the place of milk. */
function wetter(reading: RecipeReading, from: Meaning, to: Meaning): RecipeReading {
  const dry = { concentration: null, ratio: null, waterShare: null };
  const water = reading.waterGrams ?? 0;
  if (from.kind === 'water') {
    const liquids = weighed(reading.liquids, to.id, (grams) => grams + water, { id: to.id, said: '' });
    return { ...reading, ...dry, liquids, waterGrams: 0 };
  }
  const milk = reading.liquids.find(({ id }) => id === from.id)?.grams ?? 0;
  return { ...reading, ...dry, liquids: reading.liquids.filter(({ id }) => id !== from.id), waterGrams: water + milk };
}

function once(reading: RecipeReading, change: Change): RecipeReading {
  const dry = { concentration: null, ratio: null, waterShare: null };
  switch (change.kind) {
    case 'superfat':
      return { ...reading, superfat: change.value };
    case 'concentration':
      return { ...reading, ...dry, waterGrams: null, concentration: change.value };
    case 'ratio':
      return { ...reading, ...dry, waterGrams: null, ratio: change.value };
    case 'water-share':
      return { ...reading, ...dry, waterGrams: null, waterShare: change.value };
    case 'step':
      return { ...reading, scaleStep: change.value };
    case 'unit':
      return { ...reading, ounces: change.unit === 'oz' };
    case 'purity': {
      const mixed = reading.alkali.length > 1;
      const mine = (id: AlkaliId): boolean => (change.of ?? (mixed ? 'koh' : id)) === id;
      return {
        ...reading,
        purity: change.purity,
        alkali: reading.alkali.map((one) => (mine(one.id) ? { ...one, purity: change.purity } : one)),
      };
    }
    case 'alkali':
      return {
        ...reading,
        alkali:
          reading.alkali.length === 1 ? reading.alkali.map((one) => ({ ...one, id: change.id, purity: null })) : [],
        alkaliNamed: [change.id],
        alkaliSplit: null,
        purity: reading.alkaliNamed.includes(change.id) ? reading.purity : null,
      };
    case 'set':
    case 'add':
      return setOrAdded(reading, change);
    case 'remove':
      return without(reading, change.of);
    case 'swap': {
      const { from, to, grams } = change;
      if (from.kind === 'water' || to.kind === 'water') return wetter(reading, from, to);
      if (!isShelved(from.kind) || from.kind !== to.kind) return reading;
      const shelf = shelfOf[from.kind];
      const lines: readonly Line[] = reading[shelf];
      const swap = { ...reading, [shelf]: swapped(lines, from.id, to.id, grams) };
      return { ...swap, after: from.kind === 'fat' ? swapped(reading.after, from.id, to.id, grams) : reading.after };
    }
  }
}

/** Words of the reader about a thing that is no longer what or as much as they say. */
function stale({ text, id }: Assumption, change: Change, label: (meaning: Meaning) => string): boolean {
  switch (change.kind) {
    case 'swap':
      return text.includes(label(change.from));
    case 'remove':
      return text.includes(label(change.of));
    case 'set':
      return (
        (id === 'volume' || id === 'unit' || id === 'summed' || id === 'number') && text.includes(label(change.of))
      );
    case 'alkali':
      return id === 'lye' || id === 'purity';
    case 'concentration':
    case 'ratio':
    case 'water-share':
      return id === 'water';
    default:
      return false;
  }
}

/** The recipe with what was changed in it; `given` is what the correction itself was read as. */
export function amended(
  reading: RecipeReading,
  changes: readonly Change[],
  given: RecipeReading,
  lexicon: Lexicon,
): RecipeReading {
  const label = (meaning: Meaning): string => lexicon.label(meaning);
  const kept = reading.assumptions.filter((one) => !changes.some((change) => stale(one, change, label)));
  const known = new Set(kept.flatMap(({ as }) => (as === undefined ? [] : [as])));
  const told = given.assumptions.filter(
    ({ id, as }) =>
      ['plain-name', 'abbreviation', 'spelling', 'decoration', 'volume'].includes(id) &&
      !(as !== undefined && known.has(as)),
  );
  const after = changes.reduce(once, reading);
  // Totals and shares were of the recipe as it stood.
  return { ...after, assumptions: [...kept, ...told], totalFats: null, doubts: [] };
}

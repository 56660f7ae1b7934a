import type { Reader } from '../cut.ts';
import { readRecipe } from '../index.ts';
import type { ReadAmount, RecipeReading } from '../reading.ts';
import { bind } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { type Amount, isAmount, isThing } from '../rows/kinds.ts';
import { itemize } from '../worded.ts';
import type { Meaning } from '../words/lexicon.ts';
import { plainQuantity, type Quantity } from '../words/quantities.ts';
import { readCorrection } from './amend.ts';
import { both, type Settled } from './settle.ts';

/** Everything that a post names, weighed or not: what a correction of it can speak of. */
function named(items: readonly Item[], reading: RecipeReading): RecipeReading {
  const said = items.filter(isThing).map(({ named: { meaning } }): ReadAmount & { meaning: Meaning } => ({
    id: meaning.id,
    grams: 1,
    said: '1 g',
    meaning,
  }));
  const of = (kind: Meaning['kind']): readonly ReadAmount[] => said.filter(({ meaning }) => meaning.kind === kind);
  return { ...reading, fats: of('fat'), liquids: of('liquid') };
}

/** The figure of one name put in the place of the one that was bound to it. */
const instead =
  (meaning: Meaning, quantity: Quantity): Settled['items'] =>
  (items, tokens) => {
    const group = bind(items, tokens).best.groups.find(({ things }) =>
      things.some((k) => {
        const item = items[k];
        const same = isThing(item) && item.named.meaning.kind === meaning.kind;
        return same && (meaning.kind === 'alkali' || item.named.meaning.id === meaning.id);
      }),
    );
    const at = group?.amounts.find((k) => {
      const item = items[k];
      return isAmount(item) && ['mass', 'volume', 'bare'].includes(item.quantity.dim);
    });
    return items.map((item, k): Item => {
      if (k !== at || !isAmount(item)) return item;
      return { ...item, quantity: { ...quantity, numbers: item.quantity.numbers }, same: null } satisfies Amount;
    });
  };

const byWeight = (grams: number, said: string): Quantity => ({
  ...plainQuantity,
  dim: 'mass',
  value: grams,
  text: said,
});

/** A post that waits for an answer, with a figure in it put right; null where the text does no such thing. */
export function mended(reader: Reader, post: string, settled: Settled | null, text: string): Settled | null {
  const { items } = itemize(reader, post);
  const reading = readRecipe(reader, post, settled);
  const correction = readCorrection(reader, text, named(items, reading));
  if (correction?.kind !== 'changes') return null;
  let all = settled;
  for (const change of correction.changes) {
    if (change.kind !== 'set') return null;
    const edit = instead(change.of, byWeight(change.grams, change.said));
    all = both(all, { items: edit, unit: null, rival: false, reading: settledWords });
  }
  return all;
}

/** A post that took something back is clear once its writer has said which figure counts. */
const settledWords = (reading: RecipeReading): RecipeReading => ({
  ...reading,
  doubts: reading.doubts.filter(({ id }) => id !== 'corrected'),
});

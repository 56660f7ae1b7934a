/** A soap that is called after what is in it, and a weight beside its name. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const rest = 'Olive 700 g, coconut 300 g, NaOH 140 g, water 150 g.';

test.each([
  `Goat milk soap (frozen, 150 g). ${rest}`,
  `Goat milk soap [frozen 150 g] + ${rest}`,
  `${rest} Goat milk soap (raw, 150 g)`,
])('a weight beside what soap is never: %s', (text) =>
  expect(readRecipe(reader, text)).toMatchObject({ liquids: [{ id: 'goat-milk', grams: 150 }], doubts: [] }),
);

test.each([
  `Oat milk soap: 150 g. ${rest}`,
  `Beer soap, 250 g. ${rest}`,
  'Lard soap, 650 g; coconut 350 g; NaOH 150 g; water 290 g',
  'Olive oil soap (700 g), coconut 300 g, NaOH 140 g, water 290 g',
])('too little for the batch, or nobody knows: %s', (text) => expect(readRecipe(reader, text).doubts).not.toEqual([]));

test.each([
  `Goat milk soap, 1 kg. ${rest}`,
  `Goat milk soap (100 g bars). ${rest}`,
  `Olive soap 500 g. ${rest}`,
  `Castor soap 1 kg. ${rest}`,
  `Honey soap (10 g). ${rest}`,
])('the size of the batch, of a bar, or of what makes no difference: %s', (text) =>
  expect(readRecipe(reader, text)).toMatchObject({ fats: [{ grams: 700 }, { grams: 300 }], liquids: [], doubts: [] }),
);

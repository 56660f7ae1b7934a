import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { layouts, meant } from './recipes.ts';

const reader = makeReader(loadCatalogue());

describe('one recipe reads the same in every layout', () => {
  for (const [name, write] of Object.entries(layouts)) {
    test(name, () => {
      fc.assert(
        fc.property(meant, (one) => {
          const read = readRecipe(reader, write(one));
          expect(read.doubts).toEqual([]);
          expect(read.fats.map(({ id, grams }) => [id, Math.round(grams)])).toEqual(
            one.fats.map(({ id, grams }) => [id, grams]),
          );
          expect(read.alkali.map(({ id, grams }) => [id, grams])).toEqual([['naoh', one.alkali]]);
          expect(read.waterGrams).toBe(one.water);
        }),
        { numRuns: 150 },
      );
    });
  }
});

describe('what is said twice is cross-checked', () => {
  const told = (text: string): string[] => readRecipe(reader, text).doubts.map(({ id }) => id);
  const off = fc.constantFrom(0.8, 0.9, 1.12, 1.3);

  test('grams beside ounces', () => {
    fc.assert(
      fc.property(meant, off, fc.nat(), (one, by, at) => {
        const wrong = at % one.fats.length;
        const text = one.fats
          .map(
            (fat, k) =>
              `${fat.name} ${fat.grams} g (${((fat.grams * (k === wrong ? by : 1)) / 28.349523125).toFixed(2)} oz)`,
          )
          .join('\n');
        expect(told(`${text}\nsodium hydroxide ${one.alkali} g\nwater ${one.water} g`)).toContain('units-disagree');
      }),
    );
  });
  test('a total beside the weights', () => {
    fc.assert(
      fc.property(meant, off, (one, by) => {
        const total = one.fats.reduce((sum, fat) => sum + fat.grams, 0);
        const said = Math.round(total * by);
        // a total may also be of fats, alkali and water, or of some of the rows
        const parts = one.fats.flatMap((_, from) =>
          one.fats
            .slice(from)
            .map((__, to) => one.fats.slice(from, from + to + 1).reduce((sum, fat) => sum + fat.grams, 0)),
        );
        const others = [
          total + one.alkali,
          total + one.water,
          total + one.alkali + one.water,
          one.alkali + one.water,
          ...parts,
        ];
        fc.pre(!others.some((sum) => Math.abs(sum - said) < 0.03 * sum));
        expect(
          told(
            `${one.fats.map((fat) => `${fat.name} ${fat.grams} g`).join('\n')}\nsodium hydroxide ${one.alkali} g\nwater ${one.water} g\ntotal oils ${said} g`,
          ),
        ).toContain('total-disagrees');
      }),
    );
  });
  test('shares beside weights', () => {
    fc.assert(
      fc.property(meant, (one) => {
        const total = one.fats.reduce((sum, fat) => sum + fat.grams, 0);
        const whole = total + one.alkali + one.water;
        const text = one.fats
          .map(
            (fat, k) => `${fat.name} ${fat.grams} g (${((100 * fat.grams) / total + (k === 0 ? 6 : 0)).toFixed(1)} %)`,
          )
          .join('\n');
        fc.pre(Math.abs(((one.fats[0]?.grams ?? 0) / total) * 100 + 6 - ((one.fats[0]?.grams ?? 0) / whole) * 100) > 2);
        expect(told(`${text}\nsodium hydroxide ${one.alkali} g\nwater ${one.water} g`)).toContain('shares-disagree');
      }),
    );
  });
});

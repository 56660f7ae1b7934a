import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type Reply, renderPlain } from '../../src/index.ts';
import { talk } from './talk.ts';

interface Result {
  readonly recipe: {
    readonly fats: readonly { readonly id: string; readonly grams: number }[];
    readonly alkali: readonly { readonly id: string; readonly grams: number }[];
    readonly water: { readonly grams: number };
  };
  readonly superfat: { readonly nominal: number };
  readonly factor: number;
  readonly leastBatchGrams: number;
}

const resultOf = (reply: Reply): Result => {
  if (!reply.ok) throw new Error(reply.fault.message);
  return reply.answer.result as unknown as Result;
};
const fatGrams = ({ recipe }: Result): number => recipe.fats.reduce((sum, { grams }) => sum + grams, 0);
const potGrams = (result: Result): number =>
  fatGrams(result) + result.recipe.alkali.reduce((sum, { grams }) => sum + grams, 0) + result.recipe.water.grams;
const textOf = (reply: Reply): string => renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });

const recipe = '500 g olive oil, 200 g coconut oil, 98 g naoh, 230 g water';

describe('a size', () => {
  test.each([
    ['scale to 1 kg of oils', fatGrams, 1000],
    ['scale it to 2 lb of fat', fatGrams, 907.18],
    ['for 800 g of oils', fatGrams, 800],
    ['scale to a batch of 1.2 kg', potGrams, 1200],
    ['scale that to my 1.2 kg mould', potGrams, 1200],
    ['12 bars of 100 g', potGrams, 1200],
    ['make 20 bars at 4 oz each', potGrams, 2268],
    ['double it', potGrams, 2 * 1028],
    ['halve it please', potGrams, 514],
    ['scale it by 1.5', potGrams, 1.5 * 1028],
    ['20 % smaller', potGrams, 0.8 * 1028],
    ['scale it to 150 %', potGrams, 1.5 * 1028],
    ['I only have 300 g olive', fatGrams, 420],
    ['scale it, I have 300 g coconut and 600 g olive', fatGrams, 840],
    ['scale fat=1.4kg', fatGrams, 1400],
    ['scale batch=2kg', potGrams, 2000],
    ['scale factor=3', potGrams, 3 * 1028],
  ])('"%s"', async (say, measure, grams) => {
    const reply = say.startsWith('20 %') ? await talk(recipe, `scale it ${say}`) : await talk(recipe, say);
    // fats are rounded to the gram, alkali down
    expect(Math.abs(measure(resultOf(reply)) - grams)).toBeLessThan(3.1);
  });

  // fats in ounces ≈ 0.40 × cubic inches: the old rule of the trade (common practice), good to about a tenth
  it.each([
    ['scale for my 10 x 3.5 x 2.5 inch mould', 10 * 3.5 * 2.5],
    ['scale for a mould 24 x 8 x 6 cm', (24 * 8 * 6) / 16.387],
    ['a tube 7.5 cm across and 20 cm long', (Math.PI * 3.75 ** 2 * 20) / 16.387],
    ['my mould holds 1.2 kg of water', 1200 / 0.998 / 16.387],
    ['scale to a 1.2 l mould', 1200 / 16.387],
  ])('of a mould agrees with the rule of thumb: "%s"', async (say, cubicInches) => {
    const ounces = fatGrams(resultOf(await talk(recipe, say))) / 28.3495;
    expect(ounces / cubicInches).toBeGreaterThan(0.36);
    expect(ounces / cubicInches).toBeLessThan(0.44);
  });

  it.each([
    ['scale it to 1.2 kg', 'oils', fatGrams, 1200],
    ['scale it to 1.2 kg', 'the whole batch', potGrams, 1200],
    ['12 bars', '100 g', potGrams, 1200],
    ['scale to 1 to 1.5 kg of oils', '1.5 kg', fatGrams, 1500],
    ['scale it', 'to 1 kg of fat', fatGrams, 1000],
    ['my 24x8x6 mould', 'cm', potGrams, 24 * 8 * 6 * 1.02],
  ])('that is not clear is asked and completed: "%s", "%s"', async (say, answer, measure, grams) => {
    const asked = await talk(recipe, say);
    expect(!asked.ok && asked.fault.code).toBe('unclear');
    expect(!asked.ok && asked.fault.caution.length).toBeGreaterThan(0);
    expect(measure(resultOf(await talk(recipe, say, answer))) / grams).toBeCloseTo(1, 1);
  });

  it('may stand in one text with its recipe, before or behind it', async () => {
    for (const say of [
      `scale this to 1 kg of oils: ${recipe}`,
      `${recipe} - scale it to 1 kg of oils please`,
      `double: ${recipe}`,
      `500 g olive oil\n200 g coconut oil\n98 g naoh\n230 g water\nscale to 1 kg of oils`,
    ]) {
      const result = resultOf(await talk(say));
      expect(Math.abs(fatGrams(result) - (say.startsWith('double') ? 1400 : 1000))).toBeLessThan(1.1);
    }
  });
});

describe('the alkali', () => {
  it('is reckoned anew, never above the plain multiple, and the superfat never falls', async () => {
    const before = resultOf(await talk(recipe)).superfat.nominal;
    const reply = await talk(recipe, 'scale it to 333 g of oils');
    const { recipe: scaled, superfat, factor } = resultOf(reply);
    expect(scaled.alkali[0]?.grams).toBeLessThanOrEqual(98 * factor + 0.5);
    expect(superfat.nominal).toBeGreaterThanOrEqual(before - 1e-9);
    expect(textOf(reply)).toMatch(/a plain multiple would be 46\.6 g/);
  });

  it('of a recipe with too much of it is not multiplied', async () => {
    const refusal = await talk('300 g lard, 100 g NaOH, 90 g water', 'double it');
    expect(!refusal.ok && refusal.fault.code).toBe('refused');
    expect(!refusal.ok && refusal.fault.caution.length).toBeGreaterThan(0);
    const { recipe: scaled } = resultOf(await talk('300 g lard, 100 g NaOH, 90 g water', 'double it', '5 %'));
    // lard: 192–203 mg KOH/g (CXS 211), so 600 g need 600 · 0.1975 · 0.7129 · 0.95 g
    expect(scaled.alkali[0]?.grams).toBeCloseTo(600 * 0.1975 * 0.7129 * 0.95, 0);
  });
});

it('says the least batch that the scale weighs well', async () => {
  const reply = await talk(recipe, 'double it');
  expect(textOf(reply)).toMatch(/least batch that a scale showing 1 g weighs well: about \d+ g in the pot/);
  const { leastBatchGrams } = resultOf(reply);
  // half a gram of the alkali may move the superfat by one point
  const { recipe: scaled, superfat } = resultOf(reply);
  const alkali = scaled.alkali[0]?.grams ?? 0;
  const perGram = (1 - superfat.nominal) / alkali;
  expect(leastBatchGrams).toBeCloseTo((potGrams(resultOf(reply)) * 0.5 * perGram) / 0.01, 0);
});

it('composes: two scalings are one by the product, up to the steps of the scale', async () => {
  const factor = fc.double({ min: 0.5, max: 4, noNaN: true }).map((value) => Number(value.toFixed(2)));
  await fc.assert(
    fc.asyncProperty(factor, factor, async (a, b) => {
      const twice = resultOf(await talk(recipe, `scale factor=${a}`, `scale factor=${b}`));
      const once = resultOf(await talk(recipe, `scale factor=${a * b}`));
      // three weights rounded to 1 g, each by half a gram at most: the first scaling's (then times b), the second's, the single one's
      const slack = 0.5 * b + 0.5 + 0.5 + 1e-9;
      for (const [k, { grams }] of once.recipe.fats.entries())
        expect(Math.abs((twice.recipe.fats[k]?.grams ?? 0) - grams)).toBeLessThanOrEqual(slack);
      expect(Math.abs((twice.recipe.alkali[0]?.grams ?? 0) - (once.recipe.alkali[0]?.grams ?? 0))).toBeLessThanOrEqual(
        b + 2,
      );
    }),
    { numRuns: 40 },
  );
});

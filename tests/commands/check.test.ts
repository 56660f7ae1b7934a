import { describe, expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';

interface Result {
  readonly recipe: {
    readonly fats: readonly { readonly id: string; readonly grams: number; readonly share: number }[];
    readonly after: readonly { readonly id: string; readonly grams: number }[];
    readonly alkali: readonly { readonly id: string; readonly grams: number; readonly purity: number }[];
    readonly water: { readonly grams: number };
    readonly liquids: readonly {
      readonly id: string;
      readonly grams: number;
      readonly waterGrams: number;
      readonly fatGrams: number;
    }[];
  };
  readonly demand: { readonly naohGrams: number; readonly kohGrams: number };
  readonly superfat: {
    readonly nominal: number;
    readonly low: number;
    readonly high: number;
    readonly chanceOfExcess: number;
    readonly withAfter: number;
  };
  readonly verdict: string;
}

const bot = createBot();
const ask = (text: string) => bot.ask({ platform: 'test', place: 'here', person: 'someone', text });

async function answer(text: string) {
  const reply = await ask(text);
  if (!reply.ok) throw new Error(`${reply.fault.code}: ${reply.fault.message}`);
  const { lead, body, assumptions, warnings } = reply.answer;
  const lines = body.flatMap((block) => (block.kind === 'text' ? [block.text] : []));
  return {
    ...reply.answer,
    result: reply.answer.result as unknown as Result,
    all: [lead, ...lines, ...assumptions, ...warnings].join('\n'),
  };
}

/**
 * Superfat reckoned by hand: 1 − alkali ÷ Σ weight × middle of the range of the standard ÷ 1000 × 39.997 ÷ 56.105.
 * Ranges in mg KOH/g. Codex CXS 33: olive 184–196. Codex CXS 210: coconut 248–265, palm 190–209, sunflower 187–194
 * (amended in 2022).
 * British Pharmacopoeia: castor 176–187. Codex CXS 211: lard 192–203.
 */
const middle = { olive: 190, coconut: 256.5, palm: 199.5, sunflower: 190.5, castor: 181.5, lard: 197.5 };
const naohFor = (...fats: readonly (readonly [number, keyof typeof middle])[]): number =>
  fats.reduce((sum, [grams, fat]) => sum + (grams * middle[fat]) / 1000, 0) * (39.997 / 56.105);

describe('superfat against arithmetic by hand', () => {
  test.each([
    [
      '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water',
      102,
      naohFor([450, 'olive'], [225, 'coconut'], [75, 'castor']),
    ],
    ['500 g lard, 100 g NaOH, 150 g water', 100, naohFor([500, 'lard'])],
    ['700 g olive oil, 300 g coconut oil, 142 g NaOH, 312 g water', 142, naohFor([700, 'olive'], [300, 'coconut'])],
    ['500 g palm oil, 500 g sunflower oil, 132 g NaOH, 300 g water', 132, naohFor([500, 'palm'], [500, 'sunflower'])],
  ])('%s', async (text, weighed, demand) => {
    const { result } = await answer(text);
    expect(result.demand.naohGrams).toBeCloseTo(demand, 6);
    expect(result.superfat.nominal).toBeCloseTo(1 - weighed / demand, 9);
  });

  test('a class bar: 8.8 %, 112 g for nothing left over, 106 g for 5 %', async () => {
    const { all, result } = await answer('olive 450, coconut 225, castor 75 g, 102 g lye, 230 g water');
    expect(result.superfat.nominal).toBeCloseTo(0.088, 3);
    expect(all).toContain('about 112 g of it for nothing left over, 106 g to leave at least 5 %');
  });

  test('lard needs 70 g, and no more than 72 g', async () => {
    const { all } = await answer('500 g lard, 100 g NaOH, 150 g water');
    expect(all).toContain('about 70 g for nothing left over');
    expect(all).toContain('(72 g), about 28 g would stay free');
  });

  // 700 g × 0.1905 + 300 g × 0.2565 = 210.3 g KOH; 224 g × 0.9 = 201.6 g
  test('potassium hydroxide of 90 %, with what other purities would do', async () => {
    const { result, all } = await answer('700 g sunflower oil, 300 g coconut oil, 224 g KOH, 660 g water');
    expect(result.demand.kohGrams).toBeCloseTo(210.3, 6);
    expect(result.superfat.nominal).toBeCloseTo(1 - 201.6 / 210.3, 9);
    expect(all).toContain('at 85 % the superfat would be 9.5 %, at 100 % −6.5 %');
  });

  // 10 g × 3 × 39.997 / 192.12 = 6.25 g sodium hydroxide (handbook of the trade: 0.6246 g a gram)
  test('citric acid takes its alkali first', async () => {
    const plain = (await answer('700 g olive oil, 300 g coconut oil, 146 g NaOH, 300 g water')).result;
    const { result, all } = await answer(
      '700 g olive oil, 300 g coconut oil, 146 g NaOH, 300 g water, 10 g citric acid',
    );
    const demand = plain.demand.naohGrams;
    expect(result.superfat.nominal - plain.superfat.nominal).toBeCloseTo(6.246 / demand, 4);
    expect(all).toContain('citric acid (anhydrous) takes first (6.2 g');
  });
});

describe('result', () => {
  test('has what was weighed, whole and unrounded', async () => {
    const { result } = await answer('16 oz lard, 2.1 oz NaOH, 4.6 oz water, 3 oz goat milk, 1 oz shea after the cook');
    expect(result.recipe.fats).toEqual([{ id: 'lard', grams: 16 * 28.349523125, share: 1 }]);
    expect(result.recipe.after).toEqual([{ id: 'shea-butter', grams: 28.349523125 }]);
    expect(result.recipe.alkali).toEqual([{ id: 'naoh', grams: 2.1 * 28.349523125, purity: 1 }]);
    expect(result.recipe.water.grams).toBeCloseTo(4.6 * 28.349523125, 9);
    const [milk] = result.recipe.liquids;
    expect(milk?.id).toBe('goat-milk');
    expect(milk?.grams).toBeCloseTo(85.05, 2);
    expect((milk?.waterGrams ?? 0) + (milk?.fatGrams ?? 0)).toBeLessThan(85.05);
    expect(result.superfat.withAfter).toBeGreaterThan(result.superfat.nominal);
  });

  test('a stock solution counts as the alkali and the water it holds', async () => {
    const { result } = await answer('700 g olive oil, 300 g coconut oil, 276 g 50 % NaOH solution, 150 g water');
    expect(result.recipe.alkali).toEqual([{ id: 'naoh', grams: 138, purity: 1 }]);
    expect(result.recipe.water.grams).toBe(288);
  });

  test('a range of purity widens the interval, a single figure does not', async () => {
    const width = async (text: string) => {
      const { superfat } = (await answer(text)).result;
      return superfat.high - superfat.low;
    };
    const one = await width('500 g lard, 105 g KOH (90 %), 300 g water');
    expect(await width('500 g lard, 105 g KOH (85-95 %), 300 g water')).toBeGreaterThan(one * 1.2);
  });
});

describe('verdicts', () => {
  // 70.4 g leave nothing over
  test.each([
    ['excess-alkali', 100],
    ['excess-alkali', 71],
    ['thin-margin', 69.5],
    ['usual', 66],
    ['fat-rich', 60],
    ['alkali-short', 50],
  ])('%s: %d g to 500 g lard', async (verdict, grams) => {
    expect((await answer(`500 g lard, ${grams} g NaOH, 150 g water`)).result.verdict).toBe(verdict);
  });

  test('alkali left over is never called a fit', async () => {
    for (let grams = 68; grams < 120; grams += 1) {
      const { result, lead, caution } = await answer(`500 g lard, ${grams} g NaOH, 150 g water`);
      if (result.verdict === 'usual') continue;
      expect(lead).not.toContain('fits');
      if (result.verdict === 'excess-alkali') {
        expect(lead).toContain('oo much alkali');
        expect(caution[0]).toContain('do not use it');
      }
    }
  });
});

describe('what contradicts itself is told', () => {
  test.each([
    [
      '500 g olive, 300 g coconut, 200 g lard, 122 g NaOH, 300 g water, 5 % superfat',
      'You wrote 5 % superfat; these amounts give',
    ],
    [
      '700 g olive, 300 g coconut, 142 g NaOH, 200 g water, 33 % lye concentration',
      'You wrote a 33 % solution; these amounts give 41.5 %',
    ],
    [
      '700 g olive, 300 g coconut, 142 g NaOH, 200 g water, water to lye ratio 2.5:1',
      'You wrote 2.5 g water to 1 g alkali; these amounts give 1.41 g',
    ],
    ['700 g olive, 300 g coconut, 142 g NaOH, 100 g water', 'Too little water to dissolve the alkali'],
    ['700 g olive, 300 g coconut, 215 g NaOH, 450 g water', 'Is it potassium hydroxide (KOH)?'],
    ['60 g olive oil, 7.6 g NaOH, 18 g water', 'A scale that shows 1 g is coarse'],
    [
      '500 g neem oil, 64 g NaOH, 150 g water',
      'From memory, not yet read in a source: the saponification value of neem oil',
    ],
  ])('%s', async (text, told) => expect((await answer(text)).all).toContain(told));

  test('what agrees within its own spread is not', async () => {
    const { warnings } = await answer(
      '500 g lard, 67 g NaOH, 134 g water, 5 % superfat, 33 % lye concentration, water to lye ratio 2:1',
    );
    expect(warnings).toEqual([]);
  });
});

describe('options', () => {
  test('superfat asked for, scale and purity are followed', async () => {
    const { result, all } = await answer('check superfat=8 purity=97% step=0.1g 500 g lard, 66 g NaOH, 150 g water');
    expect(result.recipe.alkali[0]?.purity).toBe(0.97);
    expect(all).toMatch(/to leave at least 8 %/);
    expect(all).not.toContain('a scale that shows');
  });

  test('ounces for who asks for them', async () => {
    expect((await answer('check unit=oz 500 g lard, 66 g NaOH, 150 g water')).all).toContain(
      '2.33 oz (66 g) sodium hydroxide (NaOH)',
    );
  });

  test('fats without any alkali go to lye', async () => {
    expect((await answer('check 500 g lard')).command).toBe('lye');
  });
});

test('an acid of another strength is called by it', async () => {
  const { body } = await answer('500 g olive oil, 300 g coconut oil, 115 g NaOH, 200 g water, 20 g lactic acid 80 %');
  expect(JSON.stringify(body)).toContain('lactic acid (80 %) 20 g');
});

test('a purity that was written is said back', async () => {
  const { body } = await answer('500 g olive oil, 300 g coconut oil, 115 g NaOH 97 % pure, 250 g water');
  expect(JSON.stringify(body)).toContain('97 % pure');
});

test('a superfat of 20 % that was meant is no fault', async () => {
  const meant = await answer('800 g coconut oil, 117 g NaOH, 280 g water, 20 % superfat');
  expect(meant.lead).toContain('close to the 20 % you want');
  expect(JSON.stringify(meant.body)).toContain('Nothing to change for 20 %');
  expect((await answer('800 g coconut oil, 110 g NaOH, 280 g water')).lead).toContain('Too little alkali');
});

test('what a stock solution was before water was added is no contradiction', async () => {
  const { warnings } = await answer(
    'My stock solution is 50 % sodium hydroxide. 800 g olive oil, 400 g coconut oil, 360 g of the stock lye, 190 g water',
  );
  expect(warnings.join()).not.toContain('solution; these amounts give');
});

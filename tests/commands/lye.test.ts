import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';

interface Result {
  readonly recipe: {
    readonly fats: readonly { readonly id: string; readonly grams: number }[];
    readonly alkali: readonly { readonly id: string; readonly grams: number; readonly purity: number }[];
    readonly water: { readonly grams: number };
  };
  readonly demand: { readonly naohGrams: number; readonly kohGrams: number };
  readonly superfat: { readonly nominal: number };
  readonly verdict: string;
}

const bot = createBot();

async function lye(text: string) {
  const reply = await bot.ask({ platform: 'test', place: 'here', person: 'someone', text });
  if (!reply.ok) throw new Error(`${reply.fault.code}: ${reply.fault.message}`);
  expect(reply.answer.command).toBe('lye');
  return { ...reply.answer, result: reply.answer.result as unknown as Result };
}

describe('defaults, each said', async () => {
  // 500 × 0.190 + 200 × 0.2565 = 146.3 g KOH; × 39.997 / 56.105 = 104.30 g; × 0.95 = 99.08 g
  const { result, assumptions, lead } = await lye('lye 500 g olive oil, 200 g coconut oil');

  test('5 %, pure sodium hydroxide, 33 % solution, 1 g', () => {
    expect(result.demand.naohGrams).toBeCloseTo(104.3, 1);
    expect(result.recipe.alkali).toEqual([{ id: 'naoh', grams: 99, purity: 1 }]);
    // 99 × 67 / 33 = 201
    expect(result.recipe.water.grams).toBe(201);
    expect(lead).toContain('Weigh 99 g sodium hydroxide (NaOH) and 201 g water');
    const said = assumptions.join('\n');
    for (const taken of [
      '5 % superfat',
      'sodium hydroxide (NaOH), pure',
      '33 % lye solution',
      'scale that shows 1 g',
    ]) {
      expect(said).toContain(taken);
    }
    for (const line of assumptions) expect(line).toMatch(/^I took /);
  });

  test('potassium hydroxide is taken as 90 %, and the other purities are told', async () => {
    const soft = await lye('lye alkali=koh 700 g sunflower oil, 300 g coconut oil');
    expect(soft.result.recipe.alkali[0]).toMatchObject({ id: 'koh', purity: 0.9 });
    expect(soft.assumptions.join('\n')).toMatch(/90 % pure\. With this amount, 85 % would leave .* 100 % −/);
  });

  test('nothing is taken that was said', async () => {
    const { assumptions: none } = await lye(
      'lye superfat=8 purity=98% concentration=30% step=0.1g 500 g lard with NaOH',
    );
    expect(none).toEqual([]);
  });
});

describe('water', () => {
  test.each([
    ['lye 500 g lard, water=38%', 190],
    ['lye 500 g lard, ratio 2:1', 132],
    ['lye 500 g lard, 25 % solution', 198],
    ['lye water=170g 500 g lard', 170],
  ])('%s', async (text, grams) => expect((await lye(text)).result.recipe.water.grams).toBe(grams));
});

test('two alkalis share the demand, or the weight where that is asked', async () => {
  const part = async (text: string) => {
    const { result } = await lye(text);
    const grams = (id: string) => result.recipe.alkali.find((one) => one.id === id)?.grams ?? 0;
    return { naoh: grams('naoh'), koh: grams('koh') };
  };
  const byDemand = await part('lye koh=60% step=0.01g 1000 g lard');
  // moles: 60 % of them potassium hydroxide of 90 %
  const moles = byDemand.naoh / 39.997 + (byDemand.koh * 0.9) / 56.105;
  expect((byDemand.koh * 0.9) / 56.105 / moles).toBeCloseTo(0.6, 3);
  const byWeight = await part('lye koh=60% by=weight step=0.01g 1000 g lard');
  expect(byWeight.koh / (byWeight.koh + byWeight.naoh)).toBeCloseTo(0.6, 3);
});

test('without a share, two alkalis are a question', async () => {
  const reply = await bot.ask({
    platform: 'test',
    place: 'here',
    person: 'someone',
    text: 'how much NaOH and KOH for 500 g lard?',
  });
  expect(reply).toMatchObject({ ok: false, fault: { code: 'unclear', candidates: ['NaOH', 'KOH'] } });
});

test('no margin is told, never called usual', async () => {
  const { lead, caution, result } = await lye('500 g coconut oil, 0 % superfat. How much NaOH?');
  expect(result.verdict).toBe('thin-margin');
  expect(lead).toContain('excess alkali');
  expect(caution.join(' ')).toContain('Raw soap still burns');
});

test('what it gives to weigh, checked, is what it said: superfat never below the one asked, above it by less than a step', async () => {
  const fat = fc.constantFrom('lard', 'olive oil', 'coconut oil', 'tallow', 'castor oil');
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(fc.integer({ min: 50, max: 3000 }), fat), { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 0, max: 20 }),
      fc.constantFrom('1g', '0.1g', '5g'),
      async (rows, superfat, step) => {
        const fats = [...new Map(rows.map(([grams, name]) => [name, grams]))]
          .map(([name, grams]) => `${grams} g ${name}`)
          .join(', ');
        const { result } = await lye(`lye superfat=${superfat} step=${step} ${fats}`);
        const asked = superfat / 100;
        expect(result.superfat.nominal).toBeGreaterThanOrEqual(asked - 1e-12);
        const one = Number.parseFloat(step) / result.demand.naohGrams;
        expect(result.superfat.nominal).toBeLessThan(asked + one + 1e-9);
        const [alkali] = result.recipe.alkali;
        const reply = await bot.ask({
          platform: 'test',
          place: 'here',
          person: 'someone',
          text: `check step=${step} ${fats}, ${alkali?.grams} g NaOH, ${result.recipe.water.grams} g water`,
        });
        if (!reply.ok) throw new Error(reply.fault.message);
        expect((reply.answer.result as unknown as Result).superfat.nominal).toBeCloseTo(result.superfat.nominal, 9);
      },
    ),
    { numRuns: 100 },
  );
});

describe('water beside milk and vinegar', () => {
  const fats = '750 g lard, 250 g coconut';

  test('that was weighed is what to weigh', async () => {
    const { result } = await lye(`${fats}, water 150 g, goat milk 150 g. How much lye?`);
    expect(result.recipe.water.grams).toBe(150);
  });

  test('that a rule asks for is less by what they bring', async () => {
    // vinegar of 5 % is 95 % water: 100 g bring 95 g
    const plain = await lye(`${fats}, 30 % lye solution. How much lye?`);
    const sour = await lye(`${fats}, 100 g vinegar, 30 % lye solution. How much lye?`);
    const [first, second] = [plain, sour].map(({ result: { recipe } }) => ({
      water: recipe.water.grams,
      asked: ((recipe.alkali[0]?.grams ?? 0) * 7) / 3,
    }));
    expect(first?.water).toBeCloseTo(first?.asked ?? 0, -0.3);
    expect(second?.water).toBeCloseTo((second?.asked ?? 0) - 95, -0.3);
  });

  test.each(['goat milk', 'vinegar'])('is none where %s makes a lye of usual strength', async (liquid) => {
    const { result, assumptions } = await lye(`${fats}, 330 g ${liquid} in place of all the water. How much lye?`);
    expect(result.recipe.water.grams).toBe(0);
    expect(assumptions.join('\n')).toMatch(new RegExp(`no water beside the ${liquid}.*: it brings enough`));
  });
});

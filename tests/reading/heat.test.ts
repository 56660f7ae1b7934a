// What each figure of a question about heat is read as. Expected values are what the sentence says.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadHeat } from '../../src/catalogue/heat.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { heatQuestion } from '../../src/reading/heat/ask.ts';
import { Claims } from '../../src/reading/heat/claims.ts';
import { cookOf } from '../../src/reading/heat/cook.ts';
import { coolOf } from '../../src/reading/heat/cool.ts';
import { heatLine } from '../../src/reading/heat/line.ts';
import { mixOf } from '../../src/reading/heat/mix.ts';
import { potOf } from '../../src/reading/heat/pot.ts';
import { scentOf } from '../../src/reading/heat/scent.ts';
import { solutionOf } from '../../src/reading/heat/solution.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const { pots, materials } = loadHeat();
const claims = (text: string): Claims => new Claims(heatLine(reader, text));
const pot = (text: string) => potOf(claims(text), pots, materials.values());

describe('the line', () => {
  test('figures and things become numbered letters, words stay', () => {
    expect(heatLine(reader, 'Pot was 92 °C at 0 min, 86 at 10 min').text).toBe(' pot was T0 at M1 , N2 at M3 ');
    expect(heatLine(reader, '150 g NaOH in 350 g water + ice, lavender').text).toBe(' G0 A1 in G2 W3 + I4 , S5 ');
  });

  test.each([
    ['at -18 °C', -18],
    ['at -10C', -10],
    ['at 5 c', 5],
    ['at 14F', -10],
    ['at 212 °F', 100],
    ['at eighty degrees', 80],
  ])('%s', (text, celsius) => {
    const line = heatLine(reader, `ice ${text}`);
    const [figure] = [...line.figures.values()];
    expect(figure?.value).toBeCloseTo(celsius, 6);
  });

  test('a bare figure takes the scale of the text, or what its size says', () => {
    const target = (text: string) => coolOf(claims(text)).targetC;
    expect(target('pot at 190 F, when is it 150')).toBeCloseTo(65.556, 2);
    expect(target('pot at 90 °C, when is it 65')).toBe(65);
    expect(target('it was 190 at 0 min and 182 at 10 min, when is it 150')).toBeCloseTo(65.556, 2);
  });
});

describe('a pot in plain words', () => {
  test.each([
    ['in a 6 l slow cooker, lid off', { kind: 'slow-cooker', litres: 6, lid: 'off' }],
    ['5 quart crockpot with the lid half on', { kind: 'slow-cooker', litres: 4.73, lid: 'half' }],
    ['a steel pot with the lid on', { kind: 'steel-pot', lid: 'on' }],
    ['a mould of wood wrapped in a towel', { kind: 'wooden-mould', insulation: 'towel' }],
    ['silicone mold, covered, under a blanket', { kind: 'silicone-mould', lid: 'on', insulation: 'blanket' }],
    ['enamel pot, lid ajar', { kind: 'enamel-pot', lid: 'half' }],
    ['stockpot of 10 litres, uncovered', { kind: 'steel-pot', litres: 10, lid: 'off' }],
    ['a pp jug, no lid', { kind: 'jug', lid: 'off' }],
    ['glass bowl without a lid', { kind: 'bowl', material: 'glass', lid: 'off' }],
    ['a stoneware jug of 500 g', { kind: 'jug', material: 'stoneware', grams: 500 }],
    ['a galvanised bucket', { kind: 'bucket', material: 'zinc' }],
    ['the window is open, plastic bucket', { kind: 'bucket', lid: null }],
    ['with the lid taken off', { lid: 'off' }],
    ['a 3 gallon stockpot', { kind: 'steel-pot', litres: 11.36 }],
  ] as const)('%s', (text, expected) => {
    const found = pot(`soap ${text}`);
    expect({ ...found, litres: found.litres === null ? null : Math.round(found.litres * 100) / 100 }).toMatchObject(
      expected,
    );
  });

  test('"pot" alone describes nothing', () => {
    expect([pot('pot is at 88 °C').described, pot('steel pot is at 88 °C').described]).toEqual([false, true]);
  });
});

describe('temperatures by their role', () => {
  test.each([
    ['room 20', 20],
    ['room is at 22 °C', 22],
    ['the shed is 12 °C', 12],
    ['in an 18 °C workshop', 18],
    ["it's 25 in the kitchen", 25],
    ['ambient temp 19', 19],
  ])('room: %s', (text, celsius) => {
    expect(coolOf(claims(`pot at 90 °C, ${text}, when is it 60 °C`))).toMatchObject({
      roomC: celsius,
      targetC: 60,
      nowC: 90,
    });
  });

  test.each([
    ['how long until it is at 60 °C', 60],
    ['target 55', 55],
    ['when does it drop under 65', 65],
    ['time to 62 °C', 62],
    ['when can I pour at 50 °C?', 50],
    ['I want it at 48', 48],
    ['cool it to 38-43 °C', 40.5],
  ])('target: %s', (text, celsius) => {
    expect(coolOf(claims(`soap at 90 °C, room 20 °C. ${text}`)).targetC).toBe(celsius);
  });

  test.each([
    ['150 g NaOH in 350 g water at 10 °C', { waterC: 10, alkaliC: null }],
    ['150 g NaOH and 350 g water, both at 20 °C', { waterC: 20, alkaliC: 20 }],
    ['NaOH at 30 °C, water at 5 °C', { waterC: 5, alkaliC: 30 }],
    ['150 g NaOH, 350 g of 4 °C water, keep it under 60 °C', { waterC: 4, limitC: 60 }],
    ['150 g NaOH, 350 g water, no hotter than 70', { limitC: 70 }],
    ['how long until 150 g NaOH in 350 g water is at 40 °C', { targetC: 40, limitC: null, asksTime: true }],
    ['200 g ice at -18 °C, 100 g NaOH', { iceC: -18, iceGrams: 200 }],
    ['half of the water as ice', { iceShare: 0.5 }],
    ['a third of the 300 g water is ice', { iceShare: 1 / 3 }],
    ['240 g water of which 100 g is ice', { iceGrams: 100 }],
    ['does all the ice melt?', { iceShare: null, iceGrams: null }],
  ] as const)('solution: %s', (text, expected) => {
    expect(solutionOf(claims(text))).toMatchObject(expected);
  });

  test.each([
    ['700 g olive oil at 50 °C meets lye of 100 g NaOH and 230 g water at 30 °C', 50, 30],
    ['lye (140 g NaOH, 300 g water, 45 °C) into 1 kg coconut oil at 38 °C', 38, 45],
    ['40 °C fats, 35 °C lye', 40, 35],
    ['oils at 110 F and lye at 90 F', 43.333, 32.222],
    ['both at 38 °C: 500 g lard, 66 g NaOH, 150 g water', 38, 38],
    ['the lye is 33, the oils are 44 °C', 44, 33],
  ])('mix: %s', (text, fats, lye) => {
    const { fatsC, solutionC } = mixOf(claims(text));
    expect([fatsC, solutionC].map((one) => Math.round((one ?? Number.NaN) * 1000) / 1000)).toEqual([fats, lye]);
  });

  test('the cook: temperature and minutes', () => {
    expect(cookOf(claims('it has been cooking for 35 minutes at 90 °C, kitchen 20 °C'))).toMatchObject({
      temperatureC: 90,
      minutes: 35,
    });
  });
});

describe('a blend', () => {
  const shares = (text: string) =>
    scentOf(claims(text)).parts.map(({ id, share }) => [id, Math.round(share * 1000) / 1000]);

  test.each([
    [
      'lavender and lemongrass EO 2:1',
      [
        ['lavender', 0.667],
        ['lemongrass', 0.333],
      ],
    ],
    [
      '2 parts lavender, 1 part lemon',
      [
        ['lavender', 0.667],
        ['lemon', 0.333],
      ],
    ],
    [
      'lavender 2 parts and lemon 1 part',
      [
        ['lavender', 0.667],
        ['lemon', 0.333],
      ],
    ],
    [
      '50% peppermint 50% rosemary for 1 kg oils at 3 %',
      [
        ['peppermint', 0.5],
        ['rosemary', 0.5],
      ],
    ],
    [
      '20 g lavender + 10 g patchouli',
      [
        ['lavender', 0.667],
        ['patchouli', 0.333],
      ],
    ],
    [
      'lavender, cedarwood and patchouli 3:2:1',
      [
        ['lavender', 0.5],
        ['cedarwood-atlas', 0.333],
        ['patchouli', 0.167],
      ],
    ],
    [
      '3% lavender, 1% clove bud of 900 g oils',
      [
        ['lavender', 0.75],
        ['clove-bud', 0.25],
      ],
    ],
  ])('%s', (text, expected) => {
    expect(shares(text)).toEqual(expected);
  });

  test('load, weight of the fat and data sheet', () => {
    expect(
      scentOf(claims('my suppliers data sheet says flash point 71 c for the lavender, 700 g oils at 3 %')),
    ).toMatchObject({
      load: 0.03,
      fatGrams: 700,
      parts: [{ id: 'lavender', flashC: 71 }],
    });
    expect(scentOf(claims('lavender (70 °C) and lemon (48 °C), 500 g oils')).parts.map(({ flashC }) => flashC)).toEqual(
      [70, 48],
    );
    expect(scentOf(claims('3 % lavender for a 1.2 kg batch'))).toMatchObject({
      load: 0.03,
      fatGrams: 1200,
      ofBatch: true,
    });
  });
});

test.each([
  ['Olive 700 g, NaOH 96 g, water 210 g. Mix at 40 °C, then cook 2 h at 90 °C. Is my lye right?', null],
  ['16 oz lard, 2.2 oz lye, 5 oz water, 95 F', null],
  ['whats 200 F in celsius', null],
  ['3/4 cup lavender oil in grams', null],
  ['how much water for 140 g NaOH to make a 30 % solution', null],
  ['500 g olive, 200 g coconut, 25 g lavender EO, 95 g NaOH, 210 g water', null],
  ['it is too hot today', null],
  ['how hot does 100 g NaOH in 250 g water get', 'solution'],
  ['flash point of lavender', 'scent'],
  ['pot 90 °C, when is it 60 °C', 'cool'],
  ['stages of hot process?', 'cook'],
  ['500 g olive at 40 °C, 64 g NaOH in 140 g water at 30 °C, what temp when mixed', 'mix'],
])('which question: %s', (text, expected) => {
  expect(heatQuestion(reader, text, readRecipe(reader, text))).toBe(expected);
});

test('any text is read in bounded time, and every figure claimed is finite', () => {
  const words = fc.constantFrom(
    ...'at until 92 °C F 0 min 10 g kg NaOH water ice lavender olive oil pot lid on off half room 20 % 2:1 when how long hot every ago now 14:05 t=0 - / , . ? \n ½ 1e400 0 -5 flash point to from in a the'.split(
      ' ',
    ),
  );
  fc.assert(
    fc.property(fc.array(fc.oneof(words, fc.string({ maxLength: 8 })), { maxLength: 60 }), (parts) => {
      const text = parts.join(' ');
      const since = performance.now();
      const cooled = coolOf(claims(text));
      const numbers = [
        cooled.nowC,
        cooled.targetC,
        cooled.roomC,
        ...cooled.readings.flatMap(({ minute, temperatureC }) => [minute, temperatureC]),
        ...Object.values(solutionOf(claims(text))),
        mixOf(claims(text)).solutionC,
        ...scentOf(claims(text)).parts.map(({ share }) => share),
        cookOf(claims(text)).temperatureC,
        pot(text).litres,
      ];
      for (const value of numbers) if (typeof value === 'number') expect(Number.isFinite(value), text).toBe(true);
      heatQuestion(reader, text, readRecipe(reader, text));
      expect(performance.now() - since).toBeLessThan(500);
    }),
    { numRuns: 300 },
  );
});

test('a long text costs no more than a long line', () => {
  const since = performance.now();
  for (const part of ['at 92 °C 10 min ', 'when is it ', 'lavender 2:1 and ', '- - - - ', 'room room room '])
    coolOf(claims(part.repeat(10_000)));
  expect(performance.now() - since).toBeLessThan(2000);
});

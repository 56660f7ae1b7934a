import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createBot, renderPlain } from '../../src/index.ts';
import { convert, units } from '../../src/units/units.ts';

const bot = createBot();
const ask = (text: string) => bot.ask({ platform: 'test', place: 'convert', person: text, text });
const said = async (text: string): Promise<string> => {
  const reply = await ask(text);
  return renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });
};
const figure = async (text: string): Promise<{ readonly value: number; readonly unit: string }> => {
  const reply = await ask(text);
  if (!reply.ok) throw new Error(`${text}: ${reply.fault.message}`);
  return reply.answer.result as { readonly value: number; readonly unit: string };
};

describe('one line, readable at arm’s length', () => {
  test.each([
    ['whats 1 lb 4 oz in grams', '1 lb 4 oz is 567 g.'],
    ['110 F in C', '110 °F is 43.3 °C.'],
    ['three quarters of a pound in grams', '3/4 lb is 340.2 g.'],
    ['3 quarters of a pound in grams', '3/4 lb is 340.2 g.'],
    ['3 quarts in litres', '3 US qt is 2.839 L; with imperial measure: 3.41 L.'],
    [
      '3/4 cup shea in grams',
      'About 161 g (158 to 165 by lot): 3/4 US cup (177 mL) of melted shea butter; with metric cups (250 mL): 171 g.',
    ],
    ['500 ml in cups', '500 mL is 2.113 US cups, or 2 metric cups (250 mL).'],
    ['1 uk pint in ml', '1 imperial pt is 568.3 mL.'],
    ['1 pint in ml', '1 US pt is 473.2 mL; with imperial measure: 568.3 mL.'],
    ['2 tbsp in ml', '2 US tbsp is 29.57 mL; with Australian spoons (20 mL): 40 mL.'],
    ['how many tablespoons in a cup', '1 US cup is 16 US tbsp.'],
    ['600 g in lb and oz', '600 g is 1.323 lb, or 21.16 oz.'],
    [
      '1 cup of honey in grams',
      'About 335 g (326 to 343 by brand): 1 US cup (237 mL) of honey; with metric cups (250 mL): 354 g.',
    ],
  ])('%s', async (text, line) => expect(await said(text)).toBe(line));
});

describe('asks once, and says what would settle it', () => {
  test.each([
    ['3/4 cup in grams', 'unclear', 'of what?'],
    ['8 oz in ml', 'unclear', 'If you mean fluid ounces: 8 US fl oz is 236.6 mL.'],
    ['1 cup in oz', 'unclear', 'If you mean fluid ounces: 8 US fl oz.'],
    ['1 cup of vegetable oil in grams', 'unclear', 'Any of them makes'],
    ['1 cup kukui in g', 'unclear', 'Most oils weigh 0.91 to 0.93 g per mL'],
    ['500 in ounces', 'unclear', 'which unit'],
    ['2-3 cups in ml', 'unclear', '2 US cup is 473.2 mL, 3 US cup is 709.8 mL'],
    ['-300 c in f', 'impossible', 'absolute zero'],
    ['-1 g in oz', 'impossible', 'below nothing'],
    ['3 kg in degrees celsius', 'impossible', 'one is a weight, the other a temperature'],
    ['how many grams in a metre', 'impossible', 'one is a length, the other a weight'],
    [`${'9'.repeat(330)} g in kg`, 'impossible', 'no figure I can reckon with'],
  ])('%s', async (text, code, words) => {
    const reply = await ask(text);
    expect(reply.ok ? reply.answer.lead : reply.fault.code).toBe(code);
    expect(await said(text)).toContain(words);
  });

  test('lye by the spoon is not turned into grams, and carries its caution', async () => {
    for (const text of [
      '1 tbsp of lye in grams',
      '1 cup NaOH in oz',
      '100 g KOH in cups',
      '500 ml lye solution in g',
    ]) {
      const reply = await ask(text);
      if (reply.ok) throw new Error(`${text}: ${reply.answer.lead}`);
      expect([reply.fault.code, reply.fault.caution.length > 0]).toEqual(['unclear', true]);
    }
    const weighed = await ask('5 oz lye in grams');
    expect(weighed.ok && weighed.answer.caution.length).toBeGreaterThan(0);
  });
});

describe('properties', () => {
  const sized = units.filter(({ id }) => !/^(month|yr)$/.test(id));
  const pair = fc
    .constantFrom(...sized)
    .chain((from) =>
      fc.tuple(fc.constant(from), fc.constantFrom(...sized.filter(({ dimension }) => dimension === from.dimension))),
    );

  test('a litre of water weighs what the tables say at 20 °C', async () => {
    // CRC Handbook, 20 °C: 0.99821 g/mL
    expect((await figure('1 litre of water in grams')).value).toBeCloseTo(998.2, 1);
  });

  test('there and back is the identity', () => {
    fc.assert(
      fc.property(pair, fc.double({ min: 0, max: 1e6, noNaN: true }), ([from, to], value) => {
        const back = convert(convert(value, from, to), to, from);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(value), 1000));
      }),
    );
  });

  test('through the question, too: what came out goes back', async () => {
    const spoken = sized.filter(({ id, dimension }) => dimension !== 'time' && !/^(in3|K|m)$/.test(id));
    const asked = fc.tuple(
      fc
        .constantFrom(...spoken)
        .chain((from) =>
          fc.tuple(
            fc.constant(from),
            fc.constantFrom(...spoken.filter(({ id, dimension }) => dimension === from.dimension && id !== from.id)),
          ),
        ),
      fc.integer({ min: 1, max: 5000 }),
    );
    const word = ({ names, id }: (typeof units)[number]): string => names.find((name) => name.length > 3) ?? id;
    await fc.assert(
      fc.asyncProperty(asked, async ([[from, to], count]) => {
        const there = await figure(`convert ${count} ${word(from)} to ${word(to)}`);
        expect(there.unit).toBe(to.id);
        expect(Math.abs(convert(there.value, to, from) - count)).toBeLessThan(1e-9 * Math.max(count, 1000));
      }),
    );
  });

  test.each(['shea butter', 'olive oil', 'honey', 'water', 'table salt', 'goat milk', 'beeswax'])(
    'by weight and by volume agree: %s',
    async (name) => {
      const grams = (await figure(`500 ml ${name} in grams`)).value;
      expect((await figure(`${grams} g ${name} in ml`)).value).toBeCloseTo(500, 6);
      expect((await figure(`2 cups ${name} in g`)).value).toBeCloseTo((grams / 500) * 2 * 236.5882365, 6);
    },
  );
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import type { Catalogue, Fat } from '../../src/catalogue/types.ts';
import { toCsv, toJson, toText } from '../../src/commands/recipes/forms.ts';
import { isForm, readForm } from '../../src/commands/recipes/read-forms.ts';
import type { Amounts, SavedRecipe } from '../../src/commands/recipes/saved.ts';
import { makeReader } from '../../src/reading/index.ts';
import { isRecipes } from '../contract/schemas.ts';
import { house, resultOf, textOf } from './talk.ts';

const lard = '500 g lard, 66 g NaOH, 150 g water';
const olive = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';
const namesOf = (result: Readonly<Record<string, unknown>>): readonly string[] =>
  (result['recipes'] as readonly { readonly name: string }[]).map(({ name }) => name);

describe('a recipe is kept', () => {
  test('from a text, listed, and shown with the figures of a check', async () => {
    const { ask } = house({ now: () => Date.UTC(2026, 10, 3) });
    expect(resultOf(await ask(`recipe save Mild bar: ${olive}`))).toMatchObject({ name: 'Mild bar', saved: true });
    expect(resultOf(await ask('recipe list'))['recipes']).toEqual([
      { name: 'Mild bar', savedAt: '2026-11-03T00:00:00.000Z' },
    ]);
    const shown = resultOf(await ask('recipe show mild  BAR'));
    const checked = resultOf(await ask(`check ${olive}`, { person: 'bea' }));
    expect(shown['recipe']).toMatchObject({ name: 'Mild bar', ...(checked['recipe'] as object) });
    expect(shown['superfat']).toEqual(checked['superfat']);
  });

  test('from the last checked answer, in the words that people use', async () => {
    const { ask } = house();
    await ask(lard);
    for (const [words, name] of [
      ['save this as Lard bar', 'Lard bar'],
      ['recipe save Second', 'Second'],
      ['please save it under the name Third', 'Third'],
      ['keep this recipe as Fourth', 'Fourth'],
    ] as const)
      expect(resultOf(await ask(words)), words).toMatchObject({ name, saved: true });
    expect(textOf(await ask('recipe show third'))).toContain('Lard: 500 g');
  });

  test('"save it" asks for a name, and takes any', async () => {
    const { ask } = house();
    await ask(lard);
    expect(textOf(await ask('save it'))).toContain('Under which name');
    expect(resultOf(await ask('The "good" one: 🧼'))).toMatchObject({ name: 'The "good" one: 🧼' });
  });

  test('what is asked next is about the recipe that was shown', async () => {
    const { ask } = house();
    await ask(`recipe save A: ${lard}`);
    await ask(`recipe save B: ${olive}`);
    await ask('recipe show A');
    expect(textOf(await ask('double it'))).toContain('1000 g fat');
    expect(textOf(await ask('recipe show B'))).toContain('Castor oil: 75 g');
    expect(resultOf(await ask('at 8 %'))['recipe']).toMatchObject({
      fats: [{ grams: 450 }, { grams: 225 }, { grams: 75 }],
    });
  });

  test('a question back about the text is answered, then it is kept', async () => {
    const { ask } = house();
    expect((await ask('recipe save Old one: lard 500, lye 66, water 150')).ok).toBe(false);
    expect(resultOf(await ask('grams'))).toMatchObject({ name: 'Old one', saved: true });
    expect(resultOf(await ask('recipe show old one'))['recipe']).toMatchObject({ fats: [{ id: 'lard', grams: 500 }] });
  });

  test('too much alkali is kept with the caution of such a recipe', async () => {
    const { ask } = house();
    const reply = await ask('recipe save Wrong: 500 g lard, 100 g NaOH, 150 g water');
    expect(textOf(reply)).toMatch(/too much alkali/);
    expect(textOf(await ask('recipe show wrong'))).toMatch(/not to be made/);
  });

  test('without a colon between name and recipe it is asked where the name ends, and nothing is kept', async () => {
    const { ask } = house();
    expect(textOf(await ask(`recipe save Mild bar ${lard}`))).toContain('Where does the name end');
    expect(namesOf(resultOf(await ask('recipe list')))).toEqual([]);
  });

  test('a post that begins with "Recipe" is read, and not taken for a request', async () => {
    const { ask } = house();
    for (const post of [`Recipe: ${lard}`, `Recipe\nLard 500 g\nNaOH 66 g\nWater 150 g`]) {
      const reply = await ask(post);
      expect(reply.ok && reply.answer.command, post).toBe('check');
    }
  });
});

describe('names', () => {
  test.each(['🧼🫧', '"Quoted"', "O'Hara’s <b>bar</b>", '@everyone', '油 の 石鹸', '../../etc/passwd', '50 % olive'])(
    'a name as it is: %s',
    async (name) => {
      const { ask } = house();
      await ask(`recipe save ${name}: ${lard}`);
      const [kept] = namesOf(resultOf(await ask('recipe list')));
      expect(kept).toBe(name.replace(/^"|"$/g, ''));
      expect((await ask(`recipe show ${name}`)).ok).toBe(true);
    },
  );

  test('of 10,000 characters: a clear word, nothing kept', async () => {
    const { ask } = house();
    expect(textOf(await ask(`recipe save ${'x'.repeat(10_000)}: ${lard}`))).toContain(
      'up to 100 characters; this one has 10000',
    );
    expect(namesOf(resultOf(await ask('recipe list')))).toEqual([]);
  });

  test('the same name twice is asked about; the first stays until it is answered', async () => {
    const { ask } = house();
    await ask(`recipe save Bar: ${lard}`);
    expect(textOf(await ask(`recipe save bar: ${olive}`))).toContain('Replace it?');
    expect(textOf(await ask('recipe show bar'))).toContain('Lard: 500 g');
    expect(textOf(await ask(`recipe save bar: ${olive}`))).toContain('Replace it?');
    expect(textOf(await ask('replace'))).toContain('Replaced "bar"');
    expect(textOf(await ask('recipe show bar'))).toContain('Castor oil: 75 g');
    expect(resultOf(await ask(`recipe save bar confirm=yes: ${lard}`))).toMatchObject({ saved: true });
  });

  test('an unknown one is met with the nearest', async () => {
    const { ask } = house();
    await ask(`recipe save Lavender bar: ${lard}`);
    for (const asked of ['lavendar bar', 'lavender', 'Lavender bra']) {
      const reply = await ask(`recipe show ${asked}`);
      expect(!reply.ok && reply.fault.candidates, asked).toEqual(['recipe show Lavender bar']);
    }
    expect(textOf(await ask('recipe show xyzzy'))).toContain('recipe list');
  });
});

describe('kept recipes change hands and names', () => {
  test('rename, copy and delete; what was not agreed to stays', async () => {
    const { ask } = house();
    await ask(`recipe save Salt to taste: ${lard}`);
    expect(textOf(await ask('recipe rename Salt to taste to Salt bar'))).toContain('"Salt to taste" is now "Salt bar"');
    await ask('recipe copy Salt bar to Other');
    expect(textOf(await ask('recipe rename Other to Salt bar'))).toContain('already');
    expect(textOf(await ask('recipe delete Salt bar'))).toContain('for good?');
    await ask('no');
    expect(namesOf(resultOf(await ask('recipe list')))).toEqual(['Other', 'Salt bar']);
    await ask('recipe confirm=yes delete Other');
    await ask('recipe copy Salt bar to Other');
    await ask('recipe delete Salt bar');
    expect(resultOf(await ask('yes'))).toMatchObject({ deleted: true });
    expect(namesOf(resultOf(await ask('recipe list')))).toEqual(['Other']);
  });

  test('shared is a copy: others see it, take copies, and cannot take it away', async () => {
    const { ask } = house();
    const bea = { person: 'bea' };
    await ask(`recipe save Bar: ${lard}`);
    expect((await ask('recipe show Bar', bea)).ok).toBe(false);
    await ask('recipe share Bar');
    expect(textOf(await ask('recipe show Bar', bea))).toContain('shared in this room');
    expect((await ask('recipe show Bar', { ...bea, place: 'other room' })).ok).toBe(false);
    expect(textOf(await ask('recipe unshare Bar', bea))).toContain('somebody else');
    expect(textOf(await ask('recipe delete Bar', bea))).toContain('somebody else');
    expect(resultOf(await ask('recipe copy Bar to Mine', bea))).toMatchObject({ copied: true });
    // the copy does not follow what becomes of the recipe
    await ask(`recipe save Bar confirm=yes: ${olive}`);
    expect(textOf(await ask('recipe show Bar', bea))).toContain('Lard: 500 g');
    expect(textOf(await ask('recipe unshare Bar'))).toContain('gone from this room');
    expect((await ask('recipe show Bar', bea)).ok).toBe(false);
    expect((await ask('recipe show Mine', bea)).ok).toBe(true);
  });

  test('a host may take a copy away; the copy says nothing of who shared it', async () => {
    const { ask, store } = house();
    await ask(`recipe save Bar: ${lard}`);
    await ask('recipe share Bar');
    const [copy] = await store.room({ platform: 'test', place: 'shed' }).list('recipe', { limit: 9 });
    expect(JSON.stringify(copy)).not.toMatch(/\bada\b/);
    expect(resultOf(await ask('recipe unshare Bar', { person: 'host', isHost: true }))).toMatchObject({
      shared: false,
    });
  });

  test('two are compared', async () => {
    const { ask } = house();
    await ask(`recipe save Salt and honey: ${lard}`);
    await ask(`recipe save Mild: ${olive}`);
    const text = textOf(await ask('recipe compare Salt and honey and Mild'));
    expect(text).toMatch(/Lard: 100 % · –/);
    expect(text).toMatch(/Superfat: 6.2 % · 8.8 %/);
  });

  test('a quota is said, and nothing is lost by it; the console has none', async () => {
    const quota = { recipes: 2, shared: 1, batches: 1, reminders: 1 };
    const { ask } = house({ quota });
    for (const name of ['A', 'B']) await ask(`recipe save ${name}: ${lard}`);
    expect(textOf(await ask(`recipe save C: ${lard}`))).toContain('up to 2 recipes for one person, and you have 2');
    expect(resultOf(await ask(`recipe save A confirm=yes: ${olive}`))).toMatchObject({ saved: true });
    await ask('recipe share A');
    expect(textOf(await ask('recipe share B'))).toContain('up to 1 shared recipe');
    const free = house({ quota: null });
    for (let k = 0; k < 600; k += 1)
      await free.store
        .of({ platform: 'test', person: 'ada' })
        .commit([{ do: 'put', kind: 'recipe', key: `x${k}`, data: { name: `x${k}` }, expects: 0 }]);
    expect(resultOf(await free.ask(`recipe save C: ${lard}`))).toMatchObject({ saved: true });
  });
});

describe('in a room that others read', () => {
  const open = { isPrivate: false };
  test('nothing of one’s own is shown, nor whether there is any', async () => {
    const { ask } = house();
    await ask(`recipe save Secret bar: ${lard}`);
    for (const text of [
      'recipe list',
      'recipe show Secret bar',
      'recipe show Secret ba',
      'recipe export Secret bar',
      'recipe export all',
    ]) {
      const said = textOf(await ask(text, open));
      expect(said, text).not.toContain('500 g');
      expect(said, text).toContain('direct message');
      if (text !== 'recipe show Secret bar' && text !== 'recipe export Secret bar')
        expect(said).not.toContain('Secret bar');
    }
  });

  test('what was shared is', async () => {
    const { ask } = house();
    await ask(`recipe save Bar: ${lard}`);
    await ask('recipe share Bar', open);
    expect(textOf(await ask('recipe list', open))).toContain('Bar');
    expect(textOf(await ask('recipe show Bar', open))).toContain('Lard: 500 g');
  });
});

const catalogue = loadCatalogue();
const reader = makeReader(catalogue);

/** The catalogue with another value for one fat. */
const withValue = (id: string, nominal: number): Catalogue => {
  const fat = catalogue.fats.get(id) as Fat;
  const changed = { ...fat, saponification: { ...fat.saponification, nominal } };
  return { ...catalogue, fats: new Map([...catalogue.fats, [id, changed]]) };
};

test('a value that has changed since is told, with both figures; of another fat it is not', async () => {
  const { ask, store } = house();
  await ask(`recipe save Bar: ${lard}`);
  const later = (id: string, nominal: number) =>
    house({ store: async () => store, catalogue: () => withValue(id, nominal) }).ask('recipe show Bar');
  expect(textOf(await later('lard', 201))).toMatch(/value of lard has changed .* was 197.5 .* now 201 /);
  expect(textOf(await later('olive-oil-virgin', 195))).not.toContain('has changed');
  expect(textOf(await ask('recipe show Bar'))).not.toContain('has changed');
});

describe('forms', () => {
  const names = fc.oneof(
    fc.constantFrom('Bar', '=1+1', '"quoted", 🧼', '@home', '油'),
    fc.stringMatching(/^[A-Z][a-z]{1,9}( \d)?$/),
  );
  /** Weights as scales show them. */
  const grams = fc.oneof(
    fc.integer({ min: 20, max: 900 }),
    fc.integer({ min: 200, max: 9000 }).map((tenths) => tenths / 10),
    fc.integer({ min: 2000, max: 90_000 }).map((hundredths) => hundredths / 100),
    fc.integer({ min: 2, max: 320 }).map((tenths) => (tenths / 10) * 28.349523125),
  );
  const some = (shelf: ReadonlyMap<string, unknown>, least: number, most: number) =>
    fc
      .uniqueArray(fc.constantFrom(...shelf.keys()), { minLength: least, maxLength: most })
      .chain((ids) => fc.tuple(...ids.map((id) => grams.map((weight) => ({ id, grams: weight })))));
  const purity = fc.constantFrom(1, 0.98, 0.9, 0.855).map((nominal) => ({ nominal, low: nominal, high: nominal }));
  const fatsAlone = new Map([...catalogue.fats].filter(([, { kind }]) => kind !== 'fatty-acid'));
  const amounts: fc.Arbitrary<Amounts> = fc
    .record({
      fats: some(fatsAlone, 1, 4),
      after: some(fatsAlone, 0, 1),
      purity,
      koh: fc.boolean(),
      waterGrams: fc.oneof(fc.constant(0), grams),
      liquids: some(catalogue.liquids, 0, 1),
      acids: fc.constantFrom<readonly { id: string; grams: number }[]>(
        [],
        [{ id: 'citric-acid', grams: 10 }],
        [{ id: 'vinegar', grams: 100 }],
      ),
      others: fc.constantFrom([], [{ name: 'Lavender EO', grams: 20 }]),
      superfat: fc.constantFrom(null, 0, 0.05, 0.085),
      scaleStepGrams: fc.constantFrom(1, 0.1, 0.01),
      ounces: fc.boolean(),
      // the margin of an alkali that soap can hold
      share: fc.double({ min: 0.88, max: 0.97, noNaN: true }),
    })
    .map(({ purity: pure, koh, share, acids, ...rest }) => {
      const fat =
        rest.fats.reduce(
          (sum, { id, grams: weight }) => sum + weight * (catalogue.fats.get(id)?.saponification.nominal ?? 0),
          0,
        ) / 1000;
      const own = (fat * (koh ? 1 : 40 / 56.1) * share) / pure.nominal;
      return {
        ...rest,
        alkali: [{ id: koh ? 'koh' : 'naoh', grams: Math.round(own * 10) / 10, purity: pure, assumed: false }],
        acids: acids.map((one) => ({ ...one, strength: catalogue.acids.get(one.id)?.strength ?? 1 })),
      } as Amounts;
    });

  test('the plain text is read by check as the same recipe', async () => {
    let read = 0;
    await fc.assert(
      fc.asyncProperty(amounts, async (recipe) => {
        const text = toText(recipe, catalogue, reader);
        const { bot } = house();
        const reply = await bot.ask({ platform: 'test', place: 'x', person: 'y', text });
        // what no soap can be is asked about, as it would be when pasted
        if (!reply.ok) return;
        read += 1;
        const result = reply.answer.result['recipe'] as {
          readonly [part: string]: readonly { readonly id: string; readonly grams: number }[];
        };
        for (const part of ['fats', 'after', 'liquids'] as const) {
          expect(result[part]?.map(({ id }) => id)).toEqual(recipe[part].map(({ id }) => id));
          for (const [k, one] of recipe[part].entries()) expect(result[part]?.[k]?.grams).toBeCloseTo(one.grams, 4);
        }
        expect(result['alkali']).toEqual([
          {
            id: recipe.alkali[0]?.id,
            grams: expect.closeTo(recipe.alkali[0]?.grams ?? 0, 4),
            purity: recipe.alkali[0]?.purity.nominal,
          },
        ]);
        expect((result['water'] as unknown as { grams: number }).grams).toBeCloseTo(recipe.waterGrams, 4);
      }),
      { numRuns: 60 },
    );
    expect(read).toBeGreaterThan(30);
  });

  test('JSON and CSV bring back what went out', async () => {
    await fc.assert(
      fc.asyncProperty(amounts, names, async (recipe, name) => {
        const saved = { ...recipe, name, savedAt: 0, checked: {} } as unknown as SavedRecipe;
        const json = toJson([saved]);
        expect(isForm(json)).toBe(true);
        for (const form of [json, await toCsv([saved], catalogue)]) {
          const read = await readForm(form, catalogue, 7);
          if (!read.ok) throw new Error(`${read.where}: ${read.why}\n${form}`);
          const [back] = read.recipes;
          const { ounces: _ounces, ...wanted } = recipe;
          expect(back).toMatchObject({ ...wanted, name: name.replace(/^"|"$/g, ''), savedAt: 7 });
        }
      }),
      { numRuns: 60 },
    );
  });

  test('an export fits the published schema, and comes back through import', async () => {
    const { ask } = house();
    await ask(`recipe save A: ${olive}, 20 g lavender EO, superfat 5 %`);
    await ask('recipe save =B: 17.5 oz olive oil, 2.3 oz NaOH, 5 oz water');
    const reply = await ask('recipe export all');
    if (!reply.ok) throw new Error();
    const files = reply.answer.body.flatMap((block) => (block.kind === 'file' ? [block] : []));
    expect(files.map(({ name }) => name)).toEqual(['recipes.json', 'recipes.csv']);
    isRecipes(JSON.parse(files[0]?.text ?? ''));
    for (const { text, name } of files) {
      const to = { person: name };
      expect(resultOf(await ask(`recipe import ${text}`, to))).toMatchObject({ saved: true, imported: ['=B', 'A'] });
      const [mine, theirs] = await Promise.all([ask('recipe show A'), ask('recipe show A', to)]);
      expect(resultOf(theirs)['superfat']).toEqual(resultOf(mine)['superfat']);
    }
    expect(textOf(await ask(`recipe import ${files[0]?.text}`))).toContain('Replace them?');
    expect(resultOf(await ask('keep both'))).toMatchObject({ imported: ['=B 2', 'A 2'] });
  });

  test.each([
    ['{"form":"lyeward-recipes"', 'no JSON'],
    ['{"form":"other","recipes":[]}', 'not of the form'],
    ['{"form":"lyeward-recipes","version":9,"recipes":[]}', 'version 9'],
    [
      '{"form":"lyeward-recipes","version":1,"recipes":[{"name":"A","fats":[{"id":"gold","grams":3}]}]}',
      'I know no "gold"',
    ],
    [
      '{"form":"lyeward-recipes","version":1,"recipes":[{"name":"A","fats":[{"id":"lard","grams":-3}]}]}',
      '-3 is no figure',
    ],
    [
      '{"form":"lyeward-recipes","version":1,"recipes":[{"name":"A","fats":[{"id":"lard","grams":"1e999"}]}]}',
      'is no figure',
    ],
    ['recipe,part,id,name,grams,share\nA,fat,lard,lard,many,', 'is no figure'],
    ['recipe,part,id\nA,fat,lard', 'column "name" is missing'],
    ['recipe,part,id,name,grams,share\nA,gold,lard,lard,5,', '"gold" is no part'],
  ])('what is broken is refused with its place, and nothing is kept: %s', async (text, why) => {
    const { ask } = house();
    expect(textOf(await ask(`recipe import ${text}`))).toContain(why);
    expect(namesOf(resultOf(await ask('recipe list')))).toEqual([]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { type Reply, renderPlain } from '../../src/index.ts';
import { renderMarkdown } from '../../src/render/markdown.ts';
import { talk } from './talk.ts';

const catalogue = loadCatalogue();
const textOf = (reply: Reply): string => renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });

interface Line {
  readonly id: string;
  readonly grams: number;
}
interface Told {
  readonly fats: readonly Line[];
  readonly after: readonly Line[];
  readonly alkali: readonly (Line & { readonly purity: number })[];
  readonly water: { readonly grams: number };
  readonly liquids: readonly Line[];
}
const recipeOf = (reply: Reply): Told => {
  if (!reply.ok) throw new Error(`${reply.fault.message}`);
  return (reply.answer.result as unknown as { readonly recipe: Told }).recipe;
};

/** The same things in the same order, each within the digits that were printed. */
function sameRecipe(got: Told, want: Told, slack: number): void {
  const near = (a: readonly Line[], b: readonly Line[]): void => {
    expect(a.map(({ id }) => id)).toEqual(b.map(({ id }) => id));
    for (const [k, { grams }] of b.entries()) expect(Math.abs((a[k]?.grams ?? 0) - grams)).toBeLessThanOrEqual(slack);
  };
  near(got.fats, want.fats);
  near(got.after, want.after);
  near(got.alkali, want.alkali);
  near(got.liquids, want.liquids);
  expect(got.alkali.map(({ purity }) => purity)).toEqual(want.alkali.map(({ purity }) => purity));
  expect(Math.abs(got.water.grams - want.water.grams)).toBeLessThanOrEqual(slack);
}

describe('a recipe written out', async () => {
  const summary = await talk(
    '500 g olive oil, 200 g coconut oil, 98 g naoh, 230 g water, 20 g lavender oil',
    'summary',
  );
  const text = textOf(summary);

  it('holds everything that others need', () => {
    expect(text).toMatch(/^Soap of olive oil \(virgin\) and coconut oil\./);
    // ounces by the avoirdupois ounce of NIST SP 811: 28.349523125 g
    expect(text).toContain('Olive oil (virgin): 500 g (17.64 oz), 71.4 %');
    expect(text).toContain('Sodium hydroxide (NaOH): 98 g (3.46 oz), pure');
    expect(text).toContain('Water: 230 g (8.11 oz)');
    expect(text).toMatch(/lavender oil: 20 g/i);
    expect(text).toContain('All together in the pot: 1028 g');
    expect(text).toMatch(/Superfat: 6 %.*expect 3\.\d to 8\.\d %/);
    expect(text).toMatch(/38 to 55 °C/);
    expect(text).toMatch(/cure 4 to 6 weeks/);
    expect(text).toMatch(/never water onto lye/);
  });

  it('is read back by another person as the very same recipe', async () =>
    sameRecipe(recipeOf(await talk(text)), recipeOf(summary), 0));

  it('is no accident, though it speaks of one', async () => {
    const reply = await talk(text);
    expect(reply.ok && reply.answer.command).toBe('check');
  });

  it('of a recipe with too much alkali says first that it must not be made', async () => {
    const reply = await talk('300 g lard, 100 g NaOH, 90 g water', 'summary');
    expect(textOf(reply)).toMatch(/^Not to be made/);
    expect(textOf(reply)).not.toMatch(/Pour into the mould/);
  });

  it('in ounces puts them first', async () => {
    expect(textOf(await talk('16 oz olive oil, 8 oz coconut oil, 3.4 oz lye, 8 oz water', 'summary'))).toContain(
      'Olive oil (virgin): 16 oz (453.6 g), 66.7 %',
    );
  });

  it('without a recipe asks for one', async () => {
    const reply = await talk('summary');
    expect(!reply.ok && reply.fault.code).toBe('unclear');
  });
});

describe('as a property', () => {
  const named = (shelf: ReadonlyMap<string, { readonly names: readonly string[] }>) =>
    fc.constantFrom(
      ...[...shelf.values()].map(({ names }) => names.find((name) => /^[a-z ]+$/.test(name)) ?? names[0] ?? ''),
    );
  const grams = (most: number) => fc.integer({ min: 20, max: most });
  const line = (name: string, weight: number, ounces: boolean): string =>
    `${name}: ${ounces ? `${(weight / 28.349523125).toFixed(2)} oz` : `${weight} g`}`;
  const recipe = fc.record({
    fats: fc.uniqueArray(named(catalogue.fats), { minLength: 1, maxLength: 4 }),
    weights: fc.array(fc.integer({ min: 150, max: 900 }), { minLength: 4, maxLength: 4 }),
    liquid: fc.option(fc.tuple(named(catalogue.liquids), grams(200))),
    acid: fc.option(fc.tuple(named(catalogue.acids), fc.integer({ min: 5, max: 15 }))),
    after: fc.option(fc.tuple(named(catalogue.fats), grams(60))),
    options: fc.constantFrom(
      '',
      'alkali=koh',
      'alkali=koh purity=85%',
      'koh=40%',
      'step=0.1g',
      'superfat=8',
      'ratio=2.5',
    ),
    ounces: fc.boolean(),
  });

  it('the summary read back is the recipe, in plain text and in Markdown', async () => {
    let posts = 0;
    await fc.assert(
      fc.asyncProperty(recipe, async ({ fats, weights, liquid, acid, after, options, ounces }) => {
        const lines = [
          ...fats.map((name, k) => line(name, weights[k] ?? 100, ounces)),
          ...[liquid, acid].flatMap((one) => (one ? [line(one[0], one[1], ounces)] : [])),
        ];
        const late = after ? `\nafter the cook:\n${line(after[0], after[1], ounces)}` : '';
        const post = `lye ${options}\n${lines.join('\n')}${late}`;
        const summary = await talk(post, 'summary');
        // a name that is not plain enough alone is asked for, and is no matter of this property
        if (!summary.ok) return;
        posts += 1;
        const unit = ounces ? 0.15 : 0.006;
        for (const text of [textOf(summary), renderMarkdown(summary.answer, { details: false })]) {
          const back = await talk(text);
          expect(back.ok ? '' : `${back.fault.message}\n${text}`).toBe('');
          sameRecipe(recipeOf(back), recipeOf(summary), unit);
        }
      }),
      { numRuns: 150 },
    );
    expect(posts).toBeGreaterThan(50);
  });
});

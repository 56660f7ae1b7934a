import { expect, test } from 'vitest';
import { createBot, renderPlain } from '../../src/index.ts';

/**
 * What a person reads, whole, in `tests/golden/`: read them as a beginner would. `npx vitest run -u` writes them anew.
 * The details stand below a line; they come only when asked for.
 */
const posts: Readonly<Record<string, string>> = {
  'class-bar': 'is my lye ok? 450 g olive, 225 g coconut, 75 g castor oil, 102 g lye, 230 g water',
  'too-much': '500 g lard, 100 g NaOH, 150 g water',
  'slightly-too-much': '700 g olive oil, 300 g coconut oil, 152 g NaOH, 300 g water',
  tight: 'check 500 g lard, 69 g NaOH, 150 g water',
  rich: 'check: 600 g lard, 200 g coconut oil, 97 g NaOH, 220 g water',
  short: '1 kg tallow, 90 g NaOH, 270 g water',
  ounces: '16 oz olive oil\n8 oz coconut oil\n2.6 oz castor oil\n3.6 oz lye\n8.1 oz water',
  'soft-soap': '700 g sunflower oil, 300 g coconut oil, 224 g KOH, 660 g water',
  'both-alkalis': '500 g olive, 200 g coconut, 60 g NaOH, 55 g KOH, 250 g water, 10 g citric acid',
  milk: '700 g olive oil, 300 g coconut oil, 138 g NaOH, 150 g water, 150 g goat milk, 20 g sugar',
  stock: '700 g olive oil, 300 g coconut oil, 276 g 50 % lye solution, 150 g water',
  'after-the-cook':
    '800 g lard, 200 g coconut oil, 144 g NaOH, 380 g water, 40 g shea after the cook, 25 g lavender EO',
  'small-batch': '60 g olive oil, 7.6 g NaOH, 18 g water',
  contradictions: '5 % superfat, 33 % solution: 500 g olive, 300 g coconut, 200 g lard, 122 g NaOH, 200 g water',
  'too-little-water': '700 g olive, 300 g coconut, 140 g NaOH, 100 g water',
  'no-water': '700 g olive, 300 g coconut, 140 g NaOH',
  'koh-for-naoh': '700 g olive oil, 300 g coconut oil, 215 g NaOH, 450 g water',
  'lye-usual': 'lye 500 g olive oil, 200 g coconut oil',
  'lye-soft-soap': 'lye alkali=KOH purity=90% ratio=3 700 g sunflower oil, 300 g coconut oil',
  'lye-none-over': 'coconut oil 500 g, 0 % superfat, for laundry. How much NaOH and water?',
  'lye-milk': 'lye 500 g lard, 250 g goat milk',
  'question-unit': 'olive 700, coconut 300, lye 140, water 300',
  'question-name': '500 g vegetable oil, 250 g coconut oil, 250 g lard, 142 g lye, 310 g water - ok?',
  'question-alkali': 'olive oil 700 g\ncoconut oil 300 g\nhydroxide 140 g\nwater 300 g',
  impossible: 'olive 500 g, coconut 250 g, superfat 110 %. How much lye?',
  refused: 'lye superfat=-30 500 g lard',
  eye: 'was weighing 500 g olive, 64 g NaOH, 140 g water and lye splashed in my eye!! is the recipe right?',
  safety: 'safety',
  help: 'help',
  'help-lye': 'help lye',
};

test.each(Object.entries(posts))('%s', async (name, post) => {
  const reply = await createBot().ask({ platform: 'test', place: 'golden', person: name, text: post });
  const said = reply.ok ? reply.answer : reply.fault;
  const details = reply.ok && reply.answer.details.length > 0;
  const below = details
    ? `\n\n~~~ details\n\n${renderPlain({ ...reply.answer, lead: '', body: reply.answer.details, details: [], assumptions: [], warnings: [], caution: [], actions: [] }, { details: false })}`
    : '';
  const page = `${post}\n\n~~~\n\n${renderPlain(said, { details: false })}${below}\n`;
  await expect(page).toMatchFileSnapshot(`../golden/${name}.txt`);
});

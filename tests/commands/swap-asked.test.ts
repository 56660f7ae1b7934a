import { describe, expect, test } from 'vitest';
import { createBot, renderPlain } from '../../src/index.ts';

const bot = createBot();

interface Result {
  readonly recipe: { readonly fats: readonly { readonly id: string; readonly grams: number }[] };
}

async function ask(text: string) {
  const reply = await bot.ask({ platform: 'test', place: 'here', person: text, text });
  if (!reply.ok) throw new Error(`${reply.fault.code}: ${reply.fault.message}`);
  const said = renderPlain(reply.answer, { details: false });
  return { said, fats: (reply.answer.result as unknown as Result).recipe.fats.map(({ id }) => id) };
}

const recipe = 'palm 300 g, olive 500 g, coconut 200 g, lye 140 g, water 280 g.';

// By hand, saponification values as KOH of the catalogue: palm 0.200 and lard 0.198 (Codex CXS 210 and 211, middles),
// olive 0.190, coconut 0.2565; × 39.997 / 56.105. With lard: (59.4 + 95 + 51.3) = 205.7 g KOH = 146.6 g; × 0.95 = 139.3.
describe('a swap that somebody asks about: the recipe stays, and the answer tells what the other needs', () => {
  test.each([
    'Can I swap the palm for lard?',
    'Can I use lard instead of palm?',
    'can i replace palm with lard',
    'What if I use lard instead of the palm?',
    'Could I sub lard for the palm oil?',
    'Is lard ok in place of palm?',
    "I don't have palm, can I use lard?",
    'I have no palm oil, would lard work?',
    "I'm out of palm. Can I use lard instead?",
    'Does the lye change if I use lard instead of palm?',
    'Can the palm be swapped for lard?',
    'I want to use lard instead of palm, how much lye do I need?',
  ])('%s', async (question) => {
    for (const text of [`${recipe} ${question}`, `${recipe}\n${question}`]) {
      const { said, fats } = await ask(text);
      expect(fats).toEqual(['palm-oil', 'olive-oil-virgin', 'coconut-oil']);
      expect(said).toContain(
        'With lard in the place of palm oil, weight for weight: weigh 139 g sodium hydroxide (NaOH), to leave at least 5 %. What you have would leave about 4.5 %.',
      );
      expect(said).not.toContain('left out "lard"');
    }
  });

  test.each([
    ['I have no palm, could I use coconut?', 'With coconut oil in the place of palm oil'],
    ['can i use coconut instead of the palm', 'With coconut oil in the place of palm oil'],
    ['Can I replace the coconut with olive?', 'With olive oil (virgin) in the place of coconut oil'],
    ['Can I leave out the palm?', 'Without the palm oil'],
  ])('%s', async (question, line) => {
    expect((await ask(`${recipe} ${question}`)).said).toContain(line);
  });

  test.each([
    'Can I add castor?',
    'Would lard be better than palm?',
    'Can I swap half the palm for lard?',
    'Do you have lard? I used palm.',
    'What does palm do?',
  ])('not %s', async (question) => {
    expect((await ask(`${recipe} ${question}`)).said).not.toMatch(/in the place of|Without the/);
  });

  test('without lye too, and the next step makes the swap', async () => {
    const at = { platform: 'test', place: 'here', person: 'one' };
    const first = await bot.ask({
      ...at,
      text: 'Can I swap the palm for lard? palm 300 g, olive 500 g, coconut 200 g',
    });
    if (!first.ok) throw new Error(first.fault.message);
    const [step] = first.answer.actions;
    expect(step?.label).toBe('with lard');
    const next = await bot.ask({ ...at, text: step?.request ?? '' });
    if (!next.ok) throw new Error(next.fault.message);
    expect((next.answer.result as unknown as Result).recipe.fats.map(({ id }) => id)).toContain('lard');
    expect(renderPlain(next.answer, { details: false })).not.toContain('in the place of palm oil, weight for weight');
  });
});

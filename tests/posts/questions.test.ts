import { expect, test } from 'vitest';
import { createBot, renderPlain } from '../../src/index.ts';
import { questions, score } from './score-questions.ts';

/**
 * Everyday questions in the words of many hands, each with a verdict reckoned apart from the code: factors and molar
 * masses by hand, densities and saponification values from the standards. `everyday` varies the phrasing of the first
 * set. The bar: none answered wrong, few questions back that a careful maker would not ask.
 */
const mostNeedless = 0.05;

test.each(['questions', 'questions-2', 'questions-3', 'everyday', 'blind-7-questions'])('%s', async (set) => {
  const bot = createBot();
  const scored = await Array.fromAsync(questions(set), (question) =>
    score(bot, question, (answer) => renderPlain(answer, { details: true })),
  );
  const told = (outcome: string): string[] =>
    scored
      .filter((one) => one.outcome === outcome)
      .map(({ question: { id, text }, got }) => `${id} "${text}": ${got.slice(0, 200)}`);
  expect(told('wrong')).toEqual([]);
  expect(told('wrong-fault')).toEqual([]);
  const answerable = scored.filter(({ question }) => question.expect.fault === undefined).length;
  expect(answerable).toBeGreaterThan(30);
  const needless = told('needless');
  expect(needless.length, needless.join('\n')).toBeLessThanOrEqual(Math.ceil(mostNeedless * answerable));
});

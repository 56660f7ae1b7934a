import { expect, it } from 'vitest';
import { createBot, type Reply } from '../../src/index.ts';
import { posts, sets } from './score.ts';

/** Every question that the posts raise, answered with each of the words that it offers. */
it('a word that a question offers answers it', async () => {
  const bot = createBot();
  let person = 0;
  const ask = (text: string): Promise<Reply> =>
    bot.ask({ platform: 'test', place: 'answers', person: `${person}`, text });
  let asked = 0;
  const unanswered: string[] = [];
  for (const post of sets.flatMap((set) => [...posts(set)])) {
    person += 1;
    const question = await ask(post.text);
    if (question.ok || question.fault.code !== 'unclear') continue;
    for (const candidate of question.fault.candidates) {
      person += 1;
      await ask(post.text);
      const reply = await ask(candidate);
      asked += 1;
      const same = !reply.ok && (reply.fault.message === question.fault.message || reply.fault.code === 'unknown');
      if (same) unanswered.push(`${post.id} "${candidate}": ${question.fault.message}`);
    }
  }
  expect(asked).toBeGreaterThan(200);
  // a strength that no solution has is offered as it was written, and a solution may lack its weight as well
  expect(unanswered.filter((one) => !/"1\d\d % solution"|lye solution \(lye solution\)/.test(one))).toEqual([]);
}, 180_000);

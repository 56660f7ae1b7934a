// What two messages of one person leave behind must not mix; nobody waits for anybody else.
import { expect, test } from 'vitest';
import { makeQueues } from '../../src/bot/queue.ts';

const who = (person: string, place = 'shed') => ({ platform: 'test', place, person });

test('one after the other for each person in each place, a failure too', async () => {
  const queued = makeQueues();
  const seen: string[] = [];
  const { promise: gate, resolve: open } = Promise.withResolvers<void>();
  const first = queued(who('ada'), async () => {
    await gate;
    seen.push('first');
    throw new Error('broken');
  });
  const second = queued(who('ada'), async () => seen.push('second'));
  await queued(who('bo'), async () => seen.push('of another'));
  await queued(who('ada', 'kitchen'), async () => seen.push('elsewhere'));
  expect(seen).toEqual(['of another', 'elsewhere']);
  open();
  await expect(first).rejects.toThrow('broken');
  await second;
  expect(seen.slice(2)).toEqual(['first', 'second']);
});

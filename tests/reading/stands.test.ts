import fc from 'fast-check';
import { test } from 'vitest';
import { createBot } from '../../src/index.ts';
import { hostile } from './hostile.ts';
import { standsFast } from './stands.ts';

test('5,000 random and hostile posts: none crashes, none loses its caution, every figure is finite', async () => {
  const bot = createBot();
  await fc.assert(
    fc.asyncProperty(hostile, (text) => standsFast(bot, text)),
    { numRuns: 5000 },
  );
}, 120_000);

// `npm run fuzz [N]`: N random and hostile posts (100,000 unless said) through the whole core.
import fc from 'fast-check';
import { createBot } from '../src/index.ts';
import { hostile } from './reading/hostile.ts';
import { standsFast } from './reading/stands.ts';

const runs = Number(process.argv[2] ?? 100_000);
const bot = createBot();
let done = 0;
await fc.assert(
  fc.asyncProperty(hostile, async (text) => {
    await standsFast(bot, text);
    done += 1;
    if (done % 10_000 === 0) console.log(`${done} posts`);
  }),
  { numRuns: runs },
);
console.log(`${done} posts, none of them crashed the core or lost its caution`);

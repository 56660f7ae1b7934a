// The short form of `npm run kill:matrix`.
import { expect, inject, test } from 'vitest';
import { killRounds } from '../kill.ts';

test('killed at random moments in an encrypted room: every message is answered once, and can be read', async () => {
  const seed = Date.now() % 1_000_000;
  const { faults, kills } = await killRounds({ server: inject('synapse'), rounds: 4, seed });
  expect(faults, `seed ${seed}`).toEqual([]);
  expect(kills).toBeGreaterThanOrEqual(4);
});

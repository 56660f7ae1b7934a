// Keeps and rings without a pause until it is killed: `node writer.ts FOLDER ROUND`. Tells on standard output, line by
// line, what it was told is kept (`kept N`) and what it sends (`ring ID`); `opened` before all, `idle` where all is rung.
import { writeSync } from 'node:fs';
import { openStore } from '../../../src/index.ts';
import type { Change } from '../../../src/store/port.ts';

const [folder = '', round = ''] = process.argv.slice(2);
const say = (line: string): void => {
  writeSync(1, `${line}\n`);
};

const parts = ['a', 'b', 'c'];
const store = await openStore({ folder, who: 'a writer that will be killed' });
const own = store.of({ platform: 'kill', person: `round ${round}` });
say('opened');

async function ring(): Promise<number> {
  const now = Date.now();
  const due = await store.bells.claim({ platforms: ['kill'], now, leaseUntil: now + 20, limit: 5 });
  for (const claimed of due) {
    say(`ring ${claimed.id}`);
    await store.bells.told(claimed, [
      { do: 'put', kind: 'context', key: claimed.id, data: { told: claimed.attempt }, expects: 0 },
    ]);
  }
  return due.length;
}

if (round === 'last') {
  // Whatever an earlier writer took on itself comes back when its lease ends.
  for (let next = await store.bells.next(['kill']); next !== null; next = await store.bells.next(['kill'])) {
    await ring();
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  say('idle');
  await store.close();
} else {
  for (let number = 0; ; number += 1) {
    const id = `${round}-${number}`;
    const changes = parts.map(
      (part): Change => ({
        do: 'put',
        kind: 'recipe',
        key: `${String(number).padStart(6, '0')} ${part}`,
        data: { id, ballast: 'soap '.repeat(Math.floor(Math.random() * 2000)) },
        expects: 0,
      }),
    );
    const reminder = { id, platform: 'kill', place: 'x', person: round, address: '', about: {}, batch: null };
    await own.commit([...changes, { do: 'remind', reminder: { ...reminder, dueAt: Date.now() } }]);
    say(`kept ${number}`);
    if (number % 3 === 2) await ring();
  }
}

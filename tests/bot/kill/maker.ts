// One process of a bot that is killed: sets reminders and steps of a batch, rings what is due, and notes what it
// acknowledged and what it told in a file that outlives it.
import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs';
import { createBot, openStore } from '../../../src/index.ts';

const [folder = '', notes = '', round = '0', isLast = ''] = process.argv.slice(2);
const file = openSync(notes, 'a');
const note = (line: string): void => {
  writeSync(file, `${line}\n`);
  fsyncSync(file);
};

const bot = createBot({ store: () => openStore({ folder, who: 'a maker' }), zone: 'UTC' });
const end = new AbortController();
const rung = bot.ring({
  platforms: ['test'],
  tell: async ({ id, answer }) => {
    note(`told ${id} ${answer.lead}`);
    // where the kill finds it between telling and striking out
    await new Promise((resolve) => setTimeout(resolve, 3));
  },
  signal: end.signal,
  atOnce: true,
  // a lease of 1.5 s
  pace: 0.05,
});
const say = (text: string) => bot.ask({ platform: 'test', place: 'shed', person: 'ada', text, isPrivate: true });

note('up');
if (isLast === '') {
  if (round === '0') await say('batch start 500 g lard, 66 g NaOH, 150 g water');
  for (let i = 0; ; i += 1) {
    const name = `r${round}-${i}`;
    const reply = await say(`remind in 1 s: ${name}`);
    if (reply.ok) note(`set ${name}`);
    const weighed = await say(`batch note: n${round}-${i}`);
    if (weighed.ok) note(`noted n${round}-${i}`);
    // as a chat does between two messages: reminders are rung by the clock, and their number is bounded
    await new Promise((resolve) => setImmediate(resolve));
  }
}
// the last one: until nothing is left to tell
for (;;) {
  const reply = await say('remind list');
  const left = reply.ok ? (reply.answer.result['reminders'] as { lot: string | null }[]) : [];
  if (left.every(({ lot }) => lot !== null)) break;
  await new Promise((resolve) => setTimeout(resolve, 50));
}
const all = await say('privacy export');
if (!all.ok) throw new Error(all.fault.message);
note(`export ${JSON.stringify(all.answer.result)}`);
end.abort();
await rung;
await bot.close();
closeSync(file);

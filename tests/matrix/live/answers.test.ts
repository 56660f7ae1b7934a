// Every example of every command, asked by a human in a clear and in an encrypted room: the answer is the core's, none
// of it dropped, with its caution, in good HTML.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { commands } from '../../../src/commands/registry.ts';
import { type Answer, createBot, openStore } from '../../../src/index.ts';
import { stringsOf } from '../../contract/answers.ts';
import type { Heard, Human } from '../human.ts';
import { flawsOf, seen } from '../judge.ts';
import { openWorld, type World } from '../world.ts';

let world: World;
const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
const core = createBot({ store: () => openStore({ folder, who: 'the tests', database: null }) });
beforeAll(async () => {
  world = await openWorld();
});
afterAll(async () => {
  await world?.close();
  await core.close();
  rmSync(folder, { recursive: true });
});

const examples = commands.flatMap(({ id, examples: all }) => all.map(({ say }) => ({ id, say })));

/** What the core says to the same words; each in a conversation of its own. */
const expected = async (person: string, say: string): Promise<Answer> => {
  const reply = await core.ask({ platform: 'test', place: `${person}: ${say}`, person, text: say });
  if (!reply.ok) throw new Error(`${reply.fault.message} ${reply.fault.hint}`);
  return reply.answer;
};

describe.each([
  { room: 'clear', encrypted: false },
  { room: 'encrypted', encrypted: true },
])('in a room that is $room', ({ encrypted }) => {
  // What is kept is kept for a person: a new one for each room.
  let ann: Human;
  let room = '';
  beforeAll(async () => {
    ann = await world.human();
    room = await world.room(ann, { encrypted });
  });

  test.each(examples)('$id: $say', async ({ say }) => {
    const answer = await expected(ann.id, say);
    // A thread has a conversation of its own, as the core was asked.
    const root = await ann.say(room, 'A new pot.');
    const asked = await ann.say(room, `!lye ${say}`, { thread: root });
    const offers = answer.actions.map(({ request }) => request);
    const wanted = stringsOf(answer, false).filter((text) => !offers.includes(text));
    const said = (): readonly Heard[] => ann.repliesTo(asked).filter(({ type }) => type === 'm.room.message');
    const lacking = (): readonly string[] => {
      const shown = seen(
        said()
          .map(({ content }) => content.body)
          .join('\n'),
      );
      // Where parts were cut, a text is there word by word.
      return wanted.filter(
        (text) => !shown.includes(seen(text)) && !text.split(/\s+/).every((w) => shown.includes(seen(w))),
      );
    };
    await ann.answer(asked);
    await ann.until(
      () => lacking().length === 0,
      () => `the whole answer; lacking ${JSON.stringify(lacking())}`,
      20,
    );
    for (const { content, decrypted } of said()) {
      expect(decrypted).toBe(encrypted);
      expect(flawsOf(content)).toEqual([]);
      expect(content['m.relates_to']).toMatchObject({ rel_type: 'm.thread', event_id: root });
      if (content.msgtype === 'm.image') continue;
      for (const line of answer.caution) expect(seen(content.body)).toContain(seen(line));
    }
  });
});

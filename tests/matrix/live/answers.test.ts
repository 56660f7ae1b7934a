// Every example of every command, asked by a human in a clear and in an encrypted room: the answer is the core's, none
// of it dropped, with its caution, in good HTML.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { commands } from '../../../src/commands/registry.ts';
import { type Answer, createBot, openStore } from '../../../src/index.ts';
import { seen, stringsOf } from '../../contract/answers.ts';
import type { Heard, Human } from '../human.ts';
import { flawsOf } from '../judge.ts';
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

/** As it is seen, but for what differs each time: codes, and whether talk of other threads is still kept. */
const shownOf = (text: string): string =>
  seen(
    text
      .replace(/\b[A-Z0-9]{4}-[A-Z0-9]{4}\b/g, 'CODE')
      .replace(/(?: and|,) your settings(?: and the last minutes of our conversation)?\./g, ' …'),
  );

/** What the core says to the same words; each in a conversation of its own. */
const expected = async (person: string, say: string): Promise<Answer> => {
  const reply = await core.ask({ platform: 'test', place: `${person}: ${say}`, person, text: say, isPrivate: true });
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
    // A direct chat: what is a person's own is shown nowhere else.
    room = await world.room(ann, { encrypted, direct: true });
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
      const shown = shownOf(
        said()
          .map(({ content }) => `${content.body} ${content.filename ?? ''}`)
          .join('\n'),
      );
      // Where parts were cut, a text is there word by word.
      return wanted.filter(
        (text) => !shown.includes(shownOf(text)) && !text.split(/\s+/).every((w) => shown.includes(shownOf(w))),
      );
    };
    await ann.answer(asked);
    await ann.until(
      () => lacking().length === 0,
      () =>
        `the whole answer; lacking ${JSON.stringify(lacking())} in ${JSON.stringify(said().map(({ content }) => content.body))}`,
      20,
    );
    for (const { content, decrypted } of said()) {
      expect(decrypted).toBe(encrypted);
      expect(flawsOf(content)).toEqual([]);
      expect(content['m.relates_to']).toMatchObject({ rel_type: 'm.thread', event_id: root });
      if (content.msgtype !== 'm.notice') continue;
      for (const line of answer.caution) expect(seen(content.body)).toContain(seen(line));
    }
  });
});

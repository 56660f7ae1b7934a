// Signs on an answer, as buttons of other platforms: details, the next step, an offer by its number, sharing. Only the
// asker's count.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Heard, Human } from '../human.ts';
import { flawsOf } from '../judge.ts';
import { openWorld, type World } from '../world.ts';

const recipe = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';

let world: World;
let ann: Human;
let bob: Human;
beforeAll(async () => {
  world = await openWorld();
  [ann, bob] = await Promise.all([world.human('ann'), world.human('bob')]);
});
afterAll(() => world?.close());

describe.each([
  { kind: 'clear', encrypted: false },
  { kind: 'encrypted', encrypted: true },
])('in a room that is $kind', ({ encrypted }) => {
  let room = '';
  beforeAll(async () => {
    room = await world.room(ann, { encrypted, invite: [bob.id] });
    await bob.join(room);
    await ann.waitFor(room, bob.id);
  });
  const asked = async (text = `!lye check ${recipe}`): Promise<Heard> => ann.answer(await ann.say(room, text));
  /** What came after a sign was set on an answer. */
  const signed = async (answer: Heard, key: string): Promise<Heard> => {
    await ann.react(room, answer.event_id, key);
    const found = await ann.answer(answer.event_id);
    expect(flawsOf(found.content)).toEqual([]);
    expect(found.decrypted).toBe(encrypted);
    return found;
  };

  test('details, with the caution', async () => {
    const { content } = await signed(await asked(), '🔍');
    expect(content.body).toMatch(/lauric/i);
    expect(content.body).toMatch(/goggles/i);
  });

  test('the next step, with the variation sign that some clients add', async () => {
    const { content } = await signed(await asked(), '➡️');
    expect(content.body.length).toBeGreaterThan(20);
    expect(content.body).not.toMatch(/offers no such/);
  });

  test('an answer to a question, by its number', async () => {
    const question = await asked('!lye lye for 500 olive 200 coconut');
    expect(question.content.body).toMatch(/In which unit/);
    const { content } = await signed(question, '1️⃣');
    expect(content.body).toMatch(/99 g sodium hydroxide/);
  });

  test('sharing from a thread to the room', async () => {
    const root = await ann.say(room, 'My bar');
    const answer = await ann.answer(await ann.say(room, `!lye check ${recipe}`, { thread: root }));
    await ann.react(room, answer.event_id, '📣');
    const shared = await bob.until(
      () =>
        bob
          .heard()
          .find(
            (one) =>
              one.room === room &&
              one.sender === world.botId &&
              /Your .*fits/.test(one.content.body ?? '') &&
              one.content['m.relates_to'] === undefined &&
              one.ts > answer.ts,
          ),
      'the answer in the room',
    );
    expect(shared.content.body).toMatch(/goggles/i);
    expect(flawsOf(shared.content)).toEqual([]);
  });

  test('is about the answer that it stands on, whatever was asked since', async () => {
    const answer = await asked();
    await asked('!lye check 500 g lard, 66 g NaOH, 150 g water');
    const { content } = await signed(answer, '🔍');
    expect(content.body).toMatch(/castor/i);
    expect(content.body).not.toMatch(/lard/i);
  });

  test("others' do not count, nor does a heart", async () => {
    const answer = await asked();
    await bob.react(room, answer.event_id, '🔍');
    await ann.react(room, answer.event_id, '❤️');
    await asked('!lye convert 1 lb to g');
    expect(ann.repliesTo(answer.event_id)).toEqual([]);
  });

  test('works on an answer from before a restart', async () => {
    const answer = await asked();
    await world.again();
    const { content } = await signed(answer, '🔍');
    expect(content.body).toMatch(/castor/i);
  });
});

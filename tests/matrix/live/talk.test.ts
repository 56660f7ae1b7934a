// How people talk to it in rooms: by prefix, by mention, in a direct chat, in threads, by reply; and when it is silent.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { holdsConversations } from '../../contract/turns.ts';
import type { Heard, Human } from '../human.ts';
import { flawsOf } from '../judge.ts';
import { openWorld, type World } from '../world.ts';

const recipe = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';
const other = '500 g lard, 66 g NaOH, 150 g water';
const fits = /Your .*fits/;

let world: World;
let ann: Human;
let bob: Human;
beforeAll(async () => {
  world = await openWorld();
  [ann, bob] = await Promise.all([world.human('ann'), world.human('bob')]);
});
afterAll(() => world?.close());

const localpart = (): string => world.botId.slice(1).split(':')[0] ?? '';
const pill = (): string => `<a href="https://matrix.to/#/${world.botId}">${localpart()}</a>`;

/** Shows that nothing came to `silent`: what is asked after it is answered, in order. */
async function silentTo(human: Human, room: string, silent: readonly string[]): Promise<void> {
  await human.answer(await human.say(room, '!lye convert 500 ml to cups'));
  expect(silent.flatMap((id) => human.repliesTo(id))).toEqual([]);
}

const edits = (human: Human, id: string): readonly Heard[] =>
  human
    .heard()
    .filter(
      ({ content }) => content['m.relates_to']?.rel_type === 'm.replace' && content['m.relates_to'].event_id === id,
    );

describe.each([
  { kind: 'clear', encrypted: false },
  { kind: 'encrypted', encrypted: true },
])('in a room that is $kind', ({ encrypted }) => {
  let room = '';
  beforeAll(async () => {
    room = await world.room(ann, { encrypted, invite: [bob.id] });
    await bob.until(() => bob.invites.some((invite) => invite.room === room), 'the invite');
    await bob.join(room);
    await ann.waitFor(room, bob.id);
  });

  test('a prefix with a command word', async () => {
    const answer = await ann.answer(await ann.say(room, `!lye check ${recipe}`));
    expect(answer.content.body).toMatch(fits);
    expect(answer.decrypted).toBe(encrypted);
    expect(flawsOf(answer.content)).toEqual([]);
  });

  test('a prefix without one: it is guessed', async () => {
    expect((await ann.answer(await ann.say(room, `!lye ${recipe}`))).content.body).toMatch(fits);
    expect((await ann.answer(await ann.say(room, '!lye 3/4 cup shea in grams'))).content.body).toMatch(/\d g/);
  });

  test('a prefix before lines', async () => {
    const lines = `!lye\n${recipe.replaceAll(', ', '\n')}`;
    expect((await ann.answer(await ann.say(room, lines))).content.body).toMatch(fits);
  });

  test('a prefix alone says what can be asked', async () => {
    expect((await ann.answer(await ann.say(room, '!lye'))).content.body.length).toBeGreaterThan(20);
  });

  test('a typed pill', async () => {
    const text = `${localpart()}: check ${recipe}`;
    const html = `${pill()}: check ${recipe}`;
    expect((await ann.answer(await ann.say(room, text, { html }))).content.body).toMatch(fits);
  });

  test('an intentional mention', async () => {
    const asked = await ann.say(room, `check ${recipe}`, { mentions: [world.botId] });
    expect((await ann.answer(asked)).content.body).toMatch(fits);
  });

  test('its plain name, with the server and without', async () => {
    for (const name of [`${localpart()}:`, `${world.botId}`, `@${localpart()},`]) {
      expect((await ann.answer(await ann.say(room, `${name} check ${recipe}`))).content.body, name).toMatch(fits);
    }
  });

  test('silent to what is not for it', async () => {
    await silentTo(ann, room, [
      await ann.say(room, recipe),
      await ann.say(room, 'lye is caustic'),
      await ann.say(room, '!lyeward check'),
      await ann.say(room, `I told !lye check ${other}`),
      await ann.say(room, `!lye check ${recipe}`, { msgtype: 'm.notice' }),
      await ann.say(room, `check ${recipe}`, { mentions: [bob.id] }),
    ]);
  });

  test('a reply with the prefix checks the message that is quoted', async () => {
    const posted = await bob.say(room, `My first one!\n${recipe.replaceAll(', ', '\n')}`);
    const answer = await ann.answer(await ann.say(room, '!lye check', { reply: posted }));
    expect(answer.content.body).toMatch(fits);
    expect(answer.content.body).not.toMatch(/Which recipe/);
  });

  test('so does a reply that mentions it', async () => {
    const posted = await bob.say(room, other);
    const mention = { reply: posted, mentions: [world.botId] };
    const answer = await ann.answer(await ann.say(room, `${localpart()} is this ok?`, mention));
    expect(answer.content.body).toMatch(/superfat|fits/i);
    expect(answer.content.body).not.toMatch(/Which recipe/);
  });

  test('a fallback that quotes an older text is not read as said', async () => {
    const posted = await bob.say(room, other);
    const text = `> <${bob.id}> ${other}\n\n!lye check ${recipe}`;
    const answer = await ann.answer(await ann.say(room, text, { reply: posted }));
    expect(answer.content.body).toMatch(/castor/i);
  });

  test('a thread is answered in the thread and has a conversation of its own', async () => {
    const root = await ann.say(room, 'My olive bar');
    const first = await ann.say(room, `!lye check ${recipe}`, { thread: root });
    const answer = await ann.answer(first);
    expect(answer.content['m.relates_to']).toMatchObject({ rel_type: 'm.thread', event_id: root });
    const doubled = await ann.answer(await ann.say(room, '!lye double it', { thread: root }));
    expect(doubled.content.body).toMatch(/204 g/);
    const elsewhere = await ann.say(room, 'Another');
    const lost = await ann.answer(await ann.say(room, '!lye double it', { thread: elsewhere }));
    expect(lost.content.body).toMatch(/Which recipe/);
  });

  test('a reminder set in a thread is told there, once, to who asked', async () => {
    const root = await ann.say(room, 'My curing shelf');
    const set = await ann.answer(await ann.say(room, '!lye remind me in 4 seconds to turn the bars', { thread: root }));
    expect(set.content.body).toMatch(/turn the bars/);
    const told = (): readonly Heard[] =>
      ann
        .heard()
        .filter(
          ({ sender, content, event_id }) =>
            sender === world.botId &&
            content['m.relates_to']?.event_id === root &&
            event_id !== set.event_id &&
            /turn the bars/.test(content.body),
        );
    const [rung] = await ann.until(() => told().length > 0 && told(), 'the reminder', 60);
    expect(rung?.decrypted).toBe(encrypted);
    expect(rung?.content['m.relates_to']).toMatchObject({ rel_type: 'm.thread', event_id: root });
    expect(rung?.content['m.mentions']).toEqual({ user_ids: [ann.id] });
    await silentTo(ann, room, []);
    expect(told()).toHaveLength(1);
  });

  test('one person does not go on with the recipe of another', async () => {
    await ann.answer(await ann.say(room, `!lye check ${recipe}`));
    await bob.answer(await bob.say(room, '!lye restart'));
    expect((await bob.answer(await bob.say(room, '!lye double it'))).content.body).toMatch(/Which recipe/);
  });

  test('the question is edited: the answer is edited, and marked so', async () => {
    const asked = await ann.say(room, '!lye convert 1 lb to g');
    const answer = await ann.answer(asked);
    expect(answer.content.body).toContain('453.6 g');
    await ann.say(room, '!lye convert 2 lb to g', { edit: asked });
    const edit = await ann.until(() => edits(ann, answer.event_id).find((one) => !one.undecryptable), 'the edit');
    expect(edit.content['m.new_content'].body).toContain('907.2 g');
    expect(edit.content['m.new_content'].body).toMatch(/edited/i);
    expect(edit.decrypted).toBe(encrypted);
    expect(flawsOf(edit.content['m.new_content'])).toEqual([]);
    expect(ann.repliesTo(asked)).toHaveLength(1);
  });

  test('an edit that makes a message a question is answered once', async () => {
    const asked = await ann.say(room, 'lye convert 1 lb to g');
    await ann.say(room, '!lye convert 1 lb to g', { edit: asked });
    const answer = await ann.until(
      () =>
        ann
          .heard()
          .find(
            ({ sender, content }) =>
              sender === world.botId &&
              /453\.6 g/.test(content.body ?? '') &&
              content['m.relates_to']?.['m.in_reply_to']?.event_id === asked,
          ),
      'an answer',
    );
    expect(flawsOf(answer.content)).toEqual([]);
  });

  test("nobody edits or takes back another's question", async () => {
    const asked = await ann.say(room, '!lye convert 1 lb to g');
    const answer = await ann.answer(asked);
    await bob.say(room, '!lye convert 2 lb to g', { edit: asked });
    await silentTo(ann, room, []);
    expect(edits(ann, answer.event_id)).toEqual([]);
  });

  test('the question is redacted: the answer is redacted, all of its parts', async () => {
    const asked = await ann.say(room, `!lye check ${recipe}`);
    const answer = await ann.answer(asked);
    await ann.redact(room, asked);
    await ann.until(
      () =>
        ann
          .heard()
          .some(
            ({ type, redacts, sender }) =>
              type === 'm.room.redaction' && redacts === answer.event_id && sender === world.botId,
          ),
      'the redaction',
    );
  });

  test('marks as read what it answered', async () => {
    const asked = await ann.say(room, '!lye convert 1 lb to g');
    await ann.answer(asked);
    const isRead = () => ann.receipts.some(({ user, event_id }) => user === world.botId && event_id === asked);
    await ann.until(isRead, 'a receipt');
  });
});

test('a direct chat needs no prefix', async () => {
  const room = await world.room(ann, { direct: true, encrypted: true });
  expect((await ann.answer(await ann.say(room, recipe))).content.body).toMatch(fits);
  expect((await ann.answer(await ann.say(room, 'double it'))).content.body).toMatch(/204 g/);
  expect((await ann.answer(await ann.say(room, '!lye convert 1 lb to g'))).content.body).toContain('453.6 g');
});

test('"everybody" is a word like another', async () => {
  const room = await world.room(ann);
  const text = `!lye check @room @${localpart()} ${bob.id} <a href="https://matrix.to/#/${bob.id}">b</a> ${recipe}`;
  const { content } = await ann.answer(await ann.say(room, text));
  expect(flawsOf(content)).toEqual([]);
  expect(content.body).not.toMatch(/@room/);
  expect(content.formatted_body ?? '').not.toMatch(/@room|matrix\.to/);
});

holdsConversations('Matrix', {
  together: async (turns) => {
    const room = await world.room(ann);
    const heard: string[] = [];
    for (const turn of turns) heard.push((await ann.answer(await ann.say(room, `!lye ${turn}`))).content.body);
    return heard;
  },
  apart: (turns) =>
    Promise.all(
      turns.map(async (turn) => {
        const room = await world.room(ann);
        return (await ann.answer(await ann.say(room, `!lye ${turn}`))).content.body;
      }),
    ),
});

// What people do, end to end over REST and the gateway: the answers are the core's own.
import { hash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { caution } from '../../src/commands/cautions.ts';
import { type House, openHouse } from './house.ts';
import {
  beginner,
  host,
  idOf,
  labelsOf,
  menu,
  press,
  slash,
  stranger,
  submit,
  typing,
} from './standin/interactions.ts';
import type { Json } from './standin/server.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(async () => {
  const flaws = house.discord.flaws();
  await house.close();
  expect(flaws).toEqual([]);
});

const recipe = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';
const gear = caution('gear').short;

const ask = async (interaction: Json): Promise<Json> => {
  await house.discord.interact(interaction);
  return house.discord.messageOf(interaction);
};

describe('a slash command', () => {
  test('is answered privately, short first, with the caution, pinging nobody', async () => {
    const callback = await house.discord.interact(slash('check', { text: recipe }));
    expect(callback.type).toBe(4);
    expect(callback.data.flags & 64).toBe(64);
    expect(callback.data.allowed_mentions).toEqual({ parse: [] });
    expect(callback.data.content).toMatch(/^\*\*Your .*fits/);
    expect(callback.data.content).toContain(gear);
  });

  test('takes options as people type them', async () => {
    const { content } = await ask(slash('check', { text: recipe, superfat: '8 %', step: '0.5 oz' }));
    expect(content).toContain('to leave at least 8 %');
    expect(content).not.toMatch(/I took .*scale/);
  });

  test('without words opens a form for a recipe of many lines, and the form is answered', async () => {
    const opened = await house.discord.interact(slash('check', { superfat: '8' }));
    expect(opened.type).toBe(9);
    const form = submit(opened.data.custom_id, recipe.replaceAll(', ', '\n'), undefined);
    expect((await ask(form)).content).toMatch(/^\*\*Your .*fits/);
  });

  test('without words goes on with the last recipe where it can', async () => {
    await ask(slash('check', { text: recipe }));
    expect((await ask(slash('summary'))).content).toMatch(/castor/);
    const other = { id: '300000000000000009' };
    expect((await house.discord.interact(slash('summary', {}, other))).type).toBe(9);
    expect((await house.discord.interact(slash('ask', {}, other))).type).toBe(9);
  });

  test('of first aid needs no words', async () => {
    expect((await ask(slash('safety'))).content).toMatch(/rinse/i);
  });

  test('that no longer exists is told so', async () => {
    expect((await ask(slash('forgotten', { text: 'x' }))).content).toMatch(/do not know this command/);
  });

  test('works in direct messages and by a person’s own install', async () => {
    expect((await ask(slash('check', { text: recipe }, beginner, 'direct'))).content).toMatch(/^\*\*Your .*fits/);
  });
});

describe('the menu of a message', () => {
  test('checks a recipe of anybody', async () => {
    const { content } = await ask(menu('Check this recipe', { content: recipe.replaceAll(', ', '\n') }, host));
    expect(content).toMatch(/^\*\*Your .*fits/);
  });

  test('reads a text that is attached', async () => {
    const url = `http://${house.discord.host}/files/${encodeURIComponent(recipe)}`;
    const attachments = [
      { id: '1', filename: 'message.txt', size: recipe.length, url, content_type: 'text/plain; charset=utf-8' },
    ];
    expect((await ask(menu('Check this recipe', { attachments }))).content).toMatch(/^\*\*Your .*fits/);
  });

  test('opens no file of another host', async () => {
    const url = `http://localhost:${house.discord.host.split(':')[1]}/files/${encodeURIComponent(recipe)}`;
    const attachments = [{ id: '1', filename: 'message.txt', size: 10, url, content_type: 'text/plain' }];
    expect((await ask(menu('Check this recipe', { attachments }))).content).toMatch(/could not open/);
  });

  test('says what it cannot read', async () => {
    const attachments = [
      { id: '1', filename: 'soap.jpg', size: 9000, url: 'https://cdn.discordapp.com/x', content_type: 'image/jpeg' },
    ];
    expect((await ask(menu('Check this recipe', { attachments }))).content).toMatch(/no pictures/);
    expect((await ask(menu('Check this recipe', { content: ' ' }))).content).toMatch(/no text/);
  });
});

describe('buttons', () => {
  test('offer the next steps of an answer, and answer them', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    expect(labelsOf(answer)).toEqual(expect.arrayContaining(['details', 'Ask on', 'Share to channel']));
    const details = await ask(press(answer, idOf(answer, 'details')));
    expect(details.content).toContain('Lauric'.toLowerCase());
    expect(details.content).toContain(gear);
  });

  test('are about the answer that they stand on, whatever was asked since', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    await ask(slash('check', { text: '500 g lard, 66 g NaOH, 150 g water' }));
    const details = await ask(press(answer, idOf(answer, 'details')));
    expect(details.content).toContain('Castor oil');
    expect(details.content).not.toContain('Lard');
  });

  test('share to the channel with the caution', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    const callback = await house.discord.interact(press(answer, idOf(answer, 'Share to channel')));
    expect(callback).toMatchObject({ type: 4, data: { allowed_mentions: { parse: [] } } });
    expect(callback.data.flags & 64).toBe(0);
    expect(callback.data.content).toContain(gear);
    expect(labelsOf(callback.data)).not.toContain('Share to channel');
  });

  test('obey who asked, and a host; others are told kindly', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    const share = press(answer, idOf(answer, 'Share to channel'));
    const shared = await ask(share);
    const refused = await house.discord.interact(press(shared, idOf(shared, 'details'), stranger));
    expect(refused.data.flags & 64).toBe(64);
    expect(refused.data.content).toMatch(/belong to the person who asked/);
    expect((await ask(press(shared, idOf(shared, 'details'), host))).content).toContain('Castor oil');
  });

  test('survive a restart', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    const other = await openHouse({ discord: house.discord });
    await house.stop();
    house = other;
    expect((await ask(press(answer, idOf(answer, 'details')))).content).toContain('Castor oil');
  });

  test('say kindly when what they were about is gone', async () => {
    const chatter = Array.from({ length: 60 }, (_, i) => `and ${hash('sha1', `${i}`).replace(/\d/g, 'x')} it smelled`);
    const long = `${recipe}\n\n${chatter.join('\n')}`;
    const answer = await ask(slash('check', { text: long }));
    expect((await ask(press(answer, idOf(answer, 'Share to channel')))).content).toMatch(/fits/);
    const other = await openHouse({ discord: house.discord });
    await house.stop();
    house = other;
    expect((await ask(press(answer, idOf(answer, 'Share to channel')))).content).toMatch(/too long ago/);
  });

  test('nobody made are told so', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    for (const id of ['x', 'a0', `a000${'A'.repeat(11)}${'B'.repeat(6)}`, '💧'.repeat(20)]) {
      expect((await ask(press(answer, id))).content).toMatch(/do not know this button|belong to/);
    }
  });

  test('of a form that belongs to somebody else answer nothing', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    const opened = await house.discord.interact(press(answer, idOf(answer, 'Ask on')));
    expect(opened.type).toBe(9);
    const form = submit(opened.data.custom_id, 'details', answer, stranger);
    expect((await ask(form)).content).toMatch(/belong to the person/);
    expect((await ask(submit(opened.data.custom_id, 'details', answer))).content).toContain('Castor oil');
  });
});

describe('a question back', () => {
  const bare = 'olive 700, coconut 300, lye 140, water 300';

  test('shows its candidates as buttons, and becomes its answer in place', async () => {
    const question = await ask(slash('check', { text: bare }));
    expect(labelsOf(question)).toEqual(['grams', 'ounces', 'Answer in words']);
    const callback = await house.discord.interact(press(question, idOf(question, 'grams')));
    expect(callback.type).toBe(7);
    expect(callback.data.content).toMatch(/140 g sodium hydroxide/);
    expect(callback.data.content).toContain(gear);
  });

  test('is answered in words by a form, also after a restart', async () => {
    const question = await ask(slash('check', { text: bare }));
    const opened = await house.discord.interact(press(question, idOf(question, 'Answer in words')));
    const other = await openHouse({ discord: house.discord });
    await house.stop();
    house = other;
    expect((await ask(submit(opened.data.custom_id, 'ounces', question))).content).toMatch(/140 oz sodium hydroxide/);
  });

  test('is answered by the next command', async () => {
    await ask(slash('check', { text: bare }));
    expect((await ask(slash('ask', { text: 'grams' }))).content).toMatch(/140 g sodium hydroxide/);
  });

  test('is nobody else’s to answer', async () => {
    await ask(slash('check', { text: bare }));
    expect((await ask(slash('ask', { text: 'grams' }, stranger))).content).not.toMatch(/140 g/);
  });
});

describe('a further turn', () => {
  test('goes on with the answer: by a form, by a button, by the next command', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    const opened = await house.discord.interact(press(answer, idOf(answer, 'Ask on')));
    const at8 = await ask(submit(opened.data.custom_id, 'and at 8 %?', answer));
    expect(at8.content).toMatch(/8(\.\d)? %/);
    const details = await ask(press(at8, idOf(at8, 'details')));
    expect(details.content).toContain('Castor oil');
    expect((await ask(slash('ask', { text: 'no, the castor was 80 g' }))).content).toContain('80 g');
  });

  test('is about the answer that it was asked on, not about the last', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    const opened = await house.discord.interact(press(answer, idOf(answer, 'Ask on')));
    await ask(slash('check', { text: '500 g lard, 66 g NaOH, 150 g water' }));
    const next = await ask(submit(opened.data.custom_id, 'summary', answer));
    expect(next.content).toContain('castor');
    expect(next.content).not.toMatch(/lard/i);
  });

  test('of a host on another’s answer does not become the host’s own recipe', async () => {
    const answer = await ask(slash('check', { text: recipe }));
    const share = press(answer, idOf(answer, 'Share to channel'));
    const shared = await ask(share);
    await ask(slash('check', { text: '500 g lard, 66 g NaOH, 150 g water' }, host));
    await ask(press(shared, idOf(shared, 'details'), host));
    expect((await ask(slash('ask', { text: 'summary' }, host))).content).toMatch(/lard/i);
  });

  test('whose words lead elsewhere than before says so instead of a wrong figure', async () => {
    await ask(slash('check', { text: recipe }));
    const at8 = await ask(slash('ask', { text: 'and at 8 %?' }));
    await ask(slash('check', { text: '500 g lard, 66 g NaOH, 150 g water' }));
    expect((await ask(press(at8, idOf(at8, 'details')))).content).toMatch(/too long ago/);
  });
});

describe('pictures', () => {
  test('follow the answer as a file with alternative text', async () => {
    const cooling = slash('cool', { text: 'from 88 C to 59 C, 2 kg in a steel pot' });
    const { content } = await ask(cooling);
    expect(content).toMatch(/59 °C/);
    await house.discord.until(() => house.discord.messageOf(cooling).attachments.length > 0, 'the picture');
    const [{ filename, description }] = house.discord.messageOf(cooling).attachments;
    expect(filename).toMatch(/\.png$/);
    expect(description.length).toBeGreaterThan(10);
  });
});

describe('a long answer', () => {
  const many =
    '300 g olive oil, 200 g coconut oil, 200 g palm oil, 100 g sunflower oil, 50 g castor oil, 50 g shea butter, 100 g lard, 138 g NaOH, 300 g water';

  test('turns its pages in place, the caution on each, and goes along whole as a file', async () => {
    const answer = await ask(slash('check', { text: many }));
    const long = press(answer, idOf(answer, 'details'));
    const first = await ask(long);
    const next = idOf(first, /^Page 2/);
    await house.discord.until(() => house.discord.messageOf(long).attachments.length > 0, 'the file');
    const callback = await house.discord.interact(press(house.discord.messageOf(long), next));
    expect(callback.type).toBe(7);
    for (const { content } of [first, callback.data]) {
      expect(content).toContain(gear);
      expect(content.length).toBeLessThanOrEqual(2000);
    }
    const edit = house.discord.recorded.findLast(({ kind }) => kind === 'edit');
    expect(await edit?.files[0]?.text()).toContain(gear);
  });

  test('shared, shows its pages to everybody, each for themselves', async () => {
    const answer = await ask(slash('check', { text: many }));
    const details = await ask(press(answer, idOf(answer, 'details')));
    const shared = await ask(press(details, idOf(details, 'Share to channel')));
    const callback = await house.discord.interact(press(shared, idOf(shared, /^Page 2/), stranger));
    expect(callback).toMatchObject({ type: 4, data: { flags: 68 } });
    expect(callback.data.content).toContain('(2/');
  });
});

describe('hostile input', () => {
  const hostile = [
    '@everyone 500 g lard, 66 g NaOH, 150 g water',
    '<@300000000000000001> <@&400> <#500> 500 g lard',
    '[free soap](https://example.org) 500 g lard, 66 g NaOH',
    'is "[x](https://example.org)" a fat? 500 g [x](https://example.org), 66 g NaOH',
    '\u202e054 g lard\u202c, 66 g NaOH, 150 g water',
    '5\u200b00 g lard, 66 g NaOH, 150 g water',
    '```js\nprocess.exit()\n``` {{7*7}}',
    'lard '.repeat(1200),
    `${'9'.repeat(5990)} g lard`,
    '\ud800 500 g lard',
    '\u0000',
    '👩‍🔬'.repeat(500),
  ];

  test.each(hostile)('%# is answered, inert', async (text) => {
    for (const interaction of [
      slash('check', { text }),
      slash('ask', { text }),
      slash('convert', { text, unit: text.slice(0, 90) }),
      menu('Check this recipe', { content: text }),
    ]) {
      const { content, allowed_mentions: allowed } = await ask(interaction);
      expect(allowed).toEqual({ parse: [] });
      expect(content.length).toBeGreaterThan(0);
      expect(content).not.toMatch(/@(everyone|here)|<@|<#|\u202e/);
      expect(content).not.toMatch(/(?<!\\)\[[^\]]*\]\(http/);
      expect(content).not.toMatch(/Something went wrong/);
    }
  });

  test('interactions without what they should have are answered all the same', async () => {
    const odd = [
      { ...slash('check'), data: undefined },
      { ...slash('check'), data: { name: 'check', type: 1, options: [{ name: 'text', type: 3 }] } },
      { ...slash('check', { text: recipe }), member: undefined },
      { ...press({ components: [] }, 'x'), message: undefined },
      { ...menu('Check this recipe', {}), data: { name: 'Check this recipe', type: 3 } },
      { ...submit('x', 'text', undefined), data: {} },
      { ...slash('check'), type: 77 },
    ];
    for (const one of odd) expect([4, 9]).toContain((await house.discord.interact(one)).type);
  });
});

describe('completion', () => {
  const complete = async (name: string, text: string): Promise<readonly string[]> =>
    (await house.discord.interact(typing(name, text))).data.choices.map(({ value }: Json) => value);

  test('continues the fat that is being typed', async () => {
    expect(await complete('check', '450 g olive oil, 225 g coc')).toContain('450 g olive oil, 225 g coconut oil');
  });

  test('offers the examples of the declaration where nothing is typed', async () => {
    expect(await complete('check', '')).toContain(recipe);
  });

  test('offers nothing that Discord would refuse', async () => {
    const late = await complete('check', `${'a'.repeat(90)} coco`);
    expect(late).toContain(`${'a'.repeat(90)} coconut`);
    expect(late.filter((text) => text.length > 100)).toEqual([]);
    expect(await complete('check', 'a '.repeat(3000))).toEqual([]);
    expect(await complete('check', 'o')).not.toHaveLength(0);
    expect(await complete('nothing', '((((')).toEqual([]);
  });
});

describe('direct messages, where the host turns them on', () => {
  test('are answered there, to people only, once', async () => {
    const direct = await openHouse({ directMessages: true });
    const { discord } = direct;
    const told = (id: string, more: Json = {}) =>
      discord.dispatch('MESSAGE_CREATE', {
        id,
        type: 0,
        channel_id: '600',
        author: { id: beginner.id, username: 'm' },
        content: recipe,
        attachments: [],
        ...more,
      });
    told('81', { author: { id: '1', username: 'b', bot: true } });
    told('82', { guild_id: '400' });
    told('83', { type: 7 });
    told('84');
    told('84');
    told('85', { content: 'cool from 88 C to 59 C, 2 kg in a steel pot' });
    const created = () => discord.recorded.filter(({ kind }) => kind === 'create');
    await discord.until(() => created().length === 2, 'two answers');
    const [first, second] = created();
    expect(first?.body).toMatchObject({
      content: expect.stringMatching(/fits/),
      nonce: '84',
      enforce_nonce: true,
      flags: 4,
    });
    expect(second?.files[0]?.name).toMatch(/png$/);
    expect(discord.flaws()).toEqual([]);
    await direct.close();
  });
});

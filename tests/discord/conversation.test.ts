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
  test('shows its candidates as buttons', async () => {
    const question = await ask(slash('check', { text: 'olive 700, coconut 300, lye 140, water 300' }));
    expect(labelsOf(question)).toEqual(expect.arrayContaining(['grams', 'ounces', 'Answer in words']));
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
    expect(await complete('check', `${'a'.repeat(98)} coc`)).toEqual([]);
    expect(await complete('check', 'o')).not.toHaveLength(0);
    expect(await complete('nothing', '((((')).toEqual([]);
  });
});

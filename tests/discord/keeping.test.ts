// What people keep, end to end over REST and the gateway: a button never keeps or deletes anything a second time.
import { afterEach, beforeEach, expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';
import type { Store } from '../../src/store/port.ts';
import { createModel } from '../store/model.ts';
import { type House, openHouse } from './house.ts';
import { beginner, idOf, labelsOf, press, slash, stranger, typing } from './standin/interactions.ts';
import type { Json } from './standin/server.ts';

const lard = '500 g lard, 66 g NaOH, 150 g water';
const olive = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';

let house: House;
let store: Store;
beforeEach(async () => {
  store = createModel();
  house = await openHouse({ bot: createBot({ store: async () => store, recalls: true }) });
});
afterEach(async () => {
  const flaws = house.discord.flaws();
  await house.close();
  expect(flaws).toEqual([]);
});

const ask = async (interaction: Json): Promise<Json> => {
  await house.discord.interact(interaction);
  return house.discord.messageOf(interaction);
};
const own = (person = beginner) => store.of({ platform: 'discord', person: person.id });
const kept = async (person = beginner) =>
  (await own(person).list('recipe', { limit: 99 })).map(({ key, version }) => `${key} ${version}`);

test('buttons of what was kept stand alone: they go on with its recipe and keep nothing again', async () => {
  const saved = await ask(slash('recipe', { text: `save Lard bar: ${lard}` }));
  expect(saved.content).toContain('Lard bar');
  expect(labelsOf(saved)).not.toContain('Share to channel');
  await ask(slash('recipe', { text: 'delete Lard bar', confirm: 'yes' }));
  expect(await kept()).toEqual([]);
  await ask(press(saved, idOf(saved, 'my recipes')));
  expect(await kept()).toEqual([]);
});

test('an older message’s buttons are about its own recipe, whatever was shown since', async () => {
  await ask(slash('recipe', { text: `save A: ${lard}` }));
  await ask(slash('recipe', { text: `save B: ${olive}` }));
  const shown = await ask(slash('recipe', { text: 'show A' }));
  await ask(slash('recipe', { text: 'show B' }));
  expect((await ask(press(shown, idOf(shown, 'to post')))).content).toMatch(/500 g/);
  expect(await kept()).toEqual(['a 1', 'b 1']);
});

test('a question back is answered by its button, once', async () => {
  await ask(slash('recipe', { text: `save A: ${lard}` }));
  const asked = await ask(slash('recipe', { text: `save A: ${olive}` }));
  expect(asked.content).toContain('Replace it?');
  await ask(press(asked, idOf(asked, 'replace')));
  expect(await kept()).toEqual(['a 2']);
  await ask(press(asked, idOf(asked, 'replace')));
  expect(await kept()).toEqual(['a 2']);
});

test('names that are kept are offered while one types, to their owner alone', async () => {
  await ask(slash('recipe', { text: `save Lavender bar: ${lard}` }));
  await ask(slash('recipe', { text: `save Lard bar: ${lard}` }));
  const offered = async (value: string, person = beginner): Promise<readonly string[]> =>
    (await house.discord.interact(typing('recipe', value, 'text', person))).data.choices.map(
      ({ value: text }: Json) => text,
    );
  expect(await offered('show la')).toEqual(['show Lard bar', 'show Lavender bar']);
  expect(await offered('delete lav')).toEqual(['delete Lavender bar']);
  expect(await offered('compare Lard bar and lav')).toEqual(['compare Lard bar and Lavender bar']);
  expect((await offered('show la', stranger)).filter((text) => /bar/.test(text))).toEqual([]);
});

test('where a channel reads the answer, nothing private is in it', async () => {
  await ask(slash('recipe', { text: `save Secret bar: ${lard}` }));
  const check = await ask(slash('check', { text: lard }));
  const shared = await ask(press(check, idOf(check, 'Share to channel')));
  expect(shared.flags & 64).toBe(0);
  const listed = await ask(slash('recipe', { text: 'list' }));
  expect(listed.flags & 64).toBe(64);
  expect(listed.content).toContain('Secret bar');
});

import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { createBot, renderPlain } from '../../src/index.ts';

const bot = createBot();
const ask = (text: string) => bot.ask({ platform: 'test', place: 'fat', person: text, text });
const answer = async (text: string) => {
  const reply = await ask(text);
  if (!reply.ok) throw new Error(`${text}: ${reply.fault.message}`);
  return reply.answer;
};
const whole = async (text: string): Promise<string> => renderPlain(await answer(text), { details: true });
const fats = [...loadCatalogue().fats.values()];

test.each(fats.map((fat) => [fat.id, fat] as const))('%s: everything held, with source and grade', async (_id, fat) => {
  const [name = fat.name] = fat.names.filter((one) => one.length > 4);
  const { result, lead } = await answer(`fat ${name}`);
  const ends = (chosen: { readonly low: number; readonly high: number } | null) =>
    chosen && { low: chosen.low, high: chosen.high };
  expect(result).toMatchObject({
    id: fat.id,
    saponification: ends(fat.saponification),
    iodine: ends(fat.iodine),
    density: ends(fat.density),
    melting: ends(fat.melting),
  });
  expect(lead.length).toBeLessThan(220);
  const text = await whole(`fat ${name}`);
  expect(text).toContain(fat.inci.name);
  expect(text).toContain(fat.saponification.why);
  expect(text).not.toMatch(/NaN|undefined|\[object/);
  if (fat.saponification.fromMemory) expect(text).toContain('from memory');
});

describe('lists', () => {
  const ids = async (text: string): Promise<readonly string[]> =>
    ((await answer(text)).result['fats'] as readonly { readonly id: string }[]).map(({ id }) => id);

  test('those from memory are those that the catalogue marks', async () => {
    const marked = fats.filter(({ saponification }) => saponification.fromMemory).map(({ id }) => id);
    expect(await ids('which fats are from memory?')).toEqual(marked);
    for (const text of ['fats with no source', 'list the unsourced fats', 'are any fats from memory'])
      expect(await ids(text), text).toEqual(marked);
  });

  test.each([
    ['fats under SV 150', (low: number, high: number) => high <= 150 && low >= 0],
    ['which fats have a saponification value above 240', (low: number) => low >= 240],
    ['oils with sv between 185 and 200', (low: number, high: number) => low >= 185 && high <= 200],
  ])('%s: the whole range lies within', async (text, fits) => {
    const want = fats.filter(({ saponification: { low, high } }) => fits(low, high)).map(({ id }) => id);
    expect([...(await ids(text))].sort()).toEqual([...want].sort());
    expect(want.length).toBeGreaterThan(0);
  });

  test('those rich in a fatty acid, the richest first', async () => {
    expect((await ids('which oils are high in ricinoleic'))[0]).toMatch(/^castor/);
    const lauric = await ids('fats high in lauric acid');
    for (const id of ['coconut-oil', 'babassu-oil', 'palm-kernel-oil']) expect(lauric).toContain(id);
  });

  test('near relatives are no stand-ins', async () => {
    const { lead } = await answer('what can I use instead of coconut oil');
    expect(lead).toContain('babassu');
    expect(lead).toContain('its own amount of lye');
  });
});

describe('what is asked is answered first', () => {
  test.each([
    ['melting point of shea', 'Shea butter melts at 35 to 40 °C (95 to 104 °F).'],
    ['sv of jojoba', 'Jojoba oil (liquid wax): 88 to 98 mg KOH per gram (saponification value), 92 in the middle.'],
    ['iodine value of olive', 'Olive oil (virgin): iodine value 75 to 94 g per 100 g.'],
    ['inci name of shea butter', 'Shea butter: Vitellaria paradoxa, INCI Butyrospermum Parkii Butter.'],
  ])('%s', async (text, lead) => expect((await answer(text)).lead).toBe(lead));

  test('none is scored', async () => {
    for (const fat of fats)
      expect(await whole(`fat ${fat.names[0]}`), fat.id).not.toMatch(/\b\d+ ?(\/|out of) ?(5|10|100)\b|\bstars\b|[★☆]/);
  });

  test.each([
    ['sv of butter', 'unclear'],
    ['sv of emu oil', 'unclear'],
    ['fat', 'unclear'],
    ['fat unobtainium', 'unclear'],
  ])('%s', async (text, code) => {
    const reply = await ask(text);
    expect(reply.ok ? reply.answer.lead : reply.fault.code).toBe(code);
  });
});

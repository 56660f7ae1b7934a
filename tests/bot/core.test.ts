import { describe, expect, test } from 'vitest';
import { createBot, type LogEntry } from '../../src/index.ts';

const recipe = '500 g lard, 66 g NaOH, 150 g water';
const asked = (text: string, person = 'ada', place = 'shed') => ({ platform: 'test', place, person, text });

function logged(options: Parameters<typeof createBot>[0] = {}) {
  const entries: LogEntry[] = [];
  let count = 0;
  const bot = createBot({ log: (entry) => entries.push(entry), newId: () => `id-${++count}`, ...options });
  return { bot, entries };
}

describe('a request finds its command', () => {
  const { bot } = logged();
  test.each([
    ['check 500 g lard, 66 g NaOH, 150 g water', 'check'],
    ['check: 500 g lard, 66 g NaOH, 150 g water', 'check'],
    ['CHECK\n500 g lard\n66 g NaOH\n150 g water', 'check'],
    ['/check 500 g lard, 66 g NaOH, 150 g water', 'check'],
    [recipe, 'check'],
    ['check 500 g lard', 'lye'],
    ['500 g lard', 'lye'],
    ['lye: 500 g lard', 'lye'],
    ['how much lye for 500 g lard?', 'lye'],
    ['Lye 66 g\nlard 500 g\nwater 150 g', 'check'],
    [
      'olive 500 g\ncoconut 300 g\nNaOH 121 g\nwater 300 g\nSteps:\n 1. Cooker on LOW, melt it (15 min)\n 2. lid on! 1 h, look every 15 min\n 3. zap test ok, off, wait till under 80 °C\n 4. glop in mould\nTell me what the figures come to.',
      'check',
    ],
    [
      'olive 500 g\ncoconut 300 g\nNaOH 121 g\nwater 300 g\nSteps:\n 1. Cooker on LOW, melt it (15 min)\n 2. lid on! 1 h, look every 15 min\n 3. zap test ok, off, wait till under 80 °C\n 4. glop in mould\nWhat do my numbers say?',
      'check',
    ],
    ['lye: 66 g\nlard: 500 g\nwater: 150 g', 'check'],
    ['lye (NaOH) 66 g, lard 500 g, water 150 g', 'check'],
    ['lye is 66 g for 500 g lard', 'check'],
    ['lye ok? 500 g lard 66 g naoh 150 g water', 'check'],
    ['Lye purity 97 % (old tub). Used 66 g of it, 500 g lard, 150 g water', 'check'],
    ['Lye weight 66 g, 500 g lard, 150 g water', 'check'],
    ['lye weight for 500 g lard?', 'lye'],
    ['lye 500 g lard, 66 g NaOH', 'check'],
    ['lye for 500 g lard', 'lye'],
    ['lye: 500 g olive oil\n200 g coconut oil', 'lye'],
    ['lye please, 1.5 kg lard', 'lye'],
    ['Scale reads 1.2 kg lard and 0.4 kg coconut, lye 225 g, water 500 g', 'check'],
    ['no scale for the oils (a scale for the lye, yes): 2 cups olive, 1 cup coconut, how many grams of lye?', 'lye'],
    ['coconut, olive and palm in equal parts, 900 g oils total, lye pls', 'lye'],
    ['100% lard soap 2 lb, how much lye', 'lye'],
    ['100% olive bar, 1 kg of oil, lye?', 'lye'],
    ['safety', 'safety'],
    ['Safety!', 'safety'],
    ['what gloves and goggles do I need before I touch lye?', 'safety'],
    ['how do I store NaOH', 'safety'],
    ['gloves on! 500 g lard, 66 g NaOH, 150 g water', 'check'],
    ['check 500 g lard, 66 g NaOH: it splashed in my eye', 'safety'],
    ['help', 'help'],
    ['hello', 'help'],
  ])('%s', async (text, command) => {
    const reply = await bot.ask(asked(text));
    expect(reply.ok && reply.answer.command).toBe(command);
  });

  test('"lye" first in a list without units stays an ingredient', async () => {
    const reply = await bot.ask(asked('lye 102\nolive 450\ncoconut 225\nwater 230'));
    expect(!reply.ok && reply.fault.message).toContain('lye 102');
    expect(await bot.ask(asked('lye water 200 g, lard 500 g'))).toMatchObject({
      ok: false,
      fault: { code: 'unclear' },
    });
  });

  test.each(['lye 75 g water 150 g shea 60 g coconut 150 g olive', 'lye 75g water 150g coconut 150g and olive, ok?'])(
    '"lye" first in a row that may be paired either way is asked about: %s',
    async (text) => expect(await bot.ask(asked(text))).toMatchObject({ ok: false, fault: { code: 'unclear' } }),
  );

  test('a mistyped command is met with the nearest, and a recipe after it is read', async () => {
    expect(await bot.ask(asked('chekc'))).toMatchObject({
      ok: false,
      fault: { code: 'unknown', candidates: ['check'] },
    });
    for (const text of ['chekc: 500 g lard, 66 g NaOH', 'chekc 500 g lard, 66 g NaOH']) {
      expect(await bot.ask(asked(text))).toMatchObject({ ok: true, answer: { command: 'check' } });
    }
  });

  test('what holds nothing it knows is told so', async () => {
    expect(await bot.ask(asked('nice weather today'))).toMatchObject({ ok: false, fault: { code: 'unknown' } });
    expect(await bot.ask({ ...asked('is my lye safe?'), person: 'newcomer' })).toMatchObject({
      ok: false,
      fault: { code: 'unclear' },
    });
    expect(await bot.ask(asked(''))).toMatchObject({ ok: false, fault: { code: 'unknown' } });
  });
});

test('a post that is too long is told so, but never in the way of first aid', async () => {
  const { bot } = logged();
  const long = 'olive oil 5 g, '.repeat(10_000);
  expect(await bot.ask(asked(long))).toMatchObject({ ok: false, fault: { code: 'too-long' } });
  expect(await bot.ask(asked(`${long} lye splashed in my eye`))).toMatchObject({
    ok: true,
    answer: { command: 'safety' },
  });
});

describe('when the catalogue cannot be read', () => {
  const { bot, entries } = logged({
    catalogue: () => {
      throw new Error('no data');
    },
  });

  test('first aid works all the same', async () => {
    for (const text of ['safety', 'lye in my eye', 'my dog drank lye', 'details']) {
      expect((await bot.ask(asked(text))).ok, text).toBe(true);
    }
    expect((await bot.ask(asked('help'))).ok).toBe(true);
  });

  test('anything else fails with a number to pass on, and the log holds the error', async () => {
    const reply = await bot.ask(asked(recipe));
    expect(reply).toMatchObject({ ok: false, fault: { code: 'failed' } });
    if (reply.ok) return;
    expect(reply.fault.hint).toContain(reply.id);
    expect(reply.fault.hint).toContain('safety');
    expect(entries.at(-1)).toMatchObject({ id: reply.id, outcome: 'failed', error: new Error('no data') });
  });
});

test('the log holds no word of what was said and nobody’s name', async () => {
  const { bot, entries } = logged();
  for (const text of [recipe, 'secret sauce', 'lye in my eye', '500 g vegetable oil, 66 g NaOH'])
    await bot.ask(asked(text));
  expect(entries.map(({ outcome }) => outcome)).toEqual(['answered', 'unknown', 'answered', 'unclear']);
  expect(JSON.stringify(entries)).not.toMatch(/lard|secret|eye|vegetable|ada|shed/);
});

describe('details', () => {
  test('belong to one person in one place', async () => {
    const { bot } = logged();
    await bot.ask(asked(recipe));
    const details = await bot.ask(asked('details'));
    expect(details.ok && details.answer.body.some(({ kind }) => kind === 'table')).toBe(true);
    expect(details.ok && details.answer.caution.length).toBeGreaterThan(0);
    for (const other of [asked('details', 'ben'), asked('details', 'ada', 'kitchen')]) {
      expect(await bot.ask(other)).toMatchObject({ ok: false, fault: { code: 'unclear' } });
    }
  });

  test('can stand before a recipe', async () => {
    const { bot } = logged();
    const reply = await bot.ask(asked(`details ${recipe}`));
    expect(reply.ok && reply.answer.body.some(({ kind }) => kind === 'table')).toBe(true);
  });
});

test('completion goes on where the last words end', () => {
  const { bot } = logged();
  expect(bot.complete('che')).toContain('check');
  expect(bot.complete('check 450 g olive o')).toContain('olive oil');
  expect(bot.complete('450 g palm k')).toEqual(expect.arrayContaining(['palm kernel oil']));
  expect(bot.complete('')).toEqual([]);
});

test('what one text tells of an accident is not taken for another', async () => {
  const { bot } = logged();
  const said: (string | null)[] = [];
  for (const text of [recipe, 'lye splashed in my eye', recipe, 'lye splashed in my eye', '3/4 cup shea in grams']) {
    const reply = await bot.ask(asked(text));
    said.push(reply.ok ? reply.answer.command : null);
  }
  expect(said).toEqual(['check', 'safety', 'check', 'safety', 'convert']);
});

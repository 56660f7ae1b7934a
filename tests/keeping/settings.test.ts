import { describe, expect, test } from 'vitest';
import { StoreTrouble } from '../../src/store/port.ts';
import { house, resultOf, textOf } from './talk.ts';

const set = async (words: string) => {
  const { ask } = house();
  return resultOf(await ask(`settings ${words}`))['settings'];
};

describe('settings are read from the words of people', () => {
  test.each([
    ['oz', { weights: 'oz' }],
    ['weights in grams', { weights: 'g' }],
    ['°F', { temperature: '°F' }],
    ['temperatures: celsius', { temperature: '°C' }],
    ['metric cups', { cup: 'metric' }],
    ['cups UK', { cup: 'imperial' }],
    ['scale 0.1 g', { step: 0.1 }],
    ['my scale shows 0,1 g', { step: 0.1 }],
    ['step=0.01g', { step: 0.01 }],
    ['KOH 92 %', { koh: 0.92 }],
    ['sodium hydroxide is 98 % pure', { naoh: 0.98 }],
    ['superfat 8', { superfat: 0.08 }],
    ['water 2:1', { water: { kind: 'ratio', value: 2 } }],
    ['30 % solution', { water: { kind: 'concentration', value: 0.3 } }],
    ['water 38 %', { water: { kind: 'share-of-fat', value: 0.38 } }],
    ['decimal comma', { decimal: ',' }],
    ['room 18 °C', { room: 18 }],
    ['room temperature 68 F', { room: 20 }],
    ['pot 6 l slow cooker, lid off', { pot: '6 l slow cooker, lid off' }],
    ['mould 24 x 8 x 6 cm', { mould: '24 x 8 x 6 cm' }],
    ['time zone lisbon', { timeZone: 'Europe/Lisbon' }],
    ['new york time zone', undefined],
    ['time zone new york', { timeZone: 'America/New_York' }],
    ['language pt-br', { language: 'pt-BR' }],
    ['brief answers', { answers: 'brief' }],
    ['scale 0.1 g, superfat 8 % and ounces; full', { step: 0.1, superfat: 0.08, weights: 'oz', answers: 'full' }],
  ])('%s', async (words, wanted) => {
    if (wanted) expect(await set(words)).toEqual(expect.objectContaining(wanted));
    else {
      const { ask } = house();
      expect((await ask(`settings ${words}`)).ok).toBe(false);
    }
  });

  test.each([
    ['superfat −5 %', 'burns skin'],
    ['superfat 80 %', 'can’t be'],
    ['scale 5 kg', 'no setting'],
    ['KOH 140 %', 'can’t be'],
    ['purity 90 %', 'Of which alkali'],
    ['room 200 °C', 'none to make soap in'],
    ['time zone Atlantis', 'no time zone'],
    ['time zone UTC+2', 'no time zone'],
    ['language klingon-language-tag-far-too-long', 'no language tag'],
    ['mould big', 'size of the mould'],
    ['mould 24 x 8 x 6', 'centimetres or inches'],
    ['pot blue', 'what kind of pot'],
    ['favourite colour green', 'no setting'],
    ['superfat 8 %, blub', 'no setting'],
  ])('%s is refused, and nothing is changed', async (words, why) => {
    const { ask } = house();
    await ask('settings superfat 7 %');
    const reply = await ask(`settings ${words}`);
    expect(reply.ok).toBe(false);
    expect(textOf(reply)).toContain(why);
    expect(resultOf(await ask('settings'))['settings']).toEqual({ superfat: 0.07 });
  });

  test('taken back one by one or all at once', async () => {
    const { ask } = house();
    await ask('settings superfat 7 %, scale 0.1 g, oz');
    expect(textOf(await ask('settings forget superfat and scale'))).toContain('superfat 5 % (it was 7 %)');
    expect(resultOf(await ask('my settings'))['settings']).toEqual({ weights: 'oz' });
    await ask('settings reset');
    expect(resultOf(await ask('settings'))['settings']).toEqual({});
  });
});

/** Each: what is set, what is asked, what the answer then says, and how it names the setting. */
describe('every answer takes them and names them', () => {
  test.each([
    ['scale 0.1 g', 'lye 500 g lard', /66\.8 g sodium/, 'scale 0.1 g'],
    ['superfat 8 %', 'lye 500 g lard', /Weigh 64 g/, 'superfat 8 %'],
    ['superfat 8 %', '500 g lard, 66 g NaOH, 150 g water', /leave at least 8 %/, 'superfat 8 %'],
    ['water 2:1', 'lye 500 g lard', /132 g water/, 'water 2 g to 1 g alkali'],
    [
      'water 30 % solution',
      'strength: how much water for 140 g NaOH',
      /326\.7 g water|327 g water/,
      '30 % lye solution',
    ],
    ['KOH 80 %', 'lye alkali=KOH 500 g lard', /80 % pure/, 'potassium hydroxide (KOH) 80 % pure'],
    ['NaOH 98 %', '500 g lard, 66 g NaOH, 150 g water', /98 % pure/, 'sodium hydroxide (NaOH) 98 % pure'],
    ['oz', 'lye 500 g lard', /2\.33? oz \(66 g\)|2\.32 oz \(66 g\)/, 'weights in ounces'],
    ['oz', 'lye: lard 16, coconut oil 8', /16 oz/, 'weights in ounces'],
    ['°F', 'solution 100 g NaOH, 200 g water', /\d °F/, 'temperatures in °F'],
    ['°F', 'cool soap at 190, to 150', /At 150 °F/, 'temperatures in °F'],
    ['metric cups', 'convert 1 cup water in grams', /About 24\d\.?\d* g|About 250 g/, 'cups metric (250 mL)'],
    ['decimal comma', 'strength of 150 g NaOH in 301 g water', /33,3 %/, 'decimal comma'],
    ['room 12 °C', 'cool 92 °C at 0 min, 86 at 10 min, target 70 °C', /At 70 °C/, 'room 12 °C'],
    ['pot 12 l steel pot, lid off', 'cool: 1.5 kg soap at 90 °C, to 65 °C', /65 °C/, 'pot 12 l steel pot, lid off'],
    [
      'mould 24 x 8 x 6 cm',
      'scale to my mould: 500 g lard, 66 g NaOH, 150 g water',
      /times the recipe/,
      'mould 24 x 8 x 6 cm',
    ],
    [
      'brief',
      '500 g lard, 66 g NaOH, 150 g water',
      /^Your sodium hydroxide \(NaOH\) fits[^\n]*\nI read/,
      'brief answers',
    ],
  ])('%s: %s', async (words, question, shown, named) => {
    const { ask } = house();
    const before = textOf(await ask(question));
    await ask('restart');
    await ask(`settings ${words}`);
    const text = textOf(await ask(question));
    expect(text).toMatch(shown);
    expect(text).toMatch(/I took your settings?: /);
    expect(text).toContain(named);
    expect(before).not.toContain('your setting');
    // nobody else's answers change
    expect(textOf(await ask(question, { person: 'bea' }))).toBe(before);
  });

  test.each([
    ['scale 0.1 g', 'lye step=1g 500 g lard', 'scale 0.1 g'],
    ['superfat 8 %', 'lye superfat=3 500 g lard', 'superfat 8 %'],
    ['superfat 8 %', 'lye 500 g lard, superfat 3 %', 'superfat 8 %'],
    ['water 2:1', 'lye 500 g lard, 33 % solution', 'water 2 g'],
    ['KOH 80 %', 'lye alkali=KOH purity=90% 500 g lard', '80 % pure'],
    ['oz', 'lye unit=g 500 g lard', 'ounces'],
    ['metric cups', 'convert 1 cup (UK) water in grams', 'cups metric'],
    ['room 12 °C', 'cool 92 °C at 0 min, 86 at 10 min, room 20 °C, target 70 °C', 'room 12'],
    ['°F', 'cool 92 °C at 0 min, 86 at 10 min, room 20 °C, target 70 °C', '°F'],
  ])('what is said wins over %s: %s', async (words, question, named) => {
    const { ask } = house();
    await ask(`settings ${words}`);
    const text = textOf(await ask(question));
    expect(text).not.toContain(named);
    expect(text).toBe(textOf(await ask(question, { person: 'bea' })));
  });

  test('brief leaves the rest to "details", with the caution; full shows all', async () => {
    const { ask } = house();
    const post = '500 g lard, 66 g NaOH, 150 g water';
    const usual = textOf(await ask(post));
    await ask('settings brief');
    const brief = await ask(post);
    expect(textOf(brief).length).toBeLessThan(usual.length);
    expect(brief.ok && brief.answer.caution.length).toBeGreaterThan(0);
    expect(textOf(await ask('details'))).toContain('Excess alkali is very unlikely');
    await ask('settings full');
    expect(textOf(await ask(post))).toContain('Where the values come from');
  });

  test('times are by the clock of the person', async () => {
    const { ask } = house({ now: () => Date.UTC(2026, 6, 1, 10, 0), zone: 'UTC' });
    const post = '500 g lard, 66 g NaOH, 150 g water';
    await ask(post);
    expect(textOf(await ask('at 8 %'))).toContain('from 10:00 UTC');
    await ask('settings time zone Tokyo');
    expect(textOf(await ask('at 7 %'))).toContain('from 19:00,');
  });
});

describe('a room', () => {
  const host = { person: 'host', isHost: true, isPrivate: false };
  test('its host sets what holds for everybody who has set nothing', async () => {
    const { ask } = house();
    expect(textOf(await ask('settings for this room: scale 0.1 g', { isPrivate: false }))).toContain('Only a host');
    expect(resultOf(await ask('settings for this room: scale 0.1 g, superfat 7 %', host))).toMatchObject({
      room: { step: 0.1 },
    });
    await ask('settings superfat 3 %');
    const text = textOf(await ask('lye 500 g lard'));
    expect(text).toContain('I took your setting: superfat 3 %.');
    expect(text).toContain('I took this room’s setting: scale 0.1 g.');
    expect(textOf(await ask('lye 500 g lard', { place: 'elsewhere' }))).not.toContain('scale 0.1 g');
  });

  test('one’s own are not shown where others read', async () => {
    const { ask } = house();
    await ask('settings time zone Tokyo');
    const text = textOf(await ask('settings', { isPrivate: false }));
    expect(text).not.toContain('Tokyo');
    expect(text).toContain('direct message');
  });
});

describe('a store that cannot be read', () => {
  const trouble = () => Promise.reject(new StoreTrouble('held', 'The folder is in use by the chat.', 'Ask there.'));
  test('costs no answer, and the answer says so; what keeps something says why it does not', async () => {
    const { ask } = house({ store: trouble });
    const text = textOf(await ask('500 g lard, 66 g NaOH, 150 g water'));
    expect(text).toContain('Your sodium hydroxide (NaOH) fits');
    expect(text).toContain('I took the usual settings: yours can’t be read now.');
    expect(textOf(await ask('recipe list'))).toContain('in use by the chat');
    expect(textOf(await ask('lye in my eye'))).toMatch(/water/i);
  });

  test('a store is not opened for a question before anything was kept', async () => {
    let opened = 0;
    const { ask, store } = house({
      store: async () => {
        opened += 1;
        return store as never;
      },
      peek: async () => null,
    });
    expect((await ask('500 g lard, 66 g NaOH, 150 g water')).ok).toBe(true);
    expect(opened).toBe(0);
  });
});

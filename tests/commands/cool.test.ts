import { describe, expect, test } from 'vitest';
import { answer, fault, sameAs, shortLines } from './heat-ask.ts';

/** Newton's law of cooling through two readings, reckoned here: minutes on the clock of the first. */
function newton(first: number, second: number, minutes: number, target: number, room = 20): number {
  const rate = Math.log((first - room) / (second - room)) / minutes;
  return Math.log((first - room) / (target - room)) / rate;
}
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const nominal = async (text: string): Promise<number> =>
  ((await answer(text)).result['minutes'] as { nominal: number }).nominal;

/** Two readings in the ways people give them. */
const readings: readonly (readonly [string, number])[] = [
  ['pot was 92 °C at 0 min, 86 at 10 min, room 20. when is it 70?', newton(92, 86, 10, 70)],
  ['14:05 92 °C, 14:15 86 °C, when can i pour at 60?', newton(92, 86, 10, 60)],
  [
    'My soap was 180F at 2:00 and 172F at 2:10. When will it be 150F?',
    newton(celsius(180), celsius(172), 10, celsius(150)),
  ],
  ['8:15 pm 88°C, 8:30 pm 81°C. When will it be below 65?', newton(88, 81, 15, 65)],
  ["it was 92, after ten minutes it's 86, how long to 70", newton(92, 86, 10, 70)],
  ["fifteen minutes ago it was 90, now it's 84 degrees, how long until it drops under 65", newton(90, 84, 15, 65)],
  ['My lye is 85 °C now. It was 95 °C 10 minutes ago. When does it reach 45?', newton(95, 85, 10, 45)],
  ['dropped from 92 to 86 in 10 min, when 60?', newton(92, 86, 10, 60)],
  ['88°C → 82°C over 10 minutes; how long to reach 70°C in an 18°C workshop', newton(88, 82, 10, 70, 18)],
  ['93 degrees, ten minutes later 88, room 20. how long to 75?', newton(93, 88, 10, 75)],
  [
    'I measured 160F, then 152F a quarter of an hour later. When does it hit 120F?',
    newton(celsius(160), celsius(152), 15, celsius(120)),
  ],
  ["The pot went from 90 to 82 in 15 minutes, room's 19. When is it 48?", newton(90, 82, 15, 48, 19)],
  ['at 10:00 it was 85 °C, at 10:20 it was 75 °C, when is it 60 °C? kitchen 18 °C', newton(85, 75, 20, 60, 18)],
  ['92 °C (0 min), 86 °C (10 min): time to 60 °C', newton(92, 86, 10, 60)],
  ["half an hour ago it was 90, it's 75 now, 20 °C in the kitchen, when is it 50", newton(90, 75, 30, 50)],
  ['0 min 92°C; 10 min 86°C; target 65', newton(92, 86, 10, 65)],
  ['94 C at 12:00, 88 C at 12:06, room 22. 75 C when?', newton(94, 88, 6, 75, 22)],
  ['it takes 10 minutes to go from 90 to 85 C, room 21. when at 60?', newton(90, 85, 10, 60, 21)],
  ['my pot reads 87, five minutes ago 90, room 19 - how long to 65', newton(90, 87, 5, 65, 19)],
  ['cool 92 at 0, 86 at 10 min; target 60', newton(92, 86, 10, 60)],
  [
    'pot reads 190 at the start, 182 after 10 min, fahrenheit, when 150',
    newton(celsius(190), celsius(182), 10, celsius(150)),
  ],
];

test.each(readings)('%s', async (text, minutes) => {
  const { command } = await answer(text);
  expect(command).toBe('cool');
  // Two readings fix the law of one constant rate: the fit passes through both.
  expect(await nominal(text)).toBeCloseTo(minutes, 3);
});

test.each([
  [
    'started at 95, 10 minutes later 89, another 10 minutes later 84, when is it 60?',
    'cool 95 °C at 0 min, 89 at 10 min, 84 at 20 min, target 60',
  ],
  [
    'First reading 91C, second 85C 12 minutes later, third 80C 12 min after that. When 70C? Room 20.',
    'cool 91 °C at 0 min, 85 at 12 min, 80 at 24 min, room 20, target 70',
  ],
  ['readings 92, 87, 82 every 10 minutes, want it at 55', 'cool 92 °C at 0 min, 87 at 10 min, 82 at 20 min, target 55'],
  [
    'T=0: 95, t=10: 89, t=20: 83, ambient 22, target 60',
    'cool 95 °C at 0 min, 89 at 10 min, 83 at 20 min, room 22, target 60',
  ],
  [
    'i took it off the heat at 92C, after 5 mins 89C, after 15 mins 84C and the room is 23. how much longer till 70?',
    'cool 92 °C at 0 min, 89 at 5 min, 84 at 15 min, room 23, target 70',
  ],
])('more than two: %s', sameAs);

test.each([
  [
    'how long will 3 lb of soap in a 5 quart crockpot with lid half on take to go from 185 F to 150 F',
    'cool 1360.777 g soap at 85 °C in a 4.7317647 l slow cooker, lid half, to 65.5556 °C',
  ],
  [
    '2 kg of batter in a wooden mould wrapped in towels, 75 °C, room 18 °C, how long until 40 °C?',
    'cool 2000 g soap at 75 °C in a mould of wood, towels, room 18 °C, to 40 °C',
  ],
  [
    'soap is 82C, target 60C, 1 kg in an enamel pot, lid off. how long?',
    'cool 1 kg soap at 82 °C in an enamelled pot, no lid, to 60 °C',
  ],
  [
    'oils are at 80 °C, 1.2 kg in a steel pot, when are they 45 °C?',
    'cool 1.2 kg oils at 80 °C in a stainless steel pot to 45 °C',
  ],
  [
    'how long till my 500 g of melted coconut oil goes from 70 to 40 in a bowl',
    'cool 500 g oils at 70 °C in a glass bowl to 40 °C',
  ],
  [
    'steel pot, 3 kg of soap, 85 °C. When is it 65 °C with the lid on? And room is 15.',
    'cool 3 kg soap at 85 °C in a steel pot, lid on, room 15 °C, to 65 °C',
  ],
  [
    'my lye solution (110g NaOH, 250g water) is at 75C, when will it reach 38C?',
    'cool 110 g NaOH 250 g water now at 75 °C to 38 °C',
  ],
])('a pot in plain words: %s', async (said, plain) => {
  const [a, b] = await Array.fromAsync(
    [said, plain],
    async (text) => (await answer(text)).result['minutes'] as Record<'low' | 'nominal' | 'high', number>,
  );
  for (const end of ['low', 'nominal', 'high'] as const) expect(a?.[end]).toBeCloseTo(b?.[end] ?? Number.NaN, 1);
});

describe('towards a scent', () => {
  test.each([
    ['when can I add lavender, pot is at 88 °C', 59],
    ['when is my soap cool enough for peppermint, it’s at 80 °C', 60],
    ["add bergamot when? pot's 85°C", 44],
    ["when's it fine to add my FO with flashpoint 95C, soap at 98 C now", 89],
    ['pot 88 °C at 0 min, 80 at 12 min, when can the lavender and tea tree go in', 48],
  ])('%s', async (text, below) => {
    const { command, lead, result } = await answer(text);
    expect(command).toBe('cool');
    expect(result['addBelowC']).toBe(below);
    expect(lead).toContain(`${below} °C or below`);
  });

  test('yes or no first', async () => {
    expect((await answer('can i add lemongrass at 75 C?')).lead).toMatch(/^Not yet: at 64 °C or below/);
    expect((await answer('can I add patchouli at 80 °C?')).lead).toMatch(/^Yes/);
  });

  test('where it would have set by then, what to do', async () => {
    expect(shortLines(await answer('when can I add sweet orange, pot is at 88 °C')).join(' ')).toMatch(
      /stiffens .* fluid .* flashes higher .* accept some loss/,
    );
  });
});

test('more insulation is never faster, a lid neither', async () => {
  const time = (how: string): Promise<number> => nominal(`cool 1.5 kg soap at 90 °C in a steel pot, ${how}, to 65 °C`);
  expect(await time('lid on')).toBeGreaterThan(await time('lid half'));
  expect(await time('lid half')).toBeGreaterThan(await time('lid off'));
  expect(await time('lid on, wrapped in a towel')).toBeGreaterThan(await time('lid on'));
});

test('a pot alone is no description: the readings rule', async () => {
  expect(await nominal('pot was 92 °C at 0 min, 86 at 10 min, when is it 70?')).toBeCloseTo(newton(92, 86, 10, 70), 3);
  const scaled = await nominal('2 kg soap in a steel pot, lid off: 92 °C at 0 min, 86 at 10 min, when is it 40?');
  // A described pot cools slower late than one constant rate says.
  expect(scaled).toBeGreaterThan(newton(92, 86, 10, 40) * 1.02);
});

describe('what cannot be', () => {
  test.each([
    ['pot was 90 c at 0 min and 84 at 10 min room 22 when does it reach 15 c', /room/],
    ['how long for my 60 c pot to cool to 80 c, room 20 c', /already/],
    ['cool 80 °C at 0 min, 88 at 10 min, target 60', /rise/],
    ['cool 5 kg soap at 90 °C in a 2 l pot, to 60 °C', /fit/],
    ['when will my 900 g pot at 85c be 20c in a 20c room', /room/],
  ])('%s', async (text, why) => {
    const { code, message, hint, caution } = await fault(text);
    expect(code).toBe('impossible');
    expect(message).toMatch(why);
    expect(hint).not.toBe('');
    expect(caution).not.toEqual([]);
  });
});

test('what is missing is asked, and a short answer completes it', async () => {
  expect((await fault('how long does my pot at 90 °C take to cool')).message).toContain('what temperature');
  expect((await fault('how long to cool 1 kg soap to 62 °C?')).message).toContain('How hot');
});

test('the curve falls from the start to the target, and the look lies before it', async () => {
  const { curve, minutes, lookAtMinute, minutesLeft } = (
    await answer('1.5 kg batch at 90 °C in a 6 l slow cooker, lid off, how long to 65 °C')
  ).result as unknown as {
    curve: readonly { minute: number; temperatureC: number; lowC: number; highC: number }[];
    minutes: { low: number; nominal: number; high: number };
    lookAtMinute: number;
    minutesLeft: number;
  };
  expect(curve[0]?.temperatureC).toBeCloseTo(90, 6);
  for (const [i, { temperatureC, lowC, highC }] of curve.entries()) {
    expect(lowC).toBeLessThanOrEqual(temperatureC + 1e-9);
    expect(temperatureC).toBeLessThanOrEqual(highC + 1e-9);
    if (i > 0) expect(temperatureC).toBeLessThan(curve[i - 1]?.temperatureC ?? 0);
  }
  expect(curve.at(-1)?.highC).toBeCloseTo(65, 1);
  expect(lookAtMinute).toBeLessThan(minutes.low);
  expect(minutesLeft).toBe(minutes.nominal);
});

test('°F in, °F out; a time of day comes back as it was written', async () => {
  const { lead } = await answer('8:15 pm 190 °F, 8:30 pm 178 °F. When is it 150 °F?');
  expect(lead).toContain('150 °F');
  expect(lead).toMatch(/about \d?\d:\d\d pm/);
  expect((await answer('14:05 92 °C, 14:15 86 °C, when 60 °C')).lead).toMatch(/about 15:\d\d\./);
});

test('eight short lines at most', async () => {
  for (const text of ['when can I add lavender, pot is at 88 °C', '92 °C at 0 min, 86 at 10 min, target 70'])
    expect(shortLines(await answer(text)).length).toBeLessThanOrEqual(8);
});

import { expect, test } from 'vitest';
import { atPot } from './pot.ts';

interface Shown {
  readonly id: string;
  readonly dueAt: string;
  readonly text: string;
  readonly late: boolean;
}

test('set, listed, moved, cancelled: by number, by words, by id', async () => {
  const pot = atPot();
  const reminders = async (text = 'remind list') => (await pot.result(text))['reminders'] as readonly Shown[];
  expect(await pot.say('remind list')).toContain('No reminder is set');
  expect(await pot.say('remind me to turn the bars in 3 days')).toContain(
    'on Sunday 29 November at 11:00: turn the bars',
  );
  expect(await pot.say('set a timer for 15 minutes')).toContain('today at 11:15: time is up');
  expect(await reminders()).toMatchObject([
    { text: 'time is up', dueAt: '2026-11-26T11:15:00.000Z', late: false },
    { text: 'turn the bars', dueAt: '2026-11-29T11:00:00.000Z' },
  ]);
  expect(await pot.say('remind move 1 to tomorrow at 9:00')).toContain('turn the bars, now tomorrow at 09:00');
  expect(await pot.say('remind snooze time is up 10 min')).toContain('11:10');
  expect(await pot.say('remind move 1 2 days later')).toContain('29 November at 09:00');
  const [first] = await reminders();
  expect(await pot.say(`remind cancel ${first?.id}`)).toContain('Cancelled: time is up');
  expect(await pot.say('remind cancel bars')).toContain('Cancelled: turn the bars');
  expect(await reminders()).toEqual([]);
});

test('words that only look like a wish to cancel or to move are what is to be told', async () => {
  const pot = atPot();
  expect(await pot.say('remind me to stop the cooker in 20 min')).toContain('11:20: stop the cooker');
  expect(await pot.say('remind me to move the mould in 2 hours')).toContain('13:00: move the mould');
  expect(await pot.asksBack('remind cancel 7')).toContain('Which one');
});

test('a time that is none is asked for, and the answer completes it', async () => {
  const pot = atPot();
  expect(await pot.asksBack('remind me to stir')).toContain('When?');
  expect(await pot.say('in 10 min')).toContain('11:10: stir');
  expect(await pot.asksBack('remind me to cut in 5 parsecs')).toContain('parsecs');
  expect(await pot.say('hours')).toContain('16:00: cut');
  expect(await pot.asksBack('remind me at 9 to look')).toContain('has gone by');
  expect(await pot.say('tomorrow at 9:00')).toContain('tomorrow at 09:00: look');
  expect(await pot.asksBack('remind me to look yesterday')).toContain('has gone by');
  expect(await pot.asksBack('remind me every day to look')).toContain('once');
});

test('the zone is the person’s own, and the one that was taken is said', async () => {
  const pot = atPot();
  expect(await pot.say('remind me at 12:40 to look')).toContain('I took UTC as your time zone');
  await pot.say('settings time zone Europe/Berlin');
  const said = await pot.say('remind me at 12:40 to look');
  expect(said).not.toContain('I took UTC');
  const all = (await pot.result('remind list'))['reminders'] as readonly Shown[];
  expect(all.map(({ dueAt }) => dueAt)).toEqual(['2026-11-26T11:40:00.000Z', '2026-11-26T12:40:00.000Z']);
});

test('too long, too many, and where nothing can be told later', async () => {
  const pot = atPot();
  expect(await pot.asksBack(`remind in 5 min: ${'🧼'.repeat(5000)}`)).toContain('300 characters');
  const nowhere = { can: 'nowhere', why: 'I may not write in this channel.' } as const;
  expect(await pot.asksBack('remind in 5 min: look', { later: nowhere })).toContain('I may not write in this channel');
  const direct = { can: 'direct', why: 'I may not write here.', address: 'dm' } as const;
  expect(await pot.say('remind in 5 min: look', { later: direct })).toContain('direct message');
  expect((await pot.later(5))[0]?.address).toBe('dm');
  for (let i = 0; i < 200; i += 1) await pot.say('remind in 5 min: look');
  expect(await pot.asksBack('remind in 5 min: look')).toContain('200 reminders');
});

test('nobody sees, moves or cancels what is another’s', async () => {
  const pot = atPot();
  const [mine] = (await pot.result('remind in 5 min: secret'))['reminders'] as readonly Shown[];
  const bob = { person: 'bob' };
  expect(await pot.say('remind list', bob)).not.toContain('secret');
  for (const text of [
    'remind cancel 1',
    `remind cancel ${mine?.id}`,
    'remind move 1 in 2 hours',
    'remind cancel secret',
  ])
    expect(await pot.asksBack(text, bob)).not.toContain('secret (');
  expect((await pot.later(5)).map(({ person }) => person)).toEqual(['ada']);
});

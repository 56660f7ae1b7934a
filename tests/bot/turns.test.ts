import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fresh, makeSessions, restsFor } from '../../src/bot/turns/store.ts';
import { type Bot, createBot, type Reply, renderJson, renderPlain } from '../../src/index.ts';

const start = new Date(2026, 5, 14, 10, 42).getTime();

interface Room {
  readonly bot: Bot;
  readonly say: (text: string, person?: string, place?: string, platform?: string) => Promise<Reply>;
  readonly wait: (minutes: number) => void;
}

function room(): Room {
  let now = start;
  let id = 0;
  const bot = createBot({ now: () => now, newId: () => `id${++id}` });
  return {
    bot,
    say: (text, person = 'Ann', place = 'shed', platform = 'test') => bot.ask({ platform, place, person, text }),
    wait: (minutes) => {
      now += minutes * 60_000;
    },
  };
}

const recipe = '500 g olive oil, 200 g coconut oil, 98 g NaOH, 230 g water';
const textOf = (reply: Reply): string => renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });
const gramsOf = (reply: Reply): Readonly<Record<string, number>> => {
  if (!reply.ok) throw new Error(reply.fault.message);
  const { recipe: told } = reply.answer.result as { recipe: { fats: { id: string; grams: number }[] } };
  return Object.fromEntries(told.fats.map(({ id, grams }) => [id, grams]));
};

describe('several recipes in one post', () => {
  const two = 'Recipe 1: 500 g lard, 66 g NaOH, 150 g water\nRecipe 2: 500 g olive oil, 64 g NaOH, 140 g water';

  it.each([
    ['the second', 'olive-oil-virgin'],
    ['first', 'lard'],
    ['recipe 2', 'olive-oil-virgin'],
  ])('are chosen from by "%s"', async (said, fat) => {
    const { say } = room();
    const asked = await say(two);
    expect(!asked.ok && asked.fault.candidates).toEqual(['the first', 'the second']);
    expect(Object.keys(gramsOf(await say(said)))).toEqual([fat]);
    expect(textOf(await say('make that 8 %'))).toMatch(/8 % superfat/);
  });
});

describe('a conversation', () => {
  it('is named, with its time, where an answer rests on it', async () => {
    const { say, wait } = room();
    expect(textOf(await say(recipe))).not.toContain('10:42');
    wait(3);
    const corrected = await say('the coconut was 250');
    expect(corrected.ok && corrected.answer.assumptions[0]).toBe(
      'I took your recipe from 10:42, with 250 g coconut oil.',
    );
    wait(2);
    const scaled = await say('double it');
    expect(scaled.ok && scaled.answer.assumptions[0]).toMatch(
      /^I took your recipe from 10:45: olive oil \(virgin\) 500 g, coconut oil 250 g, 98 g sodium hydroxide \(NaOH\) and water 230 g\.$/,
    );
    const posted = await say('summary');
    expect(posted.ok && posted.answer.assumptions[0]).toBe('I took your recipe from 10:47.');
  });

  it('lasts half an hour after the last word, and no longer', async () => {
    const { say, wait } = room();
    await say(recipe);
    wait(29);
    expect((await say('summary')).ok).toBe(true);
    wait(29);
    expect((await say('double it')).ok).toBe(true);
    wait(30);
    const late = await say('double it');
    expect(!late.ok && late.fault.code).toBe('unclear');
    expect(restsFor).toBe(30 * 60_000);
  });

  it('answers a question back only while it lasts', async () => {
    const { say, wait } = room();
    await say('lye for 500 olive 200 coconut');
    wait(31);
    expect((await say('grams')).ok).toBe(false);
    await say('lye for 500 olive 200 coconut');
    expect(gramsOf(await say('grams'))).toEqual({ 'olive-oil-virgin': 500, 'coconut-oil': 200 });
  });

  it.each(['start over', 'Start over, please!', 'forget it', 'restart'])('ends with "%s"', async (words) => {
    const { say } = room();
    await say(recipe);
    expect((await say(words)).ok).toBe(true);
    for (const text of ['summary', 'double it', 'explain the superfat', 'details', 'the coconut was 250 g']) {
      const reply = await say(text);
      if (reply.ok) expect(gramsOf(reply)).toEqual({ 'coconut-oil': 250 });
    }
  });

  it('belongs to one person, in one place, on one platform', async () => {
    const { say } = room();
    await say(recipe);
    for (const [person, place, platform] of [
      ['Bo', 'shed', 'test'],
      ['Ann', 'barn', 'test'],
      ['Ann', 'shed', 'other'],
    ] as const) {
      expect((await say('double it', person, place, platform)).ok).toBe(false);
      expect((await say('summary', person, place, platform)).ok).toBe(false);
    }
    expect(gramsOf(await say('double it'))).toEqual({ 'olive-oil-virgin': 1000, 'coconut-oil': 400 });
  });

  it('takes names with any signs in them for different people', async () => {
    const { say } = room();
    await say(recipe, 'a","b', 'c');
    expect((await say('summary', 'a', 'b","c')).ok).toBe(false);
  });

  it('survives a conversion, an accident and thanks', async () => {
    const { say } = room();
    await say(recipe);
    expect((await say('180f in c')).ok).toBe(true);
    const aid = await say('lye splashed in my eye!!');
    expect(aid.ok && aid.answer.command).toBe('safety');
    expect((await say('thanks!')).ok).toBe(true);
    expect(gramsOf(await say('summary'))).toEqual({ 'olive-oil-virgin': 500, 'coconut-oil': 200 });
  });

  it('begins afresh with a whole recipe, whatever went before', async () => {
    const { say } = room();
    await say(recipe);
    const next = '400 g lard, 100 g castor oil, 62 g naoh, 140 g water';
    const alone = await room().say(next);
    const after = await say(next);
    expect(after.ok && after.answer.assumptions).toEqual(alone.ok && alone.answer.assumptions);
    expect(gramsOf(after)).toEqual({ lard: 400, 'castor-oil': 100 });
  });

  it('corrects the post that waits for an answer, and no older recipe', async () => {
    const { say } = room();
    await say(recipe);
    await say('lye for 300 lard 100 coconut');
    const corrected = await say('the coconut was 250 g');
    expect(!corrected.ok && corrected.fault.message).toMatch(/In which unit\? I read lard 300\b/);
    expect(gramsOf(await say('grams'))).toEqual({ lard: 300, 'coconut-oil': 250 });
  });

  it('goes back to the recipe before the last change', async () => {
    const { say } = room();
    await say(recipe);
    await say('without the coconut');
    expect(gramsOf(await say('undo'))).toEqual({ 'olive-oil-virgin': 500, 'coconut-oil': 200 });
  });

  it('gives details of the last answer to the one who asked', async () => {
    const { say } = room();
    await say(recipe);
    await say('500 g lard, 66 g NaOH, 150 g water', 'Bo');
    expect(textOf(await say('details'))).toContain('Coconut oil');
    expect(textOf(await say('details', 'Bo'))).not.toContain('Coconut oil');
  });
});

describe('a report', () => {
  it('tells the request, the reading and the versions, and no word that was written', async () => {
    const { say } = room();
    const checked = await say('is my lye right, says grandma? 500 g lard, 66 g NaOH, 150 g water');
    const reported = await say('that’s wrong');
    const text = textOf(reported);
    expect(text).toContain(`Request ${checked.id}`);
    expect(text).toMatch(/lyeward \d+\.\d+\.\d+/);
    expect(text).toContain('lard 500 g');
    expect(text).not.toMatch(/grandma/);
    expect(JSON.stringify(reported.ok && reported.answer.result)).not.toMatch(/grandma/);
    expect(textOf(await say('report with my words'))).toContain('grandma');
  });
});

describe('the store', () => {
  it('holds no more conversations than it may, the eldest go first', () => {
    const sessions = makeSessions(1000, 10);
    for (let k = 0; k < 50; k++) sessions.keep({ platform: 'p', place: 'q', person: `${k}` }, fresh, k);
    expect(sessions.size()).toBe(10);
    const kept = { ...fresh, newest: 'figure' as const };
    sessions.keep({ platform: 'p', place: 'q', person: '45' }, kept, 60);
    for (let k = 100; k < 109; k++) sessions.keep({ platform: 'p', place: 'q', person: `${k}` }, fresh, 60);
    expect(sessions.of({ platform: 'p', place: 'q', person: '45' }, 60)).toBe(kept);
    expect(sessions.of({ platform: 'p', place: 'q', person: '44' }, 60)).toBe(fresh);
  });

  it('lets go of what has rested too long as soon as anybody speaks', () => {
    const sessions = makeSessions(1000, 10);
    sessions.keep({ platform: 'p', place: 'q', person: 'a' }, fresh, 0);
    sessions.of({ platform: 'p', place: 'q', person: 'b' }, 1000);
    expect(sessions.size()).toBe(0);
  });
});

const lines = [
  recipe,
  '400 g lard, 100 g castor oil, 62 g naoh, 140 g water',
  'lye for 500 olive 200 coconut',
  'how much lye for 500 g butter at 5 %',
  'grams',
  'shea',
  'the coconut was 250',
  'no, palm kernel',
  'coconut',
  'make that 8 %',
  'it was KOH',
  'scale it to 1.2 kg',
  'batch',
  'double it',
  'summary',
  'explain the superfat',
  'details',
  'undo',
  '3/4 cup in grams',
  'and in oz?',
  'start over',
  'that’s wrong',
  'thanks',
  'lye splashed in my eye!!',
] as const;

describe('as a model', () => {
  it('talks to each of several people as if nobody else were there', async () => {
    const people = ['Ann', 'Bo', 'Cy'] as const;
    const turn = fc.record({
      person: fc.constantFrom(...people),
      place: fc.constantFrom('shed', 'barn'),
      text: fc.constantFrom(...lines),
      wait: fc.constantFrom(0, 0, 0, 5, 29, 31),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(turn, { minLength: 2, maxLength: 14 }), async (turns) => {
        // the model: a bot of their own for each person in each place, by the same clock
        const own = new Map<string, Room>();
        for (const { person, place } of turns) own.set(`${person} ${place}`, room());
        const together = room();
        for (const { person, place, text, wait } of turns) {
          together.wait(wait);
          for (const each of own.values()) each.wait(wait);
          const shared = await together.say(text, person, place);
          const alone = await own.get(`${person} ${place}`)?.say(text, person, place);
          if (!alone) throw new Error('no model');
          const told = (reply: Reply): string =>
            renderJson(reply.ok ? reply.answer : reply.fault).replace(/\bid\d+\b/g, 'id');
          expect(told(shared)).toBe(told(alone));
        }
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('has no bug that words behind a recipe could find', async () => {
    const word = fc.constantFrom(
      ...'no make that the coconut olive shea castor add without instead of 250 g 8 % 1.2 kg koh naoh 90 water 2:1 scale to mould 24x8x6 cm bars double why explain how sure summary in oz and not but swap for lavender salt milk 0 -5 ½ x'.split(
        ' ',
      ),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.array(word, { minLength: 1, maxLength: 7 }), { minLength: 1, maxLength: 6 }),
        async (turns) => {
          const { say } = room();
          await say(recipe);
          for (const words of turns) {
            const reply = await say(words.join(' '));
            expect(reply.ok ? '' : reply.fault.code).not.toBe('failed');
            if (reply.ok && ['check', 'lye', 'scale', 'summary'].includes(reply.answer.command))
              expect(reply.answer.caution.length).toBeGreaterThan(0);
          }
        },
      ),
      { numRuns: 200 },
    );
  }, 60_000);
});

/** Somebody at a pot: a bot with a store in memory, a clock that is turned by hand, and the bells that ring. */
import { expect } from 'vitest';
import type { Asked } from '../../src/bot/types.ts';
import { type Block, createBot, type Ring, renderJson, renderPlain } from '../../src/index.ts';
import type { Store } from '../../src/store/port.ts';
import { isAnswer, isFault } from '../contract/schemas.ts';
import { createModel } from '../store/model.ts';

const minute = 60_000;

export interface Pot {
  readonly store: Store;
  readonly now: () => number;
  /** Minutes later; what is due rings on the way. */
  readonly later: (minutes: number) => Promise<readonly Ring[]>;
  /** The whole answer as text; throws where it was not answered. */
  readonly say: (text: string, who?: Partial<Asked>) => Promise<string>;
  /** The whole fault as text; throws where it was answered. */
  readonly asksBack: (text: string, who?: Partial<Asked>) => Promise<string>;
  readonly result: (text: string, who?: Partial<Asked>) => Promise<Readonly<Record<string, unknown>>>;
  readonly files: (text: string) => Promise<readonly Extract<Block, { kind: 'file' }>[]>;
}

export function atPot(begins = Date.UTC(2026, 10, 26, 11, 0), zone = 'UTC'): Pot {
  let time = begins;
  const now = () => time;
  const store = createModel(now);
  const bugs: unknown[] = [];
  const bot = createBot({
    store: async () => store,
    now,
    zone,
    log: ({ error }) => {
      if (error !== null) bugs.push(error);
    },
  });
  const ask = async (text: string, who: Partial<Asked> = {}) => {
    const reply = await bot.ask({ platform: 'test', place: 'shed', person: 'ada', text, ...who });
    expect(bugs).toEqual([]);
    const said = reply.ok ? reply.answer : reply.fault;
    const json: unknown = JSON.parse(renderJson(said));
    if (reply.ok) isAnswer(json);
    else isFault(json);
    return { reply, text: renderPlain(said, { details: false }) };
  };
  return {
    store,
    now,
    later: async (minutes) => {
      const rung: Ring[] = [];
      const until = time + minutes * minute;
      while (true) {
        const next = await store.bells.next(['test']);
        if (next === null || next > until) break;
        time = Math.max(time, next);
        const end = new AbortController();
        let left = 0;
        const ringing = bot.ring({
          platforms: ['test'],
          tell: async (ring) => {
            rung.push(ring);
          },
          signal: end.signal,
          atOnce: true,
          pace: 0,
        });
        // until nothing is due any more at this moment
        while (((await store.bells.next(['test'])) ?? Number.POSITIVE_INFINITY) <= time && left < 1000) {
          left += 1;
          await new Promise((resolve) => setTimeout(resolve, 1));
        }
        end.abort();
        await ringing;
        expect(left).toBeLessThan(1000);
      }
      time = until;
      expect(bugs).toEqual([]);
      return rung;
    },
    say: async (text, who) => {
      const { reply, text: said } = await ask(text, who);
      expect(reply.ok, said).toBe(true);
      return said;
    },
    asksBack: async (text, who) => {
      const { reply, text: said } = await ask(text, who);
      expect(reply.ok, said).toBe(false);
      return said;
    },
    files: async (text) => {
      const { reply } = await ask(text);
      return reply.ok ? reply.answer.body.filter((block) => block.kind === 'file') : [];
    },
    result: async (text, who) => {
      const { reply, text: said } = await ask(text, who);
      if (!reply.ok) throw new Error(said);
      return reply.answer.result;
    },
  };
}

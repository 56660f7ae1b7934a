import type { Answer, Bot, Fault } from '../../src/index.ts';
import { coolingPot } from '../pictures.ts';

const caution = 'Before you mix: goggles, gloves, long sleeves; lye into water, never the other way.';

const picture = coolingPot(undefined, [{ label: 'target', y: 59 }]);

const answerTo = (text: string): Answer => ({
  command: 'lye',
  title: 'Echo',
  lead: `You said ${JSON.stringify(text)}`,
  body: [],
  details: text === 'draw' ? [{ kind: 'picture', picture, alt: 'It cools.' }] : [],
  assumptions: ['I took "lye" as sodium hydroxide.'],
  warnings: [],
  caution: [caution],
  actions: [],
  result: { value: text.length, unit: 'g' },
});

const unclear: Fault = {
  code: 'unclear',
  message: 'In which unit?',
  hint: 'Answer "grams" or "ounces".',
  candidates: ['grams', 'ounces'],
  caution: [],
};

export interface Recorded {
  readonly bot: Bot;
  /** What was asked, in order. */
  readonly heard: string[];
}

/** A core that repeats what it hears, asks back at "how much?" and has a bug at "bug". */
export function fakeBot(): Recorded {
  const heard: string[] = [];
  const bot: Bot = {
    ask: async ({ text }) => {
      heard.push(text);
      if (text === 'throw') throw new Error('thrown');
      if (text === 'how much?') return { id: 'a1', ok: false, fault: unclear };
      if (text === 'bug') return { id: 'a2', ok: false, fault: { ...unclear, code: 'failed' } };
      return { id: 'a3', ok: true, answer: answerTo(text) };
    },
    prepare: () => {},
    complete: () => ['check', 'palm oil', 'palm kernel oil', 'lard'],
    left: async () => {},
    joined: async () => {},
    ring: async () => {},
    present: async () => {},
    suggest: async () => [],
    close: async () => {},
  };
  return { bot, heard };
}

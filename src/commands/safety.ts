import type { Block } from '../answer/types.ts';
import { caution } from './cautions.ts';
import { defineCommand } from './define.ts';

/** Ways in which lye hurts, in the order of haste. */
export type Harm = 'eyes' | 'skin' | 'swallowed' | 'inhaled';

const titles: Readonly<Record<Harm, string>> = {
  eyes: 'In the eye',
  skin: 'On skin',
  swallowed: 'Swallowed',
  inhaled: 'Breathed in',
};
const harms = Object.keys(titles) as readonly Harm[];

const typed: readonly (readonly [RegExp, Harm])[] = [
  [/\b(?:eyes?|face)\b/i, 'eyes'],
  [/\b(?:skin|hands?|burns?|arms?|legs?|feet|foot)\b/i, 'skin'],
  [/\b(?:swallow\w*|drank|drink|ate|eat\w*|mouth|licked)\b/i, 'swallowed'],
  [/\b(?:inhal\w*|breath\w*|fumes?|lungs?|cough\w*)\b/i, 'inhaled'],
];

const gear = ['gear', 'lye-into-water', 'vessel', 'hot-lye', 'fumes', 'children-pets', 'spill', 'storage'] as const;

/** The one thing to do, before the steps. */
const leads: Readonly<Record<Harm, string>> = {
  eyes: 'Running water into the eye, now: seconds count.',
  skin: 'Brush dry lye off, then running water: now, and plenty of it.',
  swallowed: 'No vomiting. Call for help now.',
  inhaled: 'Into fresh air, now.',
};
const long = (id: string): string => caution(id).long;

const text = (said: string): Block => ({ kind: 'text', text: said });

/** Emergency and poison lines, one below the other. */
const numbers: readonly Block[] = long('emergency')
  .split(/ (?=Emergency:|Poison centres:|Numbers change)/)
  .slice(1)
  .map(text);

export const safety = defineCommand({
  id: 'safety',
  summary: 'First aid and protective gear, at once.',
  risk: 'caustic',
  options: {},
  examples: [
    { say: 'safety', about: 'first aid for lye, and what to wear' },
    { say: 'safety eyes', about: 'lye in an eye; also skin, swallowed, inhaled' },
  ],
  run: ({ text: said }) => {
    const harm = harms.find((one) => one === said.trim()) ?? typed.find(([words]) => words.test(said))?.[1] ?? null;
    const others = harms.filter((one) => one !== harm);
    const rest: Block = {
      kind: 'facts',
      rows: others.map((one) => ({
        label: titles[one],
        value: caution(`first-aid-${one}`).short.replace(/^[^:]*: /, ''),
      })),
    };
    const gearLine = ['gear', 'lye-into-water', 'vessel'].map((id) => caution(id).short).join(' ');
    return {
      ok: true,
      value: {
        title: 'First aid for lye',
        lead:
          harm === null
            ? 'Rinse at once with plenty of running water, and call for help while you rinse.'
            : leads[harm],
        body:
          harm === null
            ? [rest, text(caution('no-vinegar-on-skin').short), ...numbers, text(`Before you work: ${gearLine}`)]
            : [
                { kind: 'steps', steps: long(`first-aid-${harm}`).split(/(?<=\.) /) },
                ...(harm === 'swallowed' ? [text('An animal? Call a vet at once.')] : []),
                ...numbers,
                rest,
              ],
        details: [
          {
            kind: 'list',
            title: 'First aid',
            items: harms.map((one) => `${titles[one]}: ${long(`first-aid-${one}`)}`),
          },
          { kind: 'list', title: 'Before and while you work', items: gear.map(long) },
          text(long('not-a-professional')),
        ],
        assumptions: [],
        warnings: [],
        caution: [caution('emergency').short],
        actions: [{ label: 'more, and what to wear', request: 'details' }],
        result: {},
      },
    };
  },
});

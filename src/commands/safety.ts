import { caution } from './cautions.ts';
import { defineCommand } from './define.ts';

const aid = ['first-aid-eyes', 'first-aid-skin', 'first-aid-swallowed', 'first-aid-inhaled'] as const;
const titles: Readonly<Record<(typeof aid)[number], string>> = {
  'first-aid-eyes': 'In the eye',
  'first-aid-skin': 'On skin',
  'first-aid-swallowed': 'Swallowed',
  'first-aid-inhaled': 'Breathed in',
};
const gear = ['gear', 'lye-into-water', 'vessel', 'fumes', 'children-pets', 'hot-lye', 'spill', 'storage'] as const;

const long = (id: string): string => caution(id).long;

export const safety = defineCommand({
  id: 'safety',
  summary: 'First aid and protective gear, at once.',
  risk: 'caustic',
  options: {},
  examples: [{ say: 'safety', about: 'first aid for lye, and what to wear' }],
  run: () => ({
    ok: true,
    value: {
      title: 'First aid for lye',
      lead: 'Water first: rinse at once with plenty of running water, and call for help while you rinse.',
      body: [
        {
          kind: 'facts',
          rows: aid.map((id) => ({ label: titles[id], value: caution(id).short.replace(/^[^:]*: /, '') })),
        },
        { kind: 'text', text: long('emergency') },
        { kind: 'text', text: caution('no-vinegar-on-skin').short },
      ],
      details: [
        { kind: 'list', title: 'First aid', items: aid.map((id) => `${titles[id]}: ${long(id)}`) },
        { kind: 'list', title: 'Before and while you work', items: gear.map(long) },
      ],
      assumptions: [],
      warnings: [],
      caution: [caution('emergency').short],
      actions: [{ label: 'gear and more', request: 'details' }],
      result: {},
    },
  }),
});

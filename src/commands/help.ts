import type { Block } from '../answer/types.ts';
import { type AnyCommand, defineCommand } from './define.ts';
import { nearest } from './nearest.ts';

export const help = defineCommand({
  id: 'help',
  summary: 'What I can do; "help check" for one of it.',
  risk: 'plain',
  options: {},
  examples: [
    { say: 'help', about: 'all of it, in short' },
    { say: 'help check', about: 'one command' },
  ],
  // "help the scale flipped to oz halfway: babassu 7.5 oz, …" is a cry
  isIngredient: (_text, rest) => /\d/.test(rest) || (rest.match(/\p{L}+/gu) ?? []).length > 3,
  run: ({ text }, { commands }) => {
    const wanted = text.trim().toLowerCase().replace(/^\//, '');
    if (wanted === '') return { ok: true, value: overview(commands) };
    const ids = commands.map(({ id }) => id);
    const one = commands.find(({ id }) => id === wanted) ?? commands.find(({ id }) => id === nearest(wanted, ids));
    return { ok: true, value: one ? described(one) : overview(commands) };
  },
});

const plain = { details: [], assumptions: [], warnings: [], caution: [], result: {} } as const;

const overview = (commands: readonly AnyCommand[]) => ({
  ...plain,
  title: 'What I can do',
  lead: 'Paste a soap recipe, and I tell you whether its lye is right.',
  body: [
    { kind: 'text', text: `For example: ${commands[0]?.examples[0].say.replace(/^\w+:? /, '') ?? ''}` } as const,
    { kind: 'facts', rows: commands.map(({ id, summary }) => ({ label: id, value: summary })) } as const,
    { kind: 'text', text: 'Somebody hurt? Say "safety", or just what happened.' } as const,
  ],
  actions: commands.map(({ id }) => ({ label: `help ${id}`, request: `help ${id}` })).slice(0, 3),
});

function described({ id, summary, examples, options }: AnyCommand) {
  const body: Block[] = [
    { kind: 'list', title: 'Examples', items: examples.map(({ say, about }) => `${say} (${about})`) },
  ];
  const rows = Object.entries(options).map(([, { example, about }]) => ({ label: example, value: about }));
  if (rows.length > 0) body.push({ kind: 'text', text: 'Options:' }, { kind: 'facts', rows });
  return { ...plain, title: id, lead: `${id}: ${summary}`, body, actions: [] };
}

import manifest from '../../package.json' with { type: 'json' };
import type { Block } from '../answer/types.ts';
import { number } from '../units/print.ts';
import { defineCommand, nothingMore } from './define.ts';
import type { Kept } from './kept.ts';
import { listed } from './phrases.ts';
import { recipeBehind } from './recipe-behind.ts';

export const report = defineCommand({
  id: 'report',
  summary: 'My last answer is wrong? A short report to pass on to the host.',
  risk: 'plain',
  options: {},
  isIngredient: recipeBehind,
  examples: [
    { say: 'report', about: 'what I read and reckoned, without your words; "that’s wrong" does the same' },
    { say: 'report with my words', about: 'with what you wrote' },
  ],
  run: ({ text }, { last, catalogue }) => {
    const { said } = last;
    if (!said)
      return {
        ok: true,
        value: { ...empty, lead: 'I have no answer of yours in mind. Ask again, then say "that’s wrong".' },
      };
    const withWords = /\bwith my words\b/i.test(text);
    const reading = said.kept ? readingWords(said.kept) : null;
    const lines = [
      `Request ${said.id}, ${new Date(said.at).toISOString().slice(0, 16)}Z, lyeward ${manifest.version}, data ${catalogue.version}.`,
      `Asked: ${said.command}.${reading ? ` Read: ${reading}.` : ''}`,
      ...(withWords ? [`Words: ${said.text.trim()}`] : []),
    ];
    return {
      ok: true,
      value: {
        ...empty,
        lead: 'I may have read it wrong. Say what is different, for example "the coconut was 250 g", or pass this on to the host:',
        body: lines.map((line): Block => ({ kind: 'text', text: line })),
        actions: withWords ? [] : [{ label: 'add my words', request: 'report with my words' }],
        result: {
          request: said.id,
          command: said.command,
          version: manifest.version,
          data: catalogue.version,
          reading,
          ...(withWords ? { words: said.text } : {}),
        },
      },
    };
  },
});

const empty = {
  title: 'Report',
  ...nothingMore,
  result: {},
} as const;

/** What was read, by ids and grams: nothing that a person wrote. */
function readingWords({ recipe, superfat }: Kept): string {
  const one = (id: string, grams: number): string => `${id} ${number(grams, 2)} g`;
  return listed([
    ...recipe.fats.map(({ fat, grams }) => one(fat.id, grams)),
    ...recipe.after.map(({ fat, grams }) => `${one(fat.id, grams)} after the cook`),
    ...recipe.alkali.map(({ id, grams, purity }) => `${one(id, grams)} at ${number(purity.nominal * 100, 1)} %`),
    one('water', recipe.waterGrams),
    ...recipe.liquids.map(({ liquid, grams }) => one(liquid.id, grams)),
    ...recipe.acids.map(({ acid, grams }) => one(acid.id, grams)),
    ...(superfat === null ? [] : [`superfat ${number(superfat * 100, 1)} %`]),
  ]);
}

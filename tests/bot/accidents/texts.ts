/**
 * Texts with the verdict of their writers, who had not seen what judges them: do they tell of an accident? Sets 1 and 2
 * were gathered over time, each later one was written in one go; and the posts of the reader's collection.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { posts, sets } from '../../posts/score.ts';

export interface Told {
  readonly set: string;
  readonly text: string;
  readonly accident: boolean;
}

const ordinary = [
  ...sets,
  ...['questions', 'questions-2', 'questions-3', 'everyday', 'blind-7-questions', 'heat-questions', 'heat-2'],
];

const folder = new URL('.', import.meta.url);

/** Those written about accidents, or near them. */
export const accidentTexts: readonly Told[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort()
  .flatMap((name) => {
    const told: readonly Omit<Told, 'set'>[] = JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
    return told.map((one) => ({ ...one, set: name.replace('.json', '') }));
  });

/** Ordinary posts and questions; one whose verdict leaves both open teaches nothing. */
export const postTexts: readonly Told[] = ordinary.flatMap((set) =>
  posts(set).flatMap(({ text, expect }) => {
    const all = 'anyOf' in expect ? expect.anyOf : [expect];
    const verdicts = new Set(all.map(({ command }) => command === 'safety'));
    return verdicts.size === 1 ? [{ set, text, accident: verdicts.has(true) }] : [];
  }),
);

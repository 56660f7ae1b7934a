/**
 * Notes beneath a list with the verdict of their writers, who had not seen what judges them: do they bear on what is in
 * the pot? And the sentences of posts that are answered as they are listed, of which none does.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import { cutOf } from '../../../src/reading/cut.ts';
import { signsOf, type Weights, weightsOf } from '../../../src/reading/doubt/note-signs.ts';
import { makeReader, readRecipe } from '../../../src/reading/index.ts';
import type { Token } from '../../../src/reading/words/tokens.ts';
import { type Expectation, posts, sets } from '../score.ts';

export interface Told {
  readonly set: string;
  readonly text: string;
  readonly bears: boolean;
  /** A sentence of a post rather than a note. */
  readonly ofPost: boolean;
  /** The signs of each sentence. */
  readonly sentences: readonly ReadonlySet<string>[];
}

const reader = makeReader(loadCatalogue());
const folder = new URL('.', import.meta.url);
const read = <T>(file: string): T => JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as T;

/** The lists that the notes stand beneath. */
const lists = read<Readonly<Record<string, string>>>('lists.json');
const weighed = new Map(Object.entries(lists).map(([id, text]) => [id, weightsOf(readRecipe(reader, text))]));

interface Note {
  readonly list: string;
  readonly note: string;
  readonly bears: boolean;
}

const noteSets = readdirSync(folder)
  .filter((name) => name.endsWith('.json') && name !== 'lists.json')
  .sort();

export const notes: readonly (Told & { readonly list: string })[] = noteSets.flatMap((file) =>
  read<readonly Note[]>(file).map(({ list, note, bears }) => ({
    set: file.replace('.json', ''),
    text: note,
    bears,
    list,
    ofPost: false,
    sentences: signsOf(cutOf(reader, note), weighed.get(list) ?? new Map()),
  })),
);

/** What a verdict weighs. */
function weightsIn({ fats = {}, after = {}, alkali = {}, waterGrams }: Expectation): Weights {
  const out = new Map(Object.entries(fats));
  for (const [id, grams] of Object.entries(after)) out.set(`after ${id}`, grams);
  for (const [id, of] of Object.entries(alkali)) out.set(id, typeof of === 'number' ? of : of.grams);
  if (waterGrams != null) out.set('water', waterGrams);
  return out;
}

/** Every weight that stands beside a fat or an alkali is the verdict's, and no other fat is named. */
function isAsListed(tokens: readonly Token[], list: Weights): boolean {
  return tokens.every((token, k) => {
    if (token.t !== 'name' || !/^(?:fat|alkali)$/.test(token.meaning.kind)) return true;
    const { kind, id } = token.meaning;
    const grams = list.get(id) ?? list.get(`after ${id}`) ?? (kind === 'alkali' ? list.get('naoh') : undefined);
    if (grams === undefined) return false;
    return [tokens[k - 1], tokens[k + 1]].every(
      (beside) =>
        beside?.t !== 'quantity' ||
        beside.quantity.dim !== 'mass' ||
        Math.abs(beside.quantity.value - grams) < 0.02 * grams,
    );
  });
}

export const postSentences: readonly Told[] = sets.flatMap((set) =>
  posts(set).flatMap(({ text, expect }) => {
    if ('anyOf' in expect || !expect.fats) return [];
    const cut = cutOf(reader, text);
    const list = weightsIn(expect);
    if (!isAsListed(cut.tokens, list)) return [];
    return signsOf(cut, list).map((signs) => ({ set, text, bears: false, ofPost: true, sentences: [signs] }));
  }),
);

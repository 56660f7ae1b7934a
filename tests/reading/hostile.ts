import fc from 'fast-check';
import { layouts, meant } from './recipes.ts';

const words = [
  'olive oil',
  'coconut',
  'lye',
  'NaOH',
  'KOH',
  'water',
  'shea butter',
  'palm',
  'palm kernel',
  'butter',
  'milk',
  'citric acid',
  'superfat',
  'total',
  'after the cook',
  'each',
  'or',
  'and',
  'of',
  'in',
  'x',
  'lavender EO',
  'vinegar',
  'flurb',
  'ice',
  'lye solution',
  'ratio',
  'per',
  'bars',
  'mould',
  'oils',
  '?',
  '!!',
  ':',
  '-',
  '(',
  ')',
  '\n',
  '\n\n',
  '\t',
  ',',
  ';',
  '.',
  '|',
  '> ',
  '# ',
  '*',
  '@everyone',
  '<@123>',
  'http://example.org/1?q=2',
  '<td>',
  '</td>',
  '<br>',
  '~~9 g~~',
  '\u202e12\u202c',
  '\u200b',
  '½',
  '1/2',
  '🫒',
  '٣',
  '１２',
  'half a pound',
  'a pound and a half',
  'four hundred and fifty',
  'twelve',
  'zero',
  'minus',
];
const units = [
  'g',
  'gr',
  'kg',
  'oz',
  'lb',
  '#',
  'ml',
  'cups',
  'tsp',
  '%',
  '°C',
  'F',
  'min',
  'inches',
  '$',
  '€',
  '',
  'parts',
  'stone',
];
const figures = fc.oneof(
  fc.nat(2000).map(String),
  fc.double({ min: 0, max: 3000, noNaN: true }).map((value) => value.toFixed(2)),
  fc.constantFrom(
    '1.000',
    '1,250',
    '1.234.567',
    '12/5/2024',
    '10:42',
    '0',
    '-5',
    '1e400',
    '3x250',
    '100-110',
    '2:1',
    '99999999999999999999',
    '0x10',
    '1½',
    '.5',
    '5.',
    '4/3',
    '1/0',
    'l40',
    '1O0',
    '+44 7700 900123',
  ),
);
const piece = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...words) },
  {
    weight: 4,
    arbitrary: fc
      .tuple(figures, fc.constantFrom(...units), fc.constantFrom('', ' '))
      .map(([figure, unit, gap]) => figure + gap + unit),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  { weight: 1, arbitrary: fc.string({ maxLength: 20 }) },
);

const scraps: fc.Arbitrary<string> = fc
  .array(fc.tuple(piece, fc.constantFrom(' ', ' ', '', '\n')), { maxLength: 40 })
  .map((pieces) => pieces.flat().join(''));

/** A recipe in some layout, with a scrap pushed in somewhere: most are still read, and must be read or asked about. */
const spoilt: fc.Arbitrary<string> = fc
  .tuple(
    meant,
    fc.constantFrom(...Object.values(layouts)),
    fc.oneof(fc.constant(''), piece),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([one, write, scrap, where]) => {
    const text = write(one);
    const at = Math.floor(where * text.length);
    return text.slice(0, at) + scrap + text.slice(at);
  });

/** Text that no person would write, made of what people write and of anything at all; and recipes spoilt by a scrap. */
export const hostile: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: scraps },
  { weight: 1, arbitrary: spoilt },
);

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readStep } from '../../src/reading/batch-step.ts';

const step = (text: string) => readStep(text)?.step;
const take = (said: string, value: number, unit: string | null, lot: string | null = null, more = false) => ({
  do: 'take',
  said,
  amount: { value, unit },
  lot,
  more,
});
const read = (value: number, unit: '°C' | '°F' | null, clock: number | null = null, ago: number | null = null) => ({
  do: 'read',
  value,
  unit,
  clock,
  ago,
});

test.each([
  ['took 143 g lye', take('lye', 143, 'g')],
  ['I took 143g of lye, lot 7B-2', take('lye', 143, 'g', '7B-2')],
  ['olive oil 450 g', take('olive oil', 450, 'g')],
  ['added 20 g olive oil', take('olive oil', 20, 'g', null, true)],
  ['143,5 g NaOH', take('NaOH', 143.5, 'g')],
  ['92 at 12:40', read(92, null, 760)],
  ['12:50 86', read(86, null, 770)],
  ['88 F at 2:10 pm', read(88, '°F', 850)],
  ['it’s at 86 °C now', read(86, '°C')],
  ['86 10 min ago', read(86, null, null, 10)],
  ['5 more', { do: 'more', minutes: 5 }],
  ['not there yet, 5 more', { do: 'more', minutes: 5 }],
  ['Not yet', { do: 'more', minutes: null }],
  ['give it another 10 minutes', { do: 'more', minutes: 10 }],
  ['done', { do: 'next' }],
  ['ok next', { do: 'next' }],
  ['lye is clear', { do: 'stage', stage: 'mix' }],
  ['it’s at trace', { do: 'stage', stage: 'separation' }],
  ['looks like applesauce', { do: 'stage', stage: 'applesauce' }],
  ['scent is in', { do: 'stage', stage: 'mould' }],
  ['in the mold', { do: 'stage', stage: 'cut' }],
  ['no zap', { do: 'test', zap: false }],
  ['it still zaps', { do: 'test', zap: true }],
  ['note: smells of rose', { do: 'note', text: 'smells of rose' }],
  ['all weighed', { do: 'rest' }],
  ['undo', { do: 'undo' }],
])('"%s"', (text, wanted) => {
  expect(step(text)).toEqual(wanted);
});

test.each([
  'how hot is it?',
  '12 bars of 100 g',
  'double it',
  'is it done?',
  'and at 8 %?',
  '500 g lard, 66 g NaOH, 150 g water',
  'thanks',
  'why 97?',
])('"%s" is nothing that is said at the pot', (text) => {
  expect(readStep(text)).toBeNull();
});

test('no text breaks it', () => {
  fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 250 }), (text) => void readStep(text)));
  // words that may repeat: none of them makes a pattern try all ways
  for (const part of ['not there yet ', 'ok ', '5 more ', '9 ', '✓ ', 'lot ', 'it is '])
    for (const length of [199, 590]) readStep(part.repeat(Math.floor(length / part.length)));
});

/** Lines for a terminal, by the greedy way to break them: each holds all the words that fit. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wrap } from '../../src/render/terminal.ts';

const word = fc.string({ minLength: 1, maxLength: 12, unit: fc.constantFrom(...'abcé×–') });

test('a line holds all the words that fit, and no word is lost', () => {
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 40 }), fc.integer({ min: 5, max: 40 }), (words, columns) => {
      const lines = wrap(words.join(' '), columns).split('\n');
      expect(lines.join(' ')).toBe(words.join(' '));
      for (const [k, line] of lines.entries()) {
        expect(line.length <= columns || !line.includes(' ')).toBe(true);
        const next = lines[k + 1]?.split(' ')[0];
        if (next !== undefined) expect(line.length + 1 + next.length).toBeGreaterThan(columns);
      }
    }),
  );
});

test('a figure stays with its unit, and wide signs take two columns', () => {
  expect(wrap('weigh 500 g of it', 9)).toBe('weigh\n500 g of\nit');
  expect(wrap('油 油 油', 5)).toBe('油 油\n油');
});

// Right-to-left letters beside figures, judged by bidi-js, another author's Unicode Bidirectional Algorithm (UAX 9).
import bidiFactory from 'bidi-js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inert, inertLine } from '../../src/render/inert.ts';

// Its types describe an ES module; what Node loads is the factory itself.
const bidi = (bidiFactory as unknown as typeof bidiFactory.default)();
/** The line as it stands on the screen, from left to right, its direction taken from its first letter. */
const shown = (line: string): string =>
  bidi.getReorderedString(line, bidi.getEmbeddingLevels(line)).replace(/[\u200e\u200f]/g, '');

const names = ['זית שמן', 'زيت الزيتون', 'שמן-זית', 'زيت', 'olive oil'];

describe('figures keep their place', () => {
  test('without help they do not: a unit is torn from its figure', () => {
    expect(shown('450 g שמן 97 g')).not.toContain('97 g');
    expect(shown('زيت: 450 g')).not.toContain('450 g');
  });

  test('a name, whatever its script, then figures', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...names), fc.integer({ min: 1, max: 9999 })), {
          minLength: 1,
          maxLength: 4,
        }),
        fc.constantFrom(', ', ' · ', '; ', ' '),
        (rows, between) => {
          const line = shown(inert(rows.map(([name, grams]) => `${name}: ${grams} g · 60 %`).join(between)));
          let from = 0;
          for (const [, grams] of rows) {
            const at = line.indexOf(`: ${grams} g · 60 %`, from);
            expect(at, line).toBeGreaterThanOrEqual(from);
            from = at + 1;
          }
        },
      ),
    );
  });

  test('a figure before a name, an override that would turn it', () => {
    expect(shown(inert('450 g זית, 97 g NaOH'))).toMatch(/^450 g .*, 97 g NaOH$/);
    expect(shown(inert('\u202e450 g\u202c'))).toBe('450 g');
  });
});

describe('text', () => {
  test('once inert, always the same', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom(...names)), (text) => {
        expect(inert(inert(text))).toBe(inert(text));
      }),
    );
  });

  test.each([
    ['\x1b[31mred\x1b[0m', '[31mred[0m'],
    ['a\r\nb\rc\u2028d\u0085e', 'a\nb\nc\nd\ne'],
    ['olive\toil', 'olive oil'],
    ['pa\u200blm \ufeffoil\u00ad', 'palm oil'],
    ['12\u202f345 g', '12\u202f345 g'],
    ['\ud800 1', '\ufffd 1'],
    ['½ Karité é', '½ Karité é'],
  ])('%j becomes %j', (text, plain) => expect(inert(text)).toBe(plain));

  test('on one line', () => expect(inertLine(' a \n\n b\r\n')).toBe('a b'));
});

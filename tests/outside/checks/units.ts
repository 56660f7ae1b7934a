import { readFileSync } from 'node:fs';
import { convert, unit } from '../../../src/units/units.ts';
import type { Group, Row } from '../row.ts';

const SP811 = 'NIST SP 811 (2008), Appendix B.8 (figures from memory)';
const HB44 = 'NIST HB 44, Appendix C (definitions from memory)';

/** A published factor to so many significant digits, and half a unit of its last digit. */
const published =
  (source: string) =>
  (from: string, to: string, factor: string): Row => {
    const expected = Number(factor);
    const digits = factor.replace(/e.*/i, '').replace(/\D/g, '').replace(/^0+/, '').length;
    return {
      check: `1 ${from} in ${to}`,
      source,
      unit: to,
      expected,
      ours: convert(1, unit(from), unit(to)),
      tolerance: 0.5 * 10 ** (Math.floor(Math.log10(expected)) - digits + 1) * 1.000001,
    };
  };
const sp = published(SP811);

/** An exact relation. */
const exact = (count: number, from: string, to: string, of = 1): Row => ({
  check: `${of} ${to} in ${from}`,
  source: HB44,
  unit: from,
  expected: count,
  ours: convert(of, unit(to), unit(from)),
  tolerance: count * 1e-12,
});

interface Fixture {
  readonly version: string;
  readonly command: string;
  readonly pairs: readonly (readonly [value: number, from: string, to: string, expected: number])[];
}
export const gnu = JSON.parse(readFileSync(new URL('../gnu-units.generated.json', import.meta.url), 'utf8')) as Fixture;

/** Relative to the greater of the two, so that temperatures near nought are not blown up. */
export const off = ([value, from, to, expected]: Fixture['pairs'][number]): number => {
  const ours = convert(value, unit(from), unit(to));
  return Math.abs(ours - expected) / Math.max(Math.abs(expected), 1e-9, Math.abs(ours));
};

/** Units and conversions: printed factors, exact definitions, and another program. */
export function units(): Group {
  return {
    title: 'Units',
    about:
      'Factors as NIST prints them, exact definitions, and GNU units over every pair of units of one kind (tests/outside/gnu-units.generated.json; written by gnu-units.sh beside it).',
    rows: [
      sp('cup', 'mL', '2.365882e+2'),
      sp('floz', 'mL', '2.957353e+1'),
      sp('floz-imperial', 'mL', '2.841306e+1'),
      sp('gallon', 'L', '3.785412'),
      sp('gallon-imperial', 'L', '4.54609'),
      sp('pint', 'L', '4.731765e-1'),
      sp('quart', 'L', '9.463529e-1'),
      sp('tbsp', 'mL', '1.478676e+1'),
      sp('tsp', 'mL', '4.928922'),
      sp('oz', 'g', '2.834952e+1'),
      sp('lb', 'kg', '4.535924e-1'),
      sp('oz-troy', 'g', '3.110348e+1'),
      sp('yd', 'm', '9.144e-1'),
      sp('in3', 'mL', '1.638706e+1'),
      sp('in', 'cm', '2.54'),
      sp('ft', 'm', '3.048e-1'),
      exact(231, 'in3', 'gallon'),
      exact(57.75, 'in3', 'quart'),
      exact(8, 'floz', 'cup'),
      exact(3, 'tsp', 'tbsp'),
      exact(2, 'tbsp', 'floz'),
      exact(16, 'oz', 'lb'),
      exact(14, 'lb', 'stone'),
      exact(20, 'floz-imperial', 'pint-imperial'),
      exact(8, 'pint-imperial', 'gallon-imperial'),
      exact(12, 'in', 'ft'),
      {
        check: `greatest relative deviation over ${gnu.pairs.length} pairs`,
        source: gnu.version,
        unit: '1',
        expected: 0,
        ours: Math.max(...gnu.pairs.map(off)),
        tolerance: 1e-12,
      },
    ],
  };
}

import type { Style } from '../units/print.ts';
import type { Step } from './kept.ts';

export type Inputs = Step['inputs'];

export const molarMasses =
  'molar masses from the CIAAW atomic weights (from memory, checked in tests against a second table)';

export const inGrams = (style: Style): Style => ({ ...style, massUnit: 'g' });

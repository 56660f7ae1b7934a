import type { Weight } from '../catalogue/types.ts';

export type Up = Weight;

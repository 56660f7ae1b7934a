import type { Sum } from '../engine/sum.ts';

export type Up = Sum;

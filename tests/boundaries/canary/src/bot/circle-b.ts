import type { A } from './circle-a.ts';

export type B = A | 2;

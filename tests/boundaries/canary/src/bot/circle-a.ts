import type { B } from './circle-b.ts';

export type A = B | 1;

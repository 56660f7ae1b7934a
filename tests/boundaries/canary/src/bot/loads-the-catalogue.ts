import type { Up } from '../catalogue/computes.ts';

export type Bot = Up;

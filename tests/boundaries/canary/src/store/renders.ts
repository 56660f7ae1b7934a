import type { Up } from '../render/computes.ts';

export type Drawn = Up;

import type { Talk } from './console/opens-a-window.ts';

export type Config = Talk;

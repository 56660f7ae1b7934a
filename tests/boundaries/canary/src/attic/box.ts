import type { Mass } from '../units/mass.ts';

export type Box = Mass;

import type { Up } from '../answer/reads-the-catalogue.ts';

export type Wordy = Up;

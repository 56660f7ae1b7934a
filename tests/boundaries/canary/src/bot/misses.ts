export type { Nothing } from './nowhere.ts';

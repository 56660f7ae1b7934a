export type { Talk } from '../adapters/console/opens-a-window.ts';

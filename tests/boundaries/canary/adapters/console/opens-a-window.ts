import type { Bot } from '../../src/bot/loads-the-catalogue.ts';

export type Talk = Bot;

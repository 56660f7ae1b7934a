import type { Bot } from '../bot/loads-the-catalogue.ts';

export type Up = Bot;

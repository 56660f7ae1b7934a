import type { Up } from '../commands/asks-the-bot.ts';

export type Read = Up;

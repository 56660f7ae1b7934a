/** The only door for adapters. */
export type { Action, Answer, Block, BlockKind, Fault, Picture } from './answer/types.ts';
export type { Asked, Bot, Reply } from './bot/types.ts';

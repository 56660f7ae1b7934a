/** The only door for adapters. */
export type { Action, Answer, Block, BlockKind, Fault, Picture } from './answer/types.ts';
export type { Asked, Bot, Reply } from './bot/types.ts';
export { inert } from './render/inert.ts';
export { renderJson } from './render/json.ts';
export { renderPlain } from './render/plain.ts';
export { renderTerminal } from './render/terminal.ts';

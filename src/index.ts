/** The only door for adapters. */

import type { Picture } from './answer/types.ts';
import { type BotOptions, createBot as createCore } from './bot/core.ts';
import type { Bot } from './bot/types.ts';
import { loadHeat } from './catalogue/heat.ts';
import { loadCatalogue } from './catalogue/load.ts';
import { withLocalFile } from './catalogue/local.ts';
import type { Catalogue } from './catalogue/types.ts';
import type { AnyCommand as Declaration } from './commands/define.ts';
import { commands } from './commands/registry.ts';
import type { Drawing } from './render/picture/draw.ts';
import type { OpenOptions } from './store/open.ts';
import type { Store } from './store/port.ts';

export type { Action, Answer, Block, BlockKind, Fault, Picture } from './answer/types.ts';
export type { LogEntry } from './bot/core.ts';
export { makeQueues } from './bot/queue.ts';
export { makeRecent } from './bot/recent.ts';
export type { Where } from './bot/rooms.ts';
export type { Asked, Bot, Reply, Ring, Teller } from './bot/types.ts';
export type { AnyCommand as Declaration, Later } from './commands/define.ts';
export { inert } from './render/inert.ts';
export { renderJson } from './render/json.ts';
export { markdown } from './render/markdown.ts';
export { pages, type TwofoldPage, twofoldPages } from './render/pages.ts';
export { offersOf } from './render/pieces.ts';
export { renderPlain } from './render/plain.ts';
export { renderTerminal, wrap } from './render/terminal.ts';
export { mayHold } from './store/there.ts';

/** The bot with the product's own data, read when first needed. */
export const createBot = (options: Partial<BotOptions> = {}): Bot =>
  createCore({ catalogue: loadWithLocal, heat: loadHeat, ...options });

/** A file with the host's own values, `catalogue/local.ts`; the product's data alone where none is named. */
const localFile = process.env['LYEWARD_VALUES'];

function loadWithLocal(): Catalogue {
  const catalogue = loadCatalogue();
  return localFile ? withLocalFile(catalogue, localFile) : catalogue;
}

/** What is wrong with the host's own values, for a start that shall not go on with them; null where all is well. */
export function localProblems(): string | null {
  try {
    loadWithLocal();
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Words that begin a request. */
export const commandNames: readonly string[] = commands.map(({ id }) => id);

/** Every command as it was declared: id, summary, options, examples. What forms of chat platforms are made of. */
export const declarations: readonly Declaration[] = commands;

/** A picture of an answer as SVG and PNG. What draws it is read at the first call. */
export const drawPicture = async (picture: Picture): Promise<Drawing> =>
  (await import('./render/picture/draw.ts')).drawPicture(picture);

/** What is kept beyond one answer. Nothing of it is loaded before the first call. */
export const openStore = async (options: OpenOptions): Promise<Store> =>
  (await import('./store/open.ts')).openStore(options);

/** Backup, restore, check and move of what is kept, loaded at the first call. */
export const keeper = (): Promise<typeof import('./store/keeper.ts')> => import('./store/keeper.ts');

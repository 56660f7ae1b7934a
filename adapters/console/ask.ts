// One question from the command line: `npm run --silent ask -- "…"`.
import { writeFileSync } from 'node:fs';
import { createBot, drawPicture, type Picture } from '../../src/index.ts';
import { dataFolder } from '../data-folder.ts';
import { keptIn } from '../kept.ts';
import { readLines, readText, write } from './files.ts';
import { oneShot } from './oneshot.ts';

const savePicture = async (picture: Picture, file: string): Promise<void> => {
  const { png } = await drawPicture(picture);
  writeFileSync(file, png);
};

// No `await` here: what is bundled from this file is CommonJS, which starts faster. The end is not waited for either:
// all is written by then, and to take an engine apart costs a tenth of a question.
/** Nothing of a store is loaded unless something is kept. */
const bot = (data: string | undefined) =>
  createBot({ ...keptIn(dataFolder(data), 'a question of the command line'), quota: null });

oneShot(process.argv.slice(2), bot, { readText, readLines, write, savePicture }).then((status) => {
  process.exit(status);
});

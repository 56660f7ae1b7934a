import { keeper } from '../../src/index.ts';
import type { Config } from '../config.ts';

export async function start({ data: folder, words: [file = ''] }: Config): Promise<void> {
  await (await keeper()).backup({ folder, who: 'backup' }, file);
  process.stdout.write(
    `${file} holds all that is kept. It holds what people saved: keep it as safe as the original.\n`,
  );
}

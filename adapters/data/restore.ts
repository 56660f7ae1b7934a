import { keeper } from '../../src/index.ts';
import type { Config } from '../config.ts';

export async function start({ data: folder, words: [file = ''] }: Config): Promise<void> {
  const { erased, aside } = await (await keeper()).restore({ folder, who: 'restore' }, file);
  const lines = [`What ${file} holds is what is kept now.`];
  if (erased === 1) lines.push('One account or room that was erased since that copy stays erased.');
  if (erased > 1) lines.push(`${erased} accounts or rooms that were erased since that copy stay erased.`);
  if (aside !== null) lines.push(`What was there before is ${aside}; delete it once all is well.`);
  process.stdout.write(`${lines.join('\n')}\n`);
}

import { keeper } from '../../src/index.ts';
import type { Config } from '../config.ts';

export async function start({ data: folder }: Config): Promise<void> {
  const { ok, lines } = await (await keeper()).checkData({ folder, who: 'check-data' });
  process.stdout.write(`${lines.join('\n')}\n`);
  if (!ok) process.exitCode = 1;
}

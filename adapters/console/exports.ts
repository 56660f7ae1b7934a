/** Files of an answer, written where the person is: they asked for them. */
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Answer, Block } from '../../src/index.ts';

type FileBlock = Extract<Block, { kind: 'file' }>;

export const filesOf = ({ body }: Answer): readonly FileBlock[] => body.filter((block) => block.kind === 'file');

/** Where the person called npm, which goes to the folder of the program first. */
const here = (): string => process.env['INIT_CWD'] ?? '.';

/** Writes one beside what is there already, and says where; or why it can't be written. */
export function keep({ name, text }: FileBlock): string {
  const [, stem = name, ending = ''] = /^(.*?)(\.[a-z]+)?$/.exec(name) ?? [];
  for (let number = 1; ; number += 1) {
    const file = resolve(here(), number === 1 ? name : `${stem} (${number})${ending}`);
    try {
      writeFileSync(file, text, { flag: 'wx' });
      return `Written to ${file}`;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error) || error.code !== 'EEXIST' || number > 99)
        return `I could not write ${file}: ${error instanceof Error ? error.message : String(error)}`;
    }
  }
}

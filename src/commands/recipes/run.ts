import type { Result } from '../../answer/types.ts';
import type { Context, Memory, Refusal, Said, Taken } from '../define.ts';
import { copy, remove, rename, share, unshare } from './change.ts';
import { compare } from './compare.ts';
import { exported } from './export.ts';
import { imported } from './import.ts';
import { list } from './list.ts';
import { wishIn } from './request.ts';
import { save } from './save.ts';
import { show } from './show.ts';

type Ran = Result<Said<'caustic'>, Refusal<'caustic'>>;

export async function run({ text, options: given }: Taken, context: Context, memory: Memory): Promise<Ran> {
  const wish = wishIn(text) ?? { do: 'list' };
  switch (wish.do) {
    case 'list':
      return list(context, memory);
    case 'save':
      return save(wish, given, text, context, memory);
    case 'show':
      return show(wish.name, given, context, memory);
    case 'rename':
      return rename(wish, memory);
    case 'copy':
      return copy(wish, memory);
    case 'share':
      return share(wish, given, text, memory);
    case 'unshare':
      return unshare(wish, memory);
    case 'delete':
      return remove(wish, given, text, memory);
    case 'compare':
      return compare(wish, context, memory);
    case 'export':
      return exported(wish, context, memory);
    case 'import':
      return imported(wish, given, text, context, memory);
  }
}

import type { Memory } from '../define.ts';
import { keyOf } from './name.ts';
import { savedIn } from './shelf.ts';

const most = 25;

/** "show lav" → "show Lavender bar": names that go on where the text ends, one's own first. */
export async function suggest(text: string, { own, room }: Memory): Promise<readonly string[]> {
  const said = /^(?:show|open|rename|copy|share|unshare|delete|remove|export|compare(?:.*\sand)?)\s+/i.exec(text);
  if (!said && text.trim() !== '') return [];
  const verb = said?.[0] ?? 'show ';
  const prefix = keyOf(text.slice(said?.[0].length ?? 0).replace(/^["\s]+/, ''));
  const pages = await Promise.all(
    [own, room].map((of) => of.list('recipe', { ...(prefix === '' ? {} : { prefix }), limit: most })),
  );
  return [...new Set(pages.flat().map((document) => verb + savedIn(document).name))].slice(0, most);
}

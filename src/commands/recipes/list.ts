import type { Block, Result } from '../../answer/types.ts';
import { wayToAid } from '../cautions.ts';
import { calendarDay } from '../clock.ts';
import type { Context, Memory, Refusal, Said } from '../define.ts';
import { all, savedIn } from './shelf.ts';

/** Names that one answer shows; the others are in its details. */
const shown = 20;

export async function list(
  { zone }: Context,
  { own, room, isPrivate }: Memory,
): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> {
  // others read the answer: only what they may see
  const mine = isPrivate ? await Array.fromAsync(all(own), entry) : [];
  const shared = await Array.fromAsync(all(room), entry);
  const count = (n: number): string => `${n} recipe${n === 1 ? '' : 's'}`;
  const titled = (title: string, entries: readonly Entry[]): Block[] =>
    entries.length === 0
      ? []
      : [
          {
            kind: 'list',
            title,
            items: entries.map(({ name, savedAt }) => `${name} (${calendarDay(Date.parse(savedAt), zone)})`),
          },
        ];
  const rest = mine.slice(shown);
  return {
    ok: true,
    value: {
      title: 'Your recipes',
      lead:
        mine.length > 0
          ? `I keep ${count(mine.length)} of yours.`
          : isPrivate
            ? 'I keep no recipe of yours yet. After a recipe was checked, say "save this as" and a name.'
            : `${shared.length === 0 ? 'No recipe is' : `${count(shared.length)} ${shared.length > 1 ? 'are' : 'is'}`} shared in this room. For your own ask me in a direct message: others read this room.`,
      body: [
        ...titled('Yours', mine.slice(0, shown)),
        ...(rest.length > 0 ? [{ kind: 'text', text: `And ${rest.length} more: say "details".` } as const] : []),
        ...titled('Shared in this room', shared.slice(0, shown)),
      ],
      details: titled('The others', rest),
      assumptions: [],
      warnings: [],
      caution: [wayToAid],
      actions: mine.slice(0, 3).map(({ name }) => ({ label: `show ${name}`, request: `recipe show ${name}` })),
      result: { recipes: mine, shared },
    },
  };
}

interface Entry {
  readonly name: string;
  readonly savedAt: string;
}

const entry = (document: Parameters<typeof savedIn>[0]): Entry => ({
  name: savedIn(document).name,
  savedAt: new Date(savedIn(document).savedAt).toISOString(),
});

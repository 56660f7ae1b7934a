/** Renaming, copying, sharing and deleting of kept recipes: names and owners change, amounts never do. */
import type { Result } from '../../answer/types.ts';
import type { Change } from '../../store/port.ts';
import { wayToAid } from '../cautions.ts';
import type { Memory, Refusal, Said, Taken } from '../define.ts';
import { keyOf, quoted } from './name.ts';
import { tooMany } from './quota.ts';
import type { Pair, Wish } from './request.ts';
import type { SavedRecipe } from './saved.ts';
import { agrees, all, badName, type Found, meanwhile, nameless, own, savedIn, shared, unknown } from './shelf.ts';

type Ran = Result<Said<'caustic'>, Refusal<'caustic'>>;
type Of<Do extends Wish['do']> = Extract<Wish, { do: Do }>;

const no = (fault: Refusal<'caustic'>): Ran => ({ ok: false, fault });
const caution = [wayToAid] as const;

const done = (title: string, lead: string, name: string, result: Said['result'], more: Said['actions'] = []): Ran => ({
  ok: true,
  value: {
    title,
    lead,
    body: [],
    details: [],
    assumptions: [],
    warnings: [],
    caution,
    actions: [...more, { label: 'my recipes', request: 'recipe list' }],
    result: { name, ...result },
  },
});

const put = (saved: SavedRecipe, name: string, expects: number): Change => ({
  do: 'put',
  kind: 'recipe',
  key: keyOf(name),
  data: { ...saved, name },
  expects,
});

/** The pair whose first name is kept, by the finder; else the likeliest. */
async function parted(
  pair: Pair,
  look: (name: string) => Promise<Found | null>,
): Promise<{ readonly first: string; readonly second: string; readonly found: Found | null }> {
  for (const [first, second] of pair) {
    const found = await look(first);
    if (found) return { first, second, found };
  }
  const [first = '', second = ''] = pair[0] ?? [];
  return { first, second, found: null };
}

const taken = (name: string): Refusal<'caustic'> => ({
  code: 'unclear',
  message: `You have a recipe ${quoted(name)} already.`,
  hint: 'Take another name, or delete that one first.',
  candidates: [`recipe show ${name}`],
  caution,
});

export async function rename({ pair }: Of<'rename'>, memory: Memory): Promise<Ran> {
  const { first, second, found } = await parted(pair, (name) => own(name, memory));
  if (!found) return no(await unknown(first, (name) => `recipe rename ${name} to ${second || '…'}`, memory));
  if (second === '')
    return no({
      ...nameless,
      message: `What shall ${quoted(found.saved.name)} be called?`,
      hint: `Say it as in: recipe rename ${found.saved.name} to Everyday bar.`,
    });
  const bad = badName(second);
  if (bad) return no(bad);
  const { saved, document } = found;
  const same = keyOf(second) === document.key;
  if (!same && (await own(second, memory))) return no(taken(second));
  const written = await memory.own.commit([
    put(saved, second, same ? document.version : 0),
    ...(same ? [] : [{ do: 'remove', kind: 'recipe', key: document.key } as const]),
  ]);
  if (!written.ok) return no(meanwhile(saved.name));
  return done(
    'Renamed',
    `${quoted(saved.name)} is now ${quoted(second)}.`,
    second,
    { renamed: true, before: saved.name },
    [{ label: `show ${second}`, request: `recipe show ${second}` }],
  );
}

/** Of one's own under another name, or of the room's into one's own. */
export async function copy({ pair }: Of<'copy'>, memory: Memory): Promise<Ran> {
  const look = async (name: string): Promise<Found | null> => (await own(name, memory)) ?? (await shared(name, memory));
  const { first, second, found } = await parted(pair, look);
  if (!found) return no(await unknown(first, (name) => `recipe copy ${name} to ${second || '…'}`, memory));
  const { saved, isRoom } = found;
  const name = second === '' && isRoom ? saved.name : second;
  if (name === '')
    return no({
      ...nameless,
      message: 'What shall the copy be called?',
      hint: `Say it as in: recipe copy ${saved.name} to Everyday bar.`,
    });
  const bad = badName(name) ?? (await tooMany('recipes', memory));
  if (bad) return no(bad);
  const { shared: _shared, token: _token, ...plain } = saved;
  const written = await memory.own.commit([put({ ...plain, savedAt: memory.now }, name, 0)]);
  if (!written.ok) return no(taken(name));
  return done(
    'Copied',
    `${quoted(saved.name)} is copied to ${quoted(name)}${isRoom ? ', yours alone' : ''}.`,
    name,
    { copied: true, from: saved.name },
    [{ label: `show ${name}`, request: `recipe show ${name}` }],
  );
}

/** A copy for the room; the recipe itself stays private. */
export async function share(
  { name }: Of<'share'>,
  options: Taken['options'],
  whole: string,
  memory: Memory,
): Promise<Ran> {
  const found = await own(name, memory);
  if (!found) return no(await unknown(name, (one) => `recipe share ${one}`, memory));
  const { saved, document } = found;
  const there = await shared(saved.name, memory);
  const isOwn = there?.saved.token !== undefined && (saved.shared ?? []).includes(there.saved.token);
  if (there && !isOwn && !memory.isHost)
    return no({
      code: 'refused',
      message: `Somebody has shared a recipe ${quoted(there.saved.name)} in this room already.`,
      hint: 'Copy yours to another name and share that: "recipe copy NAME to OTHER NAME".',
      candidates: [],
      caution,
    });
  if (there && options['confirm'] !== 'yes')
    return no({
      code: 'unclear',
      message: `This room has a copy of ${quoted(there.saved.name)}. Replace it?`,
      hint: 'Answer "replace".',
      candidates: ['replace'],
      caution,
      complete: (answer) =>
        agrees(answer, 'replace') ? { text: whole, options: { ...options, confirm: 'yes' } } : null,
    });
  const full = there ? null : await tooMany('shared', memory);
  if (full) return no(full);
  const token = memory.newId();
  const { shared: before = [], ...plain } = saved;
  const copied = await memory.room.commit([put({ ...plain, token }, saved.name, there?.document.version ?? 0)]);
  if (!copied.ok) return no(meanwhile(saved.name));
  await memory.own.commit([
    {
      do: 'put',
      kind: 'recipe',
      key: document.key,
      data: { ...saved, shared: [...before.slice(-20), token] },
      expects: document.version,
    },
  ]);
  return done(
    'Shared',
    `A copy of ${quoted(saved.name)} is in this room now: whoever is here can look at it and take a copy.`,
    saved.name,
    { shared: true },
    [{ label: 'take it back', request: `recipe unshare ${saved.name}` }],
  );
}

/** By whoever shared it, or by a host of the room. */
export async function unshare({ name }: Of<'unshare'>, memory: Memory): Promise<Ran> {
  const there = await shared(name, memory);
  if (!there) return no(await unknown(name, (one) => `recipe unshare ${one}`, { ...memory, isPrivate: false }));
  const { token } = there.saved;
  const mine = await Array.fromAsync(ownTokens(memory));
  if (!memory.isHost && !(token !== undefined && mine.flat().includes(token)))
    return no({
      code: 'refused',
      message: `${quoted(there.saved.name)} was shared by somebody else.`,
      hint: 'They can take it back, or a host of this room can.',
      candidates: [],
      caution,
    });
  await memory.room.commit([{ do: 'remove', kind: 'recipe', key: there.document.key }]);
  return done(
    'Taken back',
    `${quoted(there.saved.name)} is gone from this room. Copies that others took are theirs.`,
    there.saved.name,
    { shared: false },
  );
}

async function* ownTokens({ own: of }: Memory): AsyncGenerator<readonly string[]> {
  for await (const document of all(of)) yield savedIn(document).shared ?? [];
}

export async function remove(
  { name }: Of<'delete'>,
  options: Taken['options'],
  whole: string,
  memory: Memory,
): Promise<Ran> {
  const found = await own(name, memory);
  if (!found) {
    if (await shared(name, memory)) return unshare({ do: 'unshare', name }, memory);
    return no(await unknown(name, (one) => `recipe delete ${one}`, memory));
  }
  const { saved, document } = found;
  if (options['confirm'] !== 'yes')
    return no({
      code: 'unclear',
      message: `Delete ${quoted(saved.name)} for good?`,
      hint: 'Answer "yes" (or write confirm=yes with the request). Copies in rooms stay: "recipe unshare" takes them back.',
      candidates: ['yes'],
      caution,
      complete: (answer) =>
        agrees(answer, 'delete') ? { text: whole, options: { ...options, confirm: 'yes' } } : null,
    });
  await memory.own.commit([{ do: 'remove', kind: 'recipe', key: document.key }]);
  return done('Deleted', `${quoted(saved.name)} is deleted.`, saved.name, { deleted: true });
}

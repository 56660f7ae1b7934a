/** The recipes of one person, and those that were shared to the room: found by name, kept by key. */
import type { Document, Own, Page } from '../../store/port.ts';
import { wayToAid } from '../cautions.ts';
import type { Memory, Refusal } from '../define.ts';
import { edits } from '../nearest.ts';
import { keyOf, longestName, quoted } from './name.ts';
import type { SavedRecipe } from './saved.ts';

export interface Found {
  readonly saved: SavedRecipe;
  readonly document: Document;
  readonly isRoom: boolean;
}

/** Only `saved.ts` and `read-forms.ts` make what documents of this kind hold. */
export const savedIn = ({ data }: Document): SavedRecipe => data as unknown as SavedRecipe;

const caution = [wayToAid] as const;

export const nameless: Refusal<'caustic'> = {
  code: 'unclear',
  message: 'Which name?',
  hint: 'Write the name after the word, for example: recipe save Lavender bar.',
  candidates: [],
  caution,
};

/** A name that nothing can be kept under; null for any other. */
export function badName(name: string): Refusal<'caustic'> | null {
  if (keyOf(name) === '') return nameless;
  if (name.length <= longestName && keyOf(name).length <= 200) return null;
  return {
    code: 'too-long',
    message: `A name has up to ${longestName} characters; this one has ${name.length}.`,
    hint: 'Give it a shorter one. Where a recipe follows the name, a colon goes between them.',
    candidates: [],
    caution,
  };
}

export async function own(name: string, { own: of }: Memory): Promise<Found | null> {
  const document = await of.get('recipe', keyOf(name));
  return document && { saved: savedIn(document), document, isRoom: false };
}

export async function shared(name: string, { room }: Memory): Promise<Found | null> {
  const document = await room.get('recipe', keyOf(name));
  return document && { saved: savedIn(document), document, isRoom: true };
}

/** One's own, else the room's; where others read the answer, the room's alone. */
export const find = async (name: string, memory: Memory): Promise<Found | null> =>
  (memory.isPrivate ? await own(name, memory) : null) ?? (await shared(name, memory));

/** More names than this are not looked through for one that was meant. */
const mostLooked = 5000;

/** All recipes of an owner, in the order of their keys. */
export async function* all(of: Own, page: Omit<Page, 'limit'> = {}): AsyncGenerator<Document> {
  let after = page.after;
  for (;;) {
    const documents = await of.list('recipe', { ...page, ...(after === undefined ? {} : { after }), limit: 500 });
    yield* documents;
    after = documents.at(-1)?.key;
    if (documents.length < 500) return;
  }
}

/** How far a kept name is from what was asked for; the nearer the likelier. */
function distance(asked: string, key: string): number {
  if (key.startsWith(asked) || asked.startsWith(key)) return 0;
  if (asked.length > 2 && key.includes(asked)) return 0.5;
  return edits(asked, key);
}

/** A name that nothing is kept under: the nearest are offered, each as the whole request. */
export async function unknown(
  name: string,
  request: (name: string) => string,
  memory: Memory,
): Promise<Refusal<'caustic'>> {
  const bad = badName(name);
  if (bad) return bad;
  const asked = keyOf(name);
  const near: { readonly name: string; readonly far: number }[] = [];
  let count = 0;
  // what is private stays out of an answer that others read
  for (const of of memory.isPrivate ? [memory.own, memory.room] : [memory.room]) {
    for await (const document of all(of)) {
      if (++count > mostLooked) break;
      const far = distance(asked, document.key);
      if (far <= Math.max(1, Math.floor(asked.length / 3))) near.push({ name: savedIn(document).name, far });
    }
  }
  const offered = near.sort((a, b) => a.far - b.far).slice(0, 3);
  const names = [...new Set(offered.map((one) => one.name))];
  if (!memory.isPrivate && names.length === 0) return elsewhere(name);
  return {
    code: 'unclear',
    message: `I keep no recipe ${quoted(name)}.`,
    hint:
      names.length > 0
        ? `Did you mean ${names.map(quoted).join(' or ')}?`
        : 'Say "recipe list" for those that I keep, or "recipe save NAME" after a recipe was checked.',
    candidates: names.length > 0 ? names.map(request) : ['recipe list'],
    caution,
  };
}

/** Others read the answer: whether there is such a recipe is nobody's business. */
const elsewhere = (name: string): Refusal<'caustic'> => ({
  code: 'refused',
  message: `No recipe ${quoted(name)} is shared in this room.`,
  hint: 'Others read this room: ask me for your own in a direct message. "recipe share NAME" puts a copy here.',
  candidates: ['recipe list'],
  caution,
});

/** Somebody else, or oneself elsewhere, changed it in the meantime; nothing was written. */
export const meanwhile = (name: string): Refusal<'caustic'> => ({
  code: 'unclear',
  message: `${quoted(name)} was changed at the same moment from somewhere else, so I left it as it is.`,
  hint: 'Look at it with "recipe show", and say it again.',
  candidates: [`recipe show ${name}`],
  caution,
});

/** "yes" to what was asked back; the words beside it are those of the question. */
export const agrees = (answer: string, also = 'yes'): boolean =>
  new RegExp(`^\\W*(?:yes|y|ok|sure|do it|${also})(?:,? (?:please|${also}))?(?: (?:it|them|all))?\\W*$`, 'i').test(
    answer,
  );

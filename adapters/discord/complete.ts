/** Completion of what is being typed into a command; names of what the person keeps are looked up, all else is local. */
import type { Bot, Declaration } from '../../src/index.ts';
import type { Asker } from './asker.ts';
import { freeForm, wordsOption } from './forms.ts';
import { type Interaction, limits } from './wire.ts';

interface Choice {
  readonly name: string;
  readonly value: string;
}

/** Where a word begins in a text. */
const starts = /(?<=^|[\s,;:(=])(?=\S)/g;

export async function completed(
  { data }: Interaction,
  asker: Asker,
  bot: Bot,
  declarations: readonly Declaration[],
): Promise<readonly Choice[]> {
  const option = data?.options?.find(({ focused }) => focused);
  if (option?.name !== wordsOption) return [];
  const typed = String(option.value ?? '');
  // A choice is the whole text, and has no room for a longer one.
  if (typed.length >= limits.choice) return [];
  const id = data?.name ?? '';
  const kept = declarations.find((one) => one.id === id)?.keeps
    ? await bot.suggest({ platform: 'discord', ...asker, text: `${id} ${typed}` })
    : [];
  const others = typed.trim() === '' ? examplesOf(id, declarations) : continued(typed, id, bot);
  // a name that is kept begins so: no fat is meant
  return [...new Set(typed.trim() !== '' && kept.length > 0 ? kept : [...kept, ...others])]
    .filter((text) => text.trim() !== '' && text.length <= limits.choice)
    .slice(0, limits.choices)
    .map((text) => ({ name: text, value: text }));
}

const examplesOf = (id: string, declarations: readonly Declaration[]): readonly string[] =>
  declarations
    .filter((one) => id === freeForm || one.id === id)
    .flatMap(({ examples, id: word }) =>
      examples.map(({ say }) => (id === freeForm ? say : say.replace(new RegExp(`^${word}:?\\s*`), ''))),
    );

/** The text with its last words, as many as fit, replaced by each continuation. */
function continued(typed: string, id: string, bot: Bot): readonly string[] {
  const names = bot.complete(id === freeForm ? typed : `${id} ${typed}`);
  for (const { index } of typed.matchAll(starts)) {
    const end = typed.slice(index).toLowerCase();
    const hits = names.filter((name) => name.toLowerCase().startsWith(end));
    if (hits.length > 0) return [...new Set(hits.map((name) => typed.slice(0, index) + name))];
  }
  return [];
}

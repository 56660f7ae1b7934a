/** The application commands, made of the declarations: nothing about a command is said here a second time. */
import type { Declaration } from '../../src/index.ts';
import { commandType, limits, type Option } from './wire.ts';

/** Names and descriptions in other languages: locale → English text → that text in the locale. */
export type Translations = Readonly<Record<string, Readonly<Record<string, string>>>>;

type Localised = { readonly [locale: string]: string };

export interface StringOption {
  readonly type: 3;
  readonly name: string;
  readonly name_localizations?: Localised;
  readonly description: string;
  readonly description_localizations?: Localised;
  readonly max_length?: number;
  readonly autocomplete?: true;
  readonly choices?: readonly { readonly name: string; readonly value: string }[];
}

export interface Form {
  readonly type: number;
  readonly name: string;
  readonly name_localizations?: Localised;
  readonly description?: string;
  readonly description_localizations?: Localised;
  readonly options?: readonly StringOption[];
  /** Global commands only: installed to a server (0) or a person (1); in servers, with the bot, anywhere (0, 1, 2). */
  readonly integration_types?: readonly number[];
  readonly contexts?: readonly number[];
}

/** What is said without a command word, so that the core finds out what is meant. */
export const freeForm = 'ask';
/** Of the menu of a message. */
export const checkMenu = 'Check this recipe';

/** Name of the option that holds the words; no declared option is called that. */
export const wordsOption = 'text';

/** To the length of a description. */
export const cut = (text: string): string =>
  text.length <= limits.description ? text : `${text.slice(0, limits.description - 1).toWellFormed()}…`;

const takesWords = ({ examples, id }: Declaration): string =>
  examples.find(({ say }) => say !== id)?.say.replace(/^\w+:?\s*/, '') ?? '';

/** One spelling for each value: the first declared. */
function choicesOf(choices: Readonly<Record<string, string>>): readonly { name: string; value: string }[] | null {
  const first = new Map<string, string>();
  for (const [word, value] of Object.entries(choices)) if (!first.has(value)) first.set(value, word);
  const all = [...first.values()].map((word) => ({ name: word, value: word }));
  return all.length <= limits.choices ? all : null;
}

export function forms(declarations: readonly Declaration[], translations: Translations = {}): readonly Form[] {
  const localised = (text: string): Localised =>
    Object.fromEntries(
      Object.entries(translations).flatMap(([locale, texts]) => (texts[text] ? [[locale, texts[text]]] : [])),
    );
  const named = (name: string, description: string) => {
    const names = localised(name);
    const descriptions = localised(description);
    return {
      name,
      ...(Object.keys(names).length > 0 ? { name_localizations: names } : {}),
      description: cut(description),
      ...(Object.keys(descriptions).length > 0 ? { description_localizations: descriptions } : {}),
    };
  };
  const words = (example: string): StringOption => ({
    type: 3,
    ...named(wordsOption, example === '' ? 'in your own words' : `for example: ${example}`),
    max_length: limits.stringOption,
    autocomplete: true,
  });
  const everywhere = { integration_types: [0, 1], contexts: [0, 1, 2] };
  return [
    ...declarations.map((declaration): Form => {
      const options = Object.entries(declaration.options).map(([key, declared]): StringOption => {
        const choices = declared.kind === 'choice' ? choicesOf(declared.choices) : null;
        const about = choices ? declared.about : `${declared.about}, for example ${exampleValue(declared.example)}`;
        return { type: 3, ...named(key.toLowerCase(), about), ...(choices ? { choices } : { max_length: 100 }) };
      });
      return {
        type: commandType.slash,
        ...named(declaration.id, declaration.summary),
        options: [words(takesWords(declaration)), ...options],
        ...everywhere,
      };
    }),
    {
      type: commandType.slash,
      ...named(freeForm, 'Ask in your own words, or go on with your last recipe'),
      options: [words('3/4 cup shea in grams')],
      ...everywhere,
    },
    { type: commandType.message, name: checkMenu, ...everywhere },
  ];
}

const exampleValue = (example: string): string => example.replace(/^\w+=/, '');

/** What a person would type for the same: "check superfat=8 450 g olive …". */
export function asTyped(name: string, options: readonly Option[], words: string | null = null): string {
  const text = words ?? String(options.find((option) => option.name === wordsOption)?.value ?? '');
  const parts = name === freeForm ? [] : [name];
  for (const { name: key, value } of options) if (key !== wordsOption) parts.push(`${key}=${String(value).trim()}`);
  parts.push(text);
  return parts.join(' ').trim();
}

/** What is asked of the kept recipes, in the words of a person. */
import { nameIn } from './name.ts';

export type Wish =
  | { readonly do: 'list' }
  /** `text`: the recipe behind the name; null for the last one. */
  | { readonly do: 'save'; readonly name: string; readonly text: string | null }
  | { readonly do: 'show'; readonly name: string };

const verbs: Readonly<Record<string, Wish['do']>> = {
  list: 'list',
  save: 'save',
  keep: 'save',
  store: 'save',
  show: 'show',
  open: 'show',
};

/** "save this recipe as …", "keep it under the name …" */
const pointing =
  /^(?:(?:(?:this|that|the|my|the last|my last)(?: (?:recipe|one|batch))?|it)\b(?: please)?)?\s*(?:(?:as|under)\b(?: the name)?)?\s*/i;

/** The wish of a text that begins with one of the verbs; null where it begins otherwise. */
export function wishIn(text: string): Wish | null {
  const said = text.trim();
  if (/^(?:list|all|mine|my recipes|recipes)?\W*$/i.test(said)) return { do: 'list' };
  const [, verb = '', rest = ''] = /^(?:please\s+)?([a-z]+)(?:\s*:|(?=\s|$))\s*([\s\S]*)$/i.exec(said) ?? [];
  switch (verbs[verb.toLowerCase()]) {
    case 'save':
      return { do: 'save', ...named(rest.replace(pointing, '')) };
    case 'show':
      return { do: 'show', name: nameIn(rest) };
    case 'list':
      return { do: 'list' };
    default:
      return null;
  }
}

/** A name up to the first colon or line end, or in quotes; then the recipe. */
function named(said: string): { readonly name: string; readonly text: string | null } {
  const [, inQuotes, behind] = /^["“„«]([^"”“»\n]+)["”“»]\s*:?([\s\S]*)$/.exec(said) ?? [];
  const [, before = said, after = ''] = /^([^:\n]*)[:\n]([\s\S]*)$/.exec(said) ?? [];
  const text = (behind ?? after).trim();
  return { name: nameIn(inQuotes ?? before), text: text === '' ? null : text };
}

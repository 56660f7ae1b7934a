/** What is asked of the kept recipes, in the words of a person. */
import { nameIn } from './name.ts';

export type Form = 'json' | 'csv' | 'text';

/** Two names whose border only the names that are kept can tell: "Salt to taste to Salt bar". The likeliest first. */
export type Pair = readonly (readonly [first: string, second: string])[];

export type Wish =
  | { readonly do: 'list' }
  /** `text`: the recipe behind the name; null for the last one. */
  | { readonly do: 'save'; readonly name: string; readonly text: string | null }
  | { [Do in 'show' | 'share' | 'unshare' | 'delete']: { readonly do: Do; readonly name: string } }[
      | 'show'
      | 'share'
      | 'unshare'
      | 'delete']
  | { [Do in 'rename' | 'copy' | 'compare']: { readonly do: Do; readonly pair: Pair } }['rename' | 'copy' | 'compare']
  /** `name` null: all of them; `form` null: in each. */
  | { readonly do: 'export'; readonly name: string | null; readonly form: Form | null }
  | { readonly do: 'import'; readonly text: string };

const verbs: Readonly<Record<string, Wish['do']>> = {
  list: 'list',
  save: 'save',
  keep: 'save',
  store: 'save',
  show: 'show',
  open: 'show',
  rename: 'rename',
  copy: 'copy',
  duplicate: 'copy',
  share: 'share',
  unshare: 'unshare',
  delete: 'delete',
  remove: 'delete',
  compare: 'compare',
  export: 'export',
  import: 'import',
};

/** "save this recipe as …", "keep it under the name …" */
const pointing =
  /^(?:(?:(?:this|that|the|my|the last|my last)(?: (?:recipe|one|batch))?|it)(?: please)?(?=\s|$))?\s*(?:(?:as|under)\b(?: the name)?)?\s*/i;

/** The wish of a text that begins with one of the verbs; null where it begins otherwise. */
export function wishIn(text: string): Wish | null {
  const said = text.trim();
  if (/^(?:list|all|mine|my recipes|recipes)?\W*$/i.test(said)) return { do: 'list' };
  const [, word = '', rest = ''] = /^(?:please\s+)?([a-z]+)(?:\s*:|(?=\s|$))\s*([\s\S]*)$/i.exec(said) ?? [];
  const verb = verbs[word.toLowerCase()];
  switch (verb) {
    case 'save':
      return { do: 'save', ...named(rest.replace(pointing, '')) };
    case 'show':
    case 'delete':
    case 'unshare':
      return { do: verb, name: nameIn(rest) };
    case 'share':
      return {
        do: verb,
        name: nameIn(
          rest.replace(/\s+(?:to|with|in|here)\s+(?:(?:the|this|our)\s+)?(?:room|channel|chat|everybody|all)\W*$/i, ''),
        ),
      };
    case 'rename':
    case 'copy':
      return { do: verb, pair: pairs(rest, /\s+(?:to|as|into|→|->)\s+/gi) };
    case 'compare':
      return { do: verb, pair: pairs(rest, /\s+(?:and|with|to|against|vs\.?|&)\s+|\s*,\s*/gi) };
    case 'export':
      return exportIn(rest);
    case 'import':
      return { do: 'import', text: rest };
    case 'list':
      return { do: 'list' };
    default:
      return null;
  }
}

/** A name up to the first colon or line end, or in quotes; then the recipe. */
export function named(said: string): { readonly name: string; readonly text: string | null } {
  const [, inQuotes, behind] = /^["“„«]([^"”“»\n]+)["”“»]\s*:?([\s\S]*)$/.exec(said) ?? [];
  const [, before = said, after = ''] = /^([^:\n]*)[:\n]([\s\S]*)$/.exec(said) ?? [];
  const text = (behind ?? after).trim();
  return { name: nameIn(inQuotes ?? before), text: text === '' ? null : text };
}

function pairs(said: string, joint: RegExp): Pair {
  const found = [...said.matchAll(joint)].map(
    ({ 0: whole, index }) => [nameIn(said.slice(0, index)), nameIn(said.slice(index + whole.length))] as const,
  );
  return found.length > 0 ? found : [[nameIn(said), '']];
}

function exportIn(said: string): Wish {
  const [, name = said, word] =
    /^([\s\S]*?)(?:^|\s+)(?:(?:as|in|to)\s+)?(json|csv|(?:plain )?text)\W*$/i.exec(said) ?? [];
  const form = word === undefined ? null : /csv/i.test(word) ? 'csv' : /json/i.test(word) ? 'json' : 'text';
  const all = /^\W*(?:all|everything|all (?:of )?my recipes|my recipes|mine)?\W*$/i.test(name);
  return { do: 'export', name: all ? null : nameIn(name), form };
}

export const usage = `Usage:
  npm run --silent ask -- [--json] [--data DIR] [--picture FILE] TEXT…   one question; several words are joined
  npm run --silent ask -- [--json] [--data DIR] [--picture FILE] -       the question comes from standard input
  npm run --silent ask -- [--data DIR] --turns FILE    one turn a line, one JSON object a turn; - is standard input

  --json           print one JSON object instead of text
  --data DIR       where recipes, settings and batches are kept; else LYEWARD_DATA, else the platform's usual place
  --turns FILE     a conversation; \\n within a line stands for a line break
  --picture FILE   save the picture of the answer as PNG
  --               what follows is text, even where it looks like an option

Exit status: 0 answered, 1 a mistake of ours, 2 not answered (a question back, an impossible figure, a refusal),
64 a wrong option, 66 a file that cannot be read, 73 a file that cannot be written.
`;

export interface Arguments {
  readonly json: boolean;
  readonly picture: string | undefined;
  /** The folder of what is kept, where it is named. */
  readonly data: string | undefined;
  /** The words of the question, `-` for standard input, or a file of turns. */
  readonly from: { readonly text: string } | { readonly turns: string } | 'standard input';
}

type Parsed = { readonly ok: true; readonly value: Arguments } | { readonly ok: false; readonly message: string };

/** A word is an option only if it looks like nothing else: "-5 g" and "- 450 g olive oil" are text. */
const looksLikeOption = (word: string): boolean => word.startsWith('-') && /^--?[a-z][\w-]*(=.*)?$/i.test(word);

export function parseArguments(words: readonly string[]): Parsed {
  const wrong = (message: string): Parsed => ({ ok: false, message });
  const text: string[] = [];
  const files = new Map<string, string>();
  let json = false;
  const rest = words.values();
  for (const word of rest) {
    const [, name = word, value] = /^(--[a-z]+)=(.*)$/s.exec(word) ?? [];
    if (word === '--') text.push(...rest);
    else if (word === '--json') json = true;
    else if (name === '--turns' || name === '--picture' || name === '--data') {
      const file = value ?? rest.next().value;
      if (!file) return wrong(`${name} needs the name of a ${name === '--data' ? 'folder' : 'file'}`);
      if (files.has(name)) return wrong(`${name} is given twice`);
      files.set(name, file);
    } else if (looksLikeOption(word)) return wrong(`there is no option ${word}`);
    else text.push(word);
  }
  const picture = files.get('--picture');
  const turns = files.get('--turns');
  const data = files.get('--data');
  if (turns !== undefined) {
    if (text.length > 0) return wrong('--turns takes its text from a file: leave out the other words');
    if (picture !== undefined) return wrong('--picture goes with one question, not with --turns');
    return { ok: true, value: { json: true, picture, data, from: { turns } } };
  }
  if (text.length === 0) return wrong('there is no question');
  if (text.length === 1 && text[0] === '-') return { ok: true, value: { json, picture, data, from: 'standard input' } };
  return { ok: true, value: { json, picture, data, from: { text: text.join(' ') } } };
}

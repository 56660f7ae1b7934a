/** "Columns are ingredient / oz / grams": what a sentence says of the columns of a table becomes the row above it. */

interface Patterns {
  /** The names of all columns, in order. */
  readonly all: RegExp;
  /** The names and nothing else. */
  readonly bare: RegExp;
  /** "First column oz, second grams", behind the names of the ingredients. */
  readonly counted: RegExp;
}
let made: Patterns | null = null;

/** Patterns of all alphabets are slow to get ready: these are made for the posts that have a table. */
function patterns(): Patterns {
  const word = '[\\p{L}%][\\p{L}%. ]{0,24}?';
  const is = '(?: (?:is|are|has))?(?: in)? ?[:=]? ?';
  made ??= {
    all: new RegExp(
      `\\b(?:the )?col(?:umn)?s(?: (?:are|mean|hold|go|read))?[ ]?[:=]?[ ]*(?<names>${word}(?:[ ]*[/|,][ ]*${word}){1,5})[ ]*(?=[).;!]|$)`,
      'iu',
    ),
    bare: new RegExp(`^[ ]*[([]?(?<names>${word}(?:[ ]*/[ ]*${word}){1,5})[)\\]]?[ ]*$`, 'u'),
    counted: new RegExp(
      `\\b(?:first|1st|left) (?:column|number|figure|one)${is}(?<first>[\\p{L}%]+)[,;]? (?:and |the )*(?:second|2nd|right|other)(?: column| number| figure| one)?${is}(?<second>[\\p{L}%]+)`,
      'iu',
    ),
  };
  return made;
}

/** A line that names columns is no longer. */
const longest = 200;

const widthOf = (line: string): number => line.split('\t').length;

/** The lines with such a row above the table, where the post has one table and says as many names as it has columns. */
export function underNames(lines: readonly string[]): readonly string[] {
  const from = lines.findIndex((line) => line.includes('\t'));
  const to = lines.findLastIndex((line) => line.includes('\t')) + 1;
  const rows = lines.slice(from, to);
  const width = rows.reduce((most, row) => Math.max(most, widthOf(row)), 0);
  // every row has a figure: the table has no heads of its own
  if (rows.length < 2 || width < 3 || !rows.every((row) => row.trim() === '' || (row.includes('\t') && /\d/.test(row))))
    return lines;
  const above = lines.findLastIndex((line, k) => k < from && line.trim() !== '');
  const { all, bare, counted } = patterns();
  for (const [k, line] of lines.entries()) {
    if (line.includes('\t') || line.length > longest) continue;
    const found = all.exec(line) ?? counted.exec(line) ?? (k === above ? bare.exec(line) : null);
    const { names, first, second } = found?.groups ?? {};
    const heads = names?.split(/[/|,]/).map((name) => name.trim()) ?? ['name', first ?? '', second ?? ''];
    if (!found || heads.length !== width) continue;
    const out = [...lines];
    out.splice(from, 0, heads.join('\t'));
    const at = k < from ? k : k + 1;
    out[at] = `${line.slice(0, found.index)}${line.slice(found.index + found[0].length)}`;
    return out;
  }
  return lines;
}

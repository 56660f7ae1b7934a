/** "Columns are ingredient / oz / grams": what a sentence says of the columns of a table becomes the row above it. */

const word = '[\\p{L}%][\\p{L}%. ]{0,24}?';
/** The names of all columns, in order. */
const all = new RegExp(
  `\\b(?:the )?col(?:umn)?s(?: (?:are|mean|hold|go|read))?[ ]?[:=]?[ ]*(?<names>${word}(?:[ ]*[/|,][ ]*${word}){1,5})[ ]*(?=[).;!]|$)`,
  'iu',
);
/** The names and nothing else. */
const bare = new RegExp(`^[ ]*[([]?(?<names>${word}(?:[ ]*/[ ]*${word}){1,5})[)\\]]?[ ]*$`, 'u');
/** "First column oz, second grams", behind the names of the ingredients. */
const counted =
  /\b(?:first|1st|left) (?:column|number|figure|one)(?: (?:is|are|has))?(?: in)? ?[:=]? ?(?<first>[\p{L}%]+)[,;]? (?:and |the )*(?:second|2nd|right|other)(?: column| number| figure| one)?(?: (?:is|are|has))?(?: in)? ?[:=]? ?(?<second>[\p{L}%]+)/iu;

const widthOf = (line: string): number => line.split('\t').length;

/** The lines with such a row above the table, where the post has one table and says as many names as it has columns. */
export function underNames(lines: readonly string[]): readonly string[] {
  const from = lines.findIndex((line) => line.includes('\t'));
  const to = lines.findLastIndex((line) => line.includes('\t')) + 1;
  const rows = lines.slice(from, to);
  const width = Math.max(...rows.map(widthOf));
  // every row has a figure: the table has no heads of its own
  if (rows.length < 2 || width < 3 || !rows.every((row) => row.trim() === '' || (row.includes('\t') && /\d/.test(row))))
    return lines;
  for (const [k, line] of lines.entries()) {
    if (line.includes('\t') || line.length > 200) continue;
    const found =
      all.exec(line) ??
      counted.exec(line) ??
      (k < from && lines.slice(k + 1, from).every((one) => one.trim() === '') ? bare.exec(line) : null);
    const { names, first, second } = found?.groups ?? {};
    const heads = names?.split(/[/|,]/).map((name) => name.trim()) ?? [`name`, first ?? '', second ?? ''];
    if (!found || heads.length !== width) continue;
    const out = [...lines];
    out.splice(from, 0, heads.join('\t'));
    const at = k < from ? k : k + 1;
    out[at] = `${line.slice(0, found.index)}${line.slice(found.index + found[0].length)}`;
    return out;
  }
  return lines;
}

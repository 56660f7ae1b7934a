/**
 * What readline wants of a completer: the continuations, and the end of the line that they replace. A continuation
 * fits where some end of the line, begun at a word, is its beginning; the longest such end counts.
 */
export function completions(line: string, names: readonly string[]): [string[], string] {
  const typed = line.slice(line.lastIndexOf('\n') + 1);
  const starts = [0, ...[...typed.matchAll(/(?<=[\s:=,(])(?=\S)/g)].map(({ index }) => index)];
  for (const start of starts) {
    const end = typed.slice(start);
    const hits = end === '' ? [] : names.filter((name) => name.toLowerCase().startsWith(end.toLowerCase()));
    if (hits.length > 0) return [hits, end];
  }
  return [[], typed];
}

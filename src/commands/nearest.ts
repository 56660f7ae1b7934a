/** Edits (insert, delete, change, swap of neighbours) from one word to another. */
export function edits(a: string, b: string): number {
  let [before, row]: [number[], number[]] = [[], Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1);
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] && i > 1 && j > 1)
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      next.push(least);
    }
    [before, row] = [row, next];
  }
  return row[b.length] ?? 0;
}

/** The word that a slip of the fingers may have meant: one edit in a short word, two in a longer; null if none. */
export function nearest(typed: string, known: readonly string[]): string | null {
  const allowed = typed.length < 3 ? 0 : typed.length < 6 ? 1 : 2;
  let best: { readonly word: string; readonly far: number } | null = null;
  for (const word of known) {
    if (Math.abs(word.length - typed.length) > allowed) continue;
    const far = edits(typed, word);
    if (far <= allowed && far < (best?.far ?? Number.POSITIVE_INFINITY)) best = { word, far };
  }
  return best?.word ?? null;
}

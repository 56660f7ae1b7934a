/** Recipes marked by a number alone, "(1) …, (2) …" or a line each of "v1", "v2", and the one that a question calls by it. */

/** A recipe of a post by its mark. */
export interface Marked {
  readonly label: string;
  readonly text: string;
  readonly of: number;
  readonly rest: string;
}

const marks = /(?:^|(?<=\s))\((\d)\)(?=\s)|(?:^|(?<=\n))[ \t]*v(\d)(?=[\s(:])/gi;
const called =
  /\b(?:check|lye|naoh|koh|judge|use|take|mean|about)\b(?: (?:the|for|of|only|just|now))* (?:number |no\.? ?|nr\.? ?|#|v|\()(\d)\b/gi;
/** A sentence that speaks of one by its number. */
const spokenOf = /[^.!?\n]*\b(?:number |no\.? ?|nr\.? ?|v)\d\b[^.!?\n]*[.!?]*/gi;
const figure = /\d+(?:[.,]\d+)?/g;

/** Figures of a recipe, at the least. */
const least = 3;

export function markedIn(post: string): Marked | null {
  if (!/\(2\)|v2/i.test(post)) return null;
  const labels = new Set([...post.matchAll(called)].map(([, label = '']) => label));
  const [label = ''] = labels;
  let next = 1;
  // "v1 was harsh" behind the list of versions is no other one
  const found = [...post.matchAll(marks)].filter(
    ([, bracketed, version]) => Number(bracketed ?? version) === next && next++,
  );
  if (labels.size !== 1 || found.length < 2) return null;
  const parts = found.map(({ index, 0: { length } }, k) => post.slice(index + length, found[k + 1]?.index));
  if (!parts.every((part) => (part.match(figure) ?? []).length >= least)) return null;
  const part = parts[Number(label) - 1];
  if (part === undefined) return null;
  const text = part.replace(spokenOf, ' ');
  return { label, text, of: parts.length, rest: post.replace(text, ' ') };
}

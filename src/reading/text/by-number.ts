/** Rows of a numbered list that a sentence calls by their numbers: "I'm leaving no. 3 out", "nos. 2 and 4 are gone". */

const numbered =
  /^[ \t>*•-]*(?:\(?(\d{1,2})[.):][ \t]*|#(\d{1,2})\b[.):]?[ \t]+|(\d{1,2})[ \t]?[-–—][ \t]+)(?=\S)(.*)$/gm;
const mayBegin = /^[ \t>*•-]*[(#]?1[.): \t–—-]/m;
const mayCall = /\b(?:no|nos|nr|nrs|number|numbers|row|line|item|ingredient|entry|position)|#\d|\d\)/i;
/** A list is one of at least so many rows, each with its amount. */
const leastRows = 3;

const unit =
  '(?:kilo(?:gram)?s?|kg|g|gr|grams?|gms?|dag|oz|ounces?|lbs?|pounds?|ml|cl|l|lit(?:re|er)s?|cups?|tsp|tbsp|drops?)';
const amount = new RegExp(`\\d[\\d.,/ ]*(?:${unit}\\b\\.?)?|%`, 'giu');

const words = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const ordinals = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
const count = `(?:\\d{1,2}|${words.slice(1).join('|')})(?![\\p{L}\\d%°]|[.,/:]\\d| ?${unit}\\b)`;
const nouns = '(?:row|line|item|ingredient|entry|position)';
/** "Batch no. 3", "soap #3": of no list. */
const ofElse =
  '(?<!\\b(?:batch|soap|recipe|version|try|attempt|test|trial|step|formula|lot|mou?ld|bar|bars|loaf|pot|phone|house|order|page|book|chapter|group|team|size|round|series|edition|take|my|your|her|his)[ \\t]*)';
let called: RegExp | undefined;
/** The pattern is made when a numbered list first has such a call beside it. */
const calledBy = (): RegExp => {
  called ??= new RegExp(
    [
      `(?<![\\p{L}\\d])${ofElse}(?:the )?(?:`,
      `(?:nos?\\.|nrs?\\.?|numbers?|${nouns}s?(?: (?:no\\.?|number|#))?|#) ?(${count}(?:(?: ?(?:,|and|&|\\+) ?#?)+${count})*)`,
      `|(${ordinals.slice(1).join('|')}|\\d(?:st|nd|rd|th)) ${nouns}\\b`,
      '|(?<=\\b(?:leav(?:e|ing)|left|skip(?:ped)?|drop(?:ped)?|remove[sd]?|without|minus|forget|ignore) (?:out )?)\\(?(\\d{1,2})\\))',
    ].join(''),
    'giu',
  );
  return called;
};

const ofElseBehind = /^ (?:batch|recipe|soap|version|bar|try|attempt|sieve|loaf|mou?ld|can|tin)\b/i;

interface Rows {
  readonly names: ReadonlyMap<number, string>;
  /** Where the first begins, and the last ends. */
  readonly from: number;
  readonly to: number;
}

const isStep =
  /^(?:melt|mix|add|dissolve|stir|weigh|pour|blend|heat|cook|put|combine|let|cool|warm|measure|take|use|then|when|once)\b/i;

/** What a row weighs: its words without its amounts and brackets; empty where it tells what to do. */
function nameIn(row: string): string {
  const parts = row
    .replace(/\([^()]*\)/g, ' ')
    .replace(amount, '|')
    .split(/[^\p{L}'’ -]+/u)
    .map((part) => part.replace(/^[ -]*(?:of )?|[ -]+$/gi, ''));
  const name = parts.find((part) => /\p{L}{2}/u.test(part)) ?? '';
  return isStep.test(name) ? '' : name;
}

/** The numbered list of a post that has one. */
function rowsOf(post: string): Rows | null {
  const names = new Map<number, string>();
  let [from, to, weighed] = [0, 0, 0];
  for (const { 0: line, 1: a, 2: b, 3: c, 4: row = '', index } of post.matchAll(numbered)) {
    const number = Number(a ?? b ?? c);
    // another list
    if (number !== names.size + 1) {
      if (number === 1 && /\d/.test(row)) return null;
      continue;
    }
    if (number === 1) from = index;
    to = index + line.length;
    if (/\d/.test(row)) weighed++;
    names.set(number, nameIn(row));
  }
  return weighed >= leastRows ? { names, from, to } : null;
}

const numberOf = (said: string): number =>
  Number.parseInt(said, 10) || Math.max(words.indexOf(said), ordinals.indexOf(said));

/** The post with the names of such rows in the place of their numbers. */
export function withRowsNamed(post: string): {
  readonly text: string;
  readonly rows: readonly (readonly [string, string])[];
} {
  const list = mayBegin.test(post) && mayCall.test(post) ? rowsOf(post) : null;
  if (!list) return { text: post, rows: [] };
  const rows: (readonly [string, string])[] = [];
  const text = post.replace(calledBy(), (said: string, many?: string, nth?: string, one?: string, at = 0) => {
    if ((at >= list.from && at < list.to) || ofElseBehind.test(post.slice(at + said.length, at + said.length + 12)))
      return said;
    const numbers = (many ?? nth ?? one ?? '')
      .toLowerCase()
      .split(/[ ,&+#]+|\band\b/)
      .filter(Boolean)
      .map(numberOf);
    const names = numbers.map((number) => list.names.get(number) ?? '');
    if (names.includes('')) return said;
    const name = names.join(' and ');
    rows.push([said, name]);
    return name;
  });
  return { text, rows };
}

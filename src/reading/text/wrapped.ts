/**
 * Running text that some program broke into lines: a paragraph each of whose lines would not have held the next word,
 * and a unit that was parted from its figure.
 */

/** Characters of a line that a program breaks, at the least and at the most. */
const shortest = 38;
const longest = 120;

/** A row of a list or a table, which stands in a line of its own. */
const isRow = (line: string): boolean =>
  line.includes('\t') || line.includes('|') || /^\s*(?:[-*•–>#]|\d+[.)]\s)/.test(line);

/** "450 g", "12,50": how rows of a list end. */
const endsInFigure = (line: string): boolean => /\d\s?(?:g|gr|grams?|kg|oz|lbs?|ml|l|%)?[.,;:)]*$/i.test(line);

/** What a line goes on with that another one began. */
const goesOn = (line: string): boolean => /^\s*[\p{Ll}\d%(&+]/u.test(line);

/** "olive 420 g coconut 180 g castor 30 g": no row of one thing. */
const tellsMany = (line: string): boolean => (line.match(/\d+(?:[.,]\d+)? ?\p{L}/gu) ?? []).length > 2;

/** What begins a sentence of its own in a chat that spares capitals, or a row for after the cook. */
const begins =
  /^\s*(?:how|what|which|why|when|where|who|is|are|was|were|does|do|did|can|could|will|would|should|i|im|ive|i'm|i've|my|it|its|it's|he|she|we|they|so|also|but|and|please|pls|thanks|thx|sorry|edit|oops|no|not|this|that|there|the|then|ok|lol|any|anyone|after (?:the )?cook|at (?:the )?end|adde?d?|stir|stirred|fold|folded|later)\b/;

/** What another says in a chat. */
const answers = /^\s*(?:nah|nope|naw|yeah|yep|lol|haha|ok)\b/;

/** Each of these lines but the last is as long as it could be. */
function isWrapped(lines: readonly string[]): boolean {
  let widest = 0;
  for (const { length } of lines) if (length > widest) widest = length;
  if (widest < shortest || widest > longest || lines.some(isRow)) return false;
  const broken = lines.slice(0, -1);
  const behind = lines.slice(1);
  if (behind.some((line) => answers.test(line))) return false;
  const full = broken.every((line, k) => line.length + 1 + (/\S+/.exec(behind[k] ?? '')?.[0].length ?? 0) > widest);
  if (!full || behind.filter(goesOn).length * 2 < behind.length) return false;
  // two lines say little: the first must be in the middle of a sentence, or tell several things itself
  const [first = '', second = ''] = lines;
  if (lines.length === 2 && begins.test(second)) return false;
  if (lines.length === 2)
    return (
      goesOn(second) && !/[.!?:;]$/.test(first) && (tellsMany(first) || !(first.endsWith(',') || endsInFigure(first)))
    );
  return broken.filter(endsInFigure).length * 2 <= broken.length;
}

const figureLast =
  /(?:\p{L}.*\d|\b(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred))$/iu;
const unitFirst = /^\s*(?:g|gr|gms?|grams?|kg|kilos?|ozs?|ounces?|lbs?|pounds?|ml|percent)\b|^\s*%/i;

/** The lines with those made whole that were one; the very same where none was. */
export function unwrap(lines: string[]): string[] {
  let out: string[] | null = null;
  for (let from = 0; from < lines.length; ) {
    let to = from;
    while (to < lines.length && lines[to]?.trim() !== '') to++;
    const whole = to - from > 1 ? wholeLines(lines.slice(from, to)) : null;
    if (whole) out ??= lines.slice(0, from);
    if (out) out.push(...(whole ?? lines.slice(from, to)));
    // the blank line
    if (out && to < lines.length) out.push('');
    from = to + 1;
  }
  return out ?? lines;
}

/** The lines of a paragraph with those made whole that were one; null where none was. */
function wholeLines(lines: readonly string[]): readonly string[] | null {
  const block = lines.map((line) => line.trimEnd());
  if (isWrapped(block)) return [block.map((line) => line.trim()).join(' ')];
  const joined = joinUnits(block);
  return joined.length < block.length ? joined : null;
}

/** "(20 %" at the end of a line and "superfat)" in the next. */
const isBracketed = (last: string, line: string): boolean =>
  last.includes('(') && last.lastIndexOf('(') > last.lastIndexOf(')') && /^[^()]*\)/.test(line);

/** "97" at the end of a line and "g NaOH" in the next. */
function joinUnits(block: readonly string[]): readonly string[] {
  const joined: string[] = [];
  for (const line of block) {
    const last = joined.at(-1);
    if (last !== undefined && ((unitFirst.test(line) && figureLast.test(last)) || isBracketed(last, line)))
      joined.splice(-1, 1, `${last} ${line.trim()}`);
    else joined.push(line);
  }
  return joined;
}

/** A post cut into sentences, brackets and rows, each as plain words in which names and figures are placeholders. */
import type { Prim } from './scan.ts';
import type { Token } from './tokens.ts';

/** Words of one sentence, bracket or row, from token `from` to `to`. */
export interface Sentence {
  readonly from: number;
  readonly to: number;
  /** `@` stands for a name of something, `#` for a figure; signs stand apart. */
  readonly text: string;
  /** Where each of its tokens begins in `text`. */
  readonly at: readonly number[];
  /** Counts the paragraphs. */
  readonly paragraph: number;
}

/** A word stands as it was written, whatever has been made of its token. */
const placeholder = (token: Token, prims: readonly Prim[]): string => {
  if (token.t === 'quantity') return '#';
  if (token.t === 'name') return token.meaning.kind === 'role' ? token.text.toLowerCase() : '@';
  if (token.t === 'word') return prims[token.from]?.text ?? token.text;
  return token.t === 'sign' ? token.text : '…';
};

/** Tokens from which on a line is taken for one of running text, which the next may carry on. */
const runningText = 9;

/** Words that carry nothing on. */
const opening: ReadonlySet<string> = new Set('sorry edit oops whoops correction ps its thanks please pls'.split(' '));

const closing: ReadonlySet<string> = new Set(['.', '!', '?', ';', ')', ']']);

const isCapital = (prim: Prim | undefined): boolean => /^\p{Lu}/u.test(prim?.raw ?? '');

/** Whether token `k` is the last of a sentence. */
function ends(tokens: readonly Token[], prims: readonly Prim[], k: number, begin: number): boolean {
  const token = tokens[k];
  const next = tokens[k + 1];
  if (!token || !next) return true;
  if (token.t === 'line') {
    const begins = prims[next.from];
    const carriedOn = token.text === 'line' && k - begin >= runningText && /^\p{Ll}/u.test(begins?.raw ?? '');
    return !carriedOn || opening.has(begins?.text ?? '');
  }
  if (next.t === 'sign' && (next.text === '(' || next.text === '[')) return true;
  if (token.t === 'sign') return closing.has(token.text);
  return token.t === 'quantity' && token.quantity.text.endsWith('.') && isCapital(prims[next.from]);
}

/** The sentences of a post in order; time linear in its length. */
export function sentencesOf(tokens: readonly Token[], prims: readonly Prim[]): readonly Sentence[] {
  const sentences: Sentence[] = [];
  let from = 0;
  let paragraph = 0;
  let text = '';
  let at: number[] = [];
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (!token) break;
    at.push(text.length);
    if (token.t !== 'line') text += `${placeholder(token, prims)} `;
    if (!ends(tokens, prims, k, from)) continue;
    if (text !== '') sentences.push({ from, to: k + 1, text, at, paragraph });
    if (token.t === 'line' && token.text === 'blank') paragraph++;
    from = k + 1;
    text = '';
    at = [];
  }
  return sentences;
}

/** The token of a sentence at this place of its text. */
export function tokenAt({ from, at }: Sentence, place: number): number {
  let low = 0;
  let high = at.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((at[middle] ?? 0) <= place) low = middle;
    else high = middle - 1;
  }
  return from + low;
}

/** A post cut into sentences, brackets and rows, each as plain words in which names and figures are placeholders. */

import { signal } from '../words/signal-words.ts';
import type { Token } from '../words/tokens.ts';
import type { Word } from '../words/word.ts';
import type { Prim } from './scan.ts';

/** Tokens of a text, the prims that they are made of, and the words there. */
export interface Cut {
  readonly tokens: readonly Token[];
  readonly prims: readonly Prim[];
  readonly words: readonly (Word | null)[];
}

interface Plain {
  /** `@` stands for a name of something, `#` for a figure; signs stand apart. */
  readonly text: string;
  /** Where each of its tokens begins in `text`. */
  readonly at: readonly number[];
}

/** What stands in a sentence, as far as that is known without its text. */
export interface Holds {
  /** What its words give (`signal-words.ts`), and what it may say by them (`cue-words.ts`). */
  signals: number;
  cues: number;
  /** `@` and `#` in its text. */
  names: number;
  figures: number;
}

/** Words of one sentence, bracket or row, from token `from` to `to`. */
export class Sentence {
  readonly from: number;
  readonly to: number;
  /** Counts the paragraphs. */
  readonly paragraph: number;
  /** It may take something back, or say when something was so. */
  readonly retells: boolean;
  /** It may begin to tell of another batch. */
  readonly tells: boolean;
  /** What it may say, a bit each. */
  readonly cues: number;
  /** Names of something, and figures. */
  readonly names: number;
  readonly figures: number;
  private readonly cut: Cut;
  private plain: Plain | null = null;

  constructor(cut: Cut, from: number, to: number, paragraph: number, { signals, cues, names, figures }: Holds) {
    this.cut = cut;
    this.from = from;
    this.to = to;
    this.paragraph = paragraph;
    this.retells = (signals & signal.retelling) !== 0;
    this.tells = (signals & signal.telling) !== 0;
    this.cues = cues;
    this.names = names;
    this.figures = figures;
  }

  get text(): string {
    this.plain ??= plainOf(this.cut, this.from, this.to);
    return this.plain.text;
  }

  /** The place of token `k` in its text. */
  placeOf(k: number): number {
    this.plain ??= plainOf(this.cut, this.from, this.to);
    return this.plain.at[k - this.from] ?? 0;
  }

  /** The token at this place of its text. */
  tokenAt(place: number): number {
    this.plain ??= plainOf(this.cut, this.from, this.to);
    return (
      this.from +
      Math.max(
        0,
        this.plain.at.findLastIndex((at) => at <= place),
      )
    );
  }
}

function plainOf({ tokens, prims }: Cut, from: number, to: number): Plain {
  let text = '';
  const at: number[] = [];
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (!token) break;
    at.push(text.length);
    if (token.t !== 'line') text += `${placeholder(token, prims)} `;
  }
  return { text, at };
}

/** A word stands as it was written, whatever has been made of its token. */
const placeholder = (token: Token, prims: readonly Prim[]): string => {
  if (token.t === 'quantity') return '#';
  if (token.t === 'name') return token.meaning.kind === 'role' ? token.text.toLowerCase() : '@';
  if (token.t === 'word') return prims[token.from]?.text ?? token.text;
  return token.t === 'sign' ? token.text : '…';
};

/** Adds what a token gives; a role that is named by several words may take something back, or tell of another batch. */
function add(holds: Holds, token: Token, words: readonly (Word | null)[]): void {
  if (token.t === 'quantity') holds.figures++;
  else if (token.t === 'sign') {
    if (token.text === '>') holds.signals |= signal.retelling;
    else if (token.text === '@') holds.names++;
    else if (token.text === '#') holds.figures++;
  } else if (token.t === 'word' || token.t === 'name') {
    const isRole = token.t === 'name' && token.meaning.kind === 'role';
    if (token.t === 'name' && !isRole) holds.names++;
    holds.signals |= words[token.from]?.signals ?? 0;
    if (isRole && token.to > token.from + 1) holds.signals |= signal.retelling | signal.telling;
    for (let at = token.from; at < (isRole ? token.to : token.from + 1); at++) holds.cues |= words[at]?.cues ?? 0;
  }
}

/** Tokens from which on a line is taken for one of running text, which the next may carry on. */
const runningText = 9;

/** Words that carry nothing on. */
const opening: ReadonlySet<string> = new Set(
  'sorry edit oops whoops correction ps its thanks please pls nah nope naw'.split(' '),
);

const closing: ReadonlySet<string> = new Set(['.', '!', '?', ';', ')', ']']);

const isCapital = (prim: Prim | undefined): boolean => /^\p{Lu}/u.test(prim?.raw ?? '');

/** "No. 30", "rev. B", "exp. A", with its full stop at `k`. */
const isNumbering = (tokens: readonly Token[], k: number): boolean => {
  const [no, figure] = [tokens[k - 1], tokens[k + 1]];
  return (
    (no?.t === 'word' || no?.t === 'name') &&
    ((/(?:^| )(?:no|nos|nr|rev|ver|exp)$/i.test(no.text) &&
      figure?.t === 'quantity' &&
      figure.quantity.dim === 'bare') ||
      (/^(?:rev|ver|exp)$/i.test(no.text) && figure?.t === 'word' && figure.text.length === 1))
  );
};

const isDotted = (text: string): boolean => text.charCodeAt(text.length - 1) === 46;

/** Whether token `k` is the last of a sentence. */
function ends(tokens: readonly Token[], prims: readonly Prim[], k: number, begin: number): boolean {
  const token = tokens[k];
  const next = tokens[k + 1];
  if (!token || !next) return true;
  if (token.t === 'line') {
    const begins = prims[next.from];
    const isRow = next.t === 'name' && tokens[k + 2]?.t === 'quantity';
    const carriedOn = token.text === 'line' && k - begin >= runningText && !isRow && /^\p{Ll}/u.test(begins?.raw ?? '');
    return !carriedOn || opening.has(begins?.text ?? '');
  }
  if (next.t === 'sign' && (next.text === '(' || next.text === '[')) return true;
  // "typo!!"
  if (token.t === 'sign' && next.t === 'sign' && token.text === next.text && /[!?]/.test(token.text)) return false;
  // "no. 30 had 130"
  if (token.t === 'sign') {
    // "in the end!!"
    const goesOn = /^[!?]$/.test(token.text) && next.t === 'sign' && /^[!?]$/.test(next.text);
    return closing.has(token.text) && !goesOn && !(token.text === '.' && isNumbering(tokens, k));
  }
  return (
    token.t === 'quantity' &&
    isDotted(token.quantity.text) &&
    (isCapital(prims[next.from]) || next.t === 'quantity' || next.t === 'aside')
  );
}

let latest: { readonly tokens: readonly Token[]; readonly sentences: readonly Sentence[] } | null = null;

/** The sentences of a post in order: the same where nothing has been made of its tokens since they were asked for. */
export function sentencesOf(cut: Cut): readonly Sentence[] {
  if (latest?.tokens !== cut.tokens) latest = { tokens: cut.tokens, sentences: cutInto(cut) };
  return latest.sentences;
}

/** Time linear in the length of the post. */
function cutInto(cut: Cut): readonly Sentence[] {
  const { tokens, prims, words } = cut;
  const sentences: Sentence[] = [];
  let from = 0;
  let paragraph = 0;
  let any = false;
  const holds: Holds = { signals: 0, cues: 0, names: 0, figures: 0 };
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (!token) break;
    any ||= token.t !== 'line';
    add(holds, token, words);
    if (!ends(tokens, prims, k, from)) continue;
    if (any) sentences.push(new Sentence(cut, from, k + 1, paragraph, holds));
    if (token.t === 'line' && token.text === 'blank') paragraph++;
    from = k + 1;
    any = false;
    holds.signals = holds.cues = holds.names = holds.figures = 0;
  }
  return sentences;
}

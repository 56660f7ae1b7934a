/**
 * A post that is nothing but rows, each a name beside its weight, and perhaps the question: nothing in it says anything
 * of a row. Then none of the rules that hear out what a writer says has anything to hear, and none is asked.
 */
import type { InWords } from './cut.ts';
import type { Quantity } from './words/quantities.ts';
import type { Token } from './words/tokens.ts';
import type { Word } from './words/word.ts';

const stuff: ReadonlySet<string> = new Set('fat ambiguous unheld alkali water liquid additive'.split(' '));
const askingWords: ReadonlySet<string> = new Set(
  'is my the this lye ok okay right correct check please pls it enough does look good hi hello thanks'.split(' '),
);

/** One figure of one weight or volume, or of a share, that can mean nothing else. */
const isPlain = ({ value, other, upTo, second, negative, each, times, inWords }: Quantity): boolean =>
  value > 0 && !(other ?? upTo ?? second ?? times) && !negative && !each && !inWords;

const weights: Readonly<Record<string, string>> = { mass: 'w', volume: 'w', percent: '%' };

/** A letter for what it is to a row; the end of one is empty, and anything else is null. */
function letterOf(token: Token, word: Word | null | undefined): string | null {
  switch (token.t) {
    case 'name':
      if (token.meaning.kind === 'alkali') return 'a';
      if (token.meaning.id === 'superfat') return 's';
      if (token.meaning.id === 'bars') return 't';
      if (token.meaning.kind === 'scent') return 'e';
      return stuff.has(token.meaning.kind) ? 'n' : null;
    case 'quantity':
      return isPlain(token.quantity) ? (weights[token.quantity.dim] ?? null) : null;
    case 'line':
      return '';
    case 'sign':
      return /^[,;.?]$/.test(token.text)
        ? ''
        : /^[:•*-]$/.test(token.text)
          ? ':'
          : /^[()]$/.test(token.text)
            ? token.text
            : null;
    case 'word':
      return token.text === 'and'
        ? ''
        : token.text === 'of'
          ? 'o'
          : askingWords.has(token.text)
            ? '?'
            : word && saysNothing(word)
              ? 't'
              : null;
    case 'aside':
      return token.reason === 'the number of a list item' ? ':' : null;
  }
}

/** No rule looks for it. */
const saysNothing = ({ signals, cues }: Word): boolean => (signals | cues) === 0;

/** `Lye (NaOH): 122 g` */
const nameFirst = /^:?(?:[nae]|a\(a\)):?w$/;
const weightFirst = /^:?wo?(?:[nae]|a\(a\))$/;
const superfat = /^:?(?:s:?%|%s)$/;
/** It names the lye at most. */
const question = /^(?=.*\?)\?*a?\?*$/;

/** "Lavender bar" in a line of its own above the rows. */
const title = /^(?=.*t)[te]{1,4}:?$/;

/** Each of its rows is a name beside its weight, all in one order, and no name stands twice. */
export function areRowsAlone({ tokens, words, mended, disordered, struck }: InWords): boolean {
  if (mended || disordered || struck.length > 0) return false;
  const named = new Set<string>();
  let [fats, questions] = [0, 0];
  let order: RegExp | null = null;
  let titled = false;
  let [row, id] = ['', ''];
  for (let k = 0; k <= tokens.length; k++) {
    const token = tokens[k];
    const letter = token ? letterOf(token, words[token.from]) : '';
    if (letter === null) return false;
    row += letter;
    if (token?.t === 'name') {
      id = token.meaning.id;
      if (token.meaning.kind === 'fat') fats++;
    }
    if (letter !== '' || row === '') continue;
    if (question.test(row)) questions++;
    else if (title.test(row)) {
      if (order || titled || token?.t !== 'line') return false;
      titled = true;
    } else {
      order ??= superfat.test(row) ? null : nameFirst.test(row) ? nameFirst : weightFirst;
      if (!(superfat.test(row) || order?.test(row)) || named.has(id)) return false;
      named.add(id);
    }
    row = '';
  }
  return fats > 0 && questions < 2;
}

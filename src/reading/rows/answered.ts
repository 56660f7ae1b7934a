/**
 * "Superfat?" and, on the next line, "6"; "water?", "290": what one of a chat asks and another answers. The figure is of
 * what was asked, whoever the line names as the one who answers.
 */

import { nought } from '../recipe/no-superfat.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isRole,
  isStop,
  isWord,
  massOf,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Item } from './items.ts';
import { type Amount, isAmount, isThing, type Thing } from './kinds.ts';

/** The items, with each thing that is asked for beside the figure that answers; water that none answers takes none. */
export function answered(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let out: Item[] | null = null;
  for (let k = 0; k < items.length; k++) {
    const item = items[k];
    if (!item) break;
    const at = isThing(item) && isAsked(tokens, item) ? answerAt(tokens, item) : -1;
    let next = k + 1;
    while (at >= 0 && (items[next]?.from ?? at) < at) next++;
    const answer = at < 0 || !isThing(item) ? null : answerOf(item, at, items[next], tokens);
    if (answer) {
      out ??= items.slice(0, k);
      const end = isThing(item) ? behindBatch(tokens, item) : 0;
      for (const one of items.slice(k + 1, next)) if (one.from < end) out.push(one);
      out.push({ ...item, from: at, to: at }, answer);
      k = answer === items[next] ? next : next - 1;
    } else if (isThing(item) && item.named.meaning.kind === 'water' && isOpen(tokens, item)) out ??= items.slice(0, k);
    else out?.push(item);
  }
  return out ?? items;
}

/** "500 g olive, 64 g lye, water?" at the end of its line: no figure of another row is meant for it. */
function isOpen(tokens: readonly Token[], thing: Thing): boolean {
  const [owner, last] = [tokens[thing.from - 3], tokens[thing.from - 2]];
  const isRow = last?.t === 'name' || (last?.t === 'quantity' && owner?.t === 'name');
  const isLast = isMark(tokens[thing.to], '?') && tokens[thing.to + 1]?.t !== 'quantity';
  return isRow && isLast && isMark(tokens[thing.from - 1], ',') && isAsked(tokens, thing);
}

/** The figure that answers, which is none where somebody says "none". */
function answerOf(thing: Thing, at: number, figure: Item | undefined, tokens: readonly Token[]): Amount | null {
  const before = tokens[thing.from - 1];
  // "200 g olive?" has its weight
  if ((before?.t === 'quantity' && !endsDotted(before)) || isWord(before, 'of')) return null;
  if (tokens[at]?.t !== 'quantity') return thing.named.meaning.id === 'superfat' ? nought(at) : null;
  return isAmount(figure) && figure.from === at && mayAnswer(thing, figure) ? figure : null;
}

/** "Superfat?", "what superfat", "sf" alone in its line. */
function isAsked(tokens: readonly Token[], thing: Thing): boolean {
  const { from, to: behind, named } = thing;
  const { meaning } = named;
  const of = behindBatch(tokens, thing);
  let to = of;
  while (to - behind < mostBehind && trailing.has(wordAt(tokens, to))) to++;
  const isQuestion =
    isMark(tokens[to], '?') ||
    (meaning.id === 'superfat' && isMark(tokens[to], ':-–') && isRole(tokens[to + 1], 'scale-to'));
  if (!isQuestion && to > behind && of === behind) return false;
  if (!isQuestion && tokens[to]?.t !== 'line') return false;
  let begin = from;
  while (begin > 0 && tokens[begin - 1]?.t !== 'line' && from - begin <= mostAsking) begin--;
  const before = tokens.slice(Math.max(begin, sinceStop(tokens, begin, from)), from);
  if (before.some((token) => token.t === 'name' || token.t === 'quantity' || isSaying(token))) return false;
  return (
    isQuestion ||
    meaning.id === 'superfat' ||
    before.some((token) => token.t === 'word' && /^(?:what|how|which)/.test(token.text))
  );
}

/** Behind the sentence that ends last before it. */
const sinceStop = (tokens: readonly Token[], from: number, to: number): number =>
  from + 1 + tokens.slice(from, to).findLastIndex((token) => isStop(token) || endsDotted(token) || isMark(token, ',]'));

/**
 * "How much lye did you use in the 1 kg olive one?": behind the batch that is asked about, or `from` where none is.
 * What lye some fats need is asked of us, where no word says that it is of a batch.
 */
function behindBatch(tokens: readonly Token[], { to: from, named: { meaning } }: Thing): number {
  let k = from;
  while (trailing.has(wordAt(tokens, k)) || ofBatch.has(wordAt(tokens, k))) k++;
  const list = k;
  while (massOf(tokens[k]) || isIngredient(tokens[k]) || isMark(tokens[k], ',+&') || ofBatch.has(wordAt(tokens, k)))
    k++;
  const isList = isAny(tokens, list, k, massOf) && isAny(tokens, list, k, isIngredient);
  if (batch.test(spoken(tokens[k]))) k++;
  else if (meaning.kind === 'alkali') return from;
  return isList && (isMark(tokens[k], '?') || tokens[k]?.t === 'line') ? k : from;
}
const ofBatch: ReadonlySet<string> = new Set('in for with on to the your ur that this of and'.split(' '));
const batch = /^(?:one|bars?|soap|batch|recipe|loaf)$/;

/** Words of a question before what it asks for, at the most. */
const mostAsking = 8;
/** "How much olive in the end?" */
const mostBehind = 4;
const trailing: ReadonlySet<string> = new Set(
  'in the end did you u ya he she they use used put add added went go goes is was there then now take took at all all told'.split(
    ' ',
  ),
);
const isSaying = (token: Token): boolean => token.t === 'word' && token.sort !== 'filler' && !asking.has(token.text);
const asking: ReadonlySet<string> = new Set(
  'what whats how much many which and ok whats your ur any so but then did do you keep use put take add'.split(' '),
);

/**
 * The figure that the line behind a question says and nothing else, but for a stamp and a name; one of a superfat may
 * stand in the line itself ("superfat? make it 6"). -1 where there is none.
 */
function answerAt(tokens: readonly Token[], thing: Thing): number {
  const { meaning } = thing.named;
  let k = behindBatch(tokens, thing);
  while (tokens[k]?.t === 'sign' || trailing.has(wordAt(tokens, k))) k++;
  const isBeneath = tokens[k]?.t === 'line';
  if (isBeneath) k++;
  else if (meaning.id !== 'superfat') return -1;
  while (tokens[k]?.t === 'aside' || isMark(tokens[k], '[],-•')) k++;
  for (let n = 0; n < mostWords && (isTalk(tokens[k]) || (n > 0 && isMark(tokens[k], ','))); n++) k++;
  if (tokens[k]?.t !== 'quantity') return nothing.has(spoken(tokens[k - 1])) && isStop(tokens[k]) ? k - 1 : -1;
  let end = k + 1;
  const isEnd = (token: Token | undefined): boolean =>
    token?.t === 'line' || (!isBeneath && (isMark(token, ',;.?!') || endsDotted(token)));
  if (isBeneath || !endsDotted(tokens[k])) while (end < tokens.length && !isEnd(tokens[end])) end++;
  let last = k + 1;
  while (last < end && (tokens[last]?.t === 'sign' || isTalk(tokens[last]))) last++;
  const isRemark = isBeneath && (isMark(tokens[k + 1], ',') || endsDotted(tokens[k]));
  // "112 g, with 240 g water"
  const isRow = isRemark && massOf(tokens[last]) && isIngredient(tokens[last + 1]) && last + 2 === end;
  if (last === end || isRow || (isRemark && !isAny(tokens, last, end, mayChange))) return k;
  return isBeneath && (isRemark || joins.has(wordAt(tokens, k + 1))) && isListed(tokens, k + 1, end) ? k : -1;
}
const joins: ReadonlySet<string> = new Set('in with and plus dissolved into to'.split(' '));
const mostJoining = 6;

/** "112 g in 260 g of water", "50 g. Rest is 400 g olive": what comes next has a figure of its own. */
function isListed(tokens: readonly Token[], from: number, end: number): boolean {
  let at = from;
  while (at < end && tokens[at]?.t !== 'quantity' && !isIngredient(tokens[at])) at++;
  if (at === end || at - from > mostJoining) return false;
  if (tokens.slice(from, at).some((token) => isMark(token, '?') || lessening.test(spoken(token)))) return false;
  if (isIngredient(tokens[at])) return tokens[isMark(tokens[at + 1], ':=') ? at + 2 : at + 1]?.t === 'quantity';
  return isIngredient(tokens[isWord(tokens[at + 1], 'of') ? at + 2 : at + 1]);
}

/** "1.6 kg, I finished the can": nothing in the rest of the line is of the recipe, or less than was said. */
const mayChange = (token: Token): boolean =>
  token.t === 'quantity' ||
  isIngredient(token) ||
  (token.t === 'word' && (token.sort === 'unknown' || lessening.test(token.text)));
const lessening =
  /^(?:half|third|quarter|or|not|no|but|less|more|minus|except|without|spil\w*|lost|over|short|instead|maybe|perhaps|think|never|until|then|replaced|swapped)$/;

/** "Make it 6", "290 i think". */
const isTalk = (token: Token | undefined): boolean =>
  isRole(token, 'scale-to') || (token?.t === 'word' && (token.sort === 'filler' || talk.has(token.text)));
const talk: ReadonlySet<string> = new Set(
  'yes yeah yep ye but only well make it its is say about around like roughly prob probably maybe at go for with use used i id think lets do want just um er erm hm ok pls please thanks thx ta then same as usual mine none nil nothing'.split(
    ' ',
  ),
);
const nothing: ReadonlySet<string> = new Set(['none', 'nil', 'nothing']);
const mostWords = 4;

const mostSuperfat = 25;

function mayAnswer({ named: { meaning } }: Thing, { quantity: { dim, value } }: Amount): boolean {
  if (meaning.id === 'superfat') return dim === 'percent' || (dim === 'bare' && value <= mostSuperfat);
  return weighable.has(meaning.kind) && (dim === 'mass' || dim === 'volume' || dim === 'bare');
}
const weighable: ReadonlySet<string> = new Set([
  'fat',
  'unheld',
  'ambiguous',
  'water',
  'liquid',
  'alkali',
  'additive',
  'scent',
]);

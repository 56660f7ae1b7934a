/**
 * What others say of the lye, and what the writer took, clause by clause: "hubby says 150 g lye, a friend says 130 g, I took
 * the middle, 140 g"; "my neighbour says it needs 20 g more lye … I didn't add any", where the list stays as it is.
 */

import { type PutRight, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import type { Cut } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { endsDotted, isIngredient, isMark, isStop, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, type Name, weightAt } from './tale.ts';

const people = `(?:${relations.replaceAll(' ', '|')}|guy|lady|man|woman|somebody|someone|forum|he|she|they|people)s?`;
const saying =
  '(?:says?|said|reckons?|reckoned|thinks?|thought|told|tells|would (?:use|take|go|do|put)|d (?:use|take|go)|suggest(?:s|ed)|recommend(?:s|ed)|wrote|insists?|insisted|swears|claims?|claimed|advise[sd])';
const byOther = new RegExp(
  `\\b${people}(?: (?!i |we )[a-z]+){0,4}? ${saying}\\b|^(?:the other|another)(?: (?:one|said|says|reckons|thinks))?(?= #)`,
);
const byMe =
  /\b(?:i|we|ive|weve)(?: (?:have|had|just|only|actually|then|finally|now|really|myself))* (?:took|used|went (?:with|for)|put in|did|weighed|poured|settled (?:on|for)|stayed (?:at|with)|chose)\b|^(?:took|used|went with) /;
const open =
  /\?|\b(?:if|next|last|should|maybe|perhaps|usually|normally|not|never|more|less|extra|another|solution|water|per|for each)\b/;
const more = /\b(?:more|less|extra|fewer)\b/;
const refused =
  /\b(?:i|we) (?:(?:have|had|just|still|simply) )*(?:didnt|did not|havent|have not|ignored|left (?:it|everything|all|the (?:lye|list))|kept|stayed|stuck|wouldnt|wont|dont)\b/;
const followed =
  /\b(?:i|we)(?: (?:have|then|just|also|did))* (?:added (?:it|them|that|those)|did(?: (?:so|that|it))?$|put (?:it|them|that|those) in|followed|listened|obeyed|took (?:it|that|them) (?:off|out))/;
/** Of what others say the writer took so much, at the least and at the most. */
const [leastOf, mostOf] = [0.65, 1.6];
const soon = 4;

interface Clause {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly figures: readonly number[];
  /** Its sentence begins with it. */
  readonly begins: boolean;
}

const joins = /^(?:and|but|so|while|then)$/;

/** A post's clauses, each with its words. */
function clausesOf(tokens: readonly Token[]): readonly Clause[] {
  const clauses: Clause[] = [];
  let [from, begins] = [0, true];
  const end = (to: number, stops: boolean): void => {
    const own = tokens.slice(from, to);
    const text = own
      .map((one) => {
        if (one.t === 'quantity') return isPlain(one) ? '#' : '…';
        return isIngredient(one) ? '@' : spoken(one) || (one.t === 'sign' ? one.text : '');
      })
      .filter((word) => word !== '')
      .join(' ');
    const figures = own.flatMap((one, k) => (isPlain(one) ? [from + k] : []));
    if (to > from) clauses.push({ from, to, text, figures, begins });
    begins = stops || (begins && to === from);
  };
  for (let k = 0; k <= tokens.length; k++) {
    const token = tokens[k];
    if (isStop(token) || isMark(token, ',()–—:')) {
      const asks = isMark(token, '?') ? 1 : 0;
      end(k + asks, isStop(token));
      from = k + 1;
    } else if (joins.test(spoken(token))) {
      end(k, false);
      from = k;
    } else if (endsDotted(token)) {
      end(k + 1, true);
      from = k + 1;
    }
  }
  return clauses;
}

const isAlkali = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';

/** The name beside a figure: "130 g of lye", "lye 130 g"; -1 for none. */
function nameBeside(tokens: readonly Token[], k: number): number {
  const at = spoken(tokens[k + 1]) === 'of' ? k + 2 : k + 1;
  if (!endsDotted(tokens[k]) && isIngredient(tokens[at])) return at;
  return isIngredient(tokens[k - 1]) ? k - 1 : -1;
}

/** A weight that is of the alkali, or of nothing by its name. */
const mayBeLye = (tokens: readonly Token[], k: number): boolean => {
  const name = tokens[nameBeside(tokens, k)];
  return name === undefined || isAlkali(name);
};

interface Sayings {
  /** Figures that others say, and the writer's own. */
  readonly others: readonly number[];
  readonly own: readonly number[];
  readonly clauses: readonly Clause[];
}

/** Who says which figure; a clause without a verb goes on with what the one before began. */
function sayingsIn(tokens: readonly Token[], clauses: readonly Clause[]): Sayings {
  const [others, own, told]: [number[], number[], Clause[]] = [[], [], []];
  let by: 'other' | 'me' | null = null;
  let isOpen = false;
  for (const clause of clauses) {
    if (clause.begins) [by, isOpen] = [null, false];
    const now = byOther.test(clause.text) ? 'other' : byMe.test(clause.text) ? 'me' : null;
    if (now === null && by === 'me' && own.length > 0) by = null;
    if (now !== null) [by, isOpen] = [now, false];
    isOpen ||= open.test(clause.text.replace(/^another/, ''));
    const [figure, ...rest] = clause.figures;
    if (by === null || isOpen || figure === undefined || rest.length > 0 || !mayBeLye(tokens, figure)) continue;
    (by === 'other' ? others : own).push(figure);
    told.push(clause);
  }
  return { others, own, clauses: told };
}

/** The lye that others say, and what the writer took of it. */
function takenBeside(tokens: readonly Token[], { others, own, clauses }: Sayings): Heard | null {
  const [mine = -1, ...more] = own;
  const said = [...others, mine];
  const at = said.map((k) => nameBeside(tokens, k)).find((k) => k >= 0) ?? -1;
  const name = tokens[at];
  if (others.length === 0 || mine < 0 || more.length > 0 || !isIngredient(name)) return null;
  const isRow = (k: number): boolean =>
    isAlkali(tokens[k]) && [k - 1, k + 1, k - 2].some((figure) => isPlain(tokens[figure]) && !said.includes(figure));
  if (tokens.some((_, k) => isRow(k) && !clauses.some(({ from, to }) => k >= from && k < to))) return null;
  const share = (k: number): number => weightAt(tokens, mine, k) / weightAt(tokens, k, k);
  if (!others.every((k) => share(k) >= leastOf && share(k) <= mostOf)) return null;
  const out = [...tokens];
  for (const k of others) {
    const other = nameBeside(tokens, k);
    if (other >= 0) out[other] = asFiller(tokens[other] as Token);
    out[k] = setApart(tokens[k] as Figure, 'what others say');
  }
  const mark = tokens[mine - 1];
  if (nameBeside(tokens, mine) < 0) {
    if (!mark || mark.t === 'quantity' || mark.t === 'line') return null;
    out[mine - 1] = { ...name, from: mark.from, to: mark.to };
  }
  const { quantity } = tokens[mine] as Figure;
  const note = `I took ${written(quantity)} of ${name.text}, as the post says, not what others say.`;
  const gone = others.map((k) => (tokens[k] as Figure).quantity);
  const told = clauses.map(
    ({ from, to }, k): PutRight => ({ text: note, gone: k === 0 ? gone : [], from, to, settles: true }),
  );
  return { tokens: out, told };
}

/** "20 g more lye", which was turned down; where it was done, it is asked. */
function moreOrLess(cut: Cut, clauses: readonly Clause[]): Heard | null {
  const { tokens, prims } = cut;
  for (const [n, clause] of clauses.entries()) {
    const [figure, ...rest] = clause.figures;
    if (figure === undefined || rest.length > 0 || !more.test(clause.text) || !byOther.test(clause.text)) continue;
    const at = Array.from({ length: clause.to - figure }, (_, k) => figure + k).find((k) => isAlkali(tokens[k]));
    if (at === undefined) continue;
    const next = clauses.slice(n + 1, n + 1 + soon);
    const deed = next.find(({ text }) => refused.test(text) || followed.test(text));
    if (!deed || deed.figures.length > 0 || deed.text.includes('?')) continue;
    const [first, last] = [tokens[clause.from], tokens[deed.to - 1]];
    if (!refused.test(deed.text))
      return { tokens, told: [], unheard: rawText(prims, first?.from ?? 0, last?.to ?? 0).trim() };
    const out = [...tokens];
    out[at] = asFiller(tokens[at] as Name);
    out[figure] = setApart(tokens[figure] as Figure, 'what others say');
    const text = 'I left out what somebody else would have had more or less of, as the post turns it down.';
    const gone = [(tokens[figure] as Figure).quantity];
    return { tokens: out, told: [{ text, gone, from: clause.from, to: deed.to, settles: true }] };
  }
  return null;
}

/** Words of which one stands where somebody else says something. */
const cues: ReadonlySet<string> = new Set(
  'says say said reckons reckoned thinks think thought told tells would d suggests suggested recommends recommended wrote insists insisted swears claims claimed advised advises'.split(
    ' ',
  ),
);

/** The list with the lye that the writer took. */
export function saysLye(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const clauses = clausesOf(tokens);
  return takenBeside(tokens, sayingsIn(tokens, clauses)) ?? moreOrLess(cut, clauses) ?? none;
}

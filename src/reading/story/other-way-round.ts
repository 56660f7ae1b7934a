/**
 * "PS just seen I mixed up the first two, it's the other way round, 500 lard and 300 coconut", "lard and coconut are the
 * wrong way round": two rows of the list, each with the weight of the other.
 */

import { alike, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isAny, isIngredient, type Span, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowOf, rowsBefore, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'way mixed muddled swapped switched reversed transposed confused round'.split(' '),
);

const the = '(?:(?:the|my|those|these|both|of|for) )*';
const figures = '(?:figures|rows|amounts|weights|numbers|lines|entries|oils|fats|ones|values)';
const rows = (n: number): string =>
  `(?:${the}(?:${figures} (?:of|for) ${the})?(?:(?<p${n}>first|last|top|bottom|upper|lower) (?:two|#|…)(?: ${figures})?|(?<a${n}>@) (?:and|&|[/]|,|with) ${the}(?<b${n}>@)(?: ${figures})?))`;
const way = '(?:the )?(?:other|wrong) way (?:round|around|about)';
const mixed =
  '(?:mixed up|muddled(?: up)?|swapped(?: over| round)?|switched(?: over| round)?|reversed|transposed|confused|interchanged)';
const being =
  '(?: (?:i|we|had|wrote|typed|listed|down|are|were|is|was|got|get|have|has|been|should|be|to|must|go|belong|need|all|just|really|[,:]|-))*';
const makePatterns = (): readonly { readonly tells: RegExp; readonly isSlip: boolean }[] => [
  { tells: new RegExp(`(?<![a-z])${rows(1)}${being} (?:${way}|vice versa)(?! from)\\b`, 'd'), isSlip: false },
  {
    tells: new RegExp(
      `\\b(?:got|had|have|put|wrote|typed|listed|gave) ${rows(1)}(?: down| in| up)? (?:${way}|${mixed})\\b`,
      'd',
    ),
    isSlip: false,
  },
  { tells: new RegExp(`\\b${mixed} ${rows(1)}`, 'd'), isSlip: true },
  {
    tells: new RegExp(`\\b(?:mixed|muddled|swapped|switched) ${rows(1)} (?:up|round|over|around)\\b`, 'd'),
    isSlip: true,
  },
  {
    tells: new RegExp(`(?<![a-z])${rows(1)}${being} (?:mixed up|muddled|swapped|switched|reversed|transposed)\\b`, 'd'),
    isSlip: true,
  },
];
let made: ReturnType<typeof makePatterns> | null = null;

/** What was written was wrong. */
const slip =
  /\b(?:ps|edit|edited|correction|oops|whoops|sorry|argh|typo|mistake|(?:just|only now|now) (?:seen|saw|noticed|spotted|see|realise|realised|realize|realized)|(?:other|wrong) way (?:round|around|about)|should (?:be|read|have been)|mistyped|i meant|above|when (?:typing|writing)|in (?:the|my) (?:list|post))\b/;
/** Nobody has done it, nobody is sure, or it is so in another batch. */
const open =
  /\?|\b(?:if|would|could|might|may|maybe|perhaps|probably|think|not sure|unsure|or|next|last (?:time|batch|week|month|year)|usually|normally|always|never|not|she|he|they|her|his|theirs|sister|mother|people|recipe has|book|instead of|rather than|poured|pour|stirred|melted|together|bowl|pot|pan|jug|jugs|bottles?|tubs?|jars?|labels?|lids?)\b/;

/** The two rows; null where nobody knows which. */
function rowsOf(
  tokens: readonly Token[],
  sentence: Sentence,
  match: RegExpExecArray,
): readonly [Weighed, Weighed] | null {
  const { groups, indices } = match;
  const place = groups?.['p1'];
  if (place === undefined) {
    const [a, b] = ['a1', 'b1'].map((group) => {
      const at = indices?.groups?.[group]?.[0];
      return at === undefined ? null : rowOf(tokens, tokens[sentence.tokenAt(at)], sentence.from);
    });
    return a && b && a.figure !== b.figure ? [a, b] : null;
  }
  const all = rowsBefore(tokens, sentence.from);
  const isFirst = /^(?:first|top|upper)$/.test(place);
  const [one, other] = isFirst ? all.slice(0, 2) : all.slice(-2);
  if (!one || !other) return null;
  // something else stands at that end of the list
  const [from, to] = isFirst ? [0, Math.max(other.at, other.figure)] : [Math.min(one.at, one.figure), sentence.from];
  const isElse = isAny(
    tokens,
    from,
    to,
    (token, k) =>
      token.t === 'quantity' &&
      k !== one.figure &&
      k !== other.figure &&
      [k - 1, k + 1].some((at) => isIngredient(tokens[at])),
  );
  return isElse ? null : [one, other];
}

/** The weights as they are told once more, right behind: those of the two rows, each at the other's name. */
function saidAgain(
  tokens: readonly Token[],
  [one, other]: readonly [Weighed, Weighed],
  from: number,
  to: number,
): readonly number[] | null {
  const found: number[] = [];
  for (let k = from; k < to; k++) {
    if (!isPlain(tokens[k])) continue;
    const near = nameBeside(tokens, k, from);
    const name = tokens[near];
    const row = isIngredient(name) ? [one, other].find(({ id }) => id === thingOf(name)) : undefined;
    const told = row === one ? other : one;
    if (!row) continue;
    if (!isSum(weightAt(tokens, told.figure, told.figure), weightAt(tokens, k, told.figure))) return null;
    found.push(k, near);
  }
  return found;
}

/** "500 g lard", "lard 500", "lard is the 500": where the name of a figure stands; -1 where none does. */
function nameBeside(tokens: readonly Token[], k: number, from: number): number {
  const behind = spoken(tokens[k + 1]) === 'of' ? k + 2 : k + 1;
  if (!endsDotted(tokens[k]) && isIngredient(tokens[behind])) return behind;
  let at = k - 1;
  while (at >= from && /^(?:is|was|the|should|be|to|has|gets|are|were)$/.test(spoken(tokens[at]))) at--;
  return at >= from && isIngredient(tokens[at]) ? at : -1;
}

/** The list with both weights at the other name; `unheard` where nobody knows which two. */
export function otherWayRound(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (!isAny(tokens, sentence.from, sentence.to, (token) => cues.has(spoken(token)))) continue;
    made ??= makePatterns();
    const around = sentences
      .slice(Math.max(0, k - 1), k + 1)
      .map(({ text }) => text)
      .join(' ');
    for (const { tells, isSlip } of made) {
      const match = tells.exec(sentence.text);
      if (!match || (isSlip && !slip.test(around)) || open.test(sentence.text)) continue;
      const pair = rowsOf(tokens, sentence, match);
      const end = sentence.tokenAt(match.index + match[0].length - 1) + 1;
      const next = sentences[k + 1];
      const until = next && next.paragraph === sentence.paragraph && next.figures > 1 ? next.to : sentence.to;
      const again = pair ? saidAgain(tokens, pair, end, until) : null;
      if (!pair || !again) {
        if (match.groups?.['p1'] === undefined) continue;
        const [first, last] = [tokens[sentence.from], tokens[sentence.to - 1]];
        return { ...none, unheard: rawText(prims, first?.from ?? 0, last?.to ?? 0).trim() };
      }
      const isMore = isAny(tokens, end, sentence.to, (one, n) => one.t === 'quantity' && !again.includes(n));
      const from = sentence.tokenAt(match.index);
      return swapped(
        cut,
        pair,
        again,
        isMore ? { from, to: end } : { from: sentence.from, to: again.length > 0 ? until : sentence.to },
      );
    }
  }
  return none;
}

const isTwo = (token: Token): boolean =>
  token.t === 'quantity' && token.quantity.dim === 'bare' && token.quantity.value === 2;

function swapped(
  { tokens }: Cut,
  [one, other]: readonly [Weighed, Weighed],
  again: readonly number[],
  { from, to }: Span,
): ReturnType<typeof otherWayRound> {
  const out = [...tokens];
  const [a, b] = [tokens[one.figure] as Figure, tokens[other.figure] as Figure];
  const [first, second] = [alike(a.quantity, b.quantity), alike(b.quantity, a.quantity)];
  out[one.figure] = { ...a, quantity: { ...second, numbers: a.quantity.numbers } };
  out[other.figure] = { ...b, quantity: { ...first, numbers: b.quantity.numbers } };
  const span = tokens.flatMap((token, k) => (k >= from && k < to && (token.t === 'name' || isTwo(token)) ? [k] : []));
  for (const k of [...again, ...span]) {
    const token = out[k];
    if (token?.t === 'quantity') out[k] = asAside(token, 'said again');
    else if (token?.t === 'name') out[k] = asFiller(token);
  }
  const [name, named] = [tokens[one.at], tokens[other.at]].map((token) => (token?.t === 'name' ? token.text : ''));
  const text = `I took ${written(second)} of ${name} and ${written(first)} of ${named}, the other way round than listed, as the post says.`;
  return {
    tokens: out,
    told: [{ text, gone: [], from, to, settles: true }],
    unheard: null,
  };
}

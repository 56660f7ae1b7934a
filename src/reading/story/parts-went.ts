/**
 * Where the parts of a fat went that there was more of: "it gave 1.4 kg tallow. 1 kg of it I use now, the other 400 g are
 * in the freezer", "1.3 kg of duck fat. 250 g went to the potatoes, 150 g I gave to mum, the rest all went into the pot".
 */

import { withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { endsDotted, isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

/** What ties a part to the whole; `F` the fat, `#` a weight. */
const tie =
  /\b(?:of|from|out of) (?:it|that|this|them|which|(?:the|this|that|my|these|those) F)\b|\b(?:other|remaining|rest|remainder)\b/;
const rest = /\b(?:the|all|what|my) (?:the )?(?:rest|remainder|remaining|others?|else)\b(?! #)|\beverything else\b/;
/** Where a part is from says nothing of where it is. */
const origin = /\b(?:from|out of|by) (?!(?:it|that|this|them|which|(?:the|this|that|my|these|those) F)\b)/;
/** It is not in this pot. */
const away = new RegExp(
  `(?<!\\b(?:from|out of) (?:the |my )?)\\b(?:freezer|fridge|cupboard|pantry|larder|cellar|attic|shed|shelf|roast(?:ing)?|potato(?:es)?|fry(?:ing|er)?|kitchen|birds?|chickens|dogs?|candles?|balms?|salve|lotion|bad|rancid|mou?ldy|threw|thrown|binn?(?:ed)?|spoil(?:ed|t)|lost|ate|eaten|gave|given|gift|sold|saved|kept|keep(?:ing)?|froze|frozen|freez(?:e|ing)|stored?|storing|next|another|later|tomorrow|cooking|baking|other (?:soap|batch|pot|things?)|put (?:away|aside|by)|set aside|(?:for|to) (?:(?:my|the|a|our) )*(?:${relations.trim().replace(/ /g, '|')})|(?:${relations.trim().replace(/ /g, '|')}) (?:got|gets|has|had|took|takes|wanted))\\b`,
);
const into =
  /\b(?:pot|soap|batch|recipe|loaf|into (?:it|here|this)|in (?:here|this)|use|used|using|took|take|taken|taking|weighed|melted|went in|goes in|poured in|put in)\b/;
const pot = /\b(?:pot|soap|batch|recipe|loaf|in (?:here|this))\b/;
/** What is left open, is of another time, or comes after the cook. */
const otherwise =
  /\?|\b(?:if|would|could|should|might|maybe|perhaps|about half|usually|normally|always|last (?:time|batch|week|month|year)|after|afterwards|cook|trace|superfat|planned|meant|wanted|was going|instead|swirl)\b/;
/** What it was made of stands before it. */
const giving = /\b(?:render\w*|gave|gives?|yield\w*|became|become|made|turned|got|left|ended|came|down)\b/;
const most = 4;

/** "Half of it I used". */
const fraction =
  /\b(?<part>half|(?:a |one )?(?:third|quarter)|two thirds|three quarters) of (?:it|that|this|them|(?:the|this|that|my) F)\b/;
const shares: Readonly<Record<string, number>> = {
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  'two thirds': 2 / 3,
  'three quarters': 3 / 4,
};

interface Part {
  /** Where it stands; -1 where it is told as a share of the whole. */
  readonly figure: number;
  readonly share: number;
  readonly is: 'in' | 'away' | 'open';
}

interface Parts {
  readonly parts: readonly Part[];
  readonly rest: 'in' | 'away' | null;
  readonly isTied: boolean;
  readonly to: number;
}

const isUnclear = (text: string): boolean =>
  away.test(text) && pot.test(text) && !/\b(?:next|another|other)\b/.test(text);
const placeOf = (text: string): 'in' | 'away' | 'open' => (away.test(text) ? 'away' : into.test(text) ? 'in' : 'open');

/** What is told of parts behind a row, up to the next weight of something else; null where one of them is in two places. */
function partsBehind(tokens: readonly Token[], sentences: readonly Sentence[], row: Weighed): Parts | null {
  const k = sentences.findIndex(({ from, to }) => row.figure >= from && row.figure < to);
  const story = joinedAt(sentences, k, most);
  const text = story.text.replace(/[@#]/g, (sign, place: number) => {
    const token = tokens[story.tokenAt(place)];
    if (sign === '#') return isPlain(token) ? '#' : '…';
    return isIngredient(token) ? (thingOf(token) === row.id ? 'F' : '@') : '&';
  });
  const first = sentences[k];
  if (!first) return null;
  const begin = first.placeOf(Math.max(row.at, row.figure)) + 1;
  const parts: Part[] = [];
  let left: Parts['rest'] = null;
  let isTied = false;
  let to = 0;
  for (const { 0: clause, index } of text.slice(begin).matchAll(/(?:(?! (?:and|but|while) |[,;.!?:()–—-] ).)+/g)) {
    const place = begin + index;
    const own = clause.replace(/(?:# (?:of )?@|@ (?::|=)? ?#).*/, '');
    const isNext = own !== clause;
    if (otherwise.test(own)) {
      if (parts.length > 0 && !own.includes('#')) break;
      return null;
    }
    const figures = [...own.matchAll(/#/g)].map((one) => story.tokenAt(place + one.index));
    const [figure, ...more] = figures;
    const share = shares[fraction.exec(own)?.groups?.['part']?.replace(/^(?:a|one) /, '') ?? ''] ?? 0;
    const isPart = figure !== undefined || share > 0;
    if (more.length > 0 || (isPart && origin.test(own)) || ((isPart || rest.test(own)) && isUnclear(own))) return null;
    const said = placeOf(own);
    if (isPart) parts.push({ figure: figure ?? -1, share, is: said });
    else if (rest.test(own) && said !== 'open') left = said;
    if (isPart || rest.test(own)) {
      isTied ||= tie.test(own);
      to = story.tokenAt(place + own.trimEnd().length - 1) + 1;
    }
    if (isNext || left !== null || /@/.test(own)) break;
  }
  return { parts, rest: left, isTied, to };
}

/** What of it is in the pot; null where the words leave that open. */
function inPotOf(
  tokens: readonly Token[],
  { figure }: Weighed,
  { parts, rest: left }: Parts,
  isGot: boolean,
): number | null {
  const whole = weightAt(tokens, figure, figure);
  const weigh = (is: (part: Part) => boolean): number =>
    parts
      .filter(is)
      .reduce((sum, part) => sum + (part.figure < 0 ? part.share * whole : weightAt(tokens, part.figure, figure)), 0);
  const [inside, outside] = [weigh(({ is }) => is === 'in'), weigh(({ is }) => is === 'away')];
  const open = weigh(({ is }) => is === 'open');
  const all = inside + outside + open;
  if (!(all <= whole * 1.001) || parts.length === 0) return null;
  if (left === 'in') return inside + open === 0 && outside < whole ? whole - outside : null;
  if (left === 'away') return open === 0 && inside > 0 && inside < whole ? inside : null;
  if (isGot && parts.length === 1 && parts[0]?.is === 'in' && inside < whole) return inside;
  // of a sum, the one that nobody put elsewhere is in the pot
  const isWhole = isSum(whole, all) && outside > 0 && inside + open > 0;
  return isWhole && parts.filter(({ is }) => is !== 'away').length === 1 ? inside + open : null;
}

/** The tokens with what is in the pot in the place of the whole. */
export function partsWent(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => isFat(token))) return none;
  const sentences = sentencesOf(cut);
  if (!sentences.some(({ text }) => away.test(text) || giving.test(text))) return none;
  const rows = [
    ...rowsBefore(tokens, tokens.length).filter(({ at }) => isFat(tokens[at])),
    ...tokens.flatMap((token, at) => rowAt(tokens, token, at)),
  ];
  for (const row of rows) {
    const found = partsBehind(tokens, sentences, row);
    if (!found?.isTied) continue;
    const told = sentences.find(({ from, to }) => row.figure >= from && row.figure < to);
    const before = told?.from ?? 0;
    const value = inPotOf(tokens, row, found, giving.test(told?.text.slice(0, told.placeOf(row.figure)) ?? ''));
    if (value === null) continue;
    const own = new Set([row.figure, ...found.parts.map(({ figure }) => figure)]);
    const raw = rawOf(tokens, sentences, row, before);
    // weighed in a list, too
    if (rows.some(({ id, figure }) => id === row.id && !own.has(figure) && !raw.includes(figure))) continue;
    const out = [...tokens];
    for (let k = before; k < found.to; k++) {
      const token = out[k];
      if (!token || k === row.at || k === row.figure) continue;
      if (own.has(k) || raw.includes(k)) {
        const figure = token as Figure;
        out[k] = asAside(figure, 'a part of what was said');
      } else if ((k < row.at && raw.length === 0) || (k > row.at && k < row.figure)) continue;
      else if (token.t === 'word' || token.t === 'name') out[k] = asFiller(token);
    }
    const [weight, name] = [out[row.figure] as Figure, out[row.at]];
    const now = withValue(weight.quantity, value);
    out[row.figure] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
    const text = `I took ${written(now)} of ${name?.t === 'name' ? name.text : ''} of the ${written(weight.quantity)}, as the post tells where the rest is.`;
    return { tokens: out, told: [{ text, gone: [], from: before, to: found.to, settles: true }] };
  }
  return none;
}

/** "1.9 kg of clean tallow". */
function rowAt(tokens: readonly Token[], token: Token, at: number): readonly Weighed[] {
  const isIts =
    isFat(token) && tokens[at - 1]?.t === 'word' && spoken(tokens[at - 2]) === 'of' && isPlain(tokens[at - 3]);
  return isIts && !owning.test(spoken(tokens[at - 1])) ? [{ at, figure: at - 3, id: thingOf(token) }] : [];
}
const owning = /^(?:the|my|our|this|that|of)$/;

/** Greater weights of the same sentence that it was made of: "3.2 kg of scraps became 1.9 kg of tallow". */
function rawOf(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  row: Weighed,
  before: number,
): readonly number[] {
  const sentence = sentences.find(({ from }) => from === before);
  const first = Math.min(row.at, row.figure);
  if (!sentence || !giving.test(sentence.text.slice(0, sentence.placeOf(first)))) return [];
  const raw: number[] = [];
  for (let k = before; k < first; k++) {
    if (!isPlain(tokens[k]) || endsDotted(tokens[k])) continue;
    const isOther = [k + 1, k + 2, k + 3].some((at) => {
      const one = tokens[at];
      return at < first && isIngredient(one) && thingOf(one) !== row.id;
    });
    if (!isOther && weightAt(tokens, k, row.figure) > weightAt(tokens, row.figure, row.figure)) raw.push(k);
  }
  return raw;
}

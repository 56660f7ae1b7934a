/**
 * The fats are told of the whole recipe, and the lye of the part that is made: "The full recipe is 900 g lard and 600 g
 * olive. Today I make only half of that. For the half I've weighed 106 g lye". The fats are that part of what is told;
 * where nobody says that the lye is of the part, it is asked about.
 */

import { withValue } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, rowsOfAlkali } from './tale.ts';

const fractions: Readonly<Record<string, number>> = {
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  double: 2,
  twice: 2,
  triple: 3,
};
const part = '(?<part>half|third|quarter|double|twice|triple|#)';
const lightly = '(?:only |just |exactly |now |about |a |one |the )*';
const whole =
  '(?:it|that|this|those|them|everything|all of (?:it|that)|the (?:[a-z]+ )?(?:recipe|amounts?|lot|list|batch|above|card|quantity|quantities|oils|fats)|my (?:[a-z]+ )?recipe)';
const ending = '(?= ?(?:$|[-,.;:!)]|(?:and|today|now|tonight|this time|because|as|since|so|for|in|but|with|here)\\b))';
const deed = new RegExp(
  `\\b(?:making|made|make|doing|did|do|cooking|cooked|cook|mixing|mixed|take|took|taking|want|need) ${lightly}${part}(?: of)? ${whole}${ending}|\\b(?:making|made|make|doing|did|do|want|need) ${lightly}${part} (?:a |the )?(?:batch|recipe|size|amount|quantity|lot)\\b`,
  'd',
);
const elsewhen =
  /\?|\b(?:if|could|would|should|might|may|usually|normally|always|often|sometimes|next|last (?:time|week|month|year)|yesterday|once|ago|later|other half|rest|remainder|water|colou?r|scent|batter|she|he|they|whether|or)\b/;
const isWholeTold = /\b(?:full|whole|complete|entire|original|usual|normal|recipe|standard|big|large|card|book)\b/;
const ofPart = (word: string): RegExp =>
  new RegExp(
    `\\b(?:for|of|to|in) (?:the|this|that|my|a) (?:${word}|smaller|small|part)\\b|\\b(?:${word}) (?:batch|size|recipe|amount|lot|one|loaf)\\b|\\b(?:weighed|are|is|already|lye) [^#?]{0,12}\\bas (?:a )?(?:${word})\\b|\\b(?:halved|doubled) (?:as well|too|already)\\b|\\bfor (?:that|this)(?= (?:i|we|the|ive)\\b)`,
  );

interface Deed {
  readonly sentence: Sentence;
  readonly factor: number;
  readonly word: string;
  /** The token of a part that is a figure; -1 for none. */
  readonly figure: number;
}

function deedIn(sentence: Sentence, tokens: readonly Token[]): Deed | null {
  if (elsewhen.test(sentence.text)) return null;
  const found = deed.exec(sentence.text);
  const place = found?.indices?.groups?.['part']?.[0];
  if (!found || place === undefined) return null;
  const at = sentence.tokenAt(place);
  const token = tokens[at];
  const isFigure = token?.t === 'quantity';
  const said = isFigure ? token.quantity.text.toLowerCase() : (found[1] ?? found.groups?.['part'] ?? '');
  const own = isFigure && token.quantity.inWords && token.quantity.dim === 'bare' ? token.quantity.value : 0;
  const factor = isFigure ? own : (fractions[said] ?? 0);
  const word = said.replace(/^an? /, '');
  return factor > 0 && factor <= 3 && factor !== 1 ? { sentence, factor, word, figure: isFigure ? at : -1 } : null;
}

const cues: ReadonlySet<string> = new Set([...Object.keys(fractions)]);

export function partMade(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  const says = (token: Token): boolean =>
    cues.has(spoken(token)) || (token.t === 'quantity' && token.quantity.inWords && token.quantity.value <= 3);
  if (!tokens.some(says)) return none;
  const sentences = sentencesOf(cut);
  const deeds = sentences.flatMap((sentence) =>
    isAny(tokens, sentence.from, sentence.to, says) ? (deedIn(sentence, tokens) ?? []) : [],
  );
  const [only, ...more] = deeds;
  if (!only || more.length > 0) return none;
  const { sentence, factor, word, figure } = only;
  const rows = rowsBefore(tokens, tokens.length);
  const fats = rows.filter(({ at }) => isFat(tokens[at]));
  const lye = rowsOfAlkali(tokens, tokens.length).concat(rows.filter(({ at }) => isAlkali(tokens[at])));
  const isBefore = fats.length > 0 && fats.every((row) => Math.max(row.at, row.figure) < sentence.from);
  if (!isBefore || lye.some((row) => Math.min(row.at, row.figure) < sentence.from)) return none;
  // "the lye for the half comes to 88 g"
  const isTold = sentences.some(
    ({ from: begin, to, figures }) => begin >= sentence.from && figures > 0 && isAny(tokens, begin, to, isAlkali),
  );
  if (lye.length === 0 && !isTold) return none;
  const head = sentences.filter(({ from }) => from < sentence.from);
  const rest = sentences.filter(({ from }) => from >= sentence.from);
  if (!head.some(({ text }) => isWholeTold.test(text))) return none;
  const from = tokens[sentence.from]?.from ?? 0;
  const isOfPart = ofPart(word);
  const behind = rest.map(({ text }, k) => (k === 0 ? text.replace(deed, '') : text));
  if (lye.length === 0 || !behind.some((text) => isOfPart.test(text)))
    return { ...none, unheard: rawText(prims, from, tokens[sentence.to - 1]?.to ?? from + 1).trim() };
  const out = [...tokens];
  const texts = fats.map(({ at, figure: k }) => {
    const weight = out[k] as Figure;
    const now = { ...withValue(weight.quantity, weight.quantity.value * factor), numbers: weight.quantity.numbers };
    out[k] = { ...weight, quantity: now };
    const name = out[at];
    return `${now.text} of ${name?.t === 'name' ? name.text : ''}`;
  });
  for (let k = sentence.from; k < sentence.to; k++) {
    const token = out[k];
    if (k === figure && isFigureToken(token)) out[k] = asAside(token, 'a part of what was said');
    else if (token && cues.has(spoken(token))) out[k] = asFiller(token);
  }
  return {
    tokens: out,
    told: [
      {
        text: `I took ${texts.join(', ')}: the part of the recipe that is made, as the post says.`,
        gone: [],
        from: Math.min(...fats.map((row) => Math.min(row.at, row.figure))),
        to: sentence.to,
        settles: true,
      },
    ],
    unheard: null,
  };
}

const isFigureToken = (token: Token | undefined): token is Figure => token?.t === 'quantity' && !isPlainWeight(token);
const isPlainWeight = (token: Token): boolean =>
  isPlain(token) && token.t === 'quantity' && token.quantity.dim === 'mass';
const isAlkali = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';

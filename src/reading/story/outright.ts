/**
 * A note that says outright what went in of a row of the list: "the bottle slipped, so castor is 85 g", "all 218 g stayed
 * in the pot", "it has to be 320 g palm oil, not 230", "what I weighed and used was 140 g NaOH", "I took less lye: 138 g",
 * "the water I cut to 290 g". It counts where nothing else in the note weighs anything.
 */

import { alike, type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient, spoken } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, rowOf, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

/** Words of which one stands in each sentence that does so. */
const cues: ReadonlySet<string> = new Set(
  'so what all not truth fact reality really actually end instead rather less more cut reduced lowered dropped raised increased upped brought'.split(
    ' ',
  ),
);

const the = '(?:(?:of|the|my|that|this) )*';
const now = '(?:(?:now|really|actually|then|in fact|in truth|in the end) )*';
const named = `(?<c>#) ${the}(?<f>@)`;
const behind = '(?= (?:$|[-,.;:!)]|now|in|and|not|rather|instead|that|which|here|today|from|for|went)| $)';
const did =
  '(?:(?:i|we|have|had|did|then|really|actually|in fact|in the end|weighed|measured|tonight|today|out|up|and|put|poured) )*';
const used =
  '(?:used|use|weighed(?: out)?|put in|poured(?: in)?|tipped in|took|went in(?:to (?:the|my) [a-z]+)?|is in (?:there|it|the [a-z]+)|ended up in (?:there|it|the [a-z]+))';
const inIt = '(?:in(?:to)?|in there|inside)\\b';
/** Which way it was changed: a figure that goes the other way is no new weight, but a difference. */
const lowered = '(?<less>cut|reduced|lowered|dropped|brought(?= (?:@ )?down)|took(?= (?:@ )?down))';
const raised = '(?<more>raised|increased|upped|brought(?= (?:@ )?up)|put(?= (?:@ )?up)|took(?= (?:@ )?up))';
const way = '(?:down |up |back )?';
const bit = '(?:(?:a|an|bit|little|lot|touch|tad|hair|slightly|somewhat|only|just|rather|even) )*';
const makePatterns = (): readonly RegExp[] =>
  [
    `\\bwhat ${did}${used} (?:[a-z]+ ){0,2}(?:was|is|were|are) (?:(?:really|only|just) )*(?:${named}|${the}(?<g>@) (?:[:,] )?(?<d>#))${behind}`,
    `\\bso ${now}${the}(?<f>@) ${now}(?:is|was|comes to|came to|makes|weighs|stands at) ${now}(?<c>#)${behind}`,
    `\\bso ${now}(?:its|it is|it was|thats|that is|that was|there is|theres|there are|that makes) ${now}${named}${behind}`,
    `\\b(?:all|the (?:full|whole)) ${the}(?<c>#) (?:of )?(?:it |that |${the}(?<f>@) )?(?:(?:are|is|was|were|has|have|had|then|really) )*(?:(?:stayed|went|gone|got|remained|ended up|landed) ${inIt}|(?<=\\b(?:is|are|was|were) )${inIt})`,
    `${named} (?:(?:[,;-]|and|but) )*(?:not|instead of|rather than) ${the}(?<w>#)(?! (?:of )?@)`,
    `\\b(?:in (?:truth|fact|reality)|really|actually) [a-z, ]{0,40}${named} (?:(?:have|has|had|that|really|actually) )*(?:went|got|gone) ${inIt}`,
    `${named} (?:(?:have|has|had|really|actually) )*(?:went|got|gone) ${inIt} (?:the (?:pot|water|jug|pan) )?(?:in the end|in fact|in truth|really)\\b`,
    `\\b(?:i|we) ${did}${used} ${bit}(?:(?<less>less|fewer)|(?<more>more)) ${the}(?<f>@) (?:[:,(–-] )(?:only |just |namely )*(?<c>#)${behind}`,
    `(?<f>@) (?:i|we) ${did}(?:${lowered}|${raised}) ${way}to (?<c>#)${behind}`,
    `\\b(?:i|we|ive|weve) ${did}(?:${lowered}|${raised}) ${way}${the}(?<f>@) ${way}to (?<c>#)${behind}`,
  ].map((pattern) => new RegExp(pattern, 'd'));
let made: readonly RegExp[] | null = null;
/** Nobody is sure of it, it is none of this pot, or it was taken out again. */
const open =
  /\?|\b(?:if|or|could(?! not)|would|should have|might|may|maybe|perhaps|probably|think|guess|about|around|roughly|nearly|almost|next|last|another|other|old|once|usual|usually|normally|always|she|he|they|her|hers|his|theirs|book|recipe|card|site|back out|scooped|spooned|skimmed|removed|half|some of|most of|part of|so (?:is|was|are|were|did))\b/;
/** What stays of the row that is told, of what the list has. */
const mostChanged = 2.5;
/** Sentences before the one that says it, which tell of it, too. */
const mostBefore = 3;

interface Said {
  readonly figure: number;
  readonly row: Weighed;
  readonly from: number;
  readonly to: number;
}

/** The list with what its notes say outright. */
export function saidOutright(cut: Cut): Heard {
  const { tokens } = cut;
  const tells = (token: Token): boolean => cues.has(spoken(token));
  if (!tokens.some(tells)) return { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const told: PutRight[] = [];
  const put = new Set<number>();
  let out: Token[] | null = null;
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || !isAny(tokens, sentence.from, sentence.to, tells)) continue;
    const said = outrightIn(tokens, sentences, k);
    if (!said || put.has(said.row.figure)) continue;
    put.add(said.row.figure);
    const { figure, row, from, to } = said;
    const [was, is, name] = [tokens[row.figure] as Figure, tokens[figure] as Figure, tokens[row.at]];
    out ??= [...tokens];
    hush(out, from, to, 'said again', (at) => isOther(tokens, at, row));
    const quantity = alike(is.quantity, was.quantity);
    out[row.figure] = { ...was, quantity: { ...quantity, numbers: was.quantity.numbers } };
    const text = `I took ${written(quantity)} of ${name?.t === 'name' ? name.text : ''}, not ${written(was.quantity)}, as the post says.`;
    told.push({ text, gone: [was.quantity], from, to, settles: true });
  }
  return { tokens: out ?? tokens, told };
}

/** It is neither a weight of the row nor its name. */
const isOther = (tokens: readonly Token[], at: number, { id }: Weighed): boolean => {
  const token = tokens[at];
  return isIngredient(token) ? thingOf(token) !== id : !isPlain(token);
};

function outrightIn(tokens: readonly Token[], sentences: readonly Sentence[], k: number): Said | null {
  const sentence = sentences[k];
  if (!sentence) return null;
  made ??= makePatterns();
  for (const pattern of made) {
    const at = pattern.exec(sentence.text)?.indices?.groups;
    const token = (group: string): number => {
      const place = at?.[group]?.[0];
      return place === undefined ? -1 : sentence.tokenAt(place);
    };
    const figure = Math.max(token('c'), token('d'));
    if (figure < 0) continue;
    const name = Math.max(token('f'), token('g'));
    const row = name < 0 ? rowOfSame(tokens, sentences, k, figure) : rowBefore(tokens, tokens[name], sentence.from);
    if (!row || !differs(tokens, row, figure)) continue;
    if (at?.['less'] || at?.['more']) {
      if (isMore(tokens, row, figure) !== (at['less'] === undefined)) continue;
    }
    if (token('w') >= 0 && !isWeightOf(tokens, token('w'), row.figure)) continue;
    const note = noteOf(tokens, sentences, k, row, figure);
    if (note) return { figure, row, ...note };
  }
  return null;
}

/** Its one row; of the alkali with a word or two more. */
function rowBefore(tokens: readonly Token[], name: Token | undefined, end: number): Weighed | null {
  const row = rowOf(tokens, name, end);
  if (row || !isIngredient(name) || name.meaning.kind !== 'alkali') return row;
  const [first, ...more] = rowsOfAlkali(tokens, end);
  return first && more.length === 0 ? first : null;
}

/** "The scale went to 218 for the coconut. All 218 g stayed in": of what the same weight was named before. */
function rowOfSame(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  figure: number,
): Weighed | null {
  for (let n = k - 1; n >= Math.max(0, k - mostBefore) && sentences[n]?.paragraph === sentences[k]?.paragraph; n--) {
    const before = sentences[n];
    if (!before || !isAny(tokens, before.from, before.to, (_, at) => isWeightOf(tokens, at, figure))) continue;
    const names = tokens.slice(before.from, before.to).filter(isIngredient);
    return names.length === 1 ? rowBefore(tokens, names[0], before.from) : null;
  }
  return null;
}

/** Of two figures the one with a unit, in which both are compared. */
const unitOf = (tokens: readonly Token[], one: number, other: number): number => {
  const token = tokens[one];
  return token?.t === 'quantity' && token.quantity.dim === 'bare' ? other : one;
};

const isWeightOf = (tokens: readonly Token[], at: number, like: number): boolean =>
  isSum(weightAt(tokens, like, like), weightAt(tokens, at, like));

function differs(tokens: readonly Token[], row: Weighed, figure: number): boolean {
  const like = unitOf(tokens, row.figure, figure);
  const ratio = weightAt(tokens, figure, like) / weightAt(tokens, row.figure, like);
  return ratio !== 1 && ratio < mostChanged && ratio > 1 / mostChanged;
}

const isMore = (tokens: readonly Token[], row: Weighed, figure: number): boolean => {
  const like = unitOf(tokens, row.figure, figure);
  return weightAt(tokens, figure, like) > weightAt(tokens, row.figure, like);
};

/** The sentences that tell of it: each weight there is the one or the other, or what lies between them. */
function noteOf(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  row: Weighed,
  figure: number,
): { readonly from: number; readonly to: number } | null {
  const like = unitOf(tokens, row.figure, figure);
  const [was, is] = [weightAt(tokens, row.figure, like), weightAt(tokens, figure, like)];
  const isKnown = (at: number): boolean => {
    const weight = weightAt(tokens, at, like);
    return [was, is, Math.abs(was - is)].some((one) => isSum(one, weight));
  };
  const fits = (one: Sentence): boolean =>
    !isAny(tokens, one.from, one.to, (token, at) => isPlain(token) && !isKnown(at)) && !isRowIn(tokens, row, one);
  const sentence = sentences[k];
  if (!sentence || !fits(sentence) || open.test(sentence.text)) return null;
  let begin = k;
  while (begin > Math.max(0, k - mostBefore)) {
    const before = sentences[begin - 1];
    if (!before || before.paragraph !== sentence.paragraph || !fits(before)) break;
    begin--;
  }
  const next = sentences[k + 1];
  const around = sentences.slice(begin, k).concat(next && next.paragraph === sentence.paragraph ? [next] : []);
  if (around.some(({ text }) => doubting.test(text))) return null;
  return { from: sentences[begin]?.from ?? sentence.from, to: sentence.to };
}
const doubting =
  /\?|\b(?:may|might|maybe|perhaps|probably|not sure|unsure|back out|out again|scooped|spooned|skimmed|removed|no idea|dont know)\b/;

/** A row of the list stands in it. */
const isRowIn = (tokens: readonly Token[], { figure, id }: Weighed, { from, to }: Sentence): boolean =>
  (figure >= from && figure < to) || rowsBefore(tokens, to).some((one) => one.at >= from && one.id !== id);

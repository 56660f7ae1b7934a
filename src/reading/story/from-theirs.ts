/**
 * "She uses 120 g lye, I go 5 g under that", "the card has 120 g of lye and mine is 5 g less": so much less or more than
 * somebody else has, or a card says. The writer's own weight is reckoned from theirs.
 */

import { type PutRight, reweighed, withValue } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { papers, relations } from '../words/cue-words.ts';
import { isIngredient, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, type Name, rowsBefore, rowsOf, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('less more under below over above lower higher fewer short'.split(' '));
const fewer = /^(?:less|under|below|lower|fewer|short)$/;

/** "I go 5 g under that", "mine is 5 g less than hers", "we take 5 g more". */
const mine =
  /\b(?:i|we|ive|weve|im|mine|ours|my (?:pot|batch|own|one|version)) (?:(?!not\b|never\b|dont\b|didnt\b|wont\b)[a-z]+ ){0,4}(?<n>#) (?<way>less|more|under|below|over|above|lower|higher|fewer|short)(?<that> (?:than )?(?:that|this|it)\b)?(?! (?:of )?(?:the )?@)/d;
/** Somebody's, or of paper. */
const theirs = new RegExp(
  `\\b(?:he|she|they|her|his|their|hers|theirs|${relations.replaceAll(' ', '|')}|${papers.replaceAll(' ', '|')})s?\\b|(?:^|[-,;:–] |and )(?!i\\b|we\\b)(?:[a-z]+|@) (?:always |usually )?(?:takes|uses|has|puts(?: in)?|does|needs|goes with) $`,
);
/** "115 g lye, 5 g under hers": theirs is told by the writer's own. */
const compared =
  /[-,(–:] (?:(?:so|which is|that is|thats|its|about|exactly|just) )*(?<n>#) (?:less|more|under|below|over|above|lower|higher|fewer|short)(?: (?:than|of))? (?:hers|his|theirs|(?:what )?(?:he|she|they)|(?:what )?(?:my|the|her|his|their|our) [a-z]+)\b/d;
const open =
  /\b(?:if|should|shall|would|could|might|may|maybe|perhaps|next|last (?:time|batch|year|month|week)|usually|normally|always|used to)\b/;
/** A difference is no larger than this part of the weight. */
const mostOf = 0.5;

/** "I weighed 10 g more": it may be so much besides. */
const isOnTop = (text: string, { 0: said, index }: RegExpExecArray): boolean =>
  /\b(?:weighed|add|added|poured|put)\b[^#]*# more$/.test(said) && !text.startsWith(' than', index + said.length);

/** The row that stands last before a figure, with no other figure since. */
const lastRow = (tokens: readonly Token[], since: number, figure: number): Weighed | null => {
  const row = rowsBefore(tokens, figure).findLast(({ at }) => at >= since);
  const end = row ? Math.max(row.at, row.figure) + 1 : figure;
  return row && !tokens.slice(end, figure).some((token) => isPlain(token) || isIngredient(token)) ? row : null;
};

/** What the post says of whose row that is, from the end of the row before it. */
function saidOf(tokens: readonly Token[], sentences: readonly Sentence[], row: Weighed): string {
  const told = sentences.find(({ from, to }) => row.at >= from && row.at < to);
  const first = Math.min(row.at, row.figure);
  const before = rowsBefore(tokens, first).findLast(({ at }) => told !== undefined && at >= told.from);
  const from = before ? told?.placeOf(Math.max(before.at, before.figure)) : 0;
  return told?.text.slice(from, told.placeOf(first)) ?? '';
}

/** The tokens with the writer's own weight in the place of theirs. */
export function fromTheirs(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  const out = [...tokens];
  const told: PutRight[] = [];
  let isApart = false;
  for (const [k, sentence] of sentences.entries()) {
    const { text } = sentence;
    const apart = open.test(text) ? undefined : compared.exec(text)?.indices?.groups?.['n']?.[0];
    const difference = apart === undefined ? -1 : sentence.tokenAt(apart);
    if (isPlain(tokens[difference]) && lastRow(tokens, (sentences[k - 1] ?? sentence).from, difference)) {
      out[difference] = setApart(tokens[difference], 'a difference');
      isApart = true;
      continue;
    }
    const found = open.test(text) ? null : mine.exec(text);
    const place = found?.indices?.groups?.['n']?.[0];
    if (!found || place === undefined || isOnTop(text, found)) continue;
    const figure = sentence.tokenAt(place);
    const row = lastRow(tokens, (sentences[k - 1] ?? sentence).from, figure);
    const weight = tokens[row?.figure ?? -1];
    if (!row || !isPlain(weight) || rowsOf(tokens, tokens[row.at], tokens.length).length > 1) continue;
    const by = weightAt(tokens, figure, row.figure);
    const isTheirs = theirs.test(saidOf(tokens, sentences, row));
    if (!(by > 0 && by < mostOf * weight.quantity.value) || !(found.groups?.['that'] || isTheirs)) continue;
    // "108 g lye, 250 g water. I took 5 g less than that"
    const beside = sentences.find(({ from, to }) => row.at >= from && row.at < to);
    if (!isTheirs && (beside?.figures ?? 0) > 1) return { ...none, unheard: found[0].trim() };
    const isLess = fewer.test(found.groups?.['way'] ?? '');
    const value = weight.quantity.value + (isLess ? -by : by);
    const differs = tokens[figure] as Figure;
    out[row.figure] = reweighed(weight, value);
    out[figure] = setApart(differs, 'a difference');
    const name = tokens[row.at] as Name;
    // "Tom takes 110 g lye": who is spoken of
    const who = tokens[Math.min(row.at, row.figure) - 2];
    if (who?.t === 'name' && who.meaning.kind === 'unknown') out[out.indexOf(who)] = asFiller(who);
    const said = `${withValue(weight.quantity, value).text} of ${name.text}`;
    told.push({
      text: `I took ${said}, ${differs.quantity.text} ${isLess ? 'less' : 'more'} than that, as the post says.`,
      gone: [],
      from: Math.min(row.at, row.figure),
      to: sentence.tokenAt(found.index + found[0].length - 1) + 1,
      settles: true,
    });
  }
  return isApart || told.length > 0 ? { tokens: out, told } : none;
}

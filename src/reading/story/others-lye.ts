/**
 * "My husband says 118 g lye, my mum says 125 g, I say somebody reckon it properly please", "she boils up 3 kg at once and
 * puts 420 g lye. How much lye for me?": where the lye is asked for and the writer has no weight of it, what others say or
 * take is none of it.
 */
import { once } from '../once.ts';
import { type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { isAny, isFat, isIngredient, isWeight, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { apart, isPlain, rowsBefore } from './tale.ts';

const asks =
  /\bhow (?:much|many)\b[^.!?]{0,24}[@]|@ (?:do|will|would|must|should|shall) (?:i|we) (?:need|take|use)|\b(?:need|want|tell me|give me|looking for|calculate|reckon|work out|figure out) (?:me )?(?:the |my |some |right )*@|(?<!\bi )\b(?:reckon|calculate|work|figure|count|compute) (?:it|this|that|mine|please)\b/;
const who = once(
  () =>
    new RegExp(
      `\\b(?:(?:my|our|a|the|his|her|one|another|some) (?:[a-z]+ ){0,2}?(?:${relations.replaceAll(' ', '|')}|lady|guy|man|woman|shop|seller|folks|group|forum|internet|video|chat)s?|${relations.replaceAll(' ', '|')}|she|he|they|somebody|someone|people|others?)(?: [#…-]+)?\\b`,
    ),
);
const mine = /\b(?:i|ive|id|im|ill|we|weve|my (?:mou?ld|recipe|batch|soap|pot|fats|oils)|mine|me)\b/;
const does =
  /\b(?:says?|said|saying|thinks?|thought|guess(?:es|ed)?|reckons?|reckoned|tells?|told|swears?|claims?|needs?|needed|takes?|took|puts?|put|uses?|used|wants?|wanted|makes?|made|boils?|boiled|cooks?|cooked|does|did|recommends?|writes?|wrote|gets?|got|would|believes?|suggests?|suggested|insists?|bets?)\b/;

export const ofOthersLye = 'said of lye by somebody else';

/** What they say is asked about, or is of the whole recipe. */
const judges = /\b(?:confirm|verify|check(?:ed)?|trust|double check)\b/;
const ofElse = /\b(?:you|answer(?:s|ed)|oils|fats?|water|milk|mou?ld)\b|\b(?:i|we) (?:should|must|need|could|can)\b/;

interface Clause {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

function clausesOf(sentence: Sentence): readonly Clause[] {
  const cuts = [...sentence.text.matchAll(/ (?:[,;:–—]|and|but|while|whereas) /g)].map(({ index }) => index + 1);
  const marks = [0, ...cuts, sentence.text.length];
  return marks.slice(1).flatMap((end, n) => {
    const begin = marks[n] ?? 0;
    const to = end >= sentence.text.length ? sentence.to : sentence.tokenAt(end);
    return end > begin ? [{ text: sentence.text.slice(begin, end), from: sentence.tokenAt(begin), to }] : [];
  });
}

/** The list without what others say of its lye. */
export function othersLye(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const isAlkali = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';
  if (!tokens.some(isAlkali) || !tokens.some((token) => does.test(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  const asked = sentences.some((sentence) => {
    const match = asks.exec(sentence.text);
    const place = match?.[0].indexOf('@') ?? -1;
    return match && (place < 0 || isAlkali(tokens[sentence.tokenAt(match.index + place)]));
  });
  if (!asked || sentences.some(({ text }) => judges.test(text))) return none;
  // "3 percent lathers better" is no lye
  const isWeighed = ({ from, to }: Clause): boolean =>
    isAny(tokens, from, to, isWeight) &&
    !isAny(tokens, from, to, (one) => one.t === 'quantity' && one.quantity.dim === 'percent');
  const theirs: Clause[] = [];
  for (const sentence of sentences) {
    let isTheirs = false;
    const clauses = clausesOf(sentence);
    const isOfFats = ({ text, from, to }: Clause): boolean =>
      /\b(?:her|his|their|hers|theirs)\b/.test(text) && tokens.slice(from, to).some(isFat) && text.includes('#');
    if (clauses.some(isOfFats)) continue;
    for (const clause of clauses) {
      const other = who().exec(clause.text);
      const own = mine.exec(clause.text);
      if (own && (!other || own.index < other.index)) isTheirs = false;
      else if (other) isTheirs ||= does.test(clause.text.slice(other.index));
      if (!isTheirs || clause.text.includes('?') || ofElse.test(clause.text)) continue;
      // their list, or of the fats
      const names = tokens.slice(clause.from, clause.to).filter(isIngredient);
      if (names.some((name) => isFat(name) || !isAlkali(name))) isTheirs = false;
      else if (isWeighed(clause)) theirs.push(clause);
    }
  }
  const isIn = (at: number): boolean => theirs.some(({ from, to }) => at >= from && at < to);
  const rows = rowsBefore(tokens, tokens.length);
  const fat = rows.find(({ at, figure }) => isFat(tokens[at]) && !isIn(figure));
  if (theirs.length === 0 || rows.some(({ at, figure }) => isAlkali(tokens[at]) && !isIn(figure))) return none;
  const weights = theirs.flatMap(({ from, to }) =>
    Array.from({ length: to - from }, (_, n) => from + n).filter((at) => tokens[at]?.t === 'quantity'),
  );
  if (!weights.some((at) => isPlain(tokens[at]))) return none;
  const out = [...tokens];
  for (const at of weights) apart(out, at, ofOthersLye, fat?.figure ?? -1);
  for (const { from, to } of theirs)
    for (let at = from; at < to; at++) if (tokens[at]?.t === 'name') out[at] = asFiller(tokens[at] as Token);
  const told = theirs.map(({ from, to }): PutRight => {
    const said = weights
      .filter((at) => at >= from && at < to)
      .map((at) => `"${written((tokens[at] as Figure).quantity)}"`);
    return {
      text: `I left out ${said.join(', ')}, which somebody else says or takes.`,
      gone: [],
      from,
      to,
      settles: true,
    };
  });
  return { tokens: out, told };
}

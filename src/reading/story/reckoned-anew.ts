/**
 * "My aunt says 160 g lye but she guesses everything. What's the real figure?", "a friend told me to use 160 g of lye. How
 * much do I need?": the only lye of the post is what somebody else says, and the writer asks how much it is. It is left out.
 */

import { once } from '../once.ts';
import { type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { papers, relations } from '../words/cue-words.ts';
import { isIngredient, setApart, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, lettered, rowsBefore, rowsOfAlkali } from './tale.ts';

/** Words of which one stands where somebody says so. */
const cues: ReadonlySet<string> = new Set(
  'say says said reckon reckons reckoned think thinks thought claim claims claimed insist insists swear swears recommend recommends recommended told suggest suggests suggested would guess guesses guessed wants'.split(
    ' ',
  ),
);

const makePatterns = () => ({
  /** Somebody, or what they have written, says so. */
  claims: new RegExp(
    `\\b(?:${relations.trim().replace(/ /g, '|')}|${papers.replace(/ /g, '|')}|he|she|they|somebody|someone|people|woman|man|lady|guy|bloke|forum|website|internet|group|mate|video)s?\\b[^#?]{0,30}\\b(?:says?|said|reckons?|reckoned|thinks?|thought|claims?|claimed|insists?|insisted|swears?|recommends?|recommended|told|suggests?|suggested|would (?:use|take|put|go|do|say)|guess(?:es|ed)?|wants)\\b[^#?FNX@]{0,30}# (?:of )?(?:the |my )?L\\b|\\b(?:was|were|been|got) told\\b[^#?FNX@]{0,30}# (?:of )?L\\b`,
  ),
  /** How much it is is asked. */
  asks: /\bhow (?:much|many grams(?: of)?)\b(?! (?:water|X|@|extra|more|less|free|excess|too|superfat|F|N|oil|fat|liquid|is missing|over|under)\b)|\bwhat(?: ?s| is| would| will| should| are)?\b[^?.]{0,30}\b(?:L|lye)\b(?! (?:do|excess|concentration|water|solution))|\bwhats?\b[^?.]{0,30}\b(?:real|right|correct|true|proper|actual) (?:one|figure|amount|number|weight|value)\b|\b(?:work out|calculate|reckon|figure out|tell me|give me|compute|do)\b[^?.#]{0,24}\bL\b(?! (?:is|for me is|right|safe|ok))/,
  /** That of others is asked about, or was taken. */
  theirs:
    /\b(?:is (?:she|he|that|it|this|hers|his)|are they|was (?:she|he|that|it)|does (?:that|it|this)|do they|can (?:that|it|she|he)|could (?:that|it|she|he|they))\b[^?.]{0,30}\?|\b(?:i|we|ive|weve) (?:(?:have|had|then|so|just|also|now|already) )*(?:put|used|took|weighed|added|went|poured|dissolved|did|followed|trusted|listened|made)\b|\bthat(?:s| is) what (?:i|we|went)\b|\bis (?:already )?in\b|\b(?:with|at) (?:that|it|hers|his|theirs)\b[^?.]{0,20}\?/,
});
const patterns = once(makePatterns);
const elsewhen = /\blast (?:time|batch|year|month|week)\b/;

const textOf = (tokens: readonly Token[], sentence: Sentence): string =>
  lettered(tokens, sentence.text, (place) => sentence.tokenAt(place));

/** The tokens without what others say. */
export function reckonedAnew(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const rows = [...rowsBefore(tokens, tokens.length), ...rowsOfAlkali(tokens, tokens.length)];
  const lyes = new Set(
    rows.flatMap(({ at, figure }) => {
      const name = tokens[at];
      return isIngredient(name) && name.meaning.kind === 'alkali' ? [figure] : [];
    }),
  );
  const [figure] = lyes;
  const weight = tokens[figure ?? -1];
  if (figure === undefined || lyes.size > 1 || !isPlain(weight)) return none;
  const sentences = sentencesOf(cut);
  const claim = sentences.findIndex(({ from, to }) => figure >= from && figure < to);
  const said = sentences[claim];
  const { claims, asks, theirs } = patterns();
  if (!said || said.figures > 1 || !claims.test(textOf(tokens, said))) return none;
  const others = sentences.filter((one) => one !== said).map((one) => textOf(tokens, one));
  if (!others.some((text) => asks.test(text))) return none;
  if (
    textOf(tokens, said).includes('?') ||
    others.some((text, k) => k >= claim && !asks.test(text) && !elsewhen.test(text) && theirs.test(text))
  )
    return none;
  const out = [...tokens];
  out[figure] = setApart(weight, 'what somebody else says');
  const told: PutRight = {
    text: `I left out ${written(weight.quantity)} of lye, which others say, as you ask how much it is.`,
    gone: [weight.quantity],
    from: said.from,
    to: said.to,
    settles: true,
  };
  return { tokens: out, told: [told] };
}

/**
 * A weight of the list that was taken with its vessel on the scale: "194 is with the cup, I forgot to tare. The cup is
 * 14 g, so real caustic is 180". What the vessel leaves counts; where nobody says what that is, it is asked.
 */
import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import { storyAt } from './story.ts';
import { hush, isPlain, isSum, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('tare tared zero cup jug beaker bowl dish glass saucer'.split(' '));

const vessel = '(?:cup|jug|beaker|bowl|dish|glass|saucer|tub|pot|container|lid)';
const which = '(?:(?:the|its|my|a|an|that|plastic|glass|steel|little|paper|empty) )*';
const alone = '(?:(?:on its own|alone|itself|by itself|empty|only|which|that|is|was|weighs|weighed|comes to|[:=,]) )+';
const makePatterns = () => ({
  weighedWith: new RegExp(
    `\\b(?:with|including|includes|has) ${which}(?:# )?${vessel}\\b|\\b(?:forgot|forgotten|didnt|did not|without) (?:to )?(?:tare|taring|zero)\\b`,
  ),
  tare: new RegExp(`\\b${vessel} ${alone}#|# (?:of )?${which}${vessel}\\b`),
});
let made: ReturnType<typeof makePatterns> | null = null;
const leaves =
  /\b(?:so|real|really|actual|actually|net|leaves|leaving|makes|means|hence|in fact)\b(?:[^#?]{0,40}\b(?:is|was|of|be|=|:))?[^#?]{0,16}#/;
/** It was on the scale for certain. */
const onScale = /\b(?:tare|taring|scales?)\b/;
const open = /\?|\b(?:if|next time|usually|always|tared (?:it|the)|zeroed|before (?:i|we) (?:tared|weighed))\b/;

const most = 4;

interface Heard {
  readonly tokens: readonly Token[];
  readonly told: readonly PutRight[];
  readonly unheard: string | null;
}

/** The list with what its weight leaves without the vessel. */
export function withVessel(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none: Heard = { tokens, told: [], unheard: null };
  const tells = (token: Token): boolean => 'text' in token && cues.has(token.text.toLowerCase());
  if (!tokens.some(tells)) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    made ??= makePatterns();
    if (!made.weighedWith.test(sentence.text)) continue;
    const story = storyAt(tokens, sentences, k, most);
    const [own, net] = [made.tare.exec(story.text), leaves.exec(story.text)];
    if (!own || !net || open.test(story.text.slice(0, net.index + net[0].length))) continue;
    const figureIn = (found: RegExpExecArray): number => story.tokenAt(found.index + found[0].indexOf('#'));
    const [empty, left] = [figureIn(own), figureIn(net)];
    if (empty === left) continue;
    const from = story.tokenAt(0);
    const to = story.tokenAt(story.endAt(net.index + net[0].length - 1) - 1) + 1;
    const rows = [
      ...new Map(
        [...rowsBefore(tokens, from), ...rowsOfAlkali(tokens, from)].map((row) => [row.figure, row] as const),
      ).values(),
    ].filter((row) => isNamed(tokens, row, from, to));
    const [row, ...more] = rows.filter(({ figure }) =>
      isSum(weightAt(tokens, figure, figure), weightAt(tokens, empty, figure), weightAt(tokens, left, figure)),
    );
    if (!row || more.length > 0 || !agree(tokens, row, from, to, [empty, left]))
      return rows.length > 0 && onScale.test(story.text)
        ? { ...none, unheard: rawText(prims, tokens[from]?.from ?? 0, tokens[to - 1]?.to ?? 0) }
        : none;
    const out = [...tokens];
    hush(out, from, to, 'what a vessel weighs');
    const weight = tokens[row.figure] as Figure;
    const value = weightAt(tokens, left, row.figure);
    const now = { ...withValue(weight.quantity, value), numbers: weight.quantity.numbers };
    out[row.figure] = { ...weight, quantity: now };
    const name = tokens[row.at];
    const text = `I took ${now.text} of ${name?.t === 'name' ? name.text : ''}, not ${written(weight.quantity)}, which is with its vessel, as the post says.`;
    return { tokens: out, told: [{ text, gone: [weight.quantity], from, to, settles: true }], unheard: null };
  }
  return none;
}

/** The note names it, or no ingredient at all. */
function isNamed(tokens: readonly Token[], { id }: Weighed, from: number, to: number): boolean {
  if (!isAny(tokens, from, to, isIngredient)) return true;
  return isAny(tokens, from, to, (one) => isIngredient(one) && (thingOf(one) === id || isSameKind(one, id)));
}
const isSameKind = (token: Token, id: string): boolean =>
  isIngredient(token) && token.meaning.kind === 'alkali' && /(?:naoh|koh|unsaid)/.test(id);

/** Every other weight in the note is that of the list once more. */
function agree(
  tokens: readonly Token[],
  { figure }: Weighed,
  from: number,
  to: number,
  known: readonly number[],
): boolean {
  for (let k = from; k < to; k++)
    if (
      isPlain(tokens[k]) &&
      !known.includes(k) &&
      !isSum(weightAt(tokens, figure, figure), weightAt(tokens, k, figure))
    )
      return false;
  return true;
}

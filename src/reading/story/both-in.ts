/**
 * "Olive, green bottle 380 g / olive, tin 145 g … both olives went into the pot": one fat in two rows that are told to have
 * gone in, both.
 */
import { alike, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, isMark, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

const vessel = '(?:pot|pan|kettle|bowl|mix|batch|soap|bucket|pail|cauldron)';
const went =
  '(?:went|go|goes|gone|came|are|is|were|put|poured|tipped|turned|emptied|melted|used|threw|thrown|gave|given|mixed|landed|ended up)';
const patterns: readonly RegExp[] = [
  // "both of them went into the pot", "both are in"
  `\\bboth\\b(?<mid>[^#?.;]{0,44}?)\\b${went}\\b(?: (?:all|together|straight|then|now|up|fully|whole|entirely|completely))* in(?:to|side)?\\b(?! (?:the |my )?(?:fridge|freezer|cupboard|cellar|shelf|picture|photo|list|recipe|date|sale|shop|store))`,
  // "we turned both in the pan", "I have both in the pot put"
  `\\b(?:i|we)\\b[^#?.;]{0,24}\\bboth\\b(?<mid>[^#?.;]{0,24}?)\\b(?:in(?:to)?|inside) (?:the |my |our |one |same )*${vessel}\\b`,
  `\\b(?:i|we)\\b[^#?.;]{0,16}\\b(?:used|put in|poured in|tipped in|melted|threw in|took) both\\b(?<mid>[^#?.;]{0,24})`,
  // "in the pot are both"
  `\\bin(?:to)? (?:the |my |our )*${vessel} (?:i |we )?(?:${went}|have|had) both\\b(?<mid>[^#?.;]{0,24})`,
].map((source) => new RegExp(source));
/** Nobody has done it, or not with both. */
const open =
  /\?|\b(?:if|should|would|could|can|cant|might|may|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|never|not|no|nor|neither|or|half|part of|some of|instead|only one|he|she|they|sister|friend|mother)\b/;
/** "I did not use both": one of them, and nobody says which. */
const notBoth =
  /\b(?:not|didnt|dont|never|havent)\b[^#?.;]{0,16}\b(?:use|used|put|pour|poured|add|added|take|taken|took|melt|melted|tip|tipped)\b[^#?.;]{0,12}\bboth\b(?! (?:times|days|soaps|batches|hands|scales))/;
/** What tells the two rows apart. */
const holder =
  /^(?:bottles?|tins?|cans?|jars?|tubs?|jugs?|packs?|packets?|bags?|blocks?|canisters?|buckets?|cartons?|boxe?s?|lots?|harvest|press|batch|old|older|new|newer|first|second|opened|unopened|pan|pot|bowl)$/;

/** The words of the line or clause that a row stands in. */
function wordsOf(tokens: readonly Token[], { at, figure }: Weighed, other: Weighed): readonly string[] {
  const [from, to] = [Math.min(at, figure), Math.max(at, figure)];
  const isOther = (k: number): boolean => k === other.at || k === other.figure;
  const isEnd = (k: number): boolean => tokens[k]?.t === 'line' || isOther(k);
  let [begin, end] = [from, to];
  while (begin > 0 && !isEnd(begin - 1) && tokens[begin - 1]?.t !== 'quantity') begin--;
  while (end < tokens.length && !isEnd(end) && (end <= to || tokens[end]?.t !== 'quantity')) end++;
  return tokens.slice(begin, end).flatMap((token) => spoken(token).toLowerCase().split(' '));
}

/** Words of a row between its name and its weight, at the most. */
const mostBetween = 6;

const isBetween = (token: Token | undefined): boolean =>
  token?.t === 'word' || (token?.t === 'name' && !isIngredient(token)) || isMark(token, ',:=()–—-\t');

/** Rows of fats, those with words behind the name, too: "sunflower, opened bottle: 220 g". */
function fatRows(tokens: readonly Token[]): readonly Weighed[] {
  const rows = [...rowsBefore(tokens, tokens.length)].filter(({ at }) => isFat(tokens[at]));
  const [names, figures] = [new Set(rows.map(({ at }) => at)), new Set(rows.map(({ figure }) => figure))];
  for (const [at, name] of tokens.entries()) {
    if (!isFat(name) || names.has(at)) continue;
    let k = at + 1;
    while (k - at <= mostBetween && isBetween(tokens[k])) k++;
    if (isPlain(tokens[k]) && !figures.has(k)) rows.push({ at, figure: k, id: thingOf(name) });
  }
  return rows.sort((one, other) => one.at - other.at);
}

function tells(tokens: readonly Token[], { text, from, to, names }: Sentence, id: string): 'named' | 'plain' | null {
  if (!/\bboth\b/.test(text) || open.test(text) || !patterns.some((pattern) => pattern.test(text))) return null;
  if (names === 0) return 'plain';
  const own = tokens.slice(from, to).filter(isIngredient);
  return own.length > 0 && own.every((one) => thingOf(one) === id) ? 'named' : null;
}

/** The list with the sum in the first of the two rows. */
export function bothIn(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => spoken(token) === 'both')) return none;
  const fats = fatRows(tokens);
  const twice = [...new Set(fats.map(({ id }) => id))].filter((id) => fats.filter((row) => row.id === id).length > 1);
  const [id] = twice;
  const [one, two, ...more] = fats.filter((row) => row.id === id);
  if (id === undefined || twice.length > 1 || !one || !two || more.length > 0) return none;
  const [was, other, name, again] = [tokens[one.figure], tokens[two.figure], tokens[one.at], tokens[two.at]];
  if (!isPlain(was) || !isPlain(other) || !isFat(name) || !again || one.at === two.at) return none;
  const sentences = sentencesOf(cut);
  const against = sentences.find(({ text, to }) => to > two.at && notBoth.test(text));
  if (against) {
    const words = rawText(cut.prims, tokens[against.from]?.from ?? 0, tokens[against.to - 1]?.to ?? 0).trim();
    return { ...none, unheard: words };
  }
  const said = sentences.find((sentence) => sentence.to > two.at && tells(tokens, sentence, id) !== null);
  if (!said) return none;
  const holders = [wordsOf(tokens, one, two), wordsOf(tokens, two, one)].map((words) =>
    words.some((word) => holder.test(word)),
  );
  if (tells(tokens, said, id) === 'plain' && !holders.every(Boolean)) return none;
  const sum = weightAt(tokens, one.figure, one.figure) + weightAt(tokens, two.figure, one.figure);
  if (!(sum > 0)) return none;
  const now = withValue(alike(was.quantity, was.quantity), sum);
  const out = [...tokens];
  out[one.figure] = { ...was, quantity: { ...now, numbers: was.quantity.numbers } } as Figure;
  out[two.figure] = asAside(other, 'a part of what was said');
  out[two.at] = asFiller(again);
  const text = `I took ${written(was.quantity)} and ${written(other.quantity)} of ${name.text} together, ${written(now)}, as both went in.`;
  return { tokens: out, told: [{ text, gone: [], from: said.from, to: said.to, settles: true }] };
}

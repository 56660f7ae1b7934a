/**
 * "By mistake I put 122 g of NaOH", "coconut slipped, 270 g went in", "water I gave less, 200 g", "lye became 118 g": what a row
 * of the list weighs, told once more of what was really done. So much counts, where it is about as much as the row has.
 */
import { alike, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { batchBefore, relations } from '../words/cue-words.ts';
import { endsDotted, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { rowsIn } from './mentions.ts';
import { isPlain, isSum, type Name, rowsAmong, weightAt } from './tale.ts';

/** Somebody did it. */
const did =
  /\b(?:by (?:mistake|accident)|accidentally|i (?:have )?(?:put|took|used|weighed|poured|gave|made|added|tipped)|(?:i|we)(?: then| just| only| really| actually| have)* (?:put|took|taken|used|weighed|poured|gave|given|made|tipped)|went in|ended up|became|slipped|slid|too (?:much|little) (?:went|came|slipped|fell)|poured too (?:much|little)|(?:scales?|display) (?:showed|said|read|reads|says)|in the end|in place of #|instead of #|(?:was|is) (?:really|actually|in fact|in truth))\b/;
/** More or less than the row, where the figure is its whole weight. */
const bigger = /\b(?:more|generous\w*|too much|bigger|larger|increased|raised|upped)\b/;
const smaller = /\b(?:less|fewer|too little|smaller|reduced|lowered|decreased)\b/;
const open = new RegExp(
  `\\?|\\b(?:if|should|would|could|can|may|might|maybe|perhaps|or|about|around|roughly|nearly|almost|next|first|before|at first|last (?:time|batch|week|month|year)|ago|usually|normally|always|never|not(?! #)|didnt|did not|dont|another|extra|additional|further|besides|also|on top|plus|left|stayed|remain\\w*|rest|missing|over|lost|spil\\w*|stuck|of (?:it|which|that|them)|fell|tubs?|jars?|bottles?|packs?|packets?|bags?|cans?|tins?|canisters?|bought|buy|cost\\w*|price\\w*|paid|bowl|jug|cup|pot (?:weighs|weighed)|tare|each|every|per|for the (?:next|other)|ignore|old batch|batch|half|third|quarter|part|trace|after|cook\\w*|until|till|thin\\w*|dilut\\w*|she|he|they|her|his|theirs|card|book|recipe|says|planned|wanted|want|need\\w*|thinking|think|thought|minutes?|hours?|degrees?|fragrance|scent|mould|mold|bars?|instead of (?!#)|in place of (?!#)|ice|frozen)\\b|${batchBefore}|\\b(?:${relations.trim().replaceAll(' ', '|')})\\b`,
);
/** "So I kept it". */
const keptIt =
  /\b(?:kept|left|let) (?:it|that|them)(?: (?:so|like (?:this|that)|at that|be|in|as (?:it )?is))*(?= ?[,.;!)]|$| $)/g;
const most = 1.6;

interface Told {
  readonly mention: number;
  readonly figure: number;
  readonly row: Weighed;
}

type Span = Pick<Sentence, 'from' | 'to' | 'text'>;

/** "…, water 250 g. coconut slipped, 270 g went in": what goes on behind a list without a capital. */
function behindList(tokens: readonly Token[], sentence: Sentence): Span {
  const { from, to, text } = sentence;
  let since = from;
  for (let k = from; k < to - 1; k++) if (endsDotted(tokens[k])) since = k + 1;
  return { from: since, to, text: since === from ? text : text.slice(sentence.placeOf(since)) };
}

/** What a sentence tells so: one thing of the list, and one figure that is not the row's. */
function toldIn(tokens: readonly Token[], rows: readonly Weighed[], { from, to, text }: Span): Told | null {
  const named: number[] = [];
  const figures: number[] = [];
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (isIngredient(token)) named.push(k);
    if (token?.t === 'quantity') figures.push(k);
  }
  const [mention] = named;
  const name = tokens[mention ?? -1];
  if (mention === undefined || named.length > 1 || !isIngredient(name) || figures.length === 0) return null;
  if (!/^(?:fat|alkali|water|liquid)$/.test(name.meaning.kind)) return null;
  const own = rowsAmong(rows, tokens, name);
  const [row, ...more] = own.filter(({ figure }) => figure < from);
  if (!row || more.length > 0 || own.some(({ figure }) => figure >= to)) return null;
  const before = weightAt(tokens, row.figure, row.figure);
  const news = figures.filter((k) => !isSum(before, likeRow(tokens, k, row)));
  const [figure] = news;
  if (figure === undefined || news.length > 1 || figures.length > 2) return null;
  // "50 g of the lard"
  if (spoken(tokens[figure + 1]) === 'of' && /^(?:the|my|it|that|this)$/.test(spoken(tokens[figure + 2]))) return null;
  const now = likeRow(tokens, figure, row);
  if (!(now < most * before && now > before / most) || !isPlain(tokens[figure])) return null;
  if (bigger.test(text) && !(now > before)) return null;
  if (smaller.test(text) && !(now < before)) return null;
  return { mention, figure, row };
}

/** What a figure weighs in the unit of the row, bare ones too. */
function likeRow(tokens: readonly Token[], k: number, row: Weighed): number {
  const [one, other] = [tokens[k], tokens[row.figure]];
  if (!isPlain(one) || !isPlain(other)) return Number.NaN;
  const { dim, value } = alike(one.quantity, other.quantity);
  return dim === other.quantity.dim ? value : Number.NaN;
}

/** The list with what was really done. */
export function putAnew(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const rows = rowsIn(tokens);
  for (const whole of sentences) {
    if (whole.names === 0 || whole.figures === 0) continue;
    const sentence = behindList(tokens, whole);
    const isKept = /\b(?:came|turned) out\b/.test(sentence.text) && sentence.text.search(keptIt) >= 0;
    if (!(isKept || did.test(sentence.text) || bigger.test(sentence.text) || smaller.test(sentence.text))) continue;
    if (open.test(sentence.text.replace(keptIt, ''))) continue;
    const told = toldIn(tokens, rows, sentence);
    if (!told) continue;
    const { mention, figure, row } = told;
    const [was, weight, name] = [tokens[row.figure] as Figure, tokens[figure] as Figure, tokens[row.at] as Name];
    const quantity = alike(weight.quantity, was.quantity);
    const out = [...tokens];
    out[row.figure] = { ...was, quantity: { ...quantity, numbers: was.quantity.numbers } };
    for (let k = sentence.from; k < sentence.to; k++) {
      const token = out[k];
      if (token?.t === 'quantity') out[k] = asAside(token, 'said before');
    }
    if (mention !== row.at) out[mention] = asFiller(tokens[mention] as Name);
    const text = `I took ${written(quantity)} of ${name.text}, not ${written(was.quantity)}, as the post says.`;
    const { from, to } = sentence;
    return { tokens: out, told: [{ text, gone: [was.quantity], from, to, settles: true }] };
  }
  return none;
}

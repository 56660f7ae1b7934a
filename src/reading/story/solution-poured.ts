/**
 * "Dissolved 120 g lye in 240 g water = 360 g solution. Poured 330 g of that into the oils, the last 30 g stays in the
 * jug": of alkali and water so much as went in. Asked about where nobody knows it for sure.
 */

import { withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient, isRole, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsAmong, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'solution mix mixture liquid poured pour put tipped used added took stayed stays left went kept'.split(' '),
);
const solution =
  '(?:(?:the|my|that|this|whole|ready|cooled|dissolved|lye|L|W|-) )*(?:solution|mix|mixture|liquid|jug|canister|L W|lye water|L)\\b';
const it = `(?:${solution}|(?:it|that|this|which)(?! (?:[a-z]+ ){0,2}[XLW]\\b))`;
const lightly =
  '(?<rough>(?:only|just|exactly|about|around|roughly|nearly|almost|over|in|out|the|so|maybe|ca|some|half of (?:it|that) ,) )*';
const poured = '(?:poured|pour|put|tipped|used|use|added|took|weighed|stirred|mixed)(?: in| out| off)?';
const pot = '(?:in(?:to)?|over|on|onto)\\b';
const wentIn = '(?:(?:of it |have |has |really |actually |then )*(?:went|got|gone|is|are|was|were|goes) in(?:to)?\\b)';
const stays =
  '(?:(?:i|we|is|are|was|were|has|have|still|then|got|being) )*(?:stayed|stays|staying|left|remained|remains|kept|keep|spilled|spilt|sits|sitting|in the (?:jug|cup|beaker|bottle))\\b';
const patterns = [
  `\\b${poured} ${lightly}(?<p>#) (?:of|from|out of) ${it}`,
  `\\b(?:of|from|out of) (?:the |those |these |that )?(?:# (?:of )?)?${solution} ?,? (?:i |we |have |had )*(?:${poured} )?${lightly}(?<p>#)(?! (?:stayed|stays|left|remained|is left|was left))`,
  `${lightly}(?<p>#) (?:of|from) ${it} (?:then |only |just |really )*(?:${wentIn}|${pot})`,
  `${lightly}(?<r>#) (?:of|from) (?:it|that|the solution|the mixture|the (?:lye|L) (?:solution|water|W)) ${stays}`,
].map((pattern) => new RegExp(pattern, 'd'));
const open =
  /\?|\b(?:if|should|shall|would|could|can|may|might|maybe|perhaps|next|last (?:time|batch|week|month)|usually|normally|always|once|every|each|half|will|plan|want|she|he|they|for (?:an?|another|my|the (?:next|other|drain)|later)|down the)\b/;
const unsure = /\b(?:about|around|roughly|nearly|almost|maybe|ca|some|over)\b/;
/** It is of the soap that was poured. */
const ofBatter = /\b(?:mou?lds?|loaf|batter|traced?|tray|trays|tins?|bars?)\b/;
/** The rest of it followed. */
const restIn =
  /\b(?:rest|last|remaining|remainder|other)\b[^.]{0,30}\b(?:too|as well|went in|goes in|afterwards|later|then in|after that)\b/;
const speaksOfIt = /\b(?:solution|mixture|mix|lye water|L W|jug|canister)\b/;
/** What is kept for many batches. */
const isStock =
  /\b(?:keep|kept|always have|have (?:a|some))\b[^.!?]*\b(?:solution|L)\b|\b(?:L|solution) stock\b|\bstock (?:of L|solution)\b/;

/** The one weight of the alkali and the one of the water before a place. */
function solvedBefore(tokens: readonly Token[], end: number): readonly [Weighed, Weighed] | null {
  const rows = new Map([...rowsOfAlkali(tokens, end), ...rowsBefore(tokens, end)].map((row) => [row.at, row]));
  const of = (kind: string): readonly Weighed[] =>
    [...rows.values()].filter(({ at }) => {
      const token = tokens[at];
      return isIngredient(token) && token.meaning.kind === kind;
    });
  const [[lye, ...lyes], [water, ...waters], liquids] = [of('alkali'), of('water'), of('liquid')];
  return lye && water && lyes.length + waters.length + liquids.length === 0 ? [lye, water] : null;
}

const lettered = (tokens: readonly Token[], sentence: Sentence): string =>
  sentence.text.replace(/@/g, (_, place: number) => {
    const token = tokens[sentence.tokenAt(place)];
    const kind = isIngredient(token) ? token.meaning.kind : '';
    return kind === 'alkali' || kind === 'stock' ? 'L' : kind === 'water' ? 'W' : 'X';
  });

/** The list with so much of both as was poured. */
export function solutionPoured(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => cues.has(spoken(token)) || isRole(token, 'solution'))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const text = lettered(tokens, sentence);
    const found = patterns.map((pattern) => pattern.exec(text)).find((match) => match !== null);
    if (!found || ofBatter.test(text)) continue;
    const isRest = found.groups?.['r'] !== undefined;
    const place = found.indices?.groups?.[isRest ? 'r' : 'p']?.[0];
    if (place === undefined) continue;
    const figure = sentence.tokenAt(place);
    const solved = solvedBefore(tokens, sentence.tokenAt(found.index));
    if (!solved) continue;
    const [lye, water] = solved;
    const [a, w] = [weightAt(tokens, lye.figure, figure), weightAt(tokens, water.figure, figure)];
    const said = weightAt(tokens, figure, figure);
    const went = isRest ? a + w - said : said;
    const kept = sentences.some(
      (one) => lye.at >= one.from && water.at < one.to && isStock.test(lettered(tokens, one)),
    );
    if (!(went < a + w - 1e-6 && (kept || (went > a && went > leastPoured * (a + w))))) continue;
    const next = sentences[k + 1];
    const isNear = (one: Sentence | undefined): one is Sentence =>
      one !== undefined && one.paragraph === sentence.paragraph;
    const first = Math.min(lye.at, lye.figure, water.at, water.figure);
    const before = sentences.filter(({ to }) => to > first && to <= sentence.from).slice(-mostBefore);
    const tale = [...before, sentence, ...(isNear(next) && rested.test(next.text) ? [next] : [])];
    const rows = new Set(
      rowsBefore(tokens, tokens.length).flatMap((row) => (isStuff(tokens[row.at]) ? [row.figure] : [])),
    );
    const figures = tale.flatMap(({ from, to }) => figuresIn(tokens, from, to)).filter((at) => !rows.has(at));
    const is = (at: number, ...weights: readonly number[]): boolean =>
      weights.some((one) => isSum(one, weightAt(tokens, at, figure)));
    const own = figures.filter((at) => at >= sentence.from);
    const isWhole = figures.some((at) => is(at, a + w) && at !== lye.figure && at !== water.figure);
    const isLeft = own.some((at) => at !== figure && is(at, a + w - went));
    if (!(isWhole || isLeft || speaksOfIt.test(text))) continue;
    const agrees = own.every((at) => is(at, went, a + w - went, a + w) || at === lye.figure || at === water.figure);
    const around = `${text} ${isNear(next) ? next.text : ''}`;
    const isSure =
      agrees &&
      // "just the half of it, 300 g of the solution"
      !open.test(text.replace(/\b(?:the |a )?half of (?:it|that) ?,/, '')) &&
      !unsure.test(found.groups?.['rough'] ?? '') &&
      !restIn.test(around.replace('#', ''));
    if (!isSure) {
      const [begin, end] = [tokens[sentence.from], tokens[sentence.to - 1]];
      return { ...none, unheard: rawText(prims, begin?.from ?? 0, end?.to ?? 0).trim() };
    }
    const out = [...tokens];
    const share = went / (a + w);
    const texts = [lye, water].map(({ at, figure: row }) => {
      const [weight, name] = [out[row] as Figure, out[at]];
      const now = withValue(weight.quantity, weight.quantity.value * share);
      out[row] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
      return `${now.text} of ${name?.t === 'name' ? name.text : ''}, not ${written(weight.quantity)}`;
    });
    for (const at of figures) {
      const token = out[at];
      if (at !== lye.figure && at !== water.figure && token?.t === 'quantity' && is(at, went, a + w - went, a + w))
        out[at] = asAside(token, 'a part of what was said');
    }
    const to = tale.at(-1)?.to ?? sentence.to;
    for (let at = sentence.tokenAt(found.index); at < to; at++) {
      const token = out[at];
      if (isIngredient(token) && rowsAmong([lye, water], tokens, token).length > 0 && at !== lye.at && at !== water.at)
        out[at] = asFiller(token);
      else if (token && (isRole(token, 'solution') || isRole(token, 'total-fats') || stockName(token)))
        out[at] = asFiller(token);
    }
    const line = `I took ${texts.join(', and ')}, the part of the solution that went in as the post says.`;
    return { tokens: out, told: [{ text: line, gone: [], from: first, to, settles: true }], unheard: null };
  }
  return none;
}

/** What is weighed in the list besides the two. */
const isStuff = (token: Token | undefined): boolean =>
  isIngredient(token) && /^(?:fat|liquid|acid|additive|scent)$/.test(token.meaning.kind);
const rested = /\b(?:rest|last|remaining|remainder|left|stays|stayed|jug)\b/;
const leastPoured = 0.4;
const mostBefore = 4;
const stockName = (token: Token): boolean => token.t === 'name' && token.meaning.kind === 'stock';

function figuresIn(tokens: readonly Token[], from: number, to: number): readonly number[] {
  const found: number[] = [];
  for (let at = from; at < to; at++) if (isPlain(tokens[at])) found.push(at);
  return found;
}

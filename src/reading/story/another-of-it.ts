/**
 * "I weighed 90 g of NaOH. Then I saw that I need more, so I weighed another 22 g and dissolved it, too", "there were only
 * 58 g of lye left in the old tub, so I opened the new one for another 70 g": more of what was weighed last, without its name.
 * Where it may be of two things, nobody knows.
 */
import { alike, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient, isMark, isRole, isStop, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, type Name, rowsBefore } from './tale.ts';

const ahead = /^(?:another|additional|further|extra)$/;
const behind = /^(?:more|extra|additional)$/;
/** Somebody has done it. */
const did =
  /\b(?:weighed|added|put|took|opened|poured|tipped|used|dissolved|went|gave|melted|shook|stirred|threw|spooned|scooped|sprinkled|mixed|measured)\b/;
const open =
  /\?|\b(?:if|should|shall|would|could|can|may|might|maybe|perhaps|or|next|want to|wanted|going to|needs?(?= #)|needed(?= #)|not|never|didnt|dont|no|said|says|than|last (?:time|batch|week|month|year)|each|every|minutes?|hours?|fragrance|scent|later|tomorrow|thin\w*|dilut\w*|bars?|left over|instead|batch|soap|loaf|sister|friend|mother|neighbour|she|he|they)\b/;
/** Sentences ahead in which it was weighed. */
const reach = 2;

/** The figure of "another 22 g" or "22 g more" that has no name beside it; -1 for none. */
function moreIn(tokens: readonly Token[], { from, to }: Sentence): number {
  for (let k = from; k < to; k++) {
    if (!isPlain(tokens[k])) continue;
    const isAhead = ahead.test(spoken(tokens[k - 1]));
    const isBehind = behind.test(spoken(tokens[k + 1])) && !endsDotted(tokens[k]);
    if (!isAhead && !isBehind) continue;
    let next = isBehind ? k + 2 : k + 1;
    while (/^(?:plain|pure|cold|warm|fresh|distilled|the|my)$/.test(spoken(tokens[next]))) next++;
    const isEnd = endsDotted(tokens[k]);
    const isOf = spoken(tokens[next]) === 'of' && !/^(?:it|that|this|them)$/.test(spoken(tokens[next + 1]));
    // "36 g more in 60 g water": a lye of its own
    const isIn = /^(?:in|into|with|to)$/.test(spoken(tokens[next])) && tokens[next + 1]?.t === 'quantity';
    if (!isEnd && (isOf || isIn || tokens[next]?.t === 'name' || tokens[next]?.t === 'quantity')) return -1;
    return k;
  }
  return -1;
}

/** What was weighed last before token `k`: its name and its figure. */
function lastWeighed(tokens: readonly Token[], first: number, k: number): readonly Weighed[] {
  return rowsBefore(tokens, k).filter(({ at, figure }) => at >= first && figure >= first && figure < k);
}

/** The one of two that is dissolved. */
const dissolved = /\b(?:dissolv\w*|lye|caustic|granules|beads|flakes)\b/;

/** The list with the sum. */
export function anotherOfIt(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => ahead.test(spoken(token)) || behind.test(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [n, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const k = moreIn(tokens, sentence);
    const more = tokens[k];
    if (k < 0 || !isPlain(more) || !did.test(sentence.text)) continue;
    const clause = clauseAround(tokens, sentence, k);
    if (/\b(?:normally|usually|always|each time)\b/.test(sentence.text)) continue;
    if (open.test(clause) || open.test(sentence.text.replace(/[^,.;]*$/, '').slice(-40))) continue;
    // "lavender 20 g, and I added another 5 g"
    if (!/^(?:fat|alkali|liquid|water)$/.test(kindAt(tokens, lastNamed(tokens, k)))) continue;
    let first = sentence.from;
    let rows = lastWeighed(tokens, first, k);
    for (let back = 1; back <= reach && rows.length === 0; back++) {
      first = sentences[n - back]?.from ?? first;
      rows = lastWeighed(tokens, first, k);
    }
    const things = new Set(rows.map(({ at }) => thingOf(tokens[at] as Name)));
    const alkali = rows.filter(({ at }) => kindAt(tokens, at) === 'alkali');
    const isLye = things.size === 2 && alkali.length === 1 && dissolved.test(clause);
    // "so little coconut left in the tub that we scraped it in, another 34 g": what was spoken of last
    const last = lastNamed(tokens, k);
    const spokenOf = rows.some(({ at }) => at === last)
      ? undefined
      : rows.filter(({ id }) => id === thingAt(tokens, last));
    // "so 108 g all told"
    const summed = rows.filter(({ figure }) => sumBehind(tokens, figure, k) >= 0);
    const row =
      spokenOf?.length === 1
        ? spokenOf[0]
        : things.size === 1
          ? rows.at(-1)
          : isLye
            ? alkali[0]
            : summed.length === 1
              ? summed[0]
              : undefined;
    if (!row) {
      if (rows.length === 0) continue;
      return { ...none, unheard: rawText(prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 0) };
    }
    const name = tokens[row.at] as Name;
    const weight = tokens[row.figure];
    // a list that has it once more says what there is in all
    const again = rowsBefore(tokens, tokens.length).filter(({ id }) => id === thingOf(name));
    if (!isPlain(weight) || again.length > 1) continue;
    const next = alike(more.quantity, weight.quantity);
    if (next.dim !== weight.quantity.dim) continue;
    const sum = withValue(weight.quantity, weight.quantity.value + next.value);
    const out = [...tokens];
    out[row.figure] = { ...weight, quantity: { ...sum, numbers: weight.quantity.numbers } } as Figure;
    out[k] = asAside(more, 'a part of what was said');
    for (let at = Math.max(row.at, row.figure) + 1; at < k; at++) {
      const token = out[at];
      if (token?.t === 'word') out[at] = asFiller(token);
    }
    const total = sumBehind(tokens, row.figure, k);
    const all = out[total];
    if (isPlain(all)) {
      out[total] = asAside(all, 'a total that agrees');
      for (const at of [total - 3, total - 2, total - 1, total + 1, total + 2, total + 3]) {
        const token = out[at];
        if (isRole(token, 'total') && token?.t === 'name') out[at] = asFiller(token);
      }
    }
    const text = `I took ${written(weight.quantity)} and ${written(more.quantity)} of ${name.text} together, ${sum.text}.`;
    const from = Math.min(row.at, row.figure);
    return { tokens: out, told: [{ text, gone: [], from, to: sentence.to, settles: true }], unheard: null };
  }
  return none;
}

/** Tokens from the second weight to the sum, at the most. */
const farthest = 16;

/** Where the sum of both stands, right behind the second one; -1 for nowhere. */
function sumBehind(tokens: readonly Token[], figure: number, k: number): number {
  const at = tokens.findIndex((token, n) => n > k && n - k <= farthest && token.t === 'quantity');
  const [one, more, all] = [tokens[figure], tokens[k], tokens[at]];
  if (!isPlain(one) || !isPlain(more) || !isPlain(all)) return -1;
  const like = (of: Figure): number => alike(of.quantity, one.quantity).value;
  return isSum(like(all), like(one), like(more)) ? at : -1;
}

const kindAt = (tokens: readonly Token[], at: number): string => {
  const token = tokens[at];
  return isIngredient(token) ? token.meaning.kind : '';
};

/** Where the ingredient stands that was named last before token `k`; -1 for none. */
function lastNamed(tokens: readonly Token[], k: number): number {
  for (let at = k - 1; at >= 0; at--) if (isIngredient(tokens[at])) return at;
  return -1;
}

const thingAt = (tokens: readonly Token[], at: number): string => {
  const token = tokens[at];
  return isIngredient(token) ? thingOf(token) : '';
};

/** The words of the clause of a figure: between two stops. */
function clauseAround(tokens: readonly Token[], { from, to }: Sentence, k: number): string {
  let [begin, end] = [k, k + 1];
  while (begin > from && !isStop(tokens[begin - 1]) && !isMark(tokens[begin - 1], ',')) begin--;
  while (end < to && !isStop(tokens[end]) && !isMark(tokens[end], ',')) end++;
  return tokens
    .slice(begin, end)
    .map((token) => (token.t === 'quantity' ? '#' : token.t === 'sign' ? token.text : spoken(token)))
    .join(' ');
}

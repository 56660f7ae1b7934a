/**
 * One fat of what was listed goes in so many times: "last time 400 g olive, 200 g coconut … this time I left the olive as
 * it was and doubled the coconut, used 121 g lye". Taken so where the alkali is weighed anew, or the rest is said to stay;
 * "three times the coconut" is no weight in any case.
 */

import { type PutRight, withValue } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { multiples } from '../words/multiples.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowOf, rowsBefore } from './tale.ts';

const verb = '(?<verb>doubled|tripled|trebled|quadrupled|halved)';
const part = '(?<part>half|twice|double|triple|#)';
const many = '(?<many>#) times';
const as = '(?:(?: as much| the (?:amount|quantity|weight))(?: of)?)';
const the = '(?:of |the |my |our |that )*';
const goes = '(?:(?:i|we|was|were|is|went|got|have|had|just|then|only|in|at|with|put|taken|this|time) )*';
const puts =
  '\\b(?:took|take|taking|used|use|using|put|putting|weighed|made|added|tipped|poured|gave it|went with|melted) (?:in )?(?:only |just |exactly |about |a )*';
const patterns = [
  `\\b${verb} ${the}(?:just |only )?(?<fat>@)(?! (?:to|from|and|or|,|&) ?(?:[#@]|the @))`,
  `${puts}${many}${as}? ${the}(?<fat>@)`,
  `${puts}${part}${as} ${the}(?<fat>@)(?! as\\b)`,
  `${puts}(?<part>twice|double|triple|#) ${the}(?<fat>@)(?! as\\b)`,
  `(?<fat>@) ${goes}(?:${verb}|${part} (?:as much|the (?:amount|quantity|weight)|that)|${many} (?:as much|that|the (?:amount|weight)))(?! (?:as|of|to|from)\\b)`,
].map((pattern) => new RegExp(pattern, 'dg'));
const open = new RegExp(
  `\\?|\\b(?:if|would|could|should|might|may|usually|normally|next|nearly|almost|never|not|didnt|he|she|they|her|his|price|scents?|(?:my|our|a) (?:${relations.replaceAll(' ', '|')}))\\b`,
);
const last = /\blast (?:time|week|month|year|batch)\b/;
/** "Everything else as on the card", "left the olive as it was". */
const stays =
  /\b(?:everything|all|anything|nothing|rest|others?|oils|fats|@)(?: (?:else|the|of|it|that|oils|fats|i|we|have|has|is|was|were|are|just|only|lines?|amounts?))* (?:as (?:it|they|on|in|is|are|was|were|before|written|listed|planned)|(?:stay|stays|stayed|kept|left|remains?|remained)\b|unchanged|the same|changed)|\b(?:left|kept|keep|leave) (?:the |all |my )*(?:rest|others?|@|everything else) (?:as|alone|the same|at|unchanged)/;
const most = 5;

interface Deed {
  readonly at: number;
  readonly figure: number;
  readonly factor: number;
}

export function oneTimes(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const rows = rowsBefore(tokens, tokens.length);
  if (rows.length === 0) return none;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || !/doubl|tripl|trebl|quadrupl|halv|half|twice|times|#/.test(sentence.text)) continue;
    const deeds = deedsIn(sentence.text, (place) => sentence.tokenAt(place), tokens);
    for (const deed of deeds) {
      const row = rowOf(tokens, tokens[deed.at], sentence.from);
      if (!row || row.at === deed.at) continue;
      const token = tokens[deed.figure];
      out ??= [...tokens];
      if (token?.t === 'quantity') out[deed.figure] = asAside(token, 'how many times as much of it');
      const near = sentences.slice(Math.max(0, k - 1), k + 2);
      const isAnew = rows.some(({ at, id }) => id === 'alkali' && at >= sentence.from);
      const isRest = near.some(({ text, from }) => from > row.at && stays.test(text));
      const isOpen = open.test(sentence.text) || last.test(sentence.text);
      const weight = tokens[row.figure];
      if (isOpen || !(isAnew || isRest) || !isPlain(weight)) continue;
      const now = withValue(weight.quantity, weight.quantity.value * deed.factor);
      out[row.figure] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } } as Figure;
      const name = tokens[row.at];
      told.push({
        text: `I took ${now.text} of ${name?.t === 'name' ? name.text : 'it'}: times ${Number(deed.factor.toPrecision(3))}, as the post says.`,
        gone: [],
        from: sentence.from,
        to: sentence.to,
        settles: true,
      });
    }
  }
  return out ? { tokens: out, told } : none;
}

function deedsIn(text: string, tokenAt: (place: number) => number, tokens: readonly Token[]): readonly Deed[] {
  const deeds = new Map<number, Deed>();
  for (const pattern of patterns)
    for (const found of text.matchAll(pattern)) {
      const { fat, part: said, many: times, verb: how } = found.indices?.groups ?? {};
      const place = said ?? times;
      if (!fat) continue;
      const at = tokenAt(fat[0]);
      const figure = place ? tokenAt(place[0]) : -1;
      const token = tokens[figure];
      const isFigure = token?.t === 'quantity';
      const value = isFigure ? ofFigure(token, times !== undefined) : 0;
      const factor = isFigure ? value : (multiples[how ? text.slice(...how) : place ? text.slice(...place) : ''] ?? 0);
      const name = tokens[at];
      if (!(factor > 0 && factor <= most && factor !== 1) || !isIngredient(name) || !isFat(name)) continue;
      if (!deeds.has(at)) deeds.set(at, { at, figure: isFigure ? figure : -1, factor });
    }
  return [...deeds.values()];
}

/** "Twice", "one and a half"; "1.5" before "times". */
const ofFigure = ({ quantity }: Figure, isTimes: boolean): number =>
  /^(?:bare|ratio)$/.test(quantity.dim) && (isTimes || /^(?:twice|double|triple|thrice)\b/i.test(quantity.text))
    ? ({ twice: 2, double: 2, triple: 3, thrice: 3 }[quantity.text.toLowerCase()] ?? quantity.value)
    : 0;

/**
 * "Coconut oil 190 g, coconut oil 80 g … The 80 g is cocoa butter", "the second coconut should be palm": of two rows by
 * one name, the one that is told by its weight or its place has another name.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isSum, type Name, rowsBefore, weightAt } from './tale.ts';

const places: Readonly<Record<string, 'first' | 'last' | 'least' | 'most'>> = {
  first: 'first',
  upper: 'first',
  top: 'first',
  second: 'last',
  last: 'last',
  latter: 'last',
  lower: 'last',
  bottom: 'last',
  smaller: 'least',
  lesser: 'least',
  larger: 'most',
  bigger: 'most',
};
const one = '(?:one|row|line|entry|lot|@|of (?:them|those|these|the two))';
const which = `(?:the|that|my) (?:(?<f>#)|(?<p>${Object.keys(places).join('|')}))(?: (?:of )?${one})*`;
const really = '(?:really |actually |in fact |of course |meant to be |supposed to be |the |just |all )*';
const is = `(?:(?:is|was|are|were|s) ${really}|(?:should|ought to|must) (?:be|read|say|have (?:been|said|read)) ${really}|means ${really})`;
const makePatterns = (): readonly RegExp[] => [
  new RegExp(`\\b${which} ${is}(?<n>@)`, 'dg'),
  new RegExp(`(?<n>@) (?:is|was|are) ${really}${which.replace('(?:the|that|my) ', '')}`, 'dg'),
];
/** The same, and nobody is sure: "is the 80 g cocoa butter?", "the 80 g is not cocoa butter". */
const makeDoubts = (): readonly RegExp[] => [
  new RegExp(`\\b(?:is|was|are|were) ${which} ${really}(?<n>@)`, 'dg'),
  new RegExp(
    `\\b${which} (?:is not|isnt|was not|wasnt|are not|arent|might (?:be|have been)|may (?:be|have been)|could (?:be|have been)|would be|cant be|is probably|is maybe|is perhaps) ${really}(?<n>@)`,
    'dg',
  ),
];
let made: readonly { readonly pattern: RegExp; readonly isSure: boolean }[] | null = null;
/** Nobody is sure of it, or it is so in another batch. */
const open =
  /\?|\b(?:or|maybe|perhaps|probably|think|guess|not sure|unsure|if|could|might|may|would|not|isnt|wasnt|next|last (?:time|batch|week|month|year)|usually|normally|her|his|their|book|swap|swapped|instead|replaced|only|left|short|too)\b/;
/** Said right before it: what was written was wrong. */
const slip = /\b(?:twice|two times|again|same|both|wrong|oops|sorry|oh|typo|mistake|slip)\b/;

/** Two or more rows by one name, each of another weight. */
function twins(tokens: readonly Token[]): readonly (readonly Weighed[])[] {
  const rows = rowsBefore(tokens, tokens.length).filter(({ at }) => isFat(tokens[at]));
  return [...Map.groupBy(rows, ({ id }) => id).values()].filter(
    (list) =>
      list.length > 1 &&
      list.every(({ figure }, k) =>
        list
          .slice(k + 1)
          .every((other) => !isSum(weightAt(tokens, figure, figure), weightAt(tokens, other.figure, figure))),
      ),
  );
}

/** The row of them at that place. */
function placed(tokens: readonly Token[], rows: readonly Weighed[], word: string): Weighed | null {
  const place = places[word];
  const [first, last] = rows;
  if (!place || !first || !last || rows.length !== 2) return null;
  if (place === 'first') return first;
  if (place === 'last') return last;
  const isLess = weightAt(tokens, first.figure, first.figure) < weightAt(tokens, last.figure, first.figure);
  return isLess === (place === 'least') ? first : last;
}

/** The list with such rows by the names that they are told to have. */
export function rowNamed(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  const pairs = twins(tokens);
  if (pairs.length === 0) return none;
  const sentences = sentencesOf(cut);
  const out = [...tokens];
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    const rows = pairs.find((list) => list.every(({ at, figure }) => Math.max(at, figure) < sentence.from));
    if (!rows || sentence.names === 0) continue;
    made ??= [
      ...makePatterns().map((pattern) => ({ pattern, isSure: true })),
      ...makeDoubts().map((pattern) => ({ pattern, isSure: false })),
    ];
    for (const { pattern, isSure } of made)
      for (const found of sentence.text.matchAll(pattern)) {
        const token = (group: string): number => {
          const place = found.indices?.groups?.[group]?.[0];
          return place === undefined ? -1 : sentence.tokenAt(place);
        };
        const [figure, name] = [token('f'), out[token('n')]];
        if (!isFat(name)) continue;
        const fits =
          figure < 0
            ? [placed(tokens, rows, spoken(tokens[token('p')]))].filter((row) => row !== null)
            : rows.filter((row) =>
                isSum(weightAt(tokens, row.figure, row.figure), weightAt(tokens, figure, row.figure)),
              );
        const [row] = fits;
        // "the sunflower oil is 160 g", and none of them weighs so much
        if (!row && (figure < 0 || token('n') < figure)) continue;
        if (!row || fits.length > 1 || !isSure || open.test(sentence.text)) {
          const [begin, end] = [tokens[sentence.from], tokens[sentence.to - 1]];
          return { ...none, unheard: rawText(prims, begin?.from ?? 0, end?.to ?? 0).trim() };
        }
        const [first, last] = [sentence.tokenAt(found.index), sentence.tokenAt(found.index + found[0].length - 1)];
        const [own, weight] = [tokens[row.at] as Name, tokens[row.figure] as Figure];
        if (thingOf(name) !== row.id)
          out[row.at] = { ...own, meaning: name.meaning, how: name.how, text: name.text, meant: name.meant };
        for (let at = first; at <= last; at++) {
          const again = out[at];
          if (again?.t === 'quantity') out[at] = asAside(again, 'said again');
          else if (isIngredient(again)) out[at] = asFiller(again);
        }
        const before = sentences[k - 1];
        const isSlip = before && before.figures === 0 && slip.test(before.text);
        if (isSlip)
          for (let at = before.from; at < before.to; at++) {
            const again = out[at];
            if (isIngredient(again) && thingOf(again) === row.id) out[at] = asFiller(again);
          }
        told.push({
          text: `I took the ${weight.quantity.text} as ${name.text}, as the post says.`,
          gone: [],
          from: isSlip ? before.from : sentence.from,
          to: sentence.to,
          settles: true,
        });
      }
  }
  return told.length > 0 && isAny(out, 0, out.length, (token, at) => token !== tokens[at])
    ? { tokens: out, told, unheard: null }
    : none;
}

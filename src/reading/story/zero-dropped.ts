/**
 * "20 g coconut … 200 of course, dropped a zero": the row whose figure lacks a digit of the one told there, or has one more,
 * has that one. Where none or several do, it is asked.
 */

import { reweighed, withValue } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { spoken } from '../words/token-is.ts';
import { asAside, type Figure } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

const zero = '(?:zero|nought|naught|0|digit)';
const slip = new RegExp(
  [
    `\\b(?:dropped|forgot|missed|lost|left (?:off|out)|skipped|swallowed|ate|slipped|one|a) (?:an? |the |that |one |last |extra )*${zero}(?: (?:is|was|went|got))*(?=[ ]*(?:there|missing|lost|too (?:few|many)|[.,;:!)]|$))`,
    `\\btyped (?:an? |one )?${zero} too (?:few|many)\\b`,
  ].join('|'),
);
const cues: ReadonlySet<string> = new Set(
  'dropped forgot missed lost left skipped swallowed ate slipped few many missing'.split(' '),
);

/** The list with the figure that was meant. */
export function zeroDropped(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const said = ({ from, to }: Sentence): string =>
    rawText(prims, tokens[from]?.from ?? 0, tokens[to - 1]?.to ?? 0).trim();
  for (const sentence of sentencesOf(cut)) {
    if (!slip.test(said(sentence).toLowerCase())) continue;
    const rows = [...rowsBefore(tokens, tokens.length), ...rowsOfAlkali(tokens, tokens.length)];
    // "sorry, 200 coconut": by its name it is heard elsewhere
    if (rows.some(({ figure }) => figure >= sentence.from && figure < sentence.to)) continue;
    const isOfRow = (k: number): boolean => rows.some(({ figure }) => figure === k);
    const meant = tokens.flatMap((token, k) =>
      k >= sentence.from && k < sentence.to && isPlain(token) && token.quantity.value > 0 && !isOfRow(k) ? [k] : [],
    );
    const [at] = meant;
    const fits =
      at === undefined
        ? []
        : rows.filter(({ figure }) => {
            const [old, now] = [weightAt(tokens, figure, figure), weightAt(tokens, at, figure)];
            return isSum(10 * old, now) || isSum(old, 10 * now);
          });
    const figures = new Set(fits.map(({ figure }) => figure));
    const [row] = figures;
    if (at === undefined || meant.length > 1 || figures.size !== 1 || row === undefined)
      return { ...none, unheard: said(sentence) };
    const [weight, figure] = [tokens[row] as Figure, tokens[at] as Figure];
    const value = weightAt(tokens, at, row);
    const out = tokens.map((token, k) => {
      if (k === row) return reweighed(weight, value);
      // "20??"
      const isAgain = isPlain(token) && !isOfRow(k) && isSum(weightAt(tokens, k, row), weight.quantity.value);
      if (k >= sentence.from && k < sentence.to && token.t === 'quantity' && token.quantity.value === 0)
        return asAside(token, 'a count');
      return k === at || isAgain ? asAside(token as Figure, k === at ? 'said again' : 'taken back') : token;
    });
    const name = tokens[fits[0]?.at ?? -1];
    const of = name?.t === 'name' ? ` of ${name.text}` : '';
    const text = `I took ${written(figure, value, weight)}${of}, not ${weight.quantity.text}, as the post corrects itself.`;
    return {
      tokens: out,
      told: [{ text, gone: [], from: sentence.from, to: sentence.to, settles: true }],
      unheard: null,
    };
  }
  return none;
}

const written = (figure: Figure, value: number, weight: Figure): string =>
  figure.quantity.dim === 'bare' ? withValue(weight.quantity, value).text : figure.quantity.text;

/** Alkali told as a share of the fats: "lye is 13 % of the oil", "13 % NaOH of the fat weight". */

import { sentenceAt, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { type Assembly, label, type Row, roundTo } from './rows.ts';

/** Alkali to fats by mass, in soaps that people make. */
const usual = { least: 0.08, most: 0.3 } as const;
/** A solution as thin as that is mixed by nobody. */
const thinnest = 0.2;
/** Up to this it is a superfat. */
const thickest = 0.1;

const between = /^(?:of|from|the|my|all|total|these|those|by|weight|on|in|at)$/;
const fatty = /^(?:oils?|fats?|butters?|oil weight|fat weight|total oils|oils weight)$/;

/** "… of the oils", "… of the olive", "… of that" behind a share. */
function isOfFats(tokens: readonly Token[], k: number): boolean {
  let isOf = false;
  for (let at = k + 1; at - k <= 6; at++) {
    const token = tokens[at];
    const word = spoken(token);
    if (word === 'of' || word === 'on' || word === 'from') isOf = true;
    else if (token?.t === 'name' && token.meaning.kind === 'fat') return isOf;
    else if (token?.t === 'name' && token.meaning.kind === 'role' && /^(?:total-fats|total)$/.test(token.meaning.id))
      return true;
    else if (fatty.test(word)) return isOf || at === k + 1;
    else if (isOf && /^(?:that|it|them)$/.test(word)) return true;
    else if (!between.test(word) && !(token?.t === 'name' && token.meaning.kind === 'alkali')) return false;
  }
  return false;
}

/** What somebody says that everybody does. */
const hearsay =
  /\b(?:told|says?|said|heard|read|rule|thumb|always|usually|normally|people|somebody|someone|they|friend|would|should|about|roughly)\b/;
const longestLook = 24;

const isHearsay = (tokens: readonly Token[], k: number): boolean => {
  const { from, to } = sentenceAt(tokens, k, longestLook);
  return hearsay.test(tokens.slice(from, to).map(spoken).join(' '));
};

/** The rows with alkali that is a share of the fats as what it weighs. */
export function lyeOfFats(assembly: Assembly, rows: readonly Row[], fatGrams: number): readonly Row[] {
  const lyes = rows.filter(({ named }) => named.meaning.kind === 'alkali');
  // "NaOH for 70 % of the fat and KOH for 30 % of the fat"
  if (fatGrams <= 0 || lyes.some(({ grams }) => grams !== null) || lyes.filter(({ share }) => share).length !== 1)
    return rows;
  const { tokens } = assembly.source;
  return rows.map((row) => {
    const { named, share, amount } = row;
    if (named.meaning.kind !== 'alkali' || !share || amount || share.value < usual.least || share.value > usual.most)
      return row;
    const at = tokens.findIndex((token) => token.t === 'quantity' && token.quantity.numbers[0] === share.numbers[0]);
    if (at < 0 || !isOfFats(tokens, at) || isHearsay(tokens, at)) {
      if (
        share.value < thinnest &&
        share.value > thickest &&
        !assembly.asksForAlkali() &&
        !(at >= 0 && isHearsay(tokens, at))
      )
        assembly.doubts.push({ id: 'alkali-percent', said: share.text, of: label(assembly, named.meaning) });
      return row;
    }
    const grams = share.value * fatGrams;
    assembly.assume('shares', `I took the ${named.text} as ${share.text} of the fats: ${roundTo(grams, 1)} g.`);
    return { ...row, grams, share: null };
  });
}

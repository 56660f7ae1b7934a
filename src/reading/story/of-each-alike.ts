/**
 * "0.9 kg fat, this is tallow, coconut and sunflower, from every one the same weight": fats without a weight of their own,
 * and words behind them that they are alike. They are equal parts of the total.
 */
import { once } from '../once.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { plainQuantity } from '../words/quantities.ts';
import { isFat, isIngredient, isMark, isRole, isWeight, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { rowsBefore } from './tale.ts';

const alike =
  '(?:(?:the |a |in )?(?:same|equal|identical|like)(?: (?:weight|amount|quantity|mass|much|share|part|portion|grams?))?|equally|alike)';
const each =
  '(?:(?:each|every|both|all)(?: (?:one|single|of (?:them|these|those|the (?:two|three|four|five))|kind|fat|oil|#|two|three|four))*)';
const patterns = once(
  () =>
    new RegExp(
      `\\b(?:(?:from|of|for|with|in) )?${each} (?:(?:is|are|has|have|weighs?|in|takes?|,) )*${alike}(?= |$)|\\b${alike} (?:of|from|for) ${each}(?= |$)`,
    ),
);
const cues: ReadonlySet<string> = new Set('same equal equally alike identical'.split(' '));
const leastFats = 2;
const ofFats = { kind: 'role', id: 'total-fats' } as const;

const isFatWord = (token: Token): boolean => 'text' in token && /^(?:fat|oil)$/i.test(token.text);

/** The tokens with "equal parts" before the names. */
export function ofEachAlike(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  if (
    !tokens.some((token) =>
      spoken(token)
        .split(' ')
        .some((word) => cues.has(word)),
    )
  )
    return tokens;
  for (const sentence of sentencesOf(cut)) {
    const found = patterns().exec(sentence.text);
    if (!found) continue;
    const [from, to] = [sentence.tokenAt(found.index), sentence.tokenAt(found.index + found[0].length - 1) + 1];
    let last = from - 1;
    while (last >= sentence.from && !isIngredient(tokens[last])) last--;
    // names with commas and "and" between them
    const names: number[] = [];
    for (let at = last; at >= sentence.from; at--) {
      const token = tokens[at];
      if (isFat(token)) names.unshift(at);
      else if (!(isMark(token, ',+&') || /^(?:and|with|plus)$/.test(spoken(token)))) break;
    }
    const [first] = names;
    const rows = rowsBefore(tokens, tokens.length);
    if (first === undefined || names.length < leastFats || rows.some(({ at }) => isFat(tokens[at]))) continue;
    if (tokens.some((token, at) => isFat(token) && !names.includes(at))) continue;
    const out = [...tokens];
    for (let at = from; at < to; at++) out[at] = asFiller(tokens[at] as Token);
    const place = first > sentence.from ? first - 1 : -1;
    const before = tokens[place];
    // "0.9 kg fat"
    const whole = tokens.findIndex(
      (token, at) => isRole(token, 'heading') && isFatWord(token) && isWeight(tokens[at - 1]),
    );
    const total = tokens[whole];
    if (total)
      out[whole] = {
        t: 'name',
        from: total.from,
        to: total.to,
        text: 'fat',
        meaning: ofFats,
        how: 'name',
        meant: 'fats',
      };
    const quantity = {
      ...plainQuantity,
      dim: 'parts' as const,
      value: 1,
      each: true,
      text: 'equal parts',
      numbers: [],
    };
    if (before && (before.t === 'word' || before.t === 'sign'))
      out[place] = { t: 'quantity', from: before.from, to: before.to, quantity };
    else out[from] = { t: 'quantity', from: tokens[from]?.from ?? 0, to: tokens[from]?.to ?? 0, quantity };
    return out;
  }
  return tokens;
}

/**
 * The lye that somebody else takes, beside what the writer took: "my neighbour takes always 130 g for the same fats", where
 * the lye is weighed, and "my sister insists on 142 g of lye for this one … I put in 137 g this morning", where it is not.
 */

import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { endsDotted, isIngredient, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, lettered, rowsBefore, rowsOfAlkali } from './tale.ts';

const softly = '(?:(?:always|usually|normally|just|only|now|she|he|they|about|once|still|would|in|on|with) )*';
const theirs = new RegExp(
  `\\b(?:(?:my|our|the|a|one|his|her|that) )?(?:[a-z]+ )?(?:${relations.trim().replace(/ /g, '|')})s? ${softly}(?:takes?|took|uses?|used|puts?|has|had|does|did|says?|said|insists?|swears? by|recommends?|goes|thinks|reckons|wants) ${softly}(?<a>#)(?: (?:of )?(?:the )?L)?(?<of> (?:for|with|in|on|of) (?:exactly |just )?(?:the |these |those |this |that |her |his |our |my )*(?:same|very same|these|those|this|that|it|them|one|oils|fats|recipe|amounts?|list)\\b[^#@FL.;,?]{0,20})?`,
  'd',
);
const mine =
  /\b(?:i|we|ive|weve) (?:(?:have|had|just|only|actually|then|now|myself|did|really|finally) )*(?:put in|put|used|took|weighed|added|poured in|poured|dissolved|went with|stayed (?:at|with)|stopped at) (?:(?:in|out|only|just|at|about|exactly) )*(?<o>#)(?! (?:of )?(?:the )?[@FL])/d;
const open = /\b(?:if|next|last (?:time|batch|year|month|week)|more|less|extra|another)\b/;
/** Of what others take it has so much, at the least and at the most. */
const [leastOf, mostOf] = [0.65, 1.6];

const textOf = (tokens: readonly Token[], sentence: Sentence): string =>
  lettered(tokens, sentence.text, (place) => sentence.tokenAt(place));

const isFew = (a: Figure, b: Figure): boolean => {
  const share = alike(a.quantity, b.quantity).value / b.quantity.value;
  return share >= leastOf && share <= mostOf;
};

/** The figure of the writer's own, without a name; null where there is none or several. */
function ownOf(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
): { readonly figure: number; readonly told: Sentence } | null {
  const found = sentences.flatMap((told) => {
    const text = textOf(tokens, told);
    const place = open.test(text) ? undefined : mine.exec(text)?.indices?.groups?.['o']?.[0];
    return place === undefined ? [] : [{ figure: told.tokenAt(place), told }];
  });
  const [own, ...more] = found;
  return own && more.length === 0 && !endsOther(tokens, own.figure) ? own : null;
}
/** "137 g. Coconut …" is of no coconut; "137 g coconut" is. */
const endsOther = (tokens: readonly Token[], k: number): boolean =>
  !endsDotted(tokens[k]) && isIngredient(tokens[k + 1]);

/** The tokens without what others take. */
export function othersTake(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => kin.has(spoken(token).replace(/s$/, '')))) return none;
  const sentences = sentencesOf(cut);
  const lyes: readonly Weighed[] = [
    ...new Map(
      [...rowsBefore(tokens, tokens.length), ...rowsOfAlkali(tokens, tokens.length), ...sodaIn(tokens)]
        .filter(({ at }) => isIngredient(tokens[at]) && /^(?:alkali|ambiguous)$/.test(tokens[at].meaning.kind))
        .map((row) => [row.figure, row]),
    ).values(),
  ];
  for (const sentence of sentences) {
    const text = textOf(tokens, sentence);
    const found = theirs.exec(text);
    const place = found?.indices?.groups?.['a']?.[0];
    if (!found || place === undefined || open.test(found[0])) continue;
    const figure = sentence.tokenAt(place);
    const other = tokens[figure];
    const [row, ...more] = lyes.filter((one) => one.figure !== figure);
    const own = lyes.find((one) => one.figure === figure);
    const weight = tokens[row?.figure ?? -1];
    if (!isPlain(other)) continue;
    const out = [...tokens];
    const [from, to] = [sentence.tokenAt(found.index), sentence.tokenAt(found.index + found[0].length - 1) + 1];
    for (let k = from; k < to; k++) {
      const one = out[k];
      if (one?.t === 'name' && k !== own?.at) out[k] = asFiller(one);
    }
    const told = (more: number, also: Sentence): PutRight => ({
      text: `I took ${written((tokens[more] as Figure).quantity)} of the lye, not ${written(other.quantity)}, which others take or say.`,
      gone: [other.quantity],
      from: also.from,
      to: also.to,
      settles: true,
    });
    // the lye is weighed beside it
    if (row && more.length === 0 && !own && found.groups?.['of'] && isPlain(weight) && isFew(weight, other)) {
      out[figure] = setApart(other, 'what somebody else says');
      return { tokens: out, told: [told(row.figure, sentence)] };
    }
    if (!own || row) continue;
    const taken = ownOf(
      tokens,
      sentences.filter((one) => one !== sentence),
    );
    const is = tokens[taken?.figure ?? -1];
    if (!taken || !isPlain(is) || !isFew(is, other)) continue;
    const numbers = [...other.quantity.numbers, ...(endsDotted(is) ? is.quantity.numbers : [])];
    out[figure] = {
      ...other,
      quantity: { ...withValue(other.quantity, alike(is.quantity, other.quantity).value), numbers },
    };
    out[taken.figure] = setApart(is, 'said before');
    return { tokens: out, told: [told(taken.figure, sentence), { ...told(taken.figure, taken.told), gone: [] }] };
  }
  return none;
}

/** "Soda", which may be lye. */
const sodaIn = (tokens: readonly Token[]): readonly Weighed[] =>
  tokens.flatMap((token, at) => {
    const figure = [at + 1, at - 1].find((near) => isPlain(tokens[near])) ?? -1;
    return isIngredient(token) && token.meaning.kind === 'ambiguous' && token.meaning.id === 'soda' && figure >= 0
      ? [{ at, figure, id: 'alkali' }]
      : [];
  });

const kin: ReadonlySet<string> = new Set(relations.trim().split(/\s+/));

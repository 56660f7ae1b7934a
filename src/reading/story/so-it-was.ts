/**
 * So much is usual, or the recipe has it, and so much it was: "I normally stir in 60 g shea after the cook, this time there
 * were only 40 g in the jar so 40 it was", "usually 60 g shea goes in, today it got 40 g", "the tutorial stirs in 80 g of
 * shea but I only put in 50 g". The weight of this time counts where the fat has no other one.
 */

import { once } from '../once.ts';
import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { papers, relations, seasons, uses } from '../words/cue-words.ts';
import { endsDotted, isIngredient, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

/** "So 40 it was", "and 40 g went in". */
const again =
  /(?<a>#) [^@#?]{0,40}?\b(?:so|and|then|hence|therefore|thus|well|;|,|-|–|—) (?:(?:so|and|then|well|just|only|i used|i took|i put in|its|it was|,) )*(?<b>#) (?:(?:of it )?(?:it|that) (?:is|was|had|has|will|ll|would|became|s)\b|it(?:ll)? (?:be|s)\b|(?:of it )?(?:is|was) what\b|(?:of it )?went in\b)/d;
/** "I only had 2 lb so it's 2": the same figure, and nothing that it would be of. */
const onlyHad =
  /(?<a>#)(?! (?:of )?@) [^@#?]{0,30}?\b(?:so|and|then|hence) (?:(?:so|then|well|just|only) )*(?:its|it is|it was|thats|that is|it became|make that|made it|i took|i used|i went with|went with) (?:just |only |now )*(?<b>#)(?! (?:of )?@)/d;
const usually =
  /\b(?:usually|normally|always|generally|typically|as a rule|(?:recipe|book|card|original|list|sheet) (?:has|had|says|said|wants|wanted|takes|took|asks for|calls for|gives))\b/;
const thisTime =
  /[,;:–—-] (?:(?:but|and|yet|only|so) )*(?:today|this time|tonight|now|here|in this (?:one|batch)) (?:(?:it|i|we|there|only|just|got|gets|was|were|is|are|had|have|has|used|use|took|take|put|in|went|goes|gave|added|stirred|poured|weighed|with|a|mere|of it|about|about) )+(?<a>#)(?! (?:of )?@)/d;
/** What somebody else does with it, or a paper, and what the writer did. */
const theirs = once(
  () =>
    new RegExp(
      `\\b(?:${[papers, relations, uses.others, 'tutorial she he they original teacher lady guy woman man'].join(' ').trim().replace(/ /g, '|')})s?\\b(?: [a-z]+){0,2}? (?:stirs?|stirred|adds?|added|puts?|uses?|used|takes?|took|wants?|wanted|calls?|called|says?|said|has|had|gives?|gave|folds?|melts?|goes|went|asks?|asked|needs?|needed|recommends?|tells?|told)\\b[^@#?]{0,24}(?:# (?:of )?(?:the )?@|@ #)`,
    ),
);
const mine =
  /(?:[,;:–—-] |\b(?:but|and|yet|while|whereas|though|only) )(?:(?:but|and|yet|so|then|only) )*(?:i|we|ive|weve) (?:(?:only|just|have|had|actually|myself|did|then) )*(?:put in|put|used|took|gave|added|stirred in|poured in|poured|went with|weighed|settled on|stopped at|folded in|melted in|use|take|add|stir in|go with) (?:(?:it|in|only|just|about|a|mere|with|at) )*(?<a>#)(?! (?:of )?(?:the |my )?@| (?:of (?:it|that|them|those) )?(?:aside|away|back|by|for|to|in (?:the|a|my) (?:fridge|freezer|cupboard|jar|tub|tin|bottle)))/d;
const otherwise =
  /\b(?:more|extra|another|less|fewer|on top|if|would|might|maybe|perhaps|next|instead|both|each|twice|she|he|they)\b/;
/** Of another batch. */
const elsewhen = new RegExp(
  `\\b(?:${seasons.replaceAll(' ', '|')}|ago|once|yesterday|previous|earlier|last (?:time|batch|week|month|year))\\b`,
);
/** "40 g extra". */
const behind = 12;
/** Of what is usual it has so much, at the least and at the most. */
const [leastOf, mostOf] = [0.1, 4];

interface Told {
  readonly row: Weighed;
  readonly now: number;
  readonly same: number | null;
}

function toldIn(tokens: readonly Token[], sentences: readonly Sentence[], k: number): Told | null {
  const sentence = sentences[k];
  if (!sentence || sentence.figures < 2) return null;
  const text = sentence.text.replace(/[@#]/g, (sign, place: number) => {
    const token = tokens[sentence.tokenAt(place)];
    if (sign === '@') return isIngredient(token) ? '@' : '&';
    return isPlain(token) ? '#' : '…';
  });
  const found =
    again.exec(text) ??
    onlyHad.exec(text) ??
    (usually.test(text) ? thisTime.exec(text) : null) ??
    (/\b(?:i|we|ive|weve) /.test(text) && !elsewhen.test(text) && theirs().test(text) ? mine.exec(text) : null);
  const groups = found?.indices?.groups;
  if (!found || !groups?.['a']) return null;
  const [now, same] = [groups['a'], groups['b']].map((place) => (place ? sentence.tokenAt(place[0]) : -1)) as [
    number,
    number,
  ];
  if (same >= 0 && weightAt(tokens, same, now) !== weightAt(tokens, now, now)) return null;
  const rows = rowsBefore(tokens, tokens.length);
  const row = rows.findLast(({ at, figure }) => at < now && figure < now && Math.min(at, figure) >= sentence.from);
  if (!row) return null;
  // nothing else is named between
  for (let at = Math.max(row.at, row.figure) + 1; at < now; at++)
    if (isPlain(tokens[at]) || isOther(tokens[at], row.id)) return null;
  if (rows.some(({ id, figure }) => id === row.id && figure !== row.figure && figure !== now)) return null;
  const place = sentence.placeOf(Math.max(row.at, row.figure));
  if (otherwise.test(text.slice(place, found.index + found[0].length + behind).replace(/\?.*/, ''))) return null;
  const [was, is] = [tokens[row.figure], tokens[now]];
  if (!isPlain(was) || !isPlain(is)) return null;
  const share = alike(is.quantity, was.quantity).value / was.quantity.value;
  return share >= leastOf && share <= mostOf && share !== 1 ? { row, now, same: same >= 0 ? same : null } : null;
}

const isOther = (token: Token | undefined, id: string): boolean => isIngredient(token) && thingOf(token) !== id;

/** Who else does it; and what goes in late, which is told once for both. */
const others = new RegExp(`\\b(?:${[relations, uses.others, 'they'].join(' ').trim().replace(/ /g, '|')})\\b`);
const later = /\b(?:after|cook|cooked|trace|end|later)\b/;

const toldOf = (is: Figure, was: Figure, name: Token | undefined, { from, to }: Sentence): PutRight => ({
  text: `I took ${written(is.quantity)} of ${name?.t === 'name' ? name.text : ''}, not ${written(was.quantity)}, as the post says.`,
  gone: [was.quantity],
  from,
  to,
  settles: true,
});

export function soItWas(cut: Cut): Heard {
  const { tokens } = cut;
  if (!tokens.some((token) => cues.has(spoken(token)))) return { tokens, told: [] };
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    const found = toldIn(tokens, sentences, k);
    if (!found) continue;
    out ??= [...tokens];
    const { row, now, same } = found;
    const [was, is, name] = [tokens[row.figure] as Figure, tokens[now] as Figure, tokens[row.at]];
    const value = alike(is.quantity, was.quantity).value;
    const [first, mark] = [Math.min(row.at, row.figure), out[now - 1]];
    const isLater = later.test(sentence.text.slice(sentence.placeOf(first)));
    // "my sister adds 80 g of castor, I only use 40 g": it stands beside what the writer took
    if (same === null && !isLater && others.test(sentence.text) && name?.t === 'name' && mark?.t === 'word') {
      out[row.figure] = setApart(was, 'what somebody else takes');
      out[row.at] = asFiller(name);
      out[now - 1] = { ...name, from: mark.from, to: mark.to };
      out[now] = { ...is, quantity: { ...alike(is.quantity, was.quantity), numbers: is.quantity.numbers } };
      told.push(toldOf(is, was, name, sentence));
      continue;
    }
    for (const at of same === null ? [now] : [now, same]) {
      const one = out[at] as Figure;
      out[at] = setApart(one, 'said before');
    }
    out[row.figure] = {
      ...was,
      quantity: {
        ...withValue(was.quantity, value),
        numbers: [...was.quantity.numbers, ...(endsDotted(is) ? is.quantity.numbers : [])],
      },
    };
    told.push(toldOf(is, was, name, sentence));
  }
  return { tokens: out ?? tokens, told };
}

/** Words of which one stands in each sentence that says so. */
const cues: ReadonlySet<string> = new Set(
  'so and then usually normally always generally typically recipe book card original list sheet today time tonight now i we ive weve'.split(
    ' ',
  ),
);

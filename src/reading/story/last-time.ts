/**
 * What was in the pot of last time, told beside this one: "last time I had 96 g lye in it and it zapped. So this time
 * 84 g", where the lye of this time has no other weight; "last time I took 137 g, but that was with palm instead of
 * lard", of which nothing is in this pot.
 */

import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isFat, isIngredient, isWeight, setApart, spoken } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { hush, isPlain, lettered, rowsBefore, rowsOfAlkali } from './tale.ts';

const last =
  '(?:(?:the |my |our )?(?:very )?(?:last|previous) (?:time|one|batch|soap|loaf|pot|go|round)|(?:the )?(?:time|batch|one) before|last (?:week|month|year|spring|summer|autumn|fall|winter|sunday|weekend))';
const lastTime = new RegExp(`\\b${last}\\b`);
const done =
  /\b(?:i|we|it|that|this|which|lye|@|L) (?:only |just |had |have )*(?:took|take|had|used|put|did|was|were|went|weighed|made|zapped)\b/;
/** Why figures of it are set aside. */
export const ofLast = 'of last time';

/** "So this time 84 g", "84 g this time", "I took 84 g today". */
const thisTime =
  /\b(?:this time|now|today|tonight|so|hence|this one)\b(?: (?:it|its|i|we|im|ive|is|was|have|had|has|took|take|used|use|put|in|went|with|only|just|down|to|at|this time|now|today|there|are|got|weighed|did|made|make|thats|that|go|going|,|:|=|-))* (?<a>#)(?! (?:of )?(?:@|F))|(?<b>#) (?:of it |in )?(?:this time|now|today|tonight|instead|in this one)\b/d;
/** With another fat than is in this list. */
const withOther =
  /(?<x>[@F]) (?:# )?(?:instead of|in (?:the )?(?:place|stead) of|in lieu of|rather than|and not|not|for) (?:the |my )?(?<y>[@F])/d;
/** "But that was with palm." */
const itsFat =
  /\b(?:was|were|had|made|did|it) (?:(?:still|all|only|then|made|done|it) )*(?:with|of|from) (?:the |my )?(?<x>F)(?! (?:#|and|too))/d;
const ofThis = /\b(?:this (?:time|one|batch)|now|today|tonight|same|again|still|also|too|as well)\b|\?/;
const asksLye = /\bhow (?:much|many) (?:g(?:rams)? (?:of )?)?L\b|\bwhat (?:amount|weight) of L\b|\bL for\b/;
/** Of what was last time it has so much, at the least and at the most. */
const [leastOf, mostOf] = [0.6, 1.6];

const textOf = (tokens: readonly Token[], told: Sentence): string =>
  lettered(tokens, told.text, (place) => told.tokenAt(place));

const near = 2;

/** "96 g lye last time … this time 84 g": the figures of then and now. */
function lyeOf(tokens: readonly Token[], sentences: readonly Sentence[], k: number) {
  const sentence = sentences[k];
  if (!sentence || !lastTime.test(sentence.text)) return null;
  const alkali = [...rowsBefore(tokens, tokens.length), ...rowsOfAlkali(tokens, tokens.length)].filter(({ at }) => {
    const name = tokens[at];
    return isIngredient(name) && name.meaning.kind === 'alkali';
  });
  const then = new Set(alkali.map(({ figure }) => figure));
  const [row] = alkali;
  if (!row || then.size !== 1 || Math.min(row.at, row.figure) < sentence.from || row.figure >= sentence.to) return null;
  const story = joinedAt(sentences, k, near);
  const text = lettered(tokens, story.text, story.tokenAt);
  const begin = sentence.placeOf(Math.max(row.at, row.figure)) + 1;
  const groups = thisTime.exec(text.slice(begin))?.indices?.groups;
  const place = (groups?.['a'] ?? groups?.['b'])?.[0];
  if (
    place === undefined ||
    /[F@L]/.test(text.slice(begin, begin + place)) ||
    /\?/.test(text.slice(begin, begin + place))
  )
    return null;
  const now = story.tokenAt(begin + place);
  const [was, is] = [tokens[row.figure], tokens[now]];
  if (!isPlain(was) || !isPlain(is) || isNamed(tokens, now)) return null;
  const share = alike(is.quantity, was.quantity).value / was.quantity.value;
  return share >= leastOf && share <= mostOf && share !== 1 ? { row, now } : null;
}

const isNamed = (tokens: readonly Token[], k: number): boolean => {
  const at = spoken(tokens[k + 1]) === 'of' ? k + 2 : k + 1;
  return !endsDotted(tokens[k]) && isIngredient(tokens[at]);
};

/** All of a sentence is of last time: what it had was with another fat, or is of the lye that is asked for. */
function isOfThen(tokens: readonly Token[], sentence: Sentence, whole: string): boolean {
  if (sentence.figures === 0 || !lastTime.test(sentence.text) || ofThis.test(sentence.text)) return false;
  const text = textOf(tokens, sentence);
  if (!done.test(text)) return false;
  const rows = rowsBefore(tokens, tokens.length).filter(({ at }) => isFat(tokens[at]));
  const [own, others] = [true, false].map((is) =>
    rows.filter(
      ({ at, figure }) => (Math.min(at, figure) >= sentence.from && Math.max(at, figure) < sentence.to) === is,
    ),
  ) as [typeof rows, typeof rows];
  const weighed = (place: number | undefined): boolean => {
    const name = place === undefined ? undefined : tokens[sentence.tokenAt(place)];
    return isIngredient(name) && others.some(({ id }) => id === thingOf(name));
  };
  const other = withOther.exec(text)?.indices?.groups;
  if (other?.['x'] && other['y']) return !weighed(other['x'][0]) && weighed(other['y'][0]);
  const only = own.length === 0 ? itsFat.exec(text)?.indices?.groups?.['x'] : undefined;
  if (only) return others.length > 0 && !weighed(only[0]);
  const isLye = own.length === 0 && !/[F@]/.test(text) && tokens.slice(sentence.from, sentence.to).some(isWeight);
  return isLye && others.length > 0 && asksLye.test(whole);
}

/** The list without what was in the pot of last time. */
export function lastTimes(cut: Cut): Heard {
  const { tokens } = cut;
  if (!tokens.some((token) => cues.has(spoken(token)))) return { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const whole = sentences.map((one) => textOf(tokens, one)).join('');
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    const { from, to } = sentence;
    const lye = lyeOf(tokens, sentences, k);
    if (lye) {
      out ??= [...tokens];
      const { row, now } = lye;
      const [was, is, name] = [tokens[row.figure] as Figure, tokens[now] as Figure, tokens[row.at]];
      const value = alike(is.quantity, was.quantity).value;
      out[now] = setApart(is, 'said before');
      const numbers = [...was.quantity.numbers, ...(endsDotted(is) ? is.quantity.numbers : [])];
      out[row.figure] = { ...was, quantity: { ...withValue(was.quantity, value), numbers } };
      told.push({
        text: `I took ${written(is.quantity)} of ${name?.t === 'name' ? name.text : 'alkali'}, not ${written(was.quantity)}, which was last time, as the post says.`,
        gone: [was.quantity],
        from,
        to: Math.max(to, now + 1),
        settles: true,
      });
    } else if (isOfThen(tokens, sentence, whole)) {
      out ??= [...tokens];
      hush(out, from, to, ofLast);
      told.push({ text: 'I left out what the post tells of last time.', gone: [], from, to, settles: true });
    }
  }
  return { tokens: out ?? tokens, told };
}

/** Words of which one stands in each sentence that says so. */
const cues: ReadonlySet<string> = new Set(['last', 'previous', 'before']);

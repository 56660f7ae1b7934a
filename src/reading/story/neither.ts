/**
 * What was planned and never went in: "I was going to put 60 g castor and 20 g beeswax in this, but did neither in the
 * end", "meant to add 60 g castor, never did", "neither the castor nor the beeswax went in" of two rows of the list.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, rowsOf } from './tale.ts';

const plan =
  /\b(?:(?:was|were|am) (?:just |first |originally )?(?:going|about|meaning|planning|hoping|supposed|tempted) to|(?:had |have |d |ve )?(?:planned|intended|wanted|meant|hoped|thought (?:about|of)|considered|had in mind|toyed with)|(?:my|the|our) plan was|would(?: ha|'?)ve(?: (?:loved|liked|wanted|preferred))?)\b/;
const end =
  '(?= (?:$|[-.,;:!)–—]|(?:in|at) the end\\b|this time\\b|today\\b|after all\\b|so\\b|because\\b|as\\b|since\\b|and\\b(?! (?:(?:i|we|then|just|so) )*(?:took|used|put|went|swapped|replaced|had)\\b)))';
const useIt = '(?:did|do|used|took|added|put in|put|went with|have|had|chose|need(?:ed)?)';
/** Of all that was named. */
const neither = new RegExp(
  `\\b(?:${useIt} neither(?: of (?:them|the two|those|these|both))?(?: in| one)?|neither(?: of (?:them|the two|those|these)| one)?(?: in the end)? (?:(?:actually|really|finally|ever) )*(?:went in(?:to it)?|made it(?: in)?|got (?:in|used|added)|was (?:used|added|put in)|is in(?: it| there)?|ended up in (?:it|there)|happened)|neither in the end|none of (?:them|it|that|those|these|this) (?:went in|made it(?: in)?|was (?:used|added)|is in(?: it| there)?|ended up in (?:it|there)))\\b${end}`,
);
/** Of one thing or several that were only planned. */
const never = new RegExp(
  `(?:[,;–—-] |\\b(?:but|and|then|yet) )(?:(?:i|we|then|but|and|so|in the end|,) )*(?:never (?:did|have)|(?:didnt|did not|have not|havent) (?:do (?:it|so|that)|in the end|after all|bother|, in the end)|didnt|did not|decided against (?:it|them|both|that|the two)|(?:it|that|they) (?:hasnt|havent|has not|have not|didnt|did not|never) (?:come|came|arrived?|turned up|been delivered|got here)(?: in the post| yet| in time| by post)*)${end}`,
);
/** "But left it out in the end", "but skipped it". */
const leftOut = new RegExp(
  `(?:[,;–—-] |\\b(?:but|and|then|yet) )(?:(?:(?<who>i|we)|then|but|and|so|in the end|(?:have|had) (?:then )?|finally|,) )*(?:(?:left|leave|leaving) (?:it|that|them|both)(?: all)? out|left (?:it|that|them) (?:in|on) the (?:jar|tub|tin|bottle|bag|box|cupboard|fridge|freezer|shelf|counter|worktop|table|pantry|larder)|(?:left out|skipped|dropped|omitted|ditched|didnt (?:use|add|take)|did not (?:use|add|take)|never (?:used|added|took)) (?:it|that|them|both))${end}`,
  'd',
);
/** "Neither the castor nor the beeswax went in". */
const norThe =
  /\bneither (?:the |my |any )?(?<x>@) n?or (?:the |my |any )?(?<y>@) (?:(?:actually|really|finally|ever|in the end) )*(?:went in|made it|got (?:in|used|added)|(?:was|were) (?:used|added|put in)|(?:is|are) in|ended up in)\b|\b(?:used|took|added|put in|put) neither (?:the |my |any )?(?<v>@) n?or (?:the |my |any )?(?<w>@)/d;
/** "But did only the castor". */
const onlyOne =
  /\b(?:but|then|and|,) (?:(?:i|we|then|in the end|,) )*(?:did|used|took|added|put in|went with) (?:only|just) (?:the )?(?<x>@)(?! (?:#|and|or)\b)/d;
const open =
  /\?|\b(?:if|should|shall|might|may|maybe|perhaps|next|last (?:time|batch|year|month|week)|usually|normally|always|he|she|they|only|just one|instead)\b/;

/** Weights that stand in a few sentences up to a place, each with its name. */
const within = (rows: readonly Weighed[], from: number, to: number): readonly Weighed[] =>
  rows.filter(({ at, figure }) => Math.min(at, figure) >= from && Math.max(at, figure) < to);

/** The rows that are out by what the sentence at `k` says. */
function outIn(tokens: readonly Token[], sentences: readonly Sentence[], k: number): readonly Weighed[] {
  const sentence = sentences[k];
  if (!sentence) return [];
  const { text } = sentence;
  const nor = norThe.exec(text)?.indices?.groups;
  if (nor && !open.test(text.replace(/\bjust one\b/, ''))) {
    const names = ['x', 'y', 'v', 'w'].flatMap((group) =>
      nor[group] ? [tokens[sentence.tokenAt(nor[group][0])]] : [],
    );
    const rows = names.map((name) => rowsOf(tokens, name, tokens.length));
    return rows.every((own) => own.length === 1) ? rows.flat() : [];
  }
  const one = plan.test(text) ? onlyOne.exec(text) : null;
  if (one && !open.test(text.replace(/\b(?:only|just)\b/g, ''))) {
    const name = tokens[sentence.tokenAt(one.indices?.groups?.['x']?.[0] ?? 0)];
    const all = within(rowsBefore(tokens, tokens.length), sentence.from, sentence.tokenAt(one.index));
    const others = all.filter(({ id }) => isIngredient(name) && id !== thingOf(name));
    const isSure =
      others.length + 1 === all.length && all.every(({ at }) => rowsOf(tokens, tokens[at], tokens.length).length === 1);
    return isSure ? others : [];
  }
  const refused = neither.exec(text);
  const left = plan.test(text) ? leftOut.exec(text) : null;
  const undone = refused ?? left ?? (plan.test(text) ? never.exec(text) : null);
  // "my sister wanted 40 g of shea in it, she said, but I left it out"
  if (!undone || open.test(left?.groups?.['who'] ? text.replace(theirs, '') : text)) return [];
  const before = sentences[k - 1];
  const all = rowsBefore(tokens, tokens.length);
  const own = within(all, sentence.from, sentence.tokenAt(undone.index));
  // "I had planned 60 g castor and 20 g shea. Neither went in."
  const isBefore = own.length === 0 && refused && before && plan.test(before.text) && !open.test(before.text);
  const listed = own.length === 0 && left ? namedOnly(tokens, sentence, left.index) : [];
  const rows = isBefore ? within(all, before.from, before.to) : own.length === 0 ? listed : own;
  if (listed.length > 0) return plan.test(text.slice(0, undone.index)) ? listed : [];
  if (!isBefore && !plan.test(text.slice(0, undone.index)) && !refused) return [];
  const plans = isBefore ? before : sentence;
  const planned = plan.exec(plans.text);
  const late = rows.filter(({ at, figure }) => Math.min(at, figure) >= plans.tokenAt(planned?.index ?? 0));
  // what is weighed in the list, too, is another matter
  const isOnly = late.every(({ at }) => rowsOf(tokens, tokens[at], tokens.length).length === 1);
  return isOnly && late.every(({ at }) => isFat(tokens[at])) && (!refused || late.length > 1) ? late : [];
}

const theirs = /\b(?:she|he|they)\b/g;

/** "I wanted to use the castor too but left it out": the row of the one fat that is named without a weight. */
function namedOnly(tokens: readonly Token[], sentence: Sentence, place: number): readonly Weighed[] {
  const names = tokens.slice(sentence.from, sentence.tokenAt(place)).filter(isIngredient);
  const rows = names.length === 1 && isFat(names[0]) ? rowsOf(tokens, names[0], tokens.length) : [];
  return rows.length === 1 && sentence.figures === 0 ? rows : [];
}

/** The list without what never went in. */
export function neitherIn(cut: Cut): Heard {
  const { tokens } = cut;
  if (!tokens.some((token) => cues.has(spoken(token)))) return { tokens, told: [] };
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    const rows = outIn(tokens, sentences, k);
    if (rows.length === 0) continue;
    out ??= [...tokens];
    const gone: Figure[] = [];
    for (const { at, figure } of rows) {
      const [name, weight] = [out[at], out[figure]];
      if (isIngredient(name)) out[at] = asFiller(name);
      if (!isPlain(weight)) continue;
      gone.push(weight);
      out[figure] = setApart(weight, 'left out');
    }
    // other names of the refusal
    for (let at = sentence.from; at < sentence.to; at++) {
      const name = out[at];
      if (isFat(name) && rows.some((row) => row.id === thingOf(name))) out[at] = asFiller(name);
    }
    const names = rows.map(({ at }) => (tokens[at]?.t === 'name' ? tokens[at].text : '')).join(' and ');
    told.push({
      text: `I left out ${names}, which did not go in, as the post says.`,
      gone: gone.map(({ quantity }) => quantity),
      from: Math.min(
        sentence.from,
        ...rows
          .filter(({ at }) => at < sentence.from && k > 0 && at >= (sentences[k - 1]?.from ?? 0))
          .map(() => sentences[k - 1]?.from ?? 0),
      ),
      to: sentence.to,
      settles: true,
    });
  }
  return { tokens: out ?? tokens, told };
}

/** Words of which one stands in each sentence that says so. */
const cues: ReadonlySet<string> = new Set(
  'neither never didnt none against did havent only just left leave leaving skipped dropped omitted ditched'.split(' '),
);

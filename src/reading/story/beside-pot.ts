/**
 * What a post tells beside a whole list that is of nothing in the pot: what bars weigh, what moulds take and what was over,
 * what is left in the jars for another day, what a balm of another pot was made of, how somebody else does it, what other
 * batches had, what a title calls the soap.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient, isMark } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import { cues, isStuff, leastFats, makeRules, type Rule } from './beside-rules.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, type Name, rowsBefore } from './tale.ts';

/** Made for the first post that has one of the cues: they cost a start too much. */
let made: readonly Rule[] | null = null;

/** Another sentence asks about it. */
const isAsked = (of: RegExp, sentences: readonly Sentence[], k: number): boolean =>
  sentences.some(({ text }, at) => at !== k && text.includes('?') && of.test(text));

interface Listed {
  readonly fats: readonly Weighed[];
  readonly lyes: readonly Weighed[];
}

function listBeside(tokens: readonly Token[], { from, to }: Sentence): Listed {
  const rows = rowsBefore(tokens, tokens.length).filter(({ at }) => at < from || at >= to);
  return {
    fats: rows.filter(({ at }) => isFat(tokens[at])),
    lyes: rows.filter(({ at }) => {
      const name = tokens[at];
      return isIngredient(name) && name.meaning.kind === 'alkali';
    }),
  };
}

/** Where it ends with the bracket behind it, "(4)", "(a cupful)", that holds nothing else. */
function behindBracket(tokens: readonly Token[], sentences: readonly Sentence[], k: number): number {
  const [sentence, next] = [sentences[k], sentences[k + 1]];
  if (!sentence) return 0;
  return next &&
    /^\( (?:[a-z]+ ){0,3}#? ?(?:[a-z]+ ){0,2}\)/.test(next.text) &&
    !isAny(tokens, next.from, next.to, isIngredient)
    ? next.to
    : sentence.to;
}

/**
 * "Three butter luxury bar": a title that calls the soap after what the list has by its full names. Its words name
 * nothing more.
 */
function withoutTitle(tokens: readonly Token[]): readonly Token[] {
  const end = tokens.findIndex(({ t }) => t === 'line');
  if (end < 1 || end > longestTitle || isMark(tokens[end - 1], ':?,')) return tokens;
  const listed = new Set(
    tokens.flatMap((one, k) =>
      k > end && isFat(one) && [tokens[k - 1], tokens[k + 1], tokens[k + 2]].some((near) => near?.t === 'quantity')
        ? [one.meaning.id]
        : [],
    ),
  );
  const isCalled = (one: Token): boolean =>
    isIngredient(one) && one.meaning.kind === 'ambiguous' && one.meaning.candidates.some((id) => listed.has(id));
  const isPlainTitle = !isAny(tokens, 0, end, (one) => one.t === 'quantity' && !one.quantity.inWords);
  if (listed.size < leastFats || !isPlainTitle || !isAny(tokens, 0, end, isCalled)) return tokens;
  return tokens.map((one, k) =>
    k >= end ? one : one.t === 'quantity' ? asAside(one, 'a count') : isCalled(one) ? asFiller(one as Name) : one,
  );
}
const longestTitle = 10;

/** Behind what tells so: "I wanted 50 g castor in it, changed my mind and put in 50 g shea". */
function endOf(sentence: Sentence, tells: RegExp): number {
  const found = tells.exec(sentence.text);
  return found ? sentence.tokenAt(found.index + found[0].length - 1) + 1 : sentence.to;
}

/** The tokens without the figures and names of such sentences. */
export function besidePot(cut: Cut): Heard {
  const tokens = withoutTitle(cut.tokens);
  const tells = (token: Token): boolean => 'text' in token && cues.has(token.text.toLowerCase());
  if (!tokens.some(tells)) return { tokens, told: [] };
  const sentences = sentencesOf({ ...cut, tokens });
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    const to = behindBracket(tokens, sentences, k);
    const since = isMark(tokens[sentence.from], '([') ? (sentences[k - 1] ?? sentence).from : sentence.from;
    if ((sentence.figures + sentence.names === 0 && to === sentence.to) || !isAny(tokens, since, to, tells)) continue;
    const { text, from } = sentence;
    made ??= makeRules();
    const rule = made.find(
      (one) =>
        one.tells.test(text) &&
        !one.unless.test(text) &&
        (!one.next || one.next.test(sentences[k + 1]?.text ?? '')) &&
        !one.unlessBehind?.test(text.replace(one.tells, '')) &&
        !(one.unlessAsked && isAsked(one.unlessAsked, sentences, k)) &&
        one.holds?.({ tokens, sentences, k }) !== false,
    );
    if (!rule || (rule.nameless && isAny(tokens, from, to, (token, at) => isStuff(token, at, tokens)))) continue;
    const list = listBeside(tokens, sentence);
    const fats = new Set(list.fats.map(({ id }) => id)).size;
    if (list.lyes.length === 0 ? fats < (rule.sure ? 1 : leastFats) || rule.whole : fats === 0) continue;
    out ??= [...tokens];
    // what stands before it is of the list: "water 310 g. my old one had"
    const begin = rule.behind ? sentence.tokenAt(rule.tells.exec(text)?.index ?? 0) : from;
    const end = rule.ahead ? Math.min(to, endOf(sentence, rule.tells)) : to;
    hush(out, begin, end, rule.reason);
    if (!rule.settles) continue;
    const gone = tokens.slice(begin, end).flatMap((token) => (isPlain(token) ? [token.quantity] : []));
    const said = rule.says ?? 'I left out what tells of another batch.';
    told.push({ text: said, gone, from: begin, to: end, settles: true });
  }
  return out ? { tokens: out, told } : { tokens, told: [] };
}

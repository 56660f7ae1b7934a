/**
 * In a chat: "155 is high for that, I'd take 141" – "good catch, have weighed 141 g now". A figure of the list that somebody
 * doubts is changed for the one that is proposed, where it is then said to be weighed.
 */

import { alike, isLikely, type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { joinedAt, type Story } from './story.ts';
import { isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('high low much little steep heavy strong hot lot off wrong'.split(' '));
const wrong =
  '(?:is|looks|seems|sounds)(?: (?:a bit|a little|rather|quite|very|way|far|pretty|too|on the|really|a))* (?:high|low|much|little|steep|heavy|strong|hot|lot|off|wrong)\\b';
const proposes =
  "(?:(?:i'd|id|i would|you should|better|rather|try|lets|let's|you could|maybe|just|go|going) )+(?:take|use|put in|weigh|try|say|go with|go for|have|with|for)?";
const said = '(?:the )?(?<a>#)(?: (?:of|g))*(?: (?:the )?(?<n>@))?';
const makePattern = () =>
  new RegExp(
    `${said} ${wrong}[^#@?]{0,60}?\\b${proposes} (?:about |only |just )?(?<b>#)(?: (?:of )?(?:it|@))?(?<between>[^#@?]{0,80}?)\\b(?:weighed|took|taken|used|put in|went with|poured in|measured)(?: (?:out|in|only|just|exactly|now))* (?<c>#)`,
    'd',
  );
let made: RegExp | null = null;
/** Nobody has done it. */
const open = /\b(?:not|never|didnt|nearly|almost|if|next|last|too late|already|before)\b/;
const many = 6;

/** The list with the figure that was weighed. */
export function takenOther(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token).toLowerCase()))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const story = joinedAt(sentences, k, many);
    made ??= makePattern();
    const found = made.exec(story.text);
    if (!found || found.index >= story.turn || open.test(found.groups?.['between'] ?? '')) continue;
    const changed = changedBy(tokens, story, found);
    if (changed) return changed;
  }
  return none;
}

function changedBy(
  tokens: readonly Token[],
  story: Story,
  found: RegExpExecArray,
): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } | null {
  const at = found.indices?.groups ?? {};
  const [a = -1, b = -1, c = -1] = ['a', 'b', 'c'].map((group) => story.tokenAt(at[group]?.[0] ?? 0));
  const rows = rowsBefore(tokens, a).filter(
    ({ figure }) => figure < a && isSum(valueAt(tokens, figure), valueAt(tokens, a)),
  );
  const [row, ...more] = rows;
  const [was, doubted, wanted, now] = [tokens[row?.figure ?? -1], tokens[a], tokens[b], tokens[c]];
  const name = tokens[row?.at ?? -1];
  if (!row || more.length > 0 || !isPlain(was) || !isPlain(doubted) || !isPlain(wanted) || !isPlain(now)) return null;
  if (!isIngredient(name) || !isSum(valueAt(tokens, b), valueAt(tokens, c))) return null;
  const next = tokens[c + 1];
  const isOwn = !isIngredient(next) || (next.meaning.kind === name.meaning.kind && next.meaning.id === name.meaning.id);
  const quantity = alike(now.quantity, was.quantity);
  if (!isOwn || !isLikely(quantity, was.quantity) || isSum(weightAt(tokens, c, row.figure), was.quantity.value))
    return null;
  const out = [...tokens];
  out[row.figure] = { ...was, quantity: { ...quantity, numbers: was.quantity.numbers } };
  for (const k of [a, b, c]) out[k] = asAside(tokens[k] as Figure, 'said of a weight that was changed');
  for (let k = a; k <= c + 1; k++) {
    const token = out[k];
    if (isIngredient(token) && k <= c + (isIngredient(next) ? 1 : 0)) out[k] = asFiller(token);
  }
  const text = `I took ${written(quantity)} of ${name.text}, not ${written(was.quantity)}, as the post says.`;
  return { tokens: out, told: [{ text, gone: [was.quantity], from: a, to: c + 1, settles: true }] };
}

/** A figure as it is written, with its unit or without. */
function valueAt(tokens: readonly Token[], k: number): number {
  const token = tokens[k];
  return isPlain(token) ? token.quantity.value / (token.quantity.unit?.factor ?? 1) : Number.NaN;
}

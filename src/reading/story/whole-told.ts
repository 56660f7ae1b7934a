/**
 * A weight that is told as a whole, and each of its parts where it went: "90 g shea in total. I cooked 60 g of it and kept
 * the other 30 g back, that went in at the very end", "it wants 210 g water. The lye went into 110 g water, and the other
 * 100 g were goat milk". Where the parts make up the whole, each is what it is told to be.
 */

import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, isRole, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt, type Story } from './story.ts';
import { isPlain, isSum, type Name, rowsBefore, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('other remaining last'.split(' '));
const many = 2;
const other = '\\b(?:other|remaining|last) (?<b>#)(?: of (?:it|that))?';

let made: { readonly cooked: RegExp; readonly milk: RegExp } | null = null;
const patterns = (): { readonly cooked: RegExp; readonly milk: RegExp } => {
  made ??= {
    // "60 g of it … the other 30 g back"
    cooked: new RegExp(`(?<a>#) of (?<it>it|that|which|the @)\\b[^?]{0,160}?${other}`, 'd'),
    // "in 110 g water, and the other 100 g were goat milk"
    milk: new RegExp(
      `\\b(?:in|into|with|used|took) (?:only |just )*(?<a>#) (?:of )?(?:the |plain |cold |distilled )*(?<w>@)[^?#]{0,80}?${other} (?:(?:of the water|were|was|is|are|went in|came|as|being|of|the|a|my|all|cold|frozen|fresh|flat) )*(?<m>@)`,
      'd',
    ),
  };
  return made;
};
/** It is not in the pot yet, or of another time. */
const open =
  /\b(?:if|would|could|should|might|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|always|or)\b/;
/** It goes in behind the cook. */
const late = /\b(?:kept|keep|held|hold|saved|save|reserved|back|aside)\b/;

/** The list with the parts as they are told. */
export function wholeTold(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const story = joinedAt(sentences, k, many);
    const out = keptOf(tokens, story) ?? milkIn(tokens, story);
    if (out) return out;
  }
  return none;
}

/** The tokens at the groups of a match that begins in the first of the sentences. */
function groupsOf(
  story: Story,
  pattern: RegExp,
): { readonly at: (group: string) => number; readonly to: number } | null {
  const match = pattern.exec(story.text);
  const to = match ? match.index + match[0].length : 0;
  const end = match ? story.endAt(to - 1) : 0;
  if (!match || match.index >= story.turn || open.test(story.text.slice(match.index, end))) return null;
  const at = (group: string): number => {
    const place = match.indices?.groups?.[group]?.[0];
    return place === undefined ? -1 : story.tokenAt(place);
  };
  return { at, to: story.tokenAt(end - 1) + 1 };
}

/** The row of which two weights are the parts. */
const wholeOf = (tokens: readonly Token[], rows: readonly Weighed[], a: number, b: number): Weighed | null => {
  const [row, ...more] = rows.filter(({ figure }) => figure !== a && figure !== b);
  return row &&
    more.length === 0 &&
    isSum(weightAt(tokens, row.figure, row.figure), weightAt(tokens, a, row.figure), weightAt(tokens, b, row.figure))
    ? row
    : null;
};

/** A fat of which the one part is cooked, and the other one kept back. */
function keptOf(tokens: readonly Token[], story: Story): Heard | null {
  const found = groupsOf(story, patterns().cooked);
  if (!found) return null;
  const [a, it, b] = [found.at('a'), found.at('it'), found.at('b')];
  const fats = rowsBefore(tokens, a).filter(({ at, figure }) => isFat(tokens[at]) && figure < a);
  const spokenOf = tokens[spoken(tokens[it]) === 'the' ? it + 1 : it];
  const last = fats.at(-1);
  const id = isIngredient(spokenOf) ? thingOf(spokenOf) : last?.id;
  const row = wholeOf(
    tokens,
    rowsBefore(tokens, tokens.length).filter((one) => one.id === id),
    a,
    b,
  );
  const place = b - 1;
  const isLate = tokens.slice(b, found.to).some((token) => isRole(token, 'after'));
  const near = tokens
    .slice(Math.max(0, b - 4), b + 2)
    .map(spoken)
    .join(' ');
  if (!row || row.figure > a || !isLate || !late.test(near)) return null;
  const name = tokens[row.at] as Name;
  const out = [...tokens];
  out[a] = asAside(tokens[a] as Parameters<typeof asAside>[0], 'a part of what was said');
  for (let at = a + 1; at < it + 2; at++) if (isIngredient(out[at])) out[at] = asFiller(out[at] as Token);
  const stand = out[place] as Token;
  out[place] = { ...name, from: stand.from, to: stand.to };
  return { tokens: out, told: [] };
}

/** Water of which one part was milk. */
function milkIn(tokens: readonly Token[], story: Story): Heard | null {
  const found = groupsOf(story, patterns().milk);
  if (!found) return null;
  const [a, w, b, m] = [found.at('a'), found.at('w'), found.at('b'), found.at('m')];
  if (!isKind(tokens[w], 'water') || !isKind(tokens[m], 'liquid')) return null;
  const waters = rowsBefore(tokens, tokens.length).filter(({ at }) => isKind(tokens[at], 'water'));
  const row = wholeOf(tokens, waters, a, b);
  const whole = tokens[row?.figure ?? -1];
  if (!row || !isPlain(whole)) return null;
  const out = [...tokens];
  out[row.figure] = asAside(whole, 'a total that agrees');
  out[row.at] = asFiller(tokens[row.at] as Token);
  for (let at = b + 1; at < m; at++) {
    const token = out[at];
    if (token?.t === 'word' || token?.t === 'name') out[at] = asFiller(token);
  }
  const milk = tokens[m] as Name;
  const text = `I took ${whole.quantity.text} of the liquid as water and ${milk.text}, as the post parts it.`;
  return { tokens: out, told: [{ text, gone: [], from: story.from, to: found.to, settles: true }] };
}

const isKind = (token: Token | undefined, kind: string): boolean => isIngredient(token) && token.meaning.kind === kind;

/**
 * "The real figure for the olive was 275 g", "the coconut really was 210 g", "weighed it again and the bowl had not been
 * tared; the true weight was 275 g": what a row weighs, said once more and otherwise. So much counts; where nobody is sure
 * of it, it is asked about.
 */
import { once } from '../once.ts';
import { alike, isLikely, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowOf } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'real true correct actual proper really actually truth fact again anew afresh new newly fresh reweighed re'.split(
    ' ',
  ),
);
const figure = '(?:figure|weight|amount|number|value|reading|quantity)';
const is =
  '(?:(?:is|was|should be|turned out(?: to be)?|came (?:out )?(?:to|at|as)|comes to|weighs|weighed|in fact|just|only|at) )+';
const patterns = once(() =>
  [
    `\\b(?:the|its|their) (?:real|true|correct|actual|proper|right) ${figure}(?: (?:for|of) (?:the |my )?(?<a>@))? ${is}(?<n>#)(?: (?:for|of) (?:the |my )?(?<b>@))?`,
    `\\b(?:the |my )?(?:real|true|correct|actual|proper) (?<c>@) ${figure} ${is}(?<n>#)`,
    `(?<d>@) (?:really|actually|in truth|in fact|in reality) ${is}(?<n>#)(?! (?:of )?@)`,
    `(?<e>@) (?:was|weighed|is) (?:really|actually|in truth|in fact|in reality) (?:only |just |at )*(?<n>#)(?! (?:of )?@)`,
    `\\b(?:weighed|reweighed|checked|measured) (?:the |my )?(?<a>@) (?:again|anew|afresh|once more)(?: ?(?:,|;|-|and|so|then))* (?:its|it is|it was|thats|that is|now its) (?:now |just |only |really )*(?<n>#)(?! (?:of )?@)`,
  ].map((pattern) => new RegExp(pattern, 'd')),
);
/** "NaOH row is old. Weighed anew on the good scale: 132 g": the row is said to be of before, and a weight follows. */
const stale =
  /@ (?:(?:row|figure|value|entry|number|weight|line|amount|in|of|the|list|sheet|table|above|there|given|here) )*(?:(?:is|was|are|isnt) )+(?:(?:from|an?|no|not|already|now|too|longer|more) )*(?:old|outdated|current|wrong|stale|obsolete|valid|right|correct|true|out of date|superseded|yesterday|before)\b(?! (?:stock|bag|tub|tin|but))/;
const anew =
  /^(?:[^#@?]*\b)?(?:re ?-? ?weighed|reweighed|(?:weighed|measured|put on the scales?)(?: (?:it|this|that|out))? (?:anew|again|new|newly|afresh|fresh|once more)|(?:new|newly|fresh) (?:weighed|weight|weighing))\b[^#@?]*#(?! (?:of )?@)/;
const open =
  /\?|\b(?:if|might|may|maybe|perhaps|not sure|unsure|not convinced|not certain|doubt|whether|wonder|believe|suspect|think|guess|about|around|roughly|last (?:time|batch)|next|she|he|they)\b/;
/** Sentences ahead in which the row may be named. */
const reach = 3;

/** The list with the weight that is said to be the true one. */
export function trueFigure(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const found = patterns()
      .map((pattern) => pattern.exec(sentence.text))
      .find((match) => match !== null);
    const at = found?.indices?.groups ?? staleAt(sentence, sentences[k - 1]);
    if (!at?.['n']) continue;
    const now = sentence.tokenAt(at['n'][0]);
    const own = ['a', 'b', 'c', 'd', 'e'].flatMap((group) => (at[group] ? [sentence.tokenAt(at[group][0])] : []))[0];
    const named = own ?? lastNamed(cut, sentences.slice(Math.max(0, k - reach), k + 1), now);
    const row = named < 0 ? null : rowOf(tokens, tokens[named], now);
    const [was, weight, name] = [tokens[row?.figure ?? -1], tokens[now], tokens[row?.at ?? -1]];
    const unheard = rawText(cut.prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 1).trim();
    const of = tokens[named];
    if (!row && isPlain(weight) && isIngredient(of) && /^(?:fat|alkali)$/.test(of.meaning.kind) && !isNext(tokens, now))
      return { ...none, unheard };
    if (!row || row.figure === now || !isPlain(was) || !isPlain(weight) || !isIngredient(name)) continue;
    const quantity = alike(weight.quantity, was.quantity);
    if (isSum(was.quantity.value, quantity.value)) continue;
    if (open.test(sentence.text.slice(0, at['n'][1])) || !isLikely(quantity, was.quantity)) return { ...none, unheard };
    const out = [...tokens];
    out[row.figure] = { ...was, quantity: { ...quantity, numbers: was.quantity.numbers } };
    out[now] = asAside(weight as Figure, 'said of a weight that was put right');
    const other = own === undefined ? undefined : tokens[own];
    if (own !== undefined && own !== row.at && isIngredient(other)) out[own] = asFiller(other);
    const text = `I took ${written(quantity)} of ${name.text}, not ${written(was.quantity)}, as the post says.`;
    return {
      tokens: out,
      told: [{ text, gone: [was.quantity], from: sentence.from, to: sentence.to, settles: true }],
    };
  }
  return none;
}

/** Where the figure stands that comes in the place of a row of before. */
function staleAt({ text, figures }: Sentence, before: Sentence | undefined): Record<string, [number, number]> | null {
  const place = text.indexOf('#');
  const told = stale.test(text.slice(0, place + 1)) || (before?.figures === 0 && stale.test(before.text));
  return figures === 1 && told && anew.test(text.replace(stale, '').trimStart()) ? { n: [place, place + 1] } : null;
}

/** The figure has a name of its own behind it. */
const isNext = (tokens: readonly Token[], k: number): boolean =>
  isIngredient(tokens[spoken(tokens[k + 1]) === 'of' ? k + 2 : k + 1]) && !endsDotted(tokens[k]);

/** What was named last ahead of a figure. */
function lastNamed(
  { tokens }: Cut,
  told: readonly { readonly from: number; readonly to: number }[],
  before: number,
): number {
  for (let at = before - 1; at >= (told[0]?.from ?? 0); at--) if (isIngredient(tokens[at])) return at;
  return -1;
}

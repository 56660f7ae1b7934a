/**
 * "118 g on one scale, 118 on the other", "230 g, then 230 again": a weight that was checked is said once more. Where it
 * never came out the same, the one that was settled on counts: "641, 648, 644. The new scale says 645 g, so 645 g it is".
 */
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isAny, isIngredient, isPot, isWord, sentenceAt, spoken, wordOrStop } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { hush, isSum, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('again scale scales one other both times'.split(' '));
const again =
  /(?<w>#) (?:(?:on|by|with|says|said) (?:(?:the|my|one|first|[a-z]+) ){0,3}(?:scales? )?)?(?:, |; |and |then |also )+(?<a>#) (?:(?:once )?again|on the (?:[a-z]+ ){0,2}(?:one|scales?|other)|(?:the )?second time|both times|as well)\b/dg;

/** "I weighed the lard three times: 641, 648, 644": what, and the first figure. */
const wavering = /\bweighed (?:out )?(?:(?:the|my|all|of) )*(?<n>@) (?:[^@.!?;]*? )??(?<f>#) (?:, |and |then |g )*#/d;
/** "So 645 g it is", "settled on 645 g". */
const settling =
  /\bso (?:its )?(?<s>#) it is\b|\b(?:settled (?:on|for)|going with|went with|so i took|so i call it) (?<t>#)/d;
const longestWavering = 6;
/** How far figures of one weight may lie apart. */
const sameWeight = 0.03;

/** The tokens with the weight that was settled on in the place of those that were tried. */
function settledOn(cut: Cut, out: readonly Token[]): readonly Token[] {
  const sentences = sentencesOf({ ...cut, tokens: out });
  for (const [k, sentence] of sentences.entries()) {
    const match = sentence.figures < 2 ? null : wavering.exec(sentence.text);
    const groups = match?.indices?.groups;
    if (!groups) continue;
    const [name, first] = ['n', 'f'].map((group) => sentence.tokenAt(groups[group]?.[0] ?? 0)) as [number, number];
    for (const next of sentences.slice(k + 1, k + longestWavering)) {
      const found = settling.exec(next.text)?.indices?.groups;
      const place = found?.['s'] ?? found?.['t'];
      if (place) return inItsRow(out, name, first, next.tokenAt(place[0]));
      if (next.names > 0) break;
    }
  }
  return out;
}

/** Between the first figure of what is named and the last there is none that could be of anything else. */
function inItsRow(tokens: readonly Token[], name: number, first: number, last: number): readonly Token[] {
  const [was, now] = [tokens[first], tokens[last]];
  if (was?.t !== 'quantity' || now?.t !== 'quantity' || now.quantity.dim !== 'mass') return tokens;
  const isSame = (k: number): boolean => {
    const value = weightAt(tokens, k, last);
    return Math.abs(value - now.quantity.value) <= sameWeight * now.quantity.value;
  };
  for (let k = first; k < last; k++) if (tokens[k]?.t === 'quantity' && !isSame(k)) return tokens;
  const out = [...tokens];
  hush(out, name + 1, last, 'weighed anew');
  out[last] = asAside({ ...now, quantity: was.quantity }, 'weighed anew');
  const { from, to } = tokens[name + 1] ?? was;
  out[name + 1] = { t: 'quantity', from, to, quantity: now.quantity };
  return out;
}

const isVolume = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'volume' && token.quantity.upTo === null;
const isLye = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'alkali';
const scale = /^(?:scales?|weighed|weighing|weighs|weigh)$/;
const longestWay = 30;
const longestSaying = 6;

/** Nothing behind it says what else it is of: "65 g.", "65 g in all", not "65 g of water" or "300 g with the jug". */
function isAlone(tokens: readonly Token[], k: number): boolean {
  if (endsDotted(tokens[k])) return true;
  const { to } = sentenceAt(tokens, k, longestWay);
  const next = isWord(tokens[k + 1], 'of') ? tokens[k + 2] : tokens[k + 1];
  return !isIngredient(next) && !isAny(tokens, k, to, (one) => isPot(one) || isWord(one, 'with'));
}

/** The alkali that the measure at `k` is said of, with words alone between. */
function lyeBefore(tokens: readonly Token[], k: number): number {
  let name = k - 1;
  while (k - name <= longestSaying && tokens[name]?.t === 'word') name--;
  return isLye(tokens[name]) ? name : -1;
}

/** "A quarter cup by eye, so I put it on the scale: 65 g": where that weight stands; -1 where none does. */
function weighedAfter(tokens: readonly Token[], k: number): number {
  let onScale = false;
  for (let at = k + 1; at - k <= longestWay && tokens[at]?.t !== 'line'; at++) {
    const token = tokens[at];
    if (token?.t === 'quantity') return onScale && token.quantity.dim === 'mass' && isAlone(tokens, at) ? at : -1;
    if (isIngredient(token) || isPot(token)) return -1;
    onScale ||= scale.test(spoken(token));
  }
  return -1;
}

/** The tokens with the weight of an alkali in the place of the measure that it was first taken by. */
function byScale(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (const [k, measure] of tokens.entries()) {
    if (!isVolume(measure)) continue;
    const name = lyeBefore(tokens, k);
    const at = name < 0 ? -1 : weighedAfter(tokens, k);
    const weight = tokens[at];
    if (weight?.t !== 'quantity') continue;
    out ??= [...tokens];
    // "a third of a cup"
    for (let word = name + 1; word < k; word++) out[word] = asFiller(tokens[word] as Token, 'is');
    const numbers = [...weight.quantity.numbers, ...measure.quantity.numbers];
    out[k] = { ...measure, quantity: { ...weight.quantity, numbers } };
    out[at] = wordOrStop(weight);
  }
  return out ?? tokens;
}

/** The tokens without the figures that say so. */
export function weighedAgain(cut: Cut): readonly Token[] {
  return byScale(settledOn(cut, withoutChecks(cut)));
}

function withoutChecks(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  const tells = (token: Token): boolean => 'text' in token && cues.has(token.text.toLowerCase());
  let out: Token[] | null = null;
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures < 2 || !isAny(tokens, sentence.from, sentence.to, tells)) continue;
    for (const { indices } of sentence.text.matchAll(again)) {
      const [was, now] = ['w', 'a'].map((group) => sentence.tokenAt(indices?.groups?.[group]?.[0] ?? 0));
      if (was === undefined || now === undefined) continue;
      if (!isSum(weightAt(tokens, was, was), weightAt(tokens, now, was))) continue;
      out ??= [...tokens];
      out[now] = asAside(tokens[now] as Figure, 'said before');
    }
  }
  return out ?? tokens;
}

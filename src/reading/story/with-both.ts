/**
 * Alkali that was weighed into the water, of which only the sum is told: "zeroed the jug, 270 g water, then lye. The whole
 * thing read 403 g with both in", "270 g water, then NaOH until the display showed 403 g". Asked about where the vessel may
 * be in it.
 */

import { withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient } from '../words/token-is.ts';
import { asFiller, type Figure } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

const shown =
  '(?:read|reads|showed|shows|said|says|weighed|weighs|came to|comes to|came out at|stood at|was at|made|until|till|up to)';
const makeTold = (): RegExp =>
  new RegExp(
    `(?<w>#) (?:of )?(?:the |cold |distilled |plain )*(?<x>@)[^#?@]{0,60}(?<l>@)[^#?@]{0,70}?\\b${shown} (?:(?:it|the|scale|display|said|showed|read|was|at|just|only|then) )*(?<t>#)[^#@?.]{0,24}`,
    'd',
  );
let pattern: RegExp | null = null;
const both = /\b(?:both|two|together|altogether|in all|all in|everything|whole thing|the lot|until|till|up to)\b/;
const zeroed = /\b(?:zeroed|zeroing|tared|taring|tare)\b/;
/** Nobody pressed the button, or it is not the sum of the two. */
const unsure =
  /\b(?:never|not|forgot|didnt|without|jug and all|bowl and all|cup and all|including|if|should|would|about|around|roughly)\b/;
const many = 3;
/** Alkali to water by weight. */
const [least, most] = [0.12, 1.1];

/** The list with what the sum leaves for the alkali. */
export function withBoth(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  const isKind = (k: number, kind: string): boolean => {
    const token = tokens[k];
    return isIngredient(token) && token.meaning.kind === kind;
  };
  if (!tokens.some((_, k) => isKind(k, 'alkali')) || !tokens.some((_, k) => isKind(k, 'water'))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const story = joinedAt(sentences, k, many);
    pattern ??= makeTold();
    const found = pattern.exec(story.text);
    if (!found || found.index >= story.turn || !both.test(found[0])) continue;
    const at = (group: string): number => story.tokenAt(found.indices?.groups?.[group]?.[0] ?? 0);
    const [w, x, l, t] = [at('w'), at('x'), at('l'), at('t')];
    const isWeighed = rowsBefore(tokens, tokens.length).some((row) => isKind(row.at, 'alkali') && row.figure !== t);
    const [water, all] = [weightAt(tokens, w, w), weightAt(tokens, t, w)];
    const lye = all - water;
    if (!isKind(x, 'water') || !isKind(l, 'alkali') || isWeighed) continue;
    if (!endsDotted(tokens[t]) && isIngredient(tokens[t + 1])) continue;
    if (!(lye > least * water && lye < most * water)) continue;
    const around = `${sentences[k - 1]?.text ?? ''} ${story.text.slice(0, story.endAt(found.index + found[0].length - 1))}`;
    if (!zeroed.test(around) || unsure.test(around))
      return { ...none, unheard: rawText(prims, tokens[w]?.from ?? 0, tokens[t]?.to ?? 0) };
    const [sum, name, mark] = [tokens[t], tokens[l], tokens[t - 1]];
    if (!isPlain(sum) || name?.t !== 'name' || !mark) continue;
    const out = [...tokens];
    const now = withValue(sum.quantity, lye);
    out[l] = asFiller(name);
    out[t - 1] = { ...name, from: mark.from, to: mark.to };
    out[t] = { ...sum, quantity: { ...now, numbers: sum.quantity.numbers } };
    const text = `I took ${written(now)} of ${name.text}, which is ${written(sum.quantity)} less the ${written((tokens[w] as Figure).quantity)} of water.`;
    return { tokens: out, told: [{ text, gone: [], from: w, to: story.to, settles: true }], unheard: null };
  }
  return none;
}

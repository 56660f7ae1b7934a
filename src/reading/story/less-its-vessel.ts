/**
 * "Display said 152 g for the lye but that was with the cup, and the empty cup is 24 g": a weight with its vessel, and what
 * the vessel weighs. What the two leave counts, where nobody says it in figures.
 */
import { packed } from '../columns/columns.ts';
import { once } from '../once.ts';
import { withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { apart, isPlain, rowsBefore, weightAt } from './tale.ts';

const vessel =
  '(?:cup|jug|beaker|bowl|dish|glass|saucer|tub|pot|pan|container|jar|bucket|tin|vessel|can)(?: [a-z]+){0,1}?';
const the = '(?:(?:the|its|my|a|an|that|plastic|glass|steel|little|small|paper|empty|whole|lye) )*';
const with_ = `(?:\\b(?:with|including|incl|included|inclusive|plus|has|contains|and) ${the}${vessel}\\b|\\b${vessel} (?:was|is|stood|were|sat) (?:still |also |too |all )?(?:on|in|under|with)\\b|\\b${vessel} (?:included|on the scales?)\\b)`;
const empty =
  '(?:(?:on its own|alone|itself|by itself|empty|only|is|was|weighs|weighed|comes to|has|about|at|[:=,(]) )+';
const patterns = once(() =>
  [
    `(?<n>#)(?! ${the}(?:${vessel}) )[^#?]{0,60}?${with_}[^#?]{0,40}?(?:\\b${the}${vessel} ${empty}|\\b(?:which|it|that) (?:is|was|weighs|weighed|has) (?:empty )?|[(] ?(?:empty )?|\\bempty (?:is |it is |its |it weighs |weighs |at )?)(?<t>#)(?! (?:of )?(?:the )?@)`,
    `\\b(?:with|including) ${the}${vessel} (?:it (?:was|is|showed|said|weighed) |showed |was |is |[:=] )?(?<n>#)[^#@?]{0,24}?\\b${the}${vessel} ${empty}(?<t>#)(?! (?:of )?(?:the )?@)`,
  ].map((pattern) => new RegExp(pattern, 'd')),
);
/** It is told what is left, or another time. */
const open =
  /\b(?:if|should|would|maybe|perhaps|last (?:time|batch)|usually|tared (?:it|the)|already (?:taken|subtracted|deducted)|subtracted|deducted|took (?:it|that) off|not (?:with|including)|without (?:the )?(?:cup|jug|bowl|beaker|pot))\b/;
const net =
  /\b(?:so|really|actually|real|net|leaves|leaving|makes|means|hence|in fact|that is|thats|left)\b[^#?]{0,30}#/;
const cues: ReadonlySet<string> = new Set('with including incl included plus has on'.split(' '));
const most = 3;

export function lessItsVessel(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0) continue;
    const story = joinedAt(sentences, k, most);
    const match = patterns()
      .map((pattern) => pattern.exec(story.text))
      .find((found) => found !== null && found.index < story.turn);
    const at = match?.indices?.groups;
    if (!match || !at?.['n'] || !at['t'] || open.test(match[0])) continue;
    // said in figures behind it
    if (net.test(story.text.slice(at['t'][1], at['t'][1] + 50))) continue;
    const [gross, tare] = [story.tokenAt(at['n'][0]), story.tokenAt(at['t'][0])];
    const from = sentences[k - 1]?.from ?? sentence.from;
    const name = nameOf(tokens, gross, sentence.from, from);
    const own = tokens[name];
    const [weight, less] = [tokens[gross], tokens[tare]];
    if (!isIngredient(own) || !/^(?:alkali|fat)$/.test(own.meaning.kind) || !isPlain(weight) || !isPlain(less))
      continue;
    const value = weightAt(tokens, gross, gross) - weightAt(tokens, tare, gross);
    const rows = rowsBefore(tokens, tokens.length).filter(({ id, figure }) => id === thingOf(own) && figure !== gross);
    if (!(value > 0) || rows.length > 0) continue;
    const now = withValue(weight.quantity, value);
    const out = [...tokens];
    out[gross] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
    apart(out, tare, packed, gross);
    for (let n = Math.min(name, gross); n < tare; n++) {
      const token = out[n];
      if (n !== name && token?.t === 'name') out[n] = asFiller(token);
    }
    const beside = name < gross ? gross - 1 : gross + 1;
    const place = tokens[beside];
    if (place && beside !== name && place.t !== 'sign') {
      out[name] = asFiller(own);
      out[beside] = { ...own, from: place.from, to: place.to };
    }
    const text = `I took ${written(now)} of ${own.text}, which is ${written(weight.quantity)} less ${written(less.quantity)} of its vessel.`;
    return { tokens: out, told: [{ text, gone: [weight.quantity], from, to: tare + 1, settles: true }] };
  }
  return none;
}

/** What is weighed: "152 g for the lye", or named last before it. */
function nameOf(tokens: readonly Token[], gross: number, start: number, from: number): number {
  const behind = [1, 2, 3].map((step) => gross + step).find((n) => isIngredient(tokens[n]));
  if (behind !== undefined && tokens.slice(gross + 1, behind).every((one) => /^(?:for|of|the|my)$/.test(spoken(one))))
    return behind;
  for (let n = gross - 1; n >= from; n--) {
    if (isIngredient(tokens[n])) return n;
    if (n < gross && tokens[n]?.t === 'quantity' && n >= start) return -1;
  }
  return -1;
}

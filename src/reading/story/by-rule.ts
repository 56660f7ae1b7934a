/**
 * Lye and water by the weight of the fats: "per 1 kg of oils take 137 g lye and 300 g water", "lye: 137 g per kilo of oils",
 * beside fats of another weight, and no lye of their own. So much is taken as the fats make of it.
 */

import { withValue } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore } from './tale.ts';

const fats = '(?:of )?(?:the |my |your |these )?(?:total )?(?:oils?|fats?|oil weight|fat weight|butters?)\\b';
const rule = new RegExp(
  `\\b(?:per|for (?:each|every)|to (?:each|every)|on (?:each|every)|each|every) (?:(?<figure>#)|(?<unit>kilo(?:gram(?:me)?)?|kg|pound|lb)) ${fats}`,
  'd',
);
const open = new RegExp(
  `\\?|\\b(?:if|would|could|should|they|people|some|he|she|heard|read|swears?|usually|normally|scents?|fragrance|${relations.replaceAll(' ', '|')})\\b`,
);
const howMuch = /\b(?:how much|what) (?:[a-z]+ ){0,2}@[^.]*\?|\bhow much\b[^.]*@/;
const grams: Readonly<Record<string, number>> = { kilo: 1000, kg: 1000, pound: 453.592, lb: 453.592 };

export function byRule(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const sentence = sentences.find(({ text }) => rule.test(text));
  if (!sentence || open.test(sentence.text) || sentences.some(({ text }) => howMuch.test(text))) return none;
  const { index = 0, groups, indices } = rule.exec(sentence.text) ?? {};
  const at = indices?.groups?.['figure']?.[0];
  const place = at === undefined ? -1 : sentence.tokenAt(at);
  const whole = tokens[place];
  const per =
    at === undefined ? (grams[(groups?.['unit'] ?? '').slice(0, 5).replace(/gram.*/, '')] ?? 0) : weightOf(whole);
  const rows = rowsBefore(tokens, tokens.length);
  const listed = rows.filter(({ at: name }) => isFat(tokens[name]));
  const inRule = rows.filter(({ at: name, figure }) => {
    const token = tokens[name];
    const isRuled = isIngredient(token) && /^(?:alkali|water)$/.test(token.meaning.kind);
    return isRuled && figure >= sentence.from && figure < sentence.to && figure !== place;
  });
  const isLye = (one: { readonly id: string }): boolean => one.id === 'alkali';
  if (per <= 0 || inRule.filter(isLye).length !== 1 || rows.some((row) => isLye(row) && !inRule.includes(row)))
    return none;
  if (listed.length === 0 || listed.some(({ figure }) => figure >= sentence.from && figure < sentence.to)) return none;
  const total = listed.reduce((sum, { figure }) => sum + weightOf(tokens[figure]), 0);
  const factor = total / per;
  if (!(factor > least) || Math.abs(factor - 1) < near) return none;
  const out = [...tokens];
  if (whole?.t === 'quantity') out[place] = asAside(whole, 'so much to the fats');
  for (let k = sentence.tokenAt(index); k < sentence.to; k++) {
    const token = out[k];
    if (token?.t === 'name' && token.meaning.kind === 'role' && /^(?:oils?|fats?)$/i.test(token.text))
      out[k] = asFiller(token);
  }
  const texts = inRule.map(({ at: name, figure }) => {
    const weight = out[figure] as Figure;
    const now = { ...withValue(weight.quantity, weight.quantity.value * factor), numbers: weight.quantity.numbers };
    out[figure] = { ...weight, quantity: now };
    const token = out[name];
    return `${now.text} of ${token?.t === 'name' ? token.text : 'it'}`;
  });
  const text = `I took ${texts.join(' and ')}: the rule of the post times ${Number(factor.toPrecision(4))}, as its fats weigh.`;
  // "so I took 1.6 times of both"
  for (let k = 0; k < out.length; k++) {
    const token = out[k];
    if (token?.t === 'quantity' && token.quantity.dim === 'bare' && Math.abs(token.quantity.value - factor) < near)
      out[k] = asAside(token, 'how many times the rule is taken');
  }
  const to = sentences.find(({ from }) => from >= sentence.to)?.to ?? sentence.to;
  return {
    tokens: out,
    told: [{ text, gone: [], from: sentence.from, to: Math.max(to, told(sentences, sentence.to)), settles: true }],
  };
}

/** Where a sentence ends that tells how many times the rule is taken. */
const told = (sentences: ReturnType<typeof sentencesOf>, from: number): number =>
  sentences.find((one) => one.from >= from && /[#…] times\b/.test(one.text))?.to ?? from;

const least = 0.05;
const near = 0.02;
const weightOf = (token: Token | undefined): number =>
  isPlain(token) && token.quantity.dim === 'mass' ? token.quantity.value : 0;

/**
 * "Aunt Hedda goes by 134 g of lye for every kilo of lard. I have 1.4 kg of lard, so took 188 g by her rule": the rule says
 * of what the weight without a name is, and is no weight of its own.
 */

import { written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, rowsBefore } from './tale.ts';

const kilo = '(?:kilo(?:gram(?:me)?)?|kg)';
const fats = '(?:of )?(?:the |my |your )?(?:oils?|fats?|(?<x>@))';
const per = `(?:for|per|to|on) (?:(?:every|each|a|one|the) )?(?:${kilo}|(?<k>#)) ${fats}`;
const makeRules = (): readonly RegExp[] => [
  new RegExp(`(?<r>#) (?:of )?(?:the |my )?(?<l>@) ${per}`, 'd'),
  new RegExp(`(?<l>@) (?:[:=–-] |is |of )?(?<r>#) ${per}`, 'd'),
];
let made: readonly RegExp[] | null = null;
/** "So took 188 g", "weighed 188 g". */
const taken =
  /\b(?:took|weighed|used|put|tipped|dissolved|so|thats|that is|makes|made it|got|came to|comes to)(?: (?:in|out|just|only|it|is|its|i|we|have|took|weighed|used|measured|put|exactly|about))* (?<w>#)(?! (?:of )?@| \?)(?<how> (?:of it )?(?:by|following|according to|after|with|as per) (?:her|his|their|that|this|the|my|[a-z]+s) (?:rule|reckoning|way|figure|formula|sum))?/d;
const open = /\b(?:if|should|would|could|might|may|maybe|perhaps|next|last (?:time|batch|week|month|year))\b/;
const howMuch = /\bhow much (?:lye|[a-z]+ ?@|@)[^.]*\?/;
const near = 0.03;
const heavy = 1000;

const isLye = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';

interface Rule {
  readonly sentence: Sentence;
  readonly name: number;
  readonly figure: number;
  /** Where the weight stands that it is for; -1 for a kilo. */
  readonly whole: number;
  readonly to: number;
}

function ruleIn(tokens: readonly Token[], sentences: readonly Sentence[]): Rule | null {
  for (const sentence of sentences) {
    if (sentence.figures === 0 || sentence.names === 0) continue;
    made ??= makeRules();
    for (const pattern of made) {
      const match = pattern.exec(sentence.text);
      const at = match?.indices?.groups;
      const [l, r] = [at?.['l']?.[0], at?.['r']?.[0]];
      if (!match || l === undefined || r === undefined || !isLye(tokens[sentence.tokenAt(l)])) continue;
      if (at?.['x'] && !isFat(tokens[sentence.tokenAt(at['x'][0])])) continue;
      const whole = at?.['k'] ? sentence.tokenAt(at['k'][0]) : -1;
      const to = sentence.tokenAt(match.index + match[0].length - 1) + 1;
      return { sentence, name: sentence.tokenAt(l), figure: sentence.tokenAt(r), whole, to };
    }
  }
  return null;
}

/** The tokens with the name of the lye at what was weighed by the rule. */
export function byRuleWeighed(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some(isLye)) return none;
  const sentences = sentencesOf(cut);
  const rule = ruleIn(tokens, sentences);
  if (!rule || !isPlain(tokens[rule.figure])) return none;
  const lye = tokens[rule.name];
  const listed = rowsBefore(tokens, tokens.length).filter(
    ({ figure }) => figure < rule.sentence.from || figure >= rule.to,
  );
  const [own, ...more] = listed.filter(({ at }) => isLye(tokens[at]));
  if (lye?.t !== 'name' || more.length > 0) return none;
  const total = listed.reduce((sum, { at, figure }) => sum + (isFat(tokens[at]) ? grams(tokens[figure]) : 0), 0);
  const whole = rule.whole < 0 ? heavy : grams(tokens[rule.whole]);
  // "141 g NaOH for 36 oz lard" and no other fat: it is what was weighed
  if (!(total > 0 && whole > 0 && grams(tokens[rule.figure]) > 0)) return none;
  const meant = (grams(tokens[rule.figure]) * total) / whole;
  const told = (out: readonly Token[], weight: Figure, to: number): ReturnType<typeof byRuleWeighed> => {
    const text = `I took ${written(weight.quantity)} as the lye, which was weighed by the rule that the post tells.`;
    return { tokens: out, told: [{ text, gone: [], from: rule.sentence.from, to, settles: true }] };
  };
  if (own) {
    const weight = tokens[own.figure] as Figure;
    if (!(Math.abs(grams(weight) - meant) <= near * meant) || own.figure < rule.figure) return none;
    const out = [...tokens];
    hush(out, Math.min(rule.name, rule.figure), rule.to, 'so much to the fats');
    return told(quietly(out, rule), weight, Math.max(rule.sentence.to, own.figure + 1));
  }
  for (const sentence of sentences.slice(sentences.indexOf(rule.sentence))) {
    const from = sentence === rule.sentence ? sentence.placeOf(rule.to - 1) + 1 : 0;
    const found = taken.exec(sentence.text.slice(from));
    const place = found?.indices?.groups?.['w']?.[0];
    if (!found || place === undefined || open.test(sentence.text)) continue;
    const w = sentence.tokenAt(from + place);
    const [weight, stand] = [tokens[w], tokens[w - 1]];
    if (!(grams(weight) > 0) || !isPlain(weight) || !stand) continue;
    const fits = Math.abs(grams(weight) - meant) <= near * meant;
    if (!fits && found.groups?.['how'] === undefined) continue;
    const out = [...tokens];
    hush(out, Math.min(rule.name, rule.figure), rule.to, 'so much to the fats');
    out[w - 1] = { ...lye, from: stand.from, to: stand.to };
    for (let k = w + 1; k < sentence.tokenAt(from + found.index + found[0].length - 1) + 1; k++) {
      const one = out[k];
      if (one?.t === 'name') out[k] = asFiller(one);
    }
    return told(quietly(out, rule), weight, sentence.to);
  }
  // "I have 1.4 kg of lard, how much lye?": what the rule says is no answer
  if (!sentences.some(({ text }) => howMuch.test(text))) return none;
  const out = [...tokens];
  hush(out, Math.min(rule.name, rule.figure), rule.to, 'so much to the fats');
  const text = 'I left out the rule that the post tells, as it asks how much it takes.';
  return {
    tokens: quietly(out, rule),
    told: [{ text, gone: [], from: rule.sentence.from, to: rule.sentence.to, settles: true }],
  };
}

/** The rule without what it is by: "per kilo of oil". */
function quietly(out: Token[], { name, figure, to }: Rule): readonly Token[] {
  for (let k = Math.min(name, figure); k < to; k++) {
    const one = out[k];
    if (one?.t === 'name') out[k] = asFiller(one);
  }
  return out;
}

const grams = (token: Token | undefined): number =>
  isPlain(token) && token.quantity.dim === 'mass' ? token.quantity.value : 0;

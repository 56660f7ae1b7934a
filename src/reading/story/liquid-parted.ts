/**
 * "Liquid is 330 g in total, and 110 g of that is goat milk. The remaining part is plain water": so much of the milk, and
 * the rest of the liquid as water.
 */

import { withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, isWeight, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsBefore, type Tale, taleAt, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set(['liquid', 'liquids', 'total liquid', 'total liquids']);
const inAll = '(?:in total|in all|all in all|altogether|all together|together|total|all told)';
const liquid = '(?<n>(?:total )?liquids?)';
const verbs = `(?:(?:is|are|was|were|has|comes?(?: out)? (?:to|at)|came to|makes?|weighs?|${inAll}|amount|of|about|just|[:=]) )*`;
const whole = `(?:\\b${liquid} ${verbs}(?<w>#)|(?<v>#) (?:of )?(?<m>(?:total )?liquids?))(?: ${inAll})?`;
const between = '(?: (?:[,;:(–—.-]|and|but|where|with|from))*';
const fraction = '(?<h>half|a half|a third|a quarter|third|quarter)';
const ofIt = '(?:of (?:it|that|this|those|them|the liquid|which)|out of (?:it|that))';
const named = `(?:(?:is|are|was|were|will be|being|as|in|the|my|fresh|frozen|thawed|full|plain|flat|whole) )*(?<l>M)`;
const parted = new RegExp(
  `${whole}${between} (?:(?:about|exactly|only|just|the first) )*(?:(?:of|from) (?:which|that|this|it) (?:,|i take|i use|is|are)? ?(?<q>#|half|a third|a quarter) (?:of )?${named}|(?:(?<p>#)|${fraction}) ${ofIt} ${named})`,
  'd',
);
/** What the rest of it is. */
const rest =
  /\b(?:(?:the|a) )?(?:rest|remainder|remaining(?: (?:part|bit|liquid|amount|portion|#))?|other (?:part|half|bit|#|two thirds|three quarters)|balance)(?: (?:of (?:it|that|the liquid)|is|are|was|were|all|just|only|being|as|plain|pure|tap|cold|distilled|filtered|boiled|rain|of|,))* (?<r>W)\b/d;
const open =
  /\?.*#|\b(?:if|could|might|maybe|perhaps|next time|last (?:time|batch)|usually|normally|instead|or|on top|extra|plus|besides)\b/;
const parts: Readonly<Record<string, number>> = {
  half: 1 / 2,
  'a half': 1 / 2,
  third: 1 / 3,
  'a third': 1 / 3,
  quarter: 1 / 4,
  'a quarter': 1 / 4,
};

function lettered(tokens: readonly Token[], { text, tokenAt }: Tale): string {
  return text.replace(/@/g, (_, place: number) => {
    const token = tokens[tokenAt(place)];
    const kind = isIngredient(token) ? token.meaning.kind : '';
    return kind === 'water' ? 'W' : kind === 'liquid' ? 'M' : 'X';
  });
}

/** The list with the liquid that such a sentence parts as what it is made of. */
export function liquidParted(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => 'text' in token && cues.has(token.text.toLowerCase()))) return none;
  const isWaterOrMilk = (at: number): boolean => {
    const token = tokens[at];
    return isIngredient(token) && /^(?:water|liquid)$/.test(token.meaning.kind);
  };
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || sentence.names === 0) continue;
    const tale = taleAt(sentences, k);
    const text = lettered(tokens, tale);
    const found = parted.exec(text);
    if (!found || found.index >= tale.turn || open.test(found[0])) continue;
    const place = (group: string, of: RegExpExecArray = found): number => {
      const at = of.indices?.groups?.[group]?.[0];
      return at === undefined ? -1 : tale.tokenAt(at);
    };
    const [all, noun] = [Math.max(place('w'), place('v')), Math.max(place('n'), place('m'))];
    const part = Math.max(place('p'), place('q'), place('h'));
    const milk = place('l');
    const [weight, own, name] = [tokens[all], tokens[part], tokens[noun]];
    if (!isPlain(weight) || !own || !name) continue;
    const to = (sentences[k + 1] ?? sentence).to;
    // a row of water or milk in another place says it already
    const others = rowsBefore(tokens, tokens.length).filter(({ at }) => isWaterOrMilk(at));
    if (others.some(({ at, figure }) => Math.max(at, figure) < sentence.from || Math.min(at, figure) >= to)) continue;
    // two of them, or the rest is something else
    if ([...text.matchAll(/M/g)].some(({ index }) => tale.tokenAt(index) !== milk)) continue;
    const value = isWeight(own)
      ? weightAt(tokens, part, all)
      : weight.quantity.value * (parts[(found.groups?.['h'] ?? found.groups?.['q'] ?? '').toLowerCase()] ?? Number.NaN);
    const left = weight.quantity.value - value;
    if (!(value > 0 && left > 0)) continue;
    const behind = rest.exec(text.slice(found.index + found[0].length));
    const offset = found.index + found[0].length;
    const water = behind ? tale.tokenAt(offset + (behind.indices?.groups?.['r']?.[0] ?? 0)) : -1;
    const out = [...tokens];
    const first = Math.min(all, noun);
    const last = behind ? water : milk;
    let agrees = true;
    for (let at = first; at <= last; at++) {
      const token = out[at];
      if (!token || at === milk || at === all || at === part) continue;
      if (token.t === 'quantity') {
        agrees &&= isSum(left, weightAt(tokens, at, all));
        out[at] = asAside(token, 'a part of what was said');
      } else if (token.t === 'name' || (at < milk && spoken(token) !== '')) out[at] = asFiller(token);
    }
    if (!agrees) continue;
    const said = (quantity: Figure['quantity'], of: number): Figure['quantity'] => withValue(quantity, of);
    out[all] = { ...weight, quantity: { ...said(weight.quantity, left), numbers: weight.quantity.numbers } };
    out[noun] = {
      t: 'name',
      from: name.from,
      to: name.to,
      text: 'text' in name ? name.text : 'liquid',
      meaning: { kind: 'water', id: 'water' },
      how: 'plain',
      meant: 'water',
    };
    const quantity = isWeight(own) ? own.quantity : said(weight.quantity, value);
    const numbers = own.t === 'quantity' ? own.quantity.numbers : [];
    out[part] = { t: 'quantity', from: own.from, to: own.to, quantity: { ...quantity, numbers } };
    const milkName = out[milk];
    const of = milkName?.t === 'name' ? milkName.text : '';
    const line = `I took ${written(quantity)} of ${of} and the rest of the liquid, ${written(said(weight.quantity, left))}, as water.`;
    return { tokens: out, told: [{ text: line, gone: [], from: sentence.from, to, settles: true }] };
  }
  return none;
}

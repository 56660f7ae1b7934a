/**
 * What a fat was infused with, before it was strained and weighed anew: "Infusion: 40 g of petals in 600 g olive oil. I
 * got 560 g back", and the list has "560 g of the calendula olive oil". Only that goes into the pot.
 */
import type { Signals } from '../words/signals.ts';
import { isFat, isIngredient, isStop, isWeight, type Span, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { figureOf } from '../words/weighed.ts';

const steeping = /^(?:infus(?:ed?|ing|ions?)|steep(?:ed|ing)?|macerat(?:ed?|ing|ions?)|soak(?:ed|ing))$/i;
const returning = /^(?:got|get|gave|left|back|came|remained|remains|strained|straining|pressed|squeezed)$/;
/** Tokens of a sentence to each side, and from a weight to the name of its row. */
const longest = 40;
const farthest = 5;
/** So much of the fat stays in what was in it, at the most. */
const mostKept = 0.5;

const isSteeping = (token: Token): boolean =>
  steeping.test(spoken(token)) ||
  (token.t === 'name' &&
    /^(?:unheld|unknown|liquid)$/.test(token.meaning.kind) &&
    token.text.split(' ').some(isWordOf));
const isWordOf = (word: string): boolean => steeping.test(word);

/** A row beyond `span` that weighs as much of the fat or somewhat less: its figure. */
function rowOf(tokens: readonly Token[], { from, to }: Span, id: string, whole: Figure): Figure | null {
  for (let k = 0; k < tokens.length; k++) {
    const name = tokens[k];
    if ((k >= from && k < to) || !isFat(name) || name.meaning.id !== id) continue;
    let at = k - 1;
    while (k - at < farthest && !isStop(tokens[at]) && tokens[at]?.t !== 'quantity') at--;
    const figure = [tokens[at], tokens[figureOf(tokens, k)]].find(isWeight);
    const share = figure ? figure.quantity.value / whole.quantity.value : 0;
    if (figure && share > mostKept && share <= 1) return figure;
  }
  return null;
}

/** The tokens with such weights set aside. */
export function steeped(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  if (!tokens.some(isSteeping)) return tokens;
  let out: Token[] | null = null;
  for (const k of figures) {
    const whole = tokens[k];
    if (!isWeight(whole)) continue;
    const span = sentenceAt(tokens, k, longest);
    const own = tokens.slice(span.from, span.to);
    const fats = own.filter(isFat);
    const [fat] = fats;
    const isInIt = own.some((one) => isIngredient(one) && /^(?:additive|scent|liquid)$/.test(one.meaning.kind));
    const at = fat ? tokens.indexOf(fat) : -1;
    if (!fat || fats.length > 1 || !isInIt || figureOf(tokens, at) !== k || !headed(tokens, span)) continue;
    const row = rowOf(tokens, span, fat.meaning.id, whole);
    if (!row) continue;
    const made: Token[] = out ?? [...tokens];
    out = made;
    const aside = (place: number, one: Figure): void => {
      made[place] = asAside(one, 'what was steeped, before it was strained');
    };
    for (let place = headOf(tokens, span); place < span.to; place++) {
      const one = tokens[place];
      if (isWeight(one)) aside(place, one);
      else if (one?.t === 'name' && one.meaning.kind !== 'role') made[place] = asFiller(one);
    }
    // "I got 560 g of it back"
    const next = sentenceAt(tokens, span.to + 1, longest);
    const words = tokens.slice(next.from, next.to);
    if (tokens[span.to]?.t === 'line' || words.some(isIngredient) || !words.some((one) => returning.test(spoken(one))))
      continue;
    words.forEach((one, n) => {
      if (isWeight(one) && one.quantity.value <= whole.quantity.value) aside(next.from + n, one);
    });
  }
  return out ?? tokens;
}

/** "Infused oil: 40 g petals in 600 g olive oil": a colon parts the word from what it is of. */
function headOf(tokens: readonly Token[], { from }: Span): number {
  const colon = tokens[from - 1];
  return colon?.t === 'sign' && colon.text === ':' ? sentenceAt(tokens, from - 2, longest).from : from;
}

const headed = (tokens: readonly Token[], span: Span): boolean =>
  tokens.slice(headOf(tokens, span), span.to).some(isSteeping);

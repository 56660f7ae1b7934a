/**
 * "Scale zeroed with the bowl on it, then one after another: 400 g after the lard, 600 g after adding coconut, 750 g after
 * adding corn oil": what a scale that was set to zero once shows as one fat after the other goes in. Each weighs what its
 * reading has more than the one before. Without those words it is heard where only that fits the lye.
 */
import { withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('after adding added with plus then'.split(' '));
const set = '(?:tar(?:e|ed|ing)|zero(?:ed|ing)?|reset|#)';
const runs = new RegExp(
  `\\b(?:without|not|never|no|didnt|did not|forgot(?: to)?) (?:ever |once |press(?:ing)? |hit(?:ting)? )?(?:re ?-? ?)?${set}(?: (?:it |the scales? )?(?:in )?(?:between|again|after))?|\\b(?:running|cumulative|rising|growing) (?:totals?|weights?|readings?|sums?|on)\\b|\\b(?:display|scales?|readings?|figure|number) (?:that )?(?:just )?(?:climb|rise|rose|grow|grew|went up|goes up|ran on|runs on|kept (?:rising|climbing|going))|\\b(?:kept|keep|keeping|kept on) adding\\b|\\bone (?:after|on top of) (?:another|the other)\\b`,
);
/** The bowl itself does not count. */
const zeroed =
  /\b(?:zeroed|tared|set to #|on #|reset) (?:the |my |first )*(?:with )?(?:the |my |an )?(?:empty )?(?:bowl|pan|pot|jug|scales?|dish|vessel|kettle)\b|\b(?:bowl|pan|pot|jug|scales?|dish|vessel|kettle) (?:was |were |is |first )*(?:zeroed|tared|set to #|at #)\b/;
const adding = /\b(?:after|with|adding|added|plus|then|on top|came|too|also|went|poured)\b/;
const open = /\b(?:if|would|should|each|separate(?:ly)?|by itself|on its own|every time|last (?:time|batch))\b/;
const [leastLye, mostLye] = [0.09, 0.27];
const leastSteps = 2;
const mostBetween = 7;

interface Step {
  readonly name: number;
  readonly figure: number;
  readonly words: string;
}

/** Readings and fats in turn, the reading first or the fat first, with nothing but words between them. */
function stepsIn(tokens: readonly Token[], { from, to }: Sentence): readonly Step[] {
  const steps: Step[] = [];
  let [name, figure, begin] = [-1, -1, from];
  let isFigureFirst: boolean | null = null;
  for (let at = from; at < to; at++) {
    const token = tokens[at];
    if (isIngredient(token)) {
      if (!isFat(token) || name >= 0) break;
      name = at;
    } else if (isPlain(token) && token.quantity.value > 0) {
      if (figure >= 0) break;
      figure = at;
    } else continue;
    isFigureFirst ??= figure >= 0;
    if (name < 0 || figure < 0) continue;
    if (Math.abs(name - figure) > mostBetween || figure < name === !isFigureFirst) break;
    const words = tokens.slice(begin, at).map(spoken).join(' ');
    steps.push({ name, figure, words: `${words} ${spoken(tokens[at + 1])}` });
    [name, figure, begin] = [-1, -1, at + 1];
  }
  return steps;
}

export function runningWeights(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  const all = rowsBefore(tokens, tokens.length);
  const fats = all.filter(({ at }) => isFat(tokens[at]));
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures < leastSteps || sentence.names < leastSteps || open.test(sentence.text)) continue;
    const steps = stepsIn(tokens, sentence);
    const first = steps[0];
    if (!first || steps.length < leastSteps || !steps.slice(1).every(({ words }) => adding.test(words))) continue;
    const weights = steps.map(({ figure }) => weightAt(tokens, figure, first.figure));
    const more = weights.map((weight, n) => weight - (weights[n - 1] ?? 0));
    if (!more.every((weight) => weight > 0) || fats.some(({ figure }) => !steps.some((one) => one.figure === figure)))
      continue;
    const around = `${sentences[k - 1]?.text ?? ''}${sentence.text}`;
    const lye = [...all, ...rowsOfAlkali(tokens, tokens.length)].find(
      ({ id }) => id === 'alkali' || /naoh|koh/.test(id),
    );
    const share = (of: readonly number[]): number =>
      weightAt(tokens, lye?.figure ?? -1, first.figure) / of.reduce((sum, one) => sum + one, 0);
    const fits = (of: readonly number[]): boolean => share(of) >= leastLye && share(of) <= mostLye;
    const isTold = runs.test(around) && zeroed.test(around) && (!lye || fits(more));
    if (!isTold && !(fits(more) && !fits(weights) && (runs.test(around) || steps.every(isAfter)))) continue;
    const out = [...tokens];
    const texts = steps.map(({ name, figure }, n) => {
      const [weight, fat] = [tokens[figure] as Figure, tokens[name] as Token];
      const now = withValue(weight.quantity, more[n] ?? 0);
      out[figure] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
      const [low, high] = [Math.min(name, figure), Math.max(name, figure)];
      for (let at = low + 1; at < high; at++) out[at] = asFiller(tokens[at] as Token);
      const beside = figure < name ? figure + 1 : figure - 1;
      const place = tokens[beside] as Token;
      if (beside !== name) {
        out[name] = asFiller(fat);
        out[beside] = { ...fat, from: place.from, to: place.to } as Token;
      }
      return `${written(now)} of ${'text' in fat ? fat.text : ''}`;
    });
    for (let at = sentence.from; at < Math.min(first.name, first.figure); at++)
      if (tokens[at]?.t === 'name' || tokens[at]?.t === 'word') out[at] = asFiller(tokens[at] as Token);
    const text = `I took ${texts.join(', ')}: each reading of the scale without the one before.`;
    const to = Math.max(...steps.flatMap(({ name, figure }) => [name, figure])) + 1;
    return {
      tokens: out,
      told: [{ text, gone: [], from: sentences[k - 1]?.from ?? sentence.from, to, settles: true }],
    };
  }
  return none;
}

const isAfter = ({ words }: Step): boolean => adding.test(words);

/**
 * "I tripled the fats, but with the lye I only doubled it, so 86 g went in (in 300 g water)": the fats so many times as they
 * are listed, and the lye by its own weight, which its own factor bears out where one is told.
 */
import { once } from '../once.ts';
import { withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { apart, isPlain, isSum, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

const factors: Readonly<Record<string, number>> = { doubl: 2, tripl: 3, trebl: 3, quadr: 4, twice: 2, halve: 1 / 2 };
const verb = '(?:doubl|tripl|trebl|quadrupl|halv)(?:ed|ing)';
const fats = '(?:(?:the|my|all|of|both|three|those|these) )*(?:fats?|oils?)(?: and butters)?';
const patterns = once(() => ({
  fats: new RegExp(
    `\\b(?<a>${verb}) ${fats}\\b|\\b${fats} (?:(?:i|we|were|was|got|have|had|been|all|accidentally) )*(?<b>${verb})\\b|\\b${fats} (?:(?:i|we|were|was|got|went|in|made|took) )*(?<c>#|two|three|four) (?:times|x)\\b|\\b(?<d>twice) ${fats}\\b`,
    'd',
  ),
  lye: new RegExp(
    `\\b(?<a>${verb})\\b|(?<c>#|two|three|four) times\\b|\\b(?<d>twice)\\b|\\b(?<one>forgot|forgotten|not|never|didnt|single|once|same|as it (?:is|was|stands))\\b`,
    'd',
  ),
}));
const open =
  /\b(?:if|would|should|could|might|may|maybe|perhaps|nearly|almost|next|last (?:time|batch|week|month|year)|want(?:ed)?|going to|she|he|they|usually|always)\b/;
const cues = /^(?:doubl|tripl|trebl|quadrupl|halv|times|twice)/;
const most = 2;

const words: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4 };

/** How the answer begins to say it. */
export const fatsTaken = 'I took the fats';

export function fatsTimes(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.test(spoken(token)))) return none;
  const isKind = (token: Token | undefined, kind: string): boolean =>
    isIngredient(token) && token.meaning.kind === kind;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    const found = patterns().fats.exec(sentence.text);
    // "I doubled the oils and the water": the water is told of with them
    if (
      !found ||
      /^ (?:and|,|&|[+]) (?:(?:the|all|my|also) )*@/.test(sentence.text.slice(found.index + found[0].length))
    )
      continue;
    const story = joinedAt(sentences, k, most);
    const factorOf = (match: RegExpExecArray, from: number): number => {
      const { a, b, c, d } = match.groups ?? {};
      const place = match.indices?.groups?.['c']?.[0];
      const figure = place === undefined ? undefined : tokens[story.tokenAt(from + place)];
      if (c !== undefined) return figure?.t === 'quantity' ? figure.quantity.value : (words[c] ?? Number.NaN);
      return factors[(a ?? b ?? d ?? '').slice(0, 5)] ?? Number.NaN;
    };
    const factor = factorOf(found, 0);
    const listed = rowsBefore(tokens, sentence.from);
    const oils = listed.filter(({ at }) => isFat(tokens[at]));
    const lyes = [...listed, ...rowsOfAlkali(tokens, sentence.from)].filter(({ at }) => isKind(tokens[at], 'alkali'));
    const [lye] = lyes;
    const end = story.endAt(found.index) < story.text.length ? story.to : sentence.to;
    // the first weight that is of no water: what went in of the lye
    const given = Array.from({ length: end - sentence.from }, (_, n) => sentence.from + n).filter(
      (at) => isPlain(tokens[at]) && (tokens[at] as Figure).quantity.dim === 'mass',
    );
    const waters = given.filter((at) =>
      [1, 2, 3].some((step) => isKind(tokens[at + step], 'water') && !isBetween(at, at + step)),
    );
    const [own, ...others] = given.filter((at) => !waters.includes(at));
    const isTold = story.text.slice(0, sentence.text.length).includes('@');
    if (!lye || new Set(lyes.map(({ figure }) => figure)).size > 1 || oils.length === 0 || !(factor > 0)) continue;
    if (own === undefined || others.length > 0 || !isTold || open.test(sentence.text)) continue;
    const clauses = clausesOf(story.text, found.index + found[0].length).map(({ text, at }) => {
      const match = patterns().lye.exec(text);
      const names = [...text.matchAll(/@/g)].map(({ index }) => tokens[story.tokenAt(at + index)]);
      return { match, at, names };
    });
    // "I halved the water": of that something is told by itself
    if (clauses.some(({ match, names }) => match && names.some((name) => isKind(name, 'water')))) continue;
    const ofLye = clauses.find(({ match, names }) => match && names.some((name) => isKind(name, 'alkali')));
    const times = !ofLye?.match ? Number.NaN : ofLye.match.groups?.['one'] ? 1 : factorOf(ofLye.match, ofLye.at);
    const now = weightAt(tokens, own, lye.figure);
    const was = weightAt(tokens, lye.figure, lye.figure);
    if (!Number.isNaN(times) && !isSum(was * times, now))
      return {
        ...none,
        unheard: rawText(prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 1).trim(),
      };
    const out = [...tokens];
    for (const { figure } of oils) {
      const weight = tokens[figure] as Figure;
      const value = withValue(weight.quantity, weight.quantity.value * factor);
      out[figure] = { ...weight, quantity: { ...value, numbers: weight.quantity.numbers } };
    }
    const weight = tokens[lye.figure] as Figure;
    const alkali = withValue(weight.quantity, now);
    out[lye.figure] = { ...weight, quantity: { ...alkali, numbers: weight.quantity.numbers } };
    apart(out, own, 'said of the lye', lye.figure);
    const water = listed.find(({ at }) => isKind(tokens[at], 'water'));
    if (water && waters.length > 0) {
      apart(out, water.figure, 'what was planned', lye.figure);
      out[water.at] = asFiller(tokens[water.at] as Token);
    } else if (water) {
      const amount = tokens[water.figure] as Figure;
      const value = withValue(amount.quantity, (amount.quantity.value * now) / was);
      out[water.figure] = { ...amount, quantity: { ...value, numbers: amount.quantity.numbers } };
    }
    for (let at = sentence.from; at < end; at++) {
      const token = tokens[at];
      const isOfWater = isKind(token, 'water') || waters.includes(at);
      if (token?.t === 'name' && !isOfWater) out[at] = asFiller(token);
      else if (token?.t === 'quantity' && at !== own && !isOfWater) apart(out, at, 'times the list', lye.figure);
    }
    const text = `${fatsTaken} ${Number(factor.toPrecision(4))} times, and ${written(alkali)} of lye, as the post says.`;
    return { tokens: out, told: [{ text, gone: [weight.quantity], from: sentence.from, to: end, settles: true }] };

    function isBetween(from: number, to: number): boolean {
      return tokens.slice(from + 1, to).some((one) => one.t === 'quantity' || isIngredient(one));
    }
  }
  return none;
}

/** What stands between commas, with its place. */
function clausesOf(text: string, from: number): readonly { readonly text: string; readonly at: number }[] {
  const ends = [...text.slice(from).matchAll(/[,;.()]| (?:and|but|so) /g)].map(({ index }) => from + index + 1);
  return [from, ...ends].map((at, n) => ({ text: text.slice(at, ends[n] ?? text.length), at }));
}

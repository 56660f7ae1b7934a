/**
 * "Shea butter: 60 g at the start, 40 g at the end of the cook", "of my 100 g of shea I put 60 g in with the oils; the other
 * 40 g I stirred in when the cook was over": one fat in two parts, of which the second is not cooked.
 */
import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isRole } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt, type Story } from './story.ts';
import { hush, isPlain, isSum, type Name, rowsOf, weightAt } from './tale.ts';

const cook = '(?:cook(?:ing)?|boil(?:ing)?|gel|saponification|hot process)';
const after = new RegExp(
  `\\b(?:after|once|when|at the (?:very )?end of|at end of|end of|following|post) (?:(?:the|it|soap|was|is|all|had|has|been|of|my) )*(?:${cook}\\b|cooked\\b|done\\b|finished\\b|ready\\b)|\\b${cook} (?:was|is|had) (?:over|done|finished)\\b|\\bat the (?:very )?end\\b|\\bafterwards?\\b|\\bafter$`,
);
const before =
  /\b(?:start|beginning|begin|first|before|with the (?:other )?(?:oils|fats)|in with|into the pot|with the rest|cooked|upfront|up front|at once|together with)\b/;
const open = /\?|\b(?:if|should|would|could|next|last (?:time|batch)|or|maybe|she|he|they)\b/;

/** What a story says of one fat: where its figures stand; null where it tells of another one, or of no two parts. */
function partsIn(tokens: readonly Token[], story: Story): { name: number; a: number; b: number; whole: number } | null {
  const names = [...story.text.matchAll(/@/g)].map(({ index }) => story.tokenAt(index));
  const figures = [...story.text.matchAll(/#/g)].map(({ index }) => ({ place: index, at: story.tokenAt(index) }));
  const fats = names.filter((at) => isFat(tokens[at]));
  const [name] = fats;
  if (
    name === undefined ||
    names.some((at) => tokens[at]?.t === 'name' && !isFat(tokens[at]) && !isRole(tokens[at], 'after'))
  )
    return null;
  if (fats.some((at) => thingOf(tokens[at] as Name) !== thingOf(tokens[name] as Name))) return null;
  const plain = figures.filter(({ at }) => isPlain(tokens[at]));
  if (plain.length !== figures.length || plain.length < 2 || plain.length > 3) return null;
  const [last, first] = [plain.at(-1), plain.at(-2)];
  const whole = plain.length === 3 ? (plain[0]?.at ?? -1) : -1;
  if (!first || !last) return null;
  const between = story.text.slice(first.place + 1, last.place);
  const behind = story.text.slice(last.place + 1);
  const clause = behind.replace(/[.;!].*/, '');
  if (!after.test(clause) && !after.test(between.replace(/^.*[,;.]/, ''))) return null;
  if (after.test(between.replace(/[,;.].*/, '')) || open.test(story.text)) return null;
  if (whole < 0 && !before.test(between) && !before.test(story.text.slice(0, first.place))) return null;
  if (
    whole >= 0 &&
    !isSum(weightAt(tokens, whole, first.at), weightAt(tokens, first.at, first.at), weightAt(tokens, last.at, first.at))
  )
    return null;
  return { name, a: first.at, b: last.at, whole };
}

const isFree = (token: Token | undefined): boolean =>
  token?.t === 'word' || (token?.t === 'sign' && /^[,;.:(–—-]$/.test(token.text));

/** The list in which the second part is put in after the cook. */
export function beforeAndAfter(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || sentence.figures === 0) continue;
    for (const count of [1, 2]) {
      const story = joinedAt(sentences, k, count);
      const found = /#[^#]*#/.test(story.text) ? partsIn(tokens, story) : null;
      if (!found) continue;
      const { name: at, a, b, whole } = found;
      const name = tokens[at] as Name;
      if (rowsOf(tokens, name, tokens.length).some(({ figure }) => ![a, b, whole].includes(figure))) continue;
      const out = [...tokens];
      const place = isFree(out[b - 1]) ? b - 1 : -1;
      const first = a - 1 === at || a + 1 === at ? at : isFree(out[a - 1]) ? a - 1 : -1;
      const [one, two] = [tokens[a], tokens[b]];
      if (place < 0 || first < 0 || place === a || !isPlain(one) || !isPlain(two)) continue;
      hush(out, story.from, story.to, 'said before', (n) => n === a || n === b);
      for (let n = story.from; n < story.to; n++) {
        const token = out[n];
        if (token?.t === 'word' || token?.t === 'name') out[n] = asFiller(token);
      }
      const nameAt = (n: number): Name => ({ ...name, from: (tokens[n] as Token).from, to: (tokens[n] as Token).to });
      out[first] = nameAt(first);
      out[place] = { ...nameAt(place), late: true };
      // no part of the other one
      const joint = tokens[place - 1];
      if (joint?.t === 'word' && place - 1 > a) out[place - 1] = { ...joint, t: 'sign', text: ',', sort: null };
      const text = `I took ${written(one.quantity)} of ${name.text} in the cook and ${written(two.quantity)} after it, as the post says.`;
      return { tokens: out, told: [{ text, gone: [], from: story.from, to: story.to, settles: true }] };
    }
  }
  return none;
}

/**
 * Superfats of earlier batches, and the one of this: "my first had 8 % superfat, the second 3 %. So this one shall have
 * 5.5 %". The others count for nothing.
 */
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient, isMark, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { decidedIn } from './superfat-decided.ts';

type Name = Extract<Token, { t: 'name' }>;
const isSuperfat = (token: Token | undefined): token is Name =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'superfat';
const isShare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'percent';
const most = 0.25;
/** "I keep 5 % superfat, but I want 0 today": a share without its sign. */
const isBare = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'bare' && token.quantity.value < 100 * most;

/** "So this one shall be at #", "now I want #", "# for this one". */
const before =
  /\b(?:this|now|mine|final(?:ly)?|in the end|settled|decided)\b(?:(?!\b(?:was|were|had|turned|got|no|not)\b)[^#@.?]){0,70}$/;
const behind = /^# (?:superfat |please )?(?:(?:for|in|with) (?:this|mine)\b|this time\b|now\b|today\b|here\b)/;
/** The others were of something that is done. */
const earlier =
  /\b(?:was|were|had|did|left|dried|last|first|second|third|old|earlier|previous|before|too|came out|usual|usually|normal|normally|always|keep|otherwise|rule|everything)\b/;
const open = /\?|\b(?:or|if|between|either|maybe|perhaps|next)\b/;

const ofOthers = /\b(?:hers|his|theirs|her|she|he|they)\b/;
const ofOwn = /\b(?:i|we|ive|im|mine|this|now)\b/;

/** The tokens in which the superfat of this batch alone is one. */
export function superfatNow(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  if (!tokens.some(isSuperfat)) return tokens;
  const since = sinceThen(tokens);
  if (since) return withNow(tokens, since.now, [since.once]);
  const decided = decidedIn(cut);
  if (decided) return withNow(tokens, decided.now, decided.others);
  const sentences = sentencesOf(cut).filter(({ text }) => !ofOthers.test(text) || ofOwn.test(text));
  const told = sentences.filter(({ from, to }) => tokens.slice(from, to).some(isSuperfat));
  const [paragraph, ...more] = new Set(told.map((one) => one.paragraph));
  if (paragraph === undefined || more.length > 0) return tokens;
  const all = sentences.filter((one) => one.paragraph === paragraph);
  const shares = all.flatMap((sentence) =>
    tokens
      .slice(sentence.from, sentence.to)
      .flatMap((token, at) =>
        isShare(token) || isBareNow(sentence, token, sentence.from + at) ? [{ sentence, at: sentence.from + at }] : [],
      ),
  );
  const now = shares.filter(({ sentence, at }) => isOfThis(sentence, at));
  const [one, ...others] = now;
  if (!one || others.length > 0 || shares.length < 2) return tokens;
  const words = shares.map(({ sentence }) => sentence.text).join('');
  const isDone = shares.every(({ sentence, at }) => at === one.at || earlier.test(sentence.text));
  const isPlain = shares.every(({ at }) => {
    const [share, next] = [tokens[at], tokens[at + 1]];
    if (share?.t !== 'quantity' || share.quantity.upTo !== null || isIngredient(next)) return false;
    return share.quantity.dim === 'bare' || share.quantity.value < most;
  });
  if (!isPlain || !isDone || open.test(words)) return tokens;
  return withNow(
    tokens,
    one.at,
    shares.map(({ at }) => at),
  );
}

/** The tokens with the share at `now` as the superfat, and the others set aside. */
function withNow(tokens: readonly Token[], now: number, shares: readonly number[]): readonly Token[] {
  const name = tokens.find(isSuperfat);
  const spot = tokens[now - 1];
  if (!name) return tokens;
  const isBeside = isSuperfat(tokens[now + 1]) || isSuperfat(spot);
  if (!isBeside && (!spot || (spoken(spot) === '' && !isMark(spot, ',:')))) return tokens;
  return tokens.map((token, k) => {
    if (isSuperfat(token)) return isBeside && Math.abs(k - now) === 1 ? token : asFiller(token);
    if (k === now - 1 && !isBeside) return { ...name, from: token.from, to: token.to };
    if (token.t !== 'quantity') return token;
    if (k === now) return { ...token, quantity: asShare(token.quantity) };
    return shares.includes(k) ? asAside(token, 'of another batch') : token;
  });
}

const asShare = (quantity: Figure['quantity']): Figure['quantity'] =>
  quantity.dim === 'percent' ? quantity : { ...quantity, dim: 'percent', value: quantity.value / 100, other: null };

const long =
  /\b(?:for (?:many |several |some )?(?:years|ages|months|long|a long time|a while)|until|till|up to|used to)\b/;
const today =
  /\b(?:since (?:[a-z']+ ){1,4}|these days|lately|nowadays|now|recently|of late|today|(?:from|as of) (?:[a-z]+ ){1,2}on )\b(?!.*\b(?:still|she|he|they|sister|friend|my [a-z]+ (?:goes|takes|does|uses))\b)/;
const farthest = 16;

/** "I did 8 % superfat for years, since January it's 5": what was so, and what is. */
function sinceThen(tokens: readonly Token[]): { readonly once: number; readonly now: number } | null {
  for (let once = 0; once < tokens.length; once++) {
    const share = tokens[once];
    if (!isShare(share) || share.quantity.value >= most) continue;
    let now = once + 1;
    while (now - once <= farthest && now < tokens.length && tokens[now]?.t !== 'quantity' && !isIngredient(tokens[now]))
      now++;
    const next = tokens[now];
    if (next?.t !== 'quantity' || !/^(?:percent|bare)$/.test(next.quantity.dim) || next.quantity.upTo !== null)
      continue;
    if (next.quantity.dim === 'bare' && (next.quantity.value >= most * 100 || next.quantity.value < 1)) continue;
    const between = wordsOf(tokens, once + 1, now);
    const behind = wordsOf(tokens, now + 1, now + 3);
    const before = wordsOf(tokens, Math.max(0, once - 6), once);
    if (!long.test(between) && !/\b(?:used to|for (?:years|ages|months|long))\b[^.]*$/.test(before)) continue;
    if (!today.test(`${between} `) && !/^(?:since|now|these days|today|nowadays|lately)/.test(behind)) continue;
    if (/^(?:bars?|soaps?|times|batches|people|or|to|of)\b/.test(behind)) continue;
    return { once, now };
  }
  return null;
}

const wordsOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map((token) => (token.t === 'sign' ? token.text : spoken(token)))
    .join(' ');

/** Such a figure, of this batch, in a sentence that gives a share of others. */
const isBareNow = (sentence: Sentence, token: Token, at: number): boolean =>
  isBare(token) && wants.test(sentence.text.slice(0, sentence.placeOf(at))) && isOfThis(sentence, at);
const wants = /superfat\b.*\b(?:want|like|need|so|only|take|to|at|make it|go|for) (?:only |just )?$/;

function isOfThis(sentence: Sentence, at: number): boolean {
  const place = sentence.placeOf(at);
  return before.test(sentence.text.slice(0, place)) || behind.test(sentence.text.slice(place));
}

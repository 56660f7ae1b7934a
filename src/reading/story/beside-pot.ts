/**
 * What a post tells beside a whole list that is of nothing in the pot: what bars weigh, what moulds take and what was over,
 * what is left in the jars for another day, what a balm of another pot was made of, how somebody else does it, what was
 * made years ago.
 */
import { packed } from '../columns/columns.ts';
import { otherUse } from '../figures/other-use.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import { hush, isPlain, rowsBefore } from './tale.ts';

/** Words of which one stands in each such sentence. */
const cues: ReadonlySet<string> = new Set(
  'bars bar pieces pucks rounds ones cubes hearts squares slices mould mold moulds molds left leftover leftovers remains remain over balm salve lotion ointment candle candles cream last leaves takes does makes swaps uses puts adds replaces poured cut'.split(
    ' ',
  ),
);

const relative =
  '(?:sister|brother|mother|mum|mom|dad|father|aunt|auntie|uncle|gran|granny|grandma|grandmother|neighbou?r|friend|colleague|cousin|teacher|daughter|son|husband|wife|partner|barber|woman|man|lady|girl|guy|bloke|chap|soaper|somebody|someone)';
const vessel =
  '(?:jars?|tubs?|tins?|bottles?|bags?|box(?:es)?|cans?|canister|cupboard|blocks?|packets?|pantry|fridge|larder|drum|bucket)';

interface Rule {
  readonly reason: string;
  readonly tells: RegExp;
  /** What would make something else of it. */
  readonly unless: RegExp;
  /** No ingredient is named there. */
  readonly nameless?: true;
  /** What the next sentence says. */
  readonly next?: RegExp;
  /** The alkali is weighed elsewhere, too: where it is asked for, a size may be meant for the batch. */
  readonly whole?: true;
  /** It tells of a change, which is none of this pot. */
  readonly settles?: true;
}

const rules: readonly Rule[] = [
  {
    reason: 'what a bar weighs',
    tells:
      /\b(?:bars?|pieces?|pucks?|rounds?|ones|cubes?|hearts?|squares?|slices?)\b[^?]*(?:\b(?:at|of|about|only|just|weigh|weighs|weighed) #|: #)|# (?:wet|fresh|when poured|when cut)\b|\bwhen (?:poured|cut|fresh|wet) they (?:were|weighed|had) #/,
    unless:
      /\?|\b(?:want(?! to (?:label|sell|wrap|weigh|know))|need|should|shall|would|aim|plan|add|added|put|more|extra|instead|from|out of|total|altogether|in all|fats?|oils?|lye|batch|recipe|each bar (?:has|holds|contains)|scale|short|not|missing)\b/,
    nameless: true,
    whole: true,
  },
  {
    reason: packed,
    tells: /\bmou?lds?\b[^?]*\b(?:holds?|held|takes?|took|made for|fits?|is for|are for)\b[^?#]{0,20}#/,
    unless:
      /\?|\b(?:want|need|should|shall|would|scale|resize|adjust|add|added|more|instead|oils?|fats?|lye|recipe|half|double|doubled|times)\b/,
    nameless: true,
    whole: true,
  },
  {
    reason: 'what is left of a pack',
    tells: new RegExp(
      `\\b(?:(?:theres|there is|there are|i have|ive|ive got|i still have|still|left in|left over|leftover|remains?|remaining)\\b[^?]*#[^?]*\\b${vessel}|${vessel}[^?#]{0,14}# )(?=.*\\b(?:mini batch|leftovers|for the next|next (?:one|batch|month|time|week)|salad|cooking|frying|another (?:soap|batch|day|time|one)|weekend|later|some day|order more)\\b)`,
    ),
    unless:
      /\?|\b(?:only|just|so (?:i|we) (?:used|use|took|take|put)|short|instead|poured|put in|added|went in|weighed|was|were|had|(?:into|in) (?:it|this|the (?:pot|soap|mix)))\b/,
    whole: true,
  },
  {
    reason: otherUse,
    tells:
      /\b(?:in (?:one|another|the other|a separate|a second|the second|the small|a small)(?: (?:pot|pan|bowl|saucepan))?|(?:the|my) (?:other|second|small) (?:pot|pan|bowl|saucepan) (?:had|has|held|got)|separately|on the side)\b(?=.*\b(?:balm|salve|lotion|ointment|candles?|body butter|hand cream|lip balm|polish)\b)/,
    unless:
      /\?|\b(?:ladled|scooped|out of (?:it|the|that)|from the (?:mix|melt|pot|batch)|of that|stirred (?:it|that|in)|into the soap|to the soap|in the soap|both|back|same pot|poured (?:it|that) in)\b/,
  },
  {
    reason: 'said by somebody else',
    tells: new RegExp(
      `^(?:but |and |now )?(?:a|an|my|the|our|some|one) (?:[a-z]+ ){0,2}${relative}(?: (?:(?:i|we) know|of mine|at work|next door|from [a-z]+|in [a-z]+))* (?:(?:always|usually|just|simply|also) )*(?:leaves|takes|uses|does|makes|swaps|replaces|puts|adds|drops|skips|prefers|works|has|thinks|did|made)\\b`,
    ),
    unless:
      /\?|\b(?:same as|like (?:me|mine|us)|(?:in|to|into|from) (?:my|our|the|this) (?:pot|soap|jug|mix|bowl|batch|lye|oils)|before (?:i|we)|so (?:i|we)|me too|(?:i|we) (?:too|also|did the same)|(?:her|his|their) recipe)\b/,
    next: /^(?:but |so |and |well , |as for me , )*(?:(?:mine|ours) (?:stays|stayed|is|was|has been)(?: (?:exactly|just))* (?:as|like) (?:written|it (?:is|stands)|listed|above|the list|in the list)|(?:i|we) (?:(?:have|always|just|myself) )*(?:kept|keep|stuck|stick|stayed|stay|went|go|left|held) (?:it )?(?:to|with|by|as) (?:(?:the|my|what|is|it|was) )*(?:list|recipe|above|written|listed|plan|one above)|(?:i|we) (?:didnt|did not|dont|do not|never do|never did|wouldnt|havent)(?= [.,;!]|$| $))/,
    settles: true,
  },
  {
    reason: 'of another batch',
    tells:
      /\b(?:last (?:year|spring|summer|autumn|winter|christmas)|years ago|back then|two years ago|the year before)\b[^?]{0,12}\b(?:i|we) (?:made|did|cooked|had)\b[^?]*\b(?:nothing (?:else|but)|only|alone|pure|plain|no other|came out|turned out)\b/,
    unless: /\?|\b(?:same|again|as now|as today|like now|this recipe|this one|still|since then|ever since)\b/,
    settles: true,
  },
];

/** "Two yoghurt cups" name a vessel. */
const isStuff = (token: Token, k: number, tokens: readonly Token[]): boolean =>
  isIngredient(token) && !/^(?:cups?|cartons?|pots?|tubs?|tins?|moulds?|jars?)$/.test(spoken(tokens[k + 1]));

/** Rows of fats outside of a sentence without which there is no list. */
const leastFats = 2;

interface Listed {
  readonly fats: readonly Weighed[];
  readonly lyes: readonly Weighed[];
}

function listBeside(tokens: readonly Token[], { from, to }: Sentence): Listed {
  const rows = rowsBefore(tokens, tokens.length).filter(({ at }) => at < from || at >= to);
  return {
    fats: rows.filter(({ at }) => isFat(tokens[at])),
    lyes: rows.filter(({ at }) => {
      const name = tokens[at];
      return isIngredient(name) && name.meaning.kind === 'alkali';
    }),
  };
}

/** The tokens without the figures and names of such sentences. */
export function besidePot(cut: Cut): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } {
  const { tokens } = cut;
  const tells = (token: Token): boolean => 'text' in token && cues.has(token.text.toLowerCase());
  if (!tokens.some(tells)) return { tokens, told: [] };
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures + sentence.names === 0) continue;
    const { text, from, to } = sentence;
    const rule = rules.find(
      (one) =>
        one.tells.test(text) && !one.unless.test(text) && (!one.next || one.next.test(sentences[k + 1]?.text ?? '')),
    );
    if (!rule || (rule.nameless && isAny(tokens, from, to, (token, at) => isStuff(token, at, tokens)))) continue;
    const list = listBeside(tokens, sentence);
    if (new Set(list.fats.map(({ id }) => id)).size < leastFats || (rule.whole && list.lyes.length === 0)) continue;
    out ??= [...tokens];
    hush(out, from, to, rule.reason);
    if (!rule.settles) continue;
    const gone = tokens.slice(from, to).flatMap((token) => (isPlain(token) ? [token.quantity] : []));
    told.push({ text: `I left out what tells of another batch.`, gone, from, to, settles: true });
  }
  return out ? { tokens: out, told } : { tokens, told: [] };
}

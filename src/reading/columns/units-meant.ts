/**
 * The unit that a post puts right for all of its weights: "EDIT: every one of those is OUNCES", "sorry, I meant oz, not
 * g". What only looks so is asked about: "all in ounces" beside grams.
 */
import { type Unit, unit } from '../../units/units.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { withUnit } from './columns.ts';

const isMass = (token: Token): token is Figure => token.t === 'quantity' && token.quantity.dim === 'mass';

/** Weights of a recipe, at the least. */
const leastWeights = 3;

/** The unit of most weights; null where they are few. */
function commonUnit(tokens: readonly Token[]): Unit | null {
  const count = new Map<Unit, number>();
  let most: Unit | null = null;
  for (const token of tokens) {
    if (!isMass(token) || !token.quantity.unit) continue;
    count.set(token.quantity.unit, (count.get(token.quantity.unit) ?? 0) + 1);
  }
  for (const [unit, times] of count) if (times > (most ? (count.get(most) ?? 0) : leastWeights - 1)) most = unit;
  return most;
}

const corrects =
  /\b(?:edit|edited|sorry|oops|whoops|argh|ugh|meant|correction|typo|wrong unit|should (?:be|say|read)|autocorrect\w*|put|typed|wrote|says|actually|really)\b/;
const all = /\b(?:all|every|everything|each|those|these|they|them|figures|numbers|amounts|weights|units?|it|i meant)\b/;
/** An answer in another unit is asked for, or a rule told. */
const asksFor =
  /^(?:and |so |ok )?(?:can|could|would|is|are|what|how|which)\b|\b(?:please|pls|can you|could you|give|show|tell|want|need|answer|convert\w*|convenient|prefer|like|scale|only have|own|never|how many|per)\b/;

interface Meant {
  readonly unit: Unit;
  readonly sentence: Sentence;
}

/** The unit that a sentence says in place of the one of the weights; null where none does. */
function meantIn(sentence: Sentence, before: string, written: Unit, lexicon: Lexicon): Meant | null {
  const { text } = sentence;
  if (!all.test(text) || !corrects.test(`${before} ${text}`) || asksFor.test(text)) return null;
  for (const [word] of text.matchAll(/(?<!\bnot )\b\p{L}+/gu)) {
    const hit = lexicon.units.next?.get(word)?.hit;
    const said = hit ? unit(hit) : null;
    if (said?.dimension === 'mass' && said.id !== written.id) return { unit: said, sentence };
  }
  return null;
}

/** One of its words is a unit's, and it has no figures. */
function namesUnit({ tokens, words }: Cut, { from, to, figures }: Sentence): boolean {
  if (figures > 0) return false;
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (token?.t !== 'word' && token?.t !== 'name') continue;
    for (let at = token.from; at < token.to; at++) if (words[at]?.isUnit) return true;
  }
  return false;
}

/** The first sentence that says another unit than the one of the weights. */
function saidFirst(cut: Cut, written: Unit, lexicon: Lexicon): Meant | null {
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (!namesUnit(cut, sentence)) continue;
    const meant = meantIn(sentence, sentences[k - 1]?.text ?? '', written, lexicon);
    if (meant) return meant;
  }
  return null;
}

/** The tokens with all weights in the unit that the post says they are of, and what the answer says of it. */
export function unitsMeant(
  cut: Cut,
  lexicon: Lexicon,
): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } {
  const { tokens, words } = cut;
  const apart = new Set<string>();
  for (const token of tokens) {
    const hit = token.t === 'word' && words[token.from]?.isUnit ? lexicon.units.next?.get(token.text)?.hit : null;
    if (hit && unit(hit).dimension === 'mass') apart.add(hit);
  }
  const written = apart.size > 0 ? commonUnit(tokens) : null;
  if (!written && apart.size === 2) return { tokens: withoutDenied(tokens, words), told: [] };
  const meant = written && (apart.size > 1 || !apart.has(written.id)) ? saidFirst(cut, written, lexicon) : null;
  if (!written || !meant) return { tokens, told: [] };
  const text = `I took all weights as ${meant.unit.id}, not ${written.id}, as the post corrects itself.`;
  return {
    tokens: tokens.map((token) =>
      isMass(token) && isSingle(token, written) ? asMeant(token, written, meant.unit) : token,
    ),
    told: [{ text, gone: [], from: meant.sentence.from, to: meant.sentence.to }],
  };
}

/** "Those are ounces, not grams": the tokens without the unit that it is not, where the weights have none. */
const withoutDenied = (tokens: readonly Token[], words: Cut['words']): readonly Token[] =>
  tokens.map((token, k) => {
    const [before, first] = [spoken(tokens[k - 1]), spoken(tokens[k - 2])];
    const isDenied = before === 'not' || (first === 'not' && /^(?:in|the)$/.test(before));
    return token.t === 'word' && words[token.from]?.isUnit && isDenied ? asFiller(token) : token;
  });

const isSingle = ({ quantity }: Figure, { id }: Unit): boolean =>
  quantity.unit?.id === id && quantity.numbers.length === 1;

function asMeant(token: Figure, written: Unit, meant: Unit): Token {
  const { quantity } = token;
  const figure = (value: number): number => value / written.factor;
  const bare = {
    ...quantity,
    dim: 'bare' as const,
    value: figure(quantity.value),
    upTo: quantity.upTo === null ? null : figure(quantity.upTo),
    other: null,
    unit: null,
  };
  return { ...token, quantity: withUnit(bare, meant.id) };
}

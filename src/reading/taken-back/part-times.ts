/**
 * "I doubled the oils and the water, but I forgot to double the lye": some of the list was made so many times as large, and
 * the rest was not. Whether the list has them as they were before or as they went in shows in its lye.
 */
import type { Item } from '../rows/items.ts';
import { isAmount, isThing } from '../rows/kinds.ts';
import type { Sentence } from '../text/sentences.ts';
import { cue } from '../words/cue-words.ts';
import { multiples } from '../words/multiples.ts';
import type { Quantity } from '../words/quantities.ts';
import { isAlkali, isFat, isOther, isPart, isSame, type Said } from './said.ts';
import type { Post } from './withdrawn.ts';

const one =
  '(?:(?:all|of|the|my|our|both|up|two|three|four|five|…|#(?= (?:oils?|fats?|butters?)\\b)) )*(?:@|oils?|fats?|butters?)';
const parts = `${one}(?: (?:, )?(?:and |& |as well as )?(?!(?:the |my )*@ (?:stayed|stays|was|is|i|we|kept|only|remained|at)\\b)${one})*`;
/** "Weighed half of the oils", "put in double the oils". */
const puts =
  '(?:weighed|measured|used|took|poured|melted|put|made)(?: out| in| up| off)?(?: only| just| exactly)? (?:half|twice|double)(?= (?:of |the |my |all )+(?:oils?|fats?|butters?|lye|@))(?! the (?:weight|price))';
const made = new RegExp(
  `(?<!\\b(?:nearly|almost|if|would have|should have|could have) (?:i |we )?)\\b(?<word>doubled|tripled|trebled|quadrupled|halved|${puts}) (?<parts>${parts}) (?!#)`,
  'd',
);
const factorOf = (word: string): number => multiples[word.split(' ').at(-1) ?? ''] ?? 1;
/** "But forgot to double the lye", "not the lye", "the lye stayed at 99 g". */
const again = '(?:(?:to )?(?:double|triple|treble|quadruple|halve|doubling|tripling|halving|#|do|change) )?';
const wholly = '(?:all|the (?:whole|full)) (?:of )?(?:the |my )?(?:# )?';
const kept = [
  `\\b(?:forgot|forgotten|missed|overlooked|didnt|did not|never|without|not|left|leaving|kept|keeping|only left|except(?: for)?|apart from) (?:about )?${again}(?<parts>${parts})(?! (?:out|off)\\b)`,
  `\\b${wholly}(?<parts>(?:of )?${parts})(?= (?:(?:, )?(?:and |& |plus )${wholly}(?:of )?${parts} )?(?:(?:all|still|then|has|have|is|are|was|were) )*(?:went|gone|got|is|are|was|were) in(?:to)?\\b)`,
  `\\b(?:all|(?:the )?(?:full|whole|entire|complete)(?: lot| amounts?| dose)?)(?: #)?(?: of)?(?: (?:the|my|that))* (?<parts>@(?: (?:and|&|plus) (?:(?:all )?(?:the|my) )?@)?)(?! (?:too|as well|also)\\b)`,
  `(?<parts>${parts}) (?:(?:i|we|was|were|went|got|in|took|taken|put|it|all) )*(?:whole|in full|full|undivided)\\b`,
  `(?<parts>${parts}) (?:(?:i|we|was|were|is|are|just|only|at|as|alone|it|have|has|had) )*(?:stayed|kept|left|not|wasnt|isnt|forgot|forgotten|unchanged|single|the same|still)\\b`,
].map((pattern) => new RegExp(pattern, 'dg'));
const elsewise = /\?|\b(?:if|would|could|can|should|might|next|last|usually|normally|never|nearly|almost)\b/;
/** Nobody knows how much of it then came in. */
const undone =
  /\b(?:added|adding|topped|made up|half the(?! (?:oils|fats)\b)|other half|rest|remaining|remainder|missing|then (?:i|we)(?! [a-z]+ (?:in )?(?:all|the (?:full|whole|entire|complete)) )|later|afterwards)\b/;

/** Alkali to fats by mass, in soaps as they are meant. */
export const usual = { naoh: { least: 0.1, most: 0.19 }, koh: { least: 0.15, most: 0.28 } } as const;

const isFats = (text: string): boolean => /\b(?:oils?|fats?|butters?)\b/.test(text);

export interface PartTimes {
  /** The sentence that says so. */
  readonly k: number;
  readonly factor: number;
  /** What it is told of: "fat", "alkali", "water". */
  readonly of: ReadonlySet<string>;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const kindOf = (said: Said): string => (isFat(said) ? 'fat' : isAlkali(said) ? 'alkali' : 'water');

/** What is named between two places of a sentence; null where it is one fat, or none of these. */
function kindsIn(items: readonly Item[], sentence: Sentence, text: string, place: number): ReadonlySet<string> {
  const kinds = new Set<string>(isFats(text) ? ['fat'] : []);
  for (const { index } of text.matchAll(/@/g)) {
    const at = sentence.tokenAt(place + index);
    const thing = items.find((item) => isThing(item) && item.from <= at && item.to > at);
    const kind = isThing(thing) ? thing.named.meaning.kind : '';
    kinds.add(kind === 'stock' ? 'alkali' : kind === 'liquid' ? 'water' : kind === 'fat' ? 'one fat' : kind);
  }
  return kinds;
}

/** A part of a sentence with the names that it has. */
const wordsOf = (items: readonly Item[], sentence: Sentence, text: string, place: number): string =>
  text.replace(/@/g, (sign, index: number) => {
    const at = sentence.tokenAt(place + index);
    const thing = items.find((item) => isThing(item) && item.from <= at && item.to > at);
    return isThing(thing) ? thing.named.text : sign;
  });

/** The first sentence that says so. */
export function partTimesIn(
  sentences: readonly Sentence[],
  items: readonly Item[],
  isReckoned: (sentence: Sentence) => boolean,
): PartTimes | null {
  for (const [k, sentence] of sentences.entries()) {
    const found = sentence.retells && sentence.cues & cue.all ? made.exec(sentence.text) : null;
    const [place] = found?.indices?.groups?.['parts'] ?? [];
    if (!found || place === undefined || elsewise.test(sentence.text) || isReckoned(sentence)) continue;
    const of = new Set(kindsIn(items, sentence, found.groups?.['parts'] ?? '', place));
    // "I halved the oils, I halved the water"
    for (const more of sentence.text.matchAll(new RegExp(made.source, 'dg'))) {
      const [at] = more.indices?.groups?.['parts'] ?? [];
      if (at === undefined || factorOf(more.groups?.['word'] ?? '') !== factorOf(found.groups?.['word'] ?? ''))
        continue;
      for (const kind of kindsIn(items, sentence, more.groups?.['parts'] ?? '', at)) of.add(kind);
    }
    // "I doubled the scent"
    if ([...of].some((kind) => !/^(?:fat|alkali|water)$/.test(kind))) continue;
    const factor = factorOf(found.groups?.['word'] ?? '');
    return {
      k,
      factor,
      of,
      text: wordsOf(items, sentence, found[0].trim(), found.index),
      from: sentence.from,
      to: sentence.to,
    };
  }
  return null;
}

/** The sentence at `k` and the one behind it; "oils... and then": dots are none. */
function toldFrom({ sentences }: Post, k: number): readonly Sentence[] {
  const next = sentences.findIndex(({ text }, at) => at > k && /\w/.test(text));
  return sentences.slice(k, next < 0 ? k + 1 : next + 1);
}

/** What is said to have stayed as it was. */
function keptIn(post: Post, k: number): ReadonlySet<string> {
  const all = new Set<string>();
  for (const sentence of toldFrom(post, k))
    for (const pattern of kept)
      for (const found of sentence.text.matchAll(pattern)) {
        const [place] = found.indices?.groups?.['parts'] ?? [];
        if (place === undefined) continue;
        for (const kind of kindsIn(post.items, sentence, found.groups?.['parts'] ?? '', place)) all.add(kind);
      }
  return all;
}

/** Takes what was made so many times as large so; what the list leaves open is asked about. */
export function takePartTimes(post: Post, told: PartTimes): void {
  const { k } = told;
  const all = post.said.filter((said) => isPart(said) && !post.gone.has(said.amount));
  const own = all.filter(({ telling }) => !isOther(telling));
  const list = own.some(isFat) ? own : all;
  const rows = list.filter(({ pointing, key, amount }, n) => {
    const first = list.findIndex((other) => other.key === key);
    return !pointing && first === n && /^(?:mass|volume|bare)$/.test(amount.quantity.dim);
  });
  // two weights of one thing: nobody knows which of them
  const isTwice = list.some(({ key, amount }) =>
    rows.some((row) => row.key === key && !isSame(row.amount.quantity, amount.quantity)),
  );
  const stayed = keptIn(post, k);
  const isTold = (said: Said): boolean => told.of.has(kindOf(said)) !== stayed.has(kindOf(said));
  const sum = (of: (said: Said) => boolean): number =>
    rows.filter(of).reduce((whole, { amount }) => whole + amount.quantity.value, 0);
  const ratio = sum(isAlkali) / sum(isFat);
  const isKoh = rows.some(({ thing }) => thing.named.meaning.kind === 'alkali' && thing.named.meaning.id === 'koh');
  const { least, most } = usual[isKoh ? 'koh' : 'naoh'];
  const fits = (value: number): boolean => value >= least && value <= most;
  const times = (kind: string): number => (told.of.has(kind) ? told.factor : 1);
  const [before, after] = [fits(ratio), fits((ratio * times('fat')) / times('alkali'))];
  const span = toldFrom(post, k);
  const units = new Set(
    rows.filter((said) => isFat(said) || isAlkali(said)).map(({ amount }) => amount.quantity.unit?.id),
  );
  const isOpen =
    isTwice || units.size > 1 || rows.some((said) => !isTold(said)) || before === after || stayed.size === 0;
  if (isOpen || span.some(({ text }) => undone.test(text))) {
    post.unclear ??= told.text;
    return;
  }
  if (before)
    for (const said of rows) {
      const now = post.instead.get(said.amount) ?? said.amount;
      if (!isAmount(now) || !told.of.has(kindOf(said))) continue;
      post.instead.set(said.amount, { ...now, quantity: scaled(now.quantity, told.factor), same: null });
    }
  const how = before ? `times ${told.factor}` : 'as they went in';
  post.back.push({
    text: `I took what was changed ${how}, and the rest as it stands, as the post says ("${told.text}").`,
    gone: [],
    from: told.from,
    to: span.at(-1)?.to ?? told.to,
  });
}

const scaled = (quantity: Quantity, factor: number): Quantity => ({
  ...quantity,
  value: quantity.value * factor,
  other: null,
});

/**
 * The fats are told of one mould, pot or bar, and the lye of all of them: "three moulds, each one takes 420 g olive and 180 g
 * coconut … how much for all three together", "one bar = 60 g tallow … for the whole ten I weighed 144 g lye", "12-cavity
 * mould, per bar 40 g olive, 5 g lye. Is the whole batch ok?" What is told of one is taken so many times; where nobody says of how many the lye is, and it does not fit one of them, it is asked.
 */

import { usual } from '../taken-back/part-times.ts';
import { withValue } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient, isMark, isStop, massOf, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { ofLast } from './last-time.ts';
import { isPlain, rowsBefore, rowsOfAlkali } from './tale.ts';

/** What the whole is parted among: moulds, pots, bars, or who makes them. */
const vessel =
  '(?:mou?ld|pot|pan|tin|tray|bar|loaf|batch|box|block|slab|puck|cake|kettle|bowl|bucket|soap|lot|load|cavity|hole|compartment|table|group|team|pupil|student|child|kid|person|participant|guest)';
const vessels =
  '(?:mou?lds|pots|pans|tins|trays|bars|loaves|batches|boxes|blocks|slabs|pucks|cakes|kettles|bowls|buckets|soaps|lots|loads|cavities|holes|compartments|tables|groups|teams|pupils|students|children|kids|people|participants|guests)';
const number = '(?:[#…]|two|three|four|five|six|seven|eight|nine|ten|twelve)';
const kind = '(?:[a-z-]+ ){0,2}?';
/** "Each one takes", "in each", "per tin", "one bar =". */
export const distributes = [
  `\\b(?:each|every) (?:one |single |of (?:them|these|those|(?:the|my|our) (?:${number} )?${kind}${vessels}) )?(?:${kind}(?<a>${vessel}) )?(?:(?:should|will|must|shall|would|to) )?(?:have(?= #)|be(?= #)|take(?= #)|get(?= #)|hold(?= #)|takes?|makes?|made|weigh(?:s|ed)(?= (?:#|out))|gets?|got|holds?|needs?|has|had|wants?|contains?|is|was|=|:|#|@)(?= )`,
  `\\b(?:in|for|into|to) (?:each|every)(?: (?:one|single))?(?: (?:of (?:them|these|those|(?:the|my|our) (?:${number} )?${kind}${vessels})|${kind}(?<b>${vessel})\\b))?`,
  `\\bper (?:${kind}(?<c>${vessel})\\b|piece\\b)`,
  '# (?:of )?(?:the )?(?:@|oils|fats|butters) ?,? (?:each|apiece)\\b',
  `(?:^|[:,(] ?)(?:so )?(?:one|a|1|single|recipe for (?:one|a|1)) (?:single )?(?<d>${vessel})(?: of (?:mine|ours|these|those|them|this soap))? (?:=|is|has|takes|gets|needs|holds|:)`,
].map((pattern) => new RegExp(pattern));
/** Said of all of them. */
export const together = new RegExp(
  `\\b(?:for|of|in|to|into|fills?|filling|both) (?:the )?(?:both|whole ${number}|all ?(?:(?:of )?(?:them|these|those)|the ${number}|${number}|the ${vessels}|${vessels}|together)?|(?:the )?(?:whole|entire) (?:pot|lot|batch|mix|kettle|pan|thing)|(?:the )${number}|${number} (?:of (?:them|these|those)|together|${vessels}))(?= |$)|\\b(?:together|altogether|in (?:all|total)|(?:in|into|out of|from) (?:just )?(?:one|a single) (?:big |large |single )?(?:pot|go|batch|pan|kettle)|one lot of @|for the (?:whole )?lot(?= |$))`,
);
/** "I want to make twelve bars. How much lye?" */
export const makesMany = new RegExp(
  `\\b(?:make|making|made|melted for|need|want|fill|filling|filled|pour|poured|do|did|doing) (?:about |all |just |only |up )*${number} ${kind}${vessels}\\b`,
);
/** "All six lots poured together into one big pot". */
const pooled = new RegExp(
  `\\ball (?:of )?(?:the |my )?(?:(?:${number}|them|these|those)(?: ${kind}${vessels})?|${kind}${vessels})(?= )[^.?]{0,40}\\b(?:together|(?:in(?:to)?|in) (?:just )?(?:one|a single|the same) (?:big |large |single )?(?:pot|pan|kettle|bowl|bucket|crock))\\b|\\b(?:from|out of|in(?:to)?) (?:just |only )?(?:one|a single|the same) (?:big |large |single )?(?:pot|pan|kettle|bowl|bucket|crock|go)\\b`,
);
/** "Is the whole batch ok?" */
const ofWhole =
  /\b(?:whole|entire|full|complete|total|all of the) (?:batch|lot|pot|thing|mix|mou?ld|recipe|soap|kettle|tray|load|lye)\b/;
/** Said of one of them. */
export const single =
  /\b(?:for|per|in) (?:just |only )?(?:one|each|a single|every|a)(?= |$)(?! (?:big |large |single )?(?:pot|go|batch|pan|kettle)\b)|\b(?:per|each) [a-z]+ please|\b(?:separate(?:ly)?|on (?:its|their) own|one (?:after|by) (?:the other|one)|apart)\b/;
/** "For one mould or for the two of them": nobody knows. */
const whether = new RegExp(
  `\\b(?:for|of|to) (?:just |only )?(?:one|each|a single|every)\\b[^.,;]{0,24}\\bor (?:was |is |it |for |of |to |the |all )*(?:both|all|${number}|whole)(?= |$)|\\b(?:for|of) (?:the |all )*(?:both|all|${number}|whole)(?= |$)[^.,;]{0,24}\\bor (?:was |is |it |just |only |for |of |to |the )*(?:one|each|a single)\\b`,
);
const counts = [
  `(?<n>${number}) ${kind}(?<noun>${vessels})\\b`,
  `(?<n>${number}) ?- ?(?<noun>${vessel})\\b`,
  `\\b(?:all|whole|the|fill|filled|filling|poured|cast|made|making|make|for|of) (?<n>${number})(?= (?:[,.;?!:]|of|together|i|we|at|in|with|$)|$)`,
  '\\b(?<two>both|the pair)\\b',
].map((pattern) => new RegExp(pattern, 'dg'));
const numbers = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');
export const open = /\b(?:last (?:time|week|month|year)|next (?:time|week|month|year)|usually|normally|stamps?)\b/;
/** Who makes it: of how many the lye is, a question alone says. */
export const ofPeople =
  /\b(?:class|pupils?|students?|groups?|teams?|people|participants?|guests?)\b|\b(?:each|every|per) (?:table|child|kid|person)\b/;
/** The lye is parted among them: `part-of-it.ts`. */
const shared =
  /\b(?:half|third|quarter)\b[^.;?]*\b(?:each|every|either)\b|\b(?:each|every|either)\b[^.;?]*\b(?:half|third|quarter) (?:of )?(?:it|that|the)\b/;
const fits = (share: number): boolean => share >= usual.naoh.least && share <= usual.naoh.most;
const mostOf = 200;

interface Told {
  readonly from: number;
  readonly to: number;
  readonly noun: string;
}

/** The sentences that tell the fats of one. */
function toldOfOne(sentences: readonly Sentence[], tokens: readonly Token[]): Told | null {
  const hasRow = ({ from, to }: Sentence): boolean =>
    isAny(tokens, from, to, isFat) && isAny(tokens, from, to, (token) => massOf(token));
  for (const [k, sentence] of sentences.entries()) {
    const found = distributes.map((pattern) => pattern.exec(sentence.text)).find((match) => match !== null);
    if (!found) continue;
    const noun = Object.values(found.groups ?? {}).find((one) => one !== undefined) ?? '';
    let last = k;
    if (/: $/.test(sentence.text))
      while (sentences[last + 1] && hasRow(sentences[last + 1] as Sentence) && !/[.?!]/.test(sentence.text)) last++;
    // "one bowl has …, the other …"
    if ((last === k && !hasRow(sentence)) || /\b(?:the|my) (?:other|second)\b/.test(sentence.text)) continue;
    return { from: sentence.from, to: sentences[last]?.to ?? sentence.to, noun };
  }
  return null;
}

/** Of how many it speaks, and at which tokens. */
export function countsIn(
  cut: Cut,
  sentences: readonly Sentence[],
  noun: string,
): ReadonlyMap<number, readonly number[]> {
  const { tokens, prims } = cut;
  const many = new Map<number, readonly number[]>();
  const isOf = (plural: string): boolean =>
    noun === ''
      ? !/^(?:bars|soaps|cakes)$/.test(plural)
      : plural.slice(0, 3) === noun.slice(0, 3) || [plural, noun].every((one) => ofOneBar.test(one));
  for (const { text, tokenAt } of sentences.map((one) => ({
    text: one.text,
    tokenAt: (at: number) => one.tokenAt(at),
  })))
    for (const pattern of counts)
      for (const { indices, groups } of text.matchAll(pattern)) {
        if (groups?.['two']) many.set(2, many.get(2) ?? []);
        const place = indices?.groups?.['n']?.[0];
        if (place === undefined || (groups?.['noun'] && !isOf(groups['noun']))) continue;
        const at = tokenAt(place);
        const token = tokens[at];
        if (!token || (token.t === 'quantity' && token.quantity.dim !== 'bare')) continue;
        const said = token.t === 'quantity' ? token.quantity.value : countOf(rawText(prims, token.from, token.to));
        if (Number.isInteger(said) && said > 1 && said <= mostOf) many.set(said, [...(many.get(said) ?? []), at]);
      }
  return many;
}

/** One cavity makes one bar. */
const ofOneBar = /^(?:bar|cavit|hole|compartment|puck|cake)/;

const countOf = (raw: string): number => {
  const word = /\d+|[a-z]+/i.exec(raw)?.[0].toLowerCase() ?? '';
  const at = numbers.indexOf(word);
  return at > 0 ? at : Number(word);
};

/** How the answer says it. */
export const timesOne = (factor: number): string => `${factor} times what one of them takes, as the post says.`;

export function perVessel(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  const sentences = sentencesOf(cut);
  const one = toldOfOne(sentences, tokens);
  // "I did four last year with 88 g", which has been set aside
  const isAside = ({ from, to }: Sentence): boolean =>
    isAny(tokens, from, to, (token) => token.t === 'aside' && token.reason === ofLast);
  if (!one || sentences.some((told) => (open.test(told.text) && !isAside(told)) || shared.test(told.text))) return none;
  const asks = sentences.filter(({ text }) => text.includes('?'));
  const isAskedOfAll = asks.some(({ text }) => together.test(text) && !single.test(text));
  const isAskedOfWhole = asks.some(({ text }) => ofWhole.test(text) && !single.test(text));
  const isPooled = isAskedOfWhole || sentences.some(({ text }) => pooled.test(text));
  if (sentences.some(({ text }) => ofPeople.test(text)) && !isPooled && !(isAskedOfAll && lyeOf(cut) === null))
    return none;
  const many = countsIn(cut, sentences, one.noun);
  const rows = rowsBefore(tokens, tokens.length);
  const fats = rows.filter(({ at }) => isFat(tokens[at]));
  const inOne = rows.filter(({ at, figure }) => Math.min(at, figure) >= one.from && Math.max(at, figure) < one.to);
  // fats beside those of one: nobody knows of how many
  if (many.size === 0 || fats.some((row) => !inOne.includes(row))) return none;
  const lye = lyeOf(cut);
  const said = sentences.filter(({ text }) => together.test(text) || (!lye && makesMany.test(text)));
  const isWhole = isPooled && lye !== null && lye.figure >= one.from && lye.figure < one.to;
  const own = isWhole
    ? inOne
    : inOne.filter(({ id, figure }) => figure < (lye?.figure ?? tokens.length) && id !== 'alkali');
  const last = own.at(-1);
  if (!last) return none;
  const place = sentences.find(({ from, to }) => lye !== null && lye.figure >= from && lye.figure < to);
  const isOfAll = place ? together.test(textTo(place, lye?.figure ?? 0)) : false;
  const plain = quiet(tokens, lye);
  const unsure = sentences.find(({ text }) => whether.test(text));
  // "500 g olive, 200 g coconut and 98 g lye each": the fats of each, or of all
  const ofLye = sentences.find(({ from, to }) => lye !== null && lye.at >= from && lye.at < to);
  const isLyeAlone =
    lye !== null &&
    ofLye &&
    spoken(tokens[Math.max(lye.at, lye.figure) + 1]) === 'each' &&
    own.some(({ at }) => at >= ofLye.from) &&
    (ofLye.text.match(/\beach\b/g) ?? []).length === 1 &&
    !/^(?:for |in )?each\b/.test(ofLye.text);
  if (isLyeAlone)
    return { ...none, unheard: rawText(prims, tokens[ofLye.from]?.from ?? 0, tokens[ofLye.to - 1]?.to ?? 1).trim() };
  if (lye && unsure)
    return { ...none, unheard: rawText(prims, tokens[unsure.from]?.from ?? 0, tokens[unsure.to - 1]?.to ?? 1).trim() };
  if (!isWhole && place && !isOfAll && (place.from < one.to || single.test(place.text)))
    return { ...none, tokens: plain };
  if (!place && (said.length === 0 || asks.some(({ text }) => single.test(text) && !together.test(text)))) return none;
  const [[factor, places], ...others] = [...many] as [[number, readonly number[]], ...unknown[]];
  const weigh = (rows: typeof own): number =>
    rows.reduce((sum, { at, figure }) => sum + (isFat(tokens[at]) ? weightOf(tokens[figure]) : 0), 0);
  const share = lye ? weightOf(tokens[lye.figure]) / weigh(own) : 0;
  const asked = (sentence: Sentence | undefined): string =>
    rawText(prims, tokens[sentence?.from ?? 0]?.from ?? 0, tokens[(sentence?.to ?? 1) - 1]?.to ?? 1).trim();
  if (lye && !isOfAll && !isWhole) {
    if (fits(share) && said.length === 0) return none;
    if (!(said.length > 0 && fits(share / factor) && !fits(share))) return { ...none, unheard: asked(place) };
  }
  if (others.length > 0) return { ...none, unheard: asked(said[0]) };
  const out = [...plain];
  for (const at of places) {
    const token = out[at];
    if (token?.t === 'quantity') out[at] = asAside(token, 'of how many it is');
  }
  const texts = own.map(({ at, figure }) => {
    const weight = out[figure] as Figure;
    const now = { ...withValue(weight.quantity, weight.quantity.value * factor), numbers: weight.quantity.numbers };
    out[figure] = { ...weight, quantity: now };
    const name = out[at];
    return `${now.text} of ${name?.t === 'name' ? name.text : ''}`;
  });
  return {
    tokens: out,
    told: [
      {
        text: `I took ${texts.join(', ')}: ${timesOne(factor)}`,
        gone: [],
        from: Math.min(one.from, ...said.map(({ from }) => from)),
        to: Math.max(one.to, ...said.map(({ to }) => to)),
        settles: true,
      },
    ],
    unheard: null,
  };
}

/** "Lye for both together: 126 g", "lye per mould 86 g": what it is of is named between the alkali and its weight. */
function quiet(
  tokens: readonly Token[],
  lye: { readonly at: number; readonly figure: number } | null,
): readonly Token[] {
  if (!lye) return tokens;
  const out = [...tokens];
  const water = tokens.findIndex(
    (token, k) => isIngredient(token) && token.meaning.kind === 'water' && isSaidOf(tokens, k),
  );
  for (const [at, figure] of [
    [lye.at, lye.figure],
    [water, water < 0 ? -1 : figureFor(tokens, water)],
  ] as const) {
    for (let k = at + 1; k < figure; k++) {
      const token = out[k];
      if (token?.t === 'name' && token.meaning.kind === 'role') out[k] = asFiller(token);
      else if (token?.t === 'quantity') out[k] = asAside(token, 'of how many it is');
    }
    // "the lye, for all eight together, was 110 g"
    const [name, word] = [out[at], out[figure - 1]];
    if (name?.t !== 'name' || word?.t === 'sign' || !word || figure - at <= 2) continue;
    out[figure - 1] = { ...name, from: word.from, to: word.to };
    out[at] = asFiller(name);
  }
  return out;
}

/** "The water for all eight", "lye, for the whole pot,". */
const isSaidOf = (tokens: readonly Token[], k: number): boolean =>
  /^(?:for|of|in|per)$/.test(spoken(tokens[isMark(tokens[k + 1], ',(') ? k + 2 : k + 1]));

/** The weight behind it in its sentence, with no other name between; -1 where none stands there. */
function figureFor(tokens: readonly Token[], at: number): number {
  for (let k = at + 1; k - at <= longestWay; k++) {
    if (isIngredient(tokens[k]) || isStop(tokens[k])) return -1;
    if (isPlain(tokens[k]) && dimOf(tokens[k]) === 'mass') return k;
  }
  return -1;
}
const longestWay = 14;

/** What a sentence says up to a token. */
const textTo = (sentence: Sentence, k: number): string => sentence.text.slice(0, sentence.placeOf(k));

const dimOf = (token: Token | undefined): string => (token?.t === 'quantity' ? token.quantity.dim : '');

const weightOf = (token: Token | undefined): number => (isPlain(token) ? token.quantity.value : 0);

/** The alkali that is weighed, once; "one lot of lye for all: 188 g". */
export function lyeOf(cut: Cut): { readonly at: number; readonly figure: number } | null {
  const { tokens } = cut;
  const isAlkali = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';
  const rows = [
    ...rowsBefore(tokens, tokens.length).filter(({ at }) => isAlkali(tokens[at])),
    ...rowsOfAlkali(tokens, tokens.length),
  ];
  const isMass = rowsBefore(tokens, tokens.length).some(({ figure }) => dimOf(tokens[figure]) === 'mass');
  const first = rows.find(({ figure }) => !isMass || dimOf(tokens[figure]) === 'mass');
  if (first) return first;
  const at = tokens.findIndex((token, k) => isAlkali(token) && isSaidOf(tokens, k) && figureFor(tokens, k) >= 0);
  return at < 0 ? null : { at, figure: figureFor(tokens, at) };
}

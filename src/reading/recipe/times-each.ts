/**
 * How many times of what is written went in, told by clauses: "I always make three times the card. The coconut only went in
 * twice the card, tallow, lye and water three times", "fats twice that, lye and water just the once", "exactly half of this,
 * of everything". Each clause has a factor and what it is of; one without a factor of its own ("lye and water too") takes
 * the one before. Only where nothing that counts in the pot is left without a factor.
 */
import { once } from '../once.ts';
import { relations, seasons } from '../words/cue-words.ts';
import { afterwards, asWritten, theirs } from './another-size.ts';
import { factorOf } from './factor.ts';
import type { FatOf } from './fats-apart.ts';

export interface TimesEach {
  /** The post without the sentences that tell it. */
  readonly text: string;
  /** Of all, or of the kind; null where nothing was told of it. */
  readonly whole: number | null;
  readonly fats: number | null;
  readonly alkali: number | null;
  readonly water: number | null;
  /** By the id of a fat. */
  readonly each: ReadonlyMap<string, number>;
  readonly said: readonly string[];
}

const fraction =
  '(?:(?:a|one|two|three|four|five) )?(?:half|thirds?|quarters?|fourths?|fifths?|sixths?|eighths?|tenths?)|[1-9]/(?:[2-9]|10)(?![\\d/])|[½⅓⅔¼¾]';
const numeral =
  '(?:\\d+ \\d/\\d|\\d+ ?[½¼¾]|\\d+(?:[.,]\\d+)?|(?:a|one|two|three|four|five|six)(?: and (?:a|one|two|three) (?:half|thirds?|quarters?))?|ten)';
const unit =
  '(?! ?(?:k?g|oz|lbs?|pounds?|ounces?|grams?|ml|l|cm|mm|in|ft|%|inch(?:es)?|bars?|hours?|minutes?|mins?|days?|°)\\b)';
const card = '(?:card|recipe|list|sheet|page|amounts?|figures?|quantit(?:y|ies)|batch|above|lot|thing|original)';
/** What all of the list may be called. */
const all = `(?:everything|(?:every|each)(?: single)? (?:thing|line|row|item|ingredient|amount|figure|number|weight)|all of (?:it|this|that|them|these)|it all|all (?:this|that)|(?:all (?:of )?)?(?:the|my|her|his|their|our|that|this|these|those)(?: (?:whole|full|same|recipe))? ${card}|(?:[a-z]+['’]s) ${card})`;
const here =
  '(?:it|this|that|these|those|them|hers|his|theirs|each(?: (?:one|of (?:them|these|those)))?|(?:(?:each|the|all|both|those|these|my|of) )*(?:oils?|fats?|butters?))';
const scaled = '(?:twice|doubled|doubling|tripled|tripling|trebled|quadrupled|halved|halving)';
const asMuch = '(?! as (?:much|many|big|large|long|old|heavy|strong)\\b)';
const ways = [
  `(?<n>${numeral}) ?(?:times|[x×]|-?fold)(?! ?\\d)\\b${asMuch}`,
  `(?:times|(?<!\\d ?)[x×]|multiplied by|multiplied with|by a factor of) ?(?<n>${numeral})${unit}(?![\\w%])`,
  `\\b(?<n>${scaled})\\b${asMuch}`,
  `\\b(?<n>double|triple|treble|quadruple|halve)(?= (?:of )?(?:${all}|(?:the |all |both |my )*(?:fats?|oils?|butters?|lye|water|amounts?)|${here})\\b)|(?<=\\b(?:it|everything|this|that) )(?<n>double|triple)\\b`,
  `(?<![\\d.,/])(?<n>${fraction}) (?:of )?(?=${all}|(?:${here})\\b(?! (?:as|is|are|was|were|size|price|much|long|old)\\b))`,
  '\\b(?<n>half|double|triple)(?: an?)?[ -](?:batch|recipe|size|lot|load)(?= of (?:this|that|it|these|the (?:card|recipe|above))\\b)',
];
/** Made for the first post that may tell so: most tell of no size. */
const patterns = once(() => ({
  timed: ways.map((way) => new RegExp(way, 'gi')),
  wholeOf: new RegExp(`\\b(?:${all})\\b`, 'i'),
  itself: new RegExp(`\\b${here}\\b`, 'i'),
  /** Nothing that was made, or that nobody is sure of; another list than the one that stands here. */
  open: new RegExp(
    `\\b(?:if|could|can|should|might|may|would(?! like)|wish (?:i|we|it)|next|maybe|perhaps|i think|not sure|unsure|or|nearly|almost|about|roughly|by eye|or so|today (?:i|we) want|last (?:time|batch|month|year|week)|instead|swap\\w*|replac\\w+|substitut\\w+|already|rest|remain\\w*|other half|besides|without (?:the|any|my)|thought (?:of|about)|thinking (?:of|about)|consider\\w*|tempted|toying|price|cost|superfat|once (?:i|we|it))\\b|\\b(?:she|he|they|(?:my|our|her|his) (?:${relations.replaceAll(' ', '|')}))(?! (?:card|recipe|list)\\b) (?:[a-z]+ ){0,2}(?:doubl|tripl|halv|makes?|made|does|did|do|takes?|took|uses?|used|puts?|always|usually)`,
    'i',
  ),
  /** A pot of another time. */
  elsewhen: new RegExp(
    `\\b(?:(?:in|last|since|back in|around) (?:the )?(?:${seasons.replaceAll(' ', '|')})|(?:months?|years?|weeks?) ago)\\b`,
    'i',
  ),
  /** "Every number of One Loaf": of something that may be another list. */
  ofElse: new RegExp(
    `\\b(?:${all}) (?:of|in|on|from) (?!(?:the|this|that|my|our|her|his|it|them|these|those|here)\\b)`,
    'i',
  ),
  bareTimes: new RegExp(
    `^(?:so |all )?(?:(?:times|[x×]) ?${numeral}|${numeral} times)(?=\\s*(?:$|[.,;!)?]|(?:for|as|please|today|in)\\b))`,
    'i',
  ),
  /** The list is what they are times of. */
  listed: new RegExp(`\\b(?:${card}|this|that|these|above|below|one (?:mou?ld|batch|loaf))\\b`, 'i'),
  inQuestion: new RegExp(
    `(?<n>${fraction}|twice|double|triple|${numeral} ?(?:times|[x×])) (?:of )?(?:${all}|${here})`,
    'i',
  ),
  /** "Card is 300 g lard, …", "hers: 400 g olive". */
  based: new RegExp(
    `\\b(?:${card}|book|hers|his|theirs)(?: (?:is|says|reads|has|had|gives|calls for|was))?[ :\\n–—-]+[^.?!\\n]{0,40}\\d`,
    'i',
  ),
}));
/** "Forgot to double the lye", "the lye only once": as it is written. */
const onceOnly =
  /\b(?:forgot(?:ten)?|forgetting|missed|never|(?:did|do|have|had|was|were)(?: not|n['’]?t)|not|without)(?: i)? (?:to )?(?:doubl|tripl|trebl|quadrupl|halv|multipl|scal)(?:ed?|ing|y|ied)\b|\b(?:(?:just |only )?(?:the )?once|single|as (?:it|they) (?:is|are|was|were|stands?|stood)|as (?:written|listed|before)|(?:stayed|stays|left|kept)(?: at| as)?(?: the same| alone| single| as (?:it|they) (?:was|were))|unchanged|in full|undivided|(?:took|taken|went in|put in|in) whole)\b|\b(?:at )?(?:the )?(?:full|whole|entire|complete)(?: (?:amount|lot|dose|weight|quantity)\b|(?= (?:of )?(?:the |my )?(?:lye|naoh|koh|caustic|water)\b))|\ball (?:of )?(?:the |my )?(?=(?:lye|naoh|koh|water)\b(?! (?:too|as well|dissolv\w+|is|was|had|has|melted|cleared)))|\b(?:except|but not|not|apart from)(?: for)? (?=(?:the |my )*(?:lye|naoh|koh|water)\b)/gi;
const ofFats = /\b(?:fats?|oils?|butters?)\b/i;
const ofAlkali = /\b(?:lye|naoh|koh|caustic(?: soda| potash)?|soda|sodium hydroxide|potassium hydroxide|alkali)\b/i;
const ofWater = /\b(?:water|lye (?:water|solution)|liquids?|milk)\b/i;
const too = /\b(?:too|as well|also|likewise|included|including|alike|same|accordingly|multiplied|and all)\b/i;
const onlyNames = /^(?:(?:and|the|my|both|all|of|&|lye|naoh|koh|water|oils?|fats?|[a-z]+) ?){1,4}$/i;

const apart = /^\W*(?:and )?(?:not|except|apart from|only|just not|bar|save)\b/i;
/** "Everything was tripled": maybe before it was written down. */
const passive = /\b(?:was|were) (?:all )?(?:doubled|tripled|trebled|quadrupled|halved)\b/i;
/** "I made half of it yesterday. Is the card right?" */
const lately = /\b(?:yesterday|already)\b/i;
const ofCard = /\b(?:card|recipe|list|whole|full|original)\b[^.?!]*\?/i;
const habit =
  /\b(?:meant to|wanted to|planned|intended|was going to|were going to|always|usually|normally|often|sometimes|mostly|every (?:time|month|week|year))\b/i;
/** "I weighed everything twice", "stirred it three times": how often, not how much. */
const howOften =
  /\b(?:weigh|measur|check|count|compar|tar|test|read|went|gone|stir|blend|mix|heat|render|rins|melt|boil|clean|wash|sift|strain|sieve|filter|look|ask|try|tri|post)(?:ed|ing|s|e|red|ring|ied)?\b(?! (?:out|off|up|in)\b)/i;
const amount =
  /\d ?(?:k?g|gr|gms?|oz|lbs?|pounds?|ounces?|grams?|kilos?|ml|l)\b|\b(?:pounds?|ounces?|grams?|kilos?|cups?)\b/i;

interface Told {
  readonly factor: number;
  readonly whole: boolean;
  readonly fats: boolean;
  readonly alkali: boolean;
  readonly water: boolean;
  readonly ids: readonly string[];
}

/** Sentences, and the lines of a list. */
const sentencesOf = (post: string): readonly string[] => post.match(/(?:[^.!?\n]|\.(?=\d))+[.!?]*/g) ?? [];
const clausesOf = (sentence: string): readonly string[] =>
  sentence
    .split(
      /,(?!\d)|[;:()–—=]|\b(?:but|so|while|whereas|then)\b|\band (?=(?:i |we )?(?:forgot|left|kept|only|just|did ?n|didn|not|never)\b)/i,
    )
    .filter((one) => /\w/.test(one));

/** "… 190 g water - times 3 for the fair": what a row says behind its last amount. */
function behindAmounts(row: string): string {
  const parts = row.split(/(?<=[,;(–—]| - | and (?=(?:i|we) ))/i);
  const last = parts.findLastIndex((one) => amount.test(one));
  const talk = parts.slice(last + 1).join('');
  return patterns().timed.some((way) => talk.search(way) >= 0) ? talk : '';
}

/** "… 190 g water - times 3 for the fair", where nothing else says of what: nobody knows. */
export function timesBehind(post: string): string | null {
  if (!cues.test(post)) return null;
  for (const row of sentencesOf(post)) {
    const talk = amount.test(row) ? behindAmounts(row).replace(/^[\s,;(–—-]+/, '') : '';
    if (patterns().bareTimes.test(talk)) return talk.trim();
  }
  return null;
}

/** Words that may name a fat, two of them first. */
function idsIn(clause: string, fatOf: FatOf): readonly string[] {
  const words = clause.toLowerCase().match(/[a-z]+/g) ?? [];
  const ids = new Set<string>();
  for (let k = 0; k < words.length; k++) {
    const word = words[k] ?? '';
    if (word.length < leastName || notNames.test(word)) continue;
    const pair = fatOf(`${word} ${words[k + 1] ?? ''}`.trim());
    const id = pair ?? fatOf(word);
    if (id !== null) ids.add(id);
    if (pair !== null) k++;
  }
  return [...ids];
}
const leastName = 4;
const notNames =
  /^(?:fats?|oils?|butters?|everything|times|twice|double[d]?|half|halved|third|card|recipe|list|this|that|these|water|went|made|make|only|just|once|usual|with|from|have|batch|them|lot)$/;

/** What a clause tells; `before`: the factor of the one before it, and what it named. */
function toldIn(clause: string, before: number | null, named: readonly string[], fatOf: FatOf): Told | 'open' | null {
  const asWas = [...clause.matchAll(onceOnly)];
  const rest = asWas.reduce((text, { 0: said }) => text.replace(said, ' '), clause);
  const factors = new Set(asWas.length > 0 ? [1] : []);
  let place = -1;
  for (const way of patterns().timed)
    for (const found of rest.matchAll(way)) {
      const factor = factorOf(found.groups?.['n'] ?? '');
      if (factor === undefined) return 'open';
      factors.add(factor);
      place = found.index;
    }
  if (factors.size > 1) return 'open';
  const ids = idsIn(clause, fatOf);
  const parts = {
    fats: ofFats.test(clause) && ids.length === 0,
    alkali: ofAlkali.test(clause),
    water: ofWater.test(clause),
  };
  const isPart = parts.fats || parts.alkali || parts.water || ids.length > 0;
  const [own] = factors;
  const isWhole = patterns().wholeOf.test(clause);
  if (own !== undefined && own !== 1 && !isPart && !makes(clause, own, place, isWhole)) return 'open';
  const factor = own ?? (too.test(clause) && (isPart || isWhole) ? before : null);
  if (factor === null) return null;
  if (isPart) return { factor, whole: false, ...parts, ids };
  if (named.length > 0 && /\b(?:that one|those|it|that)\b/i.test(clause) && !/\b(?:made?|make|did|do)\b/i.test(clause))
    return { factor, whole: false, ...parts, ids: named };
  if (own === 1) return null;
  return isWhole || (own !== undefined && patterns().itself.test(clause)) || batched.test(clause)
    ? { factor, whole: true, ...parts, ids }
    : 'open';
}
/** It is of the amounts: "I made it twice" tells how often. */
function makes(clause: string, factor: number, place: number, isWhole: boolean): boolean {
  const [before, from] = [clause.slice(0, Math.max(0, place)), clause.slice(Math.max(0, place))];
  if (/^(?:doubl|tripl|trebl|quadrupl|halv|multipl|by |times |[x×])/i.test(from)) return true;
  const isBehind = patterns().wholeOf.test(from) || patterns().itself.test(from);
  const isMade = making.test(before) || !/\w/.test(before);
  if (isBehind) return patterns().wholeOf.test(from) || isMade;
  return !Number.isInteger(factor)
    ? isMade
    : isWhole && /\b(?:went|goes?|gone|put|took|take|used?|got|is)\b/i.test(before);
}
const making =
  /\b(?:ma(?:d|k)e|making|did|do|doing|took|take|taking|used?|using|weighed|measured|mixed|cooked|cooking|want|need|is|was|went|goes)\b/i;
const asksOpen = /\b(?:if|could|can|should|might|may|or|last|next)\b/i;
const batched = /\b(?:half|double|triple)(?: an?)?[ -](?:batch|recipe|size|lot|load) of\b/i;

/** Without one of these nothing is told so. */
const cues =
  /\b(?:half|thirds?|quarters?|fourths|fifths?|sixths?|eighths?|tenths?|twice|doubl\w+|tripl\w+|trebl\w+|quadrupl\w+|halv\w+|times|multiplied|batch)\b|[½⅓⅔¼¾×]|\d ?x\b|\bx ?\d|\d\/\d/i;
/** In a row of amounts it is told of that row alone. */
const strong =
  /\b(?:twice|doubled?|tripled?|trebled?|quadrupled?|halved?)\b|\b(?:half|thirds?|quarters?) of\b|\btimes\b/i;
/** "How much lye for a third of this?" */
const asksLye = /\b(?:how much|what|which) (?:lye|naoh|koh|caustic|sodium hydroxide|soda)\b|\blye for\b/i;

const ofList = /\b(?:this|these|below|following)\b/i;

/** What a post tells so; null where it tells nothing, or leaves it open. */
export function timesEach(post: string, ofWord: FatOf): TimesEach | null {
  if (!cues.test(post) || !patterns().listed.test(post) || afterwards.test(post) || asWritten.test(post)) return null;
  if (patterns().timed.every((way) => post.search(way) < 0)) return null;
  const known = new Map<string, string | null>();
  const fatOf: FatOf = (words) => {
    if (!known.has(words)) known.set(words, ofWord(words));
    return known.get(words) ?? null;
  };
  const sums = {
    whole: new Set<number>(),
    fats: new Set<number>(),
    alkali: new Set<number>(),
    water: new Set<number>(),
  };
  const each = new Map<string, number>();
  const habits = new Set<number>();
  const said: string[] = [];
  let before: number | null = null;
  let named: readonly string[] = [];
  for (const row of sentencesOf(post)) {
    const hasFactor = patterns().timed.some((way) => row.search(way) >= 0);
    const sentence = amount.test(row) ? behindAmounts(row) : row;
    if (sentence === '') {
      if (hasFactor && strong.test(row)) return null;
      before = null;
      continue;
    }
    const isAsked = sentence.endsWith('?');
    const all: Told[] = [];
    let names: string[] = [];
    let isLoose = false;
    const often = howOften.exec(sentence);
    if (often && hasFactor && !/\b(?:half|third|quarter)/i.test(sentence.slice(often.index))) {
      const rest = sentence.slice(often.index);
      if (patterns().timed.some((way) => rest.search(way) >= 0)) return null;
    }
    for (const clause of clausesOf(sentence)) {
      const here = toldIn(clause, before, named, fatOf);
      if (here === 'open') return null;
      const ids = idsIn(clause, fatOf);
      // "but not the coconut", "only the lard"
      if (!here && ids.length > 0 && apart.test(clause)) return null;
      if (!here) {
        named = ids.length > 0 ? ids : named;
        isLoose ||= ofAlkali.test(clause) || ofWater.test(clause) || ids.length > 0;
        if (ids.length > 0 && onlyNames.test(clause.trim())) names.push(...ids);
        continue;
      }
      all.push(here.whole ? here : { ...here, ids: [...here.ids, ...names] });
      isLoose &&= here.whole;
      names = [];
      before = here.factor;
    }
    if (all.length === 0) continue;
    // "everything halved, only the lye I took whole": of the lye something is told that was not heard
    if (isLoose && !isAsked) return null;
    if (isAsked) {
      const found = asksLye.test(sentence) ? patterns().inQuestion.exec(sentence) : null;
      const factor = factorOf(found?.groups?.['n'] ?? '');
      if (!found || factor === undefined || asksOpen.test(sentence)) return null;
      said.push(found[0]);
      sums.whole.add(factor);
      continue;
    }
    const hers = /\b(?:hers|theirs|of his)\b/i.test(sentence) && !theirs.test(post.slice(0, post.indexOf(row)));
    if (hers || passive.test(sentence) || (lately.test(sentence) && ofCard.test(post))) return null;
    if (patterns().open.test(sentence) || patterns().elsewhen.test(sentence) || patterns().ofElse.test(sentence))
      return null;
    said.push(sentence);
    if (habit.test(sentence)) {
      for (const { factor } of all) habits.add(factor);
      continue;
    }
    for (const one of all) {
      if (one.whole) sums.whole.add(one.factor);
      for (const kind of ['fats', 'alkali', 'water'] as const) if (one[kind]) sums[kind].add(one.factor);
      for (const id of one.ids) {
        if ((each.get(id) ?? one.factor) !== one.factor) return null;
        each.set(id, one.factor);
      }
    }
  }
  if (said.length === 0 || Object.values(sums).some(({ size }) => size > 1)) return null;
  const told = new Set([...Object.values(sums).flatMap((of) => [...of]), ...each.values()]);
  if ([...habits].some((factor) => !told.has(factor)) || [...told].every((factor) => factor === 1)) return null;
  // "the card has …, I took half of each. Lye 84 g": what is told behind may be of what was made
  const place = post.indexOf(said[0]?.trim() ?? '');
  // "I'm halving the recipe from the book. Mine is …": the list may be of what was made
  const isPhrase = patterns().inQuestion.exec(said[0] ?? '')?.[0] === said[0];
  const isOver = !amount.test(post.slice(0, place)) && !isPhrase && !ofList.test(said[0] ?? '');
  if (isOver && (!patterns().based.test(post) || /\bmine (?:is|was|has)\b|\bmine ?:/i.test(post))) return null;
  const isBetween =
    isOver || (amount.test(post.slice(0, place)) && amount.test(post.slice(place + (said[0]?.length ?? 0))));
  if (isBetween && sums.whole.size > 0) {
    if (sums.fats.size > 0) return null;
    sums.fats = sums.whole;
    sums.whole = new Set();
  }
  // "two thirds of this, lye halved": nobody knows
  const isMixed = [...sums.fats, ...sums.alkali, ...sums.water].some((one) => one !== 1 && !sums.whole.has(one));
  if (sums.whole.size > 0 && isMixed) return null;
  const only = (of: ReadonlySet<number>): number | null => [...of][0] ?? null;
  const text = said.reduce(
    (rest, one) => rest.replace(one.trim(), patterns().inQuestion.exec(one)?.[0] === one ? 'this' : ' '),
    post,
  );
  return {
    text,
    whole: only(sums.whole),
    fats: only(sums.fats),
    alkali: only(sums.alkali),
    water: only(sums.water),
    each,
    said,
  };
}

/**
 * Of which batch each part of a post tells: of the one that is asked about, of what a book or a plan has, of an earlier
 * batch, of somebody else's, of one to come. A telling carries on from one sentence to the next until another begins or
 * the line ends; one that stands over a list, up to the list's end.
 */

import type { Prim } from '../text/scan.ts';
import type { Cut, Sentence } from '../text/sentences.ts';
import { batchBefore, cue, papers, relations } from '../words/cue-words.ts';
import type { Token } from '../words/tokens.ts';

/** `mine`: of the batch that is asked about, and said to be so; the others are of another one. */
export type Telling = 'once' | 'told' | 'others' | 'later' | 'mine';

interface Opening {
  /** Where it begins in its sentence. */
  readonly place: number;
  readonly telling: Telling;
  /** By the number of the batch. */
  readonly numbered: boolean;
  /** By what somebody does. */
  readonly isDeed: boolean;
}

const anyOf = (words: string): string => `(?:${words.replaceAll(' ', '|')})`;
const paper = `${anyOf(papers)}s?`;
const whose = "(?:the|my|our|her|his|their|your|this|that|a|an|old|original|first|full|course|@|[\\p{L}']+s)";
const batch =
  '(?:one|ones|batch|batches|bars?|loaf|soap|soaps|recipe|try|go|attempt|round|version|time|tub|bag|week|month|year)';
const kin = anyOf(relations);
const earlier = '(?:last|previous|earlier|old|former|other)';

const patterns: Readonly<Record<Telling, readonly string[]>> = {
  told: [
    '\\b(?:for|as a) comparison\\b(?! (?:to|with)\\b)|^comparison :',
    `^[-• "(]*(?:from )?(?:[\\p{L}']+ ){0,3}${paper} (?:[:=]|- )`,
    `^[-• "(]*(?:the |my |our )?(?:planned|plan|theory|target|on paper|supposed|as written|original(?: ${paper})?|${paper}|what (?:the |my |our )?(?:[\\p{L}']+ )?${paper} (?:wanted|wants|says|said|has|had)) (?:[:=]|- )`,
    `\\b(?:${whose} )+${paper}(?: of [\\p{L}' ]{2,20}?)?(?: [\\p{L}]+)? (?:says?|said|calls?|has|had|wants?|wanted|asks?|asked|gives|gave|lists?|listed|uses|used|takes|took|told|reads|is|was|were|goes) `,
    '^[-• "(]*(?:plan|planned|book|recipe|sheet|target) (?=[#@])',
    '^[-• "(]*(?:original )?plan (?:was|were|had been|had) ',
    `^(?:${paper}) (?:says?|said|calls?|has|had|wants?|wanted|asks?|asked|gives|gave|lists?|listed|uses|used|takes|took)\\b`,
    `\\bon (?:the|my|our|her|his) ${paper} (?:its|it is|there is|there are|are|is|was|it was|it says|it said|i have|i had|i wrote|it had) `,
    `\\b(?:the|my) ${paper} (?:i|we) (?:wanted|planned|had|followed)\\b`,
  ],
  once: [
    // "never mind the pints, I'd use 900 g": what follows is of now
    "\\b(?:ignore|forget|disregard|scrap|never mind) (?:the|my|that|all of the) [\\p{L}]+\\b(?! ?[,;:.–-]+ (?:and |so |but )?(?:i|we|its|let ?'?s|use|take|make)\\b)",
    '\\b(?:[\\p{L}]+|#) (?:days|weeks|months|years) (?:ago|back)\\b|…ago\\b|^(?:some |many |a few |few )?(?:weeks|months|years|#) (?:ago|back)\\b|^(?:but |and )?back (?:in the (?:old )?days?|then)\\b',
    // "the first time I used 135", "when I started I used 135", "in the class we used 135"
    '^(?:but |and )?(?:the|my|our) (?:very )?first (?:time|go|try|attempt|batch|loaf|soap|one) ,? ?(?:i|we|it) (?!(?:am|is|will|want|make|plan)\\b)',
    '^(?:but |and )?when (?:i|we) (?:first |was |were |had |only |just )*(?:started|began|starting|new|beginners?|learning|learned|learnt)\\b',
    '^(?:but |and )?(?:in|at|on) (?:the|that|a|our|my) (?:[\\p{L}]+ )?(?:class|course|workshop|lesson)s? ,? ?(?:i|we|they|it) ',
    `^(?:but |and )?for (?:my|our|her|his) ${kin}'?s? (?:(?:batch|one|soap|bar|loaf|birthday|wedding|shop|stall) )?,? ?(?:i|we) (?:used|took|put|had|made|weighed)\\b`,
    `\\b(?:the|my|our|in|on|of|with|from|for|that) (?:very )?${earlier} ${batch}\\b`,
    `^(?:${earlier}|first) ${batch}\\b`,
    '\\b(?:in|with|from|for) (?:another|(?:a|an|one) (?:different|other|earlier|older|previous|former)) (?:batch|soap|loaf|recipe) (?:i|we|it|there|was|had|once)\\b',
    // with its list in a bracket, which is a sentence of its own
    `^(?:my|the|our) (?:very )?first ${batch} (?:(?:i|we) (?:ever )?(?:made|did|tried) )?$`,
    '\\bthe (?:batch|soap|loaf|one) before (?:was|had|took) ',
    `^(?:(?:and|but|in|with|for|on|from) )*(?:(?:the|my|our) )?${batchBefore} (?!is |cured )`,
    '^(?:the )?(?:time|batch|loaf|one) before ,? ?(?:i|we|it) (?:forgot|left|had|used|took|put|made|was|skipped|swapped|replaced|added)\\b',
    "\\blast (?:week|month|year|summer|autumn|winter|spring) ?'?s (?:batch|soap|loaf|bars?|one) (?:was|were|had|took)\\b",
    `^(?:and |so |the |my |our )*(?:last (?:week|month|year|time|summer|autumn|winter|spring|sunday|saturday|night)|yesterday)'?s (?:${batch} )?(?:$|was |were |had |[:=])`,
    "\\blast (?:spring|summer|autumn|fall|winter|christmas|easter|night)(?:s|'s?| (?:i|we|it) (?:ha[ds]|used|took|made|was|were|put)) ",
    '^(?:back )?in (?:the )?(?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december) (?:i|we|it) (?:had|used|took|made|put|was)\\b',
    `\\b(?:i|we) used to (?:make|take|use|put|have|do|weigh)\\b`,
    '^[-• "(]*(?:it |this |mine |the (?:recipe|bar|soap|mix) )?used to (?:be|have|go)\\b',
    '^[-• "(]*(?:the |my )?old(?: one| recipe| version| batch)? (?:[:=]|- )',
  ],
  others: [
    `^(?:my|our|her|his|the) ${kin}'?s [.:]`,
    `\\b(?:my|our|a|the|his|her) ${kin}(?:'?s)? (?:soap|batch|recipe|bar|one|version|loaf)s? (?:is|was|has|had|[:=])`,
    `\\b(?:my|our|a|the|his|her) ${kin} (?:(?!and\\b|or\\b|i\\b|we\\b|who\\b|that\\b|also\\b)[\\p{L}]{2,} )?(?:always |usually |just )?(?:did|does|made|makes|took|takes|uses|used|has|had|puts|put|says|said|wrote|writes|sent|swears|wanted|wants|claims|thinks|reckons)\\b(?! (?:that )?(?:he|she|they) (?:has |had |have |also |just )*(?:put|added|poured|tipped|threw|stirred|emptied)\\b)`,
    '\\b(?:does|do|did|makes?|made|cooks?|cooked) (?:hers|his|theirs)\\b|\\b(?!like\\b|as\\b|than\\b|follow|from\\b|not\\b|nor\\b)[\\p{L}]+ (?:hers|theirs|his) with\\b',
    '\\b(?:her|his|their) (?:own )?(?:batch|soap|recipe|one|version|loaf|bars?)(?: (?:is|was|has|had)|[ ]?[:=])',
    '^(?:and |but )?(?:others|people|(?:some|many|most|other) (?:people|folks?|makers|soapers)) (?!.*\\b(?:i|we|me|mine|ours?)\\b)(?:[\\p{L}]+ )?(?:take|use|put|add|make|have|do|go|weigh)\\b',
    `(?:^|(?<=[:;] ))(?:[(] )?(?:${kin}|he|she|they) (?:always |usually |just |also )?(?:did|made|takes|took|uses|used|puts|had|says|said|swears|wanted|wants|thinks|reckons|goes for)\\b`,
  ],
  later: [
    '(?<!\\b(?:about|now|is) (?:for )?(?:the|my) )\\bnext (?:time|round|batch|go|week|month|year|spring|summer|autumn|winter|one)\\b',
    '\\bthinking (?:about|of) (?:the|my) next\\b',
    // "I'd love to put 60 g of cocoa butter in next time, but this first one is ..."
    "(?:^|[,;] )(?:(?:and|but|so) )?(?:i|we) ?(?:'?d|would) (?:also |really )?(?:love|like) to (?:put|add|use|try|have)\\b(?=[^.?!]*\\bnext (?:time|batch|one|round)\\b)",
    '\\b(?:planned|plans?) for (?:no|number|batch|the next|later|spring|summer|autumn|winter|next)\\b',
    '\\b(?:what )?if (?:i|we) (?:later|ever|then|now|instead|went|go|swap|swapped|replace|replaced|change|changed|add|added)\\b',
    '\\b(?:for later|later on|some day|one day|in the next (?:batch|one|round|loaf))\\b',
  ],
  mine: [
    '\\bscales? (?:said|says|showed|shows|read|reads)\\b',
    '^[-• "(]*(?:the )?(?:proper|right|correct|final|corrected|true) (?:one|list|recipe|version|figures|amounts) (?:is |are )?(?:[:=]|- )',
    '\\b(?:mine|(?:my|our|the) (?:own )?(?:pot|version|new (?:one|batch|recipe|tub|bag|version)|current (?:one|batch)))(?: (?:now )?(?:is|was|has|had)|[ ]?[:=])',
    '^(?:[-• "(]*)ours (?:is|are|was|will|[:=])',
    '\\bwhat (?:i|we) (?:really |actually |did |then |finally )*(?:did|took|used|weighed|made|put|have|had|poured|ended)\\b',
    '^[-• "(]*(?:today|tonight|tomorrow|this (?:week|time|weekend|evening|afternoon|morning|batch))(?:\'?s (?:batch|one|soap|recipe|lot))? ?(?:its|it is|is|will be|it will be|itll be|(?:i|we) (?:make|want|plan|have|am|will|use|take)|im|[:=]|- )',
    '\\bthis is (?:the (?:one|recipe|batch|list) (?:i|that|to|for)|my (?:new|next|current) (?:one|recipe|batch))\\b',
    '\\bso (?:i|we) (?:do|make|made|take|use) (?=#)',
    '\\bin (?:the|my|our) (?:pot|bowl|pan) ?(?:now |really )?(?:there|are|is|went|was|were|i|we|theres|:)',
    '\\b(?:i|we) ?(?:ve|have|had)? ?(?:now |only |just |really |actually |then |did |done |in fact |instead |myself )*(?:put|took|used|weighed|did|done|made it|poured|went|weigh|take)\\b',
    '\\b(?:im|i am|were|we are) (?:now |only |just |doing half )*(?:taking|using|doing|making|putting)\\b',
    '\\b(?:i|we|it) ?(?:only (?:had|have|got)|(?:had|have|got) only|could only|can only)\\b|; (?:but )?(?:i|we) had\\b',
    '\\b(?:weighed|real|actual|in fact|in the pot) (?:[:=] )?(?=#)',
    // "what I'm asking about is the next one: 500 g lard"
    '(?<!thinking )\\b(?:about|now|is) (?:for )?(?:the|my) (?:next|second|new)(?: (?:one|batch|soap))? [:–—-]',
    `(?<!from )\\bthis (?:new |first |very first )?(?:time|one|batch|week|weekend|year|round|month|morning)\\b`,
    '\\bme , i |\\b(?:i|we) ?(?:would|d|will|ll)? (?:like|want|prefer)\\b',
    '^(?:and |but )?(?:now|today|tonight|yesterday)\\b',
    '\\b(?:but|so|and|since) (?:now|today|tonight|this year)\\b',
    `^[-• "(]*(?:the )?(?:real(?:ity)?|really|actual|actually|weighed|done|new(?: (?:one|recipe|version|batch))?|current|now|today|in the pot|in reality|in fact) (?:[:=]|- )`,
    '^[-• "(]*(?:the |my )?(?:second|third|fourth|2nd|3rd|4th) (?:try|go|attempt|round)\\b',
  ],
};

interface Way {
  readonly telling: Telling;
  /** What a sentence has all of that tells so. */
  readonly cues: number;
  readonly pattern: RegExp;
}
/** The pattern is made when a sentence first has its cues. */
const way = (telling: Telling, cues: number, source: string): Way => {
  let made: RegExp | undefined;
  return {
    telling,
    cues,
    get pattern() {
      made ??= new RegExp(source, 'gu');
      return made;
    },
  };
};
const all: readonly Way[] = [
  ...(Object.entries(patterns) as [Telling, readonly string[]][]).map(([telling, list]) =>
    way(telling, cue[telling], list.join('|')),
  ),
  way(
    'told',
    cue.meant,
    "\\b(?:we|i) ?(?:'?d|had|first)? (?:planned|meant to|wanted|intended|was going|were going)\\b",
  ),
  way('once', cue.my | cue.batchOf | cue.wasOf, '\\bmy (?:bar|bars|recipe|batch) (?:was|had|used to)\\b'),
  // "the crumbly one had 150 g lye"
  way(
    'once',
    cue.batchOf | cue.wasOf,
    '\\b(?:the|that) (?!new|newer|current|present|next|second|third|fourth|right|proper|correct|finished|other|big|small|same|whole)(?:[\\p{L}]+ (?:one|batch|loaf)|(?:one|batch|loaf) (?:that|which) [\\p{L}]+(?: [\\p{L}]+)?) had (?=#)',
  ),
  way(
    'others',
    cue.batchOf | cue.fromBy,
    "\\b(?:the |that )?(?:one|recipe|batch|version) (?:from|of|by) (?:the|my|our|her|his|a) (?:[\\p{L}']+ ){1,3}(?:is|was|has|had|uses|used|calls) ",
  ),
  way(
    'mine',
    cue.my | cue.batchOf,
    '\\bmy (?:own )?(?:batch|lye|water|one|soap|recipe|loaf)(?: (?:now )?(?:is|was|has|had)|[ ]?[:=])',
  ),
];
const mine = all.filter(({ telling }) => telling === 'mine');
const others = all.filter(({ telling }) => telling !== 'mine');

/** "Same oils as in the last batch (…)": what was so is so again. */
const same =
  /\b(?:same|changes? to|as before|as (?:in|for|with) (?:the|my) (?:last|first|previous)|like (?:the|in the|my) (?:last|first))\b/;

/** Behind these the writer's own deed is of the same telling, unless it is set against it. */
const against = /(?:\b|(?=;))(?:;|but|now|today|this|instead|so|then|only|really|actually|mine|however|yet)\b[^#@]*$/;

/** "My gf says 127, I put in 130": what somebody else says has had its figure. */
const figureBefore = /# (?:@ )?(?:[,;] (?:(?:and|but|so) )?|(?:and|but|so|while) )$/;

/** Somebody takes or uses. */
const deed =
  /\b(?:takes|took|taken|take|taking|uses|used|use|using|puts|put|putting|makes|made|make|making|does|did|do|doing|done|weighed|poured)$/;

function openingsOf(sentence: Sentence, of: typeof all): readonly Opening[] {
  const found: Opening[] = [];
  for (const way of of) {
    if ((sentence.cues & way.cues) !== way.cues) continue;
    const { telling, pattern } = way;
    const { text } = sentence;
    pattern.lastIndex = 0;
    for (let hit = pattern.exec(text); hit; hit = pattern.exec(text))
      found.push({ place: hit.index, telling, numbered: false, isDeed: deed.test(hit[0]) });
  }
  return found;
}

/** "That was the last one.": of what stands before it. */
const isOfBefore = (text: string, place: number): boolean =>
  pointsBack.test(text.slice(0, place)) && !/[#@:]/.test(text.slice(place));
const pointsBack =
  /\b(?:(?:that|it|those|this) ?(?:'?s|is|was|were|are)|thats|its) (?:all |still )?(?:for |from |in |of )?$/;

/** "Group three", "batch 11", "rev. B", "v2.1", "the second try". */
const called =
  /\b(?<kind>groups?|batch|no|nr|number|team|version|rev|revision|ver|v|recipe|loaf|pot|try|go|attempt|round|test|trial|experiment|exp|sample|lot) (?:(?:[.] )?(?:no|nr|number) )?(?:[.:] )?(?<name>#|one|two|three|four|five|six|[abcdef])(?='?s?[ ])|\b(?<nth>first|second|third|fourth|fifth|1st|2nd|3rd|4th|5th) (?<of>group|batch|team|version|recipe|loaf|pot|try|go|attempt|round|one)\b/gu;
/** "The first try was 900 g of tallow. The second had olive in it": behind one that is named. */
const ordinals =
  /\b(?:the|my|our) (?<nth>second|third|fourth|fifth|2nd|3rd|4th|5th) (?=(?:had|was|were|came|got|went|turned|is|has)\b|: )/gu;
/** "1500 g tallow and 400 g coconut is the third." */
const isNth =
  /^[^#]*#.*\b(?:is|are|makes|be) (?:the|my|our) (?<nth>second|third|fourth|fifth|2nd|3rd|4th|5th) [.!]? ?$/du;
const numbers: Readonly<Record<string, number>> = Object.fromEntries(
  [
    ['one', 'first', '1st', 'a'],
    ['two', 'second', '2nd', 'b'],
    ['three', 'third', '3rd', 'c'],
    ['four', 'fourth', '4th', 'd'],
    ['five', 'fifth', '5th', 'e'],
    ['six', 'f'],
  ].flatMap((names, k) => names.map((name) => [name, k + 1] as const)),
);

interface Label {
  readonly sentence: number;
  readonly place: number;
  readonly number: number;
  /** A try is done once more where the one before was not good. */
  readonly again: boolean;
}

/** "46 had 350 of water", "in 11 I used 350 g", "#11 was soft": a number that nothing but the title tells what it is of. */
const barely =
  /(?:^(?:[-•("] )*(?:(?:and|but|so|notes?) )?(?:: )?|[:;,.] (?:and |but |in |with |for )?|\b(?:and|but|in|with|for|unlike) )(?<name>[#…]) (?=(?:had|has|was|were|got|took|used|came|went|turned|did|needed|i|we) |it (?:had|was|took) |and [#…] (?:had|was|were|took|used|got)\b)/gu;
/** Batches before the one of the title of which a post tells, at the most. */
const mostBack = 12;

/** "46", "#46": the number there; null where another figure stands. */
function numberAt(token: Token | undefined, prims: readonly Prim[]): number | null {
  if (token?.t === 'quantity') {
    const { dim, value, text, times } = token.quantity;
    return dim === 'bare' && times === null && /^\d{1,4}$/.test(text) ? value : null;
  }
  const sign = token?.t === 'aside' ? prims[token.from] : undefined;
  const figure = prims[(token?.from ?? 0) + 1]?.text ?? '';
  return sign?.text === '#' && /^\d{1,4}$/.test(figure) ? Number(figure) : null;
}

/** The batches that are told of by their mere number, under a title with that of the one that is asked about. */
function bareIn(
  sentences: readonly Sentence[],
  tokens: readonly Token[],
  prims: readonly Prim[],
  list: readonly Label[],
): readonly Label[] {
  const start = list.find(({ sentence, place }) => isTitled(sentences.slice(0, sentence + 1), place));
  const opens = tokens.findIndex((token) => token.t !== 'line' && token.t !== 'sign');
  const own = tokens[opens]?.t === 'aside' ? opens : isBatch(tokens[opens]) ? opens + 1 : -1;
  const title = start?.number ?? (tokens[own]?.t === 'aside' ? numberAt(tokens[own], prims) : null);
  if (title === null) return [];
  const found: Label[] = start ? [] : [{ sentence: 0, place: 0, number: title, again: false }];
  sentences.forEach((sentence, k) => {
    barely.lastIndex = 0;
    for (let hit = barely.exec(sentence.text); hit; hit = barely.exec(sentence.text)) {
      const place = hit.index + hit[0].length - 2;
      const number = numberAt(tokens[sentence.tokenAt(place)], prims);
      if (number !== null && number < title && title - number <= mostBack)
        found.push({ sentence: k, place, number, again: false });
    }
  });
  return found;
}
const isBatch = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'batch-word';

function labelsIn(sentences: readonly Sentence[], tokens: readonly Token[]): readonly Label[] {
  const found: Label[] = [];
  sentences.forEach((sentence, k) => {
    if (!sentence.tells || (sentence.cues & cue.numbered) === 0) return;
    called.lastIndex = 0;
    for (let hit = called.exec(sentence.text); hit; hit = called.exec(sentence.text)) {
      const { kind, name, nth, of } = hit.groups ?? {};
      const figure = name === '#' ? tokens[sentence.tokenAt(hit.index + hit[0].length - 1)] : undefined;
      if (figure?.t === 'quantity' && figure.quantity.dim !== 'bare') continue;
      const number = figure?.t === 'quantity' ? figure.quantity.value : numbers[nth ?? name ?? ''];
      // "no. 1 tallow" is a grade of it
      const isGrade = kind === 'no' && /^ ?@/.test(sentence.text.slice(hit.index + hit[0].length));
      if (number === undefined || isGrade || (kind === 'no' && name !== '#')) continue;
      found.push({ sentence: k, place: hit.index, number, again: /^(?:try|go|attempt|round)$/.test(kind ?? of ?? '') });
    }
  });
  const [first] = found;
  if (!first?.again) return found;
  sentences.forEach((sentence, k) => {
    if (k <= first.sentence || (sentence.cues & cue.numbered) === 0) return;
    const whole = isNth.exec(sentence.text);
    for (const { index, groups } of whole ? [whole] : sentence.text.matchAll(ordinals)) {
      const number = numbers[groups?.['nth'] ?? ''] ?? 0;
      if (number > first.number) found.push({ sentence: k, place: index, number, again: true });
    }
  });
  return found;
}

const pointed =
  /\?|\b(?:please|pls|check|only|look at|judge|about|know|wonder\w*|help with|why i (?:write|ask|post))\b/;

/** What ends with a label at this place, or holds it, is the title of the post: no name is beside it, or no figure is but its own. */
const isTitled = (upTo: readonly Sentence[], place: number): boolean =>
  !upTo.some(({ text }) => text.includes('@')) ||
  (upTo.reduce((sum, { figures }) => sum + figures, 0) <= 1 &&
    /^[\p{L}]+ (?:[.:] )?[#\p{L}]+ (?:[)\]"”.] )*$/u.test(upTo.at(-1)?.text.slice(place) ?? ''));

/** The number of the batch that is asked about; null where none of several is. */
function askedOf(sentences: readonly Sentence[], list: readonly Label[]): number | null {
  const numbered = new Set(list.map(({ number }) => number));
  if (numbered.size < 2) return null;
  const asked = new Set(
    list.filter(({ sentence }) => pointed.test(sentences[sentence]?.text ?? '')).map(({ number }) => number),
  );
  const [only] = asked;
  if (asked.size > 0) return asked.size === 1 && only !== undefined ? only : null;
  if (list.every(({ again }) => again)) return Math.max(...numbered);
  const [first] = list;
  return first && isTitled(sentences.slice(0, first.sentence + 1), first.place) ? first.number : null;
}

export interface Told {
  readonly telling: Telling | null;
  /** It was announced in an earlier sentence. */
  readonly carried: boolean;
}

export const ofNobody: Told = { telling: null, carried: false };
const kinds: readonly Telling[] = ['once', 'told', 'others', 'later', 'mine'];
const toldBy = (carried: boolean): ReadonlyMap<Telling | null, Told> =>
  new Map(kinds.map((telling) => [telling, { telling, carried }]));
const here = toldBy(false);
const carriedOn = toldBy(true);

/** What a sentence tells of at one of its tokens. */
export type Tells = (sentence: number, token: number) => Told;

/** Null where all of a post tells of one batch. */
export function tellingsIn(
  sentences: readonly Sentence[],
  { tokens, prims }: Cut,
  isSettled: (sentence: Sentence) => boolean,
): Tells | null {
  const labels = labelsIn(sentences, tokens);
  const bare = bareIn(sentences, tokens, prims, labels);
  if (bare.length === 0 && !sentences.some((sentence) => sentence.tells)) return null;
  const numbered = [
    ...bare.filter(({ place, sentence }) => place + sentence === 0),
    ...labels,
    ...bare.filter(({ place, sentence }) => place + sentence > 0),
  ];
  const asked = askedOf(sentences, numbered);
  const elsewhere = sentences.map((sentence) =>
    sentence.tells && !isSettled(sentence) ? openingsOf(sentence, others) : [],
  );
  if (asked === null && elsewhere.every((list) => list.length === 0)) return null;
  const openings: (readonly Opening[])[] = [];
  const before: (Telling | null)[] = [];
  let telling: Telling | null = null;
  let any = false;
  let paragraph = 0;
  let isHeading = false;
  let headed = false;
  sentences.forEach((sentence, k) => {
    const isNewLine = sentence.from > 0 && tokens[sentence.from - 1]?.t === 'line';
    const isPast = sentence.paragraph === paragraph ? isNewLine && !headed && !isHeading : !isHeading;
    if (isPast) telling = null;
    headed = !isPast && (headed || isHeading);
    paragraph = sentence.paragraph;
    before.push(telling);
    const { text } = sentence;
    const own = asked === null ? [] : numbered.filter((one) => one.sentence === k);
    const found = [...(elsewhere[k] ?? []), ...openingsOf(sentence, mine)];
    for (const { place, number } of own)
      found.push({ place, telling: number === asked ? 'mine' : 'once', numbered: true, isDeed: false });
    if (found.length > 1) found.sort((a, b) => a.place - b.place);
    const list: Opening[] = [];
    for (const one of found) {
      const opened = list.at(-1);
      const last: Telling = opened?.telling ?? 'mine';
      // "she takes 1 kg of lard, I'm taking 500 g"
      const before = text.slice(0, one.place);
      const isTurn = last === 'others' && ((opened?.isDeed === true && one.isDeed) || figureBefore.test(before));
      if (one.telling === 'once' && same.test(text)) continue;
      if (
        one.telling === 'mine' &&
        !one.numbered &&
        last !== 'mine' &&
        last !== 'told' &&
        !isTurn &&
        !against.test(text.slice(0, one.place + 8))
      )
        continue;
      list.push(one);
      // a remark behind a figure is of that figure
      if (one.telling === 'mine' || !(before.includes('#') || isOfBefore(text, one.place)))
        telling = one.telling === 'later' ? null : one.telling;
    }
    any ||= list.some((one) => one.telling !== 'mine');
    openings.push(list);
    // "in autumn I took 230 g. Is 206 okay? Water 600 g"
    if (telling === 'once' && list.length === 0 && /\? ?$/.test(text)) telling = null;
    isHeading = /: …? ?$/.test(text) && !text.includes('#');
  });
  if (!any) return null;
  return (k, token) => {
    const list = openings[k] ?? [];
    const place = list.length > 0 ? (sentences[k]?.placeOf(token) ?? 0) : 0;
    const last = list.findLast((one) => one.place <= place);
    return (last ? here.get(last.telling) : carriedOn.get(before[k] ?? null)) ?? ofNobody;
  };
}

/** What the recipes of a post are called: by a mark, their place, their age, their owner, a word of theirs alone. */
import { echoesIn, type Headed, namesIn, ofSize, weightsIn } from './echoed.ts';
import { listIn, type Part } from './parted.ts';
import { kin, noun, type Owner, oneOf, ownerOf, type Sex, sexOf } from './whose.ts';

export type Age = 'old' | 'new';

/** A recipe of a post, and what tells it from the others. */
export interface Called extends Part {
  /** Of its first amount, and behind its last one. */
  readonly first: number;
  readonly last: number;
  /** The end of the line behind them. */
  readonly lineTo: number;
  /** What stands before its figures, and behind those of the one before it. */
  readonly head: string;
  readonly headFrom: number;
  readonly body: string;
  /** "a", "2" */
  readonly mark: string | null;
  /** "Kitchen" over a list, or ahead of it. */
  readonly title: string | null;
  readonly age: Age | null;
  readonly own: Owner | null;
  /** Days of a month that may stand over it: "09/11 –". */
  readonly days: readonly number[];
  /** Of running text. */
  readonly spoken: (Headed & { readonly sex: Sex | null }) | null;
}

/** A recipe that a clause speaks of, by its place among the others. */
export interface Mention {
  readonly part: number;
  readonly from: number;
  readonly to: number;
  readonly isMark: boolean;
}

const numerals: Readonly<Record<string, string>> = { one: '1', two: '2', three: '3', four: '4' };
const kinds = 'recipes?|batch|version|option|soap|bar|pot|sheet|tab|list|loaf|card';

/** Words before the first figure of a recipe that say how it is called, and that tell its age. */
const reach = 120;
const reachOfAge = 90;
/** Of "1)", "v2". */
const markLength = 2;
const headMark = new RegExp(
  `(?:(?<![\\p{L}\\d])(?:${kinds}|n[or]\\.?|number|v)\\s*(?:#|n[or]\\.? ?)?|#|(?:^|\\n|[.;] )\\W{0,4})(?<mark>[a-d]|\\d|one|two|three|four)(?![\\p{L}\\d])(?= ?[):.(=–—"”'’\\s-])`,
  'giu',
);
const ages: Readonly<Record<Age, RegExp>> = {
  old: /\b(?:old|older|previous(?:ly)?|last (?:week|month|year|time|batch|spring|summer|autumn|fall|winter)|used to|before|originally|original|former|first version|back then|where i started|years ago|yesterday)\b/i,
  new: /\b(?:new|newer|current|now|today|tonight|this (?:time|week|weekend|month|year|season|spring|summer|autumn|winter|morning|evening)|latest|updated|revised|changed|tomorrow|halved|doubled|tripled|trebled|scaled (?:up|down)|mine|my (?:own )?version)\b/i,
};
const titles =
  /(?:^|\n|[.;] )\W{0,4}(?<title>(?!(?:Fats?|Oils?|Lye|Water|Ingredients|Method|Total|Recipe|Mine)\b)\p{Lu}\p{Ll}{2,})(?: \p{L}+)?["'”’]?[ ]?[:\n(–-]/gu;
const shortDays: Readonly<Record<string, string>> = {
  Mon: 'Monday',
  Tue: 'Tuesday',
  Tues: 'Tuesday',
  Wed: 'Wednesday',
  Thu: 'Thursday',
  Thur: 'Thursday',
  Thurs: 'Thursday',
  Fri: 'Friday',
  Sat: 'Saturday',
  Sun: 'Sunday',
};

/** "Sat:" is asked about as "Saturday's". */
function titleOf(head: string): string | null {
  const title = [...head.matchAll(titles)].at(-1)?.groups?.['title'] ?? null;
  return title === null ? null : (shortDays[title] ?? title);
}

const dated =
  /(?:^|\n)[^\p{L}\d\n]*(?<a>\d{1,2})(?:[./-](?<b>\d{1,2})(?!\d)(?:[./-]\d{2,4})?|(?:st|nd|rd|th)?\.? (?:of )?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*)(?=[^\p{L}\d]|$)/giu;
/** Of the last date that stands over a recipe; its month may come first. */
function daysOf(head: string): readonly number[] {
  const { a, b } = [...head.matchAll(dated)].at(-1)?.groups ?? {};
  return [a, b].flatMap((day) => (day === undefined ? [] : [Number(day)]));
}

/** "Now it is in the oven.", in a line of its own, tells of no list. */
const ended = /[.!?]\s*\n/;
/** Said of a recipe by whoever makes it. */
const byOwner = /\b(?:i|i['’](?:m|ve|d|ll)|me|my|mine|we|our|ours)\b/i;

export function calledIn(post: string, parts: readonly Part[]): readonly Called[] {
  const isAnswered = parts.some(({ from, to, quoted }) => quoted === false && byOwner.test(post.slice(from, to)));
  let since = 0;
  const all = parts.map((part): Called => {
    const { from: first, to: last } = part.list ?? listIn(post, { ...part, from: part.from + markLength }) ?? part;
    const lineEnd = post.indexOf('\n', last);
    const headFrom = Math.max(since, first - reach, part.list ? part.from : 0);
    const head = post.slice(headFrom, first);
    const near = post.slice(Math.max(headFrom, first - reachOfAge), first);
    const isOld = part.quoted;
    since = Math.max(part.to, last);
    return {
      ...part,
      first,
      last,
      lineTo: lineEnd < 0 ? post.length : lineEnd,
      head: head.toLowerCase(),
      headFrom,
      body: post.slice(first, last).toLowerCase(),
      mark: markOf(head) ?? (part.list ? letterOf(near) : null),
      title: titleOf(head),
      days: daysOf(head),
      age:
        isOld !== undefined && isAnswered
          ? isOld
            ? 'old'
            : 'new'
          : oneOf(near.split(ended).at(-1) ?? '', ['old', ages.old] as const, ['new', ages.new] as const),
      own: saidBy(post, first) ?? ownerOf(near, part.list !== undefined),
      spoken: part.list
        ? { names: namesIn(near), figures: weightsIn(post.slice(first, last)), sex: sexOf(near) }
        : null,
    };
  });
  const marks = new Set(all.map(({ mark }) => mark));
  return toldOf(post, marks.has(null) || marks.size < all.length ? all.map((one) => ({ ...one, mark: null })) : all);
}

/** "Ilse: mine is …", in a chat in which "me:" speaks, too: hers. */
function saidBy(post: string, at: number): Owner | null {
  if (!/(?:^|\n)[ \t>]*me ?:/i.test(post)) return null;
  const line = post.slice(post.lastIndexOf('\n', at - 1) + 1, at);
  const speaker = /^[ \t>]*(\p{L}+) ?:/u.exec(line)?.[1];
  if (speaker === undefined) return null;
  if (speaker.toLowerCase() === 'me') return 'mine';
  return /^\p{Lu}/u.test(speaker) && !notPeople.test(speaker) ? 'theirs' : null;
}
const notPeople =
  /^(?:Fats?|Oils?|Lye|Water|Ingredients|Method|Total|Recipe|Mine|Old|New|Card|Plan|Today|Yesterday)$|day$/;

const beneath = /\b(?:below|beneath|underneath|at the bottom|lower|last)\b/i;
const phrases = /(?:(?!\band\b)[^,.;?!\n])+/g;
const onTop = /\b(?:on top|at the top|above|upper|first)\b/i;

/** "The old one is below", "mine is the second": whose it is, or how old, where the headings tell nothing of it. */
function toldOf(post: string, all: readonly Called[]): readonly Called[] {
  const named = [...all];
  const first = all[0]?.first ?? 0;
  const last = all.at(-1)?.last ?? 0;
  for (const start of [0, last])
    for (const { 0: clause, index } of post.slice(start, start === 0 ? first : undefined).matchAll(phrases)) {
      const age = oneOf(clause, ['old', ages.old] as const, ['new', ages.new] as const);
      const own = ownerOf(clause, false);
      if (age === null && own === null) continue;
      const told = [...(onTop.test(clause) ? [0] : []), ...(beneath.test(clause) ? [all.length - 1] : [])];
      const places = new Set(told.length > 0 ? told : mentionsIn(clause, start + index, all).map(({ part }) => part));
      const [place] = places;
      const one = place === undefined || places.size > 1 ? undefined : named[place];
      if (one && place !== undefined) named[place] = { ...one, age: one.age ?? age, own: one.own ?? own };
    }
  return named;
}

/** "A 500 g olive, …", in running text. */
const letterOf = (head: string): string | null =>
  /(?:^|[^\p{L}\d])([a-d]|\d)\W*$/iu.exec(head)?.[1]?.toLowerCase() ?? null;

function markOf(head: string): string | null {
  const said = [...head.matchAll(headMark)].at(-1)?.groups?.['mark']?.toLowerCase() ?? null;
  return said === null ? null : (numerals[said] ?? said);
}

const places: Readonly<Record<string, number>> = {
  first: 0,
  '1st': 0,
  former: 0,
  upper: 0,
  top: 0,
  second: 1,
  '2nd': 1,
  third: 2,
  '3rd': 2,
  fourth: 3,
  '4th': 3,
  latter: -1,
  lower: -1,
  bottom: -1,
  last: -1,
};

/** The groups of a pattern. */
type Said = Readonly<Record<string, string | undefined>>;

/** What stands behind a mark that is no article and no amount. */
const afterMark =
  "(?=['’]s\\b| ?[,.?!;:)/–—-]| ?$| (?:is|was|has|had|came|went|worked|works|will|and|or|only|please|pls|ok|okay|right|alright|fine|alone|first|too|then|that|which|but|not|got|needs|looks|seems|last|stays|already|just|i|to|matters|counts|tonight|today|now|good)\\b)";
type Ways = readonly (readonly [RegExp, (words: Said, all: readonly Called[]) => number | null])[];
let patterns: Ways | null = null;

const plainMark = (mark: string): string => numerals[mark.toLowerCase()] ?? mark.toLowerCase();

function ofMark({ mark = '' }: Said, all: readonly Called[]): number | null {
  const found = all.findIndex((one) => one.mark === plainMark(mark));
  return found >= 0 ? found : null;
}

/** "Number 2" of those that have no marks is the second. */
function ofNumber(words: Said, all: readonly Called[]): number | null {
  const place = Number(plainMark(words['mark'] ?? '')) - 1;
  return ofMark(words, all) ?? (all[place]?.mark === null ? place : null);
}

function ofPlace({ place, start }: Said, all: readonly Called[]): number | null {
  const at = places[(place ?? start ?? '').toLowerCase()];
  if (at === undefined) return null;
  const said = at < 0 ? all.length + at : at;
  return said < all.length ? said : null;
}

/** The only one of its kind, or the one that is left by the others; `otherwise` where nothing tells them apart. */
function onlyOne<A>(of: readonly (A | null)[], kind: A, otherwise: number | null): number | null {
  const found = of.flatMap((one, k) => (one === kind ? [k] : []));
  const loose = of.flatMap((one, k) => (one === null ? [k] : []));
  if (found.length === 1) return found[0] ?? null;
  if (found.length === 0 && loose.length === 1) return loose[0] ?? null;
  return found.length === 0 && loose.length === of.length ? otherwise : null;
}

function ofAge({ age = '' }: Said, all: readonly Called[]): number | null {
  const isOld = /^(?:old|prev|orig|quot)/i.test(age);
  // the older one is told first, where nothing says otherwise
  return onlyOne(
    all.map((one) => one.age),
    isOld ? 'old' : 'new',
    all.length === 2 ? (isOld ? 0 : 1) : null,
  );
}

function ofDay(day: number, all: readonly Called[]): number | null {
  const found = all.flatMap(({ days }, k) => (days.includes(day) ? [k] : []));
  return found.length === 1 ? (found[0] ?? null) : null;
}

/** The one whose heading has this word; else the one whose list has it. */
function ofWord({ word = '' }: Said, all: readonly Called[]): number | null {
  const isIn = new RegExp(`(?<![\\p{L}\\d])${word.toLowerCase()}(?![\\p{L}\\d])`, 'u');
  const within = (texts: readonly string[]): number[] => texts.flatMap((text, k) => (isIn.test(text) ? [k] : []));
  const anywhere = within(all.map(({ head, body }) => head + body));
  // the words right before an amount are of the list
  const headed = within(all.map(({ head }) => head.replace(/[\p{L} ]*[:=]? ?$/u, '')));
  const heads = within(all.map(({ head }) => head));
  for (const found of [headed, anywhere, heads]) if (found.length === 1) return found[0] ?? null;
  return null;
}

const ofOwner =
  (own: Owner) =>
  ({ whose = '' }: Said, all: readonly Called[]): number | null => {
    const sex = sexOf(whose);
    const known = all.map((one) => (one.own === own && sex !== null ? (one.spoken?.sex ?? null) : null));
    // "check hers", of his and mine
    const otherwise = known.some((one) => one !== null && one !== sex);
    const found = known.flatMap((one, k) => (one !== null && one === sex ? [k] : []));
    if (found.length > 0) return found.length === 1 ? (found[0] ?? null) : null;
    return otherwise
      ? null
      : onlyOne(
          all.map((one) => one.own),
          own,
          null,
        );
  };

function waysToCall(): Ways {
  patterns ??= [
    [
      new RegExp(
        `(?:(?<![\\p{L}\\d])(?:${kinds}|n[or]\\.?|number|v)\\s*(?:#|n[or]\\.? ?)?|#|\\()(?<mark>[a-d]|\\d|one|two|three|four)(?![\\p{L}\\d])(?! ?(?:%|k?g|oz|ml|lbs?)(?!\\p{L}))`,
        'giu',
      ),
      ofNumber,
    ],
    [new RegExp(`(?<![\\p{L}\\d'’]|\\d )(?<mark>[B-D]|(?<=[\\p{Ll},] )A|A${afterMark})(?![\\p{L}\\d])`, 'gu'), ofMark],
    [
      new RegExp(
        `\\b(?:check|only|about|just|ignore|forget|skip|not|mean|(?:is|of|for|in|and)(?!\\s+\\d)|is(?=\\s+\\d (?:ok|okay|right|alright|fine)\\b))\\s+(?<mark>[b-d]|\\d)(?![\\p{L}\\d])(?!\\.\\d)${afterMark}`,
        'gu',
      ),
      ofMark,
    ],
    [/^\W*(?<mark>\d|[b-d])(?= (?:is|was|ok|please|pls|only)\b)/gu, ofMark],
    [
      new RegExp(
        `\\b(?:(?:the|my|only|that|this) (?<place>${Object.keys(places).join('|')})(?=(?: ${noun})|\\s*(?:[,.?!:;)]|$)| (?:that|which|i|is|was|has|please|pls|only|alone|too|more|of (?:these|those|the|them))\\b)|^\\W*(?<start>${Object.keys(places).join('|')}) one\\b)`,
        'giu',
      ),
      ofPlace,
    ],
    [
      new RegExp(
        `\\b(?:the |my |that |this |your )?(?<age>newe?r?|current|latest|updated|revised|olde?r?|previous|original|quoted)(?= ${noun}|\\s*(?:[,.?!;)]|$)| (?:please|pls)\\b)|(?<![\\p{L}])(?<age2>today|tonight)['’]s\\b`,
        'giu',
      ),
      (words, all) => ofAge({ age: words['age'] ?? words['age2'] ?? '' }, all),
    ],
    [
      new RegExp(
        `\\b(?:(?:the|my|that|this) (?<word>(?!${Object.keys(places).join('|')}|same|right|other|whole)[\\p{L}\\d]+)(?: (?:oil|butter|fat))? ${noun}|the one with (?:the )?(?<inside>[\\p{L}]+))`,
        'giu',
      ),
      (words, all) => ofWord({ word: words['word'] ?? words['inside'] ?? '' }, all),
    ],
    [
      /\b(?<day>(?:mon|tues|wednes|thurs|fri|satur|sun)day|today|tonight|yesterday|morning|afternoon|evening)['’]?s\b(?! (?:stall|market|fair|sale|class|course|party|wedding|guests?|meeting|weather|post))|\b(?:one|soap|batch|loaf) (?:from|of|on|i made on) (?<on>\p{L}+day)\b/giu,
      (words, all) => ofWord({ word: words['day'] ?? words['on'] ?? '' }, all),
    ],
    // "the one from the 9th"
    [
      /\b(?:from|of|on|dated) (?:the )?(?<day>\d{1,2})(?:st|nd|rd|th)\b|\bthe (?<day2>\d{1,2})(?:st|nd|rd|th)['’]?s?\b/giu,
      (words, all) => ofDay(Number(words['day'] ?? words['day2']), all),
    ],
    // "is the first ok?"
    [
      /\b(?:the|my) (?<place>first|second|third|fourth|last)(?= (?:if|and|or|but|then|when|after|as|than|not|ok|okay|right|fine|good|safe|off|\p{L}+er)(?!\p{L}))/giu,
      ofPlace,
    ],
    // "only this year's, please"
    [
      /\b(?:this|(?<last>last)) (?:time|week|month|year|season|spring|summer|autumn|fall|winter)['’]s(?!\p{L})/giu,
      (words, all) => ofAge({ age: words['last'] ? 'old' : 'new' }, all),
    ],
    [new RegExp(`\\b(?:mine|(?<!\\b(?:on|by) )my own|my (?:lye|${noun}))(?!\\p{L})`, 'giu'), ofOwner('mine')],
    [
      new RegExp(`\\b(?<whose>hers|theirs|${kin}['’]s)(?!\\p{L})|\\b(?:her|his|their) ${noun}`, 'giu'),
      ofOwner('theirs'),
    ],
  ];
  return patterns;
}

let spokenWays: Ways | null = null;
/** How those are called that are told in running text. */
function waysInSpeech(): Ways {
  spokenWays ??= [
    [
      new RegExp(
        `(?<!\\p{L})(?:(?:my|our|the|her|his) )?(?<whose>${kin})['’]?s(?!\\p{L})|(?<!\\p{L})(?<his>his)(?= (?:is|was|has|one|please|pls|plz|not|too|only|and|or|but|then|than|as|if|ok|okay|right|off|needs|looks|first|again|be|i|im|\\p{L}+er)(?!\\p{L})|\\W*$)|(?<!\\p{L})(?<one>she|he)(?:['’]?s| is) the one(?!\\p{L})`,
        'giu',
      ),
      ({ whose, his, one }, all) => ofOwner('theirs')({ whose: whose ?? his ?? one }, all),
    ],
    [/\b(?:i['’]?m|i am) the one\b|\bmine\b|\bwhat (?:i|we) (?:do|did|have|use|used|made|put)\b/giu, ofOwner('mine')],
    [/\bwhat (?<whose>she|he|they) (?:does|do|did|has|have|uses|used|made|puts?)\b/giu, ofOwner('theirs')],
    [
      new RegExp(
        `(?<!\\p{L})(?:(?<large>big(?:ger|gest)?|large[rst]*|doubled?|tripled?|scaled[ -]up|full)|(?<small>small(?:er|est)?|little|half|halved|mini|scaled[ -]down)) ${noun}`,
        'giu',
      ),
      (words, all) =>
        ofSize(
          words['large'] !== undefined,
          all.flatMap(({ spoken }) => spoken ?? []),
        ),
    ],
    [
      /\b(?:check|about|for) (?<whose>him|her)(?! \p{L})|\bis (?<one>she|he) (?=ok|fine|alright|right|lye|too)/giu,
      ({ whose, one }, all) => ofOwner('theirs')({ whose: whose ?? one }, all),
    ],
    [
      /(?<!\p{L})(?:(?<now>today|tonight)|yesterday)['’]?s(?!\p{L})/giu,
      ({ now }, all) => ofAge({ age: now ? 'new' : 'old' }, all),
    ],
    [
      /\b(?:this (?<now>time)['’]?s?|(?<last>last) (?:time|week|month|year|night)['’]?s?)(?!\p{L})/giu,
      (words, all) => ofAge({ age: words['last'] ? 'old' : 'new' }, all),
    ],
  ];
  return spokenWays;
}

/** The recipes that a clause of the post speaks of. */
export function mentionsIn(clause: string, from: number, recipes: readonly Called[]): readonly Mention[] {
  // what is asked ahead of a list is no heading of it
  const all = recipes.map((one) => {
    const [start, end] = [Math.max(0, from - one.headFrom), from + clause.length - one.headFrom];
    return end <= 0 || start >= one.head.length
      ? one
      : { ...one, head: `${one.head.slice(0, start)} ${one.head.slice(end)}` };
  });
  const heads = all.flatMap(({ spoken }) => spoken ?? []);
  const found: Mention[] = echoesIn(clause, heads).map((one) => ({
    part: one.part,
    from: from + one.from,
    to: from + one.to,
    isMark: false,
  }));
  for (const [pattern, meant] of heads.length > 0 ? [...waysInSpeech(), ...waysToCall()] : waysToCall()) {
    pattern.lastIndex = 0;
    for (let hit = pattern.exec(clause); hit; hit = pattern.exec(clause)) {
      const place = from + hit.index;
      const to = place + hit[0].length;
      const part = found.some((one) => one.from < to && place < one.to) ? null : meant(hit.groups ?? {}, all);
      if (part !== null) found.push({ part, from: place, to, isMark: meant === ofMark || meant === ofNumber });
    }
  }
  if (new Set(all.map(({ title }) => title)).size === all.length)
    all.forEach(({ title }, part) => {
      if (title === null) return;
      const at = clause.search(new RegExp(`(?<!\\p{L})${title}(?!\\p{L})`, 'u'));
      const place = from + at;
      if (at >= 0 && !found.some((one) => one.from < place + title.length && place < one.to))
        found.push({ part, from: place, to: place + title.length, isMark: false });
    });
  return found.sort((a, b) => a.from - b.from);
}

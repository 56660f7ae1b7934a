/**
 * "v1 had lard instead of the shea, v2 = same with less water, v3 = above": of a post with one list, what is told by
 * their numbers of the versions before it. It is left out where the post says which one its list is.
 */
import { cut, longestTalk, shortened } from '../doubt/talk.ts';

const nouns = '(?:try|attempt|version|go|batch|round)';
const nth = 'first|second|third|fourth|fifth|sixth|[1-9](?:st|nd|rd|th)';
/** "v1", "rev. B", "exp. 4", "batch no. 11", "R-021", "K11", "#2", "(2)", "0055", "second try". */
const label = `(?:\\b(?<kind>v|ver|version|rev|revision|mk)\\b[.: #-]*(?<of>\\d{1,3}(?:\\.\\d+)?|[A-H]\\b)|\\b(?<series>exp|experiment|test|trial|sample|batch|lot)\\b(?:[.: #-]|no\\b)*(?<member>\\d{1,3})|\\b(?<short>v|r|mk)(?<no>\\d{1,3}(?:\\.\\d+)?)|\\b(?<code>[A-Z]{1,3})-?(?<count>\\d{1,4})|#(?<hash>\\d{1,3})|\\((?<bracket>\\d)\\)|\\b(?<zeros>0\\d{2,4})|\\b(?<nth>${nth}) ${nouns})(?![\\w%-]|[.,]\\d)`;
const mayTell = new RegExp(label, 'i');
const atStart = new RegExp(`^[-*•·>\\s"“(]*(?<ahead>(?:in|for) )?${label}`, 'i');
/** "(Exp. 4 with 300 g lard: crumbly)". */
const inBrackets = new RegExp(`\\((?=${label.replace(/\?<\w+>/g, '?:')})[^()\\n]*\\)`, 'gi');
const anywhere = new RegExp(label, 'gi');

interface Label {
  readonly stem: string;
  readonly number: number;
}

const seriesOf = (name: string): string => name.toLowerCase().slice(0, 3);
const isSeries = (stem: string): boolean => /^(?:exp|tes|tri|sam|bat|lot)$/.test(stem);

const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

function labelOf({ groups = {} }: RegExpExecArray): Label | null {
  const { kind, of, series, member, short, no, code, count, hash, bracket, zeros, nth } = groups;
  const name = of ?? member ?? no ?? count ?? hash ?? bracket ?? zeros;
  if (nth !== undefined) {
    const place = ordinals.indexOf(nth.toLowerCase());
    return { stem: '#', number: place < 0 ? Number.parseInt(nth, 10) : place + 1 };
  }
  if (name === undefined) return null;
  // "version a friend sent me"
  if (/^[a-z]$/.test(name) && !/^rev/i.test(kind ?? '')) return null;
  const number = /^[a-z]$/i.test(name) ? name.toUpperCase().charCodeAt(0) - 64 : Number(name);
  const word = (kind ?? short ?? '').charAt(0).toLowerCase();
  if (series !== undefined) return { stem: seriesOf(series), number };
  return { stem: word || code?.toUpperCase() || (zeros === undefined ? '#' : '0'), number };
}

/** A clause that begins with a label, and what it says behind it. */
interface Piece extends Label {
  readonly from: number;
  readonly to: number;
  readonly says: string;
  /** Told of one to come, or of one that is done, whatever its number: "in exp. 6 replace …", "B8 had …". */
  readonly isElse: boolean;
}

const otherTime = /^\W*(?:had|was|were)\b|\b(?:will|shall|ll|gets?|going to|to try|plan(?:ned)?|next)\b/i;

const parting = new RegExp(
  `\\n+|(?<=[.!?])(?<!\\b(?:exp|no|rev|ver)\\.)\\s+|(?<=[;:])\\s*(?=${label.replace(/\?<\w+>/g, '?:')})`,
  'gi',
);

function piecesOf(post: string): readonly Piece[] {
  const found: Piece[] = [];
  let from = 0;
  const end = (to: number): void => {
    const text = post.slice(from, to);
    const hit = atStart.exec(text);
    const own = hit && labelOf(hit);
    if (!own) return;
    const says = text.slice(hit[0].length);
    const isElse = hit.groups?.['ahead'] !== undefined || otherTime.test(says);
    found.push({ ...own, from, to, says, isElse });
  };
  for (const gap of post.matchAll(parting)) {
    end(gap.index);
    from = gap.index + gap[0].length;
  }
  end(post.length);
  for (const { index, 0: text } of post.matchAll(inBrackets)) {
    from = index;
    end(index + text.length);
  }
  return found;
}

/** "= above", "this one", "as listed", "Today.", or nothing. */
const isThis =
  /^(?:[\s:=–—.,()-]|\b(?:is|was|the|this|one|current|currently|above|list|listed|as|here|it|present|now|today|stands|written|recipe|version|batch)\b)*$/i;
/** It heads the list: "Second try, what I have weighed:". */
const heads = /:[ \t]*$/;
const isOwn = ({ says }: Piece): boolean => isThis.test(says) || heads.test(says);
/** It tells what is in it, maybe. */
const mayChange =
  /\d|\b(?:instead|place|swap\w*|replac\w*|with|without|w\/o?|had|has|same|but|plus|minus|less|more|no|not|only)\b/i;
const asks = /\?|\b(?:please|pls|need|want|request\w*|check|verif\w+|give me)\b/i;
/** It speaks of another one than the number behind it. */
const past = /\b(?:before|until|till|than|since|after|next|from|of) (?:the )?$/i;
/** The list takes something from an earlier one. */
const leans = /\b(?:as|like|same|for|in) (?:in |for |the |with )?$/i;

const labelsIn = (text: string): readonly (Label & { readonly before: string })[] =>
  [...text.matchAll(anywhere)].flatMap((hit) => {
    const own = labelOf(hit);
    return own ? [{ ...own, before: text.slice(0, hit.index) }] : [];
  });

/** "R-022 Harbour" over the post, "batch: 0058" below that. */
const titlesOf = (post: string): readonly string[] =>
  post
    .split('\n')
    .filter((line) => line.trim() !== '')
    .slice(0, 2)
    .filter((line, k) => k === 0 || /^\s*\p{L}+(?: no)?\.?\s?:\s*\S+\s*$/u.test(line));

/** "Mould D / batch D-08 / 13 bars": what the list is called below it. */
const calling = /\b(?:batch|lot|label|code|charge)(?: (?:code|no|number))?[.: ]*$/i;

/** The number of the post's own list: in its title, behind "batch", in what says "this one", or in what is asked about. */
function ownOf(post: string, pieces: readonly Piece[], stem: string): number | null {
  const isOfStem = (one: Label): boolean => one.stem === stem;
  const named = labelsIn(post).filter(({ before }) => calling.test(before));
  const here = [...titlesOf(post).flatMap(labelsIn), ...pieces.filter(isOwn), ...named].filter(isOfStem);
  // a number alone may count the rows of the list
  if (here.length === 0 && !/^[vrm]$/.test(stem)) return null;
  const asked = post
    .split(/(?<=[.?!])\s|\n/)
    .filter((text) => asks.test(text))
    .flatMap(labelsIn)
    .filter((one) => isOfStem(one) && !past.test(one.before));
  const own = new Set([...here, ...asked].map(({ number }) => number));
  const [only] = own;
  return own.size === 1 && only !== undefined ? only : null;
}

/** "Batch 06 had 145 NaOH and no palm": the one batch that a post names, and tells of as of another. */
function lonePast(post: string, pieces: readonly Piece[], stem: string): readonly Piece[] | null {
  const all = labelsIn(post).filter((one) => one.stem === stem);
  const found = pieces.filter((piece) => piece.stem === stem && done.test(piece.says) && !asks.test(piece.says));
  return all.length === 1 && found.length === 1 ? found : null;
}
const done = /^ (?:had|was made|got|took)\b/i;

/** What is told of the versions before the one of the list; null where the post does not tell them apart. */
function earlierIn(post: string, pieces: readonly Piece[], stem: string): readonly Piece[] | null {
  const own = ownOf(post, pieces, stem);
  if (own === null) return isSeries(stem) ? lonePast(post, pieces, stem) : null;
  const others = pieces.filter((piece) => piece.stem === stem && piece.number !== own);
  const isTitled = titlesOf(post)
    .flatMap(labelsIn)
    .some((one) => one.stem === stem);
  const tellsMore = pieces.some(
    (piece) => piece.stem === stem && piece.number === own && !isOwn(piece) && mayChange.test(piece.says),
  );
  if (tellsMore && !isTitled) return null;
  return others.every(
    (piece) =>
      (piece.number < own || piece.isElse) && /\p{L}{2}/u.test(piece.says) && !heads.test(piece.says) && !isRow(piece),
  )
    ? others
    : null;
}

/** A row of a list that is numbered: "#1 olive 500 g". */
const isRow = ({ stem, says }: Piece): boolean =>
  !/^[vrm]$/.test(stem) &&
  /^\W*(?:\p{L}+[^\p{L}\d,]+){1,4}\d[\d.,]*\s?(?:k?g|oz|lbs?|ml|%)?\W*$|^\W*\d[\d.,]*\s?(?:k?g|oz|lbs?|ml|%)(?: +\p{L}+){1,4}\W*$/u.test(
    says,
  );

const unknown =
  "(?:(?:is |has |have )?not (?:yet |been )*(?:worked|reckoned|calculated|figured|known|decided)|to be (?:worked|reckoned|calculated|figured)|(?:please )?work (?:it|that|this) out|now (?:it is |its |it's )?\\d)";
/** "Lye: used to be 545 g with the tallow; not worked out for the above". */
const usedToBe = new RegExp(
  `\\bused to (?:be|take|get) (?:about |around )?\\d[^;\\n]*?(?=(?:[;,]|\\.(?=\\s)| [–—-]) ?${unknown})`,
  'gi',
);

/** "My sister's recipe has 140 but for other oils, so please not that." */
const notThat =
  /(?<=^|\n|[.!?]\s)[^.!?\n]{1,60}['’]s (?:recipe|batch|soap|bar|card|book)\b(?:[^.!?\n]|\.(?=\d)){1,120}?\b(?:not that|not hers|not his|(?:for|with) (?:other|different) (?:oils|fats))\b[^.!?\n]*[.!]?/gi;

/** "Five oil bar (2021) had no rice bran": of that year's, as long as it weighs nothing. */
const ofYear =
  /(?<=^|\n|[.!?\]]\s)[^.!?\n\d\]]{1,80}\((?:19|20)\d\d\) (?:had|was|were|never|used|contained|went)\b(?![^.!?\n]*\d ?(?:k?g|oz|lb|%))[^.!?\n]*[.!?]?/gi;

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** In order, without those that lie in another. */
function apart(stretches: readonly Stretch[]): readonly Stretch[] {
  const out: Stretch[] = [];
  for (const one of stretches.toSorted((a, b) => a.from - b.from || b.to - a.to))
    if (one.from >= (out.at(-1)?.to ?? 0)) out.push(one);
  return out;
}

const mostShown = 3;

/** The post without what it tells of earlier versions; `told`: what that is. */
export function withoutEarlier(post: string): { readonly text: string; readonly told: readonly string[] } {
  if (post.length > longestTalk) return { text: post, told: [] };
  const pieces = mayTell.test(post) ? piecesOf(post) : [];
  const stems = new Set(pieces.map(({ stem }) => stem));
  const earlier = [...stems].flatMap((stem) => earlierIn(post, pieces, stem) ?? []);
  const others = /['’]s (?:recipe|batch|soap|bar|card|book)\b/i.test(post) ? [...post.matchAll(notThat)] : [];
  const once = / used to [a-z]+ (?:about |around )?\d/i.test(post) ? [...post.matchAll(usedToBe)] : [];
  const dated = /\((?:19|20)\d\d\) [a-z]/i.test(post) ? [...post.matchAll(ofYear)] : [];
  const also = [...once, ...others, ...dated].map(({ index, 0: { length } }) => ({ from: index, to: index + length }));
  if (earlier.length + also.length === 0) return { text: post, told: [] };
  const { text, gone } = cut(post, apart([...earlier, ...also]));
  const leant = labelsIn(text).some(
    (one) => leans.test(one.before) && earlier.some(({ stem, number }) => stem === one.stem && number === one.number),
  );
  return leant ? { text: post, told: [] } : { text, told: gone };
}

export function saidOfEarlier(told: readonly string[]): string {
  const shown = told.slice(0, mostShown).map((one) => `“${shortened(one)}”`);
  const more = told.length - shown.length;
  return `I left out what is told of other versions: ${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
}

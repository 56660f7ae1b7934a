/** What the clauses of a post say of its recipes. */
import {
  type Act,
  actOf,
  asksOf,
  both,
  choosing,
  compared,
  filler,
  goesOn,
  open,
  refusedHere,
  refusing,
  tells,
  that,
  theOther,
  thisOne,
  tooAsked,
  wished,
} from './acts.ts';
import { type Called, type Mention, mentionsIn } from './called.ts';
import { amountsIn, type Part } from './parted.ts';

/** What is said in one clause. */
export interface Said extends Part {
  readonly act: Act | null;
  readonly mentions: readonly Mention[];
}

const sentences = /(?:\b(?:no|nr)\. ?\d|\.(?=\S)|[^.?!\n])+[.?!]*/gi;
const clauses =
  /(?:\((?:[a-d]|\d)\)|(?![,;:()–—]|\s->?\s|\b(?:but|while|whereas|because|since)\b|\bit['’]?s (?:mine|hers|his|theirs)\b)[\s\S])+/gi;

interface Stretch extends Part {
  /** Ahead of amounts in its sentence. */
  readonly isHead: boolean;
}

/** The stretches of a sentence that are no list. */
function* stretchesOf(post: string, from: number, to: number, all: readonly Called[]): Generator<Stretch> {
  if (all.some(({ spoken }) => spoken)) {
    let start = from;
    for (const { first, last } of all) {
      if (last <= from || first >= to) continue;
      if (first > start) yield { from: start, to: first, isHead: true };
      start = last;
    }
    if (start < to) yield { from: start, to, isHead: false };
    return;
  }
  const list = amountsIn(post, { from, to });
  if (!list) return yield { from, to, isHead: false };
  yield { from, to: list.from, isHead: true };
  yield { from: list.to, to, isHead: false };
}

interface Clause {
  readonly text: string;
  readonly from: number;
  readonly isAsked: boolean;
  readonly isBracketed: boolean;
  /** Ahead of figures, or in a line that ends with a colon. */
  readonly isHead: boolean;
}

/** Longer than this is no clause that asks. */
const longest = 300;

function clausesOf(post: string, { from, to, isHead }: Stretch): readonly Clause[] {
  const text = post.slice(from, to);
  const isOpen = open.test(text);
  const isQuestion = text.trimEnd().endsWith('?') && !isOpen;
  const isTitle = isHead || text.trimEnd().endsWith(':');
  const found: Clause[] = [];
  let end = 0;
  let isBracketed = false;
  for (const { 0: clause, index } of text.matchAll(clauses)) {
    const gap = text.slice(end, index);
    isBracketed = /[(–—]/.test(gap) || (end > 0 && /^->?\s/.test(clause)) || (isBracketed && !gap.includes(')'));
    end = index + clause.length;
    if (clause.length > longest || !/[\p{L}\d]/u.test(clause)) continue;
    found.push({
      text: clause,
      from: from + index,
      isAsked: asksOf.test(clause) && !isHead && !isOpen,
      isBracketed,
      isHead: isTitle,
    });
  }
  const last = found.at(-1);
  return isQuestion && last ? [...found.slice(0, -1), { ...last, isAsked: true }] : found;
}

const partsOf = (mentions: readonly Mention[]): ReadonlySet<number> => new Set(mentions.map(({ part }) => part));

/** The recipe whose figures a clause stands ahead of, and the one whose figures it stands behind. */
function placeOf(
  post: string,
  from: number,
  all: readonly Called[],
): { readonly ahead: number | null; readonly behind: number | null } {
  const next = all.findIndex(({ first }) => from < first);
  const before = next < 0 ? all.length - 1 : next - 1;
  const last = all[before];
  const part = all[next];
  const isBeside = last !== undefined && from <= last.lineTo && !(part?.spoken && from >= part.from);
  return {
    ahead:
      part && !isBeside && (from >= part.from || /^[^\n.?!]*:\s*$/.test(post.slice(from, part.from))) ? next : null,
    behind: last && (isBeside || next >= 0) ? before : null,
  };
}

/** What was said before a clause: in its sentence, and in the sentences ahead of it. */
interface Before {
  /** Of the clause before; undefined for none behind all lists. */
  readonly act: Act | null | undefined;
  readonly mentions: readonly Mention[];
  readonly earlier: readonly Mention[];
  /** In the sentence right ahead, where that turns nothing down and praises nothing. */
  readonly just: readonly Mention[];
}

const backTo =
  /(?<!\b(?:is|was|are|were|if|has|have|had) )\bthere\b|\b(?:in (?:it|that|this)|(?:of|for|with|about) (?:it|that)|that one|this one)\b/i;

/** What a clause says of the recipes that it calls. */
function actOn(
  { text, from, isAsked, isHead }: Clause,
  own: readonly Mention[],
  before: Before['act'],
  earlier: Act | null,
  isNotBefore: boolean,
): Act | null {
  const act = actOf(text, isAsked);
  const rest = own.reduceRight((left, one) => left.slice(0, one.from - from) + left.slice(one.to - from), text);
  if (isAsked && compared.test(rest) && partsOf(own).size > 1) return 'choose';
  if (isHead || (act !== null && act !== 'choose')) return act;
  // "and then B, if you have time"
  if (act === null && earlier === 'choose' && goesOn.test(text.slice(0, (own[0]?.from ?? from) - from)))
    return 'choose';
  // "not hers"; "mine not hers" chooses the first
  if (/\bnot\b/i.test(rest) && rest.replace(filler, '') === '')
    return /\bnot\b/i.test(text.slice(0, (own[0]?.from ?? from) - from)) ? 'refuse' : 'choose';
  if (act === null && (before === 'choose' || before === 'lean') && !tells.test(rest)) return before;
  if (rest.replace(filler, '') !== '') return act;
  // "not hers, mine"
  if (isNotBefore && act === null && !/^\W*(?:and|or|nor)\b/i.test(text)) return 'choose';
  return act ?? before ?? (before === undefined ? 'choose' : null);
}

/** The recipe that "that one" or words in brackets are about. */
function pointedBy(post: string, clause: Clause, act: Act, before: Before, all: readonly Called[]): readonly Mention[] {
  // "I need only 150 g of it": in running text that is asked of anything
  const isLoose = act === 'choose' && all[0]?.spoken;
  // "it's the second one that is still soft. Did I get the lye wrong there?"
  if (
    act === 'choose' &&
    clause.isAsked &&
    before.mentions.length === 0 &&
    backTo.test(clause.text) &&
    partsOf(before.just).size === 1
  )
    return before.just.slice(-1);
  const isThat = that.test(isLoose ? clause.text.replace(/\bit\b/gi, '') : clause.text);
  if (theOther.test(clause.text)) {
    const [one, ...more] = partsOf(before.mentions.length > 0 ? before.mentions : before.earlier);
    const part = one === undefined || more.length > 0 || all.length !== 2 ? null : 1 - one;
    return part === null ? [] : [{ part, from: clause.from, to: clause.from, isMark: false }];
  }
  const { ahead: headed } = clause.isHead ? placeOf(post, clause.from, all) : { ahead: null };
  // "B) the one I'd like looked at: …"
  if (headed !== null && clause.from >= (all[headed]?.from ?? 0) && (act === 'refuse' || wished.test(clause.text)))
    return [{ part: headed, from: clause.from, to: clause.from, isMark: false }];
  if ((!isThat && !clause.isBracketed) || (act === 'choose' && before.act === 'refuse')) return [];
  if (before.mentions.length > 0) return before.mentions.slice(-1);
  if (clause.isAsked) return [];
  const { ahead, behind } = placeOf(post, clause.from, all);
  const isThis = thisOne.test(clause.text) || clause.isBracketed;
  const near = isThis && ahead !== null ? ahead : act === 'choose' && !clause.isBracketed ? null : behind;
  if (near !== null) return [{ part: near, from: clause.from, to: clause.from, isMark: false }];
  return act === 'refuse' && partsOf(before.earlier).size === 1 ? before.earlier.slice(-1) : [];
}

export interface Heard {
  readonly said: readonly Said[];
  /** It asks about all of them. */
  readonly isOfAll: boolean;
}

/** "Ann: lard, nice": who speaks, in a line that asks nothing. */
function isSpeaker(post: string, { text, from }: Clause): boolean {
  const to = from + text.length;
  if (!/^\p{L}+ ?$/u.test(text) || post[to] !== ':' || (from > 0 && post[from - 1] !== '\n')) return false;
  const end = post.indexOf('\n', to);
  return !post.slice(to, end < 0 ? post.length : end).includes('?');
}

export function heardOf(post: string, all: readonly Called[]): Heard {
  const said: Said[] = [];
  const end = Math.max(...all.map(({ last }) => last));
  // behind or, in running text, ahead of all of them
  const start = all[0]?.spoken ? all[0].from : 0;
  let isOfAll = false;
  let earlier: readonly Mention[] = [];
  let latest: Act | null = null;
  let just: readonly Mention[] = [];
  for (const { 0: sentence, index } of post.matchAll(sentences)) {
    let mentions: readonly Mention[] = [];
    const count = said.length;
    for (const stretch of stretchesOf(post, index, index + sentence.length, all)) {
      let isNot = false;
      const isOutside = stretch.from >= end || stretch.to <= start;
      let act: Act | null | undefined = isOutside ? undefined : null;
      for (const clause of clausesOf(post, stretch)) {
        const { text, from } = clause;
        const own = isOutside && isSpeaker(post, clause) ? [] : mentionsIn(text, from, all);
        const does: Act | null = own.length > 0 ? actOn(clause, own, act, latest, isNot) : actOf(text, clause.isAsked);
        if (own.length > 0) mentions = own;
        const of =
          own.length > 0 || does === null ? own : pointedBy(post, clause, does, { act, mentions, earlier, just }, all);
        const turned = of.filter((one) => does === 'choose' && refusedHere.test(post.slice(from, one.from)));
        if (turned.length === 0 || turned.length < of.length)
          said.push({ act: does, mentions: of.filter((one) => !turned.includes(one)), from, to: from + text.length });
        if (turned.length > 0) said.push({ act: 'refuse', mentions: turned, from, to: from });
        // "the first is ok. Is the second one ok too?"
        const isDone = said.some((one) => one.act === 'done' && one.mentions.some(({ part }) => own[0]?.part !== part));
        isOfAll ||= does === 'choose' && own.length > 0 && tooAsked.test(text) && !isDone;
        if (of.length > 0) latest = does;
        act = does;
        isNot = does === 'refuse' && own.length > 0 && /^\W*not\b/i.test(text);
      }
      const text = post.slice(stretch.from, stretch.to);
      isOfAll ||= both.test(text) && (text.includes('?') || choosing.test(text)) && !refusing.test(text);
    }
    // "are 98 g in A and 122 g in B all right?"
    const between = index >= end ? amountsIn(post, { from: index, to: index + sentence.length }) : null;
    if (between && sentence.endsWith('?')) {
      const of = mentionsIn(post.slice(between.from, between.to), between.from, all);
      said.push({ act: 'choose', mentions: of, from: index, to: index });
    }
    if (mentions.length > 0) earlier = mentions;
    if (index >= end) {
      const isPlain =
        !/\bone of (?:them|these|those|the)\b/i.test(sentence) &&
        said.slice(count).every((one) => one.act === null || one.act === 'lean');
      just = isPlain ? mentions : [];
    }
  }
  return { said, isOfAll };
}

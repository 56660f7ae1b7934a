/**
 * Notes whose figures are of nothing in the pot: stock-taking of tubs, what bars weigh after weeks, what moulds take, what
 * others would take, what is planned next, how the finished paste is thinned. What such a note says of the list must
 * agree with it.
 */
import { packed } from '../columns/columns.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient, isRole } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import { hush, isPlain, isSum, rowsBefore, rowsOf, type Told, taleAt, toldIn, weightAt } from './tale.ts';

/** Words of which one stands in each such note. */
const cues: ReadonlySet<string> = new Set(
  'before now tins boxes trays another weight fresh half washing cleaning scrubbing mopping hers his theirs said reckoned thought wrote suggested claimed next rendered bowl cup jug those these whether enough right above listed written sold away wrapped posted yield yields dry cured wet after'.split(
    ' ',
  ),
);

const vessel = '(?:tub|tin|jar|bag|box|bottle|bucket|container|canister|can|packet|pack|sack|drum)';
const container = '(?:bowl|cup|jug|dish|beaker|pot|vessel|container|plate|tub)';
const later = '(?:fresh|wet|when cut|at cutting|out of the mould|unmou?lded)';

interface Note {
  readonly tokens: readonly Token[];
  readonly sentences: readonly Sentence[];
  readonly k: number;
}

type Agrees = (note: Note, told: Told) => boolean;

interface Rule {
  readonly reason: string;
  readonly pattern: string;
  /** It is so by what the list says. */
  readonly agrees?: Agrees;
  /** The whole sentence is of it. */
  readonly whole?: true;
  /** It tells so in one sentence and may go on in the next. */
  readonly goesOn?: true;
}

/** The one row of it before the note; null where none or several are. */
function rowOf({ tokens, sentences, k }: Note, at: number): Weighed | null {
  const [row, ...more] = rowsOf(tokens, tokens[at], sentences[k]?.from ?? 0);
  return row && more.length === 0 ? row : null;
}

/** The one row of alkali before the note. */
function lyeOf({ tokens, sentences, k }: Note): Weighed | null {
  const [row, ...more] = rowsBefore(tokens, sentences[k]?.from ?? 0).filter(({ at }) => isKind(tokens[at], 'alkali'));
  return row && more.length === 0 ? row : null;
}

const isKind = (token: Token | undefined, kind: string): boolean => isIngredient(token) && token.meaning.kind === kind;

/** A figure says what a row weighs. */
const isSame = (tokens: readonly Token[], { figure }: Weighed, k: number): boolean =>
  isSum(weightAt(tokens, figure, figure), weightAt(tokens, k, figure));

/** What has gone from a tub is what the list has of it; a scale for tubs shows as much as its figures do. */
const isUsed: Agrees = (note, told) => {
  const { tokens } = note;
  const row = rowOf(note, told('f'));
  if (!row) return false;
  const [before, after] = [weightAt(tokens, told('a'), row.figure), weightAt(tokens, told('b'), row.figure)];
  const used = weightAt(tokens, row.figure, row.figure);
  return Math.abs(before - after - used) <= Math.max(used / 100, before / 1000);
};

/** More is in the tub than the pot has. */
const isStock: Agrees = (note, told) => {
  const row = rowOf(note, told('f'));
  return row !== null && weightAt(note.tokens, told('a'), row.figure) > weightAt(note.tokens, row.figure, row.figure);
};

const saysOf = ({ sentences, k }: Note, on: number): string => sentences[k + on]?.text ?? '';

/** The writer has the alkali of the list, and says so. */
const isOwnAsListed: Agrees = (note) => {
  const { tokens, sentences, k } = note;
  const [row, next] = [lyeOf(note), sentences[k + 1]];
  if (!row || !next || !own.test(next.text)) return false;
  for (let at = next.from; at < next.to; at++) if (isPlain(tokens[at])) return isSame(tokens, row, at);
  return false;
};
const own =
  /^(?:but )?(?:i|we) (?:did|made|have made|used|took|weighed|went|had|put|kept|stuck)\b[^#@?]{0,30}# (?:of (?:it|@) )?(?:as (?:above|listed|written)|like (?:above|in the list)|above)\b/;

/** The list stands before it, and the one of the list is asked about. */
const isNextOnly: Agrees = (note) => {
  const { tokens, sentences, k } = note;
  const fats = rowsBefore(tokens, sentences[k]?.from ?? 0).filter(({ at }) => isKind(tokens[at], 'fat'));
  return lyeOf(note) !== null && fats.length > 1 && thisOne.test(saysOf(note, 1));
};
const thisOne =
  /^(?:but |now |so )*(?:first|for now|before that|now) [^#?]{0,40}\bthis (?:one|batch|bar|soap)\b|\bthis (?:one|batch|bar|soap) (?:that |which )?(?:is )?(?:on the (?:bench|rack|shelf)|curing|as (?:it is|listed|above))\b/;

/** The bowl was weighed with it: what the list has, without the bowl, is told. */
const isTared: Agrees = ({ tokens, sentences, k }, told) => {
  const [bowl, from] = [told('a'), sentences[k]?.from ?? 0];
  const end = (sentences[k + 2] ?? sentences.at(-1))?.to ?? from;
  return rowsBefore(tokens, from).some(({ figure }) => {
    const [whole, empty] = [weightAt(tokens, figure, figure), weightAt(tokens, bowl, figure)];
    for (let at = bowl + 1; at < end; at++) if (isSum(whole, empty, weightAt(tokens, at, figure))) return true;
    return false;
  });
};

/** A part of the water that goes back to the rest. */
const isPartOfRow: Agrees = (note, told) => {
  const { tokens } = note;
  const row = rowOf(note, told('f'));
  if (!row || !isSame(tokens, row, told('w')) || (told('c') >= 0 && !isSame(tokens, row, told('c')))) return false;
  return weightAt(tokens, told('a'), row.figure) < weightAt(tokens, row.figure, row.figure);
};

/** What the soap took of what was rendered is what the list has, before it or behind, and the rest makes up the whole. */
const isRendered: Agrees = ({ tokens, sentences, k }, told) => {
  const [from, to] = [sentences[k]?.from ?? 0, sentences[k + 1]?.to ?? 0];
  const rows = rowsOf(tokens, tokens[told('f')], tokens.length).filter(({ at }) => at < from || at >= to);
  const [row, ...more] = rows;
  if (!row || more.length > 0) return false;
  const [raw = 0, all = 0, used = 0, left = 0] = ['r', 'a', 'b', 'c'].map((group) =>
    weightAt(tokens, told(group), row.figure),
  );
  return raw > all && isSum(all, used, left) && isSame(tokens, row, told('b'));
};

/** The lye of the list once more, in a question. */
const isLyeAgain: Agrees = (note, told) => {
  const row = lyeOf(note);
  return row !== null && isSame(note.tokens, row, told('a'));
};

/** "95 g each"; what a mould takes in all may be what the fats shall weigh. */
const isEach: Agrees = ({ tokens }, told) => {
  const one = tokens[told('a')];
  return one?.t === 'quantity' && one.quantity.each;
};

const isWater: Agrees = ({ tokens }, told) => isKind(tokens[told('f')], 'water');
/** The paste was thinned a sentence or two before. */
const isDilution: Agrees = (note, told) =>
  isWater(note, told) &&
  [-1, -2].some((on) => /\bpaste\b/.test(saysOf(note, on)) && /\b(?:dilut\w*|thinn\w*)\b/.test(saysOf(note, on)));

const cured = 'what came out of the mould';
const rules: readonly Rule[] = [
  {
    reason: 'what is left of a pack',
    pattern: `(?:\\b${vessel} of (?:the |my )?(?<f>@)|(?<f>@) ${vessel}) (?:(?:weighed|was|[:,-]) )*before (?:[:,-] )?(?<a>#) (?:(?:,|and|[-/]) )*after(?:wards)? (?:[:,-] )?(?<b>#)`,
    agrees: isUsed,
  },
  {
    reason: 'what is left of a pack',
    pattern: `(?<f>@) ${vessel} (?:(?:is|has|holds|weighs|stands at|at|[:,-]) )*(?<a>#) (?:(?:are|is) )?(?:now|left)\\b`,
    agrees: isStock,
  },
  {
    reason: cured,
    pattern: `^[^@]{0,120}\\b(?:yields?|blocks?|loa(?:f|ves)|slabs?|bars?|soap|batch|came to|came out|weigh(?:s|ed)?)\\b[^@]{0,80}# ${later} (?:(?:,|and|then|now|[-/]) )*# (?:after|at|dry|cured|now)\\b(?:[^@#]{0,24}(?:# (?:weeks? |months? |days? )?)?(?:,|and|then) # (?:after|at|dry|cured|now)\\b)*`,
  },
  {
    reason: cured,
    pattern: '\\b(?:cured|dry|dried|fresh|wet|final|unmou?lded|cut) weight [^@#.;]{0,30}#(?! (?:of )?@)',
  },
  {
    reason: packed,
    pattern:
      '\\bmou?lds?\\b[^@#.;]{0,50}\\b(?:take|takes|hold|holds|fit|fits) (?:about |just |only )*(?<a>#)(?! (?:of )?@)',
    agrees: isEach,
  },
  {
    reason: packed,
    pattern: '\\b(?:mou?lds?|tins|boxes|trays) [,(] (?:about |of )*(?<a>#)(?= (?:each )?[,.;)]| each|$)',
    agrees: isEach,
  },
  {
    reason: 'how much a wash takes',
    pattern:
      '\\bfor (?:washing|cleaning|scrubbing|mopping|polishing|wiping) [a-z ]{2,30}\\b(?:take|use|put|mix|stir|dissolve|add|need) # (?:of )?(?:it|this|the (?:soap|jelly|paste)) (?:to|in|into|on|per|for|with) # (?:of )?(?:[a-z]+ )?(?<f>@)',
    agrees: isWater,
  },
  {
    reason: 'of another recipe',
    pattern:
      '\\b(?:she|he|they) (?:(?:always|usually|just) )*(?:puts?|adds?|uses?|takes?|likes?|pours?|stirs?) (?:in )?# (?:more )?(?:of )?(?<f>@) (?:to|in|into) (?:hers|his|theirs)\\b(?!.*\\b(?:so (?:do|did|have) (?:i|we)|me too|(?:i|we) (?:do|did) (?:too|so|the same)|like mine|same as (?:i|mine))\\b)',
  },
  {
    reason: 'for a test or a dilution',
    pattern: `\\b(?:another|further|extra|more|then) # (?:of )?(?<f>@) (?:(?:went|goes|more) )*(?:to|into|in|for|on) (?:the|that) (?:(?:same|other|first|second|diluted) )+(?:half|part|portion|third|quarter|jar|lot)\\b`,
    agrees: isDilution,
  },
  {
    reason: 'said by somebody else',
    pattern:
      '^(?!.*\\bso (?:i|we)\\b)(?:[a-z]+ ){0,4}(?:reckon(?:s|ed)|said|says|thought|thinks|wrote|suggest(?:s|ed)|claim(?:s|ed)) #[^?]*\\b(?:another|other|others|second|third|somebody|someone) [^#?]{0,24}#',
    agrees: isOwnAsListed,
    whole: true,
  },
  {
    reason: 'planned for another time',
    pattern:
      '^(?:what (?:i|we) (?:intend|plan|want|have in mind|would like)(?: to (?:do|try|make))?|(?:the |my )?(?:plans?|idea|intention)) for (?:the |my )?next(?: (?:one|time|batch|round|go|lot))? (?:(?:is|will be|[:,-]) )+',
    agrees: isNextOnly,
    whole: true,
  },
  {
    reason: packed,
    pattern: `\\bthe ${container} (?:(?:itself|alone|empty) )*(?:is|was|weighs|weighed|has|comes to|came to) (?<a>#)(?! (?:of|@))`,
    agrees: isTared,
  },
  {
    reason: 'a part of what was said',
    pattern:
      '(?<a>#) (?:of|out of|from) (?:the|those|these|that|my) (?<w>#) (?:of )?(?<f>@)[^?;.]{0,120}\\bback (?:to|in|into|with) (?:it |the |its )*(?:rest|others?|remaining|jug|bowl)\\b(?:[^#?;.]{0,40}(?<c>#))?',
    agrees: isPartOfRow,
  },
  {
    reason: 'what it was rendered from',
    pattern:
      '\\brendered (?<r>#) (?:of )?[^#.;?]{0,30}\\b(?:gave|got|made|yielded|left)\\b[^#.;?]{0,12}(?<a>#) (?:of )?(?:[a-z]+ ){0,3}(?<f>@)[^#?]{0,60}\\b(?:took|used|needed|got|went) (?:up )?(?<b>#) (?:of )?(?:that|it|this|the)[^#?]{0,30}\\b(?:other|rest|remaining)\\b[^#?]{0,14}(?<c>#)',
    agrees: isRendered,
    goesOn: true,
  },
  {
    reason: 'said before',
    pattern:
      '\\b(?:whether|if|is|was|are|were|think) (?:my |the |that |those )?(?<a>#) (?:(?:is|was|were|are|really|still) )*(?:all right|alright|right|ok|okay|enough|correct|good|fine|too (?:much|little))\\b',
    agrees: isLyeAgain,
  },
  {
    reason: 'said before',
    pattern:
      '\\b(?:i|we) (?:did|made|used|took|weighed|went|stuck)\\b[^#@?]{0,24}(?<a>#) (?:of (?:it |@ ))?(?:as (?:above|listed|written)|like above)\\b',
    agrees: isLyeAgain,
  },
  {
    reason: cured,
    pattern:
      '\\b(?:i|we) (?:sold|gave away|wrapped|posted) # of (?:it|them|that|these|those|the (?:soap|bars?|block))\\b',
    agrees: (note) => /\b(?:yield|blocks?|loaf|loaves|slabs?|bars?|soap)\b/.test(saysOf(note, -1)),
  },
];
let made: readonly { readonly rule: Rule; readonly pattern: RegExp }[] | null = null;

/** Notes of a post that are looked at: one with more of them tells no tale. */
const mostNotes = 40;

/** The tokens without the figures of such notes. */
export function notOfPot(cut: Cut): readonly Token[] {
  const { tokens } = cut;
  const tells = (token: Token): boolean =>
    ('text' in token && cues.has(token.text.toLowerCase())) || isRole(token, 'mould') || isRole(token, 'price');
  if (!tokens.some(tells)) return tokens;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  let count = 0;
  made ??= rules.map((rule) => ({ rule, pattern: new RegExp(rule.pattern, 'dg') }));
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || !isAny(tokens, sentence.from, sentence.to, tells)) continue;
    const tale = taleAt(sentences, k);
    for (const { rule, pattern } of made)
      for (const match of (rule.goesOn ? tale.text : sentence.text).matchAll(pattern)) {
        if (
          match.index >= tale.turn ||
          ++count > mostNotes ||
          rule.agrees?.({ tokens: out ?? tokens, sentences, k }, toldIn(tale, match)) === false
        )
          continue;
        out ??= [...tokens];
        const to = tale.tokenAt(match.index + match[0].length - 1) + 1;
        if (rule.whole) hush(out, sentence.from, sentence.to, rule.reason);
        else hush(out, tale.tokenAt(match.index), to, rule.reason);
      }
  }
  return out ?? tokens;
}

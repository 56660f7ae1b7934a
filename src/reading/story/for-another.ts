/**
 * "Palm I do not buy any more, so I have taken cocoa butter in the same weight", "in place of castor came sunflower, also
 * 50 g", "as palm was not there, lard is taken": one fat of the list that is not there and one that came for it, heard by
 * what each clause says and not by how it is said. Where no weight is told it is the one of the row.
 */
import { once } from '../once.ts';
import { alike, type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { batchBefore, relations } from '../words/cue-words.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { areOne, type Mentions, mentionsAt, rowsIn } from './mentions.ts';
import { hush, isPlain, type Name, weightAt } from './tale.ts';

const the =
  '(?:(?:the|my|her|his|their|our|this|that|any|some|all|of|more|a|single|other|good|real|whole|full|expensive|nice) )*';
const swapping =
  '(?:swap\\w*|sub(?:bed|bing|s)?|substitut\\w*|replac\\w*|exchang\\w*|switch\\w*|trad(?:e|ed|ing)|chang(?:e|ed|ing))';

/** That `F` is not in it, in its own clause. */
const lacks = once(() =>
  [
    `\\b(?:no|without|never|not|lack\\w*|dont|didnt|do not|did not|havent|hadnt|had not|cant|can not|cannot|couldnt|could not|wont|neither) (?:(?!only\\b)[a-z]+ ){0,4}${the}F\\b`,
    `\\b(?:(?:im|am|was|were|is|are|being) (?:all |completely )?out of|short of|instead of|in (?:the |its )?(?:place|stead|lieu) of|rather than|allergic to|hates?|dislikes?|avoids?|boycotts?) ${the}F\\b`,
    `\\bF (?:[a-z]+ ){0,4}(?:no|not|never|dont|didnt|doesnt|isnt|wasnt|wont|cant|couldnt|havent|hadnt|nowhere|finished|empty|gone|rancid|spoil(?:ed|t)|mou?ldy|missing|sold out|unavailable|used up|out of stock|too (?:expensive|dear|costly))\\b`,
    '\\bF (?:is|was|went|had gone|smelled|smelt) (?:over|off|out|bad|banned|forbidden)$',
    `\\b(?:where|on the place of|at the place of) ${the}F (?:[a-z]+ ){0,2}(?:stands|stood|is|was|should be)\\b(?! now)`,
    `^for ${the}F$`,
  ].map((pattern) => new RegExp(pattern)),
);
const lacksOther = once(() => lacks().map(({ source }) => new RegExp(source.replaceAll('F', 'N'))));
const takes =
  /\b(?:took|taken|taking|take|used|using|use|put|putting|gave|given|added|adding|poured|melted|weighed|chose|came|comes|went|goes|instead|so|then|in its (?:place|stead)|in (?:the )?place|for it|replacing|replaced|subbed|swapped|substituted|went with|(?:it|mine|ours|this) (?:is|was)|its|theres|there is|is in|stands? in|stood in|stepped in|filled in)\b|\b(?:has|have|had|contains?) (?:the |some )?N\b|[→>]/;
const swaps = once(() =>
  [
    `\\b${swapping} (?:out )?${the}F (?:[a-z]+ )?(?:to|for|with|by|against|through|into) ${the}N\\b`,
    `\\bF (?:(?:i|we|was|is|got|has|have|been|just|then|simply) )*${swapping} (?:[a-z]+ )?(?:to|for|with|by|against|through|into) ${the}N\\b`,
    `\\bF (?:[a-z]+ )?(?:[=-] )?(?:>|→) ${the}N\\b`,
    `\\b(?:took|used|put|taken|taking|using|had) (?:in )?${the}(?:#(?: of)? )?${the}N for ${the}F\\b`,
    `\\bnot ${the}F but ${the}N\\b`,
    `\\bN (?:and|but|,) not F\\b`,
    `\\binstead ${the}F ,? ?${the}N\\b`,
    `\\bF not ,? ?but N\\b`,
    `(?:^|[,.;!•] )N for ${the}F(?=$| ?[,.;!])`,
    '\\bF [(] ?= ?N',
    `(?:^|[,.;] )(?:and |but )?for ${the}F (?:i|we) (?:[a-z]+ ){0,2}${the}N\\b`,
  ].map((pattern) => new RegExp(pattern)),
);
/** A part of it, something else besides, or nobody has done it. */
const open = new RegExp(
  `\\b(?:half|halfway|filled up|fill up|topped|finished (?:it|that|off|the)|made (?:it |that )?up|third|quarter|part|some of|most|partly|bit of|rest of|leftover|left over|or|either|neither|maybe|perhaps|if|could|would|might|may|should|can|cant i|wonder\\w*|thinking|think|wanted|wish|next|last (?:time|batch|week|month|year)|ago|usually|normally|always|often|sometimes|ever|until|till|about|around|roughly|nearly|almost|besides|both|each|only|just enough|extra|more|also (?!#)|too(?! (?:expensive|dear|costly))|how|why|what|which|who|as much as possible|smell\\w*|tastes?|looks?|feels?|lather\\w*|came close|close to)\\b|${batchBefore}`,
);
/** Not done, or not now. */
const elsewhen = new RegExp(
  `(?:^|[:;,.–•] |\\b(?:just|please|to|then) )(?:swap|replace|change|exchange|substitute|switch|sub|trade) |\\bi ?'?d\\b|\\b(?:if|next|last (?:time|batch|week|month|year)|used to|can|could|may|might|shall|want to|wanted to|wanna|id|wed|meant to|thinking|variation|but didnt|(?:when|once|as soon as)\\b[^.;!]*\\b(?:ill|will|well)|should|would|usually|normally|always|often|sometimes|said|says|reads?)\\b|\\b(?:not|never|didnt|dont|wont|havent|hasnt) (?:[a-z]+ ){0,2}${swapping}`,
);
const couldNot = /\b(?:no|any) more\b|\bcould(?: not|nt)\b|\bcan not\b|\bcannot\b|\bcant\b/g;
const others = new RegExp(
  `\\b(?:${relations.trim().replaceAll(' ', '|')}|she|he|they|you|her|his|hers|theirs|people|everybody|someone|somebody)\\b`,
);
const mine = /\b(?:i|we|ive|weve|im|mine|ours|my|our)\b/;
const same =
  /\b(?:same|equal|identical) (?:weight|amount|quantity|qty|grams|mass|figure|number|#)|\b(?:weight|amount|quantity|qty|grams) (?:is |was |stayed |remained |kept )?(?:the )?(?:same|equal|unchanged|identical)\b|\b(?:gram|weight|ounce|one|like|g) (?:for|by|to) (?:gram|weight|ounce|one|like|g)\b|\bas much\b|\bin the same\b/;

/** A clause: a breath between two stops, or between two that say who does what. */
const breath =
  / ?[,.;:–—()-] |(?<=#)\.| (?=(?:so|and|but|then|therefore|thus|hence|because|since|as|while|cos|instead|in place|in its)\b)|(?<![FN]) (?=(?:i|we)\b)/;

interface Clause {
  readonly text: string;
  readonly from: number;
}

function clausesOf(text: string): readonly Clause[] {
  const clauses: Clause[] = [];
  let from = 0;
  for (const part of text.split(breath)) {
    const at = text.indexOf(part, from);
    clauses.push({ text: part.trim(), from: at + part.length - part.trimStart().length });
    from = at + part.length;
  }
  return clauses;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** The clauses from the first of the two fats to the last, and to the weight behind; null where they lie far apart. */
function clausesAround(text: string): (Span & { readonly all: readonly Clause[] }) | null {
  const clauses = clausesOf(text);
  const [first, last] = [
    clauses.findIndex((clause) => /[FN]/.test(clause.text)),
    clauses.findLastIndex((clause) => /[FN]/.test(clause.text)),
  ];
  if (first < 0 || last - first > mostClauses) return null;
  const all = clauses.slice(first, last + 1);
  // "so lard instead, 120 g"
  const isInstead = /^(?:instead|in (?:its|that) place)$/.test(clauses[last + 1]?.text ?? '');
  const behind = clauses[isInstead ? last + 2 : last + 1];
  const isWeight =
    behind !== undefined &&
    (same.test(behind.text) || /^(?:also |the |its )*(?:same )?#(?: (?:also|too|of it))?$/.test(behind.text));
  const until = isWeight ? behind : all.at(-1);
  return { all, from: all[0]?.from ?? 0, to: (until?.from ?? 0) + (until?.text.length ?? 0) };
}
const mostClauses = 4;

/** That a fat is not in it, in its clause or, where that ends with its name, in the next: "palm, there was none". */
const isLacking = (all: readonly Clause[], letter: 'F' | 'N', patterns: readonly RegExp[]): boolean =>
  all.some(({ text }, k) => {
    if (!text.includes(letter)) return false;
    const next = all[k + 1]?.text ?? '';
    const on = text.endsWith(letter) && !/[FN]/.test(next) ? `${text} ${next}` : text;
    return patterns.some((pattern) => pattern.test(text) || pattern.test(on));
  });

/** That the other one is in it. */
const isTaken = (all: readonly Clause[]): boolean =>
  all.some(({ text }, k) => {
    const next = all[k + 1]?.text ?? '';
    return text.includes('N') && (takes.test(text) || (text.endsWith('N') && !next.includes('F') && takes.test(next)));
  });

/** Somebody else did it. */
const isOfOthers = (all: readonly Clause[]): boolean =>
  all.some(({ text }) => others.test(text)) &&
  !all.some(({ text }) => (text.includes('N') || !text.includes('F')) && mine.test(text) && !others.test(text));

/** Where the clauses say that the one came for the other: from where to where; null where they do not. */
function spanOf(text: string): Span | null {
  const around = clausesAround(text);
  if (!around) return null;
  const { all, from, to } = around;
  const said = text.slice(from, to);
  const isSwap = swaps().some((pattern) => pattern.test(said));
  if (isLacking(all, 'N', lacksOther()) || !(isSwap || (isTaken(all) && isLacking(all, 'F', lacks())))) return null;
  const rest = text.slice(to).replace(/[.;!?].*/, '');
  const isOpen =
    open.test(said.replace(couldNot, '')) ||
    partly.test(rest) ||
    elsewhen.test((text.slice(0, to) + rest).replace(couldNot, '')) ||
    isOfOthers(all);
  const isElse = /[LX?…]|# (?:of )?(?:the |my )?F|F #/.test(said) || (said.match(/#/g) ?? []).length > 1;
  return isOpen || isElse ? null : { from, to };
}
const partly = /\b(?:half|third|quarter|part|some of|most|partly|only)\b/;

const cues =
  /\b(?:no|not|never|without|dont|didnt|havent|hadnt|cant|cannot|couldnt|wont|isnt|wasnt|out|short|over|off|lack\w*|instead|place|stead|lieu|rather|allergic|hates?|finished|empty|gone|rancid|spoil(?:ed|t)|mou?ldy|missing|sold|unavailable|used up|expensive|where|for|swap\w*|sub(?:bed|s)?|substitut\w*|replac\w*|exchang\w*|switch\w*|trade\w*|chang\w*)\b|[→>]/;

/** The list with what came in the place of what was not there. */
export function forAnother(cut: Cut): Heard {
  const all: PutRight[] = [];
  let { tokens } = cut;
  for (let n = 0; n < mostSwapped; n++) {
    const heard = oneForAnother({ ...cut, tokens });
    if (!heard) break;
    tokens = heard.tokens;
    all.push(...heard.told);
  }
  return { tokens, told: all };
}
const mostSwapped = 4;

function oneForAnother(cut: Cut): Heard | null {
  const { tokens } = cut;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || !cues.test(sentence.text + (sentences[k + 1]?.text ?? ''))) continue;
    for (const count of [1, 2]) {
      const story = mentionsAt(tokens, sentences, k, count);
      if (!areOne(tokens, story.listed) || !areOne(tokens, story.others)) continue;
      const span = count === 2 && !/[FN]/.test(story.text.slice(0, story.turn)) ? null : spanOf(story.text);
      const heard = span && exchanged(tokens, story, span);
      if (heard) return heard;
    }
  }
  return null;
}

function exchanged(tokens: readonly Token[], story: Mentions, span: Span): Heard | null {
  const [from, to] = [story.tokenAt(span.from), story.tokenAt(Math.max(span.from, span.to - 1)) + 1];
  const [goes, comes] = [tokens[story.listed[0] ?? -1] as Name, tokens[story.others[0] ?? -1] as Name];
  const own = rowsIn(tokens).filter(
    ({ at, figure, id }) => id === thingOf(goes) && (at < from || at >= to) && (figure < from || figure >= to),
  );
  const [row, ...more] = own;
  const listed = tokens[row?.figure ?? -1];
  const name = tokens[row?.at ?? -1];
  if (!row || more.length > 0 || !isPlain(listed) || name?.t !== 'name') return null;
  const place = story.text.slice(span.from, span.to).indexOf('#');
  const at = place < 0 ? -1 : story.tokenAt(span.from + place);
  const weight = tokens[at];
  if (at >= 0 && (!isPlain(weight) || Number.isNaN(weightAt(tokens, at, row.figure)))) return null;
  const { quantity } = listed;
  const now = isPlain(weight) ? { ...alike(weight.quantity, quantity), numbers: quantity.numbers } : quantity;
  const out = [...tokens];
  hush(out, from, to, 'said before');
  for (let k = from; k < to; k++) {
    const token = out[k];
    if (token?.t === 'name') out[k] = asFiller(token);
  }
  out[row.at] = { ...comes, from: name.from, to: name.to };
  out[row.figure] = { ...listed, quantity: now } as Figure;
  const said = story.text.slice(span.from, span.to);
  const isTold = at >= 0 || /=/.test(said) || same.test(said);
  const why = isTold ? 'as the post says' : 'with the weight of the list, as the post tells no other';
  const text = `I took ${written(now)} of ${comes.text} in the place of ${goes.text}, ${why}.`;
  return { tokens: out, told: [{ text, gone: [], from, to, settles: true }] };
}

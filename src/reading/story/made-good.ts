/**
 * What a note below a list changes of it with all its amounts: "the bag gave only 250 g, for the other 50 g I took
 * coconut", "so used 50 g more olive in its place", "another 15 g of lye in 40 g of water went in", "9 g stuck in the
 * cup, so 136 g is what went in". It counts where its figures make up those of the list.
 */

import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { isFat, isIngredient, isMark, isStop, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import { hearNotes, type Span } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, type Name, rowOf, rowsBefore, rowsOf, type Told, toldIn, weightAt } from './tale.ts';

/** Words of which one stands in each note that does so. */
const cues: ReadonlySet<string> = new Set(
  'missing other last remaining lacking more extra additional another further second should must ought went got ended topped full just gap difference shortfall short grated shredded remelted rebatched back meant supposed wish dreams slip typo mistake wrong error mistyped misprint whole full rest entire'.split(
    ' ',
  ),
);

const vessel = '(?:bag|tub|tin|jar|box|bottle|bucket|container|canister|can|packet|pack|sack|block|carton|drum)';
const some = '(?:(?:of|the|some|my|fresh|plain|more|pure|good) )*';
const someone = '(?:(?:i|we|just|simply|then|have|had) )*';
const put = '(?:used|took|put in|put|added|weighed in|weighed|poured in|went for)';
const onlyHad = [
  `\\bonly (?:about |had |got |found |have )*(?<a>#) (?:of )?${some}(?<f>@) (?:(?:left|was|to be had) )*(?:(?:in|at) (?:the|my) [a-z]+|left|there|in stock)?`,
  `(?<f>@) (?:${vessel} )?(?:(?:was|had|only|just) )*(?:gave|had|held|yielded|contained|(?:empt(?:y|ied)|ended|stopped|finished|gone|ran (?:out|dry|empty)) (?:at|after)) (?:only |just )*(?<a>#)`,
  `\\bran out of ${some}(?<f>@) (?:(?:at|after) |(?:when|once|as) (?:(?:the|my|it|scales?|display|tin|bowl|pot|jug|pan|was|were|at|on|said|says|showed|read|stood) )+)(?:only )?(?<a>#)(?: on the scales?)?`,
  `\\b${vessel} of ${some}(?<f>@) (?:(?:was|had|only|just) )*(?:gave|had|held|yielded|contained|(?:empt(?:y|ied)|ended|stopped|ran (?:out|dry|empty)) (?:at|after)) (?:only |just )*(?<a>#)`,
  `\\b(?:there (?:was|were)|i had|we had|i found|i got|found|got) (?:just|only|no more than|barely|merely) (?<a>#) (?:of it )?(?:left )?(?:in|out of|from) (?:the|my) (?<f>@) ${vessel}`,
  `\\b(?:scraped|squeezed|got|shook|poured|scooped) (?:only |just |out )*(?<a>#) (?:of it )?(?:out )?(?:of|from) (?:the|my) (?<f>@) ${vessel}`,
  `(?<f>@) (?:${vessel} )?(?:came to|came|went to|ran dry|ran out|ended|gave out|was down to|held|had) (?:(?:just|only|at|after|to) )*(?<a>#)`,
];
const gap = '(?:gap|difference|shortfall|hole|shortage|rest)';
const close = '(?:closed|filled|filled in|covered|bridged|plugged|made up|made good|topped up)';
const rest = '(?:missing|other|last|remaining|lacking)';
const comes = `(?:(?<own>#) (?:of )?)?${some}(?<g>@)`;
/** "The missing 120 g of the palm". */
const ofIt = '(?:of (?:it|that|(?:(?:the|my) )?@) )?';
const filled = [
  `\\b(?:made|make|filled|fill|topped) (?:up )?the ${rest} (?<b>#) ${ofIt}(?:up )?(?:with|from|by|using) ${comes}`,
  `\\bfor the ${rest} (?<b>#) ${ofIt}(?:, )?${someone}${put} ${comes}`,
  `\\bthe ${rest} (?<b>#) ${ofIt}(?:, )?(?:i|we) ${someone}(?:made up|made good|filled up|filled in|filled|topped up|covered|replaced|took|swapped|made|weighed in) (?:with|by|from|out of|in|as|using) ${comes}`,
  `\\breplaced the ${rest} (?<b>#) ${ofIt}(?:with|by) ${comes}`,
  `\\bthe ${rest} (?<b>#) ${ofIt}(?:was|were|is|are|came|became|went|goes) (?:(?:made up|replaced|filled up|taken|with|by|from|out of|in as|as|in with|now) )*${comes}`,
  `(?<own>#) (?:of )?${some}(?<g>@) (?:(?:went|goes|came|was|is|in|put|poured) )*(?:for|as|to make up) the (?:rest|missing|remainder|other|difference)\\b`,
  `(?<g>@) (?:made up|filled|replaced|stood in for|took the place of) the ${rest} (?<b>#)`,
];
const short = [
  `\\bthe ${gap} (?:, )?(?:of )?(?<b>#) (?:, )?(?:i |we |was |got |have |had )*${close} (?:with|by|from|using|in) ${comes}`,
  `\\b${close} the ${gap} (?:of )?(?<b>#) (?:with|by|from|using|in) ${comes}`,
  `\\bthe (?<b>#) (?:(?:of it|that|which|were|was|i|we|still) )*(?:short|missing|lacking|lacked|too little) (?:i |we |was |were |got )*(?:${close}|came|took|taken) (?:(?:with|by|from|out of|in|a|an|another|block|jar|tub|bottle|of|my) )*${comes}`,
  `(?:(?<own>#) (?:of )?)?${some}(?<g>@) (?:then |that )?${close} the ${gap}(?: (?:of|with|[,:(]) (?<b>#))?`,
];
const altogether =
  '(?:[^#@.]{0,24}(?<c>#) (?:of )?(?:the )?(?<again>@ )?(?:altogether|in all|in total|all told|all in all))?';
const lacking =
  '(?:ran out of|run out of|(?:was|were|am) out of|had no(?: more)?|no more|no|no (?:more )?@ left|didnt have(?: any)?)';
const extra = '(?:more|extra|additional|further)';
const entering =
  '(?:went|goes|came|poured|put|stirred|tipped|added|worked|blended|got stirred|were stirred|was stirred)';
/** Nothing behind it says that it was a part. */
const allOfIt =
  '(?! (?:some|half|part|most|a|an|what|about|only|roughly|the (?:first|rest)|two|one|#)\\b)(?![^.?!]{0,40}\\b(?:half of (?:it|that)|some of (?:it|that)|most of (?:it|that)|took (?:it|some) out)\\b)';
const again =
  '(?:grated|shredded|rebatched|rebatch|remelted|re - melted|chopped it|back (?:in|into) the (?:pot|pan|cooker)|melted (?:it|everything|the lot|all of it) (?:down )?again|cooked (?:it|everything|the lot) again)';
/** A second lot of lye in its own water, as people tell it. */
const lots = [
  `\\b(?:dissolved|mixed|stirred|made up|weighed) (?:up )?(?<a>#) (?:of )?${extra} (?:of )?(?<f>@) (?:in(?:to)?|with|and) (?<b>#) (?:of )?(?<g>@) (?:, )?(?:(?:and|then|which|that|it|i|we) )*${entering} (?:(?:it|that|this|them|straight|all) )*(?:in(?:to)?\\b|(?<=\\badded (?:it|that|this) ))${allOfIt}`,
  `(?<a>#) (?:of )?${extra} (?:of )?(?<f>@) (?:dissolved )?(?:in|with) (?<b>#) (?:of )?(?<g>@) (?:, )?(?:(?:that|which|and|then|it) )*${entering} (?:(?:it|that|this|them|straight|all) )*in(?:to)?\\b${allOfIt}`,
  `\\b${again}\\b[^?#]{0,60}?\\bwith (?:another |a further )?(?<b>#) (?:of )?(?<g>@) (?:, )?in which (?:(?:i|we|i'd|id|had|d|have|were|was) )*(?:dissolved )?(?:(?:the|another|a|further) )*(?<a>#) (?:of )?(?<f>@)`,
  `\\b${again}\\b[^?#]{0,60}?\\bwith (?:another|a further|an extra|an additional|the missing|the lacking) (?<a>#) (?:of )?(?<f>@) (?:dissolved )?in (?<b>#) (?:of )?(?<g>@)`,
];
/** "12 kg, I wish! 1.2 kg of tallow it is." */
const wished = [
  '(?<w>#) (?:of (?:the )?(?<x>@) )?(?:[,!…] )*(?:i wish|as if|in my dreams|dream on|id need a bathtub)\\b[^#@?]{0,20}(?<c>#) (?:of )?(?:the )?(?<f>@ )?(?:it (?:is|was)|of course|is right|is correct)\\b',
];
/** "It was meant to be 300, it turned out as 340 and I left it in", unless the rest was taken out again. */
const turnedOut = [
  '(?<f>@) (?:was|is|were) (?:meant|supposed|planned|intended|going) to be (?<w>#) (?:[,;–-] )?(?:(?:but|and|it|they|then|in the end) )*(?:turned out|came out|came|ended up|got to|got|went up|became|was) (?:(?:as|at|to|be|a|up|out|in the end) )*(?<c>#)(?!.*\\b(?:back|out again|off again|took|spooned|scooped|removed|until|till)\\b)',
];
/** "The lye line is a typing slip. The scale said 96 and the log says 96." */
const slip =
  '(?:is |was )?(?:really |clearly |just |simply )?(?:a |an )?(?:typing |copying |writing |pure )?(?:slip|typo|error|mistake|wrong|mistyped|misprint)(?: of the (?:pen|finger|hand))?';
const line =
  '(?:(?:line|figure|number|amount|row|entry|weight|value|above|up there|(?:in|of|on) the (?:list|table|card)) )*';
const truly = '[^#@?]{0,90}?(?<c>#)';
const slips = [
  `(?<f>@) ${line}(?:is|was) ${slip}\\b${truly}`,
  `\\b(?:typo|slip|mistake|error) (?:in|of) the (?<f>@) ${line}${truly}`,
  `\\bthe (?<w>#) (?:(?:of|for) (?:the )?(?<x>@) )?${line}(?:is|was) ${slip}\\b${truly}`,
];
const inPlace = '(?:in its place|instead|in place of it|to make up for it|for it)';

/** `unheard`: it changes the list, but its figures contradict it. */
type Rule = (note: Note, told: Told) => Change | 'unheard' | null;

interface Note {
  readonly tokens: readonly Token[];
  /** The sentence with which the note begins: the list stands before it. */
  readonly from: number;
  readonly to: number;
}

/** New weights of rows, by the token of their figures. */
interface Change {
  readonly rows: readonly { readonly row: Weighed; readonly value: number }[];
  /** What has no row yet: its weight, and its name. */
  readonly comes: { readonly figure: number; readonly name: number } | null;
  /** A token before the note with which it begins. */
  readonly since?: number;
}

const nameAt = (tokens: readonly Token[], k: number): Name | null => {
  const token = tokens[k];
  return isIngredient(token) ? token : null;
};

/** There was only so much of it, and something else made up what was missing. */
const madeUp: Rule = ({ tokens, from }, told) => {
  const row = rowOf(tokens, tokens[told('f')], from);
  const other = nameAt(tokens, told('g'));
  if (!row || !other || row.id === 'water') return null;
  const [a, b, own, c] = ['a', 'b', 'own', 'c'].map((group) => weightAt(tokens, told(group), row.figure)) as [
    number,
    number,
    number,
    number,
  ];
  const whole = weightAt(tokens, row.figure, row.figure);
  const goes = nameAt(tokens, row.at);
  if (told('b') < 0 && told('own') < 0) return null;
  if (!isSum(whole, a, told('b') < 0 ? own : b) || goes?.meaning.kind !== other.meaning.kind) return null;
  // of another alkali as much is something else
  if (other.meaning.kind === 'alkali' && told('own') < 0) return null;
  const rows = rowsOf(tokens, other, from);
  const [had] = rows;
  if (rows.length > 1 || (had && had.figure === row.figure)) return null;
  const figure = told('own') >= 0 ? told('own') : told('b');
  const by = told('own') >= 0 ? own : b;
  const now = had ? by + weightAt(tokens, had.figure, row.figure) : by;
  if (Number.isNaN(now)) return null;
  if (told('c') >= 0 && !isSum(c, now)) return 'unheard';
  const changed = { row, value: a };
  return had
    ? { rows: [changed, { row: had, value: now }], comes: null }
    : { rows: [changed], comes: { figure, name: told('g') } };
};

const elsewhen = /\b(?:last (?:time|batch|week|month|year)|yesterday|before|once|ago)\b/;
/** Tokens back to what there was of it. */
const farBack = 40;

/** "Scraped the tub out: 55 g. The missing 35 g I made up with cocoa butter": what there was stands alone before it. */
const filledUp: Rule = ({ tokens, from }, told) => {
  const other = nameAt(tokens, told('g'));
  if (other?.meaning.kind !== 'fat' || told('own') >= 0) return null;
  let less = told('b') - 1;
  const lacks = tokens[told('b')];
  // "the shop shut at 6"
  const isLess = (one: Token | undefined): boolean =>
    isPlain(one) && (one.quantity.dim !== 'bare' || !isPlain(lacks) || lacks.quantity.dim === 'bare');
  while (less > 0 && told('b') - less < farBack && !isLess(tokens[less])) less--;
  const begin = tokens.slice(0, less).findLastIndex(isStop) + 1;
  const words = tokens.slice(begin, less).map(spoken).join(' ');
  if (!isPlain(tokens[less]) || open.test(words) || elsewhen.test(words)) return null;
  const fats = rowsBefore(tokens, told('b')).filter(({ at }) => nameAt(tokens, at)?.meaning.kind === 'fat');
  const own = fats.find(({ figure }) => figure === less);
  const fits = fats.filter(({ figure }) =>
    isSum(weightAt(tokens, figure, figure), weightAt(tokens, less, figure), weightAt(tokens, told('b'), figure)),
  );
  // "olive oil 400 g, but the can only gave 310 g": of what was named last, where anything was
  const goesOn = begin > 1 && isMark(tokens[begin - 1], '.') && isMark(tokens[begin - 2], '.');
  const since = goesOn ? tokens.slice(0, begin).findLastIndex((one) => isStop(one) && !isMark(one, '.')) + 1 : begin;
  const last = tokens.slice(since, less).findLast((one) => isFat(one));
  const named = isFat(last) ? thingOf(last) : null;
  const [row, ...more] = named === null ? fits : fits.filter(({ id }) => id === named);
  if (more.length > 0) return 'unheard';
  // "the palm gave 180 g, the missing 100 g is lard", of 300 g; what was heard before stands as it is
  const isLacking =
    /^(?:missing|lacking)$/.test(spoken(tokens[told('b') - 1])) &&
    fats.some(({ id }) => id === named) &&
    tokens.slice(less, told('b')).every(({ t }) => t !== 'aside');
  if (!row) return named !== null && (fits.length > 0 || isLacking) ? 'unheard' : null;
  if (own && own.id !== row.id) return null;
  const rows = rowsOf(tokens, other, from);
  const [had] = rows;
  if (rows.length > 1 || had?.figure === row.figure) return null;
  const changed = { row, value: weightAt(tokens, less, row.figure) };
  const by = weightAt(tokens, told('b'), row.figure);
  return had
    ? { rows: [changed, { row: had, value: weightAt(tokens, had.figure, row.figure) + by }], comes: null, since: less }
    : { rows: [changed], comes: { figure: told('b'), name: told('g') }, since: less };
};

/** None of it was there, and so much more of something else went in. */
const moreInstead: Rule = ({ tokens, from }, told) => {
  const row = rowOf(tokens, tokens[told('f')], from);
  const had = rowOf(tokens, tokens[told('g')], from);
  if (!row || !had || row.figure === had.figure) return null;
  if (nameAt(tokens, row.at)?.meaning.kind !== 'fat' || nameAt(tokens, had.at)?.meaning.kind !== 'fat') return null;
  const by = weightAt(tokens, told('b'), had.figure);
  if (!isSum(weightAt(tokens, row.figure, had.figure), by)) return null;
  return {
    rows: [
      { row, value: 0 },
      { row: had, value: weightAt(tokens, had.figure, had.figure) + by },
    ],
    comes: null,
  };
};

/** So much of it stuck or was lost, and the rest went in. */
const restWentIn: Rule = ({ tokens, from }, told) => {
  const named = tokens[told('f')];
  const rows = isIngredient(named) ? rowsOf(tokens, named, from) : rowsBefore(tokens, from);
  const fits = rows.filter(({ figure }) => {
    const whole = weightAt(tokens, figure, figure);
    const said = weightAt(tokens, told('w'), figure);
    const parts = [weightAt(tokens, told('a'), figure), weightAt(tokens, told('c'), figure)];
    return isSum(whole, ...parts) && (told('w') < 0 || isSum(whole, said));
  });
  const [row, ...more] = fits;
  if (!row || more.length > 0 || (isIngredient(named) && rows.length > 1)) return null;
  return { rows: [{ row, value: weightAt(tokens, told('c'), row.figure) }], comes: null };
};

/** "The 250 above for the palm should be 350". */
const shouldBe: Rule = ({ tokens, from }, told) => {
  const row = rowOf(tokens, tokens[told('f') >= 0 ? told('f') : told('x')], from);
  const value = weightAt(tokens, told('c'), row?.figure ?? -1);
  if (!row || !isSum(weightAt(tokens, row.figure, row.figure), weightAt(tokens, told('w'), row.figure)))
    return 'unheard';
  return value > 0 ? { rows: [{ row, value }], comes: null } : 'unheard';
};

/** Told in the sentence before its figure. */
const namesSlip = /\b(?:slip|typo|error|mistake|wrong|mistyped|misprint|says?|said|should)\b/;

/** A figure was copied wrong, and what it was is told, once or again. */
const slipped: Rule = ({ tokens, from }, told) => {
  const name = tokens[told('f') >= 0 ? told('f') : told('x')];
  const rows = isIngredient(name) ? rowsOf(tokens, name, from) : rowsBefore(tokens, from);
  const at = told('w');
  const [row, ...more] = rows.filter(
    ({ figure }) => at < 0 || isSum(weightAt(tokens, figure, figure), weightAt(tokens, at, figure)),
  );
  if (rows.length === 0) return null;
  if (!row || more.length > 0) return 'unheard';
  const [was, value] = [row.figure, told('c')].map((k) => weightAt(tokens, k, row.figure)) as [number, number];
  if (!(value > was / farSlip && value < was * farSlip)) return 'unheard';
  for (let k = told('c') + 1; k < tokens.length && tokens[k]?.t !== 'line'; k++) {
    const again = weightAt(tokens, k, row.figure);
    if (!Number.isNaN(again) && !isSum(value, again) && !isSum(was, again)) return 'unheard';
  }
  return { rows: [{ row, value }], comes: null };
};
/** What was meant, to what was written, at the most. */
const farSlip = 2;

/** It weighed otherwise, and nobody says what was made of it. */
const unsure: Rule = (note, told) => {
  const change = shouldBe(note, told);
  return change === 'unheard' ||
    change?.rows.every(({ row, value }) => isSum(weightAt(note.tokens, row.figure, row.figure), value))
    ? null
    : 'unheard';
};

/** A second lot of lye in its own water. */
const secondLot: Rule = ({ tokens, from }, told) => {
  const [lye, water] = [told('f'), told('g')].map((k) => rowOf(tokens, tokens[k], from));
  if (!lye || !water || nameAt(tokens, lye.at)?.meaning.kind !== 'alkali') return null;
  if (!/^(?:water|liquid)$/.test(nameAt(tokens, water.at)?.meaning.kind ?? '')) return null;
  const sum = (row: Weighed, k: number): number =>
    weightAt(tokens, row.figure, row.figure) + weightAt(tokens, k, row.figure);
  const [all, wet] = [sum(lye, told('a')), sum(water, told('b'))];
  if (Number.isNaN(all) || Number.isNaN(wet)) return null;
  return {
    rows: [
      { row: lye, value: all },
      { row: water, value: wet },
    ],
    comes: null,
  };
};

/** "Should be 139 g lye. Dissolved the missing 8 g in 20 g water and added it." */
const missingLot: Rule = (note, told) => {
  const { tokens, from } = note;
  const lye = rowOf(tokens, tokens[told('f')], from);
  if (!lye) return null;
  const [was, should, more] = [lye.figure, told('w'), told('a')].map((k) => weightAt(tokens, k, lye.figure));
  return isSum(should ?? 0, was ?? 0, more ?? 0) ? secondLot(note, told) : 'unheard';
};

/** Somebody else poured so much of it in. */
const pouredIn: Rule = ({ tokens, from }, told) => {
  const name = nameAt(tokens, told('f'));
  const rows = rowsOf(tokens, tokens[told('f')], from);
  const [had] = rows;
  if (name?.meaning.kind !== 'fat' || rows.length > 1 || (had && told('more') < 0)) return null;
  if (!had) return { rows: [], comes: { figure: told('a'), name: told('f') } };
  const all = weightAt(tokens, had.figure, had.figure) + weightAt(tokens, told('a'), had.figure);
  return Number.isNaN(all) ? null : { rows: [{ row: had, value: all }], comes: null };
};

/** What was steeped came out less, and was filled up to the weight of the list with the same. */
const toppedUp: Rule = ({ tokens, from, to }, told) => {
  const row = rowOf(tokens, tokens[told('g')], from);
  if (!row || told('a') >= to) return null;
  const [whole, less, full] = [row.figure, told('a'), told('c')].map((k) => weightAt(tokens, k, row.figure));
  if (whole === undefined || less === undefined || full === undefined) return null;
  return isSum(whole, full) && less < whole ? { rows: [{ row, value: whole }], comes: null } : null;
};

const patterns: readonly (readonly [Rule, string])[] = [
  ...onlyHad.flatMap((had) =>
    [...filled, ...short].map((fill) => [madeUp, `${had}[^#@?]{0,60}?${fill}${altogether}`] as const),
  ),
  ...filled.map((fill) => [filledUp, fill] as const),
  [
    moreInstead,
    `\\b${lacking} ${some}(?<f>@)[^#@?]{0,80}?\\b${someone}${put} (?<b>#) (?:more|extra|additional|further) ${some}(?<g>@) ${inPlace}`,
  ],
  [
    moreInstead,
    `(?<f>@) (?:bottle |jar |tub |bag )?(?:was|had|is|were) (?:all |run )*(?:gone|empty|out|finished|used up)[^#@?]{0,60}?\\b${someone}${put} (?<b>#) (?:more|extra|additional|further) ${some}(?<g>@) ${inPlace}`,
  ],
  [
    moreInstead,
    `\\b${put} (?<b>#) (?:more|extra|additional|further) ${some}(?<g>@) (?:instead of|in place of) ${some}(?<f>@)(?= [.,;!]|$)`,
  ],
  [
    restWentIn,
    `(?<a>#) (?:(?:of|the|it|that|my) )*(?<f>@ )?[^#@?]{0,40}\\b(?:stuck|stayed|clung|clinging|remained|behind|left|spilt|spilled|lost)\\b[^#@?]{0,80}\\b(?:so|which leaves|leaving|meaning|that means|only) (?:only |just |that )*(?<c>#) (?:(?:of it|is|was|are|were|what|all that|really|actually) )*(?:went|ended up|got|made it|gone) in(?:to)?\\b(?:[^#?.]{0,30}\\b(?:instead of|not|rather than) (?:the )?(?<w>#))?`,
  ],
  [
    shouldBe,
    `\\bthe (?<w>#) (?:(?:above|listed|there|up there|in the list|i wrote|i typed) )*(?:for|of|by|beside|behind|next to|at) (?:the )?(?<f>@) (?:(?:above|line|in the list) )*(?:should|must|ought to) (?:be|read|say|have been|have read) (?<c>#)`,
  ],
  ...slips.map((slip) => [slipped, slip] as const),
  ...wished.map((wish) => [shouldBe, wish] as const),
  ...turnedOut.map(
    (turn) =>
      [
        shouldBe,
        `${turn}(?=[^?]*\\b(?:left it|kept it|stayed|leave it|went in|goes in|let it be|let it go)\\b)`,
      ] as const,
  ),
  ...turnedOut.map((turn) => [unsure, turn] as const),
  [
    secondLot,
    `\\b(?:dissolved|mixed|stirred|made up) (?:another|a further|an extra|an additional|a second lot of) (?<a>#) (?:of )?(?:the )?(?<f>@) in(?:to)? (?<b>#) (?:of )?(?:the )?(?<g>@) (?:, )?(?:and|which|that)[^#@?.]{0,30}\\b(?:went|goes|came|poured|put|stirred|tipped|added|cooked|mixed|blended|worked|beat) (?:(?:it|that|this|them|all|straight) )*in(?:to)?\\b`,
  ],
  ...lots.map((lot) => [secondLot, lot] as const),
  [
    missingLot,
    `\\b(?:should (?:be|have been)|ought to be|must be|says?|said|has) (?:only )?(?<w>#) (?:of )?(?:the )?(?<f>@)[^#@?]{0,80}?\\b(?:dissolved|mixed|stirred|made up|weighed) (?:up )?the (?:missing|lacking|other|remaining) (?<a>#) (?:of it )?(?:in(?:to)?|with) (?<b>#) (?:of )?(?<g>@)(?=[^#@?]{0,30}\\b(?:added|went|poured|stirred|tipped|blended)\\b)${allOfIt}`,
  ],
  [
    pouredIn,
    `\\b(?:poured|tipped|put|dumped|threw|emptied|sloshed) (?:in )?(?:(?<more>extra|more|additional|another) )?${some}(?<f>@) (?:in(?:to it)? )?[^#@?.]{0,60}?\\b(?:a|one) (?:(?:whole|full|entire) )+(?<a>#) (?:measuring )?(?:beaker|cup|jug|glass|bottle|bowl|jar)\\b`,
  ],
  [
    toppedUp,
    `(?:# (?:of )?(?:[a-z]+ )?@ [^?;]{0,80}?)?\\b(?:came to|gave|left|yielded|weighed|was down to|had) (?:only |just )*(?<a>#) (?:, )?[^#@?.]{0,30}\\btopped (?:(?:it|that|up) )*with ${some}(?<g>@) (?:to (?:get|reach|make|have|be at)|up to|to) (?:it |up |to |the |a |full |whole |listed )*(?<c>#)`,
  ],
];
let made: readonly (readonly [Rule, RegExp])[] | null = null;

/** Nobody has done it, or not in this batch. */
const open =
  /\?|\b(?:if|could|would(?! not\b)|might|may|maybe|perhaps|next time|last time|some ?day|usually|normally|always|thinking|wondering|ought i|should (?:i|we)|hers|his|theirs|she|he|they)\b/;

/** The weights as a note leaves them. */
export const madeGood = (cut: Cut): Heard =>
  hearNotes<Rule>(cut, {
    cues,
    isWorth: (sentence) => sentence.figures > 0 || (sentence.names > 0 && namesSlip.test(sentence.text)),
    patterns: () => {
      made ??= patterns.map(([rule, pattern]) => [rule, new RegExp(pattern, 'd')] as const);
      return made;
    },
    isOpen: ({ text }, { index, 0: found }) => open.test(text.slice(0, index + found.length)),
    // "the 250 above for the palm should be 350" where the palm has 200 is unheard
    hear: (rule, { tokens, sentence, tale, match, span }) => {
      const change = rule({ tokens, from: sentence.from, to: sentence.to }, toldIn(tale, match));
      return change === null || change === 'unheard' ? change : applied(tokens, change, span);
    },
  });

function applied(out: Token[], { rows, comes, since }: Change, { from: begin, to }: Span): PutRight {
  const from = since ?? begin;
  const texts: string[] = [];
  const gone: Figure['quantity'][] = [];
  const stays = (k: number): boolean => k === comes?.figure || k === comes?.name;
  hush(out, from, to, 'a part of what was said', stays);
  for (const { row, value } of rows) {
    const [weight, name] = [out[row.figure], out[row.at]];
    if (!isPlain(weight) || name?.t !== 'name') continue;
    const { quantity } = weight;
    const now = { ...withValue(quantity, value), numbers: quantity.numbers };
    if (value === 0) {
      out[row.figure] = asAside(weight, 'replaced, as the post says');
      out[row.at] = asFiller(name);
      texts.push(`no ${name.text}`);
    } else {
      out[row.figure] = { ...weight, quantity: now };
      texts.push(`${now.text} of ${name.text}${isSum(quantity.value, value) ? '' : `, not ${written(quantity)}`}`);
    }
    gone.push(quantity);
  }
  const [weight, name] = [out[comes?.figure ?? -1], out[comes?.name ?? -1]];
  if (comes && isPlain(weight) && name?.t === 'name') {
    texts.push(`${written(weight.quantity)} of ${name.text}`);
    const beside = out[comes.figure - 1];
    // a name far off stands beside its weight now
    if (beside && comes.name < comes.figure - 1) {
      out[comes.figure - 1] = { ...name, from: beside.from, to: beside.to };
      out[comes.name] = asFiller(name);
    }
    for (let k = Math.min(comes.figure, comes.name) + 1; k < to; k++)
      if (!stays(k) && k !== comes.figure - 1) out[k] = asFiller(out[k] as Token);
  }
  return { text: `I took ${texts.join(', and ')}, as the post says.`, gone, from, to, settles: true };
}

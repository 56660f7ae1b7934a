/**
 * A part of what was weighed goes in, or goes elsewhere: "400 g of shea, but half of that is for a cream", "only a third of it
 * goes in the soap", "140 g lye in 300 g water, of which I poured in half"; "half of the jug goes to each pot", where the list
 * tells what each has.
 */
import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient, isMeasured, isRole, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed, weighedIn } from '../words/weighed.ts';

const fractions: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4, fifth: 1 / 5 };
const cues: ReadonlySet<string> = new Set([...Object.keys(fractions), 'thirds', 'quarters']);

const part = '(?<!\\b(?:other|second|first|last|remaining) )(?<part>half|third|quarter|fifth|#)';
const it = '(?:it|that|this|them|those|which|(?:the |that |my )*(?:@|(?:@ )?solution|jug))';
/** A figure in words has its "of". */
const ofIt = `(?:(?: of)? (?<it>${it}))`;
const lightly =
  '(?:(?:i|we|have|had|has|am|is|was|are|will|ll|ve|be|been|being|got|gets|going|to|only|just|already|then|now|still|really|a|about|it) )*';
const pot = '(?:soap|soaps|batch|recipe|pot|loaf|this|mould|mold)';
/** What it is for: the same soap still. */
const inSoap = `(?:the |my |this |a |our )*(?:${pot}|swirl|top|tops|bottom|base|colou?rs?|other|first|second|layer|infus\\w+|steeping)`;

/** One of several pots that share it. */
const eachPot =
  '(?:each|every|either)(?: (?:one|single))?(?: of (?:them|these|those|the (?:two|three|four|…|#)))?(?: (?:pot|pots|bowl|bowls|batch|batches|pan|pans|mou?ld|moulds|loaf|tin|jug|cup|half|soap|colou?r|one))?';

type Way = 'in' | 'away' | 'lost' | 'each';
const patterns: readonly (readonly [Way, RegExp])[] = (
  [
    [
      'lost',
      `${part}${ofIt} ${lightly}(?:spil(?:led|t)|lost|ran (?:down|over|out)|leaked|went (?:on|onto|over|down))\\b`,
    ],
    [
      'away',
      `${part}${ofIt} ${lightly}(?:for (?!${inSoap}\\b|the @)|(?:gave|sold|froze)\\b|(?:went|goes|go) (?:in(?:to)? (?:a|another|my)|to (?:my|the|a)) (?!${pot}\\b)|(?:kept|keep|keeping|saved|saving|reserved) |(?:set|put|kept) (?:aside|by|away)|(?:(?:stays?|stayed|stands|standing|sits|sitting|goes|went) (?:back )?)?(?:in|at|to) (?:the|my|a) (?:fridge|freezer|cupboard|pantry|larder|cellar|shelf|jug|jar|tub|bag))`,
    ],
    [
      'in',
      `\\b(?:use|used|using|took|take|taking|poured|pour|put|tipped|added|melted|need|needed) (?:in )?(?:only |just |about |exactly |a |one )*${part}${ofIt}`,
    ],
    [
      'in',
      `\\bof which (?:(?:i|we|only|just|have|then) )*(?:use|used|using|took|take|poured|pour|put|tipped|added|need|needed) (?:in )?(?:only |just |about |exactly |a |one )*${part}\\b(?! of)`,
    ],
    [
      'in',
      `\\b(?:only|just) (?:about |a |one )*${part}${ofIt} ${lightly}(?:goes|went|go|comes|came|ended up|used|poured|needed|for (?:the |my |this )?${pot})\\b`,
    ],
    [
      'in',
      `${part}${ofIt} (?:(?:i|we|have|has|is|was|then|going|to) )*(?:(?:goes|went|go|poured|used|put|tipped|added) (?:in(?:to)?|with|on|over) (?=(?:the |my |this |a )*[@#]|with\\b|[.,;!?])|(?:in(?:to)?|for) (?:the |my |this |a )*${pot}\\b)`,
    ],
    ['in', `\\bof which (?:only |just |about |a |one )*${part} (?:goes|went) in(?:to)?\\b`],
    ['in', `(?<part>#) (?:goes|went|go|is going) in\\b`],
    [
      'each',
      `${part}${ofIt} (?:(?:by|in|weight|volume|exactly|jug|i|we|weighed|is|was|will|then|are|now) )*(?:(?:goes|went|go|poured|pour|put|tipped|comes|came|for) )?(?:in(?:to)?|to|for) ${eachPot}\\b`,
    ],
    [
      'each',
      `\\b${eachPot} (?:pot |bowl |one )?(?:(?:then|will|has|had|only|just) )*(?:gets?|got|takes?|took|received?) (?:exactly |only |just |a |one )*${part}${ofIt}`,
    ],
  ] as const
).map(([way, pattern]) => [way, new RegExp(pattern, 'dg')]);

const otherPart = '(?:(?:other|second|last|remaining) (?:half|third|quarter|fifth|part|#)|rest|remainder|remaining)';
/** The other part goes in as well, or did so at another time. */
const restIn = new RegExp(
  `\\b${otherPart} [^.;]{0,40}?(?:\\b(?:goes|went|go|poured|added|put|tipped|came|comes|stirred) in\\b|into\\b|\\bat trace\\b|\\blater\\b|\\bas @|\\btoo\\b)|\\b(?:then|and) (?:the )?${otherPart}(?= [.,;!?]| at| in\\b| later| when| after| once)`,
);
const restAway =
  /\b(?:other (?:half|third|quarter|fifth|part|#)|rest|remainder)[^.;]{0,40}\b(?:keep|kept|for|standing|stands|fridge|freezer|jug|jar|still|left|saved|next|away|back|aside)\b/;
const timing =
  /^[^.,;#]{0,24}\b(?:first|at trace|cold|later|at a time|hot|warm|before|after|and then)\b|^[^.,;#]{0,12}\bas @/;
const open =
  /\b(?:should|shall|would|could|can|cant|if|might|may|id|next time|usually|normally|last time)\b|\b(?:swap|sub|replac|substitut|switch|exchang|trad|chang)[a-z]* [^.,;]{0,12}$/;

/** "Others use half beer, half water", "everyone here takes a third coconut": of nobody's pot; without them, of two things nobody knows how much. */
const ofOthers =
  /^(?:and |but )?(?:others|people|(?:every|no)(?:one|body)(?: else)?(?: (?:here|there))?|they all|(?:some|many|most|other)(?: [a-z]+)?) (?!.*\b(?:i|we|me|mine|ours?)\b)/;
const ofTwo = /\bhalf (?:of )?(?:the )?@ (?:, |and |, and |\+ |\/ )?half (?:of )?(?:the )?@/;

/** The list is of one pot: "in each bowl there is", "the same oils in both". */
const perPot = /\b(?:each|every|per|apiece|both|same (?:[a-z]+ )?(?:in|for|recipe|oils|fats|list))\b|# each/;

/** Of another batch. */
const elsewhen = /\b(?:last (?:week|month|year|time|batch)|yesterday|before|previous|already)\b/;

const kinds = /^(?:fat|alkali|liquid|water)$/;

/** Sentences of a post that tell of parts, at the most. */
const mostParts = 12;

interface Part {
  readonly way: Way;
  readonly value: number;
  /** The token of the fraction, and what it is of. */
  readonly at: number;
  readonly of: string;
  readonly ofAt: number;
  readonly to: number;
}

function partsIn(sentence: Sentence, tokens: readonly Token[]): readonly Part[] {
  const { text } = sentence;
  const found: Part[] = [];
  const matches = patterns.flatMap(([way, pattern]) => [...text.matchAll(pattern)].map((match) => ({ way, match })));
  for (const { way, match } of matches.slice(0, mostParts)) {
    const { part: place, it: of } = match.indices?.groups ?? {};
    if (!place || open.test(text.slice(0, match.index))) continue;
    const at = sentence.tokenAt(place[0]);
    const token = tokens[at];
    const figure = token?.t === 'quantity' && token.quantity.dim === 'bare' && token.quantity.inWords;
    const value = figure ? token.quantity.value : (fractions[match.groups?.['part'] ?? ''] ?? 0);
    const end = match.index + match[0].length;
    if (!(value > 0 && value < 1) || (way === 'in' && timing.test(text.slice(end)))) continue;
    const ofAt = sentence.tokenAt((of?.[1] ?? end) - 1);
    found.push({ way, value, at, of: match.groups?.['it'] ?? '', ofAt, to: sentence.tokenAt(end - 1) + 1 });
  }
  return found;
}

/** What a part is of: null where that is none of the recipe, none of several where nobody knows. */
function wholeOf(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  { at, of, ofAt }: Part,
): readonly Weighed[] | null {
  const sentence = sentences[k];
  if (!sentence) return null;
  const name = tokens[ofAt];
  const all = weighedIn(tokens, 0, at, kinds);
  const isSolved = ({ at: thing }: Weighed): boolean => isKind(tokens[thing], /^(?:alkali|liquid|water)$/);
  if (/solution|jug/.test(of)) return solution(tokens, all.filter(isSolved));
  if (of.endsWith('@') && isIngredient(name)) {
    const rows = all.filter(({ id }) => id === thingOf(name));
    if (name.meaning.kind === 'stock') return solution(tokens, all.filter(isSolved));
    return rows.length === 1 ? rows : [];
  }
  const before = sentences[k - 1];
  // "20 g of scent, half of it spilled"
  const last = tokens.slice(sentence.from, at).findLast(isIngredient);
  // "weighed the lye water and poured in three quarters of it"
  if (isKind(last, /^stock$/) && !isAny(tokens, sentence.from, at, isMeasured))
    return solution(tokens, all.filter(isSolved));
  if (last && !isKind(last, kinds)) return null;
  const own = weighedIn(tokens, sentence.from, at, kinds);
  // "of the shea I melted 400 g, half of it is for …"
  if (own.length === 0 && isAny(tokens, sentence.from, at, (one) => isIngredient(one) || isMeasured(one))) return [];
  const rows = own.length > 0 || !before ? own : weighedIn(tokens, before.from, before.to, kinds);
  if (rows.length <= 1) return rows.length === 1 ? rows : null;
  if (rows.every(isSolved)) return solution(tokens, rows);
  return rows.some((row) => isKind(tokens[row.at], /^alkali$/)) ? null : [];
}

/** The fats are told of one of the pots. */
function isPerPot(tokens: readonly Token[], sentences: readonly Sentence[], k: number): boolean {
  return sentences.some(
    ({ text, from, to }, n) => n !== k && perPot.test(text) && weighedIn(tokens, from, to, /^fat$/).length > 0,
  );
}

const isKind = (token: Token | undefined, kind: RegExp): boolean =>
  isIngredient(token) && kind.test(token.meaning.kind);

/** One weight of alkali and one of what it is dissolved in. */
function solution(tokens: readonly Token[], rows: readonly Weighed[]): readonly Weighed[] {
  const alkali = rows.filter(({ at }) => isKind(tokens[at], /^alkali$/));
  return alkali.length === 1 && rows.length <= 2 ? rows : [];
}

/** The weights of which a part is meant, as that part; `unheard`: words of a part of nobody knows what. */
export function partOfIt(
  cut: Cut,
  was: readonly Token[],
): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[]; readonly unheard: string | null } {
  const { tokens } = cut;
  const saysPart = (token: Token): boolean =>
    (token.t === 'word' && cues.has(token.text)) || (token.t === 'quantity' && token.quantity.inWords);
  if (!tokens.some(saysPart)) return { tokens, told: [], unheard: null };
  const sentences = sentencesOf(cut);
  const told: PutRight[] = [];
  let out: Token[] | null = null;
  let unheard: string | null = null;
  let count = 0;
  sentences.forEach((sentence, k) => {
    if (!isAny(tokens, sentence.from, sentence.to, saysPart)) return;
    if (ofOthers.test(sentence.text)) return;
    const parts = partsIn(sentence, tokens);
    const [first] = parts;
    if (!first || ++count > mostParts || isAny(tokens, sentence.from, sentence.to, (one) => isRole(one, 'after')))
      return;
    // "half the lye tub"
    const isOfPack =
      isAny(tokens, sentence.from, first.at, (one) => pack.test(spoken(one))) ||
      (isIngredient(tokens[first.ofAt]) && pack.test(spoken(tokens[first.ofAt + 1])));
    const tale = `${sentence.text} ${sentences[k + 1]?.text ?? ''}`;
    const goesIn = first.way === 'in' && restIn.test(tale) && !restAway.test(tale);
    const isOther = first.way === 'in' && (elsewhen.test(sentence.text) || ofTwo.test(sentence.text));
    const rows = isOfPack || goesIn ? null : wholeOf(tokens, sentences, k, first);
    if (!rows || rows.some(({ figure }) => tokens[figure] !== was[figure])) return;
    if (first.way === 'each' && !isPerPot(tokens, sentences, k)) return;
    const isOfLye = rows.some(({ at }) => isKind(tokens[at], /^alkali$/));
    const shares = new Set(
      parts.map(({ way, value }) => (way === 'in' || way === 'each' ? value : 1 - value).toFixed(4)),
    );
    const from = tokens[first.at]?.from ?? 0;
    const isRough = isOfLye && roughly.test(spoken(tokens[first.at - 1]));
    if (
      rows.length === 0 ||
      shares.size > 1 ||
      first.way === 'lost' ||
      isOther ||
      isRough ||
      (first.way === 'each' && !isOfLye)
    ) {
      unheard ??= rawText(cut.prims, from, tokens[first.to - 1]?.to ?? from + 1);
      return;
    }
    out ??= [...tokens];
    for (const { at } of parts) {
      const token = tokens[at] as Token;
      out[at] = token.t === 'quantity' ? asAside(token, 'a part of what was said') : asFiller(token);
    }
    const share = first.way === 'in' || first.way === 'each' ? first.value : 1 - first.value;
    const texts = rows.map(({ at, figure }) => {
      const weight = tokens[figure] as Figure;
      const name = tokens[at];
      const stays = { ...withValue(weight.quantity, weight.quantity.value * share), numbers: weight.quantity.numbers };
      (out as Token[])[figure] = { ...weight, quantity: stays };
      return `${stays.text} of ${name?.t === 'name' ? name.text : ''}, not ${written(weight.quantity)}`;
    });
    const start = Math.min(...rows.map(({ at, figure }) => Math.min(at, figure)));
    const end = restAway.test(sentences[k + 1]?.text ?? '') ? sentences[k + 1]?.to : sentence.to;
    told.push({
      text: `I took ${texts.join(', and ')}, the part that goes in as the post says.`,
      gone: [],
      from: start,
      to: end ?? sentence.to,
      settles: true,
    });
  });
  return { tokens: out ?? tokens, told, unheard };
}

/** "About three quarters of the solution": nobody knows how much. */
const roughly = /^(?:about|around|roughly|nearly|almost|maybe|perhaps|approximately|ca|approx)$/;

/** "A 1 kg jar of coconut, and I used half of it" is for `part-of-pack`. */
const pack = /^(?:jar|tub|tin|bag|bottle|bucket|block|can|pack|packet)(?: of)?$/;

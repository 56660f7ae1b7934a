/**
 * What goes out of a weight that was told, or comes to it, where nobody tells the sum: "140 g of lye, then I took 8 g back
 * out", "emptied the end of the olive bottle in, 80 g", "spooned 50 g out again, then 20 g went back", "used 10 g less", "6 g of it stuck in the cup",
 * "25 g of it had stayed behind".
 */

import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isAny, isIngredient, isMeasured, massOf, wordAt } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed, weighedIn } from '../words/weighed.ts';
import type { Heard } from './heard.ts';

/** Words of which one stands in each sentence that says so. */
const cues: ReadonlySet<string> = new Set(
  'stayed remained behind left out off back less another removed stuck clinging sticking clung emptied tipped poured dumped squeezed second lot further extra more kept held still'.split(
    ' ',
  ),
);

/** `back`: out of the pot, or into it again, as it comes; `less`: of what its own sentence tells. */
type Way = 'out' | 'in' | 'back' | 'less';

const store = '(?:tub|jar|bag|box|tin|bottle|container|packet|pack|can|bucket|drum|carton|block)';
const pot = '(?:pot|jug|bowl|cup|pan|beaker)';
const dry = '(?:paper|foil|sheet|parchment|plate|boat|tray|scoop|saucer|cup|dish)';
const dish = `(?:jug|bowl|pan|saucepan|beaker|glass|mug|pitcher|sides?|bottom|${dry})`;
const verb =
  '(?:took|take|taken|taking|scooped|spooned|ladled|tipped|poured|fished|lifted|shook|picked|dipped|drew|sucked|got|cut|put|scraped|skimmed|pulled|went|came|added)';
const lightly = '(?:(?:it|about|some|just|only|of|in|then|and|again|i|we|have|had) )*';
const ofIt = '(?:(?:of|from) (?:it|that|them|this|the @|@) |(?:the )?@ )?';
const deed = '(?:(?:was|were|had|has|have|i|we|right|straight|then|got|went|came|goes|comes|put|tipped|taken) )*';

/** The words since the figure before, the figure, and the words up to the next. */
const patterns: readonly (readonly [Way, RegExp])[] = (
  [
    [
      'out',
      `\\b${verb} ${lightly}(?:back )?(?:out|off) ${lightly}# ${ofIt}(?!of (?!it\\b|that\\b|the @)|(?:of )?the ${store})`,
    ],
    ['out', `\\b(?:removed|subtracted|deducted) ${lightly}# ${ofIt}`],
    [
      'out',
      `\\b${verb} ${lightly}# ${ofIt}${deed}(?:back out|out again|again out|off again|back off|out (?:of (?:it|there|the ${pot}) )?(?:again|before|because|cause|as|since|[.,;:!?)])|back (?:again )?(?:in|into|to) (?:the|its|my|his|her) ${store})`,
    ],
    [
      'out',
      `# ${ofIt}(?:was |were |had |has )?(?:went|came|goes|comes|taken|tipped|scooped|spooned|put) (?:back out|out again|back (?:again )?(?:in|into|to) (?:the|its|my|his|her) ${store})`,
    ],
    [
      'less',
      `\\b(?:used|put|took|taken|weighed|added|poured|tipped) ${lightly}# less(?= [.,;:!?)]| and| but| so| because| to| of (?:it|that) | in the end)`,
    ],
    [
      'out',
      `# ${ofIt}(?:(?:is|was|were|are|still|just|had|has|got|that|which|left|stayed) )*(?:stuck|sticking|clinging|clung)\\b`,
    ],
    [
      'out',
      `# ${ofIt}(?:(?:had|has|have|is|was|were|still|that|which) )*(?:(?:stayed|remained|left) (?:behind\\b|(?:in|on|at) (?:the |my |its )?(?:it\\b(?= $| [.,;!?()–—-]| and\\b| when\\b| after)|(?:[a-z]+ )?${dish}\\b))|stayed back\\b)`,
    ],
    [
      'out',
      `\\b(?:it|${dry}) (?:[a-z]+ )?(?:still (?:had|held)|kept|held on to) (?:just |only )?# ${ofIt}(?:(?:on|in) (?:it|there)\\b|(?= *$|[.,;:!?)]))`,
    ],
    [
      'out',
      `\\b(?:was|were|is|are|theres) still # ${ofIt}(?:left )?(?:in|on) (?:it\\b|(?:the |my |its )?(?:[a-z]+ )?${dish}\\b)`,
    ],
    ['out', `\\bleft ${lightly}# ${ofIt}(?:behind\\b|(?:in|on|at) (?:the |my |its )?(?:[a-z]+ )?${dish}\\b)`],
    [
      'back',
      `\\b(?:put|tipped|poured|spooned|scooped|threw) ${lightly}(?:back (?:in )?)?${lightly}# ${ofIt}(?:back(?! to )|in again)\\b|\\bput ${lightly}back (?:in )?#`,
    ],
    ['back', `# ${ofIt}(?:went|goes|came|got|put) (?:back(?! to )|in again)\\b`],
    [
      'in',
      `\\b(?:another|a further|an extra) #(?! (?:[a-z]+ ){0,3}@)|\\b(?:tipped|added|poured|stirred|dissolved|dropped|sprinkled|threw|spooned|shook) ${lightly}# (?:more|extra)(?! (?:[a-z]+ ){0,3}@)|# (?:more|extra) (?:then |also )?(?:went|got|came|was (?:put|tipped|poured|added)) in(?:to)?\\b(?! (?:[a-z]+ ){0,3}@)`,
    ],
    [
      'in',
      `\\b(?:emptied|tipped|poured|dumped|squeezed|threw|drained|shook|scraped) (?:the |my )?(?:end|last|rest|remains?|dregs|remainder|last (?:bit|drops?)) (?:of|from) (?:the|my) @ (?:${store} )?(?:in(?:to (?:it|there|the pot))?|on top)(?: too| as well)? (?:[,(:–-] )+(?:(?:about|that|which|was|were|roughly|just|it) )*#(?! (?:of )?@)`,
    ],
    [
      'in',
      `^ (?:at )?first (?:, )?(?:and|then|and then|plus) # (?:for|with|in|to) the (?:second|other|extra) (?:lot|go|dose|portion|round|solution)\\b`,
    ],
  ] as const
).map(([way, pattern]) => [way, new RegExp(pattern, 'd')]);

/** "Took 500 g out for this": what goes in. */
const goesIn =
  /^# (?:[a-z]+ ){0,3}for (?:this|the(?! (?:second|other|extra) (?:lot|go|dose|portion|round|solution)\b)|that|it|my|a)\b/;
/** "Stayed behind in the jug, so I scraped it out and in it went": it is in all the same. */
const cameAfter =
  /\b(?:scraped|rinsed|washed|melted|warmed|spooned|wiped|put|poured|tipped|added|stirred|got|made up|topped) (?:[a-z]+ ){0,5}(?:in|into|out|back|after|too|later|at trace|up)\b|\bin (?:it|that) went\b|\bwent in (?:too|later|after|as well|at trace|in the end)\b|\b(?:rinsed|scraped)\b/;
/** Words that tell for sure that it moved; without them it may come out of what stands in store. */
const surely =
  /\b(?:back|again|less|stuck|sticking|clinging|clung|stayed|remained|still|kept|held|left (?:behind|in|on|at|#)|(?:second|other|extra) (?:lot|go|dose|portion|round|solution))\b/;
const putIn =
  /\b(?:put|poured|weighed|melted|added|tipped|emptied|dumped|squeezed|measured|went in|by accident|too much)\b/;
/** "I had 900 g of tallow. I took 200 g of that out again": what stays behind, or what goes in. */
const having = /\b(?:had|have|ive|got|gave|bought|rendered|yielded)\b/;
const entered = new RegExp(`${putIn.source}|\\b(?:back|stuck|stayed|remained|behind)\\b`);
/** Nobody did it, or it was done before the weight was told. */
const open =
  /\b(?:should|shall|would|could|can|cant|if|might|may|want|wanted|need|next|usually|normally|after (?:i|we|[a-z]+ing)|having|last (?:time|batch))\b/;

/** "Saw it should be more, so I tipped another 14 g": what should have been, and then was done. */
const onceSeen =
  /\b(?:saw|seen|noticed|realised|realized|remembered|found|read|thought|spotted|said|knew)\b(?: (?!if\b)[a-z]+){0,6} (?:should|needed|wanted|ought)\b(?! i\b)[^,#?]{0,24}(?:,|\b(?:so|and))(?= (?:(?:so|then|and|i|we|just|have|had|ve) )*(?:tipped|added|poured|put|dissolved|stirred|weighed|dropped|went|threw|spooned|shook|sprinkled|measured|took|mixed|another)\b)/;
/** "Weighed the jug after pouring", "after tipping it in": what was left in it. */
const weighedAfter =
  /(?:\b(?:weighed|checked) (?:[a-z]+ ){0,4}|^)after (?:i |we )?(?:pouring|poured|emptying|emptied|tipping|tipped)\b/;

const moving = /^(?:fat|alkali|liquid|water)$/;
const weighable = /^(?:fat|alkali|liquid|water|stock|acid|additive|scent|unknown)$/;
/** Of a weight that much stays, at the least. */
const leastStays = 0.4;

/** Figures that move in a post, at the most: one of so many tells no tale. */
const mostMoves = 24;

interface Move {
  readonly figure: number;
  readonly way: Way;
  /** It moved, whatever it is of; and the last token that says so. */
  readonly sure: boolean;
  /** What stayed in a jug may be of the solution, where it is called lye. */
  readonly isDry: boolean;
  /** In or on what it stayed. */
  readonly vessel: string;
  readonly to: number;
}

const vesselWords = new RegExp(`\\b(?:${dish}|${store})\\b`, 'g');
const dryOnes = new RegExp(`^${dry}$`);
/** What was named last that it may have stayed in: "weighed the paper again and 4 g had stayed on it". */
const vesselIn = (text: string): string => text.match(vesselWords)?.at(-1) ?? '';

/** What the figures of a sentence tell, in their order. */
function movesIn(sentence: Sentence, next: string): readonly Move[] {
  const { text } = sentence;
  const moves: Move[] = [];
  for (let place = text.indexOf('#'); place >= 0 && moves.length <= mostMoves; place = text.indexOf('#', place + 1)) {
    const from = text.slice(0, place).lastIndexOf('#') + 1;
    const end = text.indexOf('#', place + 1);
    const around = text.slice(from, end < 0 ? text.length : end);
    if (open.test(text.slice(from, place).replace(onceSeen, '').replace(weighedAfter, ''))) continue;
    const found = patterns.find(([, pattern]) => pattern.test(around));
    const said = found?.[1].exec(around);
    if (!found || !said || goesIn.test(text.slice(place))) continue;
    const isLeft =
      /\b(?:stayed|remained|left|still|kept|held)\b/.test(said[0]) &&
      !/\b(?:stuck|sticking|clinging|clung)\b/.test(said[0]);
    const behind = text.slice(from + said.index + said[0].length - 1) + next;
    if (isLeft && /\b(?:about|around|roughly|some|maybe|nearly|almost|perhaps) $/.test(text.slice(0, place))) continue;
    if (isLeft && cameAfter.test(behind.replace(/\bnever [^.#]{0,20}\bin(?:to)?\b/g, ''))) continue;
    const vessel = vesselIn(text.slice(0, from + said.index + said[0].length));
    if (isLeft && new RegExp(`^${store}$`).test(vessel)) continue;
    const isDry = !isLeft || dryOnes.test(vessel);
    const sure = surely.test(said[0]);
    const to = sentence.tokenAt(from + said.index + said[0].length - 1) + 1;
    if (sure || putIn.test(text))
      moves.push({ figure: sentence.tokenAt(place), way: found[0], sure, isDry, vessel: isLeft ? vessel : '', to });
  }
  return moves;
}

/** The row that a figure goes out of or comes to: named beside it, the last one in its sentence, or the only one before. */
function rowOf(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  figure: number,
  vessel: string,
): Weighed | null {
  const sentence = sentences[k];
  if (!sentence) return null;
  const rows = (from: number, to: number): readonly Weighed[] =>
    weighedIn(tokens, from, to, weighable).filter((row) => row.figure !== figure);
  const named = nameAt(tokens, figure);
  if (named) {
    const [row, ...more] = rows(0, sentence.to).filter(({ id }) => id === thingOf(named));
    return row && more.length === 0 ? row : null;
  }
  const own = rows(sentence.from, figure);
  const spoken = lastNamed(tokens, sentence.from, figure);
  if (spoken >= 0) {
    const last = own.find(({ at }) => at === spoken);
    // "500 g of olive and 200 g of coconut, but so little coconut was left that another 34 g went in"
    const id = thingOf(tokens[spoken] as Extract<Token, { t: 'name' }>);
    const [row, ...more] = rows(0, figure).filter((one) => one.id === id);
    if (!last) return row && more.length === 0 ? row : null;
    return own.length === 1 || isOfWhich(tokens, last, figure) ? last : null;
  }
  if (rows(figure, sentence.to).length > 0 || isAny(tokens, sentence.from, figure, isMeasured)) return null;
  const held = vessel === '' ? undefined : heldIn(tokens, sentences.slice(0, k), vessel, rows);
  if (held !== undefined) return held;
  const before = sentences[k - 1];
  const last = before ? rows(before.from, before.to) : [];
  // "100 g lye in 200 g water. … dissolved another 38 g"
  const [row, ...more] = dissolving.test(sentence.text) ? last.filter(({ id }) => id === 'alkali') : last;
  return row && more.length === 0 ? row : null;
}

const dissolving = /\b(?:dissolved|dissolving) (?:in )?another\b/;

/** "Weighed 130 g of lye onto a paper, tipped it into 290 g of water": what was in or on the vessel; null where its weight is unknown. */
function heldIn(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  vessel: string,
  rows: (from: number, to: number) => readonly Weighed[],
): Weighed | null | undefined {
  const told = sentences.findLast(({ text }) => new RegExp(`\\b${vessel}\\b`).test(text));
  const end = told?.tokenAt(told.text.search(new RegExp(`\\b${vessel}\\b`)));
  const named = told && end !== undefined ? lastNamed(tokens, told.from, end) : -1;
  if (!told || end === undefined || named < 0) return;
  return rows(told.from, end).find(({ at }) => at === named) ?? null;
}

/** "8 g of the lye": what is named behind a figure. */
function nameAt(tokens: readonly Token[], figure: number): Extract<Token, { t: 'name' }> | null {
  let at = figure + 1;
  const most = wordAt(tokens, at) === 'of' ? mostWords : 1;
  while (at - figure <= most && wordAt(tokens, at) !== '') at++;
  const name = endsDotted(tokens[figure]) ? undefined : tokens[at];
  return isIngredient(name) ? name : null;
}

/** "90 g of the plain water". */
const mostWords = 3;

function lastNamed(tokens: readonly Token[], from: number, to: number): number {
  for (let k = to - 1; k >= from; k--) if (isIngredient(tokens[k])) return k;
  return -1;
}

/** "Olive 700 g, lard 350 g, of which 50 g went back in the tub". */
const isOfWhich = (tokens: readonly Token[], row: Weighed, figure: number): boolean =>
  /^(?:which|that)$/.test(wordAt(tokens, figure - 1)) && figure - Math.max(row.at, row.figure) <= 4;

interface Tale {
  readonly row: Weighed;
  readonly moves: { readonly figure: number; readonly by: number }[];
  /** The sentence of the last one. */
  last: number;
  /** What is out of the pot, so that it may come back. */
  out: number;
}

/** The weights as they are once everything has moved, but for what another rule has made of those that `was`. */
export function moved(
  cut: Cut,
  was: readonly Token[],
): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[]; readonly unheard: string | null } {
  const { tokens } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => (token.t === 'word' || token.t === 'name') && cues.has(token.text))) return none;
  const tales: Tale[] = [];
  let unheard: string | null = null;
  const sentences = sentencesOf(cut);
  let count = 0;
  sentences.forEach((sentence, k) => {
    if (sentence.figures === 0 || count > mostMoves) return;
    for (const { figure, way, sure, isDry, vessel, to } of movesIn(sentence, sentences[k + 1]?.text ?? '')) {
      if (++count > mostMoves) return;
      const token = tokens[figure];
      if (
        !massOf(token) ||
        token.quantity.dim === 'volume' ||
        (token.quantity.dim === 'bare' && way === 'in') ||
        token.quantity.upTo !== null
      )
        continue;
      const going = tales.at(-1);
      const isOn = going && k - going.last <= 1 && lastNamed(tokens, (going.moves.at(-1)?.figure ?? 0) + 1, figure) < 0;
      const named = nameAt(tokens, figure);
      const isSaid = isOn && !named;
      const found = isSaid ? going.row : isBracket(sentence) ? null : rowOf(tokens, sentences, k, figure, vessel);
      const row = way === 'less' && found && found.figure < sentence.from ? null : found;
      if (!row && sure && !named && !ofSoap.test(sentence.text))
        unheard ??= rawText(cut.prims, token.from, (tokens[to - 1] ?? token).to);
      if (!row || (!isDry && row.id === 'alkali')) continue;
      const from = sentences.find((one) => row.figure >= one.from && row.figure < one.to)?.text ?? '';
      if (way === 'out' && having.test(from) && !entered.test(`${from} ${sentence.text}`)) continue;
      const weight = tokens[row.figure];
      if (!massOf(weight) || !moves(tokens[row.at]) || weight !== was[row.figure]) continue;
      const by = alike(token.quantity, weight.quantity);
      if (by.dim !== weight.quantity.dim) continue;
      const tale = tales.find((one) => one.row.figure === row.figure) ?? { row, moves: [], last: k, out: 0 };
      if (tale.moves.length === 0) tales.push(tale);
      const isOut = way === 'out' || way === 'less' || (way === 'back' && tale.out < by.value);
      tale.out += isOut ? by.value : -by.value;
      tale.moves.push({ figure, by: isOut ? -by.value : by.value });
      tale.last = k;
    }
  });
  return tales.length === 0 ? { ...none, unheard } : { ...settled(tokens, tales), unheard };
}

/** "Lye 132 g (I put 8 g back)": nobody knows whether the weight is the one before it. */
const isBracket = ({ text }: Sentence): boolean => /^[([]/.test(text);
const ofSoap = /\b(?:batter|soap|soaps|mixture|trace|bars?|loaf|mou?lds?|curing|cured)\b/;

const moves = (token: Token | undefined): boolean => isIngredient(token) && moving.test(token.meaning.kind);

function settled(tokens: readonly Token[], tales: readonly Tale[]): Heard {
  const out = [...tokens];
  const told: PutRight[] = [];
  for (const { row, moves } of tales) {
    const weight = tokens[row.figure] as Figure;
    const name = tokens[row.at];
    const whole = weight.quantity;
    const value = moves.reduce((sum, { by }) => sum + by, whole.value);
    if (value < leastStays * whole.value || name?.t !== 'name') continue;
    const stays = { ...withValue(whole, value), numbers: whole.numbers };
    out[row.figure] = { ...weight, quantity: stays };
    for (const { figure } of moves) out[figure] = asAside(tokens[figure] as Figure, 'a part of what was said');
    const steps = moves.map(
      ({ figure, by }) => `${by < 0 ? '−' : '+'} ${written((tokens[figure] as Figure).quantity)}`,
    );
    told.push({
      text: `I took ${stays.text} of ${name.text} (${written(whole)} ${steps.join(' ')}), as the post says.`,
      gone: [],
      from: Math.min(row.at, row.figure),
      to: Math.max(...moves.map(({ figure }) => figure)) + 1,
      settles: true,
    });
  }
  return { tokens: out, told };
}

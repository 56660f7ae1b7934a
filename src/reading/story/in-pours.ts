/**
 * "150 ml of water to start, then another 350 ml", "water 150 g and then 100 g more": the liquid of the lye in two pours,
 * which count together; "the last 80 g lye out of the old tin and 41 g from the new one", "coconut was 200 g from the new
 * jar plus the last 50 g scraped out of the old one": anything out of two packs. The second one has no name.
 */

import { alike, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, rowsOf } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'another more further second old older first opened other new newer fresh big small last'.split(' '),
);
const starts =
  '(?:(?:,? ?)?(?:to start(?: with)?|to begin with|for a start|at the start|first|at first|initially|at once|right away)(?: (?:off|of all))?)?';
const verb = '(?:(?:(?:i|we) )?(?:added|poured in|put in|tipped in|used|came|went in|stirred in) )?';
const joins = `(?: ?(?:[-,;+&(–—]|and|plus|then|later|afterwards|after that|a bit later))+ ${verb}`;
const second = '(?:(?:another|a further|a second|a last|the other) (?<b>#)(?: more)?|(?<c>#) more)';
const ofIt = '(?: (?:of (?:it|that|the same)|on top|in the end|at the end|later|afterwards|\\)))*';
const vessel = '(?:tin|tub|jar|bottle|bag|can|canister|pack|packet|box|block|bucket|jug|one)';
const took =
  '(?:(?:i|we|took|take|weighed|added|used|put in|tipped in|poured in|scooped|then|also|another|the|a|last|final|remaining|other|rest|further) )*';
const which =
  '(?:old|older|new|newer|first|second|next|last|other|fresh|full|opened|unopened|big|bigger|large|small|smaller|little|tiny|empty|half empty|almost empty|nearly empty)';
/** Out of what it came: "scraped out of the old one", "I still had in the small tub". */
export const outOf = `(?:(?:(?:that|which|i|it|was|were|is|still|only|just|left|remained|had|have|got|came|comes|taken|scraped|squeezed|scooped|spooned|emptied|over) )*(?:from|out of|of|off) (?:the|a|an|my) ${which}(?: [a-z]+)?(?: ?${vessel})?(?: ?${which})?)`;
const leftIn = `(?:(?:that|which|i|it|was|were|still|only|left|remained|remaining|had|over) )+in (?:the|my) ${which}(?: ${vessel})?`;
const joint = '(?: ?(?:[-,;+&]|and|plus|then|so|but))+';
const ends = '(?= ?(?:$|[,.;:!?)–—-]|and\\b|so\\b|both\\b|together\\b))';
const makePatterns = () =>
  [
    `(?:(?<a>#) (?:of )?(?:the |my )?(?<f>@)|(?<g>@) (?:(?:is|was|were|came|comes|to|,|:|-|–|=|both|i|took|used) )*(?:the |my )?(?:last |first )?(?<c>#)) (?:${outOf}|in the ${which}(?: ${vessel})?)${joint} ${took}(?<p>#) (?:more |extra )?(?:${outOf})${ends}`,
    `(?:(?<a>#) (?:of )?(?:the |my )?(?<f>@)|(?<g>@) (?:(?:is|was|were|came|comes|to|,|:|-|–|=) )*(?<c>#))(?: ${outOf})? (?:plus|[+]) ${took}(?<p>#) (?:more |extra )?(?:${leftIn}|${outOf})${ends}`,
    // "Lye: two tubs, 180 g from one and 112 g from the other"
    `(?<f>@)(?: ?(?:[-:,(–—]|came|comes|is|was|went|i|we|had|took|used|weighed|from|out|of|in|the|my|all|# ${vessel}s))* (?<a>#) (?:of it )?(?:from|out of) (?:the |my )?(?:one|first|old|older|opened|open|small|smaller|big|bigger|nearly empty)(?: ${vessel})?(?: ?(?:[-,;+&]|and|plus|then))+ ${took}(?<p>#) (?:more )?(?:from|out of) (?:the |a |my )?(?:other|second|next|new|newer|fresh|full|unopened|big|bigger|small|smaller)(?: ${vessel})?(?! @| of @)${ends}`,
    `(?:^|[-,;:.(] |\\n|\\band |\\bin )(?:used |took |with |about )?(?<a>#) (?:of )?(?:(?:the|cold|warm|distilled|ice) )*(?<f>@)${starts}${joins}${second}${ofIt}(?= ?(?:$|[,.;!?)]))`,
    `(?<f>@) ?[:=–-]? ?(?<a>#)${starts}${joins}${second}${ofIt}(?= ?(?:$|[,.;!?)]))`,
  ].map((pattern) => new RegExp(pattern, 'd'));
let made: readonly RegExp[] | null = null;
/** Nobody has done it, or it is for something else. */
const open =
  /\?|\b(?:if|would|could|should|might|may|maybe|perhaps|(?<!\b(?:the|a|my|old|new|big|small|large|first|second|other|full|fresh|opened) )can|next (?!one\b|[a-z]+ #|tin\b|tub\b|jar\b|bottle\b|bag\b|can\b)|last time|usually|normally|or|not|didnt|kept|keep|keeping|save|saved|stays|stayed|nearly|almost|dilut[a-z]*|thin[a-z]*|paste|batter|cook|cooked|rinse|rinsed|wash|washed|steep|tea|she|he|they)\b/;

const isLiquid = (token: Token | undefined): token is Extract<Token, { t: 'name' }> =>
  isIngredient(token) && /^(?:water|liquid)$/.test(token.meaning.kind);

const isMeasure = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && (token.quantity.dim === 'volume' ? token.quantity.upTo === null : isPlain(token));

/** The list in which both count. */
export function inPours(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [] };
  if (!cut.tokens.some((token) => cues.has(spoken(token).toLowerCase()))) return none;
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures < 2 || sentence.names === 0 || open.test(sentence.text)) continue;
    made ??= makePatterns();
    for (const pattern of made) {
      const at = pattern.exec(sentence.text)?.indices?.groups;
      const behind = at?.['p'] ?? at?.['b'] ?? at?.['c'];
      const [begin, whose] = at?.['p'] ? [at['a'] ?? at['c'], at['f'] ?? at['g']] : [at?.['a'], at?.['f']];
      if (!at || !begin || !whose || !behind) continue;
      const [a, f, b] = [begin, whose, behind].map(([place]) => sentence.tokenAt(place)) as [number, number, number];
      const [first, name, more] = [cut.tokens[a], cut.tokens[f], cut.tokens[b]];
      const isIt = at['p'] ? isIngredient(name) : isLiquid(name);
      if (name?.t !== 'name' || !isIt || !isMeasure(first) || !isMeasure(more)) continue;
      const next = alike(more.quantity, first.quantity);
      const others = at['p'] ? rowsOf(cut.tokens, name, cut.tokens.length) : rowsBefore(cut.tokens, cut.tokens.length);
      const isListed = others.some((row) => row.at !== f && (at['p'] || isLiquid(cut.tokens[row.at])));
      if (next.dim !== first.quantity.dim || isListed) continue;
      const out = [...cut.tokens];
      const sum = withValue(first.quantity, first.quantity.value + next.value);
      out[a] = { ...first, quantity: { ...sum, numbers: first.quantity.numbers } };
      out[b] = asAside(more, 'a part of what was said');
      const text = `I took ${written(first.quantity)} and ${written(more.quantity)} of ${name.text} together, ${sum.text}.`;
      return { tokens: out, told: [{ text, gone: [], from: Math.min(a, f), to: b + 1, settles: true }] };
    }
  }
  return none;
}

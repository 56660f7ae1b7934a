/**
 * How the pot looks and what is done with it tells that the cook is over, without the word for it: "when it looked like
 * petroleum jelly", "zap test clean", "heat off, then 50 g shea". What is stirred in behind that is not cooked.
 */
import { ofWord, signal } from '../words/signal-words.ts';
import { givesAt, type Signals } from '../words/signals.ts';
import type { Token } from '../words/tokens.ts';

const textOf = (token: Token | undefined): string => {
  if (token?.t === 'word') return token.text;
  return token?.t === 'name' ? token.text.toLowerCase() : '';
};

/** What a pot is said to look like, which some also bake or cure with. */
const looks = /^(?:apple ?sauce|petroleum jelly|vaseline)$/;
const leading =
  /^(?:at|like|to|as|into|of|past|until|till|through|the|a|called|is|was|now|looks?|looked|reached|hits?|after)$/;

const isWeight = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && token.quantity.dim !== 'temperature' && token.quantity.dim !== 'time';

/** "Came up like milk": what something is compared with, behind no person that likes it. */
const isCompared = (tokens: readonly Token[], k: number): boolean =>
  textOf(tokens[k - 1]) === 'like' &&
  tokens[k - 2]?.t === 'word' &&
  !/^(?:i|you|we|they|he|she|d|would|ill|id|also|really|just|do|dont)$/.test(textOf(tokens[k - 2]));

/** "It went through applesauce": no ingredient, unless it is weighed. */
export function looksOfPot(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (token?.t !== 'name') continue;
    const isLook = givesAt(signals, k, signal.cooking) && looks.test(textOf(token));
    if (!isLook && !(token.meaning.kind !== 'role' && isCompared(tokens, k))) continue;
    const [before, behind] = [tokens[k - 1], tokens[k + 1]];
    const sized = isWeight(before) || (textOf(before) === 'of' && isWeight(tokens[k - 2]));
    const listed = isWeight(behind) || (behind?.t === 'sign' && isWeight(tokens[k + 2]));
    if (sized || (listed && !leading.test(textOf(before)))) continue;
    out ??= [...tokens];
    out[k] = { t: 'word', from: token.from, to: token.to, text: textOf(token), sort: 'everyday' };
  }
  return out ?? tokens;
}

/** Looks of a soap that is done, by their last word. */
const late: ReadonlySet<string> = new Set(
  'vaseline,petroleum jelly,potato,potatoes,mash,translucent,glassy'.split(','),
);
/** Looks that a raw soap has, too: of one that is cooked where the pot was heated before. */
const shining: ReadonlySet<string> = new Set('glossy,shiny,waxy,satiny'.split(','));
const zapped: ReadonlySet<string> = new Set(['zap', 'zaps', 'zapping', 'zapped']);
const finished: ReadonlySet<string> = new Set(
  'done ready finished neutral gekocht fertig verseift cuit cuite cocido hecho cotto cotta gaar klaar gotowe ugotowane'.split(
    ' ',
  ),
);
const clean = /^(?:clean|ok|okay|fine|negative|passed|passes|good|clear|none|nothing|gone|neutral|free)$/;
const begins =
  /^(?:after|once|when|past|following|at|as|reached|until|till|stage|looks?|looked|resembled|like|turn|turns|turned|gone|goes|went)$/;
const until = /^(?:until|till)$/;
const heater =
  /^(?:heat|flame|gas|fire|plate|ring|crock ?pot|crock|slow cooker|slowcooker|cooker|pot|stove|hob|burner|oven|power|it)$/;
const isIt = /^(?:it|its|soap|everything|batch|all|the soap|seife|savon|paste)$/;
const whenWords = /^(?:when|once|after|as|sobald|wenn|quand|cuando|quando)$/;

/** Words of one phrase, at the most. */
const phrase = 6;

const endsPhrase = (token: Token | undefined): boolean =>
  token === undefined ||
  token.t === 'line' ||
  token.t === 'quantity' ||
  (token.t === 'sign' && /^[.;!?]$/.test(token.text));

/** One of these words stands up to a phrase before token `k`. */
function stands(tokens: readonly Token[], k: number, words: RegExp): string | null {
  for (let at = k - 1; at >= 0 && k - at <= phrase && !endsPhrase(tokens[at]); at--)
    if (words.test(textOf(tokens[at]))) return textOf(tokens[at]);
  return null;
}

/** One of these words stands up to a phrase behind token `k`. */
function follows(tokens: readonly Token[], k: number, words: RegExp, reach = phrase): boolean {
  for (let at = k + 1; at - k <= reach && !endsPhrase(tokens[at]); at++)
    if (words.test(textOf(tokens[at]))) return true;
  return false;
}

/** What a post says around the tokens that may tell of the end of a cook. */
interface Steps {
  /** From where on the alkali is in. */
  readonly lye: number;
  /** From where on an alkali and a cook were named. */
  readonly cook: number;
  /** Where trace is named last. */
  readonly trace: number;
}

function stepsOf(tokens: readonly Token[], signals: Signals): Steps {
  const none = Number.POSITIVE_INFINITY;
  let [lye, alkali, cook, trace] = [none, none, none, -1];
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (token?.t !== 'word' && token?.t !== 'name') continue;
    const mayCook = givesAt(signals, k, signal.cooking) || token.to > token.from + 1;
    if (lye === none && (mayCook || token.t === 'name') && isLyeIn(tokens, k)) lye = k;
    if (alkali === none && isAlkali(token)) alkali = k;
    if (cook === none && mayCook && isCook(token)) cook = k;
    if (token.text.length >= leastTrace && /\btrace$/.test(textOf(token))) trace = k;
  }
  return { lye, cook: Math.max(alkali, cook), trace };
}

const leastTrace = 'trace'.length;

const isCook = (token: Token): boolean =>
  textOf(token)
    .split(' ')
    .some((word) => (ofWord(word) & signal.cooking) !== 0);

const isAlkali = (token: Token | undefined): boolean =>
  token?.t === 'name' && (token.meaning.kind === 'alkali' || token.meaning.kind === 'stock');

/** Tokens from the melting of fats to the heat that is taken away, at the most. */
const longestMelting = 60;

/** "Melt 200 g lard, then off the heat": the fats alone; or it is only blended later on. */
function isOfMelting(tokens: readonly Token[], k: number, { trace }: Steps): boolean {
  if (trace > k) return true;
  let ends = 0;
  for (let at = k - 1; at >= 0 && k - at <= longestMelting && ends < 2; at--) {
    const token = tokens[at];
    if (token?.t === 'sign' && /^[.;!?]$/.test(token.text)) ends++;
    if (isAlkali(token)) return false;
    if (/^melt(?:s|ed|ing)?$/.test(textOf(token)))
      return !(textOf(tokens[at + 1]) === 'in' && tokens[at + 2]?.t === 'quantity');
  }
  return false;
}

/** "11:35 petroleum jelly": a look in a log. */
function isLogged(tokens: readonly Token[], k: number): boolean {
  const at = textOf(tokens[k - 1]) === 'mashed' ? k - 2 : k - 1;
  const token = tokens[at];
  return token?.t === 'aside' && token.reason === 'a time of day' && endsPhrase(tokens[k + 1]);
}

/** What token `k` says of the cook: that it is over, that it goes on until then, or nothing. */
function toldAt(tokens: readonly Token[], k: number, steps: Steps): 'over' | 'until' | null {
  const text = textOf(tokens[k]);
  if (
    late.has(text) ||
    (shining.has(text) && steps.cook < k && !stands(tokens, k, until) && !follows(tokens, k, /\btrace$/))
  ) {
    const word =
      stands(tokens, k, begins) ?? (follows(tokens, k, /^stage$/, 1) ? 'stage' : isLogged(tokens, k) ? 'at' : null);
    if (word === null) return null;
    return stands(tokens, k, until) ? 'until' : 'over';
  }
  if (zapped.has(text))
    return follows(tokens, k, clean) || stands(tokens, k, /^(?:passed|passes|no|not|stopped|without)$/) ? 'over' : null;
  // "once it passes the tongue test"
  if (text === 'tongue') return stands(tokens, k, /^(?:passed|passes|pass|passing)$/) ? 'over' : null;
  if (text === 'neutral') return stands(tokens, k, /^(?:once|when|tested|tests|is|was)$/) ? 'over' : null;
  // before the lye goes in, it is the melting that ends
  if (steps.lye > k) return null;
  if (text === 'off') {
    const near = stands(tokens, k, heater) ?? (follows(tokens, k, heater, 3) ? 'heat' : null);
    return near === null || isOfMelting(tokens, k, steps) ? null : 'over';
  }
  if (!finished.has(text) || !stands(tokens, k, whenWords)) return null;
  return stands(tokens, k, isIt) || whenWords.test(textOf(tokens[k - 1])) ? 'over' : null;
}

/** Seconds that a cook takes, at the least; melting takes less. */
const leastCook = 2400;

/** "Cooked 50 min", "cook for about an hour": the lye is in, whether it was told or not. */
function isLongCook(tokens: readonly Token[], k: number): boolean {
  if (!/^cook(?:ed|s|ing)?$/.test(textOf(tokens[k]))) return false;
  for (let at = k + 1; at - k <= 5; at++) {
    const token = tokens[at];
    if (token?.t === 'quantity') return token.quantity.dim === 'time' && token.quantity.value >= leastCook;
    if (token?.t !== 'word') return false;
  }
  return false;
}

/** The lye is told of with its weight, or a cook so long that it was in. */
function isLyeIn(tokens: readonly Token[], k: number): boolean {
  const token = tokens[k];
  if (!isAlkali(token)) return isLongCook(tokens, k);
  return tokens[k - 1]?.t === 'quantity' || tokens[k + 1]?.t === 'quantity' || tokens[k + 2]?.t === 'quantity';
}

/** "It looked like mashed potatoes at 50 minutes last time": of another batch. */
function isOfLastTime(tokens: readonly Token[], k: number): boolean {
  const ends = (token: Token | undefined): boolean =>
    token === undefined || (token.t !== 'quantity' && endsPhrase(token));
  let from = k;
  while (k - from < 2 * phrase && !ends(tokens[from - 1])) from--;
  for (let at = from; at - k < 2 * phrase && !ends(tokens[at]); at++)
    if (textOf(tokens[at]) === 'last' && /^(?:time|batch|one|week|month|year|loaf)$/.test(textOf(tokens[at + 1])))
      return true;
  return false;
}

/** The tokens with what tells of the end of the cook, of a cooked soap, as one that says "after". */
export function endOfCook(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let steps: Steps | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (!givesAt(signals, k, signal.cooked) || (token?.t !== 'word' && token?.t !== 'name')) continue;
    steps ??= stepsOf(tokens, signals);
    const told = toldAt(tokens, k, steps);
    if (told === null || isOfLastTime(tokens, k)) continue;
    out ??= [...tokens];
    const meaning = { kind: 'role', id: 'after' } as const;
    const meant = told === 'until' ? untilDone : cookOver;
    out[k] = { t: 'name', from: token.from, to: token.to, text: token.text, meaning, how: 'name', meant };
  }
  return out ?? tokens;
}

/** What is put in beside this is put in after the cook; and what stands behind the other one. */
export const cookOver = 'the cook is over';
export const untilDone = 'until the cook is over';

/** Nobody says "after the cook" in so many words. */
export const isOfLooks = (meant: string): boolean => meant === cookOver || meant === untilDone;

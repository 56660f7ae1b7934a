/**
 * Figures beside an ingredient that is for something else than the pot, or of a soap called after it: "2 litres of milk,
 * all of it for cheese", "the oat milk one weighed 78 g", "my cousin superfats hers at 20 %", "the air is at 85 %".
 */
import { mouldSize } from '../words/aside.ts';
import { cue, uses, vinegars } from '../words/cue-words.ts';
import { type Signals, saysAround } from '../words/signals.ts';
import { isEach, isIngredient, isMark, isMeasured, isRole, type Span, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { weighedElsewhere, weighedFats } from '../words/weighed.ts';
import { inStore } from './in-store.ts';

interface OtherUse {
  readonly reason: string;
  /** Tokens of its sentence that are no names of the recipe. */
  readonly names: readonly number[];
}

export const drunk = 'what somebody drank';
export const otherUse = 'for something else';
export const othersSoap = 'of somebody else’s soap';
export const soapNamed = 'of a soap that was made';

const wordsOf = (words: string): ReadonlySet<string> => new Set(words.split(' '));
const purposes = wordsOf(uses.purposes);
const putting = wordsOf(
  'use used using put puts putting melt melted weighed weigh add added pot recipe batch goes went going need take took lye soap stir stirred poured mixed',
);
const called = wordsOf(uses.called);
const weighing = /^(?:weighs?|weighed|is|was|are|were)$/;
const ofAir = wordsOf(uses.ofAir);
const theirs = wordsOf(uses.theirs);
const ours = wordsOf('mine this same i recipe');
const others = wordsOf(uses.others);
const drinking = wordsOf(uses.drinking);
const drinks = wordsOf('beer wine milk cow-milk coffee tea stout hard-cider');
const isNamed = (token: Token | undefined, ids: ReadonlySet<string>): boolean =>
  token?.t === 'name' && token.meaning.kind !== 'role' && ids.has(token.meaning.id);
const checking = wordsOf(uses.checking);
const waiting = wordsOf(uses.waiting);
const places = wordsOf('cellar pantry larder cupboard attic shed garage freezer fridge basement storeroom');
const filling = wordsOf(uses.filling);
const withIt = wordsOf('with of in');
const water = wordsOf('water');
const most = 24;

const isHolding = (token: Token): boolean => token.t === 'name' && /^mou?ld holds$/.test(token.meant);

/** "I measured my mould with water, it took 1150 ml", "the tray takes 1.2 l of water": of what it holds. */
function isMouldful(tokens: readonly Token[], { from, to }: Span, names: readonly number[]): boolean {
  const [at = -1, ...others] = names;
  const sentence = tokens.slice(from, to);
  return (
    others.length === 0 &&
    isNamed(tokens[at], water) &&
    (isMeasured(tokens[at - 1]) || withIt.has(spoken(tokens[at - 1]))) &&
    sentence.some((one) => isRole(one, 'mould')) &&
    sentence.some((one) => filling.has(spoken(one)) || isEach(one) || isHolding(one))
  );
}

/** What the figure at token `k` is of, where its sentence says that it is none of the recipe. `fats`: weighed in the post. */
function otherUseOf(
  tokens: readonly Token[],
  k: number,
  { quantity: { dim, inWords } }: Figure,
  { from, to }: Span,
  fats: () => number,
): OtherUse | null {
  const words = tokens.slice(from, to);
  const spokens = words.map(spoken);
  const has = (of: ReadonlySet<string>): boolean => spokens.some((one) => of.has(one));
  // "I checked the scale with a litre of water and it said 998 g"
  const isOfScale = !words.some((one) => isRole(one, 'total-fats') || (isIngredient(one) && !isNamed(one, water)));
  if (dim !== 'percent' && isOfScale && words.some((one) => isRole(one, 'scale')) && has(checking))
    return { reason: otherUse, names: words.flatMap((one, n) => (isIngredient(one) ? [from + n] : [])) };
  const names = (): number[] => words.flatMap((one, n) => (isIngredient(one) ? [from + n] : []));
  const superfats = (): number[] => words.flatMap((one, n) => (isRole(one, 'superfat') ? [from + n] : []));
  // "her last year's bars had 6 % superfat"
  if ((dim === 'percent' || dim === 'bare') && has(others) && has(called) && !has(ours) && superfats().length > 0)
    return { reason: othersSoap, names: superfats() };
  if (dim === 'percent') {
    // "vinegar, 5 %": how strong it is, and no share of the fats
    const isVinegar = [k - 2, k - 1, k + 1].some((at) => isIngredient(tokens[at]) && isNamed(tokens[at], vinegars));
    if (isVinegar && !words.some(isMeasured)) return { reason: 'how strong it is', names: [] };
    if (has(ofAir) && names().length === 0) return { reason: otherUse, names: [] };
    if (!has(theirs) || has(ours)) return null;
    const roles = superfats();
    const fat = names();
    const isOfFat = fat.length === 1 && weighedElsewhere(tokens, fat[0] ?? 0);
    return roles.length > 0 || isOfFat ? { reason: othersSoap, names: [...roles, ...fat] } : null;
  }
  if (dim !== 'mass' && dim !== 'volume' && !(dim === 'bare' && !inWords)) return null;
  const own = names();
  if (isMouldful(tokens, { from, to }, own) && fats() > 0) return { reason: mouldSize, names: own };
  if (own.length !== 1 || words.filter((one) => one.t === 'quantity').length > 1) return null;
  if (has(drinking) && !has(putting) && isNamed(tokens[own[0] ?? 0], drinks)) return { reason: drunk, names: own };
  const behind = words.findIndex((one) => spoken(one) === 'for');
  const isFor = behind >= 0 && words.slice(behind + 1, behind + 5).some((one) => purposes.has(spoken(one)));
  // "rapeseed oil (the one for cooking) 3 kg": of which kind it is
  const isKind =
    from + behind < k && words.slice(0, behind).some((one) => isMark(one, '(')) && isMark(tokens[k - 1], ')');
  if (isFor && !isKind && !has(putting)) return { reason: otherUse, names: own };
  if (dim === 'bare') return null;
  const at = own[0] ?? 0;
  const isCalled = called.has(spoken(tokens[at + 1])) && at < k;
  if (isCalled && tokens.slice(at + 2, k).some((one) => weighing.test(spoken(one))))
    return { reason: soapNamed, names: own };
  return has(waiting) && has(places) && !has(putting) && fats() > leastFats ? { reason: inStore, names: own } : null;
}

/** Fats that are weighed, the one in store among them, of which the others make a recipe. */
const leastFats = 2;

/** The tokens with such figures set aside, and their names made words. */
export function otherUses(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let counted: number | null = null;
  const fats = (): number => {
    counted ??= weighedFats(tokens);
    return counted;
  };
  for (const k of signals.figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || !saysAround(signals, k, cue.otherUse)) continue;
    const found = otherUseOf(tokens, k, token, sentenceAt(tokens, k, most), fats);
    if (!found) continue;
    out ??= [...tokens];
    out[k] = asAside(token, found.reason);
    for (const at of found.names) {
      const { from, to } = tokens[at] ?? token;
      out[at] = { t: 'word', from, to, text: 'only', sort: 'everyday' };
    }
  }
  return out ?? tokens;
}

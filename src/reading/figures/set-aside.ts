/** Figures whose neighbours say that they are no amount, found before amounts look for their names. */

import { packed } from '../columns/columns.ts';
import { cue } from '../words/cue-words.ts';
import type { Meaning } from '../words/lexicon.ts';
import { signal } from '../words/signal-words.ts';
import { givesAround, givesNear, type Signals, saysAround } from '../words/signals.ts';
import { isInRow, isMark, isMeasured, isWeight, isWord, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { boughtOf, costOf, isOwnWeight, isPaid, isPoundsPaid, priced, reach } from './bought.ts';
import { conversionOf } from './conversions.ts';
import {
  isADay,
  isCounted,
  isDistance,
  isDose,
  isEachColour,
  isEggs,
  isHour,
  isLot,
  isManyKinds,
  isMeltPoint,
  isNumberOfBatch,
  isOfBar,
  isOfGarden,
  isOfPages,
  isOfReaction,
  isOfTask,
  isOften,
  isOutOf,
  isPageCount,
  isPoint,
  isPortion,
  isShareOut,
  isWorth,
  isYear,
  oftenAt,
  timesTo,
} from './counts.ts';
import { isStock, isTakenFrom } from './left-over.ts';
import {
  isIceOf,
  isIncluded,
  isInstead,
  isPutIn,
  isTaken,
  mayBeLye,
  ofIt,
  ofWhich,
  onlyNameBetween,
  spokenOf,
} from './of-it.ts';
import {
  barsBefore,
  barsNear,
  isBarWeight,
  isCutAt,
  isEachPiece,
  isInTitle,
  isLogged,
  isOfThem,
  isOneOfBars,
  isOnePiece,
  isPieceWeight,
  isSoapWeight,
  netAt,
  weightsBehind,
} from './piece-weights.ts';
import {
  digitsMixed,
  isAllOfIt,
  isApart,
  isBalance,
  isBracketedAgain,
  isChange,
  isForThe,
  isLoneSum,
  isMeantAgain,
  isNumberAgain,
  isOutcome,
  isReference,
  isShareAgain,
  isShareChanged,
  isSizeBefore,
  isStatedSum,
  saidInARow,
} from './said-again.ts';
import {
  isEmptyPot,
  isHeld,
  isHoleSize,
  isHollow,
  isLabelled,
  isLoaf,
  isManyOf,
  isMouldFor,
  isPack,
  isScale,
  isScaleStep,
  isSizeOf,
  isVessel,
  mouldNear,
  rangeOfScale,
  vesselAt,
} from './vessels.ts';

export function setAside(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  const aside = (k: number, reason: string): void => {
    const token = (out ?? tokens)[k];
    // a vessel does not go in
    if (token?.t !== 'quantity' || (reason === packed && isPutIn(tokens, k))) return;
    out ??= [...tokens];
    out[k] = asAside(token, reason);
  };
  const filler = (k: number): void => {
    const token = tokens[k];
    out ??= [...tokens];
    if (token) out[k] = asFiller(token);
  };
  const name = (k: number, meaning: Meaning): void => {
    const token = tokens[k];
    if (token?.t !== 'word') return;
    out ??= [...tokens];
    out[k] = { t: 'name', from: token.from, to: token.to, text: token.text, meaning, how: 'name', meant: meaning.id };
  };
  const { figures } = signals;
  const weighed = figures.some((k) => isWeight(tokens[k]));
  const has = (bit: number): boolean => (signals.all & bit) !== 0;
  const [speaksOfIt, stored, paid] = [has(signal.ofIt), has(signal.store), has(signal.selling | signal.price)];
  const [parted, including, vessels] = [has(signal.parting), has(signal.including), has(signal.mould)];
  const pieces = has(signal.bars);
  const solution = has(signal.stock) && tokens.some((token) => token.t === 'name' && token.meaning.kind === 'stock');
  // rules for which it does not matter what stands right beside a figure
  const isBeyondRow = (k: number): boolean =>
    (vessels && givesNear(signals, k, signal.mould, mouldNear)) ||
    (pieces && givesNear(signals, k, signal.bars, barsNear)) ||
    (stored && (givesAround(signals, k, signal.store) || saysAround(signals, k, cue.pot)));
  let settled = -1;
  for (const k of figures) {
    const token = tokens[k];
    // most figures of a list have no word before them
    const told = tokens[k - 1]?.t === 'word';
    if (priced(token)) {
      for (const found of [reach(tokens, k, -1), reach(tokens, k, 1), costOf(tokens, k), boughtOf(tokens, k)])
        if (found !== null && !isOwnWeight(tokens, found)) aside(found, 'the size of what was bought');
    } else if (token?.t !== 'quantity') continue;
    else if (isADay(tokens, k)) aside(k, 'a count');
    else if (isDose(tokens, k)) aside(k, 'how much a wash takes');
    else if (token.quantity.dim === 'bare') {
      if (weighed && isYear(token)) aside(k, 'a year');
      if (told && paid && isPaid(tokens, k, token)) aside(k, 'a price');
      if (told && isForThe(tokens, k, token)) aside(k, 'said before');
      const of = tokens[k + 1];
      // "page 11 of 38"
      if (of?.t === 'word' && of.text === 'of' && isPageCount(tokens, k)) aside(k + 2, 'a count');
      if (isOfPages(tokens, k) || isOften(tokens, k, token) || isOfTask(tokens, k, token)) aside(k, 'a count');
      if (told && parted && isPortion(tokens, k, token)) aside(k, 'a count');
      if (!told && isStatedSum(tokens, k, token)) aside(k, 'a total that agrees');
      // "CI 77007 2 g": a colour by its number in the index
      if (told && /^c[il]$/.test(wordAt(tokens, k - 1)) && /^[1-7]\d{4}$/.test(token.quantity.text)) {
        aside(k, 'the number of a colour');
        name(k - 1, { kind: 'additive', id: 'pigment' });
      }
      if (isEggs(tokens, k, token)) aside(k, 'a count');
      if (!told && (isWorth(tokens, k) || isLot(tokens, k, token) || isOfReaction(tokens, k, token)))
        aside(k, 'a count');
      const x = oftenAt(tokens, k, token);
      if (x >= 0) {
        aside(k, 'a count');
        filler(x);
      }
      if (told && isOutOf(tokens, k)) aside(k, 'a count');
      if (isNumberOfBatch(tokens, k, token)) aside(k, 'the number of a batch');
      const factor = timesTo(tokens, k, token);
      if (factor >= 0) {
        for (const at of [k, factor]) aside(at, 'a total that agrees');
        filler(k + 1);
      }
      if (isManyKinds(tokens, k, token)) aside(k, 'a count');
      if (isDistance(tokens, k)) aside(k, 'a distance');
      if (isHour(tokens, k)) aside(k, 'a time of day');
      if (isPoint(tokens, k, token)) aside(k, 'a count');
      if (isOfBar(tokens, k, token)) aside(k, 'a value out of a chart');
      if (told && isScaleStep(tokens, k, token)) aside(k, 'what a scale shows');
      if (isMeltPoint(tokens, k, token)) {
        out ??= [...tokens];
        out[k] = { ...token, quantity: { ...token.quantity, dim: 'temperature' } };
      }
      if (((told || isMark(tokens[k - 1], ',')) && isCounted(tokens, k, token)) || isOfGarden(tokens, k, token))
        aside(k, 'a count');
      if (isNumberAgain(tokens, k, token)) aside(k, 'said before');
      const digit = told ? digitsMixed(tokens, k) : -1;
      if (digit >= 0) for (const at of [k, digit]) aside(at, 'said before');
      if (told && (isShareAgain(tokens, k, token) || isShareChanged(tokens, k, token))) aside(k, 'said before');
    } else if (token.quantity.dim === 'parts') {
      if (parted && isShareOut(tokens, k, token)) aside(k, 'a count');
    } else if (isMeasured(token)) {
      if (isInRow(tokens, k) && !isBeyondRow(k)) continue;
      if (isScale(tokens, k, token)) aside(k, 'what a scale takes');
      const range = rangeOfScale(tokens, k, token);
      if (range !== null) {
        for (const at of [k, range + 1]) aside(at, 'what a scale takes');
        filler(range);
      }
      if (told && isPoundsPaid(tokens, k, token)) aside(k, 'a price');
      if (
        isEmptyPot(tokens, k) ||
        isPack(tokens, k, token) ||
        (told && (isHeld(tokens, k, token) || isLabelled(tokens, k))) ||
        isSizeOf(tokens, k, token)
      )
        aside(k, packed);
      const vessel = tokens[k + 1]?.t === 'word' ? vesselAt(tokens, k, token) : null;
      if (vessel !== null) {
        aside(k, packed);
        for (let at = k + 1; at < vessel; at++) filler(at);
      }
      const whole =
        speaksOfIt && ofIt(tokens, k, token) && !isInstead(tokens, k + 3) && !mayBeLye(tokens, k)
          ? spokenOf(tokens, k, token.quantity, solution)
          : null;
      if (whole !== null && !isTaken(tokens, k)) aside(k, 'a part of what was said');
      else if (whole !== null && onlyNameBetween(tokens, whole, k)) aside(whole, packed);
      const held = speaksOfIt ? ofWhich(tokens, k, token) : null;
      const all = held === null ? undefined : tokens[held];
      if (held !== null && all?.t === 'quantity') {
        out ??= [...tokens];
        // the part stands where the whole stood, beside the name
        out[held] = { ...all, quantity: token.quantity };
        out[k] = { t: 'aside', from: token.from, to: token.to, reason: packed, numbers: all.quantity.numbers };
        continue;
      }
      if (told && (isPieceWeight(tokens, k, token) || isOnePiece(tokens, k, token) || isCutAt(tokens, k, token)))
        aside(k, 'the weight of one bar');
      if (isOfThem(tokens, k, token)) aside(k, 'the weight of one bar');
      if (!told && isInTitle(tokens, k, token)) aside(k, 'the weight of one bar');
      if (isSoapWeight(tokens, k, token) || isLogged(tokens, k, token)) aside(k, 'what came out of the mould');
      const net = told || isMark(tokens[k - 1], '.:(/') ? netAt(tokens, k, token) : -1;
      if (net >= 0) {
        aside(k, 'the weight of one bar');
        for (let at = net; at < k; at++) if (tokens[at]?.t === 'word') filler(at);
      }
      if (vessels && (isHoleSize(tokens, k, token) || isLoaf(tokens, k, token))) aside(k, packed);
      if (isHollow(tokens, k, token) || isMouldFor(tokens, k)) aside(k, packed);
      const bars = pieces ? barsBefore(tokens, k) : -1;
      if (bars > settled && isBarWeight(tokens, k, token, bars)) {
        aside(k, 'the weight of one bar');
        if (isWord(tokens[k - 1], 'x')) filler(k - 1);
        // "98 g and 103 g", "4.2 oz wet / 3.6 oz after 6 weeks"
        for (const also of weightsBehind(tokens, k)) aside(also, 'the weight of one bar');
        settled = bars;
      }
      if (isBracketedAgain(tokens, k, token) || (told && isMeantAgain(tokens, k, token))) aside(k, 'said before');
      if (told && isSizeBefore(tokens, k, token)) aside(k, 'of another size');
      if (isStock(tokens, k, token, stored ? signals : null)) aside(k, 'what is left of a pack');
      if (told && isTakenFrom(tokens, k, token)) aside(k, packed);
      if (told && (isReference(tokens, k, token) || isAllOfIt(tokens, k, token) || isChange(tokens, k, token)))
        aside(k, 'said before');
      if (told && isManyOf(tokens, k, token)) aside(k, packed);
      if (isOneOfBars(tokens, k, token)) {
        aside(k, 'the weight of one bar');
        filler(k - 1);
      }
      if (isEachColour(tokens, k, token)) aside(k, 'of a colour');
      if (isEachPiece(tokens, k, token)) aside(k, 'what came out of the mould');
      if (told && isVessel(tokens, k, token)) aside(k, packed);
      if (isApart(tokens, k, token)) aside(k, 'a difference');
      if ((told || isMark(tokens[k - 1], ',')) && isOutcome(tokens, k, token)) aside(k, 'what came out of the mould');
      if (!told && isBalance(tokens, k, token)) aside(k, 'what came out of the mould');
      if (!told && (isStatedSum(tokens, k, token) || isLoneSum(tokens, k, token))) aside(k, 'a total that agrees');
      if ((including || speaksOfIt) && isIncluded(tokens, k, token)) aside(k, 'a part of what was said');
      const again = isMark(tokens[k + 1], ',/+') ? saidInARow(tokens, k) : 0;
      for (let at = k, left = again; left > 0; at++) {
        if (!isWeight(tokens[at])) continue;
        aside(at, 'the same in another unit');
        left--;
      }
      if (isIceOf(tokens, k, token)) aside(k, 'a part of what was said');
      const same = conversionOf(tokens, k, token);
      if (same !== null) for (const one of [k, same]) aside(one, 'what a unit is in another');
    }
  }
  return out ?? tokens;
}

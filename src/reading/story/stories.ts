/** What notes and stories around a list say of its rows, one rule after the other. */

import { missingSaid } from '../figures/missing-said.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import type { Token } from '../words/tokens.ts';
import { advised } from './advised.ts';
import { anotherFat } from './another-fat.ts';
import { anotherOfIt } from './another-of-it.ts';
import { beforeAndAfter } from './before-and-after.ts';
import { besidePot } from './beside-pot.ts';
import { boiledDown } from './boiled-down.ts';
import { bothIn } from './both-in.ts';
import { bowlReadings } from './bowl-readings.ts';
import { brokenOff } from './broken-off.ts';
import { broughtTo } from './brought-to.ts';
import { byDifference } from './by-difference.ts';
import { byRule } from './by-rule.ts';
import { byRuleWeighed } from './by-rule-weighed.ts';
import { bySoMuch } from './by-so-much.ts';
import { confirmed } from './confirmed.ts';
import { countedIn } from './counted-in.ts';
import { declined } from './declined.ts';
import { drawnOfIt } from './drawn-of-it.ts';
import { fatsTimes } from './fats-times.ts';
import { fewerThere } from './fewer-there.ts';
import { filledBy } from './filled-by.ts';
import { forAnother } from './for-another.ts';
import { fromBlend } from './from-blend.ts';
import { fromTheirs } from './from-theirs.ts';
import type { Heard } from './heard.ts';
import { inExchange } from './in-exchange.ts';
import { inGoes } from './in-goes.ts';
import { inItsStead } from './in-its-stead.ts';
import { inPours } from './in-pours.ts';
import { inTwice } from './in-twice.ts';
import { lastTimes } from './last-time.ts';
import { leftOfFull } from './left-of-full.ts';
import { leftStanding } from './left-standing.ts';
import { leftWithout } from './left-without.ts';
import { lessAfterLoss } from './less-after-loss.ts';
import { lessItsVessel } from './less-its-vessel.ts';
import { lessThanMould } from './less-than-mould.ts';
import { liquidInstead } from './liquid-instead.ts';
import { liquidParted } from './liquid-parted.ts';
import { madeGood } from './made-good.ts';
import { madeUpTo } from './made-up-to.ts';
import { neitherIn } from './neither.ts';
import { neverIn } from './never-in.ts';
import { noMoreOfIt } from './no-more-of-it.ts';
import { notOfPot } from './not-of-pot.ts';
import { notThatAlkali } from './not-that-alkali.ts';
import { notThisBatch } from './not-this-batch.ts';
import { ofEachAlike } from './of-each-alike.ts';
import { ofItsKind } from './of-its-kind.ts';
import { ofItsPack } from './of-its-pack.ts';
import { offBlock } from './off-block.ts';
import { oneTimes } from './one-times.ts';
import { onlySoMuch } from './only-so-much.ts';
import { onlyThese } from './only-these.ts';
import { onlyUse } from './only-use.ts';
import { otherAlkali } from './other-alkali.ts';
import { otherPack } from './other-pack.ts';
import { otherWayRound } from './other-way-round.ts';
import { otherWeighed } from './other-weighed.ts';
import { othersLye } from './others-lye.ts';
import { othersPair } from './others-pair.ts';
import { othersTake } from './others-take.ts';
import { outAndIn } from './out-and-in.ts';
import { saidOutright } from './outright.ts';
import { packEmptied } from './pack-emptied.ts';
import { paperOrPot } from './paper-or-pot.ts';
import { partedOut } from './parted-out.ts';
import { partsTold } from './parts-told.ts';
import { partsWent } from './parts-went.ts';
import { perVessel } from './per-vessel.ts';
import { planAndDeed } from './plan-and-deed.ts';
import { plannedAlkali } from './planned-alkali.ts';
import { putAnew } from './put-anew.ts';
import { putBack } from './put-back.ts';
import { reckonedAnew } from './reckoned-anew.ts';
import { restOfAnother } from './rest-of-another.ts';
import { rowNamed } from './row-named.ts';
import { runningWeights } from './running-weights.ts';
import { sameFats } from './same-fats.ts';
import { sameIn } from './same-in.ts';
import { saysLye } from './says-lye.ts';
import { soItWas } from './so-it-was.ts';
import { solutionPoured } from './solution-poured.ts';
import { spiltOf, spiltOn } from './spilt.ts';
import { stayedBehind } from './stayed-behind.ts';
import { stockTaken } from './stock-taken.ts';
import { stockWeighed } from './stock-weighed.ts';
import { stoppedShort } from './stopped-short.ts';
import { strained } from './strained.ts';
import { summedUp } from './summed-up.ts';
import { takenOther } from './taken-other.ts';
import { tareReckoned } from './tare-reckoned.ts';
import { thinnedLater } from './thinned-later.ts';
import { toldAndMine } from './told-and-mine.ts';
import { tooMuchIn } from './too-much-in.ts';
import { totalPerVessel } from './total-per-vessel.ts';
import { trueFigure } from './true-figure.ts';
import { twoLots } from './two-lots.ts';
import { twoPots } from './two-pots.ts';
import { waterHeld } from './water-held.ts';
import { weighedAgain } from './weighed-again.ts';
import { weightBehind } from './weight-behind.ts';
import { wentFrom } from './went-from.ts';
import { wentInLess } from './went-in.ts';
import { wholeTold } from './whole-told.ts';
import { withBoth } from './with-both.ts';
import { withVessel } from './with-vessel.ts';
import { zeroDropped } from './zero-dropped.ts';

/** A post of more tokens is no story around one list; each name of a story is looked up among all its rows. */
const longestStory = 1500;

type Rule = (cut: Cut) => Heard | readonly Token[];

/** In the order in which they are asked. */
const rules: readonly Rule[] = [
  zeroDropped,
  ({ tokens }) => missingSaid(tokens),
  strained,
  thinnedLater,
  otherWeighed,
  weightBehind,
  ofEachAlike,
  fatsTimes,
  othersLye,
  planAndDeed,
  plannedAlkali,
  fewerThere,
  notThatAlkali,
  wentFrom,
  soItWas,
  lastTimes,
  neitherIn,
  neverIn,
  byRuleWeighed,
  declined,
  sameIn,
  onlyUse,
  fromTheirs,
  othersTake,
  reckonedAnew,
  advised,
  beforeAndAfter,
  saysLye,
  bySoMuch,
  rowNamed,
  boiledDown,
  otherWayRound,
  paperOrPot,
  twoLots,
  stayedBehind,
  leftOfFull,
  onlySoMuch,
  fromBlend,
  inGoes,
  inPours,
  anotherOfIt,
  broughtTo,
  packEmptied,
  offBlock,
  putBack,
  madeUpTo,
  withBoth,
  toldAndMine,
  takenOther,
  tareReckoned,
  lessThanMould,
  tooMuchIn,
  wholeTold,
  drawnOfIt,
  liquidInstead,
  liquidParted,
  waterHeld,
  solutionPoured,
  bowlReadings,
  runningWeights,
  confirmed,
  otherPack,
  notThisBatch,
  spiltOn,
  spiltOf,
  partsWent,
  ofItsPack,
  byDifference,
  partedOut,
  stoppedShort,
  sameFats,
  oneTimes,
  perVessel,
  totalPerVessel,
  byRule,
  twoPots,
  bothIn,
  summedUp,
  partsTold,
  stockWeighed,
  stockTaken,
  weighedAgain,
  besidePot,
  notOfPot,
  ({ tokens }) => brokenOff(tokens),
  otherAlkali,
  withVessel,
  lessItsVessel,
  saidOutright,
  countedIn,
  anotherFat,
  inExchange,
  inItsStead,
  outAndIn,
  filledBy,
  restOfAnother,
  forAnother,
  trueFigure,
  othersPair,
  onlyThese,
  leftWithout,
  ofItsKind,
  lessAfterLoss,
  noMoreOfIt,
  putAnew,
  leftStanding,
  inTwice,
  madeGood,
];

interface HeardOut extends Required<Heard> {
  /** The tokens as they were before some of a weight was told to have gone in. */
  readonly listed: readonly Token[];
}

export function heardOut({ tokens, prims, words }: Cut): HeardOut {
  const told: PutRight[] = [];
  let unheard: string | null = null;
  const after = (of: readonly Token[], rule: Rule): readonly Token[] => {
    const heard = rule({ tokens: of, prims, words });
    if (!('told' in heard)) return heard;
    told.push(...heard.told);
    unheard ??= heard.unheard ?? null;
    return heard.tokens;
  };
  if (tokens.length > longestStory) {
    const broken = after(tokens, ({ tokens: of }) => brokenOff(of));
    return { tokens: broken, listed: broken, told, unheard };
  }
  const listed = rules.reduce(after, tokens);
  return { tokens: after(listed, wentInLess), listed, told, unheard };
}

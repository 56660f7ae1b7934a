/** What notes and stories around a list say of its rows, one rule after the other. */

import type { PutRight } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import type { Token } from '../words/tokens.ts';
import { anotherFat } from './another-fat.ts';
import { besidePot } from './beside-pot.ts';
import { boiledDown } from './boiled-down.ts';
import { bowlReadings } from './bowl-readings.ts';
import { brokenOff } from './broken-off.ts';
import { byDifference } from './by-difference.ts';
import { byRule } from './by-rule.ts';
import { byRuleWeighed } from './by-rule-weighed.ts';
import { confirmed } from './confirmed.ts';
import { countedIn } from './counted-in.ts';
import { inExchange } from './in-exchange.ts';
import { inGoes } from './in-goes.ts';
import { inTwice } from './in-twice.ts';
import { leftOfFull } from './left-of-full.ts';
import { leftStanding } from './left-standing.ts';
import { liquidParted } from './liquid-parted.ts';
import { madeGood } from './made-good.ts';
import { madeUpTo } from './made-up-to.ts';
import { notOfPot } from './not-of-pot.ts';
import { notThisBatch } from './not-this-batch.ts';
import { oneTimes } from './one-times.ts';
import { onlySoMuch } from './only-so-much.ts';
import { onlyThese } from './only-these.ts';
import { otherAlkali } from './other-alkali.ts';
import { otherPack } from './other-pack.ts';
import { otherWayRound } from './other-way-round.ts';
import { saidOutright } from './outright.ts';
import { paperOrPot } from './paper-or-pot.ts';
import { partedOut } from './parted-out.ts';
import { partsTold } from './parts-told.ts';
import { partsWent } from './parts-went.ts';
import { perVessel } from './per-vessel.ts';
import { putBack } from './put-back.ts';
import { rowNamed } from './row-named.ts';
import { sameFats } from './same-fats.ts';
import { solutionPoured } from './solution-poured.ts';
import { spiltOf } from './spilt.ts';
import { stockTaken } from './stock-taken.ts';
import { stockWeighed } from './stock-weighed.ts';
import { stoppedShort } from './stopped-short.ts';
import { summedUp } from './summed-up.ts';
import { twoLots } from './two-lots.ts';
import { twoPots } from './two-pots.ts';
import { waterHeld } from './water-held.ts';
import { weighedAgain } from './weighed-again.ts';
import { wentInLess } from './went-in.ts';
import { withVessel } from './with-vessel.ts';

/** A post of more tokens is no story around one list; each name of a story is looked up among all its rows. */
const longestStory = 1500;

interface HeardOut {
  readonly tokens: readonly Token[];
  /** As they were before some of a weight was told to have gone in. */
  readonly listed: readonly Token[];
  readonly told: readonly PutRight[];
  readonly unheard: string | null;
}

export function heardOut({ tokens, prims, words }: Cut): HeardOut {
  const cutOf = (of: readonly Token[]): Cut => ({ tokens: of, prims, words });
  if (tokens.length > longestStory) {
    const broken = brokenOff(tokens);
    return { tokens: broken.tokens, listed: broken.tokens, told: broken.told, unheard: broken.unheard };
  }
  const named = rowNamed(cutOf(tokens));
  const boiled = boiledDown(cutOf(named.tokens));
  const round = otherWayRound(cutOf(boiled.tokens));
  const paper = paperOrPot(cutOf(round.tokens));
  const lots = twoLots(cutOf(paper.tokens));
  const full = leftOfFull(cutOf(lots.tokens));
  const weighed = byRuleWeighed(cutOf(full.tokens));
  const soMuch = onlySoMuch(cutOf(weighed.tokens));
  const goes = inGoes(cutOf(soMuch.tokens));
  const over = putBack(cutOf(goes.tokens));
  const topped = madeUpTo(cutOf(over.tokens));
  const liquid = liquidParted(cutOf(topped.tokens));
  const poured = solutionPoured(cutOf(liquid.tokens));
  const bowl = bowlReadings(cutOf(poured.tokens));
  const settled = confirmed(cutOf(bowl.tokens));
  const pure = otherPack(cutOf(settled.tokens));
  const slips = notThisBatch(cutOf(pure.tokens));
  const spilt = spiltOf(cutOf(slips.tokens));
  const held = waterHeld(cutOf(spilt.tokens));
  const went = partsWent(cutOf(held.tokens));
  const difference = byDifference(cutOf(went.tokens));
  const parted = partedOut(cutOf(difference.tokens));
  const stopped = stoppedShort(cutOf(parted.tokens));
  const same = sameFats(cutOf(stopped.tokens));
  const times = oneTimes(cutOf(same.tokens));
  const vessels = perVessel(cutOf(times.tokens));
  const ruled = byRule(cutOf(vessels.tokens));
  const pots = twoPots(cutOf(ruled.tokens));
  const summed = summedUp(cutOf(pots.tokens));
  const parts = partsTold(cutOf(summed.tokens));
  const beside = besidePot(cutOf(weighedAgain(cutOf(stockTaken(cutOf(stockWeighed(cutOf(parts.tokens))))))));
  const broken = brokenOff(notOfPot(cutOf(beside.tokens)));
  const alkali = otherAlkali(cutOf(broken.tokens));
  const tared = withVessel(cutOf(alkali.tokens));
  const outright = saidOutright(cutOf(tared.tokens));
  const another = anotherFat(cutOf(countedIn(cutOf(outright.tokens))));
  const exchange = inExchange(cutOf(another.tokens));
  const these = onlyThese(cutOf(exchange.tokens));
  const standing = leftStanding(cutOf(these.tokens));
  const twice = inTwice(cutOf(standing.tokens));
  const good = madeGood(cutOf(twice.tokens));
  const rested = wentInLess(cutOf(good.tokens));
  return {
    tokens: rested.tokens,
    listed: good.tokens,
    told: [
      named,
      boiled,
      round,
      paper,
      lots,
      full,
      weighed,
      soMuch,
      goes,
      over,
      topped,
      liquid,
      poured,
      bowl,
      settled,
      pure,
      slips,
      spilt,
      held,
      went,
      difference,
      parted,
      stopped,
      same,
      times,
      vessels,
      ruled,
      pots,
      summed,
      parts,
      beside,
      broken,
      alkali,
      tared,
      outright,
      another,
      exchange,
      these,
      standing,
      twice,
      good,
      rested,
    ].flatMap(({ told }) => told),
    unheard:
      named.unheard ??
      round.unheard ??
      full.unheard ??
      over.unheard ??
      poured.unheard ??
      bowl.unheard ??
      settled.unheard ??
      vessels.unheard ??
      broken.unheard ??
      tared.unheard ??
      another.unheard ??
      exchange.unheard ??
      these.unheard ??
      standing.unheard ??
      twice.unheard ??
      good.unheard,
  };
}

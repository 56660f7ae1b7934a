import { applyColumns, type HeadUnits, headUnits } from './columns/columns.ts';
import { shareColumn } from './columns/share-column.ts';
import { oneOfTwins } from './columns/twin-columns.ts';
import { unitColumns } from './columns/unit-columns.ts';
import { unitsMeant } from './columns/units-meant.ts';
import { cutOf, type InWords, type Reader, type Scanned } from './cut.ts';
import { leftOpen } from './doubt/left-open.ts';
import { portionUnheard } from './doubt/portions.ts';
import { type InPot, potDiffers } from './doubt/pot-differs.ts';
import { toldOtherwise } from './doubt/told-otherwise.ts';
import { unheardChange } from './doubt/unheard-change.ts';
import { unsureOf } from './doubt/unsure-of.ts';
import { unweighed } from './doubt/unweighed.ts';
import { weighedApart } from './doubt/weighed-apart.ts';
import { afterPhrases, superfatBy } from './figures/after.ts';
import { alsoWarm } from './figures/also-warm.ts';
import { asMuch } from './figures/as-much.ts';
import { behindColon } from './figures/behind-colon.ts';
import { byTheKilo } from './figures/by-the-kilo.ts';
import { byVolume } from './figures/by-volume.ts';
import { conversions } from './figures/conversions.ts';
import { endOfCook, looksOfPot } from './figures/cook.ts';
import { drawnFrom, forSoap } from './figures/drawn-from.ts';
import { elsewise } from './figures/elsewise.ts';
import { evenLye } from './figures/even-lye.ts';
import { forBatch } from './figures/for-batch.ts';
import { fromVessel } from './figures/from-vessel.ts';
import { goesOnIt } from './figures/goes-on-it.ts';
import { heldBack } from './figures/held-back.ts';
import { iceOfWater } from './figures/ice-of-water.ts';
import { inItsPlace } from './figures/in-its-place.ts';
import { leaveStore } from './figures/in-store.ts';
import { inTwoVessels } from './figures/in-two-vessels.ts';
import { keptFor } from './figures/kept-for.ts';
import { keptSolution } from './figures/kept-solution.ts';
import { kindChosen } from './figures/kind-chosen.ts';
import { kindTold } from './figures/kind-told.ts';
import { lateIn } from './figures/late-in.ts';
import { laterWater } from './figures/later-water.ts';
import { lyeFree } from './figures/lye-free.ts';
import { lyeOnFats } from './figures/lye-on-fats.ts';
import { headsAlkalis, headsLiquid, partsOfWater, strengthToo } from './figures/lye-water.ts';
import { massSign } from './figures/mass-sign.ts';
import { measuresSum } from './figures/measures-sum.ts';
import { melted } from './figures/melted.ts';
import { halfAndHalf, milkOfWater } from './figures/milk-of-water.ts';
import { namedBefore } from './figures/named-before.ts';
import { nearlyDone } from './figures/nearly-done.ts';
import { ofPlace } from './figures/of-place.ts';
import { ofTheFlakes } from './figures/of-the-flakes.ts';
import { otherUses } from './figures/other-use.ts';
import { packOfLye } from './figures/pack-of-lye.ts';
import { barsOfIt, countPacks, manyOfIt, sizedPacks, takeParts } from './figures/packs.ts';
import { partsOfPacks, wholePacks } from './figures/part-of-pack.ts';
import { partSaid } from './figures/part-said.ts';
import { partWeighs } from './figures/part-weighs.ts';
import { perFats } from './figures/per-fats.ts';
import { centsFor, costLines, poundsPaid, priceLines, usedOfPacks } from './figures/prices.ts';
import { puritySort } from './figures/purity-sort.ts';
import { reckoned } from './figures/reckoned.ts';
import { rendered } from './figures/rendered.ts';
import { scentCalled } from './figures/scent-called.ts';
import { setAside } from './figures/set-aside.ts';
import { shareCorrected } from './figures/share-corrected.ts';
import { shifted } from './figures/shifted.ts';
import { standsIn } from './figures/stands-in.ts';
import { steeped } from './figures/steeped.ts';
import { asSolution, mixedOnce, rates, stockStrength } from './figures/stock.ts';
import { superfatNow } from './figures/superfat-now.ts';
import { tares } from './figures/tare.ts';
import { timetables } from './figures/timetable.ts';
import { forVessel } from './figures/vessels.ts';
import { warmAt } from './figures/warm-at.ts';
import { washedWith } from './figures/washed-with.ts';
import { waterInAll } from './figures/water-in-all.ts';
import { whatWasLeft } from './figures/what-was-left.ts';
import { wholly } from './figures/wholly.ts';
import { equalParts, fractionShares, fractionsEach, partsOn, shareBase } from './figures/worded-shares.ts';
import { dashed, unitsBefore, weighsSo } from './figures/written-figures.ts';
import { answered } from './rows/answered.ts';
import { askedApart, hydroxideMeant, sodaMeant } from './rows/asked.ts';
import type { Cuts } from './rows/bind.ts';
import { asBlend } from './rows/blend.ts';
import { dissolvedInWater } from './rows/dissolved-in.ts';
import { filledUp } from './rows/filled-up.ts';
import { drawnIn } from './rows/infused.ts';
import { type Item, itemsOf } from './rows/items.ts';
import { pairParallel, totalOfShares } from './rows/parallel.ts';
import { proportions } from './rows/proportions.ts';
import { totalBehindRest, upToWhole } from './rows/rest.ts';
import { soapOfOne } from './rows/soap-of-one.ts';
import { addUp, breakDown, takeOff } from './rows/sums.ts';
import { underLye } from './rows/under-lye.ts';
import { lessThere } from './story/less-there.ts';
import { moved } from './story/moved.ts';
import { partMade } from './story/part-made.ts';
import { partOfIt } from './story/part-of-it.ts';
import { rivals } from './story/rivals.ts';
import { heardOut } from './story/stories.ts';
import { whatStays } from './story/what-stays.ts';
import { type PutRight, putRight } from './taken-back/put-right.ts';
import { rightAhead } from './taken-back/right-ahead.ts';
import { secondThoughts } from './taken-back/second-thoughts.ts';
import { wasLast } from './taken-back/was-last.ts';
import { signal } from './words/signal-words.ts';
import { type Signals, signalsOf } from './words/signals.ts';
import type { Token } from './words/tokens.ts';

/** A text cut into names and amounts, before anything is bound: of a post, an answer or a correction. */
export interface Cut extends Scanned {
  readonly items: readonly Item[];
  readonly units: HeadUnits;
  /** What the post takes back. */
  readonly back: readonly PutRight[];
  /** Words that take something back, and nobody knows what. */
  readonly unheard: string | null;
  /** Words that tell of a change which no rule heard; where one did, of lye that was lost; what is only asked left out. */
  readonly unheardChange: (isHeard: boolean, isAsked: boolean, pot: InPot) => string | null;
  /** How the items may be bound, as far as that was asked. */
  readonly cuts: Cuts | null;
}

/** A rule of figures that has no signal of its own. */
const always = 0;

/** What neighbours say of a figure, one after the other; each where one of its signals stands in the post. */
export const passes: readonly (readonly [(tokens: readonly Token[], signals: Signals) => readonly Token[], number])[] =
  [
    [dashed, signal.negative],
    [weighsSo, always],
    [massSign, signal.equals],
    [measuresSum, always],
    [puritySort, signal.percent],
    [scentCalled, always],
    [shifted, signal.retelling],
    [iceOfWater, always],
    [evenLye, always],
    [halfAndHalf, always],
    [milkOfWater, always],
    [partsOfWater, always],
    [waterInAll, always],
    [strengthToo, signal.percent],
    [headsLiquid, signal.for],
    [headsAlkalis, always],
    [goesOnIt, always],
    [forBatch, signal.for],
    [forVessel, signal.for],
    [washedWith, always],
    [partWeighs, always],
    [partSaid, signal.part],
    [keptFor, always],
    [keptSolution, signal.ofIt],
    [tares, always],
    [reckoned, always],
    [rendered, always],
    [steeped, always],
    [asMuch, always],
    [inTwoVessels, signal.both],
    [timetables, always],
    [melted, always],
    [kindChosen, always],
    [kindTold, always],
    [shareCorrected, signal.percent],
    [elsewise, always],
    [nearlyDone, always],
    [ofPlace, always],
    [otherUses, always],
    [lyeFree, always],
    [byVolume, always],
    [alsoWarm, always],
    [warmAt, always],
    [looksOfPot, signal.cooking],
    [afterPhrases, signal.following],
    [superfatBy, always],
    [endOfCook, signal.cooking],
    [lateIn, always],
    [heldBack, signal.ofIt],
    [laterWater, signal.thinning],
    [inItsPlace, signal.retelling],
    [takeParts, signal.part],
    [partsOfPacks, signal.part],
    [wholePacks, signal.ofIt],
    [barsOfIt, always],
    [rates, signal.every],
    [perFats, signal.every],
    [centsFor, signal.for],
    [costLines, signal.price],
    [priceLines, signal.equals],
    [poundsPaid, always],
    [usedOfPacks, signal.using],
    [packOfLye, signal.asking],
    [fromVessel, always],
    [standsIn, always],
    [whatWasLeft, signal.ofIt],
    [leaveStore, signal.buying | signal.keeping | signal.price],
    [lyeOnFats, always],
    [byTheKilo, always],
    [drawnFrom, signal.ofIt],
    [forSoap, always],
    [ofTheFlakes, always],
    [namedBefore, signal.ofIt | signal.using],
    [behindColon, always],
    [sizedPacks, always],
    [manyOfIt, always],
    [setAside, always],
    [countPacks, always],
    // what `rates` made is a share, too
    [shareBase, always],
    [equalParts, signal.equal],
    [fractionsEach, always],
    [partsOn, always],
    [wholly, signal.percent],
    [upToWhole, always],
    [stockStrength, signal.ratio],
    [mixedOnce, signal.stock],
    [fractionShares, signal.part],
  ];

/** What rows of items mean together, one after the other. */
const shapes: readonly ((items: readonly Item[], tokens: readonly Token[]) => readonly Item[])[] = [
  drawnIn,
  answered,
  sodaMeant,
  soapOfOne,
  dissolvedInWater,
  underLye,
  asSolution,
  asBlend,
  filledUp,
  takeOff,
  addUp,
  breakDown,
  pairParallel,
  askedApart,
  proportions,
  totalOfShares,
  totalBehindRest,
];

/** `done`: the text as words, where it was cut before. */
export function itemize(reader: Reader, input: string, done: InWords | null = null): Cut {
  const { lexicon } = reader;
  const cut = done?.input === input ? done : cutOf(reader, input);
  const { text, disordered, struck, mended, prims } = cut;
  const twins = oneOfTwins(cut.tokens, prims, lexicon);
  const laid = unitsBefore(unitColumns(shareColumn(applyColumns(twins.tokens, lexicon, prims))), lexicon);
  const meant = unitsMeant({ tokens: laid, prims, words: cut.words }, lexicon);
  const story = heardOut({ tokens: meant.tokens, prims, words: cut.words });
  const stays = whatStays(story.tokens);
  const less = lessThere({ tokens: stays.tokens, prims, words: cut.words });
  const move = moved({ tokens: less.tokens, prims, words: cut.words }, story.listed);
  const share = partOfIt({ tokens: move.tokens, prims, words: cut.words }, story.listed);
  const made = partMade({ tokens: share.tokens, prims, words: cut.words });
  const rival = rivals({ tokens: made.tokens, prims, words: cut.words });
  let tokens = conversions(superfatNow({ tokens: rival.tokens, prims, words: cut.words }), lexicon);
  const signals = signalsOf(tokens, cut.words);
  for (const [pass, needed] of passes) if (needed === always || signals.all & needed) tokens = pass(tokens, signals);
  const ahead = rightAhead(hydroxideMeant(itemsOf(tokens, lexicon), tokens), tokens, signals);
  const before = wasLast(ahead.items, tokens);
  const right = putRight(before.items, tokens);
  const heard = secondThoughts(right.items, { tokens, prims, words: cut.words, signals }, [
    ...twins.told,
    ...meant.told,
    ...story.told,
    ...stays.told,
    ...ahead.back,
    ...before.back,
    ...less.told,
    ...move.told,
    ...share.told,
    ...made.told,
    ...rival.told,
    ...right.back,
  ]);
  let { items } = heard;
  for (const shape of shapes) items = shape(items, tokens);
  return {
    text,
    prims,
    mended,
    tokens,
    items,
    back: heard.back,
    unheard:
      heard.unheard ??
      story.unheard ??
      move.unheard ??
      share.unheard ??
      made.unheard ??
      rival.unheard ??
      ahead.unheard ??
      right.unheard,
    unheardChange: (isHeard, isAsked, pot) => {
      const told = { tokens, prims, words: cut.words };
      return (
        unheardChange(told, heard.back, isHeard, isAsked) ??
        unweighed(told, heard.back, pot) ??
        toldOtherwise(told, heard.back, pot) ??
        leftOpen(told, heard.back) ??
        potDiffers(told, heard.back, pot) ??
        weighedApart(told, heard.back) ??
        unsureOf(told, heard.back, pot, isHeard) ??
        portionUnheard(told, heard.back)
      );
    },
    cuts: heard.cuts,
    units: headUnits(tokens, lexicon, signals),
    disordered,
    struck,
  };
}

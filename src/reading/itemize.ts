import type { Catalogue } from '../catalogue/types.ts';
import { afterPhrases } from './after.ts';
import { alsoWarm } from './also-warm.ts';
import { answered } from './answered.ts';
import { asMuch } from './as-much.ts';
import { askedApart, hydroxideMeant, sodaMeant } from './asked.ts';
import type { Cuts } from './bind.ts';
import { asBlend } from './blend.ts';
import { byTheKilo } from './by-the-kilo.ts';
import { clean } from './clean.ts';
import { applyColumns, type HeadUnits, headUnits } from './columns.ts';
import { conversions } from './conversions.ts';
import { endOfCook, looksOfPot } from './cook.ts';
import { dissolvedInWater } from './dissolved-in.ts';
import { drawnFrom } from './drawn-from.ts';
import { elsewise } from './elsewise.ts';
import { filledUp } from './filled-up.ts';
import { heldBack } from './held-back.ts';
import { iceOfWater } from './ice-of-water.ts';
import { inItsPlace } from './in-its-place.ts';
import { leaveStore } from './in-store.ts';
import { inTwoVessels } from './in-two-vessels.ts';
import { drawnIn } from './infused.ts';
import { type Item, itemsOf } from './items.ts';
import { keptFor } from './kept-for.ts';
import { keptSolution } from './kept-solution.ts';
import { kindTold } from './kind-told.ts';
import { laterWater } from './later-water.ts';
import { layOut } from './layout.ts';
import { lessThere } from './less-there.ts';
import { wholeWords } from './letters.ts';
import type { Lexicon } from './lexicon.ts';
import { lyeFree } from './lye-free.ts';
import { lyeOnFats } from './lye-on-fats.ts';
import { headsLiquid, partsOfWater } from './lye-water.ts';
import { moved } from './moved.ts';
import { namedBefore } from './named-before.ts';
import { otherUses } from './other-use.ts';
import { packOfLye } from './pack-of-lye.ts';
import { countPacks, manyOfIt, sizedPacks, takeParts } from './packs.ts';
import { pairParallel, totalOfShares } from './parallel.ts';
import { partOfIt } from './part-of-it.ts';
import { partsOfPacks } from './part-of-pack.ts';
import { partSaid } from './part-said.ts';
import { perFats } from './per-fats.ts';
import { type InPot, potDiffers } from './pot-differs.ts';
import { centsFor, costLines, poundsPaid, priceLines, usedOfPacks } from './prices.ts';
import { proportions } from './proportions.ts';
import { type PutRight, putRight } from './put-right.ts';
import { reckoned } from './reckoned.ts';
import { rendered } from './rendered.ts';
import { totalBehindRest } from './rest.ts';
import { rightAhead } from './right-ahead.ts';
import { type Prim, scan } from './scan.ts';
import { scentCalled } from './scent-called.ts';
import { secondThoughts } from './second-thoughts.ts';
import { setAside } from './set-aside.ts';
import { shareColumn } from './share-column.ts';
import { shifted } from './shifted.ts';
import { signal } from './signal-words.ts';
import { type Signals, signalsOf } from './signals.ts';
import { withoutSpeakers } from './speakers.ts';
import type { Speller } from './spelling.ts';
import { asSolution, mixedOnce, rates, stockStrength } from './stock.ts';
import { heardOut } from './stories.ts';
import { addUp, breakDown, takeOff } from './sums.ts';
import { superfatNow } from './superfat-now.ts';
import { tares } from './tare.ts';
import { timetables } from './timetable.ts';
import { type Token, tokenize } from './tokens.ts';
import { toldOtherwise } from './told-otherwise.ts';
import { oneOfTwins } from './twin-columns.ts';
import { underLye } from './under-lye.ts';
import { unheardChange } from './unheard-change.ts';
import { unitColumns } from './unit-columns.ts';
import { unitsMeant } from './units-meant.ts';
import { wasLast } from './was-last.ts';
import { washedWith } from './washed-with.ts';
import { whatStays } from './what-stays.ts';
import { wholly } from './wholly.ts';
import { equalParts, fractionShares, partsOn, shareBase } from './worded-shares.ts';
import { dashed, unitsBefore } from './written-figures.ts';

export interface Reader {
  readonly lexicon: Lexicon;
  readonly speller: Speller;
  readonly catalogue: Catalogue;
  /** Of temperatures without a unit, where somebody has said so once for all. */
  readonly warmth?: '°C' | '°F';
}

/** A text cut into names and amounts, before anything is bound: of a post, an answer or a correction. */
export interface Cut {
  readonly text: string;
  readonly prims: readonly Prim[];
  /** Words or figures among them were mixed up, and have been made whole. */
  readonly mended: boolean;
  readonly tokens: readonly Token[];
  readonly items: readonly Item[];
  readonly units: HeadUnits;
  readonly disordered: boolean;
  readonly struck: readonly string[];
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
    [scentCalled, always],
    [shifted, signal.retelling],
    [iceOfWater, always],
    [partsOfWater, always],
    [headsLiquid, signal.for],
    [washedWith, always],
    [partSaid, signal.part],
    [keptFor, always],
    [keptSolution, signal.ofIt],
    [tares, always],
    [reckoned, always],
    [rendered, always],
    [asMuch, always],
    [inTwoVessels, signal.both],
    [timetables, always],
    [kindTold, always],
    [elsewise, always],
    [otherUses, always],
    [lyeFree, always],
    [alsoWarm, signal.temperature],
    [looksOfPot, signal.cooking],
    [afterPhrases, signal.following],
    [endOfCook, signal.cooking],
    [heldBack, signal.ofIt],
    [laterWater, signal.thinning],
    [inItsPlace, signal.retelling],
    [takeParts, signal.part],
    [partsOfPacks, signal.part],
    [rates, signal.every],
    [perFats, signal.every],
    [centsFor, signal.for],
    [costLines, signal.price],
    [priceLines, signal.equals],
    [poundsPaid, always],
    [usedOfPacks, signal.using],
    [packOfLye, signal.asking],
    [leaveStore, signal.buying | signal.keeping | signal.price],
    [lyeOnFats, always],
    [byTheKilo, always],
    [drawnFrom, signal.ofIt],
    [namedBefore, signal.ofIt | signal.using],
    [sizedPacks, always],
    [manyOfIt, always],
    [setAside, always],
    [countPacks, always],
    // what `rates` made is a share, too
    [shareBase, signal.percent | signal.every],
    [equalParts, signal.equal],
    [partsOn, always],
    [wholly, signal.percent],
    [stockStrength, signal.ratio],
    [mixedOnce, signal.stock],
    [fractionShares, signal.part],
  ];

/** What rows of items mean together, one after the other. */
const shapes: readonly ((items: readonly Item[], tokens: readonly Token[]) => readonly Item[])[] = [
  drawnIn,
  answered,
  sodaMeant,
  hydroxideMeant,
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

export function itemize(reader: Reader, input: string): Cut {
  const { lexicon, speller } = reader;
  const { text: plain, disordered, struck } = clean(input);
  const { text } = layOut(withoutSpeakers(plain, lexicon));
  const scanned = scan(text);
  const prims = wholeWords(scanned, lexicon);
  const cut = tokenize(prims, lexicon, speller);
  const twins = oneOfTwins(cut.tokens, prims, lexicon);
  const laid = unitsBefore(unitColumns(shareColumn(applyColumns(twins.tokens, lexicon, prims))), lexicon);
  const meant = unitsMeant({ tokens: laid, prims, words: cut.words }, lexicon);
  const story = heardOut({ tokens: meant.tokens, prims, words: cut.words });
  const stays = whatStays(story.tokens);
  const less = lessThere({ tokens: stays.tokens, prims, words: cut.words });
  const move = moved({ tokens: less.tokens, prims, words: cut.words }, story.listed);
  const share = partOfIt({ tokens: move.tokens, prims, words: cut.words }, story.listed);
  let tokens = conversions(superfatNow({ tokens: share.tokens, prims, words: cut.words }), lexicon);
  const signals = signalsOf(tokens, cut.words);
  for (const [pass, needed] of passes) if (needed === always || signals.all & needed) tokens = pass(tokens, signals);
  const ahead = rightAhead(itemsOf(tokens, lexicon), tokens, signals);
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
    ...right.back,
  ]);
  let { items } = heard;
  for (const shape of shapes) items = shape(items, tokens);
  return {
    text,
    prims,
    mended: prims !== scanned,
    tokens,
    items,
    back: heard.back,
    unheard: heard.unheard ?? story.unheard ?? move.unheard ?? share.unheard ?? ahead.unheard ?? right.unheard,
    unheardChange: (isHeard, isAsked, pot) => {
      const told = { tokens, prims, words: cut.words };
      return (
        unheardChange(told, heard.back, isHeard, isAsked) ??
        toldOtherwise(told, heard.back) ??
        potDiffers(told, heard.back, pot)
      );
    },
    cuts: heard.cuts,
    units: headUnits(tokens, lexicon, signals),
    disordered,
    struck,
  };
}

/**
 * A correction of a recipe that was read before: "no, palm kernel", "the coconut was 250", "make that 8 %", "add 50 g
 * castor", "without the shea", "in ounces". It is read with the reader's own names and amounts; what is left of the
 * text must be small talk, else it is no correction.
 */
import type { AlkaliId } from '../catalogue/types.ts';
import { bind } from './bind.ts';
import { unitWord, withUnit } from './columns.ts';
import { readRecipe } from './index.ts';
import { type Cut, itemize, type Reader } from './itemize.ts';
import type { Item } from './items.ts';
import type { Meaning } from './lexicon.ts';
import { pick, relatives } from './pick.ts';
import type { Quantity } from './quantities.ts';
import type { Doubt, Purity, RecipeReading } from './reading.ts';
import { looseUnits } from './retext.ts';
import { asPurity } from './roles.ts';
import { both, type Settled } from './settle.ts';

export type Change =
  | { readonly kind: 'superfat' | 'concentration' | 'ratio' | 'water-share' | 'step'; readonly value: number }
  | { readonly kind: 'purity'; readonly of: AlkaliId | null; readonly purity: Purity }
  | { readonly kind: 'alkali'; readonly id: AlkaliId }
  | { readonly kind: 'unit'; readonly unit: 'g' | 'oz' }
  | {
      readonly kind: 'set' | 'add';
      readonly of: Meaning;
      readonly grams: number;
      readonly said: string;
      readonly after: boolean;
      /** The recipe holds it already. */
      readonly known: boolean;
    }
  | { readonly kind: 'remove'; readonly of: Meaning }
  | { readonly kind: 'swap'; readonly from: Meaning; readonly to: Meaning; readonly grams: number | null };

export type Correction =
  | {
      readonly kind: 'changes';
      readonly changes: readonly Change[];
      readonly given: RecipeReading;
      /** It names what it changes; a lone figure speaks of whatever was said last. */
      readonly named: boolean;
    }
  /** Something of the correction cannot be known. */
  | { readonly kind: 'doubt'; readonly doubt: Doubt; readonly given: RecipeReading }
  /** What is meant to change cannot be known: one of these. */
  | { readonly kind: 'which'; readonly said: string; readonly of: readonly string[] }
  /** Plainly a correction, but not of anything that is there. */
  | { readonly kind: 'lost' };

type Thing = Extract<Item, { kind: 'thing' }>;
type Amount = Extract<Item, { kind: 'amount' }>;

const longest = 300;
const mostItems = 12;

/** What would be another question, or another recipe's verdict, and not a correction of this one. */
const another =
  /\b(how (much|many|long|hot|big|do|does|can)|when|why|which|where|convert|is (my|it|this|that) (lye|right|ok|okay|correct|enough|fine|too)|enough|what (is|are|does|water|amount|weight|ratio|strength)|what's (the|a)|(would|do|should|shall) i need|explain|summary|scale (?:it|this|that|to|for|up|down|the)|double|halve|triple|cool|flash)\b/i;

const cues = {
  correcting:
    /^\W*(no|nope|nah|sorry|oops|whoops|actually|wait|hang on|correction|i meant|i mean|my mistake|not|ah|argh|oh|make (that|it)|change|it was|it is|it's|its|should)\b|\b(i meant|i mean|meant|should be|should have been|was|were|wrong|mistake|typo|instead|rather|swap|replace|replaced|substitute|switch|change|changed|use|using|try|make (that|it|the))\b|^\W*(and|but|what (about|if)|how about)\b/i,
  adding: /\b(add|adding|added|plus|also|another|include|extra|more|forgot|put in|increase|raise|up)\b|^\W*and\b/i,
  lessening: /\b(less|reduce|lower|decrease|cut)\b/i,
  removing:
    /\b(without|leave (out|off)|left out|remove|drop|omit|skip|take out|minus|forget|ditch|lose|except|delete|no more|don'?t (use|have)|have no|out of|ran out of)\b/i,
  swapping:
    /\b(instead|not|rather than|swap\w*|replac\w*|substitut\w*|switch\w*|chang\w*|should be|should have been|was|were|meant|in place of)\b|→|->|=>|\buse\b.*\bfor\b/i,
  plainly:
    /^\W*(no|nope|sorry|oops|whoops|actually|i meant|i mean|make that|change|replace|swap|substitute|switch|without|add|remove|leave out|drop|omit|take out)\b|\binstead\b/i,
  after: /\bafter\b/i,
  part: /\b(half|third|quarter|some|part)\b/i,
} as const;

/** "not 200 g", "from 200 to": the figure that no longer counts. */
const outdated =
  /,?\s*\b(?:and )?(?:not|instead of|rather than)\s+(?:the\s+)?\d+(?:[.,]\d+)?\s*(?:%|[a-z]{1,6}\b)?|\bfrom\s+\d[\d.,]*\s*(?:%|[a-z]{1,3}\b)?\s+(?=to\b)/i;

const ingredient = (meaning: Meaning): boolean => ['fat', 'liquid', 'acid', 'additive', 'scent'].includes(meaning.kind);
const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
const isThing = (item: Item | undefined): item is Thing => item?.kind === 'thing';
const weighs = ({ dim }: Quantity): boolean => dim === 'mass' || dim === 'volume' || dim === 'bare';

/** Doubts about a correction's own words; the others speak of a recipe that a correction is not. */
const own = new Set<Doubt['id']>([
  ...(['ambiguous-name', 'unknown-fat', 'unheld-fat', 'which-alkali', 'no-unit', 'range', 'negative'] as const),
  ...(['alkali-volume', 'decimal', 'units-disagree', 'superfat-odd', 'purity-odd', 'strength-odd'] as const),
]);

/** Whether the recipe holds this, by id; additives by what the person called them. */
export function holds(reading: RecipeReading, meaning: Meaning, text = ''): boolean {
  switch (meaning.kind) {
    case 'fat':
      return [...reading.fats, ...reading.after].some(({ id }) => id === meaning.id);
    case 'liquid':
      return reading.liquids.some(({ id }) => id === meaning.id);
    case 'acid':
      return reading.acids.some(({ id }) => id === meaning.id);
    case 'additive':
    case 'scent':
      return reading.others.some(({ name }) => name.toLowerCase() === text.toLowerCase());
    case 'alkali':
      return reading.alkaliNamed.includes(meaning.id as AlkaliId) || reading.alkali.some(({ id }) => id === meaning.id);
    default:
      return meaning.kind === 'water';
  }
}

/** Everything of the recipe that a correction can name. */
const heldBy = (reading: RecipeReading): readonly Meaning[] => [
  ...[...reading.fats, ...reading.after].map(({ id }) => ({ kind: 'fat' as const, id })),
  ...reading.liquids.map(({ id }) => ({ kind: 'liquid' as const, id })),
  ...reading.acids.map(({ id }) => ({ kind: 'acid' as const, id })),
];

/** The unit that this person writes bare figures in; null where the post has several. */
function bareUnit(reader: Reader, reading: RecipeReading, cut: Cut): string | null {
  const unitOf = (said: string): string | null => {
    const amount = itemize(reader, said).items.find(isAmount);
    return amount?.quantity.dim === 'mass' ? (amount.quantity.unit?.id ?? null) : null;
  };
  const lines = [...reading.fats, ...reading.after, ...reading.liquids, ...reading.acids];
  const named = cut.items.find((item) => isThing(item) && holds(reading, item.named.meaning, item.named.text));
  const line = isThing(named) ? lines.find(({ id }) => id === named.named.meaning.id) : undefined;
  const mine = line ? unitOf(line.said) : null;
  if (mine) return mine;
  const units = new Set(lines.map(({ said }) => unitOf(said)).filter((unit) => unit !== null));
  if (units.size === 0) return reading.ounces ? 'oz' : 'g';
  if ([...units].every((unit) => unit === 'g' || unit === 'kg') && units.has('g')) return 'g';
  const [only] = units;
  return units.size === 1 && only && only !== 'kg' && only !== 'lb' ? only : null;
}

interface Sides {
  readonly reader: Reader;
  readonly reading: RecipeReading;
  readonly text: string;
  readonly given: RecipeReading;
  /** Of figures without one. */
  readonly unit: string | null;
  /** Id of what is meant to change, answered to `which`. */
  readonly target: string | null;
}

type Found = Change | Extract<Correction, { kind: 'doubt' | 'which' }>;
const isQuestion = (found: Found): found is Extract<Correction, { kind: 'doubt' | 'which' }> =>
  found.kind === 'doubt' || found.kind === 'which';

/** What a new name takes the place of: what was answered, its only relative, or the only one of its kind. */
function replacedBy(to: Meaning, grams: number | null, sides: Sides): Meaning | Extract<Correction, { kind: 'which' }> {
  const { reader, reading, target } = sides;
  const kin = heldBy(reading).filter(({ kind }) => kind === to.kind);
  const answered = kin.find(({ id }) => id === target);
  if (answered) return answered;
  const family = kin.filter(({ id }) => relatives(id, reader.catalogue).includes(to.id));
  const [relative] = family;
  if (family.length === 1 && relative) return relative;
  const sort = (id: string): string | undefined => /butter|wax|acid|tallow|milk/.exec(id)?.[0];
  const alikeSort = kin.filter(({ id }) => sort(to.id) !== undefined && sort(id) === sort(to.id));
  const [sibling] = alikeSort;
  if (alikeSort.length === 1 && sibling) return sibling;
  const weight =
    grams === null ? [] : [...reading.fats, ...reading.liquids].filter((one) => Math.abs(one.grams - grams) < 0.5);
  const [alike] = kin.filter(({ id }) => weight.some((one) => one.id === id));
  if (weight.length === 1 && alike) return alike;
  const [only] = kin;
  if (kin.length === 1 && only) return only;
  return { kind: 'which', said: reader.lexicon.label(to), of: kin.map(({ id }) => id) };
}

/** Grams that the correction's own reading found for this thing. */
function gramsIn(given: RecipeReading, meaning: Meaning, text: string): number | null {
  switch (meaning.kind) {
    case 'fat':
      return [...given.fats, ...given.after].find(({ id }) => id === meaning.id)?.grams ?? null;
    case 'liquid':
      return given.liquids.find(({ id }) => id === meaning.id)?.grams ?? null;
    case 'acid':
      return given.acids.find(({ id }) => id === meaning.id)?.grams ?? null;
    case 'additive':
    case 'scent':
      return given.others.find(({ name }) => name === text)?.grams ?? null;
    case 'alkali':
      return given.alkali[0]?.grams ?? null;
    case 'water':
      return given.waterGrams;
    default:
      return null;
  }
}

/** One name with its figures. */
function ofGroup(thing: Thing, amounts: readonly Quantity[], sides: Sides, cued: boolean): Found | null {
  const { meaning, text } = thing.named;
  const { given, reading, reader } = sides;
  const share = amounts.find(({ dim }) => dim === 'percent');
  const weight = amounts.find(weighs);
  const value = share?.value ?? (weight?.dim === 'bare' ? weight.value / 100 : null);
  if (meaning.kind === 'role') {
    if (meaning.id === 'superfat' && given.superfat !== null) return { kind: 'superfat', value: given.superfat };
    if (meaning.id === 'concentration' || meaning.id === 'solution')
      return value === null ? null : { kind: 'concentration', value };
    if (meaning.id === 'ratio' || meaning.id === 'ratio-lye-water')
      return given.ratio === null ? null : { kind: 'ratio', value: given.ratio };
    if (meaning.id === 'purity') return given.purity && { kind: 'purity', of: null, purity: given.purity };
    if (meaning.id === 'scale' && given.scaleStep !== null) return { kind: 'step', value: given.scaleStep };
    return meaning.id === 'heading' && weight ? loose(weight, sides) : null;
  }
  if (meaning.kind === 'alkali' || meaning.kind === 'stock') return ofAlkali(meaning, amounts, sides);
  if (meaning.kind === 'water') {
    const ratio = amounts.find(({ dim }) => dim === 'ratio');
    if (ratio && given.ratio !== null) return { kind: 'ratio', value: given.ratio };
    if (share) return { kind: 'water-share', value: share.value };
  }
  if (!ingredient(meaning) && meaning.kind !== 'water') return null;
  if (!weight) {
    const of = reader.lexicon.label(meaning);
    return share ? { kind: 'doubt', doubt: { id: 'no-amount', said: text, of }, given } : null;
  }
  if (weight.value === 0) return holds(reading, meaning, text) ? { kind: 'remove', of: meaning } : null;
  const grams = gramsIn(given, meaning, text);
  if (grams === null) return null;
  const after = given.after.some(({ id }) => id === meaning.id) || cues.after.test(sides.text);
  const known = holds(reading, meaning, text);
  const change = { of: meaning, said: weight.text, after, known };
  if (known && cues.lessening.test(sides.text) && /\b(less|by)\b/i.test(sides.text))
    return { ...change, kind: 'add', grams: -grams };
  const adds =
    cues.adding.test(sides.text) &&
    !(known && /^\W*and\b/i.test(sides.text) && !/\b(add|more|another|extra|plus)\b/i.test(sides.text));
  if (adds && meaning.kind !== 'water') return { ...change, kind: 'add', grams };
  if (known) return { ...change, kind: 'set', grams };
  if (!cued || meaning.kind !== 'fat') return null;
  const from = replacedBy(meaning, grams, sides);
  return 'of' in from ? from : { kind: 'swap', from, to: meaning, grams };
}

function ofAlkali(meaning: Meaning, amounts: readonly Quantity[], { given, reading }: Sides): Found | null {
  const share = amounts.find(({ dim }) => dim === 'percent');
  const weight = amounts.find(weighs);
  const id = meaning.id === 'unsaid' ? null : (meaning.id as AlkaliId);
  if (share && !weight) {
    if (Math.min(share.value, share.upTo ?? share.value) >= 0.7)
      return { kind: 'purity', of: id, purity: asPurity(share) };
    return share.value <= 0.55 && (id === null || meaning.kind === 'stock')
      ? { kind: 'concentration', value: share.value }
      : null;
  }
  const [alkali] = given.alkali;
  if (!weight || !alkali) return null;
  const own = new Set([...reading.alkali.map((one) => one.id), ...reading.alkaliNamed]);
  const meant = id ?? (own.size === 1 ? ([...own][0] ?? null) : alkali.id);
  return meant === null
    ? null
    : {
        kind: 'set',
        of: { kind: 'alkali', id: meant },
        grams: alkali.grams,
        said: weight.text,
        after: false,
        known: true,
      };
}

/** Words beside which a lone figure can only be the one that was spoken of before. */
const beside = new Set(
  `a about actually again all also an and are at be been but can change changed could correct correction for from go had have how i if in instead
   is it its just let lets make mean meant more my need no not now of ok okay oops only or please pls rather really say should sorry that the then
   there this to try up use used using wait want was we what whats whoops will with would wrong typo mistake you super fat superfat left over
   fats oils fat oil total amount weight pure purity solution strength water lye alkali ratio by much please thanks instead hang on`.split(
    /\s+/,
  ),
);
/** A lone figure up to this is a superfat in per cent rather than a weight. */
const mostSuperfat = 20;

const isLone = (text: string): boolean =>
  (text.toLowerCase().match(/\p{L}[\p{L}']*/gu) ?? []).every(
    (word) => beside.has(word.replaceAll("'", '')) || unitLike.test(word),
  );
const unitLike = /^(g|gr|grams?|kg|kilos?|oz|ounces?|lbs?|pounds?|percent|naoh|koh|x)$/;

/** A figure that stands beside no name. */
function loose(quantity: Quantity, sides: Sides): Found | null {
  const { reading, target, given, text } = sides;
  if (!isLone(text)) return null;
  const { dim, value } = quantity;
  if (dim === 'percent') {
    if (quantity.upTo !== null)
      return { kind: 'doubt', doubt: { id: 'range', said: quantity.text, of: 'superfat' }, given };
    if (value >= 0.7 && value <= 1.005) return { kind: 'purity', of: null, purity: asPurity(quantity) };
    if (value <= 0.25) return { kind: 'superfat', value };
    if (value <= 0.5 && reading.concentration !== null && reading.superfat === null)
      return { kind: 'concentration', value };
    return { kind: 'which', said: quantity.text, of: [] };
  }
  const ofWater =
    dim === 'ratio' &&
    (Math.min(value, quantity.second ?? 0) === 1 || /\b(water|lye|liquid|ratio)\b/i.test(sides.text));
  if (ofWater && quantity.second)
    return { kind: 'ratio', value: Math.max(value / quantity.second, quantity.second / value) };
  if (dim === 'bare' && value > 0 && value <= mostSuperfat)
    return reading.superfat === null
      ? { kind: 'which', said: `${quantity.text} %`, of: [] }
      : { kind: 'superfat', value: value / 100 };
  if (dim === 'bare' && sides.unit !== null && value > mostSuperfat)
    return loose(withUnit(quantity, sides.unit), sides);
  if (dim !== 'mass') return null;
  const things = heldBy(reading);
  const one = things.length === 1 ? things[0] : things.find(({ id }) => id === target);
  if (one) return { kind: 'set', of: one, grams: value, said: quantity.text, after: false, known: true };
  return { kind: 'which', said: quantity.text, of: things.map(({ id }) => id) };
}

/** Names without figures. */
function ofNames(things: readonly Thing[], sides: Sides, cued: boolean): readonly (Found | null)[] {
  const { reader, reading, text, given } = sides;
  const named = things.filter(({ named: { meaning } }) => meaning.kind !== 'role' && meaning.id !== 'unsaid');
  const first = named[0];
  if (!first) return [];
  const held = named.filter((thing) => holds(reading, thing.named.meaning, thing.named.text));
  const plainNo = /^\W*no\s+\p{L}/iu.test(text) && !/^\W*no\s+(it|that|the|wait|i|sorry)\b/i.test(text);
  if ((cues.removing.test(text) || plainNo) && held.length === named.length && !/\binstead\b/i.test(text))
    return named.map(({ named: { meaning } }) => ({ kind: 'remove', of: meaning }));
  if (cues.part.test(text)) return [null];
  if (named.every(({ named: { meaning } }) => meaning.kind === 'alkali')) {
    const id = alkaliMeant(named, text);
    return [id && { kind: 'alkali', id }];
  }
  if (named.length === 2) {
    if (!cues.swapping.test(text)) return [null];
    const pair = inOrder(named, reading, text);
    return [pair && { kind: 'swap', from: pair[0], to: pair[1], grams: null }];
  }
  if (named.length !== 1 || held.length > 0) return [null];
  const { meaning, text: said } = first.named;
  if (cues.adding.test(text) && /\b(add|adding|include|put in)\b/i.test(text) && ingredient(meaning))
    return [{ kind: 'doubt', doubt: { id: 'no-amount', said, of: reader.lexicon.label(meaning) }, given }];
  if (meaning.kind === 'ambiguous' && cued)
    return [
      { kind: 'doubt', doubt: { id: 'ambiguous-name', said, candidates: meaning.candidates, why: meaning.why }, given },
    ];
  if (meaning.kind === 'unheld' && cued)
    return [{ kind: 'doubt', doubt: { id: 'unheld-fat', said, candidates: meaning.candidates }, given }];
  const to = ingredient(meaning) ? meaning : meaning.kind === 'unknown' ? inContext(said, sides) : null;
  if (!to) return [null];
  if (!cued && !heldBy(reading).some(({ id }) => relatives(id, reader.catalogue).includes(to.id))) return [null];
  if (!ingredient(to) || to.kind === 'additive' || to.kind === 'scent') return [null];
  const from = replacedBy(to, null, sides);
  return ['of' in from ? from : { kind: 'swap', from, to, grams: null }];
}

/** "KOH", "KOH not NaOH", "it was KOH instead of NaOH". */
function alkaliMeant(things: readonly Thing[], text: string): AlkaliId | null {
  const ids = things.map(({ named }) => named.meaning.id as AlkaliId);
  if (new Set(ids).size === 1) return ids[0] ?? null;
  const turned = /\bnot\b[^,]{0,20}\bbut\b|\b(swap|replace|change|switch)\b/i.test(text);
  return (turned ? ids.at(-1) : ids[0]) ?? null;
}

/** Which of two names goes and which comes: by what the recipe holds, else by the words between. */
function inOrder(things: readonly Thing[], reading: RecipeReading, text: string): readonly [Meaning, Meaning] | null {
  const [a, b] = things;
  if (!a || !b || !ingredient(a.named.meaning) || !ingredient(b.named.meaning)) return null;
  const holdsA = holds(reading, a.named.meaning, a.named.text);
  const holdsB = holds(reading, b.named.meaning, b.named.text);
  if (!holdsA && !holdsB) return null;
  if (holdsA !== holdsB) return holdsA ? [a.named.meaning, b.named.meaning] : [b.named.meaning, a.named.meaning];
  if (/\b(instead of|not|rather than)\b/i.test(text) && !/\bbut\b/i.test(text))
    return [b.named.meaning, a.named.meaning];
  return /\b(swap|replace|change|switch|substitute|but)\b/i.test(text) ? [a.named.meaning, b.named.meaning] : null;
}

/** "pomace", "mutton", "monohydrate": words that name something only beside what the recipe holds. */
function inContext(said: string, { reader, reading }: Sides): Meaning | null {
  const found = heldBy(reading).flatMap(({ kind, id }) => {
    const picked = pick(said, relatives(id, reader.catalogue), reader.catalogue, '');
    return picked === null ? [] : [{ kind, id: picked } as Meaning];
  });
  const [only] = found;
  return found.length === 1 && only ? only : null;
}

/** Unit words and nothing else: "in ounces", "and in oz?". */
function unitAlone({ items, tokens }: Cut, reader: Reader): 'g' | 'oz' | null {
  if (items.some((item) => isAmount(item) || item.named.meaning.kind !== 'role')) return null;
  const unit = unitWord(tokens, reader.lexicon);
  return unit === 'g' || unit === 'oz' ? unit : null;
}

/** What a text changes in a recipe; null where it is no correction of it. */
export function readCorrection(
  reader: Reader,
  written: string,
  reading: RecipeReading,
  answered: { readonly settled: Settled | null; readonly target: string | null } = { settled: null, target: null },
): Correction | null {
  if (written.length > longest || another.test(written)) return null;
  const text = written.replace(outdated, ' ');
  const cut = itemize(reader, text);
  const written2 = answered.settled ? answered.settled.items(cut.items, cut.tokens) : cut.items;
  const items = written2.filter(
    (item) =>
      !(
        isThing(item) &&
        item.named.meaning.kind === 'role' &&
        /^(number|scale-to|after|target|each)$/.test(item.named.meaning.id)
      ),
  );
  if (items.length > mostItems || cut.tokens.some(({ t }) => t === 'aside')) return null;
  const strange = cut.tokens.filter((token) => token.t === 'word' && token.sort === 'unknown').length;
  const unit = unitAlone(cut, reader);
  if (unit && strange === 0)
    return { kind: 'changes', changes: [{ kind: 'unit', unit }], given: readRecipe(reader, ''), named: false };
  // "3/4 cup shea in grams" is a question of its own
  if (items.length === 0 || (items.some(isAmount) && looseUnits(cut, reader).length > 0)) return null;

  const bound = bind(items, cut.tokens).best;
  const usual = {
    items: (all: readonly Item[]) => all,
    unit: bareUnit(reader, reading, cut),
    rival: false,
    reading: (one: RecipeReading) => one,
  };
  const given = readRecipe(reader, text, both(usual, answered.settled ?? { ...usual, unit: null }));
  const mentions = bound.mentions.map((k) => items[k]).filter(isThing);
  const spoken = mentions.filter(({ named: { meaning } }) => meaning.kind !== 'role' && meaning.id !== 'unsaid');
  const gone =
    spoken.length === 1 && spoken[0] && holds(reading, spoken[0].named.meaning) ? spoken[0].named.meaning.id : null;
  const sides: Sides = { reader, reading, text, given, unit: usual.unit, target: answered.target ?? gone };
  const cued = cues.correcting.test(text);
  if (isWhole(items, bound.groups)) return null;
  if (
    !cued &&
    isFresh(
      items,
      bound.groups,
      reading,
      cues.adding.test(text) || cues.removing.test(text) || cues.lessening.test(text),
    )
  )
    return null;

  const amountsOf = (list: readonly number[]): Quantity[] =>
    list
      .map((k) => items[k])
      .filter(isAmount)
      .map(({ quantity }) => quantity);
  const found: (Found | null)[] = [];
  for (const group of bound.groups) {
    for (const k of group.things) {
      const thing = items[k];
      if (isThing(thing)) found.push(ofGroup(thing, amountsOf(group.amounts), sides, cued));
    }
  }
  for (const quantity of amountsOf(bound.orphans)) found.push(loose(quantity, sides));
  const spokenFor = bound.groups.length + bound.orphans.length > 0;
  if (!spokenFor) found.push(...ofNames(mentions, sides, cued));
  else if (spoken.length > 0 && !(gone !== null && found.some((one) => one?.kind === 'swap' && one.from.id === gone)))
    found.push(null);

  if (found.length === 0 || found.includes(null)) {
    const ofRecipe = items.some((item) => isAmount(item) || ingredient(item.named.meaning));
    return ofRecipe && cues.plainly.test(text) && !/\bor\b/i.test(text) ? { kind: 'lost' } : null;
  }
  const all = found.filter((one) => one !== null);
  for (const one of [...all]) {
    // "KOH, 90 %" where the recipe has none: that alkali is meant, and its purity
    if (one.kind !== 'purity' || one.of === null || holds(reading, { kind: 'alkali', id: one.of })) continue;
    if (reading.alkaliNamed.length > 1) return { kind: 'lost' };
    all.unshift({ kind: 'alkali', id: one.of });
  }
  const doubt = given.doubts.find(({ id }) => own.has(id));
  if (doubt) return { kind: 'doubt', doubt, given };
  const question = all.find(isQuestion);
  if (question) return question;
  return {
    kind: 'changes',
    changes: all.filter((one) => !isQuestion(one)) as Change[],
    given,
    named: items.some(isThing),
  };
}

type Groups = ReturnType<typeof bind>['best']['groups'];

const weighedIn = (items: readonly Item[], groups: Groups): readonly Meaning[] =>
  groups
    .filter(({ amounts }) => amounts.length > 0)
    .flatMap(({ things }) => things.map((k) => items[k]))
    .filter(isThing)
    .map(({ named }) => named.meaning);

const fatty = ({ kind }: Meaning): boolean => ['fat', 'ambiguous', 'unheld', 'unknown'].includes(kind);
const lyeish = ({ kind }: Meaning): boolean => kind === 'alkali' || kind === 'stock';

/** Fats, alkali and water with their weights, or a list of fats: a recipe, whatever word it begins with. */
function isWhole(items: readonly Item[], groups: Groups): boolean {
  const weighed = weighedIn(items, groups);
  const fats = weighed.filter(fatty).length;
  return fats > 2 || (fats > 0 && weighed.some(lyeish) && weighed.some(({ kind }) => kind === 'water'));
}

/** A new recipe rather than a change to the old: fats that it does not hold, several of them, or alkali beside them. */
function isFresh(items: readonly Item[], groups: Groups, reading: RecipeReading, marked: boolean): boolean {
  const weighed = weighedIn(items, groups);
  const fats = weighed.filter(fatty);
  if (fats.length === 0 || marked) return false;
  const more = weighed.some((meaning) => lyeish(meaning) || (meaning.kind === 'role' && meaning.id === 'superfat'));
  return fats.some((fat) => !holds(reading, fat)) || fats.length > 1 || more;
}

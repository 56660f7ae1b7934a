/**
 * Everyday questions that are no recipe: one figure asked, or a fact. Each kind looks at the same facts; the first
 * that fits has it. A text that fits none is for the recipe reader.
 */
import { unit } from '../../units/units.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Speller } from '../words/spelling.ts';
import { type AcidQuestion, readAcid, readWorth, type WorthQuestion } from './alkali.ts';
import { owned } from './bind.ts';
import { type ConvertQuestion, readConvert } from './convert.ts';
import { type Facts, factsOf, type Measure } from './facts.ts';
import { type FatQuestion, readFat } from './fat.ts';
import { boxIn } from './scale-target.ts';
import { readShare, type ShareQuestion } from './share.ts';
import { readStrength, type StrengthQuestion } from './strength.ts';

/** Alkali is asked for, and nothing is said that it could be reckoned from. */
export interface LyeQuestion {
  readonly kind: 'lye';
}

export type Question =
  | ConvertQuestion
  | StrengthQuestion
  | AcidQuestion
  | WorthQuestion
  | ShareQuestion
  | FatQuestion
  | LyeQuestion;

export type Asking = Exclude<Question['kind'], 'lye'>;

/** Longer texts are posts. */
const longest = 400;
/** More figures than a question holds; beyond a few only where words ask for something. */
const mostFigures = 8;
const fewFigures = 3;

const cue =
  /\b(how|what|whats|wat|wot|which|convert|in|to|into|as|per|extra|more|need|strength|concentration|ratio|stock|instead|worth|sv|sap|iodine|melt|about|under|over|above|below)\b|[=?%]/i;
/** Somebody mends what they said before, or pastes on. */
const amends = /^\W*(no|nope|sorry|oops|actually|wait|make (that|it)|i meant?|correction|edit)\b(?! idea)/i;
/** Begins with the word of another command. */
const otherJob =
  /^\W*(scale|resize|double|triple|halve|explain|summar\w*|check|mix|cool|scent|cook|solution)\b(?!\s+(is|of|strength|concentration))/i;

export interface ForQuestions {
  readonly lexicon: Lexicon;
  readonly speller: Speller;
}

/**
 * What a text asks, or null where it is a recipe or nothing known; `wanted` where a command was named, which then
 * gets whatever belongs to it. Time is bounded: long texts are not looked at.
 */
export function readQuestion(reader: ForQuestions, text: string, wanted: Asking | null = null): Question | null {
  if (text.length > longest) return null;
  if (wanted) {
    const free = readQuestion(reader, text);
    return free?.kind === wanted ? free : readers[wanted](factsOf(text, reader.lexicon, reader.speller), true);
  }
  if ((text.match(/\n[^\n]*\d/g)?.length ?? 0) > 2) return null;
  const figures = text.match(/\d+(?:[.,/]\d+)*/g)?.length ?? 0;
  if (figures > mostFigures || (figures > fewFigures && !cue.test(text)) || amends.test(text) || otherJob.test(text))
    return null;
  const read = (of: string): Facts => factsOf(of, reader.lexicon, reader.speller);
  const facts = inOneUnit(read(text));
  if (isRecipe(facts)) return null;
  return (
    boxVolume(facts, text) ??
    readConvert(facts, false) ??
    aboutIt(facts, text, read) ??
    readFat(facts, false) ??
    ofLye(facts) ??
    lyeOf(facts)
  );
}

/** "25 by 8 by 6.5 cm, how many mL is that". */
function boxVolume({ units, words }: Facts, text: string): ConvertQuestion | null {
  const target = units.find(({ lead, unit: own }) => own.dimension === 'volume' && (lead === 'many' || lead === 'to'));
  if (!target && !/\b(volume|capacity)\b/.test(words)) return null;
  const found = boxIn(text);
  if (!found) return null;
  const millilitres = unit('mL');
  const measure = {
    dim: 'volume' as const,
    value: found.millilitres,
    unit: millilitres,
    upTo: null,
    second: null,
    other: null,
    text: found.said,
    from: 0,
    to: 0,
  };
  const to = target?.unit ?? millilitres;
  return {
    kind: 'convert',
    measures: [measure],
    to,
    also: null,
    of: null,
    systemSaid: true,
    heaped: false,
    share: null,
  };
}

const last =
  /(?:^|[.?!]\s+)([^.?!]*\bhow (?:much|many)\b[^.?!]*?\b(?:of|does|is|do)) (?:it|that|them|this)\b([^.?!]*)[.?!\s]*$/i;

/** "I need 20 g sodium lactate. How much does one tablespoon of it hold": the last sentence alone, with what it is of. */
function aboutIt({ things }: Facts, text: string, read: (text: string) => Facts): ConvertQuestion | null {
  const [whole, before = '', behind = ''] = last.exec(text) ?? [];
  const named = things.filter(({ meaning }) => meaning.kind !== 'unknown');
  const [thing] = named;
  if (whole === undefined || !thing || named.some(({ text: other }) => other !== thing.text)) return null;
  return readConvert(read(`${before} ${thing.text}${behind}`), false);
}

/** A bare figure beside water or alkali is in the one unit of weight of the question ("100 g NaOH in 250 water"). */
function inOneUnit(facts: Facts): Facts {
  const weights = facts.measures.flatMap(({ dim, unit: own }) => (dim === 'mass' && own ? [own] : []));
  const [own] = weights;
  if (!own || weights.some(({ id }) => id !== own.id)) return facts;
  const isWeight = ({ dim, value, upTo, to }: Measure): boolean =>
    dim === 'bare' &&
    upTo === null &&
    value > mostParts &&
    facts.things.some(({ from, meaning }) => from === to && /^(water|alkali|stock|acid)$/.test(meaning.kind));
  return {
    ...facts,
    measures: facts.measures.map((one) => (isWeight(one) ? { ...one, dim: 'mass' as const, unit: own } : one)),
  };
}

/** Up to here a bare figure may be parts ("2 water to 1 lye"). */
const mostParts = 5;

const readers: Readonly<Record<Asking, (facts: Facts, forced: boolean) => Question | null>> = {
  convert: readConvert,
  fat: readFat,
  strength: (facts, forced) => readStrength(facts, owned(facts), forced),
  acid: (facts, forced) => readAcid(facts, owned(facts), forced),
  worth: (facts, forced) => readWorth(facts, owned(facts), forced),
  share: (facts, forced) => readShare(facts, owned(facts), forced),
};

const fatty = /^(fat|ambiguous|unheld)$/;

/** Fats and alkali, each with amounts of their own. */
function isRecipe({ things, measures, tokens }: Facts): boolean {
  // "100 % lard soap, 2 lb, how much lye": no strength
  const isAll = measures.some(({ dim, value }) => dim === 'percent' && value === 1);
  const isWeighed = measures.some(({ dim }) => dim === 'mass');
  if (isAll && isWeighed && tokens.some((one) => one.t === 'name' && one.meaning.kind === 'fat')) return true;
  const weights = measures.filter(({ dim }) => dim === 'mass' || dim === 'volume' || dim === 'bare').length;
  const kinds = new Set(things.filter(({ asked }) => !asked).map(({ meaning }) => meaning.kind));
  // "lard soap, 1000 g, lye 134, water 330": what a soap weighs is no part of a solution
  const isSoap = tokens.some((one) => one.t === 'name' && one.meaning.id === 'batch-word');
  if (weights >= 3 && isSoap && kinds.has('alkali') && kinds.has('water')) return true;
  return weights >= 2 && kinds.has('alkali') && kinds.has('fat');
}

function ofLye(facts: Facts): Question | null {
  const all = owned(facts);
  if (all.some((one) => weighsFat(one))) return null;
  const { things } = facts;
  if (things.some(({ meaning }) => fatty.test(meaning.kind)) && things.some(({ meaning }) => meaning.kind === 'alkali'))
    return null;
  return (
    readAcid(facts, all, false) ??
    readWorth(facts, all, false) ??
    readStrength(facts, all, false) ??
    readShare(facts, all, false)
  );
}

const weighsFat = ({ measure, owner }: ReturnType<typeof owned>[number]): boolean =>
  (measure.dim === 'mass' || measure.dim === 'volume') && owner !== null && fatty.test(owner.meaning.kind);

function lyeOf({ things, measures, words }: Facts): LyeQuestion | null {
  const alkalis = things.filter(({ meaning }) => meaning.kind === 'alkali');
  const asked =
    alkalis.some((one) => one.asked) || (alkalis.length > 0 && /\b(how|need|calculate|work out)\b/.test(words));
  const both = new Set(alkalis.map(({ meaning }) => meaning.id)).size > 1 && /\b(how|each|split|\?)/.test(words);
  const weighed = measures.some(({ dim }) => dim === 'mass' || dim === 'volume' || dim === 'bare');
  return (asked || both) && !weighed && !things.some(({ meaning }) => fatty.test(meaning.kind))
    ? { kind: 'lye' }
    : null;
}

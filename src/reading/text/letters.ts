/** Digits that text recognition puts for letters, and letters for digits: `0live 0il`, `Na0H`, `ta11ow`, `4OO g`. */
import { singular } from '../../catalogue/names.ts';
import type { Lexicon, Names } from '../words/lexicon.ts';
import type { Prim } from './scan.ts';

/** What each of these digits is taken for; the second reading is tried where the first makes no word. */
const letterOf: readonly Readonly<Record<string, string>>[] = [
  { 0: 'o', 1: 'l', 5: 's' },
  { 0: 'o', 1: 'i', 5: 's' },
];

const alike = /^[015]{1,2}$/;
/** Pieces of a word that digits stand in, at the most. */
const mostPieces = 9;

/** Behind the pieces of a word that begins with prim `i`: letters and such digits, tight. */
function endOfPieces(prims: readonly Prim[], i: number): number {
  let end = i;
  while (end < prims.length && end - i < mostPieces) {
    const prim = prims[end];
    if (
      !prim ||
      (end > i && !prim.glued) ||
      !(prim.kind === 'word' || (prim.kind === 'number' && alike.test(prim.text)))
    )
      break;
    end++;
  }
  return prims[end]?.glued && prims[end]?.kind === 'number' ? i : end;
}

/** Words that are remembered for the posts to come, at the most. */
const mostKnown = 1000;
const known = new WeakMap<Names, Map<string, boolean>>();

function isKnown(word: string, lexicon: Lexicon): boolean {
  let memory = known.get(lexicon.names);
  if (!memory) {
    memory = new Map();
    known.set(lexicon.names, memory);
  }
  let found = memory.get(word);
  if (found === undefined) {
    found = [word, singular(word)].some((one) => lexicon.names.has(one) || lexicon.vocabulary().known.has(one));
    if (memory.size < mostKnown) memory.set(word, found);
  }
  return found;
}

/** Letters behind two such digits at the head of a word, at the least: `01ive`. */
const leastBehindTwo = 3;

const isUnit = ({ text }: Prim, lexicon: Lexicon): boolean => lexicon.units.next?.has(text) === true;

function wordAt(prims: readonly Prim[], i: number, end: number, lexicon: Lexicon): Prim | null {
  const [first, second] = [prims[i], prims[i + 1]];
  // "1 lb" without its space, "0oz"
  if (
    !first ||
    !second ||
    (first.kind === 'number' &&
      (first.text.length > 1
        ? second.text.length < leastBehindTwo || isUnit(second, lexicon)
        : end === i + 2 && isUnit(second, lexicon)))
  )
    return null;
  const pieces = prims.slice(i, end);
  const typed = pieces.map(({ text }) => text).join('');
  // "olive0": a word that needs no more letters
  if (pieces.at(-1)?.kind === 'number' && isKnown(typed.replace(/\d+$/, ''), lexicon)) return null;
  if (typed.length < 3) return null;
  for (const letter of letterOf) {
    const text = typed.replace(/[015]/g, (digit) => letter[digit] ?? digit);
    if (isKnown(text, lexicon))
      return {
        kind: 'word',
        text,
        raw: pieces.map(({ raw }) => raw).join(''),
        glued: first.glued,
        at: first.at,
        odd: false,
      };
  }
  return null;
}

/** `H20`, written with a nought. */
function waterAt(prims: readonly Prim[], i: number): Prim | null {
  const [h, nought] = [prims[i], prims[i + 1]];
  if (h?.text !== 'h' || nought?.text !== '20' || prims[i + 2]?.glued) return null;
  return { kind: 'word', text: 'water', raw: `${h.raw}${nought.raw}`, glued: false, at: h.at, odd: false };
}

const lookAlike = /^[oil]{1,3}$/;
const digitOf: Readonly<Record<string, string>> = { o: '0', i: '1', l: '1' };

/** Behind the pieces of a figure with letters in it, before a unit: `4OO g`, `1l3 g`, `l5O ml`; `i` where it is none. */
function endOfFigure(prims: readonly Prim[], i: number, lexicon: Lexicon): number {
  let [end, digits, capital] = [i, false, false];
  for (let prim = prims[end]; prim && (end === i || prim.glued) && end - i < 4; prim = prims[++end]) {
    if (prim.kind === 'number' && /^\d+$/.test(prim.text)) digits = true;
    // "4 l" is four litres
    else if (prim.kind === 'word' && lookAlike.test(prim.text)) capital ||= /[OI]/.test(prim.raw) || end === i;
    else break;
  }
  const unit = prims[end];
  const inner = prims[end - 1]?.kind === 'number' && end - i === 3;
  if (!digits || end === i + 1 || !(capital || inner) || unit?.kind !== 'word' || unit.glued) return i;
  return lexicon.units.next?.has(unit.text) ? end : i;
}

function figureOf(pieces: readonly Prim[]): Prim | null {
  const [first] = pieces;
  if (!first) return null;
  const raw = pieces.map((piece) => piece.raw).join('');
  const text = pieces
    .map((piece) => (piece.kind === 'word' ? piece.text.replace(/[oil]/g, (one) => digitOf[one] ?? one) : piece.text))
    .join('');
  return { kind: 'number', text, raw, glued: first.glued, at: first.at, odd: false };
}

/** `PaIm oil`: a capital I within small letters. */
function withL(prim: Prim, lexicon: Lexicon): Prim | null {
  if (prim.kind !== 'word' || prim.raw.indexOf('I', 1) < 0 || !/^\p{L}?[\p{Ll}I]+$/u.test(prim.raw)) return null;
  const text = prim.raw.replace(/(?<=.)I/g, 'l').toLowerCase();
  return isKnown(text, lexicon) ? { ...prim, text } : null;
}

/** Letters that look like another, side by side: `VVater`, `palrn`. */
const pairs: readonly (readonly [RegExp, string])[] = [
  [/vv/g, 'w'],
  [/rn/g, 'm'],
];

function ofPairs(prim: Prim, lexicon: Lexicon): Prim | null {
  if (prim.kind !== 'word' || !/vv|rn/.test(prim.text)) return null;
  for (const [pair, letter] of pairs) {
    const text = prim.text.replace(pair, letter);
    if (text !== prim.text && isNamed(text, lexicon) && !isKnown(prim.text, lexicon) && !lexicon.isEveryday(prim.text))
      return { ...prim, text };
  }
  return null;
}

const isNamed = (text: string, { names }: Lexicon): boolean => names.has(text);

/** "Castoroil", "casteroil": a word that no list holds, and the generic one at its end. */
function runTogether(prim: Prim, lexicon: Lexicon): readonly Prim[] | null {
  const generic = prim.kind === 'word' ? /(?<=.{3})(?:oil|butter)$/.exec(prim.text) : null;
  if (!generic || prim.raw.length !== prim.text.length) return null;
  if (isKnown(prim.text, lexicon) || lexicon.isEveryday(prim.text)) return null;
  const { index } = generic;
  return [
    { ...prim, text: prim.text.slice(0, index), raw: prim.raw.slice(0, index) },
    { ...prim, text: generic[0], raw: prim.raw.slice(index), glued: true, at: prim.at + index },
  ];
}

/** Letters of a unit that a name is run into, at the most, and of that name, at the least. */
const mostOfUnit = 3;
const leastOfName = 3;

/** "200gpalm", "114glye", "8ozcastoroil": right behind a figure, a unit and a name. */
function unitAndName(prims: readonly Prim[], i: number, lexicon: Lexicon): readonly Prim[] | null {
  const prim = prims[i];
  if (prim?.kind !== 'word' || prim.raw.length !== prim.text.length || isKnown(prim.text, lexicon)) return null;
  for (let cut = mostOfUnit; cut > 0; cut--) {
    const unit = { ...prim, text: prim.text.slice(0, cut), raw: prim.raw.slice(0, cut) };
    if (!isUnit(unit, lexicon)) continue;
    const name = { ...prim, text: prim.text.slice(cut), raw: prim.raw.slice(cut), at: prim.at + cut, glued: false };
    const parts = isNamed(name.text, lexicon) ? [name] : runTogether(name, lexicon);
    if (name.text.length >= leastOfName && parts?.[0] && isNamed(parts[0].text, lexicon)) return [unit, ...parts];
  }
  return null;
}

/** Letters of a word that is written with spaces between them, at the most. */
const mostLetters = 12;

/** "L y e", "N a O H": single letters, one space apart, that make the word of a name. */
function spacedOut(prims: readonly Prim[], i: number, lexicon: Lexicon): Prim | null {
  const first = prims[i];
  if (first?.kind !== 'word' || first.raw.length !== 1 || prims[i + 1]?.raw.length !== 1) return null;
  const pieces = [first];
  for (let prim = prims[i + 1]; prim && pieces.length < mostLetters; prim = prims[i + pieces.length]) {
    if (prim.kind !== 'word' || prim.raw.length !== 1 || prim.at !== first.at + 2 * pieces.length) break;
    pieces.push(prim);
  }
  const text = pieces.map((piece) => piece.text).join('');
  return pieces.length > 2 && isNamed(text, lexicon)
    ? { ...first, text, raw: pieces.map(({ raw }) => raw).join(' ') }
    : null;
}

/** Letters of a word that was cut in two, and of its first piece, at the least. */
const leastCut = 6;
const leastHead = 3;

/** "Cast or oil", "co conut oil": a word of a name that was cut in two, in front of the generic one. */
function cutInTwo(prims: readonly Prim[], i: number, lexicon: Lexicon): Prim | null {
  const [first, second] = [prims[i], prims[i + 1]];
  if (first?.kind !== 'word' || second?.kind !== 'word' || second.at !== first.at + first.raw.length + 1) return null;
  const text = `${first.text}${second.text}`;
  // "180 g rapeseed oil" is no grapeseed
  if (first.text.length < leastHead || isUnit(first, lexicon) || text.length < leastCut || !isNamed(text, lexicon))
    return null;
  if (isNamed(first.text, lexicon) || isNamed(second.text, lexicon)) return null;
  return { ...first, text, raw: `${first.raw} ${second.raw}` };
}

/** Words and figures that text recognition mixed up, from which on the post is one of its making. */
const leastMixedUp = 2;

/** One odd figure may be anything; among others of the kind it is known. */
function isRecognised(prims: readonly Prim[], lexicon: Lexicon): boolean {
  let found = 0;
  for (let i = 0; i < prims.length && found < leastMixedUp; i++) {
    const [prim, next] = [prims[i], prims[i + 1]];
    if (prim && withL(prim, lexicon)) found++;
    if (!prim || prim.glued || !next?.glued || prim.kind === next.kind) continue;
    if (endOfFigure(prims, i, lexicon) > i) found++;
    else if (alike.test(prim.text) || alike.test(next.text)) {
      const end = endOfPieces(prims, i);
      if (end > i + 1 && wordAt(prims, i, end, lexicon)) found++;
    }
  }
  return found >= leastMixedUp;
}

const isLetter = (prim: Prim | undefined): boolean => prim?.kind === 'word' && prim.raw.length === 1;
const isAlike = (text: string): boolean => text.length <= 2 && alike.test(text);
const isLookAlike = (text: string): boolean => text.length <= 3 && lookAlike.test(text);

/** A figure and a word without a space between them, of which one is made of what stands for the other. */
function mayBeOne(prim: Prim, next: Prim): boolean {
  if (prim.kind === 'number') return next.kind === 'word' && (isAlike(prim.text) || isLookAlike(next.text));
  if (prim.kind !== 'word' || next.kind !== 'number') return false;
  return isAlike(next.text) || isLookAlike(prim.text) || prim.text === 'h';
}

/** The prims with such words and figures whole; the very same where there is none. */
export function wholeWords(prims: readonly Prim[], lexicon: Lexicon): readonly Prim[] {
  let out: Prim[] | null = null;
  let sure: boolean | null = null;
  let i = 0;
  while (i < prims.length) {
    const prim = prims[i];
    const next = prims[i + 1];
    const mixed = next?.glued && prim && !prim.glued && prim.kind !== next.kind;
    const apart = prim?.glued && prims[i - 1]?.kind === 'number' ? unitAndName(prims, i, lexicon) : null;
    if (apart) {
      out ??= prims.slice(0, i);
      out.push(...apart);
      i++;
      continue;
    }
    const behind = prims[i + 2]?.text;
    const cut = behind === 'oil' || behind === 'butter' ? cutInTwo(prims, i, lexicon) : null;
    if (cut) {
      out ??= prims.slice(0, i);
      out.push(cut);
      i += 2;
      continue;
    }
    if (!prim || !(prim.odd || (mixed ? mayBeOne(prim, next) : isLetter(prim) && isLetter(next)))) {
      if (prim) out?.push(prim);
      i++;
      continue;
    }
    const water = mixed ? waterAt(prims, i) : null;
    const figure = mixed && !water ? endOfFigure(prims, i, lexicon) : i;
    if (figure > i) sure ??= isRecognised(prims, lexicon);
    if (figure > i && sure) {
      const whole = figureOf(prims.slice(i, figure));
      out ??= prims.slice(0, i);
      if (whole) out.push(whole);
      i = figure;
      continue;
    }
    const letter = (mixed ? null : withL(prim, lexicon)) ?? ofPairs(prim, lexicon);
    const spaced = !mixed && !letter ? spacedOut(prims, i, lexicon) : null;
    const whole = letter ?? spaced;
    if (whole) {
      out ??= prims.slice(0, i);
      out.push(whole);
      i += spaced ? (spaced.raw.length + 1) / 2 : 1;
      continue;
    }
    const two = runTogether(prim, lexicon);
    if (two) {
      out ??= prims.slice(0, i);
      out.push(...two);
      i++;
      continue;
    }
    const end = water ? i + 2 : mixed && (alike.test(prim.text) || alike.test(next.text)) ? endOfPieces(prims, i) : i;
    const word = water ?? (end > i + 1 ? wordAt(prims, i, end, lexicon) : null);
    if (word) out ??= prims.slice(0, i);
    if (word) out?.push(word);
    else out?.push(prim);
    i = word ? end : i + 1;
  }
  return out ?? prims;
}

/** `4OO`, read as 400. */
export const isMixedUp = ({ kind, text, raw }: Prim): boolean =>
  kind === 'number' && raw !== text && /[oil]/i.test(raw);

export const hasDigits = ({ kind, text, raw }: Prim): boolean => kind === 'word' && raw !== text && /\d/.test(raw);

/** Digits within a word that was made whole. */
export const digitsIn = (prim: Prim): readonly string[] => (hasDigits(prim) ? (prim.raw.match(/\d+/g) ?? []) : none);

const none: readonly string[] = [];

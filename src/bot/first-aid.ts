/**
 * Whether a text tells of an accident with lye or raw soap: in an eye, on the skin, swallowed, breathed in.
 *
 * Words become letters of what they mean, in four languages and with slips of the fingers, and short patterns over
 * those letters tell an accident from a recipe ("a splash of castor oil"), an instruction ("do not breathe the fumes",
 * "if it gets on your skin, rinse") and a bar that zaps. In doubt first aid: it costs a moment. All looks are bounded,
 * so that time is linear in the length of the text.
 */

import type { Harm } from '../commands/safety.ts';
import { inPhrases } from './first-aid-phrases.ts';
import { meaningOf } from './first-aid-words.ts';

const pained = /[\u{1f62d}\u{1f631}\u{1f616}\u{1f622}\u{1f625}\u{1f198}\u{1f691}\u{1f915}\u{1fa79}]/u;
const burning = /\u{1f525}/u;

/** Lower case without accents, quotes and invisible signs; plain text is spared the slow part. */
function plainOf(text: string): string {
  const lower = text.toLowerCase();
  const bare = /^[\0-\x7f]*$/.test(lower)
    ? lower
    : lower
        .replace(/œ/g, 'oe')
        .replace(/ß/g, 'ss')
        .replace(/\p{Extended_Pictographic}+/gu, (signs) =>
          pained.test(signs) ? ' ow ' : burning.test(signs) ? ' burning ' : ' ',
        )
        .normalize('NFKD')
        .replace(/[\p{M}\p{Cf}]/gu, '')
        .replace(/[’‘´]/g, "'");
  const unquoted = /['`]/.test(bare)
    ? bare
        // "the skin's come off", "nan's hands"
        .replace(/(?<=[a-z]{3})['`]s\b/g, '')
        .replace(/\bn['`]/g, 'ne ')
        .replace(/\b(?:[cdjlmst]|qu)['`]/g, ' ')
        .replace(/['`]/g, '')
    : bare;
  const even = /[^\S\n ]| {2}/.test(unquoted) ? unquoted.replace(/[^\S\n]+/g, ' ') : unquoted;
  const oiled = /\bpalm\b/.test(even) ? even.replace(weighedPalm, ' oil ') : even;
  const told = /\b(?:skin|hands?|fingers)\b/.test(oiled) ? oiled.replace(harmless, ' ') : oiled;
  return /\b(?:nearly|almost)\b/.test(told) ? told.replace(shocked, ' ') : told;
}

/** "6 oz palm", "palm 250 g": of no hand. */
const weighedPalm =
  /(?<=\d ?(?:g|kg|oz|lbs?|grams?|ounces?|%) (?:of )?)palm\b|\bpalm(?=[:,]? \d+ ?(?:g|kg|oz|lbs?|grams?|ounces?|%))/g;

/** "Read it as dry lye and nearly fainted", "almost choked at the price": at a figure, not at fumes. */
const shocked =
  /\b(?:counted|read|saw|heard|price|prices|cost|costs|bill|figures?|numbers?|total)\b[^.!?\n]{0,60}\b(?:nearly|almost) (?:fainted|choked|collapsed|passed out)\b(?![^.!?\n]{0,40}(?:fume|vapo|breath|smell|gas|air))|\b(?:nearly|almost) (?:fainted|choked|collapsed|passed out) (?:at|over|when (?:i|we|he|she|they) (?:saw|read|heard|counted)) (?:the |that |its |this )?(?:price|prices|cost|bill|figures?|numbers?|total|till|amount|it)\b/g;

/** A kind of skin as a reason, and hands in fat that nobody calls hot. */
const harmless =
  /\b(?:because|since|as|cos|cuz)(?: [a-z]+){1,2} skin(?:'?s| is| gets| feels| tends)(?: [a-z]+){0,3}? (?:dry|sensitive|oily|mature|itchy|delicate|thin)\b|\b(?:covered in|full of|greasy with|slick with)(?: (?:olive|coconut|palm|castor|the))? (?:oils?|butter|fat|lard|flour)\b/g;

const weights: ReadonlySet<string> = new Set(['g', 'kg', 'oz', 'ml', 'lb']);

/** One letter a word: of its meaning, `x` for any other, `,` and `.` for what ends a clause or a sentence. */
function lettersOf(folded: string): string {
  let letters = '';
  for (const token of folded.match(/[a-z0-9\u0080-\uffff]+|[.!?;:\n|,]/g) ?? []) {
    const first = token.charCodeAt(0);
    if (token === ',') letters += ',';
    else if (first < 48 || first === 58 || first === 59 || first === 63 || first === 124) letters += '.';
    // amounts stand between words without parting them
    else if (first > 57 && !weights.has(token)) letters += meaningOf(token);
  }
  return letters;
}

/** A part of the own (or somebody's) body, with one word between: "my left hand". */
const part = 'O{1,2}[xt]?[PE]';

type Told = Harm | 'any';

/** In the order in which the worse is looked for first. Made for a text that speaks of a body: most do not. */
const accidents = (): Readonly<Record<Told, readonly RegExp[]>> => ({
  swallowed: [
    /D[^.,-]{0,8}[AS]/g,
    /Dz[^.]{0,10}A/g,
    /D[^.]{0,12}k[^.]{0,12}[AS]/g,
    /k[^.]{0,12}[AS][^.]{0,6}[DL]/g,
    /C[^.]{0,12}[AS][^.]{0,6}[DL]z/g,
    /Ct?k[^.]{0,10}A/g,
    /Ai[tO]?C(?=$|[.,])/g,
    /C[^.,]{0,8}A[^.]{0,4}[bL]/g,
    /[AS][^.,]{0,4}D/g,
    /dx{0,2}A/g,
    /C[^.]{0,4}D[^.]{0,8}A/g,
    /C[^.,]{0,4}b[^.,]{0,5}[AS]/g,
    /C[^.,]{0,3}ri[tO]?A/g,
    /L[^.,-]{0,2}A/g,
    /C[^.]{0,6}L[^.,]{0,6}[AS]/g,
    /C[^.]{0,6}[AS][^.,]{0,6}L/g,
  ],
  eyes: [
    /[ARrs][^.N]{0,8}i[Ot]*x?[Ot]?E/g,
    /S[^.N]{0,8}iO[xt]?E/g,
    /(?:O|^|[.,])Ex?[Hh]/g,
    /R[^.N]{0,6}OE/g,
    /A\W{1,6}E(?=\W|$)/g,
    /Q[^.]{0,4}v[^.]{0,4}[EP]/g,
  ],
  inhaled: [
    /B[^.,N]{0,4}[VA]/g,
    /[VA][^.,]{0,3}B/g,
    /[VA][^.]{0,10}K/g,
    /K[^.]{0,8}[VA]/g,
    /[VA][^.]{0,8}T[^.]{0,3}[Hhu]/g,
    /T[^.]{0,3}[Hhu][^.]{0,8}[VA]/g,
    new RegExp(`${part}[^.]{0,2}[Hhu][^.]{0,8}V`, 'g'),
    /[AV][^.,Nf]{0,6}OT/g,
    /VrW/g,
    /Z/g,
  ],
  skin: [
    new RegExp(`A[^.,jNf]{0,8}${part}`, 'g'),
    new RegExp(`(?<!f)${part}[^.,jNf]{0,8}A`, 'g'),
    new RegExp(`R[^.N]{0,8}[oi]${part}`, 'g'),
    new RegExp(`[AS][^.N]{0,6}r[^.N]{0,6}[oi]${part}`, 'g'),
    /A[^.,jNf]{0,6}O+x?Y/g,
    /[rb][^.N]{0,4}A[^.N]{0,6}[Hh]/g,
    /A[oi]P(?!H)/g,
    /H[Ot]{1,2}x?[PT]/g,
    /PHA/g,
    /[Hu]oO?P/g,
    /AH(?:$|[.,])/g,
    /LS/g,
    /b[^.,N]{0,3}O[^.,]{0,2}A/g,
    new RegExp(`u[^.]?[oi]?${part}`, 'g'),
    /(?:O|^|[.,-])[xt]?[PE][^.,]{0,2}[Hhu][^.]{0,8}[AS]/g,
    /O[xt]?P[xO]?H/g,
    /RP/g,
    /A[oi]?[PE](?:$|[.,])/g,
    /A[^.]{0,12}P[xO]h/g,
    /Q[^.]{0,6}A[^.f]{0,6}[PE]/g,
    /Q[^.]{0,6}F[^.]{0,8}[PE]/g,
    new RegExp(`[AS][^.]{0,12}${part}[^.]{0,2}[Hh]`, 'g'),
    /P[^.]{0,3}A[^.]{0,2}H/g,
    /A[^.N]{0,8}oW/g,
    /[RH]W/g,
    /[Rs][^.,-]{0,3}A(?![oi][tO]{0,2}x?G|[oi]tx[^.PEYWTO]*(?:\.|$))/g,
    /b[oi]t?A/g,
    /A,?[Rs],?[tO]{0,2}P/g,
    /A[^.,M]{0,2}R/g,
    /Au(?!P)/g,
  ],
  any: [/X/g, /C[^.]{0,3}[Hh][^.]{0,4}A/g],
});

/** Harm that tells enough by itself, whatever did it: over letters in which those of `usual` stand for themselves. */
const plainly = (): Readonly<Record<Told, readonly RegExp[]>> => ({
  swallowed: [
    /a[^.]{0,8}[DL]/g,
    /[DL]zk/g,
    /C[^.,N]{0,4}[DL][^.,]{0,4}p/g,
    /D[^.]{0,6}k[^.]{0,8}[TKPh]/g,
    /[HJK][^.N]{0,10}D[^.]{0,6}k/g,
    /[DL][^.N]{0,8}K/g,
    /C[^.N]{0,12}k[^.N]{0,8}[DL]/g,
    /C[^.N]{0,6}D[^.N]{0,12}k/g,
    /[DL][^.N]{0,6}S[^.N]{0,8}[Kp]/g,
  ],
  eyes: [/[Rrm][^.,Nw]{0,4}[oi][Ot]{0,2}x?E/g, /r[^.Nw]{0,3}W[^.N]{0,6}E/g, /OE[^.N]{0,2}H|HOE/g, /c[^.N]{0,3}E/g],
  inhaled: [
    /C[^.N]{0,3}i[tO]?V/g,
    /B[^.N]{0,8}[HJKn]/g,
    /B[^.N]{0,3}k/g,
    /K[^.N]{0,8}OT[^.N]{0,2}[Hh]/g,
    /OT[^.N]{0,2}[Hh][^.N]{0,8}K/g,
  ],
  skin: [
    /C[^.N]{0,12}Pi[tO]{0,2}[pAS]/g,
    /J[^.N]{0,6}[sR]|[PEWCYT][^.NM]{0,10}J|J[^.NM]{0,10}(?:[EW]|O[xt]?P|[oi]t?P|P)/g,
    /(?<=^[^.w]{0,12}|\.[^.w]{0,12}|,[^.,w]{0,6})m[^.,Nw]{0,4}[oi][xto]{0,4}O[xt]?[PY]/g,
    /[oi]O[xt]?P[^.,Nw]{0,4}m/g,
    /r[oi]O[xt]?P[^.Nw]{0,10}\.[^.N]{0,3}[HJ]/g,
    /O{1,2}[xt]?P[^.N]{0,6}hx?h|P[^.N]{0,12}h[-,]{1,2}x?h/g,
    /P[xt]?Ri[^.w]{0,3}/g,
    /O[xt]?P[^.,NMw]{0,4}H/g,
    /[rRm][^.Nw]{0,5}P[^.N]{0,10}[HJ]/g,
    /i[tO]?P[xt]?R/g,
  ],
  any: [/[nHJK][^.N]{0,8}c|c[^.N]{0,8}[nHJK]/g],
});

/** A child or an animal drank out of a vessel, where the text speaks of an alkali; or drank, and is ill or cries. */
const drunk: readonly RegExp[] = [
  /C[^.Nw]{0,24}D[^.Nw]{0,10}A/g,
  /[DLb][^.N]{0,8}\.[^.N]{0,3}K/g,
  /C[^.Nw]{0,14}[DL][^.Nw]{0,8}A/g,
  /D[^.N]{0,8}k[^.]{0,6}\.[^.]{0,3}A/g,
  /A[^.N]{0,16}C[^.,Nw]{0,3}[DL](?=$|[.,-])/g,
  /C[^.N]{0,8}[DL][^.,w]{0,4}p/g,
  /C[^.N]{0,8}[DL][^.Nw]{0,8}\.?[^.Nw]{0,6}[nHJKT]/g,
];

/** What these letters count as beside all others. */
const usual: Readonly<Record<string, string>> = { J: 'H', n: 'h', m: 'r', w: 'x', a: 'x', c: 'x' };

/** In a few words, where nothing is denied. */
const shortly: readonly (readonly [Told, RegExp])[] = [
  ['eyes', /E.{0,4}[Rs]|[Rs].{0,4}E/],
  ['skin', /[PYW].{0,4}R|[Rm].{0,4}[PYW]|^[^v]*[PYW].{0,4}[rm][^v]*$/],
  ['any', /n[.n]*[AEP]|[AEP][.n]*n|^[.x]{0,2}[Oxz.]?[HJ][.n]*$|A.*J/],
];

/** A warning or a wish before it in its clause, or a condition without a question: no accident. */
function isTold(letters: string, from: number, to: number): boolean {
  const before = letters.slice(Math.max(0, from - 40), from);
  const clause = before.slice(Math.max(before.lastIndexOf('.'), before.lastIndexOf(','), before.lastIndexOf('-')) + 1);
  const here = letters.slice(from, to);
  if (/N.{0,6}$/.test(clause) || /N/.test(here)) return false;
  // "will it leave lye on my skin", "does lye burn": asked of what may be
  if (/M[tz]?x?$/.test(clause) || /^.?M/.test(here)) return false;
  const sentence = before.slice(before.lastIndexOf('.') + 1);
  if (/[Ie]/.test(sentence + here)) return false;
  return !/F/.test(sentence) || /Q/.test(sentence) || /O/.test(here);
}

/**
 * In a message that is no recipe, a sentence that tells of harm to a body is enough where another names what bites:
 * "jug tipped onto my lap. it was lye". In the order of haste; p is what soap is made in and with.
 */
const apart = (): readonly (readonly [Told, agent: RegExp, harmed: RegExp])[] => [
  ['swallowed', /[ApS]/, /C[^.]{0,24}D|C[^.]{0,14}L[^.]{0,3}P/],
  ['swallowed', /A/, /Dk|d[^.]{0,4}k|[DL](?:z|[^.]{0,4}k)|k[^.]{0,6}[DL]|C[^.]{0,6}[DLb]/],
  ['eyes', /A/, /O[xt]?E/],
  ['eyes', /[ApS]/, /[HhRrs][^.]{0,6}E|E[^.]{0,6}[HhR]/],
  ['inhaled', /[ApV]/, /B[^.]{0,6}[zp]|C[^.]{0,6}K|[KT][^.]{0,4}[Hh]|[Hh][^.]{0,4}[KT]/],
  ['skin', /[Ap]/, /[HRu][^.]{0,6}[PYW]|[PY][^.]{0,6}(?:[HRu]|zb)|r[^.]{0,3}[oi][Ot]{0,2}x?[PY]/],
  ['skin', /A|^(?=.*p)(?=.*[Rsb])/, /h[^.]{0,3}[PY]|P[^.]{0,8}h/],
  ['skin', /[Ap]/, /[rRm][^.]{0,8}[oi][xt]?O[xt]?[PY]|C[^.]{0,10}ri[zOt]/],
  ['skin', /A/, /Y[^.]{0,4}A[xt]?oz/],
  ['skin', /R/, /S[^.]{0,2}oO[xt]?[PTE]/],
  // alkali and a body in one breath are enough, in whatever words
  ['any', /A/, /K|A[^.]{0,12}(?:[EPTKDB]|oW)|(?:[EPTKDB]|oW)[^.]{0,12}A|^[^.]{0,12}R[^.]{0,2}r/],
];
/** Said of what may be, in a clause of a sentence. */
const supposed = /M/;
const denied = /[FIvy]|f[Ot]{0,2}x?[fPEWCY]|fx?l|j[^.]{0,2}[PEWC]|[PEWC][^.HJh]{0,2}j/;

/** In a message that is no recipe. */
function accidentApart(letters: string, isMaking: boolean): Told | null {
  const isShort = letters.length < 14 && !denied.test(letters) && !supposed.test(letters);
  const sentences = isShort
    ? [letters.replaceAll('.', '')]
    : letters
        .split('.')
        .filter((one) => !denied.test(one))
        .flatMap((one) => (supposed.test(one) ? one.split(/[,-]/).filter((part) => !supposed.test(part)) : [one]));
  const tells = (harmed: RegExp): boolean =>
    sentences.some((one) => {
      const match = harmed.exec(one);
      return match !== null && isTold(one, match.index, match.index + match[0].length);
    });
  return (
    apart().find(
      ([told, agent, harmed]) => !(told === 'any' && isMaking) && agent.test(letters) && tells(harmed),
    )?.[0] ?? null
  );
}

/** A body, or what happens to one: without a word of it there is nothing to look for. */
const bodily = /[qglkZEPTYWCbHhuDdLBVKXRsJna]/;

function tells(letters: string, patterns: readonly RegExp[]): boolean {
  for (const pattern of patterns) {
    for (const { 0: found, index } of letters.matchAll(pattern)) {
      if (isTold(letters, index, index + found.length)) return true;
    }
  }
  return false;
}

/** A cry of a few words. */
function inShort(letters: string): Told | null {
  if (/A/.test(letters) && /J/.test(letters) && !/[NMFIe]/.test(letters)) return 'skin';
  const { length } = letters.replace(/[.,]/g, '');
  if (length < 15 && /Dz|C.*D/.test(letters) && !/[NMFIQwe]/.test(letters)) return 'swallowed';
  if (length > 8 || /[NMFIfyp]/.test(letters)) return null;
  return shortly.find(([, pattern]) => pattern.test(letters))?.[0] ?? null;
}

/** What a text tells of; `any` where it does not say how lye hurt; null where it tells of no accident. */
export function accidentIn(text: string): Told | null {
  const plain = plainOf(text);
  if (!bodily.test(lettersOf(plain))) return null;
  const told = lettersOf(inPhrases(plain)).replaceAll('g', 'f');
  const letters = told.replace(/[Jmwnac]/g, (letter) => usual[letter] ?? letter);
  const [byLye, byItself] = [accidents(), plainly()];
  for (const harm of Object.keys(byLye) as Told[]) {
    if (tells(letters, byLye[harm]) || tells(told, byItself[harm])) return harm;
    if (harm === 'swallowed' && letters.includes('A') && tells(told, drunk)) return harm;
  }
  return isRecipe(text) ? null : (accidentApart(letters, making.test(text)) ?? inShort(told));
}

/** What a person says who speaks of a recipe. */
const making =
  /\d\s*(?:k?g|oz|lbs?|grams?)\b|\b(?:recipe|superfat|calcul\w*|rezept|recette|receta|trace|rule of thumb|first time)\b/i;
const isRecipe = (text: string): boolean =>
  (text.match(/\d+/g) ?? []).length > 2 || (text.match(weighed) ?? []).length > 1;
const weighed = /\d ?(?:k?g|oz|lbs?)\b|\b(?:ounces?|pounds?|grams?|kilos?) of\b/gi;

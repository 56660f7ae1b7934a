/** Slips of the fingers in the small words and units of a question, and letters that stand for a unit. */
import { behind } from '../../catalogue/names.ts';
import type { Prim } from '../text/scan.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { isFractionWord, isNumberWord } from '../words/numbers.ts';
import { allowance, distance } from '../words/spelling.ts';
import { plainLines } from '../words/words.ts';

/** Short words whose slips no distance would tell from other short words. */
const shortSlips: Readonly<Record<string, string>> = {
  mny: 'many',
  manny: 'many',
  mch: 'much',
  mcuh: 'much',
  muhc: 'much',
  muvh: 'much',
  hw: 'how',
  hwo: 'how',
  wat: 'what',
  waht: 'what',
  wht: 'what',
  wot: 'what',
  wats: 'whats',
  wots: 'whats',
  wich: 'which',
};

/** Words that tell what is asked, worth recognising through a slip. */
const asking = [
  'many',
  'much',
  'convert',
  'weigh',
  'weight',
  'water',
  'extra',
  'solution',
  'concentration',
  'strength',
  'stock',
  'ratio',
  'saponification',
  'iodine',
  'melting',
  'melt',
  'point',
  'density',
  'percent',
  'memory',
];

/** Units as they are written out; a slip of one counts only where a unit may stand. */
const unitWords = [
  'gram',
  'grams',
  'ounce',
  'ounces',
  'pound',
  'pounds',
  'kilo',
  'kilos',
  'kilogram',
  'kilograms',
  'stone',
  'cups',
  'pint',
  'pints',
  'quart',
  'quarts',
  'gallon',
  'gallons',
  'litre',
  'litres',
  'liter',
  'liters',
  'millilitre',
  'millilitres',
  'milliliter',
  'milliliters',
  'tablespoon',
  'tablespoons',
  'teaspoon',
  'teaspoons',
  'inch',
  'inches',
  'metre',
  'metres',
  'meters',
  'centimetre',
  'centimetres',
  'centimeters',
  'millimetre',
  'millimetres',
  'millimeters',
  'celsius',
  'fahrenheit',
  'centigrade',
  'fluid',
  'tbsp',
];

const before: ReadonlySet<string> = new Set(['in', 'to', 'into', 'as', 'many', 'much', 'of', 'a', 'an', 'per', '=']);
const after: ReadonlySet<string> = new Set(['in', 'to', 'into', 'as', '=', '?', '.', ',', 'by', 'x', '→']);

const isPlain = (word: string, lexicon: Lexicon): boolean =>
  behind(word, plainLines) !== null ||
  isNumberWord(word) ||
  isFractionWord(word) ||
  lexicon.names.has(word) ||
  lexicon.vocabulary().known.has(word);

function nearest(word: string, known: readonly string[]): string | null {
  let most = allowance(word.length);
  let best: string | null = null;
  for (const one of known) {
    if (one[0] !== word[0] && most < 2) continue;
    const away = distance(word, one, most);
    if (away > most) continue;
    best = one;
    most = away - 1;
    if (most < 0) break;
  }
  return best;
}

const isFigure = (prim: Prim | undefined): boolean =>
  prim?.kind === 'number' || (prim?.kind === 'word' && isNumberWord(prim.text));

/** `in f`, `180 f`, `°c`: letters that stand for a temperature, where the text speaks of temperatures. */
function temperatureLetters(prims: readonly Prim[]): ReadonlySet<number> {
  const found = new Set<number>();
  let spoken = false;
  for (const [i, prim] of prims.entries()) {
    if (/^(celsius|fahrenheit|centigrade|celcius|farenheit|kelvin|degrees?|degs?|temp|temperature)$/.test(prim.text))
      spoken = true;
    if (prim.text === '°') spoken = true;
    if (prim.kind !== 'word' || (prim.text !== 'c' && prim.text !== 'f')) continue;
    const previous = prims[i - 1];
    if (isFigure(previous) || (previous && /^(in|to|into|as|=|\?|many|°|•|>|degrees?|deg)$/.test(previous.text)))
      found.add(i);
  }
  return found.size >= 2 || (found.size === 1 && spoken) ? found : new Set();
}

/** `1.5e3`, written as one; what no number holds becomes too many digits. */
function powerAt(prims: readonly Prim[], i: number): Prim | null {
  const [base, e, exponent] = [prims[i], prims[i + 1], prims[i + 2]];
  if (base?.kind !== 'number' || e?.text !== 'e' || !e.glued || exponent?.kind !== 'number' || !exponent.glued)
    return null;
  const value = Number(`${base.text.replace(',', '.')}e${exponent.text}`);
  const text = Number.isFinite(value) && value < 1e15 ? String(value) : `${'9'.repeat(400)}.0`;
  return { ...base, text, raw: base.raw + e.raw + exponent.raw };
}

/** Behind "oz": "fluid", "(fl)", "liquid". */
function isFluid(prims: readonly Prim[], at: number): boolean {
  const next = prims[at + 1]?.text === '(' ? prims[at + 2] : prims[at + 1];
  return (
    next !== undefined && /^(fluid|fl|liquid)$/.test(next.text) && !/^(oz|ounces?)$/.test(prims[at + 2]?.text ?? '')
  );
}

/** The same prims with slips mended; a power of ten becomes one. */
export function mend(prims: readonly Prim[], lexicon: Lexicon): Prim[] {
  const letters = temperatureLetters(prims);
  const out: Prim[] = [];
  for (let i = 0; i < prims.length; i += 1) {
    const prim = prims[i];
    if (!prim) continue;
    const power = powerAt(prims, i);
    out.push(power ?? mended(prim, out.at(-1), i, prims, letters, lexicon));
    if (power) i += 2;
  }
  return out;
}

function mended(
  prim: Prim,
  previous: Prim | undefined,
  i: number,
  prims: readonly Prim[],
  letters: ReadonlySet<number>,
  lexicon: Lexicon,
): Prim {
  // many digits would count as a telephone number
  if (prim.kind === 'number' && /^\d{9,}$/.test(prim.text)) return { ...prim, text: `${prim.text}.0` };
  if (prim.kind !== 'word') return prim;
  const { text } = prim;
  const next = prims[i + 1];
  if (letters.has(i) && !/^(°|degrees?|degs?)$/.test(previous?.text ?? ''))
    return { ...prim, text: text === 'c' ? 'celsius' : 'fahrenheit', raw: text.toUpperCase() };
  // "10 in to cm", "how many cm in 10 in?"
  const ends = !next || next.kind === 'line' || after.has(next.text);
  if (text === 'in' && ends && (isFigure(previous) || /^(to|into|in)$/.test(previous?.text ?? '')))
    return { ...prim, text: 'inch' };
  const short = Object.hasOwn(shortSlips, text) ? shortSlips[text] : undefined;
  if (short) return { ...prim, text: short };
  // "10 m in g"
  if (text === 'm' && isFigure(previous) && next && /^(in|to|into|=)$/.test(next.text))
    return { ...prim, text: 'metre' };
  // "16 oz (fluid)"
  if (/^(oz|ounces?)$/.test(text) && isFluid(prims, i)) return { ...prim, text: 'floz' };
  if (text.length < 4 || isPlain(text, lexicon)) return prim;
  const asked = nearest(text, asking);
  if (asked) return { ...prim, text: asked };
  const unitPlace = isFigure(previous) || (previous && before.has(previous.text)) || !next || next.kind !== 'word';
  const unit = unitPlace ? nearest(text, unitWords) : null;
  return unit ? { ...prim, text: unit } : prim;
}

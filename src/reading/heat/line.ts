/**
 * A question about heat as one line in which every figure and every thing is a numbered letter, so that short patterns
 * over it can tell what each figure is: "pot was T0 at M1 , N2 at M3 , room N4 . when is it N5 ?".
 */
import { fromCelsius, toCelsius } from '../../units/units.ts';
import type { Reader } from '../index.ts';
import { clean } from '../text/clean.ts';
import { layOut } from '../text/layout.ts';
import { type Prim, scan } from '../text/scan.ts';
import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import { type Token, tokenize } from '../words/tokens.ts';

/**
 * T temperature, N bare figure, M minutes, C time of day, G mass, V volume, P per cent, R ratio, K parts, D length;
 * F fat, A alkali, L lye solution, W water, I ice, S scent, Q milk and the like, X any other thing.
 */
export interface Figure {
  readonly letter: string;
  /** °C (as written where no unit is said), minutes, g, mL, a share, or the bare figure. */
  readonly value: number;
  /** The other end of a range, the second part of a ratio. */
  readonly also: number | null;
  /** No unit of temperature was written. */
  readonly bare: boolean;
  /** As typed. */
  readonly text: string;
  /** Digits after the decimal sign. */
  readonly decimals: number;
  /** Where it stands in the source. */
  readonly from: number;
  readonly end: number;
}

export interface HeatLine {
  readonly text: string;
  /** What was cut into figures and words. */
  readonly source: string;
  /** By their number in the line; things have their meaning instead. */
  readonly figures: ReadonlyMap<number, Figure>;
  readonly things: ReadonlyMap<number, { readonly meaning: Meaning; readonly text: string }>;
  /** The unit of temperature that the text uses: that of its figures, or what their size says. */
  readonly scale: '°C' | '°F';
  /** No figure and no word names it. */
  readonly scaleTaken: boolean;
}

/** Longer posts are no question about heat; a line is cut there, so that patterns stay quick. */
const longest = 4000;

const letters: Readonly<Record<Quantity['dim'], string>> = {
  temperature: 'T',
  bare: 'N',
  time: 'M',
  mass: 'G',
  volume: 'V',
  percent: 'P',
  ratio: 'R',
  parts: 'K',
  length: 'D',
};

const kinds: Partial<Readonly<Record<Meaning['kind'], string>>> = {
  fat: 'F',
  unheld: 'F',
  ambiguous: 'F',
  alkali: 'A',
  stock: 'L',
  water: 'W',
  ice: 'I',
  scent: 'S',
  liquid: 'Q',
};

/** Words that say that a lone "c" behind the next figure is no cup. */
const warm =
  /^(at|to|is|was|room|temp|temperature|below|under|above|from|about|around|until|till|reach|of|it|its|now)$/;

const decimalsIn = (text: string): number => /\d[.,](\d+)/.exec(text)?.[1]?.length ?? 0;

/** "14:05", "2:05 pm" in minutes of the day. */
function clock(prims: readonly Prim[]): number | null {
  const text = prims.map(({ text: word }) => word).join('');
  const parts = /^(\d{1,2})(?:[:.](\d\d))?(?::\d\d)?(am|pm|uhr|h|hrs)?/.exec(text);
  if (!parts) return null;
  const half = parts[3] === 'pm' && Number(parts[1]) < 12 ? 12 : parts[3] === 'am' && parts[1] === '12' ? -12 : 0;
  return 60 * (Number(parts[1]) + half) + Number(parts[2] ?? 0);
}

/** Times in words that no figure stands in. */
const inMinutes = (text: string): string =>
  text
    .replace(/\b(?:a )?quarter (?:of an? )?hour\b/gi, '15 min')
    .replace(/\bhalf an? hour\b/gi, '30 min')
    .replace(/\bthree quarters of an hour\b/gi, '45 min')
    .replace(/\ban hour and a half\b/gi, '90 min')
    .replace(/\ban hour\b/gi, '60 min');

export function heatLine(reader: Reader, input: string): HeatLine {
  const source = inMinutes(layOut(clean(input.slice(0, longest)).text).text);
  const prims = scan(source);
  const { tokens } = tokenize(prims, reader.lexicon, reader.speller);
  const parts: string[] = [];
  const figures = new Map<number, Figure>();
  const things = new Map<number, { meaning: Meaning; text: string }>();
  let next = 0;
  let from = 0;
  let end = 0;
  const figure = (letter: string, one: Partial<Figure> & { readonly value: number; readonly text: string }): void => {
    figures.set(next, { letter, also: null, bare: false, decimals: decimalsIn(one.text), from, end, ...one });
    parts.push(`${letter}${next}`);
    next += 1;
  };
  const last = (): string => parts.at(-1) ?? '';

  /** The minus sign goes out of the line and into the figure. */
  const signed = ({ negative, value }: Quantity): number => {
    if (negative && last() === '-') parts.pop();
    return negative ? -value : value;
  };
  const temperature = (quantity: Quantity, letter: string): void => {
    const { unit, upTo, text } = quantity;
    const below = (celsius: number): number =>
      unit && unit.dimension === 'temperature' ? toCelsius(-fromCelsius(celsius, unit.id), unit.id) : -celsius;
    if (quantity.negative && last() === '-') parts.pop();
    const value = quantity.negative ? below(quantity.value) : quantity.value;
    const bare = unit === null;
    // "from 88 to 60": a way down, no range.
    if (upTo !== null && upTo < value) {
      figure(letter, { value, text, bare });
      parts.push('to');
      figure(letter, { value: upTo, text, bare });
    } else figure(letter, { value, also: upTo, text, bare });
  };

  const quantityOf = (quantity: Quantity, index: number): void => {
    const { dim, unit, text } = quantity;
    if (dim === 'temperature') temperature(quantity, 'T');
    else if (unit?.id.startsWith('cup') && /\d ?c$/i.test(text) && warm.test(last()))
      figure('T', { value: quantity.value / unit.factor, text });
    else if (dim === 'bare') {
      const sign = tokens[index + 1];
      const word = sign?.t === 'word' ? sign.text : '';
      if (word === 'c' || word === 'celsius') figure('T', { value: signed(quantity), text });
      else if (word === 'f' || word === 'fahrenheit') figure('T', { value: toCelsius(signed(quantity), '°F'), text });
      else temperature(quantity, 'N');
    } else if (dim === 'ratio' && / t = $/.test(` ${parts.slice(-2).join(' ')} `)) {
      // "t=10: 89"
      figure('M', { value: quantity.value, text });
      figure('N', { value: quantity.second ?? 0, text, bare: true });
    } else if (dim === 'time')
      figure('M', { value: quantity.value / 60, also: quantity.upTo && quantity.upTo / 60, text });
    else figure(letters[dim], { value: quantity.value, also: dim === 'ratio' ? quantity.second : quantity.upTo, text });
  };

  for (const [index, token] of tokens.entries()) {
    const own = prims.slice(token.from, token.to);
    const final = own.at(-1);
    from = own[0]?.at ?? end;
    end = final ? final.at + final.raw.length : end;
    if (token.t === 'quantity') quantityOf(token.quantity, index);
    else if (token.t === 'name' && token.meaning.kind !== 'role') {
      things.set(next, { meaning: token.meaning, text: token.text });
      parts.push(`${kinds[token.meaning.kind] ?? 'X'}${next}`);
      next += 1;
    } else if (token.t === 'aside') {
      const at = token.reason === 'a time of day' ? clock(own) : null;
      if (at !== null) figure('C', { value: at, text: own.map(({ raw }) => raw).join('') });
      else parts.push('#');
    } else if (token.t === 'line') parts.push('\n');
    // Words, signs, and the words of what is a role in a recipe.
    else for (const prim of own) parts.push(prim.text);
  }
  const text = ` ${parts.join(' ').replaceAll('\t', ' \t ')} `.replace(/ {2,}/g, ' ');
  return { text, source, figures, things, ...scaleOf(tokens, text, [...figures.values()], reader.warmth) };
}

/** Hotter than any pot of soap in °C. */
const surelyFahrenheit = 130;

function scaleOf(
  tokens: readonly Token[],
  text: string,
  figures: readonly Figure[],
  usual: '°C' | '°F' | undefined,
): Pick<HeatLine, 'scale' | 'scaleTaken'> {
  const units = new Set(tokens.map((token) => (token.t === 'quantity' ? token.quantity.unit?.id : undefined)));
  const celsius =
    units.has('°C') || / (?:celsius|c) /.test(text) || figures.some(({ letter, bare }) => letter === 'T' && !bare);
  const fahrenheit = units.has('°F') || / (?:fahrenheit|f) /.test(text);
  if (celsius || fahrenheit) return { scale: fahrenheit && !units.has('°C') ? '°F' : '°C', scaleTaken: false };
  const hottest = Math.max(...figures.map(({ letter, value }) => (/[TN]/.test(letter) ? value : 0)));
  return { scale: hottest > surelyFahrenheit && hottest < 400 ? '°F' : (usual ?? '°C'), scaleTaken: true };
}

/** A temperature figure in °C. */
export const celsiusOf = ({ scale }: HeatLine, { value, bare }: Figure): number =>
  bare ? toCelsius(value, scale) : value;

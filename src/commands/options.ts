/**
 * Options of a command, `key=value` or `key: value`, declared as plain tables.
 *
 * Tables and not schemas of a library, because every question of the command line pays for its start: measured as a
 * bundle, the smallest build of zod adds 0.15 to 0.3 of an empty Node process, and a one-shot question has 1.0 of it
 * for everything. What a form or a completion needs (kinds, bounds, choices, texts) can be read off a table as well.
 */
import type { Fault, Result } from '../answer/types.ts';
import { clipped } from './phrases.ts';

interface Option {
  /** For help and forms. */
  readonly about: string;
  readonly example: string;
  /** The reader finds "key: value" in a post by itself, beside all else it says; only `key=value` is taken out. */
  readonly inText?: true;
}

/** `share`: per cent, as 0–1; `mass`: g; `ratio`: "2:1" or "2", as 2; `mass-or-share`: as g, or as a share of fat. */
type Declared = Option &
  (
    | { readonly kind: 'share' | 'mass' | 'ratio'; readonly low: number; readonly high: number }
    | { readonly kind: 'mass-or-share' }
    | { readonly kind: 'choice'; readonly choices: Readonly<Record<string, string>> }
  );

export type OptionTable = Readonly<Record<string, Declared>>;

type Amount = { readonly grams: number } | { readonly share: number };

type ValueOf<D extends Declared> = D extends { readonly choices: Readonly<Record<string, infer C>> }
  ? C
  : D extends { readonly kind: 'mass-or-share' }
    ? Amount
    : number;

export type Values<O extends OptionTable> = { readonly [K in keyof O]?: ValueOf<O[K]> };

const decimal = (text: string): number => Number(text.replace(',', '.').replace(/[−–]/, '-'));

const grams: Readonly<Record<string, number>> = { mg: 0.001, g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };

const figure = '([-−–]?\\d+(?:[.,]\\d+)?)';
const patterns = {
  share: new RegExp(`^${figure}\\s?(?:%|percent|per cent)?$`, 'i'),
  mass: new RegExp(`^${figure}\\s?(mg|kg|g|oz|lb)$`, 'i'),
  ratio: new RegExp(`^${figure}(?:\\s?:\\s?${figure})?$`),
} as const;

function parsed(declared: Declared, text: string, sign: string): number | Amount | string | null {
  switch (declared.kind) {
    case 'choice':
      return declared.choices[text.toLowerCase()] ?? null;
    case 'share': {
      const parts = patterns.share.exec(text);
      return parts ? decimal(parts[1] ?? '') / 100 : null;
    }
    case 'mass': {
      // a bare figure is grams only where it can be nothing else: "Step: 1 melt the fats" is no scale
      const parts = patterns.mass.exec(sign === '=' && /\d$/.test(text) ? `${text} g` : text);
      return parts ? decimal(parts[1] ?? '') * (grams[(parts[2] ?? '').toLowerCase()] ?? 1) : null;
    }
    case 'ratio': {
      const parts = patterns.ratio.exec(text);
      return parts ? decimal(parts[1] ?? '') / decimal(parts[2] ?? '1') : null;
    }
    case 'mass-or-share': {
      const mass = patterns.mass.exec(text);
      if (mass) return { grams: decimal(mass[1] ?? '') * (grams[(mass[2] ?? '').toLowerCase()] ?? 1) };
      const share = /%|per/i.test(text) ? patterns.share.exec(text) : null;
      return share ? { share: decimal(share[1] ?? '') / 100 } : null;
    }
  }
}

/** What may stand after the sign: a figure with a unit or per cent, a ratio, or one word. */
const written =
  '[-−–]?\\d+(?:[.,]\\d+)?(?:\\s?(?:%|percent|mg|kg|g|oz|lb)(?![a-z])|\\s?:\\s?\\d+(?:[.,]\\d+)?)?|[^\\s,;=]*[^\\s,;=:]';
/** "5 to 8 %" is no value of an option: it is left to the reader, which asks. */
const noRange = '(?!\\s*(?:[-–—/]|to\\b|or\\b)\\s*\\d)(?![.,]?\\d)';

/**
 * The declared options in a text, and the text without them. Keys that are not declared stay: a recipe's own
 * "olive: 450 g" is nobody's option.
 */
export function takeOptions(
  text: string,
  table: OptionTable,
): Result<{ readonly text: string; readonly options: Readonly<Record<string, unknown>> }> {
  const keys = Object.keys(table);
  const options: Record<string, unknown> = {};
  if (keys.length === 0 || !/[=:]/.test(text)) return { ok: true, value: { text, options } };
  const wanted = new RegExp(`(?<![\\p{L}\\p{N}-])(${keys.join('|')})\\s?([=:])\\s?(${written})${noRange}`, 'giu');
  let fault: Fault | null = null;
  const rest = text.replace(wanted, (whole: string, name: string, sign: string, said: string, at: number) => {
    const key = name.toLowerCase();
    const declared = table[key];
    if (!declared || (sign === ':' && declared.inText)) return whole;
    // "water = 2x lye", "water = 2:1": the reader's
    if (declared.inText && /^\s?(?:[x×:*]|times\b|to\b)/i.test(text.slice(at + whole.length, at + whole.length + 8)))
      return whole;
    const value = parsed(declared, said, sign);
    if (value === null || (typeof value === 'number' && !Number.isFinite(value))) {
      // "water = ?" asks for it
      if (sign === '=' && !/^\?+$/.test(said)) fault ??= wrongValue(key, declared, said);
      return whole;
    }
    if (typeof value === 'number' && 'low' in declared && (value < declared.low || value > declared.high)) {
      fault ??= outOfBounds(key, declared, said);
    }
    options[key] = value;
    return key === 'unit' && isOfRows(text, at, at + whole.length) ? whole : ' ';
  });
  return fault ? { ok: false, fault } : { ok: true, value: { text: rest, options } };
}

/** "unit: g" in a line of its own among rows without any, "olive=700;naoh=137;unit=g": theirs, and so the answer's. */
const isOfRows = (text: string, from: number, to: number): boolean =>
  ((/(?:^|\n)[ \t]*$/.test(text.slice(0, from)) && /^[ \t]*(?:\n|$)/.test(text.slice(to))) ||
    (/(?:^|[\n;,|])[ \t]*$/.test(text.slice(0, from)) &&
      /^[ \t]*(?:[\n;,|]|$)/.test(text.slice(to)) &&
      (text.match(/[a-z]\s?[=:]\s?\d+(?:[.,]\d+)?[ \t]*(?=[\n;,|]|$)/gi)?.length ?? 0) >= fewPairs)) &&
  /\d/.test(text) &&
  !/\d\s?(?:g|gr|gms?|grams?|kg|kilos?|oz|ozs|ounces?|lbs?|pounds?)\b/i.test(text.slice(0, from) + text.slice(to));

/** Pairs of a name and a figure that make rows. */
const fewPairs = 3;

function wrongValue(key: string, declared: Declared, said: string): Fault {
  const candidates =
    declared.kind === 'choice' ? Object.keys(declared.choices).map((choice) => `${key}=${choice}`) : [];
  return {
    code: 'unclear',
    message: `I can’t read "${clipped(said)}" as a value of ${key}.`,
    hint: `${key} is ${declared.about}: for example ${declared.example}.`,
    candidates,
    caution: [],
  };
}

function outOfBounds(key: string, declared: Declared, said: string): Fault {
  return {
    code: 'impossible',
    message: `${key} can’t be ${clipped(said)}.`,
    hint: `${key} is ${declared.about}: for example ${declared.example}.`,
    candidates: [],
    caution: [],
  };
}

/** Recipes that a program wrote out as JSON, as lines that a person could have written. */

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Keys whose value says all. */
const plainKey =
  /^(?:name|title|label|oil|fat|ingredient|item|type|kind|unit|units|amount|weight|qty|quantity|value|mass)$/;
const unitKey = /^(?:g|gr|grams?|kg|oz|ounces|lbs?|ml|percent|pct)$/;
const titleKey = /^(?:title|name|label|recipe|description|notes?|comments?|author|id|version)$/;

/** "olive_oil", "cureWeeks". */
const spaced = (key: string): string => key.replace(/(?<=\p{Ll})(?=\p{Lu})/gu, ' ').replace(/[_-]+/g, ' ');

const isNested = (value: Json): value is readonly Json[] | { readonly [key: string]: Json } =>
  value !== null && typeof value === 'object';

/** "600 g" of `"g": 600`, "water 310 g" of `"water_g": 310`. */
function said(key: string, value: Json): string {
  const words = spaced(key).split(' ');
  const unit = unitKey.test(words.at(-1) ?? '') && typeof value === 'number' ? (words.pop() ?? '') : '';
  const name = words.join(' ');
  return [plainKey.test(name) ? '' : name, String(value), unit].filter((one) => one !== '').join(' ');
}

/** What is nested below a key; what stands beside it names or describes the whole. */
function linesOf(value: Json, key: string): readonly string[] {
  if (!isNested(value)) return value === null ? [] : [said(key, value)];
  if (Array.isArray(value)) return value.flatMap((one) => linesOf(one, ''));
  const entries = Object.entries(value);
  if (!entries.some(([, one]) => isNested(one))) {
    const isRow = entries.some(([name]) => plainKey.test(name) || unitKey.test(name));
    if (!isRow) return entries.flatMap(([name, one]) => linesOf(one, name));
    return [[key, ...entries.map(([name, one]) => said(name, one))].filter((one) => one !== '').join(' ')];
  }
  return entries.flatMap(([name, one]) =>
    typeof one === 'string' && titleKey.test(name)
      ? [`Title: ${one}`]
      : /^units?$/.test(name)
        ? [`unit: ${String(one)}`]
        : linesOf(one, spaced(name)),
  );
}

/** Behind the bracket that closes the one at `from`; -1 where none does. */
function endOfBlock(text: string, from: number): number {
  let depth = 0;
  let isQuoted = false;
  for (let at = from; at < text.length; at++) {
    const sign = text[at];
    if (isQuoted && sign === '\\') at++;
    else if (sign === '"') isQuoted = !isQuoted;
    else if (!isQuoted && (sign === '{' || sign === '[')) depth++;
    else if (!isQuoted && (sign === '}' || sign === ']') && --depth === 0) return at + 1;
  }
  return -1;
}

/** The text with the first JSON object or array of objects in it laid out; the very same where it holds none. */
export function jsonLines(text: string): string {
  const from = text.search(/(?:\[\s*)?\{\s*"/);
  const to = from < 0 ? -1 : endOfBlock(text, from);
  if (to < 0) return text;
  try {
    const lines = linesOf(JSON.parse(text.slice(from, to)) as Json, '');
    return `${text.slice(0, from)}\n${lines.join('\n')}\n${text.slice(to)}`;
  } catch {
    return text;
  }
}

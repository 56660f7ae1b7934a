/** Weights of what was named in a sentence before: "Coconut was on offer ... 400 g of it". */
import { drinkless } from './items.ts';
import { ofIt } from './of-it.ts';
import type { Signals } from './signals.ts';
import { isAny, isMark, isMeasured, isStop, isWord, wordAt } from './token-is.ts';
import type { Figure, Token } from './tokens.ts';
import { thingOf, weighedThings } from './weighed.ts';

/** "Coconut was on offer ... 400 g of it": the thing named last, where it has no weight yet. */
export function namedBefore(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity') continue;
    const owned = isOwned(tokens, k, token);
    const rest = boiledDown(tokens, k, token) ? leftAt(tokens, k) : -1;
    const isOfIt = rest >= 0 || ofIt(tokens, k, token);
    const named = owned !== null || isOfIt ? namedLast(tokens, k) : -1;
    if (named < 0) continue;
    const fat = tokens[named];
    if (owned !== null && fat?.t === 'name' && fat.meaning.kind === 'fat' && !weighedThings(tokens).has(thingOf(fat))) {
      out ??= [...tokens];
      out[owned] = { ...fat, from: tokens[owned]?.from ?? 0, to: tokens[owned]?.to ?? 0 };
      continue;
    }
    if (!isOfIt) continue;
    const [name, pronoun] = [tokens[named], tokens[rest < 0 ? k + 2 : rest]];
    if (rest >= 0 && !(name?.t === 'name' && name.meaning.kind === 'liquid')) continue;
    const noun = tokens[k + 3];
    const isOfFat = noun?.t === 'word' && /^(oils?|fat|butter)$/.test(noun.text);
    if (isOfFat && name?.t === 'name' && name.meaning.kind !== 'fat') continue;
    if (!pronoun || name?.t !== 'name' || weighedThings(tokens).has(thingOf(name))) continue;
    out ??= [...tokens];
    out[rest < 0 ? k + 2 : rest] = { ...name, from: pronoun.from, to: pronoun.to };
  }
  return out ?? tokens;
}

/** Tokens from the name to what is weighed of it, at the most. */
const longestWay = 40;

/** Where the fat or the liquid stands that was named last before token `k`; -1 where an alkali was, or none. */
function namedLast(tokens: readonly Token[], k: number): number {
  for (let at = k - 1; at >= 0 && k - at <= longestWay; at--) {
    const name = tokens[at];
    if (name?.t !== 'name') continue;
    const { kind } = name.meaning;
    const next = tokens[at + 1];
    if (kind === 'fat' || (kind === 'liquid' && !(next?.t === 'word' && drinkless.test(next.text)))) return at;
    if (kind === 'alkali' || kind === 'stock') return -1;
  }
  return -1;
}

/** "There's always duck fat. I've 600 g, and 150 g coconut": where the verb of having stands; null where it names its own. */
function isOwned(tokens: readonly Token[], k: number, token: Figure): number | null {
  const behind = tokens[k + 1];
  const ends = behind === undefined || isStop(behind) || isMark(behind, /^,$/) || token.quantity.text.endsWith('.');
  if (!isMeasured(token) || !ends) return null;
  const at = /^(about|around|just|only|some|nearly)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
  const verb = wordAt(tokens, at);
  return verb === 'ive' || (/^(have|got)$/.test(verb) && wordAt(tokens, at - 1) === 'i') ? at : null;
}

/** Where "left" stands behind "290 g", "290 g were"; -1 where it does not. */
const leftAt = (tokens: readonly Token[], k: number): number =>
  [k + 1, k + 2].find((at) => isWord(tokens[at], 'left') || isWord(tokens[at], 'remained')) ?? -1;

/** "Simmered till flat, and 290 g were left": of a liquid that was named before. */
const boiledDown = (tokens: readonly Token[], k: number, token: Figure): boolean =>
  isMeasured(token) &&
  leftAt(tokens, k) > 0 &&
  isAny(tokens, k - 10, k, (one) => one.t === 'word' && /^(boil|simmer|reduc|evaporat|cook)/.test(one.text));

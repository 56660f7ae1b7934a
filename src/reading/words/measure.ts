import { type Unit, unit } from '../../units/units.ts';
import type { Prim } from '../text/scan.ts';
import type { Lexicon, Trie } from './lexicon.ts';

export interface UnitHit {
  readonly unit: Unit;
  readonly end: number;
}

/** One-letter units that the case or the neighbourhood decides. */
function letterUnit(prim: Prim, value: number | null): string | null {
  if (prim.kind !== 'word' || prim.raw.length !== 1) return null;
  if (prim.raw === 'T') return value !== null && value <= 20 ? 'tbsp' : null;
  if (prim.raw === 't') return prim.glued && value !== null && value <= 20 ? 'tsp' : null;
  if (prim.text === 'c') {
    if (value !== null && value >= 15) return '°C';
    return prim.raw === 'c' || (value !== null && value < 10) ? 'cup' : null;
  }
  if (prim.text === 'f') return value !== null && value >= 32 ? '°F' : null;
  if (prim.text === 'k') return prim.glued ? 'kg' : null;
  return null;
}

/** The unit that stands at prim `i`, longest name first; `value` helps with one-letter units. */
export function unitAt(
  prims: readonly Prim[],
  i: number,
  lexicon: Lexicon,
  value: number | null = null,
): UnitHit | null {
  const first = prims[i];
  if (!first || first.kind === 'line' || first.kind === 'number') return null;
  let node: Trie<string> | undefined = lexicon.units;
  let best: UnitHit | null = null;
  let j = i;
  while (node && j < prims.length && j - i < 5) {
    const prim = prims[j];
    if (!prim || prim.kind === 'line') break;
    if (j > i && prim.kind === 'sign' && prim.text === '.' && prim.glued) {
      j++;
      continue;
    }
    const next: Trie<string> | undefined = node.next?.get(prim.text);
    if (!next) break;
    node = next;
    j++;
    if (node.hit) best = { unit: unit(node.hit), end: j };
  }
  // seconds, hours, litres, stone: a lone letter counts only tight behind its figure or before a boundary
  // "36 h later" is a time: nothing in a recipe is called h, unless it is H 2 O
  if (
    best &&
    best.end === i + 1 &&
    !first.glued &&
    (first.text === 's' ||
      first.text === 'st' ||
      (first.text === 'h' && prims[i + 1]?.glued && prims[i + 1]?.kind !== 'sign'))
  )
    best = null;
  if (!best) {
    const letter = letterUnit(first, value);
    if (letter) best = { unit: unit(letter), end: i + 1 };
  }
  // 5# is five pounds; "#5" is a number that names something
  if (!best && first.text === '#' && first.glued && !(prims[i + 1]?.kind === 'number' && prims[i + 1]?.glued))
    best = { unit: unit('lb'), end: i + 1 };
  // "us cup" says which
  if (best?.unit.id === 'cup' && best.end === i + 1) best = { ...best, unit: unit(lexicon.cup) };
  if (best) {
    const dot = prims[best.end];
    if (
      dot?.kind === 'sign' &&
      dot.text === '.' &&
      dot.glued &&
      /^(oz|ozs|lb|lbs|gr|gm|gms|ml|tbsp|tsp|kg|g|qt|pt|gal|fl|in|min|hr|hrs|mins|cm)$/.test(
        prims[best.end - 1]?.text ?? '',
      )
    )
      best = { ...best, end: best.end + 1 };
  }
  return best;
}

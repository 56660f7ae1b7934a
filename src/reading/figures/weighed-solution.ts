/** A solution that a row weighs as a whole: "NaOH as 50 % solution in water, 278 g", "Caustic: 50 % solution, 278 g". */
import { type Item, thingItem } from '../rows/items.ts';
import { isMark, isStop, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
const isThing = (item: Item | undefined): item is Thing => item?.kind === 'thing';

/** Share of alkali in the strongest solution that keeps, with what people round it up to. */
const strongest = 0.55;
/** Items of such a row, at the most: "Lye: NaOH as 50 % solution in water, 278 g". */
const mostItems = 6;

const isWater = ({ named: { meaning } }: Thing): boolean => meaning.kind === 'water';
const isSolution = ({ named: { meaning } }: Thing): boolean => meaning.kind === 'role' && meaning.id === 'solution';
const isAlkali = ({ named: { meaning } }: Thing): boolean => meaning.kind === 'alkali';

/** "Of", "in distilled", "as a": what joins the pieces of one name. */
const joints: ReadonlySet<string> = new Set('of in with made from the a an as at distilled w by weight'.split(' '));

/** No sign between two items, and no word that is none of a name. */
function isJoined(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (!joints.has(wordAt(tokens, k)) && !isMark(tokens[k], '/')) return false;
  return true;
}

/** A sign between two items of one row, as before what the row weighs. */
function isParted(tokens: readonly Token[], from: number, to: number): boolean {
  let parted = false;
  for (let k = from; k < to; k++) {
    if (isStop(tokens[k])) return false;
    parted ||= isMark(tokens[k], ',:=()–-');
  }
  return parted;
}

/** Words at the most stand between two items. */
const isBeside = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).every((token) => token.t === 'word');

interface Pieces {
  alkali: Thing | null;
  strength: Amount | null;
  weight: Amount | null;
  /** It is called a solution, or stands in water. */
  solution: boolean;
}

/** The items from `k` on are such a row: what stands for them, and how many they were. */
function rowAt(
  items: readonly Item[],
  tokens: readonly Token[],
  k: number,
): { readonly row: readonly Item[]; readonly length: number } | null {
  const found: Pieces = { alkali: null, strength: null, weight: null, solution: false };
  let n = k;
  for (; n < items.length && n - k < mostItems; n++) {
    const [before, item, next] = [n > k ? items[n - 1] : undefined, items[n], items[n + 1]];
    if (!item || (before && tokens.slice(before.to, item.from).some(isStop))) break;
    const done = found.alkali !== null && found.strength !== null && found.weight !== null && found.solution;
    const joined = before !== undefined && isJoined(tokens, before.to, item.from);
    if (done && !(isThing(item) && joined)) break;
    if (isAmount(item)) {
      const { dim, value } = item.quantity;
      if (dim === 'percent' && value > 0 && value <= strongest && !found.strength && !item.pure) found.strength = item;
      else if ((dim === 'mass' || dim === 'bare') && !found.weight && !item.total) {
        // "33 % solution, 278 g water", "278 g lye in water, 50 %"
        const after = isThing(next) && isBeside(tokens, item.to, next.from);
        const parted = before === undefined || isParted(tokens, before.to, item.from);
        if (after || !parted) return null;
        found.weight = item;
      } else return null;
    } else if (isAlkali(item)) {
      const id = found.alkali?.named.meaning.id;
      if (found.strength && !joined) return null;
      if (id !== undefined && id !== 'unsaid' && item.named.meaning.id !== 'unsaid' && id !== item.named.meaning.id)
        return null;
      if (id === undefined || id === 'unsaid') found.alkali = item;
    } else if (isSolution(item)) found.solution = true;
    else if (isWater(item)) {
      if (before === undefined || !joined || !/^(?:in|with)$/.test(wordAt(tokens, before.to))) return null;
      found.solution = true;
    } else return null;
  }
  const { alkali, strength, weight, solution } = found;
  const meaning = alkali?.named.meaning;
  if (!alkali || meaning?.kind !== 'alkali' || !strength || !weight || !solution) return null;
  const at = Math.min(alkali.from, strength.from);
  const stock = thingItem({ ...alkali.named, meaning: { kind: 'stock', id: meaning.id } }, at, at);
  const said = { ...strength, from: at, to: at };
  return { row: weight.from < at ? [weight, stock, said] : [stock, said, weight], length: n - k };
}

/** Items in which the solution that a row weighs is one thing with its strength and its weight. */
export function weighedSolution(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  for (let k = 0; k < items.length; k++) {
    const [item, next] = [items[k], items[k + 1]];
    const opens = isAmount(item)
      ? isAmount(next) || (isThing(next) && (isAlkali(next) || isSolution(next)))
      : isThing(item) && isAlkali(item);
    const found = opens ? rowAt(items, tokens, k) : null;
    if (found) return [...items.slice(0, k), ...found.row, ...items.slice(k + found.length)];
  }
  return items;
}

/** Lye solutions without a recipe: water for alkali, strength, stock, dilution. */
import type { AlkaliId } from '../../catalogue/types.ts';
import type { Unit } from '../../units/units.ts';
import { isOf, isRole, type Owned, weighs } from './bind.ts';
import type { Facts, Measure, Thing } from './facts.ts';

export type AskedOf = 'water' | 'alkali' | 'stock' | 'strength' | 'ratio' | 'solution';

export interface StrengthQuestion {
  readonly kind: 'strength';
  /** Null where it cannot be told what is wanted. */
  readonly asks: AskedOf | null;
  readonly alkaliId: AlkaliId | 'unsaid';
  readonly alkali: Measure | null;
  readonly water: Measure | null;
  readonly solution: Measure | null;
  /** Weight of the fats, for water as a share of it. */
  readonly fats: Measure | null;
  readonly shareOfFats: Measure | null;
  /** Alkali in the solution; two where one strength is thinned to another. */
  readonly strengths: readonly Measure[];
  /** Water to alkali by mass. */
  readonly ratio: { readonly value: number; readonly text: string } | null;
  readonly to: Unit | null;
}

const howStrong =
  /\bhow (strong|concentrated)\b|\b(what|whats|which|work out|calculate|find)\b[^?.]{0,40}\b(concentration|strength|conc|dilution|percent(age)?)\b|\bwhat %|\bhow many (percent|%)|\b(concentration|strength|percentage) (of|for|if|when|with)\b|(concentration|strength|percent|%) \?/;
const whatRatio = /\b(what|whats|which)\b[^?.]{0,30}\bratio\b|\bratio (of|for|is|if|when)\b[^?.]*\?|\bwhat parts\b/;
/** Words of another question: what happens to the temperature, or to the vessel. */
const heat =
  /\b(hot|hotter|temp|temps|temperature|temperatures|peak|cool|cools|cooled|cooling|boil|boils|boiling|ice|heat|jug|vessel|aluminium|aluminum|steel|glass|plastic)\b/;
const take = /\b(weigh|use|take|measure|pour|need|want|add)\b/;
const solutionRole = /^(solution|total-solution|concentration|ratio|ratio-lye-water)$/;

export function readStrength(facts: Facts, all: readonly Owned[], forced: boolean): StrengthQuestion | null {
  const { things, roles, words } = facts;
  if (heat.test(words) && !forced) return null;
  // "lye for 500 g oil, 5 %": a recipe's question, whatever the fat is
  if (!forced && all.some((one) => weighs(one) && (isOf(one, 'fat') || isOf(one, 'ambiguous') || isOf(one, 'unheld'))))
    return null;
  const alkalis = things.filter(({ meaning }) => meaning.kind === 'alkali');
  const stocks = things.filter(({ meaning }) => meaning.kind === 'stock');
  const asksWater = things.some(({ meaning, asked }) => meaning.kind === 'water' && asked);
  const solutionWord = roles.some(({ meaning }) => meaning.kind === 'role' && solutionRole.test(meaning.id));
  const fats = all.find((one) => isRole(one, /^total-fats$/) && weighs(one))?.measure ?? null;
  const watery = asksWater || /\bwater\b/.test(words);
  const about = alkalis.length + stocks.length > 0 || (watery && (solutionWord || fats !== null));
  if (!about && !forced) return null;

  const measureOf = (wanted: (one: Owned) => boolean): Measure | null =>
    all.find((one) => weighs(one) && wanted(one))?.measure ?? null;
  const percents = all.filter(({ measure }) => measure.dim === 'percent');
  // "500 g of 50 % lye" is a solution; "100 g lye, 30 %" is not
  const dissolved = (thing: Thing | null): boolean =>
    thing !== null &&
    percents.some(({ measure, owner }) => owner === thing && measure.value < 0.6 && measure.to === thing.from);
  const alkali = measureOf((one) => isOf(one, 'alkali') && !dissolved(one.owner));
  const water = measureOf((one) => isOf(one, 'water'));
  // "how much lye for 5 lb of soap": no solution is spoken of
  const whole = solutionWord || percents.length > 0 ? /^(solution|total-solution|total|batch-word)$/ : solutionRole;
  const solution = measureOf((one) => isOf(one, 'stock') || dissolved(one.owner) || isRole(one, whole));
  const shareOfFats =
    percents.find((one) => isRole(one, /^total-fats$/))?.measure ?? (fats ? (percents[0]?.measure ?? null) : null);
  const strengths = percents
    .filter((one) => one.measure !== shareOfFats && !isPurity(one))
    .map(({ measure }) => measure);
  const known = { alkali, water, solution, fats, strengths, ratio: ratioOf(facts, all, forced) };
  const stock = stocks.length > 0 || alkalis.some(dissolved);
  const asksStock =
    alkalis.some((one) => one.asked && dissolved(one)) ||
    (strengths.length === 1 && roles.some(({ meaning, asked }) => meaning.id === 'solution' && asked));
  const asks = asksStock && alkali ? 'stock' : askedOf(facts, known, stock, solutionWord || stock || forced, forced);
  if (asks === null && !forced) return null;
  // "how much 50 % stock for 128 g": of what it holds
  const lone = all.find((one) => weighs(one) && one.owner === null)?.measure ?? null;
  const held = asks === 'stock' && !alkali && !solution ? lone : alkali;
  const said = [...alkalis, ...stocks].find(({ meaning }) => meaning.id !== 'unsaid');
  return {
    kind: 'strength',
    asks,
    alkaliId: (said?.meaning.id as AlkaliId | undefined) ?? 'unsaid',
    ...known,
    alkali: held,
    shareOfFats,
    to: facts.units.find(({ lead }) => lead === 'many' || lead === 'to')?.unit ?? null,
  };
}

const isPurity = (one: Owned): boolean =>
  isRole(one, /^(superfat|purity)$/) || (isOf(one, 'alkali') && one.measure.value >= 0.7);

type Known = Pick<StrengthQuestion, 'alkali' | 'water' | 'solution' | 'fats' | 'strengths' | 'ratio'>;

/** What is missing, said or plain from the rest. */
function askedOf(
  { things, words, units }: Facts,
  known: Known,
  stock: boolean,
  solutions: boolean,
  forced: boolean,
): AskedOf | null {
  const { alkali, water, solution, strengths, ratio, fats } = known;
  const asked = things.find((thing: Thing) => thing.asked && /^(water|alkali|stock)$/.test(thing.meaning.kind));
  const given = [alkali, water, solution, fats, ratio, ...strengths].filter((one) => one !== null).length;
  if (strengths.length === 1 && given === 1 && /\bratio\b/.test(words)) return 'ratio';
  if (howStrong.test(words) && !(asked && strengths.length > 0)) return given > 0 ? 'strength' : null;
  if (whatRatio.test(words) && ratio === null) return given > 0 ? 'ratio' : null;
  if (stock && alkali && ratio && strengths.length === 0 && !asked && take.test(words)) return 'stock';
  if (asked?.meaning.kind === 'stock') return water && alkali ? 'solution' : 'stock';
  if (asked) return given > 0 || asked.meaning.kind === 'water' ? (asked.meaning.kind as AskedOf) : null;
  if (!forced && !/\b(how|what|whats|which|need|want|make|calculate|work out|to get)\b|\?/.test(words)) return null;
  if (fats && /\bwater\b/.test(words) && !alkali) return 'water';
  if (solution && strengths.length > 1) return 'water';
  if (solution && strengths.length === 1) return alkali ? null : /\bwater\b/.test(words) ? 'water' : 'alkali';
  // "my lye is a 50 % solution, how much of it do I weigh out"
  const ofIt = /\bhow much (?:of (?:it|that|this|the (?:solution|stock|mix|lye))|solution|stock)\b/.test(words);
  if (alkali && strengths.length === 1 && ofIt && !/\bwater\b/.test(words)) return 'stock';
  if (alkali && strengths.length > 0) {
    const takes = take.test(words) || units.some(({ lead }) => lead === 'many') || /\bfrom\b/.test(words);
    return stock && takes && !/\bto make\b/.test(words) ? 'stock' : 'water';
  }
  if (alkali && ratio) return stock && take.test(words) && !/\bwater\b/.test(words) ? 'stock' : 'water';
  if (water && (strengths.length > 0 || ratio)) return 'alkali';
  if ((water || solution) && alkali) return solutions ? 'strength' : null;
  if (ratio) return 'strength';
  if (strengths.length === 1) return solutions ? 'ratio' : null;
  return alkali && /\bwater\b/.test(words) ? 'water' : null;
}

/** Water to alkali: "2:1", "2 to 1 water to lye", "2.2 parts water to 1 part lye", "twice as much water". */
function ratioOf({ words }: Facts, all: readonly Owned[], forced: boolean): StrengthQuestion['ratio'] {
  const parts = all.filter(({ measure }) => measure.dim === 'parts');
  const water = parts.find((one) => isOf(one, 'water'))?.measure;
  const lye = parts.find((one) => isOf(one, 'alkali'))?.measure;
  if (water && lye && lye.value > 0) return { value: water.value / lye.value, text: `${water.text} to ${lye.text}` };
  // two alkalis have a ratio, too
  const watery = forced || /\b(water|lye|solution|stock|masterbatch)\b/.test(words);
  const found = all.find(
    ({ measure: { dim, second, upTo }, owner }) =>
      (dim === 'ratio' && second !== null && ((owner !== null && isRatio(owner)) || watery)) ||
      (dim === 'bare' && owner !== null && ((upTo !== null && watery) || isRatio(owner))),
  );
  if (!found) return null;
  const { measure, owner } = found;
  const { value, text } = measure;
  const second = measure.second ?? measure.upTo ?? 1;
  if (!(second > 0) || !(value > 0)) return { value: 0, text };
  const lyeFirst =
    owner?.meaning.id === 'ratio-lye-water' || /\b(lye|naoh|koh|alkali)\s*(to|:|\/)\s*water\b/.test(words);
  const plain = lyeFirst ? second / value : value / second;
  // both "2:1" and "1:2" are written for twice as much water as alkali
  return { value: plain < 1 ? 1 / plain : plain, text };
}

const isRatio = ({ meaning }: Thing): boolean => meaning.kind === 'role' && /^ratio/.test(meaning.id);

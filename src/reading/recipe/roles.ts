import { withUnit } from '../columns/columns.ts';
import { isPutIn } from '../figures/of-it.ts';
import { isTakenOut } from '../figures/out-of-pack.ts';
import type { Purity } from '../reading.ts';
import type { Binding } from '../rows/bind.ts';
import type { Item } from '../rows/items.ts';
import { mayStandForAbove } from '../taken-back/beneath.ts';
import type { Quantity } from '../words/quantities.ts';
import type { RoleName } from '../words/words.ts';
import { type Assembly, roundTo, unitFor } from './rows.ts';
import { movedTo } from './thought-aloud.ts';
import { totalMeant } from './which-total.ts';

/** Why a figure that belongs to this role is not part of the recipe. */
const asideRoles: Partial<Readonly<Record<RoleName, string>>> = {
  mould: 'the size of the mould',
  pot: 'the size of a vessel or a pack',
  bars: 'a number or size of bars',
  cure: 'a time',
  temperature: 'a temperature',
  number: 'a number that only counts or names something',
  chart: 'a value out of a chart',
  time: 'a time of day',
  price: 'a price',
  people: 'a count',
  scale: 'the scale',
  heading: 'a heading',
  target: 'a wish',
  each: 'a count',
  'batch-word': 'the size of the batch',
  'scale-to': 'a size to scale to',
  supply: 'what there is to take from',
};

export interface Roles {
  superfat: number | null;
  concentration: number | null;
  ratio: number | null;
  purity: Purity | null;
  totalFats: Quantity | null;
  /** Another weight of all the fats, which may as well be meant. */
  totalRival: Quantity | null;
  /** The token of the total. */
  totalAt: number;
  totals: {
    readonly quantity: Quantity;
    readonly grams: number;
    readonly strict: boolean;
    readonly solution: boolean;
  }[];
  /** Weights of the batch or the soap, with the token that their name begins with. */
  batches: { readonly quantity: Quantity; readonly at: number }[];
  scaleStep: number | null;
  /** Asked superfat that cannot be: kept so that the command can refuse it. */
  superfatSaid: Quantity | null;
}

export const asPurity = (quantity: Quantity): Purity => {
  const scale = quantity.dim === 'percent' ? 1 : 0.01;
  const low = quantity.value * scale;
  const high = (quantity.upTo ?? quantity.value) * scale;
  return { nominal: (low + high) / 2, low, high };
};

/** "3 oils": as many as are named, and no weight. */
const isCount = (value: number, items: readonly Item[]): boolean =>
  value ===
  new Set(
    items.flatMap((item) =>
      item.kind === 'thing' && item.named.meaning.kind === 'fat' ? [item.named.meaning.id] : [],
    ),
  ).size;

/** "Three fats": no weight is said in words without a unit. */
const isFew = ({ inWords, value }: Quantity): boolean => inWords && Number.isInteger(value) && value <= 12;

/** Steps of scales, in grams; what a scale shows beyond is the weight of something. */
const mostStep = 10;
/** Steps (g) of scales that people weigh a batch on. */
const ownSteps = { least: 0.001, most: 50 };

/** "My scale does 0.05", where all is in ounces. */
function stepOf(assembly: Assembly, quantity: Quantity, token: number): number | null {
  const unit = quantity.dim === 'bare' && quantity.value < 1 ? unitFor(assembly, token) : null;
  const { dim, value } = unit ? withUnit(quantity, unit.unit) : quantity;
  if (dim !== 'mass' || value < ownSteps.least || value > ownSteps.most) return null;
  if (unit) assembly.assume('unit', `I took the scale's ${quantity.text} in ${unit.unit}, as the rest.`);
  return value;
}

/** "The solution weighs", "lye solution 420 g in total", "lye 135 g and water together". */
function isOfSolution(items: readonly Item[], total: number): boolean {
  let isWet = false;
  for (let k = total - 1; k >= Math.max(0, total - 3); k--) {
    const item = items[k];
    if (item?.kind !== 'thing') continue;
    const { kind, id } = item.named.meaning;
    if (kind === 'stock' || (kind === 'role' && id === 'solution')) return true;
    if (kind === 'alkali') return isWet;
    if (kind !== 'water') return false;
    isWet = true;
  }
  return false;
}

const isOfFats = (item: Item | undefined, from: number): boolean =>
  item?.kind === 'thing' &&
  item.from === from &&
  item.named.meaning.kind === 'role' &&
  item.named.meaning.id === 'total-fats';

/** No fat has a weight of its own. */
const sharesOnly = ({ groups }: Binding, items: readonly Item[]): boolean =>
  !groups.some(
    ({ things, amounts }) =>
      things.some((k) => isFat(items[k])) && amounts.some((k) => !isPercent(items[k]) && !isPart(items[k])),
  );
const isFat = (item: Item | undefined): boolean => item?.kind === 'thing' && item.named.meaning.kind === 'fat';
const isPart = (item: Item | undefined): boolean => item?.kind === 'amount' && item.quantity.dim === 'parts';

const isPercent = (item: Item | undefined): boolean => item?.kind === 'amount' && item.quantity.dim === 'percent';

/** The weight of all the fats; of two, the one that is to be made, or the last. */
function takeTotal(assembly: Assembly, roles: Roles, total: Quantity, at: number): void {
  const before = roles.totalFats;
  if (before && Math.abs(before.value - total.value) > 0.01 * total.value) {
    const meant = totalMeant(assembly.source.tokens, roles.totalAt, at);
    const [kept, gone] = meant === roles.totalAt ? [before, total] : [total, before];
    roles.totalRival = meant === null ? before : null;
    if (meant !== null)
      assembly.assume('left-out', `I took ${kept.text} as the weight of all the fats, not ${gone.text}.`);
    if (meant === roles.totalAt) return;
  }
  roles.totalFats = total;
  roles.totalAt = at;
}

export function readRoles(assembly: Assembly, binding: Binding): Roles {
  const { items } = assembly.source;
  const roles: Roles = {
    superfat: null,
    concentration: null,
    ratio: null,
    purity: null,
    totalFats: null,
    totalRival: null,
    totalAt: -1,
    totals: [],
    batches: [],
    scaleStep: null,
    superfatSaid: null,
  };
  const weighsAlkali = (): boolean =>
    binding.groups.some(
      (group) =>
        group.amounts.length > 0 &&
        group.things.some((k) => {
          const item = items[k];
          return (
            item?.kind === 'thing' && (item.named.meaning.kind === 'alkali' || item.named.meaning.kind === 'stock')
          );
        }),
    );
  const gramsHere = (quantity: Quantity, token: number): number | null => {
    if (quantity.dim === 'mass' || quantity.dim === 'volume') return quantity.value;
    if (quantity.dim !== 'bare') return null;
    const found = unitFor(assembly, token);
    return found ? withUnit(quantity, found.unit).value : null;
  };
  for (const group of binding.groups) {
    const thing = items[group.things[0] ?? -1];
    if (thing?.kind !== 'thing' || thing.named.meaning.kind !== 'role') continue;
    const role = thing.named.meaning.id;
    for (const k of group.amounts) {
      const item = items[k];
      if (item?.kind !== 'amount') continue;
      const { quantity } = item;
      if (item.same) assembly.fate(item.same, 'used', 'the same in another unit');
      const { tokens } = assembly.source;
      // "a tin from the fair, 400 g of it went in": of the tin's weight nobody says that
      const isNoSize = isPutIn(tokens, item.from) || (role === 'pot' && isTakenOut(tokens, item, thing, items));
      if (asideRoles[role] && quantity.dim === 'mass' && isNoSize) {
        assembly.fate(quantity, 'unclear', 'no name takes it');
        assembly.doubts.push({ id: 'unplaced', said: quantity.text });
        continue;
      }
      const aside = asideRoles[role];
      const value = quantity.dim === 'percent' ? quantity.value : quantity.value / 100;
      switch (role) {
        case 'superfat':
          // "the two gaps for the usual five per cent of superfat"
          if (quantity.dim === 'bare' && group.amounts.some((at) => isPercent(items[at]))) {
            assembly.fate(quantity, 'aside', 'a count');
            break;
          }
          roles.superfatSaid = quantity;
          if (quantity.upTo !== null && !weighsAlkali())
            assembly.doubts.push({ id: 'range', said: quantity.text, of: 'superfat' });
          else if (quantity.upTo !== null)
            assembly.assume(
              'left-out',
              `I read the superfat "${quantity.text}" as a wish, and reckon what the amounts give.`,
            );
          else if (
            roles.superfat !== null &&
            Math.abs(roles.superfat - value) > 1e-6 &&
            (assembly.asksForAlkali() || !weighsAlkali())
          )
            assembly.doubts.push({
              id: 'two-amounts',
              of: 'superfat',
              said: [`${roundTo(roles.superfat * 100, 2)} %`, `${roundTo(value * 100, 2)} %`],
            });
          else if (roles.superfat !== null && Math.abs(roles.superfat - value) > 1e-6)
            assembly.assume('left-out', `The post says two superfats; I took ${roundTo(roles.superfat * 100, 2)} %.`);
          else roles.superfat = quantity.negative ? -value : value;
          if (!weighsAlkali() && quantity.dim === 'percent') {
            const moved = movedTo(assembly.source.tokens, item);
            if (moved.length > 0)
              assembly.doubts.push({ id: 'two-amounts', of: 'superfat', said: [quantity.text, ...moved] });
          }
          assembly.fate(quantity, 'used', 'superfat');
          break;
        case 'concentration':
        case 'solution':
          if (quantity.dim === 'percent' || quantity.dim === 'bare') {
            // "40 %. Top 10 facts": a bare figure is none where a share is said
            const isLess = quantity.dim === 'bare' && roles.concentration !== null;
            if (!isLess) roles.concentration = value;
            assembly.fate(
              quantity,
              isLess ? 'aside' : 'used',
              isLess ? 'no ingredient beside it' : 'lye concentration',
            );
          } else {
            const grams = gramsHere(quantity, item.from);
            if (grams !== null) roles.totals.push({ quantity, grams, strict: false, solution: true });
            assembly.fate(quantity, 'used', 'weight of the solution');
          }
          break;
        case 'ratio':
        case 'ratio-lye-water': {
          const plain =
            quantity.dim === 'ratio' && quantity.second !== null ? quantity.value / quantity.second : quantity.value;
          const turned = role === 'ratio-lye-water' && plain > 0 ? 1 / plain : plain;
          // both "2:1" and "1:2" are written for twice as much water as alkali
          roles.ratio = turned > 0 && turned < 1 ? 1 / turned : turned;
          assembly.fate(quantity, 'used', 'water to alkali');
          break;
        }
        case 'equal':
          break;
        case 'purity':
          roles.purity = asPurity(quantity);
          assembly.fate(quantity, 'used', 'purity');
          break;
        case 'total-fats':
          if (quantity.dim === 'bare' && (isCount(quantity.value, items) || isFew(quantity))) {
            assembly.fate(quantity, 'aside', 'a count');
            break;
          }
          // "reckon with 0 % on the four fats"
          if (quantity.dim === 'percent' && quantity.value === 0 && roles.superfat === null) {
            roles.superfat = 0;
            assembly.assume('left-out', `I took ${quantity.text} as the superfat.`);
          }
          if (quantity.dim !== 'percent') {
            const total =
              quantity.dim === 'bare' ? withUnit(quantity, unitFor(assembly, item.from)?.unit ?? 'g') : quantity;
            takeTotal(assembly, roles, total, item.from);
          }
          assembly.fate(quantity, 'used', 'total of the fats');
          break;
        case 'total':
        case 'total-solution':
          // "altogether 900 g of oils"
          if (isOfFats(items[k + 1], item.to)) {
            if (quantity.dim === 'mass') takeTotal(assembly, roles, quantity, item.from);
          } else if (quantity.dim !== 'percent') {
            const grams = gramsHere(quantity, item.from);
            const word = thing.named.meant;
            if (grams !== null && quantity.upTo === null)
              roles.totals.push({
                quantity,
                grams,
                strict: !/yield|gibt|ergibt|weigh|net|gross|soap|finished|worth|comes|whole/.test(word),
                solution: role === 'total-solution' || isOfSolution(items, group.things[0] ?? 0),
              });
          }
          assembly.fate(quantity, quantity.dim === 'percent' ? 'aside' : 'used', 'a total');
          break;
        case 'batch-word':
          if (quantity.dim === 'mass') roles.batches.push({ quantity, at: thing.from });
          assembly.fate(quantity, 'aside', aside ?? 'the size of the batch');
          break;
        case 'scale-to':
          // "my tray takes about 950 g of oils, but make it 900 g"
          if (quantity.dim === 'mass' && roles.totalFats && sharesOnly(binding, items)) {
            assembly.assume(
              'left-out',
              `I took ${quantity.text} as the weight of all the fats, not ${roles.totalFats.text}.`,
            );
            roles.totalFats = quantity;
            assembly.fate(quantity, 'used', 'total of the fats');
          } else if (mayStandForAbove(assembly.source.tokens, item)) {
            assembly.doubts.push({ id: 'unplaced', said: quantity.text });
            assembly.fate(quantity, 'unclear', 'no name takes it');
          } else assembly.fate(quantity, 'aside', aside ?? 'a size to scale to');
          break;
        case 'scale':
          roles.scaleStep = stepOf(assembly, quantity, item.from) ?? roles.scaleStep;
          // "the scale said somewhere between 190 and 240": of what?
          if ((quantity.dim === 'mass' || quantity.dim === 'bare') && quantity.value > mostStep) {
            assembly.doubts.push({ id: 'unplaced', said: quantity.text });
            assembly.fate(quantity, 'unclear', 'no name takes it');
          } else assembly.fate(quantity, 'used', 'the scale');
          break;
        default:
          assembly.fate(quantity, 'aside', aside ?? 'no ingredient');
      }
    }
  }
  return roles;
}

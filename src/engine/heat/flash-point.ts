/**
 * Flash point of one scent or a blend, °C: an ignition figure (GHS 2.6), not where a scent evaporates.
 *
 * Conservative: the low end of the lowest part. As information: the ideal mixture of Liaw et al. 2002,
 * Σ xᵢ Pᵢ(T)/Pᵢ(Tᵢ) = 1 with Tᵢ the flash point of part i, each oil as one substance with the vapour-pressure curve of
 * its main component. It lies between its parts by construction; against the one official figure at hand (tea tree) a
 * model of this kind read 5 to 6 K high, so at least 6 K are taken off whatever figure is used.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { root } from './numeric.ts';
import { type Band, done, fail, firstBad, type Outcome } from './outcome.ts';
import { KELVIN } from './properties.ts';

const GAS_CONSTANT = 8.314462618;

export interface ScentPart {
  /** Of the catalogue; null for a fragrance known by its data sheet alone. */
  readonly oil: string | null;
  readonly grams: number;
  /** From the batch's safety data sheet: replaces ours. */
  readonly flashC?: number;
}

export interface PartFlash {
  readonly oil: string | null;
  readonly grams: number;
  readonly lowC: number;
  readonly highC: number;
  readonly given: boolean;
  readonly fromMemory: boolean;
}

export type GhsCategory = 'category-2-or-1' | 'category-3' | 'category-4' | 'none';

export interface ScentFlash {
  /** Low end of the lowest part. */
  readonly flashPointC: number;
  readonly lowest: PartFlash;
  readonly parts: readonly PartFlash[];
  /** Ideal mixture at the low, middle and high ends of its parts; null for one part or without vapour data. */
  readonly modelledC: Band | null;
  readonly marginK: number;
  readonly addBelowC: number;
  /** False where soap that cool has stiffened. */
  readonly pourable: boolean;
  /** °C range below which hot-process soap stiffens. */
  readonly stiffensC: readonly [number, number];
  readonly ghs: GhsCategory;
}

/** GHS 2.6 by flash point; category 4 is not in CLP. */
export function ghsCategory(flashC: number): GhsCategory {
  if (flashC < 23) return 'category-2-or-1';
  if (flashC <= 60) return 'category-3';
  return flashC <= 93 ? 'category-4' : 'none';
}

/** ln of the vapour pressure of a component against its value at `fromC`. */
function vapourRise(data: HeatData, componentId: string, fromC: number): ((celsius: number) => number) | null {
  const component = data.components.get(componentId);
  if (!component) return null;
  const from = fromC + KELVIN;
  if (component.vaporisation) {
    const kelvin = (component.vaporisation.nominal * 1000) / GAS_CONSTANT;
    return (celsius) => kelvin * (1 / from - 1 / (celsius + KELVIN));
  }
  if (!component.antoine) return null;
  const { b, c } = component.antoine;
  return (celsius) => b / (from + c) - b / (celsius + KELVIN + c);
}

/**
 * The ideal-mixture flash point of parts given by mole number, component and flash point, °C; NaN without a root. What cannot
 * burn (water) counts as `inertMoles`.
 * Antoine sets are used for a ratio over some tens of kelvin only, which bears a step outside their range.
 */
export function idealFlash(
  data: HeatData,
  parts: readonly { readonly moles: number; readonly component: string; readonly flashC: number }[],
  inertMoles = 0,
): number {
  const total = parts.reduce((sum, { moles }) => sum + moles, inertMoles);
  const rises = parts.map(({ moles, component, flashC }) => ({
    share: moles / total,
    rise: vapourRise(data, component, flashC),
  }));
  const flashes = parts.map(({ flashC }) => flashC);
  const low = Math.min(...flashes);
  const high = Math.max(...flashes);
  if (low === high && inertMoles === 0) return low;
  const over = (celsius: number): number =>
    rises.reduce((sum, { share, rise }) => sum + share * (rise ? Math.exp(rise(celsius)) : Number.NaN), -1);
  return root(over, low, inertMoles > 0 ? high + 150 : high, 1e-6);
}

function modelled(data: HeatData, parts: readonly PartFlash[]): Band | null {
  if (parts.length < 2) return null;
  const rows: { moles: number; component: string; part: PartFlash }[] = [];
  for (const part of parts) {
    const component = data.components.get(data.oils.get(part.oil ?? '')?.vapour ?? '');
    if (!component) return null;
    rows.push({ moles: part.grams / component.molarMass.value, component: component.id, part });
  }
  const at = (pick: (part: PartFlash) => number): number =>
    idealFlash(
      data,
      rows.map(({ moles, component, part }) => ({ moles, component, flashC: pick(part) })),
    );
  const band = {
    low: at(({ lowC }) => lowC),
    nominal: at(({ lowC, highC }) => (lowC + highC) / 2),
    high: at(({ highC }) => highC),
  };
  return Object.values(band).every(Number.isFinite) ? band : null;
}

/** `marginK`: at least the 6 K that the model may be off. */
export function flashOf(data: HeatData, scent: readonly ScentPart[], marginK = 0): Outcome<ScentFlash> {
  const parts: PartFlash[] = [];
  for (const { oil, grams, flashC } of scent) {
    const bad = firstBad([
      [oil ?? 'scent', grams, 0, 1e6],
      ['flash point', flashC ?? 60, -20, 250],
      ['margin', marginK, 0, 100],
    ]);
    if (bad) return fail(bad);
    if (grams <= 0) continue;
    const known = data.oils.get(oil ?? '');
    if (oil !== null && !known) return fail({ kind: 'unknown', figure: 'scent', id: oil });
    if (flashC !== undefined) parts.push({ oil, grams, lowC: flashC, highC: flashC, given: true, fromMemory: false });
    else if (known) {
      const { low, high, fromMemory } = known.flash;
      const lowest = Math.min(low, ...(known.flashPoints ?? []).map((point) => point.low));
      parts.push({ oil, grams, lowC: lowest, highC: high, given: false, fromMemory });
    } else return fail({ kind: 'unknown', figure: 'flash point', id: 'scent' });
  }
  const lowest = parts.reduce<PartFlash | undefined>((a, b) => (a && a.lowC <= b.lowC ? a : b), undefined);
  if (!lowest) return fail({ kind: 'no-scent' });
  const margin = Math.max(marginK, data.cook.scentMarginK.value);
  const addBelowC = lowest.lowC - margin;
  const { low, high } = data.cook.stiffensC;
  return done({
    flashPointC: lowest.lowC,
    lowest,
    parts,
    modelledC: modelled(data, parts),
    marginK: margin,
    addBelowC,
    pourable: addBelowC >= low,
    stiffensC: [low, high],
    ghs: ghsCategory(lowest.lowC),
  });
}

/** Which vessels stand a lye solution. The verdict is the material's; the peak decides where there is a limit. */
import type { HeatData } from '../../catalogue/heat-types.ts';

export type VesselVerdict =
  | 'fit'
  /** With the care that the material's `why` names. */
  | 'caution'
  /** The peak may pass what the material stands. */
  | 'too-hot'
  | 'unfit'
  /** Dissolves; `hydrogen` says whether with that gas. */
  | 'attacked';

export interface VesselAnswer {
  readonly material: string;
  readonly name: string;
  readonly verdict: VesselVerdict;
  readonly maxC: number | null;
  readonly hydrogen: boolean;
  readonly why: string;
  readonly source: string;
  readonly fromMemory: boolean;
}

/** `peakHighC`: the high end of the peak, °C. Null for a material nobody described. */
export function vesselFor(data: HeatData, materialId: string, peakHighC: number): VesselAnswer | null {
  const material = data.materials.get(materialId);
  if (!material) return null;
  const { verdict, maxC, hydrogen, why, source, fromMemory } = material.alkali;
  const limited = maxC !== null && peakHighC >= maxC;
  return {
    material: material.id,
    name: material.name,
    verdict: verdict === 'limit' ? (limited ? 'too-hot' : 'fit') : verdict,
    maxC,
    hydrogen,
    why,
    source,
    fromMemory,
  };
}

/** Every material at this peak, the fit ones first. */
export function vesselsFor(data: HeatData, peakHighC: number): readonly VesselAnswer[] {
  const order: readonly VesselVerdict[] = ['fit', 'caution', 'too-hot', 'unfit', 'attacked'];
  return [...data.materials.keys()]
    .flatMap((id) => vesselFor(data, id, peakHighC) ?? [])
    .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict));
}

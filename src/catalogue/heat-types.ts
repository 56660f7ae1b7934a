/**
 * What `data/heat/` holds. Temperatures in °C unless a name ends in K, heat in kJ, pressures in kPa (Antoine: Pa),
 * shares 0–1 by mass. Every datum says where it was found.
 */
import type { AlkaliId, Source } from './types.ts';

export interface Sourced {
  readonly source: string;
  readonly locator: string;
  readonly fromMemory: boolean;
  readonly note?: string;
}

export interface Value extends Sourced {
  readonly value: number;
}

export interface Range extends Sourced {
  readonly low: number;
  readonly high: number;
}

/** `low ≤ nominal ≤ high`. */
export interface Spread extends Range {
  readonly nominal: number;
}

/** Pairs [x, y] in rising x; read by linear interpolation. */
export interface Table extends Sourced {
  readonly points: readonly (readonly [number, number])[];
}

/** Apparent density of the solute, Laliberté & Cooper 2004. */
export interface DensityFit extends Sourced {
  readonly c: readonly number[];
  readonly maxShare: number;
  readonly lowC: number;
  readonly highC: number;
}

interface AlkaliSolution {
  readonly id: AlkaliId;
  readonly molarMass: Value;
  readonly solidHeatCapacity: Value;
  readonly density: DensityFit;
  /** [mass share, °C at which ice or a hydrate starts to form]. */
  readonly crystallises: Table;
  /** [°C, mass share of the saturated solution]. */
  readonly solubility: Table;
}

export interface NaohSolution extends AlkaliSolution {
  readonly enthalpy: Sourced & {
    readonly k: readonly number[];
    readonly c2: readonly number[];
    readonly c3: readonly number[];
    readonly c4: readonly number[];
    /** [up to this °C, it holds to this mass share]. */
    readonly limits: readonly (readonly [number, number])[];
  };
  readonly solidEnthalpy: Spread & { readonly atC: number };
  readonly vapourPressure: Sourced & {
    readonly a1: readonly number[];
    readonly a2: readonly number[];
    readonly a3: readonly number[];
  };
}

export interface KohSolution extends AlkaliSolution {
  /** [mass share, kJ set free per mol dissolved at `atC`]. */
  readonly heatOfSolution: Table & { readonly atC: number; readonly relativeUncertainty: number };
  /** kJ per mol of water that flake holds already. */
  readonly boundWater: Spread;
  readonly heatCapacity: Sourced & {
    readonly a: readonly number[];
    readonly maxShare: number;
    readonly lowC: number;
    readonly highC: number;
  };
  readonly vapourPressure: Sourced & {
    readonly p: readonly number[];
    readonly q: readonly number[];
    readonly w: readonly number[];
    readonly maxMolality: number;
  };
}

export interface IceWater {
  readonly heatOfFusion: Value;
  readonly iceHeatCapacity: Sourced & {
    readonly at0: number;
    readonly perK: number;
    readonly lowC: number;
    readonly highC: number;
  };
  readonly heatCapacity: Table;
  readonly heatOfVaporisation: Table;
  readonly vapourPressure: Table;
  readonly density: Table;
  readonly evaporation: Sourced & { readonly a: number; readonly b: number; readonly stillFactor: number };
}

export interface FatProperties {
  readonly heatCapacity: Sourced & {
    readonly coefficients: readonly number[];
    readonly lowC: number;
    readonly highC: number;
    readonly relativeUncertainty: number;
  };
  readonly density: Sourced & {
    readonly at25: number;
    readonly perK: number;
    readonly lowC: number;
    readonly highC: number;
  };
  readonly soapPaste: {
    readonly heatCapacity: Spread;
    readonly conductivity: Spread;
    readonly waterActivity: Spread;
    readonly density: Spread;
  };
}

/** [K, kinematic viscosity, conductivity, thermal diffusivity, Prandtl number], SI. */
export interface Air {
  readonly table: Sourced & { readonly points: readonly (readonly number[])[] };
}

/** `limit`: up to `maxC`; `caution`: with the care that `why` names; `attacked` and `unfit`: never. */
export type AlkaliStand = 'fit' | 'limit' | 'caution' | 'unfit' | 'attacked';

export interface VesselMaterial {
  readonly id: string;
  readonly name: string;
  readonly names: readonly string[];
  readonly heatCapacity: Value;
  readonly emissivity: Range | null;
  readonly alkali: Sourced & {
    readonly verdict: AlkaliStand;
    readonly maxC: number | null;
    /** Sets hydrogen free. */
    readonly hydrogen: boolean;
    readonly why: string;
  };
}

export interface PotKind {
  readonly id: string;
  readonly name: string;
  readonly names: readonly string[];
  readonly shape: 'cylinder' | 'box';
  readonly proportions: Sourced & {
    readonly diameterToHeight?: number;
    readonly lengthToWidth?: number;
    readonly heightToWidth?: number;
  };
  readonly material: string;
  /** kg of pot per litre it holds. */
  readonly massPerLitre: Spread;
  /** m² K/W through the wall. */
  readonly wallResistance: Spread;
  /** Usual size, where there is one. */
  readonly litres: number | null;
  /** A mould: as large as what is in it. */
  readonly filled?: boolean;
}

export interface Insulation {
  readonly id: string;
  readonly names: readonly string[];
  /** m² K/W. */
  readonly resistance: Spread;
}

export interface Pots {
  readonly pots: readonly PotKind[];
  readonly insulation: readonly Insulation[];
  readonly lid: {
    readonly resistance: Spread;
    readonly names: Readonly<Record<'on' | 'half' | 'off', readonly string[]>>;
  };
  readonly convectionFactor: Range & { readonly lowOutside: number; readonly highOutside: number };
  readonly airSpeed: Spread;
}

/** Flash point and make-up of an essential oil; its names stand in the catalogue under the same id. */
export interface ScentOil {
  readonly id: string;
  readonly cas: string;
  /** °C, the range in use. */
  readonly flash: Range;
  /** Single published figures. */
  readonly flashPoints?: readonly Range[];
  /** The component whose vapour-pressure curve stands for the oil in the ideal-mixture model. */
  readonly vapour?: string;
  readonly composition?: Sourced & { readonly parts: Readonly<Record<string, readonly [number, number]>> };
}

export interface ScentComponent {
  readonly id: string;
  readonly cas: string;
  readonly molarMass: Value;
  readonly boilingC: Value;
  readonly flash: Range;
  /** Heat of vaporisation, kJ/mol, where the vapour-pressure set is missing or too narrow. */
  readonly vaporisation?: Spread;
  /** ln(P/Pa) = a − b/(T/K + c). */
  readonly antoine?: Sourced & {
    readonly a: number;
    readonly b: number;
    readonly c: number;
    readonly lowK: number;
    readonly highK: number;
  };
}

export interface Allergen extends Sourced {
  readonly inci: string;
  readonly status: 'declare' | 'prohibited';
  readonly cas: readonly string[];
  /** Names in the compositions that count towards the entry. */
  readonly members: readonly string[];
  /** Essential oils that are the entry themselves. */
  readonly oils: readonly string[];
}

export interface CookStage {
  readonly id: string;
  readonly name: string;
  readonly minutes: Range;
  readonly see: string;
}

export interface CookData {
  readonly stages: readonly CookStage[];
  readonly ceilingC: Value;
  readonly potToBatch: Value;
  readonly stiffensC: Range;
  readonly cureWaterShare: Spread;
  readonly scentLoad: Range & { readonly usual: number; readonly ceiling: number };
  readonly scentMarginK: Value;
  readonly mixing: Range;
}

export interface HeatData {
  readonly sources: ReadonlyMap<string, Source>;
  readonly naoh: NaohSolution;
  readonly koh: KohSolution;
  readonly water: IceWater;
  readonly fat: FatProperties;
  readonly air: Air;
  readonly materials: ReadonlyMap<string, VesselMaterial>;
  readonly pots: Pots;
  readonly oils: ReadonlyMap<string, ScentOil>;
  readonly components: ReadonlyMap<string, ScentComponent>;
  readonly allergens: readonly Allergen[];
  /** Share of the product from which an allergen is declared. */
  readonly allergenThresholds: { readonly rinseOff: Value; readonly leaveOn: Value };
  readonly cook: CookData;
}
